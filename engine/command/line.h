/* line.h - a file read line by line, none longer than a job may be. */
#ifndef EAVEMARK_COMMAND_LINE_H
#define EAVEMARK_COMMAND_LINE_H

#include "base/text.h"

#include <stdio.h>

/* Bytes of one job, the same limit as for a job in a file of its own. */
enum { LINE_LARGEST = 4 * 1024 * 1024 };

enum line_kind { LINE_READ, LINE_BLANK, LINE_TOO_LONG, LINE_END };

/* Reads one line without its end into line. What is over the limit is passed
 * over, not kept. Out of memory sets line->failed. */
enum line_kind line_read(FILE *input, struct text *line);

#endif
