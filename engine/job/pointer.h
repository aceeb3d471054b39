/* pointer.h - writing JSON pointers (RFC 6901), one step at a time. */
#ifndef EAVEMARK_JOB_POINTER_H
#define EAVEMARK_JOB_POINTER_H

#include "base/text.h"

#include <stddef.h>

/* Longest name written whole, in bytes; no real field comes near it. */
enum { POINTER_LONGEST_NAME = 120 };

/* Adds "/name" with ~ and / escaped. A name over POINTER_LONGEST_NAME is cut
 * there and ends in "...", so that a hostile job cannot grow its messages. */
void pointer_add(struct text *pointer, const char *name, size_t length);

/* Adds "/index", from 0. */
void pointer_add_item(struct text *pointer, size_t index);

/* Cuts the pointer back to an earlier length. */
void pointer_cut(struct text *pointer, size_t length);

/* How many bytes of text to quote so that it ends between characters and
 * within most bytes. */
size_t pointer_quotable(const char *text, size_t length, size_t most);

#endif
