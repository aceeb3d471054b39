#include "prove/mutate.h"

#include "prove/mutate_attempt.h"
#include "prove/mutate_step.h"
#include "judge/row_reads.h"

#include <string.h>

/* The whole run. Cases are read, judged and let go a file at a time: a figure is noticed by
 * the first that comes out otherwise, whichever file it stands in. */
struct trying {
    struct laws *laws;
    struct mutation *mutation;
    struct attempts attempts; /* of the file at hand */
    const char *topic;        /* only its figures; or NULL */
};

/* Which figures ------------------------------------------------------------------------ */

/* All figures when no topic is named. */
static bool of_topic(const char *name, const char *topic)
{
    const size_t length = topic == NULL ? 0 : strlen(topic);
    return topic == NULL || (strncmp(name, topic, length) == 0 && name[length] == '.');
}

/* True of "jurisdictions/us-ca.lua" and "jurisdictions/us-ca.fire.lua", the place being
 * us-ca. */
static bool is_own_file(const char *file, const char *place)
{
    static const char FOLDER[] = "jurisdictions/";
    const size_t length = strlen(place);
    return file != NULL && strncmp(file, FOLDER, sizeof(FOLDER) - 1) == 0
           && strncmp(file + sizeof(FOLDER) - 1, place, length) == 0
           && file[sizeof(FOLDER) - 1 + length] == '.';
}

static bool is_wanted(const struct trying *trying, const struct figure *figure)
{
    return trying->attempts.place != NULL ? is_own_file(figure->file, trying->attempts.place)
                                          : of_topic(figure->name, trying->topic);
}

static bool is_of(const struct mutated *entry, const struct figure *figure)
{
    return strcmp(entry->figure->name, figure->name) == 0
           && profile_same_value(&entry->figure->value, &figure->value);
}

/* Laws share figures: the entry of this one's value, made if there is none. They stand by name,
 * as a law's figures do, so that *at need only go on from the one before. NULL when out of
 * memory. */
static struct mutated *entry_of(struct mutation *mutation, struct mutated ***at,
                                const struct law *law, const struct figure *figure)
{
    while (**at != NULL && strcmp((**at)->figure->name, figure->name) < 0)
        *at = &(**at)->next;
    struct mutated **here = *at;
    for (; *here != NULL && strcmp((*here)->figure->name, figure->name) == 0; here = &(*here)->next)
        if (is_of(*here, figure))
            return *here;
    struct mutated *entry = arena_alloc(&mutation->arena, sizeof(*entry));
    bool *seen = arena_array(&mutation->arena, mutate_step_count(figure) + 1, sizeof(*seen));
    if (entry == NULL || seen == NULL)
        return NULL;
    *entry = (struct mutated){
        .figure = figure, .law = law, .set = figure->value, .seen = seen, .next = *here};
    *here = entry;
    return entry;
}

/* Moving them -------------------------------------------------------------------------- */

/* A case of the file under this law comes out otherwise. */
static bool is_noticed(struct trying *trying, const struct law *law, size_t figure,
                       const struct mutate_step *step)
{
    for (const struct attempt *t = trying->attempts.first; t != NULL; t = t->next)
        if (t->law == law && t->probe.decides[figure]
            && attempt_changes(&trying->attempts, t, figure, &step->value, step->other_bound))
            return true;
    return false;
}

/* One member added: it is enough that one of those there are is noticed. */
static void add_members(struct trying *trying, struct mutated *entry, const struct law *law,
                        size_t figure)
{
    struct arena *arena = &trying->attempts.arena;
    struct strings others = {0};
    struct mutate_step step;
    const size_t last = entry->set.set_count;
    if (entry->seen[last])
        return;
    mutate_step_others(&law->book->fields, &entry->set, arena, &others);
    entry->can_grow = entry->can_grow || others.count > 0;
    for (size_t i = 0; i < others.count && !entry->seen[last]; i++)
        entry->seen[last] = mutate_step_add(&entry->set, others.items[i], arena, &step)
                            && is_noticed(trying, law, figure, &step);
}

static void move_figure(struct trying *trying, struct mutated *entry, const struct law *law,
                        size_t index)
{
    struct figure figure = law->profile->figures[index];
    struct mutate_step step;
    const size_t count = mutate_step_count(&figure);
    if (figure.value.kind == VALUE_SET)
        figure.value = entry->set; /* its members in one order for all laws */
    for (size_t i = 0; i < count; i++)
        if (!entry->seen[i] && mutate_step_make(&figure, i, &trying->attempts.arena, &step))
            entry->seen[i] = is_noticed(trying, law, index, &step);
    if (figure.value.kind == VALUE_SET)
        add_members(trying, entry, law, index);
}

/* What the cases of the file under this law asked for of each figure: to judge by it, or for a
 * mend only. */
static void note_asked(const struct trying *trying, const struct law *law, size_t index,
                       struct mutated *entry, bool *judged)
{
    *judged = false;
    for (const struct attempt *t = trying->attempts.first; t != NULL; t = t->next) {
        if (t->law != law)
            continue;
        entry->asked = entry->asked || t->probe.asked[index];
        *judged = *judged || t->probe.decides[index];
    }
    entry->judged = entry->judged || *judged;
}

static void mutate_law(struct trying *trying, const struct law *law)
{
    struct mutated **at = &trying->mutation->first;
    for (size_t i = 0; i < law->profile->figure_count; i++) {
        const struct figure *figure = &law->profile->figures[i];
        struct mutated *entry = is_wanted(trying, figure)
                                    ? entry_of(trying->mutation, &at, law, figure)
                                    : NULL;
        bool judged;
        if (entry == NULL)
            continue;
        /* A figure is told as its model has it. */
        if (law->profile->model && !entry->law->profile->model) {
            entry->figure = figure;
            entry->law = law;
        }
        note_asked(trying, law, i, entry, &judged);
        if (judged)
            move_figure(trying, entry, law, i);
    }
}

/* Each law of the file once: by the first of its attempts. */
static bool is_first(const struct attempts *attempts, const struct attempt *attempt)
{
    const struct attempt *t = attempts->first;
    while (t->law != attempt->law)
        t = t->next;
    return t == attempt;
}

static void mutate_file(struct trying *trying, const struct case_list *cases)
{
    struct attempts *attempts = &trying->attempts;
    attempts_make(attempts, cases);
    for (const struct attempt *t = attempts->first; t != NULL; t = t->next)
        if (is_first(attempts, t))
            mutate_law(trying, t->law);
    trying->mutation->case_count += attempts->count;
    if (attempts->arena.failed || attempts->problems.out_of_memory)
        problem_out_of_memory(&trying->mutation->problems);
    attempts_free(attempts);
    laws_rest(trying->laws, PROOF_LAWS_AWAKE);
}

/* What came of it ----------------------------------------------------------------------- */

/* Of a figure that no case judges by: who names it? */
static enum mutate_state state_of_unasked(const struct mutated *now, const struct law *law)
{
    const struct rulebook *book = law->book;
    const struct figure *figure = profile_figure(law->profile, now->figure->name);
    if (now->asked)
        return MUTATE_PRINTED;
    if (row_reads_ask(book, figure))
        return MUTATE_UNASKED;
    return row_reads_print(book, figure) ? MUTATE_PRINTED : MUTATE_NO_RULE;
}

static void take_step(struct mutated *entry, struct arena *arena, size_t number, const char *says)
{
    entry->tried++;
    if (entry->seen[number])
        entry->noticed++;
    else
        strings_add(&entry->missed, arena, says);
}

static void take_steps(struct mutated *entry, struct arena *arena)
{
    struct figure figure = *entry->figure;
    struct mutate_step step;
    const size_t count = mutate_step_count(&figure);
    if (figure.value.kind == VALUE_SET)
        figure.value = entry->set;
    for (size_t i = 0; i < count; i++)
        if (mutate_step_make(&figure, i, arena, &step))
            take_step(entry, arena, i, step.says);
    if (entry->can_grow)
        take_step(entry, arena, count - 1, "a member added");
    entry->state = entry->noticed == entry->tried ? MUTATE_NOTICED
                   : entry->noticed > 0           ? MUTATE_PARTLY
                                                  : MUTATE_UNNOTICED;
}

/* Of those that no case judges by: their law may be at rest by now. */
static void look_at_unjudged(struct trying *trying, struct mutated *entry)
{
    struct problems ignored = {0};
    const struct profile *profile = entry->law->profile;
    const struct law *law = laws_find(trying->laws, profile->id, profile->from, "", &ignored);
    if (law != NULL)
        entry->state = state_of_unasked(entry, law);
    laws_drop_problems(trying->laws, &ignored);
}

/* A law at a time, each woken once. */
static void finish(struct trying *trying)
{
    struct mutation *mutation = trying->mutation;
    for (const struct law *law = trying->laws->first; law != NULL; law = law->next) {
        for (struct mutated *entry = mutation->first; entry != NULL; entry = entry->next)
            if (entry->law == law && !entry->judged)
                look_at_unjudged(trying, entry);
        laws_rest(trying->laws, PROOF_LAWS_AWAKE);
    }
    for (struct mutated *entry = mutation->first; entry != NULL; entry = entry->next) {
        if (entry->judged)
            take_steps(entry, &mutation->arena);
        mutation->counts[entry->state]++;
    }
}

/* The whole ------------------------------------------------------------------------------ */

/* A name with a file among the places is a place, any other a topic. */
static bool names_place(const char *home, const char *name)
{
    struct text path = TEXT_EMPTY;
    text_addf(&path, "jurisdictions/%s.lua", name == NULL ? "" : name);
    const bool is = name != NULL && !path.failed && home_has(home, text_string(&path));
    text_free(&path);
    return is;
}

static void say_nothing_moved(struct mutation *mutation, const char *name, bool place)
{
    if (place)
        problem_at(&mutation->problems, PROBLEM_JOB, "--mutate", NULL,
                   "no case is judged under \"%s\", or it has no figures of its own", name);
    else
        problem_at(&mutation->problems, PROBLEM_JOB, "--mutate", NULL,
                   "no figure that cases use begins with \"%s.\"", name);
}

void mutate_run(struct laws *laws, const char *name, struct mutation *mutation)
{
    const bool place = names_place(laws->home, name);
    const struct cases_wanted all = {0};
    struct trying trying = {.laws = laws,
                            .mutation = mutation,
                            .attempts = {.laws = laws, .place = place ? name : NULL},
                            .topic = place ? NULL : name};
    struct case_files files;
    struct case_list cases = {.first = NULL};
    case_files_open(&files, laws->home, &all, &mutation->problems);
    while (case_files_next(&files, &cases, &mutation->problems)) {
        if (mutation->problems.count == 0)
            mutate_file(&trying, &cases);
        case_list_free(&cases);
    }
    finish(&trying);
    if (mutation->first == NULL && name != NULL && mutation->problems.count == 0)
        say_nothing_moved(mutation, name, place);
    if (mutation->arena.failed)
        problem_out_of_memory(&mutation->problems);
    case_files_close(&files);
}

void mutate_free(struct mutation *mutation)
{
    arena_free(&mutation->arena);
    problems_free(&mutation->problems);
    *mutation = (struct mutation){0};
}
