"""Whole numbers from runs of digits in a text, eight digits of all runs at once."""

from __future__ import annotations

from typing import Tuple, Union

import numpy as np

#: So many digits one word of 64 bits holds, and so many are read.
_WORD, MOST = 8, 16
#: What makes the characters of digits their values, and all others more than nine.
_ZEROS = np.uint64(0x3030303030303030)
_TO_HIGHEST, _HIGHEST = np.uint64(0x7676767676767676), np.uint64(0x8080808080808080)
#: Which of the bytes of a word its last n characters are.
_LAST = np.array([0, *(((1 << 64) - 1) ^ ((1 << 8 * (_WORD - n)) - 1) for n in range(1, _WORD + 1))], np.uint64)
#: Each step adds neighbours: digits to pairs, pairs to fours, fours to eights.
_STEPS = (
    (np.uint64(10), np.uint64(8), np.uint64(0x00FF00FF00FF00FF)),
    (np.uint64(100), np.uint64(16), np.uint64(0x0000FFFF0000FFFF)),
    (np.uint64(10_000), np.uint64(32), np.uint64(0x00000000FFFFFFFF)),
)
Counts = Union[int, np.ndarray]


class Digits:
    """A text (uint8) whose runs of digits are wanted."""

    def __init__(self, text: np.ndarray) -> None:
        padded = np.zeros(len(text) + _WORD, np.uint8)
        padded[_WORD:] = text
        # The eight characters before each place as one number, the first of them in its lowest byte.
        self._before: np.ndarray = np.ndarray((len(text) + 1,), np.dtype("<u8"), padded, 0, (1,))

    def read(self, end: np.ndarray, count: Counts) -> Tuple[np.ndarray, np.ndarray]:
        """The numbers (k,) uint64 that the ``count`` (k,) characters, up to ``MOST``, before places ``end`` (k,) are,
        and a mask (k,) of where all of these are digits.
        """
        number, good = self._eight(end, np.minimum(count, _WORD))
        if np.size(count) and int(np.max(count)) > _WORD:
            high, digits = self._eight(np.maximum(end - _WORD, 0), np.maximum(np.subtract(count, _WORD), 0))
            number, good = number + high * np.uint64(10**_WORD), good & digits
        return number, good

    def _eight(self, end: np.ndarray, count: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
        word = (self._before[end] ^ _ZEROS) & _LAST[count]
        good = ((word | (word + _TO_HIGHEST)) & _HIGHEST) == 0
        for times, bits, lanes in _STEPS:
            word = (word * times + (word >> bits)) & lanes
        return word, np.asarray(good)
