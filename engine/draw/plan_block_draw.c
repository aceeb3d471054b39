/* How a block of planes is drawn: outlines, labels, dimensions. */
#include "draw/plan_parts.h"

#include <math.h>

/* How far down a notched plane its label stands. */
static const double NOTCH_LABEL = 0.6;

void plan_letter(size_t index, char out[3])
{
    out[0] = (char)(index < 26 ? 'A' + index : 'A' + index / 26 - 1);
    out[1] = (char)(index < 26 ? '\0' : 'A' + index % 26);
    out[2] = '\0';
}

/* From feet off the ridge's left end to the paper; down is -1 above the ridge. */
struct view {
    double x, y, scale, down;
};

static struct draw_point on_paper(const struct view *view, struct draw_point feet)
{
    return (struct draw_point){view->x + feet.x * view->scale,
                               view->y + feet.y * view->scale * view->down};
}

/* The key names only kinds of line that were drawn. */
static void note_pen(struct plan_layout *layout, enum draw_pen pen, bool ridge)
{
    layout->ridges = layout->ridges || ridge;
    layout->hips = layout->hips || (pen == PEN_HEAVY && !ridge);
    layout->valleys = layout->valleys || pen == PEN_HEAVY_DASH;
}

/* The first side is the upper edge: a ridge when another plane is across it. */
static void draw_outline(struct plan_layout *layout, const struct view *view,
                         const struct plan_outline *outline, bool ridge)
{
    struct draw_point corners[PLAN_CORNERS_MOST] = {{0, 0}};
    for (size_t i = 0; i < outline->count; i++)
        corners[i] = on_paper(view, outline->corners[i]);
    draw_shape(&layout->draw, corners, outline->count, PEN_NONE, FILL_PAPER);
    for (size_t i = 0; i < outline->count; i++) {
        const bool upper = i == 0 && ridge && !plan_alike(outline->corners[1].x, 0);
        const enum draw_pen pen = upper ? PEN_HEAVY : outline->sides[i];
        note_pen(layout, pen, upper);
        draw_line(&layout->draw, corners[i], corners[(i + 1) % outline->count], pen);
    }
}

/* Writes the longest label that fits into a plane so wide and high: letter and slope, else
 * the letter alone, since the lines below say the rest. Its width; 0 when none fits. */
static double label_inside(struct plan_layout *layout, size_t index, struct draw_point middle,
                           double wide, double high)
{
    char letter[3], pitch[DRAW_WORDS_MOST], words[DRAW_WORDS_MOST];
    plan_letter(index, letter);
    draw_number(pitch, layout->plan->planes[index].pitch, "rise_in_12");
    draw_format(words, "%s  %s", letter, pitch);
    const char *const labels[] = {words, letter};
    for (size_t i = 0; i < 2; i++)
        if (draw_words_width(labels[i]) + 4 <= wide && high >= DRAW_LINE
            && draw_words(&layout->draw, middle.x, middle.y + 4, ANCHOR_MIDDLE, labels[i]))
            return draw_words_width(labels[i]);
    return 0;
}

/* Down the slope, beside the label; in a hip's end, which slopes sideways, below it. width:
 * what the label takes. */
static void add_down_arrow(struct plan_layout *layout, struct draw_point middle,
                           struct draw_point down, double width, double length)
{
    const double off = down.x == 0 ? width / 2 + 8 : 0, drop = down.x == 0 ? 0 : 12;
    draw_arrow(
        &layout->draw,
        (struct draw_point){middle.x - off - down.x * length, middle.y + drop - down.y * length},
        (struct draw_point){middle.x - off + down.x * length, middle.y + drop + down.y * length},
        PEN_LINE);
}

/* The letter and slope within the plane where there is room, else the letter beyond its
 * eave; below them its area, and an arrow down the slope. */
static void label_plane(struct plan_layout *layout, size_t index, struct draw_point middle,
                        struct draw_point down, double wide, double high)
{
    const struct plan_plane *plane = &layout->plan->planes[index];
    char letter[3], area[DRAW_WORDS_MOST];
    double width = label_inside(layout, index, middle, wide, high);
    if (width == 0) {
        plan_letter(index, letter);
        draw_words(&layout->draw, middle.x + down.x * (high / 2 + 4),
                   middle.y + down.y * (high / 2 + 8) + 4, ANCHOR_MIDDLE, letter);
        return;
    }
    draw_number(area, plan_area_sqft(plane), "sqft");
    if (down.x == 0 && draw_words_width(area) + 34 <= wide && high >= 3 * DRAW_LINE) {
        draw_words(&layout->draw, middle.x, middle.y + 4 + DRAW_LINE, ANCHOR_MIDDLE, area);
        width = fmax(width, draw_words_width(area));
    }
    const double length = fmin(high * 0.3, 14);
    if (width + 34 <= wide && length > 4)
        add_down_arrow(layout, middle, down, width, length);
}

/* A dimension only where its words have room: the lines below say it too. */
static void measure_if_wide(struct plan_layout *layout, struct draw_point from,
                            struct draw_point to, double feet)
{
    char words[DRAW_WORDS_MOST];
    draw_number(words, feet, "ft");
    const double length = hypot(to.x - from.x, to.y - from.y);
    if (from.y == to.y ? length > draw_words_width(words) : length > DRAW_LINE)
        draw_measure(&layout->draw, from, to, words);
}

/* A plane above or below the ridge, with its label and dimensions. (x, y) is the ridge's
 * left end on the paper. */
static void draw_sided(struct plan_layout *layout, const struct plan_block *block, size_t which,
                       double x, double y)
{
    const struct plan_plane *plane = &layout->plan->planes[block->planes[which]];
    const struct view view = {x, y, layout->scale, which == 0 ? 1 : -1};
    struct plan_outline outline;
    plan_outline_of(plane, &outline);
    if (block->kind == BLOCK_HIP)
        outline.sides[1] = outline.sides[3] = PEN_HEAVY;
    draw_outline(layout, &view, &outline, block->kind != BLOCK_SINGLE);
    const double scale = layout->scale, run = plane->run_ft * scale;
    const bool notched = plan_is_notched(plane);
    const double left = notched ? 0 : -plan_lean_left_ft(plane);
    const double eave = notched ? plane->ridge_ft : plane->eave_ft;
    const struct draw_point low_left = on_paper(&view, (struct draw_point){left, plane->run_ft});
    double middle = x + (left + eave / 2 + plane->ridge_ft / 2) / 2 * scale;
    double wide = (eave + plane->ridge_ft) / 2 * scale;
    if (notched) { /* beside the notch */
        wide = plane->eave_pieces_ft[0] * scale
               + (plane->ridge_ft - plane->eave_ft) / 2 * scale * (1 - NOTCH_LABEL);
        middle = x + wide / 2;
    }
    label_plane(layout, block->planes[which],
                (struct draw_point){middle, y + view.down * run * (notched ? NOTCH_LABEL : 0.5)},
                (struct draw_point){0, view.down}, wide, run);
    const double off = low_left.y + view.down * 9;
    if (!notched)
        measure_if_wide(
            layout, (struct draw_point){low_left.x + (which == 0 ? eave * scale : 0), off},
            (struct draw_point){low_left.x + (which == 0 ? 0 : eave * scale), off}, eave);
    const double side = x + block->right * scale + 9;
    measure_if_wide(layout, (struct draw_point){side, fmin(y, low_left.y)},
                    (struct draw_point){side, fmax(y, low_left.y)}, plane->run_ft);
}

/* A hip roof's triangle left (2) or right (3): its two hips are drawn with the sides. */
static void draw_end(struct plan_layout *layout, const struct plan_block *block, size_t which,
                     double x, double y)
{
    const struct plan_plane *plane = &layout->plan->planes[block->planes[which]];
    const double out = plane->run_ft * layout->scale, half = plane->eave_ft / 2 * layout->scale;
    const double side = which == 2 ? -1 : 1;
    const double tip = which == 2 ? x : x + (block->right - plane->run_ft) * layout->scale;
    draw_line(&layout->draw, (struct draw_point){tip + side * out, y - half},
              (struct draw_point){tip + side * out, y + half}, PEN_LINE);
    label_plane(layout, block->planes[which], (struct draw_point){tip + side * out * 0.62, y},
                (struct draw_point){side, 0}, out * 0.72, half);
}

void plan_draw_block(struct plan_layout *layout, const struct plan_block *block, double x, double y)
{
    char words[DRAW_WORDS_MOST], ridge[DRAW_WORDS_MOST];
    x += block->left * layout->scale;
    y += block->up * layout->scale;
    draw_sided(layout, block, 0, x, y);
    if (block->kind != BLOCK_SINGLE)
        draw_sided(layout, block, 1, x, y);
    if (block->kind == BLOCK_HIP) {
        draw_end(layout, block, 2, x, y);
        draw_end(layout, block, 3, x, y);
    }
    const double length = layout->plan->planes[block->planes[0]].ridge_ft;
    draw_number(ridge, length, "ft");
    draw_format(words, "ridge %s", ridge);
    if (block->kind != BLOCK_SINGLE && draw_words_width(words) + 8 < length * layout->scale)
        draw_words(&layout->draw, x + length * layout->scale / 2, y - 4, ANCHOR_MIDDLE, words);
}
