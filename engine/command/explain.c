/* explain.c - a rule or figure by its name, with a job also how that was judged. */
#include "command/command.h"

#include "include/eavemark.h"

#include <string.h>
#include <unistd.h>

struct explain_options {
    const char *home, *jurisdiction, *date, *form, *output, *shop;
};

/* A second word is a job, and must not be overwritten. */
static int complete_options(const struct explain_options *explain, const struct several *words)
{
    if (explain->output != NULL && words->count > 1
        && arguments_same_file(words->items[1], explain->output))
        return complain_of_usage(&command_explain, "the report would overwrite the job itself");
    /* "explain drip edge" */
    if (words->count > 1 && strcspn(words->items[1], "./-") == strlen(words->items[1])
        && access(words->items[1], F_OK) != 0)
        return complain_of_usage(&command_explain,
                                 "a second word is a job, and there is no file of that name; "
                                 "several words to search for go in quotes");
    return COMMAND_GOES_ON;
}

/* One word is a rule or a figure, two are a rule and a job. */
static int run_explain(int argc, char **argv)
{
    struct explain_options explain = {0};
    struct several words = {.count = 0};
    int status = arguments_read(&command_explain, &explain, &words, argc, argv);
    if (status == COMMAND_GOES_ON)
        status = complete_options(&explain, &words);
    if (status != COMMAND_GOES_ON)
        return status;
    const struct eavemark_request request = {
        /* NULL without a job: then only place and day count. */
        .name = words.items[1],
        .jurisdiction = explain.jurisdiction,
        .date = explain.date,
        .shop_name = explain.shop};
    const bool json = explain.form != NULL && strcmp(explain.form, "json") == 0;
    char *report = NULL, *problems = NULL;
    eavemark *handle = eavemark_open(settings_home(explain.home));
    status = EAVEMARK_BROKEN;
    if (handle != NULL)
        status = (int)eavemark_explain(handle, words.items[0], &request,
                                       json ? EAVEMARK_JSON : EAVEMARK_TEXT, &report, &problems);
    eavemark_close(handle);
    return output_answer(status, explain.output, report, problems);
}

static const struct option_line OPTIONS[] = {
    {"jurisdiction", 0, "ID", "show this place's figures too", KIND_JURISDICTION,
     offsetof(struct explain_options, jurisdiction), false},
    {"date", 0, "YYYY-MM-DD", "as of this day; else the newest editions", KIND_OTHER,
     offsetof(struct explain_options, date), false},
    {"form", 0, "FORM", "text (to read) or json (to pass on)", KIND_FORM,
     offsetof(struct explain_options, form), false},
    {"shop", 0, "FILE", "the shop sheet, in place of one that the job names", KIND_FILE,
     offsetof(struct explain_options, shop), false},
    {"output", 'o', "FILE", "write the report there, once it is complete", KIND_FILE,
     offsetof(struct explain_options, output), false},
    {"home", 0, "DIR", "the folder with rules/ and jurisdictions/", KIND_FOLDER,
     offsetof(struct explain_options, home), false},
};

const struct command command_explain = {
    .name = "explain",
    .summary = "say what a rule asks and where its figures come from",
    .usage = "[options] [RULE [JOB] | FIGURE]",
    .about = "Says what a rule is about, the figures it asks for in each edition and who\n"
             "moves them, how well each is known, and the facts it reads. With a JOB, shows\n"
             "step by step how that job is judged. A figure is explained likewise. Without\n"
             "any name, lists the rules by topic.",
    .options = OPTIONS,
    .option_count = sizeof(OPTIONS) / sizeof(OPTIONS[0]),
    .words = {KIND_RULE, KIND_FILE},
    .words_most = 2,
    .status = "0 explained; 2 no such rule or figure, or the job cannot be\n"
              "used; 3 a rule or profile is broken",
    .example = "explain layers.total --jurisdiction example/tamarack job.json",
    .run = run_explain,
};
