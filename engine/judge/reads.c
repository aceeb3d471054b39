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

/* A helper that is reached by two ways is told of once. */
static void add_once(const struct reads_part **parts, size_t *count, const struct reads_part *part)
{
    size_t i = 0;
    while (i < *count && parts[i] != part)
        i++;
    if (i == *count)
        parts[(*count)++] = part;
}

/* As many as all of them can be together. */
static size_t most_parts(const struct reads_part *const *parts, size_t count)
{
    size_t all = 0;
    for (size_t i = 0; i < count; i++)
        all += parts[i]->all_count;
    return all;
}

/* Helpers declared before: a helper cannot name itself, so their lists are there. */
bool reads_part_close(struct arena *arena, struct reads_part *part)
{
    const size_t most = 1 + most_parts(part->helpers, part->helper_count);
    part->all = arena_room(arena, most, sizeof(*part->all));
    if (part->all == NULL)
        return false;
    part->all[0] = part;
    part->all_count = 1;
    for (size_t i = 0; i < part->helper_count; i++)
        for (size_t j = 0; j < part->helpers[i]->all_count; j++)
            add_once(part->all, &part->all_count, part->helpers[i]->all[j]);
    return true;
}

/* What the part itself names. */
static void add_part(const struct rulebook *book, struct reads *reads,
                     const struct reads_part *part)
{
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
    const struct reads_part **kept = arena_room(arena, most_parts(parts, part_count),
                                                sizeof(*kept));
    if (reads == NULL || fields == NULL || figures == NULL || kept == NULL)
        return NULL;
    *reads = (struct reads){
        .fields = fields, .field_bits = field_bits, .figures = figures, .parts = kept};
    for (size_t i = 0; i < part_count; i++)
        for (size_t j = 0; j < parts[i]->all_count; j++)
            add_once(kept, &reads->part_count, parts[i]->all[j]);
    for (size_t i = 0; i < reads->part_count; i++)
        add_part(book, reads, kept[i]);
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
