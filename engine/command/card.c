/* card.c - the card of a stage, for the roof: its own two forms, and a stage that must be
 * named. */
#include "command/command.h"

#include "include/eavemark.h"

#include <string.h>

struct card_options {
    const char *home, *jurisdiction, *date, *stage, *form, *output, *shop, *job;
};

/* What the table cannot say: which options are needed, and that nothing is overwritten. */
static int complete_options(const struct card_options *options)
{
    if (options->job == NULL)
        return complain_of_usage(&command_card, "which job? Name a file, or - for standard input");
    if (options->stage == NULL)
        return complain_of_usage(&command_card,
                                 "which stage? --stage permit, deck, dry-in or final");
    if (options->output != NULL && arguments_same_file(options->job, options->output))
        return complain_of_usage(&command_card, "the card would overwrite the job itself");
    return COMMAND_GOES_ON;
}

/* Its own choices of form: a card is read on paper. */
static int make_card(const struct card_options *options, eavemark *handle)
{
    const struct eavemark_request request = {.name = options->job,
                                             .jurisdiction = options->jurisdiction,
                                             .date = options->date,
                                             .stage = options->stage,
                                             .shop_name = options->shop};
    const bool html = options->form != NULL && strcmp(options->form, "html") == 0;
    char *report = NULL, *problems = NULL;
    const int status = (int)eavemark_card(handle, &request, html ? EAVEMARK_HTML : EAVEMARK_TEXT,
                                          &report, &problems);
    return output_answer(status, options->output, report, problems);
}

static int run_card(int argc, char **argv)
{
    struct card_options options = {0};
    struct several words = {.count = 0};
    int status = arguments_read(&command_card, &options, &words, argc, argv);
    if (status != COMMAND_GOES_ON)
        return status;
    options.job = words.items[0];
    /* Before any law is read: a slip of the keys is told at once. */
    status = complete_options(&options);
    if (status != COMMAND_GOES_ON)
        return status;
    eavemark *handle = eavemark_open(settings_home(options.home));
    if (handle == NULL) {
        complain("out of memory");
        return EAVEMARK_BROKEN;
    }
    status = make_card(&options, handle);
    eavemark_close(handle);
    return status;
}

static const struct option_line OPTIONS[] = {
    {"stage", 0, "STAGE", "whose card: permit, deck, dry-in or final (needed)", KIND_STAGE,
     offsetof(struct card_options, stage), false},
    {"shop", 0, "FILE", "the shop sheet, in place of one that the job names", KIND_FILE,
     offsetof(struct card_options, shop), false},
    {"form", 0, "FORM", "text (80 columns) or html (a page to print)", KIND_CARD_FORM,
     offsetof(struct card_options, form), false},
    {"jurisdiction", 0, "ID", "under this place instead of the job's", KIND_JURISDICTION,
     offsetof(struct card_options, jurisdiction), false},
    {"date", 0, "YYYY-MM-DD", "as if applied for on this day", KIND_OTHER,
     offsetof(struct card_options, date), false},
    {"output", 'o', "FILE", "write the card there, once it is complete", KIND_FILE,
     offsetof(struct card_options, output), false},
    {"home", 0, "DIR", "the folder with rules/ and jurisdictions/", KIND_FOLDER,
     offsetof(struct card_options, home), false},
};

const struct command command_card = {
    .name = "card",
    .summary = "print what will be looked at at a stage, and the numbers to hit",
    .usage = "--stage STAGE [options] JOB",
    .about = "Prints a card to take up the roof: what the inspector will look at, in the order\n"
             "of the walk, the figure to hit for each with room for what is measured, what\n"
             "must be on the site, who calls and how early, open questions and cautions. JOB\n"
             "is a JSON file, or - for standard input.",
    .options = OPTIONS,
    .option_count = sizeof(OPTIONS) / sizeof(OPTIONS[0]),
    .words = {KIND_FILE, KIND_NONE},
    .words_most = 1,
    .status = "0 there is a card, however the job stands; 2 the job or the\n"
              "arguments cannot be used; 3 a rule or profile is broken",
    .example = "card --stage deck job.json",
    .run = run_card,
};
