"""The lines of a 2DM file by their records, and the numbers in them, all of a kind at once."""

from __future__ import annotations

import warnings
from dataclasses import dataclass
from pathlib import Path
from typing import Dict, Iterator, List, Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from .digits import from_digits

ROWS = 1 << 17  # rows formatted at a time; bounds the memory
NO_FILE = Text(
    "mesh.missing",
    QT_TRANSLATE_NOOP("core", "{file}: the mesh file cannot be read ({reason}); check the path."),
)
NOT_2DM = Text(
    "mesh.not_2dm",
    QT_TRANSLATE_NOOP("core", "{file}, line 1: this is not a 2DM mesh, which begins with MESH2D; choose another file."),
)
BAD_RECORD = Text(
    "mesh.bad_record",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: “{found}” is not a whole {record} record; write the mesh anew or mend this line."
    ),
)
NOT_TRIANGLE = Text(
    "mesh.not_triangle",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: a {record} cell is not a triangle; split the cells into triangles (E3T) first."
    ),
)
NO_TRIANGLES = Text(
    "mesh.no_triangles",
    QT_TRANSLATE_NOOP("core", "{file}: the mesh has no triangles; choose another file or write it anew."),
)


@dataclass(frozen=True)
class Records:
    """The bytes of a file, where its lines ``begin`` (behind blanks) and ``end``, and their numbers by record.

    ``data``: (b,) uint8. Lines are counted from 1; line i is ``data[begin[i - 1]:end[i - 1]]``.
    """

    file: str
    data: np.ndarray
    begin: np.ndarray
    end: np.ndarray
    rows: Dict[bytes, np.ndarray]

    def text(self, line: int) -> bytes:
        return self.data[self.begin[line - 1] : self.end[line - 1]].tobytes()

    def texts(self, record: bytes) -> Iterator[bytes]:
        return (self.text(line) for line in self.rows[record].tolist())


_CELLS = (b"E2L", b"E3L", b"E4Q", b"E6T", b"E8Q", b"E9Q")
_BLANKS = np.isin(np.arange(256), np.frombuffer(b" \t\n\v\f\r", np.uint8))


def content_of(path: Path) -> bytes:
    """All of the file. Raises SurveyError when it cannot be read."""
    try:
        return path.read_bytes()
    except OSError as error:
        raise SurveyError(NO_FILE, file=str(path), reason=error.strerror or str(error)) from None


def split_records(path: Path, content: bytes) -> Records:
    """The records in the ``content`` of the file ``path``. Raises SurveyError where it is no mesh of triangles."""
    if b"\r" in content:
        content = content.replace(b"\r\n", b"\n").replace(b"\r", b"\n")
    data, begin, end = _lines(content)
    first = data[begin[0] : end[0]].tobytes() if len(begin) else b""
    if first.split() != [b"MESH2D"]:
        raise SurveyError(NOT_2DM, file=str(path))
    for kind in _CELLS:
        other = _begin_with(kind, data, begin)
        if other.any():
            raise SurveyError(NOT_TRIANGLE, file=str(path), line=int(np.argmax(other)) + 1, record=kind.decode())
    rows = {record: np.flatnonzero(_begin_with(record, data, begin)) + 1 for record in (b"ND", b"E3T", b"NS", b"#")}
    if len(rows[b"E3T"]) == 0:
        raise SurveyError(NO_TRIANGLES, file=str(path))
    return Records(str(path), data, begin, end, rows)


def _lines(content: bytes) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """The bytes, some line ends after them, and where each line begins (behind blanks) and ends."""
    data = np.frombuffer(content + b"\n\n\n", np.uint8)  # so that any line has three bytes to look at
    end = np.flatnonzero(data[: len(content) + 1] == ord("\n"))
    begin = np.concatenate([[0], end[:-1] + 1])
    indented = np.flatnonzero(_BLANKS[data[begin]] & (begin < end))
    while len(indented):
        begin[indented] += 1
        indented = indented[_BLANKS[data[begin[indented]]] & (begin[indented] < end[indented])]
    return data, begin, end


def _begin_with(word: bytes, data: np.ndarray, begin: np.ndarray) -> np.ndarray:
    """Which lines (k,) begin with the letters ``word``."""
    mask: np.ndarray = data[begin] == word[0]
    for offset in range(1, len(word)):
        mask[mask] = data[begin[mask] + offset] == word[offset]
    return mask


def numbers_of(records: Records, record: bytes, counts: Sequence[int], whole: bool) -> np.ndarray:
    """The numbers of all ``record`` lines (n, k), k one of ``counts`` and the same in each line."""
    rows = records.rows[record]
    if len(rows) == 0:
        return np.empty((0, counts[0]))
    values = _equal_lines(records, record)
    if values is not None and values.shape[1] in counts and not (whole and (values != np.rint(values)).any()):
        return values
    text, found = _words(records, record)
    if found in counts:
        with warnings.catch_warnings():
            warnings.simplefilter("error", DeprecationWarning)  # how numpy says that it met no number
            try:
                values = np.fromstring(text, float, sep=" ").reshape(-1, found)
            except (DeprecationWarning, ValueError):
                values = np.empty((0, found))
        good = len(values) == len(rows) and np.isfinite(values).all()
        if good and (not whole or (values == np.rint(values)).all()):
            return values
    raise _bad_record(records, record, counts, whole)


def _equal_lines(records: Records, record: bytes) -> Optional[np.ndarray]:
    """The numbers (n, k) of ``record`` lines that come in runs of equal columns, as :func:`.mesh.write_2dm` has them.

    None where they do not; they may be good all the same.
    """
    line = records.rows[record] - 1
    begin, end = records.begin[line], records.end[line]
    width = end - begin
    changes = np.flatnonzero((begin[1:] - end[:-1] != 1) | (width[1:] != width[:-1])) + 1
    if len(changes) > len(line) // 1000 + 16:
        return None
    runs = np.unique(np.concatenate([[0], changes, np.arange(0, len(line), ROWS), [len(line)]]))
    found: List[np.ndarray] = []
    for first, last in zip(runs[:-1].tolist(), runs[1:].tolist()):
        wide = int(width[first]) + 1
        text = records.data[begin[first] : begin[first] + (last - first) * wide].reshape(-1, wide)
        text = text[:, len(record) : -1]
        values = from_digits(text) if text.size and (text[:, 0] == ord(" ")).all() else None
        if values is None or (found and values.shape[1] != found[0].shape[1]):
            return None
        found.append(values)
    return np.concatenate(found)


def _words(records: Records, record: bytes) -> Tuple[bytes, int]:
    """What stands behind the word ``record`` in all its lines, and how many words that is in each.

    The number is -1 where lines differ.
    """
    line = records.rows[record] - 1
    begin, end = records.begin[line] + len(record), records.end[line]
    if not _BLANKS[records.data[begin]].all():
        return b"", -1  # the record's word goes on
    low, high = int(begin[0]), int(end[-1])
    # All that is between these lines becomes blank.
    turn = np.zeros(high - low + 1, np.int8)
    turn[begin - low] = 1
    turn[end - low] -= 1
    inside = np.cumsum(turn, dtype=np.int8, out=turn)[:-1].view(bool)
    text = np.where(inside, records.data[low:high], np.uint8(ord(" ")))
    solid = ~_BLANKS[text]
    starts = np.flatnonzero(solid[1:] & ~solid[:-1]) + (low + 1)
    count, more = divmod(len(starts), len(line))
    if more or count == 0:
        return b"", -1
    # Each line has as many words if the first and the last of every so many are in one line.
    first, last = starts[::count], starts[count - 1 :: count]
    same = bool(np.all((first >= begin) & (last < end)))
    return text.tobytes(), count if same else -1


def _bad_record(records: Records, record: bytes, counts: Sequence[int], whole: bool) -> SurveyError:
    """The first ``record`` line that is not what it should be."""
    usual = None
    line, text = 0, b""
    for line, text in zip(records.rows[record].tolist(), records.texts(record)):  # noqa: B007  used after the loop
        words = text.split()
        try:
            values = [float(word) for word in words[1:]]
        except ValueError:
            values = []
        usual = usual or len(values)
        good = words[0] == record and len(values) == usual and len(values) in counts and np.isfinite(values).all()
        if not good or (whole and any(value != int(value) for value in values)):
            break
    shown = text.decode("utf-8", "replace").strip()[:60]
    return SurveyError(BAD_RECORD, file=records.file, line=line, found=shown, record=record.decode())
