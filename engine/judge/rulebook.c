#include "judge/rulebook.h"

#include "judge/memory.h"

#include <string.h>

const struct rule *rulebook_rule(const struct rulebook *book, const char *id)
{
    int order = -1;
    const struct rule *rule = book->rules;
    while (rule != NULL && (order = strcmp(rule->id, id)) < 0)
        rule = rule->next;
    return rule != NULL && order == 0 ? rule : NULL;
}

size_t rulebook_bytes(const struct rulebook *book)
{
    return sandbox_bytes(book->sandbox) + memory_bytes(book->memory);
}
