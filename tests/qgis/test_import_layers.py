"""Files and layers that are loaded already, merged into one survey by the import."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict, List

import pytest
from in_qgis import memory_layer, message_of
from pyproj import Transformer
from test_import_georeference import places, values, walk, write


def coded_layer(label: str, kind: str, crs: str, rows: List[Dict[str, Any]]) -> Any:
    """A layer "loaded": each row a place as text, and the values of its fields."""
    from qgis.core import QgsFeature, QgsGeometry

    from plugin.processing.versions import field

    layer = memory_layer(kind, [], crs, label)
    layer.dataProvider().addAttributes([field("name", "text"), field("code", "text"), field("height", "real")])
    layer.updateFields()
    for row in rows:
        feature = QgsFeature(layer.fields())
        feature.setGeometry(QgsGeometry.fromWkt(row["place"]))
        for name in ("name", "code", "height"):
            feature[name] = row.get(name)
        assert layer.dataProvider().addFeature(feature)
    return layer


def test_files_and_layers_become_one_survey(run: Any, tmp_path: Path) -> None:
    from qgis.core import QgsProject

    utm = "EPSG:25832"
    high = coded_layer("rover 2", "PointZ", utm, [{"place": "PointZ(500100 5700000 101)", "name": "h", "code": "KB"}])
    in_33 = [{"place": "Point(280000 5700000)", "name": "f", "height": 102.0}]
    flat = coded_layer("rover 3", "Point", "EPSG:25833", in_33)
    world = coded_layer("rover 2", "PointZ", "EPSG:4326", [{"place": "PointZ(9 51 103)", "name": "w"}])
    lost = coded_layer("rover 4", "PointZ", utm, [{"place": f"PointZ(500200 5700000 {z})"} for z in ("nan", "1")])
    QgsProject.instance().addMapLayers([high, flat, world, lost])
    given = {"CRS": "EPSG:25832", "OUTPUT": "TEMPORARY_OUTPUT", "REJECTS": "TEMPORARY_OUTPUT"}
    result = run(
        "importpoints",
        INPUT=write(tmp_path / "day1.csv", walk(10)),
        MORE_LAYERS=[high, flat.id(), world, lost],
        **given,
    )
    rows = values(result["OUTPUT"], "source", "name")
    assert rows[10:] == [("rover 2", "h"), ("rover 3", "f"), ("rover 2 (2)", "w"), ("rover 4", "")]
    assert (result["POINTS"], result["REJECTED_LINES"], result["LINES"]) == (14, 1, 11 + 5)
    assert values(result["REJECTS"], "source") == [("rover 4",)]
    expected = Transformer.from_crs(25833, 25832, always_xy=True).transform(280000.0, 5700000.0)
    assert places(result["OUTPUT"])[11] == pytest.approx([*expected, 102.0], abs=0.001)
    assert places(result["OUTPUT"])[12, 0] == pytest.approx(500000.0, abs=0.001)
    # without a file, and beside the layer in place of it
    assert run("importpoints", MORE_LAYERS=[high], **given)["POINTS"] == 1
    both = run("importpoints", LAYER=high, MORE=[write(tmp_path / "day2.csv", walk(5))], MORE_LAYERS=[world], **given)
    assert both["POINTS"] == 7
    assert {row[0] for row in values(both["OUTPUT"], "source")} == {"day2.csv", "rover 2", "rover 2 (2)"}
    for wrong, said in (
        ({"MORE_LAYERS": [high, high]}, "given twice"),
        ({"LAYER": high, "INPUT": str(tmp_path / "day1.csv")}, "not both"),
        ({}, "Give a survey file"),
    ):
        assert said in message_of(run, "importpoints", **wrong, **given)
