"""What the desk is made of: form, run and cancel, what is said, rows of steps, tools to be added."""

from __future__ import annotations

from qgis.gui import QgsDockWidget
from qgis.PyQt.QtCore import QCoreApplication
from qgis.PyQt.QtWidgets import (
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
from .steps import addable

translate = QCoreApplication.translate


class DeskWidgets(QgsDockWidget):
    """Widgets without a will of their own; :class:`.desk.DeskDock` gives them one."""

    def _build(self) -> None:
        inside = QWidget()
        column = QVBoxLayout(inside)
        self.demo = QPushButton(translate("hummock", "Try it on a demo survey…"))
        self.demo.setObjectName("demo")
        self.demo.setToolTip(
            translate("hummock", "Copies an invented survey into a folder that you choose, and fills in the rest.")
        )
        self.demo.clicked.connect(self.take_demo)
        column.addWidget(self.demo)
        self.form = DeskForm()
        self.form.changed.connect(self._changed)
        column.addWidget(self.form)
        self.run_all = QPushButton(translate("hummock", "Run everything"))
        self.run_all.setObjectName("run_all")
        self.run_all.clicked.connect(self.run_everything)
        column.addWidget(self.run_all)
        line = QHBoxLayout()
        self.bar = QProgressBar()
        self.cancel = QPushButton(translate("hummock", "Cancel"))
        self.cancel.clicked.connect(self.stop)
        line.addWidget(self.bar, 1)
        line.addWidget(self.cancel)
        column.addLayout(line)
        self.said = QLabel()
        self.said.setObjectName("said")
        self.said.setWordWrap(True)
        column.addWidget(self.said)
        self.grid = QGridLayout()
        self.grid.setColumnStretch(1, 1)
        column.addLayout(self.grid)
        column.addLayout(self._make_more())
        column.addStretch(1)
        scroll = QScrollArea()
        scroll.setWidgetResizable(True)
        scroll.setWidget(inside)
        self.setWidget(scroll)
        self.setMinimumWidth(340)
        self._show_busy()

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
