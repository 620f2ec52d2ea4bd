"""Earthwork in QGIS: volumes, by region, to planes, stockpiles, basins; against closed forms."""

from __future__ import annotations

import math
from pathlib import Path
from typing import Any, Dict, List, Optional

import numpy as np
import pytest
from in_qgis import Listener, layer_of, memory_layer, message_of
from pyproj import CRS

from plugin.core.handover.mesh import write_2dm
from plugin.core.handover.projection import write_prj
from plugin.core.linework.constraints import Constraints, LineKind, make_line
from plugin.core.points.pointset import make_points
from plugin.core.surface.build import build_surface

EAST, NORTH = 548200.0, 5712300.0
FRUSTUM = 5 / 3 * (40**2 + 20**2 + 40 * 20)  # frustum V = h/3 (A + a + sqrt(A a)), any handbook of solid geometry


def mesh(path: Path, xyz: Any, lines: Any = (), epsg: Optional[int] = 25832) -> str:
    """A surface of points (k, 3) and breaklines in metres from a corner, as a file with its CRS."""
    corner = np.array([EAST, NORTH, 0.0])
    made = [make_line(LineKind.BREAKLINE, np.asarray(line, float) + corner) for line in lines]
    crs = None if epsg is None else CRS.from_epsg(epsg)
    tin = build_surface(make_points(*(np.asarray(xyz, float) + corner).T, crs=crs), Constraints(tuple(made))).tin
    write_2dm(tin, path)
    write_prj(path, crs)
    return str(path)


def square(side: float, z: float, at: Any = (0.0, 0.0)) -> np.ndarray:
    x, y = at
    return np.array([[x, y, z], [x + side, y, z], [x + side, y + side, z], [x, y + side, z]])


def box(x0: float, y0: float, x1: float, y1: float) -> str:
    places = [(x0, y0), (x1, y0), (x1, y1), (x0, y1), (x0, y0)]
    return "((" + ", ".join(f"{EAST + x} {NORTH + y}" for x, y in places) + "))"


def polygons(*boxes: Any, names: Any = ()) -> Any:
    """A layer of boxes, with a field of names."""
    from qgis.core import QgsFeature, QgsGeometry, QgsVectorLayer

    layer = QgsVectorLayer("Polygon?crs=EPSG:25832&field=name:string", "regions", "memory")
    for i, each in enumerate(boxes):
        feature = QgsFeature(layer.fields())
        feature.setGeometry(QgsGeometry.fromWkt("Polygon" + box(*each)))
        feature.setAttributes([names[i] if i < len(names) else None])
        layer.dataProvider().addFeature(feature)
    return layer


@pytest.fixture(scope="module")
def solids(tmp_path_factory: pytest.TempPathFactory) -> Dict[str, str]:
    """Level ground at 10 m, a frustum on it, its mirror image as a pit, and ground in another system."""
    folder = tmp_path_factory.mktemp("solids")
    base, top = square(40, 10, (10, 10)), square(20, 15, (20, 20))
    ribs = [np.array([a, b]) for a, b in zip(base, top)]
    lines = [np.vstack([base, base[:1]]), np.vstack([top, top[:1]]), *ribs]
    all_points = np.vstack([square(60, 10), base, top])
    turned = [np.asarray(line) * [1, 1, -1] + [0, 0, 20] for line in lines]
    return {
        "level": mesh(folder / "level.2dm", square(60, 10)),
        "heap": mesh(folder / "heap.2dm", all_points, lines),
        "pit": mesh(folder / "pit.2dm", all_points * [1, 1, -1] + [0, 0, 20], turned),
        "east": mesh(folder / "east.2dm", square(60, 12), epsg=25833),
        "half": mesh(folder / "half.2dm", square(60, 12, (30, 0))),
        "rock": mesh(folder / "rock.2dm", square(60, 12)),
    }


def rows(source: Any) -> List[Any]:
    return list(layer_of(source).getFeatures())


# Between two surfaces


def test_volume_of_a_frustum(run: Any, solids: Dict[str, str], tmp_path: Path) -> None:
    listener = Listener()
    found = run(
        "volume",
        listener,
        EXISTING=solids["level"],
        DESIGN=solids["heap"],
        SIGMA=0.02,
        OFFSET_SIGMA=0.01,
        LIMITS="1; 2.5",
        TRUCK=10.0,
        LOOSE=1.25,
        COMPACTED=0.9,
        TABLE=str(tmp_path / "table.gpkg"),
        POLYGONS=str(tmp_path / "depth.gpkg"),
        ZERO_LINE="TEMPORARY_OUTPUT",
        RASTER=str(tmp_path / "depth.tif"),
        HTML=str(tmp_path / "page.html"),
    )
    assert found["FILL"] == pytest.approx(FRUSTUM, rel=1e-9)
    assert (found["CUT"], found["NET"]) == (0, pytest.approx(FRUSTUM, rel=1e-9))
    assert (found["AREA"], found["FILL_AREA"]) == (pytest.approx(3600), pytest.approx(1600))
    assert found["MEAN_FILL"] == pytest.approx(FRUSTUM / 1600)
    by_name = {row["quantity"]: row for row in rows(found["TABLE"])}
    fill = by_name["fill"]
    assert fill["volume_m3"] == pytest.approx(FRUSTUM, rel=1e-9)
    assert fill["systematic_m3"] == pytest.approx(0.01 * 1600, rel=1e-9)
    parts = [fill[f"{name}_m3"] for name in ("random", "drift", "systematic", "model", "small")]
    assert fill["half_95_m3"] == pytest.approx(1.959964 * math.sqrt(sum(p * p for p in parts)), rel=1e-6)
    assert fill["high_95_m3"] - fill["low_95_m3"] == pytest.approx(2 * fill["half_95_m3"])
    assert found["FILL_95"] == fill["half_95_m3"]
    assert any(f"{FRUSTUM:.2f} ± " in text for text in listener.infos)
    assert any("Not a payment certificate" in text for text in listener.infos)
    # borrow of FRUSTUM / 0.9 in the ground, 1.25 times that on trucks of 10 m³
    assert any(f"Loads: 0 of waste, {math.ceil(FRUSTUM / 0.9 * 1.25 / 10)} of borrow" in t for t in listener.infos)
    page = (tmp_path / "page.html").read_text(encoding="utf-8")
    assert "level to heap" in page or "level.2dm to heap.2dm" in page


def test_depth_polygons_add_up_and_agree_with_the_raster(run: Any, solids: Dict[str, str], tmp_path: Path) -> None:
    from osgeo import gdal

    found = run(
        "volume", EXISTING=solids["heap"], DESIGN=solids["level"], LIMITS="1; 2.5", CELL=0.25,
        POLYGONS=str(tmp_path / "depth.gpkg"), RASTER=str(tmp_path / "depth.tif"),
    )  # fmt: skip
    assert found["CUT"] == pytest.approx(FRUSTUM, rel=1e-9)
    classes = {row["class"]: row for row in rows(found["POLYGONS"])}
    assert sorted(classes) == [-3, -2, -1, 0]
    assert sum(row["volume_m3"] for row in classes.values()) == pytest.approx(FRUSTUM, rel=1e-9)
    for number, area in ((0, 2000), (-1, 40**2 - 36**2), (-2, 36**2 - 30**2), (-3, 900)):
        assert classes[number]["area_m2"] == pytest.approx(area, abs=0.01)
        assert classes[number].geometry().area() == pytest.approx(area, abs=0.01)
        assert classes[number].geometry().isGeosValid()
    assert classes[-2]["kind"] == "cut"
    assert (classes[-2]["from_m"], classes[-2]["to_m"], classes[-2]["label"]) == (1.0, 2.5, "cut 1 to 2.5 m")
    raster = gdal.Open(found["RASTER"])
    band = raster.GetRasterBand(1)
    assert band.GetDescription().startswith("depth (m), design less existing")
    depth = band.ReadAsArray()
    assert depth.shape == (240, 240)
    assert depth.min() == pytest.approx(-5)
    assert -depth.sum() * 0.25**2 == pytest.approx(FRUSTUM, rel=1e-3)


def test_zero_line_of_crossing_planes(run: Any, tmp_path: Path) -> None:
    """z = x - 30 against 0 on 100 x 40: cut over 70 m, fill over 30 m, the line at x = 30."""
    xy = np.array([[0, 0], [100, 0], [100, 40], [0, 40.0]])
    tilted = mesh(tmp_path / "tilted.2dm", np.column_stack([xy, xy[:, 0] - 30]))
    flat = mesh(tmp_path / "flat.2dm", np.column_stack([xy, np.zeros(4)]))
    found = run("volume", EXISTING=tilted, DESIGN=flat, ZERO_LINE="TEMPORARY_OUTPUT")
    assert found["CUT"] == pytest.approx(70**2 / 2 * 40, rel=1e-9)
    assert found["FILL"] == pytest.approx(30**2 / 2 * 40, rel=1e-9)
    back = run("volume", EXISTING=flat, DESIGN=tilted)
    assert (back["CUT"], back["FILL"]) == (found["FILL"], found["CUT"])
    (line,) = rows(found["ZERO_LINE"])
    assert line["length_m"] == pytest.approx(40)
    assert not line["closed"]
    for vertex in line.geometry().vertices():
        assert vertex.x() - EAST == pytest.approx(30, abs=1e-6)
        assert vertex.z() == pytest.approx(0, abs=1e-9)


def test_only_inside_polygons_and_a_level_for_what_is_missing(run: Any, solids: Dict[str, str]) -> None:
    given = {"EXISTING": solids["level"], "DESIGN": solids["half"]}
    whole = run("volume", **given)
    assert whole["FILL"] == pytest.approx(30 * 60 * 2, rel=1e-9)
    assert (whole["FIRST_ONLY"], whole["SECOND_ONLY"]) == (pytest.approx(1800), pytest.approx(1800))
    regions = polygons((20, 10, 50, 20), (40, 5, 60, 25))
    inside = run("volume", REGIONS=regions, **given)
    area = 20 * 10 + 20 * 20 - 10 * 10  # of the union, where both surfaces are
    assert inside["FILL"] == pytest.approx(2 * area, rel=1e-9)
    assert inside["FIRST_ONLY"] == pytest.approx(100, rel=1e-9)
    more = run("volume", MISSING_LEVEL=11.0, **given)
    assert more["FILL"] == pytest.approx(3600 + 1800 + 1800, rel=1e-9)
    assert (more["FIRST_ONLY"], more["SECOND_ONLY"]) == (0, 0)


def test_surfaces_of_two_systems_and_other_mistakes_are_refused(
    run: Any, solids: Dict[str, str], tmp_path: Path
) -> None:
    said = message_of(run, "volume", EXISTING=solids["level"], DESIGN=solids["east"])
    assert "EPSG:25832" in said
    assert "EPSG:25833" in said
    far = polygons((500, 0, 510, 10))
    given = {"EXISTING": solids["level"], "DESIGN": solids["heap"]}
    assert "inside the regions" in message_of(run, "volume", REGIONS=far, **given)
    assert "must be above 0 and rise" in message_of(run, "volume", LIMITS="1; 0.5", **given)
    assert "ends in .tif" in message_of(run, "volume", RASTER=str(tmp_path / "depth.asc"), **given)
    assert "no polygons" in message_of(run, "volume", REGIONS=polygons(), **given)
    broken = tmp_path / "broken.2dm"
    broken.write_text("MESH2D\nND 1 0 0 zero\n")
    assert "broken.2dm" in message_of(run, "volume", EXISTING=str(broken), DESIGN=solids["heap"])


def test_check_by_sections_is_in_the_page(run: Any, solids: Dict[str, str], tmp_path: Path) -> None:
    line = memory_layer(
        "LineString", [f"LineString({EAST} {NORTH + 30}, {EAST + 60} {NORTH + 30})"], "EPSG:25832", "cl"
    )
    run(
        "volume", EXISTING=solids["level"], DESIGN=solids["heap"], LINE=line, STEP=5.0, HALF_WIDTH=30.0,
        HTML=str(tmp_path / "page.html"),
    )  # fmt: skip
    page = (tmp_path / "page.html").read_text(encoding="utf-8")
    assert "average end areas every 5 m" in page
    assert "prismoidal formula every 5 m" in page
    assert page.count("4\u202f667") >= 3  # the frustum's 4666.7 m³, exact, by prismoids and in the lead


# To a level or plane


def test_to_a_level_and_to_planes(run: Any, solids: Dict[str, str]) -> None:
    assert run("volumetoplane", INPUT=solids["heap"], LEVEL=10.0)["CUT"] == pytest.approx(FRUSTUM, rel=1e-9)
    # 2 % down to the east through the middle: half of a wedge of 60 x 30 with 0.6 m at its edge on each side
    wedge = 60 * 30 * 0.6 / 2
    sloped = run("volumetoplane", INPUT=solids["level"], LEVEL=10.0, SLOPE=2.0, TOWARDS=90.0)
    assert (sloped["CUT"], sloped["FILL"]) == (pytest.approx(wedge, rel=1e-9), pytest.approx(wedge, rel=1e-9))
    place = f"{EAST},{NORTH + 30} [EPSG:25832]"
    sloped = run("volumetoplane", INPUT=solids["level"], LEVEL=10.0, SLOPE=2.0, TOWARDS=90.0, PLACE=place)
    assert (sloped["CUT"], sloped["FILL"]) == (pytest.approx(60 * 60 * 1.2 / 2, rel=1e-9), 0)
    points = memory_layer(
        "PointZ",
        [f"PointZ({EAST + x} {NORTH + y} {z})" for x, y, z in ((0, 0, 10), (60, 0, 8.8), (0, 60, 10))],
        "EPSG:25832",
        "three",
    )
    through = run("volumetoplane", INPUT=solids["level"], THREE_POINTS=points)
    assert through["CUT"] == pytest.approx(sloped["CUT"], rel=1e-9)
    assert "not both" in message_of(run, "volumetoplane", INPUT=solids["level"])
    assert "not both" in message_of(run, "volumetoplane", INPUT=solids["level"], LEVEL=1.0, THREE_POINTS=points)
    points.dataProvider().deleteFeatures([points.allFeatureIds()[0]])
    assert "exactly three" in message_of(run, "volumetoplane", INPUT=solids["level"], THREE_POINTS=points)


# By region


def test_regions_add_up_to_the_whole(run: Any, solids: Dict[str, str], tmp_path: Path) -> None:
    regions = polygons((0, 0, 30, 60), (30, 0, 60, 60), names=("west", "east"))
    found = run(
        "volumebyregion", EXISTING=solids["heap"], LEVEL=10.0, REGIONS=regions, NAME_FIELD="name", LIMITS="2.5",
        LAYERS=[solids["rock"]], UPPERMOST="sand", OUTPUT=str(tmp_path / "regions.gpkg"),
        TABLE=str(tmp_path / "table.gpkg"), CLASSES=str(tmp_path / "classes.gpkg"),
        MATERIALS=str(tmp_path / "materials.gpkg"), HTML=str(tmp_path / "page.html"),
    )  # fmt: skip
    assert found["CUT"] == pytest.approx(FRUSTUM, rel=1e-9)
    parts = {row["region"]: row for row in rows(found["OUTPUT"])}
    assert set(parts) == {"west", "east"}
    for row in parts.values():
        assert row["cut_m3"] == pytest.approx(FRUSTUM / 2, rel=1e-9)
        assert row["compared_m2"] == pytest.approx(1800, rel=1e-9)
        assert row["mean_cut_m"] == pytest.approx(FRUSTUM / 1600)
        assert row["cut_95_m3"] > 0
        assert row.geometry().area() == pytest.approx(1800)
    table = rows(found["TABLE"])
    assert len(table) == 3 * 3
    classes = [row for row in rows(found["CLASSES"]) if row["region"] in parts]
    assert sum(row["volume_m3"] for row in classes) == pytest.approx(FRUSTUM, rel=1e-9)
    # rock from 12 m down: a frustum of 2 m under 32 x 32 m, the sand above it a frustum of 3 m
    rock = 2 / 3 * (40**2 + 32**2 + 40 * 32)
    cut = {(row["region"], row["material"]): row["cut_m3"] for row in rows(found["MATERIALS"])}
    assert cut["west", "rock"] == pytest.approx(rock / 2, rel=1e-9)
    assert cut["east", "sand"] == pytest.approx((FRUSTUM - rock) / 2, rel=1e-9)
    assert cut["west", "not known"] == pytest.approx(0, abs=1e-9)
    page = (tmp_path / "page.html").read_text(encoding="utf-8")
    for text in ("west", "east", "sand", "rock"):
        assert text in page


def test_overlapping_regions_are_told_and_names_stay_apart(run: Any, solids: Dict[str, str]) -> None:
    listener = Listener()
    regions = polygons((0, 0, 30, 60), (20, 0, 60, 60), names=("a", "a"))
    found = run(
        "volumebyregion", listener, EXISTING=solids["level"], DESIGN=solids["heap"], REGIONS=regions,
        NAME_FIELD="name", OUTPUT="TEMPORARY_OUTPUT",
    )  # fmt: skip
    assert [row["region"] for row in rows(found["OUTPUT"])] == ["a", "a (2)"]
    assert any("overlap over 600.0 m²" in text for text in listener.warnings)
    both = {"EXISTING": solids["level"], "REGIONS": regions, "OUTPUT": "TEMPORARY_OUTPUT"}
    assert "not both" in message_of(run, "volumebyregion", **both)
    assert "not both" in message_of(run, "volumebyregion", DESIGN=solids["heap"], LEVEL=1.0, **both)


def test_regions_in_another_crs_come_by_an_operation_that_is_named(run: Any, solids: Dict[str, str]) -> None:
    from pyproj import Transformer

    west, south = Transformer.from_crs(25832, 4258, always_xy=True).transform(EAST, NORTH)
    east, north = Transformer.from_crs(25832, 4258, always_xy=True).transform(EAST + 60, NORTH + 60)
    places = [(west, south), (east, south), (east, north), (west, north), (west, south)]
    around = memory_layer("Polygon", [f"Polygon(({', '.join(f'{x} {y}' for x, y in places)}))"], "EPSG:4258", "site")
    asked = {"EXISTING": solids["level"], "DESIGN": solids["heap"], "OUTPUT": "TEMPORARY_OUTPUT"}
    listener = Listener()
    run("volumebyregion", listener, REGIONS=around, **asked)
    (said,) = [text for text in listener.infos if "PROJ operation" in text]
    assert said.startswith("site: Positions transformed from EPSG:4258")
    assert "'UTM zone 32N'" in said
    listener = Listener()
    run("volumebyregion", listener, REGIONS=polygons((0, 0, 60, 60)), **asked)
    assert not any("PROJ operation" in text for text in listener.infos)


# Stockpiles and basins


@pytest.mark.parametrize("base", [0, 1, 2, 3])
def test_stockpile_on_each_base(run: Any, solids: Dict[str, str], tmp_path: Path, base: int) -> None:
    """The toe is level, so all bases are the same."""
    toe = polygons((10, 10, 50, 50), names=("heap",))
    found = run(
        "stockpile", INPUT=solids["heap"], LINES=toe, NAME_FIELD="name", BASE=base, OUTPUT="TEMPORARY_OUTPUT",
        HTML=str(tmp_path / "page.html"),
    )  # fmt: skip
    (row,) = rows(found["OUTPUT"])
    assert found["ABOVE"] == row["above_m3"] == pytest.approx(FRUSTUM, rel=1e-9)
    assert row["below_m3"] == pytest.approx(0, abs=1e-6)
    assert (row["base_m2"], row["highest_m"]) == (pytest.approx(1600), pytest.approx(5))
    assert row["name"] == "heap"
    assert row["above_95_m3"] > 0
    assert "heap" in (tmp_path / "page.html").read_text(encoding="utf-8")


def test_pit_from_a_line_with_heights(run: Any, solids: Dict[str, str]) -> None:
    ring = [(10, 10), (50, 10), (50, 50), (10, 50), (10, 10)]
    text = "LineStringZ(" + ", ".join(f"{EAST + x} {NORTH + y} 10.5" for x, y in ring) + ")"
    line = memory_layer("LineStringZ", [text], "EPSG:25832", "rims")
    laid = run("stockpile", INPUT=solids["pit"], LINES=line, OUTPUT="TEMPORARY_OUTPUT")
    assert laid["BELOW"] == pytest.approx(FRUSTUM, rel=1e-9)
    own = run("stockpile", INPUT=solids["pit"], LINES=line, OWN_HEIGHTS=True, OUTPUT="TEMPORARY_OUTPUT")
    assert own["BELOW"] == pytest.approx(FRUSTUM + 0.5 * 1600, rel=1e-9)
    open_line = memory_layer(
        "LineStringZ", [text.replace(f", {EAST + 10} {NORTH + 10} 10.5)", ")")], "EPSG:25832", "rims"
    )
    assert "not one closed line" in message_of(
        run, "stockpile", INPUT=solids["pit"], LINES=open_line, OUTPUT="TEMPORARY_OUTPUT"
    )


def test_basin_of_an_upside_down_frustum(run: Any, solids: Dict[str, str], tmp_path: Path) -> None:
    """Volume at depth d over a floor of 20 x 20 with sides of 2 : 1: d/3 (20² + (20 + 4 d)² + 20 (20 + 4 d))."""
    found = run(
        "basinstorage", INPUT=solids["pit"], STEPS=10, TABLE=str(tmp_path / "curve.gpkg"),
        WATER=str(tmp_path / "water.gpkg"), PLACES="TEMPORARY_OUTPUT", HTML=str(tmp_path / "page.html"),
    )  # fmt: skip
    assert found["CAPACITY"] == pytest.approx(FRUSTUM, rel=1e-9)
    assert found["WATER_AREA"] == pytest.approx(1600, rel=1e-9)
    assert (found["PIT_LEVEL"], found["SPILL_LEVEL"]) == (pytest.approx(5), pytest.approx(10))
    assert found["CAPACITY_95"] > 1.96 * 0.015 * 1600
    curve = rows(found["TABLE"])
    assert len(curve) == 11
    for row in curve:
        d = row["above_pit_m"]
        side = 20 + 4 * d
        assert row["volume_m3"] == pytest.approx(d / 3 * (400 + side**2 + 20 * side), rel=1e-9, abs=1e-9)
        assert row["level"] == pytest.approx(5 + d)
    water = rows(found["WATER"])
    assert sum(row["area_m2"] for row in water) == pytest.approx(1600, rel=1e-6)
    assert {row["kind"] for row in water} == {"water"}
    assert {row["place"] for row in rows(found["PLACES"])} == {"pit", "spill"}
    assert "spills" in (tmp_path / "page.html").read_text(encoding="utf-8")
    here = f"{EAST + 30},{NORTH + 30} [EPSG:25832]"
    assert run("basinstorage", INPUT=solids["pit"], PLACE=here)["CAPACITY"] == pytest.approx(FRUSTUM, rel=1e-9)
    assert "no basin" in message_of(run, "basinstorage", INPUT=solids["heap"], PLACE=here)


# Styles and cancelling


def test_outputs_are_loaded_with_their_style(project: Any, solids: Dict[str, str], tmp_path: Path) -> None:
    from processing.core.Processing import Processing  # noqa: F401
    from processing.tools.general import runAndLoadResults  # noqa: F401  the call below is what the toolbox does
    from qgis.core import QgsApplication, QgsProcessingContext, QgsProcessingUtils

    context = QgsProcessingContext()
    context.setProject(project)
    parameters = {"EXISTING": solids["level"], "DESIGN": solids["heap"], "LIMITS": "1; 2.5"}
    details = QgsProcessingContext.LayerDetails
    outputs = {"POLYGONS": "depth.gpkg", "ZERO_LINE": "zero.gpkg", "RASTER": "depth.tif"}
    for name, file in outputs.items():
        path = str(tmp_path / file)
        parameters[name] = path
        context.addLayerToLoadOnCompletion(path, details(name, project, name))
    algorithm = QgsApplication.processingRegistry().algorithmById("hummock:volume")
    results, good = algorithm.run(parameters, context, Listener().feedback)
    assert good
    dressed = {}
    for path, detail in context.layersToLoadOnCompletion().items():
        layer = QgsProcessingUtils.mapLayerFromString(path, context)
        if detail.postProcessor():
            detail.postProcessor().postProcessLayer(layer, context, Listener().feedback)
        dressed[detail.outputName] = layer
    legend = [category.label() for category in dressed["POLYGONS"].renderer().categories()]
    assert legend == ["unchanged", "fill 0 to 1 m", "fill 1 to 2.5 m", "fill over 2.5 m"]
    items = dressed["RASTER"].renderer().shader().rasterShaderFunction().colorRampItemList()
    assert [item.label for item in items][-1] == "fill over 2.5 m"
    assert len({item.color.name() for item in items}) == 6
    assert results["FILL"] == pytest.approx(FRUSTUM)


def test_cancelled_in_the_middle_there_is_no_result(run: Any, solids: Dict[str, str]) -> None:
    listener = Listener(cancel_at=30)
    assert run("volume", listener, EXISTING=solids["level"], DESIGN=solids["heap"]) == {}


def test_in_feet_levels_are_feet_and_volumes_metric(run: Any, tmp_path: Path) -> None:
    """A level square of 100 x 100 US survey feet at 10 ft, cut to 8 ft: 20,000 cubic feet, but for the 0.1 mm grid."""
    from osgeo import gdal

    foot = 1200 / 3937  # NIST SP 811
    crs = CRS.from_epsg(2263)
    xyz = (square(100, 10.0) + np.array([980_000, 200_000, 0])) * foot
    path = tmp_path / "feet.2dm"
    write_2dm(build_surface(make_points(*xyz.T, crs=crs)).tin, path)
    write_prj(path, crs)
    found = run(
        "volumetoplane", INPUT=str(path), LEVEL=8.0, CELL=10.0, RASTER=str(tmp_path / "depth.tif"),
        POLYGONS=str(tmp_path / "depth.gpkg"), HTML=str(tmp_path / "page.html"),
    )  # fmt: skip
    assert found["CUT"] == pytest.approx(20_000 * foot**3, rel=1e-5)
    raster = gdal.Open(found["RASTER"])
    assert raster.GetGeoTransform()[1] == 10.0
    assert raster.GetRasterBand(1).ReadAsArray() == pytest.approx(np.full((10, 10), -2.0), abs=1e-5)
    (row,) = rows(found["POLYGONS"])
    assert row.geometry().area() == pytest.approx(10_000, rel=1e-5)
    assert row["area_m2"] == pytest.approx(10_000 * foot**2, rel=1e-5)
    page = (tmp_path / "page.html").read_text(encoding="utf-8")
    assert "cut 740.7 ± " in page  # cubic yards: 20,000 / 27
    assert "yd³" in page


def test_labels_never_say_less_than_nothing(application: Any) -> None:
    from qgis.core import QgsExpression, QgsExpressionContext, QgsFeature, QgsField, QgsFields
    from qgis.PyQt.QtCore import QVariant

    from plugin.processing import stockpile, volumebyregion

    def label(text: str, **values: Any) -> str:
        columns = QgsFields()
        for name, value in values.items():
            columns.append(QgsField(name, QVariant.String if isinstance(value, str) else QVariant.Double))
        feature = QgsFeature(columns)
        feature.setAttributes(list(values.values()))
        context = QgsExpressionContext()
        context.setFeature(feature)
        context.setFields(columns)
        return str(QgsExpression(text.format(factor="", unit="m³")).evaluate(context))

    told = label(volumebyregion._LABEL, region="3", cut_m3=-0.3, cut_95_m3=1.2, fill_m3=329.4, fill_95_m3=8.1)
    assert told == "3\ncut 0 ± 1 m³\nfill 329 ± 8 m³"
    told = label(stockpile._LABEL, name="a", above_m3=-12.64, above_95_m3=0.2, below_m3=-0.04, below_95_m3=0.1)
    assert told == "a\nabove -12.6 ± 0.2 m³\nbelow 0.0 ± 0.1 m³"
