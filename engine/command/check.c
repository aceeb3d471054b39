#include "command/check.h"

#include "command/command.h"

#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

static const char HELP[] =
    "usage: eavemark check [options] JOB\n"
    "\n"
    "Pre-checks a reroof against the building code of its place and date. JOB is a\n"
    "JSON file, or - for standard input.\n"
    "\n"
    "  --jurisdiction ID    check under this place instead of the job's\n"
    "  --date YYYY-MM-DD    as if applied for on this day\n"
    "  --stage STAGE        only what is looked at then: permit, deck, dry-in, final\n"
    "  --form FORM          text (to read) or json (to pass on)\n"
    "  -o, --output FILE    write the report there, once it is complete\n"
    "  --strict             warnings and open questions count as failures\n"
    "  --lines              JOB holds one job per line; one JSON result per line.\n"
    "                       Without JOB, standard input is read\n"
    "  --home DIR           the folder with rules/ and jurisdictions/\n"
    "\n"
    "exit status: 0 nothing failed; 1 something failed; 2 the job or the arguments\n"
    "cannot be used; 3 a rule or profile is broken. With --lines, the highest.\n"
    "\n"
    "example: eavemark check --stage deck job.json\n";

static const char *const STAGES[] = {"permit", "deck", "dry-in", "final"};
static const char *const FORMS[] = {"text", "json"};

static int complain_of_usage(const char *message)
{
    complain("check: %s", message);
    complain("see: eavemark help check");
    return -1;
}

static bool same_file(const char *a, const char *b)
{
    struct stat about_a, about_b;
    return stat(a, &about_a) == 0 && stat(b, &about_b) == 0 && S_ISREG(about_a.st_mode)
        && about_a.st_dev == about_b.st_dev && about_a.st_ino == about_b.st_ino;
}

/* What getopt cannot see: choices, and options that exclude one another. */
static int settle(struct check *check)
{
    const size_t stages = sizeof(STAGES) / sizeof(STAGES[0]);
    const size_t forms = sizeof(FORMS) / sizeof(FORMS[0]);
    if (check->stage != NULL && settings_choice("check", "stage", check->stage, STAGES, stages) < 0)
        return -1;
    if (check->form != NULL && settings_choice("check", "form", check->form, FORMS, forms) < 0)
        return -1;
    if (check->lines && check->form != NULL && strcmp(check->form, "json") != 0)
        return complain_of_usage("--lines gives JSON only");
    if (check->job == NULL && !check->lines)
        return complain_of_usage("which job? Name a file, or - for standard input");
    if (check->job == NULL)
        check->job = "-";
    if (check->output != NULL && same_file(check->job, check->output))
        return complain_of_usage("the report would overwrite the job itself");
    return 0;
}

static enum settings_result read_arguments(struct check *check, int argc, char **argv)
{
    const struct setting settings[] = {
        {"jurisdiction", 0, &check->jurisdiction, NULL},
        {"date", 0, &check->date, NULL},
        {"stage", 0, &check->stage, NULL},
        {"form", 0, &check->form, NULL},
        {"output", 'o', &check->output, NULL},
        {"strict", 0, NULL, &check->strict},
        {"lines", 0, NULL, &check->lines},
        {"home", 0, &check->home, NULL},
    };
    const size_t count = sizeof(settings) / sizeof(settings[0]);
    const enum settings_result result = settings_read(settings, count, &check->job, argc, argv);
    if (result == SETTINGS_READ && settle(check) != 0)
        return SETTINGS_BAD;
    return result;
}

/* Colour is for a terminal that can show it and a user who has not refused it
 * (NO_COLOR, a convention of many programs). */
static bool wants_colour(const struct check *check)
{
    const char *refused = getenv("NO_COLOR"), *terminal = getenv("TERM");
    return check->output == NULL && isatty(STDOUT_FILENO) == 1
        && (refused == NULL || refused[0] == '\0')
        && (terminal == NULL || strcmp(terminal, "dumb") != 0);
}

static int check_one(const struct check *check, eavemark *handle)
{
    const struct eavemark_request request = {
        .name = check->job,
        .jurisdiction = check->jurisdiction,
        .date = check->date,
        .stage = check->stage,
    };
    const bool json = check->form != NULL && strcmp(check->form, "json") == 0;
    int status = EAVEMARK_BROKEN;
    char *report = NULL;
    const char *problems = "";
    eavemark_result *result = eavemark_check(handle, &request);
    if (result != NULL) {
        status = (int)eavemark_result_status(result, check->strict);
        problems = eavemark_result_problems(result);
        report = eavemark_result_report(result, json ? EAVEMARK_JSON : EAVEMARK_TEXT,
                                        !json && wants_colour(check));
    }
    fputs(problems, stderr);
    if (report != NULL) {
        if (output_text(check->output, report) != 0)
            status = EAVEMARK_UNUSABLE;
    } else if (problems[0] == '\0') {
        complain("out of memory");
        status = EAVEMARK_BROKEN;
    }
    free(report);
    eavemark_result_free(result);
    return status;
}

static int run(int argc, char **argv)
{
    struct check check = {0};
    switch (read_arguments(&check, argc, argv)) {
    case SETTINGS_BAD:
        return EAVEMARK_UNUSABLE;
    case SETTINGS_HELP:
        return output_text(NULL, HELP) == 0 ? 0 : EAVEMARK_UNUSABLE;
    case SETTINGS_READ:
        break;
    }
    eavemark *handle = eavemark_open(home_folder(check.home));
    if (handle == NULL) {
        complain("out of memory");
        return EAVEMARK_BROKEN;
    }
    const int status = check.lines ? check_lines(&check, handle) : check_one(&check, handle);
    eavemark_close(handle);
    return status;
}

const struct command command_check = {
    .name = "check",
    .summary = "pre-check a job against the code of its place and date",
    .help = HELP,
    .run = run,
};
