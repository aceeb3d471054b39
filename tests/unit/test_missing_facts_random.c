/* No rule may pass because a fact was left out, nor break, whatever the job:
 * test_missing_facts goes through the jobs there are, this through jobs made up at random.
 *
 * A job of the examples or the rule cases has some of its facts replaced by others that
 * its fields allow, and some added. If it is then judged at all, every finding that fails
 * or is open is judged again without each fact that it read, the one it found included:
 * nothing else can bear on it. A job that is then refused is fine. Otherwise the finding
 * may be neither met, nor, where it failed, not applicable or gone.
 *
 * The same jobs on every run. EAVEMARK_ROUNDS makes more of them. */
#include "check/check.h"
#include "job/path.h"
#include "support/random_numbers.h"
#include "support/temporary_home.h"

#include <cjson/cJSON.h>

#include <setjmp.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

enum { ROUNDS = 300, TRIES_MOST = 30, CHANGES_MOST = 6, PLACES_MOST = 4000 };

static const char *const BASES[] = {
    "rules/cases/base.json",
    "rules/cases/paperwork.json",
    "tests/houses/coastal-hip/job.json",
    "tests/houses/coastal-hip/job-final.json",
    "tests/houses/cross-gable/job.json",
    "tests/houses/cross-gable/job-deck.json",
    "tests/houses/cross-gable/job-final.json",
    "tests/houses/overlay-gable/job.json",
    "tests/houses/overlay-gable/job-final.json",
    "tests/houses/porch-tear-off/job-dry-in.json",
    "tests/houses/porch-tear-off/job-final.json",
    "tests/fuzz/seeds/job/by_plan.json",
};
static const char *const LAWS[] = {NULL,
                                   NULL,
                                   NULL,
                                   "model/irc-2012",
                                   "model/irc-2018",
                                   "model/irc-2021",
                                   "model/irc-2024",
                                   "us-ca",
                                   "us-fl",
                                   "us-ny",
                                   "us-or",
                                   "us-tx-windstorm",
                                   "us-mn",
                                   "us-co/denver"};
static const char *const STAGES[] = {"permit", "deck", "dry-in", "final"};

struct trying {
    struct laws laws;
    struct random_numbers numbers;
    cJSON *bases[sizeof(BASES) / sizeof(BASES[0])];
    size_t jobs, findings, removals, judged, bad;
};

static size_t pick(struct trying *t, size_t count)
{
    const size_t at = (size_t)random_between(&t->numbers, 0, (double)count);
    return at < count ? at : count - 1;
}

/* Making up jobs ------------------------------------------------------------------ */

static double number_for(struct trying *t, const struct field *field, double old)
{
    const double least = field->has_least ? field->least : 0;
    const double most = field->has_most ? field->most : 1000;
    double number = old;
    switch (pick(t, 6)) {
    case 0:
        number = least;
        break;
    case 1:
        number = most;
        break;
    case 2:
        number = random_between(&t->numbers, least, most);
        break;
    default:
        number = old * random_between(&t->numbers, 0.3, 2);
    }
    number = number < least ? least : number > most ? most : number;
    number = (double)(long long)(number * 100) / 100;
    return field->type == FIELD_INTEGER ? (double)(long long)number : number;
}

static cJSON *value_for(struct trying *t, const struct field *field, const cJSON *old)
{
    char text[32];
    cJSON *list = NULL;
    switch (field->type) {
    case FIELD_NUMBER:
    case FIELD_INTEGER:
        return cJSON_CreateNumber(
            number_for(t, field, cJSON_IsNumber(old) ? old->valuedouble : 10));
    case FIELD_YES_NO:
        return cJSON_CreateBool(pick(t, 2) == 0);
    case FIELD_CHOICE:
        return cJSON_CreateString(field->choices[pick(t, field->choice_count)]);
    case FIELD_CHOICES:
        list = cJSON_CreateArray();
        for (size_t i = 0; i < field->choice_count; i++)
            if (pick(t, 3) == 0)
                cJSON_AddItemToArray(list, cJSON_CreateString(field->choices[i]));
        return list;
    case FIELD_NUMBERS:
        list = cJSON_CreateArray();
        for (size_t i = pick(t, 4); i > 0; i--)
            cJSON_AddItemToArray(list, cJSON_CreateNumber(number_for(t, field, 5)));
        return list;
    case FIELD_SLOPE:
        snprintf(text, sizeof(text), "%zu:12", pick(t, 16));
        return cJSON_CreateString(text);
    case FIELD_DATE:
        snprintf(text, sizeof(text), "20%02zu-%02zu-%02zu", 10 + pick(t, 20), 1 + pick(t, 12),
                 1 + pick(t, 28));
        return cJSON_CreateString(text);
    case FIELD_TEXT:
    case FIELD_REFERENCE:
    case FIELD_GROUP:
    case FIELD_LIST:
        break;
    }
    return NULL;
}

/* A place of the job where a value of this field may stand. */
struct gap {
    cJSON *group;
    const struct field *field;
};

/* Those of every group and item there is; the head of the job is left alone. */
static void collect(cJSON *node, const struct field *field, struct gap *places, size_t *count)
{
    for (const struct field *f = field->first_child; f != NULL; f = f->next) {
        cJSON *child = cJSON_GetObjectItemCaseSensitive(node, f->name);
        cJSON *item = NULL;
        if (f->type == FIELD_GROUP && cJSON_IsObject(child))
            collect(child, f, places, count);
        else if (f->type == FIELD_LIST && cJSON_IsArray(child))
            cJSON_ArrayForEach(item, child)
                collect(item, f, places, count);
        else if (f->parent->parent != NULL && *count < PLACES_MOST)
            places[(*count)++] = (struct gap){node, f};
    }
}

static void change_one(struct trying *t, const struct gap *place, bool added)
{
    const cJSON *old = cJSON_GetObjectItemCaseSensitive(place->group, place->field->name);
    cJSON *value = (old == NULL) == added ? value_for(t, place->field, old) : NULL;
    if (value == NULL)
        return;
    if (old == NULL)
        cJSON_AddItemToObject(place->group, place->field->name, value);
    else
        cJSON_ReplaceItemInObjectCaseSensitive(place->group, place->field->name, value);
}

static void put_text(cJSON *job, const char *key, const char *text)
{
    cJSON_DeleteItemFromObjectCaseSensitive(job, key);
    cJSON_AddStringToObject(job, key, text);
}

static cJSON *make_job(struct trying *t)
{
    static struct gap places[PLACES_MOST];
    size_t count = 0;
    struct problems ignored = {0};
    cJSON *job = cJSON_Duplicate(t->bases[pick(t, sizeof(BASES) / sizeof(BASES[0]))], true);
    const char *place = LAWS[pick(t, sizeof(LAWS) / sizeof(LAWS[0]))];
    put_text(job, "stage", STAGES[pick(t, 4)]);
    if (place != NULL) {
        put_text(job, "jurisdiction", place);
        put_text(job, "date", "2026-03-02");
    }
    const struct law *law = laws_find(
        &t->laws, cJSON_GetObjectItemCaseSensitive(job, "jurisdiction")->valuestring, 20260302,
        "job", &ignored);
    problems_free(&ignored);
    if (law == NULL)
        law = laws_fields(&t->laws, &ignored);
    assert_non_null(law);
    collect(job, law->book->fields.root, places, &count);
    assert_in_range(count, 50, PLACES_MOST - 1);
    for (size_t i = 1 + pick(t, CHANGES_MOST); i > 0; i--)
        change_one(t, &places[pick(t, count)], pick(t, 3) == 0);
    return job;
}

/* Judging ------------------------------------------------------------------------- */

static const struct probe *same_probe(void *data, const struct law *law)
{
    (void)law;
    return data;
}

/* By one rule, or all. */
static void judge_copy(struct trying *t, const cJSON *job, const char *rule,
                       struct checked *checked)
{
    const struct overrides none = {0};
    cJSON *copy = cJSON_Duplicate(job, true);
    struct probe probe = {.only_rule = rule};
    const struct prober prober = {same_probe, &probe};
    check_job_probed(&t->laws, copy, &none, "job", &prober, checked);
    cJSON_Delete(copy);
}

static bool same_text(const char *a, const char *b)
{
    return a == b || (a != NULL && b != NULL && strcmp(a, b) == 0);
}

static bool is_bad(const struct finding *before, const struct result *after, const char **now)
{
    const bool failed = before->met == MET_NO;
    bool gone = true;
    for (size_t i = 0; i < after->finding_count; i++) {
        const struct finding *finding = &after->findings[i];
        /* Of a list that is gone there is one finding, for the house. */
        if (strcmp(finding->rule, before->rule) != 0
            || (finding->item != NULL && !same_text(finding->item, before->item)))
            continue;
        gone = false;
        *now = outcome_word(finding->outcome);
        if (finding->met == MET_YES || (failed && finding->outcome == OUTCOME_NOT_APPLICABLE))
            return true;
    }
    *now = gone ? "nothing" : *now;
    return gone && failed;
}

/* The job without what the pointer names; NULL when it is no member of its group. */
static cJSON *without(const cJSON *job, const char *pointer)
{
    cJSON *copy = cJSON_Duplicate(job, true);
    const cJSON *found = path_find(copy, pointer);
    char *above = strdup(pointer);
    char *slash = strrchr(above, '/');
    if (slash != NULL)
        *slash = '\0';
    cJSON *parent = NULL;
    if (found != NULL && slash != NULL && strcmp(slash + 1, "name") != 0) {
        const cJSON *group = path_find(copy, above);
        memcpy(&parent, &group, sizeof(parent)); /* the copy is ours to change */
        if (!cJSON_IsObject(group))
            parent = NULL;
    }
    free(above);
    if (parent == NULL) {
        cJSON_Delete(copy);
        return NULL;
    }
    cJSON_Delete(cJSON_DetachItemFromObjectCaseSensitive(parent, found->string));
    return copy;
}

/* Items of a list are things, not facts: without a vent there is one vent less. A nailing
 * band is such a thing, told by its facts alone: where the job names none, there is none
 * whose nails could stand too close, and whether there must be one deck.nail_band asks. And
 * a plane whose covering is not told gets the job's, as its field says: without the word
 * that it gets tiles it is a plane of shingles, of which nothing is missing. */
static const struct {
    const char *rule, *fact;
} THINGS[] = {
    {"deck.nail_closest", "/band_spacing_in"},
    {"deck.nail_closest", "/measured_band_spacing_in"},
    {"wind.nail_spacing", "/band_spacing_in"},
    {"wind.nail_spacing", "/measured_band_spacing_in"},
    {"slope.least", "/gets"},
};

static bool is_thing(const struct finding *finding, const char *pointer)
{
    const char *last = strrchr(pointer, '/');
    for (size_t i = 0; i < sizeof(THINGS) / sizeof(THINGS[0]); i++)
        if (strcmp(finding->rule, THINGS[i].rule) == 0 && last != NULL
            && strcmp(last, THINGS[i].fact) == 0)
            return true;
    return false;
}

static void complain(struct trying *t, const cJSON *job, const struct finding *finding,
                     const char *pointer, const char *now)
{
    char *text = cJSON_PrintUnformatted(job);
    fprintf(stderr, "without %s, %s%s%s went from %s to %s\n%s\n", pointer, finding->rule,
            finding->item == NULL ? "" : " at ", finding->item == NULL ? "" : finding->item,
            outcome_word(finding->outcome), now, text);
    cJSON_free(text);
    t->bad++;
}

/* What a rule reads in a branch that no case comes to must be declared all the same, and
 * what it reckons must be there to reckon with. */
static void complain_of_broken(struct trying *t, const cJSON *job, const struct finding *finding)
{
    char *text = cJSON_PrintUnformatted(job);
    fprintf(stderr, "%s%s%s broke: %s\n%s\n", finding->rule, finding->item == NULL ? "" : " at ",
            finding->item == NULL ? "" : finding->item, finding->says, text);
    cJSON_free(text);
    t->bad++;
}

/* Left out, the fact followed from others (a nail's size from its name), or is what the plan
 * says of all planes or the place of all houses: it was not missing, and what the job said
 * before was another fact. */
static bool followed(const struct finding *before, const struct result *after, const char *pointer)
{
    for (size_t i = 0; i < after->finding_count; i++) {
        const struct finding *finding = &after->findings[i];
        if (strcmp(finding->rule, before->rule) != 0)
            continue;
        for (size_t k = 0; k < finding->read_count; k++)
            if ((finding->reads[k].from == ORIGIN_DERIVED || finding->reads[k].from == ORIGIN_PLAN
                 || finding->reads[k].from == ORIGIN_PLACE)
                && strcmp(finding->reads[k].at, pointer) == 0)
                return true;
    }
    return false;
}

static void try_finding(struct trying *t, const cJSON *job, const struct finding *finding)
{
    t->findings++;
    for (size_t i = 0; i < finding->read_count; i++) {
        cJSON *less = is_thing(finding, finding->reads[i].at) ? NULL
                                                              : without(job, finding->reads[i].at);
        if (less == NULL)
            continue;
        struct checked after = {0};
        const char *now = "";
        t->removals++;
        judge_copy(t, less, finding->rule, &after);
        t->judged += after.judged;
        if (after.judged && is_bad(finding, &after.result, &now)
            && !followed(finding, &after.result, finding->reads[i].at))
            complain(t, job, finding, finding->reads[i].at, now);
        checked_free(&after);
        cJSON_Delete(less);
    }
}

/* One job that is judged, of as many as it takes. */
static void try_job(struct trying *t)
{
    for (int i = 0; i < TRIES_MOST; i++) {
        struct checked before = {0};
        cJSON *job = make_job(t);
        judge_copy(t, job, NULL, &before);
        const bool judged = before.judged;
        t->jobs += judged;
        for (size_t f = 0; judged && f < before.result.finding_count; f++)
            if (before.result.findings[f].outcome == OUTCOME_BROKEN)
                complain_of_broken(t, job, &before.result.findings[f]);
            else if (before.result.findings[f].outcome == OUTCOME_OPEN
                     || before.result.findings[f].met == MET_NO)
                try_finding(t, job, &before.result.findings[f]);
        checked_free(&before);
        cJSON_Delete(job);
        if (judged)
            return;
    }
}

static void no_fact_left_out_helps(void **state)
{
    (void)state;
    struct trying t = {.laws = {.home = EAVEMARK_HOME_DIR}, .numbers = {RANDOM_SEED}};
    const char *wanted = getenv("EAVEMARK_ROUNDS");
    const long rounds = wanted == NULL ? ROUNDS : strtol(wanted, NULL, 10);
    for (size_t i = 0; i < sizeof(BASES) / sizeof(BASES[0]); i++) {
        char path[512];
        snprintf(path, sizeof(path), "%s/%s", EAVEMARK_HOME_DIR, BASES[i]);
        char *text = file_text(path, NULL);
        t.bases[i] = cJSON_Parse(text);
        assert_non_null(t.bases[i]);
        free(text);
    }
    for (long i = 0; i < rounds; i++)
        try_job(&t);
    printf("%zu jobs, %zu findings open or not met, %zu facts removed, %zu judged, %zu bad\n",
           t.jobs, t.findings, t.removals, t.judged, t.bad);
    for (size_t i = 0; i < sizeof(BASES) / sizeof(BASES[0]); i++)
        cJSON_Delete(t.bases[i]);
    laws_free(&t.laws);
    assert_int_equal(t.bad, 0);
    /* Jobs that are nearly all refused would show nothing. */
    assert_true(t.jobs > (size_t)rounds / 2 && t.judged > 10 * t.jobs);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(no_fact_left_out_helps),
    };
    return cmocka_run_group_tests_name("missing facts, random jobs", tests, NULL, NULL);
}
