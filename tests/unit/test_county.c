/* Starting a county: what is written, what is refused, and that nothing is
 * left half written. */
#include "support/temporary_home.h"

#include <dirent.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cmocka.h>

static const char PROFILE[] = "jurisdictions/county/alder.lua";
static const char CASES[] = "jurisdictions/county/alder.cases.lua";

struct start {
    struct temporary_home home;
    enum eavemark_status status;
    char *text;
};

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
    "field 'roof.kind' { type = 'choice', choices = { 'felt', 'none' }, stage = 'permit',\n"
    "  ask = 'Which underlayment?' }\n";

static const char RULES[] =
    "rule 'roof.layers' { reads = { facts = { 'roof.layers' }, figures = { 'roof.layers_most' } }, title = 'Layers', stage = 'permit', mend = 'Take one off.',\n"
    "  judge = function(job, figure)\n"
    "    return at_most(job.roof.layers, figure 'roof.layers_most', 'layers')\n"
    "  end }\n"
    "rule 'roof.kind' { reads = { facts = { 'roof.kind' }, figures = { 'roof.kind_required', 'roof.kinds' } }, title = 'Underlayment', stage = 'permit', mend = 'Use another.',\n"
    "  applies = function(job, figure) return figure 'roof.kind_required' end,\n"
    "  judge = function(job, figure) return one_of(job.roof.kind, figure 'roof.kinds') end }\n";

/* "a.unasked" stands first by name, but no rule asks for it. */
static const char STATE[] =
    "jurisdiction 'state' { title = 'State', invented = true, from = '2024-01-01', figures = {\n"
    "  ['a.unasked'] = { 1, unit = 'in', sense = 'at_most', cite = 'S', status = 'invented',\n"
    "    source = 's' },\n"
    "  ['roof.layers_most'] = { 2, unit = 'layers', sense = 'at_most', cite = 'S',\n"
    "    status = 'invented', source = 's' },\n"
    "  ['roof.kinds'] = { { 'felt' }, sense = 'one_of', cite = 'S', status = 'invented',\n"
    "    source = 's' },\n"
    "  ['roof.kind_required'] = { true, sense = 'equals', cite = 'S', status = 'invented',\n"
    "    source = 's' } } }\n";

static const char JOB[] =
    "{ \"eavemark_job\": 1, \"job\": \"base\", \"jurisdiction\": \"state\",\n"
    "  \"date\": \"2025-01-01\", \"roof\": { \"layers\": 1, \"kind\": \"felt\" } }\n";

static void prepare(struct start *start)
{
    *start = (struct start){.status = EAVEMARK_BROKEN};
    home_make(&start->home);
    home_write(&start->home, "rules/fields.lua", FIELDS);
    home_write(&start->home, "rules/roof.lua", RULES);
    home_write(&start->home, "rules/cases/base.json", JOB);
    home_write(&start->home, "rules/cases/roof.lua", "-- none yet\n");
    home_write(&start->home, "jurisdictions/state.lua", STATE);
}

static void end(struct start *start)
{
    free(start->text);
    home_remove(&start->home);
}

static void begin(struct start *start, const char *id, const char *follows, const char *title)
{
    eavemark *handle = eavemark_open(start->home.path);
    assert_non_null(handle);
    free(start->text);
    start->status = eavemark_county_new(handle, id, follows, title, &start->text);
    eavemark_close(handle);
    assert_non_null(start->text);
}

static enum eavemark_status prove(struct start *start, const char *id, char **report)
{
    char *problems;
    eavemark *handle = eavemark_open(start->home.path);
    assert_non_null(handle);
    const enum eavemark_status status = eavemark_proof(handle, id, NULL, NULL, EAVEMARK_TEXT,
                                                       report, &problems);
    eavemark_close(handle);
    assert_string_equal(problems, "");
    free(problems);
    return status;
}

static size_t count_files(const struct start *start, const char *folder)
{
    size_t count = 0;
    DIR *list = opendir(home_path(&start->home, folder));
    assert_non_null(list);
    for (const struct dirent *entry; (entry = readdir(list)) != NULL;)
        count += strcmp(entry->d_name, ".") != 0 && strcmp(entry->d_name, "..") != 0;
    closedir(list);
    return count;
}

static void writes_two_files_that_pass_as_they_are(void **state)
{
    (void)state;
    struct start start;
    char *report;
    prepare(&start);
    begin(&start, "county/alder", "state", "Alder \"North\" \\ County");
    assert_string_equal(start.text, "jurisdictions/county/alder.lua\n"
                                    "jurisdictions/county/alder.cases.lua\n"
                                    "next: eavemark proof county/alder\n");
    assert_int_equal(start.status, EAVEMARK_NOTHING_FAILED);
    assert_int_equal(count_files(&start, "jurisdictions/county"), 2);
    char *profile = file_text(home_path(&start.home, PROFILE), NULL);
    assert_has(profile, "  from = \"2024-01-01\",");
    free(profile);
    assert_int_equal(prove(&start, "county/alder", &report), EAVEMARK_NOTHING_FAILED);
    assert_has(report, "Alder \"North\" \\ County (county/alder)\n");
    assert_has(report, "From 2024-01-01, beside State:\n  no difference\n");
    assert_has(report, "0 errors, 0 warnings\n0 rules judged by cases\n0 passed, 0 failed\n");
    free(report);
    end(&start);
}

/* What is followed may be somebody else's file: nothing in its words ends a comment. */
static void words_of_what_is_followed_stay_in_comments(void **state)
{
    (void)state;
    static const char LOUD[] =
        "jurisdiction 'loud' { title = 'Loud', invented = true, follows = 'state', figures = {\n"
        "  ['roof.layers_most'] = { 3, cite = 'L\\n}}}\\27' } } }\n";
    struct start start;
    prepare(&start);
    home_write(&start.home, "jurisdictions/loud.lua", LOUD);
    begin(&start, "county/alder", "loud", "Alder");
    assert_int_equal(start.status, EAVEMARK_NOTHING_FAILED);
    char *profile = file_text(home_path(&start.home, PROFILE), NULL);
    assert_has(profile, "    -- Now: at most 3 layers, Loud L\\x0a}}}\\x1b.\n");
    free(profile);
    end(&start);
}

/* Takes the comment mark off every line that begins with it and `what`. */
static void uncomment(struct start *start, const char *path, const char *what)
{
    char full[300];
    snprintf(full, sizeof(full), "%s", home_path(&start->home, path));
    char *text = file_text(full, NULL), *to = text;
    for (const char *line = text; *line != '\0';) {
        const size_t length = strcspn(line, "\n") + 1, lead = strspn(line, " ");
        const char *mark = line + lead;
        const bool off = strncmp(mark, "-- ", 3) == 0 && strncmp(mark + 3, what, strlen(what)) == 0;
        const size_t skip = off ? lead + 3 : 0;
        memmove(to, line + skip, length - skip);
        to += length - skip;
        line += length;
    }
    *to = '\0';
    home_write(&start->home, path, text);
    free(text);
}

static void shows_how_in_lines_that_work_when_used(void **state)
{
    (void)state;
    struct start start;
    char *report;
    prepare(&start);
    begin(&start, "county/alder", "state", "Alder County");
    char *profile = file_text(home_path(&start.home, PROFILE), NULL);
    /* Figures that the base job's rules ask for, with the values of the state. */
    assert_has(profile, "-- [\"roof.layers_most\"] = { 2, cite");
    assert_has(profile, "-- [\"roof.kind_required\"] = { true, cite");
    assert_has(profile, "-- [\"roof.kinds\"] = { { \"felt\" }, cite");
    assert_has(profile, "-- [\"roof.layers_most\"] = { cite");
    free(profile);
    uncomment(&start, PROFILE, "[\"roof.kind_required");
    uncomment(&start, PROFILE, "[\"roof.kinds");
    uncomment(&start, CASES, "cases");
    uncomment(&start, CASES, " ");
    uncomment(&start, CASES, "}");
    const enum eavemark_status status = prove(&start, "county/alder", &report);
    assert_has(report, "\n1 passed, 0 failed\n");
    /* The values of the state, but now by a page of the county's own. */
    assert_has(report, "From 2024-01-01, beside State:\n  no difference\n");
    assert_has(report, "\n0 errors, 0 warnings\n");
    assert_int_equal(status, EAVEMARK_NOTHING_FAILED);
    free(report);
    end(&start);
}

struct refusal {
    const char *id, *follows, *title, *says;
};

static const struct refusal REFUSALS[] = {
    {"Alder", "state", "A", "\"Alder\" cannot be an id: it is made of a-z, 0-9, - and _"},
    {"al der", "state", "A", "cannot be an id"},
    {"../alder", "state", "A", "cannot be an id"},
    {"/alder", "state", "A", "cannot be an id"},
    {"alder/", "state", "A", "cannot be an id"},
    {"alder.x", "state", "A", "cannot be an id"},
    {"", "state", "A", "cannot be an id"},
    {"roof", "state", "A", "\"roof\" is the name of a topic of rules"},
    {"county/alder", "stat", "A",
     "--follows: no jurisdiction is named \"stat\"; the nearest are: state"},
    {"county/alder", "county/alder", "A", "no jurisdiction is named \"county/alder\""},
    {"county/alder", "state", "", "--title"},
    {"county/alder", "state", "A\nB", "--title"},
    {"county/alder", "state", "A\x1b[31m", "--title"},
};

static void refuses_and_leaves_nothing(void **state)
{
    (void)state;
    struct start start;
    prepare(&start);
    for (size_t i = 0; i < sizeof(REFUSALS) / sizeof(REFUSALS[0]); i++) {
        const struct refusal *r = &REFUSALS[i];
        begin(&start, r->id, r->follows, r->title);
        assert_has(start.text, r->says);
        assert_int_equal(start.status, EAVEMARK_UNUSABLE);
        assert_int_equal(count_files(&start, "jurisdictions"), 1);
    }
    end(&start);
}

static void writes_over_neither_file(void **state)
{
    (void)state;
    const char *const paths[] = {PROFILE, CASES};
    for (int i = 0; i < 2; i++) {
        struct start start;
        prepare(&start);
        home_write(&start.home, paths[i], "-- mine\n");
        begin(&start, "county/alder", "state", "Alder County");
        assert_int_equal(start.status, EAVEMARK_UNUSABLE);
        assert_has(start.text, paths[i]);
        assert_has(start.text, "is there already; it was left as it is");
        assert_int_equal(count_files(&start, "jurisdictions/county"), 1);
        char *text = file_text(home_path(&start.home, paths[i]), NULL);
        assert_string_equal(text, "-- mine\n");
        free(text);
        end(&start);
    }
}

/* What cannot be loaded once written is taken back, with its folders. */
static void takes_back_what_does_not_load(void **state)
{
    (void)state;
    struct start start;
    prepare(&start);
    char text[200];
    /* A chain as long as may be. */
    for (int i = 0; i < 11; i++) {
        char path[40], parent[40] = " follows = 'state'";
        snprintf(path, sizeof(path), "jurisdictions/c%d.lua", i);
        if (i > 0)
            snprintf(parent, sizeof(parent), " follows = 'c%d'", i - 1);
        snprintf(text, sizeof(text), "jurisdiction 'c%d' { title = 'C', invented = true,%s }\n", i,
                 parent);
        home_write(&start.home, path, text);
    }
    begin(&start, "far/off/alder", "c10", "Alder County");
    assert_has(start.text, "follows too long a chain");
    assert_int_equal(start.status, EAVEMARK_BROKEN);
    struct stat about;
    assert_int_not_equal(stat(home_path(&start.home, "jurisdictions/far"), &about), 0);
    end(&start);
}

static void says_when_it_cannot_write(void **state)
{
    (void)state;
    struct start start;
    prepare(&start);
    home_write(&start.home, "jurisdictions/far", "a file, no folder\n");
    begin(&start, "far/alder", "state", "Alder County");
    assert_int_equal(start.status, EAVEMARK_UNUSABLE);
    assert_has(start.text, "cannot be written");
    assert_int_equal(count_files(&start, "jurisdictions"), 2);
    home_write(&start.home, "jurisdictions/state.lua", "jurisdiction 'state' {\n");
    begin(&start, "near/alder", "state", "Alder County");
    assert_int_equal(start.status, EAVEMARK_BROKEN);
    assert_int_equal(count_files(&start, "jurisdictions"), 2);
    end(&start);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(writes_two_files_that_pass_as_they_are),
        cmocka_unit_test(words_of_what_is_followed_stay_in_comments),
        cmocka_unit_test(shows_how_in_lines_that_work_when_used),
        cmocka_unit_test(refuses_and_leaves_nothing),
        cmocka_unit_test(writes_over_neither_file),
        cmocka_unit_test(takes_back_what_does_not_load),
        cmocka_unit_test(says_when_it_cannot_write),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
