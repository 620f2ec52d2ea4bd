"""Numbers that stand for "no value", such as -9999, recognised by where they lie among the others."""

from __future__ import annotations

import re
from typing import List, NamedTuple, Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Figure, Message, Text, message
from .questions import Answer, Question, Topic

MARKED = Text(
    "points.no_value_marked",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: {value} stands {count} times for no {role}, far from all other values; these lines are no points. If "
        "it is meant, give --no-value none.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "{file}: {value} stands for no {role} in line {line}, far from all other values; this line is no point. If it "
        "is meant, give --no-value none.",
    ),
)
WHICH = Text(
    "points.no_value_open",
    QT_TRANSLATE_NOOP(
        "core",
        "{value} stands {count} times as {role}, from line {line} on, and may be meant or may stand for no value",
    ),
)
ALL_ZERO = Text(
    "points.no_value_all_zero",
    QT_TRANSLATE_NOOP("core", "{role} is 0 in all lines and may be meant or may stand for no value"),
)
NO_VALUE = Text("points.no_value_is", QT_TRANSLATE_NOOP("core", "{value} stands for no value"))
MEANT = Text("points.no_value_meant", QT_TRANSLATE_NOOP("core", "{value} is meant"))

_FEWEST = 4
_GLANCE = 4096
#: Times the spread of the rest that a value must lie outside to be no doubt a marker, and so that it may be real.
_FAR, _NEAR = 3.0, 0.5
#: Least spread, metres: flat ground has less than what a marker is off by.
_LEAST = 5.0
#: A value that repeats and is not one that programs write must lie farther.
_STRANGE = 10.0
_STEPS = 4.0
#: So many values that repeat are looked at.
_MOST_INNER = 5
_MARKS = re.compile(
    r"-?(?:9{2,}(?:\.9+)?|8{4,}(?:\.8+)?|32767|32768|2147483647|2147483648|-?1e\+?\d{2,}|3\.4\d*e\+?38|1\.7\d*e\+?308)"
)
#: The ends of number types.
_ENDS = (32767.0, 32768.0, 2147483647.0, 2147483648.0)


class Marker(NamedTuple):
    """``value``: as it stands in the file; ``sure``: whether it stands for no value beyond doubt; ``where``: (k,)."""

    value: float
    sure: bool
    where: np.ndarray


def find_markers(values: np.ndarray, least: float = _LEAST) -> List[Marker]:
    """Markers among ``values`` (n,), nan for none, as they stand in the file.

    ``least``: spread in their unit below which ground counts as flat. What programs write for no value (9999, -99,
    0 and the like) is one where it lies far from the rest: 3 times the middle nine tenths of it, or farther than any
    four steps from point to point. Another number is one where it stands three times and lies farther still; nearer,
    or where the heights of a walk jump to it and back each time, it is in doubt.
    """
    some = values[:: max(1, len(values) // _GLANCE)]
    some = some[np.isfinite(some)]
    if len(some) < _FEWEST:
        return []
    kinds, counts = np.unique(some, return_counts=True)
    usual_ones = _may_be_usual(kinds)
    usual_ones[usual_ones] = [is_usual(kind) for kind in kinds[usual_ones].tolist()]
    single = (counts <= 2) & ~usual_ones
    # Heights to the millimetre seldom repeat; of rounded ones each counts once.
    fine = bool(counts[single].sum() >= 0.5 * len(some))
    rest = some[np.isin(some, kinds[single])] if fine else kinds[~usual_ones]
    if len(rest) < _FEWEST:
        return []
    low, high = _core(rest, fine)
    spread = max(high - low, least)
    with np.errstate(invalid="ignore"):
        outside = np.flatnonzero((values < low - _NEAR * spread) | (values > high + _NEAR * spread))
    found: List[Marker] = []
    step = 0.0
    for value, count in _kinds(values[outside]):
        usual = is_usual(value)
        if not usual and count < 2:
            continue
        where = outside[values[outside] == value]
        off = low - value if value < low else value - high
        step = step or _usual_step(some[np.isin(some, rest)])
        if usual:
            found.append(Marker(value, off > _FAR * spread or off > _STEPS * step + least, where))
        elif off > _STRANGE * spread and off > _STRANGE * step:
            found.append(Marker(value, count > 2, where))
        elif count > 2 and off > (_NEAR if fine else _FAR) * spread and off > _STEPS * step:
            found.append(Marker(value, False, where))
    inner = [float(kind) for kind in kinds[counts > 2 + 5 * len(some) / len(kinds)][:_MOST_INNER]] if fine else []
    known = {marker.value for marker in found}
    return found + [one for one in (_jumped_to(values, kind) for kind in inner if kind not in known) if one is not None]


def _core(rest: np.ndarray, fine: bool) -> Tuple[float, float]:
    """The range of values that are no markers; of few different ones without the outermost at either end."""
    low, high = (float(value) for value in np.percentile(rest, [2.0, 98.0] if fine else [10.0, 90.0]))
    wider = 0.0 if fine else 0.15 * (high - low)
    return low - wider, high + wider


def _jumped_to(values: np.ndarray, value: float) -> Optional[Marker]:
    """A number within the range of a walk as one for none, where the walk jumps to it and back each time."""
    where = np.flatnonzero(values == value)
    is_it = values == value
    rest = values[~is_it]
    edges = np.abs(np.diff(values))[is_it[1:] != is_it[:-1]]
    edges = edges[np.isfinite(edges)]
    limit = _STEPS * _usual_step(rest[np.isfinite(rest)])
    return Marker(value, False, where) if len(where) > 2 and len(edges) and bool((edges > limit).all()) else None


def is_usual(value: float) -> bool:
    """Whether programs write a value for none: 0, nines, eights, and the ends of number types."""
    return value == 0.0 or abs(value) >= 1e10 or _MARKS.fullmatch(f"{value:.9g}") is not None or _MARKS.fullmatch(
        repr(value)
    ) is not None  # fmt: skip


def _may_be_usual(values: np.ndarray) -> np.ndarray:
    """Mask (k,) of the values that may be such ones by their first two digits."""
    size = np.abs(values)
    with np.errstate(divide="ignore", invalid="ignore"):
        first = size / 10.0 ** np.floor(np.log10(size) - 1.0)
    begins = (first < 10.1) | (first > 98.9) | ((first > 87.9) & (first < 89.1)) | (size == 0.0) | (size >= 1e10)
    return np.asarray(begins | np.isin(size, _ENDS))


def _kinds(values: np.ndarray) -> List[Tuple[float, int]]:
    kinds, counts = np.unique(values, return_counts=True)
    order = np.argsort(-counts, kind="stable")[:50]
    return [(float(kinds[i]), int(counts[i])) for i in order]


def _usual_step(rest: np.ndarray) -> float:
    """The step from value to value that only one in a hundred exceeds."""
    steps = np.abs(np.diff(rest))
    return float(np.percentile(steps, 99.0)) if len(steps) else 0.0


def given_markers(values: np.ndarray, words: Sequence[str]) -> List[Marker]:
    """The numbers among the ``words`` of the user that stand in ``values``."""
    found = []
    for word in words:
        try:
            number = float(word.replace(",", "."))
        except ValueError:
            continue
        where = np.flatnonzero(values == number)
        if len(where):
            found.append(Marker(number, True, where))
    return found


def open_question(role: str, doubtful: Sequence[Marker], sure: Sequence[float], line: int) -> Question:
    """Whether the values of ``doubtful`` stand for none; those of ``sure`` do. ``line``: of the first."""
    first = max(doubtful, key=lambda marker: len(marker.where))
    text = message(WHICH, value=Figure(plain(first.value)), count=len(first.where), role=role, line=line)
    values = [plain(marker.value) for marker in doubtful]
    return Question(Topic.NO_VALUE, text, _answers([plain(value) for value in sure], values))


def all_zero(role: str) -> Question:
    """Whether a column of zeros holds any value."""
    return Question(Topic.NO_VALUE, message(ALL_ZERO, role=role), _answers([], ["0"])[::-1])


def _answers(sure: Sequence[str], values: Sequence[str]) -> Tuple[Answer, ...]:
    said = ", ".join(values)
    none = Answer("--no-value", ",".join([*sure, *values]), message(NO_VALUE, value=Figure(said)))
    return (none, Answer("--no-value", ",".join(sure) or "none", message(MEANT, value=Figure(said))))


def plain(value: float) -> str:
    """A value as short as it can be written."""
    return f"{value:.12g}"


def marked(file: str, role: str, marker: Marker, line: int) -> Message:
    """What to tell of a marker."""
    return message(MARKED, file=file, value=Figure(plain(marker.value)), count=len(marker.where), role=role, line=line)
