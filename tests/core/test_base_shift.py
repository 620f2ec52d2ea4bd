"""A base corrected afterwards: every point moves by one vector in space, and what that cannot tell is said."""

import numpy as np
import pytest
from pyproj import CRS, Transformer

from plugin.core.georeference.base_shift import correct_base, parse_base, parse_position, shift_to_control
from plugin.core.georeference.control import ControlPoints
from plugin.core.georeference.record import Step
from plugin.core.messages import SurveyError
from plugin.core.points.pointset import make_points
from plugin.core.points.questions import QuestionError

UTM32 = CRS.from_epsg(25832)


def rovers(base, vectors, crs=UTM32):
    """Points measured by geocentric vectors from a base (latitude, longitude, height), through PROJ."""
    geographic, earth = CRS.from_epsg(4937), CRS.from_epsg(4936)
    there = Transformer.from_crs(geographic, earth, always_xy=True)
    plan = Transformer.from_crs(geographic, CRS.from_epsg(25832).to_3d(), always_xy=True)
    lat, lon, up = base
    at = np.array(there.transform(lon, lat, up)) + vectors
    lon, lat, up = there.transform(*at.T, direction="INVERSE")
    east, north, height = plan.transform(lon, lat, up)
    names = np.array([f"p{i}" for i in range(len(vectors))], object)
    return make_points(east, north, height, name=names, crs=crs, source="s.csv")


def grid(base):
    there = Transformer.from_crs(CRS.from_epsg(4937), CRS.from_epsg(25832).to_3d(), always_xy=True)
    return np.array(there.transform(base[1], base[0], base[2]))


@pytest.mark.parametrize("error", [1e-6, 1e-4, 8e-4])
@pytest.mark.parametrize("reach", [300.0, 20_000.0])
def test_points_are_those_that_the_right_base_would_have_given(error, reach):
    """Against PROJ: the same vectors from the right base. A shift in the grid would be wrong by centimetres."""
    rng = np.random.default_rng(1)
    vectors = rng.normal(0, reach, (30, 3))
    wrong, right = (50.2, 7.1, 150.0), (50.2 + error, 7.1 - error, 150.0 + 2e4 * error)
    before, after = rovers(wrong, vectors), rovers(right, vectors)
    words = [",".join(f"{value:.6f}" for value in grid(base)) for base in (wrong, right)]
    done = correct_base(before, parse_base(*words, UTM32, sure=True))
    for column in ("easting", "northing", "height"):
        np.testing.assert_allclose(getattr(done.points, column), getattr(after, column), rtol=0, atol=2e-5)
    assert done.record.step is Step.BASE_SHIFT
    said = [str(one) for one in done.record.statements]
    assert any("the same vector in space" in one for one in said)
    assert any("cannot tell a rotation, a scale or a tilt" in one for one in said)
    if error > 1e-4 and reach > 1000:
        flat = np.column_stack((before.easting, before.northing)) + (grid(right) - grid(wrong))[:2]
        assert np.abs(flat - np.column_stack((after.easting, after.northing))).max() > 0.02


def test_degrees_with_letters_are_the_same_as_the_grid():
    before = rovers((50.2, 7.1, 150.0), np.random.default_rng(2).normal(0, 100, (5, 3)))
    plan = correct_base(before, parse_base(*(",".join(f"{v:.6f}" for v in grid(b)) for b in BASES), UTM32))
    words = [f"{lat:.9f}N,{lon:.9f}E,{up}" for lat, lon, up in BASES]
    degrees = correct_base(before, parse_base(*words, UTM32))
    np.testing.assert_allclose(degrees.points.easting, plan.points.easting, rtol=0, atol=2e-4)
    np.testing.assert_allclose(degrees.points.height, plan.points.height, rtol=0, atol=2e-4)


BASES = ((50.2, 7.1, 150.0), (50.20001, 7.10002, 151.2))


def test_one_known_point_will_do():
    before = rovers((50.2, 7.1, 150.0), np.random.default_rng(3).normal(0, 500, (20, 3)))
    after = rovers((50.20001, 7.10002, 151.2), np.random.default_rng(3).normal(0, 500, (20, 3)))
    known = ControlPoints(
        np.array(["p4"], object), after.easting[4:5], after.northing[4:5], after.height[4:5], np.array([2]), "k.csv"
    )
    done = shift_to_control(before, known)
    np.testing.assert_allclose(done.points.easting, after.easting, rtol=0, atol=1e-5)
    np.testing.assert_allclose(done.points.height, after.height, rtol=0, atol=1e-5)
    assert "the known point p4 lies where it is known" in str(done.record.statements[0])


def test_a_known_point_without_a_height_leaves_heights():
    before = rovers((50.2, 7.1, 150.0), np.random.default_rng(4).normal(0, 50, (5, 3)))
    known = ControlPoints(
        np.array(["p1"], object), before.easting[1:2] + 3, before.northing[1:2], np.array([np.nan]), np.array([2])
    )
    done = shift_to_control(before, known)
    np.testing.assert_array_equal(done.points.height, before.height)
    assert done.points.easting[1] == pytest.approx(before.easting[1] + 3, abs=1e-6)
    assert any("Heights are taken over as they are" in str(one) for one in done.record.statements)


def test_several_known_points_that_do_not_agree_are_refused():
    before = rovers((50.2, 7.1, 150.0), np.random.default_rng(5).normal(0, 400, (8, 3)))
    turned = ControlPoints(
        before.name, before.easting - 1e-2 * (before.northing - before.northing[0]), before.northing, before.height,
        np.arange(8), "k.csv",
    )  # fmt: skip
    with pytest.raises(QuestionError, match="do not agree on one shift") as raised:
        shift_to_control(before, turned)
    assert [answer.typed for answer in raised.value.questions[0].answers] == [
        "--control-fit plan",
        "--control-as as-read",
    ]
    shift_to_control(before, turned, sure=True)


def test_a_large_shift_is_asked_and_a_far_base_refused():
    before = rovers((50.2, 7.1, 150.0), np.random.default_rng(6).normal(0, 100, (5, 3)))
    base = grid((50.2, 7.1, 150.0))
    here = ",".join(f"{v:.3f}" for v in base)
    there = f"{base[0] + 5000:.3f},{base[1]:.3f},{base[2]:.3f}"
    with pytest.raises(QuestionError, match="more than a base is put wrong by"):
        correct_base(before, parse_base(here, there, UTM32))
    done = correct_base(before, parse_base(here, there, UTM32, sure=True))
    assert done.points.easting[0] == pytest.approx(before.easting[0] + 5000, abs=2.0)
    with pytest.raises(SurveyError, match="too far for a base"):
        correct_base(before, parse_base(f"{base[1]:.3f},{base[0]:.3f}", f"{base[1]:.3f},{base[0]:.3f}", UTM32))


def test_on_a_local_grid_it_is_a_plain_shift():
    local = make_points([0.0, 10.0], [0.0, 5.0], [1.0, 2.0], source="s.csv")
    done = correct_base(local, parse_base("1,2,3", "1.5,1,3.25", None))
    assert done.points.easting.tolist() == [0.5, 10.5]
    assert done.points.northing.tolist() == [-1.0, 4.0]
    assert done.points.height.tolist() == [1.25, 2.25]


@pytest.mark.parametrize(
    ("text", "crs", "said"),
    [
        ("1", UTM32, "--base-was must be"), ("1,2,3,4", UTM32, "must be"), ("a,b", UTM32, "must be"),
        ("51N,9N", UTM32, "must be"), ("95N,9E", UTM32, "must be"), ("nan,2", UTM32, "must be"),
        ("51N,9E", None, "local grid"), ("1e12,5", UTM32, "must be"),
    ],
)  # fmt: skip
def test_positions_that_are_none(text, crs, said):
    with pytest.raises(SurveyError, match=said):
        parse_position(text, "--base-was", crs)


def test_positions_in_both_ways_and_feet():
    assert parse_position(" 9.0 E , 51.5 n ", "--x", UTM32)[:2] == (51.5, 9.0)
    assert parse_position("33.5S,70.25W,520", "--x", UTM32) == (-33.5, -70.25, 520.0, True)
    assert parse_position("1000,2000,10", "--x", CRS.from_epsg(2225)).first == pytest.approx(1000 * 1200 / 3937)
    assert parse_base("", " ", UTM32) is None
    for was, now, said in (("1,2", "", "two positions"), ("1,2,3", "1,2", "both have a height")):
        with pytest.raises(SurveyError, match=said):
            parse_base(was, now, UTM32)
