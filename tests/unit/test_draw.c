/* The drawings as they are written: escaped, well-formed, to scale. What they
 * look like in a browser is looked at by tests/pages/drawings.mjs. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "draw/drawings.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static const struct draw_sheet SHEET = {"t", false};

static void assert_near(double found, double wanted, double by)
{
    if (!(fabs(found - wanted) <= by))
        fail_msg("%g is not %g", found, wanted);
}

/* A reader of well-formed XML, as far as it is needed: elements that close in
 * order, quoted attributes without '<', known entities, one root. Returns NULL
 * when all is well, else where it is not. */
enum { DEEPEST = 16 };

static const char *entity_end(const char *at)
{
    static const char *const KNOWN[] = {"&amp;", "&lt;", "&gt;", "&quot;", "&#39;"};
    for (size_t i = 0; i < sizeof(KNOWN) / sizeof(KNOWN[0]); i++)
        if (strncmp(at, KNOWN[i], strlen(KNOWN[i])) == 0)
            return at + strlen(KNOWN[i]);
    return NULL;
}

static const char *tag_end(const char *at)
{
    while (*at != '\0' && *at != '>') {
        if (*at == '<')
            return NULL;
        if (*at != '"') {
            at++;
            continue;
        }
        for (at++; *at != '"';) {
            if (*at == '\0' || *at == '<')
                return NULL;
            at = *at == '&' ? entity_end(at) : at + 1;
            if (at == NULL)
                return NULL;
        }
        at++;
    }
    return *at == '>' ? at : NULL;
}

static const char *ill_formed(const char *at)
{
    const char *open[DEEPEST];
    size_t lengths[DEEPEST], depth = 0, roots = 0;
    while (*at != '\0') {
        if (*at == '&') {
            const char *end = entity_end(at);
            if (end == NULL)
                return at;
            at = end;
        } else if (*at != '<') {
            if (depth == 0 && *at != '\n')
                return at;
            at++;
        } else {
            const char *end = tag_end(at + 1);
            if (end == NULL)
                return at;
            const size_t length = strcspn(at + 1, " />");
            if (at[1] == '/') {
                const size_t closing = strcspn(at + 2, " >");
                if (depth == 0 || lengths[depth - 1] != closing
                    || strncmp(open[depth - 1], at + 2, closing) != 0)
                    return at;
                depth--;
            } else if (end[-1] != '/') {
                roots += depth == 0;
                if (depth == DEEPEST)
                    return at;
                open[depth] = at + 1;
                lengths[depth++] = length;
            }
            at = end + 1;
        }
    }
    return depth == 0 && roots == 1 ? NULL : at;
}

static void assert_well_formed(const struct text *out)
{
    assert_false(out->failed);
    const char *wrong = ill_formed(text_string(out));
    if (wrong != NULL)
        fail_msg("not well-formed at: %.80s", wrong);
}

static size_t count(const char *text, const char *what)
{
    size_t found = 0;
    for (; (text = strstr(text, what)) != NULL; text += strlen(what))
        found++;
    return found;
}

static void the_reader_itself(void **state)
{
    (void)state;
    assert_null(ill_formed("<a b=\"c &amp; d\"><e/>f &lt;</a>\n"));
    assert_non_null(ill_formed("<a><b></a></b>"));
    assert_non_null(ill_formed("<a>x & y</a>"));
    assert_non_null(ill_formed("<a b=\"<\"></a>"));
    assert_non_null(ill_formed("<a>"));
    assert_non_null(ill_formed("<a/><b></b><c></c>"));
}

static void whatever_is_written_is_escaped(void **state)
{
    (void)state;
    struct text out = TEXT_EMPTY;
    struct draw draw;
    draw_start(&draw, &SHEET);
    assert_true(draw_words(&draw, 4, 20, ANCHOR_START, "<b>&\"'"));
    draw_note(&draw, "</svg><script>alert(1)</script>\n\x1b[2J & more");
    draw_finish(&draw, "a <title> & \"quotes\"", "says </desc>", &out);
    assert_well_formed(&out);
    assert_null(strstr(text_string(&out), "<b>"));
    assert_null(strstr(text_string(&out), "<script"));
    assert_null(strchr(text_string(&out), '\x1b'));
    assert_non_null(strstr(text_string(&out), "&lt;b&gt;&amp;&quot;&#39;"));
    assert_non_null(strstr(text_string(&out), "role=\"img\""));
    assert_non_null(strstr(text_string(&out), "aria-labelledby=\"t-title t-desc\""));
    assert_non_null(strstr(text_string(&out), "a &lt;title&gt; &amp; &quot;quotes&quot;</title>"));
    text_free(&out);
}

static void words_never_share_a_place(void **state)
{
    (void)state;
    struct draw draw;
    draw_start(&draw, &SHEET);
    assert_true(draw_words(&draw, 100, 50, ANCHOR_MIDDLE, "one"));
    assert_false(draw_words(&draw, 102, 55, ANCHOR_MIDDLE, "two"));
    assert_true(draw_words(&draw, 100, 66, ANCHOR_MIDDLE, "two"));
    assert_false(draw_words(&draw, 338, 100, ANCHOR_START, "beyond the right side"));
    assert_false(draw_words(&draw, 4, 100, ANCHOR_END, "beyond the left side"));
    assert_false(draw_words(&draw, 100, 5, ANCHOR_START, "above the top"));
    draw_free(&draw);
}

/* Where there is no room at all, the words go below under a letter. */
static void crowded_words_go_below(void **state)
{
    (void)state;
    struct text out = TEXT_EMPTY;
    struct draw draw;
    draw_start(&draw, &SHEET);
    for (int i = 0; i < 12; i++) /* at the right side, where only a letter has room */
        draw_beside(&draw, (struct draw_point){330, 100}, "a dimension of some length, 12 in");
    draw_finish(&draw, "t", "d", &out);
    assert_well_formed(&out);
    assert_int_equal(count(text_string(&out), "some length"), 12);
    assert_non_null(strstr(text_string(&out), ">a = a dimension"));
    text_free(&out);
}

static void wider_words_are_reckoned_wider(void **state)
{
    (void)state;
    char words[64] = "";
    double before = 0;
    for (size_t i = 0; i < 60; i++) {
        words[i] = (char)('!' + i);
        words[i + 1] = '\0';
        const double width = draw_words_width(words);
        assert_true(width > before);
        before = width;
    }
    assert_true(draw_words_width("\xc3\xa9") >= draw_words_width("e"));
}

static void scales(void **state)
{
    (void)state;
    assert_near(draw_scale(50, 300, 20, 200), 6, 1e-9);
    assert_near(draw_scale(50, 300, 100, 200), 2, 1e-9);
    assert_near(draw_scale(0, 300, 0, 200), 1, 1e-9);
    double before = INFINITY;
    for (double size = 1; size < 2000; size *= 1.3) {
        const double scale = draw_scale(size, 300, size, 200);
        assert_true(scale < before && scale * size <= 200.0001);
        before = scale;
    }
    assert_near(draw_round_length(13), 10, 1e-9);
    assert_near(draw_round_length(26), 20, 1e-9);
    assert_near(draw_round_length(0.7), 0.5, 1e-9);
    before = 0;
    for (double most = 0.01; most < 1e5; most *= 1.1) {
        const double round = draw_round_length(most);
        assert_true(round <= most * 1.000001 && round > most / 2.6 && round >= before);
        before = round;
    }
}

static void amounts_in_words(void **state)
{
    (void)state;
    char words[DRAW_WORDS_MOST];
    draw_amount_words(words, &(struct draw_amount){4, 6, SENSE_AT_MOST}, "in");
    assert_string_equal(words, "at most 6 in; planned 4 in");
    draw_amount_words(words, &(struct draw_amount){NAN, 24, SENSE_AT_LEAST}, "in");
    assert_string_equal(words, "at least 24 in; planned ?");
    draw_amount_words(words, &(struct draw_amount){4, NAN, SENSE_NONE}, "in");
    assert_string_equal(words, "planned 4 in");
    draw_amount_words(words, &(struct draw_amount){NAN, NAN, SENSE_NONE}, "in");
    assert_string_equal(words, "?");
}

/* Corners of the first <line> after `from` whose pen is heavy and whole. */
static double heavy_line_length(const char *text)
{
    const char *at = text, *found = NULL;
    while ((at = strstr(at, "<line ")) != NULL) {
        const char *end = strchr(at, '>');
        const char *heavy = strstr(at, "stroke-width=\"2.4\"/>");
        if (heavy != NULL && heavy < end) {
            found = at;
            break;
        }
        at = end;
    }
    double x1, y1, x2, y2;
    assert_non_null(found);
    assert_int_equal(
        sscanf(found, "<line x1=\"%lf\" y1=\"%lf\" x2=\"%lf\" y2=\"%lf\"", &x1, &y1, &x2, &y2), 4);
    return hypot(x2 - x1, y2 - y1);
}

static struct text plan_text(const struct plan_plane *planes, size_t planes_count, double ridge_ft)
{
    struct text out = TEXT_EMPTY;
    const struct plan_drawing plan = {planes, planes_count, ridge_ft};
    plan_draw(&plan, &SHEET, &out);
    assert_well_formed(&out);
    return out;
}

/* Two planes that share all the ridge there is are drawn together; the ridge
 * is as long on paper as the scale says. */
static void a_gable_is_drawn_together(void **state)
{
    (void)state;
    const struct plan_plane planes[] = {
        {.name = "front", .pitch = 6, .eave_ft = 40, .ridge_ft = 40, .run_ft = 10},
        {.name = "back", .pitch = 6, .eave_ft = 40, .ridge_ft = 40, .run_ft = 10}};
    struct text out = plan_text(planes, 2, 40);
    assert_null(strstr(text_string(&out), "not in position"));
    assert_near(heavy_line_length(text_string(&out)), 276, 0.1); /* all the room */
    /* Each 40 x 10 x sqrt(1.25) sq ft. */
    assert_non_null(strstr(text_string(&out), "447.2 sq ft"));
    assert_non_null(strstr(text_string(&out), "894.4 sq ft"));
    text_free(&out);
}

static void planes_that_may_not_meet_stand_apart(void **state)
{
    (void)state;
    const struct plan_plane planes[] = {
        {.name = "a", .pitch = 6, .eave_ft = 40, .ridge_ft = 40, .run_ft = 10},
        {.name = "b", .pitch = 6, .eave_ft = 40, .ridge_ft = 40, .run_ft = 10}};
    struct text out = plan_text(planes, 2, 0); /* two sheds: no ridge */
    assert_non_null(strstr(text_string(&out), "not in position"));
    text_free(&out);
    out = plan_text(planes, 2, NAN);
    assert_non_null(strstr(text_string(&out), "not in position"));
    text_free(&out);
    const struct plan_plane four[] = {planes[0], planes[1], planes[0], planes[1]};
    out = plan_text(four, 4, 80); /* who meets whom is not known */
    assert_non_null(strstr(text_string(&out), "not in position"));
    text_free(&out);
}

/* A hip roof closes only when its lengths do. */
static void a_hip_roof_closes_or_stands_apart(void **state)
{
    (void)state;
    struct plan_plane planes[] = {
        {.name = "left", .pitch = 5, .eave_ft = 30, .ridge_ft = 0, .run_ft = 15},
        {.name = "front", .pitch = 5, .eave_ft = 50, .ridge_ft = 20, .run_ft = 15},
        {.name = "right", .pitch = 5, .eave_ft = 30, .ridge_ft = 0, .run_ft = 15},
        {.name = "back", .pitch = 5, .eave_ft = 50, .ridge_ft = 20, .run_ft = 15}};
    struct text out = plan_text(planes, 4, 20);
    assert_null(strstr(text_string(&out), "not in position"));
    assert_non_null(strstr(text_string(&out), "ridge or hip"));
    text_free(&out);
    planes[1].rakes = 1; /* the lengths close, but not what is listed */
    out = plan_text(planes, 4, 20);
    assert_non_null(strstr(text_string(&out), "not in position"));
    text_free(&out);
    planes[1].rakes = 0;
    planes[0].eave_ft = 28;
    out = plan_text(planes, 4, 20);
    assert_non_null(strstr(text_string(&out), "not in position"));
    text_free(&out);
}

static void what_is_not_known_is_said(void **state)
{
    (void)state;
    struct text out = TEXT_EMPTY;
    const struct draw_amount none = {NAN, NAN, SENSE_NONE};
    const struct plan_plane plane = {.eave_ft = NAN, .ridge_ft = NAN, .run_ft = NAN, .pitch = NAN};
    plan_draw(&(struct plan_drawing){&plane, 1, NAN}, &SHEET, &out);
    assert_non_null(strstr(text_string(&out), "not drawn"));
    assert_well_formed(&out);
    text_free(&out);
    nailing_draw(&(struct nailing_drawing){.plane = plane,
                                           .up_ft = NAN,
                                           .edge = none,
                                           .field = none,
                                           .gable = none,
                                           .band = none,
                                           .band_width = none},
                 &SHEET, &out);
    assert_non_null(strstr(text_string(&out), "Not to scale"));
    assert_well_formed(&out);
    text_free(&out);
    panel_draw(&(struct panel_drawing){NULL, NAN, NAN, NAN, none, none, none, none}, &SHEET, &out);
    assert_non_null(strstr(text_string(&out), "Not to scale"));
    assert_int_equal(count(text_string(&out), "<circle"), 0);
    assert_well_formed(&out);
    text_free(&out);
    eave_draw(&(struct eave_drawing){.pitch = NAN,
                                     .overhang_in = NAN,
                                     .wall_in = NAN,
                                     .inside_in = NAN,
                                     .barrier = true,
                                     .reach = none,
                                     .sheet_in = NAN,
                                     .starter_in = NAN,
                                     .head_lap = none,
                                     .metal = true,
                                     .down = none,
                                     .back = none,
                                     .spacing = none},
              &SHEET, &out);
    assert_non_null(strstr(text_string(&out), "overhang ?"));
    assert_non_null(strstr(text_string(&out), "Not to scale"));
    assert_well_formed(&out);
    text_free(&out);
    courses_draw(&(struct courses_drawing){NAN, none, none, none, 4, 6, NAN}, &SHEET, &out);
    assert_non_null(strstr(text_string(&out), "Not to scale"));
    assert_well_formed(&out);
    text_free(&out);
    attic_draw(&(struct attic_drawing){NULL, NAN, NAN, NAN, 0, none, none}, &SHEET, &out);
    assert_non_null(strstr(text_string(&out), "given in all: ?"));
    assert_well_formed(&out);
    text_free(&out);
}

/* Nails on paper: two ends at the edge spacing, rafters between at the field's,
 * as a carpenter counts a sheet: 48 in at 6 is 9 nails, at 12 is 5. */
static void panels_show_each_nail(void **state)
{
    (void)state;
    struct text out = TEXT_EMPTY;
    struct panel_drawing panel = {.deck = "roof",
                                  .length_in = 96,
                                  .width_in = 48,
                                  .support_in = 24,
                                  .edge = {6, 6, SENSE_AT_MOST},
                                  .field = {12, 12, SENSE_AT_MOST},
                                  .edge_distance = {0.375, NAN, SENSE_NONE},
                                  .gap = {NAN, NAN, SENSE_NONE}};
    panel_draw(&panel, &SHEET, &out);
    assert_int_equal(count(text_string(&out), "<circle"), 2 * 9 + 3 * 5);
    text_free(&out);
    size_t before = 2 * 49 + 3 * 49; /* at 1 in apart */
    for (double spacing = 2; spacing <= 24; spacing += 2) {
        panel.edge.planned = panel.field.planned = spacing;
        panel_draw(&panel, &SHEET, &out);
        const size_t nails = count(text_string(&out), "<circle");
        assert_true(nails <= before);
        before = nails;
        text_free(&out);
    }
}

/* The bars are as long as the areas they stand for. */
static void bars_of_air_are_to_scale(void **state)
{
    (void)state;
    struct text out = TEXT_EMPTY;
    attic_draw(
        &(struct attic_drawing){
            "a", 1000, 300, 200, 0, {NAN, 400, SENSE_AT_LEAST}, {NAN, 200, SENSE_AT_LEAST}},
        &SHEET, &out);
    assert_well_formed(&out);
    double widths[3] = {0};
    const char *at = strstr(text_string(&out), "points=\"4.00,");
    for (size_t i = 0; i < 3; i++) {
        double left, right, y;
        assert_non_null(at);
        assert_int_equal(sscanf(at, "points=\"%lf,%lf %lf,", &left, &y, &right), 3);
        widths[i] = right - left;
        at = strstr(at + 1, "points=\"");
    }
    assert_near(widths[0] / widths[1], 400.0 / 300, 0.01);
    assert_near(widths[1] / widths[2], 300.0 / 200, 0.01);
    assert_near(widths[1] + widths[2], 332, 0.1); /* the larger takes all the room */
    text_free(&out);
}

static void the_nails_asked_for_are_marked(void **state)
{
    (void)state;
    struct text out = TEXT_EMPTY;
    struct courses_drawing courses = {
        36, {5, 5, SENSE_AT_MOST}, {6, 6, SENSE_AT_LEAST}, {4, 6, SENSE_AT_LEAST}, 4, 6, NAN};
    courses_draw(&courses, &SHEET, &out);
    assert_non_null(strstr(text_string(&out), "4 nails in each shingle<"));
    assert_non_null(strstr(text_string(&out), "6 nails in each shingle: the least demanded here"));
    text_free(&out);
    courses.nails.demanded = 5;
    courses_draw(&courses, &SHEET, &out);
    assert_non_null(strstr(text_string(&out), "5 nails in each shingle: the least demanded here"));
    assert_null(strstr(text_string(&out), "4 nails in each shingle"));
    text_free(&out);
}

static void a_brief_drawing_leaves_out_what_a_table_says(void **state)
{
    (void)state;
    struct text whole = TEXT_EMPTY, brief = TEXT_EMPTY;
    const struct courses_drawing courses = {
        36, {5, 5, SENSE_AT_MOST}, {6, 6, SENSE_AT_LEAST}, {4, 4, SENSE_AT_LEAST}, 4, 6, NAN};
    courses_draw(&courses, &SHEET, &whole);
    courses_draw(&courses, &(struct draw_sheet){"t", true}, &brief);
    assert_non_null(strstr(strstr(text_string(&whole), "</desc>"), "Exposure: at most 5 in"));
    assert_null(strstr(strstr(text_string(&brief), "</desc>"), "Exposure: at most 5 in"));
    assert_non_null(strstr(text_string(&brief), "Exposure: at most 5 in")); /* for who hears it */
    text_free(&whole);
    text_free(&brief);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(the_reader_itself),
        cmocka_unit_test(whatever_is_written_is_escaped),
        cmocka_unit_test(words_never_share_a_place),
        cmocka_unit_test(crowded_words_go_below),
        cmocka_unit_test(wider_words_are_reckoned_wider),
        cmocka_unit_test(scales),
        cmocka_unit_test(amounts_in_words),
        cmocka_unit_test(a_gable_is_drawn_together),
        cmocka_unit_test(planes_that_may_not_meet_stand_apart),
        cmocka_unit_test(a_hip_roof_closes_or_stands_apart),
        cmocka_unit_test(what_is_not_known_is_said),
        cmocka_unit_test(panels_show_each_nail),
        cmocka_unit_test(bars_of_air_are_to_scale),
        cmocka_unit_test(the_nails_asked_for_are_marked),
        cmocka_unit_test(a_brief_drawing_leaves_out_what_a_table_says),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
