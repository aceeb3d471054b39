#include "judge/drawn.h"

#include "base/number.h"
#include "judge/row.h"
#include "judge/walk.h"

#include <math.h>
#include <string.h>

/* The items of one list while they are read. */
struct gathering {
    struct judging *judging;
    const struct drawing *drawing;
    const struct drawing_of *from;
    bool itself;                /* of the drawing: they may be left out */
    const struct gathering *of; /* what they belong to; or NULL */
    struct drawn_item *items;
    const cJSON **json; /* of each */
    size_t count, capacity;
};

/* One dimension ---------------------------------------------------------------------- */

/* A figure of a code that is not adopted here is not this place's: it is left out. */
static void take_figure(const struct judging *judging, const char *name,
                        struct drawn_dimension *out)
{
    const struct figure *figure = profile_figure(judging->book->profile, name);
    if (figure == NULL || figure->borrowed != NULL)
        return;
    if (figure->value.kind == VALUE_NUMBER)
        out->number = figure->value.number;
    else if (figure->value.kind == VALUE_YES_NO)
        out->answer = figure->value.yes ? DRAWN_YES : DRAWN_NO;
}

/* A condition is asked as a rule's is; one that could not be asked is not said. */
static enum drawn_answer answer_of(struct call *call, const struct condition *condition)
{
    enum sandbox_stop stop;
    const char *why;
    const enum row_end end = row_applies(call, condition, &stop, &why);
    return end == ROW_JUDGED ? DRAWN_YES : end == ROW_NOT_APPLICABLE ? DRAWN_NO : DRAWN_NOT_SAID;
}

/* What the rule of this dimension judges; "" where the item does not say, which no
 * finding is about. */
static const char *judged_item(struct judging *judging, const struct drawing_part *part,
                               const struct node *node)
{
    struct node item;
    if (part->of_house)
        return NULL;
    if (part->through == NULL)
        return node->pointer;
    const struct node reference = node_child(judging, node, part->through);
    return reference.json != NULL && node_referred(judging, &reference, &item) ? item.pointer : "";
}

static void read_dimension(struct judging *judging, const struct drawing_part *part,
                           struct call *call, struct drawn_dimension *out, const char **name)
{
    struct node node;
    *out = (struct drawn_dimension){.number = part->number, .rule = part->rule};
    judging->record = (struct record){0}; /* nobody's finding rests on what is drawn */
    if (part->rule != NULL)
        out->item = judged_item(judging, part,
                                call->depth == 0 ? NULL : &call->items[call->depth - 1]);
    if (part->figure != NULL)
        take_figure(judging, part->figure, out);
    if (part->condition != NULL)
        out->answer = answer_of(call, part->condition);
    if (part->fact == NULL || !fact_read(judging, part->fact, call->items, &node))
        return;
    const struct value value = fact_value(judging, &node);
    if (value.kind == VALUE_NUMBER)
        out->number = value.number;
    else if (value.kind == VALUE_TEXT)
        *name = value.text;
}

/* One item ------------------------------------------------------------------------------ */

static void leave_out(struct gathering *gathering, struct call *call, struct drawn_item *item)
{
    struct judging *judging = gathering->judging;
    judging->record = (struct record){0};
    const enum drawn_answer answer = answer_of(call, gathering->drawing->when);
    item->left_out = answer != DRAWN_YES;
    if (answer == DRAWN_NO)
        item->why = call->reason;
    else if (answer == DRAWN_NOT_SAID && judging->record.missing_pointer != NULL)
        item->why = arena_format(judging->arena, "the job does not say %s",
                                 judging->record.missing_pointer);
}

/* The place of what the item belongs to. */
static size_t owner_of(struct gathering *gathering, const struct walk *walk)
{
    const struct gathering *of = gathering->of;
    const struct drawing_of *from = gathering->from;
    const cJSON *owner = NULL;
    if (of == NULL)
        return DRAWN_OF_NONE;
    if (of->from->per_depth == 0)
        return 0;
    const struct node *node = &walk->items[walk->depth - 1];
    if (from->belongs == NULL) {
        owner = node[-1].json; /* it lies in it */
    } else {
        struct node named;
        const struct node reference = node_child(gathering->judging, node, from->belongs);
        if (reference.json != NULL && node_referred(gathering->judging, &reference, &named))
            owner = named.json;
    }
    /* By identity: items of the job's own tree have no other name that all of them carry. */
    for (size_t i = 0; owner != NULL && i < of->count; i++)
        if (of->json[i] == owner)
            return i;
    return DRAWN_OF_NONE;
}

static bool make_room(struct gathering *gathering)
{
    struct arena *arena = gathering->judging->arena;
    if (gathering->count < gathering->capacity)
        return true;
    const size_t capacity = gathering->capacity == 0 ? 8 : gathering->capacity * 2;
    struct drawn_item *items = arena_array(arena, capacity, sizeof(*items));
    const cJSON **json = arena_array(arena, capacity, sizeof(*json));
    if (items == NULL || json == NULL)
        return false;
    if (gathering->count > 0) {
        memcpy(items, gathering->items, gathering->count * sizeof(*items));
        memcpy(json, gathering->json, gathering->count * sizeof(*json));
    }
    gathering->items = items;
    gathering->json = json;
    gathering->capacity = capacity;
    return true;
}

/* Of an absent list nothing is drawn. */
static void visit_item(struct walk *walk, const struct node *missing)
{
    struct gathering *gathering = walk->data;
    struct judging *judging = gathering->judging;
    struct call call = {.judging = judging, .items = walk->items, .depth = walk->depth};
    struct drawn_dimension *dimensions = missing != NULL
                                             ? NULL
                                             : arena_array(judging->arena, DIMENSIONS_MOST,
                                                           sizeof(*dimensions));
    if (dimensions == NULL || !make_room(gathering))
        return;
    gathering->json[gathering->count] = walk->depth == 0 ? judging->job
                                                         : walk->items[walk->depth - 1].json;
    struct drawn_item *item = &gathering->items[gathering->count++];
    *item = (struct drawn_item){.of = owner_of(gathering, walk), .dimensions = dimensions};
    const struct dimension *known = gathering->from->form->dimensions;
    for (size_t i = 0; i < DIMENSIONS_MOST && known[i].name != NULL; i++)
        read_dimension(judging, &gathering->from->parts[i], &call, &dimensions[i], &item->name);
    if (gathering->itself && gathering->drawing->when != NULL)
        leave_out(gathering, &call, item);
}

static struct drawn_items gather(struct gathering *gathering)
{
    if (gathering->from->form == NULL)
        return (struct drawn_items){NULL, 0};
    struct walk walk = {.judging = gathering->judging,
                        .per = gathering->from->per,
                        .depth = gathering->from->per_depth,
                        .data = gathering,
                        .visit = visit_item};
    walk_per(&walk);
    return (struct drawn_items){gathering->items, gathering->count};
}

/* All of them ------------------------------------------------------------------------------ */

static struct drawn *drawn_new(struct judging *judging, const struct drawing *drawing)
{
    struct drawn *drawn = arena_alloc(judging->arena, sizeof(*drawn));
    struct gathering levels[1 + DRAWING_LISTS_MOST];
    if (drawn == NULL)
        return NULL;
    drawn->drawing = drawing;
    for (size_t i = 0; i < 1 + DRAWING_LISTS_MOST; i++)
        levels[i] = (struct gathering){.judging = judging,
                                       .drawing = drawing,
                                       .itself = i == 0,
                                       .from = i == 0 ? &drawing->itself : &drawing->lists[i - 1],
                                       .of = i == 0 ? NULL : &levels[i - 1]};
    drawn->itself = gather(&levels[0]);
    for (size_t i = 0; i < DRAWING_LISTS_MOST; i++)
        drawn->lists[i] = gather(&levels[1 + i]);
    return drawn;
}

const struct drawn *drawn_of_job(struct judging *judging)
{
    const struct drawn *first = NULL, **at = &first;
    /* Nothing that is read for drawings belongs to a finding. */
    const struct record record = judging->record;
    for (const struct drawing *d = judging->book->drawings; d != NULL; d = d->next) {
        struct drawn *drawn = drawn_new(judging, d);
        if (drawn == NULL)
            return NULL;
        *at = drawn;
        at = &drawn->next;
    }
    judging->record = record;
    return first;
}
