/* sitting_ask.c - questions asked and answers read, see sitting_parts.h. */
#include "command/sitting_parts.h"

#include "command/command.h"

#include "include/eavemark.h"

#include <stdlib.h>
#include <string.h>
#include <strings.h>

/* Reads a line without its end into line. False at the end of the answers; a
 * line that is too long or holds a zero byte reads as one no answer can be. */
static bool read_line(char line[SITTING_LINE_MOST])
{
    size_t length = 0;
    int letter = getchar();
    if (letter == EOF)
        return false;
    for (; letter != EOF && letter != '\n'; letter = getchar()) {
        if (letter == '\0')
            letter = '\x01';
        if (length < SITTING_LINE_MOST - 1)
            line[length++] = (char)letter;
    }
    while (length > 0 && strchr(" \t\r", line[length - 1]) != NULL)
        length--;
    line[length] = '\0';
    return true;
}

/* Owns the words. */
static void say_refused(char *why)
{
    fprintf(stderr, "    not taken: %s\n", why == NULL ? "out of memory" : why);
    free(why);
}

/* What is printed before an answer is read: the question, why it is asked, or
 * nothing once more. */
enum ask { ASK, ASK_HELP, ASK_AGAIN };

/* False when there is no question; *problems then says whether that is well. */
static bool print_question(const struct sitting *sitting, enum ask ask, char **problems)
{
    char *words = eavemark_interview_ask(sitting->interview, ask == ASK_HELP, problems);
    if (words == NULL)
        return false;
    fputs(ask == ASK_AGAIN ? "" : words, stderr);
    const size_t left = eavemark_interview_left(sitting->interview);
    if (left > 0)
        fprintf(stderr, "%zu left> ", left);
    else
        fputs("> ", stderr);
    fflush(stderr);
    free(words);
    free(*problems);
    *problems = NULL;
    return true;
}

/* Front and back are good names for planes: then the word alone is not enough. */
static bool is_either(const struct sitting *sitting, const char *line)
{
    const bool back = strcmp(line, "back") == 0;
    if ((!back && strcmp(line, "stop") != 0) || !eavemark_interview_wants_name(sitting->interview))
        return false;
    fprintf(stderr, "    not taken: for the name write \"%s\" in quotes, to %s write %s\n", line,
            back ? "go back" : "stop", back ? "<" : ".");
    return true;
}

/* An answer like any other: it leaves the fact open. */
static bool is_not_known(const struct sitting *sitting, const char *line)
{
    static const char *const WORDS[] = {"don't know", "dont know", "do not know", "not known",
                                        "unknown"};
    for (size_t i = 0; i < sizeof(WORDS) / sizeof(WORDS[0]); i++)
        if (strcasecmp(line, WORDS[i]) == 0)
            return !eavemark_interview_wants_name(sitting->interview);
    return line[0] == '\0';
}

/* What the user typed; says what to print next. */
static enum ask take_answer(struct sitting *sitting, const char *line)
{
    char *why = NULL;
    bool taken = true;
    if (strcmp(line, "?") == 0)
        return ASK_HELP;
    if (is_either(sitting, line))
        return ASK_AGAIN;
    if (strcmp(line, "stop") == 0 || strcmp(line, ".") == 0)
        sitting->ended = true;
    else if (strcmp(line, "back") != 0 && strcmp(line, "<") != 0)
        taken = is_not_known(sitting, line)
                    ? eavemark_interview_skip(sitting->interview, &why)
                    : eavemark_interview_answer(sitting->interview, line, &why);
    else if (!eavemark_interview_back(sitting->interview))
        fputs("    there is nothing to go back to\n", stderr);
    if (!taken) {
        say_refused(why);
        return ASK_AGAIN;
    }
    free(why);
    if (line[0] != '\0' && !sitting->ended)
        sitting_keep(sitting);
    return ASK;
}

int sitting_ask(struct sitting *sitting)
{
    char line[SITTING_LINE_MOST];
    char *problems = NULL;
    enum ask ask = ASK;
    while (!sitting->ended && print_question(sitting, ask, &problems)) {
        if (!read_line(line)) {
            sitting->ended = true;
            fputs("\n", stderr);
            break;
        }
        ask = take_answer(sitting, line);
    }
    /* Stopped by the user: what there is gets written. */
    if (sitting->ended)
        return EAVEMARK_NOTHING_FAILED;
    const bool well = problems != NULL && problems[0] == '\0';
    if (!well)
        fputs(problems == NULL ? "eavemark: out of memory\n" : problems, stderr);
    free(problems);
    return well ? EAVEMARK_NOTHING_FAILED : EAVEMARK_BROKEN;
}
