"""Roads and lines in QGIS: on surfaces whose heights are known, on the demo's lane, and with input that is bad."""

from __future__ import annotations

import csv
import math
from pathlib import Path
from typing import Any, Callable, Dict, List

import numpy as np
import pytest
from in_qgis import DEMO, Listener, layer_of, memory_layer, memory_points, message_of

EAST, NORTH = 500000.0, 5700000.0
LENGTH, HALF = 100.0, 10.0
CENTRELINE = f"{DEMO / 'site.gpkg'}|layername=centreline"

Height = Callable[[np.ndarray, np.ndarray], np.ndarray]


def plane(x: np.ndarray, y: np.ndarray) -> np.ndarray:
    """3 % along the line, which runs east at y = 10, and 2 % down to its left."""
    return 50 + 0.03 * x - 0.02 * (y - HALF)


def build(folder: Path, name: str, height: Height, spacing: float = 2.0) -> str:
    """The surface ``height`` over 100 m by 20 m, points every ``spacing``."""
    import processing

    x, y = (v.ravel() for v in np.meshgrid(np.arange(0, LENGTH + 1, spacing), np.arange(0, 2 * HALF + 1, spacing)))
    rows = list(zip([""] * len(x), x, y, height(x, y)))
    given = {"INPUT": memory_points(rows), "OUTPUT": str(folder / f"{name}.2dm")}
    return str(processing.run("hummock:buildsurface", given, feedback=Listener().feedback)["OUTPUT"])


@pytest.fixture(scope="module")
def surfaces(application: Any, tmp_path_factory: pytest.TempPathFactory) -> Dict[str, str]:
    folder = tmp_path_factory.mktemp("roads")

    def curve(x: np.ndarray, y: np.ndarray) -> np.ndarray:
        """From +4 % to -4 % by a parabola of 40 m about x = 50: K = 5."""
        bend = np.where(x < 30, 0.0, np.where(x > 70, x - 50, (np.clip(x, 30, 70) - 30) ** 2 / 80))
        return 50 + 0.04 * x - 0.08 * bend + 0 * y

    def street(x: np.ndarray, y: np.ndarray) -> np.ndarray:
        """A crown with 2.5 % to both sides, kerbs from 8 m; the gutters are level from x = 40 to 60, with a dip."""
        dip = 0.05 * np.maximum(0, 1 - np.abs(x - 50) / 10)
        kerb = 0.2 * np.clip(np.abs(y - HALF) - 8.0, 0.0, 1.0)
        return 50 - 0.01 * np.minimum(x, 40) - 0.01 * np.maximum(x - 60, 0) - 0.025 * np.abs(y - HALF) - dip + kerb

    made = {"plane": plane, "raised": lambda x, y: plane(x, y) + 0.5, "curve": curve, "street": street}
    return {name: build(folder, name, height) for name, height in made.items()}


def line(*places: Any, crs: str = "EPSG:25832") -> Any:
    text = ", ".join(f"{EAST + x} {NORTH + y}" for x, y in places or ((0, HALF), (LENGTH, HALF)))
    return memory_layer("LineString", [f"LineString({text})"], crs, "lane")


def rows(source: Any) -> List[Any]:
    return list(layer_of(source).getFeatures())


# Profile


def test_profile_of_a_plane(run: Any, surfaces: Dict[str, str], tmp_path: Path) -> None:
    found = run(
        "roadprofile", INPUT=surfaces["plane"], LINE=line(), OTHERS=[surfaces["raised"]], START="1+200", INTERVAL=10.0,
        OUTPUT="TEMPORARY_OUTPUT", PROFILE="TEMPORARY_OUTPUT", PDF=str(tmp_path / "p.pdf"), EXAGGERATION=20.0,
    )  # fmt: skip
    stations = rows(found["OUTPUT"])
    assert [f["station"] for f in stations][:2] == ["1+200.00", "1+210.00"]
    x = np.array([f["distance_m"] for f in stations])
    np.testing.assert_allclose(x, np.arange(0, 101, 10))
    np.testing.assert_allclose([f["height"] for f in stations], 50 + 0.03 * x, atol=1e-9)
    np.testing.assert_allclose([f["diff_2"] for f in stations], 0.5, atol=1e-9)
    np.testing.assert_allclose([f["grade_pct"] for f in stations], 3.0, atol=1e-6)
    assert all(0 < f["grade_sd_pct"] < 1 and 0.005 < f["height_sd"] <= 0.0151 for f in stations)
    vertex = next(stations[3].geometry().vertices())
    assert (vertex.x(), vertex.y(), vertex.z()) == pytest.approx((EAST + 30, NORTH + HALF, 50.9))
    one, two = rows(found["PROFILE"])
    drawn = np.array([(v.x(), v.y()) for v in one.geometry().vertices()])
    np.testing.assert_allclose(drawn[:, 1], 20 * (50 + 0.03 * drawn[:, 0]), atol=1e-7)
    assert two["lowest"] == pytest.approx(50.5)
    assert (found["LENGTH"], found["LOWEST"], found["HIGHEST"]) == pytest.approx((100, 50, 53))
    assert found["SHEETS"] == 1
    assert (tmp_path / "p.pdf").read_bytes().startswith(b"%PDF")


def test_profile_in_feet_with_an_equation_as_csv(run: Any, surfaces: Dict[str, str], tmp_path: Path) -> None:
    foot = 1200 / 3937  # NIST SP 811
    out = tmp_path / "stations.csv"
    run(
        "roadprofile", INPUT=surfaces["plane"], LINE=line(), UNIT=2, INTERVAL=100.0, START="10+00",
        EQUATIONS="11+50 = 20+00", OUTPUT=str(out),
    )  # fmt: skip
    table = list(csv.DictReader(out.read_text().splitlines()))
    assert [row["station"] for row in table] == ["10+00.00", "11+00.00", "20+00.00", "21+00.00", "21+78.08"]
    for row in table:
        distance = float(row["distance_m"])
        assert float(row["height"]) * foot == pytest.approx(50 + 0.03 * distance, abs=1e-6)
        assert float(row["easting"]) == pytest.approx(EAST + distance)


def test_heights_are_those_that_the_host_reads(run: Any, chain: Dict[str, Any]) -> None:
    """QGIS's own mesh answers at the stations of the demo's lane."""
    from qgis.core import QgsMeshDatasetIndex, QgsMeshLayer, QgsPointXY

    found = run(
        "roadprofile", INPUT=chain["surface"]["OUTPUT"], LINE=CENTRELINE, INTERVAL=3.7, OUTPUT="TEMPORARY_OUTPUT"
    )
    mesh = QgsMeshLayer(chain["surface"]["OUTPUT"], "mesh", "mdal")
    mesh.updateTriangularMesh()
    compared = 0
    for feature in rows(found["OUTPUT"]):
        place = next(feature.geometry().vertices())
        own = mesh.datasetValue(QgsMeshDatasetIndex(0, 0), QgsPointXY(place.x(), place.y())).scalar()
        if math.isfinite(own) and feature["height"]:
            assert feature["height"] == pytest.approx(own, abs=1e-6)
            compared += 1
    assert compared > 30


# Cross-sections


def test_sections_and_areas_between_two_planes(run: Any, surfaces: Dict[str, str], tmp_path: Path) -> None:
    found = run(
        "crosssections", INPUT=surfaces["plane"], DESIGN=surfaces["raised"], LINE=line(), INTERVAL=25.0, LEFT=4.0,
        RIGHT=6.0, STATIONS="0+012.5; 33", OUTPUT="TEMPORARY_OUTPUT", POINTS_OUTPUT="TEMPORARY_OUTPUT",
        AREAS="TEMPORARY_OUTPUT", PDF=str(tmp_path / "s.pdf"),
    )  # fmt: skip
    assert (found["COUNT"], found["CROSSING"]) == (7, 0)
    areas = rows(found["AREAS"])
    assert [f["station"] for f in areas][:3] == ["0+000.00", "0+012.50", "0+025.00"]
    for f in areas:
        assert (f["fill"], f["cut"], f["net"]) == pytest.approx((5.0, 0.0, 5.0), abs=1e-6)
        assert f["covered"] == pytest.approx(10.0, abs=1e-6)
        assert 0.01 < f["fill_sd"] < 0.15  # at most 15 mm over 10 m
        assert f["cut_sd"] == 0
    for f in rows(found["POINTS_OUTPUT"]):
        place = next(f.geometry().vertices())
        x, y = place.x() - EAST, place.y() - NORTH
        truth = plane(np.array(x), np.array(y)) + (0.5 if f["number"] == 2 else 0.0)
        assert (f["height"], place.z()) == pytest.approx((float(truth), float(truth)), abs=1e-9)
        assert f["offset"] == pytest.approx(HALF - y, abs=1e-6)
    lines = rows(found["OUTPUT"])
    assert len(lines) == 14
    ends = [list(f.geometry().vertices()) for f in lines]
    assert all(v[0].y() > v[-1].y() for v in ends), "from left to right"
    assert (tmp_path / "s.pdf").stat().st_size > 1000


def test_sections_that_cross_are_told(run: Any, surfaces: Dict[str, str]) -> None:
    listener = Listener()
    bend = line((40, 4), (50, 4), (52, 8), (50, 12), (40, 12))
    found = run("crosssections", listener, INPUT=surfaces["plane"], LINE=bend, INTERVAL=2.0, OUTPUT="TEMPORARY_OUTPUT")
    assert found["CROSSING"] > 0
    assert any("cross each other in" in text for text in listener.warnings)


# Slopes, curves


def test_grades_and_crossfalls_of_a_plane(run: Any, surfaces: Dict[str, str]) -> None:
    found = run(
        "roadgrades", INPUT=surfaces["plane"], LINE=line(), WINDOW=10.0, LANE_LEFT=3.0, LANE_RIGHT=3.0,
        OUTPUT="TEMPORARY_OUTPUT", CROSSFALLS="TEMPORARY_OUTPUT",
    )  # fmt: skip
    along, across = rows(found["OUTPUT"]), rows(found["CROSSFALLS"])
    assert len(along) == len(across) == 10
    assert [f["slope_pct"] for f in along] == pytest.approx([3.0] * 10, abs=1e-6)
    assert [f["slope_pct"] for f in across] == pytest.approx([2.0] * 10, abs=1e-6)
    assert {f["label"] for f in along} == {"2 to 5 %"}
    assert (found["STEEPEST"], found["LARGEST_CROSSFALL"]) == pytest.approx((3.0, 2.0), abs=1e-6)
    still = run(
        "roadgrades", INPUT=surfaces["plane"], LINE=line(), WINDOW=10.0, DRIFT=0.0, LANE_LEFT=3.0, LANE_RIGHT=3.0,
        OUTPUT="TEMPORARY_OUTPUT", CROSSFALLS="TEMPORARY_OUTPUT",
    )  # fmt: skip
    pairs = list(zip(across, rows(still["CROSSFALLS"])))
    assert all(a["slope_sd_pct"] > 1.1 * b["slope_sd_pct"] for a, b in pairs), "drift tilts a crossfall"


def test_times_of_the_points_decide_over_strips(run: Any, chain: Dict[str, Any]) -> None:
    """On the demo, whose drift is 7 mm: the crossfall's doubt by its times, and by strips without them."""
    listener = Listener()
    given = {"INPUT": chain["surface"]["OUTPUT"], "LINE": CENTRELINE, "LANE_LEFT": 2.3, "LANE_RIGHT": 2.3}
    given.update(OUTPUT="TEMPORARY_OUTPUT", CROSSFALLS="TEMPORARY_OUTPUT")
    timed = run("roadgrades", listener, **given, POINTS=chain["points"]["OUTPUT"])
    strips = run("roadgrades", **given)
    assert any("6552 of 6552 vertices" in text for text in listener.infos)
    ratio = [
        a["slope_sd_pct"] / b["slope_sd_pct"] for a, b in zip(rows(timed["CROSSFALLS"]), rows(strips["CROSSFALLS"]))
    ]
    assert 0.7 < np.median(ratio) < 1.3


def test_a_parabola_comes_back(run: Any, surfaces: Dict[str, str], tmp_path: Path) -> None:
    found = run(
        "verticalcurves", INPUT=surfaces["curve"], LINE=line(), SPACING=2.0, OUTPUT="TEMPORARY_OUTPUT",
        MEETINGS="TEMPORARY_OUTPUT", RESIDUALS="TEMPORARY_OUTPUT", PDF=str(tmp_path / "c.pdf"),
    )  # fmt: skip
    assert found["CURVES"] == 1
    first, crest, last = rows(found["OUTPUT"])
    assert [f["kind"] for f in (first, crest, last)] == ["grade", "crest", "grade"]
    assert (first["grade_pct"], last["grade_pct"]) == pytest.approx((4.0, -4.0), abs=0.02)
    assert crest["k"] == pytest.approx(5.0, rel=0.03)  # L / A = 40 m / 8 %
    assert crest["turn_station"].startswith("0+0")
    (meeting,) = rows(found["MEETINGS"])
    assert (meeting["distance_m"], meeting["height"]) == pytest.approx((50.0, 52.0), abs=0.05)
    residuals = [f["residual_m"] for f in rows(found["RESIDUALS"])]
    assert max(map(abs, residuals)) == pytest.approx(found["WORST"])
    assert found["WORST"] < 0.005


# Checks


RULES = """rule,quantity,at_least,at_most,window,source
at most 1:20,grade,,1:20,5,a test
at most 2.9 %,grade,,2.9%,5,a test
at most 1:48,crossfall,,1:48,5,a test
crossfall at least 4 %,crossfall,4%,,5,a test
"""


def test_verdicts_on_a_plane(run: Any, surfaces: Dict[str, str], tmp_path: Path) -> None:
    """3 % along and 2 % across, heights good to 3 mm; then the same with heights good to 15 mm."""
    (tmp_path / "rules.csv").write_text(RULES)
    given = {"INPUT": surfaces["plane"], "LINE": line(), "RULES": str(tmp_path / "rules.csv"), "LANE_LEFT": 4.0}
    given.update(LANE_RIGHT=4.0, OUTPUT="TEMPORARY_OUTPUT", FLOW="TEMPORARY_OUTPUT", LOW_POINTS="TEMPORARY_OUTPUT")
    found = run("checkline", **given, SIGMA=0.0004, DRIFT=0.0, HTML=str(tmp_path / "page.html"))
    told = {(f["rule"], f["verdict"]) for f in rows(found["OUTPUT"])}
    assert told == {
        ("at most 1:20", "pass"),
        ("at most 2.9 %", "fail"),
        ("at most 1:48", "pass"),
        ("crossfall at least 4 %", "fail"),
    }
    assert (found["PASSED"], found["FAILED"], found["TOO_CLOSE"], found["LOW_COUNT"]) == (2, 2, 0, 0)
    for f in rows(found["OUTPUT"]):
        assert (f["from_m"], f["to_m"], f["source"]) == (0.0, pytest.approx(100.0), "a test")
    page = (tmp_path / "page.html").read_text(encoding="utf-8")
    for needed in ("a test", "licensed professional", "too close to tell", "data:image/png", "0+100.00"):
        assert needed in page
    assert "<script" not in page
    rough = run("checkline", **given)
    told = {(f["rule"], f["verdict"]) for f in rows(rough["OUTPUT"])}
    assert ("at most 2.9 %", "too_close") in told
    assert ("at most 1:20", "pass") in told


def test_indications_on_a_street(run: Any, surfaces: Dict[str, str], tmp_path: Path) -> None:
    (tmp_path / "speeds.csv").write_text("speed,least_k\n30,2\n")
    found = run(
        "checkline", INPUT=surfaces["street"], LINE=line(), SIGMA=0.003, DRIFT=0.001, LANE_LEFT=8.0, LANE_RIGHT=8.0,
        SPEEDS=str(tmp_path / "speeds.csv"), OUTPUT="TEMPORARY_OUTPUT", FLOW="TEMPORARY_OUTPUT",
        LOW_POINTS="TEMPORARY_OUTPUT", HTML=str(tmp_path / "page.html"),
    )  # fmt: skip
    assert {f["flow"] for f in rows(found["FLOW"])} == {"both"}
    low = rows(found["LOW_POINTS"])
    assert sorted(f["offset"] for f in low) == [-8.0, 8.0]
    for f in low:
        assert f["depth_m"] == pytest.approx(0.05, abs=0.001)
        assert f["station"] == "0+050.00"
        assert f["depth_sd_m"] > 0
    assert "a gully lets it off only if it is given" in (tmp_path / "page.html").read_text(encoding="utf-8")
    drained = run(
        "checkline", INPUT=surfaces["street"], LINE=line(), SIGMA=0.003, DRIFT=0.001, LANE_LEFT=8.0, LANE_RIGHT=8.0,
        INLETS=memory_points([("", 50.0, HALF - 8.0, 0.0), ("", 50.0, HALF + 8.0, 0.0)]),
        OUTPUT="TEMPORARY_OUTPUT",
    )  # fmt: skip
    assert drained["LOW_COUNT"] == 0, "each gully takes the water of its low point"


def test_the_shipped_rules_on_the_demo(run: Any, chain: Dict[str, Any], tmp_path: Path) -> None:
    found = run(
        "checkline", INPUT=chain["surface"]["OUTPUT"], LINE=CENTRELINE, LANE_LEFT=2.3, LANE_RIGHT=2.3,
        POINTS=chain["points"]["OUTPUT"], OUTPUT="TEMPORARY_OUTPUT", FLOW="TEMPORARY_OUTPUT", LOW_POINTS=None,
        SAVE_RULES=str(tmp_path / "rules.csv"),
    )  # fmt: skip
    assert found["PASSED"] > 0
    assert found["TOO_CLOSE"] > 0
    assert found["FAILED"] == 0
    from plugin.core.alignment.rules import default_rules, read_rules

    assert read_rules(tmp_path / "rules.csv") == default_rules()
    flows = [f["flow"] for f in rows(found["FLOW"])]
    assert flows.count("left") > 0.8 * len(flows), "the scenario's lane falls to its left kerb"


# Bad input


BAD_LINES = {
    "off the surface": (lambda: line((500, 500), (600, 500)), "nowhere on the surface"),
    "doubling back": (lambda: line((10, 10), (50, 10), (20, 10)), "doubles back"),
    "of no length": (lambda: line((10, 10), (10, 10)), "no length"),
    "in another CRS": (lambda: line(crs="EPSG:25833"), "reproject the layer"),
    "one of two": (
        lambda: memory_layer("LineString", ["LineString(0 0, 1 0)", "LineString(5 5, 9 9)"], "EPSG:25832", "two"),
        "2 lines are in it",
    ),
    "without a line": (lambda: memory_layer("LineString", [], "EPSG:25832", "none"), "0 lines are in it"),
}


@pytest.mark.parametrize("name", ["roadprofile", "crosssections", "roadgrades", "verticalcurves", "checkline"])
@pytest.mark.parametrize("kind", BAD_LINES)
def test_bad_lines_are_refused_in_one_line(run: Any, surfaces: Dict[str, str], name: str, kind: str) -> None:
    make, said = BAD_LINES[kind]
    given = {"INPUT": surfaces["plane"], "LINE": make(), "OUTPUT": "TEMPORARY_OUTPUT"}
    if kind == "off the surface" and name == "crosssections":
        said = "cross-sections is on the surface"
    assert said in message_of(run, name, **given)


@pytest.mark.parametrize(
    ("name", "given", "said"),
    [
        ("roadprofile", {"START": "abc"}, "abc is no station"),
        ("roadprofile", {"EQUATIONS": "0+050 : 0+100"}, "no station equation"),
        ("roadprofile", {"EQUATIONS": "0+500 = 0+100"}, "not on the line"),
        ("roadprofile", {"DRIFT": 0.05}, "larger than the standard deviation"),
        ("roadprofile", {"PDF": "x.pdf", "HEIGHT_SCALE": 1.0}, "does not fit on A4"),
        ("crosssections", {"STATIONS": "0+500"}, "no station 0+500"),
        ("crosssections", {"LEFT": 0.0, "RIGHT": 0.0}, "Give widths"),
        ("crosssections", {"INTERVAL": 1e-6}, "The interval of cross-sections"),
        ("roadgrades", {"WINDOW": 500.0}, "does not fit a line of 100"),
        ("roadgrades", {"LANE_LEFT": -3.0, "LANE_RIGHT": 2.0, "CROSSFALLS": "TEMPORARY_OUTPUT"}, "lower one first"),
        ("roadgrades", {"LIMITS": "5; 2"}, "must rise"),
        ("verticalcurves", {"SPACING": 50.0}, "too few"),
        ("checkline", {"RULES": "nowhere.csv"}, "nowhere.csv"),
        ("checkline", {"SPEEDS": "nowhere.csv"}, "nowhere.csv"),
    ],
)
def test_bad_values_are_refused_in_one_line(
    run: Any, surfaces: Dict[str, str], tmp_path: Path, name: str, given: Dict[str, Any], said: str
) -> None:
    given = {
        key: str(tmp_path / value) if str(value).startswith(("x.", "nowhere")) else value
        for key, value in given.items()
    }
    assert said in message_of(run, name, INPUT=surfaces["plane"], LINE=line(), OUTPUT="TEMPORARY_OUTPUT", **given)


@pytest.mark.parametrize(("name", "parameter"), [("roadprofile", "OTHERS"), ("crosssections", "DESIGN")])
def test_missing_meshes_are_refused_with_the_reason(
    run: Any, surfaces: Dict[str, str], tmp_path: Path, name: str, parameter: str
) -> None:
    from qgis.core import QgsProcessingException

    missing = str(tmp_path / "nowhere.2dm")
    given = {parameter: [missing] if parameter == "OTHERS" else missing}
    with pytest.raises(QgsProcessingException, match=r"nowhere\.2dm: the mesh file cannot be read"):
        run(name, INPUT=surfaces["plane"], LINE=line(), OUTPUT="TEMPORARY_OUTPUT", **given)


def test_other_points_cannot_tell_the_noise(run: Any, surfaces: Dict[str, str]) -> None:
    elsewhere = memory_points([("a", 0.3, 0.7, 50.0), ("b", 1.3, 4.1, 50.0)])
    given = {"INPUT": surfaces["plane"], "LINE": line(), "OUTPUT": "TEMPORARY_OUTPUT", "POINTS": elsewhere}
    assert "None of the 2 points lies at a vertex" in message_of(run, "roadgrades", **given)


def test_a_line_partly_off_the_surface_is_told(run: Any, surfaces: Dict[str, str]) -> None:
    listener = Listener()
    longer = line((-30, HALF), (60, HALF))
    found = run("roadprofile", listener, INPUT=surfaces["plane"], LINE=longer, OUTPUT="TEMPORARY_OUTPUT")
    assert any("30.0 m of centreline lane are outside" in text for text in listener.warnings)
    heights = {f["distance_m"]: f["height"] for f in rows(found["OUTPUT"])}
    assert not heights[20.0]
    assert heights[40.0] == pytest.approx(50.3)


@pytest.mark.parametrize("name", ["roadprofile", "crosssections", "roadgrades", "verticalcurves", "checkline"])
def test_a_cancelled_run_has_no_result(run: Any, surfaces: Dict[str, str], name: str) -> None:
    listener = Listener(cancel_at=0.0)
    assert run(name, listener, INPUT=surfaces["plane"], LINE=line(), OUTPUT="TEMPORARY_OUTPUT") == {}
    assert any("Cancelled" in text for text in listener.infos)


# Units, styles, models


def test_a_crs_in_feet_gives_the_same_slopes(run: Any, application: Any, tmp_path: Path) -> None:
    import processing

    foot = 1200 / 3937  # NIST SP 811
    x, y = (v.ravel() for v in np.meshgrid(np.arange(0, 61, 3.0), np.arange(0, 19, 3.0)))
    z = 50 + 0.03 * x - 0.02 * y
    places = [f"PointZ({(300000 + a) / foot} {(60000 + b) / foot} {c / foot})" for a, b, c in zip(x, y, z)]
    points = memory_layer("PointZ", places, "EPSG:2263", "feet")
    mesh = str(tmp_path / "feet.2dm")
    processing.run("hummock:buildsurface", {"INPUT": points, "OUTPUT": mesh}, feedback=Listener().feedback)
    ends = [f"{(300000 + a) / foot} {60009 / foot}" for a in (3.0, 57.0)]
    lane = memory_layer("LineString", [f"LineString({', '.join(ends)})"], "EPSG:2263", "lane")
    found = run(
        "roadgrades", INPUT=mesh, LINE=lane, UNIT=2, LANE_LEFT=3.0 / foot, LANE_RIGHT=3.0 / foot,
        OUTPUT="TEMPORARY_OUTPUT", CROSSFALLS="TEMPORARY_OUTPUT",
    )  # fmt: skip
    assert (found["STEEPEST"], found["LARGEST_CROSSFALL"]) == pytest.approx((3.0, 2.0), abs=1e-4)
    last = rows(found["OUTPUT"])[-1]
    assert last["to_station"] == "1+77.17"  # 54 m
    assert last["to_m"] == pytest.approx(54.0, abs=1e-4)


@pytest.mark.parametrize(
    ("qml", "kind"),
    [
        ("stations", "Point"),
        ("sections", "LineString"),
        ("section_points", "Point"),
        ("vertical_curves", "LineString"),
        ("meetings", "Point"),
        ("residuals", "Point"),
        ("line_checks", "LineString"),
        ("kerb_flow", "LineString"),
        ("low_points", "Point"),
    ],
)
def test_styles_load(application: Any, qml: str, kind: str) -> None:
    from plugin.processing.styles import apply_qml

    layer = memory_layer(kind, [], "EPSG:25832", qml)
    plain = layer.renderer().dump()
    apply_qml(layer, f"{qml}.qml")
    assert layer.renderer().dump() != plain
    assert layer.mapTipTemplate()


def test_verdicts_differ_in_colour_and_in_pattern(application: Any) -> None:
    from plugin.processing.styles import apply_qml

    layer = memory_layer("LineString", [], "EPSG:25832", "checks")
    apply_qml(layer, "line_checks.qml")
    categories = layer.renderer().categories()  # they own what is looked at below
    looks = {c.value(): c.symbol().symbolLayer(0) for c in categories}
    judged = [looks[word] for word in ("pass", "fail", "too_close")]
    assert len({own.color().name() for own in judged}) == 3
    assert len({tuple(own.customDashVector()) if own.useCustomDashPattern() else () for own in judged}) == 3


def test_outputs_are_dressed_and_columns_have_aliases(run: Any, surfaces: Dict[str, str], project: Any) -> None:
    from qgis.core import QgsApplication, QgsProcessingContext

    context = QgsProcessingContext()
    context.setProject(project)
    algorithm = QgsApplication.processingRegistry().createAlgorithmById("hummock:roadgrades")
    output = "memory:grades"
    given = {"INPUT": surfaces["plane"], "LINE": line(), "OUTPUT": output, "CROSSFALLS": None}
    details = QgsProcessingContext.LayerDetails("Grades", project, "OUTPUT")
    listener = Listener()
    from qgis.core import QgsProcessingOutputLayerDefinition

    given["OUTPUT"] = QgsProcessingOutputLayerDefinition(output, project)
    found, good = algorithm.run(given, context, listener.feedback)
    assert good
    assert details is not None
    (place,) = context.layersToLoadOnCompletion()
    layer = context.getMapLayer(place) or context.temporaryLayerStore().mapLayer(place)
    context.layersToLoadOnCompletion()[place].postProcessor().postProcessLayer(layer, context, listener.feedback)
    labels = [category.label() for category in layer.renderer().categories()]
    assert "2 to 5 %" in labels
    index = layer.fields().indexOf("slope_sd_pct")
    assert layer.attributeAlias(index) == "Its standard deviation (%)"
    assert found["OUTPUT"] == place


def test_it_works_in_a_model(application: Any, project: Any, surfaces: Dict[str, str]) -> None:
    """Mesh and line in, checked stretches out, as the model designer would put it together."""
    from qgis.core import (
        QgsProcessingContext,
        QgsProcessingModelAlgorithm,
        QgsProcessingModelChildAlgorithm,
        QgsProcessingModelChildParameterSource,
        QgsProcessingModelOutput,
        QgsProcessingModelParameter,
        QgsProcessingParameterFeatureSource,
        QgsProcessingParameterMeshLayer,
    )

    model = QgsProcessingModelAlgorithm("road", "test")
    for parameter in (
        QgsProcessingParameterMeshLayer("mesh", "mesh"),
        QgsProcessingParameterFeatureSource("line", "line"),
    ):
        model.addModelParameter(parameter, QgsProcessingModelParameter(parameter.name()))
    child = QgsProcessingModelChildAlgorithm("hummock:checkline")
    child.setChildId("check")
    source = QgsProcessingModelChildParameterSource
    child.addParameterSources("INPUT", [source.fromModelParameter("mesh")])
    child.addParameterSources("LINE", [source.fromModelParameter("line")])
    output = QgsProcessingModelOutput("stretches")
    output.setChildId("check")
    output.setChildOutputName("OUTPUT")
    child.setModelOutputs({"stretches": output})
    model.addChildAlgorithm(child)
    context = QgsProcessingContext()
    context.setProject(project)
    found, good = model.run(
        {"mesh": surfaces["plane"], "line": line(), "check:stretches": "memory:"}, context, Listener().feedback
    )
    assert good
    layer = context.getMapLayer(found["check:stretches"])
    assert {f["verdict"] for f in layer.getFeatures()} >= {"pass"}
