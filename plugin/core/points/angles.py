"""Latitudes and longitudes as they are written: decimal degrees, degrees and minutes, degrees, minutes and seconds.

With or without the letters N, S, E, W; O is Ost in German and Ouest or Oeste in French and Spanish, so the
reader is told which, or cannot read it.
"""

from __future__ import annotations

import re
from typing import Dict, Match, Optional, Sequence, Tuple

import numpy as np

from .said_units import DEGREES_IN, RUNS, AngleForm
from .values import State, parse_numbers

LIMIT = {"latitude": 90.0, "longitude": 180.0}
_DIGITS_BEFORE_MARK = {"latitude": 2, "longitude": 3}
_LETTERS = {"latitude": {"n": 1, "s": -1}, "longitude": {"e": 1, "w": -1}}

_NUMBER = r"[0-9]+(?:[.,][0-9]*)?"
_SPACE = r"[\s\u00a0\u202f]*"
#: Degrees, minutes, seconds; each with its sign, a colon, a dash, or blanks behind it.
_ANGLE = re.compile(
    rf"{_SPACE}(?P<before>[NSEWO])?{_SPACE}(?P<sign>[+\-−])?{_SPACE}(?P<deg>{_NUMBER})"
    rf"(?:{_SPACE}(?:°|º|˚|d|deg|:|-|\s){_SPACE}(?:(?P<min>{_NUMBER})"
    rf"(?:{_SPACE}(?:'|′|’|‘|´|m|min|:|-|\s){_SPACE}(?:(?P<sec>{_NUMBER})"
    rf"{_SPACE}(?P<mark>\"|″|”|“|''|′′|’’|´´|sec|s)?)?)?)?)?"
    rf"{_SPACE}(?P<after>[NSEWO])?{_SPACE}",
    re.IGNORECASE,
)
_LONGEST = 48


def parse_angle(field: str, role: str = "", o_means: str = "") -> Optional[float]:
    """Degrees of one field, None where it is no angle.

    ``role``: latitude or longitude, "" for either; it limits size and letters. ``o_means``: "E" or "W".
    Minutes and seconds of 60 and more, a fraction of anything but the last part, and a sign beside a letter are none.
    """
    match = _ANGLE.fullmatch(field) if 0 < len(field) <= _LONGEST else None
    if match is None or (match["before"] and match["after"]):
        return None
    parts = [part.replace(",", ".") for part in (match["deg"], match["min"], match["sec"]) if part]
    if any("." in part for part in parts[:-1]):
        return None
    sizes = [float(part) for part in parts]
    if any(size >= 60.0 for size in sizes[1:]) or (role and len(parts[0].split(".")[0]) > _DIGITS_BEFORE_MARK[role]):
        return None
    sign = _sign_of(_letter(match, field), match["sign"], role, o_means)
    value = sum(size / 60.0**power for power, size in enumerate(sizes))
    return None if sign is None or value > LIMIT.get(role, 360.0) else sign * value


def _letter(match: Match[str], field: str) -> str:
    """The letter of the side, small. An s behind seconds is south unless d and m mark degrees and minutes."""
    letter = (match["before"] or match["after"] or "").lower()
    if not letter and match["mark"] in ("s", "S") and not ("d" in field.lower() and "m" in field.lower()):
        letter = "s"
    return letter


def _sign_of(letter: str, written: Optional[str], role: str, o_means: str) -> Optional[int]:
    if letter and written:
        return None
    if not letter:
        return -1 if written and written != "+" else 1
    if letter == "o":
        letter = o_means.lower()
    letters = _LETTERS[role] if role else {**_LETTERS["latitude"], **_LETTERS["longitude"]}
    return letters.get(letter)


def letter_of(field: str) -> str:
    """The letter N, S, E, W or O of an angle, "" for none."""
    match = _ANGLE.fullmatch(field) if 0 < len(field) <= _LONGEST else None
    return _letter(match, field).upper() if match else ""


def is_sexagesimal(field: str) -> bool:
    """Whether a field is an angle by more than its digits: it has minutes, a degree sign or a letter."""
    match = _ANGLE.fullmatch(field) if 0 < len(field) <= _LONGEST else None
    if match is None:
        return False
    marked = any(sign in field for sign in "°º˚") or _letter(match, field)
    return bool((match["min"] or marked) and parse_angle(field, "", "E") is not None)


def is_marked_angle(field: str) -> bool:
    """As :func:`is_sexagesimal`, and not only two numbers side by side, as where a wrong delimiter cuts."""
    if "\t" in field or not is_sexagesimal(field):
        return False
    return len(field.split()) == 3 or re.search(r"[^0-9.,\s+-]", field) is not None


def side_signs(role: str, o_means: str = "") -> Dict[str, float]:
    """Letters of the sides of a latitude or longitude, and the sign of each."""
    signs = {letter.upper(): float(sign) for letter, sign in _LETTERS[role].items()}
    return {**signs, "O": signs[o_means]} if role == "longitude" and o_means in signs else signs


def parse_angles(
    text: np.ndarray, start: np.ndarray, end: np.ndarray, decimal: str, role: str, o_means: str = "",
    form: AngleForm = AngleForm.DEGREES, no_value: Sequence[str] = (),
) -> Tuple[np.ndarray, np.ndarray]:  # fmt: skip
    """Degrees of the fields (k,) float64, nan where there is none, and their State (k,) uint8.

    Decimal degrees are read all at once, other forms one by one. ``State.NOT_A_NUMBER`` too for what is no
    angle of this ``role``: beyond 90 or 180 degrees, or more digits before the mark than it can have
    (4807.038 is degrees and minutes written together, and so is 0007.038, unless ``form`` says so).
    """
    values, state = parse_numbers(text, start, end, decimal, no_value=no_value)
    if form is not AngleForm.DEGREES:
        _take_letters_off(values, state, text, start, end, decimal, role, o_means)
    plain = state == State.VALUE
    values = unpacked(values, form)
    wrong = plain & ~(np.abs(values) <= LIMIT[role])
    if form is AngleForm.DEGREES:
        wrong |= plain & _too_many_digits(text, start, end, decimal, _DIGITS_BEFORE_MARK[role])
    state[wrong] = State.NOT_A_NUMBER
    values[wrong] = np.nan
    if form in DEGREES_IN and form is not AngleForm.DEGREES:
        return values, state
    for i in np.flatnonzero((state == State.NOT_A_NUMBER) & ~plain):
        if end[i] - start[i] > 4 * _LONGEST:
            continue
        degrees = parse_angle(text[start[i] : end[i]].tobytes().decode(), role, o_means)
        if degrees is not None:
            values[i], state[i] = degrees, State.VALUE
    return values, state


def unpacked(values: np.ndarray, form: AngleForm) -> np.ndarray:
    """Degrees of angles written as ``form``; nan where minutes or seconds are 60 or more."""
    if form in DEGREES_IN:
        return values if form is AngleForm.DEGREES else values * DEGREES_IN[form]
    if form is AngleForm.AROUND:
        return np.where((values > 180.0) & (values <= 360.0), values - 360.0, values)
    if form in RUNS:
        return unpacked(np.round(values) / 10.0 ** RUNS[form], AngleForm.DDMMSS)
    size = np.abs(values)
    if form is AngleForm.DMS:
        # To a thousand millionth of a second, as 48.07 is no exact float.
        degree = np.floor(size + 1e-14)
        packed = np.maximum(np.round((size - degree) * 1e4, 9), 0.0)
    else:
        hundred = 100.0 if form is AngleForm.DDMM else 1e4
        degree = np.floor(size / hundred)
        packed = size - degree * hundred
    minute, second = (packed, 0.0) if form is AngleForm.DDMM else np.divmod(packed, 100.0)
    with np.errstate(invalid="ignore"):
        good = (minute < 60.0) & (second < 60.0)
    return np.where(good, np.copysign(degree + minute / 60.0 + second / 3600.0, values), np.nan)


def _take_letters_off(
    values: np.ndarray, state: np.ndarray, text: np.ndarray, start: np.ndarray, end: np.ndarray, decimal: str,
    role: str, o_means: str,
) -> None:  # fmt: skip
    """Reads fields such as 4807.035N, in place."""
    signs = side_signs(role, o_means)
    for i in np.flatnonzero(state == State.NOT_A_NUMBER):
        field = text[start[i] : end[i]].tobytes().decode().strip().upper()
        if len(field) > _LONGEST:
            continue
        letter, rest = (field[:1], field[1:]) if field[:1] in signs else (field[-1:], field[:-1])
        number = rest.strip().replace(decimal, ".")
        if letter in signs and re.fullmatch(r"[0-9]+(?:\.[0-9]*)?", number):
            values[i], state[i] = signs[letter] * float(number), State.VALUE


def _too_many_digits(text: np.ndarray, start: np.ndarray, end: np.ndarray, decimal: str, most: int) -> np.ndarray:
    """Whether more than ``most`` digits stand before the mark; only zeros can do so in a small number."""
    first = text.take(start, mode="clip")
    at = start + ((first == ord("-")) | (first == ord("+")))
    zero = text.take(at, mode="clip") == ord("0")
    many = zero & (end - at > most)
    for j in range(most + 1):
        byte = text.take(at + j, mode="clip")
        many &= (byte >= 48) & (byte <= 57)
    return np.asarray(many)
