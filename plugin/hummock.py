"""The plugin object QGIS starts: it registers the algorithms and lists them in a menu."""

from __future__ import annotations

from functools import partial
from pathlib import Path
from typing import Any, Optional

from qgis.core import QgsApplication, QgsSettings
from qgis.PyQt.QtCore import QCoreApplication, QLocale, Qt, QTranslator
from qgis.PyQt.QtGui import QIcon
from qgis.PyQt.QtWidgets import QMenu

try:
    from qgis.PyQt.QtGui import QAction  # Qt 6
except ImportError:
    from qgis.PyQt.QtWidgets import QAction

from .processing.provider import HummockProvider

HERE = Path(__file__).resolve().parent

translate = QCoreApplication.translate


class HummockPlugin:
    """Registers the provider; ``iface`` is None without a window, as in qgis_process."""

    def __init__(self, iface: Any) -> None:
        self.iface = iface
        self.provider: Optional[HummockProvider] = None
        self.menu: Optional[QMenu] = None
        self.desk_action: Optional[QAction] = None
        self.desk: Any = None
        self.edits: Any = None
        self.translator = load_translation()

    def initProcessing(self) -> None:
        """Called by qgis_process."""
        self._register()

    def _register(self) -> HummockProvider:
        self.provider = HummockProvider()
        QgsApplication.processingRegistry().addProvider(self.provider)
        return self.provider

    def initGui(self) -> None:
        """Called by the desktop when the plugin is switched on."""
        provider = self._register()
        self.desk_action = self._make_desk_action()
        self.iface.addToolBarIcon(self.desk_action)
        self.menu = self._make_menu(provider)
        self.iface.pluginMenu().addMenu(self.menu)
        self.listen()

    def listen(self) -> None:
        """Decisions taken in the layers of a job are kept, whether the panel is open or not."""
        from .gui.jobedits import JobEdits

        self.edits = JobEdits(
            lambda folder: None if self.desk is None else self.desk.job_changed(folder),
            lambda layer: None if self.desk is None else self.desk.layer_edited(layer),
        )

    def unload(self) -> None:
        """Called when the plugin is switched off: leaves nothing behind."""
        if self.edits is not None:
            self.edits.stop()
            self.edits = None
        if self.desk is not None:
            self.desk.stop_listening()
            self.iface.removeDockWidget(self.desk)
            self.desk.deleteLater()
            self.desk = None
        if self.desk_action is not None:
            self.iface.removeToolBarIcon(self.desk_action)
            self.desk_action = None
        if self.menu is not None:
            self.iface.pluginMenu().removeAction(self.menu.menuAction())
            self.menu.deleteLater()
            self.menu = None
        if self.provider is not None:
            QgsApplication.processingRegistry().removeProvider(self.provider)
            self.provider = None
        if self.translator is not None:
            QCoreApplication.removeTranslator(self.translator)
            self.translator = None

    def _make_desk_action(self) -> QAction:
        action = QAction(QIcon(str(HERE / "icon.svg")), translate("hummock", "Survey desk"), self.iface.mainWindow())
        action.setToolTip(translate("hummock", "Leads through a survey, from its file to plan and report."))
        action.setCheckable(True)
        action.triggered.connect(self.show_desk)
        return action

    def show_desk(self, shown: bool = True) -> None:
        """Shows the panel, or hides it; it is made when it is first wanted."""
        if self.desk is None:
            from .gui.desk import DeskDock

            self.desk = DeskDock(self.iface)
            self.iface.addDockWidget(Qt.DockWidgetArea.RightDockWidgetArea, self.desk)
            if self.desk_action is not None:
                self.desk.visibilityChanged.connect(self.desk_action.setChecked)
        self.desk.setUserVisible(shown)

    def _make_menu(self, provider: HummockProvider) -> QMenu:
        """One entry for each algorithm, in the order of the work."""
        menu = QMenu(translate("hummock", "Hummock"), self.iface.mainWindow())
        menu.setIcon(QIcon(str(HERE / "icon.svg")))
        menu.addAction(self.desk_action)
        menu.addSeparator()
        for algorithm in provider.in_order():
            action = QAction(algorithm.icon(), algorithm.displayName() + "…", menu)
            action.setToolTip(algorithm.shortDescription())
            action.triggered.connect(partial(open_dialog, algorithm.id()))
            menu.addAction(action)
        return menu


def open_dialog(algorithm_id: str, checked: bool = False) -> None:
    """Opens the algorithm's own dialog, as the toolbox would."""
    import processing  # comes with QGIS's Processing plugin, which may load after this one

    processing.execAlgorithmDialog(algorithm_id, {})


def load_translation() -> Optional[QTranslator]:
    """Puts the plugin's texts into QGIS's language; None where there is no translation for it."""
    settings = QgsSettings()
    language = QLocale.system().name()
    if settings.value("locale/overrideFlag", False, type=bool):
        language = str(settings.value("locale/userLocale", language))
    translator = QTranslator()
    for name in (language, language.split("_")[0]):
        if translator.load(str(HERE / "i18n" / f"hummock_{name}.qm")):
            QCoreApplication.installTranslator(translator)
            return translator
    return None
