"""Options about a road."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING, Any, Optional

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..papers import OFFICE_PAPERS, Paper
from .numbers import positive

if TYPE_CHECKING:
    from ..job.road import RoadQuestion

NEEDS_LINE = Text(
    "job.needs_line",
    QT_TRANSLATE_NOOP("core", "{option} is about a road, whose line is given with --line; give that too."),
)

_OTHERS = ("rules", "speeds", "stations", "start_station", "equations", "lane", "section_width", "paper")


def add_options(group: Any) -> None:
    add = group.add_argument
    add(
        "--line",
        metavar="FILE",
        type=Path,
        help="a road's line (GeoJSON in --crs): profile, sections, checks of grades",
    )
    add("--rules", metavar="FILE", type=Path, help="table of limits (CSV), not the one shipped")
    add("--speeds", metavar="FILE", type=Path, help="table of speeds and least K (CSV), for sight on crests")
    stations = "distance of stations and cross-sections, in the unit of the CRS (default: 10)"
    add("--stations", metavar="N", type=positive("--stations"), help=stations)
    add("--start-station", metavar="S", help="station of the line's beginning, such as 1+250 (default: 0)")
    add("--equations", metavar="TEXT", help="station equations, such as '1+200 = 1+250; 3+000 = 0+000'")
    lane = "crossfall is taken this far to either side of the line, of each half beside a crown, m (default: 2)"
    add("--lane", metavar="M", type=positive("--lane"), help=lane)
    width = "cross-sections reach this far to either side, m (default: 10)"
    add("--section-width", metavar="M", type=positive("--section-width"), help=width)
    add(
        "--paper",
        choices=[paper.value for paper in OFFICE_PAPERS],
        help="paper of the sheets of profile and cross-sections (default: A4)",
    )


def question(options: argparse.Namespace) -> Optional[RoadQuestion]:
    """What is asked about a road, None for nothing; raises SurveyError for options without a line."""
    given = {name: getattr(options, name) for name in _OTHERS if getattr(options, name) is not None}
    if options.line is None:
        for name in given:
            raise SurveyError(NEEDS_LINE, option="--" + name.replace("_", "-"))
        return None
    from ..job.road import RoadQuestion

    if getattr(options, "inlets", None) is not None:
        given["inlets"] = options.inlets
    given = {_NAMES.get(name, name): value for name, value in given.items()}
    if "paper" in given:
        given["paper"] = Paper(given["paper"])
    return RoadQuestion(line=options.line, **given)


_NAMES = {"start_station": "start", "section_width": "half_width"}
