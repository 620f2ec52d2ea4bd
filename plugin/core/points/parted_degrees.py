"""Degrees, minutes and seconds in columns of their own, joined to one angle."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import List, NamedTuple, Sequence, Tuple

import numpy as np

from .lines_of_text import split_line
from .rows import LF, QUOTE, Lines, bytes_of, find_lines, split_rows
from .source import TextSource
from .vocabulary import each
from .words import fold, read_word

#: What stands in place of the delimiters, as the reader of angles takes it.
_SIGNS = b"dm"
_PARTS = (
    frozenset(each("d deg degs degree degrees grad degre degres grado grados gradi graus stopnie grader graden")),
    frozenset(each("m min mins minute minutes minuten minuto minutos minuti minuty minuter mm")),
    frozenset(each("s sec secs second seconds sek sekunden seconde secondes segundo segundos seg secondi ss sekundy")),
)
_SIGN_PARTS = ("°º˚", "'′’", '"″”')


class _Run(NamedTuple):
    """Columns that hold the parts of one angle: the first place, how many, and the word for all."""

    place: int
    columns: int
    word: str


def runs_of_parts(words: Sequence[str]) -> List[_Run]:
    """The columns whose header words differ by the part of a degree alone, latitude or longitude before it."""
    read = [_part_of(word) for word in words]
    found: List[_Run] = []
    i = 0
    while i < len(words):
        count = 1
        while i + count < len(words) and count < 3 and read[i + count] == (read[i][0], count):
            count += 1
        if count > 1 and read[i][1] == 0:
            found.append(_Run(i, count, read[i][0]))
            i += count
        else:
            i += 1
    return found


def _part_of(word: str) -> Tuple[str, int]:
    """The role that a header word begins with, and which part of a degree it says; "", -1 for neither."""
    tokens = fold(re.sub(r"(?<=[a-z])(?=[A-Z]+$)", " ", word.strip())).split()
    tokens = _parted(tokens[0]) if len(tokens) == 1 else tokens
    for part, names in enumerate(_PARTS):
        signs = _SIGN_PARTS[part]
        bracket = re.search(r"[\(\[]\s*(.{1,2}?)\s*[\)\]]\s*$", word)
        said = (len(tokens) > 1 and tokens[-1] in names) or (bracket is not None and bracket[1] in signs)
        stem = " ".join(tokens[:-1] if len(tokens) > 1 and tokens[-1] in names else tokens)
        role = read_word(stem).role if said else ""
        if role in ("latitude", "longitude"):
            return role, part
    return "", -1


def _parted(token: str) -> List[str]:
    """A word such as "latdeg" as two."""
    for names in _PARTS:
        for name in names:
            if token.endswith(name) and read_word(token[: -len(name)]).role in ("latitude", "longitude"):
                return [token[: -len(name)], name]
    return [token]


def runs_by_values(rows: Sequence[Sequence[str]]) -> List[_Run]:
    """Columns without words that can only be the degrees, minutes and seconds of two angles: whole degrees that hardly
    change, whole minutes, seconds below 60 with decimals, and the same once more.
    """
    rows = [row for row in rows if len(row) > 5]
    if len(rows) < 5 or len({len(row) for row in rows}) != 1:
        return []
    columns = list(zip(*rows))
    at = next((i for i in range(len(columns) - 5) if _are_parts(columns[i : i + 3])), -1)
    if at < 0 or not _are_parts(columns[at + 3 : at + 6]):
        return []
    return [_Run(at, 3, ""), _Run(at + 3, 3, "")]


def _are_parts(columns: Sequence[Sequence[str]]) -> bool:
    degrees, minutes, seconds = columns
    return (
        all(re.fullmatch(r"[+-]?[0-9]{1,3}", field) and abs(int(field)) <= 180 for field in degrees)
        and len(set(degrees)) <= 2
        and all(re.fullmatch(r"[0-9]{1,2}", field) and int(field) < 60 for field in minutes)
        and len(set(minutes)) <= 5
        and all(
            re.fullmatch(r"[0-9]{1,2}[.,][0-9]{3,}", field) and int(field[:2].strip(".,")) < 60 for field in seconds
        )
    )


def joined_parts(source: TextSource, delimiter: str, runs: Sequence[_Run]) -> TextSource:
    """The file with the delimiters within each of ``runs`` replaced, so that each is one column."""
    text = np.frombuffer(source.data, np.uint8).copy()
    lines = find_lines(text)
    rows = split_rows(text, lines, delimiter, np.arange(len(lines.start)))
    quoted = np.zeros(len(lines.start), bool)
    quoted[np.searchsorted(lines.end, np.flatnonzero(text == QUOTE))] = True
    plain = ~quoted
    for run in runs:
        for k in range(run.columns - 1):
            which = plain & (rows.count > run.place + k + 1)
            field = rows.first[which] + run.place + k
            text[rows.field_end[field]] = _SIGNS[k]
    data = text.tobytes()
    if quoted.any():
        data = _with_quoted(text, lines, quoted, delimiter, runs)
    return replace(source, data=data, stood=source.stood or source.data)


def _with_quoted(
    text: np.ndarray, lines: Lines, quoted: np.ndarray, delimiter: str, runs: Sequence[_Run]
) -> bytes:  # fmt: skip
    """The same with the lines that have quotes taken apart one by one."""
    made: List[bytes] = []
    for i, (start, end) in enumerate(zip(lines.start.tolist(), lines.end.tolist())):
        fields = split_line(bytes_of(text, start, end), delimiter) if quoted[i] else None
        if fields is None:
            made.append(text[start:end].tobytes())
            continue
        for run in reversed(runs):
            parts = fields[run.place : run.place + run.columns]
            whole = "".join(part + sign for part, sign in zip(parts, (*_SIGNS.decode()[: len(parts) - 1], "")))
            fields[run.place : run.place + run.columns] = [whole]
        cells = [
            '"' + field.replace('"', '""') + '"' if delimiter in field or '"' in field else field for field in fields
        ]
        made.append(delimiter.join(cells).encode())
    return b"".join(line + bytes([LF]) for line in made)


def joined_words(words: Sequence[str], runs: Sequence[_Run]) -> Tuple[str, ...]:
    """The header with one word in place of those of each run."""
    joined = list(words)
    for run in reversed(runs):
        joined[run.place : run.place + run.columns] = [run.word]
    return tuple(joined)
