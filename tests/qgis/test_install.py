"""The zip that users install, in an empty QGIS profile of its own."""

from __future__ import annotations

import configparser
import json
import zipfile
from pathlib import Path
from typing import Any

from in_qgis import ROOT, Profile, build_zip

ALGORITHMS = {
    f"hummock:{name}"
    for name in (
        "importpoints",
        "correctbase",
        "fitcontrol",
        "groundgrid",
        "checksurvey",
        "findlines",
        "buildsurface",
        "inspectsurface",
        "coverage",
        "accuracystatement",
        "walkingplan",
        "surfaceatpoints",
        "drapelines",
        "surfaceraster",
        "slopemap",
        "thinsurface",
        "contours",
        "contoursheet",
        "volume",
        "volumetoplane",
        "volumebyregion",
        "stockpile",
        "basinstorage",
        "padgrading",
        "stripgrading",
        "balanceheight",
        "plansheet",
        "roadprofile",
        "crosssections",
        "roadgrades",
        "verticalcurves",
        "checkline",
        "surveyreport",
        "flowpaths",
        "flowarrows",
        "ponds",
        "catchments",
        "flatareas",
        "peakflow",
        "waterchange",
        "handoverfiles",
        "exportlandxml",
        "readlandxml",
        "setout",
    )
}

#: Loads the plugin as QGIS does, first headless, then with a window; prints what is there as JSON.
LOAD = """
import json, sys
from qgis.core import QgsApplication, QgsUserProfileManager
from qgis.PyQt.QtWidgets import QMainWindow, QMenu

application = QgsApplication([], True)
application.initQgis()
import qgis.utils
plugins = sys.argv[1]
sys.path.insert(0, plugins)
qgis.utils.plugin_paths = [plugins]
qgis.utils.updateAvailablePlugins()
registry = QgsApplication.processingRegistry()

def algorithms():
    provider = registry.providerById("hummock")
    return sorted(algorithm.id() for algorithm in provider.algorithms()) if provider else None

said = {"available": qgis.utils.available_plugins}
said["loaded"] = qgis.utils.loadPlugin("hummock")
said["started headless"] = qgis.utils.startProcessingPlugin("hummock")
said["headless"] = algorithms()
qgis.utils.unloadPlugin("hummock")
said["after headless"] = algorithms()

class Window:
    def __init__(self):
        self.window, self.menu = QMainWindow(), QMenu("Plugins")
    def mainWindow(self):
        return self.window
    def pluginMenu(self):
        return self.menu
    def addToolBarIcon(self, action):
        tools.append(action.text())
    def removeToolBarIcon(self, action):
        tools.remove(action.text())
    def addDockWidget(self, area, dock):
        self.window.addDockWidget(area, dock)
    def removeDockWidget(self, dock):
        self.window.removeDockWidget(dock)

tools = []
qgis.utils.iface = window = Window()
said["loaded again"] = qgis.utils.loadPlugin("hummock")
said["started"] = qgis.utils.startPlugin("hummock")
said["desktop"] = algorithms()
said["menu"] = [[entry.text() for entry in menu.menu().actions()] for menu in window.menu.actions()]
entries = [entry for entry in window.menu.actions()[0].menu().actions() if not entry.isSeparator()]
said["icons"] = [not entry.icon().isNull() for entry in entries]
said["tools"] = list(tools)
entries[0].trigger()
said["desk"] = qgis.utils.plugins["hummock"].desk is not None
said["folder"] = sys.modules["hummock"].__file__
qgis.utils.unloadPlugin("hummock")
said["after desktop"] = algorithms()
said["tools after"] = list(tools)
said["menu after"] = [menu.text() for menu in window.menu.actions()]
print("RESULT " + json.dumps(said))
sys.stdout.flush()
import os
os._exit(0)
"""


def test_the_same_sources_give_the_same_zip(plugin_zip: Path, tmp_path: Path) -> None:
    assert build_zip(tmp_path).read_bytes() == plugin_zip.read_bytes()


def test_zip_holds_the_plugin_and_nothing_else(plugin_zip: Path) -> None:
    names = zipfile.ZipFile(plugin_zip).namelist()
    assert {name.split("/")[0] for name in names} == {"hummock"}
    for needed in ("metadata.txt", "LICENSE", "__init__.py", "icon.svg", "styles/contours.qml", "core/__init__.py",
                   "demo/survey.csv", "demo/check_points.csv"):  # fmt: skip
        assert f"hummock/{needed}" in names
    assert "hummock/demo/truth.csv" not in names
    assert not [name for name in names if "__pycache__" in name or "test" in name or name.endswith(".pyc")]


def test_the_zip_speaks_four_languages(plugin_zip: Path, application: Any, tmp_path: Path) -> None:
    from qgis.PyQt.QtCore import QTranslator

    said = {"de": "Oberfläche bilden", "es": "Construir la superficie", "fr": "Construire la surface"}
    for language, words in said.items():
        name = f"hummock/i18n/hummock_{language}.qm"
        with zipfile.ZipFile(plugin_zip) as packed:
            packed.extract(name, tmp_path)
        translator = QTranslator()
        assert translator.load(str(tmp_path / name))
        assert translator.translate("hummock", "Build the surface") == words


def test_metadata_says_what_qgis_asks(plugin_zip: Path) -> None:
    # The fields that QGIS's plugin repository requires (QGIS documentation, PyQGIS cookbook, "Releasing your plugin").
    metadata = configparser.ConfigParser(interpolation=None)
    metadata.read_string(zipfile.ZipFile(plugin_zip).read("hummock/metadata.txt").decode())
    general = metadata["general"]
    required = [
        "name",
        "qgisMinimumVersion",
        "description",
        "about",
        "version",
        "author",
        "email",
        "repository",
        "tracker",
    ]
    assert [field for field in required if not general.get(field)] == []
    assert general["qgisMinimumVersion"] == "3.22"
    assert general.getboolean("hasProcessingProvider")
    assert general.getboolean("supportsQt6")
    assert plugin_zip.name == f"hummock-{general['version']}.zip"
    assert f'version = "{general["version"]}"' in (ROOT / "pyproject.toml").read_text()


def test_qgis_loads_and_unloads_the_zip(profile: Profile) -> None:
    ran = profile.run("/usr/bin/python3", "-c", LOAD, str(profile.plugins))
    lines = [line for line in ran.stdout.splitlines() if line.startswith("RESULT ")]
    assert lines, ran.stdout + ran.stderr
    said = json.loads(lines[0][7:])
    assert said["available"] == ["hummock"]
    assert said["loaded"]
    assert said["started headless"]
    assert set(said["headless"]) == ALGORITHMS
    assert said["after headless"] is None
    assert said["loaded again"]
    assert said["started"]
    assert set(said["desktop"]) == ALGORITHMS
    assert len(said["menu"]) == 1
    assert said["menu"][0][0] == "Survey desk"
    assert len([entry for entry in said["menu"][0] if entry]) == 1 + len(ALGORITHMS)
    assert said["tools"] == ["Survey desk"]
    assert said["desk"]
    assert all(said["icons"])
    assert said["after desktop"] is None
    assert said["tools after"] == []
    assert said["menu after"] == []
    assert Path(said["folder"]).is_relative_to(profile.plugins)
    assert "Traceback" not in ran.stderr


def test_qgis_process_lists_and_explains_the_algorithms(profile: Profile) -> None:
    listed = profile.qgis_process("list")
    assert listed.returncode == 0
    assert {line.split("\t")[1] for line in listed.stdout.splitlines() if line.startswith("\thummock:")} >= ALGORITHMS
    helped = profile.qgis_process("help", "hummock:contours")
    assert helped.returncode == 0
    for parameter in ("INPUT", "INTERVAL", "UNIT", "BASE", "INDEX_EVERY", "OUTPUT"):
        assert f"\n{parameter}:" in helped.stdout
