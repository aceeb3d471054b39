/* The draft that `new` keeps its answers in, as a program that was killed, or anyone, left
 * it: it is gone on from or told to be in the way, and then stays as it is; an answer that
 * was kept is the one found again. */
#include "command/draft.h"
#include "fuzz/target.h"
#include "include/eavemark.h"
#include "support/temporary_home.h"

#include <stdbool.h>
#include <string.h>

struct drafts {
    struct temporary_home home;
    eavemark *handle;
    char target[128];
};

static void *start(void)
{
    struct drafts *drafts = malloc(sizeof(*drafts));
    FUZZ_REQUIRE(drafts != NULL);
    home_make(&drafts->home);
    snprintf(drafts->target, sizeof(drafts->target), "%s/job.json", drafts->home.path);
    drafts->handle = eavemark_open(EAVEMARK_HOME_DIR);
    FUZZ_REQUIRE(drafts->handle != NULL);
    return drafts;
}

/* What is given is text as the program that was killed may have written it, or not. */
static void go_on(const struct drafts *drafts, const char *job)
{
    const struct eavemark_request request = {
        .name = "job.json.draft", .text = job, .length = strlen(job)};
    enum eavemark_status status;
    char *problems, *why = NULL;
    eavemark_interview *interview = eavemark_interview_open(drafts->handle, &request, &status,
                                                            &problems);
    FUZZ_REQUIRE(problems != NULL && (interview != NULL || problems[0] != '\0'));
    free(problems);
    if (interview == NULL)
        return;
    char *words = eavemark_interview_ask(interview, false, &problems);
    FUZZ_REQUIRE(problems != NULL);
    if (words != NULL)
        eavemark_interview_answer(interview, "1", &why);
    char *draft = eavemark_interview_draft(interview);
    FUZZ_REQUIRE(draft != NULL && strchr(draft, '\n') == NULL);
    free(draft);
    free(why);
    free(words);
    free(problems);
    eavemark_interview_close(interview);
}

/* Opened again, the last answer is the one that was kept. */
static void keep_and_find(const struct drafts *drafts, const char *original, size_t length)
{
    static const char KEPT[] = "{\"job\": \"kept\"}";
    struct draft draft;
    FUZZ_REQUIRE(draft_open(&draft, drafts->target, original, length) == 0);
    FUZZ_REQUIRE(draft.handle >= 0);
    draft_keep(&draft, KEPT);
    draft_close(&draft, false);
    FUZZ_REQUIRE(draft_open(&draft, drafts->target, original, length) == 0);
    FUZZ_REQUIRE(draft.job != NULL && strcmp(draft.job, KEPT) == 0);
    draft_close(&draft, true);
}

static bool is_as_it_was(const char *path, const char *bytes, size_t length)
{
    size_t now;
    char *text = file_text(path, &now);
    const bool same = now == length && memcmp(text, bytes, length) == 0;
    free(text);
    return same;
}

/* Begun from nothing, or from the file that is filled in. */
static void hold(const struct drafts *drafts, const char *bytes, size_t length,
                 const char *original)
{
    const size_t original_length = original == NULL ? 0 : strlen(original);
    struct draft draft;
    home_write_n(&drafts->home, "job.json.draft", bytes, length);
    if (draft_open(&draft, drafts->target, original, original_length) != 0) {
        draft_close(&draft, false);
        FUZZ_REQUIRE(is_as_it_was(home_path(&drafts->home, "job.json.draft"), bytes, length));
        return;
    }
    char *job = draft.job == NULL ? NULL : strdup(draft.job);
    draft_close(&draft, false);
    if (job != NULL)
        go_on(drafts, job);
    free(job);
    keep_and_find(drafts, original, original_length);
}

static void run(void *state, const char *bytes, size_t length)
{
    hold(state, bytes, length, NULL);
    hold(state, bytes, length, "{}");
}

static void end(void *state)
{
    struct drafts *drafts = state;
    eavemark_close(drafts->handle);
    home_remove(&drafts->home);
    free(drafts);
}

const struct fuzz_target fuzz_draft = {"draft", start, run, end};
