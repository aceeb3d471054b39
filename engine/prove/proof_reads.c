/* proof_reads.c - what functions declare that they read, and no case of a rule that has it
 * comes to: a case is missing, or the declaration says too much. */
#include "prove/proof.h"

#include "judge/reads.h"

#include <string.h>

/* A name that a declaration holds; of one that several laws load it is the same. */
struct declared_name {
    const char *name;
    bool is_figure, read;
    struct declared_name *next;
};

struct declared_part {
    const char *file;
    int line;
    struct declared_name *names;
    struct declared_part *next;
};

static struct declared_part *part_at(struct proof *proof, const struct reads_part *part)
{
    struct declared_part **at = &proof->declared[(unsigned)part->line % PROOF_DECLARED_ROWS];
    for (; *at != NULL; at = &(*at)->next)
        if ((*at)->line == part->line && strcmp((*at)->file, part->file) == 0)
            return *at;
    struct declared_part *made = arena_alloc(&proof->arena, sizeof(*made));
    if (made == NULL)
        return NULL;
    made->file = arena_copy(&proof->arena, part->file);
    made->line = part->line;
    return made->file == NULL ? NULL : (*at = made);
}

static void note_name(struct proof *proof, struct declared_part *part, const char *name,
                      bool is_figure, bool read)
{
    struct declared_name **at = &part->names;
    while (*at != NULL && ((*at)->is_figure != is_figure || strcmp((*at)->name, name) != 0))
        at = &(*at)->next;
    if (*at == NULL) {
        struct declared_name *made = arena_alloc(&proof->arena, sizeof(*made));
        if (made == NULL)
            return;
        *made = (struct declared_name){arena_copy(&proof->arena, name), is_figure, false, NULL};
        if (made->name == NULL)
            return;
        *at = made;
    }
    (*at)->read = (*at)->read || read;
}

/* Rows of a table, and what only leads to a fact, are not named one by one. */
static void note_part(struct proof *proof, const struct law *law, const struct reads_part *part,
                      const struct probe *probe)
{
    struct declared_part *declared = part_at(proof, part);
    for (size_t i = 0; declared != NULL && i < part->fact_count; i++)
        if (!part->facts[i].led)
            note_name(proof, declared, part->facts[i].field->path, false,
                      probe->facts[part->facts[i].field->number]);
    for (size_t i = 0; declared != NULL && i < part->figure_count; i++)
        if (!reads_is_optional(law->book, &part->figures[i]))
            note_name(proof, declared, part->figures[i].figure->name, true,
                      probe->asked[rulebook_figure(law->book, part->figures[i].figure)
                                   - law->profile->figures]);
}

void proof_reads_case(struct proof *proof, const struct law *law, const char *id,
                      const struct probe *probe)
{
    const struct rule *rule = rulebook_rule(law->book, id);
    if (rule == NULL || probe->facts == NULL || probe->asked == NULL)
        return;
    for (size_t i = 0; i < rule->reads->part_count; i++)
        note_part(proof, law, rule->reads->parts[i], probe);
}

/* In its place's proof, or of the rules of all places. */
static void say(struct proof *proof, const struct declared_part *part,
                const struct declared_name *name)
{
    const char *says = arena_format(&proof->arena,
                                    "%s \"%s\" is declared under reads, and no case comes to it: "
                                    "add one that does, or take it out",
                                    name->is_figure ? "figure" : "fact", name->name);
    for (struct place_proof *place = proof->places; place != NULL; place = place->next)
        if (says != NULL && place->blocks != NULL && strings_have(&place->own_rules, part->file)) {
            proof_remark(proof, place, place->blocks,
                         (struct remark){part->file, part->line, false, says, NULL});
            return;
        }
    if (says == NULL || !proof->of_all)
        return;
    text_addf(&proof->lines, "%s:%d: %s\n", part->file, part->line, says);
    proof->unread++;
}

void proof_reads_say(struct proof *proof)
{
    for (size_t row = 0; row < PROOF_DECLARED_ROWS; row++)
        for (const struct declared_part *p = proof->declared[row]; p != NULL; p = p->next)
            for (const struct declared_name *n = p->names; n != NULL; n = n->next)
                if (!n->read)
                    say(proof, p, n);
}
