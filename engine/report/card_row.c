#include "report/card_row.h"

#include "base/number.h"
#include "report/story.h"
#include "report/value.h"

#include <string.h>

/* Questions --------------------------------------------------------------------- */

bool card_item_waits(const struct card_item *item)
{
    return item->question > 0 && !item->demanded && item->plan->outcome != OUTCOME_FAIL
        && item->plan->outcome != OUTCOME_BROKEN;
}

bool card_section_waits(const struct card_section *section)
{
    for (size_t i = 0; i < section->count; i++)
        if (!card_item_waits(&section->items[i]))
            return false;
    return true;
}

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

enum { WAITING_MOST = 3 };

static void add_name(struct names *names, const char *name)
{
    if (name == NULL || story_same_text(names->last, name))
        return;
    names->last = name;
    if (++names->count <= names->most)
        text_addf(&names->told, "%s%s", names->told.length > 0 ? "; " : "", name);
}

static const char *end_names(struct names *names)
{
    if (names->count > names->most)
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

static void gather(struct asking *asking, const struct card_section *section, size_t number)
{
    for (size_t i = 0; i < section->count; i++) {
        const struct card_item *item = &section->items[i];
        if (item->question != number)
            continue;
        asking->words = item->ask != NULL ? item->ask : item->now->says;
        if (!told_before(section, i))
            add_name(&asking->of, item->of);
        if (card_item_waits(item))
            add_name(&asking->waiting,
                     item->now->title == NULL ? item->now->rule : item->now->title);
    }
}

void card_questions(const struct card *card,
                    void (*visit)(void *data, size_t number, const char *says,
                                  const char *waiting), void *data)
{
    for (size_t number = 1; number <= card->question_count; number++) {
        struct asking asking = {.of = {TEXT_EMPTY, NULL, 0, CARD_PLACES_MOST},
                                .waiting = {TEXT_EMPTY, NULL, 0, WAITING_MOST}, .words = ""};
        for (size_t s = 0; s < card->section_count; s++)
            gather(&asking, &card->sections[s], number);
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

static bool same_words(struct text a, struct text b)
{
    const bool same = strcmp(text_string(&a), text_string(&b)) == 0;
    text_free(&a);
    text_free(&b);
    return same;
}

static const struct finding *failed_of(const struct card_item *item)
{
    return item->now->outcome == OUTCOME_FAIL ? item->now
        : item->plan->outcome == OUTCOME_FAIL ? item->plan
                                              : NULL;
}

static const struct finding *broken_of(const struct card_item *item)
{
    return item->now->outcome == OUTCOME_BROKEN ? item->now
        : item->plan->outcome == OUTCOME_BROKEN ? item->plan
                                                : NULL;
}

static struct card_row row_of(const struct card_item *item)
{
    return (struct card_row){.items = item, .count = 1, .failed = failed_of(item),
                             .broken = broken_of(item)};
}

static bool belong_together(const struct card_item *a, const struct card_item *b)
{
    const struct card_row left = row_of(a), right = row_of(b);
    const struct finding *first = left.failed, *second = right.failed;
    return strcmp(a->now->rule, b->now->rule) == 0 && a->to_measure == b->to_measure
        && a->measured == b->measured
        && same_words(card_row_measured(&left), card_row_measured(&right))
        && left.broken == NULL && right.broken == NULL
        && (first == NULL) == (second == NULL)
        && (first == NULL || story_same_text(first->says, second->says))
        && a->question == b->question
        && same_words(card_row_hit(&left), card_row_hit(&right))
        && same_words(card_row_plan(&left), card_row_plan(&right));
}

static bool is_to_write(const struct card *card, const struct card_item *item)
{
    return !item->measured
        && (item->to_measure
            || (card->stage != STAGE_PERMIT && item->demanded
                && item->required.kind == VALUE_NUMBER
                && item->now->stage == card->stage));
}

struct card_row card_row(const struct card *card, const struct card_section *section,
                         size_t start)
{
    const struct card_item *item = &section->items[start];
    struct card_row row = row_of(item);
    while (start + row.count < section->count && belong_together(item, &item[row.count]))
        row.count++;
    row.to_write = is_to_write(card, item);
    row.short_one = !row.to_write && !item->measured && row.failed == NULL && row.broken == NULL;
    const size_t next = start + row.count;
    row.everywhere = (start == 0 || strcmp(item[-1].now->rule, item->now->rule) != 0)
        && (next == section->count
            || strcmp(section->items[next].now->rule, item->now->rule) != 0);
    if (start > 0 && strcmp(item[-1].now->rule, item->now->rule) == 0) {
        const struct card_row before = row_of(&item[-1]);
        row.again = true;
        row.cited = same_words(card_row_cites(card, &before), card_row_cites(card, &row));
    }
    return row;
}

/* Words ------------------------------------------------------------------------- */

const char *card_row_title(const struct card_row *row)
{
    const struct finding *finding = row->items->now;
    return finding->title == NULL ? finding->rule : finding->title;
}

struct text card_row_places(const struct card_row *row)
{
    struct text places = TEXT_EMPTY;
    if (row->count > CARD_PLACES_MOST && row->everywhere) {
        text_addf(&places, "all %zu places", row->count);
        return places;
    }
    for (size_t i = 0; i < row->count; i++)
        if (row->items[i].now->where != NULL)
            text_addf(&places, "%s%s", i == 0 ? "" : "; ", row->items[i].now->where);
    return places;
}

struct text card_row_hit(const struct card_row *row)
{
    const struct card_item *item = row->items;
    struct value required = item->required;
    struct text hit = TEXT_EMPTY;
    if (required.kind == VALUE_NUMBER)
        required.number = number_on_tape(required.number, item->sense, required.unit);
    if (item->demanded && item->required.kind == VALUE_SET && item->required.set_count == 1
        && story_same_text(item->sense, "one_of"))
        value_add(&hit, &required); /* "one of visit" is no choice */
    else if (item->demanded && item->required.kind != VALUE_YES_NO)
        value_add_demand(&hit, item->sense, &required);
    else if (item->demanded)
        text_add(&hit, item->duty != NULL ? item->duty : "must be so");
    if (item->demanded && item->amended != NULL)
        text_add(&hit, "*");
    if (item->question > 0)
        text_addf(&hit, "%ssee question %zu", hit.length > 0 ? "; " : "", item->question);
    return hit;
}

/* Where a thing must be so, "found no" would be misread: it may be as it must. */
static struct text found_words(const struct finding *finding)
{
    struct text found = TEXT_EMPTY;
    if (!finding->compared || finding->found.kind == VALUE_NONE)
        return found;
    if (finding->found.kind == VALUE_YES_NO && finding->required.kind == VALUE_YES_NO)
        text_add(&found, finding->found.yes == finding->required.yes ? "so" : "not so");
    else
        value_add(&found, &finding->found);
    return found;
}

struct text card_row_plan(const struct card_row *row)
{
    return found_words(row->items->plan);
}

struct text card_row_measured(const struct card_row *row)
{
    return row->items->measured ? found_words(row->items->now) : TEXT_EMPTY;
}

struct text card_row_fault(const struct finding *finding)
{
    struct text fault = found_words(finding), says = TEXT_EMPTY;
    if (fault.length > 0)
        text_addf(&says, "found %s.", text_string(&fault));
    else
        text_add(&says, finding->says == NULL ? "" : finding->says);
    if (finding->mend != NULL)
        text_addf(&says, " Mend: %s", finding->mend);
    says.failed = says.failed || fault.failed;
    text_free(&fault);
    return says;
}

/* A card has room for a few sections; `explain` names them all. */
enum { CITES_MOST = 4 };

/* The citations that differ, each once. */
static size_t distinct(const struct card_item *item, const struct cite *told[], size_t most)
{
    const struct finding cited = {.cites = item->cites, .cite_count = item->cite_count};
    size_t count = 0;
    for (size_t i = 0; i < cited.cite_count; i++) {
        if (story_cited_before(&cited, i, false))
            continue;
        if (count < most)
            told[count] = &cited.cites[i];
        count++;
    }
    return count;
}

static bool same_standing(const struct cite *a, const struct cite *b)
{
    return story_same_text(a->code, b->code) && story_same_text(a->status, b->status);
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
        && story_same_text(cite->status, "invented");
}

/* "R301.2, Table R602.3(1) (memory)", for all told like the one at start;
 * nothing when an earlier one was. */
static void add_standing(struct text *out, const struct cite *const told[], size_t count,
                         size_t start, const struct result *result)
{
    for (size_t i = 0; i < start; i++)
        if (same_standing(told[i], told[start]))
            return;
    const struct cite cite = {short_code(result, told[start]), told[start]->section, NULL, NULL};
    text_add(out, out->length == 0 ? "" : "; ");
    cite_add(out, &cite);
    for (size_t i = start + 1; i < count; i++)
        if (same_standing(told[i], told[start]))
            text_addf(out, ", %s", told[i]->section == NULL ? "" : told[i]->section);
    const char *status = told[start]->status;
    if (!is_said_above(result, told[start]))
        text_addf(out, " (%s)", status == NULL ? "status not stated" : status);
}

/* Is any figure less well known than its text was read? */
static bool any_recalled(const struct card_item *item)
{
    for (size_t i = 0; i < item->cite_count; i++)
        if (item->cites[i].status == NULL || strcmp(item->cites[i].status, "memory") == 0)
            return true;
    return false;
}

struct text card_row_cites(const struct card *card, const struct card_row *row)
{
    const struct cite *told[CITES_MOST];
    struct text cites = TEXT_EMPTY;
    const size_t count = distinct(row->items, told, CITES_MOST);
    const size_t shown = count < CITES_MOST ? count : CITES_MOST;
    for (size_t i = 0; i < shown; i++)
        add_standing(&cites, told, shown, i, &card->now);
    if (count > shown)
        text_addf(&cites, "; %zu more%s", count - shown,
                  any_recalled(row->items) ? ", some from memory" : "");
    return cites;
}

struct text card_signs(const struct card *card)
{
    struct text signs = TEXT_EMPTY;
    const struct result *now = &card->now;
    text_addf(&signs, "* moved by the place. A section alone is of %s", now->edition);
    if (now->own_code != NULL && !story_same_text(now->own_code, now->edition))
        text_addf(&signs, "; local: %s%s", now->own_code, now->invented ? " (invented)" : "");
    text_add(&signs, ".");
    return signs;
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
