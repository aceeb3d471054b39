/* shop_filling.h - what the parts of shop_fill share; private.
 *
 * shop_fill.c goes through sheet and job side by side, shop_fetch.c brings the materials that
 * references name, shop_names.c knows materials by their names.
 */
#ifndef EAVEMARK_JOB_SHOP_FILLING_H
#define EAVEMARK_JOB_SHOP_FILLING_H

#include "base/text.h"
#include "job/shop.h"

struct shop_filling {
    const struct shop *shop;
    cJSON *job;
    const struct fields *fields;
    const char *file;
    struct problems *problems;
    struct text pointer; /* of the place in the job that is being filled */
    bool laid;           /* the roof is laid out: what the plan brings is filled now */
};

/* NULL for none, and of NULL. */
cJSON *shop_member(const cJSON *group, const char *key);
bool shop_is_named(const cJSON *item, const char *name);

/* Among several materials; NULL: none bears the name. */
const cJSON *shop_find_named(const cJSON *list, const char *name);

/* Is the name a slip for one of the sheet's: one material, or several? */
bool shop_has_near(const cJSON *sheet, const char *name);

/* At the pointer: a name that nothing has, with the nearest. own may be NULL. */
void shop_report_name(struct shop_filling *filling, const char *name, const cJSON *own,
                      const cJSON *sheet);

/* Writes a value into the job, marked as the shop's. Takes it over. */
void shop_put(struct shop_filling *filling, cJSON *group, const char *key, cJSON *value);

/* Steps into a member of the job; the length to cut the pointer back to. */
size_t shop_step_in(struct shop_filling *filling, const char *key);

/* The materials that references of the job name, from the sheet where the job has none of
 * that name; and the sheet's only one of a list that the job does not speak of. */
void shop_fetch(struct shop_filling *filling);

#endif
