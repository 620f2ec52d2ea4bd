"""Quality in QGIS: coverage, accuracy statement, walking plan, map tips."""

from __future__ import annotations

import csv
import json
import math
import xml.etree.ElementTree as ET
from pathlib import Path
from typing import Any, Dict, List

import numpy as np
import pytest
from in_qgis import DEMO, SURVEY, Listener, layer_of, memory_layer, message_of
from scipy.spatial import cKDTree

EAST, NORTH = 548200.0, 5712300.0


# Check of the survey


@pytest.fixture(scope="module")
def checked(chain: Dict[str, Any], tmp_path_factory: pytest.TempPathFactory) -> Dict[str, Any]:
    """The demo survey, imported without decisions, checked."""
    import processing

    folder = tmp_path_factory.mktemp("checked")
    given = {**SURVEY, "DECISIONS": None, "OUTPUT": str(folder / "points.gpkg")}
    points = processing.run("hummock:importpoints", given, feedback=Listener().feedback)["OUTPUT"]
    listener = Listener()
    given = {"INPUT": points, "SAVE_TOLERANCES": str(folder / "sets.json")}
    given.update({name: str(folder / f"{name}.gpkg") for name in ("OUTPUT", "FINDINGS")})
    return {**processing.run("hummock:checksurvey", given, feedback=listener.feedback), "told": listener.infos}


def rows_of(source: Any) -> Dict[int, Any]:
    return {feature["line"]: feature for feature in layer_of(source).getFeatures()}


def test_the_faults_of_the_demo_are_rejected_with_their_reason(checked: Dict[str, Any]) -> None:
    """Against the list of faults that the demo's generator wrote down."""
    rows = rows_of(checked["OUTPUT"])
    truth = csv.DictReader((DEMO / "truth.csv").read_text(encoding="utf-8").splitlines())
    faults = {int(row["line"]): row["fault"] for row in truth}
    lifted = [line for line, fault in faults.items() if fault in ("lifted_pole", "slipped_pole", "wrong_fix")]
    assert np.mean([rows[line]["status"] == "rejected" for line in lifted]) > 0.95
    good = [line for line, fault in faults.items() if fault == "none" and rows[line]["code"] == "GR"]
    assert np.mean([rows[line]["status"] == "rejected" for line in good]) < 0.005
    counts = {name: checked[name] for name in ("USED", "FLAGGED", "REJECTED")}
    assert counts == {name: sum(f["status"] == name.lower() for f in rows.values()) for name in counts}
    assert all(rows[line]["check_status"] == rows[line]["status"] for line in rows)
    assert 0.010 < checked["SIGMA"] < 0.020
    assert any("degrees of freedom" in text for text in checked["told"])


def test_a_surface_of_checked_points_keeps_their_noise_and_one_of_others_none(
    run: Any, checked: Dict[str, Any], chain: Dict[str, Any], tmp_path: Path
) -> None:
    """The same noise as the check found in the survey, beside the mesh, whether or not the lines found are given."""
    from plugin.core.handover.mesh_noise import read_mesh_noise

    mesh, listener = str(tmp_path / "surface.2dm"), Listener()
    lines = run("findlines", INPUT=checked["OUTPUT"], OUTPUT=str(tmp_path / "lines.gpkg"))["OUTPUT"]
    for found in (None, lines):
        run("buildsurface", listener, INPUT=checked["OUTPUT"], FOUND_LINES=found, MAX_RIM_EDGE=10.0, OUTPUT=mesh)
        noise, said = read_mesh_noise(mesh)
        assert noise is not None
        assert not said
        assert np.hypot(noise.sigma, noise.drift) == pytest.approx(checked["SIGMA"], rel=0.05)
    assert sum("surface.noise.json" in text for text in listener.infos) == 2
    listener = Listener()
    run("buildsurface", listener, INPUT=chain["points"]["OUTPUT"], MAX_RIM_EDGE=10.0, OUTPUT=mesh)
    assert read_mesh_noise(mesh) == (None, ())
    assert any("must have been checked" in text for text in listener.infos)


def test_findings_lie_at_their_points(checked: Dict[str, Any]) -> None:
    rows = rows_of(checked["OUTPUT"])
    findings = list(layer_of(checked["FINDINGS"]).getFeatures())
    assert len(findings) > 10
    for found in findings:
        places = [(place.x(), place.y()) for place in found.geometry().vertices()]
        assert len(places) == found["points"]
        for line, place in ((found["from_line"], places[0]), (found["to_line"], places[-1])):
            point = next(rows[line].geometry().vertices())
            assert (point.x(), point.y()) == pytest.approx(place, abs=1e-6)
            assert set(found["reason"].split("+")) <= set(rows[line]["reason"].split("+"))
        assert found["text"]


def test_a_status_changed_by_hand_is_kept_when_checked_again(run: Any, checked: Dict[str, Any], tmp_path: Path) -> None:
    from qgis.core import edit

    copy = tmp_path / "edited.gpkg"
    copy.write_bytes(Path(checked["OUTPUT"]).read_bytes())
    layer = layer_of(copy)
    rows = rows_of(layer)
    rejected = next(line for line, row in rows.items() if row["reason"] == "pole_height")
    used = next(line for line, row in rows.items() if row["status"] == "used")
    with edit(layer):
        for line, status in ((rejected, "used"), (used, "rejected")):
            layer.changeAttributeValue(rows[line].id(), layer.fields().indexFromName("status"), status)
    listener = Listener()
    again = run("checksurvey", listener, INPUT=layer, OUTPUT=str(tmp_path / "again.gpkg"), FINDINGS=None)
    assert again["BY_HAND"] == 2
    new = rows_of(again["OUTPUT"])
    assert (new[rejected]["status"], new[rejected]["check_status"]) == ("used", "rejected")
    assert new[rejected]["check_reason"] == "pole_height"
    assert (new[used]["status"], new[used]["check_status"]) == ("rejected", "used")
    assert {line for line in new if new[line]["status"] != rows[line]["status"]} == {rejected, used}
    assert [new[line]["height"] for line in new] == pytest.approx([rows[line]["height"] for line in new])
    told = [text for text in listener.warnings if text.startswith("By hand")]
    assert len(told) == 2
    assert f"line {rejected}" in told[0]


def test_tolerances_written_can_be_changed_and_given_back(run: Any, checked: Dict[str, Any], tmp_path: Path) -> None:
    sets = json.loads(Path(checked["SAVE_TOLERANCES"]).read_text(encoding="utf-8"))
    assert sets[0]["name"] == "topographic"
    sets[0]["tilt"] = 80
    file = tmp_path / "mine.json"
    file.write_text(json.dumps(sets), encoding="utf-8")
    mild = run(
        "checksurvey", INPUT=checked["OUTPUT"], TOLERANCE_FILE=str(file), OUTPUT="TEMPORARY_OUTPUT", FINDINGS=None
    )
    reasons = {feature["reason"] for feature in mild["OUTPUT"].getFeatures()}
    assert not any("tilt" in reason for reason in reasons)
    assert any("tilt" in row["reason"] for row in rows_of(checked["OUTPUT"]).values())
    file.write_text('[{"name": "mine", "tilt": -1}]', encoding="utf-8")
    given = {"INPUT": checked["OUTPUT"], "TOLERANCE_FILE": str(file), "OUTPUT": "TEMPORARY_OUTPUT"}
    assert "mine.json" in message_of(run, "checksurvey", **given)


def test_a_slip_in_the_status_leaves_what_the_checks_said(run: Any, checked: Dict[str, Any], tmp_path: Path) -> None:
    """A mistyped or emptied status must not bring a rejected point into the surface."""
    from qgis.core import edit

    copy = tmp_path / "slip.gpkg"
    copy.write_bytes(Path(checked["OUTPUT"]).read_bytes())
    layer = layer_of(copy)
    rows = rows_of(layer)
    out = [line for line, row in rows.items() if row["reason"] == "pole_height"][:3]
    with edit(layer):
        for line, status in zip(out, ("usd", "", None)):
            layer.changeAttributeValue(rows[line].id(), layer.fields().indexFromName("status"), status)
    listener = Listener()
    again = run("checksurvey", listener, INPUT=layer, OUTPUT="TEMPORARY_OUTPUT", FINDINGS=None)
    assert again["BY_HAND"] == 0
    assert {rows_of(again["OUTPUT"])[line]["status"] for line in out} == {"rejected"}
    assert [text for text in listener.warnings if "left as checked: 1" in text]
    built = run("buildsurface", INPUT=layer, OUTPUT=str(tmp_path / "s.2dm"))
    assert built["POINTS_USED"] == checked["USED"] + checked["FLAGGED"]
    assert "fid" not in " ".join(field.name() for field in again["OUTPUT"].fields())


def test_runs_are_told_against_what_the_receiver_claims(run: Any, checked: Dict[str, Any]) -> None:
    listener = Listener()
    given = {"OUTPUT": "TEMPORARY_OUTPUT", "FINDINGS": None, "RUNS": "TEMPORARY_OUTPUT"}
    runs = list(run("checksurvey", listener, INPUT=checked["OUTPUT"], **given)["RUNS"].getFeatures())
    met = [row for row in runs if row["places_met"] >= 3]
    assert len(runs) > len(met) > 5
    assert all(row["low_mm"] < row["sigma_mm"] < row["high_mm"] for row in met)
    # The generator's noise is 14 mm; the interval of 19 in 20 runs or so holds it.
    assert np.mean([row["low_mm"] < 14 < row["high_mm"] for row in met]) > 0.8
    for row in met:
        assert row["claim"] == ("agrees" if row["low_mm"] <= row["claimed_mm"] <= row["high_mm"] else "outside")
    assert any(f"3 places or more: {len(met)} of {len(runs)}" in text for text in listener.infos)


# Coverage


@pytest.fixture(scope="module")
def gap(chain: Dict[str, Any], tmp_path_factory: pytest.TempPathFactory) -> Dict[str, str]:
    """A level square of 30 m by 30 m, a point every metre, none within 6.5 m of its middle (15, 15)."""
    import processing

    folder = tmp_path_factory.mktemp("gap")
    east, north = (axis.ravel() for axis in np.meshgrid(np.arange(31.0), np.arange(31.0)))
    keep = np.hypot(east - 15, north - 15) > 6.5
    file = folder / "gap.csv"
    rows = [f"{EAST + e},{NORTH + n},50.0,0.010" for e, n in zip(east[keep], north[keep])]
    file.write_text("easting,northing,height,sigma_v\n" + "\n".join(rows) + "\n")
    given = {"INPUT": str(file), "CRS": "EPSG:25832", "OUTPUT": str(folder / "points.gpkg")}
    points = processing.run("hummock:importpoints", given, feedback=Listener().feedback)["OUTPUT"]
    given = {"INPUT": points, "OUTPUT": str(folder / "gap.2dm")}
    return {
        "POINTS": points,
        "INPUT": processing.run("hummock:buildsurface", given, feedback=Listener().feedback)["OUTPUT"],
    }


def test_the_gap_is_found_and_the_places_close_it(run: Any, gap: Dict[str, str], tmp_path: Path) -> None:
    listener = Listener()
    targets = {name: str(tmp_path / f"{name}.gpkg") for name in ("OUTPUT", "CIRCLES", "LONG")}
    found = run("coverage", listener, **gap, **targets, MAX_EDGE=3.0, MAX_RADIUS=2.0, CSV=str(tmp_path / "again.csv"))
    measured = np.array(
        [(p.x(), p.y()) for f in layer_of(gap["POINTS"]).getFeatures() for p in f.geometry().vertices()]
    )
    middle = float(np.hypot(*(measured - (EAST + 15, NORTH + 15)).T).min())  # the widest circle is about the middle
    assert found["LARGEST_RADIUS"] == pytest.approx(middle, abs=1e-3)
    (circle, *_) = layer_of(targets["CIRCLES"]).getFeatures()
    assert circle["rank"] == 1
    centre = circle.geometry().centroid().asPoint()
    assert (centre.x(), centre.y()) == pytest.approx((EAST + 15, NORTH + 15), abs=0.01)
    assert circle.geometry().area() == pytest.approx(math.pi * middle**2, rel=0.01)
    places = [(p.x(), p.y()) for f in layer_of(targets["OUTPUT"]).getFeatures() for p in f.geometry().vertices()]
    assert len(places) == found["PLACES"] > 3
    inside = np.random.default_rng(5).uniform((EAST, NORTH), (EAST + 30, NORTH + 30), (20000, 2))
    reach = cKDTree(np.vstack([measured, places])).query(inside)[0]
    assert reach.max() <= 2.0 * 1.2, "the search between the places looked at leaves a fifth at most"
    long = sum(f["area_m2"] for f in layer_of(targets["LONG"]).getFeatures())
    assert found["LONG_SHARE"] == pytest.approx(100 * long / 900, rel=1e-6)
    assert 8 < found["LONG_SHARE"] < 100 * math.pi * 7.5**2 / 900
    assert found["ALONG"] == pytest.approx(1.0)
    assert any("walk again" in text for text in listener.infos)
    rows = list(csv.DictReader((tmp_path / "again.csv").read_text(encoding="utf-8").splitlines()))
    assert [(float(row["easting"]), float(row["northing"])) for row in rows] == [
        pytest.approx(place, abs=0.0006) for place in places
    ]


def test_level_ground_supports_what_its_noise_does(run: Any, gap: Dict[str, str]) -> None:
    # RMSEz = interval / 3 (ASPRS 2014, annex B); 2/3 of the variance of 10 mm: 3 x 8.2 mm, so 25 mm.
    found = run("coverage", **gap, OUTPUT="TEMPORARY_OUTPUT", CIRCLES=None, LONG=None)
    assert found["INTERVAL"] == pytest.approx(0.025)
    # 3 x 0.816 x 40 mm = 98 mm: found in the survey, it counts in place of the claim.
    listener = Listener()
    found = run("coverage", listener, **gap, SIGMA=0.04, OUTPUT="TEMPORARY_OUTPUT", CIRCLES=None, LONG=None)
    assert found["INTERVAL"] == pytest.approx(0.1)
    assert any("from repeated ground" in text for text in listener.infos)


def test_places_as_way_points_are_where_the_layer_has_them(run: Any, gap: Dict[str, str], tmp_path: Path) -> None:
    from pyproj import Transformer

    file = tmp_path / "again.gpx"
    found = run("coverage", **gap, MAX_RADIUS=2.0, OUTPUT="TEMPORARY_OUTPUT", CIRCLES=None, LONG=None, GPX=str(file))
    space = "{http://www.topografix.com/GPX/1/1}"  # the namespace of GPX 1.1
    points = ET.parse(file).getroot().findall(f"{space}wpt")
    assert [point.findtext(f"{space}name") for point in points] == [f["name"] for f in found["OUTPUT"].getFeatures()]
    back = Transformer.from_crs("EPSG:4326", "EPSG:25832")
    for point, feature in zip(points, found["OUTPUT"].getFeatures()):
        place = next(feature.geometry().vertices())
        assert back.transform(float(point.get("lat")), float(point.get("lon"))) == pytest.approx(
            (place.x(), place.y()), abs=0.002
        )


def test_coverage_refuses_points_of_another_crs(run: Any, gap: Dict[str, str]) -> None:
    other = memory_layer("PointZ", ["PointZ(3 4 5)"], "EPSG:25833", "other")
    said = message_of(run, "coverage", INPUT=gap["INPUT"], POINTS=other, OUTPUT="TEMPORARY_OUTPUT")
    assert "EPSG:25833" in said
    assert "reproject" in said


# Accuracy


def shot(east: float, north: float, height: float) -> str:
    return f"PointZ({EAST + east} {NORTH + north} {height})"


def test_statement_on_known_differences(run: Any, gap: Dict[str, str], tmp_path: Path) -> None:
    """Differences +10 and -10 mm by turns, +5 mm on all: bias 5 mm, RMSE sqrt(125) mm."""
    off = [0.010 if i % 2 else -0.010 for i in range(20)]
    texts = [shot(1 + 7 * (i % 5), 1 + 9 * (i // 5), 50.0 - 0.005 - d) for i, d in enumerate(off)]
    listener = Listener()
    page = tmp_path / "statement.html"
    found = run(
        "accuracystatement",
        listener,
        INPUT=gap["INPUT"],
        CHECKS=memory_layer("PointZ", texts, "EPSG:25832", "shots"),
        OUTPUT="TEMPORARY_OUTPUT",
        HTML=str(page),
    )
    rmse = math.sqrt(0.010**2 + 0.005**2)
    assert found["COUNT"] == 20
    assert found["MEAN"] == pytest.approx(0.005, abs=1e-6)
    assert found["RMSE"] == pytest.approx(rmse, abs=1e-6)
    assert found["ACCURACY_95"] == pytest.approx(1.9600 * rmse, abs=1e-6)  # FGDC-STD-007.3-1998, 3.2.1
    assert found["CLASS_CM"] == 2
    assert "Tested 0.022 metres vertical accuracy at 95 %" in found["STATEMENT"]
    assert "only 20 checkpoints" in found["STATEMENT"]  # ASPRS edition 2 asks for 30
    assert "20 checkpoints" in page.read_text(encoding="utf-8")
    got = [f["off_m"] for f in found["OUTPUT"].getFeatures()]
    assert got == pytest.approx([0.005 + d for d in off], abs=1e-6)
    assert any("No check point states its own height error" in text for text in listener.warnings)


def test_layer_and_file_of_check_points_say_the_same(run: Any, chain: Dict[str, Any], tmp_path: Path) -> None:
    file = DEMO / "check_points.csv"
    rows = list(csv.DictReader(file.read_text(encoding="utf-8").splitlines()))
    layer = memory_layer("Point", [f"Point({r['easting']} {r['northing']})" for r in rows], "EPSG:25832", "checks")
    from qgis.core import edit

    from plugin.processing.versions import field

    with edit(layer):
        for name, kind in (("name", "text"), ("height", "real"), ("sigma_v", "real"), ("growth", "text")):
            layer.addAttribute(field(name, kind))
        for row, feature in zip(rows, list(layer.getFeatures())):
            values = (row["name"], float(row["height"]), float(row["sigma_v"]), row["cover"])
            for i, value in enumerate(values):
                layer.changeAttributeValue(feature.id(), i, value)
    common = {"INPUT": chain["surface"]["OUTPUT"], "OUTPUT": "TEMPORARY_OUTPUT", "WANTED": 1.0, "HTML": None}
    one = run("accuracystatement", **common, CHECKS_FILE=str(file))
    other = run("accuracystatement", **common, CHECKS=layer, HEIGHT_FIELD="height", COVER_FIELD="growth")
    assert one["STATEMENT"] == other["STATEMENT"]
    assert "does not meet the 1-cm" in one["STATEMENT"]
    assert one["COUNT"] == len(rows)
    columns = ("name", "cover", "group", "off_m", "sigma_v_m")
    mine, theirs = ([[f[c] for c in columns] for f in result["OUTPUT"].getFeatures()] for result in (one, other))
    assert mine == theirs
    assert "not as both" in message_of(
        run, "accuracystatement", **common, CHECKS_FILE=str(file), CHECKS=layer, HEIGHT_FIELD="height"
    )


def test_check_shots_of_the_survey_are_no_test_by_a_standard(run: Any, chain: Dict[str, Any]) -> None:
    listener = Listener()
    found = run(
        "accuracystatement",
        listener,
        INPUT=chain["surface"]["OUTPUT"],
        POINTS=chain["points"]["OUTPUT"],
        OUTPUT="TEMPORARY_OUTPUT",
        HTML=None,
    )
    assert found["COUNT"] == 16
    assert found["STATEMENT"].startswith("Internal check, no test by a standard")
    assert any("taken with the receiver of the survey" in text for text in listener.warnings)


def test_without_check_points_it_says_what_to_give(run: Any, gap: Dict[str, str]) -> None:
    said = message_of(run, "accuracystatement", INPUT=gap["INPUT"], OUTPUT="TEMPORARY_OUTPUT", HTML=None)
    assert "no check points" in said
    said = message_of(run, "accuracystatement", **gap, OUTPUT="TEMPORARY_OUTPUT", HTML=None)
    assert "no check shots" in said


# Walking plan


def area(*rings: List[Any], crs: str = "EPSG:25832") -> Any:
    texts = ["(" + ", ".join(f"{EAST + x} {NORTH + y}" for x, y in (*ring, ring[0])) + ")" for ring in rings]
    return memory_layer("Polygon", [f"Polygon({', '.join(texts)})"], crs, "area")


FIELD = [(0, 0), (100, 0), (100, 40), (0, 40)]
POND = [(40, 10), (60, 10), (60, 30), (40, 30)]


def test_plan_of_a_rectangle(run: Any) -> None:
    found = run(
        "walkingplan",
        INPUT=area(FIELD),
        WANTED=2,
        VALUE=8.0,
        CROSS=0,
        SPEED=3.6,
        TURN_TIME=0,
        OUTPUT="TEMPORARY_OUTPUT",
    )
    lines = list(found["OUTPUT"].getFeatures())
    assert found["SPACING"] == pytest.approx(8.0)
    assert [f["order"] for f in lines] == list(range(1, len(lines) + 1))
    by_use = {use: sum(f["length_m"] for f in lines if f["use"] == use) for use in ("perimeter", "pass", "cross")}
    assert by_use == pytest.approx({"perimeter": 280.0, "pass": 4 * 99.5, "cross": 0.0})  # 0.25 m short at both ends
    assert found["DISTANCE"] == pytest.approx(sum(f.geometry().length() for f in lines))
    assert lines[-1]["from_start_m"] == pytest.approx(found["DISTANCE"])
    assert found["MINUTES"] == pytest.approx(found["DISTANCE"] / 60)  # 1 m/s
    ends = [(p[0], p[-1]) for p in (list(f.geometry().vertices()) for f in lines)]
    for (_, end), (start, _) in zip(ends, ends[1:]):
        assert start.distance(end) < 1e-6, "each line starts where the one before ended"


def test_plan_stays_out_of_holes_and_finer_contours_need_more(run: Any) -> None:
    from qgis.core import QgsGeometry

    layer = area(FIELD, POND)
    shape: QgsGeometry = next(layer.getFeatures()).geometry()
    found = {}
    for value in (1.0, 0.25):
        found[value] = run("walkingplan", INPUT=layer, VALUE=value, OUTPUT="TEMPORARY_OUTPUT")
        for line in found[value]["OUTPUT"].getFeatures():
            out = line.geometry().difference(shape.buffer(1e-6, 4))
            assert out.isEmpty() or out.length() < 1e-4
    assert found[0.25]["SPACING"] < found[1.0]["SPACING"]
    assert found[0.25]["POINT_COUNT"] > found[1.0]["POINT_COUNT"]
    assert found[0.25]["INTERVAL"] <= 0.25


def test_plan_of_an_outline_that_crosses_itself_covers_what_it_encloses(run: Any) -> None:
    bow = area([(0, 0), (60, 60), (60, 0), (0, 60)])
    found = run("walkingplan", INPUT=bow, WANTED=2, VALUE=5.0, OUTPUT="TEMPORARY_OUTPUT")
    halves = next(bow.getFeatures()).geometry().makeValid()
    assert halves.area() == pytest.approx(1800.0)
    for line in found["OUTPUT"].getFeatures():
        out = line.geometry().difference(halves.buffer(1e-6, 4))
        assert line["use"] == "link" or out.isEmpty() or out.length() < 1e-4
    assert found["POINT_COUNT"] > 1800 / 5 / 0.5


def test_plan_of_a_small_area_says_what_there_is(run: Any) -> None:
    listener = Listener()
    small = area([(0, 0), (3, 0), (3, 2), (0, 2)])
    found = run("walkingplan", listener, INPUT=small, OUTPUT="TEMPORARY_OUTPUT")
    assert [line["use"] for line in found["OUTPUT"].getFeatures()] == ["perimeter"]
    assert "Perimeter: 10 m (lines: 1)" in listener.infos
    assert not any(text.startswith(("Passes", "Cross", "Links")) for text in listener.infos)
    assert any("its perimeter is all there is to walk" in text for text in listener.infos)
    assert any(text.startswith("To walk: 10 m, 1 min.") for text in listener.infos)
    assert any(text.startswith("Height error to expect: 0.017 m") for text in listener.infos)


def test_plan_in_feet_is_the_same_walk(run: Any) -> None:
    foot = 1200.0 / 3937.0  # NIST SP 811
    metre = run("walkingplan", INPUT=area(FIELD), WANTED=2, VALUE=10.0, OUTPUT="TEMPORARY_OUTPUT")
    ring = ", ".join(f"{(900000 + x) / foot} {(200000 + y) / foot}" for x, y in (*FIELD, FIELD[0]))
    layer = memory_layer("Polygon", [f"Polygon(({ring}))"], "EPSG:2263", "feet")
    feet = run("walkingplan", INPUT=layer, WANTED=2, VALUE=10.0 / foot, UNIT=2, OUTPUT="TEMPORARY_OUTPUT")
    for name in ("SPACING", "DISTANCE", "MINUTES", "POINT_COUNT", "ERROR"):
        assert feet[name] == pytest.approx(metre[name], rel=1e-6)
    drawn = sum(f.geometry().length() for f in feet["OUTPUT"].getFeatures())
    assert drawn * foot == pytest.approx(metre["DISTANCE"], rel=1e-6)


def test_plan_refuses_what_the_rover_cannot_give(run: Any) -> None:
    said = message_of(
        run, "walkingplan", INPUT=area(FIELD), WANTED=1, VALUE=0.01, SIGMA=0.02, OUTPUT="TEMPORARY_OUTPUT"
    )
    assert "0.016" in said
    said = message_of(run, "walkingplan", INPUT=area(FIELD, crs="EPSG:4326"), OUTPUT="TEMPORARY_OUTPUT")
    assert "degrees" in said


# Styles


@pytest.mark.parametrize("qml", ["survey_findings", "circles", "long_triangles", "places", "check_points", "walk"])
def test_styles_load(application: Any, qml: str) -> None:
    from plugin.processing.styles import apply_qml

    kind = {"circles": "Polygon", "long_triangles": "Polygon", "walk": "LineString"}.get(qml, "Point")
    layer = memory_layer(kind, [], "EPSG:25832", qml)
    plain = layer.renderer().dump()
    apply_qml(layer, f"{qml}.qml")
    assert layer.renderer().dump() != plain
    assert layer.mapTipTemplate()


def tips_of(layer: Any) -> List[str]:
    from qgis.core import QgsExpression, QgsExpressionContext, QgsExpressionContextUtils

    context = QgsExpressionContext(QgsExpressionContextUtils.globalProjectLayerScopes(layer))
    tips = []
    for feature in layer.getFeatures():
        context.setFeature(feature)
        tips.append(QgsExpression.replaceExpressionText(layer.mapTipTemplate(), context))
    return tips


def test_map_tips_say_what_their_numbers_are(run: Any, gap: Dict[str, str], checked: Dict[str, Any]) -> None:
    from plugin.processing import styles

    found = run("coverage", **gap, MAX_RADIUS=2.0, OUTPUT="TEMPORARY_OUTPUT", CIRCLES="TEMPORARY_OUTPUT",
                LONG="TEMPORARY_OUTPUT")  # fmt: skip
    texts = [shot(3, 3, 50.01), shot(7, 3, 49.99), shot(90, 90, 50.0)]
    checks = run("accuracystatement", INPUT=gap["INPUT"], OUTPUT="TEMPORARY_OUTPUT", HTML=None,
                 CHECKS=memory_layer("PointZ", texts, "EPSG:25832", "shots"))["OUTPUT"]  # fmt: skip
    walk = run("walkingplan", INPUT=area(FIELD), OUTPUT="TEMPORARY_OUTPUT")["OUTPUT"]
    begins = {}
    for layer, qml in (
        (found["CIRCLES"], styles.CIRCLES), (found["LONG"], styles.LONG_TRIANGLES), (found["OUTPUT"], styles.PLACES),
        (checks, styles.CHECK_POINTS), (walk, styles.WALK), (layer_of(checked["FINDINGS"]), styles.SURVEY_FINDINGS),
    ):  # fmt: skip
        styles.apply_qml(layer, qml)
        tips = tips_of(layer)
        assert not any("[%" in tip or "{" in tip for tip in tips)
        begins[qml] = tips
    assert begins[styles.CIRCLES][0].startswith("<b>Circle 1</b><br>Nothing was measured within 6.")
    assert "Triangle with an edge of" in begins[styles.LONG_TRIANGLES][0]
    assert begins[styles.PLACES][0].startswith("<b>W001</b><br>Walk here again")
    assert [tip.split("<br>")[1] for tip in begins[styles.CHECK_POINTS]] == [
        "The surface lies 10 mm below the check point.",
        "The surface lies 10 mm above the check point.",
        "Outside the surface",
    ]
    assert begins[styles.WALK][0] == "1: Perimeter <b>B01</b><br>280 m long, 280 m walked at its end"
    assert any(tip.startswith("<b>Rejected (not in the surface)</b><br>") for tip in begins[styles.SURVEY_FINDINGS])


def test_a_status_is_chosen_from_a_list(chain: Dict[str, Any]) -> None:
    from plugin.processing.styles import POINTS, apply_qml

    layer = layer_of(chain["points"]["OUTPUT"])
    apply_qml(layer, POINTS)
    setup = layer.editorWidgetSetup(layer.fields().indexFromName("status"))
    assert setup.type() == "ValueMap"
    assert [word for each in setup.config()["map"] for word in each.values()] == ["used", "flagged", "rejected"]


def test_map_tip_tells_the_reason_in_words(run: Any, chain: Dict[str, Any]) -> None:
    from qgis.core import QgsExpression, QgsExpressionContext, QgsExpressionContextUtils

    from plugin.processing.styles import POINTS, apply_qml

    layer = layer_of(chain["points"]["OUTPUT"])
    apply_qml(layer, POINTS)
    context = QgsExpressionContext(QgsExpressionContextUtils.globalProjectLayerScopes(layer))
    told = {}
    for feature in layer.getFeatures():
        if (feature["status"], feature["reason"]) not in told:
            context.setFeature(feature)
            text = QgsExpression.replaceExpressionText(layer.mapTipTemplate(), context)
            told[feature["status"], feature["reason"]] = text
            assert text.endswith(f"Line of the file {feature['line']}")
    assert "pole tilted" in told["rejected", "tilt"]
    assert told["rejected", "tilt"].startswith("<b>Rejected (not in the surface)</b>")
    assert "height less certain than allowed" in told["flagged", "sigma_vertical"]
    assert next(text for (status, _), text in told.items() if status == "used").startswith("<b>Used</b><br>1")
