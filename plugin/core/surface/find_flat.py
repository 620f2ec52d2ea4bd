"""Flat spots: triangles whose corners all lie on one level line.

Where heights come from contours, or from a line of constant height, the triangles at summits, in
hollows and at the ends of ridges and valleys join that line to itself and are level, though the
ground hardly is. A spot height there mends it.
"""

from __future__ import annotations

from typing import List, Tuple

import numpy as np

from ..linework.constraints import Constraints
from ..messages import QT_TRANSLATE_NOOP, Text
from .findings import Facts, Finding, FindingKind, FindingOptions
from .parts import connected_parts

FLAT = Text(
    "findings.flat",
    QT_TRANSLATE_NOOP(
        "core",
        "Level spot of {value:.1f} m² at E {easting:.3f} N {northing:.3f}: all corners of {count} triangles lie on one "
        "line of height {height:.3f} m. If the ground is not level there, add a spot height.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "Level spot of {value:.1f} m² at E {easting:.3f} N {northing:.3f}: all corners of a triangle lie on "
        "one line of height {height:.3f} m. If the ground is not level there, add a spot height.",
    ),
)


def find_flat(facts: Facts, constraints: Constraints, options: FindingOptions) -> List[Finding]:
    """One finding for each group of adjoining level triangles on one level line.

    A level line is a run of at least ``flat_run`` vertices of equal height along a line, or, if half of all points
    or more are in such runs and on two levels at least, in the order of recording (contours given as points).
    """
    tin = facts.tin
    corner_heights = tin.vertices[tin.triangles, 2]
    level = np.flatnonzero(np.ptp(corner_heights, axis=1) <= options.flat_tolerance)
    if len(level) == 0:
        return []
    found: List[Finding] = []
    taken = np.zeros(len(tin.triangles), bool)
    for run in (_line_runs(facts, constraints, options), _recorded_runs(facts, options)):
        of = run[tin.triangles[level]]
        on_one = (of[:, 0] >= 0) & (of[:, 0] == of[:, 1]) & (of[:, 0] == of[:, 2]) & ~taken[level]
        flat = level[on_one]
        taken[flat] = True
        found += [_finding(facts, group) for group in groups_of_triangles(tin.neighbours, flat, of[on_one, 0])]
    return found


def runs_of_equal(height: np.ndarray, apart: np.ndarray, tolerance: float, least: int) -> np.ndarray:
    """Number (n,) of the run of equal heights each item is in, -1 outside runs of ``least`` items.

    ``apart`` (n,): items that can't continue the run of the item before them.
    """
    if len(height) == 0:
        return np.empty(0, np.int64)
    fresh = np.append(True, ~(np.abs(np.diff(height)) <= tolerance)) | apart
    number = np.cumsum(fresh) - 1
    long_enough = np.bincount(number) >= least
    run: np.ndarray = np.where(long_enough[number], number, -1)
    return run


def _line_runs(facts: Facts, constraints: Constraints, options: FindingOptions) -> np.ndarray:
    """Run (n,) of each vertex along lines; where lines meet, the later one counts."""
    run = np.full(len(facts.tin.vertices), -1, np.int64)
    if len(constraints) == 0:
        return run
    vertex = facts.vertices_at(np.concatenate([line.xyz[:, :2] for line in constraints.lines]))
    number = np.repeat(np.arange(len(constraints)), [len(line.xyz) for line in constraints.lines])
    vertex, number = vertex[vertex >= 0], number[vertex >= 0]
    apart = np.append(True, np.diff(number) != 0)[: len(number)]
    along = runs_of_equal(facts.tin.vertices[vertex, 2], apart, options.flat_tolerance, options.flat_run)
    run[vertex[along >= 0]] = along[along >= 0]
    return run


def _recorded_runs(facts: Facts, options: FindingOptions) -> np.ndarray:
    """Run (n,) of each vertex in the order of recording; all -1 unless the survey consists of level lines."""
    tin, points = facts.tin, facts.points
    none = np.full(len(tin.vertices), -1, np.int64)
    used = np.flatnonzero(points.used)
    height = points.height[used]
    along = runs_of_equal(height, np.zeros(len(used), bool), options.flat_tolerance, options.flat_run)
    in_run = along >= 0
    if len(used) == 0 or 2 * np.count_nonzero(in_run) < len(used) or np.ptp(height) <= options.flat_tolerance:
        return none
    vertex = facts.vertices_at(np.column_stack([points.easting[used], points.northing[used]]))
    there = in_run & (vertex >= 0)
    none[vertex[there]] = along[there]
    return none


def groups_of_triangles(neighbours: np.ndarray, flat: np.ndarray, run: np.ndarray) -> List[np.ndarray]:
    """The triangles ``flat`` (k,) in groups that adjoin and are on one ``run`` (k,)."""
    place = np.full(len(neighbours) + 1, -1, np.int64)  # the last entry answers for "no neighbour"
    place[flat] = np.arange(len(flat))
    side, beyond = _pairs(place, neighbours[flat])
    same = run[side] == run[beyond]
    label = connected_parts(len(flat), side[same], beyond[same])
    order = np.argsort(label, kind="stable")
    stops = np.cumsum(np.bincount(label))[:-1]
    return [flat[part] for part in np.split(order, stops)] if len(flat) else []


def _pairs(place: np.ndarray, neighbours: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Pairs of places of triangles in a subset that share an edge."""
    beyond = place[neighbours]
    side = np.repeat(np.arange(len(neighbours)), 3).reshape(-1, 3)
    return side[beyond >= 0], beyond[beyond >= 0]


def _finding(facts: Facts, group: np.ndarray) -> Finding:
    corner = facts.tin.vertices[facts.tin.triangles[group]]
    u, v = corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]
    area = (u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]) / 2
    centre = corner.mean(axis=1)
    place = centre[first_of_group(area, centre)]
    vertices = facts.tin.triangles[group].ravel()
    return facts.finding(FindingKind.FLAT, place, float(area.sum()), "m²", vertices, group, FLAT, count=len(group))


def first_of_group(size: np.ndarray, centre: np.ndarray) -> int:
    """The largest triangle; of equal ones the western, then the southern."""
    return int(np.lexsort((np.round(centre[:, 1], 4), np.round(centre[:, 0], 4), -np.round(size, 6)))[0])
