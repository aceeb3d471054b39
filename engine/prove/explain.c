#include "prove/explain_parts.h"

#include "base/date.h"
#include "prove/cases.h"

#include <string.h>

/* Columns ------------------------------------------------------------------- */

/* Each place once. */
static void add_column(struct explanation *out, const struct profile *profile)
{
    for (size_t i = 0; i < out->column_count; i++)
        if (strcmp(out->columns[i]->id, profile->id) == 0)
            return;
    out->columns[out->column_count++] = profile;
}

/* The model's editions, and the place asked for when it is none of them. */
static void add_columns(struct explanation *out, const struct law *asked)
{
    out->columns = arena_array(&out->arena, out->places.count + 2, sizeof(*out->columns));
    if (out->columns == NULL)
        return;
    for (size_t i = 0; i < out->places.count; i++)
        if (places_is_edition(&out->places, out->places.items[i].profile))
            add_column(out, out->places.items[i].profile);
    if (asked != NULL)
        add_column(out, asked->profile);
}

/* Finding the rule ------------------------------------------------------------ */

static const struct standing *newest_edition(const struct places *places)
{
    const struct standing *newest = NULL; /* editions sort by their year */
    for (size_t i = 0; i < places->count; i++)
        if (newest == NULL || places_is_edition(places, places->items[i].profile))
            newest = &places->items[i];
    return newest;
}

/* The law asked for: the job's, the one named, or the newest model edition. */
static const struct law *asked_law(struct explaining *e)
{
    const struct explain_request *request = e->request;
    const struct standing *newest = newest_edition(&e->out->places);
    if (request->jurisdiction != NULL) {
        e->date = request->date;
        if (e->date == 0)
            e->date = places_newest(&e->laws->cache, e->laws->home, request->jurisdiction,
                                    &e->out->problems);
        /* A place that stands on no day is looked up on any, so that loading says why. */
        return laws_find(e->laws, request->jurisdiction, e->date == 0 ? 20000101 : e->date,
                         "--jurisdiction", &e->out->problems);
    }
    if (newest == NULL) {
        problem_at_line(&e->out->problems, PROBLEM_RULES, "jurisdictions", 0, 0,
                        "no place can be loaded: is this the right --home?");
        return NULL;
    }
    e->date = newest->date;
    return laws_find(e->laws, newest->profile->id, newest->date, "jurisdictions",
                     &e->out->problems);
}

/* The law of a place that stands; NULL when its rules do not load: the place is
 * then one of those skipped. */
const struct law *explain_law_of(struct laws *laws, struct places *places, size_t index)
{
    const struct standing *standing = &places->items[index];
    struct problems unsaid = {0};
    const struct law *law = laws_find(laws, standing->profile->id, standing->date, "", &unsaid);
    laws_drop_problems(laws, &unsaid);
    if (law == NULL)
        strings_add_once(&places->skipped, &places->arena, standing->profile->id);
    return law;
}

/* Its rules are done with, but for what was copied of them. */
void explain_let_go(struct laws *laws)
{
    laws_rest(laws, PROOF_LAWS_AWAKE);
}

/* Only places with rule files of their own can have other rules than the rest. */
bool explain_may_add_rules(const struct places *places, size_t index)
{
    return places->items[index].profile->rule_file_count > 0
           || &places->items[index] == newest_edition(places);
}

/* Sets law and rule, going through the other places when the one asked for
 * does not have it. */
static void find_rule(struct explaining *e, const struct law *asked)
{
    struct explanation *out = e->out;
    out->law = asked;
    out->rule = rulebook_rule(asked->book, e->request->name);
    for (size_t i = 0; out->rule == NULL && i < out->places.count; i++) {
        const struct law *law = explain_may_add_rules(&out->places, i)
                                    ? explain_law_of(e->laws, &out->places, i)
                                    : NULL;
        out->rule = law == NULL ? NULL : rulebook_rule(law->book, e->request->name);
        if (out->rule == NULL) {
            explain_let_go(e->laws);
            continue;
        }
        /* The explanation points into its rule until it has been written out. */
        laws_rest_never(e->laws, law);
        out->law = law;
        out->only_in = law->profile->title;
        e->date = out->places.items[i].date;
        /* The rule is this place's alone: its figures belong beside the others'. */
        add_column(out, law->profile);
    }
}

static bool some_place_has(const struct places *places, const char *figure)
{
    for (size_t i = 0; i < places->count; i++)
        if (profile_figure(places->items[i].profile, figure) != NULL)
            return true;
    return false;
}

/* All of it --------------------------------------------------------------------- */

/* A rule, a figure, a topic, a word, in this order: the first that fits. */
static void explain_name(struct explaining *e, const struct law *asked)
{
    struct explanation *out = e->out;
    find_rule(e, asked);
    if (out->rule != NULL)
        explain_reads(out);
    else if (some_place_has(&out->places, e->request->name)
             || profile_figure(asked->profile, e->request->name) != NULL) {
        strings_add(&out->figures, &out->arena, arena_copy(&out->arena, e->request->name));
        explain_list_askers(out, asked, e->request->name);
    } else if (explain_is_topic(e) || !explain_list_word(e, asked))
        explain_say_unknown(e);
}

void explain(struct laws *laws, const struct explain_request *request, struct explanation *out)
{
    struct explaining e = {.laws = laws, .request = request, .out = out};
    struct explain_request with_job = *request;
    /* A job brings its own place and day. */
    if (request->job != NULL) {
        check_job(laws, request->job, &request->overrides, request->job_file, &out->checked);
        if (!out->checked.judged)
            return;
        out->job = request->job;
        with_job.jurisdiction = out->checked.result.jurisdiction;
        with_job.date = date_parse(out->checked.result.date);
        e.request = &with_job;
    }
    if (places_stand(&laws->cache, laws->home, e.request->date, &out->places) != 0) {
        problem_out_of_memory(&out->problems);
        return;
    }
    const struct law *asked = asked_law(&e);
    if (asked == NULL)
        return;
    laws_rest_never(laws, asked);
    add_columns(out, e.request->jurisdiction == NULL ? NULL : asked);
    if (out->columns != NULL && request->name != NULL)
        explain_name(&e, asked);
    else if (out->columns != NULL)
        explain_list(&e, asked);
    if (out->arena.failed)
        problem_out_of_memory(&out->problems);
}

const struct figure *explain_figure(const struct explanation *x, const char *name)
{
    const struct figure *figure = NULL;
    for (size_t i = 0; figure == NULL && i < x->column_count; i++)
        figure = profile_figure(x->columns[i], name);
    for (size_t i = 0; figure == NULL && i < x->places.count; i++)
        figure = profile_figure(x->places.items[i].profile, name);
    return figure;
}

void explain_free(struct explanation *explanation)
{
    checked_free(&explanation->checked);
    places_free(&explanation->places);
    problems_free(&explanation->problems);
    arena_free(&explanation->arena);
}
