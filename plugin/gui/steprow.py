"""A row of the desk: how a step stands, its name, and what can be done with it."""

from __future__ import annotations

from typing import Any, Callable

from qgis.PyQt.QtCore import QCoreApplication
from qgis.PyQt.QtWidgets import QGridLayout, QLabel, QToolButton

from ..core.messages import QT_TRANSLATE_NOOP
from .jobbook import State
from .steps import algorithm_name, step_name

translate = QCoreApplication.translate


class StepRow:
    """How a step stands, its name, and what can be done with it."""

    def __init__(self, desk: Any, key: str, grid: QGridLayout, row: int) -> None:
        self.desk = desk
        self.key = key
        self.mark = QLabel()
        self.title = step_name(key) or algorithm_name(desk.book.steps[key].algorithm)
        self.name = QLabel(self.title)
        self.run = _button(translate("hummock", "Run"), f"run_{key}", lambda: desk.run_one(key))
        self.options = _button(translate("hummock", "Options…"), f"options_{key}", lambda: desk.open_options(key))
        self.open = _button(translate("hummock", "Open"), f"open_{key}", lambda: desk.open_product(key))
        self.open.setVisible(key in ("plan", "report"))
        self.gone = _button(translate("hummock", "Remove"), f"remove_{key}", lambda: desk.take_away(key))
        self.gone.setVisible(not step_name(key))
        self.widgets = (self.mark, self.name, self.run, self.options, self.open if step_name(key) else self.gone)
        for place, widget in enumerate(self.widgets):
            grid.addWidget(widget, row, place)

    def take_away(self) -> None:
        for widget in self.widgets:
            widget.setParent(None)
            widget.deleteLater()

    def show(self, lacking: str) -> None:
        book = self.desk.book
        wanted = book.steps[self.key].wanted(book)
        state, missing = book.state(self.key), book.missing(self.key)
        sign, text = _STATES[state]
        self.mark.setText(sign if wanted else "–")
        said = translate("hummock", text) if wanted else translate("hummock", "not part of this job")
        if state is State.FAILED:
            said = book.entries[self.key].failure
        self.mark.setToolTip(said)
        self.name.setToolTip(said)
        self.name.setText(f"{self.title}: {said}" if wanted and state is not State.FAILED else self.title)
        ready = wanted and not lacking and not missing and self.desk.feedback is None
        self.run.setEnabled(ready)
        self.options.setEnabled(ready)
        self.open.setEnabled(state in (State.DONE, State.STALE))
        waiting = translate("hummock", "first: {steps}").format(
            steps=", ".join(self.desk.rows[one].title for one in missing)
        )
        self.run.setToolTip(lacking or (waiting if missing else ""))


#: A sign that does not need its colour, and words.
_STATES = {
    State.EMPTY: ("○", QT_TRANSLATE_NOOP("hummock", "nothing yet")),
    State.DONE: ("●", QT_TRANSLATE_NOOP("hummock", "done")),
    State.STALE: ("◐", QT_TRANSLATE_NOOP("hummock", "out of date")),
    State.FAILED: ("✕", QT_TRANSLATE_NOOP("hummock", "failed")),
}


def _button(text: str, name: str, act: Callable[[], None]) -> QToolButton:
    made = QToolButton()
    made.setText(text)
    made.setObjectName(name)
    made.clicked.connect(lambda *_: act())
    return made
