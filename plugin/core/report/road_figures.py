"""Figures of a road: its profile with the grade below it, its crossfall, and the verdicts rule by rule.

Verdicts have the three colours of ColorBrewer's Dark2 that colour-blind readers tell apart, and hatching besides.
"""

from __future__ import annotations

from typing import Any, Dict, List, Sequence, Tuple

import numpy as np
from matplotlib import rc_context
from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.figure import Figure
from matplotlib.patches import Patch
from matplotlib.ticker import FuncFormatter

from ..alignment.grades import WindowSlopes
from ..alignment.line import Alignment
from ..alignment.parts import Part
from ..alignment.rules import Quantity, Rule
from ..alignment.stations import format_station
from ..alignment.study import RoadStudy
from ..alignment.verdicts import Verdict
from ..confidence import NORMAL_95
from ..messages import QT_TRANSLATE_NOOP
from .drawing import GREY, INK, ORANGE, PURPLE, STYLE, TEAL, Picture, png
from .labels import Words, nice_step, number
from .sheet_parts import COLOURS

#: Colour and hatching of each verdict.
LOOKS: Dict[Verdict, Tuple[str, str]] = {
    Verdict.PASS: ("#1b9e77", ""),
    Verdict.FAIL: ("#d95f02", "xxx"),
    Verdict.TOO_CLOSE: ("#7570b3", "///"),
    Verdict.NO_SURFACE: ("#ffffff", "..."),
    Verdict.NOT_APPLICABLE: ("#e8e8e8", ""),
}
VERDICTS = {
    Verdict.PASS: QT_TRANSLATE_NOOP("core", "pass"),
    Verdict.FAIL: QT_TRANSLATE_NOOP("core", "fail"),
    Verdict.TOO_CLOSE: QT_TRANSLATE_NOOP("core", "too close to tell"),
    Verdict.NO_SURFACE: QT_TRANSLATE_NOOP("core", "no surface"),
    Verdict.NOT_APPLICABLE: QT_TRANSLATE_NOOP("core", "rule does not apply"),
}
STATION = QT_TRANSLATE_NOOP("core", "Station ({unit})")
HEIGHT = QT_TRANSLATE_NOOP("core", "Height ({unit})")
GRADE = QT_TRANSLATE_NOOP("core", "Grade (%)")
CROSSFALL = QT_TRANSLATE_NOOP("core", "Crossfall (%)")
FIT = QT_TRANSLATE_NOOP("core", "grades and vertical curves fitted")
BAND = QT_TRANSLATE_NOOP("core", "slope by window, with its 95 % interval")
#: Colour and label of the crossfall of each part of a lane with a crown.
PARTS = {
    Part.LEFT: (TEAL, QT_TRANSLATE_NOOP("core", "left half, with its 95 % interval")),
    Part.RIGHT: (ORANGE, QT_TRANSLATE_NOOP("core", "right half")),
    Part.LANE: (INK, QT_TRANSLATE_NOOP("core", "lane of one fall")),
}
#: Where in the bar of a rule each part is drawn: from where, how much.
_SHARES = {Part.LANE: (0.0, 0.62), Part.LEFT: (-0.155, 0.3), Part.RIGHT: (0.155, 0.3)}
LIMIT = QT_TRANSLATE_NOOP("core", "limit {limit}")
_MARGINS = {"left": 0.1, "right": 0.96}


def profile_figure(study: RoadStudy, words: Words) -> Picture:
    """Heights over stations, the fit, and below it the grade with its doubt and the limits on grades; PNG."""
    line, metres = study.line, study.line.unit.metres
    with rc_context(STYLE):
        figure = Figure(figsize=(8.0, 5.0))
        FigureCanvasAgg(figure)
        upper, lower = figure.subplots(2, 1, sharex=True, gridspec_kw={"height_ratios": (1.6, 1), "hspace": 0.12})
        for own, (colour, style) in zip(study.profile.surfaces, COLOURS * 4):
            for k, (distance, height) in enumerate(own.parts()):
                label = own.surface if k == 0 else None
                upper.plot(distance, height / metres, color=colour, linestyle=style, linewidth=1.1, label=label)
        if study.fit is not None:
            at = np.linspace(study.fit.distance[0], study.fit.distance[-1], 400)
            upper.plot(at, study.fit.heights(at) / metres, color=TEAL, linewidth=0.9, dashes=(6, 2), label=words(FIT))
            ends = np.array([d for curve in study.fit.curves for d in (curve.begin, curve.end)])
            upper.plot(ends, study.fit.heights(ends) / metres, "o", color=TEAL, markersize=3)
        upper.set_ylabel(words(HEIGHT, unit=line.unit.symbol))
        upper.ticklabel_format(useOffset=False, axis="y")
        _band(lower, study.grades, ORANGE, words(BAND))
        _draw_limits(lower, [study.grades], _limits(study, Quantity.GRADE), words)
        lower.set_ylabel(words(GRADE))
        _stations(lower, line, words)
        for axes in (upper, lower):
            _plain(axes)
        _legend(figure, [upper, lower])
        figure.subplots_adjust(top=0.87, bottom=0.1, **_MARGINS)
        return Picture(png(figure))


def crossfall_figure(study: RoadStudy, words: Words) -> Picture:
    """Crossfall over stations with its doubt and the limits on it; PNG."""
    with rc_context(STYLE):
        figure = Figure(figsize=(8.0, 2.7))
        FigureCanvasAgg(figure)
        axes = figure.subplots()
        across = study.crossfalls
        if not across.crowned.any():
            _band(axes, across.by[Part.LANE], ORANGE, words(BAND))
        else:
            for part, (colour, label) in PARTS.items():
                if across.has(part).any():
                    _band(axes, across.by[part], colour, words(label))
        _draw_limits(axes, list(across.by.values()), _limits(study, Quantity.CROSSFALL), words)
        axes.set_ylabel(words(CROSSFALL))
        _stations(axes, study.line, words)
        _plain(axes)
        _legend(figure, [axes])
        figure.subplots_adjust(top=0.8, bottom=0.19, **_MARGINS)
        return Picture(png(figure))


def verdict_figure(study: RoadStudy, words: Words) -> Picture:
    """A bar along the line for each rule, in the colours and hatching of its verdicts; PNG."""
    rules = list(study.rules)
    with rc_context({**STYLE, "hatch.linewidth": 0.6}):
        tall = 0.34 * len(rules) + 1.2
        figure = Figure(figsize=(8.0, tall))
        FigureCanvasAgg(figure)
        axes = figure.subplots()
        met: List[Verdict] = []
        for row, rule in enumerate(rules):
            for each in study.checks.of(rule):
                colour, hatch = LOOKS[each.verdict]
                shift, height = _SHARES[each.part]
                axes.barh(
                    row + shift, each.length, left=each.begin, height=height, color=colour, hatch=hatch, linewidth=0.4,
                    edgecolor="white" if each.verdict is not Verdict.NO_SURFACE else GREY,
                )  # fmt: skip
                met.append(each.verdict)
        axes.set_yticks(range(len(rules)))
        axes.set_yticklabels([f"{k + 1}" for k in range(len(rules))])
        axes.set_ylabel(words(QT_TRANSLATE_NOOP("core", "Rule")))
        axes.set_ylim(len(rules) - 0.5, -0.5)
        axes.set_xlim(0, study.line.length)
        _stations(axes, study.line, words)
        for side in ("top", "right"):
            axes.spines[side].set_visible(False)
        shown = [v for v in Verdict if v in met]
        handles = [
            Patch(facecolor=LOOKS[v][0], hatch=LOOKS[v][1], edgecolor=GREY if v is Verdict.NO_SURFACE else "white",
                  label=words(VERDICTS[v])) for v in shown
        ]  # fmt: skip
        figure.legend(handles=handles, loc="upper center", ncol=5, frameon=False, fontsize=8, handlelength=2.6)
        figure.subplots_adjust(top=1 - 0.42 / tall, bottom=0.5 / tall, **_MARGINS)
        return Picture(png(figure))


def _limits(study: RoadStudy, quantity: Quantity) -> List[Rule]:
    """Rules on a quantity with limits that differ, from the lowest."""
    found = {round(rule.limit, 9): rule for rule in study.rules if rule.quantity is quantity}
    return [found[limit] for limit in sorted(found)]


def _band(axes: Any, slopes: WindowSlopes, colour: str, label: str) -> None:
    """Steps with a band of 95 %."""
    stretch, value = slopes.stretch, 100 * slopes.value
    doubt = NORMAL_95 * 100 * slopes.sigma
    edges = np.append(stretch[:, 0], stretch[-1:, 1])

    def steps(values: np.ndarray) -> np.ndarray:
        return np.append(values, values[-1:])

    axes.fill_between(edges, steps(value - doubt), steps(value + doubt), step="post", color=colour, alpha=0.25, lw=0)
    axes.step(edges, steps(value), where="post", color=colour, linewidth=1.2, label=label)
    axes.set_xlim(0, slopes.line.length)


def _draw_limits(axes: Any, slopes: Sequence[WindowSlopes], rules: Sequence[Rule], words: Words) -> None:
    """A line either way for each limit that is near what was found."""
    axes.axhline(0, color=INK, linewidth=0.5)
    value = 100 * np.concatenate([own.value for own in slopes])
    doubt = NORMAL_95 * 100 * np.concatenate([own.sigma for own in slopes])
    known = np.isfinite(value)
    if not np.any(known):
        return
    low, high = float(np.min((value - doubt)[known])), float(np.max((value + doubt)[known]))
    reach = max(abs(low), abs(high))
    sides = [side for side, seen in ((1, high > 0.3 * reach), (-1, low < -0.3 * reach)) if seen]
    for rule, style in zip(rules, ("--", ":", "-.", (0, (1, 1)), (0, (5, 1, 1, 1)))):
        if 100 * rule.limit > 1.8 * reach + 0.5:
            continue
        text = words(LIMIT, limit=rule.limit_text)
        for k, side in enumerate(sides):
            limit = 100 * side * rule.limit
            axes.axhline(limit, color=PURPLE, linestyle=style, linewidth=1.0, label=None if k else text)
    axes.set_ylim(*_padded(axes.get_ylim()))


def _padded(limits: Tuple[float, float]) -> Tuple[float, float]:
    room = 0.06 * (limits[1] - limits[0])
    return limits[0] - room, limits[1] + room


def _stations(axes: Any, line: Alignment, words: Words) -> None:
    """Whole stations along the lower axis, which is in metres along the line."""
    step = nice_step(line.length / line.unit.metres / 5)
    ticks = line.numbering.multiples(step)
    axes.set_xticks(ticks)
    decimals = 0 if step >= 1 else 2
    labels = [format_station(float(s), line.unit, decimals) for s in line.numbering.stations(ticks)]
    axes.xaxis.set_major_formatter(FuncFormatter(lambda _, k: labels[k] if k is not None and k < len(labels) else ""))
    axes.set_xlabel(words(STATION, unit=line.unit.symbol))


def _plain(axes: Any) -> None:
    axes.grid(color="#e0e0e0", linewidth=0.5)
    axes.set_axisbelow(True)
    axes.tick_params(labelsize=8)
    axes.yaxis.set_major_formatter(FuncFormatter(lambda v, _: number(v, _decimals(axes))))
    for side in ("top", "right"):
        axes.spines[side].set_visible(False)


def _decimals(axes: Any) -> int:
    low, high = axes.get_ylim()
    step = nice_step(max(high - low, 1e-6) / 6)
    return 0 if step >= 1 else 1 if step >= 0.1 else 2 if step >= 0.01 else 3


def _legend(figure: Figure, axes: Sequence[Any]) -> None:
    handles: List[Any] = []
    labels: List[str] = []
    for own in axes:
        for handle, label in zip(*own.get_legend_handles_labels()):
            if label not in labels:
                handles.append(handle)
                labels.append(label)
    figure.legend(handles, labels, loc="upper center", ncol=3, frameon=False, fontsize=8)
