# Bandwright. SPDX-License-Identifier: Apache-2.0
"""A classic notebook server in a headless browser runs a notebook; its pictures show. Takes notebook, work folder, picture file."""
import base64
import json
import os
import re
import shutil
import socket
import subprocess
import sys
import time
import urllib.request

from tornado.ioloop import IOLoop
from tornado.websocket import websocket_connect

CHROMIUM = "/usr/bin/chromium"
RUN = "Jupyter.notebook.execute_all_cells()"
READY = "typeof Jupyter !== 'undefined' && Jupyter.notebook && Jupyter.notebook.kernel && Jupyter.notebook.kernel.is_connected()"
STATE = (
    "JSON.stringify({busy: Jupyter.notebook.kernel_busy,"
    " open: Jupyter.notebook.get_cells().filter(c => c.cell_type == 'code' && !(c.input_prompt_number > 0)).length,"
    " name: Jupyter.notebook.kernel.name,"
    " wide: Array.from(document.querySelectorAll('.output img')).filter(i => i.naturalWidth > 300).length,"
    " drawn: document.querySelectorAll('.output svg').length,"
    " tables: document.querySelectorAll('.output table').length,"
    " errors: document.querySelectorAll('.output_error').length})"
)


def free_port():
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]


def line_with(pattern, stream, seconds):
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        found = re.search(pattern, stream.readline())
        if found:
            return found.group(0)
    raise AssertionError(f"{pattern} never came")


class Page:
    """One tab, spoken to by the browser's own protocol."""

    def __init__(self, wire):
        self.wire = wire
        self.number = 0

    async def ask(self, method, **params):
        self.number += 1
        await self.wire.write_message(json.dumps({"id": self.number, "method": method, "params": params}))
        while True:
            answer = json.loads(await self.wire.read_message())
            if answer.get("id") == self.number:
                return answer["result"]

    async def value(self, script):
        answer = await self.ask("Runtime.evaluate", expression=script, returnByValue=True)
        return answer["result"].get("value")

    async def until(self, script, seconds):
        end = time.monotonic() + seconds
        while not await self.value(script):
            if time.monotonic() > end:
                where = await self.value("location.href + ' ' + document.title + ' ' + typeof Jupyter")
                raise AssertionError(f"{script} never held at {where}")
            time.sleep(0.3)


async def look(debugger, address, picture):
    port = re.search(r":(\d+)/", debugger).group(1)
    targets = json.load(urllib.request.urlopen(f"http://127.0.0.1:{port}/json"))
    tab = next(target for target in targets if target["type"] == "page")
    page = Page(await websocket_connect(tab["webSocketDebuggerUrl"], max_message_size=64 << 20))
    await page.ask("Page.navigate", url=address)
    await page.until(READY, 40)
    await page.value(RUN)
    end = time.monotonic() + 90
    while True:
        time.sleep(0.5)
        state = json.loads(await page.value(STATE))
        if state["open"] == 0 and not state["busy"]:
            break
        assert time.monotonic() < end, state
    await page.until("Array.from(document.querySelectorAll('.output img')).every(i => i.complete)", 20)
    state = json.loads(await page.value(STATE))
    await page.value("(document.querySelector('.output img') || document.querySelector('.output svg')).scrollIntoView()")
    time.sleep(0.5)
    shot = await page.ask("Page.captureScreenshot", format="png")
    with open(picture, "wb") as file:
        file.write(base64.b64decode(shot["data"]))
    return state


def main():
    notebook, folder, picture = sys.argv[1:]
    shutil.copy(notebook, os.path.join(folder, "ring.ipynb"))
    server = subprocess.Popen(
        ["jupyter-notebook", "--no-browser", "--allow-root", f"--port={free_port()}", "--ip=127.0.0.1", "--NotebookApp.token=t",
         f"--notebook-dir={folder}"],
        stderr=subprocess.STDOUT, stdout=subprocess.PIPE, text=True)
    browser = None
    try:
        address = line_with(r"http://127\.0\.0\.1:\d+/", server.stdout, 60)
        browser = subprocess.Popen(
            [CHROMIUM, "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
             "--disable-background-networking", "--disable-component-update", "--disable-sync",
             "--remote-debugging-port=0", "--remote-allow-origins=*", f"--user-data-dir={folder}/profile",
             "--window-size=1200,900", "about:blank"],
            stderr=subprocess.PIPE, text=True)
        debugger = line_with(r"ws://\S+", browser.stderr, 60)
        state = IOLoop.current().run_sync(lambda: look(debugger, address + "notebooks/ring.ipynb?token=t", picture))
        assert state["name"] == "bandwright", state
        assert state["errors"] == 0 and state["tables"] > 0 and state["drawn"] + state["wide"] >= 2, state
        print("the notebook ran in a browser:", state)
    finally:
        for process in (browser, server):
            if process:
                process.terminate()
                process.wait(timeout=20)


main()
