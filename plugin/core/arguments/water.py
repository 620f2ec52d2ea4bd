"""Options about where the water runs."""

from __future__ import annotations

import argparse
import math
from pathlib import Path
from typing import TYPE_CHECKING, Any, Optional

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..units import LengthUnit
from .numbers import positive
from .units import units_asked

if TYPE_CHECKING:
    from ..job.water import WaterQuestion

NEEDS_WATER = Text(
    "job.needs_water", QT_TRANSLATE_NOOP("core", "{option} is for where the water runs; ask for that with --water too.")
)
NEEDS_RAIN = Text(
    "job.needs_rain", QT_TRANSLATE_NOOP("core", "{option} is for peak flows; give the intensity with --rain too.")
)

RAIN_UNIT = Text(
    "job.rain_unit",
    QT_TRANSLATE_NOOP(
        "core",
        "--rain {rain:g} would be inches an hour, as the survey is in feet, and so much does not fall; say the unit "
        "with --rain-unit, in/h or mm/h.",
    ),
)

_MOST_INCHES = 20.0  # an hour; the most that was ever measured in one hour is 12 (from memory)
_OF_RAIN = ("rain_unit", "runoff")
_OTHERS = ("inlets", "full_ponds", "pond_depth", "rain", *_OF_RAIN)


def add_options(group: Any) -> None:
    add = group.add_argument
    add("--water", action="store_true", help="also paths of water, ponds and catchments")
    inlets = "inlets and outlets: CSV (name, easting, northing, runoff) or GeoJSON of points and lines in the CRS"
    add("--inlets", metavar="FILE", type=Path, help=inlets)
    add("--full-ponds", action="store_true", default=None, help="all ponds are full: water runs on over them")
    depth = "hollows that are less deep are no ponds (default: 0; noise alone makes none)"
    add("--pond-depth", metavar="M", type=positive("--pond-depth", True), help=depth)
    add("--rain", metavar="I", type=positive("--rain"), help="intensity of rain for peak flows by the rational method")
    unit = "unit of --rain (default: mm/h, flows in l/s; for a survey in feet in/h, flows in ft3/s)"
    add("--rain-unit", choices=["mm/h", "in/h"], help=unit)
    runoff = "runoff coefficient of catchments whose inlet has none, above 0 and at most 1"
    add("--runoff", metavar="C", type=positive("--runoff"), help=runoff)


def question(options: argparse.Namespace) -> Optional[WaterQuestion]:
    """What is asked about water, None for nothing; raises SurveyError for options that ask for more than is asked."""
    _refuse(options, () if options.water else _OTHERS, NEEDS_WATER)
    if not options.water:
        return None
    _refuse(options, _OF_RAIN if options.rain is None else (), NEEDS_RAIN)
    from ..drainage.rational import FlowUnits
    from ..drainage.study import Rain
    from ..job.water import WaterQuestion

    rain = None
    if options.rain is not None:
        units = FlowUnits.US if _in_inches(options) else FlowUnits.SI
        rain = Rain(options.rain, math.nan if options.runoff is None else options.runoff, units)
    return WaterQuestion(options.inlets, bool(options.full_ponds), options.pond_depth or 0.0, rain)


def _in_inches(options: argparse.Namespace) -> bool:
    """Whether --rain is in inches an hour: as said, else where the survey is in feet.

    Raises SurveyError where that is not said and could hardly be.
    """
    if options.rain_unit is not None:
        return bool(options.rain_unit == "in/h")
    if units_asked(options).plan is LengthUnit.METRE:
        return False
    if options.rain > _MOST_INCHES:
        raise SurveyError(RAIN_UNIT, rain=options.rain)
    return True


def _refuse(options: argparse.Namespace, names: Any, text: Text) -> None:
    for name in names:
        if getattr(options, name) is not None:
            raise SurveyError(text, option="--" + name.replace("_", "-"))
