#include "prove/county.h"

#include "base/home_files.h"
#include "base/date.h"
#include "base/part.h"
#include "base/place_id.h"
#include "base/utf8.h"
#include "check/check.h"
#include "job/json.h"
#include "profile/places.h"

#include <errno.h>
#include <fcntl.h>
#include <limits.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

enum { TITLE_LONGEST = 200, FIRST_DAY = 19000101 };

static int refuse_county(struct problems *problems, const char *what, const char *says)
{
    problem_at(problems, PROBLEM_JOB, what, NULL, "%s", says);
    return -1;
}

/* What is asked for ---------------------------------------------------------------------- */

/* Shown as it is: nothing in it had to be escaped. */
static bool is_plain(const char *title, struct problems *problems)
{
    struct text shown = TEXT_EMPTY;
    utf8_add_printable(&shown, title);
    const bool plain = strcmp(text_string(&shown), title) == 0;
    if (shown.failed)
        problem_out_of_memory(problems);
    text_free(&shown);
    return plain;
}

/* An id that is also a topic's name would make `proof NAME` mean two things. */
static int check_words(struct laws *laws, const char *id, const char *title,
                       struct problems *problems)
{
    char topic[PATH_MAX];
    if (!place_id_is_sound(id)) {
        problem_at(problems, PROBLEM_JOB, "county new", NULL,
                   "\"%s\" cannot be an id: it is made of a-z, 0-9, - and _, at most 120 of them, "
                   "with / between its parts",
                   id);
        return -1;
    }
    snprintf(topic, sizeof(topic), "rules/cases/%s.lua", id);
    if (home_has(laws->home, topic)) {
        problem_at(problems, PROBLEM_JOB, "county new", NULL,
                   "\"%s\" is the name of a topic of rules; take another id", id);
        return -1;
    }
    const bool plain = is_plain(title, problems);
    if (problems->out_of_memory)
        return -1;
    if (title[strspn(title, " ")] == '\0' || strlen(title) > TITLE_LONGEST || !plain)
        return refuse_county(problems, "--title",
                             "a title is a line of plain text, 200 letters at most");
    return 0;
}

/* A dangling link counts, and so does a path too long to look at: what cannot be ruled
 * out is not written over. */
static bool file_exists(const char *home, const char *path)
{
    char full[PATH_MAX];
    struct stat about;
    const int length = snprintf(full, sizeof(full), "%s/%s", home, path);
    return length < 0 || (size_t)length >= sizeof(full) || lstat(full, &about) == 0;
}

/* What a program left that was killed: cases that got their name when the profile had not
 * yet, and parts of either. */
static void take_back_half(const struct county_start *start, const char *home)
{
    const char *const paths[2] = {start->cases_path, start->profile_path};
    for (int i = 0; i < 2; i++) {
        char full[PATH_MAX];
        const int length = snprintf(full, sizeof(full), "%s/%s", home, paths[i]);
        if (length < 0 || (size_t)length >= sizeof(full))
            continue;
        if (i == 0 && !file_exists(home, start->profile_path) && part_was_left(full))
            unlink(full);
        part_clean(full);
    }
}

static int check_free(const struct county_start *start, const char *home, struct problems *problems)
{
    const char *const paths[] = {start->profile_path, start->cases_path};
    for (int i = 0; i < 2; i++)
        if (file_exists(home, paths[i]))
            problem_at(problems, PROBLEM_JOB, paths[i], NULL,
                       "is there already; it was left as it is");
    return problems->count > 0 ? -1 : 0;
}

/* By the newest law that stands; when none does, any day serves to say why. */
static int find_parent(struct county_start *start, struct laws *laws, struct problems *problems)
{
    if (!profile_exists(laws->home, start->follows)) {
        char near[PROFILE_NEAR_BYTES];
        profile_near_names(laws->home, start->follows, near, sizeof(near));
        problem_at(problems, PROBLEM_JOB, "--follows", NULL,
                   "no jurisdiction is named \"%s\"; the nearest are: %s", start->follows,
                   near[0] == '\0' ? "(none found: is this the right --home?)" : near);
        return -1;
    }
    const long date = places_newest(&laws->cache, laws->home, start->follows, problems);
    start->parent = laws_find(laws, start->follows, date == 0 ? FIRST_DAY : date, "--follows",
                              problems);
    if (start->parent == NULL)
        return -1;
    start->from = start->parent->profile->from;
    for (size_t i = 0; i < start->parent->profile->figure_count; i++)
        if (start->parent->profile->figures[i].borrowed != NULL)
            start->borrowed = start->parent->profile->figures[i].borrowed;
    return 0;
}

/* Examples ------------------------------------------------------------------------------- */

/* Of the figures of a kind the first that bears on the base job, else the
 * first there is. */
static const struct figure *first_figure(const struct law *law, const bool *asked,
                                         enum value_kind kind)
{
    const struct figure *first = NULL;
    for (size_t i = 0; i < law->profile->figure_count; i++) {
        const struct figure *figure = &law->profile->figures[i];
        if (figure->value.kind == kind && asked[i])
            return figure;
        if (figure->value.kind == kind && first == NULL)
            first = figure;
    }
    return first;
}

/* To show how one is dropped: the first that is not already. */
static const struct rule *first_rule(const struct law *law)
{
    for (const struct rule *r = law->book->rules; r != NULL; r = r->next)
        if (profile_drop(law->profile, r->id) == NULL)
            return r;
    return NULL;
}

/* The first rule that passes makes the example case. */
static void first_met(struct county_start *start, const struct checked *checked)
{
    for (size_t i = 0; checked->judged && i < checked->result.finding_count; i++) {
        const struct finding *finding = &checked->result.findings[i];
        if (finding->outcome != OUTCOME_PASS || start->case_rule != NULL)
            continue;
        start->case_rule = arena_copy(&start->arena, finding->rule);
        start->case_where = arena_copy(&start->arena, finding->where);
    }
}

static const struct probe *same_probe(void *data, const struct law *law)
{
    (void)law;
    return data;
}

/* A rule that the base job of the cases meets under the law followed, and the
 * figures that were asked for on the way. */
static void find_case(struct county_start *start, struct laws *laws, bool *asked)
{
    char day[16];
    struct sources sources = {0};
    struct checked checked = {0};
    cJSON *job = NULL;
    date_write(start->from == 0 ? FIRST_DAY : start->from, day);
    const struct source *source = home_read(laws->home, "rules/cases/base.json", &start->arena,
                                            &sources, &checked.problems);
    if (source != NULL)
        json_read(&job, source->text, source->length, source->path, &checked.problems);
    const struct overrides overrides = {.jurisdiction = start->follows, .date = day, .alone = true};
    struct probe probe = {.asked = asked};
    const struct prober prober = {same_probe, &probe};
    if (job != NULL)
        check_job_probed(laws, job, &overrides, source->path, &prober, &checked);
    first_met(start, &checked);
    cJSON_Delete(job);
    checked_free(&checked);
}

int county_prepare(struct county_start *start, struct laws *laws, const char *id,
                   const char *follows, const char *title, struct problems *problems)
{
    *start = (struct county_start){.id = id, .title = title, .follows = follows};
    start->profile_path = arena_format(&start->arena, "jurisdictions/%s.lua", id);
    start->cases_path = arena_format(&start->arena, "jurisdictions/%s.cases.lua", id);
    if (start->arena.failed) {
        problem_out_of_memory(problems);
        return -1;
    }
    if (home_files_inside(laws->home))
        return refuse_county(problems, "county new",
                             "the home inside the program cannot be written to; copy rules/ and "
                             "jurisdictions/ into a folder and name it with --home");
    if (check_words(laws, id, title, problems) != 0)
        return -1;
    take_back_half(start, laws->home);
    if (check_free(start, laws->home, problems) != 0 || find_parent(start, laws, problems) != 0)
        return -1;
    bool *asked = arena_array(&start->arena, start->parent->profile->figure_count + 1,
                              sizeof(*asked));
    if (asked != NULL) {
        find_case(start, laws, asked);
        start->number = first_figure(start->parent, asked, VALUE_NUMBER);
        start->flag = first_figure(start->parent, asked, VALUE_YES_NO);
        start->set = first_figure(start->parent, asked, VALUE_SET);
        start->dropped = first_rule(start->parent);
    }
    if (start->arena.failed)
        problem_out_of_memory(problems);
    return start->arena.failed ? -1 : 0;
}

/* Writing -------------------------------------------------------------------------------- */

/* What was made so far, to be taken back if anything fails. */
struct writing {
    const char *home;
    struct problems *problems;
    char made[PATH_MAX]; /* the outermost folder that was made, or "" */
    char full[2][PATH_MAX];
    char *parts[2];
    int handles[2]; /* of the parts, or -1 */
    bool placed[2];
};

static void say_errno(struct writing *writing, const char *path)
{
    if (errno == ENOMEM)
        problem_out_of_memory(writing->problems);
    else
        problem_at(writing->problems, PROBLEM_JOB, path, NULL, "cannot be written: %s",
                   strerror(errno));
}

/* Makes the folders above a path, from the home's own jurisdictions/ down. */
static int make_folders(struct writing *writing, const char *full)
{
    char folder[PATH_MAX];
    snprintf(folder, sizeof(folder), "%s", full);
    for (char *slash = folder + strlen(writing->home); (slash = strchr(slash + 1, '/')) != NULL;) {
        *slash = '\0';
        if (mkdir(folder, 0777) == 0) {
            if (writing->made[0] == '\0')
                memcpy(writing->made, folder, strlen(folder) + 1);
        } else if (errno != EEXIST) {
            say_errno(writing, folder);
            return -1;
        }
        *slash = '/';
    }
    return 0;
}

/* Takes away the folders that were made, innermost first; others stay. */
static void remove_folders(struct writing *writing)
{
    char folder[PATH_MAX];
    const size_t least = strlen(writing->made);
    snprintf(folder, sizeof(folder), "%s", writing->full[0]);
    for (char *slash; least > 0 && (slash = strrchr(folder, '/')) != NULL;) {
        *slash = '\0';
        if (strlen(folder) < least || rmdir(folder) != 0)
            return;
    }
}

static bool write_whole(int handle, const char *text)
{
    size_t left = strlen(text);
    while (left > 0) {
        const ssize_t written = write(handle, text, left);
        if (written < 0 && errno != EINTR)
            return false;
        if (written > 0) {
            text += written;
            left -= (size_t)written;
        }
    }
    return fsync(handle) == 0;
}

/* A part with all of the text in it. */
static bool write_part(struct writing *writing, int i, const char *text)
{
    writing->handles[i] = part_create(writing->full[i], &writing->parts[i]);
    return writing->handles[i] >= 0 && write_whole(writing->handles[i], text);
}

/* Gives a part its name, which must be free: a reader sees all of it or nothing, and
 * nothing is written over. */
static bool place_part(struct writing *writing, int i)
{
    writing->placed[i] = link(writing->parts[i], writing->full[i]) == 0;
    return writing->placed[i];
}

static void drop_parts(struct writing *writing)
{
    for (int i = 0; i < 2; i++) {
        if (writing->handles[i] >= 0) {
            unlink(writing->parts[i]);
            close(writing->handles[i]);
        }
        free(writing->parts[i]);
    }
}

/* The cases get their name first, then the profile, and only then the parts go: killed
 * at any time, there is no county yet, or all of it. Cases without a profile are cases of
 * nothing, and the next start takes them away (take_back_half). */
static int place_both(struct writing *writing, const char *const paths[2],
                      const char *const texts[2])
{
    static const int ORDER[2] = {1, 0};
    for (int i = 0; i < 2; i++) {
        const int length = snprintf(writing->full[i], PATH_MAX, "%s/%s", writing->home, paths[i]);
        if (length < 0 || length >= PATH_MAX)
            return refuse_county(writing->problems, paths[i], "the path is too long");
    }
    if (make_folders(writing, writing->full[0]) != 0)
        return -1;
    for (int step = 0; step < 4; step++) {
        const int i = ORDER[step % 2];
        if (step < 2 ? write_part(writing, i, texts[i]) : place_part(writing, i))
            continue;
        say_errno(writing, paths[i]);
        return -1;
    }
    return 0;
}

/* What was written must stand on its own. */
static int try_load(const struct county_start *start, struct laws *laws, struct problems *problems)
{
    const long day = start->from == 0 ? FIRST_DAY : start->from;
    return laws_find(laws, start->id, day, "--follows", problems) == NULL ? -1 : 0;
}

int county_write(const struct county_start *start, struct laws *laws, const char *profile,
                 const char *cases, struct problems *problems)
{
    struct writing writing = {.home = laws->home, .problems = problems, .handles = {-1, -1}};
    const char *const paths[2] = {start->profile_path, start->cases_path};
    const char *const texts[2] = {profile, cases};
    const bool placed = place_both(&writing, paths, texts) == 0;
    drop_parts(&writing);
    if (placed && try_load(start, laws, problems) == 0)
        return 0;
    for (int i = 0; i < 2; i++)
        if (writing.placed[i])
            unlink(writing.full[i]);
    remove_folders(&writing);
    return -1;
}

void county_free(struct county_start *start)
{
    arena_free(&start->arena);
}
