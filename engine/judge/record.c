/* record.c - what is recorded while a rule judges: the facts read, and the arithmetic
 * behind a finding, a line each. */
#include "judge/judging.h"

#include <stdarg.h>
#include <stdio.h>
#include <string.h>

/* Once, however often it is read. */
void record_read(struct judging *judging, const struct node *node)
{
    judging->record.said |= node->json != NULL;
    strings_add_once(&judging->record.reads, judging->arena, node->pointer);
}

/* The first one asked for that is absent is kept: where nothing else was read, that is
 * the fact to ask for. */
void record_known(struct judging *judging, const struct node *node)
{
    record_read(judging, node);
    if (node->json != NULL || judging->record.unsaid != NULL)
        return;
    judging->record.unsaid = node->field;
    judging->record.unsaid_pointer = node->pointer;
}

void record_work_line(struct judging *judging, const char *format, ...)
{
    char line[1024];
    va_list args;
    va_start(args, format);
    vsnprintf(line, sizeof(line), format, args);
    va_end(args);
    strings_add(&judging->record.work, judging->arena, arena_copy(judging->arena, line));
}

void record_work(lua_State *lua, const char *format, ...)
{
    char line[1024];
    va_list args;
    va_start(args, format);
    vsnprintf(line, sizeof(line), format, args);
    va_end(args);
    sandbox_charge(lua, TEXT_STEPS);
    bind_charge_output(lua, strlen(line));
    record_work_line(judging_of(lua), "%s", line);
    bind_check_arena(lua);
}
