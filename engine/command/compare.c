/* compare.c - several jobs, or one job under several places or on several days. */
#include "command/command.h"

#include "include/eavemark.h"

#include <string.h>

struct compare_options {
    const char *home, *stage, *form, *output, *shop;
    struct several jurisdictions, dates;
};

/* What check number `index` is given of this option. */
static const char *of_check(const struct several *several, size_t index)
{
    /* One place or day holds for all; several are one for each check. */
    return several->count == 0 ? NULL : several->items[several->count == 1 ? 0 : index];
}

/* The longest of three lists is how many checks there are. */
static size_t most_of(size_t a, size_t b)
{
    return a > b ? a : b;
}

/* What is compared: several jobs, or one under several places, or on several
 * days. Only one of them may be several. */
static int complete_options(const struct compare_options *compare, const struct several *jobs)
{
    const size_t places = compare->jurisdictions.count, days = compare->dates.count;
    if (jobs->count == 0)
        return complain_of_usage(&command_compare, "which jobs?");
    if ((jobs->count > 1) + (places > 1) + (days > 1) > 1)
        return complain_of_usage(&command_compare,
                                 "compare several jobs, or one job under several "
                                 "places, or on several days: one thing at a time");
    if (jobs->count == 1 && places < 2 && days < 2)
        return complain_of_usage(&command_compare, "with what? Name a second job, or give "
                                                   "--jurisdiction or --date twice or more");
    /* Any of the jobs: each is read before the report is written, but should still be there
     * after. */
    for (size_t i = 0; compare->output != NULL && i < jobs->count; i++)
        if (arguments_same_file(jobs->items[i], compare->output))
            return complain_of_usage(&command_compare, "the report would overwrite a job");
    return COMMAND_GOES_ON;
}

static int compare_jobs(const struct compare_options *compare, const struct several *jobs,
                        eavemark *handle)
{
    struct eavemark_request requests[SEVERAL_MOST] = {{0}};
    /* Only one of the three is more than 1. */
    const size_t count = most_of(jobs->count,
                                 most_of(compare->jurisdictions.count, compare->dates.count));
    const bool json = compare->form != NULL && strcmp(compare->form, "json") == 0;
    char *report = NULL, *problems = NULL;
    for (size_t i = 0; i < count; i++)
        requests[i] = (struct eavemark_request){
            .name = of_check(jobs, i),
            .jurisdiction = of_check(&compare->jurisdictions, i),
            .date = of_check(&compare->dates, i),
            .stage = compare->stage,
            .shop_name = compare->shop};
    const int status = (int)eavemark_compare(
        handle, requests, count, json ? EAVEMARK_JSON : EAVEMARK_TEXT, &report, &problems);
    return output_answer(status, compare->output, report, problems);
}

static int run_compare(int argc, char **argv)
{
    struct compare_options compare = {0};
    struct several jobs = {.count = 0};
    int status = arguments_read(&command_compare, &compare, &jobs, argc, argv);
    if (status == COMMAND_GOES_ON)
        status = complete_options(&compare, &jobs);
    if (status != COMMAND_GOES_ON)
        return status;
    eavemark *handle = eavemark_open(settings_home(compare.home));
    if (handle == NULL) {
        complain("out of memory");
        return EAVEMARK_BROKEN;
    }
    status = compare_jobs(&compare, &jobs, handle);
    eavemark_close(handle);
    return status;
}

static const struct option_line OPTIONS[] = {
    {"jurisdiction", 0, "ID", "under this place; several times: one job under each",
     KIND_JURISDICTION, offsetof(struct compare_options, jurisdictions), true},
    {"date", 0, "YYYY-MM-DD", "applied for on this day; several times: on each", KIND_OTHER,
     offsetof(struct compare_options, dates), true},
    {"stage", 0, "STAGE", "only what is looked at then: permit, deck, dry-in, final", KIND_STAGE,
     offsetof(struct compare_options, stage), false},
    {"shop", 0, "FILE", "the shop sheet, in place of one that the job names", KIND_FILE,
     offsetof(struct compare_options, shop), false},
    {"form", 0, "FORM", "text (to read) or json (to pass on)", KIND_FORM,
     offsetof(struct compare_options, form), false},
    {"output", 'o', "FILE", "write the report there, once it is complete", KIND_FILE,
     offsetof(struct compare_options, output), false},
    {"home", 0, "DIR", "the folder with rules/ and jurisdictions/", KIND_FOLDER,
     offsetof(struct compare_options, home), false},
};

const struct command command_compare = {
    .name = "compare",
    .summary = "say what differs between jobs, places or days, and why",
    .usage = "[options] JOB [JOB ...]",
    .about = "Compares two jobs under one law, or one job under two (--jurisdiction or --date\n"
             "given twice): which findings changed, and which figure or fact moved them. Three\n"
             "or more make a table: a row for each rule that differs, a column for each.",
    .options = OPTIONS,
    .option_count = sizeof(OPTIONS) / sizeof(OPTIONS[0]),
    .words = {KIND_FILE, KIND_FILE},
    .words_most = SEVERAL_MOST,
    .status = "0 no difference; 1 some difference; 2 a job or the arguments\n"
              "cannot be used; 3 a rule or profile is broken",
    .example = "compare job.json --date 2025-06-30 --date 2025-07-01",
    .run = run_compare,
};
