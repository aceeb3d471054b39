#include "include/inner.h"

#include "base/date.h"
#include "base/text.h"
#include "base/utf8.h"
#include "ask/asked.h"
#include "ask/card.h"
#include "check/check.h"
#include "check/compare.h"
#include "prove/county.h"
#include "prove/explain.h"
#include "prove/figure_table.h"
#include "ask/interview.h"
#include "ask/shop_house.h"
#include "prove/mutate.h"
#include "prove/proof.h"
#include "prove/trial.h"
#include "job/json.h"
#include "job/like.h"
#include "job/schema.h"
#include "job/write.h"
#include "report/card_report.h"
#include "report/changes.h"
#include "report/compare_report.h"
#include "report/county_report.h"
#include "report/explain_report.h"
#include "report/figure_table_report.h"
#include "report/mutate_report.h"
#include "report/place_list_report.h"
#include "report/proof_report.h"
#include "report/question_report.h"
#include "report/report.h"
#include "report/trial_report.h"

#include <stdlib.h>
#include <string.h>

/* Laws that a handle keeps: a batch under many places and days goes on with those of the
 * last. Each takes 7 MB, but a county's rules may make it take twenty times that. */
enum { LAWS_MOST = 64, LAWS_BYTES_MOST = 256 * 1024 * 1024 };

/* A handle: the home and the laws loaded from it so far. */
struct eavemark {
    char *home;
    struct laws laws;
};

/* Owns all that its reports are made of: it may outlive nothing but the handle it was
 * made by. */
struct eavemark_result {
    eavemark *handle; /* NULL: it names nothing of any */
    struct checked checked;
    cJSON *job;     /* as it was judged: findings name its items by its own texts; or NULL */
    char *problems; /* written out */
};

eavemark *inner_open(const char *home)
{
    eavemark *handle = calloc(1, sizeof(*handle));
    if (handle == NULL)
        return NULL;
    const size_t size = strlen(home) + 1;
    handle->home = malloc(size);
    if (handle->home == NULL) {
        free(handle);
        return NULL;
    }
    memcpy(handle->home, home, size);
    handle->laws.home = handle->home;
    return handle;
}

/* The laws point into the home's name: it goes last. */
void inner_close(eavemark *handle)
{
    laws_free(&handle->laws);
    free(handle->home);
    free(handle);
}

/* Hands over the text's memory; NULL when it could not be built. */
static char *text_release(struct text *text)
{
    if (text->bytes == NULL)
        text_add(text, "");
    char *bytes = text->failed ? NULL : text->bytes;
    if (bytes == NULL)
        text_free(text);
    return bytes;
}

/* What a request says over the job's own words, and where its shop sheet is to be had. */
static struct overrides overrides_of(const struct eavemark_request *request)
{
    return (struct overrides){
        .jurisdiction = request->jurisdiction,
        .date = request->date,
        .stage = request->stage,
        .shop = {request->shop_name, request->shop, request->shop_length, request->shop_folder,
                 request->text == NULL ? request->name : NULL},
    };
}

static char *problems_text(const struct problems *problems)
{
    struct text text = TEXT_EMPTY;
    problems_write(problems, &text);
    return text_release(&text);
}

size_t inner_law_count(const eavemark *handle)
{
    size_t bytes;
    return laws_count(&handle->laws, &bytes);
}

/* Begins with no law again when they are many or large and nobody holds any. */
static void let_laws_go(eavemark *handle)
{
    size_t bytes;
    const size_t count = laws_count(&handle->laws, &bytes);
    if (handle->laws.holders == 0 && (count >= LAWS_MOST || bytes >= LAWS_BYTES_MOST))
        laws_free(&handle->laws);
}

/* A result even of a job that cannot be read: it then holds the problems only. NULL is
 * for memory. */
eavemark_result *inner_check(eavemark *handle, const struct eavemark_request *request)
{
    eavemark_result *result = calloc(1, sizeof(*result));
    if (result == NULL)
        return NULL;
    struct checked *checked = &result->checked;
    const struct overrides overrides = overrides_of(request);
    cJSON *job = NULL;
    let_laws_go(handle);
    result->handle = handle;
    handle->laws.holders++;
    if (request->text == NULL)
        json_read_file(&job, request->name, &checked->problems);
    else
        json_read(&job, request->text, request->length, request->name, &checked->problems);
    if (job != NULL)
        check_job(&handle->laws, job, &overrides, request->name, checked);
    result->job = job;
    result->problems = problems_text(&checked->problems);
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
    result->problems = problems_text(&result->checked.problems);
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
    return text_release(&text);
}

char *inner_result_report(const eavemark_result *result, enum eavemark_form form, unsigned options)
{
    const struct result *found = &result->checked.result;
    const bool json = form == EAVEMARK_JSON || form == EAVEMARK_JSON_LINE;
    const bool drawings = form == EAVEMARK_HTML && (options & EAVEMARK_DRAWINGS) != 0;
    if (!result->checked.judged)
        return NULL;
    if (!json && !drawings)
        return report_shown(result, form, options);
    struct text text = TEXT_EMPTY;
    if (drawings)
        report_drawings(found, &text);
    else if (options & EAVEMARK_BRIEF)
        report_brief(found, &text);
    else
        report_json(found, form == EAVEMARK_JSON, (options & EAVEMARK_ALL) != 0, &text);
    return text_release(&text);
}

char *inner_result_changes(const eavemark_result *before, const eavemark_result *after,
                           unsigned options)
{
    struct text text = TEXT_EMPTY;
    struct result was, now;
    if (!before->checked.judged || !after->checked.judged)
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
    return text_release(&text);
}

void inner_result_free(eavemark_result *result)
{
    if (result->handle != NULL)
        result->handle->laws.holders--;
    checked_free(&result->checked);
    cJSON_Delete(result->job);
    free(result->problems);
    free(result);
}

/* Says what was passed over in silence for want of memory. */
static void say_if_out_of_memory(eavemark *handle, struct problems *problems)
{
    if (handle->laws.out_of_memory)
        problem_out_of_memory(problems);
    handle->laws.out_of_memory = false;
}

/* Out of memory halfway: neither text is given, so that half an answer is never
 * taken for a whole one. */
static enum eavemark_status drop_both_texts(char **report, char **problems)
{
    free(*report);
    free(*problems);
    *report = *problems = NULL;
    return EAVEMARK_BROKEN;
}

/* The worse of the two kinds decides; out of memory is nobody's fault but ours. */
static enum eavemark_status problems_status(const struct problems *problems)
{
    if (problems->out_of_memory || problems_any(problems, PROBLEM_RULES))
        return EAVEMARK_BROKEN;
    return problems->count > 0 ? EAVEMARK_UNUSABLE : EAVEMARK_NOTHING_FAILED;
}

/* What has no page of its own is given as text. */
static bool is_text(enum eavemark_form form)
{
    return form == EAVEMARK_TEXT || form == EAVEMARK_HTML;
}

/* The order alone, or with the sums under it. */
static char *takeoff_report(const struct takeoff *takeoff, enum eavemark_form form, bool sums)
{
    struct text text = TEXT_EMPTY;
    switch (form) {
    case EAVEMARK_TEXT:
    case EAVEMARK_HTML:
        if (sums)
            report_takeoff_text(takeoff, &text);
        else
            report_order_text(takeoff, &text);
        break;
    case EAVEMARK_CSV:
        report_order_csv(takeoff, &text);
        break;
    case EAVEMARK_JSON:
    case EAVEMARK_JSON_LINE:
        report_takeoff_json(takeoff, form == EAVEMARK_JSON, &text);
        break;
    }
    return text_release(&text);
}

/* Nothing that the takeoff gives points into the job, which need not outlive it. */
static enum eavemark_status reckon_request(eavemark *handle, const struct eavemark_request *request,
                                           enum eavemark_form form, bool sums, char **report,
                                           char **problems)
{
    struct checked_takeoff checked = {0};
    struct overrides overrides = overrides_of(request);
    cJSON *job = NULL;
    overrides.stage = NULL; /* all is reckoned, whatever has been looked at */
    if (request->text == NULL)
        json_read_file(&job, request->name, &checked.problems);
    else
        json_read(&job, request->text, request->length, request->name, &checked.problems);
    if (job != NULL)
        check_takeoff(&handle->laws, job, &overrides, request->name, &checked);
    cJSON_Delete(job);
    enum eavemark_status status = problems_status(&checked.problems);
    *report = checked.reckoned ? takeoff_report(&checked.takeoff, form, sums) : NULL;
    *problems = problems_text(&checked.problems);
    /* There is a report all the same: the other quantities hold. */
    if (checked.takeoff.head.counts[OUTCOME_BROKEN] > 0)
        status = EAVEMARK_BROKEN;
    if (*problems == NULL || (checked.reckoned && *report == NULL))
        status = drop_both_texts(report, problems);
    checked_takeoff_free(&checked);
    return status;
}

enum eavemark_status inner_takeoff(eavemark *handle, const struct eavemark_request *request,
                                   enum eavemark_form form, char **report, char **problems)
{
    return reckon_request(handle, request, form, true, report, problems);
}

enum eavemark_status inner_order(eavemark *handle, const struct eavemark_request *request,
                                 enum eavemark_form form, char **report, char **problems)
{
    return reckon_request(handle, request, form, false, report, problems);
}

/* The job as text or from its file; NULL with problems. */
static cJSON *read_request(const struct eavemark_request *request, struct problems *problems)
{
    cJSON *job = NULL;
    if (request->text != NULL)
        json_read(&job, request->text, request->length, request->name, problems);
    else
        json_read_file(&job, request->name, problems);
    return job;
}

/* The names of stages are checked here: a card of no stage makes no sense. */
static cJSON *read_card_job(const struct eavemark_request *request, struct problems *problems)
{
    if (request->stage == NULL) {
        problem_at(problems, PROBLEM_JOB, "--stage", NULL,
                   "a card needs one of permit, deck, dry-in, final");
        return NULL;
    }
    return read_request(request, problems);
}

/* A card for a terminal or for paper; there is none in JSON. */
static char *card_report(const struct card *card, enum eavemark_form form)
{
    struct text text = TEXT_EMPTY;
    if (form == EAVEMARK_HTML)
        report_card_html(card, &text);
    else
        report_card_text(card, &text);
    return text_release(&text);
}

enum eavemark_status inner_card(eavemark *handle, const struct eavemark_request *request,
                                enum eavemark_form form, char **report, char **problems)
{
    struct checked_card checked = {0};
    const struct overrides overrides = overrides_of(request);
    cJSON *job = read_card_job(request, &checked.problems);
    if (job != NULL)
        card_of_job(&handle->laws, job, &overrides, request->name, &checked);
    enum eavemark_status status = problems_status(&checked.problems);
    *report = checked.made ? card_report(&checked.card, form) : NULL;
    *problems = problems_text(&checked.problems);
    if (card_broken(&checked.card) || *problems == NULL || (checked.made && *report == NULL))
        status = EAVEMARK_BROKEN;
    card_checked_free(&checked);
    cJSON_Delete(job);
    return status;
}

/* The fields of a place on a day, or the bare catalogue of all. */
static const struct law *catalogue(eavemark *handle, const char *jurisdiction, const char *day,
                                   struct problems *problems)
{
    if (jurisdiction == NULL)
        return laws_fields(&handle->laws, problems);
    const long date = day == NULL ? 0 : date_parse(day);
    if (date == 0) {
        problem_at(problems, PROBLEM_JOB, "--date", NULL,
                   "a date (YYYY-MM-DD) is needed with --jurisdiction");
        return NULL;
    }
    return laws_find(&handle->laws, jurisdiction, date, "--jurisdiction", problems);
}

enum eavemark_status inner_fields(eavemark *handle, const char *topic, bool schema,
                                  const char *jurisdiction, const char *date, char **text)
{
    struct problems problems = {0};
    struct text out = TEXT_EMPTY;
    const struct law *law = catalogue(handle, jurisdiction, date, &problems);
    /* Of either writer: under zero for out of memory, over zero for an unknown topic. */
    int done = 0;
    if (law != NULL)
        done = schema ? schema_of_fields(&law->book->fields, &out)
                      : listing_of_fields(&law->book->fields, topic, &out);
    if (done < 0)
        problem_out_of_memory(&problems);
    if (done > 0)
        problem_at(&problems, PROBLEM_JOB, "fields", NULL, "there is no topic \"%s\"", topic);
    const enum eavemark_status status = problems_status(&problems);
    if (status != EAVEMARK_NOTHING_FAILED) {
        text_free(&out);
        problems_write(&problems, &out);
    }
    problems_free(&problems);
    *text = text_release(&out);
    return *text == NULL ? EAVEMARK_BROKEN : status;
}

/* What is wrong in both lists. NULL when out of memory. */
static char *both_problems(const struct problems *first, const struct problems *second)
{
    struct text text = TEXT_EMPTY;
    problems_write(first, &text);
    problems_write(second, &text);
    return text_release(&text);
}

/* The statuses are numbered by how bad they are. */
static enum eavemark_status worse(enum eavemark_status a, enum eavemark_status b)
{
    return a > b ? a : b;
}

static char *explain_report(const struct explanation *explanation, enum eavemark_form form)
{
    struct text text = TEXT_EMPTY;
    if (is_text(form))
        report_explain_text(explanation, &text);
    else
        report_explain_json(explanation, form == EAVEMARK_JSON, &text);
    return text_release(&text);
}

/* The day asked for, 0 for none or one that is not a day (a problem). */
static long asked_day(const struct eavemark_request *request, struct problems *problems)
{
    const long date = request->date == NULL ? 0 : date_parse(request->date);
    if (request->date != NULL && date == 0)
        problem_at(problems, PROBLEM_JOB, "--date", NULL, "\"%s\" is not a date (YYYY-MM-DD)",
                   request->date);
    return date;
}

enum eavemark_status inner_explain(eavemark *handle, const char *name,
                                   const struct eavemark_request *request, enum eavemark_form form,
                                   char **report, char **problems)
{
    struct explanation explanation = {0};
    /* The place is given twice: for the rule as such, and for the job held against it. */
    struct explain_request asked = {.name = name,
                                    .jurisdiction = request->jurisdiction,
                                    .job_file = request->name,
                                    .overrides = overrides_of(request)};
    asked.date = asked_day(request, &explanation.problems);
    /* With a job, its own place and day are meant unless the request names others. */
    if (explanation.problems.count == 0 && (request->name != NULL || request->text != NULL))
        asked.job = read_request(request, &explanation.problems);
    if (explanation.problems.count == 0)
        explain(&handle->laws, &asked, &explanation);
    say_if_out_of_memory(handle, &explanation.problems);
    enum eavemark_status status = worse(problems_status(&explanation.problems),
                                        problems_status(&explanation.checked.problems));
    *report = status == EAVEMARK_NOTHING_FAILED ? explain_report(&explanation, form) : NULL;
    *problems = both_problems(&explanation.problems, &explanation.checked.problems);
    if (*problems == NULL || (status == EAVEMARK_NOTHING_FAILED && *report == NULL))
        status = drop_both_texts(report, problems);
    explain_free(&explanation);
    laws_rest_any(&handle->laws);
    cJSON_Delete(asked.job);
    return status;
}

static char *figures_report(const struct figure_table *table, enum eavemark_form form)
{
    struct text text = TEXT_EMPTY;
    if (is_text(form))
        report_figure_table_text(table, &text);
    else
        report_figure_table_json(table, form == EAVEMARK_JSON, &text);
    return text_release(&text);
}

enum eavemark_status inner_figures(eavemark *handle, const char *topic, const char *status,
                                   const struct eavemark_request *request, enum eavemark_form form,
                                   char **report, char **problems)
{
    /* No request is one that asks for nothing in particular. */
    const struct eavemark_request none = {0};
    struct figure_table table = {0};
    request = request == NULL ? &none : request;
    struct figure_table_request asked = {
        /* status_of gives none both for no word and for an unknown one: told apart below. */
        .topic = topic,
        .status = status_of(status),
        .jurisdiction = request->jurisdiction};
    asked.date = asked_day(request, &table.problems);
    if (status != NULL && asked.status == STATUS_NONE)
        problem_at(&table.problems, PROBLEM_JOB, "--status", NULL,
                   "\"%s\" is not one of seen, parallel, memory, practice, invented", status);
    if (table.problems.count == 0)
        figure_table_make(&handle->laws, &asked, &table);
    say_if_out_of_memory(handle, &table.problems);
    enum eavemark_status answer = problems_status(&table.problems);
    *report = answer == EAVEMARK_NOTHING_FAILED ? figures_report(&table, form) : NULL;
    *problems = problems_text(&table.problems);
    if (*problems == NULL || (answer == EAVEMARK_NOTHING_FAILED && *report == NULL))
        answer = drop_both_texts(report, problems);
    figure_table_free(&table);
    return answer;
}

static char *compare_report(const struct comparison *comparison, enum eavemark_form form)
{
    struct text text = TEXT_EMPTY;
    if (is_text(form))
        report_compare_text(comparison, &text);
    else
        report_compare_json(comparison, form == EAVEMARK_JSON, &text);
    return text_release(&text);
}

/* Each side owns its job: compare_free deletes it. */
static void fill_sides(struct comparison *comparison, const struct eavemark_request *requests)
{
    for (size_t i = 0; i < comparison->side_count; i++) {
        struct side *side = &comparison->sides[i];
        side->file = requests[i].name;
        side->overrides = overrides_of(&requests[i]);
        side->job = read_request(&requests[i], &comparison->problems);
    }
}

/* What differs counts as failed only when every side could be judged. */
static enum eavemark_status compare_status(const struct comparison *comparison)
{
    enum eavemark_status status = problems_status(&comparison->problems);
    for (size_t i = 0; i < comparison->side_count; i++) {
        const struct checked *checked = &comparison->sides[i].checked;
        status = worse(status, problems_status(&checked->problems));
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
    return text_release(&text);
}

enum eavemark_status inner_compare(eavemark *handle, const struct eavemark_request *requests,
                                   size_t count, enum eavemark_form form, char **report,
                                   char **problems)
{
    struct side sides[COMPARE_SIDES_MOST] = {{0}};
    struct comparison comparison = {.sides = sides, .side_count = count};
    /* No side is looked at: `requests` may hold fewer than count. */
    if (count < 2 || count > COMPARE_SIDES_MOST) {
        problem_at_line(&comparison.problems, PROBLEM_JOB, "compare", 0, 0,
                        "two to %d checks are compared, not %zu", COMPARE_SIDES_MOST, count);
        comparison.side_count = 0;
    }
    fill_sides(&comparison, requests);
    /* With a side that cannot be read there is nothing to compare, and the other sides'
     * problems would only hide why. */
    if (comparison.problems.count == 0)
        compare(&handle->laws, &comparison);
    enum eavemark_status status = compare_status(&comparison);
    *report = comparison.compared ? compare_report(&comparison, form) : NULL;
    *problems = compare_problems(&comparison);
    if (*problems == NULL || (comparison.compared && *report == NULL))
        status = drop_both_texts(report, problems);
    compare_free(&comparison);
    return status;
}

enum eavemark_status inner_places(eavemark *handle, const char *words, enum eavemark_form form,
                                  char **report, char **problems)
{
    struct place_list list;
    struct problems said = {0};
    struct text out = TEXT_EMPTY;
    size_t found = 0;
    if (words == NULL)
        words = "";
    if (place_list_make(&handle->laws.cache, handle->laws.home, &list) != 0)
        problem_out_of_memory(&said);
    else if (form == EAVEMARK_TEXT)
        found = report_place_list_text(&list, words, &out);
    else
        found = report_place_list_json(&list, words, form == EAVEMARK_JSON, &out);
    const char *near = found == 0 && !said.out_of_memory ? place_list_near(&list, words) : NULL;
    if (found == 0 && !said.out_of_memory)
        problem_at(&said, PROBLEM_JOB, "places", NULL, "no place fits \"%s\"%s%s%s", words,
                   near == NULL ? "" : "; did you mean ", near == NULL ? "" : near,
                   near == NULL ? "" : "?");
    for (size_t i = 0; i < list.skipped.count; i++)
        problem_at(&said, PROBLEM_RULES, "places", NULL,
                   "%s is left out: its file does not load (eavemark proof %s says why)",
                   list.skipped.items[i], list.skipped.items[i]);
    if (out.failed)
        problem_out_of_memory(&said);
    say_if_out_of_memory(handle, &said);
    enum eavemark_status answer = problems_status(&said);
    *report = NULL;
    if (found > 0 && !said.out_of_memory)
        *report = text_release(&out);
    else
        text_free(&out);
    *problems = problems_text(&said);
    if (*problems == NULL || (found > 0 && *report == NULL))
        answer = drop_both_texts(report, problems);
    place_list_free(&list);
    problems_free(&said);
    return answer;
}

enum eavemark_status inner_list(eavemark *handle, enum eavemark_names names, char **text)
{
    /* The header's numbers are the interface's and stay; those of the prove room may
     * move. */
    static const enum names_kind KINDS[] = {
        [EAVEMARK_RULES] = NAMES_RULES,   [EAVEMARK_FIGURES] = NAMES_FIGURES,
        [EAVEMARK_TOPICS] = NAMES_TOPICS, [EAVEMARK_JURISDICTIONS] = NAMES_PLACES,
        [EAVEMARK_PARTS] = NAMES_PARTS,
    };
    struct arena arena = {0};
    struct strings list = {0};
    struct problems problems = {0};
    struct text out = TEXT_EMPTY;
    explain_names(&handle->laws, KINDS[names], &list, &arena, &problems);
    say_if_out_of_memory(handle, &problems);
    /* A line each, for completion and scripts. What is wrong stands in their place. */
    for (size_t i = 0; i < list.count; i++)
        text_addf(&out, "%s\n", list.items[i]);
    const enum eavemark_status status = problems_status(&problems);
    if (status != EAVEMARK_NOTHING_FAILED) {
        text_free(&out);
        problems_write(&problems, &out);
    }
    problems_free(&problems);
    arena_free(&arena);
    *text = text_release(&out);
    return *text == NULL ? EAVEMARK_BROKEN : status;
}

/* The day a text names; 0 for none, or for one that is none (a problem). */
static long proof_day(const char *date, struct problems *problems)
{
    const long day = date == NULL ? 0 : date_parse(date);
    if (date != NULL && day == 0)
        problem_at(problems, PROBLEM_JOB, "--date", NULL, "\"%s\" is not a date (YYYY-MM-DD)",
                   date);
    return day;
}

/* Over all places: a broken file is worse than an error in one, and that than none. */
static enum eavemark_status proof_status(const struct proof *proof)
{
    enum eavemark_status status = problems_status(&proof->problems);
    if (proof->cases.failed > 0)
        status = worse(status, EAVEMARK_FAILED);
    for (const struct place_proof *place = proof->places; place != NULL; place = place->next)
        status = worse(status, place->broken       ? EAVEMARK_BROKEN
                               : place->errors > 0 ? EAVEMARK_FAILED
                                                   : EAVEMARK_NOTHING_FAILED);
    return status;
}

enum eavemark_status inner_proof(eavemark *handle, const char *name, const char *date,
                                 const char *beside, enum eavemark_form form, char **report,
                                 char **problems)
{
    struct proof proof = {.beside = beside};
    struct text out = TEXT_EMPTY;
    const long day = proof_day(date, &proof.problems);
    if (proof.problems.count == 0)
        proof_run(&handle->laws, name, day, &proof);
    say_if_out_of_memory(handle, &proof.problems);
    enum eavemark_status status = proof_status(&proof);
    *report = NULL;
    /* What failed has a report, which says what failed; only a request that makes no
     * sense has none. */
    if (status != EAVEMARK_UNUSABLE && is_text(form))
        report_proof_text(&proof, &out);
    else if (status != EAVEMARK_UNUSABLE)
        report_proof_json(&proof, form == EAVEMARK_JSON, &out);
    if (status != EAVEMARK_UNUSABLE)
        *report = text_release(&out);
    *problems = problems_text(&proof.problems);
    if (*problems == NULL || (status != EAVEMARK_UNUSABLE && *report == NULL))
        status = drop_both_texts(report, problems);
    proof_free(&proof);
    return status;
}

enum eavemark_status inner_mutate(eavemark *handle, const char *topic, char **report,
                                  char **problems)
{
    struct mutation mutation = {0};
    struct text out = TEXT_EMPTY;
    mutate_run(&handle->laws, topic, &mutation);
    say_if_out_of_memory(handle, &mutation.problems);
    enum eavemark_status status = problems_status(&mutation.problems);
    *report = NULL;
    /* Nothing but the report can still go wrong. */
    if (status == EAVEMARK_NOTHING_FAILED) {
        if (report_mutate_text(&mutation, &out) > 0)
            status = EAVEMARK_FAILED;
        *report = text_release(&out);
    }
    *problems = problems_text(&mutation.problems);
    if (*problems == NULL || (status <= EAVEMARK_FAILED && *report == NULL))
        status = drop_both_texts(report, problems);
    mutate_free(&mutation);
    return status;
}

/* Both texts whole before either is written. */
static void write_county(struct laws *laws, const struct county_start *start,
                         struct problems *problems)
{
    struct text profile = TEXT_EMPTY, cases = TEXT_EMPTY;
    county_text_profile(start, &profile);
    county_text_cases(start, &cases);
    if (profile.failed || cases.failed)
        problem_out_of_memory(problems);
    else
        county_write(start, laws, profile.bytes, cases.bytes, problems);
    text_free(&profile);
    text_free(&cases);
}

/* Trials ------------------------------------------------------------------------------ */

struct eavemark_trial {
    struct trial counts;
    struct eavemark_law laws[2]; /* handle NULL: only merging */
    char *words[6];              /* what the laws point to */
};

/* A copy of words that the trial keeps as number `at`; NULL of NULL. */
static const char *keep_words(eavemark_trial *trial, int at, const char *words, bool *failed)
{
    if (words == NULL)
        return NULL;
    trial->words[at] = strdup(words);
    *failed = *failed || trial->words[at] == NULL;
    return trial->words[at];
}

/* Is there such a place, and on this day if one is given? */
static void look_for_law(const struct eavemark_law *asked, struct problems *problems)
{
    struct laws *laws = &asked->handle->laws;
    struct arena arena = {0};
    struct sources sources = {0};
    long date = 0;
    if (asked->date == NULL)
        place_cache_get(&laws->cache, laws->home, asked->jurisdiction, &arena, &sources, problems);
    else if ((date = date_parse(asked->date)) == 0)
        problem_at_line(problems, PROBLEM_JOB, "trial", 0, 0, "\"%s\" is no day (YYYY-MM-DD)",
                        asked->date);
    else
        laws_find(laws, asked->jurisdiction, date, "trial", problems);
    arena_free(&arena);
}

static bool take_law(eavemark_trial *trial, int side, const struct eavemark_law *asked)
{
    bool failed = false;
    trial->laws[side] = (struct eavemark_law){
        .handle = asked->handle,
        .jurisdiction = keep_words(trial, side * 3, asked->jurisdiction, &failed),
        .date = keep_words(trial, side * 3 + 1, asked->date, &failed),
        .called = keep_words(trial, side * 3 + 2,
                             asked->called == NULL ? asked->jurisdiction : asked->called, &failed),
    };
    return !failed;
}

eavemark_trial *inner_trial_open(const struct eavemark_law *before,
                                 const struct eavemark_law *after, char **problems)
{
    struct problems said = {0};
    eavemark_trial *trial = calloc(1, sizeof(*trial));
    const bool both = before != NULL && after != NULL;
    bool whole = trial != NULL;
    if (whole && both) {
        look_for_law(before, &said);
        look_for_law(after, &said);
        whole = said.count == 0 && take_law(trial, 0, before) && take_law(trial, 1, after);
    }
    if (whole)
        trial_begin(&trial->counts, both ? trial->laws[0].called : NULL,
                    both ? trial->laws[1].called : NULL);
    whole = whole && !trial->counts.arena.failed && !said.out_of_memory;
    *problems = whole || said.count > 0 ? problems_text(&said) : NULL;
    problems_free(&said);
    if (whole && *problems != NULL)
        return trial;
    inner_trial_close(trial);
    return NULL;
}

/* The tree is changed by judging: each law gets one of its own. */
static void judge_under(const struct eavemark_law *law, const struct eavemark_request *request,
                        cJSON *job, struct checked *checked, struct trial_judged *judged)
{
    struct eavemark_request asked = *request;
    asked.jurisdiction = law->jurisdiction;
    asked.date = law->date;
    const struct overrides overrides = overrides_of(&asked);
    check_job(&law->handle->laws, job, &overrides, request->name, checked);
    judged->checked = checked;
    if (checked->judged) /* this only finds it again */
        judged->law = laws_find(&law->handle->laws, checked->result.jurisdiction,
                                date_parse(checked->result.date), request->name,
                                &checked->problems);
}

static const char *title_of(const cJSON *job, const char *otherwise)
{
    const char *title = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(job, "job"));
    return title == NULL ? otherwise : title;
}

enum eavemark_status inner_trial_job(eavemark_trial *trial, const struct eavemark_request *request)
{
    struct problems said = {0};
    struct checked checked[2] = {0};
    struct trial_judged judged[2] = {0};
    cJSON *job = NULL, *copy = NULL;
    const size_t refused = trial->counts.not_judged;
    if (trial->laws[0].handle == NULL)
        return EAVEMARK_UNUSABLE;
    for (int side = 0; side < 2; side++)
        let_laws_go(trial->laws[side].handle);
    if (request->text == NULL)
        json_read_file(&job, request->name, &said);
    else
        json_read(&job, request->text, request->length, request->name, &said);
    copy = job == NULL ? NULL : cJSON_Duplicate(job, true);
    if (copy != NULL) {
        judge_under(&trial->laws[0], request, job, &checked[0], &judged[0]);
        judge_under(&trial->laws[1], request, copy, &checked[1], &judged[1]);
        trial_count(&trial->counts, title_of(copy, request->name), judged);
    } else if (job == NULL && said.first != NULL) {
        trial_refuse(&trial->counts, request->name, said.first->message);
    }
    const bool failed = trial->counts.arena.failed || said.out_of_memory
                        || checked[0].problems.out_of_memory || checked[1].problems.out_of_memory
                        || (job != NULL && copy == NULL);
    problems_free(&said);
    checked_free(&checked[0]);
    checked_free(&checked[1]);
    cJSON_Delete(job);
    cJSON_Delete(copy);
    if (failed)
        return EAVEMARK_BROKEN;
    return trial->counts.not_judged > refused ? EAVEMARK_UNUSABLE : EAVEMARK_NOTHING_FAILED;
}

bool inner_trial_merge(eavemark_trial *trial, const char *text, size_t length, const char *name,
                       char **problems)
{
    struct problems said = {0};
    const bool merged = trial_part_merge(&trial->counts, text, length, name, &said);
    if (trial->counts.arena.failed)
        problem_out_of_memory(&said);
    *problems = problems_text(&said);
    problems_free(&said);
    return merged && !trial->counts.arena.failed && *problems != NULL;
}

bool inner_trial_refuse(eavemark_trial *trial, const char *name, const char *why)
{
    trial_refuse(&trial->counts, name, why);
    return !trial->counts.arena.failed;
}

bool inner_trial_moved(const eavemark_trial *trial)
{
    return trial->counts.move_count > 0;
}

char *inner_trial_report(const eavemark_trial *trial, enum eavemark_form form)
{
    struct text out = TEXT_EMPTY;
    switch (form) {
    case EAVEMARK_TEXT:
    case EAVEMARK_CSV:
        report_trial_text(&trial->counts, &out);
        break;
    case EAVEMARK_JSON:
    case EAVEMARK_JSON_LINE:
        report_trial_json(&trial->counts, form == EAVEMARK_JSON, &out);
        break;
    case EAVEMARK_HTML:
        report_trial_html(&trial->counts, &out);
        break;
    }
    return text_release(&out);
}

void inner_trial_close(eavemark_trial *trial)
{
    if (trial == NULL)
        return;
    trial_free(&trial->counts);
    for (size_t i = 0; i < sizeof(trial->words) / sizeof(trial->words[0]); i++)
        free(trial->words[i]);
    free(trial);
}

enum eavemark_status inner_county_new(eavemark *handle, const char *id, const char *follows,
                                      const char *title, char **text)
{
    struct problems problems = {0};
    struct county_start start = {0};
    struct text out = TEXT_EMPTY;
    if (county_prepare(&start, &handle->laws, id, follows, title, &problems) == 0) {
        /* What will be said comes first: nothing is written that cannot be told. */
        text_addf(&out, "%s\n%s\n", start.profile_path, start.cases_path);
        county_text_caution(&start, "", &out);
        text_addf(&out, "next: eavemark proof %s\n", id);
        if (out.failed)
            problem_out_of_memory(&problems);
        else
            write_county(&handle->laws, &start, &problems);
    }
    const enum eavemark_status status = problems_status(&problems);
    if (status != EAVEMARK_NOTHING_FAILED) {
        text_free(&out);
        problems_write(&problems, &out);
    }
    county_free(&start);
    problems_free(&problems);
    *text = text_release(&out);
    return *text == NULL ? EAVEMARK_BROKEN : status;
}

/* The fields of all places: habits are the common ones. */
enum eavemark_status inner_shop_lift(eavemark *handle, const struct eavemark_request *request,
                                     char **sheet, char **problems)
{
    struct problems found = {0};
    struct text text = TEXT_EMPTY;
    cJSON *job = read_request(request, &found);
    const struct law *law = job == NULL ? NULL : laws_fields(&handle->laws, &found);
    cJSON *lifted = law == NULL ? NULL : shop_lift(job, &law->book->fields);
    if (law != NULL && lifted == NULL)
        problem_out_of_memory(&found);
    if (lifted != NULL)
        write_job_text(lifted, &text);
    cJSON_Delete(lifted);
    cJSON_Delete(job);
    enum eavemark_status status = problems_status(&found);
    *sheet = status == EAVEMARK_NOTHING_FAILED ? text_release(&text) : NULL;
    *problems = problems_text(&found);
    problems_free(&found);
    if (*problems == NULL || (status == EAVEMARK_NOTHING_FAILED && *sheet == NULL))
        status = drop_both_texts(sheet, problems);
    return status;
}

/* Questions ------------------------------------------------------------------ */

/* There is no page of questions: for paper there is the card. */
static char *questions_report(const struct questions *questions, enum eavemark_form form)
{
    struct text text = TEXT_EMPTY;
    if (form == EAVEMARK_TEXT)
        report_questions_text(questions, &text);
    else
        report_questions_json(questions, form == EAVEMARK_JSON, &text);
    return text_release(&text);
}

enum eavemark_status inner_questions(eavemark *handle, const struct eavemark_request *request,
                                     enum eavemark_form form, char **report, char **problems)
{
    struct checked_questions checked = {0};
    const struct overrides overrides = overrides_of(request);
    cJSON *job = read_request(request, &checked.problems);
    if (job != NULL)
        questions_of_job(&handle->laws, job, &overrides, request->name, &checked);
    enum eavemark_status status = problems_status(&checked.problems);
    *report = checked.judged ? questions_report(&checked.questions, form) : NULL;
    *problems = problems_text(&checked.problems);
    if (*problems == NULL
        || (checked.judged && *report == NULL)
        /* A rule that erred may have had a question of its own. */
        || checked.result.counts[OUTCOME_BROKEN] > 0)
        status = EAVEMARK_BROKEN;
    questions_checked_free(&checked);
    cJSON_Delete(job);
    return status;
}

/* The interview keeps the job; `name` is what its problems call it. */
struct eavemark_interview {
    eavemark *handle; /* NULL until it is opened */
    struct interview *interview;
    char *name;
    const struct field *asked; /* of the question before, or NULL */
    bool habits;               /* what is written is a shop sheet */
};

/* The job, or a new one, with the habits of another. With problems it may be NULL. */
static cJSON *with_habits(eavemark *handle, cJSON *job, const char *like, struct problems *problems)
{
    cJSON *other = NULL;
    const struct law *bare = laws_fields(&handle->laws, problems);
    if (job == NULL)
        job = cJSON_CreateObject();
    if (bare == NULL || json_read_file(&other, like, problems) != 0)
        return job;
    if (job == NULL || !like_take(job, other, &bare->book->fields))
        problem_out_of_memory(problems);
    cJSON_Delete(other);
    return job;
}

static eavemark_interview *interview_opened(eavemark *handle,
                                            const struct eavemark_request *request,
                                            struct problems *problems)
{
    const char *name = request->name == NULL ? "job" : request->name;
    /* What the command line says of place and day need not be asked. */
    const struct overrides preset = overrides_of(request);
    /* A job already begun: only what it lacks is asked. */
    const bool given = request->text != NULL || request->name != NULL;
    eavemark_interview *opened = calloc(1, sizeof(*opened));
    if (opened != NULL)
        opened->name = malloc(strlen(name) + 1);
    if (opened == NULL || opened->name == NULL) {
        free(opened);
        problem_out_of_memory(problems);
        return NULL;
    }
    memcpy(opened->name, name, strlen(name) + 1);
    /* interview_start takes it over; when it is not reached, there are problems and no
     * job. */
    cJSON *job = given             ? read_request(request, problems)
                 : request->habits ? shop_house_read(handle->laws.home, problems)
                                   : NULL;
    if (request->like_name != NULL && problems->count == 0)
        job = with_habits(handle, job, request->like_name, problems);
    if (problems->count > 0 || problems->out_of_memory)
        cJSON_Delete(job);
    else
        opened->interview = interview_start(&handle->laws, job, &preset, opened->name, problems);
    if (opened->interview != NULL && request->ahead)
        interview_go_ahead(opened->interview);
    if (opened->interview != NULL && request->habits)
        interview_of_habits(opened->interview);
    opened->habits = request->habits;
    if (opened->interview != NULL)
        return opened;
    inner_interview_close(opened);
    return NULL;
}

eavemark_interview *inner_interview_open(eavemark *handle, const struct eavemark_request *request,
                                         enum eavemark_status *status, char **problems)
{
    struct problems found = {0};
    eavemark_interview *opened = interview_opened(handle, request, &found);
    if (opened != NULL) {
        opened->handle = handle;
        handle->laws.holders++;
    }
    *status = problems_status(&found);
    *problems = problems_text(&found);
    problems_free(&found);
    return opened;
}

/* True when the field before was of another part of the job. */
static bool part_begins(const struct field *before, const struct field *now)
{
    if (before == NULL)
        return true;
    const size_t length = strcspn(now->path, ".");
    return strcspn(before->path, ".") != length || memcmp(before->path, now->path, length) != 0;
}

char *inner_interview_ask(eavemark_interview *interview, bool help, char **problems)
{
    struct problems found = {0};
    struct text text = TEXT_EMPTY;
    const struct question *question = interview_ask(interview->interview, &found);
    *problems = problems_text(&found);
    problems_free(&found);
    if (question == NULL)
        return NULL;
    /* The help is no new question: it does not count as asked. */
    if (help) {
        report_question_help(question, &text);
    } else {
        const struct finding *fails = NULL;
        while ((fails = interview_fails(interview->interview)) != NULL)
            report_question_fails(fails, &text);
        report_question(question, part_begins(interview->asked, question->field), &text);
        interview->asked = question->field;
    }
    char *words = text_release(&text);
    if (words == NULL) {
        free(*problems);
        *problems = NULL;
    }
    return words;
}

size_t inner_interview_left(const eavemark_interview *interview)
{
    return interview_left(interview->interview);
}

/* "2 fail, 0 to look at, 3 to answer, 40 met". */
char *inner_interview_standing(eavemark_interview *interview)
{
    struct problems none = {0};
    struct text text = TEXT_EMPTY;
    interview_ask(interview->interview, &none);
    problems_free(&none);
    const struct result *result = interview_standing(interview->interview);
    size_t place = 0;
    for (size_t i = 0; i < result->finding_count; i++)
        place += result->findings[i].outcome == OUTCOME_OPEN
                 && result->findings[i].ask == ASK_PLACE;
    text_addf(&text, "%zu fail, %zu to look at, %zu to answer, %zu for the department, %zu met",
              (size_t)result->counts[OUTCOME_FAIL], (size_t)result->counts[OUTCOME_WARN],
              (size_t)result->counts[OUTCOME_OPEN] - place, place,
              (size_t)result->counts[OUTCOME_PASS]);
    return text_release(&text);
}

bool inner_interview_answer(eavemark_interview *interview, const char *words, char **why)
{
    struct text text = TEXT_EMPTY, safe = TEXT_EMPTY;
    const bool taken = interview_answer(interview->interview, words, &text);
    /* An answer may be quoted in the refusal: it must not steer the terminal. */
    utf8_add_printable(&safe, text.failed || (!taken && text.length == 0) ? "out of memory"
                                                                          : text_string(&text));
    text_free(&text);
    *why = text_release(&safe);
    return taken;
}

/* A name may be any word, even one that is otherwise a command of the interview. */
bool inner_interview_wants_name(const eavemark_interview *interview)
{
    const struct field *asked = interview->asked;
    return asked != NULL && (asked->type == FIELD_TEXT || asked->type == FIELD_REFERENCE);
}

bool inner_interview_skip(eavemark_interview *interview, char **why)
{
    struct text text = TEXT_EMPTY;
    const bool skipped = interview_skip(interview->interview, &text);
    *why = text_release(&text);
    return skipped;
}

bool inner_interview_back(eavemark_interview *interview)
{
    return interview_back(interview->interview);
}

char *inner_interview_job(eavemark_interview *interview, size_t *answered, size_t *skipped,
                          char **problems)
{
    struct problems found = {0};
    struct text text = TEXT_EMPTY;
    const struct interview_counts counts = interview_count(interview->interview);
    *answered = counts.answered;
    *skipped = counts.skipped;
    const cJSON *job = interview_job(interview->interview, &found);
    cJSON *sheet = interview->habits && found.count == 0 && !found.out_of_memory
                       ? interview_sheet_of(interview->interview, &found)
                       : NULL;
    /* A job that is not sound is not written: it would be refused when it is read again. */
    const bool sound = found.count == 0 && !found.out_of_memory;
    *problems = problems_text(&found);
    problems_free(&found);
    if (sound)
        write_job_text(interview->habits ? sheet : job, &text);
    cJSON_Delete(sheet);
    return sound ? text_release(&text) : NULL;
}

/* cJSON allocates the line by its own means: it is copied, so that free() is right for
 * it. */
char *inner_interview_draft(const eavemark_interview *interview)
{
    struct text text = TEXT_EMPTY;
    char *line = cJSON_PrintUnformatted(interview_draft(interview->interview));
    if (line == NULL)
        return NULL;
    text_add(&text, line);
    cJSON_free(line);
    return text_release(&text);
}

void inner_interview_close(eavemark_interview *interview)
{
    if (interview->handle != NULL)
        interview->handle->laws.holders--;
    interview_free(interview->interview);
    free(interview->name);
    free(interview);
}
