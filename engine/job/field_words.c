#include "job/field_words.h"

#include "base/number.h"

#include <stdio.h>
#include <string.h>

/* A list of plain values is written out; one of groups is only counted. */
static void add_list(struct text *out, const cJSON *list, const struct field *field)
{
    const int count = cJSON_GetArraySize(list);
    const cJSON *item = cJSON_GetArrayItem(list, 0);
    if (count == 0 || cJSON_IsObject(item)) {
        text_addf(out, "%d item%s", count, count == 1 ? "" : "s");
        return;
    }
    cJSON_ArrayForEach(item, list) {
        field_words_add(out, item, field);
        text_add(out, item->next == NULL ? "" : ", ");
    }
}

void field_words_add(struct text *out, const cJSON *value, const struct field *field)
{
    char number[96];
    if (value == NULL || cJSON_IsNull(value)) {
        text_add(out, "not said");
    } else if (cJSON_IsNumber(value)) {
        number_write_unit(value->valuedouble, field == NULL ? NULL : field->unit, number);
        text_add(out, number);
    } else if (cJSON_IsBool(value)) {
        text_add(out, cJSON_IsTrue(value) ? "yes" : "no");
    } else if (cJSON_IsString(value)) {
        text_add(out, value->valuestring);
        /* Recursion ends with the items: a list of plain values holds no list. */
    } else if (cJSON_IsArray(value)) {
        add_list(out, value, field);
    } else {
        /* A group: what is in it is said fact by fact elsewhere. */
        text_add(out, "given");
    }
}

void field_words_range(const struct field *field, const char *unit, char out[200])
{
    char least[96], most[96];
    number_write_unit(field->least, unit, least);
    number_write_unit(field->most, unit, most);
    out[0] = '\0';
    if (field->has_least && field->has_most && field->least != field->most) {
        /* The unit once, behind the greater: "0 to 6 layers". A slope's is part of the
         * number: "2:12 to 24:12". */
        if (unit == NULL || strcmp(unit, "rise_in_12") != 0)
            number_write(field->least, unit, least);
        snprintf(out, 200, "%s to %s", least, most);
    } else if (field->has_least && field->has_most) {
        snprintf(out, 200, "%s", most);
    } else if (field->has_least) {
        snprintf(out, 200, "at least %s", least);
    } else if (field->has_most) {
        snprintf(out, 200, "at most %s", most);
    }
}
