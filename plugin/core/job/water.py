"""Where the water runs, as part of the main job."""

from __future__ import annotations

from dataclasses import dataclass, replace
from pathlib import Path
from typing import Callable, Optional, Sequence, Tuple

from ..drainage.inlet_list import read_inlets
from ..drainage.ponds import PondOptions
from ..drainage.study import Hollows, Rain, WaterOptions, WaterStudy, study_water
from ..handover.water import write_catchment_areas, write_flow_paths, write_pond_areas
from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..progress import Progress
from ..report.labels import Words
from ..report.markup import Section
from ..report.results import JobResult
from ..report.water_sections import water_body
from .noise import point_noise

WATER_LINE = Text(
    "job.water_line",
    QT_TRANSLATE_NOOP(
        "core",
        "Water     ponds: {ponds}, {volume:.1f} m³ when full; catchments: {catchments}; {nowhere:.0f} m² of {area:.0f} "
        "m² drain nowhere",
    ),
)
TITLE = QT_TRANSLATE_NOOP("core", "Where the water runs")


@dataclass(frozen=True)
class WaterQuestion:
    """``inlets``: a file, None for none. ``full``: all ponds are full. ``min_depth``: of a pond, metres. ``rain``: for
    peak flows, None for none. The noise of heights is that of the survey as repeated points tell it."""

    inlets: Optional[Path] = None
    full: bool = False
    min_depth: float = 0.0
    rain: Optional[Rain] = None

    @property
    def stage(self) -> str:
        return "water"

    def answer(self, result: JobResult, progress: Progress) -> WaterAnswer:
        """Paths, ponds and catchments. Raises SurveyError for inlets that cannot be read."""
        inlets = () if self.inlets is None else read_inlets(self.inlets, result.crs)
        options = WaterOptions(
            PondOptions(point_noise(result), self.min_depth),
            hollows=Hollows.ALL_FULL if self.full else Hollows.PONDS_KEEP,
        )
        return WaterAnswer(study_water(result.surface.tin, inlets, replace(options, rain=self.rain), progress))


@dataclass(frozen=True)
class WaterAnswer:
    """What was found."""

    study: WaterStudy

    @property
    def messages(self) -> Tuple[Message, ...]:
        return self.study.messages

    @property
    def lines(self) -> Tuple[Message, ...]:
        study = self.study
        return (
            message(
                WATER_LINE, ponds=len(study.ponds), volume=study.standing, catchments=len(study.shares),
                nowhere=study.nowhere, area=study.tin.plan_area,
            ),
        )  # fmt: skip

    def sections(self, words: Words) -> Sequence[Section]:
        return (("water", words(TITLE), water_body(self.study, words)),)

    def write(self, folder: Path, translate: Callable[[str], str]) -> Sequence[Path]:
        """Paths with channels, ponds and catchments."""
        written = []
        for name, write in (
            ("flow_paths", write_flow_paths), ("ponds", write_pond_areas), ("catchments", write_catchment_areas)
        ):  # fmt: skip
            written.append(folder / f"{name}.geojson")
            write(self.study, written[-1])
        return written
