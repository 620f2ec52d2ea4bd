"""What is told of a graded design: axis, sections, doubt, haul, balance, page; pads out of GeoJSON; the job."""

import base64
import json
import re
import subprocess
import sys
import xml.etree.ElementTree as ET
from pathlib import Path

import numpy as np
import pytest
from pyproj import CRS, Transformer

from plugin.core.earthwork.graded_site import site_of_pads, site_of_strip
from plugin.core.earthwork.grading_study import study_grading, with_balance
from plugin.core.earthwork.pad import grade_pad
from plugin.core.earthwork.pad_file import read_pads
from plugin.core.earthwork.pads import PadDesign, grade_pads
from plugin.core.earthwork.plane import Plane
from plugin.core.earthwork.side_slopes import Corner, SideSlopes
from plugin.core.earthwork.strip import HalfSection, TypicalSection, grade_strip, strip_lines
from plugin.core.earthwork.study import Certainty, StudyOptions
from plugin.core.georeference.operations import find_operations
from plugin.core.handover.mesh import read_2dm
from plugin.core.messages import SurveyError
from plugin.core.report.grading_page import write_grading_page
from plugin.core.surface.locate import heights_at
from tests.core.earthworks import balanced_pad, square, surface
from tests.core.surfaces import ORIGIN, random_tin

ROOT = Path(__file__).parents[2]
MITRE = SideSlopes(2, 3, Corner.MITRE)
PAD = square(20, 0, (40, 40))[:, :2] + ORIGIN
OPTIONS = StudyOptions(existing=Certainty(0.02), offset_sigma=0.01)
TILTED = np.array([[0, 0, 0], [100, 0, 10], [100, 100, 10], [0, 100, 0.0]])


def pads(ground, level, *more, slopes=MITRE):
    return site_of_pads(ground, grade_pads(ground, [PadDesign("A", (PAD,), Plane(level), slopes), *more]))


def test_axis_runs_from_fill_to_cut():
    site = pads(surface(TILTED), 5.0, slopes=SideSlopes(2, 2))
    way = site.axis[1] - site.axis[0]
    assert np.arctan2(way[1], way[0]) == pytest.approx(0, abs=1e-2)  # uphill, east
    assert site.axis.mean(axis=0)[1] - ORIGIN[1] == pytest.approx(50, abs=0.1)
    design = site.design.vertices[:, :2] + site.design.origin
    along = (design - site.axis[0]) @ (way / np.hypot(*way))
    assert along.min() > 0
    assert along.max() < np.hypot(*way)
    assert not site.is_strip


def test_study_of_a_frustum():
    ground = surface(square(100, 10.0))
    found = study_grading(pads(ground, 12.0), OPTIONS)
    fill = 2 / 3 * (20**2 + 32**2 + 20 * 32)
    assert found.study.doubt.fill.value == pytest.approx(fill, rel=1e-8)
    assert found.study.doubt.fill.systematic == pytest.approx(0.01 * 32**2, rel=1e-6)
    assert found.study.volume.existing_only == pytest.approx(100**2 - 32**2, rel=1e-6)
    along, across = found.sections
    for section in (along, across):
        (s, z), (t, w) = section.design[0], section.ground[0]
        depth = np.interp(s, t, w)
        up = z - depth
        assert np.sum(np.diff(s) * (up[1:] + up[:-1]) / 2) == pytest.approx((20 + 32) / 2 * 2, rel=1e-6)
    methods = {str(check.method).split(" every")[0]: check for check in found.study.checks}
    assert set(methods) >= {"average end areas", "prismoidal formula"}
    assert methods["prismoidal formula"].exact_fill == pytest.approx(fill, rel=1e-6)
    assert abs(methods["prismoidal formula"].fill_difference) < 0.03 * fill
    assert found.site.messages == ()


def test_balance_of_a_study(tmp_path):
    ground = surface(TILTED)
    slopes = SideSlopes(2, 2)
    balance = balanced_pad(ground, PAD, 4.0, slopes, factor=0.9)
    found = study_grading(pads(ground, 4.0 + balance.shift, slopes=slopes), OPTIONS)

    def at(shift):
        return grade_pad(ground, PAD, 4.0 + shift, slopes).volume

    whole = with_balance(found, balance, 4.0, at, 0.9, 0.0, reach=0.5).balanced
    assert whole.height == pytest.approx(4.0 + balance.shift)
    assert whole.curve.shift[[0, -1]] == pytest.approx([balance.shift - 0.5, balance.shift + 0.5])
    assert np.all(np.diff(whole.curve.rest) < 0)
    assert np.interp(balance.shift, whole.curve.shift, whole.curve.rest) == pytest.approx(0, abs=1e-3)
    assert whole.sigma > 0.01
    page = tmp_path / "page.html"
    write_grading_page(with_balance(found, balance, 4.0, at, 0.9, 0.0), page, "Yard <1>")
    text = page.read_text(encoding="utf-8")
    assert "Grading: Yard &lt;1&gt;" in text
    for said in (
        "not a design for construction",
        "Slope stability",
        "buried services",
        "local codes",
        "Balance of cut",
    ):
        assert said in text
    assert f"{4.0 + balance.shift:.3f} ±" in text
    assert f"{found.study.doubt.cut.value:.1f}" in text
    pictures = re.findall(r"data:image/(png|svg\+xml);base64,([A-Za-z0-9+/=]+)", text)
    assert len(pictures) == 6  # plan, balance, two sections, depth map, histogram
    for kind, data in pictures:
        if kind != "png":
            ET.fromstring(base64.b64decode(data))
    again = tmp_path / "again.html"
    write_grading_page(with_balance(found, balance, 4.0, at, 0.9, 0.0), again, "Yard <1>")
    assert again.read_bytes() == page.read_bytes()


def test_a_strip_is_told_with_its_haul(tmp_path):
    """z = x / 10 made level at 5 along x: fill on the first half, cut on the second, hauled back."""
    ground = surface(TILTED)
    line = np.array([[20, 50], [80, 50.0]]) + ORIGIN
    half = HalfSection(((3.0, 0.0),), None, ("lane",))
    section = TypicalSection(half, half, SideSlopes(2, 2))
    profile = np.array([[0, 5], [60, 5.0]])
    graded = grade_strip(ground, line, profile, section, 5.0)
    site = site_of_strip(ground, graded, line, strip_lines(line, profile, section, ground, 5.0))
    assert site.is_strip
    assert site.half_width >= 3 + 2 * 3
    found = study_grading(site, OPTIONS, step=5.0)
    assert found.haul.station[-1] == pytest.approx(60)
    assert found.haul.cut.sum() + found.haul.beside_cut == pytest.approx(graded.volume.cut, rel=1e-6)
    (haul,) = [each for each in found.haul.hauls if each.volume > 1]
    assert not haul.forward
    assert haul.volume == pytest.approx(graded.volume.cut, rel=1e-3)
    assert len(found.sections) == 7
    profile_cut = found.sections[0]
    assert profile_cut.design[0][1] == pytest.approx(5.0)
    cross = found.sections[3]
    (s, z) = cross.design[0]
    assert np.interp(cross.centre, s, z) == pytest.approx(5.0)
    # the exact volume agrees with the section areas' sum along the line where the strip is prismatic enough
    checks = [check for check in found.study.checks if "prismoidal" in str(check.method)]
    assert checks[0].cut == pytest.approx(checks[0].exact_cut, rel=1e-3)
    page = tmp_path / "strip.html"
    write_grading_page(found, page, "Path")
    text = page.read_text(encoding="utf-8")
    assert "Mass diagram" in text
    assert "steep end" in text


def test_sites_of_several_pads_on_rough_ground():
    ground = random_tin(1500, 3)
    other = PadDesign("B", (square(12, 0, (70, 10))[:, :2] + ORIGIN,), Plane(103.0), SideSlopes(1.5, 1.5))
    site = pads(ground, 102.0, other, slopes=SideSlopes(1.5, 1.5))
    found = study_grading(site, OPTIONS)
    assert found.study.doubt.cut.value == pytest.approx(site.volume.cut, rel=1e-4)
    assert found.study.doubt.fill.value == pytest.approx(site.volume.fill, rel=1e-4)
    place = np.array([[50, 50], [76, 16]]) + ORIGIN
    assert heights_at(site.design, place) == pytest.approx([102, 103])


# Pads out of a file


def geojson(path, features, crs="urn:ogc:def:crs:EPSG::25832"):
    data = {"type": "FeatureCollection", "features": features}
    if crs:
        data["crs"] = {"type": "name", "properties": {"name": crs}}
    path.write_text(json.dumps(data))
    return path


def feature(rings, kind="Polygon", **properties):
    return {"type": "Feature", "properties": properties, "geometry": {"type": kind, "coordinates": rings}}


RING = [[548300.0, 5712400.0], [548320.0, 5712400.0], [548320.0, 5712410.0], [548300.0, 5712400.0]]


def test_pads_are_read_with_their_properties(tmp_path):
    both = [feature([RING], name="Yard", level=3, fall="1.5"), feature([[RING]] * 2, "MultiPolygon")]
    file = geojson(tmp_path / "pad.geojson", both)
    found, said = read_pads(file, CRS("EPSG:25832"))
    assert said == ()  # nothing was done to the coordinates
    assert [shape.name for shape in found] == ["Yard", "1", "2"]
    assert found[0].numbers == {"level": 3.0, "fall": 1.5}
    assert found[0].rings[0].tolist() == RING
    plain = geojson(tmp_path / "plain.geojson", [feature([RING])], "")
    assert read_pads(plain, None).shapes[0].rings[0].tolist() == RING
    # feet: coordinates of the file in the unit of the CRS, the core in metres
    feet = geojson(tmp_path / "ft.geojson", [feature([RING])], "EPSG:2263")
    assert read_pads(feet, CRS("EPSG:2263")).shapes[0].rings[0][0, 0] == pytest.approx(548300 * 1200 / 3937)


def test_pads_in_degrees_are_brought_over(tmp_path):
    """RFC 7946: no member crs means longitude and latitude in WGS 84; against pyproj's own transformation."""
    back = Transformer.from_crs("EPSG:25832", "OGC:CRS84", always_xy=True)
    ring = np.column_stack(back.transform(*np.array(RING).T)).tolist()
    rings = [feature([ring, ring]), feature([ring])]
    found, said = read_pads(geojson(tmp_path / "pad.geojson", rings, ""), CRS("EPSG:25832"))
    assert [len(shape.rings) for shape in found] == [2, 1]
    for shape in found:
        for brought in shape.rings:
            assert brought == pytest.approx(np.array(RING), abs=1e-3)
    (text,) = map(str, said)
    assert text.startswith(f"{tmp_path / 'pad.geojson'}: Positions transformed from WGS 84")
    assert "accuracy stated by PROJ: 1 m" in text


@pytest.mark.parametrize("crs", ["", "urn:ogc:def:crs:OGC:1.3:CRS84"])
def test_pads_by_a_coarse_operation_wait_for_the_users_word(tmp_path, crs):
    """WGS 84 to NAD83 in Minnesota: 4 m without a grid file, 2 m with one."""
    file = geojson(tmp_path / "pad.geojson", [feature([[[-93, 45], [-92.999, 45], [-93, 45.001]]])], crs)
    target = CRS("EPSG:26915")
    ready, lacking = find_operations(CRS(4326), target, (-93.1, 45.0, -93.0, 45.1))
    if not any(one.missing_grids for one in lacking):
        pytest.skip("this PROJ has the grid")
    with pytest.raises(SurveyError, match=r"pad\.geojson: From WGS 84.* Install the file, or accept"):
        read_pads(file, target)
    said = read_pads(file, target, [ready[0].name]).messages
    assert ready[0].name in str(said[0])
    assert "the user accepted it by its name" in str(said[1])


def test_pads_that_have_no_place_in_the_crs_are_refused(tmp_path):
    """Plan coordinates in a file that says they are degrees, as one written without its CRS does."""
    with pytest.raises(SurveyError, match=r"pad\.geojson: not all .* WGS 84"):
        read_pads(geojson(tmp_path / "pad.geojson", [feature([RING])], ""), CRS("EPSG:25832"))


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("{", "line 1: this is no GeoJSON"),
        ('{"type": "FeatureCollection", "features": []}', "no polygons"),
        (json.dumps(feature([0, 0], "Point")), "feature 1: Point is no polygon"),
        (json.dumps(feature([[["a", 1]]])), "no polygon of coordinates"),
        (json.dumps(feature([RING], level="high")), "level is “high”"),
        (json.dumps(feature([RING], level=True)), "level is “True”"),
        (json.dumps(feature([[]])), "feature 1: null is no polygon"),
        (json.dumps(feature([RING, []])), "no polygon of coordinates"),
        (
            json.dumps({**feature([[[1, 2], [3, 2], [3, 4]]]), "crs": {"properties": {"name": "moon"}}}),
            "“[^”]*[Mm]oon[^”]*” is not understood here",
        ),
        ("[]", "null is no polygon"),
    ],
)
def test_files_that_hold_no_pads(tmp_path, text, what):
    file = tmp_path / "pad.geojson"
    file.write_text(text)
    with pytest.raises(SurveyError, match=what):
        read_pads(file, CRS("EPSG:25832"))
    with pytest.raises(SurveyError, match="cannot be read"):
        read_pads(tmp_path / "none.geojson", None)
    with pytest.raises(SurveyError, match="local grid"):
        read_pads(geojson(file, [feature([RING])]), None)


# The job


def run(tmp_path, *more):
    """The job on level ground at 50 m, a point every 2 m."""
    east, north = (axis.ravel() for axis in np.meshgrid(np.arange(0, 61.0, 2), np.arange(0, 61.0, 2)))
    survey = tmp_path / "survey.csv"
    rows = [f"{548290 + e},{5712390 + n},{50 + 0.1 * e:.3f}" for e, n in zip(east, north)]
    survey.write_text("easting,northing,height\n" + "\n".join(rows) + "\n")
    ring = (square(20, 0, (20, 20))[:, :2] + [548290, 5712390]).tolist()
    pad = geojson(tmp_path / "pad.geojson", [feature([[*ring, ring[0]]], name="Yard")])
    command = [sys.executable, "-m", "plugin.core", str(survey), "--crs", "EPSG:25832", "--interval", "0.5"]
    command += ["--no-check", "--out", str(tmp_path / "out")]
    done = subprocess.run(
        [*command, *(str(pad) if word == "PAD" else word for word in more)], cwd=ROOT, capture_output=True, text=True
    )
    return done, tmp_path / "out"


def test_job_grades_a_pad_where_it_balances(tmp_path):
    """Amid a plane that rises 10 %, with equal slopes, by symmetry at the plane's height in the middle: 53 m."""
    done, out = run(tmp_path, "--pad", "PAD", "--pad-level", "balance", "--cut-slope", "1.5", "--fill-slope", "1.5")
    assert done.returncode == 0, done.stderr
    height = float(re.search(r"Balance   at ([0-9.]+) ±", done.stdout).group(1))
    assert height == pytest.approx(53.0, abs=1e-3)
    for name in ("pad.2dm", "pad.prj", "pad_finished.2dm", "daylight.geojson", "pad_lines.geojson"):
        assert (out / name).exists()
        assert name in done.stdout
    design = read_2dm(out / "pad.2dm", CRS("EPSG:25832"))
    assert heights_at(design, np.array([[548320.0, 5712420.0]])) == pytest.approx(53.0, abs=1e-3)
    lines = json.loads((out / "daylight.geojson").read_text())
    kinds = {each["properties"]["kind"] for each in lines["features"]}
    assert kinds == {"top_of_cut", "toe_of_fill"}
    place = np.vstack([each["geometry"]["coordinates"] for each in lines["features"]])
    assert np.abs(50 + 0.1 * (place[:, 0] - 548290) - place[:, 2]).max() < 2e-3
    report = (out / "report.html").read_text(encoding="utf-8")
    assert 'id="grading"' in report
    assert "not a design for construction" in report


def test_job_at_a_level_and_what_it_refuses(tmp_path):
    done, out = run(tmp_path, "--pad", "PAD", "--pad-level", "52", "--pad-fall", "2", "--pad-towards", "90")
    assert done.returncode == 0, done.stderr
    design = read_2dm(out / "pad.2dm", CRS("EPSG:25832"))
    places = np.array([[548315.0, 5712420.0], [548325.0, 5712420.0]])
    assert heights_at(design, places) == pytest.approx([52.1, 51.9], abs=1e-3)
    for more, what in (
        (["--pad", "PAD"], "nothing says how high Yard is"),
        (["--cut-slope", "2"], "--cut-slope is for grading"),
        (["--pad", "PAD", "--pad-level", "high"], "--pad-level must be a number"),
        (["--pad", "none.geojson", "--pad-level", "3"], "none.geojson: it cannot be read"),
    ):
        done, _ = run(tmp_path, *more)
        assert done.returncode == 2
        assert what in done.stderr
        assert "Traceback" not in done.stderr
