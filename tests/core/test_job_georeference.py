"""The headless job and where a survey lies: files merged, transformed, fitted, scaled, and all of it reported."""

import csv
import math
import re
import shlex

import numpy as np
import pytest
from pyproj import Transformer
from test_georeference_transform import write_gtx

from plugin.core.__main__ import main

HEADER = "name,easting,northing,height,code"


def write(path, rows, header=HEADER):
    path.write_text("\n".join([header, *rows]) + "\n", encoding="utf-8")
    return path


def hill(east=500000.0, north=5700000.0, height=100.0, side=8, prefix="p"):
    return [
        f"{prefix}{i * side + j},{east + 2 * i:.3f},{north + 2 * j:.3f},{height + 0.1 * i * (side - i):.3f},"
        for i in range(side)
        for j in range(side)
    ]


def run(tmp_path, *words):
    return main([*map(str, words), "--interval", "0.25", "--out", str(tmp_path / "out")])


def told(tmp_path):
    """The report without its tags."""
    html = (tmp_path / "out" / "report.html").read_text(encoding="utf-8")
    for sign, word in (("&#x27;", "'"), ("&quot;", '"'), ("&gt;", ">")):
        html = html.replace(sign, word)
    return " ".join(re.sub("<[^>]+>", " ", html).split())


def points(tmp_path):
    with open(tmp_path / "out" / "points.csv", encoding="utf-8", newline="") as stream:
        return list(csv.DictReader(stream))


def error(capsys, tmp_path, *words):
    """The one line on the standard error, without the stages."""
    capsys.readouterr()
    assert run(tmp_path, *words) == 2
    said = capsys.readouterr()
    assert said.out == ""
    line = said.err.strip().splitlines()[-1]
    assert "Traceback" not in said.err
    return line


def sentence(body):
    value = 0
    for byte in body.encode():
        value ^= byte
    return f"${body}*{value:02X}"


def log(path, side=6):
    """A square of positions around 51.45 N, 9 E with heights of 100 m and a separation of 46 m."""
    lines = []
    for k in range(side * side):
        lat, lon = 27.0 + 0.001 * (k // side), 0.002 * (k % side)
        height = 100 + 0.1 * (k % side)
        body = (
            f"GNGGA,1{k // 60:01d}00{k % 60:02d}.00,51{lat:09.6f},N,009{lon:09.6f},E,4,12,0.7,{height:.3f},M,46.0,M,,"
        )
        lines.append(sentence(body))
    lines.append("$GNGGA,broken")
    path.write_text("\r\n".join(lines) + "\r\n", encoding="ascii")
    return path


def test_a_log_beside_a_table(tmp_path, capsys):
    day1 = write(tmp_path / "day1.csv", hill(500020.0, 5699900.0))
    assert run(tmp_path, day1, log(tmp_path / "day2.nmea"), "--crs", "EPSG:25832", "--source-crs", "EPSG:4258") == 2
    assert "its columns hold eastings and northings" in capsys.readouterr().err
    assert run(tmp_path, day1, log(tmp_path / "day2.nmea"), "--crs", "EPSG:25832", "--heights-of", "antenna") == 0
    said = capsys.readouterr().out
    assert "100 from 102 lines (1 lines rejected)" in said
    assert "accuracy stated by PROJ" in said
    rows = points(tmp_path)
    assert {row["source"] for row in rows} == {"day1.csv", "day2.nmea"}
    text = told(tmp_path)
    assert "The files of the survey" in text
    assert "How day2.nmea was read format receiver log, NMEA 0183" in text
    assert "day2.nmea 37 the sentence has no checksum" in text
    assert "EPSG:4326" in text
    assert "What was done to the coordinates of the file" in text
    rejects = (tmp_path / "out" / "rejects.csv").read_text(encoding="utf-8").splitlines()
    assert rejects[0].split(",")[-1] == "source"
    assert rejects[1].endswith("day2.nmea")


def test_same_places_with_other_heights_and_names_twice_are_listed(tmp_path):
    day1 = write(tmp_path / "day1.csv", hill())
    day2 = write(tmp_path / "day2.csv", hill(height=100.1, side=4))
    assert run(tmp_path, day1, day2, "--crs", "EPSG:25832") == 0
    with open(tmp_path / "out" / "heights_differ.csv", encoding="utf-8", newline="") as stream:
        rows = list(csv.DictReader(stream))
    assert len(rows) == 16
    assert rows[0]["first_source"] == "day1.csv"
    assert rows[0]["first_line"] == "2"
    assert float(rows[0]["rise_m"]) == pytest.approx(0.1)
    with open(tmp_path / "out" / "names_twice.csv", encoding="utf-8", newline="") as stream:
        assert len(list(csv.DictReader(stream))) == 32
    assert "Same place, different heights" in told(tmp_path)


def test_a_projected_source_is_transformed_and_told_with_its_accuracy(tmp_path):
    """Projections alone between zones of one datum; PROJ states 0 m for these."""
    east, north = Transformer.from_crs(25832, 25833, always_xy=True).transform(700000.0, 5700000.0)
    survey = write(tmp_path / "a.csv", hill(round(east, 3), round(north, 3)))
    assert run(tmp_path, survey, "--crs", "EPSG:25832", "--source-crs", "EPSG:25833") == 0
    first = points(tmp_path)[0]
    assert float(first["easting"]) == pytest.approx(700000.0, abs=0.002)
    text = told(tmp_path)
    assert "from ETRS89 / UTM zone 33N (EPSG:25833) to ETRS89 / UTM zone 32N (EPSG:25832)" in text
    assert "accuracy stated by PROJ: 0 m" in text


def test_a_ballpark_operation_needs_its_name(tmp_path, capsys):
    survey = write(tmp_path / "a.csv", hill())
    asked = [survey, "--crs", "EPSG:26732", "--source-crs", "EPSG:23032"]
    line = error(capsys, tmp_path, *asked)
    assert "ballpark" in line
    name = shlex.split(line[line.index("--accept ") :])[1].rstrip(".")
    assert run(tmp_path, *asked, "--accept", name) == 0
    assert "the user accepted it by its name" in told(tmp_path)


def test_points_outside_the_area_of_use_are_reported_and_corrected_on_demand(tmp_path, capsys):
    rows = [",".join([name, n, e, h, ""]) for name, e, n, h, _ in (row.split(",") for row in hill())]
    survey = write(tmp_path / "a.csv", rows, "point,value a,value b,value c,note")
    asked = [survey, "--crs", "EPSG:25832", "--columns", "name,easting,northing,height,code"]
    line = error(capsys, tmp_path, *asked)
    assert "64 of 64 points lie far outside the area of use" in line
    assert "--correct swapped (easting and northing are exchanged; 51.45" in line
    assert run(tmp_path, *asked, "--correct", "as-read") == 0
    shown = capsys.readouterr().out
    assert shown.startswith("Site      3.33")
    assert "on the user's word the points stay" in shown
    assert "64 of 64 points lie outside the area of use" in told(tmp_path)
    assert run(tmp_path, *asked, "--correct", "swapped") == 0
    assert capsys.readouterr().out.startswith("Site      51.45")
    assert float(points(tmp_path)[0]["easting"]) == 500000.0
    assert "On the user's word 64 of 64 points were read otherwise" in told(tmp_path)
    assert "is no cause that would explain" in error(capsys, tmp_path, *asked, "--correct", "unit")


@pytest.mark.parametrize(("words", "height"), [((), 146.0), (("--geoid", "46.25"), 99.75)])
def test_geoid_separation_and_its_origin(tmp_path, words, height):
    survey = write(tmp_path / "a.csv", hill(height=146.0))
    assert run(tmp_path, survey, "--crs", "EPSG:25832", *words) == 0
    assert float(points(tmp_path)[0]["height"]) == height
    if words:
        assert "Geoid separation 46.250 m for the whole site, a constant (as given)" in told(tmp_path)
    else:
        assert "has not changed their datum" in told(tmp_path)


def test_reasons_of_recognition_are_in_the_report(tmp_path):
    rows = [row.rstrip(",").replace(",", " ") for row in hill()]
    survey = tmp_path / "plain.txt"
    survey.write_text("\n".join(rows) + "\n", encoding="utf-8")
    assert run(tmp_path, survey, "--crs", "EPSG:25832") == 0
    text = told(tmp_path)
    assert "Why the columns were taken so" in text
    assert "no other reading lands in the area of use of the CRS" in text


CONTROL = {
    "A": (1000.0, 1000.0, 10.0),
    "B": (1014.0, 1000.0, 11.0),
    "C": (1014.0, 1014.0, 12.0),
    "D": (1000.0, 1014.0, 9.0),
    "E": (1006.0, 1008.0, 9.5),
}


def control(path, off=0.0):
    """Turned by 10 degrees about A, scale 1, moved; D is ``off`` metres too far east."""
    turn = math.radians(10)
    rows = []
    for name, (x, y, z) in CONTROL.items():
        e = 500000 + math.cos(turn) * (x - 1000) - math.sin(turn) * (y - 1000) + (off if name == "D" else 0.0)
        n = 5700000 + math.sin(turn) * (x - 1000) + math.cos(turn) * (y - 1000)
        rows.append(f"{name},{e:.4f},{n:.4f},{z + 50:.4f}")
    return write(path, rows, "name,easting,northing,height")


def local(path):
    return write(path, [f"{name},{x},{y},{z}," for name, (x, y, z) in CONTROL.items()] + hill(1000.0, 1000.0, 10.0))


def test_a_local_survey_fitted_to_control(tmp_path, capsys):
    asked = [local(tmp_path / "l.csv"), "--crs", "EPSG:25832", "--control", control(tmp_path / "c.csv")]
    assert run(tmp_path, *asked) == 0
    assert "Plan: four-parameter fit to 5 control points; turned by 10.000" in capsys.readouterr().out
    rows = {row["name"]: row for row in points(tmp_path)}
    turn = math.radians(10)
    assert float(rows["B"]["easting"]) == pytest.approx(500000 + 14 * math.cos(turn), abs=1e-3)
    assert float(rows["B"]["height"]) == pytest.approx(61.0, abs=1e-3)
    text = told(tmp_path)
    assert "Residuals at the control points" in text
    assert "no control point stands out" in text
    with open(tmp_path / "out" / "residuals.csv", encoding="utf-8", newline="") as stream:
        residuals = list(csv.DictReader(stream))
    assert [row["name"] for row in residuals] == list(CONTROL)
    assert all(abs(float(row["east_mm"])) < 0.2 for row in residuals)
    assert sum(float(row["redundancy_height"]) for row in residuals) == pytest.approx(4.0, abs=1e-3)


def test_the_control_point_that_does_not_fit_is_named(tmp_path, capsys):
    asked = [local(tmp_path / "l.csv"), "--crs", "EPSG:25832", "--control", control(tmp_path / "c.csv", 0.25)]
    assert run(tmp_path, *asked) == 0
    assert "control point 'D' does not fit" in capsys.readouterr().out
    assert run(tmp_path, *asked, "--leave-out", "D") == 0
    assert "no control point stands out" in told(tmp_path)
    with open(tmp_path / "out" / "residuals.csv", encoding="utf-8", newline="") as stream:
        rows = {row["name"]: row for row in csv.DictReader(stream)}
    assert rows["D"]["used"] == "0"
    assert float(rows["D"]["east_mm"]) == pytest.approx(-250.0, abs=0.5)
    assert "'Q' is to be left out" in error(capsys, tmp_path, *asked, "--leave-out", "Q")


def test_a_control_file_of_another_survey_is_refused(tmp_path, capsys):
    other = write(tmp_path / "c.csv", ["X1,500000,5700000,1"], "name,easting,northing,height")
    line = error(capsys, tmp_path, local(tmp_path / "l.csv"), "--crs", "EPSG:25832", "--control", other)
    assert "c.csv" in line
    assert "no surveyed point has the name of a control point" in line


def test_grid_to_ground_and_back(tmp_path, capsys):
    survey = write(tmp_path / "a.csv", hill(600000.0))
    origin = ["--ground-origin", "600000,5700000", "--ground-shift=-500000,-5000000", "--geoid", "46"]
    assert run(tmp_path, survey, "--crs", "EPSG:25832", "--grid-to-ground", *origin) == 0
    text = told(tmp_path)
    assert "Sample line" in text
    assert "mean of the points plus geoid separation" in text
    factor = re.search(r"Combined factor (\d\.\d+)", text).group(1)
    ground = points(tmp_path)
    assert float(ground[0]["easting"]) == 100000.0
    last = float(ground[-1]["easting"]) - 100000.0
    assert last == pytest.approx(14.0 / float(factor), abs=2e-6)
    (tmp_path / "ground.csv").write_bytes((tmp_path / "out" / "points.csv").read_bytes())
    capsys.readouterr()
    back = [tmp_path / "ground.csv", "--crs", "EPSG:25832", "--ground-to-grid", "--ground-factor", factor]
    assert run(tmp_path, *back, *origin) == 0
    assert np.array([float(row["easting"]) for row in points(tmp_path)]) == pytest.approx(
        np.array([float(row.split(",")[1]) for row in hill(600000.0)]), abs=5e-6
    )
    assert "--ground-origin" in error(capsys, tmp_path, *back)


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["--geoid", "nowhere.gtx"], "nowhere.gtx"),
        (["--geoid", ""], "--geoid is empty"),
        (["--geoid", "nan"], "is no number"),
        (["--heights", "ellipsoidal"], "give the geoid separation as --geoid"),
        (["--source-crs", "EPSG:1"], "not understood as a CRS"),
        (["--source-crs", "EPSG:4979"], "its columns hold eastings"),
        (["--correct", "swapped"], "leave --correct out"),
        (["--control", "nowhere.csv"], "nowhere.csv"),
        (["--grid-to-ground", "--ground-origin", "here"], "--ground-origin must be two numbers"),
        (["--grid-to-ground", "--ground-factor", "2"], "cannot be right"),
        (["nowhere.csv"], "there is no such file"),
    ],
)  # fmt: skip
def test_mistakes_are_one_line(tmp_path, capsys, words, said):
    survey = write(tmp_path / "a.csv", hill())
    assert said in error(capsys, tmp_path, survey, *words, "--crs", "EPSG:25832")


def test_a_file_given_twice_is_refused(tmp_path, capsys):
    survey = write(tmp_path / "a.csv", hill())
    assert "is given twice" in error(capsys, tmp_path, survey, survey, "--crs", "EPSG:25832")


def test_a_mirrored_survey_is_refused_with_the_reading_and_its_place(tmp_path, capsys):
    rows = [f"{name},{y},{x},{z}," for name, (x, y, z) in CONTROL.items()]
    mirrored = [",".join([n, b, a, *rest]) for n, a, b, *rest in (row.split(",") for row in hill(1000.0, 1000.0, 10.0))]
    survey = write(tmp_path / "l.csv", rows + mirrored)
    asked = [survey, "--crs", "EPSG:25832", "--control", control(tmp_path / "c.csv")]
    line = error(capsys, tmp_path, *asked)
    assert "does not fit the control points as they are read" in line
    assert "--control-as mirrored (the survey is mirrored: its easting and northing are exchanged; 51.45" in line
    assert run(tmp_path, *asked, "--control-as", "mirrored") == 0
    rows = {row["name"]: row for row in points(tmp_path)}
    assert float(rows["B"]["easting"]) == pytest.approx(500000 + 14 * math.cos(math.radians(10)), abs=1e-3)
    text = told(tmp_path)
    assert "control was read so: the survey is mirrored" in text
    assert "The fit was judged" in text
    assert "where the survey lies" in text
    assert "no way to read control" in error(capsys, tmp_path, *asked, "--control-as", "upside-down")


def test_a_base_corrected_afterwards(tmp_path, capsys):
    survey = write(tmp_path / "a.csv", hill())
    asked = [survey, "--crs", "EPSG:25832"]
    base = ["--base-was", "500100,5700100,120", "--base-is", "500101.5,5700099,120.25"]
    assert run(tmp_path, *asked, *base) == 0
    first = hill()[0].split(",")
    row = points(tmp_path)[0]
    assert float(row["easting"]) == pytest.approx(float(first[1]) + 1.5, abs=1e-3)
    assert float(row["height"]) == pytest.approx(float(first[3]) + 0.25, abs=1e-3)
    assert "cannot tell a rotation, a scale or a tilt" in told(tmp_path)
    known = write(
        tmp_path / "k.csv", [f"{first[0]},{float(first[1]) + 1.5},{first[2]},{float(first[3]) - 0.5}"],
        "name,easting,northing,height",
    )  # fmt: skip
    assert run(tmp_path, *asked, "--control", known, "--control-fit", "shift") == 0
    assert float(points(tmp_path)[0]["height"]) == pytest.approx(float(first[3]) - 0.5, abs=1e-3)
    assert "give one of them" in error(capsys, tmp_path, *asked, *base, "--control", known)
    assert "two positions" in error(capsys, tmp_path, *asked, *base[:2])


def test_a_place_nearby_doubts_a_wrong_zone_first_of_all(tmp_path, capsys):
    survey = write(tmp_path / "a.csv", hill())
    assert run(tmp_path, survey, "--crs", "EPSG:25833", "--near", "51.45N,9.0E") == 0
    shown = capsys.readouterr().out.splitlines()
    assert shown[0].startswith("Site      51.45")
    assert "the place given as near is 418 km away at" in shown[0] or "km away" in shown[0]
    remarks = shown[next(i for i, line in enumerate(shown) if line.startswith("Remarks")) + 1]
    assert "The CRS is doubtful" in remarks
    assert "EPSG:25832" in remarks
    assert run(tmp_path, survey, "--crs", "EPSG:25832", "--near", "51.45N,9.0E") == 0
    assert "doubtful" not in capsys.readouterr().out
    assert "--near must be a place" in error(capsys, tmp_path, survey, "--crs", "EPSG:25832", "--near", "home")


def test_to_grid_the_geoid_is_asked_where_the_grid_coordinates_are(tmp_path, capsys):
    """Ground coordinates 500 km off the grid's: a geoid grid that covers the site alone serves."""
    north, east = np.meshgrid(np.arange(3), np.arange(3), indexing="ij")
    write_gtx(tmp_path / "site.gtx", 10.4, 51.4, 0.05, 46.0 + 0.0 * (north + east))
    ground = write(tmp_path / "ground.csv", hill(100000.0, 700000.0))
    words = [ground, "--crs", "EPSG:25832", "--ground-to-grid", "--ground-origin", "600000,5700000",
             "--ground-shift=-500000,-5000000"]  # fmt: skip
    factors = []
    for geoid in ("46", str(tmp_path / "site.gtx")):
        assert run(tmp_path, *words, "--geoid", geoid) == 0, capsys.readouterr().err
        factors.append(re.search(r"Combined factor (\d\.\d+)", told(tmp_path)).group(1))
    assert factors[0] == factors[1]
