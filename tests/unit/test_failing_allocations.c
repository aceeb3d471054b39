/* Each allocation of each call of the library fails once; what comes of it must
 * be the answer there would have been, or status 3 with words for it: never a
 * crash, a leak, or another answer. Whatever failed, the same handle must then
 * give the right answer.
 *
 * A small home is gone through allocation by allocation; the rules of this tree
 * by samples. EAVEMARK_EVERY=1 leaves none out there either. */
#include "include/eavemark.h"
#include "support/failing_allocations.h"
#include "support/small_law.h"

#include <cjson/cJSON.h>

#include <setjmp.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>
#include <unistd.h>

#include <cmocka.h>

enum { ALL_AFTER = 1000000 };

struct scene;

struct answer {
    int status;
    char *report, *problems;
};

typedef void (*caller)(const struct scene *scene, eavemark *handle, struct answer *answer);

struct scene {
    struct temporary_home home;
    const char *path; /* of that home, or of this tree */
    char *job;
    caller call;
    const char *name;
};

/* Calls --------------------------------------------------------------------------- */

static struct eavemark_request request_of(const struct scene *scene)
{
    return (struct eavemark_request){
        .name = "job.json", .text = scene->job, .length = strlen(scene->job)};
}

static void check(const struct scene *scene, eavemark *handle, struct answer *answer)
{
    const struct eavemark_request request = request_of(scene);
    eavemark_result *result = eavemark_check(handle, &request);
    answer->status = EAVEMARK_BROKEN;
    if (result == NULL)
        return;
    const char *problems = eavemark_result_problems(result);
    answer->status = (int)eavemark_result_status(result, false);
    answer->report = eavemark_result_report(result, EAVEMARK_JSON_LINE, EAVEMARK_ALL);
    char *text = eavemark_result_report(result, EAVEMARK_TEXT, 0);
    char *all = eavemark_result_report(result, EAVEMARK_TEXT, EAVEMARK_ALL);
    char *page = eavemark_result_report(result, EAVEMARK_HTML, 0);
    char *drawings = eavemark_result_report(result, EAVEMARK_HTML, EAVEMARK_DRAWINGS);
    char *changes = eavemark_result_changes(result, result, 0);
    allocations_work(); /* the rest is the test's own */
    answer->problems = malloc(strlen(problems) + 1);
    if (answer->problems != NULL)
        memcpy(answer->problems, problems, strlen(problems) + 1);
    /* No report and no reason for it is how memory shows (eavemark.h). */
    if ((answer->report == NULL || text == NULL || all == NULL || page == NULL || drawings == NULL
         || changes == NULL)
        && problems[0] == '\0') {
        answer->status = EAVEMARK_BROKEN;
        free(answer->report);
        answer->report = NULL;
    }
    free(text);
    free(all);
    free(page);
    free(drawings);
    free(changes);
    eavemark_result_free(result);
}

/* Under a place with the rules of the model code, which is loaded before: they are shared
 * (engine/judge/rulebook_share.h), or loaded once more. */
static void sharing(const struct scene *scene, eavemark *handle, struct answer *answer)
{
    struct eavemark_request request = request_of(scene);
    request.jurisdiction = "model/test";
    request.wanted = EAVEMARK_WANT_JSON;
    eavemark_result *first = eavemark_check(handle, &request);
    request.jurisdiction = "town";
    eavemark_result *result = first == NULL ? NULL : eavemark_check(handle, &request);
    answer->status = EAVEMARK_BROKEN;
    if (result != NULL) {
        answer->report = eavemark_result_report(result, EAVEMARK_JSON_LINE, 0);
        allocations_work(); /* the rest is the test's own */
        answer->problems = strdup(eavemark_result_problems(result));
        if (answer->report != NULL || answer->problems[0] != '\0')
            answer->status = (int)eavemark_result_status(result, false);
        eavemark_result_free(result);
    }
    if (first != NULL)
        eavemark_result_free(first);
}

/* Jobs one after the other, of which the fourth differs in a fact: what the first ones leave
 * to the next (engine/judge/memory.h, survey.h) is made and used. It ends with the first
 * that has no report. */
static void batch(const struct scene *scene, eavemark *handle, struct answer *answer)
{
    enum { JOBS = 6 };
    static char other[4096], joined[256 * 1024];
    eavemark_result *results[JOBS] = {NULL};
    char *reports[JOBS] = {NULL};
    const char *problems = "";
    snprintf(other, sizeof(other), "%s", scene->job);
    *(strstr(other, "\"layers\": 1") + strlen("\"layers\": ")) = '2';
    answer->status = EAVEMARK_BROKEN;
    for (size_t i = 0; i < JOBS && (i == 0 || reports[i - 1] != NULL); i++) {
        struct eavemark_request request = request_of(scene);
        request.text = i == 3 ? other : scene->job;
        request.wanted = EAVEMARK_WANT_JSON;
        results[i] = eavemark_check(handle, &request);
        reports[i] = results[i] == NULL ? NULL
                                        : eavemark_result_report(results[i], EAVEMARK_JSON_LINE, 0);
        problems = results[i] == NULL ? "" : eavemark_result_problems(results[i]);
    }
    allocations_work(); /* the rest is the test's own */
    answer->problems = strdup(problems);
    joined[0] = '\0';
    for (size_t i = 0; i < JOBS && reports[i] != NULL; i++)
        strcat(joined, reports[i]);
    if (reports[JOBS - 1] != NULL) {
        answer->report = strdup(joined);
        answer->status = (int)eavemark_result_status(results[JOBS - 1], false);
    }
    for (size_t i = 0; i < JOBS; i++) {
        if (results[i] != NULL)
            eavemark_result_free(results[i]);
        free(reports[i]);
    }
}

static void takeoff(const struct scene *scene, eavemark *handle, struct answer *answer)
{
    const struct eavemark_request request = request_of(scene);
    answer->status = (int)eavemark_takeoff(handle, &request, EAVEMARK_JSON_LINE, &answer->report,
                                           &answer->problems);
}

static void explain(const struct scene *scene, eavemark *handle, struct answer *answer)
{
    const struct eavemark_request request = request_of(scene);
    answer->status = (int)eavemark_explain(handle, "fuzz.slope", &request, EAVEMARK_JSON_LINE,
                                           &answer->report, &answer->problems);
}

static void figures(const struct scene *scene, eavemark *handle, struct answer *answer)
{
    const struct eavemark_request request = {.jurisdiction = request_of(scene).jurisdiction};
    answer->status = (int)eavemark_figures(handle, NULL, NULL, &request, EAVEMARK_JSON_LINE,
                                           &answer->report, &answer->problems);
}

static void places(const struct scene *scene, eavemark *handle, struct answer *answer)
{
    (void)scene;
    answer->status = (int)eavemark_places(handle, "county", EAVEMARK_JSON_LINE, &answer->report,
                                          &answer->problems);
}

static void order(const struct scene *scene, eavemark *handle, struct answer *answer)
{
    const struct eavemark_request request = request_of(scene);
    answer->status = (int)eavemark_order(handle, &request, EAVEMARK_JSON_LINE, &answer->report,
                                         &answer->problems);
}

static void shop(const struct scene *scene, eavemark *handle, struct answer *answer)
{
    const struct eavemark_request request = request_of(scene);
    answer->status = (int)eavemark_shop_lift(handle, &request, &answer->report, &answer->problems);
}

/* What comes of a trial: the counts, or nothing. */
static void trial(const struct scene *scene, eavemark *handle, struct answer *answer)
{
    const struct eavemark_law before = {.handle = handle, .jurisdiction = "model/test"};
    const struct eavemark_law after = {.handle = handle, .jurisdiction = "county"};
    const struct eavemark_request request = request_of(scene);
    enum eavemark_status opened = EAVEMARK_BROKEN;
    eavemark_trial *trial = eavemark_trial_open(&before, &after, &opened, &answer->problems);
    answer->status = trial == NULL ? EAVEMARK_BROKEN : (int)eavemark_trial_job(trial, &request);
    if (answer->status != EAVEMARK_BROKEN)
        answer->report = eavemark_trial_report(trial, EAVEMARK_JSON_LINE);
    if (answer->report == NULL)
        answer->status = EAVEMARK_BROKEN;
    eavemark_trial_close(trial);
}

static void compare(const struct scene *scene, eavemark *handle, struct answer *answer)
{
    struct eavemark_request requests[2] = {request_of(scene), request_of(scene)};
    requests[1].jurisdiction = "county";
    answer->status = (int)eavemark_compare(handle, requests, 2, EAVEMARK_JSON_LINE, &answer->report,
                                           &answer->problems);
}

static void schema(const struct scene *scene, eavemark *handle, struct answer *answer)
{
    (void)scene;
    answer->status = (int)eavemark_fields(handle, NULL, true, "county", "2026-03-02",
                                          &answer->report);
}

static void listing(const struct scene *scene, eavemark *handle, struct answer *answer)
{
    (void)scene;
    answer->status = (int)eavemark_list(handle, EAVEMARK_FIGURES, &answer->report);
}

static void proof(const struct scene *scene, eavemark *handle, struct answer *answer)
{
    (void)scene;
    answer->status = (int)eavemark_proof(handle, NULL, NULL, NULL, EAVEMARK_JSON_LINE,
                                         &answer->report, &answer->problems);
}

static void mutate(const struct scene *scene, eavemark *handle, struct answer *answer)
{
    (void)scene;
    answer->status = (int)eavemark_mutate(handle, NULL, &answer->report, &answer->problems);
}

/* Files are written all or not at all. */
static void new_county(const struct scene *scene, eavemark *handle, struct answer *answer)
{
    answer->status = (int)eavemark_county_new(handle, "new/begun", "county", "Begun County",
                                              &answer->report);
    const char *profile = home_path(&scene->home, "jurisdictions/new/begun.lua");
    const bool written = access(profile, F_OK) == 0;
    if (written)
        unlink(profile);
    const char *cases = home_path(&scene->home, "jurisdictions/new/begun.cases.lua");
    const bool both = (access(cases, F_OK) == 0) == written;
    if (written)
        unlink(cases);
    const bool folder_left = rmdir(home_path(&scene->home, "jurisdictions/new")) == 0;
    assert_true(both);
    assert_int_equal(written, folder_left);
    assert_int_equal(written, answer->status == EAVEMARK_NOTHING_FAILED);
}

/* Answers ---------------------------------------------------------------------------- */

static void answer_free(struct answer *answer)
{
    free(answer->report);
    free(answer->problems);
    *answer = (struct answer){0};
}

static bool same_text(const char *a, const char *b)
{
    return a == NULL || b == NULL ? a == b : strcmp(a, b) == 0;
}

static bool same_answer(const struct answer *a, const struct answer *b)
{
    return a->status == b->status && same_text(a->report, b->report)
           && same_text(a->problems, b->problems);
}

static const char *member(const cJSON *object, const char *name)
{
    return cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(object, name));
}

/* Every finding is as it was, or broken for want of memory; a mend that could
 * not be worked out says so. More cautions may be shown, since a danger that
 * cannot be ruled out is. */
static bool same_but_for_memory(const char *reference, const char *report)
{
    cJSON *was = cJSON_Parse(reference), *is = cJSON_Parse(report);
    const cJSON *old = cJSON_GetObjectItemCaseSensitive(was, "findings");
    const cJSON *new_list = cJSON_GetObjectItemCaseSensitive(is, "findings");
    bool same = cJSON_IsArray(old) && cJSON_IsArray(new_list)
                && cJSON_GetArraySize(old) == cJSON_GetArraySize(new_list);
    for (int i = 0; same && i < cJSON_GetArraySize(old); i++) {
        const cJSON *a = cJSON_GetArrayItem(old, i), *b = cJSON_GetArrayItem(new_list, i);
        const char *outcome = member(b, "outcome"), *says = member(b, "says");
        same = same_text(member(a, "rule"), member(b, "rule"))
               && (same_text(member(a, "outcome"), outcome)
                   || (same_text(outcome, "broken") && says != NULL
                       && strstr(says, "too much memory") != NULL));
    }
    cJSON_Delete(was);
    cJSON_Delete(is);
    return same;
}

static bool has_words_for_memory(const struct answer *answer)
{
    return (answer->problems == NULL && answer->report == NULL)
           || (answer->problems != NULL && answer->problems[0] == '\0' && answer->report == NULL)
           || (answer->problems != NULL && strstr(answer->problems, "memory") != NULL)
           || (answer->report != NULL && strstr(answer->report, "memory") != NULL);
}

static bool acceptable(const struct answer *reference, const struct answer *got,
                       enum from_where from)
{
    if (same_answer(reference, got))
        return true;
    if (got->status == EAVEMARK_BROKEN)
        return has_words_for_memory(got);
    return from == FROM_LUA && got->status == reference->status && got->report != NULL
           && reference->report != NULL && same_text(reference->problems, got->problems)
           && same_but_for_memory(reference->report, got->report);
}

/* The sweep ----------------------------------------------------------------------------- */

static struct answer reference_of(const struct scene *scene, enum from_where from, size_t *count)
{
    struct answer answer = {0};
    allocations_fail(from, 0, 0);
    eavemark *handle = eavemark_open(scene->path);
    scene->call(scene, handle, &answer);
    *count = allocations_work();
    assert_non_null(answer.report);
    eavemark_close(handle);
    return answer;
}

/* Where two texts part, for the message. */
static const char *parting(const char *a, const char *b)
{
    size_t i = 0;
    if (a == NULL || b == NULL)
        return b == NULL ? "(none)" : b;
    while (a[i] != '\0' && a[i] == b[i])
        i++;
    return b + (i > 60 ? i - 60 : 0);
}

static void attempt(const struct scene *scene, const struct answer *reference, enum from_where from,
                    size_t n, size_t failing)
{
    struct answer got = {0}, after = {0};
    const long before = allocations_held();
    allocations_fail(from, n, failing);
    eavemark *handle = eavemark_open(scene->path);
    if (handle != NULL)
        scene->call(scene, handle, &got);
    allocations_work();
    if (handle != NULL && !acceptable(reference, &got, from))
        fail_msg("%s: allocation %zu (kind %d, %zu failing): status %d, not %d\n%s%s", scene->name,
                 n, (int)from, failing, got.status, reference->status,
                 got.problems == NULL ? "" : got.problems, parting(reference->report, got.report));
    if (handle != NULL)
        scene->call(scene, handle, &after);
    /* A proof lists what no case covers law by law, in the order they were
     * loaded; after a failure that may be another. */
    if (handle != NULL && scene->call == proof)
        assert_int_equal(after.status, reference->status);
    else if (handle != NULL && !same_answer(reference, &after))
        fail_msg("%s: after allocation %zu (kind %d, %zu failing) the handle is spoilt: %d %s%s",
                 scene->name, n, (int)from, failing, after.status,
                 after.problems == NULL ? "" : after.problems,
                 parting(reference->report, after.report));
    eavemark_close(handle);
    answer_free(&got);
    answer_free(&after);
    if (allocations_held() != before)
        fail_msg("%s: allocation %zu (kind %d, %zu failing): %ld blocks not given back",
                 scene->name, n, (int)from, failing, allocations_held() - before);
}

/* Every stride-th allocation, beginning with the first. */
static void sweep(const struct scene *scene, enum from_where from, size_t failing, size_t stride)
{
    size_t count = 0;
    struct answer reference = reference_of(scene, from, &count);
    print_message("%s: %zu of %zu allocations (kind %d, %zu failing)\n", scene->name,
                  (count + stride - 1) / stride, count, (int)from, failing);
    assert_true(count > 10);
    attempt(scene, &reference, from, count + ALL_AFTER, failing); /* twice is the same */
    for (size_t n = 1; n <= count; n += stride)
        attempt(scene, &reference, from, n, failing);
    answer_free(&reference);
}

/* Homes -------------------------------------------------------------------------------- */

static const char COUNTY[] =
    "jurisdiction \"county\" { title = \"Invented County\", invented = true,\n"
    "  follows = \"model/test\", from = \"2025-01-01\", code = \"Invented Code\",\n"
    "  figures = { [\"test.most\"] = { 2, cite = \"15.1\" },\n"
    "    [\"test.pitch_least\"] = { 5, cite = \"15.2\" } },\n"
    "  drop = { [\"fuzz.vents\"] = \"waived by 15.3\" }, rules = \"county.rules.lua\" }\n";

static const char TOWN[] =
    "jurisdiction \"town\" { title = \"Invented Town\", invented = true,\n"
    "  follows = \"model/test\", figures = { [\"test.most\"] = { 2, cite = \"15.1\" } } }\n";

static const char COUNTY_RULES[] =
    "field \"permit_fee_paid\" { type = \"yes_no\", stage = \"permit\", ask = \"Paid?\" }\n"
    "rule \"county.fee\" { title = \"Fee\", stage = \"permit\", mend = \"Pay.\",\n"
    "  judge = function(job, figure)\n"
    "    figure \"test.required\"\n"
    "    return shown(job.permit_fee_paid, \"the fee\")\n"
    "  end }\n";

static const char CASES[] = "cases \"fuzz.nails\" { under = \"model/test\",\n"
                            "  { \"close enough\", where = \"panels\", expect = \"pass\" } }\n";

static void small_scene(struct scene *scene)
{
    char path[256];
    home_make(&scene->home);
    scene->path = scene->home.path;
    small_law_write(&scene->home);
    snprintf(path, sizeof(path), "%s/tests/fuzz/seeds/rules/every_declaration.lua",
             EAVEMARK_HOME_DIR);
    char *pack = file_text(path, NULL);
    home_write(&scene->home, "rules/fuzz.lua", pack);
    free(pack);
    home_write(&scene->home, "jurisdictions/county.lua", COUNTY);
    home_write(&scene->home, "jurisdictions/county.rules.lua", COUNTY_RULES);
    home_write(&scene->home, "jurisdictions/town.lua", TOWN);
    home_write(&scene->home, "rules/cases/base.json", SMALL_JOB);
    home_write(&scene->home, "rules/cases/fuzz.lua", CASES);
    scene->job = text_with(SMALL_JOB, "model/test", "county");
}

static void run_small(const char *name, caller call, enum from_where from, size_t failing,
                      size_t stride)
{
    struct scene scene = {.name = name, .call = call};
    small_scene(&scene);
    sweep(&scene, from, failing, stride);
    free(scene.job);
    home_remove(&scene.home);
}

static void a_check_without_memory(void **state)
{
    (void)state;
    run_small("check", check, FROM_SYSTEM, 1, 1);
    run_small("check", check, FROM_SYSTEM, ALL_AFTER, 1);
}

static void a_check_without_room_in_an_arena(void **state)
{
    (void)state;
    run_small("check", check, FROM_ARENA, 1, 1);
    run_small("check", check, FROM_ARENA, ALL_AFTER, 7);
}

static void a_check_without_memory_for_lua(void **state)
{
    (void)state;
    run_small("check", check, FROM_LUA, 2, 1);
    run_small("check", check, FROM_LUA, ALL_AFTER, 31);
}

/* Lua collects its garbage, and asks again: whatever a binder still holds must
 * have stayed where Lua could see it. */
static void a_check_amid_collections(void **state)
{
    (void)state;
    run_small("check", check, FROM_LUA, 1, 3);
}

/* A sheet holds all habits of a job, or there is none. */
static const char HABITS[] =
    "field \"nails\" { type = \"group\", stage = \"permit\", ask = \"Nails\" }\n"
    "field \"nails.length_in\" { type = \"number\", unit = \"in\", range = { 0, 9 },\n"
    "  habit = \"product\", stage = \"permit\", ask = \"How long?\" }\n"
    "field \"nails.metal\" { type = \"choice\", choices = { \"steel\", \"copper\" },\n"
    "  habit = \"product\", stage = \"permit\", ask = \"Which metal?\" }\n"
    "field \"felts\" { type = \"list\", range = { 0, 9 }, stage = \"permit\", ask = \"Felts\" }\n"
    "field \"felts[].name\" { type = \"text\", range = { 1, 60 }, habit = \"product\",\n"
    "  stage = \"permit\", ask = \"Name?\" }\n"
    "field \"felts[].plies\" { type = \"integer\", unit = \"plies\", range = { 0, 4 },\n"
    "  habit = \"product\", stage = \"permit\", ask = \"Plies?\" }\n"
    "field \"vents\" { type = \"list\", range = { 0, 9 }, stage = \"permit\", ask = \"Vents\" }\n"
    "field \"vents[].screened\" { type = \"yes_no\", habit = true, stage = \"permit\",\n"
    "  ask = \"Screened?\" }\n";

static const char WITH_HABITS[] =
    "\"nails\": { \"length_in\": 1.5, \"metal\": \"steel\" }, "
    "\"felts\": [{ \"name\": \"light\", \"plies\": 1 }, { \"name\": \"two\", \"plies\": 2 }], "
    "\"vents\": [{ \"screened\": true }, { \"screened\": true }], \"stage\"";

static void a_sheet_lifted_whole(void **state)
{
    (void)state;
    struct scene scene = {.name = "shop with habits", .call = shop};
    struct answer answer = {0};
    small_scene(&scene);
    home_write(&scene.home, "rules/common.lua", HABITS); /* read without a law too */
    free(scene.job);
    scene.job = text_with(SMALL_JOB, "\"stage\"", WITH_HABITS);
    size_t count = 0;
    answer = reference_of(&scene, FROM_SYSTEM, &count);
    assert_non_null(strstr(answer.report, "screened"));
    assert_non_null(strstr(answer.report, "steel"));
    assert_non_null(strstr(answer.report, "two"));
    answer_free(&answer);
    sweep(&scene, FROM_SYSTEM, 1, 1);
    sweep(&scene, FROM_SYSTEM, ALL_AFTER, 1);
    free(scene.job);
    home_remove(&scene.home);
}

static void other_calls(void **state)
{
    (void)state;
    /* The long ones are sampled; a proof is run anew for each case and stage. */
    static const struct {
        const char *name;
        caller call;
        size_t stride;
    } CALLS[] = {{"takeoff", takeoff, 1}, {"explain", explain, 3}, {"sharing", sharing, 1},
                 {"batch", batch, 2},     {"figures", figures, 1}, {"compare", compare, 1},
                 {"schema", schema, 1},   {"listing", listing, 1}, {"places", places, 1},
                 {"trial", trial, 1},     {"order", order, 1},     {"shop", shop, 1},
                 {"proof", proof, 7},     {"mutate", mutate, 1},   {"new county", new_county, 3}};
    for (size_t i = 0; i < sizeof(CALLS) / sizeof(CALLS[0]); i++) {
        const char *only = getenv("EAVEMARK_CALL"); /* to look into one of them */
        if (only != NULL && strcmp(only, CALLS[i].name) != 0)
            continue;
        run_small(CALLS[i].name, CALLS[i].call, FROM_SYSTEM, 1, CALLS[i].stride);
        run_small(CALLS[i].name, CALLS[i].call, FROM_ARENA, 1, CALLS[i].stride);
    }
}

/* The rules of this tree ------------------------------------------------------------------ */

enum { SAMPLES = 10 };

static void sample(const struct scene *scene, enum from_where from, size_t failing)
{
    size_t count = 0;
    const char *every = getenv("EAVEMARK_EVERY");
    struct answer reference = reference_of(scene, from, &count);
    answer_free(&reference);
    sweep(scene, from, failing, every == NULL ? count / SAMPLES + 1 : strtoul(every, NULL, 10));
}

static void the_real_rules(void **state)
{
    (void)state;
    struct scene scene = {.name = "real rules", .call = check, .path = EAVEMARK_HOME_DIR};
    scene.job = file_text(EAVEMARK_HOME_DIR "/tests/houses/porch-tear-off/job.json", NULL);
    sample(&scene, FROM_SYSTEM, 1);
    sample(&scene, FROM_ARENA, 1);
    sample(&scene, FROM_LUA, 1);
    sample(&scene, FROM_LUA, 2);
    free(scene.job);
}

/* Of these none is read: the build listed them. */
static void the_places_inside(void **state)
{
    (void)state;
    const struct scene scene = {
        .name = "places inside", .call = places, .path = EAVEMARK_HOME_INSIDE};
    size_t count = 0;
    struct answer answer = reference_of(&scene, FROM_SYSTEM, &count);
    assert_non_null(strstr(answer.report, "example/dunmarrow"));
    answer_free(&answer);
    sweep(&scene, FROM_SYSTEM, 1, 1);
    sweep(&scene, FROM_ARENA, 1, 1);
    sweep(&scene, FROM_ARENA, ALL_AFTER, 1);
}

/* A roof laid out from the plan of the house, of which a fact lacks. */
static void a_roof_by_its_plan(void **state)
{
    (void)state;
    struct scene scene = {.name = "by its plan", .call = check, .path = EAVEMARK_HOME_DIR};
    scene.job = file_text(EAVEMARK_HOME_DIR "/tests/fuzz/seeds/job/by_plan.json", NULL);
    char *depth = strstr(scene.job, " 6.7,\n");
    assert_non_null(depth);
    memcpy(depth, "null", strlen("null"));
    sample(&scene, FROM_SYSTEM, 1);
    free(scene.job);
}

int main(int argc, char **argv)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(a_check_without_memory),
        cmocka_unit_test(a_check_without_room_in_an_arena),
        cmocka_unit_test(a_check_without_memory_for_lua),
        cmocka_unit_test(a_check_amid_collections),
        cmocka_unit_test(a_sheet_lifted_whole),
        cmocka_unit_test(other_calls),
        cmocka_unit_test(the_real_rules),
        cmocka_unit_test(the_places_inside),
        cmocka_unit_test(a_roof_by_its_plan),
    };
    if (argc > 1) /* one of them, by its name */
        cmocka_set_test_filter(argv[1]);
    return cmocka_run_group_tests(tests, NULL, NULL);
}
