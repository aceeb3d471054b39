#include "job/path.h"

#include "job/json.h"

#include <stdlib.h>
#include <string.h>

/* Writing ------------------------------------------------------------------------ */

/* Never in the middle of a character. */
size_t path_quotable(const char *text, size_t length, size_t most)
{
    if (length <= most)
        return length;
    while (most > 0 && ((unsigned char)text[most] & 0xC0) == 0x80)
        most--;
    return most;
}

/* RFC 6901: "~" is written ~0 and "/" ~1. A name longer than any field's is shortened: it
 * is an unknown one, and only quoted. */
void path_add(struct text *pointer, const char *name, size_t length)
{
    const size_t shown = path_quotable(name, length, PATH_LONGEST_NAME);
    text_add(pointer, "/");
    for (size_t i = 0, plain = 0; i < shown; i++, plain = i) {
        while (i < shown && name[i] != '~' && name[i] != '/')
            i++;
        text_add_n(pointer, name + plain, i - plain);
        if (i < shown)
            text_add(pointer, name[i] == '~' ? "~0" : "~1");
    }
    if (shown < length)
        text_add(pointer, "...");
}

void path_add_item(struct text *pointer, size_t index)
{
    text_addf(pointer, "/%zu", index);
}

void path_cut(struct text *pointer, size_t length)
{
    if (length >= pointer->length)
        return;
    pointer->length = length;
    pointer->bytes[length] = '\0';
}

const char *path_key(struct arena *arena, const char *pointer, const char *key)
{
    const size_t start = strlen(pointer);
    /* Twice the key's length, as every byte of it may need an escape. */
    char *text = arena_alloc(arena, start + 2 * strlen(key) + 2);
    if (text == NULL)
        return "";
    memcpy(text, pointer, start);
    char *to = text + start;
    *to++ = '/';
    for (; *key != '\0'; key++) {
        if (*key == '~' || *key == '/') {
            *to++ = '~';
            *to++ = *key == '~' ? '0' : '1';
        } else {
            *to++ = *key;
        }
    }
    *to = '\0';
    return text;
}

const char *path_item(struct arena *arena, const char *pointer, size_t index)
{
    char digits[24], *at = digits + sizeof(digits);
    const size_t start = strlen(pointer);
    do
        *--at = (char)('0' + index % 10);
    while ((index /= 10) > 0);
    *--at = '/';
    const size_t length = (size_t)(digits + sizeof(digits) - at);
    char *text = arena_room(arena, start + length + 1, 1);
    if (text == NULL)
        return "";
    memcpy(text, pointer, start);
    memcpy(text + start, at, length);
    text[start + length] = '\0';
    return text;
}

/* From a dotted path of the catalogue to a pointer below the one given. */
const char *path_below(struct arena *arena, const char *pointer, const char *path)
{
    char part[PATH_LONGEST_NAME];
    while (*path != '\0') {
        const size_t length = strcspn(path, ".");
        if (length >= sizeof(part))
            break;
        memcpy(part, path, length);
        part[length] = '\0';
        pointer = path_key(arena, pointer, part);
        path += length + (path[length] == '.');
    }
    return pointer;
}

/* Reading ------------------------------------------------------------------------ */

size_t path_step_length(const char *pointer)
{
    return *pointer == '/' ? 1 + strcspn(pointer + 1, "/") : 0;
}

/* A step of digits is an item of a list: no field's name begins with one. */
bool path_step_is_item(const char *pointer)
{
    const size_t length = path_step_length(pointer);
    return length > 1 && strspn(pointer + 1, "0123456789") == length - 1;
}

const char *path_last(const char *pointer)
{
    const char *slash = strrchr(pointer, '/');
    return slash == NULL ? pointer + strlen(pointer) : slash;
}

bool path_is_within(const char *pointer, const char *outer)
{
    const size_t length = strlen(outer);
    return strncmp(pointer, outer, length) == 0
           && (pointer[length] == '\0' || pointer[length] == '/');
}

bool path_step(const char **pointer, char step[PATH_LONGEST_STEP])
{
    const char *end = *pointer + path_step_length(*pointer);
    size_t length = 0;
    if (end == *pointer)
        return false;
    for (const char *at = *pointer + 1; at < end && length < PATH_LONGEST_STEP; at++) {
        char byte = *at;
        if (byte == '~' && (at[1] == '0' || at[1] == '1'))
            byte = *++at == '0' ? '~' : '/';
        step[length++] = byte;
    }
    /* A step too long for any field comes out empty, which finds nothing. */
    step[length < PATH_LONGEST_STEP ? length : 0] = '\0';
    *pointer = end;
    return true;
}

/* Following ---------------------------------------------------------------------- */

/* The place in a list that a step names; -1 for what is none: digits without a leading zero
 * (RFC 6901, section 4), and no more of them than a job has room for items. */
static int item_index(const char *step)
{
    enum { DIGITS_MOST = 7 };
    const size_t length = strspn(step, "0123456789");
    if (length == 0 || length > DIGITS_MOST || step[length] != '\0'
        || (step[0] == '0' && length > 1))
        return -1;
    return atoi(step);
}

const cJSON *path_child(const cJSON *parent, const char *step)
{
    if (step[0] == '\0')
        return NULL;
    if (cJSON_IsArray(parent))
        return cJSON_GetArrayItem(parent, item_index(step));
    return cJSON_GetObjectItemCaseSensitive(parent, step);
}

const cJSON *path_find(const cJSON *job, const char *pointer)
{
    char step[PATH_LONGEST_STEP];
    while (job != NULL && path_step(&pointer, step))
        job = path_child(job, step);
    return job;
}

/* The catalogue has no items: steps of digits are passed over. */
const struct field *path_field(const struct fields *fields, const char *pointer)
{
    char step[PATH_LONGEST_STEP];
    const struct field *field = fields->root;
    while (field != NULL && path_step(&pointer, step)) {
        if (step[strspn(step, "0123456789")] != '\0' || step[0] == '\0')
            field = fields_child(field, step);
    }
    return field;
}

/* An empty name names nothing. */
static const char *name_of(const cJSON *item)
{
    const cJSON *name = cJSON_GetObjectItemCaseSensitive(item, "name");
    return cJSON_IsString(name) && name->valuestring[0] != '\0' ? name->valuestring : NULL;
}

/* The innermost item with a name wins: "main attic" rather than the house it is in. */
const char *path_item_name(const cJSON *job, const char *pointer)
{
    char step[PATH_LONGEST_STEP];
    const char *name = NULL;
    while (job != NULL && path_step(&pointer, step)) {
        const bool in_list = cJSON_IsArray(job);
        job = path_child(job, step);
        if (in_list && name_of(job) != NULL)
            name = name_of(job);
    }
    return name;
}

static const cJSON *item_named(const cJSON *list, const char *name)
{
    const cJSON *item = NULL;
    if (!cJSON_IsArray(list))
        return NULL;
    cJSON_ArrayForEach(item, list) {
        const char *own = name_of(item);
        if (own != NULL && strcmp(own, name) == 0)
            return item;
    }
    return NULL;
}

/* Follows one pointer through two jobs. Items of lists go together by their names, not
 * their numbers: a plane added in front moves all others. *path gets the way in words. */
struct path_pair path_pair(const cJSON *a, const cJSON *b, const char *pointer, struct text *path)
{
    char step[PATH_LONGEST_STEP];
    while (path_step(&pointer, step)) {
        const bool in_list = cJSON_IsArray(a);
        a = path_child(a, step);
        const char *name = in_list ? name_of(a) : NULL;
        b = name != NULL ? item_named(b, name) : path_child(b, step);
        if (name != NULL)
            text_addf(path, "[%s]", name);
        else if (in_list)
            text_addf(path, "[%d]", item_index(step) + 1); /* people count from 1 */
        else
            text_addf(path, "%s%s", path->length > 0 ? "." : "", step);
    }
    return (struct path_pair){a, b};
}

/* Setting ------------------------------------------------------------------------ */

/* A group made where none, or null, was. NULL when out of memory. */
static cJSON *make_group(cJSON *parent, const char *step, const cJSON *old)
{
    if (old == NULL)
        return cJSON_AddObjectToObject(parent, step);
    cJSON *group = cJSON_CreateObject();
    return json_set(parent, step, group) ? group : NULL;
}

/* Groups are made on the way, items are not: which item of a list would be a guess. */
static cJSON *step_into(cJSON *from, const char *step)
{
    if (cJSON_IsArray(from))
        return cJSON_GetArrayItem(from, item_index(step));
    if (!cJSON_IsObject(from))
        return NULL;
    cJSON *child = cJSON_GetObjectItemCaseSensitive(from, step);
    return child != NULL && !cJSON_IsNull(child) ? child : make_group(from, step, child);
}

/* Owns value from the start, as json_set. */
bool path_set(cJSON *job, const char *pointer, cJSON *value)
{
    char step[PATH_LONGEST_STEP];
    cJSON *at = job;
    while (value != NULL && at != NULL && path_step(&pointer, step) && step[0] != '\0') {
        if (*pointer != '\0')
            at = step_into(at, step);
        else if (cJSON_IsObject(at))
            return json_set(at, step, value);
        else
            break;
    }
    cJSON_Delete(value);
    return false;
}
