/* drawings.h - the drawings of a reroof, each from a few plain numbers.
 *
 * They know nothing of jobs, rules or codes: a number that is not known is NAN
 * and prints as "?", and where the drawing's own size hangs on it, it says that
 * it is not to scale. Every function adds one <svg> (draw.h); texts are not
 * copied. Feet and inches as the names say.
 */
#ifndef EAVEMARK_DRAW_DRAWINGS_H
#define EAVEMARK_DRAW_DRAWINGS_H

#include "base/text.h"
#include "draw/draw.h"

#include <stdbool.h>
#include <stddef.h>

/* A roof seen from above. The sides' numbers say how they are listed: all 0
 * where they are not. */
struct plan_plane {
    const char *name;
    double pitch, eave_ft, ridge_ft, run_ft;
    double plan_sqft; /* seen from above, where its edges do not tell it; else 0 or NAN */
    int hips, valleys, rakes;
    double eave_pieces_ft[2]; /* the first two eaves listed */
    int eaves;
};

enum { PLAN_PLANES_MOST = 60 };

struct plan_drawing {
    const struct plan_plane *planes; /* PLAN_PLANES_MOST at most */
    size_t count;
    double ridge_ft; /* of the whole roof */
};

/* Draws planes together where the lengths leave no doubt that they meet (two
 * that share the ridge, a hip roof all round), the others side by side, and
 * says so. */
void plan_draw(const struct plan_drawing *plan, const struct draw_sheet *sheet, struct text *out);

/* Does a wing grow out of the plane, between two valleys? */
bool plan_is_notched(const struct plan_plane *plane);

/* Area of the plane on the slope; NAN when it is not known. */
double plan_area_sqft(const struct plan_plane *plane);

/* How far the eave reaches beyond the left end of the upper edge; the rest of
 * their difference is at the right. Both ends alike unless the sides listed say
 * otherwise; which of two unlike ends is left is not known. */
double plan_lean_left_ft(const struct plan_plane *plane);

/* Where a deck is nailed how closely: drawn on one plane of it. */
struct nailing_drawing {
    const char *deck;
    struct plan_plane plane;
    double up_ft; /* from eave to upper edge, up the slope */
    struct draw_amount edge, field, gable, band, band_width;
};
void nailing_draw(const struct nailing_drawing *nailing, const struct draw_sheet *sheet,
                  struct text *out);

/* A panel with its nails. */
struct panel_drawing {
    const char *deck;
    double length_in, width_in, support_in;
    struct draw_amount edge, field, edge_distance, gap;
};
void panel_draw(const struct panel_drawing *panel, const struct draw_sheet *sheet,
                struct text *out);

/* A cut through the eave. */
struct eave_drawing {
    const char *name;
    double pitch, overhang_in, wall_in;
    double inside_in;         /* beyond the wall, that the barrier must reach; or NAN */
    bool wall_counts;         /* from its inner face, else from its outer one */
    bool barrier;             /* there is one, or one is demanded */
    struct draw_amount reach; /* up the slope */
    double sheet_in, starter_in;
    struct draw_amount head_lap;
    bool metal;
    bool over_metal, under_metal; /* how the underlayment lies; neither: not known */
    struct draw_amount down, back, spacing;
};
void eave_draw(const struct eave_drawing *eave, const struct draw_sheet *sheet, struct text *out);

/* Courses of shingles, with few nails and with many. */
struct courses_drawing {
    double strip_in;
    struct draw_amount exposure, offset, nails;
    double few, many, end_in; /* patterns; how far from the shingle's ends */
};
void courses_draw(const struct courses_drawing *courses, const struct draw_sheet *sheet,
                  struct text *out);

/* Net free area of an attic's vents, in square inches. */
struct attic_drawing {
    const char *name;
    double area_sqft;
    double low_sqin, high_sqin, other_sqin;
    struct draw_amount needed; /* demanded in all */
    struct draw_amount low;    /* demanded of the low ones */
};
void attic_draw(const struct attic_drawing *attic, const struct draw_sheet *sheet,
                struct text *out);

#endif
