"""Every file that the plugin writes appears under its name only when it is whole: looked for in the code itself.

What interrupting does is tried in tests/qgis/test_whole_files.py and tests/core/test_job_exchange.py.
"""

from __future__ import annotations

import ast
from pathlib import Path

PLUGIN = Path(__file__).resolve().parents[2] / "plugin"

#: Calls that write a file.
WRITERS = {
    "write_text", "write_bytes", "savefig", "PdfPages", "writeAsVectorFormatV3", "exportToPdf", "exportToImage",
    "QPdfWriter", "Create", "CreateCopy", "saveAsImage", "tofile",
}  # fmt: skip

#: Functions that write into what the function named here has made: a file that is replaced, memory, or QGIS's own
#: folder for what lasts as long as QGIS.
ELSEWHERE = {
    "core/job/at_work.py:alone": "the lock of a job, which is empty",
    "processing/geopackage.py:_write_layer": "write_geopackage, replaced",
    "core/handover/pdf_order.py:settle_pdf": "a file that is not yet in its place",
    "gui/previewdata.py:": "a temporary file",
    "core/georeference/answer_places.py:_head_of": "a temporary folder",
    "core/report/drawing.py:png": "memory",
    "core/report/drawing.py:svg": "memory",
}


def writes(call: ast.Call) -> bool:
    name = getattr(call.func, "attr", getattr(call.func, "id", ""))
    if name == "open":
        modes = [value.value for value in [*call.args[1:2], *(k.value for k in call.keywords if k.arg == "mode")]
                 if isinstance(value, ast.Constant) and isinstance(value.value, str)]  # fmt: skip
        return any(letter in mode for mode in modes for letter in "wax+")
    return name in WRITERS


def unguarded():
    """Functions that write a file and do not use replace_file, as ``module:function``."""
    for path in sorted(PLUGIN.rglob("*.py")):
        tree = ast.parse(path.read_text(encoding="utf-8"))
        for function in ast.walk(tree):
            if not isinstance(function, (ast.FunctionDef, ast.AsyncFunctionDef)):
                continue
            if any(isinstance(node, ast.Call) and writes(node) for node in ast.walk(function)):
                names = {getattr(node, "id", getattr(node, "attr", "")) for node in ast.walk(function)}
                if "replace_file" not in names:
                    yield f"{path.relative_to(PLUGIN).as_posix()}:{function.name}"


def test_files_are_written_beside_their_place_and_then_put_there():
    found = list(unguarded())
    unknown = [where for where in found if not any(where.startswith(known) for known in ELSEWHERE)]
    assert unknown == []


def test_the_search_finds_writers():
    """The search itself works: all that ELSEWHERE excuses is found by it."""
    found = list(unguarded())
    assert [known for known in ELSEWHERE if not any(where.startswith(known) for where in found)] == []
