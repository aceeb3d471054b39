/* proof_digest.c - what of a law's rulebook those who follow it are held against, kept when the
 * rulebook goes: to load it again for each of them takes longer than all the rest. */
#include "prove/proof.h"

#include "judge/row_silent.h"

#include <stdlib.h>
#include <string.h>

static int text_order(const void *a, const void *b)
{
    return strcmp(*(const char *const *)a, *(const char *const *)b);
}

static const char **find_text(const char **texts, size_t count, const char *wanted)
{
    return count == 0 ? NULL : bsearch(&wanted, texts, count, sizeof(*texts), text_order);
}

static void keep_rules(struct proof *proof, struct law_digest *digest, const struct rulebook *book)
{
    digest->rules = arena_array(&proof->arena, book->rule_count + 1, sizeof(*digest->rules));
    digest->silent = arena_array(&proof->arena, book->rule_count + 1, sizeof(*digest->silent));
    if (digest->rules == NULL || digest->silent == NULL)
        return;
    for (const struct rule *r = book->rules; r != NULL; r = r->next) {
        const char *id = arena_copy(&proof->arena, r->id);
        if (id == NULL)
            return;
        digest->silent[digest->rule_count] = row_silent(book, r);
        digest->rules[digest->rule_count++] = id;
    }
}

/* Fields are walked as the tree they are; FIELDS_DEEPEST bounds it. */
static void keep_fields(struct proof *proof, struct law_digest *digest, const struct field *field)
{
    for (const struct field *f = field->first_child; f != NULL; f = f->next) {
        const char *path = arena_copy(&proof->arena, f->path);
        if (path == NULL)
            return;
        digest->fields[digest->field_count++] = path;
        keep_fields(proof, digest, f);
    }
}

static struct law_digest *digest_new(struct proof *proof, const struct law *law)
{
    struct law_digest *digest = arena_alloc(&proof->arena, sizeof(*digest));
    const struct fields *fields = &law->book->fields;
    if (digest == NULL)
        return NULL;
    digest->law = law;
    digest->fields = arena_array(&proof->arena, fields->count + 1, sizeof(*digest->fields));
    if (digest->fields == NULL)
        return NULL;
    keep_rules(proof, digest, law->book);
    keep_fields(proof, digest, fields->root);
    if (proof->arena.failed)
        return NULL;
    qsort(digest->fields, digest->field_count, sizeof(*digest->fields), text_order);
    digest->next = proof->digests;
    proof->digests = digest;
    return digest;
}

const struct law_digest *proof_digest(struct laws *laws, struct proof *proof, const char *id,
                                      long day)
{
    struct problems ignored = {0};
    const struct law *law = laws_known(laws, id, day);
    for (const struct law_digest *d = proof->digests; law != NULL && d != NULL; d = d->next)
        if (d->law == law)
            return d;
    law = laws_find(laws, id, day, "", &ignored);
    laws_drop_problems(laws, &ignored);
    return law == NULL ? NULL : digest_new(proof, law);
}

bool proof_digest_rule(const struct law_digest *digest, const char *id, bool *silent)
{
    const char **found = find_text(digest->rules, digest->rule_count, id);
    if (found != NULL)
        *silent = digest->silent[found - digest->rules];
    return found != NULL;
}

bool proof_digest_field(const struct law_digest *digest, const char *path)
{
    return find_text(digest->fields, digest->field_count, path) != NULL;
}
