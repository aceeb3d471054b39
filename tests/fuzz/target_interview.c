/* Answers, a line each, under the real catalogue: from nothing, or with the first line
 * "fill" from the cases' own job with its facts taken away. Each is taken or refused in
 * words; what comes of them is a job that a check takes. */
#include "fuzz/result.h"
#include "fuzz/target.h"
#include "support/temporary_home.h"

#include <stdbool.h>
#include <string.h>

enum { ANSWERS_MOST = 40 };

static const char BARE[] = "{\"eavemark_job\": 1, \"job\": \"Fuzzed\", \"date\": \"2026-03-02\",\n"
                           " \"jurisdiction\": \"example/dunmarrow\", \"stage\": \"final\"}";

static void *start(void)
{
    return eavemark_open(EAVEMARK_HOME_DIR);
}

static void is_harmless(const char *text)
{
    FUZZ_REQUIRE(text != NULL);
    for (const char *at = text; *at != '\0'; at++)
        FUZZ_REQUIRE((unsigned char)*at >= ' ' || *at == '\n');
}

static void answer(eavemark_interview *interview, const char *line)
{
    char *why = NULL;
    bool taken = true;
    if (strcmp(line, "<") == 0) {
        eavemark_interview_back(interview);
        return;
    }
    taken = line[0] == '\0' ? eavemark_interview_skip(interview, &why)
                            : eavemark_interview_answer(interview, line, &why);
    is_harmless(why);
    FUZZ_REQUIRE(taken || why[0] != '\0');
    free(why);
}

/* False when nothing is left to ask. */
static bool ask(eavemark_interview *interview, bool help)
{
    char *problems;
    char *words = eavemark_interview_ask(interview, help, &problems);
    FUZZ_REQUIRE(problems != NULL);
    FUZZ_REQUIRE(words != NULL || problems[0] == '\0');
    if (words != NULL)
        is_harmless(words);
    free(problems);
    free(words);
    return words != NULL;
}

/* The job so far is one that a check takes, or there are words why it is none yet. */
static void look_at_job(eavemark *handle, eavemark_interview *interview)
{
    size_t answered, skipped;
    char *problems;
    char *job = eavemark_interview_job(interview, &answered, &skipped, &problems);
    FUZZ_REQUIRE(problems != NULL && (job == NULL) == (problems[0] != '\0'));
    if (job != NULL) {
        const struct eavemark_request request = {
            .name = "fuzz.json", .text = job, .length = strlen(job)};
        FUZZ_REQUIRE(fuzz_result(eavemark_check(handle, &request)) != EAVEMARK_UNUSABLE);
    }
    free(problems);
    free(job);
}

static void hold(eavemark *handle, char *text, bool fill)
{
    const struct eavemark_request request = {
        .name = "fuzz.json", .text = BARE, .length = strlen(BARE)};
    enum eavemark_status status;
    char *problems;
    eavemark_interview *interview = eavemark_interview_open(handle, fill ? &request : NULL, &status,
                                                            &problems);
    FUZZ_REQUIRE(interview != NULL);
    free(problems);
    char *line = text;
    for (int i = 0; i < ANSWERS_MOST && line != NULL; i++) {
        char *next = strchr(line, '\n');
        if (next != NULL)
            *next++ = '\0';
        if (!ask(interview, line[0] == '?'))
            break;
        if (line[0] != '?')
            answer(interview, line);
        line = next;
    }
    look_at_job(handle, interview);
    eavemark_interview_close(interview);
}

static void run(void *state, const char *bytes, size_t length)
{
    static const char FILL[] = "fill\n";
    char *text = malloc(length + 1);
    FUZZ_REQUIRE(text != NULL);
    memcpy(text, bytes, length);
    text[length] = '\0';
    const bool fill = strncmp(text, FILL, strlen(FILL)) == 0;
    hold(state, fill ? text + strlen(FILL) : text, fill);
    free(text);
}

static void end(void *state)
{
    eavemark_close(state);
}

const struct fuzz_target fuzz_interview = {"interview", start, run, end};
