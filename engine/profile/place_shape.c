#include "profile/place_shape.h"

#include "profile/place.h"

/* Words are taken up as ints, enums among them. */
_Static_assert(sizeof(enum sense) == sizeof(int), "an enum is as large as an int");

/* The order of the parts is the order in the bytes, and their number is at most 64: what is
 * said of a struct is one bit for each. The build that writes them is the build that reads
 * them, so nothing has to be kept for older bytes; a member that is left out here is lost on
 * the way. */
static const struct part VALUE_PARTS[] = {
    PART(WORD, struct value, kind), PART(NUMBER, struct value, number),
    PART(FLAG, struct value, yes),  PART(TEXT, struct value, text),
    PART(TEXT, struct value, unit), PART_TEXTS(struct value, set, set_count),
};
static const struct shape VALUE_SHAPE = SHAPE(struct value, VALUE_PARTS);

static const struct part ENTRY_PARTS[] = {
    PART(TEXT, struct entry, name),
    PART(TEXT, struct entry, file),
    PART(WORD, struct entry, line),
    PART_OF(INSIDE, struct entry, value, VALUE_SHAPE),
    PART(TEXT, struct entry, cite),
    PART(WORD, struct entry, status),
    PART(TEXT, struct entry, source),
    PART(WORD, struct entry, sense),
    PART_OF(INSIDE, struct entry, adds, VALUE_SHAPE),
    PART_OF(INSIDE, struct entry, without, VALUE_SHAPE),
    PART(FLAG, struct entry, advice),
    PART(FLAG, struct entry, instead),
    PART(TEXT, struct entry, disputed),
    PART(TEXT, struct entry, book),
    PART_OF(INSIDE, struct entry, rival, VALUE_SHAPE),
    PART(TEXT, struct entry, pages),
    PART_OF(INSIDE, struct entry, also, VALUE_SHAPE),
    PART(WORD, struct entry, also_sense),
    PART(TEXT, struct entry, by),
    PART(TEXT, struct entry, row),
    PART(TEXT, struct entry, at_figure),
    PART(WORD, struct entry, at),
    PART_OF(INSIDE, struct entry, read_in, VALUE_SHAPE),
};
static const struct shape ENTRY_SHAPE = SHAPE_LISTED(struct entry, ENTRY_PARTS);

static const struct part WAY_PARTS[] = {
    PART(TEXT, struct entry_way, name),   PART(TEXT, struct entry_way, file),
    PART(WORD, struct entry_way, line),   PART(WORD, struct entry_way, stricter),
    PART(TEXT, struct entry_way, behind), PART(TEXT, struct entry_way, words),
};
static const struct shape WAY_SHAPE = SHAPE_LISTED(struct entry_way, WAY_PARTS);

static const struct part FACT_PARTS[] = {
    PART(TEXT, struct entry_fact, name),
    PART_OF(INSIDE, struct entry_fact, value, VALUE_SHAPE),
    PART(FLAG, struct entry_fact, has_least),
    PART(FLAG, struct entry_fact, has_most),
    PART(NUMBER, struct entry_fact, least),
    PART(NUMBER, struct entry_fact, most),
    PART_OF(INSIDE, struct entry_fact, one_of, VALUE_SHAPE),
    PART(TEXT, struct entry_fact, unit),
    PART(TEXT, struct entry_fact, cite),
    PART(TEXT, struct entry_fact, book),
    PART(TEXT, struct entry_fact, source),
    PART(WORD, struct entry_fact, status),
    PART(WORD, struct entry_fact, line),
};
static const struct shape FACT_SHAPE = SHAPE_LISTED(struct entry_fact, FACT_PARTS);

static const struct part ZONE_PARTS[] = {
    PART(TEXT, struct entry_zone, name),
    PART(TEXT, struct entry_zone, ask),
    PART_OF(INSIDE, struct entry_zone, words, VALUE_SHAPE),
    PART(WORD, struct entry_zone, line),
};
static const struct shape ZONE_SHAPE = SHAPE_LISTED(struct entry_zone, ZONE_PARTS);

static const struct part DROP_PARTS[] = {
    PART(TEXT, struct entry_drop, rule),
    PART(TEXT, struct entry_drop, reason),
    PART(WORD, struct entry_drop, line),
};
static const struct shape DROP_SHAPE = SHAPE_LISTED(struct entry_drop, DROP_PARTS);

static const struct part GAP_PARTS[] = {
    PART(TEXT, struct entry_gap, fact),
    PART(TEXT, struct entry_gap, why),
    PART_OF(INSIDE, struct entry_gap, rules, VALUE_SHAPE),
    PART_OF(INSIDE, struct entry_gap, but, VALUE_SHAPE),
    PART_OF(INSIDE, struct entry_gap, orders, VALUE_SHAPE),
    PART(WORD, struct entry_gap, line),
};
static const struct shape GAP_SHAPE = SHAPE_LISTED(struct entry_gap, GAP_PARTS);

static const struct part ADOPT_PARTS[] = {
    PART(TEXT, struct entry_adopt, book),
    PART(TEXT, struct entry_adopt, cite),
    PART(TEXT, struct entry_adopt, as_seen),
    PART_OF(INSIDE, struct entry_adopt, topics, VALUE_SHAPE),
    PART(WORD, struct entry_adopt, line),
};
static const struct shape ADOPT_SHAPE = SHAPE_LISTED(struct entry_adopt, ADOPT_PARTS);

static const struct part BLOCK_PARTS[] = {
    PART(TEXT, struct block, id),
    PART(TEXT, struct block, title),
    PART(TEXT, struct block, follows),
    PART(TEXT, struct block, code),
    PART(TEXT, struct block, edition),
    PART(TEXT, struct block, as_seen),
    PART(TEXT, struct block, rules),
    PART(TEXT, struct block, borrowed),
    PART(TEXT, struct block, unsure),
    PART_OF(INSIDE, struct block, read, VALUE_SHAPE),
    PART_OF(INSIDE, struct block, covers, VALUE_SHAPE),
    PART(TEXT, struct block, draft),
    PART(FLAG, struct block, invented),
    PART(FLAG, struct block, model),
    PART(FLAG, struct block, base_only),
    PART(DAY, struct block, from),
    PART(DAY, struct block, to),
    PART_TEXTS(struct block, parts, part_count),
    PART(TEXT, struct block, part_folder),
    PART(TEXT, struct block, column),
    PART_OF(INSIDE, struct block, columns, VALUE_SHAPE),
    PART_OF(LIST, struct block, entries, ENTRY_SHAPE),
    PART_OF(LIST, struct block, ways, WAY_SHAPE),
    PART_OF(LIST, struct block, drops, DROP_SHAPE),
    PART_OF(LIST, struct block, gaps, GAP_SHAPE),
    PART_OF(LIST, struct block, adopts, ADOPT_SHAPE),
    PART_OF(LIST, struct block, facts, FACT_SHAPE),
    PART_OF(LIST, struct block, zones, ZONE_SHAPE),
    PART(WORD, struct block, line),
};
static const struct shape BLOCK_SHAPE = SHAPE_LISTED(struct block, BLOCK_PARTS);

static const struct part PLACE_PARTS[] = {PART_OF(LIST, struct place, blocks, BLOCK_SHAPE)};
const struct shape PLACE_SHAPE = SHAPE(struct place, PLACE_PARTS);
