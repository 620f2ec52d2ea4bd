"""A typical section from a small table."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Dict, List, Optional, Tuple

from ..files import PathLike
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from .design_table import read_rows, read_value
from .side_slopes import Corner, SideSlopes
from .strip import Ditch, HalfSection, TypicalSection

BAD_SIDE = Text(
    "earthwork.section_side",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: side is “{value}”; write left, right or both."),
)
BAD_PART = Text(
    "earthwork.section_part",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: {reason}",
    ),
)
DITCH_TWICE = Text(
    "earthwork.section_ditch", QT_TRANSLATE_NOOP("core", "a side has one ditch at most; remove this row.")
)
NO_WIDTH = Text("earthwork.section_width", QT_TRANSLATE_NOOP("core", "a part needs a width above 0."))
NO_DEPTH = Text("earthwork.section_depth", QT_TRANSLATE_NOOP("core", "a ditch needs a depth above 0."))
NO_RUN = Text("earthwork.section_run", QT_TRANSLATE_NOOP("core", "a slope needs a run above 0."))
ONE_SLOPE = Text(
    "earthwork.section_slopes",
    QT_TRANSLATE_NOOP("core", "the slope is the same left and right; write both, once."),
)

_COLUMNS = ("side", "part", "width", "crossfall", "depth", "run")
_SIDES = {"left": (0,), "right": (1,), "both": (0, 1), "": (0, 1)}


@dataclass
class _Half:
    lanes: List[Tuple[float, float]] = field(default_factory=list)
    names: List[str] = field(default_factory=list)
    ditch: Optional[Ditch] = None

    def made(self) -> HalfSection:
        return HalfSection(tuple(self.lanes), self.ditch, tuple(self.names))


def read_section(path: PathLike, slopes: SideSlopes) -> TypicalSection:
    """The typical section of a CSV table with the columns side, part, width, crossfall, depth and run.

    A row is a part of one side (left, right or both), in order from the centreline outward: its name, width in metres
    and crossfall in percent, negative where it falls away from the centreline. A part named ``ditch`` has a depth, a
    bottom width and the run of its inner side (metres out for each metre down); ``cut slope`` and ``fill slope`` have
    a run, and stand in place of ``slopes``. Raises SurveyError naming file and line.
    """
    file = str(path)
    halves = (_Half(), _Half())
    runs: Dict[str, float] = {}
    for line, cells in read_rows(path, _COLUMNS, _COLUMNS[:3]):
        sides = _SIDES.get(cells["side"].casefold())
        if sides is None:
            raise SurveyError(BAD_SIDE, file=file, line=line, value=cells["side"])
        part = " ".join(cells["part"].casefold().replace("_", " ").split())
        if part in ("cut slope", "fill slope"):
            runs[part] = _run(file, line, cells, part in runs or len(sides) < 2)
        elif part == "ditch":
            for side in sides:
                halves[side].ditch = _ditch(file, line, cells, halves[side].ditch is not None)
        else:
            width = read_value(file, line, "width", cells)
            if width <= 0:
                raise SurveyError(BAD_PART, file=file, line=line, reason=NO_WIDTH)
            fall = read_value(file, line, "crossfall", cells, 0.0) / 100
            for side in sides:
                halves[side].lanes.append((width, fall))
                halves[side].names.append(cells["part"])
    cut, fill = runs.get("cut slope", slopes.cut_run), runs.get("fill slope", slopes.fill_run)
    return TypicalSection(halves[0].made(), halves[1].made(), SideSlopes(cut, fill, Corner(slopes.corner)))


def _run(file: str, line: int, cells: Dict[str, str], again: bool) -> float:
    if again:
        raise SurveyError(BAD_PART, file=file, line=line, reason=ONE_SLOPE)
    run = read_value(file, line, "run", cells)
    if run <= 0:
        raise SurveyError(BAD_PART, file=file, line=line, reason=NO_RUN)
    return run


def _ditch(file: str, line: int, cells: Dict[str, str], again: bool) -> Ditch:
    if again:
        raise SurveyError(BAD_PART, file=file, line=line, reason=DITCH_TWICE)
    depth, bottom = read_value(file, line, "depth", cells), read_value(file, line, "width", cells, 0.0)
    run = read_value(file, line, "run", cells, 2.0)
    if depth <= 0:
        raise SurveyError(BAD_PART, file=file, line=line, reason=NO_DEPTH)
    return Ditch(depth, run, bottom)
