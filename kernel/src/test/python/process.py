# Bandwright. SPDX-License-Identifier: Apache-2.0
"""What only a process can show: how it starts, is interrupted, ends. Prints the figures it measured."""
import json
import os
import subprocess
import sys
import time

from jupyter_client.connect import write_connection_file
from jupyter_client.kernelspec import get_kernel_spec
from jupyter_client.manager import KernelManager

RING = (
    "a = 4 mm between 3 mm and 6 mm\n"
    "profile dome = flat(width: a, height: 2 mm)\n"
    "band shank { finger ISO 57  profile dome  metal silver-925 }\n"
    "show weights"
)
LONG = "vary a from 3 mm to 6 mm step 0.0001 mm { weight(ring), wall(shank) }"


def since(start):
    return round(time.monotonic() - start, 2)


def cpu(pid):
    fields = open(f"/proc/{pid}/stat").read().rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def reply(client, message, timeout=30):
    while True:
        answer = client.get_shell_msg(timeout=timeout)
        if answer["parent_header"].get("msg_id") == message:
            return answer


def main():
    spec = get_kernel_spec("bandwright")
    assert spec.interrupt_mode == "message" and os.path.isabs(spec.argv[0]), spec.argv
    for picture in ("logo-32x32.png", "logo-64x64.png", "logo-svg.svg"):
        assert os.path.exists(os.path.join(spec.resource_dir, picture)), picture

    start = time.monotonic()
    manager = KernelManager(kernel_name="bandwright")
    manager.start_kernel()
    client = manager.client()
    client.start_channels()
    reply(client, client.kernel_info())
    info = since(start)
    assert reply(client, client.execute(RING))["content"]["status"] == "ok"
    print("kernel_info after", info, "s, first ring cell after", since(start), "s")

    pid = manager.provisioner.pid
    running = client.execute(LONG)
    time.sleep(2)
    start = time.monotonic()
    manager.interrupt_kernel()
    stopped = reply(client, running)
    took = since(start)
    assert stopped["content"]["ename"] == "interrupted", stopped["content"]
    assert took < 1, took
    before = cpu(pid)
    time.sleep(1)
    used = cpu(pid) - before
    assert used < 0.3, f"{used} s of processor time after the interrupt"
    shown = reply(client, client.execute("", user_expressions={"a": "a"}))
    assert "4 mm" in shown["content"]["user_expressions"]["a"]["data"]["text/plain"], shown["content"]
    print("interrupt after", took, "s, processor then at", round(used * 100), "%")

    manager.restart_kernel(now=False)
    client.wait_for_ready(timeout=30)
    gone = reply(client, client.execute("", user_expressions={"a": "a"}))
    assert gone["content"]["user_expressions"]["a"]["status"] == "error", gone["content"]

    reply(client, client.execute(RING))
    client.execute(LONG)
    time.sleep(1)
    process = manager.provisioner.process
    start = time.monotonic()
    manager.request_shutdown()
    code = process.wait(timeout=5)
    assert code == 0 and since(start) < 2, (code, since(start))
    print("exit", code, "while busy after", since(start), "s")
    client.stop_channels()
    manager.cleanup_resources()

    orphan(spec)
    refused(spec)


def command(spec, file):
    return [word.replace("{connection_file}", file) for word in spec.argv]


def orphan(spec):
    """A kernel whose parent is gone goes, too."""
    file, _ = write_connection_file()
    script = (
        "import subprocess, sys, time\n"
        "kernel = subprocess.Popen(sys.argv[1:], stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL,"
        " stderr=subprocess.DEVNULL)\n"
        "time.sleep(3)\n"
        "print(kernel.pid, kernel.poll(), flush=True)\n"
    )
    said = subprocess.run(
        [sys.executable, "-c", script] + command(spec, file), env={**os.environ, **spec.env}, capture_output=True
    ).stdout.decode()
    pid, state = said.split()
    assert state == "None", said
    start = time.monotonic()
    while alive(pid):
        assert since(start) < 5, "a kernel without a parent lives on"
        time.sleep(0.1)
    print("ended", since(start), "s after its parent")


def alive(pid):
    try:
        return open(f"/proc/{pid}/stat").read().rsplit(")", 1)[1].split()[0] != "Z"
    except FileNotFoundError:
        return False


def refused(spec):
    """What cannot be spoken is refused with a sentence."""
    file, settings = write_connection_file()
    with open(file, "w") as target:
        json.dump({**settings, "key": "k", "transport": "ipc"}, target)
    done = subprocess.run(command(spec, file), env={**os.environ, **spec.env}, capture_output=True, timeout=20)
    assert done.returncode == 2 and b"tcp only" in done.stderr, done


main()
