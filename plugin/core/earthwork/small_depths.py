"""What noise does to volumes where depths are no larger than itself, beyond what follows the heights in proportion.

Noise of both surfaces is drawn many times, always from the same seed, and cut and fill are found from it as they are
from the surfaces themselves: offset and size of noise from the unchanged ground, the share of noise taken off. From
each result goes what follows the heights in proportion, whose doubt is known in closed form; the spread of the rest is
asked for.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Iterable, Optional, Sequence, Tuple

import numpy as np

from .changed import Changed, find_changed
from .noise_share import noise_share, part_of_fill, settled
from .overlay import Pieces
from .places import Places, joined, parts_by_depth
from .side import DRAWS, SEED, NoiseModel, Side, noise_draws
from .unchanged import Unchanged, calm, find_unchanged, next_offset, next_scale

MOST_PLACES = 60_000  # in which noise is drawn; of more, about so many are picked

_STEPS = 3
_APART = 3  # times that unchanged ground is parted from the rest
_WIDE = 4.0  # times the noise stated, where unchanged ground is looked for


@dataclass(frozen=True)
class Sampled:
    """Places picked one by one with the chance ``share``."""

    places: Places
    share: float


def sampled(
    pieces: Iterable[Pieces], model: NoiseModel, sides: Sequence[Side], scale: float = 1.0
) -> Optional[Sampled]:
    """Places that are not far deeper than noise, one in each triangle of ground; None where there are none.

    Which of the three middles of edges it is goes by chance; it stands for all three.
    """
    triangles = sum(len(side.tin.triangles) for side in model.sides)
    share = min(1.0, MOST_PLACES / max(1.0, 3.0 * triangles))
    draw = np.random.default_rng(SEED)
    parts = []
    for _, near in parts_by_depth(pieces, model, sides, scale):
        if len(near):
            count = len(near) // 3
            chosen = 3 * np.arange(count) + draw.integers(0, 3, count)
            if share < 1:
                chosen = chosen[draw.random(count) < share]
            parts.append(replace(near.take(chosen), area=3 * near.area[chosen]))
    return Sampled(joined(parts), share) if parts else None


@dataclass(frozen=True)
class Settling:
    """What unchanged ground says of two surveys, and what it would have said with other noise.

    ``unchanged``: what it says; ``model``: of the comparison. By draw: ``offsets`` (DRAWS,) in metres, less what
    follows the heights in proportion, which is ``weights`` (by column of noise); ``scales`` (DRAWS,) over what was
    stated; ``size``: of the noise that is drawn. ``calm``: what the mean depth of the unchanged ground takes of each
    vertex (by side), and of each patch of ground (last). ``changed``: ground that changed by no more than noise.
    """

    unchanged: Unchanged
    model: NoiseModel
    size: float
    scales: np.ndarray
    offsets: np.ndarray
    weights: np.ndarray
    calm: Tuple[np.ndarray, ...]
    changed: Optional[Changed] = None

    @property
    def offset_sigma(self) -> float:
        """Standard deviation (m) of the offset that was found; 0 of one that was given."""
        if self.unchanged.given:
            return 0.0
        variance = float(np.sum(self.calm[-1] ** 2))
        for side, weights in zip(self.model.sides, self.calm):
            variance += float(np.sum((weights * side.sigma) ** 2)) + side.drift.variance(weights)
        return float(np.sqrt(self.size**2 * variance + self.offsets.var(ddof=1) + self.unchanged.rim**2))


def settle(
    pieces: Iterable[Pieces], model: NoiseModel, compared: float, offset: Optional[float] = None
) -> Optional[Settling]:
    """What the unchanged ground among ``pieces`` says; None where there is too little of it.

    ``compared``: square metres of all that is compared; ``offset``: a known height of the later survey over the
    earlier (m).
    """
    found = sampled(pieces, model, model.sides, _WIDE)
    if found is None:
        return None
    places = replace(found.places, area=found.places.area / found.share)
    unchanged, changed = _apart(places, model, compared, offset)
    if unchanged is None:
        return None
    if changed is not None:
        places = _outside(places, changed)
    depth = places.depth - unchanged.offset
    sd = unchanged.scale * places.sd
    quiet = calm(depth, sd)
    weight = np.where(quiet, places.area, 0.0)
    noise = places.matrix(model)
    linear = noise.T @ (weight / weight.sum())
    base = settled(depth, sd) / unchanged.scale
    middles, sizes, plain = [], [], []
    for drawn in noise_draws(model):
        each = base[:, None] + noise @ drawn
        proportional = linear @ drawn if offset is None else np.zeros(drawn.shape[1])
        middle, size = proportional, np.ones(drawn.shape[1])
        for _ in range(_STEPS):
            if offset is None:
                middle = next_offset(places.area, each, places.sd, middle, size)
            size = next_scale(places.area, each - middle, places.sd, size)
        middles.append(middle)
        plain.append(proportional)
        sizes.append(size)
    scale = np.concatenate(sizes)
    drawn_size = unchanged.scale / float(scale.mean())
    beyond = drawn_size * (np.concatenate(middles) - np.concatenate(plain))
    weight = weight / weight.sum()
    ground = np.bincount(places.patch, weight * places.ground, model.patches)
    quiet_ground = (*(each.sums(weight) for each in places.by_side), ground)
    return Settling(
        unchanged, model, drawn_size, drawn_size * scale, beyond, linear if offset is None else 0 * linear,
        quiet_ground, changed,
    )  # fmt: skip


def _apart(
    places: Places, model: NoiseModel, compared: float, offset: Optional[float]
) -> Tuple[Optional[Unchanged], Optional[Changed]]:
    """The unchanged ground, judged without the ground that changed by no more than noise; each None for none."""
    unchanged, changed = find_unchanged(places, compared, offset), None
    for _ in range(_APART):
        if unchanged is None:
            break
        quiet = calm(places.depth - unchanged.offset, unchanged.scale * places.sd)
        quiet &= True if changed is None else ~changed.holds(places.xy)
        more = find_changed(places, unchanged.offset, unchanged.scale, model, quiet)
        if more is None:
            break
        fewer = find_unchanged(_outside(places, more), compared, offset)
        if fewer is None:  # hardly any ground is left: nobody knows which part changed
            break
        unchanged, changed = fewer, more
    if unchanged is None or changed is None:
        return unchanged, changed
    without = find_unchanged(_outside(places, changed.wider()), compared, offset)
    rim = 0.0 if without is None else abs(without.offset - unchanged.offset)
    return replace(unchanged, rim=rim), changed


def _outside(places: Places, changed: Changed) -> Places:
    return places.take(np.flatnonzero(~changed.holds(places.xy)))


def known_depth(places: Places, settling: Optional[Settling]) -> np.ndarray:
    """By how much (q,) ground changed that did so evenly (m), as the mean around says; nan elsewhere."""
    if settling is None or settling.changed is None:
        return np.full(len(places), np.nan)
    return settling.changed.depth_at(places.xy)


def small_depth_sds(
    groups: Sequence[Optional[Sampled]],
    model: NoiseModel,
    clear_fill: float,
    area: float,
    settling: Optional[Settling],
) -> np.ndarray:
    """Standard deviations (3,) of cut, fill and net by noise at small depths.

    ``groups``: places of the ground asked about, less the offset; ``clear_fill``: square metres of it that are fill
    beyond doubt, ``area`` of all of it. ``settling``: what was found from unchanged ground, None for nothing.
    """
    size, stated = (1.0, 1.0) if settling is None else (settling.size, settling.unchanged.scale)
    beyond = np.zeros(DRAWS) if settling is None else settling.offsets
    scales = np.ones(DRAWS) if settling is None else settling.scales
    moved = np.zeros(DRAWS)
    fill_area, picked, excess = clear_fill, 0.0, 0.0
    for found in groups:
        if found is None:
            continue
        places = found.places
        sd = stated * places.sd
        known = known_depth(places, settling)
        base, part = settled(places.depth, sd, known), part_of_fill(places.depth, sd, known)
        noise = places.matrix(model)
        fill_area += float(np.sum(places.area * part)) / found.share
        square = np.zeros(len(places))
        done = 0
        for drawn in noise_draws(model):
            own = slice(done, done + drawn.shape[1])
            done = own.stop
            shift = beyond[own] if settling is None else beyond[own] + size * (settling.weights @ drawn)
            each = base[:, None] + size * (noise @ drawn) - shift
            rest = np.maximum(each, 0) - noise_share(each, scales[own] * places.sd[:, None], known[:, None])
            rest -= part[:, None] * (each - base[:, None])
            moved[own] += places.area @ rest / found.share
            square += np.sum((rest - rest.mean(axis=1)[:, None]) ** 2, axis=1)
            excess += float(np.where(base == 0, places.area, 0.0) @ rest.sum(axis=1)) / (DRAWS * found.share)
        picked += float(places.area**2 @ square) / DRAWS * (1 / found.share**2 - 1 / found.share)
    results = np.stack([moved + (area - fill_area) * beyond, moved - fill_area * beyond, -area * beyond])
    variance = results.var(axis=1, ddof=1)
    # What is taken off for noise is as much too little, or too much, as it is where the draws have no depth.
    variance[:2] = np.maximum(variance[:2] - picked, 0.25 * variance[:2]) + excess**2
    found_sds: np.ndarray = np.sqrt(variance)
    return found_sds
