"""Walking plans: closed forms on rectangles, shapely as outside reference on crooked areas with holes."""

from __future__ import annotations

import json
import math
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.stats import norm

from plugin.core.messages import SurveyError
from plugin.core.quality import plan as p
from plugin.core.quality.interval import surface_error
from plugin.core.quality.plan import LineUse, Terrain, WalkOptions, plan_walk
from plugin.core.quality.walk_area import WalkArea, path_length
from plugin.core.quality.walk_order import cells_of, to_and_fro

shapely = pytest.importorskip("shapely")

DEMO = Path(__file__).resolve().parents[2] / "test_data" / "demo"
OFFSET = np.array([432_000.0, 5_765_000.0])
RECTANGLE = np.array([(0, 0), (100, 0), (100, 40), (0, 40)], float) + OFFSET
HOLE = np.array([(40, 10), (60, 10), (60, 30), (40, 30)], float) + OFFSET
#: Open to the east, so that passes to the north are cut in two.
BAY = np.array([(0, 0), (100, 0), (100, 40), (40, 40), (40, 70), (110, 70), (110, 110), (0, 110)], float) + OFFSET


def star(seed, corners=14):
    """A crooked ring about the origin and a crooked hole in it."""
    rng = np.random.default_rng(seed)
    # One corner in each sector: a gap of half a turn would let the ring cross itself.
    angle = (np.arange(corners) + rng.uniform(0, 0.99, corners)) * 2 * np.pi / corners
    out = rng.uniform(40, 100, corners)
    ring = np.column_stack([out * np.cos(angle), out * np.sin(angle)])
    turn = np.linspace(0, 2 * np.pi, 7, endpoint=False) + rng.uniform(0, 1)
    hole = (rng.uniform(4, 11, 7) * np.array([np.cos(turn), np.sin(turn)])).T
    inner = shapely.Polygon(ring).buffer(-0.5)
    return [ring + OFFSET, hole + OFFSET] if inner.contains(shapely.Polygon(hole)) else [ring + OFFSET]


def polygon(rings):
    return shapely.Polygon(rings[0], list(rings[1:]))


def of(plan, use):
    return [line for line in plan.lines if line.use is use]


def test_passes_over_a_rectangle():
    plan = plan_walk([RECTANGLE], WalkOptions(spacing=8, cross_passes=0))
    assert plan.direction == pytest.approx(90)
    assert plan.spacing == pytest.approx(8)
    passes = of(plan, LineUse.PASS)
    assert [line.name for line in passes] == ["P01", "P02", "P03", "P04"]
    assert sorted(float(line.xy[0, 1] - OFFSET[1]) for line in passes) == pytest.approx([8, 16, 24, 32])
    assert all(line.length == pytest.approx(99.5) for line in passes)  # both ends drawn in by half a step
    east = [np.sign(line.xy[1, 0] - line.xy[0, 0]) for line in passes]
    assert all(a == -b for a, b in zip(east, east[1:]))  # to and fro
    assert plan.length_of(LineUse.PERIMETER) == pytest.approx(280)
    # From the south-west corner to the first pass, and three times across to the next one.
    assert plan.length_of(LineUse.LINK) == pytest.approx(math.hypot(0.25, 8) + 3 * 8)
    assert plan.distance == pytest.approx(280 + 4 * 99.5 + math.hypot(0.25, 8) + 24)
    assert plan.turns == 3 + 4
    assert plan.seconds == pytest.approx(plan.distance / 1.2 + 7 * 3)
    assert plan.points == (561 + 4 * 200) + (16 + 3 * 16)
    assert plan.area == pytest.approx(4000)
    assert plan.crossings == 0


def test_every_line_begins_where_the_one_before_ended():
    for rings in ([RECTANGLE, HOLE], [BAY], star(3)):
        plan = plan_walk(rings, WalkOptions(spacing=7))
        for one, other in zip(plan.lines, plan.lines[1:]):
            np.testing.assert_allclose(one.xy[-1], other.xy[0], atol=1e-5)


def test_the_spacing_is_evened_out_and_never_more():
    plan = plan_walk([RECTANGLE], WalkOptions(spacing=9))
    assert plan.spacing == pytest.approx(8)
    bare = plan_walk([RECTANGLE], WalkOptions(spacing=9, perimeter=False, cross_passes=0))
    north = sorted(float(line.xy[0, 1] - OFFSET[1]) for line in of(bare, LineUse.PASS))
    assert north == pytest.approx([4, 12, 20, 28, 36])
    assert not of(bare, LineUse.PERIMETER)
    narrow = plan_walk([RECTANGLE], WalkOptions(spacing=50))
    assert (narrow.count_of(LineUse.PASS), narrow.count_of(LineUse.CROSS)) == (0, 0)


@settings(max_examples=40, deadline=None)
@given(st.integers(0, 10**9), st.sampled_from([None, 0.0, 37.0, 90.0, 211.0]), st.floats(3, 15))
def test_no_place_is_farther_from_a_line_than_half_the_spacing(seed, direction, spacing):
    rings = star(seed)
    options = WalkOptions(spacing=spacing, direction=direction)
    plan = plan_walk(rings, options)
    area = polygon(rings)
    walked = shapely.MultiLineString([line.xy for line in plan.lines if line.use in (LineUse.PERIMETER, LineUse.PASS)])
    places = shapely.points(np.random.default_rng(seed).uniform(-100, 100, (1500, 2)) + OFFSET)
    places = places[shapely.contains(area, places)]
    assert shapely.distance(walked, places).max() <= plan.spacing / 2 + options.step
    assert plan.area == pytest.approx(area.area, rel=1e-9)


@settings(max_examples=40, deadline=None)
@given(st.integers(0, 10**9), st.floats(3, 15), st.booleans())
def test_all_lines_and_links_stay_in_the_area(seed, spacing, perimeter):
    rings = star(seed)
    plan = plan_walk(rings, WalkOptions(spacing=spacing, perimeter=perimeter))
    around = polygon(rings).buffer(1e-5)
    for line in plan.lines:
        assert around.covers(shapely.LineString(line.xy)), line


@settings(max_examples=40, deadline=None)
@given(st.integers(0, 10**9), st.floats(0, 360), st.floats(2, 12))
def test_chords_are_those_of_shapely(seed, direction, spacing):
    rings = star(seed)
    area = WalkArea(rings)
    west, east, low, high = area.extent(direction)
    across = np.arange(low + 0.37, high, spacing)
    chords = area.chords(direction, across)
    whole = polygon(rings)
    for number, offset in enumerate(across):
        ends = area.from_frame(np.array([[west - 1, offset], [east + 1, offset]]), direction) + area.origin
        expected = whole.intersection(shapely.LineString(ends)).length
        mine = chords.line == number
        assert (chords.end - chords.start)[mine].sum() == pytest.approx(expected, abs=1e-6)
    order = to_and_fro(chords, (0.0, 0.0))
    assert sorted(each.chord for each in order) == list(range(len(chords)))
    assert sorted(chord for cell in cells_of(chords) for chord in cell) == list(range(len(chords)))


def test_a_hole_cuts_the_passes_into_cells():
    area = WalkArea([RECTANGLE, HOLE])
    chords = area.chords(90.0, np.arange(3.0, 40, 4) + area.extent(90.0)[2])
    # Of the lines at 3, 7, ... 39 m those at 11, 15, 19, 23 and 27 are in two.
    assert len(chords) == 10 + 5
    assert sorted(len(cell) for cell in cells_of(chords)) == [2, 3, 5, 5]


def test_a_link_goes_round_a_hole_the_shorter_way():
    area = WalkArea([RECTANGLE, HOLE])
    way = area.way(np.array([30.0, 12.0]), np.array([70.0, 12.0]))
    np.testing.assert_allclose(way, [(30, 12), (40, 12), (40, 10), (60, 10), (60, 12), (70, 12)])
    assert path_length(way) == pytest.approx(44)
    np.testing.assert_allclose(area.way(np.array([1.0, 1.0]), np.array([99.0, 2.0])), [(1, 1), (99, 2)])


def test_an_island_in_a_hole_is_walked_too():
    island = np.array([(48, 18), (52, 18), (52, 22), (48, 22)], float) + OFFSET
    area = WalkArea([RECTANGLE, HOLE, island])
    assert area.area == pytest.approx(4000 - 400 + 16)
    plan = plan_walk([RECTANGLE, HOLE, island], WalkOptions(spacing=3))
    assert plan.count_of(LineUse.PERIMETER) == 3
    centre = shapely.Polygon(island).centroid
    assert min(shapely.LineString(line.xy).distance(centre) for line in of(plan, LineUse.PASS)) < 1.5


@pytest.mark.parametrize("turn", [0.0, 20.0, 77.0, 140.0])
def test_passes_run_along_the_longest_side(turn):
    angle = np.radians(turn)
    rotate = np.array([[np.cos(angle), np.sin(angle)], [-np.sin(angle), np.cos(angle)]])  # clockwise by ``turn``
    rectangle = np.array([(0, 0), (30, 0), (30, 100), (0, 100)], float) @ rotate.T
    assert WalkArea([rectangle + OFFSET]).longest_side() % 180 == pytest.approx(turn, abs=1e-6)
    assert plan_walk([rectangle], WalkOptions(spacing=5, direction=200.0)).direction == pytest.approx(20)


@pytest.mark.parametrize("terrain", list(Terrain))
@pytest.mark.parametrize("interval", [0.1, 0.25, 0.5])
def test_the_spacing_gives_the_interval_wanted(terrain, interval):
    options = WalkOptions(interval=interval, curvature=terrain.value, widest=1000)
    spacing, said = p.wanted_spacing(options)
    assert surface_error(options.sigma, terrain.value, spacing) == pytest.approx(interval / 3)
    assert [each.text.code for each in said] == ["plan.from_interval", "plan.from_error"]
    plan = plan_walk([RECTANGLE], options)
    assert plan.error <= interval / 3 + 1e-12
    assert plan.interval <= interval + 1e-12


def test_limits_to_the_spacing():
    spacing, said = p.wanted_spacing(WalkOptions(error=1.0))
    assert spacing == 20
    assert said[-1].text is p.CAPPED
    assert p.wanted_spacing(WalkOptions(error=1.0, smallest_form=3.0))[0] == 1.5
    assert p.wanted_spacing(WalkOptions(spacing=33.0)) == (33.0, [])
    with pytest.raises(SurveyError, match="cannot be had") as caught:
        plan_walk([RECTANGLE], WalkOptions(error=0.015, sigma=0.02))
    assert caught.value.values["least"] == pytest.approx(0.02 * (2 / 3) ** 0.5)


def test_cross_passes_for_repeatability():
    plan = plan_walk([RECTANGLE], WalkOptions(spacing=2))
    # 19 passes: 5 cross passes give 95 crossings, at least the 85 that tell a standard deviation to 15 %.
    assert plan.count_of(LineUse.PASS) == 19
    assert (plan.count_of(LineUse.CROSS), plan.crossings) == (5, 95)
    east = sorted(float(line.xy[0, 0] - OFFSET[0]) for line in of(plan, LineUse.CROSS))
    assert east == pytest.approx([10, 30, 50, 70, 90])
    percent = next(each.values["percent"] for each in plan.messages if each.text is p.REPEATS)
    assert percent == pytest.approx(100 * norm.ppf(0.975) / math.sqrt(190))
    many = plan_walk([RECTANGLE], WalkOptions(spacing=1))
    assert many.count_of(LineUse.CROSS) == math.ceil(85 / 39)
    assert plan_walk([RECTANGLE, HOLE], WalkOptions(spacing=8, cross_passes=1)).crossings == 2  # at x = 50: 8 and 32
    passes = shapely.MultiLineString([line.xy for line in of(plan, LineUse.PASS)])
    cross = shapely.MultiLineString([line.xy for line in of(plan, LineUse.CROSS)])
    assert len(shapely.get_parts(passes.intersection(cross))) == plan.crossings


def test_eighty_five_differences_tell_a_deviation_to_fifteen_percent():
    sample = np.random.default_rng().normal(size=(4000, 85))
    off = np.abs(np.sqrt(np.mean(sample**2, axis=1)) - 1)
    assert np.mean(off < 0.15) == pytest.approx(0.95, abs=0.02)


def test_driving_is_faster_and_turns_take_time():
    walking = plan_walk([RECTANGLE], WalkOptions(spacing=4))
    driving = plan_walk([RECTANGLE], WalkOptions(spacing=4, speed=3.0, turn_time=15.0))
    assert driving.distance == pytest.approx(walking.distance)
    assert driving.seconds == pytest.approx(walking.distance / 3.0 + 15.0 * walking.turns)


def test_the_walk_begins_where_the_user_stands():
    start = tuple(OFFSET + np.array([97.0, 44.0]))
    plan = plan_walk([RECTANGLE], WalkOptions(spacing=8, start=start))
    np.testing.assert_allclose(plan.lines[0].xy[0], OFFSET + np.array([100, 40]))
    bare = plan_walk([RECTANGLE], WalkOptions(spacing=8, start=start, perimeter=False))
    np.testing.assert_allclose(bare.lines[0].xy[0], OFFSET + np.array([99.75, 36]))


def test_the_demo_site():
    """It was walked about 4.4 m apart; the plan for the same spacing takes about as many auto-recorded points."""
    scenario = json.loads((DEMO / "scenario.json").read_text(encoding="utf-8"))
    rings = [np.array(scenario["boundary"]), np.array(scenario["void"])]
    plan = plan_walk(rings, WalkOptions(spacing=4.4))
    assert plan.area == pytest.approx(polygon(rings).area)
    assert len({round(float(line.xy[0] @ [0.19, -0.98]), 1) for line in of(plan, LineUse.PASS)}) >= 20
    assert 5000 < plan.points < 9000
    assert 0.5 * 3600 < plan.seconds < 1.5 * 3600


@pytest.mark.parametrize(
    ("rings", "code"),
    [
        ([], "plan.no_rings"),
        ([RECTANGLE[:2]], "plan.no_area"),
        ([np.array([(0, 0), (1, 1), (2, 2)], float)], "plan.no_area"),
        ([np.array([(0, 0), (1, np.nan), (2, 2)], float)], "plan.not_finite"),
    ],
)
def test_areas_that_are_none(rings, code):
    with pytest.raises(SurveyError) as caught:
        plan_walk(rings, WalkOptions(spacing=5))
    assert caught.value.code == code


@pytest.mark.parametrize(
    "options",
    [{"spacing": -1.0}, {"interval": 0.0}, {"spacing": 5.0, "speed": 0.0}, {"spacing": 5.0, "step": math.nan},
     {"spacing": 5.0, "curvature": 0.0}, {"spacing": 5.0, "cross_passes": -1}, {"spacing": 5.0, "direction": math.inf}],
)  # fmt: skip
def test_options_are_checked(options):
    with pytest.raises(SurveyError) as caught:
        plan_walk([RECTANGLE], WalkOptions(**options))
    assert caught.value.values["option"] in options


def test_one_thing_must_be_wanted_and_only_one():
    for options in (WalkOptions(), WalkOptions(interval=0.5, error=0.1)):
        with pytest.raises(SurveyError) as caught:
            plan_walk([RECTANGLE], options)
        assert caught.value.code == "plan.nothing_wanted"
    with pytest.raises(SurveyError) as caught:
        plan_walk([RECTANGLE], WalkOptions(spacing=0.001))
    assert caught.value.code == "plan.too_many"


def test_a_closing_corner_makes_no_difference():
    closed = np.vstack([RECTANGLE, RECTANGLE[:1]])
    one, other = (plan_walk([ring], WalkOptions(spacing=6)) for ring in (RECTANGLE, closed))
    assert (one.distance, one.points, one.turns) == (other.distance, other.points, other.turns)


def test_an_area_smaller_than_a_pass_is_its_perimeter_or_nothing():
    small = np.array([(0, 0), (3, 0), (3, 2), (0, 2)], float)
    plan = plan_walk([small], WalkOptions(interval=0.25))
    assert [line.use for line in plan.lines] == [LineUse.PERIMETER]
    assert plan.distance == pytest.approx(10.0)
    assert [each.text.code for each in plan.messages][-1] == "plan.only_perimeter"
    with pytest.raises(SurveyError) as caught:
        plan_walk([small / 10], WalkOptions(interval=0.25, perimeter=False))
    assert caught.value.code == "plan.too_small"
    assert "0.5 m" in str(caught.value)
