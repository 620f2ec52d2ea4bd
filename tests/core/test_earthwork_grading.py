"""Pads graded to daylight, and the level that balances, against closed forms and a fine grid of distances."""

from dataclasses import replace

import numpy as np
import pytest

from plugin.core.earthwork.balance import balance
from plugin.core.earthwork.grading import CUT_SLOPE, FILL_SLOPE, PLATFORM
from plugin.core.earthwork.pad import grade_pad
from plugin.core.earthwork.plane import Plane
from plugin.core.earthwork.side_slopes import Corner, SideSlopes
from plugin.core.earthwork.volume import Volume, volume_between
from plugin.core.messages import SurveyError
from plugin.core.surface.ask import triangle_slopes
from plugin.core.surface.locate import heights_at
from plugin.core.surface.mesh import twins_of
from tests.core.earthworks import balanced_pad, square, surface, volume_to
from tests.core.surfaces import ORIGIN, random_tin

MITRE = SideSlopes(2, 3, Corner.MITRE)
PAD = square(20, 0, (40, 40))[:, :2] + ORIGIN


def flat(level=10.0, side=100.0):
    return surface(square(side, level))


def offset_volume(area, perimeter, corners, height, run):
    """Integral of the area of a right-angled outline widened by d, from 0 to run × height, over run.

    Each outward corner of a mitre adds d² to area + perimeter d, each inward one takes d² off.
    """
    d = run * height
    return (area * d + perimeter * d**2 / 2 + corners * d**3 / 3) / run


def distance(xy, ring):
    """Distance of places from a ring's rim, 0 inside."""
    a, b = ring, np.roll(ring, -1, axis=0)
    step = b - a
    t = np.clip(((xy[:, None] - a) * step).sum(axis=2) / (step**2).sum(axis=1), 0, 1)
    away = np.hypot(*np.moveaxis(xy[:, None] - a - t[:, :, None] * step, 2, 0)).min(axis=1)
    cross = (a[:, 1] > xy[:, 1:]) != (b[:, 1] > xy[:, 1:])
    with np.errstate(divide="ignore", invalid="ignore"):
        east = xy[:, :1] < a[:, 0] + (xy[:, 1:] - a[:, 1]) / (b - a)[:, 1] * step[:, 0]
    away[(cross & east).sum(axis=1) % 2 == 1] = 0
    return away


def grid(side=100.0, n=800):
    s = (np.arange(n) + 0.5) * side / n
    return np.stack(np.meshgrid(s, s), axis=-1).reshape(-1, 2), (side / n) ** 2


def test_square_pads_are_frustums():
    fill = grade_pad(flat(), PAD, 15, MITRE)
    assert fill.volume.fill == pytest.approx(5 / 3 * (20**2 + 50**2 + 20 * 50), rel=1e-9)
    assert fill.volume.cut == pytest.approx(0, abs=1e-9)
    cut = grade_pad(flat(), PAD[::-1], 6, MITRE)  # the outline may run either way
    assert cut.volume.cut == pytest.approx(4 / 3 * (20**2 + 36**2 + 20 * 36), rel=1e-9)
    for graded, label, run in ((fill, FILL_SLOPE, 3), (cut, CUT_SLOPE, 2)):
        slope = triangle_slopes(graded.design)[0]
        assert np.allclose(slope[graded.zone == label], 1 / run, rtol=1e-6)
        assert np.allclose(slope[graded.zone == PLATFORM], 0)
        (ring,) = graded.daylight
        assert np.allclose(ring[:, 2], 10, atol=1e-9)
        assert graded.messages == ()


def test_round_corners_are_cones():
    found = grade_pad(flat(), PAD, 15, SideSlopes(2, 2)).volume.fill
    n = 36  # facets around all four corners
    polygon = n / 2 * 10**2 * np.sin(2 * np.pi / n)
    assert found == pytest.approx(400 * 5 + 80 * 10 * 5 / 2 + polygon * 5 / 3, rel=1e-6)
    assert found == pytest.approx(400 * 5 + 80 * 10 * 5 / 2 + np.pi * 100 * 5 / 3, rel=1e-3)


def test_inward_corner():
    shape = np.array([[30, 30], [60, 30], [60, 45], [45, 45], [45, 60], [30, 60.0]]) + ORIGIN
    found = grade_pad(flat(), shape, 14, MITRE)
    assert found.volume.fill == pytest.approx(offset_volume(675, 120, 5 - 1, 4, 3), rel=1e-8)


def test_slopes_that_meet_between_two_arms():
    """The slot between the arms of a U is half filled by both slopes; against distances on a grid."""
    shape = np.array([[30, 30], [60, 30], [60, 60], [50, 60], [50, 40], [42, 40], [42, 60], [30, 60.0]])
    found = grade_pad(flat(), shape + ORIGIN, 14, SideSlopes(2, 2))
    xy, cell = grid()
    assert found.volume.fill == pytest.approx(np.maximum(0, 4 - distance(xy, shape) / 2).sum() * cell, rel=1e-3)
    tight = grade_pad(flat(), shape + ORIGIN, 7, SideSlopes(2, 2))
    assert tight.volume.cut == pytest.approx(np.maximum(0, 3 - distance(xy, shape) / 2).sum() * cell, rel=1e-3)


def test_rolling_ground_against_a_grid():
    ground = random_tin(600, 3)
    shape = np.array([[30, 30], [65, 35], [60, 55], [48, 50], [40, 62]])
    slopes = SideSlopes(1.5, 2)
    found = grade_pad(ground, shape + ORIGIN, 102.0, slopes)
    xy, cell = grid()
    level, away = heights_at(ground, xy + ORIGIN), distance(xy, shape)
    cut, fill = np.maximum(0, level - 102 - away / 1.5), np.maximum(0, 102 - away / 2 - level)
    inside = heights_at(found.design, xy + ORIGIN)
    assert found.volume.cut == pytest.approx(np.nansum(cut[np.isfinite(inside)]) * cell, rel=2e-3)
    assert found.volume.fill == pytest.approx(np.nansum(fill[np.isfinite(inside)]) * cell, rel=2e-3)
    assert found.volume.cut > 100
    assert found.volume.fill > 100
    # nothing next to the design would still have to be moved
    beside = np.isnan(inside) & np.isfinite(level) & (away < 1)
    assert np.maximum(cut, fill)[beside].max() < 1e-3
    for ring in found.daylight:
        assert np.abs(heights_at(ground, ring[:, :2]) - ring[:, 2]).max() < 1e-3


def test_the_design_is_a_sound_surface():
    design = grade_pad(random_tin(600, 3), PAD, 102.0).design
    twin = twins_of(design.triangles.ravel())
    assert np.array_equal(np.where(twin >= 0, twin // 3, -1).reshape(-1, 3), design.neighbours)
    assert np.all(np.isfinite(design.vertices))
    corner = design.corners()
    one, two = corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]
    assert np.all(one[:, 0] * two[:, 1] > one[:, 1] * two[:, 0])
    assert np.all(design.edge_kind[design.neighbours < 0] == 1)
    marked = design.edge_kind > 0
    other = np.where(twin >= 0, twin, np.arange(len(twin)))
    assert np.array_equal(marked.ravel(), marked.ravel()[other])


def test_pad_on_a_plane():
    """On ground of the same plane shifted down, a sloping pad fills with slopes square to its edges."""
    plane = Plane(10, 0.03, -0.02, *ORIGIN)
    xy = square(100, 0)[:, :2]
    ground = surface(np.column_stack([xy, 10 + 0.03 * xy[:, 0] - 0.02 * xy[:, 1] - 2]))
    found = grade_pad(ground, PAD, plane, SideSlopes(2, 2, Corner.MITRE))
    # relative to the plane the slope of an edge is grade ∓ the plane's rise outward
    along = {"east": 0.5 + 0.03, "west": 0.5 - 0.03, "north": 0.5 - 0.02, "south": 0.5 + 0.02}
    run = {side: 2 / fall for side, fall in along.items()}
    top, wide, high = 400.0, 20 + run["east"] + run["west"], 20 + run["north"] + run["south"]
    middle = (20 + (wide - 20) / 2) * (20 + (high - 20) / 2)
    assert found.volume.fill == pytest.approx(2 / 6 * (top + 4 * middle + wide * high), rel=1e-6)
    level = grade_pad(ground, PAD, plane.raised(-2))
    assert level.volume.common_area == pytest.approx(400, rel=1e-6)


def test_slopes_that_run_off_the_survey_are_told():
    found = grade_pad(flat(side=60.0), PAD - 2, 18, SideSlopes(2, 2))
    assert [m.text.code for m in found.messages] == ["earthwork.no_daylight"]
    out = grade_pad(flat(side=60.0), PAD + 8, 10.5, SideSlopes(2, 2))
    assert "earthwork.platform_off_ground" in [m.text.code for m in out.messages]
    assert dict(out.messages[-1].values)["area"] > 20 * 8
    with pytest.raises(SurveyError, match="wholly outside"):
        grade_pad(flat(), PAD + 5000, 10)
    with pytest.raises(SurveyError, match="crosses or touches itself"):
        grade_pad(flat(), PAD[[0, 2, 1, 3]], 10)
    with pytest.raises(SurveyError, match="cannot be graded"):
        SideSlopes(0, 2)


def test_an_island_of_high_ground_beyond_daylight_stays():
    """A mound that stands over the slope's reach but apart from it isn't cut."""
    mound = np.array([[80, 45, 10], [90, 45, 10], [90, 55, 10], [80, 55, 10], [85, 50, 40.0]])
    ground = surface(np.vstack([square(100, 10), mound]))
    found = grade_pad(ground, PAD, 8, SideSlopes(2, 2, Corner.MITRE))
    assert found.volume.cut == pytest.approx(2 / 3 * (20**2 + 28**2 + 20 * 28), rel=1e-6)


def test_place_on_the_national_grid_does_not_matter():
    ground = random_tin(300, 3)
    moved = replace(ground, origin=ground.origin + np.array([1234.0, -5678.0]))
    one, other = grade_pad(ground, PAD, 102.0), grade_pad(moved, PAD + np.array([1234.0, -5678.0]), 102.0)
    assert other.volume.cut == pytest.approx(one.volume.cut, rel=1e-9)
    assert other.volume.fill == pytest.approx(one.volume.fill, rel=1e-9)


@pytest.mark.parametrize(("factor", "surplus"), [(1.0, 0.0), (0.85, 0.0), (1.0, 500.0), (1.2, -300.0)])
def test_level_of_a_tilted_plane(factor, surplus):
    """z = x / 10 over 100 × 100: cut (10 - L)² · 500, fill L² · 500; the root of a quadratic."""
    tilted = surface(np.array([[0, 0, 0], [100, 0, 10], [100, 100, 10], [0, 100, 0.0]]))
    a, b, c = 500 * (factor - 1), -10_000 * factor, 50_000 * factor - surplus
    level = -c / b if a == 0 else min((-b + s * np.sqrt(b * b - 4 * a * c)) / (2 * a) for s in (-1, 1) if 0 < (
        -b + s * np.sqrt(b * b - 4 * a * c)) / (2 * a) < 10)  # fmt: skip
    found = balance(lambda shift: volume_to(tilted, 3.0 + shift), factor, surplus)
    assert 3 + found.shift == pytest.approx(level, abs=1e-5)
    assert abs(found.rest) < 0.1
    assert volume_to(tilted, level).cut * factor == pytest.approx(found.volume.fill + surplus, abs=0.2)


def test_pad_balances_on_a_slope_and_with_a_factor():
    """By symmetry a pad amid a plane balances at the plane's height there."""
    tilted = surface(np.array([[0, 0, 0], [100, 0, 10], [100, 100, 10], [0, 100, 0.0]]))
    found = balanced_pad(tilted, PAD, 4.0, SideSlopes(2, 2))
    assert 4 + found.shift == pytest.approx(5.0, abs=1e-3)
    assert grade_pad(tilted, PAD, 4.0 + found.shift, SideSlopes(2, 2)).volume.cut == pytest.approx(found.volume.cut)
    lower = balanced_pad(tilted, PAD, 5.0, SideSlopes(2, 2), factor=0.8)
    assert lower.shift < -0.05
    assert lower.volume.cut * 0.8 == pytest.approx(lower.volume.fill, abs=0.5)


def test_pad_that_takes_a_stated_amount():
    """On level ground a surplus of -V needs the height whose frustum holds V."""
    found = balanced_pad(flat(), PAD, 10.0, MITRE, surplus=-offset_volume(400, 80, 4, 2.5, 3))
    assert found.shift == pytest.approx(2.5, abs=1e-4)


def test_what_cannot_be_balanced():
    with pytest.raises(SurveyError, match="factor from cut to fill"):
        balance(lambda shift: volume_to(flat(), 3.0 + shift), factor=0.0)

    def steps(shift):
        return Volume(10.0 if shift < 0.3 else 0.0, 0.0 if shift < 0.3 else 10.0, 1, 1, 1, 0, 0)

    found = balance(steps)
    assert found.shift == pytest.approx(0.3, abs=1e-5)
    assert found.messages[0].text.code == "earthwork.balance_jump"
    with pytest.raises(SurveyError, match="No height between"):
        balance(lambda shift: Volume(5.0, 0.0, 1, 1, 1, 0, 0))


def test_design_volume_is_that_of_the_two_surfaces():
    ground = random_tin(300, 3)
    found = grade_pad(ground, PAD, 102.0)
    again = volume_between(ground, found.design)
    for name in ("cut", "fill", "cut_area", "fill_area", "common_area", "existing_only"):
        assert getattr(found.volume, name) == pytest.approx(getattr(again, name), rel=1e-12)
