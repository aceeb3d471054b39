#include "base/big_pages.h"

#include <stdint.h>
#include <stdlib.h>
#include <sys/mman.h>

#ifdef __GLIBC__
#include <malloc.h>
#include <unistd.h>
#endif

static const size_t BIG_PAGE = (size_t)2 * 1024 * 1024;

/* Only asked for: a system without them says no, and gives small ones. */
static void ask_for_big(void *block, size_t size)
{
#ifdef MADV_HUGEPAGE
    (void)madvise(block, size, MADV_HUGEPAGE);
#else
    (void)block, (void)size;
#endif
}

static size_t whole_pages(size_t size)
{
    return (size + BIG_PAGE - 1) / BIG_PAGE * BIG_PAGE;
}

/* Big pages begin at whole multiples of their size; the system may map at any small page, so
 * one page more is mapped, and what stands before and behind is given back. */
void *big_pages_take(size_t size)
{
    if (size > SIZE_MAX - 2 * BIG_PAGE)
        return NULL;
    size = whole_pages(size);
    char *mapped = mmap(NULL, size + BIG_PAGE, PROT_READ | PROT_WRITE, MAP_PRIVATE | MAP_ANONYMOUS,
                        -1, 0);
    if (mapped == MAP_FAILED)
        return NULL;
    const size_t before = (BIG_PAGE - (uintptr_t)mapped % BIG_PAGE) % BIG_PAGE;
    char *block = mapped + before;
    if (before > 0)
        munmap(mapped, before);
    munmap(block + size, BIG_PAGE - before);
    ask_for_big(block, size);
    return block;
}

void big_pages_give_back(void *block, size_t size)
{
    if (block != NULL)
        munmap(block, whole_pages(size));
}

/* What malloc takes from the system the first time is as much as a batch needs; the rest comes as
 * it always does. What one job took the next takes again: little is given back between them. A
 * page that is in use cannot become part of a big one: malloc's first block goes to the small page
 * before. */
void big_pages_for_malloc(void)
{
#ifdef __GLIBC__
    enum {
        FIRST = 256 * 1024 * 1024,
        KEPT = 32 * 1024 * 1024,
        SMALL_PAGE = 4096,
        PAD = 128 * 1024
    };
    mallopt(M_TRIM_THRESHOLD, FIRST + KEPT);
    mallopt(M_MMAP_THRESHOLD, KEPT / 2);
    const uintptr_t end = (uintptr_t)sbrk(0);
    const size_t before = (2 * BIG_PAGE - SMALL_PAGE - end % BIG_PAGE) % BIG_PAGE;
    /* Where there is no room for as much, malloc would get none at all. */
    char *const start = sbrk((intptr_t)(before + (size_t)2 * FIRST));
    if ((intptr_t)start == -1 || (intptr_t)sbrk((intptr_t)-2 * FIRST) == -1)
        return;
    mallopt(M_TOP_PAD, FIRST);
    void *volatile first = malloc(1); /* volatile: taken even though nobody uses it */
    free(first);
    mallopt(M_TOP_PAD, PAD);
    ask_for_big(start + before + SMALL_PAGE, FIRST - BIG_PAGE);
#endif
}
