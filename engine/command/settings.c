#include "command/command.h"

#include "base/nearest.h"
#include "base/text.h"
#include "include/eavemark.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

/* Installed data may be missing in a build tree. */
static bool holds_rules(const char *folder)
{
    struct text path = TEXT_EMPTY;
    struct stat about;
    text_addf(&path, "%s/rules", folder);
    const bool holds = !path.failed && stat(text_string(&path), &about) == 0
                       && S_ISDIR(about.st_mode);
    text_free(&path);
    return holds;
}

/* What was installed with this program, wherever that was: an installation may be moved,
 * or made under another prefix than was configured. NULL: nothing. */
static const char *data_beside_program(void)
{
    static char found[4096]; /* handed out; the program has one home */
    const ssize_t length = readlink("/proc/self/exe", found, sizeof(found) - 1);
    if (length <= 0)
        return NULL;
    found[length] = '\0';
    char *slash = strrchr(found, '/');
    const size_t room = slash == NULL ? 0 : sizeof(found) - (size_t)(slash + 1 - found);
    if (room <= strlen(EAVEMARK_DATA_FROM_PROGRAM))
        return NULL;
    snprintf(slash + 1, room, "%s", EAVEMARK_DATA_FROM_PROGRAM);
    return holds_rules(found) ? found : NULL;
}

/* An empty variable counts as none. */
const char *settings_home(const char *option)
{
    const char *environment = getenv("EAVEMARK_HOME");
    if (option != NULL)
        return option;
    if (environment != NULL && environment[0] != '\0')
        return environment;
    /* What was installed may have been edited: it goes before what was built in. */
    const char *beside = data_beside_program();
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
