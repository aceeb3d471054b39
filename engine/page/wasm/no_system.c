/* no_system.c - what a page has not: folders, parts of files, mapped memory.
 *
 * The memory is reserved at the start and never grows (V8 of 2023 crashed when it grew
 * while garbage was collected): blocks are slots of the largest heap there is.
 */
#include "base/big_pages.h"
#include "base/home_folder.h"
#include "base/part.h"
#include "sandbox/sandbox.h"

#include <errno.h>
#include <string.h>

enum { SLOTS = 12, EMPTIED = 4096 };

/* Nothing of it is in memory until it is written to. */
static _Alignas(EMPTIED) unsigned char slots[SLOTS][SANDBOX_HEAP_BYTES];
static bool taken[SLOTS];

/* Only a heap asks, and of what it did not write it reads its own head alone
 * (sandbox/heap.c): a place's file is read in one, and a search reads them all. */
void *big_pages_take(size_t size)
{
    for (size_t i = 0; i < SLOTS && size <= SANDBOX_HEAP_BYTES; i++)
        if (!taken[i]) {
            taken[i] = true;
            memset(slots[i], 0, EMPTIED);
            return slots[i];
        }
    return NULL;
}

void big_pages_give_back(void *block, size_t size)
{
    (void)size;
    if (block != NULL)
        taken[(size_t)((unsigned char *)block - slots[0]) / SANDBOX_HEAP_BYTES] = false;
}

bool home_folder_has(const char *home, const char *path)
{
    (void)home, (void)path;
    return false;
}

enum file_result home_folder_read(char **text, size_t *length, const char *home, const char *path,
                                  size_t limit)
{
    (void)text, (void)length, (void)home, (void)path, (void)limit;
    return FILE_MISSING;
}

bool home_folder_same(const char *home, const char *path, const char *bytes, size_t length)
{
    (void)home, (void)path, (void)bytes, (void)length;
    return false;
}

int home_folder_each(const char *home, const char *folder, const char *ending, int depth,
                     void (*visit)(void *data, const char *path), void *data)
{
    (void)home, (void)folder, (void)ending, (void)depth, (void)visit, (void)data;
    errno = ENOENT;
    return -1;
}

void home_folder_unread(const char *home, const char *folder, int depth,
                        void (*visit)(void *data, const char *path, int why), void *data)
{
    (void)home, (void)folder, (void)depth, (void)visit, (void)data;
}

int part_create(const char *target, char **name)
{
    (void)target, (void)name;
    errno = EROFS;
    return -1;
}

bool part_was_left(const char *target)
{
    (void)target;
    return false;
}

void part_clean(const char *target)
{
    (void)target;
}
