"""Strips with corners and bends, against GEOS's parallels and a raster; ``HUMMOCK_PAIRS`` says how many strips."""

import os

import numpy as np
import pytest
from shapely.geometry import LineString, Polygon

from plugin.core.earthwork.centreline import line_length
from plugin.core.earthwork.combine import combine
from plugin.core.earthwork.grading import PLATFORM
from plugin.core.earthwork.side_slopes import Corner, SideSlopes
from plugin.core.earthwork.strip import Ditch, HalfSection, TypicalSection, grade_strip, strip, strip_lines
from plugin.core.messages import SurveyError
from plugin.core.surface.locate import heights_at
from tests.core.earthworks import square, surface
from tests.core.graded_raster import Wanted, cells, check_sound, graded, heights
from tests.core.surfaces import ORIGIN
from tests.core.test_earthwork_neighbours import site

COUNT = int(os.environ.get("HUMMOCK_PAIRS", "20"))
PARTS = 4
SIDE, CELL = 80.0, 0.2
REFUSED = {"earthwork.bend_too_tight", "earthwork.strip_folds", "earthwork.centreline_turns_back"}


def even(width, slopes):
    half = HalfSection(((width, 0.0),))
    return TypicalSection(half, half, slopes)


def bent(degrees, arm=20.0):
    turn = np.radians(degrees)
    return np.array([[-arm, 0], [0, 0], [arm * np.cos(turn), arm * np.sin(turn)]]) + 40 + ORIGIN


def platform_of(line, width, corner):
    """The strip's outline as GEOS makes it."""
    join = {Corner.ROUND: "round", Corner.MITRE: "mitre"}[corner]
    return LineString(line - ORIGIN).buffer(width, quad_segs=32, cap_style="flat", join_style=join, mitre_limit=1 / 0.3)


@pytest.mark.parametrize("step", [0.25, 0.5, 1.0, 2.0, 5.0])
@pytest.mark.parametrize("degrees", [5, 30, -30, 60, 90, -120, 140])
@pytest.mark.parametrize("corner", list(Corner))
def test_a_corner_at_any_step(step, degrees, corner):
    line = bent(degrees)
    found = strip(
        line, np.array([[0, 13], [40, 13.0]]), even(4.0, SideSlopes(2, 2, corner)), surface(square(100, 10)), step
    )
    outline = Polygon(found.outline[:, :2] - ORIGIN)
    assert outline.is_valid
    wanted = platform_of(line, 4.0, corner)
    assert outline.symmetric_difference(wanted).area < (0.1 if corner is Corner.ROUND else 0.01)


def test_short_pieces_inside_a_bend_have_no_edge():
    """Two turns of 10 degrees within 0.3 m: the edge inside runs from before to after them; heights there are one."""
    line = np.array([[10, 40], [30, 40]], float)
    for angle, length in ((10, 0.3), (20, 25.0)):
        step = length * np.array([np.cos(np.radians(angle)), np.sin(np.radians(angle))])
        line = np.vstack([line, line[-1] + step])
    line = line + ORIGIN
    profile = np.array([[0, 12], [line_length(line), 14.0]])
    section = even(5.0, SideSlopes(2, 2, Corner.MITRE))
    found = strip(line, profile, section, surface(square(100, 10)), 1.0)
    outline = Polygon(found.outline[:, :2] - ORIGIN)
    assert outline.symmetric_difference(platform_of(line, 5.0, Corner.MITRE)).area < 0.01
    for each in strip_lines(line, profile, section, surface(square(100, 10)), 1.0):
        assert np.all(np.hypot(*np.diff(each.xyz[:, :2], axis=0).T) > 0)
        assert np.abs(heights_at(found.tin, each.xyz[:, :2]) - each.xyz[:, 2]).max() < 1e-3


def test_a_bend_without_room_is_told():
    section = even(4.0, SideSlopes(2, 2))
    line = np.array([[10, 40], [40, 40], [41, 43], [40, 46], [10, 46.0]]) + ORIGIN
    with pytest.raises(SurveyError, match="no room inside the bend near E 4320"):
        strip(line, np.array([[0, 13], [200, 13.0]]), section, surface(square(100, 10)))
    loop = np.array([[10, 40], [60, 40], [60, 70], [35, 70], [35, 20.0]]) + ORIGIN
    with pytest.raises(SurveyError, match="covers some ground twice"):
        strip(loop, np.array([[0, 13], [200, 13.0]]), section, surface(square(100, 10)))


def test_a_jog_is_mitred_where_a_fan_has_no_room():
    line = np.array([[10, 40], [40, 40], [40.4, 42.5], [70, 42.5]]) + ORIGIN
    found = strip(line, np.array([[0, 13], [200, 13.0]]), even(4.0, SideSlopes(2, 2)), surface(square(100, 10)))
    assert Polygon(found.outline[:, :2]).is_valid
    wanted = platform_of(line, 4.0, Corner.ROUND).union(platform_of(line, 4.0, Corner.MITRE))
    assert Polygon(found.outline[:, :2] - ORIGIN).symmetric_difference(wanted).area < 4.0


def from_rim(ring, places, run, crest):
    """Heights (q,) of slopes of fill from the edges of a ring (k, 3), square to each, and from its corner ``crest`` all
    around: the highest, which is reached first."""
    best = ring[crest, 2] - np.hypot(*(places - ring[crest, :2]).T) / run
    for a, b in zip(ring, np.roll(ring, -1, axis=0)):
        length = np.hypot(*(b - a)[:2])
        if length > 1e-6:
            along = (b - a)[:2] / length
            t, out = (places - a[:2]) @ along, (places - a[:2]) @ np.array([along[1], -along[0]])
            height = a[2] + t * (b[2] - a[2]) / length - out / run
            best = np.where((t >= 0) & (t <= length) & (out >= 0), np.maximum(best, height), best)
    return best


@pytest.mark.parametrize("degrees", [3, 10, 20])
def test_a_crest_in_the_inward_corner_of_a_bend_leaves_no_step(degrees):
    """8 % up to a bend and down from it, on slopes of 1 : 4: those of both edges end above each other there."""
    line = bent(-degrees, 35.0)
    profile = np.array([[0, 14 - 0.08 * 35], [35, 14.0], [70, 14 - 0.08 * 35]])
    section = even(3.0, SideSlopes(4, 4))
    ground = surface(square(100, 10))
    ring = strip(line, profile, section, ground, 5.0).outline - np.append(ORIGIN, 0)
    corner = np.array([np.sin(np.radians(-degrees / 2)), -np.cos(np.radians(-degrees / 2))])
    crest = int(np.argmin(np.hypot(*(ring[:, :2] - 40 - 3 * corner).T)))
    finished = combine(ground, grade_strip(ground, line, profile, section, 5.0).design)
    for out in (3.0, 8.0, 13.0):
        angle = np.arctan2(corner[1], corner[0]) + np.linspace(-0.9, 0.9, 2000)
        places = ring[crest, :2] + out * np.column_stack([np.cos(angle), np.sin(angle)])
        wanted = np.maximum(from_rim(ring, places, 4.0, crest), 10.0)
        found = heights_at(finished, places + ORIGIN)
        assert np.abs(found - wanted).max() < 0.005 * out / 4 + 0.005
        assert np.abs(np.diff(found)).max() < 0.5 * 1.8 * out / 2000 + 1e-3


def hairpin(gap, arm=50.0):
    angle, radius = np.linspace(-np.pi / 2, np.pi / 2, 9), gap / 2
    turn = np.column_stack([80 + radius * np.cos(angle), 60 + radius * np.sin(angle)])
    return np.vstack([[80 - arm, 60 - radius], turn, [80 - arm, 60 + radius]])


@pytest.mark.parametrize(("gap", "over"), [(12, True), (14.5, True), (17, False)])
def test_arms_of_a_hairpin_without_room_for_cut_and_fill_are_told(gap, over):
    """The one arm 3 m in the ground, the other 3 m above it: at 2 : 1 both slopes need 12 m and the arms' 4 m."""
    line, ground = hairpin(gap) + ORIGIN, surface(square(120, 103))
    length = line_length(line)
    profile = np.array([[0, 100], [50, 100], [length - 50, 106], [length, 106.0]])
    found = grade_strip(ground, line, profile, even(2.0, SideSlopes(2, 2)), 5.0)
    told = [said for said in found.messages if said.text.code == "earthwork.slopes_cross"]
    assert len(told) == over
    if over:
        lacking = 16 - gap  # metres, half as much in height; over most of the arms' length
        assert told[0].values["height"] == pytest.approx(lacking / 2, abs=0.3)
        assert 30 * lacking < told[0].values["area"] < 60 * lacking


def test_arms_of_a_hairpin_whose_slopes_run_under_each_other_are_refused():
    line, ground = hairpin(14) + ORIGIN, surface(square(120, 100))
    profile = np.array([[0, 97], [line_length(line), 97 + 0.08 * line_length(line)]])
    with pytest.raises(SurveyError, match=r"no room for the slopes near E .* farther apart or nearer in height"):
        grade_strip(ground, line, profile, even(2.0, SideSlopes(2, 2)), 5.0)


def random_line(rng):
    """Corners, an arc in short chords, or both, over the middle of the site."""
    kind = rng.integers(3)
    at, angle, places = np.array([0.0, 0.0]), 0.0, [np.zeros(2)]
    for _ in range(int(rng.integers(1, 4))):
        if kind == 0 or rng.random() < 0.5:
            angle += np.radians(rng.choice([30, -30, 45, -60, 90, rng.uniform(-100, 100)]))
            at = at + rng.uniform(6, 18) * np.array([np.cos(angle), np.sin(angle)])
            places.append(at)
        else:
            turn, radius = np.radians(rng.uniform(-120, 120)), rng.uniform(6, 20)
            for _ in range(int(rng.integers(5, 30))):
                angle += turn / 20
                at = at + radius * abs(turn) / 20 * np.array([np.cos(angle), np.sin(angle)])
                places.append(at)
    line = np.array(places)
    line = line[np.append(True, np.hypot(*np.diff(line, axis=0).T) > 0.05)]
    if line_length(line) < 5:
        return random_line(rng)
    return np.round(line - (line.min(axis=0) + line.max(axis=0)) / 2 + SIDE / 2, 3)


def check_strip(seed):
    rng = np.random.default_rng(seed)
    ground, line = site(rng), random_line(rng)
    corner = Corner.ROUND if rng.random() < 0.6 else Corner.MITRE
    width, step = float(rng.uniform(1.5, 4.5)), float(rng.choice([0.5, 1.0, 2.0, 5.0]))
    slopes = SideSlopes(*rng.choice([1.0, 1.5, 2.0], 2), corner)
    level = 102 + rng.uniform(-2.5, 2.5)
    ends = rng.random() < 0.5
    plain = rng.random() < 0.5
    half = HalfSection(((width, 0.0),)) if plain else HalfSection(((width - 1, -0.025), (1.0, -0.05)), Ditch(0.4))
    rise = 0.0 if plain else rng.uniform(-0.06, 0.06) * line_length(line)
    profile = np.array([[0, level], [line_length(line), level + rise]])
    try:
        found = grade_strip(ground, line + ORIGIN, profile, TypicalSection(half, half, slopes), step, ends)
    except SurveyError as error:
        if error.code not in REFUSED:
            raise
        return False
    finished = combine(ground, found.design)
    check_sound(finished, ground.plan_area + found.volume.design_only)
    x, y = cells(SIDE, CELL)
    before, after = heights(ground, x, y), heights(finished, x, y)
    moved = (found.volume.cut + found.volume.fill) * 0.01 + 1.0
    if not ends:  # steep faces, which a raster sees within half a cell
        moved += 4 * (width + 1.5) * np.nanmax(np.abs(after - before)) * CELL / 2
    assert np.nansum(np.maximum(after - before, 0)) * CELL**2 == pytest.approx(found.volume.fill, abs=moved)
    assert np.nansum(np.maximum(before - after, 0)) * CELL**2 == pytest.approx(found.volume.cut, abs=moved)
    if plain:
        wanted = platform_of(line + ORIGIN, width, corner)
        platform = found.design.part(found.zone == PLATFORM)
        clear = np.hypot(*np.diff(line, axis=0)[[0, -1]].T).min() > 2 * width  # of what bends beside its ends
        if clear:
            assert platform.plan_area == pytest.approx(wanted.area, rel=5e-3)
        if clear and ends and corner is Corner.ROUND:
            ring = np.array(wanted.exterior.coords)[:-1]
            goal = graded(before, x, y, [Wanted(ring, (level, 0.0, 0.0), slopes.cut_run, slopes.fill_run)])
            assert np.nansum(np.abs(after - goal)) * CELL**2 <= 1.5 * moved
    return True


@pytest.mark.parametrize("part", range(PARTS))
def test_random_strips(part):
    assert sum(check_strip(seed) for seed in range(part, COUNT, PARTS)) >= COUNT / PARTS / 2


@pytest.mark.parametrize("seed", [43, 44])
def test_a_ditch_that_begins_in_an_inward_bend(seed):
    """The rim is steeper there than the slopes are, for a few centimetres."""
    assert check_strip(seed)
