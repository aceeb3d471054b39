/* main.c - the program: finds the command and runs it.
 *
 * Exit status: 0 nothing failed, 1 something did, 2 unusable job or arguments,
 * 3 a rule or profile is broken (enum eavemark_status).
 */
#include "base/big_pages.h"
#include "base/nearest.h"
#include "base/text.h"
#include "command/command.h"
#include "include/eavemark.h"

#include <fcntl.h>
#include <string.h>
#include <sys/resource.h>
#include <unistd.h>

/* In the order help shows them: starting a job first, upkeep last. */
static const struct command *const COMMANDS[] = {
    &command_new,        &command_check,   &command_card,   &command_watch, &command_compare,
    &command_explain,    &command_figures, &command_places, &command_page,  &command_takeoff,
    &command_shop,       &command_fields,  &command_proof,  &command_trial, &command_county,
    &command_completion, &command_manual,
};

enum { COMMAND_COUNT = sizeof(COMMANDS) / sizeof(COMMANDS[0]) };

const struct command *const *commands_all(size_t *count)
{
    *count = COMMAND_COUNT;
    return COMMANDS;
}

static const struct command *command_find(const char *name)
{
    for (size_t i = 0; i < COMMAND_COUNT; i++)
        if (strcmp(COMMANDS[i]->name, name) == 0)
            return COMMANDS[i];
    return NULL;
}

static int print_about(const struct text *text)
{
    if (text->failed) {
        complain("out of memory");
        return EAVEMARK_BROKEN;
    }
    return output_text(NULL, text_string(text)) == 0 ? EAVEMARK_NOTHING_FAILED : EAVEMARK_UNUSABLE;
}

static int print_help(void)
{
    struct text help = TEXT_EMPTY;
    text_add(&help, "usage: eavemark COMMAND [options] ...\n\n"
                    "Pre-checks a residential reroof against the building code of its place and\n"
                    "date. It decides nothing: the local building department does.\n\n");
    for (size_t i = 0; i < COMMAND_COUNT; i++)
        text_addf(&help, "  %-10s %s\n", COMMANDS[i]->name, COMMANDS[i]->summary);
    text_addf(&help, "  %-10s %s\n", "help", "say more about a command: eavemark help check");
    text_add(&help, "\n  --help, -h     print this\n"
                    "  --version, -V  print the version\n\n"
                    "EAVEMARK_HOME names the folder with rules/ and jurisdictions/.\n\n"
                    "example: eavemark check job.json\n");
    const int status = print_about(&help);
    text_free(&help);
    return status;
}

static int print_version(void)
{
    return output_text(NULL, "eavemark " EAVEMARK_VERSION "\n") == 0 ? EAVEMARK_NOTHING_FAILED
                                                                     : EAVEMARK_UNUSABLE;
}

/* No such command, or no such option of the program itself. */
static int refuse_command_line(const char *what, const char *wanted, const char *const *more,
                               size_t more_count)
{
    struct nearest nearest;
    nearest_start(&nearest, wanted);
    for (size_t i = 0; wanted[0] != '-' && i < COMMAND_COUNT; i++)
        nearest_offer(&nearest, COMMANDS[i]->name);
    for (size_t i = 0; i < more_count; i++)
        nearest_offer(&nearest, more[i]);
    if (nearest.name == NULL)
        complain("no %s \"%s\"", what, wanted);
    else
        complain("no %s \"%s\" (did you mean \"%s\"?)", what, wanted, nearest.name);
    complain("see: eavemark --help");
    return EAVEMARK_UNUSABLE;
}

static int refuse_command(const char *wanted)
{
    static const char *const MORE[] = {"help"};
    return refuse_command_line("command", wanted, MORE, 1);
}

static int refuse_option(const char *wanted)
{
    static const char *const MORE[] = {"--help", "--version"};
    return refuse_command_line("option", wanted, MORE, 2);
}

/* `eavemark help NAME`. */
static int help_command(int argc, char **argv)
{
    if (argc < 3)
        return print_help();
    if (strcmp(argv[2], "help") == 0)
        return print_help();
    const struct command *command = command_find(argv[2]);
    if (command == NULL)
        return refuse_command(argv[2]);
    struct text help = TEXT_EMPTY;
    help_of_command(command, &help);
    const int status = print_about(&help);
    text_free(&help);
    return status;
}

/* A program started with a standard stream closed would have its next file
 * take that place, and write its report into it. A stand-in opened the wrong
 * way round makes every use of the stream fail instead, and be reported. */
static void hold_standard_streams(void)
{
    for (int handle = STDIN_FILENO; handle <= STDERR_FILENO; handle++)
        if (fcntl(handle, F_GETFD) < 0
            && open("/dev/null", handle == STDIN_FILENO ? O_WRONLY : O_RDONLY) < 0)
            _exit(EAVEMARK_UNUSABLE);
}

/* A job tells where somebody lives and what their house is like; should the
 * program ever crash, that must not be left behind in a core file. */
static void leave_no_core(void)
{
    const struct rlimit none = {0, 0};
    setrlimit(RLIMIT_CORE, &none);
}

int main(int argc, char **argv)
{
    hold_standard_streams();
    leave_no_core();
    if (argc < 2) {
        complain("which command?");
        complain("see: eavemark --help");
        return EAVEMARK_UNUSABLE;
    }
    const char *first = argv[1];
    if (strcmp(first, "--help") == 0 || strcmp(first, "-h") == 0)
        return print_help();
    if (strcmp(first, "--version") == 0 || strcmp(first, "-V") == 0)
        return print_version();
    if (strcmp(first, "help") == 0)
        return help_command(argc, argv);
    if (first[0] == '-')
        return refuse_option(first);
    const struct command *command = command_find(first);
    if (command == NULL)
        return refuse_command(first);
    big_pages_for_malloc();
    return command->run(argc - 1, argv + 1);
}
