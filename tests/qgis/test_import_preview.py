"""The preview of the import, with real widgets: what it shows, and what it puts into the parameters."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Callable

import pytest
from in_qgis import DEMO, SURVEY, close_for_good


@pytest.fixture
def dialog_with(application: Any, project: Any) -> Callable[..., Any]:
    """The algorithm's own dialog with values in its widgets."""
    from processing.gui.AlgorithmDialog import AlgorithmDialog
    from qgis.core import QgsApplication

    made = []

    def make(**values: Any) -> Any:
        algorithm = QgsApplication.processingRegistry().createAlgorithmById("hummock:importpoints")
        dialog = AlgorithmDialog(algorithm)
        dialog.setParameters(values)
        made.append(dialog)
        return dialog

    yield make
    for dialog in made:
        close_for_good(dialog)


def wrappers(dialog: Any) -> Any:
    return dialog.mainWidget().wrappers


def preview_of(dialog: Any) -> Any:
    return wrappers(dialog)["COLUMNS"].make_preview()


def press(button: Any) -> None:
    from qgis.PyQt.QtCore import Qt
    from qgis.PyQt.QtTest import QTest

    QTest.mouseClick(button, Qt.MouseButton.LeftButton)


def answers(preview: Any, start: str) -> Any:
    from qgis.PyQt.QtWidgets import QPushButton

    return [button for button in preview.notes.findChildren(QPushButton) if button.text().startswith(start)]


def said(preview: Any) -> str:
    from qgis.PyQt.QtWidgets import QLabel

    return " ".join(label.text() for label in preview.notes.findChildren(QLabel))


def beside(button: Any) -> str:
    """What stands beside a button."""
    from qgis.PyQt.QtWidgets import QLabel

    return " ".join(label.text() for label in button.parent().findChildren(QLabel))


def ok(preview: Any) -> Any:
    from qgis.PyQt.QtWidgets import QDialogButtonBox

    return preview.buttons.button(QDialogButtonBox.StandardButton.Ok)


def survey(path: Path, header: str = "", separator: str = " ", swapped: bool = False) -> str:
    lines = [header] if header else []
    for i in range(80):
        plan = [f"{500000 + 0.5 * i:.3f}", "bad" if i % 20 == 7 else f"{5700000 + 0.4 * i + i % 3:.3f}"]
        lines.append(separator.join([str(i + 1), *(plan[::-1] if swapped else plan), f"{100 + 0.01 * i:.3f}", "GR"]))
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    return str(path)


def test_the_columns_are_prefilled_by_recognition(dialog_with: Any) -> None:
    preview = preview_of(dialog_with(INPUT=SURVEY["INPUT"], CRS="EPSG:25832"))
    assert [combo.currentData() for combo in preview.table.combos[:5]] == [
        "name",
        "easting",
        "northing",
        "height",
        "code",
    ]
    assert "6859 lines, 6853 points, <b>2 rejected</b>, 4 others" in preview.summary.text()
    assert preview.map.drawn() == 6853
    assert "51.56" in preview.place.text()
    assert preview.table.item(3, 0).text() == "1001"  # below the roles, the header and a comment
    assert ok(preview).isEnabled()
    assert preview.choices().columns == ""  # as recognised: nothing to write into the parameter


def test_rejected_lines_are_marked_with_their_reason(dialog_with: Any, tmp_path: Path) -> None:
    preview = preview_of(dialog_with(INPUT=survey(tmp_path / "plain.txt"), CRS="EPSG:25832"))
    assert "<b>4 rejected</b>" in preview.summary.text()
    assert "is not a number: 'bad'" in preview.table.item(8, 2).toolTip()
    assert preview.table.item(7, 2).toolTip() == ""


def test_a_role_moves_and_the_counts_follow(dialog_with: Any, tmp_path: Path) -> None:
    """The height given to the column of codes: no line can be read, and the preview says so at once."""
    preview = preview_of(dialog_with(INPUT=survey(tmp_path / "plain.txt"), CRS="EPSG:25832"))
    height = preview.table.combos[4].findData("height")
    preview.table.combos[4].setCurrentIndex(height)
    assert preview.table.combos[3].currentData() == "code"  # the two columns have exchanged their roles
    assert preview.timer.isActive()
    preview.refresh()
    assert not ok(preview).isEnabled()
    assert "column 5, read as height" in said(preview)
    assert preview.map.drawn() == 0
    preview.table.combos[3].setCurrentIndex(height)
    preview.refresh()
    assert ok(preview).isEnabled()
    assert preview.choices().columns == "name=1,easting=2,northing=3,height=4,code=5"


def test_what_is_open_has_to_be_answered(dialog_with: Any, tmp_path: Path) -> None:
    """On a local grid nothing tells easting from northing."""
    dialog = dialog_with(INPUT=survey(tmp_path / "plain.txt"), LOCAL=True)
    preview = preview_of(dialog)
    assert "Open: nothing says for sure which columns are which" in said(preview)
    assert not ok(preview).isEnabled()
    assert ok(preview).toolTip()
    first, second, *_ = answers(preview, "Columns:")
    assert "easting 2, northing 3" in first.text()
    press(second)
    assert [combo.currentData() for combo in preview.table.combos[1:3]] == ["northing", "easting"]
    assert ok(preview).isEnabled()
    wrappers(dialog)["COLUMNS"].take(preview.choices())
    values = dialog.mainWidget().createProcessingParameters()
    assert values["COLUMNS"] == "name=1,northing=2,easting=3,height=4,code=5"
    assert values["UNIT"] == 0


def test_likely_causes_are_buttons_and_can_be_taken_back(dialog_with: Any, tmp_path: Path) -> None:
    file = survey(tmp_path / "plain.txt", swapped=True)
    dialog = dialog_with(INPUT=file, CRS="EPSG:25832", COLUMNS="name,easting,northing,height,code")
    preview = preview_of(dialog)
    assert "outside the area of use" in said(preview)
    assert not ok(preview).isEnabled()
    (button,) = answers(preview, "Read them so: easting and northing are exchanged")
    assert "51." in beside(button)
    (stay,) = answers(preview, "Leave them there")
    assert "3." in beside(stay)
    press(button)
    assert ok(preview).isEnabled()
    (button,) = answers(preview, "Read them so")
    assert button.isChecked()
    assert "51." in preview.place.text()
    wrappers(dialog)["COLUMNS"].take(preview.choices())
    assert dialog.mainWidget().createProcessingParameters()["CORRECT"] == "swapped"
    press(button)
    assert preview.choices().correct == ""


def test_a_unit_that_is_open_is_chosen_there(dialog_with: Any, tmp_path: Path) -> None:
    """Steps of 1.64 on a local grid: feet as a rover on foot stores them, or metres."""
    path = tmp_path / "steps.csv"
    rows = [f"p{i},{1000 + 1.64 * i:.2f},{2000 + (i % 2) * 0.01:.2f},{50 + 0.1 * i:.2f}" for i in range(60)]
    path.write_text("\n".join(["name,easting,northing,height", *rows]) + "\n", encoding="utf-8")
    dialog = dialog_with(INPUT=str(path), LOCAL=True)
    preview = preview_of(dialog)
    assert "Open: nothing says for sure whether coordinates are in" in said(preview)
    assert not ok(preview).isEnabled()
    press(answers(preview, "Unit: international feet")[0])
    preview.refresh()
    assert ok(preview).isEnabled()
    wrappers(dialog)["COLUMNS"].take(preview.choices())
    assert dialog.mainWidget().createProcessingParameters()["UNIT"] == 1


def test_degrees_read_as_lengths_are_offered_as_degrees(dialog_with: Any, tmp_path: Path) -> None:
    path = tmp_path / "degrees.csv"
    rows = [f"p{i},{51.45 + i * 1e-5:.7f},{9.0 + i * 1e-5:.7f},{100 + i * 0.1:.2f}" for i in range(30)]
    path.write_text("\n".join(["point,one,two,three", *rows]) + "\n", encoding="utf-8")
    preview = preview_of(dialog_with(INPUT=str(path), CRS="EPSG:25832", COLUMNS="name,easting,northing,height"))
    assert "degrees; read them as such" in said(preview)
    (button,) = answers(preview, "Columns: latitude 2, longitude 3")
    press(button)
    (button,) = answers(preview, "Decimal degrees")  # their digits could be minutes and seconds too
    press(button)
    assert "51.45" in preview.place.text()
    assert preview.choices().columns == "name=1,latitude=2,longitude=3,height=4"


def test_each_answer_says_where_it_would_put_the_site(dialog_with: Any, project: Any, tmp_path: Path) -> None:
    """Both orders of two columns lie in the area of use of this CRS, and a layer tells which is near."""
    from qgis.core import QgsFeature, QgsGeometry, QgsPointXY, QgsVectorLayer

    layer = QgsVectorLayer("Point?crs=EPSG:2180", "parcels", "memory")
    feature = QgsFeature()
    feature.setGeometry(QgsGeometry.fromPointXY(QgsPointXY(500300.0, 400300.0)))
    layer.dataProvider().addFeatures([feature])
    layer.updateExtents()
    project.addMapLayer(layer)
    path = tmp_path / "plain.txt"
    rows = [f"{i} {500000 + 0.5 * i:.3f} {400000 + 0.4 * i + i % 3:.3f} {100 + 0.01 * i:.3f}" for i in range(60)]
    path.write_text("\n".join(rows) + "\n", encoding="utf-8")
    preview = preview_of(dialog_with(INPUT=str(path), CRS="EPSG:2180"))
    first, second = answers(preview, "Columns:")[:2]
    texts = {button.text().split(":")[1]: beside(button) for button in (first, second)}
    assert all("° N" in text and "“parcels” is" in text for text in texts.values())
    near = next(text for roles, text in texts.items() if "easting 2" in roles)
    assert "m away" in near.split("“parcels” is ")[1]
    assert "km" not in near.split("“parcels” is ")[1].split(" away")[0]


def test_a_pole_height_is_asked_for_and_written_into_its_parameter(
    dialog_with: Any, tmp_path: Path, monkeypatch: Any
) -> None:
    from qgis.PyQt.QtWidgets import QInputDialog

    path = tmp_path / "walk.nmea"
    path.write_text(log_text(), encoding="ascii")
    dialog = dialog_with(INPUT=str(path), CRS="EPSG:25832", SOURCE_CRS="EPSG:4258")
    preview = preview_of(dialog)
    monkeypatch.setattr(QInputDialog, "getText", lambda *_, **__: ("1.8", True))
    (button,) = answers(preview, "The height of your pole")
    press(button)
    assert preview.outcome.intake.survey.points.height[0] == pytest.approx(98.2)
    wrappers(dialog)["COLUMNS"].take(preview.choices())
    assert dialog.mainWidget().createProcessingParameters()["POLE_HEIGHT"] == pytest.approx(1.8)


def test_a_ballpark_operation_is_accepted_by_its_button(dialog_with: Any, tmp_path: Path) -> None:
    dialog = dialog_with(INPUT=survey(tmp_path / "plain.txt"), SOURCE_CRS="EPSG:23032", CRS="EPSG:26732")
    wrappers(dialog)["COLUMNS"].setValue("name,easting,northing,height,code")
    preview = preview_of(dialog)
    assert not ok(preview).isEnabled()
    (button,) = answers(preview, "Accept “")
    assert "allpark" in button.text()
    press(button)
    assert ok(preview).isEnabled()
    wrappers(dialog)["COLUMNS"].take(preview.choices())
    assert "allpark" in dialog.mainWidget().createProcessingParameters()["ACCEPT"]


def test_long_files_are_shown_in_part(dialog_with: Any, tmp_path: Path) -> None:
    path = tmp_path / "long.csv"
    with open(path, "w", encoding="utf-8") as stream:
        stream.write("name,easting,northing,height\n")
        for i in range(100_000):
            stream.write(f"p{i},{500000 + i % 1000},{5700000 + i // 1000},{100 + i % 7}\n")
    preview = preview_of(dialog_with(INPUT=str(path), CRS="EPSG:25832"))
    assert "Only the first part" in preview.summary.text()
    assert str(path) in preview.summary.text()
    assert 0 < preview.map.drawn() <= 20_000
    copies = preview.preview.heads[0]
    assert Path(copies).exists()
    preview.reject()
    assert not Path(copies).exists()


def test_a_file_that_is_no_survey_is_shown_with_one_error(dialog_with: Any, tmp_path: Path) -> None:
    path = tmp_path / "letter.txt"
    path.write_text("Dear all\nmore tomorrow\n", encoding="utf-8")
    preview = preview_of(dialog_with(INPUT=str(path), CRS="EPSG:25832"))
    assert preview.table.item(2, 0).text() == "more tomorrow"
    assert said(preview).count("no three columns") == 1
    assert not ok(preview).isEnabled()


def test_without_a_file_it_says_so(dialog_with: Any) -> None:
    from qgis.core import QgsProcessingException

    with pytest.raises(QgsProcessingException, match="Choose a survey file first"):
        preview_of(dialog_with(CRS="EPSG:25832"))


def test_a_log_has_no_columns_to_assign(dialog_with: Any, tmp_path: Path) -> None:
    path = tmp_path / "walk.nmea"
    path.write_text(log_text(), encoding="ascii")
    preview = preview_of(dialog_with(INPUT=str(path), CRS="EPSG:25832", SOURCE_CRS="EPSG:4258"))
    assert preview.table.combos == []
    assert preview.table.isRowHidden(0)
    assert not ok(preview).isEnabled()
    assert "nothing says how high it stood above the ground" in said(preview)
    (kept,) = answers(preview, "Heights of the antenna, kept as they are")
    assert "51.45" in beside(kept)
    press(kept)
    assert preview.map.drawn() == 5
    assert ok(preview).isEnabled()
    assert preview.choices().columns == ""
    assert "nothing says how high" not in said(preview)
    (given,) = answers(preview, "Answered: heights of the antenna")
    assert given.isChecked()
    assert "accuracy stated by PROJ" in said(preview)


def log_text() -> str:
    lines = []
    for i in range(5):
        body = f"GPGGA,10000{i}.00,5127.{i:07d},N,00900.0000000,E,4,12,0.8,100.0,M,46.0,M,1.0,0001"
        value = 0
        for byte in body.encode():
            value ^= byte
        lines.append(f"${body}*{value:02X}")
    return "\r\n".join(lines) + "\r\n"


def test_batch_and_model_get_a_plain_field(application: Any) -> None:
    from processing.gui.wrappers import DIALOG_BATCH, WidgetWrapperFactory
    from qgis.core import QgsApplication
    from qgis.PyQt.QtWidgets import QLineEdit, QWidget

    class BatchAlgorithmDialog(QWidget):
        """Wrappers look at the name of the dialog's class."""

    algorithm = QgsApplication.processingRegistry().createAlgorithmById("hummock:importpoints")
    dialog = BatchAlgorithmDialog()
    wrapper = WidgetWrapperFactory.create_wrapper(algorithm.parameterDefinition("COLUMNS"), dialog)
    assert wrapper.dialogType == DIALOG_BATCH
    assert isinstance(wrapper.widget, QLineEdit)
    wrapper.setValue("name,easting,northing,height")
    assert wrapper.value() == "name,easting,northing,height"


def test_the_map_shows_what_it_was_given(dialog_with: Any) -> None:
    """Painted: points in blue on white."""
    preview = preview_of(dialog_with(INPUT=str(DEMO / "survey.csv"), CRS="EPSG:25832"))
    preview.show()
    preview.map.refresh()
    preview.map.waitWhileRendering()
    image = preview.map.grab().toImage()
    colours = [image.pixelColor(x, y) for x in range(0, image.width(), 3) for y in range(0, image.height(), 3)]
    blue = sum(colour.blue() > colour.red() + 60 for colour in colours)
    assert 0.02 * len(colours) < blue < 0.8 * len(colours)
    preview.reject()


def test_lines_put_aside_as_swapped_are_offered_the_other_way_round(dialog_with: Any, tmp_path: Path) -> None:
    path = tmp_path / "run.csv"
    rows = []
    for i in range(80):
        plan = [f"{500000 + 0.5 * i:.3f}", f"{5700000 + i % 3:.3f}"]
        rows.append(",".join([f"p{i}", *(plan[::-1] if 20 <= i < 45 else plan), "100.0"]))
    path.write_text("\n".join(["name,easting,northing,height", *rows]) + "\n", encoding="utf-8")
    preview = preview_of(dialog_with(INPUT=str(path), CRS="EPSG:25832"))
    assert preview.map.drawn() == 55
    (button,) = answers(preview, "Read them so: easting and northing are exchanged")
    press(button)
    assert preview.map.drawn() == 80
    assert preview.choices().correct == "swapped"
    assert "25 of 80 points were read otherwise" in said(preview)


ROWS = [f"{1001 + i},{548240.5 + 0.35 * i:.3f},{5712395.25 + 0.35 * i:.3f},{92 + 0.013 * i:.3f}" for i in range(40)]
HEAD = "name,easting,northing,height"
DEGREES = [f"{1001 + i},{51.332205 + i * 5e-8:.9f},{9.414503 + i * 9e-8:.9f},92.1" for i in range(40)]


def swapped_cell(rows: Any, which: Any, cell: str) -> Any:
    """Rows with their last cell replaced."""
    return [f"{row.rpartition(',')[0]},{cell}" if i in which else row for i, row in enumerate(rows)]


@pytest.mark.parametrize(
    ("head", "rows", "start", "expected"),
    [
        (HEAD, [f"#{row}" if i % 10 == 3 else row for i, row in enumerate(ROWS)], "Names that begin with #", 40),
        (HEAD, swapped_cell(ROWS, (4, 14, 24), "97.000"), "97 stands for no value", 37),
        ("name,easting,northing,depth", ROWS, "Depths that count down", 40),
        (HEAD, [row.replace(",92.", ",92") for row in ROWS], "Heights in mm", 40),
        ("name,latitude,longitude,height", DEGREES, "Degrees, then digits of minutes", 40),
        (f"# UTM zone 33N\n{HEAD}", ROWS, "Its coordinates are in ETRS89 / UTM zone 32N", 40),
        (f"# antenna height 1.8 m\n{HEAD}", ROWS, "Heights of the antenna, to be lowered", 40),
        (
            "name,E,N,Z,as-built E,as-built N,as-built Z",
            [f"{row},{row.partition(',')[2]}" for row in ROWS],
            "Columns: easting 5, northing 6, height 7",
            40,
        ),
        (f"heights in cm\n{HEAD} (m)", [row.replace(",92.", ",92") for row in ROWS], "Heights in cm", 40),
    ],
)
def test_what_the_command_line_refuses_is_asked_and_answered(
    dialog_with: Any, tmp_path: Path, head: str, rows: Any, start: str, expected: int
) -> None:
    path = tmp_path / "asked.csv"
    path.write_text("\n".join([head, *rows]) + "\n", encoding="utf-8")
    preview = preview_of(dialog_with(INPUT=str(path), CRS="EPSG:25832"))
    (button,) = answers(preview, start)
    assert "Open:" in said(preview)
    press(button)
    for _ in range(2):  # where header and answer differ, whose word counts
        for more in answers(preview, "In cm, whatever"):
            press(more)
    assert preview.map.drawn() == expected, said(preview)
