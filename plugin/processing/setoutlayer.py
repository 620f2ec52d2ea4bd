"""Points to set out from a QGIS layer and into one."""

from __future__ import annotations

from typing import Any, List, NamedTuple, Optional, Tuple

import numpy as np
from qgis.core import QgsFeatureSource, QgsFields, QgsWkbTypes
from qgis.PyQt.QtCore import QCoreApplication

from ..core.georeference.control import ControlPoints
from ..core.handover.setout import SetOut
from ..core.progress import Progress
from ..core.units import heights_to_crs_units, metres_per_height_unit, metres_per_unit, to_crs_units
from .drawnsource import parts_of
from .roadlayers import fields_with_aliases
from .sinks import counted
from .versions import POINT_GEOMETRY, is_null

translate = QCoreApplication.translate


class GivenColumns(NamedTuple):
    """Fields of the layer, "" for none, and whether its Z are design heights."""

    name: str
    code: str
    height: str
    use_z: bool


class Given(NamedTuple):
    """What the layer says: places (n, 3), height nan where there is none, names and codes of points, parts of lines."""

    places: np.ndarray
    names: List[str]
    codes: List[str]
    parts: List[np.ndarray]


def read_given(source: QgsFeatureSource, crs: Any, columns: GivenColumns, progress: Progress) -> Given:
    """The layer in metres. Points keep their names, codes and heights; lines and rings their heights.

    Heights are those of the field, or else Z where that is wished, in the unit of the CRS's heights.
    """
    use_z = columns.use_z and QgsWkbTypes.hasZ(source.wkbType())
    plan, rise = metres_per_unit(crs), metres_per_height_unit(crs)
    are_points = QgsWkbTypes.geometryType(source.wkbType()) == POINT_GEOMETRY
    places: List[Tuple[float, float, float]] = []
    names: List[str] = []
    codes: List[str] = []
    parts: List[np.ndarray] = []
    for feature in counted(source.getFeatures(), source.featureCount(), progress):
        geometry = feature.geometry()
        if geometry.isNull():
            continue
        own = feature[columns.height] if columns.height else None
        level = float("nan") if own is None or is_null(own) else float(own) * rise
        if not are_points:
            for xyz in parts_of(geometry, use_z):
                metres = xyz * [plan, plan, rise]
                metres[:, 2] = level if level == level else metres[:, 2]
                parts.append(metres)
            continue
        for vertex in geometry.vertices():
            z = vertex.z() * rise if use_z else float("nan")
            places.append((vertex.x() * plan, vertex.y() * plan, level if level == level else z))
            if columns.name:
                names.append(_word(feature[columns.name]))
            codes.append(_word(feature[columns.code]) if columns.code else "")
    return Given(np.array(places, float).reshape(-1, 3), names, codes, parts)


def _word(value: Any) -> str:
    return "" if value is None or is_null(value) else str(value)


def setout_fields() -> QgsFields:
    return fields_with_aliases(
        (
            ("name", "text", translate("hummock", "Name")),
            ("code", "text", translate("hummock", "Code")),
            ("design_height", "real", translate("hummock", "Design height (unit of the CRS)")),
            ("ground_height", "real", translate("hummock", "Existing height (unit of the CRS)")),
            ("cut_fill", "real", translate("hummock", "Fill, cut below 0 (unit of the CRS)")),
            ("sigma", "real", translate("hummock", "Standard deviation of it (unit of the CRS)")),
            ("station", "real", translate("hummock", "Station (unit of the table)")),
            ("offset", "real", translate("hummock", "Offset, right above 0 (unit of the CRS)")),
        )
    )


def setout_rows(setout: SetOut, control: Optional[ControlPoints]) -> List[Tuple[List[float], List[Any]]]:
    """Place and attributes of each point, the control points last."""
    crs = setout.crs
    heights = [
        heights_to_crs_units(each, crs) for each in (setout.design, setout.ground, setout.cut_fill, setout.sigma)
    ]
    plan = [to_crs_units(each, crs) for each in (setout.easting, setout.northing, setout.offset)]
    texts = zip(setout.name.tolist(), setout.code.tolist())
    values = np.column_stack([*heights, setout.station, plan[2]]).tolist()
    places = np.column_stack([plan[0], plan[1], heights[0]]).tolist()
    rows = [
        (place, [*text, *(None if value != value else value for value in row)])
        for place, text, row in zip(places, texts, values)
    ]
    if control is not None:
        east, north = (to_crs_units(each, crs) for each in (control.easting, control.northing))
        level = heights_to_crs_units(control.height, crs)
        for name, *place in zip(control.name.tolist(), east.tolist(), north.tolist(), level.tolist()):
            known = place[2] if place[2] == place[2] else None
            rows.append((place, [str(name), "CONTROL", known, *[None] * 5]))
    return rows
