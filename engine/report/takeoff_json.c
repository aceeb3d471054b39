#include "report/report.h"

#include "base/number.h"
#include "include/eavemark.h"
#include "report/json_part.h"
#include "report/order.h"

#include <cjson/cJSON.h>

#include <math.h>

/* Rounded as it is printed in that unit. */
static bool add_number(cJSON *object, const char *key, double value, const char *unit)
{
    return cJSON_AddNumberToObject(object, key, number_rounded(value, unit)) != NULL;
}

/* null for a quantity that is open or does not apply. */
static bool add_exact(cJSON *object, const struct amount *amount)
{
    if (amount == NULL)
        return cJSON_AddNullToObject(object, "exact") != NULL;
    cJSON *exact = cJSON_AddObjectToObject(object, "exact");
    return exact != NULL && add_number(exact, "value", amount->exact, amount->unit)
           && json_add_text(exact, "unit", amount->unit);
}

/* null where nothing is added for waste, 0 where the job says that nothing is. */
static bool add_waste(cJSON *object, const struct amount *amount)
{
    if (amount == NULL || !amount->has_waste)
        return cJSON_AddNullToObject(object, "waste_percent") != NULL;
    return add_number(object, "waste_percent", amount->waste_percent, "percent");
}

/* null for what is only to know. */
static bool add_buy(cJSON *object, const struct amount *amount)
{
    if (amount == NULL || !amount->bought)
        return cJSON_AddNullToObject(object, "buy") != NULL;
    cJSON *buy = cJSON_AddObjectToObject(object, "buy");
    return buy != NULL && add_number(buy, "value", amount->count, "count")
           && json_add_text(buy, "unit", amount->buy)
           /* A third of a square is no round number: what one holds keeps its digits. */
           && cJSON_AddNumberToObject(buy, "each", round(amount->each * 1e6) / 1e6) != NULL;
}

/* Which rules it serves, or the habit: what is bought has one or the other. */
static bool add_reason(cJSON *object, const struct quantity_line *line)
{
    size_t count = 0;
    while (line->serves[count] != NULL)
        count++;
    return json_add_texts(object, "serves", line->serves, count)
           && json_add_text(object, "habit", line->by_habit);
}

static bool add_line(cJSON *array, const struct quantity_line *line)
{
    const struct finding *finding = &line->finding;
    cJSON *object = cJSON_CreateObject();
    return cJSON_AddItemToArray(array, object) && json_add_text(object, "name", finding->rule)
           && json_add_text(object, "title", finding->title)
           && json_add_text(object, "where", finding->where)
           && json_add_text(object, "heading", line->heading) && add_reason(object, line)
           && add_exact(object, line->amount) && add_waste(object, line->amount)
           && add_buy(object, line->amount)
           && json_add_texts(object, "work", finding->work, finding->work_count)
           && json_add_cites(object, finding) && json_add_amended(object, finding->amended)
           && json_add_text(object, "outcome", takeoff_word(finding->outcome))
           && json_add_text(object, "says", finding->says) && json_add_reads(object, finding);
}

/* The quantity it comes from, so that the sums can be found. */
static bool add_order_line(cJSON *array, const struct order_line *line)
{
    cJSON *object = cJSON_CreateObject();
    return cJSON_AddItemToArray(array, object) && json_add_text(object, "heading", line->heading)
           && json_add_text(object, "item", line->item)
           && add_number(object, "count", line->count, "count")
           && json_add_text(object, "unit", order_unit(line))
           && json_add_text(object, "for", line->goes_on)
           && json_add_text(object, "quantity", line->first->finding.rule);
}

static bool add_order(cJSON *root, const struct takeoff *takeoff)
{
    struct order order;
    cJSON *array = cJSON_AddArrayToObject(root, "order");
    bool made = order_make(takeoff, &order) == 0 && array != NULL;
    for (size_t i = 0; made && i < order.line_count; i++)
        made = add_order_line(array, &order.lines[i]);
    order_free(&order);
    return made;
}

/* All quantities, those that are open too: what is missing must be seen to be. */
static bool add_lines(cJSON *root, const struct takeoff *takeoff)
{
    cJSON *array = cJSON_AddArrayToObject(root, "quantities");
    if (array == NULL)
        return false;
    for (size_t i = 0; i < takeoff->line_count; i++)
        if (!add_line(array, &takeoff->lines[i]))
            return false;
    return true;
}

/* The head is that of a check, so that readers can share code. */
static bool add_everything(cJSON *root, const struct takeoff *takeoff)
{
    const struct result *head = &takeoff->head;
    return json_add_text(root, "eavemark", EAVEMARK_VERSION)
           && json_add_text(root, "job", head->job) && json_add_text(root, "date", head->date)
           && json_add_jurisdiction(root, head)
           && json_add_text(root, "fingerprint", head->fingerprint) && add_order(root, takeoff)
           && add_lines(root, takeoff) && json_add_text(root, "caution", head->caution);
}

void report_takeoff_json(const struct takeoff *takeoff, bool pretty, struct text *out)
{
    cJSON *root = cJSON_CreateObject();
    json_finish(root, root != NULL && add_everything(root, takeoff), pretty, out);
}
