/* command.h - what every subcommand of the program is made of.
 *
 * Commands use the library only through eavemark.h. Each returns the exit
 * status of the process (enum eavemark_status); usage errors are 2.
 */
#ifndef EAVEMARK_COMMAND_COMMAND_H
#define EAVEMARK_COMMAND_COMMAND_H

#include <stdbool.h>
#include <stddef.h>
#include <stdio.h>

struct command {
    const char *name;
    const char *summary;              /* one line for `eavemark --help` */
    const char *help;                 /* what `eavemark help NAME` prints: a screen at most */
    int (*run)(int argc, char **argv); /* argv[0] is the command's name */
};

extern const struct command command_check, command_fields, command_proof, command_takeoff;

/* One option of a command: a flag, or one that takes a value. */
struct setting {
    const char *name;   /* long name, without the dashes */
    char letter;        /* short name, or 0 */
    const char **value; /* where its value goes, or NULL for a flag */
    bool *flag;         /* set to true, or NULL */
};

enum settings_result { SETTINGS_READ, SETTINGS_HELP, SETTINGS_BAD };

enum { SETTINGS_MOST = 12 };

/* Reads options and at most one other word, in any order; --help is known to
 * every command. On SETTINGS_HELP the help was asked for, on SETTINGS_BAD a
 * message was printed. count is at most SETTINGS_MOST. */
enum settings_result settings_read(const struct setting *settings, size_t count,
                                   const char **word, int argc, char **argv);

/* Finds wanted among count choices; when it is not there, complains with the
 * nearest and the list, and returns -1. what: "stage". */
int settings_choice(const char *command, const char *what, const char *wanted,
                    const char *const *choices, size_t count);

/* Prints "eavemark: " and the message to standard error, a line, harmless to
 * a terminal whatever the arguments hold. */
void complain(const char *format, ...) __attribute__((format(printf, 1, 2)));

/* The home folder: the option if given, then EAVEMARK_HOME, then the
 * installed data folder if there is one, then the source tree. */
const char *home_folder(const char *option);

/* Where a report goes: standard output, or a file that appears under its name
 * only when it is complete. */
struct output {
    FILE *stream;
    const char *path; /* as the user named it; NULL: standard output */
    char *target;     /* what to rename to, or NULL: nothing to rename */
    char *temporary;
};

/* Opens path, or standard output for NULL and "-". Complains and returns -1
 * when it cannot be written. */
int output_open(struct output *output, const char *path);

/* Finishes: with keep, everything was written and the file gets its name;
 * without, the file is dropped. Complains and returns -1 when anything could
 * not be written, at any time since the opening. */
int output_close(struct output *output, bool keep);

/* Opens, writes text, closes; 0 or -1 as above. */
int output_text(const char *path, const char *text);

/* Prints what a call of the library gave: to standard output when it is what
 * was wanted, else, being a message, to standard error. NULL stands for out of
 * memory. Returns the exit status: the one given, unless printing failed. */
int print_text(int status, bool wanted, const char *text);

#endif
