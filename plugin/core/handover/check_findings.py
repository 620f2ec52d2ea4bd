"""What the checks of a survey found, as a CSV table."""

from __future__ import annotations

from pathlib import PurePath
from typing import Any, Callable, List

from ..files import PathLike, TableWriter, replace_file
from ..points.decisions import WORD_OF_STATUS, words_of_reasons
from ..points.pointset import SOURCE, PointSet
from ..quality.check import Finding, SurveyCheck
from ..site_columns import rows_in_site_units
from ..units import site_units, to_crs_units

_HEAD = (
    "status", "reason", "points", "size_m", "significance", "run", "first_line", "last_line", "file",
    "easting", "northing", "last_easting", "last_northing", "text",
)  # fmt: skip


def write_check_findings(check: SurveyCheck, path: PathLike, translate: Callable[[str], str] = str) -> None:
    """Write one row a finding, in the order of recording.

    ``status`` and ``reason`` are the words of points.csv; ``size_m`` is how far the points are off (m, or
    as :mod:`..site_columns` names it) and
    ``significance`` that over its standard deviation, empty where there is none; ``run`` counts from 1, empty outside
    the walk. Places are those of the first and last point, in the unit of the CRS; ``text`` is a sentence for
    people. Raises SurveyError when the file cannot be written.
    """
    with replace_file(path) as temporary, open(temporary, "w", encoding="utf-8", newline="") as stream:
        writer = TableWriter(stream)
        rows = (_row(found, check.points, translate) for found in check.findings)
        writer.writerows(rows_in_site_units(_HEAD, rows, check.points.crs))


def _row(found: Finding, points: PointSet, translate: Callable[[str], str]) -> List[Any]:
    first, last = int(found.indices[0]), int(found.indices[-1])
    return [
        WORD_OF_STATUS[found.status],
        words_of_reasons(int(found.reason)),
        len(found.indices),
        _known(found.size, 4),
        _known(found.significance, 1),
        found.run + 1 if found.run >= 0 else "",
        int(points.source_line[first]),
        int(points.source_line[last]),
        str(points.extra[SOURCE][first]) if SOURCE in points.extra else PurePath(points.source).name,
        *(_known(float(to_crs_units(c[k], points.crs)), 4) for k in (first, last) for c in _plan(points)),
        found.message.say(translate, units=site_units(points.crs)),
    ]


def _plan(points: PointSet) -> List[Any]:
    return [points.easting, points.northing]


def _known(value: float, decimals: int) -> Any:
    """The number, rounded; an empty field for nan and infinity."""
    return round(float(value), decimals) if abs(value) < float("inf") else ""
