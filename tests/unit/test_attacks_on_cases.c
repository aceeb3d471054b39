/* Every file of tests/attacks/cases, as the cases of an invented county.
 *
 * The first line says what stops it: `case "words"`, the case alone fails, or
 * a limit or `error "words"`, the file is refused. Either way the proof of
 * everything ends, names the file, and runs the cases of other files; and what
 * is said of another place does not change by a byte. */
#include "prove/case_list.h"
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

#include <cmocka.h>

static const char COUNTY[] = "jurisdiction \"example/attack\" { title = \"Attack County\",\n"
                             "  invented = true, follows = \"model/test\" }\n";
static const char CASES[] =
    "cases \"harmless.layers\" { under = \"model/test\",\n"
    "  { \"one\", expect = \"pass\" },\n"
    "  { \"many\", with = { [\"existing.layers\"] = 5 }, expect = \"fail\" },\n"
    "  { \"not known\", without = { \"existing.layers\" }, expect = \"open\" },\n"
    "}\n";

struct said {
    enum eavemark_status status;
    char *report, *problems;
};

static void said_free(struct said *said)
{
    free(said->report);
    free(said->problems);
}

static struct said prove(const struct temporary_home *home)
{
    struct said said;
    eavemark *handle = eavemark_open(home->path);
    said.status = eavemark_proof(handle, NULL, NULL, NULL, EAVEMARK_TEXT, &said.report,
                                 &said.problems);
    eavemark_close(handle);
    assert_non_null(said.problems);
    return said;
}

/* How the rule is judged under another place; the cases are only read for it. */
static struct said explain(const struct temporary_home *home)
{
    struct said said;
    eavemark *handle = eavemark_open(home->path);
    const struct eavemark_request request = {.jurisdiction = "model/test"};
    said.status = eavemark_explain(handle, "harmless.layers", &request, EAVEMARK_TEXT, &said.report,
                                   &said.problems);
    eavemark_close(handle);
    assert_non_null(said.problems);
    return said;
}

static void assert_others_stand(const struct temporary_home *home, const char *check_before)
{
    eavemark *handle = eavemark_open(home->path);
    char *text = NULL;
    assert_int_equal(eavemark_fields(handle, NULL, false, NULL, NULL, &text), 0);
    free(text);
    struct outcome_of_check after = home_check(handle, SMALL_JOB, NULL, NULL, NULL);
    assert_string_equal(after.json, check_before);
    outcome_free(&after);
    eavemark_close(handle);
    struct said explained = explain(home);
    assert_int_equal(explained.status, EAVEMARK_NOTHING_FAILED);
    assert_string_equal(explained.problems, "");
    assert_has(explained.report, "layers");
    said_free(&explained);
}

static void make_home(struct temporary_home *home)
{
    home_make(home);
    small_law_write(home);
    home_write(home, "rules/harmless.lua", HARMLESS_RULE);
    home_write(home, "rules/cases/base.json", SMALL_JOB);
    home_write(home, "rules/cases/harmless.lua", CASES);
    home_write(home, "jurisdictions/example/attack.lua", COUNTY);
}

static void run_attack(void **state)
{
    struct attack *attack = *state;
    struct temporary_home home;
    attack_read(attack);
    make_home(&home);
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check before = home_check(handle, SMALL_JOB, NULL, NULL, NULL);
    eavemark_close(handle);
    assert_int_equal(before.status, EAVEMARK_NOTHING_FAILED);
    home_write(&home, "jurisdictions/example/attack.cases.lua", attack->text);

    struct said proof = prove(&home);
    const bool only_the_case = strcmp(attack->stops, "case") == 0;
    assert_int_equal(proof.status, only_the_case ? EAVEMARK_FAILED : EAVEMARK_BROKEN);
    const char *where = only_the_case ? proof.report : proof.problems;
    assert_has(where, "jurisdictions/example/attack.cases.lua");
    assert_has(where, attack->words);
    /* What the attack's own file came to before it was stopped counts too. */
    const char *passed = strstr(proof.report, " passed, ");
    assert_non_null(passed);
    while (passed > proof.report && passed[-1] != '\n')
        passed--;
    assert_true(strtoul(passed, NULL, 10) >= 3);
    said_free(&proof);

    assert_others_stand(&home, before.json);
    outcome_free(&before);
    home_remove(&home);
    attack_free(attack);
}

/* A county's slow rule makes each of its cases slow, though a case judges that rule alone:
 * those for which nothing is left are not run, and the cases of others are. */
static void all_cases_of_a_file_have_a_total(void **state)
{
    (void)state;
    struct temporary_home home;
    make_home(&home);
    home_write(&home, "jurisdictions/example/attack.lua",
               "jurisdiction \"example/attack\" { title = \"Attack County\", invented = true,\n"
               "  follows = \"model/test\", rules = \"attack.rules.lua\" }\n");
    home_write(&home, "jurisdictions/example/attack.rules.lua",
               "for i = 1, 2 do\n"
               "  rule(\"slow.n\" .. i) { title = \"x\", stage = \"permit\", mend = \"x\",\n"
               "    judge = function() while true do end end }\n"
               "end\n");
    home_write(&home, "jurisdictions/example/attack.cases.lua",
               "local group = { under = \"example/attack\" }\n"
               "for i = 1, 1100 do group[i] = { \"case \" .. i, expect = \"broken\" } end\n"
               "cases \"slow.n1\" (group)\n");
    struct said proof = prove(&home);
    assert_has(proof.report, "\"case 1002\": was not run, nor were others of this file");
    assert_null(strstr(proof.report, "\"case 1001\""));
    assert_null(strstr(proof.report, "\"case 1003\""));
    /* Its first 1,001, each of which took all that one call may, and the three of the
     * harmless rule. */
    assert_has(proof.report, "1004 passed, ");
    said_free(&proof);
    home_remove(&home);
}

/* Each file may keep much: those of one are let go before the next is read. */
static void one_file_is_read_at_a_time(void **state)
{
    (void)state;
    struct temporary_home home;
    struct case_files files;
    struct case_list list = {.first = NULL};
    struct problems problems = {0};
    const struct cases_wanted all = {.rule = NULL};
    size_t count = 0;
    make_home(&home);
    home_write(&home, "jurisdictions/example/attack.cases.lua", CASES);
    case_files_open(&files, home.path, &all, &problems);
    while (case_files_next(&files, &list, &problems)) {
        assert_non_null(list.first);
        for (const struct rule_case *c = list.first; c != NULL; c = c->next, count++)
            assert_string_equal(c->file, list.first->file);
        case_list_free(&list);
        assert_null(list.first);
    }
    assert_int_equal(count, 6);
    assert_int_equal(problems.count, 0);
    case_files_close(&files);
    home_remove(&home);
}

int main(void)
{
    static const struct CMUnitTest others[] = {
        cmocka_unit_test(all_cases_of_a_file_have_a_total),
        cmocka_unit_test(one_file_is_read_at_a_time),
    };
    return attacks_run("cases", 5, run_attack, others, sizeof(others) / sizeof(others[0]));
}
