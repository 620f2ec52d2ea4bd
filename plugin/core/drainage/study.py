"""The water of a site as a whole, for maps, tables and files: paths, ponds, catchments, level ground, peak flows."""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum
from typing import Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..progress import Progress, named, part, silent
from ..quality.noise import USUAL_SIGMA
from ..surface.dissolve import LabelledPolygon
from ..surface.tin import Tin
from ..units import nice_length
from .catchments import Outlet, find_catchments
from .fates import find_fates, find_first_vertices
from .flow import Flow, Passages, build_flow
from .inlet_list import Inlet, inlets_on
from .level_ground import flat_areas
from .network import Lines, channel_lines, ridge_lines, rim_outlets
from .paths import FlowPaths, in_polygons, trace_paths
from .ponds import PondOptions, Ponds, find_ponds
from .rational import FlowUnits, PeakFlows, peak_flows
from .shares import Shares, shared_out
from .shores import pond_shores

BAD_OPTION = Text(
    "water.bad_option", QT_TRANSLATE_NOOP("core", "{name} is {value}; it must be a number from 0 up. Correct it.")
)
NO_RUNOFF = Text(
    "water.no_runoff",
    QT_TRANSLATE_NOOP(
        "core",
        "Catchments without a runoff coefficient have no peak flow: {names}. Give one for all or for each inlet.",
    ),
)


class Hollows(Enum):
    """What becomes of water that comes to a hollow."""

    PONDS_KEEP = "ponds"  #: it stays in ponds that count and passes other hollows
    ALL_FULL = "full"  #: all hollows are full: everything runs on to the rim or an inlet
    PITS_KEEP = "pits"  #: it stays in every pit, those of noise too

    def passages(self, flow: Flow, ponds: Ponds) -> Optional[Passages]:
        """The pits at which paths do not end."""
        if self is Hollows.PITS_KEEP:
            return None
        return ponds.passages(flow, self is Hollows.ALL_FULL)


@dataclass(frozen=True)
class Rain:
    """``intensity`` in mm/h or in/h as ``units`` say; ``runoff``: the coefficient of all catchments whose inlet has
    none of its own, nan for none."""

    intensity: float
    runoff: float = math.nan
    units: FlowUnits = FlowUnits.SI


@dataclass(frozen=True)
class WaterOptions:
    """What is asked.

    ``ponds``: what counts as one. ``reach``: how far around an inlet it takes water, metres. ``min_outlet``: outlets
    on the rim that drain less, m², are counted together. ``channel``: least ground of a channel line, m². ``spacing``
    of the starts of paths, metres, None for one that suits the site. ``flat_limit``: fall over run below which ground
    is flat, ``flat_window`` metres over which that is averaged, ``flat_area`` m² of the smallest. ``rain``: None for
    no peak flows.
    """

    ponds: PondOptions = PondOptions(USUAL_SIGMA)  # noqa: RUF009  frozen
    reach: float = 0.25
    hollows: Hollows = Hollows.PONDS_KEEP
    min_outlet: float = 50.0
    channel: float = 100.0
    spacing: Optional[float] = None
    flat_limit: float = 0.01
    flat_window: float = 4.0
    flat_area: float = 5.0
    rain: Optional[Rain] = None


@dataclass(frozen=True)
class WaterStudy:
    """``shores``: for each pond its closed rings in metres of the CRS. ``paths`` start ``spacing`` metres apart.
    ``peaks``: of the rows of ``shares``, nan where no coefficient is known
    and for the rest of the rim, where water leaves at many places; None where there is no rain.
    ``messages``: what is to be known with it."""

    options: WaterOptions
    inlets: Tuple[Inlet, ...]
    flow: Flow
    ponds: Ponds
    shares: Shares
    shores: Tuple[Tuple[np.ndarray, ...], ...]
    paths: FlowPaths
    spacing: float
    channels: Lines
    ridges: Lines
    flat: Tuple[LabelledPolygon, ...]
    peaks: Optional[PeakFlows]
    messages: Tuple[Message, ...]

    @property
    def tin(self) -> Tin:
        return self.flow.tin

    @property
    def nowhere(self) -> float:
        """m² that drain nowhere until a pond is full."""
        return float(self.shares.nowhere.sum())

    @property
    def standing(self) -> float:
        """m³ in all full ponds."""
        return float(self.ponds.volume[self.ponds.outermost].sum())


def study_water(
    tin: Tin,
    inlets: Sequence[Inlet] = (),
    options: WaterOptions = WaterOptions(),
    progress: Progress = silent,
) -> WaterStudy:
    """All about the water of ``tin``. Raises SurveyError for options out of range."""
    for name in ("reach", "min_outlet", "channel", "flat_area"):
        if not 0 <= getattr(options, name) < math.inf:
            raise SurveyError(BAD_OPTION, name=name, value=getattr(options, name))
    inlets = tuple(inlets)
    progress(0.0, "water")
    taken, said = inlets_on(tin, inlets, options.reach)
    flow = build_flow(tin, taken)
    ponds = find_ponds(flow, options.ponds, named("water", part(progress, 0.1, 0.2)))
    full = options.hollows is Hollows.ALL_FULL
    counted = None if options.hollows is Hollows.PITS_KEEP else ponds
    firsts = find_first_vertices(flow, named("water", part(progress, 0.2, 0.45)))
    outlets = rim_outlets(flow, options.min_outlet, counted, full, firsts=firsts)
    fates = find_fates(flow, named("water", part(progress, 0.45, 0.7)), outlets)
    shares = shared_out(find_catchments(fates, counted, full), ponds, inlets, options.min_outlet)
    peaks, more = _peaks(shares, inlets, options.rain)
    spacing = options.spacing or suiting_spacing(tin)
    progress(0.75, "water")
    paths = trace_paths(flow, grid_places(tin, spacing), options.hollows.passages(flow, ponds))
    progress(0.8, "water")
    channels = channel_lines(flow, options.channel, counted, full, firsts=firsts)
    ridges = ridge_lines(flow, options.channel, counted, full, firsts=firsts)
    progress(0.9, "water")
    flat = flat_areas(tin, options.flat_limit, options.flat_window, options.flat_area)
    progress(1.0, "water")
    return WaterStudy(
        options, inlets, flow, ponds, shares, pond_shores(flow, ponds), paths, spacing, channels, ridges, flat, peaks,
        (*said, *more),
    )  # fmt: skip


def suiting_spacing(tin: Tin, across: int = 15) -> float:
    """Metres, round in the unit of the CRS, that fit about ``across`` times across the site."""
    return nice_length(max(math.sqrt(tin.plan_area) / across, 1e-3), tin.crs)


def grid_places(tin: Tin, spacing: float) -> np.ndarray:
    """Places (k, 2) of a square grid over the bounds of ``tin``, metres of the CRS; also ones off the surface."""
    west, south, east, north = tin.bounds
    ring = np.array([[west, south], [east, south], [east, north], [west, north]])
    return in_polygons([[ring + spacing * np.sign(ring - ring.mean(axis=0))]], spacing)


def _peaks(
    shares: Shares, inlets: Sequence[Inlet], rain: Optional[Rain]
) -> Tuple[Optional[PeakFlows], Tuple[Message, ...]]:
    if rain is None:
        return None, ()
    coefficient = np.full(len(shares), rain.runoff)
    for row in np.flatnonzero(shares.outlet == Outlet.INLET):
        own = inlets[shares.number[row]].runoff
        coefficient[row] = own if math.isfinite(own) else rain.runoff
    coefficient[shares.outlet == Outlet.RIM] = np.nan  # spread over many places, so there is no peak at one
    known = np.isfinite(coefficient)
    peaks = peak_flows(shares.area, np.where(known, coefficient, 1.0), rain.intensity, rain.units)
    flow = np.where(known, peaks.flow, np.nan)
    peaks = PeakFlows(flow, peaks.area, coefficient, peaks.intensity, peaks.units, peaks.cautions)
    without = [shares.name[i] for i in np.flatnonzero(~known) if shares.name[i]]
    return peaks, (*peaks.cautions, *((message(NO_RUNOFF, names=", ".join(without)),) if without else ()))
