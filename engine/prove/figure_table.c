#include "prove/figure_table.h"

#include <stdlib.h>
#include <string.h>

/* The profiles whose figures are listed. */
struct columns {
    const struct profile **items;
    size_t count;
};

/* The place asked for; NULL with problems when it cannot be had. */
static const struct profile *asked_place(struct laws *laws,
                                         const struct figure_table_request *request,
                                         struct figure_table *out)
{
    long date = request->date;
    if (date == 0)
        date = places_newest(&laws->cache, laws->home, request->jurisdiction, &out->problems);
    const struct law *law = laws_find(laws, request->jurisdiction, date == 0 ? 20000101 : date,
                                      "--jurisdiction", &out->problems);
    return law == NULL ? NULL : law->profile;
}

/* A home without a model has no table: more likely the wrong home. */
static void add_editions(struct figure_table *out, struct columns *columns)
{
    for (size_t i = 0; i < out->places.count; i++)
        if (places_is_edition(&out->places, out->places.items[i].profile))
            columns->items[columns->count++] = out->places.items[i].profile;
    if (columns->count == 0)
        problem_at_line(&out->problems, PROBLEM_RULES, "jurisdictions", 0, 0,
                        "no model code can be loaded: is this the right --home?");
}

/* False when there is nothing to list, with problems unless it is memory that lacks. */
static bool find_columns(struct laws *laws, const struct figure_table_request *request,
                         struct figure_table *out, struct columns *columns)
{
    if (places_stand(&laws->cache, laws->home, request->date, &out->places) != 0) {
        problem_out_of_memory(&out->problems);
        return false;
    }
    columns->items = arena_array(&out->arena, out->places.count + 1, sizeof(*columns->items));
    if (columns->items == NULL)
        return false;
    if (request->jurisdiction == NULL) {
        add_editions(out, columns);
        return columns->count > 0;
    }
    const struct profile *place = asked_place(laws, request, out);
    if (place == NULL)
        return false;
    columns->items[columns->count++] = place;
    return true;
}

/* A topic is what names begin with, dot or not: "deck.nail" finds all nails of the deck. */
static bool is_wanted(const struct figure_table_request *request, const struct figure *figure)
{
    if (request->status != STATUS_NONE && figure->cite.status != request->status)
        return false;
    if (request->topic == NULL)
        return true;
    return strncmp(figure->name, request->topic, strlen(request->topic)) == 0;
}

/* Editions of one figure stand together. */
static int by_figure(const void *a, const void *b)
{
    const struct figure_row *one = a, *other = b;
    const int names = strcmp(one->figure->name, other->figure->name);
    return names != 0 ? names : strcmp(one->profile->id, other->profile->id);
}

void figure_table_make(struct laws *laws, const struct figure_table_request *request,
                       struct figure_table *out)
{
    struct columns columns = {0};
    size_t capacity = 0;
    bool any = false;
    if (!find_columns(laws, request, out, &columns)) {
        if (out->arena.failed)
            problem_out_of_memory(&out->problems);
        return;
    }
    for (size_t c = 0; c < columns.count; c++)
        capacity += columns.items[c]->figure_count;
    out->rows = arena_array(&out->arena, capacity + 1, sizeof(*out->rows));
    for (size_t c = 0; out->rows != NULL && c < columns.count; c++) {
        const struct profile *profile = columns.items[c];
        for (size_t i = 0; i < profile->figure_count; i++) {
            const struct figure *figure = &profile->figures[i];
            /* An empty table is right when no figure has the status asked for, wrong when
             * no figure has such a name. */
            const struct figure_table_request topic_alone = {.topic = request->topic};
            any = any || is_wanted(&topic_alone, figure);
            if (is_wanted(request, figure))
                out->rows[out->count++] = (struct figure_row){figure, profile};
        }
    }
    if (out->arena.failed)
        problem_out_of_memory(&out->problems);
    else if (!any && request->topic != NULL)
        problem_at(&out->problems, PROBLEM_JOB, "figures", NULL,
                   "no figure's name begins with \"%s\"; `eavemark figures` prints them all",
                   request->topic);
    if (out->rows != NULL && out->count > 0)
        qsort(out->rows, out->count, sizeof(*out->rows), by_figure);
}

void figure_table_free(struct figure_table *table)
{
    places_free(&table->places);
    problems_free(&table->problems);
    arena_free(&table->arena);
}
