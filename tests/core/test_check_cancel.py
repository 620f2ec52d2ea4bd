"""The check asks for Cancel within its long steps, not only between them."""

from __future__ import annotations

from collections import Counter

import numpy as np
import pytest

from plugin.core.features.find import find_features
from plugin.core.progress import Cancelled
from plugin.core.quality.crossings import Track
from plugin.core.quality.scan import HYPOTHESES, Scores, scores_of
from plugin.core.quality.walk import make_walk
from tests.core.simulated import simulate


def stop_after(calls):
    """A progress that cancels at the call of that number."""
    told = Counter()

    def progress(fraction, stage):
        told["calls"] += 1
        if told["calls"] == calls:
            raise Cancelled

    return progress


def test_each_block_of_the_scan_asks():
    n = 60_000
    along = 0.5 * np.arange(n)
    walk = make_walk(np.arange(n), along, np.zeros(n), 0.01 * np.sin(along))
    with pytest.raises(Cancelled):
        scores_of(walk, HYPOTHESES[:1], 0.01, stop_after(3))
    with pytest.raises(Cancelled):
        Scores(walk, 0.01, np.arange(n), stop_after(3))
    scores = Scores(walk, 0.01, np.arange(0, n, 10))
    with pytest.raises(Cancelled):
        scores.cut(np.arange(5, n, 50), np.arange(n), stop_after(3))


def test_each_block_of_the_crossings_asks():
    n = 60_000
    row, place = np.divmod(np.arange(n), 300)
    walk = make_walk(np.arange(n), 0.5 * np.where(row % 2, 299 - place, place), 2.0 * row, np.zeros(n))
    with pytest.raises(Cancelled):
        Track(walk).crossings(None, stop_after(3))


def test_each_step_of_the_lines_asks():
    """No less than sixteen times, in order; before ditches are fitted, and at each bottom that may be one's."""
    told = []
    find_features(simulate("street", 1).points, progress=lambda fraction, _: told.append(fraction))
    assert len(set(told)) >= 16
    assert told == sorted(told)
    assert told[-1] == 1.0
    assert told.count(0.64) >= 2
