"""A line from GeoJSON: what GDAL writes, and files that are no line."""

import json

import numpy as np
import pytest
from pyproj import CRS

from plugin.core.alignment.line_file import read_line
from plugin.core.messages import SurveyError

UTM, FEET = CRS("EPSG:25832"), CRS("EPSG:2263")
XY = [[548236.062, 5712393.476], [548297.734, 5712406.585], [548351.69, 5712440.204]]
NAMED = {"type": "name", "properties": {"name": "urn:ogc:def:crs:EPSG::25832"}}


def write(path, geometry, crs=NAMED, **properties):
    feature = {"type": "Feature", "properties": properties or None, "geometry": geometry}
    document = {"type": "FeatureCollection", "features": [feature]}
    path.write_text(json.dumps({**document, "crs": crs} if crs else document))
    return path


def line(coordinates=XY):
    return {"type": "LineString", "coordinates": coordinates}


def test_a_line_and_its_name(tmp_path):
    xy, name = read_line(write(tmp_path / "a.geojson", line(), name="Perry Lane"), UTM)
    np.testing.assert_array_equal(xy, XY)
    assert name == "Perry Lane"
    bare = tmp_path / "lane.json"
    bare.write_text(json.dumps(line([[*place, 88.0] for place in XY])))
    xy, name = read_line(bare, UTM)
    np.testing.assert_array_equal(xy, XY)
    assert name == "lane"


def test_feet_become_metres(tmp_path):
    named = {"type": "name", "properties": {"name": "urn:ogc:def:crs:EPSG::2263"}}
    path = write(tmp_path / "a.geojson", line([[984000.0, 200000.0], [984100.0, 200000.0]]), named)
    xy, _ = read_line(path, FEET)
    assert np.diff(xy, axis=0)[0, 0] == pytest.approx(100 * 1200 / 3937)  # NIST SP 811


def test_what_gdal_writes(tmp_path):
    ogr, osr = pytest.importorskip("osgeo.ogr"), pytest.importorskip("osgeo.osr")
    system = osr.SpatialReference()
    system.ImportFromEPSG(25832)
    path = tmp_path / "gdal.geojson"
    target = ogr.GetDriverByName("GeoJSON").CreateDataSource(str(path))
    layer = target.CreateLayer("lane", system, ogr.wkbLineString)
    feature = ogr.Feature(layer.GetLayerDefn())
    text = ", ".join(f"{x} {y}" for x, y in XY)
    feature.SetGeometry(ogr.CreateGeometryFromWkt(f"LINESTRING ({text})"))
    layer.CreateFeature(feature)
    del feature, layer, target
    np.testing.assert_allclose(read_line(path, UTM)[0], XY, atol=1e-6)


def test_a_local_grid_takes_what_it_is_given(tmp_path):
    xy, _ = read_line(write(tmp_path / "a.geojson", line([[0, 0], [50, 10]]), None), None)
    np.testing.assert_array_equal(xy, [[0, 0], [50, 10]])


MANY = {"type": "MultiLineString", "coordinates": [XY, XY]}
BAD = {
    "other CRS": (line(), {"type": "name", "properties": {"name": "EPSG:25833"}}, "The centreline is in"),
    "unknown CRS": (line(), {"type": "name", "properties": {"name": "nowhere"}}, "“nowhere” is not understood"),
    "degrees": (line([[9.7, 51.5], [9.8, 51.6]]), None, "look like degrees"),
    "degrees said": (
        line([[9.7, 51.5], [9.8, 51.6]]),
        {"type": "name", "properties": {"name": "urn:ogc:def:crs:OGC:1.3:CRS84"}},
        "The centreline is in",
    ),
    "two lines": (MANY, NAMED, "there are 2 lines"),
    "a point": ({"type": "Point", "coordinates": XY[0]}, NAMED, "no line in it"),
    "no geometry": (None, NAMED, "no line in it"),
    "words": (line([["a", "b"], ["c", "d"]]), NAMED, "no list of coordinates"),
    "numbers": (line([1, 2, 3]), NAMED, "no list of coordinates"),
    "nothing": (line(None), NAMED, "no list of coordinates"),
}


@pytest.mark.parametrize("kind", BAD)
def test_bad_files_are_refused(tmp_path, kind):
    geometry, crs, said = BAD[kind]
    with pytest.raises(SurveyError, match=said):
        read_line(write(tmp_path / "a.geojson", geometry, crs), UTM)


@pytest.mark.parametrize("text", ["[1, 2]", '"line"', "3", "{}"])
def test_what_has_no_features_has_no_line(tmp_path, text):
    path = tmp_path / "a.geojson"
    path.write_text(text)
    with pytest.raises(SurveyError, match="no line in it"):
        read_line(path, UTM)


@pytest.mark.parametrize("text", ["", "{", "x,y\n1,2\n", "[" * 100_000])
def test_what_is_no_geojson_is_refused_with_its_line(tmp_path, text):
    path = tmp_path / "a.geojson"
    path.write_text(text)
    with pytest.raises(SurveyError, match=r"a\.geojson, line 1"):
        read_line(path, UTM)


def test_missing_and_binary_files(tmp_path):
    with pytest.raises(SurveyError, match="cannot be read"):
        read_line(tmp_path / "none.geojson", UTM)
    (tmp_path / "b.geojson").write_bytes(b"\xff\xfe\x00\x01")
    with pytest.raises(SurveyError, match="cannot be read"):
        read_line(tmp_path / "b.geojson", UTM)
