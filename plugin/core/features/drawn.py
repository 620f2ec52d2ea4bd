"""Courses drawn as lines: placed, with heights, foot and top apart, curves between the nodes."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Tuple

import numpy as np

from ..progress import Progress, silent
from .candidates import STEP
from .courses import Course
from .groups import neighbours
from .heights import DRIFT, measured, smooth
from .jumps import Jumps
from .nodes import Nodes
from .passes import Passes
from .placing import Placed, Places, place_lines
from .readings import MOST_AGAINST
from .rounded import round_corners
from .segments import Segments

#: Nodes of a ring that are repeated at its ends, so that it is placed as a ring.
WRAP = 4
#: Half the plan distance of foot and top: as many standard deviations of the place; and least and most, metres.
#: Where the place of a step of height h is normally distributed, a face 2√3 σ wide makes the squared error of heights
#: near it least: σ h²/√3 for each metre of line; an upright face leaves 2 σ h²/√(2π).
FACE, LEAST_FACE, MOST_FACE = float(np.sqrt(3.0)), 0.01, 0.15
#: Share of the way to the nearest points of a gate that the face may take.
FREE = 0.85
#: A turn has at least so large a share of its neighbour's where both are of one rounded corner.
ROUNDED = 0.3
#: Vertices of curves are at most so far apart, metres.
APART = 1.5


@dataclass(frozen=True)
class Drawn:
    """v vertices of one course, higher ground to the left.

    ``row``: (v,) number in the course of the node each stands at or comes after. ``foot, top``: (v, 3) local metres,
    alike at a bend; ``plan, height, step``: (v,) standard deviations of the place, the foot's height and the step.
    """

    row: np.ndarray
    foot: np.ndarray
    top: np.ndarray
    plan: np.ndarray
    height: np.ndarray
    step: np.ndarray


def draw_courses(
    passes: Passes, noise: np.ndarray, jumps: Jumps, segments: Segments, nodes: Nodes, courses: List[Course],
    bridging: np.ndarray, progress: Progress = silent,
) -> List[Drawn]:  # fmt: skip
    """Each course, which has the higher ground on its left, as vertices."""
    if not courses:
        return []
    lists = [np.concatenate([c.nodes[-WRAP:], c.nodes, c.nodes[: WRAP + 1]]) if c.closed else c.nodes for c in courses]
    counts = np.array([len(k) for k in lists])
    k = np.concatenate(lists)
    own = nodes.take(k)
    placed = place_lines(Places(counts, own.x, own.y, own.ex, own.ey, own.edges, own.chance, own.sigma))
    progress(0.4, "features")
    steps_only = np.array([nodes.kind[c.nodes[0]] == STEP for c in courses], bool)
    placed = _as_given(own, round_corners(counts, steps_only, own, placed))
    foot, top, foot_var, top_var = measured(passes, noise, jumps, segments, own, placed.x, placed.y)
    progress(0.6, "features")
    before, _ = neighbours(counts)
    run = np.cumsum(np.hypot(placed.x - placed.x[before], placed.y - placed.y[before]))
    drift = (DRIFT * noise[own.point]) ** 2
    height, height_sigma = smooth(counts, run, foot, foot_var + drift, np.zeros(len(k), bool))
    step, step_sigma = np.zeros(len(k)), np.zeros(len(k))
    is_step = own.kind == STEP
    if is_step.any():
        steps = np.array([n for n, nodes_of in zip(counts.tolist(), lists) if nodes.kind[nodes_of[0]] == STEP])
        var = (foot_var + top_var)[is_step]
        step[is_step], step_sigma[is_step] = smooth(
            steps, run[is_step], (top - foot)[is_step], var, (bridging & (nodes.decades <= -MOST_AGAINST))[k][is_step]
        )
        # What the pass shares cancels in the step; foot and top together lie best about their middle.
    half = np.where(is_step, _half_face(own, placed), 0.0)
    values = np.column_stack([height, step, half, placed.sigma, height_sigma, step_sigma])
    progress(0.8, "features")
    onward = _onward(counts, placed)
    row = np.arange(len(k)) - np.repeat(np.cumsum(counts) - counts, counts)
    line = np.repeat(np.arange(len(counts)), counts)[onward]
    placed = Placed(*(getattr(placed, name)[onward] for name in ("x", "y", "nx", "ny", "sigma", "corner")))
    vertices = _curves(np.bincount(line, minlength=len(counts)), placed, values[onward])
    return _by_course(counts, courses, row[onward], line, vertices)


def _as_given(own: Nodes, placed: Placed) -> Placed:
    """``placed`` with the nodes that an outline gives where it has them."""
    given = (own.kind == STEP) & np.isfinite(own.height)
    values = ((own.x, placed.x), (own.y, placed.y), (own.ex, placed.nx), (own.ey, placed.ny), (own.sigma, placed.sigma))
    x, y, nx, ny, sigma = (np.where(given, outline, line) for outline, line in values)
    return Placed(x, y, nx, ny, sigma, placed.corner & ~given)


def _onward(counts: np.ndarray, placed: Placed) -> np.ndarray:
    """Numbers of the placed nodes at which no line turns back; of two that do the less sure is left out."""
    kept = np.arange(len(placed.x))
    line = np.repeat(np.arange(len(counts)), counts)
    for _ in range(4):
        before, after = neighbours(np.bincount(line[kept], minlength=len(counts)))
        x, y, sigma = placed.x[kept], placed.y[kept], placed.sigma[kept]
        ax, ay, bx, by = x - x[before], y - y[before], x[after] - x, y[after] - y
        back = ax * bx + ay * by < 0
        worst = back & ~(back[before] & (sigma[before] > sigma)) & ~(back[after] & (sigma[after] >= sigma))
        worst &= (before != np.arange(len(x))) & (after != np.arange(len(x)))
        if not worst.any():
            break
        kept = kept[~worst]
    return kept


def _half_face(own: Nodes, placed: Placed) -> np.ndarray:
    """Half the plan distance (n,) of foot and top: by the doubt, and within the gate where the line is in one."""
    half = np.clip(FACE * placed.sigma, LEAST_FACE, MOST_FACE)
    offset = (placed.x - own.x) * own.ex + (placed.y - own.y) * own.ey
    across = np.abs(own.ex * placed.nx + own.ey * placed.ny)
    best = own.chance.argmax(axis=1)
    row = np.arange(len(half))
    room = np.minimum(offset - own.edges[row, best], own.edges[row, best + 1] - offset) * across
    inside = (own.chance.sum(axis=1) > 0) & (room > 0)
    return np.where(inside, np.minimum(half, np.maximum(FREE * room, LEAST_FACE)), half)


def _curves(counts: np.ndarray, placed: Placed, values: np.ndarray) -> Tuple[np.ndarray, ...]:
    """Vertices of all lines: number of the node at or before each, place, left normal and values (v, 6)."""
    n = len(placed.x)
    before, after = neighbours(counts)
    number = np.arange(n)
    has_next = after != number
    xy = np.column_stack([placed.x, placed.y])
    chord = xy[after] - xy
    long = np.maximum(np.hypot(chord[:, 0], chord[:, 1]), 1e-6)
    unit = chord / long[:, None]
    unit[~has_next] = unit[before[~has_next]]
    back_unit, back_long = unit[before], long[before]
    # The direction at a node: of the circle through it and its neighbours; at an end of the last link.
    weight = (back_long / np.maximum(back_long + long, 1e-9))[:, None]
    inner = (has_next & (before != number))[:, None]
    tangent = np.where(inner, unit * weight + back_unit * (1 - weight), unit)
    tangent /= np.maximum(np.hypot(tangent[:, 0], tangent[:, 1]), 1e-9)[:, None]
    corner = placed.corner & ~_rounds(unit, back_unit, before, after)
    turned = np.abs(tangent[:, 0] * unit[:, 1] - tangent[:, 1] * unit[:, 0])
    bent = np.maximum(turned, turned[after]) * long > 0.02
    pieces = np.where(has_next, np.where(bent, np.maximum(np.ceil(long / APART), 2), 1), 1).astype(np.int64)
    node = np.repeat(number, pieces)
    t = (np.arange(len(node)) - np.repeat(np.cumsum(pieces) - pieces, pieces)) / pieces[node]
    next_node = after[node]
    leave = np.where(corner[node][:, None], unit[node], tangent[node])
    arrive = np.where(corner[next_node][:, None], unit[node], tangent[next_node])
    u = t[:, None]
    scale = long[node][:, None]
    place = (2 * u**3 - 3 * u**2 + 1) * xy[node] + (3 * u**2 - 2 * u**3) * xy[next_node]
    place += scale * ((u**3 - 2 * u**2 + u) * leave + (u**3 - u**2) * arrive)
    direction = (1 - u) * tangent[node] + u * tangent[next_node]
    direction /= np.maximum(np.hypot(direction[:, 0], direction[:, 1]), 1e-9)[:, None]
    left = np.column_stack([-direction[:, 1], direction[:, 0]])
    return node, place, left, (1 - u) * values[node] + u * values[next_node]


def _rounds(unit: np.ndarray, back_unit: np.ndarray, before: np.ndarray, after: np.ndarray) -> np.ndarray:
    """Mask (n,) of the nodes at which a line turns as it does at a neighbour: a rounded corner rather than two."""
    turn = np.arctan2(
        back_unit[:, 0] * unit[:, 1] - back_unit[:, 1] * unit[:, 0], (back_unit * unit).sum(axis=1)
    )  # fmt: skip
    like = [(turn * turn[k] > 0) & (np.abs(turn[k]) > ROUNDED * np.abs(turn)) for k in (before, after)]
    number = np.arange(len(turn))
    result: np.ndarray = (like[0] & (before != number)) | (like[1] & (after != number))
    return result


def _by_course(
    counts: np.ndarray, courses: List[Course], row: np.ndarray, line: np.ndarray, vertices: Tuple[np.ndarray, ...]
) -> List[Drawn]:
    """The vertices of each course: ``row, line`` are those of the nodes that the vertices count."""
    node, place, left, values = vertices
    height, step, half, plan, height_sigma, step_sigma = values.T
    foot = np.column_stack([place - half[:, None] * left, height])
    top = np.column_stack([place + half[:, None] * left, height + step])
    own, at = line[node], row[node]
    bounds = np.searchsorted(own, np.arange(len(counts) + 1))
    result = []
    for i, course in enumerate(courses):
        low, high = (WRAP, WRAP + len(course.nodes)) if course.closed else (0, len(course.nodes) - 1)
        some = slice(*(bounds[i] + np.searchsorted(at[bounds[i] : bounds[i + 1]], [low, high + 1])))
        if course.closed:  # it ends where it began
            end = bounds[i] + int(np.searchsorted(at[bounds[i] : bounds[i + 1]], high))
            some = slice(some.start, end + 1)
        parts = [part[some].copy() for part in (foot, top, plan, height_sigma, step_sigma)]
        if course.closed:
            for part in parts:
                part[[0, -1]] = (part[0] + part[-1]) / 2
        result.append(Drawn(at[some] - low, *parts))
    return result
