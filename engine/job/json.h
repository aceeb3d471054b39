/* json.h - reading one JSON job strictly.
 *
 * The tree is one of cJSON's, and as cJSON would build it; but this reader refuses what
 * cJSON lets through or cuts short: duplicate keys, numbers that are not in JSON's grammar
 * (01, 1., +1) or over 63 characters, numbers past 2^53 - 1 either way (1e999
 * too), numbers that are not 0 but would be held as 0 (1e-400), control
 * characters, bad UTF-8, \u0000, lone surrogates, a byte order mark, text
 * after the value, and nesting deeper than JSON_DEEPEST. -0 is read as 0.
 */
#ifndef EAVEMARK_JOB_JSON_H
#define EAVEMARK_JOB_JSON_H

#include "base/arena.h"
#include "base/file.h"
#include "base/problem.h"
#include "job/fields.h"

#include <cjson/cJSON.h>
#include <stdbool.h>
#include <stddef.h>

enum {
    JSON_DEEPEST = 32,              /* levels of nesting; a job needs 5 */
    JSON_LARGEST = 4 * 1024 * 1024, /* bytes; a job is about 5 KB */
    JSON_MOST_PROBLEMS = 200,       /* the last of them says that more follow */
};

/* Parses text[0..length) into *out (to be freed with cJSON_Delete). The top
 * must be an object. Problems are added with line and column (from 1, columns
 * in characters) for syntax, and with a JSON pointer for duplicate keys. A slip
 * of structure ends the reading; slips inside texts and numbers do not.
 * Returns 0, or -1 when anything was added (*out is then NULL). */
int json_read(cJSON **out, const char *text, size_t length, const char *file,
              struct problems *problems);

/* The same, with the tree in that arena: tree.h says what that means for whoever changes and
 * frees it. Quicker than cJSON's own. */
int json_read_into(cJSON **out, struct arena *into, const char *text, size_t length,
                   const char *file, struct problems *problems);

/* The same of a job that is probably held against this catalogue (NULL: none is likely): read
 * more quickly then, and its members' fields are noted. What it says does not hang on it. */
int json_read_likely(cJSON **out, const struct fields *likely, struct arena *into, const char *text,
                     size_t length, const char *file, struct problems *problems);

/* Gives an object this member, in the place of one of that name if there is
 * one. Takes the value over. False when out of memory (a NULL value is taken
 * for that): the object is then as before. */
bool json_set(cJSON *object, const char *key, cJSON *value);

/* cJSON_Object, cJSON_Number ..., without the marks beside it; cJSON_Invalid of NULL. As
 * cJSON_IsObject and its like tell it, but without a call. */
static inline int json_type(const cJSON *node)
{
    return node == NULL ? cJSON_Invalid : node->type & 0xFF;
}

/* null counts as absent everywhere in a job: some programs write it for what they do not
 * know. */
static inline bool json_is_absent(const cJSON *node)
{
    return node == NULL || json_type(node) == cJSON_NULL;
}

/* What an item of a list is called; NULL for none, and of NULL. */
const char *json_name(const cJSON *item);

/* What a file is, in the messages about one that cannot be read: "file", "a job is one JSON
 * file", "a job is about 5 KB". */
struct json_file_words {
    const char *called, *is, *size;
};

/* Says why the file was not read; error: the errno of the reading. */
void json_say_unread(enum file_result result, int error, const char *path,
                     const struct json_file_words *words, struct problems *problems);

/* Reads the file (or "-") and parses it; problems say what was wrong with the
 * file: missing, a directory, empty, over JSON_LARGEST. */
int json_read_file(cJSON **out, const char *path, struct problems *problems);

#endif
