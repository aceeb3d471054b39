/* memory_copy.c - what is to be remembered, copied into the memory. */
#include "judge/memory.h"

#include <string.h>

void memory_copy_value(struct memory *memory, struct value *value)
{
    const char **set = value->set_count == 0
                           ? NULL
                           : memory_alloc(memory, value->set_count * sizeof(*set));
    for (size_t i = 0; set != NULL && i < value->set_count; i++)
        set[i] = memory_copy(memory, value->set[i]);
    value->set = set;
    value->text = memory_copy(memory, value->text);
    value->unit = memory_copy(memory, value->unit);
}

const void *memory_copy_array(struct memory *memory, const void *array, size_t count, size_t size)
{
    void *copy = count == 0 ? NULL : memory_alloc(memory, count * size);
    return copy == NULL ? NULL : memcpy(copy, array, count * size);
}

const char *const *memory_copy_texts(struct memory *memory, const char *const *texts, size_t count)
{
    const char **copy = count == 0 ? NULL : memory_alloc(memory, count * sizeof(*copy));
    for (size_t i = 0; copy != NULL && i < count; i++)
        copy[i] = memory_copy(memory, texts[i]);
    return copy;
}
