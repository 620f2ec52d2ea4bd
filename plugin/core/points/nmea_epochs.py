"""Sentences of a receiver log put together by their epochs: their dates, one position each, its accuracy."""

from __future__ import annotations

from typing import Dict, List, Tuple

import numpy as np

from .nmea_sentences import Part, joined

_DAY = 86400.0
#: Two sentences are of one epoch when their times differ by less, seconds.
_SAME_TIME = 0.0005


def dated(parts: Dict[str, Part]) -> Tuple[Dict[str, np.ndarray], bool]:
    """Seconds since 1970-01-01 of each sentence of each type, and whether a date was found.

    Sentences without a date take that of the sentence with one before them in the log (else the first behind),
    moved on by a day at each midnight that the times of day show between.
    """
    kinds = list(parts)
    line = np.concatenate([parts[kind].line for kind in kinds])
    seconds = np.concatenate([parts[kind].seconds for kind in kinds])
    date = np.concatenate([parts[kind].values.get("date", np.full(len(parts[kind].line), np.nan)) for kind in kinds])
    order = np.argsort(line, kind="stable")
    timed = order[np.isfinite(seconds[order])]
    steps = np.diff(seconds[timed], prepend=seconds[timed[:1]])
    night = np.cumsum((steps < -_DAY / 2).astype(np.int64) - (steps > _DAY / 2))
    known = np.flatnonzero(np.isfinite(date[timed]))
    day = night.astype(float)
    if len(known):
        source = known[np.maximum(np.searchsorted(known, np.arange(len(timed)), "right") - 1, 0)]
        day = date[timed][source] + night - night[source]
    moment = np.full(len(line), np.nan)
    moment[timed] = day * _DAY + seconds[timed]
    ends = np.cumsum([0] + [len(parts[kind].line) for kind in kinds])
    return {kind: moment[ends[i] : ends[i + 1]] for i, kind in enumerate(kinds)}, bool(len(known))


def _beside(part: Part, moment: np.ndarray, others: Part, other_moment: np.ndarray) -> np.ndarray:
    """For each sentence the one of ``others`` of the same time that is nearest in the log, -1 for none."""
    ticks = np.concatenate([moment, other_moment])
    known = np.isfinite(ticks)
    _, rank = np.unique(np.where(known, np.round(ticks * 1000.0), -1.0), return_inverse=True)
    key = (rank.reshape(-1).astype(np.int64) << 32) + np.concatenate([part.line, others.line])
    n = len(part.line)
    order = np.argsort(key[n:], kind="stable")
    if not len(order):
        return np.full(n, -1)
    at = np.searchsorted(key[n:][order], key[:n])
    best, distance = np.full(n, -1), np.full(n, np.iinfo(np.int64).max)
    for side in (at - 1, at):
        inside = (side >= 0) & (side < len(order))
        place = order[np.clip(side, 0, len(order) - 1)]
        same = inside & known[:n] & (rank[n:][place] == rank[:n])
        away = np.abs(others.line[place] - part.line)
        nearer = same & (away < distance)
        best, distance = np.where(nearer, place, best), np.where(nearer, away, distance)
    return best


def positions(parts: Dict[str, Part], moments: Dict[str, np.ndarray]) -> Tuple[Part, np.ndarray, List[Tuple[int, int]]]:
    """One position an epoch in order of line, their moments, and the lines that repeat an epoch with the line used.

    GNS sentences count where no GGA is of the same time; those beside a GGA are other sentences of its epoch.
    """
    gga, gns = parts.get("GGA"), parts.get("GNS")
    if gga is None or not len(gga.line):
        assert gns is not None
        position, moment = gns, moments["GNS"]
    elif gns is None or not len(gns.line):
        position, moment = gga, moments["GGA"]
    else:
        alone = _beside(gns, moments["GNS"], gga, moments["GGA"]) < 0
        more = gns.select(alone)
        position = joined([gga, more])
        moment = np.concatenate([moments["GGA"], moments["GNS"][alone]])
    order = np.argsort(position.line, kind="stable")
    position, moment = position.select(order), moment[order]
    return _first_of_epoch(position, moment)


def _first_of_epoch(position: Part, moment: np.ndarray) -> Tuple[Part, np.ndarray, List[Tuple[int, int]]]:
    """Without positions that follow one of the same time, as when two talkers send each epoch."""
    with np.errstate(invalid="ignore"):
        again = np.abs(np.diff(moment, prepend=np.nan)) <= _SAME_TIME
    head = np.maximum.accumulate(np.where(again, 0, np.arange(len(moment))))
    doubles = [(int(position.line[i]), int(position.line[head[i]])) for i in np.flatnonzero(again)]
    return position.select(~again), moment[~again], doubles


def deviations(
    parts: Dict[str, Part], moments: Dict[str, np.ndarray], position: Part, moment: np.ndarray
) -> Tuple[np.ndarray, np.ndarray]:
    """sigma_h and sigma_v (n,), metres, of the GST sentence of the same epoch; nan where there is none."""
    nothing = np.full(len(moment), np.nan)
    gst = parts.get("GST")
    if gst is None:
        return nothing, nothing
    place = _beside(position, moment, gst, moments["GST"])
    if not len(gst.line):
        return nothing, nothing
    plan = np.hypot(gst.values["latitude"], gst.values["longitude"])
    rise = gst.values["height"]
    return np.where(place >= 0, plan[place], np.nan), np.where(place >= 0, rise[place], np.nan)
