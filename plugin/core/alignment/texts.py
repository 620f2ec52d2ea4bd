"""What this stage tells the user."""

from __future__ import annotations

from ..messages import QT_TRANSLATE_NOOP, Text

NOT_FINITE = Text(
    "alignment.not_finite",
    QT_TRANSLATE_NOOP(
        "core", "Centreline {name}: vertex {vertex} has no finite coordinates. Draw the line again or repair its layer."
    ),
)
NO_LENGTH = Text(
    "alignment.no_length",
    QT_TRANSLATE_NOOP(
        "core", "Centreline {name} has no length: all its {vertices} vertices are at one place. Draw the line again."
    ),
)
DOUBLES_BACK = Text(
    "alignment.doubles_back",
    QT_TRANSLATE_NOOP(
        "core",
        "Centreline {name} doubles back on itself at station {station} (E {easting:.3f} N {northing:.3f}), so that "
        "left and right are not defined there. Remove the vertex or split the line there.",
    ),
)
TOUCHES_ITSELF = Text(
    "alignment.touches_itself",
    QT_TRANSLATE_NOOP(
        "core",
        "Centreline {name} meets itself {count} times, first at stations {first} and {second} (E {easting:.3f} N "
        "{northing:.3f}). A place there has two stations; the lower one is given.",
    ),
)
VERTICES_DROPPED = Text(
    "alignment.vertices_dropped",
    QT_TRANSLATE_NOOP("core", "Centreline {name}: {count} repeated vertices (closer than 0.1 mm) were left out."),
)
BAD_EQUATION = Text(
    "alignment.bad_equation",
    QT_TRANSLATE_NOOP(
        "core",
        "Centreline {name}: station equation {number} (back {back} = ahead {ahead}) is not on the line beyond the one "
        "before; the numbering there runs from {low} to {high}. Correct the back station or the order.",
    ),
)
NO_SUCH_STATION = Text(
    "alignment.no_such_station",
    QT_TRANSLATE_NOOP(
        "core", "Centreline {name} has no station {station}; its stations are {ranges}. Give one of those."
    ),
)
STATION_TWICE = Text(
    "alignment.station_twice",
    QT_TRANSLATE_NOOP(
        "core",
        "Centreline {name} has station {station} more than once, in the numberings {parts}. Say which one is meant.",
    ),
)
OTHER_CRS = Text(
    "alignment.other_crs",
    QT_TRANSLATE_NOOP(
        "core",
        "The centreline is in {line} but the surface in {surface}. Reproject the line's layer to the surface's CRS.",
    ),
)
LOCAL_GRID = Text("alignment.local_grid", QT_TRANSLATE_NOOP("core", "a local grid"))
OFF_SURFACE = Text(
    "alignment.off_surface",
    QT_TRANSLATE_NOOP(
        "core",
        "Centreline {name} is nowhere on the surface {surface} (the line begins at E {easting:.1f} N {northing:.1f}, "
        "the surface reaches from E {west:.1f} N {south:.1f} to E {east:.1f} N {north:.1f}). Check that both are of "
        "one site and in one CRS.",
    ),
)
PARTLY_OFF = Text(
    "alignment.partly_off",
    QT_TRANSLATE_NOOP(
        "core",
        "{length:.1f} m of centreline {name} are outside the surface {surface}, in {count} stretches, the first from "
        "station {first} to {last}; nothing is said about them.",
    ),
)
BAD_INTERVAL = Text(
    "alignment.bad_interval",
    QT_TRANSLATE_NOOP(
        "core", "The interval of cross-sections is {interval}; give a length above 0 that makes at most {most} of them."
    ),
)
BAD_WIDTHS = Text(
    "alignment.bad_widths",
    QT_TRANSLATE_NOOP(
        "core", "A cross-section cannot reach {left} to the left and {right} to the right. Give widths of 0 or more."
    ),
)
NO_SECTION_ON_SURFACE = Text(
    "alignment.no_section_on_surface",
    QT_TRANSLATE_NOOP("core", "None of the {count} cross-sections is on the surface {surface}. Check line and CRS."),
)
SECTIONS_CROSS = Text(
    "alignment.sections_cross",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} pairs of cross-sections cross each other in tight bends, first those at stations {first} and "
        "{second}, {offset:.2f} m to the {side}. Ground beyond the crossings is counted twice: make the sections "
        "narrower there or fewer.",
    ),
)
LEFT = Text("alignment.left", QT_TRANSLATE_NOOP("core", "left"))
RIGHT = Text("alignment.right", QT_TRANSLATE_NOOP("core", "right"))
NO_SIGMA = Text(
    "alignment.no_sigma",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} vertices of the surface have no standard deviation of height (or one below 0). "
        "Give the standard deviation of a height of this survey.",
    ),
)
BAD_WINDOW = Text(
    "alignment.bad_window",
    QT_TRANSLATE_NOOP(
        "core",
        "A window of {window} m with steps of {step} m does not fit a line of {length:.3f} m. Give a window above 0 "
        "and no longer than the line, and a step above 0.",
    ),
)
BAD_RANGE = Text(
    "alignment.bad_range",
    QT_TRANSLATE_NOOP("core", "Crossfall cannot be found from offset {low} m to {high} m. Give the lower one first."),
)
TOO_FEW_HEIGHTS = Text(
    "alignment.too_few_heights",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} heights are too few to fit grades and vertical curves to; at least {least} are needed. Take a shorter "
        "spacing or a longer part of the line.",
    ),
)
