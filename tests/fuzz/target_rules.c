/* A rule pack beside a harmless rule, loaded with the small law and, if it
 * loads, judging the small job. */
#include "fuzz/result.h"
#include "fuzz/target.h"
#include "support/small_law.h"

#include <string.h>

static const char HARMLESS[] =
    "rule \"harmless.layers\" { " SMALL_READS " title = \"Layers\", stage = \"permit\",\n"
    "  judge = function(job, figure)\n"
    "    return at_most(job.existing.layers, figure \"test.most\", \"layers\")\n"
    "  end, mend = \"Take one off.\" }\n";

static void *start(void)
{
    struct temporary_home *home = malloc(sizeof(*home));
    FUZZ_REQUIRE(home != NULL);
    home_make(home);
    small_law_write(home);
    home_write(home, "rules/harmless.lua", HARMLESS);
    return home;
}

static void run(void *state, const char *bytes, size_t length)
{
    const struct temporary_home *home = state;
    home_write_n(home, "rules/fuzz.lua", bytes, length);
    eavemark *handle = eavemark_open(home->path);
    const struct eavemark_request request = {
        .name = "fuzz.json", .text = SMALL_JOB, .length = strlen(SMALL_JOB)};
    fuzz_result(eavemark_check(handle, &request));
    eavemark_close(handle);
}

static void end(void *state)
{
    home_remove(state);
    free(state);
}

const struct fuzz_target fuzz_rules = {"rules", start, run, end};
