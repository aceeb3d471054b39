/* token.h - the words of a Lua file, one after another, without running it: for what is to be
 * said of a file that does not load, or that Lua would load in another sense than was meant.
 */
#ifndef EAVEMARK_SANDBOX_TOKEN_H
#define EAVEMARK_SANDBOX_TOKEN_H

#include <stdbool.h>
#include <stddef.h>

enum token_kind {
    TOKEN_END,
    TOKEN_NAME, /* and Lua's own words */
    TOKEN_NUMBER,
    TOKEN_TEXT, /* with its quotes or brackets */
    TOKEN_SIGN, /* "{", "==", "..", or a character that Lua has no use for */
};

struct token {
    enum token_kind kind;
    const char *at; /* within the file; length bytes */
    size_t length;
    int line;   /* where it begins */
    bool torn;  /* a text whose line ends before it does */
    bool first; /* of its line */
};

/* A place in a file. */
struct tokens {
    const char *at, *end;
    int line;
    bool fresh; /* no token of this line was given yet */
};

struct tokens tokens_of(const char *text, size_t length);

/* The next token; comments and spaces are passed over. TOKEN_END again and again. */
struct token token_next(struct tokens *tokens);

/* Is it this sign, or name? */
bool token_is(const struct token *token, const char *word);

#endif
