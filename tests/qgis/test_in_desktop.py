"""What the desktop does with the algorithms: styles, cancelling, models."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict

import pytest
from in_qgis import SURVEY, Listener, layer_of


def run_and_load(name: str, parameters: Dict[str, Any]) -> Dict[str, Any]:
    """As the toolbox runs an algorithm: outputs are loaded into the project, by their names."""
    import processing
    from qgis.core import QgsProject

    processing.runAndLoadResults(f"hummock:{name}", parameters, feedback=Listener().feedback)
    return {layer.name(): layer for layer in QgsProject.instance().mapLayers().values()}


def test_points_load_with_their_status_in_colour(project: Any) -> None:
    layers = run_and_load("importpoints", {**SURVEY, "OUTPUT": "TEMPORARY_OUTPUT", "REJECTS": "TEMPORARY_OUTPUT"})
    assert set(layers) == {"Survey points", "Rejected lines"}
    renderer = layers["Survey points"].renderer()
    assert renderer.type() == "categorizedSymbol"
    assert renderer.classAttribute() == "status"
    colours = {category.value(): category.symbol().color().name() for category in renderer.categories()}
    # ColorBrewer, RdYlBu in four classes
    assert colours == {"used": "#2c7bb6", "flagged": "#fdae61", "rejected": "#d7191c"}


def test_surface_loads_with_crs_and_height_colours(project: Any, chain: Dict[str, Any], tmp_path: Path) -> None:
    from qgis.PyQt.QtCore import QCoreApplication

    target = str(tmp_path / "surface.2dm")
    parameters = {
        "INPUT": chain["points"]["OUTPUT"],
        "OUTPUT": target,
        "TRIANGLES": "TEMPORARY_OUTPUT",
        "LINES": "TEMPORARY_OUTPUT",
    }
    layers = run_and_load("buildsurface", parameters)
    mesh = next(layer for layer in layers.values() if layer.source() == target)
    assert mesh.crs().authid() == "EPSG:25832"
    settings = mesh.rendererSettings()
    assert settings.activeScalarDatasetGroup() == 0
    scalar = settings.scalarSettings(0)
    shader = scalar.colorRampShader()
    items = shader.colorRampItemList()
    assert items[0].color.name() == "#78c679"  # ColorBrewer, YlGn in five classes
    assert items[-1].color.name() == "#ffffcc"
    heights = [float(line.split()[4]) for line in Path(target).read_text().splitlines() if line.startswith("ND")]
    assert scalar.classificationMinimum() == pytest.approx(min(heights))
    assert scalar.classificationMaximum() == pytest.approx(max(heights))
    QCoreApplication.processEvents()
    node = project.layerTreeRoot().findLayer(mesh.id())
    assert "Height (unit of the CRS)" in [node.customProperty(key) for key in node.customProperties()]
    assert layers["Lines of the surface"].renderer().classAttribute() == "kind"
    assert layers["Triangles"].renderer().type() == "singleSymbol"


def test_surface_is_not_loaded_when_not_wanted(project: Any, chain: Dict[str, Any], tmp_path: Path) -> None:
    parameters = {"INPUT": chain["points"]["OUTPUT"], "OUTPUT": str(tmp_path / "surface.2dm"), "LOAD": False}
    assert run_and_load("buildsurface", parameters) == {}


def test_contours_load_brown_heavier_and_labelled(project: Any, chain: Dict[str, Any]) -> None:
    layers = run_and_load(
        "contours", {"INPUT": chain["surface"]["OUTPUT"], "INTERVAL": 0.25, "OUTPUT": "TEMPORARY_OUTPUT"}
    )
    (name, layer), *others = layers.items()
    assert others == []
    assert name == "Contours every 0.25 m"
    rules = layer.renderer().rootRule().children()
    widths = {rule.filterExpression(): rule.symbol().symbolLayer(0).width() for rule in rules}
    assert {rule.symbol().color().name() for rule in rules} == {"#a6611a"}
    assert min(width for text, width in widths.items() if text.startswith('"index"')) > 2 * max(
        width for text, width in widths.items() if text.startswith("NOT")
    )
    assert layer.labelsEnabled()
    # every contour is drawn by exactly one rule
    drawn = sum(len(list(layer.getFeatures(text))) for text in widths)
    assert drawn == layer.featureCount()


def test_contours_can_be_drawn(project: Any, chain: Dict[str, Any]) -> None:
    """The style really paints: brown pixels where contours are, none without them."""
    from qgis.core import QgsMapRendererParallelJob, QgsMapSettings
    from qgis.PyQt.QtCore import QSize

    from plugin.processing.styles import CONTOURS, apply_qml

    layer = layer_of(chain["contours"]["OUTPUT"])
    apply_qml(layer, CONTOURS)
    settings = QgsMapSettings()
    settings.setLayers([layer])
    settings.setDestinationCrs(layer.crs())
    settings.setExtent(layer.extent())
    settings.setOutputSize(QSize(400, 400))
    job = QgsMapRendererParallelJob(settings)
    job.start()
    job.waitForFinished()
    image = job.renderedImage()
    colours = [image.pixelColor(x, y) for x in range(0, 400, 2) for y in range(0, 400, 2)]
    brown = sum(c.red() > c.green() + 15 > c.blue() + 30 for c in colours)
    assert brown > 0.01 * len(colours)


@pytest.mark.parametrize("at", [0.0, 10.0, 60.0])
@pytest.mark.parametrize("name", ["importpoints", "buildsurface", "contours"])
def test_cancelling_leaves_nothing(run: Any, chain: Dict[str, Any], tmp_path: Path, name: str, at: float) -> None:
    parameters = {
        "importpoints": {**SURVEY, "OUTPUT": "TEMPORARY_OUTPUT"},
        "buildsurface": {"INPUT": chain["points"]["OUTPUT"], "OUTPUT": str(tmp_path / "cancelled.2dm")},
        "contours": {"INPUT": chain["surface"]["OUTPUT"], "INTERVAL": 0.05, "OUTPUT": "TEMPORARY_OUTPUT"},
    }[name]
    listener = Listener(cancel_at=at)
    result = run(name, listener, **parameters)
    assert "OUTPUT" not in result
    assert any("Cancelled" in text for text in listener.infos)
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("name", ["importpoints", "buildsurface", "contours"])
def test_progress_goes_forward_only(run: Any, chain: Dict[str, Any], tmp_path: Path, name: str) -> None:
    parameters = {
        "importpoints": {**SURVEY, "OUTPUT": "TEMPORARY_OUTPUT"},
        "buildsurface": {"INPUT": chain["points"]["OUTPUT"], "OUTPUT": str(tmp_path / "surface.2dm")},
        "contours": {"INPUT": chain["surface"]["OUTPUT"], "INTERVAL": 0.05, "OUTPUT": "TEMPORARY_OUTPUT"},
    }[name]
    listener = Listener()
    run(name, listener, **parameters)
    assert listener.progress == sorted(listener.progress)
    assert listener.progress[0] >= 0.0
    assert 90.0 <= listener.progress[-1] <= 100.0


def test_every_parameter_and_algorithm_explains_itself(application: Any) -> None:
    from qgis.core import QgsApplication

    for algorithm in QgsApplication.processingRegistry().providerById("hummock").algorithms():
        assert "It assumes" in algorithm.shortHelpString()
        assert "What can go wrong" in algorithm.shortHelpString()
        assert algorithm.shortDescription()
        assert algorithm.group()
        assert algorithm.groupId()
        assert len(algorithm.tags()) > 3
        assert not algorithm.icon().isNull()
        assert Path(algorithm.svgIconPath()).exists()
        for parameter in algorithm.parameterDefinitions():
            assert parameter.help(), f"{algorithm.id()} {parameter.name()}"


@pytest.fixture
def model(application: Any) -> Any:
    """A model of the three steps: survey file and CRS in, contours and surface out."""
    from qgis.core import (
        QgsProcessingModelAlgorithm,
        QgsProcessingModelChildAlgorithm,
        QgsProcessingModelChildParameterSource,
        QgsProcessingModelOutput,
        QgsProcessingModelParameter,
        QgsProcessingParameterCrs,
        QgsProcessingParameterFile,
    )

    source = QgsProcessingModelChildParameterSource
    made = QgsProcessingModelAlgorithm("Survey to contours", "tests")
    for parameter in (QgsProcessingParameterFile("survey", "Survey"), QgsProcessingParameterCrs("crs", "CRS")):
        made.addModelParameter(parameter, QgsProcessingModelParameter(parameter.name()))

    def add(name: str, outputs: Dict[str, str], **sources: Any) -> None:
        child = QgsProcessingModelChildAlgorithm(f"hummock:{name}")
        child.setChildId(name)
        for parameter, given in sources.items():
            child.addParameterSources(parameter, [given])
        finals = {}
        for label, output in outputs.items():
            final = QgsProcessingModelOutput(label)
            final.setChildId(name)
            final.setChildOutputName(output)
            finals[label] = final
        child.setModelOutputs(finals)
        made.addChildAlgorithm(child)

    add("importpoints", {}, INPUT=source.fromModelParameter("survey"), CRS=source.fromModelParameter("crs"))
    add(
        "buildsurface",
        {"surface": "OUTPUT"},
        INPUT=source.fromChildOutput("importpoints", "OUTPUT"),
        MAX_RIM_EDGE=source.fromStaticValue(10.0),
        LOAD=source.fromStaticValue(False),
    )
    add(
        "contours",
        {"contours": "OUTPUT"},
        INPUT=source.fromChildOutput("buildsurface", "SURFACE"),
        INTERVAL=source.fromStaticValue(0.5),
    )
    return made


def test_a_model_runs_the_three_steps(project: Any, model: Any, tmp_path: Path) -> None:
    import processing

    surface = tmp_path / "surface.2dm"
    result = processing.run(
        model,
        {
            "survey": SURVEY["INPUT"],
            "crs": SURVEY["CRS"],
            "buildsurface:surface": str(surface),
            "contours:contours": str(tmp_path / "contours.gpkg"),
        },
        feedback=Listener().feedback,
    )
    contours = layer_of(result["contours:contours"])
    assert contours.featureCount() > 0
    assert contours.crs().authid() == "EPSG:25832"
    assert surface.exists()
