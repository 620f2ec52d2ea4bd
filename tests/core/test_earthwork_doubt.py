"""The doubt of volumes, against Monte Carlo, finite differences and cases that can be worked by hand."""

from dataclasses import replace

import numpy as np
import pytest

from plugin.core.earthwork.doubt import doubt_of_pieces, volume_doubt
from plugin.core.earthwork.following import derivatives
from plugin.core.earthwork.overlay import Pieces, common_pieces
from plugin.core.earthwork.plane import Plane, plane_pieces
from plugin.core.earthwork.roughness import ground_departure
from plugin.core.earthwork.side import SurfaceDoubt
from plugin.core.earthwork.triangles import Triangles
from plugin.core.earthwork.volume import volume_between, volumes_by_piece
from plugin.core.messages import SurveyError
from tests.core.earthworks import square, surface
from tests.core.surfaces import delaunay_tin, random_tin

DRAWS = 2000


def joined(pieces):
    """All pieces as one block, corners repeated to the same number."""
    parts = list(pieces)
    width = max(p.x.shape[1] for p in parts)
    wide = [
        [np.pad(v, ((0, 0), (0, width - v.shape[1])), mode="edge") for v in (p.x, p.y, p.first_height, p.second_height)]
        for p in parts
    ]
    x, y, one, other = (np.concatenate(c) for c in zip(*wide))
    first, second = np.concatenate([p.first for p in parts]), np.concatenate([p.second for p in parts])
    return Pieces(x, y, parts[0].origin, first, second, one, other)


def draws(a, b, sigma_a, sigma_b, seed=1):
    """Cut and fill of many noisy copies; the refinement in plan is that of the surfaces themselves."""
    rng = np.random.default_rng(seed)
    pieces = joined(common_pieces(a, b))
    found = np.empty((DRAWS, 2))
    for k in range(DRAWS):
        noisy = []
        for tin, sigma in ((a, sigma_a), (b, sigma_b)):
            noise = rng.normal(0, 1, len(tin.vertices)) * sigma
            noisy.append(replace(tin, vertices=tin.vertices + np.column_stack([0 * noise, 0 * noise, noise])))
        one = Triangles(noisy[0], pieces.origin).height(pieces.first, pieces.x, pieces.y)
        other = Triangles(noisy[1], pieces.origin).height(pieces.second, pieces.x, pieces.y)
        found[k] = volumes_by_piece(replace(pieces, first_height=one, second_height=other))[:2].sum(axis=1)
    return found


@pytest.mark.parametrize("case", ["cut only", "cut and fill"])
def test_random_part_against_monte_carlo(case):
    rng = np.random.default_rng(5)
    a, b = random_tin(80, 1), random_tin(60, 2)
    tilt = 0.08 * (b.vertices[:, 0] - 45) if case == "cut and fill" else -5.0
    b = replace(b, vertices=b.vertices + np.column_stack([np.zeros((60, 2)), np.broadcast_to(tilt, 60)]))
    sigma = rng.uniform(0.01, 0.05, 80)
    doubt = volume_doubt(a, b, SurfaceDoubt(sigma), SurfaceDoubt(0.02))
    sample = draws(a, b, sigma, 0.02)
    assert sample[:, 0].std(ddof=1) == pytest.approx(doubt.cut.random, rel=0.05)
    assert (sample[:, 1] - sample[:, 0]).std(ddof=1) == pytest.approx(doubt.net.random, rel=0.05)
    if case == "cut and fill":
        assert sample[:, 1].std(ddof=1) == pytest.approx(doubt.fill.random, rel=0.05)
    inside = [low < value < high for value in sample[:, 0] for low, high in [doubt.cut.interval_95]]
    assert np.mean(inside) == pytest.approx(0.95, abs=0.02)
    assert 0 < doubt.point_share < 1


def test_noise_excess_against_monte_carlo():
    """Two surveys of the same ground: noise alone makes cut and fill, and on average as much is told."""
    a = random_tin(80, 1)
    b = delaunay_tin(a.vertices[:, :2], a.vertices[:, 2])
    sample = draws(a, b, 0.03, 0.03)
    rng = np.random.default_rng(7)
    told = []
    for _ in range(150):
        noisy = []
        for tin in (a, b):
            noise = rng.normal(0, 0.03, len(tin.vertices))
            noisy.append(replace(tin, vertices=tin.vertices + np.column_stack([0 * noise, 0 * noise, noise])))
        told.append(volume_doubt(*noisy, SurfaceDoubt(0.03), SurfaceDoubt(0.03)).noise_excess)
    error = np.std(told) / np.sqrt(len(told))
    assert np.mean(told) == pytest.approx(sample.mean(), abs=4 * error)
    assert error < 0.03 * sample.mean()


def test_ground_that_both_surfaces_share_makes_no_noise():
    """A design that is the existing surface but for one place: where they coincide there is nothing to take off."""
    a = random_tin(80, 1)
    doubt = volume_doubt(a, replace(a), SurfaceDoubt(0.03), SurfaceDoubt(0.03))
    assert (doubt.noise_excess, doubt.cut.value, doubt.fill.value) == (0, 0, 0)


def test_derivatives_against_differences():
    a, b = random_tin(60, 1), random_tin(50, 2)
    by = [derivatives(list(common_pieces(a, b)), tin, tin is a) for tin in (a, b)]
    base = volume_between(a, b)
    for tin, found in zip((a, b), by):
        for v in (3, 17, 40):
            moved = tin.vertices.copy()
            moved[v, 2] += 1e-5
            other = replace(tin, vertices=moved)
            after = volume_between(other, b) if tin is a else volume_between(a, other)
            assert found.cut[v] == pytest.approx((after.cut - base.cut) / 1e-5, abs=2e-3)
            assert found.fill[v] == pytest.approx((after.fill - base.fill) / 1e-5, abs=2e-3)
        assert found.cut_area.sum() == pytest.approx(base.cut_area, rel=1e-9)
    assert by[0].cut.sum() == pytest.approx(base.cut_area, rel=1e-9)  # all heights up by 1 m: the area
    assert by[1].fill.sum() == pytest.approx(base.fill_area, rel=1e-9)


def test_one_square_by_hand():
    """Four corners over a level: the diagonal's ends hold A/3 each and the others A/6, sd = A s sqrt(10)/6."""
    tin = surface(square(10, 5))
    doubt = doubt_of_pieces(plane_pieces(tin, Plane(3)), tin, None, SurfaceDoubt(0.03), offset_sigma=0.02)
    assert doubt.cut.value == pytest.approx(200)
    assert doubt.cut.random == pytest.approx(100 * 0.03 * np.sqrt(10) / 6, rel=1e-12)
    assert (doubt.cut.systematic, doubt.net.systematic) == (pytest.approx(2.0), pytest.approx(2.0))
    assert (doubt.fill.total, doubt.point_share) == (0, 1)
    low, high = doubt.cut.interval_95
    assert (high - low) / 2 == pytest.approx(1.96 * np.hypot(doubt.cut.random, 2.0), rel=1e-4)


def test_model_part_of_a_curved_ground():
    """On a paraboloid z = c (x² + y²) / 2 the departure at an edge's middle is c L²/2 and the net error their mean."""
    c = 0.02
    x, y = (v.ravel() for v in np.meshgrid(np.arange(0, 41, 4.0), np.arange(0, 41, 4.0)))
    tin = delaunay_tin(np.column_stack([x, y]), c * (x**2 + y**2) / 2)
    truth = c / 2 * 2 * 40**4 / 3
    doubt = doubt_of_pieces(
        plane_pieces(tin, Plane(-1)), tin, None, SurfaceDoubt(departure=lambda half: c * half**2 / 2)
    )
    error = doubt.cut.value - 1600 - truth
    edges = np.array([4, 4, 4 * np.sqrt(2)])
    assert error == pytest.approx(1600 * np.mean(c * (edges / 2) ** 2 / 2), rel=1e-9)
    # all of the ground bends one way, so it is one patch, and the model part is the error itself
    doubt = doubt_of_pieces(
        plane_pieces(tin, Plane(-1)), tin, None, SurfaceDoubt(0.0, lambda half: c * half**2 / 2, 1000.0)
    )
    assert doubt.cut.model == pytest.approx(error, rel=1e-9)


def test_model_part_of_rough_ground():
    """On random bumps the model part of many surveys is as large as their errors (within a third)."""
    rng = np.random.default_rng(2)
    waves = rng.normal(0, 2 * np.pi / 12, (2, 60))
    phase, size = rng.uniform(0, 2 * np.pi, 60), 0.03

    def ground(x, y):
        return size * np.cos(np.outer(x, waves[0]) + np.outer(y, waves[1]) + phase).sum(axis=1)

    fine = (np.arange(400) + 0.5) / 4
    truth = np.mean([ground(fine, np.full(400, v)).mean() for v in fine]) * 1e4
    corner = np.array([[0, 0], [100, 0], [100, 100], [0, 100], [50, 0], [50, 100], [0, 50], [100, 50.0]])
    errors, models = [], []
    for _ in range(25):
        xy = np.vstack([corner, np.round(rng.uniform(0, 100, (700, 2)), 3)])
        tin = delaunay_tin(xy, ground(*xy.T))
        doubt = doubt_of_pieces(plane_pieces(tin, Plane(-9)), tin, None, SurfaceDoubt(departure=ground_departure(tin)))
        errors.append(doubt.cut.value - 9e4 - truth)
        models.append(doubt.cut.model)
    assert np.mean(models) == pytest.approx(np.std(errors), rel=0.5)
    assert np.ptp(models) < 0.5 * np.mean(models)


def test_roughness_leaves_noise_out():
    rng = np.random.default_rng(0)
    xy = np.round(rng.uniform(0, 100, (2000, 2)), 3)
    tin = delaunay_tin(xy, 3 + 0.1 * xy[:, 0] + rng.normal(0, 0.02, 2000))
    assert ground_departure(tin, 0.02)(np.array([1.0]))[0] < 0.005
    assert ground_departure(tin)(np.array([3.0]))[0] > 0.015


def test_sigma_that_cannot_be():
    tin = random_tin(50, 1)
    with pytest.raises(SurveyError, match="50 vertices"):
        volume_doubt(tin, random_tin(40, 2), SurfaceDoubt(-1.0))


def test_drift_is_one_offset_within_a_square_of_ground():
    """Monte Carlo with one offset for all points of a square, beside the closed form of one square over all."""
    a, b = random_tin(80, 1), surface(square(100, 60.0))
    doubt = volume_doubt(a, b, SurfaceDoubt(drift=0.02, drift_length=1e6))
    volume = volume_between(a, b)
    if len(np.unique(np.floor((a.vertices[:, :2] + a.origin) / 1e6), axis=0)) == 1:
        assert doubt.net.drift == pytest.approx(0.02 * volume.common_area, rel=1e-9)
    length = 25.0
    doubt = volume_doubt(a, b, SurfaceDoubt(drift=0.02, drift_length=length))
    patch = np.unique(np.floor((a.vertices[:, :2] + a.origin) / length), axis=0, return_inverse=True)[1].ravel()
    rng = np.random.default_rng(3)
    pieces = joined(common_pieces(a, b))
    found = np.empty(DRAWS)
    for k in range(DRAWS):
        rise = rng.normal(0, 0.02, patch.max() + 1)[patch]
        noisy = replace(a, vertices=a.vertices + np.column_stack([0 * rise, 0 * rise, rise]))
        one = Triangles(noisy, pieces.origin).height(pieces.first, pieces.x, pieces.y)
        found[k] = np.subtract(*volumes_by_piece(replace(pieces, first_height=one))[1::-1].sum(axis=1))
    assert found.std(ddof=1) == pytest.approx(doubt.net.drift, rel=0.05)
    assert doubt.net.total == pytest.approx(doubt.net.drift)
    with pytest.raises(SurveyError, match="0 or more"):
        SurfaceDoubt(drift=-0.01)
