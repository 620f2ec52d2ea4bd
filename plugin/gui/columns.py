"""The parameter of the import that names the columns: a line of text, and a preview that fills it."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Dict, List, Optional

from processing.gui.wrappers import DIALOG_STANDARD, WidgetWrapper
from qgis.core import QgsProcessingContext, QgsProcessingException, QgsSettings
from qgis.PyQt.QtCore import QCoreApplication
from qgis.PyQt.QtWidgets import QHBoxLayout, QLineEdit, QMessageBox, QPushButton, QWidget

from ..core.messages import SurveyError
from ..processing.algorithm import tell
from ..processing.importoptions import OPERATIONS_APART, chosen_files, chosen_options
from ..processing.parameters import UNITS
from ..processing.projectmarks import project_crs, project_landmarks
from .answered import parameter_of
from .preview import PreviewDialog
from .previewdata import Choices, SurveyPreview

translate = QCoreApplication.translate


class ColumnsWrapper(WidgetWrapper):
    """A text field; in the algorithm's own dialog with a button that opens the preview."""

    def createWidget(self) -> QWidget:
        self.edit = QLineEdit()
        self.edit.setPlaceholderText(translate("hummock", "as recognised"))
        self.edit.textChanged.connect(lambda _: self.widgetValueHasChanged.emit(self))
        self.others: Dict[str, Any] = {}
        self.button: Optional[QPushButton] = None
        if self.dialogType != DIALOG_STANDARD:
            return self.edit
        holder = QWidget()
        layout = QHBoxLayout(holder)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.edit)
        self.button = QPushButton(translate("hummock", "Preview…"))
        self.button.setToolTip(
            translate("hummock", "Shows the file, the role of each column, rejected lines, and where points would land")
        )
        self.button.clicked.connect(self.open_preview)
        layout.addWidget(self.button)
        holder.setFocusProxy(self.edit)
        return holder

    def postInitialize(self, wrappers: List[Any]) -> None:
        """The widgets of the other parameters, whose values the preview reads and sets."""
        self.others = {wrapper.parameterDefinition().name(): wrapper for wrapper in wrappers}

    def setValue(self, value: Any) -> None:
        self.edit.setText("" if value is None else str(value))

    def value(self) -> str:
        return str(self.edit.text())

    def open_preview(self) -> None:
        """The preview, and its choices into the parameters when the user takes them."""
        try:
            dialog = self.make_preview()
        except (SurveyError, QgsProcessingException) as error:
            said = tell(error.message) if isinstance(error, SurveyError) else str(error)
            QMessageBox.warning(self.widget.window(), translate("hummock", "Preview"), said)
            return
        settings = QgsSettings()
        geometry = settings.value("hummock/preview_geometry")
        if geometry:
            dialog.restoreGeometry(geometry)
        if dialog.exec():
            self.take(dialog.choices())
        settings.setValue("hummock/preview_geometry", dialog.saveGeometry())
        dialog.deleteLater()

    def make_preview(self) -> PreviewDialog:
        """The preview of the files that are chosen now. Raises SurveyError and QgsProcessingException."""
        algorithm, context = self.parameterDefinition().algorithm(), QgsProcessingContext()
        values = {name: wrapper.parameterValue() for name, wrapper in self.others.items() if name not in _OUTPUTS}
        first = algorithm.parameterAsFile(values, "INPUT", context)
        files = ([first] if first else []) + chosen_files(algorithm, values, "MORE", context)
        if not files:
            raise QgsProcessingException(translate("hummock", "Choose a survey file first; then it can be shown here."))
        options = chosen_options(algorithm, values, context, files[0])
        options = replace(options, landmarks=project_landmarks(context), project=project_crs(context))
        return PreviewDialog(SurveyPreview(files, options), self.widget.window())

    def take(self, choices: Choices) -> None:
        """``choices`` into the widgets of the parameters."""
        if choices.roles is not None:
            self.setValue(choices.columns)
        context = QgsProcessingContext()
        for name, unit in (("UNIT", choices.unit), ("HEIGHT_UNIT", choices.height_unit)):
            if name in self.others:
                self.others[name].setParameterValue(None if unit is None else UNITS.index(unit), context)
        accepted = f" {OPERATIONS_APART} ".join(choices.accept)
        given = [parameter_of(answer) for answer in choices.answers]
        for name, value in (("CORRECT", choices.correct), ("ACCEPT", accepted), *given):
            if name in self.others:
                self.others[name].setParameterValue(value, context)


_OUTPUTS = ("OUTPUT", "REJECTS")
