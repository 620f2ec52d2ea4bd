"""What is said of lengths on the ground and on the grid."""

from __future__ import annotations

from ..messages import QT_TRANSLATE_NOOP, Text

NO_CRS = Text(
    "ground.no_crs",
    QT_TRANSLATE_NOOP("core", "The scale of a local grid is not known; say the CRS of the points to compute it."),
)
NO_PLACE = Text(
    "ground.no_place",
    QT_TRANSLATE_NOOP("core", "{crs}: easting {easting} m, northing {northing} m is no place on the Earth; mend it."),
)
BAD_FACTOR = Text(
    "ground.bad_factor",
    QT_TRANSLATE_NOOP("core", "A combined factor of {factor} cannot be right; it is a number close to 1."),
)
NO_POINTS = Text("ground.no_points", QT_TRANSLATE_NOOP("core", "{file}: no point is left to compute a scale from."))
NOT_CONFORMAL = Text(
    "ground.not_conformal",
    QT_TRANSLATE_NOOP(
        "core",
        "{crs} is not conformal: the scale here is {along_meridian} northward and {along_parallel} eastward. Their "
        "geometric mean is used; distances depend on direction.",
    ),
)
FACTOR = Text(
    "ground.factor",
    QT_TRANSLATE_NOOP(
        "core",
        "Combined factor {combined} at easting {easting} m, northing {northing} m: projection scale factor "
        "{projection} x height factor {height} (ellipsoidal height {h} m, {h_origin}; mean radius of curvature "
        "{radius} m).",
    ),
)
GIVEN = Text("ground.given", QT_TRANSLATE_NOOP("core", "Combined factor {combined}, as given by the user."))
APPLIED_TO_GROUND = Text(
    "ground.to_ground",
    QT_TRANSLATE_NOOP(
        "core",
        "Grid coordinates changed to ground: distances from the origin (easting {easting} m, northing {northing} m) "
        "divided by the combined factor, then {shift_e} m added to the eastings and {shift_n} m to the northings. "
        "Heights are untouched.",
    ),
)
APPLIED_TO_GRID = Text(
    "ground.to_grid",
    QT_TRANSLATE_NOOP(
        "core",
        "Ground coordinates changed to grid: {shift_e} m taken from the eastings and {shift_n} m from the northings, "
        "then distances from the origin (easting {easting} m, northing {northing} m) multiplied by the combined "
        "factor. Heights are untouched.",
    ),
)
SAMPLE = Text(
    "ground.sample",
    QT_TRANSLATE_NOOP(
        "core",
        "Sample line {start} to {end}: {grid_m} m in the grid, {ground_m} m on the ground, {difference_mm} mm apart "
        "({ppm} ppm).",
    ),
)
SPREAD = Text(
    "ground.spread",
    QT_TRANSLATE_NOOP(
        "core",
        "Over the site the factor runs from {least} to {most}; with one factor a line of 100 m is wrong by up to "
        "{worst_mm} mm.",
    ),
    metric=True,
)
ORTHOMETRIC_USED = Text(
    "ground.orthometric_used",
    QT_TRANSLATE_NOOP(
        "core",
        "The heights were taken as ellipsoidal without a geoid separation; 30 m of separation would change "
        "distances by 5 mm in a kilometre.",
    ),
)
AS_GIVEN = Text("ground.as_given", QT_TRANSLATE_NOOP("core", "as given"))
MEAN_HEIGHT = Text("ground.mean_height", QT_TRANSLATE_NOOP("core", "mean of the points"))
MEAN_AND_SEPARATION = Text(
    "ground.mean_and_separation", QT_TRANSLATE_NOOP("core", "mean of the points plus geoid separation")
)
