/* Amounts in words, and scales. */
#include "draw/draw.h"

#include "base/number.h"
#include "draw/draw_parts.h"

#include <math.h>

/* A plan is drawn where there is one: it is what will be built. */
double draw_amount_shown(const struct draw_amount *amount)
{
    return isfinite(amount->planned) ? amount->planned : amount->demanded;
}

void draw_number(char out[DRAW_WORDS_MOST], double value, const char *unit)
{
    char number[96];
    if (!isfinite(value)) {
        draw_format(out, "?");
        return;
    }
    number_write_unit(value, unit, number);
    draw_format(out, "%s", number);
}

static const char *sense_words(enum sense sense)
{
    if (sense == SENSE_NONE || sense == SENSE_EQUALS)
        return "exactly";
    return sense == SENSE_AT_LEAST ? "at least" : "at most";
}

void draw_amount_words(char out[DRAW_WORDS_MOST], const struct draw_amount *amount,
                       const char *unit)
{
    char planned[DRAW_WORDS_MOST], demanded[DRAW_WORDS_MOST];
    draw_number(planned, amount->planned, unit);
    draw_number(demanded, amount->demanded, unit);
    if (!isfinite(amount->demanded))
        draw_format(out, isfinite(amount->planned) ? "planned %s" : "%s", planned);
    else
        draw_format(out, "%s %s; planned %s", sense_words(amount->sense), demanded, planned);
}

/* Scales -------------------------------------------------------------------- */

/* The smaller of the two scales that fit the room and the height; 1 when neither bounds. */
double draw_scale(double size, double room, double other, double height)
{
    double scale = INFINITY;
    if (size > 0)
        scale = room / size;
    if (other > 0)
        scale = fmin(scale, height / other);
    return isfinite(scale) ? scale : 1;
}

/* 1, 2 or 5 times a power of ten. */
double draw_round_length(double most)
{
    if (!(most > 0) || !isfinite(most))
        return 1;
    const double power = pow(10, floor(log10(most)));
    return power * (most >= 5 * power ? 5 : most >= 2 * power ? 2 : 1);
}

/* About 70 units long; half ink, half paper, as on maps. */
void draw_scale_bar(struct draw *draw, double one, const char *unit)
{
    char words[DRAW_WORDS_MOST], length[DRAW_WORDS_MOST];
    const double bar = draw_round_length(70 / one), y = draw->floor + 12;
    const double left = DRAW_EDGE + 2, right = left + bar * one;
    draw_number(length, bar, unit);
    draw_format(words, "%s, to scale", length);
    draw_box(draw, (struct draw_area){left, y - 2, (right - left) / 2, 4}, PEN_THIN, FILL_INK);
    draw_box(draw, (struct draw_area){left + (right - left) / 2, y - 2, (right - left) / 2, 4},
             PEN_THIN, FILL_PAPER);
    draw_words(draw, right + 6, y + 4, ANCHOR_START, words);
}
