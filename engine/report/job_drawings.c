#include "report/job_drawings.h"

#include "report/drawing_shapes.h"

#include <stdio.h>
#include <stdlib.h>

/* Of one kind, so that a job of sixty eaves does not print sixty times. */
enum { EACH_MOST = 6, ID_MOST = 32 };

struct collecting {
    const struct drawings *from;
    struct text *out;
    size_t count;   /* figures and sentences so far */
    size_t of_kind; /* drawn of this kind */
    size_t missed;  /* past EACH_MOST */
};

/* Figures on the page ----------------------------------------------------------- */

/* The heading comes with the first drawing or sentence; without any there is no section. */
static void start_section(struct collecting *collecting)
{
    if (collecting->count == 0)
        text_add(collecting->out, "<section class=\"drawings\" aria-labelledby=\"drawings\">\n"
                                  "<h2 id=\"drawings\">Drawings</h2>\n"
                                  "<div class=\"sheets\">\n");
    collecting->count++;
}

static void add_figure(struct collecting *collecting, const struct drawing_shape *shape,
                       const struct drawing_shown *shown, const char *whose)
{
    char id[ID_MOST];
    start_section(collecting);
    snprintf(id, sizeof(id), "drawing-%zu", collecting->count);
    const struct draw_sheet sheet = {id, collecting->from->card != NULL};
    text_addf(collecting->out, "<figure data-drawing=\"%s\">\n", shape->name);
    shape->draw(shown, &sheet, collecting->out);
    text_addf(collecting->out, "<figcaption>%s", shape->caption);
    if (whose != NULL) {
        text_add(collecting->out, ": ");
        draw_escape(collecting->out, whose);
    }
    text_add(collecting->out, "</figcaption>\n</figure>\n");
}

/* A sentence in place of a drawing. */
static void leave_out(struct collecting *collecting, const struct drawing_shape *shape,
                      const char *whose, const char *why)
{
    start_section(collecting);
    text_addf(collecting->out, "<p>%s", shape->caption);
    if (whose != NULL) {
        text_add(collecting->out, " of ");
        draw_escape(collecting->out, whose);
    }
    text_add(collecting->out, ": not drawn; ");
    draw_escape(collecting->out, why);
    text_add(collecting->out, ".</p>\n");
}

/* The kind as a whole has nothing to be drawn of. */
static void add_empty(struct collecting *collecting, const struct drawing_shape *shape)
{
    start_section(collecting);
    text_addf(collecting->out, "<p>%s: %s.</p>\n", shape->caption, shape->empty);
}

/* One drawing ----------------------------------------------------------------------- */

/* Things of one kind that are drawn. */
struct kind {
    const struct drawing_shape *shape;
    struct drawing_shown *shown;
    bool *done; /* drawn, with one that looks alike */
    size_t count;
};

/* Keeps those that are drawn, and says of the others why they are not. */
static void collect(struct collecting *collecting, const struct drawn *drawn, struct kind *kind)
{
    for (size_t i = 0; i < drawn->itself.count; i++) {
        const struct drawn_item *item = &drawn->itself.items[i];
        struct drawing_shown *shown = &kind->shown[kind->count];
        drawing_demand(collecting->from, drawn, i, shown);
        const char *why = item->left_out ? item->why : drawn->drawing->unjudged;
        if (!item->left_out && shown->speaks)
            kind->count++;
        else if (why != NULL)
            leave_out(collecting, kind->shape, item->name, why);
    }
}

/* The names of all that look like this one, which are then drawn with it. */
static void name_alike(struct kind *kind, size_t first, struct text *names)
{
    for (size_t i = first; i < kind->count; i++) {
        const char *name = kind->shown[i].item->name;
        if (!drawing_shapes_alike(&kind->shown[first], &kind->shown[i]))
            continue;
        kind->done[i] = true;
        text_addf(names, "%s%s", names->length > 0 ? ", " : "",
                  name == NULL ? kind->shape->called : name);
    }
}

/* Past the most of a kind they are only counted. */
static void add_kind(struct collecting *collecting, struct kind *kind)
{
    for (size_t i = 0; i < kind->count; i++) {
        struct text names = TEXT_EMPTY;
        if (kind->done[i])
            continue;
        if (collecting->of_kind == EACH_MOST) {
            collecting->missed++;
            continue;
        }
        collecting->of_kind++;
        if (kind->shape->called != NULL)
            name_alike(kind, i, &names);
        add_figure(collecting, kind->shape, &kind->shown[i],
                   kind->shape->called == NULL ? kind->shown[i].item->name : text_string(&names));
        collecting->out->failed = collecting->out->failed || names.failed;
        text_free(&names);
    }
}

static void add_drawing(struct collecting *collecting, const struct drawn *drawn)
{
    struct kind kind = {.shape = drawing_shapes_find(drawn->drawing->name)};
    /* One more, so that nothing to draw is no request for no memory. */
    const size_t most = drawn->itself.count + 1;
    if (kind.shape->empty != NULL && drawn->lists[0].count == 0) {
        add_empty(collecting, kind.shape);
        return;
    }
    kind.shown = calloc(most, sizeof(*kind.shown));
    kind.done = calloc(most, sizeof(*kind.done));
    collecting->of_kind = collecting->missed = 0;
    if (kind.shown != NULL && kind.done != NULL) {
        collect(collecting, drawn, &kind);
        add_kind(collecting, &kind);
    } else {
        collecting->out->failed = true;
    }
    free(kind.shown);
    free(kind.done);
    if (collecting->missed > 0)
        text_addf(collecting->out, "<p>%zu more like these are not drawn.</p>\n",
                  collecting->missed);
}

int job_drawings_add(const struct drawings *drawings, struct text *out)
{
    struct collecting collecting = {.from = drawings, .out = out};
    for (const struct drawn *d = drawings->result->drawings; d != NULL; d = d->next)
        /* A card shows what is looked at at its stage; a report shows all. */
        if (drawings->card == NULL || d->drawing->stages[drawings->card->stage])
            add_drawing(&collecting, d);
    if (collecting.count > 0)
        text_add(out, "</div>\n</section>\n");
    return out->failed ? -1 : 0;
}
