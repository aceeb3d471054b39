/* Whether a file of a home is to the byte what was packed, and that nothing outside the home
 * ever is. */
#define _XOPEN_SOURCE 700

#include "base/home_folder.h"

#include "support/temporary_home.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cmocka.h>

static bool same(const struct temporary_home *home, const char *path, const char *text)
{
    return home_folder_same(home->path, path, text, strlen(text));
}

static void link_in(const struct temporary_home *home, const char *path, const char *target)
{
    char link[500];
    snprintf(link, sizeof(link), "%s/%s", home->path, path);
    assert_int_equal(symlink(target, link), 0);
}

static enum file_result read_of(const struct temporary_home *home, const char *path)
{
    char *text = NULL;
    size_t length = 0;
    const enum file_result result = home_folder_read(&text, &length, home->path, path, 1000);
    if (result == FILE_READ)
        free(text);
    return result;
}

static void a_file_is_the_same_only_to_its_last_byte(void **state)
{
    (void)state;
    struct temporary_home home;
    home_make(&home);
    home_write(&home, "rules/a.lua", "one\ntwo\n");
    home_write(&home, "rules/empty.lua", "");
    assert_true(same(&home, "rules/a.lua", "one\ntwo\n"));
    assert_false(same(&home, "rules/a.lua", "one\ntwo."));
    assert_false(same(&home, "rules/a.lua", "One\ntwo\n"));
    assert_false(same(&home, "rules/a.lua", "one\ntwo"));
    assert_false(same(&home, "rules/a.lua", "one\ntwo\n\n"));
    assert_true(same(&home, "rules/empty.lua", ""));
    assert_false(same(&home, "rules/none.lua", ""));
    assert_false(same(&home, "rules", ""));
    assert_true(home_folder_same(home.path, "rules/a.lua", "one\ntwo\n", 8));
    home_remove(&home);
}

/* More than is read at once: each piece counts. */
static void a_long_file_is_looked_through(void **state)
{
    (void)state;
    enum { LENGTH = 100 * 1000 };
    struct temporary_home home;
    char *text = malloc(LENGTH + 1);
    assert_non_null(text);
    for (size_t i = 0; i < LENGTH; i++)
        text[i] = (char)('a' + i % 23);
    text[LENGTH] = '\0';
    home_make(&home);
    home_write(&home, "rules/long.lua", text);
    assert_true(same(&home, "rules/long.lua", text));
    for (size_t at = 0; at < LENGTH; at += LENGTH / 9) {
        text[at]++;
        assert_false(same(&home, "rules/long.lua", text));
        text[at]--;
    }
    free(text);
    home_remove(&home);
}

static void a_pipe_is_not_waited_for(void **state)
{
    (void)state;
    struct temporary_home home;
    char pipe[500];
    home_make(&home);
    home_write(&home, "rules/a.lua", "one");
    snprintf(pipe, sizeof(pipe), "%s/rules/pipe.lua", home.path);
    assert_int_equal(mkfifo(pipe, 0600), 0);
    assert_false(same(&home, "rules/pipe.lua", ""));
    assert_int_equal(read_of(&home, "rules/pipe.lua"), FILE_NOT_A_FILE);
    home_remove(&home);
}

static void what_leads_out_is_never_the_same(void **state)
{
    (void)state;
    struct temporary_home home, outside;
    char up[500];
    home_make(&home);
    home_make(&outside);
    home_write(&outside, "rules/a.lua", "one");
    home_write(&home, "rules/a.lua", "one");
    home_write(&home, "rules/deep/b.lua", "two");
    link_in(&home, "rules/out.lua", home_path(&outside, "rules/a.lua"));
    link_in(&home, "rules/outside", home_path(&outside, "rules"));
    link_in(&home, "rules/within.lua", "deep/b.lua");
    link_in(&home, "rules/deeper", "deep");
    snprintf(up, sizeof(up), "../%s/rules/a.lua", strrchr(outside.path, '/') + 1);
    const char *const outs[] = {"rules/out.lua", "rules/outside/a.lua", up};
    for (size_t i = 0; i < 3; i++) {
        assert_false(same(&home, outs[i], "one"));
        assert_false(home_folder_has(home.path, outs[i]));
        assert_int_equal(read_of(&home, outs[i]), FILE_OUTSIDE);
    }
    assert_true(same(&home, "rules/within.lua", "two"));
    assert_true(same(&home, "rules/deeper/b.lua", "two"));
    assert_true(same(&home, "rules/deep/../a.lua", "one"));
    assert_true(same(&home, "./rules/a.lua", "one"));
    home_remove(&home);
    home_remove(&outside);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(a_file_is_the_same_only_to_its_last_byte),
        cmocka_unit_test(a_long_file_is_looked_through),
        cmocka_unit_test(a_pipe_is_not_waited_for),
        cmocka_unit_test(what_leads_out_is_never_the_same),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
