#include "report/drawing_shapes.h"

#include "draw/drawings.h"
#include "trade/geometry.h"

#include <math.h>
#include <string.h>

/* Of one thing in a list within, or of what is drawn itself. */
static double number_of(const struct drawn_item *item, size_t dimension)
{
    return item->dimensions[dimension].number;
}

/* What is not said is no yes. */
static bool is_yes(const struct drawn_item *item, size_t dimension)
{
    return item->dimensions[dimension].answer == DRAWN_YES;
}

/* Planes ------------------------------------------------------------------------ */

/* The lengths of two pieces of eave are kept: a plan tells one break in an eave. */
static void count_sides(const struct drawn *drawn, size_t index, struct plan_plane *plane)
{
    const struct drawn_items *sides = &drawn->lists[LIST_SIDES];
    for (size_t i = 0; i < sides->count; i++) {
        const struct drawn_item *side = &sides->items[i];
        if (side->of != index)
            continue;
        plane->hips += is_yes(side, SIDE_HIP);
        plane->valleys += is_yes(side, SIDE_VALLEY);
        plane->rakes += is_yes(side, SIDE_RAKE);
        if (!is_yes(side, SIDE_EAVE))
            continue;
        if (plane->eaves < 2)
            plane->eave_pieces_ft[plane->eaves] = number_of(side, SIDE_LENGTH);
        plane->eaves++;
    }
}

static struct plan_plane plane_of(const struct drawn *drawn, size_t index)
{
    const struct drawn_item *item = &drawn->lists[LIST_PLANES].items[index];
    struct plan_plane plane = {.name = item->name,
                               .pitch = number_of(item, PLANE_PITCH),
                               .eave_ft = number_of(item, PLANE_EAVE),
                               .ridge_ft = number_of(item, PLANE_RIDGE),
                               .run_ft = number_of(item, PLANE_RUN),
                               .plan_sqft = number_of(item, PLANE_AREA)};
    count_sides(drawn, index, &plane);
    return plane;
}

/* The catalogue allows a job no more planes than a plan holds. */
static void draw_plan(const struct drawing_shown *shown, const struct draw_sheet *sheet,
                      struct text *out)
{
    struct plan_plane planes[PLAN_PLANES_MOST] = {{0}};
    struct plan_drawing plan = {.planes = planes, .ridge_ft = number_of(shown->item, PLAN_RIDGE)};
    while (plan.count < shown->drawn->lists[LIST_PLANES].count && plan.count < PLAN_PLANES_MOST) {
        planes[plan.count] = plane_of(shown->drawn, plan.count);
        plan.count++;
    }
    plan_draw(&plan, sheet, out);
}

/* The largest plane over a deck; one of which nothing is known where there is none. */
static struct plan_plane largest_plane(const struct drawing_shown *shown)
{
    const struct drawn_items *planes = &shown->drawn->lists[LIST_PLANES];
    struct plan_plane largest = {
        .pitch = NAN, .eave_ft = NAN, .ridge_ft = NAN, .run_ft = NAN, .plan_sqft = NAN};
    bool any = false;
    double most = -1;
    for (size_t i = 0; i < planes->count; i++) {
        if (planes->items[i].of != shown->index)
            continue;
        const struct plan_plane plane = plane_of(shown->drawn, i);
        const double area = plan_area_sqft(&plane);
        if (any && !(area > most))
            continue;
        any = true;
        largest = plane;
        most = isfinite(area) ? area : most;
    }
    return largest;
}

/* Decks ------------------------------------------------------------------------- */

static void draw_nailing(const struct drawing_shown *shown, const struct draw_sheet *sheet,
                         struct text *out)
{
    const struct plan_plane plane = largest_plane(shown);
    const struct nailing_drawing nailing = {
        .deck = shown->item->name,
        .plane = plane,
        .up_ft = trade_sloped_length_ft(plane.run_ft, plane.pitch),
        .edge = shown->amounts[NAILING_EDGE],
        .field = shown->amounts[NAILING_FIELD],
        .gable = shown->amounts[NAILING_GABLE],
        .band = shown->amounts[NAILING_BAND],
        .band_width = shown->amounts[NAILING_BAND_WIDTH],
    };
    nailing_draw(&nailing, sheet, out);
}

/* What the job does not say is NAN, and drawn as a question mark. */
static void draw_panel(const struct drawing_shown *shown, const struct draw_sheet *sheet,
                       struct text *out)
{
    const struct panel_drawing panel = {
        .deck = shown->item->name,
        .length_in = number_of(shown->item, PANEL_LENGTH),
        .width_in = number_of(shown->item, PANEL_WIDTH),
        .support_in = number_of(shown->item, PANEL_SUPPORTS),
        .edge = shown->amounts[PANEL_EDGE],
        .field = shown->amounts[PANEL_FIELD],
        .edge_distance = shown->amounts[PANEL_EDGE_DISTANCE],
        .gap = shown->amounts[PANEL_GAP],
    };
    panel_draw(&panel, sheet, out);
}

/* Eaves ------------------------------------------------------------------------- */

static void draw_eave(const struct drawing_shown *shown, const struct draw_sheet *sheet,
                      struct text *out)
{
    const struct drawn_item *item = shown->item;
    const enum drawn_answer counts = item->dimensions[EAVE_WALL_COUNTS].answer;
    const enum drawn_answer metal = item->dimensions[EAVE_METAL].answer;
    /* How far inside the barrier reaches is drawn only where a wall is known to count or
     * not. */
    const bool inside = shown->judged[EAVE_REACH] && counts != DRAWN_NOT_SAID
                        && !is_yes(item, EAVE_STRIP_ALONE);
    const struct eave_drawing eave = {
        .name = item->name,
        .pitch = number_of(item, EAVE_PITCH),
        .overhang_in = number_of(item, EAVE_OVERHANG),
        .wall_in = number_of(item, EAVE_WALL),
        .inside_in = inside ? number_of(item, EAVE_INSIDE) : NAN,
        .wall_counts = counts == DRAWN_YES,
        .barrier = shown->judged[EAVE_REACH] || number_of(item, EAVE_REACH) > 0,
        .reach = shown->amounts[EAVE_REACH],
        .sheet_in = number_of(item, EAVE_SHEET),
        .starter_in = number_of(item, EAVE_STARTER),
        .head_lap = shown->amounts[EAVE_HEAD_LAP],
        .metal = metal == DRAWN_YES || (metal == DRAWN_NOT_SAID && shown->judged[EAVE_METAL]),
        .over_metal = is_yes(item, EAVE_OVER_METAL),
        .under_metal = is_yes(item, EAVE_UNDER_METAL),
        .down = shown->amounts[EAVE_DOWN],
        .back = shown->amounts[EAVE_BACK],
        .spacing = shown->amounts[EAVE_SPACING],
    };
    eave_draw(&eave, sheet, out);
}

/* Courses and attics -------------------------------------------------------------- */

/* Where along a shingle the outer nails go no fact says: NAN leaves them at the usual place. */
static void draw_courses(const struct drawing_shown *shown, const struct draw_sheet *sheet,
                         struct text *out)
{
    const struct courses_drawing courses = {
        .strip_in = number_of(shown->item, COURSES_STRIP),
        .exposure = shown->amounts[COURSES_EXPOSURE],
        .offset = shown->amounts[COURSES_OFFSET],
        .nails = shown->amounts[COURSES_NAILS],
        .few = number_of(shown->item, COURSES_FEW),
        .many = number_of(shown->item, COURSES_MANY),
        .end_in = NAN,
    };
    courses_draw(&courses, sheet, out);
}

/* Net free area in square inches: by the foot, or by the piece. NAN when either number is
 * not said. */
static double vent_area(const struct drawn_item *vent)
{
    const double by_ft = number_of(vent, VENT_AREA_PER_FOOT);
    if (isfinite(by_ft))
        return by_ft * number_of(vent, VENT_LENGTH);
    return number_of(vent, VENT_AREA_EACH) * number_of(vent, VENT_COUNT);
}

static void draw_attic(const struct drawing_shown *shown, const struct draw_sheet *sheet,
                       struct text *out)
{
    const struct drawn_items *vents = &shown->drawn->lists[LIST_VENTS];
    struct attic_drawing attic = {.name = shown->item->name,
                                  .area_sqft = number_of(shown->item, ATTIC_AREA),
                                  .needed = shown->amounts[ATTIC_NEEDED],
                                  .low = shown->amounts[ATTIC_LOW]};
    for (size_t i = 0; i < vents->count; i++) {
        const struct drawn_item *vent = &vents->items[i];
        if (vent->of != shown->index || is_yes(vent, VENT_FAN))
            continue;
        /* A vent of which it is not known whether it sits high or low counts for neither. */
        double *place = is_yes(vent, VENT_LOW)    ? &attic.low_sqin
                        : is_yes(vent, VENT_HIGH) ? &attic.high_sqin
                                                  : &attic.other_sqin;
        *place += vent_area(vent);
    }
    attic_draw(&attic, sheet, out);
}

/* All of them -------------------------------------------------------------------- */

static const struct drawing_shape SHAPES[] = {
    {"plan", "Roof plan", NULL, "the job lists no planes", draw_plan},
    {"nailing", "Nailing zones", NULL, NULL, draw_nailing},
    {"panel", "A panel and its nails", "deck", NULL, draw_panel},
    {"eave", "Cut through the eave", "eave", NULL, draw_eave},
    {"courses", "Courses of shingles and their nails", NULL, NULL, draw_courses},
    {"attic", "Air through the attic", NULL, NULL, draw_attic},
};

const struct drawing_shape *drawing_shapes_find(const char *name)
{
    for (size_t i = 0; i < sizeof(SHAPES) / sizeof(SHAPES[0]); i++)
        if (strcmp(SHAPES[i].name, name) == 0)
            return &SHAPES[i];
    return NULL;
}

/* Within a thousandth: nothing smaller shows in a drawing. Two that are not said are
 * alike. */
static bool same(double a, double b)
{
    return (isnan(a) && isnan(b)) || fabs(a - b) < 0.001;
}

/* Drawn once for all that look so, under all their names. */
bool drawing_shapes_alike(const struct drawing_shown *a, const struct drawing_shown *b)
{
    for (size_t i = 0; i < DIMENSIONS_MOST; i++) {
        const struct drawn_dimension *of_a = &a->item->dimensions[i];
        const struct drawn_dimension *of_b = &b->item->dimensions[i];
        if (!same(a->amounts[i].planned, b->amounts[i].planned)
            || !same(a->amounts[i].demanded, b->amounts[i].demanded) || of_a->answer != of_b->answer
            || a->judged[i] != b->judged[i])
            return false;
    }
    return true;
}
