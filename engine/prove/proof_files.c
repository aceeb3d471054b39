/* proof_files.c - files that stand beside a place's own and are named as if they were of it, but
 * that nothing of it names: they are not read. */
#include "prove/proof.h"

#include "base/text.h"
#include "profile/places.h"

#include <errno.h>
#include <string.h>

struct looking {
    struct proof *proof;
    struct place_proof *place;
    const struct place *written;
    size_t folder; /* bytes of it, with the slash, in the path of the place's file */
};

static bool is_named(const struct looking *looking, const char *file)
{
    for (const struct block *b = looking->written->blocks; b != NULL; b = b->next) {
        if (b->rules != NULL && strcmp(b->rules, file) == 0)
            return true;
        for (size_t i = 0; i < b->part_count; i++)
            if (strcmp(b->parts[i], file) == 0)
                return true;
    }
    return false;
}

/* "walk.fire.lua" beside "walk.lua". */
static void look_at_file(void *data, const char *path)
{
    const struct looking *looking = data;
    const char *own = looking->written->source->path;
    const size_t stem = strlen(own) - strlen("lua");
    if (strncmp(path, own, stem) != 0 || strcmp(path, own) == 0 || text_ends_in(path, ".cases.lua")
        || is_named(looking, path + looking->folder))
        return;
    const bool rules = text_ends_in(path, ".rules.lua");
    proof_remark(
        looking->proof, looking->place, looking->place->blocks,
        (struct remark){path, 0, false,
                        arena_format(&looking->proof->arena,
                                     "is named by nothing in %s, and not read: write %s "
                                     "there, or take the file away",
                                     own, rules ? "rules = \"...\"" : "parts = { \"...\" }"),
                        NULL});
}

void proof_files(struct proof *proof, struct place_proof *place, const struct place *written)
{
    const char *own = written->source->path;
    struct looking looking = {proof, place, written, 0};
    if (place->blocks == NULL)
        return;
    looking.folder = (size_t)(strrchr(own, '/') - own) + 1;
    const char *folder = arena_copy_n(&proof->arena, own, looking.folder - 1);
    if (folder != NULL
        && home_each(proof->laws->home, folder, ".lua", 0, look_at_file, &looking) != 0
        && errno == ENOMEM)
        proof->arena.failed = true;
}

/* "jurisdictions/example/wlak.cases.lua" of no place example/wlak. */
static void look_at_cases(void *data, const char *path)
{
    struct proof *proof = data;
    static const char FOLDER[] = "jurisdictions/";
    const size_t length = strlen(path) - strlen(FOLDER) - strlen(".cases.lua");
    const char *id = arena_copy_n(&proof->arena, path + strlen(FOLDER), length);
    if (id == NULL || proof_order_rank(proof, id) < proof->ids.count)
        return;
    proof_place_unread(
        proof, path,
        arena_format(&proof->arena, "stands beside no place: there is no jurisdiction \"%s\"", id));
}

void proof_files_of_none(struct proof *proof)
{
    if (home_each(proof->laws->home, "jurisdictions", ".cases.lua", 6, look_at_cases, proof) != 0
        && errno == ENOMEM)
        proof->arena.failed = true;
}
