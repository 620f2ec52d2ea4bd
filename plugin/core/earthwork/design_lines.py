"""The lines of a graded design, by what they are."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import List, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP
from ..surface.chains import edge_chains
from .grading import CUT_SLOPE, FILL_SLOPE, PLATFORM, Grading


class DesignLineKind(Enum):
    """What a line of a design is; ``value`` is the word in files and layers."""

    PLATFORM_EDGE = "platform_edge"
    PLATFORM_BREAK = "platform_break"
    SLOPE_BREAK = "slope_break"
    TOP_OF_CUT = "top_of_cut"
    TOE_OF_FILL = "toe_of_fill"
    STEEP_END = "steep_end"


#: What the kinds are called in reports and legends.
DESIGN_LINE_NAMES = {
    DesignLineKind.PLATFORM_EDGE: QT_TRANSLATE_NOOP("core", "platform edge"),
    DesignLineKind.PLATFORM_BREAK: QT_TRANSLATE_NOOP("core", "platform break"),
    DesignLineKind.SLOPE_BREAK: QT_TRANSLATE_NOOP("core", "slope break"),
    DesignLineKind.TOP_OF_CUT: QT_TRANSLATE_NOOP("core", "top of cut"),
    DesignLineKind.TOE_OF_FILL: QT_TRANSLATE_NOOP("core", "toe of fill"),
    DesignLineKind.STEEP_END: QT_TRANSLATE_NOOP("core", "steep end"),
}
#: Those that lie where the design ends.
DAYLIGHT_KINDS = (DesignLineKind.TOP_OF_CUT, DesignLineKind.TOE_OF_FILL, DesignLineKind.STEEP_END)


@dataclass(frozen=True)
class DesignLine:
    """A line ``xyz`` (k, 3) in the CRS, its first vertex repeated where it is closed."""

    kind: DesignLineKind
    xyz: np.ndarray

    @property
    def length(self) -> float:
        """Metres in plan."""
        return float(np.hypot(*np.diff(self.xyz[:, :2], axis=0).T).sum())


def design_lines(grading: Grading) -> Tuple[DesignLine, ...]:
    """Every break and every end of a design, joined to lines by kind."""
    tin, zone = grading.design, grading.zone
    triangle, side = np.nonzero(tin.edge_kind > 0)
    other = tin.neighbours[triangle, side]
    once = (other < 0) | (triangle < other)
    triangle, side, other = triangle[once], side[once], other[once]
    ends = np.stack([tin.triangles[triangle, side], tin.triangles[triangle, (side + 1) % 3]], axis=1)
    own, beyond = zone[triangle], np.where(other >= 0, zone[other], 0)
    on_platform = (own == PLATFORM).astype(int) + (beyond == PLATFORM)
    rim = other < 0
    masks = {
        DesignLineKind.PLATFORM_BREAK: ~rim & (on_platform == 2),
        DesignLineKind.PLATFORM_EDGE: ~rim & (on_platform == 1),
        DesignLineKind.SLOPE_BREAK: ~rim & (on_platform == 0),
        DesignLineKind.TOP_OF_CUT: rim & (own == CUT_SLOPE),
        DesignLineKind.TOE_OF_FILL: rim & (own == FILL_SLOPE),
        DesignLineKind.STEEP_END: rim & (own == PLATFORM),
    }
    place = tin.vertices + np.append(tin.origin, 0.0)
    found: List[DesignLine] = []
    for kind, mask in masks.items():
        found += [DesignLine(kind, place[chain]) for chain in edge_chains(ends[mask])]
    return tuple(found)
