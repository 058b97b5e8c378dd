/* Makes the window of its console another size, as somebody does with the mouse. Usage: resized.exe MILLISECONDS COLUMNS ROWS; it waits so long first. */
#include <windows.h>
#include <stdlib.h>

int main(int count, char **words)
{
    if (count != 4)
        return 2;
    Sleep((DWORD)atoi(words[1]));
    HANDLE screen = CreateFileA("CONOUT$", GENERIC_READ | GENERIC_WRITE, FILE_SHARE_READ | FILE_SHARE_WRITE, NULL, OPEN_EXISTING, 0, NULL);
    SMALL_RECT window = { 0, 0, (SHORT)(atoi(words[2]) - 1), (SHORT)(atoi(words[3]) - 1) };
    COORD size = { (SHORT)atoi(words[2]), (SHORT)atoi(words[3]) };
    return SetConsoleWindowInfo(screen, TRUE, &window) && SetConsoleScreenBufferSize(screen, size) ? 0 : 1;
}
