"""Survey and control of two systems, which a fit would hide.

``HUMMOCK_SYSTEMS=100`` asks for all pairs and 100 surveys that are only shifted.
"""

import os

import numpy as np
import pytest
from pyproj import CRS, Transformer
from test_crs_doubt import LOOK_ALIKES, WRONG, numbers

from plugin.core.georeference.control import ControlMatch
from plugin.core.georeference.control_crs import two_systems
from plugin.core.units import metres_per_unit

SYSTEMS = int(os.environ.get("HUMMOCK_SYSTEMS", "12"))
#: Systems whose numbers lie some metres apart: WGS 72 and WGS 84, the datums of Australia of 1994 and 2020.
CLOSE_BY = [
    (32232, 32632, 9.5, 51.5), (32632, 32232, 9.5, 51.5), (32217, 32617, -81.0, 41.0),
    (32630, 32230, -3.7, 40.4), (28355, 7855, 148.0, -35.0), (7856, 28356, 151.0, -33.0),
]  # fmt: skip


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
    every = [*LOOK_ALIKES, *WRONG]
    cases = every[:: max(1, len(every) // SYSTEMS)]
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


@pytest.mark.parametrize(("true", "other", "lon", "lat"), CLOSE_BY)
def test_datums_some_metres_apart_are_told_by_control(true, other, lon, lat):
    survey, control = pair(true, other, lon, lat, true)
    assert 1.0 < np.median(np.hypot(*(survey - control).T)) < 20.0
    said = two_systems(match(survey, control), CRS.from_epsg(other))
    assert said
    assert true == 32630 or f"EPSG:{true}" in str(said[0])  # there ETRS89 is the same


def test_a_base_at_a_place_of_its_own_is_not_taken_for_another_datum():
    """Surveys shifted by a few metres, as from a base whose place a receiver worked out alone."""
    told = 0
    for seed in range(SYSTEMS):
        rng = np.random.default_rng(seed)
        code, lon, lat = [(25832, 9.5, 51.5), (32632, 9.5, 51.5), (7855, 148, -35), (26917, -81, 41)][seed % 4]
        control = numbers(code, lon, lat, seed, 6).T
        survey = control + rng.normal(0, 3.0, 2) + rng.normal(0, 0.02, (6, 2))
        told += bool(two_systems(match(survey, control), CRS.from_epsg(code)))
    assert told <= 0.02 * SYSTEMS
