/* explain_list.c - the list of all rules, or of those rules and figures in whose words one
 * stands. */
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
        if (!is_listed(out, r->id))
            rules[out->rule_count++] = (struct listed_rule){
                arena_copy(&out->arena, r->id), arena_copy(&out->arena, r->title), place};
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
        if (has_word(out->rules[i].title, word)
            || rule_has_word(asked->book, out->rules[i].id, word))
            out->rules[kept++] = out->rules[i];
    out->rule_count = kept;
    for (size_t i = 0; i < asked->profile->figure_count; i++) {
        const struct figure *figure = &asked->profile->figures[i];
        if (has_word(figure->name, word) || set_has_word(&figure->value, word))
            explain_note_figure(out, figure->name);
    }
    out->word = kept + out->figures.count > 0 ? word : NULL;
    if (out->word == NULL)
        out->rules = NULL;
    return out->word != NULL;
}
