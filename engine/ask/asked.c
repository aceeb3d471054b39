#include "ask/asked.h"

#include "ask/question.h"

/* How many findings wait for it and for nothing that is known later only. */
static size_t decided_by(const struct question *question)
{
    size_t count = 0;
    for (size_t i = 0; i < question->waiting_count; i++)
        count += question->waiting[i]->ask == ASK_JOB;
    return count;
}

/* The same fact lacking in several places is asked once, where it is lacking first. */
static bool is_first(const struct questions *all, size_t index)
{
    for (size_t i = 0; i < index; i++)
        if (all->items[i].field == all->items[index].field && decided_by(&all->items[i]) > 0)
            return false;
    return decided_by(&all->items[index]) > 0;
}

/* The findings are the result's own. */
static void mark(struct result *result, const struct question *question)
{
    for (size_t i = 0; i < question->waiting_count; i++)
        result->findings[question->waiting[i] - result->findings].asked = true;
}

/* At most so many places will be named. */
static size_t places_of(const struct questions *all, const struct field *field)
{
    size_t count = 0;
    for (size_t i = 0; i < all->count; i++)
        count += all->items[i].field == field;
    return count;
}

/* Everything is copied into the result, which outlives the questions. */
static struct asked asked_of(struct result *result, const struct questions *all, size_t index)
{
    const struct field *field = all->items[index].field;
    const char **where = arena_array(&result->arena, places_of(all, field), sizeof(*where));
    struct asked asked = {.ask = arena_copy(&result->arena, field->ask),
                          .where = where,
                          .answer = arena_copy(&result->arena, field->answer)};
    /* Those before this one ask for other facts: it is the first of its own. */
    for (size_t i = index; where != NULL && i < all->count; i++) {
        const struct question *question = &all->items[i];
        if (question->field != field || decided_by(question) == 0)
            continue;
        asked.decides += decided_by(question);
        if (question->where != NULL)
            where[asked.where_count++] = arena_copy(&result->arena, question->where);
        mark(result, question);
    }
    return asked;
}

int asked_fill(struct result *result, const cJSON *job, const struct fields *fields)
{
    struct questions all;
    if (result->counts[OUTCOME_OPEN] == 0)
        return 0;
    int done = questions_of(result, job, fields, result->reached, &all);
    struct asked *asked = done == 0 ? arena_array(&result->arena, all.count + 1, sizeof(*asked))
                                    : NULL;
    for (size_t i = 0; asked != NULL && i < all.count; i++)
        if (is_first(&all, i))
            asked[result->asked_count++] = asked_of(result, &all, i);
    result->asked = asked;
    if (asked == NULL || result->arena.failed)
        done = -1;
    questions_free(&all);
    return done;
}
