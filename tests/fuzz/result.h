/* result.h - what must hold of every check, whatever went in. */
#ifndef EAVEMARK_TESTS_FUZZ_RESULT_H
#define EAVEMARK_TESTS_FUZZ_RESULT_H

#include "include/eavemark.h"

/* A job is either judged, with a report of each form, or refused with words;
 * all of it harmless to a terminal. Frees the result. Returns its status. */
enum eavemark_status fuzz_result(eavemark_result *result);

#endif
