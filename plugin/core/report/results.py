"""What the main job found, as the report reads it."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Any, Callable, Optional, Protocol, Sequence, Tuple

from ..contours.lines import Contours
from ..contours.sheet import Sheet
from ..features.ground_lines import GroundLines
from ..georeference.record import Georeference
from ..georeference.site import Fitted
from ..handover.checksums import FileDigest
from ..linework.drawn_file import DrawnFile
from ..linework.join import Linework
from ..messages import Message, worst_first
from ..points.delimited import PointFile
from ..points.merge import Merged
from ..points.pointset import PointSet
from ..points.rejects import LineAccount
from ..quality.check import SurveyCheck
from ..quality.judgement import Judgement
from ..quality.overrides import OverrideReport
from ..surface.build import Surface, SurfaceOptions
from ..surface.edited import EditReport
from ..surface.edits import Edit
from ..surface.findings import Finding
from ..surface.raster import GridFrame
from ..surface.thin import Thinned
from ..units import LengthUnit, SiteUnits, site_units
from .labels import Words
from .markup import Section
from .visits import Visits


class Answer(Protocol):
    """What was found out about the finished surface beyond its contours: volumes, water, grades."""

    @property
    def messages(self) -> Tuple[Message, ...]:
        """What was noticed, for the remarks of the report."""
        ...

    @property
    def lines(self) -> Tuple[Message, ...]:
        """The answer in a line or a few for a terminal, in the form of the other lines of the summary."""
        ...

    def sections(self, words: Words) -> Sequence[Section]:
        """Sections for the report."""
        ...

    def write(self, folder: Path, translate: Callable[[str], str]) -> Sequence[Path]:
        """Write its files into ``folder``; their paths. Each file appears only when it is whole."""
        ...


@dataclass(frozen=True)
class JobResult:
    """All results of one run.

    ``survey``: what was read, of several files merged; ``sources``: each file as read; ``merged``: None for one file.
    ``georeference``: what was done to coordinates, in order; ``fitted``: the fit to control, if there was one;
    ``aside``: what was put aside before all else; ``place_messages``: what was noticed about where points lie;
    ``where``: that in words; ``accept``: names of the coordinate operations that the user takes.
    ``points``: the points with every decision made. ``decisions_file``: where
    decisions by hand came from, "" if there were none. ``linework``: None when field codes were not read;
    ``drawn``: files of lines drawn by hand; ``ground_lines``: lines that the points show, None where not looked for.
    ``messages``: what was noticed outside the stages that carry their own. ``options``: how the surface was made.
    ``edits``: edits of the surface by hand, from ``edits_file`` ("" if there were none); ``edited``: what became of
    them. ``quality``: what the survey is worth. ``check``: the automatic checks, None where switched off;
    ``overrides``: where a hand overruled them, None without decisions or checks.
    ``visits``: later visits to the site, None where there are none.
    ``findings``: places of the surface to look at. ``sheet``: contours finished for a sheet, ``thinned``: a
    surface with fewer vertices, ``dem``: frame of the grid of heights; None where not asked for. ``file_messages``:
    remarks on the files. ``answers``: to the questions asked of the surface. ``others``: files made elsewhere
    that are handed over too. ``of_run``: what is told of this run alone, and not in the report. ``files``: what has
    been written so far; ``handed_over``: these and the others, digested.
    """

    survey: PointFile
    points: PointSet
    linework: Optional[Linework]
    surface: Surface
    contours: Contours
    edited: EditReport
    quality: Judgement
    check: Optional[SurveyCheck] = None
    overrides: Optional[OverrideReport] = None
    drawn: Tuple[DrawnFile, ...] = ()
    ground_lines: Optional[GroundLines] = None
    options: SurfaceOptions = SurfaceOptions()  # noqa: RUF009  frozen
    decisions_file: str = ""
    messages: Tuple[Message, ...] = ()
    edits: Tuple[Edit, ...] = ()
    edits_file: str = ""
    visits: Optional[Visits] = None
    findings: Tuple[Finding, ...] = ()
    sheet: Optional[Sheet] = None
    thinned: Optional[Thinned] = None
    dem: Optional[GridFrame] = None
    file_messages: Tuple[Message, ...] = ()
    files: Tuple[Path, ...] = ()
    sources: Tuple[PointFile, ...] = ()
    merged: Optional[Merged] = None
    georeference: Tuple[Georeference, ...] = ()
    fitted: Optional[Fitted] = None
    aside: Tuple[Message, ...] = ()
    place_messages: Tuple[Message, ...] = ()
    where: Optional[Message] = None
    accept: Tuple[str, ...] = ()
    answers: Tuple[Answer, ...] = ()
    others: Tuple[Path, ...] = ()
    of_run: Tuple[Message, ...] = ()
    handed_over: Tuple[FileDigest, ...] = ()

    @property
    def crs(self) -> Optional[Any]:
        """The CRS of every coordinate; None for a local grid."""
        return self.points.crs

    @property
    def shown_height_unit(self) -> LengthUnit:
        """Heights are told in the unit of the contours."""
        return self.contours.options.unit

    @property
    def units(self) -> SiteUnits:
        """The units in which its lengths are told."""
        return site_units(self.crs, self.shown_height_unit)

    @property
    def account(self) -> LineAccount:
        """Of all lines of the files whose points are among ``points``."""
        later = () if self.visits is None else self.visits.later
        return sum((each.account for each in later if each.area is not None), self.survey.account)

    @property
    def statements(self) -> Tuple[Message, ...]:
        """What was done to coordinates, each sentence once."""
        later = () if self.visits is None else self.visits.records
        said = {str(one): one for record in (*self.georeference, *later) for one in record.statements}
        return tuple(said.values())

    @property
    def remarks(self) -> Tuple[Message, ...]:
        """All that the stages noticed, the worst first, else in the order of the work."""
        linework = () if self.linework is None else self.linework.messages
        drawn = tuple(said for file in self.drawn for said in file.lines.messages)
        ground = () if self.ground_lines is None else self.ground_lines.messages
        surface = (*self.surface.report.messages, *self.edited.messages)
        place = (*self.place_messages, *(() if self.visits is None else self.visits.messages))
        answers = tuple(said for answer in self.answers for said in answer.messages)
        lines = (*linework, *drawn, *ground)
        every = (*self.survey.messages, *place, *self.messages, *lines, *surface, *answers, *self.file_messages)
        return tuple(worst_first(every))
