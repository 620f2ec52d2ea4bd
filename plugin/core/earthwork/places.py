"""Places on the ground compared at which depth and noise are looked at together."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Iterable, Iterator, List, Sequence, Tuple

import numpy as np
from scipy.sparse import csr_matrix

from .noise_share import FAR
from .overlay import Pieces
from .polygons import areas
from .side import NoiseModel, Side

SAME = 1e-6  # metres: surfaces that are nowhere farther apart on a piece coincide there


@dataclass(frozen=True)
class SidePlaces:
    """One surface at q places: its ``triangle`` (q,), that one's three vertices and their ``share`` (q, 3)."""

    side: Side
    triangle: np.ndarray
    vertex: np.ndarray
    share: np.ndarray

    def take(self, which: np.ndarray) -> SidePlaces:
        return SidePlaces(self.side, self.triangle[which], self.vertex[which], self.share[which])

    def sums(self, values: np.ndarray) -> np.ndarray:
        """What the sum of depths at the places times ``values`` (q,) takes of the height of each vertex: (n,)."""
        weights = (values[:, None] * self.share).ravel()
        result: np.ndarray = self.side.sign * np.bincount(self.vertex.ravel(), weights, len(self.side.sigma))
        return result


@dataclass(frozen=True)
class Places:
    """q places, each of which stands for ``area`` (m²) of ground: ``depth`` there, its standard deviation ``sd`` (m),
    the ``patch`` of ground and what that makes of the depth (``ground``, m), each surface there, and where it is:
    ``xy`` (q, 2), metres of the CRS.
    """

    area: np.ndarray
    depth: np.ndarray
    sd: np.ndarray
    patch: np.ndarray
    ground: np.ndarray
    by_side: Tuple[SidePlaces, ...]
    xy: np.ndarray

    def __len__(self) -> int:
        return len(self.area)

    def take(self, which: np.ndarray) -> Places:
        area, depth, sd, patch, ground = (v[which] for v in (self.area, self.depth, self.sd, self.patch, self.ground))
        return Places(area, depth, sd, patch, ground, tuple(each.take(which) for each in self.by_side), self.xy[which])

    def matrix(self, model: NoiseModel) -> csr_matrix:
        """(q, columns) of the depth's noise in one draw of :meth:`NoiseModel.draws`."""
        first = np.cumsum([0, *(len(side.sigma) for side in model.sides)])
        number = {id(side): k for k, side in enumerate(model.sides)}
        column, value = [(first[-1] + self.patch)[:, None]], [self.ground[:, None]]
        for each in self.by_side:
            column.append(first[number[id(each.side)]] + each.vertex)
            value.append(each.side.sign * each.share)
        columns, values = np.hstack(column), np.hstack(value)
        start = np.arange(0, columns.size + 1, columns.shape[1])
        return csr_matrix((values.ravel(), columns.ravel(), start), (len(self), first[-1] + model.patches))


def parts_by_depth(
    pieces: Iterable[Pieces], model: NoiseModel, sides: Sequence[Side], scale: float
) -> Iterator[Tuple[Pieces, Places]]:
    """Of each part of the pieces: those deeper than all noise, and places on the others.

    ``sides``: those of the model that the pieces are of. ``scale``: by how much noise is larger than they say. Where
    surfaces coincide they are one and the same ground, noise and all: that counts as deep. The places are the middles
    of the edges of the triangles of each piece, by which what is at most quadratic is summed exactly.
    """
    most = FAR * scale * float(np.sqrt(sum(side.most**2 for side in sides)))
    for part in pieces:
        depth = np.abs(part.second_height - part.first_height)
        some = np.flatnonzero((depth.min(axis=1) < most) & (depth.max(axis=1) > SAME))
        row, places = _middles(part, some, model, sides)
        near = np.zeros(len(part), bool)
        near[row[np.abs(places.depth) < FAR * scale * places.sd]] = True
        yield part.take(np.flatnonzero(~near)), places.take(np.flatnonzero(near[row]))


def _middles(part: Pieces, some: np.ndarray, model: NoiseModel, sides: Sequence[Side]) -> Tuple[np.ndarray, Places]:
    """Piece (q,) and places at the edges' middles of the triangles from the first corner of the pieces ``some``."""
    own = part.take(some)
    values = (own.x, own.y, own.second_height - own.first_height)
    fans = [np.stack([np.repeat(v[:, :1], v.shape[1] - 2, axis=1), v[:, 1:-1], v[:, 2:]], axis=2) for v in values]
    corner = np.stack([fan.reshape(-1, 3) for fan in fans], axis=2)
    row = np.repeat(some, fans[0].shape[1])
    area = areas(corner[:, :, 0], corner[:, :, 1]) if len(corner) else np.zeros(0)
    corner, row, area = corner[area > 0], row[area > 0], area[area > 0]
    middle = ((corner + np.roll(corner, -1, axis=1)) / 2).reshape(-1, 3)
    row = np.repeat(row, 3)
    x, y, depth = middle.T
    variance = np.zeros(len(row))
    by_side: List[SidePlaces] = []
    for side in sides:
        triangle = (part.first if side.is_existing else part.second)[row]
        share = side.shares(triangle, part.origin, x, y)
        variance += side.variance_at(triangle, share)
        by_side.append(SidePlaces(side, triangle, side.tin.triangles[triangle], share))
    ground = model.ground_at([each.triangle for each in by_side], [each.share for each in by_side], sides)
    xy = middle[:, :2] + part.origin
    patch = model.patch(xy)
    sd = np.sqrt(variance + ground**2)
    return row, Places(np.repeat(area / 3, 3), depth, sd, patch, ground, tuple(by_side), xy)


def joined(parts: Sequence[Places]) -> Places:
    """Several as one; all have the same sides."""
    sides = []
    for several in zip(*(part.by_side for part in parts)):
        columns = zip(*((each.triangle, each.vertex, each.share) for each in several))
        sides.append(SidePlaces(several[0].side, *(np.concatenate(column) for column in columns)))
    each = zip(*((p.area, p.depth, p.sd, p.patch, p.ground) for p in parts))
    area, depth, sd, patch, ground = (np.concatenate(column) for column in each)
    return Places(area, depth, sd, patch, ground, tuple(sides), np.concatenate([p.xy for p in parts]))
