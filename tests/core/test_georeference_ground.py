"""Combined scale factor, ground and grid distances."""

import numpy as np
import pytest
from pyproj import CRS, Geod

from plugin.core.georeference.axes import from_lonlat
from plugin.core.georeference.ground_grid import (
    GroundGrid,
    grid_to_ground,
    ground_to_grid,
    line_between,
    mean_radius,
    scale_factors,
    site_ground_grid,
)
from plugin.core.messages import SurveyError
from plugin.core.points.pointset import make_points

A, F = 6378137.0, 1 / 298.257222101  # GRS 80
E2 = F * (2 - F)


def radii(lat):
    """Radii of curvature in the meridian and the prime vertical, metres (closed form)."""
    w = np.sqrt(1 - E2 * np.sin(np.radians(lat)) ** 2)
    return A * (1 - E2) / w**3, A / w


def transverse_mercator_factor(lon, lat, lon0, k0):
    """Series for the point scale of the transverse Mercator projection (Snyder, USGS Professional Paper 1395,
    eq. 8-11; from memory)."""
    phi, e1 = np.radians(lat), E2 / (1 - E2)
    t, c = np.tan(phi) ** 2, e1 * np.cos(phi) ** 2
    a = np.radians(lon - lon0) * np.cos(phi)
    return k0 * (
        1 + (1 + c) * a**2 / 2 + (5 - 4 * t + 42 * c + 13 * c**2 - 28 * e1) * a**4 / 24
        + (61 - 148 * t + 16 * t**2) * a**6 / 720
    )  # fmt: skip


@pytest.mark.parametrize(
    ("code", "lon0", "k0", "lon", "lat"),
    [
        (25832, 9, 0.9996, 11.5, 48),
        (25832, 9, 0.9996, 9, 60),
        (28355, 147, 0.9996, 149.5, -35),
        (2193, 173, 0.9996, 171, -44),
    ],
)
def test_the_combined_factor_against_the_closed_form_on_the_ellipsoid(code, lon0, k0, lon, lat):
    east, north = from_lonlat(CRS(code), [lon], [lat])
    at = scale_factors(CRS(code), east, north, 650.0)[0]
    m, n = radii(lat)
    radius = np.sqrt(m * n)
    assert at.projection == pytest.approx(transverse_mercator_factor(lon, lat, lon0, k0), abs=2e-10)
    assert at.radius == pytest.approx(radius, rel=1e-12)
    assert at.height == pytest.approx(radius / (radius + 650.0), rel=1e-12)
    assert at.combined == pytest.approx(at.projection * at.height, rel=1e-15)


def test_the_mercator_factor_in_closed_form():
    """Mercator: k = k0 a cos(lat0)... / (N cos lat) with the equator as true parallel; EPSG:3002 on Bessel 1841."""
    crs = CRS(3002)
    east, north = from_lonlat(crs, [118.0], [-4.0])
    a, f = crs.ellipsoid.semi_major_metre, 1 / crs.ellipsoid.inverse_flattening
    e2 = f * (2 - f)
    n = a / np.sqrt(1 - e2 * np.sin(np.radians(4)) ** 2)
    assert scale_factors(crs, east, north, 0.0)[0].projection == pytest.approx(
        0.997 * a / (n * np.cos(np.radians(4))), abs=1e-10
    )


@pytest.mark.parametrize(
    ("code", "lon", "lat"), [(25832, 10.5, 48), (28355, 146, -37), (2277, -97.5, 30.5), (2154, 4, 45)]
)
@pytest.mark.parametrize("azimuth", [0.0, 45.0, 90.0])
def test_a_short_line_on_the_ground_gets_its_length_in_the_grid(code, lon, lat, azimuth):
    """Geodesics (Karney, through pyproj) at height h: the ellipsoidal length grows by (R + h) / R."""
    crs, h = CRS(code), 800.0
    geod = Geod(a=crs.ellipsoid.semi_major_metre, b=crs.ellipsoid.semi_minor_metre)
    on_ellipsoid = 200.0
    lon2, lat2, _ = geod.fwd(lon, lat, azimuth, on_ellipsoid)
    east, north = from_lonlat(crs, [lon, lon2], [lat, lat2])
    m, n = (r * 1.0 for r in radii(lat))
    along = np.radians(azimuth)
    euler = m * n / (n * np.cos(along) ** 2 + m * np.sin(along) ** 2)
    ground = on_ellipsoid * (euler + h) / euler
    at = scale_factors(crs, east.mean(), north.mean(), h)[0]
    # The mean radius differs from that of one direction by 0.3 % at most, of 125 ppm here.
    assert np.hypot(np.diff(east), np.diff(north))[0] / at.combined == pytest.approx(ground, abs=200 * 0.5e-6)


def test_radii_differ_little_and_the_mean_lies_between():
    m, n = radii(48.0)
    assert m < mean_radius(CRS(25832).ellipsoid, 48.0) < n
    assert mean_radius(CRS(25832).ellipsoid, 90.0) == pytest.approx(A / np.sqrt(1 - E2), rel=1e-12)


def survey(n=40, seed=3):
    rng = np.random.default_rng(seed)
    return make_points(
        591000 + rng.uniform(0, 800, n), 5300000 + rng.uniform(0, 500, n), rng.uniform(400, 420, n), crs=CRS(25832),
        name=np.array([f"P{i}" for i in range(n)], object),
    )  # fmt: skip


def test_to_ground_and_back():
    points = survey()
    how = site_ground_grid(points, shift=(10000.0, -20000.0))
    ground = grid_to_ground(points, how)
    assert ground.points.crs is None
    grid_length = np.hypot(np.diff(points.easting), np.diff(points.northing))
    ground_length = np.hypot(np.diff(ground.points.easting), np.diff(ground.points.northing))
    np.testing.assert_allclose(ground_length, grid_length / how.factor, atol=1e-8)
    back = ground_to_grid(ground.points, how)
    assert back.points.crs == points.crs
    np.testing.assert_allclose(back.points.easting, points.easting, atol=1e-8)
    np.testing.assert_allclose(back.points.northing, points.northing, atol=1e-8)
    np.testing.assert_array_equal(back.points.height, points.height)
    codes = [one.text.code for one in ground.record.statements]
    assert codes == ["ground.factor", "ground.orthometric_used", "ground.to_ground", "ground.sample", "ground.spread"]


def test_the_origin_stays_where_it_is():
    how = site_ground_grid(survey(), origin=(591400.0, 5300250.0))
    assert how.to_ground([591400.0], [5300250.0]) == (591400.0, 5300250.0)


def test_the_sample_line_shows_both_distances():
    points = survey()
    how = GroundGrid(points.crs, 591000.0, 5300000.0, 0.9995)
    use = grid_to_ground(points, how).record.details
    assert use.sample.ground == pytest.approx(use.sample.grid / 0.9995, rel=1e-14)
    assert use.sample.ppm == pytest.approx(500.0, rel=1e-9)
    assert use.sample.grid == pytest.approx(points.easting.max() - points.easting.min(), rel=0.5)
    assert line_between(points, 0, 1, how).start == "P0"
    assert np.isnan(use.least_factor)


def test_the_separation_moves_the_factor_as_the_geometry_says():
    points = survey()
    without, with_it = site_ground_grid(points), site_ground_grid(points, separation=46.0)
    radius = without.computed.radius
    assert with_it.factor / without.factor - 1 == pytest.approx(-46.0 / radius, rel=1e-3)
    codes = [one.text.code for one in grid_to_ground(points, with_it).record.statements]
    assert "ground.orthometric_used" not in codes


def test_the_spread_over_the_site_contains_every_point():
    points = survey()
    use = grid_to_ground(points, site_ground_grid(points)).record.details
    all_factors = [at.combined for at in scale_factors(points.crs, points.easting, points.northing, points.height)]
    assert use.least_factor <= min(all_factors) < max(all_factors) <= use.greatest_factor


def test_a_projection_that_is_not_conformal_is_said():
    east, north = from_lonlat(CRS(3035), np.array([5.0, 5.001]), np.array([50.0, 50.001]))
    points = make_points(east, north, [10.0, 20.0], crs=CRS(3035))
    codes = [one.text.code for one in grid_to_ground(points, site_ground_grid(points)).record.statements]
    assert "ground.not_conformal" in codes


def test_what_cannot_be_computed_is_refused():
    points = survey()
    for make, code in (
        (lambda: GroundGrid(None, 0.0, 0.0, 1.5), "ground.bad_factor"),
        (lambda: GroundGrid(None, 0.0, 0.0, np.nan), "ground.bad_factor"),
        (lambda: site_ground_grid(make_points([0.0], [0.0], [0.0])), "ground.no_crs"),
        (lambda: site_ground_grid(points.select(np.zeros(40, bool))), "ground.no_points"),
        (lambda: scale_factors(CRS(25832), 1e12, 1e12, 0.0), "ground.no_place"),
    ):
        with pytest.raises(SurveyError) as refused:
            make()
        assert refused.value.code == code
