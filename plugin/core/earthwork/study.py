"""All that is told of one comparison: volumes, how sure they are, where, and what other methods say."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Dict, List, Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..progress import Progress, part, silent
from ..quality.noise import USUAL_SIGMA
from ..surface.dissolve import LabelledPolygon
from ..surface.tin import Tin
from ..units import metres_per_unit, nice_length
from .checks import BY_GRID, WHY_GRID, MethodCheck, check_by_sections
from .comparison import Comparison
from .depth_grid import DepthGrid, depth_grid
from .depth_polygons import depth_polygons
from .depths import DepthClass, usual_limits, volumes_in_depths
from .doubt import Parts, VolumeDoubt, doubt_of_parts
from .haul import MassDiagram, mass_diagram
from .layers import Layer, LayerVolumes, layers_in_cut
from .materials import EarthFactors, EarthSheet, StrippedVolume, earth_sheet, strip_pieces, truck_loads
from .partition import Region
from .plane import Plane, plane_surface
from .regions import PartVolume, RegionVolumes, pieces_by_region, volumes_in_regions
from .roughness import ground_departure
from .side import NoiseModel, SurfaceDoubt
from .small_depths import Settling, settle
from .surveys import NOISE_OFF, said_of_surveys
from .volume import Volume
from .wide_triangles import said_of_wide
from .zero_line import lines_of_no_depth

SMALL_DEPTHS = Text(
    "earthwork.small_depths",
    QT_TRANSLATE_NOOP(
        "core",
        "Much of the ground is no deeper than the noise of the points: noise alone makes about {excess:.1f} m³ of cut "
        "and as much fill. The net volume is not touched by it.",
    ),
)
NOT_ALL_COMPARED = Text(
    "earthwork.not_all_compared",
    QT_TRANSLATE_NOOP(
        "core",
        "Not compared: {existing:.1f} m² that only {existing_name} covers, {design:.1f} m² that only {design_name} "
        "covers.",
    ),
)
OVERLAPPING = Text(
    "earthwork.overlapping_regions",
    QT_TRANSLATE_NOOP(
        "core",
        "Regions overlap over {area:.1f} m² ({names}): each of them counts that ground, the total counts it once.",
    ),
)

_MOST_BARS = 40  # on each side of the histogram
_MAP_CELLS = 600_000
_SMALLEST_EXCESS = 0.02  # share of cut or fill from which noise is worth a word


@dataclass(frozen=True)
class Certainty:
    """What the user says of the points behind a surface, standard deviations in metres.

    ``sigma``: noise of a point's height, new at every point; ``drift``: what points recorded within minutes have in
    common; ``time``: (n,) seconds of the surface's vertices, None where unknown: then the order of the vertices tells,
    and where it is no walk's, squares of ``drift_length``. ``ground``: whether the ground between the points adds
    doubt (not so for a design).
    """

    sigma: float = 0.0
    drift: float = 0.0
    drift_length: float = 30.0
    ground: bool = False
    time: Optional[np.ndarray] = None

    @property
    def is_survey(self) -> bool:
        return self.sigma > 0 or self.drift > 0

    def of_nodes(self, nodes: np.ndarray) -> Certainty:
        """That of a surface of some (k,) of the vertices."""
        return self if self.time is None else replace(self, time=self.time[nodes])

    def of(self, tin: Tin) -> SurfaceDoubt:
        departure = ground_departure(tin, float(np.hypot(self.sigma, self.drift))) if self.ground else None
        return SurfaceDoubt(self.sigma, departure, drift=self.drift, drift_length=self.drift_length, time=self.time)


#: A survey that does not tell how its heights repeat.
SURVEYED = Certainty(USUAL_SIGMA, ground=True)


@dataclass(frozen=True)
class StudyOptions:
    """What is asked about a comparison.

    ``existing``, ``design``: how sure the surfaces are; ``two_surveys``: whether both were measured, and so
    noise is taken off cut and fill (None: where both have noise; say False where one was made from the other).
    ``offset``: by how much the design, or later survey, is known to be too high, metres; None finds it from unchanged
    ground between two surveys. ``offset_sigma``: its standard deviation, metres, where it is given or cannot be found.
    ``limits``: depth classes, metres, None for round ones. ``factors``, ``truck`` (m³ loose),
    ``topsoil`` (m): what is done with the earth. ``cell``: of the depth grid, metres, None for one that suits a map.
    ``line``, ``step``, ``half_width``: sections for the check by other methods and the mass diagram. ``uppermost``,
    ``layers``: materials.
    ``drawn``: whether polygons, lines and histogram are wanted, which take most of the time.
    """

    existing: Certainty = SURVEYED
    design: Certainty = Certainty()
    offset_sigma: float = 0.0
    offset: Optional[float] = None
    two_surveys: Optional[bool] = None
    limits: Optional[Tuple[float, ...]] = None
    factors: EarthFactors = EarthFactors()  # noqa: RUF009  frozen
    truck: Optional[float] = None
    topsoil: float = 0.0
    cell: Optional[float] = None
    line: Optional[np.ndarray] = None
    step: float = 10.0
    half_width: float = 20.0
    uppermost: str = ""
    layers: Tuple[Layer, ...] = ()
    drawn: bool = True


@dataclass(frozen=True)
class RegionStudy:
    """One region: its volumes and areas, their doubts, depth classes, materials of its cut. ``measured``: volumes of
    the triangles as they are, with the height offset between the surveys in them.
    """

    part: PartVolume
    doubt: VolumeDoubt
    depths: Tuple[DepthClass, ...]
    layers: Optional[LayerVolumes]
    measured: PartVolume


@dataclass(frozen=True)
class Study:
    """Results of one comparison.

    ``measured``: the volume of the triangles as they are. ``comparison`` and ``volume``: exact for the triangles once
    the height offset between two surveys is off; the same where there is none. ``doubt``: the volumes that are told,
    between surveys with the share of noise off cut and fill, and how sure they are. ``settling``: what unchanged
    ground says.

    ``limits``: of ``depths`` and ``polygons``. ``bars``: area and volume by fine depth classes. ``loads``: of waste
    and borrow, where a truck is given. ``volumes``: of ``regions``, with what is outside, overlaps and the total;
    ``regions_drawn``: their polygons, or those outside of which nothing is compared. ``haul``: along the line, None
    without one.
    """

    comparison: Comparison
    options: StudyOptions
    volume: Volume
    doubt: VolumeDoubt
    limits: Tuple[float, ...]
    depths: Tuple[DepthClass, ...]
    bars: Tuple[DepthClass, ...]
    zero_lines: Tuple[np.ndarray, ...]
    polygons: Tuple[LabelledPolygon, ...]
    grid: DepthGrid
    checks: Tuple[MethodCheck, ...]
    earth: EarthSheet
    loads: Optional[Tuple[int, int]]
    stripped: Optional[StrippedVolume]
    layers: Optional[LayerVolumes]
    regions: Tuple[RegionStudy, ...]
    volumes: Optional[RegionVolumes]
    regions_drawn: Tuple[Region, ...]
    messages: Tuple[Message, ...]
    measured: Volume
    settling: Optional[Settling] = None
    two_surveys: bool = False
    haul: Optional[MassDiagram] = None

    @property
    def existing_name(self) -> str:
        return self.comparison.names[0]

    @property
    def design_name(self) -> str:
        return self.comparison.names[1]


def study(
    comparison: Comparison,
    options: StudyOptions = StudyOptions(),
    regions: Sequence[Region] = (),
    progress: Progress = silent,
) -> Study:
    """Everything about a comparison, and about each of ``regions`` in it. Raises SurveyError for what cannot be."""
    measured = comparison.volume()
    progress(0.3, "earthwork")
    model = NoiseModel(comparison.existing, comparison.design_tin, *_surface_doubts(comparison, options))
    judge = _Judge(options, model, comparison, measured.common_area)
    as_is = comparison
    comparison = comparison.without_offset(judge.offset)
    volume = comparison.volume() if comparison is not as_is else measured
    doubt = judge.doubt((comparison.both, comparison.existing_only, comparison.design_only))
    progress(0.45, "earthwork")
    limits = _usual_limits(comparison) if options.limits is None else options.limits
    depths = volumes_in_depths(comparison.pieces(), limits)
    bars = volumes_in_depths(comparison.pieces(), _bar_limits(comparison)) if options.drawn else ()
    progress(0.55, "earthwork")
    polygons = depth_polygons(comparison, limits) if options.drawn else ()
    zero_lines = lines_of_no_depth(comparison.pieces()) if options.drawn else ()
    progress(0.7, "earthwork")
    grid = depth_grid(comparison, options.cell or _map_cell(comparison))
    stripped = strip_pieces(comparison.pieces(), options.topsoil) if options.topsoil > 0 else None
    moved = volume if stripped is None else stripped.volume
    earth = earth_sheet(moved.cut, moved.fill, options.factors)
    if stripped is None and judge.two_surveys:
        earth = earth_sheet(max(0.0, doubt.cut.value), max(0.0, doubt.fill.value), options.factors)
    layers = layers_in_cut(comparison.pieces(), options.uppermost, options.layers) if options.layers else None
    progress(0.8, "earthwork")
    volumes, each = _regions(as_is, comparison, options, regions, limits, judge, part(progress, 0.8, 0.95))
    loads = None
    if options.truck is not None:
        loads = truck_loads(earth.waste_loose, options.truck), truck_loads(earth.borrow_loose, options.truck)
    design = None if options.line is None else _design_surface(comparison)
    found = Study(
        comparison, options, volume, doubt, tuple(limits), depths, bars, zero_lines, polygons, grid,
        _checks(comparison, options, grid, volume, design), earth, loads, stripped, layers, each, volumes,
        tuple(regions) or comparison.within, (), measured, judge.settling, judge.two_surveys,
        _haul(comparison, options, design),
    )  # fmt: skip
    progress(1.0, "earthwork")
    return replace(found, messages=_messages(found))


_Doubts = Tuple[SurfaceDoubt, SurfaceDoubt]


def _surface_doubts(comparison: Comparison, options: StudyOptions) -> _Doubts:
    design = comparison.design_tin
    return options.existing.of(comparison.existing), SurfaceDoubt() if design is None else options.design.of(design)


class _Judge:
    """What is known of the noise of a comparison, for the whole and for each region."""

    def __init__(self, options: StudyOptions, model: NoiseModel, comparison: Comparison, area: float) -> None:
        self.options, self.model = options, model
        both = comparison.design_tin is not None and options.existing.is_survey and options.design.is_survey
        self.two_surveys = both if options.two_surveys is None else both and options.two_surveys
        self.settling = settle(comparison.both, model, area, options.offset) if self.two_surveys else None

    @property
    def offset(self) -> float:
        """Metres that are taken off the heights of the design or later survey."""
        if self.settling is not None:
            return self.settling.unchanged.offset
        return self.options.offset or 0.0

    @property
    def found(self) -> bool:
        """Whether the offset comes from unchanged ground."""
        return self.settling is not None and not self.settling.unchanged.given

    def doubt(self, parts: Parts) -> VolumeDoubt:
        sigma = self.settling.unchanged.rim if self.settling is not None and self.found else self.options.offset_sigma
        return doubt_of_parts(parts, self.model, sigma, self.settling, self.two_surveys)


def _usual_limits(comparison: Comparison) -> Tuple[float, ...]:
    return usual_limits(comparison.pieces(), comparison.existing.crs)


def _bar_limits(comparison: Comparison) -> Tuple[float, ...]:
    """Even limits for a histogram, up to the deepest place or where hardly any ground is deeper."""
    deepest = max(float(np.abs(p.second_height - p.first_height).max()) for p in comparison.pieces() if len(p))
    width = nice_length(max(_usual_limits(comparison)[-1] / 12, 1e-4), comparison.existing.crs)
    count = min(_MOST_BARS, int(np.ceil(deepest / width)))
    return tuple(round(width * k, 9) for k in range(1, max(1, count) + 1))


def _map_cell(comparison: Comparison) -> float:
    west, south, east, north = comparison.bounds
    metres = metres_per_unit(comparison.existing.crs)
    cell = float(np.sqrt((east - west) * (north - south) / _MAP_CELLS)) / metres
    return float(f"{max(1e-3, cell):.1g}") * metres


def _design_surface(comparison: Comparison) -> Tin:
    """The design as a TIN, also where it is a plane."""
    if comparison.design_tin is not None:
        return comparison.design_tin
    assert isinstance(comparison.design, Plane)
    return plane_surface(comparison.design, comparison.bounds, comparison.existing.crs)


def _checks(
    comparison: Comparison, options: StudyOptions, grid: DepthGrid, volume: Volume, design: Optional[Tin]
) -> Tuple[MethodCheck, ...]:
    why = message(WHY_GRID, area=grid.area, exact=volume.common_area)
    name = message(BY_GRID, cell=grid.frame.cell)
    found = [MethodCheck(name, grid.cut, grid.fill, volume.cut, volume.fill, why)]
    if options.line is not None and design is not None:
        found += check_by_sections(comparison.existing, design, options.line, options.step, options.half_width)
    return tuple(found)


def _haul(comparison: Comparison, options: StudyOptions, design: Optional[Tin]) -> Optional[MassDiagram]:
    if options.line is None or design is None:
        return None
    return mass_diagram(comparison.existing, design, options.line, options.step, options.half_width, options.factors)


def _regions(
    as_is: Comparison,
    comparison: Comparison,
    options: StudyOptions,
    regions: Sequence[Region],
    limits: Sequence[float],
    judge: _Judge,
    progress: Progress,
) -> Tuple[Optional[RegionVolumes], Tuple[RegionStudy, ...]]:
    if not regions:
        return None, ()
    bounds, crs = comparison.bounds, comparison.existing.crs
    volumes = volumes_in_regions(comparison.pieces(), regions, bounds, crs)
    measured = volumes if as_is is comparison else volumes_in_regions(as_is.pieces(), regions, bounds, crs)
    groups = [
        pieces_by_region(parts, regions, bounds, crs)
        for parts in (comparison.both, comparison.existing_only, comparison.design_only)
    ]
    found = []
    for r, volume in enumerate(volumes.regions):
        progress(r / len(regions), "earthwork")
        both, existing_only, design_only = (group[r] for group in groups)
        every = [*both, *existing_only, *design_only]
        doubt = judge.doubt((both, existing_only, design_only))
        layers = layers_in_cut(every, options.uppermost, options.layers) if options.layers else None
        found.append(RegionStudy(volume, doubt, volumes_in_depths(every, limits), layers, measured.regions[r]))
    return volumes, tuple(found)


def _surveyed(found: Study) -> List[Tuple[str, Tin]]:
    """The surfaces that were measured, each with its name."""
    surfaces, certain = found.comparison, (found.options.existing, found.options.design)
    both = zip(surfaces.names, (surfaces.existing, surfaces.design_tin), certain)
    return [(name, tin) for name, tin, how in both if tin is not None and how.is_survey and how.ground]


def _messages(found: Study) -> Tuple[Message, ...]:
    said: List[Message] = []
    volume, excess = found.volume, found.doubt.noise_excess
    names: Dict[str, str] = {"existing_name": found.existing_name, "design_name": found.design_name}
    options, against_surface = found.options, found.comparison.design_tin is not None
    if found.two_surveys or (options.offset is not None and against_surface):
        said += said_of_surveys(found.comparison, found.settling, options.offset, options.offset_sigma)
    if max(volume.existing_only, volume.design_only) > 0.05 and found.comparison.design_tin is not None:
        said.append(message(NOT_ALL_COMPARED, existing=volume.existing_only, design=volume.design_only, **names))
    said += said_of_wide(_surveyed(found), volume.common_area)
    if found.two_surveys and abs(excess) > 0.05:
        said.append(message(NOISE_OFF, excess=excess))
    elif excess > _SMALLEST_EXCESS * min(volume.cut + 1e-9, volume.fill + 1e-9) and excess > 0.05:
        said.append(message(SMALL_DEPTHS, excess=excess))
    if found.volumes is not None and found.volumes.overlaps:
        overlaps = found.volumes.overlaps
        names_told = "; ".join(overlap.name for overlap in overlaps)
        said.append(message(OVERLAPPING, area=sum(o.area for o in overlaps), names=names_told))
    return tuple(said)
