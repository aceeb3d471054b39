#include "support/temporary_home.h"

#include <cjson/cJSON.h>

#include <dirent.h>
#include <limits.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <time.h>
#include <unistd.h>

#include <cmocka.h>

static void join(char out[PATH_MAX], const char *folder, const char *path)
{
    const int length = snprintf(out, PATH_MAX, "%s/%s", folder, path);
    assert_in_range(length, 1, PATH_MAX - 1);
}

void home_make(struct temporary_home *home)
{
    char folder[PATH_MAX];
    snprintf(home->path, sizeof(home->path), "/tmp/eavemark-test-XXXXXX");
    assert_non_null(mkdtemp(home->path));
    join(folder, home->path, "rules");
    assert_int_equal(mkdir(folder, 0700), 0);
    join(folder, home->path, "jurisdictions");
    assert_int_equal(mkdir(folder, 0700), 0);
}

static void remove_tree(const char *path)
{
    struct stat about;
    if (lstat(path, &about) != 0)
        return;
    if (!S_ISDIR(about.st_mode)) {
        unlink(path);
        return;
    }
    DIR *folder = opendir(path);
    assert_non_null(folder);
    for (struct dirent *entry = readdir(folder); entry != NULL; entry = readdir(folder)) {
        char inner[PATH_MAX];
        if (strcmp(entry->d_name, ".") == 0 || strcmp(entry->d_name, "..") == 0)
            continue;
        join(inner, path, entry->d_name);
        remove_tree(inner);
    }
    closedir(folder);
    rmdir(path);
}

void home_remove(struct temporary_home *home)
{
    remove_tree(home->path);
    home->path[0] = '\0';
}

static void make_folders(char *path)
{
    for (char *slash = strchr(path + 1, '/'); slash != NULL; slash = strchr(slash + 1, '/')) {
        *slash = '\0';
        mkdir(path, 0700);
        *slash = '/';
    }
}

void home_write_n(const struct temporary_home *home, const char *path, const char *text,
                  size_t length)
{
    char full[PATH_MAX];
    join(full, home->path, path);
    make_folders(full);
    FILE *file = fopen(full, "wb");
    assert_non_null(file);
    assert_int_equal(fwrite(text, 1, length, file), length);
    assert_int_equal(fclose(file), 0);
}

void home_write(const struct temporary_home *home, const char *path, const char *text)
{
    home_write_n(home, path, text, strlen(text));
}

void home_delete(const struct temporary_home *home, const char *path)
{
    assert_int_equal(unlink(home_path(home, path)), 0);
}

void home_copy(const struct temporary_home *home, const char *path)
{
    char from[PATH_MAX];
    size_t length;
    join(from, EAVEMARK_HOME_DIR, path);
    char *text = file_text(from, &length);
    home_write_n(home, path, text, length);
    free(text);
}

void home_copy_all(const struct temporary_home *home, const char *path)
{
    char from[PATH_MAX];
    join(from, EAVEMARK_HOME_DIR, path);
    DIR *folder = opendir(from);
    assert_non_null(folder);
    for (struct dirent *entry = readdir(folder); entry != NULL; entry = readdir(folder)) {
        char inner[PATH_MAX], full[PATH_MAX];
        struct stat about;
        if (entry->d_name[0] == '.')
            continue;
        join(inner, path, entry->d_name);
        join(full, EAVEMARK_HOME_DIR, inner);
        assert_int_equal(stat(full, &about), 0);
        if (S_ISDIR(about.st_mode))
            home_copy_all(home, inner);
        else
            home_copy(home, inner);
    }
    closedir(folder);
}

const char *home_path(const struct temporary_home *home, const char *path)
{
    static _Thread_local char full[PATH_MAX];
    join(full, home->path, path);
    return full;
}

char *file_text(const char *path, size_t *length)
{
    FILE *file = fopen(path, "rb");
    if (file == NULL)
        fail_msg("%s cannot be opened", path);
    assert_int_equal(fseek(file, 0, SEEK_END), 0);
    const long size = ftell(file);
    assert_true(size >= 0);
    rewind(file);
    char *text = malloc((size_t)size + 1);
    assert_non_null(text);
    assert_int_equal(fread(text, 1, (size_t)size, file), size);
    text[size] = '\0';
    fclose(file);
    if (length != NULL)
        *length = (size_t)size;
    return text;
}

struct outcome_of_check home_check(eavemark *handle, const char *job, const char *jurisdiction,
                                   const char *date, const char *stage)
{
    const struct eavemark_request request = {.name = "job.json",
                                             .text = job,
                                             .length = strlen(job),
                                             .jurisdiction = jurisdiction,
                                             .date = date,
                                             .stage = stage};
    eavemark_result *result = eavemark_check(handle, &request);
    assert_non_null(result);
    struct outcome_of_check outcome = {
        .status = eavemark_result_status(result, false),
        .problems = strdup(eavemark_result_problems(result)),
        .json = eavemark_result_report(result, EAVEMARK_JSON_LINE, EAVEMARK_ALL)};
    eavemark_result_free(result);
    assert_non_null(outcome.problems);
    return outcome;
}

void outcome_free(struct outcome_of_check *outcome)
{
    free(outcome->problems);
    free(outcome->json);
    *outcome = (struct outcome_of_check){0};
}

char *finding_member(const char *json, const char *rule, int which, const char *member)
{
    assert_non_null(json);
    cJSON *root = cJSON_Parse(json);
    assert_non_null(root);
    char *text = NULL;
    const cJSON *finding = NULL;
    cJSON_ArrayForEach(finding, cJSON_GetObjectItemCaseSensitive(root, "findings")) {
        const cJSON *id = cJSON_GetObjectItemCaseSensitive(finding, "rule");
        if (!cJSON_IsString(id) || strcmp(id->valuestring, rule) != 0 || which-- != 0)
            continue;
        const cJSON *found = cJSON_GetObjectItemCaseSensitive(finding, member);
        text = cJSON_IsString(found) ? strdup(found->valuestring) : cJSON_PrintUnformatted(found);
    }
    cJSON_Delete(root);
    return text;
}

static void check_member(const char *json, const char *rule, int which, const char *member,
                         const char *wanted, bool exactly)
{
    char *text = finding_member(json, rule, which, member);
    if (text == NULL)
        fail_msg("there is no finding %d of %s with %s in %s", which, rule, member, json);
    if (exactly ? strcmp(text, wanted) != 0 : strstr(text, wanted) == NULL)
        fail_msg("%s of finding %d of %s is \"%s\", not \"%s\"", member, which, rule, text, wanted);
    free(text);
}

void assert_member(const char *json, const char *rule, int which, const char *member,
                   const char *wanted)
{
    check_member(json, rule, which, member, wanted, true);
}

void assert_member_has(const char *json, const char *rule, int which, const char *member,
                       const char *words)
{
    check_member(json, rule, which, member, words, false);
}
