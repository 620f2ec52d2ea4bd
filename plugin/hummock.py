"""The plugin object QGIS starts: it registers the algorithms and lists them in a menu."""

from __future__ import annotations

from functools import partial
from pathlib import Path
from typing import Any, List, Optional

from qgis.core import QgsApplication, QgsSettings
from qgis.PyQt.QtCore import QCoreApplication, QLocale, QTranslator
from qgis.PyQt.QtGui import QIcon
from qgis.PyQt.QtWidgets import QAction, QMenu

from .processing.provider import HummockProvider

HERE = Path(__file__).resolve().parent

translate = QCoreApplication.translate


class HummockPlugin:
    """Registers the provider with or without a window (``iface`` is None in qgis_process)."""

    def __init__(self, iface: Optional[Any]) -> None:
        self.iface = iface
        self.provider: Optional[HummockProvider] = None
        self.menu: Optional[QMenu] = None
        self.translator = load_translation()

    def initProcessing(self) -> None:
        """Called by qgis_process, and by :meth:`initGui` in the desktop."""
        self.provider = HummockProvider()
        QgsApplication.processingRegistry().addProvider(self.provider)

    def initGui(self) -> None:
        """Called by the desktop when the plugin is switched on."""
        self.initProcessing()
        if self.iface is not None:
            self.menu = self._make_menu()
            self.iface.pluginMenu().addMenu(self.menu)

    def unload(self) -> None:
        """Called when the plugin is switched off: leaves nothing behind."""
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

    def _make_menu(self) -> QMenu:
        menu = QMenu(translate("hummock", "Hummock"), self.iface.mainWindow())
        menu.setIcon(QIcon(str(HERE / "icon.svg")))
        menu.addActions(self._actions(menu))
        return menu

    def _actions(self, parent: QMenu) -> List[QAction]:
        """One action for each algorithm, in the order of the work."""
        actions = []
        for algorithm in self.provider.in_order():
            action = QAction(algorithm.icon(), algorithm.displayName() + "…", parent)
            action.setToolTip(algorithm.shortDescription())
            action.triggered.connect(partial(open_dialog, algorithm.id()))
            actions.append(action)
        return actions


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
