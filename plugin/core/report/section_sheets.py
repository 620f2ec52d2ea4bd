"""Cross-sections as sheets: each to scale with its heights and the areas between two surfaces."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Callable, Iterator, List, Optional, Tuple

import numpy as np

from ..alignment.areas import SectionAreas, section_areas
from ..alignment.sections import Sections
from ..files import PathLike
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from .drawing import GREY, INK
from .labels import Words, number
from .paper import MARGIN, TITLE_HEIGHT, Page, Paper, shown_scale, write_pages
from .sheet_parts import BAD_SCALE, COLOURS, SCALES, nice_above, text_width

_SIDE, _AFTER = 12.0, 4.0  # mm to the left of a section for heights, and to its right
_ABOVE, _BELOW = 7.0, 9.0  # mm of a section's cell for its title and its offsets
_GAP = 5.0  # mm between cells
_LEGEND = 8.0

TITLE = QT_TRANSLATE_NOOP("core", "Cross-sections of {name}")
ONE_SCALE = QT_TRANSLATE_NOOP("core", "scale {scale}")
TWO_SCALES = QT_TRANSLATE_NOOP("core", "widths {along}   heights {up}")
PAPER = QT_TRANSLATE_NOOP("core", "on {paper}, printed at 100 %")
LOOKING = QT_TRANSLATE_NOOP("core", "seen in the way of rising stations; offsets and heights in {unit}")
STATION = QT_TRANSLATE_NOOP("core", "Station {station}")
AREAS = QT_TRANSLATE_NOOP("core", "cut {cut} {unit}\u00b2   fill {fill} {unit}\u00b2")
PARTLY = QT_TRANSLATE_NOOP("core", "over {width} {unit} of {whole}")
NOTHING = QT_TRANSLATE_NOOP("core", "no surface here")

TOO_WIDE = Text(
    "sheets.too_wide",
    QT_TRANSLATE_NOOP(
        "core",
        "The cross-section at station {station} does not fit on {paper} at {scale} (it is {width:.1f} m wide and "
        "{height:.1f} m high). Choose {fit} or a larger paper.",
    ),
)


@dataclass(frozen=True)
class SectionSheet:
    """How sections are drawn: ``scale`` of widths; ``height_scale``: None for the same."""

    paper: Paper = Paper.A4
    portrait: bool = True
    scale: float = 100.0
    height_scale: Optional[float] = None
    title: str = ""


def write_section_sheets(
    sections: Sections,
    path: PathLike,
    sheet: SectionSheet = SectionSheet(),
    areas: Optional[SectionAreas] = None,
    translate: Callable[[str], str] = str,
) -> int:
    """Write the sections as a PDF, from left to right and down the page in order of stations; returns the pages.

    With two surfaces the areas of cut and fill of the second against the first are shown, with the standard
    deviations that ``areas`` may have (None: worked out here, without). Lengths in the line's unit. Raises SurveyError
    for a section that does not fit and a file that cannot be written.
    """
    return write_pages(section_pages(sections, sheet, areas, translate), path)


def section_pages(
    sections: Sections,
    sheet: SectionSheet = SectionSheet(),
    areas: Optional[SectionAreas] = None,
    translate: Callable[[str], str] = str,
) -> Iterator[Page]:
    """The pages of :func:`write_section_sheets` one by one, to be drawn within :func:`.paper.page_style`."""
    yield from _Drawing(sections, sheet, areas, Words(translate)).pages()


def fitting_scale(sections: Sections, sheet: SectionSheet = SectionSheet()) -> float:
    """The largest usual scale, 1 : 100 at most, at which every section fits on the paper of ``sheet``."""
    for scale in SCALES:
        try:
            if scale >= 100.0:
                _Drawing(sections, replace(sheet, scale=scale), None, Words(str))
                return scale
        except SurveyError:
            continue
    return SCALES[-1]


@dataclass(frozen=True)
class _Cell:
    """A section's place: ``number``, lower left corner (mm on the page), size (mm), and height (m) of its base."""

    number: int
    x: float
    y: float
    width: float
    height: float
    base: float


class _Drawing:
    def __init__(self, sections: Sections, sheet: SectionSheet, areas: Optional[SectionAreas], words: Words) -> None:
        self.up = sheet.scale if sheet.height_scale is None else sheet.height_scale
        for scale in (sheet.scale, self.up):
            if not (math.isfinite(scale) and scale > 0):
                raise SurveyError(BAD_SCALE, scale=f"{scale:g}")
        self.sections, self.sheet, self.words = sections, sheet, words
        self.unit = sections.line.unit
        self.areas = areas if areas is not None or len(sections.cuts) < 2 else section_areas(sections)
        self.step = nice_above(5.0 * self.up / 1000 / self.unit.metres) * self.unit.metres
        self.ranges = [self._range(i) for i in range(len(sections))]
        self.layout = self._layout()

    def _range(self, number_of: int) -> Optional[Tuple[float, float]]:
        """Base (a height line) and top of what is drawn, metres; None where nothing is."""
        heights = [h for cut in self.sections.cuts for _, h in cut.parts(number_of)]
        if not heights:
            return None
        low, high = min(float(h.min()) for h in heights), max(float(h.max()) for h in heights)
        base = math.floor((low - 2.0 * self.up / 1000) / self.step) * self.step
        return base, high

    def _size(self, number_of: int) -> Tuple[float, float]:
        """Width and height (mm) of a section's cell."""
        wide = float(self.sections.left[number_of] + self.sections.right[number_of])
        own = self.ranges[number_of]
        tall = 0.0 if own is None else own[1] - own[0]
        return wide * 1000 / self.sheet.scale + _SIDE + _AFTER, tall * 1000 / self.up + _ABOVE + _BELOW

    def _layout(self) -> List[List[_Cell]]:
        """Cells of each page: rows from the top, each as high as its highest section."""
        blank = Page(self.sheet.paper, self.sheet.portrait)
        right = blank.width - MARGIN
        top, bottom = blank.height - MARGIN - _LEGEND, MARGIN + TITLE_HEIGHT + 4
        pages: List[List[_Cell]] = [[]]
        x, y, row = MARGIN, top, 0.0
        for k in range(len(self.sections)):
            width, height = self._size(k)
            if width > right - MARGIN or height > top - bottom:
                raise self._too_wide(k, right - MARGIN, top - bottom)
            if x + width > right + 1e-6:
                x, y, row = MARGIN, y - row - _GAP, 0.0
            if y - max(row, height) < bottom - 1e-6:
                # the row so far stays; what has no room below it goes on a new page
                pages.append([])
                x, y, row = MARGIN, top, 0.0
            own = self.ranges[k]
            pages[-1].append(_Cell(k, x, y - height, width, height, 0.0 if own is None else own[0]))
            x, row = x + width + _GAP, max(row, height)
        return pages

    def _too_wide(self, number_of: int, width: float, height: float) -> SurveyError:
        wide = float(self.sections.left[number_of] + self.sections.right[number_of])
        own = self.ranges[number_of]
        tall = 0.0 if own is None else own[1] - own[0]
        usable = width - _SIDE - _AFTER, height - _ABOVE - _BELOW - 12
        ratio = self.up / self.sheet.scale
        need = max(wide * 1000 / usable[0], tall * 1000 / usable[1] / ratio)
        fit = next((scale for scale in SCALES if scale >= need), SCALES[-1])
        return SurveyError(
            TOO_WIDE, station=self.sections.line.label(float(self.sections.distance[number_of])),
            paper=self.sheet.paper.value, scale=shown_scale(self.sheet.scale), width=wide, height=tall,
            fit=shown_scale(fit),
        )  # fmt: skip

    def pages(self) -> Iterator[Page]:
        for number_of, cells in enumerate(self.layout):
            page = Page(self.sheet.paper, self.sheet.portrait)
            for cell in cells:
                self._section(page, cell)
            self._legend(page)
            page.title_block(
                self.words, self.sheet.title or self.words(TITLE, name=self.sections.line.name), self._notes(),
                number_of + 1, len(self.layout),
            )  # fmt: skip
            yield page

    def _notes(self) -> List[str]:
        along, up = shown_scale(self.sheet.scale), shown_scale(self.up)
        scale = self.words(ONE_SCALE, scale=along) if along == up else self.words(TWO_SCALES, along=along, up=up)
        looking = self.words(LOOKING, unit=self.unit.symbol)
        return [scale, self.words(PAPER, paper=self.sheet.paper.value), looking]

    def _legend(self, page: Page) -> None:
        x, y = MARGIN, page.height - MARGIN - 2
        for cut, (colour, style) in zip(self.sections.cuts, COLOURS * 4):
            page.line([x, x + 12], [y, y], colour, 1.2, style)
            page.text(x + 14, y, cut.surface, 7.5)
            x += 14 + text_width(cut.surface, 7.5) + 8

    def _section(self, page: Page, cell: _Cell) -> None:
        k = cell.number
        left, right = float(self.sections.left[k]), float(self.sections.right[k])
        zero = cell.x + _SIDE + left * 1000 / self.sheet.scale
        floor = cell.y + _BELOW

        def x(offset: np.ndarray) -> np.ndarray:
            result: np.ndarray = zero + np.asarray(offset) * 1000 / self.sheet.scale
            return result

        def y(height: np.ndarray) -> np.ndarray:
            result: np.ndarray = floor + (np.asarray(height) - cell.base) * 1000 / self.up
            return result

        self._titles(page, cell)
        ends = x(np.array([-left, right]))
        top = cell.y + cell.height - _ABOVE
        page.line(ends, [floor, floor], INK, 0.6)
        page.line([zero, zero], [floor, top + 1], GREY, 0.4, (0, (6, 2, 1, 2)), order=1)
        self._heights(page, cell, ends, y, top)
        self._offsets(page, x, floor, left, right)
        for cut, (colour, style) in zip(self.sections.cuts, COLOURS * 4):
            for offset, height in cut.parts(k):
                page.line(x(offset), y(height), colour, 0.9, style, order=3)

    def _titles(self, page: Page, cell: _Cell) -> None:
        k = cell.number
        y = cell.y + cell.height - 1.5
        station = self.words(STATION, station=self.sections.line.label(float(self.sections.distance[k])))
        page.text(cell.x + _SIDE, y, station, 7.5, bold=True)
        said = self._said(k)
        beside = text_width(station, 7.5) * 1.15 + 4 + text_width(said, 6.5) < cell.width - _SIDE - _AFTER
        if beside:
            page.text(cell.x + cell.width - _AFTER, y, said, 6.5, across="right")
        else:
            page.text(cell.x + _SIDE, y - 3.4, said, 6.0)

    def _said(self, k: int) -> str:
        if self.ranges[k] is None:
            return self.words(NOTHING)
        if self.areas is None:
            return ""
        square, length = self.unit.metres**2, self.unit.metres
        text = self.words(
            AREAS, cut=_doubtful(self.areas.cut[k] / square, self.areas.cut_sigma[k] / square),
            fill=_doubtful(self.areas.fill[k] / square, self.areas.fill_sigma[k] / square), unit=self.unit.symbol,
        )  # fmt: skip
        whole = float(self.sections.left[k] + self.sections.right[k])
        if self.areas.covered[k] < whole - 0.005:
            part = number(self.areas.covered[k] / length, 2)
            text += "   " + self.words(PARTLY, width=part, unit=self.unit.symbol, whole=number(whole / length, 2))
        return text

    def _heights(self, page: Page, cell: _Cell, ends: np.ndarray, y: Callable[..., np.ndarray], top: float) -> None:
        if self.ranges[cell.number] is None:
            return
        decimals = max(0, -math.floor(math.log10(self.step / self.unit.metres) + 1e-9))
        count = int((top - (cell.y + _BELOW)) / (self.step * 1000 / self.up) + 1e-9)
        for k in range(count + 1):
            height = cell.base + k * self.step
            at = float(y(height))
            if k:
                page.line(ends, [at, at], GREY, 0.2, order=1)
            page.text(float(ends[0]) - 1, at, number(height / self.unit.metres, decimals), 5.5, across="right")

    def _offsets(self, page: Page, x: Callable[..., np.ndarray], floor: float, left: float, right: float) -> None:
        step = nice_above(9.0 * self.sheet.scale / 1000 / self.unit.metres) * self.unit.metres
        decimals = max(0, -math.floor(math.log10(step / self.unit.metres) + 1e-9))
        for k in range(-int(left / step + 1e-9), int(right / step + 1e-9) + 1):
            at = float(x(k * step))
            page.line([at, at], [floor, floor - 1], INK, 0.5)
            page.text(at, floor - 1.6, number(k * step / self.unit.metres, decimals), 5.5, "center", "top")


def _doubtful(value: float, sigma: float) -> str:
    """A value with its standard deviation, where there is one."""
    text = number(value, 2)
    return f"{text} \u00b1 {number(sigma, 2)}" if math.isfinite(sigma) else text
