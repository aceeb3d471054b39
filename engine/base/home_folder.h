/* home_folder.h - a home that is a folder: what home_files.h offers, for that one. */
#ifndef EAVEMARK_BASE_HOME_FOLDER_H
#define EAVEMARK_BASE_HOME_FOLDER_H

#include "base/file.h"

#include <stdbool.h>
#include <stddef.h>

bool home_folder_has(const char *home, const char *path);
enum file_result home_folder_read(char **text, size_t *length, const char *home, const char *path,
                                  size_t limit);
bool home_folder_same(const char *home, const char *path, const char *bytes, size_t length);
int home_folder_each(const char *home, const char *folder, const char *ending, int depth,
                     void (*visit)(void *data, const char *path), void *data);
void home_folder_unread(const char *home, const char *folder, int depth,
                        void (*visit)(void *data, const char *path, int why), void *data);

#endif
