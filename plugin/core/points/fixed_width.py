"""Files whose columns stand at fixed places, as tables for people are printed."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from typing import List, NamedTuple, Optional, Sequence, Tuple

import numpy as np

from .delimiters import header_fits
from .lines_of_text import Sample
from .number_marks import is_no_value, is_number
from .source import TextSource
from .words import read_word

_FEWEST_LINES = 3
_LONGEST = 2000
_SPACE, _TAB, _LF = 32, 9, 10
#: Before the sign of an exponent, as in 2.43E+02.
_OF_EXPONENT = "eEdD"


class Cuts(NamedTuple):
    """Places of characters (from 0): ``blank`` in every line; ``between``: before which a cell begins right behind
    another.
    """

    blank: Tuple[int, ...]
    between: Tuple[int, ...] = ()

    @property
    def begins(self) -> Tuple[int, ...]:
        """Where columns begin, but the first."""
        return tuple(sorted([*(cut + 1 for cut in self.blank), *self.between]))


def find_cuts(sample: Sample, wanted: bool) -> Optional[Cuts]:
    """Where the columns part; None for no such file.

    ``wanted``: the user says that columns stand at fixed places. Otherwise lines must not come apart alike at blanks,
    or their header not fit then.
    """
    lines = [line.text.rstrip() for line in sample.lines]
    if len(lines) < _FEWEST_LINES or any("\t" in line or len(line) > _LONGEST for line in lines):
        return None
    grid = _characters(lines)
    glued = _glued(grid, lines)
    if not wanted and not glued and _parts_at_blanks(lines):
        return None
    blank = (grid == " ").all(axis=0)
    edges = np.flatnonzero(np.diff(np.concatenate([[False], blank, [False]]).astype(np.int8)))
    runs = [(int(a), int(b)) for a, b in zip(edges[::2], edges[1::2]) if a > 0 and b < grid.shape[1]]
    cuts = Cuts(tuple(_without_words_apart(lines, runs)), tuple(glued))
    fields = [_fields(line, cuts.begins) for line in lines]
    numbers = [sum(is_number(field) for field in row) for row in fields]
    if sum(count >= 3 for count in numbers) < 0.8 * (len(lines) - 1):
        return None
    if not wanted and any(sum(map(is_value_word, row)) < 2 for row in fields[:1]) and not header_fits(fields):
        return None
    return cuts


def _glued(grid: np.ndarray, lines: Sequence[str]) -> List[int]:
    """Places where in every line of numbers a decimal with as many digits behind the mark ends, and a letter or sign
    follows without a blank, but that of an exponent.
    """
    data = np.array([sum(map(is_number, line.split())) >= 2 for line in lines])
    rows = grid[data]
    if len(rows) < _FEWEST_LINES:
        return []
    sign = (rows == "-") | (rows == "+")
    digit, letter = np.char.isdigit(rows), np.char.isalpha(rows) | sign
    letter[:, :-1] &= ~(np.isin(rows[:, :-1], list(_OF_EXPONENT)) & sign[:, 1:])
    mark = ((rows == ".") | (rows == ",")).all(axis=0)
    ends = digit[:, :-1].all(axis=0) & (letter | (rows == " "))[:, 1:].all(axis=0) & (letter[:, 1:].mean(axis=0) > 0.5)
    return [
        int(p) + 1 for p in np.flatnonzero(ends)
        if any(p >= k and mark[p - k] and digit[:, p - k + 1 : p + 1].all() for k in range(1, 7))
    ]  # fmt: skip


def is_value_word(field: str) -> bool:
    """Whether a field is a number or says that there is none."""
    return is_number(field) or is_no_value(field)


def with_tabs(source: TextSource, cuts: Cuts) -> TextSource:
    """The file with a tab at each cut of each line; a line that has no blank there keeps what stands there."""
    apart = _with_tabs_at(source, cuts.blank)
    return _with_tabs_between(apart, cuts.between) if cuts.between else apart


def _with_tabs_between(source: TextSource, places: Sequence[int]) -> TextSource:
    """The file with a tab before the characters at ``places`` of each line that reaches so far."""
    made = []
    for text in source.data.decode().split("\n")[:-1]:
        for place in reversed(places):
            text = f"{text[:place]}\t{text[place:]}" if place < len(text) else text
        made.append(text + "\n")
    return replace(source, data="".join(made).encode(), stood=source.stood or source.data)


def _with_tabs_at(source: TextSource, cuts: Sequence[int]) -> TextSource:
    """As :func:`with_tabs`, where blanks stand."""
    text = np.frombuffer(source.data, np.uint8).copy()
    end = np.flatnonzero(text == _LF)
    start = np.concatenate([[0], end[:-1] + 1])
    longer = (text & 0xC0) == 0x80  # bytes of a character behind its first
    many = np.flatnonzero(np.diff(np.concatenate([[0], np.cumsum(longer)[end]])) > 0)
    plain = np.ones(len(end), bool)
    plain[many] = False
    for cut in cuts:
        at = start + cut
        good = plain & (at < end)
        at = at[good]
        text[at[text[at] == _SPACE]] = _TAB
    for i in many.tolist():
        line = text[start[i] : end[i]]
        first = np.flatnonzero((line & 0xC0) != 0x80)
        for cut in cuts:
            if cut < len(first) and line[first[cut]] == _SPACE:
                text[start[i] + first[cut]] = _TAB
    return replace(source, data=text.tobytes(), stood=source.stood or source.data)


def _parts_at_blanks(lines: Sequence[str]) -> bool:
    """Whether nearly all lines have as many fields between blanks, and a header fits them."""
    rows = [line.split() for line in lines]
    values = [i for i, row in enumerate(rows[:20]) if sum(is_value_word(field) for field in row) >= 2]
    head = values[0] if values else 0
    counts = Counter(map(len, rows[head:]))
    usual, share = counts.most_common(1)[0]
    if share < 0.98 * (len(rows) - head):
        return False
    return head == 0 or len(rows[head - 1]) == usual or header_fits(rows) > 0


def _characters(lines: Sequence[str]) -> np.ndarray:
    width = max(map(len, lines))
    return np.array([list(line.ljust(width)) for line in lines])


def _without_words_apart(lines: Sequence[str], runs: Sequence[Tuple[int, int]]) -> List[int]:
    """The last blank of each run that parts columns: not a single one between words, or a word and its number."""
    cuts: List[int] = []
    for i, (first, end) in enumerate(runs):
        before = cuts[-1] + 1 if cuts else 0
        behind = runs[i + 1][0] if i + 1 < len(runs) else max(map(len, lines))
        left = [line[before:first].strip() for line in lines]
        right = [line[end:behind].strip() for line in lines]
        if not any(left[1:]):
            continue  # a word of the header alone
        numbers = sum(is_number(field) for field in right) > 0.5 * len(right)
        text = sum(is_number(field) for field in left) < 0.5 * len(left)
        short = all(len(field) <= 4 and "." not in field for field in right[1:])
        head = f"{left[0]} {right[0]}"
        one_word = read_word(head).role and not (read_word(left[0]).role and read_word(right[0]).role)
        last = i + 1 == len(runs)
        if end - first == 1 and text and (not numbers or (short and (last or one_word))):
            continue
        cuts.append(end - 1)
    return cuts


def _fields(line: str, begins: Sequence[int]) -> List[str]:
    edges = [0, *begins, max(len(line), begins[-1] if begins else 0)]
    return [line[a:b].strip() for a, b in zip(edges, edges[1:])]
