#include "judge/recall.h"

#include "judge/verdict.h"

#include <string.h>

struct kept_call {
    struct charge charge;
    enum sandbox_stop stop;
    const char *text;
    bool present;
};

/* Trails ----------------------------------------------------------------------------------- */

/* Who tries rules out wants to see them judged. */
static struct memory *memory_of(const struct judging *judging)
{
    return judging->apart || judging->probe != NULL ? NULL : judging->book->memory;
}

/* The walk gave the items their numbers. */
void recall_begin(struct judging *judging, const struct node *items, size_t depth,
                  struct trail *trail)
{
    trail->number = ++judging->records;
    trail_know(trail, 0, judging->root != NULL ? judging->root : node_root(judging).spot);
    for (size_t i = 0; i < depth; i++)
        trail_know(trail, i + 1, items[i].spot);
    trail->start = depth + 1;
    trail->count = 0;
}

unsigned recall_stage(const struct judging *judging)
{
    return (unsigned)judging->reached * 2 + judging->inspecting;
}

struct charge recall_charged(const struct judging *judging)
{
    const struct sandbox *sandbox = judging->book->sandbox;
    return (struct charge){-sandbox->total_left, judging->output, judging->output_of_rule};
}

struct charge recall_charged_since(const struct judging *judging, const struct charge *before)
{
    const struct charge now = recall_charged(judging);
    return (struct charge){now.steps - before->steps, now.output - before->output,
                           now.output_of_rule - before->output_of_rule};
}

bool recall_charge(struct judging *judging, const struct charge *charge)
{
    struct sandbox *sandbox = judging->book->sandbox;
    if (sandbox->total_left <= charge->steps
        || judging->output_of_rule + charge->output_of_rule > OUTPUT_OF_RULE_MOST)
        return false;
    sandbox->total_left -= charge->steps;
    sandbox->taken += charge->steps;
    judging->output += charge->output;
    judging->output_of_rule += charge->output_of_rule;
    judging->cost = *charge;
    return true;
}

static void start_noting(struct judging *judging)
{
    struct trail *trail = &judging->trail;
    trail->number = ++judging->records; /* what was looked for is not known */
    for (size_t i = 0; i < trail->start; i++)
        trail_know(trail, i, trail->known[i]);
    judging->trail.count = 0;
    judging->trail.on = true;
    judging->trail.unfit = false;
    judging->charged = recall_charged(judging);
}

/* Copies ------------------------------------------------------------------------------------ */

/* What a rule itself says lives as long as the memory. */
static const char *copy_text(struct memory *memory, const struct rule *rule, const char *text)
{
    return text == rule->mend || text == rule->caution || text == rule->cause
               ? text
               : memory_copy(memory, text);
}

static const struct finding *copy_finding(struct memory *memory, const struct rule *rule,
                                          const struct finding *finding)
{
    struct finding *to = memory_alloc(memory, sizeof(*to));
    if (to == NULL)
        return NULL;
    *to = *finding;
    const char **texts[] = {&to->says,  &to->note, &to->remark, &to->disagree, &to->unsure,
                            &to->cause, &to->duty, &to->mend,   &to->caution};
    for (size_t i = 0; i < sizeof(texts) / sizeof(texts[0]); i++)
        *texts[i] = copy_text(memory, rule, *texts[i]);
    struct value *values[] = {&to->required, &to->also, &to->rival, &to->found};
    for (size_t i = 0; i < sizeof(values) / sizeof(values[0]); i++)
        memory_copy_value(memory, values[i]);
    to->kept_cites = NULL; /* all of what it rests on is kept in one piece */
    to->cites = memory_copy_array(memory, to->cites, to->cite_count, sizeof(*to->cites));
    to->figures = memory_copy_array(memory, to->figures, to->figure_count, sizeof(*to->figures));
    to->makers = memory_copy_array(memory, to->makers, to->maker_count, sizeof(*to->makers));
    to->work = memory_copy_texts(memory, to->work, to->work_count);
    to->where = to->item = to->lacks = NULL;
    to->reads = NULL;
    to->read_count = 0;
    to->wanting = NULL;
    return to;
}

/* Findings ---------------------------------------------------------------------------------- */

/* The facts read, as they stand in this job. */
static void recall_reads(struct judging *judging, const struct kept_telling *kept)
{
    struct record *record = &judging->record;
    record->reads = arena_room(judging->arena, kept->read_count + 1, sizeof(struct spot *));
    record->read_count = record->reads == NULL ? 0 : kept->read_count;
    for (size_t i = 0; i < record->read_count; i++)
        record->reads[i] = judging->trail.known[kept->reads[i]];
}

/* The fact that an open one waits for, in this job. */
static const struct lacking *lacking_of(struct judging *judging, const struct kept_telling *kept)
{
    judging->record.missing = kept->lacking;
    judging->record.ask_place = kept->ask_place;
    judging->record.missing_pointer = spot_pointer(judging->spots,
                                                   judging->trail.known[kept->missing]);
    return verdict_lacking(judging);
}

/* What of it is this job's own: the facts read, and what is asked for. */
static void tell_own(struct judging *judging, const struct kept_telling *kept,
                     struct finding *finding)
{
    judging->record = (struct record){0};
    recall_reads(judging, kept);
    verdict_take_reads(finding, judging);
    if (finding->met == MET_NO && !finding->written)
        finding->wanting = verdict_wanting(judging, finding);
    if (kept->open && lacking_of(judging, kept) != NULL)
        verdict_asks(finding, judging);
}

/* What it rests on is touched, for a survey. */
static void recall_touch(struct judging *judging)
{
    struct trail *trail = &judging->trail;
    for (size_t i = 0; trail->touch != 0 && i < trail->count; i++) {
        struct spot *to = trail->known[trail->start + i];
        if (trail->asked[i]->kind == STEP_FOLLOW)
            trail_touch_referred(trail, trail->known[trail->asked[i]->from], to);
        else
            trail_touch(trail, to);
    }
}

/* Of one that is written, or of which no more is wanted, the rest is left. */
static struct finding *tell_brief(struct run *run, const struct kept_finding *kept)
{
    struct finding *finding = run_brief_finding(run);
    if (finding == NULL)
        return NULL;
    finding->outcome = kept->outcome;
    finding->met = kept->met;
    finding->why = kept->why;
    finding->measured = kept->measured;
    finding->written = run->judging.wanted == WANTED_APPLYING;
    return finding;
}

static struct finding *tell_whole(struct run *run, const struct kept_telling *kept)
{
    struct finding *finding = run_room_for_finding(run);
    if (finding != NULL)
        *finding = *kept->finding;
    return finding;
}

/* Reports that are written need no more of it than what one wrote before. */
static bool is_written(const struct judging *judging, const struct kept_telling *kept)
{
    return judging->wanted == WANTED_APPLYING && kept->json.complete;
}

static bool is_tellable(const struct judging *judging, const struct kept_finding *kept)
{
    const struct kept_telling *telling = kept->telling;
    return !judging_tells(judging, kept->outcome)
           || (telling != NULL && (telling->finding != NULL || is_written(judging, telling)));
}

struct finding *recall_tell(struct run *run, const struct kept_finding *kept)
{
    struct judging *judging = &run->judging;
    const bool outcome_only = judging->wanted == WANTED_OUTCOMES;
    struct finding *finding = outcome_only || is_written(judging, kept->telling)
                                  ? tell_brief(run, kept)
                                  : tell_whole(run, kept->telling);
    if (finding == NULL || outcome_only)
        return finding;
    finding->kept = &kept->telling->json;
    tell_own(judging, kept->telling, finding);
    return finding;
}

const struct kept_finding *recall_finding(struct judging *judging, size_t rule,
                                          const struct walk *walk)
{
    struct memory *memory = memory_of(judging);
    if (memory == NULL)
        return NULL;
    recall_begin(judging, walk->items, walk->depth, &judging->trail);
    const struct kept_finding *kept = memory_find(
        memory, (struct memory_key){rule, recall_stage(judging)}, judging->spots, &judging->trail,
        &judging->book->fields);
    if (kept != NULL && is_tellable(judging, kept) && recall_charge(judging, &kept->charge))
        return kept;
    start_noting(judging);
    return NULL;
}

/* The spots of the facts read, among those known. */
static const unsigned *known_reads(struct memory *memory, const struct judging *judging)
{
    const struct record *record = &judging->record;
    unsigned *reads = memory_alloc(memory, record->read_count * sizeof(*reads) + 1);
    for (size_t i = 0; reads != NULL && i < record->read_count; i++) {
        reads[i] = record->read_known[i];
        if (judging->trail.known[reads[i]] != record->reads[i])
            return NULL;
    }
    return reads;
}

/* NULL where it cannot be told again of another job. */
static struct kept_telling *keep_telling(struct judging *judging, const struct rule *rule,
                                         const struct finding *finding)
{
    struct memory *memory = memory_of(judging);
    const struct record *record = &judging->record;
    struct kept_telling *kept = memory_alloc(memory, sizeof(*kept));
    const unsigned *reads = known_reads(memory, judging);
    if (kept == NULL || reads == NULL)
        return NULL;
    *kept = (struct kept_telling){.reads = reads,
                                  .read_count = record->read_count,
                                  .open = finding->outcome == OUTCOME_OPEN
                                          && finding->lacks != NULL,
                                  .lacking = record->missing,
                                  .ask_place = record->ask_place};
    if (kept->open) {
        kept->missing = trail_known(&judging->trail, record->missing_pointer);
        if (kept->missing < 0)
            return NULL;
    }
    memory_lend(memory, &kept->json, kept->open);
    if (judging->wanted == WANTED_APPLYING)
        return kept;
    kept->finding = copy_finding(memory, rule, finding);
    return kept->finding == NULL ? NULL : kept;
}

void recall_keep_finding(struct judging *judging, size_t number, struct finding *finding)
{
    struct memory *memory = memory_of(judging);
    struct trail *trail = &judging->trail;
    const struct rule *rule = judging->book->by_id[number];
    if (!trail->on)
        return;
    trail->on = false;
    judging->cost = recall_charged_since(judging, &judging->charged);
    if (trail->unfit || judging->arena->failed || finding->outcome == OUTCOME_BROKEN
        || memory_full(memory))
        return;
    const bool told = judging_tells(judging, finding->outcome);
    struct kept_finding *kept = memory_alloc(memory, sizeof(*kept));
    struct kept_telling *telling = told ? keep_telling(judging, rule, finding) : NULL;
    if (kept == NULL || (told && telling == NULL))
        return;
    *kept = (struct kept_finding){.charge = judging->cost,
                                  .outcome = finding->outcome,
                                  .met = finding->met,
                                  .why = finding->why,
                                  .measured = finding->measured,
                                  .telling = telling};
    const struct memory_key key = {number, recall_stage(judging)};
    if (!memory_full(memory) && memory_keep(memory, key, judging->spots, trail, kept) && told)
        finding->kept = &telling->json;
}

struct memory_key recall_key_of_call(const struct judging *judging, const struct call *call)
{
    return (struct memory_key){rulebook_function_number(judging->book, call->function),
                               recall_stage(judging)};
}

/* Calls ------------------------------------------------------------------------------------- */

bool recall_call(struct judging *judging, struct call *call, enum sandbox_stop *stop)
{
    struct memory *memory = memory_of(judging);
    if (memory == NULL)
        return false;
    recall_begin(judging, call->items, call->depth, &judging->trail);
    const struct kept_call *kept = memory_find(memory, recall_key_of_call(judging, call),
                                               judging->spots, &judging->trail,
                                               &judging->book->fields);
    if (kept == NULL || !recall_charge(judging, &kept->charge)) {
        start_noting(judging);
        return false;
    }
    recall_touch(judging);
    *stop = kept->stop;
    call->text = kept->text;
    if (kept->stop == SANDBOX_DONE)
        call->present = kept->present;
    return true;
}

void recall_keep_call(struct judging *judging, const struct call *call, enum sandbox_stop stop)
{
    struct memory *memory = memory_of(judging);
    struct trail *trail = &judging->trail;
    if (!trail->on)
        return;
    trail->on = false;
    judging->cost = recall_charged_since(judging, &judging->charged);
    if (trail->unfit || judging->arena->failed || memory_full(memory)
        || (stop != SANDBOX_DONE && stop != SANDBOX_SIGNAL))
        return;
    struct kept_call *kept = memory_alloc(memory, sizeof(*kept));
    if (kept == NULL)
        return;
    *kept = (struct kept_call){.charge = judging->cost,
                               .stop = stop,
                               .text = memory_copy(memory, call->text),
                               .present = call->present};
    if (!memory_full(memory))
        memory_keep(memory, recall_key_of_call(judging, call), judging->spots, trail, kept);
}
