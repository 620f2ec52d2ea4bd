"""Courses of found lines as text: whole, and short enough for formats that cut long texts off."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Optional, Sequence, Tuple

import numpy as np

#: What a field of a shapefile holds (characters).
SHORT = 254
#: A short course departs so far (m) from the whole one, or as little more as it takes.
NEAR = 0.05
_ROUNDING, _CENTIMETRE = 0.004, 0.011


def course_text(parts: Sequence[np.ndarray]) -> str:
    """Vertices in metres: numbers with blanks, commas between vertices, a bar between the parts."""
    return "|".join(",".join("{:.3f} {:.3f} {:.3f}".format(*place) for place in part.tolist()) for part in parts)


def course_of(text: str) -> Tuple[np.ndarray, ...]:
    """The parts that :func:`course_text` wrote; none for what it did not."""
    try:
        parts = tuple(
            np.array([[float(number) for number in place.split()] for place in part.split(",")], float)
            for part in text.split("|")
            if part
        )
    except ValueError:
        return ()
    good = all(part.ndim == 2 and part.shape[1] == 3 and len(part) > 1 and np.isfinite(part).all() for part in parts)
    return parts if good else ()


@dataclass(frozen=True)
class ShortCourse:
    """``count``: of the vertices; ``sums``: numbers that change when one is moved. ``xy``: (k, 2) its course in
    metres, thinned.
    """

    count: int
    sums: Tuple[float, ...]
    xy: np.ndarray

    def is_of(self, parts: Sequence[np.ndarray]) -> bool:
        """Whether ``parts`` are those it was made of, but for rounding."""
        count = sum(len(part) for part in parts)
        within = _ROUNDING * (2 + np.sqrt(max(count, 1)))
        begins = bool(parts) and bool(np.all(np.abs(parts[0][0, :2] - self.xy[0]) <= _CENTIMETRE))
        return count == self.count and begins and bool(np.all(np.abs(np.subtract(self.sums, _sums(parts))) <= within))


def short_text(parts: Sequence[np.ndarray]) -> str:
    """The sums, and the first of the parts thinned and as steps in centimetres from the first vertex."""
    if not parts:
        return ""
    head = " ".join([str(sum(len(part) for part in parts)), *(f"{number:.3f}" for number in _sums(parts))]) + "|"
    xy = parts[0][:, :2]
    near, text = NEAR, ""
    while not text or len(text) > SHORT:
        kept = _needed(xy, near)
        whole = np.rint(xy[kept] * 100).astype(np.int64)
        steps = np.vstack([whole[:1], np.diff(whole, axis=0)])
        text = head + ",".join(f"{x} {y}" for x, y in steps.tolist())
        near *= 1.5
    return text


def short_of(text: str) -> Optional[ShortCourse]:
    """What :func:`short_text` wrote; None for what it did not."""
    try:
        head, _, tail = text.partition("|")
        count, *sums = head.split()
        numbers = tuple(float(number) for number in sums)
        steps = np.array([[int(number) for number in step.split()] for step in tail.split(",")], np.int64)
    except ValueError:
        return None
    if not count.isdecimal() or len(numbers) != 3 or steps.ndim != 2 or steps.shape[1] != 2 or len(steps) < 2:
        return None
    return ShortCourse(int(count), numbers, np.cumsum(steps, axis=0) / 100.0)


def _sums(parts: Sequence[np.ndarray]) -> Tuple[float, ...]:
    places = np.vstack(list(parts))
    off = places - places[0]
    share = np.linspace(-1, 1, len(off))
    two = off.sum(), (share * (off[:, 0] - off[:, 1] + off[:, 2])).sum()
    return float(places[0, 2]), float(two[0]), float(two[1])


def _needed(xy: np.ndarray, near: float) -> np.ndarray:
    """Mask (k,) of the vertices that a line within ``near`` metres of all needs (Douglas and Peucker 1973)."""
    kept = np.zeros(len(xy), bool)
    kept[[0, -1]] = True
    open_ = [(0, len(xy) - 1)]
    while open_:
        a, b = open_.pop()
        if b - a < 2:
            continue
        link, off = xy[b] - xy[a], xy[a + 1 : b] - xy[a]
        share = np.clip(off @ link / max(float(link @ link), 1e-12), 0, 1)
        away = np.hypot(*(off - share[:, None] * link).T)
        at = int(np.argmax(away))
        if away[at] > near:
            kept[a + 1 + at] = True
            open_ += [(a, a + 1 + at), (a + 1 + at, b)]
    return kept
