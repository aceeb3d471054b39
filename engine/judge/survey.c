#include "judge/survey.h"

#include "base/text.h"
#include "job/validate.h"

#include <stdint.h>
#include <stdlib.h>
#include <string.h>

enum { NEVER_AS_BEFORE = -1, ITEMS_AT_FIRST = 8 };

/* So that the plan of the house is gone over whether or not a rule reads it. */
static void open_groups(struct survey *survey, struct spot *spot)
{
    for (const struct field *f = spot->field->first_child; f != NULL; f = f->next)
        if (f->type == FIELD_GROUP && spot_child(&survey->arena, spot, f) != NULL)
            open_groups(survey, spot_child(&survey->arena, spot, f));
}

static void open_footprint(struct survey *survey)
{
    const struct field *footprint = survey->footprint;
    struct spot *roof = footprint == NULL || footprint->parent == NULL
                            ? NULL
                            : spot_child(&survey->arena, survey->root, footprint->parent);
    struct spot *spot = roof == NULL ? NULL : spot_child(&survey->arena, roof, footprint);
    if (spot != NULL && spot_open(&survey->arena, spot) != NULL)
        open_groups(survey, spot);
}

/* Of a bit for each whole. */
static size_t words_of(const struct survey *survey)
{
    return (survey->whole_count + 63) / 64;
}

struct survey *survey_open(const struct fields *fields, size_t wholes)
{
    struct survey *survey = calloc(1, sizeof(*survey));
    if (survey == NULL)
        return NULL;
    survey->footprint = fields_find(fields, "roof.footprint");
    survey->whole_count = wholes;
    survey->settled = arena_array(&survey->arena, words_of(survey), sizeof(uint64_t));
    survey->root = spot_root(&survey->arena, NULL, fields);
    if (survey->root != NULL)
        open_footprint(survey);
    survey->closed = survey->arena.failed;
    return survey;
}

void survey_free(struct survey *survey)
{
    if (survey == NULL)
        return;
    arena_free(&survey->arena);
    text_free(&survey->room);
    free(survey);
}

void survey_close(struct survey *survey)
{
    if (survey != NULL)
        survey->closed = true;
}

size_t survey_bytes(const struct survey *survey)
{
    return survey == NULL ? 0 : survey->arena.bytes;
}

/* One place ------------------------------------------------------------------------------- */

/* What a lacking fact is asked for by, beside itself (lay_out.h, shop.h). */
static bool asks_by(const struct survey *survey, const struct field *field)
{
    return field == survey->footprint || strcmp(field->name, "name") == 0
           || strcmp(field->name, "kind") == 0;
}

static void note_changed(struct survey *survey, struct spot *spot)
{
    spot->seen.changed = survey->round;
    spot->word = 0;
    for (size_t i = 0; spot->seen.wholes != NULL && i < words_of(survey); i++)
        survey->settled[i] &= ~spot->seen.wholes[i];
    if (asks_by(survey, spot->field))
        survey->ask_changed = survey->round;
}

static void keep_seen(struct survey *survey, struct spot_seen *seen, int type,
                      const struct spot_value *value)
{
    if (value->length > seen->room) {
        const size_t room = value->length + value->length / 2 + 8;
        seen->bytes = arena_room(&survey->arena, room, 1);
        seen->room = seen->bytes == NULL ? 0 : room;
    }
    const bool kept = value->length <= seen->room;
    seen->type = kept ? type : NEVER_AS_BEFORE;
    seen->kind = value->kind;
    seen->length = kept ? value->length : 0;
    if (kept && value->length > 0)
        memcpy(seen->bytes, value->bytes, value->length);
}

static void clear_below(struct survey *survey, struct spot *spot);

/* The job does not have it, nor what is below it. */
static void set_absent(struct survey *survey, struct spot *spot)
{
    if (spot->json == NULL && spot->seen.type == 0)
        return;
    spot->json = NULL;
    spot->stands = 0;
    spot->referred = NULL;
    spot->followed = false;
    spot->seen.type = 0;
    note_changed(survey, spot);
    clear_below(survey, spot);
}

static void clear_below(struct survey *survey, struct spot *spot)
{
    for (size_t i = 0; i < spot->below_count; i++)
        set_absent(survey, &spot->below[i]);
    if (spot->field->type == FIELD_LIST && !spot->item)
        spot->below_count = 0;
}

/* Where its origin stands too (origin.h). */
static int type_of(const cJSON *node)
{
    return node->type & ~cJSON_StringIsConst;
}

/* True when it is as the round before had it. */
static bool look_at(struct survey *survey, struct spot *spot, const cJSON *node,
                    const struct spot_value *value, bool fits)
{
    struct spot_seen *seen = &spot->seen;
    const int type = type_of(node);
    const bool same = seen->type == type && seen->kind == value->kind
                      && seen->length == value->length
                      && (value->length == 0
                          || memcmp(seen->bytes, value->bytes, value->length) == 0);
    spot->json = fits ? node : NULL;
    spot->referred = NULL;
    spot->followed = false;
    if (same)
        return true;
    spot->stands = fits ? spot_standing(node) : 0;
    keep_seen(survey, seen, type, value);
    note_changed(survey, spot);
    return false;
}

/* Of a number, yes or no that fitted before: most values are such, and most are as before. */
static bool is_plainly_the_same(const struct spot *spot, const cJSON *node)
{
    const struct spot_seen *seen = &spot->seen;
    uint64_t before, now; /* the bits: no number counts as another */
    if (spot->json == NULL || seen->type != type_of(node))
        return false;
    switch (node->type & 0xFF) {
    case cJSON_False:
    case cJSON_True:
        return true;
    case cJSON_Number:
        memcpy(&before, seen->bytes, sizeof(before));
        memcpy(&now, &node->valuedouble, sizeof(now));
        return before == now;
    default:
        return false;
    }
}

/* A value fits now if the same fitted before. */
static bool look_at_value(struct survey *survey, struct spot *spot, const cJSON *node)
{
    if (is_plainly_the_same(spot, node)) {
        spot->json = node;
        spot->referred = NULL;
        spot->followed = false;
        return true;
    }
    const struct spot_value value = spot_value(&survey->room, node);
    const bool fitted = spot->json != NULL && spot->seen.type == type_of(node);
    if (look_at(survey, spot, node, &value, fitted))
        return true;
    if (validate_value_fits(node, spot->field)) {
        spot->json = node;
        spot->stands = spot_standing(node);
    } else {
        spot->json = NULL;
        spot->stands = 0;
    }
    return false;
}

/* Lists ----------------------------------------------------------------------------------- */

/* What rests on an item rests on its list as well, or is of the item (carry.c): so those
 * that were there before may be left. */
static bool make_room(struct survey *survey, struct spot *list, size_t count)
{
    if (count <= list->below_room)
        return true;
    const size_t room = count < ITEMS_AT_FIRST ? ITEMS_AT_FIRST : 2 * count;
    struct spot *below = arena_array(&survey->arena, room, sizeof(*below));
    if (below == NULL)
        return false;
    list->below = below;
    list->below_room = room;
    list->below_count = 0;
    return true;
}

static bool look_at_fields(struct survey *survey, struct spot *spot);

/* An item that came, went or has another name changes the list as well: so others are
 * told apart from it, and found by their names. */
static bool look_at_items(struct survey *survey, struct spot *list, size_t count)
{
    bool same = true;
    size_t number = 0;
    const cJSON *item = NULL;
    for (size_t i = count; i < list->below_count; i++)
        set_absent(survey, &list->below[i]);
    if (!make_room(survey, list, count))
        return false;
    list->below_count = count;
    cJSON_ArrayForEach(item, list->json) {
        struct spot *spot = &list->below[number];
        const char *name = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(item, "name"));
        const struct spot_value value = {name == NULL ? 'i' : 'n', name,
                                         name == NULL ? 0 : strlen(name)};
        spot->field = list->field;
        spot->item = true;
        spot->parent = list;
        spot->number = number++;
        if (!look_at(survey, spot, item, &value, true)) {
            note_changed(survey, list);
            same = false;
        }
        if (spot->below != NULL)
            same = look_at_fields(survey, spot) && same;
    }
    return same;
}

static bool look_at_list(struct survey *survey, struct spot *list, const cJSON *node)
{
    const size_t count = (size_t)cJSON_GetArraySize(node);
    const struct spot_value value = {'[', (const char *)&count, sizeof(count)};
    const bool fits = validate_value_fits(node, list->field);
    survey->large |= count > SURVEY_ITEMS_MOST;
    bool same = list->seen.type != 0 && (list->json != NULL) == fits;
    same = look_at(survey, list, node, &value, fits) && same;
    if (!same)
        note_changed(survey, list);
    if (list->below == NULL || survey->large)
        return same;
    if (fits)
        return look_at_items(survey, list, count) && same;
    clear_below(survey, list);
    return same;
}

/* Groups ---------------------------------------------------------------------------------- */

static bool look_at_group(struct survey *survey, struct spot *group, const cJSON *node)
{
    const struct spot_value value = {.kind = '{'};
    const bool fits = cJSON_IsObject(node);
    bool same = look_at(survey, group, node, &value, fits);
    if (group->below != NULL && fits)
        same = look_at_fields(survey, group) && same;
    else if (group->below != NULL)
        clear_below(survey, group);
    if (!same && group->field == survey->footprint)
        survey->ask_changed = survey->round;
    return same;
}

/* Jobs of a batch have their fields in one order: the one that came next before is tried
 * first. */
static struct spot *next_below(struct spot *spot, struct spot **next, const char *name)
{
    if (*next != NULL && text_same((*next)->field->name, name))
        return *next;
    const struct field *field = fields_child(spot->field, name);
    if (field != NULL)
        *next = &spot->below[field->index];
    return field == NULL ? NULL : *next;
}

static bool look_at_field(struct survey *survey, struct spot *spot, const cJSON *node)
{
    return spot->field->type == FIELD_GROUP  ? look_at_group(survey, spot, node)
           : spot->field->type == FIELD_LIST ? look_at_list(survey, spot, node)
                                             : look_at_value(survey, spot, node);
}

/* Of two of a name the first that fits is the one (spot.c). */
static bool look_at_fields(struct survey *survey, struct spot *spot)
{
    bool same = true;
    struct spot **next = &spot->seen.first;
    for (const cJSON *node = spot->json->child; node != NULL; node = node->next) {
        struct spot *below = node->string == NULL ? NULL : next_below(spot, next, node->string);
        if (below == NULL || (below->seen.round == survey->round && below->json != NULL))
            continue;
        same = look_at_field(survey, below, node) && same;
        below->seen.round = survey->round;
        next = &below->seen.after;
    }
    for (size_t i = 0; i < spot->below_count; i++) {
        struct spot *below = &spot->below[i];
        if (below->seen.round == survey->round || (below->json == NULL && below->seen.type == 0))
            continue;
        set_absent(survey, below);
        same = false;
    }
    return same;
}

static size_t next_rest(size_t rest)
{
    enum { FIRST = 16, MOST = 64 };
    return rest == 0 ? FIRST : 2 * rest < MOST ? 2 * rest : MOST;
}

/* Before a round. Of the first of those that are counted nothing could stand: it is left out. */
static void weigh(struct worth *worth)
{
    enum { COUNTED = 4 };
    const size_t over = worth->rounds++;
    if (over == 1)
        worth->stood = worth->fell = 0;
    if (over < (worth->resting ? worth->rest : COUNTED))
        return;
    const bool rested = worth->resting;
    worth->resting = !rested && 4 * worth->stood < worth->stood + worth->fell;
    if (!rested)
        worth->rest = worth->resting ? next_rest(worth->rest) : 0;
    worth->rounds = 1;
}

bool survey_go_over(struct survey *survey, const cJSON *job)
{
    if (survey == NULL || survey->closed)
        return false;
    survey->closed = survey->arena.failed || survey->arena.bytes > SURVEY_MOST;
    if (survey->closed)
        return false;
    if (survey->job != NULL && survey->job == job)
        return true;
    survey->job = NULL;
    survey->round++;
    weigh(&survey->worth);
    survey->large = false;
    survey->root->json = job;
    if (survey->root->below != NULL)
        look_at_fields(survey, survey->root);
    survey->closed = survey->arena.failed || survey->room.failed;
    if (survey->closed || survey->large)
        return false;
    survey->job = job;
    return true;
}

void survey_let_go(struct survey *survey)
{
    if (survey != NULL)
        survey->job = NULL;
}

/* Wholes ---------------------------------------------------------------------------------- */

bool survey_rest_on(struct survey *survey, struct spot *spot, size_t whole)
{
    struct spot_seen *seen = &spot->seen;
    if (seen->wholes == NULL)
        seen->wholes = arena_array(&survey->arena, words_of(survey), sizeof(uint64_t));
    if (seen->wholes == NULL)
        return false;
    seen->wholes[whole / 64] |= UINT64_C(1) << (whole % 64);
    return true;
}

void survey_settle(struct survey *survey, size_t whole, bool settled)
{
    const uint64_t bit = UINT64_C(1) << (whole % 64);
    survey->settled[whole / 64] &= ~bit;
    if (settled)
        survey->settled[whole / 64] |= bit;
}
