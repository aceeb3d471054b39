/* eave.c - a cut through the eave, see drawings.h. */
#include "draw/drawings.h"

#include "trade/geometry.h"

#include <math.h>

enum { /* units, off the deck where not said */
       RAFTER = -13,
       DECK = 5,
       METAL = 7,
       BARRIER = 9,
       SHEET = 14,
       LAP = 22,
       REACH_LEAST = 36,
       REACH_PLANNED = 52,
       WALL_DOWN = 34,
       RIGHT = 12,
       HIGH = 150,
       SHEETS_MOST = 60,
};

/* The slope climbs to the right from the eave's edge. Sizes along it are level inches
 * times factor. */
struct cut {
    const struct eave_drawing *eave;
    struct draw draw;
    double overhang, wall, inside, extent; /* level inches, as drawn */
    double along, up;                      /* of a unit along the slope */
    double factor, left, base, scale;
    bool scaled;
};

/* An unknown size is drawn as usual; the drawing then says that it is not to scale. */
static double or_else(struct cut *cut, double value, double other)
{
    if (isfinite(value))
        return value;
    cut->scaled = false;
    return other;
}

/* The longer of planned and demanded, along the slope: both must be on the sheet. */
static double reach_in(const struct cut *cut)
{
    return fmax(isfinite(cut->eave->reach.planned) ? cut->eave->reach.planned : 0,
                isfinite(cut->eave->reach.demanded) ? cut->eave->reach.demanded : 0);
}

/* Where the level distance inside begins. */
static double inside_from(const struct cut *cut)
{
    return cut->overhang + (cut->eave->wall_counts ? cut->wall : 0);
}

static void set_sizes(struct cut *cut)
{
    const struct eave_drawing *eave = cut->eave;
    cut->scaled = true;
    const double pitch = or_else(cut, eave->pitch, 5);
    cut->overhang = or_else(cut, eave->overhang_in, 12);
    cut->wall = or_else(cut, eave->wall_in, 6);
    cut->inside = isfinite(eave->inside_in) ? eave->inside_in : 0;
    cut->factor = trade_slope_factor(pitch);
    cut->along = 1 / cut->factor;
    cut->up = pitch / 12 / cut->factor;
    const double reach = eave->barrier ? reach_in(cut) / cut->factor : 0;
    /* A little past the farthest thing to be shown, and at least 40 in, so that there is
     * a roof to see. */
    cut->extent = fmax(fmax(inside_from(cut) + cut->inside, reach) + 8, 40);
    /* Dimensions stand off the deck, square to it: on a steep roof that takes room at the
     * left. */
    const double off = eave->barrier ? REACH_PLANNED + 6 : LAP + 8;
    cut->left = 12 + off * cut->up;
    cut->scale = draw_scale(cut->extent, DRAW_WIDTH - cut->left - RIGHT + RAFTER * cut->up,
                            cut->extent * pitch / 12, HIGH);
    /* The highest is the sheet at the far end, or the end of a dimension. */
    const double rise = pitch / 12 * cut->scale;
    cut->base = 18
                + fmax(cut->extent * rise + (LAP + 6) * cut->along,
                       eave->barrier ? reach * rise + (REACH_PLANNED + 6) * cut->along : 0);
}

/* The point over a level distance from the eave, so far off the deck. */
static struct draw_point point_at(const struct cut *cut, double level, double off)
{
    const double length = level * cut->factor * cut->scale;
    return (struct draw_point){cut->left + length * cut->along - off * cut->up,
                               cut->base - length * cut->up - off * cut->along};
}

/* A length up the slope as the level distance below it. */
static double level_of(const struct cut *cut, double up_slope)
{
    return up_slope / cut->factor;
}

/* A layer between two distances off the deck, from one level distance to another. */
static void draw_band(struct cut *cut, double from, double to, double low, double high,
                      enum draw_pen pen, enum draw_fill fill)
{
    const struct draw_point corners[] = {point_at(cut, from, low), point_at(cut, to, low),
                                         point_at(cut, to, high), point_at(cut, from, high)};
    draw_shape(&cut->draw, corners, 4, pen, fill);
}

/* Where the wall is cut off below. */
static double floor_of(const struct cut *cut)
{
    return cut->base + WALL_DOWN - RAFTER * (cut->factor - 1);
}

/* Plumb, unlike all else here; its top follows the underside of the rafters. The soffit
 * runs level from it to the eave's edge. */
static void draw_wall(struct cut *cut)
{
    const double outer = cut->overhang, inner = cut->overhang + cut->wall;
    const double under = RAFTER * cut->factor; /* straight down, not square to the slope */
    const double rise = cut->up / cut->along;
    const double x = cut->left + outer * cut->scale, far = cut->left + inner * cut->scale;
    const struct draw_point corners[] = {
        {x, cut->base - outer * rise * cut->scale - under},
        {far, cut->base - inner * rise * cut->scale - under},
        {far, floor_of(cut)},
        {x, floor_of(cut)},
    };
    draw_shape(&cut->draw, corners, 4, PEN_LINE, FILL_BACKSLANT);
    const double soffit = cut->base - under;
    draw_line(&cut->draw, (struct draw_point){cut->left, soffit}, (struct draw_point){x, soffit},
              PEN_LINE);
    draw_line(&cut->draw, (struct draw_point){cut->left, cut->base},
              (struct draw_point){cut->left, soffit}, PEN_LINE);
}

/* Each sheet leans a little, from over the one below it down to the deck; without a width
 * and a lap that are known it is one line. */
static void draw_sheets(struct cut *cut)
{
    const double width = cut->eave->sheet_in, lap = draw_amount_shown(&cut->eave->head_lap);
    const double whole = cut->extent * cut->factor;
    if (!isfinite(width) || !isfinite(lap) || lap >= width) {
        draw_line(&cut->draw, point_at(cut, 0, SHEET), point_at(cut, cut->extent, SHEET), PEN_LINE);
        return;
    }
    int count = 0;
    for (double from = 0; from < whole && count < SHEETS_MOST; from += width - lap, count++) {
        const double to = fmin(from + width, whole);
        draw_line(&cut->draw, point_at(cut, level_of(cut, from), SHEET + 4),
                  point_at(cut, level_of(cut, to), SHEET + 4 - 4 * (to - from) / width), PEN_LINE);
    }
    if (width < whole) {
        char words[DRAW_WORDS_MOST], number[DRAW_WORDS_MOST];
        draw_number(number, lap, "in");
        draw_format(words, "lap %s", number);
        draw_measure(&cut->draw, point_at(cut, level_of(cut, width - lap), LAP),
                     point_at(cut, level_of(cut, width), LAP), words);
    }
}

/* Over or under the underlayment as planned; a short kick at the bottom leads water off. */
static void draw_metal(struct cut *cut)
{
    const double off = cut->eave->under_metal ? SHEET + 7 : METAL;
    const double back = draw_amount_shown(&cut->eave->back);
    const double down = draw_amount_shown(&cut->eave->down);
    if (!cut->eave->metal)
        return;
    const double reach = isfinite(back) ? back : 2;
    const struct draw_point edge = point_at(cut, 0, off);
    const double drop = fmax((isfinite(down) ? down : 0.5) * cut->scale, 5) + (cut->base - edge.y);
    draw_line(&cut->draw, edge, point_at(cut, level_of(cut, reach), off), PEN_HEAVY);
    draw_line(&cut->draw, edge, (struct draw_point){edge.x, edge.y + drop}, PEN_HEAVY);
    draw_line(&cut->draw, (struct draw_point){edge.x, edge.y + drop},
              (struct draw_point){edge.x - 4, edge.y + drop + 3}, PEN_HEAVY);
}

/* A dimension up the slope, its words above the slope's left. */
static void measure_up(struct cut *cut, double length, double off, const char *words)
{
    const struct draw_point from = point_at(cut, 0, off),
                            to = point_at(cut, level_of(cut, length), off);
    const struct draw_point ends[] = {from, to};
    draw_line(&cut->draw, from, to, PEN_THIN);
    for (size_t i = 0; i < 2; i++)
        draw_line(
            &cut->draw, (struct draw_point){ends[i].x - 4 * cut->up, ends[i].y - 4 * cut->along},
            (struct draw_point){ends[i].x + 4 * cut->up, ends[i].y + 4 * cut->along}, PEN_THIN);
    /* From the upper end down, until the words find a free place. */
    for (int share = 9; share > 2; share--) {
        const double x = from.x + (to.x - from.x) * share / 10;
        const double y = from.y + (to.y - from.y) * share / 10;
        if (draw_words(&cut->draw, x - 4, y - 4, ANCHOR_END, words))
            return;
    }
    draw_beside(&cut->draw, (struct draw_point){(from.x + to.x) / 2, (from.y + to.y) / 2}, words);
}

/* The planned and the least reach each have their dimension line, at their own height. */
static void draw_barrier(struct cut *cut)
{
    const struct draw_amount *reach = &cut->eave->reach;
    char words[DRAW_WORDS_MOST], number[DRAW_WORDS_MOST];
    const double shown = draw_amount_shown(reach);
    if (!cut->eave->barrier)
        return;
    if (shown > 0)
        draw_band(cut, 0, level_of(cut, shown), BARRIER, BARRIER + 3, PEN_LINE, FILL_INK);
    if (isfinite(reach->planned) && reach->planned > 0) {
        draw_number(number, reach->planned, "in");
        draw_format(words, "planned %s", number);
        measure_up(cut, reach->planned, REACH_PLANNED, words);
    }
    if (isfinite(reach->demanded) && reach->demanded > 0) {
        draw_number(number, reach->demanded, "in");
        draw_format(words, "at least %s", number);
        measure_up(cut, reach->demanded, REACH_LEAST, words);
    }
}

/* Level, below the wall; `known` is what the words say, which may be "?" where something
 * was drawn all the same. */
static void measure_level(struct cut *cut, double from, double to, double known, double y,
                          const char *what)
{
    char words[DRAW_WORDS_MOST], number[DRAW_WORDS_MOST];
    const double left = cut->left + from * cut->scale, right = cut->left + to * cut->scale;
    draw_number(number, known, "in");
    draw_format(words, "%s %s", what, number);
    draw_measure(&cut->draw, (struct draw_point){right, y}, (struct draw_point){left, y}, words);
}

/* Overhang, wall, and from where to where the distance inside is counted. */
static void draw_level_sizes(struct cut *cut)
{
    const struct eave_drawing *eave = cut->eave;
    const double y = floor_of(cut) + 10, inner = cut->overhang + cut->wall;
    draw_line(&cut->draw, (struct draw_point){cut->left, cut->base + 18},
              (struct draw_point){cut->left, y + 4}, PEN_DASH);
    if (cut->overhang > 0)
        measure_level(cut, 0, cut->overhang, eave->overhang_in, y, "overhang");
    measure_level(cut, cut->overhang, inner, eave->wall_in, y + 26, "wall");
    if (cut->inside <= 0)
        return;
    const double from = inside_from(cut), to = from + cut->inside;
    const double x = cut->left + to * cut->scale;
    draw_line(&cut->draw, point_at(cut, to, BARRIER), (struct draw_point){x, y + 4}, PEN_DASH);
    measure_level(cut, from, to, eave->inside_in, y, "inside");
}

static void draw_pitch(struct cut *cut)
{
    char words[DRAW_WORDS_MOST];
    draw_number(words, cut->eave->pitch, "rise_in_12");
    /* A triangle under the rafter, at the right. */
    const struct draw_point tip = point_at(cut, cut->extent * 0.97, RAFTER - 8);
    const double run = 30, rise = run * cut->up / cut->along;
    if (rise > 60 || tip.y + rise + DRAW_LINE > floor_of(cut)) {
        draw_words(&cut->draw, tip.x, tip.y + DRAW_LINE, ANCHOR_END, words);
        return;
    }
    const struct draw_point corners[] = {{tip.x - run, tip.y + rise}, tip, {tip.x, tip.y + rise}};
    draw_shape(&cut->draw, corners, 3, PEN_THIN, FILL_NONE);
    draw_words(&cut->draw, tip.x, tip.y + rise + 13, ANCHOR_END, words);
}

/* A line after a sample of the pen or the fill; PEN_NONE and FILL_NONE: none. */
static void add_key(struct cut *cut, struct text *says, enum draw_pen pen, enum draw_fill fill,
                    const char *what, const struct draw_amount *amount)
{
    char size[DRAW_WORDS_MOST], words[DRAW_WORDS_MOST];
    draw_amount_words(size, amount, "in");
    draw_format(words, "%s: %.120s", what, size);
    if (fill != FILL_NONE)
        draw_key_fill(&cut->draw, fill, words);
    else if (pen != PEN_NONE)
        draw_key_pen(&cut->draw, pen, words);
    else if (isfinite(draw_amount_shown(amount)))
        draw_detail(&cut->draw, words);
    else
        return;
    text_addf(says, " %s.", words);
}

static void add_metal_keys(struct cut *cut, struct text *says)
{
    const struct eave_drawing *eave = cut->eave;
    if (!eave->metal)
        return;
    const char *lies = eave->over_metal    ? "drip edge, the underlayment over it"
                       : eave->under_metal ? "drip edge, over the underlayment"
                                           : "drip edge; over or under it: not known";
    draw_key_pen(&cut->draw, PEN_HEAVY, lies);
    text_addf(says, " %s.", lies);
    add_key(cut, says, PEN_NONE, FILL_NONE, "Drip edge down", &eave->down);
    add_key(cut, says, PEN_NONE, FILL_NONE, "Drip edge back", &eave->back);
    add_key(cut, says, PEN_NONE, FILL_NONE, "Its nails apart", &eave->spacing);
}

static void add_keys(struct cut *cut, struct text *says)
{
    const struct eave_drawing *eave = cut->eave;
    const struct draw_amount starter = {eave->starter_in, NAN, SENSE_NONE};
    if (eave->barrier)
        add_key(cut, says, PEN_NONE, FILL_INK, "ice barrier", &eave->reach);
    add_key(cut, says, PEN_LINE, FILL_NONE, "underlayment, lap", &eave->head_lap);
    add_key(cut, says, PEN_NONE, FILL_NONE, "Starter strip", &starter);
    add_metal_keys(cut, says);
    draw_note(&cut->draw, cut->scaled ? "Lengths to scale, thicknesses not."
                                      : "Not to scale: a size is not known.");
}

void eave_draw(const struct eave_drawing *eave, const struct draw_sheet *sheet, struct text *out)
{
    struct cut cut = {.eave = eave};
    struct text says = TEXT_EMPTY;
    char title[DRAW_WORDS_MOST];
    draw_start(&cut.draw, sheet);
    set_sizes(&cut);
    draw_wall(&cut);
    draw_band(&cut, 0, cut.extent, RAFTER, 0, PEN_THIN, FILL_PAPER);
    draw_band(&cut, 0, cut.extent, 0, DECK, PEN_LINE, FILL_SLANT);
    draw_barrier(&cut);
    draw_level_sizes(&cut);
    draw_metal(&cut);
    draw_sheets(&cut);
    draw_pitch(&cut);
    if (cut.scaled)
        draw_scale_bar(&cut.draw, cut.scale, "in");
    draw_format(title, "Cut through the eave: %.80s", eave->name == NULL ? "eave" : eave->name);
    text_add(&says, "Wall, overhang, deck and what lies on it, seen from the side.");
    add_keys(&cut, &says);
    out->failed = out->failed || says.failed;
    draw_finish(&cut.draw, title, text_string(&says), out);
    text_free(&says);
}
