"""Shrink and swell, topsoil, loads and haul, by hand-made sums."""

import numpy as np
import pytest

from plugin.core.earthwork.haul import hauls, mass_diagram
from plugin.core.earthwork.materials import EarthFactors, earth_sheet, strip_pieces, truck_loads
from plugin.core.earthwork.overlay import common_pieces
from plugin.core.earthwork.volume import volume_between
from plugin.core.messages import SurveyError
from tests.core.earthworks import FRUSTUM, frustum, square, surface
from tests.core.surfaces import ORIGIN, random_tin


def test_sheet_with_surplus_and_with_need():
    factors = EarthFactors(loose=1.25, compacted=0.9, unusable=0.1)
    sheet = earth_sheet(1000, 450, factors)
    assert (sheet.fill_needs, sheet.reused) == (pytest.approx(500), pytest.approx(500))
    assert (sheet.unusable, sheet.waste, sheet.borrow) == (pytest.approx(100), pytest.approx(500), 0)
    assert sheet.waste_loose == pytest.approx(625)
    sheet = earth_sheet(1000, 900, factors)
    assert (sheet.reused, sheet.waste) == (pytest.approx(900), pytest.approx(100))
    assert sheet.borrow == pytest.approx(100)
    for s in (sheet, earth_sheet(0, 10, factors), earth_sheet(10, 0, factors)):
        assert s.reused + s.waste == pytest.approx(s.cut)
        assert s.reused + s.borrow == pytest.approx(s.fill_needs)
    assert truck_loads(sheet.borrow_loose, 9) == 14
    assert truck_loads(90.0, 9) == 10
    assert truck_loads(0.0, 9) == 0


@pytest.mark.parametrize(
    ("call", "what"),
    [
        (lambda: EarthFactors(loose=0), "bank to loose volume is 0"),
        (lambda: EarthFactors(compacted=float("nan")), "compacted volume is nan"),
        (lambda: EarthFactors(unusable=1.5), r"share of cut .* is 1\.5"),
        (lambda: truck_loads(10, 0), "load of a truck"),
        (lambda: strip_pieces(common_pieces(frustum(), frustum()), -0.1), "depth of topsoil"),
    ],
)
def test_values_that_make_no_sense(call, what):
    with pytest.raises(SurveyError, match=what):
        call()


def test_topsoil_under_a_bank():
    """Only where the frustum stands is topsoil taken off, and filled up again."""
    ground = surface(square(60, 10))
    found = strip_pieces(common_pieces(ground, frustum()), 0.2)
    assert found.stripped_area == pytest.approx(1600)
    assert found.topsoil == pytest.approx(320)
    assert found.volume.fill == pytest.approx(FRUSTUM + 320, rel=1e-12)


def test_topsoil_balance_on_rough_ground():
    a, b = random_tin(300, 1), random_tin(250, 2)
    whole, found = volume_between(a, b), strip_pieces(common_pieces(a, b), 0.15)
    assert found.stripped_area == pytest.approx(whole.common_area)
    assert found.volume.net == pytest.approx(whole.net + found.topsoil, rel=1e-9)
    assert found.volume.cut < whole.cut


def test_hauls_of_a_made_up_mass_line():
    found = hauls([0, 10, 20, 30, 40], [0, 100, -100, 0, 50])
    assert [(h.start, h.end, h.volume, h.forward) for h in found] == [(0, 15, 100, True), (15, 30, 100, False)]
    assert found[0].moment == pytest.approx(100 * 15 / 2)
    assert found[0].mean_distance == pytest.approx(7.5)
    assert hauls([0, 10], [0, 0]) == ()


def test_mass_of_a_tilted_plane():
    """z = x / 10 made level at 5: fill on the first 50 m, cut on the last 50, mass -20 (50 x - x² / 2) / 10 in between;
    the mean haul is from the middle of gravity of the one triangle to that of the other, 2/3 of 100 m."""
    tilted = surface(np.array([[0, 0, 0], [100, 0, 10], [100, 100, 10], [0, 100, 0.0]]))
    level = surface(square(100, 5))
    axis = np.array([[0, 50], [100, 50.0]]) + ORIGIN
    found = mass_diagram(tilted, level, axis, 2, 10)
    x = found.station
    assert found.mass == pytest.approx(-20 * (5 * x - x**2 / 20), abs=1e-6)
    assert found.rest == pytest.approx(0, abs=1e-6)
    assert found.beside_cut == pytest.approx(0.8 * 50 * 5 / 2 * 100, rel=1e-6)
    assert found.overlap_area == 0
    (haul,) = [h for h in found.hauls if h.volume > 1] or [None]
    assert not haul.forward
    assert haul.mean_distance == pytest.approx(200 / 3, rel=1e-3)
    shrunk = mass_diagram(tilted, level, axis, 2, 10, EarthFactors(compacted=0.8))
    assert shrunk.rest == pytest.approx(-0.2 * 2500, rel=1e-6)
    with pytest.raises(SurveyError, match="width above 0"):
        mass_diagram(tilted, level, axis, 2, -1)


def test_cut_that_cannot_be_used_is_missing_along_the_line():
    """The tilted plane again: of 2500 m³ of cut a fifth is unusable, so that much less reaches the end."""
    tilted = surface(np.array([[0, 0, 0], [100, 0, 10], [100, 100, 10], [0, 100, 0.0]]))
    axis = np.array([[0, 50], [100, 50.0]]) + ORIGIN
    found = mass_diagram(tilted, surface(square(100, 5)), axis, 2, 10, EarthFactors(unusable=0.2))
    assert found.rest == pytest.approx(-0.2 * 2500, rel=1e-6)
    assert found.cut.sum() == pytest.approx(2500, rel=1e-6)  # as measured
