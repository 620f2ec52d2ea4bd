"""The exact volume between two surfaces."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Tuple

import numpy as np

from ..progress import Progress, silent
from ..surface.tin import Tin
from .overlay import Pieces, common_pieces
from .polygons import areas, clip, integrals


@dataclass(frozen=True)
class Volume:
    """Earth between an existing and a design surface, where both exist.

    ``cut`` (existing above design) and ``fill`` (design above existing) in cubic metres, both positive;
    ``cut_area``, ``fill_area``: plan areas in square metres, where they coincide counts as neither;
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
    if _order_key(design) < _order_key(existing):
        return volume_between(design, existing, progress).reversed()
    parts = [_integrate(pieces) for pieces in common_pieces(existing, design, progress)]
    fill, cut, fill_area, cut_area, area = (float(v) for v in np.sum(np.reshape(parts, (-1, 5)), axis=0))
    return Volume(cut, fill, cut_area, fill_area, area, existing.plan_area - area, design.plan_area - area)


def _order_key(tin: Tin) -> Tuple[bytes, ...]:
    """Something to order two surfaces by, whatever their roles."""
    return tin.origin.tobytes(), tin.vertices.tobytes(), tin.triangles.tobytes()


def _integrate(pieces: Pieces) -> List[float]:
    """Fill, cut, fill area, cut area and area of some pieces."""
    depth = pieces.second_height - pieces.first_height
    above, below = depth.max(axis=1) > 0, depth.min(axis=1) < 0
    sums = [0.0, 0.0, 0.0, 0.0, float(areas(pieces.x, pieces.y).sum())]
    for k, sign in enumerate((1.0, -1.0)):
        whole = (above & ~below) if sign > 0 else (below & ~above)
        split = above & below
        sums[k] += float(integrals(pieces.x[whole], pieces.y[whole], sign * depth[whole]).sum())
        sums[k + 2] += float(areas(pieces.x[whole], pieces.y[whole]).sum())
        volume, area = _positive_part(pieces.x[split], pieces.y[split], sign * depth[split])
        sums[k] += volume
        sums[k + 2] += area
    return sums


def _positive_part(x: np.ndarray, y: np.ndarray, depth: np.ndarray) -> Tuple[float, float]:
    """Volume and area where the depth, linear on each polygon, is positive."""
    if len(x) == 0:
        return 0.0, 0.0
    x, y, depth = clip(depth, x, y, depth)
    return float(integrals(x, y, depth).sum()), float(areas(x, y).sum())
