"""The parameters of points to set out."""

from __future__ import annotations

from qgis.core import (
    QgsProcessingParameterBoolean,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterField,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.handover.setout_table import USUAL
from .parameters import number, unit_choice
from .surfaceinput import SurfaceAlgorithm
from .surfacenoise import add_noise
from .versions import ANY_FIELD, NUMERIC_FIELD, POINT_SOURCE, TABLE_SOURCE, WHOLE_NUMBER

translate = QCoreApplication.translate

#: In the order of the choices of WAY.
CORNERS, GRID, OFFSETS = 0, 1, 2


def add_places(algorithm: SurfaceAlgorithm) -> None:
    """What is set out, and how it is named."""
    algorithm.add(
        QgsProcessingParameterFeatureSource("PLACES", translate("hummock", "What is set out"), [TABLE_SOURCE]),
        translate("hummock", "Points, lines or polygons in the CRS of the existing surface."),
    )
    ways = [
        translate("hummock", "its points, or the corners of its lines and polygons"),
        translate("hummock", "a grid over its polygons"),
        translate("hummock", "offsets along its lines"),
    ]
    algorithm.add(
        QgsProcessingParameterEnum("WAY", translate("hummock", "Set out"), ways, defaultValue=CORNERS),
        translate("hummock", "Corners that lines or polygons share are set out once."),
    )
    algorithm.add(
        QgsProcessingParameterField(
            "NAME_FIELD", translate("hummock", "Name field (of points)"), parentLayerParameterName="PLACES",
            type=ANY_FIELD, optional=True,
        ),
        translate("hummock", "Left empty, points are numbered, and offsets named by station and side."),
    )  # fmt: skip
    algorithm.add(
        QgsProcessingParameterString("PREFIX", translate("hummock", "Before numbers and stations"), "S", False, True),
        translate("hummock", "S makes S001, S002, …; give each job another one."),
    )
    algorithm.add(
        number("FIRST", translate("hummock", "First number"), 1, 0, kind=WHOLE_NUMBER),
        translate("hummock", "To go on where another table ended."),
        advanced=True,
    )
    algorithm.add(
        QgsProcessingParameterField(
            "CODE_FIELD", translate("hummock", "Code field (of points)"), parentLayerParameterName="PLACES",
            type=ANY_FIELD, optional=True,
        ),
        translate("hummock", "What the data collector shows with the point."),
        advanced=True,
    )  # fmt: skip
    _add_grid_and_offsets(algorithm)


def _add_grid_and_offsets(algorithm: SurfaceAlgorithm) -> None:
    algorithm.add(
        number("SPACING", translate("hummock", "Spacing of the grid, or interval along lines"), 10.0, 1e-3),
        translate("hummock", "In the unit of the table. Rows lie at whole multiples of the coordinates."),
    )
    algorithm.add(
        number("BEARING", translate("hummock", "Bearing of the grid (degrees)"), 0.0, -360.0, 360.0),
        translate("hummock", "Clockwise from grid north."),
        advanced=True,
    )
    algorithm.add(
        QgsProcessingParameterString("OFFSETS", translate("hummock", "Offsets from lines"), "0"),
        translate("hummock", "Such as -3.5, 0, 3.5 in the unit of the table: left is below 0, right above."),
    )
    algorithm.add(
        number("START", translate("hummock", "Station of the lines' beginning"), 0.0),
        translate("hummock", "In the unit of the table: 1250 for 1+250."),
        advanced=True,
    )
    algorithm.add(
        QgsProcessingParameterBoolean("VERTICES", translate("hummock", "Also at the corners of lines"), True),
        translate("hummock", "Besides whole stations and the ends."),
        advanced=True,
    )


def add_design(algorithm: SurfaceAlgorithm) -> None:
    """Where design heights come from."""
    algorithm.add_surface("DESIGN", translate("hummock", "Design surface (2DM mesh)"), optional=True)
    algorithm.add(
        QgsProcessingParameterField(
            "HEIGHT_FIELD", translate("hummock", "Field of design heights"), parentLayerParameterName="PLACES",
            type=NUMERIC_FIELD, optional=True,
        ),
        translate("hummock", "In the unit of the CRS; goes before Z and design surface."),
    )  # fmt: skip
    algorithm.add(
        QgsProcessingParameterBoolean("USE_Z", translate("hummock", "Design heights are the Z of the layer"), False),
        translate("hummock", "For points and corners that were drawn in 3D; goes before the design surface."),
    )


def add_doubt(algorithm: SurfaceAlgorithm) -> None:
    """What is unsure."""
    add_noise(algorithm, advanced=True)
    algorithm.add(
        number("PLAN_SIGMA", translate("hummock", "Standard deviation of set-out in plan (m)"), 0.02, 0.0),
        translate("hummock", "On a slope a pole held aside meets another height."),
        advanced=True,
    )


def add_table(algorithm: SurfaceAlgorithm) -> None:
    """The form of the table, and the control points in it."""
    algorithm.add(
        unit_choice("UNIT", translate("hummock", "Unit of the table"), None, optional=True),
        translate(
            "hummock",
            "Of coordinates, heights and stations in the table, and of the lengths given here. Empty: that of the CRS.",
        ),
    )
    algorithm.add(
        number("DECIMALS", translate("hummock", "Decimals"), 3, 0, 6, WHOLE_NUMBER),
        translate("hummock", "Of coordinates and heights."),
        advanced=True,
    )
    algorithm.add(
        QgsProcessingParameterString("COLUMNS", translate("hummock", "Columns of the table"), ", ".join(USUAL)),
        translate(
            "hummock",
            "In the order wanted, of: name, easting, northing, design_height, ground_height, cut_fill, cut, fill, "
            "sigma, code, station, offset.",
        ),
    )
    cells = [
        translate("hummock", "comma"),
        translate("hummock", "semicolon"),
        translate("hummock", "tab"),
        translate("hummock", "blank"),
    ]
    algorithm.add(
        QgsProcessingParameterEnum("DELIMITER", translate("hummock", "Between cells"), cells, defaultValue=0),
        translate("hummock", "As the data collector takes it."),
        advanced=True,
    )
    for name, label, help_text in (
        ("HEADER", translate("hummock", "Line of column names"), translate("hummock", "First line of the table.")),
        (
            "COMMENTS",
            translate("hummock", "Notes at the head of the table"),
            translate("hummock", "Lines that begin with #; switch off for a data collector that cannot skip them."),
        ),
    ):
        algorithm.add(QgsProcessingParameterBoolean(name, label, True), help_text, advanced=True)
    algorithm.add(
        QgsProcessingParameterFeatureSource(
            "CONTROL", translate("hummock", "Control points"), [POINT_SOURCE], optional=True
        ),
        translate("hummock", "With a field “name”; they stand at the end of the table and in the layer."),
    )
