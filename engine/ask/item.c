#include "ask/item.h"

#include "job/answer.h"

#include <ctype.h>
#include <stdio.h>
#include <string.h>
#include <strings.h>

enum { NAME_MOST = 60, PIECES_MOST = 40, PIECE_MOST = 256 };

const struct field *item_kind(const struct field *list)
{
    const struct field *kind = fields_child(list, "kind");
    return kind != NULL && kind->type == FIELD_CHOICE ? kind : NULL;
}

static bool has_names(const struct field *list)
{
    return fields_child(list, "name") != NULL;
}

/* Some fact names an item of this list, or an item names one of another: people tell these
 * apart by what they call them. */
static bool is_told_by_name(const struct field *at, const struct field *list)
{
    for (const struct field *f = at->first_child; f != NULL; f = f->next)
        if ((f->type == FIELD_REFERENCE
             && (strcmp(f->refers, list->path) == 0 || f->parent == list))
            || is_told_by_name(f, list))
            return true;
    return false;
}

/* "soffit strip 2" of soffit_strip, "attic" of attics. */
static bool give_name(cJSON *item, const char *word, size_t number, size_t of)
{
    char name[NAME_MOST];
    /* Room for a blank and a number behind it. */
    const int length = (int)strnlen(word, NAME_MOST - 12);
    if (of > 1)
        snprintf(name, sizeof(name), "%.*s %zu", length, word, number);
    else
        snprintf(name, sizeof(name), "%.*s", length, word);
    for (char *at = name; *at != '\0'; at++)
        if (*at == '_')
            *at = ' ';
    return cJSON_AddStringToObject(item, "name", name) != NULL;
}

/* By number: names where one can be told from the other by it. */
static bool name_counted(cJSON *items, const struct fields *fields, const struct field *list)
{
    const size_t count = (size_t)cJSON_GetArraySize(items);
    char one[NAME_MOST];
    size_t number = 0;
    cJSON *item = NULL;
    if (!has_names(list) || (count > 1 && is_told_by_name(fields->root, list)))
        return true;
    snprintf(one, sizeof(one), "%s", list->name);
    const size_t length = strlen(one);
    if (length > 1 && one[length - 1] == 's')
        one[length - 1] = '\0';
    cJSON_ArrayForEach(item, items) {
        if (!give_name(item, one, ++number, count))
            return false;
    }
    return true;
}

/* "ridge, soffit strip, soffit strip" */
struct pieces {
    char items[PIECES_MOST][PIECE_MOST];
    size_t count;
};

/* False when there are too many, or one is too long. */
static bool cut(struct pieces *pieces, const char *words)
{
    while (words != NULL && pieces->count < PIECES_MOST) {
        size_t length = strcspn(words, ",;");
        const char *after = words[length] == '\0' ? NULL : words + length + 1;
        length = text_trim(&words, length);
        if (length >= PIECE_MOST)
            return false;
        memcpy(pieces->items[pieces->count], words, length);
        pieces->items[pieces->count++][length] = '\0';
        words = after;
    }
    return words == NULL;
}

/* How many of the items have this kind, and which of them this one is. */
static size_t alike(const cJSON *items, const char *kind, const cJSON *item, size_t *number)
{
    size_t count = 0;
    const cJSON *other = NULL;
    cJSON_ArrayForEach(other, items) {
        const cJSON *said = cJSON_GetObjectItemCaseSensitive(other, "kind");
        count += strcmp(said->valuestring, kind) == 0;
        if (other == item)
            *number = count;
    }
    return count;
}

/* By their kinds: two of one kind are told apart by a number. */
static bool name_kinds(cJSON *items, const struct field *list)
{
    cJSON *item = NULL;
    if (!has_names(list))
        return true;
    cJSON_ArrayForEach(item, items) {
        const char *kind = cJSON_GetObjectItemCaseSensitive(item, "kind")->valuestring;
        size_t number = 0;
        const size_t of = alike(items, kind, item, &number);
        if (!give_name(item, kind, number, of))
            return false;
    }
    return true;
}

/* An item that the piece tells: of this kind, or of this name. */
static cJSON *item_of(const struct field *kind, const char *piece, struct text *why)
{
    cJSON *item = cJSON_CreateObject(), *value = NULL;
    const struct field name = {.name = "name", .path = "name", .type = FIELD_TEXT};
    if (item != NULL && answer_read(&value, kind == NULL ? &name : kind, NULL, piece, why)
        && cJSON_AddItemToObject(item, kind == NULL ? "name" : "kind", value))
        return item;
    cJSON_Delete(item);
    return NULL;
}

/* Each piece is an item; the first that is not read refuses the whole line. */
static bool read_kinds(cJSON **out, const struct field *list, const char *words, struct text *why)
{
    struct pieces pieces = {.count = 0};
    const struct field *kind = item_kind(list);
    if (!cut(&pieces, words) || (list->has_most && (double)pieces.count > list->most)) {
        text_add(why, "those are too many");
        return false;
    }
    *out = cJSON_CreateArray();
    bool read = *out != NULL;
    for (size_t i = 0; read && i < pieces.count; i++) {
        cJSON *item = item_of(kind, pieces.items[i], why);
        read = item != NULL && cJSON_AddItemToArray(*out, item);
    }
    if (read && kind != NULL)
        read = name_kinds(*out, list);
    if (!read) {
        cJSON_Delete(*out);
        *out = NULL;
    }
    return read;
}

/* A word tells kinds or names, a figure how many there are, "none" that there are none. */
bool item_read(cJSON **out, const struct fields *fields, const struct field *list,
               const char *words, struct text *why)
{
    const bool by_words = isalpha((unsigned char)words[0]) && strcasecmp(words, "none") != 0
                          && (item_kind(list) != NULL || has_names(list));
    if (by_words)
        return read_kinds(out, list, words, why);
    if (!answer_read(out, list, NULL, strcasecmp(words, "none") == 0 ? "0" : words, why))
        return false;
    if (name_counted(*out, fields, list))
        return true;
    cJSON_Delete(*out);
    *out = NULL;
    return false;
}
