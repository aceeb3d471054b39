/* Every seed and every input that once broke something, through the targets of
 * tests/fuzz. A target stops the process itself when a promise is broken. */
/* For nftw, which POSIX counts to its XSI part. */
#define _XOPEN_SOURCE 700

#include "fuzz/target.h"
#include "support/temporary_home.h"

#include <ftw.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>
#include <unistd.h>

#include <cmocka.h>

enum { INPUTS_MOST = 1000 };

/* nftw takes no data of ours. */
static struct {
    const char *ending;
    char *paths[INPUTS_MOST];
    size_t count;
} found;

static int note(const char *path, const struct stat *about, int type, struct FTW *where)
{
    (void)about;
    (void)where;
    const size_t n = strlen(path), m = strlen(found.ending);
    if (type != FTW_F || n < m || strcmp(path + n - m, found.ending) != 0)
        return 0;
    assert_in_range(found.count, 0, INPUTS_MOST - 1);
    found.paths[found.count++] = strdup(path);
    return 0;
}

/* Plays every file below a folder whose name ends so; how many there were. */
static size_t play(const struct fuzz_target *target, void *state, const char *folder,
                   const char *ending)
{
    char path[512];
    snprintf(path, sizeof(path), "%s/%s", EAVEMARK_HOME_DIR, folder);
    found.ending = ending;
    found.count = 0;
    nftw(path, note, 16, FTW_PHYS);
    for (size_t i = 0; i < found.count; i++) {
        size_t length;
        char *bytes = file_text(found.paths[i], &length);
        fprintf(stderr, "%s: %s\n", target->name, found.paths[i]);
        target->run(state, bytes, length);
        free(bytes);
        free(found.paths[i]);
    }
    return found.count;
}

/* The seeds common to all and the target's own folders. */
static void play_all(const struct fuzz_target *target, const char *const folders[][2])
{
    char folder[64];
    void *state = target->start();
    size_t count = 0;
    for (size_t i = 0; folders[i][0] != NULL; i++)
        count += play(target, state, folders[i][0], folders[i][1]);
    snprintf(folder, sizeof(folder), "tests/fuzz/seeds/%s", target->name);
    count += play(target, state, folder, "");
    snprintf(folder, sizeof(folder), "tests/fuzz/regressions/%s", target->name);
    play(target, state, folder, "");
    target->end(state);
    assert_in_range(count, 5, INPUTS_MOST);
}

static void jobs(void **state)
{
    (void)state;
    static const char *const FOLDERS[][2] = {{"examples", ".json"},
                                             {"tests/schema/bad", ".json"},
                                             {"rules/cases", ".json"},
                                             {NULL, NULL}};
    play_all(&fuzz_job, FOLDERS);
}

static void batches(void **state)
{
    (void)state;
    static const char *const FOLDERS[][2] = {{"examples", ".json"}, {NULL, NULL}};
    play_all(&fuzz_lines, FOLDERS);
}

static void places(void **state)
{
    (void)state;
    static const char *const FOLDERS[][2] = {{"jurisdictions", ".lua"}, {NULL, NULL}};
    play_all(&fuzz_profile, FOLDERS);
}

static void rule_packs(void **state)
{
    (void)state;
    static const char *const FOLDERS[][2] = {{"rules", ".lua"}, {NULL, NULL}};
    play_all(&fuzz_rules, FOLDERS);
}

static void county_cases(void **state)
{
    (void)state;
    static const char *const FOLDERS[][2] = {{"tests/attacks/cases", ".lua"}, {NULL, NULL}};
    play_all(&fuzz_cases, FOLDERS);
}

static void answers(void **state)
{
    (void)state;
    static const char *const FOLDERS[][2] = {{NULL, NULL}};
    play_all(&fuzz_interview, FOLDERS);
}

static void slopes_and_days(void **state)
{
    (void)state;
    static const char *const FOLDERS[][2] = {{NULL, NULL}};
    play_all(&fuzz_words, FOLDERS);
}

static void shop_sheets(void **state)
{
    (void)state;
    static const char *const FOLDERS[][2] = {{NULL, NULL}};
    play_all(&fuzz_shop, FOLDERS);
}

static void pages(void **state)
{
    (void)state;
    static const char *const FOLDERS[][2] = {{NULL, NULL}};
    play_all(&fuzz_page, FOLDERS);
}

static void drafts(void **state)
{
    (void)state;
    static const char *const FOLDERS[][2] = {{NULL, NULL}};
    play_all(&fuzz_draft, FOLDERS);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(jobs),
        cmocka_unit_test(batches),
        cmocka_unit_test(places),
        cmocka_unit_test(rule_packs),
        cmocka_unit_test(county_cases),
        cmocka_unit_test(answers),
        cmocka_unit_test(slopes_and_days),
        cmocka_unit_test(shop_sheets),
        cmocka_unit_test(pages),
        cmocka_unit_test(drafts),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
