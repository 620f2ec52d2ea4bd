"""Candidates of several passes chained into lines: the same side up, like sizes, a smooth course."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Tuple

import numpy as np

from .candidates import STEP, Candidates, Nearest
from .passes import CHUNK

#: Neighbours looked at for each candidate, and kept to its left and to its right.
NEIGHBOURS, KEPT = 12, 3
#: Longest link, metres.
LONGEST_LINK = 14.0
#: Least sine of the angle between a pass and the line.
LEAST_SINE = 0.3
#: Sharpest turn of a chain (cosine), the curvature (1/m) that is one standard deviation, and the freedom of turns
#: (Student's distribution: corners are rare, not impossible).
LEAST_COSINE, CURVATURE, FREEDOM = 0.2, 0.04, 3.0
#: Rounds in which links hear how well those after them go on.
ROUNDS = 9
#: What comes one usual length of link later counts so much (share).
FADE = 0.9
#: Decades that a link costs for each of its usual lengths it is longer than usual.
SKIP_COST = 1.2


@dataclass(frozen=True)
class Links:
    """Directed links between candidates, sorted by where they start, those to the right of the pass first.

    ``a, b``: from and to; ``ux, uy``: unit direction; ``long``: metres; ``left``: to the left of the pass of ``a``;
    ``back``: the number of the same link the other way.
    """

    a: np.ndarray
    b: np.ndarray
    ux: np.ndarray
    uy: np.ndarray
    long: np.ndarray
    left: np.ndarray
    back: np.ndarray


def density(found: Candidates, walked: float) -> np.ndarray:
    """How many candidates of the same kind that stand out at least as much there are for each metre walked (m,)."""
    result = np.empty(len(found))
    for kind in np.unique(found.kind):
        same = np.flatnonzero(found.kind == kind)
        order = np.argsort(-found.t[same], kind="stable")
        rank = np.empty(len(same))
        rank[order] = np.arange(1, len(same) + 1)
        share = 0.5 if kind == STEP else 1.0  # a step the other way does not go on with this one
        result[same] = share * rank / walked
    return result


def make_links(found: Candidates, nearest: Nearest) -> Links:
    """All links between candidates that could follow each other along a line."""
    side = found.side
    parts = [
        _pairs_from(found, nearest, side, np.arange(a, min(a + CHUNK // NEIGHBOURS, len(found))))
        for a in range(0, len(found), CHUNK // NEIGHBOURS)
    ]
    a, b = (np.concatenate(column) for column in zip(*parts))
    key = np.sort(np.minimum(a, b) * len(found) + np.maximum(a, b))
    key = key[np.append(True, np.diff(key) > 0)] if len(key) else key
    return _directed(found, key // len(found), key % len(found))


def _pairs_from(
    found: Candidates, nearest: Nearest, side: np.ndarray, some: np.ndarray
) -> Tuple[np.ndarray, np.ndarray]:
    """Pairs of the candidates ``some`` with compatible ones."""
    away = nearest.away[some, 1 : NEIGHBOURS + 1]
    row, column = np.nonzero(away <= LONGEST_LINK)
    a, b = some[row], nearest.number[some[row], column + 1]
    long = away[row, column]
    good = long > 0.05
    a, b, long = a[good], b[good], long[good]
    vx, vy = (found.x[b] - found.x[a]) / long, (found.y[b] - found.y[a]) / long
    side_a, side_b = _cross(found, a, vx, vy), _cross(found, b, vx, vy)
    good = (np.abs(side_a) > LEAST_SINE) & (np.abs(side_b) > LEAST_SINE) & alike(found, a, b)
    good &= side_a * side[a] * side_b * side[b] >= 0
    a, b, left = a[good], b[good], side_a[good] > 0
    # The nearest few on either side of the pass; they come by a and by distance.
    start = np.searchsorted(a, a)
    lefts = np.cumsum(left)
    before = np.append(0, lefts)[start]
    place = np.where(left, lefts - before - 1, np.arange(len(a)) - start - (lefts - before))
    return a[place < KEPT], b[place < KEPT]


def _cross(found: Candidates, a: np.ndarray, vx: np.ndarray, vy: np.ndarray) -> np.ndarray:
    return found.ex[a] * vy - found.ey[a] * vx


def alike(found: Candidates, a: np.ndarray, b: np.ndarray) -> np.ndarray:
    """Mask of pairs whose sizes could be those of one line."""
    size_a, size_b = np.abs(found.size[a]), np.abs(found.size[b])
    doubt = np.hypot(size_a / found.t[a], size_b / found.t[b])
    return np.abs(size_a - size_b) <= 2.5 * doubt + 0.4 * np.maximum(size_a, size_b)


def _directed(found: Candidates, low: np.ndarray, high: np.ndarray) -> Links:
    a, b = np.append(low, high), np.append(high, low)
    back = np.append(np.arange(len(low)) + len(low), np.arange(len(low)))
    dx, dy = found.x[b] - found.x[a], found.y[b] - found.y[a]
    long = np.hypot(dx, dy)
    ux, uy = dx / long, dy / long
    left = found.ex[a] * uy - found.ey[a] * ux > 0
    order = np.argsort(2 * a + left, kind="stable")
    place = np.empty(len(order), np.int64)
    place[order] = np.arange(len(order))
    return Links(a[order], b[order], ux[order], uy[order], long[order], left[order], place[back[order]])


@dataclass(frozen=True)
class Turns:
    """Ways through candidates, sorted by candidate and by the link they come in on.

    ``into, out``: (t,) links; ``cost``: (t,) of the turn, decades; ``by_link, by_middle``: where the ways of each link
    and of each candidate begin.
    """

    into: np.ndarray
    out: np.ndarray
    cost: np.ndarray
    by_link: np.ndarray
    by_middle: np.ndarray


def make_turns(found: Candidates, links: Links) -> Turns:
    """All ways from a link into another on the other side of the pass."""
    # In on one side of the pass, out on the other.
    start = np.searchsorted(2 * links.a + links.left, np.arange(2 * len(found) + 1))
    opposite = 2 * links.a + ~links.left
    first, degree = start[opposite], np.diff(start)[opposite]
    parts = [
        _turns_from(found, links, np.arange(a, min(a + CHUNK // KEPT, len(links.a))), first, degree)
        for a in range(0, len(links.a), CHUNK // KEPT)
    ]
    into, out, cost = (np.concatenate(column) for column in zip(*parts))
    return Turns(links.back[into], out, cost, _starts(into), _starts(links.a[into]))


def _turns_from(
    found: Candidates, links: Links, some: np.ndarray, first: np.ndarray, degree: np.ndarray
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Ways from the links ``some``, looked at backwards, into ``degree`` others from ``first`` on, and costs."""
    many = degree[some]
    into = np.repeat(some, many)
    out = np.arange(len(into)) + np.repeat(first[some] - np.cumsum(many) + many, many)
    ux, uy, vx, vy = links.ux[into], links.uy[into], links.ux[out], links.uy[out]
    cosine = -ux * vx - uy * vy
    good = cosine > LEAST_COSINE
    into, out = into[good], out[good]
    square = ((uy * vx - ux * vy)[good] / cosine[good]) ** 2
    near_in, near_out = 1 / links.long[into], 1 / links.long[out]
    var = (found.sigma[links.b[into]] * near_in) ** 2 + (found.sigma[links.b[out]] * near_out) ** 2
    var += (found.sigma[links.a[into]] * (near_in + near_out)) ** 2
    var += (CURVATURE / 2 * (links.long[into] + links.long[out])) ** 2
    return into, out, (FREEDOM + 1) / 2 * np.log10(1 + square / (FREEDOM * var))


def _starts(sorted_numbers: np.ndarray) -> np.ndarray:
    """Where each run of equal numbers begins."""
    if not len(sorted_numbers):
        return np.empty(0, np.int64)
    return np.flatnonzero(np.append(True, np.diff(sorted_numbers) != 0))


def _best(values: np.ndarray, starts: np.ndarray) -> np.ndarray:
    """The number of the first greatest value of each run."""
    if not len(starts):
        return np.empty(0, np.int64)
    most = np.maximum.reduceat(values, starts)
    run = np.repeat(np.arange(len(starts)), np.diff(np.append(starts, len(values))))
    equal = np.flatnonzero(values == most[run])
    return equal[_starts(run[equal])]


def chain(found: Candidates, nearest: Nearest, walked: float) -> List[np.ndarray]:
    """Lists of candidates that follow each other along a line, two or more."""
    if len(found) < 3:
        return []
    links = make_links(found, nearest)
    if not len(links.a):
        return []
    turns = make_turns(found, links)
    gain = np.clip(-np.log10(density(found, walked)), 0.3, 2.0)
    value = _values(links, gain, turns)
    kept = _mutual(len(found), links, value, turns)
    return _paths(len(found), links.a[kept], links.b[kept])


def _values(links: Links, gain: np.ndarray, turns: Turns) -> np.ndarray:
    """What each directed link and the best chain after it are worth, in decades."""
    lengths = _usual_lengths(len(gain), links)
    own = gain[links.b] - SKIP_COST * np.minimum(lengths - 1, 3.0)
    fade = FADE ** np.minimum(lengths, 4.0)
    value: np.ndarray = own.copy()
    if not len(turns.into):
        return value
    into = turns.into[turns.by_link]
    worth = np.empty(len(turns.out))
    for _ in range(ROUNDS):
        np.subtract(np.take(value, turns.out, out=worth), turns.cost, out=worth)
        after = np.maximum.reduceat(worth, turns.by_link)
        value = own.copy()
        value[into] += fade[into] * np.maximum(after, 0)
    return value


def _usual_lengths(m: int, links: Links) -> np.ndarray:
    """How many usual lengths long each directed link is: by the shortest link on the same side of its ends."""
    key = 2 * links.a + links.left
    shortest = np.full(2 * m, np.inf)
    np.minimum.at(shortest, key, links.long)
    usual = np.maximum(shortest[key], shortest[key[links.back]])
    result: np.ndarray = links.long / usual
    return result


def _mutual(m: int, links: Links, value: np.ndarray, turns: Turns) -> np.ndarray:
    """Numbers of directed links (one of each pair) that both their ends choose."""
    # A candidate chooses one link to the left and one to the right, or a single one at the end of a line.
    through = value[links.back[turns.into]] + value[turns.out] - turns.cost
    best = _best(through, turns.by_middle)
    worth = np.full(m, -np.inf)
    worth[links.b[turns.into[best]]] = through[best]
    single = _best(value, _starts(links.a))
    single = single[value[single] > worth[links.a[single]]]
    worth[links.a[single]] = np.inf
    best = best[worth[links.b[turns.into[best]]] < np.inf]
    choice = np.zeros(len(links.a), bool)
    choice[links.back[turns.into[best]]] = True
    choice[turns.out[best]] = True
    choice[single] = True
    kept = np.flatnonzero(choice & choice[links.back])
    return kept[links.a[kept] < links.b[kept]]


def _paths(m: int, a: np.ndarray, b: np.ndarray) -> List[np.ndarray]:
    """Paths and rings (first repeated at the end) of links; no candidate has more than two."""
    start, end = np.append(a, b), np.append(b, a)
    order = np.argsort(start, kind="stable")
    start, end = start[order], end[order]
    second = np.append(False, start[1:] == start[:-1]) if len(start) else np.empty(0, bool)
    one, two = np.full(m, -1), np.full(m, -1)
    one[start[~second]], two[start[second]] = end[~second], end[second]
    tips = np.flatnonzero((one >= 0) & (two < 0)).tolist() + np.flatnonzero(two >= 0).tolist()
    this, that = one.tolist(), two.tolist()
    seen = bytearray(m)
    result = []
    for first in tips:
        if seen[first]:
            continue
        path, before, here = [first], first, this[first]
        seen[first] = 1
        while here >= 0 and here != first:
            path.append(here)
            seen[here] = 1
            onward = this[here] if this[here] != before else that[here]
            before, here = here, onward
        if here == first:
            path.append(first)
        result.append(np.array(path))
    return result
