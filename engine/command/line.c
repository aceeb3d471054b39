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
    int c;
    if (line->bytes != NULL)
        line->bytes[0] = '\0';
    line->length = 0;
    while ((c = getc(input)) != EOF && c != '\n') {
        const char byte = (char)c;
        if (line->length == LINE_LARGEST)
            too_long = true;
        else if (!too_long)
            text_add_n(line, &byte, 1);
    }
    if (too_long)
        return LINE_TOO_LONG;
    /* A last line without an end still counts. */
    if (c == EOF && line->length == 0 && !line->failed)
        return LINE_END;
    if (line->length > 0 && line->bytes[line->length - 1] == '\r')
        line->bytes[--line->length] = '\0';
    return is_blank(line) ? LINE_BLANK : LINE_READ;
}
