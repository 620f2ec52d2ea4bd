"""Where a survey is said to be, and doubts of its CRS by what is known beside it."""

import numpy as np
import pytest
from pyproj import CRS, Geod, Transformer
from test_intake import log, plan_lines, write

from plugin.core.georeference.area import check_area
from plugin.core.georeference.axes import from_lonlat
from plugin.core.georeference.crs_doubt import doubts, project_doubt
from plugin.core.georeference.crs_said import said_in_lines
from plugin.core.georeference.intake import take_in
from plugin.core.georeference.intake_options import IntakeOptions
from plugin.core.georeference.position import Kind, Landmark, distance_text, place_said, site_of
from plugin.core.messages import worst_first
from plugin.core.points.pointset import make_points
from plugin.core.units import metres_per_unit

UTM32 = CRS.from_epsg(25832)

#: The CRS of the numbers, the one chosen, and a place: neighbouring zones, and systems that look alike.
WRONG = [
    (25832, 25833, 11.5, 50), (25833, 25832, 12.5, 51), (25831, 25832, 5.5, 50.5), (32632, 32633, 11, 45),
    (32633, 32634, 17.5, 49), (32617, 32618, -79, 43), (26910, 26911, -121, 45), (26917, 26918, -80, 35),
    (31467, 31468, 9.9, 48), (31468, 31467, 11, 49), (31466, 31467, 7, 51), (28355, 28356, 148, -35),
    (28354, 28355, 143, -37), (7855, 7856, 149, -33), (31982, 31983, -49, -22), (31983, 31984, -43, -20),
    (2277, 2278, -98, 30), (2276, 2277, -97, 32), (2225, 2226, -119, 37.5), (2227, 2226, -121, 38),
    (3943, 3944, 2, 43.5), (3945, 3946, 3, 45.5), (3947, 3948, 2.5, 47), (2154, 27572, 2.5, 47),
    (27700, 29903, -5, 54), (28992, 28991, 5.5, 52), (2180, 2177, 20, 51), (2177, 2178, 19.4, 50),
    (3879, 3880, 25.4, 61), (3067, 3879, 25, 62), (3006, 3011, 16, 60), (3007, 3008, 12.5, 58),
    (5514, 3857, 15, 50), (21781, 2056, 8, 47), (2056, 21781, 8, 47), (31370, 3812, 4.5, 50.5),
    (22234, 22235, 24, -30), (2193, 27200, 172, -43), (2443, 2444, 130, 33), (6677, 6676, 139.5, 36),
    (2053, 2054, 30, -26), (2048, 2049, 20, -33), (31256, 31255, 15.5, 47.5), (31254, 31255, 11.5, 47.2),
    (32643, 32644, 77, 20),
]  # fmt: skip


def numbers(code, lon, lat, seed=0, count=100):
    """Plan coordinates of a site of 200 m, in the unit of its CRS."""
    rng = np.random.default_rng(seed)
    crs = CRS.from_epsg(code)
    east, north = (values[0] for values in from_lonlat(crs, [lon], [lat]))
    return (rng.uniform(0, 200, (2, count)) + np.array([[east], [north]])) / metres_per_unit(crs)


def around(lon, lat, seed, kind):
    """A landmark near a place: a layer of some kilometres, or a log of the site itself."""
    rng = np.random.default_rng(seed)
    if kind is not Kind.LAYER:
        return Landmark("log", kind, lon, lat, lon + 0.003, lat + 0.002)
    size, (off_x, off_y) = rng.uniform(0.002, 0.05), rng.uniform(-0.02, 0.02, 2)
    return Landmark("parcels", kind, lon + off_x - size, lat + off_y - size, lon + off_x + size, lat + off_y + size)


@pytest.mark.parametrize("kind", [Kind.LAYER, Kind.FILE])
def test_45_wrong_systems_are_noticed_and_right_ones_are_not_doubted(kind):
    assert len(WRONG) == 45
    unnoticed, doubted, named = [], [], 0
    for i, (true, wrong, lon, lat) in enumerate(WRONG):
        mark = around(lon, lat, i, kind)
        crs = CRS.from_epsg(wrong)
        east, north = numbers(true, lon, lat) * metres_per_unit(crs)
        said = doubts(crs, east, north, [mark])
        outside = check_area(make_points(east, north, np.zeros(len(east)), crs=crs)).outside
        if not said and not outside.any():
            unnoticed.append((true, wrong))
        named += any("in the same" in str(one) or f"EPSG:{true}" in str(one) for one in said)
        right = CRS.from_epsg(true)
        if doubts(right, *numbers(true, lon, lat) * metres_per_unit(right), [mark]):
            doubted.append(true)
    assert len(unnoticed) <= 2, unnoticed
    assert len(doubted) <= 0.02 * len(WRONG), doubted
    assert named >= 25  # the right one by its name; others by the place of one that is as near


def test_a_layer_far_away_is_told_and_not_taken_for_a_doubt_below_50_km():
    east, north = numbers(25832, 9.2, 51.5)
    near = Landmark("parcels", Kind.LAYER, 9.5, 51.7, 9.6, 51.8)
    assert doubts(UTM32, east, north, [near]) == ()
    far = Landmark("parcels", Kind.LAYER, 9.5, 53.7, 9.6, 53.8)
    (said,) = doubts(UTM32, east, north, [far])
    assert "Check the CRS and the coordinates" in str(said)
    assert doubts(UTM32, east, north, [far, near]) == ()  # one layer near is enough


def test_the_place_is_told_with_bearing_and_distance_of_the_geodesic():
    """Against PROJ's geodesic on WGS 84 between the nearest points of two boxes."""
    east, north = (values[0] for values in from_lonlat(UTM32, [9.0], [51.0]))
    site = site_of(UTM32, np.array([east]), np.array([north]))
    mark = Landmark("mill", Kind.LAYER, 9.1, 51.1, 9.1, 51.1)
    (near,) = site.beside([mark])
    bearing, _, metres = Geod(ellps="WGS84").inv(9.0, 51.0, 9.1, 51.1)
    assert near.metres == pytest.approx(metres, abs=1.0)
    assert near.bearing == pytest.approx(bearing, abs=0.01)
    said = str(place_said(UTM32, [east], [north], [mark]))
    assert said == (
        "51.00000° N, 9.00000° E, in ETRS89 / UTM zone 32N (for: Europe between 6°E and 12°E); “mill” is "
        f"{distance_text(metres)} away at {bearing:.0f}°"
    )
    assert "it overlaps" in str(place_said(UTM32, [east], [north], [Landmark("x", Kind.LAYER, 8.9, 50.9, 9.1, 51.1)]))


def test_places_south_west_and_across_the_date_line():
    crs = CRS.from_epsg(3832)  # WGS 84 / PDC Mercator, about 150 degrees east
    east, north = from_lonlat(crs, [-179.9], [-16.5])
    said = str(place_said(crs, east, north, [Landmark("isle", Kind.LAYER, 179.9, -16.6, 179.95, -16.4)]))
    assert said.startswith("16.50000° S, 179.90000° W")
    assert "“isle” is 16.0 km away at 270°" in said
    assert str(place_said(None, east, north)).startswith("a local grid")
    assert "nowhere" in str(place_said(UTM32, [1e15], [1e15]))


def test_a_log_of_the_site_doubts_the_zone_of_a_table(tmp_path):
    table = write(tmp_path / "table.csv", plan_lines())
    walked = log(tmp_path / "walk.nmea")
    good = take_in([table, walked], IntakeOptions(crs=UTM32, heights_of="antenna"))
    assert not any("doubtful" in str(one) for one in good.messages)
    bad = take_in([table, walked], IntakeOptions(crs=CRS.from_epsg(25833), heights_of="antenna"))
    first = str(worst_first(bad.messages)[0])
    assert first.startswith("The CRS is doubtful")
    assert "walk.nmea" in first
    assert "EPSG:25832" in first


@pytest.mark.parametrize(
    ("comment", "code", "doubtful"),
    [
        ("# EPSG:25833", 25832, True), ("# EPSG:25832", 25832, False), ("# System UTM 33 N", 25832, True),
        ("# UTM zone 32", 25832, False), ("# exported by hand, job 33", 25832, False), ("# ETRS89_UTM33", 25832, True),
        ("# ETRS89_UTM32", 25832, False), ("UTM33 East,UTM33 North", 25832, True),
        ("East (UTM zone 32),x", 25832, False),
        ("# Datum: NAD27", 26917, True), ("# NAD 27 / UTM 17", 26717, False), ("East (ED50),North (ED50)", 25832, True),
        ("# ED50", 23032, False), ("# DHDN Gauss", 31467, False), ("# Pulkovo 1942", 2398, False),
        ("# OSGB36", 27700, False),
        ("E_UTM33N,N_UTM33N", 25832, True), ("MGA94 zone 55", 28355, False), ("MGA2020 zone 56", 7855, True),
        ("# EPSG: 4326 GNSS", 25832, False), ("# Gauss Kruger zone 4", 31467, True), ("# zone 3", 31467, False),
    ],
)  # fmt: skip
def test_a_file_that_names_another_system_is_told(comment, code, doubtful):
    assert bool(said_in_lines("a.csv", [comment], CRS.from_epsg(code))) == doubtful


def test_the_crs_of_the_project_is_a_hint_where_there_is_no_layer():
    east, north = numbers(25832, 9.0, 51.0)
    site = site_of(UTM32, east, north)
    assert project_doubt(site, UTM32) == ()
    assert project_doubt(site, CRS.from_epsg(25831)) != ()
    assert project_doubt(site, CRS.from_epsg(3857)) == ()
    assert project_doubt(site, CRS.from_epsg(4326)) == ()


#: Systems of other datums whose numbers lie some hundred metres off: the CRS of the numbers, the one chosen, a place.
LOOK_ALIKES = [
    (23032, 25832, 9.5, 51.5), (25832, 23032, 9.5, 51.5), (23030, 25830, -3.7, 40.4), (23031, 25831, 2.3, 41.5),
    (26717, 26917, -81.0, 41.0), (26917, 26717, -81.0, 41.0), (26710, 26910, -122.5, 45.5),
    (32632, 23032, 10.0, 53.0), (23029, 25829, -8.0, 42.5), (31467, 2398, 9.5, 51.0), (21037, 32737, 38.0, -1.0),
    (29193, 31983, -45.0, -22.0), (24879, 32719, -70.0, -12.0), (28192, 32636, 35.2, 32.0),
]  # fmt: skip


@pytest.mark.parametrize("kind", [Kind.LAYER, Kind.FILE])
def test_look_alikes_of_other_datums_are_noticed_by_what_is_as_large_as_the_site(kind):
    unnoticed, doubted = [], []
    cases = [one for one in LOOK_ALIKES if one[1]]
    for true, wrong, lon, lat in cases:
        mark = Landmark("log", kind, lon, lat, lon + 0.0028, lat + 0.0019)
        right, chosen = CRS.from_epsg(true), CRS.from_epsg(wrong)
        datum = Transformer.from_crs(right, 4326, always_xy=True)
        east, north = numbers(true, lon, lat)
        box = [float(edge(values)) for edge in (np.min, np.max) for values in datum.transform(east, north)]
        mark = Landmark("log", kind, *box)
        there = Transformer.from_crs(chosen, 4326, always_xy=True).transform(east, north)
        apart = np.hypot(*np.subtract(np.mean(there, axis=1), np.mean(datum.transform(east, north), axis=1)))
        if not doubts(chosen, east, north, [mark]) and apart > 5e-4:
            unnoticed.append((true, wrong))
        if doubts(right, east, north, [mark]):
            doubted.append(true)
    assert not unnoticed
    assert not doubted


@pytest.mark.parametrize("seed", range(30))
def test_parts_of_a_site_beside_each_other_are_not_doubted(seed):
    rng = np.random.default_rng(seed)
    east, north = numbers(25832, 9.2, 51.5, seed)
    off = rng.uniform(-0.006, 0.006, 2)
    mark = Landmark("log", Kind.FILE, 9.2 + off[0], 51.5 + off[1], 9.203 + off[0], 51.502 + off[1])
    assert doubts(UTM32, east, north, [mark]) == ()
