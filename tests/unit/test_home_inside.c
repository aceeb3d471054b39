/* The home inside the program: the same files, the same reports, the same fingerprint as
 * from the folder it was packed from. */
#include "base/home_files.h"
#include "include/eavemark.h"

#include <errno.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

static const char *const FOLDERS[] = {"rules", "jurisdictions"};
enum { DEEP = 6, LIMIT = 1 << 20 };

struct listed {
    char **paths;
    size_t count;
};

static void note(void *data, const char *path)
{
    struct listed *listed = data;
    char **more = realloc(listed->paths, (listed->count + 1) * sizeof(*more));
    assert_non_null(more);
    listed->paths = more;
    listed->paths[listed->count] = strdup(path);
    assert_non_null(listed->paths[listed->count++]);
}

static struct listed list(const char *home, const char *folder, const char *ending, int depth)
{
    struct listed listed = {0};
    assert_int_equal(home_files_each(home, folder, ending, depth, note, &listed), 0);
    return listed;
}

static void free_list(struct listed *listed)
{
    for (size_t i = 0; i < listed->count; i++)
        free(listed->paths[i]);
    free(listed->paths);
}

static void assert_same_file(const char *path)
{
    char *inside = NULL, *outside = NULL;
    size_t n = 0, m = 0;
    assert_int_equal(home_files_read(&inside, &n, HOME_INSIDE, path, LIMIT), FILE_READ);
    assert_int_equal(home_files_read(&outside, &m, EAVEMARK_HOME_DIR, path, LIMIT), FILE_READ);
    assert_int_equal(n, m);
    assert_memory_equal(inside, outside, n);
    assert_int_equal(inside[n], '\0');
    free(inside);
    free(outside);
}

static void every_file_is_inside_in_the_same_order(void **state)
{
    (void)state;
    static const char *const ENDINGS[] = {".lua", ".json", ".cases.lua", ".rules.lua"};
    size_t files = 0;
    for (size_t f = 0; f < 2; f++)
        for (size_t e = 0; e < 4; e++)
            for (int depth = 0; depth <= DEEP; depth += DEEP) {
                struct listed inside = {0}, outside = {0};
                home_files_each(HOME_INSIDE, FOLDERS[f], ENDINGS[e], depth, note, &inside);
                home_files_each(EAVEMARK_HOME_DIR, FOLDERS[f], ENDINGS[e], depth, note, &outside);
                assert_int_equal(inside.count, outside.count);
                for (size_t i = 0; i < inside.count; i++) {
                    assert_string_equal(inside.paths[i], outside.paths[i]);
                    assert_same_file(inside.paths[i]);
                }
                files += inside.count;
                free_list(&inside);
                free_list(&outside);
            }
    assert_true(files > 200);
}

/* One check of a job of the examples, in JSON with every finding; to be freed. */
static char *report_of(const char *home, const char *job)
{
    char name[512];
    snprintf(name, sizeof(name), "%s/examples/%s", EAVEMARK_HOME_DIR, job);
    eavemark *handle = eavemark_open(home);
    const struct eavemark_request request = {.name = name};
    eavemark_result *result = eavemark_check(handle, &request);
    assert_string_equal(eavemark_result_problems(result), "");
    char *report = eavemark_result_report(result, EAVEMARK_JSON, EAVEMARK_ALL);
    assert_non_null(report);
    eavemark_result_free(result);
    eavemark_close(handle);
    return report;
}

/* The fingerprint stands in the report. */
static void reports_are_the_same_to_the_byte(void **state)
{
    (void)state;
    static const char *const JOBS[] = {"cross-gable/job.json", "porch-tear-off/job.json",
                                       "overlay-gable/job.json"};
    for (size_t i = 0; i < sizeof(JOBS) / sizeof(JOBS[0]); i++) {
        char *inside = report_of(EAVEMARK_HOME_INSIDE, JOBS[i]);
        char *outside = report_of(EAVEMARK_HOME_DIR, JOBS[i]);
        assert_non_null(strstr(inside, "\"fingerprint\""));
        assert_string_equal(inside, outside);
        free(inside);
        free(outside);
    }
}

static void lists_are_the_same(void **state)
{
    (void)state;
    for (int names = EAVEMARK_RULES; names <= EAVEMARK_PARTS; names++) {
        eavemark *inside = eavemark_open(EAVEMARK_HOME_INSIDE);
        eavemark *outside = eavemark_open(EAVEMARK_HOME_DIR);
        char *a = NULL, *b = NULL;
        assert_int_equal(eavemark_list(inside, (enum eavemark_names)names, &a), 0);
        assert_int_equal(eavemark_list(outside, (enum eavemark_names)names, &b), 0);
        assert_string_equal(a, b);
        free(a);
        free(b);
        eavemark_close(inside);
        eavemark_close(outside);
    }
}

static void paths_are_held_inside(void **state)
{
    (void)state;
    static const struct {
        const char *path;
        enum file_result result;
    } CASES[] = {
        {"rules/fields.lua", FILE_READ},
        {"jurisdictions/../rules/./fields.lua", FILE_READ},
        {"rules//fields.lua", FILE_READ},
        {"rules", FILE_NOT_A_FILE},
        {"rules/cases", FILE_NOT_A_FILE},
        {"rules/fields", FILE_MISSING},
        {"rules/fields.lua.bak", FILE_MISSING},
        {"../rules/fields.lua", FILE_OUTSIDE},
        {"rules/../../rules/fields.lua", FILE_OUTSIDE},
    };
    for (size_t i = 0; i < sizeof(CASES) / sizeof(CASES[0]); i++) {
        char *text = NULL;
        size_t length = 0;
        assert_int_equal(home_files_read(&text, &length, HOME_INSIDE, CASES[i].path, LIMIT),
                         CASES[i].result);
        assert_int_equal(home_files_has(HOME_INSIDE, CASES[i].path), CASES[i].result == FILE_READ);
        free(text);
    }
    char *text = NULL;
    size_t length = 0;
    assert_int_equal(home_files_read(&text, &length, HOME_INSIDE, "rules/fields.lua", 100),
                     FILE_TOO_LARGE);
    struct listed none = {0};
    assert_int_equal(home_files_each(HOME_INSIDE, "attics", ".lua", DEEP, note, &none), -1);
    assert_int_equal(errno, ENOENT);
    struct listed top = list(HOME_INSIDE, "rules", ".lua", 0);
    for (size_t i = 0; i < top.count; i++)
        assert_null(strstr(top.paths[i], "cases/"));
    free_list(&top);
}

static void nothing_is_written_inside(void **state)
{
    (void)state;
    eavemark *handle = eavemark_open(EAVEMARK_HOME_INSIDE);
    char *text = NULL;
    assert_int_equal(eavemark_county_new(handle, "example/attic", "model/irc-2021", "Attic", &text),
                     EAVEMARK_UNUSABLE);
    assert_non_null(strstr(text, "the home inside the program cannot be written to"));
    free(text);
    eavemark_close(handle);
}

/* By the index and by going through them. */
static void every_file_is_found_by_its_path(void **state)
{
    (void)state;
    const struct pack packs[] = {home_files_packed(), home_files_made()};
    for (size_t p = 0; p < 2; p++) {
        const struct pack plain = {packs[p].bytes, pack_end(&packs[p])};
        struct packed_file file, found, walked;
        const char *listed, *listed_plain;
        size_t at = 0, count = 0, line = 0, begin = 0, length, plain_length;
        assert_true(plain.length < packs[p].length);
        for (; pack_next(&packs[p], &at, &file); count++) {
            char path[512];
            snprintf(path, sizeof(path), "%.*s", (int)file.path_length, file.path);
            assert_true(pack_find(&packs[p], path, &found));
            assert_true(pack_find(&plain, path, &walked));
            assert_ptr_equal(found.bytes, file.bytes);
            assert_int_equal(found.length, file.length);
            assert_int_equal(found.path_length, file.path_length);
            assert_memory_equal(found.path, path, file.path_length);
            assert_ptr_equal(walked.bytes, file.bytes);
            assert_true(pack_next_path(&packs[p], &line, &listed, &length));
            assert_true(pack_next_path(&plain, &begin, &listed_plain, &plain_length));
            assert_int_equal(plain_length, file.path_length);
            assert_memory_equal(listed_plain, path, plain_length);
            /* What was made is listed in order, whatever the order in which it was. */
            assert_true(p == 1 || length == file.path_length);
            assert_true(p == 1 || memcmp(listed, path, length) == 0);
            path[file.path_length - 1]++;
            assert_int_equal(pack_find(&packs[p], path, &found), pack_find(&plain, path, &walked));
        }
        assert_int_equal(at, plain.length);
        assert_false(pack_next_path(&packs[p], &line, &listed, &length));
        assert_false(pack_next_path(&plain, &begin, &listed, &length));
        assert_true(count > 100);
        assert_false(pack_find(&packs[p], "", &found));
        assert_false(pack_find(&packs[p], "zzz", &found));
    }
    /* An index that points elsewhere finds nothing, or what has that path. */
    static const struct {
        const char *index;
        bool found;
    } ODD[] = {
        {"ffffffff00000001a\n00000012pack", false}, /* behind the end */
        {"0000000400000080a\n00000012pack", false}, /* past it */
        {"0000000400000001b\n00000012pack", false}, /* of another path */
        {"0000000400000001a00000011pack", false},   /* no line */
        {"0000000400a\n0000000cpack", false},       /* too short a line */
        {"0000000400000001a\n00000012pack", true},
        {"00000099pack", true}, /* longer than the pack: none */
    };
    for (size_t i = 0; i < sizeof(ODD) / sizeof(ODD[0]); i++) {
        char bytes[64] = "1 a\nx";
        const size_t files = 6, length = strlen(ODD[i].index);
        memcpy(bytes + files, ODD[i].index, length);
        const struct pack odd = {bytes, files + length};
        struct packed_file file;
        assert_int_equal(pack_find(&odd, "a", &file), ODD[i].found);
    }
}

static void bytes_that_are_no_pack_end_it(void **state)
{
    (void)state;
    static const char *const BROKEN[] = {
        "",          "x",          "5",      "5 a",
        "5 a\nabcd", "5 a\nabcde", "-1 a\n", "99999999999999999999999999 a\nb\n"};
    for (size_t i = 0; i < sizeof(BROKEN) / sizeof(BROKEN[0]); i++) {
        const struct pack pack = {BROKEN[i], strlen(BROKEN[i])};
        struct packed_file file;
        size_t at = 0;
        assert_false(pack_next(&pack, &at, &file));
    }
    /* What is not ended by a zero byte could not be read where it stands. */
    const struct pack unended = {"1 a\nx\n", 6};
    const struct pack two = {"1 a/b\nx\0"
                             "0 a.lua\n",
                             17};
    struct packed_file file;
    size_t begin = 0;
    assert_false(pack_next(&unended, &begin, &file));
    assert_true(pack_find(&two, "a.lua", &file));
    assert_int_equal(file.length, 0);
    assert_false(pack_find(&two, "a", &file));
    assert_true(pack_order("a/b", 3, "a.lua", 5) < 0);
    assert_true(pack_order("a", 1, "a/b", 3) < 0);
    assert_int_equal(pack_order("a/b", 3, "a/b", 3), 0);
    assert_true(pack_order("b", 1, "a/b", 3) > 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(every_file_is_inside_in_the_same_order),
        cmocka_unit_test(reports_are_the_same_to_the_byte),
        cmocka_unit_test(lists_are_the_same),
        cmocka_unit_test(paths_are_held_inside),
        cmocka_unit_test(nothing_is_written_inside),
        cmocka_unit_test(every_file_is_found_by_its_path),
        cmocka_unit_test(bytes_that_are_no_pack_end_it),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
