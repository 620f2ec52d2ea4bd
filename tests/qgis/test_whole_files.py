"""Interrupted runs: whatever is in a file under its final name is whole, and the same input gives the same file."""

from __future__ import annotations

import re
import sqlite3
from pathlib import Path
from typing import Any, Dict, Set

import pytest
from in_qgis import DEMO, SURVEY, Listener, layer_of

#: Times that GDAL and QGIS write into a GeoPackage.
MOMENT = re.compile(rb'date="[0-9-]+" time="[0-9:]+"')
TIMES = re.compile(r"\d{4}-\d\d-\d\d[T ]\d\d:\d\d:\d\d(\.\d+)?Z?")


def contents(path: Path) -> Any:
    """What a file holds but for the dates of writing: its bytes, or all tables of a GeoPackage."""
    if path.suffix != ".gpkg":
        return MOMENT.sub(b"", path.read_bytes())
    base = sqlite3.connect(f"file:{path}?mode=ro&immutable=1", uri=True)
    try:
        return [TIMES.sub("TIME", line) for line in base.iterdump()]
    finally:
        base.close()


def files(folder: Path) -> Dict[str, Any]:
    return {path.name: contents(path) for path in sorted(folder.iterdir()) if path.is_file()}


def steps(chain: Dict[str, Any]) -> Dict[str, Any]:
    """Algorithms that write files: name and parameters, with outputs by their file names."""
    mesh, points, contours = chain["surface"]["OUTPUT"], chain["points"]["OUTPUT"], chain["contours"]["OUTPUT"]
    return {
        "importpoints": {**SURVEY, "OUTPUT": "points.gpkg", "REJECTS": "rejects.csv"},
        "checksurvey": {"INPUT": points, "OUTPUT": "checked.gpkg", "FINDINGS": "findings.shp"},
        "buildsurface": {"INPUT": points, "OUTPUT": "s.2dm", "TRIANGLES": "t.gpkg", "LINES": "l.geojson"},
        "surfaceatpoints": {"INPUT": mesh, "POINTS": points, "OUTPUT": "asked.gpkg"},
        "surfaceraster": {"INPUT": mesh, "CELL": 1.0, "OUTPUT": "dem.tif"},
        "thinsurface": {"INPUT": mesh, "TOLERANCE": 0.05, "OUTPUT": "thin.2dm"},
        "contours": {"INPUT": mesh, "INTERVAL": 0.5, "OUTPUT": "contours.gpkg"},
        "drapelines": {"INPUT": mesh, "LINES": contours, "OUTPUT": "draped.gpkg", "GAPS": "gaps.csv"},
        "contoursheet": {"INPUT": mesh, "INTERVAL": 1.0, "OUTPUT": "c.gpkg", "LABELS": "l.gpkg", "SPOTS": "s.gpkg"},
        "exportlandxml": {"INPUT": mesh, "POINTS": points, "OUTPUT": "site.xml"},
        "setout": {
            "INPUT": mesh, "PLACES": f"{DEMO / 'site.gpkg'}|layername=parcels", "WAY": 1, "SPACING": 5.0,
            "OUTPUT": "marks.gpkg", "TABLE": "marks.csv",
        },
    }  # fmt: skip


#: Names of :func:`steps`, which needs the demo's chain.
NAMES = (
    "importpoints", "checksurvey", "buildsurface", "surfaceatpoints", "surfaceraster", "thinsurface", "contours",
    "drapelines", "contoursheet", "exportlandxml", "setout",
)  # fmt: skip


def placed(parameters: Dict[str, Any], folder: Path) -> Dict[str, Any]:
    """``parameters`` with the files of outputs in ``folder``."""
    return {
        name: str(folder / value) if isinstance(value, str) and re.fullmatch(r"\w+\.\w+", value) else value
        for name, value in parameters.items()
    }


def run_until(name: str, parameters: Dict[str, Any], cancel_at: float) -> Any:
    """Runs an algorithm that is cancelled at a progress; what it listened to."""
    from qgis.core import QgsApplication, QgsProcessingContext, QgsProject

    algorithm = QgsApplication.processingRegistry().createAlgorithmById(f"hummock:{name}")
    context = QgsProcessingContext()
    context.setProject(QgsProject.instance())
    listener = Listener(cancel_at)
    results, fine = algorithm.run(parameters, context, listener.feedback)
    assert fine, listener.errors
    return results, context


@pytest.mark.parametrize("name", NAMES)
def test_a_cancelled_run_leaves_what_was_there(project: Any, chain: Dict[str, Any], tmp_path: Path, name: str) -> None:
    from qgis.core import QgsProcessingOutputLayerDefinition

    assert set(steps(chain)) == set(NAMES)
    parameters = placed(steps(chain)[name], tmp_path)
    outputs: Set[str] = {Path(value).name for value in parameters.values() if str(value).startswith(str(tmp_path))}
    run_until(name, parameters, float("inf"))
    whole = files(tmp_path)
    assert outputs <= set(whole)
    for path in tmp_path.iterdir():
        path.unlink()
    before = dict.fromkeys(outputs, b"what was there before")
    for share in (0.0, 30.0, 60.0, 90.0, 99.0):
        for output, text in before.items():
            (tmp_path / output).write_bytes(text)
        loaded = {
            key: QgsProcessingOutputLayerDefinition(value, project) if Path(str(value)).name in outputs else value
            for key, value in parameters.items()
            if not str(value).endswith((".2dm", ".tif")) or Path(str(value)).name not in outputs
        }
        loaded = {**parameters, **loaded}
        results, context = run_until(name, loaded, share)
        left = {path.name: path for path in tmp_path.iterdir()}
        if not results:  # cancelled: meshes may be whole already, the others are as before
            assert not [key for key in context.layersToLoadOnCompletion() if Path(key).name in outputs], share
        for output, path in left.items():
            assert not output.startswith("."), (share, output)
            old = path.suffix != ".gpkg" or path.read_bytes()[:6] == b"what w"
            now = MOMENT.sub(b"", path.read_bytes()) if old else contents(path)
            assert now in (before.get(output), whole.get(output)), (share, output)


@pytest.mark.parametrize("name", NAMES)
def test_the_same_input_gives_the_same_files(project: Any, chain: Dict[str, Any], tmp_path: Path, name: str) -> None:
    made = []
    for folder in ("one", "other"):
        (tmp_path / folder).mkdir()
        run_until(name, placed(steps(chain)[name], tmp_path / folder), float("inf"))
        made.append(files(tmp_path / folder))
    assert set(made[0]) == set(made[1])
    for output, one in made[0].items():
        assert one == made[1][output], output


def test_a_failed_run_leaves_what_was_there(
    project: Any, chain: Dict[str, Any], tmp_path: Path, monkeypatch: Any
) -> None:
    from plugin.processing import contours

    target = tmp_path / "contours.gpkg"
    target.write_bytes(b"before")

    def fail(*arguments: Any) -> None:
        arguments[1].addFeature  # noqa: B018  the sink is open
        raise OSError("no space left")

    monkeypatch.setattr(contours, "write_contours", fail)
    from qgis.core import QgsApplication, QgsProcessingContext

    algorithm = QgsApplication.processingRegistry().createAlgorithmById("hummock:contours")
    parameters = {"INPUT": chain["surface"]["OUTPUT"], "INTERVAL": 1.0, "OUTPUT": str(target)}
    _, fine = algorithm.run(parameters, QgsProcessingContext(), Listener().feedback)
    assert not fine
    assert target.read_bytes() == b"before"
    assert list(tmp_path.iterdir()) == [target]


def test_a_layer_in_a_file_keeps_its_name_and_is_loaded(project: Any, chain: Dict[str, Any], tmp_path: Path) -> None:
    from qgis.core import QgsApplication, QgsProcessingContext, QgsProcessingOutputLayerDefinition

    target = str(tmp_path / "my lines.gpkg")
    algorithm = QgsApplication.processingRegistry().createAlgorithmById("hummock:contours")
    output = QgsProcessingOutputLayerDefinition(target, project)
    output.destinationName = "Lines of mine"
    context = QgsProcessingContext()
    context.setProject(project)
    parameters = {"INPUT": chain["surface"]["OUTPUT"], "INTERVAL": 1.0, "OUTPUT": output}
    results, fine = algorithm.run(parameters, context, Listener().feedback)
    assert fine
    assert results["OUTPUT"] == target
    waiting = context.layersToLoadOnCompletion()
    assert list(waiting) == [target]
    assert waiting[target].name == "Lines of mine"
    layer = layer_of(f"{target}|layername=my lines")
    assert layer.featureCount() == results["CONTOURS"]
    assert [path.name for path in tmp_path.iterdir()] == ["my lines.gpkg"]
