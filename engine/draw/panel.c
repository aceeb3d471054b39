/* panel.c - a deck panel with its nails, see drawings.h. */
#include "draw/drawings.h"

#include <math.h>

enum { LEFT = 44, ROOM = 290, HIGH = 125, TOP = 30, LINES_MOST = 64, NAILS_MOST = 400 };

/* A panel lies with its length across the rafters; x runs along it, y across. */
struct sheet {
    const struct panel_drawing *panel;
    struct draw draw;
    double length, width, support, scale; /* inches, as drawn */
    double edge, field, inset;            /* 0: not known, no nails drawn */
    bool scaled;
};

/* The usual panel is 4 by 8 ft on four bays. */
static double or_else(double value, double other)
{
    return isfinite(value) && value > 0 ? value : other;
}

static void set_sizes(struct sheet *sheet)
{
    const struct panel_drawing *panel = sheet->panel;
    sheet->length = or_else(panel->length_in, 96);
    sheet->width = or_else(panel->width_in, 48);
    sheet->support = or_else(panel->support_in, sheet->length / 4);
    sheet->edge = or_else(draw_amount_shown(&panel->edge), 0);
    sheet->field = or_else(draw_amount_shown(&panel->field), 0);
    sheet->inset = or_else(draw_amount_shown(&panel->edge_distance), 0.375);
    sheet->scaled = isfinite(panel->length_in) && isfinite(panel->width_in)
                    && isfinite(panel->support_in);
    sheet->scale = draw_scale(sheet->length, ROOM, sheet->width, HIGH);
}

static struct draw_point point_at(const struct sheet *sheet, double along, double across)
{
    return (struct draw_point){LEFT + along * sheet->scale, TOP + across * sheet->scale};
}

/* Nails from edge to edge no further apart than the spacing: full ones, and
 * what is left over at the end. */
static void nail_line(struct sheet *sheet, double along, double spacing)
{
    const double last = sheet->width - sheet->inset;
    if (spacing <= 0)
        return;
    int count = 0;
    for (double y = sheet->inset; y < last - 0.01 && count < NAILS_MOST; y += spacing, count++)
        draw_dot(&sheet->draw, point_at(sheet, along, y), 1.5);
    draw_dot(&sheet->draw, point_at(sheet, along, last), 1.5);
}

static void draw_panel(struct sheet *sheet)
{
    const struct draw_point corner = point_at(sheet, 0, 0);
    draw_box(&sheet->draw,
             (struct draw_area){corner.x, corner.y, sheet->length * sheet->scale,
                                sheet->width * sheet->scale},
             PEN_LINE, FILL_PAPER);
    int lines = 0;
    /* The supports between the two ends: half an inch off an end is the end's own. */
    for (double x = sheet->support; x < sheet->length - 0.5 && lines < LINES_MOST; lines++) {
        draw_line(&sheet->draw, point_at(sheet, x, 0), point_at(sheet, x, sheet->width), PEN_DOT);
        nail_line(sheet, x, sheet->field);
        x += sheet->support;
    }
    nail_line(sheet, sheet->inset, sheet->edge);
    nail_line(sheet, sheet->length - sheet->inset, sheet->edge);
}

/* Each dimension only where it fits within the panel; words that find no place go into
 * lines below. */
static void draw_sizes(struct sheet *sheet)
{
    char words[DRAW_WORDS_MOST];
    const struct panel_drawing *panel = sheet->panel;
    const double bottom = point_at(sheet, 0, sheet->width).y, mid = sheet->inset;
    draw_number(words, panel->length_in, "in");
    draw_measure(&sheet->draw, (struct draw_point){LEFT, TOP - 10},
                 (struct draw_point){point_at(sheet, sheet->length, 0).x, TOP - 10}, words);
    if (sheet->support < sheet->length) {
        draw_number(words, panel->support_in, "in");
        draw_measure(&sheet->draw,
                     (struct draw_point){point_at(sheet, sheet->support, 0).x, bottom + 10},
                     (struct draw_point){LEFT, bottom + 10}, words);
    }
    if (sheet->edge > 0 && sheet->edge + mid < sheet->width) {
        draw_number(words, sheet->edge, "in");
        draw_measure(&sheet->draw,
                     (struct draw_point){LEFT - 7, point_at(sheet, 0, mid + sheet->edge).y},
                     (struct draw_point){LEFT - 7, point_at(sheet, 0, mid).y}, words);
    }
    if (sheet->field > 0 && sheet->field + mid < sheet->width && sheet->support < sheet->length) {
        const double x = point_at(sheet, sheet->support, 0).x + 8;
        draw_number(words, sheet->field, "in");
        draw_measure(&sheet->draw, (struct draw_point){x, point_at(sheet, 0, mid).y},
                     (struct draw_point){x, point_at(sheet, 0, mid + sheet->field).y}, words);
    }
    draw_number(words, panel->width_in, "in");
    draw_measure(&sheet->draw,
                 (struct draw_point){point_at(sheet, sheet->length, 0).x - 10, bottom},
                 (struct draw_point){point_at(sheet, sheet->length, 0).x - 10, TOP}, words);
}

static void add_key(struct sheet *sheet, struct text *says, const char *what,
                    const struct draw_amount *amount)
{
    char size[DRAW_WORDS_MOST], words[DRAW_WORDS_MOST];
    draw_amount_words(size, amount, "in");
    draw_format(words, "%s: %.120s", what, size);
    draw_detail(&sheet->draw, words);
    text_addf(says, " %s.", words);
}

static void add_keys(struct sheet *sheet, struct text *says)
{
    const struct panel_drawing *panel = sheet->panel;
    draw_key_pen(&sheet->draw, PEN_DOT, "rafter or truss; dots are nails");
    add_key(sheet, says, "Panel ends", &panel->edge);
    add_key(sheet, says, "On rafters", &panel->field);
    add_key(sheet, says, "From the edge", &panel->edge_distance);
    if (isfinite(draw_amount_shown(&panel->gap)))
        add_key(sheet, says, "Gap between panels", &panel->gap);
    draw_note(&sheet->draw, sheet->scaled
                                ? "To scale. Nail a long edge that is carried as the ends."
                                : "Not to scale: a size is not known.");
}

void panel_draw(const struct panel_drawing *panel, const struct draw_sheet *place, struct text *out)
{
    struct sheet sheet = {.panel = panel};
    struct text says = TEXT_EMPTY;
    char title[DRAW_WORDS_MOST];
    draw_start(&sheet.draw, place);
    set_sizes(&sheet);
    draw_panel(&sheet);
    draw_sizes(&sheet);
    draw_format(title, "A panel and its nails: %.60s", panel->deck == NULL ? "deck" : panel->deck);
    text_add(&says, "A deck panel across its rafters, with rows of nails.");
    add_keys(&sheet, &says);
    out->failed = out->failed || says.failed;
    draw_finish(&sheet.draw, title, text_string(&says), out);
    text_free(&says);
}
