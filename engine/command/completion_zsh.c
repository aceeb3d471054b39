/* completion_zsh.c - a completion function for zsh: _arguments with a specification for
 * each option and word of a command. */
#include "command/completion_scripts.h"

/* Within '...' and a specification: "'" ends the one, brackets and colons the other. A
 * newline of a help is a blank. */
static void add_help(struct text *out, const char *help)
{
    for (; *help != '\0'; help++)
        if (*help == '\'')
            text_add(out, "'\\''");
        else if (*help == '[' || *help == ']' || *help == ':')
            text_addf(out, "\\%c", *help);
        else
            text_add_n(out, *help == '\n' ? " " : help, 1);
}

/* What is offered where something of that kind is wanted. */
static void add_action(struct text *out, enum kind kind)
{
    size_t count;
    const char *const *choices = arguments_choices(kind, &count);
    if (choices != NULL) {
        text_add(out, "(");
        for (size_t i = 0; i < count; i++)
            text_addf(out, "%s%s", i > 0 ? " " : "", choices[i]);
        text_add(out, ")");
    } else if (completion_lists(kind) != NULL)
        text_addf(out, "{_eavemark_names %s}", completion_lists(kind));
    else if (kind == KIND_FILE)
        text_add(out, "_files");
    else if (kind == KIND_FOLDER)
        text_add(out, "_files -/");
    else if (kind == KIND_COMMAND)
        text_add(out, "{_describe command _eavemark_commands}");
    else if (kind == KIND_LIST)
        text_addf(out, "(%s)", completion_wanted);
    else
        text_add(out, " ");
}

/* '(-o --output)'{-o+,--output=}'[help]:FILE:_files' */
static void add_option(struct text *out, const struct option_line *line)
{
    text_add(out, " \\\n                ");
    if (line->repeats)
        text_add(out, "'*'");
    else if (line->letter != 0)
        text_addf(out, "'(-%c --%s)'", line->letter, line->name);
    if (line->letter != 0)
        text_addf(out, "{-%c%s,--%s%s}'[", line->letter, line->takes == NULL ? "" : "+", line->name,
                  line->takes == NULL ? "" : "=");
    else
        text_addf(out, "'--%s%s[", line->name, line->takes == NULL ? "" : "=");
    add_help(out, line->help);
    text_add(out, "]");
    if (line->takes != NULL) {
        text_addf(out, ":%s:", line->takes);
        add_action(out, line->kind);
    }
    text_add(out, "'");
}

/* One call of _arguments, which knows what was given so far. */
static void add_command(struct text *out, const struct command *command)
{
    text_addf(out, "        %s) _arguments -s '--help[print the help]'", command->name);
    for (size_t i = 0; i < command->option_count; i++)
        add_option(out, &command->options[i]);
    for (size_t i = 0; i < command->words_most && i < 2; i++) {
        /* The second word stands for all that follow where there may be more. */
        const enum kind kind = command->words[i];
        text_addf(out, " \\\n                '%s: :",
                  i + 1 < command->words_most && i == 1 ? "*"
                  : i == 0                              ? "1"
                                                        : "2");
        add_action(out, kind);
        text_add(out, "'");
    }
    text_add(out, " ;;\n");
}

void completion_zsh(struct text *out)
{
    size_t count;
    const struct command *const *commands = commands_all(&count);
    text_add(out, "#compdef eavemark\n"
                  "# Completion of eavemark for zsh: a file _eavemark in a folder of $fpath.\n\n"
                  "typeset -ga _eavemark_commands\n_eavemark_commands=(\n");
    for (size_t i = 0; i < count; i++) {
        text_addf(out, "    '%s:", commands[i]->name);
        add_help(out, commands[i]->summary);
        text_add(out, "'\n");
    }
    text_add(out, "    'help:say more about a command'\n)\n\n"
                  "# Names of each list, of the --home on the line.\n"
                  "_eavemark_names() {\n"
                  "    local list home=${opt_args[--home]}\n"
                  "    local -a names\n"
                  "    for list; do\n"
                  "        names+=(${(f)\"$($_eavemark_program completion $list "
                  "${home:+--home} ${home:+\"$home\"} 2>/dev/null)\"})\n"
                  "    done\n"
                  "    compadd -a names\n"
                  "}\n\n"
                  "_eavemark() {\n"
                  "    local _eavemark_program=$words[1] command=$words[2]\n"
                  "    local -A opt_args\n"
                  "    if (( CURRENT == 2 )); then\n"
                  "        _describe command _eavemark_commands\n"
                  "        return\n"
                  "    fi\n"
                  "    shift words\n"
                  "    (( CURRENT-- ))\n"
                  "    case $command in\n"
                  "        help) _arguments '1: :{_describe command _eavemark_commands}' ;;\n");
    for (size_t i = 0; i < count; i++)
        add_command(out, commands[i]);
    text_add(out, "    esac\n"
                  "}\n\n"
                  "# Loaded by the first completion, it completes; sourced, it is registered.\n"
                  "if [ \"$funcstack[1]\" = _eavemark ]; then\n"
                  "    _eavemark \"$@\"\n"
                  "else\n"
                  "    compdef _eavemark eavemark\n"
                  "fi\n");
}
