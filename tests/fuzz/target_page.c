/* What the page asks of the library (engine/page/wasm/page.c), with whatever stands in its
 * fields: lines "name value" for stage, place, day, words and form, then an empty line and
 * the job; after a line "==" the shop sheet, and after another the job before. Each call
 * answers in its form, or says why not, and nothing that was put in comes out as markup. */
#include "fuzz/result.h"
#include "fuzz/target.h"
#include "support/small_law.h"

#include <cjson/cJSON.h>

#include <stdbool.h>
#include <string.h>

enum { FORMS = EAVEMARK_CSV + 1 };

struct page {
    struct temporary_home home; /* small: to be proved and explained whole */
    eavemark *handle, *small;
};

struct asked {
    const char *stage, *place, *day, *words, *job, *shop, *before;
    enum eavemark_form form;
};

static void *start(void)
{
    struct page *page = malloc(sizeof(*page));
    FUZZ_REQUIRE(page != NULL);
    home_make(&page->home);
    small_law_write(&page->home);
    home_write(&page->home, "rules/cases/base.json", SMALL_JOB);
    page->handle = eavemark_open(EAVEMARK_HOME_DIR);
    page->small = eavemark_open(page->home.path);
    FUZZ_REQUIRE(page->handle != NULL && page->small != NULL);
    return page;
}

/* JSON is indented with tabs, and lines of CSV end as its standard says. */
static bool may_stand(char c, enum eavemark_form form)
{
    return (unsigned char)c >= ' ' || c == '\n' || (form == EAVEMARK_JSON && c == '\t')
           || (form == EAVEMARK_CSV && c == '\r');
}

/* What holds of a text that a page shows; NULL is none. No name in the tree holds the mark
 * that inputs put in to see it come out as markup. */
static void look_at(const char *text, enum eavemark_form form)
{
    for (const char *at = text; at != NULL && *at != '\0'; at++)
        FUZZ_REQUIRE(may_stand(*at, form));
    if (text == NULL)
        return;
    if (form == EAVEMARK_HTML)
        FUZZ_REQUIRE(strstr(text, "<q9>") == NULL);
    if (form == EAVEMARK_JSON || form == EAVEMARK_JSON_LINE) {
        cJSON *tree = cJSON_Parse(text);
        FUZZ_REQUIRE(tree != NULL);
        cJSON_Delete(tree);
    }
}

/* Frees both. Never without either unless memory lacks, of which there is enough. */
static void look_at_answer(enum eavemark_status status, char *report, char *problems,
                           enum eavemark_form form)
{
    FUZZ_REQUIRE(status >= EAVEMARK_NOTHING_FAILED && status <= EAVEMARK_BROKEN);
    FUZZ_REQUIRE(problems != NULL);
    FUZZ_REQUIRE(report != NULL || problems[0] != '\0');
    look_at(report, form);
    look_at(problems, EAVEMARK_TEXT);
    free(report);
    free(problems);
}

/* Which of the two of a form that a call has no such of: text is then given. */
static enum eavemark_form form_of(enum eavemark_form form, bool html, bool csv)
{
    const bool has = (form != EAVEMARK_HTML || html) && (form != EAVEMARK_CSV || csv);
    return has ? form : EAVEMARK_TEXT;
}

static struct eavemark_request request_of(const struct asked *asked, const char *job)
{
    return (struct eavemark_request){
        .name = "job.json",
        .text = job,
        .length = strlen(job),
        .jurisdiction = asked->place,
        .date = asked->day,
        .stage = asked->stage,
        .shop = asked->shop,
        .shop_length = asked->shop == NULL ? 0 : strlen(asked->shop),
        .shop_name = asked->shop == NULL ? NULL : "shop.json",
    };
}

static void check(eavemark *handle, const struct asked *asked)
{
    const struct eavemark_request now = request_of(asked, asked->job);
    const struct eavemark_request then = request_of(asked, asked->before == NULL ? asked->job
                                                                                 : asked->before);
    eavemark_result *after = eavemark_check(handle, &now);
    eavemark_result *before = eavemark_check(handle, &then);
    FUZZ_REQUIRE(after != NULL && before != NULL);
    for (int form = 0; form < FORMS; form++) {
        char *report = eavemark_result_report(after, (enum eavemark_form)form,
                                              form == EAVEMARK_JSON ? EAVEMARK_ALL : 0);
        look_at(report, form_of((enum eavemark_form)form, true, false));
        free(report);
    }
    char *changes = eavemark_result_changes(before, after, 0);
    look_at(changes, EAVEMARK_TEXT);
    free(changes);
    fuzz_result(before);
    fuzz_result(after);
}

static void ask_all(const struct page *page, const struct asked *asked)
{
    const struct eavemark_request request = request_of(asked, asked->job);
    char *report, *problems;
    check(page->handle, asked);
    enum eavemark_status status = eavemark_questions(page->handle, &request, asked->form, &report,
                                                     &problems);
    look_at_answer(status, report, problems, form_of(asked->form, false, false));
    status = eavemark_card(page->handle, &request, asked->form, &report, &problems);
    look_at_answer(status, report, problems,
                   asked->form == EAVEMARK_HTML ? EAVEMARK_HTML : EAVEMARK_TEXT);
    status = eavemark_order(page->handle, &request, asked->form, &report, &problems);
    look_at_answer(status, report, problems, form_of(asked->form, false, true));
    status = eavemark_places(page->handle, asked->words, asked->form, &report, &problems);
    look_at_answer(status, report, problems, form_of(asked->form, false, false));
    status = eavemark_explain(page->small, asked->words, NULL, asked->form, &report, &problems);
    look_at_answer(status, report, problems, form_of(asked->form, false, false));
    status = eavemark_proof(page->small, asked->words, NULL, NULL, asked->form, &report, &problems);
    look_at_answer(status, report, problems, form_of(asked->form, false, false));
    status = eavemark_fields(page->handle, NULL, true, asked->place, asked->day, &report);
    FUZZ_REQUIRE(report != NULL && report[0] != '\0');
    look_at(report, status == EAVEMARK_NOTHING_FAILED ? EAVEMARK_JSON : EAVEMARK_TEXT);
    free(report);
}

/* The value when the line is of that name. */
static void take(const char *line, const char *name, const char **value)
{
    const size_t length = strlen(name);
    if (strncmp(line, name, length) == 0 && line[length] == ' ')
        *value = line + length + 1;
}

/* Cuts the text at the mark; what follows it, or NULL. */
static char *cut(char *text, const char *mark)
{
    char *at = text == NULL ? NULL : strstr(text, mark);
    if (at == NULL)
        return NULL;
    *at = '\0';
    return at + strlen(mark);
}

static void run(void *state, const char *bytes, size_t length)
{
    struct asked asked = {.job = "", .form = EAVEMARK_JSON};
    const char *form = NULL;
    char *text = malloc(length + 1), *next;
    FUZZ_REQUIRE(text != NULL);
    memcpy(text, bytes, length);
    text[length] = '\0';
    for (char *line = text; line != NULL; line = next) {
        next = line[0] == '\n' ? NULL : cut(line, "\n");
        if (line[0] == '\n') {
            char *shop = cut(line, "\n==\n");
            asked.before = cut(shop, "\n==\n");
            asked.shop = shop;
            asked.job = line;
        }
        take(line, "stage", &asked.stage);
        take(line, "place", &asked.place);
        take(line, "day", &asked.day);
        take(line, "words", &asked.words);
        take(line, "form", &form);
    }
    if (form != NULL && form[0] >= '0' && form[0] < '0' + FORMS)
        asked.form = (enum eavemark_form)(form[0] - '0');
    ask_all(state, &asked);
    free(text);
}

static void end(void *state)
{
    struct page *page = state;
    eavemark_close(page->handle);
    eavemark_close(page->small);
    home_remove(&page->home);
    free(page);
}

const struct fuzz_target fuzz_page = {"page", start, run, end};
