#include "job/fields_spec.h"

#include <ctype.h>
#include <math.h>
#include <string.h>

/* Units that measure: a number's name ends in them. The longest comes before
 * its own ending. */
static const char *const MEASURES[] = {
    "sqin_per_ft", "lb_per_square", "rise_in_12", "sqin", "sqft", "percent", "ratio",
    "perm",        "psf",           "mph",        "usd",  "in",   "ft",      "lb",
};

/* Units that count or date: "per_shingle" is in nails, "year_built" a year. */
static const char *const COUNTS[] = {
    "nails", "layers", "plies", "days", "squares", "count", "year",
};

/* Where the answer is to be had: at the desk, on the product's wrapper, from a paper,
 * from the building department, on the roof, in the attic. */
const char *const FIELD_ANSWERS[] = {"desk", "wrapper", "paper", "department",
                                     "roof", "attic",   NULL};

static bool is_answer(const char *word)
{
    const char *const *known = FIELD_ANSWERS;
    while (*known != NULL && strcmp(*known, word) != 0)
        known++;
    return *known != NULL;
}

static bool among(const char *const *words, size_t count, const char *word)
{
    for (size_t i = 0; i < count; i++)
        if (strcmp(words[i], word) == 0)
            return true;
    return false;
}

/* Whole parts only: "begin" does not end in "in". */
static bool ends_in(const char *name, const char *unit)
{
    const size_t n = strlen(name), u = strlen(unit);
    return n >= u && strcmp(name + n - u, unit) == 0 && (n == u || name[n - u - 1] == '_');
}

/* Names carry their unit, so that a job reads without the catalogue: "width_in",
 * "area_sqft". */
static const char *measure_in_name(const char *name)
{
    for (size_t i = 0; i < sizeof(MEASURES) / sizeof(MEASURES[0]); i++)
        if (ends_in(name, MEASURES[i]))
            return MEASURES[i];
    return NULL;
}

/* Those that may carry a unit. */
static bool is_number(enum field_type type)
{
    return type == FIELD_NUMBER || type == FIELD_INTEGER || type == FIELD_NUMBERS;
}

/* A job writes these names, and so do paths: nothing in them may need quoting. */
static bool name_sound(const char *path, const char *name)
{
    size_t parts = 1;
    for (const char *c = path; *c != '\0'; c++)
        parts += *c == '.';
    if (parts > FIELDS_DEEPEST || !isalpha((unsigned char)name[0]) || strlen(name) > 60)
        return false;
    for (const char *c = name; *c != '\0'; c++)
        if (!isalnum((unsigned char)*c) && *c != '_')
            return false;
    return true;
}

/* These return what is wrong with a declaration, in words; NULL when nothing is. */
static const char *unit_wrong(struct arena *arena, const char *name, const struct field *spec)
{
    const char *in_name = measure_in_name(name);
    if (!is_number(spec->type))
        return spec->unit == NULL ? NULL : "only numbers have a unit";
    if (spec->unit == NULL)
        return in_name == NULL
                   ? NULL
                   : arena_format(arena, "the name ends in \"%s\", but no unit is given", in_name);
    /* Counts need not stand in the name, but may not contradict it. */
    if (among(COUNTS, sizeof(COUNTS) / sizeof(COUNTS[0]), spec->unit) && in_name == NULL)
        return NULL;
    if (in_name != NULL ? strcmp(in_name, spec->unit) == 0 : ends_in(name, spec->unit))
        return NULL;
    return arena_format(arena, "the unit is \"%s\", so the name must end in \"_%s\"", spec->unit,
                        spec->unit);
}

/* What is not bounded is no part of a number. */
static bool range_is_whole(const struct field *spec)
{
    return (!spec->has_least || spec->least == floor(spec->least))
           && (!spec->has_most || spec->most == floor(spec->most));
}

static const char *range_wrong(const struct field *spec)
{
    /* What a range bounds depends on the type: the value, or how many characters or
     * items. */
    if (!spec->has_least && !spec->has_most)
        return NULL;
    if ((spec->has_least && !isfinite(spec->least)) || (spec->has_most && !isfinite(spec->most)))
        return "its range is not finite";
    if (spec->has_least && spec->has_most && spec->least > spec->most)
        return "its range is empty: the least is over the most";
    switch (spec->type) {
    case FIELD_TEXT:
    case FIELD_LIST:
    case FIELD_CHOICES:
        if (!range_is_whole(spec) || (spec->has_least && spec->least < 0)
            || (spec->has_most && spec->most < 0))
            return "its range is a length: whole numbers from 0";
        return NULL;
    case FIELD_INTEGER:
        return range_is_whole(spec) ? NULL : "its range must be of whole numbers";
    case FIELD_NUMBER:
    case FIELD_NUMBERS:
    case FIELD_SLOPE:
        return NULL;
    case FIELD_GROUP:
    case FIELD_YES_NO:
    case FIELD_CHOICE:
    case FIELD_DATE:
    case FIELD_REFERENCE:
        break;
    }
    return "a field of this type has no range";
}

/* A choice given twice would be offered twice, under two numbers. */
static const char *choices_wrong(struct arena *arena, const struct field *spec)
{
    const bool takes = spec->type == FIELD_CHOICE || spec->type == FIELD_CHOICES;
    if (!takes)
        return spec->choice_count == 0 ? NULL : "only a choice has choices";
    if (spec->choice_count == 0)
        return "a choice without choices";
    for (size_t i = 0; i < spec->choice_count; i++) {
        if (spec->choices[i][0] == '\0')
            return "a choice is empty";
        if (among(spec->choices, i, spec->choices[i]))
            return arena_format(arena, "the choice \"%s\" is given twice", spec->choices[i]);
    }
    return NULL;
}

/* What a reference refers to may be declared in a file that is read later. */
static const char *reference_wrong(struct fields *fields, const struct field *spec)
{
    if (spec->type != FIELD_REFERENCE)
        return spec->refers == NULL ? NULL : "only a reference refers";
    if (spec->refers == NULL)
        return "a reference must say what it refers to";
    const struct field *list = fields_find(fields, spec->refers);
    if (list == NULL || list->type == FIELD_LIST)
        return NULL; /* it may still be declared: see fields_dangling */
    return arena_format(&fields->arena, "refers to \"%s\", which is not a list", spec->refers);
}

/* A shop sheet goes with many houses: nothing in it may be of one of them. */
static const char *habit_wrong(const struct field *spec)
{
    if (spec->habit == HABIT_NONE)
        return NULL;
    if (spec->measured)
        return "what is measured is no habit";
    if (spec->required)
        return "what every job must say is no habit";
    switch (spec->type) {
    case FIELD_GROUP:
    case FIELD_LIST:
        return "habits are marked one by one, not by group or list";
    case FIELD_DATE:
        return "a day is no habit";
    case FIELD_REFERENCE:
        return "which item of the job's is meant is no habit";
    case FIELD_TEXT:
    case FIELD_NUMBER:
    case FIELD_INTEGER:
    case FIELD_YES_NO:
    case FIELD_CHOICE:
    case FIELD_SLOPE:
    case FIELD_NUMBERS:
    case FIELD_CHOICES:
        break;
    }
    return NULL;
}

/* A thing that stays on the roof is a plan: whether it did stay is another fact, measured. */
static const char *stays_wrong(const struct field *spec)
{
    return spec->stays && (spec->type != FIELD_YES_NO || spec->measured)
               ? "whether something stays is yes or no, as planned"
               : NULL;
}

/* One value for a place: a fact of the job as a whole, planned and no list. */
static const char *of_place_wrong(const char *path, const struct field *spec)
{
    if (!spec->of_place)
        return NULL;
    if (strchr(path, '[') != NULL || spec->measured || spec->required || spec->habit != HABIT_NONE)
        return "what a place states is one fact of the job as a whole, neither measured, "
               "required nor a habit";
    if (spec->type != FIELD_TEXT && spec->type != FIELD_NUMBER && spec->type != FIELD_INTEGER
        && spec->type != FIELD_YES_NO && spec->type != FIELD_CHOICE)
        return "what a place states is a number, a choice, a text, or yes or no";
    return NULL;
}

bool fields_spec_sound(struct fields *fields, const char *path, const char *name,
                       const struct field *spec, const char **why)
{
    if (!name_sound(path, name)) {
        *why = arena_format(&fields->arena,
                            "\"%s\" is not a name: letters, digits and _, a letter first, at most "
                            "%d parts",
                            path, FIELDS_DEEPEST);
        return false;
    }
    if (spec->answer != NULL && !is_answer(spec->answer)) {
        *why = arena_format(&fields->arena,
                            "answer \"%s\" is not one of desk, wrapper, paper, "
                            "department, roof, attic",
                            spec->answer);
        return false;
    }
    /* The first thing wrong is enough: one declaration is one line. */
    *why = unit_wrong(&fields->arena, name, spec);
    if (*why == NULL)
        *why = range_wrong(spec);
    if (*why == NULL)
        *why = choices_wrong(&fields->arena, spec);
    if (*why == NULL)
        *why = reference_wrong(fields, spec);
    if (*why == NULL)
        *why = habit_wrong(spec);
    if (*why == NULL)
        *why = stays_wrong(spec);
    if (*why == NULL)
        *why = of_place_wrong(path, spec);
    return *why == NULL && !fields->arena.failed;
}
