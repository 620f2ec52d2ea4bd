"""Build the surface with the edits made by hand.

Edits of what is known (moved heights, added points, forced edges) act before the triangulation, edits of
triangles (swapped edges, removed, added and dropped triangles) after it and after boundary and rim; within
each of the two groups their order counts. So an edge is swapped in the triangulation that already has all
added points, wherever in the list they stand.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Dict, Sequence, Set, Tuple

import numpy as np

from ..linework.constraints import Constraints
from ..messages import QT_TRANSLATE_NOOP, Message, Text
from ..points.pointset import PointSet
from ..progress import Progress, part, silent
from .build import Surface, SurfaceOptions, cut_surface, triangulate_survey
from .edit_data import edit_data
from .edit_log import REACH, EditLog
from .edit_triangles import edit_triangles
from .edits import AddPoint, Edit
from .tin import GRID, Tin

POINT_OUTSIDE = Text(
    "edits.point_outside",
    QT_TRANSLATE_NOOP(
        "core",
        "Edit {number} ({kind}): the added point at E {easting:.3f} N {northing:.3f} is no part of the surface; "
        "it is outside the boundary or the trimmed rim, or inside a void.",
    ),
)


@dataclass(frozen=True)
class EditReport:
    """What became of the edits; they are numbered from 1 in the order of the list.

    ``applied``, ``not_applied``: their numbers. ``messages``: one for each edit that does not apply, and for each
    that has no effect, with its ``number``. ``points``, ``constraints``: what the surface was made from, edits
    included.
    """

    applied: Tuple[int, ...]
    not_applied: Tuple[int, ...]
    messages: Tuple[Message, ...]
    points: PointSet
    constraints: Constraints


def build_surface_with_edits(
    points: PointSet,
    constraints: Constraints = Constraints(),  # noqa: B008  frozen and empty
    options: SurfaceOptions = SurfaceOptions(),  # noqa: B008  frozen
    edits: Sequence[Edit] = (),
    progress: Progress = silent,
    reach: float = REACH,
) -> Tuple[Surface, EditReport]:
    """As :func:`.build.build_surface`, with ``edits`` replayed in their order.

    A place in an edit means the nearest point within ``reach`` metres. An edit that no longer applies changes
    nothing and is reported. Raises SurveyError where the survey itself gives no surface, never for an edit.
    """
    log = EditLog()
    data = edit_data(points, constraints, edits, log, reach)
    whole = triangulate_survey(data.points, data.constraints, options, part(progress, 0.0, 0.9))
    whole = edit_triangles(whole, edits, data.pending, log, reach)
    surface = cut_surface(whole, data.points)
    _tell_outside(surface.tin, edits, log)
    applied = tuple(sorted(log.applied))
    missed = tuple(number for number in range(1, len(edits) + 1) if number not in set(applied))
    progress(1.0, "surface")
    return surface, EditReport(applied, missed, log.messages, data.points, data.constraints)


def _tell_outside(tin: Tin, edits: Sequence[Edit], log: EditLog) -> None:
    """Note the added points that became no vertex."""
    added: Dict[int, AddPoint] = {n: e for n, e in enumerate(edits, 1) if isinstance(e, AddPoint) and n in log.applied}
    if not added:
        return
    grid = np.rint((np.array([edit.place for edit in added.values()]) - tin.origin) / GRID).astype(np.int64)
    mine = tin.grid[np.isin(tin.grid[:, 0], grid[:, 0])]
    there: Set[Tuple[int, int]] = {(int(x), int(y)) for x, y in mine}
    for (number, edit), (x, y) in zip(added.items(), grid):
        if (int(x), int(y)) not in there:
            log.tell(number, edit, POINT_OUTSIDE, easting=edit.place[0], northing=edit.place[1])
