"""The demo survey in test_data/demo: regenerates, is complete, and is what its README says."""

from __future__ import annotations

import csv
import json
from pathlib import Path

import numpy as np
import pyproj
import pytest
from scipy.interpolate import LinearNDInterpolator
from scipy.spatial import Delaunay

from plugin.core.points.pointset import Reason, Status
from test_data import demo_layers, make_demo
from test_data import ground as g

DEMO = Path(__file__).resolve().parents[2] / "test_data" / "demo"
TEXT_FILES = (
    "survey.csv",
    "decisions.csv",
    "truth.csv",
    "check_points.csv",
    "scenario.json",
    "pad.geojson",
    "before.2dm",
    "before.prj",
    "phases.geojson",
    "centreline.geojson",
    "inlets.csv",
    "uncoded.csv",
)
BROKEN = {"text_in_height", "truncated_line"}
ORIGIN = np.array([g.ORIGIN_EASTING, g.ORIGIN_NORTHING, 0.0])


@pytest.fixture(scope="module")
def regenerated():
    return make_demo.make_texts()


@pytest.fixture(scope="module")
def lines():
    return (DEMO / "survey.csv").read_text(encoding="utf-8").splitlines()


@pytest.fixture(scope="module")
def truth():
    with open(DEMO / "truth.csv", encoding="utf-8") as handle:
        return {int(row["line"]): row for row in csv.DictReader(handle)}


@pytest.fixture(scope="module")
def decisions():
    with open(DEMO / "decisions.csv", encoding="utf-8") as handle:
        return {int(row["line"]): row for row in csv.DictReader(handle)}


@pytest.fixture(scope="module")
def points(lines, truth):
    """Line number, measured xyz, true xyz (less the origin), code and time of each whole line."""
    number = [n for n, row in truth.items() if row["fault"] not in BROKEN]
    cells = [lines[n - 1].split(",") for n in number]
    true = [[float(truth[n][key]) for key in ("easting", "northing", "height")] for n in number]
    return {
        "line": np.array(number),
        "xyz": np.array([[float(v) for v in row[1:4]] for row in cells]) - ORIGIN,
        "true": np.array(true) - ORIGIN,
        "code": np.array([row[4].split()[0] for row in cells]),
        "fix": np.array([int(row[7]) for row in cells]),
        "time": np.array([np.datetime64(row[11].rstrip("Z")) for row in cells]),
        "fault": np.array([truth[n]["fault"] for n in number]),
    }


@pytest.mark.parametrize("name", TEXT_FILES)
def test_text_files_regenerate_to_the_byte(regenerated, name):
    assert regenerated[name].encode("utf-8") == (DEMO / name).read_bytes()


def test_demo_is_small():
    assert sum(path.stat().st_size for path in DEMO.iterdir()) < 2_000_000


def test_geopackage_holds_the_generated_layers(tmp_path):
    ogr = pytest.importorskip("osgeo.ogr")
    demo_layers.write_geopackage(tmp_path / "site.gpkg")
    for path in (DEMO / "site.gpkg", tmp_path / "site.gpkg"):
        source = ogr.Open(str(path))
        assert source.GetLayerCount() == 4
        for expected in demo_layers.layers():
            layer = source.GetLayerByName(expected.name)
            assert layer.GetSpatialRef().GetAuthorityCode(None) == "25832"
            assert layer.GetFeatureCount() == len(expected.features)
            for row, feature in zip(layer, expected.features):
                assert {key: row.GetField(key) for key in feature.values} == feature.values
                shape = row.GetGeometryRef()
                shape = shape.GetGeometryRef(0) if expected.geometry == "POLYGON" else shape
                np.testing.assert_allclose(np.array(shape.GetPoints()), feature.xyz, atol=1e-6)


def test_every_line_of_the_survey_is_explained(lines, truth):
    others = {n for n, raw in enumerate(lines, 1) if n == 1 or not raw.strip() or raw.startswith("#")}
    assert others.isdisjoint(truth)
    assert others | set(truth) == set(range(1, len(lines) + 1))
    assert sum(raw.startswith("#") for raw in lines) == 2
    assert sum(not raw for raw in lines) == 1


def test_broken_lines_are_broken_as_stated(lines, truth):
    broken = {row["fault"]: lines[n - 1].split(",") for n, row in truth.items() if row["fault"] in BROKEN}
    assert set(broken) == BROKEN
    assert len(broken["truncated_line"]) < 4
    with pytest.raises(ValueError, match="float"):
        float(broken["text_in_height"][3])


def test_decisions_cover_every_fault_and_nothing_else(points, decisions):
    expected = {
        n
        for n, fault, code in zip(points["line"], points["fault"], points["code"])
        if fault != "none" or code in {"CK", "TR", "MH"}
    }
    assert set(decisions) == expected
    for row in decisions.values():
        assert row["status"].upper() in Status.__members__
        assert row["reason"].upper() in Reason.__members__


def test_scenario_lists_the_same_faults_as_the_truth(truth):
    scenario = json.loads((DEMO / "scenario.json").read_text(encoding="utf-8"))
    listed = {}
    for fault in scenario["faults"]:
        if fault["kind"] != "gap":
            listed.update(dict.fromkeys(range(fault["first_line"], fault["last_line"] + 1), fault["kind"]))
    assert listed == {n: row["fault"] for n, row in truth.items() if row["fault"] != "none"}


def test_noise_is_as_stated(points):
    error = (points["xyz"] - points["true"])[(points["fault"] == "none") & (points["code"] != "CK")]
    np.testing.assert_allclose(error.std(axis=0), [0.007, 0.007, 0.015], rtol=0.06)
    assert np.abs(error.mean(axis=0)).max() < 0.003
    check = (points["xyz"] - points["true"])[points["code"] == "CK"]
    assert np.sqrt((check**2).mean(axis=0)).max() < 0.008


def test_faults_do_what_their_names_say(points):
    error = points["xyz"] - points["true"]

    def of(fault):
        return error[points["fault"] == fault]

    assert of("lifted_pole")[:, 2].min() > 0.10
    assert of("lifted_pole")[:, 2].max() < 1.25
    assert of("slipped_pole")[:, 2].max() < -0.15
    assert of("fallen_pole")[:, 2].max() < -1.5
    assert of("wrong_fix")[:, 2].min() > 0.3
    assert np.hypot(*of("no_fix")[:, :2].T).mean() > 0.1
    assert set(points["fix"][points["fault"] == "no_fix"]) == {5}  # NMEA 0183: 5 is RTK float
    assert set(points["fix"][points["fault"] != "no_fix"]) == {4}  # 4 is RTK fixed
    still = points["xyz"][points["fault"] == "standing_still"]
    assert len(still) == 83
    for cluster in np.split(still, [45]):
        assert np.hypot(*(cluster - np.median(cluster, axis=0))[:, :2].T).max() < 0.05


def test_duplicated_block_repeats_its_lines(lines, points):
    doubled = points["line"][points["fault"] == "duplicate_block"]
    first = lines.index(lines[doubled[0] - 1]) + 1
    assert first < doubled[0]
    assert lines[first - 1 : first - 1 + len(doubled)] == lines[doubled[0] - 1 : doubled[-1]]


def test_recorded_every_half_metre_at_walking_pace(points):
    """A point every 0.5 m: common practice, no source."""
    auto = (points["code"] == "GR") & (points["fault"] == "none")
    pair = auto[1:] & auto[:-1] & (np.diff(points["line"]) == 1)
    step = np.hypot(*np.diff(points["true"][:, :2], axis=0).T)[pair]
    seconds = (np.diff(points["time"]) / np.timedelta64(1, "ms"))[pair] / 1000
    assert np.median(step) == pytest.approx(0.53, abs=0.03)
    walking = step < 0.6
    assert walking.mean() > 0.98
    assert np.median(step[walking] / seconds[walking]) == pytest.approx(1.2, abs=0.15)


def test_gap_has_no_recorded_point(points):
    scenario = json.loads((DEMO / "scenario.json").read_text(encoding="utf-8"))
    gap = np.array(next(fault for fault in scenario["faults"] if fault["kind"] == "gap")["polygon"])
    xyz = points["true"]
    assert not g.inside(gap - ORIGIN[:2], xyz[:, 0], xyz[:, 1]).any()


def test_coded_lines_do_not_cross(lines):
    make_demo.check_crossings(lines)
    chains = make_demo.coded_lines(lines)
    assert set(chains) == {
        "BD 1", "BL 1", "BL 2", "DB 1", "DT 1", "DT 2", "KF 1", "KF 2", "KT 1", "KT 2", "LE 1", "LE 2",
        "RB 1", "RT 1", "VD 1",
    }  # fmt: skip


def test_crossing_check_sees_a_crossing(lines):
    """The check itself: a vertex of the kerb's foot moved across its top must be found."""
    spoiled = list(lines)
    k = [n for n, raw in enumerate(spoiled) if ",KF 2," in raw][10]
    cells = spoiled[k].split(",")
    station, _ = g.lane_place(*g.to_site(np.array([float(cells[1])]), np.array([float(cells[2])])))
    easting, northing = g.to_grid(*g.lane_xy(station, -g.KERB_TOP - 0.2))
    cells[1:3] = f"{easting[0]:.3f}", f"{northing[0]:.3f}"
    spoiled[k] = ",".join(cells)
    with pytest.raises(ValueError, match="cross"):
        make_demo.check_crossings(spoiled)


def test_thirty_check_points_or_more(points):
    """At least 30: ASPRS Positional Accuracy Standards, ed. 2 (2023), as read in secondary sources."""
    with open(DEMO / "check_points.csv", encoding="utf-8") as handle:
        rows = list(csv.DictReader(handle))
    assert len(rows) >= 20
    assert len(rows) + int((points["code"] == "CK").sum()) >= 30
    xyz = np.array([[float(row[key]) for key in ("easting", "northing", "height")] for row in rows])
    error = xyz[:, 2] - g.true_height(xyz[:, 0], xyz[:, 1])
    assert 0.001 < np.sqrt(np.mean(error**2)) < 0.006
    assert g.inside(g.boundary(), xyz[:, 0], xyz[:, 1]).all()


def test_surface_from_good_points_is_within_20_mm(points, lines, decisions):
    """Linear interpolation by SciPy (Qhull), the coded lines filled in every 5 cm: RMSE below the bar."""
    used = np.array([decisions.get(n, {"status": "used"})["status"] != "rejected" for n in points["line"]])
    filled = [points["xyz"][used]]
    for chain in make_demo.coded_lines(lines).values():
        for a, b in zip(chain[:-1] - ORIGIN, chain[1:] - ORIGIN):
            share = np.linspace(0, 1, int(np.hypot(*(b - a)[:2]) / 0.05) + 2)[1:-1, None]
            filled.append(a + (b - a) * share)
    xyz = np.vstack(filled)
    surface = LinearNDInterpolator(Delaunay(xyz[:, :2]), xyz[:, 2])
    ring, hole = g.boundary() - ORIGIN[:2], g.void() - ORIGIN[:2]
    place = np.random.RandomState(1).uniform(ring.min(axis=0), ring.max(axis=0), (20000, 2))
    place = place[g.inside(ring, *place.T) & ~g.inside(hole, *place.T)][:10000]
    assert len(place) == 10000
    error = surface(place) - g.true_height(*(place + ORIGIN[:2]).T)
    assert np.isfinite(error).mean() > 0.999
    assert np.sqrt(np.nanmean(error**2)) < 0.020


def test_ground_is_where_its_crs_says():
    ring = g.boundary()
    longitude, latitude = pyproj.Transformer.from_crs(g.CRS, "EPSG:4326", always_xy=True).transform(*ring.T)
    area = pyproj.CRS(g.CRS).area_of_use
    assert (longitude > max(6.0, area.west)).all()
    assert (longitude < min(12.0, area.east)).all()
    assert (latitude > area.south).all()
    assert (latitude < area.north).all()


def test_ground_keeps_its_own_measures():
    station = np.array([20.0, 50.0, 80.0])
    for side, face in ((1, [0.12, 0.03, 0.12]), (-1, [0.12, 0.12, 0.12])):
        foot = g.site_height(*g.lane_xy(station, side * g.HALF_WIDTH))
        top = g.site_height(*g.lane_xy(station, side * g.KERB_TOP))
        np.testing.assert_allclose(top - foot, face, atol=1e-9)
    x = np.linspace(25, 80, 12)
    ditch = g.site_height(x, g.ditch_line(x))
    edges = [g.site_height(x, g.ditch_line(x) + side * g.DITCH_HALF_WIDTH) for side in (-1, 1)]
    np.testing.assert_allclose((edges[0] + edges[1]) / 2 - ditch, 0.6, atol=1e-9)
    assert (np.diff(ditch) < 0).all()
    floor = g.site_height(np.array([96.0, 100.0, 105.0]), np.array([71.0, 74.5, 72.0]))
    assert np.ptp(floor) == 0.0


def test_ground_has_no_step_where_none_is_meant():
    """Neighbouring places 1 cm apart never differ by more than the kerb's face allows (1.2 : 1)."""
    x, y = np.meshgrid(np.arange(-2, 121, 0.37), np.arange(0, 90, 0.29))
    height = g.site_height(x, y)
    for dx, dy in ((0.01, 0), (0, 0.01)):
        assert np.abs(g.site_height(x + dx, y + dy) - height).max() < 0.0130


def test_site_coordinates_go_both_ways():
    x, y = np.array([0.0, 118.0, 42.0]), np.array([0.0, -2.0, 50.0])
    np.testing.assert_allclose(g.to_site(*g.to_grid(x, y)), [x, y], atol=1e-8)
    station, offset = np.array([-3.0, 30.0, 75.0, 110.0]), np.array([1.0, -2.5, 4.0, -5.0])
    np.testing.assert_allclose(g.lane_place(*g.lane_xy(station, offset)), [station, offset], atol=1e-9)


def test_heights_are_those_of_the_scenario(points):
    height = points["true"][:, 2]
    assert height.min() > 84.0
    assert height.max() < 92.0


def test_parcels_fill_the_site():
    areas = [feature.values["area_m2"] for feature in demo_layers.parcels().features]
    site = g.boundary()
    assert min(areas) > 1000
    assert sum(areas) == pytest.approx(demo_layers.area(np.vstack([site, site[:1]])), abs=0.5)


def test_design_batters_end_on_the_ground():
    end = demo_layers.design_lines().features[1].xyz
    np.testing.assert_allclose(end[:, 2], g.true_height(end[:, 0], end[:, 1]), atol=0.002)
