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

    paper = sheet_paper(0, False).map
    area = next(frames.getFeatures()).geometry().area()
    assert area == pytest.approx(paper.width() * paper.height() * 0.25**2, rel=1e-6)


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
    assert len(own) == 6  # contours, labels, spot heights, sheets, lines, parcels
    plan()
    assert [layout.name() for layout in project.layoutManager().layouts()] == ["Pippin Field"]
    assert len([layer for layer in project.mapLayers().values() if made["LAYERS"] in layer.source()]) == 6
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


def test_sheets_are_turned_along_a_street(run: Any, project: Any, tmp_path: Path) -> None:
    """A street of 170 m by 16 m that runs at 30 degrees takes two sheets at 1 : 500, north at the top three."""
    import numpy as np
    from qgis.core import QgsLayoutItemMap

    random = np.random.default_rng(8)
    u, v = (grid.ravel() for grid in np.meshgrid(np.arange(0, 170, 2.0), np.arange(-8, 8.1, 2.0)))
    u, v = u + random.uniform(-0.3, 0.3, len(u)), v + random.uniform(-0.3, 0.3, len(v))
    turn = np.radians(30)
    x, y = 548_000 + u * np.cos(turn) - v * np.sin(turn), 5_712_000 + u * np.sin(turn) + v * np.cos(turn)
    points = tmp_path / "street.csv"
    rows = (f"{i},{e:.3f},{n:.3f},{80 + 0.02 * w:.3f}" for i, (e, n, w) in enumerate(zip(x, y, u)))
    points.write_text("name,easting,northing,height\n" + "\n".join(rows), encoding="utf-8")
    read = run("importpoints", INPUT=str(points), CRS="EPSG:25832", OUTPUT=str(tmp_path / "points.gpkg"))
    mesh = run("buildsurface", INPUT=read["OUTPUT"], MAX_RIM_EDGE=6, OUTPUT=str(tmp_path / "street.2dm"))["OUTPUT"]
    files = {"OUTPUT": str(tmp_path / "plan.pdf"), "LAYERS": str(tmp_path / "plan.gpkg")}
    made = run("plansheet", INPUT=mesh, SCALE=500, PAPER=0, INTERVAL=0.5, **files)
    assert made["SHEETS"] == 2
    frames = list(layer_of(f"{made['LAYERS']}|layername=sheets").getFeatures())
    assert [frame["turn"] for frame in frames] == [pytest.approx(30, abs=6)] * 2
    (layout,) = project.layoutManager().layouts()
    main = next(item for item in layout.items() if isinstance(item, QgsLayoutItemMap) and item.atlasDriven())
    layout.atlas().setEnabled(True)
    assert layout.atlas().beginRender()
    for frame in frames:
        assert layout.atlas().next()
        main.refresh()
        assert main.mapRotation() == pytest.approx(frame["turn"])
        assert main.scale() == pytest.approx(500, rel=1e-6)
        middle = main.extent().center()
        assert frame.geometry().centroid().asPoint().distance(middle) < 0.01


def test_each_line_is_drawn_as_what_it_is_and_the_legend_says_so(plan: Any, project: Any) -> None:
    made = plan()
    lines = layer_of(f"{made['LAYERS']}|layername=lines")
    there = {feature["symbol"] for feature in lines.getFeatures()}
    shown = [category.label() for category in lines.renderer().categories()]
    assert {"Kerb or step (top)", "Edge of a ditch", "Boundary of the survey"} <= there
    assert set(shown) == there
    widths = {c.label(): c.symbol().width() for c in lines.renderer().categories()}
    assert widths["Kerb or step (top)"] > widths["Kerb or step (foot)"]
    text = " ".join(texts_of(made["OUTPUT"])[0].split())
    assert all(name in text for name in there)


def test_lines_are_drawn_by_a_table_of_ones_own(plan: Any, tmp_path: Path) -> None:
    table = tmp_path / "mine.csv"
    table.write_text(
        "words,kind,name,colour,width_mm,dashes,mark,every_mm\nKT,,Bordure,#123456,0.6,,tick,3\n,,Rest,#000000,0.1,,,\n",
        encoding="utf-8",
    )
    lines = layer_of(f"{plan(SYMBOLS=str(table), KEEP=False)['LAYERS']}|layername=lines")
    assert {feature["symbol"] for feature in lines.getFeatures()} == {"Bordure", "Rest"}


def test_parcels_are_outlines_with_their_names(plan: Any, project: Any) -> None:
    """However the layer of the project looks: its random fill would hide the plan."""
    from qgis.core import QgsVectorLayer

    own = QgsVectorLayer(f"{DEMO / 'site.gpkg'}|layername=parcels", "parcels", "ogr")
    project.addMapLayer(own)
    made = plan(PARCELS=own)
    parcels = layer_of(f"{made['LAYERS']}|layername=parcels")
    assert parcels.renderer().symbol().symbolLayer(0).brushStyle() == 0  # Qt.NoBrush
    assert "Perry Lane" in {feature["name"] for feature in parcels.getFeatures()}
    assert "Perry Lane" in " ".join(texts_of(made["OUTPUT"])[0].split())


def test_what_is_not_known_is_left_for_the_pen(plan: Any, project: Any) -> None:
    """QGIS puts the name of the login into the properties of a new project; it is no author."""
    from qgis.core import QgsApplication

    from plugin.processing.plantexts import author_of

    metadata = project.metadata()
    for name, said in ((QgsApplication.userLoginName(), ""), ("Pomona Field", "Pomona Field")):
        metadata.setAuthor(name)
        assert author_of(metadata) == said


def test_days_and_decimals_come_from_the_survey() -> None:
    import numpy as np

    from plugin.core.handover.mesh_noise import MeshNoise
    from plugin.core.units import LengthUnit
    from plugin.processing.plantexts import supported_decimals, surveyed_on

    day = 1_778_500_000.0  # 2026-05-11, 11:46 UTC
    assert surveyed_on(MeshNoise(0.01, 0.005, np.array([np.nan, day, day + 60]))) == "2026-05-11"
    assert surveyed_on(MeshNoise(0.01, 0.005, np.array([day, day + 86_400]))) == "2026-05-11 – 2026-05-12"
    assert surveyed_on(MeshNoise(0.01, 0.005)) == surveyed_on(None) == ""
    assert [supported_decimals(MeshNoise(s, 0.0), LengthUnit.METRE) for s in (0.002, 0.012, 0.05, 0.5)] == [3, 2, 1, 0]
    assert supported_decimals(MeshNoise(0.012, 0.0), LengthUnit.US_SURVEY_FOOT) == 1
    assert supported_decimals(None, LengthUnit.METRE) == 2
