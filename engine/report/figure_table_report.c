#include "report/figure_table_report.h"

#include "base/utf8.h"
#include "report/value_words.h"

#include <cjson/cJSON.h>

#include <string.h>

void report_add_figure(struct text *out, const struct figure *figure)
{
    value_add_demand(out, figure->sense, &figure->value);
    if (figure->also.kind != VALUE_NONE) {
        text_add(out, " and ");
        value_add_demand(out, figure->also_sense, &figure->also);
    }
    /* Whether "over 4 in 12" takes in 4 in 12 itself, where the code says so. */
    if (figure->at != AT_AS_SENSE_SAYS)
        text_add(out,
                 figure->at == AT_COUNTS ? ", or exactly so much" : ", and not exactly so much");
}

/* A model is known by its edition, a place by its name. */
static const char *column_name(const struct profile *profile)
{
    return profile->model ? profile->edition : profile->title;
}

/* The cells of a row, in the order of the head. */
enum { CELLS = 7 };
static const char *const HEAD[CELLS] = {"figure", "edition", "demanded", "section",
                                        "status", "source",  "disputed"};

/* Empty where there is nothing to say. */
static void fill_cell(const struct figure_row *row, int cell, struct text *out)
{
    const struct figure *figure = row->figure;
    const char *const plain[CELLS] = {figure->name,
                                      column_name(row->profile),
                                      NULL,
                                      NULL,
                                      status_word(figure->cite.status),
                                      figure->cite.source,
                                      figure->disputed};
    if (cell == 2)
        report_add_figure(out, figure);
    else if (cell == 3)
        value_add_cite(out, &figure->cite);
    else if (plain[cell] != NULL)
        text_add(out, plain[cell]);
}

/* A tab or a line's end within a cell would break the table; anything else that does not print
 * might steer the terminal of who looks at it. Releases the cell. */
static void add_cell(struct text *cell, struct text *out)
{
    for (size_t i = 0; i < cell->length; i++)
        if (strchr("\t\n\r", cell->bytes[i]) != NULL)
            cell->bytes[i] = ' ';
    utf8_add_printable(out, text_string(cell));
    out->failed = out->failed || cell->failed;
    text_free(cell);
}

/* Tabs and lines, for a spreadsheet to open. */
void report_figure_table_text(const struct figure_table *table, struct text *out)
{
    for (int c = 0; c < CELLS; c++)
        text_addf(out, "%s%s", HEAD[c], c + 1 < CELLS ? "\t" : "\n");
    for (size_t r = 0; r < table->count; r++) {
        for (int c = 0; c < CELLS; c++) {
            struct text cell = TEXT_EMPTY;
            fill_cell(&table->rows[r], c, &cell);
            add_cell(&cell, out);
            text_add(out, c + 1 < CELLS ? "\t" : "\n");
        }
    }
}

/* The same cells by the names of the head; an empty one is left out. */
static bool add_row(cJSON *rows, const struct figure_row *row)
{
    cJSON *object = cJSON_CreateObject();
    if (object == NULL || !cJSON_AddItemToArray(rows, object)) {
        cJSON_Delete(object);
        return false;
    }
    bool kept = true;
    for (int c = 0; c < CELLS && kept; c++) {
        struct text cell = TEXT_EMPTY;
        fill_cell(row, c, &cell);
        kept = !cell.failed
               && (cell.length == 0
                   || cJSON_AddStringToObject(object, HEAD[c], text_string(&cell)));
        text_free(&cell);
    }
    return kept;
}

/* All or nothing: half a table would pass for a whole one. */
void report_figure_table_json(const struct figure_table *table, bool pretty, struct text *out)
{
    cJSON *root = cJSON_CreateObject();
    cJSON *rows = root == NULL ? NULL : cJSON_AddArrayToObject(root, "figures");
    bool kept = rows != NULL;
    for (size_t r = 0; kept && r < table->count; r++)
        kept = add_row(rows, &table->rows[r]);
    char *printed = !kept ? NULL : pretty ? cJSON_Print(root) : cJSON_PrintUnformatted(root);
    if (printed == NULL)
        out->failed = true;
    else
        text_addf(out, "%s\n", printed);
    cJSON_free(printed);
    cJSON_Delete(root);
}
