/* The lines below a drawing: notes, and the key of its hatches and pens. */
#include "draw/draw.h"

#include "base/utf8.h"
#include "draw/draw_parts.h"

#include <stdio.h>
#include <string.h>

/* The width of a sample of a key, in the drawing's units. */
enum { SWATCH = 24 };

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

/* Written ------------------------------------------------------------------- */

/* How many bytes fit into a line: to the last space, else to the last letter. */
static size_t line_fits(const char *words, size_t total, double room)
{
    double width = 0;
    size_t at = 0, space = 0, length = 0;
    while (at < total) {
        width += draw_letter_width(words + at, &length);
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
        const size_t fits = line_fits(words, total, DRAW_WIDTH - DRAW_EDGE - 3 - x);
        snprintf(line, sizeof(line), "%.*s", (int)fits, words);
        const double y = draw->floor + DRAW_LINE;
        draw_text(draw, x, y - DRAW_DESCENT, ANCHOR_START, line); /* below is nothing yet */
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
        draw_box(draw, (struct draw_area){DRAW_EDGE + 2, y, SWATCH - 7, 11}, PEN_THIN,
                 (enum draw_fill)which);
    else
        draw_line(draw, (struct draw_point){DRAW_EDGE + 2, y + 6},
                  (struct draw_point){SWATCH, y + 6}, (enum draw_pen)which);
    draw->floor = y - 3; /* the words stand beside it */
}

/* Notes were gathered while drawing, since they stand below everything drawn. */
void draw_write_notes(struct draw *draw)
{
    struct text notes = draw->notes;
    draw->notes = TEXT_EMPTY;
    draw->floor += 4;
    for (const char *at = text_string(&notes); *at != '\0';) {
        const size_t length = strcspn(at, "\n");
        const bool sample = at[0] != ' ';
        if (sample)
            write_sample(draw, at[0], at[1] - '0');
        write_lines(draw, sample ? SWATCH + 4 : DRAW_EDGE + 2, at + 2, length - 2);
        at += length + 1;
    }
    draw->words.failed = draw->words.failed || notes.failed;
    text_free(&notes);
}
