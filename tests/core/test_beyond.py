"""What lies beyond a fault that was found in part."""

from __future__ import annotations

from typing import Any, Tuple

import numpy as np
import pytest

from plugin.core.quality.beside import look_beside
from plugin.core.quality.beyond import Blocks, Ways, beyond_faults
from plugin.core.quality.ground import ground_net
from plugin.core.quality.noise import Roughness
from plugin.core.quality.stretches import Scale
from plugin.core.quality.walk import Walk, make_walk

NOISE, OFF = 0.01, 0.12
PASS = 60  # points
FAULT = slice(5 * PASS + 15, 5 * PASS + 45)  # in the middle of the sixth of twelve passes


def site(fault: slice = FAULT, size: float = OFF) -> Walk:
    """Passes along x, 2 m apart, half a metre between points, over ground that is hardly curved."""
    x, y = np.meshgrid(np.arange(PASS) * 0.5, np.arange(12) * 2.0)
    x[1::2] = x[1::2, ::-1]
    x, y = x.ravel(), y.ravel()
    z = 0.03 * x - 0.02 * y + 0.0005 * x**2 + np.random.default_rng(7).normal(0, NOISE, len(x))
    z[fault] += size
    return make_walk(np.arange(len(x)), x, y, z)


def looked(walk: Walk, known: slice, cuts: Tuple[int, ...], level: float = OFF, also: Any = False) -> Ways:
    """Ways on from the points ``known``, all of one block, with cuts before the points ``cuts``; ``also`` is found."""
    found, cut = np.zeros(len(walk), bool) | also, np.zeros(len(walk), bool)
    found[known], cut[list(cuts)] = True, True
    net, coded = ground_net(walk, np.empty((0, 3)), np.empty((0, 2), np.int64)), np.empty((0, 3))
    scale = Scale(NOISE, 0.6 * NOISE, 2.0, Roughness(np.array([0.5, 4.0]), np.array([0.001, 0.01])))
    blocks = Blocks(np.array([known.start]), np.array([known.stop - 1]), np.array([level]))
    return beyond_faults(walk, blocks, found, cut, net, look_beside(walk, net, coded), scale)


@pytest.mark.parametrize("size", [OFF, -OFF])
def test_the_rest_of_a_fault_is_what_the_ground_around_says(size: float) -> None:
    """Cuts at both ends of the fault, within it and beyond: the longest way that is off as a whole is taken."""
    inside, beyond = (FAULT.start + 4, FAULT.stop - 12), (FAULT.start - 14, FAULT.stop + 13)
    known = slice(FAULT.start + 8, FAULT.start + 14)
    ways = looked(site(size=size), known, (*inside, *beyond, FAULT.start, FAULT.stop), size)
    spans = sorted(zip(ways.low.tolist(), ways.high.tolist()))
    assert spans == [(FAULT.start, known.start), (known.stop, FAULT.stop)]
    assert ways.level == pytest.approx([size, size])


def test_ground_beside_a_whole_fault_is_left_alone() -> None:
    cuts = (FAULT.start - 20, FAULT.start - 6, FAULT.start, FAULT.stop, FAULT.stop + 3, FAULT.stop + 20)
    assert len(looked(site(), FAULT, cuts)) == 0


def test_without_cuts_there_is_no_way_on() -> None:
    assert len(looked(site(), slice(FAULT.start, FAULT.start + 8), ())) == 0


def test_a_way_ends_at_its_piece_and_at_what_else_was_found() -> None:
    whole, start = site(slice(5 * PASS + 10, 5 * PASS + 45)), 5 * PASS + 10
    known, cuts = slice(start, start + 6), (start + 14, start + 20, start + 29)
    kept = np.delete(np.arange(len(whole)), np.arange(start + 20, start + 27))  # a gap of four metres
    parted = make_walk(kept, whole.x[kept], whole.y[kept], whole.z[kept])
    assert looked(whole, known, cuts).high.tolist() == [start + 29]
    assert looked(parted, known, cuts).high.tolist() == [start + 20]
    known_too = np.zeros(len(whole), bool)
    known_too[start + 18 : start + 35] = True
    assert looked(whole, known, cuts, also=known_too).high.tolist() == [start + 18]


def test_small_offsets_are_not_followed() -> None:
    size = 2 * NOISE
    assert len(looked(site(size=size), slice(FAULT.start, FAULT.start + 20), (FAULT.stop,), size)) == 0
