/* A job, a line "==", and a shop sheet under the real catalogue. Both are judged or refused
 * in words; and the sheet that is lifted out of a job that holds up is one the job holds up
 * with, for which the job's own facts come out as before. */
#include "fuzz/result.h"
#include "fuzz/target.h"

#include <stdbool.h>
#include <string.h>

static void *start(void)
{
    return eavemark_open(EAVEMARK_HOME_DIR);
}

static enum eavemark_status check(eavemark *handle, const struct eavemark_request *request)
{
    return fuzz_result(eavemark_check(handle, request));
}

static bool is_judged(enum eavemark_status status)
{
    return status == EAVEMARK_NOTHING_FAILED || status == EAVEMARK_FAILED;
}

static void lift(eavemark *handle, const struct eavemark_request *job)
{
    char *sheet = NULL, *problems = NULL;
    const enum eavemark_status alone = check(handle, job);
    const enum eavemark_status status = eavemark_shop_lift(handle, job, &sheet, &problems);
    FUZZ_REQUIRE(problems != NULL);
    FUZZ_REQUIRE((sheet != NULL) == (status == EAVEMARK_NOTHING_FAILED));
    FUZZ_REQUIRE(sheet != NULL || problems[0] != '\0');
    FUZZ_REQUIRE(sheet != NULL || !is_judged(alone));
    if (sheet != NULL && is_judged(alone)) {
        struct eavemark_request with = *job;
        with.shop = sheet;
        with.shop_length = strlen(sheet);
        with.shop_name = "lifted.json";
        FUZZ_REQUIRE(is_judged(check(handle, &with)));
    }
    free(sheet);
    free(problems);
}

static void run(void *state, const char *bytes, size_t length)
{
    static const char BETWEEN[] = "\n==\n";
    const char *between = NULL;
    for (size_t i = 0; between == NULL && i + strlen(BETWEEN) <= length; i++)
        if (memcmp(bytes + i, BETWEEN, strlen(BETWEEN)) == 0)
            between = bytes + i;
    struct eavemark_request job = {.name = "fuzz.json", .text = bytes, .length = length};
    if (between != NULL) {
        job.length = (size_t)(between - bytes);
        struct eavemark_request with = job;
        with.shop = between + strlen(BETWEEN);
        with.shop_length = length - job.length - strlen(BETWEEN);
        with.shop_name = "shop.json";
        check(state, &with);
        if (is_judged(check(state, &job)))
            FUZZ_REQUIRE(check(state, &with) != EAVEMARK_BROKEN);
    }
    lift(state, &job);
}

static void end(void *state)
{
    eavemark_close(state);
}

const struct fuzz_target fuzz_shop = {"shop", start, run, end};
