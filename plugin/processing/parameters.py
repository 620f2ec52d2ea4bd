"""Parameters and choices that several algorithms share."""

from __future__ import annotations

from typing import Any, Dict, List, Optional

from pyproj import CRS
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsFeatureSource,
    QgsProcessingAlgorithm,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFile,
    QgsProcessingParameterNumber,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.georeference.crs import projected_crs
from ..core.linework.codes import CodeTable, default_code_table, read_code_table
from ..core.units import WORKING_UNITS, LengthUnit
from .versions import ONE_FILE, REAL_NUMBER, WKT2

translate = QCoreApplication.translate

#: In the order of the choices of :func:`unit_choice`.
UNITS = tuple(LengthUnit)


def unit_names() -> List[str]:
    """The units as a list of choices."""
    return [
        translate("hummock", "metres (m)"),
        translate("hummock", "international feet (ft, 0.3048 m)"),
        translate("hummock", "US survey feet (ftUS, 1200/3937 m)"),
        translate("hummock", "millimetres (mm)"),
        translate("hummock", "centimetres (cm)"),
        translate("hummock", "decimetres (dm)"),
        translate("hummock", "kilometres (km)"),
        translate("hummock", "inches (in, 0.0254 m)"),
        translate("hummock", "yards (yd, 0.9144 m)"),
    ]


def unit_choice(
    name: str, label: str, default: Optional[int] = 0, optional: bool = False, of_files: bool = False
) -> QgsProcessingParameterEnum:
    """A choice among :data:`UNITS`: the first three, in which results are given, or all that survey files may be in."""
    names = unit_names() if of_files else unit_names()[: len(WORKING_UNITS)]
    return QgsProcessingParameterEnum(name, label, names, defaultValue=default, optional=optional)


def chosen_unit(
    algorithm: QgsProcessingAlgorithm, parameters: Dict[str, Any], name: str, context: QgsProcessingContext
) -> Optional[LengthUnit]:
    """The unit chosen, or None where an optional choice was left open."""
    if parameters.get(name, algorithm.parameterDefinition(name).defaultValue()) is None:
        return None
    return UNITS[algorithm.parameterAsEnum(parameters, name, context)]


def number(
    name: str,
    label: str,
    default: Optional[float] = None,
    least: Optional[float] = None,
    most: Optional[float] = None,
    kind: Any = REAL_NUMBER,
) -> QgsProcessingParameterNumber:
    """A number from ``least`` to ``most``; it may be left empty where there is no default."""
    parameter = QgsProcessingParameterNumber(name, label, kind, default, optional=default is None)
    if least is not None:
        parameter.setMinimum(least)
    if most is not None:
        parameter.setMaximum(most)
    return parameter


def optional_number(
    algorithm: QgsProcessingAlgorithm, parameters: Dict[str, Any], name: str, context: QgsProcessingContext
) -> Optional[float]:
    """The number given, None where it was left empty."""
    if parameters.get(name) in (None, ""):
        return None
    return float(algorithm.parameterAsDouble(parameters, name, context))


def survey_files() -> str:
    """The filter of a dialog that asks for files of a survey."""
    return translate(
        "hummock",
        "Survey files (*.csv *.txt *.asc *.xyz *.pts *.dat *.nmea *.log *.gpx *.kml *.kmz *.geojson *.json *.gpkg "
        "*.shp *.xlsx *.ods *.zip *.gz);;All files (*)",
    )


def tables() -> str:
    """The filter of a dialog that asks for a table."""
    return translate("hummock", "Tables (*.csv *.txt);;All files (*)")


def given_file(name: str, label: str, kinds: str) -> QgsProcessingParameterFile:
    """A file that may be left out; ``kinds``: the filter of its dialog."""
    return QgsProcessingParameterFile(name, label, behavior=ONE_FILE, optional=True, fileFilter=kinds)


def chosen_source(
    algorithm: QgsProcessingAlgorithm, parameters: Dict[str, Any], name: str, context: QgsProcessingContext
) -> QgsFeatureSource:
    """The layer of a parameter. Raises QgsProcessingException where there is none."""
    source = algorithm.parameterAsSource(parameters, name, context)
    if source is None:
        raise QgsProcessingException(algorithm.invalidSourceError(parameters, name))
    return source


def optional_source(
    algorithm: QgsProcessingAlgorithm, parameters: Dict[str, Any], name: str, context: QgsProcessingContext
) -> Optional[QgsFeatureSource]:
    """The layer of an optional parameter. Raises QgsProcessingException where one was given that is none."""
    source = algorithm.parameterAsSource(parameters, name, context)
    if source is None and parameters.get(name):
        raise QgsProcessingException(algorithm.invalidSourceError(parameters, name))
    return source


def code_table_file(name: str) -> QgsProcessingParameterFile:
    """A file of field codes; the table that comes with Hummock where none is given."""
    return given_file(
        name,
        translate("hummock", "Code table (CSV; empty: the one that comes with Hummock)"),
        translate("hummock", "Code tables (*.csv *.txt);;All files (*)"),
    )


def code_table_help() -> str:
    return translate(
        "hummock",
        "A table with the columns code, kind, layer and close. The kind says what a code means: ground, breakline, "
        "boundary, void, not_ground or check.",
    )


def chosen_code_table(
    algorithm: QgsProcessingAlgorithm, parameters: Dict[str, Any], name: str, context: QgsProcessingContext
) -> CodeTable:
    """The code table given, or the one that comes with Hummock. Raises SurveyError."""
    path = algorithm.parameterAsFile(parameters, name, context)
    return read_code_table(path) if path else default_code_table()


def core_crs(crs: QgsCoordinateReferenceSystem, what: str) -> CRS:
    """The CRS of ``what`` (a file or layer) as the core knows it.

    Raises SurveyError when it is none in which lengths can be measured, QgsProcessingException when there is none.
    """
    if not crs.isValid():
        raise QgsProcessingException(
            translate("hummock", "{what}: the CRS is not known; choose a projected one, such as EPSG:25832.").format(
                what=what
            )
        )
    return projected_crs(crs_text(crs))


def crs_text(crs: QgsCoordinateReferenceSystem) -> str:
    """A QGIS CRS as text that pyproj reads: its authority's code, or WKT."""
    authority = crs.authid()
    if authority and not authority.upper().startswith(("USER:", "CUSTOM:", "QGIS:", "INTERNAL:")):
        return authority
    return crs.toWkt(WKT2)


def qgis_crs(crs: Optional[CRS]) -> QgsCoordinateReferenceSystem:
    """A CRS of the core as QGIS knows it; an invalid one for None."""
    if crs is None:
        return QgsCoordinateReferenceSystem()
    authority = crs.to_authority()
    if authority:
        known = QgsCoordinateReferenceSystem(":".join(authority))
        if known.isValid():
            return known
    return QgsCoordinateReferenceSystem.fromWkt(crs.to_wkt())
