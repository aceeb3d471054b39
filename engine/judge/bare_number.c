#include "judge/bare_number.h"

#include <ctype.h>
#include <stdio.h>
#include <string.h>

/* A longer first argument is not looked through: files may be made to take long. */
enum { ARGUMENT_LONGEST = 4000 };

static bool is_name(char letter)
{
    return isalnum((unsigned char)letter) || letter == '_';
}

/* "[[", "[==[": how long the opening is, or 0. */
static size_t long_bracket(const char *at)
{
    const size_t level = at[0] == '[' ? strspn(at + 1, "=") : 0;
    return at[0] == '[' && at[level + 1] == '[' ? level + 2 : 0;
}

/* Past a text or comment in long brackets; at its opening. */
static const char *past_long(const char *at, size_t opening)
{
    char end[64];
    if (opening >= sizeof(end))
        return at + strlen(at);
    memset(end, '=', opening);
    end[0] = end[opening - 1] = ']';
    end[opening] = '\0';
    const char *found = strstr(at + opening, end);
    return found == NULL ? at + strlen(at) : found + opening;
}

/* At its quote. A quoted text ends with its line at the latest; Lua itself will refuse
 * such a file. */
static const char *past_quoted(const char *at)
{
    const char quote = *at++;
    while (*at != '\0' && *at != quote && *at != '\n')
        /* A backslash takes the next letter with it, be it the quote. */
        at += at[0] == '\\' && at[1] != '\0' ? 2 : 1;
    return *at == '\0' ? at : at + 1;
}

/* At its two dashes. */
static const char *past_comment(const char *at)
{
    const size_t opening = long_bracket(at + 2);
    return opening > 0 ? past_long(at + 2, opening) : at + strcspn(at, "\n");
}

/* Past a text or a comment that begins here; where none does, the same place. */
static const char *past_words(const char *at)
{
    if (at[0] == '-' && at[1] == '-')
        return past_comment(at);
    if (at[0] == '"' || at[0] == '\'')
        return past_quoted(at);
    const size_t opening = long_bracket(at);
    return opening > 0 ? past_long(at, opening) : at;
}

static const char *past_blank(const char *at)
{
    for (;;) {
        at += strspn(at, " \t\r\n");
        if (at[0] != '-' || at[1] != '-')
            return at;
        at = past_comment(at);
    }
}

/* Behind the comma after the first argument; NULL where there is but one. */
static const char *second_argument(const char *at)
{
    const char *start = at;
    for (int depth = 0; *at != '\0' && at - start < ARGUMENT_LONGEST;) {
        const char *after = past_words(at);
        if (after != at) {
            at = after;
            continue;
        }
        if (*at == ',' && depth == 0)
            return at + 1;
        if (strchr("([{", *at) != NULL)
            depth++;
        else if (strchr(")]}", *at) != NULL && depth-- == 0)
            return NULL;
        at++;
    }
    return NULL;
}

/* A number with nothing to reckon about it. */
static bool is_number_alone(const char *at, char number[24])
{
    at = past_blank(at);
    size_t length = at[0] == '-' ? 1 : 0;
    if (!isdigit((unsigned char)at[length]) && at[length] != '.')
        return false;
    while (is_name(at[length]) || at[length] == '.')
        length++;
    snprintf(number, 24, "%.*s", (int)(length < 20 ? length : 20), at);
    at = past_blank(at + length);
    return *at == ',' || *at == ')';
}

/* Of the comparisons those that hold a number against a limit. */
static bool is_comparison(const char *name, size_t length)
{
    static const char *const VERBS[] = {"at_least",      "at_most",      "equals",
                                        "each_at_least", "each_at_most", "spacings_at_most"};
    for (size_t i = 0; i < sizeof(VERBS) / sizeof(VERBS[0]); i++)
        if (strlen(VERBS[i]) == length && memcmp(VERBS[i], name, length) == 0)
            return true;
    return false;
}

bool bare_number_find(const char *text, struct bare_number *out)
{
    *out = (struct bare_number){.line = 1};
    /* Lines are counted only up to what is found. */
    const char *counted = text;
    for (const char *at = text; *at != '\0';) {
        const char *after = past_words(at);
        if (after != at) {
            at = after;
            continue;
        }
        size_t length = 0;
        while (is_name(at[length]))
            length++;
        const char *open = past_blank(at + length);
        const char *second = length > 0 && *open == '(' && is_comparison(at, length)
                                 ? second_argument(open + 1)
                                 : NULL;
        if (second != NULL && is_number_alone(second, out->number)) {
            snprintf(out->verb, sizeof(out->verb), "%.*s", (int)length, at);
            for (; counted < at; counted++)
                out->line += *counted == '\n';
            return true;
        }
        /* By whole names: "meets_at_least(" is no comparison. */
        at += length > 0 ? length : 1;
    }
    return false;
}
