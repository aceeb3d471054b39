/* courses.c - courses of shingles and where nails go, see drawings.h. */
#include "draw/drawings.h"

#include <math.h>

/* In the drawing's units; a few courses are enough to show the pattern. */
enum { LEFT = 8, ROOM = 258, COURSES = 3, NAILS_MOST = 40 };

/* More than two strips, so that two joints of one course are seen. */
static const double SHOWN_STRIPS = 2.3;

struct laid {
    const struct courses_drawing *courses;
    struct draw draw;
    double strip, exposure, offset, end, scale; /* inches, as drawn */
    bool scaled;
};

/* A size that is not known is drawn as usual, and the drawing says that it is not to
 * scale. */
static double or_else(struct laid *laid, double value, double other)
{
    if (isfinite(value) && value > 0)
        return value;
    laid->scaled = false;
    return other;
}

/* The usual strip is 36 in; exposure and offset then are shares of it that look right. */
static void set_sizes(struct laid *laid)
{
    const struct courses_drawing *courses = laid->courses;
    laid->scaled = true;
    laid->strip = or_else(laid, courses->strip_in, 36);
    laid->exposure = or_else(laid, draw_amount_shown(&courses->exposure), laid->strip / 7);
    laid->offset = or_else(laid, draw_amount_shown(&courses->offset), laid->strip / 6);
    laid->end = isfinite(courses->end_in) ? courses->end_in : laid->strip / 36;
    laid->scale = draw_scale(laid->strip * SHOWN_STRIPS, ROOM, 0, 0);
}

static double x_at(const struct laid *laid, double inches)
{
    return LEFT + inches * laid->scale;
}

/* The first joint of a course: each is set over by the offset. */
static double first_joint(const struct laid *laid, int course)
{
    return fmod(laid->strip * 0.15 + course * laid->offset, laid->strip);
}

static double shown_in(const struct laid *laid)
{
    return laid->strip * SHOWN_STRIPS;
}

static void draw_joints(struct laid *laid, int course, double top, double bottom)
{
    for (double x = first_joint(laid, course); x < shown_in(laid); x += laid->strip)
        draw_line(&laid->draw, (struct draw_point){x_at(laid, x), top},
                  (struct draw_point){x_at(laid, x), bottom}, PEN_LINE);
}

/* Evenly from end to end of each strip: where exactly, the wrapper says. */
static void draw_nails(struct laid *laid, double count, double y)
{
    const double whole = laid->strip - 2 * laid->end;
    for (double x = first_joint(laid, COURSES - 1) - laid->strip; x < shown_in(laid);
         x += laid->strip)
        for (int i = 0; i < count && i < NAILS_MOST; i++) {
            const double nail = x + laid->end + (count > 1 ? whole * i / (count - 1) : whole / 2);
            if (nail > 0 && nail < shown_in(laid))
                draw_dot(&laid->draw, (struct draw_point){x_at(laid, nail), y}, 2.2);
        }
}

/* The courses from the top down: the upper one whole, not yet covered. Returns
 * where the lowest ends. */
static double draw_pattern(struct laid *laid, double count, double top)
{
    const double step = laid->exposure * laid->scale, right = x_at(laid, shown_in(laid));
    /* Lower end of the course above, and the nail line just over it. At least 4 units
     * apart, or the dots would sit on the line. */
    const double butt = top + step * 1.1, nails = butt - fmax(0.1 * step, 4);
    draw_box(&laid->draw, (struct draw_area){LEFT, top, right - LEFT, step * 2.1}, PEN_THIN,
             FILL_PAPER);
    draw_line(&laid->draw, (struct draw_point){LEFT, butt}, (struct draw_point){right, butt},
              PEN_DOT);
    draw_line(&laid->draw, (struct draw_point){LEFT, nails}, (struct draw_point){right, nails},
              PEN_DASH);
    draw_joints(laid, COURSES - 1, top, butt + step);
    draw_nails(laid, count, nails);
    for (int course = COURSES - 2; course >= 0; course--) {
        const double y = butt + step * (COURSES - 1 - course);
        draw_box(&laid->draw, (struct draw_area){LEFT, y, right - LEFT, step}, PEN_LINE,
                 FILL_PAPER);
        draw_joints(laid, course, y, y + step);
    }
    return butt + step * COURSES;
}

/* Dimensions go to the lowest course, where nothing else stands beside them. */
static void draw_sizes(struct laid *laid, double bottom)
{
    char words[DRAW_WORDS_MOST];
    const struct courses_drawing *courses = laid->courses;
    const double step = laid->exposure * laid->scale, right = x_at(laid, shown_in(laid));
    const double low = x_at(laid, first_joint(laid, 0) + laid->strip);
    const double next = low + laid->offset * laid->scale;
    draw_number(words, draw_amount_shown(&courses->exposure), "in");
    draw_measure(&laid->draw, (struct draw_point){right + 8, bottom - step},
                 (struct draw_point){right + 8, bottom}, words);
    if (next < right) {
        draw_line(&laid->draw, (struct draw_point){next, bottom - step},
                  (struct draw_point){next, bottom + 12}, PEN_DOT);
        draw_line(&laid->draw, (struct draw_point){low, bottom},
                  (struct draw_point){low, bottom + 12}, PEN_DOT);
        draw_number(words, draw_amount_shown(&courses->offset), "in");
        draw_measure(&laid->draw, (struct draw_point){next, bottom + 10},
                     (struct draw_point){low, bottom + 10}, words);
    }
    const double first = x_at(laid, first_joint(laid, 0));
    draw_number(words, courses->strip_in, "in");
    draw_measure(&laid->draw, (struct draw_point){low, bottom + 34},
                 (struct draw_point){first, bottom + 34}, words);
}

/* The demanded count before the planned one: that is what to nail by. */
static double asked_nails(const struct courses_drawing *courses)
{
    return isfinite(courses->nails.demanded) ? courses->nails.demanded : courses->nails.planned;
}

static bool is_number(double a, double b)
{
    return isfinite(a) && isfinite(b) && fabs(a - b) < 0.5;
}

static void draw_titled(struct laid *laid, double count, bool last)
{
    char words[DRAW_WORDS_MOST], nails[DRAW_WORDS_MOST];
    const double top = laid->draw.floor + 22;
    draw_number(nails, count, "nails");
    draw_format(words, "%s in each shingle%s", nails,
                !is_number(count, asked_nails(laid->courses)) ? ""
                : isfinite(laid->courses->nails.demanded)     ? ": the least demanded here"
                                                              : ": planned here");
    draw_words(&laid->draw, LEFT, top - 6, ANCHOR_START, words);
    const double bottom = draw_pattern(laid, count, top);
    if (last)
        draw_sizes(laid, bottom);
}

/* The usual pattern and the one for steep or windy roofs, one below the other; or the
 * job's own when it is neither. */
static void draw_patterns(struct laid *laid)
{
    const struct courses_drawing *courses = laid->courses;
    const double job = asked_nails(courses);
    const bool usual = !isfinite(job) || is_number(job, courses->few)
                       || is_number(job, courses->many);
    if (!usual)
        draw_titled(laid, job, true);
    else {
        if (isfinite(courses->few))
            draw_titled(laid, courses->few,
                        !isfinite(courses->many) || is_number(courses->few, courses->many));
        if (isfinite(courses->many) && !is_number(courses->few, courses->many))
            draw_titled(laid, courses->many, true);
    }
}

static void add_key(struct laid *laid, struct text *says, const char *what,
                    const struct draw_amount *amount, const char *unit)
{
    char size[DRAW_WORDS_MOST], words[DRAW_WORDS_MOST];
    draw_amount_words(size, amount, unit);
    draw_format(words, "%s: %.120s", what, size);
    draw_detail(&laid->draw, words);
    text_addf(says, " %s.", words);
}

static void add_keys(struct laid *laid, struct text *says)
{
    const struct courses_drawing *courses = laid->courses;
    draw_key_pen(&laid->draw, PEN_DASH, "nail line: the wrapper shows where");
    draw_key_pen(&laid->draw, PEN_DOT, "lower end of the next course");
    add_key(laid, says, "Exposure", &courses->exposure, "in");
    add_key(laid, says, "Offset of joints", &courses->offset, "in");
    add_key(laid, says, "Nails", &courses->nails, "nails");
    add_key(laid, says, "Length of a shingle",
            &(struct draw_amount){courses->strip_in, NAN, SENSE_NONE}, "in");
    draw_note(&laid->draw, laid->scaled
                               ? "To scale, but the nails: place them as the wrapper shows."
                               : "Not to scale: a size is not known. Place nails as the wrapper "
                                 "shows.");
}

void courses_draw(const struct courses_drawing *courses, const struct draw_sheet *sheet,
                  struct text *out)
{
    struct laid laid = {.courses = courses};
    struct text says = TEXT_EMPTY;
    draw_start(&laid.draw, sheet);
    set_sizes(&laid);
    draw_patterns(&laid);
    if (laid.scaled)
        draw_scale_bar(&laid.draw, laid.scale, "in");
    text_add(&says, "Courses of shingles with their joints and nails.");
    add_keys(&laid, &says);
    out->failed = out->failed || says.failed;
    draw_finish(&laid.draw, "Courses of shingles and their nails", text_string(&says), out);
    text_free(&says);
}
