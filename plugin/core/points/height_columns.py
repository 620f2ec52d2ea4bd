"""Which column holds the height, and of what kind it is."""

from __future__ import annotations

from typing import Dict, List, Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from .features import MOST, Column
from .geographic import HeightKind
from .questions import Question, Topic
from .reading import Case, Pair, by_word, word_of

ONLY_HEIGHT = Text(
    "recognise.only_height", QT_TRANSLATE_NOOP("core", "column {column} is the height: no other column can be")
)
WHICH_HEIGHT = Text("recognise.which_height", QT_TRANSLATE_NOOP("core", "several columns may be the height: {columns}"))
HEIGHT_BY_WORD = Text(
    "recognise.height_by_word",
    QT_TRANSLATE_NOOP("core", "column {columns} may be the height, but its header word '{word}' is not known"),
)
NO_HEIGHT = Text("recognise.no_height", QT_TRANSLATE_NOOP("core", "no column can be the height"))


def settle_height(case: Case, pair: Optional[Pair]) -> Tuple[List[Dict[str, int]], Tuple[Message, ...], List[Question]]:
    """Readings of the height (role to position), the likeliest first; reasons; and what is open."""
    named = [role for role in ("height", "ellipsoidal_height") if case.named.get(role)]
    if named:
        places = {role: case.named[role][0] for role in named}
        return [places], tuple(by_word(case, role, place) for role, place in places.items()), []
    if pair is None:
        return [], (), []
    found = _height_candidates(case, pair)
    readings = [{"height": column.place} for column in found]
    if not found:
        return [], (), [Question(Topic.COLUMNS, message(NO_HEIGHT), ())]
    worded = any(word_of(case, column.place) for column in found)
    if len(found) > 1 or worded or _doubtful(case, pair, found[0]):
        columns = ", ".join(str(column.place + 1) for column in found)
        text = message(WHICH_HEIGHT, columns=columns)
        if len(found) == 1 and worded:
            text = message(HEIGHT_BY_WORD, columns=columns, word=word_of(case, found[0].place))
        return readings, (), [Question(Topic.HEIGHT, text, ())]
    return readings, (message(ONLY_HEIGHT, column=found[0].place + 1),), []


def _doubtful(case: Case, pair: Pair, only: Column) -> bool:
    """Whether the only column that may be the height is one of whole numbers, most of them, beside a plan with
    decimals, or another holds numbers in part of its lines, or is left out for some of them alone.
    """
    fractions = pair.degrees or not (pair.first.whole and pair.second.whole)
    if fractions and (only.whole or only.decimals == 0):
        return True
    taken = {place for places in case.named.values() for place in places} | {only.place, *pair.places.values()}
    others = [column for column in case.columns if column.place not in taken and column.decimals > 0]
    return any(
        0.2 <= column.numeric < MOST or (column.is_number and column.beyond(35_000.0) and abs(column.middle) < 9_000.0)
        for column in others
    )


def _height_candidates(case: Case, pair: Pair) -> List[Column]:
    """Columns of numbers that may be heights: those that look like quality figures only where nothing else is left."""
    taken = {place for places in case.named.values() for place in places} | set(pair.places.values())
    fractions = pair.degrees or not (pair.first.whole and pair.second.whole)
    before = min(pair.places.values())
    free = [
        column for column in case.columns
        if column.place not in taken and column.is_number and not column.beyond(35_000.0)
        and not (column.counts and (fractions or column.place < before))
    ]  # fmt: skip
    likely = [column for column in free if not (column.whole and fractions)]
    likely = [column for column in likely if not like_sigma(column)] or likely
    varied = [column for column in likely if column.span > 0.0]
    likely = varied if len(case.look.rows) >= 10 and varied else likely
    exact = [column for column in likely if column.decimals > 1]
    likely = exact or likely
    return sorted(likely or free, key=lambda column: abs(column.place - max(pair.places.values()) - 0.9))


def like_sigma(column: Column) -> bool:
    good = column.good
    return len(good) > 0 and bool(good.min() >= 0.0) and float(np.percentile(good, 90)) < 0.5 and column.decimals >= 2


def height_kind(case: Case, heights: Sequence[Dict[str, int]]) -> HeightKind:
    if not heights or ("height" in heights[0] and not case.look.above.ellipsoidal):
        return HeightKind.UNKNOWN
    return HeightKind.ELLIPSOIDAL
