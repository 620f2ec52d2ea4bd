"""The points of a survey as columns."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from enum import IntEnum, IntFlag
from typing import Any, Mapping, Optional, Tuple

import numpy as np


class Status(IntEnum):
    """What becomes of a point. ``REJECTED`` points are kept out of the surface, and flagged ones for ``LEFT_OUT``."""

    USED = 0
    FLAGGED = 1
    REJECTED = 2


class Reason(IntFlag):
    """Why a point is flagged or rejected, or no vertex of the surface; several can hold at once."""

    NONE = 0
    BY_HAND = 1
    NO_FIX = 2
    SIGMA_HORIZONTAL = 4
    SIGMA_VERTICAL = 8
    TILT = 16
    POLE_HEIGHT = 32
    STANDING_STILL = 64
    FIX_JUMP = 128
    DUPLICATE = 256
    CHECK_SHOT = 512
    NOT_GROUND = 1024
    PDOP = 2048
    CORRECTION_AGE = 4096
    FEW_EPOCHS = 8192
    OFF_LINE = 16384
    DOUBTFUL_HEIGHT = 32768
    NO_PLACE = 65536
    ZERO = 131072
    SWAPPED = 262144
    STRAY = 524288
    FAR_OFF = 1048576
    LEVEL = 2097152
    IN_LINE = 4194304
    LEFT_OUT = 8388608
    SUPERSEDED = 16777216


#: Reasons for which points are put aside, or asked about, before anything is computed from the others.
GATE_REASONS = Reason.NO_PLACE | Reason.ZERO | Reason.SWAPPED | Reason.STRAY | Reason.FAR_OFF

#: What is marked anew with each surface and decides nothing where it is read.
MARKS = Reason.IN_LINE

#: The extra column that tells the file of each point, in a set of several files.
SOURCE = "source"

#: The extra column that tells the visit of each point, from 1, where the ground of a later visit counts.
VISIT = "visit_of_job"

#: ``fix`` of a point whose file says nothing about it; other values are those of NMEA 0183 GGA
#: (0 none, 1 single, 2 differential, 4 RTK fixed, 5 RTK float, 6 estimated, 7 manual, 8 simulator).
FIX_UNKNOWN = -1


@dataclass(frozen=True)
class PointSet:
    """Survey points as columns of equal length n, in the order of recording.

    ``name``, ``code``: object arrays of str. ``easting``, ``northing``, ``height``: float64, metres.
    ``sigma_h``, ``sigma_v``: float64, metres, nan where unknown. ``fix``: int8 (NMEA GGA numbers,
    ``FIX_UNKNOWN`` where the file does not say). ``time``: float64, seconds since 1970-01-01 UTC, nan
    where unknown. ``tilt``: float64, degrees from the plumb line, nan where unknown.
    ``source_line``: int64, line of the file counted from 1 (0 where there is no file).
    ``status``: uint8 of :class:`Status`; ``reasons``: uint32 bit set of :class:`Reason`.
    ``extra``: further columns as they stood in the file, by name. ``crs``: pyproj CRS, or None
    for a local grid. ``source``: the file the points came from.
    """

    name: np.ndarray
    easting: np.ndarray
    northing: np.ndarray
    height: np.ndarray
    code: np.ndarray
    sigma_h: np.ndarray
    sigma_v: np.ndarray
    fix: np.ndarray
    time: np.ndarray
    tilt: np.ndarray
    source_line: np.ndarray
    status: np.ndarray
    reasons: np.ndarray
    extra: Mapping[str, np.ndarray] = field(default_factory=dict)
    crs: Optional[Any] = None
    source: str = ""

    def __len__(self) -> int:
        return len(self.easting)

    @property
    def used(self) -> np.ndarray:
        """Mask (n,) of the points that may shape the surface: not rejected, not left out."""
        return (self.status != Status.REJECTED) & ~self.left_out

    @property
    def left_out(self) -> np.ndarray:
        """Mask (n,) of the points flagged in stretches that are kept out of the surface, on which nobody decided."""
        out = (self.reasons & np.uint32(Reason.LEFT_OUT)) != 0
        return np.asarray(out & (self.status == Status.FLAGGED))

    @property
    def alone(self) -> np.ndarray:
        """Mask (n,) of the points flagged as far from all others, on which nobody has decided: no ground is drawn to
        them unless a line needs them.
        """
        far = (self.reasons & np.uint32(Reason.FAR_OFF)) != 0
        return np.asarray(far & (self.status == Status.FLAGGED))

    @property
    def in_line(self) -> np.ndarray:
        """Mask (n,) of the points for which a found line stands in the surface, and which no hand has decided on."""
        marked = (self.reasons & np.uint32(Reason.IN_LINE)) != 0
        by_hand = (self.reasons & np.uint32(Reason.BY_HAND)) != 0
        return np.asarray(marked & ~by_hand & self.used)

    @property
    def shaping(self) -> np.ndarray:
        """Mask (n,) of the points that shape the surface by themselves; lines may bring others."""
        return np.asarray(self.used & ~self.alone & ~self.in_line)

    @property
    def off_site(self) -> np.ndarray:
        """Mask (n,) of the points put aside before all else and of those ``alone``: maps of the site leave them out."""
        gated = (self.reasons & np.uint32(GATE_REASONS)) != 0
        return np.asarray(self.alone | (gated & (self.status == Status.REJECTED)))

    def select(self, which: np.ndarray) -> PointSet:
        """The points of a mask or index array ``which``, in that order; of a mask of all, the same."""
        if which.dtype == bool and which.all():
            return self
        columns = {key: getattr(self, key)[which] for key in COLUMNS}
        return replace(self, extra={key: values[which] for key, values in self.extra.items()}, **columns)

    def with_status(self, status: np.ndarray, reasons: np.ndarray) -> PointSet:
        """The same points with other decisions."""
        return replace(self, status=status.astype(np.uint8), reasons=reasons.astype(np.uint32))


COLUMNS: Tuple[str, ...] = (
    "name", "easting", "northing", "height", "code", "sigma_h", "sigma_v", "fix", "time", "tilt",
    "source_line", "status", "reasons",
)  # fmt: skip


def make_points(
    easting: Any, northing: Any, height: Any, *, crs: Optional[Any] = None, source: str = "", **columns: Any
) -> PointSet:
    """A :class:`PointSet` from three coordinate arrays (n,); other columns get their empty value.

    Raises ValueError when a column has another length.
    """
    n = len(easting)
    nan = np.full(n, np.nan)
    empty = np.full(n, "", dtype=object)
    known = {
        "name": empty, "code": empty, "sigma_h": nan, "sigma_v": nan, "time": nan, "tilt": nan,
        "fix": np.full(n, FIX_UNKNOWN, np.int8), "source_line": np.zeros(n, np.int64),
        "status": np.zeros(n, np.uint8), "reasons": np.zeros(n, np.uint32),
    }  # fmt: skip
    extra = columns.pop("extra", {})
    known.update({key: np.asarray(values) for key, values in columns.items()})
    known.update(
        easting=np.asarray(easting, float), northing=np.asarray(northing, float), height=np.asarray(height, float)
    )
    for key, values in list(known.items()) + list(extra.items()):
        if len(values) != n:
            raise ValueError(f"column {key} has {len(values)} values, {n} expected")
    return PointSet(extra=dict(extra), crs=crs, source=source, **known)
