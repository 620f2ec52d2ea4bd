"""Two visits to one site: what unchanged ground says of their height offset, and where they differ by more than noise.

Both are asked as a volume between two surveys asks them (:mod:`.small_depths`): ground differs by more than noise where
its depth, less the offset, is beyond what noise of both surveys and the ground between their points make likely, or
where a square changed evenly and its mean stands out.
"""

from __future__ import annotations

from typing import NamedTuple, Optional, Tuple

import numpy as np
from scipy.spatial import cKDTree

from ..confidence import NORMAL_95
from ..messages import Message, SurveyError
from ..progress import Progress, silent
from ..surface.locate import locate, weights_in
from ..surface.spacing import pass_spacing
from ..surface.tin import Tin
from .comparison import NOTHING_COMMON, Comparison
from .places import SAME, parts_by_depth
from .polygons import areas, integrals
from .side import NoiseModel
from .small_depths import Settling, settle
from .study import Certainty
from .surveys import said_of_surveys
from .unchanged import calm
from .volume import Volume

#: Standard deviation (m) of an offset that is not found; that of the same option for volumes.
OFFSET_SIGMA = 0.01


class Ground(NamedTuple):
    """A surface with how sure its points are, and what messages call it."""

    tin: Tin
    certainty: Certainty
    name: str


class GroundChange(NamedTuple):
    """What came of a later visit.

    ``offset``: metres by which it lies higher where nothing changed, 0 where that is not known; ``half``: its doubt
    (95 %), nan where it was given or is not known. ``common``: m² that both cover; ``changed``: m² of it that differ by
    more than noise; ``cut``, ``fill``: m³ there, the offset off. ``messages``: what to tell of the offset.
    """

    offset: float
    half: float
    common: float
    changed: float
    cut: float
    fill: float
    messages: Tuple[Message, ...]


class Revisited:
    """The ground ``before`` a visit and that of the visit, ``after``, compared.

    ``offset``: a known height of the later over the earlier (m), None to find it. Raises SurveyError where both are in
    different CRSs.
    """

    def __init__(
        self, before: Ground, after: Ground, offset: Optional[float] = None, progress: Progress = silent
    ) -> None:
        self.before, self.after, self.given = before, after, offset
        self._model = NoiseModel(before.tin, after.tin, before.certainty.of(before.tin), after.certainty.of(after.tin))
        self._comparison = Comparison(before.tin, after.tin, names=(before.name, after.name), progress=progress)
        self._measured = self._volume()
        self._settling: Optional[Settling] = None
        if self._measured is not None:
            self._settling = settle(self._comparison.both, self._model, self._measured.common_area, offset)

    def _volume(self) -> Optional[Volume]:
        """Of one over the other, the offset in it; None where they have no ground in common."""
        try:
            return self._comparison.volume()
        except SurveyError as error:
            if error.code != NOTHING_COMMON.code:
                raise
            return None

    @property
    def offset(self) -> float:
        """Metres by which the later visit is too high."""
        return (self.given or 0.0) if self._settling is None else self._settling.unchanged.offset

    @property
    def _scale(self) -> float:
        """Of the noise over what is stated for it."""
        return 1.0 if self._settling is None else self._settling.unchanged.scale

    def change(self) -> GroundChange:
        """Offset, and how much ground differs by more than noise."""
        if self._measured is None:
            return GroundChange(self.offset, np.nan, 0.0, 0.0, 0.0, 0.0, ())
        found = self._settling is not None and self.given is None
        half = NORMAL_95 * self._settling.offset_sigma if found and self._settling is not None else np.nan
        said = said_of_surveys(self._comparison, self._settling, self.given, OFFSET_SIGMA)
        return GroundChange(self.offset, half, self._measured.common_area, *self._changed(), tuple(said))

    def _changed(self) -> Tuple[float, float, float]:
        """Area (m²), cut and fill (m³) of the ground that differs by more than noise."""
        lowered = self._comparison.without_offset(self.offset)
        area, net, gross = 0.0, 0.0, 0.0
        for deep, near in parts_by_depth(lowered.both, self._model, self._model.sides, self._scale):
            depth = deep.second_height - deep.first_height
            apart = np.abs(depth).max(axis=1, initial=0.0) > SAME
            moved = self._moved(near.xy, near.depth, near.sd)
            own = integrals(deep.x, deep.y, depth)[apart]
            volume = np.concatenate([own, near.area[moved] * near.depth[moved]])
            area += areas(deep.x, deep.y)[apart].sum() + near.area[moved].sum()
            net, gross = net + volume.sum(), gross + np.abs(volume).sum()
        return float(area), float(gross - net) / 2, float(gross + net) / 2

    def _moved(self, xy: np.ndarray, depth: np.ndarray, sd: np.ndarray) -> np.ndarray:
        """Mask (q,) of places with ``depth`` (m, less the offset) that changed; ``sd``: of noise as stated."""
        moved = ~calm(depth, self._scale * sd)
        changed = None if self._settling is None else self._settling.changed
        result: np.ndarray = moved if changed is None else moved | np.isfinite(changed.depth_at(xy))
        return result

    def differs(self, xyz: np.ndarray, walked: np.ndarray) -> np.ndarray:
        """Mask (n,) of earlier points ``xyz`` (n, 3) that differ from the later ground by more than noise.

        ``walked``: (k, 2) points of the later visit; what is farther from all of them than its passes are from each
        other was not visited, whatever the surface there says.
        """
        result = np.zeros(len(xyz), bool)
        if not len(xyz) or not len(walked):
            return result
        tin, side = self.after.tin, self._model.sides[1]
        reach = pass_spacing(tin.edge_lengths())
        away, _ = cKDTree(walked).query(xyz[:, :2], distance_upper_bound=reach)
        triangle = locate(tin, xyz[:, :2])
        on = np.flatnonzero((triangle >= 0) & np.isfinite(away))
        triangle, local = triangle[on], xyz[on, :2] - tin.origin
        share = weights_in(tin, triangle, local)
        depth = np.sum(share * tin.vertices[tin.triangles[triangle], 2], axis=1) - self.offset - xyz[on, 2]
        own = np.hypot(self.before.certainty.sigma, self.before.certainty.drift)
        variance = own**2 + side.variance_at(triangle, share) + side.departures(triangle, share) ** 2
        result[on] = self._moved(xyz[on, :2], depth, np.sqrt(variance))
        return result
