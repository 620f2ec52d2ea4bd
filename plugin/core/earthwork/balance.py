"""The level at which cut and fill balance."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Callable, Dict, Tuple

import numpy as np
from scipy.optimize import brentq

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from .volume import Volume

BAD_FACTOR = Text(
    "earthwork.balance_factor",
    QT_TRANSLATE_NOOP(
        "core", "The factor from cut to fill is {factor}; give a number above 0 (1 where volumes do not change)."
    ),
)
NO_BALANCE = Text(
    "earthwork.no_balance",
    QT_TRANSLATE_NOOP(
        "core",
        "No height between {low:.1f} m and {high:.1f} m balances cut and fill with a surplus of {surplus:.1f} m³. "
        "Check the surplus.",
    ),
)
JUMP = Text(
    "earthwork.balance_jump",
    QT_TRANSLATE_NOOP(
        "core",
        "Cut and fill jump at the balanced height, where slopes run on over a brow or reach other ground: "
        "{rest:.1f} m³ are left over.",
    ),
)

_EXACT = 1e-6  # metres to which the height is found
_FARTHEST = 10_000.0


@dataclass(frozen=True)
class Balance:
    """``shift``: metres added to the design's first height; ``volume``: cut and fill there; ``rest``: cut times
    factor less fill less surplus, cubic metres, about 0."""

    shift: float
    volume: Volume
    rest: float
    messages: Tuple[Message, ...]


def balance(design: Callable[[float], Volume], factor: float = 1.0, surplus: float = 0.0, step: float = 1.0) -> Balance:
    """Find the shift (m) for which cut × factor = fill + surplus.

    ``design(shift)``: the volume with the design so much higher; with it, cut falls and fill grows.
    ``factor``: cubic metres of fill from one of cut; ``surplus``: cubic metres of fill to be left over (less than 0:
    to be brought in). ``step``: metres of the first look around. By Brent's method (Brent 1973) between a height with
    too much and one with too little. Raises SurveyError for a factor not above 0 and where no height does it.
    """
    if not 0 < factor < np.inf or not np.isfinite(surplus):
        raise SurveyError(BAD_FACTOR, factor=factor)
    known: Dict[float, Volume] = {}

    def rest(shift: float) -> float:
        if shift not in known:
            known[shift] = design(shift)
        volume = known[shift]
        return volume.cut * factor - volume.fill - surplus

    low, high = _bracket(rest, step, surplus)
    shift = low if low == high else float(brentq(rest, low, high, xtol=_EXACT / 4, rtol=1e-14))
    left = rest(shift)
    volume = known[shift]
    said: Tuple[Message, ...] = ()
    allowed = 1e-3 * (volume.common_area * max(1.0, factor) + 1.0)  # what a millimetre would move
    if abs(left) > allowed:
        said = (message(JUMP, rest=left),)
    return Balance(shift, volume, left, said)


def _bracket(rest: Callable[[float], float], step: float, surplus: float) -> Tuple[float, float]:
    """A shift with too much earth and a higher one with too little."""
    at, value = 0.0, rest(0.0)
    if value == 0:
        return at, at
    direction = 1.0 if value > 0 else -1.0
    while abs(at) < _FARTHEST:
        after = at + direction * step
        if rest(after) * direction <= 0:
            return min(at, after), max(at, after)
        at, step = after, step * 2
    raise SurveyError(NO_BALANCE, low=min(0.0, at), high=max(0.0, at), surplus=surplus)
