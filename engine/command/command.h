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

/* What a word on the command line is: what a shell may complete it to. */
enum kind {
    KIND_NONE,
    KIND_OTHER, /* nothing to be offered */
    KIND_FILE,
    KIND_FOLDER,
    KIND_STAGE,
    KIND_FORM,
    KIND_REPORT_FORM, /* with pages */
    KIND_CARD_FORM,   /* for paper only */
    KIND_LIST_FORM,   /* of an order */
    KIND_JURISDICTION,
    KIND_TOPIC, /* of rules, or a place: what is proved */
    KIND_PART,  /* of a job */
    KIND_RULE,  /* or a figure */
    KIND_COMMAND,
    KIND_LIST, /* what `completion` prints */
};

/* An option as help, manual and completion show it, and where its value goes:
 * `at` bytes into the command's own struct, which holds a bool for a flag, a
 * const char * for a value, a struct several for one that may be repeated. */
struct option_line {
    const char *name;  /* long name, without the dashes */
    char letter;       /* short name, or 0 */
    const char *takes; /* what its value is called, or NULL: a flag */
    const char *help;  /* may go on after a newline */
    enum kind kind;    /* of the value */
    size_t at;
    bool repeats;
};

enum { OPTIONS_MOST = 12, SEVERAL_MOST = 64 };

struct several {
    const char *items[SEVERAL_MOST];
    size_t count;
};

struct command {
    const char *name;
    const char *summary;               /* one line for `eavemark --help` */
    const char *usage;                 /* what follows the name: "[options] JOB" */
    const char *about;                 /* paragraphs, each line at most 80 columns */
    const struct option_line *options; /* at most OPTIONS_MOST */
    size_t option_count;
    enum kind words[2]; /* the first word that is no option, and further ones */
    size_t words_most;
    const char *status;                /* what exit statuses mean, in lines; or NULL */
    const char *example;               /* arguments: "check job.json" */
    int (*run)(int argc, char **argv); /* argv[0] is the command's name */
};

/* All commands, in the order help shows them (main.c). */
const struct command *const *commands_all(size_t *count);

struct text;

/* What `eavemark help NAME` prints: a screen at most. */
void help_of_command(const struct command *command, struct text *out);

extern const struct command command_card, command_check, command_compare, command_completion,
    command_county, command_explain, command_fields, command_figures, command_manual, command_new,
    command_page, command_places, command_proof, command_shop, command_takeoff, command_trial,
    command_watch;

/* Reads the arguments into the command's own struct and the words that are no
 * options, in any order. Choices of stage and form are checked. --help is
 * known to every command. Returns COMMAND_GOES_ON, or the exit status when the
 * help was printed or a usage error complained of. */
enum { COMMAND_GOES_ON = -1 };
int arguments_read(const struct command *command, void *into, struct several *words, int argc,
                   char **argv);

/* Complains, points to the command's help, and returns the exit status. */
int complain_of_usage(const struct command *command, const char *message);

/* True if both paths lead to the same regular file. */
bool arguments_same_file(const char *a, const char *b);

/* The choices of a kind (stages, forms), or NULL. */
const char *const *arguments_choices(enum kind kind, size_t *count);

/* Finds wanted among count choices; when it is not there, complains with the
 * nearest and the list, and returns -1. what: "stage". */
int settings_choice(const char *command, const char *what, const char *wanted,
                    const char *const *choices, size_t count);

/* Prints "eavemark: " and the message to standard error, a line, harmless to
 * a terminal whatever the arguments hold. */
void complain(const char *format, ...) __attribute__((format(printf, 1, 2)));

/* The home folder: the option if given, then EAVEMARK_HOME, then the
 * data folder installed with the program, then the tree in whose build folder it lies, then
 * the home inside. */
const char *settings_home(const char *option);

/* The page that was built with the program: in its own folder, or installed. NULL: none. */
const char *settings_page(void);

/* Where a report goes: standard output, or a file that appears under its name
 * only when it is complete. */
struct output {
    FILE *stream;
    const char *path; /* as the user named it; NULL: standard output */
    char *target;     /* what to rename to, or NULL: nothing to rename */
    char *temporary;
    int why; /* errno of a write that failed, or 0 */
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

/* What a call of the library answered: prints its problems (NULL: out of memory) to
 * standard error and its report, if there is one, as output_text does. Frees both.
 * Returns the exit status: the one given, unless the report could not be written. */
int output_answer(int status, const char *path, char *report, char *problems);

/* Prints what a call of the library gave: to standard output when it is what
 * was wanted, else, being a message, to standard error. NULL stands for out of
 * memory. Returns the exit status: the one given, unless printing failed. */
int output_print(int status, bool wanted, const char *text);

#endif
