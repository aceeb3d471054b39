#include "ask/expected_demand.h"

#include "base/text.h"
#include "job/lay_out.h"
#include "job/path.h"
#include "judge/judge.h"
#include "judge/row_reads.h"

#include <stdlib.h>

/* A rule that needs more than this to say what it demands is left open: the card then
 * asks instead. */
enum {
    DEEPEST = 3,    /* facts expected one on top of another */
    RUNS_MOST = 80, /* judgements for one finding */
};

/* One search: every value of what is lacking is tried, and all must lead to one demand. */
struct supposing {
    struct rulebook *book;
    enum stage reached;
    const struct finding *asked;
    struct arena *arena;
    size_t runs;
    bool any;
    struct expected_demand found;
};

/* What may be expected ---------------------------------------------------------------- */

/* How many values stand for all the field may have: each choice; of a number both ends of
 * its range. 0: too many to try. */
static size_t value_count(const struct field *field)
{
    switch (field->type) {
    case FIELD_YES_NO:
        return 2;
    case FIELD_NUMBER:
    case FIELD_INTEGER:
    case FIELD_NUMBERS:
        return field->has_least && field->has_most ? 2 : 0;
    case FIELD_CHOICE:
    case FIELD_CHOICES:
        return field->choice_count;
    case FIELD_GROUP:
    case FIELD_LIST:
    case FIELD_TEXT:
    case FIELD_SLOPE:
    case FIELD_DATE:
    case FIELD_REFERENCE:
        break;
    }
    return 0;
}

/* Number `index` of them. */
static cJSON *value_at(const struct field *field, size_t index)
{
    const double number = index == 0 ? field->least : field->most;
    switch (field->type) {
    case FIELD_YES_NO:
        return cJSON_CreateBool(index == 0);
    case FIELD_NUMBER:
    case FIELD_INTEGER:
        return cJSON_CreateNumber(number);
    case FIELD_NUMBERS:
        return cJSON_CreateDoubleArray(&number, 1);
    case FIELD_CHOICE:
        return cJSON_CreateString(field->choices[index]);
    case FIELD_CHOICES:
        return cJSON_CreateStringArray(&field->choices[index], 1);
    case FIELD_GROUP:
    case FIELD_LIST:
    case FIELD_TEXT:
    case FIELD_SLOPE:
    case FIELD_DATE:
    case FIELD_REFERENCE:
        break;
    }
    return NULL;
}

/* What comes of it ---------------------------------------------------------------------- */

static bool same_value(const struct value *a, const struct value *b)
{
    return profile_same_value(a, b) && text_same(a->text, b->text) && text_same(a->unit, b->unit);
}

/* The value with its texts in the arena: the result it came from is freed. */
static struct value keep_value(struct arena *arena, const struct value *value)
{
    struct value kept = *value;
    kept.text = arena_copy(arena, value->text);
    kept.unit = arena_copy(arena, value->unit);
    const char **set = arena_array(arena, value->set_count + 1, sizeof(*set));
    for (size_t i = 0; set != NULL && i < value->set_count; i++)
        set[i] = arena_copy(arena, value->set[i]);
    kept.set = set;
    return kept;
}

/* The list only: what it names belongs to the profile. */
static const struct cite *keep_cites(struct arena *arena, const struct finding *finding)
{
    struct cite *cites = arena_array(arena, finding->cite_count + 1, sizeof(*cites));
    for (size_t i = 0; cites != NULL && i < finding->cite_count; i++)
        cites[i] = finding->cites[i];
    return cites;
}

static const struct maker *keep_makers(struct arena *arena, const struct finding *finding)
{
    struct maker *makers = arena_array(arena, finding->maker_count + 1, sizeof(*makers));
    for (size_t i = 0; makers != NULL && i < finding->maker_count; i++)
        makers[i] = finding->makers[i];
    return makers;
}

/* The demand of a finding: of two bounds, the lower one first. Whichever the
 * expected value misses is what the rule held it against. */
struct demand {
    const struct value *required, *also;
    enum sense sense, also_sense;
};

static struct demand demand_of(const struct finding *finding)
{
    const struct demand demand = {&finding->required, &finding->also, finding->sense,
                                  finding->also_sense};
    const bool turned = finding->also.kind != VALUE_NONE && finding->also_sense == SENSE_AT_LEAST;
    return turned ? (struct demand){demand.also, demand.required, demand.also_sense, demand.sense}
                  : demand;
}

/* The first demand is kept; every later one must be the same. Its wording may differ, and
 * is then left out. */
static bool demands_agree(struct supposing *s, const struct finding *finding)
{
    const struct demand demand = demand_of(finding);
    if (finding->required.kind == VALUE_NONE)
        return false;
    if (s->any) {
        if (!text_same(s->found.duty, finding->duty))
            s->found.duty = NULL;
        return same_value(&s->found.required, demand.required) && s->found.sense == demand.sense
               && same_value(&s->found.also, demand.also)
               && s->found.also_sense == demand.also_sense;
    }
    s->any = true;
    s->found.required = keep_value(s->arena, demand.required);
    s->found.sense = demand.sense;
    s->found.also = keep_value(s->arena, demand.also);
    s->found.also_sense = demand.also_sense;
    s->found.duty = arena_copy(s->arena, finding->duty);
    s->found.cites = keep_cites(s->arena, finding);
    s->found.cite_count = finding->cite_count;
    s->found.makers = keep_makers(s->arena, finding);
    s->found.maker_count = finding->maker_count;
    s->found.amended = finding->amended;
    return !s->arena->failed;
}

/* Only the one rule was judged: the place tells its findings apart. */
static const struct finding *same_place(const struct result *result, const struct finding *asked)
{
    for (size_t i = 0; i < result->finding_count; i++)
        if (text_same(result->findings[i].where, asked->where))
            return &result->findings[i];
    return NULL;
}

static bool try_all(struct supposing *s, const cJSON *job, const char *lacks, int depth);

/* Judges the one rule again. */
static bool try_one(struct supposing *s, const cJSON *job, int depth)
{
    struct result result = {.only_stage = -1};
    const struct probe probe = {.only_rule = s->asked->rule};
    bool told = s->runs++ < RUNS_MOST && judge(s->book, job, -1, s->reached, &probe, &result) == 0;
    const struct finding *finding = told ? same_place(&result, s->asked) : NULL;
    if (finding == NULL)
        told = false;
    else if (finding->compared)
        told = demands_agree(s, finding);
    else /* what is still lacking is supposed on top of this */
        told = finding->outcome == OUTCOME_OPEN && finding->lacks != NULL && depth < DEEPEST
               && try_all(s, job, finding->lacks, depth + 1);
    result_free(&result);
    return told;
}

/* A fact of the footprint shows in the planes and edges. False when there can be
 * no such roof. */
static bool lay_out_again(const struct supposing *s, cJSON *job)
{
    struct problems problems = {0};
    lay_out(job, &s->book->fields, "", &problems);
    const bool well = problems.count == 0 && !problems.out_of_memory;
    problems_free(&problems);
    return well;
}

static bool try_all(struct supposing *s, const cJSON *job, const char *lacks, int depth)
{
    const struct field *field = path_field(&s->book->fields, lacks);
    const struct rule *rule = rulebook_rule(s->book, s->asked->rule);
    size_t count = field == NULL ? 0 : value_count(field);
    if (count > 1 && rule != NULL && !row_reads_demand_hangs_on(rule, field))
        count = 1;
    /* All must agree; the first that does not ends it. */
    bool told = count > 0;
    for (size_t i = 0; told && i < count; i++) {
        cJSON *copy = cJSON_Duplicate(job, true);
        told = copy != NULL && path_set(copy, lacks, value_at(field, i)) && lay_out_again(s, copy)
               && try_one(s, copy, depth);
        cJSON_Delete(copy);
    }
    return told;
}

bool expected_demand(struct rulebook *book, const cJSON *job, enum stage reached,
                     const struct finding *finding, struct arena *arena,
                     struct expected_demand *out)
{
    struct supposing s = {.book = book, .reached = reached, .asked = finding, .arena = arena};
    /* Without `any` no value led to a comparison, and there is nothing to agree on. */
    const bool told = try_all(&s, job, finding->lacks, 1);
    *out = s.found;
    return told && s.any;
}
