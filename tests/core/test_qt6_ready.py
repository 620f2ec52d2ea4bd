"""Nothing in the plugin stands in the way of Qt 6: enums in full, nothing that Qt 6 or its Python binding dropped.

Found in the syntax tree, without Qt. What was dropped is from the porting guides of Qt 6 and of its Python binding,
from memory. ``qgis.PyQt`` moves classes between modules itself (QAction), so those are no faults.
"""

from __future__ import annotations

import ast
from pathlib import Path
from typing import Dict, Iterator, List, Tuple

import pytest

ROOT = Path(__file__).parents[2]
FILES = sorted((ROOT / "plugin").rglob("*.py"))

BINDINGS = {"PyQt4", "PyQt5", "PyQt6", "PySide2", "PySide6", "sip"}
DROPPED_CLASSES = {
    "QDesktopWidget", "QDirModel", "QGLContext", "QGLFormat", "QGLWidget", "QLinkedList", "QMacCocoaViewContainer",
    "QMatrix", "QRegExp", "QRegExpValidator", "QStringRef", "QTextCodec", "QTextDecoder", "QTextEncoder",
    "QXmlDefaultHandler", "QXmlInputSource", "QXmlSimpleReader",
}  # fmt: skip
#: Methods by their name alone: none is one of ours, or of Python's.
DROPPED_METHODS = {
    "desktop": "QScreen", "exec_": "exec", "fromTime_t": "fromSecsSinceEpoch", "grabWidget": "QWidget.grab",
    "print_": "print",
    "setResizeMode": "setSectionResizeMode", "setTabStopWidth": "setTabStopDistance",
    "setTime_t": "setSecsSinceEpoch", "tabStopWidth": "tabStopDistance", "toTime_t": "toSecsSinceEpoch",
}  # fmt: skip
#: Names for sets of flags, which the Python binding of Qt 6 has no more: the enum itself is one.
DROPPED_FLAGS = {
    "Alignment", "DockWidgetAreas", "Edges", "InputMethodHints", "ItemFlags", "KeyboardModifiers", "MatchFlags",
    "MouseButtons", "OpenMode", "Orientations", "RenderHints", "StandardButtons", "TextInteractionFlags",
    "ToolBarAreas", "WindowFlags", "WindowStates",
}  # fmt: skip
#: Values that code often takes from a dialog or a widget of its own (``dialog.Accepted``).
OFTEN_INHERITED = {
    "Accepted", "Rejected", "AlignLeft", "AlignRight", "AlignCenter", "AlignTop", "AlignBottom", "Apply", "Cancel",
    "Close", "Horizontal", "Vertical", "NoEditTriggers", "Ok", "SelectRows", "StyledPanel", "UserRole",
}  # fmt: skip
#: Only QGIS below 3.38 comes there, and that has Qt 5.
EXCEPTIONS = {("versions.py", "QVariant")}


def faults(source: str, file: str = "") -> List[Tuple[int, str]]:
    """Line and what is wrong there, in the order of the lines."""
    tree = ast.parse(source)
    return sorted([*_of_imports(tree), *_of_attributes(tree, file)])


def _of_imports(tree: ast.AST) -> Iterator[Tuple[int, str]]:
    for node in ast.walk(tree):
        modules: List[str] = []
        if isinstance(node, ast.Import):
            modules = [alias.name for alias in node.names]
        elif isinstance(node, ast.ImportFrom) and not node.level:
            modules = [node.module or ""]
            yield from (
                (node.lineno, f"{alias.name} is not in Qt 6") for alias in node.names if alias.name in DROPPED_CLASSES
            )
        for module in modules:
            if module.split(".")[0] in BINDINGS:
                yield node.lineno, f"{module}: import from qgis.PyQt"


def _names(tree: ast.AST) -> Dict[str, List[str]]:
    """What imported names stand for: a class, or (an empty list) a module of classes."""
    found: Dict[str, List[str]] = {}
    for node in ast.walk(tree):
        if isinstance(node, ast.ImportFrom) and not node.level and (node.module or "").split(".")[0] == "qgis":
            for alias in node.names:
                module = alias.name in ("core", "gui", "analysis") or (alias.name[:2] == "Qt" and alias.name != "Qt")
                found[alias.asname or alias.name] = [] if module else [alias.name]
    return found


def _of_attributes(tree: ast.AST, file: str) -> Iterator[Tuple[int, str]]:
    names = _names(tree)
    inner = {id(node.value) for node in ast.walk(tree) if isinstance(node, ast.Attribute)}
    called = {id(node.func) for node in ast.walk(tree) if isinstance(node, ast.Call)}
    for node in ast.walk(tree):
        if not isinstance(node, ast.Attribute):
            continue
        if node.attr in DROPPED_METHODS:
            yield node.lineno, f".{node.attr} is not in Qt 6: use {DROPPED_METHODS[node.attr]}"
        chain = _chain(node)
        known = chain[0] in names
        parts = [*names[chain[0]], *chain[1:]] if known else chain
        if known and node.attr in DROPPED_CLASSES:
            yield node.lineno, f"{node.attr} is not in Qt 6"
        if known and len(parts) == 2 and node.attr in DROPPED_FLAGS:
            yield node.lineno, f"{'.'.join(parts)} is not in Qt 6: the enum itself is the set of flags"
        elif known and len(parts) == 2 and id(node) not in inner and _is_value(node, called):
            if (file, parts[0]) not in EXCEPTIONS:
                yield node.lineno, f"{'.'.join(parts)}: write the enum in full, {parts[0]}.<enum>.{node.attr}"
        elif not known and node.attr in OFTEN_INHERITED and not chain[-2][:1].isupper():
            yield node.lineno, f".{node.attr}: write the enum in full"


def _chain(node: ast.expr) -> List[str]:
    """The names of ``a.b.c``; "" for what is computed."""
    if isinstance(node, ast.Attribute):
        return [*_chain(node.value), node.attr]
    return [node.id] if isinstance(node, ast.Name) else [""]


def _is_value(node: ast.Attribute, called: set) -> bool:
    """Whether an attribute of a class is taken for a value: it begins in capitals, is no constant, and not called."""
    constant = node.attr.isupper() or "_" in node.attr
    return node.attr[:1].isupper() and not constant and id(node) not in called


def test_there_is_code_to_look_at() -> None:
    assert len(FILES) > 100
    assert any("qgis.PyQt" in path.read_text(encoding="utf-8") for path in FILES)


@pytest.mark.parametrize("path", FILES, ids=lambda path: str(path.relative_to(ROOT)))
def test_nothing_stands_in_the_way_of_qt_6(path: Path) -> None:
    found = faults(path.read_text(encoding="utf-8"), path.name)
    assert not found, "\n".join(f"{path}:{line}: {text}" for line, text in found)


CORE = "from qgis.PyQt.QtCore import QVariant, Qt\n"
WIDGETS = "from qgis.PyQt.QtWidgets import QDialog, QDialogButtonBox, QSizePolicy\n"


@pytest.mark.parametrize(
    "planted",
    [
        CORE + "box.setAlignment(Qt.AlignLeft)",
        CORE + "flags = Qt.AlignLeft | Qt.AlignmentFlag.AlignTop",
        CORE + "kind = QVariant.Int",
        CORE + "flags = Qt.Alignment(0)",
        CORE + "def turn(way=Qt.Horizontal): pass",
        "from qgis.PyQt.QtCore import Qt as Q\nx = Q.UserRole",
        "from qgis.PyQt import QtCore\nx = QtCore.Qt.UserRole",
        "from qgis.PyQt import QtCore\nx = QtCore.QRegExp('a')",
        WIDGETS + "policy = QSizePolicy(QSizePolicy.Expanding, QSizePolicy.Policy.Fixed)",
        WIDGETS + "buttons = QDialogButtonBox(QDialogButtonBox.Ok)",
        WIDGETS + "if dialog.run() == dialog.Accepted: pass",
        WIDGETS + "class Mine(QDialog):\n    def ok(self):\n        return self.Accepted",
        WIDGETS + "dialog.exec_()",
        WIDGETS + "QDialog().exec_()",
        "from qgis.core import QgsWkbTypes\nkind = QgsWkbTypes.PointZ",
        "from qgis.core import QgsProcessing\nkinds = [QgsProcessing.TypeVectorPoint]",
        "from qgis import core\nkind = core.QgsWkbTypes.PointZ",
        "from PyQt5.QtCore import Qt",
        "import PyQt5",
        "import PyQt6.QtCore as core",
        "import sip",
        "def late():\n    from PyQt5 import QtGui",
        "from qgis.PyQt.QtCore import QRegExp",
        "from qgis.PyQt.QtWidgets import QDesktopWidget",
        "screen = application.desktop()",
        "seconds = moment.toTime_t()",
    ],
)
def test_what_is_planted_is_found(planted: str) -> None:
    lines = [line for line, _ in faults(planted)]
    assert lines
    assert lines[-1] == planted.count("\n") + 1


@pytest.mark.parametrize(
    "fine",
    [
        CORE + "box.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop)",
        CORE + "flags = Qt.TextInteractionFlag(0)",
        CORE + "none = QVariant()",
        WIDGETS + "dialog.exec()\nok = QDialog.DialogCode.Accepted",
        "from qgis.core import Qgis, QgsTask\nx = Qgis.QGIS_VERSION_INT\ny = QgsTask.SubTask()",
        "from qgis.PyQt import QtCore\nx = QtCore.Qt.ItemDataRole.UserRole",
        "from enum import Enum\nclass Answer(Enum):\n    Ok = 1\nx = Answer.Ok",
        "from .core.reading import Status\nx = Status.Rejected",
        "import numpy as np\nx = np.Inf",
    ],
)  # fmt: skip
def test_what_is_fine_is_let_pass(fine: str) -> None:
    assert faults(fine) == []
