"""Breaklines, boundaries and voids made of chains of coded points, with what cannot be one."""

from __future__ import annotations

from dataclasses import replace
from typing import List, Optional, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Text
from ..points.pointset import PointSet
from .arcs import ArcTrouble, shape_line
from .bridges import Bridge, bridges_of
from .chains import count_places, first_of_places, is_flat_ring, same_place
from .coded_chains import Chain, SurveyNotes
from .codes import CodeKind
from .constraints import ConstraintLine, LineKind
from .convention import FieldConvention

REJECTED_SKIPPED = Text(
    "linework.rejected_skipped",
    QT_TRANSLATE_NOOP(
        "core", "{label}: rejected points left out of the line. Points: {count}, first {point} (line {line})."
    ),
)
NO_POSITION = Text(
    "linework.no_position",
    QT_TRANSLATE_NOOP(
        "core",
        "{label}: points without a full position left out of the line. Points: {count}, first {point} (line {line}).",
    ),
)
NOTHING_LEFT = Text(
    "linework.nothing_left",
    QT_TRANSLATE_NOOP("core", "{label}: no point of it can be used; no line. It began at {point} (line {line})."),
)
SINGLE_POINT = Text(
    "linework.single_point",
    QT_TRANSLATE_NOOP(
        "core", "{label}: only one place, {point} (line {line}); no line, the point stays a ground point."
    ),
)
SAME_PLACE_DROPPED = Text(
    "linework.same_place",
    QT_TRANSLATE_NOOP(
        "core",
        "{label}: points at the place of the one before them left out of the line. Points: {count}, "
        "first {point} (line {line}).",
    ),
)
RING_TOO_SHORT = Text(
    "linework.ring_too_short",
    QT_TRANSLATE_NOOP(
        "core",
        "{label}: a ring needs three places and has {places}; left out. Points: {count}, first {point} (line {line}).",
    ),
)
RING_FLAT = Text(
    "linework.ring_flat",
    QT_TRANSLATE_NOOP(
        "core",
        "{label}: all points of the ring lie on one straight line; left out. Points: {count}, "
        "first {point} (line {line}).",
    ),
)
CANNOT_CLOSE = Text(
    "linework.cannot_close",
    QT_TRANSLATE_NOOP("core", "{label}: fewer than three places, so it stays open. It ends at {point} (line {line})."),
)
ARC_AT_END = Text(
    "linework.arc_at_end",
    QT_TRANSLATE_NOOP(
        "core", "{label}: {point} (line {line}) is marked as the middle of an arc but is an end of the line; straight."
    ),
)
ARC_IMPOSSIBLE = Text(
    "linework.arc_impossible",
    QT_TRANSLATE_NOOP(
        "core",
        "{label}: no arc goes through {point} (line {line}) and the points beside it with at most half a "
        "circle between each two; straight.",
    ),
)
ARCS_DISAGREE = Text(
    "linework.arcs_disagree",
    QT_TRANSLATE_NOOP(
        "core",
        "{label}: the arc at {point} (line {line}) and a neighbouring arc differ between their points; "
        "the first one is used there.",
    ),
)
ARC_REJECTED = Text(
    "linework.arc_rejected",
    QT_TRANSLATE_NOOP("core", "{label}: the middle of an arc, {point} (line {line}), cannot be used; no arc there."),
)
ARC_BROKEN = Text(
    "linework.arc_broken",
    QT_TRANSLATE_NOOP(
        "core",
        "{label}: a point beside {point} (line {line}), the middle of an arc, cannot be used; no arc there.",
    ),
)
CARRIED = Text(
    "linework.carried",
    QT_TRANSLATE_NOOP(
        "core",
        "{label}: carried straight across {length:.1f} m between lines {before} and {after}; points left out there: "
        "{count}, first {point} (line {line}). Walk it again.",
    ),
)
SHORT_AT_START = Text(
    "linework.short_at_start",
    QT_TRANSLATE_NOOP(
        "core",
        "{label}: {length:.1f} m shorter at its start, it begins at line {after}; points left out there: {count}, "
        "first {point} (line {line}). Walk it again.",
    ),
)
SHORT_AT_END = Text(
    "linework.short_at_end",
    QT_TRANSLATE_NOOP(
        "core",
        "{label}: {length:.1f} m shorter at its end, it ends at line {before}; points left out there: {count}, first "
        "{point} (line {line}). Walk it again.",
    ),
)
_ARC_TEXTS = {
    ArcTrouble.AT_END: ARC_AT_END,
    ArcTrouble.IMPOSSIBLE: ARC_IMPOSSIBLE,
    ArcTrouble.DISAGREES: ARCS_DISAGREE,
}


class ChainLines:
    """Makes constraint lines of finished chains and reports what cannot be one."""

    def __init__(self, points: PointSet, convention: FieldConvention, report: SurveyNotes) -> None:
        self.xyz = np.column_stack([points.easting, points.northing, points.height])
        self.tolerance = convention.arc_tolerance
        self.report = report
        self.lines: List[ConstraintLine] = []
        self.layers: List[str] = []
        self.joined = np.zeros(len(points), bool)

    def finish(self, chain: Chain) -> None:
        """Turn a chain into a line of the survey, if it can be one."""
        self.report_skipped(chain)
        indices, arcs = self.distinct(chain)
        if not len(indices):
            self.report.add(NOTHING_LEFT, [chain.start], label=chain.label)
        elif len(indices) == 1:
            self.report.add(SINGLE_POINT, indices.tolist(), label=chain.label)
        else:
            closed = self.can_close(chain, indices)
            if closed is not None:
                bridges = self.bridges(chain, indices, closed)
                self.draw(chain, indices, self.whole_arcs(chain, indices, arcs, bridges), closed, bridges)

    def report_skipped(self, chain: Chain) -> None:
        for text, skipped in ((REJECTED_SKIPPED, chain.rejected), (NO_POSITION, chain.placeless)):
            if skipped:
                self.report.add(text, skipped, label=chain.label)
        for index in chain.lost_arcs:
            self.report.add(ARC_REJECTED, [index], label=chain.label)

    def distinct(self, chain: Chain) -> Tuple[np.ndarray, np.ndarray]:
        """The chain's point indices and arc marks without repeated places; a mark moves to the point kept."""
        indices = np.array(chain.points, np.int64)
        xy = self.xyz[indices, :2]
        keep = first_of_places(xy)
        if chain.closes and np.count_nonzero(keep) > 1:
            last = int(np.flatnonzero(keep)[-1])
            keep[last:] = keep[last:] & (not same_place(xy[0], xy[last]))
        arcs = np.zeros(len(indices), bool)
        kept_before = np.maximum.accumulate(np.where(keep, np.arange(len(indices)), 0))
        np.logical_or.at(arcs, kept_before, np.array(chain.arcs, bool))
        if not keep.all():
            self.report.add(SAME_PLACE_DROPPED, indices[~keep].tolist(), label=chain.label)
        return indices[keep], arcs[keep]

    def can_close(self, chain: Chain, indices: np.ndarray) -> Optional[bool]:
        """Whether the line runs back to its first point; None when it is a ring that cannot be one."""
        if not chain.closes:
            return False
        xy = self.xyz[indices, :2]
        places = count_places(xy)
        ring = chain.row.kind is not CodeKind.BREAKLINE
        if ring and places < 3:
            self.report.add(RING_TOO_SHORT, indices.tolist(), label=chain.label, places=places)
            return None
        if ring and is_flat_ring(xy):
            self.report.add(RING_FLAT, indices.tolist(), label=chain.label)
            return None
        if places < 3:
            self.report.add(CANNOT_CLOSE, [int(indices[-1])], label=chain.label)
        return places >= 3

    def bridges(self, chain: Chain, indices: np.ndarray, closed: bool) -> Tuple[Bridge, ...]:
        """Where the line is carried across points that cannot be used, or ends short of them; told one by one."""
        every = np.unique(np.concatenate([indices, chain.rejected, chain.placeless]).astype(np.int64))
        found = []
        for bridge in bridges_of(self.xyz[every], np.isin(every, indices), closed):
            before, after = (int(every[v]) if v >= 0 else -1 for v in (bridge.before, bridge.after))
            bridge = replace(bridge, before=before, after=after, left_out=every[bridge.left_out])
            text = CARRIED if bridge.carried else SHORT_AT_START if before < 0 else SHORT_AT_END
            ends = {name: self.report.line(v) for name, v in (("before", before), ("after", after)) if v >= 0}
            self.report.add(text, bridge.left_out.tolist(), label=chain.label, length=bridge.length, **ends)
            found.append(bridge)
        return tuple(found)

    def whole_arcs(
        self, chain: Chain, indices: np.ndarray, arcs: np.ndarray, bridges: Tuple[Bridge, ...]
    ) -> np.ndarray:
        """The arc marks without those of arcs that a bridge begins or ends in."""
        ends = [v for bridge in bridges for v in (bridge.before, bridge.after)]
        broken = arcs & np.isin(indices, ends)
        for index in indices[broken].tolist():
            self.report.add(ARC_BROKEN, [index], label=chain.label)
        return arcs & ~broken

    def draw(
        self, chain: Chain, indices: np.ndarray, arcs: np.ndarray, closed: bool, bridges: Tuple[Bridge, ...]
    ) -> None:
        """Add the line with its arcs chorded; a closed breakline repeats its first vertex at the end."""
        shaped = shape_line(self.xyz[indices], arcs, closed, self.tolerance)
        for vertex, trouble in shaped.troubles:
            self.report.add(_ARC_TEXTS[trouble], [int(indices[vertex])], label=chain.label)
        xyz, numbers = shaped.xyz, np.where(shaped.source < 0, -1, indices[shaped.source])
        kind: LineKind = chain.row.kind.line
        if closed and kind is LineKind.BREAKLINE:
            xyz, numbers = np.vstack([xyz, xyz[:1]]), np.append(numbers, numbers[0])
        self.lines.append(ConstraintLine(kind, xyz, numbers.astype(np.int64), chain.label, bridges))
        self.layers.append(chain.row.layer)
        self.joined[indices] = True
