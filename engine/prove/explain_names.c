/* explain_names.c - what there are names for, and what is said of one that is none. */
#include "base/nearest.h"
#include "prove/explain_parts.h"

#include <stdio.h>
#include <string.h>

/* Where names go, each once. */
struct collecting {
    struct strings *names;
    struct arena *arena;
};

static void collect_name(const struct collecting *to, const char *name)
{
    if (name != NULL && !strings_have(to->names, name))
        strings_add(to->names, to->arena, arena_copy(to->arena, name));
}

static void collect_topic(const struct collecting *to, const char *rule)
{
    char topic[128];
    snprintf(topic, sizeof(topic), "%.*s", (int)strcspn(rule, "."), rule);
    collect_name(to, topic);
}

static void collect_figures(const struct collecting *to, const struct places *places)
{
    for (size_t i = 0; i < places->count; i++)
        for (size_t j = 0; j < places->items[i].profile->figure_count; j++)
            collect_name(to, places->items[i].profile->figures[j].name);
}

/* The ids, or with `topics` what stands before their dots. */
static void collect_rules(const struct collecting *to, struct laws *laws, struct places *places,
                          bool topics)
{
    for (size_t i = 0; i < places->count; i++) {
        const struct law *law = explain_may_add_rules(places, i) ? explain_law_of(laws, places, i)
                                                                 : NULL;
        for (const struct rule *r = law == NULL ? NULL : law->book->rules; r != NULL; r = r->next) {
            if (topics)
                collect_topic(to, r->id);
            else
                collect_name(to, r->id);
        }
        explain_let_go(laws);
    }
}

static void collect_parts(const struct collecting *to, struct laws *laws, struct problems *problems)
{
    /* Of no place: parts of a job are the same everywhere. */
    const struct law *law = laws_fields(laws, problems);
    const struct field *f = law == NULL ? NULL : law->book->fields.root->first_child;
    for (; f != NULL; f = f->next)
        if (f->type == FIELD_GROUP || f->type == FIELD_LIST)
            collect_name(to, f->name);
}

void explain_names(struct laws *laws, enum names_kind kind, struct strings *names,
                   struct arena *arena, struct problems *problems)
{
    const struct collecting to = {names, arena};
    struct places places = {0};
    if (kind == NAMES_PLACES)
        places_ids(laws->home, names, arena);
    else if (kind == NAMES_PARTS)
        collect_parts(&to, laws, problems);
    else if (places_stand(&laws->cache, laws->home, 0, &places) != 0)
        problem_out_of_memory(problems);
    else if (kind == NAMES_FIGURES)
        collect_figures(&to, &places);
    else
        collect_rules(&to, laws, &places, kind == NAMES_TOPICS);
    /* Empty for the first two kinds. */
    places_free(&places);
    explain_sort(names);
    if (arena->failed)
        problem_out_of_memory(problems);
}

/* "permit" may stand for all rules of the topic: names them. False when there are none. */
static bool say_topic(struct explaining *e, const struct strings *rules)
{
    struct explanation *out = e->out;
    const char *wanted = e->request->name;
    const size_t length = strcspn(wanted, ".");
    struct text names = TEXT_EMPTY;
    /* Only "permit" and "permit." are meant for a topic; "permit.x" is a rule misspelled. */
    for (size_t i = 0; wanted[length + (wanted[length] == '.')] == '\0' && i < rules->count; i++)
        if (strncmp(rules->items[i], wanted, length) == 0 && rules->items[i][length] == '.')
            text_addf(&names, "%s%s", names.length > 0 ? ", " : "", rules->items[i]);
    const bool any = names.length > 0;
    if (any)
        problem_at_line(&out->problems, PROBLEM_JOB, "explain", 0, 0,
                        "\"%.*s\" is a topic; name one of its rules: %s", (int)length, wanted,
                        text_string(&names));
    if (names.failed)
        problem_out_of_memory(&out->problems);
    text_free(&names);
    return any;
}

bool explain_is_topic(struct explaining *e)
{
    struct strings topics = {0};
    const struct collecting to = {&topics, &e->out->arena};
    collect_rules(&to, e->laws, &e->out->places, true);
    return strings_have(&topics, e->request->name);
}

/* Neither a rule nor a figure. */
void explain_say_unknown(struct explaining *e)
{
    struct explanation *out = e->out;
    const char *wanted = e->request->name;
    struct strings rules = {0}, figures = {0};
    struct nearest rule, figure;
    const struct collecting of_rules = {&rules, &out->arena}, of_figures = {&figures, &out->arena};
    collect_rules(&of_rules, e->laws, &out->places, false);
    collect_figures(&of_figures, &out->places);
    explain_sort(&rules);
    if (say_topic(e, &rules))
        return;
    nearest_start(&rule, wanted);
    nearest_start(&figure, wanted);
    for (size_t i = 0; i < rules.count; i++)
        nearest_offer(&rule, rules.items[i]);
    for (size_t i = 0; i < figures.count; i++)
        nearest_offer(&figure, figures.items[i]);
    const char *lead = rule.name == NULL && figure.name == NULL ? "" : "; the nearest: ";
    problem_at_line(&out->problems, PROBLEM_JOB, "explain", 0, 0,
                    "no rule and no figure is named \"%s\"%s%s%s%s%s%s", wanted, lead,
                    rule.name == NULL ? "" : "rule ", rule.name == NULL ? "" : rule.name,
                    rule.name == NULL || figure.name == NULL ? "" : ", ",
                    figure.name == NULL ? "" : "figure ", figure.name == NULL ? "" : figure.name);
}
