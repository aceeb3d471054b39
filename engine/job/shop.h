/* shop.h - the shop sheet: habits of a shop that go with many jobs.
 *
 * A JSON object with "eavemark_shop": 1 and, where the job has them, the facts that the
 * catalogue marks as habits (fields.h). A list of the house (decks, valleys) is written as
 * one object, which goes for each of its items. A material (a group or list whose items
 * have a name that is a habit) may be a list of several by their names; the job picks one
 * by its name, and has the only one if it names none.
 *
 * A job's sheet lies beside it: "shop": "shop.json", a path below the job's own folder,
 * with no "..", or is handed over. A sheet names no further one.
 */
#ifndef EAVEMARK_JOB_SHOP_H
#define EAVEMARK_JOB_SHOP_H

#include "base/arena.h"
#include "base/problem.h"
#include "job/fields.h"

#include <cjson/cJSON.h>
#include <stdbool.h>
#include <stddef.h>

/* Where a sheet is to be had. */
struct shop_source {
    const char *name; /* what it is called; without text, the file to read; NULL: what the
                           job names */
    const char *text; /* JSON, not terminated; or NULL */
    size_t length;
    const char *folder;   /* where a sheet lies that the job names; NULL: beside job_file ... */
    const char *job_file; /* ... the file that the job was read from; NULL: none */
};

/* A sheet as it was read; all zero where there is none. */
struct shop {
    cJSON *tree;
    char *text;
    size_t length;
    char *file; /* what it is called */
};

/* Reads the sheet that is handed over, or else the one that the job names (/shop). Without
 * either nothing is done. Problems stand at the job's /shop or in the sheet. To be freed in
 * any case. Returns 0, or -1 when anything was added. */
int shop_read(struct shop *shop, const cJSON *job, const char *file,
              const struct shop_source *source, struct problems *problems);

/* Holds a sheet against the catalogue: unknown keys with the nearest, facts of a house, a
 * place or a measurement, values that do not fit, materials without a name or with one
 * twice. Returns 0, or -1 when anything was added. */
int shop_validate(const struct shop *shop, const struct fields *fields, struct problems *problems);

/* Fills a valid sheet's facts into the job where that is silent, marked as the shop's
 * (origin.h). First before the roof is laid out, then, for what the plan brings, after.
 * Adds a problem at the job for the name of a material that the sheet does not have. */
void shop_fill(const struct shop *shop, cJSON *job, const struct fields *fields, const char *file,
               struct problems *problems);
void shop_fill_laid(const struct shop *shop, cJSON *job, const struct fields *fields,
                    const char *file, struct problems *problems);

/* True of an item that was there before the job and stays, as a field of its list that is
 * marked for it says: no sheet speaks of it, nor is a habit lifted from it. */
bool shop_passes_over(const cJSON *item, const struct field *list);

/* What to ask for in place of a fact of a material of which the sheet has several and the
 * job names none: its name. NULL where there is nothing of the kind. In the arena. */
const char *shop_asks(const cJSON *job, const char *pointer, struct arena *arena);

/* A sheet of the habits that a job states: of lists of the house what all items have alike.
 * To be deleted; NULL when out of memory. */
cJSON *shop_lift(const cJSON *job, const struct fields *fields);

void shop_free(struct shop *shop);

#endif
