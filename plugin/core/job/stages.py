"""The stages of a job in the order of the work: what each is made from, and how."""

from __future__ import annotations

from dataclasses import fields, replace
from typing import Any, Callable, Mapping, NamedTuple, Optional, Tuple

from ..contours.sheet import draw_sheet
from ..contours.trace import trace_contours
from ..features.ground_lines import GroundLines
from ..handover.grid import large_grid
from ..linework.codes import CodeTable, default_code_table, read_code_table
from ..linework.constraints import Constraints
from ..linework.drawn import DRAWN, merge_constraints
from ..linework.drawn_file import DrawnFile
from ..linework.join import Linework, join_lines
from ..points.pointset import PointSet
from ..progress import Progress, named, part
from ..quality.check import SurveyCheck, check_survey
from ..quality.check_points import CheckPoints, read_check_points
from ..quality.coverage import CoverageOptions
from ..quality.judgement import Judgement, judge
from ..report.results import JobResult
from ..report.visits import Visits
from ..surface.build import Surface
from ..surface.edited import EditReport, build_surface_with_edits
from ..surface.edits import Edit, read_edits
from ..surface.inspection import inspect_surface
from ..surface.raster import GridFrame, grid_for
from ..surface.thin import Thinned, thin_surface
from ..surface.tin import Tin
from ..units import LengthUnit
from .decided import Decided, decide
from .lines import drawn_lines, look_for_lines
from .noise import checked_noise
from .place import Placed, place_survey
from .settings import JobSettings
from .visits import Alone, take_visits

#: Results so far, by the names of their stages.
Results = Mapping[str, Any]


class Stage(NamedTuple):
    """``name``: in the file of the job and in progress. ``choices``: fields of the settings that it looks at.
    ``takes``: stages whose results it takes. ``work``: makes its result. ``share`` of the whole time."""

    name: str
    choices: Tuple[str, ...]
    takes: Tuple[str, ...]
    work: Callable[[JobSettings, Results, Progress], Any]
    share: float


def _read(settings: JobSettings, done: Results, progress: Progress) -> Placed:
    return place_survey(settings, progress)


def _points(settings: JobSettings, done: Results, progress: Progress) -> PointSet:
    """The points alone: what is only told of their file and place changes nothing after it."""
    found: PointSet = done["read"].points
    return found


def _check(settings: JobSettings, done: Results, progress: Progress) -> Optional[SurveyCheck]:
    """The automatic checks, None where they are switched off."""
    if not settings.check:
        return None
    progress(0.0, "check")
    return check_survey(
        done["points"],
        _code_table(settings),
        settings.tolerances,
        convention=settings.convention,
        progress=named("check", progress),
        tilt_compensated=settings.tilt_compensated,
        keep_flagged=settings.keep_flagged,
    )


def _decide(settings: JobSettings, done: Results, progress: Progress) -> Decided:
    return decide(done["points"], done["check"], settings)


class Lines(NamedTuple):
    """``points``: marked where a line stands for them; ``linework``: None where field codes are not read; ``drawn``:
    lines drawn by hand; ``found``: lines that the points show, None where not looked for; ``constraints``: what the
    surface holds to."""

    points: PointSet
    linework: Optional[Linework]
    drawn: Tuple[DrawnFile, ...]
    found: Optional[GroundLines]
    constraints: Constraints


def _visits(settings: JobSettings, done: Results, progress: Progress) -> Visits:
    """Later visits; a job without any has no such stage."""

    def build(own: JobSettings, points: PointSet, share: Progress) -> Tuple[PointSet, Tin]:
        lines = _lines_of(own, points, part(share, 0.0, 0.4))
        built = _surface(own, {"lines": lines}, part(share, 0.4, 1.0))
        return built.edited.points, built.surface.tin

    def take(own: JobSettings, name: str, share: Progress) -> Alone:
        placed = _read(own, {}, part(share, 0.0, 0.2))
        check = _check(own, {"points": placed.points}, part(share, 0.2, 0.6))
        decided = decide(placed.points, check, settings, name)
        return Alone(placed, check, decided, *build(own, decided.points, part(share, 0.6, 1.0)))

    return take_visits(settings, done["decisions"].points, done["check"], take, build, progress)


def _lines(settings: JobSettings, done: Results, progress: Progress) -> Lines:
    visits: Optional[Visits] = done.get("visits")
    own = None if visits is None else visits.points
    return _lines_of(settings, done["decisions"].points if own is None else own, progress)


def _lines_of(settings: JobSettings, points: PointSet, progress: Progress) -> Lines:
    table = _code_table(settings)
    linework = None if table is None else join_lines(points, table, settings.convention)
    points = points if linework is None else linework.points
    coded = Constraints() if linework is None else linework.constraints
    files = drawn_lines(settings, points.crs)
    drawn = merge_constraints(*(one.lines.constraints for one in files))
    points, found = look_for_lines(points, coded, drawn, _edits(settings), settings, progress)
    # The lines of the field codes go first, then those drawn by hand, then those that the points show.
    constraints = merge_constraints(coded, drawn, Constraints() if found is None else found.breaklines)
    return Lines(points, linework, files, found, constraints)


class Built(NamedTuple):
    """The surface, and what became of the ``edits`` by hand."""

    surface: Surface
    edited: EditReport
    edits: Tuple[Edit, ...]


def _surface(settings: JobSettings, done: Results, progress: Progress) -> Built:
    lines, edits = done["lines"], _edits(settings)
    progress(0.0, "surface")
    built = build_surface_with_edits(lines.points, lines.constraints, settings.surface, edits, progress)
    return Built(*built, edits)


def _quality(settings: JobSettings, done: Results, progress: Progress) -> Judgement:
    built, check, found = done["surface"], done["check"], done["lines"].found
    progress(0.0, "quality")
    return judge(
        built.surface.tin,
        built.edited.points,
        check=check,
        checks=_check_points(settings, done["points"].crs),
        wanted_cm=settings.accuracy_class,
        limits=CoverageOptions(max_radius=settings.max_gap),
        repeat_sigma=None if check is None or check.noise is None else check.noise.total,
        unit=settings.contours.unit,
        progress=progress,
        constraints=built.edited.constraints,
        found=() if found is None else found.lines,
    )


def _contours(settings: JobSettings, done: Results, progress: Progress) -> Any:
    return trace_contours(done["surface"].surface.tin, settings.contours, progress)


def _findings(settings: JobSettings, done: Results, progress: Progress) -> Any:
    built = done["surface"]
    progress(0.0, "findings")
    return inspect_surface(
        built.surface.tin, built.edited.points, built.edited.constraints, progress=named("findings", progress)
    )


def _sheet(settings: JobSettings, done: Results, progress: Progress) -> Any:
    options = settings.sheet
    if options is None:
        return None
    if options.calm is None:
        options = replace(options, calm=checked_noise(done["check"]))
    return draw_sheet(done["surface"].surface.tin, settings.contours, options, named("sheet", progress))


def _thin(settings: JobSettings, done: Results, progress: Progress) -> Optional[Thinned]:
    return None if settings.thin is None else thin_surface(done["surface"].surface.tin, settings.thin, progress)


def _grid(settings: JobSettings, done: Results, progress: Progress) -> Optional[GridFrame]:
    return None if settings.dem is None else grid_for(done["surface"].surface.tin, settings.dem)


#: What is said of a place, a decision or a file does not change points or surface, so it stands in stages of its own.
_OF_CODES = ("codes", "use_codes", "convention")
_DRAWN = tuple(one.name for one in DRAWN)
_LATER = {
    "out", "contours", "decisions", "decided", *_OF_CODES, *_DRAWN, "surface", "edits", "sheet", "dem", "thin", "check",
    "tolerances", "tilt_compensated", "keep_flagged", "accuracy_class", "max_gap", "find_lines", "found_lines",
    "visits", "others",
}  # fmt: skip

STAGES: Tuple[Stage, ...] = (
    Stage("read", tuple(each.name for each in fields(JobSettings) if each.name not in _LATER), (), _read, 0.15),
    Stage("points", (), ("read",), _points, 0.0),
    Stage(
        "check", ("check", "tolerances", "tilt_compensated", "keep_flagged", *_OF_CODES), ("points",), _check, 0.2
    ),
    Stage("decisions", ("decisions", "decided"), ("points", "check"), _decide, 0.0),
    Stage(
        "lines", (*_OF_CODES, *_DRAWN, "find_lines", "found_lines", "edits", "accept"), ("decisions",), _lines, 0.05
    ),
    Stage("surface", ("surface", "edits"), ("lines",), _surface, 0.25),
    Stage(
        "quality", ("check_points", "accuracy_class", "max_gap", "contours.unit", "unit", "height_unit"),
        ("points", "check", "lines", "surface"), _quality, 0.05,
    ),
    Stage("contours", ("contours",), ("surface",), _contours, 0.05),
    Stage("findings", (), ("surface",), _findings, 0.03),
    Stage("sheet", ("sheet", "contours"), ("check", "surface"), _sheet, 0.05),
    Stage("thin", ("thin",), ("surface",), _thin, 0.02),
    Stage("dem", ("dem",), ("surface",), _grid, 0.0),
)  # fmt: skip

#: Between decisions and lines, where there are later visits: read and made a surface each as the first one.
_OF_SURFACE = ("surface", "edits", *_OF_CODES, *_DRAWN, "find_lines", "found_lines", "accept")
_OF_VISITS = tuple(dict.fromkeys(
    (*STAGES[0].choices, *STAGES[2].choices, "decisions", "decided", *_OF_SURFACE, "visits")
))  # fmt: skip
VISITS = Stage("visits", _OF_VISITS, ("check", "decisions"), _visits, 0.4)


def stages_of(settings: JobSettings) -> Tuple[Stage, ...]:
    """The stages of a job with these settings."""
    if not settings.visits:
        return STAGES
    number = [stage.name for stage in STAGES].index("lines")
    lines = STAGES[number]._replace(takes=("decisions", "visits"))
    decisions = STAGES[number - 1]
    if settings.decisions is not None or settings.decided:  # they may name the file of a visit
        decisions = decisions._replace(choices=(*decisions.choices, "visit_files"))
    return (*STAGES[: number - 1], decisions, VISITS, lines, *STAGES[number + 1 :])


#: What a question may look at.
OF_QUESTIONS = ("read", "check", "lines", "surface")


def result_of(settings: JobSettings, done: Results) -> JobResult:
    """The results of all stages as the report reads them, without answers and files."""
    placed, built, decided, lines = done["read"], done["surface"], done["decisions"], done["lines"]
    dem = done["dem"]
    return JobResult(
        survey=placed.intake.survey,
        sources=placed.intake.files,
        merged=placed.intake.merged,
        georeference=placed.records,
        fitted=placed.fitted,
        aside=placed.intake.aside,
        place_messages=placed.messages,
        where=placed.where,
        accept=settings.accept,
        points=lines.points,
        linework=lines.linework,
        drawn=lines.drawn,
        ground_lines=lines.found,
        surface=built.surface,
        contours=done["contours"],
        decisions_file=decided.source,
        messages=decided.messages,
        edits=built.edits,
        edits_file="" if settings.edits is None else str(settings.edits),
        edited=built.edited,
        options=settings.surface,
        quality=_with_visits(done["quality"], done.get("visits")),
        check=done["check"],
        overrides=decided.overrides,
        visits=done.get("visits"),
        findings=done["findings"],
        sheet=done["sheet"],
        thinned=done["thin"],
        dem=dem,
        file_messages=() if dem is None else large_grid(dem),
        others=settings.others,
    )


def _with_visits(quality: Judgement, visits: Optional[Visits]) -> Judgement:
    """``quality`` with what visits say against claims: the heights of one that meets none before it may be any."""
    alone = () if visits is None else visits.untied
    if not alone:
        return quality
    return replace(quality, claims=replace(quality.claims, against=(*alone, *quality.claims.against)))


def _check_points(settings: JobSettings, crs: Optional[Any]) -> Optional[CheckPoints]:
    """The independent check points, in ``crs``; on a local grid in the unit of the survey."""
    if settings.check_points is None:
        return None
    if crs is not None:
        return read_check_points(settings.check_points, crs=crs)
    unit = settings.unit or LengthUnit.METRE
    return read_check_points(settings.check_points, unit=unit, height_unit=settings.height_unit or unit)


def _code_table(settings: JobSettings) -> Optional[CodeTable]:
    if not settings.use_codes:
        return None
    return default_code_table() if settings.codes is None else read_code_table(settings.codes)


def _edits(settings: JobSettings) -> Tuple[Edit, ...]:
    return () if settings.edits is None else read_edits(settings.edits)
