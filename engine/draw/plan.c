/* plan.c - the roof seen from above, see drawings.h. */
#include "draw/plan_parts.h"

#include <math.h>

/* In the drawing's units. */
enum {
    ROOM = 276,         /* for the widest block */
    HIGH = 150,         /* for the highest, when there is one block only */
    HIGH_OF_MANY = 105, /* and when there are more */
    AROUND = 30,        /* above and below a block, for its dimensions */
    BESIDE = 58,        /* and between two */
};

/* On the paper -------------------------------------------------------------- */

/* In rows from the left, as words in a paragraph. (x, y) is a block's upper left corner,
 * room for dimensions included. */
static void pack_blocks(struct plan_layout *layout)
{
    double x = 2, y = 0, row = 0;
    for (size_t i = 0; i < layout->count; i++) {
        const struct plan_block *block = &layout->blocks[i];
        const double width = (block->left + block->right) * layout->scale;
        const double high = (block->up + block->down) * layout->scale;
        const double cell = fmax(width, 28);
        if (x > 2 && x + cell + BESIDE > DRAW_WIDTH) {
            y += row;
            x = 2;
            row = 0;
        }
        plan_draw_block(layout, block, x + (cell - width) / 2 + 2, y + AROUND);
        x += cell + BESIDE;
        row = fmax(row, high + 2 * AROUND);
    }
    layout->draw.floor = fmax(layout->draw.floor, y + row - AROUND + 4);
}

/* One scale for all blocks, so that planes can be compared. */
static double set_scale(struct plan_layout *layout)
{
    double wide = 0, high = 0, together = 0;
    for (size_t i = 0; i < layout->count; i++) {
        const struct plan_block *block = &layout->blocks[i];
        wide = fmax(wide, block->left + block->right);
        together += block->left + block->right;
        high = fmax(high, block->up + block->down);
    }
    const double scale = draw_scale(wide, ROOM, high, layout->count > 1 ? HIGH_OF_MANY : HIGH);
    /* Somewhat smaller, when all then stand in one row. */
    const double row = (DRAW_WIDTH - 6 - BESIDE * (double)layout->count) / fmax(together, 1);
    return row < scale && row > 0.6 * scale ? row : scale;
}

/* Lines below --------------------------------------------------------------- */

static void describe_plane(const struct plan_plane *plane, size_t index, char out[DRAW_WORDS_MOST])
{
    char letter[3], pitch[DRAW_WORDS_MOST], eave[DRAW_WORDS_MOST], ridge[DRAW_WORDS_MOST];
    char run[DRAW_WORDS_MOST], area[DRAW_WORDS_MOST];
    plan_letter(index, letter);
    draw_number(pitch, plane->pitch, "rise_in_12");
    draw_number(eave, plane->eave_ft, "ft");
    draw_number(ridge, plane->ridge_ft, "ft");
    draw_number(run, plane->run_ft, "ft");
    draw_number(area, plan_area_sqft(plane), "sqft");
    draw_format(out, "%s  %.60s: %.20s, eave %.20s, top %.20s, run %.20s, %.24s%s", letter,
                plane->name == NULL ? "plane" : plane->name, pitch, eave, ridge, run, area,
                plan_is_known(plane) ? "" : "; not drawn");
}

/* The names alone, in one go. */
static void add_names(struct plan_layout *layout)
{
    struct text names = TEXT_EMPTY;
    char letter[3];
    for (size_t i = 0; i < layout->plan->count; i++) {
        const char *name = layout->plan->planes[i].name;
        plan_letter(i, letter);
        text_addf(&names, "%s%s %s", i > 0 ? "; " : "", letter, name == NULL ? "plane" : name);
    }
    draw_note(&layout->draw, text_string(&names));
    layout->draw.words.failed = layout->draw.words.failed || names.failed;
    text_free(&names);
}

/* Every plane in words, which also go into the description. */
static void add_lines(struct plan_layout *layout, struct text *says)
{
    const struct plan_drawing *plan = layout->plan;
    char words[DRAW_WORDS_MOST], area[DRAW_WORDS_MOST];
    double total = 0;
    for (size_t i = 0; i < plan->count; i++) {
        const struct plan_plane *plane = &plan->planes[i];
        describe_plane(plane, i, words);
        draw_detail(&layout->draw, words);
        text_addf(says, " %s.", words);
        total += plan_area_sqft(plane);
    }
    if (layout->draw.sheet.brief)
        add_names(layout);
    draw_number(area, total, "sqft");
    draw_format(words, "In all %s on the slope. Runs are level.", area);
    draw_note(&layout->draw, words);
}

static void add_keys(struct plan_layout *layout)
{
    draw_key_pen(&layout->draw, PEN_LINE, "eave, rake or other edge; arrows: down");
    if (layout->ridges || layout->hips)
        draw_key_pen(&layout->draw, PEN_HEAVY,
                     !layout->hips    ? "ridge"
                     : layout->ridges ? "ridge or hip"
                                      : "hip");
    if (layout->valleys)
        draw_key_pen(&layout->draw, PEN_HEAVY_DASH, "valley");
    if (layout->count > 1)
        draw_note(&layout->draw, "Planes laid flat, not in position: the job does not say where "
                                 "the parts meet. Each is as it looks from above.");
    else if (!layout->draw.sheet.brief)
        draw_note(&layout->draw, "From above. Left and right may be swapped.");
}

void plan_draw(const struct plan_drawing *plan, const struct draw_sheet *sheet, struct text *out)
{
    struct plan_layout layout = {.plan = plan};
    struct text says = TEXT_EMPTY;
    draw_start(&layout.draw, sheet);
    plan_make_blocks(&layout);
    layout.scale = set_scale(&layout);
    pack_blocks(&layout);
    if (layout.count > 0)
        draw_scale_bar(&layout.draw, layout.scale, "ft");
    text_addf(&says, "%zu planes%s.", plan->count,
              layout.count > 1 ? ", laid side by side, not in position" : "");
    add_lines(&layout, &says);
    if (layout.count > 0)
        add_keys(&layout);
    out->failed = out->failed || says.failed;
    draw_finish(&layout.draw, "Roof plan from the job's planes", text_string(&says), out);
    text_free(&says);
}
