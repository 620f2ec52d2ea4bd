"""The form of the desk: what must be said of a job before it can be run."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict, List, Optional

from qgis.core import QgsCoordinateReferenceSystem
from qgis.gui import QgsFileWidget, QgsProjectionSelectionDialog
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

translate = QCoreApplication.translate


class DeskForm(QWidget):
    """Files, CRS, folder, contours and plan of a job; tells when the user changes one."""

    changed = pyqtSignal()

    def __init__(self, parent: Optional[QWidget] = None) -> None:
        super().__init__(parent)
        self.filling = False
        form = QFormLayout(self)
        form.setContentsMargins(0, 0, 0, 0)
        self.files = QgsFileWidget()
        self.files.setStorageMode(QgsFileWidget.StorageMode.GetMultipleFiles)
        self.files.setFilter(survey_files())
        self.files.fileChanged.connect(self._files_changed)
        form.addRow(translate("hummock", "Survey files"), self.files)
        crs_row = QHBoxLayout()
        self.crs = QLineEdit()
        self.crs.setPlaceholderText("EPSG:25832")
        self.crs.textChanged.connect(self._changed)
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

    def fill(self, told: Dict[str, Any]) -> None:
        """The settings of a job into the widgets, without the signal."""
        self.filling = True
        try:
            self.files.setFilePath(" ".join(f'"{path}"' for path in told["files"]) if told["files"] else "")
            self.crs.setText(told["crs"])
            self.folder.setFilePath(told["folder"])
            self.interval.setValue(told["interval"])
            self.unit.setCurrentIndex(told["unit"])
            self.scale.setValue(told["scale"])
            self.paper.setCurrentIndex(told["paper"])
            self.checks.setFilePath(told["checks_file"])
        finally:
            self.filling = False
        self._show_crs()

    def settings(self) -> Dict[str, Any]:
        """What the widgets say, by the names of a job's settings."""
        return {
            "files": self._chosen_files(),
            "crs": self.crs.text().strip(),
            "folder": self.folder.filePath(),
            "interval": self.interval.value(),
            "unit": self.unit.currentIndex(),
            "scale": self.scale.value(),
            "paper": self.paper.currentIndex(),
            "checks_file": self.checks.filePath(),
        }

    def _make_interval(self) -> QHBoxLayout:
        line = QHBoxLayout()
        self.interval = QDoubleSpinBox()
        self.interval.setDecimals(3)
        self.interval.setRange(0.001, 1000.0)
        self.interval.valueChanged.connect(self._changed)
        self.unit = QComboBox()
        self.unit.addItems(unit_names()[: len(WORKING_UNITS)])
        self.unit.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.unit.currentIndexChanged.connect(self._changed)
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
        self.paper.addItems([name for name, _, _ in PAPERS])
        self.paper.currentIndexChanged.connect(self._changed)
        line.addWidget(self.scale)
        line.addWidget(self.paper, 1)
        return line

    def _files_changed(self, *_: Any) -> None:
        files = self._chosen_files()
        first = Path(files[0]) if files else Path()
        if first.is_file() and not self.folder.filePath() and not self.filling:
            self.folder.setFilePath(str(first.with_name(first.stem + "_job")))
        self._changed()

    def _chosen_files(self) -> List[str]:
        text = self.files.filePath().strip()
        return list(QgsFileWidget.splitFilePaths(text)) if text else []

    def _choose_crs(self) -> None:
        dialog = QgsProjectionSelectionDialog(self)
        dialog.setCrs(QgsCoordinateReferenceSystem(self.crs.text().strip()))
        if dialog.exec():
            chosen = dialog.crs()
            self.crs.setText(chosen.authid() or chosen.toWkt())

    def _changed(self, *_: Any) -> None:
        if self.filling:
            return
        self._show_crs()
        self.changed.emit()

    def _show_crs(self) -> None:
        text = self.crs.text().strip()
        crs = QgsCoordinateReferenceSystem(text) if text else QgsCoordinateReferenceSystem()
        if crs.isValid():
            self.crs_name.setText(crs.description())
        else:
            self.crs_name.setText(translate("hummock", "QGIS knows no CRS of this code.") if text else "")
        self.crs_name.setVisible(bool(self.crs_name.text()))
