#include "packing/leave_out.h"

#include <stddef.h>
#include <string.h>

static const char FIELD_WORD[] = "field \"";

/* Past the quote that ends the text after this one; NULL without one. */
static char *text_end(char *at)
{
    for (at++; *at != '"'; at++) {
        if (*at == '\\' && at[1] != '\0')
            at++;
        else if (*at == '\0' || *at == '\n')
            return NULL;
    }
    return at + 1;
}

/* Brackets that open what may hold anything; quotes of the other kind. */
static int is_hard(const char *at)
{
    return (at[0] == '[' && (at[1] == '[' || at[1] == '=')) || at[0] == '\'';
}

/* Past the braces of the declaration that begins here; NULL where it is not as plain as that. */
static char *declaration_end(char *at)
{
    int depth = 0;
    for (at += strlen(FIELD_WORD) - 1; at != NULL && *at != '\0';) {
        if (*at == '"') {
            at = text_end(at);
        } else if (at[0] == '-' && at[1] == '-') {
            if (is_hard(at + 2))
                return NULL;
            at += strcspn(at, "\n");
        } else if (is_hard(at)) {
            return NULL;
        } else {
            depth += (*at == '{') - (*at == '}');
            if (*at == '}' && depth == 0)
                return at + 1;
            at++;
        }
    }
    return NULL;
}

void leave_out_fields(char *text)
{
    for (char *line = text; line != NULL; line = strchr(line, '\n')) {
        line += *line == '\n';
        if (strncmp(line, FIELD_WORD, strlen(FIELD_WORD)) != 0)
            continue;
        char *end = declaration_end(line);
        for (; end != NULL && line < end; line++)
            if (*line != '\n')
                *line = ' ';
    }
}
