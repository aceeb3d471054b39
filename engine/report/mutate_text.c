/* mutate_text.c - which figures no case notices, for people. */
#include "report/mutate_report.h"

#include "report/value_words.h"
#include "report/wrap.h"

#include <string.h>

/* What a proof of mutation found, for a reader who is to write the missing case. */
static const char *state_says(enum mutate_state state)
{
    static const char *const SAYS[MUTATE_STATE_COUNT] = {
        [MUTATE_NOTICED] = "noticed",
        [MUTATE_PARTLY] = "not noticed",
        [MUTATE_UNNOTICED] = "not noticed",
        [MUTATE_UNASKED] = "no case asks for it",
        [MUTATE_NO_RULE] = "no rule asks for it",
        [MUTATE_PRINTED] = "only printed",
    };
    return SAYS[state];
}

/* Which steps went unnoticed: those are the cases to write. */
static void add_figure(struct text *out, const struct mutated *mutated)
{
    struct text words = TEXT_EMPTY;
    text_addf(&words, "%s, ", mutated->figure->name);
    value_add_demand(&words, mutated->figure->sense, &mutated->figure->value);
    text_add(&words, " (");
    value_add_cite(&words, &mutated->figure->cite);
    text_addf(&words, "): %s", state_says(mutated->state));
    for (size_t i = 0; i < mutated->missed.count; i++)
        text_addf(&words, "%s %s", i == 0 ? ":" : ",", mutated->missed.items[i]);
    text_add(out, "  ");
    wrap_add(out, 4, text_string(&words));
    out->failed = out->failed || words.failed;
    text_free(&words);
}

/* No step of it is noticed by any case. */
static bool is_bare(enum mutate_state state)
{
    return state == MUTATE_UNNOTICED || state == MUTATE_UNASKED || state == MUTATE_NO_RULE;
}

/* The heading only when something stands under it. */
static void add_list(struct text *out, const struct mutation *mutation, bool bare,
                     const char *heading)
{
    bool any = false;
    for (const struct mutated *n = mutation->first; n != NULL; n = n->next) {
        if (bare ? !is_bare(n->state) : n->state != MUTATE_PARTLY)
            continue;
        if (!any)
            text_add(out, heading);
        any = true;
        add_figure(out, n);
    }
    if (any)
        text_add(out, "\n");
}

/* "deck.gap_least" is of "deck". */
static size_t topic_length(const struct mutated *mutated)
{
    return strcspn(mutated->figure->name, ".");
}

/* "layers: 12 figures, 2 not noticed", a line for each topic. */
static void add_topics(struct text *out, const struct mutation *mutation)
{
    for (const struct mutated *n = mutation->first; n != NULL;) {
        const struct mutated *start = n;
        const size_t length = topic_length(n);
        size_t count = 0, bare = 0, partly = 0;
        /* The list is sorted by name, so topics stand together. */
        for (; n != NULL && topic_length(n) == length
               && strncmp(n->figure->name, start->figure->name, length) == 0;
             n = n->next) {
            count++;
            bare += is_bare(n->state);
            partly += n->state == MUTATE_PARTLY;
        }
        text_addf(out, "%.*s: %zu figure%s, %zu not noticed, %zu in part\n", (int)length,
                  start->figure->name, count, count == 1 ? "" : "s", bare, partly);
    }
}

/* Only what no case notices at all counts against the rules. */
size_t report_mutate_text(const struct mutation *mutation, struct text *out)
{
    const size_t bare = mutation->counts[MUTATE_UNNOTICED] + mutation->counts[MUTATE_UNASKED]
                        + mutation->counts[MUTATE_NO_RULE];
    add_list(out, mutation, true, "Figures that no case notices when they move:\n");
    add_list(out, mutation, false, "Figures of which some steps go unnoticed:\n");
    add_topics(out, mutation);
    /* A figure that only stands in a sentence moves no outcome, and needs no case. */
    text_addf(out, "%zu cases; %zu figures only printed\n", mutation->case_count,
              mutation->counts[MUTATE_PRINTED]);
    text_addf(out, "%zu noticed, %zu in part, %zu not noticed\n", mutation->counts[MUTATE_NOTICED],
              mutation->counts[MUTATE_PARTLY], bare);
    return bare;
}
