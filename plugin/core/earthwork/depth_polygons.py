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
from .zero_line import ends_of_depth

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
    corner = tin.corners()[which][:, :, :2] + tin.origin
    # A depth may come to a limit at a place or along a line within its class: the deepest of three places counts.
    places = (corner + corner.mean(axis=1, keepdims=True)) / 2
    depth = comparison.depth_at(places.reshape(-1, 2)).reshape(-1, 3)
    lost = np.isnan(depth)
    size = np.where(lost, -1.0, np.abs(depth))
    deepest = np.take_along_axis(depth, np.argmax(size, axis=1)[:, None], axis=1)[:, 0]
    label[which] = np.where(lost.all(axis=1), label[which], _classes(np.nan_to_num(deepest), steps))
    return tuple(polygon for polygon in dissolve(tin, label) if polygon.label > np.iinfo(np.int64).min)


def _class_lines(comparison: Comparison, steps: Sequence[float]) -> List[np.ndarray]:
    """Lines (k, 2) in the CRS between classes, and around ground that stays as it is."""
    lines = ends_of_depth(comparison.pieces())
    for step in steps[1:]:
        for depth in (-step, step):
            lines += ends_of_depth(_lowered(comparison.pieces(), depth))
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
