"""What the headless main job makes when asked for more: sheet, grid, thinned surface, edits, findings."""

import csv
import json
import os

import numpy as np
import pytest
from scipy.spatial import cKDTree
from test_job import breaklines, hill, run, write

from plugin.core.__main__ import STAGES
from plugin.core.arguments.parser import make_parser
from plugin.core.arguments.settings import job_settings
from plugin.core.contours.lines import ContourOptions
from plugin.core.handover.grid import large_grid
from plugin.core.handover.mesh import read_2dm
from plugin.core.job.run import compute
from plugin.core.job.settings import JobSettings
from plugin.core.surface.locate import heights_at
from plugin.core.surface.raster import GridFrame


def made(folder, *more, lines=None, **how):
    survey = write(folder / "hill.csv", hill() if lines is None else lines)
    assert run(survey, folder / "out", *more, **how) == 0
    return folder / "out"


def features(path):
    return json.loads(path.read_text(encoding="utf-8"))["features"]


def told(capsys):
    return [line for line in capsys.readouterr().err.splitlines() if line not in STAGES.values()]


# Sheet


def filled(line):
    """Points every centimetre or so along a line (k, 2)."""
    line = np.asarray(line)[:, :2]
    parts = [np.linspace(a, b, 2 + int(np.hypot(*(b - a)) / 0.01)) for a, b in zip(line[:-1], line[1:])]
    return np.concatenate(parts)


@pytest.mark.parametrize("shift", [0.0, 0.3])
def test_the_sheet_stays_within_the_distance_of_the_exact_contours(tmp_path, shift):
    out = made(tmp_path, "--smooth", str(shift), "--calm", "0")
    exact, sheet = features(out / "contours.geojson"), features(out / "contours_sheet.geojson")
    assert [f["properties"] for f in sheet] == [f["properties"] for f in exact]
    farthest = 0.0
    for one, other in zip(exact, sheet):
        a, b = (filled(f["geometry"]["coordinates"]) for f in (one, other))
        farthest = max(farthest, cKDTree(a).query(b)[0].max(), cKDTree(b).query(a)[0].max())
    assert farthest <= shift + 0.011
    assert farthest >= 0.3 * shift


def test_unasked_the_sheet_is_calmed_by_the_noise_of_the_survey():
    """By the command line as by desk and toolbox; 0 calms nothing."""
    words = ["survey.csv", "--crs", "local", "--interval", "1", "--out", "out", "--smooth", "0.2"]
    assert job_settings(make_parser().parse_args(words)).sheet.calm is None
    assert job_settings(make_parser().parse_args([*words, "--calm", "0"])).sheet.calm == 0.0


def test_the_exact_contours_do_not_depend_on_the_sheet(tmp_path):
    for name, more in (("plain", ()), ("sheet", ("--smooth", "0.5", "--calm", "0.05"))):
        (tmp_path / name).mkdir()
        made(tmp_path / name, *more)
    plain, sheet = (tmp_path / name / "out" / "contours.geojson" for name in ("plain", "sheet"))
    assert plain.read_bytes() == sheet.read_bytes()


def test_labels_have_the_size_of_the_scale_and_lie_on_their_contour(tmp_path):
    out = made(tmp_path, "--smooth", "0.2", "--scale", "200", "--index-every", "2")
    labels = features(out / "labels.geojson")
    lines = features(out / "contours_sheet.geojson")
    assert len(labels) >= 2
    for label in labels:
        properties = label["properties"]
        assert properties["size"] == pytest.approx(0.4)  # 2 mm at 1 : 200
        assert properties["index"] is True
        assert float(properties["text"]) == properties["level"]
        own = [f for f in lines if f["properties"]["level"] == properties["level"]]
        near = min(
            cKDTree(filled(f["geometry"]["coordinates"])).query(label["geometry"]["coordinates"])[0] for f in own
        )
        assert near < 0.25


def test_the_summit_is_a_spot_height(tmp_path):
    spots = features(made(tmp_path, "--smooth", "0.2") / "spots.geojson")
    summit = [f for f in spots if f["properties"]["kind"] == "summit" and not f["properties"]["on_rim"]]
    assert [f["geometry"]["coordinates"] for f in summit] == [[500012.0, 5800012.0, 102.0]]
    assert summit[0]["properties"]["text"] == "102.00"
    assert summit[0]["properties"]["unit"] == "m"


def test_spot_heights_are_told_in_the_unit_of_the_contours(tmp_path):
    spots = features(made(tmp_path, "--smooth", "0.2", "--interval-unit", "ft") / "spots.geojson")
    summit = next(f for f in spots if not f["properties"]["on_rim"])
    assert summit["properties"]["height"] == pytest.approx(102 / 0.3048)  # NIST SP 811
    assert summit["properties"]["height_m"] == 102.0
    assert summit["geometry"]["coordinates"][2] == 102.0  # EPSG:25832 is in metres


# Grid


def read_asc(path):
    """Head and heights, nan where there is none; read as the format is described, with Python alone."""
    lines = path.read_text(encoding="ascii").splitlines()
    head = {name: float(value) for name, value in (line.split() for line in lines[:6])}
    heights = np.array([[float(word) for word in line.split()] for line in lines[6:]])
    assert heights.shape == (head["nrows"], head["ncols"])
    heights[heights == head["NODATA_value"]] = np.nan
    return head, heights


def test_the_grid_holds_the_surface_at_the_cell_centres(tmp_path):
    out = made(tmp_path, "--dem", "0.75")
    head, heights = read_asc(out / "dem.asc")
    assert head["cellsize"] == 0.75
    assert (out / "dem.prj").read_text().startswith("PROJCS")
    east = head["xllcorner"] + 0.75 * (np.arange(head["ncols"]) + 0.5)
    north = head["yllcorner"] + 0.75 * (np.arange(head["nrows"])[::-1] + 0.5)
    places = np.column_stack([a.ravel() for a in np.meshgrid(east, north)])
    true = heights_at(read_2dm(out / "surface.2dm"), places).reshape(heights.shape)
    np.testing.assert_allclose(heights, true, rtol=0, atol=0.00006)
    assert np.isnan(heights).any() != np.isfinite(heights).all()


def test_gdal_reads_the_grid(tmp_path):
    gdal = pytest.importorskip("osgeo.gdal")
    gdal.UseExceptions()
    out = made(tmp_path, "--dem", "0.4")
    head, heights = read_asc(out / "dem.asc")
    source = gdal.Open(str(out / "dem.asc"))
    assert source.GetDriver().ShortName == "AAIGrid"
    west, cell, _, north, _, down = source.GetGeoTransform()
    assert (west, cell, down) == (head["xllcorner"], 0.4, -0.4)
    assert north == pytest.approx(head["yllcorner"] + 0.4 * head["nrows"], abs=1e-6)
    assert "25832" in str(source.GetSpatialRef().GetAuthorityCode(None)) or "UTM" in source.GetSpatialRef().GetName()
    band = source.GetRasterBand(1)
    read = band.ReadAsArray().astype(float)
    read[read == band.GetNoDataValue()] = np.nan
    np.testing.assert_allclose(read, heights, rtol=0, atol=1e-4)


def test_a_grid_in_feet_has_cells_and_heights_in_feet(tmp_path):
    """EPSG:2263 is in US survey feet, 1200/3937 m (NIST SP 811); lengths on the command line are metres."""
    foot = 1200 / 3937
    lines = hill(east=300000.0, north=60000.0, factor=foot)
    out = made(tmp_path, "--dem", "2", lines=lines, crs=("--crs", "EPSG:2263"), interval="0.5")
    head, heights = read_asc(out / "dem.asc")
    assert head["cellsize"] == pytest.approx(2 / foot)
    assert head["xllcorner"] == pytest.approx(300000 / foot, abs=2 / foot)
    assert np.nanmax(heights) == pytest.approx(102 / foot, abs=1)
    assert np.nanmin(heights) > 99 / foot


def test_bands_of_a_grid_fit_together(tmp_path, monkeypatch):
    whole = read_asc(made(tmp_path, "--dem", "0.3") / "dem.asc")
    monkeypatch.setattr("plugin.core.handover.grid._CELLS", 500)
    parts = read_asc(made(tmp_path, "--dem", "0.3") / "dem.asc")
    assert parts[0] == whole[0]
    np.testing.assert_allclose(parts[1], whole[1], rtol=0, atol=0.00011)


def test_a_large_grid_is_told(tmp_path):
    assert large_grid(GridFrame(0, 0, 1, 2000, 2500)) == ()
    (word,) = large_grid(GridFrame(0, 0, 1, 4000, 4000))
    assert "4000 x 4000 cells" in str(word)
    assert "144 MB" in str(word)
    survey = write(tmp_path / "hill.csv", hill())
    settings = JobSettings(survey, tmp_path, ContourOptions(0.5), "EPSG:25832", dem=0.005, check=False)
    assert "larger cell" in str(compute(settings).remarks[-1])  # nothing is written here


# Thinning


def test_the_thinned_surface_is_within_its_tolerance(tmp_path, capsys):
    out = made(tmp_path, "--thin", "0.1")
    full, thin = read_2dm(out / "surface.2dm"), read_2dm(out / "surface_thin.2dm")
    assert len(thin.vertices) < 0.8 * len(full.vertices)
    off = heights_at(thin, full.vertices[:, :2] + full.origin) - full.vertices[:, 2]
    worst = np.abs(off).max()
    assert 0 < worst <= 0.1 + 1e-6
    assert f"at most {worst:.3f} m off" in capsys.readouterr().out
    assert (out / "surface_thin.prj").read_bytes() == (out / "surface.prj").read_bytes()


# Edits, rim, crossings


def edits_file(path, *edits):
    path.write_text(json.dumps({"format": "hummock edits", "version": 1, "edits": edits}), encoding="utf-8")
    return str(path)


def test_edits_shape_the_surface_and_those_that_do_not_apply_are_told(tmp_path, capsys):
    point, nowhere = [500004.0, 5800006.0], [400000.0, 5800006.0]
    edits = edits_file(
        tmp_path / "edits.json",
        {"edit": "move_point", "place": point, "height": 105.5},
        {"edit": "add_point", "place": [500005.3, 5800005.1], "height": 98.25},
        {"edit": "move_point", "place": nowhere, "height": 1.0},
    )
    tin = read_2dm(made(tmp_path, "--edits", edits) / "surface.2dm")
    assert heights_at(tin, np.array([point, [500005.3, 5800005.1]])) == pytest.approx([105.5, 98.25])
    assert len(tin.vertices) == 145
    said = capsys.readouterr().out
    assert "Edits     2 of 3 applied" in said
    assert "Edit 3 (move_point) does not apply" in said


def test_edits_that_are_no_edits_are_told_in_one_line(tmp_path, capsys):
    survey = write(tmp_path / "hill.csv", hill())
    (tmp_path / "edits.json").write_text('{"format": "hummock edits",\n"version": 1, "edits": [{"edit": "paint"}]}')
    assert run(survey, tmp_path / "out", "--edits", str(tmp_path / "edits.json")) == 2
    (line,) = told(capsys)
    assert "edits.json" in line
    assert "line 2" in line
    assert not set(os.listdir(tmp_path / "out") if (tmp_path / "out").exists() else []) - {"job.json", "stages"}


def test_the_rim_is_trimmed_as_asked(tmp_path):
    lines = [*hill(), "far,500052,5800011,100,"]
    areas = {}
    for name, more in {
        "none": (),
        "edge": ("--rim-edge", "10"),
        "radius": ("--rim-radius", "5"),
        "passes": ("--rim-passes", "2"),
        "angle": ("--rim-angle", "100"),
    }.items():
        (tmp_path / name).mkdir()
        areas[name] = read_2dm(made(tmp_path / name, *more, lines=lines) / "surface.2dm").plan_area
    assert areas["none"] > 22.0**2 + 300
    assert areas["edge"] == areas["radius"] == areas["passes"] == pytest.approx(22.0**2)
    assert areas["angle"] <= areas["none"]


@pytest.mark.parametrize(("rule", "height"), [("mean", 100.5), ("first", 100.0)])
def test_crossing_lines_are_joined_by_the_rule(tmp_path, rule, height):
    # Moved by half a metre: they cross where no survey point is, whose height would count.
    lines = [
        line.replace("5800003,", "5800003.5,").replace("5800017,", "5800017.5,") for line in breaklines(100.0, 101.0)
    ]
    out = made(tmp_path, "--crossings", rule, lines=lines)
    assert heights_at(read_2dm(out / "surface.2dm"), np.array([[500010.0, 5800010.5]])) == pytest.approx([height])


def test_the_tolerance_of_crossings_counts(tmp_path, capsys):
    lines = breaklines(100.0, 100.2)
    made(tmp_path, "--crossing-tolerance", "0.25", lines=lines)
    capsys.readouterr()
    survey = write(tmp_path / "hill.csv", lines)
    assert run(survey, tmp_path / "other", "--crossing-tolerance", "0.15") == 2
    assert "crossings" in told(capsys)[0]


# Findings


def test_a_spike_is_found_and_told_with_its_place(tmp_path, capsys):
    lines = hill(side=20)
    name, east, north, height, code = lines[207].split(",")
    lines[207] = ",".join([name, east, north, str(float(height) + 1.5), code])
    out = made(tmp_path, lines=lines)
    assert "Findings  " in capsys.readouterr().out
    with open(out / "findings.csv", encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    (spike,) = (row for row in rows if row["kind"] == "spike")
    assert (float(spike["easting"]), float(spike["northing"])) == (float(east), float(north))
    assert float(spike["value"]) == pytest.approx(1.5, abs=0.1)
    assert spike["unit"] == "m"
    assert spike["text"].startswith("Spike at")


def test_a_clean_surface_has_an_empty_table_of_findings(tmp_path):
    text = (made(tmp_path) / "findings.csv").read_text(encoding="utf-8")
    assert text == "easting,northing,kind,value,unit,text\n"


# Wrong options


@pytest.mark.parametrize(
    ("more", "words"),
    [
        (("--scale", "500"), ["--scale", "--smooth"]),
        (("--calm", "0.01"), ["--calm", "--smooth"]),
        (("--smooth", "-1"), ["--smooth", "-1"]),
        (("--smooth", "little"), ["--smooth", "little"]),
        (("--dem", "0"), ["--dem", "0"]),
        (("--dem", "0.00001"), ["cell", "larger"]),
        (("--thin", "nan"), ["--thin", "nan"]),
        (("--rim-radius", "0"), ["--rim-radius"]),
        (("--crossings", "lowest"), ["--crossings", "lowest", "refuse"]),
        (("--crossing-tolerance", "-0.1"), ["--crossing-tolerance"]),
        (("--edits", "nowhere.json"), ["nowhere.json"]),
    ],
)
def test_wrong_options_are_told_in_one_line(tmp_path, capsys, more, words):
    survey = write(tmp_path / "hill.csv", hill())
    assert run(survey, tmp_path / "out", *more) == 2
    (line,) = told(capsys)
    for word in words:
        assert word in line
    assert not set(os.listdir(tmp_path / "out") if (tmp_path / "out").exists() else []) - {"job.json", "stages"}


def test_all_at_once_is_the_same_again(tmp_path):
    more = ("--smooth", "0.25", "--calm", "0.01", "--dem", "1", "--thin", "0.05", "--rim-angle", "165")
    for name in ("one", "two"):
        (tmp_path / name).mkdir()
        made(tmp_path / name, *more)
    one, other = (sorted((tmp_path / name / "out").iterdir()) for name in ("one", "two"))
    assert [path.name for path in one] == [path.name for path in other]
    assert {"job.json", "stages", "surface_thin.2dm", "report.html"} <= {path.name for path in one}
    for a, b in zip(one, other):
        if a.name in ("job.json", "stages"):
            continue  # they hold the folder of the survey
        assert a.read_bytes() == b.read_bytes(), a.name
