#include "draw/draw.h"

#include "base/number.h"
#include "base/utf8.h"

#include <math.h>
#include <stdarg.h>
#include <stdio.h>
#include <string.h>

/* In the drawing's units: the margin, how far letters rise above and fall below their
 * line, the width of a sample of a key, and how many steps away from its place a word is
 * tried. */
enum { EDGE = 2, ASCENT = 12, DESCENT = 4, SWATCH = 24, NEAR_MOST = 4 };

void draw_start(struct draw *draw, const struct draw_sheet *sheet)
{
    *draw = (struct draw){.sheet = *sheet, .letter = 'a'};
}

void draw_free(struct draw *draw)
{
    text_free(&draw->shapes);
    text_free(&draw->words);
    text_free(&draw->notes);
}

/* For text and for attributes in quotes alike. */
void draw_escape(struct text *out, const char *words)
{
    struct text safe = TEXT_EMPTY;
    utf8_add_printable(&safe, words);
    for (const char *at = text_string(&safe); *at != '\0';) {
        const size_t plain = strcspn(at, "&<>\"'");
        text_add_n(out, at, plain);
        at += plain;
        if (*at == '\0')
            break;
        text_add(out, *at == '&'   ? "&amp;"
                      : *at == '<' ? "&lt;"
                      : *at == '>' ? "&gt;"
                      : *at == '"' ? "&quot;"
                                   : "&#39;");
        at++;
    }
    out->failed = out->failed || safe.failed;
    text_free(&safe);
}

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

/* Shapes ---------------------------------------------------------------------- */

static const char *pen_style(enum draw_pen pen)
{
    switch (pen) {
    case PEN_NONE:
        return "stroke=\"none\"";
    case PEN_THIN:
        return "stroke=\"#000\" stroke-width=\"0.6\"";
    case PEN_LINE:
        return "stroke=\"#000\" stroke-width=\"1.1\"";
    case PEN_HEAVY:
        return "stroke=\"#000\" stroke-width=\"2.4\"";
    case PEN_DASH:
        return "stroke=\"#000\" stroke-width=\"1\" stroke-dasharray=\"5 3\"";
    case PEN_HEAVY_DASH:
        return "stroke=\"#000\" stroke-width=\"2.4\" stroke-dasharray=\"7 4\"";
    case PEN_DOT:
        return "stroke=\"#000\" stroke-width=\"1\" stroke-dasharray=\"1.5 2.5\"";
    }
    return "";
}

/* The page may hold several drawings, so hatches carry the sheet's id. */
static void add_fill(struct draw *draw, enum draw_fill fill)
{
    static const char *const NAMES[] = {[FILL_SLANT] = "slant",
                                        [FILL_BACKSLANT] = "back",
                                        [FILL_CROSS] = "cross",
                                        [FILL_DOTS] = "dots"};
    if (fill <= FILL_INK)
        text_addf(&draw->shapes, "fill=\"%s\"",
                  fill == FILL_NONE    ? "none"
                  : fill == FILL_PAPER ? "#fff"
                                       : "#000");
    else
        text_addf(&draw->shapes, "fill=\"url(#%s-%s)\"", draw->sheet.id, NAMES[fill]);
}

/* The floor is the lowest y drawn so far: what comes below begins there. */
static void lower_floor(struct draw *draw, double y)
{
    if (y > draw->floor)
        draw->floor = y;
}

void draw_line(struct draw *draw, struct draw_point from, struct draw_point to, enum draw_pen pen)
{
    text_addf(&draw->shapes, "<line x1=\"%.2f\" y1=\"%.2f\" x2=\"%.2f\" y2=\"%.2f\" %s/>\n", from.x,
              from.y, to.x, to.y, pen_style(pen));
    lower_floor(draw, fmax(from.y, to.y));
}

void draw_shape(struct draw *draw, const struct draw_point *points, size_t count, enum draw_pen pen,
                enum draw_fill fill)
{
    text_add(&draw->shapes, "<polygon points=\"");
    for (size_t i = 0; i < count; i++) {
        text_addf(&draw->shapes, "%s%.2f,%.2f", i > 0 ? " " : "", points[i].x, points[i].y);
        lower_floor(draw, points[i].y);
    }
    text_addf(&draw->shapes, "\" %s ", pen_style(pen));
    add_fill(draw, fill);
    text_add(&draw->shapes, "/>\n");
}

void draw_box(struct draw *draw, struct draw_area area, enum draw_pen pen, enum draw_fill fill)
{
    const struct draw_point corners[] = {{area.x, area.y},
                                         {area.x + area.width, area.y},
                                         {area.x + area.width, area.y + area.height},
                                         {area.x, area.y + area.height}};
    draw_shape(draw, corners, 4, pen, fill);
}

void draw_dot(struct draw *draw, struct draw_point at, double radius)
{
    text_addf(&draw->shapes, "<circle cx=\"%.2f\" cy=\"%.2f\" r=\"%.2f\"/>\n", at.x, at.y, radius);
    lower_floor(draw, at.y + radius);
}

/* A filled triangle, its tip at `to`. */
static void add_head(struct draw *draw, struct draw_point from, struct draw_point to, double size)
{
    const double length = hypot(to.x - from.x, to.y - from.y);
    if (length < 0.01)
        return;
    const double x = (to.x - from.x) / length * size, y = (to.y - from.y) / length * size;
    const struct draw_point head[] = {
        to, {to.x - x - y * 0.4, to.y - y + x * 0.4}, {to.x - x + y * 0.4, to.y - y - x * 0.4}};
    draw_shape(draw, head, 3, PEN_NONE, FILL_INK);
}

void draw_arrow(struct draw *draw, struct draw_point from, struct draw_point to, enum draw_pen pen)
{
    draw_line(draw, from, to, pen);
    add_head(draw, from, to, 7);
}

/* Words ----------------------------------------------------------------------- */

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

/* The width of the character at `at`; *length in bytes. */
static double letter_width(const char *at, size_t *length)
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
        width += letter_width(at, &length);
    return width;
}

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
    if (area.x < EDGE || area.y < 0 || area.x + area.width > DRAW_WIDTH - EDGE
        || draw->claimed_count == DRAW_TEXTS_MOST)
        return false;
    for (size_t i = 0; i < draw->claimed_count; i++)
        if (overlap(&area, &draw->claimed[i]))
            return false;
    draw->claimed[draw->claimed_count++] = area;
    lower_floor(draw, area.y + area.height);
    return true;
}

static void add_words(struct draw *draw, double x, double y, enum draw_anchor anchor,
                      const char *words)
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
        draw, (struct draw_area){left - 1, y - ASCENT, width + 2, ASCENT + DESCENT});
    if (free_place)
        add_words(draw, x, y, anchor, shown);
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
        add_head(draw, from, to, 5);
        add_head(draw, to, from, 5);
    }
    const struct draw_point middle = {(from.x + to.x) / 2, (from.y + to.y) / 2};
    if (!place_aside(draw, middle, y, -x, words) && !place_aside(draw, middle, -y, x, words))
        draw_beside(draw, middle, words);
}

/* Lines below ------------------------------------------------------------------ */

/* Each is a mark (' ', 'f' or 'p' and a digit), its words, a newline. */
static void queue_note(struct draw *draw, char mark, int which, const char *words)
{
    text_addf(&draw->notes, "%c%d", mark, which);
    utf8_add_printable(&draw->notes, words);
    text_add(&draw->notes, "\n");
}

void draw_note(struct draw *draw, const char *words)
{
    queue_note(draw, ' ', 0, words);
}

void draw_detail(struct draw *draw, const char *words)
{
    if (!draw->sheet.brief)
        draw_note(draw, words);
}

void draw_key_fill(struct draw *draw, enum draw_fill fill, const char *words)
{
    queue_note(draw, 'f', (int)fill, words);
}

void draw_key_pen(struct draw *draw, enum draw_pen pen, const char *words)
{
    queue_note(draw, 'p', (int)pen, words);
}

/* How many bytes fit into a line: to the last space, else to the last letter. */
static size_t line_fits(const char *words, size_t total, double room)
{
    double width = 0;
    size_t at = 0, space = 0, length = 0;
    while (at < total) {
        width += letter_width(words + at, &length);
        if (width > room)
            return space > 0 ? space : at > 0 ? at : length;
        if (words[at] == ' ')
            space = at;
        at += length;
    }
    return total;
}

/* Wrapped at the sheet's edge; each line lowers the floor. */
static void write_lines(struct draw *draw, double x, const char *words, size_t total)
{
    char line[DRAW_WIDTH];
    do {
        const size_t fits = line_fits(words, total, DRAW_WIDTH - EDGE - 3 - x);
        snprintf(line, sizeof(line), "%.*s", (int)fits, words);
        const double y = draw->floor + DRAW_LINE;
        add_words(draw, x, y - DESCENT, ANCHOR_START, line); /* below is nothing yet */
        draw->floor = y;
        words += fits;
        total -= fits;
        while (total > 0 && *words == ' ')
            words++, total--;
    } while (total > 0);
}

static void write_sample(struct draw *draw, char mark, int which)
{
    const double y = draw->floor + 3;
    if (mark == 'f')
        draw_box(draw, (struct draw_area){EDGE + 2, y, SWATCH - 7, 11}, PEN_THIN,
                 (enum draw_fill)which);
    else
        draw_line(draw, (struct draw_point){EDGE + 2, y + 6}, (struct draw_point){SWATCH, y + 6},
                  (enum draw_pen)which);
    draw->floor = y - 3; /* the words stand beside it */
}

/* Notes were gathered while drawing, since they stand below everything drawn. */
static void write_notes(struct draw *draw)
{
    struct text notes = draw->notes;
    draw->notes = TEXT_EMPTY;
    draw->floor += 4;
    for (const char *at = text_string(&notes); *at != '\0';) {
        const size_t length = strcspn(at, "\n");
        const bool sample = at[0] != ' ';
        if (sample)
            write_sample(draw, at[0], at[1] - '0');
        write_lines(draw, sample ? SWATCH + 4 : EDGE + 2, at + 2, length - 2);
        at += length + 1;
    }
    draw->words.failed = draw->words.failed || notes.failed;
    text_free(&notes);
}

/* The whole -------------------------------------------------------------------- */

/* Black on white, and told apart by direction: they must survive a copying machine. */
static void add_hatches(struct text *out, const char *id)
{
    static const struct {
        const char *name, *path;
    } HATCHES[] = {
        {"slant", "M-2 2L2 -2M0 8L8 0M6 10L10 6"},
        {"back", "M-2 6L2 10M0 0L8 8M6 -2L10 2"},
        {"cross", "M0 0L8 8M0 8L8 0"},
        {"dots", "M1.5 2h1.4M5.5 6h1.4"},
    };
    text_add(out, "<defs>");
    for (size_t i = 0; i < sizeof(HATCHES) / sizeof(HATCHES[0]); i++)
        text_addf(out,
                  "<pattern id=\"%s-%s\" width=\"8\" height=\"8\" "
                  "patternUnits=\"userSpaceOnUse\"><rect width=\"8\" height=\"8\" "
                  "fill=\"#fff\"/><path d=\"%s\" fill=\"none\" stroke=\"#000\" "
                  "stroke-width=\"%s\"/></pattern>",
                  id, HATCHES[i].name, HATCHES[i].path, i == 3 ? "1.4" : "0.7");
    text_add(out, "</defs>\n");
}

/* Words come after all shapes, with a white rim around each letter, so that lines behind
 * them do not make them hard to read. */
void draw_finish(struct draw *draw, const char *title, const char *description, struct text *out)
{
    write_notes(draw);
    const double height = ceil(draw->floor + 4);
    text_addf(out,
              "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %.0f\" "
              "width=\"400\" height=\"%.0f\" role=\"img\" "
              "aria-labelledby=\"%s-title %s-desc\" font-family=\"Arial,Helvetica,"
              "sans-serif\" font-size=\"%d\">\n<title id=\"%s-title\">",
              DRAW_WIDTH, height, height * 400 / DRAW_WIDTH, draw->sheet.id, draw->sheet.id,
              DRAW_LETTERS, draw->sheet.id);
    draw_escape(out, title);
    text_addf(out, "</title>\n<desc id=\"%s-desc\">", draw->sheet.id);
    draw_escape(out, description);
    text_add(out, "</desc>\n");
    add_hatches(out, draw->sheet.id);
    text_addf(out, "<rect width=\"%d\" height=\"%.0f\" fill=\"#fff\"/>\n", DRAW_WIDTH, height);
    text_add(out, text_string(&draw->shapes));
    text_add(out, "<g fill=\"#000\" stroke=\"#fff\" stroke-width=\"3\" stroke-linejoin=\"round\" "
                  "paint-order=\"stroke\">\n");
    text_add(out, text_string(&draw->words));
    text_add(out, "</g>\n</svg>\n");
    out->failed = out->failed || draw->shapes.failed || draw->words.failed || draw->notes.failed;
    draw_free(draw);
}

/* Amounts and scales ------------------------------------------------------------ */

/* A plan is drawn where there is one: it is what will be built. */
double draw_amount_shown(const struct draw_amount *amount)
{
    return isfinite(amount->planned) ? amount->planned : amount->demanded;
}

void draw_number(char out[DRAW_WORDS_MOST], double value, const char *unit)
{
    char number[96];
    if (!isfinite(value)) {
        draw_format(out, "?");
        return;
    }
    number_write_unit(value, unit, number);
    draw_format(out, "%s", number);
}

static const char *sense_words(enum sense sense)
{
    if (sense == SENSE_NONE || sense == SENSE_EQUALS)
        return "exactly";
    return sense == SENSE_AT_LEAST ? "at least" : "at most";
}

void draw_amount_words(char out[DRAW_WORDS_MOST], const struct draw_amount *amount,
                       const char *unit)
{
    char planned[DRAW_WORDS_MOST], demanded[DRAW_WORDS_MOST];
    draw_number(planned, amount->planned, unit);
    draw_number(demanded, amount->demanded, unit);
    if (!isfinite(amount->demanded))
        draw_format(out, isfinite(amount->planned) ? "planned %s" : "%s", planned);
    else
        draw_format(out, "%s %s; planned %s", sense_words(amount->sense), demanded, planned);
}

/* The smaller of the two scales that fit the room and the height; 1 when neither bounds. */
double draw_scale(double size, double room, double other, double height)
{
    double scale = INFINITY;
    if (size > 0)
        scale = room / size;
    if (other > 0)
        scale = fmin(scale, height / other);
    return isfinite(scale) ? scale : 1;
}

/* 1, 2 or 5 times a power of ten. */
double draw_round_length(double most)
{
    if (!(most > 0) || !isfinite(most))
        return 1;
    const double power = pow(10, floor(log10(most)));
    return power * (most >= 5 * power ? 5 : most >= 2 * power ? 2 : 1);
}

/* About 70 units long; half ink, half paper, as on maps. */
void draw_scale_bar(struct draw *draw, double one, const char *unit)
{
    char words[DRAW_WORDS_MOST], length[DRAW_WORDS_MOST];
    const double bar = draw_round_length(70 / one), y = draw->floor + 12;
    const double left = EDGE + 2, right = left + bar * one;
    draw_number(length, bar, unit);
    draw_format(words, "%s, to scale", length);
    draw_box(draw, (struct draw_area){left, y - 2, (right - left) / 2, 4}, PEN_THIN, FILL_INK);
    draw_box(draw, (struct draw_area){left + (right - left) / 2, y - 2, (right - left) / 2, 4},
             PEN_THIN, FILL_PAPER);
    draw_words(draw, right + 6, y + 4, ANCHOR_START, words);
}
