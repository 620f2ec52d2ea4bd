"""Where sections of a strip run at the corners of its centreline, so that they do not cross within its width.

A section halves the angle at a corner. Inside a bend the edge of the strip loses length at every corner; where a
piece of the centreline would lose all of it, the piece has no edge there, and its sections meet in the corner of the
edges before and after it. Outside, a corner is a mitre or, rounded, a fan of sections; but a mitre where a fan leaves
the piece before or after it no edge (a jog), and a fan where a mitre would run out more than 3.3 times the width.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text

BEND_TOO_TIGHT = Text(
    "earthwork.bend_too_tight",
    QT_TRANSLATE_NOOP(
        "core",
        "The strip has no room inside the bend near E {easting:.3f} N {northing:.3f}: its edge, {width:.2f} m beside "
        "the centreline, cannot be joined there. Ease the bend, narrow the section, or begin the line farther away.",
    ),
)

FAN_STEP = np.radians(10.0)  # as the slopes' fans: the edge of a rounded corner is 0.4 % nearer in its middle
_LEAST_MITRE = 0.3  # cosine of half the turn below which a mitre would run too far out
_LEAST_ROOM = 0.01  # metres of edge below which a piece of the centreline has none


@dataclass(frozen=True)
class SideCorners:
    """One side of a line of m pieces, ``width`` metres wide.

    ``lean``: (m, 2) metres that sections run on for each metre beside the line, at the beginning and the end of each
    piece; ``kept``: (m,) bool, pieces that have an edge; ``pivot``: (m, 2) for the others where their sections meet;
    ``group``: (m,) number of that place, -1 none. ``fan``: (m - 1,) bool, corners around which sections fan out.
    """

    width: float
    sign: float
    lean: np.ndarray
    kept: np.ndarray
    pivot: np.ndarray
    group: np.ndarray
    fan: np.ndarray


def side_corners(xy: np.ndarray, along: np.ndarray, width: float, sign: float, rounded: bool) -> SideCorners:
    """The corners of a line ``xy`` (m + 1, 2) with directions ``along`` (m, 2) on its right (``sign`` 1) or left (-1).

    With a ``width`` of 0 all sections halve their angles. Raises SurveyError where a side so wide cannot be joined.
    """
    m = len(along)
    length = np.hypot(*np.diff(xy, axis=0).T)
    normal = sign * right_of(along)
    kept, may_fan = np.arange(m), np.full(m - 1, rounded)
    while True:
        end, begin, fan = _meetings(xy, along, normal, length, kept, width, sign, may_fan)
        room = np.append(end, length[-1]) - np.append(0.0, begin)
        tight = int(np.argmin(room))
        if width == 0 or room[tight] > _LEAST_ROOM:
            break
        beside = kept[[k for k in (tight - 1, tight) if 0 <= k < len(fan) and fan[k] and may_fan[kept[k]]]]
        if len(beside):  # a mitre leaves more of the edge
            may_fan[beside] = False
            continue
        if tight in (0, len(kept) - 1):
            _refuse(xy[kept[tight] + (tight == 0)], width)
        kept = np.delete(kept, tight)
    _check_pivots(xy, along, normal, kept, begin, width)
    lean, at_corner = np.zeros((m, 2)), np.zeros(m - 1, bool)
    before, after = kept[:-1], kept[1:]
    lean[before, 1], lean[after, 0] = end, begin
    if width > 0:
        lean[before, 1] -= length[before]
        lean /= width
    at_corner[before[fan]] = True
    pivot, group = np.full((m, 2), np.nan), np.full(m, -1)
    for number, (i, j) in enumerate(zip(before.tolist(), after.tolist())):
        pivot[i + 1 : j] = xy[j] + width * normal[j] + begin[number] * along[j]
        group[i + 1 : j] = number
    mask = np.zeros(m, bool)
    mask[kept] = True
    return SideCorners(width, sign, lean, mask, pivot, group, at_corner)


def right_of(along: np.ndarray) -> np.ndarray:
    """Directions (k, 2) to the right of directions (k, 2)."""
    return np.column_stack([along[:, 1], -along[:, 0]])


def _meetings(
    xy: np.ndarray, along: np.ndarray, normal: np.ndarray, length: np.ndarray, kept: np.ndarray,
    width: float, sign: float, may_fan: np.ndarray,
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:  # fmt: skip
    """Where the edges of neighbouring ``kept`` pieces meet: metres along the one and the other, and whether by a fan.

    For no width: the lean of the section at the end of the one and the beginning of the other.
    """
    i, j = kept[:-1], kept[1:]
    cross = along[i, 0] * along[j, 1] - along[i, 1] * along[j, 0]
    half = sign * cross / np.maximum(1 + np.sum(along[i] * along[j], axis=1), 1e-12)  # tangent of half the turn
    if width == 0:
        return half, -half, np.zeros(len(i), bool)
    end, begin = length[i] + width * half, -width * half
    beside = j == i + 1
    sharp = np.cos(np.arctan(half)) < _LEAST_MITRE
    fan = beside & (half > 0) & (sharp | (may_fan[i] & (2 * np.arctan(half) > FAN_STEP)))
    end[fan], begin[fan] = length[i[fan]], 0.0
    for k in np.flatnonzero(~beside):
        if abs(cross[k]) < 1e-9:
            _refuse(xy[i[k] + 1], width)
        apart = xy[j[k]] + width * normal[j[k]] - xy[i[k]] - width * normal[i[k]]
        for into, other in ((end, along[j[k]]), (begin, along[i[k]])):
            into[k] = (apart[0] * other[1] - apart[1] * other[0]) / cross[k]
    return end, begin, fan


def _check_pivots(
    xy: np.ndarray, along: np.ndarray, normal: np.ndarray, kept: np.ndarray, begin: np.ndarray, width: float
) -> None:
    """Refuse places where edges meet across lost pieces that are far from these: the bend turns back on itself."""
    for i, j, at in zip(kept[:-1].tolist(), kept[1:].tolist(), begin.tolist()):
        if j > i + 1:
            place = xy[j] + width * normal[j] + at * along[j]
            if np.hypot(*(xy[i + 1 : j + 1] - place).T).max() > width / _LEAST_MITRE:
                _refuse(xy[i + 1], width)


def _refuse(place: np.ndarray, width: float) -> None:
    raise SurveyError(BEND_TOO_TIGHT, easting=float(place[0]), northing=float(place[1]), width=width)


def ways_beside(
    side: SideCorners, xy: np.ndarray, along: np.ndarray, piece: np.ndarray, walked: np.ndarray, step: float
) -> Tuple[np.ndarray, np.ndarray]:
    """Where a place one metre beside the line is from it (s, 2), at ``walked`` (s,) metres along a ``piece`` (s,) of
    it, and the number (s,) of the place in which sections meet, -1 none.

    Sections turn square to the line within a ``step`` from a corner, or twice as far as the edge is shifted there.
    """
    length = np.hypot(*np.diff(xy, axis=0).T)
    reach = np.maximum(step, 2 * side.width * np.abs(side.lean))
    reach = np.where(side.lean == 0, 0.0, np.minimum(reach, length[:, None]))
    if side.width > 0:  # two corners of one piece share it
        reach = np.where((reach.sum(axis=1) > length)[:, None] & (reach > 0), length[:, None], reach)
    with np.errstate(divide="ignore", invalid="ignore"):
        left = np.column_stack([walked, length[piece] - walked])
        share = np.where(reach[piece] > 0, np.maximum(0.0, 1 - left / reach[piece]), 0.0)
    skew = np.sum(side.lean[piece] * share, axis=1)
    way = side.sign * right_of(along)[piece] + skew[:, None] * along[piece]
    group = side.group[piece].copy()
    lost = ~side.kept[piece]
    place = xy[piece] + walked[:, None] * along[piece]
    way[lost] = (side.pivot[piece[lost]] - place[lost]) / side.width if side.width > 0 else way[lost]
    first = (walked == 0) & ~lost & (piece > 0)  # the corner at which an edge begins belongs to what it ends
    group[first] = side.group[piece[first] - 1]
    return way, group
