# Bandwright. SPDX-License-Identifier: Apache-2.0
"""Cells in Java through an installed kernel. Prints the figures it measured. Linux only."""
import os
import time

from jupyter_client.manager import KernelManager

RING = (
    "a = 4 mm between 3 mm and 6 mm\n"
    "profile dome = flat(width: a, height: 2 mm)\n"
    "band shank { finger ISO 57  profile dome  metal silver-925 }\n"
    "show weights"
)


def cpu(pid):
    fields = open(f"/proc/{pid}/stat").read().rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def megabytes(pid):
    with open(f"/proc/{pid}/status") as status:
        return round(int(next(line for line in status if line.startswith("VmRSS")).split()[1]) / 1024)


class Notebook:
    def __init__(self):
        self.manager = KernelManager(kernel_name="bandwright")
        self.manager.start_kernel()
        self.client = self.manager.client()
        self.client.start_channels()
        self.client.wait_for_ready(timeout=30)
        self.pid = self.manager.provisioner.pid

    def reply(self, message, timeout=60):
        while True:
            answer = self.client.get_shell_msg(timeout=timeout)
            if answer["parent_header"].get("msg_id") == message:
                return answer["content"]

    def heard(self, message):
        """Text and displays of a cell."""
        text, shown = "", []
        while True:
            heard = self.client.get_iopub_msg(timeout=60)
            if heard["parent_header"].get("msg_id") != message:
                continue
            content = heard["content"]
            if heard["msg_type"] == "stream":
                text += content["text"]
            elif heard["msg_type"] == "display_data":
                shown.append(content["data"])
            elif content.get("execution_state") == "idle":
                return text, shown

    def run(self, code):
        message = self.client.execute(code)
        reply = self.reply(message)
        return (reply, *self.heard(message))

    def close(self):
        self.client.stop_channels()
        self.manager.shutdown_kernel()


def works(notebook):
    assert notebook.run(RING)[0]["status"] == "ok"
    before = megabytes(notebook.pid)
    start = time.monotonic()
    reply, text, shown = notebook.run(
        'java\nSystem.out.println("printed");\nint kept = 77;\ndesign.set("a", mm(5), "wider");\ndesign.measure("weight(shank)")'
    )
    took = round(time.monotonic() - start, 2)
    assert reply["status"] == "ok" and "printed\n" in text and shown[0]["text/plain"] == "6.556 g", (reply, text, shown)
    start = time.monotonic()
    notebook.run("java\nkept + 1")
    again = round(time.monotonic() - start, 3)
    print("memory", before, "MB, first Java cell", took, "s, another", again, "s, memory", megabytes(notebook.pid), "MB")
    assert notebook.run("show a")[2][0]["text/plain"] == "a = 5 mm"


def is_told_what_is_wrong(notebook):
    reply = notebook.run("java\nint wrong = \"text\";")[0]
    assert reply["ename"] == "java-compile", reply
    assert any("^^^^" in line for line in reply["traceback"]), reply
    reply = notebook.run("java\nint[] none = {};\n\nnone[1]")[0]
    assert reply["ename"] == "java-exception" and "line 4, column 1" in "\n".join(reply["traceback"]), reply


def asks(notebook):
    message = notebook.client.execute("java\nnew Scanner(System.in).nextLine().length()", allow_stdin=True)
    notebook.client.get_stdin_msg(timeout=30)
    notebook.client.input("four")
    assert notebook.reply(message)["status"] == "ok"
    assert notebook.heard(message)[1][0]["text/plain"] == "4"


def stops(notebook, code):
    running = notebook.client.execute("java\n" + code)
    behind = notebook.client.execute("show a")
    time.sleep(1.5)
    start = time.monotonic()
    notebook.manager.interrupt_kernel()
    stopped = notebook.reply(running)
    took = round(time.monotonic() - start, 2)
    assert stopped["ename"] == "interrupted" and took < 1, (stopped, took)
    assert notebook.reply(behind)["status"] == "aborted"
    # The compiler tidies up after itself for a moment, whatever the cell does.
    time.sleep(1)
    before = cpu(notebook.pid)
    time.sleep(1)
    used = cpu(notebook.pid) - before
    assert used < 0.3, f"{used} s of processor time after the interrupt of {code}"
    assert notebook.run("java\nkept")[2][0]["text/plain"] == "77"
    print("interrupt after", took, "s, processor then at", round(used * 100), "%:", code)


def helps(notebook):
    code = "java\ndesign.mea"
    matches = notebook.reply(notebook.client.complete(code, len(code)))
    assert "measure(" in matches["matches"] and matches["cursor_start"] == len(code) - 3, matches
    found = notebook.reply(notebook.client.inspect('java\ndesign.measure("a")', 14))
    assert found["found"] and "measure(String" in found["data"]["text/plain"], found


def has_too_little_memory(notebook):
    reply = notebook.run("java\nvar hog = new ArrayList<byte[]>();\nwhile (true) hog.add(new byte[20_000_000]);")[0]
    assert reply["ename"] == "out-of-memory" and "--heap" in "\n".join(reply["traceback"]), reply
    assert notebook.run("java\nkept")[2][0]["text/plain"] == "77"


def main():
    notebook = Notebook()
    works(notebook)
    is_told_what_is_wrong(notebook)
    asks(notebook)
    stops(notebook, "while (true) { }")
    stops(notebook, "while (true) { try { while (true) { } } catch (Throwable all) { } }")
    stops(notebook, "Thread.sleep(60_000);")
    helps(notebook)
    has_too_little_memory(notebook)
    notebook.close()


main()
