"""The first lines of a survey file as a table, with a drop-down over each column for its role."""

from __future__ import annotations

from typing import Dict, List, Optional

from qgis.PyQt.QtCore import QCoreApplication, Qt, pyqtSignal
from qgis.PyQt.QtGui import QColor
from qgis.PyQt.QtWidgets import QAbstractItemView, QComboBox, QTableWidget, QTableWidgetItem, QWidget

from ..core.points.columns import ROLES
from .previewdata import SurveyPreview

translate = QCoreApplication.translate

MIN_COLUMN, MOST_COLUMN = 118, 260  # pixels
PASSIVE, REJECTED = QColor("#6b6b6b"), QColor("#fde0d2")  # ColorBrewer, Reds, lightest but one


def role_label(role: str) -> str:
    """What a role is called on screen."""
    labels = {
        "name": translate("hummock", "name"),
        "easting": translate("hummock", "easting"),
        "northing": translate("hummock", "northing"),
        "height": translate("hummock", "height"),
        "code": translate("hummock", "code"),
        "sigma_h": translate("hummock", "sigma in plan"),
        "sigma_v": translate("hummock", "sigma in height"),
        "sigma_e": translate("hummock", "sigma to the east"),
        "sigma_n": translate("hummock", "sigma to the north"),
        "fix": translate("hummock", "fix"),
        "satellites": translate("hummock", "satellites"),
        "pdop": translate("hummock", "PDOP"),
        "age": translate("hummock", "age of the correction"),
        "epochs": translate("hummock", "observations of a point"),
        "tilt": translate("hummock", "tilt"),
        "time": translate("hummock", "time"),
        "date": translate("hummock", "date"),
        "latitude": translate("hummock", "latitude"),
        "longitude": translate("hummock", "longitude"),
        "ellipsoidal_height": translate("hummock", "ellipsoidal height"),
        "pole_height": translate("hummock", "pole height"),
    }
    return labels.get(role, role)


class RoleTable(QTableWidget):
    """Shows the lines of a :class:`SurveyPreview`; a receiver log has no roles."""

    roles_changed = pyqtSignal()

    def __init__(self, preview: SurveyPreview, parent: Optional[QWidget] = None) -> None:
        super().__init__(parent)
        self.preview = preview
        self.combos: List[QComboBox] = []
        self.setAccessibleName(translate("hummock", "First lines of the file"))
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setSelectionMode(QAbstractItemView.SelectionMode.NoSelection)
        self._fill()
        self.set_roles(preview.roles)

    def roles(self) -> Dict[str, int]:
        """The roles in the drop-downs: role to column number from 1."""
        return {combo.currentData(): i + 1 for i, combo in enumerate(self.combos) if combo.currentData()}

    def set_roles(self, roles: Dict[str, int]) -> None:
        """Put ``roles`` into the drop-downs, without the signal."""
        by_column = {column: role for role, column in roles.items()}
        for i, combo in enumerate(self.combos):
            self._put(combo, by_column.get(i + 1, ""))

    def mark_rejects(self, reasons: Dict[int, str]) -> None:
        """Rejected lines in another colour, with their reasons (by line) as tool tips."""
        for i, row in enumerate(self.preview.rows):
            reason = reasons.get(row.line, "")
            for j in range(len(row.fields)):
                item = self.item(i + 1, j)
                item.setToolTip(reason)
                item.setBackground(REJECTED if reason else QColor(Qt.GlobalColor.transparent))
                if reason:
                    item.setForeground(QColor("black"))

    def _fill(self) -> None:
        rows, width = self.preview.rows, self.preview.width
        self.setRowCount(len(rows) + 1)
        self.setColumnCount(width)
        self.setHorizontalHeaderLabels([str(i + 1) for i in range(width)])
        self.setVerticalHeaderLabels([translate("hummock", "role"), *(str(row.line) for row in rows)])
        for i in range(width):
            if not self.preview.log:
                self.setCellWidget(0, i, self._role_combo(i))
        for i, row in enumerate(rows):
            for j, field in enumerate(row.fields):
                item = QTableWidgetItem(field)
                if row.passive:
                    item.setForeground(PASSIVE)
                    font = item.font()
                    font.setItalic(True)
                    item.setFont(font)
                self.setItem(i + 1, j, item)
            if row.passive and len(row.fields) == 1 < width:
                self.setSpan(i + 1, 0, 1, width)
        metrics = self.fontMetrics()
        for i in range(width):
            texts = [row.fields[i] for row in rows if i < len(row.fields) and len(row.fields) > 1]
            wide = max((metrics.boundingRect(text).width() for text in texts), default=0) + 24
            self.setColumnWidth(i, min(max(wide, MIN_COLUMN), MOST_COLUMN))
        self.setRowHeight(0, self.rowHeight(0) + 4)
        self.setRowHidden(0, self.preview.log)

    def _role_combo(self, place: int) -> QComboBox:
        combo = QComboBox()
        combo.setAccessibleName(translate("hummock", "Role of column {number}").format(number=place + 1))
        combo.addItem(translate("hummock", "– (kept beside)"), "")
        for role in ROLES:
            combo.addItem(role_label(role), role)
        combo.setProperty("before", "")
        combo.currentIndexChanged.connect(lambda _, i=place: self._role_changed(i))
        self.combos.append(combo)
        return combo

    def _put(self, combo: QComboBox, role: str) -> None:
        combo.blockSignals(True)
        combo.setCurrentIndex(max(0, combo.findData(role)))
        combo.setProperty("before", role)
        combo.blockSignals(False)

    def _role_changed(self, place: int) -> None:
        """A role belongs to one column: the one that had it takes what this one had."""
        changed = self.combos[place]
        role, before = changed.currentData(), changed.property("before")
        for i, combo in enumerate(self.combos):
            if i != place and role and combo.currentData() == role:
                self._put(combo, before)
        changed.setProperty("before", role)
        self.roles_changed.emit()
