/* What there is: the fields of a job, the places, the names of rules and figures. */
#include "interface/inner.h"

#include "base/date.h"
#include "interface/handle.h"
#include "interface/reply.h"
#include "job/schema.h"
#include "prove/explain.h"
#include "report/place_list_report.h"

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
    handle_make_room(handle);
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
    const enum eavemark_status status = reply_status(&problems);
    if (status != EAVEMARK_NOTHING_FAILED) {
        text_free(&out);
        problems_write(&problems, &out);
    }
    problems_free(&problems);
    *text = reply_text(&out);
    return *text == NULL ? EAVEMARK_BROKEN : status;
}

/* No place fits the words: names the nearest, if any is near. */
static void say_none_fits(struct place_list *list, const char *words, struct problems *problems)
{
    const char *near = place_list_near(list, words);
    problem_at(problems, PROBLEM_JOB, "places", NULL, "no place fits \"%s\"%s%s%s", words,
               near == NULL ? "" : "; did you mean ", near == NULL ? "" : near,
               near == NULL ? "" : "?");
}

/* A list without them would look whole. */
static void say_skipped(const struct place_list *list, struct problems *problems)
{
    for (size_t i = 0; i < list->skipped.count; i++)
        problem_at(problems, PROBLEM_RULES, "places", NULL,
                   "%s is left out: its file does not load (eavemark proof %s says why)",
                   list->skipped.items[i], list->skipped.items[i]);
}

/* How many places fit the words; they stand in `out` then. */
static size_t write_places(const struct place_list *list, const char *words,
                           enum eavemark_form form, struct text *out)
{
    return reply_is_text(form) ? report_place_list_text(list, words, out)
                               : report_place_list_json(list, words, form == EAVEMARK_JSON, out);
}

enum eavemark_status inner_places(eavemark *handle, const char *words, enum eavemark_form form,
                                  char **report, char **problems)
{
    /* Not zeroed here: place_list_make does, also when it fails. */
    struct place_list list;
    struct problems said = {0};
    struct text out = TEXT_EMPTY;
    size_t found = 0;
    if (words == NULL)
        words = "";
    if (place_list_make(&handle->laws.cache, handle->laws.home, &list) != 0)
        problem_out_of_memory(&said);
    else if ((found = write_places(&list, words, form, &out)) == 0)
        say_none_fits(&list, words, &said);
    /* Whether or not any place was found: one of those left out may be the one looked for. */
    say_skipped(&list, &said);
    if (out.failed)
        problem_out_of_memory(&said);
    handle_say_out_of_memory(handle, &said);
    enum eavemark_status answer = reply_status(&said);
    *report = NULL;
    if (found > 0 && !said.out_of_memory)
        *report = reply_text(&out);
    else
        text_free(&out);
    *problems = reply_problems(&said);
    if (*problems == NULL || (found > 0 && *report == NULL))
        answer = reply_drop(report, problems);
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
    handle_say_out_of_memory(handle, &problems);
    /* A line each, for completion and scripts. What is wrong stands in their place. */
    for (size_t i = 0; i < list.count; i++)
        text_addf(&out, "%s\n", list.items[i]);
    const enum eavemark_status status = reply_status(&problems);
    if (status != EAVEMARK_NOTHING_FAILED) {
        text_free(&out);
        problems_write(&problems, &out);
    }
    problems_free(&problems);
    arena_free(&arena);
    *text = reply_text(&out);
    return *text == NULL ? EAVEMARK_BROKEN : status;
}
