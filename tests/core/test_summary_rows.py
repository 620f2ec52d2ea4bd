"""Rows that sum points up are told by their values; points stay points."""

import numpy as np

from plugin.core.points.summary_rows import summary_rows


def grid(slope=0.05):
    east, north = (one.ravel() for one in np.meshgrid(np.arange(6) * 2.0 + 1000, np.arange(7) * 2.0 + 5000))
    return np.array([east, north, 50 + slope * (east - 1000)])


def walk(count=60):
    rng = np.random.default_rng(4)
    return np.round(np.array([rng.uniform(0, 90, count), rng.uniform(0, 60, count), rng.uniform(80, 84, count)]), 3)


def with_rows(points, *rows):
    return np.column_stack([points, *rows])


def test_the_corner_of_a_grid_and_a_second_visit_of_it_stay():
    points = grid()
    assert summary_rows(points) == []
    assert summary_rows(with_rows(points, points[:, 0])) == []
    assert summary_rows(with_rows(points, points[:, 17])) == []


def test_means_sums_and_limits_go():
    points = walk()
    rows = [np.round(one(axis=1), 3) for one in (points.mean, points.min, points.max, points.sum)]
    assert summary_rows(with_rows(points, *rows)) == [60, 61, 62, 63]
    for row in rows:
        assert summary_rows(with_rows(points, row)) == [60]


def test_a_row_of_which_one_coordinate_differs_stays():
    points = walk()
    for place in range(3):
        row = np.round(points.mean(axis=1), 3)
        row[place] += 0.011
        assert summary_rows(with_rows(points, row)) == []


def test_random_walks_lose_nothing():
    rng = np.random.default_rng(5)
    for _ in range(300):
        points = np.round(rng.uniform(0, 20, (3, 12)), 2)
        assert summary_rows(points) == []
