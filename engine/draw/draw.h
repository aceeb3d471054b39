/* draw.h - a drawing as inline SVG: lines, hatches, arrows, dimensions, words.
 *
 * A drawing is DRAW_WIDTH units wide and as high as what is put on it. One
 * size of letters throughout, so that on a telephone, where the drawing is as
 * wide as the page, they stay as large as the page's own. Black on white, told
 * apart by hatch and by dashes, never by colour.
 *
 * Words never lie on other words nor leave the drawing: each text claims a box,
 * reckoned from widths that ordinary faces stay within, and what finds no free
 * place goes under a letter into the lines below the drawing. Words are drawn
 * last, with a white rim, so that lines may pass beneath them. Whatever is
 * written is escaped here.
 *
 * x runs right, y down. Running out of memory shows in what draw_finish adds
 * to: its `failed`.
 */
#ifndef EAVEMARK_DRAW_DRAW_H
#define EAVEMARK_DRAW_DRAW_H

#include "base/sense.h"
#include "base/text.h"

#include <stdbool.h>
#include <stddef.h>

enum {
    DRAW_WIDTH = 340,
    DRAW_LETTERS = 12, /* height of the letters */
    DRAW_LINE = 16,    /* from line to line */
    DRAW_TEXTS_MOST = 512,
    DRAW_WORDS_MOST = 200, /* bytes of a text put together here */
};

struct draw_point {
    double x, y;
};

struct draw_area {
    double x, y, width, height;
};

enum draw_pen { PEN_NONE, PEN_THIN, PEN_LINE, PEN_HEAVY, PEN_DASH, PEN_HEAVY_DASH, PEN_DOT };
enum draw_fill {
    FILL_NONE,
    FILL_PAPER,
    FILL_INK,
    FILL_SLANT,
    FILL_BACKSLANT,
    FILL_CROSS,
    FILL_DOTS,
};
enum draw_anchor { ANCHOR_START, ANCHOR_MIDDLE, ANCHOR_END };

/* Where a drawing goes. */
struct draw_sheet {
    const char *id; /* of this drawing in its page: its ids begin with it; not copied */
    bool brief;     /* what a table beside it says is left out below it */
};

struct draw {
    struct draw_sheet sheet;
    struct text shapes, words, notes;
    double floor; /* the lowest y that anything reached */
    struct draw_area claimed[DRAW_TEXTS_MOST];
    size_t claimed_count;
    char letter; /* the next to stand for a text that found no place */
};

void draw_start(struct draw *draw, const struct draw_sheet *sheet);

void draw_line(struct draw *draw, struct draw_point from, struct draw_point to, enum draw_pen pen);
void draw_shape(struct draw *draw, const struct draw_point *points, size_t count, enum draw_pen pen,
                enum draw_fill fill);
void draw_box(struct draw *draw, struct draw_area area, enum draw_pen pen, enum draw_fill fill);
void draw_dot(struct draw *draw, struct draw_point at, double radius);

/* A line with a head at its end. */
void draw_arrow(struct draw *draw, struct draw_point from, struct draw_point to, enum draw_pen pen);

/* Units that the words take at most. */
double draw_words_width(const char *words);

/* Writes words on the baseline y. False, and nothing is written, when they
 * would leave the drawing's sides or top or touch other words. */
bool draw_words(struct draw *draw, double x, double y, enum draw_anchor anchor, const char *words);

/* Writes words near a point, or gives them a letter there and a line below. */
void draw_beside(struct draw *draw, struct draw_point at, const char *words);

/* A dimension line from one point to another, with what it measures: the words
 * stand to the left of who walks along it (above, from left to right; on the
 * right, downwards), or where else there is room. */
void draw_measure(struct draw *draw, struct draw_point from, struct draw_point to,
                  const char *words);

/* Lines below the drawing, in the order given: words alone, after a hatched
 * sample, or after a sample of a pen. */
void draw_note(struct draw *draw, const char *words);
void draw_detail(struct draw *draw, const char *words); /* unless brief */
void draw_key_fill(struct draw *draw, enum draw_fill fill, const char *words);
void draw_key_pen(struct draw *draw, enum draw_pen pen, const char *words);

/* Writes the lines below, and all of it as <svg>, with its title and what it
 * says in words for those who do not see it. Releases the drawing. */
void draw_finish(struct draw *draw, const char *title, const char *description, struct text *out);

/* Releases a drawing that is not finished. */
void draw_free(struct draw *draw);

/* Words into HTML or XML text, or into the value of a quoted attribute. */
void draw_escape(struct text *out, const char *words);

/* A number that is planned and what is demanded of it; NAN where not known. */
struct draw_amount {
    double planned, demanded;
    enum sense sense; /* SENSE_AT_LEAST, SENSE_AT_MOST, SENSE_EQUALS or none */
};

/* What to draw: the plan, else the demand, else NAN. */
double draw_amount_shown(const struct draw_amount *amount);

/* "at most 6 in; planned 4 in"; "planned 4 in"; "?". */
void draw_amount_words(char out[DRAW_WORDS_MOST], const struct draw_amount *amount,
                       const char *unit);

/* "6 in", or "?" for NAN. */
void draw_number(char out[DRAW_WORDS_MOST], double value, const char *unit);

/* "label: words" ... a text put together, cut at DRAW_WORDS_MOST. */
void draw_format(char out[DRAW_WORDS_MOST], const char *format, ...)
    __attribute__((format(printf, 2, 3)));

/* The units that one of what is drawn takes, so that `size` of it fits into
 * `room` and `other` into `height`; 1 when neither is a size. */
double draw_scale(double size, double room, double other, double height);

/* A length for a scale bar: 1, 2 or 5 times a power of ten, at most `most`. */
double draw_round_length(double most);

/* A bar of a round length at the left below all that was drawn so far. one is
 * what "ft" or "in" takes in units. */
void draw_scale_bar(struct draw *draw, double one, const char *unit);

#endif
