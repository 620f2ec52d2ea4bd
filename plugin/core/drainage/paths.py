"""Paths of steepest descent, many at a time, and arrows of the way of water."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Optional, Sequence

import numpy as np

from ..progress import Progress, silent
from ..surface.ask import slope_and_aspect
from ..surface.locate import heights_in, locate
from ..surface.tin import Tin
from .flow import Flow, Passages
from .level_ground import mean_gradients
from .rings import inside
from .steps import SNAP, Ends, PathEnd, State, begin_at, no_ends, note_ends, place_of, snapped, steps


@dataclass(frozen=True)
class FlowPaths:
    """k paths, in the order of their starts.

    ``xyz``: (p, 3) float64, metres from ``origin`` in plan, and height; path i is ``xyz[start[i]:start[i + 1]]``.
    ``end``: (k,) int8 ``PathEnd``. ``vertex``: (k,) int64 the pit or the vertex of the rim, -1 where it leaves
    over a rim edge or isn't at a vertex. ``inlet``: (k,) int64 number of the inlet, -1 none.
    """

    xyz: np.ndarray
    start: np.ndarray
    end: np.ndarray
    vertex: np.ndarray
    inlet: np.ndarray
    origin: np.ndarray

    def __len__(self) -> int:
        return len(self.end)

    def path(self, i: int) -> np.ndarray:
        """Places (q, 3) of path i: easting, northing, height in metres of the CRS."""
        xyz = self.xyz[self.start[i] : self.start[i + 1]].copy()
        xyz[:, :2] += self.origin
        return xyz

    @property
    def length(self) -> np.ndarray:
        """Length in plan (k,) of each path, metres."""
        step = np.hypot(*np.diff(self.xyz[:, :2], axis=0).T)
        total = np.append(np.append(0.0, np.cumsum(step)), 0.0)
        last = np.maximum(self.start[1:] - 1, 0)
        return np.where(np.diff(self.start) > 0, total[last] - total[np.minimum(self.start[:-1], last)], 0.0)


def trace_paths(
    flow: Flow, xy: np.ndarray, passages: Optional[Passages] = None, progress: Progress = silent
) -> FlowPaths:
    """Follow water from places ``xy`` (k, 2), metres of the CRS, to a pit, the rim or an inlet.

    A path that comes to the rim ends there; one that begins at a vertex of the rim with a way down the surface takes
    it. The rules are those of :mod:`.flow`. ``passages``: pits at which paths do not end but go straight to the saddle
    of the hollow and on, see ``Ponds.passages``. ``progress`` is called with stage ``"paths"``.
    """
    xy = np.asarray(xy, float).reshape(-1, 2)
    triangle = locate(flow.tin, xy)
    on = np.flatnonzero(triangle >= 0)
    local, triangle = xy[on] - flow.tin.origin, triangle[on]
    trace = _Trace(flow, len(xy))
    trace.ended.end[:] = PathEnd.OUTSIDE
    trace.pass_by(on, np.column_stack([local, heights_in(flow.tin, triangle, local)]))
    state, ends = begin_at(flow, triangle, local)
    note_ends(trace.ended, on, ends)
    going = np.flatnonzero(ends.end < 0)
    trace.follow(on[going], state.take(going))
    while passages is not None:
        pit = trace.ended.vertex
        held = np.flatnonzero((trace.ended.end == PathEnd.PIT) & (pit >= 0))
        held = held[passages.to[pit[held]] >= 0]
        if len(held) == 0:
            break
        progress(1 - len(held) / len(on), "paths")
        trace.pass_by(held, flow.tin.vertices[passages.saddle[pit[held]]])
        none = np.full(len(held), -1, np.int64)
        state = State(passages.to[pit[held]], none, np.zeros(len(held)))
        trace.ended.vertex[held] = -1
        trace.follow(held, state)
    return _assembled(flow.tin, np.concatenate(trace.numbers), np.concatenate(trace.places), trace.ended)


class _Trace:
    """Paths in the making: the places they pass and their ends."""

    def __init__(self, flow: Flow, count: int) -> None:
        self.flow, self.ended = flow, no_ends(count)
        self.numbers: List[np.ndarray] = []
        self.places: List[np.ndarray] = []

    def pass_by(self, number: np.ndarray, place: np.ndarray) -> None:
        self.numbers.append(number)
        self.places.append(place)

    def follow(self, number: np.ndarray, state: State) -> None:
        """Follow paths ``number`` (q,) from ``state`` to their ends."""
        state = snapped(self.flow, state)
        self.pass_by(number, place_of(self.flow, state))
        for active, after, ends in steps(self.flow, number, state):
            note_ends(self.ended, active, ends)
            moved = np.flatnonzero(ends.end < 0)
            self.pass_by(active[moved], place_of(self.flow, after.take(moved)))


def along_lines(lines: Sequence[np.ndarray], spacing: float) -> np.ndarray:
    """Places (k, 2) along lines, each (q, 2), every ``spacing`` metres from their beginnings, and their ends."""
    places = [np.empty((0, 2))]
    for line in lines:
        line = np.asarray(line, float).reshape(len(line), -1)[:, :2]
        if len(line) == 0:
            continue
        at = np.append(0.0, np.cumsum(np.hypot(*np.diff(line, axis=0).T)))
        stations = np.append(np.arange(0.0, at[-1] * (1 - 1e-12), spacing), at[-1])
        places.append(np.column_stack([np.interp(stations, at, line[:, axis]) for axis in (0, 1)]))
    return np.concatenate(places)


def in_polygons(polygons: Sequence[Sequence[np.ndarray]], spacing: float) -> np.ndarray:
    """Places (k, 2) of a square grid of ``spacing`` metres inside polygons, each a list of rings (q, 2).

    The grid passes through whole multiples of the spacing, so that neighbouring polygons share it.
    """
    places = [np.empty((0, 2))]
    for rings in polygons:
        outer = np.concatenate([np.asarray(ring, float)[:, :2] for ring in rings])
        low, high = np.ceil(outer.min(axis=0) / spacing), np.floor(outer.max(axis=0) / spacing)
        axes = [np.arange(low[axis], high[axis] + 1) * spacing for axis in (0, 1)]
        grid = np.stack(np.meshgrid(*axes), axis=-1).reshape(-1, 2)
        places.append(grid[inside(grid, rings)])
    return np.unique(np.concatenate(places), axis=0)


@dataclass(frozen=True)
class FlowArrows:
    """``xy``: (k, 2) metres of the CRS; ``direction``: (k,) degrees clockwise from grid north, the way down;
    ``slope``: (k,) fall over run."""

    xy: np.ndarray
    direction: np.ndarray
    slope: np.ndarray


def flow_arrows(tin: Tin, spacing: float, window: float = 0.0) -> FlowArrows:
    """The way down and the slope at the places of a square grid of ``spacing`` metres; none on level ground.

    ``window``: metres over which the gradient is averaged, as for ``level_ground.mean_gradients``; 0 takes that of
    the triangle alone, which in a dense survey is much the noise of its points.
    """
    west, south, east, north = tin.bounds
    ring = np.array([[west, south], [east, south], [east, north], [west, north]])
    xy = in_polygons([[ring + spacing * np.sign(ring - ring.mean(axis=0))]], spacing)
    triangle = locate(tin, xy)
    xy, triangle = xy[triangle >= 0], triangle[triangle >= 0]
    slope, aspect = slope_and_aspect(mean_gradients(tin, window)[triangle])
    some = np.flatnonzero(slope > 0)
    return FlowArrows(xy[some], aspect[some], slope[some])


def _assembled(tin: Tin, number: np.ndarray, place: np.ndarray, ends: Ends) -> FlowPaths:
    """Paths from the places of all steps in order, without places that come twice."""
    order = np.argsort(number, kind="stable")
    number, place = number[order], place[order]
    far = np.hypot(*np.diff(place[:, :2], axis=0).T) >= SNAP
    keep = np.append(True, far | (np.diff(number) != 0))[: len(number)]
    start = np.append(0, np.cumsum(np.bincount(number[keep], minlength=len(ends.end))))
    return FlowPaths(place[keep], start, ends.end.astype(np.int8), ends.vertex, ends.inlet, tin.origin)
