#include "job/validate_check.h"

#include "base/date.h"
#include "base/measure.h"
#include "base/nearest.h"
#include "base/number.h"
#include "base/utf8.h"
#include "job/field_words.h"
#include "job/json.h"
#include "job/path.h"
#include "job/slope.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

/* Types ------------------------------------------------------------------- */

/* JSON has no infinities, but a job made in memory by a host program may. */
static bool is_finite_number(const cJSON *node)
{
    return json_type(node) == cJSON_Number && isfinite(node->valuedouble);
}

/* To the letter: a near miss is reported with the choice that is near. */
static bool is_among(const char *text, const struct field *field)
{
    /* The first letter tells most of them apart. */
    for (size_t i = 0; i < field->choice_count; i++)
        if (field->choices[i][0] == text[0] && strcmp(field->choices[i], text) == 0)
            return true;
    return false;
}

static bool is_choice(const cJSON *node, const struct field *field)
{
    return json_type(node) == cJSON_String && is_among(node->valuestring, field);
}

/* An empty list of numbers fits no field: nothing was measured. */
static bool items_fit(const cJSON *list, const struct field *field)
{
    if (json_type(list) != cJSON_Array)
        return false;
    const cJSON *item = NULL;
    cJSON_ArrayForEach(item, list) {
        const bool fits = field->type == FIELD_LIST      ? json_type(item) == cJSON_Object
                          : field->type == FIELD_NUMBERS ? is_finite_number(item)
                                                         : is_choice(item, field);
        if (!fits)
            return false;
    }
    return field->type != FIELD_NUMBERS || list->child != NULL;
}

/* The same as validate_value finds, without a word about it: for readers of a job, which
 * must take nothing that does not fit. */
bool validate_value_fits(const cJSON *node, const struct field *field)
{
    double rise = 0;
    switch (field->type) {
    case FIELD_GROUP:
        return json_type(node) == cJSON_Object;
    case FIELD_LIST:
    case FIELD_NUMBERS:
    case FIELD_CHOICES:
        return items_fit(node, field);
    case FIELD_TEXT:
    case FIELD_REFERENCE:
        return json_type(node) == cJSON_String;
    case FIELD_NUMBER:
        return is_finite_number(node);
    case FIELD_INTEGER:
        return is_finite_number(node) && floor(node->valuedouble) == node->valuedouble;
    case FIELD_YES_NO:
        return cJSON_IsBool(node);
    case FIELD_CHOICE:
        return is_choice(node, field);
    case FIELD_SLOPE:
        return json_type(node) == cJSON_String && slope_parse(node->valuestring, &rise);
    case FIELD_DATE:
        return json_type(node) == cJSON_String && date_parse(node->valuestring) != 0;
    }
    return false;
}

/* What was found and what was expected, in words -------------------------- */

/* A found number in full when printing it in its unit would round it. */
static void write_found(double value, const char *unit, char out[64])
{
    if (number_rounded(value, unit) == value)
        number_write(value, unit, out);
    else
        snprintf(out, 64, "%.15g", value);
}

/* The value itself where it is short; its kind where it is not. */
static const char *found_said(struct validation *check, const cJSON *node)
{
    if (cJSON_IsNumber(node)) {
        char number[64];
        write_found(node->valuedouble, NULL, number);
        const char *said = arena_format(&check->arena, "the number %s", number);
        return said == NULL ? "" : said;
    }
    if (cJSON_IsString(node)) {
        const char *said = arena_format(&check->arena, "the text %s",
                                        validate_quoted(check, node->valuestring));
        return said == NULL ? "" : said;
    }
    return cJSON_IsArray(node)    ? "a list"
           : cJSON_IsObject(node) ? "an object"
           : cJSON_IsTrue(node)   ? "true"
           : cJSON_IsFalse(node)  ? "false"
                                  : "null";
}

/* All of them, however many: whoever misspelled one wants to see the list. */
static const char *choices_said(struct validation *check, const struct field *field)
{
    struct text list = TEXT_EMPTY;
    for (size_t i = 0; i < field->choice_count; i++)
        text_addf(&list, "%s%s", i == 0 ? "" : ", ", field->choices[i]);
    return text_keep(&list, &check->arena);
}

/* "a number, 0 to 6 layers". */
static const char *number_expected(struct validation *check, const struct field *field,
                                   const char *kind)
{
    char range[200];
    field_words_range(field, field->unit, range);
    const char *said = arena_format(&check->arena, "%s%s%s", kind, range[0] == '\0' ? "" : ", ",
                                    range);
    return said == NULL ? kind : said;
}

/* As an example rather than a rule where the way of writing is meant. */
static const char *expected_said(struct validation *check, const struct field *field)
{
    const char *said = NULL;
    switch (field->type) {
    case FIELD_GROUP:
        return "an object { ... }";
    case FIELD_LIST:
        return "a list of objects [ { ... } ]";
    case FIELD_TEXT:
        return "a text in double quotes";
    case FIELD_NUMBER:
        return number_expected(check, field, "a number");
    case FIELD_INTEGER:
        return number_expected(check, field, "a whole number");
    case FIELD_YES_NO:
        return "true or false";
    case FIELD_SLOPE:
        return "a slope such as \"5:12\", \"22.6 deg\" or \"42 %\"";
    case FIELD_DATE:
        return "a date such as \"2026-03-01\"";
    case FIELD_NUMBERS:
        return number_expected(check, field, "a list of numbers");
    case FIELD_REFERENCE:
        said = arena_format(&check->arena, "a name from /%s", field->refers);
        break;
    case FIELD_CHOICE:
        said = arena_format(&check->arena, "one of %s", choices_said(check, field));
        break;
    case FIELD_CHOICES:
        said = arena_format(&check->arena, "a list of any of %s", choices_said(check, field));
        break;
    }
    return said == NULL ? "" : said;
}

/* Values ------------------------------------------------------------------ */

/* Closed at both ends, and exact: ranges are typed, not computed. */
static bool in_range(double value, const struct field *field)
{
    return (!field->has_least || value >= field->least)
           && (!field->has_most || value <= field->most);
}

bool validate_value_plain(const cJSON *node, const struct field *field)
{
    switch (field->type) {
    case FIELD_NUMBER:
        return is_finite_number(node) && in_range(node->valuedouble, field);
    case FIELD_INTEGER:
        return json_type(node) == cJSON_Number && node->valueint == node->valuedouble
               && in_range(node->valuedouble, field);
    case FIELD_YES_NO:
        return json_type(node) == cJSON_True || json_type(node) == cJSON_False;
    case FIELD_CHOICE:
        return is_choice(node, field);
    case FIELD_GROUP:
    case FIELD_LIST:
    case FIELD_TEXT:
    case FIELD_SLOPE:
    case FIELD_DATE:
    case FIELD_NUMBERS:
    case FIELD_CHOICES:
    case FIELD_REFERENCE:
        break;
    }
    return false;
}

/* unit: of slopes, whose field has none, rise in 12. */
static void check_number(struct validation *check, double value, const struct field *field,
                         const char *unit)
{
    if (in_range(value, field))
        return;
    char found[64], range[200];
    write_found(value, unit, found);
    field_words_range(field, unit, range);
    validate_report(check, "%s%s is out of range; %s expected", found,
                    field->type == FIELD_SLOPE ? ":12" : "", range);
}

/* The range of a text or a list bounds its length. */
static void check_length(struct validation *check, size_t length, const struct field *field,
                         const char *what)
{
    if (in_range((double)length, field))
        return;
    char range[200];
    field_words_range(field, "count", range);
    validate_report(check, "has %zu %s%s; %s expected", length, what, length == 1 ? "" : "s",
                    range);
}

static void check_choice(struct validation *check, const char *text, const struct field *field)
{
    struct nearest nearest;
    if (is_among(text, field))
        return;
    nearest_start(&nearest, text);
    for (size_t i = 0; i < field->choice_count; i++)
        nearest_offer(&nearest, field->choices[i]);
    const bool near = nearest.name != NULL && fields_plausible(text, nearest.distance);
    validate_report(check, "%s is not one of %s%s", validate_quoted(check, text),
                    choices_said(check, field), validate_hint(check, near ? nearest.name : NULL));
}

/* The wrong JSON type: nothing more is said of the value. */
static void report_type(struct validation *check, const cJSON *node, const struct field *field)
{
    char why[MEASURE_WHY];
    double value = 0;
    const bool figure = field->type == FIELD_NUMBER || field->type == FIELD_INTEGER;
    if (figure && json_type(node) == cJSON_String
        && !measure_read(node->valuestring, field->unit, &value, why)) {
        validate_report(check, "%s has %s; %s expected", validate_quoted(check, node->valuestring),
                        why, expected_said(check, field));
        return;
    }
    validate_report(check, "found %s; %s expected", found_said(check, node),
                    expected_said(check, field));
}

/* Of a list of numbers or of choices. A text that reads as a number was turned into one
 * before (spoken.h): one that is still here has a reason why it does not. */
static void check_item(struct validation *check, const cJSON *item, const struct field *field)
{
    char why[MEASURE_WHY];
    double value = 0;
    if (field->type == FIELD_NUMBERS && is_finite_number(item))
        check_number(check, item->valuedouble, field, field->unit);
    else if (field->type == FIELD_CHOICES && json_type(item) == cJSON_String)
        check_choice(check, item->valuestring, field);
    else if (field->type == FIELD_NUMBERS && json_type(item) == cJSON_String
             && !measure_read(item->valuestring, field->unit, &value, why))
        validate_report(check, "%s has %s", validate_quoted(check, item->valuestring), why);
    else
        validate_report(check, "found %s; %s expected here", found_said(check, item),
                        field->type == FIELD_NUMBERS ? "a number" : "one of the choices");
}

/* A list that was begun and left empty would meet any limit set for its least item. */
static void check_plain_list(struct validation *check, const cJSON *list, const struct field *field)
{
    struct validate_step step = {.above = check->at};
    const cJSON *item = NULL;
    if (field->type == FIELD_NUMBERS && list->child == NULL)
        validate_report(check, "is an empty list; give what was measured, or leave the field out");
    if (field->type == FIELD_CHOICES)
        check_length(check, (size_t)cJSON_GetArraySize(list), field, "item");
    cJSON_ArrayForEach(item, list) {
        if (validate_full(check))
            break;
        check->at = &step;
        check_item(check, item, field);
        step.item++;
    }
    check->at = step.above;
}

/* A text of the right JSON type, which may still not read as a value. */
static void check_text(struct validation *check, const cJSON *node, const struct field *field)
{
    const char *text = node->valuestring;
    char readings[SLOPE_WHY];
    double rise = 0;
    /* Characters as people count them, not bytes. */
    if (field->type == FIELD_TEXT)
        check_length(check, utf8_columns(text), field, "character");
    else if (field->type == FIELD_CHOICE)
        check_choice(check, text, field);
    else if (field->type == FIELD_REFERENCE)
        validate_reference(check, text, field);
    else if (field->type == FIELD_SLOPE && slope_parse(text, &rise))
        check_number(check, rise, field, "rise_in_12");
    else if (field->type == FIELD_SLOPE && slope_has_two_readings(text, readings))
        validate_report(check, "%s %s", validate_quoted(check, text), readings);
    else if (field->type == FIELD_SLOPE || date_parse(text) == 0)
        validate_report(check, "%s is not %s", validate_quoted(check, text),
                        expected_said(check, field));
}

/* A whole number may be written 3.0. */
static void check_numeric(struct validation *check, const cJSON *node, const struct field *field)
{
    char found[64], range[200];
    const double value = node->valuedouble;
    if (field->type != FIELD_INTEGER || floor(value) == value) {
        check_number(check, value, field, field->unit);
        return;
    }
    snprintf(found, sizeof(found), "%.15g", value);
    field_words_range(field, field->unit, range);
    validate_report(check, "%s is not a whole number%s%s%s", found, range[0] == '\0' ? "" : "; ",
                    range, range[0] == '\0' ? "" : " expected");
}

/* First the JSON type, by which the rest is safe to read; then the value. */
bool validate_value(struct validation *check, const cJSON *node, const struct field *field)
{
    bool right = false;
    switch (field->type) {
    case FIELD_GROUP:
        right = json_type(node) == cJSON_Object;
        break;
    case FIELD_LIST:
    case FIELD_NUMBERS:
    case FIELD_CHOICES:
        right = json_type(node) == cJSON_Array;
        break;
    case FIELD_NUMBER:
    case FIELD_INTEGER:
        right = is_finite_number(node);
        break;
    case FIELD_YES_NO:
        right = cJSON_IsBool(node);
        break;
    case FIELD_TEXT:
    case FIELD_CHOICE:
    case FIELD_SLOPE:
    case FIELD_DATE:
    case FIELD_REFERENCE:
        right = json_type(node) == cJSON_String;
        break;
    }
    if (!right)
        report_type(check, node, field);
    else if (field->type == FIELD_LIST)
        check_length(check, (size_t)cJSON_GetArraySize(node), field, "item");
    else if (json_type(node) == cJSON_Array)
        check_plain_list(check, node, field);
    else if (json_type(node) == cJSON_Number)
        check_numeric(check, node, field);
    else if (json_type(node) == cJSON_String)
        check_text(check, node, field);
    return right;
}
