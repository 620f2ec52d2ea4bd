"""Lines that fork: an end that heads for another line of its kind is drawn on to it, two ends that head for each other
to where they meet."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Dict, List, Optional, Tuple

import numpy as np
from scipy.spatial import cKDTree

from .found import FoundKind, FoundLine

#: An end goes on so many usual distances of passes, and at most so far (m).
GO_ON, FARTHEST = 1.6, 6.0
#: Metres of a line that tell the direction of its end; least sine of the angle at which lines meet.
TELLING, LEAST_SINE = 4.0, 0.35
#: A step goes on so far (m) beyond the pass that shows its end: the pass wanders by as much, and were the end short of
#: it, the rim of a surface would run from what is low to what is high past it.
SWAY = 0.3
#: Where two ends meet, one may have gone so far past the other (m).
PAST = 1.5
#: Lines of these kinds go on in one another.
_ALIKE = {FoundKind.STEP: 0, FoundKind.TOP: 1, FoundKind.RIDGE: 1, FoundKind.TOE: 2, FoundKind.VALLEY: 2}
#: Of these the higher ground lies on the left: an end goes on in a beginning only.
_SIDED = (FoundKind.STEP, FoundKind.TOP, FoundKind.TOE)


@dataclass(frozen=True)
class End:
    """An end of an open line: ``line``, whether it is the last vertex, where, which way out, and how far it may go."""

    line: int
    last: bool
    at: np.ndarray
    out: np.ndarray
    reach: float


@dataclass(frozen=True)
class Vertex:
    """A vertex to add: foot and top (3,), and the standard deviations of place and height."""

    foot: np.ndarray
    top: np.ndarray
    plan: float
    height: float


def join_forks(lines: List[FoundLine]) -> List[FoundLine]:
    """The lines with ends drawn on to where they fork from others or meet, those of steps else a little.

    What is drawn on counts as bridged.

    Strong lines meet strong ones only. At a fork both lines have the same vertex, with the height of the line that goes
    on; where two ends meet, the mean of what they have.
    """
    middles = [_middle(line) for line in lines]
    ends = [end for number, line in enumerate(lines) for end in _ends(number, line, middles[number])]
    if not ends:
        return lines
    added: Dict[Tuple[int, bool], Vertex] = _corners(lines, ends)
    inside: Dict[int, List[Tuple[int, float]]] = {}
    tree = _Segments(middles)
    for end in ends:
        if (end.line, end.last) not in added:
            met = _first_met(lines, middles, tree, end)
            if met is not None:
                other, at, share = met
                added[end.line, end.last] = _on(lines[other], at, share, end)
                inside.setdefault(other, []).append((at, share))
    for end in ends:
        if lines[end.line].kind is FoundKind.STEP:
            added.setdefault((end.line, end.last), _beyond(lines[end.line], end))
    return [
        _drawn_on(_with_inside(line, inside.get(i, [])), added.get((i, False)), added.get((i, True)))
        for i, line in enumerate(lines)
    ]


def _middle(line: FoundLine) -> np.ndarray:
    foot = line.foot[:, :2]
    return (foot + line.top[:, :2]) / 2 if len(line.top) else foot


def _ends(number: int, line: FoundLine, xy: np.ndarray) -> List[End]:
    if line.closed or len(xy) < 2:
        return []
    run = np.append(0.0, np.cumsum(np.hypot(*np.diff(xy, axis=0).T)))
    reach = min(GO_ON * run[-1] / max(line.passes - 1, 1), FARTHEST)
    result = []
    for last in (False, True):
        at = xy[-1] if last else xy[0]
        far = run[-1] - TELLING if last else TELLING
        back = np.array([np.interp(far, run, xy[:, 0]), np.interp(far, run, xy[:, 1])])
        long = float(np.hypot(*(at - back)))
        if long > 0:
            result.append(End(number, last, at, (at - back) / long, reach))
    return result


def _may_meet(own: FoundLine, other: FoundLine) -> bool:
    return _ALIKE[own.kind] == _ALIKE[other.kind] and (other.strong or not own.strong)


def _stops(own: FoundLine, other: FoundLine) -> bool:
    """An edge does not go on through a bottom."""
    return other.strong and _ALIKE[own.kind] == 1 and _ALIKE[other.kind] == 2


def _corners(lines: List[FoundLine], ends: List[End]) -> Dict[Tuple[int, bool], Vertex]:
    """The vertices where two ends meet ahead of both, the nearest first."""
    places = np.array([end.at for end in ends])
    found = []
    for i, j in cKDTree(places).query_pairs(2 * FARTHEST, output_type="ndarray").tolist():
        a, b = ends[i], ends[j]
        one, other = lines[a.line], lines[b.line]
        sided = one.kind in _SIDED or other.kind in _SIDED
        if a.line == b.line or one.kind is not other.kind or one.strong != other.strong or (sided and a.last == b.last):
            continue
        sine = a.out[0] * b.out[1] - a.out[1] * b.out[0]
        if abs(sine) < LEAST_SINE:
            continue
        gap = b.at - a.at
        way_a, way_b = (gap[0] * b.out[1] - gap[1] * b.out[0]) / sine, (gap[0] * a.out[1] - gap[1] * a.out[0]) / sine
        if -PAST < way_a <= a.reach and -PAST < way_b <= b.reach:
            found.append((abs(way_a) + abs(way_b), i, j))
    result: Dict[Tuple[int, bool], Vertex] = {}
    for _, i, j in sorted(found):
        keys = [(ends[k].line, ends[k].last) for k in (i, j)]
        if not any(key in result for key in keys):
            vertex = _corner(*((lines[ends[k].line], ends[k]) for k in (i, j)))
            result.update(dict.fromkeys(keys, vertex))
    return result


def _corner(*both: Tuple[FoundLine, End]) -> Vertex:
    """Where two ends meet, with the mean of their heights."""
    at = [-1 if end.last else 0 for _, end in both]
    out = [end.out for _, end in both]
    feet = [line.foot[k] for (line, _), k in zip(both, at)]
    tops = [line.top[k] if len(line.top) else line.foot[k] for (line, _), k in zip(both, at)]
    plan, height = (
        float(np.hypot(*(getattr(line, name)[k] for (line, _), k in zip(both, at))))
        for name in ("sigma_plan", "sigma_height")
    )
    return Vertex(_meeting(feet, out), _meeting(tops, out), plan, height)


def _meeting(places: List[np.ndarray], out: List[np.ndarray]) -> np.ndarray:
    """Where two rays from ``places`` (3,) meet in plan, at the mean height."""
    gap = (places[1] - places[0])[:2]
    way = (gap[0] * out[1][1] - gap[1] * out[1][0]) / (out[0][0] * out[1][1] - out[0][1] * out[1][0])
    return np.append(places[0][:2] + way * out[0], (places[0][2] + places[1][2]) / 2)


class _Segments:
    """All stretches of lines: numbers of line and vertex, and a tree of their middles."""

    def __init__(self, middles: List[np.ndarray]) -> None:
        counts = np.array([len(xy) - 1 for xy in middles])
        self.line = np.repeat(np.arange(len(middles)), counts)
        self.at = np.arange(len(self.line)) - np.repeat(np.cumsum(counts) - counts, counts)
        self.a = np.vstack([xy[:-1] for xy in middles])
        self.b = np.vstack([xy[1:] for xy in middles])
        self.longest = float(np.hypot(*(self.b - self.a).T).max()) / 2
        self.tree = cKDTree((self.a + self.b) / 2)


def _beyond(line: FoundLine, end: End) -> Vertex:
    """The vertex a little beyond an end, with the fall of the line before it."""
    at, inward = (-1, -2) if end.last else (0, 1)
    foot, top, plan, height = _columns(line)
    long = max(float(np.hypot(*(foot[at] - foot[inward])[:2])), SWAY)
    out = np.append(SWAY * end.out, 0.0)
    fall = np.array([0.0, 0.0, SWAY / long])
    places = [values[at] + out + fall * (values[at] - values[inward])[2] for values in (foot, top)]
    return Vertex(places[0], places[1], float(plan[at]), float(height[at]))


def _first_met(
    lines: List[FoundLine], middles: List[np.ndarray], stretches: _Segments, end: End
) -> Optional[Tuple[int, int, float]]:
    """Line, vertex before, and share of the stretch after it, that the way on from ``end`` meets first."""
    near = np.array(stretches.tree.query_ball_point(end.at, end.reach + stretches.longest), np.int64)
    near = near[stretches.line[near] != end.line]
    if not len(near):
        return None
    link, gap = stretches.b[near] - stretches.a[near], stretches.a[near] - end.at
    cross = end.out[0] * link[:, 1] - end.out[1] * link[:, 0]
    steep = np.abs(cross) > LEAST_SINE * np.hypot(*link.T)
    safe = np.where(steep, cross, 1.0)
    way = (gap[:, 0] * link[:, 1] - gap[:, 1] * link[:, 0]) / safe
    share = (gap[:, 0] * end.out[1] - gap[:, 1] * end.out[0]) / safe
    good = steep & (way > 0) & (way <= end.reach) & (share >= 0) & (share < 1)
    for k in np.argsort(way, kind="stable").tolist():
        other = int(stretches.line[near[k]])
        if good[k] and _stops(lines[end.line], lines[other]):
            return None
        if good[k] and _may_meet(lines[end.line], lines[other]):
            return other, int(stretches.at[near[k]]), float(share[k])
    return None


def _on(line: FoundLine, at: int, share: float, end: End) -> Vertex:
    """The vertex of ``line`` that an end meets: of a step on its foot or its top, from whichever side it comes."""
    foot, top, plan, height = (_inserted(values, at, share) for values in _columns(line))
    step = line.foot[at + 1] - line.foot[at]
    from_left = step[0] * (end.at - foot[:2])[1] - step[1] * (end.at - foot[:2])[0] > 0
    place = top if from_left else foot
    return Vertex(place, place, float(plan), float(height))


def _columns(line: FoundLine) -> Tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    return line.foot, line.top if len(line.top) else line.foot, line.sigma_plan, line.sigma_height


def _inserted(values: np.ndarray, at: int, share: float) -> np.ndarray:
    result: np.ndarray = values[at] + share * (values[at + 1] - values[at])
    return result


def _with_inside(line: FoundLine, places: List[Tuple[int, float]]) -> FoundLine:
    """``line`` with vertices at places (vertex before, share of the stretch after it)."""
    if not places:
        return line
    places = sorted(set(places))
    before = np.array([at for at, _ in places]) + 1
    foot, top, plan, height = (
        np.insert(values, before, [_inserted(values, at, share) for at, share in places], axis=0)
        for values in _columns(line)
    )
    return _with(line, foot, top, plan, height, np.insert(line.bridged, before, line.bridged[before - 1]))


def _drawn_on(line: FoundLine, first: Optional[Vertex], last: Optional[Vertex]) -> FoundLine:
    """``line`` with a vertex before its first and after its last one."""
    if first is None and last is None:
        return line
    line = _without_past(_without_past(line, first, 1), last, -1)
    foot, top, plan, height = (
        np.concatenate([[getattr(v, name)] if v else values[:0], values, [getattr(w, name)] if w else values[:0]])
        for values, name in zip(_columns(line), ("foot", "top", "plan", "height"))
        for v, w in [(first, last)]
    )
    bridged = np.concatenate([[True] * (first is not None), line.bridged, [True] * (last is not None)]).astype(bool)
    return _with(line, foot, top, plan, height, bridged)


def _without_past(line: FoundLine, vertex: Optional[Vertex], way: int) -> FoundLine:
    """``line`` without the vertices at its beginning (``way`` 1) or end (-1) that lie past ``vertex``."""
    if vertex is None:
        return line
    place = line.foot[::way, :2]
    inward = place[1:] - place[:-1]
    ahead = ((place[:-1] - vertex.foot[:2]) * inward).sum(axis=1) > 0
    many = int(np.argmax(np.append(ahead, True)))
    keep = slice(many, None) if way > 0 else slice(0, len(place) - many)
    foot, top, plan, height = (values[keep] for values in _columns(line))
    return _with(
        line, foot, top, plan, height, line.bridged[many:] if way > 0 else line.bridged[: len(place) - 1 - many]
    )


def _with(
    line: FoundLine, foot: np.ndarray, top: np.ndarray, plan: np.ndarray, height: np.ndarray, bridged: np.ndarray
) -> FoundLine:
    return replace(
        line, easting=foot[:, 0], northing=foot[:, 1], height=foot[:, 2], top=top if len(line.top) else line.top,
        sigma_plan=plan, sigma_height=height, bridged=bridged,
    )  # fmt: skip
