/* The strict reader: what it refuses, where it says so, and in which words.
 * RFC 8259 is the grammar, RFC 6901 the pointers. */
#include "job/json.h"

#include "job/origin.h"
#include "job/path.h"
#include "job/spoken.h"
#include "job/tree.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>
#include <unistd.h>

#include <cmocka.h>

static void assert_says_n(const char *text, size_t length, const char *message)
{
    struct problems problems = {0};
    struct text said = TEXT_EMPTY;
    cJSON *job = NULL;
    const int status = json_read(&job, text, length, "j", &problems);
    problems_write(&problems, &said);
    assert_string_equal(text_string(&said), message);
    assert_int_equal(status, -1);
    assert_null(job);
    text_free(&said);
    problems_free(&problems);
}

static void assert_says(const char *text, const char *message)
{
    assert_says_n(text, strlen(text), message);
}

/* The job itself, to be deleted. */
static cJSON *read_n(const char *text, size_t length)
{
    struct problems problems = {0};
    cJSON *job = NULL;
    const int status = json_read(&job, text, length, "j", &problems);
    if (status != 0)
        fail_msg("%.60s: %s", text, problems.first == NULL ? "?" : problems.first->message);
    assert_int_equal(problems.count, 0);
    problems_free(&problems);
    assert_non_null(job);
    return job;
}

static cJSON *read_text(const char *text)
{
    return read_n(text, strlen(text));
}

static void a_sound_job_is_read(void **state)
{
    (void)state;
    cJSON *job = read_text(" {\"a\": [1, -2.5e1, true, false, null,"
                           " \"x\\n\\u00e9\\ud83d\\ude00\"],\r\n"
                           "\t\"b\": {\"a\": {}}, \"c\": []} \n");
    const cJSON *a = cJSON_GetObjectItemCaseSensitive(job, "a");
    assert_int_equal(cJSON_GetArraySize(a), 6);
    assert_true(cJSON_GetArrayItem(a, 1)->valuedouble == -25);
    assert_string_equal(cJSON_GetArrayItem(a, 5)->valuestring, "x\n\xC3\xA9\xF0\x9F\x98\x80");
    cJSON_Delete(job);
}

static void assert_same_text(const char *a, const char *b)
{
    assert_int_equal(a == NULL, b == NULL);
    if (a != NULL)
        assert_string_equal(a, b);
}

/* Node by node, with the links that cJSON's own calls go by. */
static void assert_same_tree(const cJSON *a, const cJSON *b)
{
    assert_int_equal(a->type & 0xFF, b->type & 0xFF);
    assert_same_text(a->string, b->string);
    assert_same_text(a->valuestring, b->valuestring);
    assert_memory_equal(&a->valuedouble, &b->valuedouble, sizeof(a->valuedouble));
    assert_int_equal(a->valueint, b->valueint);
    assert_int_equal(a->child == NULL, b->child == NULL);
    const cJSON *x = a->child, *y = b->child, *last = x;
    for (; x != NULL && y != NULL; last = x, x = x->next, y = y->next) {
        assert_same_tree(x, y);
        if (x != a->child)
            assert_ptr_equal(x->prev, last);
    }
    assert_null(x);
    assert_null(y);
    if (a->child != NULL)
        assert_ptr_equal(a->child->prev, last);
}

static void the_tree_is_as_cjson_builds_it(void **state)
{
    (void)state;
    static const char *const TEXTS[] = {
        "{}",
        " {\"a\" : [ ] , \"b\":{\"c\":[[],{}]}}\n",
        "{\"a\":[true,false,null,\"\",\"x\"],\"\":0,\"t\":true}",
        "{\"a\":\"\\\"\\\\\\/\\b\\f\\n\\r\\t\\u00e9\\u20AC\\ud83d\\ude00 \xC3\xA9\",\"\\u0061b\\t\":1}",
        "{\"a\":\"longer than eight bytes \xC3\xA9 and then \\\" again\"}",
        "{\"a\":[0,1,-1,10,0.1,0.3,59.5,12.25,-0.07,15.46875,999999999999999,9007199254740991,"
        "2147483647,2147483648,-2147483648,-2147483649]}",
        "{\"a\":[0.1234567890123456,123456789012345.6,0.000000000000001,1e3,1E-2,1.5e+10,"
        "2.2250738585072014e-308,0.30000000000000004,4.35,8.41,1.005]}",
    };
    for (size_t i = 0; i < sizeof(TEXTS) / sizeof(TEXTS[0]); i++) {
        cJSON *expected = cJSON_Parse(TEXTS[i]), *own = read_text(TEXTS[i]), *lent = NULL;
        struct arena texts = {0};
        struct problems problems = {0};
        assert_non_null(expected);
        assert_same_tree(own, expected);
        assert_int_equal(json_read_into(&lent, &texts, TEXTS[i], strlen(TEXTS[i]), "j", &problems),
                         0);
        assert_same_tree(lent, expected);
        cJSON_Delete(expected);
        cJSON_Delete(own);
        tree_free(lent);
        arena_free(&texts);
    }
}

/* What is put into such a tree is cJSON's own, and freed with it; what it takes the place of is
 * the arena's. A copy is no part of the arena's. */
static void a_tree_in_an_arena_may_be_changed(void **state)
{
    (void)state;
    static const char TEXT[] = "{\"a\":\"one\",\"b\":{\"c\":\"two\"},\"e\":[1],\"f\":2}";
    struct arena arena = {0};
    struct problems problems = {0};
    cJSON *job = NULL;
    assert_int_equal(json_read_into(&job, &arena, TEXT, strlen(TEXT), "j", &problems), 0);
    cJSON *copy = cJSON_Duplicate(job->child, true);
    assert_false(tree_is_of_arena(copy));
    assert_true(json_set(job, "b", copy));
    assert_true(json_set(job, "d", cJSON_Duplicate(job->child, true)));
    assert_true(path_set(job, "/a", cJSON_CreateString("three")));
    tree_drop(job, "e");
    tree_drop(job, "nothing");
    char *written = cJSON_PrintUnformatted(job);
    assert_string_equal(written, "{\"a\":\"three\",\"b\":\"one\",\"f\":2,\"d\":\"one\"}");
    cJSON_free(written);
    tree_free(job);
    arena_free(&arena);
}

/* What the copy is made of may change and go before it. */
static void a_tree_is_copied_whole(void **state)
{
    (void)state;
    static const char TEXT[] = "{\"a\":[1,2.5,{\"b\":null}],\"t\":true,\"s\":\"\u00e9\"}";
    struct arena arena = {0};
    cJSON *job = cJSON_Parse(TEXT), *same = cJSON_Parse(TEXT);
    origin_mark(job->child, ORIGIN_SHOP);
    cJSON *copy = tree_copy(&arena, job);
    assert_true(tree_is_of_arena(copy));
    assert_int_equal(origin_of(copy->child->child), ORIGIN_SHOP);
    cJSON_Delete(job);
    assert_same_tree(copy, same);
    tree_free(copy);
    cJSON_Delete(same);
    arena_free(&arena);
}

/* A catalogue of few fields; to be freed. */
static struct fields few_fields(void)
{
    static const struct {
        const char *path;
        struct field spec;
    } FEW[] = {
        {"job", {.type = FIELD_TEXT}},
        {"steep", {.type = FIELD_YES_NO}},
        {"height_ft", {.type = FIELD_NUMBER, .unit = "ft"}},
        {"gaps_in", {.type = FIELD_NUMBERS, .unit = "in"}},
        {"roof", {.type = FIELD_GROUP}},
        {"roof.ridge_ft", {.type = FIELD_NUMBER, .unit = "ft"}},
        {"roof.planes", {.type = FIELD_LIST}},
        {"roof.planes[].name", {.type = FIELD_TEXT}},
        {"roof.planes[].run_ft", {.type = FIELD_NUMBER, .unit = "ft"}},
    };
    struct fields fields;
    const char *why = NULL;
    assert_int_equal(fields_start(&fields), 0);
    for (size_t i = 0; i < sizeof(FEW) / sizeof(FEW[0]); i++)
        if (fields_add(&fields, FEW[i].path, &FEW[i].spec, &why) == NULL)
            fail_msg("%s: %s", FEW[i].path, why);
    return fields;
}

static void assert_read_alike(const char *text, size_t length, const struct fields *likely)
{
    struct arena arena = {0};
    struct problems problems = {0}, expected = {0};
    struct text said = TEXT_EMPTY, should = TEXT_EMPTY;
    cJSON *job = NULL, *own = NULL;
    const int status = json_read(&own, text, length, "j", &expected);
    assert_int_equal(json_read_likely(&job, likely, &arena, text, length, "j", &problems), status);
    if (status == 0)
        assert_same_tree(job, own);
    problems_write(&problems, &said);
    problems_write(&expected, &should);
    assert_string_equal(text_string(&said), text_string(&should));
    text_free(&said);
    text_free(&should);
    problems_free(&problems);
    problems_free(&expected);
    cJSON_Delete(own);
    tree_free(job);
    arena_free(&arena);
}

/* Whole, and cut short anywhere. */
static void a_likely_catalogue_changes_nothing_that_is_read(void **state)
{
    (void)state;
    static const char *const TEXTS[] = {
        ("{\"job\":\"one\",\"steep\":true,\"height_ft\":-12.5,\"gaps_in\":[0.125,1,\"1/8\"],"
         "\"roof\":{\"ridge_ft\":0.0000000000000001,\"planes\":[{\"name\":\"main\",\"run_ft\":15},"
         "{\"run_ft\":1e2,\"name\":\"porch, over eight bytes\"},null,[{\"name\":\"deep\"}]]}}"),
        ("{ \"steep\" : false, \"roof\": {\"planes\": [], \"ridge_ft\": 3},\n\t\"job\": null, \"gap\": 1,"
         " \"height_ft\": {\"roof\": {}},\"gaps_in\":{}}\n"),
        "{\"job\":\"a \\\"word\\\" \u00e9 \\u00e9\",\"\":0,\"jo\":1,\"jobs\":2,\"steep\":\"no\"}",
        "{\"roof\":[{\"ridge_ft\":-0},{\"ridge_ft\":12345678901234567}],\"\\u006aob\":1}",
        "{\"\\u006aob\":1,\"steep\":true,\n\"job\":2}",
        "{\"job\":1,\n\"roof\":{\"planes\":[{\"name\":\"a\",\n\"name\":\"b\",\"other\":1,\"other\":2}]},\"job\":3}",
        "{\"job\":\"\x01\",\"height_ft\":01,\"steep\":tru,\"gaps_in\":[1,]}",
        "{\"steep\":truex}",
        "{\"steep\":nul,\"job\":\"\xFF\",\"height_ft\":1.}",
        "{\"height_ft\":9007199254740993,\"job\":\"\\ud800\",\"roof\":{\"ridge_ft\":1 \"planes\":[]}}",
        "{\"job\"=1}",
        "{\"job\":\"a\";\"steep\":true}",
    };
    struct fields few = few_fields();
    for (size_t i = 0; i < sizeof(TEXTS) / sizeof(TEXTS[0]); i++)
        for (size_t length = strlen(TEXTS[i]); length > 0; length--)
            assert_read_alike(TEXTS[i], length, &few);
    fields_free(&few);
}

/* As fields_child_after finds them. */
static void assert_noted(const cJSON *object, const struct field *parent, size_t *count)
{
    for (const cJSON *node = object->child; node != NULL; node = node->next) {
        const struct tree_node *noted = (const struct tree_node *)(const void *)node;
        const struct field *field = node->string == NULL ? parent
                                                         : fields_child(parent, node->string);
        if (node->string != NULL) {
            assert_ptr_equal(noted->parent, parent);
            assert_ptr_equal(noted->field, field);
            ++*count;
        }
        if (field != NULL)
            assert_noted(node, field, count);
    }
}

static void members_of_a_likely_catalogue_are_noted(void **state)
{
    (void)state;
    static const char TEXT[] =
        "{\"steep\":true,\"gaps_in\":[1,2],\"job\":\"j\",\"roof\":{\"pitch\":1,"
        "\"planes\":[{\"name\":\"a\",\"run_ft\":2},{\"run_ft\":3}]}}";
    struct arena arena = {0};
    struct problems problems = {0};
    struct fields few = few_fields(), other = few_fields();
    cJSON *job = NULL;
    size_t count = 0;
    assert_int_equal(json_read_likely(&job, &few, &arena, TEXT, strlen(TEXT), "j", &problems), 0);
    assert_noted(job, few.root, &count);
    assert_int_equal(count, 9);
    assert_true(tree_all_noted(job, &few));
    assert_false(tree_all_noted(job, &other));
    /* Another catalogue than was likely notes its own. */
    spoken_settle(job, &other);
    count = 0;
    assert_noted(job, other.root, &count);
    tree_free(job);
    arena_free(&arena);
    fields_free(&few);
    fields_free(&other);
}

/* Whether its members were noted by the field's own catalogue, by another or by none. */
static void a_member_is_found_by_its_field(void **state)
{
    (void)state;
    static const char TEXT[] =
        "{\"job\":\"j\",\"roof\":{\"ridge_ft\":2,\"pitch\":1},\"gaps_in\":[1]}";
    struct fields few = few_fields(), other = few_fields();
    const struct fields *const likely[] = {&few, &other, NULL};
    const struct field *roof = fields_find(&few, "roof"), *steep = fields_find(&few, "steep");
    const struct field *ridge = fields_find(&few, "roof.ridge_ft");
    for (size_t i = 0; i < sizeof(likely) / sizeof(likely[0]); i++) {
        struct arena arena = {0};
        struct problems problems = {0};
        cJSON *job = NULL;
        assert_int_equal(
            json_read_likely(&job, likely[i], &arena, TEXT, strlen(TEXT), "j", &problems), 0);
        assert_ptr_equal(tree_member(job, roof), job->child->next);
        assert_ptr_equal(tree_at(job, ridge), job->child->next->child);
        assert_null(tree_member(job, steep));
        assert_null(tree_at(job, fields_find(&few, "roof.planes")));
        assert_null(tree_member(job->child, ridge));
        assert_null(tree_member(job->child->next->next, ridge));
        assert_null(tree_member(NULL, ridge));
        /* What is put into it is found as well. */
        assert_true(json_set(job, "steep", cJSON_CreateTrue()));
        assert_ptr_equal(tree_member(job, steep), job->child->prev);
        tree_free(job);
        arena_free(&arena);
    }
    fields_free(&few);
    fields_free(&other);
}

/* A list of numbers is one fact; lists and groups of facts are none themselves, nor is null. */
static void facts_are_counted_by_their_origin(void **state)
{
    (void)state;
    cJSON *job = read_text(
        "{\"a\":1,\"b\":null,\"c\":[1,2],\"d\":[],\"e\":{},\"f\":{\"g\":true,\"h\":\"\"},"
        "\"i\":[{\"j\":[\"x\"]},{},{\"k\":0}]}");
    size_t counts[ORIGIN_COUNT] = {0};
    origin_mark(cJSON_GetObjectItem(job, "f"), ORIGIN_SHOP);
    origin_mark(cJSON_GetObjectItem(job, "c"), ORIGIN_PLACE);
    origin_count(job, counts);
    assert_int_equal(counts[ORIGIN_JOB], 4);
    assert_int_equal(counts[ORIGIN_SHOP], 2);
    assert_int_equal(counts[ORIGIN_PLACE], 1);
    cJSON_Delete(job);
}

/* Wherever one stands, the likely catalogue does not hide it. */
static void a_spoken_figure_is_settled_whatever_is_likely(void **state)
{
    (void)state;
    static const char *const TEXTS[] = {
        "{\"height_ft\":\"12 ft\"}",
        "{\"height_ft\":\"\\u0031\\u0032 ft\"}",
        "{\"gaps_in\":[\"12 in\"]}",
        "{\"roof\":{\"ridge_ft\":\"12 ft\"}}",
        "{\"roof\":{\"planes\":[{\"run_ft\":\"12 ft\"}]}}",
        "{\"roof\":{\"planes\":[{\"r\\u0075n_ft\":\"12 ft\"}]}}",
    };
    struct fields few = few_fields();
    for (size_t i = 0; i < sizeof(TEXTS) / sizeof(TEXTS[0]); i++) {
        struct arena arena = {0};
        struct problems problems = {0};
        cJSON *job = NULL;
        assert_int_equal(
            json_read_likely(&job, &few, &arena, TEXTS[i], strlen(TEXTS[i]), "j", &problems), 0);
        assert_false(tree_all_noted(job, &few));
        spoken_settle(job, &few);
        const cJSON *node = job;
        while (node->child != NULL)
            node = node->child;
        assert_true(cJSON_IsNumber(node));
        assert_true(node->valuedouble == 12);
        tree_free(job);
        arena_free(&arena);
    }
    fields_free(&few);
}

/* More than a scan keeps apart: they are looked up after it. */
static void an_object_may_have_very_many_fields(void **state)
{
    (void)state;
    static const char TEXT[] = "{\"flag_299\":true,\"height_ft\":\"12 ft\",\"flag_0\":true}";
    struct fields few = few_fields();
    struct arena arena = {0};
    struct problems problems = {0};
    cJSON *job = NULL;
    for (int i = 0; i < 300; i++) {
        char path[16];
        const char *why = NULL;
        const struct field flag = {.type = FIELD_YES_NO};
        snprintf(path, sizeof(path), "flag_%d", i);
        assert_non_null(fields_add(&few, path, &flag, &why));
    }
    static const char TWICE[] = "{\"flag_299\":true,\"flag_299\":true}";
    assert_read_alike(TWICE, strlen(TWICE), &few);
    assert_int_equal(json_read_likely(&job, &few, &arena, TEXT, strlen(TEXT), "j", &problems), 0);
    assert_false(tree_all_noted(job, &few));
    spoken_settle(job, &few);
    assert_true(job->child->next->valuedouble == 12);
    size_t count = 0;
    assert_noted(job, few.root, &count);
    assert_int_equal(count, 3);
    tree_free(job);
    arena_free(&arena);
    fields_free(&few);
}

/* A number takes the place of its words, and stays the arena's. */
static void a_spoken_figure_in_an_arena_is_settled(void **state)
{
    (void)state;
    static const char TEXT[] = "{\"length_ft\":\"59 ft 6 in\",\"deep\":{\"length_ft\":\"2\"}}";
    struct arena arena = {0};
    struct problems problems = {0};
    struct fields fields;
    const char *why = NULL;
    cJSON *job = NULL;
    assert_int_equal(fields_start(&fields), 0);
    const struct field number = {.type = FIELD_NUMBER, .unit = "ft"}, group = {.type = FIELD_GROUP};
    const struct field *top = fields_add(&fields, "length_ft", &number, &why);
    const struct field *deep = fields_add(&fields, "deep", &group, &why);
    const struct field *below = fields_add(&fields, "deep.length_ft", &number, &why);
    assert_non_null(below);
    assert_int_equal(json_read_into(&job, &arena, TEXT, strlen(TEXT), "j", &problems), 0);
    spoken_settle(job, &fields);
    assert_true(job->child->valuedouble == 59.5);
    /* Each is known by the field of its own group. */
    assert_ptr_equal(tree_field(job->child, fields.root, NULL), top);
    assert_ptr_equal(tree_field(job->child, deep, NULL), below);
    assert_ptr_equal(tree_field(job->child->next->child, deep, NULL), below);
    tree_free(job);
    arena_free(&arena);
    fields_free(&fields);
}

static void no_terminator_is_needed(void **state)
{
    (void)state;
    char *text = malloc(2);
    assert_non_null(text);
    memcpy(text, "{}", 2);
    cJSON_Delete(read_n(text, 2));
    free(text);
}

static void nothing_is_no_job(void **state)
{
    (void)state;
    assert_says("", "j:1:1: holds no JSON; a job is an object { ... }\n");
    assert_says("  \n\t ", "j:2:3: holds no JSON; a job is an object { ... }\n");
}

static void the_top_is_an_object(void **state)
{
    (void)state;
    assert_says("[1]", "j:1:1: a job is an object { ... }, not a list\n");
    assert_says("\n 5", "j:2:2: a job is an object { ... }, not a single value\n");
    assert_says("\"job\"", "j:1:1: a job is an object { ... }, not a single value\n");
    assert_says("null", "j:1:1: a job is an object { ... }, not a single value\n");
}

static void slips_of_structure_say_what_was_expected(void **state)
{
    (void)state;
    static const struct {
        const char *text, *message;
    } CASES[] = {
        {"{\"a\" 1}", "j:1:6: expected \":\", found \"1\"\n"},
        {"{\"a\": 1 \"b\": 2}", "j:1:9: expected \",\" or \"}\", found a text\n"},
        {"{\"a\": [1 2]}", "j:1:10: expected \",\" or \"]\", found \"2\"\n"},
        {"{\"a\": 1,}", "j:1:9: a comma stands before \"}\"; take it out\n"},
        {"{\"a\": [1,]}", "j:1:10: a comma stands before \"]\"; take it out\n"},
        {"{\"a\": [1}", "j:1:9: expected \",\" or \"]\", found \"}\"\n"},
        {"{\"a\": }", "j:1:7: expected a value, found \"}\"\n"},
        {"{,}", "j:1:2: expected a name in double quotes or \"}\", found \",\"\n"},
        {"{a: 1}", "j:1:2: expected a name in double quotes or \"}\", found \"a\"\n"},
        {"{\"a\": 1, b: 2}", "j:1:10: expected a name in double quotes, found \"b\"\n"},
        {"{'a': 1}", "j:1:2: expected a name in double quotes or \"}\", found \"'\"; "
                     "texts stand in double quotes\n"},
        {"{ // eaves\n}", "j:1:3: expected a name in double quotes or \"}\", found \"/\"; "
                          "JSON has no comments\n"},
        {"{\"a\":\n  [,1]}", "j:2:4: expected a value or \"]\", found \",\"\n"},
        {"{} {}", "j:1:4: expected nothing after the end of the job, found \"{\"\n"},
        {"{}\n\nthe end", "j:3:1: expected nothing after the end of the job, found \"the\"\n"},
        {"}", "j:1:1: expected a value, found \"}\"\n"},
        {"{\"a\": \"\xC3\xA9\xC3\xA9\" x}", "j:1:12: expected \",\" or \"}\", found \"x\"\n"},
        {"{\"a\": \xC3\xA9}", "j:1:7: expected a value, found \"\xC3\xA9\"\n"},
    };
    for (size_t i = 0; i < sizeof(CASES) / sizeof(CASES[0]); i++)
        assert_says(CASES[i].text, CASES[i].message);
}

static void a_text_cut_short_says_what_is_open(void **state)
{
    (void)state;
    assert_says("{\n\"a\": [1,\n2", "j:3:2: expected \",\" or \"]\", but the text ends here; "
                                    "the list begun on line 2 is open\n");
    assert_says("{", "j:1:2: expected a name in double quotes or \"}\", but the text ends here; "
                     "the object begun on line 1 is open\n");
    assert_says("{\"a\": \"main", "j:1:7: this text is not closed before the end of the file\n");
    assert_says("{\"a\": \"main\n\"}",
                "j:1:7: this text is not closed before the end of the line\n");
    assert_says("{\"a\": \"main\\", "j:1:7: this text is not closed before the end of the file\n");
    assert_says("{\"a\": \"\\u12", "j:1:8: \\u needs four hexadecimal digits\n"
                                   "j:1:7: this text is not closed before the end of the file\n");
}

/* Every cut of a sound job is refused, and reads nothing past its end (the
 * copy has exactly that size, which the sanitizers watch). */
static void every_cut_is_refused(void **state)
{
    (void)state;
    static const char JOB[] =
        "{\"a\":[1.5e3,true,{\"b\":\"\\ud83d\\ude00\\n\xC3\xA9\"}],\"c\":null}";
    for (size_t length = 0; length < sizeof(JOB) - 1; length++) {
        char *cut = malloc(length + 1);
        assert_non_null(cut);
        char *exact = length == 0 ? cut : realloc(cut, length);
        memcpy(exact, JOB, length);
        struct problems problems = {0};
        cJSON *job = NULL;
        assert_int_equal(json_read(&job, exact, length, "j", &problems), -1);
        assert_true(problems.count > 0);
        problems_free(&problems);
        free(exact);
    }
    cJSON_Delete(read_text(JOB));
}

static void repeated_keys_are_refused_at_any_depth(void **state)
{
    (void)state;
    assert_says("{\"a\": 1,\n\"b\": 2,\n\"a\": 3}",
                "j: /a: given twice, on line 1 and again on line 3; keep one\n");
    assert_says("{\"r\": {\"s\": [{}, {\"p\": 1, \"p\": 2}]},\n\"r\": 1, \"r\": 2}",
                "j: /r/s/1/p: given twice, on line 1 and again on line 1; keep one\n"
                "j: /r: given twice, on line 1 and again on line 2; keep one\n"
                "j: /r: given twice, on line 1 and again on line 2; keep one\n");
    assert_says("{\"x/y\": {\"m~n\": 1, \"m~n\": 2}}",
                "j: /x~1y/m~0n: given twice, on line 1 and again on line 1; keep one\n");
    assert_says("{\"\": 1, \"\": 2}",
                "j: /: given twice, on line 1 and again on line 1; keep one\n");
    cJSON_Delete(read_text("{\"a\": {\"a\": {\"a\": 1}}, \"A\": 1,"
                           " \"b\": [{\"a\": 1}, {\"a\": 1}]}"));
}

static void keys_equal_once_decoded_are_repeated(void **state)
{
    (void)state;
    assert_says("{\"job\": 1, \"\\u006aob\": 2}",
                "j: /job: given twice, on line 1 and again on line 1; keep one\n");
    assert_says("{\"\\ud83d\\ude00\": 1, \"\xF0\x9F\x98\x80\": 2}",
                "j: /\xF0\x9F\x98\x80: given twice, on line 1 and again on line 1; keep one\n");
    assert_says("{\"a\\/\\t\": 1, \"a/\\u0009\": 2}",
                "j: /a~1\\x09: given twice, on line 1 and again on line 1; keep one\n");
    assert_says("{\"\\u20ac\\u00e9\": 1, \"\xE2\x82\xAC\xC3\xA9\": 2}",
                "j: /\xE2\x82\xAC\xC3\xA9: given twice, on line 1 and again on line 1; keep one\n");
}

/* One object of this many keys "k0" ...; the last is "k0" again if asked. */
static struct text many_keys(int count, bool again)
{
    struct text text = TEXT_EMPTY;
    text_add(&text, "{");
    for (int i = 0; i < count; i++)
        text_addf(&text, "\"k%d\":%d,\n", i, i);
    text_add(&text, again ? "\"k0\":0}" : "\"last\":0}");
    assert_false(text.failed);
    return text;
}

static void a_hundred_thousand_keys_are_quick(void **state)
{
    (void)state;
    for (int again = 0; again < 2; again++) {
        struct text text = many_keys(100000, again == 1);
        struct problems problems = {0};
        cJSON *job = NULL;
        const clock_t before = clock();
        const int status = json_read(&job, text.bytes, text.length, "j", &problems);
        /* A quadratic search takes 5,000,000,000 comparisons: a minute, not
         * the tenth of a second seen; ten leave room for valgrind. */
        assert_true((double)(clock() - before) / CLOCKS_PER_SEC < 10);
        assert_int_equal(status, again == 1 ? -1 : 0);
        if (again == 1)
            assert_string_equal(problems.first->message,
                                "given twice, on line 1 and again on line 100001; keep one");
        cJSON_Delete(job);
        problems_free(&problems);
        text_free(&text);
    }
}

static void bytes_that_are_not_utf8_are_all_shown(void **state)
{
    (void)state;
    assert_says("{\"a\": \"\xC0\xAF\",\n \"b\xFF\": \"x\xE2\x82y\"}",
                "j:1:8: byte 0xC0 is not UTF-8\n"
                "j:1:9: byte 0xAF is not UTF-8\n"
                "j:2:4: byte 0xFF is not UTF-8\n"
                "j:2:10: byte 0xE2 is not UTF-8\n"
                "j:2:11: byte 0x82 is not UTF-8\n");
    assert_says("{\"a\": \"\xED\xA0\x80\"}", "j:1:8: byte 0xED is not UTF-8\n"
                                             "j:1:9: byte 0xA0 is not UTF-8\n"
                                             "j:1:10: byte 0x80 is not UTF-8\n");
    assert_says("{\xFF}", "j:1:2: expected a name in double quotes or \"}\", found \"\\xff\"\n");
}

static void control_characters_are_refused(void **state)
{
    (void)state;
    assert_says("{\"a\": \"x\ty\x1B\"}",
                "j:1:9: control character 0x09 in a text; write it as \\u0009\n"
                "j:1:11: control character 0x1B in a text; write it as \\u001b\n");
}

static void nul_bytes_are_refused(void **state)
{
    (void)state;
    assert_says_n("{\"a\": \"x\0y\"}", 12,
                  "j:1:9: control character 0x00 in a text; write it as \\u0000\n");
    assert_says_n("{\0}", 3,
                  "j:1:2: expected a name in double quotes or \"}\", found a NUL byte\n");
    assert_says_n("{}\0", 3,
                  "j:1:3: expected nothing after the end of the job, found a NUL byte\n");
}

static void escapes_are_whole(void **state)
{
    (void)state;
    assert_says("{\"a\": \"\\q\"}", "j:1:8: a backslash in a text must be written twice\n");
    assert_says("{\"a\": \"C:\\temp\\x\"}",
                "j:1:15: a backslash in a text must be written twice\n");
    assert_says("{\"a\": \"\\u00g0\"}", "j:1:8: \\u needs four hexadecimal digits\n");
    assert_says("{\"a\": \"x\\u0000y\"}", "j:1:9: \\u0000 is not allowed in a text\n");
    assert_says("{\"a\\u0000\": 1}", "j:1:4: \\u0000 is not allowed in a text\n");
    assert_says("{\"a\": \"\\ud83d\"}",
                "j:1:8: \\ud83d is half of a character; its other half is missing\n");
    assert_says("{\"a\": \"\\ude00x\"}",
                "j:1:8: \\ude00 is half of a character; its other half is missing\n");
    assert_says("{\"a\": \"\\ud83d\\u0041\"}",
                "j:1:8: \\ud83d is half of a character; its other half is missing\n");
    assert_says("{\"a\": \"\\ud83d\\ud83d\\ude00\"}",
                "j:1:8: \\ud83d is half of a character; its other half is missing\n");
}

static void byte_order_marks_are_refused(void **state)
{
    (void)state;
    assert_says("\xEF\xBB\xBF{}",
                "j:1:1: begins with a byte order mark; save it as UTF-8 without one\n");
    assert_says_n("\xFF\xFE{\0}\0", 6, "j:1:1: is UTF-16; save it as UTF-8\n");
}

static void numbers_follow_the_grammar(void **state)
{
    (void)state;
    static const char *const GOOD[] = {"0",
                                       "-1",
                                       "10",
                                       "0.5",
                                       "1.50",
                                       "1e3",
                                       "1E+3",
                                       "1.5e-3",
                                       "9007199254740991",
                                       "-9007199254740991",
                                       "2.5e-300"};
    static const char *const BAD[] = {"01",    "1.",    ".5",  "+1",   "-",     "1e",
                                      "1e+",   "1.e3",  "--1", "0x10", "1_000", "-01",
                                      "1.2.3", "1e5.5", "00",  "-.5",  "1-2"};
    char text[100], message[200];
    for (size_t i = 0; i < sizeof(GOOD) / sizeof(GOOD[0]); i++) {
        snprintf(text, sizeof(text), "{\"a\":%s}", GOOD[i]);
        cJSON *job = read_text(text);
        assert_true(job->child->valuedouble == strtod(GOOD[i], NULL));
        cJSON_Delete(job);
    }
    for (size_t i = 0; i < sizeof(BAD) / sizeof(BAD[0]); i++) {
        snprintf(text, sizeof(text), "{\"a\": %s}", BAD[i]);
        snprintf(message, sizeof(message), "j:1:7: %s is not a value%s", BAD[i],
                 strpbrk(BAD[i], "0123456789") == NULL
                     ? "; texts stand in double quotes\n"
                     : "; write numbers as 5, 0.5 or -2, and dates and slopes in double quotes\n");
        assert_says(text, message);
    }
}

static void numbers_that_cannot_be_held_are_refused(void **state)
{
    (void)state;
    assert_says("{\"a\": 1e999, \"b\": -1e999}",
                "j:1:7: 1e999 is too large; numbers go up to 9007199254740991\n"
                "j:1:19: -1e999 is too large; numbers go up to 9007199254740991\n");
    /* 2^53 + 1 rounds to 2^53, so 2^53 itself is refused too. */
    assert_says("{\"a\": 9007199254740993}",
                "j:1:7: 9007199254740993 is too large; numbers go up to 9007199254740991\n");
    assert_says("{\"a\": 9007199254740992}",
                "j:1:7: 9007199254740992 is too large; numbers go up to 9007199254740991\n");
    assert_says("{\"a\": 1e-400}", "j:1:7: 1e-400 is too small to be told from 0\n");
    assert_says("{\"a\": 4e-320}", "j:1:7: 4e-320 is too small to be told from 0\n");
    assert_says("{\"a\": 0.00000000000000000000000000000000000000000000000000000000000000001}",
                "j:1:7: 0.000000000000000000... is not a value; "
                "numbers have at most 63 characters\n");
    cJSON_Delete(read_text("{\"a\": 0e999, \"b\": 0.0, \"c\": 0e-999}"));
}

/* cJSON holds 63 characters of a number: in one of just that length the last
 * still counts, here by a factor of a thousand million. */
static void the_longest_number_is_read_whole(void **state)
{
    (void)state;
    static const char NUMBER[] = "0.00000000000000000000000000000000000000000000000000000000005e9";
    assert_int_equal(strlen(NUMBER), 63);
    char text[100];
    snprintf(text, sizeof(text), "{\"a\":%s}", NUMBER);
    cJSON *job = read_text(text);
    assert_true(job->child->valuedouble == strtod(NUMBER, NULL));
    cJSON_Delete(job);
}

static void negative_zero_is_zero(void **state)
{
    (void)state;
    cJSON *job = read_text("{\"a\": -0, \"b\": [{\"c\": -0.0e5}]}");
    const cJSON *c = cJSON_GetObjectItemCaseSensitive(job, "b")->child->child;
    assert_false(signbit(job->child->valuedouble));
    assert_false(signbit(c->valuedouble));
    cJSON_Delete(job);
}

static void words_have_one_spelling(void **state)
{
    (void)state;
    assert_says("{\"a\": True, \"b\": NULL, \"c\": yes, \"d\": tear-off, \"e\": 2026-03-01}",
                "j:1:7: True is not a value; write true\n"
                "j:1:18: NULL is not a value; write null\n"
                "j:1:29: yes is not a value; write true\n"
                "j:1:39: tear-off is not a value; texts stand in double quotes\n"
                "j:1:54: 2026-03-01 is not a value; write numbers as 5, 0.5 or -2, and dates and "
                "slopes in double quotes\n");
    assert_says("{\"a\": NaN, \"b\": -Infinity}",
                "j:1:7: NaN is not a value; texts stand in double quotes\n"
                "j:1:17: -Infinity is not a value; texts stand in double quotes\n");
}

static struct text nested(int depth, const char *open, const char *close)
{
    struct text text = TEXT_EMPTY;
    text_add(&text, "{\"a\":");
    for (int i = 1; i < depth; i++)
        text_add(&text, open);
    text_add(&text, "1");
    for (int i = 1; i < depth; i++)
        text_add(&text, close);
    text_add(&text, "}");
    assert_false(text.failed);
    return text;
}

static void nesting_has_a_limit(void **state)
{
    (void)state;
    struct text most = nested(JSON_DEEPEST, "[", "]");
    cJSON_Delete(read_n(most.bytes, most.length));
    text_free(&most);
    struct text over = nested(JSON_DEEPEST + 1, "[", "]");
    assert_says_n(over.bytes, over.length, "j:1:37: nested more than 32 deep; a job needs 5\n");
    text_free(&over);
    struct text wild = nested(100000, "{\"a\":", "}");
    assert_says_n(wild.bytes, wild.length, "j:1:161: nested more than 32 deep; a job needs 5\n");
    text_free(&wild);
}

static void slips_and_repeated_keys_come_in_one_go(void **state)
{
    (void)state;
    assert_says("{\"a\": 01,\n\"a\": \"\\q\",\n\"b\": \"\xFF\"}",
                "j:1:7: 01 is not a value; write numbers as 5, 0.5 or -2, and dates and slopes in "
                "double quotes\n"
                "j:2:7: a backslash in a text must be written twice\n"
                "j:3:7: byte 0xFF is not UTF-8\n"
                "j: /a: given twice, on line 1 and again on line 2; keep one\n");
}

static void the_list_of_problems_has_an_end(void **state)
{
    (void)state;
    struct text text = TEXT_EMPTY;
    text_add(&text, "{\"a\": [");
    for (int i = 0; i < 5000; i++)
        text_add(&text, "01, ");
    text_add(&text, "1]}");
    struct problems problems = {0};
    cJSON *job = NULL;
    assert_int_equal(json_read(&job, text.bytes, text.length, "j", &problems), -1);
    assert_int_equal(problems.count, JSON_MOST_PROBLEMS);
    assert_string_equal(problems.last->message,
                        "more problems follow; only the first 199 are listed");
    problems_free(&problems);
    text_free(&text);
}

/* 3 MB of key above many repeated ones: a pointer each, kept short. */
static void hostile_keys_do_not_grow_the_messages(void **state)
{
    (void)state;
    struct text text = TEXT_EMPTY;
    text_add(&text, "{\"");
    for (int i = 0; i < 300000; i++)
        text_add(&text, "0123456789");
    text_add(&text, "\": {\"a\": 1");
    for (int i = 0; i < 1000; i++)
        text_add(&text, ", \"a\": 1");
    text_add(&text, "}}");
    struct problems problems = {0};
    cJSON *job = NULL;
    assert_int_equal(json_read(&job, text.bytes, text.length, "j", &problems), -1);
    assert_int_equal(problems.count, JSON_MOST_PROBLEMS);
    assert_int_equal(strlen(problems.first->pointer), 1 + 120 + 3 + 2);
    problems_free(&problems);
    text_free(&text);
}

/* Files ------------------------------------------------------------------- */

static void assert_file_says(const char *path, const char *message)
{
    struct problems problems = {0};
    cJSON *job = NULL;
    assert_int_equal(json_read_file(&job, path, &problems), -1);
    assert_null(job);
    assert_int_equal(problems.count, 1);
    assert_string_equal(problems.first->message, message);
    assert_string_equal(problems.first->file, path);
    problems_free(&problems);
}

static void a_file_that_is_none_is_said(void **state)
{
    (void)state;
    assert_file_says("/tmp/eavemark-not-there/job.json", "there is no such file");
    assert_file_says("/tmp", "is not a file; a job is one JSON file");
    char path[] = "/tmp/eavemark-test-XXXXXX";
    const int handle = mkstemp(path);
    assert_true(handle >= 0);
    assert_file_says(path, "is empty; a job is a JSON object { ... }");
    close(handle);
    unlink(path);
}

static void a_huge_file_is_refused_by_its_size(void **state)
{
    (void)state;
    char path[] = "/tmp/eavemark-test-XXXXXX";
    const int handle = mkstemp(path);
    assert_true(handle >= 0);
    assert_int_equal(ftruncate(handle, 1024L * 1024 * 1024), 0);
    const clock_t before = clock();
    assert_file_says(path, "is larger than 4194304 bytes; a job is about 5 KB");
    assert_true((double)(clock() - before) / CLOCKS_PER_SEC < 1); /* nothing was read */
    close(handle);
    unlink(path);
}

static void a_file_is_read_and_refused_with_its_name(void **state)
{
    (void)state;
    char path[] = "/tmp/eavemark-test-XXXXXX";
    const int handle = mkstemp(path);
    assert_true(handle >= 0);
    assert_int_equal(write(handle, "{\"a\":1}", 7), 7);
    struct problems problems = {0};
    cJSON *job = NULL;
    assert_int_equal(json_read_file(&job, path, &problems), 0);
    assert_true(job->child->valuedouble == 1);
    cJSON_Delete(job);
    problems_free(&problems);
    assert_int_equal(write(handle, "\n}", 2), 2);
    assert_file_says(path, "expected nothing after the end of the job, found \"}\"");
    close(handle);
    unlink(path);
}

static void a_text_over_the_limit_is_refused(void **state)
{
    (void)state;
    char *text = calloc(1, JSON_LARGEST + 1);
    assert_non_null(text);
    assert_says_n(text, JSON_LARGEST + 1, "j: is larger than 4194304 bytes; a job is about 5 KB\n");
    memset(text, ' ', JSON_LARGEST);
    memcpy(text, "{}", 2);
    cJSON_Delete(read_n(text, JSON_LARGEST));
    free(text);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(a_sound_job_is_read),
        cmocka_unit_test(the_tree_is_as_cjson_builds_it),
        cmocka_unit_test(a_tree_in_an_arena_may_be_changed),
        cmocka_unit_test(a_tree_is_copied_whole),
        cmocka_unit_test(a_spoken_figure_in_an_arena_is_settled),
        cmocka_unit_test(a_likely_catalogue_changes_nothing_that_is_read),
        cmocka_unit_test(members_of_a_likely_catalogue_are_noted),
        cmocka_unit_test(a_member_is_found_by_its_field),
        cmocka_unit_test(facts_are_counted_by_their_origin),
        cmocka_unit_test(a_spoken_figure_is_settled_whatever_is_likely),
        cmocka_unit_test(an_object_may_have_very_many_fields),
        cmocka_unit_test(no_terminator_is_needed),
        cmocka_unit_test(nothing_is_no_job),
        cmocka_unit_test(the_top_is_an_object),
        cmocka_unit_test(slips_of_structure_say_what_was_expected),
        cmocka_unit_test(a_text_cut_short_says_what_is_open),
        cmocka_unit_test(every_cut_is_refused),
        cmocka_unit_test(repeated_keys_are_refused_at_any_depth),
        cmocka_unit_test(keys_equal_once_decoded_are_repeated),
        cmocka_unit_test(a_hundred_thousand_keys_are_quick),
        cmocka_unit_test(bytes_that_are_not_utf8_are_all_shown),
        cmocka_unit_test(control_characters_are_refused),
        cmocka_unit_test(nul_bytes_are_refused),
        cmocka_unit_test(escapes_are_whole),
        cmocka_unit_test(byte_order_marks_are_refused),
        cmocka_unit_test(numbers_follow_the_grammar),
        cmocka_unit_test(numbers_that_cannot_be_held_are_refused),
        cmocka_unit_test(the_longest_number_is_read_whole),
        cmocka_unit_test(negative_zero_is_zero),
        cmocka_unit_test(words_have_one_spelling),
        cmocka_unit_test(nesting_has_a_limit),
        cmocka_unit_test(slips_and_repeated_keys_come_in_one_go),
        cmocka_unit_test(the_list_of_problems_has_an_end),
        cmocka_unit_test(hostile_keys_do_not_grow_the_messages),
        cmocka_unit_test(a_file_that_is_none_is_said),
        cmocka_unit_test(a_huge_file_is_refused_by_its_size),
        cmocka_unit_test(a_file_is_read_and_refused_with_its_name),
        cmocka_unit_test(a_text_over_the_limit_is_refused),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
