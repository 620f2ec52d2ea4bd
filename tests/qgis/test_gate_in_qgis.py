"""Stray lines in QGIS: put aside by the import and by the check, told, and taken back in the layer."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict, List, Tuple

import numpy as np
import pytest
from in_qgis import Listener, layer_of


def walk() -> np.ndarray:
    """Easting, northing, height of a walk to and fro."""
    along = np.arange(0.0, 40.0, 0.5)
    rows = [np.column_stack([along[:: 1 if k % 2 == 0 else -1], np.full(len(along), 3.0 * k)]) for k in range(10)]
    xy = np.concatenate(rows) + np.random.default_rng(0).normal(0, 0.03, (10 * len(along), 2))
    return np.column_stack([500000 + xy[:, 0], 5700000 + xy[:, 1], 100 + 0.02 * xy[:, 0]])


@pytest.fixture(scope="module")
def imported(tmp_path_factory: pytest.TempPathFactory, chain: Dict[str, Any]) -> Tuple[Dict[str, Any], Listener]:
    import processing

    folder = tmp_path_factory.mktemp("gate")
    places = walk()
    places[100, :2] = places[100, 1::-1]
    places[300] = 0  # no place and no height: the reader says so, it is no point
    places[500, 0] += 304.8
    rows = [f"{i + 1},{e:.3f},{n:.3f},{h:.3f}" for i, (e, n, h) in enumerate(places.tolist())]
    file = folder / "field.csv"
    file.write_text("\n".join(["name,easting,northing,height", *rows]) + "\n", encoding="utf-8")
    listener = Listener()
    given = {"INPUT": str(file), "CRS": "EPSG:25832", "OUTPUT": str(folder / "points.gpkg")}
    return processing.run("hummock:importpoints", given, feedback=listener.feedback), listener


def statuses(source: Any) -> Dict[int, Tuple[str, str]]:
    return {row["line"]: (row["status"], row["reason"]) for row in layer_of(source).getFeatures()}


def test_the_import_puts_strays_aside_and_says_so(imported: Tuple[Dict[str, Any], Listener]) -> None:
    done, listener = imported
    rows = statuses(done["OUTPUT"])
    assert len(rows) == done["POINTS"] == 799
    assert 302 not in rows
    aside = {line: row for line, row in rows.items() if row[0] != "used"}
    assert aside == {102: ("rejected", "swapped"), 502: ("rejected", "stray")}
    assert done["POINTS_OUTSIDE"] == 0
    assert done["POINTS_USED"] == 797
    told = listener.warnings
    assert any("swapped in line 102" in text for text in told)
    assert any("302" in text for text in (*told, *listener.infos)), (told, listener.infos)
    assert not any("area of use" in text for text in told)


def test_the_check_keeps_them_out_and_a_hand_takes_one_back(imported: Tuple[Dict[str, Any], Listener]) -> None:
    import processing

    layer = layer_of(imported[0]["OUTPUT"])
    field = layer.fields().indexOf("status")
    back = next(row.id() for row in layer.getFeatures() if row["line"] == 502)
    assert layer.dataProvider().changeAttributeValues({back: {field: "used"}})
    listener = Listener()
    given = {"INPUT": layer, "OUTPUT": "TEMPORARY_OUTPUT", "FINDINGS": "TEMPORARY_OUTPUT"}
    done = processing.run("hummock:checksurvey", given, feedback=listener.feedback)
    rows = statuses(done["OUTPUT"])
    assert rows[102] == ("rejected", "swapped")
    assert rows[502] == ("used", "by_hand")
    assert done["BY_HAND"] == 1
    found: List[str] = [row["text"] for row in layer_of(done["FINDINGS"]).getFeatures()]
    assert "put aside as it was read" in found[0]


def test_the_check_of_any_layer_finds_a_stray(tmp_path: Path, chain: Dict[str, Any]) -> None:
    import processing
    from qgis.core import QgsFeature, QgsGeometry, QgsPoint, QgsVectorLayer

    layer = QgsVectorLayer("PointZ?crs=EPSG:25832", "walk", "memory")
    places = walk()
    places[200, 1] += 1_000_000
    features = []
    for place in places.tolist():
        feature = QgsFeature()
        feature.setGeometry(QgsGeometry(QgsPoint(*place)))
        features.append(feature)
    layer.dataProvider().addFeatures(features)
    given = {"INPUT": layer, "OUTPUT": "TEMPORARY_OUTPUT", "FINDINGS": "TEMPORARY_OUTPUT"}
    done = processing.run("hummock:checksurvey", given)
    rejected = [row for row in layer_of(done["OUTPUT"]).getFeatures() if row["status"] == "rejected"]
    assert [row["reason"] for row in rejected] == ["stray"]
