"""The desk: a dock that leads through a job, shows how each step stands, and runs it again after an edit."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict, List, Optional

from qgis.core import (
    QgsApplication,
    QgsCoordinateReferenceSystem,
    QgsMapLayer,
    QgsProcessingFeedback,
    QgsProject,
    QgsVectorLayer,
)
from qgis.gui import QgsDockWidget
from qgis.PyQt.QtCore import QCoreApplication, QUrl
from qgis.PyQt.QtGui import QDesktopServices
from qgis.PyQt.QtWidgets import (
    QApplication,
    QComboBox,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QProgressBar,
    QPushButton,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from .deskform import DeskForm
from .jobbook import JobBook, Step
from .running import StepFailed, run_step
from .steprow import StepRow
from .steps import INPUTS, STEPS, addable, added_step, added_steps, new_book

translate = QCoreApplication.translate

SCOPE, ENTRY = "Hummock", "job"


class DeskFeedback(QgsProcessingFeedback):
    """Shows progress on the desk and keeps its window alive meanwhile."""

    def __init__(self, bar: QProgressBar) -> None:
        super().__init__(False)
        self.bar = bar
        self.warnings: List[str] = []
        self.progressChanged.connect(self._show)

    def _show(self, progress: float) -> None:
        self.bar.setValue(int(progress))
        QApplication.processEvents()

    def pushWarning(self, warning: str) -> None:
        self.warnings.append(warning)
        super().pushWarning(warning)


class DeskDock(QgsDockWidget):
    """The panel “Survey desk”."""

    def __init__(self, iface: Any) -> None:
        super().__init__(translate("hummock", "Survey desk"), iface.mainWindow())
        self.setObjectName("HummockDesk")
        self.iface = iface
        self.book = new_book()
        self.feedback: Optional[DeskFeedback] = None
        self.rows: Dict[str, StepRow] = {}
        self._build()
        self._listen()
        self.read_project()

    # Widgets

    def _build(self) -> None:
        inside = QWidget()
        column = QVBoxLayout(inside)
        self.form = DeskForm()
        self.form.changed.connect(self._changed)
        column.addWidget(self.form)
        self.run_all = QPushButton(translate("hummock", "Run everything"))
        self.run_all.setObjectName("run_all")
        self.run_all.clicked.connect(self.run_everything)
        column.addWidget(self.run_all)
        self.grid = QGridLayout()
        self.grid.setColumnStretch(1, 1)
        column.addLayout(self.grid)
        column.addLayout(self._make_more())
        line = QHBoxLayout()
        self.bar = QProgressBar()
        self.cancel = QPushButton(translate("hummock", "Cancel"))
        self.cancel.clicked.connect(self.stop)
        line.addWidget(self.bar, 1)
        line.addWidget(self.cancel)
        column.addLayout(line)
        self.said = QLabel()
        self.said.setWordWrap(True)
        column.addWidget(self.said)
        column.addStretch(1)
        scroll = QScrollArea()
        scroll.setWidgetResizable(True)
        scroll.setWidget(inside)
        self.setWidget(scroll)
        self._busy(False)

    def _make_more(self) -> QHBoxLayout:
        """Any other algorithm on the surface can become a step of the job."""
        line = QHBoxLayout()
        self.more = QComboBox()
        self.more.setObjectName("more")
        self.more.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        for algorithm in addable():
            self.more.addItem(algorithm.icon(), f"{algorithm.group()}: {algorithm.displayName()}", algorithm.name())
        self.add = QPushButton(translate("hummock", "Add…"))
        self.add.setObjectName("add")
        self.add.setToolTip(translate("hummock", "Opens its dialog; what you run there becomes a step of the job."))
        self.add.clicked.connect(self.add_step)
        line.addWidget(self.more, 1)
        line.addWidget(self.add)
        return line

    # The project

    def _listen(self) -> None:
        project = QgsProject.instance()
        project.readProject.connect(self.read_project)
        project.cleared.connect(self.forget)
        project.layersAdded.connect(self._watch)
        self._watch(list(project.mapLayers().values()))

    def stop_listening(self) -> None:
        """Before the panel goes."""
        project = QgsProject.instance()
        project.readProject.disconnect(self.read_project)
        project.cleared.disconnect(self.forget)
        project.layersAdded.disconnect(self._watch)

    def _watch(self, layers: List[QgsMapLayer]) -> None:
        """An edit of a layer makes what is made from it out of date."""
        for layer in layers:
            if isinstance(layer, QgsVectorLayer):
                layer.afterCommitChanges.connect(self._edited)

    def _edited(self) -> None:
        layer = self.sender()
        if layer is not None and self.book.record_edit(layer.source()) is not None:
            self._keep()
            self.show_states()

    def read_project(self, *_: Any) -> None:
        """Take up the job that the project remembers."""
        project = QgsProject.instance()
        text, _ = project.readEntry(SCOPE, ENTRY, "")
        self.book = JobBook.from_text(STEPS, text, project.readPath, added_steps) if text else new_book()
        self._fill()

    def forget(self) -> None:
        """A new project has no job yet."""
        self.book = new_book()
        self._fill()

    def _keep(self) -> None:
        project = QgsProject.instance()
        project.writeEntry(SCOPE, ENTRY, self.book.to_text(project.writePath))

    def _fill(self) -> None:
        """The settings of the job into the form."""
        self.book.settings = {**new_book().settings, **self.book.settings}
        self.form.fill(self.book.settings)
        self.show_states()

    # What the user does

    def _changed(self) -> None:
        self.book.settings.update(self.form.settings())
        self._keep()
        self.show_states()

    def lacking(self) -> str:
        """What must be said before anything can be run; "" if nothing."""
        told = self.book.settings
        if not told["files"]:
            return translate("hummock", "Choose the survey file.")
        absent = [path for path in told["files"] if not Path(path).is_file()]
        if absent:
            return translate("hummock", "{file}: there is no such file.").format(file=absent[0])
        if not QgsCoordinateReferenceSystem(told["crs"]).isValid():
            return translate("hummock", "Say the CRS of the survey, such as EPSG:25832.")
        return "" if told["folder"] else translate("hummock", "Choose a folder for the products.")

    def run_everything(self) -> None:
        """All steps that are not done, in order, up to the first that fails."""
        self._run(self.book.to_do())

    def run_one(self, key: str) -> None:
        self._run([key])

    def _run(self, keys: List[str]) -> None:
        self.feedback = DeskFeedback(self.bar)
        self._busy(True)
        try:
            for key in keys:
                self.said.setText(translate("hummock", "{step} …").format(step=self.rows[key].title))
                QApplication.processEvents()
                if self.feedback.isCanceled():
                    raise StepFailed(translate("hummock", "Cancelled."))
                run_step(self.book, key, self.feedback)
                self._keep()
                self.show_states()
            self.said.setText(self._closing_words())
        except StepFailed as error:
            self.said.setText(str(error))
        finally:
            self._busy(False)
            self.feedback = None
            self._keep()
            self.show_states()

    def _closing_words(self) -> str:
        count = len(self.feedback.warnings) if self.feedback else 0
        done = translate("hummock", "Done.")
        if not count:
            return done
        more = translate("hummock", "{count} remarks, the first: {first}")
        return f"{done} " + more.format(count=count, first=self.feedback.warnings[0])  # type: ignore[union-attr]

    def stop(self) -> None:
        if self.feedback is not None:
            self.feedback.cancel()

    def open_options(self, key: str) -> None:
        """The algorithm's own dialog, filled with what the desk would run; its choices are remembered."""
        self._open_dialog(self.book.steps[key], self.book.parameters(key))

    def add_step(self) -> None:
        """The dialog of the algorithm chosen; it becomes a step once it has been run."""
        name = self.more.currentData()
        if name:
            step = added_step(self._new_step(name))
            self._open_dialog(step, step.parameters(self.book))

    def _new_step(self, name: str) -> Dict[str, Any]:
        """What the job would remember of a step with this algorithm."""
        number = 1 + max([told["number"] for told in self.book.settings["added"]], default=0)
        algorithm = QgsApplication.processingRegistry().algorithmById(f"hummock:{name}")
        names = [one.name() for one in algorithm.parameterDefinitions()]
        outputs = {
            one.name(): f"{name}_{number}_{one.name().lower()}.{one.defaultFileExtension()}"
            for one in algorithm.destinationParameterDefinitions()
            if one.createByDefault()
        }
        inputs = [one for one in INPUTS if one in names and one not in outputs]
        return {"key": f"{name} {number}", "number": number, "algorithm": name, "inputs": inputs, "outputs": outputs}

    def _open_dialog(self, step: Step, parameters: Dict[str, Any]) -> None:
        import processing

        dialog = processing.createAlgorithmDialog(f"hummock:{step.algorithm}", parameters)
        if dialog is not None:
            dialog.algorithmFinished.connect(lambda good, results: self._from_dialog(step, dialog, good, results))
            dialog.show()

    def take_away(self, key: str) -> None:
        """A step that was added leaves the job; what it made stays."""
        self.book.remove(key)
        self.book.settings["added"] = [told for told in self.book.settings["added"] if told["key"] != key]
        self._keep()
        self.show_states()

    def _from_dialog(self, step: Step, dialog: Any, good: bool, results: Dict[str, Any]) -> None:
        """What was run in the dialog counts as the step's run; one that is new joins the job."""
        if not good or not results:
            return
        if step.key not in self.book.steps:
            self.book.add(step)
            self.book.settings["added"].append(self._new_step(step.algorithm))
        read = getattr(dialog, "createProcessingParameters", None) or dialog.getParameterValues
        plain = step.parameters(self.book)
        options = {
            name: value
            for name, value in dict(read()).items()
            if value != plain.get(name) and isinstance(value, (str, int, float, bool, list))
        }
        self.book.record(step.key, options, results)
        self._keep()
        self.show_states()

    def open_product(self, key: str) -> None:
        results = self.book.entries[key].results
        path = results.get("PDF") or results.get("HTML") or self.book.product(key)
        QDesktopServices.openUrl(QUrl.fromLocalFile(str(path)))

    # What is shown

    def show_states(self) -> None:
        lacking = self.lacking()
        self._match_rows()
        for row in self.rows.values():
            row.show(lacking)
        to_do = self.book.to_do()
        again = any(self.book.entries[key].run for key in self.book.steps)
        text = translate("hummock", "Run what is out of date") if again else translate("hummock", "Run everything")
        self.run_all.setText(text)
        self.run_all.setEnabled(not lacking and bool(to_do) and self.feedback is None)
        self.run_all.setToolTip(lacking)

    def _match_rows(self) -> None:
        """A row for each step of the job."""
        for key in [key for key in self.rows if key not in self.book.steps]:
            self.rows.pop(key).take_away()
        for key in self.book.steps:
            if key not in self.rows:
                self.rows[key] = StepRow(self, key, self.grid, self.grid.rowCount())

    def _busy(self, busy: bool) -> None:
        self.bar.setVisible(busy)
        self.cancel.setVisible(busy)
        self.bar.setValue(0)
        for widget in (self.run_all, self.add, *(row.run for row in self.rows.values())):
            widget.setEnabled(not busy)
