"""Remarks and answers to press, one below the other."""

from __future__ import annotations

from typing import Any, Optional

from qgis.PyQt.QtCore import Qt
from qgis.PyQt.QtWidgets import QHBoxLayout, QLabel, QPushButton, QScrollArea, QSizePolicy, QVBoxLayout, QWidget

HEIGHT = 170  # pixels


class Notes(QScrollArea):
    """A list of texts and of buttons for what only the user can say."""

    def __init__(self, parent: Optional[QWidget] = None) -> None:
        super().__init__(parent)
        inner = QWidget()
        self.rows = QVBoxLayout(inner)
        self.rows.setContentsMargins(6, 4, 6, 4)
        self.setWidget(inner)
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFixedHeight(HEIGHT)

    def clear(self) -> None:
        while self.rows.count():
            widget = self.rows.takeAt(0).widget()
            if widget is not None:
                widget.setParent(None)
                widget.deleteLater()

    def note(self, text: str, bad: bool = False) -> None:
        label = QLabel(text)
        label.setWordWrap(True)
        label.setTextFormat(Qt.TextFormat.PlainText)
        label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        if bad:
            label.setStyleSheet("color: #a50f15; font-weight: bold")  # ColorBrewer, Reds, darkest
        self.rows.addWidget(label)

    def button(self, text: str, chosen: bool, action: Any, beside: str = "") -> None:
        """A button in a line of its own, with a text beside it."""
        button = QPushButton(text)
        button.setCheckable(True)
        button.setChecked(chosen)
        button.clicked.connect(action)
        button.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)
        line = QWidget()
        row = QHBoxLayout(line)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(button)
        why = QLabel(beside)
        why.setWordWrap(True)
        row.addWidget(why, 1)
        self.rows.addWidget(line)

    def end(self) -> None:
        """All is said: the rest of the room stays empty."""
        self.rows.addStretch(1)
