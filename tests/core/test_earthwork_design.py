"""Pads with holes, slopes by edge, several pads, the finished ground, design lines, profiles and section tables."""

from dataclasses import replace

import numpy as np
import pytest

from plugin.core.earthwork.balance_curve import balance_curve, height_sigma, rest_sigma
from plugin.core.earthwork.combine import combine
from plugin.core.earthwork.design_lines import DesignLineKind, design_lines
from plugin.core.earthwork.doubt import SurfaceDoubt, volume_doubt
from plugin.core.earthwork.edge_slopes import EdgeSlope, distances, runs_of_rings
from plugin.core.earthwork.pad import grade_pad
from plugin.core.earthwork.pads import PadDesign, balance_pads, grade_pads, volume_of_pads
from plugin.core.earthwork.plane import Plane
from plugin.core.earthwork.profile_design import ProfilePoint, design_profile, profile_of_line, read_profile
from plugin.core.earthwork.section_table import read_section
from plugin.core.earthwork.side_slopes import Corner, SideSlopes
from plugin.core.earthwork.strip import Ditch, HalfSection, TypicalSection, grade_strip, strip_lines
from plugin.core.earthwork.volume import volume_between
from plugin.core.linework.constraints import Constraints
from plugin.core.messages import SurveyError
from plugin.core.points.pointset import make_points
from plugin.core.surface.build import build_surface
from plugin.core.surface.locate import heights_at
from plugin.core.surface.mesh import twins_of
from tests.core.earthworks import balanced_pad, square, surface
from tests.core.surfaces import ORIGIN, random_tin

MITRE = SideSlopes(2, 3, Corner.MITRE)
PAD = square(20, 0, (40, 40))[:, :2] + ORIGIN
HOLE = square(10, 0, (45, 45))[:, :2] + ORIGIN


def flat(level=10.0, side=100.0):
    return surface(square(side, level))


def by_edge(*fill):
    return np.column_stack([np.full(len(fill), np.nan), fill])


def sound(tin):
    twin = twins_of(tin.triangles.ravel())
    assert np.array_equal(np.where(twin >= 0, twin // 3, -1).reshape(-1, 3), tin.neighbours)
    assert np.all(np.isfinite(tin.vertices))
    corner = tin.corners()
    one, two = corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]
    assert np.all(one[:, 0] * two[:, 1] > one[:, 1] * two[:, 0])
    marked = (tin.edge_kind > 0).ravel()
    assert np.array_equal(marked, marked[np.where(twin >= 0, twin, np.arange(len(twin)))])


# Holes and slopes by edge


def test_a_hole_is_filled_down_its_slopes():
    """Frustum of the outline less that of the hole, which narrows downward."""
    found = grade_pad(flat(), PAD, 11, MITRE, [HOLE])
    assert found.volume.fill == pytest.approx((20**2 + 26**2 + 20 * 26) / 3 - (10**2 + 4**2 + 10 * 4) / 3, rel=1e-9)
    assert len(found.daylight) == 2
    assert np.isnan(heights_at(found.design, np.array([[50, 50.0]]) + ORIGIN)[0])
    # 1 : 3 from both sides of 10 m meets half way: a pit 5/3 m deep
    deep = grade_pad(flat(), PAD[::-1], 15, MITRE, [HOLE[::-1]])
    whole = 5 / 3 * (20**2 + 50**2 + 20 * 50)
    assert deep.volume.fill == pytest.approx(whole - 10**2 * (5 / 3) / 3, rel=1e-8)
    with pytest.raises(SurveyError, match="crosses or touches itself or a hole"):
        grade_pad(flat(), PAD, 11, MITRE, [HOLE + 8])
    with pytest.raises(SurveyError, match="2 different corners"):
        grade_pad(flat(), PAD, 11, MITRE, [HOLE[:2]])


def test_slopes_by_edge():
    """South 1 : 1, east 1 : 2, north 1 : 3, west 1 : 4, mitred: at depth s a rectangle of 20 + 6 s by 20 + 4 s."""
    exact = 400 * 2 + (20 * 4 + 20 * 6) * 2**2 / 2 + 24 * 2**3 / 3
    found = grade_pad(flat(), PAD, 12, MITRE, runs=[by_edge(1, 2, 3, 4)])
    assert found.volume.fill == pytest.approx(exact, rel=1e-9)
    turned = grade_pad(flat(), PAD[::-1], 12, MITRE, runs=[by_edge(3, 2, 1, 4)])
    assert turned.volume.fill == pytest.approx(exact, rel=1e-9)
    # round corners: a quarter between runs r and q, whose grade goes evenly with the angle
    grades = 1 / np.array([1, 2, 3, 4.0])
    quarters = 0.0
    for one, other in zip(grades, np.roll(grades, -1)):
        t = (np.arange(200_000) + 0.5) / 200_000
        run = 1 / (one + t * (other - one))
        quarters += np.mean(run**2) * np.pi / 4 * 2**3 / 3
    sides = 400 * 2 + (20 * 4 + 20 * 6) * 2**2 / 2
    rounded = grade_pad(flat(), PAD, 12, SideSlopes(2, 3), runs=[by_edge(1, 2, 3, 4)])
    assert rounded.volume.fill == pytest.approx(sides + quarters, rel=2e-3)


def test_slopes_by_edge_that_cannot_be_graded_are_refused():
    shape = np.array([[30, 30], [60, 30], [60, 60], [50, 60], [50, 40], [42, 40], [42, 60], [30, 60.0]]) + ORIGIN
    with pytest.raises(SurveyError, match="run across the platform itself"):
        grade_pad(flat(), shape, 14, SideSlopes(2, 2), runs=[by_edge(*[2.0] * 5, 6, 2, 2)])
    straight = np.insert(PAD, 1, PAD[:2].mean(axis=0), axis=0)
    with pytest.raises(SurveyError, match="too flat for the slopes to meet"):
        grade_pad(flat(), straight, 12, SideSlopes(2, 2), runs=[by_edge(1, 3, 2, 2, 2)])
    with pytest.raises(SurveyError, match="cannot be graded"):
        grade_pad(flat(), PAD, 12, SideSlopes(2, 2), runs=[by_edge(0, 1, 1, 1)])


def test_lines_give_edges_their_slopes():
    edges = [EdgeSlope(PAD[:2], 1.0, 3.0), EdgeSlope(PAD[1:4] + 0.05, float("nan"), 4.0), EdgeSlope(PAD[:2] + 5)]
    (found,), met = runs_of_rings([PAD], edges)
    assert met == {0, 1}
    assert found[0].tolist() == [1, 3]
    assert found[1:3, 1].tolist() == [4, 4]
    assert np.isnan(found[1:, 0]).all()
    assert np.isnan(found[3]).all()
    assert distances(np.array([[0, 3], [9, 4.0]]), np.array([[0, 0], [5, 0], [6, 0.0]])).tolist() == [3, 5]


# The finished ground


@pytest.mark.parametrize("holes", [(), (HOLE,)])
def test_finished_ground_is_the_design_and_the_rest(holes):
    ground = random_tin(2000, 3)
    graded = grade_pad(ground, PAD, 102.0, SideSlopes(1.5, 2), holes)
    finished = combine(ground, graded.design)
    sound(finished)
    assert finished.plan_area == pytest.approx(ground.plan_area, rel=1e-9)
    moved = volume_between(ground, finished)
    assert moved.cut == pytest.approx(graded.volume.cut, rel=1e-5)
    assert moved.fill == pytest.approx(graded.volume.fill, rel=1e-5)
    place = np.random.default_rng(1).uniform(2, 98, (4000, 2)) + ORIGIN
    design, before, after = (heights_at(tin, place) for tin in (graded.design, ground, finished))
    inside = np.isfinite(design)
    assert np.abs(after - design)[inside].max() < 2e-3
    assert np.abs(after - before)[~inside & np.isfinite(before)].max() < 2e-3
    assert 100 < np.count_nonzero(inside) < 3900
    # breaklines of the ground and of the design stay
    assert np.count_nonzero(finished.edge_kind) >= np.count_nonzero(graded.design.edge_kind)


def test_steep_ends_keep_the_ground_beside_them():
    """A strip 3 m over level ground whose ends have no slope: the finished ground steps down within 2 cm."""
    line = np.array([[20, 50], [80, 50.0]]) + ORIGIN
    half = HalfSection(((3.0, 0.0),))
    section = TypicalSection(half, half, SideSlopes(2, 2))
    ground, profile = flat(), np.array([[0, 13], [60, 13.0]])
    steep = grade_strip(ground, line, profile, section)
    finished = combine(ground, steep.design)
    sound(finished)
    beside = np.array([[19.97, 50], [80.03, 50], [19.97, 46]]) + ORIGIN
    assert heights_at(finished, beside) == pytest.approx([10, 10, 10], abs=1e-9)
    assert heights_at(finished, beside + np.array([[0.04, 0], [-0.04, 0], [0.04, 0]])) == pytest.approx([13, 13, 12.5])
    assert volume_between(ground, finished).fill == pytest.approx(steep.volume.fill, rel=2e-3)
    sloped = grade_strip(ground, line, profile, section, sloped_ends=True)
    # two rectangles 6 m wide from 3 m high run out over 6 m, and a full cone of slopes at the four corners
    more = 2 * 6 * 3 * 6 / 2 + np.pi * 6**2 * 3 / 3
    assert sloped.volume.fill == pytest.approx(steep.volume.fill + more, rel=2e-3)
    kinds = {one.kind for one in design_lines(sloped)}
    assert DesignLineKind.STEEP_END not in kinds
    assert DesignLineKind.STEEP_END in {one.kind for one in design_lines(steep)}


def test_slopes_that_run_off_the_survey_leave_the_ground_beside_them():
    """A bank whose steep end runs out to the rim: its corner there must not pull the ground's long rim edge up."""
    ground = surface(np.array([[0, 0, 10], [100, 0, 10], [100, 60, 10], [0, 60, 10], [50, 3, 10.0]]))
    line = np.array([[30, 40], [50, 50.0]]) + ORIGIN
    half = HalfSection(((3.0, 0.0),))
    section = TypicalSection(half, half, SideSlopes(2, 4))
    graded = grade_strip(ground, line, np.array([[0, 14], [np.hypot(20, 10), 14.0]]), section)
    assert "earthwork.no_daylight" in [said.text.code for said in graded.messages]
    finished = combine(ground, graded.design)
    sound(finished)
    assert volume_between(ground, finished).fill == pytest.approx(graded.volume.fill, rel=2e-3)
    place = np.random.default_rng(4).uniform([1, 1], [99, 59.9], (4000, 2)) + ORIGIN
    beside = np.isnan(heights_at(graded.design, place))
    assert np.quantile(np.abs(heights_at(finished, place[beside]) - 10), 0.998) < 1e-9


@pytest.mark.parametrize("seed", range(4))
def test_random_pads_on_rough_ground(seed):
    """Rotated outlines, falls, slopes by edge: the finished ground is sound and holds the design and its volumes."""
    rng = np.random.default_rng(seed)
    ground = random_tin(700, seed)
    corners = 6
    angle = np.sort(rng.uniform(0, 2 * np.pi / corners, corners) * 0.6 + np.arange(corners) * 2 * np.pi / corners)
    middle = rng.uniform(40, 60, 2)
    shape = np.round(middle + 14 * np.column_stack([np.cos(angle), np.sin(angle)]), 3) + ORIGIN
    runs = rng.choice([1.0, 1.5, 2.0], (corners, 2))
    plane = Plane(float(heights_at(ground, middle[None] + ORIGIN)[0]), 0.02, -0.01, *(middle + ORIGIN))
    graded = grade_pad(ground, shape, plane, SideSlopes(2, 2), runs=[runs])
    finished = combine(ground, graded.design)
    sound(finished)
    moved = volume_between(ground, finished)
    limit = 1e-4 * (graded.volume.cut + graded.volume.fill)
    assert moved.cut == pytest.approx(graded.volume.cut, abs=limit)
    assert moved.fill == pytest.approx(graded.volume.fill, abs=limit)
    assert finished.plan_area == pytest.approx(ground.plan_area, rel=1e-9)


def test_edges_of_the_ground_keep_their_kind():
    ground = random_tin(400, 5)
    marks = ground.edge_kind.copy()
    marks[ground.neighbours < 0] = 2
    ground = replace(ground, edge_kind=marks)
    finished = combine(ground, grade_pad(ground, PAD, 102.0).design)
    rim = finished.neighbours < 0
    assert np.all(finished.edge_kind[rim] & 2)
    assert not np.any(finished.edge_kind[~rim] & 2)


# Several pads


def pad_at(east, level, name="", slopes=MITRE):
    return PadDesign(name, (square(10, 0, (east, 45))[:, :2] + ORIGIN,), Plane(level), slopes)


def frustum(side, height, run):
    wide = side + 2 * run * height
    return height / 3 * (side**2 + wide**2 + side * wide)


def test_pads_apart_add_up():
    found = grade_pads(flat(), [pad_at(15, 12), pad_at(70, 8)])
    assert found.messages == ()
    assert found.volume.fill == pytest.approx(frustum(10, 2, 3), rel=1e-8)
    assert found.volume.cut == pytest.approx(frustum(10, 2, 2), rel=1e-8)
    moved = volume_between(flat(), found.finished)
    assert (moved.cut, moved.fill) == (pytest.approx(found.volume.cut), pytest.approx(found.volume.fill))
    sound(found.finished)


def test_pads_that_meet_are_said_and_counted_once():
    """Two pads of one height side by side, 4 m apart, with slopes that meet between them."""
    found = grade_pads(flat(), [pad_at(30, 11, "A"), pad_at(44, 11, "B")])
    assert [each.text.code for each in found.messages] == ["earthwork.pads_meet"]
    # both as cones of distance: the fill is the greater of both heights
    s = (np.arange(2000) + 0.5) / 20
    x, y = np.meshgrid(s, s)

    def height(east):
        away = np.maximum.reduce([east - x, x - east - 10, 45 - y, y - 55, np.zeros(x.shape)])
        return np.maximum(0, 1 - away / 3)

    assert found.volume.fill == pytest.approx(np.maximum(height(30), height(44)).sum() / 400, rel=2e-3)
    cutting = grade_pads(flat(), [pad_at(30, 11, "A"), pad_at(42, 8, "B")])
    said = {each.text.code: each for each in cutting.messages}
    assert "take" in str(said["earthwork.platform_cut"])
    with pytest.raises(SurveyError, match="no pad"):
        grade_pads(flat(), [])
    with pytest.raises(SurveyError, match="B: The platform is wholly outside"):
        grade_pads(flat(), [pad_at(30, 11, "A"), pad_at(3000, 8, "B")])


# Balance


def test_level_that_balances_within_a_millimetre():
    """A square pad amid a plane z = 0.1 x: by symmetry at the plane's height there, whatever the (equal) slopes; with
    vertical-sided closed form for a factor: relative to the level L the pad cuts above and fills below."""
    tilted = surface(np.array([[0, 0, 0], [100, 0, 10], [100, 100, 10], [0, 100, 0.0]]))
    for run in (1.0, 2.0, 3.0):
        found = balanced_pad(tilted, PAD, 2.0, SideSlopes(run, run, Corner.MITRE))
        assert 2 + found.shift == pytest.approx(5.0, abs=1e-3)
    assert found.volume.cut == pytest.approx(found.volume.fill, abs=1e-3 * found.volume.common_area)
    both = [PadDesign("A", (PAD,), Plane(2.0), MITRE), pad_at(80, 5.5, "B")]
    joint = balance_pads(tilted, both, factor=0.9, surplus=20)
    again = volume_of_pads(tilted, [pad.raised(joint.shift) for pad in both])
    assert again.cut * 0.9 - again.fill - 20 == pytest.approx(0, abs=1e-3 * again.common_area)


def test_stated_surplus_is_met_to_a_millimetre_of_height():
    """On level ground the frustum that takes V: h (20² + (20 + 6 h)² + 20 (20 + 6 h)) / 3 = V at h = 1.7."""
    found = balanced_pad(flat(), PAD, 10.3, MITRE, surplus=-frustum(20, 1.7, 3))
    assert 10.3 + found.shift == pytest.approx(11.7, abs=1e-3)


def test_doubt_of_the_balanced_height():
    """One offset between survey and truth moves the balance by just that offset."""
    tilted = surface(np.array([[0, 0, 0], [100, 0, 10], [100, 100, 10], [0, 100, 0.0]]))
    found = balanced_pad(tilted, PAD, 5.0, SideSlopes(2, 2))
    design = grade_pad(tilted, PAD, 5.0 + found.shift, SideSlopes(2, 2)).design
    doubt = volume_doubt(tilted, design, SurfaceDoubt(0.0), offset_sigma=0.02)
    assert height_sigma(doubt, found.volume) == pytest.approx(0.02, rel=1e-6)
    assert height_sigma(doubt, found.volume, 0.8) == pytest.approx(0.02, rel=1e-6)
    raised = replace(tilted, vertices=tilted.vertices + np.array([0, 0, 0.02]))
    assert balanced_pad(raised, PAD, 5.0, SideSlopes(2, 2)).shift - found.shift == pytest.approx(0.02, abs=1e-4)
    noisy = volume_doubt(tilted, design, SurfaceDoubt(0.03))
    assert rest_sigma(noisy, 1.0) == pytest.approx(noisy.net.total, rel=1e-9)
    assert 0 < rest_sigma(noisy, 0.5) < noisy.net.total


def test_curve_of_volumes():
    ground = flat()
    levels = np.array([-1.0, 0.0, 1.0])
    found = balance_curve(lambda shift: grade_pad(ground, PAD, 10 + shift, MITRE).volume, levels, 0.9, 5)
    assert found.cut == pytest.approx([frustum(20, 1, 2), 0, 0], abs=1e-6)
    assert found.fill == pytest.approx([0, 0, frustum(20, 1, 3)], abs=1e-6)
    assert found.rest == pytest.approx(found.cut * 0.9 - found.fill - 5)


# Lines


def test_lines_of_a_pad_by_kind():
    lines = design_lines(grade_pad(flat(), PAD, 12, MITRE))
    length = {kind: sum(one.length for one in lines if one.kind is kind) for kind in DesignLineKind}
    assert length[DesignLineKind.PLATFORM_EDGE] == pytest.approx(80)
    assert length[DesignLineKind.TOE_OF_FILL] == pytest.approx(4 * 32)
    assert length[DesignLineKind.SLOPE_BREAK] == pytest.approx(4 * 6 * np.sqrt(2), rel=1e-4)
    assert length[DesignLineKind.PLATFORM_BREAK] == length[DesignLineKind.TOP_OF_CUT] == 0
    edge = next(one for one in lines if one.kind is DesignLineKind.PLATFORM_EDGE)
    assert np.array_equal(edge.xyz[0], edge.xyz[-1])
    assert np.allclose(edge.xyz[:, 2], 12)


def test_lines_of_a_strip_by_side():
    left = HalfSection(((3.0, -0.02), (1.0, -0.05)), None, ("lane", "shoulder"))
    right = HalfSection(((2.0, -0.02),), Ditch(0.5, 2, 0.4), ("lane",))
    line = np.array([[20, 50], [80, 50.0]]) + ORIGIN
    found = strip_lines(line, np.array([[0, 9], [60, 9.0]]), TypicalSection(left, right), flat())
    assert [(one.side, one.part, one.name) for one in found] == [
        (-1, 2, "shoulder"), (-1, 1, "lane"), (0, 0, ""), (1, 1, "lane"), (1, 2, ""), (1, 3, "")
    ]  # fmt: skip
    across = [(one.xyz[0, 1] - 50 - ORIGIN[1], one.xyz[0, 2]) for one in found]
    assert np.array(across) == pytest.approx(
        np.array([(4, 8.89), (3, 8.94), (0, 9), (-2, 8.96), (-3, 8.46), (-3.4, 8.46)])
    )


# Profiles and tables


def test_vertical_curve_touches_both_grades():
    """+3 % and -2 % meeting at station 100, height 50, curve of 80 m: the textbook's parabola about the meeting place,
    heights from the definition y = y0 + g1 d + (g2 - g1) d² / (2 L), highest place g1 L / (g1 - g2) from its beginning.
    """
    found = design_profile([ProfilePoint(0, 47), ProfilePoint(100, 50, 80), ProfilePoint(200, 48)])
    assert found[0].tolist() == [0, 47]
    assert found[1] == pytest.approx([60, 48.8])
    assert found[-2] == pytest.approx([140, 49.2])
    d = found[1:-1, 0] - 60
    assert found[1:-1, 1] == pytest.approx(48.8 + 0.03 * d - 0.05 * d**2 / 160, abs=1e-12)
    dense = np.linspace(60, 140, 5000)
    exact = 48.8 + 0.03 * (dense - 60) - 0.05 * (dense - 60) ** 2 / 160
    assert 2e-4 < np.abs(np.interp(dense, *found.T) - exact).max() <= 1e-3
    assert exact.max() == pytest.approx(48.8 + 0.03 * 48 / 2, abs=1e-6)  # at 0.03 · 80 / 0.05 = 48 m
    # the middle ordinate of a vertical curve, A L / 800 with A in percent
    assert 50 - np.interp(100, dense, exact) == pytest.approx(5 * 80 / 800, abs=1e-6)


@pytest.mark.parametrize(
    ("points", "what"),
    [
        ([ProfilePoint(0, 1)], "two stations"),
        ([ProfilePoint(0, 1), ProfilePoint(0, 2)], "must rise"),
        ([ProfilePoint(0, 1), ProfilePoint(10, 2, 30), ProfilePoint(40, 1)], "runs into its neighbour"),
        ([ProfilePoint(0, 1), ProfilePoint(20, 2, 30), ProfilePoint(30, 3, 10), ProfilePoint(60, 1)], "shorten it"),
        ([ProfilePoint(0, 1, 5), ProfilePoint(20, 2)], "station 0.00"),
    ],
)
def test_profiles_that_cannot_be(points, what):
    with pytest.raises(SurveyError, match=what):
        design_profile(points)


def test_profile_and_section_tables(tmp_path):
    file = tmp_path / "profile.csv"
    file.write_text("station;height;curve\n0;47;\n# a remark\n100;50;80\n200;48;\n")
    assert read_profile(file) == pytest.approx(
        design_profile([ProfilePoint(0, 47), ProfilePoint(100, 50, 80), ProfilePoint(200, 48)])
    )
    file.write_text("station,height\n0,x\n")
    with pytest.raises(SurveyError, match=r"line 2: height is “x”"):
        read_profile(file)
    table = tmp_path / "section.csv"
    table.write_text(
        "side,part,width,crossfall,depth,run\nboth,lane,3,-2.5,,\nleft,shoulder,1,-4,,\nright,ditch,0.4,,0.5,1.5\n"
        "both,cut slope,,,,1\n"
    )
    section = read_section(table, SideSlopes(2, 2.5))
    assert section.left == HalfSection(((3.0, -0.025), (1.0, -0.04)), None, ("lane", "shoulder"))
    assert section.right == HalfSection(((3.0, -0.025),), Ditch(0.5, 1.5, 0.4), ("lane",))
    assert section.slopes == SideSlopes(1, 2.5)
    line = np.array([[0, 0, 5], [3, 4, 6], [3, 4, 6], [3, 14, np.nan], [3, 24, 8]])
    assert profile_of_line(line).tolist() == [[0, 5], [5, 6], [25, 8]]


@pytest.mark.parametrize(
    ("rows", "what"),
    [
        ("up,lane,3,,,", "line 2: side is “up”"),
        ("both,lane,0,,,", "width above 0"),
        ("both,lane,,,,", "width is “”"),
        ("left,ditch,1,,0,", "depth above 0"),
        ("left,ditch,1,,1,\nleft,ditch,1,,1,", "line 3: a side has one ditch"),
        ("left,cut slope,,,,2", "same left and right"),
        ("both,fill slope,,,,-1", "run above 0"),
        ("both,lane,3,,,,7", "more cells than columns"),
        ("left,lane,3,,,", "widths above 0 on both sides"),
    ],
)
def test_section_tables_that_must_be_mended(tmp_path, rows, what):
    table = tmp_path / "section.csv"
    table.write_text("side,part,width,crossfall,depth,run\n" + rows + "\n")
    with pytest.raises(SurveyError, match=what):
        read_section(table, SideSlopes())


def test_tables_without_what_they_need(tmp_path):
    table = tmp_path / "section.csv"
    for text, what in (
        ("side,part\nboth,lane\n", "column width"),
        ("side,part,width\n", "no rows"),
        ("a,b\n1,2", "a is"),
    ):
        table.write_text(text)
        with pytest.raises(SurveyError, match=what):
            read_section(table, SideSlopes())
    with pytest.raises(SurveyError, match="cannot be read"):
        read_profile(tmp_path / "missing.csv")


def _combined(ground, design, base):
    """Two surfaces from columns of easting, northing and height beside ``base``, as one."""
    first, second = (
        build_surface(make_points(e + base[0], n + base[1], z), Constraints()).tin
        for e, n, z in (np.asarray(each, float) for each in (ground, design))
    )
    return first, second, combine(first, second)


@pytest.mark.parametrize(
    ("ground", "design", "base"),
    [
        (
            [[0.2854, 2.5171, 2.7345, 3.7354], [1.3695, 1.1502, 0.1088, 1.934], [0.2, 0.1, 0.1, 0.2]],
            [[0.3575, 2.1072, 4.8563], [0.625, 4.0424, 4.4517], [0.0, 0.0, 0.0]],
            (0.0, 0.0),
        ),
        (
            [[3.466, 3.8024, 4.3437], [3.9118, 4.6348, 1.1188], [100.31, 100.31, 100.31]],
            [[1.2311, 4.1533, 4.1872], [3.5761, 2.2973, 3.6306], [100.312311, 100.341533, 100.341872]],
            (500000.0, 0.0),
        ),
    ],
)
def test_a_vertex_between_both_rims_has_a_height(ground, design, base):
    """A design that hangs over the rim of the ground: where both rims cross, rounding may leave a vertex in neither."""
    _, _, whole = _combined(ground, design, base)
    heights = np.append(ground[2], design[2])
    used = whole.vertices[np.unique(whole.triangles), 2]
    assert np.all((used >= heights.min() - 1e-9) & (used <= heights.max() + 1e-9))


def test_a_design_wholly_beside_the_ground_stands_beside_it():
    first, second, whole = _combined(
        [[0, 10, 0, 10], [0, 0, 10, 10], [1, 1, 1, 1]], [[20, 30, 20], [20, 20, 30], [2, 2, 2]], (0.0, 0.0)
    )
    assert whole.plan_area == pytest.approx(first.plan_area + second.plan_area)
    assert heights_at(whole, np.array([[22.0, 22.0], [5.0, 5.0], [15.0, 15.0]]))[:2].tolist() == [2.0, 1.0]
