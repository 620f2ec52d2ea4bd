"""Stations along a line and places beside it, against shapely and cases worked by hand."""

import numpy as np
import pytest
import shapely
from pyproj import CRS

from plugin.core.alignment.line import check_same_crs, make_alignment
from plugin.core.alignment.stations import format_station
from plugin.core.messages import SurveyError
from plugin.core.units import LengthUnit

CORNER = np.array([[0.0, 0.0], [100.0, 0.0], [100.0, 80.0]])  # east, then north
FAR = np.array([432_000.0, 5_765_000.0])


def winding(seed=0, n=40):
    rng = np.random.default_rng(seed)
    heading = np.cumsum(rng.uniform(-0.3, 0.3, n))
    step = rng.uniform(1, 8, n)[:, None] * np.column_stack([np.cos(heading), np.sin(heading)])
    return FAR + np.vstack([[0, 0], np.cumsum(step, axis=0)])


def test_distance_and_offset_agree_with_shapely():
    line = make_alignment(winding())
    assert line.messages == ()
    curve = shapely.linestrings(line.xy)
    rng = np.random.default_rng(1)
    xy = line.xy[rng.integers(0, len(line.xy), 500)] + rng.uniform(-15, 15, (500, 2))
    distance, offset = line.locate(xy)
    points = shapely.points(xy)
    np.testing.assert_allclose(np.abs(offset), shapely.distance(points, curve), atol=1e-8)
    nearest = shapely.get_coordinates(shapely.line_interpolate_point(curve, distance))
    np.testing.assert_allclose(np.hypot(*(nearest - xy).T), np.abs(offset), atol=1e-7)
    assert line.length == pytest.approx(shapely.length(curve), abs=1e-9)


def test_there_and_back():
    line = make_alignment(winding(2))
    rng = np.random.default_rng(3)
    distance, offset = rng.uniform(0, line.length, 300), rng.uniform(-1.5, 1.5, 300)
    xy = line.places(distance, offset)
    again, beside = line.locate(xy)
    np.testing.assert_allclose(line.places(again, beside), xy, atol=1e-8)
    away = np.min(np.abs(distance[:, None] - line.at), axis=1) > 1.0  # clear of the bends' inner sides
    assert np.count_nonzero(away) > 100
    np.testing.assert_allclose(again[away], distance[away], atol=1e-7)
    np.testing.assert_allclose(beside[away], offset[away], atol=1e-7)


def test_direction_at_a_vertex_is_the_bisector():
    line = make_alignment(CORNER)
    half = np.sqrt(0.5)
    np.testing.assert_allclose(line.directions([0, 50, 100, 150, 180]), [[1, 0], [1, 0], [half, half], [0, 1], [0, 1]])
    # right of a line that turns left is the outside: south-east of the corner
    np.testing.assert_allclose(line.places([100.0], 2.0), [[100 + 2 * half, -2 * half]])
    assert line.locate([[103.0, -4.0], [97.0, 10.0], [-3.0, 4.0]]) == (
        pytest.approx([100, 110, 0]), pytest.approx([5, -3, -5])
    )  # fmt: skip


def test_a_parallel_keeps_its_distance_from_both_segments():
    line = make_alignment(CORNER)
    np.testing.assert_allclose(line.between(50, 140, 3.0), [[50, -3], [103, -3], [103, 40]], atol=1e-12)
    np.testing.assert_allclose(line.between(50, 140, -3.0), [[50, 3], [97, 3], [97, 40]], atol=1e-12)


def test_stations_in_feet_with_equations():
    """Back 5+00 = ahead 10+00 (500 ft skipped), then back 12+00 = ahead 11+00 (100 ft numbered twice)."""
    foot = 0.3048
    line = make_alignment([[0, 0], [1000 * foot, 0]], "A", 100.0, [(500.0, 1000.0), (1200.0, 1100.0)], LengthUnit.FOOT)
    n = line.numbering
    assert n.stations(np.array([0, 399.9, 400, 500, 600, 1000]) * foot) == pytest.approx(
        [100, 499.9, 1000, 1100, 1100, 1500]
    )
    assert n.distance(250) == pytest.approx(150 * foot)
    assert n.distance(500) == n.distance(1000) == pytest.approx(400 * foot)  # back and ahead: one place
    assert n.distance(1050) == pytest.approx(450 * foot)
    with pytest.raises(SurveyError, match=r"has station 11\+50.00 more than once, in the numberings 2, 3"):
        n.distance(1150)
    assert (n.distance(1150, part=1), n.distance(1150, part=2)) == (
        pytest.approx(550 * foot), pytest.approx(650 * foot)
    )  # fmt: skip
    with pytest.raises(SurveyError, match=r"no station 7\+00.00; its stations are 1\+00.00 – 5\+00.00, 10\+00.00"):
        n.distance(700)
    hundreds = np.array([0, 100, 200, 300, 400, 400, 500, 600, 600, 700, 800, 900, 1000]) * foot
    np.testing.assert_allclose(n.multiples(100.0), hundreds, atol=1e-9)


@pytest.mark.parametrize("equations", [[(50.0, 0.0)], [(1200.0, 0.0)], [(600.0, 0.0), (600.0, 900.0)], [(500, np.nan)]])
def test_equations_off_the_line_are_refused(equations):
    with pytest.raises(SurveyError, match=r"station equation .* is not on the line"):
        make_alignment([[0, 0], [1000, 0]], "A", 100.0, equations)


@pytest.mark.parametrize(
    ("station", "unit", "text"),
    [
        (1234.5, LengthUnit.METRE, "1+234.50"),
        (999.999, LengthUnit.METRE, "1+000.00"),
        (-12.3, LengthUnit.METRE, "-0+012.30"),
        (-0.001, LengthUnit.METRE, "0+000.00"),
        (1234.5, LengthUnit.FOOT, "12+34.50"),
        (7.0, LengthUnit.US_SURVEY_FOOT, "0+07.00"),
    ],
)
def test_how_stations_are_written(station, unit, text):
    assert format_station(station, unit) == text


def test_repeated_vertices_are_left_out_and_said():
    line = make_alignment([[0, 0, 5], [0, 0, 6], [0, 0, 7], [10, 0, 8], [10, 0, 9]], "A")
    assert len(line.xy) == 2
    assert line.length == 10
    assert [m.text.code for m in line.messages] == ["alignment.vertices_dropped"]
    assert line.messages[0].values["count"] == 3


@pytest.mark.parametrize(
    ("xy", "said"),
    [
        ([[3, 4], [3, 4], [3, 4]], "has no length: all its 3 vertices"),
        ([[3, 4]], "has no length"),
        ([], "has no length: all its 0 vertices"),
        ([[0, 0], [np.nan, 1]], "vertex 2 has no finite"),
        ([[0, 0], [100, 0], [50, 0]], r"doubles back on itself at station 0\+100.00 \(E 100.000 N 0.000\)"),
        ([[0, 0], [10, 0], [10, 0.00001], [0, 0.00001]], "doubles back"),
    ],
)
def test_lines_that_are_refused(xy, said):
    with pytest.raises(SurveyError, match=said):
        make_alignment(np.array(xy, float), "Hill Road")


def test_a_sharp_bend_is_no_doubling_back():
    assert make_alignment([[0, 0], [100, 0], [0, 2.0]]).length == pytest.approx(200.02, abs=0.01)


def test_a_line_that_meets_itself_is_told():
    line = make_alignment([[0, 0], [20, 0], [20, 10], [10, 10], [10, -10]], "Loop")
    assert len(line.touches) == 1
    touch = line.touches[0]
    assert (touch.first, touch.second) == (pytest.approx(10), pytest.approx(50))
    np.testing.assert_allclose(touch.xy, [10, 0])
    assert "meets itself once, at stations 0+010.00 and 0+050.00" in str(line.messages[0])
    assert line.locate([[10.0, 0.0]])[0][0] == pytest.approx(10)  # the lower of two stations
    closed = make_alignment([[0, 0], [20, 0], [20, 10], [0, 10], [0, 0]])
    assert [(t.first, t.second) for t in closed.touches] == [(0, 60)]
    along = make_alignment([[0, 0], [20, 0], [20, 5], [12, 5], [12, 0], [4, 0]])  # back along itself for 8 m
    assert along.touches


def test_touches_agree_with_shapely():
    rng, tried = np.random.default_rng(4), 0
    for _ in range(20):
        xy = rng.uniform(0, 50, (12, 2))
        try:
            line = make_alignment(xy)
        except SurveyError:
            continue  # a turn of more than 179.5 degrees by chance
        tried += 1
        segments = shapely.linestrings(np.stack([xy[:-1], xy[1:]], axis=1))
        expected = sum(shapely.intersects(segments[i], segments[i + 2 :]).sum() for i in range(len(segments) - 2))
        assert len(line.touches) == expected
    assert tried > 15


def test_line_and_surface_in_one_crs():
    check_same_crs(None, None)
    check_same_crs(CRS("EPSG:25832"), CRS("EPSG:25832+7837"))  # heights differ, the plan is one
    with pytest.raises(SurveyError, match=r"is in ETRS89 / UTM zone 33N but the surface in ETRS89 / UTM zone 32N"):
        check_same_crs(CRS("EPSG:25833"), CRS("EPSG:25832"))
    with pytest.raises(SurveyError, match="but the surface in a local grid"):
        check_same_crs(CRS("EPSG:25832"), None)
