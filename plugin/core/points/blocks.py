"""One block of a file's text: every line becomes a point, a reject, a comment, a blank or the header."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Tuple

import numpy as np

from ..messages import Message, message
from . import rejects
from .convert import Converted, Plan, convert, interleave
from .lines_of_text import split_line
from .rows import QUOTE, Lines, bytes_of, find_lines, rows_of_fields, split_rows, take_off_quotes


@dataclass(frozen=True)
class Block:
    """What became of the lines of a block; ``rejects``: number and reason of each line that is no point."""

    points: Converted
    rejects: List[Tuple[int, Message]]
    lines: int
    comments: int
    blanks: int
    header: int


def read_block(text: np.ndarray, first_line: int, plan: Plan) -> Block:
    """Read the lines of ``text`` (uint8, UTF-8, ends with LF), the first of which is line ``first_line``."""
    lines = find_lines(text)
    number = first_line + np.arange(len(lines.start))
    blank = lines.lead >= lines.end
    comment = ~blank & _starts_with(text, lines, plan.comment)
    header = number == plan.header_line
    data = ~(blank | comment | header)
    quoted = data & _with_quotes(text, lines)
    rows = split_rows(text, lines, plan.delimiter, number)
    if quoted.any():
        rows, plain = take_off_quotes(rows)
        quoted &= ~plain | (rows.count > plan.layout.width)
    points = convert(rows.select(data & ~quoted), plan)
    refused = points.refused
    if quoted.any():
        points, refused = _add_quoted(points, text, lines, np.flatnonzero(quoted), number, plan)
    return Block(points, refused, len(number), int(comment.sum()), int(blank.sum()), int(header.sum()))


def _starts_with(text: np.ndarray, lines: Lines, word: str) -> np.ndarray:
    prefix = word.encode()
    starts = np.full(len(lines.start), bool(prefix))
    for i, byte in enumerate(prefix):  # a line that is too short differs at its LF
        starts &= text.take(lines.lead + i, mode="clip") == byte
    return starts


def _with_quotes(text: np.ndarray, lines: Lines) -> np.ndarray:
    with_quotes = np.zeros(len(lines.start), bool)
    with_quotes[np.searchsorted(lines.end, np.flatnonzero(text == QUOTE))] = True
    return with_quotes


def _add_quoted(
    points: Converted, text: np.ndarray, lines: Lines, which: np.ndarray, number: np.ndarray, plan: Plan
) -> Tuple[Converted, List[Tuple[int, Message]]]:
    """``points`` and those of lines with more in quotes than plain fields, taken apart one by one; also all
    refusals in order.
    """
    split = {int(i): split_line(_text_of(text, lines, int(i)), plan.delimiter) for i in which}
    fields = {i: row or [""] for i, row in split.items() if row is not None}
    if fields:
        more = convert(rows_of_fields(list(fields.values()), number[list(fields)]), plan)
        points = interleave(points, more)
    unpaired = [(int(number[i]), message(rejects.BAD_QUOTES)) for i, row in split.items() if row is None]
    return points, sorted(points.refused + unpaired, key=lambda refusal: refusal[0])


def _text_of(text: np.ndarray, lines: Lines, i: int) -> str:
    return bytes_of(text, int(lines.start[i]), int(lines.end[i]))
