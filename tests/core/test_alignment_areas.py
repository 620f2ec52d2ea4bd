"""Areas in cross-sections: the example of a handbook, shapely, and gaps."""

from dataclasses import replace

import numpy as np
import pytest
import shapely

from plugin.core.alignment.areas import NoisySurface, section_areas
from plugin.core.alignment.line import make_alignment
from plugin.core.alignment.sections import cut_sections
from tests.core.surfaces import ORIGIN, delaunay_tin, random_tin, ring


def test_end_areas_of_a_handbook():
    """Base 20, slopes 1 1/2 to 1, cuts of 5, 10 and 15: G. L. Vose, Handbook of Railroad Construction (1857), art. 108;
    areas 137.5, 350 and 637.5 from its unrounded figures."""
    for depth, area in ((5, 137.5), (10, 350.0), (15, 637.5)):
        half = 10 + 1.5 * depth
        y = np.array([0, 60 - half, 50, 70, 60 + half, 120.0])
        z = np.array([100, 100, 100 - depth, 100 - depth, 100, 100.0])
        xy = np.array([(x, v) for x in (0.0, 20.0) for v in y])
        design = delaunay_tin(xy, np.tile(z, 2))
        existing = delaunay_tin(np.array([[0, 0], [20, 0], [20, 120], [0, 120.0]]), np.full(4, 100.0))
        line = make_alignment(ORIGIN + np.array([[0, 60], [20, 60.0]]))
        sections = cut_sections(line, np.array([10.0]), 50.0, 50.0, [("ground", existing), ("road", design)])
        areas = section_areas(sections)
        assert (areas.cut[0], areas.fill[0], areas.covered[0]) == (pytest.approx(area), pytest.approx(0), 100)


def polygon_area(one, other):
    """Areas where ``other`` is above and below ``one``, by shapely, from both lines as (offset, height)."""
    low = min(one[1].min(), other[1].min()) - 1

    def under(part):
        return shapely.polygons([(part[0][0], low), *zip(*part), (part[0][-1], low)])

    a, b = under(one), under(other)
    return shapely.difference(b, a).area, shapely.difference(a, b).area


def test_areas_agree_with_shapely():
    one, two = random_tin(500, 1), random_tin(400, 2)
    line = make_alignment(ORIGIN + np.array([[10.0, 30.0], [90.0, 60.0]]))
    distance = np.arange(2.0, 80.0, 4.0)
    sections = cut_sections(line, distance, 12.0, 15.0, [("one", one), ("two", two)])
    areas = section_areas(sections)
    for k in range(len(distance)):
        ((a,), (b,)) = (cut.parts(k) for cut in sections.cuts)
        assert (areas.fill[k], areas.cut[k]) == pytest.approx(polygon_area(a, b), abs=1e-6)
    back = section_areas(sections, 1, 0)
    np.testing.assert_allclose(back.cut, areas.fill, atol=1e-9)


def test_gaps_count_for_nothing():
    one, two = random_tin(900, 3, keep=ring), random_tin(500, 4)
    line = make_alignment(ORIGIN + np.array([[40.0, 50.0], [60.0, 50.0]]))
    sections = cut_sections(line, np.array([0.0, 10.0]), 40.0, 40.0, [("one", one), ("two", two)])
    areas = section_areas(sections)
    widths = [sum(o[-1] - o[0] for o, _ in sections.cuts[0].parts(k)) for k in range(2)]
    np.testing.assert_allclose(areas.covered, widths, atol=1e-6)
    assert 35 < areas.covered[1] < 55


def test_sigmas_of_areas_against_monte_carlo():
    """Noisy copies of both surfaces, each cut and measured anew; nothing of the weights in it."""
    rng = np.random.default_rng(3)
    one, two = random_tin(500, 1), random_tin(400, 2)
    two = replace(two, vertices=two.vertices + np.array([0.0, 0.0, 0.3]))
    line = make_alignment(ORIGIN + np.array([[10.0, 30.0], [90.0, 60.0]]))
    distance = np.array([20.0, 40.0, 60.0])

    def areas(first, second, noise=None):
        sections = cut_sections(line, distance, 12.0, 15.0, [("one", first), ("two", second)])
        return section_areas(sections, noise=noise)

    own = rng.uniform(0.01, 0.03, len(one.vertices))
    found = areas(one, two, (NoisySurface(one, own), NoisySurface(two, 0.02)))
    drawn = []
    for _ in range(1500):
        noisy = []
        for tin, sigma in ((one, own), (two, 0.02)):
            height = tin.vertices[:, 2] + rng.normal(0, 1, len(tin.vertices)) * sigma
            noisy.append(replace(tin, vertices=np.column_stack([tin.vertices[:, :2], height])))
        each = areas(*noisy)
        drawn.append([each.cut, each.fill, each.fill - each.cut])
    spread = np.std(drawn, axis=0, ddof=1)
    assert np.all(found.cut > 0)
    for mine, theirs in zip((found.cut_sigma, found.fill_sigma, found.net_sigma), spread):
        np.testing.assert_allclose(mine, theirs, rtol=0.08)  # 1,500 draws: 2 % of a standard deviation, and slack


def test_sigma_of_a_raised_plane_by_hand():
    """A strip of one square, its corners alone: the area over its middle is 10 m times the mean of four heights."""
    corners = np.array([[0, 0], [10, 0], [10, 10], [0, 10.0]])
    low, high = delaunay_tin(corners, np.full(4, 50.0)), delaunay_tin(corners, np.full(4, 51.0))
    line = make_alignment(ORIGIN + np.array([[0.0, 5.0], [10.0, 5.0]]))
    sections = cut_sections(line, np.array([5.0]), 5.0, 5.0, [("low", low), ("high", high)])
    without = section_areas(sections)
    assert np.isnan(without.fill_sigma[0])
    areas = section_areas(sections, noise=(NoisySurface(low, 0.01), NoisySurface(high, 0.0)))
    # along the middle the heights of the two corners on the diagonal count 3/8 or 1/8 each, by the diagonal chosen
    weights = np.array([3, 3, 1, 1]) / 8
    assert areas.fill[0] == pytest.approx(10.0)
    assert areas.fill_sigma[0] == pytest.approx(0.01 * 10 * np.sqrt(np.sum(weights**2)), rel=1e-9)
    assert (areas.cut_sigma[0], areas.net_sigma[0]) == (0.0, pytest.approx(areas.fill_sigma[0]))
