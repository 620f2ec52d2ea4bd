"""The contour file: read back as JSON, and through GDAL where it is installed."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path
from typing import Any, Optional

import numpy as np
import pytest
from pyproj import CRS

from plugin.core.contours.geojson import write_geojson
from plugin.core.contours.lines import ContourOptions, Contours
from plugin.core.messages import SurveyError
from plugin.core.progress import Cancelled
from tests.core.terrains import HALF_FOOT

UTM = CRS.from_epsg(25832)
CUSTOM = CRS.from_user_input("+proj=tmerc +lat_0=49 +lon_0=9.3 +k=0.9998 +x_0=5000 +ellps=GRS80 +units=m +type=crs")


def two_lines(crs: Optional[CRS], options: Optional[ContourOptions] = None) -> Contours:
    """An open line at half a foot and a closed hollow at a foot."""
    return Contours(
        xy=np.array([[0.0, 0.0], [1.25, 2.5], [10.0, 10.0], [10.0, 11.0], [11.0, 10.0], [10.0, 10.0]]),
        start=np.array([0, 2, 6]),
        level=np.array([0.1524, 0.3048]),
        level_in_unit=np.array([0.5, 1.0]),
        step=np.array([1, 2]),
        index=np.array([False, True]),
        closed=np.array([False, True]),
        depression=np.array([False, True]),
        origin=np.array([432_100.0, 5_765_200.0]),
        options=options or HALF_FOOT,
        crs=crs,
    )


def written(contours: Contours, folder: Path) -> Any:
    write_geojson(contours, folder / "contours.geojson")
    return json.loads((folder / "contours.geojson").read_text(encoding="utf-8"))


def test_lines_and_attributes(tmp_path: Path) -> None:
    collection = written(two_lines(UTM), tmp_path)
    assert collection["type"] == "FeatureCollection"
    # The URN of the GeoJSON specification of 2008, section 3.1 (named CRS).
    assert collection["crs"] == {"type": "name", "properties": {"name": "urn:ogc:def:crs:EPSG::25832"}}
    first, second = collection["features"]
    assert first["properties"] == {
        "level": 0.5,
        "unit": "ft",
        "level_m": 0.1524,
        "index": False,
        "depression": False,
        "closed": False,
    }
    assert second["properties"]["index"] is True
    assert second["properties"]["depression"] is True
    assert second["properties"]["closed"] is True
    assert first["geometry"] == {
        "type": "LineString",
        "coordinates": [[432_100.0, 5_765_200.0], [432_101.25, 5_765_202.5]],
    }
    ring = second["geometry"]["coordinates"]
    assert len(ring) == 4
    assert ring[0] == ring[-1]


def test_coordinates_are_in_the_units_of_the_crs(tmp_path: Path) -> None:
    """California zone 1 in US survey feet (EPSG:2225); 1 ftUS = 1200/3937 m (NIST SP 811)."""
    collection = written(two_lines(CRS.from_epsg(2225)), tmp_path)
    assert collection["crs"]["properties"]["name"] == "urn:ogc:def:crs:EPSG::2225"
    coordinates = collection["features"][0]["geometry"]["coordinates"]
    expected = np.array([[432_100.0, 5_765_200.0], [432_101.25, 5_765_202.5]]) * 3937 / 1200
    np.testing.assert_allclose(coordinates, expected, rtol=0, atol=0.6e-4)


def test_height_system_is_left_out_of_the_name(tmp_path: Path) -> None:
    collection = written(two_lines(CRS.from_user_input("EPSG:25832+5783")), tmp_path)
    assert collection["crs"]["properties"]["name"] == "urn:ogc:def:crs:EPSG::25832"


@pytest.mark.parametrize(
    ("crs", "name"),
    [
        (UTM, "ETRS89 / UTM zone 32N"),
        (CRS.from_epsg(2225), "NAD83 / California zone 1 (ftUS)"),
        (CUSTOM, "unknown"),
        (None, "Local grid"),
    ],
)
def test_gdal_reads_lines_and_crs(crs: Optional[CRS], name: str, tmp_path: Path) -> None:
    ogr = pytest.importorskip("osgeo.ogr")
    contours = two_lines(crs)
    write_geojson(contours, tmp_path / "contours.geojson")
    source = ogr.Open(str(tmp_path / "contours.geojson"))
    layer = source.GetLayer(0)
    assert layer.GetName() == "contours"
    assert layer.GetGeomType() == ogr.wkbLineString
    assert layer.GetSpatialRef().GetName() == name
    if crs is not None:
        assert CRS.from_wkt(layer.GetSpatialRef().ExportToWkt(["FORMAT=WKT2"])).equals(crs, ignore_axis_order=True)
    features = list(layer)
    assert [feature["level"] for feature in features] == [0.5, 1.0]
    assert [feature["index"] for feature in features] == [0, 1]
    unit = 1.0 if crs is None else crs.axis_info[0].unit_conversion_factor
    for feature, line in zip(features, contours):
        np.testing.assert_allclose(np.array(feature.geometry().GetPoints())[:, :2] * unit, line, rtol=0, atol=1e-4)


def test_no_contours_make_a_file_without_features(tmp_path: Path) -> None:
    whole = two_lines(UTM)
    none = np.empty(0)
    empty = replace(
        whole,
        xy=np.empty((0, 2)),
        start=np.zeros(1, dtype=np.int64),
        **dict.fromkeys(("level", "level_in_unit", "step", "index", "closed", "depression"), none),
    )
    assert written(empty, tmp_path)["features"] == []


def test_a_file_that_cannot_be_written_is_named(tmp_path: Path) -> None:
    missing = tmp_path / "nowhere" / "contours.geojson"
    with pytest.raises(SurveyError) as caught:
        write_geojson(two_lines(UTM), missing)
    assert str(missing) in str(caught.value)


def test_cancelling_leaves_the_old_file(tmp_path: Path) -> None:
    path = tmp_path / "contours.geojson"
    path.write_text("old")

    def stop(fraction: float, stage: str) -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        write_geojson(two_lines(UTM), path, stop)
    assert path.read_text() == "old"
    assert [file.name for file in tmp_path.iterdir()] == ["contours.geojson"]
