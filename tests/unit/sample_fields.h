/* sample_fields.h - a small catalogue for tests, and how they read problems. */
#ifndef EAVEMARK_TESTS_SAMPLE_FIELDS_H
#define EAVEMARK_TESTS_SAMPLE_FIELDS_H

#include "base/problem.h"
#include "job/fields.h"

static inline struct field *sample_add(struct fields *fields, const char *path, struct field spec)
{
    const char *why = NULL;
    struct field *field = fields_add(fields, path, &spec, &why);
    if (field == NULL)
        fail_msg("%s: %s", path, why);
    return field;
}

static inline struct field sample_range(enum field_type type, const char *unit, double least,
                                        double most)
{
    return (struct field){.type = type,
                          .unit = unit,
                          .has_least = true,
                          .has_most = true,
                          .least = least,
                          .most = most};
}

/* Declares the references before their lists, as rules/fields.lua does. */
static inline void sample_fields(struct fields *fields)
{
    static const char *METHODS[] = {"tear-off", "overlay"};
    static const char *ZONES[] = {"A", "B"};
    const struct field group = {.type = FIELD_GROUP};
    assert_int_equal(fields_start(fields), 0);
    struct field job = sample_range(FIELD_TEXT, NULL, 1, 20);
    job.required = true;
    job.ask = "What do you call this job?";
    sample_add(fields, "job", job);
    sample_add(fields, "date", (struct field){.type = FIELD_DATE});
    sample_add(fields, "scope", group);
    sample_add(fields, "scope.method",
               (struct field){.type = FIELD_CHOICE, .choices = METHODS, .choice_count = 2});
    sample_add(fields, "existing", group);
    sample_add(fields, "existing.layers", sample_range(FIELD_INTEGER, "layers", 0, 6));
    sample_add(fields, "existing.sound", (struct field){.type = FIELD_YES_NO});
    sample_add(fields, "roof", group);
    sample_add(fields, "roof.ridge_ft", sample_range(FIELD_NUMBER, "ft", 0, 1000));
    struct field zones = sample_range(FIELD_CHOICES, NULL, 1, 2);
    zones.choices = ZONES;
    zones.choice_count = 2;
    sample_add(fields, "roof.zones", zones);
    sample_add(fields, "roof.slopes", sample_range(FIELD_LIST, NULL, 1, 3));
    sample_add(fields, "roof.slopes[].name", sample_range(FIELD_TEXT, NULL, 1, 60));
    sample_add(fields, "roof.slopes[].pitch", sample_range(FIELD_SLOPE, NULL, 0, 24));
    sample_add(fields, "roof.slopes[].deck",
               (struct field){.type = FIELD_REFERENCE, .refers = "decks"});
    sample_add(fields, "roof.slopes[].beside",
               (struct field){.type = FIELD_REFERENCE, .refers = "roof.slopes"});
    sample_add(fields, "decks", (struct field){.type = FIELD_LIST});
    sample_add(fields, "decks[].name", sample_range(FIELD_TEXT, NULL, 1, 60));
    sample_add(fields, "decks[].thickness_in", sample_range(FIELD_NUMBER, "in", 0.1, 4));
    struct field measured = sample_range(FIELD_NUMBERS, "in", 0.1, 60);
    measured.measured = true;
    measured.stage = STAGE_DECK;
    sample_add(fields, "decks[].measured_spacing_in", measured);
}

/* All problems as printed; to be freed with text_free. */
static inline struct text problems_said(const struct problems *problems)
{
    struct text said = TEXT_EMPTY;
    problems_write(problems, &said);
    assert_false(said.failed);
    return said;
}

#endif
