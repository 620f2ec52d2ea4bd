"""The parameters that say how a survey is read and where it is brought, and what they mean to the core."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict, List, Optional

from pyproj import CRS
from qgis.core import (
    QgsProcessingAlgorithm,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterCrs,
    QgsProcessingParameterEnum,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.georeference.crs import source_crs
from ..core.georeference.heights import ConstantSeparation, GridSeparation, Separation
from ..core.georeference.intake_options import IntakeOptions
from ..core.points.columns import parse_columns
from ..core.points.geographic import HeightKind
from .algorithm import HummockAlgorithm
from .parameters import chosen_unit, core_crs, crs_text, given_file, number, optional_number

translate = QCoreApplication.translate

#: What the choices of the parameters below mean to the core; None lets it find out.
DELIMITERS = (None, ",", ";", "\t", " ")
DECIMALS = (None, ".", ",")
HEADERS = (None, True, False)
HEIGHT_KINDS = (None, HeightKind.ORTHOMETRIC, HeightKind.ELLIPSOIDAL)
#: Parts the names of several coordinate operations, which may contain commas.
OPERATIONS_APART = "|"


def add_georeference_parameters(algorithm: HummockAlgorithm) -> None:
    """The CRS of the coordinates as they stand, heights, and what the user takes on his word."""
    algorithm.add(
        QgsProcessingParameterCrs(
            "SOURCE_CRS",
            translate("hummock", "CRS of the coordinates in the file, if another"),
            optional=True,
        ),
        translate(
            "hummock",
            "Empty: that of the points wanted, WGS 84 for degrees. A geographic CRS for latitudes and longitudes "
            "or a receiver log, a projected one for eastings and northings; the coordinates are then transformed.",
        ),
    )
    algorithm.add(
        QgsProcessingParameterBoolean(
            "LOCAL", translate("hummock", "The coordinates are local or assumed: no CRS"), False
        ),
        translate("hummock", "For a survey that is fitted to control points in a later step."),
        advanced=True,
    )
    _add_height_parameters(algorithm)
    algorithm.add(
        QgsProcessingParameterString(
            "ACCEPT", translate("hummock", "Coordinate operations accepted by name"), optional=True
        ),
        translate(
            "hummock",
            "PROJ may have only a ballpark operation, or lack the grid file of a better one. Such an operation is used "
            "only when its name, as the refusal shows it, is written here; several are parted by |.",
        ),
        advanced=True,
    )
    algorithm.add(
        QgsProcessingParameterString(
            "CORRECT", translate("hummock", "Read coordinates outside the area of use as"), optional=True
        ),
        translate(
            "hummock",
            "The name of a likely cause, such as swapped, as the question or warning shows it: the lines that it "
            "explains are then read so, the others stay. as-read leaves all of them where they are. Nothing is "
            "corrected without it.",
        ),
        advanced=True,
    )


def _add_height_parameters(algorithm: HummockAlgorithm) -> None:
    kinds = [translate("hummock", "orthometric (above a geoid)"), translate("hummock", "ellipsoidal")]
    algorithm.add(
        QgsProcessingParameterEnum(
            "HEIGHTS_ARE",
            translate("hummock", "Heights in the file are"),
            [translate("hummock", "as the file says"), *kinds],
            defaultValue=0,
        ),
        translate("hummock", "Only where the file does not say it and heights are to be changed."),
        advanced=True,
    )
    algorithm.add(
        QgsProcessingParameterEnum(
            "HEIGHTS",
            translate("hummock", "Heights wanted"),
            [translate("hummock", "as in the file (with a geoid separation: orthometric)"), *kinds],
            defaultValue=0,
        ),
        translate("hummock", "A receiver log can give both; other files need a geoid separation to change them."),
        advanced=True,
    )
    algorithm.add(
        number("GEOID", translate("hummock", "Geoid separation, a constant (m)")),
        translate("hummock", "Height of the geoid above the ellipsoid: ellipsoidal height minus it is orthometric."),
        advanced=True,
    )
    algorithm.add(
        given_file(
            "GEOID_GRID",
            translate("hummock", "Geoid separation, a grid"),
            translate("hummock", "Grids that PROJ reads (*.gtx *.tif *.tiff *.gsb);;All files (*)"),
        ),
        translate("hummock", "A grid file of geoid separations; it must cover the whole site."),
        advanced=True,
    )


def add_format_parameters(algorithm: HummockAlgorithm) -> None:
    """How the text of the file is written, each found from the file where nothing is chosen."""
    found = translate("hummock", "found from the file")
    separators = [
        found,
        translate("hummock", "comma"),
        translate("hummock", "semicolon"),
        translate("hummock", "tab"),
        translate("hummock", "blanks"),
    ]
    decimals = [found, translate("hummock", "point"), translate("hummock", "comma")]
    headers = [found, translate("hummock", "yes"), translate("hummock", "no")]
    for name, label, choices, help_text in (
        ("DELIMITER", translate("hummock", "Separator"), separators, translate("hummock", "What parts the columns.")),
        ("DECIMAL", translate("hummock", "Decimal sign"), decimals, translate("hummock", "As in 1.5 or 1,5.")),
        (
            "HEADER",
            translate("hummock", "First line names the columns"),
            headers,
            translate("hummock", "Whether the first line that is no comment is a header."),
        ),
    ):
        algorithm.add(QgsProcessingParameterEnum(name, label, choices, defaultValue=0), help_text, advanced=True)
    algorithm.add(
        QgsProcessingParameterString("ENCODING", translate("hummock", "Text encoding (empty: found)"), optional=True),
        translate("hummock", "Such as utf-8 or latin-1."),
        advanced=True,
    )
    algorithm.add(
        QgsProcessingParameterString(
            "COMMENT", translate("hummock", "Comment lines start with"), defaultValue="auto", optional=True
        ),
        translate("hummock", "Such lines are counted, not read. With auto the sign is found from the file."),
        advanced=True,
    )


def chosen_options(
    algorithm: QgsProcessingAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext, what: str
) -> IntakeOptions:
    """What the parameters ask of the core for the input called ``what``.

    Raises SurveyError and QgsProcessingException for a CRS or columns that cannot be used.
    """

    def text(name: str) -> str:
        return str(algorithm.parameterAsString(parameters, name, context)).strip()

    def choice(name: str, values: Any) -> Any:
        return values[algorithm.parameterAsEnum(parameters, name, context)]

    columns = text("COLUMNS")
    return IntakeOptions(
        crs=_target(algorithm, parameters, context, what),
        source_crs=_source(algorithm, parameters, context),
        columns=parse_columns(columns) if columns else None,
        delimiter=choice("DELIMITER", DELIMITERS),
        decimal=choice("DECIMAL", DECIMALS),
        encoding=text("ENCODING") or None,
        unit=chosen_unit(algorithm, parameters, "UNIT", context),
        height_unit=chosen_unit(algorithm, parameters, "HEIGHT_UNIT", context),
        comment=algorithm.parameterAsString(parameters, "COMMENT", context),
        header=choice("HEADER", HEADERS),
        heights_are=choice("HEIGHTS_ARE", HEIGHT_KINDS),
        heights=choice("HEIGHTS", HEIGHT_KINDS),
        separation=_separation(algorithm, parameters, context),
        accept=tuple(name.strip() for name in text("ACCEPT").split(OPERATIONS_APART) if name.strip()),
        correct=text("CORRECT"),
    )


def _target(
    algorithm: QgsProcessingAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext, what: str
) -> Optional[CRS]:
    if algorithm.parameterAsBool(parameters, "LOCAL", context):
        return None
    return core_crs(algorithm.parameterAsCrs(parameters, "CRS", context), what)


def _source(
    algorithm: QgsProcessingAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext
) -> Optional[CRS]:
    chosen = algorithm.parameterAsCrs(parameters, "SOURCE_CRS", context)
    return source_crs(crs_text(chosen)) if chosen.isValid() else None


def _separation(
    algorithm: QgsProcessingAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext
) -> Optional[Separation]:
    constant = optional_number(algorithm, parameters, "GEOID", context)
    grid = algorithm.parameterAsFile(parameters, "GEOID_GRID", context)
    if constant is not None and grid:
        raise QgsProcessingException(
            translate("hummock", "Two geoid separations are given, a constant and a grid; give one of them.")
        )
    if grid:
        return GridSeparation(Path(grid))
    return None if constant is None else ConstantSeparation(constant)


def chosen_files(
    algorithm: QgsProcessingAlgorithm, parameters: Dict[str, Any], name: str, context: QgsProcessingContext
) -> List[str]:
    """The paths of a parameter of several files."""
    if not parameters.get(name):
        return []
    return [str(path) for path in algorithm.parameterAsFileList(parameters, name, context) if str(path)]
