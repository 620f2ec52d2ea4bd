"""The options of the command line.

Nothing heavy is imported here: mistakes are told at once, and a missing package in one line.
"""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any, NoReturn, Optional, Sequence

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..units import WORKING_UNITS, LengthUnit
from . import road, volumes, water
from .numbers import number, number_or_word, positive

BAD_ARGUMENTS = Text("job.bad_arguments", QT_TRANSLATE_NOOP("core", "{reason}; see --help."))

JOB_ALONE = Text(
    "job.job_alone",
    QT_TRANSLATE_NOOP(
        "core",
        "--job goes on with a job by the choices in its file, so {other} cannot be given too. To change a choice, give "
        "the survey and all choices with --out of the same folder, or change the file; another visit is added with "
        "--add.",
    ),
)
NEEDS_JOB = Text(
    "job.needs_job",
    QT_TRANSLATE_NOOP("core", "{option} is said of a job that is there already; give its folder with --job."),
)

USAGE = "python -m plugin.core SURVEY --crs CRS --interval N --out DIR [more]; or: python -m plugin.core --job DIR "
USAGE += "[--add FILE]"
SHEET_SCALE = 500
PAD_RUN = 2.0
DESCRIPTION = "Make a surface, contours and a report from the points of a survey."
EPILOG = "Example: python -m plugin.core survey.csv --crs EPSG:25832 --interval 0.25 --out results"


class _Parser(argparse.ArgumentParser):
    """Mistakes become a SurveyError: one line, without the usage text."""

    def error(self, text: str) -> NoReturn:
        raise SurveyError(BAD_ARGUMENTS, reason=text)


def make_parser() -> argparse.ArgumentParser:
    """The parser of all options; mistakes become a SurveyError."""
    parser = _Parser(
        prog="python -m plugin.core", allow_abbrev=False, description=DESCRIPTION, epilog=EPILOG, usage=USAGE,
        add_help=False,
    )  # fmt: skip
    _add_main_options(parser)
    _add_job_options(parser.add_argument_group("going on with a job, without the options above"))
    _add_reading_options(parser.add_argument_group("how the survey is read"))
    _add_code_options(parser.add_argument_group("how the field writes codes"))
    _add_place_options(parser.add_argument_group("where the survey lies"))
    _add_quality_options(parser.add_argument_group("what the survey is worth"))
    _add_surface_options(parser.add_argument_group("the surface (lengths in metres)"))
    _add_sheet_options(parser.add_argument_group("for the sheet and for others (lengths in metres)"))
    water.add_options(parser.add_argument_group("where the water runs"))
    _add_grading_options(parser.add_argument_group("grading a pad into the ground"))
    road.add_options(parser.add_argument_group("along a road"))
    volumes.add_options(parser.add_argument_group("volumes"))
    return parser


def job_options(words: Sequence[str]) -> Optional[argparse.Namespace]:
    """``--job`` with what may be said beside it, None where it is not given; mistakes become a SurveyError."""
    parser = _Parser(allow_abbrev=False, add_help=False)
    _add_job_options(parser)
    parser.add_argument("--debug", action="store_true")
    found, others = parser.parse_known_args(words)
    if found.job is None:
        given = {"--add": found.add or None, "--new-ground": found.new_ground, "--visit-offset": found.visit_offset}
        for option in (name for name, value in given.items() if value is not None):
            raise SurveyError(NEEDS_JOB, option=option)
        return None
    if others:
        raise SurveyError(JOB_ALONE, other=others[0])
    return found


def _add_job_options(group: Any) -> None:
    add = group.add_argument
    job = "go on with the job of this folder by the choices in its file job.json; beside it only these may be given"
    add("--job", metavar="DIR", type=Path, help=job)
    visit = "file of another visit to the site, which becomes part of the job; compared with the ground before it, it "
    visit += "is not in the surface until --new-ground says so; may be given again"
    add("--add", metavar="FILE", type=Path, action="append", default=[], help=visit)
    where = "where the ground of the last visit supersedes what differs from it by more than noise: all, none, or "
    add("--new-ground", metavar="all|none|FILE", help=where + "polygons (GeoJSON)")
    known = "how much higher the last visit is known to lie where nothing changed, m (default: found from that ground)"
    add("--visit-offset", metavar="M", type=number("--visit-offset"), help=known)


def _add_main_options(parser: argparse.ArgumentParser) -> None:
    add = parser.add_argument
    survey = "the survey: points as delimited text, a receiver log (NMEA 0183), or, through GDAL, GPX, KML, GeoJSON, "
    survey += "GeoPackage, Shapefile, XLSX or ODS, zipped or not; several files become one survey"
    add("survey", metavar="SURVEY", type=Path, nargs="+", help=survey)
    out = "folder of the job, for its results; made if missing. A job that is there goes on: what still holds is not "
    out += "made anew, and decisions by hand in its file stay"
    add("--out", metavar="DIR", type=Path, required=True, help=out)
    add("--crs", metavar="CRS", help="coordinate system, such as EPSG:25832; 'local' for a local grid in metres")
    add("--interval", metavar="N", type=positive("--interval"), required=True, help="height between contours")
    units = [unit.value for unit in WORKING_UNITS]
    add("--interval-unit", choices=units, help="unit of --interval and --base (default: that of the CRS's heights)")
    add("--base", metavar="N", type=number("--base"), default=0.0, help="a height that has a contour (default: 0)")
    add("--index-every", metavar="N", type=int, default=5, help="every so many contours an index contour (default: 5)")
    add("--debug", action="store_true", help="show where the program failed, if it does")
    add("-h", "--help", action="help", help="show this help and stop")


def _add_reading_options(group: Any) -> None:
    add = group.add_argument
    units = [unit.value for unit in LengthUnit]
    add("--columns", metavar="MAP", help="which column holds what; found from the header if left out")
    said = "unit of the coordinates in the survey (default: as the header says, else that of the CRS)"
    add("--unit", choices=units, help=said)
    add("--height-unit", choices=units, help="unit of its heights, if another")
    whose = "whose word on units counts where the header says others than the options or the CRS"
    add("--units-from", choices=["header", "options"], help=whose)
    angles = "how latitudes and longitudes are written, if not as the file shows (48.07021 is 48 deg 7 min 2.1 sec as "
    forms = ["degrees", "dd.mmss", "ddmm.m", "ddmmss.s", "gon", "radians", "arcmin", "arcsec", "1e-6", "1e-7", "1e-9",
             "ddmmsss", "ddmmssss", "ddmmsssss", "ddmmssssss", "ddmmsssssss", "0-360", "west"]  # fmt: skip
    add("--angles", choices=forms, help=angles + "dd.mmss; west: longitudes without a sign that count to the west)")
    marks = "numbers and words that stand for no value, with commas between, or none for none; found if left out"
    add("--no-value", metavar="LIST", help=marks)
    of = "what the heights in the file are of (default: as its header says; a receiver log: antenna)"
    add("--heights-of", choices=["ground", "antenna", "depth"], help=of)
    pole = "metres from the ground to the mount of the antenna, to bring heights of the antenna down to the ground"
    add("--pole-height", metavar="M", help=pole)
    add("--antenna-offset", metavar="M", help="metres from the mount to the antenna's phase centre (default: 0)")
    add(
        "--layer",
        metavar="NAME",
        default="",
        help="layer, sheet or file of an archive that holds the points; * for all",
    )
    add(
        "--comment",
        metavar="C",
        default="auto",
        help="what begins comment lines, none for no such lines (default: found)",
    )
    add("--delimiter", metavar="C", help="what separates columns, fixed for fixed places; found if left out")
    add("--decimal", metavar="C", help="decimal mark, . or ,; found if left out")
    add("--encoding", metavar="NAME", help="text encoding; found if left out")
    decisions = "decisions by hand on single points (CSV: line, status, reason; of several survey files also source; "
    decisions += "a name, where it stands there, must be that of the point)"
    add("--decisions", metavar="FILE", type=Path, help=decisions)


def _add_code_options(group: Any) -> None:
    add = group.add_argument
    codes = group.add_mutually_exclusive_group()
    codes.add_argument("--codes", metavar="FILE", type=Path, help="table of field codes (CSV), not the one shipped")
    codes.add_argument("--no-codes", action="store_true", help="do not read field codes; no breaklines")
    words = "words beside a code where a line begins, ends, closes, or runs in an arc, with commas between, one left "
    add("--code-words", metavar="B,E,C,A", help=words + "empty where there is none (default: BEGIN,END,CLOSE,ARC)")
    add("--code-separator", metavar="C", help="between several codes on one point; empty for none (default: /)")
    pattern = "regular expression of a code with the groups (?P<code>), and (?P<line>) and (?P<words>) if there are any"
    add("--code-pattern", metavar="REGEX", help=pattern)
    add("--line-column", metavar="NAME", help="column with the line number, where it does not stand in the code")
    add("--word-column", metavar="NAME", help="column with the words, where they do not stand beside the code")
    arcs = "how far an arc may stand off the chords that replace it (default: 0.01)"
    add("--arc-tolerance", metavar="M", type=positive("--arc-tolerance"), help=arcs)


def _add_place_options(group: Any) -> None:
    add = group.add_argument
    source = "CRS of the coordinates in the files, if another; geographic for degrees (default for these: EPSG:4326)"
    add("--source-crs", metavar="CRS", help=source)
    accept = "coordinate operation to accept though a better one is known; may be given again"
    add("--accept", metavar="NAME", action="append", default=[], help=accept)
    correct = "read lines outside the area of use as this cause says, such as swapped; as-read to leave them there"
    add("--correct", metavar="CAUSE", default="", help=correct)
    shift = "add metres to the heights from a line of the file on, such as 1153:+0.234; several parted by commas"
    add("--shift-heights", metavar="LINE:METRES", default="", help=shift)
    near = (
        "a place near the site, as 51.45N,9.0E, or a layer there (GeoJSON); a CRS that puts the site elsewhere is told"
    )
    add("--near", metavar="POS|FILE", action="append", default=[], help=near + "; may be given again")
    kinds = ["orthometric", "ellipsoidal"]
    add("--heights", choices=kinds, help="heights wanted (default: as in the file; with --geoid: orthometric)")
    add("--heights-are", choices=kinds, help="what the heights in text files are, where they do not say it")
    add("--geoid", metavar="M|FILE", help="geoid separation: metres, or a grid that PROJ reads; see --heights")
    add("--control", metavar="FILE", type=Path, help="control points (CSV); the survey is local and is fitted to them")
    fits = ["plan", "space", "shift"]
    fit = "four parameters in plan, seven in space, or a mere shift of a survey in --crs whose base was wrong; for a "
    add("--control-fit", choices=fits, default=fits[0], help=fit + "shift one known point will do (default: plan)")
    reading = (
        "how survey and control are read where the fit is refused, such as mirrored or survey:ft; as-read to take "
    )
    add("--control-as", metavar="READING", default="", help=reading + "it as it is; the refusal names what fits")
    was = "position of the base as it was used: easting,northing[,height] in the unit of the CRS, or as "
    add("--base-was", metavar="POS", default="", help=was + "51.4512345N,9.0012345E[,height]")
    add("--base-is", metavar="POS", default="", help="position of the base as it was worked out afterwards")
    heights = ["shift", "plane", "keep"]
    add("--control-heights", choices=heights, default=heights[0], help="what a fit in plan does to heights")
    add("--leave-out", metavar="NAME", action="append", default=[], help="control point not used; may be given again")
    grid = group.add_mutually_exclusive_group()
    grid.add_argument("--ground-to-grid", action="store_true", help="the survey is on the ground; bring it to the grid")
    grid.add_argument("--grid-to-ground", action="store_true", help="bring it from the grid of --crs to the ground")
    origin = "origin of ground and grid, unit of the CRS (default: the middle; --ground-to-grid needs it)"
    add("--ground-origin", metavar="E,N", help=origin)
    add("--ground-factor", metavar="F", type=positive("--ground-factor"), help="combined factor, if it is prescribed")
    add("--ground-shift", metavar="E,N", default="0,0", help="added to ground coordinates; as --ground-shift=-5e5,-5e6")


def _add_quality_options(group: Any) -> None:
    add = group.add_argument
    check = group.add_mutually_exclusive_group()
    named = "check points by the tolerance set of this name (topographic or control, or one of --tolerances), as "
    usual = "it stands (default: topographic, but none of its limits rejects more than a tenth of the points unasked)"
    check.add_argument("--check", metavar="SET", help=named + usual)
    check.add_argument("--no-check", action="store_true", help="use every point that no hand or code rejects")
    add("--tolerances", metavar="FILE", type=Path, help="tolerance sets of your own (JSON)")
    tilt = (
        "whether the rover compensates the tilt of its pole, as whoever set it up knows; a limit of tilt counts only "
    )
    tilt += "where it does not (default: as the heights tell)"
    add("--tilt-compensated", choices=["yes", "no"], help=tilt)
    keep = "leave no flagged stretch out of the surface (default: one of 5 m or more is left out where all passes "
    keep += "that meet it, at least two and along half of it, say that it is off, by more than its doubt; decisions on "
    add("--keep-flagged", action="store_true", help=keep + "points go first)")
    add("--check-points", metavar="FILE", type=Path, help="independent check points (CSV) to test the surface against")
    wanted = "vertical class to be met by the ASPRS standards, RMSE in cm (default: the finest that is met)"
    add("--accuracy-class", metavar="CM", type=positive("--accuracy-class"), help=wanted)
    gap = "no place should be farther than this from a measured point, m; others are to be walked again (default: by "
    add("--max-gap", metavar="M", type=positive("--max-gap"), help=gap + "the distance of the passes)")


def _add_surface_options(group: Any) -> None:
    def limit(name: str, unit: str, text: str) -> None:
        group.add_argument(name, metavar=unit, type=positive(name), help=f"{text} (default: none)")

    def drawn(name: str, text: str) -> None:
        group.add_argument(name, metavar="FILE", type=Path, help=f"drawn by hand (GeoJSON): {text}")

    words = "lines that the points show: a GeoJSON file of them with your decisions, such as lines_found.geojson of an "
    words += "earlier run, or no to look for none (default: found anew, those with strong evidence are breaklines)"
    group.add_argument("--found-lines", metavar="FILE|no", help=words)
    group.add_argument("--edits", metavar="FILE", type=Path, help="edits of the surface by hand (JSON)")
    drawn("--boundary", "polygons or closed lines: the surface ends there; a ring in a ring is a hole")
    drawn("--breaklines", "lines or outlines of polygons that must be edges, with heights or without")
    drawn("--soft-lines", "the same, with heights taken from the surface, whatever the file gives")
    drawn("--voids", "polygons or closed lines that the surface leaves out, such as buildings")
    limit("--rim-edge", "M", "longest edge on the rim; triangles with a longer one are taken off")
    limit("--rim-radius", "M", "hollow outline: triangles at the rim with a wider circumcircle are taken off")
    limit("--rim-passes", "N", "the same, wider than so many times the distance of the passes; 1.5 is good")
    limit(
        "--rim-angle",
        "DEG",
        "slivers: triangles with a wider angle opposite their outer edge are taken off; 165 is good",
    )
    rules = ["refuse", "mean", "first"]
    crossings = (
        "height where lines cross or meet: refuse those that differ, the mean, or the first line's (default: refuse)"
    )
    group.add_argument("--crossings", choices=rules, default=rules[0], help=crossings)
    name, small = "--crossing-tolerance", "a difference up to this is not refused, the mean is taken (default: 0.05)"
    group.add_argument(name, metavar="M", type=positive(name, zero=True), default=0.05, help=small)


def _add_sheet_options(group: Any) -> None:
    def length(name: str, text: str, zero: bool = False) -> None:
        group.add_argument(name, metavar="M", type=positive(name, zero), help=text)

    length(
        "--smooth", "also contours for the sheet, smoothed by at most this in plan, with labels and spot heights", True
    )
    calm = "move heights by at most this for the sheet's contours, to calm noise (default: the noise of the survey)"
    length("--calm", calm, True)
    scale = f"scale 1 : N of the sheet, for which labels are placed (default: {SHEET_SCALE})"
    group.add_argument("--scale", metavar="N", type=positive("--scale"), help=scale)
    length("--dem", "also a grid of heights (DEM) with cells of this size")
    length("--thin", "also a surface with fewer points, within this in height", True)
    exchange = "also the surface with its lines and points in LandXML 1.2, surface.xml"
    group.add_argument("--landxml", action="store_true", help=exchange)
    drawing = "also a drawing of faces, lines, contours and points in DXF, surface.dxf"
    group.add_argument("--dxf", action="store_true", help=drawing)


def _add_grading_options(group: Any) -> None:
    def run(name: str, text: str) -> None:
        group.add_argument(name, metavar="N", type=positive(name), help=f"{text}, 1 : N (default: {PAD_RUN:g})")

    add = group.add_argument
    pad = "polygons to be graded (GeoJSON); properties level, fall, towards, cut_slope, fill_slope of one go first"
    add("--pad", metavar="FILE", type=Path, help=pad)
    level = "height of its middle, in the unit of --interval, or 'balance': where cut and fill balance"
    add("--pad-level", metavar="H", type=number_or_word("--pad-level", "balance"), help=level)
    add("--pad-fall", metavar="PCT", type=positive("--pad-fall", True), help="how steeply it falls (default: 0, level)")
    add("--pad-towards", metavar="DEG", type=number("--pad-towards"), help="which way, degrees from north (default: 0)")
    run("--cut-slope", "slopes of cut")
    run("--fill-slope", "slopes of fill")
    add("--corners", choices=["round", "mitre"], help="how slopes go round corners (default: round)")
    factor = "fill, compacted, from one cubic metre of cut, for the balance (default: 1)"
    add("--earth-factor", metavar="F", type=positive("--earth-factor"), help=factor)
    surplus = "fill to be left over by the balance, m3; below 0 to be brought in (default: 0)"
    add("--surplus", metavar="V", type=number("--surplus"), help=surplus)
