"""Heights that no point of the site can have: zeros, marks for no value, a decimal point lost."""

from __future__ import annotations

from typing import List

import numpy as np

from ..points.pointset import Reason
from . import causes, said
from .verdict import Verdict

_LEAST = 8
#: How far a height may lie beyond those of nineteen in twenty of the others: so many times their range, and metres.
_TIMES, _BEYOND = 3.0, 300.0
#: The same for a height of exactly zero.
_ZERO_TIMES, _ZERO_BEYOND = 1.0, 30.0
#: Where more heights are strange, also as a share, they are the site's own.
_MOST, _MOST_SHARE = 5, 0.01
#: No ground lies so high or low, metres; fewer than half of the heights beyond that are none.
_NO_GROUND = 12_000.0


def strange_heights(height: np.ndarray, index: np.ndarray) -> List[Verdict]:
    """Of the points ``index`` (k,) those whose ``height`` (n,), metres, cannot be that of the site."""
    if len(index) < _LEAST:
        return []
    own = height[index]
    none = np.abs(own) > _NO_GROUND
    if _MOST < np.count_nonzero(none) < 0.5 * len(index):
        middle = float(np.median(own[~none]))
        found = Verdict(index[none], Reason.STRAY, said.HEIGHT, np.abs(own[none] - middle))
        return [found, *strange_heights(height, index[~none])]
    if float(own.max()) - float(own.min()) <= _BEYOND and own.all():  # none is zero or can lie far enough beyond
        return []
    low, high = (float(value) for value in np.percentile(own, [2.5, 97.5]))
    beyond = np.maximum(low - own, own - high)
    off = beyond > _TIMES * (high - low) + _BEYOND
    zero = (own == 0) & (beyond > _ZERO_TIMES * (high - low) + _ZERO_BEYOND)
    if np.count_nonzero(off | zero) > max(_MOST, _MOST_SHARE * len(index)):
        return []
    verdicts = []
    if zero.any():
        verdicts.append(Verdict(index[zero], Reason.ZERO, said.LIKELY, beyond[zero], causes.ZERO_HEIGHT))
    off &= ~zero
    if off.any():
        verdicts.append(Verdict(index[off], Reason.STRAY, said.HEIGHT, beyond[off]))
    return verdicts
