"""The demo lane: its grade breaks 1:20 for about the first 15 m, against the true ground in closed form."""

import sys
from pathlib import Path

import numpy as np
import pytest

from plugin.core.alignment.checks import check_line
from plugin.core.alignment.crowns import find_lane, plain_lane
from plugin.core.alignment.grades import crossfalls, grades, reach
from plugin.core.alignment.indications import check_gutter, fall_to_kerb
from plugin.core.alignment.line import check_same_crs, make_alignment
from plugin.core.alignment.parts import Part, part_slopes
from plugin.core.alignment.profile import make_profile
from plugin.core.alignment.rules import default_rules
from plugin.core.alignment.sections import cut_sections, section_distances
from plugin.core.alignment.slopes import HeightNoise
from plugin.core.alignment.verdicts import Verdict
from plugin.core.georeference.crs import projected_crs
from plugin.core.linework.codes import default_code_table
from plugin.core.linework.join import join_lines
from plugin.core.points.decisions import apply_decisions, read_decisions
from plugin.core.points.delimited import read_points
from plugin.core.surface.build import SurfaceOptions, build_surface

TEST_DATA = Path(__file__).parents[2] / "test_data"
sys.path.insert(0, str(TEST_DATA))
import ground  # noqa: E402  the demo's own script, beside its data

DEMO = TEST_DATA / "demo"
#: Noise of a height in the demo: 15 mm, of which 7 mm drift over a minute or two.
SIGMA, DRIFT, DRIFT_TIME = 0.015, 0.007, 90.0


@pytest.fixture(scope="module")
def centreline():
    ogr = pytest.importorskip("osgeo.ogr")
    from pyproj import CRS

    source = ogr.Open(str(DEMO / "site.gpkg"))
    layer = source.GetLayerByName("centreline")
    crs = CRS.from_wkt(layer.GetSpatialRef().ExportToWkt())
    feature = layer.GetNextFeature()  # it owns its geometry
    return np.array(feature.GetGeometryRef().GetPoints())[:, :2], crs


@pytest.fixture(scope="module")
def tin():
    points = read_points(DEMO / "survey.csv", crs=projected_crs("EPSG:25832")).points
    points, _ = apply_decisions(points, read_decisions(DEMO / "decisions.csv"))
    work = join_lines(points, default_code_table())
    return build_surface(work.points, work.constraints, SurfaceOptions(max_rim_edge=10.0)).tin


@pytest.fixture(scope="module")
def noise(tin):
    """The demo's noise, with the time of each vertex that is a point."""
    time = read_points(DEMO / "survey.csv", crs=projected_crs("EPSG:25832")).points.time
    own = np.where(tin.vertex_source >= 0, time[tin.vertex_source], np.nan)
    return HeightNoise(np.sqrt(SIGMA**2 - DRIFT**2), DRIFT, DRIFT_TIME, own)


@pytest.fixture(scope="module")
def lane(centreline, tin):
    xy, crs = centreline
    check_same_crs(crs, tin.crs)
    line = make_alignment(xy, "Perry Lane")
    assert line.messages == ()
    return line


def true_station(line, distance):
    """Station of the scenario, 0 where x = 0."""
    return ground.lane_place(*ground.to_site(*line.places(np.asarray(distance, float)).T))[0]


def test_profile_is_near_the_true_ground(lane, tin):
    profile = make_profile(lane, [("survey", tin)])
    distance = np.linspace(1, lane.length - 1, 400)
    error = profile.surfaces[0].heights(distance) - ground.true_height(*lane.places(distance).T)
    assert np.sqrt(np.nanmean(error**2)) < 0.02
    assert np.mean(np.isfinite(error)) > 0.99


def test_grades_are_those_of_the_scenario_within_their_doubt(lane, tin, noise):
    found = grades(lane, tin, noise, 5.0)
    station = true_station(lane, found.middle)
    truth = -0.0525 + 0.00017 * station  # the centreline's height is a parabola: its mean grade is that of the middle
    fine = np.isfinite(found.value)
    assert fine.sum() >= len(found) - 2
    normed = ((found.value - truth) / found.sigma)[fine]
    assert np.abs(normed).max() < 3.5
    assert 0.6 < np.sqrt(np.mean(normed**2)) < 1.4


def test_the_first_metres_break_one_in_twenty(lane, tin):
    """Heights 91.3 - 0.0525 s + 0.000085 s^2: steeper than 1:20 up to station 14.7."""
    rule = next(rule for rule in default_rules() if "1016.7.1" in rule.source)
    result = check_line(lane, tin, SIGMA, [rule], plain_lane(-2.3, 2.3), reach(lane, tin, (-2.3, 2.3)))
    steep = grades(lane, tin, SIGMA, 15.0)
    assert abs(steep.value[0]) > 0.05
    for stretch in result.stretches:
        station = true_station(lane, [stretch.begin, stretch.end])
        if stretch.verdict is Verdict.FAIL:
            assert station[0] < 14.7
        if stretch.verdict is Verdict.PASS:
            assert station[1] > 14.7
    length = result.lengths(rule)
    assert length[Verdict.PASS] > 60
    assert length[Verdict.TOO_CLOSE] > 5  # 0.25 % over the limit at most, and points of 15 mm
    assert sum(length.values()) == pytest.approx(lane.length)


def test_crossfall_is_two_percent_to_the_left_kerb(lane, tin, noise):
    """The scenario's lane falls 2 % towards its left. Its passes drift apart, which the points' noise alone hides."""
    found = crossfalls(lane, tin, noise, -2.3, 2.3, 10.0)
    normed = ((found.value - ground.CROSSFALL) / found.sigma)[1:-1]
    assert np.abs(normed).max() < 3
    assert np.sqrt(np.mean(normed**2)) < 1.5
    alone = crossfalls(lane, tin, SIGMA, -2.3, 2.3, 10.0)
    assert np.all(alone.sigma < found.sigma)
    within = reach(lane, tin, (-2.3, 2.3))
    across = part_slopes(lane, tin, noise, find_lane(lane, tin, noise, -2.3, 2.3, within), 10.0, within=within)
    assert not across.crowned.any(), "the lane has one fall"
    assert set(fall_to_kerb(across, Part.LEFT).verdict[1:-1]) == {Verdict.PASS}


def test_the_gutter_falls_all_the_way(lane, tin):
    gutter = check_gutter(lane, tin, SIGMA, -2.2)
    assert gutter.low_points == ()
    judged = gutter.verdict[[v is not Verdict.NO_SURFACE for v in gutter.verdict]]
    assert Verdict.FAIL not in set(judged)


def test_sections_have_both_kerbs(lane, tin):
    distance = section_distances(lane, 10.0)
    made = cut_sections(lane, distance, 4.0, 4.0, [("survey", tin)])
    assert made.crossings == ()
    for i in np.flatnonzero((distance > 15) & (distance < 42)):
        ((offset, height),) = made.cuts[0].parts(int(i))
        for side in (-1, 1):
            foot, top = np.interp([2.45, 2.65] if side > 0 else [-2.45, -2.65], offset, height)
            assert top - foot == pytest.approx(ground.KERB_FACE, abs=0.06)
