"""Files handed over and taken in: by the algorithms, in QGIS."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict

import numpy as np
import pytest
from in_qgis import DEMO, Listener, Profile, layer_of, memory_layer, message_of

from tests.core.landxml_rules import broken_rules

# LandXML


@pytest.fixture(scope="module")
def exchanged(chain: Dict[str, Any], tmp_path_factory: pytest.TempPathFactory) -> Dict[str, Any]:
    """The demo's surface, points, lines and centreline in a LandXML file, and what is read from it."""
    import processing

    folder = tmp_path_factory.mktemp("landxml")
    site = str(DEMO / "site.gpkg")
    parameters = {
        "INPUT": chain["surface"]["OUTPUT"],
        "TITLE": "Ground <1>",
        "POINTS": chain["points"]["OUTPUT"],
        "ALIGNMENT": f"{site}|layername=centreline",
        "START": 100.0,
        "FIT": True,
        "PROJECT": "Pippin & Field",
        "OUTPUT": str(folder / "site.xml"),
    }
    written = processing.run("hummock:exportlandxml", parameters, feedback=Listener().feedback)
    parameters = {
        "INPUT": written["OUTPUT"],
        "FOLDER": str(folder / "back"),
        "POINTS": str(folder / "points.gpkg"),
        "LINES": str(folder / "lines.gpkg"),
        "ALIGNMENTS": str(folder / "alignments.gpkg"),
    }
    return {"written": written, "read": processing.run("hummock:readlandxml", parameters, feedback=Listener().feedback)}


def used_points(chain: Dict[str, Any]) -> Any:
    """The points of the demo that no decision rejects: only they are handed over."""
    layer = layer_of(chain["points"]["OUTPUT"])
    found = list(layer.getFeatures("\"status\" != 'rejected'"))
    assert 0 < len(found) < layer.featureCount()
    return found


def test_the_demo_goes_out_by_the_rules(exchanged: Dict[str, Any], chain: Dict[str, Any]) -> None:
    written = exchanged["written"]
    assert broken_rules(Path(written["OUTPUT"])) == []
    assert written["SURFACES"] == 1
    assert written["FACES"] == chain["surface"]["TRIANGLE_COUNT"]
    assert written["POINT_COUNT"] == len(used_points(chain))
    assert written["ALIGNMENTS"] == 1


def test_the_demo_comes_back_exactly(exchanged: Dict[str, Any], chain: Dict[str, Any]) -> None:
    from plugin.core.handover.mesh import read_2dm

    read = exchanged["read"]
    one, other = read_2dm(chain["surface"]["OUTPUT"]), read_2dm(read["SURFACE"])
    assert Path(read["SURFACE"]).name == "Ground _1_.2dm"
    np.testing.assert_array_equal(one.grid + np.rint(one.origin * 1e4), other.grid + np.rint(other.origin * 1e4))
    np.testing.assert_array_equal(one.triangles, other.triangles)
    np.testing.assert_array_equal(one.vertices[:, 2], other.vertices[:, 2])
    # its rim has become its boundary; breaklines are as before
    np.testing.assert_array_equal(one.edge_kind & 1, other.edge_kind & 1)
    assert ((other.edge_kind & 6) > 0).sum() == (other.neighbours < 0).sum()


def test_points_lines_and_alignments_come_back(exchanged: Dict[str, Any], chain: Dict[str, Any]) -> None:
    read = exchanged["read"]
    points, before = layer_of(read["POINTS"]), used_points(chain)
    assert points.crs().authid() == "EPSG:25832"
    assert points.featureCount() == len(before) == read["POINT_COUNT"]
    for one, other in zip(points.getFeatures(), before):
        assert one["name"] == (other["name"] or "")
        assert one["code"] == (other["code"] or "").strip()
        place, given = one.geometry().constGet(), other.geometry().constGet()
        assert (place.x(), place.y(), place.z()) == pytest.approx((given.x(), given.y(), given.z()), abs=1e-4)
    lines = layer_of(read["LINES"])
    assert {feature["kind"] for feature in lines.getFeatures()} == {"breakline", "boundary", "void"}
    assert {feature["surface"] for feature in lines.getFeatures()} == {"Ground <1>"}
    (line,) = layer_of(read["ALIGNMENTS"]).getFeatures()
    (drawn,) = layer_of(f"{DEMO / 'site.gpkg'}|layername=centreline").getFeatures()
    assert line["start"] == "0+100.00"
    assert line["length_m"] == pytest.approx(drawn.geometry().length(), abs=1e-3)
    assert line["profiles"].startswith("fitted, Ground <1>")
    assert line["heights"] == "fitted"
    heights = [vertex.z() for vertex in line.geometry().vertices()]
    assert any(height == height for height in heights)


def test_a_surface_read_serves_all_that_asks_surfaces(
    run: Any, exchanged: Dict[str, Any], chain: Dict[str, Any]
) -> None:
    """Numbers from the mesh that was read equal those from the mesh that was written."""
    mesh, tools = exchanged["read"]["SURFACE"], {
        "contours": {"INTERVAL": 0.5, "OUTPUT": "TEMPORARY_OUTPUT"},
        "slopemap": {"OUTPUT": "TEMPORARY_OUTPUT"},
        "inspectsurface": {"OUTPUT": "TEMPORARY_OUTPUT"},
        "contoursheet": {"INTERVAL": 0.5, "OUTPUT": "TEMPORARY_OUTPUT"},
        "surfaceraster": {"CELL": 2.0, "OUTPUT": "TEMPORARY_OUTPUT"},
        "thinsurface": {"TOLERANCE": 0.05, "OUTPUT": "TEMPORARY_OUTPUT"},
    }  # fmt: skip
    for name, parameters in tools.items():
        one, other = (
            run(name, INPUT=each, **parameters) for each in (mesh, chain["surface"]["OUTPUT"])
        )  # fmt: skip
        numbers = [
            {key: value for key, value in made.items() if isinstance(value, (int, float))} for made in (one, other)
        ]
        if name != "thinsurface":  # the rim is a boundary now, which thinning holds to
            assert numbers[0] == numbers[1], name


def test_several_surfaces(run: Any, chain: Dict[str, Any], tmp_path: Path) -> None:
    from qgis.core import QgsMeshLayer, QgsProject

    mesh = QgsMeshLayer(chain["surface"]["OUTPUT"], "again", "mdal")
    QgsProject.instance().addMapLayer(mesh)
    out = run(
        "exportlandxml", INPUT=chain["surface"]["OUTPUT"], MORE=[mesh], RIM=False, OUTPUT=str(tmp_path / "two.xml")
    )
    assert out["SURFACES"] == 2
    back = run("readlandxml", INPUT=out["OUTPUT"], FOLDER=str(tmp_path / "back"))
    assert [Path(path).name for path in back["SURFACES"]] == ["surface.2dm", "surface 2.2dm"]
    assert back["SURFACE_COUNT"] == 2


def test_lines_of_layers_take_the_place_of_the_surfaces_own(run: Any, chain: Dict[str, Any], tmp_path: Path) -> None:
    box = layer_of(chain["surface"]["TRIANGLES"]).extent()
    middle = box.center()
    ring = [(-5, -5), (5, -5), (5, 5), (-5, 5), (-5, -5)]
    text = ", ".join(f"{middle.x() + x} {middle.y() + y} 50" for x, y in ring)
    boundary = memory_layer("PolygonZ", [f"PolygonZ(({text}))"], "EPSG:25832", "boundary")
    lines = memory_layer("LineStringZ", [f"LineStringZ({text})"], "EPSG:25832", "lines")
    out = run(
        "exportlandxml",
        INPUT=chain["surface"]["OUTPUT"],
        BOUNDARY=boundary,
        LINES=lines,
        OUTPUT=str(tmp_path / "a.xml"),
    )
    back = run("readlandxml", INPUT=out["OUTPUT"], FOLDER=str(tmp_path / "back"), LINES="TEMPORARY_OUTPUT")
    kinds = sorted(feature["kind"] for feature in back["LINES"].getFeatures() if feature["kind"] != "void")
    assert kinds == ["boundary", "breakline"]


def test_a_file_without_crs_asks_for_it(run: Any, tmp_path: Path) -> None:
    file = tmp_path / "bare.xml"
    file.write_text(
        '<LandXML version="1.2"><Units><Imperial linearUnit="USSurveyFoot"/></Units><Surfaces><Surface name="a/b:c">'
        '<Definition surfType="TIN"><Pnts><P id="1">200000 980000 10</P><P id="2">200000 980100 10</P>'
        '<P id="3">200100 980000 10</P></Pnts><Faces><F>1 2 3</F></Faces></Definition></Surface></Surfaces></LandXML>'
    )
    said = message_of(run, "readlandxml", INPUT=str(file), FOLDER=str(tmp_path / "out"))
    assert "bare.xml" in said
    assert "CRS" in said
    assert not (tmp_path / "out").exists(), "nothing is half loaded"
    out = run("readlandxml", INPUT=str(file), CRS="EPSG:2263", FOLDER=str(tmp_path / "out"))
    assert Path(out["SURFACE"]).name == "a_b_c.2dm"
    node = Path(out["SURFACE"]).read_text().splitlines()[2].split()[2:]
    # in the feet of the CRS again; the surface's grid of 0.1 mm is a third of 0.001 ft
    assert [float(word) for word in node] == pytest.approx([980000.0, 200000.0, 10.0], abs=2e-4)


def test_a_damaged_file_loads_nothing(run: Any, exchanged: Dict[str, Any], tmp_path: Path) -> None:
    raw = Path(exchanged["written"]["OUTPUT"]).read_bytes()
    file = tmp_path / "cut.xml"
    file.write_bytes(raw[: len(raw) // 2])
    said = message_of(
        run, "readlandxml", INPUT=str(file), FOLDER=str(tmp_path / "out"), POINTS=str(tmp_path / "points.gpkg")
    )
    assert "cut.xml" in said
    assert "line" in said
    assert list(tmp_path.iterdir()) == [file]


BOMB = "".join(f"<!ENTITY a{i} '{f'&a{i - 1};' * 10}'>" for i in range(1, 10))


@pytest.mark.parametrize(
    "declared",
    ["<!ENTITY a0 'a'>" + BOMB, "<!ENTITY a9 SYSTEM 'file:///etc/hostname'>"],
    ids=["a bomb", "a file of the machine"],
)
def test_entities_are_refused_in_words(run: Any, exchanged: Dict[str, Any], tmp_path: Path, declared: str) -> None:
    raw = Path(exchanged["written"]["OUTPUT"]).read_text(encoding="utf-8")
    file = tmp_path / "plan.xml"
    raw = raw.replace(' name="', ' name="&a9;').replace("<LandXML ", f"<!DOCTYPE LandXML [{declared}]>\n<LandXML ")
    assert "&a9;" in raw
    file.write_text(raw, encoding="utf-8")
    targets = {name: str(tmp_path / f"{name}.gpkg") for name in ("POINTS", "LINES", "ALIGNMENTS")}
    said = message_of(run, "readlandxml", INPUT=str(file), FOLDER=str(tmp_path / "out"), **targets)
    assert f"{file}, line " in said
    assert "declares a document type or entities" in said
    assert list(tmp_path.iterdir()) == [file], "nothing is half loaded"


def test_other_systems_are_refused(run: Any, chain: Dict[str, Any], tmp_path: Path) -> None:
    points = memory_layer("PointZ", ["PointZ(500000 5700000 1)"], "EPSG:25833", "elsewhere")
    target = tmp_path / "a.xml"
    said = message_of(run, "exportlandxml", INPUT=chain["surface"]["OUTPUT"], POINTS=points, OUTPUT=str(target))
    assert "elsewhere" in said
    assert not target.exists()


def test_landxml_by_qgis_process(profile: Profile, chain: Dict[str, Any], tmp_path: Path) -> None:
    target = tmp_path / "surface.xml"
    ran = profile.qgis_process(
        "run", "hummock:exportlandxml", f"--INPUT={chain['surface']['OUTPUT']}", f"--OUTPUT={target}"
    )
    assert ran.returncode == 0, ran.stdout + ran.stderr
    ran = profile.qgis_process("run", "hummock:readlandxml", f"--INPUT={target}", f"--FOLDER={tmp_path / 'back'}")
    assert ran.returncode == 0, ran.stdout + ran.stderr
    assert (tmp_path / "back" / "surface.2dm").exists()


# Set-out

EAST, NORTH = 500000.0, 5700000.0


@pytest.fixture(scope="module")
def two_planes(chain: Dict[str, Any], tmp_path_factory: pytest.TempPathFactory) -> Dict[str, str]:
    """Ground that rises 10 % to the east from 100 m, and a level design at 101 m; 40 m square."""
    import processing

    made = {}
    for name, slope, base in (("ground", 0.1, 100.0), ("design", 0.0, 101.0)):
        texts = [
            f"PointZ({EAST + 10 * i} {NORTH + 10 * j} {base + slope * 10 * i})" for i in range(5) for j in range(5)
        ]
        parameters = {
            "INPUT": memory_layer("PointZ", texts, "EPSG:25832", name),
            "OUTPUT": str(tmp_path_factory.mktemp("planes") / f"{name}.2dm"),
        }
        made[name] = str(processing.run("hummock:buildsurface", parameters, feedback=Listener().feedback)["OUTPUT"])
    return made


def named_points(rows: Any, kind: str = "PointZ") -> Any:
    from qgis.core import QgsFeature, QgsGeometry, QgsVectorLayer

    layer = QgsVectorLayer(f"{kind}?crs=EPSG:25832&field=name:string&field=level:double", "marks", "memory")
    for name, level, text in rows:
        feature = QgsFeature(layer.fields())
        feature.setGeometry(QgsGeometry.fromWkt(text))
        feature.setAttributes([name, level])
        layer.dataProvider().addFeature(feature)
    return layer


def table_of(path: str) -> Any:
    import csv

    lines = [line for line in Path(path).read_text(encoding="utf-8").splitlines() if not line.startswith("#")]
    return list(csv.reader(lines))


def test_points_of_a_layer_are_set_out(run: Any, two_planes: Dict[str, str], tmp_path: Path) -> None:
    marks = named_points(
        [("A", None, f"PointZ({EAST + 4} {NORTH + 5} 0)"), ("B", 102.5, f"PointZ({EAST + 30} {NORTH + 7} 0)")]
    )
    control = named_points([("CP1", None, f"PointZ({EAST - 5} {NORTH - 5} 99.5)")])
    listener = Listener()
    made = run(
        "setout", listener, PLACES=marks, NAME_FIELD="name", HEIGHT_FIELD="level", INPUT=two_planes["ground"],
        DESIGN=two_planes["design"], CONTROL=control, OUTPUT="TEMPORARY_OUTPUT", TABLE=str(tmp_path / "marks.csv"),
    )  # fmt: skip
    one, two, known = made["OUTPUT"].getFeatures()
    assert (one["name"], one["design_height"], one["cut_fill"]) == ("A", 101.0, pytest.approx(0.6))
    assert (two["name"], two["design_height"], two["cut_fill"]) == ("B", 102.5, pytest.approx(-0.5))
    assert (known["name"], known["code"], known["design_height"]) == ("CP1", "CONTROL", 99.5)
    assert one.geometry().constGet().z() == 101.0
    assert made["HIGHEST_FILL"] == pytest.approx(0.6)
    assert made["DEEPEST_CUT"] == pytest.approx(0.5)
    # 15 mm of each height through the triangle, at most the whole, and 20 mm of plan on a slope of 10 %
    assert np.hypot(0.015 / np.sqrt(3), 0.002) <= one["sigma"] <= np.hypot(0.015, 0.002) + 1e-9
    header, *rows = table_of(made["TABLE"])
    assert header == ["name", "easting", "northing", "design_height", "code", "cut_fill", "sigma"]
    assert rows[0][:6] == ["A", "500004.000", "5700005.000", "101.000", "", "0.600"]
    assert rows[1][5] == "-0.500"
    assert rows[2] == ["CP1", "499995.000", "5699995.000", "99.500", "CONTROL", "", ""]
    notes = (tmp_path / "marks_notes.txt").read_text()
    for word in ("buried", "licensed", "EPSG:25832"):
        assert word in notes


def test_the_layer_is_coloured_and_names_its_units(project: Any, two_planes: Dict[str, str], tmp_path: Path) -> None:
    from qgis.core import QgsApplication, QgsProcessingContext, QgsProcessingOutputLayerDefinition

    marks = named_points([("A", None, f"PointZ({EAST + 4} {NORTH + 5} 101.5)")])
    target = str(tmp_path / "marks.gpkg")
    parameters = {
        "PLACES": marks, "NAME_FIELD": "name", "USE_Z": True, "INPUT": two_planes["ground"],
        "OUTPUT": QgsProcessingOutputLayerDefinition(target, project),
    }  # fmt: skip
    context = QgsProcessingContext()
    context.setProject(project)
    algorithm = QgsApplication.processingRegistry().createAlgorithmById("hummock:setout")
    _, fine = algorithm.run(parameters, context, Listener().feedback)
    assert fine
    layer = layer_of(target)
    context.layerToLoadOnCompletionDetails(target).postProcessor().postProcessLayer(layer, context, Listener().feedback)
    assert "unit of the CRS" in layer.attributeAlias(layer.fields().indexFromName("cut_fill"))
    labels = [rule.label() for rule in layer.renderer().rootRule().children()]
    assert labels == ["Control point", "Cut", "Fill", "Cut or fill not known"]
    rules = layer.renderer().rootRule().children()
    counts = [len(list(layer.getFeatures(rule.filterExpression()))) for rule in rules]
    assert counts == [0, 0, 1, 0], "a point of fill is shown once"


def test_corners_grid_and_offsets(run: Any, two_planes: Dict[str, str], tmp_path: Path) -> None:
    ring = "((500005 5700005, 500025 5700005, 500025 5700015, 500005 5700015, 500005 5700005))"
    pad = memory_layer("Polygon", [f"Polygon{ring}"], "EPSG:25832", "pad")
    common = {"INPUT": two_planes["ground"], "DESIGN": two_planes["design"], "OUTPUT": "TEMPORARY_OUTPUT"}
    made = run("setout", PLACES=pad, **common)
    assert [feature["name"] for feature in made["OUTPUT"].getFeatures()] == ["S1", "S2", "S3", "S4"]
    made = run("setout", PLACES=pad, WAY=1, SPACING=5.0, PREFIX="G", **common)
    places = [feature.geometry().asPoint() for feature in made["OUTPUT"].getFeatures()]
    assert all((point.x() % 5, point.y() % 5) == (0, 0) for point in places)
    assert made["POINTS"] == len(places) >= 4 * 2
    line = memory_layer(
        "LineString", [f"LineString({EAST + 5} {NORTH + 20}, {EAST + 35} {NORTH + 20})"], "EPSG:25832", "axis"
    )
    made = run("setout", PLACES=line, WAY=2, SPACING=10.0, OFFSETS="-2; 0 2", START=100.0, PREFIX="", **common)
    names = [feature["name"] for feature in made["OUTPUT"].getFeatures()]
    assert names[:3] == ["0+100.00L2.00", "0+100.00C", "0+100.00R2.00"]
    assert len(names) == 12
    (left, *_) = made["OUTPUT"].getFeatures()
    assert left.geometry().asPoint().y() == NORTH + 22, "left of a line to the east is north"
    assert (left["station"], left["offset"]) == (100.0, -2.0)


def test_the_table_in_feet(run: Any, two_planes: Dict[str, str], tmp_path: Path) -> None:
    marks = named_points([("A", None, f"PointZ({EAST + 4} {NORTH + 5} 101.5)")])
    made = run(
        "setout", PLACES=marks, NAME_FIELD="name", USE_Z=True, INPUT=two_planes["ground"], UNIT=2, DECIMALS=2,
        COLUMNS="name northing easting design_height fill", COMMENTS=False, OUTPUT="TEMPORARY_OUTPUT",
        TABLE=str(tmp_path / "feet.csv"),
    )  # fmt: skip
    metres = 1200 / 3937  # NIST SP 811
    _, row = table_of(made["TABLE"])
    expected = [f"{value / metres:.2f}" for value in (NORTH + 5, EAST + 4, 101.5, 1.1)]
    assert row == ["A", *expected]
    assert (
        "US survey" in (tmp_path / "feet_notes.txt").read_text() or "ftUS" in (tmp_path / "feet_notes.txt").read_text()
    )


def test_set_out_that_cannot_be_is_refused(run: Any, two_planes: Dict[str, str], tmp_path: Path) -> None:
    twins = named_points([("A", None, f"PointZ({EAST + i} {NORTH + 5} 0)") for i in (1, 2)])
    target = tmp_path / "no.csv"
    common = {"INPUT": two_planes["ground"], "OUTPUT": "TEMPORARY_OUTPUT", "TABLE": str(target)}
    assert "“A”" in message_of(run, "setout", PLACES=twins, NAME_FIELD="name", **common)
    single = named_points([("A", None, f"PointZ({EAST + 1} {NORTH + 5} 0)")])
    assert "“A”" in message_of(run, "setout", PLACES=single, NAME_FIELD="name", CONTROL=single, **common)
    assert "hight" in message_of(run, "setout", PLACES=single, COLUMNS="name, easting, northing, hight", **common)
    assert "polygons" in message_of(run, "setout", PLACES=single, WAY=1, **common)
    assert "lines" in message_of(run, "setout", PLACES=single, WAY=2, **common)
    assert list(tmp_path.iterdir()) == []


def test_points_off_the_surfaces_are_told(run: Any, two_planes: Dict[str, str]) -> None:
    far = named_points([("A", None, f"PointZ({EAST + 400} {NORTH} 0)")])
    listener = Listener()
    made = run(
        "setout", listener, PLACES=far, NAME_FIELD="name", INPUT=two_planes["ground"], DESIGN=two_planes["design"],
        OUTPUT="TEMPORARY_OUTPUT",
    )  # fmt: skip
    assert made["WITHOUT_HEIGHT"] == 1
    assert len(listener.warnings) == 2


def test_folders_may_be_temporary(run: Any, exchanged: Dict[str, Any], chain: Dict[str, Any]) -> None:
    made = run("readlandxml", INPUT=exchanged["written"]["OUTPUT"], FOLDER="TEMPORARY_OUTPUT")
    assert Path(made["SURFACE"]).exists()
    made = run("handoverfiles", INPUT=chain["surface"]["OUTPUT"], FORMATS=[4], FOLDER="TEMPORARY_OUTPUT")
    assert Path(made["MESH"]).exists()
    assert Path(made["MESH"]).parent == Path(made["FOLDER"])
