"""Survey files that are no plain text, pipes, files that grow, and logs with a pole."""

import csv
import gzip
import os
import re
import subprocess
import sys
import threading
import zipfile
from pathlib import Path

import numpy as np
import pytest
from pyproj import CRS

from plugin.core.__main__ import main
from plugin.core.georeference.intake import take_in
from plugin.core.georeference.intake_options import IntakeOptions
from plugin.core.messages import SurveyError
from plugin.core.points.decisions import read_decisions
from plugin.core.points.delimited import read_points
from plugin.core.points.nmea import read_nmea
from plugin.core.points.questions import QuestionError, Topic
from plugin.core.points.survey import read_survey
from plugin.core.points.table import write_points
from tests.core.file_shapes import columns_of, lines_of, site
from tests.core.test_nmea import gga, sentence, zda

UTM = CRS.from_epsg(25832)
SITE = site(21)


def text():
    columns = columns_of(SITE)
    return lines_of(list(columns.values()), ",", ["name", "easting", "northing", "height", "code"])


def near(points, limit=0.002):
    assert len(points) == len(SITE.east)
    assert np.abs(points.easting - SITE.east).max() < limit
    assert np.abs(points.northing - SITE.north).max() < limit
    assert np.abs(points.height - SITE.height).max() < 0.002


def written(path, driver, degrees, high=True, layer="points", names=True, options=()):
    """The site as a file of GDAL's."""
    ogr = pytest.importorskip("osgeo.ogr")
    osr = pytest.importorskip("osgeo.osr")
    crs = osr.SpatialReference()
    crs.ImportFromEPSG(4326 if degrees else 25832)
    crs.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
    data = ogr.GetDriverByName(driver).CreateDataSource(str(path))
    made = data.CreateLayer(layer, crs, ogr.wkbPoint25D if high else ogr.wkbPoint, options=list(options))
    if driver not in ("GPX", "KML"):
        made.CreateField(ogr.FieldDefn("name", ogr.OFTString))
        made.CreateField(ogr.FieldDefn("code", ogr.OFTString))
        if not high:
            made.CreateField(ogr.FieldDefn("height", ogr.OFTReal))
    place = {"KML": "Name", "GPX": "name"}.get(driver, "name")
    for i, name in enumerate(SITE.names):
        feature = ogr.Feature(made.GetLayerDefn())
        feature.SetField(place, name)
        if driver == "GPX":
            feature.SetField("ele", float(SITE.height[i]))
            feature.SetField("time", 2025, 4, 9, 7, 6, float(i % 60), 100)
        if driver not in ("GPX", "KML"):
            feature.SetField("code", SITE.codes[i])
        plan = (SITE.longitude[i], SITE.latitude[i]) if degrees else (SITE.east[i], SITE.north[i])
        point = ogr.Geometry(ogr.wkbPoint25D if high else ogr.wkbPoint)
        if high:
            point.AddPoint(*(float(value) for value in plan), float(SITE.height[i]))
        else:
            point.AddPoint_2D(*(float(value) for value in plan))
            feature.SetField("height", float(SITE.height[i]))
        feature.SetGeometry(point)
        made.CreateFeature(feature)
    made = data = None
    return path


@pytest.mark.parametrize(
    ("driver", "suffix", "degrees", "high"),
    [
        ("GPKG", "gpkg", False, True), ("GPKG", "gpkg", False, False), ("GPKG", "gpkg", True, True),
        ("GeoJSON", "geojson", True, True), ("KML", "kml", True, True), ("GPX", "gpx", True, True),
        ("ESRI Shapefile", "shp", False, True), ("ESRI Shapefile", "shp", True, True),
        ("GeoJSON", "json", True, False),
    ],
)  # fmt: skip
def test_layers_of_points(tmp_path, driver, suffix, degrees, high):
    layer = {"GPX": "waypoints"}.get(driver, "points")
    options = ["COORDINATE_PRECISION=12"] if driver == "GeoJSON" else []
    path = written(tmp_path / f"site.{suffix}", driver, degrees, high, layer, options=options)
    came = take_in([path], IntakeOptions(crs=UTM))
    near(came.survey.points, 0.02 if degrees else 0.002)
    assert came.survey.points.name.tolist() == list(SITE.names)
    if driver not in ("GPX", "KML"):
        assert came.survey.points.code.tolist() == list(SITE.codes)
    if driver == "GPX":
        assert came.survey.points.time[1] - came.survey.points.time[0] == pytest.approx(1.0)
    assert came.survey.account.lines == len(SITE.names) + 1
    assert any("GDAL" in str(note) for note in came.survey.messages)


def test_a_layer_in_another_crs_is_transformed_and_one_said_otherwise_is_refused(tmp_path):
    path = written(tmp_path / "site.gpkg", "GPKG", False)
    came = take_in([path], IntakeOptions(crs=CRS.from_epsg(25833)))
    assert came.records
    assert abs(came.survey.points.easting[0] - SITE.east[0]) > 1000
    with pytest.raises(SurveyError, match="says itself"):
        take_in([path], IntakeOptions(crs=UTM, source_crs=CRS.from_epsg(25833)))


@pytest.mark.parametrize(("driver", "suffix"), [("XLSX", "xlsx"), ("ODS", "ods")])
def test_sheets(tmp_path, driver, suffix):
    ogr = pytest.importorskip("osgeo.ogr")
    data = ogr.GetDriverByName(driver).CreateDataSource(str(tmp_path / f"site.{suffix}"))
    for sheet in ("survey", "notes"):
        made = data.CreateLayer(sheet)
        kinds = (ogr.OFTString, ogr.OFTReal, ogr.OFTReal, ogr.OFTReal, ogr.OFTString)
        for word, kind in zip(("Point", "Easting", "Northing", "Height [cm]", "Remark"), kinds):
            made.CreateField(ogr.FieldDefn(word, kind))
        for i in range(len(SITE.names) if sheet == "survey" else 1):
            feature = ogr.Feature(made.GetLayerDefn())
            row = (SITE.names[i], SITE.east[i], SITE.north[i], SITE.height[i] * 100, SITE.codes[i])
            for place, value in enumerate(row):
                feature.SetField(place, value if isinstance(value, str) else float(value))
            made.CreateFeature(feature)
    made = data = None
    path = tmp_path / f"site.{suffix}"
    with pytest.raises(QuestionError) as caught:
        read_points(path, crs=UTM)
    question = caught.value.questions[0]
    assert question.topic is Topic.LAYER
    assert [answer.typed for answer in question.answers] == ["--layer survey", "--layer notes"]
    read = read_points(path, crs=UTM, layer="survey")
    near(read.points)
    assert read.points.code.tolist() == list(SITE.codes)
    with pytest.raises(SurveyError, match="has no layer 'other'"):
        read_points(path, crs=UTM, layer="other")


def test_archives(tmp_path):
    pytest.importorskip("osgeo.gdal")
    (tmp_path / "survey.csv").write_text(text(), encoding="utf-8")
    with zipfile.ZipFile(tmp_path / "one.zip", "w", zipfile.ZIP_DEFLATED) as archive:
        archive.write(tmp_path / "survey.csv", "day/survey.csv")
    near(read_points(tmp_path / "one.zip", crs=UTM).points)
    (tmp_path / "survey.csv.gz").write_bytes(gzip.compress(text().encode()))
    near(read_points(tmp_path / "survey.csv.gz", crs=UTM).points)
    with zipfile.ZipFile(tmp_path / "two.zip", "w") as archive:
        archive.write(tmp_path / "survey.csv", "a.csv")
        archive.write(tmp_path / "survey.csv", "b.csv")
    with pytest.raises(QuestionError) as caught:
        read_points(tmp_path / "two.zip", crs=UTM)
    assert [answer.typed for answer in caught.value.questions[0].answers] == ["--layer a.csv", "--layer b.csv"]
    near(read_points(tmp_path / "two.zip", crs=UTM, layer="b.csv").points)
    written(tmp_path / "site.shp", "ESRI Shapefile", False)
    with zipfile.ZipFile(tmp_path / "shape.zip", "w") as archive:
        for part in tmp_path.glob("site.*"):
            archive.write(part, part.name)
    near(take_in([tmp_path / "shape.zip"], IntakeOptions(crs=UTM)).survey.points)


def test_without_gdal_a_message_says_how(tmp_path, monkeypatch):
    monkeypatch.setitem(sys.modules, "osgeo", None)
    path = tmp_path / "walk.gpx"
    path.write_text('<?xml version="1.0"?><gpx version="1.1" creator="x"></gpx>', encoding="utf-8")
    with pytest.raises(SurveyError, match="GPX file is read through GDAL") as caught:
        read_points(path)
    assert "install the package gdal" in str(caught.value)


def test_a_damaged_file_of_gdal_is_one_line(tmp_path):
    pytest.importorskip("osgeo.gdal")
    for name, start in (("a.gpkg", b"SQLite format 3\0"), ("a.xlsx", b"PK\x03\x04 xl/workbook"), ("a.gpx", b"<gpx <"),
                        ("a.shp", b"\x00\x00\x27\x0a"), ("a.gz", b"\x1f\x8b123")):  # fmt: skip
        path = tmp_path / name
        path.write_bytes(start + os.urandom(500))
        with pytest.raises(SurveyError) as caught:
            read_points(path)
        assert "\n" not in str(caught.value)
        assert name in str(caught.value)


def test_a_pipe_is_read_whole(tmp_path):
    """More than the pages of a pipe, the header at its start."""
    (tmp_path / "survey.csv").write_text(text() * 1 + text().split("\n", 1)[1] * 60, encoding="utf-8")
    out = tmp_path / "out"
    command = (
        f"{sys.executable} -m plugin.core <(cat {tmp_path}/survey.csv) --crs EPSG:25832 --interval 0.25 --out {out}"
    )
    done = subprocess.run(["bash", "-c", command], capture_output=True, text=True, cwd=Path(__file__).parents[2])
    assert done.returncode == 0, done.stderr
    assert f"\nPoints    {61 * len(SITE.names)} from {61 * len(SITE.names) + 1} lines" in done.stdout


def test_a_pipe_of_a_log_is_read_whole(tmp_path):
    fifo = tmp_path / "log"
    os.mkfifo(fifo)
    lines = [
        zda("070600.00"),
        *(gga(f"07{i // 60:02d}{i % 60:02d}.00", height=f"{545 + i / 50:.3f}") for i in range(900)),
    ]
    writer = threading.Thread(target=lambda: fifo.write_text("\n".join(lines) + "\n", encoding="ascii"))
    writer.start()
    read = read_survey(fifo, geographic=True, heights_of="antenna")
    writer.join()
    assert read.account.points == 900
    assert read.account.lines == 901


def test_the_last_number_of_a_file_that_is_still_written_is_no_height(tmp_path):
    path = tmp_path / "survey.csv"
    path.write_text("easting,northing,height\n" + "548240.762,5712395.593,91.060\n" * 9 + "548240.762,5712395.593,91.0")
    read = read_points(path, crs=UTM)
    assert read.account.points == 9
    assert "file ends within the line" in str(read.rejects.reason[0])
    whole = path.read_text()[:-2] + ".060"
    path.write_text(whole)
    assert read_points(path, crs=UTM).account.points == 10


# Heights of the antenna


def walk_log(*more):
    return "\r\n".join([*more, *(gga(f"0706{i:02d}.00", height=f"{547 + i / 50:.3f}") for i in range(20))]) + "\r\n"


def test_a_log_asks_for_its_pole_and_takes_it(tmp_path):
    path = tmp_path / "walk.nmea"
    path.write_text(walk_log(), encoding="ascii")
    with pytest.raises(QuestionError) as caught:
        read_nmea(path)
    typed = [answer.typed for answer in caught.value.questions[0].answers]
    assert typed == ["--pole-height 2.000", "--heights-of antenna", "--heights-of ground"]
    assert read_nmea(path, heights_of="antenna").points.height[0] == 547.0
    lowered = read_nmea(path, pole_height=1.8, antenna_offset=0.083)
    assert lowered.points.height[0] == pytest.approx(547 - 1.883)
    assert lowered.geographic.height[0] == pytest.approx(547 - 1.883)
    assert "lowered to the ground by 1.883 m" in str(lowered.ground)


@pytest.mark.parametrize(
    "said",
    [
        "# pole height 1.800 m", "# Antenna height: 180 cm", sentence("GNTXT,01,01,02,pole height 1.800"),
        "# Stabhöhe 1,800 m", sentence("GPTXT,01,01,02,ROD HEIGHT=1.8"),
    ],
)  # fmt: skip
def test_a_log_says_its_own_pole(tmp_path, said):
    path = tmp_path / "walk.nmea"
    path.write_text(walk_log(said), encoding="utf-8")
    read = read_nmea(path)
    assert read.points.height[0] == pytest.approx(545.2)
    assert "of the log's own lines" in str(read.ground)


def test_a_pole_that_changes_on_the_way(tmp_path):
    path = tmp_path / "walk.nmea"
    lines = walk_log("# pole height 2.000 m").split("\r\n")
    lines.insert(11, "# pole height 1.500 m")
    path.write_text("\n".join(lines), encoding="ascii")
    read = read_nmea(path)
    expected = 547 + np.arange(20) / 50 - np.where(np.arange(20) < 10, 2.0, 1.5)
    assert np.abs(read.points.height - expected).max() < 1e-9
    assert "by 1.500 to 2.000 m" in str(read.ground)


def test_the_report_says_that_heights_were_lowered(tmp_path):
    path = tmp_path / "walk.nmea"
    path.write_text(walk_log(), encoding="ascii")
    came = take_in([path], IntakeOptions(crs=UTM, pole_height=2.0))
    assert any("lowered to the ground" in str(one) for one in came.statements)


def test_poles_of_a_column_that_heights_do_not_follow_are_of_the_ground(tmp_path):
    pole = np.where(np.arange(len(SITE.east)) // 8 % 2, 1.8, 2.3)
    columns = columns_of(SITE)
    rows = lines_of([*list(columns.values())[:4], [f"{p:.3f}" for p in pole]], ",", ["n", "E", "N", "H", "pole height"])
    path = tmp_path / "a.csv"
    path.write_text(rows, encoding="utf-8")
    near(read_points(path, crs=UTM).points)
    high = {**columns, "height": [f"{h + p:.3f}" for h, p in zip(SITE.height, pole)]}
    rows = lines_of([*list(high.values())[:4], [f"{p:.3f}" for p in pole]], ",", ["n", "E", "N", "H", "pole height"])
    path.write_text(rows, encoding="utf-8")
    with pytest.raises(QuestionError):
        read_points(path, crs=UTM)
    near(read_points(path, crs=UTM, heights_of="antenna").points)


def test_a_pole_given_for_a_table_is_not_taken_off_without_a_word(tmp_path):
    path = tmp_path / "a.csv"
    path.write_text(text(), encoding="utf-8")
    with pytest.raises(QuestionError) as caught:
        read_points(path, crs=UTM, pole_height=2.0)
    assert caught.value.questions[0].topic is Topic.ANTENNA
    near(read_points(path, crs=UTM, pole_height=2.0, heights_of="ground").points)
    lowered = read_points(path, crs=UTM, pole_height=2.0, heights_of="antenna").points
    assert np.abs(lowered.height + 2.0 - SITE.height).max() < 1e-9


# What is written


def test_cells_that_a_spreadsheet_would_run_are_text_and_come_back(tmp_path):
    names = ["=1+1", "+A1", "-A1", "@SUM(A1)", "'=x", "''+y", "'plain", "-5", "+3.5", "-", "P=1", '"=q"']
    rows = [f'"{name.replace(chr(34), chr(34) * 2)}",{548240 + i}.5,5712395.5,9{i % 10}.25,"=cmd|code{i % 3}"'
            for i, name in enumerate(names)]  # fmt: skip
    path = tmp_path / "a.csv"
    path.write_text("name,easting,northing,height,code\n" + "\n".join(rows) + "\n", encoding="utf-8")
    read = read_points(path, crs=UTM, columns="name,easting,northing,height,code").points
    assert read.name.tolist()[:4] == names[:4]
    write_points(read, tmp_path / "points.csv")
    with open(tmp_path / "points.csv", encoding="utf-8", newline="") as stream:
        cells = [cell for row in list(csv.reader(stream))[1:] for cell in row]
    assert not any(re.match(r"[=@]|[+-][^0-9.]", cell) for cell in cells)
    again = read_points(tmp_path / "points.csv", crs=UTM).points
    assert again.name.tolist() == read.name.tolist()
    assert again.code.tolist() == read.code.tolist()
    assert len(read_decisions(tmp_path / "points.csv")) == len(names)


def test_the_command_line_refuses_with_the_option_that_mends_it(tmp_path, capsys):
    columns = columns_of(SITE)
    heights = [f"{value - 88:.3f}" for value in SITE.height]
    heights[5] = heights[17] = "0.000"
    path = tmp_path / "a.csv"
    rows = [columns["name"], columns["easting"], columns["northing"], heights]
    path.write_text(lines_of(rows, ",", ["name", "easting", "northing", "height"]), encoding="utf-8")
    words = [str(path), "--crs", "EPSG:25832", "--interval", "0.25", "--out", str(tmp_path / "out")]
    assert main(words) == 2
    said = capsys.readouterr().err.strip().split("\n")[-1]
    typed = re.findall(r"--no-value [a-z0-9]+", said)
    assert typed == ["--no-value 0", "--no-value none"]
    assert main([*words, *typed[0].split()]) == 0
    assert f"\nPoints    {len(heights) - 2} from" in capsys.readouterr().out
    assert main([*words, *typed[1].split()]) == 0
    assert f"\nPoints    {len(heights)} from" in capsys.readouterr().out


@pytest.mark.parametrize(("words", "wrong"), [("--pole-height two", "no length"), ("--pole-height 99", "no length")])
def test_lengths_of_poles_are_lengths(tmp_path, capsys, words, wrong):
    out = ["--crs", "local", "--interval", "1", "--out", str(tmp_path)]
    assert main([str(tmp_path / "a.csv"), *out, *words.split()]) == 2
    assert wrong in capsys.readouterr().err
