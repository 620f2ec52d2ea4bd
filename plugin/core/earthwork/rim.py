"""The rims of a platform, and the slopes that each of their edges has."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Optional, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from .polygons import clip
from .side_slopes import SideSlopes

SLOPES_CHANGE = Text(
    "earthwork.slopes_change",
    QT_TRANSLATE_NOOP(
        "core",
        "The slopes of two edges differ near E {easting:.3f} N {northing:.3f}, where the edges meet at an angle too "
        "flat for the slopes to meet. Let the slope change at a sharper corner.",
    ),
)
SLOPES_PASS = Text(
    "earthwork.slopes_pass",
    QT_TRANSLATE_NOOP(
        "core",
        "The slope of the edge near E {easting:.3f} N {northing:.3f} would run across the platform itself, and slopes "
        "of several grades were asked for. Give this outline one slope, or grade its arms as platforms of their own.",
    ),
)

_LEAST_TURN = np.radians(20.0)  # of an outward corner at which a slope may change
_LEAST_COSINE = 0.3  # between the line where two slopes meet and the edges' normals, at an inward corner


@dataclass(frozen=True)
class Rim:
    """One ring of a platform's outline.

    ``ring``: (k, 3) in the CRS, not closed, the platform on its left: counter-clockwise for the outline,
    clockwise for a hole. Edge i goes from corner i to the next. ``sloped``: (k,) whether slopes run from each edge.
    ``runs``: (k, 2) metres out for each metre of cut and of fill, nan for the usual; None: all the usual.
    """

    ring: np.ndarray
    sloped: np.ndarray
    runs: Optional[np.ndarray] = None

    def edge_runs(self, usual: SideSlopes) -> np.ndarray:
        """Runs (k, 2) of cut and of fill of each edge."""
        own = np.full((len(self.ring), 2), np.nan) if self.runs is None else np.asarray(self.runs, float)
        result: np.ndarray = np.where(np.isnan(own), [usual.cut_run, usual.fill_run], own)
        for cut, fill in result.tolist():
            SideSlopes(cut, fill)  # refuses what cannot be graded
        return result


def most_slopes(rims: Tuple[Rim, ...], usual: SideSlopes) -> SideSlopes:
    """The flattest slopes of all rims."""
    cut, fill = np.vstack([rim.edge_runs(usual) for rim in rims]).max(axis=0).tolist()
    return SideSlopes(cut, fill, usual.corner)


def check_changes(rim: Rim, usual: SideSlopes, reach: float) -> None:
    """Refuse (SurveyError) slopes of several grades where they cannot meet, or run across the platform.

    Where all are alike the one reached first counts, which is right everywhere; where they differ a flat slope that has
    passed under the platform would count beyond it.
    """
    runs = rim.edge_runs(usual)
    if np.ptp(runs, axis=0).max() <= 1e-9:
        return
    ring = rim.ring[:, :2] - rim.ring[:, :2].min(axis=0)
    ahead = np.roll(ring, -1, axis=0) - ring
    along = ahead / np.hypot(*ahead.T)[:, None]
    normal = np.column_stack([along[:, 1], -along[:, 0]])
    for i in np.flatnonzero(rim.sloped & np.roll(rim.sloped, 1)):
        before = i - 1
        if np.any(np.abs(runs[before] - runs[i]) > 1e-9) and not _can_meet(along, normal, runs, before, i):
            _refuse(SLOPES_CHANGE, rim.ring[i])
    passing = _passing(ring, ahead, normal, rim.sloped, reach)
    if passing is not None:
        _refuse(SLOPES_PASS, (rim.ring[passing] + rim.ring[(passing + 1) % len(ring)]) / 2)


def _refuse(text: Text, place: np.ndarray) -> None:
    raise SurveyError(text, easting=float(place[0]), northing=float(place[1]))


def _can_meet(along: np.ndarray, normal: np.ndarray, runs: np.ndarray, before: int, after: int) -> bool:
    turn = float(np.arctan2(along[before, 0] * along[after, 1] - along[before, 1] * along[after, 0],
                            along[before] @ along[after]))  # fmt: skip
    if turn > 0:
        return turn >= _LEAST_TURN
    for grades in (1 / runs[[before, after]]).T:  # of cut, then of fill; for level edges
        difference = grades[1] * normal[after] - grades[0] * normal[before]
        line = np.array([-difference[1], difference[0]])
        line *= np.sign(line @ (normal[before] + normal[after])) / max(float(np.hypot(*line)), 1e-300)
        if min(line @ normal[before], line @ normal[after]) <= _LEAST_COSINE:
            return False
    return True


def _passing(
    ring: np.ndarray, ahead: np.ndarray, normal: np.ndarray, sloped: np.ndarray, reach: float
) -> Optional[int]:
    """An edge whose strip of slope, ``reach`` metres wide, leaves the platform again through another edge."""
    length = np.hypot(*ahead.T)
    after = np.roll(ring, -1, axis=0)
    for i in np.flatnonzero(sloped):
        leaves = np.flatnonzero(normal @ normal[i] > 1e-9)
        leaves = leaves[leaves != i]
        x, y = np.stack([ring[leaves, 0], after[leaves, 0]], 1), np.stack([ring[leaves, 1], after[leaves, 1]], 1)
        along = ((x - ring[i, 0]) * ahead[i, 0] + (y - ring[i, 1]) * ahead[i, 1]) / length[i]
        out = (x - ring[i, 0]) * normal[i, 0] + (y - ring[i, 1]) * normal[i, 1]
        along, out = clip(along - 1e-4, along, out)
        along, out = clip(length[i] - 1e-4 - along, along, out)
        along, out = clip(out - 1e-4, along, out)
        along, out = clip(reach - out, along, out)
        if len(leaves) and np.any(np.hypot(np.ptp(along, axis=1), np.ptp(out, axis=1)) > 1e-4):
            return int(i)
    return None
