/* plan_parts.h - what the files of the roof plan share. */
#ifndef EAVEMARK_DRAW_PLAN_PARTS_H
#define EAVEMARK_DRAW_PLAN_PARTS_H

#include "draw/drawings.h"

enum { PLAN_CORNERS_MOST = 7, PLAN_BLOCK_PLANES = 4 };

struct plan_outline {
    struct draw_point corners[PLAN_CORNERS_MOST]; /* feet; ridge at y 0, eave at y run */
    enum draw_pen sides[PLAN_CORNERS_MOST];       /* from each corner to the next */
    size_t count;
};

/* The lengths of the plane tell its outline. */
bool plan_is_known(const struct plan_plane *plane);

/* Of a plane that is known. */
void plan_outline_of(const struct plan_plane *plane, struct plan_outline *out);

/* Lengths in feet that a tape would call the same. */
bool plan_alike(double a, double b);

enum plan_block_kind { BLOCK_SINGLE, BLOCK_PAIR, BLOCK_HIP };

/* Planes drawn together: planes[0] below the ridge, planes[1] above it, the
 * ends of a hip roof left and right. */
struct plan_block {
    enum plan_block_kind kind;
    size_t planes[PLAN_BLOCK_PLANES];
    double left, right, up, down; /* feet from the ridge's left end */
};

/* What is drawn so far, and which kinds of line, for the key. */
struct plan_layout {
    const struct plan_drawing *plan;
    struct draw draw;
    struct plan_block blocks[PLAN_PLANES_MOST];
    size_t count;
    bool placed[PLAN_PLANES_MOST];
    double scale;
    bool hips, valleys, ridges;
};

/* Fills the layout's blocks: each known plane stands in one. */
void plan_make_blocks(struct plan_layout *layout);

/* Draws a block with the upper left corner of its outlines at (x, y). */
void plan_draw_block(struct plan_layout *layout, const struct plan_block *block, double x,
                     double y);

/* A letter of its own for every plane: A ... Z, AA ... */
void plan_letter(size_t index, char out[3]);

#endif
