#include "job/like.h"

static cJSON *habits_under(const cJSON *object, const struct field *parent, bool *failed);

/* Materials only: other lists are of the house. An item without a habit is left out. */
static cJSON *habits_of_list(const cJSON *list, const struct field *field, bool *failed)
{
    cJSON *kept = fields_is_material(field) ? cJSON_CreateArray() : NULL;
    const cJSON *item = NULL;
    cJSON_ArrayForEach(item, list) {
        cJSON *habits = kept == NULL ? NULL : habits_under(item, field, failed);
        if (habits != NULL && !cJSON_AddItemToArray(kept, habits))
            *failed = true;
    }
    if (kept != NULL && kept->child == NULL) {
        cJSON_Delete(kept);
        kept = NULL;
    }
    return kept;
}

/* What is measured, and what says null, is of the other house. NULL: nothing to take over. */
static cJSON *habit_of(const cJSON *said, const struct field *field, bool *failed)
{
    if (field->type == FIELD_GROUP)
        return habits_under(said, field, failed);
    if (field->type == FIELD_LIST)
        return cJSON_IsArray(said) ? habits_of_list(said, field, failed) : NULL;
    if (field->habit == HABIT_NONE || field->measured || cJSON_IsNull(said))
        return NULL;
    cJSON *copy = cJSON_Duplicate(said, true);
    *failed |= copy == NULL;
    return copy;
}

/* NULL where there is none. Recursion is bounded by FIELDS_DEEPEST. */
static cJSON *habits_under(const cJSON *object, const struct field *parent, bool *failed)
{
    cJSON *kept = NULL;
    const cJSON *said = NULL;
    cJSON_ArrayForEach(said, object) {
        const struct field *field = said->string == NULL ? NULL
                                                         : fields_child(parent, said->string);
        cJSON *habit = field == NULL ? NULL : habit_of(said, field, failed);
        if (habit != NULL && kept == NULL)
            kept = cJSON_CreateObject();
        if (habit != NULL && (kept == NULL || !cJSON_AddItemToObject(kept, said->string, habit))) {
            cJSON_Delete(habit);
            *failed = true;
        }
    }
    return kept;
}

/* What the job says itself stays: only groups that it lacks whole are taken over, so that no
 * group mixes the facts of two houses. */
bool like_take(cJSON *job, const cJSON *other, const struct fields *fields)
{
    /* The other job's shop sheet goes for this one as well; by its name, since it is read
     * anew. */
    static const char SHEET[] = "shop";
    bool failed = false;
    cJSON *habits = habits_under(other, fields->root, &failed);
    const cJSON *sheet = cJSON_GetObjectItemCaseSensitive(other, SHEET);
    while (habits != NULL && habits->child != NULL) {
        cJSON *one = cJSON_DetachItemViaPointer(habits, habits->child);
        const bool said = cJSON_HasObjectItem(job, one->string);
        if (said || !cJSON_AddItemToObject(job, one->string, one)) {
            failed |= !said;
            cJSON_Delete(one);
        }
    }
    if (cJSON_IsString(sheet) && !cJSON_HasObjectItem(job, SHEET))
        failed |= cJSON_AddStringToObject(job, SHEET, sheet->valuestring) == NULL;
    cJSON_Delete(habits);
    return !failed;
}
