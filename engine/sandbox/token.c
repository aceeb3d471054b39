#include "sandbox/token.h"

#include <ctype.h>
#include <string.h>

static bool is_word(char c)
{
    return isalnum((unsigned char)c) || c == '_';
}

struct tokens tokens_of(const char *text, size_t length)
{
    return (struct tokens){text, text + length, 1, true};
}

/* The level of the long bracket that begins here, "[[" or "[=[": 0, 1 ...; else -1. */
static int long_level(const struct tokens *tokens)
{
    const char *at = tokens->at + 1;
    while (at < tokens->end && *at == '=')
        at++;
    return at < tokens->end && *at == '[' ? (int)(at - tokens->at) - 1 : -1;
}

static void step(struct tokens *tokens)
{
    if (*tokens->at == '\n') {
        tokens->line++;
        tokens->fresh = true;
    }
    tokens->at++;
}

/* Past "]=]" of that level, or to the end of the file; false there. */
static bool skip_long(struct tokens *tokens, int level)
{
    for (; tokens->at < tokens->end; step(tokens)) {
        const char *at = tokens->at + 1;
        if (*tokens->at != ']' || tokens->end - at <= level)
            continue;
        while (at < tokens->end && *at == '=')
            at++;
        if (at < tokens->end && *at == ']' && at - tokens->at - 1 == level) {
            tokens->at = at + 1;
            return true;
        }
    }
    return false;
}

static bool begins(const struct tokens *tokens, const char *word)
{
    const size_t length = strlen(word);
    return (size_t)(tokens->end - tokens->at) >= length && memcmp(tokens->at, word, length) == 0;
}

static void skip_comment(struct tokens *tokens)
{
    tokens->at += 2;
    const int level = tokens->at < tokens->end && *tokens->at == '[' ? long_level(tokens) : -1;
    if (level >= 0) {
        tokens->at += level + 2;
        skip_long(tokens, level);
        return;
    }
    while (tokens->at < tokens->end && *tokens->at != '\n')
        tokens->at++;
}

static void skip_blank(struct tokens *tokens)
{
    while (tokens->at < tokens->end) {
        if (isspace((unsigned char)*tokens->at))
            step(tokens);
        else if (begins(tokens, "--"))
            skip_comment(tokens);
        else
            return;
    }
}

/* False when the line ends first. */
static bool skip_text(struct tokens *tokens)
{
    const char quote = *tokens->at++;
    while (tokens->at < tokens->end && *tokens->at != quote && *tokens->at != '\n') {
        if (*tokens->at == '\\' && tokens->at + 1 < tokens->end)
            tokens->at++; /* and what it stands before */
        step(tokens);
    }
    if (tokens->at == tokens->end || *tokens->at != quote)
        return false;
    tokens->at++;
    return true;
}

/* As Lua does: letters that follow belong to it, and make it none. */
static void skip_number(struct tokens *tokens)
{
    while (tokens->at < tokens->end && (is_word(*tokens->at) || *tokens->at == '.')) {
        if (begins(tokens, ".."))
            return;
        tokens->at++;
    }
}

static void skip_sign(struct tokens *tokens)
{
    static const char *const LONG[] = {"...", "..", "==", "~=", "<=", ">=", "//", "::", "<<", ">>"};
    for (size_t i = 0; i < sizeof(LONG) / sizeof(LONG[0]); i++) {
        if (begins(tokens, LONG[i])) {
            tokens->at += strlen(LONG[i]);
            return;
        }
    }
    /* A character of several bytes is one. */
    do
        tokens->at++;
    while (tokens->at < tokens->end && (*tokens->at & 0xC0) == 0x80);
}

/* As Lua reads: a file that Lua takes is read the same here. What it would refuse is still
 * cut into pieces, for slips are looked for among them. */
struct token token_next(struct tokens *tokens)
{
    skip_blank(tokens);
    struct token token = {TOKEN_END, tokens->at, 0, tokens->line, false, tokens->fresh};
    if (tokens->at == tokens->end)
        return token;
    tokens->fresh = false;
    const char c = *tokens->at;
    const int level = c == '[' ? long_level(tokens) : -1;
    if (isdigit((unsigned char)c)
        || (c == '.' && tokens->end - tokens->at > 1 && isdigit((unsigned char)tokens->at[1]))) {
        token.kind = TOKEN_NUMBER;
        skip_number(tokens);
    } else if (is_word(c)) {
        token.kind = TOKEN_NAME;
        while (tokens->at < tokens->end && is_word(*tokens->at))
            tokens->at++;
    } else if (level >= 0) {
        token.kind = TOKEN_TEXT;
        tokens->at += level + 2;
        token.torn = !skip_long(tokens, level);
    } else if (c == '"' || c == '\'') {
        token.kind = TOKEN_TEXT;
        token.torn = !skip_text(tokens);
    } else {
        token.kind = TOKEN_SIGN;
        skip_sign(tokens);
    }
    token.length = (size_t)(tokens->at - token.at);
    return token;
}

bool token_is(const struct token *token, const char *word)
{
    return (token->kind == TOKEN_SIGN || token->kind == TOKEN_NAME) && strlen(word) == token->length
           && memcmp(token->at, word, token->length) == 0;
}
