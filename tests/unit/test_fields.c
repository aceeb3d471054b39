/* The field catalogue. */
#include "job/fields.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdio.h>
#include <string.h>

#include <cmocka.h>

#include "sample_fields.h"

static int start(void **state)
{
    static struct fields fields;
    sample_fields(&fields);
    *state = &fields;
    return 0;
}

static int stop(void **state)
{
    fields_free(*state);
    return 0;
}

static void assert_refused(struct fields *fields, const char *path, struct field spec,
                           const char *message)
{
    const char *why = NULL;
    assert_null(fields_add(fields, path, &spec, &why));
    assert_non_null(why);
    assert_string_equal(why, message);
}

static void both_spellings_of_a_path_are_found(void **state)
{
    struct fields *fields = *state;
    const struct field *pitch = fields_find(fields, "roof.slopes[].pitch");
    assert_non_null(pitch);
    assert_ptr_equal(pitch, fields_find(fields, "roof.slopes.pitch"));
    assert_string_equal(pitch->name, "pitch");
    assert_string_equal(pitch->path, "roof.slopes[].pitch");
    assert_string_equal(pitch->parent->path, "roof.slopes");
    assert_int_equal(pitch->stage, STAGE_PERMIT);
    assert_null(fields_find(fields, "roof.slopes[].pitch.more"));
    assert_null(fields_find(fields, "roof.slope"));
    assert_null(fields_find(fields, ""));
    assert_ptr_equal(fields_child(pitch->parent, "pitch"), pitch);
    assert_null(fields_child(pitch->parent, "pit"));
}

static void everything_is_copied(void **state)
{
    struct fields *fields = *state;
    char word[] = "soft", unit[] = "in";
    const char *choices[] = {word, "hard"};
    struct field *choice = sample_add(
        fields, "wood",
        (struct field){.type = FIELD_CHOICE, .choices = choices, .choice_count = 2});
    struct field *width = sample_add(fields, "width_in",
                                     (struct field){.type = FIELD_NUMBER, .unit = unit});
    word[0] = unit[0] = '?';
    choices[1] = NULL;
    assert_string_equal(choice->choices[0], "soft");
    assert_string_equal(choice->choices[1], "hard");
    assert_string_equal(width->unit, "in");
}

static void a_field_needs_its_parent(void **state)
{
    struct fields *fields = *state;
    const struct field yes_no = {.type = FIELD_YES_NO};
    assert_refused(fields, "roof.slops[].wet", yes_no,
                   "\"roof.slops[]\" is not declared; did you mean \"roof.slopes\"?");
    assert_refused(fields, "chimney.wet", yes_no, "\"chimney\" is not declared");
    assert_refused(fields, "roof.slopes.wet", yes_no,
                   "\"roof.slopes\" is a list: write \"roof.slopes[].\" before its fields");
    assert_refused(fields, "roof[].wet", yes_no,
                   "\"roof\" is a group: write \"roof.\" before its fields");
    assert_refused(fields, "date.wet", yes_no, "\"date\" is a date and holds no fields");
}

static void a_field_is_declared_once(void **state)
{
    struct fields *fields = *state;
    const struct field spec = {.type = FIELD_YES_NO, .file = "county.lua"};
    sample_add(fields, "wet", spec);
    assert_refused(fields, "wet", spec, "already declared in county.lua");
    assert_refused(fields, "roof", spec, "already declared");
}

static void a_name_is_a_plain_word(void **state)
{
    struct fields *fields = *state;
    static const char *const NOT[] = {"",       "1st",   "_x",          "a b", "a-b",
                                      "list[]", "roof.", "caf\xC3\xA9", "a/b"};
    for (size_t i = 0; i < sizeof(NOT) / sizeof(NOT[0]); i++) {
        const char *why = NULL;
        const struct field spec = {.type = FIELD_YES_NO};
        assert_null(fields_add(fields, NOT[i], &spec, &why));
        assert_non_null(strstr(why, "is not a name"));
    }
}

static void nesting_has_an_end(void **state)
{
    struct fields *fields = *state;
    char path[64] = "a";
    for (int depth = 1; depth < FIELDS_DEEPEST; depth++) {
        sample_add(fields, path, (struct field){.type = FIELD_GROUP});
        strcat(path, ".a");
    }
    sample_add(fields, path, (struct field){.type = FIELD_GROUP});
    strcat(path, ".a");
    assert_refused(fields, path, (struct field){.type = FIELD_GROUP},
                   "\"a.a.a.a.a.a.a.a.a\" is not a name: letters, digits and _, a letter first, "
                   "at most 8 parts");
}

static void a_unit_ends_the_name(void **state)
{
    struct fields *fields = *state;
    const struct field in = {.type = FIELD_NUMBER, .unit = "in"};
    assert_refused(fields, "width", in, "the unit is \"in\", so the name must end in \"_in\"");
    assert_refused(fields, "width_ft", in, "the unit is \"in\", so the name must end in \"_in\"");
    assert_refused(fields, "cabin", in, "the unit is \"in\", so the name must end in \"_in\"");
    assert_refused(fields, "nfa_sqin_per_ft", (struct field){.type = FIELD_NUMBER, .unit = "ft"},
                   "the unit is \"ft\", so the name must end in \"_ft\"");
    assert_refused(fields, "width_in", (struct field){.type = FIELD_NUMBER},
                   "the name ends in \"in\", but no unit is given");
    assert_refused(fields, "nails_in", (struct field){.type = FIELD_NUMBER, .unit = "nails"},
                   "the unit is \"nails\", so the name must end in \"_nails\"");
    assert_refused(fields, "wet", (struct field){.type = FIELD_YES_NO, .unit = "in"},
                   "only numbers have a unit");
    sample_add(fields, "nfa_sqin_per_ft",
               (struct field){.type = FIELD_NUMBER, .unit = "sqin_per_ft"});
    sample_add(fields, "per_shingle", (struct field){.type = FIELD_INTEGER, .unit = "nails"});
    sample_add(fields, "year_built", (struct field){.type = FIELD_INTEGER, .unit = "year"});
    sample_add(fields, "built_in", (struct field){.type = FIELD_YES_NO});
    sample_add(fields, "sag_furlong", (struct field){.type = FIELD_NUMBER, .unit = "furlong"});
}

static void a_range_makes_sense(void **state)
{
    struct fields *fields = *state;
    assert_refused(fields, "x", sample_range(FIELD_NUMBER, NULL, 2, 1),
                   "its range is empty: the least is over the most");
    assert_refused(fields, "x", sample_range(FIELD_NUMBER, NULL, 0, (double)INFINITY),
                   "its range is not finite");
    assert_refused(fields, "x", sample_range(FIELD_NUMBER, NULL, (double)NAN, 1),
                   "its range is not finite");
    assert_refused(fields, "x", sample_range(FIELD_INTEGER, NULL, 0.5, 2),
                   "its range must be of whole numbers");
    assert_refused(fields, "x", sample_range(FIELD_TEXT, NULL, -1, 2),
                   "its range is a length: whole numbers from 0");
    assert_refused(fields, "x", sample_range(FIELD_LIST, NULL, 0, 2.5),
                   "its range is a length: whole numbers from 0");
    assert_refused(fields, "x", sample_range(FIELD_YES_NO, NULL, 0, 1),
                   "a field of this type has no range");
    sample_add(fields, "x", sample_range(FIELD_NUMBER, NULL, 1, 1));
}

static void choices_are_given_where_they_belong(void **state)
{
    struct fields *fields = *state;
    const char *twice[] = {"a", "b", "a"}, *empty[] = {"a", ""};
    assert_refused(fields, "x", (struct field){.type = FIELD_CHOICE}, "a choice without choices");
    assert_refused(fields, "x", (struct field){.type = FIELD_CHOICES}, "a choice without choices");
    assert_refused(fields, "x",
                   (struct field){.type = FIELD_CHOICE, .choices = twice, .choice_count = 3},
                   "the choice \"a\" is given twice");
    assert_refused(fields, "x",
                   (struct field){.type = FIELD_CHOICE, .choices = empty, .choice_count = 2},
                   "a choice is empty");
    assert_refused(fields, "x",
                   (struct field){.type = FIELD_TEXT, .choices = twice, .choice_count = 2},
                   "only a choice has choices");
}

static void a_reference_refers_to_a_list(void **state)
{
    struct fields *fields = *state;
    assert_refused(fields, "x", (struct field){.type = FIELD_REFERENCE},
                   "a reference must say what it refers to");
    assert_refused(fields, "x", (struct field){.type = FIELD_REFERENCE, .refers = "roof"},
                   "refers to \"roof\", which is not a list");
    assert_refused(fields, "x", (struct field){.type = FIELD_YES_NO, .refers = "decks"},
                   "only a reference refers");
    const char *why = NULL;
    assert_null(fields_dangling(fields, &why));
    assert_null(why);
}

static void assert_dangling(struct fields *fields, const char *refers, const char *message)
{
    const char *why = NULL;
    struct field *x = sample_add(fields, "x",
                                 (struct field){.type = FIELD_REFERENCE, .refers = refers});
    assert_ptr_equal(fields_dangling(fields, &why), x);
    assert_string_equal(why, message);
}

static void a_list_never_declared_is_found_at_the_end(void **state)
{
    assert_dangling(*state, "attics", "refers to \"attics\", which is not declared");
}

static void a_list_inside_a_list_cannot_be_referred_to(void **state)
{
    sample_add(*state, "decks[].parts", (struct field){.type = FIELD_LIST});
    assert_dangling(*state, "decks.parts",
                    "refers to \"decks.parts\", which lies inside the list \"decks\"");
}

static void a_list_of_the_nameless_cannot_be_referred_to(void **state)
{
    sample_add(*state, "vents", (struct field){.type = FIELD_LIST});
    assert_dangling(*state, "vents", "refers to \"vents\", whose items have no text \"name\"");
}

/* Where the answer is found: as stated, else as its parent has it, else at the desk. */
static void an_answer_is_found_somewhere(void **state)
{
    struct fields *fields = *state;
    assert_refused(fields, "x", (struct field){.type = FIELD_YES_NO, .answer = "cellar"},
                   "answer \"cellar\" is not one of desk, wrapper, paper, department, roof, attic");
    sample_add(fields, "attics", (struct field){.type = FIELD_LIST, .answer = "attic"});
    assert_string_equal(
        sample_add(fields, "attics[].name", (struct field){.type = FIELD_TEXT})->answer, "attic");
    assert_string_equal(sample_add(fields, "attics[].label",
                                   (struct field){.type = FIELD_TEXT, .answer = "wrapper"})
                            ->answer,
                        "wrapper");
    assert_string_equal(sample_add(fields, "y", (struct field){.type = FIELD_TEXT})->answer,
                        "desk");
}

static void near_names_are_found(void **state)
{
    struct fields *fields = *state;
    const struct field *slopes = fields_find(fields, "roof.slopes");
    assert_string_equal(fields_nearest_child(slopes, "pich"), "pitch");
    assert_string_equal(fields_nearest_child(slopes, "Pitch"), "pitch");
    assert_null(fields_nearest_child(slopes, "temperature"));
    assert_null(fields_nearest_child(slopes, "x"));
    assert_string_equal(fields_nearest_path(fields, "roof.slops[].pich"), "roof.slopes[].pitch");
    assert_string_equal(fields_nearest_path(fields, "roof.pitch"), "roof.slopes[].pitch");
    assert_string_equal(fields_nearest_path(fields, "rof"), "roof");
    assert_null(fields_nearest_path(fields, "chimney.flue"));
}

static void namesakes_are_few_or_none(void **state)
{
    struct fields *fields = *state;
    const struct field *found[FIELDS_NAMESAKES];
    assert_int_equal(fields_namesakes(fields, "thicknes_in", found), 1);
    assert_string_equal(found[0]->path, "decks[].thickness_in");
    assert_int_equal(fields_namesakes(fields, "name", found), 2);
    for (int i = 0; i < 2; i++) {
        const char *path = i == 0 ? "vents" : "attics";
        char name[32];
        sample_add(fields, path, (struct field){.type = FIELD_LIST});
        snprintf(name, sizeof(name), "%s[].name", path);
        sample_add(fields, name, (struct field){.type = FIELD_TEXT});
    }
    assert_int_equal(fields_namesakes(fields, "name", found), 0);
}

static void short_words_get_no_wild_guess(void **state)
{
    (void)state;
    assert_true(fields_plausible("B", 0));
    assert_false(fields_plausible("E", 1));
    assert_false(fields_plausible("1B", 1));
    assert_true(fields_plausible("dek", 1));
    assert_false(fields_plausible("dek", 2));
    assert_false(fields_plausible("name", 2)); /* "date" */
    assert_true(fields_plausible("overlayment", 3));
    assert_false(fields_plausible("overlayment", 4));
}

static void types_have_words(void **state)
{
    (void)state;
    assert_int_equal(field_type_by_word("yes_no"), FIELD_YES_NO);
    assert_int_equal(field_type_by_word("numbers"), FIELD_NUMBERS);
    assert_int_equal(field_type_by_word("reference"), FIELD_REFERENCE);
    assert_int_equal(field_type_by_word("string"), -1);
    assert_string_equal(field_type_said(FIELD_YES_NO), "yes or no");
    assert_string_equal(field_type_said(FIELD_INTEGER), "whole number");
}

#define CASE(function) cmocka_unit_test_setup_teardown(function, start, stop)

int main(void)
{
    const struct CMUnitTest tests[] = {
        CASE(both_spellings_of_a_path_are_found),
        CASE(everything_is_copied),
        CASE(a_field_needs_its_parent),
        CASE(a_field_is_declared_once),
        CASE(a_name_is_a_plain_word),
        CASE(nesting_has_an_end),
        CASE(a_unit_ends_the_name),
        CASE(a_range_makes_sense),
        CASE(choices_are_given_where_they_belong),
        CASE(a_reference_refers_to_a_list),
        CASE(a_list_never_declared_is_found_at_the_end),
        CASE(a_list_inside_a_list_cannot_be_referred_to),
        CASE(a_list_of_the_nameless_cannot_be_referred_to),
        CASE(an_answer_is_found_somewhere),
        CASE(near_names_are_found),
        CASE(namesakes_are_few_or_none),
        CASE(short_words_get_no_wild_guess),
        CASE(types_have_words),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
