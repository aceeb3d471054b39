#include "command/line.h"

#include <stdbool.h>
#include <string.h>

static bool is_blank(const struct text *line)
{
    return strspn(text_string(line), " \t\r") == line->length;
}

enum line_kind line_read(FILE *input, struct text *line)
{
    bool too_long = false;
    char piece[4096];
    size_t length = 0;
    int c;
    if (line->bytes != NULL)
        line->bytes[0] = '\0';
    line->length = 0;
    flockfile(input);
    do {
        c = getc_unlocked(input);
        const bool ends = c == EOF || c == '\n';
        if (!ends)
            piece[length++] = (char)c;
        if (!ends && length < sizeof(piece))
            continue;
        too_long = too_long || line->length + length > LINE_LARGEST;
        if (!too_long)
            text_add_n(line, piece, length);
        length = 0;
    } while (c != EOF && c != '\n');
    funlockfile(input);
    if (too_long)
        return LINE_TOO_LONG;
    /* A last line without an end still counts. */
    if (c == EOF && line->length == 0 && !line->failed)
        return LINE_END;
    if (line->length > 0 && line->bytes[line->length - 1] == '\r')
        line->bytes[--line->length] = '\0';
    return is_blank(line) ? LINE_BLANK : LINE_READ;
}
