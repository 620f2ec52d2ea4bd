"""Pads: a polygon at a level or on a plane."""

from __future__ import annotations

from typing import List, Optional, Sequence, Tuple, Union

import numpy as np

from ..linework.constraints import Constraints, LineKind, make_line
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..points.pointset import make_points
from ..surface.build import ALL_ON_A_LINE, NOTHING_LEFT, SurfaceOptions, build_surface
from ..surface.crossings import CrossingRule
from ..surface.tin import Tin
from .grading import Grading, Platform, grade
from .plane import Plane
from .rim import Rim
from .side_slopes import SideSlopes

BAD_PAD = Text(
    "earthwork.pad_ring",
    QT_TRANSLATE_NOOP(
        "core",
        "The outline of the pad crosses or touches itself or a hole; draw it as rings without loops, holes inside.",
    ),
)
SHORT_PAD = Text(
    "earthwork.pad_corners",
    QT_TRANSLATE_NOOP("core", "A ring of the pad has {count} different corners; a ring needs three or more."),
)

_SAME = 1e-4
#: Metres out for each metre of cut and of fill of each edge (k, 2) of a ring, nan for the usual.
Runs = Optional[np.ndarray]


def pad(
    outline: np.ndarray,
    level: Union[float, Plane],
    like: Tin,
    holes: Sequence[np.ndarray] = (),
    runs: Sequence[Runs] = (),
) -> Platform:
    """A platform from a polygon ``outline`` (k, 2) with ``holes``, metres in the CRS of ``like``, at a level or plane.

    ``runs``: for the outline, then each hole, slopes of its edges that are not the usual ones; may be left out. Edge i
    goes from corner i of the ring to the next, whichever way the ring runs.
    Raises SurveyError for a ring of fewer than three corners, and for rings that cross themselves or each other.
    """
    plane = level if isinstance(level, Plane) else Plane(float(level))
    given = [*runs, *[None] * (1 + len(holes) - len(runs))]
    rims: List[Rim] = []
    for number, (ring, own) in enumerate(zip([outline, *holes], given)):
        xy, kept = _cleaned(np.asarray(ring, float)[:, :2], own, like)
        if (_area(xy - like.origin) > 0) != (number == 0):  # the outline counter-clockwise, holes clockwise
            xy = xy[::-1]
            kept = None if kept is None else np.roll(kept[::-1], -1, axis=0)
        rims.append(Rim(np.column_stack([xy, plane.at(xy)]), np.ones(len(xy), bool), kept))
    return Platform(_surface(rims, like), tuple(rims))


def _cleaned(xy: np.ndarray, runs: Runs, like: Tin) -> Tuple[np.ndarray, Runs]:
    """The ring on the grid of the surfaces, open, without repeated corners."""
    closed = len(xy) > 1 and np.allclose(xy[0], xy[-1], atol=1e-6, rtol=0)
    xy = xy[:-1] if closed else xy
    runs = None if runs is None else np.asarray(runs, float)[: len(xy)]
    xy = np.round(xy - like.origin, 4) + like.origin
    own = np.hypot(*(np.roll(xy, -1, axis=0) - xy).T) > _SAME / 2
    if np.count_nonzero(own) < 3:
        raise SurveyError(SHORT_PAD, count=int(np.count_nonzero(own)))
    return xy[own], None if runs is None else runs[own]


def _area(xy: np.ndarray) -> float:
    after = np.roll(xy, -1, axis=0)
    return 0.5 * float(np.sum(xy[:, 0] * after[:, 1] - xy[:, 1] * after[:, 0]))


def _surface(rims: Sequence[Rim], like: Tin) -> Tin:
    """The surface within the first rim and without the others."""
    kinds = [LineKind.BOUNDARY, *[LineKind.VOID] * (len(rims) - 1)]
    lines = tuple(make_line(kind, rim.ring) for kind, rim in zip(kinds, rims))
    corners = np.vstack([rim.ring for rim in rims])
    options = SurfaceOptions(crossing=CrossingRule.MEAN)
    try:
        tin = build_surface(make_points(*corners.T, crs=like.crs), Constraints(lines), options).tin
    except SurveyError as error:
        if error.code in (ALL_ON_A_LINE.code, NOTHING_LEFT.code):  # a ring that runs back along itself
            raise SurveyError(BAD_PAD) from None
        raise
    area = sum(_area(rim.ring[:, :2] - like.origin) for rim in rims)
    if abs(tin.plan_area - area) > 1e-6 * abs(area) + 1e-3 or len(tin.vertices) != len(corners):
        raise SurveyError(BAD_PAD)
    return tin


def grade_pad(
    existing: Tin,
    outline: np.ndarray,
    level: Union[float, Plane],
    slopes: SideSlopes = SideSlopes(),  # noqa: B008  frozen
    holes: Sequence[np.ndarray] = (),
    runs: Sequence[Runs] = (),
) -> Grading:
    """Grade a pad into the ground; see :func:`pad` and :func:`.grading.grade`."""
    return grade(existing, pad(outline, level, existing, holes, runs), slopes)
