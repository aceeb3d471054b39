/* Words on a drawing: none lies on another nor leaves it, see draw.h. */
#include "draw/draw.h"

#include "base/utf8.h"
#include "draw/draw_parts.h"

#include <math.h>
#include <stdarg.h>
#include <stdio.h>
#include <string.h>

/* How far letters rise above their line, in the drawing's units, and how many steps away
 * from its place a word is tried. */
enum { ASCENT = 12, NEAR_MOST = 4 };

void draw_format(char out[DRAW_WORDS_MOST], const char *format, ...)
{
    va_list values;
    va_start(values, format);
    const int length = vsnprintf(out, DRAW_WORDS_MOST, format, values);
    va_end(values);
    if (length < DRAW_WORDS_MOST)
        return;
    size_t cut = DRAW_WORDS_MOST - 4; /* not within a character */
    while (cut > 0 && ((unsigned char)out[cut] & 0xC0) == 0x80)
        cut--;
    memcpy(out + cut, "...", 4);
}

/* How wide ------------------------------------------------------------------ */

/* Hundredths of the letter height, from U+0020: the widths of a wide face
 * (DejaVu Sans); Arial, Helvetica, Segoe, Noto and Roboto stay within. */
static const unsigned char WIDTHS[] = {
    32, 41, 46, 84, 64, 96, 78, 28, 40,  40, 50, 84, 32, 37, 32, 34, 64, 64, 64, 64, 64, 64, 64, 64,
    64, 64, 34, 34, 84, 84, 84, 54, 100, 69, 69, 70, 78, 64, 58, 78, 76, 30, 30, 66, 56, 87, 75, 79,
    61, 79, 70, 64, 62, 74, 69, 99, 69,  62, 69, 40, 34, 40, 84, 50, 50, 62, 64, 55, 64, 62, 36, 64,
    64, 28, 28, 58, 28, 98, 64, 62, 64,  64, 42, 53, 40, 64, 60, 82, 60, 60, 53, 64, 34, 64, 84,
};

static bool is_plain(const char *words)
{
    for (; *words != '\0'; words++)
        if ((unsigned char)*words < 0x20 || (unsigned char)*words > 0x7E)
            return false;
    return true;
}

double draw_letter_width(const char *at, size_t *length)
{
    const unsigned char byte = (unsigned char)*at;
    *length = utf8_length((const unsigned char *)at, strlen(at));
    if (*length == 0)
        *length = 1;
    /* Any other letter counts as wide as it is high, which none exceeds by much. */
    if (byte >= 0x20 && byte <= 0x7E)
        return WIDTHS[byte - 0x20] * DRAW_LETTERS / 100.0;
    return DRAW_LETTERS;
}

double draw_words_width(const char *words)
{
    double width = 0;
    size_t length = 0;
    for (const char *at = words; *at != '\0'; at += length)
        width += draw_letter_width(at, &length);
    return width;
}

/* Where --------------------------------------------------------------------- */

/* Areas that only touch do not overlap; this is for rounding. */
static const double TOUCH = 0.01;

static bool overlap(const struct draw_area *a, const struct draw_area *b)
{
    return a->x + TOUCH < b->x + b->width && b->x + TOUCH < a->x + a->width
           && a->y + TOUCH < b->y + b->height && b->y + TOUCH < a->y + a->height;
}

/* No two words may stand on one another, nor outside the sheet. Once claimed, a place
 * stays taken. */
static bool claim_area(struct draw *draw, struct draw_area area)
{
    if (area.x < DRAW_EDGE || area.y < 0 || area.x + area.width > DRAW_WIDTH - DRAW_EDGE
        || draw->claimed_count == DRAW_TEXTS_MOST)
        return false;
    for (size_t i = 0; i < draw->claimed_count; i++)
        if (overlap(&area, &draw->claimed[i]))
            return false;
    draw->claimed[draw->claimed_count++] = area;
    draw_lower_floor(draw, area.y + area.height);
    return true;
}

void draw_text(struct draw *draw, double x, double y, enum draw_anchor anchor, const char *words)
{
    static const char *const ANCHORS[] = {[ANCHOR_START] = "",
                                          [ANCHOR_MIDDLE] = " text-anchor=\"middle\"",
                                          [ANCHOR_END] = " text-anchor=\"end\""};
    text_addf(&draw->words, "<text x=\"%.2f\" y=\"%.2f\"%s", x, y, ANCHORS[anchor]);
    /* A face that was not reckoned with is pressed into the room it has. */
    if (!is_plain(words))
        text_addf(&draw->words, " textLength=\"%.2f\" lengthAdjust=\"spacingAndGlyphs\"",
                  draw_words_width(words));
    text_add(&draw->words, ">");
    draw_escape(&draw->words, words);
    text_add(&draw->words, "</text>\n");
}

/* What a text looks like once it is escaped for printing. */
static const char *printable(struct text *safe, const char *words)
{
    utf8_add_printable(safe, words);
    return text_string(safe);
}

bool draw_words(struct draw *draw, double x, double y, enum draw_anchor anchor, const char *words)
{
    struct text safe = TEXT_EMPTY;
    const char *shown = printable(&safe, words);
    const double width = draw_words_width(shown);
    const double left = anchor == ANCHOR_START    ? x
                        : anchor == ANCHOR_MIDDLE ? x - width / 2
                                                  : x - width;
    const bool free_place = claim_area(
        draw, (struct draw_area){left - 1, y - ASCENT, width + 2, ASCENT + DRAW_DESCENT});
    if (free_place)
        draw_text(draw, x, y, anchor, shown);
    draw->words.failed = draw->words.failed || safe.failed;
    text_free(&safe);
    return free_place;
}

/* Above, below, right, left of the point, step by step further out. */
static bool place_near(struct draw *draw, struct draw_point at, const char *words)
{
    for (int step = 0; step < NEAR_MOST; step++) {
        const double off = 5 + 9.0 * step;
        if (draw_words(draw, at.x, at.y - off, ANCHOR_MIDDLE, words)
            || draw_words(draw, at.x, at.y + off + 9, ANCHOR_MIDDLE, words)
            || draw_words(draw, at.x + off + 1, at.y + 4, ANCHOR_START, words)
            || draw_words(draw, at.x - off - 1, at.y + 4, ANCHOR_END, words))
            return true;
    }
    return false;
}

/* Gives words that found no place a letter, and a line below. */
static void place_letter(struct draw *draw, struct draw_point at, const char *words)
{
    char note[DRAW_WORDS_MOST];
    if (draw->letter > 'z') {
        draw_note(draw, words);
        return;
    }
    const char letter[2] = {draw->letter, '\0'};
    const bool placed = place_near(draw, at, letter);
    draw_format(note, placed ? "%s = %s" : "%.0s%s", letter, words);
    draw->letter = (char)(draw->letter + placed);
    draw_note(draw, note);
}

void draw_beside(struct draw *draw, struct draw_point at, const char *words)
{
    if (!place_near(draw, at, words))
        place_letter(draw, at, words);
}

/* Dimensions ---------------------------------------------------------------- */

/* On the side that (x, y) points to, which is across a dimension line. */
static bool place_aside(struct draw *draw, struct draw_point at, double x, double y,
                        const char *words)
{
    const double half = draw_words_width(words) / 2;
    const double out_x = fabs(x) < 0.01 ? 0 : x * (half + 6), out_y = y * (DRAW_LETTERS / 2.0 + 4);
    return draw_words(draw, at.x + out_x, at.y + out_y + 4, ANCHOR_MIDDLE, words);
}

void draw_measure(struct draw *draw, struct draw_point from, struct draw_point to,
                  const char *words)
{
    const double length = hypot(to.x - from.x, to.y - from.y);
    if (length < 0.01)
        return;
    const double x = (to.x - from.x) / length, y = (to.y - from.y) / length;
    draw_line(draw, from, to, PEN_THIN);
    /* Ticks across both ends; heads too where there is room. */
    const struct draw_point ends[] = {from, to};
    for (size_t i = 0; i < 2; i++)
        draw_line(draw, (struct draw_point){ends[i].x - y * 4, ends[i].y + x * 4},
                  (struct draw_point){ends[i].x + y * 4, ends[i].y - x * 4}, PEN_THIN);
    if (length > 14) {
        draw_head(draw, from, to, 5);
        draw_head(draw, to, from, 5);
    }
    const struct draw_point middle = {(from.x + to.x) / 2, (from.y + to.y) / 2};
    if (!place_aside(draw, middle, y, -x, words) && !place_aside(draw, middle, -y, x, words))
        draw_beside(draw, middle, words);
}
