"""The steps of a job on the desk, in the order of the work, and what each is run with."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict, List, Mapping, Tuple

from qgis.core import QgsApplication
from qgis.PyQt.QtCore import QCoreApplication

from ..processing.flaggedoption import KEEP_FLAGGED
from ..processing.tiltoption import TILT
from .jobbook import JobBook, Step

translate = QCoreApplication.translate

#: Settings of a job and what they are at first.
DEFAULTS: Dict[str, Any] = {
    "files": [],
    "crs": "",
    "folder": "",
    "interval": 0.25,
    "unit": 0,
    "scale": 500,
    "paper": 1,
    "checks_file": "",
    "decisions": "",
    "added": [],
}
DECISIONS = "decisions.csv"
_RIM_EDGE = 10.0  # m; about twice the distance of passes


def step_name(key: str) -> str:
    """What a step is called on the desk."""
    names = {
        "points": translate("hummock", "Read the points"),
        "check": translate("hummock", "Check them"),
        "lines": translate("hummock", "Find lines of the ground"),
        "surface": translate("hummock", "Build the surface"),
        "coverage": translate("hummock", "Look for gaps"),
        "accuracy": translate("hummock", "Test the accuracy"),
        "contours": translate("hummock", "Draw the contours"),
        "plan": translate("hummock", "Make the plan"),
        "report": translate("hummock", "Write the report"),
    }
    return names.get(key, "")


def _in_folder(book: JobBook, name: str) -> str:
    return str(Path(book.settings.get("folder") or ".") / name)


def _always(book: JobBook) -> bool:
    return True


def _with_checks(book: JobBook) -> bool:
    return bool(book.settings.get("checks_file"))


def _points(book: JobBook) -> Dict[str, Any]:
    files = book.settings.get("files") or [""]
    asked: Dict[str, Any] = {"INPUT": files[0], "CRS": book.settings.get("crs", "")}
    if files[1:]:
        asked["MORE"] = list(files[1:])
    if book.settings.get("decisions"):
        asked["DECISIONS"] = book.settings["decisions"]
    return {**asked, "OUTPUT": _in_folder(book, "points.gpkg"), "REJECTS": _in_folder(book, "rejected_lines.gpkg")}


def _check(book: JobBook) -> Dict[str, Any]:
    return {
        "INPUT": book.product("points"),
        "OUTPUT": _in_folder(book, "checked_points.gpkg"),
        "FINDINGS": _in_folder(book, "check_findings.gpkg"),
    }


def _lines(book: JobBook) -> Dict[str, Any]:
    return {"INPUT": book.product("check"), "OUTPUT": _in_folder(book, "lines_found.gpkg")}


def _surface(book: JobBook) -> Dict[str, Any]:
    return {
        "INPUT": book.product("check"),
        "FOUND_LINES": book.product("lines"),
        "MAX_RIM_EDGE": _RIM_EDGE,
        "OUTPUT": _in_folder(book, "surface.2dm"),
        "LINES": _in_folder(book, "surface_lines.gpkg"),
    }


def _coverage(book: JobBook) -> Dict[str, Any]:
    return {
        "INPUT": book.product("surface"),
        "POINTS": book.product("check"),
        "FOUND_LINES": book.product("lines"),
        "OUTPUT": _in_folder(book, "places_to_walk.gpkg"),
        "CIRCLES": _in_folder(book, "empty_circles.gpkg"),
        "LONG": _in_folder(book, "long_triangles.gpkg"),
    }


def _accuracy(book: JobBook) -> Dict[str, Any]:
    return {
        "INPUT": book.product("surface"),
        "CHECKS_FILE": book.settings.get("checks_file", ""),
        "OUTPUT": _in_folder(book, "check_points.gpkg"),
    }


def _levels(book: JobBook) -> Dict[str, Any]:
    return {"INTERVAL": book.settings.get("interval", 0.25), "UNIT": book.settings.get("unit", 0)}


def _contours(book: JobBook) -> Dict[str, Any]:
    return {
        "INPUT": book.product("surface"),
        **_levels(book),
        "SCALE": book.settings.get("scale", 500),
        "OUTPUT": _in_folder(book, "contours.gpkg"),
        "LABELS": _in_folder(book, "contour_labels.gpkg"),
        "SPOTS": _in_folder(book, "spot_heights.gpkg"),
    }


def _plan(book: JobBook) -> Dict[str, Any]:
    asked = {
        "INPUT": book.product("surface"),
        **_levels(book),
        "SCALE": book.settings.get("scale", 500),
        "PAPER": book.settings.get("paper", 1),
        "LINES": book.product("surface", "LINES"),
        "OUTPUT": _in_folder(book, "plan.pdf"),
        "LAYERS": _in_folder(book, "plan.gpkg"),
    }
    return {**asked, "CHECKS_FILE": book.settings["checks_file"]} if _with_checks(book) else asked


def _report(book: JobBook) -> Dict[str, Any]:
    points = book.parameters("points")
    asked: Dict[str, Any] = {name: points[name] for name in ("INPUT", "CRS", "MORE", "DECISIONS") if name in points}
    if _with_checks(book):
        asked["CHECKS_FILE"] = book.settings["checks_file"]
    checked = book.parameters("check")
    asked.update({name: checked[name] for name in (TILT, KEEP_FLAGGED) if checked.get(name) is not None})
    asked["FOUND_LINES"] = book.product("lines")
    asked["ALSO"] = [book.product("plan")]
    return {**asked, **_levels(book), "MAX_RIM_EDGE": _RIM_EDGE, "FOLDER": _in_folder(book, "report")}


#: In the order of the work.
STEPS: Tuple[Step, ...] = (
    Step("points", "importpoints", (), _points, ("OUTPUT", "REJECTS"), _always),
    Step("check", "checksurvey", ("points",), _check, ("OUTPUT", "FINDINGS"), _always),
    Step("lines", "findlines", ("check",), _lines, ("OUTPUT",), _always),
    Step("surface", "buildsurface", ("check", "lines"), _surface, ("OUTPUT", "LINES"), _always),
    Step("coverage", "coverage", ("surface", "check", "lines"), _coverage, ("OUTPUT", "CIRCLES", "LONG"), _always),
    Step("accuracy", "accuracystatement", ("surface",), _accuracy, ("OUTPUT",), _with_checks),
    Step("contours", "contoursheet", ("surface",), _contours, ("OUTPUT", "LABELS", "SPOTS"), _always),
    Step("plan", "plansheet", ("surface",), _plan, ("OUTPUT", "LAYERS"), _always),
    Step("report", "surveyreport", ("check", "lines", "plan"), _report, ("FOLDER",), _always),
)


#: What an algorithm that is added to a job is given, by the names of its parameters: a step and its product.
INPUTS = {
    "INPUT": ("surface", "OUTPUT"),
    "SURFACE": ("surface", "OUTPUT"),
    "EXISTING": ("surface", "OUTPUT"),
    "POINTS": ("check", "OUTPUT"),
    "LINES": ("surface", "LINES"),
}


def added_step(told: Mapping[str, Any]) -> Step:
    """A step that the user added: ``told`` has its ``key``, ``algorithm``, ``inputs`` and ``outputs`` (file names)."""
    inputs, outputs = list(told["inputs"]), dict(told["outputs"])

    def parameters(book: JobBook) -> Dict[str, Any]:
        given = {name: book.product(*INPUTS[name]) for name in inputs}
        return {**given, **{name: _in_folder(book, file) for name, file in outputs.items()}}

    needs = tuple(dict.fromkeys(INPUTS[name][0] for name in inputs))
    return Step(str(told["key"]), str(told["algorithm"]), needs, parameters, tuple(outputs), _always)


def added_steps(settings: Mapping[str, Any]) -> List[Step]:
    """The steps that were added to a job."""
    return [added_step(told) for told in settings.get("added", [])]


def new_book() -> JobBook:
    """A job with nothing in it yet."""
    return JobBook(STEPS, {**DEFAULTS, "added": []})


def algorithm_name(name: str) -> str:
    """What the toolbox calls an algorithm."""
    algorithm = QgsApplication.processingRegistry().algorithmById(f"hummock:{name}")
    return str(algorithm.displayName()) if algorithm is not None else name


def addable() -> List[Any]:
    """The algorithms that work on a surface and are no step already."""
    provider = QgsApplication.processingRegistry().providerById("hummock")
    taken = {step.algorithm for step in STEPS}
    found = []
    for algorithm in provider.in_order() if provider is not None else []:
        kinds = {one.name(): one.type() for one in algorithm.parameterDefinitions()}
        if algorithm.name() not in taken and any(kinds.get(name) == "mesh" for name in INPUTS):
            found.append(algorithm)
    return found
