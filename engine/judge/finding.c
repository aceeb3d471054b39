#include "judge/finding.h"

#include <string.h>

static const char *const WORDS[OUTCOME_COUNT] = {
    [OUTCOME_PASS] = "pass",
    [OUTCOME_WARN] = "warn",
    [OUTCOME_FAIL] = "fail",
    [OUTCOME_OPEN] = "open",
    [OUTCOME_NOT_APPLICABLE] = "not_applicable",
    [OUTCOME_BROKEN] = "broken",
};

/* index: which bit of finding.why. */
const char *finding_why_word(int index)
{
    static const char *const WHYS[WHY_COUNT] = {"practice", "unconfirmed", "disputed", "advice",
                                                "place"};
    return WHYS[index];
}

const char *ask_word(enum ask ask)
{
    static const char *const ASKS[] = {
        [ASK_NOBODY] = NULL, [ASK_JOB] = "job", [ASK_LATER] = "later", [ASK_PLACE] = "place"};
    return ASKS[ask];
}

const char *outcome_word(enum outcome outcome)
{
    return WORDS[outcome];
}

void finding_blank_brief(struct finding *finding)
{
    memset(finding, 0, offsetof(struct finding, note));
}

void result_free(struct result *result)
{
    if (result == NULL)
        return;
    if (result->borrowers != NULL)
        --*result->borrowers;
    /* A copy: the struct may itself have been handed out by its arena. */
    struct arena arena = result->arena;
    *result = (struct result){0};
    arena_free(&arena);
}
