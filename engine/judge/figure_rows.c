#include "judge/figure_rows.h"

#include "base/nearest.h"

#include <string.h>

static bool has_choice(const struct field *field, const char *choice, struct nearest *nearest)
{
    nearest_start(nearest, choice);
    for (size_t i = 0; i < field->choice_count; i++)
        if (strcmp(field->choices[i], choice) == 0)
            return true;
    for (size_t i = 0; i < field->choice_count; i++)
        nearest_offer(nearest, field->choices[i]);
    return false;
}

static void check_row(const struct rulebook *book, const struct figure *figure,
                      struct problems *problems)
{
    struct nearest nearest;
    const struct field *field = fields_find(&book->fields, figure->by);
    if (field == NULL || (field->type != FIELD_CHOICE && field->type != FIELD_CHOICES))
        problem_at_line(problems, PROBLEM_RULES, figure->file, figure->line, 0,
                        "figure \"%s\": its rows go by \"%s\", which is no field of choices",
                        figure->name, figure->by);
    else if (!has_choice(field, figure->row, &nearest))
        problem_at_line(problems, PROBLEM_RULES, figure->file, figure->line, 0,
                        "figure \"%s\": \"%s\" is no choice of %s%s%s%s", figure->name, figure->row,
                        figure->by, nearest.name == NULL ? "" : "; did you mean \"",
                        nearest.name == NULL ? "" : nearest.name,
                        nearest.name == NULL ? "" : "\"?");
}

void figure_rows_check(const struct rulebook *book, struct problems *problems)
{
    for (size_t i = 0; i < book->profile->figure_count; i++)
        if (book->profile->figures[i].by != NULL)
            check_row(book, &book->profile->figures[i], problems);
}
