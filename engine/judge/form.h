/* form.h - a finding that is remembered, as it was written for earlier jobs of the law: taken
 * again where every byte of it would be the same. Internal to the room.
 *
 * Of what is remembered (recall.h) a job moves only what the key holds: which of its places were
 * read and where it has them from, what the item is called, and what is asked for. Forms live in
 * the survey's memory, some for each thing judged; the one used longest ago makes way.
 */
#ifndef EAVEMARK_JUDGE_FORM_H
#define EAVEMARK_JUDGE_FORM_H

#include "judge/recall.h"
#include "judge/survey.h"

enum { FORMS_MOST = 8, FORM_KEY_MOST = 1024 };

struct form_key {
    size_t length; /* 0: there is none */
    char bytes[FORM_KEY_MOST];
};

struct form {
    char *key;
    size_t key_length, key_room; /* 0: it is taken for no other */
    char *json;
    size_t json_length, json_room; /* 0: not written yet */
    size_t round;                  /* in which it was used last */
    struct form *other;            /* of the same thing judged */
};

/* What the finding just recalled would be told by. */
void form_key(struct judging *judging, const struct walk *walk, const struct kept_finding *kept,
              struct form_key *key);

/* The one of these that was written for this key; or NULL. */
struct form *form_find(struct survey *survey, struct form *first, const struct form_key *key);

/* One to be written for the key (NULL: for no other), added to those of *first or taken from
 * them; NULL when there is no room. */
struct form *form_take(struct survey *survey, struct form **first, const struct form_key *key);

void form_write(struct survey *survey, struct form *form, const char *json, size_t length);

#endif
