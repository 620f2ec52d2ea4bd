"""Which column of a file holds what."""

from __future__ import annotations

import difflib
import re
from dataclasses import dataclass
from enum import Enum
from typing import Dict, List, Optional, Sequence, Tuple, Union

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text


class Kind(Enum):
    """How the fields of a column are read."""

    COORDINATE = "coordinate"
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
    "fix": Kind.FIX,
    "satellites": Kind.NUMBER,
    "pdop": Kind.NUMBER,
    "tilt": Kind.NUMBER,
    "time": Kind.TIME,
}
COORDINATES: Tuple[str, ...] = tuple(role for role, kind in ROLES.items() if kind is Kind.COORDINATE)

#: Other header words that leave no doubt.
_ALIASES = {
    "id": "name", "pt": "name", "point": "name",
    "e": "easting", "east": "easting", "x": "easting",
    "n": "northing", "north": "northing", "y": "northing",
    "z": "height", "elevation": "height", "elev": "height",
    "desc": "code", "description": "code",
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
    "columns.lacks", QT_TRANSLATE_NOOP("core", "--columns lacks {roles}; a point needs easting, northing and height.")
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
    """Read ``name,easting,northing,height,-,+battery`` or ``easting=E,northing=N,height=3``.

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
    lacking = [role for role in COORDINATES if role not in columns]
    if lacking:
        raise SurveyError(LACKS, roles=", ".join(lacking))


def plain_word(word: str) -> str:
    """A header word without its unit in brackets, lower case, blanks and dashes as underscores."""
    word = re.sub(r"[\(\[].*", "", word.strip().lstrip("#").strip())
    return re.sub(r"[\s\-.]+", "_", word.strip().lower())


def roles_of_header(words: Sequence[str]) -> Dict[str, List[int]]:
    """For each role the positions whose header word says so; its own name goes before other words."""
    plain = [plain_word(word) for word in words]
    found = {role: [i for i, word in enumerate(plain) if word == role] for role in ROLES}
    for role, places in found.items():
        if not places:
            places.extend(i for i, word in enumerate(plain) if _ALIASES.get(word) == role)
    return {role: places for role, places in found.items() if places}
