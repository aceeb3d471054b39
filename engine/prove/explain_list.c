/* explain_list.c - the list of all rules, or of those rules and figures in whose words one
 * stands. */
#include "judge/reads.h"
#include "judge/row_reads.h"
#include "prove/explain_parts.h"

#include <ctype.h>
#include <stdlib.h>
#include <string.h>

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
        /* A rule of the common files is every place's: it was listed with the law asked for. */
        if (!is_listed(out, r->id))
            rules[out->rule_count++] = (struct listed_rule){
                arena_copy(&out->arena, r->id), arena_copy(&out->arena, r->title), place, false};
}

/* Without a place named, the rules of all places, each with the place that first has it. */
void explain_list(struct explaining *e, const struct law *asked)
{
    struct explanation *out = e->out;
    list_law(out, asked, NULL);
    for (size_t i = 0; e->request->jurisdiction == NULL && i < out->places.count; i++) {
        const struct law *law = explain_may_add_rules(&out->places, i)
                                    ? explain_law_of(e->laws, &out->places, i)
                                    : NULL;
        if (law != NULL)
            list_law(out, law, law->profile->title);
        explain_let_go(e->laws);
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

static bool set_has_word(const struct value *value, const char *word)
{
    for (size_t i = 0; i < value->set_count; i++)
        if (has_word(value->set[i], word))
            return true;
    return false;
}

static bool figure_has_word(const struct figure *figure, const char *word)
{
    return has_word(figure->name, word) || set_has_word(&figure->value, word);
}

/* In the id, in the words reports print, or in a figure that it asks for. */
static bool rule_has_word(const struct law *law, const struct rule *rule, const char *word)
{
    bool found = has_word(rule->id, word) || has_word(rule->title, word)
                 || has_word(rule->mend, word) || has_word(rule->caution, word);
    for (size_t i = 0; !found && i < law->profile->figure_count; i++)
        found = reads_has_figure(law->book, rule->reads, &law->profile->figures[i])
                && figure_has_word(&law->profile->figures[i], word);
    return found;
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

/* Sets what led to it. Of a rule that the law asked for does not have, its name is known
 * alone. */
static bool is_led_to(const struct law *law, struct listed_rule *listed, const char *word)
{
    const struct rule *rule = rulebook_rule(law->book, listed->id);
    struct looking looking = {word, false};
    if (rule == NULL)
        return has_word(listed->id, word) || has_word(listed->title, word);
    if (rule_has_word(law, rule, word))
        return true;
    row_reads_each_field(law->book, rule, look_in_field, &looking);
    listed->by_fact = looking.found;
    return looking.found;
}

/* The rules and figures in whose words the one asked for stands. False when there are
 * none: it may be a name misspelled. */
bool explain_list_word(struct explaining *e, const struct law *asked)
{
    struct explanation *out = e->out;
    const char *word = e->request->name;
    size_t kept = 0;
    /* Two letters stand in nearly every rule; a dot makes it a name. */
    if (strlen(word) < 3 || strchr(word, '.') != NULL)
        return false;
    explain_list(e, asked);
    for (size_t i = 0; i < out->rule_count; i++)
        if (is_led_to(asked, &out->rules[i], word))
            out->rules[kept++] = out->rules[i];
    out->rule_count = kept;
    for (size_t i = 0; i < asked->profile->figure_count; i++)
        if (figure_has_word(&asked->profile->figures[i], word))
            explain_note_figure(out, asked->profile->figures[i].name);
    out->word = kept + out->figures.count > 0 ? word : NULL;
    /* Then it is explained as a name that is none. */
    if (out->word == NULL)
        out->rules = NULL;
    return out->word != NULL;
}

void explain_list_askers(struct explanation *out, const struct law *law, const char *name)
{
    const struct figure *figure = profile_figure(law->profile, name);
    out->askers = arena_array(&out->arena, law->book->rule_count + 1, sizeof(*out->askers));
    for (const struct rule *r = law->book->rules; r != NULL && out->askers != NULL; r = r->next)
        if (figure != NULL && reads_has_figure(law->book, r->reads, figure))
            out->askers[out->asker_count++] = (struct listed_rule){r->id, r->title, NULL, false};
}
