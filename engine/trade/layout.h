/* layout.h - the planes and edges of a roof, laid out from its footprint.
 *
 * Lengths in feet, areas in square feet, pitch in inches of rise over 12 in.
 * Everything is seen from the front: the long side (or, with a porch or a wing,
 * the side where that stands), left and right as one faces it. The lengths
 * follow from the triangles of geometry.h; summed, they are those of
 * trade_footprint.
 */
#ifndef EAVEMARK_TRADE_LAYOUT_H
#define EAVEMARK_TRADE_LAYOUT_H

#include "trade/footprint.h"

#include <stdbool.h>
#include <stddef.h>

enum { LAYOUT_PLANES_MOST = 4, LAYOUT_EDGES_MOST = 15, LAYOUT_VALLEYS_MOST = 2 };

/* A plane between two level edges, as roof_plane of geometry.h has it. */
struct layout_plane {
    const char *name; /* "main front" */
    double eave_ft, ridge_ft, run_ft, pitch;
    double plan_sqft; /* seen from above */
    bool odd;         /* a wing cuts into it: its edges alone do not give plan_sqft */
    bool porch;       /* a porch's, which may have another slope */
};

enum layout_kind { LAYOUT_EAVE, LAYOUT_RAKE, LAYOUT_HIP, LAYOUT_VALLEY };

/* An eave, or one side of a plane; a hip or valley is a side of two planes. */
struct layout_edge {
    const char *name; /* "front left rake" */
    enum layout_kind kind;
    size_t plane;
    double length_ft;
};

struct layout {
    struct layout_plane planes[LAYOUT_PLANES_MOST];
    size_t plane_count;
    struct layout_edge edges[LAYOUT_EDGES_MOST];
    size_t edge_count;
    const char *valleys[LAYOUT_VALLEYS_MOST]; /* names */
    size_t valley_count;
    double ridge_ft, hip_ft, valley_ft;
    double least_width_ft; /* the outline's narrower side; NAN with a porch or a wing */
};

/* Where a wing's left wall stands: feet from the main house's left end wall.
 * Only ROOF_CROSS_GABLE looks at it. Names are static. Returns 0, or -1 for a
 * roof that cannot be, with a text that says why in *why (static, never NULL
 * then). */
int trade_layout(struct layout *out, const struct footprint *roof, double wing_left_ft,
                 const char **why);

#endif
