#include "judge/drawing.h"

#include "job/fields.h"

#include <string.h>

/* The dimensions a drawing may be given: the name that a rule file writes, what it is, and
 * the unit it is drawn in. NULL: none, for a count or yes or no. */
#define IN(dimension)                     \
    {                                     \
        dimension, DIMENSION_NUMBER, "in" \
    }
#define FT(dimension)                     \
    {                                     \
        dimension, DIMENSION_NUMBER, "ft" \
    }
#define YES_NO(dimension)                 \
    {                                     \
        dimension, DIMENSION_YES_NO, NULL \
    }
#define NAME                         \
    {                                \
        "name", DIMENSION_NAME, NULL \
    }

#define PLANES                                                                               \
    {                                                                                        \
        "planes",                                                                            \
        {                                                                                    \
            [PLANE_NAME] = NAME, [PLANE_PITCH] = {"pitch", DIMENSION_NUMBER, "rise_in_12"},  \
            [PLANE_EAVE] = FT("eave"), [PLANE_RIDGE] = FT("ridge"), [PLANE_RUN] = FT("run"), \
            [PLANE_AREA] = {                                                                 \
                "area",                                                                      \
                DIMENSION_NUMBER,                                                            \
                "sqft"                                                                       \
            }                                                                                \
        }                                                                                    \
    }
#define SIDES                                                               \
    {                                                                       \
        "sides",                                                            \
        {                                                                   \
            [SIDE_LENGTH] = FT("length"), [SIDE_HIP] = YES_NO("hip"),       \
            [SIDE_VALLEY] = YES_NO("valley"), [SIDE_RAKE] = YES_NO("rake"), \
            [SIDE_EAVE] = YES_NO("eave")                                    \
        }                                                                   \
    }

/* In the order of drawing.h's enums, which index them. A drawing without lists has none at
 * all: {{0}}. */
/* clang-format off */
static const struct drawing_forms FORMS[] = {
    {{"plan", {[PLAN_RIDGE] = FT("ridge")}}, {[LIST_PLANES] = PLANES, [LIST_SIDES] = SIDES}},
    {{"nailing", {[NAILING_NAME] = NAME, [NAILING_EDGE] = IN("edge"),
                  [NAILING_FIELD] = IN("field"), [NAILING_GABLE] = IN("gable"),
                  [NAILING_BAND] = IN("band"), [NAILING_BAND_WIDTH] = IN("band_width")}},
     {[LIST_PLANES] = PLANES, [LIST_SIDES] = SIDES}},
    {{"panel", {[PANEL_NAME] = NAME, [PANEL_LENGTH] = IN("length"), [PANEL_WIDTH] = IN("width"),
                [PANEL_SUPPORTS] = IN("supports"), [PANEL_EDGE] = IN("edge"),
                [PANEL_FIELD] = IN("field"), [PANEL_EDGE_DISTANCE] = IN("edge_distance"),
                [PANEL_GAP] = IN("gap")}}, {{0}}},
    {{"eave", {[EAVE_NAME] = NAME, [EAVE_PITCH] = {"pitch", DIMENSION_NUMBER, "rise_in_12"},
               [EAVE_OVERHANG] = IN("overhang"), [EAVE_WALL] = IN("wall"),
               [EAVE_INSIDE] = IN("inside"), [EAVE_WALL_COUNTS] = YES_NO("wall_counts"),
               [EAVE_STRIP_ALONE] = YES_NO("strip_alone"), [EAVE_REACH] = IN("reach"),
               [EAVE_SHEET] = IN("sheet"), [EAVE_STARTER] = IN("starter"),
               [EAVE_HEAD_LAP] = IN("head_lap"), [EAVE_METAL] = YES_NO("metal"),
               [EAVE_OVER_METAL] = YES_NO("over_metal"),
               [EAVE_UNDER_METAL] = YES_NO("under_metal"), [EAVE_DOWN] = IN("down"),
               [EAVE_BACK] = IN("back"), [EAVE_SPACING] = IN("spacing")}}, {{0}}},
    {{"courses", {[COURSES_STRIP] = IN("strip"), [COURSES_EXPOSURE] = IN("exposure"),
                  [COURSES_OFFSET] = IN("offset"),
                  [COURSES_NAILS] = {"nails", DIMENSION_NUMBER, "nails"},
                  [COURSES_FEW] = {"few", DIMENSION_NUMBER, "nails"},
                  [COURSES_MANY] = {"many", DIMENSION_NUMBER, "nails"}}}, {{0}}},
    {{"attic", {[ATTIC_NAME] = NAME, [ATTIC_AREA] = {"area", DIMENSION_NUMBER, "sqft"},
                [ATTIC_NEEDED] = {"needed", DIMENSION_NUMBER, "sqin"},
                [ATTIC_LOW] = {"low", DIMENSION_NUMBER, "sqin"}}},
     {[LIST_VENTS] = {"vents",
                      {[VENT_AREA_PER_FOOT] = {"area_per_foot", DIMENSION_NUMBER, "sqin_per_ft"},
                       [VENT_LENGTH] = FT("length"),
                       [VENT_AREA_EACH] = {"area_each", DIMENSION_NUMBER, "sqin"},
                       [VENT_COUNT] = {"count", DIMENSION_NUMBER, NULL},
                       [VENT_HIGH] = YES_NO("high"), [VENT_LOW] = YES_NO("low"),
                       [VENT_FAN] = YES_NO("fan")}}}},
};
/* clang-format on */

const struct drawing_forms *drawing_forms(const char *name)
{
    for (size_t i = 0; i < sizeof(FORMS) / sizeof(FORMS[0]); i++)
        if (strcmp(FORMS[i].itself.name, name) == 0)
            return &FORMS[i];
    return NULL;
}

const struct field *drawing_reference(const struct field *list, const char *refers)
{
    const struct field *found = NULL;
    for (const struct field *f = list->first_child; f != NULL; f = f->next)
        if (f->type == FIELD_REFERENCE && strcmp(f->refers, refers) == 0) {
            /* Two references to one list: nobody could say which is meant. */
            if (found != NULL)
                return NULL;
            found = f;
        }
    return found;
}
