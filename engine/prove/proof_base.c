/* proof_base.c - the base jobs of the cases judged under a place's law: what breaks in them
 * breaks whatever a job is like, and needs no case to be found. */
#include "prove/proof.h"

#include "base/date.h"
#include "check/check.h"
#include "job/json.h"

#include <errno.h>
#include <string.h>

/* Of some law awake: that which erred was judged just now. */
static bool is_rule(const struct laws *laws, const char *name)
{
    for (const struct law *law = laws->first; law != NULL; law = law->next)
        if (law->book != NULL && rulebook_rule(law->book, name) != NULL)
            return true;
    return false;
}

void proof_remark_broken(struct proof *proof, struct place_proof *place, struct proof_block *block,
                         const struct finding *finding)
{
    const bool rule = is_rule(proof->laws, finding->rule);
    /* "The rule itself erred (FILE:LINE): ..."; the place is told already. */
    const char *told = strstr(finding->says, "): ");
    proof_remark(
        proof, place, block,
        (struct remark){finding->file, finding->line, true,
                        arena_format(&proof->arena, "%s\"%s\" erred: %s", rule ? "rule " : "",
                                     finding->rule, told == NULL ? finding->says : told + 3),
                        NULL});
}

/* Says what broke; what a base job fails or lacks is no matter here. */
static void remark_broken(struct proof *proof, struct place_proof *place, struct proof_block *block,
                          const struct result *result)
{
    for (size_t i = 0; i < result->finding_count; i++)
        if (result->findings[i].outcome == OUTCOME_BROKEN)
            proof_remark_broken(proof, place, block, &result->findings[i]);
}

struct base_run {
    struct laws *laws;
    struct proof *proof;
    struct place_proof *place;
    struct proof_block *block;
};

/* The base job at one stage under the block's law: rules that err do so whatever the job
 * is like. */
static void run_base(struct base_run *run, const struct source *source, enum stage stage)
{
    char day[16];
    struct checked checked = {0};
    cJSON *job = NULL;
    const struct profile *profile = run->block->law->profile;
    date_write(profile->from == 0 ? PROOF_FIRST_DAY : profile->from, day);
    json_read(&job, source->text, source->length, source->path, &checked.problems);
    if (job != NULL) {
        cJSON_DeleteItemFromObjectCaseSensitive(job, "stage");
        if (cJSON_AddStringToObject(job, "stage", stage_word(stage)) == NULL)
            problem_out_of_memory(&checked.problems);
        const struct overrides overrides = {
            .jurisdiction = profile->id, .date = day, .alone = true};
        check_job(run->laws, job, &overrides, source->path, &checked);
    }
    /* What follows nothing may be the common part of several editions, to which
     * each adds what its rules need. */
    if (checked.judged && run->block->block->follows != NULL)
        remark_broken(run->proof, run->place, run->block, &checked.result);
    cJSON_Delete(job);
    laws_drop_problems(run->laws, &checked.problems);
    checked_free(&checked);
}

static void run_base_file(void *data, const char *path)
{
    struct base_run *run = data;
    struct problems ignored = {0}; /* the cases say what is wrong with their jobs */
    const struct source *source = home_read(run->laws->home, path, &run->proof->arena,
                                            &run->proof->sources, &ignored);
    for (int stage = 0; source != NULL && stage < STAGE_COUNT; stage++)
        run_base(run, source, (enum stage)stage);
    laws_drop_problems(run->laws, &ignored);
}

void proof_base(struct proof *proof, struct place_proof *place, struct proof_block *block)
{
    struct base_run run = {proof->laws, proof, place, block};
    if (home_each(proof->laws->home, "rules/cases", ".json", 0, run_base_file, &run) != 0
        && errno == ENOMEM)
        proof->laws->out_of_memory = true;
}
