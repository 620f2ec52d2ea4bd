"""Places and heights in whole numbers, against rational arithmetic, and along rims of any skew."""

from __future__ import annotations

from fractions import Fraction

import numpy as np
import pytest

from plugin.core.surface.along import lay_lines
from plugin.core.surface.locate import RIM, heights_at, heights_in, locate, triangles_at, weights_in
from plugin.core.surface.raster import grid_for, sample_grid
from plugin.core.surface.tin import GRID, Tin
from tests.core.surfaces import ORIGIN, delaunay_tin, tin_of


def exact(tin: Tin, place: np.ndarray):
    """Triangle of lowest number under a local place given in units of the grid (fractions), and the height there."""
    px, py = place
    for t, corners in enumerate(tin.triangles.tolist()):
        x, y = ([int(v) for v in tin.grid[corners, axis]] for axis in (0, 1))
        side = [
            (x[(i + 1) % 3] - x[i]) * (py - y[i]) - (y[(i + 1) % 3] - y[i]) * (px - x[i]) for i in range(3)
        ]  # fmt: skip
        if min(side) >= 0:
            z = [Fraction(float(v)) for v in tin.vertices[corners, 2]]
            return t, (side[1] * z[0] + side[2] * z[1] + side[0] * z[2]) / sum(side)
    return -1, None


def holding(tin: Tin, place) -> set:  # type: ignore[no-untyped-def]
    """All triangles that have a place, in half units of the grid, in them or on their edge."""
    found = set()
    for t, corners in enumerate(tin.triangles.tolist()):
        x, y = ([2 * int(v) for v in tin.grid[corners, axis]] for axis in (0, 1))
        if min((x[i - 2] - x[i]) * (place[1] - y[i]) - (y[i - 2] - y[i]) * (place[0] - x[i]) for i in range(3)) >= 0:
            found.add(t)
    return found


def small_tin(rng: np.random.Generator) -> Tin:
    """A few vertices at whole numbers of few values, some triangles left out: rims, notches and holes."""
    unit = int(rng.choice([1, 2, 10_000]))
    spread = rng.integers(2, 7, 2)
    xy = rng.integers(0, spread + 1, (rng.integers(4, 16), 2))
    xy = np.unique(np.vstack([xy, [[0, 0], [spread[0], 0], [0, spread[1]]]]), axis=0) * unit
    z = rng.integers(0, 4, len(xy)).astype(float)
    return delaunay_tin(xy * GRID, z, keep=lambda x, y: (rng.random(len(x)) < 0.8) | (np.arange(len(x)) == 0))


def tie_places(tin: Tin, rng: np.random.Generator) -> np.ndarray:
    """Places in half units of the grid about the surface: on vertices, on edges, within and beside."""
    low, high = 2 * tin.grid.min(axis=0) - 1, 2 * tin.grid.max(axis=0) + 1
    place = rng.integers(low, high + 1, (10, 2))
    a, b = tin.grid[tin.triangles[rng.integers(0, len(tin.triangles), 10)][:, :2]].transpose(1, 0, 2)
    return np.vstack([place, a + b, 2 * a])


def check_ties(cases: int, seed: int) -> None:
    rng = np.random.default_rng(seed)
    done = 0
    while done < cases:
        tin = small_tin(rng)
        place = tie_places(tin, rng)
        local = place * (GRID / 2)
        found = locate(tin, local + tin.origin)
        start = rng.integers(-1, len(tin.triangles), len(place))
        assert np.array_equal(locate(tin, local + tin.origin, start), found)
        height = heights_at(tin, local + tin.origin)
        pairs = set(zip(*(column.tolist() for column in triangles_at(tin, local + tin.origin))))
        for i, (x, y) in enumerate(place.tolist()):
            assert {t for j, t in pairs if j == i} == holding(tin, (x, y))
            triangle, expected = exact(tin, (Fraction(x, 2), Fraction(y, 2)))
            if triangle >= 0:
                assert found[i] == triangle
                assert height[i] == pytest.approx(float(expected), abs=1e-9)
            elif found[i] >= 0:  # beside the rim: the heights of its nearest edge
                assert np.any(tin.neighbours[found[i]] < 0)
            done += 1


def test_ties_by_brute_force() -> None:
    check_ties(1500, 1)


def test_few_places_and_places_followed_from_afar_have_the_same_triangles_as_many() -> None:
    rng = np.random.default_rng(5)
    tin = delaunay_tin(rng.uniform(0, 30, (900, 2)), np.zeros(900), keep=lambda x, y: np.hypot(x - 15, y - 15) > 5)
    xy = tin.origin + np.vstack([rng.uniform(-1, 31, (3000, 2)), tin.vertices[:300, :2], [[np.nan, 1.0]]])
    many = locate(tin, xy)
    assert np.count_nonzero(many < 0) > 200  # beside it and in its hole
    assert np.array_equal(many, locate(tin, xy, rng.integers(-1, len(tin.triangles), len(xy))))
    for some in np.array_split(rng.permutation(len(xy)), 100):
        assert np.array_equal(many[some], locate(tin, xy[some]))


def sliver(rng: np.random.Generator) -> Tin:
    """Triangles of long edges and next to no area, the heights of its corners far apart."""
    length = int(rng.integers(1000, 10**6))
    slope = rng.integers(-length, length)
    at = np.sort(rng.choice(np.arange(1, length), 6, replace=False))
    y = np.rint(at * slope / length).astype(int) + rng.integers(0, 2, 6)
    xy = np.vstack([[0, 0], np.column_stack([at, y]), [length, slope], [length // 2, slope // 2 + length]])
    xy = np.unique(xy - xy.min(axis=0), axis=0)
    return delaunay_tin(xy * GRID, rng.uniform(0, 100, len(xy)))


def check_slivers(cases: int, seed: int) -> None:
    rng = np.random.default_rng(seed)
    for _ in range(cases // 40 + 1):
        tin = sliver(rng)
        weight = rng.dirichlet([0.5, 0.5, 0.5], 40)
        corner = tin.vertices[tin.triangles[rng.integers(0, len(tin.triangles), 40)]][:, :, :2]
        local = np.einsum("ij,ijk->ik", weight, corner)
        found, height = locate(tin, local + tin.origin), heights_at(tin, local + tin.origin)
        fine = np.rint((local + tin.origin - tin.origin) / GRID * 65536).astype(np.int64).tolist()
        for i, (x, y) in enumerate(fine):
            triangle, expected = exact(tin, (Fraction(x, 65536), Fraction(y, 65536)))
            if triangle >= 0:
                assert found[i] == triangle
                assert height[i] == pytest.approx(float(expected), rel=1e-12)
            else:  # rounded off the surface by a billionth of a metre
                assert found[i] >= 0


def test_slivers_are_exact() -> None:
    check_slivers(1200, 2)


def skew_plane(rng: np.random.Generator):
    """A plane of 5 % whose straight sides are skew: many vertices on them, rounded to 0.1 mm. Its four corners."""
    angle, side = rng.uniform(0, np.pi / 2), rng.uniform(20, 200)
    turn = np.array([[np.cos(angle), np.sin(angle)], [-np.sin(angle), np.cos(angle)]])
    corners = np.array([[0, 0], [1, 0], [1, 1], [0, 1]]) * side @ turn
    on = [c + rng.random((60, 1)) * (d - c) for c, d in zip(corners, np.roll(corners, -1, axis=0))]
    xy = np.vstack([corners, *on, rng.uniform(0, side, (40, 2)) @ turn])
    shift = -np.floor(xy.min(axis=0))
    xy = np.unique(np.rint((xy + shift) / GRID), axis=0) * GRID
    aspect = rng.uniform(0, 2 * np.pi)
    gradient = 0.05 * np.array([np.cos(aspect), np.sin(aspect)])
    return delaunay_tin(xy, 100 + xy @ gradient), corners + shift, gradient


def check_rims(places: int, seed: int) -> int:
    """Places on and beside rims of random skew: the height is off by at most slope times distance."""
    rng = np.random.default_rng(seed)
    answered = 0
    for _ in range(places // 1000):
        tin, corners, gradient = skew_plane(rng)
        k = rng.integers(0, 4, 1000)
        place = corners[k] + rng.random((1000, 1)) * (np.roll(corners, -1, axis=0) - corners)[k]
        kind = rng.integers(0, 4, 1000)
        place += np.where(kind == 0, 1, 0)[:, None] * rng.normal(0, 1e-4, (1000, 2))
        for which, step in ((1, 1e-4), (2, 1e-3)):
            place[kind == which] = np.rint(place[kind == which] / step) * step
        height = heights_at(tin, place + tin.origin)
        off = np.abs(height - (100 + place @ gradient))
        on = np.isfinite(off)
        assert np.all(off[on] <= 0.05 * RIM + 1e-9)
        # what is left out lies farther off the straight side than its rounded vertices and RIM explain
        a, u = corners[k], (np.roll(corners, -1, axis=0) - corners)[k]
        beyond = -(u[:, 0] * (place - a)[:, 1] - u[:, 1] * (place - a)[:, 0]) / np.hypot(*u.T)
        assert np.all(beyond[~on] > RIM - 1.5 * GRID)
        assert np.all(on[beyond < RIM - 0.75 * GRID])
        answered += int(on.sum())
    return answered


def test_places_on_and_beside_skew_rims_have_the_heights_of_the_plane() -> None:
    assert check_rims(10_000, 3) > 7000


def test_lines_along_skew_rims_have_the_heights_of_the_plane() -> None:
    rng = np.random.default_rng(4)
    for _ in range(8):
        tin, corners, gradient = skew_plane(rng)
        for digits in (4, 3):
            ring = np.round(np.vstack([corners, corners[:1]]), digits)
            laid = lay_lines(tin, [ring + tin.origin])
            off = laid.xyz[:, 2] - 100 - (laid.xyz[:, :2] - tin.origin) @ gradient
            assert len(laid.xyz) > 20
            assert np.abs(off).max() <= 0.05 * 2 * GRID


def test_cells_on_a_skew_rim_have_the_heights_of_the_plane() -> None:
    rng = np.random.default_rng(5)
    for _ in range(5):
        tin, _, gradient = skew_plane(rng)
        frame = grid_for(tin, 0.37)
        grid = sample_grid(tin, *frame)
        x = frame.west + (np.arange(frame.columns) + 0.5) * frame.cell - tin.origin[0]
        y = (frame.south + (np.arange(frame.rows) + 0.5) * frame.cell - tin.origin[1])[::-1]
        off = grid - (100 + gradient[0] * x + gradient[1] * y[:, None])
        assert np.nanmax(np.abs(off)) <= 0.05 * 2 * GRID


def test_of_two_rims_the_nearer_answers() -> None:
    """Two plates half a millimetre's tenth apart at different heights: the gap belongs to the nearer."""
    tin = tin_of(
        [[0, 0], [10, 0], [10, 10], [11, 0], [21, 0], [11, 10]], [1, 1, 1, 5, 5, 5], [[0, 1, 2], [3, 4, 5]]
    )  # fmt: skip
    x = np.array([10.0, 10.25, 10.5, 10.75, 11.0, 22.9, 21.9])
    place = np.column_stack([x, np.full(7, 0.0)]) * GRID
    assert locate(tin, place + ORIGIN).tolist() == [0, 0, 0, 1, 1, -1, 1]
    np.testing.assert_array_equal(heights_at(tin, place + ORIGIN), [1, 1, 1, 5, 5, np.nan, 5])


def test_beside_its_triangle_a_place_has_the_height_of_the_nearest_place() -> None:
    tin = tin_of([[0, 0], [10_000, 0], [0, 10_000]], [0.0, 1.0, 2.0], [[0, 1, 2]])
    place = np.array([[0.5, -3.0], [-2.0, -2.0], [4.0, 0.1], [0.6, 0.8], [0.25, 0.25]])
    zero = np.zeros(len(place), np.int64)
    np.testing.assert_allclose(heights_in(tin, zero, place), [0.5, 0.0, 1.0, 1.6, 0.75], atol=1e-12)
    weight = weights_in(tin, zero, place)
    assert np.all(weight >= 0)
    np.testing.assert_allclose(weight.sum(axis=1), 1.0, atol=1e-15)


def test_a_place_given_as_a_vertex_is_that_vertex_wherever_the_survey_lies() -> None:
    rng = np.random.default_rng(6)
    for origin in ([0.0, 0.0], [432_000.0, 5_765_000.0], [-3_000_000.0, 7_900_000.0]):
        grid = rng.integers(0, 10**6, (300, 2)) * GRID
        tin = delaunay_tin(grid, rng.uniform(0, 1000, 300), origin=np.array(origin))
        place = tin.vertices[:, :2] + tin.origin
        lowest = np.full(len(tin.vertices), len(tin.triangles))
        np.minimum.at(lowest, tin.triangles.ravel(), np.repeat(np.arange(len(tin.triangles)), 3))
        np.testing.assert_array_equal(locate(tin, place), lowest)
        np.testing.assert_array_equal(heights_at(tin, place), tin.vertices[:, 2])
