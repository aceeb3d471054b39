/* Two or more checks side by side. */
#include "interface/inner.h"

#include "check/compare.h"
#include "interface/handle.h"
#include "interface/reply.h"
#include "interface/request.h"
#include "report/compare_report.h"

#include <string.h>

static char *compare_report(const struct comparison *comparison, enum eavemark_form form)
{
    struct text text = TEXT_EMPTY;
    if (reply_is_text(form))
        report_compare_text(comparison, &text);
    else
        report_compare_json(comparison, form == EAVEMARK_JSON, &text);
    return reply_text(&text);
}

/* Each side owns its job: compare_free deletes it. */
static void fill_sides(struct comparison *comparison, const struct eavemark_request *requests)
{
    for (size_t i = 0; i < comparison->side_count; i++) {
        struct side *side = &comparison->sides[i];
        side->file = requests[i].name;
        side->overrides = request_overrides(&requests[i]);
        side->job = request_job(&requests[i], &comparison->problems);
    }
}

/* The worst of all sides. What differs counts as failed only when every side could be
 * judged. */
static enum eavemark_status compare_status(const struct comparison *comparison)
{
    enum eavemark_status status = reply_status(&comparison->problems);
    for (size_t i = 0; i < comparison->side_count; i++) {
        const struct checked *checked = &comparison->sides[i].checked;
        status = reply_worse(status, reply_status(&checked->problems));
        if (checked->result.counts[OUTCOME_BROKEN] > 0)
            status = EAVEMARK_BROKEN;
    }
    if (status == EAVEMARK_NOTHING_FAILED && comparison->differing > 0)
        status = EAVEMARK_FAILED;
    return status;
}

/* Of every side, each line once: one job under many laws has the same slips. */
static char *compare_problems(const struct comparison *comparison)
{
    struct text text = TEXT_EMPTY;
    problems_write(&comparison->problems, &text);
    for (size_t i = 0; i < comparison->side_count; i++) {
        struct text side = TEXT_EMPTY;
        problems_write(&comparison->sides[i].checked.problems, &side);
        /* A side's problems as one piece: they repeat whole or not at all. */
        if (strstr(text_string(&text), text_string(&side)) == NULL)
            text_add(&text, text_string(&side));
        text.failed = text.failed || side.failed;
        text_free(&side);
    }
    return reply_text(&text);
}

enum eavemark_status inner_compare(eavemark *handle, const struct eavemark_request *requests,
                                   size_t count, enum eavemark_form form, char **report,
                                   char **problems)
{
    /* On the stack: their results are freed by compare_free, whatever happened. */
    struct side sides[COMPARE_SIDES_MOST] = {{0}};
    struct comparison comparison = {.sides = sides, .side_count = count};
    /* No side is looked at: `requests` may hold fewer than count. */
    if (count < 2 || count > COMPARE_SIDES_MOST) {
        problem_at_line(&comparison.problems, PROBLEM_JOB, "compare", 0, 0,
                        "two to %d checks are compared, not %zu", COMPARE_SIDES_MOST, count);
        comparison.side_count = 0;
    }
    handle_make_room(handle);
    fill_sides(&comparison, requests);
    /* With a side that cannot be read there is nothing to compare, and the other sides'
     * problems would only hide why. */
    if (comparison.problems.count == 0)
        compare(&handle->laws, &comparison);
    enum eavemark_status status = compare_status(&comparison);
    *report = comparison.compared ? compare_report(&comparison, form) : NULL;
    *problems = compare_problems(&comparison);
    if (*problems == NULL || (comparison.compared && *report == NULL))
        status = reply_drop(report, problems);
    compare_free(&comparison);
    return status;
}
