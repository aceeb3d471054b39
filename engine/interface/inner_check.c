/* One job through all the steps, and its result in every form. */
#include "interface/inner.h"

#include "ask/asked.h"
#include "check/check.h"
#include "interface/handle.h"
#include "interface/reply.h"
#include "interface/request.h"
#include "job/tree.h"
#include "report/changes.h"
#include "report/report.h"

#include <stdlib.h>

/* Owns all that its reports are made of: it may outlive nothing but the handle it was
 * made by. */
struct eavemark_result {
    eavemark *handle; /* NULL: it names nothing of any */
    struct checked checked;
    cJSON *job;        /* as it was judged: findings name its items by its own texts; or NULL */
    struct arena tree; /* that the job lies in */
    char *problems;    /* written out */
};

static const enum wanted WANTED[] = {
    [EAVEMARK_WANT_ANY] = WANTED_WHOLE,
    [EAVEMARK_WANT_NO_DRAWINGS] = WANTED_FINDINGS,
    [EAVEMARK_WANT_JSON] = WANTED_APPLYING,
    [EAVEMARK_WANT_BRIEF] = WANTED_OUTCOMES,
};

/* A result even of a job that cannot be read: it then holds the problems only. NULL is
 * for memory. */
eavemark_result *inner_check(eavemark *handle, const struct eavemark_request *request)
{
    eavemark_result *result = calloc(1, sizeof(*result));
    if (result == NULL)
        return NULL;
    struct checked *checked = &result->checked;
    const struct overrides overrides = request_overrides(request);
    handle_make_room(handle);
    result->handle = handle;
    /* Before any law is loaded, so that a result which holds problems only is undone in one
     * way. */
    handle->laws.holders++;
    cJSON *job = request_job_into(request, laws_likely(&handle->laws), &result->tree,
                                  &checked->problems);
    checked->result.wanted = WANTED[request->wanted];
    if (job != NULL)
        check_job(&handle->laws, job, &overrides, request->name, checked);
    result->job = job;
    result->problems = reply_problems(&checked->problems);
    if (result->problems == NULL) {
        inner_result_free(result);
        return NULL;
    }
    return result;
}

/* A result that holds nothing but why. */
eavemark_result *inner_refused(const char *why)
{
    eavemark_result *result = calloc(1, sizeof(*result));
    if (result == NULL)
        return NULL;
    problem_at(&result->checked.problems, PROBLEM_JOB, "eavemark", NULL, "%s", why);
    result->problems = reply_problems(&result->checked.problems);
    if (result->problems != NULL)
        return result;
    inner_result_free(result);
    return NULL;
}

enum eavemark_status inner_result_status(const eavemark_result *result, bool strict)
{
    const struct checked *checked = &result->checked;
    /* Not judged: by the job's fault, or a file's. */
    if (!checked->judged) {
        const bool broken = checked->problems.out_of_memory
                            || problems_any(&checked->problems, PROBLEM_RULES);
        return broken ? EAVEMARK_BROKEN : EAVEMARK_UNUSABLE;
    }
    const struct result *found = &checked->result;
    if (found->counts[OUTCOME_BROKEN] > 0)
        return EAVEMARK_BROKEN;
    if (found->counts[OUTCOME_FAIL] > 0
        /* Strict: what is open or not met counts as failed, whatever its severity. */
        || (strict
            && (found->counts[OUTCOME_OPEN] > 0 || found->not_met > 0 || found->disputed > 0)))
        return EAVEMARK_FAILED;
    return EAVEMARK_NOTHING_FAILED;
}

const char *inner_result_problems(const eavemark_result *result)
{
    return result->problems;
}

/* The result with the questions that text and pages put, which nobody else looks at: most
 * results are written as JSON. They stand in an arena of their own, to be freed. False
 * when out of memory. */
static bool with_questions(const eavemark_result *result, struct result *shown)
{
    *shown = result->checked.result;
    shown->arena = (struct arena){0};
    return asked_fill(shown, result->job, result->checked.fields) == 0;
}

/* For people, in one of four ways: page or text, one screen or all. */
static void write_shown(const struct result *result, enum eavemark_form form, unsigned options,
                        struct text *text)
{
    const bool colour = (options & EAVEMARK_COLOUR) != 0, all = (options & EAVEMARK_ALL) != 0;
    if (form == EAVEMARK_HTML && all)
        report_html_all(result, text);
    else if (form == EAVEMARK_HTML)
        report_html(result, text);
    else if (all)
        report_text_all(result, colour, text);
    else
        report_text(result, colour, text);
}

static char *report_shown(const eavemark_result *result, enum eavemark_form form, unsigned options)
{
    struct text text = TEXT_EMPTY;
    struct result shown;
    if (with_questions(result, &shown))
        write_shown(&shown, form, options, &text);
    else
        text.failed = true;
    arena_free(&shown.arena);
    return reply_text(&text);
}

/* The least that must have been wanted of a result for this report. */
static enum wanted shown_by(enum eavemark_form form, unsigned options)
{
    const bool json = form == EAVEMARK_JSON || form == EAVEMARK_JSON_LINE;
    const bool all = (options & EAVEMARK_ALL) != 0;
    if (json)
        return (options & EAVEMARK_BRIEF) != 0 ? WANTED_OUTCOMES
               : all                           ? WANTED_FINDINGS
                                               : WANTED_APPLYING;
    return form == EAVEMARK_HTML && (all || (options & EAVEMARK_DRAWINGS) != 0) ? WANTED_WHOLE
                                                                                : WANTED_FINDINGS;
}

/* Lines of a batch are about as long as those before them. */
static char *report_line(const eavemark_result *result, unsigned options)
{
    struct text text = TEXT_EMPTY;
    size_t *expected = &result->handle->line_length;
    text_expect(&text, *expected + *expected / 4); /* what is not written takes no memory */
    if (options & EAVEMARK_BRIEF)
        report_brief(&result->checked.result, &text);
    else
        report_json(&result->checked.result, false, (options & EAVEMARK_ALL) != 0, &text);
    *expected -= *expected / 16;
    if (text.length > *expected)
        *expected = text.length;
    return reply_text(&text);
}

char *inner_result_report(const eavemark_result *result, enum eavemark_form form, unsigned options)
{
    const struct result *found = &result->checked.result;
    /* Programs get no questions: they have every finding. */
    const bool json = form == EAVEMARK_JSON || form == EAVEMARK_JSON_LINE;
    const bool drawings = form == EAVEMARK_HTML && (options & EAVEMARK_DRAWINGS) != 0;
    if (!result->checked.judged || found->wanted > shown_by(form, options))
        return NULL;
    if (form == EAVEMARK_JSON_LINE)
        return report_line(result, options);
    if (!json && !drawings)
        return report_shown(result, form, options);
    struct text text = TEXT_EMPTY;
    if (drawings)
        report_drawings(found, &text);
    else if (options & EAVEMARK_BRIEF)
        report_brief(found, &text);
    else
        report_json(found, true, (options & EAVEMARK_ALL) != 0, &text);
    return reply_text(&text);
}

char *inner_result_changes(const eavemark_result *before, const eavemark_result *after,
                           unsigned options)
{
    struct text text = TEXT_EMPTY;
    struct result was, now;
    if (!before->checked.judged || !after->checked.judged
        || before->checked.result.wanted > WANTED_FINDINGS
        || after->checked.result.wanted > WANTED_FINDINGS)
        return NULL;
    const bool asked = with_questions(before, &was), asks = with_questions(after, &now);
    if (!asked || !asks)
        text.failed = true;
    /* Of another place, day or stage everything would have changed: the report itself
     * says more. */
    else if (report_is_comparable(&was, &now))
        report_changes_text(&was, &now, (options & EAVEMARK_COLOUR) != 0, &text);
    else
        report_text(&now, (options & EAVEMARK_COLOUR) != 0, &text);
    arena_free(&was.arena);
    arena_free(&now.arena);
    return reply_text(&text);
}

void inner_result_free(eavemark_result *result)
{
    if (result->handle != NULL)
        result->handle->laws.holders--;
    /* Before the job: findings point into its tree. */
    checked_free(&result->checked);
    tree_free(result->job);
    arena_free(&result->tree);
    free(result->problems);
    free(result);
}
