"""In which order to walk parallel passes: to and fro in each cell of the area, then on to the nearest next one.

The cells are those of the to-and-fro decomposition (Choset and Pignon 1998): a pass belongs to the cell of the one
before it as long as each sees only the other beside it.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Dict, List, Tuple

import numpy as np

from ..progress import Progress, silent
from .walk_area import Chords


@dataclass(frozen=True)
class Stretch:
    """One chord as it is walked: its number, and whether against its direction."""

    chord: int
    reverse: bool


def cells_of(chords: Chords) -> List[List[int]]:
    """Chords by cells, each cell in the order of its lines."""
    above, below = _neighbours(chords)
    cells: List[List[int]] = []
    cell_of: Dict[int, int] = {}
    for i in np.lexsort((chords.start, chords.line)).tolist():
        before = below[i][0] if len(below[i]) == 1 else None
        if before is not None and len(above[before]) == 1:
            cell_of[i] = cell_of[before]
            cells[cell_of[i]].append(i)
        else:
            cell_of[i] = len(cells)
            cells.append([i])
    return cells


def _neighbours(chords: Chords) -> Tuple[List[List[int]], List[List[int]]]:
    """For each chord the chords of the next line, and of the one before, that lie beside it."""
    above: List[List[int]] = [[] for _ in range(len(chords))]
    below: List[List[int]] = [[] for _ in range(len(chords))]
    order = np.argsort(chords.line, kind="stable")
    lines, first = np.unique(chords.line[order], return_index=True)
    groups = dict(zip(lines.tolist(), np.split(order, first[1:])))
    for line, here in groups.items():
        there = groups.get(line + 1)
        if there is None:
            continue
        beside = (chords.start[here][:, None] < chords.end[there]) & (chords.start[there] < chords.end[here][:, None])
        for a, b in zip(*np.nonzero(beside)):
            above[here[a]].append(int(there[b]))
            below[there[b]].append(int(here[a]))
    return above, below


def to_and_fro(chords: Chords, place: Tuple[float, float], progress: Progress = silent) -> List[Stretch]:
    """All chords in walking order from ``place`` (along, across): the nearest end of a cell, through it, the next."""
    cells = cells_of(chords)
    walk: List[Stretch] = []
    along, across = place
    while cells:
        progress(len(walk) / len(chords), "plan")
        entry = [_entry(chords, cell, along, across) for cell in cells]
        nearest = min(range(len(cells)), key=lambda k: entry[k][0])
        _, backwards, reverse = entry[nearest]
        cell = cells.pop(nearest)
        for chord in reversed(cell) if backwards else cell:
            walk.append(Stretch(chord, reverse))
            reverse = not reverse
        last = walk[-1]
        along = float((chords.start if last.reverse else chords.end)[last.chord])
        across = float(chords.across[last.chord])
    return walk


def _entry(chords: Chords, cell: List[int], along: float, across: float) -> Tuple[float, bool, bool]:
    """The nearest of a cell's four corners: distance, whether its last line comes first, whether it is reversed."""
    found = []
    for backwards, chord in ((False, cell[0]), (True, cell[-1])):
        for reverse, at in ((False, chords.start[chord]), (True, chords.end[chord])):
            found.append((float(np.hypot(at - along, chords.across[chord] - across)), backwards, reverse))
    return min(found)
