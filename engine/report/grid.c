#include "report/grid.h"

#include "base/utf8.h"
#include "report/wrap.h"

#include <string.h>

enum { INDENT = 2, GAP = 2, NAME_WIDEST = 30, CELL_WIDEST = 22 };

/* Where the rest of a cell begins, as it is written line by line. */
struct cell {
    const char *rest;
};

/* Bytes of the first `width` characters of text, or of all of it. */
static size_t bytes_of(const char *text, size_t width)
{
    size_t at = 0, left = strlen(text);
    while (width-- > 0 && left > 0) {
        const size_t n = utf8_length((const unsigned char *)text + at, left);
        const size_t step = n == 0 ? 1 : n;
        at += step, left -= step;
    }
    return at;
}

/* How much of the text goes on a line this wide: up to a space, or after a
 * dot, comma, stroke or underscore, else cut where the line is full. */
static size_t wrap_length(const char *text, size_t width)
{
    const size_t full = bytes_of(text, width);
    if (text[full] == '\0' || text[full] == ' ')
        return full;
    for (size_t at = full; at > 1; at--)
        if (text[at] == ' ' || strchr("._/,", text[at - 1]) != NULL)
            return at;
    return full;
}

/* Writes the next line of a cell, filled up to its width with spaces. */
static void add_line_of(struct text *out, struct cell *cell, size_t width, bool fill)
{
    struct text piece = TEXT_EMPTY;
    cell->rest += strspn(cell->rest, " ");
    const size_t length = wrap_length(cell->rest, width);
    text_add_n(&piece, cell->rest, length);
    cell->rest += length;
    text_add(out, text_string(&piece));
    const size_t used = utf8_columns(text_string(&piece));
    if (fill && used < width)
        text_addf(out, "%*s", (int)(width - used), "");
    out->failed = out->failed || piece.failed;
    text_free(&piece);
}

/* Drops the spaces with which the last line ends. */
static void end_line(struct text *out)
{
    while (out->length > 0 && out->bytes[out->length - 1] == ' ')
        out->bytes[--out->length] = '\0';
    text_add(out, "\n");
}

/* The columns that fit beside each other; the rest follow in further panels, with the
 * names again. */
struct panel {
    const struct grid *grid;
    size_t first, count; /* columns shown */
    size_t name, width;  /* of the names and of a cell */
};

/* Spaces alone are nothing to write. */
static bool any_left(const struct cell *cells, size_t count)
{
    for (size_t i = 0; i < count; i++)
        if (cells[i].rest[strspn(cells[i].rest, " ")] != '\0')
            return true;
    return false;
}

enum { PANEL_MOST = 12 };

/* One row: name and texts[0..count), over as many lines as it takes. */
static void add_row(struct text *out, const struct panel *panel, const char *name,
                    const char *const *texts)
{
    struct text safe[PANEL_MOST + 1] = {{0}};
    struct cell cells[PANEL_MOST + 1];
    for (size_t i = 0; i <= panel->count; i++) {
        const char *text = i == 0 ? name : texts[i - 1];
        utf8_add_printable(&safe[i], text == NULL ? "-" : text);
        cells[i].rest = text_string(&safe[i]);
    }
    do {
        text_addf(out, "%*s", INDENT, "");
        add_line_of(out, &cells[0], panel->name, true);
        for (size_t i = 1; i <= panel->count; i++) {
            text_addf(out, "%*s", GAP, "");
            add_line_of(out, &cells[i], panel->width, i < panel->count);
        }
        end_line(out);
    } while (any_left(cells, panel->count + 1));
    for (size_t i = 0; i <= panel->count; i++) {
        out->failed = out->failed || safe[i].failed;
        text_free(&safe[i]);
    }
}

/* At least 4, so that an empty grid has a column of names too. */
static size_t widest_name(const struct grid *grid)
{
    size_t widest = 4;
    for (size_t i = 0; i < grid->rows; i++) {
        const size_t columns = utf8_columns(grid->names[i]);
        widest = columns > widest ? columns : widest;
    }
    return widest > NAME_WIDEST ? NAME_WIDEST : widest;
}

void grid_add(struct text *out, const struct grid *grid)
{
    struct panel panel = {.grid = grid, .name = widest_name(grid)};
    /* As many columns as have room at their narrowest, then made as wide as they may be. */
    const size_t room = WRAP_COLUMNS - INDENT - panel.name;
    size_t fit = room / (GAP + grid->narrowest);
    fit = fit > PANEL_MOST ? PANEL_MOST : fit < 1 ? 1 : fit;
    const size_t shown = grid->columns < fit ? grid->columns : fit;
    panel.width = shown == 0 ? 0 : room / shown - GAP;
    panel.width = panel.width > CELL_WIDEST ? CELL_WIDEST : panel.width;
    for (panel.first = 0; panel.first < grid->columns; panel.first += fit) {
        const size_t left = grid->columns - panel.first;
        panel.count = left < fit ? left : fit;
        text_add(out, panel.first > 0 ? "\n" : "");
        add_row(out, &panel, "", grid->heads + panel.first);
        for (size_t i = 0; i < grid->rows; i++)
            add_row(out, &panel, grid->names[i], grid->cells + i * grid->columns + panel.first);
    }
}
