#include "command/command.h"

#include "base/nearest.h"
#include "base/text.h"
#include "base/utf8.h"

#include <getopt.h>
#include <stdarg.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

enum { LONG_FIRST = 256 }; /* getopt codes of long options: past every letter */

void complain(const char *format, ...)
{
    char message[4096];
    va_list args;
    va_start(args, format);
    vsnprintf(message, sizeof(message), format, args);
    va_end(args);
    struct text safe = TEXT_EMPTY;
    utf8_add_printable(&safe, message);
    fprintf(stderr, "eavemark: %s\n", safe.failed ? "out of memory" : text_string(&safe));
    text_free(&safe);
}

static bool holds_rules(const char *folder)
{
    struct text path = TEXT_EMPTY;
    struct stat about;
    text_addf(&path, "%s/rules", folder);
    const bool holds = !path.failed && stat(text_string(&path), &about) == 0
        && S_ISDIR(about.st_mode);
    text_free(&path);
    return holds;
}

const char *home_folder(const char *option)
{
    const char *environment = getenv("EAVEMARK_HOME");
    if (option != NULL)
        return option;
    if (environment != NULL && environment[0] != '\0')
        return environment;
    return holds_rules(EAVEMARK_DATA_DIR) ? EAVEMARK_DATA_DIR : EAVEMARK_SOURCE_DIR;
}

int settings_choice(const char *command, const char *what, const char *wanted,
                    const char *const *choices, size_t count)
{
    struct nearest nearest;
    struct text list = TEXT_EMPTY;
    nearest_start(&nearest, wanted);
    for (size_t i = 0; i < count; i++) {
        if (strcmp(choices[i], wanted) == 0) {
            text_free(&list);
            return (int)i;
        }
        nearest_offer(&nearest, choices[i]);
        text_addf(&list, "%s%s", i > 0 ? ", " : "", choices[i]);
    }
    if (nearest.name != NULL)
        complain("%s: no %s \"%s\" (did you mean \"%s\"?); there are: %s", command, what, wanted,
                 nearest.name, text_string(&list));
    else
        complain("%s: no %s \"%s\"; there are: %s", command, what, wanted, text_string(&list));
    text_free(&list);
    return -1;
}

static enum settings_result refuse(const char *command)
{
    complain("see: eavemark help %s", command);
    return SETTINGS_BAD;
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

/* getopt's two descriptions of the settings. The leading '-' hands over other
 * words in their place, whatever POSIXLY_CORRECT says; the ':' leaves the
 * messages to us. */
static void describe(const struct setting *settings, size_t count,
                     struct option options[SETTINGS_MOST + 2], char letters[2 * SETTINGS_MOST + 4])
{
    char *letter = letters;
    *letter++ = '-', *letter++ = ':', *letter++ = 'h';
    for (size_t i = 0; i < count; i++) {
        const int takes = settings[i].value != NULL ? required_argument : no_argument;
        options[i] = (struct option){settings[i].name, takes, NULL, LONG_FIRST + (int)i};
        if (settings[i].letter != 0)
            *letter++ = settings[i].letter;
        if (settings[i].letter != 0 && takes == required_argument)
            *letter++ = ':';
    }
    *letter = '\0';
    options[count] = (struct option){"help", no_argument, NULL, LONG_FIRST + (int)count};
    options[count + 1] = (struct option){NULL, 0, NULL, 0};
}

static void keep(const struct setting *setting)
{
    if (setting->value != NULL)
        *setting->value = optarg;
    else
        *setting->flag = true;
}

static const struct setting *setting_of(const struct setting *settings, size_t count, int code)
{
    for (size_t i = 0; i < count; i++)
        if (code == LONG_FIRST + (int)i || (settings[i].letter != 0 && code == settings[i].letter))
            return &settings[i];
    return NULL;
}

/* Takes the one word that is not an option; false when there already is one. */
static bool take_word(const char **word, const char *given, const char *command)
{
    if (*word == NULL) {
        *word = given;
        return true;
    }
    complain("%s: one thing at a time: \"%s\" or \"%s\"", command, *word, given);
    return false;
}

enum settings_result settings_read(const struct setting *settings, size_t count,
                                   const char **word, int argc, char **argv)
{
    struct option options[SETTINGS_MOST + 2];
    char letters[2 * SETTINGS_MOST + 4], name[64];
    describe(settings, count, options, letters);
    for (int code; (code = getopt_long(argc, argv, letters, options, NULL)) != -1;) {
        const struct setting *setting = setting_of(settings, count, code);
        if (code == 'h' || code == LONG_FIRST + (int)count)
            return SETTINGS_HELP;
        if (setting != NULL) {
            keep(setting);
        } else if (code == 1) {
            if (!take_word(word, optarg, argv[0]))
                return refuse(argv[0]);
        } else if (code == ':') {
            option_name(name, optopt, options);
            complain("%s: option \"%s\" needs a value", argv[0], name);
            return refuse(argv[0]);
        } else {
            complain_of_option(argv[0], options, argv);
            return refuse(argv[0]);
        }
    }
    for (; optind < argc; optind++) /* after "--" */
        if (!take_word(word, argv[optind], argv[0]))
            return refuse(argv[0]);
    return SETTINGS_READ;
}
