"""Profile, cross-sections and checks of a road as CSV tables.

Stations, offsets and heights are in the line's unit, which the column ``unit`` names; places are in the unit of the
CRS; columns that end in ``_m`` are metres, or as :mod:`..site_columns` names them, in ``_pct`` percent. A cell is empty
where there is no surface.
"""

from __future__ import annotations

import math
from typing import Any, Iterable, Optional, Sequence

import numpy as np

from ..alignment.checks import CheckResult, Stretch
from ..alignment.grades import WindowSlopes, slopes_at
from ..alignment.parts import Part, PartSlopes
from ..alignment.profile import Profile
from ..alignment.rules import Quantity
from ..alignment.sections import Sections
from ..files import PathLike, TableWriter, replace_file
from ..site_columns import rows_in_site_units
from ..units import to_crs_units

PROFILE_COLUMNS = ("station", "distance_m", "easting", "northing", "unit")
GRADE_COLUMNS = ("grade_pct", "grade_sigma_pct")
CROSSFALL_COLUMNS = (
    "crossfall_pct", "crossfall_sigma_pct", "left_pct", "left_sigma_pct", "right_pct", "right_sigma_pct", "crown",
)  # fmt: skip
SECTION_COLUMNS = ("section", "station", "distance_m", "surface", "part", "offset", "height", "unit")
CHECK_COLUMNS = (
    "rule", "quantity", "part", "limit", "window_m", "from_station", "to_station", "from_m", "to_m", "verdict", "value",
    "sigma", "value_unit", "at_station", "applies", "source",
)  # fmt: skip


def write_profile(
    profile: Profile,
    stations: np.ndarray,
    crs: Optional[Any],
    path: PathLike,
    along: Optional[WindowSlopes] = None,
    across: Optional[PartSlopes] = None,
) -> None:
    """Write the heights of all surfaces at ``stations`` (s,) metres along the line, with grade and crossfall there.

    ``crossfall_pct`` is that of a lane with one fall; where it has a crown, at the offset ``crown``, each half has its
    own. Raises SurveyError when the file cannot be written.
    """
    line = profile.line
    place = to_crs_units(line.places(stations), crs)
    heights = np.array([own.heights(stations) for own in profile.surfaces]) / line.unit.metres
    slopes = [] if along is None else [slopes_at(along, stations)]
    slopes += [] if across is None else [slopes_at(across.by[part], stations) for part in Part]
    crown = np.full(len(stations), np.nan) if across is None else across.crown_at(stations) / line.unit.metres
    rows = []
    for k, distance in enumerate(stations.tolist()):
        row = [line.label(distance), _fixed(distance, 3), *(_fixed(v, 4) for v in place[k]), line.unit.value]
        row += [_fixed(v, 4) for v in heights[:, k]]
        row += [_fixed(100 * values[k], 3) for pair in slopes for values in pair]
        row += [] if across is None else [_fixed(crown[k], 2)]
        rows.append(row)
    names = [f"height_{own.surface}" if len(profile.surfaces) > 1 else "height" for own in profile.surfaces]
    shown = (*(() if along is None else GRADE_COLUMNS), *(() if across is None else CROSSFALL_COLUMNS))
    _write(path, rows_in_site_units((*PROFILE_COLUMNS, *names, *shown), rows, crs))


def write_sections(sections: Sections, crs: Optional[Any], path: PathLike) -> None:
    """Write every vertex of every section, from left to right. Raises SurveyError when the file cannot be written."""
    line, unit = sections.line, sections.line.unit
    rows = []
    for k, distance in enumerate(sections.distance.tolist()):
        for cut in sections.cuts:
            for number, (offset, height) in enumerate(cut.parts(k), 1):
                head = [k + 1, line.label(distance), _fixed(distance, 3), cut.surface, number]
                pairs = zip((offset / unit.metres).tolist(), (height / unit.metres).tolist())
                rows += [[*head, _fixed(o, 4), _fixed(h, 4), unit.value] for o, h in pairs]
    _write(path, rows_in_site_units(SECTION_COLUMNS, rows, crs))


def write_checks(checks: CheckResult, crs: Optional[Any], path: PathLike) -> None:
    """Write every stretch of every rule with its verdict. Raises SurveyError when the file cannot be written.

    ``value``: the one nearest to the limit or farthest beyond it, with its ``sigma``, in percent or, for K, metres a
    percent, as ``value_unit`` says; ``at_station``: the middle of its window.
    """
    line, rows = checks.line, []
    for each in checks.stretches:
        rule = each.rule
        slope = rule.quantity in (Quantity.GRADE, Quantity.CROSSFALL)
        factor, unit = (100.0, "%") if slope else (1.0, "m/%")
        sign = ">=" if rule.at_least else "<="
        applies = "always" if rule.condition is None else rule.condition.text
        ends = (each.begin, each.end)
        rows.append(
            [
                rule.name, rule.quantity.value, _part(each), f"{sign} {rule.limit_text}",
                f"{rule.window:g}" if slope else "", *(line.label(d) for d in ends), *(_fixed(d, 3) for d in ends),
                each.verdict.value,
                _fixed(factor * each.value, 3), _fixed(factor * each.sigma, 3), unit, line.label(each.at), applies,
                rule.source,
            ]
        )  # fmt: skip
    _write(path, rows_in_site_units(CHECK_COLUMNS, rows, crs))


def _part(stretch: Stretch) -> str:
    return stretch.part.value if stretch.rule.quantity is Quantity.CROSSFALL else ""


def _fixed(value: float, decimals: int) -> str:
    return f"{value:.{decimals}f}" if math.isfinite(value) else ""


def _write(path: PathLike, rows: Iterable[Sequence[Any]]) -> None:
    with replace_file(path) as temporary, open(temporary, "w", encoding="utf-8", newline="") as stream:
        writer = TableWriter(stream)
        writer.writerows(rows)
