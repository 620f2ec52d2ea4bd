"""Stations: the numbers along a line that people read, in metres or feet, with station equations."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import List, Optional, Sequence, Tuple

import numpy as np

from ..messages import SurveyError
from ..units import LengthUnit
from .texts import BAD_EQUATION, NO_SUCH_STATION, NOT_A_STATION, NOT_AN_EQUATION, STATION_TWICE

_HALF_DIGIT = 5e-7  # metres: how far beyond its ends a numbering answers
_STATION = re.compile(r"([-+]?)(?:(\d+)\+)?(\d+(?:[.,]\d*)?|[.,]\d+)")


@dataclass(frozen=True)
class Numbering:
    """The numbering of a line of ``length`` metres.

    It has parts: each begins at a distance ``begin`` (m) with the station ``first`` (in ``unit``) and runs to the next
    part, whose first station is the "ahead" of a station equation; the last station of the part before is its "back".
    ``begin``, ``first``: (p,) float64, ``begin[0]`` = 0.
    """

    length: float
    begin: np.ndarray
    first: np.ndarray
    unit: LengthUnit
    name: str = ""

    @staticmethod
    def of(
        length: float, start: float, equations: Sequence[Tuple[float, float]], unit: LengthUnit, name: str = ""
    ) -> Numbering:
        """From start value and equations (back, ahead); raises SurveyError for one that is not on the line in order."""
        begin, first = [0.0], [float(start)]
        for number, (back, ahead) in enumerate(equations, 1):
            distance = begin[-1] + (back - first[-1]) * unit.metres
            if not (begin[-1] < distance < length) or not np.isfinite(ahead):
                high = first[-1] + (length - begin[-1]) / unit.metres
                low, top = format_station(first[-1], unit), format_station(high, unit)
                raise SurveyError(BAD_EQUATION, name=name, number=number, back=back, ahead=ahead, low=low, high=top)
            begin.append(distance)
            first.append(float(ahead))
        return Numbering(length, np.array(begin), np.array(first), unit, name)

    @property
    def last(self) -> np.ndarray:
        """Station (p,) at the end of each part."""
        end = np.append(self.begin[1:], self.length)
        last: np.ndarray = self.first + (end - self.begin) / self.unit.metres
        return last

    def parts(self, distance: np.ndarray) -> np.ndarray:
        """Part (q,) of each distance (m); at an equation the part ahead."""
        found: np.ndarray = np.maximum(np.searchsorted(self.begin, distance, "right") - 1, 0)
        return found

    def stations(self, distance: np.ndarray) -> np.ndarray:
        """Stations (q,) in ``unit`` at distances (q,) in metres; at an equation the one ahead."""
        distance = np.asarray(distance, float)
        part = self.parts(distance)
        result: np.ndarray = self.first[part] + (distance - self.begin[part]) / self.unit.metres
        return result

    def distance(self, station: float, part: Optional[int] = None) -> float:
        """Distance (m) of a ``station`` in ``unit``; ``part`` (from 0) says which numbering is meant.

        Raises SurveyError for a station that is not on the line, or in several parts when none is said. At an
        equation back and ahead are one place.
        """
        parts = range(len(self.begin)) if part is None else [part]
        found = {p: self._in_part(station, p) for p in parts if 0 <= p < len(self.begin)}
        places = {p: d for p, d in found.items() if d is not None}
        shown = format_station(station, self.unit)
        if not places:
            raise SurveyError(NO_SUCH_STATION, name=self.name, station=shown, ranges=self.ranges())
        distances = list(places.values())
        if max(distances) - min(distances) > 2 * _HALF_DIGIT:
            parts_said = ", ".join(str(p + 1) for p in places)
            raise SurveyError(STATION_TWICE, name=self.name, station=shown, parts=parts_said)
        return distances[0]

    def multiples(self, interval: float) -> np.ndarray:
        """Distances (m) of all stations that are whole multiples of ``interval`` (in ``unit``), in order."""
        found: List[np.ndarray] = []
        slack = 1e-9 * max(1.0, float(np.abs(self.first).max()) / interval)
        for begin, first, last in zip(self.begin, self.first, self.last):
            whole = np.arange(np.ceil(first / interval - slack), np.floor(last / interval + slack) + 1) * interval
            found.append(begin + (whole - first) * self.unit.metres)
        return np.clip(np.concatenate(found), 0.0, self.length)

    def ranges(self) -> str:
        """All parts as people write them."""
        ends = zip(self.first, self.last)
        return ", ".join(f"{format_station(a, self.unit)} \u2013 {format_station(b, self.unit)}" for a, b in ends)

    def _in_part(self, station: float, part: int) -> Optional[float]:
        end = self.begin[part + 1] if part + 1 < len(self.begin) else self.length
        distance = float(self.begin[part] + (station - self.first[part]) * self.unit.metres)
        if not self.begin[part] - _HALF_DIGIT <= distance <= end + _HALF_DIGIT:
            return None
        return float(min(max(distance, self.begin[part]), end))


def format_station(station: float, unit: LengthUnit, decimals: int = 2) -> str:
    """``station`` in ``unit`` with a plus after the kilometres (metre) or the hundreds (feet): 1+234.50, 12+34.50.

    Common practice, no source.
    """
    whole = _whole(unit)
    rounded = round(abs(station), decimals)
    large, rest = divmod(rounded, whole)
    if round(rest, decimals) >= whole:
        large, rest = large + 1, 0.0
    sign = "-" if station < 0 and rounded > 0 else ""
    width = len(str(whole)) - 1 + (decimals + 1 if decimals else 0)
    return f"{sign}{int(large)}+{rest:0{width}.{decimals}f}"


def parse_station(text: str, unit: LengthUnit) -> float:
    """The station in ``unit`` that ``text`` writes: 1+234.50 (or 12+34.50 in feet), 1234.5, -20; also 1234,5.

    Raises SurveyError for anything else.
    """
    found = _STATION.fullmatch(text.strip().replace("\u2212", "-"))
    if found is None:
        raise SurveyError(NOT_A_STATION, given=text.strip())
    sign, large, rest = found.groups()
    value = float(rest.replace(",", ".")) + (int(large) * _whole(unit) if large else 0.0)
    return -value if sign == "-" else value


def parse_stations(text: str, unit: LengthUnit) -> List[float]:
    """Stations with semicolons or blanks between them; see :func:`parse_station`."""
    return [parse_station(piece, unit) for piece in re.split(r"[;\s]+", text) if piece]


def parse_equations(text: str, unit: LengthUnit) -> List[Tuple[float, float]]:
    """Station equations (back, ahead) written such as "1+200 = 1+250; 3+000 = 0+000"; none of an empty text.

    Raises SurveyError for what is no equation.
    """
    found = []
    for piece in text.split(";"):
        if not piece.strip():
            continue
        sides = piece.split("=")
        if len(sides) != 2:
            raise SurveyError(NOT_AN_EQUATION, given=piece.strip())
        found.append((parse_station(sides[0], unit), parse_station(sides[1], unit)))
    return found


def _whole(unit: LengthUnit) -> int:
    """How many units stand before the plus of a station once."""
    return 1000 if unit is LengthUnit.METRE else 100
