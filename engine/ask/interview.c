#include "ask/interview.h"

#include "base/date.h"
#include "ask/item.h"
#include "ask/one_line.h"
#include "base/strings.h"
#include "job/answer.h"
#include "job/footprint_facts.h"
#include "job/json.h"
#include "job/path.h"
#include "job/shop.h"
#include "job/validate.h"
#include "judge/judge.h"
#include "judge/place_fact.h"
#include "profile/place_list.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <strings.h>

/* More names than a screen shows help nobody. */
enum { PLACES_SHOWN = 20 };

static const char PLACE[] = "jurisdiction", DAY[] = "date", FORM[] = "/roof/footprint/form",
                  SHEET[] = "/shop";

/* What was done, last first. */
struct step {
    struct step *before;
    char *pointer; /* of each fact it was about, a line each */
    cJSON *job;    /* as it was before an answer; NULL for a skip */
};

/* Owns the job and everything asked so far. `now` points into `questions` or at `head`,
 * and is NULL when the next is to be found. */
struct interview {
    struct laws *laws;
    const char *file;
    cJSON *job;
    cJSON *laid;      /* the job as it is judged, with facts from everywhere; or NULL */
    struct shop shop; /* the job's sheet, or all zero */
    struct step *steps;
    char *again;          /* pointer to be asked next, or NULL */
    char *asked_back;     /* pointer and words of the answer last asked back, or NULL */
    struct result result; /* what the questions came from */
    struct questions questions;
    struct question head; /* a required fact; its texts live in questions.arena */
    const struct question *now;
    bool fresh;          /* it began from nothing: a sheet is to be confirmed */
    bool without_sheet;  /* the sheet was turned down */
    bool ahead;          /* for all stages, not only for what was reached */
    struct arena kept;   /* what is kept from question to question */
    struct strings told; /* findings that fail, and were told: rule and place */
    struct place_list places;
    bool places_made;
};

/* The job so far -------------------------------------------------------------- */

static const char *text_fact(const cJSON *job, const char *name)
{
    const cJSON *node = cJSON_GetObjectItemCaseSensitive(job, name);
    return cJSON_IsString(node) ? node->valuestring : NULL;
}

/* null is not said. */
static bool is_stated(const cJSON *job, const char *name)
{
    const cJSON *node = cJSON_GetObjectItemCaseSensitive(job, name);
    return node != NULL && !cJSON_IsNull(node);
}

/* A job that names no stage, or none there is, has reached the first. */
static enum stage reached_by(const cJSON *job)
{
    const char *word = text_fact(job, "stage");
    const int stage = word == NULL ? -1 : stage_by_word(word);
    return stage < 0 ? STAGE_PERMIT : (enum stage)stage;
}

/* The first required fact that the job does not say, or NULL: place and day before all else,
 * since they say what else is asked. */
static const struct field *missing_head(const struct fields *fields, const cJSON *job)
{
    static const char *const FIRST[] = {PLACE, DAY};
    for (size_t i = 0; i < sizeof(FIRST) / sizeof(FIRST[0]); i++) {
        const struct field *first = fields_child(fields->root, FIRST[i]);
        if (first != NULL && !is_stated(job, FIRST[i]))
            return first;
    }
    for (const struct field *f = fields->root->first_child; f != NULL; f = f->next)
        if (f->required && !is_stated(job, f->name))
            return f;
    return NULL;
}

/* The law of the job's place and day; the bare catalogue while it says neither.
 * NULL with problems. */
static const struct law *law_of(struct laws *laws, const cJSON *job, const char *file,
                                struct problems *problems)
{
    const char *place = text_fact(job, PLACE), *day = text_fact(job, DAY);
    const long date = day == NULL ? 0 : date_parse(day);
    return place == NULL || date == 0 ? laws_fields(laws, problems)
                                      : laws_find(laws, place, date, file, problems);
}

/* A required fact not asked yet is no fault of the answer. */
static bool is_still_to_come(const struct problem *problem, const struct fields *fields,
                             const cJSON *job)
{
    if (problem->pointer == NULL || problem->pointer[0] != '/')
        return false;
    const struct field *field = fields_child(fields->root, problem->pointer + 1);
    return field != NULL && field->required && !is_stated(job, field->name);
}

/* A copy of the job with what its plan, its sheet and its place say, or NULL. The job
 * itself is written as it was answered. */
static cJSON *laid_out(const struct interview *interview, const cJSON *job, const struct law *law,
                       struct problems *problems)
{
    const struct shop none = {0};
    cJSON *laid = cJSON_Duplicate(job, true);
    if (laid == NULL) {
        problem_out_of_memory(problems);
        return NULL;
    }
    prepare_facts(laid, law, interview->without_sheet ? &none : &interview->shop, false,
                  interview->file, problems);
    return laid;
}

/* Everything wrong with the job, required facts to come left out. */
static void validate_so_far(const struct interview *interview, const cJSON *job,
                            struct problems *problems)
{
    struct problems found = {0};
    const char *file = interview->file;
    const struct law *law = law_of(interview->laws, job, file, problems);
    if (law == NULL)
        return;
    /* What law_of found is a problem in any case; what is found below may be only that
     * something is still to come. */
    cJSON *laid = laid_out(interview, job, law, &found);
    if (laid != NULL)
        validate_job(laid, &law->book->fields, reached_by(job), file, &found);
    if (laid != NULL && law->profile != NULL) {
        judge_begin(law->book);
        judge_impossible(law->book, laid, file, &found);
        place_fact_ask_back(law->book, laid, file, &found);
    }
    cJSON_Delete(laid);
    for (const struct problem *p = found.first; p != NULL; p = p->next)
        if (!is_still_to_come(p, &law->book->fields, job)) {
            problem_at(problems, p->kind, file, p->pointer, "%s", p->message);
            if (problems->last != NULL)
                problems->last->asks_back = p->asks_back;
        }
    problems->out_of_memory |= found.out_of_memory;
    problems_free(&found);
}

/* Starting -------------------------------------------------------------------- */

/* A required figure that can be only one, such as the version of the format. */
static void fill_certain(const struct fields *fields, cJSON *job, struct problems *problems)
{
    for (const struct field *f = fields->root->first_child; f != NULL; f = f->next)
        if (f->required && f->type == FIELD_INTEGER && f->has_least && f->has_most
            && f->least == f->most && !is_stated(job, f->name)
            && cJSON_AddNumberToObject(job, f->name, f->least) == NULL)
            problem_out_of_memory(problems);
}

/* What the command line says may fill the job, not change it. */
static void preset_fact(cJSON *job, const char *name, const char *value, const char *file,
                        struct problems *problems)
{
    const char *own = text_fact(job, name);
    if (value == NULL || (own != NULL && strcmp(own, value) == 0))
        return;
    if (own != NULL) {
        char pointer[32] = "/";
        strncat(pointer, name, sizeof(pointer) - 2);
        problem_at(problems, PROBLEM_JOB, file, pointer, "says \"%s\", not \"%s\"", own, value);
    } else if (cJSON_AddStringToObject(job, name, value) == NULL) {
        problem_out_of_memory(problems);
    }
}

static void prepare_place(struct interview *interview, const struct overrides *preset,
                          struct problems *problems)
{
    const struct law *bare = laws_fields(interview->laws, problems);
    if (bare == NULL)
        return;
    fill_certain(&bare->book->fields, interview->job, problems);
    /* The work goes on: the stage it has come to may be another than the job says. */
    if (preset->stage != NULL
        && !json_set(interview->job, "stage", cJSON_CreateString(preset->stage)))
        problem_out_of_memory(problems);
    if (preset->date != NULL && date_parse(preset->date) == 0)
        problem_at(problems, PROBLEM_JOB, "--date", NULL, "\"%s\" is not a date (YYYY-MM-DD)",
                   preset->date);
    preset_fact(interview->job, PLACE, preset->jurisdiction, interview->file, problems);
    preset_fact(interview->job, DAY, preset->date, interview->file, problems);
    if (problems->count == 0)
        validate_so_far(interview, interview->job, problems);
}

/* Takes the job over, whatever comes of it. */
struct interview *interview_start(struct laws *laws, cJSON *job, const struct overrides *preset,
                                  const char *file, struct problems *problems)
{
    struct interview *interview = calloc(1, sizeof(*interview));
    if (interview == NULL) {
        cJSON_Delete(job);
        problem_out_of_memory(problems);
        return NULL;
    }
    interview->laws = laws;
    interview->file = file;
    interview->job = job != NULL ? job : cJSON_CreateObject();
    interview->fresh = !is_stated(interview->job, "eavemark_job");
    if (interview->job == NULL)
        problem_out_of_memory(problems);
    else if (shop_read(&interview->shop, interview->job, file, &preset->shop, problems) == 0)
        prepare_place(interview, preset, problems);
    if (problems->count == 0 && !problems->out_of_memory)
        return interview;
    interview_free(interview);
    return NULL;
}

void interview_go_ahead(struct interview *interview)
{
    interview->ahead = true;
}

/* Steps ------------------------------------------------------------------------ */

static char *copy_of(const char *text)
{
    const size_t size = strlen(text) + 1;
    char *copy = malloc(size);
    if (copy != NULL)
        memcpy(copy, text, size);
    return copy;
}

/* A line for each fact that the question is about; to be freed. */
static char *pointers_of(const struct question *question)
{
    struct text lines = TEXT_EMPTY;
    text_add(&lines, question->pointer);
    for (size_t i = 0; i < question->part_count; i++)
        text_addf(&lines, "\n%s", question->parts[i].pointer);
    char *copy = lines.failed ? NULL : copy_of(text_string(&lines));
    text_free(&lines);
    return copy;
}

/* Remembers what is about to be done; before: the job of then, taken over on
 * success. */
static bool push_step(struct interview *interview, cJSON *before)
{
    struct step *step = calloc(1, sizeof(*step));
    char *pointer = pointers_of(interview->now);
    if (step == NULL || pointer == NULL) {
        free(step);
        free(pointer);
        return false;
    }
    *step = (struct step){interview->steps, pointer, before};
    interview->steps = step;
    free(interview->again);
    interview->again = NULL;
    interview->now = NULL;
    return true;
}

static void drop_step(struct interview *interview)
{
    struct step *step = interview->steps;
    interview->steps = step->before;
    cJSON_Delete(step->job);
    free(step->pointer);
    free(step);
}

/* Answered or left out in this sitting: a fact is asked once. */
static bool is_done(const struct interview *interview, const char *pointer)
{
    const size_t length = strlen(pointer);
    for (const struct step *step = interview->steps; step != NULL; step = step->before)
        for (const char *at = step->pointer; at != NULL; at = strchr(at, '\n')) {
            at += *at == '\n';
            if (strncmp(at, pointer, length) == 0 && (at[length] == '\0' || at[length] == '\n'))
                return true;
        }
    return false;
}

struct interview_counts interview_count(const struct interview *interview)
{
    struct interview_counts counts = {0};
    for (const struct step *step = interview->steps; step != NULL; step = step->before)
        *(step->job == NULL ? &counts.skipped : &counts.answered) += 1;
    return counts;
}

/* The job goes back to what it was, and the same question comes again, whether or not a
 * rule waits for it now. */
bool interview_back(struct interview *interview)
{
    struct step *step = interview->steps;
    if (step == NULL)
        return false;
    if (step->job != NULL) {
        cJSON_Delete(interview->job);
        interview->job = step->job;
        step->job = NULL;
    }
    free(interview->again);
    interview->again = step->pointer;
    /* Of several, the question is found by the first. */
    interview->again[strcspn(interview->again, "\n")] = '\0';
    step->pointer = NULL;
    interview->now = NULL;
    if (strcmp(interview->again, SHEET) == 0)
        interview->without_sheet = false;
    drop_step(interview);
    return true;
}

/* Asking ----------------------------------------------------------------------- */

/* Questions point into the result and into the laid-out job: all three go together. */
static void forget_questions(struct interview *interview)
{
    questions_free(&interview->questions);
    result_free(&interview->result);
    cJSON_Delete(interview->laid);
    interview->laid = NULL;
    interview->result = (struct result){0};
    interview->now = NULL;
}

/* Read once; their words are what a place is found by. */
static struct place_list *places_of(struct interview *interview)
{
    if (!interview->places_made
        && place_list_make(&interview->laws->cache, interview->laws->home, &interview->places) != 0)
        interview->kept.failed = true;
    interview->places_made = true;
    return &interview->places;
}

/* A required fact comes before any law is known: it is asked of the catalogue alone. */
static void ask_head(struct interview *interview, const struct fields *fields,
                     const struct field *field)
{
    struct arena *arena = &interview->questions.arena;
    const char *pointer = arena_format(arena, "/%s", field->name);
    if (pointer == NULL)
        return;
    interview->head = question_about(arena, interview->job, fields, pointer);
    if (strcmp(field->name, PLACE) == 0)
        interview->head.ask = "Which building department issues the permit? (words of its name)";
    interview->now = &interview->head;
}

/* The question to be asked again, though no rule may wait for it now. */
static void ask_again(struct interview *interview, const struct fields *fields)
{
    for (size_t i = 0; i < interview->questions.count; i++)
        if (strcmp(interview->questions.items[i].pointer, interview->again) == 0)
            interview->now = &interview->questions.items[i];
    if (interview->now != NULL)
        return;
    interview->head = question_about(&interview->questions.arena, interview->laid, fields,
                                     interview->again);
    if (interview->head.field != NULL)
        interview->now = &interview->head;
}

/* How early a fact is asked for: the parts that go first in their order, then the rest. */
static size_t rank_of(const struct fields *fields, const struct field *field)
{
    for (size_t i = 0; i < fields->first_count; i++)
        for (const struct field *f = field; f != NULL; f = f->parent)
            if (f == fields->first[i])
                return i;
    return fields->first_count;
}

/* Items to be named go before all; of what has no order of its own, what decides most. */
static bool goes_before(const struct fields *fields, const struct question *a,
                        const struct question *b)
{
    const size_t first = rank_of(fields, a->field), second = rank_of(fields, b->field);
    if ((a->waiting_count == 0) != (b->waiting_count == 0))
        return a->waiting_count == 0;
    if (first != second)
        return first < second;
    return first == fields->first_count && a->waiting_count > b->waiting_count;
}

/* A roof of which nothing is said is asked for by its plan, form first. NULL when it is said
 * plane by plane, the plan is whole, or what it lacks was left out. */
static const char *lacking_of_plan(const struct interview *interview, const struct fields *fields)
{
    const cJSON *roof = cJSON_GetObjectItemCaseSensitive(interview->laid, "roof");
    struct footprint_facts facts;
    if (fields_find(fields, "roof.footprint.form") == NULL)
        return NULL;
    if (!is_stated(roof, "footprint"))
        return is_stated(roof, "slopes") || is_done(interview, FORM) ? NULL : FORM;
    footprint_facts_read(interview->laid, fields, &facts);
    return facts.lacking == NULL || is_done(interview, facts.lacking) ? NULL : facts.lacking;
}

static void ask_plan(struct interview *interview, const struct fields *fields, const char *lacking)
{
    struct arena *arena = &interview->questions.arena;
    interview->head = question_about(arena, interview->laid, fields, lacking);
    if (interview->head.field == NULL)
        return;
    if (strcmp(lacking, FORM) == 0)
        interview->head.ask = arena_format(arena, "%s (none of these: write planes)",
                                           interview->head.field->ask);
    interview->now = &interview->head;
}

/* "covering laminated": a material of the sheet, by its name. */
static void add_material(struct text *out, const char *part, const cJSON *material)
{
    const cJSON *item = NULL;
    const char *name = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(material, "name"));
    if (cJSON_IsArray(material))
        cJSON_ArrayForEach(item, material)
            add_material(out, part, item);
    if (name != NULL)
        text_addf(out, "%s%s \"%s\"", out->length == 0 ? "" : ", ", part, name);
}

/* Before the first question about materials the sheet is confirmed, with one key. */
static bool waits_for_sheet(const struct interview *interview, const struct fields *fields,
                            const struct question *next)
{
    const struct field *covering = fields_find(fields, "covering");
    return interview->fresh && interview->shop.tree != NULL && !is_done(interview, SHEET)
           && covering != NULL && fields_find(fields, "shop") != NULL
           && rank_of(fields, next->field) >= rank_of(fields, covering);
}

static void ask_sheet(struct interview *interview, const struct fields *fields)
{
    struct arena *arena = &interview->questions.arena;
    struct text materials = TEXT_EMPTY;
    const cJSON *part = NULL;
    cJSON_ArrayForEach(part, interview->shop.tree)
        add_material(&materials, part->string, part);
    interview->head = (struct question){.field = fields_find(fields, "shop"), .pointer = SHEET};
    interview->head.ask = arena_format(
        arena, "Go by the shop sheet %s%s%s? (y: what it says is not asked; n: all is asked)",
        interview->shop.file, materials.length == 0 ? "" : ": ", text_string(&materials));
    arena->failed |= materials.failed;
    text_free(&materials);
    interview->now = &interview->head;
}

/* The question, or that which leads those that are asked in one line with it, if it waits. */
static struct question *in_line(struct interview *interview, const struct fields *fields,
                                struct question *question)
{
    struct arena *arena = &interview->questions.arena;
    const char *leader = one_line_leader(question, arena, fields);
    for (size_t i = 0; leader != NULL && i < interview->questions.count; i++)
        if (strcmp(interview->questions.items[i].pointer, leader) == 0
            && !is_done(interview, leader))
            question = &interview->questions.items[i];
    one_line_gather(question, arena, interview->laid, fields);
    return question;
}

/* The best of what was neither answered nor left out. */
static void ask_next(struct interview *interview, const struct fields *fields)
{
    struct question *best = NULL;
    const char *lacking = lacking_of_plan(interview, fields);
    for (size_t i = 0; i < interview->questions.count; i++) {
        struct question *question = &interview->questions.items[i];
        if (is_done(interview, question->pointer))
            continue;
        if (best == NULL || goes_before(fields, question, best))
            best = question;
    }
    /* Where nothing waits, the plan decides nothing either. */
    if (best != NULL && lacking != NULL) {
        ask_plan(interview, fields, lacking);
        return;
    }
    if (best != NULL && waits_for_sheet(interview, fields, best))
        ask_sheet(interview, fields);
    else
        interview->now = best == NULL ? NULL : in_line(interview, fields, best);
}

/* What waits now and was not left out; one at least while there is a question. */
size_t interview_left(const struct interview *interview)
{
    size_t left = 0, lines = 0;
    for (size_t i = 0; i < interview->questions.count; i++)
        left += !is_done(interview, interview->questions.items[i].pointer);
    for (size_t i = 0; interview->now != NULL && i < interview->now->part_count; i++)
        for (size_t q = 0; q < interview->questions.count; q++)
            lines += strcmp(interview->questions.items[q].pointer, interview->now->parts[i].pointer)
                     == 0;
    left -= lines > 1 ? lines - 1 : 0;
    return interview->now != NULL && left == 0 ? 1 : left;
}

/* The next finding that fails and was not told yet, or NULL. */
const struct finding *interview_fails(struct interview *interview)
{
    for (size_t i = 0; i < interview->result.finding_count; i++) {
        const struct finding *finding = &interview->result.findings[i];
        if (finding->outcome != OUTCOME_FAIL)
            continue;
        const char *what = arena_format(&interview->kept, "%s %s", finding->rule,
                                        finding->item == NULL ? "" : finding->item);
        if (what == NULL || strings_have(&interview->told, what))
            continue;
        strings_add(&interview->told, &interview->kept, what);
        return finding;
    }
    return NULL;
}

const struct result *interview_standing(const struct interview *interview)
{
    return &interview->result;
}

const struct question *interview_ask(struct interview *interview, struct problems *problems)
{
    if (interview->now != NULL)
        return interview->now;
    forget_questions(interview);
    const struct law *law = law_of(interview->laws, interview->job, interview->file, problems);
    if (law == NULL)
        return NULL;
    const struct fields *fields = &law->book->fields;
    const struct field *head = missing_head(fields, interview->job);
    if (head != NULL) {
        ask_head(interview, fields, head);
    } else {
        const enum stage reached = reached_by(interview->job);
        interview->laid = laid_out(interview, interview->job, law, problems);
        if (interview->laid == NULL)
            return NULL;
        judge_begin(law->book);
        if (judge(law->book, interview->laid, interview->ahead ? -1 : (int)reached, reached, NULL,
                  &interview->result)
                != 0
            || questions_of(&interview->result, interview->laid, fields, reached,
                            &interview->questions)
                   != 0)
            problem_out_of_memory(problems);
        else if (interview->again != NULL)
            ask_again(interview, fields);
        if (problems->count == 0 && !problems->out_of_memory && interview->now == NULL)
            ask_next(interview, fields);
    }
    if (interview->questions.arena.failed || interview->kept.failed)
        problem_out_of_memory(problems);
    return problems->out_of_memory ? NULL : interview->now;
}

/* Answering -------------------------------------------------------------------- */

/* Those that fit, so that the next words may tell one of them. */
static void say_places(const struct place_list *places, const char *words, struct text *why)
{
    size_t found = 0;
    for (size_t i = 0; i < places->count; i++)
        if (place_list_fits(&places->items[i], words) && ++found <= PLACES_SHOWN)
            text_addf(why, "%s%s (%s)", found == 1 ? "" : ", ", places->items[i].block->title,
                      places->items[i].block->id);
    if (found > PLACES_SHOWN)
        text_addf(why, " and %zu more", found - PLACES_SHOWN);
}

/* The one place that has this id, or that the words fit. NULL with why. */
static const char *place_by(struct interview *interview, const char *words, struct text *why)
{
    struct place_list *places = places_of(interview);
    const char *only = NULL;
    size_t found = 0;
    for (size_t i = 0; i < places->count; i++) {
        const char *id = places->items[i].block->id;
        if (strcmp(id, words) == 0)
            return id;
        if (words[0] != '\0' && place_list_fits(&places->items[i], words))
            only = found++ == 0 ? id : only;
    }
    if (found == 1)
        return only;
    if (found > 1) {
        text_addf(why, "\"%s\" fits several: ", words);
        say_places(places, words, why);
        return NULL;
    }
    const char *near = place_list_near(places, words);
    text_addf(why, "no place is named \"%s\"", words);
    if (near != NULL)
        text_addf(why, " (did you mean %s?)", near);
    return NULL;
}

/* What is wrong with the answer; where it is not said at the question's own
 * place, with that. */
static void say_why(const struct problems *problems, const char *pointer, struct text *why)
{
    for (const struct problem *p = problems->first; p != NULL; p = p->next) {
        text_add(why, why->length > 0 ? "; " : "");
        const bool own = p->pointer == NULL || strncmp(p->pointer, pointer, strlen(pointer)) == 0;
        text_addf(why, "%s%s%s", own ? "" : p->pointer, own ? "" : ": ", p->message);
    }
}

static bool add_named(cJSON *list, const char *name)
{
    cJSON *item = cJSON_CreateObject();
    const bool added = item != NULL && cJSON_AddStringToObject(item, "name", name) != NULL
                       && cJSON_AddItemToArray(list, item);
    if (!added)
        cJSON_Delete(item);
    return added;
}

/* The items that only the layout has, by name, after those that the job lists. */
static bool add_laid_out(cJSON *roof, const char *key, const cJSON *laid)
{
    cJSON *list = cJSON_GetObjectItemCaseSensitive(roof, key);
    if (!cJSON_IsArray(list) && json_set(roof, key, cJSON_CreateArray()))
        list = cJSON_GetObjectItemCaseSensitive(roof, key);
    /* The job's items keep their places, so pointers into the laid-out list hold in both. */
    const int listed = cJSON_GetArraySize(list);
    bool added = list != NULL;
    int index = 0;
    const cJSON *item = NULL;
    cJSON_ArrayForEach(item, laid) {
        const char *name = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(item, "name"));
        if (index++ >= listed && name != NULL)
            added = added && add_named(list, name);
    }
    return added;
}

/* Gives what is answered of a plane or edge that only the layout has an item to
 * go into. False when out of memory. */
static bool name_laid_out(const struct interview *interview, cJSON *job, const char *pointer)
{
    static const char *const LISTS[] = {"slopes", "edges", "valleys"};
    cJSON *roof = cJSON_GetObjectItemCaseSensitive(job, "roof");
    const cJSON *laid = cJSON_GetObjectItemCaseSensitive(interview->laid, "roof");
    for (size_t i = 0; roof != NULL && i < sizeof(LISTS) / sizeof(LISTS[0]); i++) {
        char start[24];
        snprintf(start, sizeof(start), "/roof/%s/", LISTS[i]);
        if (strncmp(pointer, start, strlen(start)) == 0)
            return add_laid_out(roof, LISTS[i], cJSON_GetObjectItemCaseSensitive(laid, LISTS[i]));
    }
    return true;
}

/* What an answer is remembered by: its place and its words. False when out of memory. */
static bool remember_answer(char **kept, const char *pointer, const char *words)
{
    struct text both = TEXT_EMPTY;
    text_addf(&both, "%s %s", pointer, words);
    free(*kept);
    *kept = both.failed ? NULL : strdup(text_string(&both));
    text_free(&both);
    return *kept != NULL;
}

static bool is_same_answer(const char *kept, const char *pointer, const char *words)
{
    const size_t length = strlen(pointer);
    return kept != NULL && strncmp(kept, pointer, length) == 0 && kept[length] == ' '
           && strcmp(kept + length + 1, words) == 0;
}

/* Nothing is wrong but what may be meant all the same. */
static bool only_asks_back(const struct problems *problems)
{
    for (const struct problem *p = problems->first; p != NULL; p = p->next)
        if (!p->asks_back)
            return false;
    return problems->count > 0;
}

/* Notes in the job that what was asked back is meant. */
static bool add_meant(cJSON *job, const struct problems *problems)
{
    cJSON *list = cJSON_GetObjectItemCaseSensitive(job, "as_meant");
    if (!cJSON_IsArray(list) && json_set(job, "as_meant", cJSON_CreateArray()))
        list = cJSON_GetObjectItemCaseSensitive(job, "as_meant");
    bool added = list != NULL;
    for (const struct problem *p = problems->first; added && p != NULL; p = p->next) {
        cJSON *item = cJSON_CreateObject();
        added = item != NULL && cJSON_AddStringToObject(item, "at", p->pointer) != NULL
                && cJSON_AddItemToArray(list, item);
        if (!added)
            cJSON_Delete(item);
    }
    return added;
}

/* Whether the job holds. An answer that is asked back does when it comes again, in
 * the same words: then it is meant. */
static bool holds(struct interview *interview, cJSON *job, const char *words, struct text *why)
{
    struct problems problems = {0};
    const char *pointer = interview->now->pointer;
    validate_so_far(interview, job, &problems);
    bool held = problems.count == 0 && !problems.out_of_memory;
    const bool asks = only_asks_back(&problems);
    if (asks && is_same_answer(interview->asked_back, pointer, words))
        held = add_meant(job, &problems);
    if (!held)
        say_why(&problems, pointer, why);
    if (!held && asks && remember_answer(&interview->asked_back, pointer, words))
        text_add(why, " (here: answer the same again)");
    problems_free(&problems);
    return held;
}

/* Items that follow from other facts have a place in the job once something is said of one. */
static bool carry_list(const struct interview *interview, cJSON *job, const char *pointer)
{
    static const char LIST[] = "/existing/coverings/";
    cJSON *group = cJSON_GetObjectItemCaseSensitive(job, "existing");
    const cJSON *laid = path_find(interview->laid, "/existing/coverings");
    if (strncmp(pointer, LIST, strlen(LIST)) != 0 || group == NULL || is_stated(group, "coverings"))
        return true;
    cJSON *list = cJSON_CreateArray();
    for (int i = 0; list != NULL && i < cJSON_GetArraySize(laid); i++)
        if (!cJSON_AddItemToArray(list, cJSON_CreateObject()))
            break;
    return json_set(group, "coverings", list);
}

/* A copy of the job with room for what is answered, or NULL: the job holds at all times. */
static cJSON *begin_change(const struct interview *interview)
{
    const struct question *question = interview->now;
    cJSON *job = cJSON_Duplicate(interview->job, true);
    if (job != NULL && name_laid_out(interview, job, question->pointer)
        && carry_list(interview, job, question->pointer))
        return job;
    cJSON_Delete(job);
    return NULL;
}

/* Takes the changed job over if it holds. */
static bool end_change(struct interview *interview, cJSON *job, const char *words, struct text *why)
{
    bool held = job != NULL && holds(interview, job, words, why);
    if (held)
        /* From here the step owns the old job. */
        held = push_step(interview, interview->job);
    if (held)
        interview->job = job;
    else
        cJSON_Delete(job);
    return held;
}

/* Whether the job would hold with this value; it is taken over. */
static bool try_value(struct interview *interview, cJSON *value, const char *words,
                      struct text *why)
{
    cJSON *job = begin_change(interview);
    if (job == NULL) {
        cJSON_Delete(value);
        return false;
    }
    if (!path_set(job, interview->now->pointer, value)) {
        cJSON_Delete(job);
        return false;
    }
    return end_change(interview, job, words, why);
}

static bool try_line(struct interview *interview, const char *words, struct text *why)
{
    cJSON *job = begin_change(interview);
    if (job == NULL)
        return false;
    if (one_line_read(job, interview->now, words, why))
        return end_change(interview, job, words, why);
    cJSON_Delete(job);
    return false;
}

static const char NOTHING_ASKED[] = "nothing was asked";

/* An answer that leaves the job as it is. */
static bool answer_unchanged(struct interview *interview)
{
    cJSON *job = cJSON_Duplicate(interview->job, true);
    if (job == NULL || !push_step(interview, interview->job)) {
        cJSON_Delete(job);
        return false;
    }
    interview->job = job;
    return true;
}

/* Yes or no to the sheet; it stays named in the job only if it is gone by. */
static bool answer_sheet(struct interview *interview, const char *words, struct text *why)
{
    const bool yes = strcasecmp(words, "y") == 0 || strcasecmp(words, "yes") == 0;
    if (!yes && strcasecmp(words, "n") != 0 && strcasecmp(words, "no") != 0) {
        text_addf(why, "\"%s\" is not y or n", words);
        return false;
    }
    if (!answer_unchanged(interview))
        return false;
    interview->without_sheet = !yes;
    if (!yes)
        cJSON_DeleteItemFromObjectCaseSensitive(interview->job, "shop");
    return true;
}

/* A roof that no plan shows is asked for plane by plane. */
static bool is_no_plan(const struct question *question, const char *words)
{
    return strcmp(question->pointer, FORM) == 0
           && (strcasecmp(words, "planes") == 0 || strcasecmp(words, "none") == 0
               || strcasecmp(words, "other") == 0);
}

static bool read_value(struct interview *interview, const char *words, cJSON **value,
                       struct text *why)
{
    const struct question *question = interview->now;
    const struct answer_names names = {question->names, question->name_count};
    const struct law *law = NULL;
    struct problems none = {0};
    if (strcmp(question->field->path, PLACE) == 0) {
        const char *id = place_by(interview, words, why);
        *value = id == NULL ? NULL : cJSON_CreateString(id);
        return *value != NULL;
    }
    if (question->field->type != FIELD_LIST)
        return answer_read(value, question->field, question->numbered ? &names : NULL, words, why);
    law = law_of(interview->laws, interview->job, interview->file, &none);
    problems_free(&none);
    return law != NULL && item_read(value, &law->book->fields, question->field, words, why);
}

bool interview_answer(struct interview *interview, const char *words, struct text *why)
{
    const struct question *question = interview->now;
    cJSON *value = NULL;
    if (question == NULL) {
        text_add(why, NOTHING_ASKED);
        return false;
    }
    if (question->pointer == SHEET)
        return answer_sheet(interview, words, why);
    if (is_no_plan(question, words))
        return answer_unchanged(interview);
    if (question->part_count > 0)
        return try_line(interview, words, why);
    /* "=" takes the answer of the item before. */
    if (question->same != NULL && strcmp(words, "=") == 0)
        value = cJSON_Duplicate(question->same, true);
    else if (!read_value(interview, words, &value, why))
        return false;
    return try_value(interview, value, words, why);
}

bool interview_skip(struct interview *interview, struct text *why)
{
    if (interview->now == NULL) {
        text_add(why, NOTHING_ASKED);
        return false;
    }
    if (interview->now->field->required) {
        text_add(why, "a job cannot do without this");
        return false;
    }
    return push_step(interview, NULL);
}

/* The whole job is validated again: what is still to come counts now. */
const cJSON *interview_job(const struct interview *interview, struct problems *problems)
{
    const struct law *law = law_of(interview->laws, interview->job, interview->file, problems);
    cJSON *laid = law == NULL ? NULL : laid_out(interview, interview->job, law, problems);
    if (laid != NULL) {
        validate_job(laid, &law->book->fields, reached_by(interview->job), interview->file,
                     problems);
        judge_begin(law->book);
        judge_impossible(law->book, laid, interview->file, problems);
    }
    cJSON_Delete(laid);
    return interview->job;
}

const cJSON *interview_draft(const struct interview *interview)
{
    return interview->job;
}

void interview_free(struct interview *interview)
{
    if (interview == NULL)
        return;
    while (interview->steps != NULL)
        drop_step(interview);
    forget_questions(interview);
    free(interview->again);
    free(interview->asked_back);
    place_list_free(&interview->places);
    arena_free(&interview->kept);
    shop_free(&interview->shop);
    cJSON_Delete(interview->job);
    free(interview);
}
