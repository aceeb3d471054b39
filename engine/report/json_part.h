/* json_part.h - pieces that every JSON form is made of. Internal to the room.
 *
 * Every add function returns false when out of memory. What it made until then
 * hangs on its parent, so deleting the root frees everything.
 */
#ifndef EAVEMARK_REPORT_JSON_PART_H
#define EAVEMARK_REPORT_JSON_PART_H

#include "base/text.h"
#include "judge/finding.h"

#include <cjson/cJSON.h>
#include <stdbool.h>
#include <stddef.h>

/* A text or null; a list of texts; a value, numbers rounded as they print. */
bool json_add_text(cJSON *object, const char *key, const char *text);
bool json_add_texts(cJSON *object, const char *key, const char *const *texts, size_t count);
bool json_add_value(cJSON *object, const char *key, const struct value *value);

/* "cite" of a finding; "reads", each { at, from }; "amended"; "jurisdiction" of a result. */
bool json_add_cites(cJSON *object, const struct finding *finding);
bool json_add_reads(cJSON *object, const struct finding *finding);
bool json_add_amended(cJSON *object, const struct amended *amended);
bool json_add_jurisdiction(cJSON *root, const struct result *result);

/* Prints the tree into out, plain ASCII with a final newline, and deletes it;
 * sets out->failed when it is not complete or cannot be printed. */
void json_finish(cJSON *root, bool complete, bool pretty, struct text *out);

#endif
