"""What became of each edit when it was replayed, and how edits find what they name."""

from __future__ import annotations

from typing import Any, Dict, List, Optional, Tuple

import numpy as np

from ..messages import Message, Text
from .edits import Edit, Place, kind_of
from .tin import GRID

#: A point within this distance (metres) of a place is meant by it.
REACH = 0.005


class EditLog:
    """Collects what became of numbered edits."""

    def __init__(self) -> None:
        self.applied: List[int] = []
        self._messages: Dict[int, Message] = {}

    def done(self, number: int) -> None:
        self.applied.append(number)

    def tell(self, number: int, edit: Edit, text: Text, **values: Any) -> None:
        """Note why an edit does not apply, or something else about it."""
        self._messages[number] = Message(text, {"number": number, "kind": kind_of(edit), **values})

    @property
    def messages(self) -> Tuple[Message, ...]:
        """In the order of the edits."""
        return tuple(self._messages[number] for number in sorted(self._messages))


class PlaceIndex:
    """Finds positions (n,) near a place; coordinates in metres."""

    def __init__(self, easting: np.ndarray, northing: np.ndarray) -> None:
        self.easting, self.northing = easting, northing
        self._order = np.argsort(easting, kind="stable")
        self._sorted = easting[self._order]

    def near(self, place: Place, reach: float) -> np.ndarray:
        """All items at the position nearest to ``place`` and at most ``reach`` away; empty if there is none.

        Items equal to half the plan grid are at one position. Of two as near, the western, then the southern.
        """
        low, high = np.searchsorted(self._sorted, [place[0] - reach, place[0] + reach], "left")
        items = self._order[low : high + 1]
        dx, dy = self.easting[items] - place[0], self.northing[items] - place[1]
        distance = np.round(np.hypot(dx, dy) / GRID)
        order = np.lexsort((np.round(dy / GRID), np.round(dx / GRID), distance))
        items, distance, dx, dy = items[order], distance[order], dx[order], dy[order]
        if not len(items) or distance[0] * GRID > reach:
            return items[:0]
        here = np.maximum(np.abs(dx - dx[0]), np.abs(dy - dy[0])) < 0.5 * GRID
        found: np.ndarray = np.sort(items[here])
        return found


def first_of(found: np.ndarray) -> Optional[int]:
    """The first of some items, None if there are none."""
    return int(found[0]) if len(found) else None
