"""Which point a decision means, in a survey whose file may have been corrected since: by line, name and place.

The line alone does not tell: where a line above was removed, another point stands there. So the point of that line must
have the decision's name; a point whose name is not the only one of its kind, or that has none, must lie where it lay.
"""

from __future__ import annotations

from enum import Enum
from typing import TYPE_CHECKING, Dict, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np
from scipy.spatial import cKDTree

if TYPE_CHECKING:
    from .decided import PointDecision

#: A point lies where it lay, metres.
SAME_PLACE = 0.01
#: A whole survey has moved where so many decisions keep their distances, metres and a share of them.
_MOVED_AT_LEAST, _MOVED_WITHIN, _MOVED_SHARE = 3, 0.02, 0.002


class PointColumns(NamedTuple):
    """Points to be found, n of each: ``files`` ("" where there is but one), ``lines``, ``names`` ("" for none), and
    ``places``: (n, 2) easting and northing in metres, nan where unknown. ``only``: name of the only file, "" for
    none known.
    """

    files: Sequence[str]
    lines: Sequence[int]
    names: Sequence[str]
    places: np.ndarray
    only: str = ""


class How(Enum):
    """What told which point a decision means."""

    LINE = "line"
    NAME = "name"
    PLACE = "place"
    SHIFTED = "shifted"
    NONE = "none"


class Meant(NamedTuple):
    """``point``: index, -1 for none."""

    point: int
    how: How


def points_meant(decided: Sequence[PointDecision], points: PointColumns) -> List[Meant]:
    """The point that each decision means, by the first of these that tells it for sure.

    The point of its line; the only one of its name; the only one at its place. Where no decision finds its place at all
    but their lines hold points that lie to each other as those did (within 2 cm and 0.2 %), the whole survey has moved,
    and the lines count. The limits are our own choice, no source.
    """
    search = _Search(points)
    found = [search.find(one) for one in decided]
    shifted = _whole_survey_moved(decided, found, search)
    return [Meant(shifted[number], How.SHIFTED) if number in shifted else one for number, one in enumerate(found)]


class _Search:
    def __init__(self, points: PointColumns) -> None:
        self.points = points
        self._at: Dict[Tuple[str, int], List[int]] = {}
        self._named: Dict[Tuple[str, str], List[int]] = {}
        for k, (file, line, name) in enumerate(zip(points.files, points.lines, points.names)):
            for of in {file, ""}:  # a decision that names no file may be of each
                self._at.setdefault((of, line), []).append(k)
                self._named.setdefault((of, name), []).append(k)
        self.several = any(points.files)
        self._tree: Optional[cKDTree] = None
        self._finite = np.flatnonzero(np.isfinite(points.places).all(axis=1))

    def find(self, one: PointDecision) -> Meant:
        k = self.of_line(one)
        same = self._of_name(one)
        if k >= 0 and (place_of(one) is None or same == [k] or self.fits(one, k)):
            return Meant(k, How.LINE)
        if len(same) == 1:
            return Meant(same[0], How.NAME)
        near = self._at_place(one)
        return Meant(near[0], How.PLACE) if len(near) == 1 else Meant(-1, How.NONE)

    def of_line(self, one: PointDecision) -> int:
        """The only point of its line that has its name, -1 for none."""
        known = one.name or place_of(one) or one.file in ("", self.points.only) or self.several
        there = self._at.get((self._file(one), one.line), []) if known else []
        there = [k for k in there if self._name_fits(one, k)]
        return there[0] if len(there) == 1 else -1

    def fits(self, one: PointDecision, k: int) -> bool:
        """Whether the point lies where the decision was taken."""
        place = place_of(one)
        return place is not None and bool(np.hypot(*(self.points.places[k] - place)) <= SAME_PLACE)

    def _file(self, one: PointDecision) -> str:
        return one.file if self.several else ""

    def _name_fits(self, one: PointDecision, k: int) -> bool:
        return not one.name or self.points.names[k] == one.name

    def _of_name(self, one: PointDecision) -> List[int]:
        return self._named.get((self._file(one), one.name), []) if one.name else []

    def _at_place(self, one: PointDecision) -> List[int]:
        place = place_of(one)
        if place is None or not len(self._finite):
            return []
        self._tree = self._tree or cKDTree(self.points.places[self._finite])
        near = self._finite[self._tree.query_ball_point(place, SAME_PLACE)].tolist()
        file = self._file(one)
        return [k for k in near if self._name_fits(one, k) and file in ("", self.points.files[k])]


def place_of(one: PointDecision) -> Optional[Tuple[float, float]]:
    """Where its point lay, None where that is unknown."""
    return None if one.easting is None or one.northing is None else (one.easting, one.northing)


def _whole_survey_moved(decided: Sequence[PointDecision], found: Sequence[Meant], search: _Search) -> Dict[int, int]:
    """The points of their lines for decisions that found no place, where the survey has moved as one; else nothing."""
    open_ones: Dict[int, int] = {}
    was, now = [], []
    for number, (one, meant) in enumerate(zip(decided, found)):
        place = place_of(one)
        if place is None:
            continue
        k = search.of_line(one) if meant.how is How.NONE else meant.point
        if k < 0:
            continue
        if meant.how is How.NONE:
            open_ones[number] = k
        elif search.fits(one, k):
            return {}
        was.append(place)
        now.append(search.points.places[k])
    if not open_ones or len(was) < _MOVED_AT_LEAST:
        return {}
    before, after = (np.hypot(*(np.array(each) - each[0]).T)[1:] for each in (was, now))
    alike = np.abs(before - after) <= _MOVED_WITHIN + _MOVED_SHARE * before
    return open_ones if bool(alike.all() and before.min() > SAME_PLACE) else {}
