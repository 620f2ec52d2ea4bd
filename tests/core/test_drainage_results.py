"""Channels, ridges, flat areas, peak flows and what a change does."""

import numpy as np
import pytest

from plugin.core.drainage.analysis import analyse, compare, water_at
from plugin.core.drainage.catchments import Outlet, find_catchments
from plugin.core.drainage.fates import find_fates
from plugin.core.drainage.flow import build_flow
from plugin.core.drainage.inlets import inlet_triangles
from plugin.core.drainage.level_ground import flat_areas, mean_slopes
from plugin.core.drainage.network import channel_lines, drained_areas, ridge_lines
from plugin.core.drainage.ponds import PondOptions, find_ponds
from plugin.core.drainage.rational import FlowUnits, peak_flows
from plugin.core.messages import SurveyError
from plugin.core.surface.tin import Tin
from tests.core.drainage_grounds import cone, gridded, gutter, valley
from tests.core.surfaces import delaunay_tin, random_tin


def test_all_ground_of_a_catchment_drains_through_its_outlet():
    """Added up vertex by vertex it is what the division from below gives."""
    flow = build_flow(random_tin(4000, 2))
    ponds = find_ponds(flow, PondOptions(min_depth=0.2))
    drained = drained_areas(flow, ponds, overflow=True)
    catchments = find_catchments(find_fates(flow), ponds, overflow=True)
    outlets = catchments.outlet == Outlet.RIM_VERTEX
    assert np.sum(outlets) > 10
    np.testing.assert_allclose(drained.area[catchments.number[outlets]], catchments.area[outlets], rtol=1e-9)
    assert np.all(drained.next[flow.on_rim & flow.used] == np.flatnonzero(flow.on_rim & flow.used))


def test_the_channel_of_a_valley():
    tin = valley(0.1)
    lines = channel_lines(build_flow(tin), 20.0)
    assert len(lines) == 1
    xyz = lines.xyz
    np.testing.assert_allclose(xyz[:, 0], 5, atol=1e-12)
    np.testing.assert_allclose(xyz[-1], [5, 0, 0], atol=1e-12)
    assert np.all(np.diff(xyz[:, 2]) < 0)
    # All ground above y drains past it but two triangles of 5 m² beside the outlet: 20 m² do from y = 10 - 2.5.
    assert xyz[0, 1] == pytest.approx(7.5, abs=0.15)
    assert lines.area[0] == pytest.approx(95, rel=1e-9)
    np.testing.assert_allclose(lines.line(0)[:, :2] - tin.origin, xyz[:, :2], atol=1e-8)


def test_the_ridge_between_two_valleys():
    """Valleys along x = 5 and x = 15 that fall south, the crest between them along x = 10."""
    tin = gridded(lambda x, y: np.abs(np.abs(x - 10) - 5) + 0.02 * y, np.arange(0, 20.5, 0.5), np.arange(0, 20.5, 0.5))
    lines = ridge_lines(build_flow(tin), 30.0)
    crest = [lines.xyz[a:b] for a, b in zip(lines.start[:-1], lines.start[1:])]
    longest = max(crest, key=lambda line: np.ptp(line[:, 1]))
    np.testing.assert_allclose(longest[:, 0], 10, atol=1e-9)
    assert np.ptp(longest[:, 1]) > 19.5


def test_channels_run_on_over_noise_when_hollows_let_water_pass():
    flow = build_flow(gutter(6))
    ponds = find_ponds(flow, PondOptions(sigma=0.01))
    assert len(flow.pits) > 50
    assert len(ponds) == 0
    lines = channel_lines(flow, 800.0, ponds)
    assert np.all(np.abs(lines.xyz[:, 0] - 25) < 3)
    assert lines.xyz[:, 1].min() < 1
    assert lines.xyz[:, 1].max() > 25
    assert channel_lines(flow, 800.0).xyz.shape[0] == 0


def test_flat_areas():
    tin = gridded(lambda x, y: 0.03 * np.clip(x - 10, 0, None) + 0.005 * x, np.arange(21.0), np.arange(11.0))
    areas = flat_areas(tin, 0.01)
    assert len(areas) == 1
    assert areas[0].plan_area == pytest.approx(100)
    np.testing.assert_allclose(areas[0].rings[0][:, 0].max() - tin.origin[0], 10)
    assert flat_areas(tin, 0.01, min_area=101) == ()
    assert flat_areas(tin, 0.001) == ()
    with pytest.raises(SurveyError, match="Correct it"):
        flat_areas(tin, float("nan"))


def test_the_window_averages_noise_of_slopes():
    rng = np.random.default_rng(2)
    xy = rng.uniform(0, 40, (6400, 2))
    tin = delaunay_tin(xy, 0.01 * xy[:, 0] + rng.normal(0, 0.01, len(xy)))
    assert np.median(mean_slopes(tin, 0.0)) > 0.02
    wide = mean_slopes(tin, 6.0)
    assert np.median(np.abs(wide - 0.01)) < 0.002


def test_peak_flow_in_both_units():
    """FHWA HEC-22 (from memory): Q = C i A / 360 in m³/s, mm/h and ha; 1.00833 C i A in ft³/s, in/h and acres."""
    si = peak_flows(np.array([20_000.0]), np.array([0.6]), 50.0)
    assert si.flow[0] == pytest.approx(0.6 * 50 * 2 / 360 * 1000)
    assert (si.units.flow, si.units.intensity, si.units.area) == ("l/s", "mm/h", "ha")
    acre = 43_560 * 0.3048**2
    us = peak_flows(np.array([5 * acre]), 0.6, 2.0, FlowUnits.US)
    assert us.flow[0] == pytest.approx(0.6 * 2 * 5 * 43_560 / 12 / 3600)
    assert us.area[0] == pytest.approx(5)
    assert "Kuichling 1889" in us.source
    assert [c.text.code for c in us.cautions] == ["peak_flow_indication"]
    large = peak_flows(np.array([9e5]), 0.6, 2.0)
    assert [c.text.code for c in large.cautions] == ["peak_flow_indication", "peak_flow_large"]
    for coefficient, intensity in ((0.0, 10.0), (1.1, 10.0), (float("nan"), 10.0), (0.5, 0.0)):
        with pytest.raises(SurveyError, match="Correct it"):
            peak_flows(np.array([1.0]), coefficient, intensity)


def with_heights(tin, z):
    return Tin(**{**vars(tin), "vertices": np.column_stack([tin.vertices[:, :2], z])})


def test_what_a_design_changes():
    """A hollow in a plane is filled, and a bank across the plane turns water away from one inlet to the other."""
    side = np.arange(0.0, 21.0)
    ground = gridded(lambda x, y: 0.1 * y - 1.5 * ((abs(x - 5) < 1) & (abs(y - 12) < 1)), side, side)
    places = np.array([[5.5, 0.4], [15.5, 0.4]]) + ground.origin
    sink = inlet_triangles(ground, places, reach=4.0)
    design = with_heights(ground, 0.1 * ground.vertices[:, 1] + 0.2 * np.clip(12 - ground.vertices[:, 0], 0, None))
    before, after = analyse(ground, sink), analyse(design, sink)
    change = compare(before, after, 0.5)
    assert len(change.ponds) == 1
    pond = change.ponds[0]
    assert (pond.before, pond.after) == (0, -1)
    assert pond.volume == pytest.approx(-before.ponds.volume[0])
    assert change.standing_before == pytest.approx(before.ponds.volume[0])
    assert change.standing_after == 0
    assert change.kept_before > 0 == change.kept_after
    assert change.common_area == pytest.approx(400, rel=0.11)
    ways = {(m.before, m.after): m.area for m in change.moved}
    assert ways[(Outlet.INLET, 0), (Outlet.INLET, 1)] > 20
    same = compare(before, before, 1.0)
    assert same.moved == ()
    assert all(p.volume == 0 == p.depth for p in same.ponds)


def test_water_depth_at_places():
    tin = cone(-4.0)
    flow = build_flow(tin)
    pond, depth = water_at(flow, find_ponds(flow), np.array([[20.0, 20.0], [24.0, 20.0], [500.0, 0.0]]) + tin.origin)
    np.testing.assert_array_equal(pond, [0, 0, -1])
    np.testing.assert_allclose(depth, [4, 2, 0], atol=1e-9)
