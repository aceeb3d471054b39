#include "command/command.h"

#include "include/eavemark.h"

#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

static const char HELP[] =
    "usage: eavemark takeoff [options] JOB\n"
    "\n"
    "Reckons what a reroof takes: areas, squares, bundles, nails, underlayment, ice\n"
    "barrier, drip edge, vents, deck, loads and days, each with its arithmetic and\n"
    "the figure of the place that drives it. What the job does not say stays an open\n"
    "question; nothing is guessed. JOB is a JSON file, or - for standard input.\n"
    "\n"
    "  --jurisdiction ID    reckon under this place instead of the job's\n"
    "  --date YYYY-MM-DD    as if applied for on this day\n"
    "  --form FORM          text (to read) or json (to pass on)\n"
    "  -o, --output FILE    write the report there, once it is complete\n"
    "  --home DIR           the folder with rules/ and jurisdictions/\n"
    "\n"
    "exit status: 0 reckoned, open questions included; 2 the job or the arguments\n"
    "cannot be used; 3 a quantity or profile is broken\n"
    "\n"
    "example: eavemark takeoff job.json\n";

static const char *const FORMS[] = {"text", "json"};

struct takeoff_options {
    const char *home, *jurisdiction, *date, *form, *output, *job;
};

static int complain_of_usage(const char *message)
{
    complain("takeoff: %s", message);
    complain("see: eavemark help takeoff");
    return -1;
}

static bool same_file(const char *a, const char *b)
{
    struct stat about_a, about_b;
    return stat(a, &about_a) == 0 && stat(b, &about_b) == 0 && S_ISREG(about_a.st_mode)
        && about_a.st_dev == about_b.st_dev && about_a.st_ino == about_b.st_ino;
}

static enum settings_result read_arguments(struct takeoff_options *options, int argc, char **argv)
{
    const struct setting settings[] = {
        {"jurisdiction", 0, &options->jurisdiction, NULL},
        {"date", 0, &options->date, NULL},
        {"form", 0, &options->form, NULL},
        {"output", 'o', &options->output, NULL},
        {"home", 0, &options->home, NULL},
    };
    const size_t count = sizeof(settings) / sizeof(settings[0]);
    const size_t forms = sizeof(FORMS) / sizeof(FORMS[0]);
    const enum settings_result result = settings_read(settings, count, &options->job, argc, argv);
    if (result != SETTINGS_READ)
        return result;
    if (options->form != NULL && settings_choice("takeoff", "form", options->form, FORMS, forms) < 0)
        return SETTINGS_BAD;
    if (options->job == NULL
        && complain_of_usage("which job? Name a file, or - for standard input") != 0)
        return SETTINGS_BAD;
    if (options->output != NULL && same_file(options->job, options->output)
        && complain_of_usage("the report would overwrite the job itself") != 0)
        return SETTINGS_BAD;
    return SETTINGS_READ;
}

static int reckon(const struct takeoff_options *options, eavemark *handle)
{
    const struct eavemark_request request = {
        .name = options->job, .jurisdiction = options->jurisdiction, .date = options->date};
    const bool json = options->form != NULL && strcmp(options->form, "json") == 0;
    char *report = NULL, *problems = NULL;
    int status = (int)eavemark_takeoff(handle, &request, json ? EAVEMARK_JSON : EAVEMARK_TEXT,
                                       &report, &problems);
    fputs(problems == NULL ? "eavemark: out of memory\n" : problems, stderr);
    if (report != NULL && output_text(options->output, report) != 0)
        status = EAVEMARK_UNUSABLE;
    free(report);
    free(problems);
    return status;
}

static int run(int argc, char **argv)
{
    struct takeoff_options options = {0};
    switch (read_arguments(&options, argc, argv)) {
    case SETTINGS_BAD:
        return EAVEMARK_UNUSABLE;
    case SETTINGS_HELP:
        return output_text(NULL, HELP) == 0 ? 0 : EAVEMARK_UNUSABLE;
    case SETTINGS_READ:
        break;
    }
    eavemark *handle = eavemark_open(home_folder(options.home));
    if (handle == NULL) {
        complain("out of memory");
        return EAVEMARK_BROKEN;
    }
    const int status = reckon(&options, handle);
    eavemark_close(handle);
    return status;
}

const struct command command_takeoff = {
    .name = "takeoff",
    .summary = "reckon areas, materials, loads and days for a job",
    .help = HELP,
    .run = run,
};
