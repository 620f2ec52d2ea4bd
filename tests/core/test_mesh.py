"""2DM files: what is written is read again, exactly; what is wrong is said."""

import numpy as np
import pytest
from pyproj import CRS
from scipy.spatial import Delaunay

from plugin.core.handover.mesh import constrained_edges, read_2dm, write_2dm
from plugin.core.linework.constraints import LineKind
from plugin.core.messages import SurveyError
from plugin.core.surface.mesh import twins_of
from plugin.core.surface.tin import GRID, Tin


def make_tin(grid, triangles, heights, origin=(512000.0, 5812000.0), crs=None):
    """A Tin of given counter-clockwise triangles."""
    grid, triangles = np.asarray(grid, np.int64), np.asarray(triangles, np.int32)
    twin = twins_of(triangles.ravel())
    return Tin(
        vertices=np.column_stack([grid * GRID, heights]),
        triangles=triangles,
        neighbours=np.where(twin >= 0, twin // 3, -1).reshape(-1, 3).astype(np.int32),
        edge_kind=np.zeros(triangles.shape, np.uint8),
        grid=grid,
        origin=np.array(origin),
        vertex_source=np.arange(len(grid)),
        crs=crs,
    )


def random_tin(seed, count=300, crs=None, **more):
    rng = np.random.default_rng(seed)
    grid = np.unique(rng.integers(0, 2_000_000, (count, 2)), axis=0)
    triangles = Delaunay(grid * GRID).simplices
    a, b, c = (grid[triangles[:, i]] for i in range(3))
    area = (b - a)[:, 0] * (c - a)[:, 1] - (b - a)[:, 1] * (c - a)[:, 0]
    triangles[area < 0] = triangles[area < 0][:, [0, 2, 1]]
    heights = rng.normal(20.0, 60.0, len(grid))
    return make_tin(grid, triangles[area != 0], heights, crs=crs, **more)


def with_kinds(tin, seed, kinds):
    """Some edges of ``tin`` given kinds, the same on both sides."""
    rng = np.random.default_rng(seed)
    kind = np.zeros(tin.triangles.size, np.uint8)
    twin = twins_of(tin.triangles.ravel())
    for half_edge in rng.choice(len(kind), 60, replace=False):
        kind[half_edge] = rng.choice(kinds)
        if twin[half_edge] >= 0:
            kind[twin[half_edge]] = kind[half_edge]
    return Tin(**{**vars(tin), "edge_kind": kind.reshape(-1, 3)})


def same_surface(one, other):
    np.testing.assert_array_equal(one.triangles, other.triangles)
    np.testing.assert_array_equal(one.neighbours, other.neighbours)
    np.testing.assert_array_equal(one.edge_kind, other.edge_kind)
    shift = np.rint((one.origin - other.origin) / GRID).astype(np.int64)
    np.testing.assert_array_equal(one.grid + shift, other.grid)
    np.testing.assert_allclose(one.vertices[:, 2], other.vertices[:, 2], rtol=0, atol=0.51e-6)


@pytest.mark.parametrize("origin", [(512000.0, 5812000.0), (-3000.0, -15000.0), (0.0, 0.0)])
def test_a_surface_comes_back_exactly(tmp_path, origin):
    tin = with_kinds(random_tin(7, origin=origin), 3, [1, 2, 4, 5, 7])
    write_2dm(tin, tmp_path / "surface.2dm")
    same_surface(tin, read_2dm(tmp_path / "surface.2dm"))


@pytest.mark.parametrize("code", ["EPSG:25832", "EPSG:2263", "EPSG:2222"])  # metre, US survey foot, foot
def test_coordinates_stand_in_the_unit_of_the_crs(tmp_path, code):
    crs = CRS(code)
    tin = random_tin(8, crs=crs, origin=(300000.0, 60000.0))
    write_2dm(tin, tmp_path / "surface.2dm")
    words = (tmp_path / "surface.2dm").read_text().splitlines()[2].split()
    # NIST SP 811: 0.3048 m and 1200/3937 m.
    metres = {"EPSG:25832": 1.0, "EPSG:2263": 1200 / 3937, "EPSG:2222": 0.3048}[code]
    expected = np.append(tin.vertices[0, :2] + tin.origin, tin.vertices[0, 2]) / metres
    np.testing.assert_allclose([float(word) for word in words[2:]], expected, rtol=0, atol=0.51e-4)
    same_surface(tin, read_2dm(tmp_path / "surface.2dm", crs))


def test_the_file_reads_as_numbers_wherever_they_are(tmp_path):
    """Small, negative and large numbers in one column, against Python's own formatting."""
    grid = [(0, 0), (123_456_789, 1), (5, 987_654_321)]
    heights = [-0.0000004, -123.4567891, 8848.86]
    tin = make_tin(grid, [(0, 1, 2)], heights, origin=(-1.0, 0.0))
    write_2dm(tin, tmp_path / "a.2dm")
    rows = [line.split() for line in (tmp_path / "a.2dm").read_text().splitlines()[2:]]
    assert rows == [
        ["ND", "1", "-1.0000", "0.0000", "0.000000"],
        ["ND", "2", "12344.6789", "0.0001", "-123.456789"],
        ["ND", "3", "-0.9995", "98765.4321", "8848.860000"],
        ["E3T", "1", "1", "2", "3", "1"],
    ]


def test_vertices_without_a_triangle_are_left_out(tmp_path):
    tin = make_tin([(0, 0), (5, 5), (100, 0), (0, 100)], [(0, 2, 3)], [1.0, 99.0, 2.0, 3.0])
    write_2dm(tin, tmp_path / "a.2dm")
    back = read_2dm(tmp_path / "a.2dm")
    assert len(back.vertices) == 3
    assert sorted(back.vertices[:, 2]) == [1.0, 2.0, 3.0]
    assert (back.vertex_source == -1).all()


def test_each_constrained_edge_is_counted_once():
    tin = make_tin([(0, 0), (100, 0), (100, 100), (0, 100)], [(0, 1, 2), (0, 2, 3)], np.zeros(4))
    kind = np.array([[0, 0, LineKind.BREAKLINE], [LineKind.BREAKLINE, LineKind.BOUNDARY, 0]], np.uint8)
    edges, kinds = constrained_edges(Tin(**{**vars(tin), "edge_kind": kind}))
    assert edges.tolist() == [[0, 2], [2, 3]]
    assert kinds.tolist() == [LineKind.BREAKLINE, LineKind.BOUNDARY]


def test_a_height_that_is_no_number_is_refused_and_leaves_no_file(tmp_path):
    tin = make_tin([(0, 0), (100, 0), (0, 100)], [(0, 1, 2)], [1.0, np.nan, 2.0])
    with pytest.raises(ValueError, match="height"):
        write_2dm(tin, tmp_path / "a.2dm")
    assert list(tmp_path.iterdir()) == []


def test_a_file_of_another_program_is_read(tmp_path):
    """Clockwise, free numbering, tabs, no material, a flow boundary, header cards."""
    (tmp_path / "a.2dm").write_text(
        'MESH2D\nMESHNAME "x"\nND\t10\t1.5\t2.5\t3\nND 20 11.5 2.5 4e0\n\nND 7 1.5 12.5 5\nND 8 99 99 9\n'
        "E3T 1 10 7 20\nNS 10 -20\n"
    )
    tin = read_2dm(tmp_path / "a.2dm")
    corner = (tin.vertices + np.append(tin.origin, 0.0))[tin.triangles[0]]
    assert tin.plan_area == pytest.approx(50.0)
    assert {tuple(row) for row in corner.round(9)} == {(1.5, 2.5, 3.0), (11.5, 2.5, 4.0), (1.5, 12.5, 5.0)}
    assert not tin.edge_kind.any()


GOOD = "MESH2D\nND 1 0 0 1\nND 2 10 0 2\nND 3 0 10 3\nND 4 10 10 4\nE3T 1 1 2 3 1\nE3T 2 2 4 3 1\n"
DAMAGE = {
    "another kind of file": ("MESH2D\n", "<kml>\n", 1, "mesh.not_2dm"),
    "text for a number": ("ND 2 10 0 2", "ND 2 ten 0 2", 3, "mesh.bad_record"),
    "a number short": ("ND 2 10 0 2", "ND 2 10 0", 3, "mesh.bad_record"),
    "a number too many": ("ND 2 10 0 2", "ND 2 10 0 2 7", 3, "mesh.bad_record"),
    "one short, one long": ("ND 2 10 0 2\nND 3 0 10 3", "ND 2 10 0\nND 3 0 10 3 3", 3, "mesh.bad_record"),
    "nan": ("ND 2 10 0 2", "ND 2 10 0 nan", 3, "mesh.bad_record"),
    "inf": ("ND 2 10 0 2", "ND 2 inf 0 2", 3, "mesh.bad_record"),
    "a fraction of a node": ("E3T 2 2 4 3 1", "E3T 2 2 4.5 3 1", 7, "mesh.bad_record"),
    "cut inside a line": ("E3T 2 2 4 3 1\n", "E3T 2 2", 7, "mesh.bad_record"),
    "a node twice": ("ND 4 10 10 4", "ND 3 10 10 4", 5, "mesh.node_twice"),
    "a node that is not there": ("E3T 2 2 4 3 1", "E3T 2 2 9 3 1", 7, "mesh.unknown_node"),
    "a quadrilateral": ("E3T 2 2 4 3 1", "E4Q 2 1 2 4 3 1", 7, "mesh.not_triangle"),
    "a flat triangle": ("E3T 2 2 4 3 1", "E3T 2 2 4 4 1", 7, "mesh.flat_triangle"),
    "a triangle over another": ("E3T 2 2 4 3 1", "E3T 2 1 2 4 1", 7, "mesh.overlap"),
    "no triangles": ("E3T 1 1 2 3 1\nE3T 2 2 4 3 1\n", "", None, "mesh.no_triangles"),
}


def test_the_file_to_be_damaged_is_good(tmp_path):
    (tmp_path / "good.2dm").write_text(GOOD)
    assert read_2dm(tmp_path / "good.2dm").plan_area == pytest.approx(100.0)


@pytest.mark.parametrize("what", DAMAGE)
def test_damage_is_said_in_a_line_with_file_and_line(tmp_path, what):
    old, new, line, code = DAMAGE[what]
    assert old in GOOD
    path = tmp_path / "bad.2dm"
    path.write_text(GOOD.replace(old, new))
    with pytest.raises(SurveyError) as caught:
        read_2dm(path)
    assert caught.value.code == code
    text = str(caught.value)
    assert str(path) in text
    assert "\n" not in text
    if line is not None:
        assert f"line {line}:" in text


@pytest.mark.parametrize("content", [None, b"", b"\x00\x01\x02MESH2D"])
def test_missing_empty_and_binary_files(tmp_path, content):
    path = tmp_path / "a.2dm"
    if content is not None:
        path.write_bytes(content)
    with pytest.raises(SurveyError, match="2dm"):
        read_2dm(path)


@pytest.mark.parametrize("keep", [0.3, 0.6, 0.9, 0.99])
def test_a_file_of_ours_cut_anywhere_is_noticed(tmp_path, keep):
    tin = with_kinds(random_tin(9), 4, [1])
    write_2dm(tin, tmp_path / "a.2dm")
    lines = (tmp_path / "a.2dm").read_text().splitlines(keepends=True)
    (tmp_path / "a.2dm").write_text("".join(lines[: int(keep * len(lines))]))
    with pytest.raises(SurveyError):
        read_2dm(tmp_path / "a.2dm")


def in_free_form(path):
    """The records of a file in lines of unequal length, which are read another way."""
    lines = [line.split() for line in path.read_text().splitlines()]
    free = [" " * (k % 3) + ("\t" if k % 2 else "  ").join(words) for k, words in enumerate(lines)]
    return "\r\n".join(line if line.lstrip()[:1] != "#" else " ".join(lines[k]) for k, line in enumerate(free)) + "\r\n"


@pytest.mark.parametrize("origin", [(512000.0, 5812000.0), (-200.0, -50.0), (0.0, 0.0)])
def test_equal_lines_and_free_form_are_read_alike(tmp_path, origin):
    tin = with_kinds(random_tin(11, origin=origin), 5, [1, 2, 4])
    write_2dm(tin, tmp_path / "equal.2dm")
    (tmp_path / "free.2dm").write_bytes(in_free_form(tmp_path / "equal.2dm").encode())
    one, other = read_2dm(tmp_path / "equal.2dm"), read_2dm(tmp_path / "free.2dm")
    same_surface(one, other)
    np.testing.assert_array_equal(one.vertices, other.vertices)
    same_surface(tin, one)


@pytest.mark.parametrize("letter", ["x", " ", "-", ".", "+"])
@pytest.mark.parametrize("record", ["ND", "E3T", "NS"])
def test_a_letter_that_is_wrong_in_a_file_of_ours_is_found_by_its_line(tmp_path, record, letter):
    """Each letter of one line in turn: refused with file and line, or still the numbers that Python reads there."""
    path = tmp_path / "a.2dm"
    tin = with_kinds(random_tin(3, count=60), 5, [1])
    write_2dm(tin, path)
    lines = path.read_text().splitlines()
    number = [k for k, line in enumerate(lines) if line.startswith(record + " ")][7]
    said = []
    for place in range(len(record), len(lines[number])):
        damaged = lines[number][:place] + letter + lines[number][place + 1 :]
        path.write_text("\n".join([*lines[:number], damaged, *lines[number + 1 :]]) + "\n")
        try:
            read_2dm(path)
        except SurveyError as error:
            said.append((error.code, str(error)))
        else:
            assert len([float(word) for word in damaged.split()[1:]]) == len(lines[number].split()) - 1
    assert said
    assert all(str(path) in text for _, text in said)
    assert all(f"line {number + 1}:" in text for code, text in said if code == "mesh.bad_record")


def test_a_triangle_laid_on_another_is_no_twin():
    with pytest.raises(ValueError, match="direction"):
        twins_of(np.array([0, 1, 2, 0, 1, 3]))
    assert twins_of(np.array([0, 1, 2, 1, 0, 3])).tolist() == [3, -1, -1, 0, -1, -1]
    assert twins_of(np.array([], int)).tolist() == []
