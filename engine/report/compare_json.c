#include "report/compare_report.h"

#include "include/eavemark.h"
#include "report/json_part.h"

/* Every function returns false when out of memory; see json_part.h. */

/* NULL when out of memory. */
static cJSON *add_object(cJSON *array)
{
    cJSON *object = cJSON_CreateObject();
    return cJSON_AddItemToArray(array, object) ? object : NULL;
}

/* Every outcome, be there none: readers need not ask whether a key is there. */
static bool add_summary(cJSON *object, const struct result *result)
{
    cJSON *summary = cJSON_AddObjectToObject(object, "summary");
    bool added = summary != NULL;
    for (int i = 0; added && i < OUTCOME_COUNT; i++)
        added = cJSON_AddNumberToObject(summary, outcome_word((enum outcome)i),
                                        (double)result->counts[i])
                != NULL;
    return added;
}

/* As many as were asked for, in that order: other lists refer to them by it. */
static bool add_sides(cJSON *root, const struct comparison *c)
{
    cJSON *array = cJSON_AddArrayToObject(root, "sides");
    bool added = array != NULL;
    for (size_t i = 0; added && i < c->side_count; i++) {
        const struct result *result = &c->sides[i].checked.result;
        cJSON *side = add_object(array);
        added = side != NULL && json_add_text(side, "file", c->sides[i].file)
                && json_add_text(side, "job", result->job)
                && json_add_text(side, "date", result->date) && json_add_jurisdiction(side, result)
                && json_add_text(side, "fingerprint", result->fingerprint)
                && add_summary(side, result);
    }
    return added;
}

/* null where a side has no such finding. */
static bool add_word(cJSON *array, const char *word)
{
    return cJSON_AddItemToArray(array,
                                word == NULL ? cJSON_CreateNull() : cJSON_CreateString(word));
}

/* One for each side, in the order of sides. */
static bool add_outcomes(cJSON *object, const struct finding *const *findings, size_t count)
{
    cJSON *array = cJSON_AddArrayToObject(object, "outcomes");
    bool added = array != NULL;
    for (size_t i = 0; added && i < count; i++)
        added = add_word(array, findings[i] == NULL ? NULL : outcome_word(findings[i]->outcome));
    return added;
}

/* The same keys whether or not it compared, and whether or not it is there. */
static bool add_finding(cJSON *array, const struct finding *finding)
{
    const struct value none = {.kind = VALUE_NONE};
    cJSON *object = add_object(array);
    const bool compared = finding != NULL && finding->compared;
    return object != NULL
           && json_add_text(object, "sense", compared ? sense_word(finding->sense) : NULL)
           && json_add_value(object, "required", compared ? &finding->required : &none)
           && json_add_text(object, "unit", compared ? finding->required.unit : NULL)
           && json_add_value(object, "found", compared ? &finding->found : &none)
           && json_add_text(object, "says", finding == NULL ? NULL : finding->says);
}

/* null: the law of that side has no such figure. */
static bool add_figure_side(cJSON *array, const struct figure *figure)
{
    if (figure == NULL)
        return cJSON_AddItemToArray(array, cJSON_CreateNull());
    cJSON *object = add_object(array);
    return object != NULL && json_add_value(object, "value", &figure->value)
           && json_add_text(object, "unit", figure->value.unit)
           && json_add_text(object, "code", figure->cite.code)
           && json_add_text(object, "section", figure->cite.section)
           && json_add_text(object, "status", status_word(figure->cite.status))
           && json_add_text(object, "source", figure->cite.source)
           && json_add_text(object, "disputed", figure->disputed)
           && json_add_amended(object, figure->amended);
}

static bool add_figures(cJSON *object, const struct change *change)
{
    cJSON *array = cJSON_AddArrayToObject(object, "figures");
    bool added = array != NULL;
    for (size_t i = 0; added && i < change->figure_count; i++) {
        cJSON *figure = add_object(array), *values = NULL;
        added = figure != NULL && json_add_text(figure, "figure", change->figures[i].name)
                && (values = cJSON_AddArrayToObject(figure, "values")) != NULL
                && add_figure_side(values, change->figures[i].values[0])
                && add_figure_side(values, change->figures[i].values[1]);
    }
    return added;
}

/* In words, as a reader would say them: "5:12", "not said". */
static bool add_facts(cJSON *object, const struct change *change)
{
    cJSON *array = cJSON_AddArrayToObject(object, "facts");
    bool added = array != NULL;
    for (size_t i = 0; added && i < change->fact_count; i++) {
        cJSON *fact = add_object(array);
        added = fact != NULL && json_add_text(fact, "fact", change->facts[i].path)
                && json_add_texts(fact, "values", change->facts[i].values, 2);
    }
    return added;
}

/* What a finding was and is on both sides, and the figures and facts that moved it. */
static bool add_change(cJSON *array, const struct change *change)
{
    const struct finding *any = change->findings[0] != NULL ? change->findings[0]
                                                            : change->findings[1];
    cJSON *object = add_object(array), *findings = NULL;
    return object != NULL && json_add_text(object, "rule", any->rule)
           && json_add_text(object, "where", any->where)
           && json_add_text(object, "stage", stage_word(any->stage))
           && add_outcomes(object, change->findings, 2)
           && (findings = cJSON_AddArrayToObject(object, "findings")) != NULL
           && add_finding(findings, change->findings[0])
           && add_finding(findings, change->findings[1]) && add_figures(object, change)
           && add_facts(object, change);
}

static bool add_changes(cJSON *root, const struct comparison *c)
{
    cJSON *array = cJSON_AddArrayToObject(root, "changes");
    bool added = array != NULL;
    for (size_t i = 0; added && i < c->change_count; i++)
        added = add_change(array, &c->changes[i]);
    return added;
}

/* Only rows that differ: the rest are counted. */
static bool add_rows(cJSON *root, const struct comparison *c)
{
    cJSON *array = cJSON_AddArrayToObject(root, "rows");
    bool added = array != NULL;
    for (size_t i = 0; added && i < c->row_count; i++) {
        if (!c->rows[i].differs)
            continue;
        cJSON *row = add_object(array);
        added = row != NULL && json_add_text(row, "rule", c->rows[i].rule)
                && json_add_text(row, "where", c->rows[i].where)
                && add_outcomes(row, c->rows[i].findings, c->side_count);
    }
    return added;
}

void report_compare_json(const struct comparison *c, bool pretty, struct text *out)
{
    cJSON *root = cJSON_CreateObject();
    const bool complete =
        root != NULL && json_add_text(root, "eavemark", EAVEMARK_VERSION) && add_sides(root, c)
        && cJSON_AddNumberToObject(root, "differ", (double)c->differing) != NULL
        && cJSON_AddNumberToObject(root, "same", (double)(c->row_count - c->differing)) != NULL
        && cJSON_AddNumberToObject(root, "same_otherwise", (double)c->otherwise) != NULL
        /* Of two sides causes are looked for; of more there is only a table. */
        && (c->side_count == 2 ? add_changes(root, c) : add_rows(root, c))
        && json_add_text(root, "caution", c->sides[0].checked.result.caution);
    json_finish(root, complete, pretty, out);
}
