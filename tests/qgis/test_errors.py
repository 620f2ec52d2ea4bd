"""Input that cannot work: one line that says what is wrong, no crash, no traceback."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict

import pytest
from in_qgis import DEMO, Listener, Profile, memory_lines, memory_points, message_of

HEADER = "name,easting,northing,height,code\n"
SQUARE = [("1", 0, 0, 10), ("2", 10, 0, 11), ("3", 10, 10, 12), ("4", 0, 10, 11)]


BAD_FILES: Dict[str, Any] = {
    # name: what is in the file, and what the line must name besides the file
    "empty.csv": (b"", ("empty",)),
    "binary.csv": (bytes(range(256)) * 20, ("binary",)),
    "text_height.csv": (
        (HEADER + "".join(f"{i},50000{i}.0,570000{i}.0,high,GR\n" for i in range(5))).encode(),
        ("line", "height"),
    ),
    "header_only.csv": (HEADER.encode(), ()),
    "no_heights.csv": (b"easting,northing\n1,2\n3,4\n", ("height",)),
    "not_finite.csv": (
        (HEADER + "1,500000,5700000,nan,GR\n2,500001,5700000,inf,GR\n3,500001,5700001,nan,GR\n").encode(),
        ("line",),
    ),
}


@pytest.mark.parametrize("name", BAD_FILES)
def test_bad_survey_files(run: Any, tmp_path: Path, name: str) -> None:
    content, words = BAD_FILES[name]
    file = tmp_path / name
    file.write_bytes(content)
    said = message_of(run, "importpoints", INPUT=str(file), CRS="EPSG:25832", OUTPUT="TEMPORARY_OUTPUT")
    for word in (name, *words):
        assert word in said
    assert "--" not in said, "options of the command line mean nothing in QGIS"


def test_missing_survey_file(run: Any) -> None:
    said = message_of(run, "importpoints", INPUT="/nowhere/survey.csv", CRS="EPSG:25832", OUTPUT="TEMPORARY_OUTPUT")
    assert "/nowhere/survey.csv" in said


def test_the_feedback_is_told(application: Any) -> None:
    """As the toolbox runs an algorithm: no exception, the error in the log of the dialog."""
    from qgis.core import QgsApplication, QgsProcessingContext

    algorithm = QgsApplication.processingRegistry().createAlgorithmById("hummock:importpoints")
    parameters = {"INPUT": "/nowhere/survey.csv", "CRS": "EPSG:25832", "OUTPUT": "TEMPORARY_OUTPUT"}
    listener, context = Listener(), QgsProcessingContext()
    _, fine = algorithm.run(parameters, context, listener.feedback)
    assert not fine
    assert len(listener.errors) == 1
    assert "/nowhere/survey.csv" in listener.errors[0]
    assert "Traceback" not in listener.errors[0]


def test_wrong_separator(run: Any) -> None:
    survey = str(DEMO / "survey.csv")
    said = message_of(run, "importpoints", INPUT=survey, CRS="EPSG:25832", DELIMITER=2, OUTPUT="TEMPORARY_OUTPUT")
    assert survey in said
    assert "Separator" in said


def test_unknown_column_role(run: Any) -> None:
    said = message_of(
        run,
        "importpoints",
        INPUT=str(DEMO / "survey.csv"),
        CRS="EPSG:25832",
        COLUMNS="name,easting,northing,hight",
        OUTPUT="TEMPORARY_OUTPUT",
    )
    assert "hight" in said
    assert "Columns" in said


def test_crs_in_degrees(run: Any) -> None:
    survey = str(DEMO / "survey.csv")
    said = message_of(run, "importpoints", INPUT=survey, CRS="EPSG:4326", OUTPUT="TEMPORARY_OUTPUT")
    assert "EPSG:4326" in said
    assert "degrees" in said


def test_missing_crs(run: Any) -> None:
    from qgis.core import QgsProcessingException

    with pytest.raises(QgsProcessingException, match="CRS"):
        run("importpoints", INPUT=str(DEMO / "survey.csv"), OUTPUT="TEMPORARY_OUTPUT")


def test_points_without_a_crs(run: Any, tmp_path: Path) -> None:
    points = memory_points(SQUARE, crs="")
    said = message_of(run, "buildsurface", INPUT=points, OUTPUT=str(tmp_path / "no.2dm"))
    assert "square" in said
    assert "CRS" in said


def test_points_without_heights(run: Any, tmp_path: Path) -> None:
    points = memory_points(SQUARE, kind="Point")
    said = message_of(run, "buildsurface", INPUT=points, OUTPUT=str(tmp_path / "no.2dm"))
    assert "height" in said
    points = memory_points(SQUARE)
    said = message_of(run, "buildsurface", INPUT=points, HEIGHT_FIELD="elevation", OUTPUT=str(tmp_path / "no.2dm"))
    assert "elevation" in said


@pytest.mark.parametrize(
    ("rows", "words"),
    [
        ([("1", 0, 0, 1), ("2", 5, 5, 2), ("3", 10, 10, 3)], ("straight line",)),
        ([("1", 0, 0, 1), ("2", 5, 5, 2)], ("three",)),
        ([], ("three",)),
    ],
)
def test_points_that_span_no_surface(run: Any, tmp_path: Path, rows: Any, words: Any) -> None:
    target = tmp_path / "no.2dm"
    said = message_of(run, "buildsurface", INPUT=memory_points(rows), OUTPUT=str(target))
    for word in words:
        assert word in said
    assert not target.exists()


CROSS = ["LineStringZ(500001 5700001 10, 500009 5700009 12)", "LineStringZ(500001 5700009 11, 500009 5700001 15)"]


def test_crossing_breaklines(run: Any, tmp_path: Path) -> None:
    points, lines = memory_points(SQUARE), memory_lines(CROSS)
    target = str(tmp_path / "crossing.2dm")
    said = message_of(run, "buildsurface", INPUT=points, BREAKLINES=lines, OUTPUT=target)
    for word in ("E 500005.000", "N 5700005.000", "11.000 m", "13.000 m"):
        assert word in said
    listener = Listener()
    result = run("buildsurface", listener, INPUT=points, BREAKLINES=lines, CROSSINGS=1, OUTPUT=target)
    nodes = [line.split()[2:] for line in Path(result["OUTPUT"]).read_text().splitlines() if line.startswith("ND")]
    assert ["500005.0000", "5700005.0000", "12.000000"] in nodes
    assert any("2.000 m" in warning for warning in listener.warnings)


def test_mesh_that_is_none(run: Any, tmp_path: Path) -> None:
    from qgis.core import QgsProcessingException

    file = tmp_path / "binary.2dm"
    file.write_bytes(bytes(range(256)))
    for mesh in (str(file), "/nowhere/surface.2dm"):
        with pytest.raises(QgsProcessingException, match=mesh):
            run("contours", INPUT=mesh, CRS="EPSG:25832", INTERVAL=1, OUTPUT="TEMPORARY_OUTPUT")


def test_mesh_without_a_crs(run: Any, chain: Dict[str, Any], tmp_path: Path) -> None:
    copy = tmp_path / "alone.2dm"
    copy.write_bytes(Path(chain["surface"]["OUTPUT"]).read_bytes())
    said = message_of(run, "contours", INPUT=str(copy), INTERVAL=1, OUTPUT="TEMPORARY_OUTPUT")
    assert "alone.2dm" in said
    assert "CRS" in said
    assert run("contours", INPUT=str(copy), INTERVAL=1, CRS="EPSG:25832", OUTPUT="TEMPORARY_OUTPUT")["CONTOURS"] > 0


def test_too_many_contours(run: Any, chain: Dict[str, Any]) -> None:
    said = message_of(run, "contours", INPUT=chain["surface"]["OUTPUT"], INTERVAL=1e-5, OUTPUT="TEMPORARY_OUTPUT")
    assert "interval" in said


def test_a_fault_of_the_program_is_one_line(run: Any, monkeypatch: pytest.MonkeyPatch) -> None:
    from plugin.processing import importpoints

    def break_down(*arguments: Any, **named: Any) -> None:
        raise KeyError("no such\nthing")

    monkeypatch.setattr(importpoints, "take_in_chosen", break_down)
    from qgis.core import QgsProcessingException

    with pytest.raises(QgsProcessingException) as raised:
        run("importpoints", INPUT=str(DEMO / "survey.csv"), CRS="EPSG:25832", OUTPUT="TEMPORARY_OUTPUT")
    assert "KeyError" in str(raised.value)
    assert len(str(raised.value).splitlines()) == 1


@pytest.mark.parametrize(
    "words",
    [
        ("importpoints", "--INPUT=/nowhere/survey.csv", "--CRS=EPSG:25832", "--OUTPUT=TEMPORARY_OUTPUT"),
        ("importpoints", f"--INPUT={DEMO / 'site.gpkg'}", "--CRS=EPSG:25832", "--OUTPUT=TEMPORARY_OUTPUT"),
        ("importpoints", f"--INPUT={DEMO / 'survey.csv'}", "--OUTPUT=TEMPORARY_OUTPUT"),
        ("importpoints", f"--INPUT={DEMO / 'survey.csv'}", "--CRS=EPSG:4326", "--OUTPUT=TEMPORARY_OUTPUT"),
        ("buildsurface", "--INPUT=/nowhere/points.gpkg", "--OUTPUT=TEMPORARY_OUTPUT"),
        ("contours", "--INPUT=/nowhere/surface.2dm", "--INTERVAL=1", "--OUTPUT=TEMPORARY_OUTPUT"),
    ],
)
def test_qgis_process_fails_without_a_traceback(profile: Profile, words: Any) -> None:
    ran = profile.qgis_process("run", f"hummock:{words[0]}", *words[1:])
    assert ran.returncode != 0
    assert "ERROR" in ran.stdout + ran.stderr
    assert "Traceback" not in ran.stdout + ran.stderr
