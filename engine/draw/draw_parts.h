/* draw_parts.h - what the files of draw.h share. */
#ifndef EAVEMARK_DRAW_DRAW_PARTS_H
#define EAVEMARK_DRAW_DRAW_PARTS_H

#include "draw/draw.h"

/* In the drawing's units: the margin at its sides, and how far letters fall below their
 * line. */
enum { DRAW_EDGE = 2, DRAW_DESCENT = 4 };

/* Lowers the floor to y, if it is not lower already. */
void draw_lower_floor(struct draw *draw, double y);

/* The head of an arrow from one point to another: a filled triangle, its tip at `to`. */
void draw_head(struct draw *draw, struct draw_point from, struct draw_point to, double size);

/* Words where they are told to stand, whatever stands there: their place must be free. */
void draw_text(struct draw *draw, double x, double y, enum draw_anchor anchor, const char *words);

/* The width of the character at `at`; *length in bytes. */
double draw_letter_width(const char *at, size_t *length);

/* Writes the lines below everything drawn so far. */
void draw_write_notes(struct draw *draw);

#endif
