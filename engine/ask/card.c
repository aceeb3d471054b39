#include "ask/card.h"

#include "law/prepare.h"
#include "job/path.h"
#include "judge/judge.h"

#include <string.h>

static const char LAST_TITLE[] = "Also looked at";

/* The card being made. Sections that are no part of the walk are filled on the way and
 * placed when their lengths are known. */
struct making {
    const struct prepared *ready;
    const cJSON *job;
    struct card *card;
    struct arena *arena;
    bool *placed; /* one per finding */
    struct card_section wrong, place, left;
};

/* Items ----------------------------------------------------------------------- */

/* A rule that does not apply is no row. */
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
    return finding->met == MET_YES;
}

/* The fact that an open finding lacks, or NULL. */
static const struct field *lacking(const struct making *making, const struct finding *finding)
{
    if (finding->outcome != OUTCOME_OPEN || finding->lacks == NULL)
        return NULL;
    return path_field(&making->ready->law->book->fields, finding->lacks);
}

/* Of memory, or of a sister edition: nobody has read it in the book that binds here. */
static bool recalled(const struct maker *makers, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        const enum status status = makers[i].cite->status;
        if (status == STATUS_NONE || status == STATUS_MEMORY || status == STATUS_PARALLEL)
            return true;
    }
    return false;
}

/* The texts stay the finding's: both results live as long as the card. */
static void demand_from(struct card_item *item, const struct finding *finding)
{
    item->demanded = finding->required.kind != VALUE_NONE;
    item->required = finding->required;
    item->sense = finding->sense;
    item->also = finding->also;
    item->also_sense = finding->also_sense;
    item->unconfirmed = recalled(finding->makers, finding->maker_count);
    item->duty = finding->duty;
    item->cites = finding->cites;
    item->cite_count = finding->cite_count;
    item->amended = finding->amended;
}

/* What will be held against the roof: from the judgement as if the stage had come, which
 * tells it of what is lacking there too; or from the plan. */
static void find_demand(struct card_item *item)
{
    demand_from(item, item->now);
    if (!item->demanded && item->plan->compared)
        demand_from(item, item->plan);
}

/* What was measured goes before the plan, for good and for ill. */
static const struct finding *wrong_of(const struct finding *plan, const struct finding *now)
{
    if (now->outcome == OUTCOME_BROKEN || now->met == MET_NO)
        return now;
    if (plan->outcome == OUTCOME_BROKEN || (plan->met == MET_NO && now->met != MET_YES))
        return plan;
    return NULL;
}

/* Where an item goes that the walk comes to in this section. */
static struct card_section *section_of(struct making *making, struct card_section *walk,
                                       const struct card_item *item)
{
    return item->wrong != NULL                                                 ? &making->wrong
           : item->now->outcome == OUTCOME_OPEN && item->now->ask == ASK_PLACE ? &making->place
                                                                               : walk;
}

static void add_item(struct making *making, struct card_section *walk, size_t index)
{
    const struct finding *plan = &making->card->plan.findings[index];
    const struct finding *now = &making->card->now.findings[index];
    making->placed[index] = true;
    /* Placed even when it is no row, so that the rest of the walk does not come to it
     * again. */
    const bool asks = only_asks(making, now);
    if ((!says_something(plan) && !says_something(now)) || (asks && is_met(now)))
        return;
    const struct field *lacks = lacking(making, now);
    struct card_item item = {
        .plan = plan,
        .now = now,
        .wrong = wrong_of(plan, now),
        .ask = lacks == NULL ? NULL : lacks->ask,
        .of = lacks == NULL ? NULL : path_item_name(making->job, now->lacks),
        .asks_number = lacks != NULL
                       && (lacks->type == FIELD_NUMBER || lacks->type == FIELD_INTEGER),
        .to_measure = lacks != NULL && lacks->measured,
        .measured = now->measured,
        .cites = now->cites,
        .cite_count = now->cite_count};
    if (!asks)
        find_demand(&item);
    struct card_section *section = section_of(making, walk, &item);
    section->items[section->count++] = item;
}

/* Questions --------------------------------------------------------------------- */

static const char *ask_of_item(const struct card_item *item)
{
    return item->ask != NULL ? item->ask : item->now->says;
}

/* Numbers the item's question, as it is asked first; asked holds one item of each. */
static void number_question(struct card *card, struct card_item *item,
                            const struct card_item *asked[])
{
    if (item->now->outcome != OUTCOME_OPEN || item->to_measure || item->now->ask == ASK_PLACE)
        return;
    for (size_t i = 0; i < card->question_count && item->question == 0; i++)
        if (strcmp(ask_of_item(asked[i]), ask_of_item(item)) == 0)
            item->question = i + 1;
    if (item->question > 0)
        return;
    asked[card->question_count++] = item;
    item->question = card->question_count;
}

/* In the order of the card, so that its numbers rise as it is read. */
static void number_questions(struct making *making)
{
    struct card *card = making->card;
    const struct card_item **asked = arena_array(making->arena, card->now.finding_count + 1,
                                                 sizeof(*asked));
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

/* A topic's name takes in all its rules of this stage, but for those that the card names
 * by themselves somewhere; a rule's name takes it in whatever its stage. */
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

static bool section_start(struct making *making, struct card_section *section, enum card_kind kind,
                          const char *title)
{
    *section = (struct card_section){.kind = kind, .title = title};
    section->items = arena_array(making->arena, making->card->now.finding_count + 1,
                                 sizeof(*section->items));
    return section->items != NULL;
}

/* Keeps a section that is complete, unless it is empty. */
static void section_end(struct card *card, const struct card_section *section)
{
    if (section->count > 0)
        card->sections[card->section_count++] = *section;
}

/* In the order of the card's declaration (rules/cards.lua); what it does not name comes
 * last, so that nothing of the stage is left out. */
static void walk_over(struct making *making)
{
    struct card *card = making->card;
    const struct card_part *parts = making->ready->law->book->cards[card->stage];
    struct card_section section;
    for (const struct card_part *p = parts; p != NULL; p = p->next) {
        if (!section_start(making, &section, CARD_WALK, p->title))
            return;
        for (size_t i = 0; i < p->names.count; i++)
            add_named(making, &section, parts, p->names.items[i]);
        section_end(card, &section);
    }
    if (!section_start(making, &section, CARD_WALK, LAST_TITLE))
        return;
    for (size_t i = 0; i < card->now.finding_count; i++)
        if (!making->placed[i] && card->now.findings[i].stage == card->stage)
            add_item(making, &section, i);
    section_end(card, &section);
}

/* What earlier stages left undone counts until it is done. */
static void look_back(struct making *making)
{
    const struct result *now = &making->card->now;
    for (size_t i = 0; i < now->finding_count; i++) {
        const struct finding *finding = &now->findings[i];
        if (!making->placed[i] && finding->stage < making->card->stage
            && (finding->outcome == OUTCOME_OPEN || finding->outcome == OUTCOME_BROKEN
                || finding->met == MET_NO))
            add_item(making, &making->left, i);
    }
}

/* What was never measured at an earlier stage was planned all the same. */
static bool ask_first_plan(struct making *making)
{
    struct card *card = making->card;
    if (making->left.count == 0)
        return true;
    if (judge(making->ready->law->book, making->job, -1, STAGE_PERMIT, NULL, &card->first) != 0)
        return false;
    for (size_t i = 0; i < making->left.count; i++) {
        struct card_item *item = &making->left.items[i];
        const struct finding *first = &card->first.findings[item->now - card->now.findings];
        if (!item->demanded && first->compared)
            demand_from(item, first);
    }
    return true;
}

/* Broken, failed, not met though only advised. */
static int badness(const struct card_item *item)
{
    return item->wrong->outcome == OUTCOME_BROKEN ? 2 : item->wrong->outcome == OUTCOME_FAIL;
}

/* The worst first, otherwise as it was. */
static void sort_wrong(struct making *making, struct card_section *into)
{
    /* Three passes, so that equals keep their order. */
    for (int worst = 2; worst >= 0; worst--)
        for (size_t i = 0; i < making->wrong.count; i++)
            if (badness(&making->wrong.items[i]) == worst)
                into->items[into->count++] = making->wrong.items[i];
}

/* The order of sections: what is wrong, the walk, what to ask the place, what was left. */
static bool lay_out(struct making *making)
{
    struct card *card = making->card;
    size_t count = 5; /* the last of the walk, and the four that are no part of it */
    for (const struct card_part *p = making->ready->law->book->cards[card->stage]; p != NULL;
         p = p->next)
        count++;
    struct card_section wrong;
    struct card_section *sections = arena_array(making->arena, count, sizeof(*sections));
    making->placed = arena_array(making->arena, card->now.finding_count + 1, sizeof(bool));
    if (sections == NULL || making->placed == NULL
        || !section_start(making, &wrong, CARD_WRONG, "Put right first")
        || !section_start(making, &making->wrong, CARD_WRONG, wrong.title)
        || !section_start(making, &making->place, CARD_PLACE, "Ask the building department")
        || !section_start(making, &making->left, CARD_LEFT, "Left open at an earlier stage"))
        return false;
    card->sections = &sections[1]; /* the first is known last */
    walk_over(making);
    look_back(making);
    if (!ask_first_plan(making))
        return false;
    section_end(card, &making->place);
    section_end(card, &making->left);
    sort_wrong(making, &wrong);
    if (wrong.count > 0) {
        sections[0] = wrong;
        card->sections = sections;
        card->section_count++;
    }
    return true;
}

/* The stage before this one: what is planned for it still counts. */
static enum stage stage_before(enum stage stage)
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

void card_of_job(struct laws *laws, cJSON *job, const struct overrides *overrides, const char *file,
                 struct checked_card *out)
{
    const struct prepared ready = prepare_job(laws, job, overrides, file, &out->problems);
    struct card *card = &out->card;
    if (ready.law == NULL)
        return;
    struct rulebook *book = ready.law->book;
    struct making making = {.ready = &ready, .job = job, .card = card, .arena = &card->now.arena};
    /* The plan is judged as before the visit; `now` as if it had come, when only what was
     * measured counts. */
    card->stage = ready.asked;
    const struct probe demands = {.demands = true};
    prepare_heading(&card->now, job, &ready, ready.stage);
    if (judge(book, job, -1, stage_before(card->stage), NULL, &card->plan) != 0
        || judge(book, job, -1, card->stage, &demands, &card->now) != 0 || !lay_out(&making)) {
        problem_out_of_memory(&out->problems);
        return;
    }
    say_broken_parts(book, &card->now, &out->problems);
    number_questions(&making);
    out->made = !card->now.arena.failed;
    if (!out->made)
        problem_out_of_memory(&out->problems);
}

bool card_broken(const struct card *card)
{
    for (size_t s = 0; s < card->section_count; s++)
        for (size_t i = 0; i < card->sections[s].count; i++)
            if (card->sections[s].items[i].wrong != NULL
                && card->sections[s].items[i].wrong->outcome == OUTCOME_BROKEN)
                return true;
    return false;
}

void card_checked_free(struct checked_card *checked)
{
    problems_free(&checked->problems);
    result_free(&checked->card.plan);
    result_free(&checked->card.now);
    result_free(&checked->card.first);
}
