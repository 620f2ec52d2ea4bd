"""Ground that a survey spans without having measured it: triangles far wider than its passes are apart.

A hull that was not trimmed, or the rim of an excavation at the edge of a survey, is bridged by long triangles. What
lies in them is no measured ground, and the doubt of ground between points does not reach so far.
"""

from __future__ import annotations

from typing import Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..surface.tin import Tin

WIDE = Text(
    "earthwork.wide_triangles",
    QT_TRANSLATE_NOOP(
        "core",
        "{area:.0f} m² of {name} lie in triangles with edges over {limit:.1f} m, straight over ground that was not "
        "measured: cut and fill there are not known, and not in the intervals. Limit the rim, draw a boundary, or ask "
        "by regions that leave this ground out.",
    ),
    weight=2,
)
#: Times the usual longest edge of a triangle from which one is wide.
FACTOR = 4.0
#: Share of the ground compared from which it is told.
LEAST_SHARE = 0.005


def wide_area(tin: Tin) -> Tuple[float, float]:
    """Square metres in wide triangles, and the length of an edge (m) that makes one wide; edges of lines do not."""
    length = np.where(tin.edge_kind != 0, 0.0, tin.edge_lengths()).max(axis=1)
    some = length > 0
    limit = FACTOR * float(np.median(length[some])) if np.any(some) else float("inf")
    return float(tin.plan_areas()[length > limit].sum()), limit


def said_of_wide(surfaces: Sequence[Tuple[str, Tin]], compared: float) -> Tuple[Message, ...]:
    """What to tell of surveys, each with its name; ``compared``: square metres of all ground compared."""
    said = []
    for name, tin in surfaces:
        area, limit = wide_area(tin)
        if area > LEAST_SHARE * compared:
            said.append(message(WIDE, area=area, name=name, limit=limit))
    return tuple(said)
