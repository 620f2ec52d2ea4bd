"""Graded designs as QGIS features: their lines by kind, what is hauled along a strip, volumes by height.

Coordinates are in the unit of the CRS, heights too; columns are metric, as their names say.
"""

from __future__ import annotations

from typing import Any, Iterable, List, Sequence, Tuple

import numpy as np
from qgis.core import QgsFeatureSink, QgsFields, QgsGeometry, QgsLineString

from ..core.earthwork.centreline import Stations
from ..core.earthwork.design_lines import DAYLIGHT_KINDS, DesignLine
from ..core.earthwork.graded_site import GradedSite
from ..core.earthwork.grading_study import BalanceStudy
from ..core.earthwork.haul import MassDiagram
from ..core.earthwork.strip import StripLine
from ..core.units import heights_to_crs_units, to_crs_units
from .sinks import add_feature, fields_of


def design_line_fields() -> QgsFields:
    return fields_of((("kind", "text"), ("name", "text"), ("length_m", "real")))


def write_breaklines(site: GradedSite, sink: QgsFeatureSink) -> None:
    """Every line of the design but where it ends: edges and breaks by kind, lines of a strip by side and part."""
    rows = [(line.kind.value, "", line.xyz) for line in site.lines if line.kind not in DAYLIGHT_KINDS]
    rows += _strip_rows(site.strip)
    _put(rows, site.design.crs, sink)


def write_daylight(lines: Iterable[DesignLine], crs: Any, sink: QgsFeatureSink) -> None:
    """Where the design ends: at the top of cut, at the toe of fill, or steeply."""
    _put([(line.kind.value, "", line.xyz) for line in lines if line.kind in DAYLIGHT_KINDS], crs, sink)


def _strip_rows(strip: Sequence[StripLine]) -> List[Tuple[str, str, np.ndarray]]:
    """Lines along a strip but its outer edges, which are told as such."""
    outermost = {side: max((line.part for line in strip if line.side == side), default=0) for side in (-1, 1)}
    rows = []
    for line in strip:
        if line.side and line.part == outermost[line.side]:
            continue
        kind = "centreline" if line.side == 0 else "platform_break"
        side = {-1: "left", 0: "", 1: "right"}[line.side]
        rows.append((kind, f"{side} {line.name or ('ditch' if line.side else '')}".strip(), line.xyz))
    return rows


def _put(rows: Iterable[Tuple[str, str, np.ndarray]], crs: Any, sink: QgsFeatureSink) -> None:
    for kind, name, xyz in rows:
        length = float(np.hypot(*np.diff(xyz[:, :2], axis=0).T).sum())
        add_feature(sink, QgsGeometry(_line(xyz, crs)), [kind, name or None, length])


def _line(xyz: np.ndarray, crs: Any) -> QgsLineString:
    plan, height = to_crs_units(xyz[:, :2], crs), heights_to_crs_units(xyz[:, 2], crs)
    return QgsLineString(*plan.T.tolist(), height.tolist())


# Along a strip


def mass_fields() -> QgsFields:
    names = ("from_m", "to_m", "cut_m3", "fill_m3", "mass_begin_m3", "mass_end_m3")
    return fields_of([(name, "real") for name in names])


def write_mass(haul: MassDiagram, stations: Stations, crs: Any, sink: QgsFeatureSink) -> None:
    """A piece of the centreline from station to station, with its cut and fill and the running balance at both ends."""
    plan = to_crs_units(stations.xy, crs)
    for k in range(len(haul.cut)):
        x, y = plan[k : k + 2].T.tolist()
        values = [*haul.station[k : k + 2], haul.cut[k], haul.fill[k], *haul.mass[k : k + 2]]
        add_feature(sink, QgsGeometry(QgsLineString(x, y)), [float(value) for value in values])


# Volumes by height


def curve_fields() -> QgsFields:
    return fields_of([(name, "real") for name in ("shift_m", "height", "cut_m3", "fill_m3", "rest_m3")])


def write_curve(found: BalanceStudy, crs: Any, sink: QgsFeatureSink) -> None:
    """Rows by rising height; ``height`` in the unit of the CRS, empty where the design has no single one."""
    curve = found.curve
    known = np.isfinite(found.first)
    for k in range(len(curve.shift)):
        height = float(heights_to_crs_units(curve.shift[k] + found.first, crs)) if known else None
        values = [float(each[k]) for each in (curve.cut, curve.fill, curve.rest)]
        add_feature(sink, QgsGeometry(), [float(curve.shift[k]), height, *values])
