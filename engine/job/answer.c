#include "job/answer.h"

#include "base/date.h"
#include "base/measure.h"
#include "base/nearest.h"
#include "base/utf8.h"
#include "job/slope.h"

#include <ctype.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>
#include <strings.h>

/* More items of a list than any house has; more bytes of an answer than anybody types. */
enum { ITEMS_MOST = 200, LONGEST = 8192 };

/* One answer being read: the field it is for, names it may give, and where a refusal is
 * put in words. */
struct reading {
    const struct field *field;
    const struct answer_names *names;
    struct text *why;
};

/* For return in one line: always NULL. */
static cJSON *refuse(const struct reading *reading, const char *words, const char *expected)
{
    text_addf(reading->why, "\"%s\" is not %s", words, expected);
    return NULL;
}

/* "3" -> 2 when there are that many; -1 otherwise. */
static int by_number(const char *words, size_t count)
{
    char *end = NULL;
    if (!isdigit((unsigned char)words[0]))
        return -1;
    const long number = strtol(words, &end, 10);
    return *end == '\0' && number >= 1 && (size_t)number <= count ? (int)number - 1 : -1;
}

/* As nearest.h, "tear off" and "Tear-Off" are the same. */
static int by_words(const char *words, const char *const *items, size_t count)
{
    for (size_t i = 0; i < count; i++)
        if (strcmp(words, items[i]) == 0)
            return (int)i;
    for (size_t i = 0; i < count; i++)
        if (nearest_distance(words, items[i]) == 0)
            return (int)i;
    return -1;
}

/* Words before numbers: a choice may itself be written in digits. */
static int which_choice(const struct reading *reading, const char *words)
{
    const struct field *field = reading->field;
    int index = by_words(words, field->choices, field->choice_count);
    if (index < 0)
        index = by_number(words, field->choice_count);
    if (index >= 0)
        return index;
    text_addf(reading->why,
              "\"%s\" is none of the choices; answer with one of them or a number "
              "from 1 to %zu",
              words, field->choice_count);
    struct nearest nearest;
    nearest_start(&nearest, words);
    for (size_t i = 0; i < field->choice_count; i++)
        nearest_offer(&nearest, field->choices[i]);
    if (nearest.name != NULL && fields_plausible(words, nearest.distance))
        text_addf(reading->why, " (did you mean %s?)", nearest.name);
    return -1;
}

/* As the catalogue spells it, whatever was typed. */
static cJSON *read_choice(const struct reading *reading, const char *words)
{
    const int index = which_choice(reading, words);
    return index < 0 ? NULL : cJSON_CreateString(reading->field->choices[index]);
}

/* The words of JSON too: who copies from a job writes true. */
static cJSON *read_yes_no(const struct reading *reading, const char *words)
{
    static const char *const YES[] = {"y", "yes", "true"}, *const NO[] = {"n", "no", "false"};
    for (size_t i = 0; i < sizeof(YES) / sizeof(YES[0]); i++) {
        if (strcasecmp(words, YES[i]) == 0)
            return cJSON_CreateTrue();
        if (strcasecmp(words, NO[i]) == 0)
            return cJSON_CreateFalse();
    }
    return refuse(reading, words, "y or n");
}

/* In the field's unit, whatever unit was typed. */
static cJSON *read_number(const struct reading *reading, const char *words)
{
    char why[MEASURE_WHY];
    double value = 0;
    if (measure_read(words, reading->field->unit, &value, why))
        return cJSON_CreateNumber(value);
    text_addf(reading->why, "\"%s\" has %s", words, why);
    return NULL;
}

/* In small letters, as the catalogue's pattern has slopes: people type "22.6 Deg". */
static cJSON *read_slope(const struct reading *reading, const char *words)
{
    char lower[64];
    double rise = 0;
    size_t length = strlen(words);
    for (size_t i = 0; i <= length && i < sizeof(lower); i++)
        lower[i] = (char)tolower((unsigned char)words[i]);
    if (length < sizeof(lower) && slope_parse(lower, &rise))
        return cJSON_CreateString(lower);
    char readings[SLOPE_WHY];
    if (slope_has_two_readings(words, readings)) {
        text_addf(reading->why, "\"%s\" %s", words, readings);
        return NULL;
    }
    return refuse(reading, words, "a slope such as 5:12, 5/12, 22.6 deg or 42 %");
}

/* One way of writing: 3/4/2026 is March or April, by who reads it. */
static cJSON *read_date(const struct reading *reading, const char *words)
{
    return date_parse(words) != 0 ? cJSON_CreateString(words)
                                  : refuse(reading, words, "a day such as 2026-03-31");
}

/* Copies what is between from and to, without spaces around it. */
static void cut(char *out, const char *from, const char *to)
{
    while (from < to && *from == ' ')
        from++;
    while (to > from && to[-1] == ' ')
        to--;
    memcpy(out, from, (size_t)(to - from));
    out[to - from] = '\0';
}

/* A text; or, where there are names to choose from, one of them. */
static cJSON *read_text(const struct reading *reading, const char *given)
{
    char words[LONGEST];
    const size_t length = strlen(given);
    /* Quotes keep "2" a name where a bare 2 picks the second of those listed. */
    const bool quoted = length > 2 && given[0] == '"' && given[length - 1] == '"';
    cut(words, given + quoted, given + length - quoted);
    const struct answer_names *names = reading->names;
    int index = names == NULL ? -1 : by_words(words, names->items, names->count);
    if (index < 0 && names != NULL && !quoted)
        index = by_number(words, names->count);
    return cJSON_CreateString(index >= 0 ? names->items[index] : words);
}

/* As many empty items as there are to be. */
static cJSON *read_count(const struct reading *reading, const char *words)
{
    const struct field *field = reading->field;
    /* A slip of the keys must not make a thousand planes to be asked about. */
    const double most = field->has_most && field->most < ITEMS_MOST ? field->most : ITEMS_MOST;
    char why[MEASURE_WHY];
    double count = 0;
    if (!measure_read(words, NULL, &count, why) || floor(count) != count || count < 0)
        return refuse(reading, words, "how many there are (0 for none)");
    if (count > most) {
        text_addf(reading->why, "%s are too many; %g at most", words, most);
        return NULL;
    }
    cJSON *list = cJSON_CreateArray();
    for (int i = 0; list != NULL && i < (int)count; i++) {
        if (!cJSON_AddItemToArray(list, cJSON_CreateObject())) {
            cJSON_Delete(list);
            return NULL;
        }
    }
    return list;
}

/* One value; of a list field how many items there are, of a list of values one of them. */
static cJSON *read_one(const struct reading *reading, const char *words)
{
    switch (reading->field->type) {
    case FIELD_LIST:
        return read_count(reading, words);
    case FIELD_TEXT:
    case FIELD_REFERENCE:
        return read_text(reading, words);
    case FIELD_NUMBER:
    case FIELD_INTEGER:
    case FIELD_NUMBERS:
        return read_number(reading, words);
    case FIELD_YES_NO:
        return read_yes_no(reading, words);
    case FIELD_CHOICE:
    case FIELD_CHOICES:
        return read_choice(reading, words);
    case FIELD_SLOPE:
        return read_slope(reading, words);
    case FIELD_DATE:
        return read_date(reading, words);
    case FIELD_GROUP:
        break;
    }
    return refuse(reading, words, "a fact: this is a group of them");
}

/* "4,125" in a list: four and a hundred and twenty-five, or four thousand and more. */
static bool is_list_or_thousands(const char *words)
{
    for (const char *comma = strchr(words, ','); comma != NULL; comma = strchr(comma + 1, ','))
        if (comma > words && isdigit((unsigned char)comma[-1])
            && strspn(comma + 1, "0123456789") == 3)
            return true;
    return false;
}

/* A list typed with commas or semicolons; one piece that does not read spoils all. */
static cJSON *read_several(const struct reading *reading, const char *words)
{
    char piece[LONGEST];
    if (reading->field->type == FIELD_NUMBERS && is_list_or_thousands(words))
        return refuse(reading, words,
                      "clear: a comma in a number, or between two? Write a space "
                      "after each comma of a list");
    cJSON *list = cJSON_CreateArray();
    const char *at = words;
    while (list != NULL && at != NULL) {
        const char *comma = strpbrk(at, ",;");
        cut(piece, at, comma == NULL ? at + strlen(at) : comma);
        cJSON *item = read_one(reading, piece);
        if (item == NULL || !cJSON_AddItemToArray(list, item)) {
            cJSON_Delete(item);
            cJSON_Delete(list);
            return NULL;
        }
        at = comma == NULL ? NULL : comma + 1;
    }
    return list;
}

/* UTF-8 without control characters. */
static bool is_readable(const char *words)
{
    size_t left = strlen(words), step = 0;
    for (; left > 0; words += step, left -= step) {
        step = utf8_length((const unsigned char *)words, left);
        if (step == 0 || (unsigned char)words[0] < 0x20 || words[0] == 0x7F)
            return false;
    }
    return true;
}

bool answer_read(cJSON **out, const struct field *field, const struct answer_names *names,
                 const char *words, struct text *why)
{
    /* A buffer of each answer's own: the words stay the caller's. */
    char trimmed[LONGEST];
    const struct reading reading = {field, names, why};
    *out = NULL;
    if (strlen(words) >= sizeof(trimmed)) {
        text_add(why, "that is too long");
        return false;
    }
    cut(trimmed, words, words + strlen(words));
    if (!is_readable(trimmed))
        text_add(why, "that is not readable text (UTF-8)");
    else if (field->type == FIELD_NUMBERS || field->type == FIELD_CHOICES)
        *out = read_several(&reading, trimmed);
    else
        *out = read_one(&reading, trimmed);
    return *out != NULL;
}
