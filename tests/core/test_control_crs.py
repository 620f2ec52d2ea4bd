"""Survey and control of two systems, which a fit would hide."""

import numpy as np
import pytest
from pyproj import CRS, Transformer
from test_crs_doubt import LOOK_ALIKES, WRONG, numbers

from plugin.core.georeference.control import ControlMatch
from plugin.core.georeference.control_crs import two_systems
from plugin.core.units import metres_per_unit


def match(survey, control):
    names = tuple(f"P{i}" for i in range(len(survey)))
    up = np.zeros((len(survey), 1))
    return ControlMatch(names, np.hstack((survey, up)), np.hstack((control, up)), np.ones(len(survey), int), ())


def pair(true, other, lon, lat, seed):
    """A site's points as two systems have them, metres."""
    rng = np.random.default_rng(seed)
    one, two = CRS.from_epsg(true), CRS.from_epsg(other)
    here = numbers(true, lon, lat, seed, 6)
    there = np.array(Transformer.from_crs(one, two, always_xy=True).transform(*here))
    noise = rng.normal(0, 0.02, (2, 2, 6))
    return (here * metres_per_unit(one) + noise[0]).T, (there * metres_per_unit(two) + noise[1]).T


def test_pairs_of_systems_are_noticed():
    unnoticed, named = [], 0
    cases = [*WRONG[::3], *LOOK_ALIKES[::2]]  # all of them were tried by hand
    for i, (true, other, lon, lat) in enumerate(cases):
        survey, control = pair(true, other, lon, lat, i)
        apart = np.median(np.hypot(*(survey - control).T))
        said = two_systems(match(survey, control), CRS.from_epsg(other))
        if not said and apart > 20.0:
            unnoticed.append((true, other))
        named += any(f"EPSG:{true}" in str(one) for one in said)
    assert not unnoticed
    assert named > 0.6 * len(cases)


@pytest.mark.parametrize("seed", range(20))
def test_local_surveys_are_not_doubted(seed):
    rng = np.random.default_rng(seed)
    control = rng.uniform(0, 300, (6, 2)) + np.array([548_000.0, 5_712_000.0])
    turn = np.exp(1j * rng.uniform(0, 6.28))
    turned = (control[:, 0] - 548_000 + 1j * (control[:, 1] - 5_712_000)) * turn
    survey = np.column_stack((turned.real, turned.imag)) + rng.choice([0, 1000, 5000, 100_000, 500_000])
    assert two_systems(match(survey, control), CRS.from_epsg(25832)) == ()
    assert two_systems(match(control + rng.uniform(-900, 900, 2), control), CRS.from_epsg(25832)) == ()
