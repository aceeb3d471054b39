#include "judge/row_limit.h"

#include "judge/repeat.h"

#include <string.h>

/* The figure of the fact's word, or NULL. */
static const struct figure *figure_by(struct judging *judging, const struct row *row,
                                      const char *word)
{
    const char *id = arena_format(judging->arena, "%s%s", row->by_prefix, word);
    return id == NULL ? NULL : profile_figure(judging->book->profile, id);
}

/* The one that the row's function names. */
static const struct figure *figure_named(struct call *call, const struct row *row,
                                         enum sandbox_stop *stop, const char **why)
{
    struct call named;
    if (!repeat_run(call, row->which, call_for_name, &named, stop))
        return NULL;
    for (size_t i = 0; i < row->among_count; i++)
        if (row->among[i] != NULL && strcmp(row->among[i]->name, named.text) == 0)
            return rulebook_figure(call->judging->book, row->among[i]);
    *why = arena_format(call->judging->arena, "which gives \"%s\", which meets does not list",
                        named.text);
    return NULL;
}

static const struct figure *figure_chosen(struct call *call, const struct row *row,
                                          const char **why)
{
    struct judging *judging = call->judging;
    struct node word;
    if (!fact_read(judging, row->by, call->items, &word))
        return NULL;
    node_reads_value(judging, &word);
    const struct figure *figure = figure_by(judging, row, word.json->valuestring);
    if (figure == NULL)
        *why = arena_format(judging->arena, "no figure is named \"%s%s\"", row->by_prefix,
                            word.json->valuestring);
    return figure;
}

/* Without a figure: reckoned, or a fact. */
static bool find_value(struct call *call, const struct row *row, struct row_limit *limit,
                       enum sandbox_stop *stop)
{
    *limit = (struct row_limit){.sense = row->limit_sense};
    if (row->limit_fact != NULL) {
        struct node node;
        if (!fact_read(call->judging, row->limit_fact, call->items, &node))
            return false;
        limit->value = fact_value(call->judging, &node);
    } else {
        struct call reckoning;
        if (!repeat_run(call, row->limit, call_for_value, &reckoning, stop))
            return false;
        limit->value = reckoning.value;
    }
    limit->value.unit = row->limit_unit;
    return true;
}

bool row_limit_is_own(const struct row *row)
{
    return row->limit_fact != NULL || row->limit != RULE_NO_FUNCTION;
}

/* What is measured is known last, and asked for last. */
bool row_limit_is_first(const struct row *row)
{
    return row->limit != RULE_NO_FUNCTION
           || (row->limit_fact != NULL && row->fact != NULL
               && row->fact->field->type == FIELD_NUMBERS);
}

size_t row_limit_find(struct call *call, const struct row *row, struct row_limit limits[2],
                      enum sandbox_stop *stop, const char **why)
{
    const struct rulebook *book = call->judging->book;
    const struct figure *figures[2] = {rulebook_figure(book, row->meets[0]),
                                       rulebook_figure(book, row->meets[1])};
    size_t count = row->meets_count;
    if (row_limit_is_own(row))
        return find_value(call, row, limits, stop);
    if (row->which != RULE_NO_FUNCTION || row->by_prefix != NULL) {
        figures[0] = row->by_prefix != NULL ? figure_chosen(call, row, why)
                                            : figure_named(call, row, stop, why);
        if (figures[0] == NULL)
            return 0;
        count = 1;
    }
    for (size_t i = 0; i < count; i++) {
        /* The place turned on a demand whose figure it does not have: an error of the
         * place. */
        if (figures[i] == NULL) {
            *why = ROW_LACKS_FIGURE;
            return 0;
        }
        limits[i] = (struct row_limit){.figure = figures[i],
                                       .sense = row->up_to ? SENSE_AT_MOST : figures[i]->sense};
    }
    return count;
}

const struct value *row_limit_value(struct judging *judging, const struct row_limit *limit)
{
    return limit->figure == NULL ? &limit->value : ask_figure(judging, limit->figure);
}

/* Makers --------------------------------------------------------------------------------- */

static bool was_asked(const struct record *record, const struct figure *figure)
{
    for (size_t i = 0; i < record->figure_count; i++)
        if (record->figures[i] == figure)
            return true;
    return false;
}

/* Does one that was asked for have the very value, listed or not? */
static bool has_value(const struct record *record, const struct value *value)
{
    for (size_t i = 0; i < record->figure_count; i++)
        if (sense_binds(record->figures[i]->sense)
            && profile_same_value(&record->figures[i]->value, value))
            return true;
    return false;
}

/* Those it is reckoned from: the one that has the very value, or all that were asked for. */
static void made_from_listed(struct judging *judging, const struct row *row,
                             struct judgement *judgement)
{
    const struct figure **makers = arena_array(judging->arena, row->among_count + 1,
                                               sizeof(*makers));
    size_t count = 0;
    bool exact = false;
    for (size_t i = 0; makers != NULL && i < row->among_count; i++) {
        const struct figure *figure = rulebook_figure(judging->book, row->among[i]);
        if (figure == NULL || !was_asked(&judging->record, figure))
            continue;
        const bool same = profile_same_value(&figure->value, &judgement->required);
        if (same && !exact)
            count = 0;
        exact = exact || same;
        if (same == exact)
            makers[count++] = figure;
    }
    /* One that the row forgot to list still makes what it is. */
    if (count > 0 && (exact || !has_value(&judging->record, &judgement->required)))
        judgement_made_by(judging, judgement, makers, count);
}

void row_limit_made(struct judging *judging, const struct row *row, const struct row_limit *limit,
                    struct judgement *judgement)
{
    if (judgement == NULL)
        return;
    if (limit->figure != NULL && !row->up_to)
        judgement_made_by(judging, judgement, &limit->figure, 1);
    else if (row->among_count > 0)
        made_from_listed(judging, row, judgement);
    /* What a job is free of, and what a fact of the job bounds. */
    if (judgement->maker_count == 0)
        maker_find(judging, judgement);
}
