#include "page/wasm/page_home.h"

#include "base/home_files.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* A page is one program with one home. */
static struct pack home;

struct pack home_files_packed(void)
{
    return home;
}

/* Never freed: what was read points into it. */
static struct pack made;

struct pack home_files_made(void)
{
    return made;
}

void page_home_set_made(const char *bytes, size_t length)
{
    made = (struct pack){bytes, length};
}

void page_home_set(char *bytes, size_t length)
{
    free((void *)(size_t)home.bytes);
    home = (struct pack){bytes, length};
}

/* Where the file of that path begins and ends, or where it would stand. */
static void find_place(const char *path, size_t *from, size_t *to)
{
    const size_t length = strlen(path);
    struct packed_file file;
    size_t at = 0, before = 0;
    while (pack_next(&home, &at, &file)) {
        const int order = pack_order(file.path, file.path_length, path, length);
        if (order >= 0) {
            *from = before;
            *to = order == 0 ? at : before;
            return;
        }
        before = at;
    }
    *from = *to = pack_end(&home);
}

bool page_home_lay_over(const char *path, const char *text, size_t length)
{
    size_t from, to;
    find_place(path, &from, &to);
    /* Without the index, which would tell of other places in it. */
    const size_t end = pack_end(&home);
    const size_t room = end - (to - from) + strlen(path) + length + 32;
    char *bytes = malloc(room);
    if (bytes == NULL)
        return false;
    memcpy(bytes, home.bytes, from);
    size_t used = from;
    used += (size_t)snprintf(bytes + used, room - used, "%zu %s\n", length, path);
    memcpy(bytes + used, text, length);
    used += length;
    bytes[used++] = '\0';
    memcpy(bytes + used, home.bytes + to, end - to);
    page_home_set(bytes, used + end - to);
    /* It was made of the files as they came with the page; these are not those. */
    made = (struct pack){"", 0};
    return true;
}
