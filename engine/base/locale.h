/* locale.h - numbers and texts the same whatever the host's locale.
 *
 * A program that hosts the library may have set one in which numbers have a comma, or
 * texts another order. While the library works its thread has the plain one ("C").
 */
#ifndef EAVEMARK_BASE_LOCALE_H
#define EAVEMARK_BASE_LOCALE_H

#include <locale.h>

/* Puts the thread's locale aside, and gives it for locale_back. 0: there is no plain one
 * (out of memory), and nothing was changed. */
locale_t locale_plain(void);
void locale_back(locale_t before);

#endif
