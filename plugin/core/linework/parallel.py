"""The parallel of a line in plan, and where lines meet."""

from __future__ import annotations

from typing import Any, Dict, Iterator, List, Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, Text
from .chains import first_of_places, same_place
from .convention import SAME_PLACE

#: Turns sharper than this (cosine of the turn; about 120 degrees) are not mitred on their outer side.
_SHARP = -0.5
#: A vertex may lie this much of the offset nearer to the first line before it is taken out.
_NEAR = 1e-6
SEGMENTS_LOST = Text(
    "faces.segments_lost",
    QT_TRANSLATE_NOOP(
        "core",
        "{label}: segments too short or corners too narrow for the offset {offset} m, left out of the second "
        "line: {count}, first at {x:.3f}, {y:.3f}.",
    ),
)
HAIRPIN = Text(
    "faces.hairpin",
    QT_TRANSLATE_NOOP(
        "core", "{label}: the line turns back on itself at {x:.3f}, {y:.3f}; the second line goes round it."
    ),
)
#: Positions of a corner on the second line, and the vertices of the first it stands for.
Corner = Tuple[List[np.ndarray], Tuple[int, ...]]


def near_values(label: str, xy: np.ndarray) -> Dict[str, Any]:
    return {"label": label, "x": float(xy[0]), "y": float(xy[1])}


class Parallel:
    """Builds the parallel of a chain ``xy`` (k, 2) at ``distance`` (positive to its left)."""

    def __init__(self, xy: np.ndarray, closed: bool, distance: float) -> None:
        self.xy, self.closed, self.distance = xy, closed, distance
        ends = np.vstack([xy[1:], xy[:1]]) if closed else xy[1:]
        steps = ends - xy[: len(ends)]
        self.along = steps / np.hypot(*steps.T)[:, None]
        self.normal = np.column_stack([-self.along[:, 1], self.along[:, 0]])
        self.lost: List[int] = []
        self.hairpins: List[int] = []
        self.pruned: List[np.ndarray] = []

    def run(self, heights: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
        """Plan positions (m, 2) and heights (m,) of the parallel; ``heights`` (k,) belong to the given chain."""
        segments = list(range(len(self.along)))
        corners = self.corners(segments)
        while len(segments) > 1:
            backwards = self.backwards(segments, corners)
            if not backwards:
                break
            self.lost += [segments[place] for place in backwards]
            gone = set(self.lost)
            segments = [segment for segment in segments if segment not in gone]
            corners = self.corners(segments)
        plan = np.array([xy for xys, _ in corners for xy in xys]).reshape(-1, 2)
        height = np.array([heights[list(vertices)].mean() for xys, vertices in corners for _ in xys])
        plan, height = self.pruned_to_distance(plan, height)
        keep = first_of_places(plan)
        if self.closed and len(plan) > 1 and same_place(plan[0], plan[-1]):
            keep[-1] = False
        return plan[keep], height[keep]

    def pruned_to_distance(self, plan: np.ndarray, height: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
        """The chain without what lies nearer than the offset, and without the small tangles that this leaves."""
        while True:
            keep = self.far_enough(plan)
            self.pruned += list(plan[~keep])
            plan, height = plan[keep], height[keep]
            if not self.lost and not self.pruned:
                return plan, height
            untangled, height = _untangled(plan, height, 8 * abs(self.distance))
            if len(untangled) == len(plan):
                return plan, height
            plan = untangled

    def corners(self, segments: Sequence[int]) -> List[Corner]:
        """Positions at each corner between ``segments``, with the given vertices each corner stands for.

        An open chain of m segments has m + 1 corners, a closed one m: corner j is where segment j begins.
        """
        count = len(self.xy)
        found: List[Corner] = []
        self.hairpins = []
        for place, segment in enumerate(segments):
            if place or self.closed:
                before = segments[place - 1]
                span = (segment - before) % count if self.closed else segment - before
                vertices = tuple((before + 1 + step) % count for step in range(span or count))
                found.append((self.corner(before, segment, vertices), vertices))
            else:
                vertices = tuple(range(segment + 1))
                found.append(([self.xy[segment] + self.distance * self.normal[segment]], vertices))
        if not self.closed:
            last = segments[-1]
            vertices = tuple(range(last + 1, count))
            found.append(([self.xy[last + 1] + self.distance * self.normal[last]], vertices))
        return found

    def corner(self, before: int, after: int, vertices: Tuple[int, ...]) -> List[np.ndarray]:
        """One position on the mitre, or two where the corner is too sharp or the segments do not meet."""
        a, b = self.along[before], self.along[after]
        cosine, sine = float(a @ b), float(a[0] * b[1] - a[1] * b[0])
        outer = sine * self.distance <= 0
        first = self.xy[vertices[0]] + self.distance * self.normal[before]
        second = self.xy[vertices[-1]] + self.distance * self.normal[after]
        back = cosine < 0 and abs(sine) < 1e-6
        gap = float((self.xy[vertices[-1]] - self.xy[vertices[0]]) @ self.normal[before]) * np.sign(self.distance)
        if back and gap > SAME_PLACE:  # two legs with the offset between them: no room, both are taken out later
            return [first, second]
        if cosine < _SHARP and (outer or back):
            if back:
                self.hairpins.append(vertices[0])
            # both cut points lie on the offset lines, and the cut is tangent to the circle of the offset
            reach = abs(self.distance) * np.tan(np.arctan2(abs(sine), cosine) / 4)
            return [first + reach * a, second - reach * b]
        if abs(sine) < 1e-9:
            return [(first + second) / 2]
        between = second - first
        return [first + a * ((between[0] * b[1] - between[1] * b[0]) / sine)]

    def backwards(self, segments: Sequence[int], corners: Sequence[Corner]) -> List[int]:
        """Places among ``segments`` whose parallel runs backwards: the worst of each run of neighbours."""
        starts = np.array([xys[-1] for xys, _ in corners])
        ends = np.array([xys[0] for xys, _ in corners])
        ends = np.roll(ends, -1, axis=0) if self.closed else ends[1:]
        forward = np.sum((ends - starts[: len(ends)]) * self.along[list(segments)], axis=1)
        bad = forward < SAME_PLACE
        before = np.concatenate([[np.inf], np.where(bad, forward, np.inf)[:-1]])
        after = np.concatenate([np.where(bad, forward, np.inf)[1:], [np.inf]])
        # ties: the earlier goes first
        worst = np.flatnonzero(bad & (forward < before) & (forward <= after)).tolist()
        return worst[: len(segments) - 1]

    def far_enough(self, plan: np.ndarray) -> np.ndarray:
        """Mask of the positions that keep the offset from every segment of the given chain."""
        least = abs(self.distance) * (1 - _NEAR) - 1e-9
        starts = self.xy
        ends = np.vstack([self.xy[1:], self.xy[:1]]) if self.closed else self.xy[1:]
        starts = starts[: len(ends)]
        keep = np.ones(len(plan), bool)
        for first, second in _boxes_that_meet(plan, plan, starts, ends, least):
            keep[first[_distance(plan[first], starts[second], ends[second]) < least]] = False
        return keep

    def messages(self, label: str, origin: np.ndarray) -> Iterator[Message]:
        """What was lost on the way."""
        lost = [self.xy[index] for index in sorted(self.lost)] + self.pruned
        if lost:
            values = near_values(label, lost[0] + origin)
            yield Message(SEGMENTS_LOST, {**values, "count": len(lost), "offset": abs(self.distance)})
        for vertex in self.hairpins:
            yield Message(HAIRPIN, near_values(label, self.xy[vertex] + origin))


def _distance(xy: np.ndarray, start: np.ndarray, end: np.ndarray) -> np.ndarray:
    """Distance (m,) of positions (m, 2) from segments ``start`` (m, 2) to ``end`` (m, 2)."""
    step = end - start
    along = np.clip(np.sum((xy - start) * step, axis=1) / np.sum(step * step, axis=1), 0, 1)
    return np.hypot(*(xy - start - along[:, None] * step).T)


def _boxes_that_meet(
    starts: np.ndarray, ends: np.ndarray, other_starts: np.ndarray, other_ends: np.ndarray, margin: float
) -> Iterator[Tuple[np.ndarray, np.ndarray]]:
    """Index pairs, in blocks, of two lists of segments whose bounding boxes come within ``margin``."""
    if not len(starts) or not len(other_starts):
        return
    low, high = np.minimum(starts, ends) - margin, np.maximum(starts, ends) + margin
    other_low, other_high = np.minimum(other_starts, other_ends), np.maximum(other_starts, other_ends)
    axis = int(np.argmax(np.ptp(other_low, axis=0)))
    order = np.argsort(other_low[:, axis], kind="stable")
    sorted_low = other_low[order, axis]
    reach = np.max(other_high[:, axis] - other_low[:, axis])
    begin = np.searchsorted(sorted_low, low[:, axis] - reach, "left")
    end = np.searchsorted(sorted_low, high[:, axis], "right")
    block = max(1, 2_000_000 // max(1, int(np.max(end - begin))))
    for chunk in range(0, len(starts), block):
        counts = (end - begin)[chunk : chunk + block]
        first = np.repeat(np.arange(chunk, chunk + len(counts)), counts)
        offset = np.arange(counts.sum()) - np.repeat(np.cumsum(counts) - counts, counts)
        second = order[begin[first] + offset]
        meet = ((low[first] <= other_high[second]) & (other_low[second] <= high[first])).all(axis=1)
        yield first[meet], second[meet]


def _untangled(plan: np.ndarray, heights: np.ndarray, longest: float) -> Tuple[np.ndarray, np.ndarray]:
    """The chain without loops and folds shorter than ``longest``, which are left where vertices were lost."""
    while len(plan) > 3:
        loop = _short_loop(plan, longest)
        if loop is None:
            break
        first, second, place = loop
        height = heights[first + 1 : second + 1].mean()
        plan = np.vstack([plan[: first + 1], place[None], plan[second + 1 :]])
        heights = np.concatenate([heights[: first + 1], [height], heights[second + 1 :]])
        keep = first_of_places(plan)
        plan, heights = plan[keep], heights[keep]
    return plan, heights


def _short_loop(plan: np.ndarray, longest: float) -> Optional[Tuple[int, int, np.ndarray]]:
    """Two segments of a chain that close a short loop or fold, and the place where the loop is cut off."""
    step = np.diff(plan, axis=0)
    length = np.hypot(*step.T)
    walked = np.concatenate([[0], np.cumsum(length)])
    cosine = np.sum(step[:-1] * step[1:], axis=1) / (length[:-1] * length[1:])
    folds = np.flatnonzero((cosine < -1 + 1e-9) & (np.minimum(length[:-1], length[1:]) < longest))
    if len(folds):
        at = int(folds[0])
        # the nearer neighbour of the fold is where the chain goes on
        return at, at + 1, plan[at] if length[at] < length[at + 1] else plan[at + 2]
    for first, second in _boxes_that_meet(plan[:-1], plan[1:], plan[:-1], plan[1:], 0.0):
        near = (second > first + 1) & (walked[second] - walked[first + 1] < longest)
        first, second = first[near], second[near]
        cross = _cross(plan[first], plan[first + 1], plan[second], plan[second + 1])
        if cross.any():
            a, b = int(first[cross][0]), int(second[cross][0])
            return a, b, _crossing_place(plan[a], plan[a + 1], plan[b], plan[b + 1])
    return None


def meeting_of(xy: np.ndarray, plan: np.ndarray, closed: bool) -> Optional[np.ndarray]:
    """A place (2,) where the parallel meets the given chain or itself, or None."""
    starts, ends = plan[:-1], plan[1:]
    for first, second in _boxes_that_meet(starts, ends, xy[:-1], xy[1:], SAME_PLACE):
        cross = _cross(starts[first], ends[first], xy[second], xy[second + 1])
        if cross.any():
            a, b = first[cross][0], second[cross][0]
            return _crossing_place(starts[a], ends[a], xy[b], xy[b + 1])
    count = len(starts)
    for first, second in _boxes_that_meet(starts, ends, starts, ends, SAME_PLACE):
        apart = second - first
        pairs = (apart > 1) & ~(closed & (apart == count - 1))
        first, second = first[pairs], second[pairs]
        cross = _cross(starts[first], ends[first], starts[second], ends[second])
        if cross.any():
            a, b = first[cross][0], second[cross][0]
            return _crossing_place(starts[a], ends[a], starts[b], ends[b])
    return None


def _crossing_place(a: np.ndarray, b: np.ndarray, c: np.ndarray, d: np.ndarray) -> np.ndarray:
    """Where segment a-b meets c-d, or comes nearest to it; for overlapping ones a place on both."""
    step, other = b - a, d - c
    sine = step[0] * other[1] - step[1] * other[0]
    if abs(sine) > 1e-12:
        between = c - a
        return a + np.clip((between[0] * other[1] - between[1] * other[0]) / sine, 0, 1) * step
    return a + np.clip((c - a) @ step / (step @ step), 0, 1) * step


def _cross(a: np.ndarray, b: np.ndarray, c: np.ndarray, d: np.ndarray) -> np.ndarray:
    """Mask of the segment pairs a-b, c-d (each (m, 2)) that cross or come within ``SAME_PLACE``."""

    def side(p: np.ndarray, q: np.ndarray, r: np.ndarray) -> np.ndarray:
        return (q[:, 0] - p[:, 0]) * (r[:, 1] - p[:, 1]) - (q[:, 1] - p[:, 1]) * (r[:, 0] - p[:, 0])

    crossing = (side(a, b, c) * side(a, b, d) < 0) & (side(c, d, a) * side(c, d, b) < 0)
    near = np.minimum.reduce([_distance(a, c, d), _distance(b, c, d), _distance(c, a, b), _distance(d, a, b)])
    return crossing | (near < SAME_PLACE)
