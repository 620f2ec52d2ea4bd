"""Points that lie away from the others or leave the way of the walk, and what can be told of them."""

from __future__ import annotations

from typing import List, NamedTuple, Optional, Tuple

import numpy as np
from scipy.spatial import cKDTree

from ..messages import Text
from ..points.pointset import PointSet, Reason
from . import causes, said
from .kinds import same_kind
from .order import Excursion, excursions
from .places import Places
from .site import Site
from .verdict import Verdict

#: No instrument measures farther within one site, metres (common practice, no source).
_ONE_SITE = 50_000.0
#: On a local grid a point at 0, 0 may be its origin up to so far from the others, metres.
_ORIGIN = 5_000.0
#: How near to the others a point read otherwise must lie: metres, usual distances.
_AMONG, _AMONG_STEPS = 20.0, 20.0
#: So many points together may leave the way within the site and be strays: more of them were walked.
_HOP = 2
_SAME = 0.05
#: So many parts of a site are read otherwise.
_PARTS = 20
#: Heights may differ from those of the site by so much and be heights still, metres.
_RISE = 200.0


class _Suspect(NamedTuple):
    """Some points of a site (k,), by their place in it, and how they left the way, None where order says nothing."""

    at: np.ndarray
    way: Optional[Excursion]


class _Others:
    """The points that are above suspicion."""

    def __init__(self, places: Places, site: Site, suspect: np.ndarray) -> None:
        self.at = np.flatnonzero(~suspect)
        self._tree = cKDTree(site.xy[self.at], compact_nodes=False, balanced_tree=False)
        height = places.height[site.index[self.at]]
        self._low, self._high = float(height.min()) - _RISE, float(height.max()) + _RISE

    def away(self, xy: np.ndarray) -> np.ndarray:
        """How far (k,) places (k, 2) are from the nearest of them, metres."""
        return np.asarray(self._tree.query(xy)[0])

    def likely(self, height: np.ndarray) -> np.ndarray:
        return np.asarray((height > self._low) & (height < self._high))


def verdicts_of(points: PointSet, places: Places, site: Site) -> List[Verdict]:
    """What is told of the points that lie apart; those of which nothing is told get ``Reason.FAR_OFF``."""
    if not site.main.any():
        return []
    blocks = _blocks(places, site)
    suspect = np.zeros(len(site.xy), bool)
    for block in blocks:
        suspect[np.searchsorted(site.index, block.indices)] = True
    groups = [group for group in _suspects(site) if not suspect[group.at].any()]
    for group in groups:
        suspect[group.at] = True
    if not groups or suspect.all():
        return blocks
    others = _Others(places, site, suspect)
    verdicts = list(blocks)
    for group in groups:
        one = _verdict(points, places, site, group, others)
        if one is not None:
            verdicts.append(one)
    return verdicts


def _blocks(places: Places, site: Site) -> List[Verdict]:
    """Parts of many points that lie far off and, with two or all of their coordinates exchanged, among those of the
    largest part. A height is exchanged only where what stands in its place is no height of the site.
    """
    size = np.bincount(site.part)
    largest = site.part == int(np.argmax(size))
    some = np.flatnonzero(site.main & (size < size.max()))
    if not len(some):
        return []
    others = _Others(places, site, ~largest)
    near = max(_AMONG, _AMONG_STEPS * site.usual)
    low, high = site.xy[largest].min(axis=0) - near, site.xy[largest].max(axis=0) + near

    def fits(xy: np.ndarray, height: np.ndarray) -> np.ndarray:
        inside = np.all((xy > low) & (xy < high), axis=1) & np.isfinite(height)
        return inside & (others.away(xy) < near) if inside.all() else inside

    verdicts: List[Verdict] = []
    for part in some[:_PARTS].tolist():
        at = np.flatnonzero(site.part == part)
        which = site.index[at]
        off = (site.xy[at] < low) | (site.xy[at] > high)
        told = causes.cause_of(places, which, fits) if off.any(axis=1).all() else None
        if told is None or told[1] is not Reason.SWAPPED:
            continue
        odd = not others.likely(places.height[which]).any()
        if off.all() if told[0] is not causes.SWAPPED_HEIGHT else odd:
            verdicts.append(Verdict(which, Reason.SWAPPED, said.LIKELY, others.away(site.xy[at]), told[0]))
    return verdicts


def _suspects(site: Site) -> List[_Suspect]:
    """Groups of points off the way, then those that lie alone."""
    index = site.order.index
    found = []
    for way in excursions(site.order):
        beside = [index[k] for k in (way.before, way.after) if k >= 0]
        if site.main[site.part[beside]].all():  # else it may be the points beside that are the strays
            found.append(_Suspect(index[way.first : way.last], way))
    left = ~site.main[site.part]
    for group in found:
        left[group.at] = False
    lone = np.flatnonzero(left)
    lone = lone[np.argsort(site.part[lone], kind="stable")]
    ends = np.flatnonzero(np.diff(site.part[lone])) + 1
    return found + [_Suspect(np.sort(at), None) for at in np.split(lone, ends) if len(at)]


def _verdict(points: PointSet, places: Places, site: Site, group: _Suspect, others: _Others) -> Optional[Verdict]:
    which = site.index[group.at]
    away = others.away(site.xy[group.at])
    far = bool(away.min() > site.apart)
    if group.way is None and not far:
        return None
    if away.min() < _SAME:  # a line stored twice is no stray
        return None
    if _zeros(places, which, away, far):
        return Verdict(which, Reason.ZERO, said.LIKELY, away, causes.ZERO)
    told = _cause(places, site, group, others, away)
    if told is not None:
        return Verdict(which, told[1], said.LIKELY, away, told[0])
    if group.way is not None and _off_way(points, site, group, far):
        return _named(places, site, group, which)
    if not far:
        return None
    if away.min() > _ONE_SITE:
        return Verdict(which, Reason.STRAY, said.TOO_FAR, away)
    return Verdict(which, Reason.FAR_OFF, said.FAR_OFF, away)


def _zeros(places: Places, which: np.ndarray, away: np.ndarray, far: bool) -> bool:
    """Whether coordinates of exactly zero are no place: on the Earth never, on a local grid far from the others."""
    if not far or not causes.zero(places, which).all():
        return False
    whole = (places.first[which] == 0) & (places.second[which] == 0)
    return places.real or bool(away.min() > _ORIGIN) or bool((whole & (places.height[which] == 0)).all())


def _cause(
    places: Places, site: Site, group: _Suspect, others: _Others, away: np.ndarray
) -> Optional[Tuple[Text, Reason]]:
    """The likely cause, where one reading brings all points of a group among the others, or to their neighbours."""
    which, way = site.index[group.at], group.way
    near = max(_AMONG, _AMONG_STEPS * site.usual)
    beside = np.empty((0, 2))
    if way is not None:
        beside = site.order.xy[[k for k in (way.before, way.after) if k >= 0]]

    def fits(xy: np.ndarray, height: np.ndarray) -> np.ndarray:
        gap = _least(xy, beside) if len(beside) else others.away(xy)
        return np.asarray((gap < near) & (5 * gap < away) & others.likely(height))

    return causes.cause_of(places, which, fits)


def _off_way(points: PointSet, site: Site, group: _Suspect, far: bool) -> bool:
    """Whether the walk cannot have gone there: by the time it took, or because it stores a point every step.

    Without times that can be told only where the walk goes on as if nothing had been: a base comes first or last, and
    between two parts of a site there may be points far apart.
    """
    way, order = group.way, site.order
    assert way is not None
    if order.time is not None:
        return far or (way.back and order.walk)
    if not way.back or not (far or len(group.at) <= _HOP):
        return False
    beside = [site.index[order.index[k]] for k in (way.before, way.after)]
    return all(any(same_kind(points, i, int(j)) for j in beside) for i in site.index[group.at].tolist())


def _named(places: Places, site: Site, group: _Suspect, which: np.ndarray) -> Verdict:
    """The distance told is that to the points recorded before and after."""
    way, order = group.way, site.order
    assert way is not None
    beside = order.xy[[k for k in (way.before, way.after) if k >= 0]]
    xy = site.xy[group.at]
    gap = _least(xy, beside)
    if way.back and not places.degrees:
        near = float(np.hypot(*(beside[1] - beside[0]))) + site.usual
        if causes.wrong_digit(xy - beside.mean(axis=0), near):
            return Verdict(which, Reason.STRAY, said.LIKELY, gap, causes.DIGIT)
    if order.time is not None:
        return Verdict(which, Reason.STRAY, said.TOO_FAST, gap)
    return Verdict(which, Reason.STRAY, said.OFF_WAY, gap, step=site.usual)


def _least(xy: np.ndarray, beside: np.ndarray) -> np.ndarray:
    """How far (k,) places (k, 2) are from the nearest of a few (b, 2), metres."""
    return np.asarray(np.hypot(*(xy[:, None] - beside).transpose(2, 0, 1)).min(axis=1))
