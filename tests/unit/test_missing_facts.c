/* No rule may pass because a fact was left out.
 *
 * For every job in examples/, rules/cases/ and tests/fuzz/seeds/job/, and every
 * field in it: the field is removed and the job checked again, whole; those of
 * rules/cases/ stage by stage too, as the examples have a job for each stage. A job
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

struct probe {
    eavemark *handle;
    const char *file;
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

static cJSON *report_of(eavemark *handle, const cJSON *job, const char *stage)
{
    char *text = cJSON_PrintUnformatted(job);
    assert_non_null(text);
    const struct eavemark_request request = {
        .name = "job", .text = text, .length = strlen(text), .stage = stage};
    eavemark_result *result = eavemark_check(handle, &request);
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
        } else if (met(now)) {
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
        cJSON *after = report_of(probe->handle, job, STAGES[i]);
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

static void probe_file(eavemark *handle, const char *path, int stages, size_t *removals,
                       size_t *checked)
{
    char *text = read_file(path);
    struct probe probe = {
        .handle = handle, .file = path, .job = cJSON_Parse(text), .stages = stages};
    assert_non_null(probe.job);
    for (int i = 0; i < stages; i++)
        probe.before[i] = report_of(handle, probe.job, STAGES[i]);
    assert_non_null(probe.before[0]);
    int place[DEEPEST];
    walk(&probe, probe.job, place, 0);
    for (int i = 0; i < stages; i++)
        cJSON_Delete(probe.before[i]);
    cJSON_Delete(probe.job);
    free(text);
    assert_true(probe.removals > 100);
    *removals += probe.removals;
    *checked += probe.checked;
    assert_int_equal(probe.bad, 0);
}

/* Jobs in the folder, and `depth` folders below it. What is expected of an
 * example stands beside it and is no job. */
static void probe_folder(eavemark *handle, const char *folder, int depth, int stages,
                         size_t *removals, size_t *checked, size_t *jobs)
{
    struct dirent **names = NULL;
    const int count = scandir(folder, &names, NULL, alphasort);
    assert_true(count >= 0);
    for (int i = 0; i < count; i++) {
        char path[1024];
        struct stat about;
        snprintf(path, sizeof(path), "%s/%s", folder, names[i]->d_name);
        const size_t length = strlen(names[i]->d_name);
        if (names[i]->d_name[0] != '.' && stat(path, &about) == 0) {
            if (S_ISDIR(about.st_mode) && depth > 0) {
                probe_folder(handle, path, depth - 1, stages, removals, checked, jobs);
            } else if (length > 5 && strcmp(names[i]->d_name + length - 5, ".json") == 0
                       && strncmp(names[i]->d_name, "expected", 8) != 0) {
                probe_file(handle, path, stages, removals, checked);
                (*jobs)++;
            }
        }
        free(names[i]);
    }
    free(names);
}

static void test_no_fact_left_out_helps(void **state)
{
    (void)state;
    size_t removals = 0, checked = 0, jobs = 0;
    eavemark *handle = eavemark_open(EAVEMARK_HOME_DIR);
    assert_non_null(handle);
    probe_folder(handle, EAVEMARK_HOME_DIR "/examples", 1, 1, &removals, &checked, &jobs);
    probe_folder(handle, EAVEMARK_HOME_DIR "/rules/cases", 0, STAGE_RUNS, &removals, &checked,
                 &jobs);
    probe_folder(handle, EAVEMARK_HOME_DIR "/tests/fuzz/seeds/job", 0, 1, &removals, &checked,
                 &jobs);
    eavemark_close(handle);
    printf("%zu jobs, %zu facts removed, %zu checks compared\n", jobs, removals, checked);
    assert_true(jobs >= 18);
    assert_true(checked > removals / 2);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_no_fact_left_out_helps),
    };
    return cmocka_run_group_tests_name("missing facts", tests, NULL, NULL);
}
