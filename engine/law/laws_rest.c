#include "law/law.h"

#include <string.h>

/* By id, then file: places may each have a rule of one name. */
static int rule_order(const char *id, const char *file, const struct rule_name *known)
{
    const int by_id = strcmp(id, known->id);
    return by_id != 0 ? by_id : strcmp(file, known->file);
}

/* Both are sorted by id: merged in one walk. False when out of memory; the names are then
 * what they were. */
static bool merge_rules(struct rule_names *names, const struct rulebook *book)
{
    struct rule_name *merged = arena_array(&names->arena, names->count + book->rule_count + 1,
                                           sizeof(*merged));
    size_t count = 0, at = 0;
    for (const struct rule *r = book->rules; merged != NULL && r != NULL; r = r->next) {
        while (at < names->count && rule_order(r->id, r->file, &names->items[at]) > 0)
            merged[count++] = names->items[at++];
        if (at < names->count && rule_order(r->id, r->file, &names->items[at]) == 0)
            continue;
        merged[count++] = (struct rule_name){arena_copy(&names->arena, r->id),
                                             arena_copy(&names->arena, r->file), r->line,
                                             r->asks_only};
    }
    while (merged != NULL && at < names->count)
        merged[count++] = names->items[at++];
    const bool failed = names->arena.failed;
    /* The next call begins with what memory there is then. */
    names->arena.failed = false;
    if (failed)
        return false;
    names->items = merged;
    names->count = count;
    return true;
}

/* Most laws have no rule that another has not. */
static bool has_new_rule(const struct rule_names *names, const struct rulebook *book)
{
    size_t at = 0;
    for (const struct rule *r = book->rules; r != NULL; r = r->next) {
        while (at < names->count && rule_order(r->id, r->file, &names->items[at]) > 0)
            at++;
        if (at == names->count || rule_order(r->id, r->file, &names->items[at]) != 0)
            return true;
    }
    return false;
}

static bool note_rules(struct rule_names *names, const struct rulebook *book)
{
    return !has_new_rule(names, book) || merge_rules(names, book);
}

bool laws_rest_rules(struct laws *laws)
{
    for (const struct law *law = laws->first; law != NULL; law = law->next)
        if (law->book != NULL && !note_rules(&laws->rules, law->book))
            return false;
    return true;
}

/* Of those awake that can rest, the one that was used before the others. */
static struct law *longest_unused(const struct laws *laws, size_t *awake, size_t *bytes)
{
    struct law *found = NULL;
    *awake = *bytes = 0;
    for (struct law *law = laws->first; law != NULL; law = law->next) {
        if (law->book == NULL || law->profile == NULL || law->held)
            continue;
        ++*awake;
        *bytes += rulebook_bytes(law->book);
        if (found == NULL || law->used < found->used)
            found = law;
    }
    return found;
}

void laws_rest(struct laws *laws, size_t awake)
{
    size_t count, bytes;
    if (laws->holders > 0)
        return;
    struct law *law = longest_unused(laws, &count, &bytes);
    /* The last one used stays, whatever it takes: it is loaded again for every case else. */
    for (; count > awake || (count > 1 && bytes > LAWS_AWAKE_BYTES);
         law = longest_unused(laws, &count, &bytes)) {
        if (!note_rules(&laws->rules, law->book)) {
            laws->out_of_memory = true;
            return;
        }
        /* Others go on counting while they share it. */
        if (law->book->whole->holders == 1)
            laws->steps_rested += law->book->sandbox->taken;
        rulebook_free(law->book);
        law->book = NULL;
    }
}

void laws_rest_never(struct laws *laws, const struct law *law)
{
    for (struct law *l = laws->first; l != NULL; l = l->next)
        l->held = l->held || l == law;
}

void laws_rest_any(struct laws *laws)
{
    for (struct law *l = laws->first; l != NULL; l = l->next)
        l->held = false;
}
