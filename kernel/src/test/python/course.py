# Bandwright. SPDX-License-Identifier: Apache-2.0
"""Executes notebooks through the installed kernel, in a folder of their own, and compares what is said with what is stored."""
import pathlib
import shutil
import sys

import nbclient
import nbformat

expected, work, *sources = map(pathlib.Path, sys.argv[1:])
for source in sources:
    shutil.copy(source, work)
    notebook = nbformat.read(work / source.name, as_version=4)
    client = nbclient.NotebookClient(notebook, timeout=120, resources={"metadata": {"path": str(work)}})
    client.execute()
    nbformat.validate(notebook)
    said = ""
    for cell in notebook.cells:
        for output in cell.get("outputs", []):
            assert output.output_type != "error", (source.name, cell.id, output)
            if output.output_type == "display_data":
                said += f"--- {cell.id}\n{output.data['text/plain']}\n"
    # Notes of the program and printing come on channels of their own here; the answers are all that is compared.
    stored = (expected / f"{source.stem}.out").read_text(encoding="utf-8")
    for answer in said.split("--- ")[1:]:
        assert "--- " + answer in stored, (source.name, answer)
