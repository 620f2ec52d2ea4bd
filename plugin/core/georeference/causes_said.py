"""The causes why points lie outside the area of use of their CRS, in words."""

from __future__ import annotations

from ..messages import QT_TRANSLATE_NOOP, Text

SWAPPED = Text("area.swapped", QT_TRANSLATE_NOOP("core", "easting and northing are exchanged"))
UNIT = Text("area.unit", QT_TRANSLATE_NOOP("core", "the coordinates are in {unit}, not in {assumed}"))
ZONE = Text("area.zone", QT_TRANSLATE_NOOP("core", "the coordinates are of another zone: {crs}"))
HEMISPHERE_CRS = Text(
    "area.hemisphere_crs", QT_TRANSLATE_NOOP("core", "the coordinates are of the other hemisphere: {crs}")
)
HEMISPHERE_ADD = Text(
    "area.hemisphere_add",
    QT_TRANSLATE_NOOP("core", "the northings lack the 10,000,000 m added in the southern hemisphere"),
)
HEMISPHERE_TAKE = Text(
    "area.hemisphere_take",
    QT_TRANSLATE_NOOP("core", "the northings contain the 10,000,000 m added in the southern hemisphere"),
)
PREFIX_MISSING = Text(
    "area.prefix_missing", QT_TRANSLATE_NOOP("core", "the zone number {prefix} before the eastings is missing")
)
PREFIX_EXTRA = Text(
    "area.prefix_extra", QT_TRANSLATE_NOOP("core", "the eastings have a zone number, {prefix}, before them")
)
PREFIX_CRS = Text(
    "area.prefix_crs",
    QT_TRANSLATE_NOOP("core", "the same zone is meant, with the eastings written as in {crs}"),
)
FALSE_ORIGIN = Text(
    "area.false_origin",
    QT_TRANSLATE_NOOP("core", "the false origin is left out of the coordinates (east {easting} m, north {northing} m)"),
)
REDUCED = Text(
    "area.reduced",
    QT_TRANSLATE_NOOP(
        "core",
        "leading digits are left out of the coordinates (east {easting} m, north {northing} m), as what lies near says",
    ),
)
DEGREES = Text(
    "area.degrees", QT_TRANSLATE_NOOP("core", "the values are longitude and latitude in degrees; read them as such")
)
DEGREES_SWAPPED = Text(
    "area.degrees_swapped",
    QT_TRANSLATE_NOOP("core", "the values are latitude and longitude in degrees; read them as such"),
)
BEYOND_BORDER = Text(
    "area.beyond_border",
    QT_TRANSLATE_NOOP(
        "core", "the survey is really beyond the border of the zone; transform it to {crs} if that is the one wanted"
    ),
)
OTHER_SYSTEM = Text("area.other_system", QT_TRANSLATE_NOOP("core", "the coordinates are of another system: {crs}"))
