# Bandwright. SPDX-License-Identifier: Apache-2.0
"""Measures the installed kernel: median of five, as kernel/docs/performance.md has it. Linux only."""
import os
import statistics
import time

import zmq
from jupyter_client.manager import KernelManager

RING = (
    "a = 4 mm between 3 mm and 6 mm\n"
    "profile dome = flat(width: a, height: 2 mm)\n"
    "band shank { finger ISO 57  profile dome  metal silver-925 }\n"
    "show weights"
)
LONG = "vary a from 3 mm to 6 mm step 0.0001 mm { weight(ring), wall(shank) }"


def reply(client, message):
    while True:
        answer = client.get_shell_msg(timeout=60)
        if answer["parent_header"].get("msg_id") == message:
            return answer


def seconds(work):
    start = time.monotonic()
    work()
    return time.monotonic() - start


def megabytes(pid):
    with open(f"/proc/{pid}/status") as status:
        return int(next(line for line in status if line.startswith("VmRSS")).split()[1]) / 1024


def heartbeat(manager):
    socket = zmq.Context.instance().socket(zmq.REQ)
    socket.connect(f"tcp://127.0.0.1:{manager.hb_port}")

    def beat():
        socket.send(b"ping")
        socket.recv()

    beat()
    return statistics.median(seconds(beat) for _ in range(30))


def measure():
    figures = {}
    start = time.monotonic()
    manager = KernelManager(kernel_name="bandwright")
    manager.start_kernel()
    client = manager.client()
    client.start_channels(hb=False)

    def run(code):
        return reply(client, client.execute(code))

    reply(client, client.kernel_info())
    figures["s to kernel_info"] = time.monotonic() - start
    run(RING)
    figures["s to the first ring cell"] = time.monotonic() - start
    pid = manager.provisioner.pid
    figures["MB then"] = megabytes(pid)
    figures["s for a picture"] = seconds(lambda: run("show ring"))
    figures["ms a cell that shows"] = 1000 * statistics.median(seconds(lambda: run("show a")) for _ in range(100))
    figures["ms a cell that defines"] = 1000 * statistics.median(
        seconds(lambda: run(f"x{number} = 3 mm")) for number in range(100)
    )

    def queue():
        for message in [client.execute("show a") for _ in range(200)]:
            reply(client, message)

    figures["s for 200 queued"] = seconds(queue)
    for _ in range(500):
        run("show a")
    figures["MB after 900 cells"] = megabytes(pid)
    client.execute(LONG)
    time.sleep(1)
    figures["ms a heartbeat while busy"] = 1000 * heartbeat(manager)

    def end():
        manager.request_shutdown()
        manager.provisioner.process.wait(5)

    figures["s to the exit while busy"] = seconds(end)
    client.stop_channels()
    manager.cleanup_resources()
    return figures


kernels = [measure() for _ in range(5)]
for name in kernels[0]:
    print(f"{statistics.median(kernel[name] for kernel in kernels):9.2f} {name}")
print("load", os.getloadavg())
