"""The finished surface in files for other programs: LandXML and DXF."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Callable, List, Sequence, Tuple

from ..handover.dxf import Drawing, constraint_lines, contour_lines, found_lines, write_dxf
from ..handover.edges import marked_lines
from ..handover.landxml_model import LandSurface, LandXml
from ..handover.landxml_write import write_landxml
from ..messages import Message
from ..progress import Progress
from ..report.labels import Words
from ..report.markup import Section
from ..report.results import JobResult


@dataclass(frozen=True)
class ExchangeQuestion:
    """Which files are asked for."""

    landxml: bool = False
    dxf: bool = False
    stage: str = "files"

    def answer(self, result: JobResult, progress: Progress) -> ExchangeFiles:
        """What the files are made from."""
        return ExchangeFiles(result, self.landxml, self.dxf)


@dataclass(frozen=True)
class ExchangeFiles:
    """``surface.xml``: surface with its lines and the used points; ``surface.dxf``: faces, lines, contours, points."""

    result: JobResult
    landxml: bool
    dxf: bool

    @property
    def messages(self) -> Tuple[Message, ...]:
        return ()

    @property
    def lines(self) -> Tuple[Message, ...]:
        return ()

    def sections(self, words: Words) -> Sequence[Section]:
        """None: the report lists the files with all others."""
        return ()

    def write(self, folder: Path, translate: Callable[[str], str]) -> Sequence[Path]:
        written: List[Path] = []
        result = self.result
        tin, points = result.surface.tin, result.points.select(result.points.used)
        found = result.ground_lines
        lines = marked_lines(tin, () if found is None else found.breaklines.lines)
        if self.landxml:
            written.append(folder / "surface.xml")
            name = Path(result.survey.points.source).stem or "surface"
            write_landxml(LandXml(result.crs, (LandSurface(name, tin, lines),), points), written[-1])
        if self.dxf:
            written.append(folder / "surface.dxf")
            named, plain = ([line for line in lines if bool(line.label) is own] for own in (True, False))
            drawn = [
                *constraint_lines(plain),
                *found_lines(named),
                *contour_lines(result.contours),
            ]
            write_dxf(Drawing(result.crs, tin, drawn, points), written[-1])
        return written
