"""What only the user can say of a survey, shown in the preview.

Each question stands there once, its answers as buttons, each with the place where it would put the site.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any, Dict, List, Optional, Tuple

from qgis.PyQt.QtCore import QCoreApplication
from qgis.PyQt.QtWidgets import QInputDialog

from ..core.georeference.area import AreaCheck, suggestion_names
from ..core.georeference.area_causes import Cause, Suggestion
from ..core.georeference.causes_said import DEGREES, SWAPPED
from ..core.georeference.correction import AS_READ, ask_where, suggested_place
from ..core.georeference.crs_said import ask_which_crs
from ..core.georeference.intake import Intake
from ..core.georeference.intake_area import READ_SWAPPED
from ..core.georeference.operations import BALLPARK, BALLPARK_LACKING, MISSING_GRID
from ..core.georeference.west_doubt import ask_of_west
from ..core.messages import Message, SurveyError, message
from ..core.points.columns import coordinates_of
from ..core.points.questions import Answer, Question, QuestionError, Topic
from ..processing.algorithm import tell
from ..processing.parameters import UNITS, unit_names
from .answered import has_parameter
from .previewdata import Outcome
from .roletable import role_label

if TYPE_CHECKING:
    from .preview import PreviewDialog

translate = QCoreApplication.translate

MOST_SUGGESTIONS = 4


class PreviewQuestions:
    """Writes questions and answers into the notes of a dialog.

    ``open``: whether one stops the import; ``told``: what it has said of the area of use.
    """

    def __init__(self, dialog: PreviewDialog) -> None:
        self.dialog, self.preview, self.notes = dialog, dialog.preview, dialog.notes
        self.open = False
        self.told: Tuple[Message, ...] = ()

    def show(self, outcome: Outcome) -> None:
        """All that is open with this outcome, and what was answered."""
        shown = self._recognition(outcome.error)
        for answer in self.dialog.answers:
            self.notes.button(self._given(answer), True, lambda _=False, answer=answer: self.dialog.answer(answer))
        if isinstance(outcome.error, QuestionError):
            for one in outcome.error.questions:
                if one.text not in shown:
                    self._question(one, unanswered=True)
        elif outcome.error is not None:
            self.notes.note(self.preview.plain(tell(outcome.error.message)), bad=True)
            self._acceptance(outcome.error)
        if outcome.intake is not None:
            self._systems(outcome.intake)
            self._areas(outcome.intake)

    # What the file leaves open

    def _recognition(self, stopped: Optional[SurveyError]) -> List[Message]:
        """Questions of the recognition, answered or not; their texts."""
        found, error = self.preview.recognition, self.preview.recognition_error
        answered = isinstance(error, QuestionError) and bool(self.dialog.answers)
        if error is not None and not answered and (stopped is None or str(stopped) != str(error)):
            self.notes.note(self.preview.plain(tell(error.message)), bad=True)
        if found is None:
            return []
        settled = self.preview.options.columns is not None
        shown = []
        for one in found.questions:
            if not one.stops:
                continue
            said = self.dialog.touched or (one.topic is Topic.UNIT and self.dialog.unit.currentIndex() > 0)
            said = said or settled or any(answer in self.dialog.answers for answer in one.answers)
            self._question(one, unanswered=not said)
            shown.append(one.text)
        return shown

    def _question(self, one: Question, unanswered: bool) -> None:
        self.open = self.open or unanswered
        self.notes.note(translate("hummock", "Open: {question}.").format(question=tell(one.text)), bad=unanswered)
        for answer in one.answers:
            if answer.option == "--columns" and not answer.fill_in and _roles_of(answer.value):
                self._columns(answer)
            elif answer.option == "--unit":
                self._unit(answer)
            else:
                self._any(answer)

    def _columns(self, answer: Answer) -> None:
        roles = _roles_of(answer.value)
        if not set(coordinates_of(roles)) <= set(roles):
            return
        told = ", ".join(f"{role_label(role)} {roles[role]}" for role in coordinates_of(roles))
        chosen = self.dialog.touched and self.dialog.table.roles() == roles
        self.notes.button(
            translate("hummock", "Columns: {roles}").format(roles=told),
            chosen,
            lambda: self.dialog.answer_roles(roles),
            self._beside(answer),
        )

    def _unit(self, answer: Answer) -> None:
        place = [unit.value for unit in UNITS].index(answer.value)
        combo = self.dialog.unit
        self.notes.button(
            translate("hummock", "Unit: {unit}").format(unit=unit_names()[place]),
            combo.currentIndex() == place + 1,
            lambda: combo.setCurrentIndex(place + 1),
            self._beside(answer),
        )

    def _any(self, answer: Answer) -> None:
        """An answer that a parameter of the algorithm gives; one that is an example asks for the value."""
        if not has_parameter(answer):
            self.notes.note(f"{tell(answer.label)}. {self._beside(answer)}".strip())
            return
        text = tell(answer.label) + ("…" if answer.fill_in else "")
        act = self._fill_in if answer.fill_in else self.dialog.answer
        self.notes.button(
            text[:1].upper() + text[1:],
            answer in self.dialog.answers,
            lambda _=False, answer=answer: act(answer),
            self._beside(answer),
        )

    def _fill_in(self, answer: Answer) -> None:
        title, label = translate("hummock", "Preview of the survey"), tell(answer.label)
        text, taken = QInputDialog.getText(self.dialog, title, label, text=answer.value)
        if taken and text.strip():
            self.dialog.answer(replace(answer, value=text.strip(), fill_in=False))

    def _given(self, answer: Answer) -> str:
        return translate("hummock", "Answered: {answer}").format(answer=f"{tell(answer.label)} ({answer.value})")

    def _beside(self, answer: Answer) -> str:
        """Where it would put the site, and the reasons for it."""
        place = self.preview.place(self.dialog.choices(), answer)
        said = [] if place is None else [tell(place)]
        return "; ".join([*said, *(tell(reason) for reason in answer.reasons[:2])])

    # Where the points land

    def _systems(self, came: Intake) -> None:
        """What a file says of its CRS against the one chosen."""
        options = self.preview.chosen(self.dialog.choices())
        for file in came.files:
            asked = ask_which_crs(file, options) if file.own_crs is None else None
            asked = asked or ask_of_west(file, options)
            for one in () if asked is None else asked.questions:
                self._question(one, unanswered=True)

    def _areas(self, came: Intake) -> None:
        """The warning of the area of use, with a button for each cause that can be mended."""
        marks = self.preview.options.landmarks
        for file, area, now in zip(came.files, came.areas_read, came.areas):
            if not self.dialog.correct:
                for said in area.messages:
                    self.notes.note(self.preview.plain(tell(said)), bad=True)
            self.told += (*area.messages, *now.messages)
            usable = [
                (name, one) for name, one in zip(suggestion_names(area), area.suggestions) if one.reading is not None
            ]
            for name, one in usable[:MOST_SUGGESTIONS]:
                text = translate("hummock", "Read them so: {cause}").format(cause=_joined(one.messages))
                place = suggested_place(file.points, area, one, marks)
                self._reading(text, name, "" if place is None else tell(place))
            for one in area.suggestions:
                self._as_degrees(one)
            self._leave(file.points, area)
        aside = not any(area.outside.any() for area in came.areas_read)
        if aside and not self.dialog.correct and any(said.text == READ_SWAPPED for said in came.messages):
            text = translate("hummock", "Read them so: {cause}").format(cause=tell(message(SWAPPED)))
            self._reading(text, Cause.SWAPPED.value, "")

    def _leave(self, points: Any, area: AreaCheck) -> None:
        """Where most points are far outside, that they stay there is an answer too, and one of them is needed."""
        question = ask_where(points, area, self.preview.options.landmarks) if area.outside.any() else None
        if question is None:
            return
        self.open = self.open or not self.dialog.correct
        stay = question.questions[0].answers[-1]
        text = translate("hummock", "Leave them there")
        self._reading(text, AS_READ, "" if stay.place is None else tell(stay.place))

    def _reading(self, text: str, name: str, beside: str) -> None:
        chosen = self.dialog.correct == name
        self.notes.button(text, chosen, lambda _=False, name=name: self.dialog.read_so(name), beside)

    def _as_degrees(self, suggestion: Suggestion) -> None:
        """A button that reads easting and northing as longitude and latitude, or the other way round."""
        roles = self.dialog.table.roles()
        if suggestion.causes != (Cause.DEGREES,) or "easting" not in roles:
            return
        names = ("longitude", "latitude") if suggestion.messages[0].text == DEGREES else ("latitude", "longitude")
        changed = dict(zip(names, (roles.pop("easting"), roles.pop("northing"))))
        told = ", ".join(f"{role_label(role)} {column}" for role, column in changed.items())
        self.notes.button(
            translate("hummock", "Columns: {roles}").format(roles=told),
            False,
            lambda: self.dialog.answer_roles({**changed, **roles}),
        )

    def _acceptance(self, error: SurveyError) -> None:
        """A button for the coordinate operation that is used only when its name is accepted."""
        name = str(error.values.get("name", ""))
        if error.code in (BALLPARK.code, BALLPARK_LACKING.code, MISSING_GRID.code) and name:
            self.notes.button(
                translate("hummock", "Accept “{name}”").format(name=name),
                False,
                lambda: self.dialog.accept_operation(name),
            )


def _joined(messages: Tuple[Message, ...]) -> str:
    return translate("hummock", ", and ").join(tell(one) for one in messages)


def _roles_of(mapping: str) -> Dict[str, int]:
    """The roles of an answer such as ``name=1,easting=2``."""
    pairs = (word.split("=") for word in mapping.split(",") if "=" in word)
    return {role: int(column) for role, column in pairs if column.isdecimal()}
