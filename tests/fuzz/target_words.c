/* Slopes and days: what the readers take must be what the published patterns
 * of the JSON Schema match, and no other text. */
#include "base/date.h"
#include "fuzz/target.h"
#include "job/slope.h"

#include <math.h>
#include <regex.h>
#include <stdbool.h>
#include <string.h>

struct patterns {
    regex_t slope, date;
};

static void *start(void)
{
    struct patterns *patterns = malloc(sizeof(*patterns));
    FUZZ_REQUIRE(patterns != NULL);
    FUZZ_REQUIRE(regcomp(&patterns->slope, SLOPE_PATTERN, REG_EXTENDED | REG_NOSUB) == 0);
    FUZZ_REQUIRE(regcomp(&patterns->date, DATE_PATTERN, REG_EXTENDED | REG_NOSUB) == 0);
    return patterns;
}

static void read_slope(const struct patterns *patterns, const char *text)
{
    double rise = NAN;
    const bool read = slope_parse(text, &rise);
    FUZZ_REQUIRE(read == (regexec(&patterns->slope, text, 0, NULL, 0) == 0));
    FUZZ_REQUIRE(!read || (isfinite(rise) && rise >= 0));
}

static void read_date(const struct patterns *patterns, const char *text)
{
    const long date = date_parse(text);
    char written[16];
    FUZZ_REQUIRE((date != 0) == (regexec(&patterns->date, text, 0, NULL, 0) == 0));
    if (date == 0)
        return;
    date_write(date, written);
    FUZZ_REQUIRE(strcmp(written, text) == 0);
}

static void run(void *state, const char *bytes, size_t length)
{
    char *text = malloc(length + 1);
    FUZZ_REQUIRE(text != NULL);
    memcpy(text, bytes, length);
    text[length] = '\0';
    read_slope(state, text);
    read_date(state, text);
    free(text);
}

static void end(void *state)
{
    struct patterns *patterns = state;
    regfree(&patterns->slope);
    regfree(&patterns->date);
    free(patterns);
}

const struct fuzz_target fuzz_words = {"words", start, run, end};
