#include "prove/case_list.h"

#include <errno.h>

static void note_file(void *data, const char *path)
{
    struct case_files *files = data;
    strings_add(&files->paths, &files->arena, arena_copy(&files->arena, path));
}

static void note_other_file(void *data, const char *path)
{
    struct case_files *files = data;
    if (!strings_have(&files->paths, path))
        note_file(data, path);
}

/* A topic's cases also stand beside places, among cases of other topics; a place's among
 * those of topics, and of other places. */
static void list_files(struct case_files *files)
{
    const struct cases_wanted *wanted = files->wanted;
    if (wanted->topic != NULL)
        strings_add(&files->paths, &files->arena,
                    arena_format(&files->arena, "rules/cases/%s.lua", wanted->topic));
    if (wanted->place != NULL) {
        const char *path = arena_format(&files->arena, "jurisdictions/%s.cases.lua", wanted->place);
        if (path != NULL && home_has(files->home, path))
            strings_add(&files->paths, &files->arena, path);
        files->own = files->paths.count;
    }
    if ((wanted->topic == NULL
         && home_each(files->home, "rules/cases", ".lua", 0, note_file, files) != 0
         && errno == ENOMEM)
        || (home_each(files->home, "jurisdictions", ".cases.lua", 6, note_other_file, files) != 0
            && errno == ENOMEM))
        files->arena.failed = true;
}

void case_files_open(struct case_files *files, const char *home, const struct cases_wanted *wanted,
                     struct problems *problems)
{
    *files = (struct case_files){.home = home, .wanted = wanted};
    list_files(files);
    if (files->arena.failed)
        problem_out_of_memory(problems);
}

/* What is wrong with other files is not for the one place's proof to tell. */
static void read_next(struct case_files *files, struct case_list *list, struct problems *problems)
{
    const struct cases_wanted *wanted = files->wanted;
    struct problems others = {0};
    const bool own = wanted->place == NULL || files->next < files->own;
    const struct case_file file = {
        .home = files->home,
        .path = files->paths.items[files->next],
        .bases = &files->bases,
        .rule = wanted->rule,
        /* The topic's own file comes first, and is read whole. */
        .topic = files->next == 0 ? NULL : wanted->topic,
        .under = own ? NULL : wanted->place,
    };
    files->next++;
    case_file_read(&file, list, own ? problems : &others);
    if (others.out_of_memory || list->arena.failed || files->bases.arena.failed)
        problem_out_of_memory(problems);
    problems_free(&others);
}

bool case_files_next(struct case_files *files, struct case_list *list, struct problems *problems)
{
    if (files->next == files->paths.count || files->arena.failed || list->arena.failed)
        return false;
    if (list->last == NULL)
        list->last = &list->first;
    read_next(files, list, problems);
    return true;
}

void case_files_close(struct case_files *files)
{
    case_base_free_all(&files->bases);
    arena_free(&files->arena);
}
