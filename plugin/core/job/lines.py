"""Lines drawn by hand, lines that the points show, and what the surface holds to of these."""

from __future__ import annotations

from typing import Any, List, Optional, Sequence, Tuple

import numpy as np

from ..features.find import find_features
from ..features.ground_lines import GroundLines, ground_lines, told_of_walk, without_doubles
from ..features.replay import replay
from ..georeference.operations import OF_FILE
from ..handover.found_lines import read_found_lines
from ..linework.constraints import ConstraintLine, Constraints, LineKind, make_line
from ..linework.drawn import DRAWN
from ..linework.drawn_file import DrawnFile, read_drawn
from ..messages import SurveyError
from ..points.pointset import PointSet
from ..progress import Progress, named, part
from ..surface.edits import Edit, ForceEdge
from ..surface.giving_way import found_breaklines
from ..surface.standing import stand_in
from .settings import JobSettings


def drawn_lines(settings: JobSettings, crs: Optional[Any]) -> Tuple[DrawnFile, ...]:
    """The files of drawn lines, in their order of precedence. Raises SurveyError, which names the option."""
    found: List[DrawnFile] = []
    for drawn_as in DRAWN:
        path = getattr(settings, drawn_as.name)
        if path is None:
            continue
        try:
            found.append(read_drawn(path, drawn_as, crs, settings.accept))
        except SurveyError as error:
            option = "--" + drawn_as.name.replace("_", "-")
            raise SurveyError(OF_FILE, file=option, said=error.message) from None
    return tuple(found)


def look_for_lines(
    points: PointSet,
    coded: Constraints,
    drawn: Constraints,
    edits: Sequence[Edit],
    settings: JobSettings,
    progress: Progress,
) -> Tuple[PointSet, Optional[GroundLines]]:
    """The lines that ``points`` show, with the decisions of the file that the settings name; None where not wanted.

    What is known goes first: the lines of the field codes, those drawn by hand, and edges forced by hand. The points
    are marked where a line stands for them in the surface. Raises SurveyError for the file.
    """
    if not settings.find_lines:
        return points, None
    progress(0.0, "features")
    features = find_features(points, progress=named("features", part(progress, 0.0, 0.8)))
    lines, messages = without_doubles(ground_lines(features), coded)
    messages = (*told_of_walk(features), *messages)
    if settings.found_lines is not None:
        given = read_found_lines(settings.found_lines, points.crs, settings.accept)
        lines, missed = replay(lines, given.lines)
        messages = (*messages, *given.messages, *missed)
    progress(0.8, "features")
    forced = (_as_line(edit) for edit in edits if isinstance(edit, ForceEdge))
    known = Constraints((*coded.lines, *drawn.lines, *forced))
    held = found_breaklines(lines, known, points, part(progress, 0.8, 0.9))
    progress(0.9, "features")
    points, stand = stand_in(points, held.steps)
    return points, GroundLines(lines, (*messages, *held.messages, *stand), held.breaklines)


def _as_line(edit: ForceEdge) -> ConstraintLine:
    """The course of an edge that is forced; its heights are those of the points there."""
    xy = np.asarray(edit.line, float).reshape(-1, 2)
    return make_line(LineKind.BREAKLINE, np.column_stack([xy, np.zeros(len(xy))]), "edit")
