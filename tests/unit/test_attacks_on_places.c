/* Every file of tests/attacks/places, as the profile of an invented county; and what
 * a county's rule file may do to those who never asked for it.
 *
 * The first line says what stops it. The county is refused, its file is named, and
 * what is said of other places does not change by a byte. */
#include "support/attacks.h"
#include "support/small_law.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static const char CALM_COUNTY[] = "jurisdiction \"example/calm\" { title = \"Calm County\",\n"
                                  "  invented = true, follows = \"model/test\",\n"
                                  "  rules = \"calm.rules.lua\" }\n";
static const char CALM_FIELD[] =
    "field \"calm\" { type = \"yes_no\", stage = \"permit\", ask = \"Is it calm?\" }\n";
static const char ATTACK_COUNTY[] = "jurisdiction \"example/attack\" { title = \"Attack County\",\n"
                                    "  invented = true, follows = \"model/test\",\n"
                                    "  rules = \"attack.rules.lua\" }\n";

static void make_home(struct temporary_home *home)
{
    home_make(home);
    small_law_write(home);
    home_write(home, "rules/harmless.lua", HARMLESS_RULE);
    home_write(home, "jurisdictions/example/calm.lua", CALM_COUNTY);
    home_write(home, "jurisdictions/example/calm.rules.lua", CALM_FIELD);
}

/* What anybody may ask without naming the county: the fields of every place, a rule in
 * words, a job of another place, and the first question of a new one. */
struct asked {
    char *fields, *rule, *job, *question;
};

static struct asked ask(const struct temporary_home *home)
{
    struct asked asked = {0};
    char *problems = NULL;
    enum eavemark_status status;
    eavemark *handle = eavemark_open(home->path);
    assert_int_equal(eavemark_fields(handle, NULL, false, NULL, NULL, &asked.fields), 0);
    const struct eavemark_request none = {0};
    assert_int_equal(
        eavemark_explain(handle, "harmless.layers", &none, EAVEMARK_TEXT, &asked.rule, &problems),
        0);
    free(problems);
    struct outcome_of_check check = home_check(handle, SMALL_JOB, NULL, NULL, NULL);
    assert_string_equal(check.problems, "");
    asked.job = check.json;
    free(check.problems);
    eavemark_interview *interview = eavemark_interview_open(handle, &none, &status, &problems);
    assert_non_null(interview);
    free(problems);
    asked.question = eavemark_interview_ask(interview, true, &problems);
    assert_non_null(asked.question);
    free(problems);
    eavemark_interview_close(interview);
    eavemark_close(handle);
    return asked;
}

static void asked_free(struct asked *asked)
{
    free(asked->fields);
    free(asked->rule);
    free(asked->job);
    free(asked->question);
}

static void assert_same(const struct asked *before, const struct asked *after)
{
    assert_string_equal(after->fields, before->fields);
    assert_string_equal(after->job, before->job);
    assert_string_equal(after->question, before->question);
    /* Explaining names the places that do not load. */
    assert_has(after->rule, "harmless.layers");
}

static void assert_refused(const struct temporary_home *home, const char *file, const char *words)
{
    eavemark *handle = eavemark_open(home->path);
    struct outcome_of_check hit = home_check(handle, SMALL_JOB, "example/attack", NULL, NULL);
    assert_int_equal(hit.status, EAVEMARK_BROKEN);
    assert_null(hit.json);
    assert_has(hit.problems, file);
    assert_has(hit.problems, words);
    assert_true(strlen(hit.problems) < 512 * 1024);
    outcome_free(&hit);
    eavemark_close(handle);
}

static void run_attack(void **state)
{
    struct attack *attack = *state;
    struct temporary_home home;
    attack_read(attack);
    make_home(&home);
    struct asked before = ask(&home);
    home_write(&home, "jurisdictions/example/attack.lua", attack->text);
    struct asked after = ask(&home);
    assert_same(&before, &after);
    assert_refused(&home, "jurisdictions/example/attack.lua", attack->words);
    asked_free(&before);
    asked_free(&after);
    home_remove(&home);
    attack_free(attack);
}

/* The attacks that are stopped while they load, as a county's own rules. */
static void rules_of_a_county(struct attack *attack)
{
    struct temporary_home home;
    attack_read(attack);
    if (!attack->load) {
        attack_free(attack);
        return;
    }
    make_home(&home);
    struct asked before = ask(&home);
    home_write(&home, "jurisdictions/example/attack.lua", ATTACK_COUNTY);
    home_write(&home, "jurisdictions/example/attack.rules.lua", attack->text);
    struct asked after = ask(&home);
    /* Fields that were declared before the file was stopped are known. */
    assert_has(after.fields, "Is it calm?");
    assert_string_equal(after.job, before.job);
    assert_string_equal(after.question, before.question);
    assert_refused(&home, "jurisdictions/example/attack.rules.lua", attack->words);
    asked_free(&before);
    asked_free(&after);
    home_remove(&home);
    attack_free(attack);
}

static void no_rules_of_a_county_hurt_another(void **state)
{
    (void)state;
    static const char *const NAMES[] = {
        "load_choices_of_one_text", "load_long_choices", "load_long_questions",
        "load_many_fields",         "load_memory",       "load_endless_loop",
        "load_unknown_key"};
    for (size_t i = 0; i < sizeof(NAMES) / sizeof(NAMES[0]); i++) {
        struct attack attack;
        attack_find(&attack, NAMES[i]);
        print_message("  %s\n", NAMES[i]);
        rules_of_a_county(&attack);
    }
}

/* Each county may have as many fields as a book: one that has that many leaves the next
 * its own, and one that fills the heap too. */
static void a_county_of_many_fields_leaves_others_theirs(void **state)
{
    (void)state;
    static const char *const HOGS[] = {
        "for i = 1, 1990 do\n"
        "  field(\"hog_\" .. i) { type = \"yes_no\", stage = \"permit\", ask = \"Hog?\" }\n"
        "end\n",
        "local kept = {}\n"
        "for i = 1, 80000 do kept[i] = { i } end\n"
        "field \"hog\" { type = \"yes_no\", stage = \"permit\", ask = \"Hog?\" }\n"};
    struct temporary_home home;
    make_home(&home);
    for (size_t i = 0; i < sizeof(HOGS) / sizeof(HOGS[0]); i++) {
        for (int hog = 0; hog < 4; hog++) {
            char path[64];
            snprintf(path, sizeof(path), "jurisdictions/example/a%d.rules.lua", hog);
            home_write(&home, path, HOGS[i]);
        }
        struct asked asked = ask(&home);
        assert_has(asked.fields, "Is it calm?");
        assert_has(asked.fields, "Hog?");
        asked_free(&asked);
    }
    home_remove(&home);
}

int main(void)
{
    static const struct CMUnitTest others[] = {
        cmocka_unit_test(no_rules_of_a_county_hurt_another),
        cmocka_unit_test(a_county_of_many_fields_leaves_others_theirs),
    };
    return attacks_run("places", 5, run_attack, others, sizeof(others) / sizeof(others[0]));
}
