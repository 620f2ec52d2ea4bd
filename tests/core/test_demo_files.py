"""Every file that ``make demo`` leaves, opened by readers that are not ours: counts, extents and CRS are the core's.

The readers are those of tests/qgis/independent.py: fiona, rasterio, trimesh, pypdf, sha256sum, Python's own of CSV and
HTML, in a process with their own GDAL and PROJ.
"""

from __future__ import annotations

import collections
import dataclasses
import json
import os
import shlex
import subprocess
import sys
from pathlib import Path
from typing import Any, Callable, Dict

import numpy as np
import pytest

from plugin.core.__main__ import make_parser
from plugin.core.arguments.settings import job_settings
from plugin.core.earthwork.design_lines import DAYLIGHT_KINDS
from plugin.core.job.run import run_job
from plugin.core.points.pointset import Status

ROOT = Path(__file__).parents[2]
PROGRAM = ROOT / "tests" / "qgis" / "independent.py"
EPSG = 25832
PLACE = 6e-5  # m: GeoJSON has four decimals


@pytest.fixture(scope="module")
def demo(tmp_path_factory):
    """The result of the command of ``make demo``, word for word, but into a folder of the test."""
    out = tmp_path_factory.mktemp("demo")
    said = subprocess.run(
        ["make", "-n", "demo", f"OUT={out}"], cwd=ROOT, capture_output=True, text=True, check=True
    ).stdout
    (words,) = [shlex.split(line) for line in said.replace("\\\n", " ").splitlines() if "-m plugin.core " in line]
    options = make_parser().parse_args(words[words.index("plugin.core") + 1 :])
    before = Path.cwd()
    os.chdir(ROOT)
    try:
        return run_job(job_settings(options))
    finally:
        os.chdir(before)


@pytest.fixture(scope="module")
def folder(demo):
    return demo.files[0].parent


@pytest.fixture(scope="module")
def opened(folder) -> Dict[str, Any]:
    """What the independent readers say of each file."""
    clean = {name: value for name, value in os.environ.items() if not name.startswith(("PROJ", "GDAL"))}
    ran = subprocess.run(
        [sys.executable, str(PROGRAM), "folder", str(folder)], capture_output=True, text=True, env=clean
    )
    assert ran.returncode == 0, ran.stderr
    return json.loads(ran.stdout.splitlines()[-1])


#: What is known of each file, by its name.
CHECKS: Dict[str, Callable[[Dict[str, Any], Any], None]] = {}


def of(*names):
    def keep(check):
        CHECKS.update(dict.fromkeys(names, check))
        return check

    return keep


def test_no_file_is_left_unopened(demo, folder, opened):
    left = {path.name for path in folder.iterdir()} - {"stages"}  # what is kept for a later run
    assert left == {*CHECKS, "job.json"}
    assert set(opened) == left
    assert {path.name for path in demo.files} == left


@pytest.mark.parametrize("name", CHECKS)
def test_the_file_holds_what_the_core_knows(opened, demo, name):
    CHECKS[name](opened[name], demo)


def answer(result, kind):
    (found,) = [each for each in result.answers if type(each).__name__ == kind]
    return found


def numbers(found, column):
    """A column of a table; nan for empty cells."""
    return np.array([float(value) if value not in ("", None) else np.nan for value in found["values"][column]])


def same_plan(found, xy):
    """The extent is that of the places xy (n, 2), the CRS that of the survey."""
    assert found["crs"] == EPSG
    np.testing.assert_allclose(found["bounds"], [xy.min(axis=0), xy.max(axis=0)], atol=PLACE)


def same_lines(found, lines):
    """Lines (n, 2) or (n, 3) each: as many, of as many vertices, of the same extent and heights."""
    assert found["geometries"] == {"LineString": len(lines)}
    assert found["vertices"] == sum(len(line) for line in lines)
    assert found["invalid"] == []
    every = np.concatenate(lines)
    same_plan(found, every[:, :2])
    if every.shape[1] == 3:
        np.testing.assert_allclose(found["heights"], [every[:, 2].min(), every[:, 2].max()], atol=PLACE)
    else:
        assert found["heights"] is None


@of("lines_found.geojson")
def check_found_lines(found, result):
    """The demo has codes; its points show no other lines, and the file says so."""
    assert len(result.ground_lines.lines) == 0
    assert (found["count"], found["bounds"], found["crs"]) == (0, None, EPSG)


# Points


@of("points.csv")
def check_points(found, result):
    points = result.points
    assert found["ragged"] == []
    assert found["count"] == len(points)
    for column in ("easting", "northing", "height", "line"):
        own = getattr(points, column if column != "line" else "source_line")
        np.testing.assert_allclose(numbers(found, column), own, atol=1e-9)
    status = collections.Counter(found["values"]["status"])
    assert status == {each.name.lower(): int(np.count_nonzero(points.status == each)) for each in Status}


@of("rejects.csv")
def check_rejects(found, result):
    rejects = result.survey.rejects
    text = (ROOT / "test_data" / "demo" / "survey.csv").read_text(encoding="utf-8").splitlines()
    assert found["ragged"] == []
    assert found["values"]["line"] == [str(line) for line in rejects.line]
    assert found["values"]["text"] == [text[line - 1] for line in rejects.line]
    assert found["count"] == result.survey.account.rejects


@of("survey_findings.csv")
def check_survey_findings(found, result):
    findings = result.check.findings
    assert found["ragged"] == []
    assert found["count"] == len(findings)
    assert sum(numbers(found, "points")) == sum(len(each.indices) for each in findings)
    middle = np.array([result.points.easting.min(), result.points.easting.max()])
    assert (numbers(found, "easting") >= middle[0]).all()
    assert (numbers(found, "easting") <= middle[1]).all()


@of("tolerances.json")
def check_tolerances(found, result):
    (told,) = found["content"]
    own = {key: value for key, value in dataclasses.asdict(result.check.tolerances).items() if value is not None}
    assert told == {key: list(value) if isinstance(value, tuple) else value for key, value in own.items()}
    assert {"name", "sigma_h", "sigma_v"} <= set(told)


@of("surface.noise.json", "surface_thin.noise.json")
def check_noise(found, result):
    told, noise = found["content"], result.check.noise
    assert told["mesh"] in ("surface.2dm", "surface_thin.2dm")
    assert told["drift_m"] == pytest.approx(noise.drift, abs=1e-5)
    assert np.hypot(told["sigma_m"], told["drift_m"]) == pytest.approx(noise.total, abs=1e-5)


@of("places_to_walk.csv")
def check_places(found, result):
    places = result.quality.coverage.walk_again
    assert found["ragged"] == []
    assert found["values"]["name"] == list(places.name)
    for column in ("easting", "northing", "height"):
        np.testing.assert_allclose(numbers(found, column), getattr(places, column), atol=6e-4)


@of("findings.csv")
def check_findings(found, result):
    assert found["ragged"] == []
    assert found["count"] == len(result.findings)
    np.testing.assert_allclose(numbers(found, "easting"), [each.easting for each in result.findings], atol=PLACE)
    np.testing.assert_allclose(numbers(found, "northing"), [each.northing for each in result.findings], atol=PLACE)
    np.testing.assert_allclose(numbers(found, "value"), [each.value for each in result.findings], atol=PLACE)


# Surfaces


def same_mesh(found, tin):
    """As many vertices and faces, the same box, and the same area on the slope; heights have six decimals."""
    corner = tin.corners()
    area = 0.5 * np.linalg.norm(np.cross(corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]), axis=1).sum()
    assert (found["vertices"], found["faces"]) == (len(tin.vertices), len(tin.triangles))
    west, south, east, north = tin.bounds
    low, high = tin.height_range
    np.testing.assert_allclose(found["bounds"], [[west, south, low], [east, north, high]], atol=1e-6)
    assert found["area"] == pytest.approx(area, rel=1e-7)
    assert found["consistent"]


@of("surface.2dm")
def check_surface(found, result):
    same_mesh(found, result.surface.tin)


@of("surface_thin.2dm")
def check_thinned(found, result):
    same_mesh(found, result.thinned.tin)


@of("pad.2dm")
def check_pad(found, result):
    same_mesh(found, answer(result, "GradingAnswer").study.site.design)


@of("pad_finished.2dm")
def check_finished(found, result):
    same_mesh(found, answer(result, "GradingAnswer").study.site.finished)


@of("surface.prj", "surface_thin.prj", "pad.prj", "pad_finished.prj", "dem.prj")
def check_system(found, result):
    assert found["crs"] == result.crs.to_epsg() == EPSG


@of("dem.asc")
def check_grid(found, result):
    frame, tin = result.dem, result.surface.tin
    west, south, east, north = tin.bounds
    assert found["epsg"] == EPSG
    assert found["size"] == [frame.columns, frame.rows]
    left, bottom, right, top = found["bounds"]
    assert (right - left, top - bottom) == (frame.columns * 0.5, frame.rows * 0.5)
    assert left <= west < left + 0.5
    assert bottom <= south < bottom + 0.5
    assert right - 0.5 < east <= right
    assert top - 0.5 < north <= top
    assert found["nodata"] == -9999.0
    assert found["filled"] == pytest.approx(tin.plan_area / 0.25, rel=0.002)
    low, high = tin.height_range
    assert low - 1e-4 <= found["range"][0] < found["range"][1] <= high + 1e-4


# Contours and sheet


def contour_lines(contours):
    return [contours.xy[a:b] + contours.origin for a, b in zip(contours.start, contours.start[1:])]


def same_contours(found, contours):
    same_lines(found, contour_lines(contours))
    np.testing.assert_allclose(numbers(found, "level"), contours.level, atol=1e-9)
    assert found["values"]["index"] == contours.index.tolist()
    assert found["values"]["closed"] == contours.closed.tolist()
    assert found["values"]["depression"] == contours.depression.tolist()


@of("contours.geojson")
def check_contours(found, result):
    same_contours(found, result.contours)


@of("contours_sheet.geojson")
def check_sheet(found, result):
    same_contours(found, result.sheet.contours)


@of("labels.geojson")
def check_labels(found, result):
    labels = result.sheet.labels
    assert found["geometries"] == {"Point": len(labels.text)}
    assert found["values"]["text"] == list(labels.text)
    same_plan(found, labels.xy + labels.origin)


@of("spots.geojson")
def check_spots(found, result):
    spots = result.sheet.spots
    assert found["geometries"] == {"Point": len(spots.xyz)}
    same_plan(found, spots.xyz[:, :2] + spots.origin)
    np.testing.assert_allclose(found["values"]["height"], spots.xyz[:, 2], atol=6e-4)


# Water


@of("flow_paths.geojson")
def check_paths(found, result):
    study = answer(result, "WaterAnswer").study
    paths = [study.paths.path(i) for i in range(len(study.paths.end))]
    channels = [study.channels.line(i) for i in range(len(study.channels.area))]
    same_lines(found, [*(path for path in paths if len(path) > 1), *channels])
    assert found["values"]["kind"].count("channel") == len(channels) > 0


@of("ponds.geojson")
def check_ponds(found, result):
    ponds = answer(result, "WaterAnswer").study.ponds
    assert found["geometries"] == {"MultiPolygon": len(ponds.level)}
    assert found["invalid"] == []
    assert found["crs"] == EPSG
    assert sorted(numbers(found, "volume_m3")) == pytest.approx(sorted(ponds.volume), abs=PLACE)


@of("catchments.geojson")
def check_catchments(found, result):
    shares = answer(result, "WaterAnswer").study.shares
    assert found["geometries"] == {"MultiPolygon": len(shares.area)}
    assert found["invalid"] == []
    assert found["values"]["name"] == list(shares.name)
    np.testing.assert_allclose(numbers(found, "area_m2"), shares.area, atol=6e-4)
    same_plan(found, result.surface.tin.vertices[:, :2] + result.surface.tin.origin)  # they cover the surface


# Road


@of("profile.csv")
def check_profile(found, result):
    study = answer(result, "RoadAnswer").study
    assert found["ragged"] == []
    np.testing.assert_allclose(numbers(found, "distance_m"), study.stations, atol=6e-4)
    places = np.column_stack([numbers(found, "easting"), numbers(found, "northing")])
    np.testing.assert_allclose(places, study.line.places(study.stations), atol=PLACE)
    np.testing.assert_allclose(numbers(found, "height"), study.profile.surfaces[0].heights(study.stations), atol=PLACE)


@of("sections.csv")
def check_sections(found, result):
    sections = answer(result, "RoadAnswer").study.sections
    parts = [cut.parts(k) for cut in sections.cuts for k in range(len(sections.distance))]
    assert found["ragged"] == []
    assert found["count"] == sum(len(offset) for part in parts for offset, _ in part)
    offsets = np.concatenate([offset for part in parts for offset, _ in part])
    heights = np.concatenate([height for part in parts for _, height in part])
    assert sorted(set(numbers(found, "section"))) == list(range(1, len(sections.distance) + 1))
    np.testing.assert_allclose(numbers(found, "offset"), offsets, atol=PLACE)
    np.testing.assert_allclose(numbers(found, "height"), heights, atol=PLACE)


@of("checks.csv")
def check_checks(found, result):
    stretches = answer(result, "RoadAnswer").study.checks.stretches
    assert found["ragged"] == []
    assert found["values"]["verdict"] == [each.verdict.value for each in stretches]
    np.testing.assert_allclose(numbers(found, "from_m"), [each.begin for each in stretches], atol=6e-4)


def same_sheets(found, width, height):
    """Pages of A4 (ISO 216: 210 x 297 mm) with text as text in embedded fonts."""
    for page in found["pages"]:
        np.testing.assert_allclose(np.array(page) / 72 * 25.4, [width, height], atol=0.1)
    assert found["fonts"]
    assert all(font[7:8] == "+" for font in found["fonts"]), "subsets are embedded"


@of("profile.pdf")
def check_profile_sheets(found, result):
    study = answer(result, "RoadAnswer").study
    same_sheets(found, 297, 210)
    text = " ".join(" ".join(found["texts"]).split())
    heights = study.profile.surfaces[0].heights(study.stations)
    assert study.line.name in text
    for height in heights[np.isfinite(heights)]:
        assert f"{height:.2f}" in text


@of("sections.pdf")
def check_section_sheets(found, result):
    study = answer(result, "RoadAnswer").study
    same_sheets(found, 210, 297)
    text = " ".join(" ".join(found["texts"]).split())
    for distance in study.sections.distance:
        assert f"Station {study.line.label(distance)}" in text


# Earthwork


def design_lines(result):
    return answer(result, "GradingAnswer").study.site.lines


@of("pad_lines.geojson")
def check_pad_lines(found, result):
    lines = design_lines(result)
    same_lines(found, [line.xyz for line in lines])
    assert found["values"]["kind"] == [line.kind.value for line in lines]


@of("daylight.geojson")
def check_daylight(found, result):
    same_lines(found, [line.xyz for line in design_lines(result) if line.kind in DAYLIGHT_KINDS])


@of("volumes_since.csv")
def check_volumes(found, result):
    study = answer(result, "VolumeAnswer").study
    assert found["ragged"] == []
    assert found["values"]["region"][::3] == [*(each.part.name for each in study.regions), "all"]
    assert numbers(found, "volume_m3")[-3:] == pytest.approx(
        [study.doubt.cut.value, study.doubt.fill.value, study.doubt.net.value], abs=6e-4
    )
    measured = study.measured
    assert numbers(found, "triangles_m3")[-3:] == pytest.approx([measured.cut, measured.fill, measured.net], abs=6e-4)


@of("depths_since.geojson")
def check_depths(found, result):
    study = answer(result, "VolumeAnswer").study
    assert found["geometries"] == {"MultiPolygon": len([each for each in study.depths if each.area > 0])}
    assert found["invalid"] == []
    assert found["crs"] == EPSG
    area = study.volume.cut_area + study.volume.fill_area
    assert numbers(found, "area_m2").sum() == pytest.approx(area, abs=0.01)
    assert numbers(found, "volume_m3").sum() == pytest.approx(study.volume.cut + study.volume.fill, abs=0.01)


@of("zero_line_since.geojson")
def check_zero_lines(found, result):
    same_lines(found, list(answer(result, "VolumeAnswer").study.zero_lines))


@of("storage.csv")
def check_storage(found, result):
    curve = answer(result, "BasinAnswer").basin.storage.curve
    assert found["ragged"] == []
    np.testing.assert_allclose(numbers(found, "volume_m3"), [stage.volume for stage in curve], atol=6e-4)
    np.testing.assert_allclose(numbers(found, "area_m2"), [stage.area for stage in curve], atol=6e-4)


# The whole


@of("checksums.sha256")
def check_sums(found, result):
    assert found["fine"]
    assert found["said"] == [f"{each.path.name}: OK" for each in result.handed_over]
    others = {path.name for path in result.files} - {each.path.name for each in result.handed_over}
    assert others == {"report.html", "checksums.sha256", "job.json"}  # the report prints the sums


@of("report.html")
def check_report(found, result):
    assert found["wrong"] == []
    assert found["outside"] == [], "the report needs nothing but itself"
    assert found["counts"]["table"] > 10
    assert found["counts"]["img"] > 5
    for each in result.handed_over:
        assert each.path.name in found["text"]
        assert each.sha256 in found["text"].replace(" ", "")
    points, triangles = (f"{len(each):,}".replace(",", " ") for each in (result.points, result.surface.tin.triangles))
    assert f"From {points} points of survey.csv" in found["text"]
    assert f"a surface of {triangles} triangles" in found["text"]
