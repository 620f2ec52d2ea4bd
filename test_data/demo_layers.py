"""Plan layers of the demo: parcels, lane centreline and the design of the playing field."""

from __future__ import annotations

import json
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Dict, List, Tuple

import numpy as np

from test_data import ground as g
from test_data.demo_walk import lane_end, stations

#: The playing field: its pad in site coordinates, level along x, falling 1 % towards the ditch.
PAD_LOW, PAD_HIGH = (15.0, 33.0), (69.0, 67.0)
PAD_HEIGHT, PAD_FALL = 88.05, 0.01  # height at the middle, slope
BATTER = 3.0  # horizontal to one vertical
TIMESTAMP = "2025-04-10T00:00:00.000Z"


@dataclass(frozen=True)
class Feature:
    """One feature: ``xyz`` (k, 2) or (k, 3) easting, northing, height; rings are closed."""

    xyz: np.ndarray
    values: Dict[str, object]


@dataclass(frozen=True)
class Layer:
    name: str
    geometry: str  # POINT Z, LINESTRING, LINESTRING Z, POLYGON
    features: Tuple[Feature, ...]


def layers() -> Tuple[Layer, ...]:
    """All layers of ``site.gpkg``."""
    return parcels(), centreline(), design_points(), design_lines()


def on_grid(xy: np.ndarray, height: Any = None) -> np.ndarray:
    """Site coordinates (k, 2) as easting, northing and, where given, height, to the millimetre."""
    columns = list(g.to_grid(xy[:, 0], xy[:, 1]))
    if height is not None:
        columns.append(np.broadcast_to(height, len(xy)))
    return np.round(np.column_stack(columns), 3)


def ring(xy: np.ndarray, height: Any = None) -> np.ndarray:
    xyz = on_grid(xy, height)
    return np.vstack([xyz, xyz[:1]])


# --- parcels -----------------------------------------------------------------------------------------


def parcels() -> Layer:
    """Five parcels that fill the site without gap or overlap."""
    south_edge, north_edge = lane_side(-g.VERGE_BACK), lane_side(g.VERGE_BACK)
    a, b, c, d, e, f, w = g.SITE
    west, east = on_edge(w, f, 74.0), on_edge(c, d, 62.0)
    corner_out, corner_in = np.array([76.0, 74.0]), np.array([86.0, 62.0])
    split = int(np.searchsorted(north_edge[:, 0], 76.0))
    at_lane = north_edge[split]
    pieces = [
        ("11/1", "South hedge", "hedge", [a, b, *south_edge[::-1]]),
        ("11/2", "Perry Lane", "lane", [*south_edge, c, *north_edge[::-1]]),
        ("11/3", "Playing field", "school ground", [*north_edge[: split + 1], corner_in, corner_out, west, w]),
        ("11/4", "Orchard meadow", "meadow", [at_lane, *north_edge[split + 1 :], east, corner_in]),
        ("11/5", "Ditch and basin", "drainage", [west, corner_out, corner_in, east, d, e, f]),
    ]
    features = []
    for number, name, use, corners in pieces:
        outline = ring(np.array(corners))
        features.append(Feature(outline, {"parcel": number, "name": name, "land_use": use, "area_m2": area(outline)}))
    return Layer("parcels", "POLYGON", tuple(features))


def lane_side(offset: float) -> np.ndarray:
    """(k, 2) the lane parcel's side from boundary to boundary, chords of at most 5 m."""
    first, last = lane_end(offset, False), lane_end(offset, True)
    return np.column_stack(g.lane_xy(stations(first, last, 5.0, (g.ARC_START, g.ARC_END)), offset))


def on_edge(a: np.ndarray, b: np.ndarray, y: float) -> np.ndarray:
    return a + (b - a) * (y - a[1]) / (b[1] - a[1])


def area(outline: np.ndarray) -> float:
    """Area (square metres) of a closed ring, positive where it runs counter-clockwise."""
    x, y = (outline - outline[0])[:, :2].T
    return round(float(np.sum(x[:-1] * y[1:] - x[1:] * y[:-1]) / 2), 1)


def centreline() -> Layer:
    """The lane's centreline from boundary to boundary; the arc in chords of 1 m (2 mm inside)."""
    first, last = lane_end(0.0, False), lane_end(0.0, True)
    arc = np.linspace(g.ARC_START, g.ARC_END, int(np.ceil(g.ARC_END - g.ARC_START)) + 1)
    line = np.column_stack(g.lane_xy(np.concatenate([[first], arc, [last]]), 0.0))
    return Layer("centreline", "LINESTRING", (Feature(on_grid(line), {"name": "Perry Lane"}),))


def centreline_geojson() -> str:
    """The same as a file."""
    (feature,) = centreline().features
    return as_geojson("centreline", {"type": "LineString", "coordinates": feature.xyz.tolist()}, feature.values)


# --- the school yard ---------------------------------------------------------------------------------

#: Corners of a yard beside the old mound, site coordinates; it falls 1 % towards the basin.
YARD = np.array([(93, 42), (114, 42), (114, 52), (106, 60), (93, 60)], float)
YARD_FALL = 1.0  # per cent


def yard_geojson() -> str:
    """The yard as a pad to be graded, its level left open."""
    properties = {"name": "School yard", "fall": YARD_FALL, "towards": round(float(-np.degrees(g.TURN)) % 360, 1)}
    return as_geojson("pad", {"type": "Polygon", "coordinates": [ring(YARD).tolist()]}, properties)


def as_geojson(name: str, geometry: Dict[str, object], properties: Dict[str, object]) -> str:
    """A file of one feature in the demo's CRS, which is named as GDAL does, for the main job without QGIS."""
    feature = {"type": "Feature", "properties": properties, "geometry": geometry}
    crs = {"type": "name", "properties": {"name": f"urn:ogc:def:crs:EPSG::{g.CRS.split(':')[1]}"}}
    collection = {"type": "FeatureCollection", "name": name, "crs": crs, "features": [feature]}
    return json.dumps(collection, indent=1) + "\n"


# --- the design --------------------------------------------------------------------------------------


def pad_height(xy: np.ndarray) -> np.ndarray:
    return PAD_HEIGHT - PAD_FALL * (xy[:, 1] - (PAD_LOW[1] + PAD_HIGH[1]) / 2)


def pad_edge() -> Tuple[np.ndarray, np.ndarray]:
    """(k, 2) places about 3 m apart around the pad, and the direction (k, 2) outward from each.

    Corners come several times, with the directions of a fan.
    """
    (x0, y0), (x1, y1) = PAD_LOW, PAD_HIGH
    places, outward = [], []
    for a, b, angle in (
        ((x0, y0), (x1, y0), -90), ((x1, y0), (x1, y1), 0), ((x1, y1), (x0, y1), 90), ((x0, y1), (x0, y0), 180),
    ):  # fmt: skip
        count = round(np.hypot(b[0] - a[0], b[1] - a[1]) / 3)
        share = np.linspace(0, 1, count + 1)[:, None]
        places += list(np.array(a) + (np.array(b) - np.array(a)) * share) + [np.array(b)] * 2
        outward += [angle] * (count + 1) + [angle + 30, angle + 60]
    turn = np.radians(outward)
    return np.array(places), np.column_stack([np.cos(turn), np.sin(turn)])


def daylight() -> Tuple[np.ndarray, np.ndarray]:
    """Places (k, 2) and heights (k,) where 1 : 3 batters from the pad's edge meet the ground.

    Where the pad meets the ground within 0.3 m of its edge there is no batter and no place.
    """
    places, outward = pad_edge()
    start = pad_height(places)
    cut = g.site_height(places[:, 0], places[:, 1]) > start
    slope = np.where(cut, 1.0, -1.0) / BATTER
    low, high = np.zeros(len(places)), np.full(len(places), 12.0)
    for _ in range(50):
        reach = (low + high) / 2
        out = places + outward * reach[:, None]
        short = (g.site_height(out[:, 0], out[:, 1]) > start + slope * reach) == cut
        low, high = np.where(short, reach, low), np.where(short, high, reach)
    far = low > 0.3
    return (places + outward * low[:, None])[far], (start + slope * low)[far]


def design_points() -> Layer:
    """Heights on the pad every 9 m by 8.5 m, its edge left to the lines."""
    x, y = np.meshgrid(np.arange(PAD_LOW[0] + 9, PAD_HIGH[0], 9), np.arange(PAD_LOW[1] + 8.5, PAD_HIGH[1], 8.5))
    xy = np.column_stack([x.ravel(), y.ravel()])
    xyz = on_grid(xy, pad_height(xy))
    return Layer("design_points", "POINT Z", tuple(Feature(xyz[k : k + 1], {"part": "pad"}) for k in range(len(xyz))))


def design_lines() -> Layer:
    """The pad's edge and the line where its batters meet the ground, both closed."""
    places = pad_edge()[0]
    places = places[np.any(places != np.roll(places, 1, axis=0), axis=1)]
    out, height = daylight()
    edge = Feature(ring(places, pad_height(places)), {"part": "pad edge"})
    meet = Feature(ring(out, height), {"part": "batter end"})
    return Layer("design_lines", "LINESTRING Z", (edge, meet))


# --- water -------------------------------------------------------------------------------------------


def inlets() -> List[str]:
    """Gullies at the kerb foot of the lane, and the pipe at the low end of the ditch, with runoff coefficients."""
    gullies = [("Gully 1", 30.0, 2.4), ("Gully 2", 60.0, 2.4), ("Gully 3", 90.0, 2.4), ("Gully 4", 60.0, -2.4)]
    places = [(name, *(float(v) for v in g.lane_xy(station, offset)), 0.8) for name, station, offset in gullies]
    places.append(("Ditch pipe", 84.0, float(g.ditch_line(np.array(84.0))), 0.3))
    rows = ["name,easting,northing,runoff"]
    for name, x, y, runoff in places:
        east, north = g.to_grid(np.array(x), np.array(y))
        rows.append(f"{name},{float(east):.2f},{float(north):.2f},{runoff}")
    return rows


# --- writing -----------------------------------------------------------------------------------------


def write_geopackage(path: Path) -> None:
    """Write ``site.gpkg`` through GDAL's Python module; raises ImportError where there is none."""
    from osgeo import gdal, ogr, osr

    ogr.UseExceptions()
    gdal.SetConfigOption("OGR_CURRENT_DATE", TIMESTAMP)
    if path.exists():
        path.unlink()
    reference = osr.SpatialReference()
    reference.ImportFromEPSG(int(g.CRS.split(":")[1]))
    reference.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
    target = ogr.GetDriverByName("GPKG").CreateDataSource(str(path))
    for layer in layers():
        add_layer(target, layer, reference)
    target = None
    gdal.SetConfigOption("OGR_CURRENT_DATE", None)


def add_layer(target: Any, layer: Layer, reference: Any) -> None:
    from osgeo import ogr

    kind = {"POINT Z": ogr.wkbPoint25D, "LINESTRING Z": ogr.wkbLineString25D, "LINESTRING": ogr.wkbLineString}
    made = target.CreateLayer(layer.name, reference, kind.get(layer.geometry, ogr.wkbPolygon), ["SPATIAL_INDEX=NO"])
    for name, value in layer.features[0].values.items():
        made.CreateField(ogr.FieldDefn(name, ogr.OFTReal if isinstance(value, float) else ogr.OFTString))
    for feature in layer.features:
        row = ogr.Feature(made.GetLayerDefn())
        for name, value in feature.values.items():
            row.SetField(name, value)
        row.SetGeometry(ogr.CreateGeometryFromWkt(well_known_text(layer.geometry, feature.xyz)))
        made.CreateFeature(row)


def well_known_text(kind: str, xyz: np.ndarray) -> str:
    places: List[str] = [" ".join(f"{v:.3f}" for v in row) for row in xyz]
    inner = ", ".join(places)
    return f"{kind} (({inner}))" if kind == "POLYGON" else f"{kind} ({inner})"
