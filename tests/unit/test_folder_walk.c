/* Going through folders: every file once, in the order of bytes, and what cannot be looked at
 * is said. */
#define _XOPEN_SOURCE 700

#include "base/folder_walk.h"
#include "base/home_folder.h"
#include "base/text.h"

#include "support/temporary_home.h"

#include <errno.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <string.h>
#include <unistd.h>

#include <cmocka.h>

struct seen {
    struct text said;
    size_t prefix;
    int most; /* files until the walk is ended */
};

static bool see_file(void *data, const char *path)
{
    struct seen *seen = data;
    text_addf(&seen->said, "%s\n", path + seen->prefix);
    return --seen->most > 0;
}

static bool see_unread(void *data, const char *path, int why)
{
    struct seen *seen = data;
    text_addf(&seen->said, "%s: %s\n", path + seen->prefix,
              why == 0         ? "too deep"
              : why == ENOENT  ? "nowhere"
              : why == ENOTDIR ? "no folder"
                               : "other");
    return true;
}

static void assert_walk(const struct temporary_home *home, const char *folder, int depth, int most,
                        const char *wanted)
{
    struct seen seen = {TEXT_EMPTY, strlen(home->path) + 1, most};
    const struct folder_visit visit = {see_file, see_unread, &seen};
    char path[500];
    snprintf(path, sizeof(path), "%s/%s", home->path, folder);
    const bool ended = !folder_walk(path, depth, &visit);
    assert_int_equal(ended, seen.most == 0);
    assert_string_equal(text_string(&seen.said), wanted);
    text_free(&seen.said);
}

static void make(struct temporary_home *home)
{
    char link[500];
    home_make(home);
    home_write(home, "rules/b.lua", "");
    home_write(home, "rules/a.lua", "");
    home_write(home, "rules/.hidden.lua", "");
    home_write(home, "rules/deep/c.lua", "");
    home_write(home, "rules/deep/deeper/d.lua", "");
    snprintf(link, sizeof(link), "%s/rules/e.lua", home->path);
    assert_int_equal(symlink("nowhere", link), 0);
    snprintf(link, sizeof(link), "%s/rules/note", home->path);
    assert_int_equal(symlink("nowhere", link), 0);
}

static void every_file_is_visited_and_what_is_not_is_said(void **state)
{
    (void)state;
    struct temporary_home home;
    make(&home);
    assert_walk(&home, "rules", 2, 99,
                "rules/a.lua\nrules/b.lua\nrules/deep/c.lua\nrules/deep/deeper/d.lua\n"
                "rules/e.lua: nowhere\nrules/note: nowhere\n");
    assert_walk(&home, "rules", 1, 99,
                "rules/a.lua\nrules/b.lua\nrules/deep/c.lua\nrules/deep/deeper: too deep\n"
                "rules/e.lua: nowhere\nrules/note: nowhere\n");
    assert_walk(&home, "rules", 2, 2, "rules/a.lua\nrules/b.lua\n");
    assert_walk(&home, "none", 2, 99, "none: nowhere\n");
    assert_walk(&home, "rules/a.lua", 2, 99, "rules/a.lua: no folder\n");
    home_remove(&home);
}

static void note_path(void *data, const char *path)
{
    struct text *said = data;
    text_addf(said, "%s\n", path);
}

/* A rule file that a link of its name leads nowhere for is not passed over in silence; a
 * link of another name, and a folder deeper than is looked for, are no matter. */
static void a_home_tells_of_a_file_that_is_nowhere(void **state)
{
    (void)state;
    struct temporary_home home;
    struct text said = TEXT_EMPTY;
    make(&home);
    assert_int_equal(home_folder_each(home.path, "rules", ".lua", 0, note_path, &said), -1);
    assert_int_equal(errno, ENOENT);
    assert_string_equal(text_string(&said), "rules/a.lua\nrules/b.lua\n");
    text_free(&said);
    said = TEXT_EMPTY;
    home_delete(&home, "rules/e.lua");
    assert_int_equal(home_folder_each(home.path, "rules", ".lua", 0, note_path, &said), 0);
    assert_string_equal(text_string(&said), "rules/a.lua\nrules/b.lua\n");
    assert_int_equal(home_folder_each(home.path, "none", ".lua", 0, note_path, &said), -1);
    text_free(&said);
    home_remove(&home);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(every_file_is_visited_and_what_is_not_is_said),
        cmocka_unit_test(a_home_tells_of_a_file_that_is_nowhere),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
