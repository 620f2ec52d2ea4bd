"""How heights repeat run by run, with their intervals, against what the receiver claims (see :mod:`.drawing`)."""

from __future__ import annotations

import math
from typing import Any, List, Sequence

import numpy as np
from matplotlib import rc_context
from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.figure import Figure

from ..messages import QT_TRANSLATE_NOOP
from ..quality.repeatability import Repeatability, RunRepeatability
from .drawing import GREY, INK, ORANGE, STYLE, TEAL, Picture, svg
from .labels import Words, number

FOUND = QT_TRANSLATE_NOOP("core", "found, with its 95 % interval")
CLAIMED = QT_TRANSLATE_NOOP("core", "claimed by the receiver")
WHOLE = QT_TRANSLATE_NOOP("core", "the whole survey, with its 95 % interval")
SIGMA = QT_TRANSLATE_NOOP("core", "Standard deviation of a height ({unit})")
LINES = QT_TRANSLATE_NOOP("core", "Lines of the file")
MET = QT_TRANSLATE_NOOP("core", "{lines} ({count} places)")

_ROW = 0.27  # inches
_WIDEST = 5.0  # times the largest found: intervals from few places may reach very far


def runs_figure(runs: Sequence[RunRepeatability], lines: Sequence[str], whole: Repeatability, words: Words) -> Picture:
    """One row for each of ``runs``, named by the ``lines`` they hold: a dot, its interval, the claim; SVG."""
    with rc_context(STYLE):
        tall = _ROW * len(runs) + 0.95
        figure = Figure(figsize=(8.0, tall))
        FigureCanvasAgg(figure)
        axes = figure.add_axes([0.27, 0.5 / tall, 0.7, _ROW * len(runs) / tall])
        _draw_whole(axes, whole, words)
        _draw_runs(axes, runs, words)
        axes.set_yticks(np.arange(len(runs)))
        axes.set_yticklabels([words(MET, lines=name, count=number(run.freedom)) for name, run in zip(lines, runs)])
        axes.set_ylim(len(runs) - 0.4, -0.6)
        axes.set_xlim(0.0, words.small.factor * _reach(runs, whole))
        axes.set_xlabel(words(SIGMA, unit=words.small.symbol), fontsize=8)
        axes.set_ylabel(words(LINES), fontsize=8)
        axes.tick_params(labelsize=8)
        axes.grid(axis="x", color="#e0e0e0", linewidth=0.5)
        axes.set_axisbelow(True)
        for side in ("top", "right"):
            axes.spines[side].set_visible(False)
        figure.legend(*axes.get_legend_handles_labels(), loc="upper center", ncol=3, frameon=False, fontsize=8)
        return Picture(svg(figure))


def _draw_whole(axes: Any, whole: Repeatability, words: Words) -> None:
    if math.isfinite(whole.total):
        factor = words.small.factor
        axes.axvspan(factor * whole.low, factor * whole.high, color=GREY, alpha=0.35, linewidth=0, zorder=1)
        axes.axvline(factor * whole.total, color=INK, linewidth=0.9, linestyle="--", zorder=2, label=words(WHOLE))


def _draw_runs(axes: Any, runs: Sequence[RunRepeatability], words: Words) -> None:
    row = np.arange(len(runs))
    sigma, low, high, claimed = (words.small.factor * np.array([getattr(run, c) for run in runs]) for c in _COLUMNS)
    axes.hlines(row, low, high, color=TEAL, linewidth=1.6, zorder=3)
    axes.scatter(sigma, row, s=26, marker="o", color=TEAL, linewidths=0, zorder=4, label=words(FOUND))
    known = np.isfinite(claimed)
    if known.any():
        style = {"s": 30, "marker": "D", "facecolors": "white", "edgecolors": ORANGE, "linewidths": 1.4}
        axes.scatter(claimed[known], row[known], zorder=5, label=words(CLAIMED), **style)


_COLUMNS = ("sigma", "low", "high", "claimed")


def _reach(runs: Sequence[RunRepeatability], whole: Repeatability) -> float:
    """Where the axis ends (m): all that is drawn, but for intervals that reach far beyond everything else."""
    shown: List[float] = [run.sigma for run in runs] + [run.claimed for run in runs] + [whole.high]
    largest = max((value for value in shown if math.isfinite(value)), default=0.01)
    highest = max((run.high for run in runs if math.isfinite(run.high)), default=largest)
    return 1.05 * min(max(largest, highest), max(_WIDEST * max(run.sigma for run in runs), largest))
