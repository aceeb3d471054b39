#include "prove/case_list.h"

#include <stdlib.h>
#include <string.h>

struct turn {
    struct rule_case *of;
    size_t rank, at;
};

/* Place, day, and then as they are written. */
static int turn_order(const void *a, const void *b)
{
    const struct turn *one = a, *other = b;
    if (one->rank != other->rank)
        return one->rank < other->rank ? -1 : 1;
    int order = strcmp(one->of->under, other->of->under);
    if (order == 0)
        order = strcmp(one->of->date, other->of->date);
    return order != 0 ? order : (one->at < other->at ? -1 : 1);
}

/* One that could not be built names no place, and needs no law. */
static void fill_turns(struct turn *turns, struct case_list *list,
                       const struct cases_wanted *wanted)
{
    size_t at = 0;
    for (struct rule_case *c = list->first; c != NULL; c = c->next, at++) {
        if (c->base == NULL)
            c->under = c->date = "";
        turns[at] = (struct turn){.of = c, .at = at};
        if (wanted->rank != NULL)
            turns[at].rank = wanted->rank(wanted->data, c->under);
    }
}

struct rule_case **case_list_sorted(struct case_list *list, const struct cases_wanted *wanted,
                                    size_t *count)
{
    *count = 0;
    for (const struct rule_case *c = list->first; c != NULL; c = c->next)
        ++*count;
    struct turn *turns = arena_array(&list->arena, *count + 1, sizeof(*turns));
    struct rule_case **sorted = arena_array(&list->arena, *count + 1, sizeof(struct rule_case *));
    if (turns == NULL || sorted == NULL)
        return NULL;
    fill_turns(turns, list, wanted);
    qsort(turns, *count, sizeof(*turns), turn_order);
    for (size_t i = 0; i < *count; i++)
        sorted[i] = turns[i].of;
    return sorted;
}
