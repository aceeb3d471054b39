#include "ask/interview.h"

#include "ask/interview_parts.h"
#include "ask/item.h"
#include "job/answer.h"
#include "job/json.h"
#include "job/validate.h"

#include <stdlib.h>
#include <string.h>
#include <strings.h>

const char interview_place[] = "jurisdiction", interview_day[] = "date",
           interview_form[] = "/roof/footprint/form", interview_sheet[] = "/shop";

/* Takes the job over, whatever comes of it. */
struct interview *interview_start(struct laws *laws, cJSON *job, const struct overrides *preset,
                                  const char *file, struct problems *problems)
{
    struct interview *interview = calloc(1, sizeof(*interview));
    if (interview == NULL) {
        cJSON_Delete(job);
        problem_out_of_memory(problems);
        return NULL;
    }
    interview->laws = laws;
    interview->file = file;
    interview->job = job != NULL ? job : cJSON_CreateObject();
    /* What says which version it is was begun before, by hand or by another sitting. */
    interview->fresh = !interview_states(interview->job, "eavemark_job");
    if (interview->job == NULL)
        problem_out_of_memory(problems);
    else if (shop_read(&interview->shop, interview->job, file, &preset->shop, problems) == 0)
        interview_prepare(interview, preset, problems);
    if (problems->count == 0 && !problems->out_of_memory)
        return interview;
    interview_free(interview);
    return NULL;
}

/* As the fields of later stages can be said now where they are planned, not measured. */
void interview_go_ahead(struct interview *interview)
{
    interview->ahead = true;
}

/* Questions point into the result and into the laid-out job: all three go together. */
static void forget_questions(struct interview *interview)
{
    questions_free(&interview->questions);
    result_free(&interview->result);
    cJSON_Delete(interview->laid);
    interview->laid = NULL;
    interview->result = (struct result){0};
    interview->now = NULL;
}

void interview_of_habits(struct interview *interview, cJSON *others)
{
    interview->habits = true;
    interview->ahead = true;
    interview->others = others;
}

/* What waits now and was not left out; one at least while there is a question. */
size_t interview_left(const struct interview *interview)
{
    size_t left = 0, lines = 0;
    for (size_t i = 0; i < interview->questions.count; i++)
        left += interview_waits(interview, &interview->questions.items[i]);
    for (size_t i = 0; interview->now != NULL && i < interview->now->part_count; i++)
        for (size_t q = 0; q < interview->questions.count; q++)
            lines += strcmp(interview->questions.items[q].pointer, interview->now->parts[i].pointer)
                     == 0;
    /* Facts that are asked in one line are one question to whoever answers. */
    left -= lines > 1 ? lines - 1 : 0;
    return interview->now != NULL && left == 0 ? 1 : left;
}

/* The next finding that fails and was not told yet, or NULL. */
const struct finding *interview_fails(struct interview *interview)
{
    /* Habits are of no house yet: there is nothing that could fail. */
    if (interview->habits)
        return NULL;
    for (size_t i = 0; i < interview->result.finding_count; i++) {
        const struct finding *finding = &interview->result.findings[i];
        if (finding->outcome != OUTCOME_FAIL)
            continue;
        /* By rule and item: the same rule may fail on another plane, and is told again then. */
        const char *what = arena_format(&interview->kept, "%s %s", finding->rule,
                                        finding->item == NULL ? "" : finding->item);
        if (what == NULL || strings_have(&interview->told, what))
            continue;
        strings_add(&interview->told, &interview->kept, what);
        return finding;
    }
    return NULL;
}

const struct result *interview_standing(const struct interview *interview)
{
    return &interview->result;
}

/* The job is judged anew for each question: what an answer settles or opens is not known
 * before. Three things come before what waits: what every job must say, a question gone back
 * to, and the plan. */
const struct question *interview_ask(struct interview *interview, struct problems *problems)
{
    if (interview->now != NULL)
        return interview->now;
    forget_questions(interview);
    const struct law *law = interview_law(interview->laws, interview->job, interview->file,
                                          problems);
    if (law == NULL)
        return NULL;
    const struct fields *fields = &law->book->fields;
    const struct field *head = interview_head_of(fields, interview->job);
    if (head != NULL) {
        interview_ask_head(interview, fields, head);
    } else {
        const enum stage reached = interview_reached(interview->job);
        interview->laid = interview_lay_out(interview, interview->job, law, problems);
        if (interview->laid == NULL)
            return NULL;
        judge_begin(law->book);
        if (judge(law->book, interview->laid, interview->ahead ? -1 : (int)reached, reached, NULL,
                  &interview->result)
                != 0
            || questions_of(&interview->result, interview->laid, fields, reached,
                            &interview->questions)
                   != 0)
            problem_out_of_memory(problems);
        else if (interview->again != NULL)
            interview_ask_again(interview, fields);
        if (problems->count == 0 && !problems->out_of_memory && interview->now == NULL)
            interview_ask_next(interview, fields);
    }
    if (interview->questions.arena.failed || interview->kept.failed)
        problem_out_of_memory(problems);
    return problems->out_of_memory ? NULL : interview->now;
}

static const char NOTHING_ASKED[] = "nothing was asked";

/* Yes or no to the sheet; it stays named in the job only if it is gone by. */
static bool answer_sheet(struct interview *interview, const char *words, struct text *why)
{
    const bool yes = strcasecmp(words, "y") == 0 || strcasecmp(words, "yes") == 0;
    if (!yes && strcasecmp(words, "n") != 0 && strcasecmp(words, "no") != 0) {
        text_addf(why, "\"%s\" is not y or n", words);
        return false;
    }
    if (!interview_unchanged(interview))
        return false;
    interview->without_sheet = !yes;
    if (!yes)
        cJSON_DeleteItemFromObjectCaseSensitive(interview->job, "shop");
    return true;
}

/* A roof that no plan shows is asked for plane by plane. */
static bool is_no_plan(const struct question *question, const char *words)
{
    return strcmp(question->pointer, interview_form) == 0
           && (strcasecmp(words, "planes") == 0 || strcasecmp(words, "none") == 0
               || strcasecmp(words, "other") == 0);
}

/* A place is found by its words and a list read by its kinds; all else is read by its field. */
static bool read_value(struct interview *interview, const char *words, cJSON **value,
                       struct text *why)
{
    const struct question *question = interview->now;
    const struct answer_names names = {question->names, question->name_count};
    const struct law *law = NULL;
    struct problems none = {0};
    if (strcmp(question->field->path, interview_place) == 0) {
        const char *id = interview_place_by(interview, words, why);
        *value = id == NULL ? NULL : cJSON_CreateString(id);
        return *value != NULL;
    }
    if (question->field->type != FIELD_LIST)
        return answer_read(value, question->field, question->numbered ? &names : NULL, words, why);
    law = interview_law(interview->laws, interview->job, interview->file, &none);
    problems_free(&none);
    return law != NULL && item_read(value, &law->book->fields, question->field, words, why);
}

/* What is wrong with the law was told when the question was put. */
static bool answer_more(struct interview *interview, const char *words, struct text *why)
{
    struct problems none = {0};
    const struct law *law = interview_law(interview->laws, interview->job, interview->file, &none);
    problems_free(&none);
    return law != NULL && interview_answer_more(interview, &law->book->fields, words, why);
}

bool interview_answer(struct interview *interview, const char *words, struct text *why)
{
    const struct question *question = interview->now;
    cJSON *value = NULL;
    if (question == NULL) {
        text_add(why, NOTHING_ASKED);
        return false;
    }
    /* By address: these are no pointers into a job, and no fact can be called so. */
    if (question->pointer == interview_sheet)
        return answer_sheet(interview, words, why);
    if (question->pointer == interview_more)
        return answer_more(interview, words, why);
    if (is_no_plan(question, words))
        return interview_unchanged(interview);
    if (question->part_count > 0)
        return interview_try_line(interview, words, why);
    /* "=" takes the answer of the item before. */
    if (question->same != NULL && strcmp(words, "=") == 0)
        value = cJSON_Duplicate(question->same, true);
    else if (!read_value(interview, words, &value, why))
        return false;
    return interview_try_value(interview, value, words, why);
}

/* Left out for this sitting: a step without a job, so that the way back passes over it. */
bool interview_skip(struct interview *interview, struct text *why)
{
    if (interview->now == NULL) {
        text_add(why, NOTHING_ASKED);
        return false;
    }
    /* What has to stand there whatever rules ask: the place and the day decide which rules
     * they are. */
    if (interview->now->field->required) {
        text_add(why, "a job cannot do without this");
        return false;
    }
    return interview_push(interview, NULL);
}

/* The whole job is validated again: what is still to come counts now. */
const cJSON *interview_job(const struct interview *interview, struct problems *problems)
{
    const struct law *law = interview_law(interview->laws, interview->job, interview->file,
                                          problems);
    cJSON *laid = law == NULL ? NULL : interview_lay_out(interview, interview->job, law, problems);
    if (laid != NULL) {
        validate_job(laid, &law->book->fields, interview_reached(interview->job), interview->file,
                     problems);
        judge_begin(law->book);
        judge_impossible(law->book, laid, interview->file, problems);
    }
    cJSON_Delete(laid);
    return interview->job;
}

cJSON *interview_sheet_of(const struct interview *interview, struct problems *problems)
{
    const struct law *bare = laws_fields(interview->laws, problems);
    cJSON *sheet = bare == NULL ? NULL : shop_lift(interview->job, &bare->book->fields);
    if (bare != NULL
        && (sheet == NULL || !interview_add_others(interview, &bare->book->fields, sheet)))
        problem_out_of_memory(problems);
    return sheet;
}

cJSON *interview_draft(const struct interview *interview)
{
    cJSON *draft = cJSON_Duplicate(interview->job, true);
    if (draft != NULL && interview->others != NULL
        && !json_set(draft, INTERVIEW_OTHERS, cJSON_Duplicate(interview->others, true))) {
        cJSON_Delete(draft);
        return NULL;
    }
    return draft;
}

void interview_free(struct interview *interview)
{
    if (interview == NULL)
        return;
    while (interview->steps != NULL)
        interview_drop(interview);
    forget_questions(interview);
    free(interview->again);
    free(interview->asked_back);
    place_list_free(&interview->places);
    arena_free(&interview->kept);
    shop_free(&interview->shop);
    cJSON_Delete(interview->job);
    cJSON_Delete(interview->others);
    free(interview);
}
