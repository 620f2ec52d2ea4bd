"""What passes tell where they cross a stretch of a line in which nothing was found: a lowered kerb, a weak step."""

from __future__ import annotations

from typing import List, Tuple

import numpy as np
from scipy.spatial import cKDTree

from .courses import Course
from .gates import BESIDE
from .jumps import Jumps
from .nodes import Nodes, join_nodes
from .passes import Passes

#: A link longer than so many usual ones, and than so many metres, is looked at.
LONG_LINK, LEAST_GAP = 1.5, 1.5
#: Doubt (m) of the place of a line that is only bridged.
LOOSE = 0.25


def read_gaps(
    passes: Passes, jumps: Jumps, nodes: Nodes, courses: List[Course]
) -> Tuple[Nodes, List[Course], np.ndarray]:
    """The courses with a node wherever a pass crosses a long link; and which nodes (n,) are such readings."""
    start, end, course_of, place = [], [], [], []
    for number, course in enumerate(courses):
        k = np.append(course.nodes, course.nodes[:1]) if course.closed else course.nodes
        long = np.hypot(np.diff(nodes.x[k]), np.diff(nodes.y[k]))
        gaps = np.flatnonzero(long > max(LONG_LINK * float(np.median(long)), LEAST_GAP))
        start.append(k[gaps])
        end.append(k[gaps + 1])
        course_of.append(np.full(len(gaps), number))
        place.append(gaps)
    a, b = np.concatenate(start), np.concatenate(end)
    read = np.zeros(len(nodes), bool)
    if not len(a):
        return nodes, courses, read
    link, gate, share = _crossings(passes, nodes, a, b)
    if not len(link):
        return nodes, courses, read
    new = _readings(passes, jumps, nodes, a[link], b[link], gate, share)
    own, where = np.concatenate(course_of)[link], np.concatenate(place)[link]
    order = np.lexsort((share, where, own))
    added = len(nodes) + np.arange(len(link))
    result = list(courses)
    for number in np.unique(own).tolist():
        mine = order[own[order] == number]
        nodes_of = np.insert(courses[number].nodes, where[mine] + 1, added[mine])
        result[number] = Course(nodes_of, courses[number].closed)
    return join_nodes([nodes, new]), result, np.append(read, np.ones(len(link), bool))


def _crossings(passes: Passes, nodes: Nodes, a: np.ndarray, b: np.ndarray) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Links (c,) from nodes ``a`` to ``b`` that the walk crosses, the gate there, and where on the link (share)."""
    tree = cKDTree(np.column_stack([passes.x, passes.y]), compact_nodes=False, balanced_tree=False)
    ax, ay, bx, by = nodes.x[a], nodes.y[a], nodes.x[b], nodes.y[b]
    middle = np.column_stack([(ax + bx) / 2, (ay + by) / 2])
    near = tree.query_ball_point(middle, np.hypot(bx - ax, by - ay) / 2 + passes.spacing)
    link = np.repeat(np.arange(len(a)), [len(n) for n in near])
    gate = np.concatenate([np.array(n, np.int64) for n in near])
    inside = gate < len(passes) - 1
    link, gate = link[inside], gate[inside]
    whole = passes.leg[gate] == passes.leg[gate + 1]
    link, gate = link[whole], gate[whole]
    ux, uy = bx[link] - ax[link], by[link] - ay[link]
    px, py = passes.x[gate] - ax[link], passes.y[gate] - ay[link]
    vx, vy = passes.x[gate + 1] - passes.x[gate], passes.y[gate + 1] - passes.y[gate]
    cross = ux * vy - uy * vx
    safe = np.where(np.abs(cross) < 1e-9, 1.0, cross)
    on_link, on_gate = (px * vy - py * vx) / safe, (px * uy - py * ux) / safe
    steep = np.abs(cross) > 0.3 * np.hypot(ux, uy) * np.hypot(vx, vy)
    # The passes of both ends have told already.
    other = (passes.leg[gate] != nodes.leg[a[link]]) & (passes.leg[gate] != nodes.leg[b[link]])
    good = steep & other & (on_link > 0.02) & (on_link < 0.98) & (on_gate >= 0) & (on_gate < 1)
    return link[good], gate[good], on_link[good]


def _readings(
    passes: Passes, jumps: Jumps, nodes: Nodes, a: np.ndarray, b: np.ndarray, gate: np.ndarray, share: np.ndarray
) -> Nodes:
    n = len(a)
    ex, ey = passes.ex[gate], passes.ey[gate]
    turn = np.where(ex * nodes.ex[a] + ey * nodes.ey[a] < 0, -1.0, 1.0)
    wide = 2 * BESIDE + 1
    return Nodes(
        kind=nodes.kind[a], x=nodes.x[a] + share * (nodes.x[b] - nodes.x[a]),
        y=nodes.y[a] + share * (nodes.y[b] - nodes.y[a]), ex=ex * turn, ey=ey * turn,
        size=np.nan_to_num(jumps.size[gate]) * turn, t=np.zeros(n), sigma=np.full(n, LOOSE), sided=nodes.sided[a],
        edges=np.zeros((n, wide + 1)), chance=np.zeros((n, wide)), leg=passes.leg[gate], point=gate, other=gate + 1,
        along=np.zeros(n, bool), decades=np.zeros(n), fine=np.zeros(n, bool),
    )  # fmt: skip
