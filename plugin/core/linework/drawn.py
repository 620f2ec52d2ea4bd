"""Breaklines, boundaries and voids that were drawn rather than measured with codes."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any, Iterable, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from .chains import count_places, first_of_places, is_flat_ring, same_place
from .constraints import ConstraintLine, Constraints, LineKind, make_line
from .faces import FaceLines, FaceSide, vertical_faces

__all__ = [
    "DRAWN",
    "DrawnAs",
    "DrawnLines",
    "DrawnRow",
    "FaceLines",
    "FaceSide",
    "constraints_from_rows",
    "merge_constraints",
    "told_of_heights",
    "vertical_faces",
]

NOT_FINITE = Text(
    "drawn.not_finite",
    QT_TRANSLATE_NOOP("core", "{label}: {count} of its vertices have no usable coordinates; the part is left out."),
)
TOO_SHORT = Text(
    "drawn.too_short",
    QT_TRANSLATE_NOOP(
        "core", "{label}: a part has {places} of the {needed} places that it needs; left out. Near {x:.3f}, {y:.3f}."
    ),
)
EMPTY = Text("drawn.empty", QT_TRANSLATE_NOOP("core", "{label}: it has no vertices; left out."))
FLAT_RING = Text(
    "drawn.flat_ring",
    QT_TRANSLATE_NOOP(
        "core", "{label}: all vertices of a ring lie on one straight line; left out. Near {x:.3f}, {y:.3f}."
    ),
)
SAME_PLACE_DROPPED = Text(
    "drawn.same_place",
    QT_TRANSLATE_NOOP("core", "{label}: vertices dropped because they repeat the place before them: {count}."),
)
CLOSED_BY_PROGRAM = Text(
    "drawn.closed_by_program",
    QT_TRANSLATE_NOOP(
        "core", "{label}: the ring was open and is closed by a straight edge of {gap:.3f} m from {x:.3f}, {y:.3f}."
    ),
)
ALL_ZERO = Text(
    "drawn.all_zero",
    QT_TRANSLATE_NOOP(
        "core",
        "{label}: all heights are 0. If it was drawn without heights, switch their use off, or take them out of the "
        "file; breaklines can be given as lines without heights.",
    ),
)


class DrawnAs(NamedTuple):
    """What a drawn layer or file is for: its ``name``, the ``kind`` of its lines, and whether their heights count."""

    name: str
    kind: LineKind
    heights: bool


#: In their order of precedence, after the lines of the field codes and before those that the points show.
DRAWN = (
    DrawnAs("breaklines", LineKind.BREAKLINE, True),
    DrawnAs("soft_lines", LineKind.BREAKLINE, False),
    DrawnAs("boundary", LineKind.BOUNDARY, True),
    DrawnAs("voids", LineKind.VOID, True),
)
_ONE_KIND = (LineKind.BREAKLINE, LineKind.BOUNDARY, LineKind.VOID)


@dataclass(frozen=True)
class DrawnRow:
    """One feature of a layer: its ``kind``, its ``parts`` and a ``label`` for messages.

    Each part is a line, or one ring of a polygon, as coordinates (k, 2) or (k, 3) in metres; a height may
    be nan (it then comes from the surface around). Give all rings of a polygon, holes too: boundary rings
    enclose ground by the even-odd rule, so that a hole, and an island in it, need nothing else.
    """

    kind: LineKind
    parts: Sequence[Any]
    label: str = ""


@dataclass(frozen=True)
class DrawnLines:
    """Lines made of drawn features: ``constraints``, and for each its row number in ``row_numbers`` (from 0)."""

    constraints: Constraints
    row_numbers: Tuple[int, ...]
    messages: Tuple[Message, ...]


def constraints_from_rows(rows: Iterable[DrawnRow]) -> DrawnLines:
    """Constraints of the features of a line or polygon layer, in their order.

    Boundaries and voids are rings; an open one is closed and reported when it leaves a gap. Repeated
    places are dropped; parts that are no line or ring are left out; both are reported.
    Raises ValueError for a row whose kind is not exactly one, or whose coordinates have another shape.
    """
    lines: List[ConstraintLine] = []
    numbers: List[int] = []
    messages: List[Message] = []
    for number, row in enumerate(rows):
        if row.kind not in _ONE_KIND:
            raise ValueError(f"row {number} needs one kind of line, not {row.kind!r}")
        label = row.label or str(number + 1)
        if not len(row.parts):
            messages.append(Message(EMPTY, {"label": label}))
        for part in row.parts:
            line = _line(row.kind, part, label, messages)
            if line is not None:
                lines.append(line)
                numbers.append(number)
    return DrawnLines(Constraints(tuple(lines)), tuple(numbers), tuple(messages))


def told_of_heights(rows: Sequence[DrawnRow], label: str) -> Tuple[Message, ...]:
    """A doubt where all heights of what is called ``label`` are 0: drawing leaves that where none is given."""
    heights = [np.asarray(part, float).reshape(len(part), -1)[:, 2:].ravel() for row in rows for part in row.parts]
    every = np.concatenate(heights or [np.empty(0)])
    return (message(ALL_ZERO, label=label),) if len(every) and np.all(every == 0.0) else ()


def _line(kind: LineKind, part: Any, label: str, messages: List[Message]) -> Optional[ConstraintLine]:
    """One part as a constraint, or None with the reason added to ``messages``."""
    if not len(part):
        messages.append(Message(EMPTY, {"label": label}))
        return None
    line = make_line(kind, part, label)
    bad = ~np.isfinite(line.xyz[:, :2]).all(axis=1) | np.isinf(line.xyz[:, 2])
    if bad.any():
        messages.append(Message(NOT_FINITE, {"label": label, "count": int(bad.sum())}))
        return None
    xyz = line.xyz[first_of_places(line.xyz[:, :2])]
    if len(xyz) < len(line.xyz):
        messages.append(Message(SAME_PLACE_DROPPED, {"label": label, "count": len(line.xyz) - len(xyz)}))
    if line.closed:
        xyz = _opened(xyz, label, messages)
    near = {"label": label, "x": float(xyz[0, 0]), "y": float(xyz[0, 1])}
    places, needed = count_places(xyz[:, :2]), 3 if line.closed else 2
    if places < needed:
        messages.append(Message(TOO_SHORT, {**near, "places": places, "needed": needed}))
        return None
    if line.closed and is_flat_ring(xyz[:, :2]):
        messages.append(Message(FLAT_RING, near))
        return None
    return make_line(kind, xyz, label)


def _opened(xyz: np.ndarray, label: str, messages: List[Message]) -> np.ndarray:
    """A ring without its repeated last vertex; a ring that never came back is reported."""
    if len(xyz) > 1 and same_place(xyz[0], xyz[-1]):
        return xyz[:-1]
    if len(xyz) > 2:
        gap = float(np.hypot(*(xyz[0, :2] - xyz[-1, :2])))
        values = {"label": label, "gap": gap, "x": float(xyz[-1, 0]), "y": float(xyz[-1, 1])}
        messages.append(Message(CLOSED_BY_PROGRAM, values))
    return xyz


def merge_constraints(*constraints: Constraints) -> Constraints:
    """All lines of several constraints in the order given; earlier ones come first where precedence counts.

    Point indices are kept, so all lines with survey points must refer to the same survey. Each is a source of its own.
    """
    lines: List[ConstraintLine] = []
    for each in constraints:
        before = 1 + max((line.source for line in lines), default=-1)
        lines += [replace(line, source=line.source + before) for line in each.lines]
    return Constraints(tuple(lines))
