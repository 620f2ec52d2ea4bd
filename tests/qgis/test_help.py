"""What each algorithm says of itself: what it assumes, what can go wrong, a picture, and help for each parameter."""

from __future__ import annotations

from pathlib import Path
from typing import Any, List

import pytest
from in_qgis import ROOT


@pytest.fixture(scope="module")
def algorithms(application: Any) -> List[Any]:
    from qgis.core import QgsApplication

    return list(QgsApplication.processingRegistry().providerById("hummock").in_order())


def test_help_says_what_is_assumed_and_what_can_go_wrong(algorithms: List[Any]) -> None:
    for algorithm in algorithms:
        said = algorithm.shortHelpString()
        assert "assumes" in said, algorithm.id()
        assert "can go wrong" in said, algorithm.id()


def test_every_parameter_has_its_help(algorithms: List[Any]) -> None:
    for algorithm in algorithms:
        for parameter in algorithm.parameterDefinitions():
            assert parameter.help().strip(), f"{algorithm.id()} {parameter.name()}"


def test_every_help_has_a_picture_that_is_there(algorithms: List[Any]) -> None:
    from qgis.PyQt.QtCore import QUrl
    from qgis.PyQt.QtGui import QImage

    for algorithm in algorithms:
        said = algorithm.shortHelpString()
        assert said.count("<img ") == 1, algorithm.id()
        path = QUrl(said.split('<img src="')[1].split('"')[0]).toLocalFile()
        assert not QImage(path).isNull(), path
    pictures = {file.stem for file in (ROOT / "plugin" / "help").glob("*.png")}
    assert pictures == {algorithm.name() for algorithm in algorithms}
    assert sum(file.stat().st_size for file in Path(ROOT / "plugin" / "help").glob("*.png")) < 3_000_000
