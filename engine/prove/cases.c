#include "prove/cases.h"

#include "base/nearest.h"
#include "base/number.h"
#include "prove/case_list.h"
#include "check/check.h"

#include <stdio.h>
#include <string.h>

/* What the cases have shown of a rule. */
struct seen {
    const char *rule;
    bool met, unmet, lacking;
    struct seen *next;
};

/* What the cases of a file have taken so far. */
struct file_steps {
    const char *path;
    long long taken;
    bool spent; /* all there is for them */
    struct file_steps *next;
};

/* What a run of cases keeps between them. Laws are loaded as cases come to their places. */
struct running {
    struct laws *laws;
    const struct cases_wanted *wanted;
    struct arena arena;
    struct seen *seen;
    struct file_steps *files;
    const char *rule; /* whose case is being run: no other is judged */
    struct probe probe;
    const struct law *law; /* of the case being run */
};

/* NULL when out of memory, which the arena remembers. */
static struct seen *seen_of(struct running *running, const char *rule)
{
    for (struct seen *s = running->seen; s != NULL; s = s->next)
        if (strcmp(s->rule, rule) == 0)
            return s;
    struct seen *seen = arena_alloc(&running->arena, sizeof(*seen));
    if (seen == NULL)
        return NULL;
    seen->rule = arena_copy(&running->arena, rule);
    if (seen->rule == NULL)
        return NULL;
    seen->next = running->seen;
    running->seen = seen;
    return seen;
}

/* Only cases that came out as expected count as shown. */
static void note_seen(struct running *running, const struct finding *finding)
{
    struct seen *seen = seen_of(running, finding->rule);
    if (seen == NULL)
        return;
    seen->met = seen->met || finding->met == MET_YES;
    seen->unmet = seen->unmet || finding->met == MET_NO;
    seen->lacking = seen->lacking || finding->outcome == OUTCOME_OPEN;
}

static void add_wrong_case(struct text *out, const struct rule_case *c, const char *what)
{
    text_addf(out, "%s:%d: %s: \"%s\"%s%s: %s\n", c->file, c->line, c->rule, c->title,
              c->where == NULL ? "" : " at ", c->where == NULL ? "" : c->where, what);
}

/* VALUE_NONE: the case does not say. Numbers by what prints in the finding's unit. */
static bool value_is(const struct value *value, const struct value *wanted)
{
    if (wanted->kind == VALUE_NONE)
        return true;
    if (value->kind != wanted->kind)
        return false;
    if (value->kind == VALUE_NUMBER)
        return number_equals(value->number, wanted->number, value->unit);
    return value->kind == VALUE_TEXT ? strcmp(value->text, wanted->text) == 0
                                     : value->yes == wanted->yes;
}

/* What is doubted of the whole book is said once, in the head of a report. */
static bool doubts_say(const struct result *result, const char *words)
{
    for (size_t i = 0; i < result->doubt_count; i++)
        if (strstr(result->doubts[i], words) != NULL)
            return true;
    return false;
}

static bool finding_holds(const struct rule_case *c, const struct result *result,
                          const struct finding *finding, struct text *out)
{
    char what[700];
    const char *word = outcome_word(finding->outcome);
    if (strcmp(word, c->expect) != 0)
        snprintf(what, sizeof(what), "expected %s, got %s: %.400s", c->expect, word, finding->says);
    else if (c->says != NULL && strstr(finding->says, c->says) == NULL
             && !doubts_say(result, c->says))
        snprintf(what, sizeof(what), "does not say \"%s\": %.400s", c->says, finding->says);
    else if (!value_is(&finding->required, &c->required))
        snprintf(what, sizeof(what), "demands something else than expected: %.400s", finding->says);
    else if (!value_is(&finding->found, &c->found))
        snprintf(what, sizeof(what), "found something else than expected: %.400s", finding->says);
    else
        return true;
    add_wrong_case(out, c, what);
    return false;
}

/* A rule that is not there, or not the finding that is looked for. */
static void say_unmatched(const struct running *running, const struct rule_case *c,
                          struct text *out)
{
    const struct rulebook *book = running->law->book;
    char what[400] = "the rule has no finding there";
    struct nearest nearest;
    nearest_start(&nearest, c->rule);
    for (const struct rule *r = book->rules; r != NULL; r = r->next)
        nearest_offer(&nearest, r->id);
    if (rulebook_rule(book, c->rule) == NULL)
        snprintf(what, sizeof(what), "no rule of that name binds under %.100s%s%.120s%s", c->under,
                 nearest.name == NULL ? "" : "; did you mean \"",
                 nearest.name == NULL ? "" : nearest.name, nearest.name == NULL ? "" : "\"?");
    add_wrong_case(out, c, what);
}

/* Without `where` every finding of the rule must come out as expected. */
static bool findings_hold(struct running *running, const struct rule_case *c,
                          const struct result *result, struct text *out)
{
    size_t matched = 0;
    bool held = true;
    for (size_t i = 0; i < result->finding_count; i++) {
        const struct finding *finding = &result->findings[i];
        if (strcmp(finding->rule, c->rule) != 0)
            continue;
        if (c->where != NULL && (finding->where == NULL || strcmp(finding->where, c->where) != 0))
            continue;
        matched++;
        /* Told apart: a rule that erred is not just a case that came out otherwise. */
        if (finding->outcome == OUTCOME_BROKEN && running->wanted->broke != NULL)
            running->wanted->broke(running->wanted->data, finding);
        if (finding_holds(c, result, finding, out))
            note_seen(running, finding);
        else
            held = false;
    }
    if (matched == 0)
        say_unmatched(running, c, out);
    return held && matched > 0;
}

/* A job refused before any rule ran: right only for a case that expects just that. */
static bool refusal_holds(const struct rule_case *c, const struct checked *checked,
                          struct text *out)
{
    struct text said = TEXT_EMPTY;
    problems_write(&checked->problems, &said);
    const bool refused = strcmp(c->expect, "refused") == 0
                         && (c->says == NULL || strstr(text_string(&said), c->says) != NULL);
    if (!refused) {
        char what[700];
        snprintf(what, sizeof(what), "expected %s, but the job was refused: %.500s", c->expect,
                 text_string(&said));
        add_wrong_case(out, c, what);
    }
    text_free(&said);
    return refused;
}

/* NULL when out of memory, which the arena remembers. */
static struct file_steps *steps_of(struct running *running, const char *path)
{
    for (struct file_steps *f = running->files; f != NULL; f = f->next)
        if (strcmp(f->path, path) == 0)
            return f;
    struct file_steps *file = arena_alloc(&running->arena, sizeof(*file));
    if (file != NULL) {
        *file = (struct file_steps){.path = path, .next = running->files};
        running->files = file;
    }
    return file;
}

/* Have the cases of this file that were run left this one nothing? Told once. */
static bool is_spent(struct file_steps *file, const struct rule_case *c, struct text *out)
{
    if (file->taken <= CASES_STEPS)
        return false;
    if (!file->spent)
        add_wrong_case(out, c,
                       "was not run, nor were others of this file: those that were took all the "
                       "steps there are for one");
    return file->spent = true;
}

/* What is wanted of the run, and that it goes no further than the case looks. */
static const struct probe *probe_of(void *data, const struct law *law)
{
    struct running *running = data;
    const struct prober *prober = running->wanted->prober;
    const struct probe *wanted = prober == NULL ? NULL : prober->probe_of(prober->data, law);
    running->probe = wanted == NULL ? (struct probe){.asked = NULL} : *wanted;
    running->probe.only_rule = running->rule;
    running->law = law;
    return &running->probe;
}

static bool run_case(struct running *running, const struct rule_case *c, struct text *out)
{
    const struct overrides alone = {.alone = !c->by_place};
    struct checked checked = {0};
    bool held;
    /* The job could not be made as the case says. */
    if (c->fault != NULL)
        add_wrong_case(out, c, c->fault);
    if (c->base == NULL)
        return false;
    cJSON *job = case_job(c);
    if (job == NULL) {
        running->arena.failed = true;
        return false;
    }
    running->rule = c->rule;
    check_job_probed(running->laws, job, &alone, c->file, &(struct prober){probe_of, running},
                     &checked);
    if (!checked.judged) {
        held = refusal_holds(c, &checked, out);
    } else if (strcmp(c->expect, "refused") == 0) {
        add_wrong_case(out, c, "expected the job to be refused; it was judged");
        held = false;
        /* Of a case about the job's facts: that it was judged at all. */
    } else if (strcmp(c->expect, "usable") == 0) {
        held = true;
    } else {
        held = findings_hold(running, c, &checked.result, out);
    }
    if (checked.judged && running->wanted->judged != NULL)
        running->wanted->judged(running->wanted->data, running->law, c->rule, &running->probe);
    cJSON_Delete(job);
    laws_drop_problems(running->laws, &checked.problems);
    checked_free(&checked);
    laws_rest(running->laws, PROOF_LAWS_AWAKE);
    return held;
}

/* With what it took, and what there is to say about it, which is told when those before it in
 * its file have been run too. */
static void run_counted(struct running *running, struct rule_case *c, struct arena *arena)
{
    struct text said = TEXT_EMPTY;
    struct file_steps *file = steps_of(running, c->file);
    if (file != NULL && !is_spent(file, c, &said)) {
        const long long before = laws_steps(running->laws);
        c->held = run_case(running, c, &said);
        file->taken += laws_steps(running->laws) - before;
    }
    if (said.failed)
        running->arena.failed = true;
    else if (said.length > 0)
        c->said = arena_copy(arena, text_string(&said));
    text_free(&said);
}

/* Is it for these cases to show what the rule does? */
static bool is_wanted(const struct cases_wanted *wanted, const struct rule_name *rule)
{
    const size_t length = wanted->topic == NULL ? 0 : strlen(wanted->topic);
    if (wanted->place != NULL)
        return strings_have(wanted->own_rules, rule->file);
    return wanted->topic == NULL
           || (strncmp(rule->id, wanted->topic, length) == 0 && rule->id[length] == '.');
}

static void note_case(const struct cases_wanted *wanted, const char *file, bool held,
                      const char *line)
{
    if (wanted->note != NULL)
        wanted->note(wanted->data, file, held, line);
}

/* A rule that no case shows met, not met and lacking a fact is not tested. */
static size_t untested(struct running *running, struct text *out)
{
    size_t count = 0;
    if (!laws_rest_rules(running->laws))
        running->arena.failed = true;
    for (size_t i = 0; i < running->laws->rules.count; i++) {
        const struct rule_name *r = &running->laws->rules.items[i];
        struct seen *seen = is_wanted(running->wanted, r) ? seen_of(running, r->id) : NULL;
        if (seen == NULL || (seen->met && (seen->unmet || r->asks_only) && seen->lacking))
            continue;
        const size_t before = out->length;
        text_addf(out, "%s:%d: rule \"%s\" has no case that is%s%s%s\n", r->file, r->line, r->id,
                  seen->met ? "" : " met", seen->unmet ? "" : " not-met",
                  seen->lacking ? "" : " lacking-a-fact");
        note_case(running->wanted, r->file, false, text_string(out) + (out->failed ? 0 : before));
        /* The same rule of another file: it is told once. */
        seen->met = seen->unmet = seen->lacking = true;
        count++;
    }
    return count;
}

/* Rules that a case reached, whatever it showed. */
static void tally_rules(struct running *running, struct tally *tally)
{
    for (const struct seen *s = running->seen; s != NULL; s = s->next)
        tally->rules++;
}

/* Files are read together up to so many bytes; what one may keep bounds the last. */
enum { BATCH_BYTES = 8 * 1024 * 1024 };

static bool read_batch(struct case_files *files, struct case_list *list, struct problems *problems)
{
    bool any = false;
    while (list->bytes < BATCH_BYTES && case_files_next(files, list, problems))
        any = true;
    return any;
}

static void run_batch(struct running *running, struct case_list *list)
{
    const struct cases_wanted *wanted = running->wanted;
    size_t count;
    struct rule_case **sorted = case_list_sorted(list, wanted, &count);
    const char *under = NULL;
    for (size_t i = 0; sorted != NULL && i < count && !running->arena.failed; i++) {
        if (wanted->comes_to != NULL && (under == NULL || strcmp(under, sorted[i]->under) != 0))
            wanted->comes_to(wanted->data, sorted[i]->under);
        under = sorted[i]->under;
        run_counted(running, sorted[i], &list->arena);
    }
    if (list->arena.failed)
        running->arena.failed = true;
}

/* As the files have them. */
static void tell_batch(const struct running *running, const struct case_list *list,
                       struct tally *tally, struct text *out)
{
    for (const struct rule_case *c = list->first; c != NULL; c = c->next) {
        if (c->held)
            tally->held++;
        else
            tally->failed++;
        if (c->said != NULL)
            text_add(out, c->said);
        note_case(running->wanted, c->file, c->held, c->said == NULL ? "" : c->said);
    }
}

int cases_run(struct laws *laws, const struct cases_wanted *wanted, struct tally *tally,
              struct text *out, struct problems *problems)
{
    struct running running = {.laws = laws, .wanted = wanted};
    struct case_files files;
    struct case_list list = {.first = NULL};
    case_files_open(&files, laws->home, wanted, problems);
    while (read_batch(&files, &list, problems)) {
        if (!problems->out_of_memory)
            run_batch(&running, &list);
        tell_batch(&running, &list, tally, out);
        case_list_free(&list);
    }
    tally_rules(&running, tally);
    /* A file that does not run may hold the missing cases. */
    if (problems->count == 0)
        tally->failed += untested(&running, out);
    if (running.arena.failed)
        problem_out_of_memory(problems);
    arena_free(&running.arena);
    case_files_close(&files);
    return tally->failed > 0 || problems->count > 0 || problems->out_of_memory ? -1 : 0;
}
