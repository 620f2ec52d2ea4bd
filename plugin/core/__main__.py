"""``python -m plugin.core SURVEY --crs … --interval … --out DIR``: the main job without QGIS; ``--job DIR`` goes on.

Summary on the standard output, progress on the standard error. Exit status: 0 done; 2 something the user must
mend (one line says what); 3 a fault of the program; 130 stopped by the user.
"""

from __future__ import annotations

import io
import sys
import traceback
from typing import Any, Optional, Sequence, Set, TextIO, Tuple

from .arguments.parser import job_options, make_parser
from .messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from .progress import Cancelled

FAULT = Text(
    "job.fault",
    QT_TRANSLATE_NOOP(
        "core", "A fault in the program, not in your file: {reason}. Please report it with what --debug shows."
    ),
)
NO_MEMORY = Text(
    "job.no_memory", QT_TRANSLATE_NOOP("core", "There is not enough memory for this survey; split the file.")
)
NO_PACKAGE = Text(
    "job.no_package",
    QT_TRANSLATE_NOOP(
        "core", "This Python has no package {package}; install {packages}, or run the Python that QGIS uses."
    ),
)
STOPPED = Text("job.stopped", QT_TRANSLATE_NOOP("core", "Stopped; no file is half written."))

#: What the core needs beside the standard library.
PACKAGES = ("numpy", "scipy", "matplotlib", "pyproj")

STAGES = {
    "points": QT_TRANSLATE_NOOP("core", "reading points"),
    "check": QT_TRANSLATE_NOOP("core", "checking the points"),
    "features": QT_TRANSLATE_NOOP("core", "looking for lines of the ground"),
    "visits": QT_TRANSLATE_NOOP("core", "comparing visits"),
    "surface": QT_TRANSLATE_NOOP("core", "building the surface"),
    "lines": QT_TRANSLATE_NOOP("core", "holding the surface to its lines"),
    "quality": QT_TRANSLATE_NOOP("core", "looking at accuracy and coverage"),
    "contours": QT_TRANSLATE_NOOP("core", "tracing contours"),
    "findings": QT_TRANSLATE_NOOP("core", "looking the surface over"),
    "sheet": QT_TRANSLATE_NOOP("core", "finishing contours for the sheet"),
    "thin": QT_TRANSLATE_NOOP("core", "thinning the surface"),
    "water": QT_TRANSLATE_NOOP("core", "following the water"),
    "grading": QT_TRANSLATE_NOOP("core", "grading pads"),
    "road": QT_TRANSLATE_NOOP("core", "looking along the road"),
    "volumes": QT_TRANSLATE_NOOP("core", "comparing surfaces"),
    "basin": QT_TRANSLATE_NOOP("core", "filling the basin"),
    "files": QT_TRANSLATE_NOOP("core", "writing files"),
    "report": QT_TRANSLATE_NOOP("core", "writing the report"),
}


def main(arguments: Optional[Sequence[str]] = None) -> int:
    """Run the command line ``arguments``; returns the exit status."""
    words = list(sys.argv[1:] if arguments is None else arguments)
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors="replace")  # a terminal without ² or … gets a question mark
    progress = ProgressLine(sys.stderr)
    try:
        return _run(words, progress)
    except (Exception, KeyboardInterrupt) as error:
        progress.clear()
        if "--debug" in words:
            traceback.print_exc()
        said, status = _explain(error)
        print(" ".join(str(said).split()), file=sys.stderr)
        return status


def _explain(error: BaseException) -> Tuple[Message, int]:
    """What to say about ``error``, and the exit status."""
    if isinstance(error, SurveyError):
        return error.message, 2
    if isinstance(error, (KeyboardInterrupt, Cancelled)):
        return message(STOPPED), 130
    if isinstance(error, ModuleNotFoundError) and (error.name or "").split(".")[0] in PACKAGES:
        return message(NO_PACKAGE, package=error.name, packages=", ".join(PACKAGES)), 2
    if isinstance(error, MemoryError):
        return message(NO_MEMORY), 3
    return message(FAULT, reason=f"{type(error).__name__}: {error}"), 3


def _run(words: Sequence[str], progress: ProgressLine) -> int:
    job: Any = job_options(words)
    options: Any = None if job else make_parser().parse_args(words)
    # Imported late: mistakes on the command line are told at once, and a missing package in one line.
    from .arguments.settings import job_settings
    from .job.run import continue_job, run_job
    from .job.visits import VisitWords
    from .report.summary import summary

    if job:
        said = VisitWords(tuple(job.add), job.new_ground, job.visit_offset)
        result = continue_job(job.job, progress, visits=said)
    else:
        result = run_job(job_settings(options), progress)
    progress.clear()
    for line in summary(result, job.job if job else options.out):
        print(line)
    return 0


class ProgressLine:
    """Progress on ``stream``: one line that changes on a terminal, else a line a stage."""

    def __init__(self, stream: TextIO) -> None:
        self.stream = stream
        self.terminal = stream.isatty()
        self.shown = ""
        self.told: Set[str] = set()

    def __call__(self, fraction: float, stage: str) -> None:
        words = STAGES.get(stage, stage)
        text = f"{100 * fraction:3.0f} % {words}" if self.terminal else words
        if text != self.shown and not (text in self.told and not self.terminal):
            self.stream.write(f"\r\x1b[K{text}" if self.terminal else f"{text}\n")
            self.stream.flush()
            self.shown = text
            self.told.add(text)

    def clear(self) -> None:
        if self.terminal and self.shown:
            self.stream.write("\r\x1b[K")
            self.stream.flush()
        self.shown = ""


if __name__ == "__main__":
    sys.exit(main())
