"""Named inlets, rows of catchments, polygons, overflow and the study of a whole site, on ground of known shape."""

import json
import math

import numpy as np
import pytest
from shapely.geometry import Point, Polygon
from shapely.ops import unary_union
from test_drainage_ponds import basins

from plugin.core.contours.geojson import LOCAL_GRID
from plugin.core.drainage.analysis import analyse, compare
from plugin.core.drainage.catchments import Outlet, find_catchments
from plugin.core.drainage.destinations import destination_polygons
from plugin.core.drainage.fates import find_fates
from plugin.core.drainage.flow import build_flow
from plugin.core.drainage.inlet_list import Inlet, in_stretches, inlets_on, read_inlets
from plugin.core.drainage.network import drained_areas, rim_outlets
from plugin.core.drainage.ponds import PondOptions, find_ponds
from plugin.core.drainage.rings import inside, polygons_of, ring_area
from plugin.core.drainage.spills import spill_paths
from plugin.core.drainage.study import Hollows, Rain, WaterOptions, study_water, suiting_spacing
from plugin.core.georeference.crs import read_crs
from plugin.core.messages import SurveyError
from plugin.core.surface.tin import GRID
from tests.core.drainage_grounds import cone, gridded, gutter, plane, shuffled, valley
from tests.core.surfaces import delaunay_tin

SIDE = np.arange(0.0, 21.0)


def ring(*places):
    return np.array([*places, places[0]], float)


SQUARE = ring((0, 0), (10, 0), (10, 10), (0, 10))


# Rings


def test_holes_go_into_the_smallest_ring_around_them():
    hole = ring((2, 2), (2, 8), (8, 8), (8, 2))
    island = ring((3, 3), (7, 3), (7, 7), (3, 7))
    pool = ring((4, 4), (4, 6), (6, 6), (6, 4))
    away = ring((20, 0), (25, 0), (25, 5), (20, 5))
    polygons = polygons_of([pool, away, hole, island, SQUARE])
    assert [[ring_area(r) for r in polygon] for polygon in polygons] == [[100, -36], [25], [16, -4]]
    total = unary_union([Polygon(p[0], p[1:]) for p in polygons]).area
    assert total == 100 - 36 + 25 + 16 - 4


def test_a_hole_that_touches_its_ring_at_a_corner():
    hole = ring((0, 0), (2, 5), (5, 2))
    hole = hole if ring_area(hole) < 0 else hole[::-1]
    (polygon,) = polygons_of([hole, SQUARE])
    assert len(polygon) == 2


def test_inside_agrees_with_shapely():
    rng = np.random.default_rng(3)
    turn = np.sort(rng.uniform(0, 2 * np.pi, 60))
    star = np.column_stack([np.cos(turn), np.sin(turn)]) * rng.uniform(1, 5, 60)[:, None]
    places = rng.uniform(-5, 5, (500, 2))
    theirs = [Polygon(star).contains(Point(place)) for place in places]
    np.testing.assert_array_equal(inside(places, [star]), theirs)


# Inlets from files


def written(path, text):
    path.write_text(text, encoding="utf-8")
    return path


def test_inlets_from_a_table(tmp_path):
    file = written(tmp_path / "inlets.csv", "# gullies\nname;Easting;Northing;runoff\nG1;10,5;20;0,8\n;30;40;\n")
    first, second = read_inlets(file)
    assert (first.name, first.runoff, first.line) == ("G1", 0.8, 3)
    np.testing.assert_array_equal(first.parts[0], [[10.5, 20.0]])
    assert second.name == "2"
    assert math.isnan(second.runoff)


def test_inlets_in_feet(tmp_path):
    file = written(tmp_path / "inlets.csv", "name,easting,northing\nG1,3937,0\n")
    (inlet,) = read_inlets(file, read_crs("EPSG:2263"))
    assert inlet.parts[0][0, 0] == pytest.approx(1200)


def geojson(features, crs="urn:ogc:def:crs:EPSG::25832"):
    rows = [
        {"type": "Feature", "properties": properties, "geometry": {"type": kind, "coordinates": places}}
        for kind, places, properties in features
    ]
    head = {"type": "FeatureCollection", "features": rows}
    if crs:
        head["crs"] = {"type": "name", "properties": {"name": crs}}
    return json.dumps(head)


def test_inlets_from_geojson(tmp_path):
    features = [
        ("Point", [1, 2, 3], {"name": "G", "runoff": 0.5}),
        ("LineString", [[0, 0], [5, 0]], {}),
        ("MultiPoint", [[7, 7], [8, 8]], None),
    ]
    file = written(tmp_path / "inlets.geojson", geojson(features))
    one, line, two = read_inlets(file, read_crs("EPSG:25832"))
    assert (one.name, one.runoff) == ("G", 0.5)
    assert [len(part) for part in line.parts] == [2]
    assert line.name == "2"
    assert [len(part) for part in two.parts] == [1, 1]


@pytest.mark.parametrize("crs", [LOCAL_GRID, None])
def test_inlets_on_a_local_grid(tmp_path, crs):
    file = written(tmp_path / "inlets.geojson", geojson([("Point", [1, 2], {})], crs))
    (inlet,) = read_inlets(file)
    np.testing.assert_array_equal(inlet.parts[0], [[1, 2]])
    with pytest.raises(SurveyError, match="local"):
        read_inlets(written(tmp_path / "other.geojson", geojson([("Point", [1, 2], {})])))


BAD_FILES = [
    ("inlets.csv", "name,east\nG,1\n", "easting"),
    ("inlets.csv", "name,easting,northing\nG,1,two\n", "line 2.*'two'"),
    ("inlets.csv", "name,easting,northing\n", "no inlet"),
    ("inlets.csv", "", "no inlet"),
    ("inlets.csv", "name,easting,northing,runoff\nG,1,2,1.5\n", "1.5"),
    ("inlets.geojson", "{", "no GeoJSON"),
    ("inlets.geojson", '{"type": "FeatureCollection"}', "WGS 84"),
    ("inlets.geojson", geojson([("Polygon", [[[0, 0], [1, 0], [0, 1], [0, 0]]], {})]), "Polygon"),
    ("inlets.geojson", geojson([("Point", [1, 2], {})], "urn:ogc:def:crs:EPSG::25833"), "zone 33N"),
    ("inlets.geojson", geojson([("Point", [9, 51], {})], None), "WGS 84"),
    ("inlets.geojson", geojson([("Point", ["a", 2], {})]), "no GeoJSON"),
]


@pytest.mark.parametrize(("name", "text", "words"), BAD_FILES)
def test_bad_inlet_files_are_refused(tmp_path, name, text, words):
    with pytest.raises(SurveyError, match=words) as raised:
        read_inlets(written(tmp_path / name, text), read_crs("EPSG:25832"))
    assert str(tmp_path / name) in str(raised.value)


def test_a_file_that_is_not_there(tmp_path):
    for name in ("none.csv", "none.geojson"):
        with pytest.raises(SurveyError, match="cannot be read"):
            read_inlets(tmp_path / name)


# Inlets on a surface


def test_inlets_take_triangles_points_before_lines():
    tin = gridded(lambda x, y: 0.1 * x, SIDE, SIDE)
    line = Inlet("line", (np.array([[5.5, 2.0], [5.5, 18.0]]) + tin.origin,))
    point = Inlet("point", (np.array([[5.3, 10.5]]) + tin.origin,))
    taken, said = inlets_on(tin, [line, point, Inlet("away", (np.array([[99.0, 99.0]]),))], 0.0)
    middle = tin.corners()[:, :, :2].mean(axis=1)
    assert set(np.floor(middle[taken == 0, 0]).astype(int)) == {5}
    assert {tuple(np.floor(m).astype(int)) for m in middle[taken == 1]} == {(5, 10)}
    assert [str(m).split(": ")[1] for m in said] == ["away."]


def test_stretches_of_a_line():
    line = Inlet("drain", (np.array([[0.0, 0.0], [10.0, 0.0], [10.0, 15.0]]),), 0.7)
    parts = in_stretches([line], 10.0)
    assert [part.name for part in parts] == ["drain 0 m", "drain 10 m", "drain 20 m"]
    length = [np.hypot(*np.diff(part.parts[0], axis=0).T).sum() for part in parts]
    assert length == pytest.approx([5, 10, 10])
    np.testing.assert_allclose(parts[1].parts[0], [[5, 0], [10, 0], [10, 5]])
    assert {part.runoff for part in parts} == {0.7}


# Rows of catchments


def study(tin, inlets=(), **options):
    return study_water(tin, inlets, WaterOptions(**{"ponds": PondOptions(), "min_outlet": 0.0, **options}))


@pytest.mark.parametrize("hollows", list(Hollows))
def test_rows_are_the_whole_site(hollows):
    tin = gridded(basins, SIDE, SIDE)
    found = study(tin, hollows=hollows, min_outlet=5.0)
    assert found.shares.area.sum() == pytest.approx(tin.plan_area, rel=1e-14)
    shapes = [unary_union([Polygon(p[0], p[1:]) for p in parts]) for parts in found.shares.polygons()]
    assert all(shape.is_valid for shape in shapes)
    np.testing.assert_allclose([shape.area for shape in shapes], found.shares.area, atol=1e-6)
    assert unary_union(shapes).area == pytest.approx(tin.plan_area, abs=1e-6)
    assert len(set(found.shares.name)) == len(found.shares)


def test_neighbours_have_different_colours():
    found = study(gutter(3, fall=0.002), ponds=PondOptions(0.01), hollows=Hollows.PITS_KEEP)
    colours, parts = found.shares.colours(), found.shares.polygons()
    shapes = [unary_union([Polygon(p[0], p[1:]).buffer(1e-6) for p in each]) for each in parts]
    rest = found.shares.outlet == Outlet.RIM
    assert len(shapes) > 10
    assert np.all((colours < 0) == rest)
    for i in range(len(shapes)):
        for k in range(i):
            if colours[i] == colours[k]:
                assert shapes[i].intersection(shapes[k]).length < 1e-3


def test_what_is_held_until_ponds_are_full():
    tin = gridded(basins, SIDE, SIDE)
    keeps, full = study(tin), study(tin, hollows=Hollows.ALL_FULL)
    own = keeps.shares.outlet == Outlet.POND
    assert keeps.nowhere == pytest.approx(keeps.shares.area[own].sum())
    assert full.nowhere == pytest.approx(keeps.nowhere)
    assert not np.any(full.shares.outlet == Outlet.POND)
    assert np.all(full.shares.nowhere <= full.shares.area + 1e-9)


def test_small_outlets_are_counted_together():
    tin = gutter(1)
    every, few = study(tin, ponds=PondOptions(0.01)), study(tin, ponds=PondOptions(0.01), min_outlet=200.0)
    assert few.shares.merged > 0
    assert len(few.shares) < len(every.shares)
    named = few.shares.outlet == Outlet.RIM_VERTEX
    assert np.all(few.shares.area[named] >= 200)
    assert few.shares.area.sum() == pytest.approx(tin.plan_area, rel=1e-13)


@pytest.mark.parametrize("bed_at_rim", [True, False])
def test_a_channel_that_crosses_the_rim_is_an_outlet(bed_at_rim):
    """Down a valley whose bed ends just inside the rim, the last vertex of the bed stands for the outlet."""
    rng = np.random.default_rng(6)
    side = rng.uniform((0, 0.5), (4.7, 10), (300, 2))
    bed = np.column_stack([np.full(100, 5.0), np.linspace(0.1, 10, 100)])
    corners = np.array([[0, 0], [10, 0], [10, 10], [0, 10.0]])
    parts = [side, [10.0, 0.0] + side * [-1, 1], bed, corners, *([[[5.0, 0.0]]] if bed_at_rim else [])]
    xy = np.rint(np.concatenate(parts) / GRID) * GRID
    banks = np.clip(xy[:, 1] / 2, 0, 1)  # they end at the rim, which is level
    tin = delaunay_tin(xy, np.abs(xy[:, 0] - 5) / 2 * banks + 0.1 * xy[:, 1])
    found = study(tin, min_outlet=20.0)
    (row,) = np.flatnonzero(found.shares.outlet == Outlet.RIM_VERTEX)
    assert found.shares.area[row] > 0.5 * tin.plan_area
    np.testing.assert_allclose(found.shares.xyz[row, :2] - tin.origin, [5.0, 0.0 if bed_at_rim else 0.1], atol=1e-3)
    assert found.shares.area.sum() == pytest.approx(tin.plan_area, rel=1e-13)


def test_stops_divide_what_drained_through_them():
    """Where water stops at a vertex, its catchment is the ground that drains through it."""
    tin = gutter(2)
    flow = build_flow(tin)
    ponds = find_ponds(flow, PondOptions(0.01))
    stops = rim_outlets(flow, 20.0, ponds)
    assert stops.any()
    through = drained_areas(flow, ponds).area
    catchments = find_catchments(find_fates(flow, stops=stops), ponds)
    for i in np.flatnonzero(catchments.outlet == Outlet.RIM_VERTEX):
        vertex = catchments.number[i]
        if stops[vertex]:
            assert catchments.area[i] == pytest.approx(through[vertex], rel=1e-9)
    assert catchments.area.sum() == pytest.approx(tin.plan_area, rel=1e-13)


def test_the_order_of_points_does_not_matter():
    tin = gutter(4)
    one, other = (study(t, ponds=PondOptions(0.01), min_outlet=50.0) for t in (tin, shuffled(tin, 5)[0]))
    np.testing.assert_allclose(one.shares.area, other.shares.area, rtol=1e-9)
    assert one.shares.name == other.shares.name
    np.testing.assert_array_equal(one.shares.colours(), other.shares.colours())


# Overflow


def test_overflow_runs_down_to_the_next_pond_or_the_rim():
    tin = gridded(basins, SIDE, SIDE)
    flow = build_flow(tin)
    ponds = find_ponds(flow)
    lines = spill_paths(flow, ponds)
    assert len(lines) == len(ponds) > 1
    for i, line in enumerate(lines):
        np.testing.assert_allclose(line[0, :2], ponds.spill_xyz[i, :2] + tin.origin)
        if ponds.spills_to[i] >= 0:
            np.testing.assert_allclose(line[-1, 2], ponds.pit_xyz[ponds.spills_to[i], 2], atol=1e-9)
        assert line[-1, 2] <= line[0, 2] + 1e-12


def test_a_pond_whose_brim_is_the_rim_has_its_spill_point_only():
    flow = build_flow(cone(-4.0))
    (line,) = spill_paths(flow, find_ponds(flow))
    assert len(line) <= 2
    assert line[0, 2] == 0


# Peak flows


def test_peaks_by_inlet_for_all_and_not_for_the_rim():
    tin = plane(count=400)
    place = tin.vertices[:, :2].mean(axis=0) + tin.origin
    inlet = Inlet("own", (place[None],), 0.9)
    found = study(tin, [inlet], rain=Rain(36.0, 0.3), min_outlet=1e9)
    rows = dict(zip(found.shares.name, range(len(found.shares))))
    own = rows["own"]
    assert found.peaks.flow[own] == pytest.approx(0.9 * found.shares.area[own] / 100)  # 36 mm/h is 1 l/s a 100 m²
    assert math.isnan(found.peaks.flow[rows[""]])
    assert any("indication" in str(m) for m in found.messages)
    alone = study(tin, [Inlet("bare", (place[None],))], rain=Rain(36.0), min_outlet=1e9)
    assert any("bare" in str(m) for m in alone.messages)
    assert study(tin).peaks is None


def test_wrong_options_are_refused():
    for options in ({"reach": -1.0}, {"channel": math.nan}, {"min_outlet": math.inf}):
        with pytest.raises(SurveyError, match=next(iter(options))):
            study(plane(count=50), **options)


@pytest.mark.parametrize(("side", "step"), [(100.0, 5.0), (1000.0, 50.0), (14.9, 0.5), (15.0, 1.0)])
def test_spacing_suits_the_site(side, step):
    assert suiting_spacing(gridded(lambda x, y: x, np.array([0, side]), np.array([0, side]))) == pytest.approx(step)


# What a change does


def test_destinations_cover_the_site():
    tin = valley(0.1)
    polygons = destination_polygons(analyse(tin).catchments)
    assert set(polygons) == {(Outlet.RIM, -1)}
    total = sum(ring_area(r) for polygon in polygons[Outlet.RIM, -1] for r in polygon)
    assert total == pytest.approx(tin.plan_area, rel=1e-9)


def test_a_design_of_a_part_compares_what_both_cover():
    """The design covers the west with one of two hollows, which it fills."""

    def holes(x, y):
        return 0.1 * y - 1.5 * ((abs(x - 5) < 1) & (abs(y - 12) < 1)) - 1.5 * ((abs(x - 15) < 1) & (abs(y - 12) < 1))

    ground = gridded(holes, SIDE, SIDE)
    design = gridded(lambda x, y: 0.1 * y, SIDE[:11], SIDE)
    change = compare(analyse(ground), analyse(design), 1.0)
    assert [pond.word for pond in change.ponds] == ["gone"]
    assert change.elsewhere == 1
    assert change.standing_before == pytest.approx(-change.ponds[0].volume)
    assert change.standing_after == 0
