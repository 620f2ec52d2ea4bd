"""Strips from a typical section, against section areas times length (and Pappus' theorem in a bend)."""

import numpy as np
import pytest

from plugin.core.earthwork.centreline import line_length, make_stations
from plugin.core.earthwork.grading import CUT_SLOPE, FILL_SLOPE
from plugin.core.earthwork.side_slopes import SideSlopes
from plugin.core.earthwork.strip import Ditch, HalfSection, TypicalSection, balance_strip, grade_strip, strip
from plugin.core.earthwork.volume import volume_between
from plugin.core.messages import SurveyError
from plugin.core.surface.ask import triangle_slopes
from plugin.core.surface.locate import heights_at
from tests.core.earthworks import square, surface
from tests.core.surfaces import ORIGIN, random_tin

LEVEL = TypicalSection(HalfSection(((4.0, 0.0),)), HalfSection(((3.0, 0.0),)), SideSlopes(1.5, 2))
STRAIGHT = np.array([[20, 50], [80, 50.0]]) + ORIGIN


def flat(level=10.0, side=100.0):
    return surface(square(side, level))


def level_profile(height, length=60.0):
    return np.array([[0, height], [length, height]])


def test_level_bank_and_cutting_are_prisms():
    bank = grade_strip(flat(), STRAIGHT, level_profile(13), LEVEL)
    assert bank.volume.fill == pytest.approx(60 * (7 * 3 + 2 * 3 * 3), rel=1e-8)
    cutting = grade_strip(flat(), STRAIGHT, level_profile(8), LEVEL)
    assert cutting.volume.cut == pytest.approx(60 * (7 * 2 + 1.5 * 2 * 2), rel=1e-8)
    for graded, label, run in ((bank, FILL_SLOPE, 2), (cutting, CUT_SLOPE, 1.5)):
        assert np.allclose(triangle_slopes(graded.design)[0][graded.zone == label], 1 / run, rtol=1e-5)
        assert graded.messages == ()
    oblique = np.array([[20, 20], [20 + 48, 20 + 36.0]]) + ORIGIN
    assert grade_strip(flat(), oblique, level_profile(13), LEVEL).volume.fill == pytest.approx(
        bank.volume.fill, rel=1e-5
    )


def test_crossfalls_left_and_right():
    """Platform 1 m over the ground at the centre; the edges are lower by the falls, slopes begin there."""
    half = HalfSection(((3.5, -0.02), (1.5, -0.06)))
    edge = 1 - 0.07 - 0.09
    area = 2 * (3.5 * (1 + 0.93) / 2 + 1.5 * (0.93 + edge) / 2 + 2 * edge**2 / 2)
    found = grade_strip(flat(), STRAIGHT, level_profile(11), TypicalSection(half, half, SideSlopes(1.5, 2)))
    assert found.volume.fill == pytest.approx(60 * area, rel=1e-6)
    leaning = TypicalSection(HalfSection(((4.0, 0.03),)), HalfSection(((4.0, -0.03),)), SideSlopes(1.5, 2))
    found = strip(STRAIGHT, level_profile(11), leaning, flat())
    assert heights_at(found.tin, np.array([[50, 54], [50, 46.0]]) + ORIGIN) == pytest.approx([11.12, 10.88])


def test_ditches_are_dug_in_cut_only():
    half = HalfSection(((4.0, 0.0),), Ditch(0.5, 2.0, 0.4))
    section = TypicalSection(half, half, SideSlopes(1.5, 2))
    found = grade_strip(flat(), STRAIGHT, level_profile(8), section)
    ditch = (2 + 2.5) / 2 * 1.0 + 2.5 * 0.4 + 1.5 * 2.5**2 / 2
    assert found.volume.cut == pytest.approx(60 * (8 * 2 + 2 * ditch), rel=1e-6)
    bank = grade_strip(flat(), STRAIGHT, level_profile(13), section)
    assert bank.volume.fill == pytest.approx(60 * (8 * 3 + 2 * 9), rel=1e-8)
    mixed = grade_strip(flat(), STRAIGHT, np.array([[0, 8], [60, 12.0]]), section)
    assert mixed.volume.cut > 100
    assert mixed.volume.fill > 100
    assert mixed.design.vertices[:, 2].min() == pytest.approx(7.5)


def test_sloping_profile_by_integration():
    """Rising from 10 to 14 over level ground at 10: the section area integrated along it."""
    found = grade_strip(flat(), STRAIGHT, np.array([[0, 10], [60, 14.0]]), LEVEL)
    h = np.linspace(0, 4, 10_001)
    # square to the edge, which rises along it, the slope falls 1 in 2: in a section across it is just that
    assert found.volume.fill == pytest.approx(60 * np.mean(7 * h + 2 * h**2), rel=1e-3)


def test_bend_by_pappus():
    """A symmetric section swept round a quarter circle: area times the length of its centroid's way."""
    angle = np.linspace(0, np.pi / 2, 181)
    bend = np.column_stack([20 + 50 * np.sin(angle), 80 - 50 * np.cos(angle)]) + ORIGIN
    half = HalfSection(((4.0, 0.0),))
    section = TypicalSection(half, half, SideSlopes(1.5, 2))
    found = grade_strip(flat(), bend, level_profile(12, line_length(bend)), section, step=1.0)
    assert found.volume.fill == pytest.approx((8 * 2 + 2 * 4) * 50 * np.pi / 2, rel=1e-3)


def test_rolling_ground_and_its_daylight():
    ground = random_tin(1500, 3)
    half = HalfSection(((3.0, -0.025), (1.0, -0.04)), Ditch(0.4, 2.0, 0.5))
    line = np.array([[10, 30], [50, 40], [90, 75.0]]) + ORIGIN
    profile = np.array([[0, 103], [40, 104], [line_length(line), 103.0]])
    found = grade_strip(ground, line, profile, TypicalSection(half, half, SideSlopes(1.5, 2)))
    assert min(found.volume.cut, found.volume.fill) > 50
    assert volume_between(ground, found.design).cut == pytest.approx(found.volume.cut, rel=1e-12)
    ring = max(found.daylight, key=len)
    off = np.abs(heights_at(ground, ring[:, :2]) - ring[:, 2])
    ends = np.array([np.hypot(*(ring[:, :2] - end).T) for end in line[[0, -1]]]).min(axis=0)
    assert off[ends > 12].max() < 1e-2  # 0.1 mm in plan on steep slivers of rough ground


def test_stations():
    line = np.array([[0, 0], [30, 0], [30, 40.0]])
    found = make_stations(line, 10, [12.0, 69.9999])
    assert found.station == pytest.approx([0, 12, 20, 30, 40, 50, 60, 70])
    assert found.xy[3] == pytest.approx([30, 0])
    assert found.beside(np.full(8, 2.0))[3] == pytest.approx([32, -2])
    assert found.beside(np.full(8, -2.0))[5] == pytest.approx([28, 20])
    with pytest.raises(SurveyError, match="turns back"):
        make_stations(np.array([[0, 0], [10, 0], [0, 0.0]]), 5)
    with pytest.raises(SurveyError, match="step above 0"):
        make_stations(line, 0)
    with pytest.raises(SurveyError, match="1 different places"):
        make_stations(line[[0, 0]], 5)


def test_what_the_user_must_mend():
    with pytest.raises(SurveyError, match=r"covers 0\.00 to 40\.00"):
        grade_strip(flat(), STRAIGHT, level_profile(13, 40), LEVEL)
    tight = np.array([[40, 40], [45, 40], [45, 43], [40, 43.0]]) + ORIGIN
    with pytest.raises(SurveyError, match="no room inside the bend"):
        strip(tight, level_profile(13, 13), LEVEL, flat())
    with pytest.raises(SurveyError, match="widths above 0"):
        HalfSection(((0.0, 0.02),))


def test_profile_that_balances():
    """Half in cut and half in fill by symmetry about the middle of a tilted plane."""
    tilted = surface(np.array([[0, 0, 5], [100, 0, 15], [100, 100, 15], [0, 100, 5.0]]))
    half = HalfSection(((4.0, 0.0),))
    section = TypicalSection(half, half, SideSlopes(2, 2))
    found = balance_strip(tilted, STRAIGHT, level_profile(9), section, step=20.0)
    assert 9 + found.shift == pytest.approx(10.0, abs=1e-3)
    assert abs(found.rest) < 0.1


def test_rising_strip_in_bends_both_ways_meets_the_ground():
    """At inner bends of a rising edge the facets are carried on to where they meet: no steps, no gaps."""
    ground = random_tin(1500, 0, 150.0)
    t = np.linspace(0, 1, 25)
    line = np.round(np.column_stack([15 + 120 * t, 75 + 20 * np.sin(6 * t + 3.8)]), 3) + ORIGIN
    profile = np.array([[0, 100], [60, 103], [line_length(line), 104.0]])
    found = grade_strip(ground, line, profile, LEVEL)
    ring = np.vstack(found.daylight)
    off = np.abs(heights_at(ground, ring[:, :2]) - ring[:, 2])
    inner = np.array([np.hypot(*(ring[:, :2] - end).T) for end in line[[0, -1]]]).min(axis=0) > 14
    assert np.count_nonzero(inner) > 200
    assert np.count_nonzero(off[inner] > 2e-3) <= 2
    corner = found.design.corners()
    one, two = (corner[:, k, :2] - corner[:, 0, :2] for k in (1, 2))
    large = one[:, 0] * two[:, 1] - one[:, 1] * two[:, 0] > 0.02
    with np.errstate(divide="ignore"):  # a fan of sections at a corner is level
        run = 1 / triangle_slopes(found.design)[0]
    assert run[large & (found.zone == FILL_SLOPE)].max() < 2.001
    assert run[large & (found.zone == CUT_SLOPE)].max() < 1.501
