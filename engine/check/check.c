#include "check/check.h"

#include "base/date.h"
#include "base/nearest.h"
#include "job/stage.h"
#include "job/validate.h"
#include "judge/judge.h"

#include <string.h>

static const char *text_field(const cJSON *job, const char *key)
{
    const cJSON *item = cJSON_GetObjectItemCaseSensitive(job, key);
    return cJSON_IsString(item) ? item->valuestring : NULL;
}

/* Writes an override into the job, so that all that follows sees one word. */
static void override(cJSON *job, const char *key, const char *value, struct problems *problems)
{
    if (value == NULL)
        return;
    cJSON *text = cJSON_CreateString(value);
    const bool there = cJSON_HasObjectItem(job, key)
        && cJSON_GetObjectItemCaseSensitive(job, key) != NULL;
    if (text == NULL
        || !(there ? cJSON_ReplaceItemInObjectCaseSensitive(job, key, text)
                   : cJSON_AddItemToObject(job, key, text))) {
        cJSON_Delete(text);
        problem_out_of_memory(problems);
    }
}

/* The stage asked for; -1 for all, -2 when it is no stage (a problem). */
static int asked_stage(const struct overrides *overrides, struct problems *problems)
{
    if (overrides->stage == NULL)
        return -1;
    const int stage = stage_by_word(overrides->stage);
    if (stage < 0) {
        problem_at(problems, PROBLEM_JOB, "--stage", NULL,
                   "\"%s\" is not one of permit, deck, dry-in, final", overrides->stage);
        return -2;
    }
    return stage;
}

/* The stage the work has come to, by the job's own word. */
static enum stage own_stage(const cJSON *job, enum stage otherwise)
{
    const char *word = text_field(job, "stage");
    const int stage = word == NULL ? -1 : stage_by_word(word);
    return stage < 0 ? otherwise : (enum stage)stage;
}

static const struct law *find_law(struct laws *laws, const cJSON *job,
                                  const struct overrides *overrides, const char *file,
                                  struct problems *problems)
{
    const char *id = text_field(job, "jurisdiction"), *day = text_field(job, "date");
    const long date = day == NULL ? 0 : date_parse(day);
    if (overrides->date != NULL && date == 0)
        problem_at(problems, PROBLEM_JOB, "--date", NULL, "\"%s\" is not a date (YYYY-MM-DD)",
                   overrides->date);
    if (id == NULL || date == 0)
        return NULL;
    return laws_find(laws, id, date, file, problems);
}

/* Everything wrong with the job, in one go, even when its place is unknown. */
static void hold_against_fields(struct laws *laws, const struct law *law, const cJSON *job,
                                enum stage reached, const char *file, struct problems *problems)
{
    if (law == NULL)
        law = laws_fields(laws, problems);
    if (law == NULL)
        return;
    job_validate(job, &law->book->fields, reached, file, problems);
    judge_impossible(law->book, job, file, problems);
}

static void fill_heading(struct result *result, const cJSON *job, const struct law *law, int stage)
{
    const struct profile *profile = law->profile;
    struct arena *arena = &result->arena;
    result->job = arena_copy(arena, text_field(job, "job"));
    memcpy(result->date, text_field(job, "date"), 11);
    result->jurisdiction = arena_copy(arena, profile->id);
    result->jurisdiction_title = arena_copy(arena, profile->title);
    result->invented = profile->invented;
    const char **chain = arena_array(arena, profile->chain_count, sizeof(*chain));
    if (chain != NULL)
        for (size_t i = 0; i < profile->chain_count; i++)
            chain[i] = arena_copy(arena, profile->chain[i]);
    result->chain = chain;
    result->chain_count = profile->chain_count;
    result->edition = arena_copy(arena, profile->edition);
    result->as_seen = arena_copy(arena, profile->as_seen);
    memcpy(result->fingerprint, law->fingerprint, sizeof(result->fingerprint));
    result->only_stage = stage;
}

void check_job(struct laws *laws, cJSON *job, const struct overrides *overrides,
               const char *file, struct checked *out)
{
    struct problems *problems = &out->problems;
    const int stage = asked_stage(overrides, problems);
    override(job, "jurisdiction", overrides->jurisdiction, problems);
    override(job, "date", overrides->date, problems);
    /* --stage narrows the rules; it is the job's own word only if it has none. */
    if (stage >= 0 && text_field(job, "stage") == NULL)
        override(job, "stage", overrides->stage, problems);
    const struct law *law = find_law(laws, job, overrides, file, problems);
    const enum stage asked = stage >= 0 ? (enum stage)stage : STAGE_PERMIT;
    const enum stage own = own_stage(job, asked);
    hold_against_fields(laws, law, job, own > asked ? own : asked, file, problems);
    if (problems->count > 0 || problems->out_of_memory || law == NULL)
        return;
    fill_heading(&out->result, job, law, stage);
    const enum stage reached = stage >= 0 ? asked : own;
    if (judge(law->book, job, stage, reached, &out->result) != 0)
        problem_out_of_memory(problems);
    else
        out->judged = true;
}

void checked_free(struct checked *checked)
{
    problems_free(&checked->problems);
    result_free(&checked->result);
}
