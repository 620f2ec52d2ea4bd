"""A survey in US survey feet: every layer and number in the unit it says."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from in_qgis import layer_of

FOOT_US = 1200.0 / 3937.0  # NIST SP 811
EAST, NORTH = 985000.0, 200000.0  # somewhere in the zone of EPSG:2263, in US survey feet


@pytest.fixture
def survey(tmp_path: Path) -> Path:
    """A plane that rises 1 ft in 10 ft to the east, on a grid of 10 ft."""
    rows = [f"{EAST + 10 * i},{NORTH + 10 * j},{100 + i}" for i in range(6) for j in range(6)]
    file = tmp_path / "feet.csv"
    file.write_text("\n".join(["easting,northing,height", *rows]) + "\n")
    return file


def test_feet_stay_feet(run: Any, survey: Path, tmp_path: Path) -> None:
    points = run("importpoints", INPUT=str(survey), CRS="EPSG:2263", OUTPUT=str(tmp_path / "points.gpkg"))
    first = next(layer_of(points["OUTPUT"]).getFeatures()).geometry().constGet()
    assert (first.x(), first.y(), first.z()) == pytest.approx((EAST, NORTH, 100.0), abs=1e-6)
    surface = run(
        "buildsurface", INPUT=points["OUTPUT"], OUTPUT=str(tmp_path / "surface.2dm"), TRIANGLES="TEMPORARY_OUTPUT"
    )
    # each side of 15.24 m is right to the 0.1 mm of the plan grid
    assert surface["AREA"] == pytest.approx((50 * FOOT_US) ** 2, abs=2 * 15.24 * 1e-4)
    slopes = [feature["slope_pct"] for feature in surface["TRIANGLES"].getFeatures()]
    assert slopes == pytest.approx([10.0] * len(slopes), abs=0.01)
    # US survey feet are unit 2; a level of 102.5 ft lies 25 ft east of the edge of the grid
    contours = run("contours", INPUT=surface["OUTPUT"], INTERVAL=0.5, UNIT=2, OUTPUT="TEMPORARY_OUTPUT")["OUTPUT"]
    assert contours.crs().authid() == "EPSG:2263"
    line = next(contours.getFeatures('"level" = 102.5'))
    assert line["unit"] == "us-ft"
    assert line["level_m"] == pytest.approx(102.5 * FOOT_US)
    for vertex in line.geometry().vertices():
        assert vertex.x() == pytest.approx(EAST + 25.0, abs=1e-3)
        assert vertex.z() == pytest.approx(102.5, abs=1e-9)


def test_metres_in_a_crs_in_feet(run: Any, tmp_path: Path) -> None:
    """A file in metres for a CRS in US survey feet: the unit of the file is asked for."""
    file = tmp_path / "metres.csv"
    rows = [(EAST + 10 * i, NORTH + 10 * j, 100 + i) for i in range(3) for j in range(3)]
    text = "\n".join(",".join(f"{value * FOOT_US:.6f}" for value in row) for row in rows)
    file.write_text("easting,northing,height\n" + text + "\n")
    points = run("importpoints", INPUT=str(file), CRS="EPSG:2263", UNIT=0, HEIGHT_UNIT=0, OUTPUT="TEMPORARY_OUTPUT")
    first = next(points["OUTPUT"].getFeatures()).geometry().constGet()
    assert (first.x(), first.y(), first.z()) == pytest.approx((EAST, NORTH, 100.0), abs=1e-5)


def test_lines_in_another_crs_are_brought_in(run: Any, tmp_path: Path) -> None:
    """A void drawn in degrees cuts the surface in UTM where it lies."""
    from qgis.core import (
        QgsCoordinateReferenceSystem,
        QgsCoordinateTransform,
        QgsFeature,
        QgsGeometry,
        QgsProject,
        QgsVectorLayer,
    )

    file = tmp_path / "flat.csv"
    rows = [f"{548200 + 5 * i},{5712300 + 5 * j},50" for i in range(9) for j in range(9)]
    file.write_text("\n".join(["easting,northing,height", *rows]) + "\n")
    points = run("importpoints", INPUT=str(file), CRS="EPSG:25832", OUTPUT="TEMPORARY_OUTPUT")["OUTPUT"]
    square = QgsGeometry.fromWkt(
        "Polygon((548211 5712311, 548221 5712311, 548221 5712321, 548211 5712321, 548211 5712311))"
    )
    square.transform(
        QgsCoordinateTransform(
            QgsCoordinateReferenceSystem("EPSG:25832"), QgsCoordinateReferenceSystem("EPSG:4258"), QgsProject.instance()
        )
    )
    voids = QgsVectorLayer("Polygon?crs=EPSG:4258", "voids", "memory")
    feature = QgsFeature()
    feature.setGeometry(square)
    voids.dataProvider().addFeature(feature)
    result = run("buildsurface", INPUT=points, VOIDS=voids, OUTPUT=str(tmp_path / "flat.2dm"))
    assert result["AREA"] == pytest.approx(40.0 * 40.0 - 100.0, abs=0.05)
