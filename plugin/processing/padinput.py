"""Pads as a polygon layer with levels, falls and slopes out of parameters and fields."""

from __future__ import annotations

from typing import Any, Dict, List, Optional, Tuple

import numpy as np
from qgis.core import (
    QgsFeature,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterField,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.earthwork.edge_slopes import EdgeSlope, runs_of_rings
from ..core.earthwork.pads import PadDesign
from ..core.earthwork.plane import plane_falling
from ..core.earthwork.side_slopes import Corner, SideSlopes
from ..core.surface.locate import heights_at
from ..core.surface.tin import Tin
from ..core.units import metres_per_height_unit, metres_per_unit
from .algorithm import HummockAlgorithm
from .drawnsource import drawn_parts, parts_of, request_in
from .parameters import chosen_source, number, optional_number, optional_source, qgis_crs
from .versions import ANY_FIELD, LINE_SOURCE, NUMERIC_FIELD, POLYGON_SOURCE, is_null

translate = QCoreApplication.translate

#: In the order of the choices of CORNERS.
CORNERS = (Corner.ROUND, Corner.MITRE)


def add_pad_parameters(algorithm: HummockAlgorithm, optional: bool = False) -> None:
    """PADS, LEVEL, FALL, TOWARDS, fields that stand over them, and EDGES."""
    algorithm.add(
        QgsProcessingParameterFeatureSource(
            "PADS", translate("hummock", "Pads (polygons)"), [POLYGON_SOURCE], optional=optional
        ),
        translate(
            "hummock", "Each polygon is graded to a level or a sloping plane; holes stay as they are, but slopes."
        ),
    )
    algorithm.add(
        number("LEVEL", translate("hummock", "Level (height in the unit of the CRS)")),
        translate(
            "hummock", "At the middle of each pad's bounding box. Where cut and fill are to balance: a first guess."
        ),
    )
    algorithm.add(
        number("FALL", translate("hummock", "Fall of the pads (%)"), 0.0, 0.0, 100.0),
        translate("hummock", "0 for level pads."),
    )
    algorithm.add(
        number("TOWARDS", translate("hummock", "Falls towards (degrees from grid north)"), 0.0, -360.0, 360.0),
        translate("hummock", "0 is north, 90 east, 180 south, 270 west; without meaning for level pads."),
    )
    fields = (
        ("LEVEL_FIELD", translate("hummock", "Field with the level"), NUMERIC_FIELD),
        ("FALL_FIELD", translate("hummock", "Field with the fall (%)"), NUMERIC_FIELD),
        ("TOWARDS_FIELD", translate("hummock", "Field with the direction of the fall (degrees)"), NUMERIC_FIELD),
        ("CUT_FIELD", translate("hummock", "Field with the slope of cut (1 : n)"), NUMERIC_FIELD),
        ("FILL_FIELD", translate("hummock", "Field with the slope of fill (1 : n)"), NUMERIC_FIELD),
        ("NAME_FIELD", translate("hummock", "Field with the pads' names"), ANY_FIELD),
    )
    for name, label, kind in fields:
        algorithm.add(
            QgsProcessingParameterField(name, label, parentLayerParameterName="PADS", type=kind, optional=True),
            translate("hummock", "A pad whose field is empty takes the value given for all."),
            advanced=True,
        )
    algorithm.add(
        QgsProcessingParameterFeatureSource(
            "EDGES", translate("hummock", "Edges with slopes of their own (lines)"), [LINE_SOURCE], optional=True
        ),
        translate(
            "hummock",
            "Lines drawn along edges of the pads. Edges within 0.1 m of a line take its slopes, from the "
            "fields cut_run and fill_run (1 : n) of the layer.",
        ),
        advanced=True,
    )


def add_slope_parameters(algorithm: HummockAlgorithm) -> None:
    """CUT_RUN, FILL_RUN and CORNERS."""
    algorithm.add(
        number("CUT_RUN", translate("hummock", "Slopes of cut, 1 : n"), 2.0, 0.01, 1000.0),
        translate("hummock", "Metres out for each metre up. What stands depends on the soil: see the cautions."),
    )
    algorithm.add(
        number("FILL_RUN", translate("hummock", "Slopes of fill, 1 : n"), 2.0, 0.01, 1000.0),
        translate("hummock", "Metres out for each metre down."),
    )
    shapes = [translate("hummock", "round"), translate("hummock", "mitred")]
    algorithm.add(
        QgsProcessingParameterEnum("CORNERS", translate("hummock", "Outer corners"), shapes, defaultValue=0),
        translate(
            "hummock",
            "Of the slopes, and of a strip's edges where its line turns. Round slopes are cones in facets of 10 "
            "degrees; mitred ones carry both slopes on.",
        ),
        advanced=True,
    )


def chosen_slopes(algorithm: HummockAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext) -> SideSlopes:
    corner = CORNERS[algorithm.parameterAsEnum(parameters, "CORNERS", context)]
    cut, fill = (algorithm.parameterAsDouble(parameters, name, context) for name in ("CUT_RUN", "FILL_RUN"))
    return SideSlopes(cut, fill, corner)


def read_pad_designs(
    algorithm: HummockAlgorithm,
    tin: Tin,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
    guess: bool,
) -> List[PadDesign]:
    """A design for each polygon, in metres of the surface's CRS.

    With ``guess`` a pad without a level gets the mean height of the ground at its corners. Raises SurveyError for
    slopes that cannot be, QgsProcessingException for features that are no pads.
    """
    source = chosen_source(algorithm, parameters, "PADS", context)
    label = source.sourceName() or "PADS"
    fields = {name: algorithm.parameterAsString(parameters, name, context) for name in _FIELDS}
    usual = {name: optional_number(algorithm, parameters, name, context) for name in ("LEVEL", "FALL", "TOWARDS")}
    if usual["LEVEL"] is not None:
        usual["LEVEL"] *= metres_per_height_unit(tin.crs)
    slopes = chosen_slopes(algorithm, parameters, context)
    edges = _edge_slopes(algorithm, tin, parameters, context, feedback)
    request = request_in(qgis_crs(tin.crs), source, context, feedback)
    pads: List[PadDesign] = []
    met = set()
    for feature in source.getFeatures(request):
        for rings in _polygons(feature, label, metres_per_unit(tin.crs)):
            runs, own = runs_of_rings(rings, edges)
            met |= own
            name = str(_value(feature, fields["NAME_FIELD"]) or len(pads) + 1)
            pads.append(_design(feature, name, rings, fields, usual, slopes, tin, guess, runs if own else ()))
    if len(met) < len(edges):
        feedback.pushWarning(
            translate("hummock", "Lines that follow no edge of a pad, not used: {count} of {total}.").format(
                count=len(edges) - len(met), total=len(edges)
            )
        )
    return pads


_FIELDS = ("LEVEL_FIELD", "FALL_FIELD", "TOWARDS_FIELD", "CUT_FIELD", "FILL_FIELD", "NAME_FIELD")


def _design(
    feature: QgsFeature,
    name: str,
    rings: Tuple[np.ndarray, ...],
    fields: Dict[str, str],
    usual: Dict[str, Optional[float]],
    slopes: SideSlopes,
    tin: Tin,
    guess: bool,
    runs: Tuple[np.ndarray, ...],
) -> PadDesign:
    level = _number(feature, fields["LEVEL_FIELD"], name)
    level = usual["LEVEL"] if level is None else level * metres_per_height_unit(tin.crs)
    if level is None and guess:
        ground = heights_at(tin, rings[0])
        level = float(np.nanmean(ground)) if np.any(np.isfinite(ground)) else tin.height_range[0]
    if level is None:
        raise QgsProcessingException(
            translate("hummock", "Pad {name}: nothing says how high it is; give a level, or fill the field.").format(
                name=name
            )
        )
    fall, towards = (_number(feature, fields[f"{key}_FIELD"], name) for key in ("FALL", "TOWARDS"))
    fall = usual["FALL"] or 0.0 if fall is None else fall
    towards = usual["TOWARDS"] or 0.0 if towards is None else towards
    middle = (rings[0].min(axis=0) + rings[0].max(axis=0)) / 2
    plane = plane_falling(level, float(middle[0]), float(middle[1]), fall, towards)
    cut, fill = (_number(feature, fields[key], name) for key in ("CUT_FIELD", "FILL_FIELD"))
    own = SideSlopes(slopes.cut_run if cut is None else cut, slopes.fill_run if fill is None else fill, slopes.corner)
    return PadDesign(name, rings, plane, own, runs)


def _polygons(feature: QgsFeature, label: str, metres: float) -> List[Tuple[np.ndarray, ...]]:
    """Rings (k, 2) of each polygon of a feature, open, in metres."""
    geometry = feature.geometry()
    if geometry.isNull() or geometry.isEmpty():
        raise QgsProcessingException(
            translate("hummock", "{layer}: feature {id} has no geometry; delete or draw it.").format(
                layer=label, id=feature.id()
            )
        )
    found = []
    for part in geometry.asGeometryCollection():
        found.append(tuple(ring[:-1, :2] * metres for ring in parts_of(part, False)))
    return found


def _edge_slopes(
    algorithm: HummockAlgorithm,
    tin: Tin,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
) -> List[EdgeSlope]:
    source = optional_source(algorithm, parameters, "EDGES", context)
    if source is None:
        return []
    label = source.sourceName() or "EDGES"
    names = {field.name().lower(): field.name() for field in source.fields()}
    if not {"cut_run", "fill_run"} & set(names):
        raise QgsProcessingException(
            translate("hummock", "{layer}: it has neither a field cut_run nor fill_run; add one.").format(layer=label)
        )
    found = []
    for feature, parts in drawn_parts(source, tin.crs, context, feedback, heights=False):
        runs = [_number(feature, names.get(key, ""), f"{label} {feature.id()}") for key in ("cut_run", "fill_run")]
        cut, fill = (float("nan") if run is None else run for run in runs)
        found += [EdgeSlope(part[:, :2], cut, fill) for part in parts if len(part) > 1]
    return found


def _value(feature: QgsFeature, field: str) -> Any:
    value = feature[field] if field else None
    return None if is_null(value) else value


def _number(feature: QgsFeature, field: str, name: str) -> Optional[float]:
    value = _value(feature, field)
    if value is None:
        return None
    try:
        found = float(value)
    except (TypeError, ValueError):
        found = float("nan")
    if not np.isfinite(found):
        raise QgsProcessingException(
            translate("hummock", "{name}: {field} is “{value}”, which is no number; mend it.").format(
                name=name, field=field, value=value
            )
        )
    return found
