"""Layers in another unit than the survey: heights come with the unit of their layer, plan by PROJ."""

from __future__ import annotations

from typing import Any

import pytest
from in_qgis import Listener, memory_layer
from pyproj import CRS, Transformer

FOOT = 1200 / 3937  # of the US survey, m: NGS, "State Plane Coordinate System of 1983", NOAA Manual NOS NGS 5
LINE = [(984000.0, 200000.0, 100.0), (984100.0, 200050.0, 110.0)]
FEET, METRES = "EPSG:2263", "EPSG:32118"  # the same zone in feet and in metres


def _layer(crs: str = FEET) -> Any:
    wkt = "LineString Z (" + ", ".join(f"{x} {y} {z}" for x, y, z in LINE) + ")"
    return memory_layer("LineStringZ", [wkt], crs, "edge")


@pytest.fixture
def context(project: Any) -> Any:
    from qgis.core import QgsProcessingContext

    return QgsProcessingContext()


def _source(layer: Any, context: Any) -> Any:
    """What algorithms read; it must not outlive layer and context."""
    from qgis.core import QgsProcessingFeatureSource

    return QgsProcessingFeatureSource(layer, context)


def test_heights_in_feet_become_metres_in_the_core(context: Any) -> None:
    from plugin.processing.drawnsource import drawn_parts

    feedback, layer = Listener().feedback, _layer()
    plan = Transformer.from_crs(FEET, METRES, always_xy=True)
    for target in (METRES, FEET):
        ((_, (part,)),) = drawn_parts(_source(layer, context), CRS.from_user_input(target), context, feedback)
        for (x, y, z), got in zip(LINE, part.tolist()):
            assert got[:2] == pytest.approx(plan.transform(x, y), abs=1e-3)
            assert got[2] == pytest.approx(z * FOOT, abs=1e-9)


def test_a_file_of_the_job_has_its_heights_in_the_unit_of_its_crs(context: Any) -> None:
    from qgis.core import QgsCoordinateReferenceSystem

    from plugin.processing.drawnfiles import geojson_of

    layer = _layer()
    for crs, unit in ((METRES, FOOT), (FEET, 1.0)):
        target = QgsCoordinateReferenceSystem(crs)
        told = geojson_of(_source(layer, context), "edge", target, context, Listener().feedback)
        heights = [place[2] for place in told["features"][0]["geometry"]["coordinates"]]
        assert heights == pytest.approx([z * unit for _, _, z in LINE], abs=1e-6)


def test_a_point_of_edits_has_its_height_in_the_unit_of_its_layer(context: Any) -> None:
    from plugin.core.progress import silent
    from plugin.processing.editlayers import POINT_EDITS, read_edit_layer

    x, y, z = LINE[0]
    layer = memory_layer("PointZ", [f"Point Z ({x} {y} {z})"], FEET, "edits")
    (edit,) = read_edit_layer(
        _source(layer, context), "edits", POINT_EDITS, CRS.from_user_input(METRES), context,
        Listener().feedback, silent,
    )  # fmt: skip
    assert edit.height == pytest.approx(z * FOOT, abs=1e-9)  # type: ignore[attr-defined]
