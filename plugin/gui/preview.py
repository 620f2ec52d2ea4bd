"""The preview of a survey file: its first lines, a role for each column, and what would come in."""

from __future__ import annotations

from typing import Any, Dict, Optional, Tuple

import numpy as np
from qgis.PyQt.QtCore import QCoreApplication, Qt, QTimer
from qgis.PyQt.QtWidgets import (
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QHBoxLayout,
    QLabel,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from ..core.georeference.intake import Intake
from ..core.messages import worst_first
from ..core.points.questions import Answer
from ..core.units import LengthUnit
from ..processing.algorithm import tell
from ..processing.parameters import UNITS, unit_names
from .landing import LandingMap
from .notes import Notes
from .previewdata import Choices, Outcome, SurveyPreview
from .previewquestions import PreviewQuestions
from .roletable import RoleTable

translate = QCoreApplication.translate

WAIT_MS = 200  # after a change, so that several changes are computed once


class PreviewDialog(QDialog):
    """Shows a :class:`SurveyPreview` and collects what the user chooses; nothing is written."""

    def __init__(self, preview: SurveyPreview, parent: Optional[QWidget] = None) -> None:
        super().__init__(parent)
        self.preview = preview
        self.touched = False
        self.correct = preview.options.correct
        self.accepted = tuple(preview.options.accept)
        self.answers: Tuple[Answer, ...] = ()
        self.outcome: Optional[Outcome] = None
        self.setWindowTitle(translate("hummock", "Preview of the survey"))
        self.resize(1080, 680)
        self._build()
        self.timer = QTimer(self)
        self.timer.setSingleShot(True)
        self.timer.setInterval(WAIT_MS)
        self.timer.timeout.connect(self.refresh)
        self.refresh()

    # What the user chose

    def choices(self) -> Choices:
        """What the drop-downs and buttons say; roles None while they are those recognised without doubt."""
        unit, height_unit = self._unit(self.unit), self._unit(self.height_unit)
        if self.preview.log or (self.preview.settled and not self.touched):
            return Choices(None, unit, height_unit, self.correct, self.accepted, self.answers)
        found = self.preview.recognition
        if found is not None and found.guesses:  # columns by name are not asked for their unit once more
            unit = unit or found.guesses[0].unit
            height_unit = height_unit or found.guesses[0].height_unit
        return Choices(self.table.roles(), unit, height_unit, self.correct, self.accepted, self.answers)

    def _unit(self, combo: QComboBox) -> Optional[LengthUnit]:
        return None if combo.currentIndex() == 0 else UNITS[combo.currentIndex() - 1]

    # Widgets

    def _build(self) -> None:
        layout = QVBoxLayout(self)
        self.summary = QLabel()
        self.summary.setWordWrap(True)
        self.summary.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        layout.addWidget(self.summary)
        layout.addWidget(self._unit_row())
        self.table = RoleTable(self.preview)
        self.table.roles_changed.connect(self._role_changed)
        self.map = LandingMap()
        self.place = QLabel()
        self.place.setWordWrap(True)
        right = QWidget()
        column = QVBoxLayout(right)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.map, 1)
        column.addWidget(self.place)
        split = QSplitter(Qt.Orientation.Horizontal)
        split.addWidget(self.table)
        split.addWidget(right)
        split.setSizes([640, 420])
        split.setChildrenCollapsible(False)
        layout.addWidget(split, 1)
        self.notes = Notes()
        layout.addWidget(self.notes)
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel, parent=self
        )
        self.buttons.button(QDialogButtonBox.StandardButton.Ok).setText(translate("hummock", "Use as shown"))
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        layout.addWidget(self.buttons)

    def _unit_row(self) -> QWidget:
        """Units of plan and height; a receiver log has its own."""
        line = QWidget()
        row = QHBoxLayout(line)
        row.setContentsMargins(0, 0, 0, 0)
        line.setVisible(not self.preview.log)
        self.unit, self.height_unit = QComboBox(), QComboBox()
        options = self.preview.options
        for label, combo, given in (
            (translate("hummock", "&Unit of easting and northing:"), self.unit, options.unit),
            (translate("hummock", "Unit of &heights:"), self.height_unit, options.height_unit),
        ):
            combo.addItems([translate("hummock", "as found"), *unit_names()])
            combo.setCurrentIndex(0 if given is None else UNITS.index(given) + 1)
            combo.currentIndexChanged.connect(self._changed)
            text = QLabel(label)
            text.setBuddy(combo)
            row.addWidget(text)
            row.addWidget(combo)
        row.addStretch(1)
        return line

    def _role_changed(self) -> None:
        self.touched = True
        self._changed()

    def _changed(self, *_: Any) -> None:
        self.timer.start()

    # What would come of it

    def refresh(self) -> None:
        """Read the file as the drop-downs say, and show what would come in."""
        self.timer.stop()
        self.outcome = self.preview.outcome(self.choices())
        came = self.outcome.intake
        self.notes.clear()
        self.table.mark_rejects(_reasons(came))
        self._show_summary(came)
        questions = PreviewQuestions(self)
        questions.show(self.outcome)
        if came is None:
            self.map.show_points(None)
            self.place.setText("")
        else:
            self._show_landing(came)
            for said in came.aside:
                self.notes.note(self.preview.plain(tell(said)), bad=True)
            for said in (*worst_first((*came.survey.messages, *came.messages)), *came.statements):
                if said not in questions.told:
                    self.notes.note(self.preview.plain(tell(said)), bad=said.text.weight >= 2)
        self.notes.end()
        tip = translate("hummock", "First say what is open: press one of the answers above, or choose the roles.")
        ok = self.buttons.button(QDialogButtonBox.StandardButton.Ok)
        ok.setToolTip(tip if questions.open else "")
        ok.setEnabled(came is not None and not questions.open)

    def _show_summary(self, came: Optional[Intake]) -> None:
        names = ", ".join(self.preview.paths)
        if came is None:
            self.summary.setText(translate("hummock", "{files}: cannot be read so.").format(files=names))
            return
        account = came.survey.account
        text = translate(
            "hummock", "{files}: {lines} lines, {points} points, <b>{rejects} rejected</b>, {others} others."
        ).format(
            files=names,
            lines=account.lines,
            points=account.points,
            rejects=account.rejects,
            others=account.lines - account.points - account.rejects,
        )
        if self.preview.cut:
            text += " " + translate("hummock", "Only the first part of a long file is shown and counted here.")
        self.summary.setText(text)

    def _show_landing(self, came: Intake) -> None:
        on_site = ~came.survey.points.off_site
        outside = np.concatenate([area.outside for area in came.areas])
        self.map.show_points(came.survey.points.select(on_site), outside[on_site])
        self.place.setText(tell(came.where.values["place"]))

    # Questions and answers, as :class:`.previewquestions.PreviewQuestions` offers them

    def answer_roles(self, roles: Dict[str, int]) -> None:
        self.table.set_roles(roles)
        self.touched = True
        self.refresh()

    def answer(self, answer: Answer) -> None:
        """An answer that no other widget here gives; given once more it is taken back."""
        others = tuple(one for one in self.answers if one.option != answer.option)
        self.answers = others if answer in self.answers else (*others, answer)
        self.refresh()

    def accept_operation(self, name: str) -> None:
        self.accepted = (*self.accepted, name)
        self.refresh()

    def read_so(self, name: str) -> None:
        """A second click takes the correction back."""
        self.correct = "" if self.correct == name else name
        self.refresh()

    def done(self, result: int) -> None:
        """Closed either way: the copies of long files go."""
        self.timer.stop()
        self.map.stopRendering()
        self.preview.close()
        super().done(result)


def _reasons(came: Optional[Intake]) -> Dict[int, str]:
    """Why lines of the first file are rejected."""
    if came is None:
        return {}
    rejects = came.files[0].rejects
    return {int(line): tell(reason) for line, reason in zip(rejects.line, rejects.reason)}
