"""Ponds: hollows filled to the brim, how they nest, and which of them the noise of the survey makes.

A pond's level is the height at which water finds a way out: over a saddle into another hollow that is not yet full,
or off the rim, or into an inlet. When two ponds come to the saddle between them both are full, spill into each
other and rise on as one, their parent. Only hollows that the noise of the heights does not explain count
as ponds; of two that join of which only one counts, that one takes the other in.

Chance. Level ground measured with independent errors of standard deviation sigma is full of hollows too. By simulation
(the test of this module repeats it) the vertices under water in a hollow lie on average ``_NOISE_DEPTH`` sigma below
its brim or less, and this mean of k vertices scatters by less than ``_NOISE_SCATTER`` sigma / sqrt(k). From the normal
distribution follows how probable a mean depth as great as the pond's is in one hollow of noise. In a gutter one height
too high is a dam: that the brim is too high by the mean depth, or by the depth of the pit with the pit's own error, is
the more improbable the more vertices of it lie within sigma of the lowest; ``_BRIM`` of them count as one, which in
simulated gutters keeps dams of noise out. The greater of the two probabilities counts; ``chance`` is that of at
least one such among as many hollows as the survey has. Errors that neighbours share (one bad fix over a minute) make
wider hollows than this allows for, and ``min_depth`` is there for those.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Tuple, Union

import numpy as np
from scipy.special import ndtr

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..progress import Progress, silent
from ..surface.filling import Filling, last_shut_node, lowest_vertices
from ..surface.tin import Tin
from .filling import brim_counts, fill_ground, passages_over
from .flow import Flow, Passages
from .steps import PathEnd, follow_vertices

_NOISE_DEPTH, _NOISE_SCATTER, _BRIM = 0.8, 0.8, 3.0

BAD_POND_OPTIONS = Text(
    "bad_pond_options",
    QT_TRANSLATE_NOOP(
        "core",
        "{name} is {value}: ponds need a standard deviation and a least depth of 0 m or more, "
        "and a chance between 0 and 1. Correct it.",
    ),
)


@dataclass(frozen=True)
class PondOptions:
    """``sigma``: standard deviation of heights, metres, one or (n,) for the vertices (nan: none known, as 0);
    ``min_depth``: metres; ``max_chance``: hollows that noise makes with a greater probability are no ponds."""

    sigma: Union[float, np.ndarray] = 0.0
    min_depth: float = 0.0
    max_chance: float = 0.05


@dataclass(frozen=True)
class Ponds:
    """k ponds, the deepest first.

    ``pit``, ``spill``: (k,) vertices, the lowest and the one over which water leaves; ``pit_xyz``, ``spill_xyz``:
    (k, 3) metres from ``origin``, and height. ``level``: (k,) height of the full pond; ``depth``: (k,) at the pit,
    metres; ``area``: (k,) m² of water; ``volume``: (k,) m³, exact on the TIN. ``vertices``: (k,) vertices under water.
    ``depth_sigma``: (k,) standard deviation of ``depth`` from those of pit and spill, metres.
    ``chance``: (k,) probability that noise alone makes such a hollow anywhere in the survey.
    ``parent``: (k,) pond it is a part of when that is full, -1 none. ``spills_to``: (k,) pond into which it spills
    first, -1 where it leaves the surface; ``spill_end``: (k,) ``PathEnd``: RIM, INLET (its number: ``inlet`` (k,)) or
    PIT, into a pond.
    ``node``: (k,) node of ``filling``.
    """

    pit: np.ndarray
    spill: np.ndarray
    pit_xyz: np.ndarray
    spill_xyz: np.ndarray
    level: np.ndarray
    depth: np.ndarray
    depth_sigma: np.ndarray
    area: np.ndarray
    volume: np.ndarray
    vertices: np.ndarray
    chance: np.ndarray
    parent: np.ndarray
    spills_to: np.ndarray
    spill_end: np.ndarray
    inlet: np.ndarray
    node: np.ndarray
    filling: Filling
    origin: np.ndarray

    def __len__(self) -> int:
        return len(self.pit)

    @property
    def outermost(self) -> np.ndarray:
        """Numbers of the ponds that are part of no other: together, all water that can stand."""
        return np.flatnonzero(self.parent < 0)

    def passages(self, flow: Flow, overflow: bool = False) -> Passages:
        """Ways out of all hollows of ``flow`` that do not count as ponds; with ``overflow``, of the ponds too."""
        return passages_over(flow, self.filling, flow.pits if overflow else np.setdiff1d(flow.pits, self.pit))

    def pond_of_nodes(self) -> np.ndarray:
        """The smallest pond (c,) that each node of ``filling`` is a part of, -1 none."""
        return _smallest_pond(self.filling, self.node)


def find_ponds(flow: Flow, options: PondOptions = PondOptions(), progress: Progress = silent) -> Ponds:
    """The ponds of ``flow.tin``; ``progress`` is called with stage ``"ponds"``.

    Raises SurveyError for options out of range.
    """
    sigma = _checked(flow.tin, options)
    progress(0.0, "ponds")
    filling = fill_ground(flow)
    progress(0.5, "ponds")
    at = _node_of_vertices(flow, filling)
    node, chance, count = _chosen(flow, filling, at, sigma, options)
    progress(0.7, "ponds")
    z, pit = flow.tin.vertices[:, 2], lowest_vertices(flow.rank, filling)[node]
    depth = z[filling.saddle[node]] - z[pit]
    order = np.lexsort((flow.rank[pit], z[filling.saddle[node]], -depth))
    node, pit, depth, chance, count = node[order], pit[order], depth[order], chance[order], count[order]
    spill = filling.saddle[node]
    parent, area, volume = _measured(flow, filling, at, node, z[spill])
    end, goes, inlet = _spills(flow, filling, node)
    progress(1.0, "ponds")
    return Ponds(
        pit, spill, flow.tin.vertices[pit], flow.tin.vertices[spill], z[spill], depth,
        np.hypot(sigma[pit], sigma[spill]), area, volume, count, chance, parent, goes, end, inlet, node,
        filling, flow.tin.origin,
    )  # fmt: skip


def noise_chance(
    mean_depth: np.ndarray, depth: np.ndarray, vertices: np.ndarray, brim: np.ndarray, sigma: np.ndarray
) -> np.ndarray:
    """Probability (k,) that noise of ``sigma`` (k,) makes one hollow as deep on average, see the module's text.

    ``mean_depth``, ``depth``: (k,) of its ``vertices`` (k,) under water and of its pit; ``brim``: (k,) vertices of the
    brim that are hardly higher than the lowest.
    """
    with np.errstate(divide="ignore", invalid="ignore"):
        level = ndtr(-(mean_depth / sigma - _NOISE_DEPTH) * np.sqrt(vertices) / _NOISE_SCATTER)
        dam = ndtr(-mean_depth / (sigma * np.sqrt(1 + 1 / vertices)))
        dam = np.minimum(dam, vertices * ndtr(-depth / (sigma * np.sqrt(2.0)))) ** np.maximum(brim / _BRIM, 1.0)
    chance: np.ndarray = np.where(sigma > 0, np.maximum(level, dam), np.where(mean_depth > 0, 0.0, 1.0))
    return chance


def _checked(tin: Tin, options: PondOptions) -> np.ndarray:
    sigma = np.nan_to_num(np.broadcast_to(np.asarray(options.sigma, float), (len(tin.vertices),)), nan=0.0)
    for name, value, fine in (
        ("sigma", float(sigma.min(initial=0.0)), bool(np.all((sigma >= 0) & np.isfinite(sigma)))),
        ("min_depth", options.min_depth, 0 <= options.min_depth < np.inf),
        ("max_chance", options.max_chance, 0 <= options.max_chance <= 1),
    ):
        if not fine:
            raise SurveyError(BAD_POND_OPTIONS, name=name, value=value)
    return sigma


# -------------------------------------------------------------------------------------------- the tree


def _node_of_vertices(flow: Flow, filling: Filling) -> np.ndarray:
    """The node (n,) of which each vertex becomes a part when the water reaches it."""
    node = filling.ground.copy()
    node[node < 0] = filling.grounds - 1  # in no triangle
    last = len(filling.parent) - 1
    z = flow.tin.vertices[:, 2]
    join = np.append(z, np.inf)[filling.saddle]
    jumps = [np.where(filling.parent < 0, last, filling.parent)]
    while np.any(jumps[-1] != last):
        jumps.append(jumps[-1][jumps[-1]])
    for jump in reversed(jumps):
        # Go up while the node left is still joined at or before the vertex: those passed are too, as joins rise.
        further = jump[node]
        passed = (join[node] <= z) & (join[further] <= z)
        node = np.where(passed, further, node)
    return np.where(join[node] <= z, jumps[0][node], node)


def _subtree_sums(filling: Filling, values: np.ndarray) -> np.ndarray:
    """Sums (c, q) of ``values`` (c, q) of each node and all its parts."""
    columns = []
    parent = filling.parent.tolist()
    for column in values.T:
        total = column.tolist()
        for child, node in enumerate(parent):
            if node >= 0:
                total[node] += total[child]
        columns.append(total)
    return np.array(columns).T


def _chosen(
    flow: Flow, filling: Filling, at: np.ndarray, sigma: np.ndarray, options: PondOptions
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Nodes (k,) that are ponds, their chances and numbers of vertices."""
    z, count = flow.tin.vertices[:, 2], len(filling.parent)
    used = np.flatnonzero(flow.used)
    base = float(z[used].min()) if len(used) else 0.0
    own = [np.bincount(at[used], weight, count) for weight in (np.ones(len(used)), z[used] - base, sigma[used] ** 2)]
    vertices, height, variance = _subtree_sums(filling, np.stack(own, axis=1)).T
    level = np.append(z, np.nan)[filling.saddle]
    depth = level - np.append(z, np.nan)[lowest_vertices(flow.rank, filling)]
    with np.errstate(invalid="ignore", divide="ignore"):
        spread = np.sqrt(variance / vertices)
        brim = brim_counts(flow, filling, sigma) if np.any(sigma > 0) else np.ones(count)
        single = noise_chance(level - base - height / vertices, depth, vertices, brim, spread)
    chance = -np.expm1((filling.grounds - 1) * np.log1p(-np.minimum(single, 1 - 1e-16)))
    chance[filling.open] = 1.0
    kept: List[int] = []
    best, parent, is_open = chance.tolist(), filling.parent.tolist(), filling.open.tolist()
    deep = ((depth > 0) & (depth >= options.min_depth)).tolist()
    counted: List[List[int]] = [[] for _ in parent]  # hollows that count among those that join to each node
    for child, node in enumerate(parent):
        if node < 0 or is_open[child]:
            continue
        if not is_open[node]:
            best[node] = min(best[node], best[child])
        if deep[child] and best[child] <= options.max_chance:
            counted[node].append(child)
    for node, hollows in enumerate(counted):
        if is_open[node] or len(hollows) > 1:  # a single one takes the others in and rises on
            kept.extend(hollows)
    node_array = np.array(kept, np.int64)
    return node_array, np.array(best)[node_array], vertices[node_array].astype(np.int64)


def _smallest_pond(filling: Filling, node: np.ndarray) -> np.ndarray:
    """The smallest of the ponds ``node`` (k,) that each node (c,) is a part of, -1 none."""
    pond = np.full(len(filling.parent), -1, np.int64)
    pond[node] = np.arange(len(node))
    found = pond.tolist()
    parent = filling.parent.tolist()
    for child in range(len(parent) - 1, -1, -1):
        if found[child] < 0 and parent[child] >= 0:
            found[child] = found[parent[child]]
    return np.array(found, np.int64)


# ------------------------------------------------------------------------------------- area and volume


def _measured(
    flow: Flow, filling: Filling, at: np.ndarray, node: np.ndarray, level: np.ndarray
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Parent pond (k,), area (k,) and volume (k,) of the ponds at nodes (k,), filled to ``level`` (k,)."""
    pond = _smallest_pond(filling, node)
    up = filling.parent[node]
    parent = np.where(up >= 0, pond[up], -1) if len(node) else up
    part = partly_under_water(flow, at, pond, parent, level)
    wet, held = wet_part(part.heights, part.plan_area, level[part.pond])
    k = len(node)
    area, volume = np.bincount(part.pond, wet, k), np.bincount(part.pond, held, k)
    covered = np.zeros(k)
    whole = np.flatnonzero(part.whole)
    covered += np.bincount(part.pond[whole], part.plan_area[whole], k)
    # Triangles wholly under water in a pond are so in its parents: a slab of water more on each.
    full_volume = np.bincount(part.pond[whole], held[whole], k)
    for child in np.argsort(node):  # parts before what they are part of, also where levels are equal
        over = parent[child]
        if over >= 0:
            rise = full_volume[child] + covered[child] * (level[over] - level[child])
            area[over] += covered[child]
            volume[over] += rise
            covered[over] += covered[child]
            full_volume[over] += rise
    return parent, area, volume


@dataclass(frozen=True)
class PartlyUnder:
    """Pairs of a ``triangle`` (q,) and a ``pond`` (q,) of which it holds water: all pairs in which it is partly dry,
    and for each triangle the smallest pond in which it is ``whole`` (q,) under water. ``heights``: (q, 3), rising;
    ``plan_area``: (q,) m²."""

    triangle: np.ndarray
    pond: np.ndarray
    whole: np.ndarray
    heights: np.ndarray
    plan_area: np.ndarray


def partly_under_water(
    flow: Flow, at: np.ndarray, pond: np.ndarray, parent: np.ndarray, level: np.ndarray
) -> PartlyUnder:
    """Triangles and ponds that meet; ``at``: (n,) node of each vertex, ``pond``: (c,) smallest pond of each node."""
    tin = flow.tin
    lowest = np.take_along_axis(tin.triangles, np.argmin(flow.rank[tin.triangles], axis=1)[:, None], axis=1)[:, 0]
    here = pond[at[lowest]]
    triangle = np.flatnonzero(here >= 0)
    now, top = here[triangle], tin.vertices[tin.triangles[triangle], 2].max(axis=1)
    pairs = []
    while len(triangle):
        whole = level[now] >= top
        pairs.append((triangle, now, whole))
        on = ~whole & (parent[now] >= 0)
        triangle, now, top = triangle[on], parent[now[on]], top[on]
    none = np.empty(0, np.int64)
    triangle, now, whole = (np.concatenate([p[i] for p in pairs]) if pairs else none for i in range(3))
    corner = tin.vertices[tin.triangles[triangle]]
    u, v = corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]
    plan = (u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]) / 2
    return PartlyUnder(triangle, now, whole.astype(bool), np.sort(corner[:, :, 2], axis=1), plan)


def members(flow: Flow, ponds: Ponds) -> PartlyUnder:
    """Triangles that hold water of ``ponds``, which were found on ``flow``."""
    at = _node_of_vertices(flow, ponds.filling)
    return partly_under_water(flow, at, ponds.pond_of_nodes(), ponds.parent, ponds.level)


def wet_part(heights: np.ndarray, plan_area: np.ndarray, level: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Area (q,) and volume (q,) of water that stands at ``level`` (q,) on triangles of ``heights`` (q, 3), rising."""
    low, mid, high = heights.T
    with np.errstate(divide="ignore", invalid="ignore"):
        corner = plan_area * (level - low) ** 2 / ((mid - low) * (high - low))
        dry = plan_area * (high - level) ** 2 / ((high - low) * (high - mid))
    whole = plan_area * ((level - low) + (level - mid) + (level - high)) / 3
    area = np.where(level <= mid, corner, plan_area - dry)
    volume = np.where(level <= mid, corner * (level - low) / 3, whole + dry * (high - level) / 3)
    area, volume = np.where(level >= high, plan_area, area), np.where(level >= high, whole, volume)
    none = level <= low
    return np.where(none, 0.0, area), np.where(none, 0.0, volume)


# --------------------------------------------------------------------------------------------- spilling


def _spills(flow: Flow, filling: Filling, node: np.ndarray) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Path end (k,), pond (k,) and inlet (k,) to which each pond spills."""
    pond, last_shut = _smallest_pond(filling, node), last_shut_node(filling)
    end, goes, inlet = (np.full(len(node), fill, np.int64) for fill in (int(PathEnd.RIM), -1, -1))
    active, at = np.arange(len(node)), node
    while len(active):
        to = filling.over[at]
        ends = follow_vertices(flow, np.where(to >= 0, to, filling.saddle[at]))
        end[active] = np.where(ends.end == PathEnd.UNDECIDED, int(PathEnd.PIT), ends.end)
        inlet[active] = ends.inlet
        stays = np.flatnonzero((ends.end == PathEnd.PIT) & (ends.vertex >= 0))
        ground = filling.ground[ends.vertex[stays]]
        goes[active[stays]] = pond[ground]
        on = stays[pond[ground] < 0]  # a hollow that does not count: over its brim
        active, at = active[on], last_shut[filling.ground[ends.vertex[on]]]
    return end, goes, inlet
