"""Ends of faults that the search did not cut where they begin."""

from __future__ import annotations

import numpy as np

from plugin.core.quality.leftovers import beside_faults
from plugin.core.quality.noise import roughness
from plugin.core.quality.stretches import Scale
from plugin.core.quality.walk import make_walk

NOISE = 0.01


def searched(found: slice):
    """A pass of 80 points over sloping ground; those from 30 to 45 are lifted by 0.2 m, ``found`` of them known."""
    x = np.arange(80) * 0.5
    z = 0.05 * x + np.random.default_rng(2).normal(0, NOISE, 80)
    z[30:46] += 0.2
    walk = make_walk(np.arange(80), x, 0.1 * np.sin(x / 3), z)
    mask = np.zeros(80, bool)
    mask[found] = True
    scale = Scale(NOISE, NOISE / 2, 4.0, roughness(walk.take(np.delete(np.arange(80), range(28, 48))), NOISE))
    return beside_faults(walk, mask, np.where(mask, 0.2, 0.0), scale)


def test_the_rest_of_a_fault_is_found_on_either_side() -> None:
    index, size = searched(slice(33, 43))
    assert sorted(index.tolist()) == [30, 31, 32, 43, 44, 45]
    np.testing.assert_allclose(size, 0.2, atol=0.04)


def test_ground_beside_a_whole_fault_is_left_alone() -> None:
    index, _ = searched(slice(30, 46))
    assert len(index) == 0
