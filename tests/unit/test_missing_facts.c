/* No rule may pass because a fact was left out.
 *
 * For every job in examples/ (with their shop sheet), tests/houses/, rules/cases/ and
 * tests/fuzz/seeds/job/, and every field in it: the field is removed and the job checked
 * again, whole; those of rules/cases/ stage by stage too, as the houses have a job for
 * each stage. A job
 * that is then refused is fine. Otherwise no finding may have turned from
 * fail or open into one that is met (pass, or warn without a mend), nor from
 * fail into not applicable, and a fail may not vanish. */
#include "include/eavemark.h"

#include <cjson/cJSON.h>

#include <dirent.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

#include <cmocka.h>

static const char *const STAGES[] = {NULL, "permit", "deck", "dry-in", "final"};
enum { STAGE_RUNS = 5 };

/* Jobs in a folder, and `depth` folders below it. */
struct source {
    const char *folder;
    int depth;
    int stages;   /* how many of STAGES are run */
    size_t least; /* facts that each of its jobs has, or it was not read as it stands */
};

static const struct source SOURCES[] = {
    {EAVEMARK_HOME_DIR "/examples", 1, 1, 50},
    {EAVEMARK_HOME_DIR "/tests/houses", 1, 1, 100},
    {EAVEMARK_HOME_DIR "/rules/cases", 0, STAGE_RUNS, 100},
    {EAVEMARK_HOME_DIR "/tests/fuzz/seeds/job", 0, 1, 100},
};

struct probe {
    eavemark *handle;
    const char *file;
    const char *folder; /* where its shop sheet lies, if it names one */
    cJSON *job;
    cJSON *before[STAGE_RUNS]; /* reports of the untouched job; NULL if refused */
    size_t removals, checked, bad;
    int stages; /* how many of STAGES are run */
    char pointer[512];
};

static char *read_file(const char *path)
{
    FILE *file = fopen(path, "rb");
    assert_non_null(file);
    char *text = calloc(1, 1 << 20);
    assert_non_null(text);
    const size_t length = fread(text, 1, (1 << 20) - 1, file);
    assert_true(length > 0);
    fclose(file);
    return text;
}

static cJSON *report_of(const struct probe *probe, const cJSON *job, const char *stage)
{
    char *text = cJSON_PrintUnformatted(job);
    assert_non_null(text);
    const struct eavemark_request request = {.name = "job",
                                             .text = text,
                                             .length = strlen(text),
                                             .stage = stage,
                                             .shop_folder = probe->folder};
    eavemark_result *result = eavemark_check(probe->handle, &request);
    assert_non_null(result);
    assert_int_not_equal(eavemark_result_status(result, false), EAVEMARK_BROKEN);
    char *report = eavemark_result_report(result, EAVEMARK_JSON_LINE, EAVEMARK_ALL);
    cJSON *tree = report == NULL ? NULL : cJSON_Parse(report);
    free(report);
    eavemark_result_free(result);
    cJSON_free(text);
    return tree;
}

static const char *word(const cJSON *finding, const char *key)
{
    const cJSON *item = cJSON_GetObjectItemCaseSensitive(finding, key);
    return cJSON_IsString(item) ? item->valuestring : "";
}

static const cJSON *same_finding(const cJSON *report, const cJSON *wanted)
{
    const cJSON *finding = NULL;
    cJSON_ArrayForEach(finding, cJSON_GetObjectItemCaseSensitive(report, "findings")) {
        if (strcmp(word(finding, "rule"), word(wanted, "rule")) == 0
            && strcmp(word(finding, "where"), word(wanted, "where")) == 0)
            return finding;
    }
    return NULL;
}

static bool met(const cJSON *finding)
{
    const char *outcome = word(finding, "outcome");
    return strcmp(outcome, "pass") == 0
           || (strcmp(outcome, "warn") == 0 && word(finding, "mend")[0] == '\0');
}

/* An open finding for a whole list has no `where`: the same rule, open
 * anywhere, answers for a fail that is gone. */
static bool still_open(const cJSON *report, const cJSON *wanted)
{
    const cJSON *finding = NULL;
    cJSON_ArrayForEach(finding, cJSON_GetObjectItemCaseSensitive(report, "findings"))
        if (strcmp(word(finding, "rule"), word(wanted, "rule")) == 0
            && strcmp(word(finding, "outcome"), "open") == 0)
            return true;
    return false;
}

/* A name that was removed gives way to "slopes 2": found by rule and outcome. */
static bool still_failing(const cJSON *report, const cJSON *wanted)
{
    const cJSON *finding = NULL;
    cJSON_ArrayForEach(finding, cJSON_GetObjectItemCaseSensitive(report, "findings"))
        if (strcmp(word(finding, "rule"), word(wanted, "rule")) == 0
            && strcmp(word(finding, "outcome"), "fail") == 0)
            return true;
    return false;
}

/* What the job no longer says, but its shop sheet or its place does, is not missing. */
static bool said_elsewhere(const struct probe *probe, const cJSON *finding)
{
    const size_t length = strlen(probe->pointer);
    const cJSON *read = NULL;
    cJSON_ArrayForEach(read, cJSON_GetObjectItemCaseSensitive(finding, "reads")) {
        const char *at = word(read, "at"), *from = word(read, "from");
        if (strncmp(at, probe->pointer, length) == 0 && (at[length] == '/' || at[length] == '\0')
            && (strcmp(from, "shop") == 0 || strcmp(from, "place") == 0))
            return true;
    }
    return false;
}

static void complain(struct probe *probe, const char *stage, const cJSON *was, const char *now)
{
    fprintf(stderr, "%s (%s): without %s, %s%s%s went from %s to %s\n", probe->file,
            stage == NULL ? "all stages" : stage, probe->pointer, word(was, "rule"),
            word(was, "where")[0] == '\0' ? "" : " at ", word(was, "where"), word(was, "outcome"),
            now);
    probe->bad++;
}

static void compare(struct probe *probe, const char *stage, const cJSON *before, const cJSON *after)
{
    const cJSON *was = NULL;
    cJSON_ArrayForEach(was, cJSON_GetObjectItemCaseSensitive(before, "findings")) {
        const bool failed = strcmp(word(was, "outcome"), "fail") == 0;
        if (!failed && strcmp(word(was, "outcome"), "open") != 0)
            continue;
        const cJSON *now = same_finding(after, was);
        if (now == NULL) {
            if (failed && !still_open(after, was) && !still_failing(after, was))
                complain(probe, stage, was, "nothing");
        } else if (met(now) && !said_elsewhere(probe, now)) {
            complain(probe, stage, was, word(now, "outcome"));
        } else if (failed && strcmp(word(now, "outcome"), "not_applicable") == 0) {
            complain(probe, stage, was, "not_applicable");
        }
    }
}

/* Checks a copy of the job that lacks the member at the path (places counted
 * from 0, level by level), and compares. */
static void try_without(struct probe *probe, const int *path, int depth)
{
    cJSON *job = cJSON_Duplicate(probe->job, true);
    cJSON *parent = job;
    for (int i = 0; i + 1 < depth; i++)
        parent = cJSON_GetArrayItem(parent, path[i]);
    cJSON_Delete(cJSON_DetachItemViaPointer(parent, cJSON_GetArrayItem(parent, path[depth - 1])));
    probe->removals++;
    for (int i = 0; i < probe->stages; i++) {
        if (probe->before[i] == NULL)
            continue;
        cJSON *after = report_of(probe, job, STAGES[i]);
        if (after != NULL) {
            probe->checked++;
            compare(probe, STAGES[i], probe->before[i], after);
        }
        cJSON_Delete(after);
    }
    cJSON_Delete(job);
}

enum { DEEPEST = 16 };

static void walk(struct probe *probe, const cJSON *node, int *path, int depth)
{
    const size_t length = strlen(probe->pointer);
    assert_true(depth + 1 < DEEPEST);
    path[depth] = 0;
    for (const cJSON *child = node->child; child != NULL; child = child->next, path[depth]++) {
        char *end = probe->pointer + length;
        const size_t room = sizeof(probe->pointer) - length;
        if (cJSON_IsObject(node)) {
            snprintf(end, room, "/%s", child->string);
            try_without(probe, path, depth + 1);
        } else {
            snprintf(end, room, "/%d", path[depth]);
        }
        walk(probe, child, path, depth + 1);
    }
    probe->pointer[length] = '\0';
}

/* What was done with all jobs. */
struct sum {
    size_t removals, checked, jobs;
};

static void probe_file(eavemark *handle, const char *folder, const char *path,
                       const struct source *source, struct sum *sum)
{
    char *text = read_file(path);
    struct probe probe = {.handle = handle,
                          .file = path,
                          .folder = folder,
                          .job = cJSON_Parse(text),
                          .stages = source->stages};
    assert_non_null(probe.job);
    for (int i = 0; i < probe.stages; i++)
        probe.before[i] = report_of(&probe, probe.job, STAGES[i]);
    assert_non_null(probe.before[0]);
    int place[DEEPEST];
    walk(&probe, probe.job, place, 0);
    for (int i = 0; i < probe.stages; i++)
        cJSON_Delete(probe.before[i]);
    cJSON_Delete(probe.job);
    free(text);
    assert_true(probe.removals > source->least);
    sum->removals += probe.removals;
    sum->checked += probe.checked;
    sum->jobs++;
    assert_int_equal(probe.bad, 0);
}

/* What is expected of an example, and the shop sheet, stand beside it and are no jobs. */
static bool is_job(const char *name)
{
    const size_t length = strlen(name);
    return length > 5 && strcmp(name + length - 5, ".json") == 0
           && strncmp(name, "expected", 8) != 0 && strcmp(name, "shop.json") != 0;
}

static void probe_folder(eavemark *handle, const char *folder, int depth,
                         const struct source *source, struct sum *sum)
{
    struct dirent **names = NULL;
    const int count = scandir(folder, &names, NULL, alphasort);
    assert_true(count >= 0);
    for (int i = 0; i < count; i++) {
        char path[1024];
        struct stat about;
        snprintf(path, sizeof(path), "%s/%s", folder, names[i]->d_name);
        if (names[i]->d_name[0] != '.' && stat(path, &about) == 0) {
            if (S_ISDIR(about.st_mode) && depth > 0)
                probe_folder(handle, path, depth - 1, source, sum);
            else if (is_job(names[i]->d_name))
                probe_file(handle, folder, path, source, sum);
        }
        free(names[i]);
    }
    free(names);
}

static void test_no_fact_left_out_helps(void **state)
{
    (void)state;
    struct sum sum = {0};
    eavemark *handle = eavemark_open(EAVEMARK_HOME_DIR);
    assert_non_null(handle);
    for (size_t i = 0; i < sizeof(SOURCES) / sizeof(SOURCES[0]); i++)
        probe_folder(handle, SOURCES[i].folder, SOURCES[i].depth, &SOURCES[i], &sum);
    eavemark_close(handle);
    printf("%zu jobs, %zu facts removed, %zu checks compared\n", sum.jobs, sum.removals,
           sum.checked);
    assert_true(sum.jobs >= 36);
    assert_true(sum.checked > sum.removals / 2);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_no_fact_left_out_helps),
    };
    return cmocka_run_group_tests_name("missing facts", tests, NULL, NULL);
}
