"""Lines whose heights are doubtful: 0 where the ground is not, or none where they run through survey points."""

from __future__ import annotations

from typing import List, Tuple

import numpy as np
from scipy.spatial import cKDTree

from ..linework.constraints import ConstraintLine, Constraints, LineKind
from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..points.pointset import PointSet
from .tin import GRID

AT_ZERO = Text(
    "lines_at_zero",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} lines have the height 0 all along, where the points nearest to them lie at {low:.3f} m to "
        "{high:.3f} m: {labels}. The surface goes down (or up) to 0 there. If the drawing has no heights, give these "
        "lines as lines without heights, or give them heights.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "A line has the height 0 all along, where the points nearest to it lie at {low:.3f} m to "
        "{high:.3f} m: {labels}. The surface goes down (or up) to 0 there. If the drawing has no heights, give this "
        "line as a line without heights, or give it heights.",
    ),
)
PARTLY_AT_ZERO = Text(
    "lines_partly_at_zero",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} lines have the height 0 at some of their vertices, where the points nearest to them lie at "
        "{low:.3f} m to {high:.3f} m: {labels}. That makes pits or spikes. If 0 means that nobody measured a height "
        "there, leave it empty.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "A line has the height 0 at some of its vertices, where the points nearest to them lie at {low:.3f} m to "
        "{high:.3f} m: {labels}. That makes pits or spikes. If 0 means that nobody measured a height there, leave it "
        "empty.",
    ),
)
WITHOUT_HEIGHTS = Text(
    "lines_without_heights",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} breaklines have no heights, though vertices of theirs are survey points: {labels}. They are laid on "
        "the surface and do not shape it. If they are to hold edges, give them heights.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "A breakline has no heights, though vertices of it are survey points: {labels}. It is laid on "
        "the surface and does not shape it. If it is to hold edges, give it heights.",
    ),
)
_FAR = 1.0  # metres from 0 from which ground is not at 0; common practice, no source
_NAMED = 5  # labels told


def doubtful_heights(points: PointSet, constraints: Constraints) -> Tuple[Message, ...]:
    """What is to be told of the heights of lines. ``points``: those used and others."""
    used = np.flatnonzero(points.used)
    lines = [(f"#{i + 1}" if not line.label else line.label, line) for i, line in enumerate(constraints.lines)]
    zero = [(label, line) for label, line in lines if np.any(line.xyz[:, 2] == 0)]
    bare = [(label, line) for label, line in lines if _is_bare(line)]
    if len(used) == 0 or not (zero or bare):
        return ()
    place = np.column_stack([points.easting[used], points.northing[used]])
    tree = cKDTree(place)
    height = points.height[used]
    said: List[Message] = []
    for whole, text in ((True, AT_ZERO), (False, PARTLY_AT_ZERO)):
        some = [(label, line.xyz) for label, line in zero if bool(np.all(line.xyz[:, 2] == 0)) == whole]
        around = [(label, _beside(tree, height, xyz[xyz[:, 2] == 0, :2])) for label, xyz in some]
        far = [(label, z) for label, z in around if len(z) and (np.nanmin(z) > _FAR or np.nanmax(z) < -_FAR)]
        if far:
            low, high = min(np.nanmin(z) for _, z in far), max(np.nanmax(z) for _, z in far)
            labels = _labels([label for label, _ in far])
            said.append(message(text, count=len(far), low=float(low), high=float(high), labels=labels))
    through = [label for label, line in bare if np.any(tree.query(line.xyz[:, :2])[0] <= GRID / 2)]
    if through:
        said.append(message(WITHOUT_HEIGHTS, count=len(through), labels=_labels(through)))
    return tuple(said)


def _beside(tree: cKDTree, height: np.ndarray, xy: np.ndarray) -> np.ndarray:
    """Heights of the points nearest to places (k, 2), but for places on a point, which keeps its own height."""
    distance, nearest = tree.query(xy)
    result: np.ndarray = height[nearest[distance > GRID / 2]]
    return result


def _is_bare(line: ConstraintLine) -> bool:
    return line.kind == LineKind.BREAKLINE and len(line.xyz) > 0 and bool(np.all(np.isnan(line.xyz[:, 2])))


def _labels(labels: List[str]) -> str:
    return ", ".join(labels[:_NAMED]) + (", …" if len(labels) > _NAMED else "")
