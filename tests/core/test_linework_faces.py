"""Vertical faces: the parallel line against shapely's (GEOS) and against its own promises."""

import math
import time

import numpy as np
import pytest
import shapely
from hypothesis import example, given
from hypothesis import strategies as st

from plugin.core.linework.constraints import ConstraintLine, LineKind, make_line
from plugin.core.linework.faces import FaceSide, vertical_faces
from plugin.core.messages import SurveyError

ORIGIN = np.array([548_240.0, 5_712_380.0, 0.0])


def walk(lengths, turns, origin=ORIGIN):
    """A chain from segment lengths and turns in radians, heights rising by 1 cm a vertex."""
    direction = np.concatenate([[0.0], np.cumsum(turns)])[: len(lengths)]
    steps = np.column_stack([np.cos(direction), np.sin(direction)]) * np.asarray(lengths)[:, None]
    xy = np.vstack([[0, 0], np.cumsum(steps, axis=0)])
    return make_line(LineKind.BREAKLINE, np.column_stack([xy, 90 + 0.01 * np.arange(len(xy))]) + origin, "KF 1")


def distances(faces):
    given_line = shapely.LineString(faces.given.xyz[:, :2])
    return np.array([given_line.distance(shapely.Point(xy)) for xy in faces.other.xyz[:, :2]])


def codes(faces):
    return [each.text.code for each in faces.messages]


def faces_or_reason(line, side):
    try:
        return vertical_faces(line, 0.12, 0.02, side)
    except SurveyError as error:
        return error.code


@pytest.mark.parametrize(("side", "sign"), [(FaceSide.LEFT, 1), (FaceSide.RIGHT, -1)])
def test_a_straight_kerb(side, sign):
    line = ConstraintLine(
        LineKind.BREAKLINE, np.array([[0, 0, 10], [5, 0, 10.1], [10, 0, 10.2]]), np.array([4, 9, 2]), "KF 1"
    )
    faces = vertical_faces(line, 0.12, 0.02, side)
    assert np.array_equal(faces.given.xyz, line.xyz)
    assert faces.given.points.tolist() == [4, 9, 2]
    assert np.allclose(faces.other.xyz, [[0, sign * 0.02, 10.12], [5, sign * 0.02, 10.22], [10, sign * 0.02, 10.32]])
    assert faces.other.points.tolist() == [-1, -1, -1]
    assert faces.lines == (faces.given, faces.other)
    assert faces.messages == ()


def test_face_height_of_each_vertex_and_downwards():
    faces = vertical_faces(walk([3, 3], [0.3]), [-0.1, -0.2, -0.3])
    assert np.allclose(faces.other.xyz[:, 2], [89.9, 89.81, 89.72])


@pytest.mark.parametrize("side", list(FaceSide))
@given(
    data=st.lists(st.tuples(st.floats(0.3, 5), st.floats(-1.9, 1.9)), min_size=1, max_size=5),
    offset=st.sampled_from([0.005, 0.02, 0.05]),
)
def test_mitred_corners_as_geos_draws_them(side, data, offset):
    line = walk([each[0] for each in data], [each[1] for each in data[1:]])
    xy = line.xyz[:, :2] - ORIGIN[:2]
    plain = shapely.LineString(xy)
    faces = vertical_faces(line, 0.12, offset, side)
    # GEOS gives a parallel for chains that keep clear of themselves; compare those
    clear = plain.is_simple and all(
        shapely.LineString(xy[i : i + 2]).distance(shapely.LineString(xy[j : j + 2])) > 2.5 * offset
        for i in range(len(xy) - 1)
        for j in range(i + 2, len(xy) - 1)
    )
    if not clear:
        return
    sign = 1 if side is FaceSide.LEFT else -1
    theirs = shapely.offset_curve(plain, sign * offset, join_style="mitre", mitre_limit=5)
    ours = shapely.LineString(faces.other.xyz[:, :2] - ORIGIN[:2])
    assert faces.messages == ()
    assert shapely.hausdorff_distance(ours, theirs) < 1e-6
    assert np.allclose(faces.other.xyz[:, 2], line.xyz[:, 2] + 0.12)


@given(
    data=st.lists(
        st.tuples(st.sampled_from([0.004, 0.01, 0.03, 0.1, 0.5, 2]), st.floats(-math.pi, math.pi)),
        min_size=1,
        max_size=12,
    ),
    closed=st.booleans(),
    side=st.sampled_from(FaceSide),
)
@example(data=[(2, 0.0), (2, math.pi), (2, math.pi)], closed=False, side=FaceSide.LEFT)
@example(data=[(2, 0.0), (2, math.pi - 1e-8)], closed=False, side=FaceSide.RIGHT)
def test_any_chain_gives_two_lines_apart_or_says_why_not(data, closed, side):
    line = walk([each[0] for each in data], [each[1] for each in data[1:]])
    if closed:
        line = make_line(LineKind.BREAKLINE, np.vstack([line.xyz, line.xyz[:1]]), "ring")
    faces = faces_or_reason(line, side)
    if isinstance(faces, str):
        assert faces in {"faces.no_room", "faces.too_short"}
        return
    low, high = line.xyz[:, 2].min(), line.xyz[:, 2].max()
    assert np.isfinite(faces.other.xyz).all()
    assert (faces.other.xyz[:, 2] >= low + 0.12 - 1e-9).all()
    assert (faces.other.xyz[:, 2] <= high + 0.12 + 1e-9).all()
    assert (distances(faces) > 0.02 - 1e-6).all()
    steps = np.hypot(*np.diff(faces.other.xyz[:, :2], axis=0).T)
    assert (steps > 0.9e-4).all()
    if "faces.crosses" not in codes(faces):
        first = shapely.LineString(faces.given.xyz[:, :2] - ORIGIN[:2])
        second = shapely.LineString(faces.other.xyz[:, :2] - ORIGIN[:2])
        assert not first.intersects(second)
        assert second.is_simple


def test_a_ring_has_its_parallel_inside_or_outside():
    square = np.array([[0, 0, 1], [4, 0, 1], [4, 4, 1], [0, 4, 1], [0, 0, 1]], float)
    inside = vertical_faces(make_line(LineKind.BREAKLINE, square, "wall"), 1.0, 0.1)
    assert np.allclose(inside.other.xyz, [[0.1, 0.1, 2], [3.9, 0.1, 2], [3.9, 3.9, 2], [0.1, 3.9, 2], [0.1, 0.1, 2]])
    outside = vertical_faces(make_line(LineKind.VOID, square[:4], "wall"), 1.0, 0.1, FaceSide.RIGHT)
    assert np.allclose(outside.other.xyz[:, :2], [[-0.1, -0.1], [4.1, -0.1], [4.1, 4.1], [-0.1, 4.1], [-0.1, -0.1]])
    assert outside.given.kind is outside.other.kind is LineKind.BREAKLINE
    assert np.array_equal(outside.given.xyz, square)


def test_short_segments_disappear_and_are_reported():
    # a corner cut by a 5 mm chamfer: its inner parallel has no room for it
    xyz = np.array([[0, 0, 1], [4, 0, 1], [4.0035, 0.0035, 2], [4.0035, 4, 2]], float)
    faces = vertical_faces(make_line(LineKind.BREAKLINE, xyz, "KF 1"), 0.1, 0.02)
    assert codes(faces) == ["faces.segments_lost"]
    assert np.allclose(faces.other.xyz, [[0, 0.02, 1.1], [3.9835, 0.02, 1.6], [3.9835, 4, 2.1]])


def test_a_sharp_outer_corner_is_cut_within_reach():
    faces = vertical_faces(walk([3, 3], [-2.9]), 0.1, 0.02)
    assert len(faces.other.xyz) == 4
    assert distances(faces).max() < 0.02 * math.sqrt(2) + 1e-6
    assert faces.messages == ()


def test_a_hairpin_is_gone_round_and_reported():
    faces = vertical_faces(walk([3, 2], [math.pi]), 0.1, 0.02)
    assert codes(faces) == ["faces.hairpin"]
    assert np.allclose(
        faces.other.xyz[:, :2] - ORIGIN[:2], [[0, 0.02], [3.02, 0.02], [3.02, -0.02], [1, -0.02]], atol=1e-6
    )


def test_a_bay_narrower_than_the_offsets_is_bridged():
    xyz = np.array([[0, 0, 1], [2, 0, 1], [2, -1, 1], [2.03, -1, 1], [2.03, 0, 1], [4, 0, 1]], float)
    faces = vertical_faces(make_line(LineKind.BREAKLINE, xyz, "KF 1"), 0.1, 0.02, FaceSide.LEFT)
    assert codes(faces) == ["faces.segments_lost"]
    assert (distances(faces) > 0.02 - 1e-6).all()
    assert faces.other.xyz[:, 1].min() > -1e-6


def test_a_line_that_passes_too_near_itself_loses_its_face_there():
    # a spiral whose end passes 1 cm from its beginning, on the side of the face
    xyz = np.array([[0, 0, 1], [4, 0, 1], [4, 4, 1], [-2, 4, 1], [-2, 0.01, 1], [3, 0.01, 1]], float)
    faces = vertical_faces(make_line(LineKind.BREAKLINE, xyz, "KF 1"), 0.1, 0.02, FaceSide.LEFT)
    assert codes(faces) == ["faces.segments_lost"]
    assert np.allclose(faces.other.xyz[0], [3.98, 0.02, 1.1])


def test_a_line_that_crosses_itself_is_reported_with_the_place():
    xyz = np.array([[0, 0, 1], [4, 4, 1], [4, 0, 1], [0, 4, 1]], float)
    faces = vertical_faces(make_line(LineKind.BREAKLINE, xyz, "KF 1"), 0.1, 0.02, FaceSide.LEFT)
    assert codes(faces) == ["faces.crosses"]
    assert abs(faces.messages[0].values["x"] - 2) < 0.1
    assert abs(faces.messages[0].values["y"] - 2) < 0.1


def test_no_room_inside_a_tiny_ring():
    ring = make_line(LineKind.BOUNDARY, [[0, 0, 1], [0.03, 0, 1], [0, 0.03, 1]], "post")
    with pytest.raises(SurveyError) as caught:
        vertical_faces(ring, 0.1, 0.02, FaceSide.LEFT)
    assert caught.value.code == "faces.no_room"
    assert len(vertical_faces(ring, 0.1, 0.02, FaceSide.RIGHT).other.xyz) >= 4


@pytest.mark.parametrize(
    ("xyz", "face", "offset", "code"),
    [
        ([[0, 0, 1], [1, 0, np.nan]], 0.1, 0.02, "faces.no_heights"),
        ([[0, 0], [1, 0]], 0.1, 0.02, "faces.no_heights"),
        ([[0, 0, 1], [1, 0, 1]], 0.0, 0.02, "faces.bad_face"),
        ([[0, 0, 1], [1, 0, 1]], [0.1, np.nan], 0.02, "faces.bad_face"),
        ([[0, 0, 1], [1, 0, 1]], 0.1, 0.0, "faces.bad_offset"),
        ([[0, 0, 1], [1, 0, 1]], 0.1, -0.02, "faces.bad_offset"),
        ([[0, 0, 1], [0, 0, 2]], 0.1, 0.02, "faces.too_short"),
    ],
)
def test_what_cannot_be_used_is_said(xyz, face, offset, code):
    with pytest.raises(SurveyError) as caught:
        vertical_faces(make_line(LineKind.BREAKLINE, xyz, "KF 7"), face, offset)
    assert caught.value.code == code
    assert str(caught.value).startswith("KF 7")


def test_a_long_noisy_kerb_takes_little_time():
    rng = np.random.default_rng(3)
    line = walk(rng.uniform(0.002, 0.8, 20_000), rng.normal(0, 0.15, 19_999))
    begun = time.process_time()  # a busy machine does not count
    faces = vertical_faces(line, 0.12)
    assert time.process_time() - begun < 20
    assert (distances_sample(faces) > 0.02 - 1e-6).all()


def distances_sample(faces):
    xy = faces.other.xyz[:: max(1, len(faces.other.xyz) // 50), :2]
    line = shapely.LineString(faces.given.xyz[:, :2])
    return shapely.distance(line, shapely.points(xy))
