/* Does what virus scanners do on Windows: opens each new file of a folder, and of the folders in it, without sharing, and holds it for a second.
   Usage: scanner.exe FOLDER MILLISECONDS; it says 'holding NAME' for each file that it got, and ends when its input does. */
#include <windows.h>
#include <stdio.h>
#include <wchar.h>

#define MOST 4096

static wchar_t *seen[MOST];
static int seen_count;
static DWORD held_ms;

static int is_new(const wchar_t *path)
{
    for (int i = 0; i < seen_count; i++)
        if (wcscmp(seen[i], path) == 0)
            return 0;
    if (seen_count < MOST)
        seen[seen_count++] = _wcsdup(path);
    return 1;
}

static DWORD WINAPI hold(void *path)
{
    HANDLE file = CreateFileW(path, GENERIC_READ, 0, NULL, OPEN_EXISTING, 0, NULL);
    if (file == INVALID_HANDLE_VALUE)
        return 0;
    fwprintf(stdout, L"holding %ls\n", (wchar_t *)path);
    fflush(stdout);
    Sleep(held_ms);
    CloseHandle(file);
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
        else if (is_new(path) && !before)
            CloseHandle(CreateThread(NULL, 0, hold, _wcsdup(path), 0, NULL));
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
