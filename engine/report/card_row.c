#include "report/card_row.h"

#include "report/story.h"
#include "report/value.h"

#include <string.h>

/* Questions --------------------------------------------------------------------- */

/* What is open for another reason than that nobody has been up there yet. */
static const char *question_of(const struct card_item *item)
{
    return item->now->outcome == OUTCOME_OPEN && !item->to_measure ? item->now->says : NULL;
}

static bool asked_before(const struct card *card, size_t section, size_t index)
{
    const char *says = question_of(&card->sections[section].items[index]);
    for (size_t s = 0; s <= section; s++) {
        const size_t end = s == section ? index : card->sections[s].count;
        for (size_t i = 0; i < end; i++) {
            const char *other = question_of(&card->sections[s].items[i]);
            if (other != NULL && story_same_text(other, says))
                return true;
        }
    }
    return false;
}

bool card_item_waits(const struct card_item *item)
{
    return question_of(item) != NULL && !item->demanded && item->plan->outcome != OUTCOME_FAIL
        && item->plan->outcome != OUTCOME_BROKEN;
}

bool card_section_waits(const struct card_section *section)
{
    for (size_t i = 0; i < section->count; i++)
        if (!card_item_waits(&section->items[i]))
            return false;
    return true;
}

/* Names each rule once that waits for the answer: its items stand together. */
static void add_waiting(struct text *out, const struct card *card, const char *says)
{
    const char *last = "";
    for (size_t s = 0; s < card->section_count; s++)
        for (size_t i = 0; i < card->sections[s].count; i++) {
            const struct card_item *item = &card->sections[s].items[i];
            const struct finding *now = item->now;
            if (!card_item_waits(item) || !story_same_text(question_of(item), says)
                || strcmp(last, now->rule) == 0)
                continue;
            text_addf(out, "%s%s", out->length > 0 ? "; " : "",
                      now->title == NULL ? now->rule : now->title);
            last = now->rule;
        }
}

void card_questions(const struct card *card,
                    void (*visit)(void *data, size_t number, const char *says,
                                  const char *waiting), void *data)
{
    size_t number = 0;
    for (size_t s = 0; s < card->section_count; s++)
        for (size_t i = 0; i < card->sections[s].count; i++) {
            const char *says = question_of(&card->sections[s].items[i]);
            struct text waiting = TEXT_EMPTY;
            if (says == NULL || asked_before(card, s, i))
                continue;
            add_waiting(&waiting, card, says);
            visit(data, ++number, says, text_string(&waiting));
            text_free(&waiting);
        }
}

struct looking {
    const char *says;
    size_t number;
};

static void look(void *data, size_t number, const char *says, const char *waiting)
{
    struct looking *looking = data;
    (void)waiting;
    if (looking->number == 0 && story_same_text(looking->says, says))
        looking->number = number;
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
        && story_same_text(question_of(a), question_of(b))
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
    struct looking looking = {question_of(item), 0};
    if (looking.says != NULL)
        card_questions(card, look, &looking);
    row.question = looking.number;
    row.to_write = is_to_write(card, item);
    const size_t next = start + row.count;
    row.everywhere = (start == 0 || strcmp(item[-1].now->rule, item->now->rule) != 0)
        && (next == section->count
            || strcmp(section->items[next].now->rule, item->now->rule) != 0);
    if (start > 0 && strcmp(item[-1].now->rule, item->now->rule) == 0) {
        const struct card_row before = row_of(&item[-1]);
        row.again = true;
        row.cited = same_words(card_row_cites(&before), card_row_cites(&row));
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
    struct text hit = TEXT_EMPTY;
    if (item->demanded && item->required.kind == VALUE_SET && item->required.set_count == 1
        && story_same_text(item->sense, "one_of"))
        value_add(&hit, &item->required); /* "one of visit" is no choice */
    else if (item->demanded && item->required.kind != VALUE_YES_NO)
        value_add_demand(&hit, item->sense, &item->required);
    else if (item->demanded)
        text_add(&hit, item->duty != NULL ? item->duty : "must be so");
    if (item->demanded && item->amended != NULL)
        text_add(&hit, " (amended here)");
    if (row->question > 0)
        text_addf(&hit, "%ssee question %zu", hit.length > 0 ? "; " : "", row->question);
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

/* "IRC 2021 R301.2, Table R602.3(1) (memory)", for all told like the one at
 * start; nothing when an earlier one was. */
static void add_standing(struct text *out, const struct cite *const told[], size_t count,
                         size_t start)
{
    for (size_t i = 0; i < start; i++)
        if (same_standing(told[i], told[start]))
            return;
    text_add(out, out->length == 0 ? "" : "; ");
    cite_add(out, told[start]);
    for (size_t i = start + 1; i < count; i++)
        if (same_standing(told[i], told[start]))
            text_addf(out, ", %s", told[i]->section == NULL ? "" : told[i]->section);
    const char *status = told[start]->status;
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

struct text card_row_cites(const struct card_row *row)
{
    const struct cite *told[CITES_MOST];
    struct text cites = TEXT_EMPTY;
    const size_t count = distinct(row->items, told, CITES_MOST);
    const size_t shown = count < CITES_MOST ? count : CITES_MOST;
    for (size_t i = 0; i < shown; i++)
        add_standing(&cites, told, shown, i);
    if (count > shown)
        text_addf(&cites, "; %zu more%s", count - shown,
                  any_recalled(row->items) ? ", some from memory" : "");
    return cites;
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
