/* shop_asks.c - which of a sheet's materials a job is asked for, see shop.h. */
#include "job/shop_filling.h"

#include "job/origin.h"
#include "job/path.h"

/* A name that the sheet left empty marks that the job names none of several: the mark
 * nearest the fact is asked for. */
const char *shop_asks(const cJSON *job, const char *pointer, struct arena *arena)
{
    const char *rest = pointer, *asks = NULL;
    char step[PATH_LONGEST_STEP];
    for (const cJSON *at = job; at != NULL && path_step(&rest, step);) {
        at = path_child(at, step);
        const cJSON *name = cJSON_IsObject(at) ? shop_member(at, "name") : NULL;
        if (cJSON_IsNull(name) && origin_of(name) == ORIGIN_SHOP)
            asks = rest;
    }
    return asks == NULL ? NULL : arena_format(arena, "%.*s/name", (int)(asks - pointer), pointer);
}
