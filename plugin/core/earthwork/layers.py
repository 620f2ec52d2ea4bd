"""Cut by material, where the tops of the layers are known."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Iterable, Iterator, List, Sequence, Tuple

import numpy as np

from ..surface.tin import Tin
from .overlay import Pieces, split_pieces
from .polygons import integrals, positive_parts
from .triangles import Triangles


@dataclass(frozen=True)
class Layer:
    """A material and the surface of its top; it reaches down to the top of the next."""

    name: str
    top: Tin


@dataclass(frozen=True)
class LayerVolume:
    """Cubic metres of a material in the cut, as it lies in the ground."""

    name: str
    cut: float


@dataclass(frozen=True)
class LayerVolumes:
    """``layers``: from the uppermost down; ``unknown``: cut where some layer's surface is missing (m³).

    They add up to ``cut``.
    """

    layers: Tuple[LayerVolume, ...]
    unknown: float
    cut: float


def layers_in_cut(pieces: Iterable[Pieces], uppermost: str, layers: Sequence[Layer]) -> LayerVolumes:
    """Exact cut of each material between existing ground and design, of pieces between them.

    ``uppermost``: name of the material at the surface; ``layers``: those below it, from above to below. Where a
    top rises over the top of a layer above it (or the ground), the one above ends there: the material does not exist.
    """
    tops = [layer.top for layer in layers]
    below = np.zeros(len(layers) + 1)  # cut below the ground, below the first top, and so on, where all are known
    whole = 0.0
    for part in pieces:
        whole += _over(part.x, part.y, part.first_height - part.second_height)
        for known, heights in _where_known(part, tops, []):
            below += _cut_below_each(known, heights)
    each = below - np.append(below[1:], 0.0)
    names = [uppermost, *(layer.name for layer in layers)]
    found = tuple(LayerVolume(name, float(volume)) for name, volume in zip(names, each))
    return LayerVolumes(found, whole - float(below[0]), whole)


def _where_known(
    pieces: Pieces, tops: List[Tin], triangles: List[np.ndarray], done: int = 0
) -> Iterator[Tuple[Pieces, List[np.ndarray]]]:
    """Pieces cut along the triangles of all ``tops``, where all of them are, and heights (k, m) of each top."""
    if done == len(tops):
        planes = [Triangles(top, pieces.origin) for top in tops]
        yield pieces, [plane.height(t, pieces.x, pieces.y) for plane, t in zip(planes, triangles)]
        return
    for small, of, triangle in split_pieces(pieces, tops[done]):
        yield from _where_known(small, tops, [*(t[of] for t in triangles), triangle], done + 1)


def _cut_below_each(pieces: Pieces, tops: List[np.ndarray]) -> np.ndarray:
    """The cut below the ground, below the ground and the first top, and so on, summed over the pieces."""
    columns: List[Tuple[np.ndarray, ...]] = [
        (pieces.x, pieces.y, pieces.second_height, pieces.first_height, *tops)  # x, y, design, lowest so far, tops
    ]
    below = np.zeros(len(tops) + 1)
    for k in range(len(tops) + 1):
        below[k] = sum(_over(x, y, lowest - design) for x, y, design, lowest, *_ in columns)
        if k < len(tops):
            columns = [lowered for each in columns for lowered in _lowered(each, 4)]
    return below


def _lowered(columns: Tuple[np.ndarray, ...], top: int) -> Iterator[Tuple[np.ndarray, ...]]:
    """Split polygons where the top in column ``top`` is below the lowest so far (column 3); drops that column."""
    over = columns[3] - columns[top]
    level = np.all(over == 0, axis=1)
    if np.any(level):
        yield tuple(c[level] for c in (*columns[:top], *columns[top + 1 :]))
    for _, _, part in positive_parts(-over, *columns):
        yield (*part[:top], *part[top + 1 :])
    for _, _, part in positive_parts(over, *columns):
        yield (*part[:3], part[top], *part[top + 1 :])


def _over(x: np.ndarray, y: np.ndarray, depth: np.ndarray) -> float:
    return float(sum(integrals(px, py, d).sum() for _, d, (px, py) in positive_parts(depth, x, y)))
