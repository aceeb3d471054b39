#include "draw/draw.h"

#include "base/utf8.h"
#include "draw/draw_parts.h"

#include <math.h>
#include <string.h>

void draw_start(struct draw *draw, const struct draw_sheet *sheet)
{
    *draw = (struct draw){.sheet = *sheet, .letter = 'a'};
}

void draw_free(struct draw *draw)
{
    text_free(&draw->shapes);
    text_free(&draw->words);
    text_free(&draw->notes);
}

/* Shapes -------------------------------------------------------------------- */

static const char *pen_style(enum draw_pen pen)
{
    switch (pen) {
    case PEN_NONE:
        return "stroke=\"none\"";
    case PEN_THIN:
        return "stroke=\"#000\" stroke-width=\"0.6\"";
    case PEN_LINE:
        return "stroke=\"#000\" stroke-width=\"1.1\"";
    case PEN_HEAVY:
        return "stroke=\"#000\" stroke-width=\"2.4\"";
    case PEN_DASH:
        return "stroke=\"#000\" stroke-width=\"1\" stroke-dasharray=\"5 3\"";
    case PEN_HEAVY_DASH:
        return "stroke=\"#000\" stroke-width=\"2.4\" stroke-dasharray=\"7 4\"";
    case PEN_DOT:
        return "stroke=\"#000\" stroke-width=\"1\" stroke-dasharray=\"1.5 2.5\"";
    }
    return "";
}

/* The page may hold several drawings, so hatches carry the sheet's id. */
static void add_fill(struct draw *draw, enum draw_fill fill)
{
    static const char *const NAMES[] = {[FILL_SLANT] = "slant",
                                        [FILL_BACKSLANT] = "back",
                                        [FILL_CROSS] = "cross",
                                        [FILL_DOTS] = "dots"};
    if (fill <= FILL_INK)
        text_addf(&draw->shapes, "fill=\"%s\"",
                  fill == FILL_NONE    ? "none"
                  : fill == FILL_PAPER ? "#fff"
                                       : "#000");
    else
        text_addf(&draw->shapes, "fill=\"url(#%s-%s)\"", draw->sheet.id, NAMES[fill]);
}

/* The floor is the lowest y drawn so far: what comes below begins there. */
void draw_lower_floor(struct draw *draw, double y)
{
    if (y > draw->floor)
        draw->floor = y;
}

void draw_line(struct draw *draw, struct draw_point from, struct draw_point to, enum draw_pen pen)
{
    text_addf(&draw->shapes, "<line x1=\"%.2f\" y1=\"%.2f\" x2=\"%.2f\" y2=\"%.2f\" %s/>\n", from.x,
              from.y, to.x, to.y, pen_style(pen));
    draw_lower_floor(draw, fmax(from.y, to.y));
}

void draw_shape(struct draw *draw, const struct draw_point *points, size_t count, enum draw_pen pen,
                enum draw_fill fill)
{
    text_add(&draw->shapes, "<polygon points=\"");
    for (size_t i = 0; i < count; i++) {
        text_addf(&draw->shapes, "%s%.2f,%.2f", i > 0 ? " " : "", points[i].x, points[i].y);
        draw_lower_floor(draw, points[i].y);
    }
    text_addf(&draw->shapes, "\" %s ", pen_style(pen));
    add_fill(draw, fill);
    text_add(&draw->shapes, "/>\n");
}

void draw_box(struct draw *draw, struct draw_area area, enum draw_pen pen, enum draw_fill fill)
{
    const struct draw_point corners[] = {{area.x, area.y},
                                         {area.x + area.width, area.y},
                                         {area.x + area.width, area.y + area.height},
                                         {area.x, area.y + area.height}};
    draw_shape(draw, corners, 4, pen, fill);
}

void draw_dot(struct draw *draw, struct draw_point at, double radius)
{
    text_addf(&draw->shapes, "<circle cx=\"%.2f\" cy=\"%.2f\" r=\"%.2f\"/>\n", at.x, at.y, radius);
    draw_lower_floor(draw, at.y + radius);
}

void draw_head(struct draw *draw, struct draw_point from, struct draw_point to, double size)
{
    const double length = hypot(to.x - from.x, to.y - from.y);
    if (length < 0.01)
        return;
    const double x = (to.x - from.x) / length * size, y = (to.y - from.y) / length * size;
    const struct draw_point head[] = {
        to, {to.x - x - y * 0.4, to.y - y + x * 0.4}, {to.x - x + y * 0.4, to.y - y - x * 0.4}};
    draw_shape(draw, head, 3, PEN_NONE, FILL_INK);
}

void draw_arrow(struct draw *draw, struct draw_point from, struct draw_point to, enum draw_pen pen)
{
    draw_line(draw, from, to, pen);
    draw_head(draw, from, to, 7);
}

/* The whole ----------------------------------------------------------------- */

/* For text and for attributes in quotes alike. */
void draw_escape(struct text *out, const char *words)
{
    struct text safe = TEXT_EMPTY;
    utf8_add_printable(&safe, words);
    for (const char *at = text_string(&safe); *at != '\0';) {
        const size_t plain = strcspn(at, "&<>\"'");
        text_add_n(out, at, plain);
        at += plain;
        if (*at == '\0')
            break;
        text_add(out, *at == '&'   ? "&amp;"
                      : *at == '<' ? "&lt;"
                      : *at == '>' ? "&gt;"
                      : *at == '"' ? "&quot;"
                                   : "&#39;");
        at++;
    }
    out->failed = out->failed || safe.failed;
    text_free(&safe);
}

/* Black on white, and told apart by direction: they must survive a copying machine. */
static void add_hatches(struct text *out, const char *id)
{
    static const struct {
        const char *name, *path;
    } HATCHES[] = {
        {"slant", "M-2 2L2 -2M0 8L8 0M6 10L10 6"},
        {"back", "M-2 6L2 10M0 0L8 8M6 -2L10 2"},
        {"cross", "M0 0L8 8M0 8L8 0"},
        {"dots", "M1.5 2h1.4M5.5 6h1.4"},
    };
    text_add(out, "<defs>");
    for (size_t i = 0; i < sizeof(HATCHES) / sizeof(HATCHES[0]); i++)
        text_addf(out,
                  "<pattern id=\"%s-%s\" width=\"8\" height=\"8\" "
                  "patternUnits=\"userSpaceOnUse\"><rect width=\"8\" height=\"8\" "
                  "fill=\"#fff\"/><path d=\"%s\" fill=\"none\" stroke=\"#000\" "
                  "stroke-width=\"%s\"/></pattern>",
                  id, HATCHES[i].name, HATCHES[i].path, i == 3 ? "1.4" : "0.7");
    text_add(out, "</defs>\n");
}

/* Words come after all shapes, with a white rim around each letter, so that lines behind
 * them do not make them hard to read. */
void draw_finish(struct draw *draw, const char *title, const char *description, struct text *out)
{
    draw_write_notes(draw);
    const double height = ceil(draw->floor + 4);
    text_addf(out,
              "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %.0f\" "
              "width=\"400\" height=\"%.0f\" role=\"img\" "
              "aria-labelledby=\"%s-title %s-desc\" font-family=\"Arial,Helvetica,"
              "sans-serif\" font-size=\"%d\">\n<title id=\"%s-title\">",
              DRAW_WIDTH, height, height * 400 / DRAW_WIDTH, draw->sheet.id, draw->sheet.id,
              DRAW_LETTERS, draw->sheet.id);
    draw_escape(out, title);
    text_addf(out, "</title>\n<desc id=\"%s-desc\">", draw->sheet.id);
    draw_escape(out, description);
    text_add(out, "</desc>\n");
    add_hatches(out, draw->sheet.id);
    text_addf(out, "<rect width=\"%d\" height=\"%.0f\" fill=\"#fff\"/>\n", DRAW_WIDTH, height);
    text_add(out, text_string(&draw->shapes));
    text_add(out, "<g fill=\"#000\" stroke=\"#fff\" stroke-width=\"3\" stroke-linejoin=\"round\" "
                  "paint-order=\"stroke\">\n");
    text_add(out, text_string(&draw->words));
    text_add(out, "</g>\n</svg>\n");
    out->failed = out->failed || draw->shapes.failed || draw->words.failed || draw->notes.failed;
    draw_free(draw);
}
