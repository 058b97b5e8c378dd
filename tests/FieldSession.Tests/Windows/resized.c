/* Makes the window of its console another size, as somebody does with the mouse, and writes down what the console then shows, a row a line in UTF-8.
   Usage: resized.exe MILLISECONDS COLUMNS ROWS FILE; it waits so long before it and once more after it. The file appears whole. */
#include <windows.h>
#include <stdio.h>
#include <stdlib.h>

#define MOST 512

static void shown(HANDLE screen, const char *name)
{
    char unfinished[MAX_PATH + 1], row[MOST * 3];
    wchar_t letters[MOST];
    CONSOLE_SCREEN_BUFFER_INFO now;
    snprintf(unfinished, sizeof unfinished, "%s_", name);
    FILE *file = fopen(unfinished, "wb");
    if (!file || !GetConsoleScreenBufferInfo(screen, &now) || now.dwSize.X > MOST)
        exit(3);
    for (COORD at = { 0, now.srWindow.Top }; at.Y <= now.srWindow.Bottom; at.Y++) {
        DWORD read = 0;
        ReadConsoleOutputCharacterW(screen, letters, (DWORD)now.dwSize.X, at, &read);
        fwrite(row, 1, (size_t)WideCharToMultiByte(CP_UTF8, 0, letters, (int)read, row, sizeof row, NULL, NULL), file);
        fputc('\n', file);
    }
    fclose(file);
    if (!MoveFileA(unfinished, name))
        exit(4);
}

int main(int count, char **words)
{
    if (count != 5)
        return 2;
    Sleep((DWORD)atoi(words[1]));
    HANDLE screen = CreateFileA("CONOUT$", GENERIC_READ | GENERIC_WRITE, FILE_SHARE_READ | FILE_SHARE_WRITE, NULL, OPEN_EXISTING, 0, NULL);
    SMALL_RECT window = { 0, 0, (SHORT)(atoi(words[2]) - 1), (SHORT)(atoi(words[3]) - 1) };
    COORD size = { (SHORT)atoi(words[2]), (SHORT)atoi(words[3]) };
    /* a window is never larger than what it shows a part of */
    SetConsoleWindowInfo(screen, TRUE, &window);
    if (!SetConsoleScreenBufferSize(screen, size) || !SetConsoleWindowInfo(screen, TRUE, &window))
        return 1;
    Sleep((DWORD)atoi(words[1]));
    shown(screen, words[4]);
    return 0;
}
