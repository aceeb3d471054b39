/* path.h - JSON pointers (RFC 6901): written, read step by step, followed through a job
 * or the field catalogue, and set.
 *
 * "/roof/slopes/2/pitch": a step is a key, or the place of an item in its list, from 0.
 */
#ifndef EAVEMARK_JOB_PATH_H
#define EAVEMARK_JOB_PATH_H

#include "base/arena.h"
#include "base/text.h"
#include "job/fields.h"

#include <cjson/cJSON.h>
#include <stddef.h>

enum {
    PATH_LONGEST_NAME = 120, /* bytes of a name that are written; no real field comes near it */
    PATH_LONGEST_STEP = 200, /* bytes of a step that is read, with its end */
};

/* Writing ------------------------------------------------------------------------ */

/* Adds "/name" with ~ and / escaped. A name over PATH_LONGEST_NAME is cut there
 * and ends in "...", so that a hostile job cannot grow its messages. */
void path_add(struct text *pointer, const char *name, size_t length);

/* Adds "/index", from 0. */
void path_add_item(struct text *pointer, size_t index);

/* Cuts the pointer back to an earlier length. */
void path_cut(struct text *pointer, size_t length);

/* How many bytes of text to quote so that it ends between characters and
 * within most bytes. */
size_t path_quotable(const char *text, size_t length, size_t most);

/* The pointer with one step more, in the arena; "" when out of memory. */
const char *path_key(struct arena *arena, const char *pointer, const char *key);
const char *path_item(struct arena *arena, const char *pointer, size_t index);

/* The pointer of a field's path below it: "existing.layers" -> ".../existing/layers". */
const char *path_below(struct arena *arena, const char *pointer, const char *path);

/* Reading ------------------------------------------------------------------------ */

/* Bytes of the first step, its slash included; 0 at the end. */
size_t path_step_length(const char *pointer);

/* Is the first step the place of an item? Names of fields are never numbers. */
bool path_step_is_item(const char *pointer);

/* The last step, its slash included: "/pitch" of "/roof/slopes/2/pitch"; "" of "". */
const char *path_last(const char *pointer);

/* Is it the place `outer`, or in it? /roof/slopes/10 is not in /roof/slopes/1. */
bool path_is_within(const char *pointer, const char *outer);

/* Reads one step, unescaped, and moves *pointer past it. False at the end. A step
 * longer than any name is read as "", which names nothing. */
bool path_step(const char **pointer, char step[PATH_LONGEST_STEP]);

/* Following ---------------------------------------------------------------------- */

/* What stands one step on, read by path_step, or NULL. */
const cJSON *path_child(const cJSON *parent, const char *step);

/* What stands there in the job, or NULL. */
const cJSON *path_find(const cJSON *job, const char *pointer);

/* The field of it, whichever item of a list it is in; or NULL. */
const struct field *path_field(const struct fields *fields, const char *pointer);

/* The name of the innermost item on the way there that has one: "porch" for
 * /roof/slopes/2/deck; or NULL. It is the job's. */
const char *path_item_name(const cJSON *job, const char *pointer);

/* The same place in two jobs. An item of a list is the same when it has the
 * same name, or, having none, the same place in the list. pointer is one of
 * job a. What is not there is NULL. path is given the place in words:
 * "roof.slopes[porch].pitch". */
struct path_pair {
    const cJSON *a, *b;
};
struct path_pair path_pair(const cJSON *a, const cJSON *b, const char *pointer, struct text *path);

/* Setting ------------------------------------------------------------------------ */

/* Sets what the pointer names and takes value over, whatever comes of it. What
 * was there is replaced in its place; what was not comes last in its group.
 * Groups on the way that are missing are made; items of lists are not. False
 * when there is no such place, value is NULL, or memory is out. */
bool path_set(cJSON *job, const char *pointer, cJSON *value);

#endif
