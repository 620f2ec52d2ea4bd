"""The preview of a survey file: its first lines, a role for each column, and what would come in."""

from __future__ import annotations

from typing import Any, Dict, List, Optional, Tuple

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

from ..core.georeference.area import suggestion_names
from ..core.georeference.area_causes import DEGREES, Cause, Suggestion
from ..core.georeference.axes import to_lonlat
from ..core.georeference.intake import Intake
from ..core.georeference.operations import BALLPARK, BALLPARK_LACKING, MISSING_GRID
from ..core.messages import Message, SurveyError
from ..core.points.columns import coordinates_of
from ..core.points.recognition import Alternative, Ambiguity, Question
from ..core.units import LengthUnit
from ..processing.algorithm import tell
from ..processing.localnumbers import local_number
from ..processing.parameters import UNITS, unit_names
from .landing import LandingMap
from .notes import Notes
from .previewdata import Choices, Outcome, SurveyPreview
from .roletable import RoleTable, role_label

translate = QCoreApplication.translate

WAIT_MS = 200  # after a change, so that several changes are computed once
MOST_SUGGESTIONS = 4


class PreviewDialog(QDialog):
    """Shows a :class:`SurveyPreview` and collects what the user chooses; nothing is written."""

    def __init__(self, preview: SurveyPreview, parent: Optional[QWidget] = None) -> None:
        super().__init__(parent)
        self.preview = preview
        self.touched = False
        self.correct = preview.options.correct
        self.accepted = tuple(preview.options.accept)
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
            return Choices(None, unit, height_unit, self.correct, self.accepted)
        found = self.preview.recognition
        if found is not None and found.guesses:  # columns by name are not asked for their unit once more
            unit = unit or found.guesses[0].unit
            height_unit = height_unit or found.guesses[0].height_unit
        return Choices(self.table.roles(), unit, height_unit, self.correct, self.accepted)

    def open_questions(self) -> List[Ambiguity]:
        """What only the user can say and has not said yet."""
        found = self.preview.recognition
        if found is None or self.preview.options.columns is not None:
            return []
        said = {Question.UNIT: self.unit.currentIndex() > 0}
        return [one for one in found.ambiguous if one.stops and not said.get(one.question, self.touched)]

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
        self._show_questions()
        if self.outcome.error is not None:
            self.notes.note(self.preview.plain(tell(self.outcome.error.message)), bad=True)
            self._show_acceptance(self.outcome.error)
        if came is None:
            self.map.show_points(None)
            self.place.setText("")
        else:
            self._show_landing(came)
            for said in came.aside:
                self.notes.note(self.preview.plain(tell(said)), bad=True)
            self._show_suggestions(came)
            for said in (*came.survey.messages, *came.statements):
                self.notes.note(self.preview.plain(tell(said)))
        self.notes.end()
        self._answers_wanted()
        self.buttons.button(QDialogButtonBox.StandardButton.Ok).setEnabled(
            came is not None and not self.open_questions()
        )

    def _answers_wanted(self) -> None:
        """Why the columns cannot be taken yet, at the button that is off."""
        tip = translate("hummock", "First say what is open: press one of the answers above, or choose the roles.")
        self.buttons.button(QDialogButtonBox.StandardButton.Ok).setToolTip(tip if self.open_questions() else "")

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
        self.place.setText(self._where(came))

    def _where(self, came: Intake) -> str:
        points = came.survey.points
        if points.crs is None:
            return translate("hummock", "A local grid: where it lies is not known.")
        some = np.isfinite(points.easting) & np.isfinite(points.northing)
        if not some.any():
            return ""
        middle = (float(np.median(points.easting[some])), float(np.median(points.northing[some])))
        lon, lat = (float(values) for values in to_lonlat(points.crs, *middle))
        if not (np.isfinite(lon) and np.isfinite(lat)):
            return translate("hummock", "In {crs} the points are nowhere on the Earth.").format(crs=points.crs.name)
        return translate("hummock", "Middle: {lat}° {north}, {lon}° {east} in {crs}").format(
            lat=local_number(abs(lat), ".4f"),
            north=translate("hummock", "N") if lat >= 0 else translate("hummock", "S"),
            lon=local_number(abs(lon), ".4f"),
            east=translate("hummock", "E") if lon >= 0 else translate("hummock", "W"),
            crs=points.crs.name,
        )

    # Questions and answers

    def _show_questions(self) -> None:
        """What recognition leaves open, the likeliest answer first; each answer a button."""
        found = self.preview.recognition
        error = self.preview.recognition_error
        stopped = self.outcome.error if self.outcome is not None else None
        if error is not None and (stopped is None or str(stopped) != str(error)):
            self.notes.note(self.preview.plain(tell(error.message)), bad=True)
        if found is None:
            return
        for one in found.ambiguous:
            if not one.stops:
                continue
            text = tell(one.text)
            unanswered = one in self.open_questions()
            self.notes.note(translate("hummock", "Open: {question}.").format(question=text), bad=unanswered)
            for answer in one.alternatives:
                if one.question is Question.UNIT:
                    self._unit_answer(answer)
                else:
                    self._columns_answer(answer)

    def _columns_answer(self, answer: Alternative) -> None:
        roles = _roles_of(answer.option)
        if not set(coordinates_of(roles)) <= set(roles):
            return
        told = ", ".join(f"{role_label(role)} {roles[role]}" for role in coordinates_of(roles))
        self.notes.button(
            translate("hummock", "Columns: {roles}").format(roles=told),
            self.touched and self.table.roles() == roles,
            lambda: self._answer(roles),
            "; ".join(tell(reason) for reason in answer.reasons[:2]),
        )

    def _answer(self, roles: Dict[str, int]) -> None:
        self.table.set_roles(roles)
        self.touched = True
        self.refresh()

    def _unit_answer(self, answer: Alternative) -> None:
        place = [unit.value for unit in UNITS].index(answer.option.split()[-1])
        self.notes.button(
            translate("hummock", "Unit: {unit}").format(unit=unit_names()[place]),
            self.unit.currentIndex() == place + 1,
            lambda: self.unit.setCurrentIndex(place + 1),
        )

    def _show_suggestions(self, came: Intake) -> None:
        """The warning of the area of use, with a button for each cause that can be mended."""
        for area in came.areas:
            for said in area.messages:
                self.notes.note(self.preview.plain(tell(said)), bad=True)
            usable = [
                (name, one) for name, one in zip(suggestion_names(area), area.suggestions) if one.reading is not None
            ]
            for name, one in usable[:MOST_SUGGESTIONS]:
                text = translate("hummock", "Read them so: {cause}").format(cause=_joined(one.messages))
                self.notes.button(text, self.correct == name, lambda _=False, name=name: self._correct(name))
            for one in area.suggestions:
                self._as_degrees(one)

    def _as_degrees(self, suggestion: Suggestion) -> None:
        """A button that reads easting and northing as longitude and latitude, or the other way round."""
        roles = self.table.roles()
        if suggestion.causes != (Cause.DEGREES,) or "easting" not in roles:
            return
        names = ("longitude", "latitude") if suggestion.messages[0].text == DEGREES else ("latitude", "longitude")
        changed = dict(zip(names, (roles.pop("easting"), roles.pop("northing"))))
        self.notes.button(
            translate("hummock", "Columns: {roles}").format(
                roles=", ".join(f"{role_label(role)} {column}" for role, column in changed.items())
            ),
            False,
            lambda: self._answer({**changed, **roles}),
        )

    def _show_acceptance(self, error: SurveyError) -> None:
        """A button for the coordinate operation that is used only when its name is accepted."""
        name = str(error.values.get("name", ""))
        if error.code in (BALLPARK.code, BALLPARK_LACKING.code, MISSING_GRID.code) and name:
            self.notes.button(
                translate("hummock", "Accept “{name}”").format(name=name), False, lambda: self._accept_operation(name)
            )

    def _accept_operation(self, name: str) -> None:
        self.accepted = (*self.accepted, name)
        self.refresh()

    def _correct(self, name: str) -> None:
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


def _joined(messages: Tuple[Message, ...]) -> str:
    return translate("hummock", ", and ").join(tell(one) for one in messages)


def _roles_of(option: str) -> Dict[str, int]:
    """The roles of an answer such as ``--columns name=1,easting=2``."""
    pairs = (word.split("=") for word in option.replace("--columns", "").strip().split(",") if "=" in word)
    return {role: int(column) for role, column in pairs if column.isdecimal()}
