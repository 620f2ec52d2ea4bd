"""Between which two points of a pass a step lies, with what chance: the gate it was found in or one near."""

from __future__ import annotations

from typing import Tuple

import numpy as np

from .candidates import STEP, Candidates
from .jumps import Jumps, side_line
from .passes import Passes

#: Gates looked at on either side of the one a step was found in.
BESIDE = 1


def gate_chances(passes: Passes, noise: np.ndarray, jumps: Jumps, found: Candidates) -> Tuple[np.ndarray, np.ndarray]:
    """Ends (m, 4) of three gates along the pass from each candidate's place, metres, and the chance (m, 3) of each.

    Lines through the points well before and well behind say how likely each point between is foot or top. All chances
    are 0 where the candidate is no step.
    """
    m, q = len(found), len(passes)
    wide = 2 * BESIDE + 1
    edges, chance = np.zeros((m, wide + 1)), np.zeros((m, wide))
    k = np.flatnonzero(found.kind == STEP)
    g = found.gate[k]
    s0 = passes.s[g] + (passes.s[np.minimum(g + 1, q - 1)] - passes.s[g]) / 2
    sigma = noise[g]
    low, high = jumps.low[g], jumps.high[g]
    behind = side_line(passes, sigma, s0, low, np.maximum(g, low), ahead=False)
    ahead = side_line(passes, sigma, s0, np.minimum(g + 2, high), high, ahead=True)
    told = (behind.count >= 2) & (ahead.count >= 2)
    log = np.zeros((len(k), wide))
    for j in range(-BESIDE + 1, BESIDE + 1):  # points that a near gate puts on the other side
        at = np.clip(g + j, 0, q - 1)
        ds = passes.s[at] - s0
        foot, foot_var = behind.at(ds)
        top, top_var = ahead.at(ds)
        is_behind = _log_normal(passes.z[at] - foot, sigma**2 * (1 + foot_var))
        is_ahead = _log_normal(passes.z[at] - top, sigma**2 * (1 + top_var))
        for column, h in enumerate(range(-BESIDE, BESIDE + 1)):
            log[:, column] += is_behind if j <= h else is_ahead
    for column, h in enumerate(range(-BESIDE, BESIDE + 1)):
        within = (g + h >= low) & (g + h + 1 < high)
        log[:, column] = np.where(within & told, log[:, column], 0.0 if h == 0 else -np.inf)
    share = np.exp(log - log.max(axis=1, keepdims=True))
    chance[k] = share / share.sum(axis=1, keepdims=True)
    for column in range(wide + 1):
        at = np.clip(g - BESIDE + column, 0, q - 1)
        along = (passes.x[at] - found.x[k]) * found.ex[k] + (passes.y[at] - found.y[k]) * found.ey[k]
        edges[k, column] = along
    edges[k] = np.maximum.accumulate(edges[k], axis=1)
    return edges, chance


def _log_normal(off: np.ndarray, var: np.ndarray) -> np.ndarray:
    return -0.5 * off**2 / var - 0.5 * np.log(var)
