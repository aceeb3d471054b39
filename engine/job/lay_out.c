#include "job/lay_out.h"

#include "job/json.h"
#include "job/lay_out_parts.h"
#include "job/tree.h"

#include <stdio.h>

/* Laid out where facts are lacking: only the names of its planes and edges are used. */
static const struct footprint PLACEHOLDER_ROOF = {
    .length_ft = 60,
    .width_ft = 30,
    .pitch = 4,
    .porch_length_ft = 10,
    .porch_depth_ft = 6,
    .porch_pitch = 4,
    .wing_width_ft = 20,
    .wing_out_ft = 10,
};
static const double PLACEHOLDER_WING_LEFT_FT = 20;

/* Without its form the roof has no planes yet that could be told more of, nor
 * referred to: what the job says of them waits. */
static void set_aside(cJSON *job)
{
    static const char *const LISTS[] = {"slopes", "edges", "valleys"};
    cJSON *roof = cJSON_GetObjectItemCaseSensitive(job, "roof"), *chimney = NULL;
    for (size_t i = 0; i < sizeof(LISTS) / sizeof(LISTS[0]); i++)
        tree_drop(roof, LISTS[i]);
    cJSON_ArrayForEach(chimney, cJSON_GetObjectItemCaseSensitive(roof, "chimneys"))
        tree_drop(chimney, "slope");
}

/* Lays out the roof that the facts describe, or when they do not, any of that
 * form, for its names. True when the lengths are the roof's own. */
static bool find_layout(const struct footprint_facts *facts, struct layout *layout,
                        const char *file, struct problems *problems)
{
    struct footprint roof = PLACEHOLDER_ROOF;
    const char *why = NULL;
    if (!facts->wrong && facts->lacking == NULL) {
        if (trade_layout(layout, &facts->roof, facts->wing_left_ft, &why) == 0)
            return true;
        problem_at(problems, PROBLEM_JOB, file, "/roof/footprint", "there is no such roof: %s",
                   why);
    }
    roof.form = facts->roof.form;
    trade_layout(layout, &roof, PLACEHOLDER_WING_LEFT_FT, &why);
    return false;
}

/* A porch or a wing that the form has no place for would be left out unseen. */
static void refuse_part(const struct footprint_facts *facts, enum roof_form with, const char *part,
                        const char *file, struct problems *problems)
{
    char pointer[64];
    if (facts->roof.form == with
        || json_is_absent(cJSON_GetObjectItemCaseSensitive(facts->group, part)))
        return;
    snprintf(pointer, sizeof(pointer), "/roof/footprint/%s", part);
    problem_at(problems, PROBLEM_JOB, file, pointer,
               "a roof of the form \"%s\" has no %s; the form that has is \"%s\"",
               footprint_form_word(facts->roof.form), part, footprint_form_word(with));
}

void lay_out(cJSON *job, const struct fields *fields, const char *file, struct problems *problems)
{
    struct footprint_facts facts;
    struct layout layout = {0};
    footprint_facts_read(job, fields, &facts);
    if (facts.group == NULL)
        return;
    /* Nothing can be laid out without the form, not even names. */
    if (!facts.form_known) {
        set_aside(job);
        return;
    }
    struct laying laying = {.job = job,
                            .roof = cJSON_GetObjectItemCaseSensitive(job, "roof"),
                            .facts = &facts,
                            .layout = &layout,
                            .file = file,
                            .problems = problems};
    refuse_part(&facts, ROOF_GABLE_PORCH, "porch", file, problems);
    refuse_part(&facts, ROOF_CROSS_GABLE, "wing", file, problems);
    laying.whole = find_layout(&facts, &layout, file, problems);
    lay_out_roof(&laying);
}
