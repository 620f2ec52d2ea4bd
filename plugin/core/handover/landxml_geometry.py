"""Elements of an alignment as a line with stations, and heights of its profiles."""

from __future__ import annotations

from typing import List, Sequence, Tuple

import numpy as np

from ..alignment.curves import FittedProfile
from ..alignment.line import Alignment, make_alignment
from ..alignment.profile import HeightLine
from .landxml_model import Arc, Clothoid, Element, LandAlignment, LandProfile, Straight

#: How far (m) a chord may lie beside a curve.
SAGITTA = 0.001
_LEAST_CHORDS = 8
_GAUSS = np.polynomial.legendre.leggauss(6)


def chords(elements: Sequence[Element], sagitta: float = SAGITTA) -> np.ndarray:
    """The vertices (k, 2) of a polyline along ``elements``, beside curves by ``sagitta`` metres at most."""
    parts: List[np.ndarray] = []
    for element in elements:
        xy = element_chords(element, sagitta)
        parts.append(xy if not parts else xy[1:])
    return np.concatenate(parts)


def element_chords(element: Element, sagitta: float) -> np.ndarray:
    """The vertices (k, 2) of one element; the first and last are those that the file gives."""
    if isinstance(element, Straight):
        return element.xy
    return _arc_chords(element, sagitta) if isinstance(element, Arc) else _clothoid_chords(element, sagitta)


def element_length(element: Element) -> float:
    """Length in plan, metres."""
    if isinstance(element, Straight):
        return float(np.hypot(*np.diff(element.xy, axis=0).T).sum())
    if isinstance(element, Clothoid):
        return element.length
    radius, _, sweep = _sweep(element)
    return radius * abs(sweep)


def _sweep(arc: Arc) -> Tuple[float, float, float]:
    """Radius, angle of the start seen from the centre, and signed angle to the end (clockwise negative)."""
    first, last = arc.start - arc.centre, arc.end - arc.centre
    begin = float(np.arctan2(first[1], first[0]))
    turn = float(np.arctan2(last[1], last[0])) - begin
    full = 2 * np.pi
    sweep = -((-turn) % full) if arc.clockwise else turn % full
    return float(np.hypot(*first)), begin, sweep


def _arc_chords(arc: Arc, sagitta: float) -> np.ndarray:
    radius, begin, sweep = _sweep(arc)
    step = 2 * np.arccos(max(0.0, 1 - sagitta / radius)) if radius > sagitta else np.pi / 2
    count = max(_LEAST_CHORDS, int(np.ceil(abs(sweep) / step)))
    # Radii of both ends differ by what the file rounds; the way between them is shared out.
    share = np.linspace(0.0, 1.0, count + 1)
    radii = radius + share * (float(np.hypot(*(arc.end - arc.centre))) - radius)
    angle = begin + share * sweep
    xy: np.ndarray = arc.centre + radii[:, None] * np.column_stack([np.cos(angle), np.sin(angle)])
    xy[0], xy[-1] = arc.start, arc.end
    return xy


def clothoid_end(spiral: Clothoid) -> np.ndarray:
    """Where (2,) the spiral ends by its start, direction, length and radii."""
    end: np.ndarray = _clothoid_places(spiral, _LEAST_CHORDS)[-1]
    return end


def _clothoid_chords(spiral: Clothoid, sagitta: float) -> np.ndarray:
    least = min(spiral.radius_start, spiral.radius_end)
    count = max(_LEAST_CHORDS, int(np.ceil(spiral.length / np.sqrt(8 * sagitta * least))))
    xy = _clothoid_places(spiral, count)
    share = np.linspace(0.0, 1.0, count + 1)[:, None]
    moved: np.ndarray = xy + share * (spiral.end - xy[-1])  # by what the file rounds
    return moved


def _clothoid_places(spiral: Clothoid, count: int) -> np.ndarray:
    """Places (count + 1, 2): the direction's angle is the integral of a curvature that grows evenly."""
    toward = spiral.pi - spiral.start
    begin = np.arctan2(toward[1], toward[0])
    sign = -1.0 if spiral.clockwise else 1.0
    first, last = sign / spiral.radius_start, sign / spiral.radius_end
    ends = np.linspace(0.0, spiral.length, count + 1)
    half = spiral.length / count / 2
    node, weight = _GAUSS
    s = (ends[:-1] + half)[:, None] + half * node
    angle = begin + first * s + (last - first) * s**2 / (2 * spiral.length)
    steps = half * np.stack([np.cos(angle) @ weight, np.sin(angle) @ weight], axis=1)
    result: np.ndarray = spiral.start + np.vstack([np.zeros((1, 2)), np.cumsum(steps, axis=0)])
    return result


def to_alignment(land: LandAlignment) -> Alignment:
    """The line with stations; curves become chords. Raises SurveyError as :func:`..alignment.line.make_alignment`."""
    return make_alignment(chords(land.elements), land.name, land.start, land.equations, land.unit)


def from_alignment(line: Alignment, profiles: Sequence[LandProfile] = ()) -> LandAlignment:
    """An alignment of straight segments, with its station equations."""
    numbering = line.numbering
    equations = tuple(zip(numbering.last[:-1].tolist(), numbering.first[1:].tolist()))
    elements = tuple(Straight(line.xy[i : i + 2]) for i in range(len(line.xy) - 1))
    return LandAlignment(line.name, elements, float(numbering.first[0]), equations, line.unit, tuple(profiles))


def ground_profiles(ground: HeightLine) -> Tuple[LandProfile, ...]:
    """The heights of a surface along a line, a profile for each part that is on the surface."""
    parts = ground.parts()
    names = [ground.surface] if len(parts) == 1 else [f"{ground.surface} ({i})" for i in range(1, len(parts) + 1)]
    return tuple(LandProfile(name, distance, height) for name, (distance, height) in zip(names, parts))


def design_profile(fit: FittedProfile, name: str) -> LandProfile:
    """Grades and vertical curves as the places where grades meet, with the length of the parabola at each."""
    begin, end = fit.grades[0].begin, fit.grades[-1].end
    distance = np.array([begin, *(curve.meeting for curve in fit.curves), end])
    at_ends = fit.heights(np.array([begin, end]))
    height = np.array([at_ends[0], *(curve.meeting_height for curve in fit.curves), at_ends[1]])
    return LandProfile(name, distance, height, np.array([0.0, *(curve.length for curve in fit.curves), 0.0]))


def profile_heights(profile: LandProfile, distance: np.ndarray) -> np.ndarray:
    """Heights (q,) at distances (q,), nan beyond the profile.

    A parabola of length L about the meeting point of grades g0 and g1 departs from them by (g1 - g0) u² / (2 L),
    u the distance from the curve's nearer end (common practice, no source).
    """
    distance = np.asarray(distance, float)
    height = np.interp(distance, profile.distance, profile.height, left=np.nan, right=np.nan)
    if profile.curve is None or len(profile.distance) < 3:
        return height
    grade = np.diff(profile.height) / np.diff(profile.distance)
    for i in np.flatnonzero(profile.curve > 0):
        length = float(profile.curve[i])
        if not 0 < i < len(profile.distance) - 1:
            continue
        from_end = length / 2 - np.abs(distance - profile.distance[i])
        within = from_end > 0
        height[within] += (grade[i] - grade[i - 1]) * from_end[within] ** 2 / (2 * length)
    return height
