"""The site before the works: an earlier survey of the bare hillside, and the phases in which it was changed."""

from __future__ import annotations

import json
import tempfile
from pathlib import Path
from typing import Any, Dict, List

import numpy as np
from pyproj import CRS

from plugin.core.handover.mesh import write_2dm
from plugin.core.linework.constraints import Constraints, LineKind, make_line
from plugin.core.points.pointset import make_points
from plugin.core.surface.build import build_surface
from test_data import demo_layers
from test_data import ground as g

SEED = 20240311
SPACING = 2.0  # metres between points
SIGMA = 0.015  # metres, noise of a height
#: The CRS as a .prj beside a mesh has it: the same on every machine.
PROJECTION = (
    'PROJCS["ETRS_1989_UTM_Zone_32N",GEOGCS["GCS_ETRS_1989",DATUM["D_ETRS_1989",'
    'SPHEROID["GRS_1980",6378137.0,298.257222101]],PRIMEM["Greenwich",0.0],UNIT["Degree",0.0174532925199433]],'
    'PROJECTION["Transverse_Mercator"],PARAMETER["False_Easting",500000.0],PARAMETER["False_Northing",0.0],'
    'PARAMETER["Central_Meridian",9.0],PARAMETER["Scale_Factor",0.9996],PARAMETER["Latitude_Of_Origin",0.0],'
    'UNIT["Meter",1.0]]'
)
#: Parcels in which earth was moved, with the phase's name.
PHASES = {"11/2": "1 lane", "11/5": "2 ditch and basin", "11/4": "3 mound"}


def mesh() -> str:
    """The earlier survey as the text of a 2DM mesh: points every 2 m inside the boundary, and along it."""
    random = np.random.RandomState(SEED)  # its streams never change
    ring = _densified(g.SITE, SPACING)
    low, high = g.SITE.min(axis=0), g.SITE.max(axis=0)
    x, y = (v.ravel() for v in np.meshgrid(*(np.arange(a, b, SPACING) for a, b in zip(low, high))))
    inner = g.inside(g.SITE, x, y)
    xy = np.vstack([ring, np.column_stack([x, y])[inner] + random.uniform(-0.4, 0.4, (int(inner.sum()), 2))])
    xy = xy[np.append(np.ones(len(ring), bool), _clear_of(xy[len(ring) :], ring))]
    height = np.round(g.hillside(xy[:, 0], xy[:, 1]) + random.normal(0, SIGMA, len(xy)), 3)
    xyz = np.column_stack([demo_layers.on_grid(xy), height])
    boundary = make_line(LineKind.BOUNDARY, xyz[: len(ring)])
    tin = build_surface(make_points(*xyz[len(ring) :].T, crs=CRS(g.CRS)), Constraints((boundary,))).tin
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "before.2dm"
        write_2dm(tin, path)
        return path.read_text(encoding="utf-8")


def _densified(corners: np.ndarray, step: float) -> np.ndarray:
    """A ring with a vertex every ``step`` or less."""
    places = []
    for a, b in zip(corners, np.roll(corners, -1, axis=0)):
        count = int(np.ceil(np.hypot(*(b - a)) / step))
        places.append(a + (b - a) * np.arange(count)[:, None] / count)
    return np.vstack(places)


def _clear_of(xy: np.ndarray, ring: np.ndarray) -> np.ndarray:
    """Places at least 0.7 m inside the site and from the ring's vertices, where no thin triangles come."""
    clear = np.hypot(*(xy[:, None] - ring[None]).transpose(2, 0, 1)).min(axis=1) > 0.7
    result: np.ndarray = clear & g.inside(g.SITE, xy[:, 0], xy[:, 1])
    return result


def phases() -> str:
    """The phases of the work as GeoJSON."""
    rows = [feature for feature in demo_layers.parcels().features if feature.values["parcel"] in PHASES]
    rows.sort(key=lambda feature: PHASES[str(feature.values["parcel"])])
    features = [
        _feature({"name": PHASES[str(row.values["parcel"])]}, "Polygon", [row.xyz[:, :2].tolist()]) for row in rows
    ]
    return _collection("phases", features)


def _feature(values: Dict[str, Any], kind: str, coordinates: List[Any]) -> Dict[str, Any]:
    return {"type": "Feature", "properties": values, "geometry": {"type": kind, "coordinates": coordinates}}


def _collection(name: str, features: List[Dict[str, Any]]) -> str:
    crs = {"type": "name", "properties": {"name": "urn:ogc:def:crs:EPSG::" + g.CRS.split(":")[1]}}
    return json.dumps({"type": "FeatureCollection", "name": name, "crs": crs, "features": features}, indent=1) + "\n"
