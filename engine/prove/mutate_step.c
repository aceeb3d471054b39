#include "prove/mutate_step.h"

#include "base/date.h"
#include "base/number.h"

#include <string.h>

size_t mutate_step_count(const struct figure *figure)
{
    switch (figure->value.kind) {
    case VALUE_NUMBER:
        return 4;
    case VALUE_YES_NO:
        return 1;
    case VALUE_SET:
        return figure->value.set_count + 1;
    case VALUE_NONE:
    case VALUE_TEXT:
        break;
    }
    return 0;
}

/* The number next to this one: a last printed digit away, or a day. */
static double neighbor(const struct value *value, bool up)
{
    if (value->unit != NULL && strcmp(value->unit, "date") == 0) {
        const long day = (long)value->number;
        return (double)(up ? date_after(day) : date_before(day));
    }
    const double least = 2 * number_tolerance(value->unit);
    return value->number + (up ? least : -least);
}

/* Both ways: a case at the limit notices only one of them. */
static bool number_step(const struct figure *figure, size_t number, struct mutate_step *step)
{
    static const char *const SAYS[] = {"a step down", "a step up", "its other bound down",
                                       "its other bound up"};
    const bool other = number >= 2;
    if (other && figure->also.kind == VALUE_NONE)
        return false;
    *step = (struct mutate_step){other ? figure->also : figure->value, other, SAYS[number]};
    step->value.number = neighbor(&step->value, number % 2 == 1);
    return true;
}

static bool member_out(const struct figure *figure, size_t gone, struct arena *arena,
                       struct mutate_step *step)
{
    const struct value *set = &figure->value;
    const char **room = arena_array(arena, set->set_count, sizeof(*room));
    *step = (struct mutate_step){.value = *set};
    step->says = arena_format(arena, "%s taken out", set->set[gone]);
    if (room == NULL || step->says == NULL)
        return false;
    step->value.set = room;
    step->value.set_count = 0;
    for (size_t i = 0; i < set->set_count; i++)
        if (i != gone)
            room[step->value.set_count++] = set->set[i];
    return true;
}

bool mutate_step_make(const struct figure *figure, size_t number, struct arena *arena,
                      struct mutate_step *step)
{
    switch (figure->value.kind) {
    case VALUE_NUMBER:
        return number_step(figure, number, step);
    case VALUE_YES_NO:
        *step = (struct mutate_step){figure->value, false, "turned over"};
        step->value.yes = !step->value.yes;
        return true;
    case VALUE_SET:
        return number < figure->value.set_count && member_out(figure, number, arena, step);
    case VALUE_NONE:
    case VALUE_TEXT:
        break;
    }
    return false;
}

/* Fields are walked as the tree they are. */
static void find_others(const struct field *field, const struct value *set, struct arena *arena,
                        struct strings *others)
{
    for (const struct field *f = field->first_child; f != NULL; f = f->next) {
        bool beside = false;
        for (size_t i = 0; i < f->choice_count; i++)
            beside = beside || profile_set_has(set, f->choices[i]);
        for (size_t i = 0; beside && i < f->choice_count; i++)
            if (!profile_set_has(set, f->choices[i]))
                strings_add_once(others, arena, f->choices[i]);
        find_others(f, set, arena, others);
    }
}

void mutate_step_others(const struct fields *fields, const struct value *set, struct arena *arena,
                        struct strings *others)
{
    find_others(fields->root, set, arena, others);
}

bool mutate_step_add(const struct value *set, const char *word, struct arena *arena,
                     struct mutate_step *step)
{
    const char **room = arena_array(arena, set->set_count + 1, sizeof(*room));
    if (room == NULL)
        return false;
    if (set->set_count > 0)
        memcpy(room, set->set, set->set_count * sizeof(*room));
    room[set->set_count] = word;
    *step = (struct mutate_step){*set, false, "a member added"};
    step->value.set = room;
    step->value.set_count++;
    return true;
}
