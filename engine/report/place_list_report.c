#include "report/place_list_report.h"

#include "base/date.h"
#include "base/utf8.h"
#include "report/wrap.h"

#include <cjson/cJSON.h>

/* In columns: room for the ids there are, and the lead of a line of details. */
enum { ID_WIDE = 34, LEAD = 10 };

/* A line each. */
static void add_line(const struct listed_place *place, struct text *out)
{
    text_addf(out, "%-*s ", ID_WIDE, place->id);
    struct text title = TEXT_EMPTY;
    text_addf(&title, "%s%s", place->title, place->invented ? " (invented)" : "");
    utf8_add_printable(out, text_string(&title));
    text_add(out, "\n");
    out->failed |= title.failed;
    text_free(&title);
}

/* One line of details under a place, wrapped under its words. */
static void add_part(struct text *out, const char *head, const struct text *words)
{
    text_addf(out, "  %-8s", head);
    wrap_add(out, LEAD, text_string(words));
    out->failed |= words->failed;
}

/* "Dunmarrow Hail Ordinance 2026, from 2026-03-01, on IRC 2021". */
static void add_law(const struct listed_place *place, struct text *out)
{
    struct text law = TEXT_EMPTY;
    char day[16];
    if (place->code != NULL)
        text_addf(&law, "%s%s", place->code, place->book == NULL ? "" : ", on ");
    if (place->book != NULL)
        text_add(&law, place->book);
    if (place->from != 0) {
        date_write(place->from, day);
        text_addf(&law, ", from %s", day);
    }
    if (place->to != 0) {
        date_write(place->to, day);
        text_addf(&law, ", until %s", day);
    }
    if (place->upper != NULL)
        text_addf(&law, "; follows %s", place->upper);
    add_part(out, "law", &law);
    text_free(&law);
}

/* When its pages were read: a place is as old as that, and says of which day it speaks. */
static void add_read(const struct listed_place *place, struct text *out)
{
    struct text read = TEXT_EMPTY;
    if (place->invented)
        text_add(&read, "invented: no law anywhere");
    else if (place->as_seen == NULL)
        text_add(&read, "on no day that is noted");
    else if (place->seen_of == NULL)
        text_add(&read, place->as_seen);
    else
        text_addf(&read, "%s, of %s", place->as_seen, place->seen_of);
    add_part(out, "read", &read);
    text_free(&read);
}

/* How much of a place's own law is here: a place of three figures must not look whole. */
static void add_carried(const struct listed_place *place, struct text *out)
{
    struct text carried = TEXT_EMPTY;
    if (place->figures == 0)
        text_add(&carried, "no figure of its own: all is that of what it follows");
    else
        text_addf(&carried, "%d figure%s of its own, of ", place->figures,
                  place->figures == 1 ? "" : "s");
    for (size_t i = 0; i < place->topic_count; i++)
        text_addf(&carried, "%s%s", i == 0 ? "" : ", ", place->topics[i]);
    add_part(out, "carried", &carried);
    text_free(&carried);
}

/* Only of places that were searched for: of all of them it would be pages. */
static void add_in_full(const struct listed_place *place, struct text *out)
{
    add_line(place, out);
    if (place->cover_count > 0) {
        struct text cities = TEXT_EMPTY;
        for (size_t i = 0; i < place->cover_count; i++)
            text_addf(&cities, "%s%s", i == 0 ? "" : ", ", place->covers[i]);
        add_part(out, "covers", &cities);
        text_free(&cities);
    }
    add_law(place, out);
    add_read(place, out);
    add_carried(place, out);
    for (size_t i = 0; i < place->lacking_count; i++) {
        struct text lacking = TEXT_EMPTY;
        text_add(&lacking, place->lacking[i]);
        add_part(out, i == 0 ? "lacking" : "", &lacking);
        text_free(&lacking);
    }
}

/* No words fit every place, and give the short list. */
size_t report_place_list_text(const struct place_list *list, const char *words, struct text *out)
{
    size_t found = 0;
    for (const struct listed_place *place = list->first; place != NULL; place = place->next) {
        if (!place_list_fits(place, words))
            continue;
        if (words[0] == '\0')
            add_line(place, out);
        else
            add_in_full(place, out);
        found++;
    }
    return found;
}

/* JSON ------------------------------------------------------------------------- */

/* NULL leaves the key out. */
static bool put_text(cJSON *to, const char *key, const char *text)
{
    return text == NULL || cJSON_AddStringToObject(to, key, text) != NULL;
}

static bool put_texts(cJSON *to, const char *key, const char *const *texts, size_t count)
{
    cJSON *list = cJSON_AddArrayToObject(to, key);
    bool put = list != NULL;
    for (size_t i = 0; put && i < count; i++)
        put = cJSON_AddItemToArray(list, cJSON_CreateString(texts[i]));
    return put;
}

static bool put_place(cJSON *places, const struct listed_place *place)
{
    cJSON *object = cJSON_CreateObject();
    if (object == NULL || !cJSON_AddItemToArray(places, object)) {
        cJSON_Delete(object);
        return false;
    }
    return put_text(object, "jurisdiction", place->id) && put_text(object, "title", place->title)
           && cJSON_AddBoolToObject(object, "invented", place->invented) != NULL
           && put_text(object, "code", place->code) && put_text(object, "book", place->book)
           && put_text(object, "follows", place->follows)
           && put_text(object, "as_seen", place->as_seen)
           && cJSON_AddNumberToObject(object, "figures", (double)place->figures) != NULL
           && put_texts(object, "carried", place->topics, place->topic_count)
           && put_texts(object, "lacking", place->lacking, place->lacking_count)
           && put_texts(object, "covers", place->covers, place->cover_count);
}

size_t report_place_list_json(const struct place_list *list, const char *words, bool pretty,
                              struct text *out)
{
    cJSON *root = cJSON_CreateObject();
    cJSON *places = root == NULL ? NULL : cJSON_AddArrayToObject(root, "places");
    size_t found = 0;
    bool kept = places != NULL;
    for (const struct listed_place *place = list->first; kept && place != NULL;
         place = place->next) {
        if (!place_list_fits(place, words))
            continue;
        kept = put_place(places, place);
        found++;
    }
    /* An incomplete list is not written at all. */
    char *printed = !kept ? NULL : pretty ? cJSON_Print(root) : cJSON_PrintUnformatted(root);
    cJSON_Delete(root);
    out->failed |= printed == NULL;
    if (printed != NULL)
        text_addf(out, "%s\n", printed);
    cJSON_free(printed);
    return found;
}
