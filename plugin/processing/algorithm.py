"""What all of Hummock's algorithms share: how they describe themselves and how they fail."""

from __future__ import annotations

import re
import traceback
from pathlib import Path
from typing import Any, Callable, Dict, Iterable, List, Tuple

from qgis.core import (
    QgsMessageLog,
    QgsProcessingAlgorithm,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingOutputNumber,
    QgsProcessingParameterDefinition,
    QgsProcessingParameterFileDestination,
)
from qgis.PyQt.QtCore import QCoreApplication, QUrl
from qgis.PyQt.QtGui import QIcon

from ..core.messages import Message, SurveyError
from ..core.progress import Cancelled, Progress
from .localnumbers import local_number, undo_units, units_told, use_units
from .threads import beside_main_thread
from .versions import ADVANCED, INFO
from .wholefiles import WholeFiles

ICONS = Path(__file__).resolve().parent / "icons"
#: What .ci/help_pictures makes.
PICTURES = Path(__file__).resolve().parent.parent / "help"
PICTURE_WIDTH = 300  # pixels; the help is beside the parameters

translate = QCoreApplication.translate


class HummockAlgorithm(QgsProcessingAlgorithm):
    """An algorithm whose work is done by the core.

    A subclass sets ``NAME`` (its id) and ``ICON``, describes itself in ``title``, ``group``, ``summary``
    (one line), ``help_text`` (HTML) and ``words`` (search words), and does its work in :meth:`work`,
    where it may let :class:`SurveyError` and :class:`Cancelled` pass.
    """

    NAME = ""
    ICON = ""
    GROUP_ID = ""

    def title(self) -> str:
        raise NotImplementedError

    def group(self) -> str:
        raise NotImplementedError

    def summary(self) -> str:
        raise NotImplementedError

    def help_text(self) -> str:
        raise NotImplementedError

    def words(self) -> str:
        raise NotImplementedError

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        raise NotImplementedError

    # What QGIS asks

    def createInstance(self) -> QgsProcessingAlgorithm:
        return type(self)()

    def name(self) -> str:
        return self.NAME

    def displayName(self) -> str:
        return self.title()

    def groupId(self) -> str:
        return self.GROUP_ID

    def shortDescription(self) -> str:
        return self.summary()

    def shortHelpString(self) -> str:
        """The help, with a picture of the result on the demo survey where there is one."""
        picture = PICTURES / f"{self.NAME}.png"
        if not picture.exists():
            return self.help_text()
        address = QUrl.fromLocalFile(str(picture)).toString()
        return f'{self.help_text()}<p>{self.picture_shows()}</p><p><img src="{address}" width="{PICTURE_WIDTH}"></p>'

    def picture_shows(self) -> str:
        """What the picture in the help is of."""
        return translate("hummock", "On the demo survey:")

    def tags(self) -> List[str]:
        return [word.strip() for word in self.words().split(",")]

    def icon(self) -> QIcon:
        return QIcon(self.svgIconPath())

    def svgIconPath(self) -> str:
        return str(ICONS / self.ICON)

    def processAlgorithm(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        """Runs :meth:`work`; every failure becomes one line, a cancelled run ends without results and files."""
        self._files = WholeFiles(context)
        done, units = False, use_units(None)
        try:
            with beside_main_thread():
                results = self.work(parameters, context, feedback)
            self._files.keep()
            done = True
            return results
        except Cancelled:
            feedback.pushInfo(translate("hummock", "Cancelled: there is no result."))
            return {}
        except SurveyError as error:
            raise QgsProcessingException(tell(error.message)) from None
        except QgsProcessingException:
            raise
        except MemoryError:
            raise QgsProcessingException(
                translate("hummock", "The memory of this machine does not suffice; take fewer points at a time.")
            ) from None
        except Exception as error:  # a fault of ours: a line for the user, the details for the log
            QgsMessageLog.logMessage(traceback.format_exc(), "Hummock", INFO, False)
            raise QgsProcessingException(unexpected(error)) from None
        finally:
            undo_units(units)
            if not done:
                self._files.drop()

    def parameterAsSink(
        self, parameters: Dict[str, Any], name: str, context: QgsProcessingContext, *more: Any
    ) -> Tuple[Any, str]:
        """As QGIS does it, but a file appears under its name only when the algorithm has ended well."""
        make, definition = super().parameterAsSink, self.parameterDefinition(name)
        return self._files.sink(make, definition, parameters, context, *more)

    # What subclasses use

    def add(self, parameter: QgsProcessingParameterDefinition, help_text: str, advanced: bool = False) -> None:
        """Adds a parameter with its help."""
        parameter.setHelp(help_text)
        if advanced:
            parameter.setFlags(parameter.flags() | ADVANCED)
        self.addParameter(parameter)

    def add_page(self, name: str, label: str, help_text: str, made: bool = True) -> None:
        """A file HTML or PDF, the kind being the ``name``'s; ``made``: also where nobody says a place for it."""
        kinds = {
            "HTML": translate("hummock", "HTML files (*.html)"),
            "PDF": translate("hummock", "PDF files (*.pdf)"),
        }
        self.add(
            QgsProcessingParameterFileDestination(name, label, kinds[name], optional=True, createByDefault=made),
            help_text,
        )

    def add_numbers(self, *outputs: Tuple[str, str]) -> None:
        """Adds results that are numbers, each by its name and label."""
        for name, label in outputs:
            self.addOutput(QgsProcessingOutputNumber(name, label))


def translate_core(english: str) -> str:
    """A text of the core in QGIS's language."""
    return str(translate("core", english))


def page_language() -> Tuple[Callable[[str], str], str]:
    """How a page of the core is told in QGIS's language, and the code of that language."""
    return translate_core, str(translate("hummock", "en", "the code of the language of these texts"))


def say(message: Message) -> str:
    """A message of the core in QGIS's language, its options named as the parameters of the toolbox.

    For files and results; :func:`tell` is for the screen.
    """
    return _with_labels(message.say(translate_core, units=units_told()))


def tell(message: Message) -> str:
    """As :func:`say`, but numbers as the user's locale has them."""
    return _with_labels(message.say(translate_core, local_number, units_told()))


def _with_labels(text: str) -> str:
    return re.sub(r"--([a-z]+(?:-[a-z]+)*)", lambda option: _parameter_label(option.group(1)), text)


def _parameter_label(option: str) -> str:
    """What the toolbox calls an option of the command line."""
    labels = {
        "accept": translate("hummock", "Coordinate operations accepted by name"),
        "base-is": translate("hummock", "Position of the base as it is"),
        "base-was": translate("hummock", "Position of the base as it was used"),
        "columns": translate("hummock", "Columns"),
        "control-as": translate("hummock", "Read survey and control as"),
        "control-fit": translate("hummock", "Fit"),
        "correct": translate("hummock", "Read coordinates outside the area of use as"),
        "crs": translate("hummock", "CRS"),
        "decimal": translate("hummock", "Decimal sign"),
        "decisions": translate("hummock", "Decisions"),
        "delimiter": translate("hummock", "Separator"),
        "encoding": translate("hummock", "Text encoding"),
        "found-lines": translate("hummock", "Lines with your decisions"),
        "geoid": translate("hummock", "Geoid separation"),
        "ground-origin": translate("hummock", "Origin"),
        "heights": translate("hummock", "Heights wanted"),
        "heights-are": translate("hummock", "Heights in the file are"),
        "leave-out": translate("hummock", "Control points left out of the fit"),
        "source-crs": translate("hummock", "CRS of the coordinates in the file"),
        "angles": translate("hummock", "Latitudes and longitudes are written as"),
        "antenna-offset": translate("hummock", "Antenna offset"),
        "comment": translate("hummock", "Comment lines start with"),
        "header": translate("hummock", "First line names the columns"),
        "height-unit": translate("hummock", "Unit of the heights"),
        "heights-of": translate("hummock", "Heights in the file are those of"),
        "layer": translate("hummock", "Layer, sheet or file of an archive"),
        "no-value": translate("hummock", "What stands for no value"),
        "pole-height": translate("hummock", "Pole height"),
        "units-from": translate("hummock", "Where header and options differ, the unit is"),
        "unit": translate("hummock", "Unit"),
        "units": translate("hummock", "Unit"),
    }
    return "“" + labels.get(option, option) + "”"


def unexpected(error: Exception) -> str:
    """One line for a fault of the program."""
    reason = " ".join(str(error).split()) or translate("hummock", "no further details")
    return translate(
        "hummock", "Hummock met a fault of its own ({kind}: {reason}); the log panel has the details."
    ).format(kind=type(error).__name__, reason=reason)


def report(messages: Iterable[Message], feedback: QgsProcessingFeedback) -> None:
    """Tells the user what the core has to say about its result."""
    for message in messages:
        feedback.pushWarning(tell(message))


def progress_of(feedback: QgsProcessingFeedback) -> Progress:
    """The core's progress shown by ``feedback``, never backwards; raises :class:`Cancelled` once the user cancelled."""
    reached = 0.0

    def show(fraction: float, stage: str) -> None:
        nonlocal reached
        if feedback.isCanceled():
            raise Cancelled
        reached = max(reached, 100.0 * fraction)
        feedback.setProgress(reached)

    return show
