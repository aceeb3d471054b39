#include "ask/question.h"

#include "base/strings.h"
#include "base/text.h"
#include "law/prepare.h"
#include "job/follows.h"
#include "job/path.h"
#include "judge/judge.h"

#include <stdlib.h>
#include <string.h>

/* Pointers ---------------------------------------------------------------- */

/* How far down its group's fields a step stands. */
static size_t rank_of(const struct field *group, const char *step, size_t length,
                      const struct field **child)
{
    size_t rank = 0;
    *child = group->first_child;
    for (; *child != NULL; *child = (*child)->next, rank++)
        if (strlen((*child)->name) == length - 1
            && memcmp((*child)->name, step + 1, length - 1) == 0)
            break;
    return rank;
}

/* A text that sorts as the fact stands in the catalogue, item by item. */
static const char *key_of(struct arena *arena, const struct fields *fields, const char *pointer,
                          bool first)
{
    struct text key = TEXT_EMPTY;
    const struct field *group = fields->root, *child = NULL;
    text_add(&key, first ? "0" : "1");
    for (const char *at = pointer; *at != '\0' && group != NULL; at += path_step_length(at)) {
        if (path_step_is_item(at)) {
            text_addf(&key, ".%08ld", strtol(at + 1, NULL, 10));
        } else {
            text_addf(&key, ".%08zu", rank_of(group, at, path_step_length(at), &child));
            group = child;
        }
    }
    return text_keep(&key, arena);
}

/* "/roof/slopes" for "roof.slopes": lists that are referred to lie in groups only. */
static const char *list_pointer(struct arena *arena, const char *path)
{
    char *pointer = arena_format(arena, "/%s", path);
    for (char *at = pointer; at != NULL && *at != '\0'; at++)
        if (*at == '.')
            *at = '/';
    return pointer == NULL ? "" : pointer;
}

static bool is_there(const cJSON *node)
{
    return node != NULL && !cJSON_IsNull(node);
}

/* What goes with a question --------------------------------------------------- */

/* An empty name tells nothing. */
static const char *name_of(const cJSON *item)
{
    const cJSON *name = cJSON_GetObjectItemCaseSensitive(item, "name");
    return cJSON_IsString(name) && name->valuestring[0] != '\0' ? name->valuestring : NULL;
}

/* The item's name, or "slopes 2". */
static const char *item_said(struct arena *arena, const cJSON *item, const char *list,
                             size_t length, const char *index)
{
    const char *name = name_of(item);
    const char *said = name != NULL ? arena_copy(arena, name)
                                    : arena_format(arena, "%.*s %ld", (int)length - 1, list + 1,
                                                   strtol(index + 1, NULL, 10) + 1);
    return said == NULL ? "" : said;
}

/* Names the items on the way to the fact. */
static const char *where_of(struct arena *arena, const cJSON *job, const char *pointer)
{
    const char *where = NULL, *list = "", *at = pointer;
    size_t list_length = 0;
    while (*at != '\0') {
        const size_t length = path_step_length(at);
        const char *after = at + length;
        if (path_step_is_item(at) && *after != '\0') {
            const char *upto = arena_copy_n(arena, pointer, (size_t)(after - pointer));
            const cJSON *item = upto == NULL ? NULL : path_find(job, upto);
            const char *said = item_said(arena, item, list, list_length, at);
            where = where == NULL ? said : arena_format(arena, "%s, %s", where, said);
        }
        list = at, list_length = length;
        at = after;
    }
    return where;
}

/* A reference is answered by a name from its list, or by that name's number. */
static void add_names(struct question *question, struct arena *arena, const cJSON *job)
{
    const cJSON *list = path_find(job, list_pointer(arena, question->field->refers)), *item = NULL;
    struct strings names = {0};
    cJSON_ArrayForEach(item, list)
        if (name_of(item) != NULL)
            strings_add_once(&names, arena, arena_copy(arena, name_of(item)));
    question->names = names.items;
    question->name_count = names.count;
    question->numbered = true;
}

/* The last index in the pointer: where it starts, or NULL. */
static const char *last_index(const char *pointer)
{
    const char *found = NULL;
    for (const char *at = pointer; *at != '\0'; at += path_step_length(at))
        if (path_step_is_item(at) && at[path_step_length(at)] != '\0')
            found = at;
    return found;
}

/* How the nearest item before this one answers it. */
static void add_same(struct question *question, struct arena *arena, const cJSON *job)
{
    const char *index = last_index(question->pointer);
    const enum field_type type = question->field->type;
    /* Names differ from item to item, and so does how many there are. */
    if (index == NULL || type == FIELD_LIST || strcmp(question->field->name, "name") == 0)
        return;
    const char *rest = index + path_step_length(index);
    for (long i = strtol(index + 1, NULL, 10) - 1; i >= 0 && question->same == NULL; i--) {
        const char *before = arena_format(arena, "%.*s/%ld%s", (int)(index - question->pointer),
                                          question->pointer, i, rest);
        const cJSON *node = before == NULL ? NULL : path_find(job, before);
        if (!is_there(node))
            continue;
        question->same = node;
        question->same_where = where_of(arena, job, before);
    }
}

struct question question_about(struct arena *arena, const cJSON *job, const struct fields *fields,
                               const char *pointer)
{
    struct question question = {.field = path_field(fields, pointer),
                                .pointer = arena_copy(arena, pointer)};
    if (question.field == NULL || question.pointer == NULL)
        return question;
    question.where = where_of(arena, job, pointer);
    if (question.field->type == FIELD_REFERENCE)
        add_names(&question, arena, job);
    add_same(&question, arena, job);
    return question;
}

/* Gathering --------------------------------------------------------------------- */

/* A fact to be asked for, and what waits for it: NULL for an item's name. */
struct want {
    const char *key, *pointer;
    const struct finding *finding;
};

/* Wants are gathered in any order, sorted by key, then put together into questions. */
struct gathering {
    const cJSON *job;
    const struct fields *fields;
    enum stage reached;
    struct arena *arena;
    struct strings unnamed; /* pointers */
    struct want *wants;
    size_t count;
};

static void gather_unnamed(struct gathering *g, const cJSON *node, const struct field *field,
                           const char *pointer);

static void gather_under(struct gathering *g, const cJSON *node, const struct field *parent,
                         const char *pointer)
{
    for (const struct field *f = parent->first_child; f != NULL; f = f->next) {
        const cJSON *child = cJSON_GetObjectItemCaseSensitive(node, f->name);
        if (child != NULL && child->child != NULL)
            gather_unnamed(g, child, f, path_key(g->arena, pointer, f->name));
    }
}

/* Every item that says nothing yet, though it might have a name. Recursion is
 * bounded by the catalogue. */
static void gather_unnamed(struct gathering *g, const cJSON *node, const struct field *field,
                           const char *pointer)
{
    const cJSON *item = NULL;
    long index = 0;
    if (pointer == NULL)
        return;
    if (field->type == FIELD_GROUP)
        gather_under(g, node, field, pointer);
    if (field->type != FIELD_LIST)
        return;
    cJSON_ArrayForEach(item, node) {
        const char *place = arena_format(g->arena, "%s/%ld", pointer, index++);
        if (place == NULL || !cJSON_IsObject(item))
            continue;
        /* An item that says anything is known by that; an empty one cannot be told from
         * its neighbour. */
        if (item->child == NULL && fields_child(field, "name") != NULL)
            strings_add(&g->unnamed, g->arena, arena_format(g->arena, "%s/name", place));
        gather_under(g, item, field, place);
    }
}

/* What is asked for the sake of this fact: itself, the list it would refer to,
 * or NULL when it cannot be told yet. */
static const char *asked_for(struct gathering *g, const char *lacks)
{
    const char *pointer = follows_asks(g->job, g->fields, lacks, g->arena);
    if (pointer == NULL)
        return NULL;
    const struct field *field = path_field(g->fields, pointer);
    if (field == NULL || field->type == FIELD_GROUP
        || (field->measured && field->stage > g->reached))
        return NULL;
    if (field->type != FIELD_REFERENCE)
        return pointer;
    const char *list = list_pointer(g->arena, field->refers);
    const cJSON *there = path_find(g->job, list);
    if (!is_there(there))
        return list;
    return there->child == NULL ? NULL : pointer;
}

static void add_want(struct gathering *g, const char *pointer, const struct finding *finding)
{
    const bool first = strings_have(&g->unnamed, pointer);
    g->wants[g->count++] = (struct want){key_of(g->arena, g->fields, pointer, first), pointer,
                                         finding};
}

/* A want a finding at most, and one an unnamed item. */
static void gather_wants(struct gathering *g, const struct result *result)
{
    gather_unnamed(g, g->job, g->fields->root, "");
    g->wants = arena_array(g->arena, g->unnamed.count + result->finding_count + 1,
                           sizeof(*g->wants));
    if (g->arena->failed)
        return;
    for (size_t i = 0; i < g->unnamed.count; i++)
        add_want(g, g->unnamed.items[i], NULL);
    for (size_t i = 0; i < result->finding_count; i++) {
        const struct finding *finding = &result->findings[i];
        const bool open = finding->outcome == OUTCOME_OPEN && finding->lacks != NULL;
        const char *pointer = open ? asked_for(g, finding->lacks) : NULL;
        if (pointer != NULL)
            add_want(g, pointer, finding);
    }
}

/* By place; what waits for one fact as the findings stand. */
static int by_key(const void *a, const void *b)
{
    const struct want *first = a, *second = b;
    const int order = strcmp(first->key, second->key);
    if (order != 0 || first->finding == second->finding)
        return order;
    if (first->finding == NULL || second->finding == NULL)
        return first->finding == NULL ? -1 : 1;
    return first->finding < second->finding ? -1 : 1;
}

/* The wants of one fact from `from` on become one question; returns how many. */
static size_t add_question(struct gathering *g, size_t from, struct questions *out)
{
    struct question *question = &out->items[out->count++];
    size_t count = 1;
    while (from + count < g->count
           && strcmp(g->wants[from + count].pointer, g->wants[from].pointer) == 0)
        count++;
    *question = question_about(g->arena, g->job, g->fields, g->wants[from].pointer);
    question->waiting = arena_array(g->arena, count, sizeof(*question->waiting));
    for (size_t i = 0; question->waiting != NULL && i < count; i++)
        if (g->wants[from + i].finding != NULL)
            question->waiting[question->waiting_count++] = g->wants[from + i].finding;
    return count;
}

int questions_of(const struct result *result, const cJSON *job, const struct fields *fields,
                 enum stage reached, struct questions *out)
{
    *out = (struct questions){0};
    struct gathering g = {.job = job, .fields = fields, .reached = reached, .arena = &out->arena};
    gather_wants(&g, result);
    out->items = arena_array(&out->arena, g.count + 1, sizeof(*out->items));
    if (out->arena.failed)
        return -1;
    qsort(g.wants, g.count, sizeof(*g.wants), by_key);
    for (size_t i = 0; i < g.count;)
        i += add_question(&g, i, out);
    return out->arena.failed ? -1 : 0;
}

void questions_free(struct questions *questions)
{
    arena_free(&questions->arena);
    *questions = (struct questions){0};
}

void questions_of_job(struct laws *laws, cJSON *job, const struct overrides *overrides,
                      const char *file, struct checked_questions *out)
{
    /* Questions are asked for all that has been reached, not for one stage's rules. */
    struct overrides whole = *overrides;
    whole.stage = NULL;
    const struct prepared ready = prepare_job(laws, job, &whole, file, &out->problems);
    if (ready.law == NULL)
        return;
    if (judge(ready.law->book, job, -1, ready.own, NULL, &out->result) != 0
        || questions_of(&out->result, job, &ready.law->book->fields, ready.own, &out->questions)
               != 0)
        problem_out_of_memory(&out->problems);
    else
        out->judged = true;
}

void questions_checked_free(struct checked_questions *checked)
{
    questions_free(&checked->questions);
    problems_free(&checked->problems);
    result_free(&checked->result);
}
