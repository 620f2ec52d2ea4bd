"""Positions from receiver logs of NMEA 0183 sentences.

GGA gives an epoch's position, GNS where there is no GGA; GST its accuracy; RMC and ZDA the date. Checksums are
verified; all sentences of a block at once.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Any, Dict, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np

from ..files import PathLike
from ..messages import Message, SurveyError, message
from ..progress import Progress, silent
from ..units import LengthUnit
from .antenna import poles_by_line, to_ground
from .delimited import REJECTED
from .geographic import GeographicPoints, HeightKind
from .given import Given
from .nmea_epochs import dated, deviations, positions
from .nmea_said import (
    BAD_CHECKSUM,
    HEIGHTS_SENT,
    HEIGHTS_SUMMED,
    NO_ACCURACY,
    NO_CHECKSUM,
    NO_DATE,
    NO_POSITIONS,
    NO_SENTENCES,
    NO_SEPARATION,
    NOT_A_SENTENCE,
    SAME_EPOCH,
)
from .nmea_sentences import READERS, Part, joined
from .pointfile import FileFormat, PointFile
from .pointset import make_points
from .pole_words import pole_said
from .questions import QuestionError
from .rejects import LineAccount, make_rejects
from .rows import Lines, Rows, bytes_of, find_lines, split_rows
from .source import TextSource, load_text

_DOLLAR, _STAR, _BANG = ord("$"), ord("*"), ord("!")
_SENTENCE = re.compile(r"[$!][A-Z][A-Z0-9]{2,9},")
_WITHIN = re.compile(r"^([^$!]{1,80})[$!][A-Z][A-Z0-9]{2,9},[^*]*\*[0-9A-Fa-f]{2}")
_SENTENCE_IN_LINE = re.compile(rb"^[^$!]{1,80}([$!][A-Z][A-Z0-9]{2,9},[^*]*\*[0-9A-Fa-f]{2}).*$")
_HEAD = 1 << 14


class _Block(NamedTuple):
    parts: Dict[str, Part]
    refused: List[Tuple[int, str, Message]]
    lines: int
    blanks: int
    comments: int
    sentences: int
    poles: List[Tuple[int, float]]


def is_nmea(path: PathLike) -> bool:
    """Whether most of the first lines of a file are NMEA sentences; False where it cannot be read."""
    try:
        with open(path, "rb") as stream:
            head = stream.read(_HEAD)
    except (OSError, ValueError):
        return False
    return is_log(head)


def is_log(data: bytes) -> bool:
    """Whether most of the first lines of a text are NMEA sentences, with or without something before them."""
    lines = [line.strip() for line in data[:_HEAD].decode("latin-1").splitlines()]
    some = [line for line in lines if line and not line.startswith("#")]
    plain = sum(_SENTENCE.match(line) is not None for line in some)
    return bool(some) and (plain > len(some) / 2 or _prefixed(some))


def _prefixed(lines: Sequence[str]) -> bool:
    """Whether in most lines a sentence with its checksum stands behind a few other signs, which are no coordinates."""
    found = [_WITHIN.search(line) for line in lines]
    before = [match.group(1) for match in found if match is not None]
    return len(before) > len(lines) / 2 and not any(len(re.findall(r"\d+\.\d+", text)) > 2 for text in before)


def _without_prefixes(source: TextSource) -> TextSource:
    """The log with its sentences alone, where a program wrote times or ports before them."""
    lines = [line.strip() for line in source.data[:_HEAD].decode("latin-1").splitlines()]
    if not _prefixed([line for line in lines if line and not line.startswith("#")]):
        return source
    data = b"".join(_SENTENCE_IN_LINE.sub(rb"\1", line) + b"\n" for line in source.data.split(b"\n")[:-1])
    return replace(source, data=data, stood=source.data)


def read_nmea(
    path: PathLike,
    *,
    heights: HeightKind = HeightKind.ORTHOMETRIC,
    encoding: Optional[str] = None,
    progress: Progress = silent,
    **values: Any,
) -> PointFile:
    """Read a log of NMEA 0183 sentences of any talker; one point for each epoch with a position.

    Its heights are those of the antenna; ``values`` say what brings them down to the ground, see
    :class:`.given.Given`, else what the log itself says in sentences of text (TXT) or comments, such as "pole height
    2.000 m", from there on. Without either it is an error that asks.

    ``heights``: ORTHOMETRIC takes heights above mean sea level as sent, ELLIPSOIDAL adds the geoid separation
    that was sent with them. ``sigma_h`` is the root of the summed squares of the deviations of latitude and
    longitude of GST. Extra columns: satellites, hdop, geoid_separation (m). Lines = points + rejects + comments +
    blanks + other sentences, checked. The points of the result have no easting and northing; its ``geographic``
    positions are to be transformed. Raises SurveyError when no position can be read, and as ``load_text``.
    """
    return read_log(load_text(path, encoding), heights, Given(**values), progress)


def read_log(source: TextSource, heights: HeightKind, given: Given, progress: Progress) -> PointFile:
    """As :func:`read_nmea`, from text that was loaded already."""
    if heights is HeightKind.UNKNOWN:
        raise ValueError("heights of a receiver are orthometric or ellipsoidal")
    if source.stood:  # a sentence counts as it was sent
        source = replace(source, data=source.stood, stood=b"")
    source = _without_prefixes(source)
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
    return _gather(source, blocks, heights, given)


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
    parts, bad = _by_type(text, lines, star, fine, number)
    return _Block(
        parts, refused + bad, len(number), int(blank.sum()), int(comment.sum()), int(fine.sum()),
        _poles(text, lines, comment | (fine & _is_text(text, lines)), number),
    )  # fmt: skip


def _is_text(text: np.ndarray, lines: Lines) -> np.ndarray:
    """Which sentences are of type TXT, or of one maker only, which may say anything."""
    own = text.take(lines.lead + 1, mode="clip") == ord("P")
    txt = np.ones(len(lines.lead), bool)
    for i, sign in enumerate(b"TXT"):
        txt &= text.take(lines.lead + 3 + i, mode="clip") == sign
    return np.asarray(own | txt)


def _poles(text: np.ndarray, lines: Lines, which: np.ndarray, number: np.ndarray) -> List[Tuple[int, float]]:
    """Line and metres of each statement of a pole height."""
    found = []
    for i in np.flatnonzero(which).tolist():
        metres = pole_said(bytes_of(text, int(lines.start[i]), int(lines.end[i])))
        if metres is not None:
            found.append((int(number[i]), metres))
    return found


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
    text: np.ndarray, lines: Lines, star: np.ndarray, fine: np.ndarray, number: np.ndarray
) -> Tuple[Dict[str, Part], List[Tuple[int, str, Message]]]:
    """The sentences of each type that is read, and those of them whose fields are damaged."""
    rows = split_rows(text, lines, ",", number)
    last = rows.first + rows.count - 1
    ends = rows.field_end.copy()
    ends[last[fine]] = star[fine]
    rows = Rows(text, rows.field_start, ends, rows.first, rows.count, rows.line)
    five = fine & (rows.field_end[rows.first] - lines.lead == 6)
    five &= text.take(lines.lead + 1, mode="clip") != ord("P")  # of one maker only
    parts: Dict[str, Part] = {}
    refused: List[Tuple[int, str, Message]] = []
    for kind, read in READERS.items():
        mask = five.copy()
        for i, sign in enumerate(kind.encode()):
            mask &= text.take(lines.lead + 3 + i, mode="clip") == sign
        if not mask.any():
            continue
        part, bad = read(rows.select(mask))
        places = np.flatnonzero(mask)
        keep = np.ones(len(places), bool)
        for i, reason in bad:
            keep[i] = False
            place = int(places[i])
            refused.append((int(number[place]), bytes_of(text, int(lines.start[place]), int(lines.end[place])), reason))
        parts[kind] = part.select(keep)
    return parts, refused


def _gather(source: TextSource, blocks: List[_Block], heights: HeightKind, given: Given) -> PointFile:
    found = {kind: [block.parts[kind] for block in blocks if kind in block.parts] for kind in READERS}
    parts = {kind: joined(each) for kind, each in found.items() if each}
    sentences = sum(block.sentences for block in blocks)
    if not any(kind in parts and len(parts[kind].line) for kind in ("GGA", "GNS")):
        raise SurveyError(NO_POSITIONS, file=source.file, sentences=sentences)
    moments, has_date = dated(parts)
    refused = [item for block in blocks for item in block.refused]
    position, moment, doubles = positions(parts, moments)
    text_of = _LineText(source)
    refused += [(line, text_of(line), message(SAME_EPOCH, line=used)) for line, used in doubles]
    if heights is HeightKind.ELLIPSOIDAL:
        lacking = ~np.isfinite(position.values["separation"])
        refused += [(int(line), text_of(int(line)), message(NO_SEPARATION)) for line in position.line[lacking]]
        position, moment = position.select(~lacking), moment[~lacking]
    if not len(position.line):
        raise SurveyError(NO_POSITIONS, file=source.file, sentences=sentences)
    refused.sort(key=lambda item: item[0])
    return _point_file(
        source,
        blocks,
        position,
        moment,
        deviations(parts, moments, position, moment),
        refused,
        heights,
        has_date,
        given,
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


def _point_file(
    source: TextSource, blocks: Sequence[_Block], position: Part, moment: np.ndarray,
    sigma: Tuple[np.ndarray, np.ndarray], refused: List[Tuple[int, str, Message]], heights: HeightKind, has_date: bool,
    given: Given,
) -> PointFile:  # fmt: skip
    values, n = position.values, len(position.line)
    height = values["height"] + (values["separation"] if heights is HeightKind.ELLIPSOIDAL else 0.0)
    said = [one for block in blocks for one in block.poles]
    ground = to_ground(source.file, height, given, poles_by_line(said, position.line), "antenna", True)
    if ground.question is not None:
        raise QuestionError(source.file, [ground.question])
    height = ground.height
    quality = values["quality"]
    fix = np.where(np.isfinite(quality), quality, -1).astype(np.int8)
    nan = np.full(n, np.nan)
    extra = {"satellites": values["satellites"], "hdop": values["hdop"], "geoid_separation": values["separation"]}
    if np.isfinite(values["age"]).any():
        extra["age"] = values["age"]
    points = make_points(
        nan, nan, height, sigma_h=sigma[0], sigma_v=sigma[1], fix=fix, time=moment, source_line=position.line,
        extra=extra, source=source.file,
    )  # fmt: skip
    if source.stood:
        texts = source.texts([line for line, _, _ in refused])
        refused = [(line, text, why) for (line, _, why), text in zip(refused, texts)]
    rejects = make_rejects(refused)
    blanks, comments = sum(block.blanks for block in blocks), sum(block.comments for block in blocks)
    damaged = sum(1 for _, _, reason in refused if reason.text in (NOT_A_SENTENCE, NO_CHECKSUM, BAD_CHECKSUM))
    # Sentences that are neither points nor rejects: of time and accuracy, of other types, beside a GGA.
    other = sum(block.sentences for block in blocks) - n - (len(refused) - damaged)
    account = LineAccount(source.lines, n, len(rejects), comments, blanks, 0, other)
    used = FileFormat(",", ".", source.encoding, None, {}, LengthUnit.METRE, LengthUnit.METRE)
    geographic = GeographicPoints(values["longitude"], values["latitude"], height, heights)
    done = () if ground.statement is None else (ground.statement,)
    notes = (
        *source.messages, *_notes(source.file, points.sigma_h, rejects.line, heights, has_date), *ground.notes, *done,
    )  # fmt: skip
    return PointFile(points, rejects, account, used, notes, geographic, log=True, ground=ground.statement)


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
