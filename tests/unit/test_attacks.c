/* Every attack of tests/attacks, run as a rule of a home of its own through the
 * public interface; and the attacks that are no text file.
 *
 * The first line of an attack says which limit must stop it; a second line
 * "-- when: load" that it is stopped while the file loads. Beside it stands a
 * harmless rule that must still judge, and afterwards the same handle must
 * give the same report, byte for byte. Set EAVEMARK_SLOW to run this under a
 * memory checker. */
#include "support/attacks.h"
#include "support/small_law.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <time.h>
#include <unistd.h>

#include <cmocka.h>

/* Under a checker that runs everything much slower, the clock may win. */
static bool slow(void)
{
    return getenv("EAVEMARK_SLOW") != NULL;
}

/* Any limit will do then. */
static const char *words_of(const struct attack *attack)
{
    const bool limit = strcmp(attack->stops, "error") != 0;
    return slow() && limit ? "and was stopped" : attack->words;
}

static void make_home(struct temporary_home *home)
{
    home_make(home);
    small_law_write(home);
    home_write(home, "rules/harmless.lua", HARMLESS_RULE);
}

static struct outcome_of_check check(eavemark *handle, const char *stage)
{
    return home_check(handle, SMALL_JOB, NULL, NULL, stage);
}

/* Of the processor: how busy the machine is besides does not count. */
static double seconds(void)
{
    struct timespec now;
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return (double)now.tv_sec + (double)now.tv_nsec / 1e9;
}

/* The attack runs within judge: it is a broken finding, and nothing else is. */
static void assert_contained(eavemark *handle, const struct attack *attack)
{
    char rule[96];
    snprintf(rule, sizeof(rule), "attack.%s", attack->name);
    struct outcome_of_check before = check(handle, "permit");
    assert_string_equal(before.problems, "");
    for (int round = 0; round < 2; round++) {
        struct outcome_of_check hit = check(handle, NULL);
        assert_string_equal(hit.problems, "");
        assert_int_equal(hit.status, EAVEMARK_BROKEN);
        assert_member(hit.json, rule, 0, "outcome", "broken");
        assert_member_has(hit.json, rule, 0, "says", "rules/attack.lua:");
        assert_member_has(hit.json, rule, 0, "says", words_of(attack));
        assert_member(hit.json, "harmless.layers", 0, "outcome", "pass");
        outcome_free(&hit);
    }
    struct outcome_of_check after = check(handle, "permit");
    assert_string_equal(after.json, before.json);
    assert_int_equal(after.status, EAVEMARK_NOTHING_FAILED);
    outcome_free(&before);
    outcome_free(&after);
}

/* The attack is refused with its file; once it is gone, all is well. */
static void assert_refused(struct temporary_home *home, eavemark *handle, const char *file,
                           const char *words)
{
    struct outcome_of_check hit = check(handle, NULL);
    assert_int_equal(hit.status, EAVEMARK_BROKEN);
    assert_null(hit.json);
    assert_has(hit.problems, file);
    if (!slow() || strstr(hit.problems, "took too long and was stopped") == NULL)
        assert_has(hit.problems, words);
    outcome_free(&hit);
    home_delete(home, file);
    struct outcome_of_check after = check(handle, NULL);
    assert_string_equal(after.problems, "");
    assert_int_equal(after.status, EAVEMARK_NOTHING_FAILED);
    assert_member(after.json, "harmless.layers", 0, "outcome", "pass");
    outcome_free(&after);
}

static void run_attack(void **state)
{
    struct attack *attack = *state;
    struct temporary_home home;
    attack_read(attack);
    make_home(&home);
    home_write(&home, "rules/attack.lua", attack->text);
    eavemark *handle = eavemark_open(home.path);
    const double start = seconds();
    if (attack->load)
        assert_refused(&home, handle, "rules/attack.lua", words_of(attack));
    else
        assert_contained(handle, attack);
    /* Twice contained: no single attack may take longer than 3 s. */
    const double took = seconds() - start;
    if (took > 6 && !slow())
        fail_msg("%s took %.1f s", attack->name, took);
    eavemark_close(handle);
    home_remove(&home);
    attack_free(attack);
}

/* Attacks that no text file of Lua can show ---------------------------------- */

static void refuse_rules(const char *text, size_t length, const char *words)
{
    struct temporary_home home;
    make_home(&home);
    home_write_n(&home, "rules/attack.lua", text, length);
    eavemark *handle = eavemark_open(home.path);
    assert_refused(&home, handle, "rules/attack.lua", words);
    eavemark_close(handle);
    home_remove(&home);
}

static void bytecode_is_refused(void **state)
{
    (void)state;
    static const char chunk[] = "\x1bLua\x54\x00\x19\x93\r\n\x1a\n\x04\x08\x08xV";
    refuse_rules(chunk, sizeof(chunk) - 1, "attempt to load a binary chunk");
}

static void a_zero_byte_in_a_rule_file_is_refused(void **state)
{
    (void)state;
    static const char chunk[] = "local x = 1\n\0 local y = 2\n";
    refuse_rules(chunk, sizeof(chunk) - 1, "rules/attack.lua:2: unexpected symbol\n");
}

static void a_large_rule_file_is_refused(void **state)
{
    (void)state;
    const size_t length = 10 * 1024 * 1024;
    char *text = malloc(length);
    assert_non_null(text);
    memset(text, '\n', length);
    refuse_rules(text, length, "is larger than 1024 KB");
    refuse_rules(text, 600 * 1024, "larger than 512 KB");
    free(text);
}

static void a_link_out_of_the_home_is_refused(void **state)
{
    (void)state;
    struct temporary_home home, elsewhere;
    make_home(&home);
    home_make(&elsewhere);
    home_write(&elsewhere, "rules/attack.lua", "-- harmless, but not of this home\n");
    char target[128];
    snprintf(target, sizeof(target), "%s", home_path(&elsewhere, "rules/attack.lua"));
    assert_int_equal(symlink(target, home_path(&home, "rules/attack.lua")), 0);
    eavemark *handle = eavemark_open(home.path);
    assert_refused(&home, handle, "rules/attack.lua", "leads outside the home folder");
    eavemark_close(handle);
    home_remove(&elsewhere);
    home_remove(&home);
}

/* Opening a pipe would wait for a writer that never comes. */
static void a_pipe_for_a_file_is_refused(void **state)
{
    (void)state;
    struct temporary_home home;
    make_home(&home);
    home_delete(&home, "rules/fields.lua");
    assert_int_equal(mkfifo(home_path(&home, "rules/fields.lua"), 0600), 0);
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check hit = check(handle, NULL);
    assert_int_equal(hit.status, EAVEMARK_BROKEN);
    assert_has(hit.problems, "rules/fields.lua: is not a file");
    outcome_free(&hit);
    eavemark_close(handle);
    home_remove(&home);
}

/* A rule whose function `part` loops beside the harmless one. */
static struct outcome_of_check with_rule(const char *rule)
{
    struct temporary_home home;
    make_home(&home);
    home_write(&home, "rules/attack.lua", rule);
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check hit = check(handle, NULL);
    assert_string_equal(hit.problems, "");
    assert_member(hit.json, "harmless.layers", 0, "outcome", "pass");
    eavemark_close(handle);
    home_remove(&home);
    return hit;
}

static void a_loop_in_applies_breaks_the_rule(void **state)
{
    (void)state;
    struct outcome_of_check hit = with_rule(
        "rule \"attack.applies\" { " SMALL_READS
        " title = \"x\", stage = \"final\", mend = \"x\",\n"
        "  applies = function() while true do end end, judge = function() end }\n");
    assert_int_equal(hit.status, EAVEMARK_BROKEN);
    assert_member_has(hit.json, "attack.applies", 0, "says", "took too many steps");
    outcome_free(&hit);
}

static void applies_must_answer(void **state)
{
    (void)state;
    struct outcome_of_check hit = with_rule(
        "rule \"attack.applies\" { " SMALL_READS
        " title = \"x\", stage = \"final\", mend = \"x\",\n"
        "  applies = function() return nil end, judge = function() end }\n");
    assert_member(hit.json, "attack.applies", 0, "outcome", "broken");
    assert_member_has(hit.json, "attack.applies", 0, "says", "applies must give true or false");
    outcome_free(&hit);
}

/* The judgement stands; what went wrong with the mend is said in its place. */
static void a_loop_in_mend_leaves_the_failure_standing(void **state)
{
    (void)state;
    struct outcome_of_check hit = with_rule(
        "rule \"attack.mend\" { " SMALL_READS " title = \"x\", stage = \"final\",\n"
        "  judge = function(job, figure) return at_most(9, figure \"test.most\", \"layers\") end,\n"
        "  mend = function() while true do end end }\n");
    assert_int_equal(hit.status, EAVEMARK_BROKEN);
    assert_member(hit.json, "attack.mend", 0, "outcome", "fail");
    assert_member_has(hit.json, "attack.mend", 0, "mend", "took too many steps");
    assert_member(hit.json, "attack.mend", 1, "outcome", "broken");
    assert_member_has(hit.json, "attack.mend", 1, "says",
                      "The mend itself erred (rules/attack.lua:1): took too many steps");
    outcome_free(&hit);
}

/* A failure that nobody says how to mend is no answer. */
static void a_mend_without_words_is_broken(void **state)
{
    (void)state;
    struct outcome_of_check hit = with_rule(
        "rule \"attack.mend\" { " SMALL_READS " title = \"x\", stage = \"final\",\n"
        "  judge = function(job, figure) return at_most(9, figure \"test.most\", \"layers\") end,\n"
        "  mend = function() return nil end }\n");
    assert_int_equal(hit.status, EAVEMARK_BROKEN);
    assert_member(hit.json, "attack.mend", 0, "outcome", "fail");
    assert_member_has(hit.json, "attack.mend", 1, "says", "this function must give a text");
    outcome_free(&hit);
}

/* Not an error: it says what it would take to tell. */
static void a_mend_that_lacks_a_fact_says_so(void **state)
{
    (void)state;
    struct outcome_of_check hit = with_rule(
        "field \"extra\" { type = \"yes_no\", stage = \"permit\", ask = \"Extra?\" }\n"
        "rule \"attack.mend\" { reads = { facts = { 'extra' }, figures = { 'test.most' } }, title = \"x\", stage = \"final\",\n"
        "  judge = function(job, figure) return at_most(9, figure \"test.most\", \"layers\") end,\n"
        "  mend = function(job) return job.extra and \"a\" or \"b\" end }\n");
    assert_int_equal(hit.status, EAVEMARK_FAILED);
    assert_member_has(hit.json, "attack.mend", 0, "mend", "depends on /extra");
    outcome_free(&hit);
}

/* A danger that a broken caution cannot rule out is shown. */
static void a_loop_in_a_caution_shows_the_caution(void **state)
{
    (void)state;
    struct outcome_of_check hit = with_rule(
        "caution \"attack\" { stages = { \"permit\" }, says = \"Mind the attack.\",\n"
        "  when = function() while true do end end,\n"
        "  cite = { code = \"a\", section = \"b\", status = \"practice\", source = \"c\" } }\n");
    assert_int_equal(hit.status, EAVEMARK_BROKEN);
    assert_has(hit.json, "Mind the attack.");
    assert_member(hit.json, "caution.attack", 0, "outcome", "broken");
    assert_member_has(hit.json, "caution.attack", 0, "says",
                      "The caution itself erred (rules/attack.lua:1): took too many steps");
    outcome_free(&hit);
}

static void a_caution_without_words_is_broken(void **state)
{
    (void)state;
    struct outcome_of_check hit = with_rule(
        "caution \"attack\" { stages = { \"permit\" }, says = function() return 5 end,\n"
        "  cite = { code = \"a\", section = \"b\", status = \"practice\", source = \"c\" } }\n");
    assert_int_equal(hit.status, EAVEMARK_BROKEN);
    assert_has(hit.json, "\\nattack (");
    assert_member_has(hit.json, "caution.attack", 0, "says", "this function must give a text");
    outcome_free(&hit);
}

static void a_loop_in_a_line_about_the_house_is_told(void **state)
{
    (void)state;
    struct outcome_of_check hit = with_rule(
        "about \"Attack\" { says = function() while true do end end }\n");
    assert_int_equal(hit.status, EAVEMARK_BROKEN);
    assert_member(hit.json, "about.Attack", 0, "outcome", "broken");
    assert_member_has(hit.json, "about.Attack", 0, "says",
                      "The about itself erred (rules/attack.lua:1): took too many steps");
    outcome_free(&hit);
}

/* A hundred cautions that take all they may: those left over are shown, and told. */
static void all_cautions_together_have_a_total(void **state)
{
    (void)state;
    struct outcome_of_check hit = with_rule(
        "for i = 101, 290 do\n"
        "  caution(\"c\" .. i) { stages = { \"permit\" }, says = \"Mind c\" .. i,\n"
        "    when = function() while true do end end,\n"
        "    cite = { code = \"a\", section = \"b\", status = \"practice\", source = \"c\" } }\n"
        "end\n");
    assert_int_equal(hit.status, EAVEMARK_BROKEN);
    assert_has(hit.json, "Mind c290");
    assert_member_has(hit.json, "caution.c101", 0, "says", "took too many steps");
    assert_member_has(hit.json, "caution.c290", 0, "says", "The caution was not run to its end");
    outcome_free(&hit);
}

/* The card shows it, and says that something is wrong. */
static void a_card_tells_of_a_broken_caution(void **state)
{
    (void)state;
    struct temporary_home home;
    make_home(&home);
    home_write(
        &home, "rules/attack.lua",
        "caution \"attack\" { stages = { \"permit\" }, says = \"Mind the attack.\",\n"
        "  when = function() while true do end end,\n"
        "  cite = { code = \"a\", section = \"b\", status = \"practice\", source = \"c\" } }\n");
    eavemark *handle = eavemark_open(home.path);
    const struct eavemark_request request = {
        .name = "j", .text = SMALL_JOB, .stage = "permit", .length = strlen(SMALL_JOB)};
    char *report, *problems;
    assert_int_equal(eavemark_card(handle, &request, EAVEMARK_TEXT, &report, &problems),
                     EAVEMARK_BROKEN);
    assert_has(report, "Mind the attack.");
    assert_has(problems, "rules/attack.lua:1: A caution for people's safety");
    free(report);
    free(problems);
    eavemark_close(handle);
    home_remove(&home);
}

/* What rules leave behind ---------------------------------------------------------- */

/* The one that writes is broken; the one that reads comes out the same, whatever ran
 * before it: by itself, for each plane, and after one that was stopped. */
static void no_rule_speaks_to_another(void **state)
{
    (void)state;
    static const char *const LEAVING[] = {
        "told = true return at_most(1, figure \"test.most\", \"layers\")",
        "box.told = true return at_most(1, figure \"test.most\", \"layers\")",
        "told = true error(\"stopped\")",
        "told = true box.told = true while true do end",
        "told = true cannot_tell(\"x\")",
    };
    for (size_t i = 0; i < sizeof(LEAVING) / sizeof(LEAVING[0]); i++) {
        char text[1200];
        snprintf(
            text, sizeof(text),
            "local told, box = false, {}\n"
            "rule \"attack.a\" { " SMALL_READS " title = \"x\", stage = \"permit\", mend = \"x\",\n"
            "  judge = function(job, figure) %s end }\n"
            "rule \"attack.b\" { " SMALL_READS " title = \"x\", stage = \"permit\", mend = \"x\",\n"
            "  per = \"roof.slopes\", judge = function(job, figure)\n"
            "    return at_most((told or box.told) and 1 or 9, figure \"test.most\", \"layers\")\n"
            "  end }\n",
            LEAVING[i]);
        struct outcome_of_check hit = with_rule(text);
        assert_int_equal(hit.status, EAVEMARK_BROKEN);
        assert_member(hit.json, "attack.a", 0, "outcome", "broken");
        assert_member(hit.json, "attack.b", 0, "outcome", "fail");
        assert_member(hit.json, "attack.b", 1, "outcome", "fail");
        outcome_free(&hit);
    }
}

/* What rules/common.lua keeps is reached by name, from every file. */
static void no_rule_speaks_to_another_through_what_is_shared(void **state)
{
    (void)state;
    static const char *const LEAVING[] = {
        "tell()", "tools.tell()", "keep({})", "count()", "mark(box)",
    };
    for (size_t i = 0; i < sizeof(LEAVING) / sizeof(LEAVING[0]); i++) {
        struct temporary_home home;
        char text[800];
        make_home(&home);
        home_write(&home, "rules/common.lua",
                   "local told, counted, kept, mine = false, 0, {}, {}\n"
                   "local function tell() told = true end\n"
                   "common { tell = tell, tools = { tell = tell },\n"
                   "  keep = function(what) kept.what = what end,\n"
                   "  mark = function(box) box.told = true end,\n"
                   "  own = function(box) mine.box = box return box end,\n"
                   "  counter = function() return function() counted = counted + 1 end end,\n"
                   "  heard = function()\n"
                   "    return told or counted > 0 or kept.what or mine.box and mine.box.told\n"
                   "  end }\n");
        snprintf(text, sizeof(text),
                 "local count, box = counter(), own({})\n"
                 "rule \"attack.a\" { " SMALL_READS " title = \"x\", stage = \"permit\",\n"
                 "  mend = \"x\", judge = function(job, figure)\n"
                 "    %s return at_most(1, figure \"test.most\", \"layers\") end }\n",
                 LEAVING[i]);
        home_write(&home, "rules/attack_a.lua", text);
        home_write(&home, "rules/attack_b.lua",
                   "rule \"attack.b\" { " SMALL_READS " title = \"x\", stage = \"permit\",\n"
                   "  mend = \"x\", judge = function(job, figure)\n"
                   "    return at_most(heard() and 1 or 9, figure \"test.most\", \"layers\")\n"
                   "  end }\n");
        eavemark *handle = eavemark_open(home.path);
        struct outcome_of_check hit = check(handle, NULL);
        assert_string_equal(hit.problems, "");
        assert_member(hit.json, "attack.a", 0, "outcome", "broken");
        assert_member_has(hit.json, "attack.a", 0, "says", "must not reach others");
        assert_member(hit.json, "attack.b", 0, "outcome", "fail");
        outcome_free(&hit);
        eavemark_close(handle);
        home_remove(&home);
    }
}

static void one_item_does_not_speak_to_the_next(void **state)
{
    (void)state;
    struct outcome_of_check hit = with_rule(
        "local told = 0\n"
        "rule \"attack.item\" { " SMALL_READS
        " title = \"x\", stage = \"final\", per = \"roof.slopes\", mend = \"x\",\n"
        "  judge = function(job, figure)\n"
        "    told = told + 1\n"
        "    error(\"told \" .. told)\n"
        "  end }\n");
    assert_member_has(hit.json, "attack.item", 0, "says", "told 1");
    assert_member_has(hit.json, "attack.item", 1, "says", "told 1");
    outcome_free(&hit);
}

static void no_impossibility_speaks_to_another(void **state)
{
    (void)state;
    struct temporary_home home;
    make_home(&home);
    home_write(
        &home, "rules/attack.lua",
        "local told = false\n"
        "impossible \"a\" { at = \"stage\", when = function() told = true end }\n"
        "impossible \"b\" { at = \"stage\", when = function() if told then return \"x\" end end }\n"
        "impossible \"c\" { at = \"stage\", when = function() return \"so it is\" end }\n");
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check hit = check(handle, NULL);
    assert_int_equal(hit.status, EAVEMARK_BROKEN);
    assert_string_equal(hit.problems,
                        "rules/attack.lua:2: impossible \"a\": set 'told', a local of its file: "
                        "what a rule leaves behind must not reach others\n"
                        "job.json: /stage: cannot be: so it is\n");
    outcome_free(&hit);
    eavemark_close(handle);
    home_remove(&home);
}

static void no_quantity_speaks_to_another(void **state)
{
    (void)state;
    struct temporary_home home;
    make_home(&home);
    home_write(&home, "rules/attack.lua",
               "local told = 1\n"
               "quantity \"a\" { title = \"a\", amount = function()\n"
               "  told = 2 return amount { exact = 1, unit = \"ft\" } end }\n"
               "quantity \"b\" { title = \"b\", amount = function()\n"
               "  return amount { exact = told, unit = \"ft\" } end }\n");
    eavemark *handle = eavemark_open(home.path);
    const struct eavemark_request request = {
        .name = "j", .text = SMALL_JOB, .length = strlen(SMALL_JOB)};
    char *report, *problems;
    assert_int_equal(eavemark_takeoff(handle, &request, EAVEMARK_JSON_LINE, &report, &problems),
                     EAVEMARK_BROKEN);
    assert_has(report, "set 'told', a local of its file");
    assert_has(report, "\"exact\":{\"value\":1,");
    assert_null(strstr(report, "\"exact\":{\"value\":2,"));
    free(report);
    free(problems);
    eavemark_close(handle);
    home_remove(&home);
}

/* What the job does not say ------------------------------------------------------ */

static void assert_open(const char *rule_text, const char *lacks)
{
    struct outcome_of_check hit = with_rule(rule_text);
    assert_int_equal(hit.status, EAVEMARK_NOTHING_FAILED);
    assert_member(hit.json, "attack.lack", 0, "outcome", "open");
    assert_member_has(hit.json, "attack.lack", 0, "says", lacks);
    outcome_free(&hit);
}

static void what_is_not_said_alone_makes_no_pass(void **state)
{
    (void)state;
    assert_open(
        "field \"extra\" { type = \"yes_no\", stage = \"permit\", ask = \"Extra?\" }\n"
        "rule \"attack.lack\" { reads = { facts = { 'extra' }, figures = { 'test.most' } }, title = \"x\", stage = \"final\", mend = \"x\",\n"
        "  judge = function(job, figure)\n"
        "    if known(job, \"extra\") then return at_most(9, figure \"test.most\", \"layers\") end\n"
        "    return at_most(1, figure \"test.most\", \"layers\")\n"
        "  end }\n",
        "/extra");
    assert_open(
        "field \"extra\" { type = \"yes_no\", stage = \"permit\", ask = \"Extra?\" }\n"
        "rule \"attack.lack\" { reads = { facts = { 'extra' }, figures = { 'test.most' } }, title = \"x\", stage = \"final\", mend = \"x\",\n"
        "  applies = function(job) return known(job, \"extra\"), \"x\" end,\n"
        "  judge = function(job, figure)\n"
        "    return at_most(9, figure \"test.most\", \"layers\") end }\n",
        "/extra");
}

/* Either of two facts will do: then the one that is there carries it. */
static void what_is_said_instead_does(void **state)
{
    (void)state;
    struct outcome_of_check hit = with_rule(
        "field \"extra\" { type = \"yes_no\", stage = \"permit\", ask = \"Extra?\" }\n"
        "rule \"attack.lack\" { reads = { facts = { 'extra', 'existing.layers' }, figures = { 'test.most' } }, title = \"x\", stage = \"final\", mend = \"x\",\n"
        "  judge = function(job, figure)\n"
        "    if known(job, \"extra\") then return shown(job.extra, \"x\") end\n"
        "    return at_most(job.existing.layers, figure \"test.most\", \"layers\")\n"
        "  end }\n");
    assert_member(hit.json, "attack.lack", 0, "outcome", "pass");
    outcome_free(&hit);
}

static void an_empty_list_holds_nothing_that_is_in_order(void **state)
{
    (void)state;
    assert_open("rule \"attack.lack\" { " SMALL_READS
                " title = \"x\", stage = \"final\", mend = \"x\",\n"
                "  judge = function(job, figure)\n"
                "    return none_of({}, figure \"test.kinds\")\n"
                "  end }\n",
                "The list is empty");
    struct temporary_home home;
    make_home(&home);
    home_write(&home, "rules/attack.lua",
               "demand \"attack.row\" { title = \"x\", stage = \"final\", mend = \"x\",\n"
               "  fact = \"existing.kinds\", meets = \"test.kinds\" }\n");
    eavemark *handle = eavemark_open(home.path);
    char *job = text_with(SMALL_JOB, "[\"asphalt\"]", "[]");
    struct outcome_of_check hit = home_check(handle, job, NULL, NULL, NULL);
    assert_string_equal(hit.problems, "");
    assert_member(hit.json, "attack.row", 0, "outcome", "open");
    assert_member_has(hit.json, "attack.row", 0, "says", "The list is empty");
    outcome_free(&hit);
    hit = home_check(handle, SMALL_JOB, NULL, NULL, NULL);
    assert_member(hit.json, "attack.row", 0, "outcome", "pass");
    outcome_free(&hit);
    free(job);
    eavemark_close(handle);
    home_remove(&home);
}

/* A county that calls something impossible is the one to ask about it. */
static void an_impossibility_of_a_county_names_its_file(void **state)
{
    (void)state;
    struct temporary_home home;
    make_home(&home);
    home_write(&home, "jurisdictions/example/attack.lua",
               "jurisdiction \"example/attack\" { title = \"x\", follows = \"model/test\",\n"
               "  rules = \"attack.rules.lua\" }\n");
    home_write(&home, "jurisdictions/example/attack.rules.lua",
               "impossible \"county\" { at = \"existing.layers\",\n"
               "  when = function(job) return \"nobody has so many\" end }\n");
    home_write(&home, "rules/attack.lua",
               "impossible \"everybody\" { at = \"existing.layers\",\n"
               "  when = function(job) return \"that is not so\" end }\n");
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check hit = home_check(handle, SMALL_JOB, "example/attack", NULL, NULL);
    assert_int_equal(hit.status, EAVEMARK_UNUSABLE);
    assert_has(hit.problems, "/existing/layers: cannot be: nobody has so many "
                             "(jurisdictions/example/attack.rules.lua:1)\n");
    assert_has(hit.problems, "/existing/layers: cannot be: that is not so\n");
    outcome_free(&hit);
    eavemark_close(handle);
    home_remove(&home);
}

/* Each plane's judgement takes all it may: the last of many rules still runs. */
static void many_greedy_items_leave_room_for_the_rest(void **state)
{
    (void)state;
    struct outcome_of_check hit = with_rule(
        "for i = 1, 60 do\n"
        "  rule(\"attack.greedy\" .. i) { " SMALL_READS
        " title = \"x\", stage = \"final\", per = \"roof.slopes\",\n"
        "    mend = \"x\", judge = function() local t = \"x\" while true do t = t .. t end end }\n"
        "end\n");
    assert_int_equal(hit.status, EAVEMARK_BROKEN);
    assert_member_has(hit.json, "attack.greedy60", 1, "says", "took too much memory");
    outcome_free(&hit);
}

/* Two thousand rules of which each stays just within its limit: those for which nothing
 * is left are not run, and say so. */
static void all_rules_together_have_a_total(void **state)
{
    (void)state;
    struct outcome_of_check hit = with_rule(
        "for i = 1000, 1399 do\n"
        "  rule(\"slow.n\" .. i) { " SMALL_READS
        " title = \"x\", stage = \"final\", mend = \"x\",\n"
        "    judge = function(job, figure)\n"
        "      local n = 0\n"
        "      for i = 1, 95000 do n = n + 1 end\n"
        "      return at_most(1, figure \"test.most\", \"layers\") end }\n"
        "end\n");
    assert_int_equal(hit.status, EAVEMARK_BROKEN);
    assert_member(hit.json, "slow.n1000", 0, "outcome", "pass");
    assert_member_has(hit.json, "slow.n1399", 0, "says",
                      "The rule was not run (rules/attack.lua:2)");
    outcome_free(&hit);
}

/* A mend is asked for only after its rule failed, but takes from the same total. */
static void all_mends_together_have_a_total(void **state)
{
    (void)state;
    struct outcome_of_check hit = with_rule(
        "for i = 1000, 1399 do\n"
        "  rule(\"slow.n\" .. i) { " SMALL_READS " title = \"x\", stage = \"final\",\n"
        "    judge = function(job, figure) return at_most(9, figure \"test.most\", \"layers\") end,\n"
        "    mend = function() while true do end end }\n"
        "end\n");
    assert_int_equal(hit.status, EAVEMARK_BROKEN);
    assert_member(hit.json, "slow.n1000", 0, "outcome", "fail");
    assert_member_has(hit.json, "slow.n1399", 0, "says",
                      "The rule was not run (rules/attack.lua:2)");
    outcome_free(&hit);
}

/* Findings outlive the sandbox, so no limit of Lua bounds them: a job with
 * many vents, each judged with as much text as may be. */
static void findings_are_bounded_as_a_whole(void **state)
{
    (void)state;
    struct temporary_home home;
    make_home(&home);
    home_write(&home, "rules/attack.lua",
               "for i = 1, 12 do\n"
               "  rule(\"attack.texts\" .. i) { " SMALL_READS
               " title = \"x\", stage = \"permit\", mend = \"x\",\n"
               "    judge = function(job, figure)\n"
               "      local text = \"x\"\n"
               "      while #text < 1500 do text = text .. text end\n"
               "      for n = 1, 1000 do work(text) at_most(n, #\"a\", text) end\n"
               "      return at_most(1, figure \"test.most\", \"layers\")\n"
               "    end }\n"
               "end\n");
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check hit = check(handle, NULL);
    assert_int_equal(hit.status, EAVEMARK_BROKEN);
    assert_member_has(hit.json, "attack.texts1", 0, "says", "said more than");
    assert_true(strlen(hit.json) < 16 * 1024 * 1024);
    assert_member(hit.json, "harmless.layers", 0, "outcome", "pass");
    outcome_free(&hit);
    eavemark_close(handle);
    home_remove(&home);
}

/* One error per impossibility is enough, and it names its file. */
static void a_loop_in_an_impossibility_is_told_once(void **state)
{
    (void)state;
    struct temporary_home home;
    make_home(&home);
    home_write(&home, "rules/attack.lua",
               "impossible \"attack\" { at = \"pitch\", per = \"roof.slopes\",\n"
               "  when = function() while true do end end }\n");
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check hit = check(handle, NULL);
    assert_int_equal(hit.status, EAVEMARK_BROKEN);
    assert_string_equal(hit.problems, "rules/attack.lua:1: impossible \"attack\": took too many "
                                      "steps and was stopped\n");
    outcome_free(&hit);
    eavemark_close(handle);
    home_remove(&home);
}

/* Each file may take as much as all of them. */
static void files_that_hoard_memory_are_refused(void **state)
{
    (void)state;
    static const char hoard[] =
        "local kept = {} for i = 1, 200000 do kept[i] = { i } end\n"
        "rule(\"attack.%s\") { title = \"x\", stage = \"final\", mend = \"x\",\n"
        "  judge = function() return kept end }\n";
    struct temporary_home home;
    make_home(&home);
    static const char *const names[] = {"a", "b", "c"};
    for (size_t i = 0; i < 3; i++) {
        char path[64], text[512];
        snprintf(path, sizeof(path), "rules/hoard_%s.lua", names[i]);
        const char *mark = strstr(hoard, "%s");
        snprintf(text, sizeof(text), "%.*s%s%s", (int)(mark - hoard), hoard, names[i], mark + 2);
        home_write(&home, path, text);
    }
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check hit = check(handle, NULL);
    assert_int_equal(hit.status, EAVEMARK_BROKEN);
    assert_has(hit.problems, "rules/hoard_b.lua: took too much memory and was stopped");
    assert_null(strstr(hit.problems, "rules/hoard_a.lua"));
    outcome_free(&hit);
    eavemark_close(handle);
    home_remove(&home);
}

/* Three hundred rules each say all they may: the last are not run, and say so. What
 * is said here is in units, which a broken finding does not print. */
static void all_findings_together_are_bounded(void **state)
{
    (void)state;
    struct temporary_home home;
    make_home(&home);
    home_write(&home, "rules/attack.lua",
               "for i = 100, 399 do\n"
               "  rule(\"attack.n\" .. i) { " SMALL_READS
               " title = \"x\", stage = \"permit\", mend = \"x\",\n"
               "    judge = function(job, figure)\n"
               "      local text = \"x\"\n"
               "      while #text < 3000 do text = text .. text end\n"
               "      text = text:sub(1, 3990)\n"
               "      while true do local _ = at_most(1, #\"a\", text) end\n"
               "    end }\n"
               "end\n");
    eavemark *handle = eavemark_open(home.path);
    const struct eavemark_request request = {
        .name = "j", .text = SMALL_JOB, .length = strlen(SMALL_JOB)};
    eavemark_result *result = eavemark_check(handle, &request);
    assert_string_equal(eavemark_result_problems(result), "");
    char *json = eavemark_result_report(result, EAVEMARK_JSON_LINE, EAVEMARK_ALL);
    assert_member_has(json, "attack.n100", 0, "says", "the rule has said more than 1024 KB");
    assert_member_has(json, "attack.n399", 0, "says",
                      "The rule was not run (rules/attack.lua:2): those before it took");
    free(json);
    eavemark_result_free(result);
    eavemark_close(handle);
    home_remove(&home);
}

/* Profiles -------------------------------------------------------------------- */

static void refuse_profile(const char *text, size_t length, const char *words)
{
    struct temporary_home home;
    make_home(&home);
    home_write_n(&home, "jurisdictions/example/attack.lua", text, length);
    eavemark *handle = eavemark_open(home.path);
    const double start = seconds();
    struct outcome_of_check hit = home_check(handle, SMALL_JOB, "example/attack", NULL, NULL);
    const double took = seconds() - start;
    if (took > 6 && !slow())
        fail_msg("took %.1f s", took);
    assert_int_equal(hit.status, EAVEMARK_BROKEN);
    assert_null(hit.json);
    assert_has(hit.problems, "jurisdictions/example/attack.lua");
    assert_has(hit.problems, words);
    outcome_free(&hit);
    /* The place beside it is as it was. */
    struct outcome_of_check calm = check(handle, NULL);
    assert_int_equal(calm.status, EAVEMARK_NOTHING_FAILED);
    outcome_free(&calm);
    eavemark_close(handle);
    home_remove(&home);
}

static void hostile_profiles_are_refused(void **state)
{
    (void)state;
    static const struct {
        const char *text, *words;
    } cases[] = {
        {"while true do end\n", "took too many steps"},
        {"local t = 'x' while true do t = t .. t end\n", "took too much memory"},
        {"jurisdiction \"example/other\" { title = \"x\" }\n",
         "this file is \"example/attack\", but it says jurisdiction \"example/other\""},
        {"jurisdiction \"example/attack\" 5\n", "unexpected symbol"},
        {"jurisdiction \"example/attack\" (5)\n", "table expected, got number"},
        {"jurisdiction(nil)\n", "string expected, got nil"},
        {"jurisdiction \"example/attack\" { title = {} }\n", "title must be a text"},
        {"jurisdiction \"example/attack\" { title = \"x\", figures = 5 }\n",
         "figures must be a table"},
        {"jurisdiction \"example/attack\" { title = \"x\", figures = { 5 } }\n",
         "every figure needs a name"},
        {"jurisdiction \"example/attack\" { title = \"x\", figures = { a = 5 } }\n",
         "figure \"a\" must be written"},
        {"jurisdiction \"example/attack\" { title = \"x\", figures = { a = { 0 / 0 } } }\n",
         "figure \"a\" is not a finite number"},
        {"jurisdiction \"example/attack\" { title = \"x\", figures = { a = { { 1 } } } }\n",
         "a set holds texts only"},
        {"jurisdiction \"example/attack\" { title = \"x\", drop = { 5 } }\n", "drop is written"},
        {"jurisdiction \"example/attack\" { title = \"x\", invented = \"yes\" }\n",
         "invented must be true or false"},
        {"jurisdiction \"example/attack\" { title = \"x\", from = \"soon\" }\n",
         "is not a date (YYYY-MM-DD)"},
        {"rule \"attack.x\" {}\n", "unknown name 'rule'"},
        {"local f = {} for i = 1, 2001 do f[\"f\" .. i] = { i } end\n"
         "jurisdiction \"example/attack\" { title = \"x\", figures = f }\n",
         "more than 2000 figures"},
        {"for i = 1, 1000000 do jurisdiction \"example/attack\" { title = \"x\" } end\n",
         "more than 200 editions"},
        {"-- nothing\n", "declares no jurisdiction"},
    };
    for (size_t i = 0; i < sizeof(cases) / sizeof(cases[0]); i++)
        refuse_profile(cases[i].text, strlen(cases[i].text), cases[i].words);
    static const char bytecode[] = "\x1bLua\x54\x00";
    refuse_profile(bytecode, sizeof(bytecode) - 1, "attempt to load a binary chunk");
}

static const struct CMUnitTest OTHERS[] = {
    cmocka_unit_test(bytecode_is_refused),
    cmocka_unit_test(a_zero_byte_in_a_rule_file_is_refused),
    cmocka_unit_test(a_large_rule_file_is_refused),
    cmocka_unit_test(a_link_out_of_the_home_is_refused),
    cmocka_unit_test(a_pipe_for_a_file_is_refused),
    cmocka_unit_test(a_loop_in_applies_breaks_the_rule),
    cmocka_unit_test(applies_must_answer),
    cmocka_unit_test(a_loop_in_mend_leaves_the_failure_standing),
    cmocka_unit_test(a_mend_without_words_is_broken),
    cmocka_unit_test(a_mend_that_lacks_a_fact_says_so),
    cmocka_unit_test(a_loop_in_a_caution_shows_the_caution),
    cmocka_unit_test(a_caution_without_words_is_broken),
    cmocka_unit_test(a_loop_in_a_line_about_the_house_is_told),
    cmocka_unit_test(all_cautions_together_have_a_total),
    cmocka_unit_test(a_card_tells_of_a_broken_caution),
    cmocka_unit_test(no_rule_speaks_to_another),
    cmocka_unit_test(no_rule_speaks_to_another_through_what_is_shared),
    cmocka_unit_test(one_item_does_not_speak_to_the_next),
    cmocka_unit_test(no_impossibility_speaks_to_another),
    cmocka_unit_test(no_quantity_speaks_to_another),
    cmocka_unit_test(what_is_not_said_alone_makes_no_pass),
    cmocka_unit_test(what_is_said_instead_does),
    cmocka_unit_test(an_empty_list_holds_nothing_that_is_in_order),
    cmocka_unit_test(an_impossibility_of_a_county_names_its_file),
    cmocka_unit_test(many_greedy_items_leave_room_for_the_rest),
    cmocka_unit_test(all_rules_together_have_a_total),
    cmocka_unit_test(all_mends_together_have_a_total),
    cmocka_unit_test(findings_are_bounded_as_a_whole),
    cmocka_unit_test(a_loop_in_an_impossibility_is_told_once),
    cmocka_unit_test(files_that_hoard_memory_are_refused),
    cmocka_unit_test(all_findings_together_are_bounded),
    cmocka_unit_test(hostile_profiles_are_refused),
};
enum { OTHER_COUNT = sizeof(OTHERS) / sizeof(OTHERS[0]) };

int main(void)
{
    return attacks_run("", 150, run_attack, OTHERS, OTHER_COUNT);
}
