/* figure_table.h - the figures of every edition of the model code, and of a place, side by
 * side: to be held against the books, row by row. */
#ifndef EAVEMARK_PROVE_FIGURE_TABLE_H
#define EAVEMARK_PROVE_FIGURE_TABLE_H

#include "base/strings.h"
#include "law/law.h"
#include "profile/places.h"

struct figure_table_request {
    const char *topic;        /* what names begin with; NULL: all */
    enum status status;       /* only figures known so well; STATUS_NONE: all */
    const char *jurisdiction; /* this place alone; NULL: the model editions */
    long date;                /* or 0: the newest edition */
};

/* One figure of one edition. */
struct figure_row {
    const struct figure *figure;
    const struct profile *profile;
};

struct figure_table {
    struct arena arena;
    struct problems problems;
    struct places places;
    struct figure_row *rows; /* by figure, then by edition */
    size_t count;
};

/* Fills out; its problems say why there are no rows. Valid as long as laws is. */
void figure_table_make(struct laws *laws, const struct figure_table_request *request,
                       struct figure_table *out);

void figure_table_free(struct figure_table *table);

#endif
