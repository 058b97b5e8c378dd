/* Loaded into a program before the C library: writes down each flush with its answer, and lets flushes of journals fail while a file says so.
   FLUSHES names a folder: 'made' in it gets a line a flush, 'fail' in it makes flushes of *.journal fail. */
#define _GNU_SOURCE
#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/syscall.h>
#include <unistd.h>

int fsync(int file)
{
    const char *folder = getenv("FLUSHES");
    char link[64], path[4096] = "", name[4200], line[4300];
    snprintf(link, sizeof link, "/proc/self/fd/%d", file);
    ssize_t length = readlink(link, path, sizeof path - 1);
    path[length < 0 ? 0 : length] = 0;
    snprintf(name, sizeof name, "%s/fail", folder ? folder : "");
    int fails = folder && access(name, F_OK) == 0 && strlen(path) > 8 && strcmp(path + strlen(path) - 8, ".journal") == 0;
    int answer = fails ? -1 : (int)syscall(SYS_fsync, file);
    int error = fails ? EIO : errno;
    snprintf(name, sizeof name, "%s/made", folder ? folder : "");
    int made = folder ? open(name, O_WRONLY | O_CREAT | O_APPEND, 0600) : -1;
    if (made >= 0) {
        int size = snprintf(line, sizeof line, "%d %s\n", answer, path);
        if (write(made, line, (size_t)size) != size)
            answer = -1;
        close(made);
    }
    errno = error;
    return answer;
}
