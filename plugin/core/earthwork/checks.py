"""Volumes by other methods, beside the exact one, and why they differ."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..surface.tin import Tin
from .centreline import make_stations
from .regions import RegionVolumes, volumes_by_region
from .sections import section_areas, strips_between

BY_GRID = Text("earthwork.by_grid", QT_TRANSLATE_NOOP("core", "grid of {cell:g} m"))
BY_END_AREAS = Text("earthwork.by_end_areas", QT_TRANSLATE_NOOP("core", "average end areas every {step:g} m"))
BY_PRISMOIDS = Text("earthwork.by_prismoids", QT_TRANSLATE_NOOP("core", "prismoidal formula every {step:g} m"))
WHY_GRID = Text(
    "earthwork.why_grid",
    QT_TRANSLATE_NOOP(
        "core",
        "A grid knows the depth at cell middles only. Along rims, breaklines and the line of no cut nor fill a cell is "
        "counted wholly or not at all: {area:.1f} m² were compared by the grid, {exact:.1f} m² exactly.",
    ),
)
WHY_END_AREAS = Text(
    "earthwork.why_end_areas",
    QT_TRANSLATE_NOOP(
        "core",
        "End areas take the area to change evenly between sections. Where it grows faster or slower than that they "
        "count too much or too little; the prismoidal correction for cut is {cut:.1f} m³, for fill {fill:.1f} m³.",
    ),
)
WHY_PRISMOIDS = Text(
    "earthwork.why_prismoids",
    QT_TRANSLATE_NOOP(
        "core",
        "The prismoidal formula is exact where the ground between sections is ruled; what is left comes from ground "
        "that changes between the sections, and from bends ({overlap:.1f} m² of the strip lie in several sections).",
    ),
)


@dataclass(frozen=True)
class MethodCheck:
    """Cut and fill (m³) by another ``method``, the exact values over the same ground, and why they differ."""

    method: Message
    cut: float
    fill: float
    exact_cut: float
    exact_fill: float
    why: Message

    @property
    def cut_difference(self) -> float:
        """By this method less exact, cubic metres."""
        return self.cut - self.exact_cut

    @property
    def fill_difference(self) -> float:
        """By this method less exact, cubic metres."""
        return self.fill - self.exact_fill


def average_end_area(station: np.ndarray, area: np.ndarray) -> float:
    """Volume from areas (s,) at stations (s,): length times the mean of both end areas, summed.

    (Any text on route surveying; G. L. Vose, Handbook of Railroad Construction, 1857, art. 108, works an example.)
    """
    area = np.asarray(area, float)
    return float(np.sum(np.diff(station) * (area[:-1] + area[1:]) / 2))


def prismoidal(station: np.ndarray, area: np.ndarray, middle: np.ndarray) -> float:
    """Volume from areas (s,) at stations and ``middle`` areas (s - 1,) halfway: L (A₁ + 4 Aₘ + A₂) / 6, summed."""
    area, middle = np.asarray(area, float), np.asarray(middle, float)
    return float(np.sum(np.diff(station) * (area[:-1] + 4 * middle + area[1:]) / 6))


def check_by_sections(
    existing: Tin, design: Tin, centreline: np.ndarray, step: float, half_width: float
) -> Tuple[MethodCheck, MethodCheck]:
    """Average end areas and the prismoidal formula from exact sections along a line, beside the exact volume of the
    same strip of ground.

    Sections are square to the centreline (k, 2), ``half_width`` metres to each side; the prismoidal formula takes
    a further section halfway. Raises SurveyError for a line, step or width that makes no sections.
    """
    stations = make_stations(centreline, step)
    halfway = (stations.station[:-1] + stations.station[1:]) / 2
    all_stations = make_stations(centreline, step, halfway.tolist())
    found = section_areas(existing, design, all_stations, half_width)
    exact = volumes_by_region(existing, design, strips_between(stations, half_width))
    volumes: List[Tuple[float, float]] = []
    for area in (found.cut, found.fill):
        ends = np.interp(stations.station, found.station, area)
        middle = np.interp(halfway, found.station, area)
        volumes.append((average_end_area(stations.station, ends), prismoidal(stations.station, ends, middle)))
    (cut_ends, cut_prisms), (fill_ends, fill_prisms) = volumes
    why_ends = message(WHY_END_AREAS, cut=cut_prisms - cut_ends, fill=fill_prisms - fill_ends)
    why_prisms = message(WHY_PRISMOIDS, overlap=sum(overlap.area for overlap in exact.overlaps))
    cut, fill = _once(exact)
    return (
        MethodCheck(message(BY_END_AREAS, step=step), cut_ends, fill_ends, cut, fill, why_ends),
        MethodCheck(message(BY_PRISMOIDS, step=step), cut_prisms, fill_prisms, cut, fill, why_prisms),
    )


def _once(exact: RegionVolumes) -> Tuple[float, float]:
    """Cut and fill of the ground in any region, counted once."""
    return exact.total.cut - exact.outside.cut, exact.total.fill - exact.outside.fill
