"""The demo in US survey feet, tool by tool: what the log, the layers and the sheets say is in feet unless chosen."""

from __future__ import annotations

import re
import sys
from pathlib import Path
from typing import Any, Dict, List

import pytest
from in_qgis import Listener, layer_of, memory_layer

sys.path.append(str(Path(__file__).parent.parent / "core"))
import feet_demo

FOOT = feet_demo.FOOT
METRIC = re.compile(r"(?<![\w.])(m|mm|cm|km|m²|m³|l/s|mm/h|ha)(?![\w])")


@pytest.fixture(scope="module")
def feet(application: Any, tmp_path_factory: pytest.TempPathFactory) -> Dict[str, Any]:
    """Points and surface of the demo in feet, the other files, and what was said on the way."""
    import processing

    folder = feet_demo.make(tmp_path_factory.mktemp("feet"))
    listener = Listener()

    def run(name: str, **given: Any) -> Dict[str, Any]:
        return dict(processing.run(f"hummock:{name}", given, feedback=listener.feedback))

    points = run(
        "importpoints", INPUT=str(folder / "survey.csv"), CRS=feet_demo.CRS, OUTPUT=str(folder / "points.gpkg")
    )
    checked = run("checksurvey", INPUT=points["OUTPUT"], OUTPUT=str(folder / "checked.gpkg"))
    surface = run("buildsurface", INPUT=checked["OUTPUT"], OUTPUT=str(folder / "surface.2dm"), MAX_RIM_EDGE=10.0)
    return {
        "folder": folder, "points": checked["OUTPUT"], "surface": surface["OUTPUT"],
        "said": [*listener.infos, *listener.warnings],
    }  # fmt: skip


def metric(said: List[str]) -> List[str]:
    """What was said in metric units, but for the ratio of the two feet."""
    return [text for text in said if METRIC.search(text.replace("they differ by 2 mm in a kilometre", ""))]


def test_reading_checking_and_building(feet: Dict[str, Any]) -> None:
    assert metric(feet["said"]) == []
    assert any("ftUS²" in text for text in feet["said"])


LANE = {"LANE_LEFT": 7.5, "LANE_RIGHT": 7.5}
TOOLS: Dict[str, Dict[str, Any]] = {
    "inspectsurface": {"POINTS": "points", "OUTPUT": "TEMPORARY_OUTPUT"},
    "checkline": {"LINE": "centreline.geojson", **LANE, "OUTPUT": "TEMPORARY_OUTPUT", "FLOW": None, "LOW_POINTS": None},
    "roadprofile": {"LINE": "centreline.geojson", "INTERVAL": 50.0, "OUTPUT": "TEMPORARY_OUTPUT"},
    "roadgrades": {"LINE": "centreline.geojson", **LANE, "OUTPUT": "TEMPORARY_OUTPUT"},
    "ponds": {"OUTPUT": "TEMPORARY_OUTPUT"},
    "catchments": {"OUTPUT": "TEMPORARY_OUTPUT"},
    "flowpaths": {"OUTPUT": "TEMPORARY_OUTPUT"},
    "volumetoplane": {"LEVEL": 285.0, "OUTPUT": "TEMPORARY_OUTPUT", "RASTER": None},
    "padgrading": {
        "PADS": "pad.geojson", "LEVEL": 284.0, "OUTPUT": "TEMPORARY_OUTPUT", "FINISHED": "TEMPORARY_OUTPUT",
    },
    "coverage": {"POINTS": "points", "OUTPUT": "TEMPORARY_OUTPUT"},
    "contoursheet": {"OUTPUT": "TEMPORARY_OUTPUT"},
    "thinsurface": {"OUTPUT": "TEMPORARY_OUTPUT"},
    "accuracystatement": {"CHECKS_FILE": "check_points.csv", "OUTPUT": "TEMPORARY_OUTPUT"},
}  # fmt: skip


@pytest.mark.parametrize("name", TOOLS)
def test_no_metre_in_the_log(run: Any, feet: Dict[str, Any], name: str) -> None:
    listener = Listener()
    given = {
        key: str(feet["folder"] / value) if str(value).endswith((".geojson", ".csv")) else feet.get(str(value), value)
        for key, value in TOOLS[name].items()
    }
    run(name, listener, INPUT=feet["surface"], **given)
    said = [*listener.infos, *listener.warnings]
    # The standard of the accuracy statement names its classes in centimetres; the tolerance was given in metres.
    said = [re.sub(r"-cm RMSEV|\d cm|\d cm\.|asked for: [\d.]+ ftUS", "", text) for text in said]
    assert metric(said) == []
    if name in ("ponds", "padgrading", "volumetoplane", "coverage"):
        assert any(re.search(r"ftUS|yd³", text) for text in said)


def test_map_tips_in_feet(run: Any, feet: Dict[str, Any]) -> None:
    from qgis.core import QgsExpression, QgsExpressionContext, QgsExpressionContextUtils

    from plugin.processing import styles

    found = run("coverage", INPUT=feet["surface"], POINTS=feet["points"], OUTPUT="TEMPORARY_OUTPUT",
                CIRCLES="TEMPORARY_OUTPUT", LONG="TEMPORARY_OUTPUT")  # fmt: skip
    for name, qml, field in (
        ("OUTPUT", styles.PLACES, "radius_m"), ("CIRCLES", styles.CIRCLES, "radius_m"),
        ("LONG", styles.LONG_TRIANGLES, "longest_m"),
    ):  # fmt: skip
        layer = layer_of(found[name])
        styles.apply_qml(layer, qml)
        feature = next(layer.getFeatures())
        context = QgsExpressionContext(QgsExpressionContextUtils.globalProjectLayerScopes(layer))
        context.setFeature(feature)
        tip = QgsExpression.replaceExpressionText(layer.mapTipTemplate(), context)
        assert metric([tip]) == []
        told = re.search(r"([\d.]+) ftUS", tip)
        assert told is not None
        assert float(told.group(1)) == pytest.approx(feature[field] / FOOT, abs=0.06)


def test_contours_every_half_foot_where_nothing_is_said(run: Any, feet: Dict[str, Any]) -> None:
    contours = layer_of(run("contours", INPUT=feet["surface"], OUTPUT="TEMPORARY_OUTPUT")["OUTPUT"])
    levels = {feature["level"] for feature in contours.getFeatures()}
    assert {feature["unit"] for feature in contours.getFeatures()} == {"us-ft"}
    assert len(levels) > 40
    assert all(level * 2 == int(level * 2) for level in levels)
    # what is given goes first
    contours = layer_of(run("contours", INPUT=feet["surface"], UNIT=0, OUTPUT="TEMPORARY_OUTPUT")["OUTPUT"])
    assert {feature["unit"] for feature in contours.getFeatures()} == {"m"}
    assert all(level * 4 == int(level * 4) for level in {feature["level"] for feature in contours.getFeatures()})


def test_stations_and_heights_of_a_road_in_feet(run: Any, feet: Dict[str, Any]) -> None:
    line = str(feet["folder"] / "centreline.geojson")
    found = run("roadprofile", INPUT=feet["surface"], LINE=line, INTERVAL=100.0, OUTPUT="TEMPORARY_OUTPUT")
    stations = list(layer_of(found["OUTPUT"]).getFeatures())
    assert [row["station"] for row in stations][:3] == ["0+00.00", "1+00.00", "2+00.00"]
    assert all(275 < row["height"] < 305 for row in stations if row["height"])
    assert found["LENGTH"] == pytest.approx(127.2, abs=0.1)  # a number for models, in metres as its label says


def test_a_plan_in_feet(run: Any, feet: Dict[str, Any], tmp_path: Path) -> None:
    """Spot heights and the note on contours."""
    layers = tmp_path / "plan.gpkg"
    run(
        "plansheet", INPUT=feet["surface"], INTERVAL=1.0, SCALE=500, LAYERS=str(layers), KEEP=False,
        OUTPUT=str(tmp_path / "plan.pdf"),
    )  # fmt: skip
    spots = list(layer_of(f"{layers}|layername=spot_heights").getFeatures())
    assert {spot["unit"] for spot in spots} == {"us-ft"}
    assert all(275 < spot["height"] < 305 for spot in spots)


def test_peak_flows_in_cubic_feet(run: Any) -> None:
    """An acre inch an hour is 1.0083 ft³/s (43,560 ft² / 12 / 3600)."""
    side = 208.71033  # feet, of a square acre
    polygon = memory_layer("Polygon", [f"Polygon((0 0, {side} 0, {side} {side}, 0 {side}, 0 0))"], feet_demo.CRS, "a")
    found = run("peakflow", INPUT=polygon, RUNOFF=1.0, INTENSITY=1.0, OUTPUT="TEMPORARY_OUTPUT")
    (row,) = layer_of(found["OUTPUT"]).getFeatures()
    assert (row["flow_unit"], row["intensity_unit"]) == ("ft³/s", "in/h")
    assert row["flow"] == pytest.approx(43560 / 12 / 3600, rel=1e-4)


def test_a_refusal_gives_the_place_in_feet(run: Any, feet: Dict[str, Any]) -> None:
    """A refusal that names a place names it as the map has it."""
    from qgis.core import QgsProcessingException

    east, north = 985000.0, 200100.0
    crossing = memory_layer(
        "LineStringZ",
        [
            f"LineStringZ({east} {north} 280, {east + 100} {north + 100} 280)",
            f"LineStringZ({east} {north + 100} 290, {east + 100} {north} 290)",
        ],
        feet_demo.CRS,
        "lines",
    )
    with pytest.raises(QgsProcessingException) as refusal:
        run("buildsurface", INPUT=feet["points"], BREAKLINES=crossing, USE_CODES=False, OUTPUT="TEMPORARY_OUTPUT")
    assert f"E {east + 50:.3f} N {north + 50:.3f}" in str(refusal.value)
    assert "280.000 ftUS" in str(refusal.value)
