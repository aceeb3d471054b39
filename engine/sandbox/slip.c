#include "sandbox/slip.h"

#include "sandbox/token.h"

#include <ctype.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <strings.h>

/* Tables within tables; deeper ones are not looked into. */
enum { DEEPEST = 64, SHOWN = 40 };

/* One look through a file. */
struct look {
    struct tokens tokens;
    struct token open[DEEPEST]; /* brackets, and the words that an `end` closes */
    size_t depth;
    struct token before, token; /* the one looked at, and the one before it */
    const char *unknown;        /* the name that Lua met and does not know; or NULL */
    bool near;                  /* and it is near one that it does */
    int line;
    char *words;
};

/* Says what was found and returns true from the function that it stands in. */
#define FOUND(at, ...)                                  \
    do {                                                \
        look->line = (at).line;                         \
        snprintf(look->words, SLIP_WORDS, __VA_ARGS__); \
        return true;                                    \
    } while (0)

static int shown(const struct token *token)
{
    return token->length < SHOWN ? (int)token->length : SHOWN;
}

/* Tokens are read from a copy of the place: nothing is read twice for good. */
static struct token peek(const struct look *look)
{
    struct tokens ahead = look->tokens;
    return token_next(&ahead);
}

static bool in_table(const struct look *look)
{
    return look->depth > 0 && look->depth <= DEEPEST && token_is(&look->open[look->depth - 1], "{");
}

/* Where a table's next entry may begin. */
static bool starts_entry(const struct look *look)
{
    return in_table(look)
           && (token_is(&look->before, "{") || token_is(&look->before, ",")
               || token_is(&look->before, ";"));
}

static bool is_value(const struct token *token)
{
    return token->kind == TOKEN_TEXT || token->kind == TOKEN_NUMBER || token->kind == TOKEN_NAME
           || token_is(token, "}") || token_is(token, ")");
}

/* "cite =" or "["cite"] =" here, and not "==". */
static bool is_key(const struct look *look)
{
    struct tokens ahead = look->tokens;
    struct token next = token_next(&ahead);
    if (look->token.kind == TOKEN_NAME)
        return token_is(&next, "=");
    if (!token_is(&look->token, "[") || next.kind != TOKEN_TEXT)
        return false;
    next = token_next(&ahead);
    const struct token sign = token_next(&ahead);
    return token_is(&next, "]") && token_is(&sign, "=");
}

static bool is_missing_comma(struct look *look)
{
    static const char *const NEVER_END[] = {"and", "or", "not", "function", "return", "local"};
    for (size_t i = 0; i < sizeof(NEVER_END) / sizeof(NEVER_END[0]); i++)
        if (token_is(&look->before, NEVER_END[i]))
            return false;
    if (!in_table(look) || !is_value(&look->before))
        return false;
    /* A name before a text may be a call, f "x"; so may a bracket. */
    const bool two_values = look->before.kind != TOKEN_NAME && !token_is(&look->before, ")")
                            && (look->token.kind == TOKEN_TEXT || look->token.kind == TOKEN_NUMBER);
    if (!is_key(look) && !two_values)
        return false;
    const struct token next = peek(look);
    const struct token *last = token_is(&look->token, "[") ? &next : &look->token;
    const int length = (int)(last->at + last->length - look->token.at);
    FOUND(look->before, "a comma is missing %sline %d, before %.*s%s",
          look->token.first ? "at the end of " : "in ", look->before.line,
          length < SHOWN ? length : SHOWN, look->token.at, token_is(&look->token, "[") ? "]" : "");
}

static bool is_curly_quote(struct look *look)
{
    const struct token *token = &look->token;
    if (token->kind != TOKEN_SIGN || token->length != 3 || memcmp(token->at, "\xE2\x80", 2) != 0
        || (unsigned char)token->at[2] < 0x98 || (unsigned char)token->at[2] > 0x9F)
        return false;
    FOUND(*token, "a curly quote (a word processor's): write the straight one, \"");
}

static bool is_torn_text(struct look *look)
{
    if (look->token.kind != TOKEN_TEXT || !look->token.torn)
        return false;
    FOUND(look->token, "a text begins with %c and its closing %c is missing on this line",
          look->token.at[0], look->token.at[0]);
}

/* layers.most = { ... }, "layers.most" = { ... }, [layers.most] = { ... }, title: "..." */
static bool is_bare_name(struct look *look)
{
    const bool bracket = token_is(&look->token, "[") && look->unknown != NULL;
    /* Only where Lua stumbled over the name does a bracket count: [x] with a known x is right. */
    struct tokens ahead = look->tokens;
    struct token from = look->token, next = token_next(&ahead);
    size_t parts = 1;
    if (!starts_entry(look) || (!bracket && from.kind != TOKEN_NAME && from.kind != TOKEN_TEXT))
        return false;
    if (bracket) {
        from = next;
        next = token_next(&ahead);
        if (from.kind != TOKEN_NAME)
            return false;
    }
    while (from.kind == TOKEN_NAME && (token_is(&next, ".") || token_is(&next, "-"))) {
        token_next(&ahead);
        next = token_next(&ahead);
        parts++;
    }
    const char quote = from.kind == TOKEN_TEXT ? '\0' : '"';
    const int length = (int)(next.at - from.at);
    if (token_is(&next, ":") && parts == 1)
        FOUND(from, "%.*s is followed by a colon: write = between a name and its value",
              shown(&from), from.at);
    if (!token_is(&next, bracket ? "]" : "=") || (from.kind == TOKEN_NAME && parts == 1))
        return false;
    int end = length < SHOWN ? length : SHOWN;
    while (end > 0 && isspace((unsigned char)from.at[end - 1]))
        end--;
    FOUND(from, "write [%.*s%.*s%.*s] = ...: such a name stands in quotes and brackets",
          quote != '\0', &quote, end, from.at, quote != '\0', &quote);
}

/* 15.02.010, 3ft, 25 %, 4:12, 1 1/2: no numbers of Lua's. */
static bool is_spoken_figure(struct look *look)
{
    const struct token next = peek(look);
    char copy[SHOWN + 1], *end;
    if (look->token.kind != TOKEN_NUMBER || !in_table(look))
        return false;
    snprintf(copy, sizeof(copy), "%.*s", shown(&look->token), look->token.at);
    strtod(copy, &end);
    if (*end != '\0')
        FOUND(look->token, "%s is no number; write it in quotes: \"%s\"", copy, copy);
    /* A name on the next line is the next entry, and the comma is what is missing. */
    const bool unit = next.kind == TOKEN_NAME && !next.first && !token_is(&next, "and")
                      && !token_is(&next, "or");
    if (!unit && !token_is(&next, ":") && !token_is(&next, "%")
        && !(next.kind == TOKEN_NUMBER && !next.first))
        return false;
    struct tokens ahead = look->tokens;
    struct token last = token_next(&ahead), after = token_next(&ahead);
    /* A remainder, not a percentage, where a number follows. */
    if (token_is(&last, "%") && (after.kind == TOKEN_NUMBER || after.kind == TOKEN_NAME))
        return false;
    while (after.kind != TOKEN_END && !after.first && !token_is(&after, ",")
           && !token_is(&after, "}")) {
        last = after;
        after = token_next(&ahead);
    }
    const int length = (int)(last.at + last.length - look->token.at);
    FOUND(look->token, "a figure that is no plain number stands in quotes: \"%.*s\"",
          length < SHOWN ? length : SHOWN, look->token.at);
}

/* Is it the name that Lua does not know, where it is read? */
static bool is_the_unknown(const struct look *look)
{
    return look->unknown != NULL && look->token.kind == TOKEN_NAME
           && strncmp(look->unknown, look->token.at, look->token.length) == 0
           && look->unknown[look->token.length] == '\'' && !is_key(look)
           && !token_is(&look->before, ".");
}

/* True, Yes, off: the words that people mean by true and false. */
static bool is_truth_word(struct look *look)
{
    static const struct {
        const char *word, *means;
    } WORDS[] = {{"true", "true"},   {"yes", "true"}, {"on", "true"},   {"y", "true"},
                 {"false", "false"}, {"no", "false"}, {"off", "false"}, {"n", "false"},
                 {"none", "nil"},    {"null", "nil"}};
    const struct token *token = &look->token;
    char copy[8];
    if (!is_the_unknown(look) || token->length >= sizeof(copy))
        return false;
    snprintf(copy, sizeof(copy), "%.*s", (int)token->length, token->at);
    for (size_t i = 0; i < sizeof(WORDS) / sizeof(WORDS[0]); i++) {
        if (strcasecmp(copy, WORDS[i].word) != 0 || strcmp(copy, WORDS[i].means) == 0)
            continue;
        if (strcmp(WORDS[i].means, "nil") == 0)
            FOUND(*token, "%s is no word here: leave the entry out", copy);
        FOUND(*token, "write %s, not %s", WORDS[i].means, copy);
    }
    return false;
}

/* { D226_II } for { "D226_II" }. */
static bool is_bare_text(struct look *look)
{
    const bool value = token_is(&look->before, "=") || starts_entry(look);
    if (!is_the_unknown(look) || !in_table(look) || !value || look->near)
        return false;
    FOUND(look->token, "unknown name '%.*s'; if a text is meant, write it in quotes: \"%.*s\"",
          shown(&look->token), look->token.at, shown(&look->token), look->token.at);
}

static bool is_other_comment(struct look *look)
{
    if (!look->token.first || (!token_is(&look->token, "//") && !token_is(&look->token, "#")))
        return false;
    FOUND(look->token, "a comment begins with --, not with %.*s", shown(&look->token),
          look->token.at);
}

static bool closes(const struct token *open, const struct token *close)
{
    return token_is(open, "{")   ? token_is(close, "}")
           : token_is(open, "(") ? token_is(close, ")")
           : token_is(open, "[") ? token_is(close, "]")
                                 : token_is(close, "end") || token_is(close, "until");
}

static bool is_one_of(const struct token *token, const char *const *words)
{
    while (*words != NULL && !token_is(token, *words))
        words++;
    return *words != NULL;
}

/* Keeps the brackets; true where two do not match. */
static bool pair(struct look *look)
{
    static const char *const OPENS[] = {"{", "(", "[", "function", "do", "if", "repeat", NULL};
    static const char *const CLOSES[] = {"}", ")", "]", "end", "until", NULL};
    const struct token *token = &look->token;
    if (is_one_of(token, OPENS)) {
        if (look->depth < DEEPEST)
            look->open[look->depth] = *token;
        look->depth++;
    }
    if (!is_one_of(token, CLOSES))
        return false;
    if (look->depth == 0)
        FOUND(*token, "%.*s closes nothing: one too many, or what opens it is missing",
              shown(token), token->at);
    look->depth--;
    if (look->depth >= DEEPEST || closes(&look->open[look->depth], token))
        return false;
    const struct token *open = &look->open[look->depth];
    FOUND(*token, "%.*s stands where the %.*s of line %d is to be closed", shown(token), token->at,
          shown(open), open->at, open->line);
}

/* What the file as a whole leaves open. */
static bool is_left_open(struct look *look)
{
    if (look->depth == 0 || look->depth > DEEPEST)
        return false;
    const struct token *open = &look->open[look->depth - 1];
    FOUND(*open, "the %.*s of line %d is never closed", shown(open), open->at, open->line);
}

bool slip_find(const char *text, size_t length, const char *lua_says, int *line,
               char words[SLIP_WORDS])
{
    static const char UNKNOWN[] = "unknown name '";
    const char *unknown = strstr(lua_says, UNKNOWN);
    struct look all = {.tokens = tokens_of(text, length),
                       .unknown = unknown == NULL ? NULL : unknown + strlen(UNKNOWN),
                       .near = strstr(lua_says, "did you mean") != NULL,
                       .words = words};
    struct look *look = &all;
    bool found = false;
    /* The file's own complaint, or a limit: it is Lua. */
    if (unknown == NULL && strstr(lua_says, " near ") == NULL)
        return false;
    /* The first slip in the file is told, though Lua stopped further on: what it names is often
     * only where it gave up. */
    while (!found) {
        look->before = look->token;
        look->token = token_next(&look->tokens);
        if (look->token.kind == TOKEN_END)
            break;
        found = is_torn_text(look) || is_curly_quote(look) || is_spoken_figure(look)
                || is_missing_comma(look) || is_bare_name(look) || is_truth_word(look)
                || is_bare_text(look) || is_other_comment(look) || pair(look);
    }
    if (!found && look->unknown == NULL)
        found = is_left_open(look);
    *line = look->line;
    return found;
}
