"""Other methods against worked examples and against the exact volume."""

import numpy as np
import pytest

from plugin.core.earthwork.centreline import make_stations
from plugin.core.earthwork.checks import (
    average_end_area,
    check_by_sections,
    prismoidal,
)
from plugin.core.earthwork.comparison import Comparison
from plugin.core.earthwork.depth_grid import depth_grid
from plugin.core.earthwork.sections import section_areas, strips_between
from plugin.core.earthwork.volume import volume_between
from plugin.core.messages import SurveyError
from tests.core.earthworks import closed, frustum, square, surface
from tests.core.surfaces import ORIGIN, random_tin

#: G. L. Vose, Handbook of Railroad Construction (1857), art. 108: base 20, slopes 1½ to 1, stations 50 apart.
VOSE_CUTS = np.array([0, 5, 10, 15, 0.0])
VOSE_STATIONS = 50.0 * np.arange(5)


def vose_area(cut):
    return 20 * cut + 1.5 * cut**2


def test_vose_average_end_areas():
    """The book rounds mean areas to 69, 244, 493 and 318 and has 56,200; unrounded they give 56,250."""
    areas = vose_area(VOSE_CUTS)
    assert areas.tolist() == [0, 137.5, 350, 637.5, 0]
    means = (areas[:-1] + areas[1:]) / 2
    assert np.abs(means - [69, 244, 493, 318]).max() <= 0.75
    assert 50 * np.sum([69, 244, 493, 318]) == 56_200
    assert average_end_area(VOSE_STATIONS, areas) == pytest.approx(56_250, rel=1e-12)


def test_vose_prismoidal():
    """52,500 from the exact areas halfway (computed from the example's dimensions, not printed in the book)."""
    middle = vose_area((VOSE_CUTS[:-1] + VOSE_CUTS[1:]) / 2)
    assert middle.tolist() == [59.375, 234.375, 484.375, 234.375]
    assert prismoidal(VOSE_STATIONS, vose_area(VOSE_CUTS), middle) == pytest.approx(52_500, rel=1e-12)


def vose_cutting():
    """The cutting of the example as a surface in level ground at 100, station axis at y = 50."""
    lines = []
    for side in (-1, 1):
        for reach, depth in ((0.0, 1.0), (1.5, 0.0)):
            y = 50 + side * (10 + reach * VOSE_CUTS)
            lines.append(np.column_stack([20 + VOSE_STATIONS, y, 100 - depth * VOSE_CUTS]))
    ends = np.array([[20, 40, 100], [20, 60, 100.0]]), np.array([[220, 40, 100], [220, 60, 100.0]])
    ground = square(240, 100)
    ribs = [np.array([a, b]) for k in (0, 2) for a, b in zip(lines[k][1:-1], lines[k + 1][1:-1])]
    return surface(np.vstack([ground, *lines]), [*lines, *ends, *ribs])


def test_vose_as_surfaces():
    """As solids between two surfaces: the exact volume is the prismoidal one; end areas are 7 % too large."""
    ground, cutting = surface(square(240, 100)), vose_cutting()
    assert volume_between(ground, cutting).cut == pytest.approx(52_500, rel=1e-9)
    axis = np.array([[20, 50], [220, 50.0]]) + ORIGIN
    ends, prisms = check_by_sections(ground, cutting, axis, 50, 45)
    assert ends.cut == pytest.approx(56_250, rel=1e-9)
    assert prisms.cut == pytest.approx(52_500, rel=1e-9)
    assert (prisms.cut_difference, ends.cut_difference) == (pytest.approx(0, abs=1e-3), pytest.approx(3750, rel=1e-6))
    assert ends.why.values["cut"] == pytest.approx(-3750, rel=1e-9)
    assert "too much" in str(ends.why)
    assert str(ends.method) == "average end areas every 50 m"


def test_end_areas_of_a_pyramid_are_half_too_large():
    """At the extreme, a pyramid, the end area method gives half as much again (W. L. Webb, Railroad Construction)."""
    assert average_end_area([0, 10], [0, 36]) == pytest.approx(1.5 * 36 * 10 / 3)
    assert prismoidal([0, 10], [0, 36], [9]) == pytest.approx(36 * 10 / 3)


def test_section_areas_of_a_frustum():
    ground = surface(square(60, 10))
    stations = make_stations(np.array([[0, 30], [60, 30.0]]) + ORIGIN, 15)
    found = section_areas(ground, frustum(), stations, 25)
    assert found.station.tolist() == [0, 15, 30, 45, 60]
    assert found.fill == pytest.approx([0, 2.5 * 35, 5 * 30, 2.5 * 35, 0], abs=1e-9)
    assert (found.cut, found.width) == (pytest.approx(0, abs=1e-9), pytest.approx(50))
    turned = section_areas(frustum(), ground, stations, 25)
    assert turned.cut == pytest.approx(found.fill, abs=1e-9)
    with pytest.raises(SurveyError, match="width above 0"):
        section_areas(ground, frustum(), stations, 0)


def test_sections_of_crossing_lines_and_gaps():
    """z = x - 30 against 0: the section along x has 30²/2 of fill and 70²/2 of cut; a hole takes its part off."""
    xy = np.array([[0, 0], [100, 0], [100, 40], [0, 40.0]])
    tilted = surface(np.column_stack([xy, xy[:, 0] - 30]))
    stations = make_stations(np.array([[50, 10], [50, 30.0]]) + ORIGIN, 10)
    found = section_areas(tilted, surface(np.column_stack([xy, np.zeros(4)])), stations, 80)
    assert found.cut == pytest.approx(70**2 / 2)
    assert found.fill == pytest.approx(30**2 / 2)
    assert found.width == pytest.approx(100)
    holed = random_tin(500, 3, keep=lambda x, y: np.hypot(x - 50, y - 50) > 20)
    across = section_areas(holed, holed, make_stations(np.array([[50, 49], [50, 51.0]]) + ORIGIN, 1), 60)
    assert np.all((across.width > 40) & (across.width < 70))
    assert across.cut == pytest.approx(0)


def test_methods_converge_on_rough_ground():
    a, b = random_tin(500, 1), random_tin(400, 2)
    exact = volume_between(a, b)
    errors = []
    for cell in (4.0, 1.0, 0.25):
        found = depth_grid(Comparison(a, b), cell)
        errors.append(abs(found.cut - exact.cut) + abs(found.fill - exact.fill))
    assert errors[2] < errors[0] / 4
    assert errors[2] < 2e-3 * exact.cut
    line = np.array([[5, 20], [60, 50], [95, 80.0]]) + ORIGIN
    coarse, _ = check_by_sections(a, b, line, 20, 8)
    fine, prisms = check_by_sections(a, b, line, 0.5, 8)
    assert fine.cut == pytest.approx(fine.exact_cut, rel=0.01)
    assert prisms.fill == pytest.approx(prisms.exact_fill, rel=0.01)
    assert abs(fine.cut_difference) < abs(coarse.cut_difference)


def test_grid_counts_areas_and_refuses_too_many_cells():
    comparison = Comparison(surface(square(60, 10)), surface(square(30, 12)))
    found = depth_grid(comparison, 0.5)
    assert (found.fill, found.cut, found.area) == (1800, 0, 900)
    for cell, said in ((1e-3, "give a larger cell"), (-1.0, "give a number above 0")):
        with pytest.raises(SurveyError, match=said):
            depth_grid(comparison, cell)


def test_strips_between_sections_tile_a_bend():
    stations = make_stations(np.array([[0, 0], [50, 0], [80, 40.0]]), 10)
    area = 0.0
    for region in strips_between(stations, 6):
        ring = closed(region.rings[0])
        area += 0.5 * np.sum(ring[:-1, 0] * ring[1:, 1] - ring[1:, 0] * ring[:-1, 1])
    assert area == pytest.approx(12 * 100)
