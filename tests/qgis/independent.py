"""Opens files by libraries that have nothing to do with QGIS, and prints what they hold as JSON.

``python independent.py KIND PATH``, or ``python independent.py folder PATH`` for all files of a folder, each by its
kind. In a process of its own: rasterio, fiona and pyogrio bring their own GDAL and PROJ.
"""

from __future__ import annotations

import json
import sys
from typing import Any, Dict, List, Optional, Tuple


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
            "epsg": raster.crs.to_epsg(),
            "nodata": raster.nodata,
            "units": list(raster.units),
            "compressed": raster.compression.value if raster.compression else "",
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


def read_features(path: str) -> Dict[str, Any]:
    import numpy as np
    import shapely
    from shapely.validation import explain_validity

    made, values, system = features_of(path)
    geometries: Dict[str, int] = {}
    for one in made:
        geometries[one.geom_type] = geometries.get(one.geom_type, 0) + 1
    xyz = shapely.get_coordinates(made, include_z=True)
    return {
        "crs": system, "count": len(made), "geometries": geometries, "vertices": len(xyz),
        "bounds": [xyz[:, :2].min(axis=0).tolist(), xyz[:, :2].max(axis=0).tolist()] if len(xyz) else None,
        "heights": None if np.isnan(xyz[:, 2]).all() else [float(xyz[:, 2].min()), float(xyz[:, 2].max())],
        "values": values, "invalid": [explain_validity(one) for one in made if not one.is_valid],
    }  # fmt: skip


def features_of(path: str) -> Tuple[List[Any], Dict[str, List[Any]], Optional[int]]:
    """Geometries, values by their names, and the EPSG code."""
    try:
        import fiona
    except ImportError:  # there is none for Python 3.14 and later
        return features_of_later_pythons(path)
    from shapely.geometry import shape

    made: List[Any] = []
    values: Dict[str, List[Any]] = {}
    with fiona.open(path) as layer:
        for feature in layer:
            made.append(shape(feature.geometry))
            for key, value in feature.properties.items():
                values.setdefault(key, []).append(value)
        return made, values, layer.crs.to_epsg()


def features_of_later_pythons(path: str) -> Tuple[List[Any], Dict[str, List[Any]], Optional[int]]:
    import shapely
    from pyogrio import raw

    about, _, geometries, columns = raw.read(path)
    values = {
        name: [None if value != value else value for value in column.tolist()]
        for name, column in zip(about["fields"], columns)
    }
    authority, _, code = (about["crs"] or "").partition(":")
    return list(shapely.from_wkb(geometries)), values, int(code) if authority == "EPSG" else None


def read_table(path: str) -> Dict[str, Any]:
    import csv

    with open(path, encoding="utf-8", newline="") as file:
        header, *rows = csv.reader(file, strict=True)
    return {
        "columns": header,
        "count": len(rows),
        "ragged": [row for row in rows if len(row) != len(header)],
        "values": {name: [row[i] for row in rows] for i, name in enumerate(header)},
    }


def read_json(path: str) -> Dict[str, Any]:
    def refuse(word: str) -> None:
        raise ValueError(f"{word} is no JSON (RFC 8259)")

    with open(path, encoding="utf-8") as file:
        return {"content": json.load(file, parse_constant=refuse)}


def read_pdf(path: str) -> Dict[str, Any]:
    import pypdf

    reader = pypdf.PdfReader(path, strict=True)
    return {
        "pages": [[float(page.mediabox.width), float(page.mediabox.height)] for page in reader.pages],
        "texts": [page.extract_text() for page in reader.pages],
        "fonts": sorted({str(font["/BaseFont"]) for page in reader.pages
                         for font in page["/Resources"].get("/Font", {}).values()}),
    }  # fmt: skip


def read_page(path: str) -> Dict[str, Any]:
    from html.parser import HTMLParser

    class Page(HTMLParser):
        def __init__(self) -> None:
            super().__init__()
            self.open: List[str] = []
            self.counts: Dict[str, int] = {}
            self.wrong: List[str] = []
            self.outside: List[str] = []
            self.text: List[str] = []

        def handle_starttag(self, tag: str, attrs: Any) -> None:
            self.counts[tag] = self.counts.get(tag, 0) + 1
            if tag not in ("meta", "img", "br", "hr", "link", "col", "input"):
                self.open.append(tag)
            self.outside += [v for k, v in attrs if k in ("src", "href") and v and not v.startswith(("data:", "#"))]

        def handle_endtag(self, tag: str) -> None:
            if not self.open or self.open.pop() != tag:
                self.wrong.append(f"{tag} at line {self.getpos()[0]}")

        def handle_data(self, data: str) -> None:
            self.text.append(data)

    with open(path, encoding="utf-8") as file:
        page = Page()
        page.feed(file.read())
    text = " ".join(" ".join(page.text).split())
    return {
        "counts": page.counts, "wrong": page.wrong + page.open, "outside": page.outside,
        "text": text[text.index("</style>") if "</style>" in text else 0 :],
    }  # fmt: skip


def read_system(path: str) -> Dict[str, Any]:
    from rasterio.crs import CRS

    with open(path, encoding="utf-8") as file:
        return {"crs": CRS.from_wkt(file.read(), morph_from_esri_dialect=True).to_epsg()}


def read_sums(path: str) -> Dict[str, Any]:
    import subprocess
    from pathlib import Path

    ran = subprocess.run(
        ["sha256sum", "--check", "--strict", Path(path).name], cwd=Path(path).parent, capture_output=True, text=True
    )
    return {"fine": ran.returncode == 0, "said": ran.stdout.splitlines()}


def read_folder(path: str) -> Dict[str, Any]:
    from pathlib import Path

    return {
        file.name: KINDS[file.suffix](str(file)) for file in sorted(Path(path).iterdir()) if file.suffix in KINDS
    }  # fmt: skip


READERS = {"dxf": read_dxf, "raster": read_raster, "package": read_package, "mesh": read_mesh, "folder": read_folder}
KINDS = {
    ".2dm": read_mesh, ".asc": read_raster, ".csv": read_table, ".dxf": read_dxf, ".geojson": read_features,
    ".gpkg": read_package, ".html": read_page, ".json": read_json, ".pdf": read_pdf, ".prj": read_system,
    ".sha256": read_sums, ".tif": read_raster,
}  # fmt: skip

if __name__ == "__main__":
    print(json.dumps(READERS[sys.argv[1]](sys.argv[2])))
