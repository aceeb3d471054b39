/* interview_job.c - the job of an interview so far, which may lack what is required. */
#include "ask/interview_parts.h"

#include "base/date.h"
#include "job/json.h"
#include "job/validate.h"
#include "judge/place_fact.h"

#include <string.h>

const char *interview_text(const cJSON *job, const char *name)
{
    const cJSON *node = cJSON_GetObjectItemCaseSensitive(job, name);
    return cJSON_IsString(node) ? node->valuestring : NULL;
}

bool interview_states(const cJSON *job, const char *name)
{
    const cJSON *node = cJSON_GetObjectItemCaseSensitive(job, name);
    return node != NULL && !cJSON_IsNull(node);
}

/* A word that is no stage is told when the job is validated. */
enum stage interview_reached(const cJSON *job)
{
    const char *word = interview_text(job, "stage");
    const int stage = word == NULL ? -1 : stage_by_word(word);
    return stage < 0 ? STAGE_PERMIT : (enum stage)stage;
}

/* In the order of the catalogue after those two: the name of the job comes third. */
const struct field *interview_head_of(const struct fields *fields, const cJSON *job)
{
    static const char *const FIRST[] = {interview_place, interview_day};
    for (size_t i = 0; i < sizeof(FIRST) / sizeof(FIRST[0]); i++) {
        const struct field *first = fields_child(fields->root, FIRST[i]);
        if (first != NULL && !interview_states(job, FIRST[i]))
            return first;
    }
    for (const struct field *f = fields->root->first_child; f != NULL; f = f->next)
        if (f->required && !interview_states(job, f->name))
            return f;
    return NULL;
}

/* A day that is none is refused as an answer; until then no law can be told by it. */
const struct law *interview_law(struct laws *laws, const cJSON *job, const char *file,
                                struct problems *problems)
{
    const char *place = interview_text(job, interview_place),
               *day = interview_text(job, interview_day);
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
    return field != NULL && field->required && !interview_states(job, field->name);
}

/* A sheet that was turned down stays at hand, for who goes back over that answer. */
cJSON *interview_lay_out(const struct interview *interview, const cJSON *job, const struct law *law,
                         struct problems *problems)
{
    const struct shop none = {0};
    cJSON *laid = cJSON_Duplicate(job, true);
    if (laid == NULL) {
        problem_out_of_memory(problems);
        return NULL;
    }
    prepare_facts(laid, law, interview->without_sheet ? &none : &interview->shop, false,
                  interview->file, problems);
    return laid;
}

void interview_validate(const struct interview *interview, const cJSON *job,
                        struct problems *problems)
{
    struct problems found = {0};
    const char *file = interview->file;
    const struct law *law = interview_law(interview->laws, job, file, problems);
    if (law == NULL)
        return;
    /* What law_of found is a problem in any case; what is found below may be only that
     * something is still to come. */
    cJSON *laid = interview_lay_out(interview, job, law, &found);
    if (laid != NULL)
        validate_job(laid, &law->book->fields, interview_reached(job), file, &found);
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

/* A required figure that can be only one, such as the version of the format. */
static void fill_certain(const struct fields *fields, cJSON *job, struct problems *problems)
{
    for (const struct field *f = fields->root->first_child; f != NULL; f = f->next)
        if (f->required && f->type == FIELD_INTEGER && f->has_least && f->has_most
            && f->least == f->most && !interview_states(job, f->name)
            && cJSON_AddNumberToObject(job, f->name, f->least) == NULL)
            problem_out_of_memory(problems);
}

/* What the command line says may fill the job, not change it. */
static void preset_fact(cJSON *job, const char *name, const char *value, const char *file,
                        struct problems *problems)
{
    const char *own = interview_text(job, name);
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

/* A place or day that cannot be used ends the interview before its first question. */
void interview_prepare(struct interview *interview, const struct overrides *preset,
                       struct problems *problems)
{
    const struct law *bare = laws_fields(interview->laws, problems);
    if (bare == NULL)
        return;
    fill_certain(&bare->book->fields, interview->job, problems);
    /* The work goes on: the stage it has come to may be another than the job says. */
    if (preset->stage != NULL
        && !json_set(interview->job, "stage", cJSON_CreateString(preset->stage)))
        problem_out_of_memory(problems);
    if (preset->date != NULL && date_parse(preset->date) == 0)
        problem_at(problems, PROBLEM_JOB, "--date", NULL, "\"%s\" is not a date (YYYY-MM-DD)",
                   preset->date);
    preset_fact(interview->job, interview_place, preset->jurisdiction, interview->file, problems);
    preset_fact(interview->job, interview_day, preset->date, interview->file, problems);
    if (problems->count == 0)
        interview_validate(interview, interview->job, problems);
}
