"""The algorithms whose input is a surface, on a plane where the answers are known and on the demo."""

from __future__ import annotations

import json
import math
from pathlib import Path
from typing import Any, Dict, List

import numpy as np
import pytest
from in_qgis import DEMO, Listener, Profile, layer_of, memory_layer, memory_lines, memory_points, message_of

EAST, NORTH = 500000.0, 5700000.0
SLOPE_EAST, SLOPE_NORTH = 0.10, 0.05


def plane(east: float, north: float) -> float:
    """Height of the plane at offsets from its south-west corner."""
    return 100.0 + SLOPE_EAST * east + SLOPE_NORTH * north


@pytest.fixture(scope="module")
def plane_surface(chain: Dict[str, Any], tmp_path_factory: pytest.TempPathFactory) -> str:
    """A plane of 20 m by 20 m, points every 5 m, without the square from (5, 5) to (10, 10)."""
    import processing

    rows = [(f"{i}{j}", 5 * i, 5 * j, plane(5 * i, 5 * j)) for i in range(5) for j in range(5)]
    hole = ["Polygon((500005 5700005, 500010 5700005, 500010 5700010, 500005 5700010, 500005 5700005))"]
    parameters = {
        "INPUT": memory_points(rows),
        "VOIDS": memory_layer("Polygon", hole, "EPSG:25832", "hole"),
        "OUTPUT": str(tmp_path_factory.mktemp("plane") / "plane.2dm"),
    }
    return str(processing.run("hummock:buildsurface", parameters, feedback=Listener().feedback)["OUTPUT"])


class HostMesh:
    """QGIS's own reading of a mesh file, as an answer from outside."""

    def __init__(self, path: str) -> None:
        from qgis.core import QgsMeshDatasetIndex, QgsMeshLayer

        self.layer = QgsMeshLayer(path, "mesh", "mdal")
        assert self.layer.isValid()
        self.index = QgsMeshDatasetIndex(0, 0)
        self.layer.updateTriangularMesh()

    def height(self, x: float, y: float) -> float:
        """nan outside."""
        from qgis.core import QgsPointXY

        return float(self.layer.datasetValue(self.index, QgsPointXY(x, y)).scalar())


def test_tools_that_follow_each_other_read_the_mesh_once(
    run: Any, plane_surface: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    from plugin.core.handover import recent_meshes

    recent_meshes.forget_meshes()
    parse, parsed = recent_meshes.parse_2dm, []
    monkeypatch.setattr(recent_meshes, "parse_2dm", lambda *given: parsed.append(given[1]) or parse(*given))
    mesh = tmp_path / "mesh.2dm"
    mesh.write_bytes(Path(plane_surface).read_bytes())
    tools = {
        "contours": {"INTERVAL": 0.5},
        "contoursheet": {"INTERVAL": 0.5},
        "surfaceatpoints": {"POINTS": memory_points([("a", 12.3, 3.1, 0.0)])},
        "slopemap": {},
        "surfaceraster": {"CELL": 1.0},
        "flatareas": {"LIMIT": 3.0},
        "flowarrows": {"SPACING": 5.0},
        "flowpaths": {"SPACING": 5.0},
        "ponds": {},
        "catchments": {},
    }
    for name, more in tools.items():
        run(name, INPUT=str(mesh), CRS="EPSG:25832", OUTPUT="TEMPORARY_OUTPUT", **more)
    assert len(parsed) == 1
    recent_meshes.forget_meshes()


def test_tools_of_a_model_read_each_mesh_once(
    project: Any, plane_surface: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A model: four tools on a mesh, one of which makes a mesh that three others work on."""
    from qgis.core import (
        QgsProcessingContext,
        QgsProcessingFeedback,
        QgsProcessingModelAlgorithm,
        QgsProcessingModelChildAlgorithm,
        QgsProcessingModelChildParameterSource,
        QgsProcessingModelParameter,
        QgsProcessingParameterMeshLayer,
    )

    from plugin.core.handover import recent_meshes

    recent_meshes.forget_meshes()
    parse, parsed = recent_meshes.parse_2dm, []
    monkeypatch.setattr(recent_meshes, "parse_2dm", lambda *given: parsed.append(given[1]) or parse(*given))
    mesh = tmp_path / "mesh.2dm"
    mesh.write_bytes(Path(plane_surface).read_bytes())
    given, value = (
        QgsProcessingModelChildParameterSource.fromModelParameter,
        QgsProcessingModelChildParameterSource.fromStaticValue,
    )
    first = given("MESH")
    thinned = QgsProcessingModelChildParameterSource.fromChildOutput("thinsurface", "OUTPUT")
    model = QgsProcessingModelAlgorithm("chain", "chain")
    model.addModelParameter(QgsProcessingParameterMeshLayer("MESH", "Mesh"), QgsProcessingModelParameter("MESH"))
    children = (
        ("thinsurface", "thinsurface", first, {"TOLERANCE": 0.01}),
        ("lines", "contours", first, {"INTERVAL": 0.5}),
        ("slopes", "slopemap", first, {}),
        ("ponds", "ponds", first, {}),
        ("fewer lines", "contours", thinned, {"INTERVAL": 0.5}),
        ("fewer slopes", "slopemap", thinned, {}),
        ("fewer ponds", "ponds", thinned, {}),
    )
    for number, name, source, more in children:
        child = QgsProcessingModelChildAlgorithm(f"hummock:{name}")
        child.setChildId(number)
        child.addParameterSources("INPUT", [source])
        for key, single in {"CRS": "EPSG:25832", **more}.items():
            child.addParameterSources(key, [value(single)])
        model.addChildAlgorithm(child)
    context = QgsProcessingContext()
    context.setProject(project)
    _, fine = model.run({"MESH": str(mesh)}, context, QgsProcessingFeedback())
    assert fine
    assert len(parsed) == len(set(map(str, parsed))) == 2
    recent_meshes.forget_meshes()


# Points


def test_answers_on_a_plane(run: Any, plane_surface: str) -> None:
    places = [(12.3, 3.1), (1.0, 19.0), (7.0, 7.0), (30.0, 3.0)]  # the last two in the hole and outside
    texts = [f"PointZ({EAST + e} {NORTH + n} {plane(e, n) + 0.25})" for e, n in places]
    points = memory_layer("PointZ", texts, "EPSG:25832", "asked")
    listener = Listener()
    result = run("surfaceatpoints", listener, INPUT=plane_surface, POINTS=points, OUTPUT="TEMPORARY_OUTPUT")
    assert (result["ON_SURFACE"], result["OFF_SURFACE"]) == (2, 2)
    assert any("2" in warning for warning in listener.warnings)
    features = list(result["OUTPUT"].getFeatures())
    rise = math.hypot(SLOPE_EAST, SLOPE_NORTH)
    down = math.degrees(math.atan2(-SLOPE_EAST, -SLOPE_NORTH)) % 360
    for feature, (east, north) in zip(features[:2], places):
        assert feature["tin_height"] == pytest.approx(plane(east, north), abs=1e-6)
        assert feature["over_tin"] == pytest.approx(0.25, abs=1e-6)
        assert feature["slope_pct"] == pytest.approx(100 * rise, abs=1e-4)
        assert feature["slope_deg"] == pytest.approx(math.degrees(math.atan(rise)), abs=1e-4)
        assert feature["aspect_deg"] == pytest.approx(down, abs=1e-3)
        assert feature["triangle"] >= 0
    for feature in features[2:]:
        assert not any(feature[name] for name in ("tin_height", "slope_pct", "aspect_deg", "triangle", "over_tin"))


def test_points_in_another_crs_stay_there(run: Any, plane_surface: str) -> None:
    from qgis.core import QgsCoordinateReferenceSystem, QgsCoordinateTransform, QgsPointXY, QgsProject

    systems = [QgsCoordinateReferenceSystem(code) for code in ("EPSG:25832", "EPSG:4258")]
    degrees = QgsCoordinateTransform(*systems, QgsProject.instance()).transform(QgsPointXY(EAST + 15, NORTH + 4))
    texts = [f"Point({degrees.x():.12f} {degrees.y():.12f})", "Point(200 95)"]  # the second is nowhere
    points = memory_layer("Point", texts, "EPSG:4258", "asked")
    result = run("surfaceatpoints", INPUT=plane_surface, POINTS=points, OUTPUT="TEMPORARY_OUTPUT")
    here, nowhere = result["OUTPUT"].getFeatures()
    assert result["OUTPUT"].crs().authid() == "EPSG:4258"
    assert here["tin_height"] == pytest.approx(plane(15, 4), abs=1e-4)
    assert not nowhere["tin_height"]
    assert here.fieldNameIndex("over_tin") == -1, "points without heights are over nothing"


def test_every_part_of_a_multipoint_and_a_row_without_a_place(run: Any, plane_surface: str, tmp_path: Path) -> None:
    text = f"MultiPoint(({EAST + 1} {NORTH + 1}), ({EAST + 16} {NORTH + 2}))"
    points = memory_layer("MultiPoint", [text, ""], "EPSG:25832", "asked")
    result = run("surfaceatpoints", INPUT=plane_surface, POINTS=points, OUTPUT=str(tmp_path / "asked.gpkg"))
    heights = [feature["tin_height"] for feature in layer_of(result["OUTPUT"]).getFeatures()]
    assert heights[:2] == pytest.approx([plane(1, 1), plane(16, 2)], abs=1e-6)
    assert len(heights) == 3
    assert not heights[2]


def test_heights_agree_with_the_host(run: Any, chain: Dict[str, Any]) -> None:
    """QGIS interpolates the same mesh by its own code."""
    host = HostMesh(chain["surface"]["OUTPUT"])
    box = host.layer.extent()
    places = np.random.default_rng(5).uniform(0, 1, (300, 2)) * [box.width(), box.height()]
    texts = [f"Point({box.xMinimum() + x} {box.yMinimum() + y})" for x, y in places]
    points = memory_layer("Point", texts, "EPSG:25832", "asked")
    result = run("surfaceatpoints", INPUT=chain["surface"]["OUTPUT"], POINTS=points, OUTPUT="TEMPORARY_OUTPUT")
    both = 0
    for feature in result["OUTPUT"].getFeatures():
        place = feature.geometry().asPoint()
        theirs = host.height(place.x(), place.y())
        if feature["triangle"] is None or not isinstance(feature["tin_height"], float):
            assert math.isnan(theirs)
        else:
            assert feature["tin_height"] == pytest.approx(theirs, abs=1e-6)
            both += 1
    assert both > 200


# Lines


def test_lines_lie_on_the_plane_and_leave_its_hole(run: Any, plane_surface: str) -> None:
    lines = memory_lines([f"LineStringZ({EAST - 2} {NORTH + 7} 0, {EAST + 22} {NORTH + 7} 0)"])
    listener = Listener()
    result = run(
        "drapelines", listener, INPUT=plane_surface, LINES=lines, OUTPUT="TEMPORARY_OUTPUT", GAPS="TEMPORARY_OUTPUT"
    )
    assert (result["PIECES"], result["GAP_COUNT"]) == (2, 3)
    assert result["GAP_LENGTH"] == pytest.approx(2 + 5 + 2, abs=1e-6)
    assert any("9.00 m" in warning for warning in listener.warnings)
    first, second = result["OUTPUT"].getFeatures()
    assert [first["part"], second["part"]] == [1, 2]
    assert (first["start_m"], first["plan_m"]) == pytest.approx((2, 5), abs=1e-6)
    assert (second["start_m"], second["plan_m"]) == pytest.approx((12, 10), abs=1e-6)
    assert second["slope_m"] == pytest.approx(10 * math.hypot(1, SLOPE_EAST), abs=1e-6)
    for vertex in second.geometry().vertices():
        assert vertex.z() == pytest.approx(plane(vertex.x() - EAST, 7), abs=1e-6)
    gaps = [(f["start_m"], f["end_m"], f["start_e"] - EAST) for f in result["GAPS"].getFeatures()]
    assert gaps == [pytest.approx(row, abs=1e-6) for row in ((0, 2, -2), (7, 12, 5), (22, 24, 20))]


def test_lines_of_a_geopackage_in_pieces(run: Any, plane_surface: str, tmp_path: Path) -> None:
    """Pieces of one feature have keys of their own in the file."""
    text = f"MultiLineString(({EAST} {NORTH + 7}, {EAST + 20} {NORTH + 7}), ({EAST} {NORTH}, {EAST + 4} {NORTH + 4}))"
    given = tmp_path / "given.gpkg"
    from qgis.core import QgsProject, QgsVectorFileWriter

    layer = memory_layer("MultiLineString", [text], "EPSG:25832", "given")
    options = QgsVectorFileWriter.SaveVectorOptions()
    QgsVectorFileWriter.writeAsVectorFormatV3(layer, str(given), QgsProject.instance().transformContext(), options)
    result = run("drapelines", INPUT=plane_surface, LINES=str(given), OUTPUT=str(tmp_path / "laid.gpkg"))
    assert layer_of(result["OUTPUT"]).featureCount() == result["PIECES"] == 3


def test_draped_heights_agree_with_the_host_all_along(run: Any, chain: Dict[str, Any]) -> None:
    host = HostMesh(chain["surface"]["OUTPUT"])
    line = f"{DEMO / 'site.gpkg'}|layername=centreline"
    result = run("drapelines", INPUT=chain["surface"]["OUTPUT"], LINES=line, OUTPUT="TEMPORARY_OUTPUT")
    (feature,) = result["OUTPUT"].getFeatures()
    assert feature["name"]
    vertices = [(v.x(), v.y(), v.z()) for v in feature.geometry().vertices()]
    assert len(vertices) > 100
    middles = [tuple((a + b) / 2 for a, b in zip(*pair)) for pair in zip(vertices, vertices[1:])]
    off = [abs(host.height(x, y) - z) for x, y, z in middles]
    # Cuts are computed to 1e-9 m or so; on a kerb's face of 6 : 1 that is still nothing.
    assert max(off) < 1e-5


# Raster


def read_raster(path: str) -> Any:
    from osgeo import gdal

    data = gdal.Open(path)
    return data, data.GetRasterBand(1), data.GetRasterBand(1).ReadAsArray()


def test_raster_of_the_plane(run: Any, plane_surface: str, tmp_path: Path) -> None:
    target = str(tmp_path / "plane.tif")
    result = run("surfaceraster", INPUT=plane_surface, CELL=2.0, OUTPUT=target)
    data, band, heights = read_raster(target)
    assert data.GetGeoTransform() == (EAST, 2.0, 0.0, NORTH + 20, 0.0, -2.0)
    assert data.GetMetadataItem("COMPRESSION", "IMAGE_STRUCTURE") == "DEFLATE"
    assert band.GetBlockSize() == [256, 256]
    assert "25832" in data.GetProjection()
    assert band.GetUnitType() == "m"
    assert band.GetDescription() == "height (m), exact, linear on the triangles"
    assert band.GetNoDataValue() == -9999.0
    assert heights.shape == (10, 10)
    centres = np.arange(1.0, 20.0, 2.0)
    east, north = np.meshgrid(centres, centres[::-1])
    hole = (east > 5) & (east < 10) & (north > 5) & (north < 10)
    assert (heights[hole] == -9999.0).all()
    assert np.abs(heights - plane(east, north))[~hole].max() < 1e-5
    assert result["CELLS_ON_SURFACE"] == int((~hole).sum())
    assert result["LARGEST_DIFFERENCE"] == 0.0


def test_raster_agrees_with_the_host_and_the_smooth_one_says_how_far_it_is(
    run: Any, chain: Dict[str, Any], tmp_path: Path
) -> None:
    host = HostMesh(chain["surface"]["OUTPUT"])
    exact, smooth = str(tmp_path / "exact.tif"), str(tmp_path / "smooth.tif")
    run("surfaceraster", INPUT=chain["surface"]["OUTPUT"], CELL=1.0, OUTPUT=exact)
    listener = Listener()
    told = run("surfaceraster", listener, INPUT=chain["surface"]["OUTPUT"], CELL=1.0, METHOD=1, OUTPUT=smooth)
    data, _, heights = read_raster(exact)
    other, band, smoothed = read_raster(smooth)
    west, _, _, north, _, _ = data.GetGeoTransform()
    rows, columns = np.nonzero(heights != -9999.0)
    for row, column in list(zip(rows.tolist(), columns.tolist()))[::97]:
        assert heights[row, column] == pytest.approx(host.height(west + column + 0.5, north - row - 0.5), abs=2e-5)
    assert other.RasterCount == 1
    assert "drawing only" in band.GetDescription()
    assert any("drawing only" in warning for warning in listener.warnings)
    off = np.abs(smoothed.astype(float) - heights)[rows, columns].max()
    assert told["LARGEST_DIFFERENCE"] == pytest.approx(off, abs=3e-5)
    assert off > 0.001


def test_raster_in_feet_has_heights_in_feet(run: Any, tmp_path: Path) -> None:
    foot = 1200.0 / 3937.0  # NIST SP 811
    rows = [(985000 + 10 * i, 200000 + 10 * j, 300 + i) for i in range(4) for j in range(4)]
    points = memory_layer("PointZ", [f"PointZ({e} {n} {h})" for e, n, h in rows], "EPSG:2263", "feet")
    surface = run("buildsurface", INPUT=points, OUTPUT=str(tmp_path / "feet.2dm"))["OUTPUT"]
    run("surfaceraster", INPUT=surface, CELL=10, OUTPUT=str(tmp_path / "feet.tif"))
    data, band, heights = read_raster(str(tmp_path / "feet.tif"))
    assert band.GetUnitType() == "US survey foot"
    assert data.GetGeoTransform() == (985000.0, 10.0, 0.0, 200030.0, 0.0, -10.0)
    assert heights[0] == pytest.approx([300.5, 301.5, 302.5], abs=1e-3)
    asked = memory_layer("Point", ["Point(985015 200015)"], "EPSG:2263", "asked")
    answer = next(
        run("surfaceatpoints", INPUT=surface, POINTS=asked, OUTPUT="TEMPORARY_OUTPUT")["OUTPUT"].getFeatures()
    )
    assert answer["tin_height"] == pytest.approx(301.5, abs=1e-3)
    line = memory_layer("LineString", ["LineString(985000 200015, 985030 200015)"], "EPSG:2263", "line")
    laid = next(run("drapelines", INPUT=surface, LINES=line, OUTPUT="TEMPORARY_OUTPUT")["OUTPUT"].getFeatures())
    assert laid["plan_m"] == pytest.approx(30 * foot, abs=1e-4)
    assert list(laid.geometry().vertices())[-1].z() == pytest.approx(303.0, abs=1e-3)


# Slopes


def test_slope_classes_add_up_to_the_triangles(run: Any, chain: Dict[str, Any]) -> None:
    limits = [2.0, 5.0, 10.0]
    result = run("slopemap", INPUT=chain["surface"]["OUTPUT"], LIMITS="2; 5; 10", OUTPUT="TEMPORARY_OUTPUT")
    triangles = layer_of(chain["surface"]["TRIANGLES"])
    wanted = np.zeros(4)
    for feature in triangles.getFeatures():
        wanted[np.searchsorted(limits, feature["slope_pct"])] += feature["area_m2"]
    features = list(result["OUTPUT"].getFeatures())
    assert [f["class"] for f in features] == [0, 1, 2, 3]
    assert [f["plan_m2"] for f in features] == pytest.approx(wanted.tolist(), abs=0.5)
    assert sum(f["plan_m2"] for f in features) == pytest.approx(chain["surface"]["AREA"], abs=1e-3)
    for feature in features:
        assert feature.geometry().area() == pytest.approx(feature["plan_m2"], abs=1e-3)
        assert feature.geometry().isGeosValid()
        assert feature["slope_m2"] > feature["plan_m2"]
    assert [f["label"] for f in features] == ["0 to 2 %", "2 to 5 %", "5 to 10 %", "over 10 %"]


@pytest.mark.parametrize(
    ("text", "limits"),
    [
        ("1; 2; 5", [1, 2, 5]),
        ("1, 2, 5", [1, 2, 5]),
        ("1,2,5", [1, 2, 5]),
        ("1 2.5 5", [1, 2.5, 5]),
        ("8,33; 20", [8.33, 20]),
        ("5", [5]),
        ("5 %; 10%", None),
        ("2; steep", None),
        ("", []),
    ],
)
def test_limits_as_people_write_them(application: Any, text: str, limits: Any) -> None:
    from qgis.core import QgsProcessingException

    from plugin.processing.slopemap import read_limits

    if limits is None:
        with pytest.raises(QgsProcessingException, match="numbers"):
            read_limits(text)
    else:
        assert read_limits(text) == limits


# Thinning


def test_a_thinned_surface_is_as_near_as_it_says(run: Any, chain: Dict[str, Any], tmp_path: Path) -> None:
    target = str(tmp_path / "thin.2dm")
    result = run("thinsurface", INPUT=chain["surface"]["OUTPUT"], TOLERANCE=0.05, OUTPUT=target)
    assert result["DROPPED"] > result["VERTEX_COUNT"] > 100
    assert 0.04 < result["LARGEST_DIFFERENCE"] <= 0.05
    host = HostMesh(target)
    nodes = [line.split()[2:] for line in Path(chain["surface"]["OUTPUT"]).read_text().splitlines() if line[:2] == "ND"]
    off = np.array([host.height(float(x), float(y)) - float(z) for x, y, z in nodes])
    assert np.isnan(off).mean() < 0.05, "QGIS leaves out some nodes on the rim"
    assert np.nanmax(np.abs(off)) <= result["LARGEST_DIFFERENCE"] + 1e-5
    assert (tmp_path / "thin.prj").exists()
    # the next step takes it
    assert run("contours", INPUT=result["SURFACE"], INTERVAL=0.5, OUTPUT="TEMPORARY_OUTPUT")["CONTOURS"] > 5


# Inspection


def test_a_spike_is_marked_with_its_line_in_the_file(run: Any, tmp_path: Path) -> None:
    rng = np.random.default_rng(1)
    rows = [[i, 2 * (i % 12), 2 * (i // 12), 50 + float(rng.normal(0, 0.01))] for i in range(144)]
    rows[77][3] += 1.5
    file = tmp_path / "survey.csv"
    file.write_text(
        "name,easting,northing,height\n" + "".join(f"{n},{EAST + e},{NORTH + m},{h}\n" for n, e, m, h in rows)
    )
    points = run("importpoints", INPUT=str(file), CRS="EPSG:25832", OUTPUT=str(tmp_path / "points.gpkg"))["OUTPUT"]
    surface = run("buildsurface", INPUT=points, OUTPUT=str(tmp_path / "spike.2dm"))["OUTPUT"]
    result = run("inspectsurface", INPUT=surface, POINTS=points, OUTPUT="TEMPORARY_OUTPUT")
    (feature,) = result["OUTPUT"].getFeatures()
    assert feature["kind"] == "spike"
    assert feature["value"] == pytest.approx(1.5, abs=0.05)
    assert feature["unit"] == "m"
    assert feature["lines"] == "79"  # the 78th point, below the header
    place = feature.geometry().constGet()
    assert (place.x() - EAST, place.y() - NORTH) == pytest.approx((rows[77][1], rows[77][2]))
    assert "E 500010.000" in feature["text"]
    # without the points the place is found all the same, and a higher limit lets it pass
    assert run("inspectsurface", INPUT=surface, OUTPUT="TEMPORARY_OUTPUT")["FINDINGS"] == 1
    assert run("inspectsurface", INPUT=surface, SPIKE_HEIGHT=2, OUTPUT="TEMPORARY_OUTPUT")["FINDINGS"] == 0


def test_a_gap_in_a_breakline_is_found_by_the_labels_of_the_lines(run: Any, tmp_path: Path) -> None:
    rows = [(f"{i} {j}", 2 * i, 2 * j + 1, 50.0 + 0.1 * i) for i in range(12) for j in range(6)]
    rows += [("a", 10, 5.8, 50.5), ("b", 10, 6.2, 50.5)]  # the edge between these crosses the gap
    halves = [f"LineStringZ({EAST + a} {NORTH + 6} {50 + a / 20}, {EAST + b} {NORTH + 6} {50 + b / 20})"
              for a, b in ((0, 9), (11, 22))]  # fmt: skip
    surface = run(
        "buildsurface",
        INPUT=memory_points(rows),
        BREAKLINES=memory_lines(halves),
        OUTPUT=str(tmp_path / "gap.2dm"),
        LINES=str(tmp_path / "lines.gpkg"),
    )
    lines = layer_of(surface["LINES"])
    label = lines.fields().indexFromName("label")
    ids = [feature.id() for feature in lines.getFeatures()]
    assert lines.dataProvider().changeAttributeValues({ids[0]: {label: "KT 1"}, ids[1]: {label: "KT 2"}})
    result = run("inspectsurface", INPUT=surface["OUTPUT"], LINES=lines, OUTPUT="TEMPORARY_OUTPUT")
    gaps = [f for f in result["OUTPUT"].getFeatures() if f["kind"] == "gap"]
    assert [f["value"] for f in gaps] == [pytest.approx(2.0, abs=1e-3)]
    assert "KT 1" in gaps[0]["text"]


# Contours for the sheet


@pytest.fixture(scope="module")
def sheet(chain: Dict[str, Any], tmp_path_factory: pytest.TempPathFactory) -> Dict[str, Any]:
    import processing

    folder = tmp_path_factory.mktemp("sheet")
    parameters = {
        "INPUT": chain["surface"]["OUTPUT"],
        "INTERVAL": 0.5,
        "UNIT": 1,
        "INDEX_EVERY": 2,
        "SCALE": 500,
        "OUTPUT": str(folder / "contours.gpkg"),
        "LABELS": str(folder / "labels.gpkg"),
        "SPOTS": str(folder / "spots.gpkg"),
    }
    return dict(processing.run("hummock:contoursheet", parameters, feedback=Listener().feedback))


def test_half_foot_contours_with_labels_on_their_lines(sheet: Dict[str, Any]) -> None:
    contours = list(layer_of(sheet["OUTPUT"]).getFeatures())
    assert len(contours) == sheet["CONTOURS"] > 20
    for feature in contours:
        assert feature["unit"] == "ft"
        assert feature["level"] * 2 == round(feature["level"] * 2)
        assert feature["level_m"] == pytest.approx(feature["level"] * 0.3048, abs=1e-12)  # NIST SP 811
        assert bool(feature["index"]) == (feature["level"] == round(feature["level"]))
    labels = list(layer_of(sheet["LABELS"]).getFeatures())
    assert len(labels) == sheet["LABEL_COUNT"] > 5
    for label in labels:
        assert float(label["text"]) == label["level"]
        assert label["index"]
        assert label["size"] == pytest.approx(0.002 * 500)
        same = [f.geometry() for f in contours if f["level"] == label["level"]]
        assert min(line.distance(label.geometry()) for line in same) < 0.5 * label["size"]


def test_labels_read_uphill(sheet: Dict[str, Any], chain: Dict[str, Any]) -> None:
    """Up from the foot of the figures the ground rises."""
    host = HostMesh(chain["surface"]["OUTPUT"])
    rises = []
    for label in layer_of(sheet["LABELS"]).getFeatures():
        place, turn = label.geometry().asPoint(), math.radians(-label["rotation"])
        up = -math.sin(turn), math.cos(turn)
        ends = [host.height(place.x() + s * 2 * up[0], place.y() + s * 2 * up[1]) for s in (1, -1)]
        rises.append(ends[0] - ends[1])
    rises = [rise for rise in rises if not math.isnan(rise)]
    assert len(rises) > 5
    # calmed lines may turn a little off the ground as measured
    assert np.mean(np.array(rises) > 0) > 0.9


def test_sheet_contours_keep_to_what_they_promise(run: Any, chain: Dict[str, Any], sheet: Dict[str, Any]) -> None:
    assert 0 < sheet["LARGEST_CHANGE"] <= 0.015 + 1e-12
    assert 0 < sheet["LARGEST_SHIFT"] <= 0.25 + 1e-12
    plain = {"INPUT": chain["surface"]["OUTPUT"], "INTERVAL": 0.25, "OUTPUT": "TEMPORARY_OUTPUT"}
    exact = run("contours", **plain)["OUTPUT"]
    smooth = run("contoursheet", **plain, CALM=0, SMOOTH=0.1)
    assert smooth["LARGEST_CHANGE"] == 0
    assert smooth["LABEL_COUNT"] == smooth["SPOT_COUNT"] == 0
    lines = [f.geometry() for f in smooth["OUTPUT"].getFeatures()]
    off = [a.geometry().hausdorffDistance(b) for a, b in zip(exact.getFeatures(), lines)]
    assert len(lines) == exact.featureCount()
    assert 0.01 < max(off) <= 0.1 + 1e-6
    untouched = run("contoursheet", **plain, CALM=0, SMOOTH=0)["OUTPUT"]
    for one, other in zip(exact.getFeatures(), untouched.getFeatures()):
        assert one.geometry().asWkt(6) == other.geometry().asWkt(6)


def test_spots_stand_on_the_surface_as_measured(sheet: Dict[str, Any], chain: Dict[str, Any]) -> None:
    nodes = {
        tuple(line.split()[2:4]): float(line.split()[4])
        for line in Path(chain["surface"]["OUTPUT"]).read_text().splitlines()
        if line.startswith("ND")
    }
    spots = list(layer_of(sheet["SPOTS"]).getFeatures())
    assert len(spots) == sheet["SPOT_COUNT"] > 2
    assert {spot["kind"] for spot in spots} <= {"summit", "pit", "saddle"}
    for spot in spots:
        place = spot.geometry().constGet()
        height = nodes[f"{place.x():.4f}", f"{place.y():.4f}"]
        assert spot["height_m"] == pytest.approx(height, abs=1e-6)
        assert place.z() == pytest.approx(height, abs=1e-6)
        assert spot["height"] == pytest.approx(height / 0.3048, abs=1e-5)
        assert spot["text"] == f"{spot['height']:.2f}"
        assert spot["prominence"] >= 0.5
    assert max(nodes.values()) == pytest.approx(max(spot["height_m"] for spot in spots), abs=1e-9)


# What all of them share


def steps(chain: Dict[str, Any], folder: Path) -> Dict[str, Dict[str, Any]]:
    """Parameters with which each algorithm runs on the demo."""
    surface = chain["surface"]["OUTPUT"]
    site = f"{DEMO / 'site.gpkg'}|layername="
    memory = {"INPUT": surface, "OUTPUT": "TEMPORARY_OUTPUT"}
    return {
        "inspectsurface": {**memory, "POINTS": chain["points"]["OUTPUT"], "LINES": chain["surface"]["LINES"]},
        "surfaceatpoints": {**memory, "POINTS": chain["points"]["OUTPUT"]},
        "drapelines": {**memory, "LINES": f"{site}centreline"},
        "surfaceraster": {**memory, "OUTPUT": str(folder / "dem.tif")},
        "slopemap": memory,
        "thinsurface": {**memory, "TOLERANCE": 0.1, "OUTPUT": str(folder / "thin.2dm")},
        "contoursheet": {**memory, "LABELS": "TEMPORARY_OUTPUT", "SPOTS": "TEMPORARY_OUTPUT"},
    }


NAMES = ["inspectsurface", "surfaceatpoints", "drapelines", "surfaceraster", "slopemap", "thinsurface", "contoursheet"]


@pytest.mark.parametrize("name", NAMES)
def test_cancelling_leaves_nothing(run: Any, chain: Dict[str, Any], tmp_path: Path, name: str) -> None:
    for at in (0.0, 45.0):
        listener = Listener(cancel_at=at)
        assert "OUTPUT" not in run(name, listener, **steps(chain, tmp_path)[name])
        assert any("Cancelled" in text for text in listener.infos)
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("name", NAMES)
def test_progress_goes_forward_to_the_end(run: Any, chain: Dict[str, Any], tmp_path: Path, name: str) -> None:
    listener = Listener()
    run(name, listener, **steps(chain, tmp_path)[name])
    assert listener.progress == sorted(listener.progress)
    assert listener.progress[-1] == pytest.approx(100.0)


@pytest.mark.parametrize("name", NAMES)
def test_a_mesh_that_is_none(run: Any, chain: Dict[str, Any], tmp_path: Path, name: str) -> None:
    from qgis.core import QgsProcessingException

    parameters = steps(chain, tmp_path)[name]
    file = tmp_path / "none.2dm"
    file.write_text("hello\n")
    for path in (str(file), "/nowhere/surface.2dm"):
        with pytest.raises(QgsProcessingException, match=path) as raised:
            run(name, **{**parameters, "INPUT": path})
        assert "Traceback" not in str(raised.value)


BAD_VALUES: List[Any] = [
    ("slopemap", {"LIMITS": "1; steep"}, ("steep", "numbers")),
    ("slopemap", {"LIMITS": "5; 2"}, ("5, 2", "rise")),
    ("surfaceraster", {"CELL": 1e-3}, ("0.001", "cells")),
    ("contoursheet", {"INTERVAL": 1e-5}, ("interval",)),
]


@pytest.mark.parametrize(("name", "values", "words"), BAD_VALUES)
def test_values_that_cannot_work(
    run: Any, chain: Dict[str, Any], tmp_path: Path, name: str, values: Dict[str, Any], words: Any
) -> None:
    said = message_of(run, name, **{**steps(chain, tmp_path)[name], **values})
    for word in words:
        assert word in said


@pytest.mark.parametrize(
    ("name", "layer"), [("surfaceatpoints", "POINTS"), ("drapelines", "LINES"), ("inspectsurface", "POINTS")]
)
def test_a_layer_that_is_missing(run: Any, chain: Dict[str, Any], tmp_path: Path, name: str, layer: str) -> None:
    from qgis.core import QgsProcessingException

    parameters = {**steps(chain, tmp_path)[name], layer: "/nowhere/layer.gpkg"}
    with pytest.raises(QgsProcessingException, match=r"/nowhere/layer\.gpkg not found"):
        run(name, **parameters)


def test_a_raster_that_is_no_geotiff_or_has_no_folder(run: Any, plane_surface: str, tmp_path: Path) -> None:
    from qgis.core import QgsProcessingException

    said = message_of(run, "surfaceraster", INPUT=plane_surface, CELL=1, OUTPUT=str(tmp_path / "heights.asc"))
    assert ".tif" in said
    with pytest.raises(QgsProcessingException) as raised:
        run("surfaceraster", INPUT=plane_surface, CELL=1, OUTPUT="/proc/nowhere/heights.tif")
    assert "heights.tif" in str(raised.value) or "nowhere" in str(raised.value)


def test_a_lone_cell_off_the_surface(run: Any, plane_surface: str, tmp_path: Path) -> None:
    """A raster of one cell whose centre is no ground: an empty file and a warning, no failure."""
    listener = Listener()
    result = run("surfaceraster", listener, INPUT=plane_surface, CELL=1e5, OUTPUT=str(tmp_path / "one.tif"))
    assert result["CELLS_ON_SURFACE"] == 0
    assert any("empty" in warning for warning in listener.warnings)


def test_outputs_load_dressed(project: Any, chain: Dict[str, Any], tmp_path: Path) -> None:
    import processing
    from qgis.core import QgsProject

    for name, parameters in steps(chain, tmp_path).items():
        processing.runAndLoadResults(f"hummock:{name}", parameters, feedback=Listener().feedback)
    layers = {layer.name(): layer for layer in QgsProject.instance().mapLayers().values()}
    findings = layers["Findings"].renderer()
    assert [c.label() for c in findings.categories()] == [
        "Level spot",
        "Gap in a breakline",
        "Long triangles",
        "Spike",
        "Point beside a line",
    ]
    assert len({c.symbol().color().name() for c in findings.categories()}) == 5
    slopes = layers["Slope classes"].renderer()
    assert slopes.classAttribute() == "class"
    assert slopes.categories()[0].label() == "0 to 1 %"
    assert slopes.categories()[-1].symbol().color().name() == "#8c2d04"  # ColorBrewer, YlOrBr in seven classes
    assert layers["Heights (GeoTIFF)"].renderer().type() == "singlebandpseudocolor"
    assert layers["Thinned surface, height"].crs().authid() == "EPSG:25832"
    assert not layers["Contours every 0.25 m"].labelsEnabled(), "the label layer takes over"
    labels = layers["Contour labels"]
    assert labels.labelsEnabled()
    assert labels.labeling().settings().fieldName == "text"
    assert {c.value() for c in layers["Spot heights"].renderer().categories()} == {"summit", "pit", "saddle"}


def test_contours_alone_keep_their_labels(project: Any, chain: Dict[str, Any]) -> None:
    import processing
    from qgis.core import QgsProject

    parameters = {"INPUT": chain["surface"]["OUTPUT"], "OUTPUT": "TEMPORARY_OUTPUT"}
    processing.runAndLoadResults("hummock:contoursheet", parameters, feedback=Listener().feedback)
    (layer,) = QgsProject.instance().mapLayers().values()
    assert layer.labelsEnabled()


def test_a_model_thins_and_draws(project: Any, chain: Dict[str, Any], tmp_path: Path) -> None:
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
    model = QgsProcessingModelAlgorithm("Thin and draw", "tests")
    model.addModelParameter(
        QgsProcessingParameterMeshLayer("surface", "Surface"), QgsProcessingModelParameter("surface")
    )
    thin = QgsProcessingModelChildAlgorithm("hummock:thinsurface")
    thin.setChildId("thin")
    thin.addParameterSources("INPUT", [source.fromModelParameter("surface")])
    thin.addParameterSources("LOAD", [source.fromStaticValue(False)])
    model.addChildAlgorithm(thin)
    for name, output in (("slopemap", "slopes"), ("contoursheet", "contours")):
        child = QgsProcessingModelChildAlgorithm(f"hummock:{name}")
        child.setChildId(name)
        child.addParameterSources("INPUT", [source.fromChildOutput("thin", "SURFACE")])
        final = QgsProcessingModelOutput(output)
        final.setChildId(name)
        final.setChildOutputName("OUTPUT")
        child.setModelOutputs({output: final})
        model.addChildAlgorithm(child)
    targets = {"slopemap:slopes": tmp_path / "slopes.gpkg", "contoursheet:contours": tmp_path / "contours.gpkg"}
    parameters = {"surface": chain["surface"]["OUTPUT"], **{name: str(path) for name, path in targets.items()}}
    result = processing.run(model, parameters, feedback=Listener().feedback)
    for name in targets:
        assert layer_of(result[name]).featureCount() > 3


def test_through_qgis_process(profile: Profile, chain: Dict[str, Any], tmp_path: Path) -> None:
    surface = chain["surface"]["OUTPUT"]

    def process(algorithm: str, **parameters: str) -> Dict[str, Any]:
        words = [f"--{name}={value}" for name, value in parameters.items()]
        ran = profile.qgis_process("--json", "run", f"hummock:{algorithm}", f"--INPUT={surface}", *words)
        assert ran.returncode == 0, ran.stdout + ran.stderr
        return dict(json.loads(ran.stdout)["results"])

    raster = process("surfaceraster", CELL="1", OUTPUT=str(tmp_path / "dem.tif"))
    assert read_raster(raster["OUTPUT"])[2].shape == (raster["ROWS"], raster["COLUMNS"])
    slopes = process("slopemap", LIMITS="2; 5", OUTPUT=str(tmp_path / "slopes.gpkg"))
    assert layer_of(slopes["OUTPUT"]).featureCount() == slopes["CLASSES"] == 3
    outputs = {name: str(tmp_path / f"{name}.gpkg") for name in ("OUTPUT", "LABELS", "SPOTS")}
    sheet = process("contoursheet", INTERVAL="0.5", UNIT="1", INDEX_EVERY="2", **outputs)
    assert layer_of(sheet["LABELS"]).featureCount() == sheet["LABEL_COUNT"] > 5
