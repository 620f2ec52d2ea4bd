"""Contours finished for a sheet: calmed, smoothed, labelled, with spot heights."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Optional

from ..progress import Progress, part, silent
from ..surface.tin import Tin
from .labels import Labels, place_labels
from .lines import ContourOptions, Contours
from .smooth import smooth_contours
from .soften import soften_heights
from .spots import Spots, find_spots
from .trace import trace_contours

#: Size of the labels' typeface, and about how far they are apart along a line, in millimetres on the sheet:
#: common practice, no source.
TEXT_SIZE, LABEL_SPACING = 2.0, 120.0


@dataclass(frozen=True)
class SheetOptions:
    """How far lines and heights may be moved for drawing, and for which scale.

    ``smooth``: metres in plan, for lines. ``calm``: metres, for heights; None in a job: by their noise, as the survey
    tells it, which is then in its place. ``scale``: 500 for 1 : 500; labels have their
    size on the ground from it.
    """

    smooth: float
    calm: Optional[float] = 0.0
    scale: float = 500.0


@dataclass(frozen=True)
class Sheet:
    """What is drawn, and how far off the exact contours: ``moved`` (m, heights) and ``shifted`` (m, lines in plan).

    ``contours``: for drawing only. ``spots``: on the surface as measured.
    """

    contours: Contours
    labels: Labels
    spots: Spots
    options: SheetOptions
    moved: float
    shifted: float


def draw_sheet(tin: Tin, levels: ContourOptions, options: SheetOptions, progress: Progress = silent) -> Sheet:
    """Contours, labels and spot heights of ``tin`` for a sheet.

    Spot heights are those that stand out by an interval or more. Raises SurveyError for options that are no
    lengths.
    """
    soft = soften_heights(tin, options.calm or 0.0, part(progress, 0.0, 0.2))
    exact = trace_contours(soft.tin, levels, part(progress, 0.2, 0.5))
    smooth = smooth_contours(exact, soft.tin, options.smooth, part(progress, 0.5, 0.7))
    millimetre = 0.001 * options.scale  # on the sheet, metres on the ground
    spacing, size = LABEL_SPACING * millimetre, TEXT_SIZE * millimetre
    labels = place_labels(smooth.contours, spacing, size, progress=part(progress, 0.7, 0.8))
    spots = find_spots(tin, levels.interval * levels.unit.metres, part(progress, 0.8, 1.0))
    return Sheet(smooth.contours, labels, spots, options, soft.achieved, smooth.achieved_shift)
