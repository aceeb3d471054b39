/* page.c - the calls of eavemark.h as a page's script makes them.
 *
 * Texts are UTF-8, put into memory that the script asks for (page_memory) and gives back
 * (page_forget). A call leaves a report, problems and questions, each NULL where there are none,
 * until the next call.
 */
#include "include/eavemark.h"
#include "page/wasm/page_home.h"

#include <stdlib.h>
#include <string.h>

#define EXPORTED(name) __attribute__((export_name(name), used))

/* What may be asked for; the script knows these by number (engine.js). */
enum call {
    CALL_CHECK,
    CALL_QUESTIONS,
    CALL_CARD,
    CALL_ORDER,
    CALL_PLACES,
    CALL_SCHEMA,
    CALL_EXPLAIN,
    CALL_PROOF,
    CALL_CHANGES,
    CALL_SCREEN,
    CALL_SHOP,
};

/* All of one call: NULL for what it does not need. */
struct page_request {
    const char *name, *job, *before, *shop, *stage, *place, *day, *words;
};

/* A page is one program: what it was asked last. */
static eavemark *handle;
static struct page_request request;
static char *report, *problems, *questions;

EXPORTED("page_memory") void *page_memory(size_t size)
{
    return malloc(size == 0 ? 1 : size);
}

EXPORTED("page_forget") void page_forget(void *memory)
{
    free(memory);
}

/* Laws are read again from the home as it is now. */
EXPORTED("page_open") int page_open(void)
{
    eavemark_close(handle);
    handle = eavemark_open(EAVEMARK_HOME_INSIDE);
    return handle != NULL;
}

EXPORTED("page_set_home") void page_set_home(char *bytes, size_t length)
{
    page_home_set(bytes, length);
}

EXPORTED("page_set_made") void page_set_made(const char *bytes, size_t length)
{
    page_home_set_made(bytes, length);
}

/* To be opened again once all files are laid over. */
EXPORTED("page_lay_over") int page_lay_over(const char *path, const char *text, size_t length)
{
    eavemark_close(handle);
    handle = NULL;
    return page_home_lay_over(path, text, length);
}

EXPORTED("page_report") const char *page_report(void)
{
    return report;
}

EXPORTED("page_problems") const char *page_problems(void)
{
    return problems;
}

EXPORTED("page_questions") const char *page_questions(void)
{
    return questions;
}

/* Where the script puts the eight pointers of a request. */
EXPORTED("page_request") struct page_request *page_request_place(void)
{
    return &request;
}

static struct eavemark_request request_of(const char *job)
{
    return (struct eavemark_request){
        .name = request.name == NULL ? "job.json" : request.name,
        .text = job,
        .length = job == NULL ? 0 : strlen(job),
        .jurisdiction = request.place,
        .date = request.day,
        .stage = request.stage,
        .shop = request.shop,
        .shop_length = request.shop == NULL ? 0 : strlen(request.shop),
        .shop_name = request.shop == NULL ? NULL : "shop.json",
    };
}

static int check(enum eavemark_form form, unsigned options)
{
    const struct eavemark_request asked = request_of(request.job);
    eavemark_result *result = eavemark_check(handle, &asked);
    if (result == NULL)
        return EAVEMARK_BROKEN;
    const enum eavemark_status status = eavemark_result_status(result, false);
    report = eavemark_result_report(result, form, options);
    problems = strdup(eavemark_result_problems(result));
    eavemark_result_free(result);
    return (int)status;
}

/* What a screen is made of: a check's page, and the questions to be answered in it. */
static int screen(const struct eavemark_request *asked)
{
    const int status = check(EAVEMARK_HTML, 0);
    char *unasked = NULL;
    if (report != NULL)
        (void)eavemark_questions(handle, asked, EAVEMARK_JSON_LINE, &questions, &unasked);
    free(unasked);
    return status;
}

static int changes(unsigned options)
{
    const struct eavemark_request then = request_of(request.before), now = request_of(request.job);
    eavemark_result *before = eavemark_check(handle, &then), *after = eavemark_check(handle, &now);
    if (before != NULL && after != NULL)
        report = eavemark_result_changes(before, after, options);
    if (after != NULL)
        problems = strdup(eavemark_result_problems(after));
    eavemark_result_free(after);
    eavemark_result_free(before);
    return report == NULL ? EAVEMARK_UNUSABLE : EAVEMARK_NOTHING_FAILED;
}

static void forget_answer(void)
{
    free(report);
    free(problems);
    free(questions);
    report = problems = questions = NULL;
}

/* Answers what stands in the request; the status is that of eavemark.h. */
EXPORTED("page_call") int page_call(enum call call, enum eavemark_form form, unsigned options)
{
    const struct eavemark_request asked = request_of(request.job);
    forget_answer();
    switch (call) {
    case CALL_CHECK:
        return check(form, options);
    case CALL_CHANGES:
        return changes(options);
    case CALL_SCREEN:
        return screen(&asked);
    case CALL_SHOP:
        return (int)eavemark_shop_lift(handle, &asked, &report, &problems);
    case CALL_QUESTIONS:
        return (int)eavemark_questions(handle, &asked, form, &report, &problems);
    case CALL_CARD:
        return (int)eavemark_card(handle, &asked, form, &report, &problems);
    case CALL_ORDER:
        return (int)eavemark_order(handle, &asked, form, &report, &problems);
    case CALL_PLACES:
        return (int)eavemark_places(handle, request.words, form, &report, &problems);
    case CALL_SCHEMA:
        return (int)eavemark_fields(handle, NULL, true, request.place, request.day, &report);
    case CALL_EXPLAIN:
        return (int)eavemark_explain(handle, request.words, request.job == NULL ? NULL : &asked,
                                     form, &report, &problems);
    case CALL_PROOF:
        return (int)eavemark_proof(handle, request.words, NULL, NULL, form, &report, &problems);
    }
    return EAVEMARK_UNUSABLE;
}
