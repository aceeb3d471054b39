/* explain_reads.c - which facts and figures a rule can read. */
#include "judge/reads.h"
#include "judge/row.h"
#include "judge/row_reads.h"
#include "prove/explain_parts.h"

#include <stdlib.h>
#include <string.h>

void explain_note_figure(void *data, const char *name)
{
    struct explanation *out = data;
    if (!strings_have(&out->figures, name))
        strings_add(&out->figures, &out->arena, arena_copy(&out->arena, name));
}

static void note_field(void *data, const struct field *field)
{
    struct explanation *out = data;
    /* NULL: a place does not carry a law for a fact that this rulebook has not. */
    bool known = field == NULL || out->fields == NULL;
    for (size_t j = 0; !known && j < out->field_count; j++)
        known = out->fields[j] == field;
    if (!known)
        out->fields[out->field_count++] = field;
}

static int text_order(const void *a, const void *b)
{
    return strcmp(*(const char *const *)a, *(const char *const *)b);
}

static int field_order(const void *a, const void *b)
{
    const struct field *const *left = a, *const *right = b;
    return strcmp((*left)->path, (*right)->path);
}

void explain_sort(struct strings *texts)
{
    if (texts->count > 1)
        qsort(texts->items, texts->count, sizeof(*texts->items), text_order);
}

/* "topic.table.*" names all rows of a table. */
static bool is_named(const char *figure, const char *name)
{
    const size_t length = strlen(name);
    return name[length - 1] == '*' ? strncmp(figure, name, length - 1) == 0
                                   : strcmp(figure, name) == 0;
}

/* Figures that this place has no need of, as far as some other place has them. */
static void note_elsewhere(struct explanation *out, const char *name)
{
    for (size_t i = 0; i < out->places.count; i++) {
        const struct profile *profile = out->places.items[i].profile;
        for (size_t j = 0; j < profile->figure_count; j++)
            if (is_named(profile->figures[j].name, name))
                explain_note_figure(out, profile->figures[j].name);
    }
}

/* Rows of a table that only other places have. */
static void note_table(void *data, const struct row *row)
{
    struct explanation *out = data;
    if (row->by_prefix == NULL)
        return;
    const char *name = arena_format(&out->arena, "%s*", row->by_prefix);
    if (name != NULL)
        note_elsewhere(out, name);
}

static void note_all_elsewhere(struct explanation *out)
{
    const struct reads *reads = out->rule->reads;
    if (out->rule->row != NULL)
        row_each_part(out->rule->row, note_table, out);
    for (size_t i = 0; i < reads->part_count; i++)
        for (size_t j = 0; j < reads->parts[i]->elsewhere_count; j++)
            note_elsewhere(out, reads->parts[i]->elsewhere[j]);
}

/* A place that does not carry what binds asks for one fact before the rule does. */
static void note_gap(struct explanation *out, const struct profile *profile)
{
    const struct law_gap *gap = profile_gap(profile, out->rule->id);
    if (gap != NULL)
        note_field(out, fields_find(&out->law->book->fields, gap->fact));
}

/* What the rule's row names and its functions declare is all that it can read. */
void explain_reads(struct explanation *out)
{
    const struct rulebook *book = out->law->book;
    out->fields = arena_array(&out->arena, book->fields.count + 1, sizeof(struct field *));
    row_reads_each_figure(book, out->rule, explain_note_figure, out);
    note_all_elsewhere(out);
    row_reads_each_field(book, out->rule, note_field, out);
    note_gap(out, out->law->profile);
    for (size_t i = 0; i < out->places.count; i++)
        note_gap(out, out->places.items[i].profile);
    /* By name, so that the rows of a table stand together. */
    explain_sort(&out->figures);
    if (out->fields != NULL && out->field_count > 1)
        qsort(out->fields, out->field_count, sizeof(struct field *), field_order);
}
