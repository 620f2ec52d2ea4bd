"""Islands: raised ground so small that passes go up on it and down from it again, and the kerb around it.

Each side of an island is crossed by few passes, too few to tell of a line. But a pass that goes up where its
neighbours do, and down again where they do, tells at both ends. All such passes of an island make one ring together.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Optional, Tuple

import numpy as np
from matplotlib.path import Path
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components
from scipy.spatial import ConvexHull, QhullError, cKDTree

from .candidates import STEP, Candidates
from .chains import alike, density
from .courses import Course
from .island_shape import Outline, fit_outline
from .nodes import Nodes, join_nodes, no_gates
from .passes import Passes
from .plane import segments_cross
from .readings import Blocks, Stretches, crossings, gates_near

#: Ways over an island are so long (m); so many candidates between, each so much lower (share), are none of it.
SHORTEST, LONGEST, BETWEEN, LOWER = 0.9, 20.0, 2, 0.6
#: Neighbouring ways lie so far apart at most (m), run along each other (cosine) and overlap (share of the shorter).
APART, PARALLEL, OVERLAP = 6.0, 0.7, 0.4
#: So many ways make an island, and no more; and so many at most hang together before it is asked what lies between.
LEAST, MOST, TOGETHER = 3, 40, 200
#: Nodes lie so near (m) to the hull of all; of the others so large a share makes it no island.
OFF, STRAYS = 0.5, 0.25
#: Ends of a way are foretold within so many metres in all; a like size halves the chance; most decades of a way.
WINDOW, LIKE, MOST_TOLD = 1.0, 0.5, 4.0
#: Points so near (m) to an island tell its outline; nodes so near (m) to each other on it are one.
ABOUT, SAME = 3.0, 0.3
#: So many ways give the shape and tell nothing; what a choice of the first costs, as for a line;
#: decades from which an outline is asked for.
SHAPE, STARTS, ASKED = 1, 8.0, 4.0


@dataclass(frozen=True)
class Ways:
    """w ways over raised ground: ``up, down`` (w,) numbers of candidates; ``leg`` (w,) the pass."""

    up: np.ndarray
    down: np.ndarray
    leg: np.ndarray

    def __len__(self) -> int:
        return len(self.up)


def with_islands(
    passes: Passes, noise: np.ndarray, blocks: Blocks, found: Candidates, nodes: Nodes, courses: List[Course]
) -> Tuple[Nodes, List[Course], np.ndarray]:
    """Nodes and courses with islands in the place of what are parts of them; and the evidence (lines,) of the islands,
    -inf for other courses.

    ``nodes``: the first of them are the candidates ``found``.
    """
    ways = _ways(passes, found)
    pairs = _neighbours(passes, blocks, found, nodes, ways)
    rarity = -2 * np.log10(np.maximum(density(found, float(passes.s[-1])), 1e-9) * WINDOW * LIKE)
    parts, islands, told, gone = [nodes], [], [], []
    number = len(nodes)
    for group in _groups(len(ways), pairs):
        kept = _agreeing(found, ways, group)
        if len(np.unique(ways.leg[kept])) < LEAST or len(kept) < (1 - STRAYS) * len(group):
            continue
        weaker = np.minimum(rarity[ways.up[kept]], rarity[ways.down[kept]])
        each = np.sort(np.clip(weaker, 0.0, MOST_TOLD))[: len(kept) - SHAPE]
        evidence = float(each.sum()) - float(np.log10(STARTS * len(ways)))
        drawn = _drawn(passes, noise, blocks, found, ways, kept) if evidence >= ASKED else None
        if drawn is None:
            continue
        own, courses_of, within = drawn
        parts.append(own)
        islands += [Course(number + course.nodes, course.closed) for course in courses_of]
        told += [evidence] * len(courses_of)
        gone.append(within)
        number += len(own)
    if not islands:
        return nodes, courses, np.full(len(courses), -np.inf)
    rest = _without(courses, len(nodes), np.concatenate(gone))
    return join_nodes(parts), rest + islands, np.append(np.full(len(rest), -np.inf), told)


def _without(courses: List[Course], n: int, gone: np.ndarray) -> List[Course]:
    """The courses without the nodes ``gone`` of all ``n``, cut there; and without those of which little is left."""
    taken = np.zeros(n, bool)
    taken[gone] = True
    result: List[Course] = []
    for course in courses:
        there = ~taken[course.nodes]
        if there.all():
            result.append(course)
            continue
        k = course.nodes
        if course.closed:  # it starts after what is gone
            first = int(np.flatnonzero(~there)[0])
            k, there = np.roll(k, -first), np.roll(there, -first)
        piece = np.cumsum(~there)
        for number in np.unique(piece[there]):
            part = k[there & (piece == number)]
            if len(part) >= 3:
                result.append(Course(part))
    return result


def _ways(passes: Passes, found: Candidates) -> Ways:
    """The ways on which the ground rises by a step and falls by a like one, nothing like them between."""
    steps = np.flatnonzero(found.kind == STEP)
    size, leg = found.size[steps], passes.leg[found.gate[steps]]
    parts = []
    free = np.ones(len(steps), bool)
    for shift in range(1, BETWEEN + 2):
        i = np.arange(max(len(steps) - shift, 0))
        j = i + shift
        least = np.minimum(size[i], -size[j])
        good = (leg[i] == leg[j]) & (least > 0) & free[i] & free[j]
        for between in range(1, shift):
            good &= np.abs(size[i + between]) < LOWER * least
        a, b = steps[i[good]], steps[j[good]]
        long = np.hypot(found.x[b] - found.x[a], found.y[b] - found.y[a])
        fit = (long > SHORTEST) & (long < LONGEST) & alike(found, a, b)
        free[i[good][fit]] = False
        free[j[good][fit]] = False
        parts.append((a[fit], b[fit]))
    up, down = (np.concatenate(column) for column in zip(*parts))
    return Ways(up, down, passes.leg[found.gate[up]])


def _neighbours(passes: Passes, blocks: Blocks, found: Candidates, nodes: Nodes, ways: Ways) -> np.ndarray:
    """Pairs (p, 2) of ways that cross, or run beside each other with no other pass between."""
    if len(ways) < 2:
        return np.empty((0, 2), np.int64)
    a = np.column_stack([found.x[ways.up], found.y[ways.up]])
    b = np.column_stack([found.x[ways.down], found.y[ways.down]])
    middle = (a + b) / 2
    pairs = cKDTree(middle).query_pairs(APART + 2.0, output_type="ndarray")
    i, j = pairs.T
    good = (
        (ways.leg[i] != ways.leg[j]) & alike(found, ways.up[i], ways.up[j]) & alike(found, ways.down[i], ways.down[j])
    )
    i, j = i[good], j[good]
    cross = segments_cross(a[i], b[i], a[j], b[j])
    beside = ~cross & _beside(a, b, i, j)
    some = np.flatnonzero(cross | beside)
    some = some[_few_together(len(ways), i[some], j[some])]
    i, j, cross = i[some], j[some], cross[some]
    apart = np.flatnonzero(~cross)
    apart = apart[_passed_between(passes, blocks, found, nodes, ways, middle, i[apart], j[apart])]
    keep = np.ones(len(i), bool)
    keep[apart] = False
    return np.column_stack([i[keep], j[keep]])


def _beside(a: np.ndarray, b: np.ndarray, i: np.ndarray, j: np.ndarray) -> np.ndarray:
    """Mask of the pairs of ways from ``a`` to ``b`` that run beside each other."""
    way = b - a
    long = np.hypot(way[:, 0], way[:, 1])
    unit = way / long[:, None]
    straight = np.abs((unit[i] * unit[j]).sum(axis=1)) > PARALLEL
    off_a, off_b = a[j] - a[i], b[j] - a[i]
    run = [(off * unit[i]).sum(axis=1) for off in (off_a, off_b)]
    overlap = np.minimum(np.maximum(*run), long[i]) - np.maximum(np.minimum(*run), 0)
    aside = [unit[i, 0] * off[:, 1] - unit[i, 1] * off[:, 0] for off in (off_a, off_b)]
    away = np.abs(aside[0] + aside[1]) / 2
    result: np.ndarray = straight & (overlap > OVERLAP * np.minimum(long[i], long[j])) & (away < APART)
    return result


def _passed_between(
    passes: Passes, blocks: Blocks, found: Candidates, nodes: Nodes, ways: Ways, middle: np.ndarray, i: np.ndarray,
    j: np.ndarray,
) -> np.ndarray:  # fmt: skip
    """Mask of the pairs of ways between whose middles a pass goes that is on no way there."""
    n = len(i)
    result = np.zeros(n, bool)
    if not n:
        return result
    zero = np.zeros(n)
    where = Stretches(middle[i], middle[j], np.arange(n), np.column_stack([ways.up[i], ways.up[j]]), zero, zero, zero)
    link, gate, _ = crossings(passes, blocks, nodes, where)
    start, end = found.gate[ways.up], found.gate[ways.down]
    order = np.argsort(start, kind="stable")
    last = np.searchsorted(start[order], gate, side="right") - 1
    on_way = (last >= 0) & (end[order[np.maximum(last, 0)]] >= gate)
    result[link[~on_way]] = True
    return result


def _few_together(n: int, i: np.ndarray, j: np.ndarray) -> np.ndarray:
    """Mask of the pairs of ways that are not of a long strip: with all that they hang together with they are few."""
    if not len(i):
        return np.zeros(0, bool)
    label = _hanging_together(n, i, j)
    result: np.ndarray = np.bincount(label)[label[i]] <= TOGETHER
    return result


def _hanging_together(n: int, i: np.ndarray, j: np.ndarray) -> np.ndarray:
    """Number (n,) of the group of ways that each is in; ``i`` and ``j`` (p,) hang together."""
    graph = coo_matrix((np.ones(len(i)), (i, j)), shape=(n, n))
    label: np.ndarray = connected_components(graph, directed=False)[1]
    return label


def _groups(n: int, pairs: np.ndarray) -> List[np.ndarray]:
    """Ways (numbers) of each island."""
    if not len(pairs):
        return []
    label = _hanging_together(n, *pairs.T)
    count = np.bincount(label)
    order = np.argsort(label, kind="stable")
    end = np.cumsum(count)
    some = np.flatnonzero((count >= LEAST) & (count <= MOST))
    return [order[end[k] - count[k] : end[k]] for k in some.tolist()]


def _drawn(
    passes: Passes, noise: np.ndarray, blocks: Blocks, found: Candidates, ways: Ways, kept: np.ndarray
) -> Optional[Tuple[Nodes, List[Course], np.ndarray]]:
    """Nodes along the outline of an island, its kerb (a ring, or the sides of an island whose ends no pass shows), and
    the candidates that lie on it or within; None where no outline fits.
    """
    k = np.append(ways.up[kept], ways.down[kept])
    ring = np.column_stack([found.x[k], found.y[k]])
    rise = float(np.median(np.abs(found.size[k])))
    middle = ring.mean(axis=0)
    reach = float(np.hypot(*(ring - middle).T).max()) + ABOUT
    point = np.unique(gates_near(blocks, middle[None], np.array([reach]))[1])
    xy = np.column_stack([passes.x[point], passes.y[point]])
    near = np.hypot(*(xy - middle).T) < reach
    near[near] = away_from(ring, xy[near]) < ABOUT
    outline = fit_outline(xy[near], passes.z[point[near]], noise[point[near]], ring, rise)
    if outline is None:
        return None
    off = np.abs(outline.away(ring))
    if np.mean(off > OFF) > STRAYS or abs(outline.rise - rise) > 0.5 * rise:
        return None
    steps = np.flatnonzero(found.kind == STEP)
    within = steps[outline.away(np.column_stack([found.x[steps], found.y[steps]])) > -OFF]
    own, way = _nodes(passes, found, outline, k, np.tile(kept, 2), rise)
    courses = _courses(way)
    return (own, courses, within) if courses else None


def _nodes(
    passes: Passes, found: Candidates, outline: Outline, k: np.ndarray, way: np.ndarray, rise: float
) -> Tuple[Nodes, np.ndarray]:
    """Nodes along the outline, counterclockwise: abreast of the candidates ``k``, and where it turns; and the way (n,)
    that shows each, -1 for none."""
    corners = outline.vertices()
    run, place = _abreast(corners, np.column_stack([found.x[k], found.y[k]]))
    link = np.hypot(*(np.roll(corners, -1, axis=0) - corners).T)
    turns = np.cumsum(link) - link
    whole = float(link.sum())
    gap = np.abs(turns[:, None] - run)
    free = np.minimum(gap, whole - gap).min(axis=1) > SAME
    xy = np.vstack([place, corners[free]])
    order = np.argsort(np.append(run, turns[free]), kind="stable")
    xy, way = xy[order], np.append(way, np.full(int(free.sum()), -1))[order]
    like = k[cKDTree(np.column_stack([found.x[k], found.y[k]])).query(xy)[1]]
    n = len(xy)
    ahead, behind = np.roll(xy, -1, axis=0), np.roll(xy, 1, axis=0)
    along = (ahead - behind) / np.maximum(np.hypot(*(ahead - behind).T), 1e-9)[:, None]
    foot, up, var = outline.heights(xy)
    edges, chance = no_gates(n)
    point = found.gate[like]
    return Nodes(
        kind=np.full(n, STEP), x=xy[:, 0], y=xy[:, 1], ex=-along[:, 1], ey=along[:, 0], size=np.full(n, rise),
        t=np.full(n, 5.0), sigma=outline.sigma(xy), sided=np.ones(n, bool), edges=edges, chance=chance,
        leg=passes.leg[point], point=point, other=np.minimum(point + 1, len(passes) - 1), along=np.zeros(n, bool),
        decades=np.zeros(n), fine=np.ones(n, bool), height=foot, height_var=var, rise=up,
    ), way  # fmt: skip


def _abreast(corners: np.ndarray, xy: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Metres (n,) along a closed path abreast of places, and the places (n, 2) on it."""
    link = np.roll(corners, -1, axis=0) - corners
    long = np.hypot(link[:, 0], link[:, 1])
    gap = xy[:, None] - corners
    share = np.clip((gap * link).sum(axis=2) / np.maximum(long, 1e-9) ** 2, 0, 1)
    away = np.hypot(*np.moveaxis(gap - share[:, :, None] * link, 2, 0))
    nearest = away.argmin(axis=1)
    row = np.arange(len(xy))
    part = share[row, nearest]
    run: np.ndarray = (np.cumsum(long) - long)[nearest] + part * long[nearest]
    return run, corners[nearest] + part[:, None] * link[nearest]


def _courses(way: np.ndarray) -> List[Course]:
    """The ring of nodes in order, or its sides: open where both ends of one way follow each other."""
    shown = np.flatnonzero(way >= 0)
    ahead = np.roll(shown, -1)
    opens = np.flatnonzero(way[shown] == way[ahead])
    n = len(way)
    if not len(opens):
        return [Course(np.arange(n), True)]
    result = []
    for one, other in zip(opens.tolist(), np.roll(opens, -1).tolist()):
        start, end = int(ahead[one]), int(shown[other])
        part = (start + np.arange((end - start) % n + 1)) % n
        if np.count_nonzero(way[part] >= 0) >= 3:
            result.append(Course(part))
    return result


def _agreeing(found: Candidates, ways: Ways, group: np.ndarray) -> np.ndarray:
    """The ways of a group whose ends lie on the hull of all, without those that spoil it."""
    kept = group
    for _ in range(3):
        off = _off(found, ways, kept)
        if off <= 0 or len(kept) <= LEAST:
            break
        without = [_off(found, ways, np.delete(kept, i)) for i in range(len(kept))]
        best = int(np.argmin(without))
        kept = np.delete(kept, best)
    return kept if _off(found, ways, kept) <= 0 else kept[:0]


def _off(found: Candidates, ways: Ways, kept: np.ndarray) -> float:
    """By how much (m) all the ends of ways together lie too far off their hull."""
    k = np.append(ways.up[kept], ways.down[kept])
    xy = np.column_stack([found.x[k], found.y[k]])
    try:
        hull = xy[ConvexHull(xy).vertices]
    except QhullError:  # all on one line
        return float("inf")
    off = np.hypot(*(_abreast(hull, xy)[1] - xy).T)
    return float(np.maximum(off - OFF, 0).sum())


def away_from(ring: np.ndarray, xy: np.ndarray) -> np.ndarray:
    """How far (n,) places lie outside the hull of a ring, metres; 0 within."""
    hull = ring[ConvexHull(ring).vertices]
    inside = Path(hull).contains_points(xy)
    away = np.hypot(*(_abreast(hull, xy)[1] - xy).T)
    return np.where(inside, 0.0, away)
