/* Which planes of a roof are drawn together: those whose lengths leave no doubt that they
 * meet. */
#include "draw/plan_parts.h"

#include <math.h>
#include <string.h>

static bool same_plane(const struct plan_plane *a, const struct plan_plane *b)
{
    return plan_alike(a->eave_ft, b->eave_ft) && plan_alike(a->ridge_ft, b->ridge_ft)
           && plan_alike(a->run_ft, b->run_ft);
}

/* Four planes that close: two sides along the ridge, two ends in triangles; and
 * none of them is listed with a side that is no hip. */
static bool closes(const struct plan_plane *planes, size_t partner, size_t *end)
{
    size_t ends[2], count = 0;
    for (size_t i = 1; i < PLAN_BLOCK_PLANES; i++)
        if (i != partner)
            ends[count++] = i;
    const struct plan_plane *side = &planes[0], *tip = &planes[ends[0]];
    end[0] = ends[0];
    end[1] = ends[1];
    for (size_t i = 0; i < PLAN_BLOCK_PLANES; i++)
        if (planes[i].rakes > 0 || planes[i].valleys > 0)
            return false;
    return same_plane(side, &planes[partner]) && same_plane(tip, &planes[ends[1]])
           && plan_alike(tip->ridge_ft, 0)
           && plan_alike(side->eave_ft, side->ridge_ft + 2 * tip->run_ft)
           && plan_alike(tip->eave_ft, 2 * side->run_ft);
}

/* The four are one block: sides above and below the ridge, ends left and right of it. */
static void make_hip(struct plan_layout *layout, size_t first, size_t second, const size_t end[2])
{
    const struct plan_plane *side = &layout->plan->planes[first];
    const double out = layout->plan->planes[end[0]].run_ft;
    layout->blocks[layout->count++] = (struct plan_block){.kind = BLOCK_HIP,
                                                          .planes = {first, second, end[0], end[1]},
                                                          .left = out,
                                                          .right = side->ridge_ft + out,
                                                          .up = side->run_ft,
                                                          .down = side->run_ft};
    for (size_t i = 0; i < PLAN_BLOCK_PLANES; i++)
        layout->placed[i] = true;
}

/* Tries each plane as a side, and each other one as its partner across the ridge. */
static void find_hip(struct plan_layout *layout)
{
    const struct plan_drawing *plan = layout->plan;
    if (plan->count != PLAN_BLOCK_PLANES)
        return;
    for (size_t first = 0; first < PLAN_BLOCK_PLANES; first++) {
        /* Start from a side that has a ridge, if any has. */
        struct plan_plane planes[PLAN_BLOCK_PLANES];
        size_t end[2];
        for (size_t i = 0; i < PLAN_BLOCK_PLANES; i++)
            planes[i] = plan->planes[(first + i) % PLAN_BLOCK_PLANES];
        for (size_t partner = 1; partner < PLAN_BLOCK_PLANES; partner++)
            if (closes(planes, partner, end)) {
                for (size_t i = 0; i < 2; i++)
                    end[i] = (first + end[i]) % PLAN_BLOCK_PLANES;
                make_hip(layout, first, (first + partner) % PLAN_BLOCK_PLANES, end);
                return;
            }
    }
}

/* The only other plane with an upper edge as long, or the plane itself. */
static size_t partner_of(const struct plan_drawing *plan, size_t index)
{
    size_t partner = index, found = 0;
    for (size_t i = 0; i < plan->count; i++)
        if (i != index && plan_alike(plan->planes[i].ridge_ft, plan->planes[index].ridge_ft)) {
            partner = i;
            found++;
        }
    return found == 1 && !plan_alike(plan->planes[index].ridge_ft, 0) ? partner : index;
}

/* Pairs share a ridge when together they make up all the ridge there is, and
 * what is left over could not make up any of it. */
static bool pairs_are_sure(const struct plan_drawing *plan)
{
    double ridge = 0, rest = 0;
    for (size_t i = 0; i < plan->count; i++) {
        if (partner_of(plan, i) != i)
            ridge += plan->planes[i].ridge_ft / 2;
        else
            rest += plan->planes[i].ridge_ft / 2;
    }
    /* Half a foot: the total was taped in pieces. Where a rest could be part of it,
     * pairing would be a guess, and planes are drawn one by one. */
    return ridge > 0 && fabs(ridge - plan->ridge_ft) < 0.5 && rest < ridge;
}

/* Widens the block by one of its planes. */
static void span_block(const struct plan_layout *layout, struct plan_block *block, size_t which)
{
    struct plan_outline outline;
    plan_outline_of(&layout->plan->planes[block->planes[which]], &outline);
    for (size_t i = 0; i < outline.count; i++) {
        block->left = fmax(block->left, -outline.corners[i].x);
        block->right = fmax(block->right, outline.corners[i].x);
    }
    const double run = layout->plan->planes[block->planes[which]].run_ft;
    if (which == 0)
        block->down = run;
    else
        block->up = run;
}

/* By its name only: nothing else tells the street side. */
static bool is_behind(const struct plan_plane *plane)
{
    return plane->name != NULL
           && (strstr(plane->name, "back") != NULL || strstr(plane->name, "rear") != NULL);
}

/* The plane seen from the street goes below the ridge, the other above it. */
static void make_block(struct plan_layout *layout, size_t index, bool paired)
{
    struct plan_block *block = &layout->blocks[layout->count++];
    const size_t partner = paired ? partner_of(layout->plan, index) : index;
    const bool swap = partner != index && is_behind(&layout->plan->planes[index]);
    *block = (struct plan_block){.kind = partner != index ? BLOCK_PAIR : BLOCK_SINGLE,
                                 .planes = {swap ? partner : index, swap ? index : partner}};
    layout->placed[index] = layout->placed[partner] = true;
    span_block(layout, block, 0);
    if (block->kind == BLOCK_PAIR)
        span_block(layout, block, 1);
}

void plan_make_blocks(struct plan_layout *layout)
{
    const struct plan_drawing *plan = layout->plan;
    bool known = isfinite(plan->ridge_ft);
    for (size_t i = 0; i < plan->count; i++)
        known = known && plan_is_known(&plan->planes[i]);
    if (known)
        find_hip(layout);
    const bool sure = known && pairs_are_sure(plan);
    for (size_t i = 0; i < plan->count; i++)
        if (!layout->placed[i] && plan_is_known(&plan->planes[i]))
            make_block(layout, i, sure);
}
