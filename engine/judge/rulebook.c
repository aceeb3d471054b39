#include "judge/rulebook.h"

#include "judge/memory.h"
#include "judge/survey.h"

#include <string.h>

/* Of the first rule whose id is no less. */
static size_t place_of(const struct rulebook *book, const char *id)
{
    size_t low = 0, high = book->rule_count;
    while (low < high) {
        const size_t middle = low + (high - low) / 2;
        if (strcmp(book->by_id[middle]->id, id) < 0)
            low = middle + 1;
        else
            high = middle;
    }
    return low;
}

const struct rule *rulebook_rule(const struct rulebook *book, const char *id)
{
    const size_t place = place_of(book, id);
    const struct rule *rule = place == book->rule_count ? NULL : book->by_id[place];
    return rule != NULL && strcmp(rule->id, id) == 0 ? rule : NULL;
}

/* In their order nothing stands between a topic and its rules: a dot comes before all else that
 * an id may hold. */
bool rulebook_names(const struct rulebook *book, const char *name)
{
    const size_t place = place_of(book, name), length = strlen(name);
    const char *id = place == book->rule_count ? NULL : book->by_id[place]->id;
    return id != NULL && strncmp(id, name, length) == 0
           && (id[length] == '\0' || id[length] == '.');
}

bool rulebook_add(struct rulebook *book, struct rule *rule)
{
    const size_t place = place_of(book, rule->id);
    if (book->rule_count == book->rule_capacity) {
        const size_t capacity = book->rule_capacity == 0 ? 512 : 2 * book->rule_capacity;
        struct rule **more = arena_array(&book->arena, capacity, sizeof(struct rule *));
        if (more == NULL)
            return false;
        if (book->rule_count > 0)
            memcpy(more, book->by_id, book->rule_count * sizeof(struct rule *));
        book->by_id = more;
        book->rule_capacity = capacity;
    }
    struct rule **at = &book->by_id[place];
    rule->next = place == book->rule_count ? NULL : *at;
    *(place == 0 ? &book->rules : &at[-1]->next) = rule;
    memmove(at + 1, at, (book->rule_count - place) * sizeof(struct rule *));
    *at = rule;
    book->rule_count++;
    return true;
}

size_t rulebook_bytes(const struct rulebook *book)
{
    return sandbox_bytes(book->sandbox) / book->whole->holders + memory_bytes(book->memory)
           + survey_bytes(book->survey);
}
