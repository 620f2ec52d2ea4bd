"""Polygons of cut and fill by depth."""

from __future__ import annotations

from dataclasses import replace
from typing import Iterable, List, Sequence, Tuple

import numpy as np

from ..surface.dissolve import LabelledPolygon, dissolve
from .comparison import Comparison
from .depths import depth_steps
from .overlay import Pieces
from .partition import Partition, make_partition
from .polygons import FLAT
from .uncovered import outline
from .zero_line import level_edges, lines_of_no_depth

UNCHANGED = 0


def depth_polygons(comparison: Comparison, limits: Sequence[float]) -> Tuple[LabelledPolygon, ...]:
    """Connected ground of one class of depth, largest first.

    ``limits`` as for :func:`.depths.volumes_in_depths`. ``label``: 1 for the shallowest fill, rising with depth; -1 for
    the shallowest cut and down; ``UNCHANGED`` where the surfaces coincide. Corners stand on the 0.1 mm grid of the
    surfaces; areas differ from the exact ones by that.
    """
    steps = depth_steps(limits)[:-1]
    lines = _class_lines(comparison, steps)
    tins = [comparison.existing] + ([] if comparison.design_tin is None else [comparison.design_tin])
    outlines = [outline(tin, "") for tin in tins]
    partition = make_partition([*outlines, *comparison.within], comparison.bounds, comparison.existing.crs, lines)
    compared = _compared(comparison, partition, len(outlines))
    tin = partition.tin
    label = np.full(len(tin.triangles), np.iinfo(np.int64).min)
    which = np.flatnonzero(compared)
    middle = tin.corners()[which][:, :, :2].mean(axis=1) + tin.origin
    depth = comparison.depth_at(middle)
    label[which] = np.where(np.isnan(depth), label[which], _classes(depth, steps))
    return tuple(polygon for polygon in dissolve(tin, label) if polygon.label > np.iinfo(np.int64).min)


def _class_lines(comparison: Comparison, steps: Sequence[float]) -> List[np.ndarray]:
    """Lines (k, 2) in the CRS between classes, and around ground that stays as it is."""
    pieces = comparison.pieces()
    lines = [line[:, :2] for line in lines_of_no_depth(pieces)]
    for part in comparison.pieces():
        lines.extend(level_edges(part)[:, :, :2] + part.origin)
    for step in steps[1:]:
        for depth in (-step, step):
            lines += [line[:, :2] for line in lines_of_no_depth(_lowered(comparison.pieces(), depth))]
            for part in _lowered(comparison.pieces(), depth):  # around layers of just that depth
                lines.extend(level_edges(part)[:, :, :2] + part.origin)
    return lines


def _lowered(pieces: Iterable[Pieces], by: float) -> Iterable[Pieces]:
    """Pieces whose depth is 0 where it was ``by``."""
    for part in pieces:
        depth = part.second_height - part.first_height
        some = np.flatnonzero((depth.min(axis=1) <= by + FLAT) & (depth.max(axis=1) >= by - FLAT))
        if len(some):
            part = part.take(some)
            yield replace(part, second_height=part.second_height - by)


def _compared(comparison: Comparison, partition: Partition, outlines: int) -> np.ndarray:
    """Which triangles of the partition are ground that counts."""
    covered, within = partition.inside[:outlines], partition.inside[outlines:]
    alone = comparison.missing_level is not None
    counts: np.ndarray = covered.any(axis=0) if alone else covered.all(axis=0)
    return counts & within.any(axis=0) if len(within) else counts


def _classes(depth: np.ndarray, steps: Sequence[float]) -> np.ndarray:
    """Class number (q,) of depths, as labels; a depth at a limit is in the shallower class."""
    size = np.searchsorted(np.asarray(steps) + FLAT, np.abs(depth), "left")
    result: np.ndarray = np.where(np.abs(depth) < FLAT, UNCHANGED, np.sign(depth) * np.maximum(size, 1)).astype(
        np.int64
    )
    return result
