/* How a result reads on one screen. */
#include "report/report.h"

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
    report_text(result, colour, &out);
    assert_false(out.failed);
    assert_non_null(out.bytes);
    return out.bytes;
}

/* A result of these findings alone, counted as a check counts. */
static void sample_of(struct sample *sample, struct finding *findings, size_t count)
{
    sample_make(sample);
    struct result *result = &sample->result;
    result->findings = findings;
    result->finding_count = count;
    memset(result->counts, 0, sizeof(result->counts));
    for (size_t i = 0; i < count; i++)
        result->counts[findings[i].outcome]++;
}

static char *written_of(struct finding *findings, size_t count)
{
    struct sample sample;
    sample_of(&sample, findings, count);
    char *report = written(&sample.result, false);
    assert_tame(report);
    return report;
}

static size_t lines_of(const char *report)
{
    size_t lines = 0;
    for (; *report != '\0'; report++)
        lines += *report == '\n';
    return lines;
}

static size_t times(const char *report, const char *words)
{
    size_t count = 0;
    for (; (report = strstr(report, words)) != NULL; report += strlen(words))
        count++;
    return count;
}

/* Nothing that is met stands above something that is not, or not known. */
static void the_worst_comes_first(void **state)
{
    (void)state;
    static const char *const ORDER[] = {
        "Job      Blue house",
        "Tamarack County (example/tamarack)",
        "INVENTED PLACE",
        "Book     IRC 2021 as amended, for a permit applied for on 2026-03-01",
        "Doubt    the page is old",
        "Count    1 broken, 1 fail, 1 to look at, 0 to answer, 1 later, 2 met, 2 do not",
        "\nBROKEN  1 rule erred",
        "Gap: deck.lua:12: no figure \"gap\"",
        "\nFIX  1 fail\n",
        "  1 Unconfirmed figure: Layers after the work [layers.total]\n",
        "\nLOOK  1 met on one reading only\n",
        "  1 Kind [wood.kind]\n",
        "\nLATER  1 that only a later stage can tell: 1 at the permit\n",
        "\nMET  2, by topic. In brackets, 1 in all: met on a figure to be confirmed.\n",
        "  drip edge 1, ventilation 1 (1)\n",
        "\nCARE  ",
        "Tie off.\n",
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

/* Found, both bounds, the section without the book that the head names, what mends it
 * and what may hurt. */
static void a_fail_in_full(void **state)
{
    (void)state;
    struct sample sample;
    sample_make(&sample);
    sample.result.edition = "IRC 2021";
    char *report = written(&sample.result, false);
    assert_has(report, "  1 Unconfirmed figure: Layers after the work [layers.total]\n"
                       "      found 3 layers; demanded at most 1 layer and at least 0 layers; "
                       "another\n"
                       "      source demands at most 2 layers (R908.3.1.1). 2 layers stay under "
                       "the new\n      one.\n"
                       "    mend    Tear off to the deck.\n"
                       "    care    Old layers hide soft decks.\n");
    free(report);
    /* Of another book than the head's, it is named. */
    sample.seen.code = "County Code";
    sample.findings[2].unsure = "the page is old";
    report = written(&sample.result, false);
    assert_has(report, "  1 Not certain to bind here: Layers after the work [layers.total]\n");
    assert_has(report, "(County Code R908.3.1.1)");
    free(report);
}

/* How well a figure is known is told once, in CONFIRM. */
static void no_word_of_how_a_figure_is_known(void **state)
{
    (void)state;
    struct value six = sample_number(6, "in");
    const struct cite weak[2] = {{"IRC 2021", "R1", STATUS_MEMORY, NULL},
                                 {"IRC 2021", "R2", STATUS_PARALLEL, NULL}};
    const struct maker makers[2] = {{"deck.edge", &weak[0], &six, SENSE_AT_MOST},
                                    {"deck.field", &weak[1], &six, SENSE_AT_MOST}};
    struct finding findings[3];
    for (size_t i = 0; i < 3; i++)
        findings[i] = (struct finding){
            .rule = "deck.nails",
            .title = "Nails",
            .outcome = i == 0 ? OUTCOME_FAIL : OUTCOME_WARN,
            .met = i == 0 ? MET_NO : MET_YES,
            .why = WHY_UNCONFIRMED,
            .compared = true,
            .required = six,
            .sense = SENSE_AT_MOST,
            .found = six,
            .cites = weak,
            .cite_count = 2,
            .makers = makers,
            .maker_count = 2,
            .says = "x",
            .note = "Unconfirmed: recalled from memory; read in a parallel text."};
    char *report = written_of(findings, 3);
    assert_has_not(report, "memory");
    assert_has_not(report, "parallel");
    assert_has(report, "  1 Unconfirmed figure: Nails [deck.nails]\n");
    assert_has(report, "\nMET  2, by topic. In brackets, 2 in all: met on a figure to be "
                       "confirmed.\n  deck 2 (2)\n");
    /* Two met findings rest on them; each is listed once. */
    assert_has(report, "\nCONFIRM  2 figures that what is met rests on, not read in this book\n"
                       "  deck.edge: at most 6 in (recalled, IRC 2021 R1)\n"
                       "  deck.field: at most 6 in (sister text, IRC 2021 R2)\n\n");
    free(report);
}

static struct finding a_fail(const char *rule, const char *where, double found)
{
    return (struct finding){.rule = rule,
                            .title = rule,
                            .where = where,
                            .outcome = OUTCOME_FAIL,
                            .met = MET_NO,
                            .says = "Not met.",
                            .compared = true,
                            .required = sample_number(9, "in"),
                            .sense = SENSE_AT_LEAST,
                            .found = sample_number(found, "in")};
}

/* Rules that name one cause, or find the same fact wanting, are mended together. */
static void one_cause_is_one_block(void **state)
{
    (void)state;
    struct finding findings[5] = {a_fail("a.plies", "porch", 1), a_fail("a.plies", "shed", 1),
                                  a_fail("b.lap", "porch", 4), a_fail("c.nails", "main", 7),
                                  a_fail("d.wind", "main", 7)};
    findings[0].cause = findings[1].cause = findings[2].cause = "two plies";
    findings[0].mend = findings[1].mend = "Lay two.";
    findings[3].wanting = findings[4].wanting = "/decks/0/nails/field_spacing_in";
    findings[3].mend = findings[4].mend = "Nail closer.";
    char *report = written_of(findings, 5);
    assert_has(report, "\nFIX  5 fail, 2 to mend\n"
                       "  1 a.plies: porch; shed [a.plies]\n"
                       "      found 1 in; demanded at least 9 in\n"
                       "    b.lap: porch [b.lap]\n"
                       "      found 4 in; demanded at least 9 in\n"
                       "    mend    Lay two.\n"
                       "  2 c.nails: main [c.nails]\n"
                       "      found 7 in; demanded at least 9 in\n"
                       "    d.wind: main [d.wind]\n"
                       "      found 7 in; demanded at least 9 in\n"
                       "    mend    Nail closer.\n");
    free(report);
    /* Elsewhere, or of another fact, it is another thing to mend. */
    findings[2].where = "garage";
    findings[4].wanting = "/decks/0/nails/edge_spacing_in";
    report = written_of(findings, 5);
    assert_has(report, "\nFIX  5 fail, 4 to mend\n");
    free(report);
}

/* Places where the same rule finds different things share a paragraph. */
static void each_place_with_what_was_found_there(void **state)
{
    (void)state;
    struct finding findings[4] = {a_fail("a.lap", "front", 4), a_fail("a.lap", "back", 5),
                                  a_fail("a.lap", "porch", 4), a_fail("a.lap", "shed", 3)};
    findings[3].required = sample_number(8, "in");
    char *report = written_of(findings, 4);
    assert_has(report, "\nFIX  4 fail, 2 to mend\n"
                       "  1 a.lap [a.lap]\n"
                       "      found 4 in (front; porch), 5 in (back); demanded at least 9 in\n"
                       "  2 a.lap: shed [a.lap]\n"
                       "      found 3 in; demanded at least 8 in\n");
    free(report);
}

/* Both values of a dispute; those in one dispute together; what is not met before. */
static void what_to_look_at(void **state)
{
    (void)state;
    struct finding findings[4] = {a_fail("a.x", NULL, 5), a_fail("b.x", NULL, 5),
                                  a_fail("c.x", NULL, 5), a_fail("d.x", NULL, 5)};
    for (size_t i = 0; i < 4; i++) {
        findings[i].outcome = OUTCOME_WARN;
        findings[i].met = i == 3 ? MET_NO : MET_YES;
        findings[i].why = i == 2 ? WHY_ADVICE : i == 3 ? WHY_PRACTICE : WHY_DISPUTED;
        findings[i].disagree = i < 2 ? "a handout has 8" : NULL;
    }
    findings[0].rival = sample_number(8, "in");
    findings[0].rival_sense = SENSE_AT_LEAST;
    findings[2].remark = "It may bend.";
    findings[3].mend = "Lay it so.";
    char *report = written_of(findings, 4);
    assert_has(report,
               "\nLOOK  1 not met that no code demands, 2 met on one reading only, 1 met, "
               "with a\n      remark\n"
               "  1 d.x [d.x]\n"
               "      not met, by common practice: found 5 in; demanded at least 9 in\n"
               "    mend    Lay it so.\n"
               "  2 a.x [a.x]\n"
               "      met on one reading only: found 5 in; demanded at least 9 in; another\n"
               "      source demands at least 8 in\n"
               "    b.x [b.x]\n"
               "      met on one reading only: found 5 in; demanded at least 9 in\n"
               "    doubt   a handout has 8\n"
               "  3 c.x [c.x]\n"
               "      met, with a remark: found 5 in; demanded at least 9 in. It may "
               "bend.\n");
    assert_has_not(report, "\nFIX");
    assert_has_not(report, "\nMET");
    free(report);
}

static struct finding an_open(enum ask ask, bool asked, const char *says)
{
    return (struct finding){.rule = "deck.gap",
                            .title = "Gap",
                            .where = "porch",
                            .stage = STAGE_DECK,
                            .outcome = OUTCOME_OPEN,
                            .ask = ask,
                            .asked = asked,
                            .says = says};
}

/* Questions by where one would go for the answer; what no question stands for is not
 * lost; nor what only the department or a later stage can tell. */
static void what_is_open(void **state)
{
    (void)state;
    struct finding findings[] = {an_open(ASK_JOB, true, "a"),
                                 an_open(ASK_JOB, true, "b"),
                                 an_open(ASK_JOB, true, "c"),
                                 an_open(ASK_JOB, false, "The sides do not add up."),
                                 an_open(ASK_LATER, false, "d"),
                                 an_open(ASK_PLACE, false, "No page of it was read."),
                                 an_open(ASK_PLACE, false, "No page of it was read.")};
    findings[6].title = "Notice";
    findings[6].rule = "inspection.notice";
    findings[6].where = NULL;
    const char *const where[] = {"front", "back", "porch", "shed", "wing"};
    const struct asked asked[] = {{"How wide?", where, 5, "roof", 1},
                                  {"Which kind?", where, 1, "wrapper", 1},
                                  {"How many?", NULL, 0, "roof", 1}};
    struct sample sample;
    sample_of(&sample, findings, 7);
    sample.result.asked = asked;
    sample.result.asked_count = 3;
    char *report = written(&sample.result, false);
    assert_tame(report);
    assert_has(report, "\nANSWER  3 questions decide 3 findings; in brackets, how many each\n"
                       "  On a wrapper, box or label\n"
                       "    Which kind? front (1)\n"
                       "  On the roof\n"
                       "    How wide? front; back; porch and 2 more (1)\n"
                       "    How many? (1)\n"
                       "  Cannot be told from the job\n"
                       "  Gap, porch: The sides do not add up.\n");
    assert_has(report, "\nNOT KNOWN HERE  2: ask the building department\n"
                       "  Gap, porch; Notice: No page of it was read.\n");
    assert_has(report, "\nLATER  1 that only a later stage can tell: 1 at the deck\n");
    assert_has(report, "0 to look at, 4 to answer, 2 not known here, 1 later, 0 met");
    free(report);
}

/* A screen that is too full drops questions and figures, and says how many; what fails
 * or is not met it never drops. */
static void nothing_unmet_is_left_out(void **state)
{
    (void)state;
    enum { FAILS = 60, LOOKS = 40, QUESTIONS = 30, FIGURES = 50 };
    static struct finding findings[FAILS + LOOKS + 1];
    static struct maker makers[FIGURES];
    static struct asked asked[QUESTIONS];
    static char names[FAILS + LOOKS][24], figures[FIGURES][24];
    const struct value one = sample_number(1, "in");
    const struct cite weak = {"IRC 2021", "R1", STATUS_MEMORY, NULL};
    struct sample sample;
    for (size_t i = 0; i < FAILS + LOOKS; i++) {
        snprintf(names[i], sizeof(names[i]), "a.rule_%zu", i);
        findings[i] = a_fail(names[i], NULL, 1);
        findings[i].outcome = i < FAILS ? OUTCOME_FAIL : OUTCOME_WARN;
        findings[i].why = i < FAILS ? 0 : WHY_PRACTICE;
    }
    for (size_t i = 0; i < FIGURES; i++) {
        snprintf(figures[i], sizeof(figures[i]), "a.figure_%02zu", i);
        makers[i] = (struct maker){figures[i], &weak, &one, SENSE_AT_LEAST};
    }
    findings[FAILS + LOOKS] = (struct finding){.rule = "b.x",
                                               .outcome = OUTCOME_WARN,
                                               .met = MET_YES,
                                               .why = WHY_UNCONFIRMED,
                                               .says = "Met.",
                                               .makers = makers,
                                               .maker_count = FIGURES};
    for (size_t i = 0; i < QUESTIONS; i++)
        asked[i] = (struct asked){"What?", NULL, 0, "desk", i};
    sample_of(&sample, findings, FAILS + LOOKS + 1);
    sample.result.asked = asked;
    sample.result.asked_count = QUESTIONS;
    findings[FAILS + LOOKS].asked = false;
    char *report = written(&sample.result, false);
    assert_tame(report);
    for (size_t i = 0; i < FAILS + LOOKS; i++) {
        char line[32];
        snprintf(line, sizeof(line), "[%.23s]\n", names[i]);
        assert_int_equal(times(report, line), 1);
    }
    assert_has(report, "  and 47 more: check --all\n");
    free(report);
    /* Alone, figures take the lines that are free, down to the last of sixty. */
    sample_of(&sample, &findings[FAILS + LOOKS], 1);
    report = written(&sample.result, false);
    assert_int_equal(lines_of(report), 60);
    free(report);
    /* All of them, when they just fit. */
    findings[FAILS + LOOKS].maker_count = 30;
    report = written(&sample.result, false);
    assert_has_not(report, " more: check --all");
    assert_int_equal(times(report, "  a.figure_"), 30);
    free(report);
    findings[FAILS + LOOKS].maker_count = FIGURES;
}

/* Of many questions, those that decide the most. */
static void many_questions_are_cut(void **state)
{
    (void)state;
    static struct asked asked[40];
    static char asks[40][16];
    struct finding open = an_open(ASK_JOB, true, "x");
    for (size_t i = 0; i < 40; i++) {
        snprintf(asks[i], sizeof(asks[i]), "Fact %02zu?", i);
        asked[i] = (struct asked){asks[i], NULL, 0, "desk", i + 1};
    }
    struct sample sample;
    sample_of(&sample, &open, 1);
    sample.result.asked = asked;
    sample.result.asked_count = 40;
    char *report = written(&sample.result, false);
    assert_int_equal(times(report, "    Fact "), 16);
    assert_has(report, "    Fact 24? (25)\n");
    assert_has(report, "    Fact 39? (40)\n");
    /* 1 + 2 + ... + 24 */
    assert_has(report, "  and 24 more, which decide 300: eavemark new --fill JOB asks them\n");
    free(report);
}

/* A place seen on a day; one stage; what is met by the job's word; no brief caution. */
static void only_what_there_is(void **state)
{
    (void)state;
    struct finding met = {.rule = "deck.sound",
                          .outcome = OUTCOME_PASS,
                          .met = MET_YES,
                          .stage = STAGE_DECK,
                          .says = "x"};
    struct sample sample;
    sample_of(&sample, &met, 1);
    sample.result.invented = false;
    sample.result.doubt_count = 0;
    sample.result.only_stage = STAGE_DECK;
    sample.result.reached = STAGE_DECK;
    sample.result.as_seen = "2026-01-15";
    sample.safety.brief = "Be tied.";
    char *report = written(&sample.result, false);
    assert_has(report, "Read     as the place's page stood on 2026-01-15; it may have changed\n"
                       "Stage    deck: what is looked at then, and what was left undone before\n"
                       "Count    0 fail, 0 to look at, 0 to answer, 1 met, 0 do not apply\n"
                       "\nMET  1, by topic. 1 by what the job says alone, nothing was measured: "
                       "look\n     before the inspector does.\n  deck 1\n\nCARE  ");
    assert_has(report, "  Be tied.\n");
    assert_has_not(report, "Tie off.");
    assert_has_not(report, "INVENTED");
    assert_has_not(report, "Doubt");
    met.measured = true;
    sample.result.safety_count = 0;
    char *again = written(&sample.result, false);
    assert_has(again, "\nMET  1, by topic\n");
    assert_has_not(again, "CARE");
    free(again);
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
        "one\nFIX  forged [rule]\rback\ttab",
        "",
        "   ",
        letters,
        wide,
    };
    for (size_t i = 0; i < sizeof(NASTY) / sizeof(NASTY[0]); i++) {
        struct sample sample;
        sample_make(&sample);
        sample.result.job = sample.result.jurisdiction_title = sample.result.caution = NASTY[i];
        sample.amended.by = sample.safety.says = sample.seen.section = NASTY[i];
        sample.safety.brief = sample.doubts[0] = NASTY[i];
        const struct asked asked = {NASTY[i], NASTY, 3, "roof", 1};
        sample.findings[3].ask = ASK_JOB;
        sample.findings[3].asked = true;
        sample.result.asked = &asked;
        sample.result.asked_count = 1;
        sample.work[0] = sample.set[0] = NASTY[i];
        for (size_t j = 0; j < SAMPLE_FINDINGS; j++) {
            struct finding *finding = &sample.findings[j];
            finding->title = finding->where = finding->says = finding->mend = NASTY[i];
            finding->note = NASTY[i];
            finding->caution = finding->remark = finding->disagree = NASTY[i];
        }
        sample.findings[7].found.text = NASTY[i];
        char *report = written(&sample.result, false);
        assert_tame(report);
        assert_has_not(report, "\nFIX  forged");
        free(report);
    }
}

/* Taking the colours out gives the report without colours. */
static void colour_adds_only_colour(void **state)
{
    (void)state;
    struct sample sample;
    sample_make(&sample);
    char *plain = written(&sample.result, false), *coloured = written(&sample.result, true);
    assert_null(strchr(plain, '\033'));
    assert_has(coloured, "\n\033[1;31mFIX\033[0m  1 fail\n");
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

/* A text that can take no more: its growing is refused, as when memory is out. */
static void a_failed_text_stays_failed(void **state)
{
    (void)state;
    struct sample sample;
    sample_make(&sample);
    char byte = '\0';
    struct text full = {.bytes = &byte, .length = SIZE_MAX / 2 - 1, .capacity = SIZE_MAX / 2};
    report_text(&sample.result, true, &full);
    assert_true(full.failed);
    assert_int_equal(full.length, SIZE_MAX / 2 - 1);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(the_worst_comes_first),
        cmocka_unit_test(a_fail_in_full),
        cmocka_unit_test(no_word_of_how_a_figure_is_known),
        cmocka_unit_test(one_cause_is_one_block),
        cmocka_unit_test(each_place_with_what_was_found_there),
        cmocka_unit_test(what_to_look_at),
        cmocka_unit_test(what_is_open),
        cmocka_unit_test(nothing_unmet_is_left_out),
        cmocka_unit_test(many_questions_are_cut),
        cmocka_unit_test(only_what_there_is),
        cmocka_unit_test(nasty_texts),
        cmocka_unit_test(colour_adds_only_colour),
        cmocka_unit_test(the_same_twice),
        cmocka_unit_test(a_failed_text_stays_failed),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
