"""Spikes: points far off what their neighbours say, measured by the scatter of the survey itself.

A point away from lines is compared with the plane through its neighbours (least squares). The scatter of a
survey is 1.4826 times the median of the absolute residuals, divided by what the plane's own doubt makes of
them (the usual estimate for a normal distribution, robust against up to half of bad ones; Rousseeuw and Croux
1993). Near a candidate the neighbours' own residuals are taken into account, so rough ground raises no alarm,
after leaving out the one that spoils the fit most, so that a spike's neighbours are not taken for spikes
and of two spikes side by side at least one is named. A point on a nearly straight breakline is compared with
its two neighbours on that line, and is a spike only if the line is bent back there: a change of grade is none.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Mapping, Tuple

import numpy as np

from ..linework.constraints import LineKind
from ..messages import QT_TRANSLATE_NOOP, Text
from .findings import Facts, Finding, FindingKind, FindingOptions

SPIKE = Text(
    "findings.spike",
    QT_TRANSLATE_NOOP(
        "core",
        "Spike at E {easting:.3f} N {northing:.3f}: {value:+.3f} m off the plane of its {count:.0f} neighbours, "
        "{ratio:.0f} times the scatter there.",
    ),
)
SPIKE_ON_LINE = Text(
    "findings.spike_on_line",
    QT_TRANSLATE_NOOP(
        "core",
        "Spike on a line at E {easting:.3f} N {northing:.3f}: {value:+.3f} m off the straight between its "
        "neighbours on the line, {ratio:.0f} times the scatter of lines.",
    ),
)

#: No survey scatters less than this (metres): heights are given to the millimetre.
_LEAST_SCATTER = 0.001
_FEWEST_NEIGHBOURS = 4
_STRAIGHT = np.cos(np.radians(30.0))


def find_spikes(facts: Facts, options: FindingOptions) -> List[Finding]:
    """A finding for each point off its neighbours by ``spike_ratio`` times the scatter and by ``spike_height``."""
    on_line = np.zeros(len(facts.tin.vertices), bool)
    marked = _on_breakline(facts)
    on_line[facts.start[marked]] = True
    on_line[facts.end[marked]] = True
    return _in_the_open(facts, ~on_line, options) + _on_lines(facts, options)


def _on_breakline(facts: Facts) -> np.ndarray:
    """Mask of half-edges of breaklines. (A boundary goes up and down with the ground, so it is not one.)"""
    mask: np.ndarray = facts.kind & int(LineKind.BREAKLINE) != 0
    return mask


# --- points away from lines -----------------------------------------------------------------------


@dataclass(frozen=True)
class _Planes:
    """Planes through the neighbours of v points, in coordinates from each point; all (v,).

    ``count`` neighbours (weights summed), ``offset``: height of the point over the plane, ``slope_x``,
    ``slope_y``; ``inverse``: the six different entries xx, xy, x, yy, y, 1 of the inverse normal matrix.
    """

    count: np.ndarray
    offset: np.ndarray
    slope_x: np.ndarray
    slope_y: np.ndarray
    inverse: Tuple[np.ndarray, ...]

    @property
    def doubt(self) -> np.ndarray:
        """Variance factor of the plane's height at the point."""
        return self.inverse[5]

    def over(self, of: np.ndarray, x: np.ndarray, y: np.ndarray, z: np.ndarray) -> np.ndarray:
        """Heights (k,) of neighbours over the plane of the point they surround."""
        height: np.ndarray = z + self.offset[of] - self.slope_x[of] * x - self.slope_y[of] * y
        return height

    def leverage(self, of: np.ndarray, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        """How much each neighbour pulls the plane to itself (k,), 0..1."""
        xx, xy, x1, yy, y1, one = (entry[of] for entry in self.inverse)
        pull: np.ndarray = xx * x * x + yy * y * y + one + 2 * (xy * x * y + x1 * x + y1 * y)
        return pull


def _fit(of: np.ndarray, x: np.ndarray, y: np.ndarray, z: np.ndarray, weight: np.ndarray, size: int) -> _Planes:
    """Planes by least squares; x, y, z (k,): neighbours, from the point ``of`` (k,) they surround."""

    def total(values: np.ndarray) -> np.ndarray:
        return np.bincount(of, weights=values, minlength=size)

    wx, wy = weight * x, weight * y
    n, sx, sy, sz = total(weight), total(wx), total(wy), total(weight * z)
    sxx, sxy, syy = total(wx * x), total(wx * y), total(wy * y)
    sxz, syz = total(wx * z), total(wy * z)
    cxx, cxy, cx = syy * n - sy * sy, sx * sy - sxy * n, sxy * sy - sx * syy
    cyy, cy, c = sxx * n - sx * sx, sx * sxy - sxx * sy, sxx * syy - sxy * sxy
    determinant = sx * cx + sy * cy + n * c
    fit = (n >= _FEWEST_NEIGHBOURS) & (determinant > 1e-6 * n * (sxx + syy) ** 2)  # neighbours not in one line
    inverse = tuple(np.divide(entry, determinant, out=np.full(size, np.nan), where=fit)
                    for entry in (cxx, cxy, cx, cyy, cy, c))  # fmt: skip
    ixx, ixy, ix, iyy, iy, i1 = inverse
    return _Planes(
        count=n,
        offset=-(ix * sxz + iy * syz + i1 * sz),
        slope_x=ixx * sxz + ixy * syz + ix * sz,
        slope_y=ixy * sxz + iyy * syz + iy * sz,
        inverse=inverse,
    )


def _in_the_open(facts: Facts, which: np.ndarray, options: FindingOptions) -> List[Finding]:
    of, to = _neighbours(facts, which)
    vertices = facts.tin.vertices
    x, y, z = (vertices[to] - vertices[of]).T
    planes = _fit(of, x, y, z, np.ones(len(of)), len(vertices))
    with np.errstate(invalid="ignore"):
        scatter = _scatter(planes.offset / np.sqrt(1 + planes.doubt))
        candidate = np.abs(planes.offset) > np.fmax(3 * scatter, options.spike_height / 2)
    chosen = np.flatnonzero(candidate)
    if len(chosen) == 0:
        return []
    number = np.full(len(vertices), -1, np.int64)
    number[chosen] = np.arange(len(chosen))
    near = number[of] >= 0
    of, to = of[near], to[near]
    offset, ratio, count = _off_their_neighbours(number[of], (vertices[to] - vertices[of]).T, len(chosen), scatter)
    with np.errstate(invalid="ignore"):
        spikes = np.flatnonzero((np.abs(offset) > options.spike_height) & (ratio > options.spike_ratio))
    values = {"count": count[spikes], "ratio": ratio[spikes]}
    return _findings(facts, chosen[spikes], offset[spikes], SPIKE, values)


def _off_their_neighbours(
    of: np.ndarray, xyz: np.ndarray, size: int, scatter: float
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Height over the plane, the same in units of its doubt, and neighbours used; (size,) each.

    Where four or more remain, that neighbour is left out without which the others and the point itself fit best
    together: so what a wrong neighbour does is not laid on the point.
    """
    x, y, z = xyz
    weight = np.ones(len(of))
    own, nothing = np.arange(size), np.zeros(size)
    together = _fit(
        np.append(of, own), np.append(x, nothing), np.append(y, nothing), np.append(z, nothing),
        np.ones(len(of) + size), size,
    )  # fmt: skip
    # Leaving a neighbour out takes this much from the sum of squares (Cook and Weisberg 1982, from memory).
    gain = together.over(of, x, y, z) ** 2 / np.maximum(1 - together.leverage(of, x, y), 1e-6)
    order = np.lexsort((gain, of))
    worst = order[np.append(of[order][1:] != of[order][:-1], True)]
    weight[worst[together.count[of[worst]] > _FEWEST_NEIGHBOURS + 1]] = 0.0
    planes = _fit(of, x, y, z, weight, size)
    off = planes.over(of, x, y, z)
    squares = np.bincount(of, weights=weight * off * off, minlength=size)
    # Three of the squares are used up by the plane; the scatter of the survey stands in for them.
    variance = np.fmax((squares + 3 * scatter**2) / planes.count, scatter**2)
    with np.errstate(invalid="ignore"):
        ratio = np.abs(planes.offset) / np.sqrt(variance * (1 + planes.doubt))
    return planes.offset, ratio, planes.count


def _neighbours(facts: Facts, which: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Pairs (vertex, neighbour) for the vertices of mask ``which``."""
    rim = facts.beyond < 0
    of = np.concatenate([facts.start, facts.end[rim]])
    to = np.concatenate([facts.end, facts.start[rim]])
    return of[which[of]], to[which[of]]


def _scatter(residual: np.ndarray) -> float:
    known = np.abs(residual[np.isfinite(residual)])
    return max(_LEAST_SCATTER, 1.4826 * float(np.median(known))) if len(known) else _LEAST_SCATTER


# --- points on lines ------------------------------------------------------------------------------


@dataclass(frozen=True)
class _Bends:
    """Vertices of breaklines with one neighbour ``before`` and one ``after`` on the line; all (k,).

    ``share``: weight of ``after`` in the straight between the two; ``offset``: height over that straight;
    ``straight``: the line goes nearly straight on in plan.
    """

    vertex: np.ndarray
    before: np.ndarray
    after: np.ndarray
    share: np.ndarray
    offset: np.ndarray
    straight: np.ndarray


def _on_lines(facts: Facts, options: FindingOptions) -> List[Finding]:
    """Spikes among the vertices between exactly two edges of breaklines that go nearly straight on."""
    bends = _bends(facts)
    size = np.abs(bends.offset) / np.sqrt(1 + bends.share**2 + (1 - bends.share) ** 2)
    scatter = _scatter(np.where(bends.straight, size, np.nan))
    spike = bends.straight & (np.abs(bends.offset) > options.spike_height) & (size > options.spike_ratio * scatter)
    chosen = np.flatnonzero(spike)
    chosen = chosen[_is_no_kink(bends, chosen, len(facts.tin.vertices))]
    ratio = size[chosen] / scatter
    return _findings(facts, bends.vertex[chosen], bends.offset[chosen], SPIKE_ON_LINE, {"ratio": ratio})


def _bends(facts: Facts) -> _Bends:
    edge = facts.once & _on_breakline(facts)
    of = np.concatenate([facts.start[edge], facts.end[edge]])
    to = np.concatenate([facts.end[edge], facts.start[edge]])
    order = np.argsort(of, kind="stable")
    of, to = of[order], to[order]
    first = np.flatnonzero(np.append(True, of[1:] != of[:-1])[: len(of)])
    first = first[np.diff(np.append(first, len(of))) == 2]
    vertex, before, after = of[first], to[first], to[first + 1]
    v = facts.tin.vertices
    back, ahead = v[before] - v[vertex], v[after] - v[vertex]
    lengths = np.hypot(back[:, 0], back[:, 1]), np.hypot(ahead[:, 0], ahead[:, 1])
    straight = np.sum(back[:, :2] * ahead[:, :2], axis=1) < -_STRAIGHT * lengths[0] * lengths[1]
    share = lengths[0] / (lengths[0] + lengths[1])
    offset = -((1 - share) * back[:, 2] + share * ahead[:, 2])
    return _Bends(vertex, before, after, share, offset, straight)


def _is_no_kink(bends: _Bends, chosen: np.ndarray, vertices: int) -> np.ndarray:
    """Mask of the bends ``chosen`` (c,) that their neighbours on the line take for spikes.

    A wrong height bends the line the other way at each neighbour, by its weight in the neighbour's straight; where
    the ground changes its grade the neighbours are not bent. Half of that counts as bent.
    """
    number = np.full(vertices, -1, np.int64)
    number[bends.vertex] = np.arange(len(bends.vertex))
    known = np.zeros(len(chosen), bool)
    mask = np.ones(len(chosen), bool)
    for neighbour in (bends.before[chosen], bends.after[chosen]):
        at = number[neighbour]
        has = at >= 0
        weight = np.where(bends.after[at] == bends.vertex[chosen], bends.share[at], 1 - bends.share[at])
        bent = -np.sign(bends.offset[chosen]) * bends.offset[at] >= 0.5 * weight * np.abs(bends.offset[chosen])
        mask &= bent | ~has
        known |= has
    result: np.ndarray = mask & known
    return result


# --- both -----------------------------------------------------------------------------------------


def _findings(
    facts: Facts, vertex: np.ndarray, offset: np.ndarray, text: Text, values: Mapping[str, np.ndarray]
) -> List[Finding]:
    """A finding for each ``vertex``; ``values`` of the text, all (k,)."""
    if len(vertex) == 0:
        return []
    rows = [dict(zip(values, row)) for row in zip(*(each.tolist() for each in values.values()))]
    return [
        facts.finding(FindingKind.SPIKE, facts.tin.vertices[v], float(off), "m", np.array([v]), around, text, **row)
        for v, off, around, row in zip(vertex, offset, facts.triangles_around(vertex), rows)
    ]
