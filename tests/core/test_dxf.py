"""DXF, opened by ezdxf: layers, counts, places and texts."""

from __future__ import annotations

from dataclasses import replace

import ezdxf
import numpy as np
import pytest
import trimesh
from pyproj import CRS

from plugin.core.contours.lines import ContourOptions
from plugin.core.contours.trace import trace_contours
from plugin.core.handover.dxf import (
    Drawing,
    DxfLine,
    constraint_lines,
    contour_lines,
    layer_name,
    level_layer,
    write_dxf,
)
from plugin.core.handover.edges import rim_lines
from plugin.core.points.pointset import make_points
from plugin.core.progress import Cancelled
from tests.core.surfaces import random_tin, ring


def opened(drawing, path):
    write_dxf(drawing, path)
    document = ezdxf.readfile(path)
    auditor = document.audit()
    assert not auditor.errors, auditor.errors
    assert document.dxfversion == "AC1009"
    return document


@pytest.mark.parametrize(("code", "metres"), [(None, 1.0), ("EPSG:2263", 1200 / 3937), ("EPSG:2222", 0.3048)])
def test_faces_are_the_triangles(tmp_path, code, metres):
    tin = replace(random_tin(400, 3, keep=ring), crs=None if code is None else CRS(code))
    document = opened(Drawing(tin.crs, tin), tmp_path / "a.dxf")
    faces = document.modelspace().query("3DFACE")
    assert len(faces) == len(tin.triangles)
    corners = np.array([[tuple(corner) for corner in face.wcs_vertices()] for face in faces])
    assert corners.shape[1] == 3, "the fourth corner repeats the third"
    expected = (tin.corners() + np.append(tin.origin, 0.0)) / metres
    np.testing.assert_allclose(corners, expected, atol=0.51e-4)
    mesh = trimesh.Trimesh(corners.reshape(-1, 3), np.arange(corners.size // 3).reshape(-1, 3), process=False)
    assert mesh.area == pytest.approx(area_on_slope(tin) / metres**2, rel=1e-5)
    low, high = document.header["$EXTMIN"], document.header["$EXTMAX"]
    np.testing.assert_allclose([low, high], mesh.bounds, atol=1e-4)
    first = (tmp_path / "a.dxf").read_text().splitlines()[1]
    assert {1.0: "metres", 0.3048: "international feet"}.get(metres, "US survey feet") in first


def area_on_slope(tin):
    corner = tin.corners()
    return 0.5 * np.linalg.norm(np.cross(corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]), axis=1).sum()


@pytest.mark.parametrize("by_level", [False, True])
def test_contours_lie_on_layers_at_their_heights(tmp_path, by_level):
    contours = trace_contours(random_tin(400, 3), ContourOptions(0.5, index_every=5))
    document = opened(Drawing(None, None, contour_lines(contours, by_level)), tmp_path / "a.dxf")
    lines = document.modelspace().query("POLYLINE")
    assert len(lines) == len(contours)
    for i, line in enumerate(lines):
        assert line.is_3d_polyline
        places = np.array([tuple(vertex.dxf.location) for vertex in line.vertices])
        np.testing.assert_allclose(places[:, :2], contours.line(i), atol=1e-4)
        np.testing.assert_allclose(places[:, 2], contours.level[i], atol=1e-4)
        name = level_layer(contours.level[i]) if by_level else ("CONTOUR_INDEX" if contours.index[i] else "CONTOUR")
        assert line.dxf.layer == name
        assert name in document.layers


def test_boundaries_are_closed(tmp_path):
    tin = random_tin(400, 3, keep=ring)
    lines = [*constraint_lines(rim_lines(tin)), DxfLine("BREAKLINE", np.array([[0, 0, 1.0], [5, 5, 2.0]]))]
    found = opened(Drawing(None, None, lines), tmp_path / "a.dxf").modelspace().query("POLYLINE")
    assert [line.dxf.layer for line in found] == ["BOUNDARY", *["VOID"] * (len(found) - 2), "BREAKLINE"]
    assert [line.is_closed for line in found] == [True] * (len(found) - 1) + [False]


def test_a_closed_line_has_each_vertex_once(tmp_path):
    """DXF closes a polyline by its flag; a first vertex repeated at the end would be a piece without length."""
    ring = np.array([[0, 0, 1.0], [4, 0, 1], [4, 3, 2], [0, 3, 2], [0, 0, 1]])
    drawing = Drawing(None, None, [DxfLine("VOID", ring, True), DxfLine("VOID", ring[:-1], True)])
    for line in opened(drawing, tmp_path / "a.dxf").modelspace().query("POLYLINE"):
        assert line.is_closed
        assert [tuple(vertex.dxf.location) for vertex in line.vertices] == [tuple(place) for place in ring[:-1]]


def test_points_have_names_and_heights(tmp_path):
    names = np.array(["A1", "Höhe ^ 坂\n%%d", ""], object)
    points = make_points([1.0, 2.0, 3.0], [4.0, 5.0, 6.0], [7.125, -0.001, np.nan], name=names)
    space = opened(Drawing(None, points=points), tmp_path / "a.dxf").modelspace()
    places = [tuple(point.dxf.location) for point in space.query("POINT")]
    assert places == [(1, 4, 7.125), (2, 5, -0.001), (3, 6, 0)]
    texts = [(text.dxf.layer, text.plain_text()) for text in space.query("TEXT")]
    assert texts[0] == ("POINT_NAMES", "A1")
    assert texts[2][1] == "Höhe ^ \\U+5742 %%d"  # as later releases spell letters that a code page lacks
    assert [text for layer, text in texts if layer == "POINT_HEIGHTS"] == ["7.12", "0.00"]


def test_names_of_layers():
    assert level_layer(101.25) == "CONTOUR_101_25"
    assert level_layer(-2.0) == "CONTOUR_M2"
    assert layer_name("kerb (north) ä" + 40 * "x") == "KERB__NORTH___" + 17 * "X"


def test_the_same_drawing_gives_the_same_bytes_and_a_stop_none(tmp_path):
    tin = random_tin(300, 5)
    drawing = Drawing(None, tin, constraint_lines(rim_lines(tin)))
    for name in "ab":
        write_dxf(drawing, tmp_path / name)
    assert (tmp_path / "a").read_bytes() == (tmp_path / "b").read_bytes()

    def stop(fraction, stage):
        raise Cancelled

    with pytest.raises(Cancelled):
        write_dxf(drawing, tmp_path / "c", stop)
    assert sorted(path.name for path in tmp_path.iterdir()) == ["a", "b"]
