"""What is found about water as QGIS features.

Coordinates are in the unit of the CRS, heights too; columns are in metres where their name ends in ``_m``, square
metres ``_m2``, cubic metres ``_m3``, per cent ``_pct``.
"""

from __future__ import annotations

from math import isfinite
from typing import Any, List, Optional, Sequence, Tuple

import numpy as np
from qgis.core import (
    QgsFeatureSink,
    QgsFields,
    QgsGeometry,
    QgsLineString,
    QgsMultiPolygon,
    QgsPoint,
    QgsPolygon,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.drainage.catchments import Outlet
from ..core.drainage.inlet_list import Inlet
from ..core.drainage.network import Lines
from ..core.drainage.paths import FlowArrows, FlowPaths
from ..core.drainage.ponds import Ponds
from ..core.drainage.rings import Polygon, polygons_of
from ..core.drainage.shares import Shares, pond_name
from ..core.drainage.steps import PathEnd
from ..core.handover.water import END_WORDS, OUTLET_WORDS
from ..core.progress import Progress
from ..core.surface.dissolve import LabelledPolygon
from ..core.surface.tin import Tin
from ..core.units import heights_to_crs_units, to_crs_units
from .sinks import add_feature, counted, fields_of

translate = QCoreApplication.translate


def line_z(xyz: np.ndarray, crs: Any) -> QgsGeometry:
    """A line (k, 3) in metres of the CRS."""
    x, y = to_crs_units(xyz[:, :2], crs).T.tolist()
    return QgsGeometry(QgsLineString(x, y, heights_to_crs_units(xyz[:, 2], crs).tolist()))


def point_z(xyz: np.ndarray, crs: Any) -> QgsGeometry:
    """A point (3,) in metres of the CRS."""
    return QgsGeometry(QgsPoint(*to_crs_units(xyz[:2], crs).tolist(), float(heights_to_crs_units(xyz[2], crs))))


def multipolygon(polygons: Sequence[Polygon], crs: Any) -> QgsGeometry:
    """Polygons of rings (q, 2) in metres of the CRS, outer ring first."""
    area = QgsMultiPolygon()
    for polygon in polygons:
        made = QgsPolygon()
        for number, ring in enumerate(polygon):
            line = QgsLineString(*to_crs_units(ring, crs).T.tolist())
            # one by one: of a list of rings the polygon would not become the owner
            (made.addInteriorRing if number else made.setExteriorRing)(line)
        area.addGeometry(made)
    return QgsGeometry(area)


def or_null(value: float) -> Optional[float]:
    return float(value) if isfinite(value) else None


# Paths and arrows


def path_fields(first: Sequence[Tuple[str, str]]) -> QgsFields:
    return fields_of(
        (
            *first,
            ("end", "text"),
            ("ends_in", "text"),
            ("length_m", "real"),
            ("drop_m", "real"),
            ("slope_pct", "real"),
        )
    )


def path_values(
    paths: FlowPaths, ponds: Ponds, inlets: Sequence[Inlet]
) -> List[Tuple[str, str, float, float, Optional[float]]]:
    """Of each path the kind of its end, the pond or inlet it ends in, length and drop in metres, mean slope in %.

    A path that ends in a pond ends at its pit; its length and drop are those to there.
    """
    pond_of = {int(pit): pond_name(i) for i, pit in reversed(list(enumerate(ponds.pit.tolist())))}
    values = []
    for i, length in enumerate(paths.length.tolist()):
        end, inside = PathEnd(int(paths.end[i])), ""
        word = END_WORDS[end]
        if end is PathEnd.INLET:
            inside = inlets[paths.inlet[i]].name
        elif end is PathEnd.PIT and int(paths.vertex[i]) in pond_of:
            word, inside = "pond", pond_of[int(paths.vertex[i])]
        first, last = int(paths.start[i]), int(paths.start[i + 1])
        drop = float(paths.xyz[first, 2] - paths.xyz[last - 1, 2]) if last > first else 0.0
        values.append((word, inside, length, drop, 100 * drop / length if length > 0 else None))
    return values


def arrow_fields() -> QgsFields:
    return fields_of((("direction", "real"), ("slope_pct", "real")))


def write_arrows(arrows: FlowArrows, crs: Any, sink: QgsFeatureSink, progress: Progress) -> None:
    places = to_crs_units(arrows.xy, crs).tolist()
    rows = zip(places, arrows.direction.tolist(), (100 * arrows.slope).tolist())
    for place, direction, slope in counted(rows, len(places), progress):
        add_feature(sink, QgsGeometry(QgsPoint(*place)), [direction, slope])


# Ponds


def pond_fields() -> QgsFields:
    return fields_of(
        (
            ("pond", "text"),
            ("parent", "text"),
            ("depth_m", "real"),
            ("sigma_m", "real"),
            ("chance_pct", "real"),
            ("area_m2", "real"),
            ("volume_m3", "real"),
            ("level", "real"),
            ("points", "whole"),
            ("spills_to", "text"),
        )
    )


def spills_to(ponds: Ponds, i: int, inlets: Sequence[Inlet]) -> str:
    """A pond's or an inlet's name, or "rim"."""
    if ponds.spills_to[i] >= 0:
        return pond_name(int(ponds.spills_to[i]))
    if ponds.spill_end[i] == PathEnd.INLET:
        return inlets[ponds.inlet[i]].name
    return "rim" if ponds.spill_end[i] == PathEnd.RIM else ""


def write_ponds(
    ponds: Ponds, shores: Sequence[Tuple[np.ndarray, ...]], inlets: Sequence[Inlet], crs: Any, sink: QgsFeatureSink
) -> None:
    """Put full ponds into ``sink``, outermost ones first so that their parts are drawn over them."""
    level = heights_to_crs_units(ponds.level, crs)
    order = np.argsort(-ponds.level, kind="stable")  # a part is lower than its parent
    for i in order.tolist():
        parent = int(ponds.parent[i])
        attributes = [
            pond_name(i),
            pond_name(parent) if parent >= 0 else None,
            float(ponds.depth[i]),
            float(ponds.depth_sigma[i]),
            float(100 * ponds.chance[i]),
            float(ponds.area[i]),
            float(ponds.volume[i]),
            float(level[i]),
            int(ponds.vertices[i]),
            spills_to(ponds, i, inlets),
        ]
        add_feature(sink, multipolygon(polygons_of(shores[i]), crs), attributes)


def pond_point_fields() -> QgsFields:
    return fields_of((("kind", "text"), ("pond", "text"), ("depth_m", "real"), ("height", "real")))


def write_pond_points(ponds: Ponds, crs: Any, sink: QgsFeatureSink) -> None:
    """Put the pit and the spill point of each pond into ``sink``."""
    for i in range(len(ponds)):
        for kind, xyz in (("pit", ponds.pit_xyz[i]), ("spill", ponds.spill_xyz[i])):
            place = xyz + np.append(ponds.origin, 0.0)
            depth = float(ponds.depth[i]) if kind == "pit" else 0.0
            height = float(heights_to_crs_units(place[2], crs))
            add_feature(sink, point_z(place, crs), [kind, pond_name(i), depth, height])


def spill_fields() -> QgsFields:
    return fields_of((("pond", "text"), ("spills_to", "text"), ("length_m", "real"), ("drop_m", "real")))


def write_spills(
    ponds: Ponds, lines: Sequence[np.ndarray], inlets: Sequence[Inlet], crs: Any, sink: QgsFeatureSink
) -> int:
    """Put the ways of the overflow into ``sink``; how many there are. None where water leaves the surface at once."""
    count = 0
    for i, line in enumerate(lines):
        if len(line) > 1:
            length = float(np.hypot(*np.diff(line[:, :2], axis=0).T).sum())
            drop = float(line[0, 2] - line[-1, 2])
            add_feature(sink, line_z(line, crs), [pond_name(i), spills_to(ponds, i, inlets), length, drop])
            count += 1
    return count


# Catchments


def catchment_fields() -> QgsFields:
    return fields_of(
        (
            ("name", "text"),
            ("drains_to", "text"),
            ("area_m2", "real"),
            ("share_pct", "real"),
            ("nowhere_m2", "real"),
            ("nowhere_pct", "real"),
            ("colour", "whole"),
            ("out_x", "real"),
            ("out_y", "real"),
        )
    )


def write_catchments(shares: Shares, tin: Tin, sink: QgsFeatureSink, progress: Progress) -> None:
    """Put the rows of ``shares`` into ``sink``, the largest first."""
    colour = shares.colours()
    for i, polygons in enumerate(counted(shares.polygons(), len(shares), progress)):
        area, nowhere = float(shares.area[i]), float(shares.nowhere[i])
        place = to_crs_units(shares.xyz[i, :2], tin.crs)
        attributes = [
            shares.name[i] or translate("hummock", "rest of the rim"),
            OUTLET_WORDS[Outlet(int(shares.outlet[i]))],
            area,
            100 * area / tin.plan_area,
            nowhere,
            100 * nowhere / area if area > 0 else 0.0,
            int(colour[i]),
            or_null(place[0]),
            or_null(place[1]),
        ]
        add_feature(sink, multipolygon(polygons, tin.crs), attributes)


def channel_fields() -> QgsFields:
    return fields_of((("area_m2", "real"), ("length_m", "real"), ("drop_m", "real")))


def write_channels(lines: Lines, crs: Any, sink: QgsFeatureSink, progress: Progress) -> None:
    """Lines with the ground that drains through their lower end; of ridges, whose ``area`` is nan, the length only."""
    for i in counted(range(len(lines)), len(lines), progress):
        xyz = lines.line(i)
        length = float(np.hypot(*np.diff(xyz[:, :2], axis=0).T).sum())
        if np.isnan(lines.area[i]):
            add_feature(sink, line_z(xyz, crs), [length])
        else:
            add_feature(sink, line_z(xyz, crs), [float(lines.area[i]), length, float(xyz[0, 2] - xyz[-1, 2])])


def ridge_fields() -> QgsFields:
    return fields_of((("length_m", "real"),))


# Flat ground


def flat_fields() -> QgsFields:
    return fields_of((("number", "whole"), ("area_m2", "real"), ("limit_pct", "real")))


def write_flat(areas: Sequence[LabelledPolygon], limit: float, crs: Any, sink: QgsFeatureSink) -> None:
    for number, area in enumerate(areas, 1):
        add_feature(sink, multipolygon([area.rings], crs), [number, area.plan_area, 100 * limit])
