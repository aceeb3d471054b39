/* nailing.c - where a deck is nailed how closely, see drawings.h. */
#include "draw/drawings.h"

#include <math.h>

enum { LEFT = 70, ROOM = 264, HIGH = 100, TOP = 26 };

struct zones {
    const struct nailing_drawing *nailing;
    struct draw draw;
    double eave, ridge, up, scale; /* feet, as drawn */
    double lean, start;            /* of the left side; of the leftmost corner */
    bool gable[2];                 /* left, right: a rake */
    double band;                   /* feet; 0: none is drawn */
    bool scaled;
};

/* Only high wind makes one: closer nails along the plane's edges. */
static bool has_band(const struct nailing_drawing *nailing)
{
    return isfinite(draw_amount_shown(&nailing->band))
           || isfinite(draw_amount_shown(&nailing->band_width));
}

/* A side counts as a rake only when it stands square to the eave: the lean tells hips
 * from rakes where the plane does not list which side is which. */
static void set_sides(struct zones *zones)
{
    const struct plan_plane *plane = &zones->nailing->plane;
    zones->lean = zones->scaled && !plan_is_notched(plane) ? plan_lean_left_ft(plane) : 0;
    zones->start = fmin(0, -zones->lean);
    const double right = zones->eave - zones->ridge - zones->lean;
    zones->gable[0] = plane->rakes > 0 && fabs(zones->lean) < 0.05;
    zones->gable[1] = plane->rakes > zones->gable[0] && fabs(right) < 0.05;
}

/* From the leftmost corner to the rightmost, whichever of eave and upper edge reaches
 * further. */
static double zones_width(const struct zones *zones)
{
    return fmax(zones->ridge, zones->eave - zones->lean) - zones->start;
}

static void set_sizes(struct zones *zones)
{
    const struct nailing_drawing *nailing = zones->nailing;
    const double width = draw_amount_shown(&nailing->band_width);
    const struct plan_plane *plane = &nailing->plane;
    zones->scaled = isfinite(plane->eave_ft) && isfinite(plane->ridge_ft)
                    && isfinite(nailing->up_ft) && nailing->up_ft > 0
                    && plane->eave_ft + plane->ridge_ft > 0;
    zones->ridge = zones->scaled ? plane->ridge_ft : 36;
    zones->eave = !zones->scaled ? 36 : plan_is_notched(plane) ? plane->ridge_ft : plane->eave_ft;
    zones->up = zones->scaled ? nailing->up_ft : 16;
    set_sides(zones);
    zones->band = !has_band(nailing) ? 0 : isfinite(width) ? width / 12 : zones->up / 4;
    /* The band's width is part of what is drawn to scale. */
    zones->scaled = zones->scaled && (isfinite(width) || !has_band(nailing));
    zones->scale = draw_scale(zones_width(zones), ROOM, zones->up, HIGH);
}

/* The point a share `across` of the plane's width, `up` feet from its eave. */
static struct draw_point point_at(const struct zones *zones, double across, double up)
{
    const double share = zones->up > 0 ? up / zones->up : 0;
    const double width = zones->eave + (zones->ridge - zones->eave) * share;
    const double left = -zones->lean * (1 - share) - zones->start;
    return (struct draw_point){LEFT + (left + across * width) * zones->scale,
                               TOP + (zones->up - up) * zones->scale};
}

/* A strip from one height to another, less so much at gable ends. */
static void draw_strip(struct zones *zones, double from, double to, double aside,
                       enum draw_fill fill)
{
    const double off = aside * zones->scale;
    struct draw_point corners[] = {point_at(zones, 0, from), point_at(zones, 1, from),
                                   point_at(zones, 1, to), point_at(zones, 0, to)};
    if (zones->gable[0])
        corners[0].x += off, corners[3].x += off;
    if (zones->gable[1])
        corners[1].x -= off, corners[2].x -= off;
    draw_shape(&zones->draw, corners, 4, PEN_LINE, fill);
}

/* Is anything left inside the band? */
static bool has_rest(const struct zones *zones)
{
    const double aside = zones->band * (zones->gable[0] + zones->gable[1]);
    return 2 * zones->band < zones->up && aside < fmin(zones->eave, zones->ridge) + 0.01;
}

/* The whole plane hatched first, the rest then laid over it; gable framing along the
 * rakes. */
static void draw_zones(struct zones *zones)
{
    const double band = zones->band, rest = fmax(zones->up - 2 * band, 0);
    draw_strip(zones, 0, zones->up, 0, band > 0 ? FILL_SLANT : FILL_PAPER);
    if (band > 0 && rest > 0 && has_rest(zones))
        draw_strip(zones, band, zones->ridge > 0.05 ? zones->up - band : zones->up, band,
                   FILL_PAPER);
    for (int side = 0; side < 2; side++)
        if (zones->gable[side])
            draw_line(&zones->draw, point_at(zones, side, 0), point_at(zones, side, zones->up),
                      PEN_HEAVY_DASH);
}

static void draw_sizes(struct zones *zones)
{
    char words[DRAW_WORDS_MOST];
    const struct nailing_drawing *nailing = zones->nailing;
    const struct draw_point left = point_at(zones, 0, 0), right = point_at(zones, 1, 0);
    const struct draw_point top = point_at(zones, 0.5, zones->up), low = point_at(zones, 0.5, 0);
    draw_words(&zones->draw, top.x, TOP - 8, ANCHOR_MIDDLE,
               zones->ridge > 0.05 ? "upper edge" : "top");
    draw_words(&zones->draw, low.x, low.y + 15, ANCHOR_MIDDLE, "eave");
    draw_number(words, zones->scaled ? zones->eave : NAN, "ft");
    draw_measure(&zones->draw, (struct draw_point){right.x, right.y + 22},
                 (struct draw_point){left.x, left.y + 22}, words);
    draw_number(words, nailing->up_ft, "ft");
    draw_measure(&zones->draw, (struct draw_point){LEFT - 9, left.y},
                 (struct draw_point){LEFT - 9, TOP}, words);
    if (zones->band > 0 && zones->band < zones->up) {
        const double x = point_at(zones, 0.7, zones->band / 2).x, up = zones->band * zones->scale;
        draw_number(words, draw_amount_shown(&nailing->band_width), "in");
        draw_measure(&zones->draw, (struct draw_point){x, left.y - up},
                     (struct draw_point){x, left.y}, words);
    }
}

/* mark: a pen's number, -1 and -2 for the two fills, 0 for a line of words alone. */
static void add_key(struct zones *zones, struct text *says, int mark, const char *what,
                    const struct draw_amount *amount)
{
    char spacing[DRAW_WORDS_MOST], words[DRAW_WORDS_MOST];
    draw_amount_words(spacing, amount, "in");
    draw_format(words, "%s: %.110s", what, spacing);
    if (mark == PEN_HEAVY_DASH)
        draw_key_pen(&zones->draw, PEN_HEAVY_DASH, words);
    else if (mark < 0)
        draw_key_fill(&zones->draw, mark == -1 ? FILL_SLANT : FILL_PAPER, words);
    else
        draw_note(&zones->draw, words);
    text_addf(says, " %s.", words);
}

static void add_keys(struct zones *zones, struct text *says)
{
    const struct nailing_drawing *nailing = zones->nailing;
    char words[DRAW_WORDS_MOST];
    if (zones->band > 0) {
        add_key(zones, says, -1, "Band, nails apart", &nailing->band);
        add_key(zones, says, 0, "Width of the band", &nailing->band_width);
    }
    add_key(zones, says, -2, zones->band > 0 ? "Rest, on rafters" : "On rafters between edges",
            &nailing->field);
    add_key(zones, says, 0, "Panel edges", &nailing->edge);
    if (zones->gable[0] || zones->gable[1])
        add_key(zones, says, PEN_HEAVY_DASH, "Gable framing", &nailing->gable);
    draw_format(words,
                zones->scaled ? "Plane: %.60s."
                              : "Plane: %.60s. Not to scale: a length or the band's "
                                "width is not known.",
                nailing->plane.name == NULL ? "?" : nailing->plane.name);
    draw_note(&zones->draw, words);
    if (plan_is_notched(&nailing->plane))
        draw_note(&zones->draw, "The wing that grows out of it is left out here.");
}

void nailing_draw(const struct nailing_drawing *nailing, const struct draw_sheet *sheet,
                  struct text *out)
{
    struct zones zones = {.nailing = nailing};
    struct text says = TEXT_EMPTY;
    char title[DRAW_WORDS_MOST];
    draw_start(&zones.draw, sheet);
    set_sizes(&zones);
    draw_zones(&zones);
    draw_sizes(&zones);
    if (zones.scaled)
        draw_scale_bar(&zones.draw, zones.scale, "ft");
    draw_format(title, "Nailing zones of the deck: %.60s",
                nailing->deck == NULL ? "deck" : nailing->deck);
    text_add(&says, "A plane of the roof with its nailing zones.");
    add_keys(&zones, &says);
    out->failed = out->failed || says.failed;
    draw_finish(&zones.draw, title, text_string(&says), out);
    text_free(&says);
}
