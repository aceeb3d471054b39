#include "judge/gap.h"

#include "base/nearest.h"
#include "judge/fact.h"

#include <string.h>

/* A gap of the place's law holds when its fact is yes, and may hold while the fact is not
 * known: then that is what to ask first. */
bool gap_holds(struct judging *judging, const struct law_gap *gap)
{
    struct record *record = &judging->record;
    const struct scope none = {.depth = 0};
    struct node node;
    const char *why;
    const struct fact *fact = gap == NULL ? NULL
                                          : fact_find(judging->arena, &judging->book->fields, &none,
                                                      gap->fact, &why);
    if (fact == NULL)
        return false;
    if (!fact_known(judging, fact, NULL)) {
        /* What the rule itself was lacking goes first; read again, so that the fact is
         * recorded as missing. */
        if (record->missing == NULL && record->cannot_tell == NULL)
            fact_read(judging, fact, NULL, &node);
        return true;
    }
    if (!fact_read(judging, fact, NULL, &node) || !fact_value(judging, &node).yes)
        return false;
    record->missing = NULL;
    record->ask_place = true;
    record->cannot_tell = arena_format(
        judging->arena, "Not carried here: %s. Ask the building department.", gap->why);
    return true;
}

static bool is_rule(const struct rulebook *book, const char *name)
{
    const struct value one = {.kind = VALUE_SET, .set = &name, .set_count = 1};
    for (const struct rule *r = book->rules; r != NULL; r = r->next)
        if (profile_set_names(&one, r->id))
            return true;
    return false;
}

static void offer_rules(const struct rulebook *book, struct nearest *nearest)
{
    for (const struct rule *r = book->rules; r != NULL; r = r->next)
        nearest_offer(nearest, r->id);
}

static bool is_quantity(const struct rulebook *book, const char *name)
{
    for (const struct quantity *q = book->quantities; q != NULL; q = q->next)
        if (strcmp(q->name, name) == 0)
            return true;
    return false;
}

static void offer_quantities(const struct rulebook *book, struct nearest *nearest)
{
    for (const struct quantity *q = book->quantities; q != NULL; q = q->next)
        nearest_offer(nearest, q->name);
}

/* What a gap may name. */
struct nameable {
    const char *called;
    bool (*is_one)(const struct rulebook *book, const char *name);
    void (*offer)(const struct rulebook *book, struct nearest *nearest);
};

/* What the gap names must be there: a slip would let a rule judge by law that the place
 * does not carry. */
static void check_set(const struct rulebook *book, const struct law_gap *gap,
                      const struct value *set, const struct nameable *one,
                      struct problems *problems)
{
    for (size_t i = 0; i < set->set_count; i++) {
        struct nearest nearest;
        if (one->is_one(book, set->set[i]))
            continue;
        nearest_start(&nearest, set->set[i]);
        one->offer(book, &nearest);
        problem_at_line(problems, PROBLEM_RULES, gap->file, gap->line, 0,
                        "not_carried: \"%s\" is no %s; the nearest is %s", set->set[i], one->called,
                        nearest.name == NULL ? "none" : nearest.name);
    }
}

void gap_check(const struct rulebook *book, struct problems *problems)
{
    static const struct nameable ANY_RULE = {"rule or topic", is_rule, offer_rules},
                                 RULE = {"rule", is_rule, offer_rules},
                                 QUANTITY = {"quantity", is_quantity, offer_quantities};
    for (size_t i = 0; i < book->profile->gap_count; i++) {
        const struct law_gap *gap = &book->profile->gaps[i];
        const struct field *field = fields_find(&book->fields, gap->fact);
        if (field == NULL || field->type != FIELD_YES_NO || strchr(gap->fact, '[') != NULL)
            problem_at_line(problems, PROBLEM_RULES, gap->file, gap->line, 0,
                            "not_carried: \"%s\" is no yes-or-no fact of the job as a whole",
                            gap->fact);
        check_set(book, gap, &gap->rules, &ANY_RULE, problems);
        check_set(book, gap, &gap->but, &RULE, problems);
        check_set(book, gap, &gap->orders, &QUANTITY, problems);
    }
}
