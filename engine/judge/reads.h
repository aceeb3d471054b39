/* reads.h - which facts and figures a rule may read. A row names those it compares; what
 * its functions read is declared (declare_reads_lua.c). Nothing else may be read while the
 * rule judges: so what is declared is all there is, and nobody has to try it out.
 *
 * All of it lives in the rulebook's arena.
 */
#ifndef EAVEMARK_JUDGE_READS_H
#define EAVEMARK_JUDGE_READS_H

#include "judge/rulebook.h"

/* A fact that is declared, or a list or reference that only leads to one. */
struct reads_fact {
    const struct field *field;
    bool led;
};

/* A figure that is declared. */
struct reads_figure {
    const struct figure_slot *figure;
    bool optional;              /* a row of a table, or of what editions have in common */
    const struct lever *behind; /* where one of these is off it is optional, too */
};

/* One declaration of reads: a rule's own, or that of a helper which many rules call. */
struct reads_part {
    const char *file;
    int line;
    const char *name; /* under which common.lua shares the helper, or NULL */
    const struct reads_fact *facts;
    size_t fact_count;
    const char **of_places; /* facts that only some places have: paths */
    size_t of_place_count;
    const struct reads_figure *figures;
    size_t figure_count;
    const char **elsewhere; /* names of figures, "topic.table.*", that only other places have */
    size_t elsewhere_count;
    const struct reads_part **helpers; /* whose reads are this one's as well */
    size_t helper_count;
    const struct reads_part **all; /* itself, its helpers, theirs ...: each once, in this order */
    size_t all_count;
};

/* What the functions are of, for messages. */
struct reads_of {
    const char *kind, *name; /* "rule", "slope.least" */
    const char *file;
    int line;
};

/* All that a rule may read, a bit for each field and figure. */
struct reads {
    struct reads_of of;
    bool any_fact;                   /* it judges nothing: facts are not held to it */
    unsigned char *fields;           /* by field.number */
    size_t field_bits;               /* fields declared later are none of them */
    unsigned char *figures;          /* by the numbers of their slots */
    const struct reads_part **parts; /* every one once: its own first, then the helpers' */
    size_t part_count;
};

static inline bool reads_has_field(const struct reads *reads, const struct field *field)
{
    return field->number < reads->field_bits
           && (reads->fields[field->number / 8] >> (field->number % 8) & 1) != 0;
}

/* The figure is one of the profile of the book. */
static inline bool reads_has_figure(const struct rulebook *book, const struct reads *reads,
                                    const struct figure *figure)
{
    const size_t number = book->slots.numbers[figure - book->profile->figures];
    return number > 0 && (reads->figures[(number - 1) / 8] >> ((number - 1) % 8) & 1) != 0;
}

/* Sets part->all, once its helpers are known; false when out of memory. */
bool reads_part_close(struct arena *arena, struct reads_part *part);

/* Those of the parts and of all helpers in them, without anything of a row yet. Returns
 * NULL when out of memory. */
struct reads *reads_new(struct rulebook *book, const struct reads_part *const *parts,
                        size_t part_count);
void reads_add_field(struct reads *reads, const struct field *field);
void reads_add_figure(struct reads *reads, const struct figure_slot *figure);

/* Does the part itself, or one of its helpers, name the field, or a figure of the book's
 * profile? */
bool reads_part_has(const struct rulebook *book, const struct reads_part *part,
                    const struct field *field, const struct figure *figure);

/* Need no case come to it? */
bool reads_is_optional(const struct rulebook *book, const struct reads_figure *figure);

#endif
