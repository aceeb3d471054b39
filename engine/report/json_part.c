/* json_part.c - see json_part.h; json_out.h writes what is to be fast. */
#include "report/json_part.h"

#include "base/number.h"
#include "report/json_out.h"

#include <cjson/cJSON.h>
#include <string.h>

/* null for none, so that every key is always there. */
bool json_add_text(cJSON *object, const char *key, const char *text)
{
    if (text == NULL)
        return cJSON_AddNullToObject(object, key) != NULL;
    return cJSON_AddStringToObject(object, key, text) != NULL;
}

/* An empty list rather than null: a reader may loop over it without asking. */
bool json_add_texts(cJSON *object, const char *key, const char *const *texts, size_t count)
{
    cJSON *array = cJSON_AddArrayToObject(object, key);
    if (array == NULL)
        return false;
    for (size_t i = 0; i < count; i++)
        if (!cJSON_AddItemToArray(array, cJSON_CreateString(texts[i])))
            return false;
    return true;
}

bool json_add_value(cJSON *object, const char *key, const struct value *value)
{
    switch (value->kind) {
    case VALUE_NONE:
        break;
    case VALUE_NUMBER: {
        /* As it is printed elsewhere: no reader shall find another number here. */
        const double rounded = number_rounded(value->number, value->unit);
        return cJSON_AddNumberToObject(object, key, rounded) != NULL;
    }
    case VALUE_YES_NO:
        return cJSON_AddBoolToObject(object, key, value->yes) != NULL;
    case VALUE_TEXT:
        return json_add_text(object, key, value->text);
    case VALUE_SET:
        return json_add_texts(object, key, value->set, value->set_count);
    }
    return cJSON_AddNullToObject(object, key) != NULL;
}

/* Which facts, and whether the job states them or they were laid out. */
bool json_add_reads(cJSON *object, const struct finding *finding)
{
    cJSON *array = cJSON_AddArrayToObject(object, "reads");
    bool added = array != NULL;
    for (size_t i = 0; added && i < finding->read_count; i++) {
        cJSON *read = cJSON_CreateObject();
        added = cJSON_AddItemToArray(array, read) && json_add_text(read, "at", finding->reads[i].at)
                && json_add_text(read, "from", origin_word(finding->reads[i].from));
    }
    return added;
}

/* Status by its word; a figure without a status says null. */
static bool add_cite(cJSON *array, const struct cite *cite)
{
    cJSON *object = cJSON_CreateObject();
    return cJSON_AddItemToArray(array, object) && json_add_text(object, "code", cite->code)
           && json_add_text(object, "section", cite->section)
           && json_add_text(object, "status", status_word(cite->status))
           && json_add_text(object, "source", cite->source);
}

bool json_add_cites(cJSON *object, const struct finding *finding)
{
    cJSON *array = cJSON_AddArrayToObject(object, "cite");
    if (array == NULL)
        return false;
    for (size_t i = 0; i < finding->cite_count; i++)
        if (!add_cite(array, &finding->cites[i]))
            return false;
    return true;
}

bool json_add_amended(cJSON *object, const struct amended *amended)
{
    if (amended == NULL)
        return cJSON_AddNullToObject(object, "amended") != NULL;
    cJSON *inner = cJSON_AddObjectToObject(object, "amended");
    return inner != NULL && json_add_text(inner, "by", amended->by)
           && json_add_value(inner, "from", &amended->from)
           && json_add_value(inner, "to", &amended->to);
}

bool json_add_jurisdiction(cJSON *root, const struct result *result)
{
    cJSON *object = cJSON_AddObjectToObject(root, "jurisdiction");
    return object != NULL && json_add_text(object, "id", result->jurisdiction)
           && json_add_text(object, "title", result->jurisdiction_title)
           && cJSON_AddBoolToObject(object, "invented", result->invented) != NULL
           && json_add_texts(object, "chain", result->chain, result->chain_count)
           && json_add_texts(object, "doubts", result->doubts, result->doubt_count)
           && json_add_text(object, "edition", result->edition);
}

/* Recursion is bounded: reports are a few levels deep. */
static void add_tree(struct json_out *out, const char *key, const cJSON *node)
{
    /* cJSON keeps flags of its own, and we origins, in the bits above. */
    const int type = node->type & 0xFF;
    switch (type) {
    case cJSON_Object:
    case cJSON_Array:
        json_out_open(out, key, type == cJSON_Object ? '{' : '[');
        for (const cJSON *child = node->child; child != NULL; child = child->next)
            add_tree(out, child->string, child);
        json_out_close(out, type == cJSON_Object ? '}' : ']');
        break;
    case cJSON_Number:
        json_out_number(out, key, node->valuedouble);
        break;
    case cJSON_True:
    case cJSON_False:
        json_out_bool(out, key, type == cJSON_True);
        break;
    default: /* a text; null has none */
        json_out_text(out, key, node->valuestring);
    }
}

/* Deletes the tree in any case. */
void json_finish(cJSON *root, bool complete, bool pretty, struct text *out)
{
    struct json_out to = json_out_to(out, pretty);
    if (complete)
        add_tree(&to, NULL, root);
    else
        out->failed = true;
    text_add(out, "\n");
    cJSON_Delete(root);
}
