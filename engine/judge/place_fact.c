#include "judge/place_fact.h"

#include "base/nearest.h"
#include "base/number.h"
#include "base/text.h"
#include "job/field_words.h"
#include "job/json.h"
#include "job/origin.h"
#include "job/path.h"
#include "job/tree.h"
#include "job/validate.h"
#include "judge/meant.h"

#include <stdio.h>
#include <string.h>

/* Checking ------------------------------------------------------------------------------ */

static void say(const struct place_fact *fact, struct problems *problems, const char *what,
                const char *nearest)
{
    problem_at_line(problems, PROBLEM_RULES, fact->file, fact->line, 0, "fact \"%s\" %s%s%s%s",
                    fact->name, what, nearest == NULL ? "" : "; did you mean \"",
                    nearest == NULL ? "" : nearest, nearest == NULL ? "" : "\"?");
}

static bool in_range(double number, const struct field *field)
{
    return !(field->has_least && number < field->least)
           && !(field->has_most && number > field->most);
}

static bool is_choice(const struct field *field, const char *word)
{
    for (size_t i = 0; i < field->choice_count; i++)
        if (strcmp(field->choices[i], word) == 0)
            return true;
    return false;
}

static const char *nearest_choice(const struct field *field, const char *word)
{
    struct nearest nearest;
    nearest_start(&nearest, word);
    for (size_t i = 0; i < field->choice_count; i++)
        nearest_offer(&nearest, field->choices[i]);
    return fields_plausible(word, nearest.distance) ? nearest.name : NULL;
}

static bool is_number(const struct field *field)
{
    return field->type == FIELD_NUMBER || field->type == FIELD_INTEGER;
}

static void check_words(const struct place_fact *fact, const struct field *field,
                        struct problems *problems)
{
    const char *const *words = fact->one_of.set_count > 0 ? fact->one_of.set : &fact->value.text;
    const size_t count = fact->one_of.set_count > 0 ? fact->one_of.set_count : 1;
    for (size_t i = 0; field->type == FIELD_CHOICE && i < count; i++)
        if (!is_choice(field, words[i]))
            say(fact, problems, "is none of the choices that there are",
                nearest_choice(field, words[i]));
    if (field->type == FIELD_TEXT && !in_range((double)strlen(words[0]), field))
        say(fact, problems, "is longer or shorter than the field takes", NULL);
}

static void check_range(const struct place_fact *fact, double number, const struct field *field,
                        struct problems *problems)
{
    char range[200], said[96];
    if (in_range(number, field))
        return;
    field_words_range(field, field->unit, range);
    number_write_unit(number, field->unit, said);
    problem_at_line(problems, PROBLEM_RULES, fact->file, fact->line, 0,
                    "fact \"%s\" says %s, which no job can: the field takes %s", fact->name, said,
                    range);
}

static void check_numbers(const struct place_fact *fact, const struct field *field,
                          struct problems *problems)
{
    if (fact->unit == NULL ? field->unit != NULL
                           : field->unit == NULL || strcmp(fact->unit, field->unit) != 0)
        say(fact, problems, fact->unit == NULL ? "says no unit" : "is in another unit",
            field->unit);
    if (fact->value.kind == VALUE_NUMBER)
        check_range(fact, fact->value.number, field, problems);
    if (fact->has_least)
        check_range(fact, fact->least, field, problems);
    if (fact->has_most)
        check_range(fact, fact->most, field, problems);
}

/* The kind that a field of this type has. */
static bool kind_fits(const struct place_fact *fact, const struct field *field)
{
    const bool bounded = fact->has_least || fact->has_most;
    if (is_number(field))
        return bounded || fact->value.kind == VALUE_NUMBER;
    if (field->type == FIELD_YES_NO)
        return fact->value.kind == VALUE_YES_NO;
    return fact->value.kind == VALUE_TEXT
           || (field->type == FIELD_CHOICE && fact->one_of.set_count > 0);
}

static void check_one(const struct rulebook *book, const struct place_fact *fact,
                      const struct field *field, struct problems *problems)
{
    if (field == NULL || strcmp(field->path, fact->name) != 0) {
        say(fact, problems, "is no field of a job", fields_nearest_path(&book->fields, fact->name));
    } else if (!field->of_place) {
        say(fact, problems, "is not one all over a place: it is for each job to say", NULL);
    } else if (!kind_fits(fact, field)) {
        say(fact, problems, "is another kind of value than the field takes", NULL);
    } else if (is_number(field)) {
        check_numbers(fact, field, problems);
    } else {
        if (fact->unit != NULL)
            say(fact, problems, "has a unit, but is no number", NULL);
        if (field->type != FIELD_YES_NO)
            check_words(fact, field, problems);
    }
}

void place_fact_check(struct rulebook *book, struct problems *problems)
{
    const struct profile *profile = book->profile;
    book->facts = arena_array(&book->arena, profile->fact_count, sizeof(*book->facts));
    for (size_t i = 0; book->facts != NULL && i < profile->fact_count; i++) {
        book->facts[i] = fields_find(&book->fields, profile->facts[i].name);
        check_one(book, &profile->facts[i], book->facts[i], problems);
    }
}

/* Holding ------------------------------------------------------------------------------- */

static const char *pointer_of(const struct place_fact *fact, struct arena *arena)
{
    return path_below(arena, "", fact->name);
}

static const struct field *field_of(const struct rulebook *book, const struct place_fact *fact)
{
    return book->facts[fact - book->profile->facts];
}

/* The group that a field stands in, or NULL; *open: those on the way are groups, or not there
 * yet. What is none is left to validation. */
static cJSON *group_of(cJSON *job, const struct field *field, bool *open)
{
    const struct field *parent = field->parent;
    cJSON *group = parent->parent == NULL ? job : group_of(job, parent, open);
    if (parent->parent != NULL && group != NULL)
        group = tree_member(group, parent);
    if (group != NULL && json_type(group) != cJSON_Object)
        *open = false;
    return group;
}

const cJSON *place_fact_said(const struct rulebook *book, const cJSON *job,
                             const struct place_fact *fact)
{
    return tree_at(job, field_of(book, fact));
}

/* Is it the job's own word? What does not fit the field is left to validation. */
static bool is_own_word(const struct rulebook *book, const cJSON *said,
                        const struct place_fact *fact)
{
    if (json_is_absent(said) || origin_of(said) == ORIGIN_PLACE)
        return false;
    return validate_value_fits(said, field_of(book, fact));
}

/* Outside the place's bounds, or none of its several. */
static bool is_outside(const struct place_fact *fact, const cJSON *said)
{
    if (fact->one_of.set_count > 0)
        return cJSON_IsString(said) && !profile_set_has(&fact->one_of, said->valuestring);
    return cJSON_IsNumber(said)
           && ((fact->has_least && said->valuedouble < fact->least)
               || (fact->has_most && said->valuedouble > fact->most));
}

static bool is_otherwise(const struct place_fact *fact, const cJSON *said)
{
    switch (fact->value.kind) {
    case VALUE_NUMBER:
        return !number_equals(said->valuedouble, fact->value.number, fact->unit);
    case VALUE_YES_NO:
        return cJSON_IsTrue(said) != fact->value.yes;
    case VALUE_TEXT:
        return strcmp(said->valuestring, fact->value.text) != 0;
    case VALUE_NONE:
    case VALUE_SET:
        break;
    }
    return is_outside(fact, said);
}

static cJSON *node_of(const struct value *value)
{
    switch (value->kind) {
    case VALUE_NUMBER:
        return cJSON_CreateNumber(value->number);
    case VALUE_YES_NO:
        return cJSON_CreateBool(value->yes);
    case VALUE_TEXT:
        return cJSON_CreateString(value->text);
    case VALUE_NONE:
    case VALUE_SET:
        break;
    }
    return NULL;
}

/* group: that it belongs into; NULL: not there yet. */
static void fill_in(cJSON *job, cJSON *group, const struct field *field,
                    const struct place_fact *fact, struct problems *problems)
{
    struct arena arena = {0};
    cJSON *value = node_of(&fact->value);
    origin_mark(value, ORIGIN_PLACE);
    const bool filled = group != NULL ? json_set(group, field->name, value)
                                      : path_set(job, pointer_of(fact, &arena), value);
    if (!filled || arena.failed)
        problem_out_of_memory(problems);
    arena_free(&arena);
}

static bool is_meant(const cJSON *job, const struct place_fact *fact, struct problems *problems)
{
    struct arena arena = {0};
    const bool meant = meant_is(job, pointer_of(fact, &arena));
    if (arena.failed)
        problem_out_of_memory(problems);
    arena_free(&arena);
    return meant;
}

void place_fact_fill(const struct rulebook *book, cJSON *job, struct problems *problems)
{
    for (size_t i = 0; book->profile != NULL && i < book->profile->fact_count; i++) {
        const struct place_fact *fact = &book->profile->facts[i];
        const struct field *field = field_of(book, fact);
        bool open = true;
        cJSON *group = group_of(job, field, &open), *node = tree_member(group, field);
        if (json_is_absent(node) && open && fact->value.kind != VALUE_NONE)
            fill_in(job, group, field, fact, problems);
        else if (is_own_word(book, node, fact) && is_otherwise(fact, node)
                 && !is_meant(job, fact, problems))
            origin_deny(node);
    }
}

/* Words --------------------------------------------------------------------------------- */

static void add_number(struct text *out, double number, const char *unit)
{
    char words[96];
    number_write_unit(number, unit, words);
    text_add(out, words);
}

static void add_said(struct text *out, const cJSON *said, const char *unit)
{
    if (cJSON_IsNumber(said))
        add_number(out, said->valuedouble, unit);
    else if (cJSON_IsBool(said))
        text_add(out, cJSON_IsTrue(said) ? "yes" : "no");
    else if (cJSON_IsString(said))
        text_addf(out, "%.*s", (int)path_quotable(said->valuestring, strlen(said->valuestring), 80),
                  said->valuestring);
}

void place_fact_add(struct text *out, const struct place_fact *fact)
{
    if (fact->value.kind == VALUE_NUMBER)
        add_number(out, fact->value.number, fact->unit);
    else if (fact->value.kind == VALUE_TEXT)
        text_add(out, fact->value.text);
    else if (fact->value.kind == VALUE_YES_NO)
        text_add(out, fact->value.yes ? "yes" : "no");
    for (size_t i = 0; i < fact->one_of.set_count; i++)
        text_addf(out, "%s%s", i == 0 ? "one of " : ", ", fact->one_of.set[i]);
    if (fact->has_least)
        text_add(out, "at least ");
    if (fact->has_least)
        add_number(out, fact->least, fact->unit);
    if (fact->has_most)
        text_addf(out, "%sat most ", fact->has_least ? ", " : "");
    if (fact->has_most)
        add_number(out, fact->most, fact->unit);
}

const char *place_fact_told(const struct rulebook *book, const cJSON *job,
                            const struct place_fact *fact, struct arena *arena)
{
    const cJSON *said = place_fact_said(book, job, fact);
    struct text words = TEXT_EMPTY;
    if (!is_own_word(book, said, fact) || !is_otherwise(fact, said))
        return NULL;
    const char *pointer = pointer_of(fact, arena);
    text_addf(&words, "%s: the job says ", pointer);
    add_said(&words, said, fact->unit);
    text_addf(&words, ", %s ", fact->by);
    place_fact_add(&words, fact);
    text_addf(&words, " (%s, %s)%s", fact->cite.section, status_word(fact->cite.status),
              meant_is(job, pointer) ? "; meant as it stands" : "");
    return text_keep(&words, arena);
}

const struct place_fact *place_fact_of(const struct rulebook *book, const struct field *field)
{
    for (size_t i = 0; book->profile != NULL && i < book->profile->fact_count; i++)
        if (field_of(book, &book->profile->facts[i]) == field)
            return &book->profile->facts[i];
    return NULL;
}

void place_fact_ask_back(const struct rulebook *book, const cJSON *job, const char *file,
                         struct problems *problems)
{
    for (size_t i = 0; book->profile != NULL && i < book->profile->fact_count; i++) {
        const struct place_fact *fact = &book->profile->facts[i];
        const cJSON *said = place_fact_said(book, job, fact);
        struct text why = TEXT_EMPTY;
        if (!is_own_word(book, said, fact) || !is_outside(fact, said))
            continue;
        const char *pointer = pointer_of(fact, &problems->arena);
        add_said(&why, said, fact->unit);
        text_addf(&why, " here, where %s has ", fact->by);
        place_fact_add(&why, fact);
        text_addf(&why, " (%s)", fact->cite.section);
        if (why.failed)
            problem_out_of_memory(problems);
        meant_ask_back(job, file, pointer, text_string(&why), problems);
        text_free(&why);
    }
}
