"""Lines found on walks that show little of them, against the simulated truth.

Heights of kerbs and depths of ditches: common practice, no source.
"""

from __future__ import annotations

from typing import Iterable, List

import numpy as np
import pytest
from scipy.spatial import cKDTree

from plugin.core.features import ditches, find
from plugin.core.features.found import Features, FoundKind
from tests.core.simulated_lines import Score, Site, middle_of, score
from tests.core.simulated_sparse import along_only, shallow, slanted

SEEDS = range(4)


def scored(sites: Iterable[Site]) -> Score:
    scores: List[Score] = [score(site, find.find_features(site.points)) for site in sites]
    result = scores[0]
    for one in scores[1:]:
        result = result + one
    return result


def far_off(site: Site, features: Features, reach: float = 1.0) -> float:
    """Metres of strong lines that lie farther than ``reach`` metres from all true ones."""
    tree = cKDTree(np.vstack([line.xy for line in site.lines]))
    total = 0.0
    for line in features.strong:
        away = tree.query(middle_of(line)[0])[0]
        total += float(np.mean(away > reach)) * line.length
    return total


def test_kerbs_are_found_where_passes_cross_them_obliquely_and_end_near() -> None:
    every = scored(slanted(seed, spacing=0.5) for seed in SEEDS)
    assert every.found >= 0.95 * every.asked
    assert every.false <= 0.02 * every.drawn


def test_points_a_metre_apart_make_no_breakline_beside_a_kerb(monkeypatch: pytest.MonkeyPatch) -> None:
    """A wrong step on the carriageway has evidence enough; the heights of all passes put it at the kerb."""
    sites = [slanted(seed, spacing=1.0) for seed in range(6)]
    found = [find.find_features(site.points) for site in sites]
    drawn = sum(line.length for one in found for line in one.strong)
    assert drawn > 0
    assert sum(map(far_off, sites, found)) <= 0.02 * drawn
    monkeypatch.setattr(find, "doubtful", lambda *given: np.zeros(len(given[4]), bool))
    unasked = [find.find_features(site.points) for site in sites]
    assert sum(map(far_off, sites, unasked)) > 0.05 * drawn
    # It is not hidden, but proposed.
    assert sum(len(one.lines) for one in found) == sum(len(one.lines) for one in unasked)


@pytest.mark.parametrize(("depth", "run"), [(0.4, 1.5), (0.4, 3.0), (0.3, 1.5), (0.3, 3.0)])
def test_shallow_ditches_have_edges_and_bottom(depth: float, run: float) -> None:
    for seed in SEEDS:
        site = shallow(seed, depth, run)
        features = find.find_features(site.points)
        for line in site.lines:
            own = scored_alone(site, features, line.kind)
            assert own.found >= 0.9 * own.asked
        assert all(line.kind in (FoundKind.TOP, FoundKind.VALLEY) for line in features.strong)
        assert far_off(site, features, 0.3) == 0


def scored_alone(site: Site, features: Features, kind: str) -> Score:
    """The score asked for the lines of one kind only."""
    lines = tuple(line for line in site.lines if line.kind == kind)
    return score(Site(site.points, site.ground, lines, site.walked, site.white, site.what), features)


def test_a_ditch_goes_on_over_passes_that_the_chain_left_out(monkeypatch: pytest.MonkeyPatch) -> None:
    sites = [shallow(seed, 0.4) for seed in range(8)]
    whole = scored(sites)
    monkeypatch.setattr(ditches, "drawn_on", lambda *given: given[-2:])
    part = scored(sites)
    assert whole.found > part.found + 10.0  # m
    assert whole.false == part.false == 0


def test_foot_and_top_of_a_kerb_that_nobody_crosses_are_a_kerb() -> None:
    every = scored(along_only(seed, height) for seed in SEEDS for height in (0.08, 0.12))
    assert every.found >= 0.98 * every.asked
    assert every.false == 0
