#include "job/pointer.h"

size_t pointer_quotable(const char *text, size_t length, size_t most)
{
    if (length <= most)
        return length;
    while (most > 0 && ((unsigned char)text[most] & 0xC0) == 0x80)
        most--;
    return most;
}

void pointer_add(struct text *pointer, const char *name, size_t length)
{
    const size_t shown = pointer_quotable(name, length, POINTER_LONGEST_NAME);
    text_add(pointer, "/");
    for (size_t i = 0; i < shown; i++) {
        if (name[i] == '~')
            text_add(pointer, "~0");
        else if (name[i] == '/')
            text_add(pointer, "~1");
        else
            text_add_n(pointer, name + i, 1);
    }
    if (shown < length)
        text_add(pointer, "...");
}

void pointer_add_item(struct text *pointer, size_t index)
{
    text_addf(pointer, "/%zu", index);
}

void pointer_cut(struct text *pointer, size_t length)
{
    if (length >= pointer->length)
        return;
    pointer->length = length;
    pointer->bytes[length] = '\0';
}
