// Runs a program and lets chosen system calls of it fail: a disk that says no, under the real program and whatever library
// it calls. Also writes down what the program did to the disk, so that power cuts can be tried afterwards. Linux 5.19 or newer.
//
// callfaults [-w FOLDER] [-o ENDING] [-r RECORD] [-f CALL:NTH:COUNT:FAULT] PROGRAM WORDS...
//   -w  only calls on files below this folder are looked at (and what goes to the shell: 'say' to its output, 'tell' to its messages)
//   -o  only files whose name ends so may fail
//   -r  every call that is looked at is written here: call, fault, result, place, length, path, second path; then the bytes
//   -f  of the calls of this kind the NTH (from 1) and the COUNT-1 after it (0: all after it) get FAULT: an error number,
//       'short' (half of the bytes are taken), 'kill' (the program is gone before the call), 'killed' (gone after it),
//       'slow' (it is made a fifth of a second late, as on a share far away)
//
// The kernel hands each call over before it is made (seccomp_unotify(2)), one after the other, whatever thread made it. The
// call is then made from here with the program's own open file (pidfd_getfd(2)), so that its result is known and the record
// has one order.
#define _GNU_SOURCE
#include <errno.h>
#include <fcntl.h>
#include <limits.h>
#include <linux/audit.h>
#include <linux/filter.h>
#include <linux/fs.h>
#include <linux/seccomp.h>
#include <poll.h>
#include <signal.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/ioctl.h>
#include <sys/mman.h>
#include <sys/prctl.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <sys/uio.h>
#include <sys/wait.h>
#include <unistd.h>

#define SHORT (-1)
#define KILL_BEFORE (-2)
#define KILL_AFTER (-3)
#define SLOW (-4)

struct kind { int number; const char *name; };

static const struct kind kinds[] = {
    { SYS_write, "write" }, { SYS_pwrite64, "write" }, { SYS_writev, "write" }, { SYS_pwritev, "write" }, { SYS_pwritev2, "write" },
    { SYS_fsync, "fsync" }, { SYS_fdatasync, "fsync" }, { SYS_ftruncate, "ftruncate" }, { SYS_fallocate, "ftruncate" },
    { SYS_openat, "open" }, { SYS_close, "close" },
    { SYS_renameat2, "rename" }, { SYS_renameat, "rename" }, { SYS_linkat, "link" }, { SYS_unlinkat, "unlink" }, { SYS_mkdirat, "mkdir" },
#ifdef SYS_open
    { SYS_open, "open" }, { SYS_creat, "open" }, { SYS_rename, "rename" }, { SYS_link, "link" }, { SYS_unlink, "unlink" },
    { SYS_rmdir, "unlink" }, { SYS_mkdir, "mkdir" },
#endif
};

static const char *folder = "/", *ending = "", *failing = "";
static long nth, count = 1, fault, met;
static FILE *record;
static pid_t child, caller;
static int pidfd, listener;

// what is known of one call
struct looked { const char *name; int fd, flags; mode_t mode; long at, length, result; char path[PATH_MAX], to[PATH_MAX]; char *bytes; int isFailed; };

static void die(const char *what) { perror(what); exit(99); }

static int install(void)
{
    size_t n = sizeof kinds / sizeof *kinds, at = 0;
    struct sock_filter code[2 * sizeof kinds / sizeof *kinds + 16];
    code[at++] = (struct sock_filter)BPF_STMT(BPF_LD | BPF_W | BPF_ABS, offsetof(struct seccomp_data, nr));
    for (size_t i = 0; i < n; i++) {
        code[at++] = (struct sock_filter)BPF_JUMP(BPF_JMP | BPF_JEQ | BPF_K, kinds[i].number, 0, 1);
        code[at++] = (struct sock_filter)BPF_STMT(BPF_RET | BPF_K, SECCOMP_RET_USER_NOTIF);
    }
    // copying inside the kernel would not be seen: the program then copies by reading and writing
    code[at++] = (struct sock_filter)BPF_JUMP(BPF_JMP | BPF_JEQ | BPF_K, SYS_copy_file_range, 0, 1);
    code[at++] = (struct sock_filter)BPF_STMT(BPF_RET | BPF_K, SECCOMP_RET_ERRNO | ENOSYS);
    code[at++] = (struct sock_filter)BPF_JUMP(BPF_JMP | BPF_JEQ | BPF_K, SYS_sendfile, 0, 1);
    code[at++] = (struct sock_filter)BPF_STMT(BPF_RET | BPF_K, SECCOMP_RET_ERRNO | EINVAL);
    code[at++] = (struct sock_filter)BPF_JUMP(BPF_JMP | BPF_JEQ | BPF_K, SYS_ioctl, 0, 3);
    code[at++] = (struct sock_filter)BPF_STMT(BPF_LD | BPF_W | BPF_ABS, offsetof(struct seccomp_data, args[1]));
    code[at++] = (struct sock_filter)BPF_JUMP(BPF_JMP | BPF_JEQ | BPF_K, FICLONE, 0, 1);
    code[at++] = (struct sock_filter)BPF_STMT(BPF_RET | BPF_K, SECCOMP_RET_ERRNO | EOPNOTSUPP);
    code[at++] = (struct sock_filter)BPF_STMT(BPF_RET | BPF_K, SECCOMP_RET_ALLOW);
    struct sock_fprog program = { at, code };
    if (prctl(PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0))
        return -1;
    return syscall(SYS_seccomp, SECCOMP_SET_MODE_FILTER, SECCOMP_FILTER_FLAG_NEW_LISTENER | SECCOMP_FILTER_FLAG_WAIT_KILLABLE_RECV, &program);
}

static const char *nameOf(int number)
{
    for (size_t i = 0; i < sizeof kinds / sizeof *kinds; i++)
        if (kinds[i].number == number)
            return kinds[i].name;
    return "";
}

static long fromChild(void *to, uint64_t from, size_t length)
{
    struct iovec here = { to, length }, there = { (void *)from, length };
    return process_vm_readv(caller, &here, 1, &there, 1, 0);
}

// a path as text: page by page, since what lies behind its end may not be readable
static void pathOf(char *path, int at, uint64_t from)
{
    char typed[PATH_MAX] = "", link[64], base[PATH_MAX] = "";
    for (size_t got = 0; got < sizeof typed - 1;) {
        size_t step = 4096 - ((from + got) & 4095);
        step = step < sizeof typed - 1 - got ? step : sizeof typed - 1 - got;
        if (fromChild(typed + got, from + got, step) <= 0 || memchr(typed + got, 0, step))
            break;
        got += step;
    }
    if (*typed != '/') {
        snprintf(link, sizeof link, at == AT_FDCWD ? "/proc/%d/cwd" : "/proc/%d/fd/%d", caller, at);
        if (readlink(link, base, sizeof base - 1) < 0)
            *base = 0;
    }
    int fits = snprintf(path, PATH_MAX, *typed == '/' ? "%.0s%s" : "%s/%s", base, typed);
    (void)fits;
}

static void pathOfOpen(char *path, int fd)
{
    char link[64];
    snprintf(link, sizeof link, "/proc/%d/fd/%d", caller, fd);
    ssize_t length = readlink(link, path, PATH_MAX - 1);
    path[length < 0 ? 0 : length] = 0;
}

// which of the streams 1 and 2 it is, or a copy of one that the program made; 0: none
static int streamOf(const char *path)
{
    char stream[PATH_MAX];
    for (int fd = 1; fd <= 2; fd++) {
        pathOfOpen(stream, fd);
        if (*stream && !strcmp(stream, path))
            return fd;
    }
    return 0;
}

static char *bytesOf(const struct seccomp_data *call, long *length)
{
    if (call->nr == SYS_write || call->nr == SYS_pwrite64) {
        char *bytes = malloc(call->args[2] + 1);
        *length = fromChild(bytes, call->args[1], call->args[2]);
        return bytes;
    }
    struct iovec parts[IOV_MAX];
    size_t n = call->args[2] < IOV_MAX ? call->args[2] : IOV_MAX;
    char *bytes = malloc(1);
    *length = 0;
    fromChild(parts, call->args[1], n * sizeof *parts);
    for (size_t i = 0; i < n; i++) {
        bytes = realloc(bytes, *length + parts[i].iov_len + 1);
        *length += fromChild(bytes + *length, (uint64_t)parts[i].iov_base, parts[i].iov_len);
    }
    return bytes;
}

static int look(struct looked *it, const struct seccomp_data *call)
{
    const __u64 *a = call->args;
    int n = call->nr;
    *it = (struct looked) { .name = nameOf(n), .fd = (int)a[0], .at = -1 };
    if (n == SYS_openat) { pathOf(it->path, (int)a[0], a[1]); it->flags = (int)a[2]; it->mode = a[3]; }
    else if (n == SYS_renameat || n == SYS_renameat2 || n == SYS_linkat) { pathOf(it->path, (int)a[0], a[1]); pathOf(it->to, (int)a[2], a[3]); it->flags = n == SYS_renameat2 ? (int)a[4] : 0; }
    else if (n == SYS_unlinkat) { pathOf(it->path, (int)a[0], a[1]); it->flags = (int)a[2]; }
    else if (n == SYS_mkdirat) { pathOf(it->path, (int)a[0], a[1]); it->mode = a[2]; }
#ifdef SYS_open
    else if (n == SYS_open) { pathOf(it->path, AT_FDCWD, a[0]); it->flags = (int)a[1]; it->mode = a[2]; }
    else if (n == SYS_creat) { pathOf(it->path, AT_FDCWD, a[0]); it->flags = O_CREAT | O_TRUNC | O_WRONLY; it->mode = a[1]; }
    else if (n == SYS_rename || n == SYS_link) { pathOf(it->path, AT_FDCWD, a[0]); pathOf(it->to, AT_FDCWD, a[1]); }
    else if (n == SYS_unlink || n == SYS_rmdir) { pathOf(it->path, AT_FDCWD, a[0]); it->flags = n == SYS_rmdir ? AT_REMOVEDIR : 0; }
    else if (n == SYS_mkdir) { pathOf(it->path, AT_FDCWD, a[0]); it->mode = a[1]; }
#endif
    else pathOfOpen(it->path, it->fd);
    size_t length = strlen(folder);
    int isBelow = !strncmp(it->path, folder, length) && (it->path[length] == '/' || !it->path[length]);
    int isSaid = isBelow || strcmp(it->name, "write") ? 0 : streamOf(it->path);
    if (isSaid)
        it->name = isSaid == 1 ? "say" : "tell";
    if (!strcmp(it->name, "write") || isSaid) {
        if (!isBelow && !isSaid)
            return 0;
        it->bytes = bytesOf(call, &it->length);
        it->at = n == SYS_pwrite64 || n == SYS_pwritev || n == SYS_pwritev2 ? (long)a[3] : -1;
    } else if (!strcmp(it->name, "ftruncate"))
        it->length = n == SYS_fallocate ? (long)(a[2] + a[3]) : (long)a[1];
    return isBelow || isSaid;
}

static void writeAsAsked(struct looked *it, int fd, long length)
{
    it->result = it->at >= 0 ? pwrite(fd, it->bytes, length, it->at) : write(fd, it->bytes, length);
    if (it->result < 0)
        it->result = -errno;
    else if (it->at < 0)
        it->at = lseek(fd, 0, SEEK_CUR) - it->result;
    it->length = it->result > 0 ? it->result : 0;
}

static long answered(int result) { return result < 0 ? -errno : result; }

// makes the call with the program's own open file
static void make(struct looked *it, int nr)
{
    int fd = -1;
    if (strstr("write fsync ftruncate", it->name) && (fd = syscall(SYS_pidfd_getfd, pidfd, it->fd, 0)) < 0) {
        it->result = -errno;
        return;
    }
    if (!strcmp(it->name, "write")) writeAsAsked(it, fd, it->isFailed && fault == SHORT && it->length > 1 ? it->length / 2 : it->length);
    else if (!strcmp(it->name, "fsync")) it->result = answered(fsync(fd));
    else if (nr == SYS_fallocate) it->result = answered(fallocate(fd, 0, 0, it->length));
    else if (!strcmp(it->name, "ftruncate")) it->result = answered(ftruncate(fd, it->length));
    else if (!strcmp(it->name, "rename")) it->result = answered(syscall(SYS_renameat2, AT_FDCWD, it->path, AT_FDCWD, it->to, it->flags));
    else if (!strcmp(it->name, "link")) it->result = answered(link(it->path, it->to));
    else if (!strcmp(it->name, "unlink")) it->result = answered(it->flags & AT_REMOVEDIR ? rmdir(it->path) : unlink(it->path));
    else if (!strcmp(it->name, "mkdir")) it->result = answered(mkdir(it->path, it->mode));
    if (fd >= 0)
        close(fd);
}

static void note(const struct looked *it)
{
    if (!record)
        return;
    long length = it->bytes ? it->length : 0;
    int isCreated = !strcmp(it->name, "open") && it->flags & (O_CREAT | O_TRUNC);
    int isExchange = !strcmp(it->name, "rename") && it->flags & RENAME_EXCHANGE;
    fprintf(record, "%s\t%d\t%ld\t%ld\t%ld\t%s\t%s\n",
        isExchange ? "exchange" : isCreated ? it->flags & O_TRUNC ? "trunc" : "create" : it->name,
        it->isFailed, it->result, !strcmp(it->name, "ftruncate") ? it->length : it->at, length, it->path, it->to);
    fwrite(it->bytes, 1, length, record);
    fputc('\n', record);
    fflush(record);
}

static void answer(uint64_t id, const struct looked *it, int goesOn)
{
    struct seccomp_notif_resp reply = { .id = id, .flags = goesOn ? SECCOMP_USER_NOTIF_FLAG_CONTINUE : 0 };
    if (!goesOn) {
        reply.error = it->result < 0 ? (int)it->result : 0;
        reply.val = it->result < 0 ? 0 : it->result;
    }
    ioctl(listener, SECCOMP_IOCTL_NOTIF_SEND, &reply);
}

// opens for the program and hands the open file over
static void openFor(uint64_t id, struct looked *it)
{
    int fd = open(it->path, it->flags, it->mode);
    it->result = fd < 0 ? -errno : 0;
    note(it);
    if (fd < 0) {
        answer(id, it, 0);
        return;
    }
    struct seccomp_notif_addfd handed = { .id = id, .flags = SECCOMP_ADDFD_FLAG_SEND, .srcfd = fd, .newfd_flags = it->flags & O_CLOEXEC };
    ioctl(listener, SECCOMP_IOCTL_NOTIF_ADDFD, &handed);
    close(fd);
}

// Linux gives a file up even where it answers close() with an error: the number then leads nowhere
static void giveUp(uint64_t id, const struct looked *it)
{
    int nowhere = open("/dev/null", O_RDWR);
    struct seccomp_notif_addfd handed = { .id = id, .flags = SECCOMP_ADDFD_FLAG_SETFD, .srcfd = nowhere, .newfd = it->fd, .newfd_flags = O_CLOEXEC };
    ioctl(listener, SECCOMP_IOCTL_NOTIF_ADDFD, &handed);
    close(nowhere);
}

static int mayFail(const struct looked *it)
{
    size_t path = strlen(it->path), end = strlen(ending);
    if (strcmp(it->name, failing) || path < end || strcmp(it->path + path - end, ending))
        return 0;
    met++;
    return met >= nth && (!count || met < nth + count);
}

static void handle(const struct seccomp_notif *asked)
{
    struct looked it;
    caller = asked->pid;
    if (!look(&it, &asked->data)) {
        answer(asked->id, &it, 1);
        free(it.bytes);
        return;
    }
    it.isFailed = mayFail(&it);
    if (it.isFailed && fault == SLOW) {
        usleep(200000);
        it.isFailed = 0;
    }
    int isKilled = it.isFailed && (fault == KILL_BEFORE || fault == KILL_AFTER), isRefused = it.isFailed && fault > 0;
    if (isKilled && fault == KILL_BEFORE) {
        kill(child, SIGKILL);
    } else if (isRefused) {
        it.result = -fault;
        it.length = 0;
        note(&it);
        if (!strcmp(it.name, "close"))
            giveUp(asked->id, &it);
        answer(asked->id, &it, 0);
    } else if (!strcmp(it.name, "open")) {
        openFor(asked->id, &it);
    } else if (!strcmp(it.name, "close") || !strcmp(it.name, "say") || !strcmp(it.name, "tell")) {
        note(&it);
        answer(asked->id, &it, 1);
    } else {
        make(&it, asked->data.nr);
        note(&it);
        if (isKilled)
            kill(child, SIGKILL);
        else
            answer(asked->id, &it, 0);
    }
    free(it.bytes);
}

static void readFault(char *typed)
{
    failing = strtok(typed, ":");
    nth = atol(strtok(NULL, ":"));
    count = atol(strtok(NULL, ":"));
    char *what = strtok(NULL, ":");
    fault = !strcmp(what, "short") ? SHORT : !strcmp(what, "kill") ? KILL_BEFORE : !strcmp(what, "killed") ? KILL_AFTER
        : !strcmp(what, "slow") ? SLOW : atol(what);
}

int main(int argc, char **argv)
{
    for (int option; (option = getopt(argc, argv, "+w:o:r:f:")) != -1;) {
        if (option == 'w') folder = optarg;
        else if (option == 'o') ending = optarg;
        else if (option == 'r') record = fopen(optarg, "we");
        else if (option == 'f') readFault(optarg);
        else exit(98);
    }
    volatile int *shared = mmap(NULL, 4096, PROT_READ | PROT_WRITE, MAP_SHARED | MAP_ANONYMOUS, -1, 0);
    child = fork();
    if (!child) {
        prctl(PR_SET_PDEATHSIG, SIGKILL);
        int made = install();
        shared[0] = made < 0 ? -errno : made;
        while (!shared[1])
            usleep(200);
        execvp(argv[optind], argv + optind);
        _exit(97);
    }
    // signals to the group, such as Ctrl+C, are the program's affair
    signal(SIGINT, SIG_IGN);
    while (!shared[0])
        usleep(200);
    pidfd = syscall(SYS_pidfd_open, child, 0);
    listener = shared[0] < 0 ? -1 : syscall(SYS_pidfd_getfd, pidfd, shared[0], 0);
    if (listener < 0) {
        errno = shared[0] < 0 ? -shared[0] : errno;
        die("no system calls can be caught here");
    }
    shared[1] = 1;
    for (;;) {
        struct pollfd ready = { listener, POLLIN, 0 };
        if (poll(&ready, 1, -1) < 0 && errno != EINTR)
            die("poll");
        if (ready.revents & POLLIN) {
            struct seccomp_notif asked = { 0 };
            if (!ioctl(listener, SECCOMP_IOCTL_NOTIF_RECV, &asked))
                handle(&asked);
        } else if (ready.revents & (POLLHUP | POLLERR))
            break;
    }
    int status;
    waitpid(child, &status, 0);
    return WIFSIGNALED(status) ? 128 + WTERMSIG(status) : WEXITSTATUS(status);
}
