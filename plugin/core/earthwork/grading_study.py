"""All that is told of one graded design: volumes and their doubt, sections, haul, and the height that balances."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Callable, List, Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..progress import Progress, part, silent
from ..surface.along import LaidLines, lay_lines
from ..units import metres_per_unit
from .balance import Balance
from .balance_curve import BalanceCurve, balance_curve, height_sigma
from .centreline import line_length, make_stations
from .comparison import Comparison
from .doubt import SurfaceDoubt, VolumeDoubt, volume_doubt
from .graded_site import GradedSite
from .haul import MassDiagram
from .study import NOT_ALL_COMPARED, Study, StudyOptions, study
from .volume import Volume

EXISTING = Text("earthwork.name_existing", QT_TRANSLATE_NOOP("core", "existing ground"))
DESIGN = Text("earthwork.name_design", QT_TRANSLATE_NOOP("core", "design"))
ALONG = Text("earthwork.section_along", QT_TRANSLATE_NOOP("core", "A - A, along the line of the sections"))
ACROSS = Text("earthwork.section_across", QT_TRANSLATE_NOOP("core", "B - B, across it"))
AT_STATION = Text("earthwork.section_at", QT_TRANSLATE_NOOP("core", "station {station:.1f} m"))

_CURVE = 13  # heights on the curve of volumes
_CROSS_SECTIONS = 6  # at most, of a strip
_SECTIONS = 12  # of a pad, about, for the check by other methods

Line = Tuple[np.ndarray, np.ndarray]


@dataclass(frozen=True)
class DesignSection:
    """A vertical cut along ``xy`` (k, 2): distances and heights (m) of the parts of the ``ground`` and the ``design``.
    ``centre``: distance that counts as 0 in a cross section, else 0."""

    name: Message
    xy: np.ndarray
    ground: Tuple[Line, ...]
    design: Tuple[Line, ...]
    centre: float = 0.0


@dataclass(frozen=True)
class BalanceStudy:
    """``balance`` of a design whose first height was ``first`` (m; nan where it has no single one, as a strip), its
    ``curve`` for the ``factor`` and ``surplus`` (m³) asked for; ``sigma``: standard deviation of the shift (m) that the
    doubt of the volumes makes."""

    balance: Balance
    first: float
    curve: BalanceCurve
    factor: float
    surplus: float
    sigma: float

    @property
    def height(self) -> float:
        """The balanced height, metres; the shift where there is no first one."""
        return self.balance.shift + (0.0 if np.isnan(self.first) else self.first)


@dataclass(frozen=True)
class GradingStudy:
    """``study``: of the ground and the design; ``sections``; ``pad_doubts``: of the volumes of each of the site's pads;
    ``haul``: the mass diagram of a strip; ``balanced``: what there is to tell of the balanced height."""

    site: GradedSite
    study: Study
    sections: Tuple[DesignSection, ...]
    pad_doubts: Tuple[VolumeDoubt, ...] = ()
    haul: Optional[MassDiagram] = None
    balanced: Optional[BalanceStudy] = None

    @property
    def design_messages(self) -> Tuple[Message, ...]:
        """What was noticed about the design and its balance."""
        return (*self.site.messages, *(() if self.balanced is None else self.balanced.balance.messages))

    @property
    def messages(self) -> Tuple[Message, ...]:
        """What was noticed, about the volumes too."""
        return (*self.design_messages, *self.study.messages)


def study_grading(
    site: GradedSite,
    options: StudyOptions,
    step: Optional[float] = None,
    names: Tuple[str, str] = ("", ""),
    progress: Progress = silent,
) -> GradingStudy:
    """Everything about a design but its balance. ``step``: metres between sections, None for a suitable one."""
    step = _step(site) if step is None else step
    existing = options.existing.of_nodes(site.nodes)
    whole = replace(options, existing=existing, line=site.axis, step=step, half_width=site.half_width)
    comparison = Comparison(site.ground, site.design, names=(names[0] or EXISTING.english, names[1] or DESIGN.english))
    found = study(comparison, whole, progress=part(progress, 0.0, 0.7))
    # the ground was cut out around the design: what lies beyond is told of the whole survey, and is no news
    said = tuple(each for each in found.messages if each.text is not NOT_ALL_COMPARED)
    volume = replace(found.volume, existing_only=site.volume.existing_only)
    found = replace(found, volume=volume, messages=said)
    progress(0.7, "earthwork")
    haul = found.haul if site.is_strip else None
    found = replace(found, haul=None)  # told beside the design
    progress(0.9, "earthwork")
    sections = _strip_sections(site) if site.is_strip else _pad_sections(site)
    progress(1.0, "earthwork")
    return GradingStudy(site, found, sections, _pad_doubts(site, found), haul)


def _pad_doubts(site: GradedSite, found: Study) -> Tuple[VolumeDoubt, ...]:
    if len(site.pads) == 1:
        return (found.doubt,)
    existing, offset = found.options.existing.of(site.ground), found.options.offset_sigma
    designs = [each.grading.design for each in site.pads]
    return tuple(volume_doubt(site.ground, design, existing, SurfaceDoubt(), offset) for design in designs)


def with_balance(
    found: GradingStudy,
    balance: Balance,
    first: float,
    volume_at: Callable[[float], Volume],
    factor: float,
    surplus: float,
    reach: Optional[float] = None,
    progress: Progress = silent,
) -> GradingStudy:
    """``found``, of the balanced design, with its curve of volumes ``reach`` metres up and down (0: that height alone).

    ``volume_at(shift)``: volumes of the design that is ``shift`` metres above the first one.
    """
    if reach is None:
        area = max(found.site.volume.common_area, 1e-9)
        reach = float(np.clip(2 * (found.site.volume.cut + found.site.volume.fill) / area, 0.25, 3.0))
    shifts = balance.shift + np.linspace(-reach, reach, _CURVE if reach > 0 else 1)
    curve = balance_curve(volume_at, shifts.tolist(), factor, surplus, progress)
    sigma = height_sigma(found.study.doubt, found.study.volume, factor)
    return replace(found, balanced=BalanceStudy(balance, first, curve, factor, surplus, sigma))


def _step(site: GradedSite) -> float:
    """Metres between sections, a round number in the unit of the CRS."""
    metres = metres_per_unit(site.design.crs)
    wanted = line_length(site.axis) / _SECTIONS / metres
    power = 10.0 ** np.floor(np.log10(max(wanted, 1e-3)))
    return float(power * next(factor for factor in (1, 2, 5, 10) if factor * power >= wanted * (1 - 1e-9))) * metres


def _pad_sections(site: GradedSite) -> Tuple[DesignSection, ...]:
    a, b = site.axis[0], site.axis[-1]
    middle, way = (a + b) / 2, (b - a) / np.hypot(*(b - a))
    across = np.array([way[1], -way[0]])
    reach = (site.design.vertices[:, :2] + site.design.origin - middle) @ across
    ends = np.array([reach.min(), reach.max()]) + np.array([-0.05, 0.05]) * np.ptp(reach)
    return _sections(site, [(message(ALONG), site.axis, 0.0), (message(ACROSS), middle + ends[:, None] * across, 0.0)])


def _strip_sections(site: GradedSite) -> Tuple[DesignSection, ...]:
    """The profile along the centreline, and cross sections spread over its length."""
    stations = make_stations(site.axis, line_length(site.axis) / (_CROSS_SECTIONS + 1))
    at = np.linspace(0, stations.station[-1], _CROSS_SECTIONS + 2)[1:-1]
    chosen = np.unique([int(np.argmin(np.abs(stations.station - each))) for each in at])
    half = np.full(len(stations), site.half_width)
    left, right = stations.beside(-half), stations.beside(half)
    cuts: List[Tuple[Message, np.ndarray, float]] = [(message(ALONG), site.axis, 0.0)]
    for i in chosen.tolist():
        name = message(AT_STATION, station=float(stations.station[i]))
        width = float(np.hypot(*(stations.xy[i] - left[i])))
        cuts.append((name, np.array([left[i], right[i]]), width))
    return _sections(site, cuts)


def _sections(site: GradedSite, cuts: Sequence[Tuple[Message, np.ndarray, float]]) -> Tuple[DesignSection, ...]:
    lines = [xy for _, xy, _ in cuts]
    ground, design = (lay_lines(tin, lines) for tin in (site.ground, site.design))
    return tuple(
        DesignSection(name, xy, _parts(ground, i), _parts(design, i), centre)
        for i, (name, xy, centre) in enumerate(cuts)
    )


def _parts(laid: LaidLines, line: int) -> Tuple[Line, ...]:
    parts = [slice(laid.start[i], laid.start[i + 1]) for i in np.flatnonzero(laid.line == line)]
    return tuple((laid.distance[each], laid.xyz[each, 2]) for each in parts)
