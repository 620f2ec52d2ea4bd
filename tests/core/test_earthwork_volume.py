"""Volumes of solids with closed forms, between surfaces, to levels, planes and rings.

Solids' formulas: any handbook of solid geometry (frustum V = h/3 (A + a + sqrt(A a)), wedge V = h b/6 (2 a + c)).
"""

from dataclasses import replace

import numpy as np
import pytest

from plugin.core.earthwork.plane import Plane, plane_falling, plane_through
from plugin.core.earthwork.ring import BaseKind, ring_base
from plugin.core.earthwork.uncovered import coverage
from plugin.core.earthwork.volume import volume_between
from plugin.core.earthwork.zero_line import zero_line
from plugin.core.messages import SurveyError
from tests.core.earthworks import FRUSTUM, closed, frustum, square, surface, volume_in_ring, volume_to
from tests.core.surfaces import ORIGIN, delaunay_tin, hills, random_tin


def rough(seed, n=300):
    return random_tin(n, seed)


def test_frustum_and_pyramid():
    assert volume_to(frustum(), 10).cut == pytest.approx(FRUSTUM, rel=1e-12)
    assert volume_between(surface(square(60, 10)), frustum()).fill == pytest.approx(FRUSTUM, rel=1e-12)
    pyramid = surface(np.vstack([square(30, 0), [[15, 15, 7]]]))
    found = volume_between(pyramid, surface(square(30, 0)))
    assert (found.cut, found.fill) == (pytest.approx(30 * 30 * 7 / 3, rel=1e-12), 0)
    assert found.cut_area == pytest.approx(900, rel=1e-12)


def test_wedge_with_a_short_ridge():
    base = np.array([[0, 0, 5], [30, 0, 5], [30, 12, 5], [0, 12, 5.0]])
    ridge = np.array([[8, 6, 9], [20, 6, 9.0]])
    ribs = [np.array([base[i], ridge[j]]) for i, j in ((0, 0), (1, 1), (2, 1), (3, 0))]
    wedge = surface(np.vstack([base, ridge]), [ridge, *ribs])
    assert volume_to(wedge, 5).cut == pytest.approx(12 * 4 / 6 * (2 * 30 + 12), rel=1e-12)


def test_planes_through_each_other():
    """z = x - 30 against 0 on 100 x 40: cut over 70 m, fill over 30 m."""
    xy = np.array([[0, 0], [100, 0], [100, 40], [0, 40.0]])
    tilted = surface(np.column_stack([xy, xy[:, 0] - 30]))
    level = surface(np.vstack([np.column_stack([xy, np.zeros(4)]), [[31.4159, 17.77, 0], [62.1, 8.3, 0]]]))
    for found in (volume_between(tilted, level), volume_to(tilted, 0)):
        assert found.cut == pytest.approx(70**2 / 2 * 40, rel=1e-12)
        assert found.fill == pytest.approx(30**2 / 2 * 40, rel=1e-12)
        assert (found.cut_area, found.fill_area) == (pytest.approx(2800), pytest.approx(1200))
    (line,) = zero_line(tilted, level)
    assert np.allclose(line[:, 0], ORIGIN[0] + 30, atol=1e-6)
    assert np.allclose(line[:, 2], 0, atol=1e-9)
    assert sorted(line[[0, -1], 1] - ORIGIN[1]) == pytest.approx([0, 40])


def test_zero_line_along_edges_of_both():
    xy = np.array([[0, 0], [10, 0], [20, 0], [20, 10], [10, 10], [0, 10.0]])
    roof = surface(np.column_stack([xy, [-1, 0, 1, 1, 0, -1]]), [np.array([[10, 0, 0], [10, 10, 0.0]])])
    (line,) = zero_line(roof, surface(np.column_stack([xy, np.zeros(6)])))
    assert len(zero_line(roof, roof)) == 0
    assert np.ptp(line[:, 1]) == pytest.approx(10)


@pytest.mark.parametrize("n", [60, 200])
def test_cone_and_cap_as_polyhedra_and_in_the_limit(n):
    """The polyhedron's own volume to 1e-9, and the solid's within its chord error, which falls with 1/n²."""
    angle = 2 * np.pi * np.arange(n) / n
    circle = np.round(np.column_stack([np.cos(angle), np.sin(angle)]) * 20, 4) + 25
    cone = surface(np.vstack([np.column_stack([circle, np.zeros(n)]), [[25, 25, 9]]]))
    after = np.roll(circle, -1, axis=0)
    area = 0.5 * np.sum(circle[:, 0] * after[:, 1] - circle[:, 1] * after[:, 0])
    found = volume_to(cone, 0).cut
    assert found == pytest.approx(area * 9 / 3, rel=1e-9)
    assert found == pytest.approx(np.pi * 20**2 * 9 / 3, rel=8 / n**2)
    radius, reach = 50.0, np.linspace(0, 20, n // 4 + 1)[1:]
    rings = [np.column_stack([(circle - 25) * r / 20 + 25, np.full(n, np.sqrt(radius**2 - r**2))]) for r in reach]
    cap = surface(np.vstack([*rings, [[25, 25, radius]]]))
    height = radius - np.sqrt(radius**2 - 20**2)
    assert volume_to(cap, radius - height).cut == pytest.approx(
        np.pi * height**2 * (3 * radius - height) / 3, rel=80 / n**2
    )


def test_prismatoid_between_two_rough_meshings():
    """Different points on the faces of one solid change nothing."""
    rng = np.random.default_rng(4)
    base = frustum()
    inner = np.round(rng.uniform(21, 39, (50, 2)), 4)
    top = np.column_stack([inner, np.full(50, 15.0)])
    ring_base, ring_top = square(40, 10, (10, 10)), square(20, 15, (20, 20))
    ribs = [np.array([a, b]) for a, b in zip(ring_base, ring_top)]
    denser = surface(
        np.vstack([square(60, 10), ring_base, ring_top, top]), [closed(ring_base), closed(ring_top), *ribs]
    )
    found = volume_between(base, denser)
    assert max(found.cut, found.fill) < 1e-9 * FRUSTUM
    assert volume_between(surface(square(60, 2)), denser).fill == pytest.approx(FRUSTUM + 8 * 3600, rel=1e-12)


def test_exchanging_the_surfaces_exchanges_cut_and_fill_to_the_last_digit():
    for seed in range(6):
        a, b = rough(seed), rough(seed + 100, 200)
        one, other = volume_between(a, b), volume_between(b, a)
        assert (one.cut, one.fill, one.net) == (other.fill, other.cut, -other.net)
        assert one.reversed() == other
        assert one.cut > 0
        assert one.fill > 0


def test_difference_of_volumes_to_a_level():
    a, b = rough(1), rough(2)
    both = volume_between(a, b)
    xy = [t.vertices[np.unique(t.triangles), :2] for t in (a, b)]
    assert both.common_area < min(a.plan_area, b.plan_area)
    assert both.existing_only == pytest.approx(a.plan_area - both.common_area)
    square_a, square_b = (delaunay_tin(np.vstack([p, corners()]), hills(*np.vstack([p, corners()]).T)) for p in xy)
    net = volume_between(square_a, square_b).net
    assert net == pytest.approx(volume_to(square_b, 90).cut - volume_to(square_a, 90).cut, rel=1e-9)


def corners():
    return np.array([[0, 0], [100, 0], [100, 100], [0, 100.0]])


def test_order_of_points_and_the_place_on_the_national_grid_do_not_matter():
    rng = np.random.default_rng(7)
    clouds = [np.round(rng.uniform(0, 100, (200, 2)), 4) for _ in range(2)]
    z = [hills(*c.T) + rng.normal(0, 0.3, 200) for c in clouds]
    base = volume_between(*(surface(np.column_stack([c, h]), origin=np.zeros(2)) for c, h in zip(clouds, z)))
    mixed = rng.permutation(200)
    again = volume_between(*(surface(np.column_stack([c, h])[mixed], origin=np.zeros(2)) for c, h in zip(clouds, z)))
    assert again.cut == pytest.approx(base.cut, rel=1e-12)
    for origin in ((432_000.0, 5_765_000.0), (2_600_000.37, 1_200_000.91)):
        moved = volume_between(*(surface(np.column_stack([c, h]), origin=np.array(origin)) for c, h in zip(clouds, z)))
        assert (moved.cut, moved.fill) == (pytest.approx(base.cut, rel=1e-9), pytest.approx(base.fill, rel=1e-9))


def test_plane_from_points_and_from_its_fall():
    plane = plane_through([[10, 20, 5], [20, 20, 6], [10, 30, 3]])
    assert plane.at([[0, 0]])[0] == pytest.approx(8)
    falling = plane_falling(5, 10, 20, 2.0, 90)
    assert falling.at([[60, 20]])[0] == pytest.approx(4)
    assert falling.at([[10, 90]])[0] == pytest.approx(5)
    with pytest.raises(SurveyError, match="straight line"):
        plane_through([[0, 0, 1], [1, 1, 2], [2, 2, 5]])
    with pytest.raises(SurveyError, match="no number"):
        Plane(float("nan"))
    with pytest.raises(SurveyError, match="where no ground is"):
        Plane(1e8)


def test_sloping_plane_by_the_prism_formula():
    """Volume of a triangle's prism: area times the mean of the three depths."""
    tin = rough(3)
    plane = Plane(80.0, 0.02, -0.03, ORIGIN[0] + 10, ORIGIN[1] + 5)
    corner = tin.vertices[tin.triangles]
    one, two = corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]
    area = 0.5 * (one[:, 0] * two[:, 1] - one[:, 1] * two[:, 0])
    depth = corner[:, :, 2] - (80 + 0.02 * (corner[:, :, 0] - 10) - 0.03 * (corner[:, :, 1] - 5))
    assert depth.min() > 0
    found = volume_to(tin, plane)
    assert found.cut == pytest.approx(np.sum(area * depth.mean(axis=1)), rel=1e-12)
    assert (found.existing_only, found.design_only) == (pytest.approx(0, abs=1e-9), pytest.approx(0, abs=1e-9))


def test_stockpile_from_its_toe_line_and_pit_from_its_rim():
    toe = square(40, 10, (10, 10)) + np.append(ORIGIN, 0)
    found = volume_in_ring(frustum(), toe)
    assert found.fill == pytest.approx(FRUSTUM, rel=1e-12)
    assert found.cut == pytest.approx(0, abs=1e-9)
    assert found.design_only == pytest.approx(60**2 - 40**2)
    pit = replace(frustum(), vertices=frustum().vertices * [1, 1, -1])
    assert volume_in_ring(pit, toe * [1, 1, -1]).cut == pytest.approx(FRUSTUM, rel=1e-12)


def test_ring_without_heights_takes_them_from_the_surface():
    toe = square(44, 0, (8, 8))[:, :2] + ORIGIN
    base, said = ring_base(frustum(), closed(toe))
    assert volume_between(base, frustum()).fill == pytest.approx(FRUSTUM, rel=1e-9)
    assert said[0].text.code == "earthwork.ring_from_surface"
    with pytest.raises(SurveyError, match="leaves the surface for"):
        ring_base(frustum(), toe + 30)
    with pytest.raises(SurveyError, match="2 different corners"):
        ring_base(frustum(), toe[:2])


def test_what_is_not_covered_as_polygons():
    hole = random_tin(400, 5, keep=lambda x, y: np.hypot(x - 50, y - 50) > 15)
    other = replace(random_tin(300, 6), origin=ORIGIN + np.array([37, -11]))
    volume, covered = volume_between(hole, other), coverage(hole, other)
    for polygons, area in (
        (covered.common, volume.common_area),
        (covered.existing_only, volume.existing_only),
        (covered.design_only, volume.design_only),
    ):
        assert sum(p.plan_area for p in polygons) == pytest.approx(area, abs=0.02)  # rims cross at the 0.1 mm grid
    assert volume.existing_only > 1000
    assert volume.design_only > 1000


def test_surfaces_that_do_not_meet():
    far = replace(rough(2), origin=ORIGIN + 1000)
    found = volume_between(rough(1), far)
    assert (found.cut, found.fill, found.common_area) == (0, 0, 0)
    assert found.existing_only == pytest.approx(rough(1).plan_area)


def test_bases_of_a_stockpile_on_a_slope():
    """A level top of 15 m over a toe on ground rising 0.1 m a metre: each base differs by a wedge over 40 x 40."""
    flat = surface(square(60, 15))
    toe = square(40, 10.0, (10, 10))
    toe[:, 2] += 0.1 * (toe[:, 0] - 10)  # 10 m in the west, 14 m in the east
    toe += np.append(ORIGIN, 0)
    above = {kind: volume_in_ring(flat, toe, kind).fill for kind in BaseKind}
    sloping = 40 * 40 * (5 - 0.1 * 40 / 2)
    assert above[BaseKind.SURFACE] == pytest.approx(sloping, rel=1e-9)
    assert above[BaseKind.PLANE] == pytest.approx(sloping, rel=1e-9)
    assert above[BaseKind.LOWEST] == pytest.approx(40 * 40 * 5, rel=1e-9)
    assert above[BaseKind.HIGHEST] == pytest.approx(40 * 40 * 1, rel=1e-9)
    base, said = ring_base(flat, toe, BaseKind.LOWEST)
    assert base.height_range == (pytest.approx(10), pytest.approx(10))
    assert said[-1].values["high"] == pytest.approx(4)


def test_best_plane_of_a_toe_that_is_none():
    """One corner of a square 0.4 m up: least squares lift the plane by a quarter of it at the middle."""
    toe = square(40, 10, (10, 10)) + np.append(ORIGIN, 0)
    toe[0, 2] += 0.4
    base, said = ring_base(surface(square(60, 15)), toe, BaseKind.PLANE)
    middle = np.mean(base.vertices[np.unique(base.triangles), 2])
    assert middle == pytest.approx(10.1)
    assert (said[0].values["low"], said[0].values["high"]) == (pytest.approx(0.1), pytest.approx(0.1))
