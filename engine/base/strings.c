#include "base/strings.h"

#include <string.h>

void strings_add(struct strings *list, struct arena *arena, const char *text)
{
    if (text == NULL)
        return;
    if (list->count == list->capacity) {
        const size_t capacity = list->capacity == 0 ? 8 : list->capacity * 2;
        /* The old array stays in the arena, which frees nothing singly; doubling keeps that
         * waste below the size of the last. */
        const char **items = arena_array(arena, capacity, sizeof(*items));
        /* The arena remembers it: whoever owns it looks there. */
        if (items == NULL)
            return;
        if (list->count > 0)
            memcpy(items, list->items, list->count * sizeof(*items));
        list->items = items;
        list->capacity = capacity;
    }
    list->items[list->count++] = text;
}

void strings_add_once(struct strings *list, struct arena *arena, const char *text)
{
    if (!strings_have(list, text))
        strings_add(list, arena, text);
}

bool strings_have(const struct strings *list, const char *text)
{
    for (size_t i = 0; text != NULL && i < list->count; i++)
        if (strcmp(list->items[i], text) == 0)
            return true;
    return false;
}
