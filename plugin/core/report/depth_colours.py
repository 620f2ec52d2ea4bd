"""Colours of cut and fill: ColorBrewer's diverging PuOr, which it marks as safe for colour-blind readers."""

from __future__ import annotations

from typing import Sequence

UNCHANGED = "#f7f7f7"
#: From shallow to deep: the two sides of PuOr in eleven classes.
CUT = ("#fee0b6", "#fdb863", "#e08214", "#b35806", "#7f3b08")
FILL = ("#d8daeb", "#b2abd2", "#8073ac", "#542788", "#2d004b")
#: ColorBrewer's Blues, for the depth of water.
WATER = ("#deebf7", "#9ecae1", "#6baed6", "#3182bd", "#08519c")


def depth_colour(label: int, classes: int) -> str:
    """The colour of a depth class: ``label`` 1 to ``classes`` for fill, -1 to -``classes`` for cut, 0 unchanged."""
    if label == 0:
        return UNCHANGED
    return _of(FILL if label > 0 else CUT, abs(label), classes)


def water_colour(label: int, classes: int) -> str:
    """The colour of a class of water depth, 1 to ``classes``."""
    return _of(WATER, label, classes)


def _of(side: Sequence[str], number: int, classes: int) -> str:
    if classes == 1:
        return side[2]
    place = (number - 1) * (len(side) - 1) / (classes - 1)
    first = min(int(place), len(side) - 2)
    return _mixed(side[first : first + 2], place - first)


def _mixed(colours: Sequence[str], share: float) -> str:
    low, high = ([int(colour[i : i + 2], 16) for i in (1, 3, 5)] for colour in colours)
    return "#" + "".join(f"{round(a + share * (b - a)):02x}" for a, b in zip(low, high))
