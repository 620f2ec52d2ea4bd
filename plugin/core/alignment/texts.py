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
    one=QT_TRANSLATE_NOOP(
        "core",
        "Centreline {name} meets itself once, at stations {first} and {second} (E {easting:.3f} N "
        "{northing:.3f}). That place has two stations; the lower one is given.",
    ),
)
VERTICES_DROPPED = Text(
    "alignment.vertices_dropped",
    QT_TRANSLATE_NOOP("core", "Centreline {name}: {count} repeated vertices (closer than 0.1 mm) were left out."),
    one=QT_TRANSLATE_NOOP("core", "Centreline {name}: a repeated vertex (closer than 0.1 mm) was left out."),
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
NOT_A_STATION = Text(
    "alignment.not_a_station",
    QT_TRANSLATE_NOOP(
        "core",
        "{given} is no station. Write it such as 1+234.50 or 1234.5; part several by semicolons.",
    ),
)
NOT_AN_EQUATION = Text(
    "alignment.not_an_equation",
    QT_TRANSLATE_NOOP(
        "core", "{given} is no station equation. Write back = ahead, such as 1+200 = 1+250; part several by semicolons."
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
        "{length:.1f} m of centreline {name} are outside the surface {surface} (stretches: {count}, the first from "
        "station {first} to {last}); nothing is said about them.",
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
    one=QT_TRANSLATE_NOOP(
        "core",
        "The cross-sections at stations {first} and {second} cross each other in a tight bend, {offset:.2f} m"
        " to the {side}. Ground beyond the crossing is counted twice: make the sections narrower there or "
        "fewer.",
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
RULES_CANNOT_READ = Text(
    "rules.cannot_read",
    QT_TRANSLATE_NOOP("core", "{file}: the table of limits cannot be read ({reason}). Check the path and the file."),
)
RULES_NOT_TEXT = Text(
    "rules.not_text",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: this is not a text table. Save the table of limits as CSV."),
)
RULES_EMPTY = Text(
    "rules.empty",
    QT_TRANSLATE_NOOP("core", "{file}: the table has no rows. Give a header with {columns} and at least one row."),
)
RULES_COLUMN_MISSING = Text(
    "rules.column_missing",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: column {column} is missing. The header needs {columns}."),
)
RULES_COLUMN_STRANGE = Text(
    "rules.column_strange",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: column {column} is unknown or twice. The columns are {columns}."),
)
RULES_TOO_LONG = Text(
    "rules.too_long",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: more cells than columns. Put quotes around text that contains the separator."
    ),
)
RULES_CELL_EMPTY = Text(
    "rules.cell_empty", QT_TRANSLATE_NOOP("core", "{file}, line {line}: {column} is empty. Fill it in.")
)
RULES_TWICE = Text(
    "rules.twice",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: {name} already stands in line {first}. Rename or remove one of them."
    ),
)
RULES_QUANTITY = Text(
    "rules.quantity",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: quantity {value} is unknown. Use one of {known}."),
)
RULES_NUMBER = Text(
    "rules.number",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: {column} is {value}. Write a ratio such as 1:20, a percentage such as 5%, or a number, "
        "not negative.",
    ),
)
RULES_NO_LIMIT = Text(
    "rules.no_limit",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: give either at_least or at_most, one of them and not both."),
)
RULES_WINDOW = Text(
    "rules.window",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: window is {value}. Write metres above 0."),
)
RULES_APPLIES = Text(
    "rules.applies",
    QT_TRANSLATE_NOOP(
        "core", '{file}, line {line}: applies is {value}. Write "always", "grade > 1:20" or "grade <= 1:20".'
    ),
)
RULES_K_TABLE = Text(
    "rules.k_table",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: {column} is {value}. Write a number above 0 with a decimal point."),
)
SIGHT_CAUTION = Text(
    "alignment.sight_caution",
    QT_TRANSLATE_NOOP(
        "core",
        "Sight on crests is an indication only: it compares the K of a fitted curve with your table. It knows nothing "
        "of bends, walls, hedges, or the eye and object heights that your table assumes.",
    ),
)
GUTTER_CAUTION = Text(
    "alignment.gutter_caution",
    QT_TRANSLATE_NOOP(
        "core",
        "Low points are where water stands on the triangles: a gully lets it off only if it is given, a lowered kerb "
        "only if the points show it. The deepest place of a noisy profile is a little too deep; depths below 2 "
        "standard deviations are not told.",
    ),
)
WINDOW_CAUTION = Text(
    "alignment.window_caution",
    QT_TRANSLATE_NOOP(
        "core",
        "Each window is judged with the help of its neighbours, with about 5 in 100 wrong, and more where the slope "
        "changes quickly; of many windows near the limit a few will be judged wrongly. Drift of the receiver counts "
        "only where it was given.",
    ),
)

KERB_IN_LANE = Text(
    "alignment.kerb_in_lane",
    QT_TRANSLATE_NOOP(
        "core",
        "{name}: a kerb or step lies within the lane at stations {stretches}. Crossfall is taken up to it there; give "
        "offsets inside the kerbs if that is not what you mean.",
    ),
)
