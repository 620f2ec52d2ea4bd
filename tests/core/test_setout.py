"""Points to set out: places, names, heights, doubt, and the table for the data collector."""

from __future__ import annotations

import csv
from dataclasses import replace

import numpy as np
import pytest
from pyproj import CRS
from shapely.geometry import Point, Polygon

from plugin.core.alignment.line import make_alignment
from plugin.core.georeference.control import ControlPoints
from plugin.core.handover.setout import (
    along,
    corners,
    grid_places,
    make_setout,
    numbered,
    offset_names,
    offset_places,
    with_design,
    with_ground,
)
from plugin.core.handover.setout_table import (
    COLUMNS,
    TableForm,
    parse_columns,
    write_notes,
    write_setout,
)
from plugin.core.messages import SurveyError
from plugin.core.units import WORKING_UNITS, LengthUnit
from tests.core.surfaces import ORIGIN, delaunay_tin, random_tin


def points(*names, crs=None):
    xy = np.array([[10.0 * i, 5.0] for i in range(len(names))])
    return make_setout(xy, names, crs=crs)


# Names


@pytest.mark.parametrize(
    ("names", "code"),
    [
        (["a", "b", "a"], "setout.twice"),
        (["A", "a"], "setout.twice"),
        (["a  b", " a b "], "setout.twice"),
        (["a", " "], "setout.no_name"),
        ([], "setout.no_points"),
    ],
)
def test_names_that_would_be_mixed_up_are_refused(names, code):
    with pytest.raises(SurveyError) as caught:
        points(*names)
    assert caught.value.code == code


def test_numbers_sort_as_they_count():
    names = numbered("A", 120)
    assert names[0] == "A001"
    assert names == sorted(names)
    assert len(set(names)) == 120


# Places


def test_corners_are_each_set_out_once():
    square = np.array([[0, 0, 1], [10, 0, 2], [10, 10, 3], [0, 10, 4], [0, 0, 1.0]])
    beside = square + np.array([10, 0, 0])
    found = corners([square, beside])
    assert found.tolist() == [[0, 0, 1], [10, 0, 2], [10, 10, 3], [0, 10, 4], [20, 0, 2], [20, 10, 3]]
    assert len(corners([])) == 0


@pytest.mark.parametrize("bearing", [0.0, 30.0, 90.0, -12.5])
def test_a_grid_fills_the_polygon(bearing):
    shell = np.array([[500000, 5700000], [500080, 5700011], [500070, 5700093], [500010, 5700070.0]])
    hole = np.array([[500030, 5700030], [500045, 5700030], [500045, 5700050], [500030, 5700050.0]])
    found = grid_places([shell, hole], 5.0, bearing)
    ground = Polygon(shell, [hole])
    assert all(ground.buffer(1e-6).contains(Point(*place)) for place in found)
    assert len(found) == pytest.approx(ground.area / 25, rel=0.1)
    # neighbours in a row are 5 m apart in the direction of the grid's east
    angle = np.radians(bearing)
    east, north = np.array([np.cos(angle), -np.sin(angle)]), np.array([np.sin(angle), np.cos(angle)])
    column = found @ east / 5
    np.testing.assert_allclose(column, np.rint(column), atol=1e-6)
    rows = np.rint(found @ north / 5)
    assert (np.diff(rows) >= 0).all(), "row by row from the south of the grid"
    if bearing == 0.0:
        assert (found % 5 == 0).all(), "whole multiples, exactly"


@pytest.mark.parametrize("spacing", [0.0, -1.0, np.nan, np.inf, 0.0001])
def test_a_grid_that_cannot_be_is_refused(spacing):
    with pytest.raises(SurveyError):
        grid_places([np.array([[0, 0], [100, 0], [100, 100], [0, 100.0]])], spacing)


def test_a_grid_too_wide_has_no_points():
    assert len(grid_places([np.array([[1, 1], [4, 1], [4, 4.0]])], 10.0)) == 0


@pytest.mark.parametrize("unit", [LengthUnit.METRE, LengthUnit.FOOT])
def test_offsets_along_a_line(unit):
    line = make_alignment(np.array([[0, 0], [0, 30], [40, 30.0]]), "x", 100.0, (), unit)
    rows = offset_places(line, 20.0, [-3.0, 0.0, 3.0])
    step = 20.0 * unit.metres
    expected = sorted({*np.arange(0, 70.0001, step).round(6), 0.0, 30.0, 70.0})
    np.testing.assert_allclose(rows.distance[::3], expected, atol=1e-4)
    left = rows.xy[(rows.offset < 0) & (rows.distance < 29)]
    np.testing.assert_allclose(left[:, 0], -3.0)
    names = offset_names(line, rows)
    assert len(set(names)) == len(names)
    if unit is LengthUnit.METRE:
        assert names[:3] == ["0+100.00L3.00", "0+100.00C", "0+100.00R3.00"]
    setout = along(make_setout(rows.xy, names), line.numbering.stations(rows.distance), rows.offset)
    assert setout.station[0] == 100.0
    without = offset_places(line, 20.0, [0.0], with_vertices=False)
    assert not np.isclose(without.distance, 30.0).any()


# Heights


def plane_tin(slope_east=0.1, offset=0.0):
    xy = np.array([(x, y) for x in (0.0, 10.0, 20.0) for y in (0.0, 10.0, 20.0)])
    return delaunay_tin(xy, 100.0 + slope_east * xy[:, 0] + offset)


def test_cut_and_fill_between_two_planes():
    ground, design = plane_tin(), plane_tin(0.0, 1.0)
    xy = np.array([[2.0, 3.0], [15.0, 8.0], [100.0, 0.0]]) + ORIGIN
    setout = with_ground(with_design(make_setout(xy, "abc"), design), ground, 0.015)
    np.testing.assert_allclose(setout.cut_fill, [1 - 0.2, 1 - 1.5, np.nan], atol=1e-9)
    assert [note.text.code for note in setout.messages] == ["setout.off_design", "setout.off_ground"]
    assert setout.messages[0].values["count"] == 1


def test_heights_given_win_over_the_design():
    setout = make_setout(np.array([[5, 5], [6, 6.0]]) + ORIGIN, "ab", np.array([99.0, np.nan]))
    assert with_design(setout, plane_tin()).design.tolist() == pytest.approx([99.0, 100.6])


def test_the_doubt_is_that_of_the_law_of_propagation():
    """At a vertex the whole noise, at a triangle's centroid a third of the variance (JCGM 100:2008, 5.1.2); besides the
    plan's doubt times the slope."""
    ground = delaunay_tin([(0, 0), (30, 0), (0, 30)], [100.0, 103.0, 100.0])
    xy = np.array([[0.0, 0.0], [10.0, 10.0]]) + ORIGIN
    setout = with_ground(make_setout(xy, "ab"), ground, 0.015)
    np.testing.assert_allclose(setout.sigma, [0.015, 0.015 / np.sqrt(3)], rtol=1e-9)
    setout = with_ground(make_setout(xy, "ab"), ground, 0.015, 0.02)
    np.testing.assert_allclose(setout.sigma[0], np.hypot(0.015, 0.02 * 0.1), rtol=1e-9)


def test_the_doubt_against_trials():
    """Noise drawn for the vertices spreads cut and fill as said."""
    ground = random_tin(60, 3, side=40)
    rng = np.random.default_rng(8)
    xy = rng.uniform(8, 32, (5, 2)) + ORIGIN
    setout = with_ground(make_setout(xy, "abcde"), ground, 0.02)
    trials = []
    for _ in range(4000):
        noisy = replace(
            ground, vertices=ground.vertices + np.column_stack([*np.zeros((2, 60)), rng.normal(0, 0.02, 60)])
        )
        trials.append(with_ground(make_setout(xy, "abcde"), noisy, 0.02).ground)
    np.testing.assert_allclose(np.std(trials, axis=0), setout.sigma, rtol=0.06)


# The table


CONTROL = ControlPoints(
    np.array(["CP1", "CP2"], object), np.array([0.3048, 2.0]), np.array([3.0, 4.0]), np.array([5.0, np.nan]),
    np.array([2, 3]), "control.csv",
)  # fmt: skip


def rows_of(path, delimiter=","):
    lines = [line for line in path.read_text(encoding="utf-8").splitlines() if not line.startswith("#")]
    return list(csv.reader(lines, delimiter=delimiter))


def test_the_table_has_the_columns_asked_for_and_the_control(tmp_path):
    ground, design = plane_tin(), plane_tin(0.0, 1.0)
    xy = np.array([[2.0, 3.0], [15.0, 8.0]]) + ORIGIN
    setout = with_ground(
        with_design(make_setout(xy, ["a,1", "b"], codes=["EP", ""], crs=CRS("EPSG:25832")), design), ground, 0.015
    )
    form = TableForm(parse_columns("name; northing, easting design_height cut fill code"), decimals=2)
    write_setout(setout, tmp_path / "a.csv", form, CONTROL)
    assert rows_of(tmp_path / "a.csv") == [
        ["name", "northing", "easting", "design_height", "cut", "fill", "code"],
        ["a,1", "5765003.00", "432002.00", "101.00", "", "0.80", "EP"],
        ["b", "5765008.00", "432015.00", "101.00", "0.50", "", ""],
        ["CP1", "3.00", "0.30", "5.00", "", "", "CONTROL"],
        ["CP2", "4.00", "2.00", "", "", "", "CONTROL"],
    ]
    head = [line for line in (tmp_path / "a.csv").read_text().splitlines() if line.startswith("#")]
    said = " ".join(head)
    for word in (
        "EPSG:25832",
        "control points: 2",
        "buried",
        "licensed",
        "machine",
        "1 m = 1 m",
    ):
        assert word in said
    write_notes(setout, tmp_path / "a.txt", form, CONTROL)
    assert "buried" in (tmp_path / "a.txt").read_text()


@pytest.mark.parametrize("unit", WORKING_UNITS)
def test_units_and_decimals(tmp_path, unit):
    """NIST SP 811: 0.3048 m and 1200/3937 m."""
    metres = {LengthUnit.METRE: 1.0, LengthUnit.FOOT: 0.3048, LengthUnit.US_SURVEY_FOOT: 1200 / 3937}[unit]
    setout = make_setout(np.array([[1000.0, 2000.0]]), ["p"], np.array([10.0]))
    write_setout(
        setout, tmp_path / "a.txt", TableForm(unit=unit, decimals=4, delimiter=";", header=False, comments=False)
    )
    (row,) = rows_of(tmp_path / "a.txt", ";")
    assert row == ["p", f"{1000 / metres:.4f}", f"{2000 / metres:.4f}", f"{10 / metres:.4f}", "", "", ""]


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("name, easting, northing, hight", "setout.unknown_column"),
        ("name, easting, northing, easting", "setout.column_twice"),
        ("name, easting", "setout.column_needed"),
        ("", "setout.column_needed"),
    ],
)
def test_columns_that_cannot_be_are_refused(text, code):
    with pytest.raises(SurveyError) as caught:
        parse_columns(text)
    assert caught.value.code == code


def test_all_columns_may_be_asked_for(tmp_path):
    line = make_alignment(np.array([[0, 0], [0, 30.0]]), "x")
    rows = offset_places(line, 10.0, [2.0])
    setout = along(make_setout(rows.xy, offset_names(line, rows)), line.numbering.stations(rows.distance), rows.offset)
    write_setout(setout, tmp_path / "a.csv", TableForm(parse_columns(" ".join(COLUMNS))))
    table = rows_of(tmp_path / "a.csv")
    assert table[0] == list(COLUMNS)
    assert table[2][-2:] == ["10.000", "2.000"]


def test_a_point_named_as_a_control_point_is_refused(tmp_path):
    with pytest.raises(SurveyError, match="cp1"):
        write_setout(points("a", "cp1"), tmp_path / "a.csv", control=CONTROL)
    assert list(tmp_path.iterdir()) == []
