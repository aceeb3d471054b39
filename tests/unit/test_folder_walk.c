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
#include <sys/stat.h>
#include <unistd.h>

#include <cmocka.h>

enum { NOBODY = 65534 };

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
              why == FOLDER_TOO_DEEP  ? "too deep"
              : why == FOLDER_A_LINK  ? "a link"
              : why == FOLDER_NO_FILE ? "no file"
              : why == ENOENT         ? "nowhere"
              : why == ENOTDIR        ? "no folder"
                                      : "other");
    return true;
}

static void assert_walk_of(const struct temporary_home *home, const char *folder, int depth,
                           int most, bool of_strangers, const char *wanted)
{
    struct seen seen = {TEXT_EMPTY, strlen(home->path) + 1, most};
    const struct folder_visit visit = {see_file, see_unread, &seen, of_strangers};
    char path[500];
    snprintf(path, sizeof(path), "%s/%s", home->path, folder);
    const bool ended = !folder_walk(path, depth, &visit);
    assert_int_equal(ended, seen.most == 0);
    assert_string_equal(text_string(&seen.said), wanted);
    text_free(&seen.said);
}

static void assert_walk(const struct temporary_home *home, const char *folder, int depth, int most,
                        const char *wanted)
{
    assert_walk_of(home, folder, depth, most, false, wanted);
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

/* A pipe that nobody writes to, and a link that leads in a circle. */
static void strangers_pipes_and_links_are_left_and_said(void **state)
{
    (void)state;
    struct temporary_home home;
    char path[500];
    home_make(&home);
    home_write(&home, "jobs/a.json", "");
    home_write(&home, "jobs/z/b.json", "");
    snprintf(path, sizeof(path), "%s/jobs/pipe.json", home.path);
    assert_int_equal(mkfifo(path, 0600), 0);
    snprintf(path, sizeof(path), "%s/jobs/round", home.path);
    assert_int_equal(symlink(".", path), 0);
    assert_walk_of(&home, "jobs", 1, 99, true,
                   "jobs/a.json\njobs/pipe.json: no file\njobs/round: a link\njobs/z/b.json\n");
    assert_walk_of(&home, "jobs", 1, 99, false,
                   "jobs/a.json\njobs/round/a.json\njobs/round/round: too deep\n"
                   "jobs/round/z: too deep\njobs/z/b.json\n");
    home_delete(&home, "jobs/pipe.json");
    home_delete(&home, "jobs/round");
    home_remove(&home);
}

/* A folder may tell the names in it, and let nobody look at what they are. */
static void what_may_not_be_looked_at_is_said(void **state)
{
    (void)state;
    struct temporary_home home;
    char folder[500];
    const bool all_powerful = geteuid() == 0;
    home_make(&home);
    home_write(&home, "rules/a.lua", "");
    home_write(&home, "rules/b.lua", "");
    snprintf(folder, sizeof(folder), "%s/rules", home.path);
    assert_int_equal(chmod(home.path, 0755), 0);
    assert_int_equal(chmod(folder, 0444), 0);
    assert_true(!all_powerful || seteuid(NOBODY) == 0);
    assert_walk(&home, "rules", 2, 99, "rules/a.lua: other\nrules/b.lua: other\n");
    assert_true(!all_powerful || seteuid(0) == 0);
    assert_int_equal(chmod(folder, 0755), 0);
    assert_walk(&home, "rules", 2, 99, "rules/a.lua\nrules/b.lua\n");
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
        cmocka_unit_test(strangers_pipes_and_links_are_left_and_said),
        cmocka_unit_test(what_may_not_be_looked_at_is_said),
        cmocka_unit_test(a_home_tells_of_a_file_that_is_nowhere),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
