"""Grade along a line and crossfall across it, by window, with the doubt that the points' noise makes.

Slopes are ratios (rise over run). A grade is positive where the surface rises with the stations, a crossfall where it
rises to the right. Both are least squares, see :mod:`.slopes`: a grade over the whole window along the line; a
crossfall over sections from one offset to another, ``between`` apart within the window, each with its own height and
all with one crossfall (the mean of their slopes, as they are equally wide).
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Optional, Sequence, Tuple, Union

import numpy as np

from ..messages import SurveyError
from ..surface.cells import runs
from ..surface.tin import Tin
from .line import Alignment
from .pooling import pooled
from .profile import make_profile
from .slopes import LinearForms, Sigma, slope_forms
from .texts import BAD_RANGE, BAD_WINDOW

#: Two distances (m) along a line, None for all of it.
Within = Optional[Tuple[float, float]]
Offsets = Union[float, np.ndarray]

_LEAST_REACH = 0.01  # metres


@dataclass(frozen=True)
class WindowSlopes:
    """Slopes of w windows along a line.

    ``begin``, ``end``: (w,) distances (m) of the window; ``value``, ``sigma``: (w,) rise over run and its standard
    deviation, nan where the surface does not cover the window. ``stretch``: (w, 2) distances for which the window
    stands: halfway to the windows beside it, and to its own end at the line's ends.
    """

    line: Alignment
    begin: np.ndarray
    end: np.ndarray
    value: np.ndarray
    sigma: np.ndarray

    @property
    def middle(self) -> np.ndarray:
        middle: np.ndarray = (self.begin + self.end) / 2
        return middle

    @property
    def stretch(self) -> np.ndarray:
        between = (self.middle[1:] + self.middle[:-1]) / 2
        return np.column_stack([np.append(self.begin[:1], between), np.append(between, self.end[-1:])])

    def __len__(self) -> int:
        return len(self.begin)


def make_windows(
    line: Alignment, window: float, step: Optional[float] = None, within: Within = None
) -> Tuple[np.ndarray, np.ndarray]:
    """Begin and end (w,), (w,) of windows of equal length over the whole line, or between two distances ``within``.

    ``step`` (m): from window to window, the window's length if None; both are shortened or lengthened a little so that
    whole steps fill it. Raises SurveyError for a window that is 0 or longer than the line; one that is only longer than
    ``within`` is shortened to that.
    """
    step = window if step is None else step
    fine = np.isfinite(window) and np.isfinite(step) and 0 < window <= line.length and step > 0
    if not fine or line.length / step > 1e6:
        raise SurveyError(BAD_WINDOW, window=window, step=step, length=line.length)
    first, last = (0.0, line.length) if within is None else within
    length = last - first
    apart = step != window
    window = min(window, length)
    if not apart:
        window = step = length / max(1, round(length / window))
    begin = first + np.linspace(0.0, length - window, max(1, round((length - window) / step) + 1))
    return begin, begin + window


def reach(line: Alignment, tin: Tin, offsets: Sequence[float] = (0.0,)) -> Within:
    """From where to where (m) the line and its parallels at ``offsets`` are on the surface, gaps between left aside.

    So windows need not lose a whole length at an end that lies a little outside. None where nothing is left.
    """
    begin, end = 0.0, line.length
    for offset in offsets:
        try:
            own = make_profile(line, [("", tin)], offset).surfaces[0].distance
        except SurveyError:
            return None
        begin, end = max(begin, float(own.min())), min(end, float(own.max()))
    return (begin, end) if end - begin > _LEAST_REACH else None


def grade_forms(line: Alignment, tin: Tin, begin: np.ndarray, end: np.ndarray, offset: float = 0.0) -> LinearForms:
    """Grades as linear forms, for windows from ``begin`` to ``end`` (w,) of the line's parallel at ``offset``."""
    return slope_forms(tin, [line.between(a, b, offset) for a, b in zip(begin.tolist(), end.tolist())])


def grades(
    line: Alignment,
    tin: Tin,
    sigma: Sigma,
    window: float,
    step: Optional[float] = None,
    offset: float = 0.0,
    within: Within = None,
    together: bool = False,
) -> WindowSlopes:
    """Grade by ``window`` (m) along the line's parallel at ``offset`` (m, right positive), see :func:`make_windows`.

    ``sigma``: noise of the vertices' heights (m), see :data:`.slopes.Sigma`. The run is measured along the parallel.
    ``together``: neighbouring windows help each other (:mod:`.pooling`). Raises SurveyError for windows that do not fit
    and a missing sigma.
    """
    begin, end = make_windows(line, window, step, within)
    forms = grade_forms(line, tin, begin, end, offset)
    found = pooled(forms, tin, sigma) if together else (forms.values(tin), forms.sigmas(sigma))
    return WindowSlopes(line, begin, end, *found)


def crossfall_forms(
    line: Alignment, tin: Tin, begin: np.ndarray, end: np.ndarray, low: Offsets, high: Offsets, between: float = 0.5
) -> LinearForms:
    """Crossfalls as linear forms, for windows from ``begin`` to ``end`` (w,), from offset ``low`` to ``high`` (m), one
    for all windows or (w,)."""
    low, high = (np.broadcast_to(np.asarray(each, float), begin.shape) for each in (low, high))
    bad = np.flatnonzero(~(np.isfinite(low) & np.isfinite(high) & (low < high)))
    if len(bad):
        raise SurveyError(BAD_RANGE, low=float(low[bad[0]]), high=float(high[bad[0]]))
    count = np.maximum(1, np.rint((end - begin) / between)).astype(int)
    window = np.repeat(np.arange(len(begin)), count)
    within = runs(np.zeros_like(count), count)
    distance = begin[window] + (within + 0.5) * ((end - begin) / count)[window]
    sections = np.stack([line.places(distance, low[window]), line.places(distance, high[window])], axis=1)
    return slope_forms(tin, list(sections)).mean_by(window, len(begin))


def crossfalls(
    line: Alignment,
    tin: Tin,
    sigma: Sigma,
    low: float,
    high: float,
    window: float,
    step: Optional[float] = None,
    between: float = 0.5,
    within: Within = None,
) -> WindowSlopes:
    """Crossfall by ``window`` (m), from offset ``low`` to ``high`` (m, right positive), sections ``between`` apart.

    Sections not wholly on the surface are left out; a window without any is nan. Errors as in :func:`grades`, and for
    offsets in the wrong order.
    """
    begin, end = make_windows(line, window, step, within)
    forms = crossfall_forms(line, tin, begin, end, low, high, between)
    return WindowSlopes(line, begin, end, forms.values(tin), forms.sigmas(sigma))


def slopes_at(slopes: WindowSlopes, distance: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Value and sigma (q,), (q,) of the window that stands for each distance (q,) in metres; nan outside all."""
    ends = slopes.stretch
    which = np.clip(np.searchsorted(ends[:, 1], distance, "left"), 0, len(slopes) - 1)
    inside = (distance >= ends[0, 0] - 1e-6) & (distance <= ends[-1, 1] + 1e-6)
    return np.where(inside, slopes.value[which], np.nan), np.where(inside, slopes.sigma[which], np.nan)
