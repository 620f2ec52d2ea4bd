"""Lines that cross, touch and pass each other: one rule, whatever the rounding; against rational arithmetic."""

from __future__ import annotations

from fractions import Fraction
from itertools import permutations
from typing import Dict, List, Set, Tuple

import numpy as np
import pytest

from plugin.core.linework.constraints import Constraints, LineKind, make_line
from plugin.core.messages import SurveyError
from plugin.core.points.pointset import make_points
from plugin.core.surface.build import SurfaceOptions, build_surface
from plugin.core.surface.crossings import CrossingRule, split_crossings
from plugin.core.surface.locate import heights_at
from plugin.core.surface.network import Network
from plugin.core.surface.tin import GRID

SITE = np.array([432_000.0, 5_765_000.0])


def lines_of(xy: np.ndarray, segments: np.ndarray, z: np.ndarray) -> Network:
    """Each segment a line of its own; no survey points."""
    k, n = len(segments), len(xy)
    return Network(
        x=xy[:, 0].copy(), y=xy[:, 1].copy(), z=z, source=np.full(n, -1), segments=segments,
        kind=np.ones(k, np.uint8), line=np.arange(k), soft=np.zeros(k, bool), rings=(), origin=np.zeros(2),
    )  # fmt: skip


def cuts_cell(a: Tuple[int, int], b: Tuple[int, int], v: Tuple[int, int]) -> bool:
    """Whether ab has a place in the cell of v: clipped in fractions to west <= x < east, south <= y < north.

    Liang and Barsky's clipping (1984), with the open sides kept apart.
    """
    low, high, low_open, high_open = Fraction(0), Fraction(1), False, False
    half = Fraction(1, 2)
    for i in (0, 1):
        step = b[i] - a[i]
        if step == 0:
            if not v[i] - half <= a[i] < v[i] + half:
                return False
            continue
        closed_side, open_side = (v[i] - half - a[i]) / step, (v[i] + half - a[i]) / step
        enter, leave = min(closed_side, open_side), max(closed_side, open_side)
        enter_open, leave_open = step < 0, step > 0
        if enter > low or (enter == low and enter_open):
            low, low_open = enter, enter_open
        if leave < high or (leave == high and leave_open):
            high, high_open = leave, leave_open
    return low < high or (low == high and not low_open and not high_open)


def crosses(a: Tuple[int, int], b: Tuple[int, int], c: Tuple[int, int], d: Tuple[int, int]) -> bool:
    def side(p: Tuple[int, int], q: Tuple[int, int], r: Tuple[int, int]) -> int:
        return (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])

    return side(a, b, c) * side(a, b, d) < 0 and side(c, d, a) * side(c, d, b) < 0


def small_lines(rng: np.random.Generator) -> Network:
    size = int(rng.integers(2, 10))
    xy = np.unique(rng.integers(0, size + 1, (rng.integers(3, 12), 2)), axis=0) * int(rng.choice([1, 1, 2, 3]))
    rng.shuffle(xy)
    segments = rng.integers(0, len(xy), (int(rng.integers(1, 8)), 2))
    segments = segments[segments[:, 0] != segments[:, 1]]
    return lines_of(xy, segments, rng.integers(0, 3, len(xy)).astype(float))


def check_snapping(cases: int, seed: int) -> None:
    rng = np.random.default_rng(seed)
    for _ in range(cases):
        network = small_lines(rng)
        rule = [CrossingRule.MEAN, CrossingRule.FIRST][rng.integers(2)]
        snapped = split_crossings(network, Constraints(), rule, 0.0, "field.csv").network
        place = list(zip(snapped.x.tolist(), snapped.y.tolist()))
        assert len(set(place)) == len(place)
        ends = [(place[a], place[b]) for a, b in snapped.segments.tolist()]
        for i, (a, b) in enumerate(ends):
            for v in place:
                assert v in (a, b) or not cuts_cell(a, b, v)
            assert not any(crosses(a, b, c, d) for c, d in ends[i + 1 :])
        # each line still leads from its one end to the other, along places whose cells it ran through at most a
        # cell beside
        for number, (a, b) in enumerate(network.segments.tolist()):
            graph: Dict[int, List[int]] = {}
            for p, q in snapped.segments[snapped.line == number].tolist():
                graph.setdefault(p, []).append(q)
                graph.setdefault(q, []).append(p)
            assert b in reached(graph, a)
        low, high = network.z.min(initial=0), network.z.max(initial=0)
        assert np.all((snapped.z >= low - 1e-12) & (snapped.z <= high + 1e-12))


def reached(graph: Dict[int, List[int]], start: int) -> Set[int]:
    found, todo = {start}, [start]
    while todo:
        for node in graph.get(todo.pop(), []):
            if node not in found:
                found.add(node)
                todo.append(node)
    return found


def test_no_line_crosses_another_or_passes_a_vertex_within_its_cell() -> None:
    check_snapping(600, 1)


def junction(rng: np.random.Generator, off: float):
    """A line and another that ends on it, at coordinates that rounding moves, ``off`` metres apart in height."""
    a, b = rng.uniform(0, 20, 2), rng.uniform(30, 50, 2)
    share = rng.uniform(0.1, 0.9)
    foot = a + share * (b - a)
    away = foot + rng.uniform(3, 9) * np.array([b[1] - a[1], a[0] - b[0]]) / np.hypot(*(b - a))
    main = make_line(LineKind.BREAKLINE, np.column_stack([np.array([a, b]) + SITE, [100, 102]]), "kerb 1")
    side = make_line(
        LineKind.BREAKLINE, np.column_stack([np.array([foot, away]) + SITE, [100 + 2 * share + off, 103]]), "kerb 2"
    )
    points = make_points(*(np.array([[0, 0], [50, 0], [50, 50], [0, 50]]) + SITE).T, np.full(4, 100.0), source="f.csv")
    lines = (main, side) if rng.random() < 0.5 else (side, main)
    return points, Constraints(lines), foot + SITE, 100 + 2 * share, lines[0] is main


def check_junctions(cases: int, seed: int) -> None:
    rng = np.random.default_rng(seed)
    for _ in range(cases):
        off = float(rng.choice([0.0, 0.02, 0.3]))
        points, lines, foot, height, main_first = junction(rng, off)
        if off > 0.05:
            with pytest.raises(SurveyError) as caught:
                build_surface(points, lines)
            assert {"kerb 1", "kerb 2"} == {caught.value.message.values[k] for k in ("first", "second")}
            apart = caught.value.message.values["first_height"] - caught.value.message.values["second_height"]
            assert abs(abs(apart) - off) < 2e-5
        for rule, expected in (
            (CrossingRule.MEAN, height + off / 2),
            (CrossingRule.FIRST, height if main_first else height + off),
        ):
            surface = build_surface(points, lines, SurfaceOptions(crossing=rule))
            conflicts = surface.report.conflicts
            assert len(conflicts) == (off > 0)
            assert not conflicts or abs(conflicts[0].difference - off) < 2e-5
            tin = surface.tin
            vertex = np.flatnonzero(np.all(np.abs(tin.vertices[:, :2] + tin.origin - foot) < GRID, axis=1))
            assert len(vertex) == 1
            triangle, side = np.nonzero(tin.edge_kind)
            ends = np.sort(np.column_stack([tin.triangles[triangle, side], tin.triangles[triangle, (side + 1) % 3]]))
            assert np.count_nonzero(np.unique(ends, axis=0) == vertex[0]) == 3
            assert tin.vertices[vertex[0], 2] == pytest.approx(expected, abs=2e-5)


def test_a_line_that_ends_on_another_is_joined_and_follows_the_rule() -> None:
    check_junctions(60, 2)


def test_a_line_over_a_survey_point_is_told_with_both_heights() -> None:
    rng = np.random.default_rng(3)
    for _ in range(30):
        a, b = rng.uniform(0, 20, 2), rng.uniform(30, 50, 2)
        on = a + rng.uniform(0.1, 0.9) * (b - a)
        xy = np.vstack([[[0, 0], [50, 0], [50, 50], [0, 50]], on]) + SITE
        points = make_points(*xy.T, np.full(5, 3.0), source="f.csv", source_line=np.arange(2, 7))
        line = make_line(LineKind.BREAKLINE, np.column_stack([np.array([a, b]) + SITE, [0, 0]]), "wall")
        report = build_surface(points, Constraints((line,))).report
        (over,) = report.on_points
        assert (over.first, over.first_height, over.second, over.second_height) == ("wall", 0.0, "f.csv:6", 3.0)
        said = {message.text.code: str(message) for message in report.messages}
        assert "wall at 0.000 m and the point f.csv:6 at 3.000 m" in said["lines_over_points"]
        assert "wall" in said["lines_at_zero"]


def test_a_line_at_0_beside_points_far_from_0_is_told() -> None:
    xy = np.array([[0, 0], [50, 0], [50, 50], [0, 50], [25, 26]]) + SITE
    zero = make_line(LineKind.BREAKLINE, np.column_stack([np.array([[10, 10], [40, 41]]) + SITE, [0, 0]]), "path")
    for height, told in ((3.0, True), (-4.0, True), (0.4, False)):
        points = make_points(*xy.T, np.full(5, height))
        codes = [m.text.code for m in build_surface(points, Constraints((zero,))).report.messages]
        assert codes == (["lines_at_zero"] if told else [])
    for heights, ground, codes in (([0, 3], 3.0, ["lines_partly_at_zero"]), ([0, 0.4], 0.4, []), ([3, 3], 3.0, [])):
        line = make_line(LineKind.BREAKLINE, np.column_stack([np.array([[10, 10], [40, 41]]) + SITE, heights]), "path")
        said = build_surface(make_points(*xy.T, np.full(5, ground)), Constraints((line,))).report.messages
        assert [m.text.code for m in said] == codes


def test_a_breakline_without_heights_through_points_is_told() -> None:
    xy = np.array([[0, 0], [50, 0], [50, 50], [0, 50], [25, 26]]) + SITE
    points = make_points(*xy.T, np.array([1, 2, 3, 4, 9.0]))
    bare = make_line(LineKind.BREAKLINE, np.array([[10, 10], [25, 26]]) + SITE, "ridge")
    (said,) = build_surface(points, Constraints((bare,))).report.messages
    assert said.text.code == "lines_without_heights"
    assert "ridge" in str(said)
    beside = make_line(LineKind.BREAKLINE, np.array([[10, 10], [25, 26.5]]) + SITE, "ridge")
    assert build_surface(points, Constraints((beside,))).report.messages == ()


def test_positions_recorded_twice_are_told_with_both_heights() -> None:
    xy = np.array([[0, 0], [10, 0], [0, 10], [0, 0.0]]) + SITE
    (said,) = build_surface(make_points(*xy.T, np.array([1, 2, 3, 1.5]))).report.messages
    assert "from 1.000 m to 1.500 m" in str(said)


def test_a_bundle_through_one_place_becomes_few_vertices() -> None:
    """Forty lines through one place that is on no grid, 780 crossings but for the rounding of their ends."""
    rng = np.random.default_rng(4)
    centre = np.array([250_000.37, 250_000.81])
    angle = rng.uniform(0, np.pi, 40)
    ends = [
        centre + s * np.column_stack([np.cos(angle), np.sin(angle)]) * rng.uniform(1e4, 2e5, (40, 1)) for s in (-1, 1)
    ]
    xy = np.rint(np.concatenate(ends)).astype(np.int64)
    network = lines_of(xy, np.column_stack([np.arange(40), np.arange(40, 80)]), np.full(80, 7.0))
    snapped = split_crossings(network, Constraints(), CrossingRule.MEAN, 0.0, "f.csv").network
    new = np.column_stack([snapped.x, snapped.y])[80:]
    assert len(new) < 150
    assert np.quantile(np.abs(new - centre), 0.8) < 10
    assert np.all(snapped.z == 7.0)


def test_heights_at_a_crossing_of_three_lines_are_the_mean_of_three() -> None:
    xy = np.array([[0, 10], [20, 10], [10, 0], [10, 20], [0, 0], [20, 20]]) * 10_000
    network = lines_of(xy, np.array([[0, 1], [2, 3], [4, 5]]), np.array([1, 1, 2, 2, 6, 6.0]))
    for rule, height in ((CrossingRule.MEAN, 3.0), (CrossingRule.FIRST, 1.0)):
        snapped = split_crossings(network, Constraints(), rule, 0.0, "f.csv")
        assert snapped.network.z[6:].tolist() == [height]
        assert len(snapped.network.segments) == 6
    tin = build_surface(
        make_points([], [], []),
        Constraints(tuple(
            make_line(LineKind.BREAKLINE, np.column_stack([xy[s] * GRID, network.z[s]])) for s in network.segments
        )),
        SurfaceOptions(crossing=CrossingRule.MEAN),
    ).tin  # fmt: skip
    assert heights_at(tin, np.array([[10.0, 10.0]])) == pytest.approx([3.0])


# ------------------------------------------------------------------------------------- all that meet count alike

ENDS_AND_PASSES = (
    ([5.0, 10.0], [15.0, 10.0]),
    ([10.0, 10.0], [12.0, 15.0]),
    ([10.0, 10.0], [8.0, 5.0]),
)
ALL_CROSS = (([5.0, 10.0], [15.0, 10.0]), ([8.0, 5.0], [12.0, 15.0]), ([12.0, 5.0], [8.0, 15.0]))


def three_at_a_place(places, heights, order, rule):
    lines = [
        make_line(LineKind.BREAKLINE, np.column_stack([xy, [height] * 2]), label=str(height))
        for xy, height in zip(places, heights)
    ]
    points = make_points([0.0, 20, 20, 0], [0.0, 0, 20, 20], [100.0] * 4)
    return build_surface(points, Constraints(tuple(lines[i] for i in order)), SurfaceOptions(crossing=rule))


@pytest.mark.parametrize("places", [ENDS_AND_PASSES, ALL_CROSS])
@pytest.mark.parametrize("order", list(permutations(range(3))))
def test_lines_that_end_pass_or_cross_count_alike(places, order) -> None:
    heights = (101.0, 102.0, 103.5)
    for rule, wanted in ((CrossingRule.MEAN, sum(heights) / 3), (CrossingRule.FIRST, heights[order[0]])):
        surface = three_at_a_place(places, heights, order, rule)
        assert heights_at(surface.tin, np.array([[10.0, 10.0]])) == pytest.approx([wanted])
        (told,) = surface.report.conflicts
        assert {told.first, told.second} == {"101.0", "103.5"}
        for label, height in ((told.first, told.first_height), (told.second, told.second_height)):
            assert height == pytest.approx(float(label))


@pytest.mark.parametrize("places", [ENDS_AND_PASSES, ALL_CROSS])
def test_the_largest_difference_of_any_two_lines_is_refused(places) -> None:
    with pytest.raises(SurveyError) as caught:
        three_at_a_place(places, (100.0, 100.02, 100.06), range(3), CrossingRule.REFUSE)
    assert caught.value.code == "crossing_lines"
    three_at_a_place(places, (100.0, 100.02, 100.04), range(3), CrossingRule.REFUSE)


@pytest.mark.parametrize("rule", list(CrossingRule))
@pytest.mark.parametrize("turned", [False, True])
def test_a_survey_point_keeps_its_height_whether_lines_pass_or_end_there(rule, turned) -> None:
    ends = ([[5, 10, 101], [15, 10, 101]], [[10, 10, 102], [12, 15, 100]])
    passes, begins = (make_line(LineKind.BREAKLINE, np.array(xyz, float), name) for xyz, name in zip(ends, "AB"))
    points = make_points(
        [0.0, 20, 20, 0, 10], [0.0, 0, 20, 20, 10], [100.0] * 4 + [99.0], source="f.csv", source_line=np.arange(2, 7)
    )
    lines = (begins, passes) if turned else (passes, begins)
    if rule is CrossingRule.REFUSE:
        with pytest.raises(SurveyError) as caught:
            build_surface(points, Constraints(lines))
        assert caught.value.code == "crossing_lines"
        for line in lines:  # each alone leaves the point its height
            surface = build_surface(points, Constraints((line,)))
            assert heights_at(surface.tin, np.array([[10.0, 10.0]])) == pytest.approx([99.0])
            assert len(surface.report.on_points) == 1
        return
    surface = build_surface(points, Constraints(lines), SurfaceOptions(crossing=rule))
    report = surface.report
    assert heights_at(surface.tin, np.array([[10.0, 10.0]])) == pytest.approx([99.0])
    assert report.duplicates == ()
    assert {(c.first, c.first_height, c.second, c.second_height) for c in report.on_points} == {
        ("A", 101.0, "f.csv:6", 99.0),
        ("B", 102.0, "f.csv:6", 99.0),
    }
    (told,) = report.conflicts
    assert {(told.first, told.first_height), (told.second, told.second_height)} == {("A", 101.0), ("B", 102.0)}


def test_a_line_at_0_that_ends_on_survey_points_leaves_them_theirs() -> None:
    points = make_points([0.0, 20, 20, 0], [0.0, 0, 20, 20], [20.0] * 4)
    line = make_line(LineKind.BREAKLINE, np.array([[0, 0, 0], [20, 20, 0.0]]), "path")
    surface = build_surface(points, Constraints((line,)))
    assert surface.tin.height_range == (20.0, 20.0)
    assert [(c.first_height, c.second_height) for c in surface.report.on_points] == [(0.0, 20.0)] * 2
    assert [m.text.code for m in surface.report.messages] == ["lines_over_points"]  # nothing goes down to 0


@pytest.mark.parametrize("shift", [(0.0, 0.0), (0.1699503671, 0.1641827189)])
def test_two_ends_that_rounding_parts_are_one_meeting(shift) -> None:
    """Ends 0.02 mm apart fall into one cell of the grid, or into two beside each other."""
    one = np.array([[500008.86126812646, 5700015.761344832, 17.737], [500070.3020013609, 5700084.328970358, 17.862]])
    other = np.array([[500070.30198646587, 5700084.328983705, 22.862], [500072.7714052488, 5700086.0325009115, 22.862]])
    by = np.array([*shift, 0.0])
    lines = tuple(make_line(LineKind.BREAKLINE, line + by) for line in (one, other))
    x, y = (v.ravel() for v in np.meshgrid([5e5, 5e5 + 100], [5.7e6, 5.7e6 + 100]))
    built = build_surface(
        make_points(x + by[0], y + by[1], np.full(4, 50.0)),
        Constraints(lines),
        SurfaceOptions(crossing=CrossingRule.MEAN),
    )
    (told,) = built.report.conflicts
    assert told.difference == pytest.approx(5.0, abs=1e-4)
