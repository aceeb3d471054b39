#include "judge/form.h"

#include "job/origin.h"

#include <string.h>

/* Keys ------------------------------------------------------------------------------------- */

static void add_bytes(struct form_key *key, const void *bytes, size_t length)
{
    if (key->length == 0 || length > sizeof(key->bytes) - key->length) {
        key->length = 0;
        return;
    }
    memcpy(key->bytes + key->length, bytes, length);
    key->length += length;
}

/* With its end: no two rows of texts have the same bytes. */
static void add_text(struct form_key *key, const char *text)
{
    add_bytes(key, text, strlen(text) + 1);
}

/* What an item is called (node_name). */
static void add_called(struct form_key *key, const struct node *item)
{
    const char *name = node_own_name(item);
    add_text(key, name == NULL ? "" : name);
    if (name == NULL)
        add_bytes(key, &item->spot->number, sizeof(item->spot->number));
}

static void add_read(struct form_key *key, const struct spot *spot)
{
    const enum origin from = origin_of(spot->json);
    add_bytes(key, &spot, sizeof(spot));
    add_bytes(key, &from, sizeof(from));
}

void form_key(struct judging *judging, const struct walk *walk, const struct kept_finding *kept,
              struct form_key *key)
{
    memcpy(key->bytes, &kept, sizeof(kept));
    key->length = sizeof(kept);
    for (size_t i = 0; i < kept->read_count; i++)
        add_read(key, judging->trail.known[kept->reads[i]]);
    for (size_t i = 0; i < walk->depth; i++)
        add_called(key, &walk->items[i]);
    const struct lacking *lacking = kept->open ? recall_lacking(judging, kept) : NULL;
    if (lacking == NULL)
        return;
    add_bytes(key, &lacking->asked, sizeof(lacking->asked));
    add_text(key, lacking->lacks);
}

/* Forms ------------------------------------------------------------------------------------ */

struct form *form_find(struct survey *survey, struct form *first, const struct form_key *key)
{
    for (struct form *form = first; form != NULL && key->length > 0; form = form->other) {
        if (form->key_length != key->length || form->json_length == 0
            || memcmp(form->key, key->bytes, key->length) != 0)
            continue;
        form->round = survey->round;
        return form;
    }
    return NULL;
}

/* One for no other is used again by the next such: they would drive out all that can be taken
 * again. */
static struct form *form_of(struct survey *survey, struct form **first, bool keyed)
{
    struct form *oldest = NULL;
    size_t count = 0;
    for (struct form *form = *first; form != NULL; form = form->other, count++) {
        if (!keyed && form->key_length == 0)
            return form;
        if (oldest == NULL || form->round < oldest->round)
            oldest = form;
    }
    /* So that what is carried over finds room before what may be. */
    if (count == FORMS_MOST || (count > 0 && survey->arena.bytes > SURVEY_MOST / 2))
        return oldest;
    struct form *form = arena_alloc(&survey->arena, sizeof(*form));
    if (form == NULL)
        return NULL;
    form->other = *first;
    *first = form;
    return form;
}

static bool make_room(struct survey *survey, char **bytes, size_t *room, size_t length)
{
    if (length <= *room)
        return true;
    *room = length + length / 4;
    *bytes = arena_room(&survey->arena, *room, 1);
    if (*bytes == NULL)
        *room = 0;
    return *bytes != NULL;
}

struct form *form_take(struct survey *survey, struct form **first, const struct form_key *key)
{
    const size_t length = key == NULL ? 0 : key->length;
    struct form *form = form_of(survey, first, length > 0);
    if (form == NULL)
        return NULL;
    form->round = survey->round;
    form->json_length = form->key_length = 0;
    if (length > 0 && make_room(survey, &form->key, &form->key_room, length)) {
        memcpy(form->key, key->bytes, length);
        form->key_length = length;
    }
    return form;
}

void form_write(struct survey *survey, struct form *form, const char *json, size_t length)
{
    form->json_length = 0;
    if (!make_room(survey, &form->json, &form->json_room, length))
        return;
    memcpy(form->json, json, length);
    form->json_length = length;
}
