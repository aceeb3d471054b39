#include "judge/rulebook_check.h"

#include "base/nearest.h"
#include "judge/figure_rows.h"
#include "judge/gap.h"
#include "judge/place_fact.h"

#include <string.h>

/* An ordinance that drops a misspelled rule would leave it standing. */
static void check_drops(const struct rulebook *book, struct problems *problems)
{
    for (size_t i = 0; i < book->profile->drop_count; i++) {
        const struct drop *drop = &book->profile->drops[i];
        struct nearest nearest;
        if (rulebook_rule(book, drop->rule) != NULL)
            continue;
        nearest_start(&nearest, drop->rule);
        for (const struct rule *r = book->rules; r != NULL; r = r->next)
            nearest_offer(&nearest, r->id);
        problem_at_line(problems, PROBLEM_RULES, drop->file, drop->line, 0,
                        "drops \"%s\", which is no rule; the nearest is %s", drop->rule,
                        nearest.name == NULL ? "none" : nearest.name);
    }
}

/* "deck" of "deck.gap". */
static bool is_same_topic(const char *a, const char *b)
{
    const size_t length = strcspn(a, ".");
    return strncmp(a, b, length) == 0 && (b[length] == '.' || b[length] == '\0');
}

/* By id, the rules of a topic stand together. */
static void find_bearings(struct rulebook *book)
{
    unsigned short topic = 0; /* RULES_MOST fits */
    struct bearing *bearings = arena_array(&book->arena, book->rule_count + 1, sizeof(*bearings));
    for (size_t i = 0; bearings != NULL && i < book->rule_count; i++) {
        const struct rule *rule = book->by_id[i];
        if (i > 0 && !is_same_topic(book->by_id[i - 1]->id, rule->id))
            topic++;
        bearings[i] = (struct bearing){.id = rule->id,
                                       .title = rule->title,
                                       .stage = rule->stage,
                                       .topic = topic,
                                       .per_depth = (unsigned char)rule->per_depth,
                                       .gap = profile_gap(book->profile, rule->id),
                                       .drop = profile_drop(book->profile, rule->id)};
        memcpy(bearings[i].per, rule->per, sizeof(rule->per));
    }
    book->bearings = bearings;
}

void rulebook_check(struct rulebook *book, struct problems *problems)
{
    check_drops(book, problems);
    gap_check(book, problems);
    place_fact_check(book, problems);
    figure_rows_check(book, problems);
    find_bearings(book);
}
