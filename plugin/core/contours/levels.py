"""The levels at which contours are drawn."""

from __future__ import annotations

import math
from dataclasses import dataclass
from fractions import Fraction

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from .lines import ContourOptions

#: More levels than this on one surface are a slip of the keyboard, not a drawing.
MOST_LEVELS = 20_000
#: The number of a level, counted from the base, is kept in 64 bits.
FARTHEST_STEP = 2**62

BAD_INTERVAL = Text(
    "contours.interval",
    QT_TRANSLATE_NOOP("core", "The contour interval is {interval} {unit}; give a number above 0."),
)
BAD_BASE = Text(
    "contours.base",
    QT_TRANSLATE_NOOP("core", "The base of the contour levels is {base} {unit}; give a number near the heights."),
)
BAD_INDEX_EVERY = Text(
    "contours.index_every",
    QT_TRANSLATE_NOOP("core", "Index contours are set to every {index_every} contours; give a whole number from 1 up."),
)
TOO_MANY_LEVELS = Text(
    "contours.too_many_levels",
    QT_TRANSLATE_NOOP(
        "core",
        "A contour interval of {interval} {unit} makes {count} levels from {low:.3f} m to {high:.3f} m, "
        "more than {most}; give a larger interval, or look for a wrong height.",
    ),
)
LEVELS_COINCIDE = Text(
    "contours.levels_coincide",
    QT_TRANSLATE_NOOP(
        "core",
        "A contour interval of {interval} {unit} is too small to tell levels apart at heights near {high:.3f} m; "
        "give a larger interval.",
    ),
)


@dataclass(frozen=True)
class Levels:
    """Levels in rising order: ``step`` (l,) int64 (the k of each), ``in_unit`` and ``metres`` (l,) float64."""

    step: np.ndarray
    in_unit: np.ndarray
    metres: np.ndarray

    def __len__(self) -> int:
        return len(self.step)


def check_options(options: ContourOptions) -> None:
    """Raise ``SurveyError`` for an interval, base or index count that cannot be drawn."""
    unit = options.unit.symbol
    if not (math.isfinite(options.interval) and options.interval > 0):
        raise SurveyError(BAD_INTERVAL, interval=options.interval, unit=unit)
    if not math.isfinite(options.base):
        raise SurveyError(BAD_BASE, base=options.base, unit=unit)
    if options.index_every < 1 or options.index_every != int(options.index_every):
        raise SurveyError(BAD_INDEX_EVERY, index_every=options.index_every)


def level_count(options: ContourOptions, low: float, high: float) -> float:
    """About how many levels lie between two heights (metres)."""
    return (high - low) / options.unit.metres / options.interval


def levels_between(options: ContourOptions, low: float, high: float) -> Levels:
    """The levels that part a surface with heights ``low``..``high`` (metres): low < level <= high.

    The sum ``base + k * interval`` is exact in decimal, so that level 3 of interval 0.1 is 0.3 and
    meets a height read as 0.3; the metres are one product, as for a height read in feet.
    Raises ``SurveyError`` for options that cannot be drawn.
    """
    check_options(options)
    metres, unit = options.unit.metres, options.unit.symbol
    count = level_count(options, low, high)
    if not count < MOST_LEVELS:
        raise SurveyError(
            TOO_MANY_LEVELS,
            interval=options.interval,
            unit=unit,
            count=f"{count:.0f}",
            low=low,
            high=high,
            most=MOST_LEVELS,
        )
    base, interval = Fraction(repr(float(options.base))), Fraction(repr(float(options.interval)))
    first = math.floor((Fraction(low) / Fraction(metres) - base) / interval) - 1
    if abs(first) > FARTHEST_STEP:
        raise SurveyError(BAD_BASE, base=options.base, unit=unit)
    steps = range(first, first + math.ceil(count) + 4)
    in_unit = np.array([float(base + k * interval) for k in steps])
    in_metres = in_unit * metres
    even = options.interval * metres
    if not np.all(np.abs(np.diff(in_metres) - even) <= 1e-3 * even):
        raise SurveyError(LEVELS_COINCIDE, interval=options.interval, unit=unit, high=high)
    inside = (in_metres > low) & (in_metres <= high)
    return Levels(np.array(steps, dtype=np.int64)[inside], in_unit[inside], in_metres[inside])


def rank_heights(heights: np.ndarray, levels: np.ndarray) -> np.ndarray:
    """How many of ``levels`` each height reaches, (n,) int16; a height equal to a level reaches it.

    ``levels``: evenly spaced, rising, at most ``MOST_LEVELS``. The same as
    ``numpy.searchsorted(levels, heights, side="right")``, several times faster: a guess from the
    even spacing, put right against the levels themselves.
    """
    if len(levels) == 0:
        return np.zeros(len(heights), dtype=np.int16)
    spacing = (levels[-1] - levels[0]) / (len(levels) - 1) if len(levels) > 1 else 1.0
    guess = (heights - levels[0]) * (1.0 / spacing)
    rank = (np.clip(guess, -1.0, len(levels) - 1.0) + 1.0).astype(np.int16)
    fenced = np.concatenate([[-np.inf], levels, [np.inf]])
    rank += heights >= fenced[rank + 1]
    rank -= heights < fenced[rank]
    return rank
