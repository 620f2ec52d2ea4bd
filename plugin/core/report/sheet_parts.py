"""What drawings of profiles and of cross-sections share: scales, colours of lines, room for texts."""

from __future__ import annotations

from typing import List, Sequence, Tuple

import numpy as np

from ..alignment.profile import HeightLine
from ..messages import QT_TRANSLATE_NOOP, Text
from .drawing import INK, ORANGE, PURPLE, TEAL
from .labels import nice_step

SCALES = tuple(f * p for p in (1.0, 10.0, 100.0, 1000.0, 10000.0) for f in (1.0, 2.0, 2.5, 5.0))
COLOURS = ((INK, "-"), (ORANGE, (0, (5, 2))), (PURPLE, (0, (2, 1.5))), (TEAL, (0, (6, 1.5, 1, 1.5))))
BAD_SCALE = Text(
    "sheets.bad_scale", QT_TRANSLATE_NOOP("core", "A scale of 1 : {scale} cannot be. Give a number above 0.")
)


def line_colours() -> Sequence[Tuple[str, object]]:
    return COLOURS * 4


def text_width(text: str, size: float) -> float:
    """About the width (mm) of a text in DejaVu Sans: 0.62 of its size a letter."""
    return len(text) * size * 0.62 * 25.4 / 72


def nice_above(length: float) -> float:
    """The smallest of 1, 2, 5 times a power of ten that is not shorter than ``length`` (> 0)."""
    below = nice_step(length)
    if below >= length * (1 - 1e-9):
        return below
    return next(
        step for step in (below * f for f in (2.0, 2.5, 5.0)) if step >= length and nice_step(step * 1.0001) == step
    )


def with_room(distance: np.ndarray, room: float) -> np.ndarray:
    """Distances in order without those nearer than ``room`` to one that comes earlier in the list."""
    kept: List[float] = []
    for value in distance.tolist():
        if all(abs(value - other) >= room for other in kept):
            kept.append(value)
    return np.sort(np.array(kept))


def clipped(surface: HeightLine, begin: float, end: float) -> List[Tuple[np.ndarray, np.ndarray]]:
    """The parts of ``surface`` from ``begin`` to ``end``, cut there."""
    found = []
    for distance, height in surface.parts():
        low, high = max(begin, float(distance[0])), min(end, float(distance[-1]))
        if high <= low:
            continue
        inside = (distance > low) & (distance < high)
        at = np.concatenate([[low], distance[inside], [high]])
        ends = np.interp([low, high], distance, height)
        found.append((at, np.concatenate([ends[:1], height[inside], ends[1:]])))
    return found
