#include "judge/reads.h"

static void set_bit(unsigned char *bits, size_t at)
{
    bits[at / 8] = (unsigned char)(bits[at / 8] | 1U << (at % 8));
}

void reads_add_field(struct reads *reads, const struct field *field)
{
    /* A field declared after the rule, by a place's own file, is none that the rule could have
     * meant. */
    if (field->number < reads->field_bits)
        set_bit(reads->fields, field->number);
}

void reads_add_figure(struct reads *reads, const struct figure_slot *figure)
{
    set_bit(reads->figures, figure->number);
}

/* Helpers declared before: a helper cannot name itself, so this ends. */
static size_t count_parts(const struct reads_part *const *parts, size_t count)
{
    size_t all = count;
    for (size_t i = 0; i < count; i++)
        all += count_parts(parts[i]->helpers, parts[i]->helper_count);
    return all;
}

/* A helper that is reached by two ways is told of once. */
static bool has_part(const struct reads *reads, const struct reads_part *part)
{
    for (size_t i = 0; i < reads->part_count; i++)
        if (reads->parts[i] == part)
            return true;
    return false;
}

static void add_part(const struct rulebook *book, struct reads *reads,
                     const struct reads_part *part)
{
    if (has_part(reads, part))
        return;
    reads->parts[reads->part_count++] = part;
    for (size_t i = 0; i < part->fact_count; i++)
        reads_add_field(reads, part->facts[i].field);
    /* Looked up late: common.lua is run before a place declares what it adds. */
    for (size_t i = 0; i < part->of_place_count; i++) {
        const struct field *field = fields_find(&book->fields, part->of_places[i]);
        if (field != NULL)
            reads_add_field(reads, field);
    }
    for (size_t i = 0; i < part->figure_count; i++)
        reads_add_figure(reads, part->figures[i].figure);
    for (size_t i = 0; i < part->helper_count; i++)
        add_part(book, reads, part->helpers[i]);
}

struct reads *reads_new(struct rulebook *book, const struct reads_part *const *parts,
                        size_t part_count)
{
    struct arena *arena = &book->arena;
    struct reads *reads = arena_alloc(arena, sizeof(*reads));
    /* Numbers of fields begin at 0 with the root. */
    const size_t field_bits = book->fields.count + 1;
    const size_t figure_bits = book->profile == NULL ? 0 : book->profile->figure_count;
    unsigned char *fields = arena_array(arena, field_bits / 8 + 1, 1);
    unsigned char *figures = arena_array(arena, figure_bits / 8 + 1, 1);
    const struct reads_part **kept = arena_array(arena, count_parts(parts, part_count) + 1,
                                                 sizeof(*kept));
    if (reads == NULL || fields == NULL || figures == NULL || kept == NULL)
        return NULL;
    *reads = (struct reads){
        .fields = fields, .field_bits = field_bits, .figures = figures, .parts = kept};
    for (size_t i = 0; i < part_count; i++)
        add_part(book, reads, parts[i]);
    return reads;
}

bool reads_part_has(const struct rulebook *book, const struct reads_part *part,
                    const struct field *field, const struct figure *figure)
{
    for (size_t i = 0; i < part->fact_count; i++)
        if (part->facts[i].field == field)
            return true;
    for (size_t i = 0; i < part->figure_count; i++)
        if (rulebook_figure(book, part->figures[i].figure) == figure)
            return true;
    for (size_t i = 0; i < part->helper_count; i++)
        if (reads_part_has(book, part->helpers[i], field, figure))
            return true;
    return false;
}

bool reads_is_optional(const struct rulebook *book, const struct reads_figure *figure)
{
    return figure->optional || figure_slot_off(book, figure->behind);
}
