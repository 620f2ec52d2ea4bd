"""``python -m plugin.core SURVEY --crs … --interval … --out DIR``: the main job without QGIS.

Summary on the standard output, progress on the standard error. Exit status: 0 done; 2 something the user must
mend (one line says what); 3 a fault of the program; 130 stopped by the user.
"""

from __future__ import annotations

import argparse
import io
import math
import sys
import traceback
from pathlib import Path
from typing import TYPE_CHECKING, Any, NoReturn, Optional, Sequence, Set, TextIO, Tuple

from .messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from .progress import Cancelled
from .units import LengthUnit

if TYPE_CHECKING:
    from .georeference.site import GroundOptions
    from .job import JobSettings
    from .quality.tolerances import ToleranceSet

BAD_ARGUMENTS = Text("job.bad_arguments", QT_TRANSLATE_NOOP("core", "{reason}; see --help."))
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
NOT_POSITIVE = Text("job.not_positive", QT_TRANSLATE_NOOP("core", "{option} must be a number above zero, not {value}."))
NEGATIVE = Text("job.negative", QT_TRANSLATE_NOOP("core", "{option} must be a number from zero up, not {value}."))
NEEDS_SMOOTH = Text(
    "job.needs_smooth",
    QT_TRANSLATE_NOOP(
        "core", "{option} is for the sheet, which is made with --smooth; give that too, 0 to smooth nothing."
    ),
)
NOT_A_NUMBER = Text("job.not_a_number", QT_TRANSLATE_NOOP("core", "{option} must be a number, not {value}."))

#: What the core needs beside the standard library.
PACKAGES = ("numpy", "scipy", "matplotlib", "pyproj")

STAGES = {
    "points": QT_TRANSLATE_NOOP("core", "reading points"),
    "check": QT_TRANSLATE_NOOP("core", "checking the points"),
    "surface": QT_TRANSLATE_NOOP("core", "building the surface"),
    "lines": QT_TRANSLATE_NOOP("core", "holding the surface to its lines"),
    "quality": QT_TRANSLATE_NOOP("core", "looking at accuracy and coverage"),
    "contours": QT_TRANSLATE_NOOP("core", "tracing contours"),
    "findings": QT_TRANSLATE_NOOP("core", "looking the surface over"),
    "sheet": QT_TRANSLATE_NOOP("core", "finishing contours for the sheet"),
    "thin": QT_TRANSLATE_NOOP("core", "thinning the surface"),
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
    options = _parser().parse_args(words)
    # Imported late: mistakes on the command line are told at once, and a missing package in one line.
    from .job import run_job
    from .report.summary import summary

    result = run_job(_settings(options), progress)
    progress.clear()
    for line in summary(result, options.out):
        print(line)
    return 0


def _settings(options: argparse.Namespace) -> JobSettings:
    from .contours.lines import ContourOptions
    from .contours.sheet import SheetOptions
    from .georeference.control_fit import HeightFit
    from .georeference.site import ControlOptions
    from .job import JobSettings
    from .points.geographic import HeightKind
    from .surface.build import SurfaceOptions
    from .surface.crossings import CrossingRule

    if options.smooth is None:
        for name in ("calm", "scale"):
            if getattr(options, name) is not None:
                raise SurveyError(NEEDS_SMOOTH, option=f"--{name}")
        sheet = None
    else:
        sheet = SheetOptions(options.smooth, options.calm or 0.0, options.scale or SHEET_SCALE)
    unit = LengthUnit(options.interval_unit)
    return JobSettings(
        survey=options.survey[0], out=options.out, crs=options.crs, columns=options.columns,
        contours=ContourOptions(options.interval, options.base, unit, options.index_every),
        delimiter=options.delimiter, decimal=options.decimal, encoding=options.encoding,
        unit=LengthUnit(options.unit) if options.unit else None,
        height_unit=LengthUnit(options.height_unit) if options.height_unit else None,
        decisions=options.decisions, codes=options.codes, use_codes=not options.no_codes,
        surface=SurfaceOptions(
            options.rim_edge, options.rim_radius, options.rim_angle, CrossingRule(options.crossings),
            options.crossing_tolerance,
        ),
        edits=options.edits, sheet=sheet, dem=options.dem, thin=options.thin, source_crs=options.source_crs,
        heights=HeightKind(options.heights) if options.heights else None, accept=tuple(options.accept),
        more=tuple(options.survey[1:]), correct=options.correct.strip(), geoid=options.geoid, control=options.control,
        heights_are=HeightKind(options.heights_are) if options.heights_are else None,
        fit=ControlOptions(
            options.control_fit == "space", HeightFit(options.control_heights), leave_out=tuple(options.leave_out)
        ),
        ground=_ground(options), check_points=options.check_points, accuracy_class=options.accuracy_class,
        max_gap=options.max_gap, check=not options.no_check, tolerances=_tolerances(options),
    )  # fmt: skip


def _ground(options: argparse.Namespace) -> Optional[GroundOptions]:
    """Ground and grid as the options ask for them; lengths there are in the unit of the CRS."""
    from .georeference.crs import metres_per_unit, read_crs
    from .georeference.site import GroundOptions, GroundWay, parse_place

    if not (options.ground_to_grid or options.grid_to_ground):
        return None
    metres = metres_per_unit(read_crs(options.crs)) if options.crs else 1.0
    east, north = parse_place(options.ground_shift, "--ground-shift")
    origin = None
    if options.ground_origin is not None:
        origin = parse_place(options.ground_origin, "--ground-origin")
        origin = (origin[0] * metres, origin[1] * metres)
    return GroundOptions(
        GroundWay.TO_GRID if options.ground_to_grid else GroundWay.TO_GROUND, origin, options.ground_factor,
        shift=(east * metres, north * metres),
    )  # fmt: skip


class _Parser(argparse.ArgumentParser):
    """Mistakes become a SurveyError: one line, without the usage text."""

    def error(self, text: str) -> NoReturn:
        raise SurveyError(BAD_ARGUMENTS, reason=text)


def _parser() -> argparse.ArgumentParser:
    parser = _Parser(
        prog="python -m plugin.core", allow_abbrev=False, description=DESCRIPTION, epilog=EPILOG, usage=USAGE,
        add_help=False,
    )  # fmt: skip
    _add_main_options(parser)
    _add_reading_options(parser.add_argument_group("how the survey is read"))
    _add_place_options(parser.add_argument_group("where the survey lies"))
    _add_quality_options(parser.add_argument_group("what the survey is worth"))
    _add_surface_options(parser.add_argument_group("the surface (lengths in metres)"))
    _add_sheet_options(parser.add_argument_group("for the sheet and for others (lengths in metres)"))
    return parser


def _add_main_options(parser: argparse.ArgumentParser) -> None:
    add = parser.add_argument
    survey = "the survey: points as delimited text, or a receiver log (NMEA 0183); several files become one survey"
    add("survey", metavar="SURVEY", type=Path, nargs="+", help=survey)
    add("--out", metavar="DIR", type=Path, required=True, help="folder for the results; made if missing")
    add("--crs", metavar="CRS", help="coordinate system, such as EPSG:25832; 'local' for a local grid in metres")
    add("--interval", metavar="N", type=_positive("--interval"), required=True, help="height between contours")
    units = [unit.value for unit in LengthUnit]
    add("--interval-unit", choices=units, default="m", help="unit of --interval and --base (default: m)")
    add("--base", metavar="N", type=_number("--base"), default=0.0, help="a height that has a contour (default: 0)")
    add("--index-every", metavar="N", type=int, default=5, help="every so many contours an index contour (default: 5)")
    add("--debug", action="store_true", help="show where the program failed, if it does")
    add("-h", "--help", action="help", help="show this help and stop")


def _add_reading_options(group: Any) -> None:
    add = group.add_argument
    units = [unit.value for unit in LengthUnit]
    add("--columns", metavar="MAP", help="which column holds what; found from the header if left out")
    add("--unit", choices=units, help="unit of the coordinates in the survey (default: that of the CRS)")
    add("--height-unit", choices=units, help="unit of its heights, if another")
    add("--delimiter", metavar="C", help="what separates columns; found if left out")
    add("--decimal", metavar="C", help="decimal mark, . or ,; found if left out")
    add("--encoding", metavar="NAME", help="text encoding; found if left out")
    add("--decisions", metavar="FILE", type=Path, help="decisions by hand on single points (CSV)")
    codes = group.add_mutually_exclusive_group()
    codes.add_argument("--codes", metavar="FILE", type=Path, help="table of field codes (CSV), not the one shipped")
    codes.add_argument("--no-codes", action="store_true", help="do not read field codes; no breaklines")


def _add_place_options(group: Any) -> None:
    add = group.add_argument
    source = "CRS of the coordinates in the files, if another; geographic for degrees (default for these: EPSG:4326)"
    add("--source-crs", metavar="CRS", help=source)
    accept = "coordinate operation to accept though a better one is known; may be given again"
    add("--accept", metavar="NAME", action="append", default=[], help=accept)
    correct = "read coordinates outside the area of use as this cause says, such as swapped; nothing is corrected else"
    add("--correct", metavar="CAUSE", default="", help=correct)
    kinds = ["orthometric", "ellipsoidal"]
    add("--heights", choices=kinds, help="heights wanted (default: as in the file; with --geoid: orthometric)")
    add("--heights-are", choices=kinds, help="what the heights in text files are, where they do not say it")
    add("--geoid", metavar="M|FILE", help="geoid separation: metres, or a grid that PROJ reads; see --heights")
    add("--control", metavar="FILE", type=Path, help="control points (CSV); the survey is local and is fitted to them")
    fits = ["plan", "space"]
    add("--control-fit", choices=fits, default=fits[0], help="four parameters in plan, or seven in space")
    heights = ["shift", "plane", "keep"]
    add("--control-heights", choices=heights, default=heights[0], help="what a fit in plan does to heights")
    add("--leave-out", metavar="NAME", action="append", default=[], help="control point not used; may be given again")
    grid = group.add_mutually_exclusive_group()
    grid.add_argument("--ground-to-grid", action="store_true", help="the survey is on the ground; bring it to the grid")
    grid.add_argument("--grid-to-ground", action="store_true", help="bring it from the grid of --crs to the ground")
    add("--ground-origin", metavar="E,N", help="origin of ground and grid, unit of the CRS (default: the middle)")
    add("--ground-factor", metavar="F", type=_positive("--ground-factor"), help="combined factor, if it is prescribed")
    add("--ground-shift", metavar="E,N", default="0,0", help="added to ground coordinates; as --ground-shift=-5e5,-5e6")


def _tolerances(options: argparse.Namespace) -> ToleranceSet:
    """The set by its name: of the file given, or of those shipped."""
    from .quality.tolerances import SHIPPED, find_tolerances, read_tolerances

    if options.tolerances is None:
        return find_tolerances(SHIPPED, options.check or SHIPPED[0].name, "--check")
    sets = read_tolerances(options.tolerances)
    if options.check is None and len(sets) == 1:
        return sets[0]
    return find_tolerances(sets, options.check or "", str(options.tolerances))


def _add_quality_options(group: Any) -> None:
    add = group.add_argument
    check = group.add_mutually_exclusive_group()
    named = "check points by the tolerance set of this name (topographic or control, or one of --tolerances; default: "
    check.add_argument("--check", metavar="SET", help=named + "topographic)")
    check.add_argument("--no-check", action="store_true", help="use every point that no hand or code rejects")
    add("--tolerances", metavar="FILE", type=Path, help="tolerance sets of your own (JSON)")
    add("--check-points", metavar="FILE", type=Path, help="independent check points (CSV) to test the surface against")
    wanted = "vertical class to be met by the ASPRS standards, RMSE in cm (default: the finest that is met)"
    add("--accuracy-class", metavar="CM", type=_positive("--accuracy-class"), help=wanted)
    gap = "no place should be farther than this from a measured point, m; others are to be walked again (default: by "
    add("--max-gap", metavar="M", type=_positive("--max-gap"), help=gap + "the distance of the passes)")


def _add_surface_options(group: Any) -> None:
    def limit(name: str, unit: str, text: str) -> None:
        group.add_argument(name, metavar=unit, type=_positive(name), help=f"{text} (default: none)")

    group.add_argument("--edits", metavar="FILE", type=Path, help="edits of the surface by hand (JSON)")
    limit("--rim-edge", "M", "longest edge on the rim; triangles with a longer one are taken off")
    limit("--rim-radius", "M", "hollow outline: triangles at the rim with a wider circumcircle are taken off")
    limit(
        "--rim-angle",
        "DEG",
        "slivers: triangles with a wider angle opposite their outer edge are taken off; 165 is good",
    )
    rules = ["refuse", "mean", "first"]
    crossings = "height where lines cross: refuse those that differ, the mean, or the first line's (default: refuse)"
    group.add_argument("--crossings", choices=rules, default=rules[0], help=crossings)
    name, small = "--crossing-tolerance", "a difference up to this is not refused, the mean is taken (default: 0.05)"
    group.add_argument(name, metavar="M", type=_positive(name, zero=True), default=0.05, help=small)


def _add_sheet_options(group: Any) -> None:
    def length(name: str, text: str, zero: bool = False) -> None:
        group.add_argument(name, metavar="M", type=_positive(name, zero), help=text)

    length(
        "--smooth", "also contours for the sheet, smoothed by at most this in plan, with labels and spot heights", True
    )
    length("--calm", "move heights by at most this for the sheet's contours, to calm noise (default: 0)", True)
    scale = f"scale 1 : N of the sheet, for which labels are placed (default: {SHEET_SCALE})"
    group.add_argument("--scale", metavar="N", type=_positive("--scale"), help=scale)
    length("--dem", "also a grid of heights (DEM) with cells of this size")
    length("--thin", "also a surface with fewer points, within this in height", True)


USAGE = "python -m plugin.core SURVEY --crs CRS --interval N --out DIR [more]"
SHEET_SCALE = 500
DESCRIPTION = "Make a surface, contours and a report from the points of a survey."
EPILOG = "Example: python -m plugin.core survey.csv --crs EPSG:25832 --interval 0.25 --out results"


def _number(option: str) -> Any:
    def read(text: str) -> float:
        try:
            value = float(text)
        except ValueError:
            value = math.nan
        if not math.isfinite(value):
            raise SurveyError(NOT_A_NUMBER, option=option, value=text)
        return value

    return read


def _positive(option: str, zero: bool = False) -> Any:
    def read(text: str) -> float:
        value = _number(option)(text)
        if value < 0 or (value == 0 and not zero):
            raise SurveyError(NEGATIVE if zero else NOT_POSITIVE, option=option, value=text)
        return value

    return read


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
