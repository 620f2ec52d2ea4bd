"""Check points: independent heights to test a surface against, from a file or from the survey's own check shots."""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum
from typing import Any, Dict, FrozenSet, List, Optional, Sequence, Tuple

import numpy as np

from ..files import PathLike
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..points.columns import plain_word
from ..points.delimited import read_points
from ..points.pointset import PointSet, Reason, Status
from ..surface.ask import ask_surface
from ..surface.tin import Tin
from ..units import LengthUnit

NO_CHECK_SHOTS = Text(
    "check_points.no_shots",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: the survey holds no check shots; give a file of check points, or code check shots (CK in the code "
        "table that is shipped) and use field codes.",
    ),
)
COVER_UNKNOWN = Text(
    "check_points.cover_unknown",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: cover '{word}' of {count} check points is no known word (first in line {line}); they count as "
        "non-vegetated. Write hard, bare, short grass, or tall grass, crops, brush, forest.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "{file}: cover '{word}' of the check point of line {line} is no known word; it counts as "
        "non-vegetated. Write hard, bare, short grass, or tall grass, crops, brush, forest.",
    ),
)
COVER_MISSING = Text(
    "check_points.cover_missing",
    QT_TRANSLATE_NOOP("core", "The cover of {count} check points is not stated; they count as non-vegetated."),
    one=QT_TRANSLATE_NOOP("core", "The cover of one check point is not stated; it counts as non-vegetated."),
)
PLAIN_GRASS = Text(
    "check_points.plain_grass",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} check points have the cover 'grass', which is taken for short grass, so for non-vegetated ground; "
        "write 'tall grass' where it is not.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "One check point has the cover 'grass', which is taken for short grass, so for non-vegetated ground; "
        "write 'tall grass' if it is not.",
    ),
)
SAME_RECEIVER = Text(
    "check_points.same_receiver",
    QT_TRANSLATE_NOOP(
        "core",
        "The check shots were taken with the receiver of the survey: an error they share (base station, pole height, "
        "geoid) does not show. Points from an independent, better source are needed for a statement by a standard.",
    ),
)


class Cover(IntEnum):
    """The two groups the standards report apart: open ground, and ground under tall growth."""

    NON_VEGETATED = 0
    VEGETATED = 1


#: Words of the column ``cover``. The groups are those of the ASPRS standards (from memory: bare soil, sand, rock, short
#: grass, asphalt and concrete against tall weeds and crops, brush, forest); the further words are ours.
COVER_WORDS: Dict[str, Cover] = {
    "hard": Cover.NON_VEGETATED, "paved": Cover.NON_VEGETATED, "pavement": Cover.NON_VEGETATED,
    "asphalt": Cover.NON_VEGETATED, "concrete": Cover.NON_VEGETATED, "gravel": Cover.NON_VEGETATED,
    "urban": Cover.NON_VEGETATED, "open": Cover.NON_VEGETATED, "bare": Cover.NON_VEGETATED,
    "soil": Cover.NON_VEGETATED, "sand": Cover.NON_VEGETATED, "rock": Cover.NON_VEGETATED,
    "short_grass": Cover.NON_VEGETATED, "grass": Cover.NON_VEGETATED, "lawn": Cover.NON_VEGETATED,
    "vegetated": Cover.VEGETATED, "vegetation": Cover.VEGETATED, "tall_grass": Cover.VEGETATED,
    "weeds": Cover.VEGETATED, "tall_weeds": Cover.VEGETATED, "crop": Cover.VEGETATED, "crops": Cover.VEGETATED,
    "reeds": Cover.VEGETATED, "brush": Cover.VEGETATED, "shrub": Cover.VEGETATED, "shrubs": Cover.VEGETATED,
    "bushes": Cover.VEGETATED, "hedge": Cover.VEGETATED, "trees": Cover.VEGETATED, "wood": Cover.VEGETATED,
    "woods": Cover.VEGETATED, "forest": Cover.VEGETATED,
}  # fmt: skip


@dataclass(frozen=True)
class CheckPoints:
    """n check points.

    ``name``, ``cover_word``: (n,) object arrays of str. ``easting``, ``northing``, ``height``: (n,) float64 metres.
    ``sigma_h``, ``sigma_v``: (n,) their own standard deviations in plan and height, metres, nan where unknown.
    ``cover``: (n,) uint8 of :class:`Cover`. ``line``: (n,) int64 line of ``source``.
    ``independent``: False for shots of the receiver that is tested. ``messages``: what was doubtful.
    """

    name: np.ndarray
    easting: np.ndarray
    northing: np.ndarray
    height: np.ndarray
    sigma_h: np.ndarray
    sigma_v: np.ndarray
    cover: np.ndarray
    cover_word: np.ndarray
    line: np.ndarray
    source: str
    independent: bool
    messages: Tuple[Message, ...] = ()

    def __len__(self) -> int:
        return len(self.easting)


@dataclass(frozen=True)
class Comparison:
    """A surface compared with n check points.

    ``difference``: (n,) height of the surface less that of the check point, metres, nan outside the surface.
    ``surface_height``: (n,) metres; ``slope``: (n,) rise over run of the triangle; both nan outside.
    """

    checks: CheckPoints
    surface_height: np.ndarray
    difference: np.ndarray
    slope: np.ndarray

    @property
    def inside(self) -> np.ndarray:
        """Mask (n,) of the check points that lie on the surface."""
        return np.isfinite(self.difference)


@dataclass(frozen=True)
class PlanPairs:
    """k marks that are both in the survey and among the check points, by name.

    ``survey``, ``check``: (k,) their indices. ``east``, ``north``, ``up``: (k,) survey less check, metres.
    """

    survey: np.ndarray
    check: np.ndarray
    east: np.ndarray
    north: np.ndarray
    up: np.ndarray

    def __len__(self) -> int:
        return len(self.east)


def read_check_points(
    path: PathLike,
    *,
    crs: Optional[Any] = None,
    unit: Optional[LengthUnit] = None,
    height_unit: Optional[LengthUnit] = None,
    covers: Optional[Dict[str, Cover]] = None,
) -> CheckPoints:
    """Read check points from delimited text with a header: name, easting, northing, height, sigma_h, sigma_v, cover.

    Only the coordinates are needed. Units as in :func:`..points.delimited.read_points`, which raises SurveyError for
    what cannot be read; lines that are no points are told in ``messages``. ``covers``: words of the column
    cover beyond :data:`COVER_WORDS` or in place of them, in small letters with _ for blanks.
    """
    # The options that answer questions are those of the survey: a header counts here, and heights are of the marks.
    file = read_points(
        path, crs=crs, unit=unit, height_unit=height_unit, units_from="header", heights_of="ground"
    )  # fmt: skip
    column = next((name for name in file.points.extra if plain_word(name) == "cover"), None)
    empty = np.full(len(file.points), "", object)
    words = empty if column is None else np.array([str(word) for word in file.points.extra[column]], object)
    return _check_points(file.points, words, True, covers, file.messages)


def check_shots(points: PointSet, cover: str = "") -> CheckPoints:
    """The check shots of the survey itself: points rejected as ``CHECK_SHOT``; ``cover``: a word for all of them.

    Raises SurveyError where there is none.
    """
    shot = (points.status == Status.REJECTED) & ((points.reasons & np.uint32(Reason.CHECK_SHOT)) != 0)
    if not np.any(shot):
        raise SurveyError(NO_CHECK_SHOTS, file=points.source)
    chosen = points.select(shot)
    return _check_points(chosen, np.full(len(chosen), cover, object), False, None, (message(SAME_RECEIVER),))


def checks_from_points(
    points: PointSet, words: Sequence[str], covers: Optional[Dict[str, Cover]] = None
) -> CheckPoints:
    """Independent check points from points and the word of cover of each; ``covers`` as in :func:`read_check_points`.

    Rejected points are left out. Raises ValueError where there is not one word a point.
    """
    if len(words) != len(points):
        raise ValueError(f"{len(words)} words for {len(points)} points")
    used = points.used
    return _check_points(points.select(used), np.array(words, object)[used], True, covers, ())


def compare(tin: Tin, checks: CheckPoints) -> Comparison:
    """Heights of the surface at the check points, by linear interpolation in the triangle (NSSDA 3.2.1)."""
    answer = ask_surface(tin, np.column_stack([checks.easting, checks.northing]))
    return Comparison(checks, answer.height, answer.height - checks.height, answer.slope)


def pair_by_name(points: PointSet, checks: CheckPoints) -> PlanPairs:
    """Marks with one name (in any case) in the survey and among the check points; names given twice pair with none.

    Rejected points count if they are check shots: those are kept out of the surface, not wrong.
    """
    usable = points.used | ((points.reasons & np.uint32(Reason.CHECK_SHOT)) != 0)
    ours, theirs = _by_name(points.name, usable), _by_name(checks.name, np.ones(len(checks), bool))
    common = [name for name in theirs if name in ours]
    survey = np.array([ours[name] for name in common], np.int64)
    check = np.array([theirs[name] for name in common], np.int64)
    east, north, up = (
        getattr(points, axis)[survey] - getattr(checks, axis)[check] for axis in ("easting", "northing", "height")
    )
    return PlanPairs(survey, check, east, north, up)


def _by_name(names: np.ndarray, usable: np.ndarray) -> Dict[str, int]:
    """Index by name of the usable points whose name none of the others has."""
    found: Dict[str, int] = {}
    twice = set()
    for index in np.flatnonzero(usable).tolist():
        name = str(names[index]).strip().lower()
        if name in found:
            twice.add(name)
        elif name:
            found[name] = index
    return {name: index for name, index in found.items() if name not in twice}


def _check_points(
    points: PointSet,
    words: np.ndarray,
    independent: bool,
    covers: Optional[Dict[str, Cover]],
    said: Tuple[Message, ...],
) -> CheckPoints:
    known = {**COVER_WORDS, **(covers or {})}
    plain = [plain_word(str(word)) for word in words]
    cover = np.array([known.get(word, Cover.NON_VEGETATED) for word in plain], np.uint8)
    doubts = _cover_doubts(plain, words, frozenset(known), points, grass=not covers or "grass" not in covers)
    return CheckPoints(
        points.name, points.easting, points.northing, points.height, points.sigma_h, points.sigma_v, cover, words,
        points.source_line, points.source, independent, (*said, *doubts),
    )  # fmt: skip


def _cover_doubts(
    plain: List[str], words: np.ndarray, known: FrozenSet[str], points: PointSet, grass: bool
) -> List[Message]:
    """What the user should know of how the cover was understood."""
    found: List[Message] = []
    for word in sorted(set(plain) - known - {""}):
        at = [i for i, other in enumerate(plain) if other == word]
        line = int(points.source_line[at[0]])
        found.append(message(COVER_UNKNOWN, file=points.source, word=words[at[0]], count=len(at), line=line))
    if "" in plain:
        found.append(message(COVER_MISSING, count=plain.count("")))
    if grass and "grass" in plain:
        found.append(message(PLAIN_GRASS, count=plain.count("grass")))
    return found
