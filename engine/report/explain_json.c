#include "report/explain_report.h"

#include "include/eavemark.h"
#include "job/path.h"
#include "report/json_part.h"

#include <string.h>

/* Every function returns false when out of memory; see json_part.h. */

static cJSON *add_object(cJSON *array)
{
    cJSON *object = cJSON_CreateObject();
    return cJSON_AddItemToArray(array, object) ? object : NULL;
}

static bool add_skipped(cJSON *root, const struct explanation *x)
{
    return json_add_texts(root, "not_looked_at", x->places.skipped.items, x->places.skipped.count);
}

/* The list of all rules, or of those that a word led to. */
static bool add_list(cJSON *root, const struct explanation *x)
{
    cJSON *array = cJSON_AddArrayToObject(root, "rules");
    bool added = array != NULL;
    for (size_t i = 0; added && i < x->rule_count; i++) {
        cJSON *rule = add_object(array);
        added = rule != NULL && json_add_text(rule, "rule", x->rules[i].id)
                && json_add_text(rule, "title", x->rules[i].title)
                && json_add_text(rule, "only_in", x->rules[i].place);
    }
    if (added && x->word != NULL)
        added = json_add_text(root, "word", x->word)
                && json_add_texts(root, "figures", x->figures.items, x->figures.count);
    return added;
}

/* Of a figure by itself: the rules that ask for it. */
static bool add_askers(cJSON *root, const struct explanation *x)
{
    cJSON *array = x->rule != NULL ? NULL : cJSON_AddArrayToObject(root, "asked_by");
    bool added = x->rule != NULL || array != NULL;
    for (size_t i = 0; added && i < x->asker_count; i++)
        added = cJSON_AddItemToArray(array, cJSON_CreateString(x->askers[i].id));
    return added;
}

static bool add_rule(cJSON *root, const struct explanation *x)
{
    const struct rule *rule = x->rule;
    const char *per = rule->per_depth == 0 ? NULL : rule->per[rule->per_depth - 1]->path;
    return json_add_text(root, "rule", rule->id) && json_add_text(root, "title", rule->title)
           && json_add_text(root, "stage", stage_word(rule->stage))
           && json_add_text(root, "per", per) && json_add_text(root, "mend", rule->mend)
           && json_add_text(root, "caution", rule->caution)
           && json_add_text(root, "file", rule->file)
           && cJSON_AddNumberToObject(root, "line", rule->line) != NULL
           && json_add_text(root, "only_in", x->only_in);
}

static bool add_cite(cJSON *object, const struct figure *figure)
{
    cJSON *cite = cJSON_AddObjectToObject(object, "cite");
    return cite != NULL && json_add_text(cite, "code", figure->cite.code)
           && json_add_text(cite, "section", figure->cite.section)
           && json_add_text(cite, "status", status_word(figure->cite.status))
           && json_add_text(cite, "source", figure->cite.source)
           && json_add_text(object, "disputed", figure->disputed)
           && json_add_text(object, "file", figure->file)
           && cJSON_AddNumberToObject(object, "line", figure->line) != NULL;
}

/* The figure as one place has it. */
static bool add_standing(cJSON *array, const struct profile *profile, const struct figure *figure)
{
    cJSON *object = add_object(array);
    return object != NULL && json_add_text(object, "place", profile->id)
           && json_add_text(object, "title", profile->title)
           && json_add_text(object, "edition", profile->edition)
           && cJSON_AddBoolToObject(object, "invented", profile->invented) != NULL
           && json_add_value(object, "value", &figure->value) && add_cite(object, figure)
           && json_add_amended(object, figure->amended);
}

static bool add_editions(cJSON *object, const struct explanation *x, const char *name)
{
    cJSON *array = cJSON_AddArrayToObject(object, "by_edition");
    bool added = array != NULL;
    for (size_t i = 0; added && i < x->column_count; i++) {
        const struct figure *figure = profile_figure(x->columns[i], name);
        added = figure == NULL || add_standing(array, x->columns[i], figure);
    }
    return added;
}

/* Every place that moved it, whatever edition it follows. */
static bool add_moves(cJSON *object, const struct explanation *x, const char *name)
{
    cJSON *array = cJSON_AddArrayToObject(object, "moved");
    bool added = array != NULL;
    for (size_t i = 0; added && i < x->places.count; i++) {
        const struct figure *figure = profile_figure(x->places.items[i].profile, name);
        if (figure != NULL && figure->amended != NULL)
            added = add_standing(array, x->places.items[i].profile, figure);
    }
    return added;
}

static bool add_figures(cJSON *root, const struct explanation *x)
{
    cJSON *array = cJSON_AddArrayToObject(root, "figures");
    bool added = array != NULL;
    for (size_t i = 0; added && i < x->figures.count; i++) {
        const char *name = x->figures.items[i];
        const struct figure *figure = explain_figure(x, name);
        cJSON *object = add_object(array);
        added = object != NULL && json_add_text(object, "figure", name)
                && json_add_text(object, "sense", figure == NULL ? NULL : sense_word(figure->sense))
                && json_add_text(object, "unit", figure == NULL ? NULL : figure->value.unit)
                && add_editions(object, x, name) && add_moves(object, x, name);
    }
    return added;
}

static bool add_fields(cJSON *root, const struct explanation *x)
{
    cJSON *array = cJSON_AddArrayToObject(root, "facts");
    bool added = array != NULL;
    for (size_t i = 0; added && i < x->field_count; i++) {
        cJSON *object = add_object(array);
        added = object != NULL && json_add_text(object, "field", x->fields[i]->path)
                && json_add_text(object, "unit", x->fields[i]->unit)
                && json_add_text(object, "stage", stage_word(x->fields[i]->stage))
                && json_add_text(object, "ask", x->fields[i]->ask);
    }
    return added;
}

/* The value as the job has it, null where it has none. */
static bool add_facts_read(cJSON *object, const struct explanation *x, const struct finding *f)
{
    cJSON *array = cJSON_AddArrayToObject(object, "facts");
    bool added = array != NULL;
    for (size_t i = 0; added && i < f->read_count; i++) {
        const cJSON *value = path_find(x->job, f->reads[i].at);
        cJSON *fact = add_object(array);
        cJSON *copy = value == NULL ? cJSON_CreateNull() : cJSON_Duplicate(value, true);
        if (fact == NULL || !cJSON_AddItemToObject(fact, "value", copy)) {
            cJSON_Delete(copy);
            return false;
        }
        added = json_add_text(fact, "at", f->reads[i].at);
    }
    return added;
}

static bool add_figures_asked(cJSON *object, const struct finding *f)
{
    cJSON *array = cJSON_AddArrayToObject(object, "figures");
    bool added = array != NULL;
    for (size_t i = 0; added && i < f->figure_count; i++) {
        cJSON *figure = add_object(array);
        added = figure != NULL && json_add_text(figure, "figure", f->figures[i]->name)
                && json_add_value(figure, "value", &f->figures[i]->value)
                && json_add_text(figure, "unit", f->figures[i]->value.unit)
                && add_cite(figure, f->figures[i])
                && json_add_amended(figure, f->figures[i]->amended);
    }
    return added;
}

/* One finding of the rule, step by step as it was judged. */
static bool add_steps(cJSON *array, const struct explanation *x, const struct finding *f)
{
    cJSON *object = add_object(array);
    /* What was not compared demanded nothing and found nothing. */
    const struct value none = {.kind = VALUE_NONE};
    return object != NULL && json_add_text(object, "where", f->where)
           && add_facts_read(object, x, f) && add_figures_asked(object, f)
           && json_add_texts(object, "work", f->work, f->work_count)
           && json_add_text(object, "sense", f->compared ? sense_word(f->sense) : NULL)
           && json_add_value(object, "required", f->compared ? &f->required : &none)
           && json_add_value(object, "found", f->compared ? &f->found : &none)
           && json_add_text(object, "outcome", outcome_word(f->outcome))
           && json_add_text(object, "says", f->says) && json_add_text(object, "mend", f->mend);
}

static bool add_judged(cJSON *root, const struct explanation *x)
{
    const struct result *result = &x->checked.result;
    cJSON *object = cJSON_AddObjectToObject(root, "judged");
    cJSON *array = NULL;
    bool added = object != NULL && json_add_text(object, "job", result->job)
                 && json_add_text(object, "date", result->date)
                 && json_add_jurisdiction(object, result)
                 && json_add_text(object, "fingerprint", result->fingerprint)
                 && (array = cJSON_AddArrayToObject(object, "findings")) != NULL;
    for (size_t i = 0; added && i < result->finding_count; i++)
        if (strcmp(result->findings[i].rule, x->rule->id) == 0)
            added = add_steps(array, x, &result->findings[i]);
    return added && json_add_text(root, "caution", result->caution);
}

void report_explain_json(const struct explanation *x, bool pretty, struct text *out)
{
    cJSON *root = cJSON_CreateObject();
    bool complete = root != NULL && json_add_text(root, "eavemark", EAVEMARK_VERSION);
    /* Asked for by no name, or by a word. */
    if (x->rules != NULL) {
        json_finish(root, complete && add_list(root, x) && add_skipped(root, x), pretty, out);
        return;
    }
    complete = complete && (x->rule == NULL || add_rule(root, x)) && add_figures(root, x)
               && add_askers(root, x) && add_skipped(root, x);
    if (x->rule != NULL)
        complete = complete && add_fields(root, x) && (x->job == NULL || add_judged(root, x));
    json_finish(root, complete, pretty, out);
}
