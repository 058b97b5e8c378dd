#!/usr/bin/env python3
"""How fast the published program answers in a terminal: key to screen, start, idle CPU, memory.

    terminal_speed.py PROGRAM [CYCLES]

Lays the demo (five of six runs driven), opens it in a pseudo terminal of 80x24, starts the sixth run and types a reading,
Enter and undo, CYCLES times, at uneven intervals so that no polling falls into step. A key's time ends with the last byte
that it draws; Enter and undo wait for the disk. A row a thing that was
measured: what, unit and every value, cut by tabs. No test asserts on any of it.
"""
import fcntl, os, pty, random, select, struct, sys, tempfile, termios, time


def opened(program, words, home):
    pid, master = pty.fork()
    if pid == 0:
        os.environ.update(TERM="xterm-256color", HOME=home)
        os.execv(program, [program, *words])
    fcntl.ioctl(master, termios.TIOCSWINSZ, struct.pack("HHHH", 24, 80, 0, 0))
    return pid, master


def until(master, words, patience=30):
    seen, end = b"", time.perf_counter() + patience
    while words not in seen:
        if not select.select([master], [], [], max(0, end - time.perf_counter()))[0]:
            raise SystemExit(f"never seen: {words!r} in {seen[-300:]!r}")
        seen += os.read(master, 65536)
    return time.perf_counter()


def drained(master, quiet=0.05):
    while select.select([master], [], [], quiet)[0]:
        os.read(master, 65536)


def pressed(master, key):
    """Milliseconds from a key to the last byte it drew."""
    time.sleep(random.uniform(0.06, 0.14))
    drained(master, 0)
    begun = last = time.perf_counter()
    os.write(master, key)
    wait = 1.0
    while select.select([master], [], [], wait)[0]:
        os.read(master, 65536)
        last, wait = time.perf_counter(), 0.004
    return (last - begun) * 1000


def ticks(pid):
    parts = open(f"/proc/{pid}/stat").read().rsplit(")", 1)[1].split()
    return int(parts[11]) + int(parts[12])


def kib(pid, name):
    return next(int(line.split()[1]) for line in open(f"/proc/{pid}/status") if line.startswith(name))


def leave(pid, master):
    os.write(master, b"\x11")
    while True:
        try:
            if not os.read(master, 65536):
                break
        except OSError:
            break
    os.waitpid(pid, 0)


def told(what, unit, values):
    print("\t".join([what, unit, *(f"{value:.3f}" for value in values)]), flush=True)


def main():
    program, cycles = os.path.abspath(sys.argv[1]), int(sys.argv[2]) if len(sys.argv) > 2 else 100
    with tempfile.TemporaryDirectory() as home:
        folder = os.path.join(home, "demo")
        pid, master = opened(program, ["demo", "--out", folder], home)
        until(master, b"saved")
        drained(master)
        leave(pid, master)
        study = next(os.path.join(at, name) for at, _, names in os.walk(folder) for name in names if name.endswith(".study"))
        frames, keys = [], []
        for _ in range(15):
            begun = time.perf_counter()
            pid, master = opened(program, ["drive", study], home)
            frames.append((until(master, b"saved") - begun) * 1000)
            os.write(master, b"5")
            select.select([master], [], [], 5)
            keys.append((time.perf_counter() - begun) * 1000)
            drained(master)
            leave(pid, master)
        told("start to the first whole frame, a day's study open", "ms", frames)
        told("start to the first key's echo", "ms", keys)

        pid, master = opened(program, ["drive", study], home)
        until(master, b"saved")
        drained(master)
        os.write(master, b"\r")
        until(master, b"NEXT")
        drained(master)
        figures, enters, undos = [], [], []
        for _ in range(cycles):
            figures += [pressed(master, figure) for figure in (b"5", b"3", b"5", b"5")]
            enters.append(pressed(master, b"\r"))
            undos.append(pressed(master, b"u"))
        told("a figure to the screen", "ms", figures)
        told("Enter: on the disk, compared, on the screen", "ms", enters)
        told("undo: on the disk, on the screen", "ms", undos)
        told("all keys of a reading and its undo", "ms", figures + enters + undos)
        told("memory after these keys, resident", "MB", [kib(pid, "VmRSS") * 1024 / 1e6])
        time.sleep(5)
        drained(master)
        begun, before = time.perf_counter(), ticks(pid)
        time.sleep(20)
        share = (ticks(pid) - before) / os.sysconf("SC_CLK_TCK") / (time.perf_counter() - begun)
        told("idle, of one core", "%", [share * 100])
        leave(pid, master)


main()
