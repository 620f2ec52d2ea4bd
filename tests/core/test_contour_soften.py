"""Heights softened for drawing: bounded, true to planes, nearer to the ground; contours checked by matplotlib's
interpolator and shapely."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from matplotlib.tri import LinearTriInterpolator, Triangulation

from plugin.core.contours.lines import ContourOptions
from plugin.core.contours.smooth import smooth_contours
from plugin.core.contours.soften import soften_heights
from plugin.core.contours.trace import trace_contours
from plugin.core.messages import SurveyError
from plugin.core.progress import Cancelled
from tests.core.terrains import delaunay_tin, random_terrains, tin_of


def ground(x: np.ndarray, y: np.ndarray) -> np.ndarray:
    return 100 + 0.03 * x + 1.5 * np.sin(x / 9) * np.cos(y / 7)


def places(n: int = 8000, size: float = 60.0, seed: int = 5) -> np.ndarray:
    return np.rint(np.random.default_rng(seed).uniform(0, size, (n, 2)) * 1e4) / 1e4


@pytest.fixture(scope="module")
def noisy():
    xy = places()
    true = ground(*xy.T)
    return delaunay_tin(np.column_stack([xy, true + np.random.default_rng(6).normal(0, 0.015, len(xy))])), true


def test_never_more_than_the_tolerance(noisy):
    tin, _ = noisy
    for tolerance in (0.001, 0.02, 1.0):
        soft = soften_heights(tin, tolerance)
        change = np.abs(soft.tin.vertices[:, 2] - tin.vertices[:, 2])
        assert change.max() == soft.achieved <= tolerance
        assert soft.moved == np.count_nonzero(change) > 7000
        np.testing.assert_array_equal(soft.tin.vertices[:, :2], tin.vertices[:, :2])
        assert soft.tin.triangles is tin.triangles


def test_nearer_to_the_ground(noisy):
    """Noise of 15 mm falls by more than half, and hills keep their height."""
    tin, true = noisy
    soft = soften_heights(tin, 0.045).tin.vertices[:, 2]
    inner = np.all(np.abs(tin.vertices[:, :2] - 30) < 28, axis=1)
    before, after = (np.sqrt(np.mean((z - true)[inner] ** 2)) for z in (tin.vertices[:, 2], soft))
    assert before == pytest.approx(0.015, abs=0.001)
    assert after < 0.5 * before
    assert abs(np.mean((soft - true)[inner])) < 0.001
    high = inner & (true > np.quantile(true, 0.98))
    assert abs(np.mean((soft - true)[high])) < 0.002


def test_ground_along_the_lines_is_within_the_tolerance_of_their_level(noisy):
    tin, _ = noisy
    contours = trace_contours(soften_heights(tin, 0.03).tin, ContourOptions(0.25))
    x, y, z = (np.ascontiguousarray(c) for c in tin.vertices.T)
    middle = 0.5 * (contours.xy[1:] + contours.xy[:-1])
    inner = np.ones(len(middle), dtype=bool)
    inner[contours.start[1:-1] - 1] = False
    measured = LinearTriInterpolator(Triangulation(x, y, tin.triangles), z)(*middle[inner].T)
    off = np.abs(measured - np.repeat(contours.level, np.diff(contours.start) - 1))
    assert 0.02 < off.max() <= 0.03 + 1e-9


def test_specks_go_and_wriggles_straighten(noisy):
    """Nearly as many lines as the ground without noise has."""
    tin, true = noisy
    options = ContourOptions(0.1)
    exact = trace_contours(tin, options)
    soft = soften_heights(tin, 0.03).tin
    drawn = smooth_contours(trace_contours(soft, options), soft, 0.3).contours
    clean = trace_contours(tin_of(np.column_stack([tin.vertices[:, :2], true]), tin.triangles), options)
    assert len(exact) - len(clean) > 20
    assert abs(len(drawn) - len(clean)) <= 5
    length = [shapely.MultiLineString(list(contours)).length for contours in (clean, drawn, exact)]
    assert abs(length[1] - length[0]) < 0.3 * (length[2] - length[0])
    assert shapely.MultiLineString(list(drawn)).is_simple


def test_planes_stay():
    """Cotangent weights give a plane its own height, however uneven the points."""
    xy = places(2000) ** 2 / 60  # crowded towards the south-west
    tin = delaunay_tin(np.column_stack([np.unique(np.rint(xy * 1e4), axis=0) / 1e4, np.zeros(len(xy))]))
    z = 100 + 0.07 * tin.vertices[:, 0] - 0.04 * tin.vertices[:, 1]
    tin = tin_of(np.column_stack([tin.vertices[:, :2], z]), tin.triangles)
    assert soften_heights(tin, 0.05).achieved < 1e-9


def test_breaklines_and_rim_stay():
    terrains = random_terrains(300, seed=3, breaklines=0.1)
    tin = terrains.tin
    soft = soften_heights(tin, 0.2)
    held = np.zeros(len(tin.vertices), dtype=bool)
    triangle, edge = np.nonzero((tin.edge_kind != 0) | (tin.neighbours < 0))
    held[tin.triangles[triangle, edge]] = held[tin.triangles[triangle, (edge + 1) % 3]] = True
    used = np.unique(tin.triangles)
    np.testing.assert_array_equal(soft.tin.vertices[held], tin.vertices[held])
    assert soft.moved > 0.9 * np.sum(~held[used])


def test_no_tolerance_changes_nothing(noisy):
    tin, _ = noisy
    soft = soften_heights(tin, 0.0)
    np.testing.assert_array_equal(soft.tin.vertices, tin.vertices)
    assert (soft.achieved, soft.moved) == (0.0, 0)


def test_no_triangles():
    assert soften_heights(tin_of(np.zeros((1, 3)), np.empty((0, 3), int)), 0.1).moved == 0


@pytest.mark.parametrize("tolerance", [-0.01, math.nan, math.inf])
def test_a_bad_tolerance_is_refused(noisy, tolerance):
    with pytest.raises(SurveyError) as caught:
        soften_heights(noisy[0], tolerance)
    assert caught.value.code == "contours.height_tolerance"


def test_cancel(noisy):
    def stop(fraction: float, stage: str) -> None:
        assert stage == "contours"
        raise Cancelled

    with pytest.raises(Cancelled):
        soften_heights(noisy[0], 0.02, stop)
