#include "profile/place_traps.h"

#include "sandbox/token.h"

#include <stdlib.h>
#include <string.h>

/* Tables within tables, deeper than any place's; and problems of one file. */
enum { DEEPEST = 64, SAID_MOST = 20, NO_TABLE = -1 };

/* A name before "=" in a table. */
/* Offsets into the file, nothing is copied: a file may name thousands. */
struct named {
    int table; /* counted from the first of the file */
    const char *at;
    size_t length;
    int line;
};

struct looking {
    const struct source *source;
    struct tokens tokens;
    struct token last[3]; /* those before, the nearest first */
    int open[DEEPEST];    /* the tables around; NO_TABLE for a function's inside */
    size_t depth;
    int tables;
    struct named *names;
    size_t name_count, name_room;
    struct problems *problems;
    int said;
};

static bool is_one_of(const struct token *token, const char *const *words)
{
    while (*words != NULL && !token_is(token, *words))
        words++;
    return *words != NULL;
}

/* INSIDE: a loop's own word, while or for, comes before a do; counting both would count it
 * twice. elseif and else open nothing. */
/* False where the file is nested too deep to be looked through. */
static bool keep_tables(struct looking *look, const struct token *token)
{
    static const char *const INSIDE[] = {"function", "do", "if", "repeat", NULL};
    static const char *const ENDS[] = {"end", "until", "}", NULL};
    const bool table = token_is(token, "{");
    if (table || is_one_of(token, INSIDE)) {
        if (look->depth == DEEPEST)
            return false;
        look->open[look->depth++] = table ? look->tables++ : NO_TABLE;
    } else if (is_one_of(token, ENDS) && look->depth > 0) {
        look->depth--;
    }
    return true;
}

static bool make_room(struct looking *look)
{
    const size_t room = look->name_room == 0 ? 256 : 2 * look->name_room;
    struct named *names = realloc(look->names, room * sizeof(*names));
    if (names == NULL) {
        problem_out_of_memory(look->problems);
        return false;
    }
    look->names = names;
    look->name_room = room;
    return true;
}

/* cite = ... or ["layers.most"] = ..., looked at when "=" is reached. */
static void take_name(struct looking *look, const struct token *token)
{
    const struct token *last = look->last;
    const int table = look->depth == 0 ? NO_TABLE : look->open[look->depth - 1];
    const bool quoted = token_is(&last[0], "]") && last[1].kind == TOKEN_TEXT
                        && token_is(&last[2], "[") && last[1].length >= 2;
    const struct token *name = quoted ? &last[1] : &last[0];
    if (!token_is(token, "=") || table == NO_TABLE || (!quoted && name->kind != TOKEN_NAME))
        return;
    if (look->name_count < look->name_room || make_room(look))
        look->names[look->name_count++] = (struct named){
            table, name->at + quoted, name->length - (quoted ? 2u : 0u), name->line};
}

static bool is_sum(const struct token *left, const struct token *sign, const struct token *right)
{
    static const char *const SIGNS[] = {"+", "-", "*", "/", "//", "%", "^", NULL};
    return left->kind == TOKEN_NUMBER && right->kind == TOKEN_NUMBER && is_one_of(sign, SIGNS);
}

/* The whole of it, as far as it goes on in the same way. */
static void say_sum(struct looking *look, const struct token *right)
{
    const struct token *left = &look->last[1];
    /* "1 + 1/2" is one slip, not two: the message shows the sum as it was written. */
    struct token end = *right;
    for (;;) {
        struct tokens ahead = look->tokens;
        const struct token sign = token_next(&ahead), next = token_next(&ahead);
        if (!is_sum(&end, &sign, &next))
            break;
        look->tokens = ahead;
        end = next;
    }
    const int length = (int)(end.at + end.length - left->at);
    if (look->said++ < SAID_MOST)
        problem_at_line(look->problems, PROBLEM_RULES, look->source->path, left->line, 0,
                        "%.*s would be reckoned, not read; write it in quotes with its unit, "
                        "\"%.*s in\", or as one number",
                        length, left->at, length, left->at);
}

static void look_through(struct looking *look)
{
    for (;;) {
        const struct token token = token_next(&look->tokens);
        if (token.kind == TOKEN_END || !keep_tables(look, &token))
            return;
        take_name(look, &token);
        if (is_sum(&look->last[1], &look->last[0], &token))
            say_sum(look, &token);
        look->last[2] = look->last[1];
        look->last[1] = look->last[0];
        look->last[0] = token;
    }
}

/* Those of one name in one table come to stand side by side, the earlier first. */
static int by_table_and_name(const void *a, const void *b)
{
    const struct named *left = a, *right = b;
    const size_t shorter = left->length < right->length ? left->length : right->length;
    if (left->table != right->table)
        return left->table < right->table ? -1 : 1;
    const int order = memcmp(left->at, right->at, shorter);
    if (order != 0)
        return order;
    if (left->length != right->length)
        return left->length < right->length ? -1 : 1;
    return left->at < right->at ? -1 : 1;
}

static void say_doubles(struct looking *look)
{
    qsort(look->names, look->name_count, sizeof(struct named), by_table_and_name);
    for (size_t i = 1; i < look->name_count; i++) {
        const struct named *before = &look->names[i - 1], *name = &look->names[i];
        if (before->table != name->table || before->length != name->length
            || memcmp(before->at, name->at, name->length) != 0 || look->said++ >= SAID_MOST)
            continue;
        problem_at_line(look->problems, PROBLEM_RULES, look->source->path, name->line, 0,
                        "\"%.*s\" is given twice in one table, on line %d already; of two the "
                        "last would count in silence: leave one out",
                        (int)(name->length < 80 ? name->length : 80), name->at, before->line);
    }
}

void place_traps(const struct source *source, struct problems *problems)
{
    struct looking look = {
        .source = source, .tokens = tokens_of(source->text, source->length), .problems = problems};
    /* Only the text tells: Lua keeps the last of two values and has 1/2 reckoned before anybody
     * could look. */
    look_through(&look);
    if (look.name_count > 1)
        say_doubles(&look);
    free(look.names);
}
