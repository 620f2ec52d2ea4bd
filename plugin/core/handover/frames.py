"""Where a site that does not fit on one sheet is cut.

Three ways are tried and the fewest sheets taken; of as many, the first way: north at the top; all sheets turned alike,
in rows; each sheet turned by itself along the site, as for a street that bends. In a chain each sheet is laid where it
shows the most of what comes next: for a strip the greedy choice is the best there is, as for covering the points of a
line with intervals.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil, inf
from typing import List, NamedTuple, Optional, Tuple

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components, dijkstra

from ..earthwork.segments import edge_segments, rim_edges
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..surface.tin import Tin

NO_ROOM = Text(
    "frames.no_room",
    QT_TRANSLATE_NOOP(
        "core",
        "At 1 : {scale:g} a sheet shows {width:.1f} m by {height:.1f} m, of which {overlap:.1f} m overlap: too little "
        "to cover a site; choose a larger paper or another scale.",
    ),
)
TOO_MANY = Text(
    "frames.too_many",
    QT_TRANSLATE_NOOP(
        "core",
        "At 1 : {scale:g} the site would need {count} sheets; up to {most} are made. Choose a smaller scale or a "
        "larger paper.",
    ),
)

MOST_SHEETS = 200
#: Degrees between the turns of all sheets that are tried; between those of single ones; and up to so many sheets these
#: are turned one by one.
_TURNS, _OWN_TURNS, _MOST_TURNED = 2.5, 5.0, 40
#: Places of a single sheet that are tried, along and across; points of the site on the shorter side of a sheet.
_PLACES, _FINE = 9, 10


@dataclass(frozen=True)
class SheetFrames:
    """k rectangles of one size, in the order in which they are numbered.

    ``centre``: (k, 2) metres from ``origin``. ``size``: (2,) metres. ``turn``: (k,) degrees by which the right edge's
    direction "to the right on paper" is turned counter-clockwise from grid east, -90 to 90. ``row``, ``column``: (k,)
    from 0, of the grid of frames that they are of; a chain is one row.
    """

    centre: np.ndarray
    size: np.ndarray
    turn: np.ndarray
    row: np.ndarray
    column: np.ndarray
    origin: np.ndarray

    def __len__(self) -> int:
        return len(self.centre)

    def corners(self) -> np.ndarray:
        """(k, 4, 2): lower left, lower right, upper right and upper left corner on the paper."""
        half = self.size / 2 * np.array([[-1, -1], [1, -1], [1, 1], [-1, 1]])
        right = _right(self.turn)
        up = np.column_stack([-right[:, 1], right[:, 0]])
        result: np.ndarray = self.centre[:, None] + half[None, :, :1] * right[:, None] + half[None, :, 1:] * up[:, None]
        return result


def sheet_frames(tin: Tin, width: float, height: float, overlap: float, scale: float) -> SheetFrames:
    """Frames of ``width`` by ``height`` metres on the ground that show all of ``tin`` at 1 : ``scale``.

    Neighbours share ``overlap`` metres or more. Those with no ground in them are left out. Raises SurveyError where the
    sheet is smaller than the overlap leaves sense in, or where more than ``MOST_SHEETS`` would be needed.
    """
    if not (width > 2 * overlap >= 0 and height > 2 * overlap and width < inf and height < inf):
        raise SurveyError(NO_ROOM, scale=scale, width=width, height=height, overlap=overlap)
    # The rim alone says how far the ground reaches, of a large surface many thousand times sooner than its triangles.
    rim = edge_segments(tin)[0][rim_edges(tin)] - tin.origin
    size = np.array([width, height])
    span = rim.max(axis=(0, 1)) - rim.min(axis=(0, 1))
    count = int(np.prod([float(_count(a, b, overlap)) for a, b in zip(span, size)]))
    if tin.plan_area > MOST_SHEETS * size.prod():
        raise SurveyError(TOO_MANY, scale=scale, count=count, most=MOST_SHEETS)
    best = _grid(rim, size, overlap, 0.0, MOST_SHEETS)
    turned = None if best is not None and len(best.centre) == 1 else _turned(rim, size, overlap, best)
    best = turned or best
    most = MOST_SHEETS if best is None else len(best.centre) - 1
    if most * size.prod() > tin.plan_area:
        best = _chain(tin.vertices[tin.triangles][:, :, :2], size, overlap, min(most, _MOST_TURNED)) or best
    if best is None:
        raise SurveyError(TOO_MANY, scale=scale, count=count, most=MOST_SHEETS)
    centre = np.array([_centred(rim, at, turn, size) for at, turn in zip(best.centre, best.turn)])
    return SheetFrames(centre, size, best.turn, best.row, best.column, tin.origin)


class _Cut(NamedTuple):
    """Frames by centre (k, 2), turn (k,), row and column (k,)."""

    centre: np.ndarray
    turn: np.ndarray
    row: np.ndarray
    column: np.ndarray


def _turned(rim: np.ndarray, size: np.ndarray, overlap: float, straight: Optional[_Cut]) -> Optional[_Cut]:
    """Fewer sheets than ``straight``, all turned alike; of as many, those with the site nearest to their middle."""
    most = MOST_SHEETS if straight is None else len(straight.centre) - 1
    best, least = None, inf
    for turn in np.arange(-90 + _TURNS, 90 + _TURNS, _TURNS).tolist():
        cut = _grid(rim, size, overlap, turn, most)
        if cut is None or len(cut.centre) == 0:
            continue
        boxes = [_shown((rim - at) @ _axes(turn), -size / 2, size / 2) for at in cut.centre]
        height = float(np.mean([box[1, 1] - box[0, 1] for box in boxes if box is not None]))
        if len(cut.centre) < most or height < least - 1e-9 or best is None:
            best, most, least = cut, len(cut.centre), height
    return best


def _right(turn: np.ndarray) -> np.ndarray:
    """Unit vectors (..., 2) to the right on paper."""
    angle = np.radians(turn)
    return np.stack([np.cos(angle), np.sin(angle)], axis=-1)


def _axes(turn: float) -> np.ndarray:
    """(2, 2): the directions to the right and up on paper, as columns."""
    right = _right(np.array(turn))
    return np.column_stack([right, [-right[1], right[0]]])


def _centred(rim: np.ndarray, centre: np.ndarray, turn: float, size: np.ndarray) -> np.ndarray:
    """Where the middle of a frame lies best: what it shows stands in the middle of the paper."""
    box = _shown((rim - centre) @ _axes(turn), -size / 2, size / 2)
    return centre if box is None else centre + _axes(turn) @ box.mean(axis=0)


def _count(span: float, length: float, overlap: float) -> int:
    """Frames of ``length`` that cover ``span`` where neighbours share ``overlap``."""
    return max(1, ceil((span - overlap) / (length - overlap) - 1e-9))


def _grid(rim: np.ndarray, size: np.ndarray, overlap: float, turn: float, most: int) -> Optional[_Cut]:
    """Frames in rows from the top, evenly spread, in each row over what it shows; None for more than ``most``."""
    axes = _axes(turn)
    turned = rim @ axes
    low, high = turned.min(axis=(0, 1)), turned.max(axis=(0, 1))
    rows = _count(high[1] - low[1], size[1], overlap)
    if rows > most:
        return None
    centre, row, column = [], [], []
    for number, v in enumerate(_spread(low[1], high[1], size[1], rows)[::-1]):
        reach = _reach(turned, v, v + size[1])
        if reach is None:
            continue
        many = _count(reach[1] - reach[0], size[0], overlap)
        for place, u in enumerate(_spread(*reach, size[0], many)):
            corner = np.array([u, v])
            if _shown(turned, corner, corner + size) is not None:
                centre.append(axes @ (corner + size / 2))
                row.append(number)
                column.append(place)
                if len(centre) > most:
                    return None
    return _Cut(np.array(centre), np.full(len(centre), turn), np.array(row), np.array(column))


def _spread(low: float, high: float, length: float, count: int) -> np.ndarray:
    """Where ``count`` frames of ``length`` begin that stand evenly from ``low`` to ``high``; one about the middle."""
    return np.linspace(low, high - length, count) if count > 1 else np.array([(low + high - length) / 2])


def _reach(rim: np.ndarray, low: float, high: float) -> Optional[Tuple[float, float]]:
    """How far left and right the ground inside a rim (k, 2, 2) reaches between two heights of the paper."""
    parts = _within(rim, np.array([-inf, low]), np.array([inf, high]))
    return (float(parts[..., 0].min()), float(parts[..., 0].max())) if len(parts) else None


def _shown(rim: np.ndarray, low: np.ndarray, high: np.ndarray) -> Optional[np.ndarray]:
    """Lower left and upper right corner (2, 2) of the ground that a frame from ``low`` to ``high`` (2,) shows, None for
    none.

    These lie where the rim (k, 2, 2) is in the frame, or at the corners of it that lie inside the rim.
    """
    corners = np.array([low, [high[0], low[1]], high, [low[0], high[1]]])
    middle = (low + high) / 2
    inside = _inside(rim, middle + (1 - 1e-9) * (corners - middle))
    places = np.vstack([_within(rim, low, high).reshape(-1, 2), corners[inside]])
    return np.array([places.min(axis=0), places.max(axis=0)]) if len(places) else None


def _within(segments: np.ndarray, low: np.ndarray, high: np.ndarray) -> np.ndarray:
    """The parts (j, 2, 2) of segments (k, 2, 2) inside a box, none for what runs along a side (Liang, Barsky 1984)."""
    start, way = segments[:, 0], segments[:, 1] - segments[:, 0]
    begin, end = np.zeros(len(start)), np.ones(len(start))
    for k in (0, 1):
        with np.errstate(divide="ignore", invalid="ignore"):
            at = np.array([(low[k] - start[:, k]) / way[:, k], (high[k] - start[:, k]) / way[:, k]])
        out = (way[:, k] == 0) & ((start[:, k] <= low[k]) | (start[:, k] >= high[k]))
        free = way[:, k] == 0
        begin = np.where(free, begin, np.maximum(begin, at.min(axis=0)))
        end = np.where(free, np.where(out, -inf, end), np.minimum(end, at.max(axis=0)))
    some = begin < end
    share = np.stack([begin[some], end[some]], axis=1)
    result: np.ndarray = start[some, None] + share[:, :, None] * way[some, None]
    return result


def _inside(rim: np.ndarray, xy: np.ndarray) -> np.ndarray:
    """Mask of places (j, 2) inside a rim (k, 2, 2), by the even-odd rule."""
    (ax, ay), (bx, by) = rim[:, 0].T, rim[:, 1].T
    y = xy[:, 1, None]
    with np.errstate(divide="ignore", invalid="ignore"):
        east = ax + (y - ay) / (by - ay) * (bx - ax)
    crossed = ((ay > y) != (by > y)) & (xy[:, 0, None] < east)
    result: np.ndarray = np.count_nonzero(crossed, axis=1) % 2 == 1
    return result


def _chain(ground: np.ndarray, size: np.ndarray, overlap: float, most: int) -> Optional[_Cut]:
    """Frames laid one after another along the site, each turned as it shows the most; None for more than ``most``."""
    inner = size - overlap  # what a frame need not share with the next
    places, cell = _points_of(ground, float(inner.min()) / _FINE)
    inner = inner - 3 * cell  # a place stands for what is about it
    if most < 1 or (inner <= 0).any():
        return None
    order = _along(places, cell)
    left = np.ones(len(places), bool)
    centre: List[np.ndarray] = []
    turn: List[float] = []
    while left.any():
        if len(centre) == most:
            return None
        at, angle, shown = _next_frame(places, order, left, inner)
        left &= ~shown
        centre.append(at)
        turn.append(angle)
    way = 1 if centre[0][0] <= centre[-1][0] else -1  # from the west
    number = np.arange(len(centre))
    return _Cut(np.array(centre)[::way], np.array(turn)[::way], np.zeros(len(centre), np.int64), number)


def _points_of(ground: np.ndarray, apart: float) -> Tuple[np.ndarray, float]:
    """Middles of the cells of a grid that hold ground (m, 2), and half a cell's diagonal (m)."""
    low = ground.min(axis=(0, 1))
    found = []
    long = np.sqrt(((ground - np.roll(ground, 1, axis=1)) ** 2).sum(axis=2)).max(axis=1)
    pieces = np.clip(np.ceil(2 * long / apart), 1, 200).astype(np.int64)
    for many in np.unique(pieces).tolist():
        a, b = np.array([(i, j) for i in range(many + 1) for j in range(many + 1 - i)]).T / many
        some = ground[pieces == many]
        found.append(some[:, :1] * (1 - a - b)[:, None] + some[:, 1:2] * a[:, None] + some[:, 2:] * b[:, None])
    cells = np.unique(np.floor((np.concatenate([f.reshape(-1, 2) for f in found]) - low) / apart), axis=0)
    return low + (cells + 0.5) * apart, apart * float(np.sqrt(0.5))


def _along(places: np.ndarray, cell: float) -> np.ndarray:
    """How far along the site each place (m,) lies: metres from one end, over ground; parts of it one after another."""
    apart = cell * np.sqrt(2.0)
    key = np.rint((places - places.min(axis=0)) / apart).astype(np.int64)
    number = {tuple(k): i for i, k in enumerate(key.tolist())}
    pairs = [
        (i, number[x + dx, y + dy], float(np.hypot(dx, dy)) * apart)
        for i, (x, y) in enumerate(key.tolist())
        for dx, dy in ((1, 0), (0, 1), (1, 1), (1, -1))
        if (x + dx, y + dy) in number
    ]
    a, b, long = (np.array(column) for column in zip(*pairs)) if pairs else (np.empty(0, int),) * 3
    graph = coo_matrix((long, (a, b)), shape=(len(places), len(places))).tocsr()
    _, part = connected_components(graph, directed=False)
    result, behind = np.zeros(len(places)), 0.0
    for one in np.unique(part).tolist():
        own = np.flatnonzero(part == one)
        reach = dijkstra(graph, directed=False, indices=int(own[0]))[own]
        reach = dijkstra(graph, directed=False, indices=int(own[np.argmax(reach)]))[own]
        result[own] = behind + reach
        behind += float(reach.max()) + apart
    return result


def _next_frame(
    places: np.ndarray, order: np.ndarray, left: np.ndarray, inner: np.ndarray
) -> Tuple[np.ndarray, float, np.ndarray]:
    """Centre and turn of the frame about the first place left that leaves what comes next farthest along, and what it
    shows; the one that shows the most of as many."""
    first = int(np.flatnonzero(left)[np.argmin(order[left])])
    near = np.flatnonzero(left & (np.hypot(*(places - places[first]).T) <= np.hypot(*inner)))
    best: Tuple[float, int, float] = (-inf, -1, -inf)
    result = (places[first], 0.0, np.zeros(len(places), bool))
    share = np.linspace(0.02, 0.98, _PLACES) - 0.5
    for angle in _sorted_turns():
        axes = _axes(float(angle))
        off = (places[near] - places[first]) @ axes
        inside = [np.abs(off[:, k, None] - share * inner[k]) <= inner[k] / 2 for k in (0, 1)]
        shown = inside[0][:, :, None] & inside[1][:, None, :]
        ahead = np.where(shown, inf, order[near][:, None, None]).min(axis=0)
        counts = shown.sum(axis=0)
        # What is in the middle of the frame comes last in the choice: places beside its rim are cut.
        rim = -np.abs((shown * off[:, 1, None, None]).sum(axis=0) / np.maximum(counts, 1) - share[None, :] * inner[1])
        i, j = np.unravel_index(np.lexsort((rim.ravel(), counts.ravel(), ahead.ravel()))[-1], counts.shape)
        rank = (float(ahead[i, j]), int(counts[i, j]), float(rim[i, j]))
        if rank > best:
            best = rank
            mask = np.zeros(len(places), bool)
            mask[near[shown[:, i, j]]] = True
            result = (places[first] + axes @ (np.array([share[i], share[j]]) * inner), float(angle), mask)
    return result


def _sorted_turns() -> np.ndarray:
    turns = np.arange(-90 + _OWN_TURNS, 90 + _OWN_TURNS, _OWN_TURNS)
    return turns[np.argsort(np.abs(turns), kind="stable")]


def grid_spacing(scale: float, unit_metres: float, apart: float = 0.1) -> Tuple[float, int]:
    """Spacing of grid marks in units of ``unit_metres``, and the decimals to write it with.

    The largest of 1, 2, 5 × 10ⁿ that is at most ``apart`` metres on the paper at 1 : ``scale``.
    """
    most = scale * apart / unit_metres
    power = int(np.floor(np.log10(most)))
    digit = max(digit for digit in (1, 2, 5) if digit * 10.0**power <= most * (1 + 1e-9))
    return digit * 10.0**power, max(0, -power)
