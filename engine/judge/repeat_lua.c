/* repeat_lua.c - see repeat.h. */
#include "judge/repeat.h"

#include "judge/fact.h"
#include "judge/judge.h"
#include "judge/judgement.h"
#include "judge/memory.h"
#include "judge/recall.h"

/* What a call came to and recorded. Places are numbered as the trail of the call alone knows
 * them. */
struct told {
    struct charge charge;
    enum sandbox_stop stop;
    bool applies;
    const char *reason, *text;
    struct value value;
    const unsigned *reads;
    size_t read_count;
    const struct figure *const *figures;
    size_t figure_count;
    const char *const *work;
    size_t work_count;
    const struct field *missing, *unsaid;
    int missing_at, unsaid_at; /* which of the known places; -1: none */
    const char *cannot_tell;
    bool ask_place;
};

/* What it comes to is noted by nobody: it is touched when the call is told. */
static void begin(struct judging *judging, const struct call *call, struct trail *trail)
{
    recall_begin(judging, call->items, call->depth, trail);
    trail->touch = 0;
}

/* Places tell only the last trail that came to them: after another, this one says again
 * which it knows. */
static void know_again(struct judging *judging, struct trail *trail)
{
    trail->number = ++judging->records;
    for (size_t i = 0; i < trail->start + trail->count; i++)
        trail_know(trail, i, trail->known[i]);
}

/* Recording ------------------------------------------------------------------------------ */

static void touch(struct trail *trail, const struct step *step, struct spot *from, struct spot *to)
{
    if (step->kind == STEP_FOLLOW) {
        trail_touch_referred(trail, from, to == &trail->nowhere ? NULL : to);
        return;
    }
    trail_touch(trail, from);
    trail_touch(trail, to);
}

/* The steps of the call, as those of what is being judged. as[i]: what that calls the i-th
 * place known to the call. */
static void take_steps(struct judging *judging, const struct call *call, const struct trail *of,
                       bool ran, unsigned as[TRAIL_MOST])
{
    struct trail *trail = &judging->trail;
    as[0] = 0;
    for (size_t i = 0; i < call->depth; i++)
        as[i + 1] = call->items[i].known;
    for (size_t i = 0; i < of->count; i++) {
        struct step step = ran ? of->steps[i] : *of->asked[i];
        struct spot *to = of->known[of->start + i];
        to = to == NULL ? &trail->nowhere : to;
        touch(trail, &step, of->known[step.from], to);
        step.from = (unsigned char)as[step.from];
        as[of->start + i] = trail_step(trail, step, to);
    }
}

/* All that the call recorded, in the record of what is being judged, as if it had been
 * written there at once: conditions leave no arithmetic behind, and who asks them sees to
 * what was there before. ran: of a call just made, its record; NULL: of one told again. */
static void take(struct judging *judging, const struct call *call, const struct told *told,
                 const struct trail *of, const struct record *ran)
{
    struct record *record = &judging->record;
    unsigned as[TRAIL_MOST];
    take_steps(judging, call, of, ran != NULL, as);
    for (size_t i = 0; i < told->read_count; i++) {
        struct spot *spot = ran != NULL ? ran->reads[i] : of->known[told->reads[i]];
        const struct node node = {spot->json, spot->field, spot->item,
                                  NULL,       spot,        as[told->reads[i]]};
        record_read(judging, &node);
    }
    for (size_t i = 0; i < told->figure_count; i++)
        ask_figure(judging, told->figures[i]);
    for (size_t i = 0; i < told->work_count; i++)
        strings_add(&record->work, judging->arena, told->work[i]);
    if (told->unsaid != NULL && record->unsaid == NULL) {
        record->unsaid = told->unsaid;
        record->unsaid_pointer = ran != NULL
                                     ? ran->unsaid_pointer
                                     : spot_pointer(judging->spots, of->known[told->unsaid_at]);
    }
    if (told->missing != NULL) {
        record->missing = told->missing;
        record->missing_pointer = ran != NULL
                                      ? ran->missing_pointer
                                      : spot_pointer(judging->spots, of->known[told->missing_at]);
    }
    if (told->cannot_tell != NULL)
        record->cannot_tell = told->cannot_tell;
    record->ask_place = record->ask_place || told->ask_place;
    for (size_t i = 0; ran != NULL && i < ran->held_count; i++)
        judgement_note_held(judging, ran->held[i]);
}

static enum sandbox_stop give(struct call *call, const struct told *told)
{
    call->applies = told->applies;
    call->reason = told->reason;
    call->text = told->text;
    call->value = told->value;
    return told->stop;
}

/* Remembering ----------------------------------------------------------------------------- */

static const struct told *keep(struct memory *memory, const struct told *told)
{
    struct told *kept = memory_alloc(memory, sizeof(*kept));
    if (kept == NULL)
        return NULL;
    *kept = *told;
    kept->reason = memory_copy(memory, told->reason);
    kept->text = memory_copy(memory, told->text);
    memory_copy_value(memory, &kept->value);
    kept->reads = memory_copy_array(memory, told->reads, told->read_count, sizeof(*told->reads));
    kept->figures = memory_copy_array(memory, told->figures, told->figure_count,
                                      sizeof(*told->figures));
    kept->work = memory_copy_texts(memory, told->work, told->work_count);
    kept->cannot_tell = memory_copy(memory, told->cannot_tell);
    return memory_full(memory) ? NULL : kept;
}

/* Each place that the record names is one that the trail knows. */
static bool is_known(const struct trail *trail, const struct record *record,
                     const struct told *told)
{
    for (size_t i = 0; i < record->read_count; i++)
        if (trail->known[record->read_known[i]] != record->reads[i])
            return false;
    return (told->missing == NULL || told->missing_at >= 0)
           && (told->unsaid == NULL || told->unsaid_at >= 0);
}

static struct told told_by(const struct call *call, enum sandbox_stop stop,
                           const struct trail *trail, const struct record *record)
{
    return (struct told){.stop = stop,
                         .applies = call->applies,
                         .reason = call->reason,
                         .text = call->text,
                         .value = call->value,
                         .reads = record->read_known,
                         .read_count = record->read_count,
                         .figures = record->figures,
                         .figure_count = record->figure_count,
                         .work = record->work.items,
                         .work_count = record->work.count,
                         .missing = record->missing,
                         .missing_at = trail_known(trail, record->missing_pointer),
                         .unsaid = record->unsaid,
                         .unsaid_at = trail_known(trail, record->unsaid_pointer),
                         .cannot_tell = record->cannot_tell,
                         .ask_place = record->ask_place};
}

/* Remembered, if it follows from the answers alone, and its places can be told again. */
static void remember(struct judging *judging, struct memory_key key, struct trail *trail,
                     const struct record *record, const struct told *told)
{
    struct memory *memory = judging->book->memory;
    if (trail->unfit || judging->arena->failed || memory_full(memory)
        || (told->stop != SANDBOX_DONE && told->stop != SANDBOX_SIGNAL) || record->held_count > 0
        || !is_known(trail, record, told))
        return;
    const struct told *kept = keep(memory, told);
    if (kept != NULL)
        memory_keep(memory, key, judging->spots, trail, kept);
}

/* Runs it with a trail and a record of its own, which then go into those of what is being
 * judged. */
static enum sandbox_stop run(struct judging *judging, lua_CFunction function, struct call *call,
                             struct memory_key key)
{
    struct trail before;
    trail_copy(&before, &judging->trail);
    const struct record record = judging->record;
    const struct node *const items = call->items;
    struct node own[FACT_DEEPEST_SCOPE];
    for (size_t i = 0; i < call->depth; i++) {
        own[i] = items[i];
        own[i].known = (unsigned)i + 1;
    }
    judging->record = (struct record){0};
    begin(judging, call, &judging->trail);
    judging->trail.unfit = judging->trail.slipped = false;
    judging->trail.touched_count = 0;
    call->items = own;
    const struct charge charged = recall_charged(judging);
    const enum sandbox_stop stop = call_enter(judging, function, call);
    call->items = items;

    struct trail trail;
    trail_copy(&trail, &judging->trail);
    const struct record ran = judging->record;
    struct told told = told_by(call, stop, &trail, &ran);
    told.charge = recall_charged_since(judging, &charged);
    remember(judging, key, &trail, &ran, &told);
    trail_copy(&judging->trail, &before);
    judging->record = record;
    know_again(judging, &judging->trail);
    take(judging, call, &told, &trail, &ran);
    judging->trail.unfit = judging->trail.unfit || trail.unfit;
    judging->trail.slipped = judging->trail.slipped || trail.unfit; /* not every place is told */
    return stop;
}

enum sandbox_stop repeat_enter(struct judging *judging, lua_CFunction function, struct call *call)
{
    /* Steps are noted only where there is a memory. A figure that is read otherwise makes
     * another answer. */
    if (!judging->trail.on || judging->reading != NULL)
        return call_enter(judging, function, call);
    struct trail trail;
    const struct memory_key key = recall_key_of_call(judging, call);
    begin(judging, call, &trail);
    const struct told *told = memory_find(judging->book->memory, key, judging->spots, &trail,
                                          &judging->book->fields);
    if (told == NULL || !recall_charge(judging, &told->charge))
        return run(judging, function, call, key);
    know_again(judging, &judging->trail);
    take(judging, call, told, &trail, NULL);
    return give(call, told);
}

bool repeat_run(const struct call *of, int function, lua_CFunction entry, struct call *out,
                enum sandbox_stop *stop)
{
    *out = (struct call){.judging = of->judging,
                         .rule = of->rule,
                         .items = of->items,
                         .depth = of->depth,
                         .function = function};
    *stop = repeat_enter(of->judging, entry, out);
    return *stop == SANDBOX_DONE;
}
