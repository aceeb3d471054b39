/* place_id.h - the name of a place: a path below jurisdictions/, without its ".lua". */
#ifndef EAVEMARK_BASE_PLACE_ID_H
#define EAVEMARK_BASE_PLACE_ID_H

#include <stdbool.h>

/* Small letters, digits, - and _, in parts set off by single strokes; 120 bytes at most.
 * What is no id must not be made a path of: it could climb out of the folder. */
bool place_id_is_sound(const char *id);

#endif
