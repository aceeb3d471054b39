/* What a county administrator is told of a place: how it differs from what it
 * follows, what is wrong with its files, and which figures no case watches. */
#include "support/temporary_home.h"

#include <cjson/cJSON.h>

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

static const char FIELDS[] =
    "field 'eavemark_job' { type = 'integer', range = { 1, 1 }, required = true, stage = 'permit',\n"
    "  ask = 'Which form?' }\n"
    "field 'job' { type = 'text', required = true, stage = 'permit', ask = 'Which job?' }\n"
    "field 'jurisdiction' { type = 'text', required = true, stage = 'permit', ask = 'Where?' }\n"
    "field 'date' { type = 'date', required = true, stage = 'permit', ask = 'When?' }\n"
    "field 'stage' { type = 'text', stage = 'permit', ask = 'How far?' }\n"
    "field 'roof' { type = 'group', stage = 'permit', ask = 'Roof' }\n"
    "field 'roof.layers' { type = 'integer', unit = 'layers', range = { 0, 9 }, stage = 'permit',\n"
    "  ask = 'How many layers?' }\n"
    "field 'roof.kind' { type = 'choice', choices = { 'felt', 'synthetic', 'none' },\n"
    "  stage = 'permit', ask = 'Which underlayment?' }\n";

static const char RULES[] =
    "rule 'roof.layers' { reads = { facts = { 'roof.layers' }, figures = { 'roof.layers_most' } }, title = 'Layers', stage = 'permit', mend = 'Take one off.',\n"
    "  judge = function(job, figure)\n"
    "    return at_most(job.roof.layers, figure 'roof.layers_most', 'layers')\n"
    "  end }\n"
    "rule 'roof.kind' { reads = { facts = { 'roof.kind' }, figures = { 'roof.kind_required', 'roof.kinds' } }, title = 'Underlayment', stage = 'permit', mend = 'Use another.',\n"
    "  applies = function(job, figure) return figure \"roof.kind_required\" end,\n"
    "  judge = function(job, figure) return one_of(job.roof.kind, figure 'roof.kinds') end }\n"
    "rule 'roof.bounds' { title = 'Bounds', stage = 'permit', mend = 'Mend.',\n"
    "  reads = { figures = { 'roof.lap_least', 'roof.wind_from', 'roof.high_over',\n"
    "    'roof.low_under', 'roof.not_over', 'roof.way', 'roof.overlay', 'roof.exactly',\n"
    "    'roof.papers', 'roof.old_kinds', 'roof.lengths', 'roof.sketch_required',\n"
    "    'roof.sketch_copies_least' } },\n"
    "  applies = function(job, figure) return false end,\n"
    "  judge = function(job, figure)\n"
    "    return at_least(1, figure 'roof.lap_least', 'in')\n"
    "  end }\n";

static const char MODEL[] =
    "local function f(value, sense, unit, yes, lever)\n"
    "  return { value, sense = sense, unit = unit, cite = 'R1', status = 'seen', source = 's',\n"
    "    stricter = yes, behind = lever }\n"
    "end\n"
    "jurisdiction 'model/base' { title = 'The base', model = true, edition = 'Base 1',\n"
    "  figures = {\n"
    "    ['roof.layers_most'] = f(2, 'at_most', 'layers'),\n"
    "    ['roof.lap_least'] = f(4, 'at_least', 'in'),\n"
    "    ['roof.wind_from'] = f(140, 'from', 'mph'),\n"
    "    ['roof.high_over'] = f(33, 'over', 'ft'),\n"
    "    ['roof.low_under'] = f(4, 'under', 'rise_in_12'),\n"
    "    ['roof.exactly'] = f(4, 'equals', 'in'),\n"
    "    ['roof.kinds'] = f({ 'felt', 'synthetic' }, 'one_of'),\n"
    "    ['roof.not_over'] = f({ 'slate' }, 'none_of'),\n"
    "    ['roof.kind_required'] = f(true, 'equals', nil, true),\n"
    "    ['roof.overlay'] = f(true, 'equals', nil, false),\n"
    "    ['roof.way'] = f(true, 'equals', nil, 'neither'),\n"
    "    ['roof.papers'] = f({ 'felt', 'none' }, 'all_of'),\n"
    "    ['roof.old_kinds'] = f({ 'felt' }, 'among'),\n"
    "    ['roof.lengths'] = f({ '1.25', '1.5' }, 'one_of'),\n"
    "    ['roof.sketch_required'] = f(false, 'equals', nil, true),\n"
    "    ['roof.sketch_copies_least'] = f(2, 'at_least', 'count', nil, 'roof.sketch_required'),\n"
    "  } }\n";

static const char JOB[] =
    "{ \"eavemark_job\": 1, \"job\": \"base\", \"jurisdiction\": \"model/base\",\n"
    "  \"date\": \"2025-01-01\", \"roof\": { \"layers\": 1, \"kind\": \"felt\" } }\n";

static const char CASES[] =
    "cases 'roof.layers' { under = 'model/base',\n"
    "  { 'two', with = { ['roof.layers'] = 2 }, expect = 'pass' },\n"
    "  { 'three', with = { ['roof.layers'] = 3 }, expect = 'fail' },\n"
    "  { 'not known', without = { 'roof.layers' }, expect = 'open' } }\n"
    "cases 'roof.kind' { under = 'model/base',\n"
    "  { 'felt', expect = 'pass' },\n"
    "  { 'synthetic', with = { ['roof.kind'] = 'synthetic' }, expect = 'pass' },\n"
    "  { 'none', with = { ['roof.kind'] = 'none' }, expect = 'fail' },\n"
    "  { 'not known', without = { 'roof.kind' }, expect = 'open' } }\n";

/* One proof, and what it said. */
struct proof {
    struct temporary_home home;
    enum eavemark_status status;
    char *report, *problems;
};

static void start(struct proof *proof)
{
    *proof = (struct proof){.status = EAVEMARK_BROKEN};
    home_make(&proof->home);
    home_write(&proof->home, "rules/fields.lua", FIELDS);
    home_write(&proof->home, "rules/roof.lua", RULES);
    home_write(&proof->home, "rules/cases/base.json", JOB);
    home_write(&proof->home, "rules/cases/roof.lua", CASES);
    home_write(&proof->home, "jurisdictions/model/base.lua", MODEL);
}

static void forget(struct proof *proof)
{
    free(proof->report);
    free(proof->problems);
    proof->report = proof->problems = NULL;
}

static void end(struct proof *proof)
{
    forget(proof);
    home_remove(&proof->home);
}

static void prove_on(struct proof *proof, const char *name, const char *date,
                     enum eavemark_form form)
{
    forget(proof);
    eavemark *handle = eavemark_open(proof->home.path);
    assert_non_null(handle);
    proof->status = eavemark_proof(handle, name, date, NULL, form, &proof->report,
                                   &proof->problems);
    eavemark_close(handle);
    assert_non_null(proof->problems);
}

static void prove(struct proof *proof, const char *name)
{
    prove_on(proof, name, NULL, EAVEMARK_TEXT);
}

/* Writes a county of this one block body and proves it. */
static void county(struct proof *proof, const char *body)
{
    char text[4000];
    snprintf(text, sizeof(text),
             "jurisdiction \"elm\" { title = \"Elm County\", invented = true,\n"
             "  follows = \"model/base\",\n%s}\n",
             body);
    home_write(&proof->home, "jurisdictions/elm.lua", text);
    prove(proof, "elm");
}

/* Runs of spaces and line ends as one space, so that wrapping is no matter. */
static void join_lines(char *text)
{
    char *to = text;
    for (const char *from = text; *from != '\0'; from++) {
        const bool space = *from == ' ' || *from == '\n';
        if (!space || to == text || to[-1] != ' ')
            *to++ = space ? ' ' : *from;
    }
    *to = '\0';
}

static size_t count_of(const char *text, const char *words)
{
    size_t count = 0;
    for (const char *at = strstr(text, words); at != NULL; at = strstr(at + 1, words))
        count++;
    return count;
}

static void assert_ends(const char *text, const char *words)
{
    const size_t length = strlen(text), tail = strlen(words);
    assert_true(length >= tail);
    assert_string_equal(text + length - tail, words);
}

/* Differences ------------------------------------------------------------------ */

struct move {
    const char *figure, *value, *kind;
};

/* Which way each sense goes: at least and under bind more when they rise, at
 * most, from and over when they fall; one of with fewer, none of with more. */
static const struct move MOVES[] = {
    {"roof.layers_most", "1", "stricter"},
    {"roof.layers_most", "3", "looser"},
    {"roof.lap_least", "6", "stricter"},
    {"roof.lap_least", "3.5", "looser"},
    {"roof.wind_from", "120", "stricter"},
    {"roof.wind_from", "150", "looser"},
    {"roof.high_over", "30", "stricter"},
    {"roof.high_over", "40", "looser"},
    {"roof.low_under", "5", "stricter"},
    {"roof.low_under", "3", "looser"},
    {"roof.exactly", "5", "both ways"},
    {"roof.kinds", "{ 'felt' }", "stricter"},
    {"roof.kinds", "{ 'felt', 'synthetic', 'none' }", "looser"},
    {"roof.kinds", "{ 'felt', 'none' }", "both ways"},
    {"roof.not_over", "{ 'slate', 'tile' }", "stricter"},
    {"roof.not_over", "{}", "looser"},
    {"roof.kind_required", "false", "looser"},
    {"roof.papers", "{ 'felt', 'none', 'synthetic' }", "stricter"},
    {"roof.papers", "{ 'felt' }", "looser"},
    {"roof.papers", "{}", "looser"},
    {"roof.old_kinds", "{ 'felt', 'none' }", "changed"},
    {"roof.overlay", "false", "stricter"},
    {"roof.way", "false", "both ways"},
};

static void tells_which_way_a_figure_moved(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    for (size_t i = 0; i < sizeof(MOVES) / sizeof(MOVES[0]); i++) {
        char body[300], line[200];
        snprintf(body, sizeof(body), "figures = { ['%s'] = { %s, cite = 'C1' } },\n",
                 MOVES[i].figure, MOVES[i].value);
        county(&proof, body);
        assert_int_equal(proof.status, EAVEMARK_NOTHING_FAILED);
        snprintf(line, sizeof(line), "  %-10s%s: was ", MOVES[i].kind, MOVES[i].figure);
        assert_has(proof.report, line);
        /* Some job that failed may pass. */
        if (strcmp(MOVES[i].kind, "looser") == 0 || strcmp(MOVES[i].kind, "both ways") == 0)
            assert_has(proof.report, "Caution: ");
        else
            assert_has_not(proof.report, "Caution: ");
        assert_ends(proof.report, "\n0 passed, 0 failed\n");
    }
    end(&proof);
}

/* No name says it: only the figure does. */
static void asks_of_a_new_yes_or_no_which_is_stricter(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    county(&proof, "figures = { ['roof.new_required'] = { true, sense = 'equals', cite = 'C1',\n"
                   "  status = 'invented', source = 'Elm' } },\n");
    join_lines(proof.report);
    assert_has(proof.report, "figure \"roof.new_required\" is yes or no, and does not say which "
                             "asks for more: write stricter = true, false or \"neither\"");
    county(&proof, "figures = { ['roof.new_required'] = { true, sense = 'equals', cite = 'C1',\n"
                   "  status = 'invented', source = 'Elm', stricter = 'neither' } },\n");
    assert_has_not(proof.report, "which asks for more");
    end(&proof);
}

/* A limit of a duty that nobody had is neither tightened nor loosened: the duty is new. */
static void takes_a_limit_behind_a_switch_that_was_off_for_new(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    county(&proof, "figures = { ['roof.sketch_required'] = { true, cite = 'C1' },\n"
                   "  ['roof.sketch_copies_least'] = { 1, cite = 'C1' } },\n");
    assert_int_equal(proof.status, EAVEMARK_NOTHING_FAILED);
    assert_has(proof.report, "  added     roof.sketch_copies_least: at least 1 (Elm County C1)\n");
    assert_has(proof.report, "  stricter  roof.sketch_required: was no, now yes (Elm County C1)\n");
    assert_has_not(proof.report, "Caution: ");
    county(&proof, "figures = { ['roof.sketch_copies_least'] = { 1, cite = 'C1' } },\n");
    assert_has(proof.report,
               "  changed   roof.sketch_copies_least: was at least 2, now at least 1 ");
    end(&proof);
}

/* The page of a place may print what is followed anyway: that is worth saying. */
static void lets_a_page_of_its_own_say_the_same(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    county(&proof, "figures = { [\"roof.layers_most\"] = { 2, cite = 'C', status = 'seen',\n"
                   "  source = 'Elm page' } },\n");
    assert_has(proof.report, "0 errors, 0 warnings\n");
    county(&proof, "figures = { [\"roof.layers_most\"] = { 2, cite = 'C', status = 'seen',\n"
                   "  source = 's' } },\n");
    assert_has(proof.report, "0 errors, 1 warning\n");
    end(&proof);
}

/* A word that no job can say would let nothing pass, or ask for nothing. */
static void finds_a_map_that_no_rule_asks_for(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    char fields[4000];
    snprintf(fields, sizeof(fields),
             "%sfield 'site' { type = 'group', stage = 'permit', ask = 'Site' }\n", FIELDS);
    home_write(&proof.home, "rules/fields.lua", fields);
    county(&proof, "zones = { [\"site.local_fog_zone\"] = { 'wet', 'dry', ask = 'Which?' } },\n");
    join_lines(proof.report);
    assert_has(proof.report, "error jurisdictions/elm.lua:3: zone \"site.local_fog_zone\" decides "
                             "nothing: no rule asks for it");
    home_write(&proof.home, "rules/fog.lua",
               "demand 'roof.fog' { title = 'Fog', stage = 'permit', fact = 'roof.layers',\n"
               "  when = { is { 'site.local_fog_zone', 'wet' } },\n"
               "  meets = 'roof.layers_most', mend = 'Wait.' }\n");
    prove(&proof, "elm");
    assert_has(proof.report, "0 errors, 0 warnings");
    end(&proof);
}

static void finds_slips_in_the_words_of_a_set(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    county(&proof,
           "figures = {\n  [\"roof.kinds\"] = { { 'felt', 'sinthetic' }, cite = 'C1' } },\n");
    assert_int_equal(proof.status, EAVEMARK_FAILED);
    join_lines(proof.report);
    assert_has(proof.report,
               "error jurisdictions/elm.lua:4: figure \"roof.kinds\": no field of a job "
               "can say \"sinthetic\"; did you mean \"synthetic\"?");
    county(&proof, "figures = { ['roof.papers'] = { { 'layers', 'moon' }, cite = 'C1' } },\n");
    join_lines(proof.report);
    assert_has_not(proof.report, "can say \"layers\""); /* a field's own name will do */
    assert_has(proof.report, "can say \"moon\"; `eavemark fields` lists what they can");
    county(&proof, "figures = { ['roof.lengths'] = { { '1.75' }, cite = 'C1' } },\n");
    assert_int_equal(proof.status, EAVEMARK_NOTHING_FAILED); /* no words of a job to begin with */
    end(&proof);
}

/* What a county's line says that loads, and is not what was meant: each with what to write. */
static const struct {
    const char *figures, *says;
} TRAPS[] = {
    {"['roof.share_most'] = { 0.25, cite = '1' }",
     "warning jurisdictions/elm.lua:4: figure \"roof.share_most\" is 0.25 percent, where what is followed says "
     "40: a quarter is 25, or \"25 %\""},
    {"['roof.lap_least'] = { 48, cite = '1' }",
     "warning jurisdictions/elm.lua:4: figure \"roof.lap_least\" is 48 in, where what is followed says 4: if "
     "another unit is meant, write it, \"48 ft\""},
    {"['roof.old_kinds'] = { { 'synthetic' }, cite = '1' }",
     "warning jurisdictions/elm.lua:4: figure \"roof.old_kinds\" holds nothing of the set followed, and loses "
     "\"felt\"; to keep it write adds = { \"synthetic\" }, else say instead = true"},
    {"['roof.papers'] = { { 'felt' }, cite = '1' }",
     "warning jurisdictions/elm.lua:4: figure \"roof.papers\" loses \"none\" of the set followed; if that is "
     "meant, write without = { \"none\" }"},
    {"['roof.sketch_copies_least'] = { 3, cite = '1' }",
     "warning jurisdictions/elm.lua:4: figure \"roof.sketch_copies_least\" binds nobody: it stands behind "
     "\"roof.sketch_required\", which is off here; write [\"roof.sketch_required\"] = { true, cite "
     "= ... } too, or take the line out"},
    {"['roof.sketch_copies_least'] = { 2, cite = '1' }",
     "warning jurisdictions/elm.lua:4: figure \"roof.sketch_copies_least\" binds nobody: it stands behind "
     "\"roof.sketch_required\", which is off here"},
    {"['roof.banned'] = { { 'metal' }, cite = '1' }",
     "error jurisdictions/elm.lua:4: figure \"roof.banned\" holds \"metal\", which roof.kind cannot be; "
     "`eavemark fields roof.kind` lists what it can"},
    {"['roof.banned'] = { { 'syntetic' }, cite = '1' }",
     "error jurisdictions/elm.lua:4: figure \"roof.banned\" holds \"syntetic\", which roof.kind cannot be; did "
     "you mean \"synthetic\"?; `eavemark fields roof.kind` lists what it can"},
    {"['roof.planned_most'] = { 12, cite = '1' }",
     "error jurisdictions/elm.lua:4: figure \"roof.planned_most\" is 12, but roof.layers, which is held against "
     "it, can only be 0 to 9: no job can come to it"},
    {"['roof.custom_most'] = { 2, cite = '1', status = 'seen', source = 'the code' }",
     "stricter roof.custom_most: was at most 2 layers, now at most 2 layers (Elm County 1) "
     "Caution: the same value, but common practice before: a house that does not meet it only "
     "warned, and fails here."},
};

/* The same lines as they are meant: nothing is said of them. */
static const char *const MEANT[] = {
    "['roof.share_most'] = { '25 %', cite = '1' }",
    "['roof.lap_least'] = { 6, cite = '1' }",
    "['roof.old_kinds'] = { adds = { 'synthetic' }, cite = '1' }",
    "['roof.old_kinds'] = { { 'synthetic' }, instead = true, cite = '1' }",
    "['roof.papers'] = { without = { 'none' }, cite = '1' }",
    "['roof.sketch_required'] = { true, cite = '1' }, ['roof.sketch_copies_least'] = { 3, cite = '1' }",
    "['roof.banned'] = { { 'synthetic' }, cite = '1' }",
    "['roof.planned_most'] = { 9, cite = '1' }",
};

static const char TRAP_RULES[] =
    "rule 'roof.traps' { reads = { facts = { 'roof.layers' }, figures = { 'roof.banned', 'roof.custom_most', 'roof.planned_most', 'roof.share_most' } }, title = 'Traps', stage = 'permit', mend = 'Mend.',\n"
    "  judge = function(job, figure)\n"
    "    return at_most(job.roof.layers, figure 'roof.planned_most', 'layers')\n"
    "  end }\n"
    "demand 'roof.planned' { title = 'Planned', stage = 'permit', fact = 'roof.layers',\n"
    "  meets = 'roof.planned_most', mend = 'Plan fewer.' }\n";

static const char TRAP_FIGURES[] =
    "  figures = { ['roof.share_most'] = { 40, unit = 'percent', sense = 'at_most', cite = 'R2',\n"
    "    status = 'seen', source = 's' },\n"
    "  ['roof.banned'] = { {}, sense = 'none_of', words = 'roof.kind', cite = 'R2',\n"
    "    status = 'seen', source = 's' },\n"
    "  ['roof.planned_most'] = { 2, unit = 'layers', sense = 'at_most', cite = 'R2',\n"
    "    status = 'seen', source = 's' },\n"
    "  ['roof.custom_most'] = { 2, unit = 'layers', sense = 'at_most', cite = 'R2',\n"
    "    status = 'practice', source = 's' },\n";

static void tells_what_loads_and_is_not_meant(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    const char *at = strstr(MODEL, "  figures = {\n");
    char model[8000];
    snprintf(model, sizeof(model), "%.*s%s%s", (int)(at - MODEL), MODEL, TRAP_FIGURES,
             at + strlen("  figures = {\n"));
    home_write(&proof.home, "jurisdictions/model/base.lua", model);
    home_write(&proof.home, "rules/traps.lua", TRAP_RULES);
    for (size_t i = 0; i < sizeof(TRAPS) / sizeof(TRAPS[0]); i++) {
        char body[400];
        snprintf(body, sizeof(body), "  figures = {\n%s } ", TRAPS[i].figures);
        county(&proof, body);
        join_lines(proof.report);
        assert_has(proof.report, TRAPS[i].says);
    }
    for (size_t i = 0; i < sizeof(MEANT) / sizeof(MEANT[0]); i++) {
        char body[400];
        snprintf(body, sizeof(body), "  figures = {\n%s } ", MEANT[i]);
        county(&proof, body);
        join_lines(proof.report);
        assert_has(proof.report, "0 errors, ");
        assert_int_equal(count_of(proof.report, "warning jurisdictions/"),
                         count_of(proof.report, "is moved, and no case under this place"));
    }
    end(&proof);
}

/* Cases of topics and beside other places count where they are under the place; what is wrong
 * with the files that they stand in does not. */
static void counts_cases_under_the_place_wherever_they_stand(void **state)
{
    (void)state;
    static const char ONE[] = "figures = { ['roof.layers_most'] = { 1, cite = 'C1' } },\n";
    static const char UNDER_ELM[] = "cases 'roof.layers' {\n"
                                    "  { 'one', under = 'elm', with = { ['roof.layers'] = 1 },\n"
                                    "    expect = 'pass' },\n"
                                    "  { 'two', under = 'elm', with = { ['roof.layers'] = 2 },\n"
                                    "    expect = 'pass' },\n"
                                    "  { 'of the base', with = { ['roof.layers'] = 9 },\n"
                                    "    expect = 'pass' } }\n";
    static const char *const FILES[] = {"rules/cases/more.lua", "jurisdictions/yew.cases.lua"};
    for (size_t i = 0; i < 2; i++) {
        struct proof proof;
        start(&proof);
        home_write(&proof.home, FILES[i], UNDER_ELM);
        home_write(&proof.home, "rules/cases/broken.lua", "cases 'roof.layers' {\n");
        county(&proof, ONE);
        join_lines(proof.report);
        assert_int_equal(proof.status, EAVEMARK_FAILED);
        assert_has(proof.report, "cases of 1 figures given otherwise here, cases judge by 1");
        assert_has(proof.report, "\"two\": expected pass, got fail");
        assert_has(proof.report, "1 passed, 1 failed");
        assert_null(strstr(proof.report, "broken.lua"));
        end(&proof);
    }
}

/* A key that is not known would be passed over, and the case test something else. */
static void refuses_what_a_case_cannot_mean(void **state)
{
    (void)state;
    static const struct {
        const char *group, *one, *says;
    } SLIPS[] = {
        {"dtae = '2026-03-02'", "expect = 'pass'",
         "elm.cases.lua:1: unknown key \"dtae\"; did you mean \"date\"?"},
        {"date = '2026-03-02'", "expect = 'pass', fuond = 1",
         "elm.cases.lua:1: unknown key \"fuond\"; did you mean \"found\"?"},
        {"date = '2026-03-02'", "expect = 'open', without = 'roof.layers'",
         "without is a list of places, { \"...\" }"},
        {"by_place = 'no'", "expect = 'pass'", "by_place must be true or false"},
    };
    struct proof proof;
    start(&proof);
    for (size_t i = 0; i < sizeof(SLIPS) / sizeof(SLIPS[0]); i++) {
        char text[400];
        snprintf(text, sizeof(text),
                 "cases 'roof.layers' { under = 'elm', %s,\n  { 'one', %s } }\n", SLIPS[i].group,
                 SLIPS[i].one);
        home_write(&proof.home, "jurisdictions/elm.cases.lua", text);
        county(&proof, "");
        join_lines(proof.report);
        assert_int_not_equal(proof.status, EAVEMARK_NOTHING_FAILED);
        if (strstr(proof.report, SLIPS[i].says) == NULL)
            assert_has(proof.problems, SLIPS[i].says);
    }
    home_write(&proof.home, "jurisdictions/elm.cases.lua",
               "cases 'roof.layer' { under = 'elm', { 'one', expect = 'pass' } }\n");
    county(&proof, "");
    join_lines(proof.report);
    assert_has(proof.report, "no rule of that name binds under elm; did you mean \"roof.layers\"?");
    end(&proof);
}

/* A line that the later edition forgets ends with the earlier, and is told. */
static void tells_what_a_later_edition_leaves(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    county(&proof,
           "from = '2026-01-01', figures = { ['roof.layers_most'] = { 1, cite = 'C1' } } }\n"
           "jurisdiction \"elm\" { title = 'E', invented = true, follows = 'model/base',\n"
           "  from = '2027-01-01',\n");
    join_lines(proof.report);
    assert_has(proof.report, "ended roof.layers_most: was at most 1 layer, now at most ");
    end(&proof);
}

/* What looks like a file of the place, and is not read. */
static void tells_of_files_that_nothing_names(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    home_write(&proof.home, "jurisdictions/elm.fire.lua", "figures { }\n");
    home_write(&proof.home, "jurisdictions/elm.rules.lua", "\n");
    home_write(&proof.home, "jurisdictions/oak.cases.lua", "\n");
    county(&proof, "");
    join_lines(proof.report);
    assert_has(proof.report,
               "warning jurisdictions/elm.fire.lua: is named by nothing in "
               "jurisdictions/elm.lua, and not read: write parts = { \"...\" } there");
    assert_has(proof.report, "warning jurisdictions/elm.rules.lua: is named by nothing in "
                             "jurisdictions/elm.lua, and not read: write rules = \"...\" there");
    prove(&proof, NULL);
    join_lines(proof.report);
    assert_has(proof.report, "error jurisdictions/oak.cases.lua: stands beside no place: there is "
                             "no jurisdiction \"oak\"");
    county(&proof, "model = true,\n");
    join_lines(proof.report);
    assert_has(proof.report, "says model = true, which is of model codes");
    end(&proof);
}

/* A figure given otherwise, and no case that would notice: told with its line until one is
 * judged by it. An edition that repeats it needs none of its own. */
static void asks_for_a_case_of_each_figure_moved(void **state)
{
    (void)state;
    static const char ONE[] = "figures = { ['roof.layers_most'] = { 1, cite = 'C1' } },\n";
    static const char TOLD[] =
        "warning jurisdictions/elm.lua:3: figure \"roof.layers_most\" is "
        "moved, and no case under this place is judged by it: write one at the "
        "figure and one just past it in elm.cases.lua";
    struct proof proof;
    start(&proof);
    county(&proof, ONE);
    assert_int_equal(proof.status, EAVEMARK_NOTHING_FAILED);
    join_lines(proof.report);
    assert_has(proof.report, TOLD);
    assert_has(proof.report, "cases of 1 figures given otherwise here, cases judge by 0");
    /* Of the model it shows nothing here, though the rule is the same. */
    home_write(&proof.home, "jurisdictions/elm.cases.lua",
               "cases 'roof.layers' { under = 'model/base',\n"
               "  { 'two', with = { ['roof.layers'] = 2 }, expect = 'pass' } }\n");
    county(&proof, ONE);
    join_lines(proof.report);
    assert_has(proof.report, TOLD);
    home_write(&proof.home, "jurisdictions/elm.cases.lua",
               "cases 'roof.layers' { under = 'elm', date = '2026-03-02',\n"
               "  { 'one', with = { ['roof.layers'] = 1 }, expect = 'pass' } }\n");
    county(&proof,
           "from = '2026-01-01', figures = { ['roof.layers_most'] = { 1, cite = 'C1' } } }\n"
           "jurisdiction \"elm\" { title = 'E', invented = true, follows = 'model/base',\n"
           "  from = '2027-01-01', figures = { ['roof.layers_most'] = { 1, cite = 'C2' } },\n");
    join_lines(proof.report);
    assert_has(proof.report, "0 errors, 0 warnings");
    assert_int_equal(
        count_of(proof.report, "cases of 1 figures given otherwise here, cases judge by 1"), 2);
    /* On one day alone, too. */
    prove_on(&proof, "elm", "2027-02-02", EAVEMARK_TEXT);
    join_lines(proof.report);
    assert_has(proof.report, "0 errors, 0 warnings");
    /* Of all places, how many. */
    prove(&proof, NULL);
    assert_has(proof.report, "of 2 figures that places give otherwise, cases judge by 2");
    end(&proof);
}

/* A switch turned brings or takes the limits behind it, and the rules that ask for it first,
 * though these stand as they stood. */
static void tells_what_a_switch_turns_on_and_off(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    home_write(
        &proof.home, "rules/sketch.lua",
        "demand 'roof.sketch' { title = 'A sketch', stage = 'permit', fact = 'roof.layers',\n"
        "  when = { on { 'roof.sketch_required', otherwise = 'none is asked for' } },\n"
        "  meets = 'roof.layers_most', mend = 'Draw one.' }\n"
        "demand 'roof.no_sketch' { title = 'No sketch', stage = 'permit',\n"
        "  when = { off { 'roof.sketch_required', otherwise = 'one is asked for' } },\n"
        "  fact = 'roof.layers', meets = 'roof.layers_most', mend = 'Draw none.' }\n");
    county(&proof, "figures = { ['roof.sketch_required'] = { true, cite = 'C1' } },\n");
    join_lines(proof.report);
    assert_has(proof.report, "added roof.sketch_copies_least: at least 2 (Base 1 R1), by "
                             "[\"roof.sketch_required\"]");
    assert_has(proof.report, "added duty roof.sketch: A sketch");
    assert_has(proof.report, "removed duty roof.no_sketch: No sketch Caution: nothing checks");
    home_write(&proof.home, "jurisdictions/oak.lua",
               "jurisdiction 'oak' { title = 'Oak', invented = true, follows = 'elm',\n"
               "  figures = { ['roof.sketch_required'] = { false, cite = 'C9' } } }\n");
    prove(&proof, "oak");
    join_lines(proof.report);
    assert_has(proof.report, "removed roof.sketch_copies_least: at least 2 (Base 1 R1), by "
                             "[\"roof.sketch_required\"] Caution: this limit binds nobody");
    assert_has(proof.report, "removed duty roof.sketch: A sketch");
    assert_has(proof.report, "added duty roof.no_sketch: No sketch");
    /* Given again beside the switch, it is the place's own. */
    county(&proof, "figures = { ['roof.sketch_required'] = { true, cite = 'C1' },\n"
                   "  ['roof.sketch_copies_least'] = { 2, cite = 'C2' } },\n");
    join_lines(proof.report);
    assert_has(proof.report, "added roof.sketch_copies_least: at least 2 (Elm County C2)");
    assert_has_not(proof.report, "changes no value");
    end(&proof);
}

/* A county's cases are of that county, or they prove another law. */
static void asks_of_which_place_a_case_is(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    home_write(&proof.home, "jurisdictions/elm.cases.lua",
               "cases 'roof.layers' {\n"
               "  { 'two', with = { ['roof.layers'] = 2 }, expect = 'pass' },\n"
               "  { 'one', with = { ['roof.layers'] = 1 }, expect = 'pass', under = 'elm' } }\n");
    county(&proof, "");
    join_lines(proof.report);
    assert_has(proof.report, "says no place, and would be judged under that of the base job: write "
                             "under = \"elm\"");
    assert_ends(proof.report, "1 passed, 1 failed ");
    end(&proof);
}

/* The same word in two counties' fields of one name, which are not the same field. */
static void tells_of_a_field_that_two_counties_declare(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    home_write(&proof.home, "jurisdictions/ash.rules.lua",
               "field 'roof.zone' { type = 'choice', choices = { 'red', 'other' },\n"
               "  stage = 'permit', ask = 'Which?' }\n");
    home_write(&proof.home, "jurisdictions/elm.rules.lua",
               "field 'roof.zone' { type = 'choice', choices = { 'north', 'other' },\n"
               "  stage = 'permit', ask = 'Which?' }\n");
    county(&proof, "  rules = 'elm.rules.lua' ");
    join_lines(proof.report);
    assert_has(proof.report, "field \"roof.zone\" is declared in jurisdictions/ash.rules.lua too, "
                             "with other choices, and \"other\" is one of both");
    home_write(&proof.home, "jurisdictions/elm.rules.lua",
               "field 'roof.zone' { type = 'choice', choices = { 'north', 'south' },\n"
               "  stage = 'permit', ask = 'Which?' }\n");
    prove(&proof, "elm");
    assert_has_not(proof.report, "roof.zone\" is declared");
    /* Whoever names no place sees the words of both. */
    char *fields = NULL;
    eavemark *handle = eavemark_open(proof.home.path);
    assert_int_equal(eavemark_fields(handle, NULL, false, NULL, NULL, &fields), 0);
    join_lines(fields);
    assert_has(fields, "choice: red, other, north, south");
    free(fields);
    eavemark_close(handle);
    end(&proof);
}

static void gives_both_values_with_units_and_the_citation(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    county(&proof, "figures = { ['roof.layers_most'] = { 1, cite = 'ch. 7' } },\n");
    join_lines(proof.report);
    assert_has(proof.report, "roof.layers_most: was at most 2 layers, now at most 1 layer "
                             "(Elm County ch. 7)");
    county(&proof, "figures = { ['roof.papers'] = { {}, cite = 'ch. 7' } },\n");
    join_lines(proof.report);
    assert_has(proof.report, "roof.papers: was all of felt, none, now none (Elm County ch. 7)");
    end(&proof);
}

static const char OWN_RULES[] =
    "field 'roof.own' { type = 'yes_no', stage = 'permit', ask = 'Its own?' }\n"
    "rule 'roof.own' { reads = { facts = { 'roof.own' }, figures = { 'roof.own_required' } }, title = 'Its own rule', stage = 'permit', mend = 'Mend.',\n"
    "  judge = function(job, figure) return equals(job.roof.own, figure 'roof.own_required') end }\n";

static const char OWN_CASES[] = "cases 'roof.own' { under = 'elm', date = '2025-01-01',\n"
                                "  { 'yes', with = { ['roof.own'] = true }, expect = 'pass' },\n"
                                "  { 'no', with = { ['roof.own'] = false }, expect = 'fail' },\n"
                                "  { 'not known', expect = 'open' } }\n";

static const char OWN_BODY[] =
    "rules = 'elm.rules.lua', drop = { ['roof.kind'] = 'waived by C2' }, figures = {\n"
    "  ['roof.own_required'] = { true, sense = 'equals', stricter = true, cite = 'C3', status = 'invented',\n"
    "    source = 'Elm' } },\n";

static void names_what_was_removed_and_added(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    home_write(&proof.home, "jurisdictions/elm.rules.lua", OWN_RULES);
    home_write(&proof.home, "jurisdictions/elm.cases.lua", OWN_CASES);
    county(&proof, OWN_BODY);
    assert_int_equal(proof.status, EAVEMARK_NOTHING_FAILED);
    assert_has(proof.report, "  removed   rule roof.kind: waived by C2\n"
                             "            Caution: nothing checks this here any more;");
    assert_has(proof.report, "  added     roof.own_required: yes (Elm County C3)\n");
    assert_has(proof.report, "  added     rule roof.own: Its own rule\n");
    assert_has(proof.report, "  added     field roof.own: Its own?\n");
    assert_ends(proof.report, "\n3 passed, 0 failed\n");
    end(&proof);
}

/* A county's own rule needs cases as any other does. */
static void asks_for_cases_of_its_own_rules(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    home_write(&proof.home, "jurisdictions/elm.rules.lua", OWN_RULES);
    county(&proof, OWN_BODY);
    assert_int_equal(proof.status, EAVEMARK_FAILED);
    assert_has(proof.report,
               "jurisdictions/elm.rules.lua:2: rule \"roof.own\" has no case that is met"
               " not-met lacking-a-fact");
    end(&proof);
}

/* Dates ------------------------------------------------------------------------ */

static const char TWO_EDITIONS[] =
    "local function e(from, to, follows, most)\n"
    "  return { title = 'Elm County', invented = true, follows = follows, from = from, to = to,\n"
    "    figures = { ['roof.layers_most'] = { most, cite = 'C1' } } }\n"
    "end\n"
    "jurisdiction 'elm' (e('2020-01-01', '2022-01-01', 'model/base', 1))\n"
    "jurisdiction 'elm' (e('2023-01-01', nil, 'model/base', 3))\n";

static void shows_each_edition_and_warns_of_gaps(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    home_write(&proof.home, "jurisdictions/elm.lua", TWO_EDITIONS);
    prove(&proof, "elm");
    assert_int_equal(proof.status, EAVEMARK_NOTHING_FAILED);
    assert_has(proof.report, "From 2020-01-01 up to 2022-01-01, beside The base:\n  stricter");
    assert_has(proof.report, "From 2023-01-01, beside The base:\n  looser");
    assert_has(proof.report,
               "  warning   jurisdictions/elm.lua:6: no edition covers 2022-01-01 up to");
    prove_on(&proof, "elm", "2021-06-01", EAVEMARK_TEXT);
    assert_has(proof.report, "  stricter");
    assert_has_not(proof.report, "  looser");
    prove_on(&proof, "elm", "2022-06-01", EAVEMARK_TEXT);
    assert_int_equal(proof.status, EAVEMARK_UNUSABLE);
    assert_has(proof.problems, "no edition of elm covers 2022-06-01");
    prove_on(&proof, "elm", "2022-06-31", EAVEMARK_TEXT);
    assert_has(proof.problems, "\"2022-06-31\" is not a date");
    end(&proof);
}

static void finds_editions_that_no_date_can_reach(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    home_write(&proof.home, "jurisdictions/state.lua",
               "jurisdiction 'state' { title = 'State', invented = true, follows = 'model/base',\n"
               "  from = '2024-01-01' }\n");
    home_write(&proof.home, "jurisdictions/elm.lua",
               "jurisdiction 'elm' { title = 'Elm', invented = true, follows = 'state',\n"
               "  from = '2020-01-01', to = '2022-01-01' }\n"
               "jurisdiction 'elm' { title = 'Elm', invented = true, follows = 'state',\n"
               "  from = '2022-01-01' }\n");
    prove(&proof, "elm");
    assert_int_equal(proof.status, EAVEMARK_FAILED);
    join_lines(proof.report);
    assert_has(proof.report, "error jurisdictions/elm.lua:1: no date can reach this edition");
    assert_has(proof.report, "warning jurisdictions/elm.lua:3: a job dated from 2022-01-01 to "
                             "2024-01-01 is refused");
    end(&proof);
}

/* A place that gives no day of its own goes as far as what it follows. */
static void a_place_without_days_has_none_amiss(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    home_write(&proof.home, "jurisdictions/state.lua",
               "jurisdiction 'state' { title = 'State', invented = true, follows = 'model/base',\n"
               "  from = '2024-01-01', to = '2026-01-01' }\n");
    home_write(&proof.home, "jurisdictions/elm.lua",
               "jurisdiction 'elm' { title = 'Elm', invented = true, follows = 'state' }\n");
    prove(&proof, "elm");
    assert_int_equal(proof.status, EAVEMARK_NOTHING_FAILED);
    assert_has(proof.report, "0 errors, 0 warnings");
    home_write(&proof.home, "jurisdictions/elm.lua",
               "jurisdiction 'elm' { title = 'Elm', invented = true, follows = 'state',\n"
               "  from = '2020-01-01', to = '2030-01-01' }\n");
    prove(&proof, "elm");
    assert_has(proof.report, "0 errors, 2 warnings");
    end(&proof);
}

/* What is wrong with the files --------------------------------------------------- */

struct slip {
    const char *body;
    enum eavemark_status status;
    const char *says; /* with its lines joined */
};

static const struct slip SLIPS[] = {
    {"figures = { [\"roof.layer_most\"] = { 1, cite = 'C1' } },\n", EAVEMARK_BROKEN,
     "jurisdictions/elm.lua:3: figure \"roof.layer_most\" is not given by what this follows, and to "
     "be a new one lacks a sense; did you mean \"roof.layers_most\"?"},
    {"drop = { [\"roof.layer\"] = 'why' },\n", EAVEMARK_BROKEN,
     "jurisdictions/elm.lua:3: drops \"roof.layer\", which is no rule; the nearest is roof.layers"},
    {"figures = { [\"roof.layers_most\"] = { 1 } },\n", EAVEMARK_BROKEN,
     "elm.lua:3: figure \"roof.layers_most\" has no citation: write cite"},
    {"figures = { [\"roof.lap_least\"] = { 1, unit = 'ft', cite = 'C' } },\n", EAVEMARK_BROKEN,
     "elm.lua:3: figure \"roof.lap_least\" changes the unit; leave it out, and give the value in: in"},
    {"figures = { [\"roof.lap_least\"] = { 1, sense = 'at_most', cite = 'C' } },\n",
     EAVEMARK_BROKEN,
     "elm.lua:3: figure \"roof.lap_least\" changes the sense; leave it out, or write what it is: "
     "at_least"},
    {"from = '2024-01-01', to = '2023-01-01',\n", EAVEMARK_BROKEN,
     "elm.lua:1: jurisdiction \"elm\" ends before it begins: `to` must be later than `from`"},
    {"from = '2024-01-01' }\njurisdiction \"elm\" { title = 'E', invented = true,\n"
     "  follows = 'model/base', from = '2024-01-01',\n",
     EAVEMARK_BROKEN,
     "elm.lua:4: jurisdiction \"elm\": two editions both cover 2024-01-01; give the earlier one"},
    {"-- [\"roof.layers_most\"] = { 9 }\nfigures = { [\"roof.layers_most\"] = { 2, cite = 'C' } },\n",
     EAVEMARK_NOTHING_FAILED,
     "warning jurisdictions/elm.lua:4: figure \"roof.layers_most\" changes no value: it is that "
     "already; to restate only the citation, leave the value out"},
    {"figures = { [\"roof.layers_most\"] = { cite = 'R1' } },\n", EAVEMARK_NOTHING_FAILED,
     "warning jurisdictions/elm.lua:3: figure \"roof.layers_most\" changes nothing"},
    {"figures = { [\"roof.layers_most\"] = { 1, cite = 'R1' } },\n", EAVEMARK_NOTHING_FAILED,
     "warning jurisdictions/elm.lua:3: figure \"roof.layers_most\" is cited by a section of what is "
     "followed; if it stands there, write book = \""},
    {"figures = { [\"roof.layers_mots\"] = { 1, unit = 'layers', sense = 'at_most', cite = 'C',\n"
     "  status = 'invented', source = 'Elm' } },\n",
     EAVEMARK_FAILED,
     "error jurisdictions/elm.lua:3: figure \"roof.layers_mots\" reaches no rule: no rule asks for it, "
     "so it decides nothing; did you mean \"roof.layers_most\"?"},
    {"rules = 'none.rules.lua',\n", EAVEMARK_BROKEN,
     "error jurisdictions/none.rules.lua: there is no such file"},
};

static void names_the_line_of_a_slip_and_what_to_write(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    for (size_t i = 0; i < sizeof(SLIPS) / sizeof(SLIPS[0]); i++) {
        county(&proof, SLIPS[i].body);
        join_lines(proof.report);
        assert_has(proof.report, SLIPS[i].says);
        assert_int_equal(proof.status, SLIPS[i].status);
    }
    end(&proof);
}

static void finds_a_drop_that_the_parent_made_already(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    home_write(&proof.home, "jurisdictions/state.lua",
               "jurisdiction 'state' { title = 'Pine State', invented = true,\n"
               "  follows = 'model/base', drop = { ['roof.kind'] = 'why' } }\n");
    home_write(&proof.home, "jurisdictions/elm.lua",
               "jurisdiction 'elm' { title = 'Elm', invented = true, follows = 'state',\n"
               "  drop = {\n"
               "    [\"roof.kind\"] = 'why' } }\n");
    prove(&proof, "elm");
    assert_int_equal(proof.status, EAVEMARK_NOTHING_FAILED);
    join_lines(proof.report);
    assert_has(proof.report,
               "warning jurisdictions/elm.lua:3: drops \"roof.kind\", which Pine State "
               "has dropped already");
    assert_has_not(proof.report, "removed");
    end(&proof);
}

/* Each is a rules file of the county with one thing wrong, found by running it. */
static const struct slip RULE_SLIPS[] = {
    {"rule 'roof.own' { reads = { facts = { 'roof.layers' }, figures = { 'roof.layers_most' } }, title = 'Own', stage = 'permit', mend = 'Mend.',\n"
     "  judge = function(job, figure)\n"
     "    return at_most(job.roof.layers, figure 'roof.layer_most', 'layers') end }\n",
     EAVEMARK_FAILED,
     "error jurisdictions/elm.rules.lua:1: rule \"roof.own\" erred: jurisdictions/elm.rules.lua:3: no "
     "figure is named \"roof.layer_most\" (did you mean \"roof.layers_most\"?)"},
    {"rule 'roof.own' { reads = { facts = { 'roof.layers', 'roof.kind' }, figures = { 'roof.layers_most' } }, title = 'Own', stage = 'permit', mend = 'Mend.',\n"
     "  judge = function(job, figure)\n"
     "    if job.roof.layers < 9 and job.roof.knd == 'a' then return equals(#'a', #'b') end\n"
     "    return at_most(job.roof.layers, figure 'roof.layers_most', 'layers') end }\n",
     EAVEMARK_FAILED,
     "error jurisdictions/elm.rules.lua:1: rule \"roof.own\" erred: jurisdictions/elm.rules.lua:3: "
     "roof has no field \"knd\" (did you mean \"kind\"?)"},
    {"rule 'roof.own' { reads = { facts = { 'roof.layers' }, figures = { 'roof.layers_most' } }, title = 'Own', stage = 'permit', mend = 'Mend.',\n"
     "  judge = function(job, figure) kept = 1\n"
     "    return at_most(job.roof.layers, figure 'roof.layers_most', 'layers') end }\n",
     EAVEMARK_FAILED, "jurisdictions/elm.rules.lua:2: "},
    {"kept = 1\n", EAVEMARK_BROKEN, "error jurisdictions/elm.rules.lua:1: "},
    {"rule 'roof.own' {\n", EAVEMARK_BROKEN, "error jurisdictions/elm.rules.lua:"},
};

static void finds_what_is_wrong_with_its_rules(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    for (size_t i = 0; i < sizeof(RULE_SLIPS) / sizeof(RULE_SLIPS[0]); i++) {
        home_write(&proof.home, "jurisdictions/elm.rules.lua", RULE_SLIPS[i].body);
        county(&proof, "rules = 'elm.rules.lua',\n");
        join_lines(proof.report);
        assert_has(proof.report, RULE_SLIPS[i].says);
        assert_int_equal(proof.status, RULE_SLIPS[i].status);
    }
    end(&proof);
}

/* More declared than any case reads: a case is missing, or a word too many. */
static void tells_what_is_declared_and_never_read(void **state)
{
    (void)state;
    struct proof proof;
    char rules[2000];
    start(&proof);
    const char *at = strstr(OWN_RULES, "facts = { 'roof.own' }");
    assert_non_null(at);
    snprintf(rules, sizeof(rules), "%.*sfacts = { 'roof.own', 'roof.layers' }%s",
             (int)(at - OWN_RULES), OWN_RULES, at + strlen("facts = { 'roof.own' }"));
    home_write(&proof.home, "jurisdictions/elm.rules.lua", rules);
    home_write(&proof.home, "jurisdictions/elm.cases.lua", OWN_CASES);
    county(&proof, OWN_BODY);
    assert_int_equal(proof.status, EAVEMARK_NOTHING_FAILED);
    join_lines(proof.report);
    assert_has(proof.report,
               "warning jurisdictions/elm.rules.lua:2: fact \"roof.layers\" is declared under "
               "reads, and no case comes to it: add one that does, or take it out");
    home_write(&proof.home, "jurisdictions/elm.rules.lua", OWN_RULES);
    county(&proof, OWN_BODY);
    assert_has_not(proof.report, "declared under");
    end(&proof);
}

/* Of feet, inches and miles an hour, compared the wrong way round: no base job says how
 * wide the gap is, so only the cases reach it, and the error is the rules file's. */
static void finds_what_only_its_cases_reach(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    home_write(
        &proof.home, "jurisdictions/elm.rules.lua",
        "field 'roof.gap_in' { type = 'number', unit = 'in', range = { 0, 9 },\n"
        "  stage = 'permit', ask = 'Gap?' }\n"
        "rule 'roof.gap' { reads = { facts = { 'roof.gap_in' }, figures = { 'roof.gap_least' } }, title = 'Gap', stage = 'permit', mend = 'Mend.',\n"
        "  judge = function(job, figure)\n"
        "    return at_most(job.roof.gap_in, figure 'roof.gap_least', 'mph') end }\n");
    home_write(&proof.home, "jurisdictions/elm.cases.lua",
               "cases 'roof.gap' { under = 'elm', date = '2025-01-01',\n"
               "  { 'narrow', with = { ['roof.gap_in'] = 0.1 }, expect = 'pass' },\n"
               "  { 'wide', with = { ['roof.gap_in'] = 3 }, expect = 'fail' },\n"
               "  { 'not known', expect = 'open' } }\n");
    county(&proof, "rules = 'elm.rules.lua', figures = { ['roof.gap_least'] = { 0.1, unit = 'ft',\n"
                   "  sense = 'at_least', cite = 'C3', status = 'invented', source = 'Elm' } },\n");
    assert_int_equal(proof.status, EAVEMARK_FAILED);
    assert_has(proof.report, "1 error, 0 warnings");
    join_lines(proof.report);
    assert_has(proof.report,
               "error jurisdictions/elm.rules.lua:3: rule \"roof.gap\" erred: "
               "jurisdictions/elm.rules.lua:5: roof.gap_in is in in, and is compared in mph; "
               "figure \"roof.gap_least\" is in ft, and is compared in mph; "
               "figure \"roof.gap_least\" is at_least, and is compared by at_most");
    end(&proof);
}

/* What only warned fails from now on: said beside a value that moved, too. */
static void tells_that_practice_became_law(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    static const char SEEN[] = "f(2, 'at_most', 'layers')";
    const char *at = strstr(MODEL, SEEN);
    char model[sizeof(MODEL) + 200];
    snprintf(model, sizeof(model), "%.*s%s%s", (int)(at - MODEL), MODEL,
             "{ 2, sense = 'at_most', unit = 'layers', cite = 'R1', status = 'practice',\n"
             "      source = 's' }",
             at + sizeof(SEEN) - 1);
    home_write(&proof.home, "jurisdictions/model/base.lua", model);
    county(&proof, "figures = { ['roof.layers_most'] = { 1, cite = 'C1' } },\n");
    join_lines(proof.report);
    assert_has(proof.report, "common practice before: a house that does not meet it only warned, "
                             "and fails here");
    county(&proof, "figures = { ['roof.layers_most'] = { 3, cite = 'C1' } },\n");
    join_lines(proof.report);
    assert_has(proof.report, "only warned, and fails here; and a job that fails where");
    end(&proof);
}

/* Of many editions the first rests by the time that the cases are run. */
static void tells_what_erred_while_an_edition_rests(void **state)
{
    (void)state;
    struct proof proof;
    char blocks[4000] = "";
    start(&proof);
    home_write(&proof.home, "jurisdictions/elm.rules.lua",
               "rule 'roof.own' { title = 'Own', stage = 'permit', mend = 'Mend.',\n"
               "  judge = function(job, figure)\n"
               "    if job.roof.layers == 9 then return nil end\n"
               "    return at_most(job.roof.layers, figure 'roof.layers_most', 'layers') end }\n");
    home_write(&proof.home, "jurisdictions/elm.cases.lua",
               "cases 'roof.own' { under = 'elm', date = '2018-06-01',\n"
               "  { 'nine', with = { ['roof.layers'] = 9 }, expect = 'fail' } }\n");
    for (int year = 2000; year < 2020; year++) {
        const size_t used = strlen(blocks);
        snprintf(blocks + used, sizeof(blocks) - used,
                 "jurisdiction \"elm\" { title = \"Elm County\", invented = true,\n"
                 "  follows = \"model/base\", rules = \"elm.rules.lua\", from = \"%d-01-01\" }\n",
                 year);
    }
    home_write(&proof.home, "jurisdictions/elm.lua", blocks);
    prove(&proof, "elm");
    join_lines(proof.report);
    assert_has(proof.report, "error jurisdictions/elm.rules.lua:1: rule \"roof.own\" erred: ");
    assert_int_equal(proof.status, EAVEMARK_FAILED);
    end(&proof);
}

/* A place that no listing comes to would be left out of every proof in silence. */
static void tells_of_folders_too_deep(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    home_write(&proof.home, "jurisdictions/a/b/c/d/e/f/pine.lua",
               "jurisdiction \"a/b/c/d/e/f/pine\" { title = \"Pine\", invented = true,\n"
               "  follows = \"model/base\" }\n");
    prove(&proof, NULL);
    assert_has_not(proof.report, "too deep");
    assert_has_not(proof.report, "folders below");
    assert_has(proof.report, "Pine (a/b/c/d/e/f/pine");
    home_write(&proof.home, "jurisdictions/a/b/c/d/e/f/g/oak.lua", "x\n");
    prove(&proof, NULL);
    join_lines(proof.report);
    assert_has(proof.report, "error jurisdictions/a/b/c/d/e/f/g: lies more than 6 folders below "
                             "jurisdictions/: no place in it is listed or proved; move it up");
    assert_has(proof.report, "1 error");
    end(&proof);
}

/* The whole, and the topics -------------------------------------------------------- */

static void proves_topics_and_everything(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    county(&proof, "figures = { ['roof.layers_most'] = { 1, cite = 'C1' } },\n");
    prove(&proof, "roof");
    assert_int_equal(proof.status, EAVEMARK_FAILED); /* roof.bounds has no cases */
    assert_ends(proof.report, "\n7 passed, 1 failed\n");
    assert_has_not(proof.report, "Elm");
    home_write(&proof.home, "jurisdictions/elm.cases.lua",
               "cases 'roof.layers' { under = 'elm', { 'two', with = { ['roof.layers'] = 2 },\n"
               "  expect = 'pass' } }\n");
    /* A place's cases of the topic belong to it. */
    prove(&proof, "roof");
    assert_has(proof.report,
               "jurisdictions/elm.cases.lua:1: roof.layers: \"two\": expected pass, got fail");
    assert_ends(proof.report, "\n7 passed, 2 failed\n");
    prove(&proof, NULL);
    assert_has(proof.report, "Elm County (elm, invented)\n  1 edition, 1 stricter\n");
    assert_has(proof.report,
               "jurisdictions/elm.cases.lua:1: roof.layers: \"two\": expected pass, got fail");
    home_write(&proof.home, "jurisdictions/elm.cases.lua",
               "cases 'roof.layers' { under = 'elm',\n"
               "  { 'one', with = { ['roof.layers'] = 1 }, expect = 'pass' } }\n"
               "cases 'roof.layers' { under = 'elm', -- the next case only is at fault\n"
               "  { 'slip', without = { 'roof.layer' }, expect = 'open' },\n"
               "  { 'two', with = { ['roof.layers'] = 2 }, expect = 'fail' } }\n");
    prove(&proof, "elm");
    assert_int_equal(proof.status, EAVEMARK_FAILED);
    assert_has(proof.report, "jurisdictions/elm.cases.lua:3: roof.layers: \"slip\": without "
                             "\"roof.layer\": the base job does not have it; did you mean "
                             "\"layers\"?");
    assert_ends(proof.report, "\n2 passed, 1 failed\n");
    home_write(&proof.home, "jurisdictions/elm.cases.lua",
               "cases 'roof.layers' { under = 'elm', { 'two', with = { ['roof.layers'] = 2 },\n"
               "  expect = 'pass' } }\n");
    prove(&proof, NULL);
    assert_ends(proof.report, "\n7 passed, 2 failed\n");
    prove(&proof, "elk");
    assert_int_equal(proof.status, EAVEMARK_UNUSABLE);
    assert_null(proof.report);
    assert_has(proof.problems,
               "there is no topic and no jurisdiction \"elk\"; the nearest are: elm");
    end(&proof);
}

static const char *member(const cJSON *object, const char *key)
{
    const cJSON *item = cJSON_GetObjectItemCaseSensitive(object, key);
    return cJSON_IsString(item) ? item->valuestring : "(no text)";
}

static const cJSON *part(const cJSON *object, const char *key, int index)
{
    const cJSON *item = cJSON_GetArrayItem(cJSON_GetObjectItemCaseSensitive(object, key), index);
    assert_non_null(item);
    return item;
}

static void gives_the_same_as_json(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    county(&proof,
           "from = '2024-01-01', figures = { [\"roof.layers_most\"] = { 3, cite = 'C1' },\n"
           "  [\"roof.lap_least\"] = { 4, cite = 'C2' } }, drop = { ['roof.kind'] = 'why' },\n");
    home_write(&proof.home, "jurisdictions/elm.cases.lua",
               "cases 'roof.layers' { under = 'elm', { 'two', with = { ['roof.layers'] = 2 },\n"
               "  expect = 'fail' } }\n");
    prove_on(&proof, "elm", NULL, EAVEMARK_JSON);
    assert_int_equal(proof.status, EAVEMARK_FAILED);
    cJSON *root = cJSON_Parse(proof.report);
    assert_non_null(root);
    assert_string_equal(member(root, "eavemark"), EAVEMARK_VERSION);
    const cJSON *place = part(root, "places", 0), *block = part(place, "blocks", 0);
    assert_string_equal(member(place, "id"), "elm");
    assert_string_equal(member(block, "from"), "2024-01-01");
    assert_true(cJSON_IsNull(cJSON_GetObjectItemCaseSensitive(block, "to")));
    const cJSON *moved = part(block, "differences", 0), *gone = part(block, "differences", 1);
    assert_string_equal(member(moved, "figure"), "roof.layers_most");
    assert_string_equal(member(moved, "kind"), "looser");
    assert_string_equal(member(moved, "unit"), "layers");
    assert_string_equal(member(moved, "cite"), "Elm County C1");
    assert_int_equal(cJSON_GetObjectItemCaseSensitive(moved, "from")->valueint, 2);
    assert_int_equal(cJSON_GetObjectItemCaseSensitive(moved, "to")->valueint, 3);
    assert_has(member(moved, "caution"), "fails where this place follows");
    assert_string_equal(member(gone, "rule"), "roof.kind");
    assert_string_equal(member(gone, "kind"), "removed");
    const cJSON *message = part(block, "messages", 0);
    assert_string_equal(member(message, "file"), "jurisdictions/elm.lua");
    assert_string_equal(member(message, "level"), "warning");
    assert_int_equal(cJSON_GetObjectItemCaseSensitive(message, "line")->valueint, 4);
    const cJSON *cases = cJSON_GetObjectItemCaseSensitive(place, "cases");
    assert_int_equal(cJSON_GetObjectItemCaseSensitive(cases, "failed")->valueint, 1);
    assert_has(part(cases, "lines", 0)->valuestring, "expected fail, got pass");
    cJSON_Delete(root);
    end(&proof);
}

/* Moving figures -------------------------------------------------------------- */

static void mutate(struct proof *proof, const char *topic)
{
    forget(proof);
    eavemark *handle = eavemark_open(proof->home.path);
    assert_non_null(handle);
    proof->status = eavemark_mutate(handle, topic, &proof->report, &proof->problems);
    eavemark_close(handle);
    assert_non_null(proof->problems);
    if (proof->report != NULL)
        join_lines(proof->report);
}

static void lists_the_figures_that_no_case_notices(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    mutate(&proof, "roof");
    assert_int_equal(proof.status, EAVEMARK_FAILED);
    /* Cases at 2 and 3 notice a step of one layer either way. */
    assert_has_not(proof.report, "roof.layers_most");
    /* Felt, synthetic and none are all there. */
    assert_has_not(proof.report, "roof.kinds");
    assert_has_not(proof.report, "roof.kind_required");
    assert_has(proof.report, "roof.lap_least, at least 4 in (Base 1 R1): no case asks for it");
    assert_has(proof.report, "3 noticed, 0 in part, 13 not noticed");
    end(&proof);
}

/* Of a place: its own figures alone, watched by the cases under it alone. */
static void moves_the_figures_of_one_place(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    home_write(&proof.home, "jurisdictions/elm.lua",
               "jurisdiction 'elm' { title = 'Elm', invented = true, follows = 'model/base',\n"
               "  figures = { [\"roof.layers_most\"] = { 1, cite = 'E1' } } }\n");
    mutate(&proof, "elm");
    assert_int_equal(proof.status, EAVEMARK_UNUSABLE);
    assert_has(proof.problems, "no case is judged under \"elm\"");
    home_write(&proof.home, "jurisdictions/elm.cases.lua",
               "cases 'roof.layers' { under = 'elm',\n"
               "  { 'one', with = { ['roof.layers'] = 1 }, expect = 'pass' },\n"
               "  { 'two', with = { ['roof.layers'] = 2 }, expect = 'fail' } }\n");
    mutate(&proof, "elm");
    assert_int_equal(proof.status, EAVEMARK_NOTHING_FAILED);
    assert_has(proof.report, "2 cases");
    assert_has(proof.report, "1 noticed, 0 in part, 0 not noticed");
    home_write(&proof.home, "jurisdictions/elm.cases.lua",
               "cases 'roof.layers' { under = 'elm',\n"
               "  { 'none', with = { ['roof.layers'] = 5 }, expect = 'fail' } }\n");
    mutate(&proof, "elm");
    assert_int_equal(proof.status, EAVEMARK_FAILED);
    assert_has(proof.report, "roof.layers_most, at most 1 layer (");
    end(&proof);
}

/* No outcome can hang on what only a mend asks for: it is printed. */
static void a_figure_that_only_a_mend_asks_for_is_printed(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    home_write(
        &proof.home, "rules/stock.lua",
        "rule 'stock.layers' { reads = { facts = { 'roof.layers' }, figures = { 'roof.exactly', 'roof.layers_most' } }, title = 'Stock', stage = 'permit',\n"
        "  judge = function(job, figure)\n"
        "    return at_most(job.roof.layers, figure 'roof.layers_most', 'layers')\n"
        "  end,\n"
        "  mend = function(job, figure)\n"
        "    return 'Buy ' .. number(figure 'roof.exactly', 'in') .. '.'\n"
        "  end }\n");
    home_write(&proof.home, "rules/cases/stock.lua",
               "cases 'stock.layers' { under = 'model/base',\n"
               "  { 'three', with = { ['roof.layers'] = 3 }, expect = 'fail' } }\n");
    mutate(&proof, "roof");
    assert_has_not(proof.report, "roof.exactly");
    assert_has(proof.report, "1 figures only printed");
    assert_has(proof.report, "3 noticed, 0 in part, 12 not noticed");
    /* A judgement that asks for it too makes it count. */
    home_write(&proof.home, "rules/cases/roof.lua",
               "cases 'roof.layers' { under = 'model/base',\n"
               "  { 'two', with = { ['roof.layers'] = 2 }, expect = 'pass' },\n"
               "  { 'three', with = { ['roof.layers'] = 3 }, expect = 'fail' } }\n"
               "cases 'stock.wide' { under = 'model/base',\n"
               "  { 'seven', with = { ['roof.layers'] = 7 }, expect = 'pass' } }\n");
    home_write(
        &proof.home, "rules/wide.lua",
        "rule 'stock.wide' { reads = { facts = { 'roof.layers' }, figures = { 'roof.exactly' } }, title = 'Wide', stage = 'permit', mend = 'Mend.',\n"
        "  judge = function(job, figure)\n"
        "    return at_least(job.roof.layers, figure 'roof.exactly', 'in')\n"
        "  end }\n");
    mutate(&proof, "roof");
    assert_has(proof.report, "roof.exactly, exactly 4 in (Base 1 R1): not noticed: a step down");
    assert_has(proof.report, "0 figures only printed");
    end(&proof);
}

/* The same home with cases that sit away from the limit. */
static void misses_what_sits_away_from_the_limit(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    home_write(&proof.home, "rules/cases/roof.lua",
               "cases 'roof.layers' { under = 'model/base',\n"
               "  { 'one', expect = 'pass' },\n"
               "  { 'three', with = { ['roof.layers'] = 3 }, expect = 'fail' } }\n"
               "cases 'roof.kind' { under = 'model/base',\n"
               "  { 'felt', expect = 'pass' } }\n");
    mutate(&proof, NULL);
    assert_has(proof.report,
               "roof.layers_most, at most 2 layers (Base 1 R1): not noticed: a step down");
    assert_has(proof.report,
               "roof.kinds, one of felt, synthetic (Base 1 R1): not noticed: synthetic "
               "taken out, a member added");
    assert_has(proof.report, "1 noticed, 2 in part, 13 not noticed");
    mutate(&proof, "nothing");
    assert_int_equal(proof.status, EAVEMARK_UNUSABLE);
    assert_has(proof.problems, "--mutate: no figure that cases use begins with");
    end(&proof);
}

/* The step of a day is the next day, at the end of a month as well. */
static void moves_days_by_a_day(void **state)
{
    (void)state;
    struct proof proof;
    start(&proof);
    home_write(
        &proof.home, "jurisdictions/elm.rules.lua",
        "rule 'roof.day' { reads = { facts = { 'date' }, figures = { 'roof.day_most', 'roof.layers_most' } }, title = 'Day', stage = 'permit', mend = 'Wait.',\n"
        "  applies = function(job, figure)\n"
        "    local day = string.sub(job.date, 1, 4) .. string.sub(job.date, 6, 7)\n"
        "      .. string.sub(job.date, 9, 10)\n"
        "    return tonumber(day) <= figure 'roof.day_most', 'too late'\n"
        "  end,\n"
        "  judge = function(job, figure)\n"
        "    return at_most(1, figure 'roof.layers_most', 'layers')\n"
        "  end }\n");
    home_write(
        &proof.home, "jurisdictions/elm.lua",
        "jurisdiction 'elm' { title = 'Elm', follows = 'model/base', as_seen = '2025-01-01',\n"
        "  rules = 'elm.rules.lua', figures = {\n"
        "    ['roof.day_most'] = { 20250131, unit = 'date', sense = 'at_most', cite = 'C1',\n"
        "      status = 'seen', source = 's' } } }\n");
    home_write(&proof.home, "jurisdictions/elm.cases.lua",
               "cases 'roof.day' { under = 'elm',\n"
               "  { 'the last day', date = '2025-01-31', expect = 'pass' },\n"
               "  { 'the next', date = '2025-02-01', expect = 'not_applicable' } }\n");
    mutate(&proof, NULL);
    assert_has_not(proof.report, "roof.day_most");
    end(&proof);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(tells_which_way_a_figure_moved),
        cmocka_unit_test(asks_of_a_new_yes_or_no_which_is_stricter),
        cmocka_unit_test(takes_a_limit_behind_a_switch_that_was_off_for_new),
        cmocka_unit_test(lets_a_page_of_its_own_say_the_same),
        cmocka_unit_test(finds_a_map_that_no_rule_asks_for),
        cmocka_unit_test(finds_slips_in_the_words_of_a_set),
        cmocka_unit_test(tells_what_loads_and_is_not_meant),
        cmocka_unit_test(counts_cases_under_the_place_wherever_they_stand),
        cmocka_unit_test(refuses_what_a_case_cannot_mean),
        cmocka_unit_test(tells_what_a_later_edition_leaves),
        cmocka_unit_test(tells_of_files_that_nothing_names),
        cmocka_unit_test(asks_for_a_case_of_each_figure_moved),
        cmocka_unit_test(tells_what_a_switch_turns_on_and_off),
        cmocka_unit_test(asks_of_which_place_a_case_is),
        cmocka_unit_test(tells_of_a_field_that_two_counties_declare),
        cmocka_unit_test(gives_both_values_with_units_and_the_citation),
        cmocka_unit_test(names_what_was_removed_and_added),
        cmocka_unit_test(asks_for_cases_of_its_own_rules),
        cmocka_unit_test(shows_each_edition_and_warns_of_gaps),
        cmocka_unit_test(finds_editions_that_no_date_can_reach),
        cmocka_unit_test(a_place_without_days_has_none_amiss),
        cmocka_unit_test(names_the_line_of_a_slip_and_what_to_write),
        cmocka_unit_test(finds_a_drop_that_the_parent_made_already),
        cmocka_unit_test(finds_what_is_wrong_with_its_rules),
        cmocka_unit_test(tells_what_is_declared_and_never_read),
        cmocka_unit_test(finds_what_only_its_cases_reach),
        cmocka_unit_test(tells_of_folders_too_deep),
        cmocka_unit_test(tells_that_practice_became_law),
        cmocka_unit_test(tells_what_erred_while_an_edition_rests),
        cmocka_unit_test(proves_topics_and_everything),
        cmocka_unit_test(gives_the_same_as_json),
        cmocka_unit_test(lists_the_figures_that_no_case_notices),
        cmocka_unit_test(moves_the_figures_of_one_place),
        cmocka_unit_test(a_figure_that_only_a_mend_asks_for_is_printed),
        cmocka_unit_test(misses_what_sits_away_from_the_limit),
        cmocka_unit_test(moves_days_by_a_day),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
