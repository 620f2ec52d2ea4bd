"""Where a large set of positions lies, found from a few of them, is where all of them say."""

from __future__ import annotations

import numpy as np
import pytest
from pyproj import CRS

from plugin.core.georeference import whereabouts
from plugin.core.georeference.axes import lonlat_box, to_lonlat
from plugin.core.georeference.transform import transform_points
from plugin.core.georeference.whereabouts import FEW, in_area, of_degrees, of_plan
from plugin.core.points.pointset import make_points

N = 5 * FEW


def site(middle: tuple, reach: float, seed: int = 1) -> tuple:
    """Points over a turned oval, so that the corners of the rectangle around them are empty."""
    rng = np.random.default_rng(seed)
    turn, out = rng.uniform(0, 2 * np.pi, N), np.sqrt(rng.uniform(0, 1, N)) * reach
    x, y = out * np.cos(turn), 0.2 * out * np.sin(turn)
    return middle[0] + 0.8 * x - 0.6 * y, middle[1] + 0.6 * x + 0.8 * y


@pytest.mark.parametrize(
    ("code", "middle"), [(25832, (565_000, 5_933_000)), (32633, (300_000, 7_900_000)), (32760, (500_000, 6_000_000))]
)
@pytest.mark.parametrize("reach", [50.0, 5_000.0, 200_000.0])
def test_box_is_that_of_all_points(code: int, middle: tuple, reach: float) -> None:
    crs, (east, north) = CRS.from_epsg(code), site(middle, reach)
    found = of_plan(crs, east, north, "", np.arange(N))
    exact = lonlat_box(*to_lonlat(crs, east, north))
    size = np.array([exact[2] - exact[0], exact[3] - exact[1]] * 2)
    assert np.all(np.abs(np.array(found.box) - exact) <= 0.01 * size)


@pytest.mark.parametrize("reach", [50.0, 5_000.0, 200_000.0])
def test_count_outside_is_exact(reach: float) -> None:
    crs, (east, north) = CRS.from_epsg(25832), site((565_000, 5_933_000), reach)
    found = of_plan(crs, east, north, "", np.arange(N))
    lon, lat = to_lonlat(crs, east, north)
    areas = [
        (-180.0, -90.0, 180.0, 90.0),
        (6.0, 38.0, 12.0, 84.0),
        (100.0, 0.0, 110.0, 10.0),
        (170.0, -90.0, 5.0, 90.0),
    ]
    areas += [(lon.min(), lat.min(), lon.max(), lat.max()), (lon.min(), lat.min(), float(np.median(lon)), lat.max())]
    for area in areas:
        assert found.outside(area) == of_degrees(lon, lat, "", np.arange(N)).outside(area)
        assert found.outside(area) == (~in_area(area, lon, lat)).sum()


def test_usual_case_works_out_few(monkeypatch: pytest.MonkeyPatch) -> None:
    crs, (east, north) = CRS.from_epsg(25832), site((565_000, 5_933_000), 2_000.0)
    worked_out = []

    def counted(crs: object, east: np.ndarray, north: np.ndarray) -> tuple:
        worked_out.append(len(east))
        return to_lonlat(crs, east, north)

    monkeypatch.setattr(whereabouts, "to_lonlat", counted)
    found = of_plan(crs, east, north, "", np.arange(N))
    assert found.outside((6.0, 38.0, 12.0, 84.0)) == 0
    assert sum(worked_out) < N / 2
    assert found.outside((6.0, 38.0, 9.98, 84.0)) > 0
    assert sum(worked_out) > N


def test_position_that_is_none_is_still_named() -> None:
    crs, (east, north) = CRS.from_epsg(25832), site((565_000, 5_933_000), 50.0)
    east[N // 2] = np.nan
    assert of_plan(crs, east, north, "", np.arange(N)).outside((6.0, 38.0, 12.0, 84.0)) == 1


def test_many_points_are_put_where_few_are() -> None:
    crs, (east, north) = CRS.from_epsg(25832), site((565_000, 5_933_000), 2_000.0)
    target = CRS.from_epsg(25833)
    many = transform_points(make_points(east, north, np.zeros(N), crs=crs), target)
    few = transform_points(make_points(east[:100], north[:100], np.zeros(100), crs=crs), target)
    assert np.array_equal(many.points.easting[:100], few.points.easting)
    assert np.array_equal(many.points.northing[:100], few.points.northing)
    assert many.record.details.name == few.record.details.name
