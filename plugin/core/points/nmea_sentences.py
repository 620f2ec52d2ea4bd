"""The NMEA 0183 sentences that are read, by type: what their fields mean, and which of them are damaged.

Field order as the standard is commonly described.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Dict, List, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from .rows import Rows, bytes_of
from .values import State, parse_numbers, parse_words

NO_POSITION = Text("reject.no_position", QT_TRANSLATE_NOOP("core", "the receiver had no position"))
BAD_FIELD = Text("reject.bad_field", QT_TRANSLATE_NOOP("core", "{field} cannot be read: '{value}'"))
NO_HEIGHT = Text("reject.no_height", QT_TRANSLATE_NOOP("core", "the receiver sent a position without a height"))
#: Two-digit years from here on are of the last century.
_CENTURY = 80
#: Letters of the GNS mode to numbers of GGA.
_MODES = {"N": 0, "A": 1, "D": 2, "P": 3, "R": 4, "F": 5, "E": 6, "M": 7, "S": 8}
_BEST_FIRST = "RFPDAEMSN"


@dataclass(frozen=True)
class Part:
    """Sentences of one type. ``line``: (k,) line numbers; ``seconds``: (k,) time of day, nan for none; ``values``:
    further columns (k,).
    """

    line: np.ndarray
    seconds: np.ndarray
    values: Dict[str, np.ndarray]

    def select(self, which: np.ndarray) -> Part:
        """Those of a mask or of numbers."""
        return Part(self.line[which], self.seconds[which], {key: each[which] for key, each in self.values.items()})


def joined(parts: Sequence[Part]) -> Part:
    """Sentences of one type from several parts, at least one, in their order."""
    return Part(
        np.concatenate([part.line for part in parts]),
        np.concatenate([part.seconds for part in parts]),
        {key: np.concatenate([part.values[key] for part in parts]) for key in parts[0].values},
    )


#: Which sentences have a damaged field, and what is wrong there.
Bad = List[Tuple[int, Message]]


def _number(rows: Rows, place: int) -> Tuple[np.ndarray, np.ndarray]:
    """Values of a field, nan for none, and where something stands there that is no number."""
    start, end = rows.column(place)
    values, state = parse_numbers(rows.text, start, end, ".")
    return values, (state != State.VALUE) & (state != State.EMPTY)


def _letter(rows: Rows, place: int) -> np.ndarray:
    """The single character of a field (uint8), 0 for none."""
    start, end = rows.column(place)
    return np.where(end - start == 1, rows.text.take(start, mode="clip"), 0)


def _time_of_day(rows: Rows, place: int) -> Tuple[np.ndarray, np.ndarray]:
    """Seconds of hhmmss.ss, and where the field is wrong."""
    packed, wrong = _number(rows, place)
    hour, rest = np.divmod(packed, 10000.0)
    minute, second = np.divmod(rest, 100.0)
    with np.errstate(invalid="ignore"):
        wrong |= (packed < 0) | (hour > 23) | (minute > 59) | (second >= 61)
    # To a microsecond, as hhmmss.ss is no exact float.
    return np.where(wrong, np.nan, np.round(hour * 3600 + minute * 60 + second, 6)), wrong


def _angle(rows: Rows, place: int, positive: str, negative: str, limit: float) -> Tuple[np.ndarray, np.ndarray]:
    """Degrees of ddmm.mmmm and its letter, and where they are wrong; nan where empty."""
    packed, wrong = _number(rows, place)
    degree, minute = np.divmod(packed, 100.0)
    value = degree + minute / 60.0
    letter = _letter(rows, place + 1)
    given = np.isfinite(packed)
    with np.errstate(invalid="ignore"):
        wrong |= given & ((packed < 0) | (minute >= 60) | (value > limit))
    wrong |= given & (letter != ord(positive)) & (letter != ord(negative))
    return np.where(letter == ord(negative), -value, value), wrong


def _wrong_fields(rows: Rows, checks: Sequence[Tuple[str, int, np.ndarray]]) -> Bad:
    bad: Dict[int, Message] = {}
    for name, place, wrong in checks:
        for i in np.flatnonzero(wrong):
            field = int(rows.first[i]) + place
            value = ""
            if place < rows.count[i]:
                value = bytes_of(rows.text, int(rows.field_start[field]), int(rows.field_end[field]))[:40]
            bad.setdefault(int(i), message(BAD_FIELD, field=name, value=value))
    return sorted(bad.items(), key=lambda item: item[0])


def _read_gga(rows: Rows) -> Tuple[Part, Bad]:
    """Time, latitude, longitude, quality, satellites, HDOP, height above mean sea level, geoid separation,
    age of the correction (s).
    """
    quality, bad_quality = _number(rows, 6)
    letter = _letter(rows, 10)
    part, bad = _read_position(rows, quality, bad_quality | (quality > 8) | (quality < 0), 11, 13)
    taken = {i for i, _ in bad}
    other = _wrong_fields(rows, [("unit of height", 10, (letter != ord("M")) & (letter != 0))])
    return part, sorted(bad + [item for item in other if item[0] not in taken], key=lambda item: item[0])


def _read_gns(rows: Rows) -> Tuple[Part, Bad]:
    """As GGA, with one letter of mode for each system in place of the quality: the best of them counts."""
    start, end = rows.column(6)
    words = parse_words(rows.text, start, end).tolist()
    quality_of = {word: _quality_of_mode(word) for word in set(words)}
    quality = np.array([quality_of[word] for word in words])
    wrong = np.array([bool(word) for word in words], bool) & ~np.isfinite(quality)
    return _read_position(rows, quality, wrong, 10, 11)


def _quality_of_mode(word: str) -> float:
    letters = set(word.upper())
    if not letters or not letters <= set(_MODES):
        return np.nan
    return float(_MODES[next(letter for letter in _BEST_FIRST if letter in letters)])


def _read_position(
    rows: Rows, quality: np.ndarray, bad_quality: np.ndarray, separation_at: int, age_at: int
) -> Tuple[Part, Bad]:
    seconds, bad_time = _time_of_day(rows, 1)
    lat, bad_lat = _angle(rows, 2, "N", "S", 90.0)
    lon, bad_lon = _angle(rows, 4, "E", "W", 180.0)
    sats, bad_sats = _number(rows, 7)
    hdop, bad_hdop = _number(rows, 8)
    height, bad_height = _number(rows, 9)
    separation, bad_separation = _number(rows, separation_at)
    age, bad_age = _number(rows, age_at)
    values = {
        "quality": quality, "latitude": lat, "longitude": lon, "satellites": sats, "hdop": hdop, "height": height,
        "separation": separation, "age": age,
    }  # fmt: skip
    checks = [
        ("time", 1, bad_time), ("latitude", 2, bad_lat), ("longitude", 4, bad_lon), ("quality", 6, bad_quality),
        ("satellites", 7, bad_sats), ("HDOP", 8, bad_hdop), ("height", 9, bad_height),
        ("geoid separation", separation_at, bad_separation), ("age of the correction", age_at, bad_age),
    ]  # fmt: skip
    bad = _wrong_fields(rows, checks)
    taken = {i for i, _ in bad}
    nowhere = ~(np.isfinite(lat) & np.isfinite(lon))
    lacking = nowhere | ~np.isfinite(height)
    for i in np.flatnonzero(lacking):
        if int(i) not in taken:
            bad.append((int(i), message(NO_POSITION if nowhere[i] else NO_HEIGHT)))
    return Part(rows.line, seconds, values), sorted(bad, key=lambda item: item[0])


def _read_gst(rows: Rows) -> Tuple[Part, Bad]:
    """Time and standard deviations of latitude, longitude and height, metres."""
    seconds, bad_time = _time_of_day(rows, 1)
    values, checks = {}, [("time", 1, bad_time)]
    for name, place in (("latitude", 6), ("longitude", 7), ("height", 8)):
        values[name], wrong = _number(rows, place)
        checks.append((f"deviation of {name}", place, wrong | (values[name] < 0)))
    return Part(rows.line, seconds, values), _wrong_fields(rows, checks)


def _read_rmc(rows: Rows) -> Tuple[Part, Bad]:
    """Time, and the date ddmmyy where the status is A."""
    seconds, bad_time = _time_of_day(rows, 1)
    packed, bad_date = _number(rows, 9)
    day, rest = np.divmod(packed, 10000.0)
    month, year = np.divmod(rest, 100.0)
    year = np.where(year >= _CENTURY, 1900 + year, 2000 + year)
    date, wrong = _days(year, month, day)
    known = _letter(rows, 2) == ord("A")
    part = Part(rows.line, seconds, {"date": np.where(known, date, np.nan)})
    return part, _wrong_fields(rows, [("time", 1, bad_time), ("date", 9, bad_date | (wrong & known))])


def _read_zda(rows: Rows) -> Tuple[Part, Bad]:
    """Time, day, month, year."""
    seconds, bad_time = _time_of_day(rows, 1)
    (day, bad_day), (month, bad_month), (year, bad_year) = (_number(rows, place) for place in (2, 3, 4))
    date, wrong = _days(year, month, day)
    checks = [("time", 1, bad_time), ("date", 4, bad_day | bad_month | bad_year | wrong)]
    return Part(rows.line, seconds, {"date": date}), _wrong_fields(rows, checks)


def _days(year: np.ndarray, month: np.ndarray, day: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Days since 1970-01-01, nan where a part is missing, and where they make no date."""
    given = np.isfinite(year) & np.isfinite(month) & np.isfinite(day)
    with np.errstate(invalid="ignore"):
        good = given & (month >= 1) & (month <= 12) & (day >= 1) & (year >= 1980) & (year <= 2200)
    months = np.where(good, (year - 1970) * 12 + month - 1, 0).astype(np.int64).astype("datetime64[M]")
    first = months.astype("datetime64[D]").astype(np.int64)
    length = (months + 1).astype("datetime64[D]").astype(np.int64) - first
    good &= np.where(good, day, 0) <= length
    return np.where(good, first + day - 1, np.nan), given & ~good


#: By type: the values of sentences, and what is wrong with some.
READERS = {"GGA": _read_gga, "GNS": _read_gns, "GST": _read_gst, "RMC": _read_rmc, "ZDA": _read_zda}
