# Bandwright. SPDX-License-Identifier: Apache-2.0
"""The plain console: cells without ids, typed into a terminal that tmux plays."""
import subprocess
import time

SESSION = "bandwright-console"


def tmux(*words):
    return subprocess.run(["tmux", "-L", SESSION, *words], capture_output=True, text=True, check=True).stdout


def seen():
    return tmux("capture-pane", "-p", "-S", "-200", "-t", SESSION)


def wait_for(text, seconds=40):
    end = time.monotonic() + seconds
    while text not in seen():
        assert time.monotonic() < end, f"{text!r} never came:\n{seen()}"
        time.sleep(0.2)


def type_line(text):
    # The console's own loop stumbles over keys that come before its prompt has settled.
    time.sleep(0.5)
    tmux("send-keys", "-t", SESSION, "-l", text)
    tmux("send-keys", "-t", SESSION, "Enter")


try:
    tmux("new-session", "-d", "-s", SESSION, "-x", "140", "-y", "50", "jupyter-console --kernel bandwright")
    wait_for("In [1]:")
    type_line("a = 4 mm + 2 mm")
    wait_for("In [2]:")
    type_line("a")
    wait_for("6 mm")
    wait_for("In [3]:")
    # A block that is not closed asks for more, and an error points at its place.
    type_line("a = 2 mm + 1 g")
    wait_for("unit-mismatch")
    wait_for("In [4]:")
    type_line("band shank {")
    time.sleep(1)
    assert seen().count("In [5]:") == 0, seen()
    type_line("finger ISO 57  profile p  metal silver-925 }")
    # Where the first Enter is not enough, a second one is; but never while the first is still asked about.
    time.sleep(2)
    if "In [5]:" not in seen():
        tmux("send-keys", "-t", SESSION, "Enter")
    wait_for("In [5]:")
    type_line("profile p = flat(width: 4 mm, height: 2 mm)")
    wait_for("In [6]:")
    type_line("weight(shank)")
    wait_for("5.2")
    print("the console works")
finally:
    subprocess.run(["tmux", "-L", SESSION, "kill-server"], capture_output=True)
