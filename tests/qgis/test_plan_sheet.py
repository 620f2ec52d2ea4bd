"""The topographic plan: its PDF read by another library, its layers, its layout in the project."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any, Dict, List

import pypdf
import pytest
from in_qgis import DEMO, Listener, layer_of, message_of
from test_whole_files import contents

MM = 72 / 25.4


def texts_of(path: str) -> List[str]:
    return [page.extract_text() for page in pypdf.PdfReader(path).pages]


def fonts_of(path: str) -> List[Any]:
    """The descriptors of all fonts of the file."""
    found = []
    for page in pypdf.PdfReader(path).pages:
        for font in page["/Resources"]["/Font"].values():
            font = font.get_object()
            inner = font["/DescendantFonts"][0].get_object() if "/DescendantFonts" in font else font
            found.append(inner["/FontDescriptor"].get_object())
    return found


@pytest.fixture
def plan(run: Any, project: Any, chain: Dict[str, Any], tmp_path: Path) -> Any:
    """``plan(**parameters)``: the plan of the demo with these changes."""

    def make(**changes: Any) -> Dict[str, Any]:
        asked = {
            "INPUT": chain["surface"]["OUTPUT"],
            "INTERVAL": 0.25,
            "SCALE": 500,
            "PAPER": 1,
            "LINES": chain["surface"]["LINES"],
            "PARCELS": f"{DEMO / 'site.gpkg'}|layername=parcels",
            "TITLE": "Pippin Field",
            "AUTHOR": "Orchard Desk",
            "SURVEYED": "2026-05-12",
            "OUTPUT": str(tmp_path / "plan.pdf"),
            "LAYERS": str(tmp_path / "plan.gpkg"),
        }
        return dict(run("plansheet", **{**asked, **changes}))

    return make


def test_one_sheet_says_all_that_its_reader_needs(plan: Any) -> None:
    made = plan(CHECKS_FILE=str(DEMO / "check_points.csv"), HEIGHT_DATUM="site datum of 2026")
    reader = pypdf.PdfReader(made["OUTPUT"])
    assert len(reader.pages) == made["SHEETS"] == 1
    box = reader.pages[0].mediabox
    assert (float(box.width), float(box.height)) == (pytest.approx(420 * MM, abs=1), pytest.approx(297 * MM, abs=1))
    text = " ".join(texts_of(made["OUTPUT"])[0].split())
    for said in (
        "Pippin Field",
        "Orchard Desk",
        "2026-05-12",
        "1 : 500",
        "EPSG:25832",
        "site datum of 2026",
        "Contour interval 0.25 m",
        "FGDC-STD-007.3-1998",
        "548300",  # a grid mark's easting
        "5712450",
        "Perry Lane",  # a parcel's name
        "Not for setting out",
        "Index contour",
    ):
        assert said in text, said
    assert re.search(r"\b8[4-9]\.\d\d\b", text)  # spot heights


def test_text_is_text_with_fonts_inside_and_no_picture(plan: Any) -> None:
    made = plan()
    fonts = fonts_of(made["OUTPUT"])
    assert fonts
    assert all(any(name in font for name in ("/FontFile", "/FontFile2", "/FontFile3")) for font in fonts)
    page = pypdf.PdfReader(made["OUTPUT"]).pages[0]
    assert len(page.images) == 0
    assert "not tested" in " ".join(texts_of(made["OUTPUT"])[0].split())


def test_many_sheets_cover_the_site_with_a_key_map_on_each(plan: Any) -> None:
    made = plan(SCALE=250, PAPER=0)
    pages = texts_of(made["OUTPUT"])
    assert len(pages) == made["SHEETS"] > 3
    for number, page in enumerate(pages, 1):
        assert f"{number} / {made['SHEETS']}" in " ".join(page.split())
    frames = layer_of(f"{made['LAYERS']}|layername=sheets")
    contours = layer_of(f"{made['LAYERS']}|layername=contours")
    assert frames.featureCount() == made["SHEETS"]
    from qgis.core import QgsGeometry

    every = QgsGeometry.unaryUnion([frame.geometry() for frame in frames.getFeatures()])
    for line in contours.getFeatures():
        assert every.contains(line.geometry())
    # 1 : 250 on paper: the frame of the map in metres
    from plugin.processing.planlayout import sheet_paper

    wide = next(frames.getFeatures()).geometry().boundingBox().width()
    assert wide == pytest.approx(sheet_paper(0, False).map.width() * 0.25, abs=1e-6)


def test_spot_heights_keep_apart_and_are_those_of_the_surface(plan: Any, run: Any, chain: Dict[str, Any]) -> None:

    made = plan()
    spots = layer_of(f"{made['LAYERS']}|layername=spot_heights")
    assert spots.featureCount() == made["SPOT_COUNT"] > 30
    asked = run("surfaceatpoints", INPUT=chain["surface"]["OUTPUT"], POINTS=spots, OUTPUT="TEMPORARY_OUTPUT")
    for feature in asked["OUTPUT"].getFeatures():
        assert feature["tin_height"] == pytest.approx(feature["height"], abs=1e-3)
    places = [f.geometry().vertexAt(0) for f in spots.getFeatures()]
    ground = [p for p, f in zip(places, spots.getFeatures()) if f["kind"] == "ground"]
    for i, one in enumerate(ground):
        assert min((one.distance(other) for j, other in enumerate(ground) if j != i), default=99) >= 0.0175 * 500


def test_labels_are_drawn_in_the_order_of_their_rows_the_contours_last(plan: Any, project: Any) -> None:
    """QGIS would draw labels of the same width in an order by chance, and the plan were not the same twice."""
    made = plan(KEEP=False)
    drawn: List[str] = []
    (page,) = pypdf.PdfReader(made["OUTPUT"]).pages
    page.extract_text(visitor_text=lambda text, *_: drawn.append(text.strip()))
    rows = {
        name: [f["text"] for f in layer_of(f"{made['LAYERS']}|layername={name}").getFeatures()][::-1]
        for name in ("spot_heights", "contour_labels")
    }
    there = [text for text in drawn if text in {*rows["spot_heights"], *rows["contour_labels"]}]
    spots, contours = there[: -len(rows["contour_labels"])], there[-len(rows["contour_labels"]) :]
    assert contours == rows["contour_labels"]
    assert len(spots) > 30
    waiting = iter(rows["spot_heights"])
    assert all(spot in waiting for spot in spots)  # in this order, some without room left out


def test_the_legend_says_what_the_colours_of_a_surface_are(plan: Any, project: Any, chain: Dict[str, Any]) -> None:
    from qgis.core import QgsLayoutItemLegend

    plan(OTHERS=[chain["surface"]["OUTPUT"]])
    (layout,) = project.layoutManager().layouts()
    (legend,) = [item for item in layout.items() if isinstance(item, QgsLayoutItemLegend)]
    nodes = [node for tree in legend.model().rootGroup().findLayers() for node in legend.model().layerLegendNodes(tree)]
    said = {str(node.data(0)) for node in nodes}  # 0: what is displayed
    assert "Height (unit of the CRS)" in said
    assert "Bed Elevation" not in said


def test_the_layout_and_layers_are_in_the_project_and_a_second_run_replaces_them(plan: Any, project: Any) -> None:
    made = plan()
    assert [layout.name() for layout in project.layoutManager().layouts()] == ["Pippin Field"]
    own = [layer for layer in project.mapLayers().values() if made["LAYERS"] in layer.source()]
    assert len(own) == 4
    plan()
    assert [layout.name() for layout in project.layoutManager().layouts()] == ["Pippin Field"]
    assert len([layer for layer in project.mapLayers().values() if made["LAYERS"] in layer.source()]) == 4
    assert len(project.layerTreeRoot().children()) == 1
    layout = project.layoutManager().layouts()[0]
    from qgis.core import QgsLayoutItemMap

    plans = [item for item in layout.items() if isinstance(item, QgsLayoutItemMap)]
    assert plans[0].scale() == pytest.approx(500, rel=1e-6)


def test_styles_are_inside_the_geopackage(plan: Any, project: Any) -> None:
    made = plan(KEEP=False)
    assert len(project.mapLayers()) == 0
    assert project.layoutManager().layouts() == []
    labels = layer_of(f"{made['LAYERS']}|layername=contour_labels")
    _, _, names, _, _ = labels.listStylesInDatabase()
    assert {"Contour labels", "Contours", "Sheets", "Spot heights"} <= set(names)
    contours = layer_of(f"{made['LAYERS']}|layername=contours")
    assert contours.renderer().type() != "singleSymbol"  # the style inside was taken


def test_the_same_plan_has_the_same_layers(plan: Any, tmp_path: Path) -> None:
    one, other = (
        contents(Path(plan(KEEP=False, LAYERS=str(tmp_path / name))["LAYERS"])) for name in ("1.gpkg", "2.gpkg")
    )
    assert one == other


def test_what_cannot_be_drawn_is_refused(run: Any, chain: Dict[str, Any], tmp_path: Path) -> None:
    files = {"OUTPUT": str(tmp_path / "plan.pdf"), "LAYERS": str(tmp_path / "plan.gpkg")}
    said = message_of(run, "plansheet", INPUT=chain["surface"]["OUTPUT"], SCALE=1, PAPER=0, **files)
    assert "sheets" in said
    assert list(tmp_path.iterdir()) == []


def test_a_cancelled_plan_leaves_no_file(run: Any, project: Any, chain: Dict[str, Any], tmp_path: Path) -> None:
    files = {"OUTPUT": str(tmp_path / "plan.pdf"), "LAYERS": str(tmp_path / "plan.gpkg")}
    run("plansheet", Listener(cancel_at=20), INPUT=chain["surface"]["OUTPUT"], **files)
    assert list(tmp_path.iterdir()) == []
    assert project.layoutManager().layouts() == []


def test_check_points_come_from_a_layer_too(plan: Any) -> None:
    from qgis.core import QgsVectorLayer

    source = f"file://{DEMO / 'check_points.csv'}?xField=easting&yField=northing&zField=height&crs=EPSG:25832"
    checks = QgsVectorLayer(source, "checks", "delimitedtext")
    assert checks.isValid()
    text = " ".join(texts_of(plan(CHECKS=checks, HEIGHT_FIELD="height")["OUTPUT"])[0].split())
    assert "FGDC-STD-007.3-1998; 24 check points" in text
