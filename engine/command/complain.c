#include "command/command.h"

#include "base/text.h"
#include "base/utf8.h"
#include "include/eavemark.h"

#include <stdarg.h>

/* The arguments may quote what a user typed or a file holds. */
void complain(const char *format, ...)
{
    char message[4096];
    va_list args;
    va_start(args, format);
    vsnprintf(message, sizeof(message), format, args);
    va_end(args);
    struct text safe = TEXT_EMPTY;
    utf8_add_printable(&safe, message);
    fprintf(stderr, "eavemark: %s\n", safe.failed ? "out of memory" : text_string(&safe));
    text_free(&safe);
}

/* One line for what is wrong, one for where to read on. */
int complain_of_usage(const struct command *command, const char *message)
{
    complain("%s: %s", command->name, message);
    complain("see: eavemark help %s", command->name);
    return EAVEMARK_UNUSABLE;
}
