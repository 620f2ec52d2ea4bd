"""Pads graded into the surveyed ground, as part of the main job."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Any, Callable, Optional, Sequence, Tuple

from ..confidence import NORMAL_95
from ..earthwork.balance import Balance
from ..earthwork.design_lines import DAYLIGHT_KINDS
from ..earthwork.graded_site import site_of_pads
from ..earthwork.grading_study import GradingStudy, study_grading, with_balance
from ..earthwork.materials import EarthFactors
from ..earthwork.pad_file import PadShape, read_pads
from ..earthwork.pads import PadDesign, balance_pads, grade_pads, volume_of_pads
from ..earthwork.plane import plane_falling
from ..earthwork.side_slopes import SideSlopes
from ..earthwork.study import StudyOptions
from ..handover.design import write_design_lines
from ..handover.mesh import write_2dm
from ..handover.projection import write_prj
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..progress import Progress, part
from ..report.grading_sections import grading_sections
from ..report.labels import Words
from ..report.markup import Section
from ..report.results import JobResult
from ..surface.locate import heights_at
from ..surface.tin import Tin
from ..units import LengthUnit
from .noise import survey_certainty

GRADED_LINE = Text(
    "job.graded_line",
    QT_TRANSLATE_NOOP(
        "core",
        "Grading   pads: {count}; cut {cut:.1f} ± {cut_95:.1f} m³, fill {fill:.1f} ± {fill_95:.1f} m³ (95 %), "
        "{area:.0f} m² taken",
    ),
)
BALANCED_LINE = Text(
    "job.balanced_line",
    QT_TRANSLATE_NOOP("core", "Balance   at {height:.3f} ± {sigma_95:.3f} {unit}, fill from one of cut {factor:g}"),
)
NO_LEVEL = Text(
    "job.pad_level",
    QT_TRANSLATE_NOOP(
        "core", "{file}: nothing says how high {name} is; give --pad-level, a height or “balance”, or a property level."
    ),
)


@dataclass(frozen=True)
class GradingQuestion:
    """Grade the pads of the file ``pad``.

    ``level``: metres; ``balance``: find it in place of that. ``fall``: per cent, towards the azimuth ``towards``
    (degrees). Properties of a feature (see :mod:`..earthwork.pad_file`; lengths in ``unit``) stand over these.
    ``offset_sigma``: doubt of the survey's level, metres.
    """

    pad: Path
    level: Optional[float] = None
    balance: bool = False
    fall: float = 0.0
    towards: float = 0.0
    slopes: SideSlopes = SideSlopes()  # noqa: RUF009  frozen
    factors: EarthFactors = EarthFactors()  # noqa: RUF009  frozen
    surplus: float = 0.0
    unit: LengthUnit = LengthUnit.METRE
    offset_sigma: float = 0.01

    @property
    def stage(self) -> str:
        return "grading"

    def answer(self, result: JobResult, progress: Progress) -> GradingAnswer:
        """The graded pads. Raises SurveyError."""
        tin = result.surface.tin
        shapes, said = read_pads(self.pad, result.crs, result.accept)
        pads = [self._design(k, shape, tin) for k, shape in enumerate(shapes, 1)]
        factor = self.factors.compacted * (1 - self.factors.unusable)
        balanced: Optional[Balance] = None
        if self.balance:
            balanced = balance_pads(tin, pads, factor, self.surplus, part(progress, 0.0, 0.3))
        shift = 0.0 if balanced is None else balanced.shift
        graded = grade_pads(tin, [pad.raised(shift) for pad in pads], part(progress, 0.3, 0.4))
        options = StudyOptions(existing=survey_certainty(result), factors=self.factors, offset_sigma=self.offset_sigma)
        found = study_grading(site_of_pads(tin, graded), options, progress=part(progress, 0.4, 0.7))
        if balanced is not None:
            found = with_balance(
                found, balanced, _first_height(pads), lambda by: volume_of_pads(tin, [pad.raised(by) for pad in pads]),
                factor, self.surplus, progress=part(progress, 0.7, 1.0),
            )  # fmt: skip
        return GradingAnswer(found, result.crs, result.shown_height_unit, said)

    def _design(self, k: int, shape: PadShape, tin: Tin) -> PadDesign:
        given, name = shape.numbers, shape.name or str(k)
        ring = shape.rings[0]
        middle = (ring.min(axis=0) + ring.max(axis=0)) / 2
        level = given["level"] * self.unit.metres if "level" in given else self.level
        if level is None and self.balance:
            ground = heights_at(tin, ring)
            level = float(ground[ground == ground].mean()) if (ground == ground).any() else tin.height_range[0]
        if level is None:
            raise SurveyError(NO_LEVEL, file=str(self.pad), name=name)
        fall, towards = given.get("fall", self.fall), given.get("towards", self.towards)
        plane = plane_falling(level, float(middle[0]), float(middle[1]), fall, towards)
        slopes = SideSlopes(
            given.get("cut_slope", self.slopes.cut_run), given.get("fill_slope", self.slopes.fill_run),
            self.slopes.corner,
        )  # fmt: skip
        return PadDesign(name, shape.rings, plane, slopes)


def _first_height(pads: Sequence[PadDesign]) -> float:
    """The height of a single pad at its middle; nan for several, which have none in common."""
    return pads[0].plane.height if len(pads) == 1 else float("nan")


@dataclass(frozen=True)
class GradingAnswer:
    """What came of the pads; heights are told in ``unit``. ``of_file``: what is to be told of the file of pads."""

    study: GradingStudy
    crs: Optional[Any]
    unit: LengthUnit
    of_file: Tuple[Message, ...] = ()

    @property
    def messages(self) -> Tuple[Message, ...]:
        return (*self.of_file, *self.study.messages)

    @property
    def lines(self) -> Tuple[Message, ...]:
        doubt, site = self.study.study.doubt, self.study.site
        said = [
            message(
                GRADED_LINE, count=len(site.pads), cut=doubt.cut.value, cut_95=doubt.cut.half_95, fill=doubt.fill.value,
                fill_95=doubt.fill.half_95, area=site.design.plan_area,
            )
        ]  # fmt: skip
        balanced = self.study.balanced
        if balanced is not None:
            height, sigma = balanced.height / self.unit.metres, NORMAL_95 * balanced.sigma / self.unit.metres
            said.append(
                message(BALANCED_LINE, height=height, sigma_95=sigma, unit=self.unit.symbol, factor=balanced.factor)
            )
        return tuple(said)

    def sections(self, words: Words) -> Sequence[Section]:
        return grading_sections(self.study, words)

    def write(self, folder: Path, translate: Callable[[str], str]) -> Sequence[Path]:
        """The design, all of the ground with it, the design's lines, and those of daylight alone."""
        site = self.study.site
        written = []
        for name, tin in (("pad.2dm", site.design), ("pad_finished.2dm", site.finished)):
            write_2dm(tin, folder / name)
            projection = write_prj(folder / name, self.crs)
            written += [folder / name, *([] if projection is None else [projection])]
        daylight = [line for line in site.lines if line.kind in DAYLIGHT_KINDS]
        for name, lines in (("daylight", daylight), ("pad_lines", list(site.lines))):
            written.append(folder / f"{name}.geojson")
            write_design_lines(name, lines, self.crs, written[-1])
        return written
