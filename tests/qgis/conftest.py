"""One QGIS without a screen for all tests of a run, with Processing and Hummock's provider."""

from __future__ import annotations

import os
import sys
from pathlib import Path
from typing import Any, Dict

import pytest
from in_qgis import SURVEY, Listener, Profile, build_zip

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

try:
    import qgis.core  # noqa: F401
except ImportError:
    if os.environ.get("CI"):
        raise
    collect_ignore_glob = ["test_*.py"]


def pytest_report_header(config: Any) -> str:
    try:
        from qgis.core import Qgis
    except ImportError:
        return "QGIS: cannot be imported by this Python; the tests in QGIS are left out"
    return f"QGIS: {Qgis.QGIS_VERSION}"


@pytest.fixture(scope="session")
def application(tmp_path_factory: pytest.TempPathFactory) -> Any:
    """A running QgsApplication with an empty profile, Processing, and our provider."""
    from qgis.core import QgsApplication
    from qgis.PyQt.QtCore import QLocale

    os.environ["QGIS_CUSTOM_CONFIG_PATH"] = str(tmp_path_factory.mktemp("profile"))
    running = QgsApplication([], True)
    running.initQgis()
    QLocale.setDefault(QLocale.c())  # what is said does not depend on where the tests run
    sys.path.append(os.path.join(QgsApplication.pkgDataPath(), "python", "plugins"))
    from processing.core.Processing import Processing

    from plugin.processing.provider import HummockProvider

    Processing.initialize()
    provider = HummockProvider()
    QgsApplication.processingRegistry().addProvider(provider)
    yield running
    Processing.deinitialize()
    running.exitQgis()


@pytest.fixture
def project(application: Any) -> Any:
    """The project, empty before and after a test."""
    from qgis.core import QgsProject

    QgsProject.instance().clear()
    yield QgsProject.instance()
    QgsProject.instance().clear()


@pytest.fixture
def run(project: Any) -> Any:
    """``run(name, **parameters)``: processing.run of one of our algorithms."""
    import processing

    def run_algorithm(name: str, listener: Any = None, **parameters: Any) -> Dict[str, Any]:
        feedback = listener.feedback if listener else Listener().feedback
        return processing.run(f"hummock:{name}", parameters, feedback=feedback)

    return run_algorithm


@pytest.fixture(scope="session")
def chain(application: Any, tmp_path_factory: pytest.TempPathFactory) -> Dict[str, Any]:
    """Results of points, surface and contours of the demo, all in files (which tests must not change)."""
    import processing

    folder = tmp_path_factory.mktemp("chain")

    def run_step(name: str, **parameters: Any) -> Dict[str, Any]:
        return processing.run(f"hummock:{name}", parameters, feedback=Listener().feedback)

    points = run_step(
        "importpoints", **SURVEY, OUTPUT=str(folder / "points.gpkg"), REJECTS=str(folder / "rejects.gpkg")
    )
    surface = run_step(
        "buildsurface",
        INPUT=points["OUTPUT"],
        MAX_RIM_EDGE=10.0,
        OUTPUT=str(folder / "surface.2dm"),
        TRIANGLES=str(folder / "triangles.gpkg"),
        LINES=str(folder / "lines.gpkg"),
    )
    contours = run_step("contours", INPUT=surface["OUTPUT"], INTERVAL=0.25, OUTPUT=str(folder / "contours.gpkg"))
    return {"points": points, "surface": surface, "contours": contours}


@pytest.fixture(scope="session")
def plugin_zip(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The zip that users install, made anew."""
    return build_zip(tmp_path_factory.mktemp("zip"))


@pytest.fixture(scope="session")
def profile(tmp_path_factory: pytest.TempPathFactory, plugin_zip: Path) -> Profile:
    """A profile with the plugin unpacked and switched on."""
    made = Profile(tmp_path_factory.mktemp("qgis"), plugin_zip)
    enabled = made.qgis_process("plugins", "enable", "hummock")
    assert enabled.returncode == 0, enabled.stdout + enabled.stderr
    return made
