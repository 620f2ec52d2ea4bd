"""Islands in their kerbs, and lines that end where they do: parts against what is known, and places against the truth.

Heights of kerbs and sizes of islands: common practice, no source.
"""

from __future__ import annotations

from types import SimpleNamespace

import numpy as np
import pytest

from plugin.core.features.courses import Course
from plugin.core.features.find import find_features
from plugin.core.features.found import FoundKind
from plugin.core.features.gaps import _goes_on, gaps_of
from plugin.core.features.island_shape import Heights, fit_outline
from plugin.core.features.islands import _courses
from plugin.core.features.plane import segments_cross
from tests.core.simulated_lines import ORIGIN, middle_of, score
from tests.core.simulated_places import PLACES


def points_about(inside, rise=0.11, sigma=0.01, seed=1):
    """Places of passes both ways over an island about (3, 5), their heights, and noise."""
    random = np.random.default_rng(seed)
    rows, run = np.arange(-9.0, 9.0, 2.3), np.arange(-9.0, 9.0, 0.5)
    one = np.array([(row + random.normal(0, 0.05), place) for row in rows for place in run + random.uniform(0, 0.5)])
    xy = np.vstack([one, one[:, ::-1] + 0.3]) + np.array([3.0, 5.0])
    z = 20 + 0.02 * xy[:, 0] - 0.01 * xy[:, 1] + rise * inside(xy) + random.normal(0, sigma, len(xy))
    return xy, z, np.full(len(xy), sigma)


def test_an_outline_is_found_from_heights_whatever_its_kind():
    turn = 0.3
    c, s = np.cos(turn), np.sin(turn)

    def local(xy):
        return (xy - (3, 5)) @ np.array([[c, -s], [s, c]])

    def box(xy):
        return (np.abs(local(xy)) < (5.0, 1.25)).all(axis=1)

    def oval(xy):
        return np.hypot(*(local(xy) / (4.5, 3.0)).T) < 1

    grid = np.column_stack([column.ravel() for column in np.meshgrid(np.arange(-4, 10, 0.1), np.arange(-1, 11, 0.1))])
    for inside in (box, oval):
        xy, z, noise = points_about(inside)
        z[40:44] += 0.6  # a lifted pole
        begin = xy[inside(xy)]
        outline = fit_outline(xy, z, noise, begin[np.hypot(*(begin - (3, 5)).T) > 1.0], 0.11)
        assert outline is not None
        assert outline.shape[:2] == pytest.approx((3, 5), abs=0.25)
        other = (outline.away(grid) > 0) != inside(grid)
        assert other.sum() < 0.1 * inside(grid).sum()
        assert outline.rise == pytest.approx(0.11, abs=0.01)
        foot, _, var = outline.heights(outline.vertices())
        true = 20 + outline.vertices() @ (0.02, -0.01)
        assert np.abs(foot - true).max() < 0.02
        assert np.sqrt(np.mean((foot - true) ** 2)) < 4 * np.sqrt(var.mean()) + 0.005


def test_no_outline_where_the_ground_is_none_of_an_island():
    xy, _, noise = points_about(lambda xy: np.zeros(len(xy)))
    z = 20 + 0.15 * np.sin(xy[:, 0] * 1.9) * np.sin(xy[:, 1] * 2.3)
    assert fit_outline(xy, z, noise, np.array([[0, 4], [6, 4], [6, 6], [0, 6.0]]), 0.11) is None


def test_many_shapes_are_looked_at_as_one_by_one():
    xy, z, noise = points_about(lambda xy: np.hypot(*(xy - (3, 5)).T) < 3)
    heights = Heights(xy, z, noise, 0.11)
    shapes = np.array([[3, 5, 0, 6, 6, -1.0], [3.2, 5, 0.1, 6, 5, -1.0], [3, 4.8, 0.2, 7, 5, 0.8]])
    together = heights.fitted(shapes, 0.4).departures
    for shape, row in zip(shapes, together):
        np.testing.assert_allclose(heights.fitted(shape[None], 0.4).departures[0], row, atol=1e-9)
    assert heights.log_likely(shapes).argmax() == 0


def test_a_ring_is_open_where_no_pass_shows_its_end():
    (ring,) = _courses(np.array([0, -1, 1, 0, 2, 1, -1, 2]))
    assert ring.closed
    assert len(ring.nodes) == 8
    sides = _courses(np.array([0, 1, 2, -1, 2, 1, 0, -1]))
    assert [side.nodes.tolist() for side in sides] == [[4, 5, 6], [0, 1, 2]] or [
        side.nodes.tolist() for side in sides
    ] == [[0, 1, 2], [4, 5, 6]]


def test_segments_cross_or_do_not():
    a, b = np.array([[0, 0], [0, 0.0]]), np.array([[2, 2], [2, 2.0]])
    c, d = np.array([[0, 2], [3, 0.0]]), np.array([[2, 0], [3, 9.0]])
    assert segments_cross(a, b, c, d).tolist() == [True, False]


def test_islands_of_a_car_park_are_rings_in_their_places():
    found = asked = false = drawn = 0.0
    off = []
    for seed in range(4):
        site = PLACES["car park"](seed)
        features = find_features(site.points)
        islands = [type(site)(**{**vars(site), "lines": (line,)}) for line in site.lines[1:]]
        scores = [score(one, features) for one in islands]
        found += sum(one.found for one in scores)
        asked += sum(one.asked for one in scores)
        whole = score(site, features)
        false, drawn = false + whole.false, drawn + whole.drawn
        for line in features.strong:
            if line.closed and line.length < 40:
                xy = middle_of(line)[0]
                side = 0.4 * np.column_stack([-np.gradient(xy[:, 1]), np.gradient(xy[:, 0])]) / 0.1
                rise = site.ground(*(xy + side).T) - site.ground(*(xy - side).T)
                off.append(np.median(rise) - line.step)
    assert asked > 150
    assert found >= 0.6 * asked  # without a look for islands: less than 0.1
    assert false <= 0.08 * drawn
    assert len(off) >= 6
    assert np.abs(off).max() < 0.02


def test_what_ends_before_a_junction_does_not_go_on_along_its_kerbs():
    total = None
    for seed in range(6):
        site = PLACES["meeting"](seed)
        one = score(site, find_features(site.points))
        total = one if total is None else total + one
    assert total.found >= 0.85 * total.asked
    assert total.false <= 0.04 * total.drawn


def test_no_bend_runs_along_a_strong_kerb():
    for seed in range(4):
        features = find_features(PLACES["meeting"](seed).points)
        steps = np.vstack([middle_of(line)[0] for line in features.strong if line.kind is FoundKind.STEP])
        for line in features.strong:
            if line.kind is not FoundKind.STEP:
                xy = np.column_stack([line.easting, line.northing]) - ORIGIN
                near = np.min(np.hypot(*(xy[:, None] - steps[None, ::3]).transpose(2, 0, 1)), axis=1) < 0.5
                assert np.count_nonzero(near) <= 1


@pytest.mark.parametrize(
    ("beyond", "nothing", "on"),
    [
        ([(12, 0), (15, 0), (18, 0)], 2, True),  # a lowered kerb
        ([(12, 5), (12, 8), (12, 11)], 0, True),  # a rounded corner
        ([(12, 5), (15, 5), (18, 5)], 0, False),  # beside, not ahead
        ([(12, 0.3)], 0, True),
        ([(12, 0.8)], 0, True),
        ([(12, 0.8)], 1, False),  # one node beyond a pass that shows nothing
        ([(12, 4)], 0, False),
    ],
)
def test_a_line_goes_on_beyond_a_gap_only_as_it_came(beyond, nothing, on):
    xy = np.array([(-6, 0), (-3, 0), (0, 0), (3, 0), (6, 0), *beyond], float)
    nodes = SimpleNamespace(x=xy[:, 0], y=xy[:, 1], decades=np.zeros(len(xy)))
    k = np.arange(len(xy))
    assert _goes_on(nodes, k, 4, nothing) is on
    gaps = gaps_of(nodes, [Course(k)], np.zeros(len(k), bool))
    assert not gaps or gaps[0][0] == (4, 5, 0)
