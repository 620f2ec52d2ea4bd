"""Asked of the job: how a road lies on the surface, and whether it keeps its limits."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Callable, List, Optional, Sequence, Tuple

import numpy as np

from ..alignment.line import Alignment, make_alignment
from ..alignment.line_file import read_line
from ..alignment.noise import survey_noise
from ..alignment.rules import read_least_k, read_rules
from ..alignment.slopes import Sigma
from ..alignment.stations import parse_equations, parse_station
from ..alignment.study import RoadOptions, RoadStudy, study_road
from ..alignment.verdicts import Verdict
from ..drainage.inlet_list import read_inlets
from ..georeference.crs import plan_unit
from ..handover.road_tables import write_checks, write_profile, write_sections
from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..papers import Paper
from ..progress import Progress
from ..quality.noise import USUAL_DRIFT, USUAL_SIGMA
from ..report.labels import Words
from ..report.markup import Section
from ..report.profile_sheets import ProfileSheet, write_profile_sheets
from ..report.results import JobResult
from ..report.road_sections import road_section
from ..report.section_sheets import SectionSheet, fitting_scale, write_section_sheets
from ..surface.tin import Tin

ROAD_LINE = Text(
    "job.road_line",
    QT_TRANSLATE_NOOP(
        "core",
        "Road      {name}, {length:.1f} {unit}; stretches by the limits: {passed} pass, {failed} fail, "
        "{close} too close to tell",
    ),
)


@dataclass(frozen=True)
class RoadQuestion:
    """``line``: GeoJSON file with one line in the CRS of the job. ``rules``, ``speeds``: tables of limits and of least
    K, the shipped one and none where None. ``inlets``: a file of gullies, None for none. ``stations``: interval of
    stations and cross-sections, ``start``: station of the line's beginning, ``equations``: as
    :func:`..alignment.stations.parse_equations`; in the unit of the CRS. ``lane``, ``half_width``: half widths (m) of
    the lane for crossfall and of the cross-sections. ``paper``: of sheets.
    """

    line: Path
    rules: Optional[Path] = None
    speeds: Optional[Path] = None
    inlets: Optional[Path] = None
    stations: float = 10.0
    start: str = "0"
    equations: str = ""
    lane: float = 2.0
    half_width: float = 10.0
    paper: Paper = Paper.A4

    @property
    def stage(self) -> str:
        return "road"

    def answer(self, result: JobResult, progress: Progress) -> RoadAnswer:
        """Raises SurveyError for files that cannot be read and a line that is not on the surface."""
        unit = plan_unit(result.crs)
        rules = None if self.rules is None else read_rules(self.rules)
        speeds = () if self.speeds is None else read_least_k(self.speeds)
        xy, name = read_line(self.line, result.crs)
        line = make_alignment(xy, name, parse_station(self.start, unit), parse_equations(self.equations, unit), unit)
        tin = result.surface.tin
        inlets = () if self.inlets is None else read_inlets(self.inlets, result.crs)
        places = tuple(part for inlet in inlets for part in inlet.parts)
        lane = (-self.lane, self.lane)
        options = RoadOptions(self.stations, self.half_width, lane, inlets=places, rules=rules, speeds=speeds)
        name = Path(result.survey.points.source).stem  # what drawings call the surface, in any language
        study = study_road(line, [(name, tin)], _noise(result, line), options, progress)
        return RoadAnswer(study, tin, self.paper)


def _noise(result: JobResult, line: Alignment) -> Sigma:
    """As the checks of the survey found it, with the points' times; what is usual where they could not."""
    sigma, drift = USUAL_SIGMA, USUAL_DRIFT
    found = None if result.check is None else result.check.noise
    if found is not None and np.isfinite(found.total) and found.total > 0:
        sigma, drift = found.total, min(found.drift, found.total)
    return survey_noise(line, result.surface.tin, result.edited.points.time, sigma, drift)


@dataclass(frozen=True)
class RoadAnswer:
    """A road on the surface of the job."""

    study: RoadStudy
    tin: Tin
    paper: Paper

    @property
    def messages(self) -> Tuple[Message, ...]:
        return self.study.messages

    @property
    def lines(self) -> Tuple[Message, ...]:
        line, stretches = self.study.line, self.study.checks.stretches
        passed, failed, close = (
            sum(each.verdict is kind for each in stretches) for kind in (Verdict.PASS, Verdict.FAIL, Verdict.TOO_CLOSE)
        )
        length, unit = line.length / line.unit.metres, line.unit.symbol
        return (
            message(ROAD_LINE, name=line.name, length=length, unit=unit, passed=passed, failed=failed, close=close),
        )

    def sections(self, words: Words) -> Sequence[Section]:
        return (road_section(self.study, words),)

    def write(self, folder: Path, translate: Callable[[str], str]) -> Sequence[Path]:
        """Three tables and two sheets."""
        study = self.study
        names = ("profile.csv", "sections.csv", "checks.csv", "profile.pdf", "sections.pdf")
        written: List[Path] = [folder / name for name in names]
        write_profile(study.profile, study.stations, self.tin.crs, written[0], study.grades, study.crossfalls)
        write_sections(study.sections, self.tin.crs, written[1])
        write_checks(study.checks, self.tin.crs, written[2])
        sheet = ProfileSheet(self.paper)
        write_profile_sheets(study.profile, written[3], sheet, study.fit, study.grades, translate)
        scale = fitting_scale(study.sections, SectionSheet(self.paper))
        write_section_sheets(study.sections, written[4], SectionSheet(self.paper, scale=scale), translate=translate)
        return written
