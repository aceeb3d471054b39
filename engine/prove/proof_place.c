#include "prove/proof.h"

#include "base/date.h"

#include <ctype.h>
#include <stdlib.h>
#include <string.h>

/* More days than any place has. */
enum { DAYS_MOST = 512 };

/* Remarks ------------------------------------------------------------------------------- */

/* A file is loaded for each stretch of days, and says the same each time. */
static bool said_before(const struct place_proof *place, const struct remark *remark)
{
    for (const struct proof_block *b = place->blocks; b != NULL; b = b->next)
        for (const struct remark *r = b->remarks; r != NULL; r = r->next)
            if (r->line == remark->line && strcmp(r->says, remark->says) == 0)
                return true;
    return false;
}

void proof_remark(struct proof *proof, struct place_proof *place, struct proof_block *block,
                  struct remark remark)
{
    struct remark *kept = arena_alloc(&proof->arena, sizeof(*kept));
    if (kept == NULL || remark.says == NULL || said_before(place, &remark))
        return;
    *kept = remark;
    kept->file = arena_copy(&proof->arena, remark.file);
    kept->says = arena_copy(&proof->arena, remark.says);
    if (kept->says == NULL)
        return;
    struct remark **at = &block->remarks;
    while (*at != NULL)
        at = &(*at)->next;
    *at = kept;
    if (remark.error)
        place->errors++;
    else
        place->warnings++;
}

/* Takes "FILE:LINE: " off the beginning of what Lua said. */
static struct remark remark_of(struct arena *arena, const struct problem *problem)
{
    struct remark remark = {problem->file, problem->line, true, problem->message, NULL};
    const char *colon = problem->file != NULL ? NULL : strchr(problem->message, ':');
    if (colon == NULL || !isdigit((unsigned char)colon[1]))
        return remark;
    char *rest;
    const long line = strtol(colon + 1, &rest, 10);
    if (rest[0] != ':' || rest[1] != ' ' || line > 10000000)
        return remark;
    remark.file = arena_copy_n(arena, problem->message, (size_t)(colon - problem->message));
    remark.line = (int)line;
    remark.says = rest + 2;
    return remark;
}

/* A place that cannot be loaded is broken, whatever else it has. */
static void remark_problems(struct proof *proof, struct place_proof *place,
                            struct proof_block *block, const struct problems *problems)
{
    place->broken = true;
    for (const struct problem *p = problems->first; p != NULL; p = p->next)
        proof_remark(proof, place, block, remark_of(&proof->arena, p));
    if (problems->out_of_memory)
        problem_out_of_memory(&proof->problems);
}

/* Blocks -------------------------------------------------------------------------------- */

static struct proof_block *block_new(struct proof *proof, struct place_proof *place)
{
    struct proof_block *block = arena_alloc(&proof->arena, sizeof(*block));
    if (block == NULL)
        return NULL;
    struct proof_block **at = &place->blocks;
    while (*at != NULL)
        at = &(*at)->next;
    *at = block;
    return block;
}

/* In order, each once. */
struct days {
    long items[DAYS_MOST];
    size_t count;
};

static void days_add(struct days *days, long day)
{
    size_t at = 0;
    while (at < days->count && days->items[at] < day)
        at++;
    if ((at < days->count && days->items[at] == day) || days->count == DAYS_MOST)
        return;
    memmove(&days->items[at + 1], &days->items[at], (days->count - at) * sizeof(days->items[0]));
    days->items[at] = day;
    days->count++;
}

static void days_of(struct proof *proof, const struct place *place, struct days *days,
                    struct strings *chain)
{
    for (const struct block *b = place->blocks; b != NULL; b = b->next) {
        days_add(days, b->from == 0 ? PROOF_FIRST_DAY : b->from);
        /* On the day after its last, something else binds, or nothing. */
        if (b->to != 0)
            days_add(days, b->to);
        if (b->follows != NULL)
            strings_add_once(chain, &proof->arena, b->follows);
    }
}

/* Every day on which the place, or one it follows, changes. */
static void find_days(struct proof *proof, struct laws *laws, const struct place *place,
                      struct days *days)
{
    struct strings chain = {0};
    struct problems ignored = {0};
    days_add(days, PROOF_FIRST_DAY);
    days_of(proof, place, days, &chain);
    for (size_t i = 0; !proof->arena.failed && i < chain.count && i < PROFILE_LONGEST_CHAIN; i++) {
        place = place_cache_get(&laws->cache, laws->home, chain.items[i], &proof->arena,
                                &proof->sources, &ignored);
        if (place != NULL)
            days_of(proof, place, days, &chain);
    }
    if (ignored.out_of_memory)
        problem_out_of_memory(&proof->problems);
    problems_free(&ignored);
}

/* One place ----------------------------------------------------------------------------- */

/* One place as it is proved. */
struct proving {
    struct laws *laws;
    struct proof *proof;
    struct place_proof *place;
    const struct place *written;
    struct days days;
    long date; /* or 0: all */
};

/* Two blocks may share a law. */
static void watch_law(struct proof *proof, const struct law *law)
{
    if (!proof_watches(proof, law))
        proof_watch(proof, law);
}

/* What holds from that day on. False when nothing does. */
static bool prove_stretch(struct proving *p, const struct block *written, long day)
{
    struct problems problems = {0};
    const struct law *law = laws_find(p->laws, p->place->id, day, "", &problems);
    /* A job's problem only says that nothing is in force then. */
    const bool broken = problems_any(&problems, PROBLEM_RULES) || problems.out_of_memory;
    struct proof_block *block = law == NULL && !broken ? NULL : block_new(p->proof, p->place);
    if (block != NULL) {
        *block = (struct proof_block){.from = day == PROOF_FIRST_DAY ? 0 : day,
                                      .to = written->to,
                                      .follows = written->follows,
                                      .file = p->written->source->path,
                                      .block = written,
                                      .law = law};
        if (law == NULL)
            remark_problems(p->proof, p->place, block, &problems);
    }
    laws_drop_problems(p->laws, &problems);
    if (block == NULL || law == NULL)
        return broken;
    /* The stretch is narrower than the block where a parent changes. */
    block->from = law->profile->from;
    block->to = law->profile->to;
    watch_law(p->proof, law);
    /* The child's own loading said what is wrong with the parent. */
    const char *follows = p->proof->beside != NULL ? p->proof->beside : written->follows;
    const struct law_digest *digest = follows == NULL
                                          ? NULL
                                          : proof_digest(p->laws, p->proof, follows, day);
    const struct law *parent = digest == NULL ? NULL : digest->law;
    if (digest != NULL) {
        block->follows = parent->profile->title;
        block->parent = parent->profile;
        proof_differences(p->proof, block, digest);
    }
    /* Only differences are asked for. */
    if (p->proof->beside != NULL)
        return true;
    proof_lint(p->proof, p->place, block, parent);
    proof_traps(p->laws, p->proof, p->place, block, parent);
    proof_base(p->proof, p->place, block);
    return true;
}

static const char *day_text(struct proof *proof, long day, const char *otherwise)
{
    char text[16];
    if (day == 0 || day == PROOF_FIRST_DAY)
        return otherwise;
    date_write(day, text);
    return arena_copy(&proof->arena, text);
}

/* Says of days that a block covers and its parents do not. */
static void say_unreached(struct proving *p, const struct block *block, long from, long to,
                          bool whole)
{
    struct proof *proof = p->proof;
    struct proof_block *at = p->place->blocks;
    for (struct proof_block *b = at; b != NULL; b = b->next)
        at = b;
    if (at == NULL || whole)
        at = block_new(proof, p->place);
    if (at == NULL)
        return;
    /* Made here, since no stretch of it could be proved. */
    if (at->block == NULL)
        *at = (struct proof_block){.from = block->from,
                                   .to = block->to,
                                   .block = block,
                                   .follows = block->follows,
                                   .file = p->written->source->path};
    const char *first = day_text(proof, from, "the beginning");
    const char *end = day_text(proof, to, "no end");
    const char *says = whole
                           ? arena_format(
                               &proof->arena,
                               "no date can reach this edition, from %s to %s: %s has none "
                               "then; give dates on which it has, or follow another",
                               first, end, block->follows)
                           : arena_format(&proof->arena,
                                          "a job dated from %s to %s is refused: %s has no edition "
                                          "then; begin or end this one with it",
                                          first, end, block->follows);
    proof_remark(proof, p->place, at,
                 (struct remark){p->written->source->path, block->line, whole, says, NULL});
}

static bool covers(const struct block *block, long day)
{
    return block->from <= day && (block->to == 0 || day < block->to);
}

/* Every stretch of an edition on which all that it follows stays the same. */
static void prove_edition(struct proving *p, const struct block *block)
{
    long missing = 0; /* since when nothing is in force */
    bool reached = false, first = true;
    for (size_t i = 0; i < p->days.count; i++) {
        const long day = p->days.items[i];
        /* With a day asked for, only the stretch that holds it. */
        const long next = i + 1 < p->days.count ? p->days.items[i + 1] : 0;
        const bool asked = p->date == 0 || (day <= p->date && (next == 0 || p->date < next));
        if (!covers(block, day) || !asked)
            continue;
        const bool stands = prove_stretch(p, block, day);
        laws_rest(p->laws, PROOF_LAWS_AWAKE);
        if (!stands && missing == 0)
            missing = day;
        else if (stands && missing != 0) {
            /* Nor where it gives no beginning. */
            if (reached || block->from > PROOF_FIRST_DAY)
                say_unreached(p, block, missing, day, false);
            missing = 0;
        }
        reached = reached || stands;
        first = false;
    }
    /* An edition that gives no end goes as far as what it follows: nothing is amiss. */
    if (missing != 0 && (!reached || block->to != 0))
        say_unreached(p, block, missing, block->to, !reached);
    else if (first && p->date == 0)
        say_unreached(p, block, block->from, block->to, true);
}

/* Days between two editions on which neither is in force. */
static void say_gap(struct proving *p, const struct block *before)
{
    const struct block *after = before->next;
    struct proof_block *at = p->place->blocks;
    while (at != NULL && at->block != after)
        at = at->next;
    if (at == NULL || before->to == 0 || after->from <= before->to)
        return;
    const char *from = day_text(p->proof, before->to, "");
    const char *to = day_text(p->proof, after->from, "");
    const char *says = arena_format(&p->proof->arena,
                                    "no edition covers %s up to %s: a job dated then is refused; "
                                    "leave `to` out of the edition before, or begin this one at %s",
                                    from, to, from);
    proof_remark(p->proof, p->place, at, (struct remark){at->file, after->line, false, says, NULL});
}

/* "jurisdictions/example/tamarack.rules.lua" of the place's own file. */
static void note_own_rules(struct proving *p, const struct block *block)
{
    const char *own = p->written->source->path;
    if (block->rules != NULL)
        strings_add_once(&p->place->own_rules, &p->proof->arena,
                         arena_format(&p->proof->arena, "%.*s/%s", (int)(strrchr(own, '/') - own),
                                      own, block->rules));
}

struct place_proof *proof_place_new(struct proof *proof, const char *id)
{
    struct place_proof **at = &proof->places;
    while (*at != NULL)
        at = &(*at)->next;
    struct place_proof *place = arena_alloc(&proof->arena, sizeof(*place));
    if (place == NULL)
        return NULL;
    place->id = place->title = id;
    place->cases_file = arena_format(&proof->arena, "jurisdictions/%s.cases.lua", id);
    if (place->cases_file == NULL)
        return NULL;
    *at = place;
    return place;
}

void proof_place_unread(struct proof *proof, const char *path, const char *why)
{
    struct place_proof *place = proof_place_new(proof, arena_copy(&proof->arena, path));
    struct proof_block *block = place == NULL ? NULL : block_new(proof, place);
    if (block != NULL)
        proof_remark(proof, place, block,
                     (struct remark){path, 0, true, arena_copy(&proof->arena, why), NULL});
}

void proof_place(struct laws *laws, struct proof *proof, struct place_proof *place, long date)
{
    struct proving p = {.laws = laws, .proof = proof, .place = place, .date = date};
    struct problems problems = {0};
    place->proved = true;
    p.written = place_cache_get(&laws->cache, laws->home, place->id, &proof->arena, &proof->sources,
                                &problems);
    if (p.written == NULL) {
        struct proof_block *block = block_new(proof, p.place);
        if (block != NULL)
            remark_problems(proof, p.place, block, &problems);
    } else {
        p.place->title = p.written->blocks->title;
        p.place->invented = p.written->blocks->invented;
        find_days(proof, laws, p.written, &p.days);
        /* The day asked for begins a stretch, so that its law is the one loaded. */
        if (date != 0)
            days_add(&p.days, date);
        for (const struct block *b = p.written->blocks; b != NULL; b = b->next) {
            note_own_rules(&p, b);
            prove_edition(&p, b);
        }
        for (const struct block *b = p.written->blocks; b->next != NULL; b = b->next)
            say_gap(&p, b);
        if (proof->beside == NULL) {
            proof_ends(proof, place);
            proof_files(proof, place, p.written);
        }
    }
    laws_drop_problems(laws, &problems);
}
