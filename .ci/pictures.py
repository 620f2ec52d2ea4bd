"""Runs inside QGIS (see .ci/pictures): the demo through the toolbox's algorithms, and pictures of it."""

import os
import shutil
import traceback
from pathlib import Path

import processing
from qgis.core import (
    QgsLayoutExporter,
    QgsMapRendererParallelJob,
    QgsMapSettings,
    QgsMeshLayer,
    QgsProject,
    QgsRectangle,
)
from qgis.PyQt.QtCore import QEventLoop, QSize, Qt, QTimer
from qgis.PyQt.QtGui import QColor
from qgis.PyQt.QtWidgets import QDockWidget
from qgis.utils import iface, plugins

ROOT = Path(os.environ["HUMMOCK_ROOT"])
PICTURES = Path(os.environ["HUMMOCK_PICTURES"])
SCRATCH = Path(os.environ["HUMMOCK_SCRATCH"])
DEMO = ROOT / "test_data" / "demo"


def wait(seconds: float) -> None:
    """Let QGIS draw."""
    loop = QEventLoop()
    QTimer.singleShot(int(seconds * 1000), loop.quit)
    loop.exec_() if hasattr(loop, "exec_") else loop.exec()


def run_demo():
    """Points, surface, lines and contours of the demo as layers; a dict of them by what they are."""
    imported = processing.run(
        "hummock:importpoints",
        {"INPUT": str(DEMO / "survey.csv"), "CRS": "EPSG:25832", "OUTPUT": str(SCRATCH / "imported.gpkg")},
    )
    points = processing.runAndLoadResults(
        "hummock:checksurvey", {"INPUT": imported["OUTPUT"], "OUTPUT": str(SCRATCH / "points.gpkg")}
    )
    surface = processing.runAndLoadResults(
        "hummock:buildsurface",
        {
            "INPUT": points["OUTPUT"],
            "MAX_RIM_EDGE": 10,
            "OUTPUT": str(SCRATCH / "surface.2dm"),
            "LINES": str(SCRATCH / "lines.gpkg"),
            "TRIANGLES": str(SCRATCH / "triangles.gpkg"),
        },
    )
    processing.runAndLoadResults(
        "hummock:contours",
        {"INPUT": surface["OUTPUT"], "INTERVAL": 0.25, "OUTPUT": str(SCRATCH / "contours.gpkg")},
    )
    found = {Path(layer.source().split("|")[0]).stem: layer for layer in QgsProject.instance().mapLayers().values()}
    titles = {"points": "Checked points", "lines": "Lines", "triangles": "Triangles"}
    for name, title in titles.items():
        found[name].setName(title)
    return found


def order(found, names):
    """Put the layers in the order of ``names``, first on top; show only those."""
    root = QgsProject.instance().layerTreeRoot()
    for name in reversed(list(found)):
        node = root.findLayer(found[name])
        node.setItemVisibilityChecked(name in names)
    for name in reversed(names):
        node = root.findLayer(found[name])
        copy = node.clone()
        root.insertChildNode(0, copy)
        root.removeChildNode(node)
    for node in root.findLayers():
        node.setExpanded(node.itemVisibilityChecked() and node.name() != "Surface, height")


def window(name, extent):
    """A picture of QGIS's whole window with the map at ``extent``."""
    canvas = iface.mapCanvas()
    canvas.setExtent(extent)
    canvas.refresh()
    wait(4)
    iface.mainWindow().grab().save(str(PICTURES / name))


def map_picture(name, shown, extent, size=(1400, 900)):
    """The map alone."""
    settings = QgsMapSettings()
    settings.setLayers(shown)
    settings.setDestinationCrs(shown[0].crs())
    settings.setExtent(extent)
    settings.setOutputSize(QSize(*size))
    settings.setOutputDpi(110)
    settings.setBackgroundColor(QColor("white"))
    for flag in ("Antialiasing", "DrawLabeling", "UseAdvancedEffects"):
        settings.setFlag(getattr(QgsMapSettings, flag), True)
    job = QgsMapRendererParallelJob(settings)
    job.start()
    job.waitForFinished()
    job.renderedImage().save(str(PICTURES / name))


def road_picture(name, found):
    """The rules along the demo's lane, and which way its crossfall leads water."""
    made = processing.runAndLoadResults(
        "hummock:checkline",
        {
            "INPUT": found["surface"].source(),
            "LINE": f"{DEMO / 'site.gpkg'}|layername=centreline",
            "LANE_LEFT": 2.3,
            "LANE_RIGHT": 2.3,
            "POINTS": found["points"].source(),
            "OUTPUT": str(SCRATCH / "checks.gpkg"),
            "FLOW": str(SCRATCH / "flow.gpkg"),
        },
    )
    layers = {Path(layer.source().split("|")[0]).stem: layer for layer in QgsProject.instance().mapLayers().values()}
    extent = around(layers["checks"].extent(), 0.12)
    map_picture(name, [layers["checks"], layers["flow"], found["surface"]], extent, (1400, 640))
    assert made["PASSED"] > 0


def volume_picture(name, found):
    """What was moved since the demo's earlier survey, by phases of the work."""
    made = processing.runAndLoadResults(
        "hummock:volumebyregion",
        {
            "EXISTING": str(DEMO / "before.2dm"),
            "DESIGN": found["surface"].source(),
            "REGIONS": str(DEMO / "phases.geojson"),
            "NAME_FIELD": "name",
            "SIGMA": 0.015,
            "SECOND_SIGMA": 0.014,
            "LIMITS": "0.05; 0.1; 0.25; 0.5",
            "OUTPUT": str(SCRATCH / "volumes.gpkg"),
            "POLYGONS": str(SCRATCH / "depths.gpkg"),
        },
    )
    layers = {Path(layer.source().split("|")[0]).stem: layer for layer in QgsProject.instance().mapLayers().values()}
    map_picture(name, [layers["volumes"], layers["depths"]], around(layers["depths"].extent(), 0.06), (1400, 1000))
    assert made["FILL"] > 0


def desk_picture(name, plan_name, folder):
    """The survey desk after it has run everything, and the plan it made."""
    QgsProject.instance().clear()
    plugin = plugins["hummock"]
    plugin.show_desk(True)
    desk = plugin.desk
    survey = folder / "survey.csv"
    shutil.copyfile(DEMO / "survey.csv", survey)
    desk.form.files.setFilePath(str(survey))
    desk.form.crs.setText("EPSG:25832")
    desk.form.checks.setFilePath(str(DEMO / "check_points.csv"))
    toolbox = iface.mainWindow().findChild(QDockWidget, "ProcessingToolbox")
    if toolbox:
        toolbox.hide()
    desk.run_everything()
    while desk.busy:
        wait(0.1)
    if desk.failure:
        raise RuntimeError(desk.failure)
    root = QgsProject.instance().layerTreeRoot()
    mesh = next(node.layer() for node in root.findLayers() if isinstance(node.layer(), QgsMeshLayer))
    QgsProject.instance().setCrs(mesh.crs())
    desk.form.filling = True  # names without the folders of this machine
    desk.form.files.setFilePath("survey.csv")
    desk.form.folder.setFilePath("survey_job")
    desk.form.checks.setFilePath("check_points.csv")
    desk.said.setText("Done.")
    iface.mainWindow().resizeDocks([desk], [470], Qt.Orientation.Horizontal)
    window(name, around(mesh.extent(), 0.06))
    settings = QgsLayoutExporter.ImageExportSettings()
    settings.dpi = 90
    settings.generateWorldFile = False
    layout = QgsProject.instance().layoutManager().layouts()[0]
    QgsLayoutExporter(layout).exportToImage(str(PICTURES / plan_name), settings)


def around(extent, share):
    """The extent with a margin of ``share`` of its size."""
    grown = QgsRectangle(extent)
    grown.scale(1 + share)
    return grown


def make_pictures():
    main = iface.mainWindow()
    main.resize(1500, 950)
    for title in ("Browser", "Browser2"):
        dock = main.findChild(QDockWidget, title)
        if dock:
            dock.hide()
    found = run_demo()
    QgsProject.instance().setCrs(found["contours"].crs())
    whole = around(found["surface"].extent(), 0.06)
    toolbox = main.findChild(QDockWidget, "ProcessingToolbox")
    if toolbox:
        toolbox.show()
        main.addDockWidget(Qt.DockWidgetArea.RightDockWidgetArea, toolbox)
        tree = toolbox.algorithmTree
        tree.collapseAll()
        model = tree.model()
        for row in range(model.rowCount()):
            if model.index(row, 0).data() == "Hummock":
                tree.expandRecursively(model.index(row, 0))
                tree.scrollTo(model.index(row, 0))
    order(found, ["contours", "lines", "surface"])
    window("window.png", whole)
    order(found, ["points", "lines"])
    window("points.png", whole)
    order(found, ["contours", "lines", "surface"])
    east, north = whole.xMaximum(), whole.yMaximum()
    close = QgsRectangle(east - 60, north - 38, east - 18, north - 11)
    map_picture("close.png", [found[name] for name in ("contours", "lines", "triangles", "surface")], close)
    road_picture("road.png", found)
    volume_picture("volumes.png", found)
    desk_picture("desk.png", "plan.png", SCRATCH)


def start():
    try:
        make_pictures()
        told = "made " + ", ".join(sorted(file.name for file in PICTURES.glob("*.png"))) + "\n"
    except Exception:
        told = traceback.format_exc()
    (SCRATCH / "report.txt").write_text(told)
    os._exit(0)


QTimer.singleShot(3000, start)
