/* arguments.c - the command line by a command's table, for getopt_long. */
#include "command/command.h"

#include "base/nearest.h"
#include "base/text.h"
#include "include/eavemark.h"

#include <getopt.h>
#include <string.h>
#include <sys/stat.h>

enum { LONG_FIRST = 256 }; /* getopt codes of long options: past every letter */

static const char *const STAGES[] = {"permit", "deck", "dry-in", "final"};
static const char *const FORMS[] = {"text", "json", "html"};
static const char *const CARD_FORMS[] = {"text", "html"};
static const char *const LIST_FORMS[] = {"text", "json", "csv"};

/* The first two forms are those of most commands, all three those with pages. */
const char *const *arguments_choices(enum kind kind, size_t *count)
{
    if (kind == KIND_STAGE) {
        *count = sizeof(STAGES) / sizeof(STAGES[0]);
        return STAGES;
    }
    if (kind == KIND_FORM || kind == KIND_REPORT_FORM) {
        *count = kind == KIND_FORM ? 2 : 3;
        return FORMS;
    }
    if (kind == KIND_CARD_FORM) {
        *count = sizeof(CARD_FORMS) / sizeof(CARD_FORMS[0]);
        return CARD_FORMS;
    }
    if (kind == KIND_LIST_FORM) {
        *count = sizeof(LIST_FORMS) / sizeof(LIST_FORMS[0]);
        return LIST_FORMS;
    }
    *count = 0;
    return NULL;
}

/* By device and number: two paths may lead to one file. */
bool arguments_same_file(const char *a, const char *b)
{
    struct stat about_a, about_b;
    return stat(a, &about_a) == 0 && stat(b, &about_b) == 0 && S_ISREG(about_a.st_mode)
           && about_a.st_dev == about_b.st_dev && about_a.st_ino == about_b.st_ino;
}

/* The option as the user would write it, from getopt's code for it. */
static void option_name(char out[64], int code, const struct option *options)
{
    if (code >= LONG_FIRST)
        snprintf(out, 64, "--%s", options[code - LONG_FIRST].name);
    else
        snprintf(out, 64, "-%c", code);
}

/* getopt met something it does not know: says what, and what is near it. */
static void complain_of_option(const char *command, const struct option *options, char **argv)
{
    char name[64];
    struct nearest nearest;
    /* getopt_long leaves the code of a long option that was given a value it does not
     * take. */
    if (optopt >= LONG_FIRST) {
        option_name(name, optopt, options);
        complain("%s: option \"%s\" takes no value", command, name);
        return;
    }
    if (optopt != 0) {
        complain("%s: no option \"-%c\"", command, optopt);
        return;
    }
    char typed[NEAREST_LONGEST + 1];
    snprintf(typed, sizeof(typed), "%s", argv[optind - 1] + 2);
    typed[strcspn(typed, "=")] = '\0';
    nearest_start(&nearest, typed);
    for (const struct option *option = options; option->name != NULL; option++)
        nearest_offer(&nearest, option->name);
    if (nearest.name == NULL)
        complain("%s: no option \"--%s\"", command, typed);
    else
        complain("%s: no option \"--%s\" (did you mean \"--%s\"?)", command, typed, nearest.name);
}

/* getopt's two descriptions of the options. The leading '-' hands over other
 * words in their place, whatever POSIXLY_CORRECT says; the ':' leaves the
 * messages to us. */
static void describe(const struct command *command, struct option options[OPTIONS_MOST + 2],
                     char letters[2 * OPTIONS_MOST + 4])
{
    char *letter = letters;
    const size_t count = command->option_count;
    *letter++ = '-', *letter++ = ':', *letter++ = 'h';
    for (size_t i = 0; i < count; i++) {
        const struct option_line *line = &command->options[i];
        /* No option has a value that may be left out: it could not be told from a word. */
        const int takes = line->takes != NULL ? required_argument : no_argument;
        options[i] = (struct option){line->name, takes, NULL, LONG_FIRST + (int)i};
        if (line->letter != 0)
            *letter++ = line->letter;
        if (line->letter != 0 && takes == required_argument)
            *letter++ = ':';
    }
    *letter = '\0';
    options[count] = (struct option){"help", no_argument, NULL, LONG_FIRST + (int)count};
    options[count + 1] = (struct option){NULL, 0, NULL, 0};
}

/* NULL for --help, and for what getopt itself reports. */
static const struct option_line *line_of(const struct command *command, int code)
{
    for (size_t i = 0; i < command->option_count; i++) {
        const struct option_line *line = &command->options[i];
        if (code == LONG_FIRST + (int)i || (line->letter != 0 && code == line->letter))
            return line;
    }
    return NULL;
}

/* Puts the option's value where it belongs; false when it is no choice there is. */
static bool store_option(const struct command *command, const struct option_line *line, void *into)
{
    size_t count;
    const char *const *choices = arguments_choices(line->kind, &count);
    void *const place = (char *)into + line->at;
    if (choices != NULL && settings_choice(command->name, line->name, optarg, choices, count) < 0)
        return false;
    if (line->takes == NULL) {
        *(bool *)place = true;
    } else if (!line->repeats) {
        *(const char **)place = optarg;
    } else {
        struct several *several = place;
        if (several->count == SEVERAL_MOST) {
            complain("%s: --%s more than %d times", command->name, line->name, SEVERAL_MOST);
            return false;
        }
        several->items[several->count++] = optarg;
    }
    return true;
}

/* Takes a word that is not an option; false when it is one too many. */
static bool take_word(const struct command *command, struct several *words, const char *given)
{
    if (words->count < command->words_most && words->count < SEVERAL_MOST) {
        words->items[words->count++] = given;
        return true;
    }
    if (command->words_most == 1)
        complain("%s: one thing at a time: \"%s\" or \"%s\"", command->name, words->items[0],
                 given);
    else
        complain("%s: too many words: \"%s\"", command->name, given);
    complain("see: eavemark help %s", command->name);
    return false;
}

/* Asked for, so to standard output and with status 0. */
static int print_help(const struct command *command)
{
    struct text help = TEXT_EMPTY;
    help_of_command(command, &help);
    const int status = output_print(EAVEMARK_NOTHING_FAILED, true,
                                    help.failed ? NULL : text_string(&help));
    text_free(&help);
    return status;
}

/* One thing getopt found; COMMAND_GOES_ON or the exit status. */
static int take_option(const struct command *command, int code, const struct option *options,
                       void *into, struct several *words, char **argv)
{
    char name[64];
    const struct option_line *line = line_of(command, code);
    if (code == 'h' || code == LONG_FIRST + (int)command->option_count)
        return print_help(command);
    if (line != NULL)
        return store_option(command, line, into) ? COMMAND_GOES_ON : EAVEMARK_UNUSABLE;
    /* A word that is no option, handed over in its place. */
    if (code == 1)
        return take_word(command, words, optarg) ? COMMAND_GOES_ON : EAVEMARK_UNUSABLE;
    if (code == ':') {
        option_name(name, optopt, options);
        complain("%s: option \"%s\" needs a value", command->name, name);
    } else {
        complain_of_option(command->name, options, argv);
    }
    complain("see: eavemark help %s", command->name);
    return EAVEMARK_UNUSABLE;
}

int arguments_read(const struct command *command, void *into, struct several *words, int argc,
                   char **argv)
{
    struct option options[OPTIONS_MOST + 2];
    char letters[2 * OPTIONS_MOST + 4];
    describe(command, options, letters);
    for (int code; (code = getopt_long(argc, argv, letters, options, NULL)) != -1;) {
        const int status = take_option(command, code, options, into, words, argv);
        if (status != COMMAND_GOES_ON)
            return status;
    }
    for (; optind < argc; optind++) /* after "--" */
        if (!take_word(command, words, argv[optind]))
            return EAVEMARK_UNUSABLE;
    return COMMAND_GOES_ON;
}
