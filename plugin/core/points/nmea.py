"""Positions from receiver logs of NMEA 0183 sentences.

GGA gives an epoch's position, GNS where there is no GGA; GST its accuracy; RMC and ZDA the date. Field
order as NMEA 0183 is commonly described. Checksums are verified; all sentences of a block at once.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Dict, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np

from ..files import PathLike
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..progress import Progress, silent
from ..units import LengthUnit
from .delimited import REJECTED, FileFormat, PointFile
from .geographic import GeographicPoints, HeightKind
from .pointset import make_points
from .rejects import LineAccount, make_rejects
from .rows import Rows, bytes_of, find_lines, split_rows
from .source import TextSource, load_text
from .values import State, parse_numbers, parse_words

NO_SENTENCES = Text(
    "nmea.no_sentences",
    QT_TRANSLATE_NOOP("core", "{file}: none of its {lines} lines is an NMEA 0183 sentence with a right checksum."),
)
NO_POSITIONS = Text(
    "nmea.no_positions",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: none of its {sentences} NMEA sentences gives a position; record GGA or GNS sentences with a fix.",
    ),
)
NO_DATE = Text(
    "nmea.no_date",
    QT_TRANSLATE_NOOP("core", "{file}: no RMC or ZDA sentence gives a date; times are of the day, as of 1970-01-01."),
)
NO_ACCURACY = Text(
    "nmea.no_accuracy",
    QT_TRANSLATE_NOOP("core", "{file}: {count} of {total} positions have no GST sentence; their accuracy is unknown."),
)
HEIGHTS_SENT = Text(
    "nmea.heights_sent",
    QT_TRANSLATE_NOOP("core", "{file}: heights are above mean sea level as the receiver sent them."),
)
HEIGHTS_SUMMED = Text(
    "nmea.heights_summed",
    QT_TRANSLATE_NOOP("core", "{file}: heights are ellipsoidal: height above mean sea level plus geoid separation."),
)
NOT_A_SENTENCE = Text("reject.not_a_sentence", QT_TRANSLATE_NOOP("core", "the line is no NMEA sentence"))
NO_CHECKSUM = Text("reject.no_checksum", QT_TRANSLATE_NOOP("core", "the sentence has no checksum"))
BAD_CHECKSUM = Text(
    "reject.bad_checksum",
    QT_TRANSLATE_NOOP("core", "the checksum is {found}, but the characters give {right}: damaged on its way"),
)
NO_POSITION = Text("reject.no_position", QT_TRANSLATE_NOOP("core", "the receiver had no position"))
BAD_FIELD = Text("reject.bad_field", QT_TRANSLATE_NOOP("core", "{field} cannot be read: '{value}'"))
NO_HEIGHT = Text("reject.no_height", QT_TRANSLATE_NOOP("core", "the receiver sent a position without a height"))
NO_SEPARATION = Text(
    "reject.no_separation",
    QT_TRANSLATE_NOOP("core", "no geoid separation was sent, so the ellipsoidal height is unknown"),
)
SAME_EPOCH = Text("reject.same_epoch", QT_TRANSLATE_NOOP("core", "the same epoch as line {line}, which is used"))

_DOLLAR, _STAR, _COMMA, _BANG = ord("$"), ord("*"), ord(","), ord("!")
_DAY = 86400.0
#: Two sentences are of one epoch when their times differ by less, seconds.
_SAME_TIME = 0.0005
#: Two-digit years from here on are of the last century.
_CENTURY = 80
_TYPES = ("GGA", "GNS", "GST", "RMC", "ZDA")
#: Letters of the GNS mode to numbers of GGA.
_MODES = {"N": 0, "A": 1, "D": 2, "P": 3, "R": 4, "F": 5, "E": 6, "M": 7, "S": 8}
_BEST_FIRST = "RFPDAEMSN"
_SENTENCE = re.compile(r"[$!][A-Z][A-Z0-9]{2,9},")
_HEAD = 1 << 14


@dataclass(frozen=True)
class _Part:
    """Sentences of one type. ``line``: (k,) line numbers; ``seconds``: (k,) time of day, nan for none; ``values``:
    further columns (k,).
    """

    line: np.ndarray
    seconds: np.ndarray
    values: Dict[str, np.ndarray]


class _Block(NamedTuple):
    parts: Dict[str, _Part]
    refused: List[Tuple[int, str, Message]]
    lines: int
    blanks: int
    comments: int
    sentences: int


def is_nmea(path: PathLike) -> bool:
    """Whether most of the first lines of a file are NMEA sentences; False where it cannot be read."""
    try:
        with open(path, "rb") as stream:
            head = stream.read(_HEAD)
    except (OSError, ValueError):
        return False
    lines = [line.strip() for line in head.decode("latin-1").splitlines()]
    some = [_SENTENCE.match(line) is not None for line in lines if line and not line.startswith("#")]
    return bool(some) and sum(some) > len(some) / 2


def read_nmea(
    path: PathLike,
    *,
    heights: HeightKind = HeightKind.ORTHOMETRIC,
    encoding: Optional[str] = None,
    progress: Progress = silent,
) -> PointFile:
    """Read a log of NMEA 0183 sentences of any talker; one point for each epoch with a position.

    ``heights``: ORTHOMETRIC takes heights above mean sea level as sent, ELLIPSOIDAL adds the geoid separation
    that was sent with them. ``sigma_h`` is the root of the summed squares of the deviations of latitude and
    longitude of GST. Extra columns: satellites, hdop, geoid_separation (m). Lines = points + rejects + comments +
    blanks + other sentences, checked. The points of the result have no easting and northing; its ``geographic``
    positions are to be transformed. Raises SurveyError when no position can be read, and as ``load_text``.
    """
    if heights is HeightKind.UNKNOWN:
        raise ValueError("heights of a receiver are orthometric or ellipsoidal")
    source = load_text(path, encoding)
    text = np.frombuffer(source.data, np.uint8)
    blocks: List[_Block] = []
    line = 1
    for start, end in source.blocks():
        progress(start / len(text), "points")
        blocks.append(_read_block(text[start:end], line))
        line += blocks[-1].lines
    progress(1.0, "points")
    if not sum(block.sentences for block in blocks):
        raise SurveyError(NO_SENTENCES, file=source.file, lines=source.lines)
    return _gather(source, blocks, heights)


# Sentences of a block


def _read_block(text: np.ndarray, first_line: int) -> _Block:
    lines = find_lines(text)
    number = first_line + np.arange(len(lines.start))
    blank = lines.lead >= lines.end
    lead = text.take(lines.lead, mode="clip")
    comment = ~blank & (lead == ord("#"))
    begins = ~blank & ((lead == _DOLLAR) | (lead == _BANG))
    star, stated, right = _checksums(text, lines.lead, lines.end, begins)
    fine = begins & (star >= 0) & (stated == right)
    refused = []
    for i in np.flatnonzero(~blank & ~comment & ~fine):
        reason = message(NOT_A_SENTENCE)
        if begins[i] and star[i] < 0:
            reason = message(NO_CHECKSUM)
        elif begins[i]:
            found = bytes_of(text, int(star[i]) + 1, int(lines.end[i]))[:2]
            reason = message(BAD_CHECKSUM, found=found, right=f"{right[i]:02X}")
        refused.append((int(number[i]), bytes_of(text, int(lines.start[i]), int(lines.end[i])), reason))
    parts, bad = _by_type(text, lines.lead, lines.start, lines.end, star, fine, number)
    return _Block(parts, refused + bad, len(number), int(blank.sum()), int(comment.sum()), int(fine.sum()))


def _checksums(
    text: np.ndarray, lead: np.ndarray, end: np.ndarray, begins: np.ndarray
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """For each line the place of its asterisk (-1 for none), the checksum stated (-1) and the right one.

    The checksum is the exclusive or of all characters between $ and *.
    """
    stars = np.flatnonzero(text == _STAR)
    at = np.searchsorted(stars, lead)
    found = stars.take(at, mode="clip") if len(stars) else np.full(len(lead), len(text))
    star = np.where(begins & (at < len(stars)) & (found < end), found, -1)
    # Every second result is that between a $ and its *; reduceat wants places that grow.
    which = np.flatnonzero(star > lead + 1)
    right = np.zeros(len(lead), np.int64)
    if len(which):
        edges = np.column_stack([lead[which] + 1, star[which]]).reshape(-1)
        right[which] = np.bitwise_xor.reduceat(text, edges)[::2]
    high, low = _hex(text.take(star + 1, mode="clip")), _hex(text.take(star + 2, mode="clip"))
    whole = (star >= 0) & (star + 3 <= end) & (high >= 0) & (low >= 0)
    # Only blanks may follow.
    rest = _trimmed(text, star + 3, end)
    return star, np.where(whole & rest, high * 16 + low, -1), right


def _trimmed(text: np.ndarray, start: np.ndarray, end: np.ndarray) -> np.ndarray:
    """Whether there is nothing but blanks from ``start`` to ``end``."""
    solid = np.concatenate([[0], np.cumsum((text != 32) & (text != 9))])
    start = np.minimum(np.maximum(start, 0), end)
    return np.asarray(solid[end] == solid[start])


def _hex(byte: np.ndarray) -> np.ndarray:
    value = byte.astype(np.int64)
    digit = np.where((value >= 48) & (value <= 57), value - 48, -1)
    digit = np.where((value >= 65) & (value <= 70), value - 55, digit)
    return np.where((value >= 97) & (value <= 102), value - 87, digit)


def _by_type(
    text: np.ndarray, lead: np.ndarray, start: np.ndarray, end: np.ndarray, star: np.ndarray, fine: np.ndarray,
    number: np.ndarray,
) -> Tuple[Dict[str, _Part], List[Tuple[int, str, Message]]]:  # fmt: skip
    """The sentences of each type that is read, and those of them whose fields are damaged."""
    lines = find_lines(text)
    rows = split_rows(text, lines, ",", number)
    last = rows.first + rows.count - 1
    ends = rows.field_end.copy()
    ends[last[fine]] = star[fine]
    rows = Rows(text, rows.field_start, ends, rows.first, rows.count, rows.line)
    five = fine & (rows.field_end[rows.first] - lead == 6)
    five &= text.take(lead + 1, mode="clip") != ord("P")  # of one maker only
    parts: Dict[str, _Part] = {}
    refused: List[Tuple[int, str, Message]] = []
    for kind in _TYPES:
        mask = five.copy()
        for i, sign in enumerate(kind.encode()):
            mask &= text.take(lead + 3 + i, mode="clip") == sign
        if not mask.any():
            continue
        part, bad = _READERS[kind](rows.select(mask))
        places = np.flatnonzero(mask)
        keep = np.ones(len(places), bool)
        for i, reason in bad:
            keep[i] = False
            place = int(places[i])
            refused.append((int(number[place]), bytes_of(text, int(start[place]), int(end[place])), reason))
        parts[kind] = _select(part, keep)
    return parts, refused


def _select(part: _Part, which: np.ndarray) -> _Part:
    return _Part(part.line[which], part.seconds[which], {key: values[which] for key, values in part.values.items()})


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


def _read_gga(rows: Rows) -> Tuple[_Part, Bad]:
    """Time, latitude, longitude, quality, satellites, HDOP, height above mean sea level, geoid separation."""
    quality, bad_quality = _number(rows, 6)
    letter = _letter(rows, 10)
    part, bad = _read_position(rows, quality, bad_quality | (quality > 8) | (quality < 0), 11)
    taken = {i for i, _ in bad}
    other = _wrong_fields(rows, [("unit of height", 10, (letter != ord("M")) & (letter != 0))])
    return part, sorted(bad + [item for item in other if item[0] not in taken], key=lambda item: item[0])


def _read_gns(rows: Rows) -> Tuple[_Part, Bad]:
    """As GGA, with one letter of mode for each system in place of the quality: the best of them counts."""
    start, end = rows.column(6)
    words = parse_words(rows.text, start, end).tolist()
    quality_of = {word: _quality_of_mode(word) for word in set(words)}
    quality = np.array([quality_of[word] for word in words])
    wrong = np.array([bool(word) for word in words], bool) & ~np.isfinite(quality)
    return _read_position(rows, quality, wrong, 10)


def _quality_of_mode(word: str) -> float:
    letters = set(word.upper())
    if not letters or not letters <= set(_MODES):
        return np.nan
    return float(_MODES[next(letter for letter in _BEST_FIRST if letter in letters)])


def _read_position(rows: Rows, quality: np.ndarray, bad_quality: np.ndarray, separation_at: int) -> Tuple[_Part, Bad]:
    seconds, bad_time = _time_of_day(rows, 1)
    lat, bad_lat = _angle(rows, 2, "N", "S", 90.0)
    lon, bad_lon = _angle(rows, 4, "E", "W", 180.0)
    sats, bad_sats = _number(rows, 7)
    hdop, bad_hdop = _number(rows, 8)
    height, bad_height = _number(rows, 9)
    separation, bad_separation = _number(rows, separation_at)
    values = {
        "quality": quality, "latitude": lat, "longitude": lon, "satellites": sats, "hdop": hdop, "height": height,
        "separation": separation,
    }  # fmt: skip
    checks = [
        ("time", 1, bad_time), ("latitude", 2, bad_lat), ("longitude", 4, bad_lon), ("quality", 6, bad_quality),
        ("satellites", 7, bad_sats), ("HDOP", 8, bad_hdop), ("height", 9, bad_height),
        ("geoid separation", separation_at, bad_separation),
    ]  # fmt: skip
    bad = _wrong_fields(rows, checks)
    taken = {i for i, _ in bad}
    nowhere = ~(np.isfinite(lat) & np.isfinite(lon))
    lacking = nowhere | ~np.isfinite(height)
    for i in np.flatnonzero(lacking):
        if int(i) not in taken:
            bad.append((int(i), message(NO_POSITION if nowhere[i] else NO_HEIGHT)))
    return _Part(rows.line, seconds, values), sorted(bad, key=lambda item: item[0])


def _read_gst(rows: Rows) -> Tuple[_Part, Bad]:
    """Time and standard deviations of latitude, longitude and height, metres."""
    seconds, bad_time = _time_of_day(rows, 1)
    values, checks = {}, [("time", 1, bad_time)]
    for name, place in (("latitude", 6), ("longitude", 7), ("height", 8)):
        values[name], wrong = _number(rows, place)
        checks.append((f"deviation of {name}", place, wrong | (values[name] < 0)))
    return _Part(rows.line, seconds, values), _wrong_fields(rows, checks)


def _read_rmc(rows: Rows) -> Tuple[_Part, Bad]:
    """Time, and the date ddmmyy where the status is A."""
    seconds, bad_time = _time_of_day(rows, 1)
    packed, bad_date = _number(rows, 9)
    day, rest = np.divmod(packed, 10000.0)
    month, year = np.divmod(rest, 100.0)
    year = np.where(year >= _CENTURY, 1900 + year, 2000 + year)
    date, wrong = _days(year, month, day)
    known = _letter(rows, 2) == ord("A")
    part = _Part(rows.line, seconds, {"date": np.where(known, date, np.nan)})
    return part, _wrong_fields(rows, [("time", 1, bad_time), ("date", 9, bad_date | (wrong & known))])


def _read_zda(rows: Rows) -> Tuple[_Part, Bad]:
    """Time, day, month, year."""
    seconds, bad_time = _time_of_day(rows, 1)
    (day, bad_day), (month, bad_month), (year, bad_year) = (_number(rows, place) for place in (2, 3, 4))
    date, wrong = _days(year, month, day)
    checks = [("time", 1, bad_time), ("date", 4, bad_day | bad_month | bad_year | wrong)]
    return _Part(rows.line, seconds, {"date": date}), _wrong_fields(rows, checks)


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


_READERS = {"GGA": _read_gga, "GNS": _read_gns, "GST": _read_gst, "RMC": _read_rmc, "ZDA": _read_zda}


# Epochs of the whole log


def _join(blocks: Sequence[_Block], kind: str) -> Optional[_Part]:
    parts = [block.parts[kind] for block in blocks if kind in block.parts]
    if not parts:
        return None
    keys = parts[0].values
    return _Part(
        np.concatenate([part.line for part in parts]),
        np.concatenate([part.seconds for part in parts]),
        {key: np.concatenate([part.values[key] for part in parts]) for key in keys},
    )


def _dated(parts: Dict[str, _Part]) -> Tuple[Dict[str, np.ndarray], bool]:
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


def _beside(part: _Part, moment: np.ndarray, others: _Part, other_moment: np.ndarray) -> np.ndarray:
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


def _gather(source: TextSource, blocks: List[_Block], heights: HeightKind) -> PointFile:
    found = {kind: _join(blocks, kind) for kind in _TYPES}
    parts = {kind: part for kind, part in found.items() if part is not None}
    sentences = sum(block.sentences for block in blocks)
    if not any(kind in parts and len(parts[kind].line) for kind in ("GGA", "GNS")):
        raise SurveyError(NO_POSITIONS, file=source.file, sentences=sentences)
    moments, has_date = _dated(parts)
    refused = [item for block in blocks for item in block.refused]
    position, moment, doubles = _positions(parts, moments)
    text_of = _LineText(source)
    refused += [(line, text_of(line), message(SAME_EPOCH, line=used)) for line, used in doubles]
    if heights is HeightKind.ELLIPSOIDAL:
        lacking = ~np.isfinite(position.values["separation"])
        refused += [(int(line), text_of(int(line)), message(NO_SEPARATION)) for line in position.line[lacking]]
        position, moment = _select(position, ~lacking), moment[~lacking]
    if not len(position.line):
        raise SurveyError(NO_POSITIONS, file=source.file, sentences=sentences)
    refused.sort(key=lambda item: item[0])
    return _point_file(
        source, blocks, position, moment, _deviations(parts, moments, position, moment), refused, heights, has_date
    )


class _LineText:
    """The text of single lines of a source."""

    def __init__(self, source: TextSource) -> None:
        self.data = source.data
        self.ends: Optional[np.ndarray] = None

    def __call__(self, line: int) -> str:
        if self.ends is None:
            self.ends = np.flatnonzero(np.frombuffer(self.data, np.uint8) == 10)
        start = int(self.ends[line - 2]) + 1 if line > 1 else 0
        return self.data[start : int(self.ends[line - 1])].decode()


def _positions(
    parts: Dict[str, _Part], moments: Dict[str, np.ndarray]
) -> Tuple[_Part, np.ndarray, List[Tuple[int, int]]]:
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
        more = _select(gns, alone)
        position = _Part(
            np.concatenate([gga.line, more.line]), np.concatenate([gga.seconds, more.seconds]),
            {key: np.concatenate([gga.values[key], more.values[key]]) for key in gga.values},
        )  # fmt: skip
        moment = np.concatenate([moments["GGA"], moments["GNS"][alone]])
    order = np.argsort(position.line, kind="stable")
    position, moment = _select(position, order), moment[order]
    return _first_of_epoch(position, moment)


def _first_of_epoch(position: _Part, moment: np.ndarray) -> Tuple[_Part, np.ndarray, List[Tuple[int, int]]]:
    """Without positions that follow one of the same time, as when two talkers send each epoch."""
    with np.errstate(invalid="ignore"):
        again = np.abs(np.diff(moment, prepend=np.nan)) <= _SAME_TIME
    head = np.maximum.accumulate(np.where(again, 0, np.arange(len(moment))))
    doubles = [(int(position.line[i]), int(position.line[head[i]])) for i in np.flatnonzero(again)]
    return _select(position, ~again), moment[~again], doubles


def _deviations(
    parts: Dict[str, _Part], moments: Dict[str, np.ndarray], position: _Part, moment: np.ndarray
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


def _point_file(
    source: TextSource, blocks: Sequence[_Block], position: _Part, moment: np.ndarray,
    sigma: Tuple[np.ndarray, np.ndarray], refused: List[Tuple[int, str, Message]], heights: HeightKind, has_date: bool,
) -> PointFile:  # fmt: skip
    values, n = position.values, len(position.line)
    height = values["height"] + (values["separation"] if heights is HeightKind.ELLIPSOIDAL else 0.0)
    quality = values["quality"]
    fix = np.where(np.isfinite(quality), quality, -1).astype(np.int8)
    nan = np.full(n, np.nan)
    extra = {"satellites": values["satellites"], "hdop": values["hdop"], "geoid_separation": values["separation"]}
    points = make_points(
        nan, nan, height, sigma_h=sigma[0], sigma_v=sigma[1], fix=fix, time=moment, source_line=position.line,
        extra=extra, source=source.file,
    )  # fmt: skip
    rejects = make_rejects(refused)
    blanks, comments = sum(block.blanks for block in blocks), sum(block.comments for block in blocks)
    damaged = sum(1 for _, _, reason in refused if reason.text in (NOT_A_SENTENCE, NO_CHECKSUM, BAD_CHECKSUM))
    # Sentences that are neither points nor rejects: of time and accuracy, of other types, beside a GGA.
    other = sum(block.sentences for block in blocks) - n - (len(refused) - damaged)
    account = LineAccount(source.lines, n, len(rejects), comments, blanks, 0, other)
    used = FileFormat(",", ".", source.encoding, None, {}, LengthUnit.METRE, LengthUnit.METRE)
    positions = GeographicPoints(values["longitude"], values["latitude"], height, heights)
    notes = (*source.messages, *_notes(source.file, points.sigma_h, rejects.line, heights, has_date))
    return PointFile(points, rejects, account, used, notes, positions)


def _notes(file: str, sigma_h: np.ndarray, rejected: np.ndarray, heights: HeightKind, has_date: bool) -> List[Message]:
    notes = []
    if len(rejected):
        notes.append(message(REJECTED, file=file, count=len(rejected), line=int(rejected[0])))
    notes.append(message(HEIGHTS_SUMMED if heights is HeightKind.ELLIPSOIDAL else HEIGHTS_SENT, file=file))
    if not has_date:
        notes.append(message(NO_DATE, file=file))
    without = int((~np.isfinite(sigma_h)).sum())
    if without:
        notes.append(message(NO_ACCURACY, file=file, count=without, total=len(sigma_h)))
    return notes
