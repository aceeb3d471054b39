#include "report/card_cites.h"

#include "base/text.h"
#include "report/card_row.h"
#include "report/spans.h"
#include "report/story.h"
#include "report/value_words.h"

#include <stdlib.h>
#include <string.h>

/* A card has room for a few sections; `explain` names them all. */
enum { CITES_MOST = 4 };

static bool same_cite(const struct cite *a, const struct cite *b)
{
    return text_same(a->code, b->code) && text_same(a->section, b->section)
           && a->status == b->status;
}

struct cites {
    const struct cite *kept[CITES_MOST];
    size_t shown, count;
    bool recalled; /* one of those not shown is less well known than its text was read */
};

/* Keeps the first few that differ, and counts the rest. */
static void take_cite(struct cites *cites, const struct cite *cite)
{
    for (size_t i = 0; i < cites->shown; i++)
        if (same_cite(cites->kept[i], cite))
            return;
    if (cites->shown < CITES_MOST)
        cites->kept[cites->shown++] = cite;
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

/* In words ------------------------------------------------------------------ */

/* Of one code, and as well known: then the sections stand in one list. */
static bool same_standing(const struct cite *a, const struct cite *b)
{
    return text_same(a->code, b->code) && a->status == b->status;
}

/* The code as the card's head lets it be said: not at all, or "local". */
static const char *short_code(const struct result *result, const struct cite *cite)
{
    if (cite->section == NULL || cite->section[0] == '\0')
        return cite->code;
    return text_same(cite->code, result->edition)    ? NULL
           : text_same(cite->code, result->own_code) ? "local"
                                                     : cite->code;
}

/* The head of the card says that an invented place's own code is invented. */
static bool is_said_above(const struct result *result, const struct cite *cite)
{
    return result->invented && text_same(cite->code, result->own_code)
           && cite->status == STATUS_INVENTED;
}

/* "R301.2, Table R602.3(1) (memory)", for all kept that stand like the one at start;
 * nothing when an earlier one was. */
static void add_standing(struct text *out, const struct cite *const kept[], size_t count,
                         size_t start, const struct result *result)
{
    for (size_t i = 0; i < start; i++)
        if (same_standing(kept[i], kept[start]))
            return;
    const struct cite cite = {short_code(result, kept[start]), kept[start]->section, STATUS_NONE,
                              NULL};
    text_add(out, out->length == 0 ? "" : "; ");
    value_add_cite(out, &cite);
    for (size_t i = start + 1; i < count; i++)
        if (same_standing(kept[i], kept[start]))
            text_addf(out, ", %s", kept[i]->section == NULL ? "" : kept[i]->section);
    if (!is_said_above(result, kept[start]))
        text_addf(out, " (%s)", value_cite_status(kept[start]));
}

/* All that the thing's items rest on. */
static struct text words_of(const struct card *card, const struct card_thing *thing)
{
    struct text words = TEXT_EMPTY;
    const struct cites cites = cites_of(thing);
    for (size_t i = 0; i < cites.shown; i++)
        add_standing(&words, cites.kept, cites.shown, i, &card->now);
    if (cites.count > cites.shown)
        text_addf(&words, "; %zu more%s", cites.count - cites.shown,
                  cites.recalled ? ", some from memory" : "");
    return words;
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
            spans_add(&spans, i + 1);
        }
    spans_end(&spans);
    visit(data, text_string(&spans.words), words);
    text_free(&spans.words);
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
        cites[thing.number - 1] = words_of(card, &thing);
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

/* Abbreviations that save the back of a card a dozen lines. */
struct text card_signs(const struct card *card)
{
    struct text signs = TEXT_EMPTY;
    const struct result *now = &card->now;
    text_addf(&signs, "A section alone is of %s", now->edition);
    if (now->own_code != NULL && !text_same(now->own_code, now->edition))
        text_addf(&signs, "; local: %s%s", now->own_code, now->invented ? " (invented)" : "");
    text_add(&signs, ". Seen: read in public. Parallel: in a sister text. Memory: recalled. "
                     "Practice: no code.");
    return signs;
}
