#include "base/text.h"

#include "base/format.h"

#include <ctype.h>
#include <stdarg.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

bool text_grow(struct text *text, size_t length)
{
    if (text->failed)
        return false;
    /* So that doubling below cannot overflow. */
    if (length > SIZE_MAX / 2 - text->length - 1) {
        text->failed = true;
        return false;
    }
    size_t capacity = text->capacity * 2;
    if (capacity - text->length <= length)
        capacity = text->length + length + 1;
    if (capacity < 256)
        capacity = 256;
    char *bytes = realloc(text->bytes, capacity);
    if (bytes == NULL) {
        text->failed = true;
        return false;
    }
    text->bytes = bytes;
    text->capacity = capacity;
    return true;
}

void text_expect(struct text *text, size_t length)
{
    if (length >= text->capacity - text->length)
        text_grow(text, length);
}

/* A text that failed stays as it was: half a word would be read as a whole one. */
void text_add_n(struct text *text, const char *more, size_t length)
{
    char *room = text_room(text, length);
    if (room != NULL)
        memcpy(room, more, length);
}

void text_add_spaced(struct text *text, const char *word, size_t length)
{
    for (size_t i = 0; i < length; i++)
        text_add_n(text, word[i] == '_' ? " " : &word[i], 1);
}

void text_add(struct text *text, const char *more)
{
    text_add_n(text, more, strlen(more));
}

/* Written where there is room already; what does not fit is written anew where it does. */
void text_addf(struct text *text, const char *format, ...)
{
    va_list args;
    const bool open = !text->failed && text->bytes != NULL;
    const size_t room = open ? text->capacity - text->length : 0;
    va_start(args, format);
    const int length = format_list(open ? text->bytes + text->length : NULL, room, format, args);
    va_end(args);
    if (length >= 0 && (size_t)length < room) {
        text->length += (size_t)length;
        return;
    }
    /* It has written what fitted: take it back, in case there is no more room. */
    if (open)
        text->bytes[text->length] = '\0';
    char *again = length < 0 ? NULL : text_room(text, (size_t)length);
    if (again == NULL) {
        text->failed = true;
        return;
    }
    va_start(args, format);
    format_list(again, (size_t)length + 1, format, args);
    va_end(args);
}

const char *text_string(const struct text *text)
{
    return text->bytes == NULL ? "" : text->bytes;
}

void text_free(struct text *text)
{
    free(text->bytes);
    *text = TEXT_EMPTY;
}

size_t text_trim(const char **at, size_t length)
{
    while (length > 0 && isspace((unsigned char)**at))
        ++*at, length--;
    while (length > 0 && isspace((unsigned char)(*at)[length - 1]))
        length--;
    return length;
}

/* Longer than the ending: ".lua" alone is no name. */
bool text_ends_in(const char *string, const char *ending)
{
    const size_t n = strlen(string), m = strlen(ending);
    return n > m && strcmp(string + n - m, ending) == 0;
}

bool text_same(const char *a, const char *b)
{
    return a == b || (a != NULL && b != NULL && strcmp(a, b) == 0);
}

const char *text_keep(struct text *text, struct arena *arena)
{
    const char *kept = text->failed ? NULL : arena_copy(arena, text_string(text));
    arena->failed = arena->failed || text->failed;
    text_free(text);
    return kept == NULL ? "" : kept;
}
