/* all_listed.h - whether a shape lists every member of its struct. */
#ifndef EAVEMARK_TESTS_ALL_LISTED_H
#define EAVEMARK_TESTS_ALL_LISTED_H

#include "profile/place_shape.h"

/* Fails the running test when more lies between the listed members than alignment leaves, in the
 * struct or in one below it: a member that is not listed is lost on the way. */
void assert_all_listed(const struct shape *shape);

#endif
