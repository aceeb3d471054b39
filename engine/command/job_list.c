/* Files, folders and lines of jobs, one after another, see job_list.h. What cannot be read is
 * handed over with its reason, so that whoever counts can count it. */
#define _XOPEN_SOURCE 700

#include "command/job_list.h"

#include "base/file.h"
#include "base/folder_walk.h"
#include "base/text.h"
#include "command/command.h"
#include "command/line.h"

#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

enum { FOLDERS_DEEPEST = 16 };

static bool is_of_jobs(const char *name)
{
    return text_ends_in(name, ".json") || text_ends_in(name, ".ndjson")
           || text_ends_in(name, ".jsonl");
}

/* Short, since it stands in a list of a thousand others. */
static const char *why_not_read(enum file_result result)
{
    switch (result) {
    case FILE_TOO_LARGE:
        return "is too long for a job";
    case FILE_NOT_A_FILE:
        return "is not a file";
    case FILE_READ:
    case FILE_MISSING:
    case FILE_UNREADABLE:
    case FILE_OUTSIDE:
    case FILE_OUT_OF_MEMORY:
        break;
    }
    return "cannot be read";
}

/* Only want of memory ends the whole list. */
static bool visit_file(const char *path, const struct job_visit *visit)
{
    char *text = NULL;
    size_t length = 0;
    const enum file_result result = file_read(&text, &length, path, LINE_LARGEST);
    if (result == FILE_OUT_OF_MEMORY)
        return false;
    const bool goes_on = result == FILE_READ
                             ? visit->visit(visit->data, path, text, length)
                             : visit->refuse(visit->data, path, why_not_read(result));
    free(text);
    return goes_on;
}

static bool visit_line(const char *name, enum line_kind kind, const struct text *line,
                       const struct job_visit *visit)
{
    if (kind == LINE_TOO_LONG)
        return visit->refuse(visit->data, name, "is too long for a job");
    return visit->visit(visit->data, name, text_string(line), line->length);
}

/* Each line goes by the file's name and its number: "may.ndjson:12". */
static bool visit_lines(const char *path, const struct job_visit *visit)
{
    FILE *input = strcmp(path, "-") == 0 ? stdin : fopen(path, "r");
    struct text line = TEXT_EMPTY, name = TEXT_EMPTY;
    bool goes_on = true;
    if (input == NULL)
        return visit->refuse(visit->data, path, strerror(errno));
    for (unsigned long number = 1; goes_on; number++) {
        const enum line_kind kind = line_read(input, &line);
        if (kind == LINE_END)
            break;
        if (kind == LINE_BLANK && !line.failed)
            continue;
        text_free(&name);
        name = TEXT_EMPTY;
        text_addf(&name, "%s:%lu", path, number);
        goes_on = !line.failed && !name.failed
                  && visit_line(text_string(&name), kind, &line, visit);
    }
    /* Half a file is not counted as a whole one. */
    if (goes_on && ferror(input))
        goes_on = visit->refuse(visit->data, path, "cannot be read to its end");
    text_free(&line);
    text_free(&name);
    if (input != stdin)
        fclose(input);
    return goes_on;
}

/* A folder being gone through: only files whose names end as jobs' do. */
static bool visit_inner(void *data, const char *path)
{
    const struct job_visit *visit = data;
    if (!is_of_jobs(path))
        return true;
    return text_ends_in(path, ".json") ? visit_file(path, visit) : visit_lines(path, visit);
}

static bool refuse_inner(void *data, const char *path, int why)
{
    const struct job_visit *visit = data;
    if (why == FOLDER_NO_FILE && !is_of_jobs(path))
        return true;
    return visit->refuse(visit->data, path,
                         why == FOLDER_TOO_DEEP  ? "lies too deep"
                         : why == FOLDER_A_LINK  ? "is a link to a folder: name that folder itself"
                         : why == FOLDER_NO_FILE ? "is not a file"
                                                 : strerror(why));
}

/* Named by the user, so that any ending will do; and one that is not there is a slip on the
 * command line, not a job that is refused. */
static bool visit_path(const char *path, struct job_visit *visit, bool *unusable)
{
    struct stat about;
    if (strcmp(path, "-") == 0)
        return visit_lines(path, visit);
    if (stat(path, &about) != 0) {
        complain("%s: cannot be read: %s", path, strerror(errno));
        *unusable = true;
        return true;
    }
    if (S_ISDIR(about.st_mode))
        return folder_walk(path, FOLDERS_DEEPEST,
                           &(struct folder_visit){visit_inner, refuse_inner, visit, true});
    return text_ends_in(path, ".json") ? visit_file(path, visit) : visit_lines(path, visit);
}

bool job_list_each(const char *const *paths, size_t count, const struct job_visit *visit,
                   bool *unusable)
{
    struct job_visit own = *visit;
    for (size_t i = 0; i < count; i++)
        if (!visit_path(paths[i], &own, unusable))
            return false;
    return true;
}
