#include "support/row_law.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

static struct temporary_home home;

/* What SMALL_JOB does not say: what a fact may be held against, and a state of papers. */
static const char MORE_FIELDS[] =
    "field \"existing.allowed\" { type = \"integer\", unit = \"layers\", range = { 0, 6 },\n"
    "  stage = \"permit\", ask = \"How many may lie there?\" }\n"
    "field \"existing.paper\" { type = \"choice\", choices = { \"none\", \"applied\", \"issued\" },\n"
    "  stage = \"permit\", ask = \"How far is the paper?\" }\n";

static const char PLACE[] =
    "jurisdiction \"example/r\" { title = \"R\", follows = \"model/test\", figures = {\n"
    "  [\"r.on\"] = { true, sense = \"equals\", cite = \"1\", status = \"seen\", source = \"p\" },\n"
    "  [\"r.off\"] = { false, sense = \"equals\", cite = \"2\", status = \"seen\", source = \"p\" },\n"
    "  [\"r.none\"] = { {}, sense = \"all_of\", cite = \"3\", status = \"seen\", source = \"p\" },\n"
    "  [\"r.kinds\"] = { { \"asphalt\", \"slate\" }, sense = \"all_of\", cite = \"4\",\n"
    "    status = \"seen\", source = \"p\" },\n"
    "  [\"r.steep\"] = { 4, unit = \"rise_in_12\", sense = \"from\", cite = \"5\",\n"
    "    status = \"memory\", source = \"recalled\" },\n"
    "  [\"r.low\"] = { 4, unit = \"rise_in_12\", sense = \"under\", cite = \"6\",\n"
    "    status = \"memory\", source = \"recalled\" },\n"
    "  [\"r.least_ft\"] = { 0.5, unit = \"ft\", sense = \"at_least\", cite = \"7\",\n"
    "    status = \"seen\", source = \"p\" },\n"
    "  [\"r.mph\"] = { 6, unit = \"mph\", sense = \"at_most\", cite = \"8\", status = \"seen\",\n"
    "    source = \"p\" },\n"
    "  [\"r.by.sound\"] = { 2, unit = \"layers\", sense = \"at_most\", cite = \"9\",\n"
    "    status = \"seen\", source = \"p\" },\n"
    "  [\"r.share\"] = { 40, unit = \"percent\", sense = \"at_most\", cite = \"10\",\n"
    "    status = \"seen\", source = \"p\" },\n"
    "  [\"r.over\"] = { 1, unit = \"in\", sense = \"at_most\", cite = \"11\", status = \"seen\",\n"
    "    source = \"p\" },\n"
    "  [\"r.least\"] = { 3, unit = \"in\", sense = \"at_least\", cite = \"12\", status = \"seen\",\n"
    "    source = \"p\" },\n"
    "  [\"r.at\"] = { true, sense = \"equals\", cite = \"13\", status = \"seen\", source = \"p\" },\n"
    "  [\"r.free\"] = { 2, unit = \"layers\", sense = \"over\", cite = \"14\", status = \"memory\",\n"
    "    source = \"recalled\" },\n"
    "  [\"r.near_most\"] = { 4, unit = \"in\", sense = \"at_most\", cite = \"15\", status = \"seen\",\n"
    "    source = \"p\" },\n"
    "  [\"r.table.a\"] = { 6, unit = \"in\", sense = \"at_most\", cite = \"16\", status = \"seen\",\n"
    "    source = \"p\" },\n"
    "  [\"r.table.b\"] = { 8, unit = \"in\", sense = \"at_most\", cite = \"17\", status = \"memory\",\n"
    "    source = \"recalled\" },\n"
    "} }\n";

const struct temporary_home *row_law_home(void)
{
    return &home;
}

int row_law_make(void **state)
{
    (void)state;
    home_make(&home);
    small_law_write(&home);
    home_write(&home, "rules/more.lua", MORE_FIELDS);
    home_write(&home, "jurisdictions/example/r.lua", PLACE);
    return 0;
}

int row_law_remove(void **state)
{
    (void)state;
    home_remove(&home);
    return 0;
}

char *row_report(const char *body, const char *job, const char *stage, char **problems)
{
    char rules[3000];
    snprintf(rules, sizeof(rules),
             "demand \"test.it\" { " ROW_READS
             " title = \"It\", stage = \"deck\", mend = \"Mend it.\",\n %s }\n",
             body);
    home_write(&home, "rules/test.lua", rules);
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check outcome = home_check(handle, job, "example/r", NULL, stage);
    char *json = outcome.json;
    outcome.json = NULL;
    *problems = strdup(outcome.problems);
    outcome_free(&outcome);
    eavemark_close(handle);
    return json;
}

void assert_row_of(const char *body, const char *job, const char *outcome, const char *says)
{
    char *problems, *json = row_report(body, job, NULL, &problems);
    assert_string_equal(problems, "");
    assert_member(json, "test.it", 0, "outcome", outcome);
    assert_member_has(json, "test.it", 0, "says", says);
    free(problems);
    free(json);
}

void assert_row_found(const char *body, const char *outcome, const char *says)
{
    assert_row_of(body, SMALL_JOB, outcome, says);
}

void assert_row_refused(const char *body, const char *says)
{
    char *problems, *json = row_report(body, SMALL_JOB, NULL, &problems);
    assert_null(json);
    if (strstr(problems, says) == NULL || strstr(problems, "rules/test.lua:1: \"test.it\"") == NULL)
        fail_msg("\"%s\" is not refused with \"%s\": %s", body, says, problems);
    free(problems);
}
