"""The exact volume between two surfaces."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Iterable, List

import numpy as np

from ..progress import Progress, silent
from ..surface.tin import Tin
from .overlay import Pieces, map_pieces
from .polygons import areas, integrals, positive_parts, settled


@dataclass(frozen=True)
class Volume:
    """Earth between an existing and a design surface, where both exist.

    ``cut`` (existing above design) and ``fill`` (design above existing) in cubic metres, both positive;
    ``cut_area``, ``fill_area``: plan areas in square metres, where they coincide (nearer than ``polygons.FLAT``)
    counts as neither;
    ``common_area``: where both exist; ``existing_only``, ``design_only``: areas not compared.
    """

    cut: float
    fill: float
    cut_area: float
    fill_area: float
    common_area: float
    existing_only: float
    design_only: float

    @property
    def net(self) -> float:
        """Fill less cut, cubic metres: what must be brought in if positive."""
        return self.fill - self.cut

    def reversed(self) -> Volume:
        """The same with existing and design exchanged."""
        return Volume(
            self.fill, self.cut, self.fill_area, self.cut_area, self.common_area, self.design_only, self.existing_only
        )


def volume_between(existing: Tin, design: Tin, progress: Progress = silent) -> Volume:
    """Integrate design less existing over the common area of two surfaces of one CRS.

    Exact on the common refinement of both triangulations, with each piece split at the line of no cut and no fill.
    Exchanging the surfaces exchanges cut and fill to the last digit.
    """
    if out_of_order(existing, design):
        return volume_between(design, existing, progress).reversed()
    parts = map_pieces(existing, design, _sums, progress)
    return _volume(list(parts), existing.plan_area, design.plan_area)


def out_of_order(existing: Tin, design: Tin) -> bool:
    """Whether to compute with the surfaces exchanged, so that both ways come to the same last digits."""
    keys = [(tin.origin.tobytes(), tin.vertices.tobytes(), tin.triangles.tobytes()) for tin in (existing, design)]
    return keys[1] < keys[0]


def sum_volumes(pieces: Iterable[Pieces], existing_area: float, design_area: float) -> Volume:
    """The volume over pieces (first surface existing, second design); the areas are of the surfaces as wholes."""
    return _volume([_sums(pieces)], existing_area, design_area)


def _sums(pieces: Iterable[Pieces]) -> np.ndarray:
    """Cut, fill, cut area, fill area and area (5,) of all pieces."""
    total = np.zeros(5)
    for part in pieces:
        total += volumes_by_piece(part).sum(axis=1)
    return total


def _volume(parts: List[np.ndarray], existing_area: float, design_area: float) -> Volume:
    cut, fill, cut_area, fill_area, area = (float(v) for v in np.sum(np.reshape(parts, (-1, 5)), axis=0))
    return Volume(cut, fill, cut_area, fill_area, area, max(0.0, existing_area - area), max(0.0, design_area - area))


def volumes_by_piece(pieces: Pieces) -> np.ndarray:
    """Cut, fill, cut area, fill area and area of each piece, (5, k)."""
    depth = settled(pieces.second_height - pieces.first_height)
    sums = np.zeros((5, len(pieces)))
    for row, sign in enumerate((-1.0, 1.0)):
        for which, part, (x, y) in positive_parts(sign * depth, pieces.x, pieces.y):
            sums[row, which] = integrals(x, y, part)
            sums[row + 2, which] = areas(x, y)
    sums[4] = areas(pieces.x, pieces.y)
    return sums
