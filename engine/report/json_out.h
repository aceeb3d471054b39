/* json_out.h - writes JSON straight into a text, without a tree: plain ASCII, one line, or
 * indented. Internal to the room.
 *
 * Keys and items are written in the order of the calls. key is NULL for an item of a list
 * and for the whole; keys are the program's own and need no escapes. Out of memory sets
 * the text's failed.
 */
#ifndef EAVEMARK_REPORT_JSON_OUT_H
#define EAVEMARK_REPORT_JSON_OUT_H

#include "base/text.h"
#include "base/value.h"

#include <stdbool.h>
#include <stddef.h>
#include <string.h>

struct json_out {
    struct text *text;
    bool pretty;
    int depth;    /* objects and lists that are open */
    bool follows; /* something stands before, in the innermost of them */
};

struct json_out json_out_to(struct text *text, bool pretty);

/* What stands before a value, and room for so much of it to be written at once: the comma of
 * the one before, and the key. NULL when out of memory. Of most keys the compiler knows the
 * length. */
char *json_out_room(struct json_out *out, const char *key, size_t key_length, size_t length);

static inline char *json_out_begin(struct json_out *out, const char *key, size_t length)
{
    return json_out_room(out, key, key == NULL ? 0 : strlen(key), length);
}

/* An object '{' or a list '[', to be closed by '}' or ']'. */
static inline void json_out_open(struct json_out *out, const char *key, char bracket)
{
    char *at = json_out_begin(out, key, 1);
    if (at != NULL)
        *at = bracket;
    out->depth++;
    out->follows = false;
}
void json_out_close(struct json_out *out, char bracket);

/* A text, NULL giving null; what is no UTF-8 becomes U+FFFD. */
void json_out_quoted(struct json_out *out, const char *key, size_t key_length, const char *text);

static inline void json_out_text(struct json_out *out, const char *key, const char *text)
{
    json_out_quoted(out, key, key == NULL ? 0 : strlen(key), text);
}

void json_out_texts(struct json_out *out, const char *key, const char *const *texts, size_t count);
void json_out_number(struct json_out *out, const char *key, double number);
void json_out_count(struct json_out *out, const char *key, size_t count);
void json_out_bool(struct json_out *out, const char *key, bool yes);
void json_out_null(struct json_out *out, const char *key);

/* What is written already, as the next of a list or of an object. */
void json_out_raw(struct json_out *out, const char *json, size_t length);

/* An object that was written on a line before, as the next of a list. */
void json_out_line(struct json_out *out, const char *json, size_t length);

/* Numbers are rounded as they print elsewhere: no reader shall find another here. */
void json_out_value(struct json_out *out, const char *key, const struct value *value);

#endif
