"""Times of recording: ISO 8601, the ways in which dates and clocks are otherwise written, or plain seconds."""

from __future__ import annotations

import re
import unicodedata
from datetime import datetime, timedelta, timezone
from typing import Match, Optional, Sequence, Tuple

import numpy as np

from .values import State, parse_numbers

#: Seconds outside are no time of a survey (years 68 and 5138); it also keeps calendar arithmetic safe.
_EARLIEST, _LATEST = -6e10, 1e11
_MONTHS = (
    "jan|janv|janvier|january|januar|enero|ene|gennaio|gen", "feb|fev|fevr|fevrier|february|februar|febrero|febbraio",
    "mar|mars|march|marz|maerz|marzo|mrz", "apr|avr|avril|april|abril|abr|aprile", "may|mai|mayo|maggio|mag",
    "jun|juin|june|juni|junio|giugno|giu", "jul|juil|juillet|july|juli|julio|luglio|lug",
    "aug|aout|august|agosto|ago", "sep|sept|septembre|september|septiembre|settembre|set",
    "oct|octobre|october|oktober|okt|octubre|ottobre|ott", "nov|novembre|november|noviembre",
    "dec|decembre|december|dezember|dez|diciembre|dic|dicembre",
)  # fmt: skip
_MONTH_OF = {word: number for number, words in enumerate(_MONTHS, 1) for word in words.split("|")}
_NAMED = "[^\\W\\d_]{3,10}"
_DATES = tuple(
    re.compile(form)
    for form in (
        r"(?P<y>\d{4})(?P<p>[-/.])(?P<m>\d{1,2})(?P=p)(?P<d>\d{1,2})",
        r"(?P<y>\d{4})(?P<m>\d{2})(?P<d>\d{2})",
        r"(?P<a>\d{1,2})(?P<p>[-/.])(?P<b>\d{1,2})(?P=p)(?P<y>\d{4}|\d{2})",
        rf"(?P<d>\d{{1,2}})[-/. ]{{0,2}}(?P<n>{_NAMED})[-/. ,]{{0,2}}(?P<y>\d{{4}}|\d{{2}})",
        rf"(?P<n>{_NAMED})\.? (?P<d>\d{{1,2}}),? (?P<y>\d{{4}})",
        rf"(?P<y>\d{{4}})[-/. ](?P<n>{_NAMED})[-/. ](?P<d>\d{{1,2}})",
    )
)
_CLOCK = re.compile(
    r"(?P<h>\d{1,2})(?P<c>[:hH])(?P<min>\d{2})(?:(?(c)[:mM])(?P<s>\d{2})(?:[.,:](?P<f>\d{1,9}))?s?)?"
    r"\s*(?P<half>[AaPp]\.?[Mm]\.?)?\s*(?P<zone>Z|UTC|GMT|[+-]\d{2}(?::?\d{2})?)?",
    re.IGNORECASE,
)
_PACKED_CLOCK = re.compile(r"(?P<h>\d{2})(?P<min>\d{2})(?P<s>\d{2})(?:[.,](?P<f>\d{1,9}))?(?P<half>)(?P<zone>Z)?")
_LONGEST = 48
_DIGITS = (0, 1, 2, 3, 5, 6, 8, 9, 11, 12, 14, 15)
_SIGNS = {4: b"-", 7: b"-", 10: b"T ", 13: b":", 16: b":"}


def parse_times(
    text: np.ndarray, start: np.ndarray, end: np.ndarray, decimal: str, month_first: bool = False
) -> Tuple[np.ndarray, np.ndarray]:
    """Seconds since 1970-01-01 UTC (k,) float64, nan where there is none, and a mask of unreadable fields.

    Times without a zone count as UTC, times without a date as of 1970-01-01, plain numbers as seconds, or where they
    are too large for that, as milliseconds or microseconds.
    ``month_first``: what 03/04/2025 is, see :func:`is_month_first`.
    """
    values, good = _usual_form(text, start, end)
    left = np.flatnonzero(~good)
    values[left], state = parse_numbers(text, start[left], end[left], decimal)
    unreadable = np.zeros(len(start), bool)
    for i in left[(state == State.NOT_A_NUMBER) | (state == State.NOT_FINITE)]:
        seconds = seconds_of(text[start[i] : end[i]].tobytes().decode(), month_first)
        values[i] = np.nan if seconds is None else seconds
        unreadable[i] = seconds is None
    for _ in range(2):  # milliseconds, microseconds since 1970
        finer = (values > _LATEST) & (values < _LATEST * 1e6)
        values[finer] /= 1000.0
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


def seconds_of(field: str, month_first: bool = False) -> Optional[float]:
    """Seconds of one date, time of day, or both, None where it is none."""
    found = _take_apart(field)
    if found is None:
        return None
    day, clock = found
    date = (1970, 1, 1) if day is None else _date(day, month_first)
    if date is None:
        return None
    hour, minute, second = (int((clock[key] if clock is not None else None) or 0) for key in ("h", "min", "s"))
    if clock is not None and clock["half"]:
        if not 1 <= hour <= 12:
            return None
        hour = hour % 12 + (12 if clock["half"][0] in "pP" else 0)
    try:
        moment = datetime(date[0], date[1], date[2], hour, minute, tzinfo=timezone.utc)
        moment -= _zone(None if clock is None else clock["zone"])
    except (ValueError, OverflowError):
        return None
    fraction = float("0." + ((clock["f"] if clock is not None else None) or "0"))
    return None if second > 60 else moment.timestamp() + second + fraction


def is_time(field: str) -> bool:
    """Whether a field is a date, a time of day with colons, or both."""
    found = _take_apart(field) if not field.isdecimal() else None
    if found is None:
        return False
    day, clock = found
    return day is not None or (clock is not None and int(clock["h"]) < 24 and int(clock["min"]) < 60)


def has_date(field: str) -> bool:
    """Whether a field begins with a date."""
    found = _take_apart(field)
    return found is not None and found[0] is not None


def is_month_first(fields: Sequence[str]) -> Tuple[bool, bool]:
    """Whether dates such as 03/04/2025 begin with the month, and whether that is sure.

    By numbers over 12, by AM and PM, which are written where the month stands first, and by dots, before which the
    day stands (common practice, no source).
    """
    days = [found[0] for found in map(_take_apart, fields) if found is not None and found[0] is not None]
    pairs = [(int(day["a"]), int(day["b"]), day["p"]) for day in days if "a" in day.re.groupindex]
    if any(a > 12 for a, _, _ in pairs) or not pairs:
        return False, True
    if any(b > 12 for _, b, _ in pairs):
        return True, True
    if any(re.search("[AaPp][.]?[Mm]", field) for field in fields):
        return True, True
    return False, all(sign == "." for _, _, sign in pairs)


def _take_apart(field: str) -> Optional[Tuple[Optional[Match[str]], Optional[Match[str]]]]:
    """The matches of the date and the time of day of a field, None where it is neither or something is left."""
    if not 0 < len(field) <= _LONGEST or not field.isprintable():
        return None
    field = " ".join(field.split())
    clock = _CLOCK.fullmatch(field)
    if clock is not None:
        return None, clock
    for form in _DATES:
        day = form.match(field)
        if day is None:
            continue
        rest = field[day.end() :]
        if not rest:
            return day, None
        apart = re.match("T|[ ,_]+(?:T|at |um )?|-", rest)
        if apart is None:
            continue
        rest = rest[apart.end() :]
        clock = _CLOCK.fullmatch(rest) or _PACKED_CLOCK.fullmatch(rest)
        if clock is not None:
            return day, clock
    return None


def _date(day: Match[str], month_first: bool) -> Optional[Tuple[int, int, int]]:
    """Year, month and day of a date, None where its month is no word for one."""
    parts = day.groupdict()
    year = int(parts["y"]) + (2000 if len(parts["y"]) == 2 else 0)
    if parts.get("n"):
        plain = unicodedata.normalize("NFKD", parts["n"].casefold())
        month = _MONTH_OF.get("".join(sign for sign in plain if not unicodedata.combining(sign)))
        return None if month is None else (year, month, int(parts["d"]))
    if parts.get("a"):
        first, second = int(parts["a"]), int(parts["b"])
        return (year, first, second) if month_first else (year, second, first)
    return year, int(parts["m"]), int(parts["d"])


def _zone(word: Optional[str]) -> timedelta:
    if not word or word.upper() in ("Z", "UTC", "GMT"):
        return timedelta(0)
    digits = word[1:].replace(":", "")
    size = timedelta(hours=int(digits[:2]), minutes=int(digits[2:] or 0))
    return -size if word[0] == "-" else size
