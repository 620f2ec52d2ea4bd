"""Triangles longer than the spacing of the survey warrants: ground that nobody walked."""

from __future__ import annotations

from typing import List

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Text
from .find_flat import first_of_group, groups_of_triangles
from .findings import Facts, Finding, FindingKind, FindingOptions
from .spacing import pass_spacing, recorded_spacing

LONG = Text(
    "findings.long",
    QT_TRANSLATE_NOOP(
        "core",
        "Nothing was recorded for up to {value:.1f} m at E {easting:.3f} N {northing:.3f} ({count} triangles, "
        "{area:.0f} m²); elsewhere the passes are {passes:.1f} m apart and the points {spacing:.2f} m.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "Nothing was recorded for up to {value:.1f} m at E {easting:.3f} N {northing:.3f} (one triangle, "
        "{area:.0f} m²); elsewhere the passes are {passes:.1f} m apart and the points {spacing:.2f} m.",
    ),
)

LONG_UNRECORDED = Text(
    "findings.long_unrecorded",
    QT_TRANSLATE_NOOP(
        "core",
        "Nothing was recorded for up to {value:.1f} m at E {easting:.3f} N {northing:.3f} ({count} triangles, "
        "{area:.0f} m²); elsewhere the passes are {passes:.1f} m apart.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "Nothing was recorded for up to {value:.1f} m at E {easting:.3f} N {northing:.3f} (one triangle, "
        "{area:.0f} m²); elsewhere the passes are {passes:.1f} m apart.",
    ),
)
LONG_RIM = Text(
    "findings.long_rim",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} thin triangles along the rim, {area:.1f} m² in all, span up to {value:.1f} m, the longest at "
        "E {easting:.3f} N {northing:.3f}. Give a boundary, or have the rim trimmed.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "A thin triangle along the rim, {area:.1f} m², spans {value:.1f} m at E {easting:.3f} N "
        "{northing:.3f}. Give a boundary, or have the rim trimmed.",
    ),
)
#: Long triangles at the rim that are narrower on average than this share of the pass spacing say nothing of their own.
_THIN = 0.25


def find_long(facts: Facts, options: FindingOptions) -> List[Finding]:
    """One finding for each group of adjoining triangles with an edge over ``long_factor`` times the pass spacing.

    Edges of lines do not count, and where a triangle touches a line its edges may be as long as the segments of that
    line there. The spacing is the greater of :func:`.spacing.pass_spacing` and
    :func:`.spacing.recorded_spacing`. Thin groups on the rim are one finding together.
    """
    length = facts.length.reshape(-1, 3)
    spacing, passes = recorded_spacing(facts.points), pass_spacing(length)
    usual = float(np.fmax(spacing, passes))
    marked = facts.kind != 0
    free = np.where(marked, 0.0, facts.length).reshape(-1, 3).max(axis=1)
    shots = np.zeros(len(facts.tin.vertices))  # longest segment of a line at each vertex
    for end in (facts.start, facts.end):
        np.maximum.at(shots, end[marked], facts.length[marked])
    warranted = np.maximum(options.long_factor * usual, shots[facts.tin.triangles].max(axis=1))
    long = np.flatnonzero(free > warranted)
    found, thin = [], []
    for group in groups_of_triangles(facts.tin.neighbours, long, np.zeros(len(long), np.int64)):
        on_rim = bool(np.any(facts.tin.neighbours[group] < 0))
        if on_rim and _areas(facts, group).sum() < _THIN * usual * free[group].max():
            thin.append(group)
        else:
            text = LONG if np.isfinite(spacing) else LONG_UNRECORDED
            found.append(_finding(facts, group, free, text, passes=passes, spacing=spacing))
    if thin:
        found.append(_finding(facts, np.concatenate(thin), free, LONG_RIM))
    return found


def _areas(facts: Facts, triangles: np.ndarray) -> np.ndarray:
    corner = facts.tin.vertices[facts.tin.triangles[triangles]]
    u, v = corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]
    area: np.ndarray = (u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]) / 2
    return area


def _finding(facts: Facts, group: np.ndarray, length: np.ndarray, text: Text, **values: float) -> Finding:
    """A finding at the longest triangle of ``group``."""
    area = float(_areas(facts, group).sum())
    corners = facts.tin.triangles[group]
    centre = facts.tin.vertices[corners].mean(axis=1)
    place = centre[first_of_group(length[group], centre)]
    longest = float(length[group].max())
    return facts.finding(
        FindingKind.LONG, place, longest, "m", corners.ravel(), group, text, count=len(group), area=area, **values
    )
