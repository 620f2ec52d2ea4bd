"""The profile of a line as sheets: to scale, with a band of stations, heights, differences and grades below it."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import partial
from typing import Any, Callable, Iterator, List, Optional, Sequence, Tuple

import numpy as np

from ..alignment.curves import FittedProfile
from ..alignment.grades import WindowSlopes
from ..alignment.profile import HeightLine, Profile
from ..alignment.stations import format_station
from ..files import PathLike
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from .drawing import GREY, INK, TEAL
from .labels import Words, number
from .paper import MARGIN, TITLE_HEIGHT, Page, Paper, shown_scale, write_pages
from .sheet_parts import BAD_SCALE, SCALES, clipped, line_colours, nice_above, text_width, with_room

_LABELS = 30.0  # mm: column of the rows' names
_ROW, _FLAT_ROW = 15.0, 7.0  # mm: rows with upright and with lying numbers
_TICK = 10.0  # mm between stations at least
_NEAR = 5.5  # mm: nearer columns would overlap
_HEAD = 12.0  # mm above the profile: title and legend
_MOST_PAGES = 500

STATION = QT_TRANSLATE_NOOP("core", "Station ({unit})")
HEIGHT = QT_TRANSLATE_NOOP("core", "{surface} ({unit})")
DIFFERENCE = QT_TRANSLATE_NOOP("core", "Difference ({unit})")
GRADE = QT_TRANSLATE_NOOP("core", "Grade (%)")
CURVE = QT_TRANSLATE_NOOP("core", "K {k} {unit}/%")
TITLE = QT_TRANSLATE_NOOP("core", "Profile of {name}")
ALONG = QT_TRANSLATE_NOOP("core", "lengths {scale}")
UP = QT_TRANSLATE_NOOP("core", "heights {scale}")
PAPER = QT_TRANSLATE_NOOP("core", "on {paper}, printed at 100 %")
DATUM = QT_TRANSLATE_NOOP("core", "Base {height}")
EQUATION = QT_TRANSLATE_NOOP("core", "{back} back = {ahead} ahead")

TOO_MANY_SHEETS = Text(
    "sheets.too_many",
    QT_TRANSLATE_NOOP(
        "core",
        "At scale {scale} the sheets would be {count}; the most is {most}. Choose a smaller scale, such as {fit}.",
    ),
)
TOO_TALL = Text(
    "sheets.too_tall",
    QT_TRANSLATE_NOOP(
        "core",
        "At scale {scale} for heights the profile does not fit on {paper}: one sheet spans {range:.2f} m. Choose {fit} "
        "or a larger paper.",
    ),
)


@dataclass(frozen=True)
class ProfileSheet:
    """How the profile is drawn: ``scale`` of lengths, ``height_scale`` (None: the largest usual one that fits)."""

    paper: Paper = Paper.A4
    portrait: bool = False
    scale: float = 500.0
    height_scale: Optional[float] = None
    title: str = ""


def write_profile_sheets(
    profile: Profile,
    path: PathLike,
    sheet: ProfileSheet = ProfileSheet(),
    fit: Optional[FittedProfile] = None,
    windows: Optional[WindowSlopes] = None,
    translate: Callable[[str], str] = str,
) -> int:
    """Write the profile as a PDF of one or more pages; returns their number.

    Grades shown: those of ``fit``, else of ``windows`` with their standard deviation, else none. With two surfaces or
    more their difference (second less first) is shown. Stations and heights in the line's unit. Raises SurveyError for
    scales that do not fit and a file that cannot be written.
    """
    return write_pages(profile_pages(profile, sheet, fit, windows, translate), path)


def profile_pages(
    profile: Profile,
    sheet: ProfileSheet = ProfileSheet(),
    fit: Optional[FittedProfile] = None,
    windows: Optional[WindowSlopes] = None,
    translate: Callable[[str], str] = str,
) -> Iterator[Page]:
    """The pages of :func:`write_profile_sheets` one by one, to be drawn within :func:`.paper.page_style`."""
    drawing = _Drawing(profile, sheet, fit, windows, Words(translate))
    for number_of in range(len(drawing.parts)):
        yield drawing.draw(number_of)


@dataclass(frozen=True)
class _Row:
    """A row of the band: its label, height on paper (mm) and what fills it."""

    label: str
    height: float
    fill: Callable[[_View, float], None]


@dataclass(frozen=True)
class _View:
    """One page's part of the line: ``begin``, ``end`` (m), and how distances and heights become millimetres."""

    page: Page
    begin: float
    end: float
    left: float
    bottom: float
    base: float
    scale: float
    height_scale: float
    ticks: np.ndarray

    def x(self, distance: Any) -> np.ndarray:
        result: np.ndarray = self.left + (np.asarray(distance, float) - self.begin) * 1000 / self.scale
        return result

    def y(self, height: Any) -> np.ndarray:
        result: np.ndarray = self.bottom + (np.asarray(height, float) - self.base) * 1000 / self.height_scale
        return result

    @property
    def right(self) -> float:
        return float(self.x(np.array([self.end]))[0])


class _Drawing:
    """What all pages of one profile share."""

    def __init__(
        self, profile: Profile, sheet: ProfileSheet, fit: Optional[FittedProfile], windows: Optional[WindowSlopes],
        words: Words,
    ) -> None:  # fmt: skip
        for scale in (sheet.scale, sheet.height_scale):
            if scale is not None and not (math.isfinite(scale) and scale > 0):
                raise SurveyError(BAD_SCALE, scale=f"{scale:g}")
        self.profile, self.sheet, self.fit, self.windows, self.words = profile, sheet, fit, windows, words
        self.line, self.unit = profile.line, profile.line.unit
        self.rows = self._rows()
        self.blank = Page(sheet.paper, sheet.portrait)
        self.bottom = MARGIN + TITLE_HEIGHT + 3 + sum(row.height for row in self.rows) + 2
        self.width = self.blank.width - 2 * MARGIN - _LABELS - 6
        self.height = self.blank.height - MARGIN - _HEAD - self.bottom
        self.interval = nice_above(_TICK * sheet.scale / 1000 / self.unit.metres)
        self.parts = self._parts()
        self.ranges = self._ranges()
        self.height_scale = sheet.height_scale or self._height_scale()
        self._check_height_scale()

    def _rows(self) -> List[_Row]:
        symbol = self.unit.symbol
        rows = []
        if self.fit is not None or self.windows is not None:
            rows.append(_Row(self.words(GRADE), _FLAT_ROW, self._fill_grades))
        for own in self.profile.surfaces:
            label = self.words(HEIGHT, surface=own.surface, unit=symbol)
            rows.append(_Row(label, _ROW, partial(self._fill_heights, own)))
        if len(self.profile.surfaces) > 1:
            rows.append(_Row(self.words(DIFFERENCE, unit=symbol), _ROW, self._fill_differences))
        rows.append(_Row(self.words(STATION, unit=symbol), _ROW + 3, self._fill_stations))
        return rows

    def _parts(self) -> List[Tuple[float, float]]:
        """Where pages begin and end: at shown stations, as much of the line as fits."""
        most = self.width * self.sheet.scale / 1000
        count = math.ceil(self.line.length / most)
        if count > _MOST_PAGES:
            fit = next((s for s in SCALES if self.line.length / (self.width * s / 1000) < _MOST_PAGES), SCALES[-1])
            raise SurveyError(
                TOO_MANY_SHEETS, scale=shown_scale(self.sheet.scale), count=count, most=_MOST_PAGES,
                fit=shown_scale(fit),
            )  # fmt: skip
        marks = self.line.numbering.multiples(self.interval)
        parts, begin = [], 0.0
        while self.line.length - begin > 1e-6:
            end = begin + most
            if end >= self.line.length:
                end = self.line.length
            else:
                whole = marks[(marks > begin + most / 2) & (marks <= end)]
                end = float(whole[-1]) if len(whole) else end
            parts.append((begin, end))
            begin = end
        return parts

    def _ranges(self) -> List[Tuple[float, float]]:
        """Lowest and highest height of each page; (0, 0) where nothing is."""
        found = []
        for begin, end in self.parts:
            own = [np.array([])]
            for surface in self.profile.surfaces:
                own.extend(height for _, height in clipped(surface, begin, end))
            heights = np.concatenate(own)
            found.append((float(heights.min()), float(heights.max())) if len(heights) else (0.0, 0.0))
        return found

    def _height_scale(self) -> float:
        return next((scale for scale in SCALES if scale >= 10 and self._fits(scale)), SCALES[-1])

    def _fits(self, scale: float) -> bool:
        return all((high - self._base(low, scale)) * 1000 / scale <= self.height - 2 for low, high in self.ranges)

    def _check_height_scale(self) -> None:
        if not self._fits(self.height_scale):
            spans = max(high - low for low, high in self.ranges)
            fit = next((scale for scale in SCALES if self._fits(scale)), SCALES[-1])
            raise SurveyError(
                TOO_TALL, scale=shown_scale(self.height_scale), paper=self.sheet.paper.value, range=spans,
                fit=shown_scale(fit),
            )  # fmt: skip

    def _step(self, scale: float) -> float:
        """Metres between height lines: a round number in the unit, about 10 mm on paper."""
        return nice_above(8.0 * scale / 1000 / self.unit.metres) * self.unit.metres

    def _base(self, low: float, scale: float) -> float:
        """Height of the lower edge: a height line some millimetres below the lowest place."""
        step = self._step(scale)
        return math.floor((low - 4.0 * scale / 1000) / step) * step

    def view(self, number_of: int) -> _View:
        begin, end = self.parts[number_of]
        low = self.ranges[number_of][0]
        marks = self.line.numbering.multiples(self.interval)
        inside = marks[(marks >= begin - 1e-6) & (marks <= end + 1e-6)]
        ends = np.array([d for d in (begin, end) if d in (0.0, self.line.length)])
        ticks = with_room(np.concatenate([ends, inside]), _NEAR * self.sheet.scale / 1000)
        page = self.blank if number_of == 0 else Page(self.sheet.paper, self.sheet.portrait)
        left = MARGIN + _LABELS
        base = self._base(low, self.height_scale)
        return _View(page, begin, end, left, self.bottom, base, self.sheet.scale, self.height_scale, ticks)

    # what is drawn

    def draw(self, number_of: int) -> Page:
        view = self.view(number_of)
        self._height_lines(view)
        self._station_lines(view)
        self._profiles(view)
        self._band(view)
        self._head(view)
        notes = (
            self.words(ALONG, scale=shown_scale(self.sheet.scale)),
            self.words(UP, scale=shown_scale(self.height_scale)),
            self.words(PAPER, paper=self.sheet.paper.value),
        )
        title = self.sheet.title or self.words(TITLE, name=self.line.name)
        view.page.title_block(self.words, title, notes, number_of + 1, len(self.parts))
        return view.page

    def _height_lines(self, view: _View) -> None:
        step = self._step(view.height_scale)
        decimals = max(0, -math.floor(math.log10(step / self.unit.metres) + 1e-9))
        count = int((self.height - 2) / (step * 1000 / view.height_scale))
        for k in range(count + 1):
            height = view.base + k * step
            y = float(view.y(np.array([height]))[0])
            if k:
                view.page.line([view.left, view.right], [y, y], GREY, 0.25, order=1)
            text = number(height / self.unit.metres, decimals)
            text = self.words(DATUM, height=text) if k == 0 else text
            view.page.text(view.left - 1.5, y, text, 6.5, across="right")
        view.page.line([view.left, view.left], [view.bottom, view.bottom + self.height - 2], INK, 0.6)

    def _station_lines(self, view: _View) -> None:
        """Ordinates from the base to the highest surface."""
        heights = [surface.heights(view.ticks) for surface in self.profile.surfaces]
        top = np.fmax.reduce(heights)
        for distance, height in zip(view.ticks, top):
            x = float(view.x(distance))
            if np.isfinite(height):
                view.page.line([x, x], [view.bottom, float(view.y(height))], GREY, 0.25, order=1)
        numbering = self.line.numbering
        for k, begin in enumerate(numbering.begin[1:], 1):
            if view.begin <= begin <= view.end:
                x = float(view.x(begin))
                view.page.line([x, x], [view.bottom, view.bottom + self.height - 2], TEAL, 0.6, (0, (6, 2, 1, 2)))
                back, ahead = (format_station(v, self.unit) for v in (numbering.last[k - 1], numbering.first[k]))
                text = self.words(EQUATION, back=back, ahead=ahead)
                view.page.text(
                    x - 1.5, view.bottom + self.height - 3, text, 6.0, "center", "top", 90, color=TEAL, box=True
                )

    def _profiles(self, view: _View) -> None:
        for surface, (colour, style) in zip(self.profile.surfaces, line_colours()):
            for distance, height in clipped(surface, view.begin, view.end):
                view.page.line(view.x(distance), view.y(height), colour, 0.9, style, order=3)
        if self.fit is not None:
            for curve in self.fit.curves:
                ends = [d for d in (curve.begin, curve.end) if view.begin <= d <= view.end]
                at = np.array(ends)
                view.page.axes.plot(
                    view.x(at), view.y(self.fit.heights(at)), "o", color=TEAL, markersize=2.5, zorder=3.5
                )

    def _band(self, view: _View) -> None:
        top = self.bottom - 2
        for row in self.rows:
            below = top - row.height
            view.page.frame(MARGIN, below, view.right - MARGIN, row.height, 0.4)
            view.page.text(MARGIN + 1.5, (top + below) / 2, _wrapped(row.label), 6.5)
            row.fill(view, (top + below) / 2)
            top = below
        view.page.line([view.left, view.left], [top, self.bottom - 2], INK, 0.4)
        view.page.line([view.left, view.right], [self.bottom, self.bottom], INK, 0.8)

    def _upright(self, view: _View, y: float, texts: Sequence[str], color: str = INK) -> None:
        for distance, text in zip(view.ticks, texts):
            x = min(max(float(view.x(distance)), view.left + 2.0), view.right - 2.0)  # the end columns stay inside
            view.page.text(x, y, text, 6.5, across="center", turn=90, color=color)

    def _fill_stations(self, view: _View, y: float) -> None:
        texts = [format_station(float(v), self.unit) for v in self.line.numbering.stations(view.ticks)]
        self._upright(view, y, texts)

    def _fill_heights(self, surface: HeightLine, view: _View, y: float) -> None:
        place = next(k for k, own in enumerate(self.profile.surfaces) if own is surface)
        colour = line_colours()[place][0]
        self._upright(view, y, [self._height_text(h) for h in surface.heights(view.ticks)], colour)

    def _fill_differences(self, view: _View, y: float) -> None:
        first, second = (surface.heights(view.ticks) for surface in self.profile.surfaces[:2])
        self._upright(view, y, [self._height_text(d, True) for d in second - first])

    def _height_text(self, metres: float, signed: bool = False) -> str:
        text = number(metres / self.unit.metres, 2)
        return "+" + text if signed and metres > 0 and text != "0.00" else text

    def _fill_grades(self, view: _View, y: float) -> None:
        for begin, end, text, short in self._grade_texts():
            low, high = max(begin, view.begin), min(end, view.end)
            if high <= low:
                continue
            x0, x1 = float(view.x(low)), float(view.x(high))
            for x, at in ((x0, begin), (x1, end)):
                if view.begin < at < view.end:
                    view.page.line([x, x], [y - _FLAT_ROW / 2, y + _FLAT_ROW / 2], INK, 0.4)
            shown = next((t for t in (text, short) if text_width(t, 6.0) < x1 - x0 - 1), "")
            view.page.text((x0 + x1) / 2, y, shown, 6.0, across="center")

    def _grade_texts(self) -> Iterator[Tuple[float, float, str, str]]:
        """From, to (m), text, and a shorter one where room is short."""
        if self.fit is not None:
            for grade in self.fit.grades:
                text = _percent(grade.grade)
                yield grade.begin, grade.end, f"{text} \u00b1 {number(100 * grade.sigma, 2)}", text
            for curve in self.fit.curves:
                if curve.determined:
                    text = self.words(CURVE, k=number(curve.k / self.unit.metres, 1), unit=self.unit.symbol)
                    yield curve.begin, curve.end, text, f"K {number(curve.k / self.unit.metres, 0)}"
        elif self.windows is not None:
            own = self.windows
            for (begin, end), value, sigma in zip(own.stretch, own.value, own.sigma):
                text = _percent(value)
                yield float(begin), float(end), f"{text} \u00b1 {number(100 * sigma, 2)}", text

    def _head(self, view: _View) -> None:
        """Legend above the profile."""
        x, y = view.left, view.bottom + self.height + _HEAD / 2
        for surface, (colour, style) in zip(self.profile.surfaces, line_colours()):
            view.page.line([x, x + 12], [y, y], colour, 1.2, style)
            view.page.text(x + 14, y, surface.surface, 7.5)
            x += 14 + text_width(surface.surface, 7.5) + 8


def _percent(ratio: float) -> str:
    text = number(100 * ratio, 2)
    return "+" + text if ratio > 0 and text != "0.00" else text


def _wrapped(label: str) -> str:
    """A long label in two lines at its last blank."""
    if text_width(label, 6.5) < _LABELS - 3 or " " not in label:
        return label
    head, tail = label.rsplit(" ", 1)
    return f"{head}\n{tail}"
