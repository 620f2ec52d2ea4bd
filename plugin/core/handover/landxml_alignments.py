"""Alignments of a LandXML file: its elements, and what they make (LandXML 1.2 schema, from memory).

An ``Alignment`` begins at station ``staStart``; its ``CoordGeom`` is a chain of ``Line`` (``Start``, ``End``),
``IrregularLine`` (with a list of places besides), ``Curve`` (``rot`` cw or ccw; ``Start``, ``Center``, ``End``) and
``Spiral`` (``length``, ``radiusStart``, ``radiusEnd``, ``rot``, ``spiType``; ``Start``, ``PI``, ``End``). Places are
northing and easting, or the name of a point (``pntRef``). ``StaEquation`` renumbers: ``staInternal`` is the station
without equations, which also counts along a ``Profile``: ``ProfAlign`` of ``PVI`` and ``ParaCurve`` (station and
elevation, ``length``), ``ProfSurf`` with a list of stations and elevations.
"""

from __future__ import annotations

from array import array
from typing import Any, Callable, Dict, List, Optional, Tuple, Union

import numpy as np

from ..messages import Message, SurveyError, Text, message
from .landxml_geometry import clothoid_end
from .landxml_model import Arc, Clothoid, Element, LandAlignment, LandProfile, Straight
from .landxml_parser import Node, Place
from .landxml_surfaces import LIST_SIZE, ListNode, in_metres
from .landxml_texts import (
    BAD_ATTRIBUTE,
    BAD_CURVE,
    BAD_NUMBERS,
    BAD_PROFILE,
    GAP,
    MISSING_ATTRIBUTE,
    NO_GEOMETRY,
    NO_SUCH_SPIRAL,
    OTHER_CURVE,
    SPIRAL_MISFIT,
)
from .landxml_units import Scale

#: How far (m) elements may miss each other by what files round.
_MISFIT = 0.05
_ELEMENTS = ("Line", "IrregularLine", "Curve", "Spiral")
#: A place as the file has it: northing, easting; or the name of a point.
Given = Union[List[float], str]
#: Finds the northing and easting of a named point: of (name, element, line).
Find = Callable[[str, str, int], List[float]]


class RawElement:
    """A line, curve or spiral as the file has it."""

    def __init__(self, name: str, attributes: Dict[str, str], line: int) -> None:
        self.name, self.attributes, self.line = name, attributes, line
        self.places: Dict[str, Given] = {}
        self.between: Optional[Tuple[array, int]] = None


class RawProfile:
    """A profile: station, elevation and length of curve, or the list of a ground."""

    def __init__(self, name: str, line: int, design: bool) -> None:
        self.name, self.line, self.design = name, line, design
        self.rows: List[Tuple[float, float, float]] = []
        self.other = ""  # an element that is not read


class RawAlignment:
    """An alignment as the file has it."""

    def __init__(self, name: str, description: str, start: float, line: int) -> None:
        self.name, self.description, self.start, self.line = name, description, start, line
        self.elements: List[RawElement] = []
        self.equations: List[Tuple[float, Optional[float], float]] = []  # internal, back, ahead
        self.profiles: List[RawProfile] = []


# Elements


class AlignmentNode(Node):
    """``Alignment``, and ``CoordGeom`` and ``Profile`` within it."""

    def __init__(self, raw: RawAlignment, place: Place) -> None:
        self.raw, self.place = raw, place

    def child(self, name: str, attributes: Dict[str, str]) -> Optional[Node]:
        if name in ("CoordGeom", "Profile"):
            return self
        if name in _ELEMENTS:
            self.raw.elements.append(RawElement(name, attributes, self.place.line))
            return _ElementNode(self.raw.elements[-1], self.place)
        if name == "StaEquation":
            self._equation(attributes)
        if name in ("ProfAlign", "ProfSurf"):
            design = name == "ProfAlign"
            self.raw.profiles.append(
                RawProfile(attributes.get("name", "").strip() or self.raw.name, self.place.line, design)
            )
            return _ProfileNode(self.raw.profiles[-1], self.place)
        return None

    def _equation(self, attributes: Dict[str, str]) -> None:
        if attributes.get("staIncrement", "increasing") != "increasing":
            found = attributes["staIncrement"][:40]
            raise self.place.error(BAD_ATTRIBUTE, element="StaEquation", attribute="staIncrement", found=found)
        ahead = self.place.number("StaEquation", attributes, "staAhead")
        back = None
        if attributes.get("staBack", "").strip():
            back = self.place.number("StaEquation", attributes, "staBack")
        internal = self.place.number("StaEquation", attributes, "staInternal")
        self.raw.equations.append((internal, back, ahead))


class _ElementNode(Node):
    def __init__(self, raw: RawElement, place: Place) -> None:
        self.raw, self.place = raw, place

    def child(self, name: str, attributes: Dict[str, str]) -> Optional[Node]:
        if name in ("Start", "Center", "End", "PI"):
            return _PlaceNode(self.raw, name, attributes, self.place)
        return ListNode(name, self, self.place) if name in LIST_SIZE else None

    def take(self, values: array, size: int) -> None:
        self.raw.between = (values, size)


class _PlaceNode(Node):
    wants_text = True

    def __init__(self, raw: RawElement, name: str, attributes: Dict[str, str], place: Place) -> None:
        self.raw, self.name, self.place = raw, name, place
        self.reference = attributes.get("pntRef", "").strip()

    def close(self, text: str) -> None:
        if self.reference and not text.strip():
            self.raw.places[self.name] = self.reference
        else:
            self.raw.places[self.name] = self.place.numbers(self.name, text, 2, 3)[:2]


class _ProfileNode(Node):
    def __init__(self, raw: RawProfile, place: Place) -> None:
        self.raw, self.place = raw, place

    def child(self, name: str, attributes: Dict[str, str]) -> Optional[Node]:
        if self.raw.design and name in ("PVI", "ParaCurve"):
            length = 0.0 if name == "PVI" else self.place.number(name, attributes, "length")
            return _MeetingNode(self.raw, name, length, self.place)
        if self.raw.design and name in ("CircCurve", "UnsymParaCurve"):
            self.raw.other = name
        return ListNode(name, self, self.place) if not self.raw.design and name == "PntList2D" else None

    def take(self, values: array, size: int) -> None:
        self.raw.rows += [(*row, 0.0) for row in zip(values[::2], values[1::2])]


class _MeetingNode(Node):
    wants_text = True

    def __init__(self, raw: RawProfile, name: str, length: float, place: Place) -> None:
        self.raw, self.name, self.length, self.place = raw, name, length, place
        if length < 0:
            raise place.error(BAD_ATTRIBUTE, element=name, attribute="length", found=f"{length:g}")

    def close(self, text: str) -> None:
        station, height = self.place.numbers(self.name, text, 2)
        self.raw.rows.append((station, height, self.length))


# What they make


class AlignmentMaker:
    """Makes alignments in metres of what the file has; collects what is to be said."""

    def __init__(self, file: str, scale: Scale, find: Find) -> None:
        self.file, self.scale, self.find = file, scale, find
        self.messages: List[Message] = []

    def make(self, raw: RawAlignment) -> Optional[LandAlignment]:
        """The alignment, None where something in it is not read. Raises SurveyError for what cannot be."""
        if not raw.elements:
            self._note(NO_GEOMETRY, raw.line, name=raw.name)
            return None
        elements: List[Element] = []
        for part in raw.elements:
            made = self._element(part, raw.name)
            if made is None:
                return None
            self._check_gap(elements[-1] if elements else None, made, part, raw.name)
            elements.append(made)
        profiles = [self._profile(profile, raw.start) for profile in raw.profiles]
        unit = self.scale.unit
        per_unit = self.scale.plan / unit.metres  # 1, but for files in inches and the like
        return LandAlignment(
            raw.name,
            tuple(elements),
            raw.start * per_unit,
            tuple((back * per_unit, ahead * per_unit) for back, ahead in self._equations(raw)),
            unit,
            tuple(profile for profile in profiles if profile is not None),
            raw.description,
        )

    def _equations(self, raw: RawAlignment) -> List[Tuple[float, float]]:
        """Pairs (back, ahead) in the unit of the file; back is counted on where it is not said."""
        found, shift = [], 0.0
        for internal, back, ahead in sorted(raw.equations, key=lambda equation: equation[0]):
            found.append((internal + shift if back is None else back, ahead))
            shift = ahead - internal
        return found

    def _element(self, raw: RawElement, name: str) -> Optional[Element]:
        if raw.name in ("Line", "IrregularLine"):
            return Straight(self._straight(raw))
        clockwise = raw.attributes.get("rot", "").strip()
        if clockwise not in ("cw", "ccw"):
            raise self._error(BAD_ATTRIBUTE, raw.line, element=raw.name, attribute="rot", found=clockwise[:40])
        start, end = self._at(raw, "Start"), self._at(raw, "End")
        if raw.name == "Curve":
            return self._arc(raw, Arc(start, self._at(raw, "Center"), end, clockwise == "cw"), name)
        return self._spiral(raw, start, end, clockwise == "cw", name)

    def _straight(self, raw: RawElement) -> np.ndarray:
        ends = [self._at(raw, "Start"), self._at(raw, "End")]
        if raw.between is None:
            return np.array(ends)
        values, size = raw.between
        inner = in_metres(np.array(values).reshape(-1, size), self.scale, self.file, raw.line, raw.name)[:, :2]
        xy = np.vstack([ends[:1], inner, ends[1:]])  # the list may repeat the ends
        keep = np.append(True, np.hypot(*np.diff(xy, axis=0).T) > 1e-9)
        return xy[keep] if keep.sum() > 1 else xy[[0, -1]]

    def _arc(self, raw: RawElement, arc: Arc, name: str) -> Arc:
        first, last = (float(np.hypot(*(place - arc.centre))) for place in (arc.start, arc.end))
        if min(first, last) <= 1e-6 or abs(first - last) > max(_MISFIT, 1e-6 * first):
            raise self._error(BAD_CURVE, raw.line, name=name, start=first, end=last)
        return arc

    def _spiral(
        self, raw: RawElement, start: np.ndarray, end: np.ndarray, clockwise: bool, name: str
    ) -> Optional[Clothoid]:
        kind = raw.attributes.get("spiType", "").strip()
        if kind != "clothoid":
            self._note(NO_SUCH_SPIRAL, raw.line, name=name, kind=kind or "?")
            return None
        metres = self.scale.plan
        length, first, last = (
            self._number(raw, attribute) * metres for attribute in ("length", "radiusStart", "radiusEnd")
        )
        if not (0 < length < np.inf and first > 0 and last > 0):
            raise self._error(BAD_ATTRIBUTE, raw.line, element="Spiral", attribute="length, radius", found=kind)
        spiral = Clothoid(start, self._at(raw, "PI"), end, length, first, last, clockwise)
        gap = float(np.hypot(*(clothoid_end(spiral) - end)))
        if not gap <= max(_MISFIT, 1e-4 * length):
            raise self._error(SPIRAL_MISFIT, raw.line, name=name, gap=gap)
        return spiral

    def _number(self, raw: RawElement, attribute: str) -> float:
        return Place(self.file).number(raw.name, raw.attributes, attribute, line=raw.line)

    def _at(self, raw: RawElement, name: str) -> np.ndarray:
        given = raw.places.get(name)
        if given is None:
            raise self._error(MISSING_ATTRIBUTE, raw.line, element=raw.name, attribute=name)
        if isinstance(given, str):
            given = self.find(given, name, raw.line)
        return in_metres(np.array([given]), self.scale, self.file, raw.line, name)[0, :2]

    def _check_gap(self, before: Optional[Element], made: Element, raw: RawElement, name: str) -> None:
        if before is None:
            return
        end = before.xy[-1] if isinstance(before, Straight) else before.end
        start = made.xy[0] if isinstance(made, Straight) else made.start
        gap = float(np.hypot(*(start - end)))
        if gap > _MISFIT:
            raise self._error(GAP, raw.line, name=name, gap=gap)

    def _profile(self, raw: RawProfile, start: float) -> Optional[LandProfile]:
        if raw.other:
            self._note(OTHER_CURVE, raw.line, name=raw.name, element=raw.other)
            return None
        if not raw.rows:
            raise self._error(BAD_NUMBERS, raw.line, element="Profile", needed="2 × n", found="")
        station, height, curve = np.array(raw.rows).T
        distance, length = (station - start) * self.scale.plan, curve * self.scale.plan
        steps = np.diff(distance)
        # A ground may have a step, two heights at one station.
        wrong = (steps <= 0) | ((length[:-1] + length[1:]) / 2 > steps + 1e-3) if raw.design else steps < 0
        if not np.isfinite(distance).all() or wrong.any():
            raise self._error(BAD_PROFILE, raw.line, name=raw.name)
        return LandProfile(raw.name, distance, height * self.scale.height, length if raw.design else None)

    def _error(self, text: Text, line: int, **values: Any) -> SurveyError:
        return SurveyError(text, file=self.file, line=line, **values)

    def _note(self, text: Text, line: int, **values: Any) -> None:
        self.messages.append(message(text, file=self.file, line=line, **values))
