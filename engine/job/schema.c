#include "job/schema.h"

#include "job/slope.h"

#include <cjson/cJSON.h>

/* Under construction; failed once memory ran out. Every put keeps the tree
 * whole, so that one cJSON_Delete of its root is enough. */
struct building {
    const struct fields *fields;
    bool failed;
};

/* Owns node from the start. A NULL `to` is what an earlier failed put returned: the
 * failure is noted and passes through. */
static cJSON *put(struct building *building, cJSON *to, const char *key, cJSON *node)
{
    const bool put_in = node != NULL && to != NULL
                        && (key == NULL ? cJSON_AddItemToArray(to, node)
                                        : cJSON_AddItemToObject(to, key, node));
    if (put_in)
        return node;
    cJSON_Delete(node);
    building->failed = true;
    return NULL;
}

static void put_text(struct building *building, cJSON *to, const char *key, const char *text)
{
    put(building, to, key, cJSON_CreateString(text));
}

static void put_number(struct building *building, cJSON *to, const char *key, double number)
{
    put(building, to, key, cJSON_CreateNumber(number));
}

/* What JSON Schema calls the two bounds depends on the type. */
static void put_range(struct building *building, cJSON *to, const struct field *field,
                      const char *least, const char *most)
{
    if (field->has_least)
        put_number(building, to, least, field->least);
    if (field->has_most)
        put_number(building, to, most, field->most);
}

/* A figure as it is spoken: a digit comes before any letter. The reader says the rest. */
static const char SPOKEN_PATTERN[] = "^[^0-9A-Za-z]*[0-9]";

/* null counts as absent, so whatever is not required may be null. */
static void put_type(struct building *building, cJSON *to, const char *type,
                     const struct field *field)
{
    if (field->required) {
        put_text(building, to, "type", type);
        return;
    }
    cJSON *types = put(building, to, "type", cJSON_CreateArray());
    put_text(building, types, NULL, type);
    put_text(building, types, NULL, "null");
}

/* A number, or a text that says one. */
static void put_figure(struct building *building, cJSON *to, const char *type, bool nullable,
                       const struct field *field)
{
    cJSON *types = put(building, to, "type", cJSON_CreateArray());
    put_text(building, types, NULL, type);
    put_text(building, types, NULL, "string");
    if (nullable)
        put_text(building, types, NULL, "null");
    put_range(building, to, field, "minimum", "maximum");
    put_text(building, to, "pattern", SPOKEN_PATTERN);
}

static void put_choices(struct building *building, cJSON *to, const struct field *field,
                        bool nullable)
{
    cJSON *choices = put(building, to, "enum", cJSON_CreateArray());
    for (size_t i = 0; i < field->choice_count; i++)
        put_text(building, choices, NULL, field->choices[i]);
    if (nullable)
        put(building, choices, NULL, cJSON_CreateNull());
}

/* The question and what the schema has no word for: unit, list referred to, stage. */
static void put_said(struct building *building, cJSON *to, const struct field *field)
{
    if (field->ask != NULL)
        put_text(building, to, "title", field->ask);
    struct text said = TEXT_EMPTY;
    if (field->unit != NULL)
        text_addf(&said, "In %s. ", field->unit);
    if (field->refers != NULL)
        text_addf(&said, "The name of an item of %s. ", field->refers);
    text_addf(&said, "%s at the %s stage.", field->measured ? "Measured" : "Known",
              stage_word(field->stage));
    if (field->habit != HABIT_NONE)
        text_add(&said, " A shop sheet may say it.");
    if (field->of_place)
        text_add(&said, " The place may state it.");
    /* Else a description cut short would pass for a whole one. */
    building->failed |= said.failed;
    put_text(building, to, "description", text_string(&said));
    text_free(&said);
}

static void put_field(struct building *building, cJSON *properties, const struct field *field);

static void put_properties(struct building *building, cJSON *to, const struct field *parent)
{
    cJSON *properties = put(building, to, "properties", cJSON_CreateObject());
    cJSON *required = NULL;
    for (const struct field *f = parent->first_child; f != NULL; f = f->next) {
        put_field(building, properties, f);
        if (!f->required)
            continue;
        if (required == NULL)
            required = put(building, to, "required", cJSON_CreateArray());
        put_text(building, required, NULL, f->name);
    }
    /* A partial catalogue lets fields pass that it does not know. */
    if (!building->fields->partial)
        put(building, to, "additionalProperties", cJSON_CreateFalse());
}

/* What each item of a list must be; the list itself is put_field's. */
static void put_items(struct building *building, cJSON *to, const struct field *field)
{
    cJSON *items = put(building, to, "items", cJSON_CreateObject());
    if (field->type == FIELD_LIST) {
        put_text(building, items, "type", "object");
        put_properties(building, items, field);
    } else if (field->type == FIELD_NUMBERS) {
        put_figure(building, items, "number", false, field);
        /* Nothing measured would meet any limit. */
        put_number(building, to, "minItems", 1);
        return;
    } else {
        put_choices(building, items, field, false);
    }
    put_range(building, to, field, "minItems", "maxItems");
}

/* Recursion is bounded by FIELDS_DEEPEST. */
static void put_field(struct building *building, cJSON *properties, const struct field *field)
{
    cJSON *to = put(building, properties, field->name, cJSON_CreateObject());
    put_said(building, to, field);
    switch (field->type) {
    case FIELD_GROUP:
        put_type(building, to, "object", field);
        put_properties(building, to, field);
        return;
    case FIELD_LIST:
    case FIELD_NUMBERS:
    case FIELD_CHOICES:
        put_type(building, to, "array", field);
        put_items(building, to, field);
        return;
    case FIELD_TEXT:
        put_type(building, to, "string", field);
        put_range(building, to, field, "minLength", "maxLength");
        return;
    case FIELD_REFERENCE:
        put_type(building, to, "string", field);
        return;
    case FIELD_NUMBER:
    case FIELD_INTEGER:
        put_figure(building, to, field->type == FIELD_NUMBER ? "number" : "integer",
                   !field->required, field);
        return;
    case FIELD_YES_NO:
        put_type(building, to, "boolean", field);
        return;
    case FIELD_CHOICE:
        put_choices(building, to, field, !field->required);
        return;
    case FIELD_SLOPE:
    case FIELD_DATE:
        put_type(building, to, "string", field);
        put_text(building, to, "pattern",
                 field->type == FIELD_SLOPE ? SLOPE_PATTERN : DATE_PATTERN);
        return;
    }
}

int schema_of_fields(const struct fields *fields, struct text *out)
{
    struct building building = {.fields = fields};
    cJSON *root = cJSON_CreateObject();
    put_text(&building, root, "$schema", "https://json-schema.org/draft/2020-12/schema");
    put_text(&building, root, "$id", "urn:eavemark:job:1");
    put_text(&building, root, "title", "An Eavemark job");
    put_text(&building, root, "description",
             "A residential reroof, as far as it is known. What is not known is left out or null.");
    put_text(&building, root, "type", "object");
    put_properties(&building, root, fields->root);
    char *printed = building.failed ? NULL : cJSON_Print(root);
    cJSON_Delete(root);
    if (printed == NULL)
        return -1;
    text_add(out, printed);
    text_add(out, "\n");
    cJSON_free(printed);
    return out->failed ? -1 : 0;
}
