"""Words for the level that heights count from, in cells, header words and lines (common practice, no source)."""

from __future__ import annotations

import re
from collections import Counter
from dataclasses import replace
from functools import lru_cache
from typing import FrozenSet, Optional, Sequence, Tuple

from .said_units import said_by
from .source import TextSource
from .vocabulary import LEVELS
from .words import fold

ELLIPSOID = "ellipsoid"
_UNIT = r"m|mtr|metres?|meters?|ft|us-?ft|sft|feet"
_EDGE = r"(?:(?<=^)|(?<=[;,|\t]))"
_CELL = re.compile(
    rf"{_EDGE}(?P<open>[ ]*\"?)(?:(?P<front>[^\W\d_][^\W\d_.]{{1,6}}[0-9]{{0,4}}) ?)?"
    rf"(?P<number>[+-]?[0-9]+[.,][0-9]+)[ ]?(?:(?P<unit>{_UNIT})\b\.?)?"
    r"(?P<behind>[ ]?[(\[]?(?:[^\W\d_][^;,|\t\n\"()]{0,14})?[)\]]?)(?=\"?[ ]*(?:[;,|\t]|$))",
    re.MULTILINE,
)
_LOOKED_AT, _MOST, _SEVERAL = 40, 0.5, 3


def _level(word: str) -> str:
    """The folded name of a level that the signs of a cell are, "" for none; a unit may be glued before it."""
    plain = "".join(fold(word).split())
    return plain if plain in LEVELS else plain[1:] if plain[:1] == "m" and plain[1:] in LEVELS else ""


def without_levels(source: TextSource, comment: str) -> Optional[TextSource]:
    """The file with heights such as "+85.999 NHN" or "NAP 1.20" as plain numbers, None where most lines have none.

    Of several levels only that of most lines is taken off: the others' lines are then no points.
    """
    some = source.first_lines(comment, _LOOKED_AT)
    found = [level for level in (_level_in(text) for text in some) if level]
    if len(found) < max(_SEVERAL, _MOST * (len(some) - 1)):
        return None
    usual = Counter(found).most_common(1)[0][0]

    def bare(match: re.Match) -> str:  # type: ignore[type-arg]
        if _level_of(match) != usual:
            return match[0]
        unit = match["unit"] or ""
        return f"{match['open']}{match['number']}{' ' + unit if unit else ''}"

    return replace(source, data=_CELL.sub(bare, source.data.decode()).encode(), stood=source.stood or source.data)


def _level_in(text: str) -> str:
    return next((level for level in map(_level_of, _CELL.finditer(text)) if level), "")


def _level_of(match: re.Match) -> str:  # type: ignore[type-arg]
    front, behind = match["front"] or "", (match["behind"] or "").strip()
    if front and behind:
        return ""
    return _level(front or behind) if front or behind else ""


@lru_cache(maxsize=4096)
def levels_of(text: str) -> FrozenSet[str]:
    """The levels that a header word or a line names, such as {"nhn"}; that of the ellipsoid by any of its words."""
    words = fold(text).split()
    if any(re.match("ell?ips", word) or word in ("hae", "hell", "ell") for word in words):
        return frozenset() if {"not", "no", "nicht", "non"} & set(words) else frozenset({ELLIPSOID})
    named = {word for word in words if (word in LEVELS and len(word) > 2) or word == "nn"}
    # A name and its year, such as NAVD 88, are one.
    pairs = [(one, one + year) for one, year in zip(words, words[1:]) if year.isdigit() and one + year in LEVELS]
    named = (named - {one for one, _ in pairs}) | {both for _, both in pairs}
    return frozenset(named) if said_by(words).unit is None else frozenset()


def differ(one: FrozenSet[str], other: FrozenSet[str]) -> bool:
    """Whether two parts of a file count heights from levels that are not the same, as far as they say."""
    if ELLIPSOID in one ^ other:
        return True
    return bool(one and other and not one & other)


def levels_among(words: Sequence[str], lines: Tuple[str, ...], height_words: FrozenSet[str]) -> FrozenSet[str]:
    """The levels that the header word of the height says, else the last line about heights that says one."""
    for word in words:
        if levels_of(word):
            return levels_of(word)
    said = [levels_of(line) for line in lines if height_words & set(fold(line).split()) and levels_of(line)]
    return said[-1] if said else frozenset()
