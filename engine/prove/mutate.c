#include "prove/mutate.h"

#include "base/date.h"
#include "base/number.h"
#include "prove/case_list.h"
#include "check/check.h"
#include "job/follows.h"
#include "judge/row_reads.h"
#include "judge/judge.h"

#include <math.h>
#include <string.h>

/* One case judged once: what it asked for and what came out. */
struct attempt {
    const struct rule_case *wanted;
    cJSON *job; /* its, laid out */
    const struct law *law;
    struct probe probe; /* its rule; one asked and decides per figure of the law */
    enum stage reached;
    int *outcomes; /* come_out of each finding that the case looks at */
    double *found; /* and what it found, where the case says so of a number */
    size_t outcome_count;
    struct attempt *next;
};

/* The whole run. `now` is the figure being moved, and what came of it. */
struct trying {
    struct laws *laws;
    struct mutation *mutation;
    struct case_list cases;
    struct attempt *first, **last;
    const char *place;   /* only what this place's own files say, by the cases under it; or NULL */
    struct mutated *now; /* being moved */
    bool other_bound;    /* its other bound is moved, not its value */
};

/* A case's job was built by us: "" only where it leaves the fact out. */
static const char *text_of(const cJSON *job, const char *key)
{
    const cJSON *item = cJSON_GetObjectItemCaseSensitive(job, key);
    return cJSON_IsString(item) ? item->valuestring : "";
}

/* Does the case look at this finding? */
static bool looked_at(const struct rule_case *c, const struct finding *finding)
{
    return strcmp(finding->rule, c->rule) == 0
           && (c->where == NULL
               || (finding->where != NULL && strcmp(finding->where, c->where) == 0));
}

/* The outcome, and whether the figure was met: on a weak figure both warn. */
static int come_out(const struct finding *finding)
{
    return 2 * (int)finding->outcome + (finding->mend != NULL);
}

/* Of a case that says what was found: a fact that a figure told is seen by it both ways. */
static double number_found(const struct attempt *attempt, const struct finding *finding)
{
    return attempt->wanted->found.kind == VALUE_NUMBER && finding->found.kind == VALUE_NUMBER
               ? finding->found.number
               : 0;
}

static void keep_outcomes(struct trying *trying, struct attempt *attempt,
                          const struct result *result)
{
    attempt->outcomes = arena_array(&trying->mutation->arena, result->finding_count + 1,
                                    sizeof(*attempt->outcomes));
    attempt->found = arena_array(&trying->mutation->arena, result->finding_count + 1,
                                 sizeof(*attempt->found));
    for (size_t i = 0;
         attempt->outcomes != NULL && attempt->found != NULL && i < result->finding_count; i++) {
        if (!looked_at(attempt->wanted, &result->findings[i]))
            continue;
        attempt->found[attempt->outcome_count] = number_found(attempt, &result->findings[i]);
        attempt->outcomes[attempt->outcome_count++] = come_out(&result->findings[i]);
    }
}

/* Of a attempt's own law: the case may load others on the way. */
static const struct probe *probe_of(void *data, const struct law *law)
{
    struct attempt *attempt = data;
    return law == attempt->law ? &attempt->probe : NULL;
}

/* Judges the case as it stands. What does not hold or is refused on purpose
 * is the proof's business. */
static void try_job(struct trying *trying, const struct rule_case *c, cJSON *job)
{
    struct problems ignored = {0};
    struct arena *arena = &trying->mutation->arena;
    const long date = date_parse(text_of(job, "date"));
    const struct law *law = laws_find(trying->laws, text_of(job, "jurisdiction"), date, c->file,
                                      &ignored);
    laws_drop_problems(trying->laws, &ignored);
    struct attempt *attempt = law == NULL ? NULL : arena_alloc(arena, sizeof(*attempt));
    if (attempt == NULL)
        return;
    const int stage = stage_by_word(text_of(job, "stage"));
    *attempt = (struct attempt){.wanted = c,
                                .job = job,
                                .law = law,
                                .reached = stage < 0 ? STAGE_PERMIT : (enum stage)stage};
    /* The probe notes which figures the rule asked for, so that only cases which depend
     * on a figure are run again. */
    attempt->probe = (struct probe){
        c->rule, arena_array(arena, law->profile->figure_count + 1, sizeof(bool)),
        arena_array(arena, law->profile->figure_count + 1, sizeof(bool))};
    const struct overrides alone = {.alone = !c->by_place};
    struct checked checked = {0};
    check_job_probed(trying->laws, job, &alone, c->file, &(struct prober){probe_of, attempt},
                     &checked);
    if (checked.judged) {
        keep_outcomes(trying, attempt, &checked.result);
        *trying->last = attempt;
        trying->last = &attempt->next;
        trying->mutation->case_count++;
    }
    laws_drop_problems(trying->laws, &checked.problems);
    checked_free(&checked);
}

/* The job of a attempt is the attempt's; that of no attempt goes. */
static void try_case(struct trying *trying, const struct rule_case *c)
{
    struct attempt **last = trying->last;
    cJSON *job = case_job(c);
    if (job == NULL)
        problem_out_of_memory(&trying->mutation->problems);
    else if (trying->place == NULL || strcmp(text_of(job, "jurisdiction"), trying->place) == 0)
        try_job(trying, c, job);
    if (trying->last == last)
        cJSON_Delete(job);
}

/* Judges the attempt's job again under the figure as it is moved now. */
static bool outcome_changes(const struct trying *trying, const struct attempt *attempt)
{
    struct result result = {0};
    struct rulebook *book = attempt->law->book;
    const struct probe probe = {attempt->wanted->rule, NULL, NULL};
    bool changed = false;
    judge_begin(book);
    if (judge(book, attempt->job, -1, attempt->reached, &probe, &result) != 0)
        problem_out_of_memory(&trying->mutation->problems);
    size_t at = 0;
    for (size_t i = 0; i < result.finding_count && !changed; i++) {
        if (!looked_at(attempt->wanted, &result.findings[i]))
            continue;
        changed = at == attempt->outcome_count
                  || attempt->outcomes[at] != come_out(&result.findings[i])
                  || fabs(attempt->found[at] - number_found(attempt, &result.findings[i]))
                         > number_tolerance(result.findings[i].found.unit);
        at++;
    }
    changed = changed || at != attempt->outcome_count;
    result_free(&result);
    return changed;
}

/* Facts that the figure told were written into the job before it moved. */
static void tell_again(const struct trying *trying, const struct attempt *attempt,
                       const struct figure *figure)
{
    const struct fields *fields = &attempt->law->book->fields;
    if (follows_uses(fields, (size_t)(figure - attempt->law->profile->figures))
        && !follows_fill_again(attempt->job, fields))
        problem_out_of_memory(&trying->mutation->problems);
}

/* Some case that asks for the figure comes out differently with this value. */
static bool is_detected(const struct trying *trying, const struct value *value)
{
    bool changed = false;
    const struct figure *wanted = trying->now->figure;
    for (const struct attempt *t = trying->first; t != NULL && !changed; t = t->next) {
        const struct profile *profile = t->law->profile;
        const struct figure *found = profile_figure(profile, wanted->name);
        if (found == NULL || t->probe.decides == NULL || !t->probe.decides[found - profile->figures]
            || (found != wanted && !profile_same_value(&found->value, &wanted->value)))
            continue;
        /* The one place where a profile is written to: moved, judged, and put back at
         * once. */
        struct figure *figure = &t->law->profile->figures[found - profile->figures];
        struct value *moved = trying->other_bound ? &figure->also : &figure->value;
        const struct value before = *moved;
        *moved = *value;
        tell_again(trying, t, figure);
        changed = outcome_changes(trying, t);
        *moved = before;
        tell_again(trying, t, figure);
    }
    return changed;
}

static void try_value(struct trying *trying, const struct value *value, const char *said)
{
    struct mutated *now = trying->now;
    now->tried++;
    if (is_detected(trying, value))
        now->noticed++;
    else
        strings_add(&now->missed, &trying->mutation->arena, said);
}

/* The number next to this one: a last printed digit away, or a day. */
static double neighbor(const struct value *value, bool up)
{
    if (value->unit != NULL && strcmp(value->unit, "date") == 0) {
        const long day = (long)value->number;
        return (double)(up ? date_after(day) : date_before(day));
    }
    const double least = 2 * number_tolerance(value->unit);
    return value->number + (up ? least : -least);
}

/* Both ways: a case at the limit notices only one of them. */
static void step_number(struct trying *trying)
{
    static const char *const SAID[] = {"a step down", "a step up"};
    for (int up = 0; up < 2; up++) {
        struct value moved = trying->now->figure->value;
        moved.number = neighbor(&moved, up == 1);
        try_value(trying, &moved, SAID[up]);
    }
}

/* The other bound of a limit, if it has one. */
static void step_other_bound(struct trying *trying)
{
    static const char *const SAID[] = {"its other bound down", "its other bound up"};
    if (trying->now->figure->also.kind == VALUE_NONE)
        return;
    trying->other_bound = true;
    for (int up = 0; up < 2; up++) {
        struct value moved = trying->now->figure->also;
        moved.number = neighbor(&moved, up == 1);
        try_value(trying, &moved, SAID[up]);
    }
    trying->other_bound = false;
}

static void step_flag(struct trying *trying)
{
    struct value moved = trying->now->figure->value;
    moved.yes = !moved.yes;
    try_value(trying, &moved, "turned over");
}

/* Choices that stand beside members of the set in the catalogue: what a slip
 * could add to it. Fields are walked as the tree they are. */
static void find_others(const struct field *field, const struct value *set, struct arena *arena,
                        struct strings *others)
{
    for (const struct field *f = field->first_child; f != NULL; f = f->next) {
        bool beside = false;
        for (size_t i = 0; i < f->choice_count; i++)
            beside = beside || profile_set_has(set, f->choices[i]);
        for (size_t i = 0; beside && i < f->choice_count; i++)
            if (!profile_set_has(set, f->choices[i]))
                strings_add_once(others, arena, f->choices[i]);
        find_others(f, set, arena, others);
    }
}

/* One member added: it is enough that one of those there are is noticed. */
static void step_added(struct trying *trying, const char **room, const struct law *law)
{
    struct value moved = trying->now->figure->value;
    struct strings others = {0};
    find_others(law->book->fields.root, &moved, &trying->mutation->arena, &others);
    if (others.count == 0)
        return;
    memcpy(room, moved.set, moved.set_count * sizeof(*room));
    moved.set = room;
    moved.set_count++;
    trying->now->tried++;
    for (size_t i = 0; i < others.count; i++) {
        room[moved.set_count - 1] = others.items[i];
        if (is_detected(trying, &moved)) {
            trying->now->noticed++;
            return;
        }
    }
    strings_add(&trying->now->missed, &trying->mutation->arena, "a member added");
}

/* Each member taken out in turn, then one added. `room` holds the moved set. */
static void step_set(struct trying *trying, const struct law *law)
{
    struct arena *arena = &trying->mutation->arena;
    const struct value *set = &trying->now->figure->value;
    const char **room = arena_array(arena, set->set_count + 1, sizeof(*room));
    for (size_t gone = 0; room != NULL && gone < set->set_count; gone++) {
        struct value moved = *set;
        moved.set = room;
        moved.set_count = 0;
        for (size_t i = 0; i < set->set_count; i++)
            if (i != gone)
                room[moved.set_count++] = set->set[i];
        try_value(trying, &moved, arena_format(arena, "%s taken out", set->set[gone]));
    }
    if (room != NULL)
        step_added(trying, room, law);
}

/* Does a case ask for the figure, with this value: to judge by it, or for a mend? */
static bool is_asked(const struct trying *trying, const struct figure *wanted, bool to_judge)
{
    for (const struct attempt *t = trying->first; t != NULL; t = t->next) {
        const struct figure *found = profile_figure(t->law->profile, wanted->name);
        const bool *asked = to_judge ? t->probe.decides : t->probe.asked;
        if (found != NULL && asked != NULL && asked[found - t->law->profile->figures]
            && profile_same_value(&found->value, &wanted->value))
            return true;
    }
    return false;
}

/* Of a figure that no case judges by: who names it? */
static enum mutate_state state_of_unasked(const struct trying *trying, const struct law *law)
{
    const struct rulebook *book = law->book;
    const struct figure *figure = profile_figure(law->profile, trying->now->figure->name);
    if (is_asked(trying, trying->now->figure, false))
        return MUTATE_PRINTED;
    if (row_reads_ask(book, figure)
        || follows_uses(&book->fields, (size_t)(figure - law->profile->figures)))
        return MUTATE_UNASKED;
    return row_reads_print(book, figure) ? MUTATE_PRINTED : MUTATE_NO_RULE;
}

/* A figure that no case judges by is not moved: nothing could notice. */
static void mutate_figure(struct trying *trying, const struct law *law)
{
    struct mutated *now = trying->now;
    if (!is_asked(trying, now->figure, true)) {
        now->state = state_of_unasked(trying, law);
        return;
    }
    switch (now->figure->value.kind) {
    case VALUE_NUMBER:
        step_number(trying);
        step_other_bound(trying);
        break;
    case VALUE_YES_NO:
        step_flag(trying);
        break;
    case VALUE_SET:
        step_set(trying, law);
        break;
    case VALUE_NONE:
    case VALUE_TEXT:
        break;
    }
    now->state = now->noticed == now->tried ? MUTATE_NOTICED
                 : now->noticed > 0         ? MUTATE_PARTLY
                                            : MUTATE_UNNOTICED;
}

/* The entry of a figure with this value, made if there is none; NULL when it
 * is there already or out of memory. Kept by name. */
static struct mutated *entry_new(struct mutation *mutation, const struct figure *figure)
{
    struct mutated **at = &mutation->first;
    for (; *at != NULL && strcmp((*at)->figure->name, figure->name) <= 0; at = &(*at)->next)
        if (strcmp((*at)->figure->name, figure->name) == 0
            && profile_same_value(&(*at)->figure->value, &figure->value))
            return NULL;
    struct mutated *entry = arena_alloc(&mutation->arena, sizeof(*entry));
    if (entry == NULL)
        return NULL;
    entry->figure = figure;
    entry->next = *at;
    *at = entry;
    return entry;
}

/* All figures when no topic is named. */
static bool of_topic(const char *name, const char *topic)
{
    const size_t length = topic == NULL ? 0 : strlen(topic);
    return topic == NULL || (strncmp(name, topic, length) == 0 && name[length] == '.');
}

static bool law_is_used(const struct trying *trying, const struct law *law)
{
    for (const struct attempt *t = trying->first; t != NULL; t = t->next)
        if (t->law == law)
            return true;
    return false;
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

static bool is_wanted(const struct trying *trying, const struct figure *figure, const char *topic)
{
    return trying->place != NULL ? is_own_file(figure->file, trying->place)
                                 : of_topic(figure->name, topic);
}

/* Laws share figures; each figure with one value is moved once. */
static void mutate_law(struct trying *trying, const struct law *law, const char *topic)
{
    for (size_t i = 0; i < law->profile->figure_count; i++) {
        const struct figure *figure = &law->profile->figures[i];
        trying->now = is_wanted(trying, figure, topic) ? entry_new(trying->mutation, figure) : NULL;
        if (trying->now == NULL)
            continue;
        mutate_figure(trying, law);
        trying->mutation->counts[trying->now->state]++;
    }
}

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
    struct trying trying = {.laws = laws, .mutation = mutation};
    const struct cases_wanted all = {0};
    trying.last = &trying.first;
    if (names_place(laws->home, name))
        trying.place = name;
    struct case_files files;
    case_files_open(&files, laws->home, &all, &mutation->problems);
    while (case_files_next(&files, &trying.cases, &mutation->problems))
        ;
    for (struct rule_case *c = trying.cases.first; c != NULL; c = c->next)
        if (c->job != NULL && mutation->problems.count == 0)
            try_case(&trying, c);
    for (int model = 1; model >= 0; model--) /* a figure is told as its model has it */
        for (const struct law *law = laws->first; law != NULL; law = law->next)
            if (law->profile != NULL && law->profile->model == (model == 1)
                && law_is_used(&trying, law))
                mutate_law(&trying, law, name);
    if (mutation->first == NULL && name != NULL && mutation->problems.count == 0)
        say_nothing_moved(mutation, name, trying.place != NULL);
    if (mutation->arena.failed)
        problem_out_of_memory(&mutation->problems);
    for (struct attempt *t = trying.first; t != NULL; t = t->next)
        cJSON_Delete(t->job);
    case_list_free(&trying.cases);
    case_files_close(&files);
}

void mutate_free(struct mutation *mutation)
{
    arena_free(&mutation->arena);
    problems_free(&mutation->problems);
    *mutation = (struct mutation){0};
}
