"""Rows of text with numbers in them, whole blocks at a time."""

from __future__ import annotations

from typing import BinaryIO, Sequence, Tuple, Union

import numpy as np

from .digits import to_digits

_ROWS = 1 << 16  # rows formatted at a time; bounds the memory
_BLANK = ord(" ")

#: Text that all rows share, or whole numbers (n,) and their decimals.
Column = Union[bytes, Tuple[np.ndarray, int]]


def write_rows(file: BinaryIO, columns: Sequence[Column]) -> None:
    """Write a row of ``columns`` for each of their n numbers, each number as short as it can be."""
    count = next(len(column[0]) for column in columns if isinstance(column, tuple))
    for start in range(0, count, _ROWS):
        rows = min(_ROWS, count - start)
        blocks, kept = [], []
        for column in columns:
            if isinstance(column, bytes):
                blocks.append(np.broadcast_to(np.frombuffer(column, np.uint8), (rows, len(column))))
                kept.append(np.ones((rows, len(column)), bool))
            else:
                digits = to_digits(column[0][start : start + rows], column[1])
                blocks.append(digits)
                kept.append(digits != _BLANK)
        file.write(np.hstack(blocks)[np.hstack(kept)].tobytes())


def plain_number(value: float, decimals: int) -> str:
    """``value`` with so many decimals, without the sign of what is written as zero."""
    return f"{0.0 if abs(value) < 0.5 * 10.0**-decimals else value:.{decimals}f}"
