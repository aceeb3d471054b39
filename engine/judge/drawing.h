/* drawing.h - the drawings, the dimensions that each takes, and where rules/drawings.lua
 * says that they come from: which facts of the job, whose demand, which figure.
 *
 * The drawings themselves (draw/) know no job and no rule; here is what ties them
 * together. What comes of it for one job is drawn.h.
 */
#ifndef EAVEMARK_JUDGE_DRAWING_H
#define EAVEMARK_JUDGE_DRAWING_H

#include "job/stage.h"

#include <stdbool.h>
#include <stddef.h>

struct condition;
struct fact;
struct field;

/* What a drawing takes ------------------------------------------------------------- */

enum dimension_kind {
    DIMENSION_NAME, /* a text: what the thing drawn is called */
    DIMENSION_NUMBER,
    DIMENSION_YES_NO,
};

struct dimension {
    const char *name; /* "edge" */
    enum dimension_kind kind;
    const char *unit; /* of a number; or NULL */
};

/* The dimensions of each drawing, as they stand in its table and in what is drawn. */
enum { PLAN_RIDGE };
enum { NAILING_NAME, NAILING_EDGE, NAILING_FIELD, NAILING_GABLE, NAILING_BAND, NAILING_BAND_WIDTH };
enum {
    PANEL_NAME,
    PANEL_LENGTH,
    PANEL_WIDTH,
    PANEL_SUPPORTS,
    PANEL_EDGE,
    PANEL_FIELD,
    PANEL_EDGE_DISTANCE,
    PANEL_GAP
};
enum {
    EAVE_NAME,
    EAVE_PITCH,
    EAVE_OVERHANG,
    EAVE_WALL,
    EAVE_INSIDE,
    EAVE_WALL_COUNTS,
    EAVE_STRIP_ALONE,
    EAVE_REACH,
    EAVE_SHEET,
    EAVE_STARTER,
    EAVE_HEAD_LAP,
    EAVE_METAL,
    EAVE_OVER_METAL,
    EAVE_UNDER_METAL,
    EAVE_DOWN,
    EAVE_BACK,
    EAVE_SPACING
};
enum { COURSES_STRIP, COURSES_EXPOSURE, COURSES_OFFSET, COURSES_NAILS, COURSES_FEW, COURSES_MANY };
enum { ATTIC_NAME, ATTIC_AREA, ATTIC_NEEDED, ATTIC_LOW };

/* And of the lists within: the planes of a roof, their sides, an attic's vents. */
enum { PLANE_NAME, PLANE_PITCH, PLANE_EAVE, PLANE_RIDGE, PLANE_RUN, PLANE_AREA };
enum { SIDE_LENGTH, SIDE_HIP, SIDE_VALLEY, SIDE_RAKE, SIDE_EAVE };
enum { VENT_AREA_PER_FOOT, VENT_LENGTH, VENT_AREA_EACH, VENT_COUNT, VENT_HIGH, VENT_LOW, VENT_FAN };
enum { LIST_PLANES, LIST_SIDES };
enum { LIST_VENTS };

enum { DIMENSIONS_MOST = 20, DRAWING_LISTS_MOST = 2 };

struct drawing_form {
    const char *name;                             /* "nailing"; of a list "planes" */
    struct dimension dimensions[DIMENSIONS_MOST]; /* ended by one without a name */
};

struct drawing_forms {
    struct drawing_form itself;
    struct drawing_form lists[DRAWING_LISTS_MOST]; /* items of the first belong to the
                         thing drawn, of the second to those of the first; ended likewise */
};

/* What the drawing of this name takes, or NULL when there is none. */
const struct drawing_forms *drawing_forms(const char *name);

/* What is declared ------------------------------------------------------------------- */

struct drawing_part {
    const struct fact *fact;           /* what is planned; or NULL */
    const struct condition *condition; /* yes or no by the job; or NULL */
    const char *figure;                /* by the place; or NULL */
    double number;                     /* given outright: NAN where it is not */
    const char *rule;                  /* whose demand it is; or NULL */
    const struct field *through;       /* the rule judges what this reference names, not
                                          what is drawn; or NULL */
    bool of_house;                     /* it judges the whole house */
};

/* One thing of the job each: the house, decks, the vents in attics ... */
struct drawing_of {
    const struct drawing_form *form;
    const struct field *per[2];  /* lists, outermost first, as of a rule */
    size_t per_depth;            /* 0: the house */
    const struct field *belongs; /* of a list: the reference to what its items belong to;
                                     NULL where they lie in it, or are of the house */
    struct drawing_part *parts;  /* as the dimensions of the form */
};

struct drawing {
    const char *name;         /* "nailing" */
    bool stages[STAGE_COUNT]; /* whose card shows it */
    struct drawing_of itself;
    const struct condition *when; /* what is drawn; or NULL: each */
    const char *unjudged;         /* why what no rule speaks of is not drawn; or NULL */
    struct drawing_of lists[DRAWING_LISTS_MOST]; /* without a form where none is declared */
    const char *file;
    int line;
    struct drawing *next;
};

/* The one field of the list that refers to that other list; NULL where there is none, or
 * several. */
const struct field *drawing_reference(const struct field *list, const char *refers);

struct problems;
struct rulebook;

/* Once all files are run: finds the rules that drawings take demands from, and reports
 * those that do not exist, or that judge what is not drawn (PROBLEM_RULES). */
void drawing_check(struct rulebook *book, struct problems *problems);

#endif
