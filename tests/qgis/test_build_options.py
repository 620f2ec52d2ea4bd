"""Rim, faces, soft lines and edits of “Build the surface”."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any, Dict, List, Tuple

import pytest
from in_qgis import Listener, layer_of, memory_layer, memory_lines, memory_points, message_of

EAST, NORTH = 500000.0, 5700000.0
#: A level field of 7 by 7 points every 2 m.
FIELD = [(f"{i} {j}", 2 * i, 2 * j, 10.0) for i in range(7) for j in range(7)]


def nodes(path: str) -> Dict[Tuple[float, float], float]:
    """Heights of the nodes of a 2DM file by their offsets from the corner, to the millimetre."""
    rows = [line.split() for line in Path(path).read_text().splitlines() if line.startswith("ND")]
    return {(round(float(x) - EAST, 3), round(float(y) - NORTH, 3)): float(z) for _, _, x, y, z in rows}


def triangles(path: str) -> set:
    """Triangles of a 2DM file by the offsets of their corners."""
    rows = [line.split() for line in Path(path).read_text().splitlines()]
    place = {r[1]: (round(float(r[2]) - EAST, 3), round(float(r[3]) - NORTH, 3)) for r in rows if r[0] == "ND"}
    return {frozenset(place[node] for node in r[2:5]) for r in rows if r[0] == "E3T"}


def edges(path: str) -> set:
    return {frozenset((a, b)) for corners in triangles(path) for a in corners for b in corners if a != b}


def table(kind: str, columns: List[Tuple[str, str]], rows: List[Tuple[str, Dict[str, Any]]]) -> Any:
    """A layer "drawn" in memory: pairs of a geometry as text and its columns."""
    from qgis.core import QgsFeature, QgsGeometry

    layer = memory_layer(kind, [], "EPSG:25832", "drawn")
    from plugin.processing.versions import field

    layer.dataProvider().addAttributes([field(name, what) for name, what in columns])
    layer.updateFields()
    for text, values in rows:
        feature = QgsFeature(layer.fields())
        feature.setGeometry(QgsGeometry.fromWkt(text))
        for name, value in values.items():
            feature[name] = value
        assert layer.dataProvider().addFeature(feature)
    return layer


def at(east: float, north: float, *height: float) -> str:
    return " ".join(str(value) for value in (EAST + east, NORTH + north, *height))


# The rim


def test_a_hollow_outline_and_slivers(run: Any, tmp_path: Path) -> None:
    """An L-shaped field: the circle rule leaves the bay open; without it the bay is bridged."""
    bay = [row for row in FIELD if row[1] <= 4 or row[2] <= 4]
    target = str(tmp_path / "rim.2dm")
    full = run("buildsurface", INPUT=memory_points(bay), OUTPUT=target)
    hollow = run("buildsurface", INPUT=memory_points(bay), MAX_RIM_RADIUS=1.5, OUTPUT=target)
    # of the bay only the triangle in its corner, half a square whose circle has a radius of 1.414 m, stays
    assert hollow["AREA"] == pytest.approx(12 * 4 + 8 * 4 + 2)
    assert full["AREA"] == pytest.approx(12 * 4 + 8 * 4 + 0.5 * 8 * 8)
    # The longest edge of most triangles is the diagonal of a cell, 2.83 m: 0.55 of it is 1.56 m.
    by_passes = run("buildsurface", INPUT=memory_points(bay), MAX_RIM_PASSES=0.55, OUTPUT=target)
    assert by_passes["AREA"] == hollow["AREA"]
    bent = [*FIELD, ("out", 5.0, 12.02, 10.0)]  # makes slivers of 178 degrees on the rim
    kept = run("buildsurface", INPUT=memory_points(bent), OUTPUT=target)
    mended = run("buildsurface", INPUT=memory_points(bent), MAX_RIM_ANGLE=165, OUTPUT=target)
    assert mended["TRIANGLE_COUNT"] < kept["TRIANGLE_COUNT"]


def test_soft_lines_are_edges_at_the_height_of_the_ground(run: Any, tmp_path: Path) -> None:
    """Their Z of 0 is not used, while a line with heights in the other layer is."""
    soft = memory_lines([f"LineStringZ({at(1, 1, 0)}, {at(11, 3, 0)})"])
    hard = memory_lines([f"LineStringZ({at(1, 9, 12)}, {at(11, 9, 12)})"])
    target = str(tmp_path / "soft.2dm")
    run("buildsurface", INPUT=memory_points(FIELD), SOFT_LINES=soft, BREAKLINES=hard, OUTPUT=target)
    there = nodes(target)
    assert there[1, 1] == there[11, 3] == pytest.approx(10.0)
    assert there[1, 9] == there[11, 9] == 12.0
    assert frozenset(((1.0, 9.0), (11.0, 9.0))) in edges(target)


# Faces


def test_a_kerb_is_two_lines(run: Any, tmp_path: Path) -> None:
    kerb = memory_lines([f"LineStringZ({at(1, 5, 10)}, {at(11, 5, 10)})"])
    target = str(tmp_path / "kerb.2dm")
    result = run(
        "buildsurface",
        INPUT=memory_points(FIELD),
        FACES=kerb,
        FACE_HEIGHT=0.12,
        OUTPUT=target,
        LINES="TEMPORARY_OUTPUT",
    )
    there = nodes(target)
    assert there[1, 5] == there[11, 5] == 10.0
    assert there[1, 5.02] == there[11, 5.02] == pytest.approx(10.12)  # left of a line to the east is north
    assert result["LINES"].featureCount() == 2
    wanted = [frozenset(((1.0, n), (11.0, n))) for n in (5.0, 5.02)]
    assert set(wanted) <= edges(target)


def test_faces_with_heights_of_their_own_on_the_other_side(run: Any, tmp_path: Path) -> None:
    rows = [
        (f"LineStringZ({at(1, 5, 10)}, {at(11, 5, 10)})", {"face": -0.5}),
        (f"LineStringZ({at(1, 9, 10)}, {at(11, 9, 10)})", {}),
    ]
    walls = table("LineStringZ", [("face", "real")], rows)
    target = str(tmp_path / "walls.2dm")
    parameters = {"INPUT": memory_points(FIELD), "FACES": walls, "FACE_FIELD": "face", "OUTPUT": target}
    said = message_of(run, "buildsurface", **parameters)
    assert "drawn 2" in said, "the second wall has no height"
    run("buildsurface", **parameters, FACE_HEIGHT=0.3, FACE_SIDE=1, FACE_OFFSET=0.1)
    there = nodes(target)
    assert there[1, 4.9] == pytest.approx(9.5)
    assert there[1, 8.9] == pytest.approx(10.3)


def test_faces_that_cannot_be_made(run: Any, tmp_path: Path) -> None:
    flat = memory_layer("LineString", [f"LineString({at(1, 5)}, {at(11, 5)})"], "EPSG:25832", "flat")
    parameters = {"INPUT": memory_points(FIELD), "OUTPUT": str(tmp_path / "no.2dm")}
    assert "flat 1" in message_of(run, "buildsurface", **parameters, FACES=flat, FACE_HEIGHT=0.1)
    kerb = memory_lines([f"LineStringZ({at(1, 5, 10)}, {at(11, 5, 10)})"])
    assert "other than 0" in message_of(run, "buildsurface", **parameters, FACES=kerb, FACE_HEIGHT=0)
    assert list(tmp_path.iterdir()) == []


# Edits


@pytest.fixture
def drawn(application: Any) -> Dict[str, Any]:
    """Layers of edits: a point to add, one to move, one that does not apply; edges; a polygon."""
    columns = [("edit", "text"), ("height", "real"), ("difference", "real"), ("note", "text")]
    points = [
        (f"PointZ({at(1, 1, 11)})", {"note": "a stone"}),
        (f"PointZ({at(6, 6, 0)})", {"edit": "move_point", "difference": -0.25}),
        (f"PointZ({at(8, 8, 0)})", {"edit": "Move_Point", "height": 12.5}),
        (f"PointZ({at(3, 3.3, 5)})", {"edit": "move_point"}),
    ]
    lines = [
        (f"LineStringZ({at(0, 8, 0)}, {at(4, 10, 0)})", {}),
        (f"LineStringZ({at(8, 2, 0)}, {at(10, 4, 0)})", {}),
    ]
    area = f"Polygon(({at(9.5, 9.5)}, {at(13, 9.5)}, {at(13, 13)}, {at(9.5, 13)}, {at(9.5, 9.5)}))"
    return {
        "EDIT_POINTS": table("PointZ", columns, points),
        "EDIT_LINES": table("LineStringZ", columns, lines),
        "EDIT_AREAS": table("Polygon", columns, [(area, {})]),
    }


def test_drawn_edits_apply_are_kept_and_replayed(run: Any, drawn: Dict[str, Any], tmp_path: Path) -> None:
    target, kept = str(tmp_path / "edited.2dm"), str(tmp_path / "edits.json")
    listener = Listener()
    result = run(
        "buildsurface",
        listener,
        INPUT=memory_points(FIELD),
        **drawn,
        OUTPUT=target,
        EDIT_REPORT="TEMPORARY_OUTPUT",
        EDITS_OUT=kept,
    )
    there = nodes(target)
    assert there[1, 1] == 11.0
    assert there[6, 6] == pytest.approx(9.75)
    assert there[8, 8] == pytest.approx(12.5)
    assert {frozenset(((0.0, 8.0), (4.0, 10.0))), frozenset(((8.0, 2.0), (10.0, 4.0)))} <= edges(target)
    assert result["AREA"] == pytest.approx(12 * 12 - 4)
    assert (result["EDITS_APPLIED"], result["EDITS_MISSED"]) == (6, 1)
    assert any("Edit 4" in warning and "E 500003.000" in warning for warning in listener.warnings)
    told = {f["number"]: f for f in result["EDIT_REPORT"].getFeatures()}
    assert [bool(told[n]["applied"]) for n in range(1, 8)] == [True, True, True, False, True, True, True]
    assert told[1]["note"] == "a stone"
    assert "does not apply" in told[4]["text"]
    place = told[4].geometry().asPoint()
    assert (place.x() - EAST, place.y() - NORTH) == pytest.approx((3, 3.3))
    # what was kept is the open format of the core, and gives the same surface without the layers
    assert [row["edit"] for row in json.loads(Path(kept).read_text())["edits"]] == [
        "add_point", "move_point", "move_point", "move_point", "force_edge", "force_edge", "drop_triangles"
    ]  # fmt: skip
    again = str(tmp_path / "again.2dm")
    run("buildsurface", INPUT=memory_points(FIELD), EDITS=kept, OUTPUT=again)
    assert Path(again).read_bytes() == Path(target).read_bytes()
    # a point within reach is moved after all
    wide = run("buildsurface", INPUT=memory_points(FIELD), EDITS=kept, EDIT_REACH=1.5, OUTPUT=again)
    assert wide["EDITS_MISSED"] == 0 or nodes(again)[2, 4] != 10.0


def test_edges_swapped_and_triangles_taken_and_given_back(run: Any, tmp_path: Path) -> None:
    field = memory_points(FIELD)
    plain, target = str(tmp_path / "plain.2dm"), str(tmp_path / "edited.2dm")
    run("buildsurface", INPUT=field, OUTPUT=plain)
    square = ((4.0, 4.0), (6.0, 4.0), (6.0, 6.0), (4.0, 6.0))
    one, other = frozenset((square[0], square[2])), frozenset((square[1], square[3]))
    before, after = (one, other) if one in edges(plain) else (other, one)
    a, b = sorted(before)
    swap = table("LineString", [("edit", "text")], [(f"LineString({at(*a)}, {at(*b)})", {"edit": "swap_edge"})])
    run("buildsurface", INPUT=field, EDIT_LINES=swap, OUTPUT=target)
    assert after in edges(target)
    assert before not in edges(target)
    point = [(f"Point({at(5, 5)})", {"edit": "swap_edge"}), (f"Point({at(0.5, 0.1)})", {"edit": "remove_triangle"})]
    layer = table("Point", [("edit", "text")], point)
    result = run("buildsurface", INPUT=field, EDIT_POINTS=layer, OUTPUT=target)
    assert after in edges(target)
    assert result["TRIANGLE_COUNT"] == 71
    void = memory_layer("Polygon", [f"Polygon(({at(4, 4)}, {at(6, 4)}, {at(6, 6)}, {at(4, 6)}, {at(4, 4)}))"],
                        "EPSG:25832", "void")  # fmt: skip
    gone = run("buildsurface", INPUT=field, VOIDS=void, OUTPUT=target)["TRIANGLE_COUNT"]
    corner = next(c for c in triangles(plain) if c < set(square))
    ring = ", ".join(at(*place) for place in (*corner, next(iter(corner))))
    back = table("Polygon", [("edit", "text")], [(f"Polygon(({ring}))", {"edit": "add_triangle"})])
    result = run("buildsurface", INPUT=field, VOIDS=void, EDIT_AREAS=back, OUTPUT=target)
    assert (gone, result["TRIANGLE_COUNT"]) == (70, 71)


def test_edits_that_cannot_be_read(run: Any, tmp_path: Path) -> None:
    parameters = {"INPUT": memory_points(FIELD), "OUTPUT": str(tmp_path / "no.2dm")}
    odd = table("PointZ", [("edit", "text")], [(f"PointZ({at(1, 1, 5)})", {"edit": "remove_pont"})])
    said = message_of(run, "buildsurface", **parameters, EDIT_POINTS=odd)
    for word in ("drawn 1", "remove_pont", "remove_triangle"):
        assert word in said
    bare = memory_layer("Point", [f"Point({at(1, 1)})"], "EPSG:25832", "bare")
    assert "bare 1" in message_of(run, "buildsurface", **parameters, EDIT_POINTS=bare)
    text = table("PointZ", [("height", "text")], [(f"PointZ({at(1, 1, 5)})", {"height": "high"})])
    assert "high" in message_of(run, "buildsurface", **parameters, EDIT_POINTS=text)
    file = tmp_path / "edits.json"
    file.write_text('{"format": "hummock edits",\n "version": 1,\n "edits": [\n  {"edit": "wave"}\n ]}')
    said = message_of(run, "buildsurface", **parameters, EDITS=str(file))
    for word in ("edits.json", "line 4", "wave"):
        assert word in said
    assert not (tmp_path / "no.2dm").exists()


def test_the_report_of_edits_loads_dressed(project: Any, drawn: Dict[str, Any], tmp_path: Path) -> None:
    import processing
    from qgis.core import QgsProject

    parameters = {
        "INPUT": memory_points(FIELD),
        **drawn,
        "OUTPUT": str(tmp_path / "edited.2dm"),
        "EDIT_REPORT": str(tmp_path / "report.gpkg"),
        "LOAD": False,
    }
    processing.runAndLoadResults("hummock:buildsurface", parameters, feedback=Listener().feedback)
    (layer,) = QgsProject.instance().mapLayers().values()
    assert [rule.label() for rule in layer.renderer().rootRule().children()] == ["Applied", "Not applied"]
    assert layer_of(str(tmp_path / "report.gpkg")).featureCount() == 7


# How codes are written


def coded(rows: List[Tuple[float, float, Dict[str, str]]]) -> Any:
    columns = [("code", "text"), ("nr", "text"), ("what", "text")]
    points = [(f"PointZ({at(2 * i, 2 * j, 10.0)})", {"code": "GR"}) for i in range(7) for j in range(7)]
    points += [(f"PointZ({at(east, north, 10.5)})", values) for east, north, values in rows]
    return table("PointZ", columns, points)


def has_line(path: str) -> bool:
    return frozenset({(1.0, 5.1), (11.0, 5.3)}) in edges(path)


def test_line_number_and_words_from_fields_of_their_own(run: Any, tmp_path: Path) -> None:
    """Two lines that are only told apart by the number in its field, with words of another language."""
    target = str(tmp_path / "codes.2dm")
    points = coded(
        [
            (1.0, 5.1, {"code": "BL", "nr": "1", "what": "ANFANG"}),
            (3.0, 1.1, {"code": "BL", "nr": "2", "what": "ANFANG"}),
            (11.0, 5.3, {"code": "BL", "nr": "1", "what": "ENDE"}),
            (9.0, 0.9, {"code": "BL", "nr": "2", "what": "ENDE"}),
        ]
    )
    run("buildsurface", INPUT=points, OUTPUT=target)
    assert not has_line(target)
    run(
        "buildsurface", INPUT=points, OUTPUT=target,
        LINE_NUMBER_FIELD="nr", WORD_FIELD="what", CODE_WORDS="ANFANG,ENDE,,",
    )  # fmt: skip
    assert has_line(target)


def test_codes_by_a_pattern(run: Any, tmp_path: Path) -> None:
    target = str(tmp_path / "pattern.2dm")
    points = coded([(1.0, 5.1, {"code": "7:BL"}), (11.0, 5.3, {"code": "7:BL"})])
    run("buildsurface", INPUT=points, OUTPUT=target)
    assert not has_line(target)
    run("buildsurface", INPUT=points, OUTPUT=target, CODE_PATTERN="((?P<line>[0-9]+):)?(?P<code>[A-Z]+)")
    assert has_line(target)


@pytest.mark.parametrize(
    ("option", "value", "said"),
    [("CODE_WORDS", "B,E", "must be four"), ("CODE_PATTERN", "(", "cannot be used"), ("CODE_PATTERN", "x", "code")],
)
def test_a_convention_that_cannot_work_is_one_line(
    run: Any, tmp_path: Path, option: str, value: str, said: str
) -> None:
    text = message_of(run, "buildsurface", INPUT=coded([]), OUTPUT=str(tmp_path / "x.2dm"), **{option: value})
    assert said in text
    assert "\n" not in text.strip()


# The same lines in the main job


def test_drawn_lines_give_the_same_mesh_as_in_the_main_job(run: Any, tmp_path: Path) -> None:
    """Boundary with a hole, voids, a breakline with heights and one laid on the surface: byte by byte."""
    from plugin.core.contours.lines import ContourOptions
    from plugin.core.job.run import run_job
    from plugin.core.job.settings import JobSettings

    rows = [(name, e + 0.013 * i, n, h + 0.1 * (i % 5)) for i, (name, e, n, h) in enumerate(FIELD)]
    survey = tmp_path / "field.csv"
    told = [f"{name},{EAST + e:.3f},{NORTH + n:.3f},{h:.3f}" for name, e, n, h in rows]
    survey.write_text("\n".join(["name,easting,northing,height", *told]) + "\n")
    shapes = {
        "boundary": ("Polygon", [[(0.7, 0.9), (13.3, 1.1), (10.9, 11.2), (0.8, 10.7), (0.7, 0.9)],
                                 [(5.1, 5.2), (6.3, 5.3), (6.1, 6.4), (5.1, 5.2)]]),
        "voids": ("Polygon", [[(7.1, 7.2), (9.3, 7.4), (9.1, 9.5), (7.1, 7.2)]]),
        "breaklines": ("LineString", [(1.1, 3.3, 10.7), (4.4, 3.5, 10.9), (9.7, 3.1, 10.8)]),
        "soft_lines": ("LineString", [(1.5, 8.3), (4.7, 4.6), (10.9, 4.4)]),
    }  # fmt: skip
    files, layers = {}, {}
    for name, (kind, coordinates) in shapes.items():
        rings = coordinates if kind == "Polygon" else [coordinates]
        moved = [[[EAST + e, NORTH + n, *z] for e, n, *z in ring] for ring in rings]
        system = {"type": "name", "properties": {"name": "EPSG:25832"}}
        geometry = {"type": kind, "coordinates": moved if kind == "Polygon" else moved[0], "crs": system}
        files[name] = tmp_path / f"{name}.geojson"
        files[name].write_text(json.dumps(geometry))
        texts = ["(" + ", ".join(" ".join(map(str, place)) for place in ring) + ")" for ring in moved]
        text = f"({', '.join(texts)})" if kind == "Polygon" else texts[0]
        deep = "Z" if name == "breaklines" else ""
        layers[name.upper()] = memory_layer(kind + deep, [f"{kind}{deep}{text}"], "EPSG:25832", name)
    settings = JobSettings(
        survey, tmp_path / "job", ContourOptions(0.5), "EPSG:25832", check=False, find_lines=False, **files
    )
    result = run_job(settings)
    target = tmp_path / "surface.2dm"
    made = run("buildsurface", INPUT=memory_points(rows), OUTPUT=str(target), **layers)
    assert made["TRIANGLE_COUNT"] == result.surface.report.triangles
    assert made["AREA"] == result.surface.tin.plan_area
    assert target.read_bytes() == (tmp_path / "job" / "surface.2dm").read_bytes()
