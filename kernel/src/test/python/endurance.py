# Bandwright. SPDX-License-Identifier: Apache-2.0
"""A long session and many short ones: memory stays level, and nothing is left behind. Takes the number of short ones."""
import gc
import os
import queue
import sys
import tempfile
import time

from jupyter_client.manager import KernelManager

RING = (
    "a = 4 mm between 3 mm and 6 mm\n"
    "profile dome = flat(width: a, height: 2 mm)\n"
    "band shank { finger ISO 57  profile dome  metal silver-925 }\n"
    "show weights"
)


def started():
    manager = KernelManager(kernel_name="bandwright")
    manager.start_kernel()
    client = manager.client()
    client.start_channels()
    return manager, client


def run(client, code):
    message = client.execute(code)
    while True:
        answer = client.get_shell_msg(timeout=60)
        if answer["parent_header"].get("msg_id") == message:
            assert answer["content"]["status"] == "ok", answer["content"]
            return


def drain(client):
    try:
        while True:
            client.get_iopub_msg(timeout=0)
    except queue.Empty:
        pass


def megabytes(pid):
    with open(f"/proc/{pid}/status") as status:
        return int(next(line for line in status if line.startswith("VmRSS")).split()[1]) / 1024


def long_session(cells):
    manager, client = started()
    run(client, RING)
    pid = manager.provisioner.pid
    # The first hundreds fill what the machine keeps of classes and compiled code.
    for number in range(300):
        run(client, f"x = {number} mm\nweight(shank)")
    before = megabytes(pid)
    for number in range(cells):
        run(client, f"a = {3 + number % 30 / 10} mm between 3 mm and 6 mm\nweight(shank)\nshow weights")
        drain(client)
    grown = megabytes(pid) - before
    print(cells, "cells:", round(before), "MB and", round(grown), "MB more")
    client.stop_channels()
    manager.shutdown_kernel()
    assert grown < 50, f"grown by {grown} MB"


def left():
    """Files of ours where they could be left: Jupyter's runtime folder and the folder for temporary files."""
    found = set()
    for folder in (os.environ["JUPYTER_RUNTIME_DIR"], tempfile.gettempdir()):
        for name in os.listdir(folder) if os.path.isdir(folder) else []:
            if name.startswith(("kernel-", "bandwright", "hsperfdata", "jshell")):
                path = os.path.join(folder, name)
                found |= {path} if not name.startswith("hsperf") else {os.path.join(path, f) for f in os.listdir(path)}
    return found


def processes():
    ours = set()
    for pid in filter(str.isdigit, os.listdir("/proc")):
        try:
            with open(f"/proc/{pid}/cmdline", "rb") as words:
                if os.environ["JUPYTER_DATA_DIR"].encode() in words.read():
                    ours.add(pid)
        except OSError:
            pass
    return ours


def short_sessions(times):
    before = left()
    start = time.monotonic()
    for _ in range(times):
        manager, client = started()
        run(client, "a = 4 mm\na")
        client.stop_channels()
        manager.shutdown_kernel()
        manager.cleanup_resources()
    assert not processes(), processes()
    after = {path for path in left() - before if not is_of_another(path)}
    assert not after, after
    print(times, "starts and stops in", round(time.monotonic() - start), "s, nothing left behind")


def is_of_another(path):
    """Java's own file about a process that lives is another program's."""
    name = os.path.basename(path)
    return name.isdigit() and os.path.exists(f"/proc/{name}")


long_session(2000)
gc.collect()
short_sessions(int(sys.argv[1]))
