"""Points outside the area of use of their CRS, and the cause that is named."""

import numpy as np
import pytest
from pyproj import CRS, proj_version_str

from plugin.core.georeference.area import check_area
from plugin.core.georeference.area_causes import QUICK_PROJ, Cause
from plugin.core.georeference.axes import from_lonlat, to_lonlat
from plugin.core.georeference.correction import apply_suggestion
from plugin.core.points.pointset import make_points
from plugin.core.units import LengthUnit


def walk(code, lon, lat, crs=None, n=30):
    """Points of a walk of some 100 m at a place, in ``code``, labelled ``crs``."""
    east, north = from_lonlat(CRS.from_user_input(code), [lon], [lat])
    steps = np.arange(n) * 3.0
    return labelled(east[0] + steps, north[0] + 0.6 * steps, crs or code)


def labelled(easting, northing, crs):
    n = len(easting)
    return make_points(
        easting, northing, np.full(n, 100.0), crs=CRS.from_user_input(crs), source="s.csv", source_line=np.arange(n) + 2
    )


HOMES = [
    (25832, 11.0, 48.0), (31467, 9.0, 49.0), (4647, 9.0, 53.0), (2154, 2.5, 47.0), (27700, -1.0, 52.0),
    (2277, -97.5, 30.5), (28355, 147.0, -35.0), (2193, 172.0, -43.0), (31983, -45.0, -20.0), (2053, 28.3, -25.7),
    (3460, 179.99, -17.5), (32721, -58.0, -35.0), (3032, 120.0, -75.0), ("EPSG:25832+7837", 11.0, 48.0),
]  # fmt: skip


@pytest.mark.parametrize(("code", "lon", "lat"), HOMES)
def test_points_at_home_raise_no_doubt(code, lon, lat):
    check = check_area(walk(code, lon, lat))
    assert not check.outside.any()
    assert check.messages == ()
    assert check.suggestions == ()
    assert check.area_name


def swapped(points):
    return labelled(points.northing, points.easting, points.crs)


#: name: points, the cause to be named first.
FAULTS = {
    "swap north": (swapped(walk(25832, 11, 48)), (Cause.SWAPPED,)),
    "swap south": (swapped(walk(28355, 147, -35)), (Cause.SWAPPED,)),
    "swap feet": (swapped(walk(2277, -97.5, 30.5)), (Cause.SWAPPED,)),
    "zone gk": (walk(31467, 9, 49, crs=31468), (Cause.ZONE,)),
    "zone state plane": (walk(2277, -97.5, 30.5, crs=2276), (Cause.ZONE,)),
    "hemisphere crs": (walk(31978, -75, -20, crs=31972), (Cause.HEMISPHERE,)),
    "border": (walk(25832, 12.4, 48), (Cause.BEYOND_BORDER,)),
    "swap and zone": (swapped(walk(31467, 9, 49, crs=31468)), (Cause.SWAPPED, Cause.ZONE)),
}


@pytest.mark.parametrize("fault", FAULTS)
def test_the_likely_cause_is_named_first(fault):
    points, causes = FAULTS[fault]
    check = check_area(points)
    assert check.outside.all()
    assert check.suggestions[0].causes == causes
    assert check.suggestions[0].share == 1.0
    assert check.messages[0].values["count"] == len(points)
    assert check.messages[0].values["line"] == 2
    assert str(check.messages[1]).startswith("Likely cause: ")


def shifted(points, east=0.0, north=0.0, factor=1.0, crs=None):
    return labelled(points.easting * factor + east, points.northing * factor + north, crs or points.crs)


#: name: faulty points, true points, cause.
MENDABLE = {
    "swap": (swapped(walk(25832, 11, 48)), walk(25832, 11, 48), Cause.SWAPPED),
    "feet as metres": (shifted(walk(25832, 11, 48), factor=1 / 0.3048), walk(25832, 11, 48), Cause.UNIT),
    "metres as feet": (shifted(walk(2193, 172, -43), factor=0.3048), walk(2193, 172, -43), None),
    "zone number added": (shifted(walk(25832, 11, 48), east=32e6), walk(25832, 11, 48), Cause.PREFIX),
    "zone number missing": (shifted(walk(4647, 9, 53), east=-32e6), walk(4647, 9, 53), Cause.PREFIX),
    "zone number missing, gk": (shifted(walk(31467, 9, 49), east=-3e6), walk(31467, 9, 49), Cause.PREFIX),
    "other zone number": (
        shifted(walk(25833, 15, 51), east=33e6, crs=25832), walk(25833, 15, 51), None,
    ),
    "no false northing": (shifted(walk(31983, -45, -20), north=-1e7), walk(31983, -45, -20), Cause.HEMISPHERE),
    "false northing too much": (shifted(walk(25832, 11, 48), north=1e7), walk(25832, 11, 48), Cause.HEMISPHERE),
    "no false origin": (shifted(walk(2193, 172, -43), -1.6e6, -1e7), walk(2193, 172, -43), Cause.FALSE_ORIGIN),
}  # fmt: skip


@pytest.mark.parametrize("fault", MENDABLE)
def test_a_suggestion_mends_the_points_when_it_is_applied(fault):
    points, true, cause = MENDABLE[fault]
    unit = LengthUnit.FOOT if fault == "metres as feet" else None
    check = check_area(points, unit)
    first = check.suggestions[0]
    assert cause is None or first.causes == (cause,)
    before = points.easting.copy()
    done, records = apply_suggestion(points, np.ones(len(points), bool), first)
    # On the Earth: one zone can be written with and without its number.
    places = to_lonlat(done.crs, done.easting, done.northing)
    np.testing.assert_allclose(places, to_lonlat(true.crs, true.easting, true.northing), rtol=0, atol=1e-9)
    assert cause is None or done.crs == true.crs
    assert not check_area(done).outside.any()
    np.testing.assert_array_equal(points.easting, before)
    assert records[0].statements[0].text.code == "area.relabelled"


def test_the_vertical_part_stays_when_the_zone_is_changed():
    points = walk(31467, 9, 49, crs="EPSG:31468+7837")
    done, _ = apply_suggestion(points, np.ones(len(points), bool), check_area(points).suggestions[0])
    assert done.crs.sub_crs_list == [CRS(31467), CRS(7837)]


def test_both_feet_are_named_as_they_cannot_be_told_apart():
    check = check_area(MENDABLE["feet as metres"][0])
    assert [one.messages[0].values["unit"] for one in check.suggestions[:2]] == ["ft", "ftUS"]


@pytest.mark.parametrize(("east", "north"), [(11.0, 48.0), (48.0, 11.0)])
def test_degrees_are_recognised(east, north):
    steps = np.arange(20) * 1e-5
    first = check_area(labelled(east + steps, north + steps, 25832)).suggestions[0]
    assert first.causes == (Cause.DEGREES,)
    assert first.messages[0].text.code == ("area.degrees" if east < north else "area.degrees_swapped")
    with pytest.raises(ValueError, match="asks for reading"):
        apply_suggestion(labelled(east + steps, north + steps, 25832), np.ones(30, bool), first)


@pytest.mark.skipif(int(proj_version_str.split(".")[0]) < QUICK_PROJ, reason="not looked for with this PROJ")
def test_another_system_of_the_country_is_found():
    check = check_area(walk(31467, 9, 49, crs=25832))
    assert {one.causes for one in check.suggestions} == {(Cause.OTHER_SYSTEM,)}
    assert CRS(31467).name in [one.crs.name for one in check.suggestions]


def test_only_the_points_outside_are_counted_and_judged():
    home, away = walk(25832, 11, 48), swapped(walk(25832, 11, 48, n=5))
    both = labelled(np.concatenate((home.easting, away.easting)), np.concatenate((home.northing, away.northing)), 25832)
    check = check_area(both)
    assert np.flatnonzero(check.outside).tolist() == list(range(30, 35))
    assert check.suggestions[0].causes == (Cause.SWAPPED,)
    assert check.messages[0].values["line"] == 32


def test_coordinates_nowhere_on_the_earth_and_not_finite():
    for value in (1e12, np.nan, np.inf, -1e300):
        check = check_area(labelled(np.full(4, value), np.full(4, 5.3e6), 25832))
        assert check.outside.all()
        assert check.messages[0].text.code == "area.nowhere"
        assert check.messages[1].text.code == "area.no_cause"


def test_the_distance_outside_is_stated():
    check = check_area(walk(25832, CRS(25832).area_of_use.east + 0.5, 48, n=1))
    assert check.farthest_km == pytest.approx(0.5 * 111.32 * np.cos(np.radians(48)), rel=0.01)


def test_a_local_grid_and_a_crs_without_area():
    assert check_area(make_points([0.0], [0.0], [0.0])).messages == ()
    custom = CRS("+proj=tmerc +lon_0=9 +ellps=GRS80 +units=m")
    assert check_area(labelled([0.0], [5e6], custom)).messages[0].text.code == "area.unknown"


def test_a_million_points_at_home_are_checked_at_once():
    from time import process_time

    n = 1_000_000
    points = make_points(np.linspace(6.4e5, 6.5e5, n), np.linspace(5.31e6, 5.32e6, n), np.zeros(n), crs=CRS(25832))
    start = process_time()
    assert not check_area(points).outside.any()
    assert process_time() - start < 1.0
