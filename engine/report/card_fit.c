/* How a row stands on paper, and how much fits on its front: judged by the number of letters,
 * since the widths of paper and letters are known. */
#include "report/card_fit.h"

#include "report/card_notes.h"
#include "report/card_questions.h"
#include "report/card_words.h"

#include <string.h>

enum { HALF_WIDTH = 40, WHAT_WIDTH = 36, HIT_WIDTH = 42 }; /* in letters, about */
enum { ROOM_WIDTH = 18 }; /* of the names of two places, each with a line to write on */
enum { SHEET_WIDTH = 88, FAULT_WIDTH = 78 };

/* Is ticking all there is to every row of it? */
bool card_is_short(const struct card *card, const struct card_thing *thing)
{
    struct card_row row = card_first_row(card, thing);
    bool all = row.items != NULL;
    for (; all && row.items != NULL; row = card_row_after(card, thing, &row))
        all = row.short_one;
    return all;
}

/* Is there nothing to tell but its title and places? */
bool card_is_bare(const struct card *card, const struct card_thing *thing)
{
    const struct card_row row = card_first_row(card, thing);
    struct text hit = card_row_hit(&row), plan = card_row_plan(&row);
    const bool bare = hit.length == 0 && plan.length == 0
                      && card_row_after(card, thing, &row).items == NULL;
    text_free(&hit);
    text_free(&plan);
    return bare;
}

/* So many things stand on the front that a line for each would not fit it. */
enum { FULL_FRONT = 42 };

/* Without what earlier stages left, which may go to the back. */
static bool is_full(const struct card *card)
{
    struct card_thing thing = {0};
    size_t count = 0;
    while (card_next(card, &thing))
        count += thing.section->kind != CARD_LEFT;
    return count > FULL_FRONT;
}

/* The figure and the plan. */
static size_t words_beside(const struct card_row *row)
{
    struct text hit = card_row_hit(row), plan = card_row_plan(row);
    const size_t rest = hit.length + (plan.length > 0 ? strlen("plan ") + plan.length : 0);
    text_free(&hit);
    text_free(&plan);
    return rest;
}

/* Judged by the number of letters: the widths of paper and letters are known, those of a
 * screen do not matter. */
enum card_shape card_shape_of(const struct card *card, const struct card_thing *thing)
{
    const struct card_row row = card_first_row(card, thing);
    struct text places = card_row_places(&row);
    const size_t what = strlen(card_title_of(row.items->now)) + places.length;
    const size_t rest = words_beside(&row);
    const bool one = card_row_after(card, thing, &row).items == NULL;
    text_free(&places);
    return one && what + rest <= HALF_WIDTH && (rest == 0 || is_full(card)) ? SHAPE_HALF
           : one && rest > 0 && what <= WHAT_WIDTH && rest <= HIT_WIDTH     ? SHAPE_COLUMNS
                                                                            : SHAPE_FLOWING;
}

/* How much fits ------------------------------------------------------------- */

/* About how high things stand on paper, in points, with words as long as these. */
enum {
    FRONT_HIGH = 615, /* what head, notes and names leave of the front */
    HEAD_HIGH = 16,
    ROW_HIGH = 15,
    LINE_HIGH = 13,
    QUESTION_HIGH = 26,
    ROOMY_PERCENT = 175, /* of that, when set larger */
};

/* In letters, of all places of the row. */
static size_t names_length(const struct card_row *row)
{
    size_t length = 0;
    for (size_t i = 0; i < row->count; i++)
        length += row->items[i].now->where == NULL ? 0 : strlen(row->items[i].now->where);
    return length;
}

/* A fault runs over the whole width below its row, behind the outcome's word. */
static size_t fault_height(const struct card_row *row)
{
    if (row->wrong == NULL)
        return 0;
    struct text fault = card_row_fault(row);
    const size_t lines = 1 + (strlen("[FAIL] ") + fault.length) / FAULT_WIDTH;
    text_free(&fault);
    return LINE_HIGH * lines;
}

/* An estimate, on the high side: what does not fit goes to the back. */
static size_t row_height(const struct card *card, const struct card_thing *thing,
                         const struct card_row *row)
{
    struct text places = card_row_places(row);
    const size_t what = strlen(card_title_of(row->items->now))
                        + (card_room_names(row) ? 0 : places.length);
    text_free(&places);
    size_t height = ROW_HIGH;
    if (card_is_short(card, thing))
        return height
               + (card_shape_of(card, thing) == SHAPE_FLOWING
                      ? LINE_HIGH * ((what + words_beside(row)) / SHEET_WIDTH)
                      : 0);
    /* Two places' lines stand one below the other beside the words, those of more below. */
    const size_t more = what > WHAT_WIDTH ? what / WHAT_WIDTH : 0;
    const bool two_lines = row->room == ROOM_WRITE && row->count == 2
                           && names_length(row) > ROOM_WIDTH;
    height += LINE_HIGH * (card_room_names(row) && more == 0 && two_lines ? 1 : more);
    if (card_room_names(row) && row->count > 2)
        height += LINE_HIGH;
    return height + fault_height(row);
}

/* With the heading of its section where it opens one. */
static size_t thing_height(const struct card *card, const struct card_thing *thing)
{
    size_t height = thing->opens ? HEAD_HIGH : 0;
    for (struct card_row row = card_first_row(card, thing); row.items != NULL;
         row = card_row_after(card, thing, &row))
        height += row_height(card, thing, &row);
    return height;
}

/* Without what earlier stages left open. */
static size_t front_height(const struct card *card)
{
    struct card_thing thing = {0};
    size_t height = card_asks_in_front(card) ? card->question_count * QUESTION_HIGH : 0;
    while (card_next(card, &thing))
        height += thing.section->kind == CARD_LEFT ? 0 : thing_height(card, &thing);
    /* About 90 letters to a line. */
    struct text asked = card_to_ask(card, true);
    height += asked.length > 0 ? LINE_HIGH * (1 + asked.length / 90) : 0;
    text_free(&asked);
    return height;
}

struct card_left card_left_in_front(const struct card *card)
{
    struct card_thing thing = {0};
    struct card_left left = {.height = front_height(card)};
    while (card_next(card, &thing)) {
        if (thing.section->kind != CARD_LEFT)
            continue;
        const size_t height = left.height + thing_height(card, &thing);
        if (height > FRONT_HIGH)
            break;
        left = (struct card_left){.in_front = left.in_front + 1, .height = height};
    }
    return left;
}

/* So few things that they may be set larger. */
bool card_is_roomy(const struct card *card)
{
    return card_left_in_front(card).height * ROOMY_PERCENT / 100 <= FRONT_HIGH;
}
