/* manual.c - the manual page, from the tables that help is made of. */
#include "command/command.h"

#include "base/text.h"
#include "include/eavemark.h"

/* Adds text so that roff prints it as it is: its own characters escaped, and no
 * line mistaken for a request. */
static void add_plain(struct text *out, const char *words)
{
    for (bool start = true; *words != '\0'; words++) {
        if (start && (*words == '.' || *words == '\''))
            text_add(out, "\\&");
        if (*words == '\\')
            text_add(out, "\\e");
        else if (*words == '-')
            text_add(out, "\\-");
        else
            text_add_n(out, words, 1);
        start = *words == '\n';
    }
}

/* The page is filled by roff, so a blank line would be a paragraph of its own
 * kind; .PP says so. */
static void add_paragraph(struct text *out, const char *words)
{
    text_add(out, ".PP\n");
    add_plain(out, words);
    text_add(out, "\n");
}

/* roff's own hyphens would break words: a dash that is typed is written \-. */
static void add_option(struct text *out, const struct option_line *line)
{
    text_add(out, ".TP\n");
    if (line->letter != 0)
        text_addf(out, "\\fB\\-%c\\fR, ", line->letter);
    text_add(out, "\\fB\\-\\-");
    add_plain(out, line->name);
    text_add(out, "\\fR");
    if (line->takes != NULL) {
        text_add(out, " \\fI");
        add_plain(out, line->takes);
        text_add(out, "\\fR");
    }
    text_add(out, "\n");
    add_plain(out, line->help);
    text_add(out, "\n");
}

/* A section each, as `help` has it. */
static void add_command(struct text *out, const struct command *command)
{
    text_addf(out, ".SS \"eavemark %s%s", command->name, command->usage[0] == '\0' ? "" : " ");
    add_plain(out, command->usage);
    text_add(out, "\"\n");
    add_plain(out, command->about);
    text_add(out, "\n");
    for (size_t i = 0; i < command->option_count; i++)
        add_option(out, &command->options[i]);
    if (command->status != NULL) {
        text_add(out, ".PP\nExit status: ");
        add_plain(out, command->status);
        text_add(out, "\n");
    }
    text_add(out, ".PP\nExample:\n.PP\n.RS\n.nf\neavemark ");
    add_plain(out, command->example);
    text_add(out, "\n.fi\n.RE\n");
}

/* No date: the page is the same for every build of one version. */
static void add_heading(struct text *out)
{
    text_add(out, ".TH EAVEMARK 1 \"\" \"eavemark " EAVEMARK_VERSION "\" \"User Commands\"\n"
                  ".SH NAME\neavemark \\- pre\\-check a reroof against the building code\n"
                  ".SH SYNOPSIS\n.B eavemark\n.I command\n[\\fIoptions\\fR] ...\n"
                  ".SH DESCRIPTION\n");
    add_plain(out, "Pre-checks a residential reroof against the building code of its place and "
                   "date.\nIt decides nothing: the local building department does.");
    text_add(out, "\n.SH COMMANDS\n");
}

/* What holds for all commands. */
static void add_rest(struct text *out)
{
    text_add(out, ".SH ENVIRONMENT\n.TP\n.B EAVEMARK_HOME\n");
    add_plain(out,
              "The folder with rules/ and jurisdictions/, unless --home names one. Without either\n"
              "they are those installed with the program, or else those built into it\n"
              "(\":inside:\").");
    text_add(out, "\n.TP\n.B NO_COLOR\n");
    add_plain(out, "When set to anything, reports on a terminal are not coloured.");
    text_add(out, "\n.SH \"EXIT STATUS\"\n");
    add_plain(out, "0 nothing failed; 1 something did; 2 the job or the arguments cannot be used;\n"
                   "3 a rule or profile is broken.");
    text_add(out, "\n.SH CAVEATS\n");
    add_plain(out, "This is a pre-check, not a permit or an inspection. Codes are amended locally\n"
                   "and figures may be out of date: confirm every item with the local building\n"
                   "department before relying on it.");
    add_paragraph(out, "Places marked as invented are no real counties and not the law anywhere.");
}

static int run_manual(int argc, char **argv)
{
    struct several words = {.count = 0};
    struct text page = TEXT_EMPTY;
    size_t count;
    int status = arguments_read(&command_manual, NULL, &words, argc, argv);
    if (status != COMMAND_GOES_ON)
        return status;
    const struct command *const *commands = commands_all(&count);
    add_heading(&page);
    for (size_t i = 0; i < count; i++)
        add_command(&page, commands[i]);
    add_rest(&page);
    status = output_print(EAVEMARK_NOTHING_FAILED, true, page.failed ? NULL : text_string(&page));
    text_free(&page);
    return status;
}

const struct command command_manual = {
    .name = "manual",
    .summary = "print the manual page",
    .usage = "",
    .about = "Prints the manual page, for man(1) to show.",
    .example = "manual >eavemark.1; man ./eavemark.1",
    .run = run_manual,
};
