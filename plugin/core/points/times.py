"""Times of recording: ISO 8601 or plain seconds."""

from __future__ import annotations

import re
from datetime import datetime, timedelta, timezone
from typing import Optional, Tuple

import numpy as np

from .values import State, parse_numbers

#: Seconds outside are no time of a survey (years 68 and 5138); it also keeps calendar arithmetic safe.
_EARLIEST, _LATEST = -6e10, 1e11
_ISO = re.compile(
    r"(?:(\d{4})-?(\d{2})-?(\d{2}))?(?:(?:^|[T ]\s*)(\d{2}):(\d{2})(?::(\d{2})(?:[.,](\d{1,9}))?)?)?"
    r"\s*(Z|UTC|[+-]\d{2}(?::?\d{2})?)?",
    re.IGNORECASE,
)
_DIGITS = (0, 1, 2, 3, 5, 6, 8, 9, 11, 12, 14, 15)
_SIGNS = {4: b"-", 7: b"-", 10: b"T ", 13: b":", 16: b":"}


def parse_times(text: np.ndarray, start: np.ndarray, end: np.ndarray, decimal: str) -> Tuple[np.ndarray, np.ndarray]:
    """Seconds since 1970-01-01 UTC (k,) float64, nan where there is none, and a mask of unreadable fields.

    Times without a zone count as UTC, times without a date as of 1970-01-01, plain numbers as seconds.
    """
    values, good = _usual_form(text, start, end)
    left = np.flatnonzero(~good)
    values[left], state = parse_numbers(text, start[left], end[left], decimal)
    unreadable = np.zeros(len(start), bool)
    for i in left[(state == State.NOT_A_NUMBER) | (state == State.NOT_FINITE)]:
        seconds = _parse_one(text[start[i] : end[i]].tobytes().decode())
        values[i] = np.nan if seconds is None else seconds
        unreadable[i] = seconds is None
    beyond = (values < _EARLIEST) | (values > _LATEST)
    values[beyond] = np.nan
    return values, unreadable | beyond


def _usual_form(text: np.ndarray, start: np.ndarray, end: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Seconds of fields such as 2024-05-31T09:15:30.5Z, all at once, and where they are right."""
    end = end - ((end > start) & (text.take(end - 1, mode="clip") == ord("Z")))
    good = end - start >= 19
    values = np.full(len(start), np.nan)
    if not good.any():
        return values, good
    digit = {j: text.take(start + j, mode="clip").astype(np.int64) - 48 for j in _DIGITS}
    for value in digit.values():
        good &= (value >= 0) & (value <= 9)
    for j, allowed in _SIGNS.items():
        sign = text.take(start + j, mode="clip")
        good &= (sign == allowed[0]) | (sign == allowed[-1])
    year = digit[0] * 1000 + digit[1] * 100 + digit[2] * 10 + digit[3]
    month, day, hour, minute = (digit[j] * 10 + digit[j + 1] for j in (5, 8, 11, 14))
    good &= (month >= 1) & (month <= 12) & (day >= 1) & (hour <= 23) & (minute <= 59) & (year >= 1)
    months = np.where(good, (year - 1970) * 12 + month - 1, 0).astype("datetime64[M]")
    first_day = months.astype("datetime64[D]").astype(np.int64)
    good &= day <= (months + 1).astype("datetime64[D]").astype(np.int64) - first_day
    at = np.flatnonzero(good)
    second, state = parse_numbers(text, start[at] + 17, end[at], ".")
    fine = (state == State.VALUE) & (second >= 0) & (second < 61)
    good[at[~fine]] = False
    at = at[fine]
    values[at] = (first_day[at] + day[at] - 1) * 86400 + hour[at] * 3600.0 + minute[at] * 60.0 + second[fine]
    return values, good


def _parse_one(field: str) -> Optional[float]:
    match = _ISO.fullmatch(field)
    if match is None or (match.group(1) is None and match.group(4) is None):
        return None
    year, month, day, hour, minute, second = (int(group) if group else 0 for group in match.groups()[:6])
    if match.group(1) is None:
        year, month, day = 1970, 1, 1
    try:
        moment = datetime(year, month, day, hour, minute, tzinfo=timezone.utc) - _zone(match.group(8))
    except (ValueError, OverflowError):
        return None
    fraction = float("0." + (match.group(7) or "0"))
    return None if second > 60 else moment.timestamp() + second + fraction


def _zone(word: Optional[str]) -> timedelta:
    if not word or word.upper() in ("Z", "UTC"):
        return timedelta(0)
    digits = word[1:].replace(":", "")
    size = timedelta(hours=int(digits[:2]), minutes=int(digits[2:] or 0))
    return -size if word[0] == "-" else size
