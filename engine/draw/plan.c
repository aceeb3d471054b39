/* plan.c - the roof seen from above, see drawings.h. */
#include "draw/drawings.h"

#include "trade/geometry.h"

#include <math.h>
#include <string.h>

enum {
    CORNERS_MOST = 7,
    BLOCK_PLANES = 4,
    ROOM = 276,
    HIGH = 150,
    HIGH_OF_MANY = 105,
    AROUND = 30, /* above and below a block, for its dimensions */
    BESIDE = 58,
};

/* Lengths that a tape would call the same. */
static const double ALIKE_FT = 0.05;
static const double NOTCH_LABEL = 0.6; /* how far down a notched plane its label stands */

enum block_kind { BLOCK_SINGLE, BLOCK_PAIR, BLOCK_HIP };

/* Planes drawn together: planes[0] below the ridge, planes[1] above it, the
 * ends of a hip roof left and right. */
struct block {
    enum block_kind kind;
    size_t planes[BLOCK_PLANES];
    double left, right, up, down; /* feet from the ridge's left end */
};

/* What is drawn so far, and which kinds of line, for the key. */
struct layout {
    const struct plan_drawing *plan;
    struct draw draw;
    struct block blocks[PLAN_PLANES_MOST];
    size_t count;
    bool placed[PLAN_PLANES_MOST];
    double scale;
    bool hips, valleys, ridges;
};

static bool alike(double a, double b)
{
    return fabs(a - b) <= ALIKE_FT;
}

/* Enough to draw the plane's outline. */
static bool is_known(const struct plan_plane *plane)
{
    return isfinite(plane->eave_ft) && isfinite(plane->ridge_ft) && isfinite(plane->run_ft)
           && plane->run_ft > 0 && plane->eave_ft + plane->ridge_ft > 0;
}

/* A letter of its own for every plane: A ... Z, AA ... */
static void letter_of(size_t index, char out[3])
{
    out[0] = (char)(index < 26 ? 'A' + index : 'A' + index / 26 - 1);
    out[1] = (char)(index < 26 ? '\0' : 'A' + index % 26);
    out[2] = '\0';
}

/* Outlines ---------------------------------------------------------------------- */

struct outline {
    struct draw_point corners[CORNERS_MOST]; /* feet; ridge at y 0, eave at y run */
    enum draw_pen sides[CORNERS_MOST];       /* from each corner to the next */
    size_t count;
};

/* A wing that runs into a plane leaves two valleys, two rakes and an eave in two pieces,
 * which add up to what is left of it. */
bool plan_is_notched(const struct plan_plane *plane)
{
    return plane->valleys == 2 && plane->rakes == 2 && plane->eaves == 2
           && plane->ridge_ft > plane->eave_ft
           && fabs(plane->eave_pieces_ft[0] + plane->eave_pieces_ft[1] - plane->eave_ft) < 0.5;
}

/* A stated plan area wins: a notched plane's edges do not give its area. */
double plan_area_sqft(const struct plan_plane *plane)
{
    return isfinite(plane->plan_sqft) && plane->plan_sqft > 0
               ? trade_plan_area_sqft(plane->plan_sqft, plane->pitch)
               : trade_slope_area_sqft(plane->eave_ft, plane->ridge_ft, plane->run_ft,
                                       plane->pitch);
}

/* How far up a wing cuts into the plane, measured level: to its ridge, unless
 * what is left of the plane tells otherwise. */
static double notch_run_ft(const struct plan_plane *plane)
{
    const double run = plane->run_ft, base = plane->ridge_ft - plane->eave_ft;
    const double cut = 2 * (plane->ridge_ft * run - plane->plan_sqft) / base;
    return plane->plan_sqft > 0 && cut > 0 && cut < run ? cut : run;
}

/* Around from the ridge's left end: ridge, right rake, right piece of the eave, up one
 * valley to the tip and down the other, left piece, left rake. */
static void notched_outline(const struct plan_plane *plane, struct outline *out)
{
    const double run = plane->run_ft, tip = run - notch_run_ft(plane);
    const double first = plane->eave_pieces_ft[0];
    const double second = plane->ridge_ft - (plane->eave_ft - first);
    *out = (struct outline){
        .corners = {{0, 0},
                    {plane->ridge_ft, 0},
                    {plane->ridge_ft, run},
                    {second, run},
                    {(first + second) / 2, tip},
                    {first, run},
                    {0, run}},
        .sides = {PEN_LINE, PEN_LINE, PEN_LINE, PEN_HEAVY_DASH, PEN_HEAVY_DASH, PEN_LINE, PEN_LINE},
        .count = 7};
}

/* How far the left lower corner lies outside the left upper one. A hip on one side and a
 * valley on the other lean the same way, 45 degrees in plan; a rake stands square; else
 * both sides share. */
double plan_lean_left_ft(const struct plan_plane *plane)
{
    const double more = plane->eave_ft - plane->ridge_ft;
    if (plane->hips == 1 && plane->valleys == 1)
        return plane->run_ft;
    if (plane->rakes == 1 && plane->hips + plane->valleys == 1)
        return 0;
    return more / 2;
}

/* Which side is listed as what is seen by the way it leans. */
static enum draw_pen side_pen(const struct plan_plane *plane, double lean)
{
    if (lean > ALIKE_FT && plane->hips > 0)
        return PEN_HEAVY;
    if (lean < -ALIKE_FT && plane->valleys > 0)
        return PEN_HEAVY_DASH;
    return PEN_LINE;
}

/* The ridge at the top with its left end at the origin; y grows down the slope. */
static void outline_of(const struct plan_plane *plane, struct outline *out)
{
    if (plan_is_notched(plane)) {
        notched_outline(plane, out);
        return;
    }
    const double left = plan_lean_left_ft(plane), right = plane->eave_ft - plane->ridge_ft - left;
    *out = (struct outline){
        .corners = {{0, 0},
                    {plane->ridge_ft, 0},
                    {plane->ridge_ft + right, plane->run_ft},
                    {-left, plane->run_ft}},
        .sides = {PEN_LINE, side_pen(plane, right), PEN_LINE, side_pen(plane, left)},
        .count = 4};
}

/* Blocks ------------------------------------------------------------------------ */

static bool same_plane(const struct plan_plane *a, const struct plan_plane *b)
{
    return alike(a->eave_ft, b->eave_ft) && alike(a->ridge_ft, b->ridge_ft)
           && alike(a->run_ft, b->run_ft);
}

/* Four planes that close: two sides along the ridge, two ends in triangles; and
 * none of them is listed with a side that is no hip. */
static bool closes(const struct plan_plane *planes, size_t partner, size_t *end)
{
    size_t ends[2], count = 0;
    for (size_t i = 1; i < BLOCK_PLANES; i++)
        if (i != partner)
            ends[count++] = i;
    const struct plan_plane *side = &planes[0], *tip = &planes[ends[0]];
    end[0] = ends[0];
    end[1] = ends[1];
    for (size_t i = 0; i < BLOCK_PLANES; i++)
        if (planes[i].rakes > 0 || planes[i].valleys > 0)
            return false;
    return same_plane(side, &planes[partner]) && same_plane(tip, &planes[ends[1]])
           && tip->ridge_ft <= ALIKE_FT && alike(side->eave_ft, side->ridge_ft + 2 * tip->run_ft)
           && alike(tip->eave_ft, 2 * side->run_ft);
}

/* The four are one block: sides above and below the ridge, ends left and right of it. */
static void make_hip(struct layout *layout, size_t first, size_t second, const size_t end[2])
{
    const struct plan_plane *side = &layout->plan->planes[first];
    const double out = layout->plan->planes[end[0]].run_ft;
    layout->blocks[layout->count++] = (struct block){.kind = BLOCK_HIP,
                                                     .planes = {first, second, end[0], end[1]},
                                                     .left = out,
                                                     .right = side->ridge_ft + out,
                                                     .up = side->run_ft,
                                                     .down = side->run_ft};
    for (size_t i = 0; i < BLOCK_PLANES; i++)
        layout->placed[i] = true;
}

/* Tries each plane as a side, and each other one as its partner across the ridge. */
static void find_hip(struct layout *layout)
{
    const struct plan_drawing *plan = layout->plan;
    if (plan->count != BLOCK_PLANES)
        return;
    for (size_t first = 0; first < BLOCK_PLANES; first++) {
        /* Start from a side that has a ridge, if any has. */
        struct plan_plane planes[BLOCK_PLANES];
        size_t end[2];
        for (size_t i = 0; i < BLOCK_PLANES; i++)
            planes[i] = plan->planes[(first + i) % BLOCK_PLANES];
        for (size_t partner = 1; partner < BLOCK_PLANES; partner++)
            if (closes(planes, partner, end)) {
                for (size_t i = 0; i < 2; i++)
                    end[i] = (first + end[i]) % BLOCK_PLANES;
                make_hip(layout, first, (first + partner) % BLOCK_PLANES, end);
                return;
            }
    }
}

/* The only other plane with an upper edge as long, or the plane itself. */
static size_t partner_of(const struct plan_drawing *plan, size_t index)
{
    size_t partner = index, found = 0;
    for (size_t i = 0; i < plan->count; i++)
        if (i != index && alike(plan->planes[i].ridge_ft, plan->planes[index].ridge_ft)) {
            partner = i;
            found++;
        }
    return found == 1 && plan->planes[index].ridge_ft > ALIKE_FT ? partner : index;
}

/* Pairs share a ridge when together they make up all the ridge there is, and
 * what is left over could not make up any of it. */
static bool pairs_are_sure(const struct plan_drawing *plan)
{
    double ridge = 0, rest = 0;
    for (size_t i = 0; i < plan->count; i++) {
        if (partner_of(plan, i) != i)
            ridge += plan->planes[i].ridge_ft / 2;
        else
            rest += plan->planes[i].ridge_ft / 2;
    }
    /* Half a foot: the total was taped in pieces. Where a rest could be part of it,
     * pairing would be a guess, and planes are drawn one by one. */
    return ridge > 0 && fabs(ridge - plan->ridge_ft) < 0.5 && rest < ridge;
}

/* Widens the block by one of its planes. */
static void span_block(const struct layout *layout, struct block *block, size_t which)
{
    struct outline outline;
    outline_of(&layout->plan->planes[block->planes[which]], &outline);
    for (size_t i = 0; i < outline.count; i++) {
        block->left = fmax(block->left, -outline.corners[i].x);
        block->right = fmax(block->right, outline.corners[i].x);
    }
    const double run = layout->plan->planes[block->planes[which]].run_ft;
    if (which == 0)
        block->down = run;
    else
        block->up = run;
}

/* By its name only: nothing else tells the street side. */
static bool is_behind(const struct plan_plane *plane)
{
    return plane->name != NULL
           && (strstr(plane->name, "back") != NULL || strstr(plane->name, "rear") != NULL);
}

/* The plane seen from the street goes below the ridge, the other above it. */
static void make_block(struct layout *layout, size_t index, bool paired)
{
    struct block *block = &layout->blocks[layout->count++];
    const size_t partner = paired ? partner_of(layout->plan, index) : index;
    const bool swap = partner != index && is_behind(&layout->plan->planes[index]);
    *block = (struct block){.kind = partner != index ? BLOCK_PAIR : BLOCK_SINGLE,
                            .planes = {swap ? partner : index, swap ? index : partner}};
    layout->placed[index] = layout->placed[partner] = true;
    span_block(layout, block, 0);
    if (block->kind == BLOCK_PAIR)
        span_block(layout, block, 1);
}

static void make_blocks(struct layout *layout)
{
    const struct plan_drawing *plan = layout->plan;
    bool known = isfinite(plan->ridge_ft);
    for (size_t i = 0; i < plan->count; i++)
        known = known && is_known(&plan->planes[i]);
    if (known)
        find_hip(layout);
    const bool sure = known && pairs_are_sure(plan);
    for (size_t i = 0; i < plan->count; i++)
        if (!layout->placed[i] && is_known(&plan->planes[i]))
            make_block(layout, i, sure);
}

/* Drawing ----------------------------------------------------------------------- */

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
static void note_pen(struct layout *layout, enum draw_pen pen, bool ridge)
{
    layout->ridges = layout->ridges || ridge;
    layout->hips = layout->hips || (pen == PEN_HEAVY && !ridge);
    layout->valleys = layout->valleys || pen == PEN_HEAVY_DASH;
}

/* The first side is the upper edge: a ridge when another plane is across it. */
static void draw_outline(struct layout *layout, const struct view *view,
                         const struct outline *outline, bool ridge)
{
    struct draw_point corners[CORNERS_MOST] = {{0, 0}};
    for (size_t i = 0; i < outline->count; i++)
        corners[i] = on_paper(view, outline->corners[i]);
    draw_shape(&layout->draw, corners, outline->count, PEN_NONE, FILL_PAPER);
    for (size_t i = 0; i < outline->count; i++) {
        const bool upper = i == 0 && ridge && outline->corners[1].x > ALIKE_FT;
        const enum draw_pen pen = upper ? PEN_HEAVY : outline->sides[i];
        note_pen(layout, pen, upper);
        draw_line(&layout->draw, corners[i], corners[(i + 1) % outline->count], pen);
    }
}

/* The letter and slope within the plane where there is room, else beyond its
 * eave; and an arrow down the slope. */
static void label_plane(struct layout *layout, size_t index, struct draw_point middle,
                        struct draw_point down, double wide, double high)
{
    const struct plan_plane *plane = &layout->plan->planes[index];
    char letter[3], pitch[DRAW_WORDS_MOST], words[DRAW_WORDS_MOST];
    letter_of(index, letter);
    draw_number(pitch, plane->pitch, "rise_in_12");
    draw_format(words, "%s  %s", letter, pitch);
    double width = 0;
    for (int attempt = 0; attempt < 2 && width == 0; attempt++) {
        /* The letter alone, where both have no room; the lines below say the rest. */
        const char *label = attempt == 0 ? words : letter;
        if (draw_words_width(label) + 4 <= wide && high >= DRAW_LINE
            && draw_words(&layout->draw, middle.x, middle.y + 4, ANCHOR_MIDDLE, label))
            width = draw_words_width(label);
    }
    if (width == 0) {
        draw_words(&layout->draw, middle.x + down.x * (high / 2 + 4),
                   middle.y + down.y * (high / 2 + 8) + 4, ANCHOR_MIDDLE, letter);
        return;
    }
    draw_number(words, plan_area_sqft(plane), "sqft");
    if (down.x == 0 && draw_words_width(words) + 34 <= wide && high >= 3 * DRAW_LINE) {
        draw_words(&layout->draw, middle.x, middle.y + 4 + DRAW_LINE, ANCHOR_MIDDLE, words);
        width = fmax(width, draw_words_width(words));
    }
    /* The arrow goes beside the label; in a hip's end, which slopes sideways, below it. */
    const double off = down.x == 0 ? width / 2 + 8 : 0, drop = down.x == 0 ? 0 : 12;
    const double length = fmin(high * 0.3, 14);
    if (width + 34 <= wide && length > 4)
        draw_arrow(&layout->draw,
                   (struct draw_point){middle.x - off - down.x * length,
                                       middle.y + drop - down.y * length},
                   (struct draw_point){middle.x - off + down.x * length,
                                       middle.y + drop + down.y * length},
                   PEN_LINE);
}

/* A dimension only where its words have room: the lines below say it too. */
static void measure_if_wide(struct layout *layout, struct draw_point from, struct draw_point to,
                            double feet)
{
    char words[DRAW_WORDS_MOST];
    draw_number(words, feet, "ft");
    const double length = hypot(to.x - from.x, to.y - from.y);
    if (from.y == to.y ? length > draw_words_width(words) : length > DRAW_LINE)
        draw_measure(&layout->draw, from, to, words);
}

/* A plane above or below the ridge, with its label and dimensions. (x, y) is the ridge's
 * left end on the paper. */
static void draw_sided(struct layout *layout, const struct block *block, size_t which, double x,
                       double y)
{
    const struct plan_plane *plane = &layout->plan->planes[block->planes[which]];
    const struct view view = {x, y, layout->scale, which == 0 ? 1 : -1};
    struct outline outline;
    outline_of(plane, &outline);
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
static void draw_end(struct layout *layout, const struct block *block, size_t which, double x,
                     double y)
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

static void draw_block(struct layout *layout, const struct block *block, double x, double y)
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

/* In rows from the left, as words in a paragraph. (x, y) is a block's upper left corner,
 * room for dimensions included. */
static void pack_blocks(struct layout *layout)
{
    double x = 2, y = 0, row = 0;
    for (size_t i = 0; i < layout->count; i++) {
        const struct block *block = &layout->blocks[i];
        const double width = (block->left + block->right) * layout->scale;
        const double high = (block->up + block->down) * layout->scale;
        const double cell = fmax(width, 28);
        if (x > 2 && x + cell + BESIDE > DRAW_WIDTH) {
            y += row;
            x = 2;
            row = 0;
        }
        draw_block(layout, block, x + (cell - width) / 2 + 2, y + AROUND);
        x += cell + BESIDE;
        row = fmax(row, high + 2 * AROUND);
    }
    layout->draw.floor = fmax(layout->draw.floor, y + row - AROUND + 4);
}

/* One scale for all blocks, so that planes can be compared. */
static double set_scale(struct layout *layout)
{
    double wide = 0, high = 0, together = 0;
    for (size_t i = 0; i < layout->count; i++) {
        const struct block *block = &layout->blocks[i];
        wide = fmax(wide, block->left + block->right);
        together += block->left + block->right;
        high = fmax(high, block->up + block->down);
    }
    const double scale = draw_scale(wide, ROOM, high, layout->count > 1 ? HIGH_OF_MANY : HIGH);
    /* Somewhat smaller, when all then stand in one row. */
    const double row = (DRAW_WIDTH - 6 - BESIDE * (double)layout->count) / fmax(together, 1);
    return row < scale && row > 0.6 * scale ? row : scale;
}

/* Lines below ------------------------------------------------------------------- */

static void describe_plane(const struct plan_plane *plane, size_t index, char out[DRAW_WORDS_MOST])
{
    char letter[3], pitch[DRAW_WORDS_MOST], eave[DRAW_WORDS_MOST], ridge[DRAW_WORDS_MOST];
    char run[DRAW_WORDS_MOST], area[DRAW_WORDS_MOST];
    letter_of(index, letter);
    draw_number(pitch, plane->pitch, "rise_in_12");
    draw_number(eave, plane->eave_ft, "ft");
    draw_number(ridge, plane->ridge_ft, "ft");
    draw_number(run, plane->run_ft, "ft");
    draw_number(area, plan_area_sqft(plane), "sqft");
    draw_format(out, "%s  %.60s: %.20s, eave %.20s, top %.20s, run %.20s, %.24s%s", letter,
                plane->name == NULL ? "plane" : plane->name, pitch, eave, ridge, run, area,
                is_known(plane) ? "" : "; not drawn");
}

/* The names alone, in one go. */
static void add_names(struct layout *layout)
{
    struct text names = TEXT_EMPTY;
    char letter[3];
    for (size_t i = 0; i < layout->plan->count; i++) {
        const char *name = layout->plan->planes[i].name;
        letter_of(i, letter);
        text_addf(&names, "%s%s %s", i > 0 ? "; " : "", letter, name == NULL ? "plane" : name);
    }
    draw_note(&layout->draw, text_string(&names));
    layout->draw.words.failed = layout->draw.words.failed || names.failed;
    text_free(&names);
}

/* Every plane in words, which also go into the description. */
static void add_lines(struct layout *layout, struct text *says)
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

static void add_keys(struct layout *layout)
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
    struct layout layout = {.plan = plan};
    struct text says = TEXT_EMPTY;
    draw_start(&layout.draw, sheet);
    make_blocks(&layout);
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
