"""Columns of fields to columns of values, without a loop over lines."""

from __future__ import annotations

import re
from enum import IntEnum
from typing import Dict, List, Sequence, Tuple

import numpy as np

from ..files import cell_text
from .number_marks import Marks, is_no_value, ungrouped
from .pointset import FIX_UNKNOWN


class State(IntEnum):
    """What a field turned out to be."""

    VALUE = 0
    EMPTY = 1
    NOT_A_NUMBER = 2
    NOT_FINITE = 3
    NO_VALUE = 4  # a word or dash that says there is none


#: Up to 15 digits a whole number is exact in float64, and so is a power of ten up to 22: their
#: quotient is then the float64 nearest to the decimal, as Python's own reader gives it.
_EXACT_DIGITS = 15
_POWERS = 10.0 ** np.arange(_EXACT_DIGITS + 1)
_ZERO, _PLUS, _MINUS, _POINT, _LF, _APOSTROPHE = 48, 43, 45, 46, 10, 39
_PACKED = 8
_GLANCE = 512
_LONGEST_NUMBER = 64
_NUMBER = re.compile(rb"[+-]?(?:[0-9]+(?:\.[0-9]*)?|\.[0-9]+)(?:[eEdD][+-]?[0-9]{1,4})?")
_INFINITE = re.compile(rb"[+-]?inf(?:inity)?", re.IGNORECASE)


def parse_numbers(
    text: np.ndarray,
    start: np.ndarray,
    end: np.ndarray,
    decimal: str,
    thousands: str = "",
    no_value: Sequence[str] = (),
    suffix: str = "",
) -> Tuple[np.ndarray, np.ndarray]:
    """Numbers of the fields (k,) float64, nan where there is none, and their :class:`State` (k,) uint8.

    Plain decimals such as -12.345 are read for all fields at once, first those with as many decimals
    as most have; what is left (exponents, words, groups of three digits) one by one. Values are those of Python's
    ``float``. ``thousands``: what parts groups of three; ``no_value``: further words that stand for no value;
    ``suffix``: the unit right behind the numbers.
    """
    values = np.full(len(start), np.nan)
    state = np.where(end > start, State.NOT_A_NUMBER, State.EMPTY).astype(np.uint8)
    left = np.flatnonzero(end > start)
    for reader in (_same_decimals, _any_decimals, _long_decimals):
        if not len(left):
            return values, state
        found, good = reader(text, start[left], end[left], ord(decimal))
        values[left[good]], state[left[good]] = found[good], State.VALUE
        left = left[~good]
    for i in left:
        field = text[start[i] : end[i]].tobytes()
        if suffix and field.endswith(suffix.encode()):
            field = field[: -len(suffix)].rstrip()
        values[i], state[i] = _parse_one(field, Marks(decimal, thousands), no_value)
    return values, state


def _same_decimals(text: np.ndarray, start: np.ndarray, end: np.ndarray, mark: int) -> Tuple[np.ndarray, np.ndarray]:
    """Values of plain decimals with as many decimals as the field in the middle, and where they are right.

    Digits are taken from the right, the same place of all fields at once.
    """
    middle = len(start) // 2
    marks = np.flatnonzero(text[start[middle] : end[middle]] == mark)
    places = int(end[middle] - start[middle] - 1 - marks[-1]) if len(marks) else -1
    size, negative = _unsigned(text, start, end)
    digits: np.ndarray = size - (places >= 0)
    good = (digits > 0) & (digits <= _EXACT_DIGITS) & (size > places)
    least, most = (int(size[good].min()), int(size[good].max())) if good.any() else (0, 0)
    whole, scale = np.zeros(len(start)), 1.0
    for j in range(most):
        byte = text.take(end - (1 + j), mode="clip")
        if j == places:
            good &= byte == mark
            continue
        digit = byte - np.uint8(_ZERO)
        if j >= least:
            digit[size <= j] = 0
        good &= digit <= 9
        whole += digit * scale
        scale *= 10.0
    if places > 0:
        whole /= _POWERS[min(places, _EXACT_DIGITS)]
    return np.negative(whole, out=whole, where=negative), good


def _any_decimals(text: np.ndarray, start: np.ndarray, end: np.ndarray, mark: int) -> Tuple[np.ndarray, np.ndarray]:
    """Values of plain decimals, and where they are right, each with its own number of decimals."""
    size, negative = _unsigned(text, start, end)
    good = (size > 0) & (size <= _EXACT_DIGITS + 1)
    marked = np.zeros(len(start), bool)
    places = np.zeros(len(start), np.int64)
    whole, scale = np.zeros(len(start)), np.ones(len(start))
    for j in range(int(size[good].max()) if good.any() else 0):
        byte = text.take(end - (1 + j), mode="clip")
        inside = size > j
        is_mark = inside & (byte == mark) & ~marked
        marked |= is_mark
        places[is_mark] = j
        is_digit = inside & ~is_mark
        digit = np.where(is_digit, byte - np.uint8(_ZERO), 0)
        good &= digit <= 9
        whole += digit * scale
        scale[is_digit] *= 10.0
    digits = size - marked
    good &= (digits > 0) & (digits <= _EXACT_DIGITS)
    whole /= _POWERS[places]
    return np.negative(whole, out=whole, where=negative), good


def _long_decimals(text: np.ndarray, start: np.ndarray, end: np.ndarray, mark: int) -> Tuple[np.ndarray, np.ndarray]:
    """Values of plain decimals of any number of digits, and where they are right, through Python's ``float``."""
    size, _ = _unsigned(text, start, end)
    good = (size > 0) & (end - start <= _LONGEST_NUMBER)
    width = int((end - start)[good].max()) if good.any() else 1
    characters = np.zeros((len(start), width), np.uint8)
    marks, digits = np.zeros(len(start), np.int64), np.zeros(len(start), np.int64)
    for j in range(width):
        byte = np.where(end - start > j, text.take(start + j, mode="clip"), 0)
        is_mark = byte == mark
        marks += is_mark
        digits += (byte >= _ZERO) & (byte <= _ZERO + 9)
        characters[:, j] = np.where(is_mark, _POINT, byte)
    good &= (digits > 0) & (marks <= 1) & (digits + marks == size)
    characters[~good] = _ZERO
    return characters.view(f"S{width}").reshape(-1).astype(float), good


def _unsigned(text: np.ndarray, start: np.ndarray, end: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Lengths of the fields without their sign, and where that is a minus."""
    first = text[start]
    negative = first == _MINUS
    return end - start - (negative | (first == _PLUS)), negative


def _parse_one(field: bytes, marks: Marks, no_value: Sequence[str]) -> Tuple[float, State]:
    if len(field) <= _LONGEST_NUMBER:
        if marks.thousands:
            whole = ungrouped(field.decode(), marks)
            field = field if whole is None else whole.encode()
        decimal = marks.decimal.encode()
        plain = field if decimal == b"." else field.replace(b".", b"?").replace(decimal, b".")
        if _NUMBER.fullmatch(plain):
            value = float(plain.replace(b"D", b"E").replace(b"d", b"e"))
            return (value, State.VALUE) if np.isfinite(value) else (np.nan, State.NOT_FINITE)
        word = field.decode()
        if is_no_value(word) or word in no_value:
            return np.nan, State.NO_VALUE
        if _INFINITE.fullmatch(field):
            return np.nan, State.NOT_FINITE
    return np.nan, State.NOT_A_NUMBER


def parse_texts(text: np.ndarray, start: np.ndarray, end: np.ndarray) -> np.ndarray:
    """Characters of the fields, (k,) object array of str; without the apostrophe that keeps a spreadsheet from running
    them.
    """
    values = np.empty(len(start), object)
    if len(start):
        values[:] = _strings(text, start, end)
        for i in np.flatnonzero((text.take(start, mode="clip") == _APOSTROPHE) & (end > start)):
            values[i] = cell_text(values[i])
    return values


def parse_words(text: np.ndarray, start: np.ndarray, end: np.ndarray) -> np.ndarray:
    """As :func:`parse_texts`, for columns of few and short words: each word is kept in memory once."""
    words, which = _distinct_words(text, start, end)
    return words[which]


def _distinct_words(text: np.ndarray, start: np.ndarray, end: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """The different words of the fields, and the number of the word of each field (long ones may repeat)."""
    size = end - start
    if not len(start) or int(size.max()) > _PACKED:
        return parse_texts(text, start, end), np.arange(len(start))
    packed = np.zeros(len(start), np.uint64)
    for j in range(int(size.max())):
        byte = np.where(size > j, text.take(start + j, mode="clip"), 0)
        packed |= byte.astype(np.uint64) << np.uint64(8 * j)
    kinds = _kinds(packed)
    which = np.searchsorted(kinds, packed)
    one = np.zeros(len(kinds), np.int64)
    one[which] = np.arange(len(packed))  # any of each kind
    return parse_texts(text, start[one], end[one]), which


def _kinds(values: np.ndarray) -> np.ndarray:
    """The different numbers among ``values`` (k,), sorted; quick where they are few."""
    kinds = np.unique(values[:: max(1, len(values) // _GLANCE)])
    place = np.minimum(np.searchsorted(kinds, values), len(kinds) - 1)
    rest = values[kinds[place] != values]
    return kinds if not len(rest) else np.union1d(kinds, rest)


def _strings(text: np.ndarray, start: np.ndarray, end: np.ndarray) -> List[str]:
    size = end - start + 1
    stop = np.cumsum(size)
    joined = text.take(np.repeat(start - (stop - size), size) + np.arange(stop[-1]), mode="clip")
    joined[stop - 1] = _LF
    return joined.tobytes().decode().split("\n")[:-1]


#: Words for the quality of a position beside the numbers of NMEA 0183 GGA.
_FIX_WORDS = {
    "none": 0, "no fix": 0, "invalid": 0,
    "single": 1, "autonomous": 1, "gps": 1,
    "dgps": 2, "dgnss": 2, "differential": 2,
    "pps": 3,
    "fixed": 4, "fix": 4, "rtk": 4, "rtk fixed": 4, "rtk fix": 4,
    "float": 5, "rtk float": 5,
    "estimated": 6, "manual": 7, "simulator": 8,
}  # fmt: skip


class _FixOfWord(Dict[str, int]):
    """Fix number of a word, -2 for a word that says nothing; each word is worked out once."""

    def __missing__(self, word: str) -> int:
        plain = re.sub(r"[\s_\-]+", " ", word.strip().lower())
        if not plain or (plain not in _FIX_WORDS and is_no_value(word.strip())):
            fix = FIX_UNKNOWN
        elif re.fullmatch(r"[0-8](?:[.,]0*)?", plain):
            fix = int(plain[0])
        else:
            fix = _FIX_WORDS.get(plain, _FIX_UNREADABLE)
        self[word] = fix
        return fix


_FIX_UNREADABLE = -2


def parse_fixes(text: np.ndarray, start: np.ndarray, end: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Fix numbers (k,) int8 of words or NMEA numbers, and a mask of the fields that could not be read."""
    fix_of = _FixOfWord()
    words, which = _distinct_words(text, start, end)
    fixes = np.array([fix_of[word] for word in words], np.int8)[which]
    unreadable = fixes == _FIX_UNREADABLE
    fixes[unreadable] = FIX_UNKNOWN
    return fixes, unreadable
