/* card_text.c - the card for a printer that knows letters only, see card_report.h. */
#include "report/card_report.h"

#include "base/utf8.h"
#include "include/eavemark.h"
#include "report/card_cites.h"
#include "report/card_notes.h"
#include "report/card_questions.h"
#include "report/card_words.h"
#include "report/page.h"
#include "report/sources.h"
#include "report/value_words.h"
#include "report/wrap.h"

#include <string.h>

/* Columns of a row: box, number, what, to hit, room. */
enum { TICK = 4, LEAD = 7, WHAT = 38, HIT = 19, ROOM = 14, PRINT_SHOWN = 16 };

/* Between front and back; a line to write on. */
static const char RULER[] = "==================================";
static const char LINE[] = "____________";

/* Cells ------------------------------------------------------------------------- */

/* What is still to be written of a cell, and how wide it is. */
struct cell {
    struct text words;
    const char *rest;
    size_t width;
};

/* Bytes of as many whole words as fit; at least a letter's worth of one too long. */
static size_t bytes_that_fit(const char *words, size_t width)
{
    size_t best = 0, at = 0, columns = 0;
    const size_t length = strlen(words);
    while (at < length && columns < width) {
        const size_t step = utf8_length((const unsigned char *)words + at, length - at);
        at += step == 0 ? 1 : step;
        columns++;
        if (words[at] == '\0' || words[at] == ' ')
            best = at;
    }
    return best > 0 ? best : at;
}

/* Writes as much of the cell as fits one line, filled up to its width. */
static void add_piece(struct text *out, struct cell *cell, bool fill)
{
    cell->rest += strspn(cell->rest, " ");
    const size_t length = bytes_that_fit(cell->rest, cell->width);
    struct text piece = TEXT_EMPTY;
    text_add_n(&piece, cell->rest, length);
    cell->rest += length;
    const size_t used = utf8_columns(text_string(&piece));
    text_add(out, text_string(&piece));
    if (fill && used < cell->width)
        text_addf(out, "%*s", (int)(cell->width - used), "");
    out->failed = out->failed || piece.failed;
    text_free(&piece);
}

/* Cells side by side, after a lead that has been written; releases their words. */
static void add_cells(struct text *out, struct cell *cells, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        struct text safe = TEXT_EMPTY;
        utf8_add_printable(&safe, text_string(&cells[i].words));
        safe.failed = safe.failed || cells[i].words.failed;
        text_free(&cells[i].words);
        cells[i].words = safe;
        cells[i].rest = text_string(&safe);
        out->failed = out->failed || safe.failed;
    }
    /* Line by line, until every cell is written; one that runs out of words stays empty. */
    for (bool more = true, first = true; more && !out->failed; first = false) {
        if (!first)
            text_addf(out, "%*s", LEAD, "");
        more = false;
        for (size_t i = 0; i < count; i++) {
            add_piece(out, &cells[i], i + 1 < count);
            text_add(out, i + 1 < count ? " " : "");
        }
        /* No spaces at the end of a line. */
        while (out->length > 0 && out->bytes[out->length - 1] == ' ')
            out->bytes[--out->length] = '\0';
        text_add(out, "\n");
        for (size_t i = 0; i < count; i++)
            more = more || cells[i].rest[strspn(cells[i].rest, " ")] != '\0';
    }
    for (size_t i = 0; i < count; i++)
        text_free(&cells[i].words);
}

/* Rows -------------------------------------------------------------------------- */

/* Places that have room of their own below are named there. */
static struct text title_of(const struct card_row *row)
{
    struct text title = TEXT_EMPTY, places = card_row_places(row);
    if (card_room_names(row) && !row->again)
        text_free(&places);
    if (!row->again)
        text_add(&title, card_title_of(row->items->now));
    else
        text_add(&title, "-");
    if (places.length > 0)
        text_addf(&title, "%s %s", row->again ? "" : ":", text_string(&places));
    title.failed = title.failed || places.failed;
    text_free(&places);
    return title;
}

/* What is planned and, where one line is enough, room to write. */
static struct text room_of(const struct card_row *row)
{
    struct text room = TEXT_EMPTY, plan = card_row_plan(row), found = card_row_measured(row);
    if (row->room == ROOM_FOUND)
        text_addf(&room, "now %s", text_string(&found));
    else if (row->room == ROOM_WRITE && row->count == 1)
        text_add(&room, LINE); /* no room for the plan beside it */
    else if (plan.length > 0)
        text_addf(&room, "plan %s", text_string(&plan));
    room.failed = room.failed || plan.failed || found.failed;
    text_free(&plan);
    text_free(&found);
    return room;
}

/* Room of their own for several places. */
static void add_room(struct text *out, const struct card_row *row)
{
    struct text room = TEXT_EMPTY;
    const bool write = row->room == ROOM_WRITE && row->count > 1;
    if (write && row->count > CARD_PLACES_MOST)
        text_addf(&room, "each of %zu %s", row->count, LINE);
    for (size_t i = 0;
         (write || row->room == ROOM_BOXES) && row->count <= CARD_PLACES_MOST && i < row->count;
         i++)
        text_addf(&room, write ? "%s%s _______" : "%s[ ] %s", i > 0 ? " " : "",
                  row->items[i].now->where == NULL ? "" : row->items[i].now->where);
    if (room.length == 0 && !room.failed)
        return;
    text_addf(out, "%*s", LEAD, "");
    page_phrase(out, LEAD, &room);
}

/* What is wrong, below the row and in its columns. */
static void add_bad(struct text *out, const struct card_row *row)
{
    if (row->wrong == NULL)
        return;
    struct text fault = card_row_fault(row), line = TEXT_EMPTY;
    text_addf(&line, "%s: %s", page_outcome(row->wrong->outcome), text_string(&fault));
    line.failed = line.failed || fault.failed;
    text_free(&fault);
    text_addf(out, "%*s", LEAD, "");
    page_phrase(out, LEAD, &line);
}

static void add_cell_row(struct text *out, const struct card_row *row)
{
    struct cell cells[] = {
        {title_of(row), NULL, WHAT}, {card_row_hit(row), NULL, HIT}, {room_of(row), NULL, ROOM}};
    if (cells[2].words.length == 0) /* the figure may take the room that nothing needs */
        cells[1].width = HIT + 1 + ROOM;
    add_cells(out, cells, cells[2].words.length == 0 ? 2 : 3);
    text_free(&cells[2].words);
}

/* "What: to hit, plan so much", for what is only ticked. */
static struct text flowing(const struct card_row *row)
{
    struct text words = title_of(row), hit = card_row_hit(row), plan = card_row_plan(row);
    if (hit.length > 0)
        text_addf(&words, ": %s", text_string(&hit));
    if (plan.length > 0)
        text_addf(&words, "; plan %s", text_string(&plan));
    words.failed = words.failed || hit.failed || plan.failed;
    text_free(&hit);
    text_free(&plan);
    return words;
}

/* Does it stand in columns in one line? */
static bool fits_columns(const struct card_row *row)
{
    struct text title = title_of(row), hit = card_row_hit(row), room = room_of(row);
    const size_t hit_most = room.length == 0 ? HIT + 1 + ROOM : HIT;
    const bool fits = utf8_columns(text_string(&title)) <= WHAT
                      && utf8_columns(text_string(&hit)) <= hit_most
                      && utf8_columns(text_string(&room)) <= ROOM;
    text_free(&title);
    text_free(&hit);
    text_free(&room);
    return fits;
}

/* What is only ticked may flow over the whole width; the rest stands in columns. */
static void add_row(struct text *out, const struct card_thing *thing, const struct card_row *row)
{
    if (row->again)
        text_addf(out, "[ ]    ");
    else
        text_addf(out, "[ ] %2zu ", thing->number);
    if (row->short_one && !fits_columns(row)) {
        struct text words = flowing(row);
        page_phrase(out, LEAD, &words);
    } else {
        add_cell_row(out, row);
    }
    add_room(out, row);
    add_bad(out, row);
}

/* The things of the front, or of the back: what earlier stages left. */
static void add_things(const struct card *card, bool back, struct text *out)
{
    struct card_thing thing = {0};
    while (card_next(card, &thing)) {
        if ((thing.section->kind == CARD_LEFT) != back)
            continue;
        if (thing.opens) {
            text_add(out, thing.section->kind == CARD_WRONG ? "== " : "-- ");
            wrap_add(out, 3, thing.section->title);
        }
        for (struct card_row row = card_first_row(card, &thing); row.items != NULL;
             row = card_row_after(card, &thing, &row))
            add_row(out, &thing, &row);
    }
}

/* Questions ----------------------------------------------------------------------- */

/* The list's heading comes with its first question. */
static void add_question(void *data, size_t number, const char *says, const char *waiting)
{
    struct text *out = data, line = TEXT_EMPTY;
    if (number == 1)
        text_add(out, "-- Questions still open\n");
    text_addf(&line, "%s %s", says, LINE);
    if (waiting[0] != '\0')
        text_addf(&line, " (waiting: %s)", waiting);
    text_addf(out, "%2zu. ", number);
    page_phrase(out, TICK, &line);
}

/* Front and back -------------------------------------------------------------------- */

/* What the crew needs to know that it holds the right card. */
static void add_head(const struct card *card, struct text *out)
{
    const struct result *result = &card->now;
    text_addf(out, "%s - Eavemark " EAVEMARK_VERSION ", pre-check of a reroof\n",
              card_title(card->stage));
    page_head(out, "Job", result->job);
    for (size_t i = 0; i < result->about_count; i++) {
        text_addf(out, "%-*.*s", PAGE_HEAD, PAGE_HEAD - 1, result->about[i].label);
        wrap_add(out, PAGE_HEAD, result->about[i].says);
    }
    struct text place = TEXT_EMPTY;
    text_addf(&place, "%s%s", result->jurisdiction_title,
              result->invented ? " - INVENTED PLACE, not the law anywhere" : "");
    text_addf(out, "%-*s", PAGE_HEAD, "Place");
    page_phrase(out, PAGE_HEAD, &place);
    struct text law = TEXT_EMPTY;
    text_addf(&law, "%s, on %s, by %s", result->edition, result->date, result->jurisdiction);
    text_addf(out, "%-*s", PAGE_HEAD, "Law");
    page_phrase(out, PAGE_HEAD, &law);
}

/* Releases what is to be asked. */
static void add_department(struct text asked, struct text *out)
{
    if (asked.length > 0) {
        text_add(out, "-- Ask the building department\n");
        wrap_add(out, 0, text_string(&asked));
    }
    out->failed = out->failed || asked.failed;
    text_free(&asked);
}

/* All that a sheet's front holds; a printer that knows letters only cannot be asked what fits. */
static void add_front(const struct card *card, struct text *out)
{
    struct text asked = card_to_ask(card, true), notes = card_notes(card, 0);
    add_head(card, out);
    add_things(card, false, out);
    add_department(asked, out);
    if (card_asks_in_front(card))
        card_questions(card, add_question, out);
    text_add(out, "\n");
    page_phrase(out, 0, &notes);
    text_add(out, "\nLooked over by ________________________   Date ______________\n");
}

static void add_cited(void *data, const char *numbers, const char *cites)
{
    struct text *out = data, line = TEXT_EMPTY;
    text_addf(&line, "%s: %s", numbers, cites);
    text_add(out, "  ");
    page_phrase(out, 4, &line);
}

/* By the numbers of the rows: an inspector asks where it is written. */
static void add_cites(const struct card *card, struct text *out)
{
    struct text signs = card_signs(card);
    text_add(out, "\n-- Sections, by the number of the row\n");
    page_phrase(out, 0, &signs);
    for (size_t i = 0; i < card->now.doubt_count; i++)
        wrap_add(out, 0, card->now.doubts[i]);
    struct text facts = sources_head(&card->now);
    if (facts.length > 0) {
        text_add(out, "Facts not of the job itself: ");
        page_phrase(out, 0, &facts);
    }
    for (size_t i = 0; i < card->now.differ_count; i++)
        wrap_add(out, 0, card->now.differs[i]);
    if (!card_all_cites(card, add_cited, out))
        out->failed = true;
}

/* In full: on the roof there is no report beside the card. */
static void add_safety(struct text *out, const struct result *result)
{
    if (result->safety_count > 0)
        text_add(out, "\n-- At this stage, take care\n");
    for (size_t i = 0; i < result->safety_count; i++) {
        const struct safety *safety = &result->safety[i];
        struct text care = TEXT_EMPTY;
        text_addf(&care, "%s [", safety->says);
        value_add_cite(&care, &safety->cite);
        text_addf(&care, ", %s]", value_cite_status(&safety->cite));
        text_add(out, "  * ");
        page_phrase(out, TICK, &care);
    }
}

void report_card_text(const struct card *card, struct text *out)
{
    const struct result *result = &card->now;
    add_front(card, out);
    text_addf(out, "\n%s the back %s\n", RULER, RULER);
    add_things(card, true, out);
    if (!card_asks_in_front(card))
        card_questions(card, add_question, out);
    if (card_to_ask_in_back(card))
        add_department(card_to_ask(card, false), out);
    add_cites(card, out);
    add_safety(out, result);
    text_add(out, "\n");
    wrap_add(out, 0, result->caution == NULL ? "" : result->caution);
    text_addf(out, "\nRules and figures used: %.*s\n", PRINT_SHOWN, result->fingerprint);
}
