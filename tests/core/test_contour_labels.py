"""Labels along contours: uphill, straight, apart; geometry decided by shapely (GEOS)."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import List

import numpy as np
import pytest
import shapely
from matplotlib.tri import LinearTriInterpolator, Triangulation

from plugin.core.contours.labels import FIGURE_WIDTH, MARGIN, MOST_BEND, Labels, level_texts, place_labels
from plugin.core.contours.levels import levels_between
from plugin.core.contours.lines import ContourOptions, Contours
from plugin.core.contours.smooth import smooth_contours
from plugin.core.contours.trace import trace_contours
from plugin.core.messages import SurveyError
from plugin.core.progress import Cancelled
from plugin.core.surface.tin import Tin
from tests.core.terrains import HALF_FOOT, delaunay_tin


def contours_of(lines: List[np.ndarray], level: float = 12.5) -> Contours:
    lines = [np.asarray(line, dtype=float) for line in lines]
    count = len(lines)
    return Contours(
        xy=np.concatenate(lines) if lines else np.empty((0, 2)),
        start=np.concatenate([[0], np.cumsum([len(line) for line in lines])]).astype(np.int64),
        level=np.full(count, level),
        level_in_unit=np.full(count, level),
        step=np.full(count, 25),
        index=np.ones(count, dtype=bool),
        closed=np.array([np.array_equal(line[0], line[-1]) for line in lines], dtype=bool),
        depression=np.zeros(count, dtype=bool),
        origin=np.array([432_000.0, 5_765_000.0]),
        options=ContourOptions(0.5),
    )


def wavy_tin(seed: int = 4) -> Tin:
    rng = np.random.default_rng(seed)
    xy = np.rint(rng.uniform(0, 120, (9000, 2)) * 1e4) / 1e4
    z = 50 + 0.03 * xy[:, 0] + 3 * np.sin(xy[:, 0] / 19) * np.cos(xy[:, 1] / 15)
    return delaunay_tin(np.column_stack([xy, z]))


def boxes(labels: Labels, margin: float) -> np.ndarray:
    """The labels' rectangles with a margin in metres."""
    cos, sin = np.cos(np.radians(labels.rotation)), np.sin(np.radians(labels.rotation))
    along = (0.5 * labels.width + margin)[:, None] * np.array([-1, 1, 1, -1])
    up = (0.5 * labels.height + margin) * np.array([-1, -1, 1, 1])
    x = labels.xy[:, :1] + along * cos[:, None] - up * sin[:, None]
    y = labels.xy[:, 1:] + along * sin[:, None] + up * cos[:, None]
    return shapely.polygons(np.stack([x, y], axis=2))


@pytest.fixture(scope="module", params=[0.0, 0.3], ids=["traced", "smoothed"])
def hills(request):
    tin = wavy_tin()
    contours = trace_contours(tin, ContourOptions(0.25))
    contours = smooth_contours(contours, tin, request.param).contours
    return tin, contours, place_labels(contours, 25.0, 1.5, only_index=False)


def test_tops_point_uphill(hills):
    tin, _, labels = hills
    assert len(labels) > 60
    x, y, z = (np.ascontiguousarray(c) for c in tin.vertices.T)
    ground = LinearTriInterpolator(Triangulation(x, y, tin.triangles), z)
    turned = np.radians(labels.rotation)
    up = 0.4 * np.column_stack([-np.sin(turned), np.cos(turned)])
    above, below = (ground(*(labels.xy + side * up).T) for side in (1, -1))
    assert np.all((above > below) | above.mask | below.mask)
    assert np.any(np.abs(labels.rotation) > 90)  # not just upright


@pytest.mark.parametrize("bearing", range(0, 360, 24))
def test_rotation_on_a_plane(bearing):
    """Text runs level, with its top up the slope."""
    rise = np.array([math.sin(math.radians(bearing)), math.cos(math.radians(bearing))])
    rng = np.random.default_rng(bearing)
    xy = np.rint(rng.uniform(-20, 20, (200, 2)) * 1e4) / 1e4
    labels = place_labels(trace_contours(delaunay_tin(np.column_stack([xy, xy @ rise])), ContourOptions(5.0)), 30, 1)
    labels = labels if len(labels) else pytest.fail("no label")
    turned = np.radians(labels.rotation)
    np.testing.assert_allclose(np.column_stack([-np.sin(turned), np.cos(turned)]), rise + 0 * labels.xy, atol=1e-6)


def test_labels_lie_on_their_lines(hills):
    _, contours, labels = hills
    for i, xy, along in zip(labels.line, labels.xy, labels.along):
        line = shapely.linestrings(contours.line(i) - contours.origin)
        assert shapely.distance(line, shapely.points(xy)) <= MOST_BEND * labels.height
        at = shapely.line_interpolate_point(line, along)
        assert shapely.distance(at, shapely.points(xy)) <= 2 * MOST_BEND * labels.height


def test_labels_do_not_overlap(hills):
    _, _, labels = hills
    rectangles = boxes(labels, MARGIN * labels.height * 0.999)
    one, other = shapely.STRtree(rectangles).query(rectangles, predicate="intersects")
    assert np.all(one == other)


def test_crowded_lines_share_the_room():
    """Lines closer than a label is high: without the rule the labels would lie on each other."""
    lines = [np.array([[0.0, 0.4 * i], [200.0, 0.4 * i]]) for i in range(30)]
    labels = place_labels(contours_of(lines), 40.0, 1.5)
    rectangles = boxes(labels, MARGIN * 1.5 * 0.999)
    one, other = shapely.STRtree(rectangles).query(rectangles, predicate="intersects")
    assert np.all(one == other)
    # Nothing more would fit than about four rows of them with the even spacing and its play.
    assert 20 <= len(labels) < 30 * 5
    # Nobody was left out for nothing: every place wanted has a label near by.
    wanted = np.array([[20.0 + 40 * k, 0.4 * i] for i in range(30) for k in range(5)])
    away = np.hypot(*(wanted[:, None] - labels.xy[None]).transpose(2, 0, 1)).min(axis=1)
    assert away.max() < 2 * np.hypot(0.5 * labels.width.max() + 0.75, 1.5) + 0.4


def test_even_spacing_on_a_straight_line():
    labels = place_labels(contours_of([[[0, 0], [300, 0]]]), 100.0, 2.0)
    np.testing.assert_allclose(labels.along, [50, 150, 250])
    np.testing.assert_allclose(labels.xy, [[50, 0], [150, 0], [250, 0]])
    np.testing.assert_allclose(labels.rotation, 0.0)
    np.testing.assert_allclose(labels.width, 4 * FIGURE_WIDTH * 2.0)
    assert labels.text == ("12.5",) * 3
    assert np.array_equal(labels.line, [0, 0, 0])


def test_bends_are_avoided():
    """A right angle where the even spacing would put the label."""
    labels = place_labels(contours_of([[[0, 0], [50, 0], [50, 50]]]), 100.0, 2.0)
    assert len(labels) == 1
    assert abs(labels.along[0] - 50) >= 0.5 * labels.width[0]
    assert min(abs(labels.rotation[0] - 0), abs(labels.rotation[0] - 90)) < 1e-9


def test_labels_keep_off_other_lines():
    """Where others run close by for half of the way, the label takes the other half."""
    lines = [np.array([[0.0, 0.0], [100.0, 0.0]])]
    lines += [np.array([[40.0, 0.8 * i], [100.0, 0.8 * i]]) for i in (-2, -1, 1, 2)]
    contours = contours_of(lines)
    alone = place_labels(contours_of(lines[:1]), 100.0, 2.0)
    contours = replace(contours, index=np.arange(5) == 0)
    crowded = place_labels(contours, 100.0, 2.0)
    np.testing.assert_allclose(alone.xy, [[50, 0]])
    assert len(crowded) == 1
    assert crowded.xy[0, 0] + 0.5 * crowded.width[0] < 40


def test_a_line_that_bends_everywhere_has_none():
    turn = np.linspace(0, 60 * np.pi, 2000)
    curl = np.column_stack([0.3 * turn + np.cos(turn), np.sin(turn)])
    assert len(place_labels(contours_of([curl]), 20.0, 2.0)) == 0
    assert len(place_labels(contours_of([curl]), 20.0, 0.1)) > 5


def test_short_lines():
    """A label of 12.5 in figures 2 m high is 4.8 m wide: under three times that nothing, then one."""
    sizes = (14.0, 15.0, 60.0, 99.0, 199.0, 201.0)
    lines = [np.array([[0.0, 20.0 * i], [size, 20.0 * i]]) for i, size in enumerate(sizes)]
    labels = place_labels(contours_of(lines), 100.0, 2.0)
    np.testing.assert_array_equal(np.bincount(labels.line, minlength=6), [0, 1, 1, 1, 1, 2])


def test_only_index_contours():
    tin = wavy_tin()
    contours = trace_contours(tin, ContourOptions(0.25))
    some = place_labels(contours, 25.0, 1.5)
    assert np.all(contours.index[some.line])
    assert set(some.text) <= {"47.50", "48.75", "50.00", "51.25", "52.50", "53.75", "55.00", "56.25"}
    assert np.any(~contours.index[place_labels(contours, 25.0, 1.5, only_index=False).line])


def test_texts():
    assert level_texts(np.array([10.0, 12.5])) == ("10.0", "12.5")
    assert level_texts(np.array([10.0, 20.0])) == ("10", "20")
    assert level_texts(np.array([0.1 * 3, 1 / 3])) == ("0.3000", "0.3333")
    assert level_texts(np.array([-0.001, 1.0]), 2) == ("0.00", "1.00")
    assert level_texts(np.array([-0.5])) == ("-0.5",)
    # Half a foot is 0.1524 m; the text stays in feet.
    levels = levels_between(HALF_FOOT, 30.0, 30.6)
    assert level_texts(levels.in_unit) == ("98.5", "99.0", "99.5", "100.0")
    assert level_texts(np.empty(0)) == ()


def test_decimals_asked_for():
    assert place_labels(contours_of([[[0, 0], [300, 0]]]), 300.0, 2.0, decimals=2).text == ("12.50",)


def test_same_labels_in_whatever_order_the_lines_come(hills):
    _, contours, labels = hills
    order = np.random.default_rng(1).permutation(len(contours))
    turned = contours_of([contours.xy[contours.start[i] : contours.start[i + 1]] for i in order])
    turned = replace(turned, level_in_unit=contours.level_in_unit[order], origin=contours.origin)
    again = place_labels(turned, 25.0, 1.5, only_index=False)
    one = {(order[i], round(a, 6), t) for i, a, t in zip(again.line.tolist(), again.along.tolist(), again.text)}
    other = {(i, round(a, 6), t) for i, a, t in zip(labels.line.tolist(), labels.along.tolist(), labels.text)}
    assert one == other


def test_nothing_to_label():
    assert len(place_labels(contours_of([]), 100.0, 2.0)) == 0


@pytest.mark.parametrize(("spacing", "height"), [(0.0, 1.0), (10.0, 0.0), (math.nan, 1.0), (10.0, math.inf), (-5, 1)])
def test_bad_settings_are_refused(spacing, height):
    with pytest.raises(SurveyError) as caught:
        place_labels(contours_of([[[0, 0], [300, 0]]]), spacing, height)
    assert caught.value.code == "contours.labels"


def test_cancel():
    def stop(fraction: float, stage: str) -> None:
        assert stage == "labels"
        raise Cancelled

    with pytest.raises(Cancelled):
        place_labels(contours_of([[[0, 0], [300, 0]]]), 100.0, 2.0, progress=stop)
