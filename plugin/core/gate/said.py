"""What the gate says of the points it puts aside or asks about."""

from __future__ import annotations

from ..messages import QT_TRANSLATE_NOOP, Text
from ..points.pointset import Reason

LIKELY = Text(
    "gate.likely",
    QT_TRANSLATE_NOOP(
        "core",
        "{cause} in {count} lines ({lines}); their points, up to {distance} from the others, are put aside. Mend the "
        "lines, or take the points back by a decision.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "{cause} in line {lines}; its point, {distance} from the others, is put aside. Mend the line, or take the "
        "point back by a decision.",
    ),
)
NO_PLACE = Text(
    "gate.no_place",
    QT_TRANSLATE_NOOP("core", "{count} points have no finite place or height (lines {lines}); they are put aside."),
    one=QT_TRANSLATE_NOOP("core", "The point of line {lines} has no finite place or height; it is put aside."),
)
TOO_FAST = Text(
    "gate.too_fast",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} points (lines {lines}) lie up to {distance} from the points recorded before and after, farther than "
        "one can have gone in that time; they are put aside. A decision takes them back.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "The point of line {lines} lies {distance} from the points recorded before and after, farther than one can "
        "have gone in that time; it is put aside. A decision takes it back.",
    ),
)
OFF_WAY = Text(
    "gate.off_way",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} points (lines {lines}) lie up to {distance} from the points recorded next to them, where a point was "
        "stored every {step}; they are put aside. A decision takes them back.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "The point of line {lines} lies {distance} from the points recorded next to it, where a point was stored every "
        "{step}; it is put aside. A decision takes it back.",
    ),
)
TOO_FAR = Text(
    "gate.too_far",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} points (lines {lines}) lie up to {distance} from all others, farther than one site reaches; they are "
        "put aside. A decision takes them back.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "The point of line {lines} lies {distance} from all others, farther than one site reaches; it is put aside. A "
        "decision takes it back.",
    ),
)
HEIGHT = Text(
    "gate.height",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} points (lines {lines}) have heights up to {distance} beyond those of all others; they are put aside. "
        "A decision takes them back.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "The point of line {lines} has a height {distance} beyond those of all others; it is put aside. A decision "
        "takes it back.",
    ),
)
FAR_OFF = Text(
    "gate.far_off",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} points (lines {lines}) lie up to {distance} from all others; nothing tells whether they are control "
        "points, a base, or strays. They are kept and flagged; no ground is drawn to them, unless a line runs there, "
        "until somebody gives them the status used.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "The point of line {lines} lies {distance} from all others; nothing tells whether it is a control point, a "
        "base, or a stray. It is kept and flagged; no ground is drawn to it, unless a line runs there, until somebody "
        "gives it the status used.",
    ),
)
SCATTERED = Text(
    "gate.scattered",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} points (the first in line {lines}) each lie more than {distance} from all others; as they are many, "
        "they are taken for a part of the site.",
    ),
)
NO_PLACE_BEFORE = Text(
    "gate.no_place_before",
    QT_TRANSLATE_NOOP(
        "core", "{count} points (lines {lines}) were put aside as they were read: no finite place or height."
    ),
    one=QT_TRANSLATE_NOOP("core", "The point of line {lines} was put aside as it was read: no finite place or height."),
)
ZERO_BEFORE = Text(
    "gate.zero_before",
    QT_TRANSLATE_NOOP("core", "{count} points (lines {lines}) were put aside as they were read: coordinates of zero."),
    one=QT_TRANSLATE_NOOP("core", "The point of line {lines} was put aside as it was read: coordinates of zero."),
)
SWAPPED_BEFORE = Text(
    "gate.swapped_before",
    QT_TRANSLATE_NOOP("core", "{count} points (lines {lines}) were put aside as they were read: coordinates swapped."),
    one=QT_TRANSLATE_NOOP("core", "The point of line {lines} was put aside as it was read: coordinates swapped."),
)
STRAY_BEFORE = Text(
    "gate.stray_before",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} points (lines {lines}) were put aside as they were read: strays, farther off than the walk could have "
        "gone.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "The point of line {lines} was put aside as it was read: a stray, farther off than the walk could have gone.",
    ),
)
#: Of points that were put aside already, by their reason.
BEFORE = {
    Reason.NO_PLACE: NO_PLACE_BEFORE,
    Reason.ZERO: ZERO_BEFORE,
    Reason.SWAPPED: SWAPPED_BEFORE,
    Reason.STRAY: STRAY_BEFORE,
}
