"""Lines that the points show, found again on the points that are kept, and what the surface holds to of them."""

from __future__ import annotations

from typing import Optional, Sequence, Tuple

import numpy as np

from ..features.find import find_features
from ..features.ground_lines import GroundLines, ground_lines, told_of_walk, without_doubles
from ..features.replay import replay
from ..handover.found_lines import read_found_lines
from ..linework.constraints import ConstraintLine, Constraints, LineKind, make_line
from ..linework.join import Linework
from ..points.pointset import PointSet
from ..progress import Progress, named
from ..surface.edits import Edit, ForceEdge
from ..surface.giving_way import found_breaklines
from ..surface.standing import stand_in
from .settings import JobSettings


def look_for_lines(
    points: PointSet, linework: Optional[Linework], edits: Sequence[Edit], settings: JobSettings, progress: Progress
) -> Tuple[PointSet, Optional[GroundLines]]:
    """The lines that ``points`` show, with the decisions of the file that the settings name; None where not wanted.

    What is known goes first: the lines of the field codes, and edges forced by hand. The points are marked where a line
    stands for them in the surface. Raises SurveyError for the file.
    """
    coded = Constraints() if linework is None else linework.constraints
    if not settings.find_lines:
        return points, None
    progress(0.0, "features")
    features = find_features(points, progress=named("features", progress))
    lines, messages = without_doubles(ground_lines(features), coded)
    messages = (*told_of_walk(features), *messages)
    if settings.found_lines is not None:
        given = read_found_lines(settings.found_lines, points.crs, settings.accept)
        lines, missed = replay(lines, given.lines)
        messages = (*messages, *given.messages, *missed)
    forced = (_as_line(edit) for edit in edits if isinstance(edit, ForceEdge))
    held = found_breaklines(lines, Constraints((*coded.lines, *forced)), points)
    points, stand = stand_in(points, held.steps)
    return points, GroundLines(lines, (*messages, *held.messages, *stand), held.breaklines)


def _as_line(edit: ForceEdge) -> ConstraintLine:
    """The course of an edge that is forced; its heights are those of the points there."""
    xy = np.asarray(edit.line, float).reshape(-1, 2)
    return make_line(LineKind.BREAKLINE, np.column_stack([xy, np.zeros(len(xy))]), "edit")
