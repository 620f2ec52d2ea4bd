"""Sections of ditches, mouths and forks: parts against plain references, and places of another kind against the truth.

Depths of ditches and heights of kerbs: common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace
from types import SimpleNamespace

import numpy as np
import pytest
from scipy.optimize import least_squares
from scipy.spatial import cKDTree

from plugin.core.features import drawn
from plugin.core.features.courses import Course, without_tails
from plugin.core.features.ditch_section import Heights, _model, depth_at, fit_section
from plugin.core.features.find import find_features
from plugin.core.features.forks import join_forks
from plugin.core.features.found import FoundKind, FoundLine
from tests.core.simulated_lines import ORIGIN, ditch, junction, middle_of, real_grid, score
from tests.core.simulated_places import PLACES, confluence, lane, small_tee

SEEDS = range(4)


# --- the section ------------------------------------------------------------------------------------


def heights(shape, places, depth=0.5, sigma=0.01, seed=1):
    random = np.random.default_rng(seed)
    v = np.arange(-3.0, 3.0, 0.5) + random.uniform(0, 0.5, (len(places), 1))
    z = (
        0.03 * v
        - depth * depth_at(v - np.array(places)[:, None], np.array(shape))[0]
        + random.normal(0, sigma, v.shape)
    )
    return Heights(v, z, np.full(v.shape, sigma**-2.0))


def test_how_the_section_changes_is_what_differences_say():
    random = np.random.default_rng(2)
    v, own = random.uniform(-2, 2, (3, 40)), random.normal([0, 0, 0, 0.5, 0, 0], 0.1, (3, 6))
    shape = np.array([0.2, 0.8, 1.0])
    model, to_own, to_shape = _model(v, own, shape)
    step = 1e-7
    for i in range(6):
        moved = own.copy()
        moved[:, i] += step
        off = np.abs((_model(v, moved, shape)[0] - model) / step - to_own[:, :, i])
        assert np.mean(off < 1e-4) > 0.98  # but at a kink that the step passes
    for i in range(3):
        moved = shape.copy()
        moved[i] += step
        off = np.abs((_model(v, own, moved)[0] - model) / step - to_shape[:, :, i])
        assert np.mean(off < 1e-4) > 0.98


def test_a_section_is_the_least_squares_one():
    """Against scipy's solver on the same squares, priors included, with heights that no weight of a stray touches."""
    from plugin.core.features import ditch_section as parts

    places = np.array([0.1, -0.2, 0.0, 0.15, -0.1, 0.05, 0.2])
    given = heights([0.0, 0.9, 0.8], places)
    section = fit_section(given, np.array([0.9, 0.8]))
    assert section.shape[0] == 0
    usual = section.own[:, 1:4].mean(axis=0)
    spread = np.array([parts.SLOPES, parts.SLOPES, parts.DEPTHS * usual[2], parts.PLACES, parts.WIDTHS])
    off = given.z - _model(given.v, section.own, section.shape)[0]
    root = np.sqrt(given.weight / (1 + off**2 * given.weight / 9.0))

    def departures(x):
        own = x[2:].reshape(-1, 6)
        model = _model(given.v, own, np.append(0.0, x[:2]))[0]
        prior = np.column_stack([own[:, 1:4] - usual, own[:, 4:]]) / spread
        return np.append(((given.z - model) * root).ravel(), prior.ravel())

    start = np.append(section.shape[1:], section.own.ravel())
    best = least_squares(departures, start, method="trf").cost
    assert 0.5 * float((departures(start) ** 2).sum()) <= 1.02 * best + 0.02


def test_places_and_widths_come_out_with_their_doubt():
    random = np.random.default_rng(3)
    off, doubt = [], []
    for seed in range(12):
        places = random.uniform(-0.3, 0.3, 10)
        section = fit_section(heights([0.0, 0.8, 0.8], places, seed=seed), np.array([0.9, 0.7]))
        at, var = section.place(0.0)
        off.append(at - places - np.mean(at - places))  # where the middle of all lies is shape
        doubt.append(var)
        assert section.shape[1:] == pytest.approx([0.8, 0.8], abs=0.08)
    share = np.sqrt(np.mean(np.square(off)) / np.mean(doubt))
    assert np.sqrt(np.mean(np.square(off))) < 0.05
    assert 0.5 < share < 1.5


def test_a_floor_is_told_from_none():
    places = np.linspace(-0.2, 0.2, 10)
    flat = fit_section(heights([0.3, 0.8, 0.9], places), np.array([1.1, 1.2]))
    assert flat.shape[0] == pytest.approx(0.3, abs=0.06)
    sharp = fit_section(heights([0.0, 1.1, 1.2], places), np.array([1.1, 1.2]))
    assert sharp.shape[0] == 0


# --- ditches ----------------------------------------------------------------------------------------


def test_ditches_are_found_whole_and_their_bottoms_have_their_heights():
    total, off = None, []
    for seed in range(8):
        site = ditch(seed)
        features = find_features(site.points)
        one = score(site, features)
        total = one if total is None else total + one
        for line in features.strong:
            if line.kind in (FoundKind.VALLEY, FoundKind.TOE):
                off.append(line.height - site.ground(line.easting - ORIGIN[0], line.northing - ORIGIN[1]))
    assert total.found >= 0.9 * total.asked
    assert total.false <= 0.02 * total.drawn
    assert np.sqrt(total.squares / total.placed) < 0.08
    assert np.sqrt(np.mean(np.concatenate(off) ** 2)) < 0.03


def test_a_ditch_whose_bottom_is_walked_along_has_its_edges():
    sites = [ditch(seed, walk="bottom") for seed in range(6)]
    edges = [replace(s, lines=tuple(line for line in s.lines if line.kind == "top")) for s in sites]
    scores = [score(site, find_features(site.points)) for site in edges]
    assert sum(one.found for one in scores) >= 0.9 * sum(one.asked for one in scores)


def test_a_rounded_swale_has_lines_on_its_ground():
    for seed in SEEDS:
        site = lane(seed)
        strong = find_features(site.points).strong
        assert any(line.kind in (FoundKind.VALLEY, FoundKind.TOE) for line in strong)
        off = [line.height - site.ground(line.easting - ORIGIN[0], line.northing - ORIGIN[1]) for line in strong]
        assert np.sqrt(np.mean(np.concatenate(off) ** 2)) < 0.06


# --- forks ------------------------------------------------------------------------------------------


def found_line(kind, xy, z=0.0, strong=True, passes=8):
    xy = np.asarray(xy, float)
    n = len(xy)
    step = kind is FoundKind.STEP
    along = np.diff(xy, axis=0, append=2 * xy[-1:] - xy[-2:-1])
    left = np.column_stack([-along[:, 1], along[:, 0]]) / np.hypot(*along.T)[:, None]
    top = np.column_stack([xy + 0.05 * left, np.full(n, z + 0.1)]) if step else np.empty((0, 3))
    foot = xy - 0.05 * left if step else xy
    return FoundLine(
        kind=kind, easting=foot[:, 0], northing=foot[:, 1], height=np.full(n, z), top=top,
        sigma_plan=np.full(n, 0.05), sigma_height=np.full(n, 0.01), step=0.1 if step else np.nan, sigma_step=0.01,
        bend=np.nan, passes=passes, evidence=9.0, strong=strong, bridged=np.zeros(n - 1, bool),
    )  # fmt: skip


def test_an_end_goes_on_to_the_line_it_heads_for_and_shares_a_vertex_with_it():
    main = found_line(FoundKind.STEP, [[0, 0], [10, 0], [20, 0]], 5.0)
    side = found_line(FoundKind.STEP, [[9, 12], [9, 7], [9, 2]], 5.2)
    first, second = join_forks([main, side])
    assert len(first) == 6  # the fork, and a little beyond both ends
    assert len(second) == 5
    np.testing.assert_allclose(second.foot[-1], second.top[-1])
    np.testing.assert_allclose(second.foot[-1], first.top[2])  # from the side of the top
    assert second.bridged.tolist() == [True, False, False, True]
    np.testing.assert_allclose(first.foot[:, 1], -0.05)


def test_a_step_goes_on_a_little_beyond_its_ends_as_it_falls():
    line = found_line(FoundKind.STEP, [[0, 0], [10, 0], [20, 0]], 5.0)
    line = replace(line, height=np.array([5.0, 5.1, 5.2]), top=np.add(line.top, [[0, 0, 0], [0, 0, 0.1], [0, 0, 0.2]]))
    (longer,) = join_forks([line])
    np.testing.assert_allclose(longer.foot[[0, -1]], [[-0.3, -0.05, 4.997], [20.3, -0.05, 5.203]])
    np.testing.assert_allclose(longer.top[[0, -1]], [[-0.3, 0.05, 5.097], [20.3, 0.05, 5.303]])
    edge = found_line(FoundKind.TOP, [[0, 0], [10, 0]])
    assert len(join_forks([edge])[0]) == 2


def test_an_end_does_not_go_on_to_what_is_far_or_of_another_kind_or_only_proposed():
    main = found_line(FoundKind.STEP, [[0, 0], [10, 0], [20, 0]])
    far = found_line(FoundKind.STEP, [[9, 19], [9, 14], [9, 9]])
    other = found_line(FoundKind.TOP, [[9, 12], [9, 7], [9, 2]])
    assert [len(each) for each in join_forks([main, far])] == [5, 5]
    assert [len(each) for each in join_forks([main, other])] == [5, 3]
    near = found_line(FoundKind.STEP, [[9, 12], [9, 7], [9, 2]])
    assert [len(each) for each in join_forks([replace(main, strong=False), near])] == [5, 5]
    assert [len(each) for each in join_forks([main, near])] == [6, 5]


def test_an_edge_stops_at_a_bottom():
    bottom = found_line(FoundKind.VALLEY, [[0, 1], [20, 1]])
    edge = found_line(FoundKind.TOP, [[0, 0], [20, 0]])
    side = found_line(FoundKind.TOP, [[9, 12], [9, 7], [9, 2]])
    assert [len(each) for each in join_forks([bottom, edge, side])] == [2, 2, 3]
    assert [len(each) for each in join_forks([edge, side])] == [3, 4]


def test_two_ends_meet_in_a_corner_with_foot_and_top():
    one = found_line(FoundKind.STEP, [[0, 0], [4, 0], [8, 0]], 5.0, passes=5)
    two = found_line(FoundKind.STEP, [[10, 2], [10, 6], [10, 10]], 5.1, passes=5)
    first, second = join_forks([one, two])
    np.testing.assert_allclose(first.foot[-1], [10.05, -0.05, 5.05])
    np.testing.assert_allclose(first.top[-1], [9.95, 0.05, 5.15])
    np.testing.assert_allclose(first.foot[-1], second.foot[0])
    past = found_line(FoundKind.STEP, [[10, -0.5], [10, 3], [10, 10]], 5.1, passes=5)  # it begins past the corner
    second = join_forks([one, past])[1]
    assert (np.diff(second.northing) > 0).all()


@pytest.mark.parametrize("seed", [2, 4])
def test_the_edge_of_a_ditch_is_open_where_another_joins_it(seed):
    """No strong edge crosses the axis of the ditch that joins, but where it has not been found."""
    site = confluence(seed)
    features = find_features(site.points)
    joins = [line for line in features.strong if line.kind is FoundKind.TOE and np.ptp(line.northing) > 8]
    for bottom in joins:
        xy = np.column_stack([bottom.easting, bottom.northing]) - ORIGIN
        for edge in features.strong:
            if edge.kind is FoundKind.TOP:
                assert not crosses(xy, np.column_stack([edge.easting, edge.northing]) - ORIGIN)
    assert joins or seed != 2


def crosses(one, other):
    for a, b in zip(one[:-1], one[1:]):
        for c, d in zip(other[:-1], other[1:]):
            sides = [np.cross(b - a, p - a) for p in (c, d)] + [np.cross(d - c, p - c) for p in (a, b)]
            if sides[0] * sides[1] < 0 and sides[2] * sides[3] < 0:
                return True
    return False


# --- corners and tails ------------------------------------------------------------------------------


def test_rounded_corners_are_placed_better_as_arcs_between_straight_lines(monkeypatch):
    """Where a ring of kerbs turns, against the same lines placed gate by gate."""

    def off():
        result = []
        for seed in range(20, 26):
            site = junction(seed)
            ring = site.lines[0]
            turned = turning(ring.xy) & ring.asked
            strong = [middle_of(line)[0] for line in find_features(site.points).strong]
            if strong:
                away = cKDTree(np.vstack(strong)).query(ring.xy[turned])[0]
                result.append(away[away < 0.6])
        return np.sqrt(np.mean(np.concatenate(result) ** 2))

    arcs = off()
    monkeypatch.setattr(drawn, "round_corners", lambda counts, step, own, placed: placed)
    assert arcs < 0.9 * off()
    assert arcs < 0.18


def turning(xy):
    """Mask of the places where a dense path turns: over a metre by more than a twentieth radian."""
    way = np.gradient(xy, axis=0)
    angle = np.unwrap(np.arctan2(way[:, 1], way[:, 0]))
    result = np.zeros(len(xy), bool)
    result[25:-25] = np.abs(angle[50:] - angle[:-50]) > 0.05
    return result


@pytest.mark.parametrize(("end", "kept"), [((-9.0, 6.0), 8), ((-9.0, 0.5), 9), ((-2.5, 2.5), 9)])
def test_a_pass_beyond_a_gap_is_of_a_line_only_where_it_lies_ahead(end, kept):
    nodes = SimpleNamespace(x=np.append(end[0], 3.0 * np.arange(8)), y=np.append(end[1], np.zeros(8)))
    for way in (1, -1):
        (course,) = without_tails(nodes, [Course(np.arange(9)[::way])])
        assert len(course.nodes) == kept
        assert (np.diff(course.nodes) == way).all()


# --- places -----------------------------------------------------------------------------------------


def test_kerbs_of_a_junction_walked_without_a_string_are_found_around_its_corners():
    total = None
    for seed in range(6):
        site = PLACES["tee"](seed)
        one = score(site, find_features(site.points))
        total = one if total is None else total + one
    assert total.found >= 0.9 * total.asked
    assert total.false <= 0.04 * total.drawn
    assert np.sqrt(total.squares / total.placed) <= 0.13


def test_a_kerb_that_leaves_another_meets_it():
    joined = 0
    for seed in range(6):
        features = find_features(PLACES["bay"](seed).points)
        ends = [tuple(line.foot[at]) for line in features.strong if len(line.top) for at in (0, -1)]
        every = {tuple(xyz) for line in features.strong for xyz in (*line.foot[1:-1], *line.top[1:-1])}
        joined += any(end in every for end in ends)
    assert joined >= 3


def test_kerbs_turn_into_a_mouth_and_do_not_cross_it() -> None:
    """Passes every 3 m, corners of 4 m: a kerb in line beyond the mouth is no reason to draw one across it."""
    total = None
    for seed in range(8):
        site = small_tee(seed)
        found = find_features(site.points)
        one = score(site, found)
        total = one if total is None else total + one
        for line in found.strong:
            place = middle_of(line)[0]
            # Within 1.5 m of the side street's axis there is no kerb south of the one beyond the carriageway.
            assert not ((np.abs(place[:, 0]) < 1.5) & (place[:, 1] < 1.5)).any(), seed
    assert total is not None
    assert total.found >= 0.94 * total.asked
    assert total.false <= 0.03 * total.drawn


def test_a_bottom_walked_along_goes_on_beyond_the_passes_across() -> None:
    total = None
    for seed in range(6):
        site = ditch(seed, walk="bottom")
        lines = tuple(replace(line, asked=line.asked & (line.kind != "top")) for line in site.lines)
        one = score(replace(site, lines=lines), find_features(site.points))
        total = one if total is None else total + one
    assert total is not None
    assert total.found >= 0.98 * total.asked


def test_a_walk_up_a_slope_is_no_crest() -> None:
    """Where passes across are as far apart as the places looked at, all neighbours may lie a little below."""
    site = real_grid(97022)
    assert not find_features(site.points).strong
