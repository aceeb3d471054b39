/* attic.c - air into and out of an attic, see drawings.h. */
#include "draw/drawings.h"

#include <math.h>

/* In the drawing's units (draw.h); the house is a sign, of one size whatever the attic. */
enum { LEFT = 4, ROOM = 332, BAR = 16, EAVE_Y = 96, TOP_Y = 34, CENTER = 170, HALF = 112 };

struct air {
    const struct attic_drawing *attic;
    struct draw draw;
    double scale; /* units per square inch */
};

/* What is not known has no bar; its number says "?". */
static double or_none(double value)
{
    return isfinite(value) ? value : 0;
}

/* Not known as soon as one of the three is not. */
static double given_sqin(const struct attic_drawing *attic)
{
    return attic->low_sqin + attic->high_sqin + attic->other_sqin;
}

/* The house, with arrows in at both eaves and out on both sides of the ridge. */
static void draw_house(struct air *air)
{
    char words[DRAW_WORDS_MOST], number[DRAW_WORDS_MOST];
    const struct draw_point roof[] = {
        {CENTER - HALF, EAVE_Y}, {CENTER, TOP_Y}, {CENTER + HALF, EAVE_Y}};
    draw_shape(&air->draw, roof, 3, PEN_LINE, FILL_PAPER);
    draw_line(&air->draw, (struct draw_point){CENTER - HALF + 20, EAVE_Y},
              (struct draw_point){CENTER - HALF + 20, EAVE_Y + 22}, PEN_LINE);
    draw_line(&air->draw, (struct draw_point){CENTER + HALF - 20, EAVE_Y},
              (struct draw_point){CENTER + HALF - 20, EAVE_Y + 22}, PEN_LINE);
    for (int side = -1; side <= 1; side += 2) {
        draw_arrow(&air->draw, (struct draw_point){CENTER + side * (HALF - 8), EAVE_Y + 18},
                   (struct draw_point){CENTER + side * (HALF - 26), EAVE_Y - 8}, PEN_LINE);
        draw_arrow(&air->draw, (struct draw_point){CENTER + side * 10, TOP_Y + 14},
                   (struct draw_point){CENTER + side * 22, TOP_Y - 12}, PEN_LINE);
    }
    draw_number(number, air->attic->high_sqin, "sqin");
    draw_format(words, "out high: %s", number);
    draw_words(&air->draw, CENTER, 14, ANCHOR_MIDDLE, words);
    draw_number(number, air->attic->low_sqin, "sqin");
    draw_format(words, "in low: %s", number);
    draw_words(&air->draw, CENTER, EAVE_Y + 16, ANCHOR_MIDDLE, words);
    draw_number(number, air->attic->area_sqft, "sqft");
    draw_format(words, "%s vented", number);
    draw_words(&air->draw, CENTER, EAVE_Y - 10, ANCHOR_MIDDLE, words);
    air->draw.floor = EAVE_Y + 26;
}

/* A heading, and a bar of hatched parts below it. */
static void draw_bar(struct air *air, const char *words, const double *parts,
                     const enum draw_fill *fills, size_t count)
{
    const double y = air->draw.floor + DRAW_LINE;
    double x = LEFT;
    draw_words(&air->draw, LEFT, y, ANCHOR_START, words);
    air->draw.floor = y + 6;
    for (size_t i = 0; i < count; i++) {
        const double width = or_none(parts[i]) * air->scale;
        if (width > 0)
            draw_box(&air->draw, (struct draw_area){x, y + 6, width, BAR}, PEN_LINE, fills[i]);
        x += width;
    }
    air->draw.floor = fmax(air->draw.floor, y + 6 + (x > LEFT ? BAR : 0)) + 4;
}

/* Demanded above given, to one scale: the longer of the two takes the width. */
static void draw_bars(struct air *air, struct text *says)
{
    static const enum draw_fill HOLLOW[] = {FILL_PAPER};
    static const enum draw_fill PARTS[] = {FILL_SLANT, FILL_DOTS, FILL_CROSS};
    const struct attic_drawing *attic = air->attic;
    const double parts[] = {attic->low_sqin, attic->high_sqin, attic->other_sqin};
    char words[DRAW_WORDS_MOST], number[DRAW_WORDS_MOST];
    const double most = fmax(or_none(attic->needed.demanded),
                             or_none(parts[0]) + or_none(parts[1]) + or_none(parts[2]));
    air->scale = most > 0 ? ROOM / most : 0;
    draw_number(number, attic->needed.demanded, "sqin");
    draw_format(words, "demanded in all: at least %s", number);
    draw_bar(air, words, &attic->needed.demanded, HOLLOW, 1);
    text_addf(says, " %s.", words);
    draw_number(number, given_sqin(attic), "sqin");
    draw_format(words, "given in all: %s", number);
    draw_bar(air, words, parts, PARTS, 3);
    text_addf(says, " %s.", words);
}

/* What the key says goes into the description too: a drawing that is not seen is read
 * aloud. */
static void add_key(struct air *air, struct text *says, enum draw_fill fill, const char *what,
                    double value)
{
    char words[DRAW_WORDS_MOST], number[DRAW_WORDS_MOST];
    draw_number(number, value, "sqin");
    draw_format(words, "%s: %s", what, number);
    draw_key_fill(&air->draw, fill, words);
    text_addf(says, " %s.", words);
}

static void add_keys(struct air *air, struct text *says)
{
    const struct attic_drawing *attic = air->attic;
    char words[DRAW_WORDS_MOST], number[DRAW_WORDS_MOST];
    add_key(air, says, FILL_SLANT, "low, at the eaves", attic->low_sqin);
    add_key(air, says, FILL_DOTS, "high, near the ridge", attic->high_sqin);
    if (attic->other_sqin > 0)
        add_key(air, says, FILL_CROSS, "of which is not said whether low or high",
                attic->other_sqin);
    if (isfinite(attic->low.demanded)) {
        draw_number(number, attic->low.demanded, "sqin");
        draw_format(words, "Of the low ones is demanded: at least %s", number);
        draw_note(&air->draw, words);
        text_addf(says, " %s.", words);
    }
    if (!isfinite(given_sqin(attic)))
        draw_note(&air->draw, "A vent's area is not known: what is not known is not drawn.");
    draw_note(&air->draw, "Net free area by the vents' labels; fans are not counted. Bars to one "
                          "scale, the house not to scale.");
}

void attic_draw(const struct attic_drawing *attic, const struct draw_sheet *sheet, struct text *out)
{
    struct air air = {.attic = attic};
    struct text says = TEXT_EMPTY;
    char title[DRAW_WORDS_MOST];
    draw_start(&air.draw, sheet);
    draw_format(title, "Air through the attic: %.80s", attic->name == NULL ? "attic" : attic->name);
    text_add(&says, "Air enters low at the eaves and leaves high at the ridge.");
    draw_house(&air);
    draw_bars(&air, &says);
    add_keys(&air, &says);
    out->failed = out->failed || says.failed;
    draw_finish(&air.draw, title, text_string(&says), out);
    text_free(&says);
}
