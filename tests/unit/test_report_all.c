/* How a result reads in full on a terminal. */
#include "report/report.h"

#include "base/utf8.h"
#include "report/wrap.h"
#include "sample_result.h"
#include "support/report_words.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>

#include <cmocka.h>

static char *written(const struct result *result, bool colour)
{
    struct text out = TEXT_EMPTY;
    report_text_all(result, colour, &out);
    assert_false(out.failed);
    assert_non_null(out.bytes);
    return out.bytes;
}

static void everything_worst_first(void **state)
{
    (void)state;
    static const char *const ORDER[] = {
        "Blue house",
        "Tamarack County (example/tamarack)",
        "INVENTED PLACE",
        "2026-03-01",
        "IRC 2021 as amended",
        "example/tamarack, then model/irc-2021",
        "Doubt    the page is old",
        "1 broken, 1 fail, 1 open, 2 warn, 1 pass, 2 not applicable",
        "\nBROKEN  Gap [deck.gap]",
        "\nFAIL    Layers after the work [layers.total]",
        "\nOPEN    Not known: roof.slopes[1].pitch.",
        "\nWARN    Attic openings [ventilation.ratio]",
        "\nWARN    Kind [wood.kind]",
        "\npass    Drip edge: front eave [drip_edge.eave]",
        "2 not applicable",
        "valley 1 (rules by topic",
        "At this stage, take care",
        "Tie off. [Code of Practice 4; common practice, not code]",
        "The building department decides.",
        "aaaaaaaaaaaaaaaa\n",
    };
    struct sample sample;
    sample_make(&sample);
    char *report = written(&sample.result, false);
    assert_order(report, ORDER, sizeof(ORDER) / sizeof(ORDER[0]));
    assert_tame(report);
    free(report);
}

static void one_finding_in_full(void **state)
{
    (void)state;
    struct sample sample;
    sample_make(&sample);
    char *report = written(&sample.result, false);
    assert_has(report,
               "FAIL    Layers after the work [layers.total]\n"
               "        2 layers stay under the new one.\n"
               "        demanded    at most 1 layer and at least 0 layers\n"
               "        found       3 layers\n"
               "        arithmetic  2 kept + 1 new = 3 layers\n"
               "                    3 is over 1\n"
               "        cited       IRC 2021 R908.3.1.1 (read in a public source: city handouts)\n"
               "        amended     by Tamarack County: from 2 layers to 1 layer\n"
               "        mend        Tear off to the deck.\n"
               "        caution     Old layers hide soft decks.\n");
    free(report);
    /* A warning to mend is shown in full too. */
    sample.findings[6].mend = sample.findings[7].mend = "Add a vent.";
    report = written(&sample.result, false);
    assert_has(report, "demanded    at least 1,152 sq in\n");
    assert_has(report, "found       0.3 in\n");
    assert_has(report, "IRC 2021 R806.2 (from memory, not read)\n");
    assert_has(report, "demanded    one of D226 II, D1970\n");
    assert_has(report, "mend        Add a vent.\n");
    free(report);
}

/* A met warning is said in brief, with how its figure is known. */
static void a_met_warning_is_brief(void **state)
{
    (void)state;
    struct sample sample;
    sample_make(&sample);
    char *report = written(&sample.result, false);
    assert_has(report, "WARN    Attic openings [ventilation.ratio]\n"
                       "        Met, on a weak figure. (IRC 2021 R806.2, memory)\n");
    free(report);
}

/* One question is put once, with everything that waits for it. */
static void a_question_is_put_once(void **state)
{
    (void)state;
    struct finding open[3] = {
        {.rule = "valley.lining", .title = "Lining", .outcome = OUTCOME_OPEN, .says = "How wide?"},
        {.rule = "slope.least",
         .title = "Slope",
         .where = "front",
         .outcome = OUTCOME_OPEN,
         .says = "How steep?"},
        {.rule = "valley.metal", .title = "Metal", .outcome = OUTCOME_OPEN, .says = "How wide?"},
    };
    struct sample sample;
    sample_make(&sample);
    sample.result.findings = open;
    sample.result.finding_count = 3;
    char *report = written(&sample.result, false);
    assert_has(report, "OPEN    How wide?\n"
                       "        waiting     Lining [valley.lining]; Metal [valley.metal]\n\n"
                       "OPEN    How steep?\n"
                       "        waiting     Slope, front [slope.least]\n");
    free(report);
}

/* A screen shows the first few figures to confirm; here each has its line. */
static void every_figure_to_confirm_is_listed(void **state)
{
    (void)state;
    enum { FIGURES = 80 };
    static struct maker makers[FIGURES];
    static char names[FIGURES][24];
    const struct value six = sample_number(6, "in");
    struct sample sample;
    sample_make(&sample);
    for (size_t i = 0; i < FIGURES; i++) {
        snprintf(names[i], sizeof(names[i]), "a.figure_%02zu", i);
        makers[i] = (struct maker){names[i], &sample.memory, &six, SENSE_AT_MOST};
    }
    sample.findings[6].makers = makers;
    sample.findings[6].maker_count = FIGURES;
    char *report = written(&sample.result, false);
    assert_has(report, "\n-- 80 to confirm: figures that what is met rests on, not read\n\n"
                       "  a.figure_00: at most 6 in (recalled, IRC 2021 R806.2)\n");
    assert_has(report, "  a.figure_79: at most 6 in (recalled, IRC 2021 R806.2)\n");
    assert_tame(report);
    free(report);
}

static void a_pass_takes_two_lines(void **state)
{
    (void)state;
    struct sample sample;
    sample_make(&sample);
    char *report = written(&sample.result, false);
    assert_has(report, "pass    Drip edge: front eave [drip_edge.eave]\n"
                       "        Found yes; demanded yes. (IRC 2021 R908.3.1.1, seen)\n"
                       "\n");
    free(report);
}

/* Two figures of one section, then the same section known less well. */
static void a_section_is_cited_once(void **state)
{
    (void)state;
    const struct cite cites[] = {
        {"IRC 2021", "R908.3", STATUS_SEEN, "handouts"},
        {"IRC 2021", "R908.3", STATUS_SEEN, "handouts"},
        {"IRC 2021", "R908.3", STATUS_MEMORY, NULL},
        {"IRC 2021", "R908.3", STATUS_SEEN, "a manual"},
    };
    struct sample sample;
    sample_make(&sample);
    for (size_t i = 0; i < SAMPLE_FINDINGS; i++)
        sample.findings[i].cite_count = 0;
    sample.findings[1].cites = sample.findings[2].cites = cites;
    sample.findings[1].cite_count = sample.findings[2].cite_count = 4;
    char *report = written(&sample.result, false);
    assert_has(report, "cited       IRC 2021 R908.3 (read in a public source: handouts)\n"
                       "                    IRC 2021 R908.3 (from memory, not read)\n"
                       "                    IRC 2021 R908.3 (read in a public source: a manual)\n");
    assert_has(report, "Found yes; demanded yes. (IRC 2021 R908.3, seen; IRC 2021 R908.3,\n"
                       "        memory)\n");
    free(report);
}

/* A duty that the place has dropped is not lost among those that never bound. */
static void what_a_place_dropped(void **state)
{
    (void)state;
    struct sample sample;
    sample_make(&sample);
    sample.findings[5].rule = "valley.width";
    sample.findings[5].amended = &sample.amended;
    sample.findings[5].says = "Dropped by Tamarack County: waived by 15.04.";
    char *report = written(&sample.result, false);
    assert_has(report, "-- 2 not applicable to this job\n\n"
                       "        valley 1 (rules by topic; --form json names each and says why)\n"
                       "        valley.width: Dropped by Tamarack County: waived by 15.04.\n");
    free(report);
}

static void only_what_there_is(void **state)
{
    (void)state;
    struct sample sample;
    sample_make(&sample);
    sample.result.finding_count = 0;
    memset(sample.result.counts, 0, sizeof(sample.result.counts));
    sample.result.invented = false;
    sample.result.safety_count = 0;
    sample.result.only_stage = STAGE_DRY_IN;
    sample.result.as_seen = "2026-01-15";
    char *report = written(&sample.result, false);
    assert_has(report, "0 fail, 0 open, 0 warn, 0 pass, 0 not applicable\n");
    assert_has(report, "stage: dry-in\n");
    assert_has(report, "as published on its page on 2026-01-15; may have changed\n");
    assert_has_not(report, "INVENTED");
    assert_has_not(report, "broken");
    assert_has_not(report, "take care");
    assert_has_not(report, "\n--");
    free(report);
}

/* What a job may try: escapes, marks that reorder, markup, words without end,
 * characters of several bytes, broken ones, lines of its own. */
static void nasty_texts(void **state)
{
    (void)state;
    char letters[1001], wide[4 * 300 + 1] = "";
    memset(letters, 'w', 1000);
    letters[1000] = '\0';
    for (int i = 0; i < 300; i++)
        strcat(wide, i % 7 == 3 ? "\xF0\x9F\x8F\xA0" : "\xE5\xB1\x8B");
    const char *const NASTY[] = {
        "\033[31mred\033[0m \033]0;title\007",
        "safe \xE2\x80\xAE txet \xE2\x81\xA6 \xE2\x80\x8B",
        "<script>alert('x')</script> & %s %n",
        "\xC2\x9B"
        "31m \xFF\xC0\xAF \xED\xA0\x80",
        "one\nFAIL    forged [rule]\rback\ttab",
        "",
        "   ",
        letters,
        wide,
    };
    for (size_t i = 0; i < sizeof(NASTY) / sizeof(NASTY[0]); i++) {
        struct sample sample;
        sample_make(&sample);
        sample.result.job = sample.result.jurisdiction_title = sample.result.caution = NASTY[i];
        sample.amended.by = sample.safety.says = sample.seen.source = NASTY[i];
        sample.work[0] = sample.set[0] = NASTY[i];
        for (size_t j = 0; j < SAMPLE_FINDINGS; j++) {
            struct finding *finding = &sample.findings[j];
            finding->title = finding->where = finding->says = finding->mend = NASTY[i];
            finding->note = NASTY[i];
            finding->caution = NASTY[i];
        }
        sample.findings[7].found.text = NASTY[i];
        char *report = written(&sample.result, false);
        assert_tame(report);
        assert_has_not(report, "\nFAIL    forged");
        free(report);
    }
}

/* Places of which there is nothing different to say share one paragraph;
 * another place of the same rule keeps its own. */
static void one_story_names_every_place(void **state)
{
    (void)state;
    struct finding edges[3] = {
        {.rule = "drip_edge.eave",
         .title = "Drip edge",
         .where = "front",
         .outcome = OUTCOME_FAIL,
         .says = "Found no."},
        {.rule = "drip_edge.eave",
         .title = "Drip edge",
         .where = "back",
         .outcome = OUTCOME_FAIL,
         .says = "Found no."},
        {.rule = "drip_edge.eave",
         .title = "Drip edge",
         .where = "porch",
         .outcome = OUTCOME_FAIL,
         .says = "Found half."},
    };
    struct sample sample;
    sample_make(&sample);
    sample.result.findings = edges;
    sample.result.finding_count = 3;
    char *report = written(&sample.result, false);
    assert_has(report, "FAIL    Drip edge: front; back [drip_edge.eave]\n        Found no.\n");
    assert_has(report, "FAIL    Drip edge: porch [drip_edge.eave]\n        Found half.\n");
    free(report);
}

/* Taking the colours out gives the report without colours. */
static void colour_adds_only_colour(void **state)
{
    (void)state;
    struct sample sample;
    sample_make(&sample);
    char *plain = written(&sample.result, false), *coloured = written(&sample.result, true);
    assert_null(strchr(plain, '\033'));
    assert_has(coloured, "\033[1;31mFAIL\033[0m    Layers");
    char *to = coloured;
    for (const char *from = coloured; *from != '\0'; from++) {
        if (*from == '\033')
            from += strcspn(from, "m");
        else
            *to++ = *from;
    }
    *to = '\0';
    assert_string_equal(coloured, plain);
    free(coloured);
    free(plain);
}

static void the_same_twice(void **state)
{
    (void)state;
    struct sample first, second;
    sample_make(&first);
    sample_make(&second);
    char *a = written(&first.result, true), *b = written(&second.result, true);
    assert_string_equal(a, b);
    free(a);
    free(b);
}

static void assert_wrapped(size_t hang, const char *words, const char *expected)
{
    struct text out = TEXT_EMPTY;
    wrap_add(&out, hang, words);
    assert_false(out.failed);
    assert_string_equal(text_string(&out), expected);
    text_free(&out);
}

static void wrapping(void **state)
{
    (void)state;
    char forty[41], eighty[81], expected[400];
    memset(forty, 'a', 40);
    memset(eighty, 'b', 80);
    forty[40] = eighty[80] = '\0';
    assert_wrapped(4, "", "\n");
    assert_wrapped(4, "  two   words  ", "two words\n");
    /* 40 + 1 + 39 fills a line; one more letter does not fit. */
    char words[200];
    snprintf(words, sizeof(words), "%s %.39s", forty, eighty);
    snprintf(expected, sizeof(expected), "%s\n", words);
    assert_wrapped(0, words, expected);
    snprintf(words, sizeof(words), "%s %.40s", forty, eighty);
    snprintf(expected, sizeof(expected), "%s\n%.40s\n", forty, eighty);
    assert_wrapped(0, words, expected);
    /* A word of 80 fits a line, but not behind an indent of 8: it is cut. */
    snprintf(expected, sizeof(expected), "%s\n", eighty);
    assert_wrapped(0, eighty, expected);
    snprintf(expected, sizeof(expected), "%.72s\n        %.8s\n", eighty, eighty);
    assert_wrapped(8, eighty, expected);
}

/* 26 words of two characters in four bytes fill 26 * 3 - 1 = 77 columns. */
static void wrapping_counts_characters(void **state)
{
    (void)state;
    struct text words = TEXT_EMPTY;
    for (int i = 0; i < 27; i++)
        text_addf(&words, "%s\xC3\xA9\xC3\xA9", i > 0 ? " " : "");
    struct text expected = TEXT_EMPTY;
    text_addf(&expected, "%s\n", text_string(&words));
    assert_int_equal(utf8_columns(text_string(&words)), 80);
    assert_wrapped(0, text_string(&words), text_string(&expected));
    text_free(&words);
    text_free(&expected);
}

/* A text that can take no more: its growing is refused, as when memory is out. */
static void a_failed_text_stays_failed(void **state)
{
    (void)state;
    struct sample sample;
    sample_make(&sample);
    char byte = '\0';
    struct text full = {.bytes = &byte, .length = SIZE_MAX / 2 - 1, .capacity = SIZE_MAX / 2};
    report_text_all(&sample.result, true, &full);
    assert_true(full.failed);
    assert_int_equal(full.length, SIZE_MAX / 2 - 1);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(everything_worst_first),
        cmocka_unit_test(one_finding_in_full),
        cmocka_unit_test(a_met_warning_is_brief),
        cmocka_unit_test(a_question_is_put_once),
        cmocka_unit_test(every_figure_to_confirm_is_listed),
        cmocka_unit_test(a_pass_takes_two_lines),
        cmocka_unit_test(a_section_is_cited_once),
        cmocka_unit_test(what_a_place_dropped),
        cmocka_unit_test(only_what_there_is),
        cmocka_unit_test(nasty_texts),
        cmocka_unit_test(one_story_names_every_place),
        cmocka_unit_test(colour_adds_only_colour),
        cmocka_unit_test(the_same_twice),
        cmocka_unit_test(wrapping),
        cmocka_unit_test(wrapping_counts_characters),
        cmocka_unit_test(a_failed_text_stays_failed),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
