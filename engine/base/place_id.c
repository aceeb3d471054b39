#include "base/place_id.h"

#include <string.h>

enum { LONGEST = 120 };

/* No capitals: some systems know "A.lua" and "a.lua" for one file. No locale has a say. */
bool place_id_is_sound(const char *id)
{
    static const char LETTERS[] = "abcdefghijklmnopqrstuvwxyz0123456789-_/";
    const size_t length = strlen(id);
    return length > 0 && length <= LONGEST && strspn(id, LETTERS) == length && id[0] != '/'
           && id[length - 1] != '/' && strstr(id, "//") == NULL;
}
