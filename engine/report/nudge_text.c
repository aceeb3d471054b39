/* nudge_text.c - which figures no case notices, for people. */
#include "report/nudge_report.h"

#include "report/value.h"
#include "report/wrap.h"

#include <string.h>

static const char *state_says(enum nudge_state state)
{
    static const char *const SAYS[NUDGE_STATE_COUNT] = {
        [NUDGE_NOTICED] = "noticed",
        [NUDGE_PARTLY] = "not noticed",
        [NUDGE_UNNOTICED] = "not noticed",
        [NUDGE_UNASKED] = "no case asks for it",
        [NUDGE_NO_RULE] = "no rule asks for it",
        [NUDGE_PRINTED] = "only printed",
    };
    return SAYS[state];
}

static void add_figure(struct text *out, const struct nudged *nudged)
{
    struct text words = TEXT_EMPTY;
    text_addf(&words, "%s, ", nudged->figure->name);
    value_add_demand(&words, nudged->figure->sense, &nudged->figure->value);
    text_add(&words, " (");
    cite_add(&words, &nudged->figure->cite);
    text_addf(&words, "): %s", state_says(nudged->state));
    for (size_t i = 0; i < nudged->missed.count; i++)
        text_addf(&words, "%s %s", i == 0 ? ":" : ",", nudged->missed.items[i]);
    text_add(out, "  ");
    wrap_add(out, 4, text_string(&words));
    out->failed = out->failed || words.failed;
    text_free(&words);
}

static bool is_bare(enum nudge_state state)
{
    return state == NUDGE_UNNOTICED || state == NUDGE_UNASKED || state == NUDGE_NO_RULE;
}

static void add_list(struct text *out, const struct nudge *nudge, bool bare, const char *heading)
{
    bool any = false;
    for (const struct nudged *n = nudge->first; n != NULL; n = n->next) {
        if (bare ? !is_bare(n->state) : n->state != NUDGE_PARTLY)
            continue;
        if (!any)
            text_add(out, heading);
        any = true;
        add_figure(out, n);
    }
    if (any)
        text_add(out, "\n");
}

static size_t topic_length(const struct nudged *nudged)
{
    return strcspn(nudged->figure->name, ".");
}

/* "layers: 12 figures, 2 not noticed", a line for each topic. */
static void add_topics(struct text *out, const struct nudge *nudge)
{
    for (const struct nudged *n = nudge->first; n != NULL;) {
        const struct nudged *start = n;
        const size_t length = topic_length(n);
        size_t count = 0, bare = 0, partly = 0;
        for (; n != NULL && topic_length(n) == length
               && strncmp(n->figure->name, start->figure->name, length) == 0; n = n->next) {
            count++;
            bare += is_bare(n->state);
            partly += n->state == NUDGE_PARTLY;
        }
        text_addf(out, "%.*s: %zu figure%s, %zu not noticed, %zu in part\n", (int)length,
                  start->figure->name, count, count == 1 ? "" : "s", bare, partly);
    }
}

size_t report_nudge_text(const struct nudge *nudge, struct text *out)
{
    const size_t bare = nudge->counts[NUDGE_UNNOTICED] + nudge->counts[NUDGE_UNASKED]
        + nudge->counts[NUDGE_NO_RULE];
    add_list(out, nudge, true, "Figures that no case notices when they move:\n");
    add_list(out, nudge, false, "Figures of which some steps go unnoticed:\n");
    add_topics(out, nudge);
    text_addf(out, "%zu cases; %zu figures only printed\n", nudge->case_count,
              nudge->counts[NUDGE_PRINTED]);
    text_addf(out, "%zu noticed, %zu in part, %zu not noticed\n", nudge->counts[NUDGE_NOTICED],
              nudge->counts[NUDGE_PARTLY], bare);
    return bare;
}
