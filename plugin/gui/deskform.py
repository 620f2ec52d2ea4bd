"""The form of the desk: what must be said of a job before it can be run."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict, List, Optional

from qgis.core import QgsCoordinateReferenceSystem, QgsMapLayer, QgsMapLayerProxyModel, QgsProject
from qgis.gui import QgsFileWidget, QgsMapLayerComboBox, QgsProjectionSelectionDialog
from qgis.PyQt.QtCore import QCoreApplication, pyqtSignal
from qgis.PyQt.QtWidgets import (
    QComboBox,
    QDoubleSpinBox,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QSizePolicy,
    QSpinBox,
    QToolButton,
    QWidget,
)

from ..core.units import WORKING_UNITS
from ..processing.parameters import survey_files, tables, unit_names
from ..processing.planlayout import PAPERS
from ..processing.versions import member
from .deskjob import suiting_interval

translate = QCoreApplication.translate


#: Layers that may hold parcels.
VECTOR_LAYERS = member(QgsMapLayerProxyModel, "Filter", "PolygonLayer") | member(
    QgsMapLayerProxyModel, "Filter", "LineLayer"
)


def crs_word(text: str) -> str:
    """The code of a CRS as it is written in full: a number alone is one of EPSG's."""
    text = text.strip()
    return f"EPSG:{text}" if text.isdigit() else text


def _layer_of(source: str) -> Optional[QgsMapLayer]:
    """The layer of the project with this source."""
    layers = QgsProject.instance().mapLayers().values() if source else ()
    return next((one for one in layers if one.source() == source), None)


def _survey_files() -> QgsFileWidget:
    made = QgsFileWidget()
    made.setStorageMode(QgsFileWidget.StorageMode.GetMultipleFiles)
    made.setFilter(survey_files())
    return made


def _paths_of(widget: QgsFileWidget) -> List[str]:
    text = widget.filePath().strip()
    return list(QgsFileWidget.splitFilePaths(text)) if text else []


class DeskForm(QWidget):
    """Files, CRS, folder, contours and plan of a job; tells when the user changes one."""

    changed = pyqtSignal()

    def __init__(self, parent: Optional[QWidget] = None) -> None:
        super().__init__(parent)
        self.filling = False
        self.own_interval = False  # whether the user has chosen another interval than the one that suits the CRS
        form = QFormLayout(self)
        form.setContentsMargins(0, 0, 0, 0)
        self.files, self.visits = _survey_files(), _survey_files()
        self.files.fileChanged.connect(self._files_changed)
        form.addRow(translate("hummock", "Survey files"), self.files)
        self.visits.fileChanged.connect(self._changed)
        self.visits.setToolTip(
            translate(
                "hummock",
                "Files of the site as it was another day. Each is compared with the ground before it; in “Compare "
                "later visits” you say where its ground counts.",
            )
        )
        form.addRow(translate("hummock", "Later visits"), self.visits)
        crs_row = QHBoxLayout()
        self.crs = QLineEdit()
        self.crs.setPlaceholderText("EPSG:25832")
        self.crs.textChanged.connect(self._crs_changed)
        choose = QToolButton()
        choose.setText("…")
        choose.setToolTip(translate("hummock", "Choose the CRS from a list"))
        choose.clicked.connect(self._choose_crs)
        crs_row.addWidget(self.crs, 1)
        crs_row.addWidget(choose)
        form.addRow(translate("hummock", "CRS"), crs_row)
        self.crs_name = QLabel()
        self.crs_name.setWordWrap(True)
        form.addRow("", self.crs_name)
        self.folder = QgsFileWidget()
        self.folder.setStorageMode(QgsFileWidget.StorageMode.GetDirectory)
        self.folder.fileChanged.connect(self._changed)
        form.addRow(translate("hummock", "Folder of the job"), self.folder)
        form.addRow(translate("hummock", "Contour interval"), self._make_interval())
        form.addRow(translate("hummock", "Plan"), self._make_plan())
        self.checks = QgsFileWidget()
        self.checks.setFilter(tables())
        self.checks.fileChanged.connect(self._changed)
        form.addRow(translate("hummock", "Check points"), self.checks)
        self.parcels = QgsMapLayerComboBox()
        self.parcels.setFilters(VECTOR_LAYERS)
        self.parcels.setAllowEmptyLayer(True)
        self.parcels.setCurrentIndex(0)
        self.parcels.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.parcels.layerChanged.connect(self._changed)
        form.addRow(translate("hummock", "Parcels for the plan"), self.parcels)

    def fill(self, told: Dict[str, Any]) -> None:
        """The settings of a job into the widgets, without the signal."""
        self.filling = True
        try:
            for widget, paths in ((self.files, told["files"]), (self.visits, told["visits"])):
                widget.setFilePath(" ".join(f'"{path}"' for path in paths))
            self.crs.setText(told["crs"])
            self.folder.setFilePath(told["folder"])
            self.interval.setValue(told["interval"])
            self.unit.setCurrentIndex(told["unit"])
            self.scale.setValue(told["scale"])
            self.paper.setCurrentIndex(told["paper"])
            self.checks.setFilePath(told["checks_file"])
            self.parcels.setLayer(_layer_of(told["parcels"]))
        finally:
            self.filling = False
        self.own_interval = (told["interval"], told["unit"]) != suiting_interval(told["crs"])
        self._show_crs()

    def begin(self, survey: Path, crs: str, checks: Path) -> None:
        """A job on one file, as if the user had typed it."""
        self.crs.setText(crs)
        self.checks.setFilePath(str(checks))
        self.files.setFilePath(str(survey))

    def settings(self) -> Dict[str, Any]:
        """What the widgets say, by the names of a job's settings."""
        return {
            "files": _paths_of(self.files),
            "visits": _paths_of(self.visits),
            "crs": crs_word(self.crs.text()),
            "folder": self.folder.filePath(),
            "interval": self.interval.value(),
            "unit": self.unit.currentIndex(),
            "scale": self.scale.value(),
            "paper": self.paper.currentIndex(),
            "checks_file": self.checks.filePath(),
            "parcels": "" if self.parcels.currentLayer() is None else self.parcels.currentLayer().source(),
        }

    def lacking(self) -> str:
        """What must be said before anything can be run; "" if nothing."""
        told = self.settings()
        if not told["files"]:
            return translate("hummock", "Choose the survey file.")
        absent = [path for path in (*told["files"], *told["visits"]) if not Path(path).is_file()]
        if absent:
            return translate("hummock", "{file}: there is no such file.").format(file=absent[0])
        if not QgsCoordinateReferenceSystem(told["crs"]).isValid():
            return translate("hummock", "Say the CRS of the survey, such as EPSG:25832.")
        return "" if told["folder"] else translate("hummock", "Choose a folder for the products.")

    def _make_interval(self) -> QHBoxLayout:
        line = QHBoxLayout()
        self.interval = QDoubleSpinBox()
        self.interval.setDecimals(3)
        self.interval.setRange(0.001, 1000.0)
        self.interval.valueChanged.connect(self._interval_changed)
        self.unit = QComboBox()
        self.unit.addItems(unit_names()[: len(WORKING_UNITS)])
        self.unit.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.unit.currentIndexChanged.connect(self._interval_changed)
        line.addWidget(self.interval)
        line.addWidget(self.unit, 1)
        return line

    def _make_plan(self) -> QHBoxLayout:
        line = QHBoxLayout()
        self.scale = QSpinBox()
        self.scale.setRange(1, 100000)
        self.scale.setPrefix("1 : ")
        self.scale.valueChanged.connect(self._changed)
        self.paper = QComboBox()
        self.paper.addItems([paper.value for paper in PAPERS])
        self.paper.currentIndexChanged.connect(self._changed)
        line.addWidget(self.scale)
        line.addWidget(self.paper, 1)
        return line

    def _files_changed(self, *_: Any) -> None:
        files = _paths_of(self.files)
        first = Path(files[0]) if files else Path()
        if first.is_file() and not self.folder.filePath() and not self.filling:
            self.folder.setFilePath(str(first.with_name(first.stem + "_job")))
        self._changed()

    def _choose_crs(self) -> None:
        dialog = QgsProjectionSelectionDialog(self)
        dialog.setCrs(QgsCoordinateReferenceSystem(self.crs.text().strip()))
        if dialog.exec():
            chosen = dialog.crs()
            self.crs.setText(chosen.authid() or chosen.toWkt())
        dialog.deleteLater()

    def _crs_changed(self, *_: Any) -> None:
        """The interval suits the CRS, unless the user has chosen one."""
        text = crs_word(self.crs.text())
        if not self.filling and not self.own_interval and QgsCoordinateReferenceSystem(text).isValid():
            interval, unit = suiting_interval(text)
            self.filling = True
            self.interval.setValue(interval)
            self.unit.setCurrentIndex(unit)
            self.filling = False
        self._changed()

    def _interval_changed(self, *_: Any) -> None:
        self.own_interval = self.own_interval or not self.filling
        self._changed()

    def _changed(self, *_: Any) -> None:
        if self.filling:
            return
        self._show_crs()
        self.changed.emit()

    def _show_crs(self) -> None:
        text = crs_word(self.crs.text())
        crs = QgsCoordinateReferenceSystem(text) if text else QgsCoordinateReferenceSystem()
        if crs.isValid():
            self.crs_name.setText(crs.description())
        else:
            self.crs_name.setText(translate("hummock", "QGIS knows no CRS of this code.") if text else "")
        self.crs_name.setVisible(bool(self.crs_name.text()))
