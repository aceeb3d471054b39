#include "law/prepare.h"

#include "base/date.h"
#include "job/json.h"
#include "job/follows.h"
#include "job/lay_out.h"
#include "job/origin.h"
#include "job/path.h"
#include "job/spoken.h"
#include "job/validate.h"
#include "judge/judge.h"
#include "judge/place_fact.h"
#include "profile/home.h"

#include <stdio.h>
#include <string.h>

/* NULL also for what is no text: validation says what is wrong with it. */
static const char *text_field(const cJSON *job, const char *key)
{
    const cJSON *item = cJSON_GetObjectItemCaseSensitive(job, key);
    return cJSON_IsString(item) ? item->valuestring : NULL;
}

/* Writes an override into the job, so that all that follows sees one word. */
static void write_override(cJSON *job, const char *key, const char *value,
                           struct problems *problems)
{
    if (value == NULL)
        return;
    if (!json_set(job, key, cJSON_CreateString(value)))
        problem_out_of_memory(problems);
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

/* One that is none is blamed on the command line, not on the job as well. */
static bool date_may_be_written(const struct overrides *overrides)
{
    return overrides->date == NULL || date_parse(overrides->date) != 0;
}

/* A bad --date is said here; a bad date in the job is said with all else that is wrong
 * with it. */
static const struct law *find_law(struct laws *laws, const cJSON *job,
                                  const struct overrides *overrides, const char *file,
                                  struct problems *problems)
{
    const char *id = text_field(job, "jurisdiction"), *day = text_field(job, "date");
    const long date = day == NULL ? 0 : date_parse(day);
    if (!date_may_be_written(overrides))
        problem_at(problems, PROBLEM_JOB, "--date", NULL, "\"%s\" is not a date (YYYY-MM-DD)",
                   overrides->date);
    if (id == NULL || date == 0 || !date_may_be_written(overrides))
        return NULL;
    return laws_find(laws, id, date, file, problems);
}

/* The law the job itself names, when another is asked for: the same job may be
 * tried in the next county although its own has fields that one does not know.
 * NULL when the job names no place that can be used. */
static const struct law *own_law(struct laws *laws, const cJSON *job,
                                 const struct overrides *overrides, struct problems *problems)
{
    const char *id = text_field(job, "jurisdiction"), *day = text_field(job, "date");
    const long date = day == NULL ? 0 : date_parse(day);
    if ((overrides->jurisdiction == NULL && overrides->date == NULL) || id == NULL || date == 0)
        return NULL;
    struct problems ignored = {0};
    const struct law *law = laws_find(laws, id, date, "", &ignored);
    if (ignored.out_of_memory)
        problem_out_of_memory(problems);
    problems_free(&ignored);
    return law;
}

/* A sheet with something wrong in it fills nothing. The shop's facts come before the plan's:
 * the plan says none of them, and has use for those of all eaves. */
bool prepare_facts(cJSON *job, const struct law *law, const struct shop *shop, bool alone,
                   const char *file, struct problems *problems)
{
    const struct fields *fields = &law->book->fields;
    spoken_settle(job, fields);
    if (shop->tree != NULL)
        spoken_settle(shop->tree, fields);
    const bool sound = shop_validate(shop, fields, problems) == 0;
    if (sound)
        shop_fill(shop, job, fields, file, problems);
    lay_out(job, fields, file, problems);
    if (sound)
        shop_fill_laid(shop, job, fields, file, problems);
    if (!alone)
        place_fact_fill(law->book, job, problems);
    if (sound && !follows_fill(job, fields))
        problem_out_of_memory(problems);
    return sound;
}

/* Everything wrong with the job, in one go, even when its place is unknown. */
static void validate_by_law(struct laws *laws, const struct law *law, const struct law *own,
                            cJSON *job, const struct shop *shop, bool alone, enum stage reached,
                            const char *file, struct problems *problems)
{
    if (law == NULL)
        law = laws_fields(laws, problems);
    if (law == NULL)
        return;
    /* A sheet that could not be read, or holds something wrong, is told of alone. */
    if ((shop->file != NULL && shop->tree == NULL)
        || !prepare_facts(job, law, shop, alone, file, problems))
        return;
    validate_job_moved(job, &law->book->fields, own == NULL ? NULL : &own->book->fields, reached,
                       file, problems);
    judge_begin(law->book);
    judge_impossible(law->book, job, file, problems);
    /* A job tried in another place than its own is judged there by its own word. */
    if (!alone && own == NULL)
        place_fact_ask_back(law->book, job, file, problems);
}

/* Where job and place say otherwise, and what of the place nobody read. A job that says
 * everything itself was not held against its place. */
static void take_place(struct result *result, const cJSON *job, const struct rulebook *book)
{
    const struct profile *profile = book->profile;
    const char **differs = arena_array(&result->arena, profile->fact_count + 1, sizeof(*differs));
    for (size_t i = 0; differs != NULL && i < profile->fact_count; i++) {
        const struct place_fact *fact = &profile->facts[i];
        const cJSON *node = place_fact_said(book, job, fact);
        /* NULL where both agree, or the job is silent. */
        const char *told = place_fact_told(book, job, fact, &result->arena);
        if (told != NULL)
            differs[result->differ_count++] = told;
        result->unconfirmed_facts += origin_of(node) == ORIGIN_PLACE && node != NULL
                                     && (fact->cite.status == STATUS_MEMORY
                                         || fact->cite.status == STATUS_PARALLEL);
    }
    result->differs = differs;
}

void prepare_heading(struct result *result, const cJSON *job, const struct prepared *ready,
                     int stage)
{
    const struct profile *profile = ready->law->profile;
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
    result->own_code = arena_copy(arena, profile->own_code);
    result->as_seen = arena_copy(arena, profile->as_seen);
    const char **doubts = arena_array(arena, profile->doubt_count + 1, sizeof(*doubts));
    for (size_t i = 0; doubts != NULL && i < profile->doubt_count; i++)
        doubts[i] = arena_copy(arena, profile->doubts[i]);
    result->doubts = doubts;
    result->doubt_count = doubts == NULL ? 0 : profile->doubt_count;
    memcpy(result->fingerprint, ready->fingerprint, sizeof(result->fingerprint));
    result->shop = ready->shop[0] == '\0' ? NULL : arena_copy(arena, ready->shop);
    origin_count(job, result->facts);
    take_place(result, job, ready->law->book);
    result->only_stage = stage;
}

/* What a result rests on: rules and figures, and the shop sheet with them. */
static void take_fingerprint(struct prepared *ready, const struct shop *shop)
{
    struct source sheet = {.path = "shop sheet", .text = shop->text, .length = shop->length};
    struct source law = {.path = ready->law->fingerprint, .text = "", .next = &sheet};
    struct sources both = {.first = &law};
    if (shop->text == NULL)
        memcpy(ready->fingerprint, ready->law->fingerprint, sizeof(ready->fingerprint));
    else
        home_fingerprint(&both, ready->fingerprint);
    if (shop->file != NULL)
        snprintf(ready->shop, sizeof(ready->shop), "%.*s",
                 (int)path_quotable(shop->file, strlen(shop->file), sizeof(ready->shop) - 1),
                 shop->file);
}

struct prepared prepare_job(struct laws *laws, cJSON *job, const struct overrides *overrides,
                            const char *file, struct problems *problems)
{
    struct prepared ready = {.stage = asked_stage(overrides, problems)};
    /* First: the overrides are about to take the place of the job's own words. */
    const struct law *own = own_law(laws, job, overrides, problems);
    struct shop shop;
    shop_read(&shop, job, file, &overrides->shop, problems);
    write_override(job, "jurisdiction", overrides->jurisdiction, problems);
    if (date_may_be_written(overrides))
        write_override(job, "date", overrides->date, problems);
    /* --stage narrows the rules; it is the job's own word only if it has none. */
    if (ready.stage >= 0 && text_field(job, "stage") == NULL)
        write_override(job, "stage", overrides->stage, problems);
    ready.law = find_law(laws, job, overrides, file, problems);
    ready.asked = ready.stage >= 0 ? (enum stage)ready.stage : STAGE_PERMIT;
    ready.own = own_stage(job, ready.asked);
    validate_by_law(laws, ready.law, own, job, &shop, overrides->alone,
                    ready.own > ready.asked ? ready.own : ready.asked, file, problems);
    if (ready.law != NULL && ready.law->profile->base_only)
        problem_at(problems, PROBLEM_JOB, file, "/jurisdiction",
                   "\"%s\" only holds what others build on; name one of those that follow it",
                   ready.law->profile->id);
    /* A job with anything wrong is not judged at all: a fact that was passed over could be the
     * one that fails. */
    if (problems->count > 0 || problems->out_of_memory)
        ready.law = NULL;
    if (ready.law != NULL)
        take_fingerprint(&ready, &shop);
    shop_free(&shop);
    return ready;
}
