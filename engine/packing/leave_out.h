/* leave_out.h - a file of fields without its fields, for the build's own program.
 *
 * Where the build wrote down what a file's fields say (judge/fields_made.h), running their
 * declarations once more would only make tables to be thrown away: a seventh of what loading a
 * law takes.
 */
#ifndef EAVEMARK_PACKING_LEAVE_OUT_H
#define EAVEMARK_PACKING_LEAVE_OUT_H

/* Writes spaces over each `field "path" { ... }` that begins a line, so that all else keeps its
 * line. What is written in another way stays: it may be declared again. */
void leave_out_fields(char *text);

#endif
