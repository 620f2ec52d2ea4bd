"""The gate: points that cannot belong to the survey are put aside before anything is computed from the others.

A point is put aside only where it can be told: its place is none or all zeros; read otherwise it would lie among the
others; nobody can have gone there and back in the time, or, without times, between two points of a walk that stores
one every step. Where that cannot be told it stays: a base, control points, a second part of the site. Time and memory
go with the number of points, whatever the extent.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Dict, List, Optional, Tuple

import numpy as np

from ..messages import Figure, Message, Text, message
from ..points.geographic import GeographicPoints
from ..points.pointset import GATE_REASONS, SOURCE, PointSet, Reason, Status
from . import said
from .heights import strange_heights
from .places import Places, places_of
from .site import Site, look_at
from .suspects import verdicts_of
from .verdict import Verdict

_LINES_SHOWN = 6


@dataclass(frozen=True)
class Found:
    """Points of one kind: ``indices`` (k,) in file order, the ``reason`` and ``status`` they get, how far the farthest
    is from the others (``size``, metres, nan where it has no place), and a message.
    """

    indices: np.ndarray
    reason: Reason
    status: Status
    size: float
    message: Message


@dataclass(frozen=True)
class Gate:
    """``points``: all of them, with their statuses. ``found``: what was put aside or flagged. ``notes``: what could not
    be told.
    """

    points: PointSet
    found: Tuple[Found, ...]
    notes: Tuple[Message, ...]

    @property
    def messages(self) -> Tuple[Message, ...]:
        """All that is to be told of it."""
        return (*(one.message for one in self.found), *self.notes)


def pass_gate(points: PointSet, geographic: Optional[GeographicPoints] = None) -> Gate:
    """``points`` in the order of recording, with those put aside that cannot belong to their file.

    ``geographic``: their positions in degrees, where plan coordinates are not known yet. Points that are rejected
    already, or used by a decision, stay as they are and speak for no other; those that a gate has put aside before are
    found once more. Of several files each is looked at by itself.
    """
    parts = []
    for index in _files(points):
        some = points if len(index) == len(points) else points.select(index)
        parts.append((index, *_verdicts(some, geographic)))
    verdicts = _put_aside_before(points)
    for index, found, _ in parts:
        verdicts += [one._replace(indices=index[one.indices]) for one in found]
    return _gathered(points, verdicts, [note for _, _, notes in parts for note in notes])


def _files(points: PointSet) -> List[np.ndarray]:
    """The points (k,) of each file, in their order."""
    if SOURCE not in points.extra:
        return [np.arange(len(points))]
    number = np.unique(points.extra[SOURCE].astype(str), return_inverse=True)[1].reshape(-1)
    order = np.argsort(number, kind="stable")
    return np.split(order, np.flatnonzero(np.diff(number[order])) + 1)


def _put_aside_before(points: PointSet) -> List[Verdict]:
    """One verdict for each reason for which a gate has rejected points already."""
    gated = points.reasons.astype(np.uint32) & np.uint32(GATE_REASONS)
    verdicts = []
    for reason in (Reason.NO_PLACE, Reason.ZERO, Reason.SWAPPED, Reason.STRAY):
        which = np.flatnonzero((points.status == Status.REJECTED) & ((gated & np.uint32(reason)) != 0))
        if len(which):
            verdicts.append(Verdict(which, reason, said.BEFORE[reason], np.full(len(which), np.nan)))
    return verdicts


def _verdicts(points: PointSet, geographic: Optional[GeographicPoints]) -> Tuple[List[Verdict], List[Message]]:
    """What is decided on the points of one file, and what cannot be."""
    by_hand = (points.reasons & np.uint32(Reason.BY_HAND)) != 0
    asked = points.used & ~by_hand
    verdicts: List[Verdict] = []
    notes: List[Message] = []
    places = places_of(points, geographic, asked)
    finite = places.finite()
    lost = np.flatnonzero(asked & ~finite)
    if len(lost):
        verdicts.append(Verdict(lost, Reason.NO_PLACE, said.NO_PLACE, np.full(len(lost), np.nan)))
    index = np.flatnonzero(asked & finite)
    if len(index) > 2:
        site = look_at(points, places, index)
        verdicts += _in_plan(points, places, site, notes)
        gone = np.zeros(len(points), bool)
        for verdict in verdicts:
            gone[verdict.indices] = True
        verdicts += strange_heights(places.height, index[~gone[index]])
    return verdicts, notes


def _in_plan(points: PointSet, places: Places, site: Site, notes: List[Message]) -> List[Verdict]:
    verdicts = verdicts_of(points, places, site)
    asked = [one for one in verdicts if one.reason is Reason.FAR_OFF]
    if len(asked) <= site.most_lone:
        return verdicts
    lines = points.source_line[np.concatenate([one.indices for one in asked])]
    values = {"count": len(lines), "lines": str(int(lines.min())), "distance": distance_said(site.apart)}
    notes.append(message(said.SCATTERED, **values))
    return [one for one in verdicts if one.reason is not Reason.FAR_OFF]


def _gathered(points: PointSet, verdicts: List[Verdict], notes: List[Message]) -> Gate:
    """One finding for each kind of verdict, in the order of their first points."""
    if not verdicts:
        return Gate(points, (), tuple(notes))
    status, reasons = points.status.copy(), points.reasons.astype(np.uint32)
    kinds: Dict[Tuple[str, str, int], List[Verdict]] = {}
    for one in verdicts:
        cause = "" if one.cause is None else one.cause.code
        kinds.setdefault((one.text.code, cause, int(one.reason)), []).append(one)
    found = []
    for same in kinds.values():
        indices = np.concatenate([one.indices for one in same])
        order = np.argsort(indices, kind="stable")
        indices, away = indices[order], np.concatenate([one.away for one in same])[order]
        what = Status.FLAGGED if same[0].reason is Reason.FAR_OFF else Status.REJECTED
        status[indices] = np.maximum(status[indices], np.uint8(what))
        reasons[indices] |= np.uint32(same[0].reason)
        size = float(np.max(away)) if np.isfinite(away).all() else float("nan")
        told = _told(same[0], points.source_line[indices], size)
        found.append(Found(indices, same[0].reason, what, size, told))
    found.sort(key=lambda one: int(one.indices[0]))
    return Gate(points.with_status(status, reasons), tuple(found), tuple(notes))


def _told(verdict: Verdict, lines: np.ndarray, size: float) -> Message:
    shown = ", ".join(str(line) for line in lines[:_LINES_SHOWN].tolist())
    values = {"count": len(lines), "lines": shown + (", …" if len(lines) > _LINES_SHOWN else "")}
    if np.isfinite(size):
        values["distance"] = distance_said(size)
    if np.isfinite(verdict.step):
        values["step"] = distance_said(verdict.step)
    text: Text = verdict.text
    return message(text, **values) if verdict.cause is None else message(text, cause=verdict.cause, **values)


def distance_said(metres: float) -> Figure:
    """A distance in the unit that suits it."""
    if metres >= 10_000:
        return Figure(f"{metres / 1000:.0f} km")
    return Figure(f"{metres:.0f} m" if metres >= 10 else f"{metres:.1f} m")
