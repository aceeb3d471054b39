#include "prove/explain.h"

#include "base/date.h"
#include "base/nearest.h"
#include "judge/reads.h"
#include "judge/row.h"
#include "judge/row_reads.h"
#include "prove/cases.h"

#include <ctype.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* What explaining one name needs; all that is found goes into `out`. */
struct explaining {
    struct laws *laws;
    const struct explain_request *request;
    struct explanation *out;
    long date; /* on which out->law binds */
};

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
static const struct law *law_of(struct laws *laws, struct places *places, size_t index)
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
static void let_go(struct laws *laws)
{
    laws_rest(laws, PROOF_LAWS_AWAKE);
}

/* Only places with rule files of their own can have other rules than the rest. */
static bool may_add_rules(const struct places *places, size_t index)
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
        const struct law *law = may_add_rules(&out->places, i) ? law_of(e->laws, &out->places, i)
                                                               : NULL;
        out->rule = law == NULL ? NULL : rulebook_rule(law->book, e->request->name);
        if (out->rule == NULL) {
            let_go(e->laws);
            continue;
        }
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

/* What a rule reads ---------------------------------------------------- */

static void note_figure(void *data, const char *name)
{
    struct explanation *out = data;
    if (!strings_have(&out->figures, name))
        strings_add(&out->figures, &out->arena, arena_copy(&out->arena, name));
}

static void note_field(void *data, const struct field *field)
{
    struct explanation *out = data;
    bool known = field == NULL || out->fields == NULL;
    for (size_t j = 0; !known && j < out->field_count; j++)
        known = out->fields[j] == field;
    if (!known)
        out->fields[out->field_count++] = field;
}

static int text_order(const void *a, const void *b)
{
    return strcmp(*(const char *const *)a, *(const char *const *)b);
}

static int field_order(const void *a, const void *b)
{
    const struct field *const *left = a, *const *right = b;
    return strcmp((*left)->path, (*right)->path);
}

static void sort_texts(struct strings *texts)
{
    if (texts->count > 1)
        qsort(texts->items, texts->count, sizeof(*texts->items), text_order);
}

/* "topic.table.*" names all rows of a table. */
static bool is_named(const char *figure, const char *name)
{
    const size_t length = strlen(name);
    return name[length - 1] == '*' ? strncmp(figure, name, length - 1) == 0
                                   : strcmp(figure, name) == 0;
}

/* Figures that this place has no need of, as far as some other place has them. */
static void note_elsewhere(struct explanation *out, const char *name)
{
    for (size_t i = 0; i < out->places.count; i++) {
        const struct profile *profile = out->places.items[i].profile;
        for (size_t j = 0; j < profile->figure_count; j++)
            if (is_named(profile->figures[j].name, name))
                note_figure(out, profile->figures[j].name);
    }
}

/* Rows of a table that only other places have. */
static void note_table(void *data, const struct row *row)
{
    struct explanation *out = data;
    if (row->by_prefix == NULL)
        return;
    const char *name = arena_format(&out->arena, "%s*", row->by_prefix);
    if (name != NULL)
        note_elsewhere(out, name);
}

static void note_all_elsewhere(struct explanation *out)
{
    const struct reads *reads = out->rule->reads;
    if (out->rule->row != NULL)
        row_each_part(out->rule->row, note_table, out);
    for (size_t i = 0; i < reads->part_count; i++)
        for (size_t j = 0; j < reads->parts[i]->elsewhere_count; j++)
            note_elsewhere(out, reads->parts[i]->elsewhere[j]);
}

/* A place that does not carry what binds asks for one fact before the rule does. */
static void note_gap(struct explanation *out, const struct profile *profile)
{
    const struct law_gap *gap = profile_gap(profile, out->rule->id);
    if (gap != NULL)
        note_field(out, fields_find(&out->law->book->fields, gap->fact));
}

/* What the rule's row names and its functions declare is all that it can read. */
static void learn_reads(struct explanation *out)
{
    const struct rulebook *book = out->law->book;
    out->fields = arena_array(&out->arena, book->fields.count + 1, sizeof(struct field *));
    row_reads_each_figure(book, out->rule, note_figure, out);
    note_all_elsewhere(out);
    row_reads_each_field(book, out->rule, note_field, out);
    note_gap(out, out->law->profile);
    for (size_t i = 0; i < out->places.count; i++)
        note_gap(out, out->places.items[i].profile);
    sort_texts(&out->figures);
    if (out->fields != NULL && out->field_count > 1)
        qsort(out->fields, out->field_count, sizeof(struct field *), field_order);
}

/* Names ----------------------------------------------------------------------- */

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
        const struct law *law = may_add_rules(places, i) ? law_of(laws, places, i) : NULL;
        for (const struct rule *r = law == NULL ? NULL : law->book->rules; r != NULL; r = r->next) {
            if (topics)
                collect_topic(to, r->id);
            else
                collect_name(to, r->id);
        }
        let_go(laws);
    }
}

static void collect_parts(const struct collecting *to, struct laws *laws, struct problems *problems)
{
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
    sort_texts(names);
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

static bool is_topic(struct explaining *e)
{
    struct strings topics = {0};
    const struct collecting to = {&topics, &e->out->arena};
    collect_rules(&to, e->laws, &e->out->places, true);
    return strings_have(&topics, e->request->name);
}

/* Neither a rule nor a figure. */
static void say_unknown(struct explaining *e)
{
    struct explanation *out = e->out;
    const char *wanted = e->request->name;
    struct strings rules = {0}, figures = {0};
    struct nearest rule, figure;
    const struct collecting of_rules = {&rules, &out->arena}, of_figures = {&figures, &out->arena};
    collect_rules(&of_rules, e->laws, &out->places, false);
    collect_figures(&of_figures, &out->places);
    sort_texts(&rules);
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

/* The list of all rules --------------------------------------------------------- */

static int listed_order(const void *a, const void *b)
{
    const struct listed_rule *left = a, *right = b;
    return strcmp(left->id, right->id);
}

static bool is_listed(const struct explanation *out, const char *id)
{
    for (size_t i = 0; i < out->rule_count; i++)
        if (strcmp(out->rules[i].id, id) == 0)
            return true;
    return false;
}

/* Adds the rules of a law that are not listed yet; place as in listed_rule. */
static void list_law(struct explanation *out, const struct law *law, const char *place)
{
    const size_t most = out->rule_count + law->book->rule_count;
    struct listed_rule *rules = arena_array(&out->arena, most + 1, sizeof(*rules));
    if (rules == NULL)
        return;
    if (out->rule_count > 0)
        memcpy(rules, out->rules, out->rule_count * sizeof(*rules));
    out->rules = rules;
    for (const struct rule *r = law->book->rules; r != NULL; r = r->next)
        if (!is_listed(out, r->id))
            rules[out->rule_count++] = (struct listed_rule){
                arena_copy(&out->arena, r->id), arena_copy(&out->arena, r->title), place};
}

/* Without a place named, the rules of all places, each with the place that first has it. */
static void list_rules(struct explaining *e, const struct law *asked)
{
    struct explanation *out = e->out;
    list_law(out, asked, NULL);
    for (size_t i = 0; e->request->jurisdiction == NULL && i < out->places.count; i++) {
        const struct law *law = may_add_rules(&out->places, i) ? law_of(e->laws, &out->places, i)
                                                               : NULL;
        if (law != NULL)
            list_law(out, law, law->profile->title);
        let_go(e->laws);
    }
    if (out->rule_count > 0)
        qsort(out->rules, out->rule_count, sizeof(*out->rules), listed_order);
}

/* A word ------------------------------------------------------------------------ */

/* Case does not count: people write "Staple". */
static bool has_word(const char *text, const char *word)
{
    const size_t length = strlen(word);
    for (; text != NULL && *text != '\0'; text++) {
        size_t i = 0;
        while (i < length && tolower((unsigned char)text[i]) == tolower((unsigned char)word[i]))
            i++;
        if (i == length)
            return true;
    }
    return false;
}

struct looking {
    const char *word;
    bool found;
};

static void look_in_field(void *data, const struct field *field)
{
    struct looking *looking = data;
    looking->found = looking->found || has_word(field->ask, looking->word);
    for (size_t i = 0; i < field->choice_count; i++)
        looking->found = looking->found || has_word(field->choices[i], looking->word);
}

/* In the id, the words reports print, or the questions and choices of the facts it reads. */
static bool rule_has_word(const struct rulebook *book, const char *id, const char *word)
{
    const struct rule *rule = rulebook_rule(book, id);
    struct looking looking = {word, false};
    if (rule != NULL)
        row_reads_each_field(book, rule, look_in_field, &looking);
    return looking.found || has_word(id, word)
           || (rule != NULL
               && (has_word(rule->title, word) || has_word(rule->mend, word)
                   || has_word(rule->caution, word)));
}

static bool set_has_word(const struct value *value, const char *word)
{
    for (size_t i = 0; i < value->set_count; i++)
        if (has_word(value->set[i], word))
            return true;
    return false;
}

/* The rules and figures in whose words the one asked for stands. False when there are
 * none: it may be a name misspelled. */
static bool list_word(struct explaining *e, const struct law *asked)
{
    struct explanation *out = e->out;
    const char *word = e->request->name;
    size_t kept = 0;
    /* Two letters stand in nearly every rule; a dot makes it a name. */
    if (strlen(word) < 3 || strchr(word, '.') != NULL)
        return false;
    list_rules(e, asked);
    for (size_t i = 0; i < out->rule_count; i++)
        if (has_word(out->rules[i].title, word)
            || rule_has_word(asked->book, out->rules[i].id, word))
            out->rules[kept++] = out->rules[i];
    out->rule_count = kept;
    for (size_t i = 0; i < asked->profile->figure_count; i++) {
        const struct figure *figure = &asked->profile->figures[i];
        if (has_word(figure->name, word) || set_has_word(&figure->value, word))
            note_figure(out, figure->name);
    }
    out->word = kept + out->figures.count > 0 ? word : NULL;
    if (out->word == NULL)
        out->rules = NULL;
    return out->word != NULL;
}

/* All of it --------------------------------------------------------------------- */

/* A rule, a figure, a topic, a word, in this order: the first that fits. */
static void explain_name(struct explaining *e, const struct law *asked)
{
    struct explanation *out = e->out;
    find_rule(e, asked);
    if (out->rule != NULL)
        learn_reads(out);
    else if (some_place_has(&out->places, e->request->name)
             || profile_figure(asked->profile, e->request->name) != NULL)
        strings_add(&out->figures, &out->arena, arena_copy(&out->arena, e->request->name));
    else if (is_topic(e) || !list_word(e, asked))
        say_unknown(e);
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
        list_rules(&e, asked);
    if (out->arena.failed)
        problem_out_of_memory(&out->problems);
}

void explain_free(struct explanation *explanation)
{
    checked_free(&explanation->checked);
    places_free(&explanation->places);
    problems_free(&explanation->problems);
    arena_free(&explanation->arena);
}
