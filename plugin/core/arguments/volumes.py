"""The options about volumes, and what they ask."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any, List, Tuple

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from .numbers import number, positive
from .units import units_asked

NEEDS_VOLUME = Text(
    "job.needs_volume",
    QT_TRANSLATE_NOOP("core", "{option} is for volumes; say from or to what: --against, --since or --volume-level."),
)
BAD_LIMITS = Text(
    "job.bad_limits",
    QT_TRANSLATE_NOOP("core", "--depths must be rising numbers with commas between them, not {value}."),
)
#: Options that only mean something beside one of the three comparisons.
_BESIDE = ("regions", "depths", "volume_line", "volume_step", "volume_width", "offset", "offset_sigma", "other_sigma",
         "other_drift")  # fmt: skip


def add_options(group: Any) -> None:
    add = group.add_argument
    add("--against", metavar="MESH", type=Path, help="volumes from the survey to this design (2DM mesh)")
    add("--since", metavar="MESH", type=Path, help="volumes from this earlier surface (2DM mesh) to the survey")
    level = "volumes from the survey to a level, in the unit of --interval"
    add("--volume-level", metavar="H", type=number("--volume-level"), help=level)
    add("--regions", metavar="FILE", type=Path, help="polygons (GeoJSON, property name) whose volumes are told apart")
    add(
        "--depths", metavar="LIST", type=limits, help="depth classes in metres, such as 0.1,0.5,1 (default: round ones)"
    )
    line = "line (GeoJSON) along which other methods take sections, to compare"
    add("--volume-line", metavar="FILE", type=Path, help=line)
    step, width = "metres from section to section (default: 10)", "metres they reach to each side (default: 20)"
    add("--volume-step", metavar="M", type=positive("--volume-step"), help=step)
    add("--volume-width", metavar="M", type=positive("--volume-width"), help=width)
    known = "how much higher the later survey is known to be where nothing changed, m (default: found from that ground)"
    add("--offset", metavar="M", type=number("--offset"), help=known)
    offset = "standard deviation of the height offset, m, where it is given or cannot be found (default: 0.01)"
    add("--offset-sigma", metavar="M", type=positive("--offset-sigma", True), help=offset)
    other = "noise of the other surface's points, m, one sigma (default: as the file .noise.json beside its mesh says, "
    other += "else as this survey; a design: 0)"
    add("--other-sigma", metavar="M", type=positive("--other-sigma", True), help=other)
    drift = "drift shared by its neighbouring points, m, one sigma (default: the same)"
    add("--other-drift", metavar="M", type=positive("--other-drift", True), help=drift)
    basin = "a place in a basin, in the unit of the CRS: how much it holds, up to where it spills"
    add("--basin", metavar="E,N", help=basin)


def limits(text: str) -> Tuple[float, ...]:
    """Rising numbers above 0. Raises SurveyError."""
    try:
        values = tuple(float(piece) for piece in text.replace(";", ",").split(",") if piece.strip())
    except ValueError:
        values = ()
    if not values or any(not low < high for low, high in zip((0.0, *values), values)):
        raise SurveyError(BAD_LIMITS, value=text)
    return values


def questions(options: argparse.Namespace) -> List[Any]:
    """What the options ask, in their order. Raises SurveyError for options that ask nothing."""
    from ..georeference.crs import metres_per_unit, read_crs
    from ..georeference.site import parse_place
    from ..job.basin import BasinQuestion
    from ..job.volumes import VolumeQuestion

    unit = units_asked(options).height
    asked = {
        "against": options.against,
        "since": options.since,
        "level": None if options.volume_level is None else options.volume_level * unit.metres,
    }
    beside = {name: getattr(options, name) for name in _BESIDE if getattr(options, name) is not None}
    if beside and all(value is None for value in asked.values()):
        raise SurveyError(NEEDS_VOLUME, option="--" + next(iter(beside)).replace("_", "-"))
    names = {"depths": "limits", "volume_line": "line", "volume_step": "step", "volume_width": "half_width"}
    given = {names.get(name, name): value for name, value in beside.items()}
    found: List[Any] = [
        VolumeQuestion(**{name: value}, **given, unit=unit) for name, value in asked.items() if value is not None
    ]
    if options.basin is not None:
        metres = metres_per_unit(read_crs(options.crs)) if options.crs else 1.0
        east, north = parse_place(options.basin, "--basin")
        found.append(BasinQuestion((east * metres, north * metres), unit))
    return found
