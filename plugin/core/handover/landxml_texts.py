"""What is said about LandXML files."""

from __future__ import annotations

from ..messages import QT_TRANSLATE_NOOP, Text

# The file as a whole

NO_FILE = Text(
    "landxml.no_file",
    QT_TRANSLATE_NOOP("core", "{file}: the LandXML file cannot be read ({reason}); check the path."),
)
NOT_XML = Text(
    "landxml.not_xml",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: this is no whole XML ({reason}); the file is damaged or cut short, have it written anew.",
    ),
)
NOT_LANDXML = Text(
    "landxml.not_landxml",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: the file is no LandXML but holds <{found}>; choose another file."),
)
OTHER_VERSION = Text(
    "landxml.other_version",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: LandXML of version “{found}” is not read; have it written as LandXML 1.2."
    ),
)
DECLARATIONS = Text(
    "landxml.declarations",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: the file declares a document type or entities, which LandXML does not need and which "
        "can do harm; it is not read. Have it written anew without them.",
    ),
)
TOO_DEEP = Text(
    "landxml.too_deep",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: elements within elements, over {most} deep; this is no sound LandXML."
    ),
)
NOTHING = Text(
    "landxml.nothing",
    QT_TRANSLATE_NOOP(
        "core", "{file}: there are no surfaces, points or alignments in this file that could be read; choose another."
    ),
)

# Units and coordinate system

NO_UNITS = Text(
    "landxml.no_units",
    QT_TRANSLATE_NOOP(
        "core", "{file}: the file does not say its unit of length (element Units); ask for it and choose it here."
    ),
)
UNKNOWN_UNIT = Text(
    "landxml.unknown_unit",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: “{found}” is no {system} unit of length of LandXML (such as {known}); mend it, or choose "
        "the unit.",
    ),
)
UNITS_TWICE = Text(
    "landxml.units_twice",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: the units are said a second time, and otherwise; keep one."),
)
OTHER_HEIGHT_UNIT = Text(
    "landxml.other_height_unit",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: lengths are in {unit} but elevations are said to be in “{found}”; programs read this "
        "either way. Ask for it, and choose the unit of the heights.",
    ),
)
FEET_DIFFER = Text(
    "landxml.feet_differ",
    QT_TRANSLATE_NOOP(
        "core",
        "{file} is in {unit}, its CRS {crs} in {other}: read as it says. If that is a slip of who wrote it, places are "
        "up to {shift:.3f} m off; ask, and choose the unit if so.",
    ),
)
CRS_UNREADABLE = Text(
    "landxml.crs_unreadable",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: the CRS “{found}” is not understood or not one in metres or feet; choose the CRS."
    ),
)
CRS_DIFFER = Text(
    "landxml.crs_differ",
    QT_TRANSLATE_NOOP(
        "core", "{file}: its EPSG code means {epsg}, its WKT {wkt}; the code is taken. Choose the CRS if that is wrong."
    ),
)

# Elements

MISSING_ATTRIBUTE = Text(
    "landxml.missing_attribute",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: <{element}> lacks its {attribute}; have the file written anew."),
)
BAD_ATTRIBUTE = Text(
    "landxml.bad_attribute",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: {attribute}=“{found}” of <{element}> cannot be; mend it."),
)
BAD_NUMBERS = Text(
    "landxml.bad_numbers",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: <{element}> needs {needed} numbers (northing before easting) but holds "
        "“{found}”; mend it.",
    ),
)
TOO_LARGE = Text(
    "landxml.too_large",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: <{element}> holds a coordinate that is no number or no place on Earth; mend it."
    ),
)
UNKNOWN_REFERENCE = Text(
    "landxml.unknown_reference",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: <{element}> refers to the point “{found}”, which the file does not hold just once.",
    ),
)

# Surfaces

ID_TWICE = Text(
    "landxml.id_twice",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: point {number} of surface “{name}” was given before; keep one."),
)
UNKNOWN_POINT = Text(
    "landxml.unknown_point",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: a face of surface “{name}” has the corner {number}, but there is no such point; the file "
        "is damaged, have it written anew.",
    ),
)
NOT_TRIANGLE = Text(
    "landxml.not_triangle",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: a face of surface “{name}” has {count} corners; only triangles are read, have "
        "the surface "
        "written as a TIN.",
    ),
)
OVERLAP = Text(
    "landxml.overlap",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: a face of surface “{name}” lies on the same side of an edge as another; the surface "
        "overlaps itself, have it written anew.",
    ),
)
TOO_WIDE = Text(
    "landxml.too_wide",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: surface “{name}” is {width:.0f} km wide; a surface may measure 107 km."
    ),
)
NO_FACES = Text(
    "landxml.no_faces",
    QT_TRANSLATE_NOOP(
        "core",
        "Surface “{name}” has no visible faces; its points ({points}) and lines ({lines}) are read. Build the surface "
        "from them.",
    ),
)
INVISIBLE = Text(
    "landxml.invisible",
    QT_TRANSLATE_NOOP("core", "Surface “{name}”: {count} faces are marked invisible and are left out."),
    one=QT_TRANSLATE_NOOP("core", "Surface “{name}”: a face is marked invisible and is left out."),
)
FLAT_FACES = Text(
    "landxml.flat_faces",
    QT_TRANSLATE_NOOP(
        "core",
        "Surface “{name}”: {count} faces without area in plan (upright or none at all) are left out, the first in "
        "line {line}.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "Surface “{name}”: the face in line {line} has no area in plan (upright or none at all) and is left out.",
    ),
)
LINES_OFF_EDGES = Text(
    "landxml.lines_off_edges",
    QT_TRANSLATE_NOOP(
        "core",
        "Surface “{name}”: {count} of {total} segments of its breaklines and boundaries are no edges of its "
        "faces; they "
        "come as lines only.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "Surface “{name}”: one of {total} segments of its breaklines and boundaries is no edge of its faces; "
        "it comes as a line only.",
    ),
)
NAME_TWICE = Text(
    "landxml.name_twice",
    QT_TRANSLATE_NOOP("core", "{count} points share a name with another, such as “{name}”; all are kept."),
    one=QT_TRANSLATE_NOOP("core", "One point shares its name “{name}” with another; both are kept."),
)

# Alignments

GAP = Text(
    "landxml.gap",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: alignment “{name}” has a gap of {gap:.3f} m before this element; its elements "
        "must follow "
        "each other.",
    ),
)
BAD_CURVE = Text(
    "landxml.bad_curve",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: a curve of alignment “{name}” does not fit: its ends lie {start:.3f} m and "
        "{end:.3f} m from "
        "its centre.",
    ),
)
NO_SUCH_SPIRAL = Text(
    "landxml.no_such_spiral",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: alignment “{name}” has a spiral ({kind}) that is not read; it is left out as a whole.",
    ),
)
SPIRAL_MISFIT = Text(
    "landxml.spiral_misfit",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: a spiral of alignment “{name}” ends {gap:.3f} m beside the place that the file gives.",
    ),
)
NO_GEOMETRY = Text(
    "landxml.no_geometry",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: alignment “{name}” has no lines or curves; it is left out."),
)
OTHER_CURVE = Text(
    "landxml.other_curve",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: the profile “{name}” has a vertical curve <{element}>, which is not read; it "
        "is left out.",
    ),
)
BAD_PROFILE = Text(
    "landxml.bad_profile",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: the stations of profile “{name}” do not rise, or its curves overlap; mend it."
    ),
)
