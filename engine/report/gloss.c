#include "report/gloss.h"

enum { ASKED_MOST = 16 /* questions on a screen */ };

static const char *plural(size_t count)
{
    return count == 1 ? "" : "s";
}

/* The head ---------------------------------------------------------------------------------- */

struct text gloss_place(const struct result *result)
{
    struct text place = TEXT_EMPTY;
    text_addf(&place, "%s (%s)", result->jurisdiction_title, result->jurisdiction);
    return place;
}

/* The day decides which edition binds: that of the application, not of the work. */
struct text gloss_book(const struct result *result)
{
    struct text book = TEXT_EMPTY;
    text_addf(&book, "%s, for a permit applied for on %s", result->edition, result->date);
    return book;
}

/* Empty for a place whose pages carry no day. */
struct text gloss_read(const struct result *result)
{
    struct text read = TEXT_EMPTY;
    if (result->as_seen != NULL)
        text_addf(&read, "as the place's page stood on %s; it may have changed", result->as_seen);
    return read;
}

/* Empty when all stages were asked for. */
struct text gloss_stage(const struct result *result)
{
    struct text stage = TEXT_EMPTY;
    if (result->only_stage >= 0 && result->only_stage < STAGE_COUNT)
        text_addf(&stage, "%s: what is looked at then, and what was left undone before",
                  stage_word((enum stage)result->only_stage));
    return stage;
}

/* In the order of the screen; what is rare is left out when there is none. */
struct text gloss_counts(const struct result *result, const struct digest *digest)
{
    struct text counts = TEXT_EMPTY;
    if (digest->broken.findings > 0)
        text_addf(&counts, "%zu broken, ", digest->broken.findings);
    text_addf(&counts, "%zu fail, %zu to look at, ", digest->fix.findings, digest->look.findings);
    text_addf(&counts, "%zu to answer", digest->asked + digest->unasked.findings);
    if (digest->unknown.findings > 0)
        text_addf(&counts, ", %zu not known here", digest->unknown.findings);
    if (digest->later > 0)
        text_addf(&counts, ", %zu later", digest->later);
    text_addf(&counts, ", %zu met, %zu do not apply", digest->met,
              result->counts[OUTCOME_NOT_APPLICABLE]);
    return counts;
}

/* What fails, and what to look at ------------------------------------------------------- */

struct text gloss_broken(const struct digest *digest)
{
    struct text gloss = TEXT_EMPTY;
    text_addf(&gloss, "%zu rule%s erred: what was to be looked at was not judged",
              digest->broken.findings, plural(digest->broken.findings));
    return gloss;
}

/* Findings, and repairs when one repair mends several. */
struct text gloss_fix(const struct digest *digest)
{
    struct text gloss = TEXT_EMPTY;
    text_addf(&gloss, "%zu fail", digest->fix.findings);
    if (digest->fix.count < digest->fix.findings)
        text_addf(&gloss, ", %zu to mend", digest->fix.count);
    return gloss;
}

/* By reason, the worst first; reasons that there are not are left out. */
struct text gloss_look(const struct digest *digest)
{
    static const char *const WORDS[LOOK_COUNT] = {
        [LOOK_NOT_MET] = "not met that no code demands",
        [LOOK_DISPUTED] = "met on one reading only",
        [LOOK_REMARK] = "met, with a remark",
    };
    struct text gloss = TEXT_EMPTY;
    for (int i = 0; i < LOOK_COUNT; i++)
        if (digest->look.ranked[i] > 0)
            text_addf(&gloss, "%s%zu %s", gloss.length > 0 ? ", " : "", digest->look.ranked[i],
                      WORDS[i]);
    return gloss;
}

/* What is open ---------------------------------------------------------------------------- */

bool gloss_is_shown(const struct result *result, size_t index)
{
    /* Questions that decide most are shown; of those alike, the earlier. */
    size_t before = 0;
    for (size_t i = 0; i < result->asked_count; i++)
        before += result->asked[i].decides > result->asked[index].decides
                  || (result->asked[i].decides == result->asked[index].decides && i < index);
    return before < ASKED_MOST;
}

struct text gloss_not_shown(const struct result *result)
{
    struct text gloss = TEXT_EMPTY;
    size_t questions = 0, findings = 0;
    for (size_t i = 0; i < result->asked_count; i++)
        if (!gloss_is_shown(result, i))
            questions++, findings += result->asked[i].decides;
    if (questions > 0)
        text_addf(&gloss, "and %zu more, which decide %zu: eavemark new --fill JOB asks them",
                  questions, findings);
    return gloss;
}

/* Without questions there is still what cannot be told from the job. */
struct text gloss_answer(const struct result *result, const struct digest *digest)
{
    struct text gloss = TEXT_EMPTY;
    const size_t questions = result->asked_count, unasked = digest->unasked.findings;
    if (questions > 0)
        text_addf(&gloss, "%zu question%s decide%s %zu finding%s; in brackets, how many each",
                  questions, plural(questions), questions == 1 ? "s" : "", digest->asked,
                  plural(digest->asked));
    else
        text_addf(&gloss, "%zu finding%s", unasked, plural(unasked));
    return gloss;
}

struct text gloss_unknown(const struct digest *digest)
{
    struct text gloss = TEXT_EMPTY;
    text_addf(&gloss, "%zu: ask the building department", digest->unknown.findings);
    return gloss;
}

struct text gloss_later(const struct digest *digest)
{
    struct text gloss = TEXT_EMPTY;
    text_addf(&gloss, "%zu that only a later stage can tell", digest->later);
    const char *lead = ": ";
    for (int i = 0; i < STAGE_COUNT; i++) {
        if (digest->later_by_stage[i] == 0)
            continue;
        text_addf(&gloss, "%s%zu at the %s", lead, digest->later_by_stage[i],
                  stage_word((enum stage)i));
        lead = ", ";
    }
    return gloss;
}

/* What is met -------------------------------------------------------------------------------- */

/* What was not measured is met on paper only: a reader must not take it for a look at the
 * roof. */
struct text gloss_met(const struct digest *digest)
{
    struct text gloss = TEXT_EMPTY;
    text_addf(&gloss, "%zu, by topic", digest->met);
    if (digest->met_unconfirmed > 0)
        text_addf(&gloss, ". In brackets, %zu in all: met on a figure to be confirmed.",
                  digest->met_unconfirmed);
    if (digest->met_unmeasured > 0)
        text_addf(&gloss,
                  "%s %zu by what the job says alone, nothing was measured: look before "
                  "the inspector does.",
                  digest->met_unconfirmed > 0 ? "" : ".", digest->met_unmeasured);
    return gloss;
}

struct text gloss_confirm(const struct digest *digest)
{
    struct text gloss = TEXT_EMPTY;
    text_addf(&gloss, "%zu figure%s that what is met rests on, not read in this book",
              digest->confirm_count, plural(digest->confirm_count));
    return gloss;
}
