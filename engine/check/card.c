#include "check/card.h"

#include "check/ready.h"
#include "check/suppose.h"
#include "job/spot.h"
#include "judge/judge.h"

#include <string.h>

static const char LAST_TITLE[] = "Also looked at";

struct making {
    const struct ready *ready;
    const cJSON *job;
    struct card *card;
    struct arena *arena;
    bool *placed; /* one per finding */
};

/* Items ----------------------------------------------------------------------- */

static bool says_something(const struct finding *finding)
{
    return finding->outcome != OUTCOME_NOT_APPLICABLE;
}

/* Is it of a rule that only asks for facts others need? There is nothing to hit. */
static bool only_asks(const struct making *making, const struct finding *finding)
{
    const struct rule *rule = rulebook_rule(making->ready->law->book, finding->rule);
    return rule != NULL && rule->asks_only;
}

static bool is_met(const struct finding *finding)
{
    return finding->outcome == OUTCOME_PASS || finding->outcome == OUTCOME_WARN;
}

/* The fact that an open finding lacks, or NULL. */
static const struct field *lacking(const struct making *making, const struct finding *finding)
{
    if (finding->outcome != OUTCOME_OPEN || finding->lacks == NULL)
        return NULL;
    return spot_field(&making->ready->law->book->fields, finding->lacks);
}

static void demand_from(struct card_item *item, const struct finding *finding)
{
    item->demanded = finding->required.kind != VALUE_NONE;
    item->required = finding->required;
    item->sense = finding->sense;
    item->duty = finding->duty;
    item->cites = finding->cites;
    item->cite_count = finding->cite_count;
    item->amended = finding->amended;
}

/* What will be held against the roof: from the judgement as if the stage had
 * come; by supposing what is lacking there; or from the plan. */
static void find_demand(struct making *making, struct card_item *item)
{
    struct supposed supposed;
    if (item->now->compared) {
        demand_from(item, item->now);
        return;
    }
    if (item->now->outcome == OUTCOME_OPEN && item->now->lacks != NULL
        && suppose(making->ready->law->book, making->job, making->card->stage, item->now,
                   making->arena, &supposed)) {
        item->demanded = true;
        item->required = supposed.required;
        item->sense = supposed.sense;
        item->duty = supposed.duty;
        item->cites = supposed.cites;
        item->cite_count = supposed.cite_count;
        item->amended = supposed.amended;
    } else if (item->plan->compared) {
        demand_from(item, item->plan);
    }
}

static void add_item(struct making *making, struct card_section *section, size_t index)
{
    const struct finding *plan = &making->card->plan.findings[index];
    const struct finding *now = &making->card->now.findings[index];
    making->placed[index] = true;
    const bool asks = only_asks(making, now);
    if ((!says_something(plan) && !says_something(now)) || (asks && is_met(now)))
        return;
    const struct field *lacks = lacking(making, now);
    struct card_item *item = &section->items[section->count++];
    *item = (struct card_item){.plan = plan, .now = now, .ask = lacks == NULL ? NULL : lacks->ask,
                               .of = lacks == NULL ? NULL : spot_name(making->job, now->lacks),
                               .to_measure = lacks != NULL && lacks->measured,
                               .measured = now->measured,
                               .cites = now->cites, .cite_count = now->cite_count};
    if (!asks)
        find_demand(making, item);
}

/* Questions --------------------------------------------------------------------- */

static const char *asks(const struct card_item *item)
{
    return item->ask != NULL ? item->ask : item->now->says;
}

/* Numbers the item's question, as it is asked first; asked holds one item of each. */
static void number_question(struct card *card, struct card_item *item,
                            const struct card_item *asked[])
{
    if (item->now->outcome != OUTCOME_OPEN || item->to_measure)
        return;
    for (size_t i = 0; i < card->question_count && item->question == 0; i++)
        if (strcmp(asks(asked[i]), asks(item)) == 0)
            item->question = i + 1;
    if (item->question > 0)
        return;
    asked[card->question_count++] = item;
    item->question = card->question_count;
}

static void number_questions(struct making *making)
{
    struct card *card = making->card;
    const struct card_item **asked =
        arena_array(making->arena, card->now.finding_count + 1, sizeof(*asked));
    for (size_t s = 0; asked != NULL && s < card->section_count; s++)
        for (size_t i = 0; i < card->sections[s].count; i++)
            number_question(card, &card->sections[s].items[i], asked);
}

/* Sections ---------------------------------------------------------------------- */

static bool of_topic(const char *rule, const char *topic)
{
    const size_t length = strlen(topic);
    return strncmp(rule, topic, length) == 0 && rule[length] == '.';
}

/* Is the rule named by itself somewhere on this card? */
static bool named_alone(const struct card_part *parts, const char *rule)
{
    for (const struct card_part *p = parts; p != NULL; p = p->next)
        if (strings_have(&p->names, rule))
            return true;
    return false;
}

static void add_named(struct making *making, struct card_section *section,
                      const struct card_part *parts, const char *name)
{
    const struct result *now = &making->card->now;
    const bool topic = strchr(name, '.') == NULL;
    for (size_t i = 0; i < now->finding_count; i++) {
        const struct finding *finding = &now->findings[i];
        if (making->placed[i])
            continue;
        if (topic ? finding->stage == making->card->stage && of_topic(finding->rule, name)
                        && !named_alone(parts, finding->rule)
                  : strcmp(finding->rule, name) == 0)
            add_item(making, section, i);
    }
}

static struct card_section *section_new(struct making *making, const char *title)
{
    struct card *card = making->card;
    struct card_section *section = &card->sections[card->section_count];
    section->title = title;
    section->items = arena_array(making->arena, card->now.finding_count + 1,
                                 sizeof(*section->items));
    return section->items == NULL ? NULL : section;
}

static void lay_out(struct making *making)
{
    struct card *card = making->card;
    const struct card_part *parts = making->ready->law->book->cards[card->stage];
    size_t count = 1;
    for (const struct card_part *p = parts; p != NULL; p = p->next)
        count++;
    card->sections = arena_array(making->arena, count, sizeof(*card->sections));
    making->placed = arena_array(making->arena, card->now.finding_count + 1, sizeof(bool));
    if (card->sections == NULL || making->placed == NULL)
        return;
    for (const struct card_part *p = parts; p != NULL; p = p->next) {
        struct card_section *section = section_new(making, p->title);
        for (size_t i = 0; section != NULL && i < p->names.count; i++)
            add_named(making, section, parts, p->names.items[i]);
        card->section_count += section != NULL && section->count > 0;
    }
    struct card_section *rest = section_new(making, LAST_TITLE);
    for (size_t i = 0; rest != NULL && i < card->now.finding_count; i++)
        if (!making->placed[i] && card->now.findings[i].stage == card->stage)
            add_item(making, rest, i);
    card->section_count += rest != NULL && rest->count > 0;
}

/* The stage before this one: what is planned for it still counts. */
static enum stage before(enum stage stage)
{
    return stage == STAGE_PERMIT ? STAGE_PERMIT : (enum stage)(stage - 1);
}

/* A broken rule has its row; a broken caution has none. */
static void say_broken_parts(const struct rulebook *book, const struct result *result,
                             struct problems *problems)
{
    for (size_t i = 0; i < result->finding_count; i++) {
        const struct finding *finding = &result->findings[i];
        if (finding->outcome == OUTCOME_BROKEN && rulebook_rule(book, finding->rule) == NULL)
            problem_at_line(problems, PROBLEM_RULES, finding->file, finding->line, 0, "%s: %s",
                            finding->title, finding->says);
    }
}

void check_card(struct laws *laws, cJSON *job, const struct overrides *overrides,
                const char *file, struct checked_card *out)
{
    const struct ready ready = ready_make(laws, job, overrides, file, &out->problems);
    struct card *card = &out->card;
    if (ready.law == NULL)
        return;
    struct rulebook *book = ready.law->book;
    struct making making = {.ready = &ready, .job = job, .card = card,
                            .arena = &card->now.arena};
    card->stage = ready.asked;
    ready_heading(&card->now, job, ready.law, ready.stage);
    if (judge(book, job, -1, before(card->stage), &card->plan) != 0
        || judge(book, job, -1, card->stage, &card->now) != 0) {
        problem_out_of_memory(&out->problems);
        return;
    }
    say_broken_parts(book, &card->now, &out->problems);
    lay_out(&making);
    number_questions(&making);
    out->made = !card->now.arena.failed;
    if (!out->made)
        problem_out_of_memory(&out->problems);
}

bool card_broken(const struct card *card)
{
    for (size_t s = 0; s < card->section_count; s++)
        for (size_t i = 0; i < card->sections[s].count; i++)
            if (card->sections[s].items[i].now->outcome == OUTCOME_BROKEN
                || card->sections[s].items[i].plan->outcome == OUTCOME_BROKEN)
                return true;
    return false;
}

void checked_card_free(struct checked_card *checked)
{
    problems_free(&checked->problems);
    result_free(&checked->card.plan);
    result_free(&checked->card.now);
}
