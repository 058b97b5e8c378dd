/* Does what virus scanners do on Windows: opens each file of a folder that is new or was written to, and of the folders in it, without sharing, and holds it
   for a second. One that is open elsewhere is tried until it is closed. Usage: scanner.exe FOLDER MILLISECONDS; it says 'holding NAME' for each file that it
   got, and ends when its input does. */
#include <windows.h>
#include <stdio.h>
#include <wchar.h>

#define MOST 4096

static struct seen {
    wchar_t *path;
    FILETIME written;
    volatile LONG busy;
} seen[MOST];
static int seen_count;
static DWORD held_ms;

/* the file, where it has to be held: it is new, or was written to since */
static struct seen *to_hold(const wchar_t *path, FILETIME written)
{
    for (int i = 0; i < seen_count; i++)
        if (wcscmp(seen[i].path, path) == 0) {
            if (seen[i].busy || CompareFileTime(&seen[i].written, &written) == 0)
                return NULL;
            seen[i].written = written;
            return &seen[i];
        }
    if (seen_count == MOST)
        return NULL;
    seen[seen_count].path = _wcsdup(path);
    seen[seen_count].written = written;
    return &seen[seen_count++];
}

static DWORD WINAPI hold(void *which)
{
    struct seen *file = which;
    HANDLE held;
    while ((held = CreateFileW(file->path, GENERIC_READ, 0, NULL, OPEN_EXISTING, 0, NULL)) == INVALID_HANDLE_VALUE && GetLastError() == ERROR_SHARING_VIOLATION)
        Sleep(1);
    if (held != INVALID_HANDLE_VALUE) {
        fwprintf(stdout, L"holding %ls\n", file->path);
        fflush(stdout);
        Sleep(held_ms);
        CloseHandle(held);
    }
    file->busy = 0;
    return 0;
}

static void look(const wchar_t *folder, int before)
{
    wchar_t pattern[MAX_PATH], path[MAX_PATH];
    WIN32_FIND_DATAW found;
    swprintf(pattern, MAX_PATH, L"%ls\\*", folder);
    HANDLE search = FindFirstFileW(pattern, &found);
    if (search == INVALID_HANDLE_VALUE)
        return;
    do {
        if (wcscmp(found.cFileName, L".") == 0 || wcscmp(found.cFileName, L"..") == 0)
            continue;
        swprintf(path, MAX_PATH, L"%ls\\%ls", folder, found.cFileName);
        if (found.dwFileAttributes & FILE_ATTRIBUTE_DIRECTORY)
            look(path, before);
        else {
            struct seen *file = to_hold(path, found.ftLastWriteTime);
            if (file && !before) {
                file->busy = 1;
                CloseHandle(CreateThread(NULL, 0, hold, file, 0, NULL));
            }
        }
    } while (FindNextFileW(search, &found));
    FindClose(search);
}

static DWORD WINAPI end_with_input(void *unused)
{
    (void)unused;
    while (getchar() != EOF) { }
    ExitProcess(0);
}

int wmain(int count, wchar_t **words)
{
    if (count != 3)
        return 2;
    held_ms = (DWORD)wcstoul(words[2], NULL, 10);
    CreateThread(NULL, 0, end_with_input, NULL, 0, NULL);
    look(words[1], 1);
    fwprintf(stdout, L"looking\n");
    fflush(stdout);
    for (;;) {
        look(words[1], 0);
        Sleep(5);
    }
}
