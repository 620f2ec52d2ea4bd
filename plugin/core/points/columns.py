"""Which column of a file holds what."""

from __future__ import annotations

import difflib
import re
from dataclasses import dataclass
from enum import Enum
from typing import Collection, Dict, List, Optional, Sequence, Tuple, Union

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from .words import read_word, roles_by_words


class Kind(Enum):
    """How the fields of a column are read."""

    COORDINATE = "coordinate"
    ANGLE = "angle"
    TEXT = "text"
    NUMBER = "number"
    FIX = "fix"
    TIME = "time"


#: What a column can hold, in the order in which the roles are offered.
ROLES: Dict[str, Kind] = {
    "name": Kind.TEXT,
    "easting": Kind.COORDINATE,
    "northing": Kind.COORDINATE,
    "height": Kind.COORDINATE,
    "code": Kind.TEXT,
    "sigma_h": Kind.NUMBER,
    "sigma_v": Kind.NUMBER,
    "sigma_e": Kind.NUMBER,
    "sigma_n": Kind.NUMBER,
    "fix": Kind.FIX,
    "satellites": Kind.NUMBER,
    "pdop": Kind.NUMBER,
    "age": Kind.NUMBER,
    "epochs": Kind.NUMBER,
    "tilt": Kind.NUMBER,
    "time": Kind.TIME,
    "date": Kind.TIME,
    "latitude": Kind.ANGLE,
    "longitude": Kind.ANGLE,
    "ellipsoidal_height": Kind.COORDINATE,
    "pole_height": Kind.NUMBER,
}

#: Short words for roles in a mapping.
_ALIASES = {
    "id": "name", "pt": "name", "point": "name",
    "e": "easting", "east": "easting", "x": "easting",
    "n": "northing", "north": "northing", "y": "northing",
    "z": "height", "elevation": "height", "elev": "height",
    "desc": "code", "description": "code", "lat": "latitude", "lon": "longitude",
}  # fmt: skip

NO_COLUMNS = Text(
    "columns.none_given", QT_TRANSLATE_NOOP("core", "--columns is empty; name the columns in file order.")
)
UNKNOWN_ROLE = Text(
    "columns.unknown_role",
    QT_TRANSLATE_NOOP(
        "core",
        "--columns: '{word}' is no role{hint}; roles are {roles}. Use '-' to skip a column, '+{word}' to"
        " keep it as it is.",
    ),
)
TWICE = Text("columns.twice", QT_TRANSLATE_NOOP("core", "--columns: '{word}' is given twice; give it once."))
LACKS = Text(
    "columns.lacks",
    QT_TRANSLATE_NOOP(
        "core",
        "--columns lacks {roles}; a point needs easting, northing and height (or latitude, longitude and height).",
    ),
)
MIXED = Text(
    "columns.mixed",
    QT_TRANSLATE_NOOP(
        "core", "--columns: '{word}' mixes two ways; give either all as role=column or all in file order."
    ),
)
BAD_PAIR = Text(
    "columns.bad_pair",
    QT_TRANSLATE_NOOP("core", "--columns: '{word}' is not role=column; a column is a header word or a number from 1."),
)


@dataclass(frozen=True)
class ColumnMap:
    """What the user says of the columns.

    ``ordered``: the words in file order (a role, ``""`` to skip, ``+name`` to keep under that name), or
    None. ``chosen``: role to header word or column number from 1, where ``ordered`` is None.
    """

    ordered: Optional[Tuple[str, ...]] = None
    chosen: Tuple[Tuple[str, Union[int, str]], ...] = ()


def parse_columns(text: str) -> ColumnMap:
    """Read ``name,easting,northing,height,-,+battery`` or ``easting=E,northing=N,height=3``; ``easting=7-16`` where
    columns stand at fixed places, characters from 1 (:func:`.fixed_places.cut_at_places`).

    Roles in any case. Raises SurveyError for an unknown or repeated role, a missing coordinate, and the
    two ways mixed.
    """
    words = [word.strip() for word in text.split(",")]
    if not any(words):
        raise SurveyError(NO_COLUMNS)
    pairs = ["=" in word for word in words]
    if not any(pairs):
        return _parse_ordered(words)
    if not all(pairs):
        raise SurveyError(MIXED, word=words[pairs.index(False)])
    return _parse_chosen(words)


def _parse_ordered(words: Sequence[str]) -> ColumnMap:
    ordered: List[str] = []
    for word in words:
        if word in ("-", ""):
            ordered.append("")
            continue
        column = "+" + word[1:].strip() if word.startswith("+") and word[1:].strip() else _role(word)
        if column in ordered:
            raise SurveyError(TWICE, word=word)
        ordered.append(column)
    _need_coordinates(ordered)
    return ColumnMap(ordered=tuple(ordered))


def _parse_chosen(words: Sequence[str]) -> ColumnMap:
    chosen: Dict[str, Union[int, str]] = {}
    for word in words:
        left, right = (part.strip() for part in word.split("=", 1))
        if not left or not right or right == "0":
            raise SurveyError(BAD_PAIR, word=word)
        role = _role(left)
        if role in chosen:
            raise SurveyError(TWICE, word=role)
        chosen[role] = int(right) if re.fullmatch("[0-9]{1,6}", right) else right
        if chosen[role] == 0 or chosen[role] in [column for other, column in chosen.items() if other != role]:
            raise SurveyError(BAD_PAIR if chosen[role] == 0 else TWICE, word=word if chosen[role] == 0 else right)
    _need_coordinates(list(chosen))
    return ColumnMap(chosen=tuple(chosen.items()))


def _role(word: str) -> str:
    role = word.lower()
    if role in ROLES:
        return role
    if role in _ALIASES:
        return _ALIASES[role]
    near = difflib.get_close_matches(role, ROLES, 1)
    hint = f" ({near[0]}?)" if near else ""
    raise SurveyError(UNKNOWN_ROLE, word=word, hint=hint, roles=", ".join(ROLES))


def _need_coordinates(columns: Sequence[str]) -> None:
    lacking = [role for role in coordinates_of(columns) if role not in columns]
    if lacking:
        raise SurveyError(LACKS, roles=", ".join(lacking))


def plain_word(word: str) -> str:
    """A header word without its unit in brackets, lower case, blanks and dashes as underscores."""
    word = re.sub(r"[\(\[].*", "", word.strip().lstrip("#").strip())
    return re.sub(r"[\s\-.]+", "_", word.strip().lower())


def coordinates_of(roles: Collection[str]) -> Tuple[str, str, str]:
    """The three roles that make a point of a line with these ``roles``: easting and northing go before longitude
    and latitude, height before ellipsoidal height; easting, northing and height where nothing is there.
    """
    plan = any(role in roles for role in ("easting", "northing")) or not any(
        role in roles for role in ("longitude", "latitude")
    )
    first, second = ("easting", "northing") if plan else ("longitude", "latitude")
    high = "ellipsoidal_height" if "height" not in roles and "ellipsoidal_height" in roles else "height"
    return first, second, high


def roles_of_header(words: Sequence[str]) -> Dict[str, List[int]]:
    """For each role the positions whose header word says so; its own name goes before other words, and X and Y
    count as easting and northing where no other word does.
    """
    found, pair = roles_by_words([read_word(word) for word in words])
    if pair:
        found["easting"], found["northing"] = [pair[0]], [pair[1]]
    plain = [plain_word(word) for word in words]
    for role, places in found.items():
        own = [i for i in places if plain[i] == role]
        if own and role not in ("easting", "northing", "height", "latitude", "longitude"):
            found[role] = own
    return found
