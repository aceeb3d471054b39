/* completion_fish.c - completions for fish: a line for each option and word of a command. */
#include "command/completion_scripts.h"

/* Within '...'; a newline of a help is a blank. */
static void add_quoted(struct text *out, const char *words)
{
    text_add(out, "'");
    for (; *words != '\0'; words++)
        if (*words == '\'' || *words == '\\')
            text_addf(out, "\\%c", *words);
        else
            text_add_n(out, *words == '\n' ? " " : words, 1);
    text_add(out, "'");
}

/* The arguments that offer what is of that kind. */
static void add_offers(struct text *out, enum kind kind)
{
    size_t count;
    const char *const *choices = arguments_choices(kind, &count);
    if (choices != NULL) {
        text_add(out, " -a '");
        for (size_t i = 0; i < count; i++)
            text_addf(out, "%s%s", i > 0 ? " " : "", choices[i]);
        text_add(out, "'");
    } else if (completion_lists(kind) != NULL)
        text_addf(out, " -a '(_eavemark_names %s)'", completion_lists(kind));
    else if (kind == KIND_FILE)
        text_add(out, " -F");
    else if (kind == KIND_FOLDER)
        text_add(out, " -a '(__fish_complete_directories)'");
    else if (kind == KIND_LIST)
        text_addf(out, " -a '%s'", completion_wanted);
}

/* fish asks each line whether it holds now: hence the conditions. */
static void add_command(struct text *out, const struct command *command)
{
    const char *name = command->name;
    text_addf(out, "\ncomplete -c eavemark -n _eavemark_begins -a %s -d ", name);
    add_quoted(out, command->summary);
    text_addf(out, "\ncomplete -c eavemark -n '_eavemark_is %s' -l help -d 'print the help'\n",
              name);
    for (size_t i = 0; i < command->option_count; i++) {
        const struct option_line *line = &command->options[i];
        text_addf(out, "complete -c eavemark -n '_eavemark_is %s' -l %s", name, line->name);
        if (line->letter != 0)
            text_addf(out, " -s %c", line->letter);
        if (line->takes != NULL) {
            /* -x takes no file names, which fish would offer besides; -r does. */
            text_add(out, line->kind == KIND_FILE ? " -r" : " -x");
            add_offers(out, line->kind);
        }
        text_add(out, " -d ");
        add_quoted(out, line->help);
        text_add(out, "\n");
    }
    for (size_t i = 0; i < command->words_most && i < 2; i++) {
        /* The same offer twice would show every name twice. */
        if (i == 1 && command->words[1] == command->words[0])
            continue;
        text_addf(out, "complete -c eavemark -n '_eavemark_is %s'", name);
        add_offers(out, command->words[i]);
        text_add(out, "\n");
    }
}

void completion_fish(struct text *out)
{
    size_t count;
    const struct command *const *commands = commands_all(&count);
    text_add(out,
             "# Completion of eavemark for fish: a file eavemark.fish among its completions.\n\n"
             "function _eavemark_begins\n"
             "    test (count (commandline -opc)) -eq 1\n"
             "end\n\n"
             "function _eavemark_is\n"
             "    set -l words (commandline -opc)\n"
             "    test (count $words) -gt 1; and test \"$words[2]\" = $argv[1]\n"
             "end\n\n"
             "# Names of each list, of the --home on the line.\n"
             "function _eavemark_names\n"
             "    set -l words (commandline -opc)\n"
             "    set -l home\n"
             "    if set -l at (contains -i -- --home $words)\n"
             "        set home --home $words[(math $at + 1)]\n"
             "    end\n"
             "    for list in $argv\n"
             "        $words[1] completion $list $home 2>/dev/null\n"
             "    end\n"
             "end\n\n"
             "complete -c eavemark -f\n"
             "complete -c eavemark -n _eavemark_begins -a help -d 'say more about a command'\n"
             "complete -c eavemark -n _eavemark_begins -l version -s V -d 'print the version'\n"
             "complete -c eavemark -n '_eavemark_is help' -a '");
    for (size_t i = 0; i < count; i++)
        text_addf(out, "%s%s", i > 0 ? " " : "", commands[i]->name);
    text_add(out, "'\n");
    for (size_t i = 0; i < count; i++)
        add_command(out, commands[i]);
}
