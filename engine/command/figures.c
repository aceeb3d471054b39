/* figures.c - figures as a table, to be held against the books. */
#include "command/command.h"

#include "include/eavemark.h"

#include <string.h>

struct figures_options {
    const char *home, *jurisdiction, *date, *status, *form, *output;
};

static int run_figures(int argc, char **argv)
{
    struct figures_options figures = {0};
    struct several words = {.count = 0};
    int status = arguments_read(&command_figures, &figures, &words, argc, argv);
    if (status != COMMAND_GOES_ON)
        return status;
    /* No job: only place and day. */
    const struct eavemark_request request = {.jurisdiction = figures.jurisdiction,
                                             .date = figures.date};
    const bool json = figures.form != NULL && strcmp(figures.form, "json") == 0;
    char *report = NULL, *problems = NULL;
    eavemark *handle = eavemark_open(settings_home(figures.home));
    status = EAVEMARK_BROKEN;
    if (handle != NULL)
        status = (int)eavemark_figures(handle, words.items[0], figures.status, &request,
                                       json ? EAVEMARK_JSON : EAVEMARK_TEXT, &report, &problems);
    /* The report is the caller's own by now. */
    eavemark_close(handle);
    return output_answer(status, figures.output, report, problems);
}

static const struct option_line OPTIONS[] = {
    {"status", 0, "WORD", "only those seen, parallel, memory, practice or invented", KIND_OTHER,
     offsetof(struct figures_options, status), false},
    {"jurisdiction", 0, "ID", "this place's figures instead of the model editions'",
     KIND_JURISDICTION, offsetof(struct figures_options, jurisdiction), false},
    {"date", 0, "YYYY-MM-DD", "as of this day; else the newest editions", KIND_OTHER,
     offsetof(struct figures_options, date), false},
    {"form", 0, "FORM", "text (tab-separated lines) or json", KIND_FORM,
     offsetof(struct figures_options, form), false},
    {"output", 'o', "FILE", "write the table there, once it is complete", KIND_FILE,
     offsetof(struct figures_options, output), false},
    {"home", 0, "DIR", "the folder with rules/ and jurisdictions/", KIND_FOLDER,
     offsetof(struct figures_options, home), false},
};

const struct command command_figures = {
    .name = "figures",
    .summary = "print figures by edition, to hold them against the book",
    .usage = "[options] [BEGINNING]",
    .about = "Prints a line for each figure of each edition of the model code: what it\n"
             "demands, its section, how well it is known, what was read and whether sources\n"
             "disagree. The lines are separated by tabs, so that a spreadsheet opens them.\n"
             "BEGINNING is what their names begin with: deck, deck.nail_kinds.",
    .options = OPTIONS,
    .option_count = sizeof(OPTIONS) / sizeof(OPTIONS[0]),
    .words = {KIND_TOPIC, KIND_NONE},
    .words_most = 1,
    .status = "0 printed; 2 no such figure, place or status; 3 a profile is\n"
              "broken",
    .example = "figures underlayment --status memory",
    .run = run_figures,
};
