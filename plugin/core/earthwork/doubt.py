"""How sure a volume is: noise of the points, heights of the surveys, and ground between the points.

Cut and fill between two noisy surfaces are too large, since noise makes both where there is neither
(:mod:`.noise_share`). Between two surveys that excess is taken off, so that over ground that did not change cut and
fill come to 0 on average; they may then be a little below 0, which says the same as a little above. Net keeps what the
triangles say. Against a design or level cut and fill stay as they are and the excess is told: a design is often made
from the very surface it is compared with, and shares its errors where they meet.

Five parts of doubt, each a standard deviation of cut, fill and net, taken as independent of each other:

* *random*: noise of each point's height, independent from point to point. A volume follows the heights by the integral
  of each vertex's share in the surface over the cut (or fill) area, and variances add by its square (law of
  propagation of uncertainty, JCGM 100:2008, section 5.1). Where nothing changed noise goes into cut and fill by
  halves.
* *drift*: what points recorded within minutes have in common (:mod:`.drift_field`).
* *systematic*: one unknown offset between the heights of both surveys, times the area. An offset that was found
  from unchanged ground is made of that ground's heights, and its doubt is in the other parts.
* *model*: the ground departs from straight lines between points. Over a triangle a parabolic ground departs from its
  plane by the mean of the departures at the middles of its three edges (integral of the quadratic error of linear
  interpolation). These means are taken as random between patches of ground and alike within one; a patch is as
  wide as ``correlation_length``.
* *small*: where depths are no larger than the noise volumes do not follow heights in proportion; what this adds
  comes from noise drawn many times (:mod:`.small_depths`), always the same.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import chain
from typing import Iterable, List, Optional, Sequence, Tuple

import numpy as np

from ..confidence import NORMAL_95
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..surface.tin import Tin
from .following import Following
from .noise_share import noise_share, part_of_fill
from .overlay import Pieces, common_pieces
from .places import Places, parts_by_depth
from .side import NoiseModel, Side, SurfaceDoubt
from .small_depths import Settling, known_depth, sampled, small_depth_sds
from .volume import sum_volumes

#: What small depths can add to the doubt of cut or fill where all noise is one, in standard deviations of it.
_MOST_SMALL = 0.9
_LITTLE = 0.1  # of the rest of the doubt: what is smaller is left out

BAD_OFFSET = Text(
    "earthwork.offset_sigma",
    QT_TRANSLATE_NOOP(
        "core", "The height offset between both surfaces has {value} m; give a standard deviation of 0 or more."
    ),
)

Parts = Tuple[Iterable[Pieces], Iterable[Pieces], Iterable[Pieces]]


@dataclass(frozen=True)
class Doubt:
    """Standard deviations (m³) of one ``value`` (m³) by cause."""

    value: float
    random: float
    systematic: float
    model: float
    drift: float = 0.0
    small: float = 0.0

    @property
    def total(self) -> float:
        parts = (self.random, self.systematic, self.model, self.drift, self.small)
        return float(np.sqrt(sum(part**2 for part in parts)))

    @property
    def half_95(self) -> float:
        """Half the width of :attr:`interval_95`, cubic metres."""
        return NORMAL_95 * self.total

    @property
    def interval_95(self) -> Tuple[float, float]:
        """Where the true value is with 95 %, if errors are normal."""
        return self.value - self.half_95, self.value + self.half_95


@dataclass(frozen=True)
class VolumeDoubt:
    """``cut``, ``fill`` and ``net`` (fill less cut) with their doubts. ``noise_excess``: m³ by which noise makes cut
    and fill of the triangles each too large; of two surveys it is off ``cut`` and ``fill``. ``point_share``: part of
    the random variance of net that the existing surface has.
    """

    cut: Doubt
    fill: Doubt
    net: Doubt
    noise_excess: float
    point_share: float


def volume_doubt(
    existing: Tin,
    design: Tin,
    existing_doubt: SurfaceDoubt,
    design_doubt: SurfaceDoubt = SurfaceDoubt(),  # noqa: B008  frozen
    offset_sigma: float = 0.0,
) -> VolumeDoubt:
    """The doubts of the volume between two surfaces.

    ``offset_sigma``: standard deviation of the height offset between both, metres. Points that both surfaces
    share are taken as independent. Raises SurveyError for a standard deviation that is missing.
    """
    return doubt_of_pieces(
        list(common_pieces(existing, design)), existing, design, existing_doubt, design_doubt, offset_sigma
    )


def doubt_of_pieces(
    pieces: Iterable[Pieces],
    existing: Tin,
    design: Optional[Tin],
    existing_doubt: SurfaceDoubt,
    design_doubt: SurfaceDoubt = SurfaceDoubt(),  # noqa: B008  frozen
    offset_sigma: float = 0.0,
    existing_only: Iterable[Pieces] = (),
    design_only: Iterable[Pieces] = (),
) -> VolumeDoubt:
    """As :func:`volume_doubt`, of pieces; ``design`` is None for a level or plane, which is exact.

    ``existing_only``, ``design_only``: pieces of one surface against a level (the other's triangles mean nothing).
    They are gone through several times; an iterator is kept in memory.
    """
    model = NoiseModel(existing, design, existing_doubt, design_doubt)
    return doubt_of_parts((pieces, existing_only, design_only), model, offset_sigma)


def doubt_of_parts(
    parts: Parts,
    model: NoiseModel,
    offset_sigma: float,
    settling: Optional[Settling] = None,
    two_surveys: bool = False,
) -> VolumeDoubt:
    """The same of pieces that both surfaces have, that only the existing one has, and only the design.

    ``settling``: what the unchanged ground of the whole comparison says, whose offset is off already in the pieces.
    ``two_surveys``: take off what noise makes of cut and fill.
    """
    if not (np.isfinite(offset_sigma) and offset_sigma >= 0):
        raise SurveyError(BAD_OFFSET, value=offset_sigma)
    groups = [list(group) if iter(group) is group else group for group in parts]
    own_sides = (model.sides, model.sides[:1], model.sides[1:])
    volume = sum_volumes(chain(*groups), 0.0, 0.0)
    scale = 1.0 if settling is None else settling.unchanged.scale
    summed = _Sums(model, scale, settling)
    for group, own in zip(groups, own_sides):
        summed.add(group, own)
    fill_area = summed.clear_fill + summed.near_area[1]
    moved = settling if settling is not None and not settling.unchanged.given else None
    size = 1.0 if settling is None else settling.size
    random, drift, ground = summed.variances(moved, (volume.common_area - fill_area, fill_area))
    small = np.zeros(3)
    areas = (volume.cut_area, volume.fill_area, volume.cut_area + volume.fill_area)
    linear = np.sqrt(random.sum(axis=0) + drift.sum(axis=0) + ground + (offset_sigma * np.array(areas)) ** 2)
    if settling is not None or summed.most_small > _LITTLE * linear[:2].min():
        taken = [sampled(group, model, own, scale) for group, own in zip(groups, own_sides)]
        small = small_depth_sds(taken, model, summed.clear_fill, volume.common_area, settling)
    off = summed.excess if two_surveys else 0.0
    values = (volume.cut - off, volume.fill - off, volume.net)
    cut, fill, net = (
        Doubt(
            float(value), size * float(np.sqrt(r)), float(offset_sigma * area), size * float(np.sqrt(m)),
            size * float(np.sqrt(d)), float(s),
        )
        for value, area, r, m, d, s in zip(values, areas, random.sum(axis=0), ground, drift.sum(axis=0), small)
    )  # fmt: skip
    total = float(random[:, 2].sum())
    share = float(random[0, 2] / total) if total > 0 else float("nan")
    return VolumeDoubt(cut, fill, net, summed.excess, share)


class _Sums:
    """What one pass over the pieces adds up: how volumes follow heights, and what noise makes of them.

    ``ground``: (2, patches) what each patch of ground makes of cut and fill where depths are near.
    """

    def __init__(self, model: NoiseModel, scale: float, settling: Optional[Settling]) -> None:
        self.model, self.scale, self.settling = model, scale, settling
        self.following = [Following(side.tin, side.is_existing) for side in model.sides]
        self.ground = np.zeros((2, model.patches))
        self.near_area = np.zeros(2)
        self.excess = 0.0
        self.clear_fill = 0.0
        self.most_small = 0.0

    def add(self, pieces: Iterable[Pieces], sides: Sequence[Side]) -> None:
        own = [f for f, side in zip(self.following, self.model.sides) if any(side is each for each in sides)]
        for far, near in parts_by_depth(pieces, self.model, sides, self.scale):
            for each in own:
                each.add_pieces(far)
            self.clear_fill += sum_volumes([far], 0.0, 0.0).fill_area
            if len(near):
                self._add_near(near, own)

    def _add_near(self, near: Places, following: List[Following]) -> None:
        sd = self.scale * near.sd
        known = known_depth(near, self.settling)
        part = part_of_fill(near.depth, sd, known)
        self.excess += float(np.sum(near.area * noise_share(near.depth, sd, known)))
        for each, places in zip(following, near.by_side):
            each.add_places(places, near.area, part)
        for row, weight in enumerate((part - 1, part)):
            self.ground[row] += np.bincount(near.patch, near.area * weight * near.ground, self.model.patches)
            self.near_area[row] += float(np.sum(near.area * np.abs(weight)))
        self.most_small += _MOST_SMALL * float(near.area @ sd)

    def variances(self, settling: Optional[Settling], areas: Tuple[float, float]) -> Tuple[np.ndarray, ...]:
        """Random and drift variances, each (sides, 3), and of the ground (3,), of cut, fill and net, of noise as
        stated.

        ``areas`` of cut and fill: an offset that was found follows the heights of the unchanged ground; it lowers fill
        by the area of fill, and raises cut by that of cut.
        """
        rows: List[List[np.ndarray]] = [[], []]
        ground = np.zeros(3)
        for i, (side, follow) in enumerate(zip(self.model.sides, self.following)):
            own = follow.derivatives()
            cut, fill = own.cut, own.fill
            if settling is not None:
                cut, fill = cut + areas[0] * settling.calm[i], fill - areas[1] * settling.calm[i]
            slopes = (cut, fill, fill - cut)
            rows[0].append(np.array([np.sum((slope * side.sigma) ** 2) for slope in slopes]))
            rows[1].append(np.array([side.drift.variance(slope) for slope in slopes]))
            for k, area in enumerate((own.cut_area, own.fill_area, own.cut_area + own.fill_area)):
                ground[k] += _model_variance(side, area)
        cut, fill = self.ground
        if settling is not None:
            cut, fill = cut + areas[0] * settling.calm[-1], fill - areas[1] * settling.calm[-1]
        ground += np.array([np.sum(each**2) for each in (cut, fill, fill - cut)])
        return np.array(rows[0]), np.array(rows[1]), ground


def _model_variance(side: Side, area: np.ndarray) -> float:
    """Variance (m⁶) through the ground between points, of a volume with the ``area`` (m,) of each triangle in it."""
    mean = side.departure.mean(axis=1)
    patch = np.maximum(area, min(side.patch_length**2, float(area.sum())))
    return float(np.sum(area * mean**2 * patch))
