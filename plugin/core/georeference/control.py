"""Control points: those of one name in the survey and in the control."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Dict, List, Mapping, Optional, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Figure, Message, SurveyError, Text, message
from ..points.pointset import PointSet

NO_MATCH = Text(
    "control.no_match",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: no surveyed point has the name of a control point (such as '{name}'); names must be written alike.",
    ),
)
UNMATCHED = Text(
    "control.unmatched",
    QT_TRANSLATE_NOOP("core", "{count} control points were not surveyed, and are not used: {names}."),
    one=QT_TRANSLATE_NOOP("core", "A control point was not surveyed, and is not used: {names}."),
)
MEASURED_OFTEN = Text(
    "control.measured_often",
    QT_TRANSLATE_NOOP(
        "core",
        "Control point '{name}' was surveyed {count} times; the mean is used, the farthest in plan is {plan_mm} mm "
        "from it, in height {height_mm} mm.",
    ),
)


WRITTEN_OTHERWISE = Text(
    "control.written_otherwise",
    QT_TRANSLATE_NOOP(
        "core", "Names of control points are written otherwise in the survey, and taken for the same: {names}."
    ),
    weight=1,
)


@dataclass(frozen=True)
class ControlPoints:
    """Known points: ``name`` (object), ``easting``, ``northing``, ``height`` (m, nan where unknown), (n,) each.

    ``metres``: to a unit of plan and of height, as they were read; ``messages``: what to tell of that.
    """

    name: np.ndarray
    easting: np.ndarray
    northing: np.ndarray
    height: np.ndarray
    source_line: np.ndarray
    source: str = ""
    metres: Tuple[float, float] = (1.0, 1.0)
    messages: Tuple[Message, ...] = ()

    def __len__(self) -> int:
        return len(self.name)


@dataclass(frozen=True)
class ControlMatch:
    """``names`` (n,), ``survey`` and ``control`` (n, 3): easting, northing, height in metres, height nan where
    not known. ``times`` (n,): how often each was surveyed."""

    names: Tuple[str, ...]
    survey: np.ndarray
    control: np.ndarray
    times: np.ndarray
    messages: Tuple[Message, ...]


def match_control(points: PointSet, control: ControlPoints, names: Optional[Mapping[str, str]] = None) -> ControlMatch:
    """Surveyed and known coordinates of the points that carry the same name.

    ``names``: names in the survey that stand for other control points. Rejected points are not used; several of one
    name are averaged, and it is said how far apart they lie. Raises SurveyError when no name matches.
    """
    by_name: Dict[str, List[int]] = {}
    for i in np.flatnonzero(points.used & np.isfinite(points.easting) & np.isfinite(points.northing)):
        name = str(points.name[i]).strip()
        by_name.setdefault((names or {}).get(name, name), []).append(int(i))
    alike = _written_otherwise([str(name) for name in control.name], list(by_name))
    for mine, surveyed in alike.items():
        by_name[mine] = by_name.pop(surveyed)
    found = [i for i in range(len(control)) if str(control.name[i]) in by_name]
    if not found:
        raise SurveyError(NO_MATCH, file=control.source or points.source, name=control.name[0] if len(control) else "")
    measured = np.column_stack((points.easting, points.northing, points.height))
    said = list(control.messages)
    if alike:
        pairs = ", ".join(f"{mine} = {surveyed}" for mine, surveyed in alike.items())
        said.append(message(WRITTEN_OTHERWISE, names=pairs))
    survey = []
    for i in found:
        rows = measured[by_name[str(control.name[i])]]
        mean = rows[0] + (rows - rows[0]).mean(axis=0)
        survey.append(mean)
        if len(rows) > 1:
            said.append(_often(str(control.name[i]), rows - mean))
    lacking = [str(control.name[i]) for i in range(len(control)) if i not in set(found)]
    if lacking:
        said.append(message(UNMATCHED, count=len(lacking), names=", ".join(lacking)))
    known = np.column_stack((control.easting, control.northing, control.height))[found]
    times = np.array([len(by_name[str(control.name[i])]) for i in found])
    return ControlMatch(tuple(str(control.name[i]) for i in found), np.array(survey), known, times, tuple(said))


def _written_otherwise(known: List[str], surveyed: List[str]) -> Dict[str, str]:
    """Names of control to those of the survey that differ by case, blanks, dashes and leading zeros alone, where none
    is written alike and each stands for one.
    """
    if set(known) & set(surveyed):
        return {}
    plain: Dict[str, List[str]] = {}
    for name in surveyed:
        plain.setdefault(_plain(name), []).append(name)
    mine = [_plain(name) for name in known]
    return {
        name: plain[bare][0]
        for name, bare in zip(known, mine)
        if len(plain.get(bare, ())) == 1 and mine.count(bare) == 1
    }


def _plain(name: str) -> str:
    return re.sub(r"(?<![0-9])0+(?=[0-9])", "", re.sub(r"[\s_.-]+", "", name.casefold()))


def _often(name: str, apart: np.ndarray) -> Message:
    plan = 1000 * float(np.hypot(apart[:, 0], apart[:, 1]).max())
    up = 1000 * float(np.abs(apart[:, 2]).max())
    return message(
        MEASURED_OFTEN, name=name, count=len(apart), plan_mm=Figure(f"{plan:.1f}"),
        height_mm=Figure(f"{up:.1f}") if np.isfinite(up) else "?",
    )  # fmt: skip
