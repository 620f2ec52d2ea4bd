"""The dialog in which the choices of a step are made; nothing is run from it."""

from __future__ import annotations

from typing import Any, Dict, List, Optional, Tuple

from qgis.core import QgsProcessingContext, QgsProcessingParameterDefinition, QgsProject
from qgis.gui import QgsGui, QgsProcessingGui
from qgis.PyQt.QtCore import QCoreApplication, Qt
from qgis.PyQt.QtWidgets import (
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QGroupBox,
    QLabel,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from ..core.job.settings import JobSettings
from ..core.messages import SurveyError
from ..processing.algorithm import tell
from ..processing.jobchoices import Choice, change, choices_of
from ..processing.versions import ADVANCED, member

translate = QCoreApplication.translate

_STANDARD = member(QgsProcessingGui, "WidgetType", "Standard")
WIDTH, HEIGHT = 560, 520  # pixels


class ChoicesDialog(QDialog):
    """The choices of ``step`` as they stand in ``settings``; ``chosen`` holds the new ones when it was accepted."""

    def __init__(self, step: str, title: str, settings: JobSettings, parent: Optional[QWidget] = None) -> None:
        super().__init__(parent)
        self.step, self.chosen = step, settings
        self.setWindowTitle(title)
        self.context = QgsProcessingContext()
        self.context.setProject(QgsProject.instance())
        self.wrappers: Dict[str, Any] = {}
        self._kept: List[QgsProcessingParameterDefinition] = []
        column = QVBoxLayout(self)
        inside = QWidget()
        rows = QVBoxLayout(inside)
        plain, more = self._form(rows, ""), self._form(rows, translate("hummock", "More"))
        for choice in choices_of(step):
            self._add(choice, plain, more)
        rows.addStretch(1)
        more.parentWidget().setVisible(more.rowCount() > 0)
        scroll = QScrollArea()
        scroll.setWidgetResizable(True)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setWidget(inside)
        column.addWidget(scroll, 1)
        self.said = QLabel()
        self.said.setWordWrap(True)
        self.said.hide()
        column.addWidget(self.said)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel)
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        column.addWidget(buttons)
        self.resize(WIDTH, HEIGHT)

    def _form(self, rows: QVBoxLayout, title: str) -> QFormLayout:
        box = QGroupBox(title)
        box.setFlat(not title)
        form = QFormLayout(box)
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapAllRows)
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        rows.addWidget(box)
        return form

    def _add(self, choice: Choice, plain: QFormLayout, more: QFormLayout) -> None:
        definition = choice.definition()
        wrapper = QgsGui.processingGuiRegistry().createParameterWidgetWrapper(definition, _STANDARD)
        widget = wrapper.createWrappedWidget(self.context)
        wrapper.setParameterValue(choice.shown(self.chosen), self.context)
        label = wrapper.createWrappedLabel()
        widget.setToolTip(definition.help())
        for box in (*widget.findChildren(QComboBox), *([widget] if isinstance(widget, QComboBox) else [])):
            box.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        form = more if definition.flags() & ADVANCED else plain
        if label is None:
            form.addRow(widget)
        else:
            label.setToolTip(definition.help())
            form.addRow(label, widget)
        self.wrappers[choice.name] = wrapper
        self._kept.append(definition)

    def accept(self) -> None:
        """Take the choices; words that are not understood keep the dialog open and are told."""
        values = {name: wrapper.parameterValue() for name, wrapper in self.wrappers.items()}
        try:
            self.chosen = change(self.chosen, values, self.step)
        except (SurveyError, ValueError) as error:
            self.said.setText(tell(error.message) if isinstance(error, SurveyError) else str(error))
            self.said.show()
            return
        super().accept()


def has_choices(step: str) -> bool:
    """Whether a step has any."""
    return bool(choices_of(step))


def ask(step: str, title: str, settings: JobSettings, parent: QWidget) -> Tuple[bool, JobSettings]:
    """Show the dialog; whether it was accepted, and the choices."""
    dialog = ChoicesDialog(step, title, settings, parent)
    accepted = bool(dialog.exec())
    dialog.deleteLater()
    return accepted, dialog.chosen
