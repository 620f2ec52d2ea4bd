"""What is said of corrections: what they did, what speaks against them, and what to answer."""

from __future__ import annotations

from ..messages import QT_TRANSLATE_NOOP, Text

RELABELLED = Text(
    "area.relabelled",
    QT_TRANSLATE_NOOP("core", "On the user's word {count} of {total} points were read otherwise: {cause}."),
    one=QT_TRANSLATE_NOOP("core", "On the user's word one of {total} points was read otherwise: {cause}."),
)
HEIGHTS_TOO = Text(
    "correction.heights_too", QT_TRANSLATE_NOOP("core", "Their heights were in the same unit, and were changed alike.")
)
HEIGHTS_AS_READ = Text(
    "area.heights_as_read", QT_TRANSLATE_NOOP("core", "The unit of the heights was left as it was read.")
)
KEPT = Text(
    "correction.kept",
    QT_TRANSLATE_NOOP("core", "{count} points lie well as they are and stay so."),
    one=QT_TRANSLATE_NOOP("core", "One point lies well as it is and stays so."),
)
NOT_EXPLAINED = Text(
    "correction.not_explained",
    QT_TRANSLATE_NOOP(
        "core", "{count} points are not explained by it and stay as they are; the first is in line {line}."
    ),
    one=QT_TRANSLATE_NOOP("core", "The point of line {line} is not explained by it and stays as it is."),
    weight=2,
)
STAY_OUTSIDE = Text(
    "correction.stay_outside",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: on the user's word the points stay where they are, though {count} of them lie outside the area of "
        "use.",
    ),
    one=QT_TRANSLATE_NOOP("core", "{file}: on the user's word the point outside the area of use stays where it is."),
    weight=3,
)
AWAY = Text(
    "correction.away",
    QT_TRANSLATE_NOOP(
        "core",
        "'{name}' would put the {count} points it explains {distance} from the {others} that lie well as they are; it "
        "is not applied",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "'{name}' would put the point it explains {distance} from the {others} that lie well as they are; it is not "
        "applied",
    ),
)
FARTHER = Text(
    "correction.farther",
    QT_TRANSLATE_NOOP("core", "'{name}' would put the site {distance} from what is known of it; it is not applied"),
)
UNLIKE_A_WALK = Text(
    "correction.unlike_a_walk",
    QT_TRANSLATE_NOOP(
        "core",
        "'{name}' would make the {step} m from point to point {after} m, and another cause leaves them; it is not "
        "applied",
    ),
)
WHICH = Text(
    "correction.which",
    QT_TRANSLATE_NOOP("core", "{count} of {total} points lie far outside the area of use of {crs} ({area})"),
    one=QT_TRANSLATE_NOOP("core", "the only point lies far outside the area of use of {crs} ({area})"),
)
AS_THEY_ARE = Text("correction.as_they_are", QT_TRANSLATE_NOOP("core", "as they are"))
GIVE_NEAR = Text(
    "correction.give_near",
    QT_TRANSLATE_NOOP(
        "core", "a place near the site in place of this example: it tells leading digits that were left out"
    ),
)
AND = Text("correction.and", QT_TRANSLATE_NOOP("core", "{one}, and {more}"))
