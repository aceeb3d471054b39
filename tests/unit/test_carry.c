/* What is carried over from job to job must not show: jobs that differ from the one before in
 * a few facts each are answered as if each were the only one. */
#include "include/eavemark.h"
#include "support/house_job.h"
#include "support/random_numbers.h"

#include <stdarg.h>
#include <setjmp.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cjson/cJSON.h>
#include <cmocka.h>

enum {
    ROUNDS = 250,     /* jobs of a batch */
    ALONE_EVERY = 10, /* of which one is also checked by a handle of its own */
    HELD = 3,         /* results that are held while others come */
    LEAVES_MOST = 2000,
};

static const char *const HOUSES[] = {
    "tests/houses/cross-gable/job",    "tests/houses/cross-gable/job-final",
    "examples/cross-gable/job",        "tests/houses/coastal-hip/job",
    "examples/coastal-hip/job-dry-in", "tests/houses/overlay-gable/job",
    "examples/porch-tear-off/job",     "tests/houses/porch-tear-off/job-deck",
};
static const char *const PLACES[] = {"us-mn/minneapolis", "us-fl", "us-mn/minneapolis", "us-ca"};
static const char *const DAYS[] = {"2026-09-01", "2026-09-02", "2026-09-01", "2025-06-02"};
static const char *const STAGES[] = {"permit", "deck", "dry-in", "final"};

#define LENGTH(array) (sizeof(array) / sizeof((array)[0]))

static struct random_numbers numbers = {RANDOM_SEED};

/* 0 to one less. */
static size_t draw(size_t below)
{
    return (size_t)random_between(&numbers, 0, (double)below);
}

static cJSON *read_job(const char *name)
{
    cJSON *job = house_job(name);
    /* Its sheet would be looked for beside it: so it lacks what that says. */
    cJSON_DeleteItemFromObjectCaseSensitive(job, "shop");
    cJSON *plan = cJSON_GetObjectItemCaseSensitive(cJSON_GetObjectItemCaseSensitive(job, "roof"),
                                                   "footprint");
    cJSON_DeleteItemFromObjectCaseSensitive(plan, "planes");
    return job;
}

static bool is_kept(const cJSON *fact)
{
    static const char *const KEPT[] = {"eavemark_job", "job", "jurisdiction", "date"};
    for (size_t i = 0; fact->string != NULL && i < LENGTH(KEPT); i++)
        if (strcmp(fact->string, KEPT[i]) == 0)
            return true;
    return false;
}

/* Facts, groups and items of the job, each with what it is in. */
struct part {
    cJSON *node, *of;
};
struct parts {
    struct part items[LEAVES_MOST];
    size_t count;
};

static void gather(cJSON *node, struct parts *parts)
{
    for (cJSON *child = node->child; child != NULL; child = child->next) {
        if (is_kept(child) || parts->count == LEAVES_MOST)
            continue;
        parts->items[parts->count++] = (struct part){child, node};
        gather(child, parts);
    }
}

static void set_text(cJSON *job, const char *key, const char *text)
{
    cJSON_DeleteItemFromObjectCaseSensitive(job, key);
    cJSON_AddStringToObject(job, key, text);
}

/* Another item, named otherwise, or the same name again, which is refused. */
static void add_item(cJSON *list)
{
    char name[32];
    cJSON *copy = cJSON_Duplicate(
        cJSON_GetArrayItem(list, (int)draw((size_t)cJSON_GetArraySize(list))), true);
    if (cJSON_IsObject(copy) && draw(8) > 0) {
        snprintf(name, sizeof(name), "more %u", (unsigned)draw(50));
        set_text(copy, "name", name);
    }
    if (!cJSON_InsertItemInArray(list, (int)draw(3), copy))
        cJSON_Delete(copy);
}

static void rename_all(cJSON *node, const char *from, const char *to)
{
    if (cJSON_IsString(node) && strcmp(node->valuestring, from) == 0)
        cJSON_SetValuestring(node, to);
    for (cJSON *child = node->child; child != NULL; child = child->next)
        rename_all(child, from, to);
}

/* An item and all that refers to it; or two items of a list change their names, and what
 * refers to the one then refers to the other. */
static void rename_items(cJSON *job, struct part part, size_t way)
{
    cJSON *name = cJSON_GetObjectItemCaseSensitive(part.node, "name");
    cJSON *other = cJSON_GetObjectItemCaseSensitive(part.of->child, "name");
    if (!cJSON_IsString(name) || !cJSON_IsString(other))
        return;
    char old[200], text[200];
    snprintf(old, sizeof(old), "%s", name->valuestring);
    snprintf(text, sizeof(text), "%s", other->valuestring);
    if (way % 2 == 0) {
        rename_all(job, old, draw(2) == 0 ? "renamed" : "name of another length");
        return;
    }
    cJSON_SetValuestring(name, text);
    cJSON_SetValuestring(other, old);
}

static void move_text(struct part part, const struct parts *parts)
{
    cJSON *fact = part.node;
    /* What some fact of the same name says elsewhere: a choice stays a choice, mostly. */
    for (size_t tries = 0; tries < 50; tries++) {
        const cJSON *other = parts->items[draw(parts->count)].node;
        if (cJSON_IsString(other) && fact->string != NULL && other->string != NULL
            && strcmp(other->string, fact->string) == 0
            && strcmp(other->valuestring, fact->valuestring) != 0) {
            cJSON_SetValuestring(fact, other->valuestring);
            return;
        }
    }
    if (strchr(fact->valuestring, ':') != NULL)
        cJSON_SetValuestring(fact, draw(2) == 0 ? "4:12" : "9:12");
    else if (strcmp(fact->string == NULL ? "" : fact->string, "name") == 0)
        cJSON_SetValuestring(fact, draw(2) == 0 ? "renamed" : "north");
}

/* One change to the job: a fact, an item, or the order of a list. */
static void change(cJSON *job, const cJSON *whole)
{
    static const double BY[] = {0, 0.5, 0.97, 1.02, 1.1, 2, 12};
    static struct parts parts;
    parts.count = 0;
    gather(job, &parts);
    const struct part part = parts.items[draw(parts.count)];
    cJSON *node = part.node;
    const size_t way = draw(10);
    if (cJSON_IsObject(node) && cJSON_IsArray(part.of) && way > 1) {
        rename_items(job, part, way);
    } else if (way == 0) {
        cJSON_Delete(cJSON_DetachItemViaPointer(part.of, node));
    } else if (way == 1 && cJSON_IsArray(part.of)) {
        cJSON_DetachItemViaPointer(part.of, node);
        if (!cJSON_InsertItemInArray(part.of, 0, node))
            cJSON_Delete(node);
    } else if (cJSON_IsArray(node) && node->child != NULL) {
        add_item(node);
    } else if (cJSON_IsNumber(node)) {
        cJSON_SetNumberValue(node, node->valuedouble * BY[draw(LENGTH(BY))]);
    } else if (cJSON_IsBool(node)) {
        node->type ^= cJSON_True | cJSON_False;
    } else if (cJSON_IsString(node)) {
        move_text(part, &parts);
    } else if (way < 5) { /* a group of the house as it was, there again */
        const cJSON *from = whole->child;
        for (size_t i = draw((size_t)cJSON_GetArraySize(whole)); i > 0; i--)
            from = from->next;
        if (cJSON_IsObject(from)) {
            cJSON_DeleteItemFromObjectCaseSensitive(job, from->string);
            cJSON_AddItemToObject(job, from->string, cJSON_Duplicate(from, true));
        }
    }
}

/* The report of a result, or what is wrong with the job. */
static char *told(const eavemark_result *result, enum eavemark_form form, unsigned options)
{
    char *said = eavemark_result_report(result, form, options);
    if (said == NULL)
        said = strdup(eavemark_result_problems(result));
    assert_non_null(said);
    return said;
}

static eavemark_result *check(eavemark *handle, const char *job, const char *shop,
                              enum eavemark_wanted wanted)
{
    const struct eavemark_request request = {.name = "job",
                                             .text = job,
                                             .length = strlen(job),
                                             .shop = shop,
                                             .shop_length = shop == NULL ? 0 : strlen(shop),
                                             .shop_name = shop == NULL ? NULL : "shop",
                                             .wanted = wanted};
    eavemark_result *result = eavemark_check(handle, &request);
    assert_non_null(result);
    return result;
}

/* A result of which nothing is carried over: all of it is wanted. */
static void assert_as_alone(eavemark *handle, const char *job, const char *shop,
                            enum eavemark_form form, unsigned options, const char *said)
{
    eavemark_result *result = check(handle, job, shop, EAVEMARK_WANT_ANY);
    char *alone = told(result, form, options);
    size_t same = 0;
    while (alone[same] != '\0' && alone[same] == said[same])
        same++;
    if (alone[same] != said[same])
        fail_msg("%zu bytes in, alone: %.600s\nin the batch: %.600s", same,
                 alone + (same > 300 ? same - 300 : 0), said + (same > 300 ? same - 300 : 0));
    free(alone);
    eavemark_result_free(result);
}

/* A result of the batch, reported on only when others have come. */
struct held {
    eavemark_result *result;
    char *job;
    const char *shop;
};

static void let_go(struct held *held, eavemark *other)
{
    if (held->result == NULL)
        return;
    const enum eavemark_form form = draw(3) == 0 ? EAVEMARK_JSON : EAVEMARK_JSON_LINE;
    char *said = told(held->result, form, 0);
    assert_as_alone(other, held->job, held->shop, form, 0, said);
    free(said);
    eavemark_result_free(held->result);
    free(held->job);
    held->result = NULL;
}

struct batch {
    eavemark *handle, *other;
    struct held held[HELD];
    size_t judged; /* reports, not messages */
};

static void check_one(struct batch *batch, size_t round, char *job, const char *shop)
{
    const bool brief = draw(6) == 0, holds = !brief && draw(3) == 0;
    const unsigned options = brief ? EAVEMARK_BRIEF : 0;
    eavemark_result *result = check(batch->handle, job, shop,
                                    brief ? EAVEMARK_WANT_BRIEF : EAVEMARK_WANT_JSON);
    struct held *held = &batch->held[round % HELD];
    let_go(held, batch->other);
    if (holds) {
        *held = (struct held){result, job, shop};
        return;
    }
    const enum eavemark_form form = draw(5) == 0 ? EAVEMARK_JSON : EAVEMARK_JSON_LINE;
    char *said = told(result, form, options);
    batch->judged += said[0] == '{';
    assert_as_alone(batch->other, job, shop, form, options, said);
    if (round % ALONE_EVERY == 0) {
        eavemark *alone = eavemark_open(EAVEMARK_HOME_DIR);
        assert_non_null(alone);
        assert_as_alone(alone, job, shop, form, options, said);
        eavemark_close(alone);
    }
    free(said);
    eavemark_result_free(result);
    free(job);
}

/* What the shop of the house says is taken out of the job into a sheet. */
static char *shop_of(eavemark *handle, const char *job)
{
    const struct eavemark_request request = {.name = "job", .text = job, .length = strlen(job)};
    char *sheet = NULL, *problems = NULL;
    eavemark_shop_lift(handle, &request, &sheet, &problems);
    free(problems);
    return sheet;
}

/* Messages alone tell little: most jobs with something wrong in them are passed over. */
static bool is_judged(eavemark *handle, const char *job)
{
    eavemark_result *result = check(handle, job, NULL, EAVEMARK_WANT_ANY);
    const bool judged = eavemark_result_status(result, false) <= EAVEMARK_FAILED;
    eavemark_result_free(result);
    return judged;
}

/* The job after some changes, as text; job becomes it. Now and then with something wrong. */
static char *changed(eavemark *handle, cJSON **job, const cJSON *whole)
{
    for (;;) {
        cJSON *next = cJSON_Duplicate(*job, true);
        for (size_t changes = draw(4); changes > 0; changes--)
            change(next, whole);
        if (draw(10) == 0)
            set_text(next, "stage", STAGES[draw(LENGTH(STAGES))]);
        if (draw(20) == 0)
            set_text(next, "jurisdiction", PLACES[draw(LENGTH(PLACES))]);
        char *text = cJSON_PrintUnformatted(next);
        assert_non_null(text);
        const bool judged = is_judged(handle, text);
        if (judged) {
            cJSON_Delete(*job);
            *job = next;
        } else {
            cJSON_Delete(next);
        }
        if (judged || draw(12) == 0)
            return text;
        free(text);
    }
}

static void jobs_that_differ_a_little_are_answered_as_if_alone(void **state)
{
    (void)state;
    struct batch batch = {.handle = eavemark_open(EAVEMARK_HOME_DIR),
                          .other = eavemark_open(EAVEMARK_HOME_DIR)};
    cJSON *job = NULL, *whole = NULL;
    char *sheet = NULL;
    assert_non_null(batch.handle);
    assert_non_null(batch.other);
    for (size_t round = 0; round < ROUNDS; round++) {
        if (job == NULL || draw(12) == 0) {
            cJSON_Delete(job);
            cJSON_Delete(whole);
            whole = read_job(HOUSES[draw(LENGTH(HOUSES))]);
            job = cJSON_Duplicate(whole, true);
            set_text(job, "jurisdiction", PLACES[draw(LENGTH(PLACES))]);
            set_text(job, "date", DAYS[draw(LENGTH(DAYS))]);
        } else if (draw(4) == 0) {
            cJSON_Delete(job);
            job = cJSON_Duplicate(whole, true);
        }
        char *text = changed(batch.other, &job, whole);
        if (sheet == NULL)
            sheet = shop_of(batch.other, text);
        check_one(&batch, round, text, draw(5) == 0 ? sheet : NULL);
    }
    /* Or it would have compared messages only. */
    assert_true(batch.judged > ROUNDS / 3);
    for (size_t i = 0; i < HELD; i++)
        let_go(&batch.held[i], batch.other);
    cJSON_Delete(job);
    cJSON_Delete(whole);
    free(sheet);
    eavemark_close(batch.handle);
    eavemark_close(batch.other);
}

/* The job, whose report in the batch holds these words, is answered as if it were the only one;
 * frees it. */
static void assert_told_as_alone(eavemark *batch, eavemark *other, cJSON *job, const char *words)
{
    char *text = cJSON_PrintUnformatted(job);
    eavemark_result *result = check(batch, text, NULL, EAVEMARK_WANT_JSON);
    char *said = told(result, EAVEMARK_JSON_LINE, 0);
    assert_non_null(strstr(said, words));
    assert_as_alone(other, text, NULL, EAVEMARK_JSON_LINE, 0, said);
    eavemark_result_free(result);
    free(said);
    free(text);
    cJSON_Delete(job);
}

/* Which dimension of the plan is asked for hangs on the plan, and not on the planes alone that
 * a rule found lacking. */
static void what_is_asked_for_is_of_this_job(void **state)
{
    (void)state;
    enum { SETTLING = 6 };
    static const char *const LACKING[] = {"width_ft", "length_ft", "pitch", "width_ft"};
    eavemark *batch = eavemark_open(EAVEMARK_HOME_DIR), *other = eavemark_open(EAVEMARK_HOME_DIR);
    assert_non_null(batch);
    assert_non_null(other);
    /* Often enough that what stays as it is is passed by (settle.h). */
    for (size_t i = 0; i < SETTLING * LENGTH(LACKING); i++) {
        const char *const lacking = LACKING[i / SETTLING];
        char asked[64];
        cJSON *job = read_job("examples/cross-gable/job");
        cJSON *plan = cJSON_GetObjectItemCaseSensitive(
            cJSON_GetObjectItemCaseSensitive(job, "roof"), "footprint");
        cJSON_DeleteItemFromObjectCaseSensitive(plan, lacking);
        snprintf(asked, sizeof(asked), "/roof/footprint/%s: ", lacking);
        assert_told_as_alone(batch, other, job, asked);
    }
    eavemark_close(batch);
    eavemark_close(other);
}

/* A finding that is remembered is told as it was written for an earlier job, and not only for
 * the last: but by what its item is called now. */
static void what_an_item_is_called_is_of_this_job(void **state)
{
    (void)state;
    static const char *const NAMES[] = {"main front", "west front",
                                        "main front", "a name that is longer",
                                        "west front", "main front"};
    eavemark *batch = eavemark_open(EAVEMARK_HOME_DIR), *other = eavemark_open(EAVEMARK_HOME_DIR);
    assert_non_null(batch);
    assert_non_null(other);
    for (size_t i = 0; i < 2 * LENGTH(NAMES); i++) {
        cJSON *job = read_job("tests/houses/cross-gable/job-final");
        rename_all(job, "main front", NAMES[i % LENGTH(NAMES)]);
        assert_told_as_alone(batch, other, job, NAMES[i % LENGTH(NAMES)]);
    }
    eavemark_close(batch);
    eavemark_close(other);
}

/* What a report wrote of a finding is kept where no more was wanted of it: whoever wants more
 * of the same job is told all, and the other way round. */
static void more_or_less_may_be_wanted_of_the_next_job(void **state)
{
    (void)state;
    static const struct {
        enum eavemark_wanted wanted;
        enum eavemark_form form;
        unsigned options;
    } ASKED[] = {
        {EAVEMARK_WANT_JSON, EAVEMARK_JSON_LINE, 0},
        {EAVEMARK_WANT_ANY, EAVEMARK_TEXT, 0},
        {EAVEMARK_WANT_JSON, EAVEMARK_JSON, 0},
        {EAVEMARK_WANT_BRIEF, EAVEMARK_JSON_LINE, EAVEMARK_BRIEF},
        {EAVEMARK_WANT_JSON, EAVEMARK_JSON_LINE, 0},
        {EAVEMARK_WANT_NO_DRAWINGS, EAVEMARK_TEXT, EAVEMARK_ALL},
        {EAVEMARK_WANT_NO_DRAWINGS, EAVEMARK_JSON_LINE, EAVEMARK_ALL},
    };
    static const char *const JOBS[] = {"tests/houses/cross-gable/job-final",
                                       "examples/cross-gable/job", "tests/houses/cross-gable/job"};
    eavemark *batch = eavemark_open(EAVEMARK_HOME_DIR), *other = eavemark_open(EAVEMARK_HOME_DIR);
    assert_non_null(batch);
    assert_non_null(other);
    /* Each job comes with each of the wants, one after another and between others. */
    for (size_t i = 0; i < 4 * LENGTH(ASKED) * LENGTH(JOBS); i++) {
        const size_t asked = i % LENGTH(ASKED);
        cJSON *job = read_job(JOBS[i / 2 % LENGTH(JOBS)]);
        char *text = cJSON_PrintUnformatted(job);
        eavemark_result *result = check(batch, text, NULL, ASKED[asked].wanted);
        char *said = told(result, ASKED[asked].form, ASKED[asked].options);
        assert_as_alone(other, text, NULL, ASKED[asked].form, ASKED[asked].options, said);
        eavemark_result_free(result);
        free(said);
        free(text);
        cJSON_Delete(job);
    }
    eavemark_close(batch);
    eavemark_close(other);
}

/* Another seed may be given, for other jobs. */
int main(int argc, char **argv)
{
    if (argc > 1)
        numbers.state = strtoul(argv[1], NULL, 10);
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(jobs_that_differ_a_little_are_answered_as_if_alone),
        cmocka_unit_test(what_is_asked_for_is_of_this_job),
        cmocka_unit_test(what_an_item_is_called_is_of_this_job),
        cmocka_unit_test(more_or_less_may_be_wanted_of_the_next_job),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
