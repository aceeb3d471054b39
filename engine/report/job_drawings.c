#include "report/job_drawings.h"

#include "base/number.h"
#include "draw/drawings.h"
#include "job/slope.h"
#include "judge/drawing.h"
#include "trade/geometry.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

/* Of one kind, so that a job of sixty eaves does not print sixty times. */
enum { EACH_MOST = 6, POINTER_MOST = 64, ID_MOST = 32 };

struct collecting {
    const struct drawings *from;
    const struct drawing *drawing; /* being made */
    struct text *out;
    size_t count;   /* figures so far */
    size_t missed;  /* of this kind, past EACH_MOST */
    size_t of_kind; /* drawn of this kind */
    char id[ID_MOST];
    struct draw_sheet sheet; /* the figure being made */
};

/* Facts ------------------------------------------------------------------------- */

static const cJSON *child(const cJSON *group, const char *name)
{
    return cJSON_GetObjectItemCaseSensitive(group, name);
}

static double number_of(const cJSON *group, const char *name)
{
    const cJSON *value = child(group, name);
    return cJSON_IsNumber(value) ? value->valuedouble : NAN;
}

static const char *text_of(const cJSON *group, const char *name)
{
    return cJSON_GetStringValue(child(group, name));
}

static bool is_text(const cJSON *group, const char *name, const char *wanted)
{
    const char *text = text_of(group, name);
    return text != NULL && strcmp(text, wanted) == 0;
}

static double pitch_of(const cJSON *slope)
{
    double rise = NAN;
    const char *text = text_of(slope, "pitch");
    return text != NULL && slope_parse(text, &rise) ? rise : NAN;
}

/* Item `index` of job.group.list, or of job.list. */
static const cJSON *list_of(const cJSON *job, const char *group, const char *list)
{
    return child(group == NULL ? job : child(job, group), list);
}

/* The item of a list with this name, and its place in it. */
static const cJSON *named(const cJSON *list, const char *name, size_t *index)
{
    const cJSON *item = NULL;
    size_t at = 0;
    cJSON_ArrayForEach(item, list)
    {
        if (name != NULL && is_text(item, "name", name)) {
            *index = at;
            return item;
        }
        at++;
    }
    return NULL;
}

/* Demands ----------------------------------------------------------------------- */

struct demand {
    bool judged;  /* the rule has something to say here */
    bool known;   /* and demands this number */
    double number;
    enum sense sense;
    const char *unit;
};

static bool is_about(const struct finding *finding, const char *rule, const char *item)
{
    return strcmp(finding->rule, rule) == 0
           && (finding->item == NULL || (item != NULL && strcmp(finding->item, item) == 0));
}

static void take(struct demand *demand, const struct finding *finding, bool known,
                 const struct value *required, enum sense sense)
{
    demand->judged = demand->judged || finding->outcome != OUTCOME_NOT_APPLICABLE;
    if (!known || required->kind != VALUE_NUMBER)
        return;
    demand->known = true;
    demand->number = required->number;
    demand->sense = sense;
    demand->unit = required->unit;
}

static struct demand demand_of(const struct collecting *collecting, const char *rule,
                               const char *item)
{
    struct demand demand = {.number = NAN};
    const struct card *card = collecting->from->card;
    const struct result *result = card == NULL ? collecting->from->result : &card->now;
    for (size_t i = 0; i < result->finding_count; i++)
        if (is_about(&result->findings[i], rule, item))
            take(&demand, &result->findings[i], result->findings[i].compared,
                 &result->findings[i].required, result->findings[i].sense);
    /* A plan shows what is demanded where nothing is measured yet. */
    for (size_t i = 0; card != NULL && !demand.known && i < card->plan.finding_count; i++)
        if (is_about(&card->plan.findings[i], rule, item))
            take(&demand, &card->plan.findings[i], card->plan.findings[i].compared,
                 &card->plan.findings[i].required, card->plan.findings[i].sense);
    for (size_t s = 0; card != NULL && s < card->section_count; s++)
        for (size_t i = 0; i < card->sections[s].count; i++) {
            const struct card_item *shown = &card->sections[s].items[i];
            if (is_about(shown->now, rule, item))
                take(&demand, shown->now, shown->demanded, &shown->required, shown->sense);
        }
    if (card != NULL && demand.known) /* as the card's rows have it */
        demand.number = number_on_tape(demand.number, demand.sense, demand.unit);
    return demand;
}

static const struct drawing_part *part_of(const struct collecting *collecting,
                                          const char *dimension)
{
    for (size_t i = 0; i < collecting->drawing->part_count; i++)
        if (strcmp(collecting->drawing->parts[i].dimension, dimension) == 0)
            return &collecting->drawing->parts[i];
    return NULL;
}

static double figure_of(const struct collecting *collecting, const char *dimension)
{
    const struct drawing_part *part = part_of(collecting, dimension);
    return part == NULL ? NAN : part->number;
}

/* What the finding of this dimension's rule demands for the item. */
static struct demand asked(const struct collecting *collecting, const char *dimension,
                           const char *item)
{
    const struct drawing_part *part = part_of(collecting, dimension);
    if (part == NULL || part->rule == NULL)
        return (struct demand){.number = NAN};
    return demand_of(collecting, part->rule, item);
}

static struct draw_amount amount_of(const struct collecting *collecting, const char *dimension,
                                    const char *item, double planned)
{
    const struct demand demand = asked(collecting, dimension, item);
    return (struct draw_amount){planned, demand.number, demand.sense};
}

/* Figures on the page ----------------------------------------------------------- */

static void start_section(struct collecting *collecting)
{
    if (collecting->count == 0)
        text_add(collecting->out, "<section class=\"drawings\" aria-labelledby=\"drawings\">\n"
                                  "<h2 id=\"drawings\">Drawings</h2>\n"
                                  "<div class=\"sheets\">\n");
    collecting->count++;
}

static void start_figure(struct collecting *collecting)
{
    start_section(collecting);
    snprintf(collecting->id, sizeof(collecting->id), "drawing-%zu", collecting->count);
    collecting->sheet = (struct draw_sheet){collecting->id, collecting->from->card != NULL};
    text_add(collecting->out, "<figure>\n");
}

static void end_figure(struct collecting *collecting, const char *what, const char *whose)
{
    text_addf(collecting->out, "<figcaption>%s", what);
    if (whose != NULL) {
        text_add(collecting->out, ": ");
        draw_escape(collecting->out, whose);
    }
    text_add(collecting->out, "</figcaption>\n</figure>\n");
}

/* A sentence in place of a drawing. */
static void leave_out(struct collecting *collecting, const char *what, const char *whose,
                      const char *why)
{
    start_section(collecting);
    text_addf(collecting->out, "<p>%s", what);
    if (whose != NULL) {
        text_add(collecting->out, " of ");
        draw_escape(collecting->out, whose);
    }
    text_addf(collecting->out, ": %s</p>\n", why);
}

/* Is there room for another of this kind? Counts those there is none for. */
static bool may_draw(struct collecting *collecting)
{
    if (collecting->of_kind >= EACH_MOST) {
        collecting->missed++;
        return false;
    }
    collecting->of_kind++;
    return true;
}

/* Plan -------------------------------------------------------------------------- */

static void count_sides(const cJSON *job, const char *slope, struct plan_plane *plane)
{
    const cJSON *edge = NULL;
    cJSON_ArrayForEach(edge, list_of(job, "roof", "edges"))
    {
        if (slope == NULL || !is_text(edge, "slope", slope))
            continue;
        plane->hips += is_text(edge, "kind", "hip");
        plane->valleys += is_text(edge, "kind", "valley");
        plane->rakes += is_text(edge, "kind", "rake") || is_text(edge, "kind", "sidewall");
        if (!is_text(edge, "kind", "eave") && !is_text(edge, "kind", "onto_roof"))
            continue;
        if (plane->eaves < 2)
            plane->eave_pieces_ft[plane->eaves] = number_of(edge, "length_ft");
        plane->eaves++;
    }
}

static struct plan_plane plane_of(const cJSON *job, const cJSON *slope)
{
    struct plan_plane plane = {.name = text_of(slope, "name"),
                               .pitch = pitch_of(slope),
                               .eave_ft = number_of(slope, "eave_ft"),
                               .ridge_ft = number_of(slope, "ridge_ft"),
                               .run_ft = number_of(slope, "run_ft"),
                               .plan_sqft = number_of(slope, "plan_sqft")};
    count_sides(job, plane.name, &plane);
    return plane;
}

static void add_plan(struct collecting *collecting)
{
    const cJSON *job = collecting->from->job, *slope = NULL;
    struct plan_plane planes[PLAN_PLANES_MOST] = {{0}};
    struct plan_drawing plan = {.planes = planes, .ridge_ft = number_of(child(job, "roof"),
                                                                        "ridge_ft")};
    cJSON_ArrayForEach(slope, list_of(job, "roof", "slopes"))
    {
        if (plan.count == PLAN_PLANES_MOST)
            break;
        planes[plan.count++] = plane_of(job, slope);
    }
    if (plan.count == 0) {
        leave_out(collecting, "Roof plan", NULL, "the job lists no planes.");
        return;
    }
    start_figure(collecting);
    plan_draw(&plan, &collecting->sheet, collecting->out);
    end_figure(collecting, "Roof plan", NULL);
}

/* Decks ------------------------------------------------------------------------- */

/* The largest plane over the deck, or NULL. */
static const cJSON *largest_plane(const cJSON *job, const char *deck)
{
    const cJSON *slope = NULL, *largest = NULL;
    double most = -1;
    cJSON_ArrayForEach(slope, list_of(job, "roof", "slopes"))
    {
        const struct plan_plane plane = plane_of(job, slope);
        const double area = plan_area_sqft(&plane);
        if (deck != NULL && is_text(slope, "deck", deck) && (largest == NULL || area > most)) {
            largest = slope;
            most = isfinite(area) ? area : most;
        }
    }
    return largest;
}

/* A drawing with rules is left out where none of them applies. */
static bool applies(const struct collecting *collecting, const char *item)
{
    bool any = false, ruled = false;
    for (size_t i = 0; i < collecting->drawing->part_count; i++) {
        const struct drawing_part *part = &collecting->drawing->parts[i];
        ruled = ruled || part->rule != NULL;
        any = any || (part->rule != NULL && demand_of(collecting, part->rule, item).judged);
    }
    return any || !ruled;
}

static void add_nailing(struct collecting *collecting, const cJSON *deck, const char *item)
{
    const cJSON *job = collecting->from->job, *nails = child(deck, "nails");
    const char *name = text_of(deck, "name");
    const cJSON *plane = largest_plane(job, name);
    const struct plan_plane sides = plane_of(job, plane);
    const struct nailing_drawing nailing = {
        .deck = name,
        .plane = sides,
        .up_ft = trade_sloped_length_ft(number_of(plane, "run_ft"), pitch_of(plane)),
        .edge = amount_of(collecting, "edge", item, number_of(nails, "edge_spacing_in")),
        .field = amount_of(collecting, "field", item, number_of(nails, "field_spacing_in")),
        .gable = amount_of(collecting, "gable", item, number_of(nails, "gable_spacing_in")),
        .band = amount_of(collecting, "band", item, number_of(nails, "band_spacing_in")),
        .band_width = amount_of(collecting, "band_width", item,
                                number_of(nails, "band_width_in")),
    };
    start_figure(collecting);
    nailing_draw(&nailing, &collecting->sheet, collecting->out);
    end_figure(collecting, "Nailing zones", name);
}

static struct panel_drawing panel_of(const struct collecting *collecting, const cJSON *deck,
                                     const char *item)
{
    const cJSON *nails = child(deck, "nails");
    return (struct panel_drawing){
        .deck = text_of(deck, "name"),
        .length_in = figure_of(collecting, "length"),
        .width_in = figure_of(collecting, "width"),
        .support_in = number_of(deck, "support_spacing_in"),
        .edge = amount_of(collecting, "edge", item, number_of(nails, "edge_spacing_in")),
        .field = amount_of(collecting, "field", item, number_of(nails, "field_spacing_in")),
        .edge_distance = amount_of(collecting, "edge_distance", item,
                                   number_of(nails, "edge_distance_in")),
        .gap = amount_of(collecting, "gap", item, number_of(deck, "panel_gap_in")),
    };
}

static bool same(double a, double b)
{
    return (isnan(a) && isnan(b)) || fabs(a - b) < 0.001;
}

static bool same_amount(const struct draw_amount *a, const struct draw_amount *b)
{
    return same(a->planned, b->planned) && same(a->demanded, b->demanded);
}

static bool same_panel(const struct panel_drawing *a, const struct panel_drawing *b)
{
    return same(a->support_in, b->support_in) && same_amount(&a->edge, &b->edge)
           && same_amount(&a->field, &b->field) && same_amount(&a->edge_distance, &b->edge_distance)
           && same_amount(&a->gap, &b->gap);
}

static void add_name(struct text *names, const char *name, const char *other)
{
    text_addf(names, "%s%s", names->length > 0 ? ", " : "", name == NULL ? other : name);
}

/* Decks whose nailing is drawn. */
enum { DECKS_MOST = 20 };

struct decks {
    const cJSON *items[DECKS_MOST];
    struct panel_drawing panels[DECKS_MOST];
    char pointers[DECKS_MOST][POINTER_MOST];
    bool drawn[DECKS_MOST];
    size_t count;
};

/* Collects them, and says of the others why they are not drawn. */
static void collect_decks(struct collecting *collecting, const char *what, struct decks *decks)
{
    const cJSON *deck = NULL;
    size_t index = 0;
    cJSON_ArrayForEach(deck, child(collecting->from->job, "decks"))
    {
        char item[POINTER_MOST];
        snprintf(item, sizeof(item), "/decks/%zu", index++);
        const bool panels = is_text(deck, "kind", "panel") || is_text(deck, "work", "paneled_over");
        if (!panels) {
            leave_out(collecting, what, text_of(deck, "name"),
                      "not drawn; boards are nailed at each rafter.");
        } else if (!applies(collecting, item)) {
            leave_out(collecting, what, text_of(deck, "name"),
                      "not drawn; this deck is not nailed in this job.");
        } else if (decks->count < DECKS_MOST) {
            decks->items[decks->count] = deck;
            decks->panels[decks->count] = panel_of(collecting, deck, item);
            memcpy(decks->pointers[decks->count++], item, sizeof(item));
        }
    }
}

static void add_zones(struct collecting *collecting)
{
    struct decks decks = {.count = 0};
    collect_decks(collecting, "Nailing zones", &decks);
    for (size_t i = 0; i < decks.count; i++)
        if (may_draw(collecting))
            add_nailing(collecting, decks.items[i], decks.pointers[i]);
}

/* One drawing for all panels that look alike. */
static void add_panels(struct collecting *collecting)
{
    struct decks decks = {.count = 0};
    collect_decks(collecting, "A panel and its nails", &decks);
    for (size_t i = 0; i < decks.count; i++) {
        struct text names = TEXT_EMPTY;
        if (decks.drawn[i] || !may_draw(collecting))
            continue;
        for (size_t k = i; k < decks.count; k++)
            if (same_panel(&decks.panels[i], &decks.panels[k])) {
                decks.drawn[k] = true;
                add_name(&names, decks.panels[k].deck, "deck");
            }
        start_figure(collecting);
        panel_draw(&decks.panels[i], &collecting->sheet, collecting->out);
        end_figure(collecting, "A panel and its nails", text_string(&names));
        collecting->out->failed = collecting->out->failed || names.failed;
        text_free(&names);
    }
}

/* Eaves ------------------------------------------------------------------------- */

static struct eave_drawing eave_of(const struct collecting *collecting, const cJSON *edge,
                                   const char *item)
{
    const cJSON *job = collecting->from->job, *metal = child(job, "drip_edge");
    size_t index = 0, unused = 0;
    const cJSON *slope = named(list_of(job, "roof", "slopes"), text_of(edge, "slope"), &index);
    const cJSON *sheet = named(child(job, "underlayments"), text_of(slope, "underlayment"),
                               &unused);
    char plane[POINTER_MOST];
    snprintf(plane, sizeof(plane), "/roof/slopes/%zu", index);
    const struct demand reach = asked(collecting, "reach", item);
    const double planned = number_of(edge, "ice_barrier_reach_in");
    const double wall_counts = figure_of(collecting, "wall_counts");
    const bool strip_alone = figure_of(collecting, "strip_alone") > 0;
    const cJSON *fitted = child(edge, "drip_edge");
    return (struct eave_drawing){
        .name = text_of(edge, "name"),
        .pitch = pitch_of(slope),
        .overhang_in = number_of(edge, "overhang_in"),
        .wall_in = number_of(edge, "wall_thickness_in"),
        .inside_in = reach.judged && isfinite(wall_counts) && !strip_alone
            ? figure_of(collecting, "inside") : NAN,
        .wall_counts = wall_counts > 0,
        .barrier = reach.judged || planned > 0,
        .reach = {planned, reach.number, reach.sense},
        .sheet_in = number_of(sheet, "roll_width_in"),
        .starter_in = number_of(sheet, "starter_width_in"),
        .head_lap = amount_of(collecting, "head_lap", plane, number_of(sheet, "head_lap_in")),
        .metal = cJSON_IsTrue(fitted)
                 || (!cJSON_IsFalse(fitted) && asked(collecting, "metal", item).judged),
        .over_metal = is_text(edge, "underlayment_lies", "over_metal"),
        .under_metal = is_text(edge, "underlayment_lies", "under_metal"),
        .down = amount_of(collecting, "down", item, number_of(metal, "down_in")),
        .back = amount_of(collecting, "back", item, number_of(metal, "back_in")),
        .spacing = amount_of(collecting, "spacing", item, number_of(metal, "fastener_spacing_in")),
    };
}

/* Would the two look alike? Their drip edge is the house's. */
static bool same_eave(const struct eave_drawing *a, const struct eave_drawing *b)
{
    return same(a->pitch, b->pitch) && same(a->overhang_in, b->overhang_in)
           && same(a->wall_in, b->wall_in) && same(a->inside_in, b->inside_in)
           && a->barrier == b->barrier && a->metal == b->metal && a->over_metal == b->over_metal
           && a->under_metal == b->under_metal && same(a->sheet_in, b->sheet_in)
           && same(a->starter_in, b->starter_in) && same_amount(&a->reach, &b->reach)
           && same_amount(&a->head_lap, &b->head_lap);
}

/* All eaves that have something to show; as many as a job may list. */
enum { EAVES_MOST = 200 };

struct eaves {
    struct eave_drawing items[EAVES_MOST];
    bool drawn[EAVES_MOST]; /* with one that looks alike */
    size_t count;
};

static void collect_eaves(const struct collecting *collecting, struct eaves *eaves)
{
    const cJSON *edge = NULL;
    size_t index = 0;
    cJSON_ArrayForEach(edge, list_of(collecting->from->job, "roof", "edges"))
    {
        char item[POINTER_MOST];
        snprintf(item, sizeof(item), "/roof/edges/%zu", index++);
        if (eaves->count < EAVES_MOST && is_text(edge, "kind", "eave") && applies(collecting, item))
            eaves->items[eaves->count++] = eave_of(collecting, edge, item);
    }
}

/* One drawing for all that look alike, with all their names. */
static void add_eaves(struct collecting *collecting)
{
    struct eaves eaves = {.count = 0};
    collect_eaves(collecting, &eaves);
    for (size_t i = 0; i < eaves.count; i++) {
        struct text names = TEXT_EMPTY;
        if (eaves.drawn[i] || !may_draw(collecting))
            continue;
        for (size_t k = i; k < eaves.count; k++) {
            if (!same_eave(&eaves.items[i], &eaves.items[k]))
                continue;
            eaves.drawn[k] = true;
            add_name(&names, eaves.items[k].name, "eave");
        }
        start_figure(collecting);
        eave_draw(&eaves.items[i], &collecting->sheet, collecting->out);
        end_figure(collecting, "Cut through the eave", text_string(&names));
        collecting->out->failed = collecting->out->failed || names.failed;
        text_free(&names);
    }
}

/* Courses and attics -------------------------------------------------------------- */

static void add_courses(struct collecting *collecting)
{
    const cJSON *covering = child(collecting->from->job, "covering");
    const cJSON *fasteners = child(collecting->from->job, "fasteners");
    if (!applies(collecting, NULL))
        return;
    const struct courses_drawing courses = {
        .strip_in = number_of(covering, "strip_length_in"),
        .exposure = amount_of(collecting, "exposure", NULL,
                              number_of(covering, "exposure_printed_in")),
        .offset = amount_of(collecting, "offset", NULL, number_of(covering, "offset_printed_in")),
        .nails = amount_of(collecting, "nails", NULL, number_of(fasteners, "per_shingle")),
        .few = figure_of(collecting, "few"),
        .many = figure_of(collecting, "many"),
        .end_in = NAN,
    };
    start_figure(collecting);
    courses_draw(&courses, &collecting->sheet, collecting->out);
    end_figure(collecting, "Courses of shingles and their nails", NULL);
}

static double vent_area(const cJSON *vent)
{
    const double by_ft = number_of(vent, "nfa_sqin_per_ft");
    if (isfinite(by_ft))
        return by_ft * number_of(vent, "length_ft");
    return number_of(vent, "nfa_each_sqin") * number_of(vent, "count");
}

static void add_vents(const cJSON *attic, struct attic_drawing *out)
{
    const cJSON *vent = NULL;
    cJSON_ArrayForEach(vent, child(attic, "vents"))
    {
        if (is_text(vent, "kind", "powered")) /* a fan has no area that counts */
            continue;
        double *place = is_text(vent, "place", "low")    ? &out->low_sqin
                        : is_text(vent, "place", "high") ? &out->high_sqin
                                                         : &out->other_sqin;
        *place += vent_area(vent);
    }
}

static void add_attics(struct collecting *collecting)
{
    const cJSON *attic = NULL;
    size_t index = 0;
    cJSON_ArrayForEach(attic, child(collecting->from->job, "attics"))
    {
        char item[POINTER_MOST];
        snprintf(item, sizeof(item), "/attics/%zu", index++);
        if (!may_draw(collecting))
            continue;
        struct attic_drawing air = {.name = text_of(attic, "name"),
                                    .area_sqft = number_of(attic, "area_sqft"),
                                    .needed = amount_of(collecting, "needed", item, NAN),
                                    .low = amount_of(collecting, "low", item, NAN)};
        add_vents(attic, &air);
        if (cJSON_IsFalse(child(attic, "vented")) || !applies(collecting, item)) {
            leave_out(collecting, "Air through the attic", air.name,
                      "not drawn; no vent area is judged there.");
            continue;
        }
        start_figure(collecting);
        attic_draw(&air, &collecting->sheet, collecting->out);
        end_figure(collecting, "Air through the attic", air.name);
    }
}

/* All of them -------------------------------------------------------------------- */

static void add_drawing(struct collecting *collecting)
{
    const char *name = collecting->drawing->name;
    collecting->of_kind = collecting->missed = 0;
    if (strcmp(name, "plan") == 0)
        add_plan(collecting);
    else if (strcmp(name, "nailing") == 0)
        add_zones(collecting);
    else if (strcmp(name, "panel") == 0)
        add_panels(collecting);
    else if (strcmp(name, "eave") == 0)
        add_eaves(collecting);
    else if (strcmp(name, "courses") == 0)
        add_courses(collecting);
    else if (strcmp(name, "attic") == 0)
        add_attics(collecting);
    if (collecting->missed > 0)
        text_addf(collecting->out, "<p>%zu more like these are not drawn.</p>\n",
                  collecting->missed);
}

int job_drawings_add(const struct drawings *drawings, struct text *out)
{
    struct collecting collecting = {.from = drawings, .out = out};
    for (const struct drawing *d = drawings->result->drawings; d != NULL; d = d->next) {
        if (drawings->card != NULL && !d->stages[drawings->card->stage])
            continue;
        collecting.drawing = d;
        add_drawing(&collecting);
    }
    if (collecting.count > 0)
        text_add(out, "</div>\n</section>\n");
    return out->failed ? -1 : 0;
}
