/* ask_figure.c - a figure is asked for: what is recorded of it, whoever asks. */
#include "job/follows.h"
#include "job/origin.h"
#include "judge/judge.h"
#include "judge/judging.h"

#include <string.h>

/* Figures are recorded in the order in which they were first asked for: reports list them
 * so. An array outgrown stays in the arena, which goes as a whole. */
static void record_figure(struct judging *judging, const struct figure *figure)
{
    struct record *record = &judging->record;
    for (size_t i = 0; i < record->figure_count; i++)
        if (record->figures[i] == figure)
            return;
    if (record->figure_count == record->figure_capacity) {
        const size_t capacity = record->figure_capacity == 0 ? 8 : record->figure_capacity * 2;
        const struct figure **figures = arena_array(judging->arena, capacity, sizeof(*figures));
        if (figures == NULL)
            return;
        if (record->figure_count > 0)
            memcpy(figures, record->figures, record->figure_count * sizeof(*figures));
        record->figures = figures;
        record->figure_capacity = capacity;
    }
    record->figures[record->figure_count++] = figure;
}

/* What whoever tries out the rules wants to know. A figure asked for only to say what
 * would mend the roof decides nothing. */
static void tell_probe(const struct judging *judging, const struct figure *figure)
{
    const size_t index = (size_t)(figure - judging->book->profile->figures);
    const struct probe *probe = judging->probe;
    if (probe != NULL && probe->asked != NULL)
        probe->asked[index] = true;
    if (probe != NULL && probe->decides != NULL && !judging->mending)
        probe->decides[index] = true;
}

void ask_figure_derived(const struct judging *judging, const struct node *node)
{
    if (judging->probe == NULL || node->json == NULL || node->spot == NULL
        || node->spot->parent == NULL || origin_of(node->json) != ORIGIN_DERIVED)
        return;
    const int figure = follows_figure(&judging->book->fields, node->field,
                                      node->spot->parent->json);
    if (figure >= 0)
        tell_probe(judging, &judging->book->profile->figures[figure]);
}

/* Another source may have it otherwise, and be the one to go by now. */
static bool is_read_otherwise(const struct judging *judging, const struct figure *figure)
{
    return judging->reading != NULL && figure->disputed != NULL && figure->rival.kind != VALUE_NONE
           && strcmp(figure->disputed, judging->reading) == 0;
}

const struct value *ask_figure(struct judging *judging, const struct figure *figure)
{
    record_figure(judging, figure);
    tell_probe(judging, figure);
    if (is_read_otherwise(judging, figure))
        return &figure->rival;
    /* What the place demands further is for the comparison to look at: judgement_held_to. */
    if (figure->at == AT_AS_SENSE_SAYS || profile_is_held_further(figure))
        return &figure->value;
    /* Elsewhere the bound itself does not count: what is compared is the nearest number
     * that does. */
    struct value *moved = arena_alloc(judging->arena, sizeof(*moved));
    if (moved == NULL)
        return &figure->value;
    *moved = figure->value;
    moved->number = profile_threshold(figure);
    return moved;
}

const struct value *ask_figure_of(struct judging *judging, const struct figure_slot *slot)
{
    return ask_figure(judging, rulebook_figure(judging->book, slot));
}
