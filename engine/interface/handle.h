/* handle.h - a handle as the calls of the interface see it: the home, and the laws loaded
 * from it so far. */
#ifndef EAVEMARK_INTERFACE_HANDLE_H
#define EAVEMARK_INTERFACE_HANDLE_H

#include "include/eavemark.h"
#include "law/law.h"

struct eavemark {
    char *home; /* owned; the laws point into it */
    struct laws laws;
    size_t line_length; /* that the next line of JSON is likely to have */
};

/* Forgets the laws when they are many or large and no result nor interview holds any. To
 * be called before any law is asked for: what was had of one is then gone. */
void handle_make_room(eavemark *handle);

/* Adds to the problems what was passed over in silence for want of memory since the call
 * before. */
void handle_say_out_of_memory(eavemark *handle, struct problems *problems);

#endif
