#include "report/card_row.h"

#include "base/number.h"
#include "report/story.h"
#include "report/value_words.h"

#include <stdlib.h>
#include <string.h>

/* Things ------------------------------------------------------------------------ */

/* Nothing to hit and nothing wrong: only its question is told. */
bool card_item_waits(const struct card_item *item)
{
    return item->question > 0 && !item->demanded && item->wrong == NULL;
}

static bool same_rule(const struct card_item *a, const struct card_item *b)
{
    return strcmp(a->now->rule, b->now->rule) == 0;
}

/* Makes the thing that starts with item number `start`. False when all of it waits. */
static bool thing_at(struct card_thing *thing, const struct card_section *section, size_t start)
{
    bool any = false;
    thing->section = section;
    thing->start = start;
    for (thing->count = 0; start + thing->count < section->count; thing->count++) {
        const struct card_item *item = &section->items[start + thing->count];
        if (!same_rule(&section->items[start], item))
            break;
        any = any || !card_item_waits(item);
    }
    return any;
}

/* The next rule of the card that has anything to show; numbers run through all sections.
 * What only the department knows has a line of its own. */
bool card_next(const struct card *card, struct card_thing *thing)
{
    const struct card_section *last = thing->section;
    size_t s = last == NULL ? 0 : (size_t)(last - card->sections);
    size_t start = last == NULL ? 0 : thing->start + thing->count;
    for (; s < card->section_count; s++, start = 0) {
        const struct card_section *section = &card->sections[s];
        if (section->kind == CARD_PLACE)
            continue;
        for (; start < section->count; start += thing->count)
            if (thing_at(thing, section, start)) {
                thing->number++;
                thing->opens = section != last;
                return true;
            }
    }
    return false;
}

/* Questions --------------------------------------------------------------------- */

/* Names told one after another: of one rule or plane they stand together. */
struct names {
    struct text told;
    const char *last;
    size_t count, most;
};

/* A question being put together: of what it is asked, and what waits for it. */
struct asking {
    struct names of, waiting;
    const char *words;
};

/* Where the questions are many, the back has room for a count only. */
enum { WAITING_MOST = 3, WAITING_MOST_OF_MANY = 0 };

static void add_name(struct names *names, const char *name)
{
    if (name == NULL || story_same_text(names->last, name))
        return;
    names->last = name;
    if (++names->count <= names->most)
        text_addf(&names->told, "%s%s", names->told.length > 0 ? "; " : "", name);
}

/* Past the most, names are counted; where none fit, rules are. */
static const char *end_names(struct names *names)
{
    if (names->most == 0 && names->count > 0)
        text_addf(&names->told, names->count == 1 ? "1 rule" : "%zu rules", names->count);
    else if (names->count > names->most)
        text_addf(&names->told, "; %zu more", names->count - names->most);
    return text_string(&names->told);
}

/* Has an item before this one been asked the same of the same thing? */
static bool told_before(const struct card_section *section, size_t index)
{
    for (size_t i = 0; i < index; i++)
        if (section->items[i].question == section->items[index].question
            && story_same_text(section->items[i].of, section->items[index].of))
            return true;
    return false;
}

static void gather_question(struct asking *asking, const struct card_section *section,
                            size_t number)
{
    for (size_t i = 0; i < section->count; i++) {
        const struct card_item *item = &section->items[i];
        if (item->question != number)
            continue;
        asking->words = item->ask != NULL ? item->ask : item->now->says;
        if (!told_before(section, i))
            add_name(&asking->of, item->of);
        if (card_item_waits(item))
            add_name(&asking->waiting, card_title_of(item->now));
    }
}

void card_questions(const struct card *card,
                    void (*visit)(void *data, size_t number, const char *says, const char *waiting),
                    void *data)
{
    const size_t most = card_asks_in_front(card) ? WAITING_MOST : WAITING_MOST_OF_MANY;
    for (size_t number = 1; number <= card->question_count; number++) {
        struct asking asking = {.of = {TEXT_EMPTY, NULL, 0, CARD_PLACES_MOST},
                                .waiting = {TEXT_EMPTY, NULL, 0, most},
                                .words = ""};
        for (size_t s = 0; s < card->section_count; s++)
            gather_question(&asking, &card->sections[s], number);
        struct text says = TEXT_EMPTY;
        const char *of = end_names(&asking.of);
        text_addf(&says, "%s%s%s", of, of[0] == '\0' ? "" : ": ", asking.words);
        visit(data, number, text_string(&says), end_names(&asking.waiting));
        text_free(&says);
        text_free(&asking.of.told);
        text_free(&asking.waiting.told);
    }
}

/* Rows -------------------------------------------------------------------------- */

/* Releases both. */
static bool same_words(struct text a, struct text b)
{
    const bool same = strcmp(text_string(&a), text_string(&b)) == 0;
    text_free(&a);
    text_free(&b);
    return same;
}

/* What is only looked at is ticked; for several places, place by place. */
static enum card_room room_of(const struct card *card, const struct card_item *item, size_t count)
{
    const bool number = item->demanded && item->required.kind == VALUE_NUMBER;
    if (item->measured)
        return item->wrong == item->now ? ROOM_NONE : ROOM_FOUND; /* the fault says it */
    if (item->to_measure && item->demanded && item->required.kind == VALUE_YES_NO)
        return count > 1 && count <= CARD_PLACES_MOST ? ROOM_BOXES : ROOM_NONE;
    if (item->to_measure
        || (card->stage != STAGE_PERMIT && number && item->now->stage == card->stage))
        return ROOM_WRITE;
    return ROOM_NONE;
}

static struct card_row row_of(const struct card *card, const struct card_item *item, size_t count)
{
    struct card_row row = {
        .items = item, .count = count, .wrong = item->wrong, .room = room_of(card, item, count)};
    row.short_one = row.room == ROOM_NONE && row.wrong == NULL;
    return row;
}

static bool same_fault(const struct card_row *a, const struct card_row *b)
{
    if (a->wrong == NULL || b->wrong == NULL)
        return a->wrong == b->wrong;
    return a->wrong->outcome == b->wrong->outcome
           && same_words(card_row_fault(a), card_row_fault(b));
}

/* Two places share a row when everything said of them reads the same. */
static bool belong_together(const struct card *card, const struct card_item *a,
                            const struct card_item *b)
{
    const struct card_row left = row_of(card, a, 1), right = row_of(card, b, 1);
    return same_rule(a, b) && a->to_measure == b->to_measure && a->measured == b->measured
           && a->question == b->question && same_fault(&left, &right)
           && same_words(card_row_measured(&left), card_row_measured(&right))
           && same_words(card_row_hit(&left), card_row_hit(&right));
}

/* Do the places have to be named? All of those that the rule could speak of go
 * without saying; of those that it does speak of, the rest beside what is wrong
 * and told above it can be counted. Anything else is told place by place: its
 * figure would be taken for another place's. */
static void set_told(const struct card *card, struct card_row *row)
{
    const char *rule = row->items->now->rule;
    size_t all = 0, meant = 0, wrong = 0;
    for (size_t i = 0; i < card->now.finding_count; i++)
        if (strcmp(card->now.findings[i].rule, rule) == 0) {
            all++;
            meant += card->now.findings[i].outcome != OUTCOME_NOT_APPLICABLE
                     || card->plan.findings[i].outcome != OUTCOME_NOT_APPLICABLE;
        }
    const struct card_section *first = card->sections;
    for (size_t i = 0; first->kind == CARD_WRONG && row->wrong == NULL && i < first->count; i++)
        wrong += strcmp(first->items[i].now->rule, rule) == 0;
    row->told = row->count == all                                            ? PLACES_UNSAID
                : row->count > 1 && wrong > 0 && row->count + wrong == meant ? PLACES_OTHER
                : row->count > CARD_PLACES_MOST - 1 && row->count == meant   ? PLACES_ALL
                                                                             : PLACES_NAMED;
}

/* The row from item number `start` of the thing on. */
static struct card_row row_from(const struct card *card, const struct card_thing *thing,
                                size_t start)
{
    const struct card_item *items = &thing->section->items[thing->start];
    while (start < thing->count && card_item_waits(&items[start]))
        start++;
    if (start >= thing->count)
        return (struct card_row){.items = NULL};
    size_t count = 1;
    while (start + count < thing->count
           && belong_together(card, &items[start], &items[start + count]))
        count++;
    struct card_row row = row_of(card, &items[start], count);
    set_told(card, &row);
    return row;
}

struct card_row card_first_row(const struct card *card, const struct card_thing *thing)
{
    return row_from(card, thing, 0);
}

/* No items: there is none. */
struct card_row card_row_after(const struct card *card, const struct card_thing *thing,
                               const struct card_row *row)
{
    const struct card_item *items = &thing->section->items[thing->start];
    struct card_row after = row_from(card, thing, (size_t)(row->items - items) + row->count);
    after.again = after.items != NULL;
    return after;
}

/* Words ------------------------------------------------------------------------- */

const char *card_title_of(const struct finding *finding)
{
    return finding->title == NULL ? finding->rule : finding->title;
}

struct text card_row_places(const struct card_row *row)
{
    struct text places = TEXT_EMPTY;
    if (row->told == PLACES_ALL)
        text_addf(&places, "all %zu", row->count);
    else if (row->told == PLACES_OTHER)
        text_addf(&places, "the other %zu", row->count);
    for (size_t i = 0; row->told == PLACES_NAMED && i < row->count; i++)
        if (row->items[i].now->where != NULL)
            text_addf(&places, "%s%s", i == 0 ? "" : "; ", row->items[i].now->where);
    return places;
}

bool card_room_names(const struct card_row *row)
{
    return (row->room == ROOM_WRITE || row->room == ROOM_BOXES) && row->count > 1
           && row->count <= CARD_PLACES_MOST;
}

/* Inches as a tape can be held against them. */
static struct value on_tape(struct value bound, enum sense sense)
{
    if (bound.kind == VALUE_NUMBER)
        bound.number = number_on_tape(bound.number, sense, bound.unit);
    return bound;
}

/* "a, b or c". */
static void add_choices(struct text *out, const struct value *set)
{
    for (size_t i = 0; i < set->set_count; i++) {
        const struct value one = {.kind = VALUE_TEXT, .text = set->set[i]};
        text_add(out, i == 0 ? "" : i + 1 < set->set_count ? ", " : " or ");
        value_add(out, &one);
    }
    if (set->set_count == 0)
        value_add(out, set);
}

/* The number stands first: it is what the eye looks for. */
static void add_bound(struct text *out, const struct value *bound, enum sense sense)
{
    const struct value taped = on_tape(*bound, sense);
    if (sense == SENSE_AT_MOST && taped.number == 0) {
        text_add(out, "none");
        return;
    }
    value_add(out, &taped);
    text_add(out, sense == SENSE_AT_LEAST ? " or more" : " or less");
}

/* "2 in to 4 in". */
static void add_between(struct text *out, const struct card_item *item)
{
    const bool first = item->sense == SENSE_AT_LEAST;
    const struct value a = on_tape(item->required, item->sense);
    const struct value b = on_tape(item->also, item->also_sense);
    value_add(out, first ? &a : &b);
    text_add(out, " to ");
    value_add(out, first ? &b : &a);
}

/* Of a thing on paper that the job says is there, the title is enough: nothing
 * is hit or measured, it is only ticked. */
static bool title_says(const struct card_item *item)
{
    return item->now->stage == STAGE_PERMIT && !item->to_measure && item->plan->met == MET_YES;
}

/* What is to be hit, as short as can be: it is read on a roof. */
static void add_goal(struct text *out, const struct card_item *item)
{
    const bool bound = item->required.kind == VALUE_NUMBER
                       && (item->sense == SENSE_AT_LEAST || item->sense == SENSE_AT_MOST);
    if (bound && item->also.kind == VALUE_NUMBER)
        add_between(out, item);
    else if (bound)
        add_bound(out, &item->required, item->sense);
    else if (item->required.kind == VALUE_SET && item->sense == SENSE_ONE_OF)
        add_choices(out, &item->required);
    else if (item->required.kind == VALUE_SET && item->sense == SENSE_NONE_OF) {
        text_add(out, "not ");
        add_choices(out, &item->required);
    } else if (item->required.kind == VALUE_YES_NO)
        text_add(out, item->duty == NULL || title_says(item) ? "" : item->duty);
    else
        value_add_demand(out, item->sense, &item->required);
}

struct text card_row_hit(const struct card_row *row)
{
    const struct card_item *item = row->items;
    struct text hit = TEXT_EMPTY;
    if (item->demanded)
        add_goal(&hit, item);
    if (hit.length > 0 && item->amended != NULL)
        text_add(&hit, "*");
    /* Sources that differ are both said: which one binds is not ours to choose. */
    if (item->now->rival.kind == VALUE_NUMBER) {
        const struct card_item other = {.required = item->now->rival, .sense = item->sense};
        text_add(&hit, " (another source: ");
        add_goal(&hit, &other);
        text_add(&hit, ")");
    }
    if (item->question > 0)
        text_addf(&hit, "%squestion %zu", hit.length > 0 ? "; " : "", item->question);
    return hit;
}

static const char SO[] = "so", NOT_SO[] = "not so";

/* Where a thing must be so, "found no" would be misread: it may be as it must. */
static struct text found_words(const struct finding *finding)
{
    struct text found = TEXT_EMPTY;
    if (!finding->compared || finding->found.kind == VALUE_NONE)
        return found;
    if (finding->found.kind == VALUE_YES_NO && finding->required.kind == VALUE_YES_NO)
        text_add(&found, finding->found.yes == finding->required.yes ? SO : NOT_SO);
    else
        value_add(&found, &finding->found);
    return found;
}

/* Does it say what is to be hit, only once more? */
static bool goes_without_saying(const struct card_item *item)
{
    const struct value *required = &item->required, *found = &item->plan->found;
    if (found->kind == VALUE_YES_NO)
        return true;
    if (!item->demanded)
        return false;
    const bool one = required->kind == VALUE_SET && required->set_count == 1;
    const char *word = one ? required->set[0] : required->text;
    return found->kind == VALUE_NUMBER
               ? required->kind == VALUE_NUMBER
                     && number_equals(found->number, required->number, found->unit)
           : found->kind == VALUE_TEXT ? story_same_text(found->text, word)
           : found->kind == VALUE_SET
               ? one && found->set_count == 1 && story_same_text(found->set[0], word)
               : false;
}

/* A plan is worth saying when it is met and not just what is demanded. */
static struct text plan_of(const struct card_item *item)
{
    if (item->measured || item->plan->met != MET_YES || goes_without_saying(item))
        return TEXT_EMPTY;
    return found_words(item->plan);
}

/* Only where all places have the same plan. */
struct text card_row_plan(const struct card_row *row)
{
    struct text plan = plan_of(row->items);
    for (size_t i = 1; i < row->count; i++)
        if (!same_words(plan_of(&row->items[0]), plan_of(&row->items[i]))) {
            text_free(&plan);
            plan = TEXT_EMPTY;
        }
    return plan;
}

struct text card_row_measured(const struct card_row *row)
{
    return row->items->measured ? found_words(row->items->now) : TEXT_EMPTY;
}

struct text card_row_fault(const struct card_row *row)
{
    const struct finding *wrong = row->wrong;
    struct text fault = TEXT_EMPTY, found = TEXT_EMPTY;
    if (wrong == NULL)
        return fault;
    if (wrong->outcome != OUTCOME_BROKEN)
        found = found_words(wrong);
    /* A fault by a figure nobody read is a question first. */
    if (wrong->why & WHY_UNCONFIRMED)
        text_add(&fault, "Figure not confirmed. ");
    else if (wrong->why & WHY_PRACTICE)
        text_add(&fault, "Common practice, not code. ");
    if (found.length == 0)
        text_add(&fault, wrong->says == NULL ? "" : wrong->says);
    else if (strcmp(text_string(&found), NOT_SO) == 0)
        text_add(&fault, wrong->measured ? "Not so." : "Not so in the plan.");
    else
        text_addf(&fault, "%s %s.", wrong->measured ? "Found" : "Planned", text_string(&found));
    if (wrong->mend != NULL)
        text_addf(&fault, " %s", wrong->mend);
    fault.failed = fault.failed || found.failed;
    text_free(&found);
    return fault;
}

/* Sections ----------------------------------------------------------------------- */

/* A card has room for a few sections; `explain` names them all. */
enum { CITES_MOST = 4 };

static bool same_cite(const struct cite *a, const struct cite *b)
{
    return story_same_text(a->code, b->code) && story_same_text(a->section, b->section)
           && a->status == b->status;
}

struct cites {
    const struct cite *told[CITES_MOST];
    size_t shown, count;
    bool recalled; /* one of those not shown is less well known than its text was read */
};

/* Keeps the first few that differ, and counts the rest. */
static void take_cite(struct cites *cites, const struct cite *cite)
{
    for (size_t i = 0; i < cites->shown; i++)
        if (same_cite(cites->told[i], cite))
            return;
    if (cites->shown < CITES_MOST)
        cites->told[cites->shown++] = cite;
    else
        cites->recalled = cites->recalled || cite->status == STATUS_NONE
                          || cite->status == STATUS_MEMORY;
    cites->count++;
}

/* Does it rest on the very same as the one before it? Most places do. */
static bool cites_alike(const struct card_item *a, const struct card_item *b)
{
    bool alike = a->cite_count == b->cite_count;
    for (size_t i = 0; alike && i < a->cite_count; i++)
        alike = same_cite(&a->cites[i], &b->cites[i]);
    return alike;
}

/* The citations that differ, each once. */
static struct cites cites_of(const struct card_thing *thing)
{
    struct cites cites = {.count = 0};
    const struct card_item *items = &thing->section->items[thing->start];
    for (size_t i = 0; i < thing->count; i++) {
        const struct finding cited = {.cites = items[i].cites, .cite_count = items[i].cite_count};
        for (size_t c = 0; c < cited.cite_count; c++)
            if ((i == 0 || !cites_alike(&items[i], &items[i - 1]))
                && !story_cited_before(&cited, c, false))
                take_cite(&cites, &cited.cites[c]);
    }
    return cites;
}

/* Of one code, and as well known: then the sections stand in one list. */
static bool same_standing(const struct cite *a, const struct cite *b)
{
    return story_same_text(a->code, b->code) && a->status == b->status;
}

/* The code as the card's head lets it be said: not at all, or "local". */
static const char *short_code(const struct result *result, const struct cite *cite)
{
    if (cite->section == NULL || cite->section[0] == '\0')
        return cite->code;
    return story_same_text(cite->code, result->edition)    ? NULL
           : story_same_text(cite->code, result->own_code) ? "local"
                                                           : cite->code;
}

/* The head of the card says that an invented place's own code is invented. */
static bool is_said_above(const struct result *result, const struct cite *cite)
{
    return result->invented && story_same_text(cite->code, result->own_code)
           && cite->status == STATUS_INVENTED;
}

/* "R301.2, Table R602.3(1) (memory)", for all told like the one at start;
 * nothing when an earlier one was. */
static void add_standing(struct text *out, const struct cite *const told[], size_t count,
                         size_t start, const struct result *result)
{
    for (size_t i = 0; i < start; i++)
        if (same_standing(told[i], told[start]))
            return;
    const struct cite cite = {short_code(result, told[start]), told[start]->section, STATUS_NONE,
                              NULL};
    text_add(out, out->length == 0 ? "" : "; ");
    value_add_cite(out, &cite);
    for (size_t i = start + 1; i < count; i++)
        if (same_standing(told[i], told[start]))
            text_addf(out, ", %s", told[i]->section == NULL ? "" : told[i]->section);
    if (!is_said_above(result, told[start]))
        text_addf(out, " (%s)", value_cite_status(told[start]));
}

struct text card_cites(const struct card *card, const struct card_thing *thing)
{
    struct text words = TEXT_EMPTY;
    const struct cites cites = cites_of(thing);
    for (size_t i = 0; i < cites.shown; i++)
        add_standing(&words, cites.told, cites.shown, i, &card->now);
    if (cites.count > cites.shown)
        text_addf(&words, "; %zu more%s", cites.count - cites.shown,
                  cites.recalled ? ", some from memory" : "");
    return words;
}

/* Numbers told in order: those that follow each other are told as a span. */
struct spans {
    struct text told;
    size_t first, last; /* the span that is not told yet; 0: none */
};

/* "4", "4, 5" or "4 to 6". */
static void end_span(struct spans *spans)
{
    if (spans->first == 0)
        return;
    text_addf(&spans->told, "%s%zu", spans->told.length > 0 ? ", " : "", spans->first);
    if (spans->last > spans->first)
        text_addf(&spans->told, "%s%zu", spans->last > spans->first + 1 ? " to " : ", ",
                  spans->last);
}

static void add_number(struct spans *spans, size_t number)
{
    if (spans->first > 0 && number == spans->last + 1) {
        spans->last = number;
        return;
    }
    end_span(spans);
    spans->first = spans->last = number;
}

/* Tells the things that are cited like the one at `start`, unless an earlier one was. */
static void visit_like(const struct text *cites, size_t count, size_t start,
                       void (*visit)(void *data, const char *numbers, const char *cites),
                       void *data)
{
    const char *words = text_string(&cites[start]);
    struct spans spans = {TEXT_EMPTY, 0, 0};
    for (size_t i = 0; i < count; i++)
        if (strcmp(text_string(&cites[i]), words) == 0) {
            if (i < start)
                return;
            add_number(&spans, i + 1);
        }
    end_span(&spans);
    visit(data, text_string(&spans.told), words);
    text_free(&spans.told);
}

bool card_all_cites(const struct card *card,
                    void (*visit)(void *data, const char *numbers, const char *cites), void *data)
{
    struct card_thing thing = {0};
    size_t count = 0;
    while (card_next(card, &thing))
        count++;
    /* All are put together first: those alike are told once, by all their numbers. */
    struct text *cites = calloc(count + 1, sizeof(*cites));
    bool well = cites != NULL;
    thing = (struct card_thing){0};
    while (well && card_next(card, &thing)) {
        cites[thing.number - 1] = card_cites(card, &thing);
        well = !cites[thing.number - 1].failed;
    }
    for (size_t i = 0; well && i < count; i++)
        if (cites[i].length > 0)
            visit_like(cites, count, i, visit, data);
    for (size_t i = 0; cites != NULL && i < count; i++)
        text_free(&cites[i]);
    free(cites);
    return well;
}

struct text card_signs(const struct card *card)
{
    struct text signs = TEXT_EMPTY;
    const struct result *now = &card->now;
    text_addf(&signs, "A section alone is of %s", now->edition);
    if (now->own_code != NULL && !story_same_text(now->own_code, now->edition))
        text_addf(&signs, "; local: %s%s", now->own_code, now->invented ? " (invented)" : "");
    text_add(&signs, ". Seen: read in public. Parallel: in a sister text. Memory: recalled. "
                     "Practice: no code.");
    return signs;
}

/* Notes ------------------------------------------------------------------------- */

static bool is_unconfirmed(const struct card_thing *thing)
{
    for (size_t i = 0; i < thing->count; i++)
        if (thing->section->items[thing->start + i].unconfirmed)
            return true;
    return false;
}

static bool is_moved(const struct card_thing *thing)
{
    for (size_t i = 0; i < thing->count; i++)
        if (thing->section->items[thing->start + i].amended != NULL)
            return true;
    return false;
}

enum { FRONT_QUESTIONS_MOST = 5 };

bool card_asks_in_front(const struct card *card)
{
    return card->question_count <= FRONT_QUESTIONS_MOST;
}

struct text card_notes(const struct card *card, size_t left_in_front)
{
    struct text notes = TEXT_EMPTY;
    struct spans spans = {TEXT_EMPTY, 0, 0};
    struct card_thing thing = {0};
    size_t left = 0;
    bool moved = false;
    while (card_next(card, &thing)) {
        if (is_unconfirmed(&thing))
            add_number(&spans, thing.number);
        moved = moved || is_moved(&thing);
        left += thing.section->kind == CARD_LEFT;
    }
    end_span(&spans);
    if (left > left_in_front)
        text_addf(&notes, "Left open at earlier stages: %zu%s, on the back. ", left - left_in_front,
                  left_in_front > 0 ? " more" : "");
    if (!card_asks_in_front(card))
        text_addf(&notes, "Questions to answer: %zu, on the back. ", card->question_count);
    if (spans.told.length > 0)
        text_addf(&notes, "Figures not confirmed: %s. ", text_string(&spans.told));
    if (moved)
        text_add(&notes, "* the place's own figure. ");
    if (card->now.doubt_count > 0)
        text_add(&notes, "Whether this book binds here is in doubt: back. ");
    text_add(&notes, "Sections and cautions: back. A pre-check only: the building department "
                     "decides.");
    notes.failed = notes.failed || spans.told.failed;
    text_free(&spans.told);
    return notes;
}

/* The rules of which only the department knows, one after another; NULL after the last. */
static const struct card_item *next_to_ask(const struct card *card, const struct card_item *last)
{
    for (size_t s = 0; s < card->section_count; s++) {
        const struct card_section *section = &card->sections[s];
        if (section->kind != CARD_PLACE)
            continue;
        for (size_t i = last == NULL ? 0 : (size_t)(last - section->items); i < section->count; i++)
            if (last == NULL || !same_rule(&section->items[i], last))
                return &section->items[i];
    }
    return NULL;
}

/* Those of a topic; of no topic: all. */
static size_t count_to_ask(const struct card *card, const char *topic, size_t length)
{
    size_t count = 0;
    for (const struct card_item *item = next_to_ask(card, NULL); item != NULL;
         item = next_to_ask(card, item))
        count += length == 0
                 || (strncmp(item->now->rule, topic, length) == 0
                     && item->now->rule[length] == '.');
    return count;
}

/* Was the topic told already? */
static bool topic_before(const struct card *card, const struct card_item *item, size_t length)
{
    for (const struct card_item *other = next_to_ask(card, NULL); other != item;
         other = next_to_ask(card, other))
        if (strncmp(other->now->rule, item->now->rule, length + 1) == 0)
            return true;
    return false;
}

/* "inspection 24, papers 31". */
static void add_topics(const struct card *card, struct text *out)
{
    for (const struct card_item *item = next_to_ask(card, NULL); item != NULL;
         item = next_to_ask(card, item)) {
        const char *rule = item->now->rule;
        const size_t length = strcspn(rule, ".");
        if (topic_before(card, item, length))
            continue;
        text_add(out, out->length > 0 ? ", " : "");
        for (size_t i = 0; i < length; i++)
            text_add_n(out, rule[i] == '_' ? " " : &rule[i], 1);
        text_addf(out, " %zu", count_to_ask(card, rule, length));
    }
}

/* So many stand on the front by name, and so many on the back: of a place of which
 * nothing was read a list of all would be longer than the card. */
enum { FRONT_ASKED_MOST = 5, BACK_ASKED_MOST = 20 };

static size_t all_to_ask(const struct card *card)
{
    return count_to_ask(card, "", 0);
}

bool card_to_ask_in_back(const struct card *card)
{
    const size_t count = all_to_ask(card);
    return count > FRONT_ASKED_MOST && count <= BACK_ASKED_MOST;
}

struct text card_to_ask(const struct card *card, bool in_front)
{
    struct text asked = TEXT_EMPTY;
    if (in_front && all_to_ask(card) > FRONT_ASKED_MOST) {
        add_topics(card, &asked);
        text_add(&asked, card_to_ask_in_back(card) ? ": see the back" : ": the report names them");
        return asked;
    }
    for (const struct card_item *item = next_to_ask(card, NULL); item != NULL;
         item = next_to_ask(card, item))
        text_addf(&asked, "%s%s", asked.length > 0 ? "; " : "", card_title_of(item->now));
    return asked;
}

const char *card_title(enum stage stage)
{
    static const char *const TITLES[STAGE_COUNT] = {
        [STAGE_PERMIT] = "Card for the permit application",
        [STAGE_DECK] = "Card for the deck inspection",
        [STAGE_DRY_IN] = "Card for the dry-in inspection",
        [STAGE_FINAL] = "Card for the final inspection",
    };
    return TITLES[stage];
}
