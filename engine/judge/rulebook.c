#include "judge/rulebook.h"

#include "judge/memory.h"

#include <string.h>

const struct rule *rulebook_rule(const struct rulebook *book, const char *id)
{
    const struct rule *rule = book->rules;
    while (rule != NULL && strcmp(rule->id, id) != 0)
        rule = rule->next;
    return rule;
}

size_t rulebook_bytes(const struct rulebook *book)
{
    return sandbox_bytes(book->sandbox) + memory_bytes(book->memory);
}
