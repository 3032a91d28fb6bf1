# What a test waits for where another process works: the thing itself, never a time that is enough
# on an idle machine. The deadline is for what will never come.
import os
import socket
import time

DEADLINE = 120.0  # seconds
PAUSE = 0.02  # between two looks


def until(holds, what):
    """Returns what `holds` gives once it is true."""
    end = time.monotonic() + DEADLINE
    while not (found := holds()):
        if time.monotonic() > end:
            raise AssertionError(f"in vain for {DEADLINE:.0f} s: {what}")
        time.sleep(PAUSE)
    return found


def seconds_in(stat):
    """Seconds of a processor by a line of /proc, however busy the machine is."""
    with open(stat, encoding="ascii") as file:
        fields = file.read().rpartition(") ")[2].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def work_of(process):
    """Seconds of a processor that a process has used."""
    return seconds_in(f"/proc/{process}/stat")


def work_by_thread(process):
    """The same for each of its threads, by their numbers."""
    tasks = f"/proc/{process}/task"
    return {task: seconds_in(f"{tasks}/{task}/stat") for task in os.listdir(tasks)}


def memory_of(process):
    """Resident bytes of a process."""
    with open(f"/proc/{process}/statm", encoding="ascii") as file:
        return int(file.read().split()[1]) * os.sysconf("SC_PAGE_SIZE")


def is_waited_for(link):
    """Whether the other side of a connection has neither answered nor closed it."""
    link.setblocking(False)
    try:
        link.recv(1, socket.MSG_PEEK)
    except BlockingIOError:
        return True
    except OSError:
        pass
    return False


def is_connected(link):
    """Whether the other side of a connection has not closed it, whatever it has sent."""
    established = 1
    return link.getsockopt(socket.IPPROTO_TCP, socket.TCP_INFO, 1)[0] == established
