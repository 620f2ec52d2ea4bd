"""Checking points a second time: what the last check said is undone, what a hand decided since is kept."""

from __future__ import annotations

from dataclasses import replace
from typing import Tuple

import numpy as np

from ..points.decisions import WORD_OF_STATUS, Decisions, words_of_reasons
from ..points.pointset import GATE_REASONS, PointSet, Reason, Status
from .overrides import CHECK_REASON, CHECK_STATUS, changed_by_hand

#: What codes and the gate say of points; no check, and no hand either.
_GIVEN = np.uint32(Reason.CHECK_SHOT | Reason.NOT_GROUND | GATE_REASONS)
#: The same for points never checked: repeats may have been found when files were merged.
_GIVEN_AT_FIRST = _GIVEN | np.uint32(Reason.DUPLICATE)
#: What the gate said as the points were read.
_GATE = np.uint32(GATE_REASONS)
#: Where a check keeps what was recorded of points it has moved.
_RECORDED = ("easting_recorded", "northing_recorded", "height_recorded")
_WORDS = np.array([WORD_OF_STATUS[k] for k in range(3)], object)


def before_checks(points: PointSet) -> Tuple[PointSet, Decisions]:
    """The points as no check had seen them, where they were recorded, and the decisions by hand on them.

    The decisions are for :func:`.overrides.with_overrides`.

    A point whose status is not that of the columns ``check_status`` was decided by hand; without that column, each that
    is flagged or rejected for more than its code. Where lines of the file are missing or not unique (several files
    in one layer) the lines of what is returned are row numbers, from 1. Raises SurveyError for unknown words.
    """
    lines = points.source_line
    if len(np.unique(lines)) < len(lines) or np.any(lines < 1):
        points = replace(points, source_line=np.arange(1, len(points) + 1))
    first = CHECK_STATUS not in points.extra
    given = points.reasons.astype(np.uint32) & (_GIVEN_AT_FIRST if first else _GIVEN)
    points = _put_back(points)
    only_given = (given != 0) & (points.reasons == given)
    columns = {
        "line": points.source_line.tolist(),
        "status": _WORDS[points.status].tolist(),
        "reason": [words_of_reasons(reasons) for reasons in points.reasons.tolist()],
    }
    if not first:
        columns[CHECK_STATUS] = points.extra[CHECK_STATUS].tolist()
        columns[CHECK_REASON] = points.extra.get(CHECK_REASON, np.full(len(points), "", object)).tolist()
    else:
        gated = (points.reasons & _GATE) != 0
        columns[CHECK_STATUS] = np.where(only_given & ~gated, _WORDS[points.status], _at_first(points)).tolist()
        columns[CHECK_REASON] = [words_of_reasons(reasons) for reasons in (points.reasons & _GATE).tolist()]
    decisions = changed_by_hand(columns, points.source)
    by_hand = np.isin(points.source_line, decisions.line)
    keep = (given != 0) & ~by_hand
    status = np.where(keep, points.status, Status.USED)
    extra = {name: values for name, values in points.extra.items() if name not in (CHECK_STATUS, CHECK_REASON)}
    fresh = replace(points, extra=extra).with_status(status, np.where(keep, given, 0))
    return fresh, decisions


def _at_first(points: PointSet) -> np.ndarray:
    """What the gate said of points (n,) never checked, in words: used where nothing. A point that a hand uses, or that
    the gate gave a reason and a hand another status, is decided by hand.
    """
    reasons = points.reasons.astype(np.uint32)
    gated = (reasons & _GATE) != 0
    flagged = gated & ((reasons & _GATE & ~np.uint32(Reason.FAR_OFF)) == 0)
    status = np.where(flagged, Status.FLAGGED, np.where(gated, Status.REJECTED, Status.USED))
    taken_back = ((reasons & np.uint32(Reason.BY_HAND)) != 0) & (points.status == Status.USED)
    return np.asarray(_WORDS[np.where(taken_back, Status.REJECTED, status)])


def _put_back(points: PointSet) -> PointSet:
    """Points that a check moved to the mean of a stop, at their own place again."""
    if any(name not in points.extra for name in _RECORDED):
        return points
    east, north, height = (_numbers(points.extra[name]) for name in _RECORDED)
    moved = np.isfinite(east + north + height)
    return replace(
        points,
        easting=np.where(moved, east, points.easting),
        northing=np.where(moved, north, points.northing),
        height=np.where(moved, height, points.height),
        extra={name: values for name, values in points.extra.items() if name not in _RECORDED},
    )


def _numbers(values: np.ndarray) -> np.ndarray:
    """A column of numbers, or of texts such as a layer gives, as float64; nan for empty ones."""
    if values.dtype.kind == "f":
        return values
    return np.array([float(text) if str(text).strip() else np.nan for text in values.tolist()], float)
