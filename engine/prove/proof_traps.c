/* proof_traps.c - what a place's file says that loads and means something else than was
 * meant: held against the fields, the switches, and what is followed. */
#include "prove/proof.h"

#include "base/nearest.h"
#include "judge/row_reads.h"
#include "profile/place_traps.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

/* What is being looked through. */
struct trapping {
    struct proof *proof;
    struct place_proof *place;
    struct proof_block *block;
    const struct profile *parent; /* or NULL */
};

/* One figure as the block gives it: own is what came of it. */
struct given {
    const struct trapping *in;
    const struct entry *entry;
    const struct figure *own, *from; /* from: as followed; or NULL */
};

static void say(const struct given *given, bool error, const char *words)
{
    const struct trapping *in = given->in;
    proof_remark(in->proof, in->place, in->block,
                 (struct remark){
                     given->entry->file, given->entry->line, error,
                     arena_format(&in->proof->arena, "figure \"%s\" %s", given->entry->name, words),
                     NULL});
}

/* Numbers that no job can reach ------------------------------------------------------ */

/* What the facts can say that rows hold against one figure. */
struct reach {
    const struct figure *figure;
    const struct field *field; /* one of them */
    double least, most;
    bool open; /* one of them has no bound that can be told */
};

static void widen(void *data, const struct row_pair *pair)
{
    struct reach *reach = data;
    const struct field *f = pair->field;
    if (pair->figure != reach->figure)
        return;
    if (!f->has_least || !f->has_most || f->type == FIELD_NUMBERS) {
        reach->open = true;
        return;
    }
    const double least = f->least * pair->factor, most = f->most * pair->factor;
    reach->least = reach->field == NULL ? least : fmin(reach->least, least);
    reach->most = reach->field == NULL ? most : fmax(reach->most, most);
    reach->field = f;
}

static void look_at_reach(const struct given *given)
{
    const struct rulebook *book = given->in->block->law->book;
    struct reach reach = {.figure = given->own};
    const double number = given->own->value.number;
    for (const struct rule *rule = book->rules; rule != NULL; rule = rule->next)
        row_reads_each_pair(book, rule, widen, &reach);
    if (reach.open || reach.field == NULL || (number >= reach.least && number <= reach.most))
        return;
    char words[400];
    snprintf(words, sizeof(words),
             "is %.10g, but %s, which is held against it, can only be %.10g to %.10g: no job can "
             "come to it",
             number, reach.field->path, reach.least, reach.most);
    say(given, true, words);
}

/* Another unit meant ------------------------------------------------------------------- */

static bool is_length(const char *unit)
{
    return unit != NULL && (strcmp(unit, "in") == 0 || strcmp(unit, "ft") == 0);
}

/* Feet written for inches make the twelfth part, a share for percents the hundredth. */
static void look_at_size(const struct given *given)
{
    const char *unit = given->own->value.unit;
    const double is = given->own->value.number, was = given->from->value.number;
    char words[400];
    if (unit == NULL || !(is > 0) || !(was > 0))
        return;
    if (strcmp(unit, "percent") == 0 && is < 1 && was >= 1)
        snprintf(words, sizeof(words),
                 "is %.6g percent, where what is followed says %.6g: a quarter is 25, or \"25 %%\"",
                 is, was);
    else if (is_length(unit) && (is >= 10 * was || was >= 10 * is))
        snprintf(words, sizeof(words),
                 "is %.6g %s, where what is followed says %.6g: if another unit is meant, write "
                 "it, \"%.6g %s\"",
                 is, unit, was, is, strcmp(unit, "in") == 0 ? "ft" : "in");
    else
        return;
    say(given, false, words);
}

/* Sets ----------------------------------------------------------------------------------- */

/* Members of one set that the other lacks, "a, b"; how many. */
static size_t lacking(const struct value *set, const struct value *other, char out[120])
{
    size_t count = 0;
    out[0] = '\0';
    for (size_t i = 0; i < set->set_count; i++) {
        const size_t used = strlen(out);
        if (profile_set_has(other, set->set[i]))
            continue;
        if (used < 80)
            snprintf(out + used, 120 - used, "%s\"%.28s\"", count == 0 ? "" : ", ", set->set[i]);
        count++;
    }
    return count;
}

/* A set given whole replaces the one followed. One that holds nothing of it may have been
 * meant as an addition; and where all or none of it is demanded, what is lost may have been
 * forgotten. */
static void look_at_members(const struct given *given)
{
    char lost[120], gained[120], words[480];
    const struct value *own = &given->own->value, *from = &given->from->value;
    const enum sense sense = given->own->sense;
    const size_t less = lacking(from, own, lost), more = lacking(own, from, gained);
    if (given->entry->value.kind != VALUE_SET || given->entry->instead || less == 0
        || own->set_count == 0)
        return;
    if (more > 0 && less == from->set_count)
        snprintf(words, sizeof(words),
                 "holds nothing of the set followed, and loses %s; to keep it write adds = { %s }, "
                 "else say instead = true",
                 lost, gained);
    else if (sense == SENSE_ALL_OF || sense == SENSE_NONE_OF)
        snprintf(words, sizeof(words),
                 "loses %s of the set followed; if that is meant, write without = { %s }%s", lost,
                 lost, more > 0 ? " and adds = { ... }" : "");
    else
        return;
    say(given, false, words);
}

/* The figure says whose words it holds. */
static void look_at_words(const struct given *given)
{
    const struct field *field = fields_find(&given->in->block->law->book->fields,
                                            given->own->words);
    const struct value *set = &given->own->value;
    for (size_t i = 0; i < set->set_count && field != NULL; i++) {
        char words[400];
        struct nearest nearest;
        bool found = false;
        nearest_start(&nearest, set->set[i]);
        for (size_t k = 0; k < field->choice_count; k++) {
            nearest_offer(&nearest, field->choices[k]);
            found = found || strcmp(field->choices[k], set->set[i]) == 0;
        }
        if (found)
            continue;
        snprintf(words, sizeof(words),
                 "holds \"%.40s\", which %s cannot be%s%s%s; `eavemark "
                 "fields %s` lists what it can",
                 set->set[i], field->path, nearest.name == NULL ? "" : "; did you mean \"",
                 nearest.name == NULL ? "" : nearest.name, nearest.name == NULL ? "" : "\"?",
                 field->path);
        say(given, true, words);
    }
}

/* Switches ------------------------------------------------------------------------------- */

static void look_at_switch(const struct given *given)
{
    const struct profile *own = given->in->block->law->profile;
    const struct figure *lever = given->own->behind == NULL
                                     ? NULL
                                     : profile_figure(own, given->own->behind);
    const bool only_cited = given->entry->value.kind == VALUE_NONE
                            && given->entry->adds.kind == VALUE_NONE
                            && given->entry->without.kind == VALUE_NONE;
    if (lever == NULL || lever->value.yes || given->from == NULL || only_cited)
        return;
    char words[400];
    snprintf(words, sizeof(words),
             "binds nobody: it stands behind \"%.80s\", which is off here; write [\"%.80s\"] = { "
             "true, cite = ... } too, or take the line out",
             lever->name, lever->name);
    say(given, false, words);
}

static void look_at(const struct given *given)
{
    const struct figure *own = given->own;
    if (own->value.kind == VALUE_NUMBER)
        look_at_reach(given);
    if (own->value.kind == VALUE_SET && own->words != NULL)
        look_at_words(given);
    look_at_switch(given);
    if (given->from == NULL)
        return;
    if (own->value.kind == VALUE_NUMBER)
        look_at_size(given);
    if (own->value.kind == VALUE_SET && given->from->value.kind == VALUE_SET)
        look_at_members(given);
}

/* Fields --------------------------------------------------------------------------------- */

/* As the first that declared it said; the catalogue has the words of others behind them. */
static size_t own_choices(const struct field *field)
{
    return field->choices_of_first > 0 ? field->choices_of_first : field->choice_count;
}

static bool same_choices(const struct field *a, const struct field *b)
{
    if (a->type != b->type || own_choices(a) != own_choices(b))
        return false;
    for (size_t i = 0; i < own_choices(a); i++)
        if (strcmp(a->choices[i], b->choices[i]) != 0)
            return false;
    return true;
}

/* A word that both know; NULL for none. Words that only one knows the other refuses. */
static const char *shared_word(const struct field *a, const struct field *b)
{
    for (size_t i = 0; i < own_choices(a); i++)
        for (size_t k = 0; k < own_choices(b); k++)
            if (strcmp(a->choices[i], b->choices[k]) == 0)
                return a->choices[i];
    return NULL;
}

/* A job that goes from one place to the other would say there what it does not mean. */
static void look_at_fields(const struct trapping *in, const struct fields *every,
                           const struct field *field)
{
    for (const struct field *f = field->first_child; f != NULL; f = f->next) {
        look_at_fields(in, every, f);
        if (f->file == NULL || !strings_have(&in->place->own_rules, f->file))
            continue;
        const struct field *other = fields_find(every, f->path);
        const char *word = other == NULL || other->file == NULL || strcmp(other->file, f->file) == 0
                                   || same_choices(f, other)
                               ? NULL
                               : shared_word(f, other);
        if (word == NULL)
            continue;
        proof_remark(in->proof, in->place, in->block,
                     (struct remark){f->file, 0, false,
                                     arena_format(&in->proof->arena,
                                                  "field \"%s\" is declared in %s too, with other "
                                                  "choices, and \"%s\" is one of both: a job that "
                                                  "says it may mean another thing there; write "
                                                  "words that only this place has",
                                                  f->path, other->file, word),
                                     NULL});
    }
}

/* The whole ------------------------------------------------------------------------------ */

/* A model's parts are not looked through each time they are read. */
static void look_through_parts(const struct trapping *in)
{
    struct problems problems = {0};
    for (const struct source *s = in->block->law->profile->sources.first; s != NULL; s = s->next)
        place_traps(s, &problems);
    for (const struct problem *p = problems.first; p != NULL; p = p->next)
        proof_remark(in->proof, in->place, in->block,
                     (struct remark){p->file, p->line, true, p->message, NULL});
    if (problems.out_of_memory)
        problem_out_of_memory(&in->proof->problems);
    problems_free(&problems);
}

void proof_traps(struct laws *laws, struct proof *proof, struct place_proof *place,
                 struct proof_block *block, const struct law *parent)
{
    const struct trapping in = {proof, place, block, parent == NULL ? NULL : parent->profile};
    const struct profile *own = block->law->profile;
    struct problems ignored = {0};
    if (block->block->model)
        look_through_parts(&in);
    for (const struct entry *e = block->block->entries; e != NULL && block->block->draft == NULL;
         e = e->next) {
        const struct given given = {&in, e, profile_figure(own, e->name),
                                    parent == NULL ? NULL
                                                   : profile_figure(parent->profile, e->name)};
        if (given.own != NULL && !block->block->model)
            look_at(&given);
    }
    if (place->own_rules.count == 0)
        return;
    const struct law *every = laws_fields(laws, &ignored);
    if (every != NULL)
        look_at_fields(&in, &every->book->fields, block->law->book->fields.root);
    laws_drop_problems(laws, &ignored);
}
