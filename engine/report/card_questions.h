/* card_questions.h - the questions of a card, each once. */
#ifndef EAVEMARK_REPORT_CARD_QUESTIONS_H
#define EAVEMARK_REPORT_CARD_QUESTIONS_H

#include "ask/card.h"

#include <stdbool.h>
#include <stddef.h>

/* So few questions that they stand on the front. */
bool card_asks_in_front(const struct card *card);

/* Calls visit for each question that is open, once each, from 1, with what it is
 * asked of before it: "porch; main front: How thick is it?". waiting names
 * the first that have no figure before it is answered: "Width of the caps; 2 more",
 * how many there are ("3 rules") where there are many questions, or "". */
void card_questions(const struct card *card,
                    void (*visit)(void *data, size_t number, const char *says, const char *waiting),
                    void *data);

#endif
