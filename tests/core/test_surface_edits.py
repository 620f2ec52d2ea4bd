"""Edits: the file they are kept in, and their replay; every edited surface is checked to be a valid one."""

from __future__ import annotations

import json
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plugin.core.linework.constraints import Constraints, LineKind, make_line
from plugin.core.messages import SurveyError
from plugin.core.points.pointset import make_points
from plugin.core.surface.build import SurfaceOptions, build_surface
from plugin.core.surface.edited import build_surface_with_edits
from plugin.core.surface.edits import (
    AddPoint,
    AddTriangle,
    DropTriangles,
    ForceEdge,
    MovePoint,
    RemoveTriangle,
    SwapEdge,
    kind_of,
    read_edits,
    write_edits,
)
from plugin.core.surface.tin import GRID

E0, N0 = 548_000.0, 5_712_000.0

ALL_KINDS = (
    SwapEdge(place=(E0 + 0.1, N0)),
    SwapEdge(ends=((E0, N0), (E0 + 1, N0 + 1)), note="Rücken, nicht Mulde"),
    RemoveTriangle((E0, N0)),
    AddTriangle(place=(E0, N0)),
    AddTriangle(corners=((E0, N0), (E0 + 1, N0), (E0, N0 + 1))),
    MovePoint((E0, N0), height=-1.25),
    MovePoint((E0, N0), difference=0.05),
    AddPoint((E0, N0), 91.123456789),
    ForceEdge(((E0, N0), (E0 + 1, N0), (E0 + 2, N0))),
    DropTriangles(((E0, N0), (E0 + 1, N0), (E0 + 2, N0 + 3))),
)


def place(x, y):
    return (E0 + x, N0 + y)


def survey(xyz):
    x, y, z = np.array(xyz, float).T
    return make_points(E0 + x, N0 + y, z, source="survey.csv")


def square(n=3):
    """Points of an n by n grid of metres; heights so that nothing is flat."""
    x, y = np.meshgrid(np.arange(n, dtype=float), np.arange(n, dtype=float))
    return survey(np.column_stack([x.ravel(), y.ravel(), (x * 0.1 + y * y * 0.05).ravel()]))


def check_valid(tin):
    """Counter-clockwise without overlap, neighbours and edge kinds equal from both sides, no vertex too many."""
    x, y = tin.grid.T
    a, b, c = tin.triangles.T
    assert np.all((x[b] - x[a]) * (y[c] - y[a]) - (y[b] - y[a]) * (x[c] - x[a]) > 0)
    sides = {}
    for t, triangle in enumerate(tin.triangles.tolist()):
        for i in range(3):
            edge = (triangle[i], triangle[(i + 1) % 3])
            assert edge not in sides
            sides[edge] = (t, i)
    for (start, end), (t, i) in sides.items():
        beyond = sides.get((end, start))
        assert tin.neighbours[t, i] == (-1 if beyond is None else beyond[0])
        if beyond is not None:
            assert tin.edge_kind[t, i] == tin.edge_kind[beyond]
    assert set(np.unique(tin.triangles)) == set(range(len(tin.vertices)))
    np.testing.assert_array_equal(tin.vertices[:, :2], tin.grid * GRID)


def edges(tin):
    """Edges as pairs of places (tenths of millimetres from E0, N0), with their kind."""
    at = [(round(x), round(y)) for x, y in (tin.vertices[:, :2] + tin.origin - (E0, N0)) / GRID]
    found = {}
    for triangle, kinds in zip(tin.triangles.tolist(), tin.edge_kind.tolist()):
        for i in range(3):
            found[frozenset((at[triangle[i]], at[triangle[(i + 1) % 3]]))] = kinds[i]
    return found


def triangles(tin):
    """The triangles by the places and heights of their corners: comparable whatever the numbers."""
    xyz = np.column_stack([np.rint((tin.vertices[:, :2] + tin.origin - (E0, N0)) / GRID), tin.vertices[:, 2]])
    return {frozenset(map(tuple, xyz[t])) for t in tin.triangles}


def between(a, b):
    return frozenset((round(x / GRID), round(y / GRID)) for x, y in (a, b))


def codes(report):
    return [(each.values["number"], each.text.code) for each in report.messages]


NO_LINES = Constraints()


def built(points, edits, constraints=NO_LINES, **options):
    surface, report = build_surface_with_edits(points, constraints, SurfaceOptions(**options), edits)
    check_valid(surface.tin)
    assert sorted(report.applied + report.not_applied) == list(range(1, len(edits) + 1))
    return surface, report


# --- the file -------------------------------------------------------------------------------------


def test_all_kinds_come_back_as_they_were_written(tmp_path):
    file = tmp_path / "edits.json"
    write_edits(ALL_KINDS, file)
    assert read_edits(file) == ALL_KINDS
    assert {kind_of(edit) for edit in ALL_KINDS} == {
        row["edit"] for row in json.loads(file.read_text("utf-8"))["edits"]
    }
    assert [each.name for each in tmp_path.iterdir()] == ["edits.json"]


def test_an_empty_list_is_kept(tmp_path):
    write_edits([], tmp_path / "edits.json")
    assert read_edits(tmp_path / "edits.json") == ()


numbers = st.floats(allow_nan=False, allow_infinity=False)
places = st.tuples(numbers, numbers)
notes = st.text(max_size=20)
any_edit = st.one_of(
    st.builds(SwapEdge, place=places, note=notes),
    st.builds(SwapEdge, ends=st.tuples(places, places), note=notes),
    st.builds(MovePoint, places, height=numbers, note=notes),
    st.builds(MovePoint, places, difference=numbers),
    st.builds(AddPoint, places, numbers),
    st.builds(ForceEdge, st.lists(places, min_size=2, max_size=4).map(tuple)),
    st.builds(DropTriangles, st.lists(places, min_size=3, max_size=5).map(tuple), note=notes),
    st.builds(AddTriangle, corners=st.tuples(places, places, places)),
)


@settings(max_examples=100, deadline=None)
@given(st.lists(any_edit, max_size=6))
def test_any_edits_come_back_exactly(tmp_path_factory, edits):
    file = tmp_path_factory.getbasetemp() / "any.json"
    write_edits(edits, file)
    assert list(read_edits(file)) == edits


def test_a_failed_write_leaves_the_old_file(tmp_path):
    file = tmp_path / "edits.json"
    write_edits(ALL_KINDS, file)
    with pytest.raises(ValueError, match="JSON"):
        write_edits([AddPoint((E0, N0), float("nan"))], file)
    assert read_edits(file) == ALL_KINDS


HEAD = '{\n "format": "hummock edits",\n "version": 1,\n "edits": [\n'


@pytest.mark.parametrize(
    ("text", "code", "line", "number"),
    [
        ("{", "edits.not_json", 1, None),
        (HEAD + '{"edit": "add_point",}]}', "edits.not_json", 5, None),
        (HEAD + '{"edit": "add_point", "place": [1, 2], "height": NaN}]}', "edits.not_json", 1, None),
        ("[]", "edits.not_edits", 1, None),
        ('{"version": 1, "edits": []}', "edits.not_edits", 1, None),
        ('{\n"format": "hummock edits",\n"version": 2, "edits": []}', "edits.newer", 3, None),
        ('{\n"format": "hummock edits",\n"version": true, "edits": []}', "edits.newer", 3, None),
        ('{"format": "hummock edits", "version": 1}', "edits.no_list", 1, None),
        ('{"format": "hummock edits", "version": 1,\n"more": 1, "edits": []}', "edits.no_list", 2, None),
        (HEAD + '{"edit": "remove_triangle", "place": [1, 2]},\n\n7]}', "edits.no_edit", 7, 2),
        (HEAD + '{"edit": "paint"}]}', "edits.no_edit", 5, 1),
        (HEAD + '{"edit": "add_point", "place": [1, 2], "heigth": 3}]}', "edits.strange_field", 5, 1),
        (HEAD + '{"edit": "remove_triangle", "place": [1, 2], "height": 3}]}', "edits.strange_field", 5, 1),
        (HEAD + '{"edit": "add_point", "place": [1, 2]}]}', "edits.missing_field", 5, 1),
        (HEAD + '{"edit": "move_point", "place": [1, 2], "height": 3, "difference": 1}]}', "edits.missing_field", 5, 1),
        (HEAD + '{"edit": "add_point", "place": [1], "height": 3}]}', "edits.bad_value", 5, 1),
        (HEAD + '{"edit": "add_point", "place": [1, 2], "height": "3"}]}', "edits.bad_value", 5, 1),
        (HEAD + '{"edit": "add_point", "place": [1, 2], "height": true}]}', "edits.bad_value", 5, 1),
        (HEAD + '{"edit": "add_point", "place": [1, 1e999], "height": 3}]}', "edits.bad_value", 5, 1),
        (HEAD + '{"edit": "add_point", "place": [1, 2], "height": 1' + "0" * 400 + "}]}", "edits.bad_value", 5, 1),
        (HEAD + '{"edit": "force_edge", "line": [[1, 2]]}]}', "edits.bad_value", 5, 1),
        (HEAD + '{"edit": "drop_triangles", "polygon": [[1, 2], [3, 4]]}]}', "edits.bad_value", 5, 1),
        (HEAD + '{"edit": "swap_edge", "ends": [[1, 2], [3, 4], [5, 6]]}]}', "edits.bad_value", 5, 1),
        (HEAD + '{"edit": "add_point", "note": 5, "place": [1, 2], "height": 3}]}', "edits.bad_value", 5, 1),
        (HEAD + '{"edit": "add_point", "place": [1, 2], "place": [1, 2], "height": 3}]}', "edits.not_json", 1, None),
    ],
)  # fmt: skip
def test_what_cannot_be_understood_is_told_with_its_place(tmp_path, text, code, line, number):
    file = tmp_path / "edits.json"
    file.write_text(text, encoding="utf-8")
    with pytest.raises(SurveyError) as error:
        read_edits(file)
    assert error.value.code == code
    assert error.value.values["line"] == line
    assert error.value.values.get("number") == number
    assert str(error.value).startswith(f"{file}, line {line}")
    assert "\n" not in str(error.value)


def test_no_file_and_no_text(tmp_path):
    with pytest.raises(SurveyError, match=r"none\.json"):
        read_edits(tmp_path / "none.json")
    (tmp_path / "bad.json").write_bytes(b"\xff\xfe{")
    with pytest.raises(SurveyError, match=r"bad\.json"):
        read_edits(tmp_path / "bad.json")


def test_an_edit_says_one_thing():
    for make in (
        lambda: SwapEdge(),
        lambda: SwapEdge(place=(0, 0), ends=((0, 0), (1, 1))),
        lambda: MovePoint((0, 0)),
        lambda: MovePoint((0, 0), height=1, difference=1),
        lambda: AddTriangle(),
    ):
        with pytest.raises(ValueError, match="exactly one"):
            make()


# --- edits of what is known -----------------------------------------------------------------------


def test_no_edits_change_nothing():
    surface, report = built(square(), [])
    plain = build_surface(square())
    assert triangles(surface.tin) == triangles(plain.tin)
    assert report.applied == report.not_applied == report.messages == ()


def test_a_moved_point_has_the_new_height_and_stays_the_same_point():
    points = square()
    surface, report = built(points, [MovePoint(place(1.002, 1), height=7.0), MovePoint(place(1, 1), difference=-0.5)])
    vertex = np.flatnonzero(surface.tin.vertex_source == 4)[0]
    assert surface.tin.vertices[vertex, 2] == 6.5
    assert report.applied == (1, 2)
    assert points.height[4] == 0.1 + 0.05, "the survey that was given must not change"
    assert report.points.height[4] == 6.5


def test_a_moved_vertex_of_a_line_moves_the_soft_line_on_it():
    hard = make_line(LineKind.BREAKLINE, np.array([(*place(0.5, 0.5), 1.0), (*place(1.5, 1.5), 1.0)]), "wall")
    soft = make_line(LineKind.BREAKLINE, np.array([place(0.5, 1.5), place(1.5, 0.5)]), "drawn")
    surface, report = built(square(), [MovePoint(place(0.5, 0.5), height=3.0)], Constraints((hard, soft)))
    assert report.applied == (1,)
    middle = np.flatnonzero(np.all(surface.tin.grid * GRID + surface.tin.origin == place(1, 1), axis=1))
    assert len(middle) == 1
    assert hard.xyz[0, 2] == 1.0
    assert report.constraints.lines[0].xyz[0, 2] == 3.0
    corner = np.flatnonzero(np.all(np.abs(surface.tin.vertices[:, :2] - (0.5, 0.5)) < 1e-9, axis=1))
    assert surface.tin.vertices[corner[0], 2] == 3.0


def test_a_vertex_that_only_the_triangulation_has_can_be_moved():
    """Two breaklines of one height cross between their vertices."""
    lines = Constraints(
        (
            make_line(LineKind.BREAKLINE, np.array([(*place(0.5, 0.5), 1.0), (*place(1.5, 1.75), 1.0)])),
            make_line(LineKind.BREAKLINE, np.array([(*place(0.5, 1.5), 1.0), (*place(1.5, 0.75), 1.0)])),
        )
    )
    plain = build_surface(square(4), lines)
    conflict = plain.report.conflicts[0]
    where = (conflict.easting, conflict.northing)
    surface, report = built(square(4), [MovePoint(where, difference=0.25), MovePoint(where, difference=0.25)], lines)
    assert report.applied == (1, 2)
    at = np.argmin(np.hypot(*(surface.tin.vertices[:, :2] + surface.tin.origin - where).T))
    assert surface.tin.vertices[at, 2] == pytest.approx(1.5)
    assert {k for k, v in edges(plain.tin).items() if v} == {k for k, v in edges(surface.tin).items() if v}


def test_an_added_point_is_a_vertex_and_takes_no_number_of_a_survey_point():
    surface, report = built(square(), [AddPoint(place(0.4, 0.3), 5.0), MovePoint(place(0.4, 0.3), difference=1.0)])
    tin = surface.tin
    assert report.applied == (1, 2)
    assert report.messages == ()
    assert len(tin.vertices) == 10
    new = np.flatnonzero(tin.vertex_source == -1)
    np.testing.assert_allclose(tin.vertices[new], [[0.4, 0.3, 6.0]])
    assert sorted(tin.vertex_source) == [-1, *range(9)]


def test_points_that_cannot_be_added():
    edits = [AddPoint(place(1.001, 1), 5.0), AddPoint(place(2e5, 0), 5.0), AddPoint(place(0.5, 0.5), 1.0),
             AddPoint(place(0.5, 0.501), 1.0), MovePoint(place(0.7, 0.5), height=1.0),
             AddPoint(place(float("nan"), 0), 1.0)]  # fmt: skip
    surface, report = built(square(), edits)
    assert report.applied == (3,)
    assert codes(report) == [
        (1, "edits.point_there"), (2, "edits.far_off"), (4, "edits.point_there"), (5, "edits.no_point"),
        (6, "edits.far_off"),
    ]  # fmt: skip
    assert "0.150 m" in str(report.messages[0])
    assert len(surface.tin.vertices) == 10


def test_a_point_added_outside_the_boundary_is_told():
    ring = make_line(LineKind.BOUNDARY, np.array([place(0, 0), place(2, 0), place(2, 2), place(0, 2)]), "site")
    surface, report = built(
        square(4), [AddPoint(place(2.5, 2.5), 1.0), AddPoint(place(1.5, 1.4), 1)], Constraints((ring,))
    )
    assert report.applied == (1, 2)
    assert codes(report) == [(1, "edits.point_outside")]
    assert surface.tin.plan_area == pytest.approx(4.0)


def test_a_forced_edge_is_there_and_held():
    ends = (place(0, 0), place(2, 1))
    plain = edges(build_surface(square()).tin)
    assert between((0, 0), (2, 1)) not in plain
    surface, report = built(square(), [ForceEdge(ends), SwapEdge(ends=ends)])
    assert edges(surface.tin)[between((0, 0), (2, 1))] == int(LineKind.BREAKLINE)
    assert report.applied == (1,)
    assert codes(report) == [(2, "edits.edge_held")]
    assert surface.report.duplicates == ()


def test_a_forced_edge_from_an_added_point_whose_height_moves_later():
    edits = [
        AddPoint(place(0.5, 0.4), 9.0),
        ForceEdge((place(0.5, 0.4), place(2, 1))),
        MovePoint(place(0.5, 0.4), height=2.0),
    ]
    surface, report = built(square(), edits)
    assert report.applied == (1, 2, 3)
    new = np.flatnonzero(surface.tin.vertex_source == -1)
    assert surface.tin.vertices[new, 2].tolist() == [2.0]
    assert edges(surface.tin)[between((0.5, 0.4), (2, 1))]


def test_forced_edges_that_cannot_be():
    line = make_line(LineKind.BREAKLINE, np.array([(*place(0, 1), 0.0), (*place(2, 1), 5.0)]), "kerb")
    edits = [
        ForceEdge((place(0, 0), place(1, 2))),  # across the kerb, at another height than it has there
        ForceEdge((place(0, 0), place(1.5, 0.5))),
        ForceEdge((place(0, 0), place(0.001, 0))),
        ForceEdge((place(0, 0), place(2, 1))),
        ForceEdge((place(0, 1), place(2, 0))),  # across the one before
    ]
    surface, report = built(square(), edits, Constraints((line,)))
    assert report.applied == (4,)
    assert codes(report) == [
        (1, "edits.crosses_line"), (2, "edits.no_point"), (3, "edits.one_place"), (5, "edits.crosses_line"),
    ]  # fmt: skip
    assert "kerb" in str(report.messages[0])
    assert "#4" in str(report.messages[-1])
    assert between((0, 0), (1, 2)) not in edges(surface.tin)


# --- edits of triangles ---------------------------------------------------------------------------


def test_a_swapped_edge_is_the_other_diagonal():
    plain = edges(build_surface(square(2)).tin)
    assert between((0, 0), (1, 1)) in plain
    for edit in (SwapEdge(ends=(place(1, 1), place(0, 0))), SwapEdge(place=place(0.45, 0.5))):
        surface, report = built(square(2), [edit])
        assert report.applied == (1,)
        assert between((0, 0), (1, 1)) not in edges(surface.tin)
        assert between((1, 0), (0, 1)) in edges(surface.tin)
        assert surface.tin.plan_area == pytest.approx(1.0)


def test_swapping_twice_gives_the_first_surface():
    edits = [SwapEdge(place=place(0.5, 0.5)), SwapEdge(ends=(place(1, 0), place(0, 1)))]
    surface, report = built(square(), edits)
    assert report.applied == (1, 2)
    assert triangles(surface.tin) == triangles(build_surface(square()).tin)


def test_edges_that_cannot_be_swapped():
    points = survey([(0, 0, 0), (4, 0, 1), (2, 4, 2), (2, 1, 3)])  # a point inside a triangle: nothing is convex
    edits = [
        SwapEdge(ends=(place(0, 0), place(2, 1))),
        SwapEdge(ends=(place(0, 0), place(4, 0))),
        SwapEdge(ends=(place(0, 0), place(3, 3))),
        SwapEdge(place=place(9, 9)),
        SwapEdge(place=place(2, 0.001)),
        SwapEdge(place=place(float("nan"), 1)),
    ]
    surface, report = built(points, edits)
    assert codes(report) == [
        (1, "edits.not_convex"), (2, "edits.edge_on_rim"), (3, "edits.no_edge"), (4, "edits.no_triangle"),
        (5, "edits.edge_on_rim"), (6, "edits.no_triangle"),
    ]  # fmt: skip
    assert triangles(surface.tin) == triangles(build_surface(points).tin)


def test_a_quadrilateral_with_a_straight_corner_is_not_swapped():
    points = survey([(0, 0, 0), (1, 0, 0), (2, 0, 0), (1, 1, 0)])
    _, report = built(points, [SwapEdge(ends=(place(1, 0), place(1, 1)))])
    assert codes(report) == [(1, "edits.not_convex")]


def test_removed_and_added_triangles():
    surface, report = built(square(), [RemoveTriangle(place(0.9, 0.1))])
    assert surface.tin.plan_area == pytest.approx(3.5)
    again, report = built(
        square(),
        [
            RemoveTriangle(place(0.9, 0.1)),
            RemoveTriangle(place(0.9, 0.1)),
            AddTriangle(place=place(0.8, 0.1)),
            AddTriangle(place=place(0.9, 0.1)),
            RemoveTriangle(place(0.9, 0.1)),
            AddTriangle(corners=(place(1, 1), place(0, 0), place(1, 0))),
        ],
    )
    assert report.applied == (1, 3, 5, 6)
    assert codes(report) == [(2, "edits.no_triangle"), (4, "edits.there_already")]
    assert triangles(again.tin) == triangles(build_surface(square()).tin)


def test_triangles_come_back_that_boundary_void_and_rim_took_away():
    ring = make_line(LineKind.BOUNDARY, np.array([place(0, 0), place(2, 0), place(2, 3), place(0, 3)]), "site")
    hole = make_line(LineKind.VOID, np.array([place(0, 0), place(1, 0), place(1, 1), place(0, 1)]), "tank")
    surface, report = built(
        square(4), [AddTriangle(place=place(2.9, 0.1)), AddTriangle(place=place(0.9, 0.1))], Constraints((ring, hole))
    )
    assert report.applied == (1, 2)
    assert surface.tin.plan_area == pytest.approx(6.0)
    far = survey([(0, 0, 0), (1, 0, 0), (0, 1, 0), (9, 9, 0)])
    assert build_surface(far, options=SurfaceOptions(max_rim_edge=2.0)).tin.plan_area == pytest.approx(0.5)
    back, report = built(far, [AddTriangle(place=place(4, 4))], max_rim_edge=2.0)
    assert report.applied == (1,)
    assert back.tin.plan_area == pytest.approx(9.0)
    assert back.report.trimmed == 0


def test_triangles_that_cannot_be_added():
    corners = (place(0, 0), place(2, 0), place(2, 2))
    _, report = built(square(), [AddTriangle(place=place(5, 5)), AddTriangle(corners=corners)])
    assert codes(report) == [(1, "edits.nothing_to_add"), (2, "edits.no_such_triangle")]


def test_triangles_in_a_polygon_are_dropped():
    polygon = (place(0, 0), place(1, 0), place(1, 2), place(0, 2))
    surface, report = built(square(), [DropTriangles(polygon), DropTriangles(polygon)])
    assert codes(report) == [(2, "edits.none_in_polygon")]
    assert surface.tin.plan_area == pytest.approx(2.0)
    assert surface.tin.vertices[:, 0].min() == 1.0


def test_the_last_triangles_stay():
    everything = (place(-1, -1), place(9, -1), place(9, 9), place(-1, 9))
    one = survey([(0, 0, 0), (1, 0, 0), (0, 1, 0)])
    surface, report = built(one, [RemoveTriangle(place(0.2, 0.2)), DropTriangles(everything)])
    assert codes(report) == [(1, "edits.last_triangle"), (2, "edits.last_triangle")]
    assert len(surface.tin.triangles) == 1


def test_places_are_found_in_triangles_that_a_swap_made():
    edits = [SwapEdge(place=place(0.5, 0.5)), RemoveTriangle(place(0.1, 0.5))]
    surface, report = built(square(2), edits)
    assert report.applied == (1, 2)
    assert {frozenset(t) for t in triangles(surface.tin)} == {
        frozenset({(10000.0, 0.0, 0.1), (10000.0, 10000.0, 0.15000000000000002), (0.0, 10000.0, 0.05)})
    }


# --- replay ---------------------------------------------------------------------------------------


def test_edits_outlast_a_grown_survey():
    edits = [SwapEdge(ends=(place(0, 0), place(1, 1))), MovePoint(place(1, 0), height=4.0)]
    small, first = built(square(2), edits)
    grown, second = built(square(6), edits)
    assert first.applied == second.applied == (1, 2)
    assert between((1, 0), (0, 1)) in edges(grown.tin)
    assert triangles(small.tin) <= triangles(grown.tin)


def test_an_edit_whose_point_was_rejected_no_longer_applies():
    points = square()
    status = points.status.copy()
    status[4] = 2
    edits = [MovePoint(place(1, 1), height=4.0), SwapEdge(ends=(place(0, 0), place(1, 1)))]
    _, report = built(points.with_status(status, points.reasons), edits)
    assert codes(report) == [(1, "edits.no_point"), (2, "edits.no_edge")]


coordinate = st.integers(-1, 9).map(lambda v: v / 2)
spot = st.tuples(coordinate, coordinate).map(lambda p: place(*p))
random_edit = st.one_of(
    st.builds(SwapEdge, place=spot),
    st.builds(SwapEdge, ends=st.tuples(spot, spot)),
    st.builds(RemoveTriangle, spot),
    st.builds(AddTriangle, place=spot),
    st.builds(AddTriangle, corners=st.tuples(spot, spot, spot)),
    st.builds(MovePoint, spot, difference=st.just(0.5)),
    st.builds(AddPoint, spot, st.just(3.0)),
    st.builds(ForceEdge, st.lists(spot, min_size=2, max_size=3).map(tuple)),
    st.builds(DropTriangles, st.lists(spot, min_size=3, max_size=4).map(tuple)),
)


@settings(max_examples=120, deadline=None)
@given(st.lists(random_edit, max_size=12), st.randoms(use_true_random=False))
def test_any_list_of_edits_gives_one_valid_surface_whatever_the_order_of_points(edits, random):
    """Grid points are cocircular throughout and places lie on edges and vertices: ties everywhere."""
    points = square(5)
    shuffled = list(range(len(points)))
    random.shuffle(shuffled)
    surface, report = built(points, edits)
    other, other_report = built(points.select(np.array(shuffled)), edits)
    assert triangles(surface.tin) == triangles(other.tin)
    assert edges(surface.tin) == edges(other.tin)
    assert report.applied == other_report.applied
    assert codes(report) == codes(other_report)
    for message in report.messages:
        assert f"Edit {message.values['number']} (" in str(message)


def test_edits_of_a_large_survey_take_no_time():
    random = np.random.default_rng(5)
    xy = random.uniform(0, 300, (60_000, 2))
    points = survey(np.column_stack([xy, random.normal(size=len(xy))]))
    plain = build_surface(points).tin
    middle = plain.corners()[::600, :, :2].mean(axis=1) + plain.origin
    edits = [SwapEdge(place=tuple(p)) for p in middle.tolist()] + [RemoveTriangle(tuple(p)) for p in middle.tolist()]
    surface, report = build_surface_with_edits(points, edits=edits)
    # Another swap can move a triangle away from under a place, but never all of them.
    assert len(report.applied) + len(report.not_applied) == len(edits)
    assert len(plain.triangles) - len(surface.tin.triangles) == sum(n > len(middle) for n in report.applied)
    assert sum(n > len(middle) for n in report.applied) > 0.95 * len(middle)


def test_the_given_objects_stay_as_they_were():
    points = square()
    line = make_line(LineKind.BREAKLINE, np.array([(*place(0, 1), 0.0), (*place(2, 1), 5.0)]), "kerb")
    before = replace(points, height=points.height.copy())
    xyz = line.xyz.copy()
    built(points, [MovePoint(place(0, 1), height=9.0), AddPoint(place(0.5, 0.3), 1.0)], Constraints((line,)))
    np.testing.assert_array_equal(points.height, before.height)
    np.testing.assert_array_equal(line.xyz, xyz)
