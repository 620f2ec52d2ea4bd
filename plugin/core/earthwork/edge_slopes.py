"""Slopes of single edges of a pad, from lines drawn along them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Sequence, Set, Tuple

import numpy as np

_NEAR = 0.10  # metres beside a drawn line within which an edge is on it


@dataclass(frozen=True)
class EdgeSlope:
    """Metres out for each metre of cut and of fill (nan: the usual) along a line ``xy`` (k, 2)."""

    xy: np.ndarray
    cut_run: float = float("nan")
    fill_run: float = float("nan")


def runs_of_rings(rings: Sequence[np.ndarray], slopes: Sequence[EdgeSlope]) -> Tuple[Tuple[np.ndarray, ...], Set[int]]:
    """For each ring (k, 2) the runs (k, 2) of its edges, nan for the usual, and the numbers of the lines that were met.

    An edge is on a line when both its ends and its middle are within 0.1 m of it; the later line counts.
    """
    found: List[np.ndarray] = []
    met: Set[int] = set()
    for ring in rings:
        after = np.roll(ring, -1, axis=0)
        runs = np.full((len(ring), 2), np.nan)
        for number, slope in enumerate(slopes):
            on = np.ones(len(ring), bool)
            for place in (ring, (ring + after) / 2, after):
                on &= distances(place, slope.xy) <= _NEAR
            if np.any(on):
                met.add(number)
                runs[on] = np.where(
                    np.isnan([slope.cut_run, slope.fill_run]), runs[on], [slope.cut_run, slope.fill_run]
                )
        found.append(runs)
    return tuple(found), met


def distances(place: np.ndarray, line: np.ndarray) -> np.ndarray:
    """Distance (q,) of places (q, 2) from a line (k, 2) of segments."""
    best = np.full(len(place), np.inf)
    for a, b in zip(line[:-1], line[1:]):
        step = b - a
        t = np.clip((place - a) @ step / max(float(step @ step), 1e-300), 0, 1)
        best = np.minimum(best, np.hypot(*(place - a - t[:, None] * step).T))
    return best
