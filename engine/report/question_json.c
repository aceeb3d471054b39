#include "report/question_report.h"

#include "report/json_part.h"
#include "report/telling.h"

#include <string.h>

/* null: none. */
static bool add_bound(cJSON *object, const char *key, bool has, double bound)
{
    return (has ? cJSON_AddNumberToObject(object, key, bound) : cJSON_AddNullToObject(object, key))
           != NULL;
}

/* Choices of the field, or the names a reference may give. */
static bool add_choices(cJSON *object, const struct question *question)
{
    const struct field *field = question->field;
    if (field->choice_count > 0)
        return json_add_texts(object, "choices", field->choices, field->choice_count);
    return json_add_texts(object, "choices", question->names, question->name_count);
}

/* The rules that wait, each once: findings of one rule stand together. */
static bool add_rules(cJSON *object, const struct question *question)
{
    cJSON *rules = cJSON_AddArrayToObject(object, "rules");
    for (size_t i = 0; rules != NULL && i < question->waiting_count; i++) {
        const struct finding *finding = question->waiting[i];
        if (i > 0 && strcmp(question->waiting[i - 1]->rule, finding->rule) == 0)
            continue;
        cJSON *rule = cJSON_CreateObject();
        if (!cJSON_AddItemToArray(rules, rule) || !json_add_text(rule, "rule", finding->rule)
            || !json_add_text(rule, "title", finding->title))
            return false;
    }
    return rules != NULL;
}

static bool add_question(cJSON *list, const struct question *question)
{
    const struct field *field = question->field;
    cJSON *object = cJSON_CreateObject();
    return cJSON_AddItemToArray(list, object) && json_add_text(object, "pointer", question->pointer)
           && json_add_text(object, "where", question->where)
           && json_add_text(object, "question", field->ask)
           && json_add_text(object, "type", field_type_said(field->type))
           && json_add_text(object, "unit", field->unit)
           && json_add_text(object, "found", telling_answer(field->answer))
           && add_bound(object, "least", field->has_least, field->least)
           && add_bound(object, "most", field->has_most, field->most)
           && add_choices(object, question)
           && json_add_text(object, "stage", stage_word(field->stage))
           && add_rules(object, question);
}

void report_questions_json(const struct questions *questions, bool pretty, struct text *out)
{
    cJSON *root = cJSON_CreateObject();
    cJSON *list = root == NULL ? NULL : cJSON_AddArrayToObject(root, "questions");
    bool complete = list != NULL;
    for (size_t i = 0; complete && i < questions->count; i++)
        complete = add_question(list, &questions->items[i]);
    json_finish(root, complete, pretty, out);
}
