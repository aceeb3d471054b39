/* item.h - the items of a list from what a person says of them. */
#ifndef EAVEMARK_ASK_ITEM_H
#define EAVEMARK_ASK_ITEM_H

#include "base/text.h"
#include "job/fields.h"

#include <cjson/cJSON.h>

/* The choice that tells the items of a list apart ("kind"), or NULL. */
const struct field *item_kind(const struct field *list);

/* Reads how many items there are, or which: their kinds, or, where they have none, their
 * names. An item has a name if one can be made of its kind, or of the list's own where no
 * choice among several needs better. False, with why; empty when out of memory. */
bool item_read(cJSON **out, const struct fields *fields, const struct field *list,
               const char *words, struct text *why);

#endif
