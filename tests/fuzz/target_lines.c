/* A batch of jobs, one a line: a record for every line that is not blank, in
 * the same order, each one line of JSON. */
#include "command/checking.h"
#include "fuzz/target.h"
#include "support/small_law.h"

#include <cjson/cJSON.h>

#include <stdbool.h>
#include <string.h>
#include <unistd.h>

struct lines {
    struct temporary_home home;
    eavemark *handle;
    char input[128], output[128];
};

static void *start(void)
{
    struct lines *lines = malloc(sizeof(*lines));
    FUZZ_REQUIRE(lines != NULL);
    home_make(&lines->home);
    small_law_write(&lines->home);
    lines->handle = eavemark_open(lines->home.path);
    FUZZ_REQUIRE(lines->handle != NULL);
    snprintf(lines->input, sizeof(lines->input), "%s/input", lines->home.path);
    snprintf(lines->output, sizeof(lines->output), "%s/output", lines->home.path);
    return lines;
}

/* Lines that hold more than spaces, counted another way than the command. */
static size_t lines_with_something(const char *bytes, size_t length)
{
    size_t count = 0;
    bool something = false;
    for (size_t i = 0; i < length; i++) {
        if (bytes[i] == '\n') {
            count += something;
            something = false;
        } else if (bytes[i] != ' ' && bytes[i] != '\t' && bytes[i] != '\r') {
            something = true;
        }
    }
    return count + something;
}

static size_t records(const char *path)
{
    size_t count = 0;
    char *output = file_text(path, NULL), *rest = output;
    for (char *end; (end = strchr(rest, '\n')) != NULL; rest = end + 1, count++) {
        *end = '\0';
        cJSON *record = cJSON_Parse(rest);
        FUZZ_REQUIRE(cJSON_IsObject(record));
        cJSON_Delete(record);
    }
    FUZZ_REQUIRE(*rest == '\0');
    free(output);
    return count;
}

static void run(void *state, const char *bytes, size_t length)
{
    struct lines *lines = state;
    const struct check check = {.job = lines->input, .output = lines->output, .lines = true};
    home_write_n(&lines->home, "input", bytes, length);
    unlink(lines->output);
    const int status = lines_check(&check, lines->handle);
    const size_t wanted = lines_with_something(bytes, length);
    FUZZ_REQUIRE(status >= EAVEMARK_NOTHING_FAILED && status <= EAVEMARK_UNUSABLE);
    FUZZ_REQUIRE((access(lines->output, F_OK) == 0) == (wanted > 0));
    FUZZ_REQUIRE(wanted > 0 ? records(lines->output) == wanted : status == EAVEMARK_UNUSABLE);
}

static void end(void *state)
{
    struct lines *lines = state;
    eavemark_close(lines->handle);
    home_remove(&lines->home);
    free(lines);
}

const struct fuzz_target fuzz_lines = {"lines", start, run, end};
