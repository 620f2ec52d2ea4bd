"""The desk: a dock that leads through a job, shows how each step stands, and does again what an edit made out of date.

What the job is stands in the file of its folder; the project only remembers the folder, the plan and added tools.
"""

from __future__ import annotations

from contextlib import suppress
from dataclasses import replace
from pathlib import Path
from typing import Any, Dict, List, Optional, Tuple

from qgis.core import (
    QgsApplication,
    QgsProject,
    QgsVectorLayer,
)
from qgis.PyQt.QtCore import QCoreApplication, QEvent, QUrl
from qgis.PyQt.QtGui import QDesktopServices
from qgis.PyQt.QtWidgets import QApplication, QFileDialog

from ..core.job.job_file import JobRecord, has_job, read_job, save_choices
from ..core.messages import Message, SurveyError
from ..processing.algorithm import tell
from ..processing.drawnfiles import write_anew
from ..processing.localnumbers import units_of
from ..processing.surveyreport import language_code, report_pages
from .addedtools import AddedTools
from .choicesdialog import ask, has_choices
from .demo import CRS as CRS_OF_DEMO
from .demo import copy_demo, demo_files
from .deskjob import DECISIONS_OF_DESK, form_of, settings_of
from .deskstates import stamp_of, states_of
from .deskwidgets import DeskWidgets
from .jobedits import take_up_all
from .jobmap import show_job, unsaved_layer
from .jobtask import JobTask
from .running import DeskFeedback, StepFailed, run_tool
from .steprow import StepRow
from .steps import PLAN, added_tools, new_book
from .toolbook import State

translate = QCoreApplication.translate

SCOPE, ENTRY = "Hummock", "job"


class DeskDock(AddedTools, DeskWidgets):
    """The panel “Survey desk”."""

    def __init__(self, iface: Any) -> None:
        super().__init__(translate("hummock", "Survey desk"), iface.mainWindow())
        self.setObjectName("HummockDesk")
        self.iface = iface
        self.book = new_book(stamp=self._stamp)
        self.record: Optional[JobRecord] = None
        self.task: Optional[JobTask] = None
        self.feedback: Optional[DeskFeedback] = None
        self.failure = self.hint = ""
        self.remarks: List[str] = []
        self.of_run: Tuple[Message, ...] = ()  # of the stages, before the report is written
        self.rows: Dict[str, StepRow] = {}
        self._build()
        project = QgsProject.instance()
        project.readProject.connect(self.read_project)
        project.cleared.connect(self.forget)
        self.read_project()

    def stop_listening(self) -> None:
        """Before the panel goes."""
        self.stop()
        project = QgsProject.instance()
        project.readProject.disconnect(self.read_project)
        project.cleared.disconnect(self.forget)

    # The project

    @property
    def busy(self) -> bool:
        """Whether something is at work."""
        return self.task is not None or self.feedback is not None

    @property
    def folder(self) -> Path:
        return Path(self.book.settings["folder"] or ".")

    def read_project(self, *_: Any) -> None:
        """Take up the job that the project remembers."""
        project = QgsProject.instance()
        text, _ = project.readEntry(SCOPE, ENTRY, "")
        self.book = new_book(stamp=self._stamp)
        self.book.take_text(text, project.readPath, added_tools)
        self._take_up_folder()

    def forget(self) -> None:
        """A new project has no job yet; work for the former one stops."""
        self.stop()
        self.task = None
        self.book, self.record, self.failure = new_book(stamp=self._stamp), None, ""
        self.said.clear()
        project = QgsProject.instance()
        dirty = project.isDirty()
        project.removeEntry(SCOPE, ENTRY)  # written while its layers went
        project.setDirty(dirty)
        self._take_up_folder()

    def _keep(self) -> None:
        project = QgsProject.instance()
        project.writeEntry(SCOPE, ENTRY, self.book.to_text(project.writePath))

    def _take_up_folder(self) -> None:
        """The job that is in the folder, into the form."""
        self.record = None
        if self.book.settings["folder"] and has_job(self.folder):
            try:
                take_up_all(self.folder)
                self.record = read_job(self.folder)
            except SurveyError as error:
                self.said.setText(tell(error.message))
        self._fill_form()
        self.show_states()

    def _fill_form(self) -> None:
        self.form.fill({**form_of(self.record), **{name: self.book.settings[name] for name in DECISIONS_OF_DESK}})

    def job_changed(self, folder: Path) -> None:
        """A decision was written into the file of a job."""
        if self.record is not None and folder == self.folder:
            self.record = read_job(folder)
            self.show_states()

    def event(self, event: QEvent) -> bool:
        """What was done to the job beside QGIS is shown when the user comes back to its window."""
        if event.type() == QEvent.Type.WindowActivate:
            self.look_again()
        return bool(super().event(event))

    def look_again(self) -> None:
        """The job as it is in its folder now, perhaps changed beside QGIS."""
        if self.busy or self.record is None:
            return
        before = self.record.settings
        if has_job(self.folder):
            try:
                self.record = read_job(self.folder)
            except SurveyError as error:
                self.said.setText(tell(error.message))
        if self.record.settings != before:
            self._fill_form()
        self.show_states()

    def layer_edited(self, layer: QgsVectorLayer) -> None:
        """Lines on the map were edited that may be those of the job."""
        if self.record is not None and write_anew(self.record.settings, layer):
            self.show_states()

    # What the user does

    def _changed(self) -> None:
        told = self.form.settings()
        other = told["folder"] != self.book.settings["folder"]
        self.book.settings.update({name: told[name] for name in DECISIONS_OF_DESK})
        self.failure = ""
        if other and told["folder"] and has_job(self.folder):
            self._take_up_folder()
        elif not self.lacking():
            self._save()
        self._keep()
        self.show_states()

    def take_demo(self) -> None:
        """The demo survey into a folder that the user chooses, and a job on it."""
        chosen = QFileDialog.getExistingDirectory(self, translate("hummock", "Folder for the demo survey"))
        if not chosen:
            return
        try:
            survey, checks = copy_demo(Path(chosen))
        except SurveyError as error:
            self.said.setText(tell(error.message))
            return
        self.form.begin(survey, CRS_OF_DEMO, checks)

    def _save(self) -> None:
        """The form into the file of the job."""
        try:
            settings = settings_of(self.form.settings(), self.record, self.folder)
            if self.record is None or settings != self.record.settings:
                self.record = save_choices(settings, language_code())
        except SurveyError as error:
            self.said.setText(tell(error.message))

    def lacking(self) -> str:
        """What must be said before anything can be run; "" if nothing."""
        return self.form.lacking()

    def run_everything(self) -> None:
        """What is out of date, up to the first step that fails."""
        layer = unsaved_layer(self.folder)
        if layer:
            text = translate("hummock", "The layer {layer} has edits that are not saved: save or drop them first.")
            self.said.setText(text.format(layer=layer))
            return
        self.look_again()
        self._save()
        if self.record is None:
            return
        try:
            take_up_all(self.folder)
            write_anew(self.record.settings)
        except SurveyError as error:
            self._failed(tell(error.message))
            return
        self.record = read_job(self.folder)
        self.failure, self.remarks = "", []
        self._start(self._job_done)

    def _start(self, done: Any, layers: bool = True) -> None:
        self.task = JobTask(self.folder, language_code(), done, layers)
        self.task.progressChanged.connect(lambda progress: self.bar.setValue(int(progress)))
        self.task.told.connect(self.said.setText)
        self._show_busy()
        self.show_states()
        QgsApplication.taskManager().addTask(self.task)

    def _job_done(self, task: JobTask) -> None:
        """The core's stages are done: their layers, then the plan and the tools, then the report with the plan."""
        if task is not self.task:
            return  # of a project that is closed
        if not self._taken(task) or task.result is None:
            return
        show_job(QgsProject.instance(), self.folder, task.result, task.layers)
        self.of_run = task.result.of_run
        if not self._run_tools():
            return
        plan = Path(self.book.product(PLAN))
        if plan.is_file() and self.record is not None:
            self.record = save_choices(replace(self.record.settings, others=(plan,)))
        self._start(self._report_done, layers=False)

    def _report_done(self, task: JobTask) -> None:
        if task is not self.task or not self._taken(task) or task.result is None:
            return
        with units_of(task.result.crs):
            self.remarks = [tell(said) for said in (*self.of_run, *task.result.remarks)]
        try:
            report_pages(self.folder, self._new_feedback())
            self.said.setText(self._closing_words())
        except Exception as error:
            self.said.setText(str(error))
        self._rest()

    def _taken(self, task: JobTask) -> bool:
        """The job as it stands after a task; whether this went well."""
        self.task = None
        with suppress(SurveyError):
            self.record = read_job(self.folder)
        if task.failure:
            self._failed(task.failure)
        return not task.failure

    def _run_tools(self) -> bool:
        """The plan and the added tools that are out of date; whether all went well."""
        self._from_job()
        feedback = self._new_feedback()
        for key in self.book.to_do():
            self.said.setText(translate("hummock", "{step} …").format(step=self.rows[key].title))
            QApplication.processEvents()
            try:
                if feedback.isCanceled():
                    raise StepFailed(translate("hummock", "Cancelled."))
                run_tool(self.book, key, feedback)
            except StepFailed as error:
                self._failed(str(error), of_job=False)
                return False
            self._keep()
        self.feedback = None
        return True

    def _new_feedback(self) -> DeskFeedback:
        self.feedback = DeskFeedback(self.bar)
        self._show_busy()
        return self.feedback

    def _failed(self, text: str, of_job: bool = True) -> None:
        self.failure = text if of_job else ""
        self.said.setText(text)
        self._rest()

    def _rest(self) -> None:
        self.feedback = None
        self._keep()
        self._show_busy()
        self.show_states()

    def _closing_words(self) -> str:
        done, count = translate("hummock", "Done."), len(self.remarks)
        if not count:
            return done
        more = translate("hummock", "{count} remarks, the worst first; all are in the report: {first}")
        return f"{done} " + more.format(count=count, first=" ".join(self.remarks[:3]))

    def stop(self) -> None:
        """Cancel what is at work."""
        if self.task is not None:
            self.task.cancel()
        if self.feedback is not None:
            self.feedback.cancel()

    def has_options(self, key: str) -> bool:
        """Whether a step has choices to be made in a dialog."""
        return key in self.book.tools or has_choices(key)

    def open_options(self, key: str) -> None:
        """The choices of a step of the job; of a tool the algorithm's own dialog."""
        if key in self.book.tools:
            self._open_dialog(self.book.tools[key], self.book.parameters(key))
            return
        self._save()
        if self.record is None:
            return
        taken, settings = ask(key, self.rows[key].title, self.record.settings, self)
        if taken:
            self.choose(settings)

    def choose(self, settings: Any) -> None:
        """Write other choices into the file of the job."""
        self.failure = ""
        self.record = save_choices(settings)
        self._fill_form()
        self.show_states()

    def open_product(self, key: str) -> None:
        path = self.folder / "report.pdf" if key == "report" else Path(self.book.product(key))
        path = path if path.is_file() else self.folder / "report.html"
        QDesktopServices.openUrl(QUrl.fromLocalFile(str(path)))

    # What is shown

    def states(self) -> Dict[str, State]:
        """How each step stands, in the order of the desk."""
        self._from_job()
        return states_of(self.record, self.folder, self.book, self.failure)

    def show_states(self) -> None:
        lacking, states = self.lacking(), self.states()
        kept = [key for key in states if key in self.rows]
        in_order = kept == list(states)[: len(kept)]
        for key in [key for key in self.rows if not in_order or key not in states]:
            self.rows.pop(key).take_away()
        for key, state in states.items():
            if key not in self.rows:
                self.rows[key] = StepRow(self, key, self.grid, self.grid.rowCount())
            failure = self.failure if state is State.FAILED else ""
            if key in self.book.tools:
                failure = self.book.entries[key].failure
            self.rows[key].show(state, failure, not lacking)
        again = any(state is not State.EMPTY for state in states.values())
        self.demo.setVisible(not self.form.settings()["files"] and demo_files() is not None)
        self._show_what_to_do(lacking)
        text = translate("hummock", "Run what is out of date") if again else translate("hummock", "Run everything")
        self.run_all.setText(text)
        open_ones = any(state is not State.DONE for state in states.values())
        self.run_all.setEnabled(not lacking and open_ones and not self.busy)
        self.run_all.setToolTip(lacking)

    def _show_what_to_do(self, lacking: str) -> None:
        """In a first view what is to be done next, where nothing else is said."""
        if self.said.text() in ("", self.hint):
            self.hint = lacking if self.record is None else ""
            self.said.setText(self.hint)

    def _show_busy(self) -> None:
        busy = self.busy
        self.bar.setVisible(busy)
        self.cancel.setVisible(busy)
        self.form.setEnabled(not busy)
        self.add.setEnabled(not busy)
        if not busy:
            self.bar.setValue(0)

    def _from_job(self) -> None:
        """What the plan takes from the choices of the job."""
        told = form_of(self.record)
        self.book.settings.update({name: told[name] for name in ("interval", "unit", "checks_file")})

    def _stamp(self, path: str) -> str:
        return stamp_of(self.record, self.folder, path)
