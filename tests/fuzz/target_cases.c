/* The cases of an invented county: they are run or refused, and whatever they do, the
 * catalogue, another place's cases and the check of a job under it stay as they were. */
#include "fuzz/result.h"
#include "fuzz/target.h"
#include "support/small_law.h"

#include <ctype.h>
#include <string.h>

static const char COUNTY[] = "jurisdiction \"example/fuzz\" { title = \"Fuzz County\",\n"
                             "  invented = true, follows = \"model/test\" }\n";
static const char HARMLESS[] =
    "rule \"harmless.layers\" { " SMALL_READS " title = \"Layers\", stage = \"permit\",\n"
    "  judge = function(job, figure)\n"
    "    return at_most(job.existing.layers, figure \"test.most\", \"layers\")\n"
    "  end, mend = \"Take one off.\" }\n";
static const char CASES[] =
    "cases \"harmless.layers\" { under = \"model/test\",\n"
    "  { \"one\", expect = \"pass\" },\n"
    "  { \"many\", with = { [\"existing.layers\"] = 5 }, expect = \"fail\" },\n"
    "  { \"not known\", without = { \"existing.layers\" }, expect = \"open\" },\n"
    "}\n";

enum { OWN_CASES = 3 };

struct county {
    struct temporary_home home;
    char *before; /* what a check of the small job says */
};

static char *check(const struct county *county)
{
    eavemark *handle = eavemark_open(county->home.path);
    const struct eavemark_request request = {
        .name = "fuzz.json", .text = SMALL_JOB, .length = strlen(SMALL_JOB)};
    eavemark_result *result = eavemark_check(handle, &request);
    char *report = eavemark_result_report(result, EAVEMARK_JSON_LINE, EAVEMARK_ALL);
    fuzz_result(result);
    eavemark_close(handle);
    return report;
}

static void *start(void)
{
    struct county *county = malloc(sizeof(*county));
    FUZZ_REQUIRE(county != NULL);
    home_make(&county->home);
    small_law_write(&county->home);
    home_write(&county->home, "rules/harmless.lua", HARMLESS);
    home_write(&county->home, "rules/cases/base.json", SMALL_JOB);
    home_write(&county->home, "rules/cases/harmless.lua", CASES);
    home_write(&county->home, "jurisdictions/example/fuzz.lua", COUNTY);
    county->before = check(county);
    FUZZ_REQUIRE(county->before != NULL);
    return county;
}

/* Proves a place, or everything: there are words, whatever came out. */
static void prove(eavemark *handle, const char *name)
{
    char *report, *problems;
    const enum eavemark_status status = eavemark_proof(handle, name, NULL, NULL, EAVEMARK_TEXT,
                                                       &report, &problems);
    FUZZ_REQUIRE(problems != NULL);
    FUZZ_REQUIRE(status != EAVEMARK_UNUSABLE);
    FUZZ_REQUIRE(report != NULL);
    const char *passed = strstr(report, " passed, ");
    if (name == NULL) { /* the rules' own cases are run, come what may */
        FUZZ_REQUIRE(passed != NULL);
        while (passed > report && isdigit((unsigned char)passed[-1]))
            passed--;
        FUZZ_REQUIRE(strtol(passed, NULL, 10) >= OWN_CASES);
    }
    free(report);
    free(problems);
}

static void run(void *state, const char *bytes, size_t length)
{
    const struct county *county = state;
    char *text;
    home_write_n(&county->home, "jurisdictions/example/fuzz.cases.lua", bytes, length);
    eavemark *handle = eavemark_open(county->home.path);
    prove(handle, "example/fuzz");
    prove(handle, NULL);
    FUZZ_REQUIRE(eavemark_fields(handle, NULL, false, NULL, NULL, &text)
                 == EAVEMARK_NOTHING_FAILED);
    free(text);
    eavemark_close(handle);
    text = check(county);
    FUZZ_REQUIRE(text != NULL && strcmp(text, county->before) == 0);
    free(text);
}

static void end(void *state)
{
    struct county *county = state;
    home_remove(&county->home);
    free(county->before);
    free(county);
}

const struct fuzz_target fuzz_cases = {"cases", start, run, end};
