"""What passes tell where they cross a line, or its continuation, and no candidate was found: a weak step or none."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import chain
from typing import List, Tuple

import numpy as np
from scipy.spatial import cKDTree

from .candidates import STEP, Candidates
from .courses import Course, Listed, ends_of, listed
from .gates import gate_chances
from .groups import group_median, group_quantile, neighbours
from .jumps import Jumps
from .nodes import Nodes, join_nodes
from .passes import Passes

#: A link longer than so many short ones (their first quartile), and than so many metres, is looked at.
LONG_LINK, LEAST_GAP = 1.5, 1.5
#: So many short links a line may go on beyond its end to the next pass.
GO_ON = 1.6
#: A link between two turns of the same way, of so many radian at least, is looked at along the arc that they foretell,
#: which turns no more at each end than so, in so many pieces.
LEAST_ROUND, MOST_ROUND, PIECES = 0.2, 1.0, 3
#: Doubt (m) of the place of a line that is only bridged.
LOOSE = 0.25
#: Decades that one reading tells for or against a line at most; a bend that is not there; the choice of three gates.
MOST_FOR, MOST_AGAINST, NO_BEND, OF_THREE = 1.0, 0.8, 0.6, 0.3
#: Decades from which the end of a line goes on to a reading.
GOES_ON = 0.3
#: Gates that are looked up together.
BLOCK = 4
_LN10 = float(np.log(10.0))


@dataclass(frozen=True)
class Stretches:
    """g stretches to look at.

    ``a, b``: (g, 2) ends; ``of``: (g,) the course; ``k``: (g, 2) nodes on whose passes nothing more is looked for;
    ``key``: (g,) where in the list of all nodes what is found at ``a`` belongs, ``span``: how much later at ``b``;
    ``way``: (g,) 1 along the course, -1 against it.
    """

    a: np.ndarray
    b: np.ndarray
    of: np.ndarray
    k: np.ndarray
    key: np.ndarray
    span: np.ndarray
    way: np.ndarray


def read_courses(
    passes: Passes, blocks: Blocks, noise: np.ndarray, jumps: Jumps, nodes: Nodes, courses: List[Course],
    evidence: np.ndarray,
) -> Tuple[Nodes, List[Course], np.ndarray, np.ndarray]:  # fmt: skip
    """The courses with a node wherever a pass crosses a long link, and drawn on where the next pass shows the same.

    Gives the nodes, the courses, which nodes (n,) only bridge, and the evidence with what the readings tell.
    """
    bridging = np.zeros(len(nodes), bool)
    for find, least in ((_gaps, -np.inf), (_beyond, GOES_ON)):
        every = listed(courses)
        where = find(nodes, courses, every)
        link, gate, share = crossings(passes, blocks, nodes, where)
        clear = jumps.told[gate] & np.isfinite(jumps.size[gate])
        link, gate, share = link[clear], gate[clear], share[clear]
        if not len(link):
            continue
        size = group_median(nodes.size[every.k], every.of, len(courses))[where.of[link]]
        new, told = _readings(passes, noise, jumps, nodes, where, link, gate, share, size)
        good = told > least
        if least > -np.inf:  # beyond an end the first pass counts
            order = np.lexsort((share, link))
            first = np.zeros(len(link), bool)
            first[order[np.append(True, np.diff(link[order]) != 0)]] = True
            good &= first
        new, told, link, share = new.take(good), told[good], link[good], share[good]
        courses = _with_nodes(courses, every, where.of[link], where.key[link] + where.span[link] * share, len(nodes))
        evidence = evidence + np.bincount(where.of[link], weights=told, minlength=len(courses))
        nodes = join_nodes([nodes, new])
        bridging = np.append(bridging, told <= 0)
    return nodes, courses, bridging, evidence


def _with_nodes(courses: List[Course], every: Listed, of: np.ndarray, key: np.ndarray, number: int) -> List[Course]:
    """The courses with nodes ``number`` and following put in by their keys."""
    # By course first: what is met beyond the end of one and before the start of the next has keys in one range.
    order = np.lexsort((np.append(np.arange(len(every.k)), key), np.append(every.of, of)))
    k = np.append(every.k, number + np.arange(len(of)))[order]
    counts = every.counts + np.bincount(of, minlength=len(courses))
    end = np.cumsum(counts)
    bounds = zip((end - counts).tolist(), end.tolist())
    return [Course(k[a:b], course.closed) for (a, b), course in zip(bounds, courses)]


def _links(nodes: Nodes, courses: List[Course], every: Listed) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """The node after each listed one (itself at an end), the length of the link, and the course's usual one."""
    _, after = neighbours(every.counts)
    number = np.arange(len(after))
    closed = np.array([course.closed for course in courses], bool)[every.of]
    start = np.cumsum(every.counts) - every.counts
    after = np.where((after == number) & closed, start[every.of], after)
    k, onward = every.k, every.k[after]
    long = np.hypot(nodes.x[onward] - nodes.x[k], nodes.y[onward] - nodes.y[k])
    linked = after != number
    return after, long, group_quantile(long[linked], every.of[linked], len(courses), 0.25)


def _places(nodes: Nodes, k: np.ndarray) -> np.ndarray:
    return np.column_stack([nodes.x[k], nodes.y[k]])


def _gaps(nodes: Nodes, courses: List[Course], every: Listed) -> Stretches:
    after, long, usual = _links(nodes, courses, every)
    gaps = np.flatnonzero(long > np.maximum(LONG_LINK * usual, LEAST_GAP)[every.of])
    before, _ = neighbours(every.counts)
    k = np.column_stack([every.k[i] for i in (before[gaps], gaps, after[gaps], after[after[gaps]])])
    aside = _aside(*(_places(nodes, column) for column in k.T))
    k = k[:, 1:3]
    a, b = _places(nodes, k[:, 0]), _places(nodes, k[:, 1])
    right = np.column_stack([(b - a)[:, 1], -(b - a)[:, 0]])
    places = [a + t * (b - a) + 4 * t * (1 - t) * aside[:, None] * right for t in np.linspace(0, 1, PIECES + 1)]
    many = PIECES * len(gaps)
    return Stretches(
        np.concatenate(places[:-1]), np.concatenate(places[1:]), np.tile(every.of[gaps], PIECES),
        np.tile(k, (PIECES, 1)), np.concatenate([gaps + 0.25 + 0.5 * i / PIECES for i in range(PIECES)]),
        np.full(many, 0.5 / PIECES), np.ones(many),
    )  # fmt: skip


def _aside(before: np.ndarray, a: np.ndarray, b: np.ndarray, after: np.ndarray) -> np.ndarray:
    """How far (g,), in chords to the right, the middle of an arc from ``a`` to ``b`` lies; 0 where it is straight.

    A course that turns the same way at both ends of the link goes on in an arc.
    """
    chord = b - a
    turned = []
    for link, sign in ((a - before, 1.0), (after - b, -1.0)):
        cross = sign * (link[:, 0] * chord[:, 1] - link[:, 1] * chord[:, 0])
        turned.append(np.arctan2(cross, (link * chord).sum(axis=1)))
    first, last = turned
    turn = np.minimum(np.minimum(np.abs(first), np.abs(last)), MOST_ROUND)
    result: np.ndarray = np.where((turn > LEAST_ROUND) & (first * last > 0), np.sign(first) * np.tan(turn / 2) / 2, 0.0)
    return result


def _beyond(nodes: Nodes, courses: List[Course], every: Listed) -> Stretches:
    _, _, usual = _links(nodes, courses, every)
    ends = ends_of(nodes, courses)
    last = np.cumsum(every.counts) - 1
    row = np.column_stack([last - every.counts + 1, last]).ravel()
    k = every.k[row]
    of = every.of[row]
    is_step = (nodes.kind[k] == STEP) & ~np.repeat([course.closed for course in courses], 2)
    reach = GO_ON * np.maximum(usual, LEAST_GAP)[of]
    # Towards an end the key falls: what is first met comes last in order, but only one is taken.
    key, way = row + np.tile([-0.75, 0.25], len(courses)), np.tile([-1.0, 1.0], len(courses))
    span = np.full(len(row), 0.5)
    some = np.flatnonzero(is_step & np.isfinite(reach))
    a = ends.at[some]
    return Stretches(
        a, a + ends.out[some] * reach[some][:, None], of[some], np.column_stack([k, k])[some], key[some], span[some],
        way[some],
    )  # fmt: skip


@dataclass(frozen=True)
class Blocks:
    """The gates of the walk a few at a time: ``start, count`` (b,) of each block, and a ``tree`` of their middles."""

    start: np.ndarray
    count: np.ndarray
    tree: cKDTree


def blocks_of(passes: Passes) -> Blocks:
    """All gates of the walk."""
    number = np.arange(len(passes))
    start = np.flatnonzero((number - passes.first) % BLOCK == 0)
    count = np.diff(np.append(start, len(passes)))
    middle = start + count // 2
    return Blocks(start, count, cKDTree(np.column_stack([passes.x[middle], passes.y[middle]])))


def gates_near(blocks: Blocks, middle: np.ndarray, reach: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Pairs of places (n, 2) and all gates within ``reach`` (n,), and more."""
    near = blocks.tree.query_ball_point(middle, reach)
    many = np.array([len(some) for some in near], np.int64)
    block = np.fromiter(chain.from_iterable(near), np.int64, int(many.sum()))
    count = blocks.count[block]
    gate = np.arange(int(count.sum())) - np.repeat(np.cumsum(count) - count - blocks.start[block], count)
    return np.repeat(np.repeat(np.arange(len(near)), many), count), gate


def crossings(
    passes: Passes, blocks: Blocks, nodes: Nodes, where: Stretches
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Stretches (c,) that the walk crosses, the gate there, and the share of the stretch before it."""
    none = np.empty(0, np.int64)
    if not len(where.of):
        return none, none, np.empty(0)
    along = where.b - where.a
    reach = np.hypot(along[:, 0], along[:, 1]) / 2 + BLOCK * passes.spacing
    link, gate = gates_near(blocks, (where.a + where.b) / 2, reach)
    inside = gate < len(passes) - 1
    link, gate = link[inside], gate[inside]
    whole = passes.leg[gate] == passes.leg[gate + 1]
    link, gate = link[whole], gate[whole]
    ux, uy = along[link].T
    px, py = passes.x[gate] - where.a[link, 0], passes.y[gate] - where.a[link, 1]
    vx, vy = passes.x[gate + 1] - passes.x[gate], passes.y[gate + 1] - passes.y[gate]
    cross = ux * vy - uy * vx
    safe = np.where(np.abs(cross) < 1e-9, 1.0, cross)
    on_link, on_gate = (px * vy - py * vx) / safe, (px * uy - py * ux) / safe
    steep = np.abs(cross) > 0.3 * np.hypot(ux, uy) * np.hypot(vx, vy)
    other = (passes.leg[gate][:, None] != nodes.leg[where.k[link]]).all(axis=1)
    good = steep & other & (on_link > 0.02) & (on_link < 0.98) & (on_gate >= 0) & (on_gate < 1)
    return link[good], gate[good], on_link[good]


def _readings(
    passes: Passes, noise: np.ndarray, jumps: Jumps, nodes: Nodes, where: Stretches, link: np.ndarray,
    gate: np.ndarray, share: np.ndarray, usual: np.ndarray,
) -> Tuple[Nodes, np.ndarray]:  # fmt: skip
    """Nodes of the crossings, and the decades that each tells for a step (or bend) of the ``usual`` size (c,)."""
    n = len(link)
    like = where.k[link, 0]
    step = nodes.kind[like] == STEP
    # A course has the higher ground on its left.
    ux, uy = (where.b - where.a)[link].T * where.way[link]
    turn = np.where(ux * passes.ey[gate] - uy * passes.ex[gate] < 0, -1.0, 1.0)
    at, rise = gate, np.full(n, -np.inf)
    for shift in (0, -1, 1):
        beside = np.clip(gate + shift, 0, len(passes) - 2)
        size = np.nan_to_num(jumps.size[beside]) * turn
        better = (size > rise + 1e-9) & (passes.leg[beside] == passes.leg[gate])
        at, rise = np.where(better, beside, at), np.where(better, size, rise)
    sigma = jumps.sigma[at]
    told = np.clip((usual * rise - usual**2 / 2) / sigma**2 / _LN10 - OF_THREE, -MOST_AGAINST, MOST_FOR)
    told = np.where(step, np.nan_to_num(told, nan=-MOST_AGAINST), -NO_BEND)
    seen = step & (told > 0)
    at = np.where(seen, at, gate)
    x = where.a[link, 0] + share * (where.b - where.a)[link, 0]
    y = where.a[link, 1] + share * (where.b - where.a)[link, 1]
    after = np.minimum(at + 1, len(passes) - 1)
    x = np.where(seen, (passes.x[at] + passes.x[after]) / 2, x)
    y = np.where(seen, (passes.y[at] + passes.y[after]) / 2, y)
    ex, ey = passes.ex[at], passes.ey[at]
    zero = np.zeros(n)
    size = np.where(step, np.nan_to_num(jumps.size[gate]) * turn, usual)
    found = Candidates(
        np.full(n, STEP), at, x, y, ex, ey, np.where(seen, rise * turn, size), zero, np.full(n, LOOSE), zero, zero
    )
    edges, chance = gate_chances(passes, noise, jumps, found)
    back = turn < 0
    edges[back], chance[back] = -edges[back][:, ::-1], chance[back][:, ::-1]
    chance[~seen] = 0.0
    return Nodes(
        kind=nodes.kind[like], x=x, y=y, ex=ex * turn, ey=ey * turn, size=np.where(seen, rise, size),
        t=np.where(seen, np.abs(rise) / sigma, 0.1), sigma=np.full(n, LOOSE), sided=nodes.sided[like],
        edges=edges, chance=chance, leg=passes.leg[at], point=at, other=after, along=np.zeros(n, bool),
        decades=told, fine=np.zeros(n, bool), height=np.full(n, np.nan), height_var=np.full(n, np.nan),
        rise=np.full(n, np.nan),
    ), told  # fmt: skip
