/* stage.h - the four stages of a reroof, in order. */
#ifndef EAVEMARK_JOB_STAGE_H
#define EAVEMARK_JOB_STAGE_H

enum stage { STAGE_PERMIT, STAGE_DECK, STAGE_DRY_IN, STAGE_FINAL, STAGE_COUNT };

/* The stage by its word ("permit", "deck", "dry-in", "final"); -1 if none. */
int stage_by_word(const char *word);
const char *stage_word(enum stage stage);

#endif
