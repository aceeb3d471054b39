/* An interview: one question after another, until the job or shop sheet is whole. */
#include "interface/inner.h"

#include "ask/interview.h"
#include "ask/shop_house.h"
#include "base/utf8.h"
#include "interface/handle.h"
#include "interface/reply.h"
#include "interface/request.h"
#include "job/json.h"
#include "job/like.h"
#include "job/write.h"
#include "report/question_report.h"

#include <stdlib.h>
#include <string.h>

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

/* What the interview begins with: a job already begun, of which only what it lacks is
 * asked; for habits the shop's sheet; or NULL, nothing. */
static cJSON *first_job(eavemark *handle, const struct eavemark_request *request,
                        struct problems *problems)
{
    cJSON *job = NULL;
    if (request->text != NULL || request->name != NULL)
        job = request_job(request, problems);
    else if (request->habits)
        job = shop_house_read(handle->laws.home, problems);
    if (request->like_name != NULL && problems->count == 0)
        job = with_habits(handle, job, request->like_name, problems);
    return job;
}

/* The interview without its questions yet; NULL when out of memory. */
static eavemark_interview *interview_named(const char *name)
{
    eavemark_interview *opened = calloc(1, sizeof(*opened));
    if (opened != NULL)
        opened->name = strdup(name);
    if (opened != NULL && opened->name != NULL)
        return opened;
    free(opened);
    return NULL;
}

/* Lists of things by their field, as a draft keeps them (interview.h). */
static bool others_are_whole(const cJSON *others)
{
    const cJSON *list = NULL, *item = NULL;
    bool whole = others == NULL || cJSON_IsObject(others);
    cJSON_ArrayForEach(list, others) {
        whole = whole && cJSON_IsArray(list);
        cJSON_ArrayForEach(item, list)
            whole = whole && cJSON_IsObject(item);
    }
    return whole;
}

static eavemark_interview *interview_opened(eavemark *handle,
                                            const struct eavemark_request *request,
                                            struct problems *problems)
{
    /* What the command line says of place and day need not be asked. */
    const struct overrides preset = request_overrides(request);
    eavemark_interview *opened = interview_named(request->name == NULL ? "job" : request->name);
    if (opened == NULL) {
        problem_out_of_memory(problems);
        return NULL;
    }
    cJSON *job = first_job(handle, request, problems);
    /* interview_start takes the job over; where it is not reached, it is ours to delete. */
    cJSON *others = request->habits ? cJSON_DetachItemFromObjectCaseSensitive(job, INTERVIEW_OTHERS)
                                    : NULL;
    if (!others_are_whole(others))
        problem_at(problems, PROBLEM_JOB, opened->name, "/" INTERVIEW_OTHERS,
                   "holds lists of objects, each of what the sheet has several of");
    if (problems->count > 0 || problems->out_of_memory)
        cJSON_Delete(job);
    else
        opened->interview = interview_start(&handle->laws, job, &preset, opened->name, problems);
    opened->habits = request->habits;
    if (opened->interview == NULL) {
        cJSON_Delete(others);
        inner_interview_close(opened);
        return NULL;
    }
    if (request->ahead)
        interview_go_ahead(opened->interview);
    if (request->habits)
        interview_of_habits(opened->interview, others);
    return opened;
}

eavemark_interview *inner_interview_open(eavemark *handle, const struct eavemark_request *request,
                                         enum eavemark_status *status, char **problems)
{
    struct problems found = {0};
    handle_make_room(handle);
    eavemark_interview *opened = interview_opened(handle, request, &found);
    if (opened != NULL) {
        opened->handle = handle;
        handle->laws.holders++;
    }
    *status = reply_status(&found);
    *problems = reply_problems(&found);
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
    *problems = reply_problems(&found);
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
        /* For the next heading: a help in between does not count. */
        interview->asked = question->field;
    }
    char *words = reply_text(&text);
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
    /* What is wrong was said when the question was put. */
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
    return reply_text(&text);
}

bool inner_interview_answer(eavemark_interview *interview, const char *words, char **why)
{
    struct text text = TEXT_EMPTY, safe = TEXT_EMPTY;
    const bool taken = interview_answer(interview->interview, words, &text);
    /* An answer may be quoted in the refusal: it must not steer the terminal. */
    utf8_add_printable(&safe, text.failed || (!taken && text.length == 0) ? "out of memory"
                                                                          : text_string(&text));
    text_free(&text);
    *why = reply_text(&safe);
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
    *why = reply_text(&text);
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
    /* Counted whether or not the job is whole, so that the host can say how far it got. */
    const struct interview_counts counts = interview_count(interview->interview);
    *answered = counts.answered;
    *skipped = counts.skipped;
    const cJSON *job = interview_job(interview->interview, &found);
    cJSON *sheet = interview->habits && found.count == 0 && !found.out_of_memory
                       ? interview_sheet_of(interview->interview, &found)
                       : NULL;
    /* A job that is not sound is not written: it would be refused when it is read again. */
    const bool sound = found.count == 0 && !found.out_of_memory;
    *problems = reply_problems(&found);
    problems_free(&found);
    if (sound)
        write_job_text(interview->habits ? sheet : job, &text);
    cJSON_Delete(sheet);
    return sound ? reply_text(&text) : NULL;
}

/* cJSON allocates the line by its own means: it is copied, so that free() is right for
 * it. */
char *inner_interview_draft(const eavemark_interview *interview)
{
    struct text text = TEXT_EMPTY;
    cJSON *draft = interview_draft(interview->interview);
    char *line = draft == NULL ? NULL : cJSON_PrintUnformatted(draft);
    cJSON_Delete(draft);
    if (line == NULL)
        return NULL;
    text_add(&text, line);
    cJSON_free(line);
    return reply_text(&text);
}

/* Also of one that was not opened to its end: it holds no law then. */
void inner_interview_close(eavemark_interview *interview)
{
    if (interview->handle != NULL)
        interview->handle->laws.holders--;
    interview_free(interview->interview);
    free(interview->name);
    free(interview);
}
