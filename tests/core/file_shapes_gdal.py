"""Survey files that GDAL reads, in further shapes: sheets, tracks, marks, features with and without a CRS, archives."""

from __future__ import annotations

import gzip
import json
import tempfile
import zipfile
from pathlib import Path
from typing import Any, Dict, Iterator, List, Optional, Sequence, Tuple

from tests.core.file_shapes import N, Shape, by_line, columns_of, lines_of, site, truth_of
from tests.core.file_shapes_world import EVERY, USUAL, degrees_of

Cell = Optional[str]


def sheet(
    rows: Sequence[Sequence[Cell]], driver: str, more: Sequence[Tuple[str, Sequence[Sequence[Cell]]]] = ()
) -> bytes:
    """A spreadsheet of text cells."""
    from osgeo import ogr

    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / f"made.{driver.lower()}"
        data = ogr.GetDriverByName(driver).CreateDataSource(str(path))
        for name, table in [("Sheet1", rows), *more]:
            layer = data.CreateLayer(name)
            for i in range(max(map(len, table))):
                layer.CreateField(ogr.FieldDefn(f"Field{i + 1}", ogr.OFTString))
            for row in table:
                feature = ogr.Feature(layer.GetLayerDefn())
                for i, cell in enumerate(row):
                    if cell is not None:
                        feature.SetField(i, cell)
                layer.CreateFeature(feature)
        layer = data = None
        return path.read_bytes()


def sheets() -> Iterator[Shape]:
    """Spreadsheets with titles, decimal commas, units below the header, several headers, errors in cells."""
    truth = site(601)
    rows = [list(row) for row in zip(*columns_of(truth).values())]
    centimetres = [[a, b, c, f"{float(d) * 100:.1f}", e] for a, b, c, d, e in rows]
    codes = by_line(truth.codes, 2)
    skip = list(range(3, N, 10))
    half = N // 2
    parted = {line if line < half + 2 else line + 1: place for line, place in truth_of(truth, 2).items()}
    for driver in ("XLSX", "ODS"):
        kind = f".{driver.lower()}"

        def shape(label: str, table: Any, points: Any, kind: str = kind, driver: str = driver, **more: Any) -> Shape:
            return Shape(
                f"gdal {driver} {label}", sheet(table, driver, more.pop("sheets", ())), points, suffix=kind, **more
            )

        yield shape("text", [USUAL, *rows], truth_of(truth, 2), codes=codes)
        title = [["Job Meadow", *[None] * 4], [None] * 5]
        yield shape("titles", [*title, USUAL, *rows], truth_of(truth, 4), codes=by_line(truth.codes, 4))
        yield shape("commas", [USUAL, *[[word.replace(".", ",") for word in row] for row in rows]], truth_of(truth, 2))
        yield shape("units below", [USUAL, ["-", "m", "m", "cm", "-"], *centimetres], truth_of(truth, 3))
        yield shape("units in words", [["Point", "E", "N", "H [cm]", "Code"], *centimetres], truth_of(truth, 2))
        notes = [("Notes", [["hello"], ["x"]])]
        yield shape("two sheets", [USUAL, *rows], truth_of(truth, 2), meant={"--layer": "Sheet1"}, sheets=notes)
        broken = [[a, b, c, "#REF!" if i in skip else d, e] for i, (a, b, c, d, e) in enumerate(rows)]
        yield shape("errors", [USUAL, *broken], truth_of(truth, 2, skip))
        yield shape("no header", rows, truth_of(truth, 1), meant=EVERY)
        other = [
            ["Point", "Northing", "Easting", "Height", "Code"],
            *[[a, c, b, d, e] for a, b, c, d, e in rows[half:]],
        ]
        yield shape("second header", [USUAL, *rows[:half], *other], parted)


def marks() -> Iterator[Shape]:
    """GPX, KML, KMZ, GeoJSON."""
    truth = site(603)
    names, codes = by_line(truth.names, 2), by_line(truth.codes, 2)
    points = list(
        zip(truth.longitude.tolist(), truth.latitude.tolist(), truth.height.tolist(), truth.names, truth.codes)
    )
    in_degrees: Dict[str, Any] = {"geographic": True, "precision": 2e-8}
    for mark, layer, form in (
        ("wpt", "waypoints", "{}"),
        ("trkpt", "track_points", "<trk><trkseg>{}</trkseg></trk>"),
        ("rtept", "route_points", "<rte>{}</rte>"),
    ):
        inner = "".join(
            f'<{mark} lat="{lat:.9f}" lon="{lon:.9f}"><ele>{up:.3f}</ele><name>{name}</name></{mark}>'
            for lon, lat, up, name, _ in points
        )
        text = f'<?xml version="1.0"?><gpx version="1.1" creator="x" xmlns="http://www.topografix.com/GPX/1/1">{form.format(inner)}</gpx>'
        yield Shape(
            f"gdal gpx {mark}",
            text.encode(),
            degrees_of(truth, 2),
            suffix=".gpx",
            meant={"--layer": layer},
            **in_degrees,
        )
    places = "".join(
        f"<Placemark><name>{name}</name><description>{code}</description><Point><coordinates>{lon:.9f},{lat:.9f},{up:.3f}"
        "</coordinates></Point></Placemark>"
        for lon, lat, up, name, code in points
    )
    kml = f'<?xml version="1.0"?><kml xmlns="http://www.opengis.net/kml/2.2"><Document><name>d</name><Folder><name>f</name>{places}</Folder></Document></kml>'
    yield Shape("gdal kml", kml.encode(), degrees_of(truth, 2), codes, names, suffix=".kml", **in_degrees)
    flat = {line: (lon, lat, 0.0) for line, (lon, lat, _) in degrees_of(truth, 2).items()}
    level = kml
    for _, _, up, _, _ in points:
        level = level.replace(f",{up:.3f}</coordinates>", ",0</coordinates>")
    yield Shape("gdal kml level", level.encode(), flat, suffix=".kml", meant={"--no-value": "none"}, **in_degrees)
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "made.kmz"
        with zipfile.ZipFile(path, "w") as archive:
            archive.writestr("doc.kml", kml)
        yield Shape("gdal kmz", path.read_bytes(), degrees_of(truth, 2), suffix=".kmz", **in_degrees)

    def features(each: Sequence[Tuple[List[float], Dict[str, Any]]], **more: Any) -> bytes:
        made = [
            {"type": "Feature", "geometry": {"type": "Point", "coordinates": at}, "properties": of} for at, of in each
        ]
        return json.dumps({"type": "FeatureCollection", **more, "features": made}).encode()

    whole = [([lon, lat, up], {"name": name, "code": code}) for lon, lat, up, name, code in points]
    yield Shape("gdal geojson", features(whole), degrees_of(truth, 2), codes, names, suffix=".geojson", **in_degrees)
    track = [[lon, lat, up] for lon, lat, up, _, _ in points]
    for kind, at in (("LineString", track), ("MultiLineString", [track[:20], track[20:]])):
        line = {"type": "Feature", "geometry": {"type": kind, "coordinates": at}, "properties": {}}
        made = json.dumps({"type": "FeatureCollection", "features": [line]}).encode()
        yield Shape(f"gdal geojson {kind}", made, degrees_of(truth, 2), suffix=".geojson", **in_degrees)
    string = " ".join(f"{lon:.9f},{lat:.9f},{up:.3f}" for lon, lat, up in track)
    line = kml[: kml.index("<Folder>")] + (
        f"<Placemark><LineString><coordinates>{string}</coordinates></LineString></Placemark></Document></kml>"
    )
    yield Shape("gdal kml line", line.encode(), degrees_of(truth, 2), suffix=".kml", **in_degrees)
    for word, unit in (("elevation", 1.0), ("elev_ft", 0.3048), ("height_cm", 0.01), ("Höhe", 1.0)):
        beside = [([lon, lat], {"name": name, word: up / unit}) for lon, lat, up, name, _ in points]
        yield Shape(f"gdal geojson {word}", features(beside), degrees_of(truth, 2), suffix=".geojson", **in_degrees)
    turned = [([lat, lon, up], of) for (lon, lat, up), of in whole]
    yield Shape(
        "gdal geojson turned",
        features(turned),
        degrees_of(truth, 2),
        suffix=".geojson",
        **in_degrees,
        meant={"--columns": "latitude=1,longitude=2,height=3,name=4,code=5"},
    )
    plan = [
        ([e, n, up], {"name": name})
        for e, n, up, name in zip(truth.east.tolist(), truth.north.tolist(), truth.height.tolist(), truth.names)
    ]
    for crs in ({}, {"crs": {"type": "name", "properties": {"name": "urn:ogc:def:crs:EPSG::25832"}}}):
        for given in (25832, None):
            yield Shape(
                f"gdal geojson plan {bool(crs)} {given}",
                features(plan, **crs),
                truth_of(truth, 2),
                suffix=".geojson",
                crs=given,
            )


def packed_files() -> Iterator[Shape]:
    """Text in archives."""
    truth = site(605)
    text = lines_of(list(columns_of(truth).values()), ",", USUAL).encode()
    yield Shape("gdal gz", gzip.compress(text), truth_of(truth, 2), suffix=".csv.gz")
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "made.zip"
        with zipfile.ZipFile(path, "w") as archive:
            archive.writestr("a/points.csv", text)
            archive.writestr("readme.txt", "hello\n")
        yield Shape("gdal zip", path.read_bytes(), truth_of(truth, 2), suffix=".zip", meant={"--layer": "a/points.csv"})


def every_of_gdal() -> List[Shape]:
    """All families; needs GDAL's Python package."""
    return [shape for family in (sheets, marks, packed_files) for shape in family()]
