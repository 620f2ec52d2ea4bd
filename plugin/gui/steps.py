"""The steps of a job on the desk, in the order of the work: stages of the core's job, its plan, and added tools."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict, List, Mapping, NamedTuple, Tuple

from qgis.core import QgsApplication
from qgis.PyQt.QtCore import QCoreApplication

from ..core.units import WORKING_UNITS, LengthUnit
from ..processing.joblayers import GEOPACKAGE, LINE_TABLE, MESH, POINT_TABLE
from .toolbook import Tool, ToolBook

translate = QCoreApplication.translate

#: Settings of the map of a job and what they are at first.
DEFAULTS: Dict[str, Any] = {"folder": "", "scale": 500, "paper": 1, "parcels": "", "added": []}
#: What the plan takes from the choices of the job.
FROM_JOB: Dict[str, Any] = {"interval": 0.25, "unit": 0, "checks_file": ""}
PLAN = "plan"


class Step(NamedTuple):
    """A step of the core's job. ``stages``: those it stands for, as the core names them."""

    key: str
    stages: Tuple[str, ...]


STEPS: Tuple[Step, ...] = (
    Step("points", ("read", "points")),
    Step("check", ("check", "decisions")),
    Step("visits", ("visits",)),
    Step("lines", ("lines",)),
    Step("surface", ("surface", "thin", "dem")),
    Step("quality", ("quality", "findings")),
    Step("contours", ("contours", "sheet")),
    Step("report", ("files",)),
)


#: The stages that what a tool is given is made from, see ``INPUTS``; choices that it takes stand in its parameters.
OF_SURFACE = frozenset(("read", "points", "check", "decisions", "visits", "lines", "surface"))


def step_name(key: str) -> str:
    """What a step is called on the desk; "" for an added tool."""
    names = {
        "points": translate("hummock", "Read the points"),
        "check": translate("hummock", "Check them"),
        "visits": translate("hummock", "Compare later visits"),
        "lines": translate("hummock", "Find lines of the ground"),
        "surface": translate("hummock", "Build the surface"),
        "quality": translate("hummock", "Test accuracy and look for gaps"),
        "contours": translate("hummock", "Draw the contours"),
        "plan": translate("hummock", "Make the plan"),
        "report": translate("hummock", "Write the report"),
    }
    return names.get(key, "")


def _in_folder(book: ToolBook, name: str) -> str:
    return str(Path(book.settings.get("folder") or ".") / name)


def _plan(book: ToolBook) -> Dict[str, Any]:
    told = {**FROM_JOB, **book.settings}
    asked = {
        "INPUT": _in_folder(book, MESH),
        "INTERVAL": told["interval"],
        "UNIT": told["unit"],
        "SCALE": told["scale"],
        "PAPER": told["paper"],
        "LINES": f"{_in_folder(book, GEOPACKAGE)}|layername={LINE_TABLE}",
        "OUTPUT": _in_folder(book, "plan.pdf"),
        "LAYERS": _in_folder(book, "plan.gpkg"),
    }
    if told["parcels"]:
        asked["PARCELS"] = told["parcels"]
    return {**asked, "CHECKS_FILE": told["checks_file"]} if told["checks_file"] else asked


#: What an algorithm that is added to a job is given, by the names of its parameters: a file of the job.
INPUTS = {
    "INPUT": MESH,
    "SURFACE": MESH,
    "EXISTING": MESH,
    "POINTS": f"{GEOPACKAGE}|layername={POINT_TABLE}",
    "LINES": f"{GEOPACKAGE}|layername={LINE_TABLE}",
}


def added_tool(told: Mapping[str, Any]) -> Tool:
    """A tool that the user added: ``told`` has its ``key``, ``algorithm``, ``inputs`` and ``outputs`` (file names)."""
    inputs, outputs = list(told["inputs"]), dict(told["outputs"])

    def parameters(book: ToolBook) -> Dict[str, Any]:
        given = {name: _in_folder(book, INPUTS[name]) for name in inputs}
        return {**given, **{name: _in_folder(book, file) for name, file in outputs.items()}}

    return Tool(str(told["key"]), str(told["algorithm"]), parameters, tuple(outputs))


def added_tools(settings: Mapping[str, Any]) -> List[Tool]:
    """The tools that were added to a job."""
    return [added_tool(told) for told in settings.get("added", [])]


def new_book(**how: Any) -> ToolBook:
    """A job with nothing in it yet."""
    return ToolBook((Tool(PLAN, "plansheet", _plan, ("OUTPUT", "LAYERS")),), {**DEFAULTS, "added": []}, **how)


def unit_number(unit: LengthUnit) -> int:
    """The place of a unit in lists of those that results are given in."""
    return WORKING_UNITS.index(unit)


def algorithm_name(name: str) -> str:
    """What the toolbox calls an algorithm."""
    algorithm = QgsApplication.processingRegistry().algorithmById(f"hummock:{name}")
    return str(algorithm.displayName()) if algorithm is not None else name


#: Algorithms that do by hand what a job does.
_STEPS_BY_HAND = {"buildsurface", "coverage", "accuracystatement", "contoursheet", "contours", "plansheet"}


def addable() -> List[Any]:
    """The algorithms that work on a surface and are no step already."""
    provider = QgsApplication.processingRegistry().providerById("hummock")
    found = []
    for algorithm in provider.in_order() if provider is not None else []:
        kinds = {one.name(): one.type() for one in algorithm.parameterDefinitions()}
        if algorithm.name() not in _STEPS_BY_HAND and any(kinds.get(name) == "mesh" for name in INPUTS):
            found.append(algorithm)
    return found
