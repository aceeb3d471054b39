#include "report/card_questions.h"

#include "base/text.h"
#include "report/card_words.h"

enum { FRONT_QUESTIONS_MOST = 5 };

bool card_asks_in_front(const struct card *card)
{
    return card->question_count <= FRONT_QUESTIONS_MOST;
}

/* Names told one after another: of one rule or plane they stand together. */
struct names {
    struct text words;
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
    if (name == NULL || text_same(names->last, name))
        return;
    names->last = name;
    if (++names->count <= names->most)
        text_addf(&names->words, "%s%s", names->words.length > 0 ? "; " : "", name);
}

/* Past the most, names are counted; where none fit, rules are. */
static const char *end_names(struct names *names)
{
    if (names->most == 0 && names->count > 0)
        text_addf(&names->words, names->count == 1 ? "1 rule" : "%zu rules", names->count);
    else if (names->count > names->most)
        text_addf(&names->words, "; %zu more", names->count - names->most);
    return text_string(&names->words);
}

/* Has an item before this one been asked the same of the same thing? */
static bool asked_before(const struct card_section *section, size_t index)
{
    for (size_t i = 0; i < index; i++)
        if (section->items[i].question == section->items[index].question
            && text_same(section->items[i].of, section->items[index].of))
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
        /* In the card's own words where it has some, else as the finding says it. */
        asking->words = item->ask != NULL ? item->ask : item->now->says;
        if (!asked_before(section, i))
            add_name(&asking->of, item->of);
        if (card_item_waits(item))
            add_name(&asking->waiting, card_title_of(item->now));
    }
}

void card_questions(const struct card *card,
                    void (*visit)(void *data, size_t number, const char *says, const char *waiting),
                    void *data)
{
    /* In front there is room to name what waits, on the back only for how much. */
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
        text_free(&asking.of.words);
        text_free(&asking.waiting.words);
    }
}
