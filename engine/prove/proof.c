#include "prove/proof.h"

#include "base/date.h"
#include "base/nearest.h"
#include "profile/places.h"

#include <errno.h>
#include <string.h>

/* Cases --------------------------------------------------------------------------------- */

/* The place beside which the file stands, or NULL. */
static struct place_proof *place_of_file(struct proof *proof, const char *file)
{
    for (struct place_proof *place = proof->places; place != NULL; place = place->next)
        if (strcmp(place->cases_file, file) == 0 || strings_have(&place->own_rules, file))
            return place;
    return NULL;
}

/* Cases of the topics' own files belong to no place: their lines are in proof->lines. */
static void note_case(void *data, const char *file, bool held, const char *line)
{
    struct proof *proof = data;
    struct place_proof *place = place_of_file(proof, file);
    if (place == NULL)
        return;
    if (held)
        place->cases.held++;
    else
        place->cases.failed++;
    if (line[0] != '\0')
        strings_add(&place->lines, &proof->arena,
                    arena_copy_n(&proof->arena, line, strcspn(line, "\n")));
}

/* A rule of the place that only its cases reach: an error of its file. */
static void note_broke(void *data, const struct finding *finding)
{
    struct proof *proof = data;
    struct place_proof *place = finding->file == NULL ? NULL : place_of_file(proof, finding->file);
    struct proof_block *block = place == NULL ? NULL : place->blocks;
    /* Any stretch that could be loaded: the remark names file and line itself. */
    while (block != NULL && block->law == NULL)
        block = block->next;
    if (block != NULL)
        proof_remark_broken(proof, place, block, finding);
}

static void note_unread(void *data, const char *path, const char *why)
{
    proof_place_unread(data, path, why);
}

/* A place is proved before its cases are run, while its laws are awake. */
static void prove_place_of(void *data, const char *under)
{
    struct proof *proof = data;
    const size_t rank = proof_order_rank(proof, under);
    if (rank < proof->ids.count && !proof->order[rank]->proved && !proof->arena.failed)
        proof_place(proof->laws, proof, proof->order[rank], proof->date);
}

static void prove_all(struct proof *proof)
{
    for (size_t i = 0; i < proof->ids.count && !proof->arena.failed; i++)
        if (!proof->order[i]->proved)
            proof_place(proof->laws, proof, proof->order[i], proof->date);
    if (!places_unread(proof->laws->home, note_unread, proof))
        proof->arena.failed = true;
    proof_files_of_none(proof);
}

static size_t rank_of(void *data, const char *under)
{
    return proof_order_rank(data, under);
}

static void judged_case(void *data, const struct law *law, const char *rule,
                        const struct probe *probe)
{
    proof_reads_case(data, law, rule, probe);
}

static void run_cases(struct laws *laws, struct proof *proof, const char *topic, const char *id)
{
    struct problems problems = {0};
    const struct prober prober = {proof_cover_probe, proof};
    struct cases_wanted wanted = {.prober = &prober,
                                  .topic = topic,
                                  .place = id,
                                  .judged = judged_case,
                                  .note = note_case,
                                  .broke = note_broke,
                                  .data = proof};
    if (proof->of_all) {
        wanted.rank = rank_of;
        wanted.comes_to = prove_place_of;
    }
    if (id != NULL)
        wanted.own_rules = &proof->places->own_rules;
    cases_run(laws, &wanted, &proof->cases, &proof->lines, &problems);
    /* Copied, so that proof->problems owns them all. */
    for (const struct problem *p = problems.first; p != NULL; p = p->next)
        problem_at_line(&proof->problems, p->kind, p->file, p->line, p->column, "%s", p->message);
    if (problems.out_of_memory)
        problem_out_of_memory(&proof->problems);
    problems_free(&problems);
}

/* What to prove ------------------------------------------------------------------------- */

struct topics {
    const char *wanted;
    bool found;
    struct nearest nearest;
};

/* Topics are the files of cases: rules/cases/TOPIC.lua. */
static void see_topic(void *data, const char *path)
{
    struct topics *topics = data;
    char name[120];
    const char *file = strrchr(path, '/') + 1;
    const size_t length = strlen(file) - strlen(".lua");
    if (length >= sizeof(name))
        return;
    memcpy(name, file, length);
    name[length] = '\0';
    topics->found = topics->found || strcmp(name, topics->wanted) == 0;
    nearest_offer(&topics->nearest, name);
}

static void say_unknown(struct laws *laws, struct proof *proof, const char *name,
                        const struct topics *topics)
{
    char near[PROFILE_NEAR_BYTES];
    profile_near_names(laws->home, name, near, sizeof(near));
    problem_at(&proof->problems, PROBLEM_JOB, "proof", NULL,
               "there is no topic and no jurisdiction \"%s\"; the nearest are: %s%s%s", name,
               topics->nearest.name == NULL ? "" : topics->nearest.name,
               topics->nearest.name == NULL || near[0] == '\0' ? "" : ", ",
               near[0] == '\0' && topics->nearest.name == NULL ? "(none: is this the right --home?)"
                                                               : near);
}

/* The one place asked for has no edition on the day asked for. */
static void say_no_edition(struct proof *proof, long date)
{
    char day[16];
    if (date == 0 || proof->places == NULL || proof->places->blocks != NULL)
        return;
    date_write(date, day);
    problem_at(&proof->problems, PROBLEM_JOB, "--date", NULL, "no edition of %s covers %s",
               proof->places->id, day);
}

/* Last, when all cases have run: then it is known which figures they were judged by. */
static void finish_blocks(struct proof *proof)
{
    for (struct place_proof *place = proof->places; place != NULL; place = place->next)
        for (struct proof_block *b = place->blocks; b != NULL; b = b->next)
            if (b->law != NULL && proof->beside == NULL)
                proof_cover(proof, place, b);
    if (proof->arena.failed)
        problem_out_of_memory(&proof->problems);
}

void proof_run(struct laws *laws, const char *name, long date, struct proof *proof)
{
    struct topics topics = {.wanted = name == NULL ? "" : name};
    nearest_start(&topics.nearest, topics.wanted);
    if (home_each(laws->home, "rules/cases", ".lua", 0, see_topic, &topics) != 0
        && errno == ENOMEM) {
        problem_out_of_memory(&proof->problems);
        return;
    }
    /* A word that names both is taken as the topic; county new lets no place be called
     * so. */
    const char *id = NULL;
    if (proof->beside != NULL && !profile_exists(laws->home, proof->beside)) {
        say_unknown(laws, proof, proof->beside, &topics);
        return;
    }
    if (name != NULL && !topics.found) {
        if (!profile_exists(laws->home, name)) {
            say_unknown(laws, proof, name, &topics);
            return;
        }
        id = name;
    }
    proof->of_places = !topics.found;
    proof->of_all = name == NULL;
    proof->laws = laws;
    proof->date = date;
    if (id != NULL) {
        struct place_proof *place = proof_place_new(proof, id);
        if (place != NULL)
            proof_place(laws, proof, place, date);
        say_no_edition(proof, date);
    } else if (name == NULL) {
        proof_order(laws, proof);
        /* With nothing but differences wanted no case is run. */
        if (proof->beside != NULL)
            prove_all(proof);
    }
    /* What was asked for does not exist: there is nothing to prove. */
    if (proof->problems.count > 0)
        return;
    if (proof->beside != NULL) {
        finish_blocks(proof);
        return;
    }
    /* Under a place that cannot be loaded every job is refused. */
    if (id == NULL || !proof->places->broken)
        run_cases(laws, proof, id == NULL ? name : NULL, id);
    if (proof->of_all)
        prove_all(proof);
    proof_reads_say(proof);
    finish_blocks(proof);
}

void proof_free(struct proof *proof)
{
    arena_free(&proof->arena);
    problems_free(&proof->problems);
    text_free(&proof->lines);
    *proof = (struct proof){0};
}
