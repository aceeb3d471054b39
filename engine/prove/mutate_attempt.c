#include "prove/mutate_attempt.h"

#include "base/date.h"
#include "base/number.h"
#include "check/check.h"
#include "job/follows.h"
#include "judge/judge.h"

#include <math.h>
#include <string.h>

/* A case's job was built by us: "" only where it leaves the fact out. */
static const char *text_of(const cJSON *job, const char *key)
{
    const cJSON *item = cJSON_GetObjectItemCaseSensitive(job, key);
    return cJSON_IsString(item) ? item->valuestring : "";
}

/* Does the case look at this finding? */
static bool looked_at(const struct rule_case *c, const struct finding *finding)
{
    return strcmp(finding->rule, c->rule) == 0
           && (c->where == NULL
               || (finding->where != NULL && strcmp(finding->where, c->where) == 0));
}

/* The outcome, and whether the figure was met: on a weak figure both warn. */
static int come_out(const struct finding *finding)
{
    return 2 * (int)finding->outcome + (finding->mend != NULL);
}

/* Of a case that says what was found: a fact that a figure told is seen by it both ways. */
static double number_found(const struct attempt *attempt, const struct finding *finding)
{
    return attempt->wanted->found.kind == VALUE_NUMBER && finding->found.kind == VALUE_NUMBER
               ? finding->found.number
               : 0;
}

static void keep_outcomes(struct arena *arena, struct attempt *attempt, const struct result *result)
{
    const size_t count = result->finding_count;
    attempt->outcomes = arena_array(arena, count + 1, sizeof(*attempt->outcomes));
    attempt->found = arena_array(arena, count + 1, sizeof(*attempt->found));
    if (attempt->outcomes == NULL || attempt->found == NULL)
        return;
    for (size_t i = 0; i < count; i++) {
        if (!looked_at(attempt->wanted, &result->findings[i]))
            continue;
        attempt->found[attempt->outcome_count] = number_found(attempt, &result->findings[i]);
        attempt->outcomes[attempt->outcome_count++] = come_out(&result->findings[i]);
    }
}

/* Of an attempt's own law: the case may load others on the way. */
static const struct probe *probe_of(void *data, const struct law *law)
{
    struct attempt *attempt = data;
    return law == attempt->law ? &attempt->probe : NULL;
}

static void judge_first(struct attempts *attempts, struct attempt *attempt)
{
    const struct rule_case *c = attempt->wanted;
    const struct overrides alone = {.alone = !c->by_place};
    struct checked checked = {0};
    check_job_probed(attempts->laws, attempt->job, &alone, c->file,
                     &(struct prober){probe_of, attempt}, &checked);
    if (checked.judged) {
        keep_outcomes(&attempts->arena, attempt, &checked.result);
        *attempts->last = attempt;
        attempts->last = &attempt->next;
        attempts->count++;
    }
    laws_drop_problems(attempts->laws, &checked.problems);
    checked_free(&checked);
}

static void try_job(struct attempts *attempts, const struct rule_case *c, cJSON *job)
{
    struct problems ignored = {0};
    struct arena *arena = &attempts->arena;
    const struct law *law = laws_find(attempts->laws, text_of(job, "jurisdiction"),
                                      date_parse(text_of(job, "date")), c->file, &ignored);
    laws_drop_problems(attempts->laws, &ignored);
    struct attempt *attempt = law == NULL ? NULL : arena_alloc(arena, sizeof(*attempt));
    if (attempt == NULL)
        return;
    const int stage = stage_by_word(text_of(job, "stage"));
    *attempt = (struct attempt){.wanted = c,
                                .job = job,
                                .law = law,
                                .reached = stage < 0 ? STAGE_PERMIT : (enum stage)stage};
    /* The probe notes which figures the rule asked for, so that only cases which depend
     * on a figure are run again. */
    attempt->probe = (struct probe){
        .only_rule = c->rule,
        .asked = arena_array(arena, law->profile->figure_count + 1, sizeof(bool)),
        .decides = arena_array(arena, law->profile->figure_count + 1, sizeof(bool))};
    if (attempt->probe.asked != NULL && attempt->probe.decides != NULL)
        judge_first(attempts, attempt);
}

/* The job of an attempt is the attempt's; that of no attempt goes. */
static void try_case(struct attempts *attempts, const struct rule_case *c)
{
    struct attempt **last = attempts->last;
    cJSON *job = case_job(c);
    if (job == NULL)
        problem_out_of_memory(&attempts->problems);
    else if (attempts->place == NULL || strcmp(text_of(job, "jurisdiction"), attempts->place) == 0)
        try_job(attempts, c, job);
    if (attempts->last == last)
        cJSON_Delete(job);
}

void attempts_make(struct attempts *attempts, const struct case_list *cases)
{
    attempts->last = &attempts->first;
    for (const struct rule_case *c = cases->first; c != NULL; c = c->next)
        if (c->base != NULL)
            try_case(attempts, c);
    if (attempts->arena.failed)
        problem_out_of_memory(&attempts->problems);
}

/* Judges the attempt's job again under its law as it is now. */
static bool outcome_changes(struct attempts *attempts, const struct attempt *attempt)
{
    struct result result = {0};
    struct rulebook *book = attempt->law->book;
    const struct probe probe = {.only_rule = attempt->wanted->rule};
    bool changed = false;
    judge_begin(book);
    if (judge(book, attempt->job, -1, attempt->reached, &probe, &result) != 0)
        problem_out_of_memory(&attempts->problems);
    size_t at = 0;
    for (size_t i = 0; i < result.finding_count && !changed; i++) {
        if (!looked_at(attempt->wanted, &result.findings[i]))
            continue;
        changed = at == attempt->outcome_count
                  || attempt->outcomes[at] != come_out(&result.findings[i])
                  || fabs(attempt->found[at] - number_found(attempt, &result.findings[i]))
                         > number_tolerance(result.findings[i].found.unit);
        at++;
    }
    changed = changed || at != attempt->outcome_count;
    result_free(&result);
    return changed;
}

/* Facts that the figure told were written into the job before it moved. */
static void tell_again(struct attempts *attempts, const struct attempt *attempt, size_t figure)
{
    const struct fields *fields = &attempt->law->book->fields;
    if (follows_uses(fields, figure) && !follows_fill_again(attempt->job, fields))
        problem_out_of_memory(&attempts->problems);
}

bool attempt_changes(struct attempts *attempts, const struct attempt *attempt, size_t figure,
                     const struct value *value, bool other_bound)
{
    /* The one place where a profile is written to: moved, judged, and put back at once. */
    struct figure *of = &attempt->law->profile->figures[figure];
    struct value *moved = other_bound ? &of->also : &of->value;
    const struct value before = *moved;
    *moved = *value;
    tell_again(attempts, attempt, figure);
    const bool changed = outcome_changes(attempts, attempt);
    *moved = before;
    tell_again(attempts, attempt, figure);
    return changed;
}

void attempts_free(struct attempts *attempts)
{
    for (struct attempt *t = attempts->first; t != NULL; t = t->next)
        cJSON_Delete(t->job);
    arena_free(&attempts->arena);
    problems_free(&attempts->problems);
    *attempts = (struct attempts){.laws = attempts->laws, .place = attempts->place};
}
