"""The line of no cut and no fill."""

from __future__ import annotations

from typing import Dict, Iterable, Iterator, List, Tuple

import numpy as np

from ..progress import Progress, silent
from ..surface.tin import Tin
from .overlay import Pieces, common_pieces
from .polygons import settled

_STEP = 1e-6  # ends of neighbouring parts within this (m) are one place
_SHIFT = 0.31 * _STEP  # keeps round coordinates off the borders between steps


def zero_line(existing: Tin, design: Tin, progress: Progress = silent) -> Tuple[np.ndarray, ...]:
    """Lines (k, 3) in the CRS where existing and design cross; closed ones repeat their first vertex.

    Where the surfaces coincide over an area there is no line; its border is none either.
    """
    return lines_of_no_depth(common_pieces(existing, design, progress))


def lines_of_no_depth(pieces: Iterable[Pieces]) -> Tuple[np.ndarray, ...]:
    """As :func:`zero_line`, of pieces."""
    none = np.empty((0, 2, 3))
    crossed, fill, cut = [none], [none], [none]
    for part in pieces:
        origin, depth = np.append(part.origin, 0.0), _depths(part)
        crossed.append(_crossings(part, depth) + origin)
        fill.append(_level_edges_of(part, depth) + origin)
        cut.append(_level_edges_of(part, -depth)[:, ::-1] + origin)
    between = _on_both(np.concatenate(fill), np.concatenate(cut))
    return chained(_long(np.concatenate([between, *crossed])))


def ends_of_depth(pieces: Iterable[Pieces]) -> List[np.ndarray]:
    """Lines (k, 2) in the CRS of no depth, and around ground where the surfaces coincide."""
    around: List[np.ndarray] = []

    def noted() -> Iterator[Pieces]:
        for part in pieces:
            around.extend(level_edges(part)[:, :, :2] + part.origin)
            yield part

    return [line[:, :2] for line in lines_of_no_depth(noted())] + around


def _crossings(pieces: Pieces, depth: np.ndarray) -> np.ndarray:
    """Segments (q, 2, 3), metres from the pieces' origin, where the depth crosses zero, fill on their left."""
    ahead = np.roll(depth, -1, axis=1)
    up, down = (depth <= 0) & (ahead > 0), (depth > 0) & (ahead <= 0)
    crossed = np.flatnonzero((depth.min(axis=1) < 0) & (depth.max(axis=1) > 0))
    if len(crossed) == 0:
        return np.empty((0, 2, 3))
    return np.stack([_crossing(pieces, depth, crossed, way) for way in (down, up)], axis=1)


def _long(segments: np.ndarray) -> np.ndarray:
    """The segments that are longer than the step to which places are numbered."""
    same = np.all(np.abs(segments[:, 0, :2] - segments[:, 1, :2]) < _STEP, axis=1)
    return segments[~same]


def _depths(pieces: Pieces) -> np.ndarray:
    return settled(pieces.second_height - pieces.first_height)


def level_edges(pieces: Pieces) -> np.ndarray:
    """Edges (q, 2, 3), metres from the pieces' origin, of no depth, of pieces that have some elsewhere."""
    depth = _depths(pieces)
    level = (depth == 0) & (np.roll(depth, -1, axis=1) == 0) & np.any(depth != 0, axis=1)[:, None]
    row, at = np.nonzero(level)
    ends = []
    for k in (at, (at + 1) % depth.shape[1]):
        ends.append(np.column_stack([v[row, k] for v in (pieces.x, pieces.y, pieces.first_height)]))
    found = np.stack(ends, axis=1)
    result: np.ndarray = found[np.hypot(*(found[:, 1] - found[:, 0])[:, :2].T) > _STEP]
    return result


def _crossing(pieces: Pieces, depth: np.ndarray, rows: np.ndarray, changes: np.ndarray) -> np.ndarray:
    """Where the rim of each piece in ``rows`` meets depth 0 on the corner-to-corner way marked by ``changes``."""
    at = np.argmax(changes[rows], axis=1)
    after = (at + 1) % depth.shape[1]
    t = depth[rows, at] / (depth[rows, at] - depth[rows, after])
    values = (pieces.x, pieces.y, pieces.first_height)
    return np.column_stack([v[rows, at] + t * (v[rows, after] - v[rows, at]) for v in values])


def _level_edges_of(pieces: Pieces, depth: np.ndarray) -> np.ndarray:
    """Edges (q, 2, 3) of no depth of pieces that have fill alone elsewhere, the pieces on their left."""
    one_sided = (depth.min(axis=1) >= 0) & (depth.max(axis=1) > 0)
    row, at = np.nonzero((depth == 0) & (np.roll(depth, -1, axis=1) == 0) & one_sided[:, None])
    values = (pieces.x, pieces.y, pieces.first_height)
    ends = (np.column_stack([v[row, k] for v in values]) for k in (at, (at + 1) % depth.shape[1]))
    return np.stack(list(ends), axis=1)


def _on_both(fill: np.ndarray, cut: np.ndarray) -> np.ndarray:
    """The edges of ``fill`` (q, 2, 3) that are edges of ``cut`` (r, 2, 3) too, the same way round."""
    if len(fill) == 0 or len(cut) == 0:
        return fill[:0]
    low = np.floor(np.vstack([fill, cut])[:, :, :2].reshape(-1, 2).min(axis=0))
    keys = np.concatenate([_keys(edges[:, :, :2] - low).reshape(-1, 4) for edges in (fill, cut)])
    number = np.unique(keys, axis=0, return_inverse=True)[1].ravel()
    return fill[np.isin(number[: len(fill)], number[len(fill) :])]


def _keys(xy: np.ndarray) -> np.ndarray:
    keys: np.ndarray = np.floor((xy + _SHIFT) / _STEP).astype(np.int64)
    return keys


def chained(segments: np.ndarray) -> Tuple[np.ndarray, ...]:
    """Join segments (q, 2, 3) end to end into lines (k, 3)."""
    if len(segments) == 0:
        return ()
    low = segments[:, :, :2].reshape(-1, 2).min(axis=0)
    keys = _keys(segments[:, :, :2].reshape(-1, 2) - np.floor(low))
    _, first, place = np.unique(keys, axis=0, return_index=True, return_inverse=True)
    place = place.reshape(-1, 2)
    xyz = segments.reshape(-1, 3)[first]
    return tuple(xyz[walk] for walk in _walks(place))


def _walks(ends: np.ndarray) -> List[List[int]]:
    """Chains of directed segments (q, 2); each begins where no other ends or, for a ring, anywhere."""
    following: Dict[int, List[int]] = {}
    arriving: Dict[int, int] = {}
    for a, b in ends.tolist():
        if a != b:
            following.setdefault(a, []).append(b)
            arriving[b] = arriving.get(b, 0) + 1
    starts = [a for a in following for _ in range(max(0, len(following[a]) - arriving.get(a, 0)))]
    walks = []
    for start in starts + list(following):
        while following.get(start):
            walk = [start]
            while following.get(walk[-1]):
                walk.append(following[walk[-1]].pop())
            walks.append(walk)
            if start in starts:
                break
    return walks
