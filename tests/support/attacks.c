#include "support/attacks.h"

#include "support/small_law.h"
#include "support/temporary_home.h"

#include <dirent.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

const char HARMLESS_RULE[] =
    "rule \"harmless.layers\" {\n  " SMALL_READS "\n"
    "  title = \"Layers\", stage = \"permit\",\n"
    "  judge = function(job, figure)\n"
    "    return at_most(job.existing.layers, figure \"test.most\", \"layers\")\n"
    "  end,\n"
    "  mend = \"Take one off.\",\n"
    "}\n";

static const char *words_of_limit(const char *stops)
{
    return strcmp(stops, "steps") == 0    ? "took too many steps and was stopped"
           : strcmp(stops, "time") == 0   ? "took too long and was stopped"
           : strcmp(stops, "memory") == 0 ? "took too much memory and was stopped"
                                          : NULL;
}

static void read_head(struct attack *attack)
{
    const char *text = attack->text;
    if (sscanf(text, "-- stops: %15[a-z]", attack->stops) != 1)
        fail_msg("%s: its first line does not say what stops it", attack->name);
    const char *limit = words_of_limit(attack->stops);
    if (limit != NULL) {
        snprintf(attack->words, sizeof(attack->words), "%s", limit);
    } else {
        const char *end = strchr(text, '\n');
        const char *open = strchr(text, '"');
        assert_true(open != NULL && open < end && end[-1] == '"');
        snprintf(attack->words, sizeof(attack->words), "%.*s", (int)(end - open - 2), open + 1);
    }
    attack->load = strstr(text, "\n-- when: load\n") != NULL;
}

void attack_read(struct attack *attack)
{
    char path[256];
    if (attack->one_line != NULL) {
        attack->text = attack->one_line;
        read_head(attack);
        return;
    }
    snprintf(path, sizeof(path), "%s/tests/attacks/%s%s%s.lua", EAVEMARK_HOME_DIR, attack->folder,
             attack->folder[0] == '\0' ? "" : "/", attack->name);
    attack->text = file_text(path, NULL);
    read_head(attack);
}

void attack_free(struct attack *attack)
{
    free(attack->text);
    attack->text = attack->one_line = NULL;
}

enum { ATTACKS_MOST = 400, OTHERS_MOST = 100 };

static size_t list_attacks(const char *folder, struct attack *attacks)
{
    char path[256];
    struct dirent **names = NULL;
    size_t count = 0;
    snprintf(path, sizeof(path), "%s/tests/attacks/%s", EAVEMARK_HOME_DIR, folder);
    const int found = scandir(path, &names, NULL, alphasort);
    for (int i = 0; i < found; i++) {
        const char *dot = strrchr(names[i]->d_name, '.');
        const size_t length = dot == NULL ? 0 : (size_t)(dot - names[i]->d_name);
        if (length > 0 && length < sizeof(attacks->name) && strcmp(dot, ".lua") == 0
            && count < ATTACKS_MOST) {
            memcpy(attacks[count].name, names[i]->d_name, length);
            attacks[count++].folder = folder;
        }
        free(names[i]);
    }
    free(names);
    return count;
}

/* Of "NAME: STOPS" and the line after it, the judge's or, with "loading, " before STOPS,
 * the file's. False for a line of another kind. */
static bool one_line_attack(struct attack *attack, const char *entry)
{
    static const char LOADING[] = "loading, ";
    static const char FILE_TEXT[] = "-- stops: %s\n\nrule \"attack.%s\" {\n"
                                    "  title = \"One line\",\n  stage = \"final\",\n  " SMALL_READS
                                    "\n"
                                    "  judge = function(job, figure)\n    %s\n  end,\n"
                                    "  mend = \"Remove this rule.\",\n}\n";
    char stops[192], line[192], text[1024];
    if (sscanf(entry, "%63[a-z0-9_]: %191[^\n]\n    %191[^\n]", attack->name, stops, line) != 3)
        return false;
    if (strncmp(stops, LOADING, strlen(LOADING)) == 0)
        snprintf(text, sizeof(text), "-- stops: %s\n-- when: load\n\n\n%s\n",
                 stops + strlen(LOADING), line);
    else
        snprintf(text, sizeof(text), FILE_TEXT, stops, attack->name, line);
    attack->one_line = strdup(text);
    return attack->one_line != NULL;
}

/* Those of the folder's one_line.attacks, after the `count` there are already. */
static size_t list_one_line_attacks(const char *folder, struct attack *attacks, size_t count)
{
    if (folder[0] != '\0')
        return count;
    char *table = file_text(EAVEMARK_HOME_DIR "/tests/attacks/one_line.attacks", NULL);
    for (const char *line = table; line != NULL && count < ATTACKS_MOST;) {
        const bool entry = line[0] != '#' && line[0] != ' ' && line[0] != '\n' && line[0] != '\0';
        if (entry && one_line_attack(&attacks[count], line))
            attacks[count++].folder = folder;
        else if (entry)
            count = ATTACKS_MOST; /* not to be read: no run at all */
        line = strchr(line, '\n');
        line = line == NULL ? NULL : line + 1;
    }
    free(table);
    return count;
}

void attack_find(struct attack *attack, const char *name)
{
    char *table = file_text(EAVEMARK_HOME_DIR "/tests/attacks/one_line.attacks", NULL);
    char entry[80];
    snprintf(entry, sizeof(entry), "\n%s: ", name);
    const char *line = table == NULL ? NULL : strstr(table, entry);
    *attack = (struct attack){.folder = ""};
    if (line == NULL || !one_line_attack(attack, line + 1))
        snprintf(attack->name, sizeof(attack->name), "%s", name);
    free(table);
}

int attacks_run(const char *folder, size_t least, CMUnitTestFunction run,
                const struct CMUnitTest *others, size_t other_count)
{
    static struct attack attacks[ATTACKS_MOST];
    static struct CMUnitTest tests[ATTACKS_MOST + OTHERS_MOST];
    const size_t count = list_one_line_attacks(folder, attacks, list_attacks(folder, attacks));
    if (count < least || count == ATTACKS_MOST || other_count > OTHERS_MOST) {
        fprintf(stderr, "%zu attacks found: not what there should be\n", count);
        return 1;
    }
    for (size_t i = 0; i < count; i++)
        tests[i] = (struct CMUnitTest){attacks[i].name, run, NULL, NULL, &attacks[i]};
    if (other_count > 0)
        memcpy(tests + count, others, other_count * sizeof(*others));
    return _cmocka_run_group_tests("attacks", tests, count + other_count, NULL, NULL);
}
