/* completion.c - a completion script for bash, from the tables that help is
 * made of, and the names it offers. */
#include "command/completion_scripts.h"

#include "base/text.h"
#include "include/eavemark.h"

#include <stdlib.h>

struct completion {
    const char *home;
};

/* What the command prints; the names after the first come from the library. */
static const char *const LISTS[] = {"bash",    "zsh",    "fish",          "rules",
                                    "figures", "topics", "jurisdictions", "parts"};
static const enum eavemark_names NAMES[] = {
    EAVEMARK_RULES, EAVEMARK_FIGURES, EAVEMARK_TOPICS, EAVEMARK_JURISDICTIONS, EAVEMARK_PARTS,
};

/* The lists after the scripts, in the order of NAMES. */
enum { LIST_COUNT = sizeof(LISTS) / sizeof(LISTS[0]), SHELL_COUNT = 3 };

const char completion_wanted[] = "bash zsh fish rules figures topics jurisdictions parts";

const char *completion_lists(enum kind kind)
{
    static const char *const OF_KIND[] = {[KIND_JURISDICTION] = "jurisdictions",
                                          [KIND_TOPIC] = "topics jurisdictions",
                                          [KIND_PART] = "parts",
                                          [KIND_RULE] = "rules figures"};
    return kind < sizeof(OF_KIND) / sizeof(OF_KIND[0]) ? OF_KIND[kind] : NULL;
}

/* What stands for the kind in the script. */
static const char *kind_word(enum kind kind)
{
    switch (kind) {
    case KIND_FILE:
        return "file";
    case KIND_FOLDER:
        return "folder";
    case KIND_STAGE:
        return "stage";
    case KIND_FORM:
        return "form";
    case KIND_REPORT_FORM:
        return "report_form";
    case KIND_CARD_FORM:
        return "card_form";
    case KIND_LIST_FORM:
        return "list_form";
    case KIND_JURISDICTION:
        return "jurisdictions";
    case KIND_TOPIC:
        return "topics";
    case KIND_PART:
        return "parts";
    case KIND_RULE:
        return "rules";
    case KIND_COMMAND:
        return "command";
    case KIND_LIST:
        return "list";
    case KIND_NONE:
    case KIND_OTHER:
        break;
    }
    return "none";
}

/* With blanks between, as compgen takes them. */
static void add_words(struct text *out, const char *const *words, size_t count)
{
    for (size_t i = 0; i < count; i++)
        text_addf(out, "%s%s", i > 0 ? " " : "", words[i]);
}

/* "help" is no command of the table. */
static void add_commands(struct text *out)
{
    size_t count;
    const struct command *const *commands = commands_all(&count);
    for (size_t i = 0; i < count; i++)
        text_addf(out, "%s ", commands[i]->name);
    text_add(out, "help");
}

/* The options of each command, and what its words are. */
static void add_options(struct text *out)
{
    size_t count;
    const struct command *const *commands = commands_all(&count);
    for (size_t i = 0; i < count; i++) {
        text_addf(out, "        %s)\n            options='--help", commands[i]->name);
        for (size_t j = 0; j < commands[i]->option_count; j++) {
            const struct option_line *line = &commands[i]->options[j];
            text_addf(out, " --%s", line->name);
            if (line->letter != 0)
                text_addf(out, " -%c", line->letter);
        }
        text_addf(out, "' words='%s %s' most=%zu ;;\n", kind_word(commands[i]->words[0]),
                  kind_word(commands[i]->words[1]), commands[i]->words_most);
    }
}

/* What the value of each option is. */
static void add_values(struct text *out)
{
    size_t count;
    const struct command *const *commands = commands_all(&count);
    for (size_t i = 0; i < count; i++) {
        for (size_t j = 0; j < commands[i]->option_count; j++) {
            const struct option_line *line = &commands[i]->options[j];
            if (line->takes == NULL)
                continue;
            text_addf(out, "        %s--%s", commands[i]->name, line->name);
            if (line->letter != 0)
                text_addf(out, "|%s-%c", commands[i]->name, line->letter);
            text_addf(out, ") echo %s ;;\n", kind_word(line->kind));
        }
    }
}

/* The choices of a kind, as a case of _eavemark_offer. */
static void add_choices(struct text *out, enum kind kind)
{
    size_t count;
    const char *const *choices = arguments_choices(kind, &count);
    text_addf(out, "        %s) _eavemark_words '", kind_word(kind));
    add_words(out, choices, count);
    text_add(out, "' \"$2\" ;;\n");
}

/* bash asks _eavemark for each Tab: it finds the command, the options given so far and
 * what the word at the cursor is, and offers that. Names of rules and places are asked of
 * the program itself, of the --home on the line. */
static void add_script(struct text *out)
{
    text_add(out,
             "# Completion of eavemark for bash. Load it with:  . <(eavemark completion bash)\n\n"
             "_eavemark_words() {\n"
             "    mapfile -t COMPREPLY < <(compgen -W \"$1\" -- \"$2\")\n"
             "}\n\n"
             "# What the value of option $2 of command $1 is; nothing for a flag.\n"
             "_eavemark_value() {\n"
             "    case $1$2 in\n");
    add_values(out);
    text_add(
        out,
        "    esac\n"
        "}\n\n"
        "# Offers words of kind $1 that begin with $2; $3 is the program, $4 the home.\n"
        "_eavemark_offer() {\n"
        "    case $1 in\n"
        "        file) compopt -o filenames; mapfile -t COMPREPLY < <(compgen -f -- \"$2\") ;;\n"
        "        folder) compopt -o filenames\n"
        "            mapfile -t COMPREPLY < <(compgen -d -- \"$2\") ;;\n");
    add_choices(out, KIND_STAGE);
    add_choices(out, KIND_FORM);
    add_choices(out, KIND_REPORT_FORM);
    add_choices(out, KIND_CARD_FORM);
    add_choices(out, KIND_LIST_FORM);
    text_add(out, "        command) _eavemark_words '");
    add_commands(out);
    text_add(out, "' \"$2\" ;;\n        list) _eavemark_words '");
    add_words(out, LISTS, LIST_COUNT);
    text_add(
        out,
        "' \"$2\" ;;\n"
        "        rules)\n"
        "            _eavemark_words \"$(\"$3\" completion rules ${4:+--home \"$4\"} 2>/dev/null\n"
        "                \"$3\" completion figures ${4:+--home \"$4\"} 2>/dev/null)\" \"$2\" ;;\n"
        "        topics)\n"
        "            _eavemark_words \"$(\"$3\" completion topics ${4:+--home \"$4\"} 2>/dev/null\n"
        "                \"$3\" completion jurisdictions ${4:+--home \"$4\"} 2>/dev/null)\" "
        "\"$2\" ;;\n"
        "        jurisdictions|parts)\n"
        "            _eavemark_words \"$(\"$3\" completion \"$1\" ${4:+--home \"$4\"} "
        "2>/dev/null)\" \"$2\" ;;\n"
        "    esac\n"
        "}\n\n"
        "_eavemark() {\n"
        "    local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]}\n"
        "    local command=${COMP_WORDS[1]} options='' words='' most=0\n"
        "    local home='' kind='' option='' given=0 i\n"
        "    COMPREPLY=()\n"
        "    # bash takes --form=json for three words.\n"
        "    if [ \"$word\" = = ]; then\n"
        "        word=''\n"
        "    elif [ \"$before\" = = ]; then\n"
        "        before=${COMP_WORDS[COMP_CWORD-2]}\n"
        "    fi\n"
        "    if [ \"$COMP_CWORD\" -eq 1 ]; then\n"
        "        _eavemark_words '");
    add_commands(out);
    text_add(out, " --help --version' \"$word\"\n"
                  "        return\n"
                  "    fi\n"
                  "    case $command in\n"
                  "        help) words='command none' most=1 ;;\n");
    add_options(out);
    text_add(out, "        *) return ;;\n"
                  "    esac\n"
                  "    for ((i = 2; i < COMP_CWORD; i++)); do\n"
                  "        case ${COMP_WORDS[i]} in\n"
                  "            =) ;;\n"
                  "            -*)\n"
                  "                kind=$(_eavemark_value \"$command\" \"${COMP_WORDS[i]}\")\n"
                  "                [ -n \"$kind\" ] || continue\n"
                  "                option=${COMP_WORDS[i]}\n"
                  "                [ \"${COMP_WORDS[i+1]}\" != = ] || ((i++))\n"
                  "                ((i++))\n"
                  "                [ \"$option\" != --home ] || home=${COMP_WORDS[i]} ;;\n"
                  "            *) ((given++)) ;;\n"
                  "        esac\n"
                  "    done\n"
                  "    home=${home/#~\\//$HOME/}\n"
                  "    kind=$(_eavemark_value \"$command\" \"$before\")\n"
                  "    if [ -n \"$kind\" ]; then\n"
                  "        _eavemark_offer \"$kind\" \"$word\" \"${COMP_WORDS[0]}\" \"$home\"\n"
                  "    elif [[ $word == -* ]]; then\n"
                  "        _eavemark_words \"$options\" \"$word\"\n"
                  "    elif [ $given -lt \"$most\" ]; then\n"
                  "        kind=${words#* }\n"
                  "        [ $given -gt 0 ] || kind=${words% *}\n"
                  "        _eavemark_offer \"$kind\" \"$word\" \"${COMP_WORDS[0]}\" \"$home\"\n"
                  "    fi\n"
                  "}\n\n"
                  "complete -F _eavemark eavemark\n");
}

/* In the order of LISTS. */
static int print_script(int shell)
{
    static void (*const SCRIPTS[SHELL_COUNT])(struct text *) = {add_script, completion_zsh,
                                                                completion_fish};
    struct text script = TEXT_EMPTY;
    SCRIPTS[shell](&script);
    const int status = output_print(EAVEMARK_NOTHING_FAILED, true,
                                    script.failed ? NULL : text_string(&script));
    text_free(&script);
    return status;
}

/* A line each; bash splits them. */
static int print_names(enum eavemark_names names, const char *home)
{
    char *text = NULL;
    eavemark *handle = eavemark_open(settings_home(home));
    int status = EAVEMARK_BROKEN;
    if (handle != NULL)
        status = (int)eavemark_list(handle, names, &text);
    status = output_print(status, status == EAVEMARK_NOTHING_FAILED, text);
    free(text);
    eavemark_close(handle);
    return status;
}

/* Scripts are made of the tables alone; names need a home. */
static int run_completion(int argc, char **argv)
{
    struct completion completion = {0};
    struct several words = {.count = 0};
    const int status = arguments_read(&command_completion, &completion, &words, argc, argv);
    if (status != COMMAND_GOES_ON)
        return status;
    if (words.count == 0)
        return complain_of_usage(&command_completion, "of what? Name a shell: bash, zsh or fish");
    const int list = settings_choice("completion", "list", words.items[0], LISTS, LIST_COUNT);
    if (list < 0)
        return EAVEMARK_UNUSABLE;
    return list < SHELL_COUNT ? print_script(list)
                              : print_names(NAMES[list - SHELL_COUNT], completion.home);
}

static const struct option_line OPTIONS[] = {
    {"home", 0, "DIR", "the folder with rules/ and jurisdictions/", KIND_FOLDER,
     offsetof(struct completion, home), false},
};

const struct command command_completion = {
    .name = "completion",
    .summary = "print what lets a shell complete commands and names",
    .usage = "[--home DIR] bash | zsh | fish | LIST",
    .about = "Prints a script that lets the shell complete commands, options, stages, forms,\n"
             "and the names of places, rules and topics. LIST prints the names of one kind, a\n"
             "line each: rules, figures, topics, jurisdictions, or parts (of a job).",
    .options = OPTIONS,
    .option_count = sizeof(OPTIONS) / sizeof(OPTIONS[0]),
    .words = {KIND_LIST, KIND_NONE},
    .words_most = 1,
    .status = "0 printed; 2 no such list; 3 a rule or profile is broken",
    .example = "completion bash >eavemark.bash; . ./eavemark.bash",
    .run = run_completion,
};
