#include "ask/interview.h"

#include "base/date.h"
#include "base/nearest.h"
#include "base/strings.h"
#include "job/answer.h"
#include "job/json.h"
#include "job/path.h"
#include "job/shop.h"
#include "job/validate.h"
#include "judge/judge.h"
#include "judge/place_fact.h"
#include "profile/places.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* More names than a screen shows help nobody. */
enum { PLACES_SHOWN = 20 };

static const char PLACE[] = "jurisdiction", DAY[] = "date";

/* What was done, last first. */
struct step {
    struct step *before;
    char *pointer;
    cJSON *job; /* as it was before an answer; NULL for a skip */
};

/* Owns the job and everything asked so far. `now` points into `questions` or at `head`,
 * and is NULL when the next is to be found. */
struct interview {
    struct laws *laws;
    const char *file;
    cJSON *job;
    cJSON *laid;      /* the job as it is judged, with facts from everywhere; or NULL */
    struct shop shop; /* the job's sheet, or all zero */
    struct step *steps;
    char *again;          /* pointer to be asked next, or NULL */
    char *asked_back;     /* pointer and words of the answer last asked back, or NULL */
    struct result result; /* what the questions came from */
    struct questions questions;
    struct question head; /* a required fact; its texts live in questions.arena */
    const struct question *now;
};

/* The job so far -------------------------------------------------------------- */

static const char *text_fact(const cJSON *job, const char *name)
{
    const cJSON *node = cJSON_GetObjectItemCaseSensitive(job, name);
    return cJSON_IsString(node) ? node->valuestring : NULL;
}

/* null is not said. */
static bool is_stated(const cJSON *job, const char *name)
{
    const cJSON *node = cJSON_GetObjectItemCaseSensitive(job, name);
    return node != NULL && !cJSON_IsNull(node);
}

/* A job that names no stage, or none there is, has reached the first. */
static enum stage reached_by(const cJSON *job)
{
    const char *word = text_fact(job, "stage");
    const int stage = word == NULL ? -1 : stage_by_word(word);
    return stage < 0 ? STAGE_PERMIT : (enum stage)stage;
}

/* The first required fact that the job does not say, or NULL. */
static const struct field *missing_head(const struct fields *fields, const cJSON *job)
{
    for (const struct field *f = fields->root->first_child; f != NULL; f = f->next)
        if (f->required && !is_stated(job, f->name))
            return f;
    return NULL;
}

/* The law of the job's place and day; the bare catalogue while it says neither.
 * NULL with problems. */
static const struct law *law_of(struct laws *laws, const cJSON *job, const char *file,
                                struct problems *problems)
{
    const char *place = text_fact(job, PLACE), *day = text_fact(job, DAY);
    const long date = day == NULL ? 0 : date_parse(day);
    return place == NULL || date == 0 ? laws_fields(laws, problems)
                                      : laws_find(laws, place, date, file, problems);
}

/* A required fact not asked yet is no fault of the answer. */
static bool is_still_to_come(const struct problem *problem, const struct fields *fields,
                             const cJSON *job)
{
    if (problem->pointer == NULL || problem->pointer[0] != '/')
        return false;
    const struct field *field = fields_child(fields->root, problem->pointer + 1);
    return field != NULL && field->required && !is_stated(job, field->name);
}

/* A copy of the job with what its plan, its sheet and its place say, or NULL. The job
 * itself is written as it was answered. */
static cJSON *laid_out(const struct interview *interview, const cJSON *job, const struct law *law,
                       struct problems *problems)
{
    cJSON *laid = cJSON_Duplicate(job, true);
    if (laid == NULL) {
        problem_out_of_memory(problems);
        return NULL;
    }
    prepare_facts(laid, law, &interview->shop, false, interview->file, problems);
    return laid;
}

/* Everything wrong with the job, required facts to come left out. */
static void validate_so_far(const struct interview *interview, const cJSON *job,
                            struct problems *problems)
{
    struct problems found = {0};
    const char *file = interview->file;
    const struct law *law = law_of(interview->laws, job, file, problems);
    if (law == NULL)
        return;
    /* What law_of found is a problem in any case; what is found below may be only that
     * something is still to come. */
    cJSON *laid = laid_out(interview, job, law, &found);
    if (laid != NULL)
        validate_job(laid, &law->book->fields, reached_by(job), file, &found);
    if (laid != NULL && law->profile != NULL) {
        judge_begin(law->book);
        judge_impossible(law->book, laid, file, &found);
        place_fact_ask_back(law->book, laid, file, &found);
    }
    cJSON_Delete(laid);
    for (const struct problem *p = found.first; p != NULL; p = p->next)
        if (!is_still_to_come(p, &law->book->fields, job)) {
            problem_at(problems, p->kind, file, p->pointer, "%s", p->message);
            if (problems->last != NULL)
                problems->last->asks_back = p->asks_back;
        }
    problems->out_of_memory |= found.out_of_memory;
    problems_free(&found);
}

/* Starting -------------------------------------------------------------------- */

/* A required figure that can be only one, such as the version of the format. */
static void fill_certain(const struct fields *fields, cJSON *job, struct problems *problems)
{
    for (const struct field *f = fields->root->first_child; f != NULL; f = f->next)
        if (f->required && f->type == FIELD_INTEGER && f->has_least && f->has_most
            && f->least == f->most && !is_stated(job, f->name)
            && cJSON_AddNumberToObject(job, f->name, f->least) == NULL)
            problem_out_of_memory(problems);
}

/* What the command line says may fill the job, not change it. */
static void preset_fact(cJSON *job, const char *name, const char *value, const char *file,
                        struct problems *problems)
{
    const char *own = text_fact(job, name);
    if (value == NULL || (own != NULL && strcmp(own, value) == 0))
        return;
    if (own != NULL) {
        char pointer[32] = "/";
        strncat(pointer, name, sizeof(pointer) - 2);
        problem_at(problems, PROBLEM_JOB, file, pointer, "says \"%s\", not \"%s\"", own, value);
    } else if (cJSON_AddStringToObject(job, name, value) == NULL) {
        problem_out_of_memory(problems);
    }
}

static void prepare_place(struct interview *interview, const struct overrides *preset,
                          struct problems *problems)
{
    const struct law *bare = laws_fields(interview->laws, problems);
    if (bare == NULL)
        return;
    fill_certain(&bare->book->fields, interview->job, problems);
    if (preset->date != NULL && date_parse(preset->date) == 0)
        problem_at(problems, PROBLEM_JOB, "--date", NULL, "\"%s\" is not a date (YYYY-MM-DD)",
                   preset->date);
    preset_fact(interview->job, PLACE, preset->jurisdiction, interview->file, problems);
    preset_fact(interview->job, DAY, preset->date, interview->file, problems);
    if (problems->count == 0)
        validate_so_far(interview, interview->job, problems);
}

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
    if (interview->job == NULL)
        problem_out_of_memory(problems);
    else if (shop_read(&interview->shop, interview->job, file, &preset->shop, problems) == 0)
        prepare_place(interview, preset, problems);
    if (problems->count == 0 && !problems->out_of_memory)
        return interview;
    interview_free(interview);
    return NULL;
}

/* Steps ------------------------------------------------------------------------ */

static char *copy_of(const char *text)
{
    const size_t size = strlen(text) + 1;
    char *copy = malloc(size);
    if (copy != NULL)
        memcpy(copy, text, size);
    return copy;
}

/* Remembers what is about to be done; before: the job of then, taken over on
 * success. */
static bool push_step(struct interview *interview, cJSON *before)
{
    struct step *step = calloc(1, sizeof(*step));
    char *pointer = copy_of(interview->now->pointer);
    if (step == NULL || pointer == NULL) {
        free(step);
        free(pointer);
        return false;
    }
    *step = (struct step){interview->steps, pointer, before};
    interview->steps = step;
    free(interview->again);
    interview->again = NULL;
    interview->now = NULL;
    return true;
}

static void drop_step(struct interview *interview)
{
    struct step *step = interview->steps;
    interview->steps = step->before;
    cJSON_Delete(step->job);
    free(step->pointer);
    free(step);
}

/* Answered or left out in this sitting: a fact is asked once. */
static bool is_done(const struct interview *interview, const char *pointer)
{
    for (const struct step *step = interview->steps; step != NULL; step = step->before)
        if (strcmp(step->pointer, pointer) == 0)
            return true;
    return false;
}

struct interview_counts interview_count(const struct interview *interview)
{
    struct interview_counts counts = {0};
    for (const struct step *step = interview->steps; step != NULL; step = step->before)
        *(step->job == NULL ? &counts.skipped : &counts.answered) += 1;
    return counts;
}

/* The job goes back to what it was, and the same question comes again, whether or not a
 * rule waits for it now. */
bool interview_back(struct interview *interview)
{
    struct step *step = interview->steps;
    if (step == NULL)
        return false;
    if (step->job != NULL) {
        cJSON_Delete(interview->job);
        interview->job = step->job;
        step->job = NULL;
    }
    free(interview->again);
    interview->again = step->pointer;
    step->pointer = NULL;
    interview->now = NULL;
    drop_step(interview);
    return true;
}

/* Asking ----------------------------------------------------------------------- */

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

/* The places that there are, to choose from. */
static void add_places(struct interview *interview, struct question *question)
{
    struct strings ids = {0};
    places_ids(interview->laws->home, &ids, &interview->questions.arena);
    question->names = ids.items;
    question->name_count = ids.count;
}

/* A required fact comes before any law is known: it is asked of the catalogue alone. */
static void ask_head(struct interview *interview, const struct fields *fields,
                     const struct field *field)
{
    struct arena *arena = &interview->questions.arena;
    const char *pointer = arena_format(arena, "/%s", field->name);
    if (pointer == NULL)
        return;
    interview->head = question_about(arena, interview->job, fields, pointer);
    if (strcmp(field->name, PLACE) == 0)
        add_places(interview, &interview->head);
    interview->now = &interview->head;
}

/* The question to be asked again, though no rule may wait for it now. */
static void ask_again(struct interview *interview, const struct fields *fields)
{
    for (size_t i = 0; i < interview->questions.count; i++)
        if (strcmp(interview->questions.items[i].pointer, interview->again) == 0)
            interview->now = &interview->questions.items[i];
    if (interview->now != NULL)
        return;
    interview->head = question_about(&interview->questions.arena, interview->laid, fields,
                                     interview->again);
    if (interview->head.field != NULL)
        interview->now = &interview->head;
}

/* The first that was neither answered nor left out: questions stand in the order of the
 * trade. */
static void ask_next(struct interview *interview)
{
    for (size_t i = 0; i < interview->questions.count && interview->now == NULL; i++)
        if (!is_done(interview, interview->questions.items[i].pointer))
            interview->now = &interview->questions.items[i];
}

const struct question *interview_ask(struct interview *interview, struct problems *problems)
{
    if (interview->now != NULL)
        return interview->now;
    forget_questions(interview);
    const struct law *law = law_of(interview->laws, interview->job, interview->file, problems);
    if (law == NULL)
        return NULL;
    const struct fields *fields = &law->book->fields;
    const struct field *head = missing_head(fields, interview->job);
    if (head != NULL) {
        ask_head(interview, fields, head);
    } else {
        const enum stage reached = reached_by(interview->job);
        interview->laid = laid_out(interview, interview->job, law, problems);
        if (interview->laid == NULL)
            return NULL;
        judge_begin(law->book);
        if (judge(law->book, interview->laid, -1, reached, NULL, &interview->result) != 0
            || questions_of(&interview->result, interview->laid, fields, reached,
                            &interview->questions)
                   != 0)
            problem_out_of_memory(problems);
        else if (interview->again != NULL)
            ask_again(interview, fields);
        if (problems->count == 0 && !problems->out_of_memory)
            ask_next(interview);
    }
    if (interview->questions.arena.failed)
        problem_out_of_memory(problems);
    return problems->out_of_memory ? NULL : interview->now;
}

/* Answering -------------------------------------------------------------------- */

/* The places whose names hold the words, or the nearest. */
static void add_places_like(const struct question *question, const char *words, struct text *why)
{
    size_t found = 0;
    struct nearest nearest;
    nearest_start(&nearest, words);
    for (size_t i = 0; i < question->name_count; i++) {
        nearest_offer(&nearest, question->names[i]);
        if (words[0] != '\0' && strstr(question->names[i], words) != NULL
            && ++found <= PLACES_SHOWN)
            text_addf(why, "%s%s", found == 1 ? "; there are: " : ", ", question->names[i]);
    }
    if (found > PLACES_SHOWN)
        text_addf(why, " and %zu more", found - PLACES_SHOWN);
    if (found == 0 && nearest.name != NULL)
        text_addf(why, " (did you mean %s?)", nearest.name);
}

/* A place that is none, before there is a day to look it up on. */
static bool place_is_known(const struct question *question, const char *words, struct text *why)
{
    for (size_t i = 0; i < question->name_count; i++)
        if (strcmp(question->names[i], words) == 0)
            return true;
    text_addf(why, "no place is named \"%s\"", words);
    add_places_like(question, words, why);
    return false;
}

/* What is wrong with the answer; where it is not said at the question's own
 * place, with that. */
static void say_why(const struct problems *problems, const char *pointer, struct text *why)
{
    for (const struct problem *p = problems->first; p != NULL; p = p->next) {
        text_add(why, why->length > 0 ? "; " : "");
        const bool own = p->pointer == NULL || strncmp(p->pointer, pointer, strlen(pointer)) == 0;
        text_addf(why, "%s%s%s", own ? "" : p->pointer, own ? "" : ": ", p->message);
    }
}

static bool add_named(cJSON *list, const char *name)
{
    cJSON *item = cJSON_CreateObject();
    const bool added = item != NULL && cJSON_AddStringToObject(item, "name", name) != NULL
                       && cJSON_AddItemToArray(list, item);
    if (!added)
        cJSON_Delete(item);
    return added;
}

/* The items that only the layout has, by name, after those that the job lists. */
static bool add_laid_out(cJSON *roof, const char *key, const cJSON *laid)
{
    cJSON *list = cJSON_GetObjectItemCaseSensitive(roof, key);
    if (!cJSON_IsArray(list) && json_set(roof, key, cJSON_CreateArray()))
        list = cJSON_GetObjectItemCaseSensitive(roof, key);
    /* The job's items keep their places, so pointers into the laid-out list hold in both. */
    const int listed = cJSON_GetArraySize(list);
    bool added = list != NULL;
    int index = 0;
    const cJSON *item = NULL;
    cJSON_ArrayForEach(item, laid) {
        const char *name = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(item, "name"));
        if (index++ >= listed && name != NULL)
            added = added && add_named(list, name);
    }
    return added;
}

/* Gives what is answered of a plane or edge that only the layout has an item to
 * go into. False when out of memory. */
static bool name_laid_out(const struct interview *interview, cJSON *job, const char *pointer)
{
    static const char *const LISTS[] = {"slopes", "edges", "valleys"};
    cJSON *roof = cJSON_GetObjectItemCaseSensitive(job, "roof");
    const cJSON *laid = cJSON_GetObjectItemCaseSensitive(interview->laid, "roof");
    for (size_t i = 0; roof != NULL && i < sizeof(LISTS) / sizeof(LISTS[0]); i++) {
        char start[24];
        snprintf(start, sizeof(start), "/roof/%s/", LISTS[i]);
        if (strncmp(pointer, start, strlen(start)) == 0)
            return add_laid_out(roof, LISTS[i], cJSON_GetObjectItemCaseSensitive(laid, LISTS[i]));
    }
    return true;
}

/* What an answer is remembered by: its place and its words. False when out of memory. */
static bool remember_answer(char **kept, const char *pointer, const char *words)
{
    struct text both = TEXT_EMPTY;
    text_addf(&both, "%s %s", pointer, words);
    free(*kept);
    *kept = both.failed ? NULL : strdup(text_string(&both));
    text_free(&both);
    return *kept != NULL;
}

static bool is_same_answer(const char *kept, const char *pointer, const char *words)
{
    const size_t length = strlen(pointer);
    return kept != NULL && strncmp(kept, pointer, length) == 0 && kept[length] == ' '
           && strcmp(kept + length + 1, words) == 0;
}

/* Nothing is wrong but what may be meant all the same. */
static bool only_asks_back(const struct problems *problems)
{
    for (const struct problem *p = problems->first; p != NULL; p = p->next)
        if (!p->asks_back)
            return false;
    return problems->count > 0;
}

/* Notes in the job that what was asked back is meant. */
static bool add_meant(cJSON *job, const struct problems *problems)
{
    cJSON *list = cJSON_GetObjectItemCaseSensitive(job, "as_meant");
    if (!cJSON_IsArray(list) && json_set(job, "as_meant", cJSON_CreateArray()))
        list = cJSON_GetObjectItemCaseSensitive(job, "as_meant");
    bool added = list != NULL;
    for (const struct problem *p = problems->first; added && p != NULL; p = p->next) {
        cJSON *item = cJSON_CreateObject();
        added = item != NULL && cJSON_AddStringToObject(item, "at", p->pointer) != NULL
                && cJSON_AddItemToArray(list, item);
        if (!added)
            cJSON_Delete(item);
    }
    return added;
}

/* Whether the job holds. An answer that is asked back does when it comes again, in
 * the same words: then it is meant. */
static bool holds(struct interview *interview, cJSON *job, const char *words, struct text *why)
{
    struct problems problems = {0};
    const char *pointer = interview->now->pointer;
    validate_so_far(interview, job, &problems);
    bool held = problems.count == 0 && !problems.out_of_memory;
    const bool asks = only_asks_back(&problems);
    if (asks && is_same_answer(interview->asked_back, pointer, words))
        held = add_meant(job, &problems);
    if (!held)
        say_why(&problems, pointer, why);
    if (!held && asks && remember_answer(&interview->asked_back, pointer, words))
        text_add(why, " (here: answer the same again)");
    problems_free(&problems);
    return held;
}

/* Whether the job would hold with this value; it is taken over. */
static bool try_value(struct interview *interview, cJSON *value, const char *words,
                      struct text *why)
{
    const char *pointer = interview->now->pointer;
    /* Tried on a copy: the job holds at all times. */
    cJSON *job = cJSON_Duplicate(interview->job, true);
    bool held = job != NULL && name_laid_out(interview, job, pointer);
    if (held)
        held = path_set(job, pointer, value);
    else
        cJSON_Delete(value);
    if (held)
        held = holds(interview, job, words, why);
    if (held)
        /* From here the step owns the old job. */
        held = push_step(interview, interview->job);
    if (held)
        interview->job = job;
    else
        cJSON_Delete(job);
    return held;
}

static const char NOTHING_ASKED[] = "nothing was asked";

bool interview_answer(struct interview *interview, const char *words, struct text *why)
{
    const struct question *question = interview->now;
    cJSON *value = NULL;
    if (question == NULL) {
        text_add(why, NOTHING_ASKED);
        return false;
    }
    /* "=" takes the answer of the item before. */
    if (question->same != NULL && strcmp(words, "=") == 0) {
        value = cJSON_Duplicate(question->same, true);
    } else {
        const struct answer_names names = {question->names, question->name_count};
        if (!answer_read(&value, question->field, question->numbered ? &names : NULL, words, why))
            return false;
    }
    if (strcmp(question->field->path, PLACE) == 0 && cJSON_IsString(value)
        && !place_is_known(question, value->valuestring, why)) {
        cJSON_Delete(value);
        return false;
    }
    return try_value(interview, value, words, why);
}

bool interview_skip(struct interview *interview, struct text *why)
{
    if (interview->now == NULL) {
        text_add(why, NOTHING_ASKED);
        return false;
    }
    if (interview->now->field->required) {
        text_add(why, "a job cannot do without this");
        return false;
    }
    return push_step(interview, NULL);
}

/* The whole job is validated again: what is still to come counts now. */
const cJSON *interview_job(const struct interview *interview, struct problems *problems)
{
    const struct law *law = law_of(interview->laws, interview->job, interview->file, problems);
    cJSON *laid = law == NULL ? NULL : laid_out(interview, interview->job, law, problems);
    if (laid != NULL) {
        validate_job(laid, &law->book->fields, reached_by(interview->job), interview->file,
                     problems);
        judge_begin(law->book);
        judge_impossible(law->book, laid, interview->file, problems);
    }
    cJSON_Delete(laid);
    return interview->job;
}

const cJSON *interview_draft(const struct interview *interview)
{
    return interview->job;
}

void interview_free(struct interview *interview)
{
    if (interview == NULL)
        return;
    while (interview->steps != NULL)
        drop_step(interview);
    forget_questions(interview);
    free(interview->again);
    free(interview->asked_back);
    shop_free(&interview->shop);
    cJSON_Delete(interview->job);
    free(interview);
}
