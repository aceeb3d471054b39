/* interview_more.c - of a shop: another material of a kind, when all of the first was told. */
#include "ask/interview_parts.h"

#include "job/json.h"

#include <string.h>
#include <strings.h>

const char interview_more[] = "/another";

enum { NAME_MOST = 60 };

static cJSON *member(const cJSON *object, const char *key)
{
    return cJSON_GetObjectItemCaseSensitive(object, key);
}

/* Materials that the job has something of: a covering, the fasteners, a list of sheets. */
static bool is_offered(const struct interview *interview, const struct field *field)
{
    const cJSON *node = member(interview->job, field->name);
    return (field->type == FIELD_GROUP || field->type == FIELD_LIST) && fields_is_material(field)
           && node != NULL && node->child != NULL;
}

bool interview_ask_more(struct interview *interview, const struct fields *fields)
{
    struct arena *arena = &interview->questions.arena;
    struct text parts = TEXT_EMPTY;
    if (!interview->habits || interview_done(interview, interview_more))
        return false;
    for (const struct field *f = fields->root->first_child; f != NULL; f = f->next)
        if (is_offered(interview, f))
            text_addf(&parts, "%s%s", parts.length == 0 ? "" : ", ", f->name);
    interview->head = (struct question){.field = fields_find(fields, "shop"),
                                        .pointer = interview_more};
    interview->head.ask = arena_format(
        arena,
        "Is there another of these for other houses: %s? Say which, what the one told above is "
        "called, and the other, as in \"underlayments: felt, peel and stick\" (n: no)",
        text_string(&parts));
    const bool asked = parts.length > 0 && !parts.failed && interview->head.field != NULL;
    arena->failed |= parts.failed;
    text_free(&parts);
    if (asked)
        interview->now = &interview->head;
    return asked;
}

/* Words between two places, without blanks around them; false where nothing is left, or too
 * much. */
static bool cut_out(const char *from, const char *to, char out[NAME_MOST + 1])
{
    const size_t length = text_trim(&from, (size_t)(to - from));
    if (length == 0 || length > NAME_MOST)
        return false;
    memcpy(out, from, length);
    out[length] = '\0';
    return true;
}

/* "underlayments: felt, peel and stick" */
struct asked_for {
    char part[NAME_MOST + 1], first[NAME_MOST + 1], other[NAME_MOST + 1];
};

static bool read_words(const char *words, struct asked_for *asked)
{
    const char *colon = strchr(words, ':');
    const char *comma = colon == NULL ? NULL : strchr(colon, ',');
    return comma != NULL && cut_out(words, colon, asked->part)
           && cut_out(colon + 1, comma, asked->first)
           && cut_out(comma + 1, comma + strlen(comma), asked->other);
}

static bool has_name(const cJSON *list, const char *name, const cJSON *but)
{
    const cJSON *item = NULL;
    cJSON_ArrayForEach(item, list) {
        const char *its = cJSON_GetStringValue(member(item, "name"));
        if (item != but && its != NULL && strcmp(its, name) == 0)
            return true;
    }
    return false;
}

static bool set_text(cJSON *object, const char *key, const char *text)
{
    return json_set(object, key, cJSON_CreateString(text));
}

/* A material of which nothing is known but what it is called. */
static cJSON *named(const char *name)
{
    cJSON *item = cJSON_CreateObject();
    if (item != NULL && cJSON_AddStringToObject(item, "name", name) == NULL) {
        cJSON_Delete(item);
        return NULL;
    }
    return item;
}

/* All planes of the house that is asked about get the new one: so rules look at it. */
static bool lay_on_planes(const struct interview *interview, const struct fields *fields,
                          const char *list, const char *name)
{
    const struct field *planes = fields_find(fields, "roof.footprint.planes");
    cJSON *said = member(member(member(interview->job, "roof"), "footprint"), "planes");
    bool set = true;
    for (const struct field *f = planes == NULL ? NULL : planes->first_child; f != NULL;
         f = f->next)
        if (f->type == FIELD_REFERENCE && strcmp(f->refers, list) == 0 && said != NULL)
            set = set_text(said, f->name, name) && set;
    return set;
}

/* The last of the list was told; the new one comes after it. */
static bool add_to_list(struct interview *interview, const struct fields *fields, cJSON *list,
                        const struct asked_for *asked)
{
    cJSON *last = cJSON_GetArrayItem(list, cJSON_GetArraySize(list) - 1);
    cJSON *item = named(asked->other);
    if (item == NULL || !cJSON_AddItemToArray(list, item)) {
        cJSON_Delete(item);
        return false;
    }
    return set_text(last, "name", asked->first)
           && lay_on_planes(interview, fields, asked->part, asked->other);
}

/* A job has one of it: what was told is put aside for the sheet, and all is asked again. */
static bool put_aside(struct interview *interview, cJSON *group, const struct asked_for *asked)
{
    cJSON *told = member(interview->others, asked->part);
    cJSON *copy = cJSON_Duplicate(group, true), *fresh = named(asked->other);
    if (told == NULL && (told = cJSON_CreateArray()) != NULL
        && !json_set(interview->others, asked->part, told))
        told = NULL;
    if (copy == NULL || fresh == NULL || told == NULL || !set_text(copy, "name", asked->first)
        || !cJSON_AddItemToArray(told, copy)) {
        cJSON_Delete(copy);
        cJSON_Delete(fresh);
        return false;
    }
    memcpy(interview->mark_place, asked->part, sizeof(asked->part));
    return json_set(interview->job, asked->part, fresh);
}

/* A job picks by name: on one sheet no two of a kind may share it. */
static bool is_free(const struct interview *interview, const struct asked_for *asked,
                    const cJSON *node, struct text *why)
{
    const cJSON *others = member(interview->others, asked->part);
    const cJSON *list = cJSON_IsArray(node) ? node : NULL;
    const cJSON *last = list == NULL ? NULL
                                     : cJSON_GetArrayItem(list, cJSON_GetArraySize(list) - 1);
    const char *taken = strcmp(asked->first, asked->other) == 0 ? asked->other
                        : has_name(others, asked->first, NULL)  ? asked->first
                        : has_name(others, asked->other, NULL)  ? asked->other
                        : has_name(list, asked->first, last)    ? asked->first
                        : has_name(list, asked->other, last)    ? asked->other
                                                                : NULL;
    if (taken != NULL)
        text_addf(why, "two would be called \"%s\"", taken);
    return taken == NULL;
}

bool interview_answer_more(struct interview *interview, const struct fields *fields,
                           const char *words, struct text *why)
{
    struct asked_for asked;
    if (strcasecmp(words, "n") == 0 || strcasecmp(words, "no") == 0)
        return interview_unchanged(interview);
    if (!read_words(words, &asked)) {
        text_add(why, "say which, a colon, and two names with a comma between; or n");
        return false;
    }
    const struct field *field = fields_child(fields->root, asked.part);
    if (field == NULL || !is_offered(interview, field)) {
        text_addf(why, "\"%s\" is none of those", asked.part);
        return false;
    }
    cJSON *node = member(interview->job, asked.part);
    if (!is_free(interview, &asked, node, why))
        return false;
    if (interview->others == NULL && (interview->others = cJSON_CreateObject()) == NULL)
        return false;
    interview->mark_place[0] = '\0';
    if (!(cJSON_IsArray(node) ? add_to_list(interview, fields, node, &asked)
                              : put_aside(interview, node, &asked)))
        return false;
    interview->mark = interview->steps; /* there is no way back over it */
    interview->now = NULL;
    return true;
}

/* Takes the item over. */
static bool add_to(cJSON *list, cJSON *item)
{
    if (item != NULL && cJSON_AddItemToArray(list, item))
        return true;
    cJSON_Delete(item);
    return false;
}

/* Those put aside, then the one that the sheet has: a list of several. */
bool interview_add_others(const struct interview *interview, const struct fields *fields,
                          cJSON *sheet)
{
    const cJSON *part = NULL;
    bool added = true;
    cJSON_ArrayForEach(part, interview->others) {
        cJSON *several = cJSON_CreateArray(), *job = cJSON_CreateObject();
        const cJSON *told = NULL;
        cJSON_ArrayForEach(told, part) {
            cJSON *lifted = !json_set(job, part->string, cJSON_Duplicate(told, true))
                                ? NULL
                                : shop_lift(job, fields);
            cJSON *one = cJSON_DetachItemFromObjectCaseSensitive(lifted, part->string);
            added = add_to(several, one) && added;
            cJSON_Delete(lifted);
        }
        cJSON *last = cJSON_DetachItemFromObjectCaseSensitive(sheet, part->string);
        if (last != NULL)
            added = add_to(several, last) && added;
        cJSON_Delete(job);
        added = json_set(sheet, part->string, several) && added;
    }
    return added;
}
