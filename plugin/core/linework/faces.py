"""Vertical faces (kerbs, walls) as two lines a small offset apart.

A surface holds one height at each place, so a vertical face is leaned by a stated offset. The second line
runs parallel to the first: neighbouring offset segments meet on their mitre; sharp outer corners are cut
square to a circle of the offset's radius; segments too short for the offset disappear; what would
lie nearer to the first line than the offset is taken out. (Usual way to draw a parallel line.)
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import Any, List, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text
from .chains import count_places, first_of_places, same_place
from .constraints import ConstraintLine, LineKind
from .convention import SAME_PLACE
from .parallel import Parallel, meeting_of, near_values

NO_HEIGHTS = Text(
    "faces.no_heights",
    QT_TRANSLATE_NOOP(
        "core",
        "{label}: a vertical face needs a height at every vertex, and {count} have none. Give heights, first at "
        "{x:.3f}, {y:.3f}.",
    ),
)
BAD_FACE = Text(
    "faces.bad_face",
    QT_TRANSLATE_NOOP("core", "{label}: the face height {value} m cannot be used. Give a height other than 0."),
)
BAD_OFFSET = Text(
    "faces.bad_offset",
    QT_TRANSLATE_NOOP("core", "{label}: the offset {value} m of the face cannot be used. Give at least {least} m."),
)
TOO_SHORT = Text(
    "faces.too_short",
    QT_TRANSLATE_NOOP("core", "{label}: a vertical face needs a line of two places or more. Mend or remove the line."),
)
REPEATED = Text(
    "faces.repeated",
    QT_TRANSLATE_NOOP("core", "{label}: vertices dropped because they repeat the place before them: {count}."),
)
NO_ROOM = Text(
    "faces.no_room",
    QT_TRANSLATE_NOOP(
        "core",
        "{label}: there is no room for a second line {offset} m beside it. Use a smaller offset or the other side.",
    ),
)
CROSSES = Text(
    "faces.crosses",
    QT_TRANSLATE_NOOP(
        "core",
        "{label}: the two lines of the face cross or touch near {x:.3f}, {y:.3f}. Use a smaller offset there or "
        "draw the line anew.",
    ),
)


class FaceSide(Enum):
    """On which side of the first line the second runs, looking along it."""

    LEFT = "left"
    RIGHT = "right"


@dataclass(frozen=True)
class FaceLines:
    """The two lines of a vertical face: ``given`` as measured, ``other`` beside it at its own heights."""

    given: ConstraintLine
    other: ConstraintLine
    messages: Tuple[Message, ...]

    @property
    def lines(self) -> Tuple[ConstraintLine, ConstraintLine]:
        return self.given, self.other


def vertical_faces(
    line: ConstraintLine, face_height: Any, offset: float = 0.02, side: FaceSide = FaceSide.LEFT
) -> FaceLines:
    """The two breaklines of a kerb or wall from one line and the height of its face.

    ``line``: xyz (k, 3), metres, all with heights; a ring, or a breakline that ends where it begins, is
    treated as closed. ``face_height``: metres, one value or one for each vertex (k,); positive where the
    second line is above the first, negative where it is below. ``offset``: metres between the lines in
    plan. ``side``: where the second line runs. Both lines are breaklines; a closed one repeats its first
    vertex. Where the second line has no vertex of its own for a corner, it takes mean heights.
    Corners and segments that leave no room, and places where the lines still meet, are reported.
    Raises :class:`SurveyError` when heights are missing, values cannot be used or there is no room at all.
    """
    face = _checked_face(line, face_height, offset)
    messages: List[Message] = []
    xyz, points, face = _cleaned(line, face, messages)
    closed = len(xyz) > 2 and (line.closed or same_place(xyz[0], xyz[-1]))
    if closed and same_place(xyz[0], xyz[-1]):
        xyz, points, face = xyz[:-1], points[:-1], face[:-1]
        closed = len(xyz) > 2
    origin = xyz[0, :2]
    sign = 1.0 if side is FaceSide.LEFT else -1.0
    parallel = Parallel(xyz[:, :2] - origin, closed, sign * offset)
    plan, heights = parallel.run(xyz[:, 2] + face)
    label = line.label
    if len(plan) < (3 if closed else 2) or count_places(plan) < 2:
        raise SurveyError(NO_ROOM, label=label, offset=offset)
    if closed:
        xyz, points = np.vstack([xyz, xyz[:1]]), np.append(points, points[0])
        plan, heights = np.vstack([plan, plan[:1]]), np.append(heights, heights[0])
    messages += parallel.messages(label, origin)
    meeting = meeting_of(xyz[:, :2] - origin, plan, closed)
    if meeting is not None:
        messages.append(Message(CROSSES, near_values(label, meeting + origin)))
    other = np.column_stack([plan + origin, heights])
    return FaceLines(
        ConstraintLine(LineKind.BREAKLINE, xyz, points, label, line.bridges),
        ConstraintLine(LineKind.BREAKLINE, other, np.full(len(other), -1, np.int64), label),
        tuple(messages),
    )


def _checked_face(line: ConstraintLine, face_height: Any, offset: float) -> np.ndarray:
    """The face height at each vertex (k,), once everything given makes sense."""
    if not SAME_PLACE * 10 <= offset < np.inf:
        raise SurveyError(BAD_OFFSET, label=line.label, value=offset, least=SAME_PLACE * 10)
    face = np.array(np.broadcast_to(np.asarray(face_height, float), len(line.xyz)))
    wrong = ~np.isfinite(face) | (face == 0)
    if wrong.any():
        raise SurveyError(BAD_FACE, label=line.label, value=float(face[wrong][0]))
    bare = ~np.isfinite(line.xyz).all(axis=1)
    if bare.any():
        values = near_values(line.label, line.xyz[bare][0])
        raise SurveyError(NO_HEIGHTS, count=int(bare.sum()), **values)
    return face


def _cleaned(
    line: ConstraintLine, face: np.ndarray, messages: List[Message]
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Vertices, point indices and face heights without repeated places."""
    keep = first_of_places(line.xyz[:, :2])
    if np.count_nonzero(keep) < 2:
        raise SurveyError(TOO_SHORT, label=line.label)
    if not keep.all():
        messages.append(Message(REPEATED, {"label": line.label, "count": int((~keep).sum())}))
    return line.xyz[keep], line.points[keep], face[keep]
