#include "job/validate.h"

#include "job/json.h"
#include "job/origin.h"
#include "job/path.h"
#include "job/tree.h"
#include "job/validate_check.h"

#include <stdarg.h>
#include <stdio.h>
#include <string.h>

static void add_steps(struct text *pointer, const struct validate_step *step)
{
    if (step == NULL)
        return;
    add_steps(pointer, step->above);
    if (step->name != NULL)
        path_add(pointer, step->name, step->length);
    else
        path_add_item(pointer, step->item);
}

const char *validate_pointer(struct validation *check, const struct validate_step *step)
{
    struct text pointer = TEXT_EMPTY;
    add_steps(&pointer, step);
    return text_keep(&pointer, &check->arena);
}

/* Past the most, problems are counted and not listed. What follows from another fact only
 * repeats what is wrong with that one, at a place that nobody wrote. */
void validate_report(struct validation *check, const char *format, ...)
{
    if (check->node != NULL && !check->tell_followed && origin_of(check->node) == ORIGIN_DERIVED) {
        check->followed++;
        return;
    }
    check->found++;
    if (check->found > VALIDATE_MOST_PROBLEMS)
        return;
    if (check->found == VALIDATE_MOST_PROBLEMS) {
        problem_at(check->problems, PROBLEM_JOB, check->file, "",
                   "more problems follow; only the first %d are listed",
                   VALIDATE_MOST_PROBLEMS - 1);
        return;
    }
    char message[1536];
    va_list args;
    va_start(args, format);
    vsnprintf(message, sizeof(message), format, args);
    va_end(args);
    problem_at(check->problems, PROBLEM_JOB, check->file, validate_pointer(check, check->at), "%s",
               message);
}

const char *validate_quoted(struct validation *check, const char *text)
{
    const size_t length = strlen(text);
    /* Cut within 60 bytes, never within a character. */
    const size_t shown = path_quotable(text, length, 60);
    const char *quoted = arena_format(&check->arena, "\"%.*s%s\"", (int)shown, text,
                                      shown < length ? "..." : "");
    return quoted == NULL ? "" : quoted;
}

const char *validate_hint(struct validation *check, const char *name)
{
    if (name == NULL)
        return "";
    const char *hint = arena_format(&check->arena, "; did you mean %s?",
                                    validate_quoted(check, name));
    return hint == NULL ? "" : hint;
}

/* "/roof/slopes/N/pitch" for "roof.slopes[].pitch". */
static void add_place(struct text *out, const char *path)
{
    text_add(out, "/");
    for (; *path != '\0'; path++) {
        if (*path == '.')
            text_add(out, "/");
        else if (strncmp(path, "[]", 2) == 0)
            text_add(out, "/N"), path++;
        else
            text_add_n(out, path, 1);
    }
}

/* The first of several, and those after it. */
static void add_choice_word(struct text *out, size_t index)
{
    text_add(out, index == 0 ? "; did you mean " : " or ");
}

/* A near name here; then the places elsewhere that the name itself fits, or,
 * when nothing here is near, those it nearly fits. */
static void add_field_hint(struct text *out, const struct fields *fields,
                           const struct field *parent, const char *name)
{
    size_t hints = 0;
    const char *near = fields_nearest_child(parent, name);
    if (near != NULL) {
        add_choice_word(out, hints++);
        text_addf(out, "\"%s\"", near);
    }
    const struct field *found[FIELDS_NAMESAKES];
    const size_t count = fields_namesakes(fields, name, found);
    for (size_t i = 0; i < count; i++) {
        if (near != NULL && (strcmp(found[i]->name, name) != 0 || found[i]->parent == parent))
            continue;
        add_choice_word(out, hints++);
        add_place(out, found[i]->path);
    }
    if (hints > 0)
        text_add(out, "?");
}

/* The job's own place declares it; the place asked about does not. */
static bool is_known_elsewhere(const struct validation *check, const struct field *parent,
                               const char *name)
{
    if (check->elsewhere == NULL)
        return false;
    const struct field *there = parent->path[0] == '\0'
                                    ? check->elsewhere->root
                                    : fields_find(check->elsewhere, parent->path);
    return there != NULL && fields_child(there, name) != NULL;
}

static void report_unknown(struct validation *check, const struct field *parent, const char *name)
{
    if (is_known_elsewhere(check, parent, name))
        return;
    /* Where some place's fields could not be read, an unknown name may be one of those. */
    if (check->fields->partial && fields_nearest_child(parent, name) == NULL)
        return;
    struct text hint = TEXT_EMPTY;
    add_field_hint(&hint, check->fields, parent, name);
    if (hint.failed)
        problem_out_of_memory(check->problems);
    validate_report(check, "unknown field %s%s", validate_quoted(check, name), text_string(&hint));
    text_free(&hint);
}

static bool is_early(const struct validation *check, const struct field *field)
{
    return field->measured && field->stage > check->reached;
}

/* What is measured at a later stage cannot have been: it is a plan in the wrong field. */
static void check_stage(struct validation *check, const struct field *field)
{
    if (is_early(check, field))
        validate_report(check, "is measured at the %s stage, but the job is only at the %s stage",
                        stage_word(field->stage), stage_word(check->reached));
}

static void check_required(struct validation *check, const cJSON *group, const struct field *parent)
{
    const struct validate_step *here = check->at;
    for (const struct field *f = parent->first_child; f != NULL; f = f->next) {
        if (!f->required || validate_full(check)
            || !json_is_absent(cJSON_GetObjectItemCaseSensitive(group, f->name)))
            continue;
        const struct validate_step step = validate_step_to(check, f->name);
        check->at = &step;
        validate_report(check, "is required, but missing%s%s", f->ask == NULL ? "" : ". ",
                        f->ask == NULL ? "" : f->ask);
        check->at = here;
    }
}

static void check_group(struct validation *check, const cJSON *group, const struct field *parent);

/* Items past the most a list may have are not looked into. */
static void check_items(struct validation *check, const cJSON *list, const struct field *field)
{
    struct validate_step step = {.above = check->at};
    const cJSON *item = NULL;
    cJSON_ArrayForEach(item, list) {
        if (validate_full(check) || (field->has_most && (double)step.item >= field->most))
            break;
        check->at = &step;
        if (json_type(item) == cJSON_Object)
            check_group(check, item, field);
        else
            validate_report(check, "each item of this list is an object { ... }");
        step.item++;
    }
    check->at = step.above;
}

/* A value of the wrong type is not looked into: all in it would be wrong as well. */
static void check_field(struct validation *check, const cJSON *node, const struct field *field)
{
    check->node = node;
    check_stage(check, field);
    const bool worth_looking_into = validate_value(check, node, field);
    check->node = NULL;
    if (!worth_looking_into)
        return;
    if (field->type == FIELD_GROUP)
        check_group(check, node, field);
    else if (field->type == FIELD_LIST)
        check_items(check, node, field);
}

/* Recursion is bounded by the catalogue: FIELDS_DEEPEST. */
static void check_group(struct validation *check, const cJSON *group, const struct field *parent)
{
    const struct validate_step *here = check->at;
    const struct field *field = NULL;
    const cJSON *node = NULL;
    cJSON_ArrayForEach(node, group) {
        if (validate_full(check))
            return;
        field = tree_field(node, parent, field);
        /* Where a value stands is needed only to tell of it. */
        if (field != NULL && !is_early(check, field) && validate_value_plain(node, field))
            continue;
        const struct validate_step step = validate_step_to(check, node->string);
        check->at = &step;
        if (field == NULL)
            report_unknown(check, parent, node->string);
        else if (!json_is_absent(node))
            check_field(check, node, field);
        check->at = here;
    }
    check_required(check, group, parent);
}

/* Under the job's own law no field is known elsewhere. */
int validate_job(const cJSON *job, const struct fields *fields, enum stage reached,
                 const char *file, struct problems *problems)
{
    return validate_job_moved(job, fields, NULL, reached, file, problems);
}

int validate_job_moved(const cJSON *job, const struct fields *fields,
                       const struct fields *elsewhere, enum stage reached, const char *file,
                       struct problems *problems)
{
    struct validation check = {.fields = fields,
                               .elsewhere = elsewhere,
                               .reached = reached,
                               .file = file,
                               .problems = problems};
    if (json_type(job) == cJSON_Object) {
        /* Before the walk, which looks references up in them. */
        validate_names(&check, job);
        check_group(&check, job, fields->root);
    } else {
        validate_report(&check, "a job is an object { ... }");
    }
    /* Nothing that is written is wrong, and yet something that follows from it. */
    if (check.found == 0 && check.followed > 0) {
        check.tell_followed = true;
        check_group(&check, job, fields->root);
    }
    const bool out_of_memory = check.arena.failed;
    if (out_of_memory)
        problem_out_of_memory(problems);
    arena_free(&check.arena);
    return out_of_memory || problems->out_of_memory || check.found > 0 ? -1 : 0;
}
