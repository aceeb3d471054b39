/* Laws at rest: the rulebooks of places gone through are not kept, and a law that is asked
 * for again is the one it was. */
#include "law/law.h"
#include "prove/explain.h"
#include "prove/mutate.h"
#include "prove/proof.h"
#include "support/small_law.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <string.h>

#include <cmocka.h>

enum { DAY = 20260504 };

static size_t count_awake(const struct laws *laws)
{
    size_t count = 0;
    for (const struct law *law = laws->first; law != NULL; law = law->next)
        count += law->book != NULL;
    return count;
}

static const struct law *find(struct laws *laws, const char *id)
{
    struct problems problems = {0};
    const struct law *law = laws_find(laws, id, DAY, "", &problems);
    assert_int_equal(problems.count, 0);
    assert_non_null(law);
    problems_free(&problems);
    return law;
}

static bool has_rule(const struct rule_names *rules, const char *id)
{
    size_t found = 0;
    for (size_t i = 0; i < rules->count; i++)
        found += strcmp(rules->items[i].id, id) == 0;
    assert_true(found < 2);
    return found == 1;
}

static void those_used_last_stay_awake(void **state)
{
    (void)state;
    struct laws laws = {.home = EAVEMARK_HOME_DIR};
    const struct law *frostmere = find(&laws, "example/frostmere");
    const struct law *tamarack = find(&laws, "example/tamarack");
    const size_t rules = tamarack->book->rule_count;
    find(&laws, "model/irc-2021");
    find(&laws, "example/frostmere");
    laws_rest(&laws, 2);
    assert_int_equal(count_awake(&laws), 2);
    assert_non_null(frostmere->book);
    assert_null(tamarack->book);
    /* Its own rules are known of while it rests, and the common ones once. */
    assert_true(laws_rest_rules(&laws));
    assert_true(has_rule(&laws.rules, "deck.pictures"));
    assert_true(has_rule(&laws.rules, "slope.least"));
    assert_true(laws.rules.count >= rules);
    assert_ptr_equal(find(&laws, "example/tamarack"), tamarack);
    assert_int_equal(tamarack->book->rule_count, rules);
    laws_free(&laws);
}

/* Nobody may spend a case file's steps again by having its laws put to rest. */
static void steps_stay_counted(void **state)
{
    (void)state;
    struct laws laws = {.home = EAVEMARK_HOME_DIR};
    find(&laws, "example/tamarack");
    find(&laws, "example/frostmere");
    const long long steps = laws_steps(&laws);
    assert_true(steps > 0);
    laws_rest(&laws, 0);
    assert_int_equal(count_awake(&laws), 0);
    assert_int_equal(laws_steps(&laws), steps);
    laws_free(&laws);
}

/* A place of many stretches, each with two laws. */
static void a_proof_keeps_few_awake(void **state)
{
    (void)state;
    struct laws laws = {.home = EAVEMARK_HOME_DIR};
    struct proof proof = {.beside = NULL};
    size_t count = 0;
    proof_run(&laws, "us-fl/jacksonville", 0, &proof);
    for (const struct law *law = laws.first; law != NULL; law = law->next)
        count++;
    assert_true(count >= 12);
    assert_true(count_awake(&laws) <= PROOF_LAWS_AWAKE);
    assert_true(count_awake(&laws) < count);
    proof_free(&proof);
    laws_free(&laws);
}

/* Every case of every place is judged, and for each figure moved again. */
static void moving_figures_keeps_few_awake(void **state)
{
    (void)state;
    struct laws laws = {.home = EAVEMARK_HOME_DIR};
    struct mutation mutation = {.first = NULL};
    mutate_run(&laws, "slope", &mutation);
    assert_int_equal(mutation.problems.count, 0);
    assert_true(mutation.counts[MUTATE_NOTICED] > 20);
    assert_true(mutation.case_count > 5000);
    assert_true(count_awake(&laws) <= PROOF_LAWS_AWAKE);
    mutate_free(&mutation);
    laws_free(&laws);
}

/* Twenty places whose rules keep tables that take 15 MB and more, each its own: of one file all
 * would share them. */
static void make_large_places(struct temporary_home *home)
{
    home_make(home);
    small_law_write(home);
    for (int i = 0; i < 20; i++) {
        char path[64], text[192];
        snprintf(path, sizeof(path), "jurisdictions/large/own%d.rules.lua", i);
        home_write(
            home, path,
            "local kept = {}\n"
            "for i = 1, 60000 do kept[i] = { i, i, i, i } end\n"
            "rule \"large.one\" { title = \"x\", stage = \"permit\", mend = \"x\",\n"
            "  judge = function(job) if kept[1] then return job.existing.layers end end }\n");
        snprintf(path, sizeof(path), "jurisdictions/large/p%d.lua", i);
        snprintf(text, sizeof(text),
                 "jurisdiction \"large/p%d\" { title = \"P\", invented = true,\n"
                 "  follows = \"model/test\", rules = \"own%d.rules.lua\" }\n",
                 i, i);
        home_write(home, path, text);
    }
}

/* What is awake is bounded by its bytes too; listing all rules goes through all places. */
static void large_laws_rest_sooner(void **state)
{
    (void)state;
    struct temporary_home home;
    make_large_places(&home);
    struct laws laws = {.home = home.path};
    struct arena arena = {0};
    struct strings names = {0};
    struct problems problems = {0};
    size_t bytes;
    explain_names(&laws, NAMES_RULES, &names, &arena, &problems);
    assert_int_equal(problems.count, 0);
    assert_true(strings_have(&names, "large.one"));
    assert_true(laws_count(&laws, &bytes) >= 20);
    assert_true(count_awake(&laws) > 1);
    assert_true(bytes <= LAWS_AWAKE_BYTES);
    arena_free(&arena);
    laws_free(&laws);
    home_remove(&home);
}

/* A law that is held stays, however long ago it was used; with holders all do. */
static void what_is_held_stays_awake(void **state)
{
    (void)state;
    struct laws laws = {.home = EAVEMARK_HOME_DIR};
    const struct law *tamarack = find(&laws, "example/tamarack");
    find(&laws, "example/frostmere");
    laws.holders = 1;
    laws_rest(&laws, 0);
    assert_int_equal(count_awake(&laws), 2);
    laws.holders = 0;
    laws_rest_never(&laws, tamarack);
    laws_rest(&laws, 0);
    assert_int_equal(count_awake(&laws), 1);
    assert_non_null(tamarack->book);
    laws_rest_any(&laws);
    laws_rest(&laws, 0);
    assert_int_equal(count_awake(&laws), 0);
    laws_free(&laws);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(those_used_last_stay_awake),
        cmocka_unit_test(steps_stay_counted),
        cmocka_unit_test(a_proof_keeps_few_awake),
        cmocka_unit_test(moving_figures_keeps_few_awake),
        cmocka_unit_test(large_laws_rest_sooner),
        cmocka_unit_test(what_is_held_stays_awake),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
