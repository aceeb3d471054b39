#include "base/problem.h"

#include "base/utf8.h"

#include <stdarg.h>
#include <stdio.h>

/* Longer messages are cut at 2 KB: they quote what a user wrote. Everything is copied, so
 * that a problem outlives the job or file it tells of. */
__attribute__((format(printf, 4, 0))) static struct problem *problem_new(struct problems *list,
                                                                         enum problem_kind kind,
                                                                         const char *file,
                                                                         const char *format,
                                                                         va_list args)
{
    char message[2048];
    vsnprintf(message, sizeof(message), format, args);
    struct problem *problem = arena_alloc(&list->arena, sizeof(*problem));
    char *copy = arena_copy(&list->arena, message);
    char *name = arena_copy(&list->arena, file);
    if (problem == NULL || copy == NULL || (file != NULL && name == NULL)) {
        list->out_of_memory = true;
        return NULL;
    }
    problem->kind = kind;
    problem->file = name;
    problem->message = copy;
    if (list->last == NULL)
        list->first = problem;
    else
        list->last->next = problem;
    list->last = problem;
    list->count++;
    return problem;
}

void problem_at_line(struct problems *list, enum problem_kind kind, const char *file, int line,
                     int column, const char *format, ...)
{
    va_list args;
    va_start(args, format);
    struct problem *problem = problem_new(list, kind, file, format, args);
    va_end(args);
    if (problem != NULL) {
        problem->line = line;
        problem->column = column;
    }
}

void problem_at(struct problems *list, enum problem_kind kind, const char *file,
                const char *pointer, const char *format, ...)
{
    va_list args;
    va_start(args, format);
    struct problem *problem = problem_new(list, kind, file, format, args);
    va_end(args);
    if (problem == NULL)
        return;
    /* The problem stays even when its place could not be kept: half a message is better
     * than none. */
    problem->pointer = arena_copy(&list->arena, pointer);
    if (pointer != NULL && problem->pointer == NULL)
        list->out_of_memory = true;
}

/* A flag only: there may be no memory for a message. */
void problem_out_of_memory(struct problems *list)
{
    list->out_of_memory = true;
}

/* Only the list is put back; the memory of what is cut goes with the arena. */
void problems_cut(struct problems *list, const struct problems *before)
{
    list->first = before->first;
    list->last = before->last;
    list->count = before->count;
    if (list->last != NULL)
        list->last->next = NULL;
}

/* The worst kind decides a call's status. */
bool problems_any(const struct problems *list, enum problem_kind kind)
{
    for (const struct problem *p = list->first; p != NULL; p = p->next)
        if (p->kind == kind)
            return true;
    return false;
}

/* What is quoted comes out printable: a job's text must not steer the terminal of who reads
 * it. */
void problems_write(const struct problems *list, struct text *out)
{
    for (const struct problem *p = list->first; p != NULL; p = p->next) {
        if (p->file != NULL) {
            utf8_add_printable(out, p->file);
            if (p->line > 0)
                text_addf(out, ":%d", p->line);
            if (p->line > 0 && p->column > 0)
                text_addf(out, ":%d", p->column);
            text_add(out, ": ");
        }
        /* The pointer "" is the whole job: nothing needs to be said. */
        if (p->pointer != NULL && p->pointer[0] != '\0') {
            utf8_add_printable(out, p->pointer);
            text_add(out, ": ");
        }
        utf8_add_printable(out, p->message);
        text_add(out, "\n");
    }
    if (list->out_of_memory)
        text_add(out, "eavemark: out of memory\n");
}

void problems_free(struct problems *list)
{
    arena_free(&list->arena);
    *list = (struct problems){0};
}
