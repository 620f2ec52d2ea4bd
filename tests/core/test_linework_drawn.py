"""Lines from drawn features, and merging."""

import numpy as np
import pytest
import shapely
from test_build_surface import survey

from plugin.core.linework.constraints import Constraints, LineKind
from plugin.core.linework.drawn import DrawnRow, constraints_from_rows, merge_constraints
from plugin.core.surface.build import build_surface


def codes(drawn):
    return [each.text.code for each in drawn.messages]


def test_lines_with_and_without_heights():
    drawn = constraints_from_rows(
        [
            DrawnRow(LineKind.BREAKLINE, [[(0, 0, 1), (1, 0, 2)], [(5, 5, np.nan), (6, 6, 3), (7, 6, 3)]], "ditch"),
            DrawnRow(LineKind.BREAKLINE, [[(0, 1), (1, 1)]]),
        ]
    )
    first, second, third = drawn.constraints.lines
    assert first.xyz.tolist() == [[0, 0, 1], [1, 0, 2]]
    assert np.isnan(second.xyz[0, 2])
    assert np.isnan(third.xyz[:, 2]).all()
    assert (first.label, third.label) == ("ditch", "2")
    assert all((line.points == -1).all() for line in drawn.constraints.lines)
    assert drawn.row_numbers == (0, 0, 1)
    assert drawn.messages == ()


def test_rings_of_a_polygon_with_a_hole_and_an_island_enclose_by_the_even_odd_rule():
    """Point in polygon as shapely (GEOS) sees it, against counting our rings."""
    outer, hole, island = (shapely.Point(0, 0).buffer(radius, quad_segs=3) for radius in (10, 6, 2))
    ground = shapely.MultiPolygon([outer.difference(hole), island])
    rings = [ring.coords for part in ground.geoms for ring in [part.exterior, *part.interiors]]
    drawn = constraints_from_rows([DrawnRow(LineKind.BOUNDARY, rings, "site")])
    assert len(drawn.constraints) == 3
    places = np.random.default_rng(1).uniform(-11, 11, (500, 2))
    inside = np.zeros(len(places), int)
    for line in drawn.constraints.lines:
        assert len(line.xyz) == 12  # the ring's last vertex is not repeated
        inside += shapely.contains_xy(shapely.Polygon(line.xyz[:, :2]), places)
    assert np.array_equal(inside % 2 == 1, shapely.contains_xy(ground, places))
    assert drawn.messages == ()


def test_a_breakline_from_a_polygon_stays_closed():
    square = [(0, 0), (1, 0), (1, 1), (0, 0)]
    (line,) = constraints_from_rows([DrawnRow(LineKind.BREAKLINE, [square])]).constraints.lines
    assert line.xyz[:, :2].tolist() == [list(xy) for xy in square]


def test_an_open_boundary_is_closed_and_reported_with_its_gap():
    drawn = constraints_from_rows([DrawnRow(LineKind.VOID, [[(0, 0), (4, 0), (4, 3)]], "pond")])
    assert len(drawn.constraints) == 1
    assert codes(drawn) == ["drawn.closed_by_program"]
    assert "5.000 m" in str(drawn.messages[0])


@pytest.mark.parametrize(
    ("kind", "part", "code"),
    [
        (LineKind.BREAKLINE, [], "drawn.empty"),
        (LineKind.BREAKLINE, [(1, 2)], "drawn.too_short"),
        (LineKind.BREAKLINE, [(0, 0), (np.nan, 1), (2, 2)], "drawn.not_finite"),
        (LineKind.BREAKLINE, [(0, 0, 1), (1, 1, np.inf)], "drawn.not_finite"),
        (LineKind.BOUNDARY, [(0, 0), (1, 1), (0, 0)], "drawn.too_short"),
        (LineKind.BOUNDARY, [(0, 0), (1, 1), (2, 2), (0, 0)], "drawn.flat_ring"),
    ],
)
def test_what_is_no_line_is_left_out_and_reported(kind, part, code):
    drawn = constraints_from_rows([DrawnRow(kind, [part], "x"), DrawnRow(LineKind.BREAKLINE, [[(0, 0), (1, 0)]])])
    assert codes(drawn) == [code]
    assert str(drawn.messages[0]).startswith("x:")
    assert drawn.row_numbers == (1,)


def test_repeated_places_are_dropped():
    drawn = constraints_from_rows([DrawnRow(LineKind.BREAKLINE, [[(0, 0, 1), (0, 0, 2), (1, 0, 1), (1, 0.00001, 1)]])])
    assert drawn.constraints.lines[0].xyz.tolist() == [[0, 0, 1], [1, 0, 1]]
    assert drawn.messages[0].values["count"] == 2


def test_kind_and_shape_must_make_sense():
    with pytest.raises(ValueError, match="one kind"):
        constraints_from_rows([DrawnRow(LineKind.BREAKLINE | LineKind.VOID, [[(0, 0), (1, 1)]])])
    with pytest.raises(ValueError, match="shape"):
        constraints_from_rows([DrawnRow(LineKind.BREAKLINE, [[0, 1, 2]])])


def test_merging_keeps_the_order():
    rows = [DrawnRow(LineKind.BREAKLINE, [[(0, k), (1, k)]], str(k)) for k in range(4)]
    parts = [constraints_from_rows([row]).constraints for row in rows]
    merged = merge_constraints(parts[2], Constraints(), parts[0], parts[3])
    assert [line.label for line in merged.lines] == ["2", "0", "3"]
    assert merge_constraints() == Constraints()


def _ring(x, y, width, height):
    return [(x, y), (x + width, y), (x + width, y + height), (x, y + height), (x, y)]


@pytest.mark.parametrize("drawn", [_ring(3.1, 3.2, 5.3, 6.1), _ring(-4.2, 6.3, 12.1, 30.3), _ring(-5, -5, 40, 40)])
def test_boundaries_of_two_sources_are_met_both_and_voids_are_joined(drawn):
    """One within the other is no hole, as it would be in one layer; shapely's intersection tells the area."""
    coded = _ring(1.15, 1.25, 17.5, 16.5)
    house, shed = _ring(4.3, 7.1, 3.3, 2.2), _ring(6.1, 8.2, 3.1, 2.9)
    rows = [
        [DrawnRow(LineKind.BOUNDARY, [coded]), DrawnRow(LineKind.VOID, [house])],
        [DrawnRow(LineKind.BOUNDARY, [drawn]), DrawnRow(LineKind.VOID, [shed])],
    ]
    constraints = merge_constraints(*(constraints_from_rows(each).constraints for each in rows))
    assert [line.source for line in constraints.lines] == [0, 0, 1, 1]
    surface = build_surface(survey(np.argwhere(np.ones((21, 21)))), constraints)
    wanted = shapely.Polygon(coded) & shapely.Polygon(drawn) & shapely.box(0, 0, 20, 20)
    wanted -= shapely.Polygon(house) | shapely.Polygon(shed)
    assert surface.tin.plan_area == pytest.approx(wanted.area, abs=0.02)  # the grid of 0.1 mm along 100 m
    assert "several_boundaries" in [said.text.code for said in surface.report.messages]


def test_of_three_merged_in_two_steps_each_stays_a_source():
    one, two, three = (
        constraints_from_rows([DrawnRow(LineKind.BOUNDARY, [_ring(at, at, 9, 9)])]).constraints for at in (0, 1, 2)
    )
    merged = merge_constraints(merge_constraints(one, two), three)
    assert [line.source for line in merged.lines] == [0, 1, 2]
