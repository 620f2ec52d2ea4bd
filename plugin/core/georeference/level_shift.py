"""Heights shifted from a line of the file on: a pole, antenna, base or fix that changed while the survey went on.

Nothing shifts unless the user says so; each shift is recorded like every other change of coordinates.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import List, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..points.pointset import PointSet
from .record import Georeference, Georeferenced, Step

NOT_A_SHIFT = Text(
    "level_shift.not_a_shift",
    QT_TRANSLATE_NOOP(
        "core",
        "'{word}' is no shift of heights; write the line of the file and metres, as in 1153:+0.234, several parted by "
        "commas.",
    ),
)
NO_SUCH_LINE = Text(
    "level_shift.no_such_line",
    QT_TRANSLATE_NOOP(
        "core", "{file}: heights cannot be shifted from line {line} on; its points are in lines {first} to {last}."
    ),
)
SHIFTED = Text(
    "level_shift.shifted",
    QT_TRANSLATE_NOOP(
        "core", "{file}: {shift:+.3f} m added to the heights of {count} points, from line {line} on, as said."
    ),
)


@dataclass(frozen=True)
class LevelShift:
    """``metres`` to be added to the heights from ``line`` of the file on."""

    line: int
    metres: float


def parse_level_shifts(text: str) -> Tuple[LevelShift, ...]:
    """Shifts from the user's words, such as ``1153:+0.234,1800:-0.234``; none for an empty text. Raises SurveyError."""
    found: List[LevelShift] = []
    for word in text.replace(";", ",").split(","):
        if not word.strip():
            continue
        line, _, metres = word.partition(":")
        try:
            shift = LevelShift(int(line), float(metres))
        except ValueError as error:
            raise SurveyError(NOT_A_SHIFT, word=word.strip()) from error
        if shift.line < 1 or not math.isfinite(shift.metres):
            raise SurveyError(NOT_A_SHIFT, word=word.strip())
        found.append(shift)
    return tuple(sorted(found, key=lambda each: each.line))


def shift_levels(points: PointSet, shifts: Tuple[LevelShift, ...]) -> Georeferenced:
    """``points`` with the heights shifted; each shift goes on to the end of the file.

    Raises SurveyError for a line behind the last point.
    """
    lines = points.source_line
    height = points.height.copy()
    said: List[Message] = []
    for shift in shifts:
        behind = lines >= shift.line
        if not behind.any():
            first, last = int(lines.min(initial=0)), int(lines.max(initial=0))
            raise SurveyError(NO_SUCH_LINE, file=points.source, line=shift.line, first=first, last=last)
        height[behind] += shift.metres
        count = int(np.count_nonzero(behind))
        said.append(message(SHIFTED, file=points.source, shift=shift.metres, count=count, line=shift.line))
    record = Georeference(Step.HEIGHTS, points.crs, points.crs, shifts, tuple(said))
    return Georeferenced(replace(points, height=height), record)
