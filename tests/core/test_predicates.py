"""Orientation and in-circle against Python's whole numbers, where floats are least to be trusted."""

from __future__ import annotations

from itertools import product

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plugin.core.surface.predicates import LIMIT, in_circle, orientation
from tests.core.exact_check import circle, turn

whole = st.integers(0, LIMIT - 1)
place = st.tuples(whole, whole)

# Primes of the form 4 k + 1 are sums of two squares, so their product is the radius of a circle with many whole points.
_SQUARES = ((2, 1), (3, 2), (4, 1), (5, 2), (6, 1), (5, 4))  # 5, 13, 17, 29, 37, 41


def points_on_a_circle(primes: int, scale: int) -> np.ndarray:
    """Whole points (k, 2) exactly on a circle of radius ``scale`` x the product of the first ``primes`` primes."""
    vectors = {(1, 0)}
    for a, b in _SQUARES[:primes]:
        square = [(a * a - b * b, 2 * a * b), (a * a - b * b, -2 * a * b), (a * a + b * b, 0)]
        vectors = {(x * u - y * v, x * v + y * u) for x, y in vectors for u, v in square}
    turned = {t for x, y in vectors for t in ((x, y), (-y, x), (-x, -y), (y, -x))}
    return np.array(sorted(turned), np.int64) * scale


def quadruples(xy: np.ndarray, count: int, rng: np.random.Generator) -> np.ndarray:
    """Places (count, 4, 2): four different points each, the first three counter-clockwise."""
    pick = np.array([rng.choice(len(xy), 4, replace=False) for _ in range(count)])
    return counter_clockwise(xy[pick])


def counter_clockwise(four: np.ndarray) -> np.ndarray:
    a, b, c = four[:, 0], four[:, 1], four[:, 2]
    area = (b[:, 0] - a[:, 0]) * (c[:, 1] - a[:, 1]) - (b[:, 1] - a[:, 1]) * (c[:, 0] - a[:, 0])
    four = four[area != 0]
    turned = area[area != 0] < 0
    four[turned] = four[turned][:, [1, 0, 2, 3]]
    return four


def exact(four: np.ndarray) -> np.ndarray:
    signs = [circle(*(tuple(p) for p in quad)) for quad in four.tolist()]
    return np.array([(s > 0) - (s < 0) for s in signs])


def ours(four: np.ndarray) -> np.ndarray:
    x, y = four.reshape(-1, 2).T.copy()
    corners = np.arange(len(x)).reshape(-1, 4).T
    return in_circle(x, y, *corners)


def shaken(four: np.ndarray, rng: np.random.Generator, by: int) -> np.ndarray:
    """One corner moved by at most ``by``, the coordinates made not negative."""
    four = four.copy()
    four[np.arange(len(four)), rng.integers(0, 4, len(four))] += rng.integers(-by, by + 1, (len(four), 2))
    return counter_clockwise(four - four.min())


@pytest.mark.parametrize(
    ("primes", "scale"),
    [(2, 1), (3, 1), (4, 1), (4, 700), (5, 1), (5, 90), (6, 1), (6, 11)],
    ids=lambda v: str(v),
)
@pytest.mark.parametrize("by", [0, 1, 40])
def test_in_circle_near_a_circle(primes: int, scale: int, by: int) -> None:
    rng = np.random.default_rng([primes, scale, by])
    xy = points_on_a_circle(primes, scale)
    assert np.ptp(xy, axis=0).max() <= LIMIT
    four = shaken(quadruples(xy, 400, rng), rng, by)
    sign = exact(four)
    if by == 0:
        assert not sign.any()
    else:
        assert {-1, 1} <= set(sign.tolist())
    np.testing.assert_array_equal(ours(four), sign)


def test_every_tier_is_met() -> None:
    """The circles above need the float filter, whole numbers of 64 bits and Python's, each many times."""
    tier = {"float": 0, "int64": 0, "python": 0}
    rng = np.random.default_rng(5)
    for primes, scale in ((2, 1), (4, 1), (5, 1), (6, 11)):
        for by in (0, 1, 40):
            for a, b, c, d in shaken(quadruples(points_on_a_circle(primes, scale), 50, rng), rng, by).tolist():
                size = sum((p[0] - d[0]) ** 2 + (p[1] - d[1]) ** 2 for p in (a, b, c))
                bound = 5e-16 * float(size) ** 2
                if abs(circle(a, b, c, d)) > 2 * bound:
                    tier["float"] += 1
                else:
                    tier["int64" if bound <= 2.0**61 else "python"] += 1
    assert min(tier.values()) >= 50, tier


def test_in_circle_at_the_corners_of_the_range() -> None:
    """All quadruples of places near the four corners: differences of 31 bits, determinants of 124."""
    ends = (0, 1, LIMIT // 2, LIMIT - 2, LIMIT - 1)
    xy = np.array(list(product(ends, ends)), np.int64)
    four = quadruples(xy, 4000, np.random.default_rng(0))
    sign = exact(four)
    assert set(sign.tolist()) == {-1, 0, 1}
    np.testing.assert_array_equal(ours(four), sign)


def test_in_circle_of_nearly_straight_corners() -> None:
    """Circles of enormous radius through points that are nearly on one line."""
    rng = np.random.default_rng(3)
    t = rng.integers(0, LIMIT // 3, (3000, 4))
    four = counter_clockwise(np.stack([3 * t + rng.integers(0, 2, t.shape), t + rng.integers(0, 2, t.shape)], -1))
    np.testing.assert_array_equal(ours(four), exact(four))


def test_in_circle_beside_a_corner_of_a_sliver() -> None:
    """Determinants of 64 to 68 bits that the filter does not decide: modulo 2**64 their sign would be lost."""
    rng = np.random.default_rng(11)
    long = rng.integers(LIMIT // 4, LIMIT // 2, (3000, 2))
    high, beside = rng.integers(0, 60, (3000, 2)), rng.integers(-40, 41, (3000, 2))
    start = np.full((3000, 2), 50)
    four = np.stack([start, np.stack([long[:, 0], 50 + high[:, 0]], -1), np.stack([long[:, 1], 50 + high[:, 1]], -1),
                     start + beside], axis=1)  # fmt: skip
    four = counter_clockwise(four)
    sign = exact(four)
    assert {-1, 1} <= set(sign.tolist())
    np.testing.assert_array_equal(ours(four), sign)


@settings(max_examples=300, deadline=None)
@given(place, place, place, place)
def test_in_circle_of_any_places(a, b, c, d) -> None:
    four = counter_clockwise(np.array([[a, b, c, d]], np.int64))
    np.testing.assert_array_equal(ours(four), exact(four))


@pytest.mark.parametrize("count", [0, 1, (1 << 15) - 1, 1 << 15, (1 << 15) + 1])
def test_in_circle_of_any_number(count: int) -> None:
    square = np.array([[0, 0], [9, 0], [9, 9], [0, 9]])
    inside = square.copy()
    inside[3] = [4, 4]
    four = np.where((np.arange(count) % 2)[:, None, None] == 1, inside, square)
    np.testing.assert_array_equal(ours(four), np.arange(count) % 2)


@settings(max_examples=300, deadline=None)
@given(place, place, place)
def test_orientation_of_any_places(a, b, c) -> None:
    x, y = np.array([a, b, c], np.int64).T.copy()
    assert orientation(x, y, *np.arange(3)[:, None]).tolist() == [turn(a, b, c)]


def test_orientation_at_the_ends_of_the_range() -> None:
    ends = (0, 1, 2, LIMIT // 2, LIMIT - 2, LIMIT - 1)
    xy = np.array(list(product(ends, ends)), np.int64)
    a, b, c = np.array(list(product(range(len(xy)), repeat=3)))[::7].T
    expected = [turn(xy[i].tolist(), xy[j].tolist(), xy[k].tolist()) for i, j, k in zip(a, b, c)]
    assert orientation(*xy.T.copy(), a, b, c).tolist() == expected


def test_orientation_tells_one_unit_from_straight() -> None:
    """Three points on a line of 100 km, the last beside it by the least step there is."""
    x = np.array([0, LIMIT - 1, (LIMIT - 1) // 3], np.int64)
    y = np.array([0, LIMIT - 1, (LIMIT - 1) // 3], np.int64)
    for off, sign in ((0, 0), (1, 1), (-1, -1)):
        z = y + np.array([0, 0, off])
        assert np.sign(orientation(x, z, *np.arange(3)[:, None]))[0] == sign
