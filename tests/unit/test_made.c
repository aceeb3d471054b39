/* What the build made of the packed home serves only files that are to the byte as packed,
 * and gives what reading them gives. */
#include "base/home_files.h"
#include "judge/rulebook.h"
#include "law/law.h"
#include "profile/made.h"
#include "profile/place_made.h"
#include "profile/places.h"
#include "support/all_listed.h"
#include "support/temporary_home.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

/* A place as this home has it, written down; the caller frees it. */
static char *written(const char *home, const char *id, size_t *length, bool *packed)
{
    struct arena arena = {0};
    struct sources sources = {0};
    struct problems problems = {0};
    struct place *place = place_load(home, id, &arena, &sources, &problems);
    assert_non_null(place);
    assert_int_equal(problems.count, 0);
    *packed = place->source->packed;
    char *bytes = place_made_write(place, length);
    assert_non_null(bytes);
    problems_free(&problems);
    arena_free(&arena);
    return bytes;
}

static void append(const struct temporary_home *home, const char *path, const char *more)
{
    FILE *file = fopen(home_path(home, path), "a");
    assert_non_null(file);
    fputs(more, file);
    assert_int_equal(fclose(file), 0);
}

/* A comment at its end keeps a place from being the packed one, and changes nothing else. */
static void every_place_is_what_its_files_say(void **state)
{
    (void)state;
    struct arena arena = {0};
    struct strings ids = {0};
    struct temporary_home home;
    size_t made = 0;
    home_make(&home);
    home_copy_all(&home, "jurisdictions");
    places_ids(EAVEMARK_HOME_DIR, &ids, &arena);
    for (size_t i = 0; i < ids.count; i++) {
        char path[256];
        size_t n, m;
        bool as_packed, touched;
        snprintf(path, sizeof(path), "jurisdictions/%s.lua", ids.items[i]);
        append(&home, path, "\n-- touched\n");
        char *taken = written(EAVEMARK_HOME_DIR, ids.items[i], &n, &as_packed);
        char *read = written(home.path, ids.items[i], &m, &touched);
        assert_true(as_packed);
        assert_false(touched);
        assert_int_equal(n, m);
        assert_memory_equal(taken, read, n);
        free(taken);
        free(read);
        made++;
    }
    assert_true(made > 50);
    home_remove(&home);
    arena_free(&arena);
}

/* Each place and each rule file that loads is there, or a start would be slow unseen. */
static void every_place_and_rule_file_was_made(void **state)
{
    (void)state;
    const struct pack packed = home_files_packed(), made = home_files_made();
    struct packed_file file, found;
    size_t at = 0, code = 0, places = 0;
    while (pack_next(&packed, &at, &file)) {
        char source[256], path[300];
        size_t length;
        snprintf(source, sizeof(source), "%.*s", (int)file.path_length, file.path);
        const bool own = strstr(source, ".rules.lua") != NULL;
        const bool rules = strncmp(source, "rules/", 6) == 0 && strchr(source + 6, '/') == NULL
                           && strstr(source, ".lua") != NULL;
        if (own || rules) {
            snprintf(path, sizeof(path), MADE_CODE "/%s", source);
            assert_true(pack_find(&made, path, &found));
            code++;
        } else if (strncmp(source, "jurisdictions/", 14) == 0 && strstr(source, ".lua") != NULL
                   && home_place_id(source, &length) != NULL) {
            snprintf(path, sizeof(path), MADE_PLACE "/%s", source);
            assert_true(pack_find(&made, path, &found));
            places++;
        }
    }
    assert_true(code > 20);
    assert_true(places > 50);
}

static void assert_same_text(const char *a, const char *b)
{
    assert_true((a == NULL) == (b == NULL));
    if (a != NULL)
        assert_string_equal(a, b);
}

static void assert_same_field(const struct field *a, const struct field *b)
{
    assert_string_equal(a->path, b->path);
    assert_string_equal(a->name, b->name);
    assert_string_equal(a->file, b->file);
    assert_same_text(a->unit, b->unit);
    assert_same_text(a->refers, b->refers);
    assert_int_equal(a->referred, b->referred);
    assert_same_text(a->ask, b->ask);
    assert_same_text(a->answer, b->answer);
    assert_int_equal(a->type, b->type);
    assert_int_equal(a->stage, b->stage);
    assert_int_equal(a->habit, b->habit);
    assert_int_equal(a->number, b->number);
    assert_int_equal(a->index, b->index);
    assert_int_equal(a->child_count, b->child_count);
    assert_true(a->has_least == b->has_least && a->has_most == b->has_most);
    assert_true(a->least == b->least && a->most == b->most);
    assert_true(a->required == b->required && a->measured == b->measured);
    assert_true(a->stays == b->stays && a->of_place == b->of_place);
    assert_int_equal(a->choice_count, b->choice_count);
    for (size_t i = 0; i < a->choice_count; i++)
        assert_string_equal(a->choices[i], b->choices[i]);
}

static size_t assert_same_below(const struct field *a, const struct field *b)
{
    size_t count = 0;
    const struct field *f = a->first_child, *g = b->first_child;
    for (; f != NULL && g != NULL; f = f->next, g = g->next) {
        assert_same_field(f, g);
        count += 1 + assert_same_below(f, g);
    }
    assert_true(f == NULL && g == NULL);
    return count;
}

/* What else the file declares, in the lines where it stands. */
static void assert_same_impossibles(const struct rulebook *a, const struct rulebook *b)
{
    size_t count = 0;
    const struct impossible *i = a->impossibles, *j = b->impossibles;
    for (; i != NULL && j != NULL; i = i->next, j = j->next, count++) {
        assert_string_equal(i->name, j->name);
        assert_string_equal(i->at, j->at);
        assert_string_equal(i->file, j->file);
        assert_int_equal(i->line, j->line);
        assert_int_equal(i->per_depth, j->per_depth);
    }
    assert_true(i == NULL && j == NULL && count > 20);
}

/* The catalogue taken from what was made, against the one of a file with a comment more. */
static void every_field_is_what_its_file_says(void **state)
{
    (void)state;
    struct temporary_home home;
    struct problems problems = {0};
    home_make(&home);
    home_copy_all(&home, "rules");
    home_copy_all(&home, "jurisdictions");
    append(&home, "rules/fields.lua", "\n-- touched\n");
    struct rulebook *taken = rulebook_load(HOME_INSIDE, NULL, &problems);
    struct rulebook *read = rulebook_load(home.path, NULL, &problems);
    assert_non_null(taken);
    assert_non_null(read);
    assert_true(assert_same_below(taken->fields.root, read->fields.root) > 500);
    assert_same_impossibles(taken, read);
    rulebook_free(taken);
    rulebook_free(read);
    problems_free(&problems);
    home_remove(&home);
}

/* Or they would be read anew at each start, unseen; and declared to no purpose. */
static void the_fields_were_made(void **state)
{
    (void)state;
    const struct pack packed = home_files_packed(), made = home_files_made();
    struct packed_file found, source;
    assert_true(pack_find(&made, MADE_FIELDS "/rules/fields.lua", &found));
    assert_true(pack_find(&packed, "rules/fields.lua", &source));
    assert_true(pack_find(&made, MADE_CODE "/rules/fields.lua", &found));
    assert_true(found.length < source.length / 4);
}

static void every_member_of_a_place_is_listed(void **state)
{
    (void)state;
    /* All of a place but its source. */
    const struct shape *block = PLACE_SHAPE.parts[0].shape;
    assert_int_equal(PLACE_SHAPE.parts[0].at, offsetof(struct place, blocks));
    assert_all_listed(block);
}

static const char *const FINGERPRINT_FILES[] = {"rules/deck.lua", "rules/fields.lua"};

/* Reads these files of a home and takes their fingerprint: hashed where said. */
static void fingerprint(const char *home, bool hashed, char out[65])
{
    struct arena arena = {0};
    struct sources sources = {0};
    struct problems problems = {0};
    for (size_t i = 0; i < 2; i++) {
        struct source *source = (struct source *)(uintptr_t)home_read(home, FINGERPRINT_FILES[i],
                                                                      &arena, &sources, &problems);
        assert_non_null(source);
        source->packed = source->packed && !hashed;
    }
    home_fingerprint(&sources, out);
    arena_free(&arena);
}

static void files_of_no_law_are_hashed(void **state)
{
    (void)state;
    char taken[65], hashed[65];
    fingerprint(EAVEMARK_HOME_DIR, false, taken);
    fingerprint(EAVEMARK_HOME_DIR, true, hashed);
    assert_string_equal(taken, hashed);
}

/* The cross-gable house checked in this home. */
static struct outcome_of_check check_in(const char *home)
{
    char *job = file_text(EAVEMARK_HOME_DIR "/tests/houses/cross-gable/job.json", NULL);
    eavemark *handle = eavemark_open(home);
    assert_non_null(handle);
    struct outcome_of_check outcome = home_check(handle, job, NULL, NULL, NULL);
    eavemark_close(handle);
    free(job);
    return outcome;
}

/* The fingerprint of a check in this home, to be freed. */
static char *fingerprint_of_check(const char *home)
{
    struct outcome_of_check outcome = check_in(home);
    assert_non_null(outcome.json);
    const char *at = strstr(outcome.json, "\"fingerprint\"");
    assert_non_null(at);
    char *fingerprint = strndup(at, 90);
    outcome_free(&outcome);
    return fingerprint;
}

/* The sha256 of the law's files as they are, whatever was made. */
static void assert_fingerprint_of_its_files(struct laws *laws, const char *id)
{
    struct arena arena = {0};
    struct sources all = {0};
    struct problems problems = {0};
    char made[65], hashed[65];
    const struct law *law = laws_find(laws, id, 20260504, "", &problems);
    assert_non_null(law);
    const struct source *lists[] = {law->profile->sources.first, law->book->sources.first};
    for (size_t i = 0; i < 2; i++)
        assert_true(home_sources_add(&all, lists[i], &arena));
    for (const struct source *s = all.first; s != NULL; s = s->next)
        assert_true(s->packed);
    home_fingerprint(&all, made);
    assert_true(made_fingerprint(&all, made));
    assert_string_equal(made, law->fingerprint);
    all.first->packed = false;
    assert_false(made_fingerprint(&all, hashed));
    home_fingerprint(&all, hashed);
    assert_string_equal(made, hashed);
    arena_free(&arena);
}

static void a_law_has_the_fingerprint_of_its_files(void **state)
{
    (void)state;
    static const char *const IDS[] = {"us-ca/daly-city", "example/dunmarrow", "model/irc-2018",
                                      "us-fl/pasco-county"};
    struct laws laws = {.home = EAVEMARK_HOME_DIR};
    for (size_t i = 0; i < 4; i++)
        assert_fingerprint_of_its_files(&laws, IDS[i]);
    laws_free(&laws);
}

static void assert_moved(const char *before, const struct temporary_home *home)
{
    char *now = fingerprint_of_check(home->path);
    assert_string_not_equal(before, now);
    free(now);
}

/* A file less, a file more, a file changed: each is another law. */
static void a_changed_home_has_a_fingerprint_of_its_own(void **state)
{
    (void)state;
    struct temporary_home home;
    home_make(&home);
    home_copy_all(&home, "rules");
    home_copy_all(&home, "jurisdictions");
    char *before = fingerprint_of_check(EAVEMARK_HOME_DIR),
         *copied = fingerprint_of_check(home.path);
    assert_string_equal(before, copied);
    home_write(&home, "rules/more.lua", "-- one more\n");
    assert_moved(before, &home);
    home_delete(&home, "rules/more.lua");
    append(&home, "rules/deck.lua", "-- touched\n");
    assert_moved(before, &home);
    free(before);
    free(copied);
    home_remove(&home);
}

/* The model code's figures lie in a folder: one more file of it counts though every other
 * is as packed. */
static void a_new_part_of_a_place_is_read(void **state)
{
    (void)state;
    struct temporary_home home;
    size_t n, m;
    bool packed;
    home_make(&home);
    home_copy_all(&home, "jurisdictions");
    char *before = written(home.path, "model/irc-2021", &n, &packed);
    home_write(&home, "jurisdictions/model/irc/new_part.lua",
               "figures { [\"deck.new_figure\"] = { 4, unit = \"in\", sense = \"at_least\", "
               "status = \"invented\", cite = \"1\" } }\n");
    char *after = written(home.path, "model/irc-2021", &m, &packed);
    assert_true(packed);
    assert_true(m > n);
    free(before);
    free(after);
    append(&home, "jurisdictions/model/irc/new_part.lua", "this is no Lua\n");
    struct arena arena = {0};
    struct sources sources = {0};
    struct problems problems = {0};
    assert_null(place_load(home.path, "model/irc-2021", &arena, &sources, &problems));
    assert_true(problems.count > 0);
    problems_free(&problems);
    arena_free(&arena);
    home_remove(&home);
}

/* Compiled code serves its own text alone: a rule file that is changed is run as it is. */
static void a_changed_rule_file_is_run_as_it_is(void **state)
{
    (void)state;
    struct temporary_home home;
    home_make(&home);
    home_copy_all(&home, "rules");
    home_copy_all(&home, "jurisdictions");
    append(&home, "rules/slope.lua", "error(\"seen\")\n");
    struct outcome_of_check outcome = check_in(home.path);
    assert_int_equal(outcome.status, EAVEMARK_BROKEN);
    assert_has(outcome.problems, "seen");
    outcome_free(&outcome);
    home_remove(&home);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(every_place_is_what_its_files_say),
        cmocka_unit_test(every_place_and_rule_file_was_made),
        cmocka_unit_test(every_field_is_what_its_file_says),
        cmocka_unit_test(the_fields_were_made),
        cmocka_unit_test(every_member_of_a_place_is_listed),
        cmocka_unit_test(files_of_no_law_are_hashed),
        cmocka_unit_test(a_law_has_the_fingerprint_of_its_files),
        cmocka_unit_test(a_changed_home_has_a_fingerprint_of_its_own),
        cmocka_unit_test(a_new_part_of_a_place_is_read),
        cmocka_unit_test(a_changed_rule_file_is_run_as_it_is),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
