"""Opens files by libraries that have nothing to do with QGIS, and prints what they hold as JSON.

``python independent.py KIND PATH``. In a process of its own: rasterio, fiona and pyogrio bring their own GDAL and PROJ.
"""

from __future__ import annotations

import json
import sys
from typing import Any, Dict


def read_dxf(path: str) -> Dict[str, Any]:
    import ezdxf
    import numpy as np
    import trimesh

    document = ezdxf.readfile(path)
    space = document.modelspace()
    corners = np.array([[tuple(corner) for corner in face.wcs_vertices()] for face in space.query("3DFACE")])
    mesh = trimesh.Trimesh(corners.reshape(-1, 3), np.arange(corners.size // 3).reshape(-1, 3), process=True)
    lines: Dict[str, int] = {}
    for line in space.query("POLYLINE"):
        lines[line.dxf.layer] = lines.get(line.dxf.layer, 0) + 1
    return {
        "errors": [str(error) for error in document.audit().errors],
        "faces": len(corners),
        "area": float(mesh.area),
        "bounds": mesh.bounds.tolist(),
        "vertices": len(mesh.vertices),
        "lines": lines,
        "heights": sorted(
            {line.vertices[0].dxf.location.z for line in space.query("POLYLINE") if "CONT" in line.dxf.layer}
        ),
        "points": len(space.query("POINT")),
        "texts": len(space.query("TEXT")),
    }


def read_raster(path: str) -> Dict[str, Any]:
    import numpy as np
    import rasterio

    with rasterio.open(path) as raster:
        heights = raster.read(1, masked=True)
        return {
            "bounds": list(raster.bounds),
            "size": [raster.width, raster.height],
            "crs": raster.crs.to_wkt(),
            "nodata": raster.nodata,
            "units": list(raster.units),
            "compressed": raster.compression.value,
            "tiled": raster.profile["tiled"],
            "filled": int(np.ma.count(heights)),
            "range": [float(heights.min()), float(heights.max())],
            "description": raster.descriptions[0],
        }


def read_package(path: str) -> Dict[str, Any]:
    import sqlite3

    base = sqlite3.connect(path)
    styles = base.execute("select f_table_name, useAsDefault, length(styleQML) from layer_styles").fetchall()
    check = base.execute("pragma integrity_check").fetchone()[0]
    base.close()
    return {"layers": read_layers(path), "styles": styles, "check": check}


def read_layers(path: str) -> Dict[str, Any]:
    try:
        import fiona
    except ImportError:  # there is none for Python 3.14 and later
        return read_layers_of_later_pythons(path)
    found: Dict[str, Any] = {}
    for name in fiona.listlayers(path):
        with fiona.open(path, layer=name) as layer:
            found[name] = {
                "count": len(layer),
                "bounds": list(layer.bounds) if len(layer) and name != "layer_styles" else [],
                "crs": layer.crs.to_epsg() if layer.crs else None,
                "fields": list(layer.schema["properties"]),
            }
    return found


def read_layers_of_later_pythons(path: str) -> Dict[str, Any]:
    import pyogrio

    found: Dict[str, Any] = {}
    for name in pyogrio.list_layers(path)[:, 0].tolist():
        layer = pyogrio.read_info(path, layer=name, force_feature_count=True, force_total_bounds=True)
        authority, _, code = (layer["crs"] or "").partition(":")
        found[name] = {
            "count": layer["features"],
            "bounds": list(layer["total_bounds"] or []),
            "crs": int(code) if authority == "EPSG" else None,
            "fields": layer["fields"].tolist(),
        }
    return found


def read_mesh(path: str) -> Dict[str, Any]:
    import numpy as np
    import trimesh

    with open(path, encoding="ascii") as file:
        rows = [line.split() for line in file]
    nodes = np.array([[float(word) for word in row[2:5]] for row in rows if row[0] == "ND"])
    faces = np.array([[int(word) - 1 for word in row[2:5]] for row in rows if row[0] == "E3T"])
    mesh = trimesh.Trimesh(nodes, faces, process=False)
    return {
        "faces": len(mesh.faces), "vertices": len(mesh.vertices), "bounds": mesh.bounds.tolist(),
        "area": float(mesh.area), "consistent": bool(mesh.is_winding_consistent), "euler": int(mesh.euler_number),
    }  # fmt: skip


READERS = {"dxf": read_dxf, "raster": read_raster, "package": read_package, "mesh": read_mesh}

if __name__ == "__main__":
    print(json.dumps(READERS[sys.argv[1]](sys.argv[2])))
