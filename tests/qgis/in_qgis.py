"""What the tests in QGIS share."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path
from typing import Any, Callable, List, Optional

import pytest

ROOT = Path(__file__).resolve().parent.parent.parent
DEMO = ROOT / "test_data" / "demo"

#: Parameters that import the demo survey.
SURVEY = {"INPUT": str(DEMO / "survey.csv"), "CRS": "EPSG:25832", "DECISIONS": str(DEMO / "decisions.csv")}


def layer_of(source: Any) -> Any:
    """A layer, or the layer in a file."""
    from qgis.core import QgsVectorLayer

    made = source if isinstance(source, QgsVectorLayer) else QgsVectorLayer(str(source), "layer", "ogr")
    assert made.isValid()
    return made


class Listener:
    """Makes a feedback that remembers what it was told.

    It may cancel at a given progress, or when ``cancel_if``, asked at each look at the progress, says so.
    """

    def __init__(self, cancel_at: float = float("inf"), cancel_if: Optional[Callable[[], bool]] = None) -> None:
        from qgis.core import QgsProcessingFeedback

        self.warnings: List[str] = []
        self.infos: List[str] = []
        self.errors: List[str] = []
        self.progress: List[float] = []
        listener = self

        class Feedback(QgsProcessingFeedback):
            def pushWarning(self, text: str) -> None:
                listener.warnings.append(text)

            def pushInfo(self, text: str) -> None:
                listener.infos.append(text)

            def reportError(self, text: str, fatalError: bool = False) -> None:
                listener.errors.append(text)

            def setProgress(self, progress: float) -> None:
                listener.progress.append(progress)
                if progress >= cancel_at or (cancel_if is not None and cancel_if()):
                    self.cancel()

        self.feedback = Feedback()


def build_zip(folder: Path) -> Path:
    made = subprocess.run(
        [sys.executable, str(ROOT / ".ci" / "zip"), str(folder)], check=True, capture_output=True, text=True
    )
    return Path(made.stdout.strip())


class Profile:
    """A QGIS profile of its own with the unpacked zip, for other processes."""

    def __init__(self, folder: Path, plugin_zip: Path) -> None:
        # QGIS looks for the profile "default" below the custom path's "profiles".
        self.home = folder
        self.plugins = folder / "profiles" / "default" / "python" / "plugins"
        self.plugins.mkdir(parents=True)
        shutil.unpack_archive(str(plugin_zip), str(self.plugins))
        runtime = folder / "runtime"
        runtime.mkdir(mode=0o700)
        self.environment = {
            **os.environ,
            "QGIS_CUSTOM_CONFIG_PATH": str(folder),
            "QT_QPA_PLATFORM": "offscreen",
            "XDG_RUNTIME_DIR": str(runtime),
            "PYTHONDONTWRITEBYTECODE": "1",
        }
        self.environment.pop("PYTHONPATH", None)

    def run(self, *command: str, timeout: float = 300) -> subprocess.CompletedProcess:
        """Run a command in this profile, outside the repository."""
        return subprocess.run(
            command, env=self.environment, cwd=self.home, capture_output=True, text=True, timeout=timeout
        )

    def qgis_process(self, *arguments: str) -> subprocess.CompletedProcess:
        # Debian 12's wrapper passes an option that its own qgis_process does not know.
        program = shutil.which("qgis_process.bin") or shutil.which("qgis_process")
        assert program, "QGIS is installed without qgis_process"
        return self.run(program, *arguments)


def message_of(run: Any, algorithm: str, **parameters: Any) -> str:
    """The one line with which the algorithm refuses."""
    from qgis.core import QgsProcessingException

    with pytest.raises(QgsProcessingException) as raised:
        run(algorithm, **parameters)
    said = str(raised.value)
    assert "Traceback" not in said
    assert "Error" not in said
    assert len(said.strip().splitlines()) == 1, said
    return said


def memory_points(rows: Any, crs: str = "EPSG:25832", kind: str = "PointZ") -> Any:
    """A layer "square" in memory of rows (name, east, north, height), offsets in metres from a corner."""
    texts = [f"{kind}({500000 + e} {5700000 + n}{f' {h}' if kind == 'PointZ' else ''})" for _, e, n, h in rows]
    return memory_layer(kind, texts, crs, "square")


def memory_lines(texts: Any) -> Any:
    return memory_layer("LineStringZ", texts, "EPSG:25832", "lines")


def memory_layer(kind: str, texts: Any, crs: str, name: str) -> Any:
    from qgis.core import QgsCoordinateReferenceSystem, QgsFeature, QgsGeometry, QgsVectorLayer

    layer = QgsVectorLayer(f"{kind}?crs={crs}", name, "memory")
    if not crs:
        layer.setCrs(QgsCoordinateReferenceSystem())
    for text in texts:
        feature = QgsFeature()
        feature.setGeometry(QgsGeometry.fromWkt(text))
        layer.dataProvider().addFeature(feature)
    return layer


def close_for_good(dialog: Any) -> None:
    """Close a dialog and delete it now: collected by Python, piece by piece and later, what is left of it would still
    follow the layers of the project and crash QGIS.
    """
    from qgis.PyQt import sip

    dialog.close()
    sip.delete(dialog)
