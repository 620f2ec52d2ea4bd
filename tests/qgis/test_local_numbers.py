"""Numbers on the screen as the user's locale has them. That files never are is tried in test_whole_files.py."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any, Dict, Iterator

import pytest
from in_qgis import DEMO, SURVEY, Listener, message_of
from test_import_preview import dialog_with, preview_of  # noqa: F401  a fixture

POINT = re.compile(r"\d\.\d")
COMMA = re.compile(r"\d,\d")
#: A standard, and stations, which are written as on the drawing.
NAMES = re.compile(r"FGDC-STD-007\.3-1998|\d\+\d+\.\d+")


@pytest.fixture(params=["de_DE", "fr_FR"])
def locale(request: Any, application: Any) -> Iterator[str]:
    """A locale with a decimal comma, as QGIS sets it for the user."""
    from qgis.PyQt.QtCore import QLocale

    before = QLocale()
    QLocale.setDefault(QLocale(request.param))
    yield request.param
    QLocale.setDefault(before)


def test_a_number_has_the_marks_of_the_locale(locale: str) -> None:
    from qgis.PyQt.QtCore import QLocale

    from plugin.core.messages import Figure
    from plugin.processing.localnumbers import local_number, shown

    assert local_number(1234567.891, ",.2f") == QLocale().toString(1234567.891, "f", 2)
    assert local_number(-0.5, "+.1f") == "-0,5"
    assert local_number(Figure("1.50 m")) == "1,50 m"
    told = shown(
        "{name} {line} {share:.1f} % {height} {file!r}", name="a.1", line=12345, share=2.5, height=0.25, file="b"
    )
    assert told == "a.1 12345 2,5 % 0,25 'b'"


def test_without_a_comma_in_the_locale_nothing_changes(application: Any) -> None:
    from qgis.PyQt.QtCore import QLocale

    from plugin.processing.localnumbers import local_number

    before = QLocale()
    try:
        QLocale.setDefault(QLocale("en_US"))
        assert local_number(1234.5, ",.1f") == "1,234.5"
    finally:
        QLocale.setDefault(before)


def steps(chain: Dict[str, Any]) -> Dict[str, Dict[str, Any]]:
    """Algorithms whose words hold numbers with decimals."""
    ground = {"INPUT": chain["surface"]["OUTPUT"]}
    out = {"OUTPUT": "TEMPORARY_OUTPUT"}
    return {
        "surfaceraster": {**ground, **out, "CELL": 2.0, "METHOD": 1},
        "slopemap": {**ground, **out},
        "thinsurface": {**ground, **out, "TOLERANCE": 0.1},
        "flatareas": {**ground, **out},
        "volumetoplane": {**ground, "LEVEL": 87.0, "TABLE": "TEMPORARY_OUTPUT"},
        "verticalcurves": {**ground, **out, "LINE": str(DEMO / "centreline.geojson")},
        "accuracystatement": {**ground, **out, "CHECKS_FILE": str(DEMO / "check_points.csv")},
        "groundgrid": {"INPUT": chain["points"]["OUTPUT"], **out, "GEOID": 46.0},
        "walkingplan": {"INPUT": str(DEMO / "phases.geojson"), **out, "VALUE": 0.25},
    }


@pytest.mark.parametrize(
    "name",
    [
        "surfaceraster", "slopemap", "thinsurface", "flatareas", "volumetoplane", "verticalcurves",
        "accuracystatement", "groundgrid", "walkingplan",
    ],
)  # fmt: skip
def test_what_an_algorithm_says(run: Any, chain: Dict[str, Any], locale: str, name: str) -> None:
    listener = Listener()
    found = run(name, listener, **steps(chain)[name])
    ours = [text for text in (*listener.infos, *listener.warnings) if not text.startswith("Results: ")]
    said = [NAMES.sub("", text) for text in ours]
    assert [text for text in said if COMMA.search(text)], said
    assert [text for text in said if POINT.search(text)] == []
    for words in ("STATEMENT", "STATEMENTS"):  # results are for programs
        assert words not in found or POINT.search(found[words])


def test_why_something_is_refused(run: Any, chain: Dict[str, Any], locale: str) -> None:
    given = {"INPUT": chain["surface"]["OUTPUT"], "LINE": str(DEMO / "centreline.geojson")}
    assert "0,0001 m" in message_of(run, "crosssections", **given, INTERVAL=0.0001, OUTPUT="TEMPORARY_OUTPUT")


def test_the_preview_says_where_the_points_lie(dialog_with: Any, locale: str) -> None:  # noqa: F811
    preview = preview_of(dialog_with(INPUT=SURVEY["INPUT"], CRS="EPSG:25832"))
    assert "51,56" in preview.place.text()
    assert not POINT.search(preview.place.text())


def test_the_desk_shows_and_takes_a_comma(project: Any, locale: str, tmp_path: Path) -> None:
    from qgis.PyQt.QtTest import QTest

    from plugin.gui.deskform import DeskForm

    form = DeskForm()
    form.interval.setValue(0.25)
    assert form.interval.text() == "0,250"
    form.interval.lineEdit().clear()
    QTest.keyClicks(form.interval.lineEdit(), "0,5")
    assert form.interval.value() == 0.5
    assert form.settings()["interval"] == 0.5
