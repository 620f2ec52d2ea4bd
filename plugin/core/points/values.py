"""Columns of fields to columns of values, without a loop over lines."""

from __future__ import annotations

import re
from enum import IntEnum
from typing import Dict, List, NamedTuple, Sequence, Tuple

import numpy as np

from ..files import cell_text
from .digits import Digits
from .number_marks import Marks, is_no_value, ungrouped, without_unit
from .pointset import FIX_UNKNOWN
from .said_units import Said, said_by
from .words import fold


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
#: Fields up to so many characters are taken out of the text one character of all at once.
_NARROW = 64
_ASCII_END = 128
_LONGEST_NUMBER = 64
_NUMBER = re.compile(rb"[+-]?(?:[0-9]+(?:\.[0-9]*)?|\.[0-9]+)(?:[eEdD][+-]?[0-9]{1,4})?")
_INFINITE = re.compile(rb"[+-]?inf(?:inity)?", re.IGNORECASE)


class Written(NamedTuple):
    """How the numbers of a column stand: the unit right behind most, their decimal mark, "" for that of the file, and
    how many decimals most have where several have the other mark, else 0.
    """

    suffix: str = ""
    mark: str = ""
    decimals: int = 0


class NumberForm(NamedTuple):
    """How numbers are read. ``thousands``: what parts groups of three; ``no_value``: further words that stand for no
    value; ``suffix``: the unit right behind the numbers. ``decimals``: that a number with the other decimal mark
    may have, 0 for no such number. ``metres``: in the unit of the numbers, where single ones may have another unit
    behind, else 0; ``exact``: whether a foot must say which.
    """

    decimal: str = "."
    thousands: str = ""
    no_value: Sequence[str] = ()
    suffix: str = ""
    decimals: int = 0
    metres: float = 0.0
    exact: bool = False


def parse_numbers(
    text: np.ndarray, start: np.ndarray, end: np.ndarray, decimal: str, thousands: str = "",
    no_value: Sequence[str] = (),
) -> Tuple[np.ndarray, np.ndarray]:  # fmt: skip
    """As :func:`read_numbers`."""
    return read_numbers(text, start, end, NumberForm(decimal, thousands, no_value))


def read_numbers(
    text: np.ndarray, start: np.ndarray, end: np.ndarray, form: NumberForm
) -> Tuple[np.ndarray, np.ndarray]:
    """Numbers of the fields (k,) float64, nan where there is none, and their :class:`State` (k,) uint8.

    Plain decimals such as -12.345 are read for all fields at once, first those with as many decimals
    as most have; what is left (exponents, words, groups of three digits) one by one. Values are those of Python's
    ``float``.
    """
    filled = end > start
    state = np.where(filled, State.NOT_A_NUMBER, State.EMPTY).astype(np.uint8)
    if not filled.any():
        return np.full(len(start), np.nan), state
    values, good = _same_decimals(text, start, end, ord(form.decimal))
    state[good] = State.VALUE
    values[~good] = np.nan
    left = np.flatnonzero(filled & ~good)
    for reader in (_any_decimals, _long_decimals):
        if not len(left):
            return values, state
        found, good = reader(text, start[left], end[left], ord(form.decimal))
        values[left[good]], state[left[good]] = found[good], State.VALUE
        left = left[~good]
    for i in left:
        values[i], state[i] = _parse_one(text[start[i] : end[i]].tobytes(), form)
    return values, state


def _same_decimals(text: np.ndarray, start: np.ndarray, end: np.ndarray, mark: int) -> Tuple[np.ndarray, np.ndarray]:
    """Values of plain decimals with as many decimals as the field in the middle, and where they are right."""
    filled = np.flatnonzero(end > start)
    middle = int(filled[len(filled) // 2])
    marks = np.flatnonzero(text[start[middle] : end[middle]] == mark)
    places = int(end[middle] - start[middle] - 1 - marks[-1]) if len(marks) else -1
    size, negative = _unsigned(text, start, end)
    count: np.ndarray = size - (places >= 0)
    good = (count > 0) & (count <= _EXACT_DIGITS) & (size > places)
    if places > _EXACT_DIGITS or not good.any():
        return np.zeros(len(start)), np.zeros(len(start), bool)
    digits = Digits(text)
    whole, are = digits.read(end - (1 + places), np.where(good, count - max(places, 0), 0))
    good &= are
    if places >= 0:
        good &= text.take(end - (1 + places), mode="clip") == mark
        parts, are = digits.read(end, places)
        whole, good = whole * np.uint64(10**places) + parts, good & are
    values = whole.astype(float)
    if places > 0:
        values /= _POWERS[places]
    return np.negative(values, out=values, where=negative), good


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
    first = text.take(start, mode="clip")
    negative = first == _MINUS
    return end - start - (negative | (first == _PLUS)), negative


def _parse_one(field: bytes, form: NumberForm) -> Tuple[float, State]:
    if len(field) > _LONGEST_NUMBER:
        return np.nan, State.NOT_A_NUMBER
    word, times = _without_unit(field.decode(), form)
    marks = Marks(form.decimal, form.thousands)
    number = (ungrouped(word, marks) if form.thousands else None) or word
    other = "," if form.decimal == "." else "."
    if (
        form.decimals
        and number.count(other) == 1
        and len(number) - 1 - number.index(other) in range(1, form.decimals + 1)
    ):
        number = number.replace(form.decimal, "?").replace(other, form.decimal)
    plain = number.encode() if form.decimal == "." else number.replace(".", "?").replace(form.decimal, ".").encode()
    if _NUMBER.fullmatch(plain):
        value = float(plain.replace(b"D", b"E").replace(b"d", b"e"))
        return (value * times, State.VALUE) if np.isfinite(value) else (np.nan, State.NOT_FINITE)
    if is_no_value(word) or word in form.no_value:
        return np.nan, State.NO_VALUE
    return np.nan, State.NOT_FINITE if _INFINITE.fullmatch(field) else State.NOT_A_NUMBER


def _without_unit(word: str, form: NumberForm) -> Tuple[str, float]:
    """A field without the unit behind it, and how many of the unit of the other numbers its own is."""
    if not form.suffix or not word[-1:].isalpha():
        return word, 1.0
    if word.endswith(form.suffix):
        return word[: -len(form.suffix)].rstrip(), 1.0
    number, unit = without_unit(word)
    said = said_by(fold(unit).split()) if unit and form.metres else Said()
    if said.unit is None or (said.vague and form.exact):
        return word, 1.0
    return number, said.unit.metres / form.metres


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
    size = end - start
    width = int(size.max())
    if 0 < width <= _NARROW and int(text.max()) < _ASCII_END and int(text.min()) > 0:
        characters = np.empty((len(start), width), np.uint32)  # as numpy keeps text; zeros behind it are none
        for j in range(width):
            np.multiply(text.take(start + j, mode="clip"), size > j, out=characters[:, j])
        found: List[str] = characters.view(f"U{width}").ravel().tolist()
        return found
    stop = np.cumsum(size + 1)
    joined = text.take(np.repeat(start - (stop - size - 1), size + 1) + np.arange(stop[-1]), mode="clip")
    joined[stop - 1] = _LF
    return joined.tobytes().decode().split("\n")[:-1]


#: Words for the quality of a position beside the numbers of NMEA 0183 GGA, the first that fits; folded.
_FIX_WORDS = (
    (0, "none no nofix invalid unfixed kein keine aucun aucune sans ninguna ninguno sin nessuna ungultig ungueltig"),
    (5, "float floating rtkfloat flottant flottante flotante flott gleitend fluttuante"),
    (4, """fixed fix rtk rtkfixed rtkfix fixiert fixierte fest fixe fixee fijo fija fisso fissa fixo fixa narrow int
        integer"""),
    (2, "dgps dgnss differential differentiell differentielle diff dif diferencial differenziale sbas waas egnos"),
    (3, "pps"),
    (1, """single autonomous gps autonom autonome autonomo autonoma einzel einzelpunkt navigiert absolute standalone spp
        naturel simple"""),
    (6, "estimated"), (7, "manual"), (8, "simulator"),
)  # fmt: skip
_FIX_OF_TOKEN = {token: fix for fix, words in _FIX_WORDS for token in words.split()}
#: What tells a fix beyond doubt.
_RTK = frozenset(word for word, fix in _FIX_OF_TOKEN.items() if fix in (4, 5) and (len(word) > 3 or word == "rtk"))


def fix_of_word(word: str) -> int:
    """The number of a word for the quality of a position, -1 for one that says nothing of it."""
    tokens = fold(word).split()
    found = {_FIX_OF_TOKEN[token] for token in tokens if token in _FIX_OF_TOKEN}
    return next((fix for fix, _ in _FIX_WORDS if fix in found), -1) if len(tokens) < 5 else -1


def are_fixes(words: Sequence[str]) -> bool:
    """Whether words are those that receivers write of the quality of their positions, some of them of RTK."""
    return (
        0 < len(words) < 12
        and all(fix_of_word(word) >= 0 for word in words)
        and any(_RTK & set(fold(word).split()) for word in words)
    )


class _FixOfWord(Dict[str, int]):
    """Fix number of a word, -2 for a word that says nothing; each word is worked out once."""

    def __missing__(self, word: str) -> int:
        plain, said = word.strip(), fix_of_word(word)
        if not plain or (said < 0 and is_no_value(plain)):
            fix = FIX_UNKNOWN
        elif re.fullmatch(r"[0-8](?:[.,]0*)?", plain):
            fix = int(plain[0])
        else:
            fix = said if said >= 0 else _FIX_UNREADABLE
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
