"""The algorithms about water, on ground whose answers are known and on the demo."""

from __future__ import annotations

import json
import math
import re
from pathlib import Path
from typing import Any, Callable, Dict, List, Sequence, Tuple

import pytest
from in_qgis import DEMO, Listener, Profile, layer_of, memory_layer, message_of

EAST, NORTH = 500000.0, 5700000.0
Corner = Tuple[float, float, float]


def write_mesh(path: Path, corners: Sequence[Corner], triangles: Sequence[Tuple[int, int, int]]) -> str:
    """A 2DM of corners at offsets in metres, counter-clockwise triangles, and its .prj."""
    lines = ["MESH2D"]
    lines += [f"E3T {i} {a + 1} {b + 1} {c + 1} 1" for i, (a, b, c) in enumerate(triangles, 1)]
    lines += [f"ND {i} {EAST + x:.4f} {NORTH + y:.4f} {z:.9f}" for i, (x, y, z) in enumerate(corners, 1)]
    path.write_text("\n".join(lines) + "\n")
    from qgis.core import QgsCoordinateReferenceSystem

    path.with_suffix(".prj").write_text(QgsCoordinateReferenceSystem("EPSG:25832").toWkt())
    return str(path)


def squares(path: Path, height: Callable[[float, float], float], side: int = 20, step: int = 1) -> str:
    """A square of ``side`` metres in squares of ``step``, each cut by a diagonal."""
    count = side // step + 1
    corners = [(step * i, step * j, height(step * i, step * j)) for j in range(count) for i in range(count)]
    triangles = []
    for j in range(count - 1):
        for i in range(count - 1):
            a = j * count + i
            triangles += [(a, a + 1, a + count + 1), (a, a + count + 1, a + count)]
    return write_mesh(path, corners, triangles)


def plane(x: float, y: float) -> float:
    return 100 + 0.10 * x + 0.05 * y


@pytest.fixture(scope="module")
def plane_mesh(tmp_path_factory: pytest.TempPathFactory) -> str:
    return squares(tmp_path_factory.mktemp("plane") / "plane.2dm", plane)


#: A pyramid of water 1 m deep under a square brim of 10 m, from which the ground falls outward by 0.1 to all sides.
PYRAMID = [
    (10, 10, 0),
    (5, 5, 1),
    (15, 5, 1),
    (15, 15, 1),
    (5, 15, 1),
    (0, 0, 0.5),
    (20, 0, 0.5),
    (20, 20, 0.5),
    (0, 20, 0.5),
]
FACES = [
    (0, 1, 2), (0, 2, 3), (0, 3, 4), (0, 4, 1),
    (5, 6, 2), (5, 2, 1), (6, 7, 3), (6, 3, 2), (7, 8, 4), (7, 4, 3), (8, 5, 1), (8, 1, 4),
]  # fmt: skip


@pytest.fixture(scope="module")
def basin(tmp_path_factory: pytest.TempPathFactory) -> str:
    return write_mesh(tmp_path_factory.mktemp("basin") / "basin.2dm", PYRAMID, FACES)


@pytest.fixture(scope="module")
def filled(tmp_path_factory: pytest.TempPathFactory) -> str:
    """The same ground with the basin filled to a low hill."""
    corners = [(10, 10, 1.2), *PYRAMID[1:]]
    return write_mesh(tmp_path_factory.mktemp("filled") / "filled.2dm", corners, FACES)


def points(places: Sequence[Tuple[float, float]], crs: str = "EPSG:25832", fields: str = "") -> Any:
    return memory_layer(f"Point{fields}", [f"Point({EAST + x} {NORTH + y})" for x, y in places], crs, "places")


def rows(source: Any) -> List[Any]:
    return list(layer_of(source).getFeatures())


def named(layer: Any, names: Sequence[str]) -> Any:
    """The layer with a field name."""
    from plugin.processing.versions import field

    layer.dataProvider().addAttributes([field("name", "text")])
    layer.updateFields()
    index = layer.fields().indexOf("name")
    changes = {feature.id(): {index: name} for feature, name in zip(layer.getFeatures(), names)}
    layer.dataProvider().changeAttributeValues(changes)
    return layer


# Paths


def test_a_path_down_a_plane(run: Any, plane_mesh: str) -> None:
    result = run(
        "flowpaths", INPUT=plane_mesh, STARTS=points([(12, 12), (50, 50)]), OUTPUT="TEMPORARY_OUTPUT",
        PLACES="TEMPORARY_OUTPUT",
    )  # fmt: skip
    (path,) = rows(result["OUTPUT"])
    line = path.geometry().constGet()
    first, last = line.startPoint(), line.endPoint()
    assert (first.x() - EAST, first.y() - NORTH, first.z()) == pytest.approx((12, 12, plane(12, 12)), abs=1e-7)
    assert (last.x() - EAST, last.y() - NORTH, last.z()) == pytest.approx((0, 6, plane(0, 6)), abs=1e-7)
    assert path["end"] == "rim"
    assert path["length_m"] == pytest.approx(math.hypot(12, 6), abs=1e-7)
    assert path["drop_m"] == pytest.approx(1.5, abs=1e-7)
    assert path["slope_pct"] == pytest.approx(100 * math.hypot(0.1, 0.05), abs=1e-6)
    assert (result["PATHS"], result["TO_RIM"], result["OFF_SURFACE"]) == (1, 1, 1)
    assert [place["end"] for place in rows(result["PLACES"])] == ["rim", "outside"]


def test_starts_along_lines_and_in_areas(run: Any, plane_mesh: str) -> None:
    listener = Listener()
    line = f"LineString({EAST + 4} {NORTH + 16}, {EAST + 16} {NORTH + 16})"
    lines = memory_layer("LineString", [line, ""], "EPSG:25832", "lines")
    result = run("flowpaths", listener, INPUT=plane_mesh, STARTS=lines, SPACING=4, OUTPUT="TEMPORARY_OUTPUT")
    starts = [row.geometry().constGet().startPoint().x() - EAST for row in rows(result["OUTPUT"])]
    assert starts == pytest.approx([4, 8, 12, 16])
    assert any("left out: 1" in text for text in listener.warnings)
    ring = ", ".join(f"{EAST + x} {NORTH + y}" for x, y in [(4, 4), (11, 4), (11, 11), (4, 11), (4, 4)])
    area = memory_layer("Polygon", [f"Polygon(({ring}))"], "EPSG:25832", "area")
    inside = run("flowpaths", INPUT=plane_mesh, STARTS=area, SPACING=5, OUTPUT="TEMPORARY_OUTPUT")
    assert {row["feature"] for row in rows(inside["OUTPUT"])} == {1}
    assert inside["PATHS"] == 4  # at (5, 5), (10, 5), (5, 10), (10, 10)
    everywhere = run("flowpaths", INPUT=plane_mesh, SPACING=5, OUTPUT="TEMPORARY_OUTPUT")
    assert everywhere["TO_RIM"] == 25
    assert everywhere["PATHS"] == 24  # the lowest corner has no way down


def test_starts_in_another_crs(run: Any, plane_mesh: str) -> None:
    from qgis.core import QgsCoordinateReferenceSystem, QgsCoordinateTransform, QgsPointXY, QgsProject

    systems = [QgsCoordinateReferenceSystem(code) for code in ("EPSG:25832", "EPSG:4258")]
    place = QgsCoordinateTransform(*systems, QgsProject.instance()).transform(QgsPointXY(EAST + 12, NORTH + 12))
    starts = memory_layer("Point", [f"Point({place.x():.12f} {place.y():.12f})"], "EPSG:4258", "degrees")
    result = run("flowpaths", INPUT=plane_mesh, STARTS=starts, OUTPUT="TEMPORARY_OUTPUT")
    (path,) = rows(result["OUTPUT"])
    assert path["length_m"] == pytest.approx(math.hypot(12, 6), abs=1e-4)


def test_paths_end_in_ponds_inlets_or_pass_them(run: Any, basin: str) -> None:
    start = points([(12, 10.5)])
    plain = {"INPUT": basin, "STARTS": start, "OUTPUT": "TEMPORARY_OUTPUT"}
    (path,) = rows(run("flowpaths", **plain, SIGMA=0.0)["OUTPUT"])
    assert (path["end"], path["ends_in"]) == ("pond", "P1")
    assert path["drop_m"] == pytest.approx(0.4, abs=1e-7)  # 2 m from the middle at 1 in 5
    (path,) = rows(run("flowpaths", **plain, SIGMA=0.0, HOLLOWS=1)["OUTPUT"])
    assert path["end"] == "rim"
    (path,) = rows(run("flowpaths", **plain, SIGMA=1.0)["OUTPUT"])
    assert path["end"] == "rim", "a hollow of 1 m is noise where heights are good to 1 m"
    (path,) = rows(run("flowpaths", **plain, SIGMA=1.0, HOLLOWS=2)["OUTPUT"])
    assert (path["end"], path["ends_in"]) == ("pit", "")
    inlet = named(points([(10, 10)]), ["Gully"])
    starts = points([(2, 10), (4, 10)])
    result = run("flowpaths", INPUT=basin, STARTS=starts, INLETS=inlet, OUTPUT="TEMPORARY_OUTPUT")
    assert [row["end"] for row in rows(result["OUTPUT"])] == ["rim", "rim"]
    assert run("flowpaths", **plain, INLETS=inlet)["TO_INLETS"] == 1


def test_arrows_down_a_plane(run: Any, plane_mesh: str) -> None:
    result = run("flowarrows", INPUT=plane_mesh, SPACING=4, WINDOW=0, OUTPUT="TEMPORARY_OUTPUT")
    arrows = rows(result["OUTPUT"])
    assert len(arrows) == result["ARROWS"] == 36
    for arrow in arrows:
        assert arrow["direction"] == pytest.approx(math.degrees(math.atan2(-0.1, -0.05)) % 360, abs=1e-6)
        assert arrow["slope_pct"] == pytest.approx(100 * math.hypot(0.1, 0.05), abs=1e-6)


# Ponds


def test_a_pyramid_of_water(run: Any, basin: str, tmp_path: Path) -> None:
    page = tmp_path / "ponds.html"
    result = run(
        "ponds", INPUT=basin, SIGMA=0.01, OUTPUT="TEMPORARY_OUTPUT", PITS="TEMPORARY_OUTPUT", SPILLS="TEMPORARY_OUTPUT",
        HTML=str(page),
    )  # fmt: skip
    (pond,) = rows(result["OUTPUT"])
    assert pond["depth_m"] == pytest.approx(1, abs=1e-9)
    assert pond["area_m2"] == pytest.approx(100, abs=1e-9)
    assert pond["volume_m3"] == pytest.approx(100 / 3, abs=1e-9)
    assert pond["level"] == pytest.approx(1, abs=1e-9)
    assert pond["sigma_m"] == pytest.approx(0.01 * math.sqrt(2), abs=1e-12)
    assert (pond["pond"], pond["spills_to"]) == ("P1", "rim")
    assert pond["chance_pct"] < 1
    assert pond.geometry().area() == pytest.approx(100, abs=1e-6)
    assert pond.geometry().isGeosValid()
    places = {row["kind"]: row.geometry().constGet() for row in rows(result["PITS"])}
    assert (places["pit"].x() - EAST, places["pit"].z()) == pytest.approx((10, 0))
    assert places["spill"].z() == pytest.approx(1)
    (spill,) = rows(result["SPILLS"])
    assert spill["drop_m"] == pytest.approx(0.5)
    assert (result["PONDS"], result["PIT_COUNT"]) == (1, 1)
    assert result["VOLUME"] == pytest.approx(100 / 3)
    text = page.read_text(encoding="utf-8")
    assert "33.33" in text
    assert "no drainage design" in text


def test_noise_makes_no_ponds(run: Any, basin: str, tmp_path: Path) -> None:
    page = tmp_path / "ponds.html"
    result = run("ponds", INPUT=basin, SIGMA=0.5, OUTPUT="TEMPORARY_OUTPUT", HTML=str(page))
    assert (result["PONDS"], result["PIT_COUNT"], result["VOLUME"]) == (0, 1, 0)
    assert "There is no pond" in page.read_text(encoding="utf-8")
    assert run("ponds", INPUT=basin, SIGMA=0.5, CHANCE=100, OUTPUT="TEMPORARY_OUTPUT")["PONDS"] == 1
    assert run("ponds", INPUT=basin, SIGMA=0, MIN_DEPTH=1.01, OUTPUT="TEMPORARY_OUTPUT")["PONDS"] == 0


def test_an_inlet_drains_the_pond(run: Any, basin: str) -> None:
    inlet = points([(10, 10)])
    assert run("ponds", INPUT=basin, SIGMA=0, INLETS=inlet, OUTPUT="TEMPORARY_OUTPUT")["PONDS"] == 0


def test_parts_of_a_pond_name_it(run: Any, tmp_path: Path) -> None:
    """Two pits in a trough: each 0.4 and 0.3 deep to the sill between them, 0.2 more to the brim of both."""
    bed = {4: -0.6, 5: -0.2, 6: -0.5}

    def height(x: float, y: float) -> float:
        away = max(abs(x - 5), abs(y - 5))
        return bed.get(int(x), 0.0) if y == 5 else -0.05 * away * (away > 3)

    mesh = squares(tmp_path / "trough.2dm", height, side=10)
    result = run("ponds", INPUT=mesh, SIGMA=0, OUTPUT="TEMPORARY_OUTPUT")
    ponds = {row["pond"]: row for row in rows(result["OUTPUT"])}
    outer = next(row for row in ponds.values() if not row["parent"])
    parts = [row for row in ponds.values() if row["parent"]]
    assert outer["depth_m"] == pytest.approx(0.6)
    assert sorted(row["depth_m"] for row in parts) == pytest.approx([0.3, 0.4])
    assert {row["parent"] for row in parts} == {outer["pond"]}
    assert {row["spills_to"] for row in parts} == {row["pond"] for row in parts}
    assert result["VOLUME"] == pytest.approx(outer["volume_m3"])


# Catchments


def test_catchments_divide_the_whole_site(run: Any, basin: str, tmp_path: Path) -> None:
    page = tmp_path / "water.html"
    result = run("catchments", INPUT=basin, SIGMA=0.01, OUTPUT="TEMPORARY_OUTPUT", HTML=str(page))
    found = {row["drains_to"]: row for row in rows(result["OUTPUT"])}
    assert found["pond"]["area_m2"] == pytest.approx(100, abs=1e-9)
    assert found["pond"]["nowhere_pct"] == pytest.approx(100)
    assert sum(row["area_m2"] for row in rows(result["OUTPUT"])) == pytest.approx(400, abs=1e-9)
    assert sum(row.geometry().area() for row in rows(result["OUTPUT"])) == pytest.approx(400, abs=1e-6)
    assert result["NOWHERE"] == pytest.approx(100, abs=1e-9)
    text = page.read_text(encoding="utf-8")
    assert "25.0 % of the site, drain nowhere" in text
    assert "whole site" in text
    full = run("catchments", INPUT=basin, SIGMA=0.01, HOLLOWS=1, OUTPUT="TEMPORARY_OUTPUT")
    assert {row["drains_to"] for row in rows(full["OUTPUT"])} <= {"outlet", "rim"}
    assert full["NOWHERE"] == pytest.approx(100, abs=1e-9), "only once the pond is full"


def test_inlets_share_a_roof(run: Any, tmp_path: Path) -> None:
    """Two planes from a ridge at x = 8 down to gutters at both sides that fall to inlets at y = 0."""

    def roof(x: float, y: float) -> float:
        return 10 - 0.2 * abs(x - 8) + 0.02 * y

    mesh = squares(tmp_path / "roof.2dm", roof)
    west, east = (f"LineString({EAST + x} {NORTH}, {EAST + x} {NORTH + 20})" for x in (0, 20))
    gutters = named(memory_layer("LineString", [west, east], "EPSG:25832", "gutters"), ["West", "East"])
    result = run(
        "catchments", INPUT=mesh, INLETS=gutters, REACH=0, MIN_OUTLET=1e6, OUTPUT="TEMPORARY_OUTPUT",
        CHANNELS="TEMPORARY_OUTPUT", RIDGES="TEMPORARY_OUTPUT",
    )  # fmt: skip
    areas = {row["name"]: row["area_m2"] for row in rows(result["OUTPUT"])}
    # On its way down each side, 8 and 12 m wide, water runs a tenth of that to the south and leaves below the gutter.
    assert areas["West"] == pytest.approx(160 - 8 * 0.8 / 2, abs=1.5)
    assert areas["East"] == pytest.approx(240 - 12 * 1.2 / 2, abs=1.5)
    assert sum(areas.values()) == pytest.approx(400, abs=1e-9)


def test_catchments_along_a_line(run: Any, plane_mesh: str) -> None:
    """Stretches of a line across a plane that falls to the west; every stretch but the last has a strip of its own."""
    line = f"LineString({EAST + 5} {NORTH + 1}, {EAST + 5} {NORTH + 19})"
    layer = named(memory_layer("LineString", [line], "EPSG:25832", "line"), ["Drain"])
    result = run(
        "catchments", INPUT=plane_mesh, INLETS=layer, STRETCH=6, REACH=0, MIN_OUTLET=1e6, OUTPUT="TEMPORARY_OUTPUT"
    )
    found = {row["name"]: row["area_m2"] for row in rows(result["OUTPUT"])}
    assert {"Drain 0 m", "Drain 6 m", "Drain 12 m", "Drain 18 m"} <= set(found)
    # 6 m along the drain times the 15 m above it, less what the slope to the south takes off at the north rim.
    assert found["Drain 6 m"] == pytest.approx(6 * 15, abs=8)
    assert sum(found.values()) == pytest.approx(400, abs=1e-9)


def test_names_and_inlets_off_the_surface(run: Any, basin: str) -> None:
    listener = Listener()
    inlets = named(points([(10, 10), (500, 500)]), ["Soakaway", "Far away"])
    result = run("catchments", listener, INPUT=basin, INLETS=inlets, OUTPUT="TEMPORARY_OUTPUT")
    found = {row["name"]: row for row in rows(result["OUTPUT"])}
    assert found["Soakaway"]["area_m2"] == pytest.approx(100, abs=1e-9)
    assert (found["Soakaway"]["out_x"] - EAST, found["Soakaway"]["out_y"] - NORTH) == pytest.approx((10, 10))
    assert any("Far away" in text for text in listener.warnings)


# Flat ground


def test_flat_areas(run: Any, tmp_path: Path) -> None:
    def height(x: float, y: float) -> float:
        return 0.005 * x if x <= 10 else 0.05 + 0.05 * (x - 10)

    mesh = squares(tmp_path / "flat.2dm", height)
    result = run("flatareas", INPUT=mesh, LIMIT=1, WINDOW=0, OUTPUT="TEMPORARY_OUTPUT")
    (area,) = rows(result["OUTPUT"])
    assert area["area_m2"] == pytest.approx(200, abs=1e-9)
    assert area.geometry().area() == pytest.approx(200, abs=1e-6)
    assert result["SHARE"] == pytest.approx(50)
    assert run("flatareas", INPUT=mesh, LIMIT=1, WINDOW=0, MIN_AREA=201, OUTPUT="TEMPORARY_OUTPUT")["AREAS"] == 0


# Peak flow


def rectangle(x: float, y: float, width: float, height: float) -> str:
    corners = [(x, y), (x + width, y), (x + width, y + height), (x, y + height), (x, y)]
    ring = ", ".join(f"{EAST + a:.9f} {NORTH + b:.9f}" for a, b in corners)
    return f"Polygon(({ring}))"


def areas(texts: Sequence[str]) -> Any:
    return memory_layer("Polygon", texts, "EPSG:25832", "areas")


def with_number(layer: Any, name: str, values: Sequence[Any]) -> Any:
    from plugin.processing.versions import field

    layer.dataProvider().addAttributes([field(name, "real")])
    layer.updateFields()
    index = layer.fields().indexOf(name)
    changes = {feature.id(): {index: value} for feature, value in zip(layer.getFeatures(), values)}
    layer.dataProvider().changeAttributeValues(changes)
    return layer


def test_peak_flow_in_both_units(run: Any) -> None:
    """The rational method as FHWA's HEC-22 writes it (from memory): Q = C i A / 360 in m³/s, mm/h and hectares."""
    listener = Listener()
    plain = {"INPUT": areas([rectangle(0, 0, 200, 100)]), "RUNOFF": 0.6, "OUTPUT": "TEMPORARY_OUTPUT"}
    (row,) = rows(run("peakflow", listener, **plain, INTENSITY=50)["OUTPUT"])
    assert row["flow"] == pytest.approx(0.6 * 50 * 2 / 360 * 1000)
    assert (row["flow_unit"], row["area_unit"], row["intensity_unit"]) == ("l/s", "ha", "mm/h")
    assert row["area"] == pytest.approx(2)
    assert any("indication" in text for text in listener.warnings)
    assert any("Kuichling 1889" in text for text in listener.infos)
    acre = 4046.8564224
    plain["INPUT"] = areas([rectangle(0, 0, 5 * acre / 100, 100)])
    (row,) = rows(run("peakflow", **plain, UNITS=1, INTENSITY=2)["OUTPUT"])
    assert row["flow"] == pytest.approx(1.00833 * 0.6 * 2 * 5, rel=1e-5)  # one acre inch an hour in ft³/s
    assert (row["flow_unit"], row["area_unit"], row["intensity_unit"]) == ("ft³/s", "acre", "in/h")


def test_coefficients_from_fields_and_ground_cover(run: Any) -> None:
    catchments = with_number(areas([rectangle(0, 0, 100, 100), rectangle(100, 0, 100, 100)]), "c", [0.5, None])
    plain = {"INPUT": catchments, "INTENSITY": 36, "OUTPUT": "TEMPORARY_OUTPUT"}
    found = rows(run("peakflow", **plain, RUNOFF=0.2, RUNOFF_FIELD="c")["OUTPUT"])
    assert [row["flow"] for row in found] == pytest.approx([50, 20])  # 36 mm/h on a hectare is 100 l/s
    cover = with_number(areas([rectangle(-50, 0, 100, 100), rectangle(50, 0, 75, 100)]), "k", [0.9, 0.3])
    found = rows(run("peakflow", **plain, RUNOFF=0.2, COVER=cover, COVER_FIELD="k")["OUTPUT"])
    assert [row["runoff"] for row in found] == pytest.approx([0.6, 0.25 * 0.3 + 0.75 * 0.2])
    cover = with_number(areas([rectangle(0, 0, 100, 100), rectangle(50, 0, 75, 100)]), "k", [0.9, 0.3])
    assert "overlaps" in message_of(run, "peakflow", **plain, RUNOFF=0.2, COVER=cover, COVER_FIELD="k")
    assert "no runoff coefficient for 1" in message_of(run, "peakflow", **plain, RUNOFF_FIELD="c")
    assert "no intensity" in message_of(run, "peakflow", INPUT=catchments, RUNOFF=0.2, OUTPUT="TEMPORARY_OUTPUT")


def test_degrees_are_no_area(run: Any) -> None:
    layer = memory_layer("Polygon", ["Polygon((9 51, 9.1 51, 9.1 51.1, 9 51))"], "EPSG:4326", "degrees")
    said = message_of(run, "peakflow", INPUT=layer, RUNOFF=0.5, INTENSITY=10, OUTPUT="TEMPORARY_OUTPUT")
    assert "EPSG:4326" in said or "WGS 84" in said


# A change


def test_filling_a_basin(run: Any, basin: str, filled: str, tmp_path: Path) -> None:
    page = tmp_path / "change.html"
    plain = {"OUTPUT": "TEMPORARY_OUTPUT", "MOVED": "TEMPORARY_OUTPUT", "PATHS": "TEMPORARY_OUTPUT", "SIGMA": 0.01}
    result = run(
        "waterchange", INPUT=basin, DESIGN=filled, **plain, SPACING=4, HTML=str(page), AREAS="TEMPORARY_OUTPUT"
    )
    table = {row["drains_to"]: (row["before_m2"], row["after_m2"], row["change_m2"]) for row in rows(result["AREAS"])}
    assert table["pond"] == pytest.approx((100, 0, -100))
    assert table["rim"] == pytest.approx((300, 400, 100))
    (pond,) = rows(result["OUTPUT"])
    assert (pond["change"], pond["before"]) == ("gone", "P1")
    assert pond["depth_m"] == pytest.approx(-1)
    assert pond["volume_m3"] == pytest.approx(-100 / 3)
    assert (result["NEW"], result["GONE"], result["CHANGED"]) == (0, 1, 0)
    assert result["VOLUME"] == pytest.approx(-100 / 3)
    (moved,) = rows(result["MOVED"])
    assert (moved["from_what"], moved["to_what"]) == ("pond", "rim")
    assert moved["area_m2"] == pytest.approx(100, abs=1e-6)
    assert moved.geometry().area() == pytest.approx(100, abs=1e-6)
    when = [row["when"] for row in rows(result["PATHS"])]
    assert set(when) == {"before", "after"}
    text = page.read_text(encoding="utf-8")
    assert "gone" in text
    assert "neighbour" in text
    back = run("waterchange", INPUT=filled, DESIGN=basin, **plain)
    assert (back["NEW"], back["GONE"]) == (1, 0)
    same = run("waterchange", INPUT=basin, DESIGN=basin, **plain)
    assert rows(same["OUTPUT"])[0]["change"] == "unchanged"
    assert same["MOVED_AREA"] == 0
    assert rows(same["PATHS"]) == []


def test_a_deeper_basin(run: Any, basin: str, tmp_path: Path) -> None:
    deeper = write_mesh(tmp_path / "deeper.2dm", [(10, 10, -0.5), *PYRAMID[1:]], FACES)
    result = run("waterchange", INPUT=basin, DESIGN=deeper, SIGMA=0.01, OUTPUT="TEMPORARY_OUTPUT")
    (pond,) = rows(result["OUTPUT"])
    assert (pond["change"], pond["before"], pond["after"]) == ("deeper", "P1", "P1")
    assert pond["depth_m"] == pytest.approx(0.5)
    assert pond["volume_m3"] == pytest.approx(50 / 3)
    assert result["CHANGED"] == 1


def test_surfaces_that_do_not_belong_together(run: Any, basin: str, tmp_path: Path) -> None:
    away = write_mesh(tmp_path / "away.2dm", [(x + 1000, y, z) for x, y, z in PYRAMID], FACES)
    said = message_of(run, "waterchange", INPUT=basin, DESIGN=away, OUTPUT="TEMPORARY_OUTPUT")
    assert "do not overlap" in said
    from qgis.core import QgsCoordinateReferenceSystem

    other = write_mesh(tmp_path / "other.2dm", PYRAMID, FACES)
    Path(other).with_suffix(".prj").write_text(QgsCoordinateReferenceSystem("EPSG:25833").toWkt())
    said = message_of(run, "waterchange", INPUT=basin, DESIGN=other, OUTPUT="TEMPORARY_OUTPUT")
    assert "EPSG:25833" in said


# What all of them share


def steps(chain: Dict[str, Any]) -> Dict[str, Dict[str, Any]]:
    """Parameters with which each algorithm runs on the demo."""
    plain = {"INPUT": chain["surface"]["OUTPUT"], "OUTPUT": "TEMPORARY_OUTPUT"}
    return {
        "flowpaths": {**plain, "STARTS": f"{DEMO / 'site.gpkg'}|layername=centreline", "SPACING": 5},
        "flowarrows": plain,
        "ponds": {**plain, "PITS": "TEMPORARY_OUTPUT", "SPILLS": "TEMPORARY_OUTPUT"},
        "catchments": {**plain, "CHANNELS": "TEMPORARY_OUTPUT", "RIDGES": "TEMPORARY_OUTPUT"},
        "flatareas": plain,
        "waterchange": {
            **plain, "DESIGN": chain["surface"]["OUTPUT"], "MOVED": "TEMPORARY_OUTPUT", "PATHS": "TEMPORARY_OUTPUT"
        },
    }  # fmt: skip


NAMES = ["flowpaths", "flowarrows", "ponds", "catchments", "flatareas", "waterchange"]


@pytest.mark.parametrize("name", NAMES)
def test_cancelling_leaves_nothing(run: Any, chain: Dict[str, Any], name: str) -> None:
    for at in (0.0, 35.0):
        listener = Listener(cancel_at=at)
        assert "OUTPUT" not in run(name, listener, **steps(chain)[name])
        assert any("Cancelled" in text for text in listener.infos)


@pytest.mark.parametrize("name", NAMES)
def test_progress_goes_forward_to_the_end(run: Any, chain: Dict[str, Any], name: str) -> None:
    listener = Listener()
    run(name, listener, **steps(chain)[name])
    assert listener.progress == sorted(listener.progress)
    assert listener.progress[-1] == pytest.approx(100.0)


@pytest.mark.parametrize("name", NAMES)
def test_a_mesh_that_is_none(run: Any, chain: Dict[str, Any], tmp_path: Path, name: str) -> None:
    from qgis.core import QgsProcessingException

    file = tmp_path / "none.2dm"
    file.write_text("hello\n")
    for path in (str(file), "/nowhere/surface.2dm"):
        with pytest.raises(QgsProcessingException, match=path) as raised:
            run(name, **{**steps(chain)[name], "INPUT": path})
        assert "Traceback" not in str(raised.value)


@pytest.mark.parametrize(
    ("name", "layer"),
    [("flowpaths", "STARTS"), ("flowpaths", "INLETS"), ("ponds", "INLETS"), ("catchments", "INLETS")],
)
def test_a_layer_that_is_missing(run: Any, chain: Dict[str, Any], name: str, layer: str) -> None:
    from qgis.core import QgsProcessingException

    with pytest.raises(QgsProcessingException, match=r"/nowhere/layer\.gpkg not found"):
        run(name, **{**steps(chain)[name], layer: "/nowhere/layer.gpkg"})


def test_a_design_that_is_none(run: Any, basin: str, tmp_path: Path) -> None:
    from qgis.core import QgsProcessingException

    file = tmp_path / "design.2dm"
    file.write_text("hello\n")
    for path in (str(file), "/nowhere/design.2dm"):
        with pytest.raises(QgsProcessingException, match=path):
            run("waterchange", INPUT=basin, DESIGN=path, OUTPUT="TEMPORARY_OUTPUT")


def test_values_that_cannot_work(run: Any, basin: str) -> None:
    plain = {"INPUT": basin, "OUTPUT": "TEMPORARY_OUTPUT"}
    from qgis.core import QgsProcessingException

    for name, values in (
        ("ponds", {"SIGMA": -1}), ("flowarrows", {"SPACING": -1}), ("flatareas", {"LIMIT": -1}),
        ("catchments", {"CHANCE": 101}),
    ):  # fmt: skip
        with pytest.raises(QgsProcessingException) as raised:
            run(name, **plain, **values)
        assert "Traceback" not in str(raised.value)
    empty = memory_layer("Point", [], "EPSG:25832", "empty")
    assert run("flowpaths", **plain, STARTS=empty)["PATHS"] == 0
    assert run("ponds", **plain, INLETS=empty, SIGMA=0)["PONDS"] == 1


def test_the_demo_has_its_basin(run: Any, chain: Dict[str, Any]) -> None:
    """The ditch's end and the infiltration basin hold water; nothing else that noise does not explain."""
    result = run("ponds", **steps(chain)["ponds"])
    assert result["PONDS"] == 2
    assert result["PIT_COUNT"] > 50
    basin = max(rows(result["OUTPUT"]), key=lambda row: row["volume_m3"])
    assert 20 < basin["volume_m3"] < 45
    assert 0.25 < basin["depth_m"] < 0.5


def test_outputs_load_dressed(project: Any, chain: Dict[str, Any], basin: str, filled: str) -> None:
    import processing
    from qgis.core import QgsProject, QgsSymbolLayer

    every = steps(chain)
    every["waterchange"].update(INPUT=basin, DESIGN=filled)
    for name, parameters in every.items():
        processing.runAndLoadResults(f"hummock:{name}", parameters, feedback=Listener().feedback)
    layers = {layer.name(): layer for layer in QgsProject.instance().mapLayers().values()}
    assert {c.value() for c in layers["Paths of water"].renderer().categories()} >= {"rim", "inlet", "pond", "pit"}
    ranges = layers["Arrows of flow"].renderer().ranges()  # held, as is each of the next: PyQt frees what nobody holds
    symbol = ranges[0].symbol()
    arrow = symbol.symbolLayer(0)
    turned = arrow.dataDefinedProperties().property(QgsSymbolLayer.PropertyAngle)
    assert turned.field() == "direction"
    assert "slope_pct" in arrow.dataDefinedProperties().property(QgsSymbolLayer.PropertySize).expressionString()
    assert ranges[-1].label() == "> 10 %"
    ponds = layers["Ponds"]
    assert ponds.renderer().classAttribute() == "depth_m"
    assert ponds.fields().field("volume_m3").alias() == "Volume (m³)"
    assert ponds.labelsEnabled()
    root = layers["Catchments"].renderer().rootRule()
    assert [rule.label() for rule in root.children()] == ["Catchment", "Drains nowhere until full"]
    assert {c.value() for c in layers["Ponds compared"].renderer().categories()} >= {"new", "gone", "deeper"}
    for name in ("Channels", "Ridges", "Flat areas", "Where ponds spill to", "Ground whose water goes elsewhere"):
        assert layers[name].renderer() is not None
        assert layers[name].isValid()


def test_a_model_from_surface_to_peak_flow(project: Any, basin: str, tmp_path: Path) -> None:
    import processing
    from qgis.core import (
        QgsProcessingModelAlgorithm,
        QgsProcessingModelChildAlgorithm,
        QgsProcessingModelChildParameterSource,
        QgsProcessingModelOutput,
        QgsProcessingModelParameter,
        QgsProcessingParameterMeshLayer,
    )

    source = QgsProcessingModelChildParameterSource
    model = QgsProcessingModelAlgorithm("Water", "tests")
    model.addModelParameter(
        QgsProcessingParameterMeshLayer("surface", "Surface"), QgsProcessingModelParameter("surface")
    )
    first = QgsProcessingModelChildAlgorithm("hummock:catchments")
    first.setChildId("catchments")
    first.addParameterSources("INPUT", [source.fromModelParameter("surface")])
    model.addChildAlgorithm(first)
    second = QgsProcessingModelChildAlgorithm("hummock:peakflow")
    second.setChildId("peak")
    second.addParameterSources("INPUT", [source.fromChildOutput("catchments", "OUTPUT")])
    second.addParameterSources("INTENSITY", [source.fromStaticValue(36.0)])
    second.addParameterSources("RUNOFF", [source.fromStaticValue(0.5)])
    final = QgsProcessingModelOutput("flows")
    final.setChildId("peak")
    final.setChildOutputName("OUTPUT")
    second.setModelOutputs({"flows": final})
    model.addChildAlgorithm(second)
    parameters = {"surface": basin, "peak:flows": str(tmp_path / "flows.gpkg")}
    result = processing.run(model, parameters, feedback=Listener().feedback)
    flows = rows(result["peak:flows"])
    assert sum(row["flow"] for row in flows) == pytest.approx(0.5 * 4, rel=1e-6)  # 400 m² of 100 l/s a hectare


def test_through_qgis_process(profile: Profile, basin: str, tmp_path: Path) -> None:
    words = [f"--INPUT={basin}", f"--OUTPUT={tmp_path / 'ponds.gpkg'}", f"--HTML={tmp_path / 'ponds.html'}"]
    ran = profile.qgis_process("--json", "run", "hummock:ponds", *words)
    assert ran.returncode == 0, ran.stdout + ran.stderr
    results = json.loads(ran.stdout)["results"]
    assert results["PONDS"] == 1
    assert layer_of(results["OUTPUT"]).featureCount() == 1
    assert re.search("<h1>Ponds</h1>", (tmp_path / "ponds.html").read_text(encoding="utf-8"))
