"""Interrupted runs of every algorithm: a file under its final name is whole; the same input gives the same file."""

from __future__ import annotations

import json
import os
import re
import shutil
import signal
import sqlite3
import subprocess
import sys
from pathlib import Path
from typing import Any, Callable, Dict, List, NamedTuple

import pytest
from every_algorithm import Small, cases, placed, small_chain
from in_qgis import Listener, layer_of
from watched import Watch

from plugin.processing.provider import ALGORITHMS

NAMES = [kind.NAME for kind in ALGORITHMS]
BEFORE = b"what was there before"
#: Dates and times that the formats ask for, sums of the files that have them, and the language a page is said to be in.
MOMENTS = {
    ".html": rb'^<!DOCTYPE html>\n<html lang="[a-zA-Z-]+">',
    ".xml": rb'date="[0-9-]+" time="[0-9:]+"',
    # what QGIS from 3.40 on says of the document as XMP has a number by chance besides
    ".pdf": rb'/(Creation|Mod)Date \([^)]*\)|xmp:\w+Date="[^"]*"|xmpMM:DocumentID="uuid:[0-9a-f-]{36}"',
    ".sha256": rb"[0-9a-f]{64}  .*\.(xml|gpkg|pdf)",
}
TIMES = re.compile(r"\d{4}-\d\d-\d\d[T ]\d\d:\d\d:\d\d(\.\d+)?Z?")


def contents(path: Path) -> Any:
    """What a file holds but for the dates of writing: its bytes, or all tables of a GeoPackage."""
    if path.suffix != ".gpkg":
        content = path.read_bytes()
        return re.sub(MOMENTS[path.suffix], b"", content) if path.suffix in MOMENTS else content
    base = sqlite3.connect(f"file:{path}?mode=ro&immutable=1", uri=True)
    try:
        return [TIMES.sub("TIME", line) for line in base.iterdump()]
    finally:
        base.close()


def files(folder: Path) -> Dict[str, Any]:
    """Contents of all files below a folder, by their names in it."""
    return {name: contents(path) for name, path in products(folder).items()}


def products(folder: Path) -> Dict[str, Path]:
    """Files below a folder by their names in it, but for what a job keeps of itself, which names its folder."""
    found = {str(path.relative_to(folder)): path for path in sorted(folder.rglob("*")) if path.is_file()}
    return {name: path for name, path in found.items() if path.name != "job.json" and path.parent.name != "stages"}


def algorithm_of(name: str) -> Any:
    from qgis.core import QgsApplication

    return QgsApplication.processingRegistry().createAlgorithmById(f"hummock:{name}")


def run_until(name: str, parameters: Dict[str, Any], cancel: Any = float("inf")) -> Any:
    """Runs an algorithm that is cancelled at a progress, or when ``cancel()`` says so; results and context."""
    from qgis.core import QgsProcessingContext, QgsProject

    context = QgsProcessingContext()
    context.setProject(QgsProject.instance())
    listener = Listener(cancel) if not callable(cancel) else Listener(cancel_if=cancel)
    results, fine = algorithm_of(name).run(parameters, context, listener.feedback)
    assert fine, listener.errors
    return results, context


class Whole(NamedTuple):
    """What an undisturbed run left, and at which of its looks at the progress something was half written."""

    files: Dict[str, Any]
    looks: int
    writing: List[int]


@pytest.fixture(scope="module")
def small(application: Any, tmp_path_factory: pytest.TempPathFactory) -> Small:
    return small_chain(tmp_path_factory.mktemp("small"))


@pytest.fixture(scope="module")
def elsewhere(small: Small, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Folder with the files of all algorithms, made in another process: in a German one, with other orders by chance.

    There numbers have a decimal comma, for Qt and, where the machine can make the locale, for the C library.
    """
    folder = tmp_path_factory.mktemp("elsewhere")
    (folder / "small.json").write_text(json.dumps(small))
    (folder / "profile").mkdir()
    environment = {**os.environ, "PYTHONHASHSEED": "7", "QGIS_CUSTOM_CONFIG_PATH": str(folder / "profile")}
    if shutil.which("localedef"):
        made = subprocess.run(["localedef", "-i", "de_DE", "-f", "UTF-8", str(folder / "de_DE.UTF-8")], check=False)
        if made.returncode == 0:
            environment.update(LOCPATH=str(folder), LC_ALL="de_DE.UTF-8", LANG="de_DE.UTF-8")
    program = str(Path(__file__).with_name("in_another_process.py"))
    ran = subprocess.run(
        [sys.executable, program, str(folder / "small.json"), str(folder / "made"), "de_DE"],
        capture_output=True, text=True, env=environment,
    )  # fmt: skip
    assert ran.returncode == 0, ran.stderr
    assert json.loads(ran.stdout.splitlines()[-1]) == {}
    return folder / "made"


@pytest.fixture(scope="module")
def whole(small: Small, tmp_path_factory: pytest.TempPathFactory) -> Callable[[str], Whole]:
    """``whole(name)``: the algorithm run to its end, once, over files that were there before, watched by the system."""
    made: Dict[str, Whole] = {}

    def run_whole(name: str) -> Whole:
        if name not in made:
            made[name] = watched_run(name, small, tmp_path_factory.mktemp(name))
        return made[name]

    return run_whole


def watched_run(name: str, small: Small, folder: Path) -> Whole:
    algorithm = algorithm_of(name)
    parameters = placed(algorithm, cases(small)[name], folder)
    targets = {name: Path(parameters[name]) for name in destinations(algorithm)}
    within = [folder]
    for key, target in targets.items():
        if algorithm.parameterDefinition(key).type() == "folderDestination":
            target.mkdir()
            within.append(target)
        else:
            target.write_bytes(BEFORE)
    looks, writing = 0, []

    def look() -> bool:
        nonlocal looks
        if half_written(folder):
            writing.append(looks)
        looks += 1
        return False

    with Watch(within) as watch:
        results, _ = run_until(name, parameters, look)
    assert results
    for file, events in watch.of_final_names().items():
        # The plan shows the layers of its GeoPackage: SQLite notes in it that it is open, in whole transactions.
        if file.endswith((".gpkg-wal", ".gpkg-shm", ".gpkg-journal")) and events[-1] == "deleted":
            continue
        later = [event for event in events[1:] if not (event == "modified" and file.endswith(".gpkg"))]
        assert (events[0], set(later) - {"put there"}) == ("put there", set()), f"{name}: {file} was {events}"
    assert {str(path) for path in targets.values() if path.exists()} == {str(path) for path in targets.values()}
    left = files(folder)
    assert BEFORE not in left.values()
    assert not [file for file in left if "/." in f"/{file}"]
    return Whole(left, looks, writing)


def destinations(algorithm: Any) -> List[str]:
    return [definition.name() for definition in algorithm.destinationParameterDefinitions()]


def half_written(folder: Path) -> bool:
    return any(path.name.startswith(".") for path in folder.rglob("*"))


@pytest.mark.parametrize("name", NAMES)
def test_every_destination_is_asked_for(small: Small, application: Any, name: str) -> None:
    assert set(cases(small)) == set(NAMES)
    assert set(destinations(algorithm_of(name))) <= set(cases(small)[name])


@pytest.mark.parametrize("name", NAMES)
def test_the_same_input_gives_the_same_files(
    project: Any, whole: Callable[[str], Whole], elsewhere: Path, name: str
) -> None:
    mine, theirs = whole(name).files, files(elsewhere / name)
    assert set(mine) == set(theirs)
    assert [file for file in mine if mine[file] != theirs[file]] == []


@pytest.mark.parametrize("name", NAMES)
def test_a_cancelled_run_leaves_what_was_there(
    project: Any, small: Small, whole: Callable[[str], Whole], tmp_path: Path, name: str
) -> None:
    made = whole(name)
    ends = [0, made.looks // 2, *(made.writing[:1] + made.writing[-1:] or [made.looks - 1])]
    for end in sorted(set(ends)):
        folder = tmp_path / str(end)
        cancel_at_look(name, small, made, folder, end)
        shutil.rmtree(folder)


def cancel_at_look(name: str, small: Small, made: Whole, folder: Path, end: int) -> None:
    """Run over files that were there before, cancelled at a look at the progress, and see what is left."""
    from qgis.core import QgsProcessingOutputLayerDefinition, QgsProject

    for file in made.files:
        (folder / file).parent.mkdir(parents=True, exist_ok=True)
        (folder / file).write_bytes(BEFORE)
    algorithm = algorithm_of(name)
    parameters = placed(algorithm, cases(small)[name], folder)
    loaded = {
        key: QgsProcessingOutputLayerDefinition(parameters[key], QgsProject.instance())
        for key in destinations(algorithm)
        if algorithm.parameterDefinition(key).type() == "sink"
    }
    looks = iter(range(made.looks + 100))
    results, context = run_until(name, {**parameters, **loaded}, lambda: next(looks) >= end)
    if not results:
        assert not [key for key in context.layersToLoadOnCompletion() if key.startswith(str(folder))], end
    left = products(folder)
    assert set(left) <= set(made.files), "nothing half written stays behind"
    assert results or set(left) == set(made.files)
    for file, path in left.items():
        if path.read_bytes() != BEFORE:
            assert contents(path) == made.files[file], (end, file)


def test_a_failed_run_leaves_what_was_there(project: Any, small: Small, tmp_path: Path, monkeypatch: Any) -> None:
    from qgis.core import QgsProcessingContext

    from plugin.processing import contours

    target = tmp_path / "contours.gpkg"
    target.write_bytes(BEFORE)

    def fail(*arguments: Any) -> None:
        arguments[1].addFeature  # noqa: B018  the sink is open
        raise OSError("no space left")

    monkeypatch.setattr(contours, "write_contours", fail)
    parameters = {"INPUT": small.mesh, "INTERVAL": 1.0, "OUTPUT": str(target)}
    _, fine = algorithm_of("contours").run(parameters, QgsProcessingContext(), Listener().feedback)
    assert not fine
    assert target.read_bytes() == BEFORE
    assert list(tmp_path.iterdir()) == [target]


@pytest.mark.parametrize("suffix", ["gpkg", "geojson", "csv", "shp"])
@pytest.mark.parametrize("share", [0.1, 0.6, 0.999])
def test_a_full_disk_leaves_what_was_there(
    project: Any, small: Small, tmp_path: Path, suffix: str, share: float
) -> None:
    """As if: the system lets no file of this process grow beyond a limit."""
    resource = pytest.importorskip("resource")
    from qgis.core import QgsProcessingContext

    target = tmp_path / f"contours.{suffix}"
    parameters = {"INPUT": small.mesh, "INTERVAL": 0.1, "OUTPUT": str(target)}
    run_until("contours", parameters)
    limit = int(share * max(path.stat().st_size for path in tmp_path.iterdir()))
    for path in tmp_path.iterdir():
        path.write_bytes(BEFORE)
    left = sorted(tmp_path.iterdir())
    before, ignored = resource.getrlimit(resource.RLIMIT_FSIZE), signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
    resource.setrlimit(resource.RLIMIT_FSIZE, (limit, before[1]))
    try:
        _, fine = algorithm_of("contours").run(parameters, QgsProcessingContext(), Listener().feedback)
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, before)
        signal.signal(signal.SIGXFSZ, ignored)
    assert not fine
    assert sorted(tmp_path.iterdir()) == left
    assert {path.read_bytes() for path in left} == {BEFORE}


def test_a_layer_in_a_file_keeps_its_name_and_is_loaded(project: Any, small: Small, tmp_path: Path) -> None:
    from qgis.core import QgsProcessingContext, QgsProcessingOutputLayerDefinition

    target = str(tmp_path / "my lines.gpkg")
    output = QgsProcessingOutputLayerDefinition(target, project)
    output.destinationName = "Lines of mine"
    context = QgsProcessingContext()
    context.setProject(project)
    parameters = {"INPUT": small.mesh, "INTERVAL": 1.0, "OUTPUT": output}
    results, fine = algorithm_of("contours").run(parameters, context, Listener().feedback)
    assert fine
    assert results["OUTPUT"] == target
    waiting = context.layersToLoadOnCompletion()
    assert list(waiting) == [target]
    assert waiting[target].name == "Lines of mine"
    layer = layer_of(f"{target}|layername=my lines")
    assert layer.featureCount() == results["CONTOURS"]
    assert [path.name for path in tmp_path.iterdir()] == ["my lines.gpkg"]


def test_the_watch_sees_what_is_written_under_its_own_name(tmp_path: Path) -> None:
    with Watch([tmp_path]) as watch:
        (tmp_path / "half.csv").write_text("half")
        (tmp_path / ".whole.csv").write_text("whole")
        (tmp_path / ".whole.csv").rename(tmp_path / "whole.csv")
    assert watch.of_final_names() == {"half.csv": ["created", "modified"], "whole.csv": ["put there"]}
