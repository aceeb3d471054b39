/* record.c - what is recorded while a rule judges: the facts read, and the arithmetic
 * behind a finding, a line each. */
#include "base/format.h"
#include "judge/judge.h"
#include "judge/judging.h"

#include <stdarg.h>
#include <string.h>

/* Each spot knows the record that read it last; a record that others came between looks
 * through all that it read, which a rule may go over many. */
static bool is_read(struct judging *judging, struct spot *spot)
{
    struct record *record = &judging->record;
    if (record->read_count == 0 && record->number == 0)
        record->number = ++judging->records;
    if (record->number != 0 && spot->read_by == record->number)
        return true;
    if (record->number == 0 || record->number != judging->records)
        for (size_t i = 0; i < record->read_count; i++)
            if (record->reads[i] == spot)
                return true;
    spot->read_by = record->number;
    return false;
}

/* Once, however often it is read. */
void record_read(struct judging *judging, const struct node *node)
{
    judging->record.said |= node->json != NULL;
    if (judging->probe != NULL && judging->probe->facts != NULL)
        judging->probe->facts[node->field->number] = true;
    struct record *record = &judging->record;
    if (node->spot == NULL) /* out of memory */
        return;
    if (is_read(judging, node->spot))
        return;
    if (record->read_count == record->read_capacity) {
        const size_t capacity = record->read_capacity == 0 ? 16 : record->read_capacity * 2;
        struct spot **reads = arena_array(judging->arena, capacity, sizeof(struct spot *));
        unsigned *known = arena_array(judging->arena, capacity, sizeof(*known));
        if (reads == NULL || known == NULL)
            return;
        if (record->read_count > 0) {
            memcpy(reads, record->reads, record->read_count * sizeof(struct spot *));
            memcpy(known, record->read_known, record->read_count * sizeof(*known));
        }
        record->reads = reads;
        record->read_known = known;
        record->read_capacity = capacity;
    }
    record->read_known[record->read_count] = node->known;
    record->reads[record->read_count++] = node->spot;
}

void record_missing(struct judging *judging, const struct node *list)
{
    judging->record.missing = list->field;
    judging->record.missing_pointer = list->pointer;
    record_read(judging, list);
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

static void keep_line(struct judging *judging, const char *line)
{
    strings_add(&judging->record.work, judging->arena, arena_copy(judging->arena, line));
}

enum { LINE_LONGEST = 1024 };

void record_work_line(struct judging *judging, const char *format, ...)
{
    char line[LINE_LONGEST];
    va_list args;
    va_start(args, format);
    format_list(line, sizeof(line), format, args);
    va_end(args);
    keep_line(judging, line);
}

void record_work(lua_State *lua, const char *format, ...)
{
    char line[LINE_LONGEST];
    va_list args;
    va_start(args, format);
    format_list(line, sizeof(line), format, args);
    va_end(args);
    sandbox_charge(lua, TEXT_STEPS);
    bind_charge_output(lua, strlen(line));
    keep_line(judging_of(lua), line);
    bind_check_arena(lua);
}
