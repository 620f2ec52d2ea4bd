"""Lines that the points show, in QGIS: found, decided in the layer, kept when found again, held by the surface."""

from __future__ import annotations

import math
from pathlib import Path
from typing import Any, Dict, List
from xml.etree import ElementTree

import numpy as np
import pytest
from in_qgis import Listener, layer_of, message_of

CRS = "EPSG:25832"
EAST, NORTH = 548200.0, 5712300.0


def walked_street() -> List[str]:
    """A street along the easting, kerbs of 120 mm at 4 m on either side, crossed every 2.5 m, a point every 0.5 m."""
    random = np.random.default_rng(7)
    rows, number = ["name,easting,northing,height"], 0
    for k, x in enumerate(np.arange(0, 50, 2.5)):
        across = np.arange(-8.0, 8.01, 0.5) + random.uniform(-0.2, 0.2)
        for y in across if k % 2 == 0 else across[::-1]:
            number += 1
            height = 100 + 0.01 * x + 0.12 * (abs(y) > 4.0) + random.normal(0, 0.008)
            rows.append(f"{number},{EAST + x + random.normal(0, 0.02):.3f},{NORTH + y:.3f},{height:.3f}")
    return rows


def run(name: str, listener: Any = None, **given: Any) -> Dict[str, Any]:
    import processing

    return processing.run(f"hummock:{name}", given, feedback=(listener or Listener()).feedback)


@pytest.fixture(scope="module")
def street(chain: Dict[str, Any], tmp_path_factory: pytest.TempPathFactory) -> str:
    folder = tmp_path_factory.mktemp("street")
    (folder / "street.csv").write_text("\n".join(walked_street()) + "\n", encoding="utf-8")
    return run("importpoints", INPUT=str(folder / "street.csv"), CRS=CRS, OUTPUT=str(folder / "points.gpkg"))["OUTPUT"]


@pytest.fixture
def found(street: str, tmp_path: Path) -> Dict[str, Any]:
    return run("findlines", INPUT=street, OUTPUT=str(tmp_path / "lines.gpkg"))


def rows(source: Any) -> List[Any]:
    return sorted(layer_of(source).getFeatures(), key=lambda feature: feature["number"])


def set_status(path: str, number: int, status: str) -> None:
    layer = layer_of(path)
    assert layer.startEditing()
    for feature in layer.getFeatures():
        if feature["number"] == number:
            layer.changeAttributeValue(feature.id(), layer.fields().indexFromName("status"), status)
    assert layer.commitChanges()


def test_both_kerbs_are_found_with_foot_and_top(found: Dict[str, Any]) -> None:
    lines = rows(found["OUTPUT"])
    used = [line for line in lines if line["status"] == "used"]
    assert found["USED"] == len(used) >= 2
    assert found["USED"] + found["PROPOSED"] + found["REJECTED"] == len(lines)
    for side in (-4.0, 4.0):
        beside = [line for line in used if abs(line.geometry().centroid().asPoint().y() - NORTH - side) < 0.4]
        assert sum(line["length_m"] for line in beside) > 38
        for line in beside:
            assert line["kind"] == "step"
            assert abs(line["step_m"] - 0.12) < 0.02
            foot, top = line.geometry().constGet()
            for k in range(foot.numPoints()):
                assert top.pointN(k).z() - foot.pointN(k).z() == pytest.approx(0.12, abs=0.04)
                assert abs(top.pointN(k).y() - NORTH) > abs(foot.pointN(k).y() - NORTH)


def test_the_surface_holds_to_the_used_ones_only(street: str, found: Dict[str, Any], tmp_path: Path) -> None:
    def held() -> List[Any]:
        given = {"OUTPUT": str(tmp_path / "s.2dm"), "LINES": str(tmp_path / "held.gpkg")}
        made = run("buildsurface", INPUT=street, FOUND_LINES=found["OUTPUT"], **given)
        return [feature["label"] for feature in layer_of(made["LINES"]).getFeatures()]

    def standing() -> int:
        made = run("buildsurface", INPUT=street, FOUND_LINES=found["OUTPUT"], OUTPUT=str(tmp_path / "p.2dm"))
        whole = run("buildsurface", INPUT=street, OUTPUT=str(tmp_path / "q.2dm"))
        assert made["POINTS_USED"] + made["POINTS_IN_LINES"] == whole["POINTS_USED"]
        return made["POINTS_IN_LINES"]

    assert held().count("step 1") == 2
    both = standing()
    set_status(found["OUTPUT"], 1, "rejected")
    labels = held()
    assert 0 < standing() < both
    assert "step 1" not in labels
    assert labels.count("step 2") == 2


def test_a_found_line_gives_way_to_one_that_was_drawn(street: str, found: Dict[str, Any], tmp_path: Path) -> None:
    from in_qgis import memory_layer

    x = EAST + 21.3
    drawn = memory_layer("LineStringZ", [f"LineStringZ ({x} {NORTH - 7} 90, {x} {NORTH + 7} 90)"], CRS, "drawn")
    listener = Listener()
    made = run("buildsurface", listener, INPUT=street, FOUND_LINES=found["OUTPUT"], BREAKLINES=drawn,
               OUTPUT=str(tmp_path / "s.2dm"), LINES=str(tmp_path / "held.gpkg"))  # fmt: skip
    labels = [feature["label"] for feature in layer_of(made["LINES"]).getFeatures()]
    assert labels.count("step 1") == 4  # in two pieces
    assert any("left out of the surface" in text for text in listener.warnings)


def test_decisions_are_kept_when_the_file_is_written_anew(street: str, found: Dict[str, Any]) -> None:
    set_status(found["OUTPUT"], 1, "rejected")
    layer = layer_of(found["OUTPUT"])
    drawn = next(feature for feature in layer.getFeatures() if feature["number"] == 2)
    geometry = drawn.geometry()
    geometry.translate(0.0, 0.0, 0.25, 0.0)
    assert layer.startEditing()
    assert layer.changeGeometry(drawn.id(), geometry)
    assert layer.commitChanges()
    del layer
    for _ in range(2):
        listener = Listener()
        again = run("findlines", listener, INPUT=street, OUTPUT=found["OUTPUT"])
        first, second = rows(again["OUTPUT"])[:2]
        assert (first["status"], bool(first["by_hand"])) == ("rejected", True)
        assert (second["status"], bool(second["by_hand"])) == ("used", True)
        heights = [vertex.z() for vertex in second.geometry().vertices()]
        assert heights == pytest.approx([vertex.z() for vertex in geometry.vertices()], abs=1e-3)
        assert any("2" in text and "kept" in text for text in listener.infos)


def test_decisions_come_from_a_layer_that_is_named(street: str, found: Dict[str, Any], tmp_path: Path) -> None:
    set_status(found["OUTPUT"], 2, "proposed")
    again = run("findlines", INPUT=street, DECIDED=found["OUTPUT"], OUTPUT=str(tmp_path / "again.gpkg"))
    assert rows(again["OUTPUT"])[1]["status"] == "proposed"


def test_a_status_that_is_no_word_is_refused(street: str, found: Dict[str, Any], tmp_path: Path) -> None:
    set_status(found["OUTPUT"], 1, "perhaps")
    run_with = {"INPUT": street, "FOUND_LINES": found["OUTPUT"], "OUTPUT": str(tmp_path / "s.2dm")}
    assert "perhaps" in message_of(run, "buildsurface", **run_with)
    assert not (tmp_path / "s.2dm").exists()


def test_the_report_takes_the_decisions(street: str, found: Dict[str, Any], tmp_path: Path) -> None:
    set_status(found["OUTPUT"], 1, "rejected")
    given = {"LAYER": street, "CRS": CRS, "INTERVAL": 0.1, "PAPER": False}
    run("surveyreport", FOUND_LINES=found["OUTPUT"], FOLDER=str(tmp_path / "a"), **given)
    lines = rows(tmp_path / "a" / "lines_found.geojson")
    assert (lines[0]["status"], lines[1]["status"]) == ("rejected", "used")
    run("surveyreport", FIND_LINES=False, FOLDER=str(tmp_path / "b"), **given)
    assert not (tmp_path / "b" / "lines_found.geojson").exists()


def test_the_style_offers_the_statuses_and_a_tip(found: Dict[str, Any]) -> None:
    from qgis.core import QgsExpression, QgsExpressionContext, QgsExpressionContextUtils

    from plugin.processing.styles import FOUND_LINES, LEGEND_TEXTS, apply_qml

    layer = layer_of(found["OUTPUT"])
    apply_qml(layer, FOUND_LINES)
    assert {category.label() for category in layer.renderer().categories()} <= set(LEGEND_TEXTS)
    setup = layer.editorWidgetSetup(layer.fields().indexFromName("status"))
    assert {value for one in setup.config()["map"] for value in one.values()} == {"used", "proposed", "rejected"}
    context = QgsExpressionContext(QgsExpressionContextUtils.globalProjectLayerScopes(layer))
    context.setFeature(next(layer.getFeatures()))
    tip = QgsExpression.replaceExpressionText(layer.mapTipTemplate(), context)
    assert "Used" in tip
    assert "passes" in tip
    assert "[%" not in tip
    assert math.isfinite(float(found["USED"]))


def test_found_lines_go_out_with_their_kind(street: str, found: Dict[str, Any], tmp_path: Path) -> None:
    """The surface's lines, LandXML's breaklines and the plan: two kerbs, each a foot and a top."""
    made = run("buildsurface", INPUT=street, FOUND_LINES=found["OUTPUT"], OUTPUT=str(tmp_path / "s.2dm"),
               LINES=str(tmp_path / "held.gpkg"))  # fmt: skip
    run("exportlandxml", INPUT=made["OUTPUT"], LINES=made["LINES"], OUTPUT=str(tmp_path / "s.xml"))
    names = [line.get("name") for line in ElementTree.parse(tmp_path / "s.xml").findall(".//{*}Breakline")]
    assert sorted(names) == ["step 1", "step 1", "step 2", "step 2"]
    plan = run("plansheet", INPUT=made["OUTPUT"], LINES=made["LINES"], OUTPUT=str(tmp_path / "plan.pdf"),
               LAYERS=str(tmp_path / "plan.gpkg"))  # fmt: skip
    assert (plan["SHEETS"], plan["SPOT_COUNT"] > 0) == (1, True)
