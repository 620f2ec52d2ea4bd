"""What a basin of the surveyed ground holds, as part of the main job."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Callable, Sequence, Tuple

import numpy as np

from ..earthwork.basin import Basin, examine_basin
from ..handover.volumes import write_storage
from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..progress import Progress
from ..report.labels import Words
from ..report.markup import Section
from ..report.results import JobResult
from ..report.storage_page import storage_body
from ..units import LengthUnit
from .noise import survey_certainty

BASIN_LINE = Text(
    "job.basin_line",
    QT_TRANSLATE_NOOP(
        "core", "Basin     holds {volume:.2f} ± {half:.2f} m³ (95 %) on {area:.1f} m², spills at {level:.3f} {unit}"
    ),
)
STORAGE = QT_TRANSLATE_NOOP("core", "Storage of the basin")


@dataclass(frozen=True)
class BasinQuestion:
    """How much the basin around ``place`` (metres in the CRS) holds; ``unit``: in which its level is told."""

    place: Tuple[float, float]
    unit: LengthUnit = LengthUnit.METRE
    steps: int = 50

    @property
    def stage(self) -> str:
        return "basin"

    def answer(self, result: JobResult, progress: Progress) -> BasinAnswer:
        """What it holds. Raises SurveyError."""
        progress(0.0, "basin")
        certainty = survey_certainty(result)
        return BasinAnswer(examine_basin(result.surface.tin, np.array(self.place), self.steps, certainty), self.unit)


@dataclass(frozen=True)
class BasinAnswer:
    """What came of it."""

    basin: Basin
    unit: LengthUnit

    @property
    def messages(self) -> Tuple[Message, ...]:
        return self.basin.storage.messages

    @property
    def lines(self) -> Tuple[Message, ...]:
        full = self.basin.storage.curve[-1]
        level = full.level / self.unit.metres
        return (
            message(
                BASIN_LINE, volume=full.volume, half=self.basin.doubt.half_95, area=full.area, level=level,
                unit=self.unit.symbol,
            ),
        )  # fmt: skip

    def sections(self, words: Words) -> Sequence[Section]:
        return (("basin", words(STORAGE), storage_body(self.basin, words)),)

    def write(self, folder: Path, translate: Callable[[str], str]) -> Sequence[Path]:
        """``storage.csv``."""
        write_storage(self.basin, folder / "storage.csv")
        return [folder / "storage.csv"]
