"""Names that sit in different places in QGIS 3.22 to 3.44 and in Qt 5 and Qt 6."""

from __future__ import annotations

from typing import Any

from qgis.core import (
    Qgis,
    QgsColorRampShader,
    QgsCoordinateReferenceSystem,
    QgsFeatureSink,
    QgsField,
    QgsProcessing,
    QgsProcessingAlgorithm,
    QgsProcessingFeatureSource,
    QgsProcessingParameterDefinition,
    QgsProcessingParameterField,
    QgsProcessingParameterFile,
    QgsProcessingParameterNumber,
    QgsProcessingUtils,
    QgsRenderContext,
    QgsWkbTypes,
)
from qgis.PyQt.QtCore import QMetaType, QVariant


def member(owner: Any, enum: str, *names: str) -> Any:
    """The value of an enum of ``owner``: by its scoped name, or where older or newer QGIS keeps it."""
    for holder in (getattr(owner, enum, None), owner):
        for name in names:
            if holder is not None and hasattr(holder, name):
                return getattr(holder, name)
    raise AttributeError(f"{owner.__name__}.{enum}.{names[0]}")


POINT_SOURCE = member(QgsProcessing, "SourceType", "TypeVectorPoint", "VectorPoint")
LINE_SOURCE = member(QgsProcessing, "SourceType", "TypeVectorLine", "VectorLine")
POLYGON_SOURCE = member(QgsProcessing, "SourceType", "TypeVectorPolygon", "VectorPolygon")
MESH_SOURCE = member(QgsProcessing, "SourceType", "TypeMesh", "Mesh")
FILE_SOURCE = member(QgsProcessing, "SourceType", "TypeFile", "File")
VECTOR_SOURCE = member(QgsProcessing, "SourceType", "TypeVectorAnyGeometry", "VectorAnyGeometry")
ANY_LAYER = member(QgsProcessing, "SourceType", "TypeMapLayer", "MapLayer")
MESH_SOURCE = member(QgsProcessing, "SourceType", "TypeMesh", "Mesh")
TABLE_SOURCE = member(QgsProcessing, "SourceType", "TypeVector", "Vector")

POINT = member(QgsWkbTypes, "Type", "Point")
POINT_Z = member(QgsWkbTypes, "Type", "PointZ")
MULTIPOINT_Z = member(QgsWkbTypes, "Type", "MultiPointZ")
LINE = member(QgsWkbTypes, "Type", "LineString")
LINE_Z = member(QgsWkbTypes, "Type", "LineStringZ")
MULTILINE = member(QgsWkbTypes, "Type", "MultiLineString")
MULTILINE_Z = member(QgsWkbTypes, "Type", "MultiLineStringZ")
POLYGON = member(QgsWkbTypes, "Type", "Polygon")
POLYGON_Z = member(QgsWkbTypes, "Type", "PolygonZ")
MULTIPOLYGON = member(QgsWkbTypes, "Type", "MultiPolygon")
POINT_GEOMETRY = member(QgsWkbTypes, "GeometryType", "PointGeometry", "Point")
POLYGON_GEOMETRY = member(QgsWkbTypes, "GeometryType", "PolygonGeometry", "Polygon")
NO_GEOMETRY = member(QgsWkbTypes, "Type", "NoGeometry")

WHOLE_NUMBER = member(QgsProcessingParameterNumber, "Type", "Integer")
REAL_NUMBER = member(QgsProcessingParameterNumber, "Type", "Double")
ANY_FIELD = member(QgsProcessingParameterField, "DataType", "Any")
NUMERIC_FIELD = member(QgsProcessingParameterField, "DataType", "Numeric")
ONE_FILE = member(QgsProcessingParameterFile, "Behavior", "File")
ADVANCED = member(QgsProcessingParameterDefinition, "Flag", "FlagAdvanced", "Advanced")
NO_THREADING = member(QgsProcessingAlgorithm, "Flag", "FlagNoThreading", "NoThreading")
TEXT_AS_TEXT = member(QgsRenderContext, "TextRenderFormat", "TextFormatAlwaysText", "AlwaysText")
FAST_INSERT = member(QgsFeatureSink, "Flag", "FastInsert")
NO_CHECK = member(
    QgsProcessingFeatureSource, "Flag", "FlagSkipGeometryValidityChecks", "SkipGeometryValidityChecks"
)  # of geometries: where we say ourselves what is wrong with them
NEW_KEYS = member(QgsFeatureSink, "SinkFlag", "RegeneratePrimaryKey")  # several features of one may be written

VECTOR_HINT = member(QgsProcessingUtils, "LayerHint", "Vector")
MESH_HINT = member(QgsProcessingUtils, "LayerHint", "Mesh")
WKT2 = member(QgsCoordinateReferenceSystem, "WktVariant", "WKT2_2019", "WKT_PREFERRED")
INTERPOLATED = member(QgsColorRampShader, "Type", "Interpolated", "Linear")
DISCRETE = member(QgsColorRampShader, "Type", "Discrete")
EQUAL_INTERVAL = member(QgsColorRampShader, "ClassificationMode", "EqualInterval")

INFO = member(Qgis, "MessageLevel", "Info")

_NEW_FIELD_TYPES = Qgis.QGIS_VERSION_INT >= 33800  # QVariant types are deprecated from there on


def field(name: str, kind: str) -> QgsField:
    """A field of ``kind`` text, whole, real, truth or moment."""
    if _NEW_FIELD_TYPES:
        known = {
            "text": QMetaType.Type.QString,
            "whole": QMetaType.Type.LongLong,
            "real": QMetaType.Type.Double,
            "truth": QMetaType.Type.Bool,
            "moment": QMetaType.Type.QDateTime,
        }
    else:
        known = {
            "text": QVariant.String,
            "whole": QVariant.LongLong,
            "real": QVariant.Double,
            "truth": QVariant.Bool,
            "moment": QVariant.DateTime,
        }
    return QgsField(name, known[kind])


def has_z(kind: Any) -> bool:
    """Whether geometries of a type have Z."""
    return bool(QgsWkbTypes.hasZ(kind))


def is_null(value: Any) -> bool:
    """Whether an attribute is empty: None, or QVariant's NULL in Qt 5."""
    return value is None or (isinstance(value, QVariant) and value.isNull())
