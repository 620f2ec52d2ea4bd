"""Columns of pole heights: by their words and their values together."""

from __future__ import annotations

from typing import Dict, List, Sequence

import numpy as np

from .composed_words import composed_role, may_be_pole
from .features import Column
from .words import Word, fold

#: What poles and antennas above the ground are, in metres, feet or millimetres; a pole is changed now and then.
_LOWEST, _HIGHEST, _MOST_DIFFERENT = 0.0, 35.0, 0.1
#: Metres of the poles in use (common practice, no source), of a column whose words say nothing.
_USUAL, _FEW, _ROWS = (1.2, 4.0), 3, 10


def find_poles(
    named: Dict[str, List[int]], words: Sequence[Word], header: Sequence[str], columns: Sequence[Column]
) -> None:
    """Columns get the role of pole heights where word and values say so, and lose it where the values cannot be.

    A height of the antenna beside another height is that of the pole if it is as low and steady as a pole. A short
    word such as HR counts with such values alone, and a word that nobody knows with values that poles usually have.
    """
    levels = [place for role in ("height", "ellipsoidal_height") for place in named.get(role, [])]
    for place in levels if len(levels) > 1 else ():
        of_antenna = words[place].of == "antenna" or composed_role(fold(header[place]).split()) == "pole_height"
        if place < len(columns) and of_antenna and _steady(columns[place]):
            _change(named, place, "pole_height")
    if not any(named.get(role) for role in ("height", "ellipsoidal_height")):
        for place in named.get("pole_height", [])[:1]:
            if place < len(columns) and columns[place].is_number and not _steady(columns[place]):
                _change(named, place, "height")
    if named.get("pole_height"):
        return
    known = {place for places in named.values() for place in places}
    free = [column for column in columns[: len(header)] if column.place not in known]
    short = [column for column in free if may_be_pole(fold(header[column.place]).split()) and _steady(column)]
    strange = [column for column in free if _is_strange(words[column.place], header[column.place]) and _usual(column)]
    if short or len(strange) == 1:
        named["pole_height"] = [(short or strange)[0].place]


def _change(named: Dict[str, List[int]], place: int, role: str) -> None:
    for other in list(named):
        named[other] = [one for one in named[other] if one != place]
        if not named[other]:
            del named[other]
    named.setdefault(role, []).append(place)


def _steady(column: Column) -> bool:
    """Whether the values are as low as poles and change as seldom."""
    good = column.good
    if not column.is_number or not len(good) or good.min() < _LOWEST or not good.any():
        return False
    high = good.max() <= _HIGHEST or (column.whole and good.min() >= 500.0 and good.max() <= 5000.0)
    return bool(high) and len(np.unique(good)) <= max(_FEW, _MOST_DIFFERENT * len(good))


def _usual(column: Column) -> bool:
    good = column.good
    return (
        column.is_number
        and len(good) >= _ROWS
        and column.decimals >= 2
        and _USUAL[0] <= float(good.min())
        and float(good.max()) <= _USUAL[1]
        and len(np.unique(good)) <= _FEW
    )


def _is_strange(word: Word, text: str) -> bool:
    plain = "".join(fold(text).split())
    return not (word.role or word.doubtful or plain.endswith("dop")) and any(sign.isalpha() for sign in plain)
