/* A job, read and held against the real catalogue; when it holds, judged by the
 * rules of the place it names. */
#include "fuzz/result.h"
#include "fuzz/target.h"

static void *start(void)
{
    return eavemark_open(EAVEMARK_HOME_DIR);
}

static void run(void *state, const char *bytes, size_t length)
{
    const struct eavemark_request request = {.name = "fuzz.json", .text = bytes, .length = length};
    fuzz_result(eavemark_check(state, &request));
}

static void end(void *state)
{
    eavemark_close(state);
}

const struct fuzz_target fuzz_job = {"job", start, run, end};
