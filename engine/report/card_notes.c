#include "report/card_notes.h"

#include "report/card_questions.h"
#include "report/card_words.h"
#include "report/spans.h"

#include <string.h>

static bool is_unconfirmed(const struct card_thing *thing)
{
    for (size_t i = 0; i < thing->count; i++)
        if (thing->section->items[thing->start + i].unconfirmed)
            return true;
    return false;
}

/* The figure is the place's own: a crew from elsewhere knows another. */
static bool is_moved(const struct card_thing *thing)
{
    for (size_t i = 0; i < thing->count; i++)
        if (thing->section->items[thing->start + i].amended != NULL)
            return true;
    return false;
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
            spans_add(&spans, thing.number);
        moved = moved || is_moved(&thing);
        left += thing.section->kind == CARD_LEFT;
    }
    spans_end(&spans);
    if (left > left_in_front)
        text_addf(&notes, "Left open at earlier stages: %zu%s, on the back. ", left - left_in_front,
                  left_in_front > 0 ? " more" : "");
    if (!card_asks_in_front(card))
        text_addf(&notes, "Questions to answer: %zu, on the back. ", card->question_count);
    if (spans.words.length > 0)
        text_addf(&notes, "Figures not confirmed: %s. ", text_string(&spans.words));
    if (moved)
        text_add(&notes, "* the place's own figure. ");
    if (card->now.doubt_count > 0)
        text_add(&notes, "Whether this book binds here is in doubt: back. ");
    text_add(&notes, "Sections and cautions: back. A pre-check only: the building department "
                     "decides.");
    notes.failed = notes.failed || spans.words.failed;
    text_free(&spans.words);
    return notes;
}

/* What only the department knows -------------------------------------------- */

/* The rules of which only the department knows, one after another; NULL after the last. */
static const struct card_item *next_to_ask(const struct card *card, const struct card_item *last)
{
    for (size_t s = 0; s < card->section_count; s++) {
        const struct card_section *section = &card->sections[s];
        if (section->kind != CARD_PLACE)
            continue;
        for (size_t i = last == NULL ? 0 : (size_t)(last - section->items); i < section->count; i++)
            if (last == NULL || !card_same_rule(&section->items[i], last))
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
        text_add_spaced(out, rule, length);
        text_addf(out, " %zu", count_to_ask(card, rule, length));
    }
}

/* So many stand on the front by name, and so many on the back: of a place of which
 * nothing was read a list of all would be longer than the card. */
enum { FRONT_ASKED_MOST = 5, BACK_ASKED_MOST = 20 };

/* Rules, not findings: a rule of many places is asked for once. */
static size_t all_to_ask(const struct card *card)
{
    return count_to_ask(card, "", 0);
}

bool card_to_ask_in_back(const struct card *card)
{
    const size_t count = all_to_ask(card);
    return count > FRONT_ASKED_MOST && count <= BACK_ASKED_MOST;
}

/* In front by name while they are few, else by topic with a hint to where they stand. */
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
