#include "ask/one_line.h"

#include "job/answer.h"
#include "job/path.h"
#include "job/together.h"

#include <string.h>

enum { WORDS_MOST = 8192 };

/* A field is in one line at most; the last declared would win. */
static const struct together *together_with(const struct fields *fields, const struct field *field)
{
    for (const struct together *t = fields->together; t != NULL; t = t->next)
        for (size_t i = 0; i < t->count; i++)
            if (t->facts[i] == field)
                return t;
    return NULL;
}

/* The pointer of a fact beside another. */
static const char *beside(struct arena *arena, const char *pointer, const char *name)
{
    return arena_format(arena, "%.*s/%s", (int)(path_last(pointer) - pointer), pointer, name);
}

const char *one_line_leader(const struct question *question, struct arena *arena,
                            const struct fields *fields)
{
    const struct together *together = together_with(fields, question->field);
    return together == NULL || together->those_waiting
               ? NULL
               : beside(arena, question->pointer, together->facts[0]->name);
}

/* What the job says already is left out of the line, wherever it says it from: a sheet may
 * have half of a wrapper. */
void one_line_gather(struct question *question, struct arena *arena, const cJSON *job,
                     const struct fields *fields)
{
    const struct together *together = together_with(fields, question->field);
    if (together == NULL || (!together->those_waiting && together->facts[0] != question->field))
        return;
    question->those_waiting = together->those_waiting;
    question->parts = arena_array(arena, together->count, sizeof(*question->parts));
    for (size_t i = 0; question->parts != NULL && i < together->count; i++) {
        const struct field *field = together->facts[i];
        const char *pointer = beside(arena, question->pointer, field->name);
        const cJSON *said = pointer == NULL ? NULL : path_find(job, pointer);
        if (said == NULL || cJSON_IsNull(said))
            question->parts[question->part_count++] = (struct line_part){field, pointer};
    }
    /* One that is left is asked by itself, in its own words. */
    if (question->part_count < 2)
        question->part_count = 0;
    else
        question->ask = together->ask;
}

void one_line_keep(struct question *question, bool (*wanted)(void *, const struct line_part *),
                   void *data, size_t most)
{
    size_t kept = 0;
    for (size_t i = 0; i < question->part_count && kept < most; i++)
        if (wanted(data, &question->parts[i]))
            question->parts[kept++] = question->parts[i];
    question->part_count = kept;
    if (kept < 2) {
        question->part_count = 0;
        question->ask = question->field->ask;
    }
}

/* Copies the piece up to the next separator; returns what is after it, or NULL at the end. */
static const char *next_piece(const char *at, const char *between, char piece[WORDS_MOST])
{
    size_t length = strcspn(at, between);
    const char *after = at[length] == '\0' ? NULL : at + length + 1;
    length = text_trim(&at, length);
    memcpy(piece, at, length);
    piece[length] = '\0';
    return after;
}

/* A dash, or nothing between two commas, leaves that one fact open. */
static bool read_part(cJSON *job, const struct line_part *part, const char *piece, struct text *why)
{
    cJSON *value = NULL;
    if (piece[0] == '\0' || strcmp(piece, "-") == 0)
        return true;
    struct text wrong = TEXT_EMPTY;
    if (answer_read(&value, part->field, NULL, piece, &wrong))
        return path_set(job, part->pointer, value);
    text_addf(why, "%s: %s", part->field->name, text_string(&wrong));
    text_free(&wrong);
    return false;
}

/* Semicolons part the answers where one of them holds a comma, as a list of choices does. */
bool one_line_read(cJSON *job, const struct question *question, const char *words, struct text *why)
{
    char piece[WORDS_MOST];
    const char *between = strchr(words, ';') != NULL ? ";" : ",";
    const char *at = words;
    if (strlen(words) >= sizeof(piece)) {
        text_add(why, "that is too long");
        return false;
    }
    for (size_t i = 0; i < question->part_count && at != NULL; i++) {
        at = next_piece(at, between, piece);
        if (!read_part(job, &question->parts[i], piece, why))
            return false;
    }
    if (at != NULL)
        text_addf(why, "more than the %zu that are asked for", question->part_count);
    return at == NULL;
}
