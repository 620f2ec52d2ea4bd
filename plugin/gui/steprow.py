"""A row of the desk: how a step stands, its name, and what can be done with it."""

from __future__ import annotations

from typing import Any, Callable

from qgis.PyQt.QtCore import QCoreApplication
from qgis.PyQt.QtWidgets import QGridLayout, QLabel, QSizePolicy, QToolButton

from ..core.messages import QT_TRANSLATE_NOOP
from .steps import algorithm_name, step_name
from .toolbook import State

translate = QCoreApplication.translate


class StepRow:
    """How a step stands, its name, and what can be done with it. ``desk`` does it."""

    def __init__(self, desk: Any, key: str, grid: QGridLayout, row: int) -> None:
        self.desk = desk
        self.key = key
        self.mark = QLabel()
        self.title = step_name(key) or algorithm_name(desk.book.tools[key].algorithm)
        self.name = QLabel(self.title)
        self.name.setWordWrap(True)
        self.name.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.options = _button(translate("hummock", "Options…"), f"options_{key}", lambda: desk.open_options(key))
        self.options.setVisible(desk.has_options(key))
        self.open = _button(translate("hummock", "Open"), f"open_{key}", lambda: desk.open_product(key))
        self.open.setVisible(key in ("plan", "report"))
        self.gone = _button(translate("hummock", "Remove"), f"remove_{key}", lambda: desk.take_away(key))
        self.gone.setVisible(not step_name(key))
        self.widgets = (self.mark, self.name, self.options, self.open if step_name(key) else self.gone)
        for place, widget in enumerate(self.widgets):
            grid.addWidget(widget, row, place)

    def take_away(self) -> None:
        for widget in self.widgets:
            widget.setParent(None)
            widget.deleteLater()

    def show(self, state: State, failure: str, ready: bool) -> None:
        """``failure``: why it failed, "" if it did not; ``ready``: whether the job is described."""
        sign, text = _STATES[state]
        said = failure or translate("hummock", text)
        self.mark.setText(sign)
        self.mark.setToolTip(said)
        self.name.setToolTip(said)
        self.name.setText(f"{self.title}: {translate('hummock', text)}")
        idle = not self.desk.busy
        self.options.setEnabled(ready and idle)
        self.gone.setEnabled(idle)
        self.open.setEnabled(state in (State.DONE, State.STALE))


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
