/* A program killed before any of the calls by which it changes files: a county is there
 * whole or not at all, a report likewise, and the next program clears away what was left. */
#include "base/part.h"
#include "command/command.h"
#include "support/small_law.h"

#include <dirent.h>
#include <fcntl.h>
#include <setjmp.h>
#include <signal.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cmocka.h>

/* The call, counted from 1, before which the process kills itself; 0: none. */
static int kill_before, calls;

static void count(void)
{
    if (++calls == kill_before)
        raise(SIGKILL);
}

int __real_link(const char *from, const char *to);
int __wrap_link(const char *from, const char *to);
int __real_rename(const char *from, const char *to);
int __wrap_rename(const char *from, const char *to);
int __real_unlink(const char *path);
int __wrap_unlink(const char *path);
int __real_mkdir(const char *path, mode_t mode);
int __wrap_mkdir(const char *path, mode_t mode);
int __real_fsync(int handle);
int __wrap_fsync(int handle);
ssize_t __real_write(int handle, const void *bytes, size_t length);
ssize_t __wrap_write(int handle, const void *bytes, size_t length);

int __wrap_link(const char *from, const char *to)
{
    count();
    return __real_link(from, to);
}

int __wrap_rename(const char *from, const char *to)
{
    count();
    return __real_rename(from, to);
}

int __wrap_unlink(const char *path)
{
    count();
    return __real_unlink(path);
}

int __wrap_mkdir(const char *path, mode_t mode)
{
    count();
    return __real_mkdir(path, mode);
}

int __wrap_fsync(int handle)
{
    count();
    return __real_fsync(handle);
}

ssize_t __wrap_write(int handle, const void *bytes, size_t length)
{
    count();
    return __real_write(handle, bytes, length);
}

/* Runs act in a process that is killed before that call. True if it came to its end. */
static bool survives(int call, void (*act)(const struct temporary_home *home),
                     const struct temporary_home *home)
{
    const pid_t child = fork();
    if (child == 0) {
        kill_before = call;
        calls = 0;
        act(home);
        _exit(0);
    }
    int status;
    assert_int_equal(waitpid(child, &status, 0), child);
    if (WIFEXITED(status)) {
        assert_int_equal(WEXITSTATUS(status), 0);
        return true;
    }
    assert_int_equal(WTERMSIG(status), SIGKILL);
    return false;
}

static bool stands(const struct temporary_home *home, const char *path)
{
    struct stat about;
    return lstat(home_path(home, path), &about) == 0;
}

static int parts(const struct temporary_home *home, const char *folder)
{
    int found = 0;
    DIR *listing = opendir(home_path(home, folder));
    for (const struct dirent *entry; listing != NULL && (entry = readdir(listing)) != NULL;)
        found += strstr(entry->d_name, ".part") != NULL;
    if (listing != NULL)
        closedir(listing);
    return found;
}

/* Counties ------------------------------------------------------------------------------- */

static void start_county(const struct temporary_home *home)
{
    char *text;
    eavemark *handle = eavemark_open(home->path);
    const enum eavemark_status status = eavemark_county_new(handle, "example/new", "model/test",
                                                            "New County", &text);
    if (status != EAVEMARK_NOTHING_FAILED)
        _exit(1);
    free(text);
    eavemark_close(handle);
}

static void start_again_in_vain(const struct temporary_home *home)
{
    char *text;
    eavemark *handle = eavemark_open(home->path);
    assert_int_equal(eavemark_county_new(handle, "example/new", "model/test", "New", &text),
                     EAVEMARK_UNUSABLE);
    assert_has(text, "is there already");
    free(text);
    eavemark_close(handle);
}

static void a_county_is_whole_or_none(void **state)
{
    (void)state;
    bool survived = false;
    int none = 0, whole = 0;
    for (int call = 1; !survived; call++) {
        struct temporary_home home;
        home_make(&home);
        small_law_write(&home);
        home_write(&home, "rules/cases/base.json", SMALL_JOB);
        survived = survives(call, start_county, &home);
        /* Whoever looks now sees all or nothing: cases of no county are not looked at. */
        const bool there = stands(&home, "jurisdictions/example/new.lua");
        assert_true(!there || stands(&home, "jurisdictions/example/new.cases.lua"));
        eavemark *handle = eavemark_open(home.path);
        struct outcome_of_check outcome = home_check(handle, SMALL_JOB, "example/new", NULL, NULL);
        assert_int_equal(outcome.json != NULL, there);
        outcome_free(&outcome);
        char *report, *problems;
        const enum eavemark_status proof = eavemark_proof(handle, NULL, NULL, NULL, EAVEMARK_TEXT,
                                                          &report, &problems);
        assert_string_equal(problems, "");
        assert_in_range(proof, EAVEMARK_NOTHING_FAILED, EAVEMARK_FAILED);
        free(report);
        free(problems);
        eavemark_close(handle);
        /* And it can be started again, unless it is there; either way what was left goes. */
        if (!there)
            assert_true(survives(0, start_county, &home));
        else
            start_again_in_vain(&home);
        assert_int_equal(parts(&home, "jurisdictions/example"), 0);
        none += !there;
        whole += there;
        home_remove(&home);
    }
    assert_in_range(none, 5, 100);
    assert_in_range(whole, 2, 100);
}

/* Reports -------------------------------------------------------------------------------- */

static void write_report(const struct temporary_home *home)
{
    char path[128];
    snprintf(path, sizeof(path), "%s", home_path(home, "report.txt"));
    if (output_text(path, "all of it\n") != 0)
        _exit(1);
}

static void a_report_is_whole_or_the_one_before(void **state)
{
    (void)state;
    bool survived = false;
    for (int call = 1; !survived; call++) {
        struct temporary_home home;
        home_make(&home);
        home_write(&home, "report.txt", "before\n");
        survived = survives(call, write_report, &home);
        char *text = file_text(home_path(&home, "report.txt"), NULL);
        assert_string_equal(text, survived ? "all of it\n" : "before\n");
        free(text);
        assert_true(survives(0, write_report, &home));
        assert_int_equal(parts(&home, "."), 0);
        home_remove(&home);
    }
}

/* Parts ---------------------------------------------------------------------------------- */

/* What is being written now, what is no part, and what is nobody's to remove, stays. */
static void only_what_the_dead_left_goes(void **state)
{
    (void)state;
    struct temporary_home home;
    home_make(&home);
    const pid_t dead = fork();
    if (dead == 0)
        _exit(0);
    waitpid(dead, NULL, 0);
    char target[128], left[64], mine[64], *name;
    static const char *const OTHERS[] = {"r.txt", "r.txt.12.part", "r.txt.x-0.part",
                                         "r.txt.1-0.part.bak", "rr.txt.999999999-0.part"};
    for (size_t i = 0; i < sizeof(OTHERS) / sizeof(OTHERS[0]); i++)
        home_write(&home, OTHERS[i], "x");
    snprintf(left, sizeof(left), "r.txt.%ld-0.part", (long)dead);
    snprintf(mine, sizeof(mine), "r.txt.%ld-0.part", (long)getpid());
    home_write(&home, left, "half");
    snprintf(target, sizeof(target), "%s", home_path(&home, "r.txt"));
    const int handle = part_create(target, &name);
    assert_in_range(handle, 0, 1000);
    assert_false(stands(&home, left));
    assert_true(stands(&home, mine));
    part_clean(target);
    assert_true(stands(&home, mine));
    for (size_t i = 0; i < sizeof(OTHERS) / sizeof(OTHERS[0]); i++)
        assert_true(stands(&home, OTHERS[i]));
    close(handle);
    free(name);
    home_remove(&home);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(a_county_is_whole_or_none),
        cmocka_unit_test(a_report_is_whole_or_the_one_before),
        cmocka_unit_test(only_what_the_dead_left_goes),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
