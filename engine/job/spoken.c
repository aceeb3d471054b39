#include "job/spoken.h"

#include "base/measure.h"
#include "base/utf8.h"
#include "job/json.h"
#include "job/tree.h"

/* In place: the node keeps its name and its neighbours. */
static void settle_figure(cJSON *node, const struct field *field)
{
    char why[MEASURE_WHY];
    double value = 0;
    if (json_type(node) != cJSON_String
        || !measure_read(node->valuestring, field->unit, &value, why))
        return;
    if (!tree_is_of_arena(node))
        cJSON_free(node->valuestring);
    node->valuestring = NULL;
    node->type = (node->type & (cJSON_StringIsConst | cJSON_IsReference)) | cJSON_Number;
    cJSON_SetNumberHelper(node, value);
}

static void settle_under(cJSON *object, const struct field *parent);

/* A value of another type than its field's stays as it is: validation says what is wrong.
 * Recursion is bounded by FIELDS_DEEPEST. */
static void settle_field(cJSON *node, const struct field *field)
{
    cJSON *item = NULL;
    if (json_type(node) == cJSON_Object) {
        settle_under(node, field); /* of a shop sheet, what goes for each of a list too */
    } else if (field->type == FIELD_NUMBER || field->type == FIELD_INTEGER) {
        settle_figure(node, field);
    } else if (json_type(node) == cJSON_Array
               && (field->type == FIELD_LIST || field->type == FIELD_GROUP)) {
        cJSON_ArrayForEach(item, node)
            settle_under(item, field);
    } else if (json_type(node) == cJSON_Array && field->type == FIELD_NUMBERS) {
        cJSON_ArrayForEach(item, node)
            settle_figure(item, field);
    }
}

static void settle_under(cJSON *object, const struct field *parent)
{
    if (json_type(object) != cJSON_Object)
        return;
    const struct field *field = NULL;
    for (cJSON *member = object->child; member != NULL; member = member->next) {
        field = fields_child_after(parent, field, member->string);
        tree_note(member, parent, field);
        if (field != NULL)
            settle_field(member, field);
    }
}

void spoken_settle(cJSON *job, const struct fields *fields)
{
    if (!tree_all_noted(job, fields))
        settle_under(job, fields->root);
}

/* The table ------------------------------------------------------------------- */

/* What people are shown; the unit tests read each row and hold it against its third column. */
/* clang-format off */
const struct spoken_example SPOKEN_READ[] = {
    {"15/32",          "in",         "0.46875"},
    {"1 1/4",          "in",         "1.25"},
    {"1-1/2 in",       "in",         "1.5"},
    {"1\xC2\xBD",      "in",         "1.5"},
    {"2 ft",           "in",         "24"},
    {"59'6\"",         "ft",         "59.5"},
    {"59 ft 6 in",     "ft",         "59.5"},
    {"18 in",          "ft",         "1.5"},
    {"60 mil",         "in",         "0.06"},
    {"30 squares",     "sqft",       "3000"},
    {"1,250 sq ft",    "sqft",       "1250"},
    {"2 sq ft",        "sqin",       "288"},
    {"26 ga",          "gage",       "26"},
    {"10 %",           "percent",    "10"},
    {"$14,500",        "usd",        "14500"},
    {"5:12",           "rise_in_12", "5"},
    {"5/12",           "rise_in_12", "5"},
    {"5 in 12",        "rise_in_12", "5"},
    {"4 1/2:12",       "rise_in_12", "4.5"},
    {"1/4:12",         "rise_in_12", "0.25"},
    {"42 %",           "rise_in_12", "5.04"},
    {"22.6 deg",       "rise_in_12", "4.9951"},
    {NULL, NULL, NULL},
};

const struct spoken_example SPOKEN_REFUSED[] = {
    {"1,5",            "in",         "1.5, or 1 and 5"},
    {"11/4",           "in",         "1 1/4, or 2.75"},
    {"5/12",           "ft",         "a slope, or 5 in"},
    {"12-6",           "ft",         "12 ft 6 in, or 12 and 6"},
    {"30 sq",          "sqft",       "30 squares, or 30 sq ft"},
    {"12 ga",          "in",         "of wire, or of sheet"},
    {"5",              "rise_in_12", "5:12, 5 degrees, or 5 percent"},
    {"1/4",            "rise_in_12", "1/4:12, or 3:12"},
    {NULL, NULL, NULL},
};
/* clang-format on */

enum { WORDS_WIDE = 16, UNIT_WIDE = 12 };

static void add_padded(struct text *out, const char *words, size_t wide)
{
    const size_t columns = utf8_columns(words);
    text_addf(out, "%s%*s", words, columns < wide ? (int)(wide - columns) : 1, "");
}

static void add_rows(struct text *out, const struct spoken_example *rows)
{
    for (; rows->words != NULL; rows++) {
        text_add(out, "  ");
        add_padded(out, rows->words, WORDS_WIDE);
        add_padded(out, rows->unit, UNIT_WIDE);
        text_addf(out, "%s\n", rows->says);
    }
}

void spoken_add_table(struct text *out)
{
    text_add(out, "Figures as they are spoken, in a job (in quotes) and in answers alike\n"
                  "  written         asked in    read as\n");
    add_rows(out, SPOKEN_READ);
    text_add(out, "Refused, since it could be read in two ways\n"
                  "  written         asked in    could be\n");
    add_rows(out, SPOKEN_REFUSED);
}
