#include "judge/drawing.h"

#include <string.h>

enum { DIMENSIONS_MOST = 10 };

static const struct {
    const char *name;
    const char *dimensions[DIMENSIONS_MOST];
} DRAWINGS[] = {
    {"plan", {NULL}},
    {"nailing", {"edge", "field", "gable", "band", "band_width", NULL}},
    {"panel", {"edge", "field", "edge_distance", "gap", "length", "width", NULL}},
    {"eave", {"reach", "head_lap", "metal", "down", "back", "spacing", "inside",
              "wall_counts", "strip_alone", NULL}},
    {"courses", {"exposure", "offset", "nails", "few", "many", NULL}},
    {"attic", {"needed", "low", NULL}},
};

const char *const *drawing_dimensions(const char *name)
{
    for (size_t i = 0; i < sizeof(DRAWINGS) / sizeof(DRAWINGS[0]); i++)
        if (strcmp(DRAWINGS[i].name, name) == 0)
            return DRAWINGS[i].dimensions;
    return NULL;
}
