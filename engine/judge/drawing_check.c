#include "judge/drawing.h"

#include "judge/row.h"

#include <string.h>

static void report(const struct drawing *drawing, const char *dimension,
                   const struct drawing_part *part, const char *wrong, const char *other,
                   struct problems *problems)
{
    problem_at_line(problems, PROBLEM_RULES, drawing->file, drawing->line, 0,
                    "the drawing \"%s\" takes \"%s\" from \"%s\", which %s%s", drawing->name,
                    dimension, part->rule, wrong, other);
}

/* Is the demand in another unit? Said where the rule tells it beforehand: in a row that
 * meets one figure. */
static const char *other_unit(const struct dimension *dimension, const struct rule *rule)
{
    const struct figure_slot *figure = rule->row == NULL ? NULL : rule->row->meets[0];
    if (figure == NULL || figure->kind != VALUE_NUMBER || figure->unit == NULL
        || dimension->unit == NULL || strcmp(figure->unit, dimension->unit) == 0)
        return NULL;
    return figure->unit;
}

/* What the rule judges must be what is drawn, what a reference of it names, or the
 * house: else its demand would never be found. */
static void find_rule(struct rulebook *book, const struct drawing *drawing,
                      const struct dimension *dimension, struct drawing_part *part,
                      struct problems *problems)
{
    const struct rule *rule = rulebook_rule(book, part->rule);
    if (rule == NULL) {
        report(drawing, dimension->name, part, "is no rule", "", problems);
        return;
    }
    const struct field *drawn = drawing->itself.per_depth == 0 ? NULL : drawing->itself.per[0];
    const struct field *judged = rule->per_depth == 0 ? NULL : rule->per[rule->per_depth - 1];
    part->of_house = judged == NULL;
    if (judged != NULL && judged != drawn) {
        part->through = drawn == NULL ? NULL : drawing_reference(drawn, judged->path);
        if (part->through == NULL)
            report(drawing, dimension->name, part, "judges what is not drawn: ", judged->path,
                   problems);
    }
    const char *unit = other_unit(dimension, rule);
    if (unit != NULL)
        report(drawing, dimension->name, part, "demands it in ", unit, problems);
}

void drawing_check(struct rulebook *book, struct problems *problems)
{
    for (const struct drawing *d = book->drawings; d != NULL; d = d->next) {
        const struct dimension *known = d->itself.form->dimensions;
        for (size_t i = 0; i < DIMENSIONS_MOST && known[i].name != NULL; i++)
            if (d->itself.parts[i].rule != NULL)
                find_rule(book, d, &known[i], &d->itself.parts[i], problems);
    }
}
