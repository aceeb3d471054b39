#include "judge/rulebook.h"

#include "base/strings.h"
#include "judge/bare_number.h"
#include "judge/bind_declare.h"
#include "judge/bind_reads.h"
#include "judge/fields_made.h"
#include "judge/memory.h"
#include "judge/rulebook_check.h"
#include "judge/survey.h"
#include "profile/made.h"

#include <lauxlib.h>
#include <lua.h>

#include <errno.h>
#include <stdlib.h>
#include <string.h>

/* Loading --------------------------------------------------------------------------- */

/* Every word that rule files may use. Binders of declarations come first: the rest is for
 * functions. */
static int define(lua_State *lua)
{
    declare_words(lua, DECLARE_FIELDS);
    declare_words(lua, DECLARE_RULES);
    declare_words(lua, DECLARE_ROWS);
    declare_words(lua, DECLARE_CAUTIONS);
    declare_words(lua, DECLARE_CARDS);
    declare_words(lua, DECLARE_DRAWINGS);
    declare_words(lua, DECLARE_FOLLOWS);
    bind_condition(lua);
    bind_reads(lua);
    bind_common(lua);
    bind_job(lua);
    bind_figure(lua);
    bind_judgement(lua);
    bind_compare(lua);
    bind_plain(lua);
    bind_trade(lua);
    bind_amount(lua);
    return 0;
}

static void say_stop(struct declaring *reading, enum sandbox_stop stop)
{
    struct sandbox *sandbox = reading->book->sandbox;
    if (reading->book->arena.failed || reading->book->fields.arena.failed)
        problem_out_of_memory(reading->problems);
    else
        problem_at_line(reading->problems, PROBLEM_RULES,
                        sandbox_place(sandbox, stop, reading->file), 0, 0, "%s",
                        sandbox_message(sandbox, stop));
}

static void end_file(struct declaring *reading, enum sandbox_stop stop)
{
    if (stop != SANDBOX_DONE)
        say_stop(reading, stop);
    else if (sandbox_overfull(reading->book->sandbox)) /* each file had that much */
        say_stop(reading, SANDBOX_MEMORY);
    else
        sandbox_tidy(reading->book->sandbox);
}

/* Runs one file; what stops it is told with the file and line. */
static void run_file(struct declaring *reading, const char *path)
{
    struct rulebook *book = reading->book;
    const struct source *source = home_read(reading->home, path, &book->arena, &book->sources,
                                            reading->problems);
    if (source == NULL)
        return;
    reading->file = source->path;
    struct packed_file code;
    if (!fields_made_begin(reading, source)) {
        problem_out_of_memory(reading->problems);
        return;
    }
    if (made_find(source, MADE_CODE, &code)) {
        end_file(reading,
                 sandbox_run_compiled(book->sandbox, code.bytes, code.length, source->path));
        return;
    }
    struct bare_number bare;
    /* Looked for in the text, before it is run: a number alone cannot be told from a
     * figure once it is compared. */
    if (bare_number_find(source->text, &bare)) {
        problem_at_line(reading->problems, PROBLEM_RULES, source->path, bare.line, 0,
                        "%s compares with the bare number %s: a limit is a figure of "
                        "jurisdictions/, which says where it stands",
                        bare.verb, bare.number);
        return;
    }
    end_file(reading, sandbox_run(book->sandbox, source->text, source->length, source->path));
}

static void note_file(void *data, const char *path)
{
    struct declaring *reading = data;
    if (strcmp(path, "rules/fields.lua") != 0 && strcmp(path, DECLARE_COMMON_FILE) != 0)
        strings_add(&reading->files, &reading->book->arena,
                    arena_copy(&reading->book->arena, path));
}

/* The place's own files first. */
static void load_rules(struct declaring *reading)
{
    const struct profile *profile = reading->book->profile;
    /* What the place's own files take is not lacking for those of everybody. */
    declare_zones(reading);
    sandbox_begin(reading->book->sandbox, SANDBOX_FILES_STEPS, SANDBOX_FILES_MS);
    for (size_t i = 0; i < profile->rule_file_count; i++)
        run_file(reading, profile->rule_files[i]);
    const int listed = home_each(reading->home, "rules", ".lua", 0, note_file, reading);
    if (listed != 0 && errno == ENOMEM)
        problem_out_of_memory(reading->problems);
    else if (listed != 0)
        problem_at_line(reading->problems, PROBLEM_RULES, "rules", 0, 0,
                        "cannot be read as a folder");
    sandbox_begin(reading->book->sandbox, SANDBOX_FILES_STEPS, SANDBOX_FILES_MS);
    for (size_t i = 0; i < reading->files.count && !reading->book->arena.failed; i++)
        run_file(reading, reading->files.items[i]);
}

static void check_references(struct declaring *reading)
{
    const char *why = "out of memory";
    const struct field *dangling = fields_dangling(&reading->book->fields, &why);
    if (dangling != NULL)
        problem_at_line(reading->problems, PROBLEM_RULES, dangling->file, 0, 0, "\"%s\": %s",
                        dangling->path, why);
}

/* Runs a file for its fields alone, and puts the heap back: what one county takes of
 * it must not be lacking for the next. */
static void run_for_fields(struct declaring *reading, const char *path)
{
    struct sandbox *sandbox = reading->book->sandbox;
    const size_t kept = sandbox->kept;
    reading->field_count = 0;
    sandbox_begin(sandbox, SANDBOX_FILES_STEPS, SANDBOX_FILES_MS);
    run_file(reading, path);
    sandbox->kept = kept;
    sandbox_reset(sandbox);
}

/* Without a place: the fields of every place, so that any real name is known.
 * A place whose file does not run leaves the catalogue partial; whoever asks
 * about that place will be told. */
static void load_every_field(struct declaring *reading)
{
    struct problems *told = reading->problems;
    struct problems untold = {0};
    reading->fields_only = true;
    reading->problems = &untold;
    if (home_each(reading->home, "jurisdictions", ".rules.lua", 6, note_file, reading) != 0)
        reading->book->fields.partial = true;
    if (sandbox_keep(reading->book->sandbox) != 0)
        reading->book->arena.failed = true;
    for (size_t i = 0; i < reading->files.count && !reading->book->arena.failed; i++)
        run_for_fields(reading, reading->files.items[i]);
    if (untold.count > 0)
        reading->book->fields.partial = true;
    if (untold.out_of_memory)
        problem_out_of_memory(told);
    problems_free(&untold);
    reading->problems = told;
    declare_every_zone(reading);
}

/* A name on a card that no rule answers to would leave a rule out of its place. */
static void check_cards(const struct declaring *reading)
{
    for (int stage = 0; stage < STAGE_COUNT; stage++)
        for (const struct card_part *p = reading->book->cards[stage]; p != NULL; p = p->next)
            for (size_t i = 0; i < p->names.count; i++)
                if (!rulebook_names(reading->book, p->names.items[i]))
                    problem_at_line(reading->problems, PROBLEM_RULES, p->file, p->line, 0,
                                    "the card \"%s\" lists \"%s\", which is no rule and no "
                                    "topic",
                                    stage_word((enum stage)stage), p->names.items[i]);
}

struct rulebook *rulebook_load(const char *home, const struct profile *profile,
                               struct problems *problems)
{
    const size_t before = problems->count;
    struct rulebook *book = calloc(1, sizeof(*book));
    if (book != NULL)
        *book = (struct rulebook){.whole = book, .holders = 1};
    struct declaring reading = {.book = book, .home = home, .problems = problems};
    if (book == NULL || fields_start(&book->fields) != 0
        || (book->sandbox = sandbox_open()) == NULL) {
        problem_out_of_memory(problems);
        rulebook_free(book);
        return NULL;
    }
    book->profile = profile;
    if (profile != NULL && !figure_slots_begin(book)) {
        problem_out_of_memory(problems);
        rulebook_free(book);
        return NULL;
    }
    book->sandbox->user = &reading;
    if (sandbox_setup(book->sandbox, define, NULL) == SANDBOX_DONE)
        run_file(&reading, "rules/fields.lua");
    else /* our own names: no file is at fault */
        problem_out_of_memory(problems);
    if (problems->count == before && !problems->out_of_memory
        && home_has(home, DECLARE_COMMON_FILE))
        run_file(&reading, DECLARE_COMMON_FILE);
    if (profile != NULL && problems->count == before && !problems->out_of_memory) {
        load_rules(&reading);
    } else if (profile == NULL && problems->count == before && !problems->out_of_memory) {
        load_every_field(&reading);
    }
    if (profile != NULL && problems->count == before && !problems->out_of_memory
        && !book->arena.failed) {
        rulebook_check(book, problems);
        check_cards(&reading);
        drawing_check(book, problems);
    }
    if (problems->count == before)
        check_references(&reading);
    /* From here on nothing may be declared. */
    book->sandbox->user = NULL;
    if (book->arena.failed || sandbox_freeze(book->sandbox) != 0)
        problem_out_of_memory(problems);
    if (problems->count != before || problems->out_of_memory) {
        rulebook_free(book);
        return NULL;
    }
    return book;
}

void rulebook_free(struct rulebook *book)
{
    if (book == NULL)
        return;
    struct rulebook *whole = book->whole;
    memory_free(book->memory);
    survey_free(book->survey);
    book->memory = NULL;
    book->survey = NULL;
    if (book != whole) {
        arena_free(&book->arena);
        free(book);
    }
    /* Others may go on by its rules. */
    if (--whole->holders > 0)
        return;
    sandbox_close(whole->sandbox);
    fields_free(&whole->fields);
    arena_free(&whole->arena);
    free(whole);
}
