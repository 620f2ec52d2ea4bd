"""Lines and fields of a block of text as arrays of byte positions, found without a loop over lines.

A block is a uint8 array of UTF-8 text whose last byte is LF. All delimiters are single ASCII bytes,
which never occur inside a longer UTF-8 character.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import List, Sequence, Tuple

import numpy as np

LF, TAB, SPACE, QUOTE = 10, 9, 32, 34
#: Parts fields that were taken out of quotes; no text file uses it.
UNIT_SEPARATOR = 31


@dataclass(frozen=True)
class Lines:
    """The k lines of a block: byte range ``start``..``end`` (LF not in it); ``lead``: first byte that is no blank."""

    start: np.ndarray
    end: np.ndarray
    lead: np.ndarray


@dataclass(frozen=True)
class Rows:
    """The fields of k lines.

    ``field_start``, ``field_end``: (f,) byte ranges of all fields of the block. ``first``: (k,) first
    field of each line; ``count``: (k,) its fields; ``line``: (k,) line number in the file. ``bare``: no field has
    blanks at its ends; ``even``: how many fields all lines have, one behind the other, 0 where they differ.
    """

    text: np.ndarray
    field_start: np.ndarray
    field_end: np.ndarray
    first: np.ndarray
    count: np.ndarray
    line: np.ndarray
    bare: bool = False
    even: int = 0

    def __len__(self) -> int:
        return len(self.line)

    def select(self, which: np.ndarray) -> Rows:
        """The lines of a mask."""
        if which.all():
            return self
        return replace(self, first=self.first[which], count=self.count[which], line=self.line[which], even=0)

    def column(self, place: int) -> Tuple[np.ndarray, np.ndarray]:
        """Byte ranges (k,), (k,) of the fields at ``place``, without blanks around; empty where a line ends before."""
        if 0 <= place < self.even:
            start, end = self.field_start[place :: self.even], self.field_end[place :: self.even]
            return (start, end) if self.bare else trim(self.text, start, end)
        has = self.count > place
        field = self.first + place if has.all() else self.first + np.where(has, place, 0)
        start, end = self.field_start[field], self.field_end[field]
        if not has.all():
            end = np.where(has, end, start)
        return (start, end) if self.bare else trim(self.text, start, end)

    def rest(self, place: int, which: np.ndarray, end: np.ndarray) -> np.ndarray:
        """``end`` with the lines of mask ``which`` reaching to the end of their last field."""
        last = self.field_end[self.first + self.count - 1]
        return np.where(which, last, end)


def find_lines(text: np.ndarray) -> Lines:
    """The lines of a block."""
    end = np.flatnonzero(text == LF)
    start = np.empty_like(end)
    start[0] = 0
    start[1:] = end[:-1] + 1
    lead, _ = trim(text, start, end)
    return Lines(start, end, lead)


def trim(text: np.ndarray, start: np.ndarray, end: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Byte ranges without spaces and tabs at their ends."""
    full = start < end
    first, last = text.take(start, mode="clip"), text.take(end - 1, mode="clip")
    before = full & ((first == SPACE) | (first == TAB))
    after = full & ((last == SPACE) | (last == TAB))
    if not (before.any() or after.any()):
        return start, end
    solid = np.flatnonzero((text != SPACE) & (text != TAB))  # an LF is solid, so a next one always exists
    start, end = start.copy(), end.copy()
    start[before] = np.minimum(solid[np.searchsorted(solid, start[before])], end[before])
    after &= start < end
    end[after] = solid[np.searchsorted(solid, end[after]) - 1] + 1
    return start, end


def split_rows(text: np.ndarray, lines: Lines, delimiter: str, line: np.ndarray) -> Rows:
    """The fields of all lines; a delimiter of a space stands for a run of spaces and tabs.

    ``line``: (k,) numbers of the lines. A line without fields has count 0 (only where spaces part them).
    """
    if delimiter == " ":
        blank = (text == SPACE) | (text == TAB) | (text == LF)
        edge = np.flatnonzero(blank[1:] != blank[:-1]) + 1
        if not blank[0]:
            edge = np.concatenate([[0], edge])
        start, end = edge[0::2], edge[1::2]
        first = np.searchsorted(start, lines.start)
        return Rows(text, start, end, first, np.searchsorted(start, lines.end) - first, line, bare=True)
    end = np.flatnonzero((text == ord(delimiter)) | (text == LF))
    start = np.empty_like(end)
    start[0] = 0
    start[1:] = end[:-1] + 1
    last = np.flatnonzero(text[end] == LF)
    first = np.empty_like(last)
    first[0] = 0
    first[1:] = last[:-1] + 1
    count = last - first + 1
    every = text.tobytes()
    bare = b" " not in every and (delimiter == "\t" or b"\t" not in every)
    even = int(count[0]) if len(count) and bool((count == count[0]).all()) else 0
    return Rows(text, start, end, first, count, line, bare, even)


def take_off_quotes(rows: Rows) -> Tuple[Rows, np.ndarray]:
    """Rows whose quoted fields are without their quotes, and a mask (k,) of the lines where that was plain:
    each quote at an end of a field and its partner at the other, no delimiter or quote between.
    """
    start, end = trim(rows.text, rows.field_start, rows.field_end)
    quote = np.flatnonzero(rows.text == QUOTE)
    inside = np.searchsorted(quote, end) - np.searchsorted(quote, start)
    first, last = rows.text.take(start, mode="clip"), rows.text.take(end - 1, mode="clip")
    around = (inside == 2) & (first == QUOTE) & (last == QUOTE)
    odd = np.concatenate([[0], np.cumsum((inside > 0) & ~around)])
    bare = Rows(rows.text, start + around, end - around, rows.first, rows.count, rows.line)
    return bare, odd[rows.first + rows.count] == odd[rows.first]


def rows_of_fields(fields: Sequence[List[str]], line: np.ndarray) -> Rows:
    """Rows from lines that were split one by one; at least one line."""
    separator = chr(UNIT_SEPARATOR)
    flat = "".join(separator.join(f.replace(separator, " ") for f in row) + "\n" for row in fields)
    text = np.frombuffer(flat.encode(), np.uint8)
    return split_rows(text, find_lines(text), separator, line)


def bytes_of(text: np.ndarray, start: int, end: int) -> str:
    """The characters of a byte range."""
    return text[start:end].tobytes().decode()
