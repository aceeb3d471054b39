#include "profile/place_list_made.h"

#include "profile/made.h"
#include "profile/place_made.h"

/* As in place_shape.c: a member that is left out here is lost on the way. */
static const struct part LISTED_PARTS[] = {
    PART(TEXT, struct listed_place, id),
    PART(TEXT, struct listed_place, title),
    PART(TEXT, struct listed_place, code),
    PART(TEXT, struct listed_place, follows),
    PART(FLAG, struct listed_place, invented),
    PART(DAY, struct listed_place, from),
    PART(DAY, struct listed_place, to),
    PART_TEXTS(struct listed_place, covers, cover_count),
    PART(TEXT, struct listed_place, book),
    PART(TEXT, struct listed_place, upper),
    PART(TEXT, struct listed_place, as_seen),
    PART(TEXT, struct listed_place, seen_of),
    PART_TEXTS(struct listed_place, topics, topic_count),
    PART(WORD, struct listed_place, figures),
    PART_TEXTS(struct listed_place, lacking, lacking_count),
};
static const struct shape LISTED_SHAPE = SHAPE_LISTED(struct listed_place, LISTED_PARTS);

static const struct part LIST_PARTS[] = {
    PART_OF(LIST, struct place_list, first, LISTED_SHAPE),
    PART_TEXTS(struct place_list, skipped.items, skipped.count),
};
const struct shape PLACE_LIST_SHAPE = SHAPE(struct place_list, LIST_PARTS);

bool place_list_made_take(const char *home, struct place_list *list)
{
    struct packed_file made;
    if (!made_of_home(home, MADE_PLACES, &made))
        return false;
    place_made_take_as(made.bytes, &list->arena, list, &PLACE_LIST_SHAPE);
    return true;
}
