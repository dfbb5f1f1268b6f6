# Bandwright. SPDX-License-Identifier: Apache-2.0
"""Executes a notebook through the installed kernel, as nbconvert and JupyterLab do."""
import sys

import nbclient
import nbformat

source, target = sys.argv[1:]
notebook = nbformat.read(source, as_version=4)
assert notebook.metadata.kernelspec.name == "bandwright", notebook.metadata
nbclient.NotebookClient(notebook, timeout=120).execute()
nbformat.validate(notebook)
nbformat.write(notebook, target)
shown = [output for cell in notebook.cells if cell.cell_type == "code" for output in cell.outputs]
types = {mime for output in shown for mime in output.get("data", {})}
assert {"image/png", "image/svg+xml", "text/html", "text/plain"} <= types, types
counts = [cell.execution_count for cell in notebook.cells if cell.cell_type == "code"]
assert counts == list(range(1, len(counts) + 1)), counts
assert notebook.metadata.language_info.name == "bandwright", notebook.metadata

broken = nbformat.v4.new_notebook(cells=[nbformat.v4.new_code_cell("a = 2 mm + 1 g")])
broken.metadata.kernelspec = {"name": "bandwright", "display_name": "Bandwright"}
try:
    nbclient.NotebookClient(broken, timeout=60).execute()
except nbclient.exceptions.CellExecutionError as error:
    assert "unit-mismatch" in str(error), error
else:
    raise AssertionError("a cell with an error passed")
