/* What is told of a check beside the check before. */
#include "report/changes.h"

#include "sample_result.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>

#include <cmocka.h>

/* What changed from these findings to those, in words; to be freed. */
static char *changes(struct finding *before, size_t before_count, struct finding *after,
                     size_t after_count, bool colour)
{
    struct sample was, now;
    struct text out = TEXT_EMPTY;
    sample_make(&was);
    sample_make(&now);
    was.result.findings = before;
    was.result.finding_count = before_count;
    now.result.findings = after;
    now.result.finding_count = after_count;
    report_changes_text(&was.result, &now.result, colour, &out);
    assert_false(out.failed);
    return out.bytes;
}

static void assert_changes(struct finding *before, size_t before_count, struct finding *after,
                           size_t after_count, const char *expected)
{
    char *told = changes(before, before_count, after, after_count, false);
    char *counts = strstr(told, "\nCount    ");
    assert_non_null(counts);
    *counts = '\0';
    assert_string_equal(told, expected);
    free(told);
}

/* Found so much of the nine that are demanded. */
static struct finding found(const char *rule, const char *where, double value)
{
    const bool met = value >= 9;
    return (struct finding){.rule = rule,
                            .title = rule,
                            .where = where,
                            .compared = true,
                            .says = "x",
                            .outcome = met ? OUTCOME_PASS : OUTCOME_FAIL,
                            .met = met ? MET_YES : MET_NO,
                            .mend = met ? NULL : "Add more.",
                            .required = sample_number(9, "in"),
                            .sense = SENSE_AT_LEAST,
                            .found = sample_number(value, "in")};
}

static struct finding open_for(const char *rule, const char *says)
{
    return (struct finding){
        .rule = rule, .title = rule, .outcome = OUTCOME_OPEN, .says = says, .ask = ASK_JOB};
}

static void nothing_changed(void **state)
{
    (void)state;
    struct finding same[] = {found("a.x", NULL, 4), found("b.x", "front", 10),
                             open_for("c.x", "How?")};
    struct finding otherwise_met[] = {same[0], found("b.x", "front", 11), same[2]};
    assert_changes(same, 3, same, 3, "Nothing changed that was judged.\n");
    assert_changes(same, 3, otherwise_met, 3, "Nothing changed that was judged.\n");
}

/* Failing now, in other words, no more; the same in several places once. */
static void what_fails_comes_first(void **state)
{
    (void)state;
    struct finding before[] = {found("a.x", NULL, 4), found("b.x", "front", 9),
                               found("b.x", "back", 9), found("c.x", NULL, 4),
                               found("d.x", NULL, 3)};
    struct finding after[] = {found("a.x", NULL, 9),   found("b.x", "front", 2),
                              found("b.x", "back", 2), found("c.x", NULL, 5),
                              found("d.x", NULL, 3),   found("e.x", NULL, 1)};
    assert_changes(before, 5, after, 6,
                   "FIX (was MET)\n"
                   "    b.x: front; back [b.x]\n"
                   "      found 2 in; demanded at least 9 in\n"
                   "    mend    Add more.\n"
                   "FIX (still)\n"
                   "    c.x [c.x]\n"
                   "      found 5 in; demanded at least 9 in\n"
                   "    mend    Add more.\n"
                   "FIX (new)\n"
                   "    e.x [e.x]\n"
                   "      found 1 in; demanded at least 9 in\n"
                   "    mend    Add more.\n"
                   "MET (was FIX)\n"
                   "    a.x [a.x]\n");
}

/* A finding that is no more is not lost; what a fact answered is only counted. */
static void gone_and_answered(void **state)
{
    (void)state;
    struct finding before[] = {found("a.x", NULL, 4), open_for("b.x", "How?"),
                               open_for("c.x", "How?"), found("d.x", NULL, 9)};
    struct finding after[] = {found("b.x", NULL, 9), found("c.x", NULL, 9),
                              open_for("d.x", "Which one is it?")};
    assert_changes(before, 4, after, 3,
                   "ANSWER (was MET)\n"
                   "    d.x [d.x]\n"
                   "      Which one is it?\n"
                   "MET  2 that were open\n"
                   "GONE (was FIX)\n"
                   "    a.x [a.x]\n");
}

/* Many that came open are cut; many that fail are not. */
static void only_what_is_open_is_cut(void **state)
{
    (void)state;
    enum { MANY = 40 };
    static struct finding fails[MANY], opens[MANY];
    static char rules[MANY][16];
    for (size_t i = 0; i < MANY; i++) {
        snprintf(rules[i], sizeof(rules[i]), "a.rule_%02zu", i);
        fails[i] = found(rules[i], NULL, 1);
        opens[i] = open_for(rules[i], "How?");
    }
    char *told = changes(NULL, 0, fails, MANY, false);
    for (size_t i = 0; i < MANY; i++)
        assert_non_null(strstr(told, rules[i]));
    free(told);
    told = changes(fails, MANY, opens, MANY, false);
    assert_non_null(strstr(told, "[a.rule_15]\n"));
    assert_null(strstr(told, "[a.rule_16]\n"));
    assert_non_null(strstr(told, "\nANSWER  and 24 more\n"));
    free(told);
}

static void colours_only_where_wanted(void **state)
{
    (void)state;
    struct finding before = found("a.x", NULL, 9), after = found("a.x", NULL, 1);
    char *plain = changes(&before, 1, &after, 1, false);
    char *coloured = changes(&before, 1, &after, 1, true);
    assert_null(strchr(plain, '\033'));
    assert_non_null(strstr(coloured, "\033[1;31mFIX\033[0m (was MET)\n"));
    free(plain);
    free(coloured);
}

/* Under another book, on another day or of another stage everything is new. */
static void only_like_is_held_against_like(void **state)
{
    (void)state;
    struct sample was, now;
    sample_make(&was);
    sample_make(&now);
    assert_true(report_is_comparable(&was.result, &now.result));
    now.result.edition = "IRC 2024";
    assert_false(report_is_comparable(&was.result, &now.result));
    sample_make(&now);
    now.result.jurisdiction = "example/other";
    assert_false(report_is_comparable(&was.result, &now.result));
    sample_make(&now);
    now.result.date[9] = '2';
    assert_false(report_is_comparable(&was.result, &now.result));
    sample_make(&now);
    now.result.only_stage = STAGE_DECK;
    assert_false(report_is_comparable(&was.result, &now.result));
    sample_make(&now);
    now.result.reached = STAGE_FINAL;
    assert_false(report_is_comparable(&was.result, &now.result));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(nothing_changed),
        cmocka_unit_test(what_fails_comes_first),
        cmocka_unit_test(gone_and_answered),
        cmocka_unit_test(only_what_is_open_is_cut),
        cmocka_unit_test(colours_only_where_wanted),
        cmocka_unit_test(only_like_is_held_against_like),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
