/* shop_house.h - the house that a shop's habits are asked about (rules/shop_house.json). */
#ifndef EAVEMARK_ASK_SHOP_HOUSE_H
#define EAVEMARK_ASK_SHOP_HOUSE_H

#include "base/problem.h"

#include <cjson/cJSON.h>

/* A job that says all of its house and nothing of place, day or habits: what is open under a
 * law is then a habit, or the place's. To be deleted; NULL with problems. */
cJSON *shop_house_read(const char *home, struct problems *problems);

#endif
