"""The work of a job beside QGIS's window: its stages, its files and its layers."""

from __future__ import annotations

import traceback
from pathlib import Path
from typing import Callable, List, Optional

from qgis.core import QgsMessageLog, QgsProcessingContext, QgsProcessingException, QgsProject, QgsTask
from qgis.PyQt.QtCore import QCoreApplication, pyqtSignal

from ..core.__main__ import STAGES
from ..core.job.job_file import read_job
from ..core.job.run import continue_job
from ..core.messages import SurveyError
from ..core.progress import Cancelled, part
from ..core.report.results import JobResult
from ..processing.algorithm import tell
from ..processing.joblayers import JobLayer, write_job_layers
from ..processing.threads import beside_main_thread
from ..processing.versions import INFO, member

translate = QCoreApplication.translate


_CAN_CANCEL = member(QgsTask, "Flag", "CanCancel")


class JobTask(QgsTask):
    """Works through the job of ``folder``. ``result`` and ``layers`` when it went well, else ``failure``."""

    told = pyqtSignal(str)

    def __init__(self, folder: Path, language: str, done: Callable[[JobTask], None], layers: bool = True) -> None:
        super().__init__(translate("hummock", "Survey job {name}").format(name=folder.name), _CAN_CANCEL)
        self.folder, self.language, self.done = folder, language, done
        self.with_layers = layers
        self.context = QgsProcessingContext()
        self.context.setTransformContext(QgsProject.instance().transformContext())
        self.result: Optional[JobResult] = None
        self.layers: List[JobLayer] = []
        self.failure = ""
        self._stage = ""

    def run(self) -> bool:
        """In another thread."""
        with beside_main_thread():
            return self._work()

    def _work(self) -> bool:
        try:
            self.result = continue_job(self.folder, part(self._progress, 0.0, 0.9), _of_core, self.language)
            if self.with_layers:
                self.layers = write_job_layers(
                    self.result, read_job(self.folder), self.folder, self.context, part(self._progress, 0.9, 1.0)
                )
        except Cancelled:
            self.failure = translate("hummock", "Cancelled: what was done before is kept.")
        except SurveyError as error:
            self.failure = tell(error.message)
        except (QgsProcessingException, MemoryError) as error:
            self.failure = str(error)
        except Exception as error:
            self.failure = translate("hummock", "A fault in the program, not in your file: {reason}").format(
                reason=f"{type(error).__name__}: {error}"
            )
            QgsMessageLog.logMessage(traceback.format_exc(), "Hummock", INFO)
        return not self.failure

    def _progress(self, fraction: float, stage: str) -> None:
        if self.isCanceled():
            raise Cancelled
        self.setProgress(100.0 * fraction)
        if stage != self._stage and stage in STAGES:
            self._stage = stage
            self.told.emit(translate("core", STAGES[stage]))

    def finished(self, good: bool) -> None:
        """In QGIS's own thread."""
        self.done(self)


def _of_core(text: str) -> str:
    return str(translate("core", text))
