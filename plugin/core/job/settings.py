"""What the user asks of the main job."""

from __future__ import annotations

from dataclasses import dataclass, field
from pathlib import Path
from typing import Optional, Protocol, Tuple

from ..contours.lines import ContourOptions
from ..contours.sheet import SheetOptions
from ..georeference.level_shift import LevelShift
from ..georeference.site import ControlOptions, GroundOptions
from ..linework.convention import DEFAULT_CONVENTION, FieldConvention
from ..points.decided import PointDecision
from ..points.geographic import HeightKind
from ..points.said_units import AngleForm
from ..progress import Progress
from ..quality.tolerances import ToleranceSet
from ..report.results import Answer, JobResult
from ..surface.build import SurfaceOptions
from ..units import LengthUnit
from .plain import MAY_BE_FILE


class Question(Protocol):
    """What is asked of the finished surface: a volume, where water runs, whether a road meets its grades.

    Each kind is a module of this folder. ``stage``: its name in progress.
    """

    @property
    def stage(self) -> str: ...

    def answer(self, result: JobResult, progress: Progress) -> Answer:
        """The answer from what the job has found so far; raises SurveyError."""
        ...


@dataclass(frozen=True)
class Visit:
    """Another visit to the site: its ``file``, and the user's word on it.

    ``new_ground``: where its ground supersedes what was there before: "" nowhere, ``EVERYWHERE``, or a GeoJSON file of
    polygons. ``offset``: how much higher it is known to lie where nothing changed, metres; None finds that from the
    ground that did not change.
    """

    file: Path
    new_ground: str = field(default="", metadata=MAY_BE_FILE)
    offset: Optional[float] = None


#: The word of a visit whose ground counts wherever it was walked.
EVERYWHERE = "all"


@dataclass(frozen=True)
class JobSettings:
    """What the user asks for.

    ``survey``: the file. ``out``: folder of the results, made if missing. ``crs``: an authority code, WKT or
    the like, ``"local"`` for a local grid, None where the user said nothing (an error). ``columns``,
    ``delimiter``, ``decimal``, ``encoding``: as the reader takes them, None to find out.
    ``unit``: of the file, where None as its header says, else that of the CRS; ``height_unit``: of its heights, where
    None as the header says, else the same as ``unit`` if that is given, else that of the CRS. ``comment`` to
    ``units_from``: as :func:`.points.survey.read_survey` takes them. ``decisions``: file of decisions by hand;
    ``decided``: those that the job keeps itself, which go before it.
    ``codes``: code table, the one shipped where None; ``use_codes`` False reads no field codes; ``convention``: how
    these are written.
    ``surface``: rim and crossings.
    ``edits``: file of edits of the surface by hand. ``breaklines``, ``soft_lines`` (which take their heights from the
    surface), ``boundary``, ``voids``: GeoJSON files of lines and polygons drawn by hand.
    ``sheet``: how to finish contours for a sheet; ``dem``: cell of a grid of heights, metres; ``thin``: vertical
    tolerance of a thinned surface, metres; None makes none.

    What the survey is worth: ``check``: find and reject blunders before the surface is built, single points held to
    ``tolerances`` (None: the usual set, see :func:`.check_survey`); ``tilt_compensated``: whether the rover
    compensates tilt, None where the file shall tell; ``keep_flagged``: leave no flagged stretch out of the surface.
    ``check_points``: file of independent check points in ``crs``;
    ``accuracy_class``: vertical class to be met, cm RMSE. ``max_gap``: no place should be farther from a measured
    point, metres, None for what the passes make usual.

    ``find_lines``: look for lines of the ground that the points show; ``found_lines``: file of such lines with
    decisions.

    Where the survey lies: ``more``: further files of the site, merged with it. ``source_crs``: the CRS of the
    coordinates in the files, where it is not ``crs``; WGS 84 for degrees where None. ``heights_are``, ``heights``,
    ``accept``, ``correct``, ``level_shifts``: see :class:`.georeference.intake.IntakeOptions`; ``geoid``: metres, or a
    file with a grid.
    ``control``: file of control points in ``crs``, to which the survey, then in local coordinates, is fitted as
    ``fit`` says. ``ground``: to or from distances on the ground. ``base_was``, ``base_is``: positions of the base as
    it was used and as it is, see :func:`.georeference.base_shift.parse_position`. ``near``: places near the site, in
    degrees with letters, or GeoJSON files.

    ``visits``: files of later visits, each compared with the ground before it; read as the files of the survey are.

    ``others``: files made elsewhere that are handed over too, such as a plan; the report lists them.

    ``questions``: what is asked of the finished surface, answered in this order.
    """

    survey: Path
    out: Path
    contours: ContourOptions
    crs: Optional[str] = None
    columns: Optional[str] = None
    delimiter: Optional[str] = None
    decimal: Optional[str] = None
    encoding: Optional[str] = None
    unit: Optional[LengthUnit] = None
    height_unit: Optional[LengthUnit] = None
    comment: str = "auto"
    layer: str = ""
    angles: Optional[AngleForm] = None
    no_value: Optional[Tuple[str, ...]] = None
    pole_height: Optional[float] = None
    antenna_offset: Optional[float] = None
    heights_of: str = ""
    units_from: str = ""
    decisions: Optional[Path] = None
    decided: Tuple[PointDecision, ...] = ()
    codes: Optional[Path] = None
    use_codes: bool = True
    convention: FieldConvention = DEFAULT_CONVENTION
    surface: SurfaceOptions = SurfaceOptions()  # noqa: RUF009  frozen
    edits: Optional[Path] = None
    breaklines: Optional[Path] = None
    soft_lines: Optional[Path] = None
    boundary: Optional[Path] = None
    voids: Optional[Path] = None
    sheet: Optional[SheetOptions] = None
    dem: Optional[float] = None
    thin: Optional[float] = None
    source_crs: Optional[str] = None
    heights: Optional[HeightKind] = None
    accept: Tuple[str, ...] = ()
    more: Tuple[Path, ...] = ()
    heights_are: Optional[HeightKind] = None
    geoid: Optional[str] = field(default=None, metadata=MAY_BE_FILE)
    correct: str = ""
    level_shifts: Tuple[LevelShift, ...] = ()
    control: Optional[Path] = None
    fit: ControlOptions = ControlOptions()  # noqa: RUF009  frozen
    ground: Optional[GroundOptions] = None
    base_was: str = ""
    base_is: str = ""
    near: Tuple[str, ...] = field(default=(), metadata=MAY_BE_FILE)
    check: bool = True
    tolerances: Optional[ToleranceSet] = None
    tilt_compensated: Optional[bool] = None
    keep_flagged: bool = False
    check_points: Optional[Path] = None
    accuracy_class: Optional[float] = None
    max_gap: Optional[float] = None
    find_lines: bool = True
    found_lines: Optional[Path] = None
    visits: Tuple[Visit, ...] = ()
    others: Tuple[Path, ...] = ()
    questions: Tuple[Question, ...] = ()

    @property
    def visit_files(self) -> Tuple[str, ...]:
        """Names of the files of the later visits."""
        return tuple(visit.file.name for visit in self.visits)
