"""Where the water runs, asked of the headless main job."""

import json
import math

import numpy as np
import pytest
from shapely.geometry import shape
from test_demo_job import DEMO
from test_job import run, write

from plugin.core.__main__ import STAGES
from plugin.core.handover.mesh import read_2dm

FILES = ("flow_paths.geojson", "ponds.geojson", "catchments.geojson")
EAST, NORTH = 500000.0, 5800000.0


def bowl(side=21, spacing=1.0, factor=1.0):
    """Lines of a survey of a slope down to the south with a square hollow 0.8 m deep in it."""
    lines = []
    for i in range(side):
        for j in range(side):
            z = 100 + 0.05 * j - 0.8 * (8 <= i <= 12 and 8 <= j <= 12)
            place = (EAST + spacing * i, NORTH + spacing * j, z)
            lines.append("p{},{:.4f},{:.4f},{:.4f},".format(side * i + j, *(value / factor for value in place)))
    return lines


def features(path):
    return json.loads(path.read_text(encoding="utf-8"))["features"]


@pytest.fixture(scope="module")
def out(tmp_path_factory):
    folder = tmp_path_factory.mktemp("water")
    inlets = write(folder / "inlets.csv", [f"Pipe,{EAST + 3},{NORTH + 0.3},0.9"], "name,easting,northing,runoff\n")
    more = ("--inlets", str(inlets), "--rain", "36", "--runoff", "0.5")
    assert run(write(folder / "bowl.csv", bowl()), folder / "out", "--water", *more) == 0
    return folder / "out"


def test_catchments_add_up_to_the_surface(out):
    rows = features(out / "catchments.geojson")
    area = read_2dm(out / "surface.2dm").plan_area
    assert sum(row["properties"]["area_m2"] for row in rows) == pytest.approx(area, abs=0.002 * len(rows))
    shapes = [shape(row["geometry"]) for row in rows]
    assert all(each.is_valid for each in shapes)
    assert sum(each.area for each in shapes) == pytest.approx(area, abs=0.01)
    for row, each in zip(rows, shapes):
        assert each.area == pytest.approx(row["properties"]["area_m2"], abs=0.02)


def test_the_hollow_is_a_pond(out):
    (pond,) = features(out / "ponds.geojson")
    told = pond["properties"]
    assert told["name"] == "P1"
    # From the floor at 8 m to the brim: the ground 1 m south of the floor's lower edge.
    assert told["depth_m"] == pytest.approx(0.8 - 0.05, abs=1e-4)
    assert shape(pond["geometry"]).area == pytest.approx(told["area_m2"], abs=0.01)
    assert told["spills_to"] == "rim"
    kept = [row["properties"] for row in features(out / "catchments.geojson") if row["properties"]["nowhere_m2"]]
    assert [(row["name"], row["drains_to"]) for row in kept] == [("P1", "pond")]


def test_peak_flows_by_the_inlets_own_coefficient(out):
    rows = {row["properties"]["name"]: row["properties"] for row in features(out / "catchments.geojson")}
    pipe, pond = rows["Pipe"], rows["P1"]
    assert pipe["flow"] == pytest.approx(0.9 * pipe["area_m2"] / 100, abs=1e-3)  # 36 mm/h is 1 l/s a 100 m²
    assert pond["flow"] == pytest.approx(0.5 * pond["area_m2"] / 100, abs=1e-3)
    assert rows[""]["flow"] is None, "the rest of the rim is no one place"
    assert pipe["flow_unit"] == "l/s"


def test_paths_fall_and_end_where_they_say(out):
    rows = features(out / "flow_paths.geojson")
    ends = {row["properties"].get("end") for row in rows if row["properties"]["kind"] == "path"}
    assert {"rim", "pit", "inlet"} <= ends
    for row in rows:
        xyz = np.array(row["geometry"]["coordinates"])
        assert np.hypot(*np.diff(xyz[:, :2], axis=0).T).sum() == pytest.approx(row["properties"]["length_m"], abs=0.01)
        assert xyz[0, 2] - xyz[-1, 2] == pytest.approx(row["properties"]["drop_m"], abs=1e-3)
        if row["properties"].get("end") == "inlet":
            assert row["properties"]["inlet"] == "Pipe"


def test_the_report_tells_it_with_its_limits(out):
    text = (out / "report.html").read_text(encoding="utf-8")
    assert 'id="water"' in text
    for said in ("whole site", "no drainage design", "Kuichling", "Local codes and licensed practice", "van Kreveld"):
        assert said in text
    assert "Pipe" in text


def test_the_summary_has_a_line(tmp_path, capsys):
    assert run(write(tmp_path / "bowl.csv", bowl()), tmp_path / "out", "--water") == 0
    said = capsys.readouterr()
    (line,) = [line for line in said.out.splitlines() if line.startswith("Water ")]
    assert "ponds: 1" in line
    assert STAGES["water"] in said.err
    assert all((tmp_path / "out" / name).exists() for name in FILES)


def test_nothing_of_it_unless_asked(tmp_path, capsys):
    assert run(write(tmp_path / "bowl.csv", bowl()), tmp_path / "out") == 0
    assert not any((tmp_path / "out" / name).exists() for name in FILES)
    assert "Water " not in capsys.readouterr().out


def test_full_ponds_and_a_least_depth(tmp_path):
    survey = write(tmp_path / "bowl.csv", bowl())
    assert run(survey, tmp_path / "full", "--water", "--full-ponds") == 0
    assert {row["properties"]["drains_to"] for row in features(tmp_path / "full" / FILES[2])} <= {"outlet", "rim"}
    assert run(survey, tmp_path / "deep", "--water", "--pond-depth", "0.76") == 0
    assert features(tmp_path / "deep" / FILES[1]) == []


def test_us_units(tmp_path):
    """A CRS in U.S. survey feet: areas in square feet as named, coordinates in feet, flows in ft³/s."""
    foot = 1200 / 3937
    survey = write(tmp_path / "bowl.csv", bowl(factor=foot))
    more = ("--water", "--rain", "2", "--rain-unit", "in/h", "--runoff", "0.5", "--correct", "as-read")
    assert run(survey, tmp_path / "out", *more, crs=("--crs", "EPSG:2263")) == 0
    rows = features(tmp_path / "out" / FILES[2])
    assert sum(row["properties"]["area_ftUS2"] for row in rows) * foot**2 == pytest.approx(400, abs=0.1)
    assert sum(shape(row["geometry"]).area for row in rows) * foot**2 == pytest.approx(400, abs=0.1)
    pond = next(row["properties"] for row in rows if row["properties"]["name"] == "P1")
    acres = pond["area_ftUS2"] / 43560  # international acres would be 4 ppm off
    assert pond["flow"] == pytest.approx(1.00833 * 0.5 * 2 * acres, rel=2e-3)
    assert pond["flow_unit"] == "ft³/s"


WRONG = [
    (("--inlets", "x.csv"), "--inlets"),
    (("--rain", "10"), "--rain"),
    (("--full-ponds",), "--full-ponds"),
    (("--water", "--runoff", "0.5"), "--rain"),
    (("--water", "--inlets", "/nowhere/inlets.csv"), "/nowhere/inlets.csv"),
    (("--water", "--rain", "10", "--runoff", "2"), "coefficient"),
]


@pytest.mark.parametrize(("more", "words"), WRONG)
def test_what_does_not_fit_is_told_in_a_line(tmp_path, capsys, more, words):
    assert run(write(tmp_path / "bowl.csv", bowl()), tmp_path / "out", *more) == 2
    said = [line for line in capsys.readouterr().err.splitlines() if line not in STAGES.values()]
    assert len(said) == 1
    assert words in said[0]


def test_the_demo_has_its_gullies(tmp_path):
    """Each gully and the pipe take ground of their own; the basin keeps its water, as it is made to."""
    more = ("--rim-edge", "10", "--water", "--inlets", str(DEMO / "inlets.csv"), "--rain", "60", "--runoff", "0.3")
    assert run(DEMO / "survey.csv", tmp_path / "out", *more, check=True) == 0
    rows = {row["properties"]["name"]: row["properties"] for row in features(tmp_path / "out" / FILES[2])}
    assert {"Gully 1", "Gully 2", "Gully 3", "Gully 4", "Ditch pipe", "P1"} <= set(rows)
    assert rows["Ditch pipe"]["area_m2"] > 4000
    assert min(rows[f"Gully {k}"]["area_m2"] for k in (1, 2, 3, 4)) > 20
    kinds = [row["properties"]["kind"] for row in features(tmp_path / "out" / FILES[0])]
    assert kinds.count("path") > 300
    assert kinds.count("channel") > 20
    (basin,) = features(tmp_path / "out" / FILES[1])
    # The basin is an ellipse with a floor 0.7 m under the mean of its rim; on the slope it fills to its low side.
    assert 0.25 < basin["properties"]["depth_m"] < 0.5
    assert basin["properties"]["chance"] < 1e-6
    assert math.isclose(rows["P1"]["nowhere_m2"], rows["P1"]["area_m2"], rel_tol=1e-6)
