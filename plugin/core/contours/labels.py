"""Heights written along contours.

Figures stand on the line with their tops towards the higher ground, so that they read uphill: common
practice on topographic sheets, no source. Contours have the higher ground on their left, hence text
that runs the way the line runs does so by itself.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Optional, Tuple

import numpy as np
from scipy.spatial import cKDTree

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..progress import Progress, silent
from .lines import Contours

#: Width of a figure as a share of its height: that of the common sans-serif typefaces.
FIGURE_WIDTH = 0.6
#: Free space around a label as a share of the height of its figures.
MARGIN = 0.5
#: Places tried for a label: this many to either side of the even spacing, within a third of it.
TRIES = 6
#: The line under a label may leave the straight line by this share of the figures' height.
MOST_BEND = 0.6
#: Bends that differ by less than this share of the figures' height are alike. A step more bend is as
#: bad as another contour under the label for the length of the figures' height.
BEND_STEP = 0.05
#: A line shorter than this many labels gets none.
SHORTEST_LINE = 3.0
MOST_DECIMALS = 4

BAD_LABELS = Text(
    "contours.labels",
    QT_TRANSLATE_NOOP(
        "core", "Contour labels {height} m high every {spacing} m cannot be placed; give two numbers of metres above 0."
    ),
)


@dataclass(frozen=True)
class Labels:
    """k labels, in the order of lines and along them.

    ``xy``: (k, 2) float64 centre of each, metres from ``origin``. ``rotation``: (k,) degrees
    counter-clockwise from east, -180 to 180. ``text``: k strings. ``line``: (k,) int64 number of the
    contour. ``along``: (k,) metres from the line's start to the centre. ``width``: (k,) and ``height``:
    metres on the ground, of the text without margin.
    """

    xy: np.ndarray
    rotation: np.ndarray
    text: Tuple[str, ...]
    line: np.ndarray
    along: np.ndarray
    width: np.ndarray
    height: float
    origin: np.ndarray

    def __len__(self) -> int:
        return len(self.line)


@dataclass(frozen=True)
class _Places:
    """s wanted labels with t places each, the best first.

    ``line``, ``width``: (s,). ``along``, ``x``, ``y``, ``rotation`` (radians), ``fit``: (s, t); ``fit`` is the
    bend and the other lines under the label in steps, inf where the label does not go.
    """

    line: np.ndarray
    width: np.ndarray
    along: np.ndarray
    x: np.ndarray
    y: np.ndarray
    rotation: np.ndarray
    fit: np.ndarray


def place_labels(
    contours: Contours,
    spacing: float,
    height: float,
    decimals: Optional[int] = None,
    only_index: bool = True,
    progress: Progress = silent,
) -> Labels:
    """Labels for ``contours`` about every ``spacing`` metres, with figures ``height`` metres high on the ground.

    Text is the level in the unit of the contours with ``decimals`` decimals; None for as few as write the
    labelled levels exactly. Each label goes where, within a third of the spacing, its line is straightest and
    fewest other lines run under it; where it would lie on another label or the line bends too much
    everywhere, there is none. A line shorter than three labels has none, one shorter than the spacing at
    most one.

    Raises ``SurveyError`` for a spacing or height that is not a finite number above 0; ``progress`` is
    called with stage ``"labels"``.
    """
    if not (math.isfinite(spacing) and spacing > 0 and math.isfinite(height) and height > 0):
        raise SurveyError(BAD_LABELS, spacing=spacing, height=height)
    progress(0.0, "labels")
    lines = np.flatnonzero(contours.index) if only_index else np.arange(len(contours))
    text = level_texts(contours.level_in_unit[lines], decimals)
    width = np.array([len(one) for one in text], dtype=np.float64) * (FIGURE_WIDTH * height)
    distance = _distances(contours)
    length = distance[contours.start[1:] - 1] - distance[contours.start[:-1]]
    number = np.maximum(np.floor(length[lines] / spacing), 1).astype(np.int64)
    number[length[lines] < SHORTEST_LINE * width] = 0
    slot = np.repeat(np.arange(len(lines)), number)
    if len(slot) == 0:
        none = np.empty(0)
        return Labels(np.empty((0, 2)), none, (), slot, none, none, float(height), contours.origin)
    places = _candidates(contours, distance, length, lines[slot], width[slot], number[slot], spacing, height)
    progress(0.5, "labels")
    chosen = _choose(places, height)
    kept = np.flatnonzero(chosen >= 0)
    at = (kept, chosen[kept])
    order = np.lexsort((places.along[at], places.line[kept]))
    kept, at = kept[order], (kept[order], chosen[kept][order])
    progress(1.0, "labels")
    return Labels(
        xy=np.column_stack([places.x[at], places.y[at]]),
        rotation=np.degrees(places.rotation[at]),
        text=tuple(text[i] for i in slot[kept].tolist()),
        line=places.line[kept],
        along=places.along[at],
        width=places.width[kept],
        height=float(height),
        origin=contours.origin,
    )


def level_texts(levels: np.ndarray, decimals: Optional[int] = None) -> Tuple[str, ...]:
    """Levels as text, all with the same number of decimals: ``decimals``, or as few as write them exactly."""
    if decimals is None:
        tolerance = 1e-6
        exact = (d for d in range(MOST_DECIMALS) if np.all(np.abs(levels - np.round(levels, d)) < tolerance))
        decimals = next(exact, MOST_DECIMALS)
    # Adding 0 turns -0.0 into 0.0.
    return tuple(f"{level:.{decimals}f}" for level in (np.round(levels, decimals) + 0.0).tolist())


def _distances(contours: Contours) -> np.ndarray:
    """Metres along all lines, one after the other, at each point, (p,); rising from line to line."""
    step = np.hypot(*np.diff(contours.xy, axis=0, prepend=contours.xy[:1]).T)
    step[contours.start[:-1]] = 0.0
    return np.cumsum(step)


def _candidates(
    contours: Contours,
    distance: np.ndarray,
    length: np.ndarray,
    line: np.ndarray,
    width: np.ndarray,
    number: np.ndarray,
    spacing: float,
    height: float,
) -> _Places:
    """Places for each wanted label, evenly spaced on its ``line`` (s,), with ``number`` (s,) of them on it."""
    first = np.concatenate([[True], line[1:] != line[:-1]])
    begin = np.flatnonzero(first)
    turn = np.arange(len(line)) - begin[np.cumsum(first) - 1]
    every = length[line] / number
    step = np.minimum(every, spacing) / (3 * TRIES)
    # From the even spacing outwards, so that of places that are alike the evenest is the first.
    tries = np.array(sorted(range(-TRIES, TRIES + 1), key=abs))
    centre = ((turn + 0.5) * every)[:, None] + tries * step[:, None]
    half = (0.5 * width + MARGIN * height)[:, None]
    inside = (centre >= half) & (centre <= length[line][:, None] - half)
    origin = distance[contours.start[line]][:, None]
    # Along the text: both ends, the middle, and halfway between.
    shares = np.array([-1.0, -0.5, 0.0, 0.5, 1.0])
    limit = length[line][:, None, None]
    along = np.clip(centre[:, :, None] + half[:, :, None] * shares, 0.0, limit) + origin[:, :, None]
    x = np.interp(along, distance, contours.xy[:, 0])
    y = np.interp(along, distance, contours.xy[:, 1])
    dx, dy = x[..., 4] - x[..., 0], y[..., 4] - y[..., 0]
    chord = np.hypot(dx, dy)
    off = np.abs(dx[..., None] * (y - y[..., :1]) - dy[..., None] * (x - x[..., :1]))
    bend = off.max(axis=2) / np.maximum(chord, 1e-12)
    straight = inside & (bend <= MOST_BEND * height) & (chord >= 0.9 * 2 * half)
    # The label's centre is where the line is on average under it.
    fit = np.full(centre.shape, np.inf)
    radius = np.broadcast_to(half, centre.shape)[straight]
    middle = np.column_stack([x[..., 2][straight], y[..., 2][straight]])
    fit[straight] = np.floor(bend[straight] / (BEND_STEP * height)) + _crowd(contours, distance, middle, radius, height)
    order = np.argsort(fit, axis=1, kind="stable")
    middle_x, middle_y = x[..., 1:4].mean(axis=2), y[..., 1:4].mean(axis=2)
    arrays = (centre, middle_x, middle_y, np.arctan2(dy, dx), fit)
    return _Places(line, width, *(np.take_along_axis(array, order, axis=1) for array in arrays))


def _crowd(
    contours: Contours, distance: np.ndarray, middle: np.ndarray, radius: np.ndarray, height: float
) -> np.ndarray:
    """How many figure heights of other lines run within ``radius`` (s,) of places on lines ``middle`` (s, 2), about."""
    begin, end = distance[contours.start[:-1]], distance[contours.start[1:] - 1]
    number = np.floor((end - begin) / height + 0.5).astype(np.int64)
    first = np.cumsum(number) - number
    at = np.repeat(begin, number) + (np.arange(int(number.sum())) - np.repeat(first, number) + 0.5) * height
    xy = np.column_stack([np.interp(at, distance, contours.xy[:, i]) for i in (0, 1)])
    # Splitting at middles is quicker than at medians, and as good for points spread as evenly as these.
    tree = cKDTree(xy, balanced_tree=False, compact_nodes=False)
    # What the label's own line counts where it is straight.
    own = 2.0 * radius / height + 1.0
    return np.maximum(np.floor(tree.query_ball_point(middle, radius, return_length=True) - own), 0.0)


# ------------------------------------------------------------------------------------ overlapping


def _choose(places: _Places, height: float) -> np.ndarray:
    """Which of its places each label takes, (s,), -1 for none, so that no two labels overlap.

    Everyone asks for the best place left; where two asked for overlap the straighter goes first. Who
    loses to a label that stays asks for the next.
    """
    wanted = len(places.line)
    chosen = np.full(wanted, -1, dtype=np.int64)
    turn = np.zeros(wanted, dtype=np.int64)
    asking = np.arange(wanted)
    most = places.fit.shape[1]
    while True:
        asking = asking[turn[asking] < most]
        asking = asking[np.isfinite(places.fit[asking, turn[asking]])]
        if len(asking) == 0:
            return chosen
        settled = np.flatnonzero(chosen >= 0)
        party = np.concatenate([settled, asking])
        take = np.concatenate([chosen[settled], turn[asking]])
        first, second = _overlaps(places, party, take, height)
        fit = places.fit[party, take]
        # Settled labels first, then by straightness, then by place, so that the order of lines does not matter.
        rank = np.empty(len(party), dtype=np.int64)
        by = (places.y[party, take], places.x[party, take], fit, np.arange(len(party)) >= len(settled))
        rank[np.lexsort(by)] = np.arange(len(party))
        stays = _greedy(len(party), first, second, rank)[len(settled) :]
        chosen[asking[stays]] = turn[asking[stays]]
        asking = asking[~stays]
        turn[asking] += 1


def _greedy(count: int, first: np.ndarray, second: np.ndarray, rank: np.ndarray) -> np.ndarray:
    """Who stays, (count,) bool, when everyone in the order of ``rank`` stays unless one that stays overlaps."""
    stays = np.zeros(count, dtype=bool)
    undecided = np.ones(count, dtype=bool)
    winner = np.where(rank[first] < rank[second], first, second)
    loser = first + second - winner
    while np.any(undecided):
        waits = np.zeros(count, dtype=bool)
        waits[loser[undecided[winner]]] = True
        now = undecided & ~waits
        stays |= now
        undecided &= ~now
        undecided[loser[now[winner]]] = False
        open_pairs = undecided[winner] & undecided[loser]
        winner, loser = winner[open_pairs], loser[open_pairs]
    return stays


def _overlaps(places: _Places, party: np.ndarray, take: np.ndarray, height: float) -> Tuple[np.ndarray, np.ndarray]:
    """Pairs of numbers in ``party`` whose labels, margins included, overlap."""
    xy = np.column_stack([places.x[party, take], places.y[party, take]])
    half_width = 0.5 * places.width[party] + MARGIN * height
    half_height = (0.5 + MARGIN) * height
    reach = 2.0 * np.hypot(half_width.max(initial=0.0), half_height)
    pairs = cKDTree(xy).query_pairs(reach, output_type="ndarray")
    first, second = pairs[:, 0], pairs[:, 1]
    rotation = places.rotation[party, take]
    apart = np.zeros(len(pairs), dtype=bool)
    # Two rectangles are apart if and only if a line along a side of one of them parts them.
    for axis, one, other in ((first, first, second), (second, second, first)):
        cos, sin = np.cos(rotation[axis]), np.sin(rotation[axis])
        gap = xy[other] - xy[one]
        turned = rotation[other] - rotation[one]
        wide = half_width[other] * np.abs(np.cos(turned)) + half_height * np.abs(np.sin(turned))
        high = half_width[other] * np.abs(np.sin(turned)) + half_height * np.abs(np.cos(turned))
        apart |= np.abs(gap[:, 0] * cos + gap[:, 1] * sin) > half_width[one] + wide
        apart |= np.abs(gap[:, 1] * cos - gap[:, 0] * sin) > half_height + high
    return first[~apart], second[~apart]
