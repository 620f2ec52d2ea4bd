"""Import into the right place, fits to control, ground and grid, through the toolbox."""

from __future__ import annotations

import json
import math
from pathlib import Path
from typing import Any, Dict, List

import numpy as np
import pytest
from in_qgis import Listener, Profile, close_for_good, layer_of
from test_import_preview import log_text


def values(layer: Any, *fields: str) -> List[Any]:
    return [tuple(feature[name] for name in fields) for feature in layer_of(layer).getFeatures()]


def places(layer: Any) -> np.ndarray:
    return np.array([[v.x(), v.y(), v.z()] for f in layer_of(layer).getFeatures() for v in f.geometry().vertices()])


def write(path: Path, rows: Any, header: str = "name,easting,northing,height,code") -> str:
    path.write_text("\n".join([header, *rows]) + "\n", encoding="utf-8")
    return str(path)


def walk(count: int = 30, east: float = 500000.0, north: float = 5700000.0, height: float = 100.0) -> List[str]:
    return [f"p{i},{east + 0.5 * i:.3f},{north + 0.3 * i:.3f},{height + 0.01 * i:.3f},GR" for i in range(count)]


def memory_layer(rows: Any, crs: str, fields: str = "field=id:string&field=up:double", kind: str = "Point") -> Any:
    """Points from rows of x, y, name, and height as a field."""
    from qgis.core import QgsFeature, QgsGeometry, QgsPointXY, QgsVectorLayer

    layer = QgsVectorLayer(f"{kind}?crs={crs}&{fields}", "loaded", "memory")
    features = []
    for x, y, name, up in rows:
        feature = QgsFeature(layer.fields())
        feature.setGeometry(QgsGeometry.fromPointXY(QgsPointXY(x, y)))
        feature.setAttributes([name, up])
        features.append(feature)
    layer.dataProvider().addFeatures(features)
    return layer


def refused(run: Any, name: str, **parameters: Any) -> str:
    from qgis.core import QgsProcessingException

    with pytest.raises(QgsProcessingException) as raised:
        run(name, OUTPUT="TEMPORARY_OUTPUT", **parameters)
    said = str(raised.value)
    assert len(said.splitlines()) == 1
    assert "--" not in said
    return said


def test_a_log_and_a_table_become_one_layer(run: Any, tmp_path: Path) -> None:
    (tmp_path / "day2.nmea").write_text(log_text(), encoding="ascii")
    result = run(
        "importpoints",
        INPUT=write(tmp_path / "day1.csv", [*walk(), "broken"]),
        MORE=[str(tmp_path / "day2.nmea")],
        CRS="EPSG:25832",
        HEIGHTS_OF=2,
        OUTPUT="TEMPORARY_OUTPUT",
        REJECTS="TEMPORARY_OUTPUT",
    )
    assert result["POINTS"] == 35
    assert result["LINES"] == 32 + 5
    assert {row[0] for row in values(result["OUTPUT"], "source")} == {"day1.csv", "day2.nmea"}
    assert values(result["REJECTS"], "line", "source") == [(32, "day1.csv")]
    assert places(result["OUTPUT"])[-1, 0] == pytest.approx(500000.0, abs=0.001)  # 9° E, the central meridian
    assert "accuracy stated by PROJ" in result["STATEMENTS"]


def test_what_merging_finds_is_listed(run: Any, tmp_path: Path) -> None:
    listener = Listener()
    result = run(
        "importpoints",
        listener,
        INPUT=write(tmp_path / "day1.csv", walk(10)),
        MORE=[write(tmp_path / "day2.csv", walk(4, height=100.2))],
        CRS="EPSG:25832",
        OUTPUT="TEMPORARY_OUTPUT",
        DIFFERENCES="TEMPORARY_OUTPUT",
        NAMES_TWICE="TEMPORARY_OUTPUT",
    )
    rows = values(result["DIFFERENCES"], "first_source", "first_line", "second_name", "rise_m")
    assert rows[1] == ("day1.csv", 3, "p1", pytest.approx(0.2))
    assert len(rows) == 4
    assert places(result["DIFFERENCES"])[0, 2] == pytest.approx(100.2)
    assert len(values(result["NAMES_TWICE"], "name")) == 8
    assert any("4 pairs of points" in text for text in listener.warnings)
    assert any("4 point names" in text for text in listener.warnings)


def test_a_projected_source_is_transformed(run: Any, tmp_path: Path) -> None:
    from pyproj import Transformer

    file = write(tmp_path / "zone33.csv", walk(30, 280000.0, 5700000.0))
    result = run(
        "importpoints", INPUT=file, SOURCE_CRS="EPSG:25833", CRS="EPSG:25832", OUTPUT="TEMPORARY_OUTPUT"
    )  # fmt: skip
    expected = Transformer.from_crs(25833, 25832, always_xy=True).transform(280000.0, 5700000.0)
    assert places(result["OUTPUT"])[0, :2] == pytest.approx(expected, abs=0.001)
    assert layer_of(result["OUTPUT"]).crs().authid() == "EPSG:25832"


def test_units_of_plan_and_height_by_themselves(run: Any, tmp_path: Path) -> None:
    """Feet of 0.3048 m (NIST SP 811) in height, metres in plan."""
    result = run(
        "importpoints", INPUT=write(tmp_path / "a.csv", walk()), CRS="EPSG:25832", UNIT=0, HEIGHT_UNIT=1,
        OUTPUT="TEMPORARY_OUTPUT",
    )  # fmt: skip
    assert places(result["OUTPUT"])[0] == pytest.approx([500000.0, 5700000.0, 30.48])


def test_ballpark_operations_are_refused_until_named(run: Any, tmp_path: Path) -> None:
    """From ED50 to NAD27 there is no operation for Germany but a ballpark one."""
    file = write(tmp_path / "a.csv", walk())
    said = refused(run, "importpoints", INPUT=file, SOURCE_CRS="EPSG:23032", CRS="EPSG:26732")
    assert "ballpark" in said
    name = said[said.index(" '") + 2 : said.rindex("'")]
    result = run(
        "importpoints", INPUT=file, SOURCE_CRS="EPSG:23032", CRS="EPSG:26732", ACCEPT=f"something else | {name}",
        OUTPUT="TEMPORARY_OUTPUT",
    )  # fmt: skip
    assert result["POINTS"] == 30
    assert "accepted it by its name" in result["STATEMENTS"]


def test_geoid_as_a_constant_and_not_twice(run: Any, tmp_path: Path) -> None:
    file = write(tmp_path / "a.csv", walk(height=146.0))
    result = run("importpoints", INPUT=file, CRS="EPSG:25832", GEOID=46.0, OUTPUT="TEMPORARY_OUTPUT")
    assert places(result["OUTPUT"])[0, 2] == pytest.approx(100.0)
    assert "46.000 m for the whole site" in result["STATEMENTS"]
    assert "counted twice" in refused(run, "importpoints", INPUT=file, CRS="EPSG:25832", GEOID=46.0, HEIGHTS_ARE=1)
    said = refused(run, "importpoints", INPUT=file, CRS="EPSG:25832", GEOID=46.0, GEOID_GRID=file)
    assert "give one of them" in said


def test_corrections_only_on_the_users_word(run: Any, tmp_path: Path) -> None:
    file = write(tmp_path / "a.csv", walk(30, 5700000.0, 500000.0))
    asked = {"INPUT": file, "CRS": "EPSG:25832", "COLUMNS": "name,easting,northing,height,code"}
    said = refused(run, "importpoints", **asked)
    assert "30 of 30 points lie far outside" in said
    assert "“Read coordinates outside the area of use as” swapped (easting and northing are exchanged; 51.45" in said
    listener = Listener()
    result = run("importpoints", listener, **asked, CORRECT="as-read", OUTPUT="TEMPORARY_OUTPUT")
    assert result["POINTS_OUTSIDE"] == 30
    assert places(result["OUTPUT"])[0, 0] == 5700000.0
    assert listener.warnings[0].startswith(f"{file}: on the user's word the points stay")
    result = run("importpoints", **asked, CORRECT="swapped", OUTPUT="TEMPORARY_OUTPUT")
    assert places(result["OUTPUT"])[0, 0] == 500000.0
    assert result["POINTS_OUTSIDE"] == 0
    assert "30 of 30 points were read otherwise" in result["STATEMENTS"]


def test_a_run_of_swapped_lines_is_corrected_and_the_others_stay(run: Any, tmp_path: Path) -> None:
    rows = walk(80)
    for i in range(20, 50):
        name, east, north, *rest = rows[i].split(",")
        rows[i] = ",".join([name, north, east, *rest])
    file = write(tmp_path / "a.csv", rows)
    asked = {"INPUT": file, "CRS": "EPSG:25832", "CORRECT": "swapped", "OUTPUT": "TEMPORARY_OUTPUT"}
    result = run("importpoints", **asked)
    assert places(result["OUTPUT"])[:, 0] == pytest.approx(500000.0 + 0.5 * np.arange(80))
    assert result["POINTS_OUTSIDE"] == 0


def test_the_import_says_where_it_is_from_the_layers_of_the_project(run: Any, project: Any, tmp_path: Path) -> None:
    layer = memory_layer([(500000.0, 5710000.0, "a", 1.0), (500100.0, 5710100.0, "b", 1.0)], "EPSG:25832")
    project.addMapLayer(layer)
    listener = Listener()
    file = write(tmp_path / "a.csv", walk())
    result = run("importpoints", listener, INPUT=file, CRS="EPSG:25832", OUTPUT="TEMPORARY_OUTPUT")
    assert result["WHERE"].startswith("51.45")
    assert "° N, 9.00" in result["WHERE"]
    assert "“loaded” is 10.0 km away at 0°" in result["WHERE"]
    assert not any("doubtful" in text for text in listener.warnings)
    result = run("importpoints", listener, INPUT=file, CRS="EPSG:25833", OUTPUT="TEMPORARY_OUTPUT")
    assert "The CRS is doubtful" in listener.warnings[0]
    assert "EPSG:25832" in listener.warnings[0]


def test_a_mirrored_crs_is_refused_with_the_upright_one(run: Any, tmp_path: Path) -> None:
    rows = [f"p{i},{1050000 + 0.5 * i:.2f},{740000 + i % 3:.2f},200,GR" for i in range(20)]
    file = write(tmp_path / "a.csv", rows)
    said = refused(run, "importpoints", INPUT=file, CRS="EPSG:5513")
    assert "mirrored plan" in said
    assert "EPSG:5514" in said
    result = run("importpoints", INPUT=file, SOURCE_CRS="EPSG:5513", CRS="EPSG:5514", OUTPUT="TEMPORARY_OUTPUT")
    assert places(result["OUTPUT"])[0, :2] == pytest.approx([-740000.0, -1050000.0], abs=0.01)


@pytest.mark.parametrize("crs", ["EPSG:25832", "EPSG:4258"])
def test_a_loaded_layer_takes_the_place_of_a_file(run: Any, project: Any, crs: str) -> None:
    """Points without Z and with a height field, in the CRS wanted or in degrees; one has no height."""
    at = (500000.0, 5700000.0) if crs == "EPSG:25832" else (9.0, 51.45)
    step = 1.0 if crs == "EPSG:25832" else 1e-5
    rows = [(at[0] + step * i, at[1], f"n{i}", 100.0 + i if i != 3 else None) for i in range(6)]
    layer = memory_layer(rows, crs)
    project.addMapLayer(layer)
    result = run(
        "importpoints", LAYER=layer.id(), CRS="EPSG:25832", HEIGHT_FIELD="up", NAME_FIELD="id",
        OUTPUT="TEMPORARY_OUTPUT", REJECTS="TEMPORARY_OUTPUT",
    )  # fmt: skip
    assert values(result["OUTPUT"], "name") == [("n0",), ("n1",), ("n2",), ("n4",), ("n5",)]
    assert places(result["OUTPUT"])[:, 2] == pytest.approx([100.0, 101.0, 102.0, 104.0, 105.0])
    assert places(result["OUTPUT"])[0, 0] == pytest.approx(500000.0, abs=0.001)
    assert result["LINES"] == 6
    assert result["REJECTED_LINES"] == 1
    assert values(result["REJECTS"], "text")[0][0].startswith("n3")


def test_a_layer_whose_heights_are_in_feet(run: Any, project: Any) -> None:
    layer = memory_layer([(500000.0 + i, 5700000.0, f"n{i}", 100.0) for i in range(4)], "EPSG:25832")
    project.addMapLayer(layer)
    result = run(
        "importpoints", LAYER=layer.id(), CRS="EPSG:25832", HEIGHT_FIELD="up", HEIGHT_UNIT=1, OUTPUT="TEMPORARY_OUTPUT"
    )
    assert places(result["OUTPUT"])[0, 2] == pytest.approx(30.48)


def test_a_file_or_a_layer_but_not_both_or_none(run: Any, project: Any, tmp_path: Path) -> None:
    layer = memory_layer([(500000.0, 5700000.0, "a", 1.0)], "EPSG:25832")
    project.addMapLayer(layer)
    file = write(tmp_path / "a.csv", walk())
    assert "not both" in refused(run, "importpoints", INPUT=file, LAYER=layer.id(), CRS="EPSG:25832")
    assert "survey file" in refused(run, "importpoints", CRS="EPSG:25832")


def test_plain_words_through_qgis_process(profile: Profile, tmp_path: Path) -> None:
    """Columns, units, CRSs and further files as text, without a window."""
    rows = [row.replace(",GR", "").split(",") for row in walk(20, 280000.0, 5700000.0, 328.0)]
    first = write(tmp_path / "first.txt", [f"{n} {north} {east} {h}" for n, east, north, h in rows], "# no header")
    second = write(tmp_path / "second.txt", [f"{n} {north} {east} {h}" for n, east, north, h in rows[:3]], "# none")
    ran = profile.qgis_process(
        "--json", "run", "hummock:importpoints", f"--INPUT={first}", f"--MORE={second}", "--CRS=EPSG:25832",
        "--SOURCE_CRS=EPSG:25833", "--COLUMNS=name,northing,easting,height", "--UNIT=0", "--HEIGHT_UNIT=1",
        f"--OUTPUT={tmp_path / 'points.gpkg'}",
    )  # fmt: skip
    assert ran.returncode == 0, ran.stdout + ran.stderr
    results = json.loads(ran.stdout)["results"]
    assert results["POINTS"] == 23
    assert "EPSG:25833" in results["STATEMENTS"]
    assert places(results["OUTPUT"])[0, 2] == pytest.approx(328.0 * 0.3048)


# Control

#: Local coordinates and, turned by 30 degrees with a scale of 1.0001, those of the control, metres.
LOCAL = {
    "A": (1000.0, 1000.0, 10.0),
    "B": (1100.0, 1010.0, 11.0),
    "C": (1090.0, 1120.0, 12.0),
    "D": (1005.0, 1100.0, 10.5),
    "E": (1050.0, 1050.0, 10.2),
}


def known(name: str) -> Any:
    x, y, z = LOCAL[name]
    a, b = 1.0001 * math.cos(math.radians(30)), 1.0001 * math.sin(math.radians(30))
    return 500000 + a * (x - 1000) - b * (y - 1000), 5700000 + b * (x - 1000) + a * (y - 1000), z + 90.0


def local_survey(run: Any, tmp_path: Path) -> Any:
    rows = [f"{name},{x},{y},{z}," for name, (x, y, z) in LOCAL.items()]
    rows += [f"t{i},{1000 + i},{1050 + i % 7},{10 + 0.1 * i}," for i in range(40)]
    result = run(
        "importpoints", INPUT=write(tmp_path / "local.csv", rows), LOCAL=True, UNIT=0, OUTPUT=str(tmp_path / "l.gpkg")
    )
    return result["OUTPUT"]


def control_file(path: Path, **off: float) -> str:
    rows = []
    for name in LOCAL:
        e, n, z = known(name)
        rows.append(f"{name},{e + off.get(name, 0.0):.4f},{n:.4f},{z:.4f}")
    return write(path, rows, "name,easting,northing,height")


def test_a_local_survey_onto_control(run: Any, tmp_path: Path) -> None:
    result = run(
        "fitcontrol", INPUT=local_survey(run, tmp_path), CONTROL=control_file(tmp_path / "c.csv"), CRS="EPSG:25832",
        OUTPUT="TEMPORARY_OUTPUT", RESIDUALS="TEMPORARY_OUTPUT",
    )  # fmt: skip
    assert result["SCALE"] == pytest.approx(1.0001, abs=1e-6)
    assert result["TURN"] == pytest.approx(30.0, abs=1e-4)
    assert result["DOES_NOT_FIT"] == ""
    assert layer_of(result["OUTPUT"]).crs().authid() == "EPSG:25832"
    assert places(result["OUTPUT"])[:5] == pytest.approx(np.array([known(name) for name in LOCAL]), abs=2e-4)
    rows = values(result["RESIDUALS"], "name", "used", "plan_mm", "height_mm", "redundancy_east")
    assert [row[0] for row in rows] == list(LOCAL)
    assert all(abs(row[2]) < 0.2 and abs(row[3]) < 0.2 for row in rows)
    assert sum(row[4] for row in rows) == pytest.approx(3.0, abs=0.01)  # half of 10 observations less 4 unknowns


def test_the_point_that_does_not_fit_is_named_and_left_out(run: Any, tmp_path: Path) -> None:
    survey, control = local_survey(run, tmp_path), control_file(tmp_path / "c.csv", C=0.3)
    asked: Dict[str, Any] = {
        "INPUT": survey, "CONTROL": control, "CRS": "EPSG:25832", "SIGMA_PLAN": 0.01, "SIGMA_HEIGHT": 0.02,
        "OUTPUT": "TEMPORARY_OUTPUT", "RESIDUALS": "TEMPORARY_OUTPUT",
    }  # fmt: skip
    listener = Listener()
    result = run("fitcontrol", listener, **asked)
    assert result["DOES_NOT_FIT"] == "C"
    assert [row[0] for row in values(result["RESIDUALS"], "name", "does_not_fit") if row[1]] == ["C"]
    assert any("control point 'C' does not fit" in text for text in listener.warnings)
    result = run("fitcontrol", **asked, LEAVE_OUT="C")
    assert result["DOES_NOT_FIT"] == ""
    rows = {row[0]: row[1:] for row in values(result["RESIDUALS"], "name", "used", "east_mm")}
    assert not rows["C"][0]
    assert rows["C"][1] == pytest.approx(-300.0, abs=1.0)
    del asked["OUTPUT"]
    assert "'nobody' is to be left out" in refused(run, "fitcontrol", **asked, LEAVE_OUT="nobody")


def test_control_from_a_layer_without_some_heights(run: Any, project: Any, tmp_path: Path) -> None:
    rows = [(*known(name)[:2], name, known(name)[2] if name != "E" else None) for name in LOCAL]
    layer = memory_layer(rows, "EPSG:25832")
    project.addMapLayer(layer)
    result = run(
        "fitcontrol", INPUT=local_survey(run, tmp_path), CONTROL_LAYER=layer.id(), CONTROL_HEIGHT_FIELD="up",
        CONTROL_NAME_FIELD="id", OUTPUT="TEMPORARY_OUTPUT", RESIDUALS="TEMPORARY_OUTPUT",
    )  # fmt: skip
    assert layer_of(result["OUTPUT"]).crs().authid() == "EPSG:25832"
    heights = dict(values(result["RESIDUALS"], "name", "height_mm"))
    assert heights["A"] == pytest.approx(0.0, abs=0.2)
    assert places(result["OUTPUT"])[4, 2] == pytest.approx(known("E")[2], abs=2e-4)
    assert len(heights) == 5


def test_a_mirrored_survey_is_refused_with_the_reading_that_fits(run: Any, tmp_path: Path) -> None:
    rows = [f"{name},{known(name)[1] - 5700000},{known(name)[0] - 500000},{known(name)[2]}" for name in LOCAL]
    survey = run(
        "importpoints", INPUT=write(tmp_path / "m.csv", rows, "name,easting,northing,height"), LOCAL=True, UNIT=0,
        OUTPUT=str(tmp_path / "m.gpkg"),
    )["OUTPUT"]  # fmt: skip
    asked = {"INPUT": survey, "CONTROL": control_file(tmp_path / "c.csv"), "CRS": "EPSG:25832"}
    said = refused(run, "fitcontrol", **asked, RESIDUALS="TEMPORARY_OUTPUT")
    assert "does not fit the control points as they are read" in said
    assert "“Read survey and control as” mirrored" in said
    assert "51.45" in said
    result = run(
        "fitcontrol", **asked, READ_AS="mirrored", OUTPUT="TEMPORARY_OUTPUT", RESIDUALS="TEMPORARY_OUTPUT"
    )  # fmt: skip
    assert places(result["OUTPUT"]) == pytest.approx(np.array([known(name) for name in LOCAL]), abs=2e-4)
    assert "control was read so: the survey is mirrored" in result["STATEMENTS"]


def test_a_base_is_corrected_by_its_positions_or_a_known_point(run: Any, tmp_path: Path) -> None:
    points = run(
        "importpoints", INPUT=write(tmp_path / "a.csv", walk()), CRS="EPSG:25832", OUTPUT=str(tmp_path / "a.gpkg")
    )["OUTPUT"]
    asked = {"INPUT": points, "OUTPUT": "TEMPORARY_OUTPUT"}
    result = run("correctbase", **asked, BASE_WAS="500010,5700010,101", BASE_IS="500012.5,5700009.25,101.75")
    moved = np.array([2.5, -0.75, 0.75])
    assert places(result["OUTPUT"])[0] == pytest.approx(places(points)[0] + moved, abs=1e-4)
    assert (result["EAST"], result["NORTH"], result["UP"]) == pytest.approx(moved, abs=1e-6)
    assert "cannot tell a rotation, a scale or a tilt" in result["STATEMENTS"]
    control = write(tmp_path / "k.csv", ["p3,500004,5700000.15,100.78"], "name,easting,northing,height")
    result = run("correctbase", **asked, CONTROL=control)
    assert places(result["OUTPUT"])[3] == pytest.approx([500004.0, 5700000.15, 100.78], abs=1e-4)
    del asked["OUTPUT"]
    said = refused(run, "correctbase", **asked, BASE_WAS="500010,5700010", BASE_IS="510010,5700010")
    assert "more than a base is put wrong by" in said
    assert "Give the two positions" in refused(run, "correctbase", **asked)


# Ground and grid


def grid_points(run: Any, tmp_path: Path) -> Any:
    rows = [f"p{i},{600000 + 100 * i},{5700000 + 40 * (i % 3)},400," for i in range(12)]
    return run(
        "importpoints", INPUT=write(tmp_path / "g.csv", rows), CRS="EPSG:25832", UNIT=0, OUTPUT=str(tmp_path / "g.gpkg")
    )["OUTPUT"]


def test_grid_to_ground_and_back(run: Any, tmp_path: Path) -> None:
    points = grid_points(run, tmp_path)
    origin = "600000,5700000 [EPSG:25832]"
    there = run(
        "groundgrid", INPUT=points, ORIGIN=origin, GEOID=46.0, SHIFT_EASTING=-500000.0, SHIFT_NORTHING=-5000000.0,
        OUTPUT=str(tmp_path / "ground.gpkg"),
    )  # fmt: skip
    # UTM 100 km off its meridian: 0.9996 (1 + 100² / (2 · 6383²)), a spherical estimate; 446 m up: 1 - 446 / 6383000
    estimate = 0.9996 * (1 + 100.0**2 / (2 * 6383.0**2)) * (1 - 446.0 / 6383000.0)
    assert there["FACTOR_USED"] == pytest.approx(estimate, abs=2e-6)
    assert there["SAMPLE_GROUND"] == pytest.approx(there["SAMPLE_GRID"] / there["FACTOR_USED"], rel=1e-12)
    assert "Sample line" in there["STATEMENTS"]
    ground = places(there["OUTPUT"])
    assert layer_of(there["OUTPUT"]).crs().authid() == ""
    assert ground[0, :2] == pytest.approx([100000.0, 700000.0], abs=1e-6)
    assert ground[11, 0] - ground[0, 0] == pytest.approx(1100.0 / there["FACTOR_USED"], abs=1e-6)
    back = run(
        "groundgrid", INPUT=there["OUTPUT"], WAY=1, CRS="EPSG:25832", ORIGIN=origin, FACTOR=there["FACTOR_USED"],
        SHIFT_EASTING=-500000.0, SHIFT_NORTHING=-5000000.0, OUTPUT="TEMPORARY_OUTPUT",
    )  # fmt: skip
    assert places(back["OUTPUT"]) == pytest.approx(places(points), abs=1e-6)
    assert layer_of(back["OUTPUT"]).crs().authid() == "EPSG:25832"


def test_ground_without_origin_or_crs_is_refused(run: Any, tmp_path: Path) -> None:
    points = grid_points(run, tmp_path)
    assert "Origin" in refused(run, "groundgrid", INPUT=points, WAY=1)
    assert "combined factor of 0.2 cannot be right" in refused(run, "groundgrid", INPUT=points, FACTOR=0.2)


def test_a_factor_is_typed_with_all_its_digits(application: Any) -> None:
    """The spin box of QGIS would round it to six."""
    from processing.gui.AlgorithmDialog import AlgorithmDialog
    from qgis.core import QgsApplication, QgsProcessingContext

    dialog = AlgorithmDialog(QgsApplication.processingRegistry().createAlgorithmById("hummock:groundgrid"))
    wrapper = dialog.mainWidget().wrappers["FACTOR"]
    wrapper.setParameterValue(0.999699746123, QgsProcessingContext())
    assert wrapper.parameterValue() == 0.999699746123
    close_for_good(dialog)
