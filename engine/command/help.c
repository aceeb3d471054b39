/* help.c - the help of a command, from its table. */
#include "command/command.h"

#include "base/text.h"

#include <string.h>

enum { LEAD_MOST = 80 };

/* "  -o, --output FILE" */
static void write_lead(const struct option_line *line, char out[LEAD_MOST])
{
    char letter[8] = "";
    if (line->letter != 0)
        snprintf(letter, sizeof(letter), "-%c, ", line->letter);
    snprintf(out, LEAD_MOST, "  %s--%s%s%s", letter, line->name, line->takes == NULL ? "" : " ",
             line->takes == NULL ? "" : line->takes);
}

/* So that the helps stand in one column. */
static size_t widest_lead(const struct command *command)
{
    size_t widest = 0;
    for (size_t i = 0; i < command->option_count; i++) {
        char lead[LEAD_MOST];
        write_lead(&command->options[i], lead);
        widest = strlen(lead) > widest ? strlen(lead) : widest;
    }
    return widest;
}

/* Lines of the help after the first stand under it. */
static void add_option(struct text *out, const struct option_line *line, size_t width)
{
    char lead[LEAD_MOST];
    write_lead(line, lead);
    text_addf(out, "%-*s  ", (int)width, lead);
    /* Written with newlines in the tables, so that the lines break where the sense does. */
    for (const char *at = line->help; *at != '\0';) {
        const size_t length = strcspn(at, "\n");
        text_add_n(out, at, length);
        at += length;
        if (*at == '\n')
            text_addf(out, "\n%*s", (int)width + 2, ""), at++;
    }
    text_add(out, "\n");
}

/* The same tables make the manual and the completions: a new option shows in all of them. */
void help_of_command(const struct command *command, struct text *out)
{
    const size_t width = widest_lead(command);
    text_addf(out, "usage: eavemark %s%s%s\n\n%s\n", command->name,
              command->usage[0] == '\0' ? "" : " ", command->usage, command->about);
    for (size_t i = 0; i < command->option_count; i++) {
        text_add(out, i == 0 ? "\n" : "");
        add_option(out, &command->options[i], width);
    }
    if (command->status != NULL)
        text_addf(out, "\nexit status: %s\n", command->status);
    text_addf(out, "\nexample: eavemark %s\n", command->example);
}
