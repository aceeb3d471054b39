/* record_work.c - the arithmetic behind a finding, a line each. */
#include "judge/judging.h"

#include <stdarg.h>
#include <stdio.h>

void record_work_line(struct judging *judging, const char *format, ...)
{
    char line[1024];
    va_list args;
    va_start(args, format);
    vsnprintf(line, sizeof(line), format, args);
    va_end(args);
    strings_add(&judging->record.work, judging->arena, arena_copy(judging->arena, line));
}
