"""Lines that a line break within quotes cuts: joined again, with blank lines in place of what was joined."""

from __future__ import annotations

import re
from collections import Counter
from typing import Callable, List, Optional, Sequence, Tuple

import numpy as np

from .number_marks import is_number

_SIGNS = ("\t", ";", ",", "|")
_LOOKED_AT = 400
#: A text in quotes has no more lines than this.
_MOST_LINES = 20
#: So many quotes that are never closed, for each that is, and the file is not one of texts in several lines.
_MOST_IN_VAIN = 200


def joined_quotes(data: bytes) -> bytes:
    """``data`` (UTF-8, LF) with each record that goes on within quotes in its first line, and as many lines as before.

    Lines are joined only where the whole has as many columns as most lines, and none of what is joined is a line of
    points by itself: a quote that was never closed takes no other line with it.
    """
    if b'"' not in data:
        return data
    text = np.frombuffer(data, np.uint8)
    ends = np.flatnonzero(text == 10)
    starts = np.concatenate([[0], ends[:-1] + 1])
    quotes = np.bincount(np.searchsorted(ends, np.flatnonzero(text == 34)), minlength=len(ends))
    odd = np.flatnonzero(quotes % 2)
    if len(odd) < 2:
        return data

    def line(i: int) -> str:
        return data[starts[i] : ends[i]].decode()

    usual = _usual([line(i) for i in np.flatnonzero(quotes % 2 == 0)[:_LOOKED_AT].tolist()])
    if usual is None:
        return data
    sign, count = usual
    made: List[bytes] = []
    done = vain = 0
    for first in odd.tolist():
        if first < done or not _opens(line(first), sign):
            continue
        if vain > _MOST_IN_VAIN * (len(made) + 1):
            break  # quotes that do not pair
        last = _closed_in(line, first, len(ends), sign, count)
        vain += not last
        if last:
            whole = " ".join(line(i).strip() for i in range(first, last + 1))
            made += [data[starts[done] : starts[first]], whole.encode(), b"\n" * (last - first + 1)]
            done = last + 1
    rest = data[starts[done] :] if done < len(starts) else b""
    return b"".join([*made, rest]) if made else data


def _usual(lines: Sequence[str]) -> Optional[Tuple[str, int]]:
    """What parts most lines, and into how many columns, three at least."""
    tally = Counter((sign, len(fields)) for text in lines for sign in _SIGNS for fields in [_fields(text, sign)])
    good = {key: n for key, n in tally.items() if key[1] >= 3}
    best = max(good, key=lambda key: (good[key], key[1]), default=None)
    return best if best is not None and good[best] * 2 > len(lines) else None


def _fields(text: str, sign: str) -> List[str]:
    return re.split(rf"{re.escape(sign)}(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", text)


def _opens(text: str, sign: str) -> bool:
    """Whether a line ends within quotes that began at the start of a field, with no point behind them."""
    match = re.search(rf"(?:^|{re.escape(sign)})\s*\"((?:[^\"]|\"\")*)$", text)
    return match is not None and not _has_numbers(match[1], sign)


def _closed_in(line: Callable[[int], str], first: int, lines: int, sign: str, count: int) -> int:
    """The line in which what opens in ``first`` is closed, 0 where none is."""
    whole = line(first)
    for at in range(first + 1, min(first + _MOST_LINES, lines)):
        text = line(at)
        closed = re.match(rf"((?:[^\"]|\"\")*)\"\s*(?:{re.escape(sign)}|$)", text)
        if _has_numbers(text if closed is None else closed[1], sign):
            return 0
        whole = f"{whole} {text}"
        if closed is not None:
            return at if whole.count('"') % 2 == 0 and len(_fields(whole, sign)) == count else 0
    return 0


def _has_numbers(text: str, sign: str) -> bool:
    """Whether text within quotes has a point in it."""
    return sum(is_number(field.strip()) for field in text.split(sign)) >= 3
