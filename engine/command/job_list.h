/* job_list.h - every job of some files and folders, one after the other.
 *
 * A file that ends in .json is one job; any other, and "-", holds a job a line (NDJSON).
 * Of a folder all .json, .ndjson and .jsonl files count, sorted by name, and those of its
 * folders; hidden ones do not. Pipes and links to folders that lie in a folder are refused.
 */
#ifndef EAVEMARK_COMMAND_JOB_LIST_H
#define EAVEMARK_COMMAND_JOB_LIST_H

#include <stdbool.h>
#include <stddef.h>

/* One job: its name ("jobs.ndjson:12") and its text. Returns false to end the walk. */
struct job_visit {
    bool (*visit)(void *data, const char *name, const char *text, size_t length);
    /* Something that holds no job: it cannot be read, or is too long. */
    bool (*refuse)(void *data, const char *name, const char *why);
    void *data;
};

/* False when the walk was ended, or out of memory. A path that is not there at all is
 * complained of, and sets *unusable. */
bool job_list_each(const char *const *paths, size_t count, const struct job_visit *visit,
                   bool *unusable);

#endif
