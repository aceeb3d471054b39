/* settings.c - where the home and the page are, and choices of words on the command line. */
#include "command/command.h"

#include "base/nearest.h"
#include "base/text.h"
#include "include/eavemark.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

enum { PATH_LONGEST = 4096 };

/* Both folders are looked for: one alone is somebody else's. */
static bool has_folder(const char *home, const char *name)
{
    struct text path = TEXT_EMPTY;
    struct stat about;
    text_addf(&path, "%s/%s", home, name);
    const bool has = !path.failed && stat(text_string(&path), &about) == 0
                     && S_ISDIR(about.st_mode);
    text_free(&path);
    return has;
}

/* Where `path` leads from the program's own folder; false if it is too long. */
static bool beside_program(const char *path, char found[PATH_LONGEST])
{
    const ssize_t length = readlink("/proc/self/exe", found, PATH_LONGEST - 1);
    if (length <= 0)
        return false;
    found[length] = '\0';
    char *slash = strrchr(found, '/');
    const size_t room = slash == NULL ? 0 : PATH_LONGEST - (size_t)(slash + 1 - found);
    if (room <= strlen(path))
        return false;
    snprintf(slash + 1, room, "%s", path);
    return true;
}

/* A home that lies where `path` leads from the program's own folder; NULL: none does. An
 * installation may be moved, or made under another prefix than was configured. */
static const char *home_beside_program(const char *path)
{
    static char found[PATH_LONGEST]; /* handed out; the program has one home */
    return beside_program(path, found) && has_folder(found, "rules")
                   && has_folder(found, "jurisdictions")
               ? found
               : NULL;
}

const char *settings_page(void)
{
    static const char *const PLACES[] = {"roof.html", EAVEMARK_DATA_FROM_PROGRAM "/roof.html"};
    static char found[PATH_LONGEST]; /* handed out; the program has one page */
    for (size_t i = 0; i < sizeof(PLACES) / sizeof(PLACES[0]); i++)
        if (beside_program(PLACES[i], found) && access(found, R_OK) == 0)
            return found;
    return NULL;
}

/* An empty variable counts as none. */
const char *settings_home(const char *option)
{
    const char *environment = getenv("EAVEMARK_HOME");
    /* Not looked into here: a home that is none is told by the first call that needs it. */
    if (option != NULL)
        return option;
    if (environment != NULL && environment[0] != '\0')
        return environment;
    /* What was installed, or lies in the tree that the program was built in, may have been
     * edited: it goes before what was built in. */
    const char *beside = home_beside_program(EAVEMARK_DATA_FROM_PROGRAM);
    if (beside == NULL)
        beside = home_beside_program("..");
    return beside != NULL ? beside : EAVEMARK_HOME_INSIDE;
}

int settings_choice(const char *command, const char *what, const char *wanted,
                    const char *const *choices, size_t count)
{
    struct nearest nearest;
    struct text list = TEXT_EMPTY;
    nearest_start(&nearest, wanted);
    for (size_t i = 0; i < count; i++) {
        if (strcmp(choices[i], wanted) == 0) {
            text_free(&list);
            return (int)i;
        }
        nearest_offer(&nearest, choices[i]);
        text_addf(&list, "%s%s", i > 0 ? ", " : "", choices[i]);
    }
    /* The whole list in any case: there are few. */
    if (nearest.name != NULL)
        complain("%s: no %s \"%s\" (did you mean \"%s\"?); there are: %s", command, what, wanted,
                 nearest.name, text_string(&list));
    else
        complain("%s: no %s \"%s\"; there are: %s", command, what, wanted, text_string(&list));
    text_free(&list);
    return -1;
}
