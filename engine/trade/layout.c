#include "trade/layout.h"

#include "trade/geometry.h"

#include <math.h>

/* An edge shorter than this is none: an inch or so left of a wing that begins
 * where the main eave does. */
static const double SHORTEST_FT = 0.1;

/* An odd plane brings its own plan area: a wing cuts a triangle out of it. */
static size_t add_plane(struct layout *out, struct layout_plane plane)
{
    if (!plane.odd)
        plane.plan_sqft = (plane.eave_ft + plane.ridge_ft) / 2 * plane.run_ft;
    out->planes[out->plane_count] = plane;
    return out->plane_count++;
}

static void add_edge(struct layout *out, const char *name, enum layout_kind kind, size_t plane,
                     double length_ft)
{
    if (length_ft < SHORTEST_FT)
        return;
    out->edges[out->edge_count++] = (struct layout_edge){
        .name = name, .kind = kind, .plane = plane, .length_ft = length_ft};
}

/* A plane with an eave as long as its upper edge, and two rakes. */
static size_t add_rectangle(struct layout *out, const char *const names[4], double length_ft,
                            double run_ft, double pitch)
{
    const double rake = trade_sloped_length_ft(run_ft, pitch);
    const size_t plane = add_plane(out, (struct layout_plane){.name = names[0],
                                                              .eave_ft = length_ft,
                                                              .ridge_ft = length_ft,
                                                              .run_ft = run_ft,
                                                              .pitch = pitch});
    add_edge(out, names[1], LAYOUT_EAVE, plane, length_ft);
    add_edge(out, names[2], LAYOUT_RAKE, plane, rake);
    add_edge(out, names[3], LAYOUT_RAKE, plane, rake);
    return plane;
}

static double outline_width(const struct footprint *roof)
{
    return roof->width_ft + 2 * roof->eave_overhang_ft;
}

static double outline_length(const struct footprint *roof)
{
    return roof->length_ft
           + 2 * (roof->form == ROOF_HIP ? roof->eave_overhang_ft : roof->rake_overhang_ft);
}

/* The names below are those a job's facts refer to: a change here changes what jobs say. */
static void lay_gable(struct layout *out, const struct footprint *roof)
{
    static const char *const FRONT[] = {"front", "front eave", "front left rake",
                                        "front right rake"};
    static const char *const BACK[] = {"back", "back eave", "back left rake", "back right rake"};
    const double length = outline_length(roof), run = outline_width(roof) / 2;
    add_rectangle(out, FRONT, length, run, roof->pitch);
    add_rectangle(out, BACK, length, run, roof->pitch);
}

static void lay_porch(struct layout *out, const struct footprint *roof)
{
    static const char *const FRONT[] = {"main front", "front eave", "front left rake",
                                        "front right rake"};
    static const char *const BACK[] = {"main back", "back eave", "back left rake",
                                       "back right rake"};
    static const char *const PORCH[] = {"porch", "porch eave", "porch left rake",
                                        "porch right rake"};
    const double length = outline_length(roof), run = outline_width(roof) / 2;
    add_rectangle(out, FRONT, length, run, roof->pitch);
    add_rectangle(out, BACK, length, run, roof->pitch);
    const size_t porch = add_rectangle(
        out, PORCH, roof->porch_length_ft + 2 * roof->rake_overhang_ft,
        roof->porch_depth_ft + roof->eave_overhang_ft, roof->porch_pitch);
    out->planes[porch].porch = true;
}

static void lay_shed(struct layout *out, const struct footprint *roof)
{
    static const char *const ROOF[] = {"roof", "eave", "left rake", "right rake"};
    add_rectangle(out, ROOF, outline_length(roof), outline_width(roof), roof->pitch);
}

/* A plane of a hip roof, with a hip at either side. */
static void add_hipped(struct layout *out, const char *const names[4], double eave_ft,
                       double shorter_ft, const struct footprint *roof)
{
    const double run = shorter_ft / 2, hip = trade_hip_length_ft(run, roof->pitch);
    const size_t plane = add_plane(out, (struct layout_plane){.name = names[0],
                                                              .eave_ft = eave_ft,
                                                              .ridge_ft = eave_ft - shorter_ft,
                                                              .run_ft = run,
                                                              .pitch = roof->pitch});
    add_edge(out, names[1], LAYOUT_EAVE, plane, eave_ft);
    add_edge(out, names[2], LAYOUT_HIP, plane, hip);
    add_edge(out, names[3], LAYOUT_HIP, plane, hip);
}

static void lay_hip(struct layout *out, const struct footprint *roof)
{
    static const char *const NAMES[][4] = {
        {"front", "front eave", "front left hip", "front right hip"},
        {"back", "back eave", "back left hip", "back right hip"},
        {"left end", "left end eave", "left end, front hip", "left end, back hip"},
        {"right end", "right end eave", "right end, front hip", "right end, back hip"}};
    const double length = outline_length(roof), width = outline_width(roof);
    for (size_t i = 0; i < 4; i++)
        add_hipped(out, NAMES[i], i < 2 ? length : width, fmin(length, width), roof);
}

/* The main plane that the wing runs into. */
static void add_notched(struct layout *out, const struct footprint *roof, double half_ft,
                        double left_ft)
{
    const double length = outline_length(roof), run = outline_width(roof) / 2;
    const double rake = trade_sloped_length_ft(run, roof->pitch);
    const double valley = trade_hip_length_ft(half_ft, roof->pitch);
    const size_t plane = add_plane(
        out, (struct layout_plane){.name = "main front",
                                   .eave_ft = length - 2 * half_ft,
                                   .ridge_ft = length,
                                   .run_ft = run,
                                   .pitch = roof->pitch,
                                   .plan_sqft = length * run - half_ft * half_ft,
                                   .odd = true});
    add_edge(out, "front left eave", LAYOUT_EAVE, plane, left_ft);
    add_edge(out, "front right eave", LAYOUT_EAVE, plane, length - 2 * half_ft - left_ft);
    add_edge(out, "front left rake", LAYOUT_RAKE, plane, rake);
    add_edge(out, "front right rake", LAYOUT_RAKE, plane, rake);
    add_edge(out, "left valley, main side", LAYOUT_VALLEY, plane, valley);
    add_edge(out, "right valley, main side", LAYOUT_VALLEY, plane, valley);
}

/* One side of the wing, from its eave to its ridge: the upper edge is longer by as much
 * as the ridge runs into the main slope. */
static void add_wing_plane(struct layout *out, const char *const names[4],
                           const struct footprint *roof, double half_ft)
{
    const double beyond = roof->wing_out_ft + roof->rake_overhang_ft - roof->eave_overhang_ft;
    const size_t plane = add_plane(out, (struct layout_plane){.name = names[0],
                                                              .eave_ft = beyond,
                                                              .ridge_ft = beyond + half_ft,
                                                              .run_ft = half_ft,
                                                              .pitch = roof->pitch});
    add_edge(out, names[1], LAYOUT_EAVE, plane, beyond);
    add_edge(out, names[2], LAYOUT_RAKE, plane, trade_sloped_length_ft(half_ft, roof->pitch));
    add_edge(out, names[3], LAYOUT_VALLEY, plane, trade_hip_length_ft(half_ft, roof->pitch));
}

static const char *lay_cross_gable(struct layout *out, const struct footprint *roof,
                                   double wing_left_ft)
{
    static const char *const BACK[] = {"main back", "back eave", "back left rake",
                                       "back right rake"};
    static const char *const LEFT[] = {"wing left", "wing left eave", "wing left rake",
                                       "left valley, wing side"};
    static const char *const RIGHT[] = {"wing right", "wing right eave", "wing right rake",
                                        "right valley, wing side"};
    const double half = roof->wing_width_ft / 2 + roof->eave_overhang_ft;
    /* Where the wing's eave begins, from the left end of the main eave: both overhang. */
    const double left = wing_left_ft + roof->rake_overhang_ft - roof->eave_overhang_ft;
    if (!isfinite(left) || wing_left_ft < 0)
        return "the wing's left wall must stand 0 ft or more from the left end wall";
    if (left < 0)
        return "the wing's eave reaches past the left end of the main eave";
    if (left + 2 * half > outline_length(roof))
        return "the wing's eave reaches past the right end of the main eave";
    add_rectangle(out, BACK, outline_length(roof), outline_width(roof) / 2, roof->pitch);
    add_notched(out, roof, half, left);
    add_wing_plane(out, LEFT, roof, half);
    add_wing_plane(out, RIGHT, roof, half);
    out->valleys[out->valley_count++] = "left valley";
    out->valleys[out->valley_count++] = "right valley";
    return NULL;
}

/* All eaves first, then rakes, hips, valleys: reports take neighbors of one kind
 * together. */
static void sort_edges(struct layout *out)
{
    struct layout_edge sorted[LAYOUT_EDGES_MOST];
    size_t count = 0;
    for (int kind = LAYOUT_EAVE; kind <= LAYOUT_VALLEY; kind++)
        for (size_t i = 0; i < out->edge_count; i++)
            if ((int)out->edges[i].kind == kind)
                sorted[count++] = out->edges[i];
    for (size_t i = 0; i < count; i++)
        out->edges[i] = sorted[i];
}

int trade_layout(struct layout *out, const struct footprint *roof, double wing_left_ft,
                 const char **why)
{
    struct footprint_measure measure;
    if (trade_footprint(&measure, roof, why) != 0)
        return -1;
    *out = (struct layout){.ridge_ft = measure.ridge_ft,
                           .hip_ft = measure.hip_ft,
                           .valley_ft = measure.valley_ft,
                           .least_width_ft = NAN};
    switch (roof->form) {
    case ROOF_GABLE:
        lay_gable(out, roof);
        break;
    case ROOF_HIP:
        lay_hip(out, roof);
        break;
    case ROOF_GABLE_PORCH:
        lay_porch(out, roof);
        break;
    case ROOF_SHED:
        lay_shed(out, roof);
        break;
    case ROOF_CROSS_GABLE:
        *why = lay_cross_gable(out, roof, wing_left_ft);
        break;
    }
    sort_edges(out);
    /* With a porch or a wing the outline is no rectangle, and which width counts is left
     * open. */
    if (roof->form != ROOF_GABLE_PORCH && roof->form != ROOF_CROSS_GABLE)
        out->least_width_ft = fmin(outline_length(roof), outline_width(roof));
    return *why == NULL ? 0 : -1;
}
