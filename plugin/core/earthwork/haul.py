"""The mass diagram: how far earth travels along a line."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Tuple

import numpy as np

from ..surface.tin import Tin
from .centreline import make_stations
from .materials import EarthFactors
from .regions import volumes_by_region
from .sections import strips_between


@dataclass(frozen=True)
class Haul:
    """Earth carried between two balance points: ``start``, ``end`` stations, ``volume`` (m³ compacted), ``moment``
    (m³ · m), ``forward``: towards higher stations."""

    start: float
    end: float
    volume: float
    moment: float
    forward: bool

    @property
    def mean_distance(self) -> float:
        """Metres a cubic metre travels on average; nan where nothing is carried."""
        return self.moment / self.volume if self.volume > 0 else float("nan")


@dataclass(frozen=True)
class MassDiagram:
    """Cut and fill along a centreline and their running balance.

    ``station``: (s + 1,) metres. ``cut``, ``fill``: (s,) m³ exact between stations, as measured. ``mass``: (s + 1,)
    usable cut, compacted, less fill, summed from the beginning: it rises in cut and falls in fill. ``hauls``: between
    stations of mass 0. ``rest``: mass at the end, to be wasted (above 0) or borrowed, m³ compacted.
    ``beside_cut``, ``beside_fill``: m³ between the surfaces that lie beyond the sections' width or ends.
    ``overlap_area``: m² that several strips count, in bends tighter than the width.
    """

    station: np.ndarray
    cut: np.ndarray
    fill: np.ndarray
    mass: np.ndarray
    hauls: Tuple[Haul, ...]
    rest: float
    beside_cut: float
    beside_fill: float
    overlap_area: float


def mass_diagram(
    existing: Tin,
    design: Tin,
    centreline: np.ndarray,
    step: float,
    half_width: float,
    factors: EarthFactors = EarthFactors(),  # noqa: B008  frozen
) -> MassDiagram:
    """Mass diagram from exact volumes of the strips between sections square to ``centreline`` (k, 2).

    Sections stand every ``step`` metres and at corners and reach ``half_width`` metres to each side. Within a strip
    the mass runs straight. Raises SurveyError for a line, step or width that makes no sections.
    (Any text on route surveying has the method.)
    """
    stations = make_stations(centreline, step)
    found = volumes_by_region(existing, design, strips_between(stations, half_width))
    cut, fill = (np.array([getattr(region, name) for region in found.regions]) for name in ("cut", "fill"))
    usable = cut * (1 - factors.unusable) * factors.compacted
    mass = np.append(0.0, np.cumsum(usable - fill))
    return MassDiagram(
        stations.station,
        cut,
        fill,
        mass,
        hauls(stations.station, mass),
        float(mass[-1]),
        found.outside.cut,
        found.outside.fill,
        sum(overlap.area for overlap in found.overlaps),
    )


def hauls(station: np.ndarray, mass: np.ndarray) -> Tuple[Haul, ...]:
    """The hauls between the places of a mass line (straight between stations) where it is 0.

    What is left after the last such place is not carried along the line but wasted or borrowed.
    """
    at, value = _with_crossings(np.asarray(station, float), np.asarray(mass, float))
    zero = np.flatnonzero(value == 0)
    found: List[Haul] = []
    for first, last in zip(zero[:-1], zero[1:]):
        part, moved = at[first : last + 1], value[first : last + 1]
        moment = float(np.sum(np.diff(part) * (moved[:-1] + moved[1:]) / 2))
        volume = float(np.abs(moved).max())
        if volume > 0:
            found.append(Haul(float(part[0]), float(part[-1]), volume, abs(moment), moment > 0))
    return tuple(found)


def _with_crossings(at: np.ndarray, value: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """The line with a vertex where it crosses 0; what is 0 but for rounding is 0."""
    value = np.where(np.abs(value) <= 1e-9 * np.abs(value).max(initial=0.0), 0.0, value)
    crossed = np.flatnonzero(value[:-1] * value[1:] < 0)
    t = value[crossed] / (value[crossed] - value[crossed + 1])
    places = at[crossed] + t * (at[crossed + 1] - at[crossed])
    return np.insert(at, crossed + 1, places), np.insert(value, crossed + 1, 0.0)
