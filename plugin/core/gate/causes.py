"""What may have happened to a line: read otherwise, its point would lie where the points around it are."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Callable, Iterator, List, NamedTuple, Optional, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Text
from ..points.pointset import Reason
from ..units import LengthUnit
from .places import Places

SWAPPED = Text("gate.cause.swapped", QT_TRANSLATE_NOOP("core", "Easting and northing swapped"))
SWAPPED_DEGREES = Text("gate.cause.swapped_degrees", QT_TRANSLATE_NOOP("core", "Latitude and longitude swapped"))
SWAPPED_HEIGHT = Text("gate.cause.swapped_height", QT_TRANSLATE_NOOP("core", "The height swapped with a coordinate"))
ZERO = Text("gate.cause.zero", QT_TRANSLATE_NOOP("core", "Coordinates of zero"))
ZERO_HEIGHT = Text("gate.cause.zero_height", QT_TRANSLATE_NOOP("core", "A height of zero"))
SIGN = Text("gate.cause.sign", QT_TRANSLATE_NOOP("core", "A sign lost or too many"))
POINT = Text("gate.cause.point", QT_TRANSLATE_NOOP("core", "A decimal point or digit lost or too many"))
UNIT = Text("gate.cause.unit", QT_TRANSLATE_NOOP("core", "Another unit of length"))
DIGIT = Text("gate.cause.digit", QT_TRANSLATE_NOOP("core", "One wrong digit"))

_POWERS = (0.001, 0.01, 0.1, 10.0, 100.0, 1000.0)
#: A wrong digit is told only where it stands so many times above how near the place can be foretold.
_ABOVE = 5.0


class Reread(NamedTuple):
    """Coordinates (k,) read otherwise, what happened then, and the reason it gives."""

    first: np.ndarray
    second: np.ndarray
    height: np.ndarray
    cause: Text
    reason: Reason


@dataclass(frozen=True)
class Raw:
    """Coordinates (k,) of some points as given."""

    first: np.ndarray
    second: np.ndarray
    height: np.ndarray


def zero(places: Places, which: np.ndarray) -> np.ndarray:
    """Mask (k,) of the points ``which`` one of whose coordinates, or both, are exactly zero."""
    result: np.ndarray = (places.first[which] == 0) | (places.second[which] == 0)
    return result


def cause_of(
    places: Places, which: np.ndarray, fits: Callable[[np.ndarray, np.ndarray], np.ndarray]
) -> Optional[Tuple[Text, Reason]]:
    """What happened to all points ``which`` (k,) alike, and the reason, None where nothing tells it.

    ``fits``: tells of places (k, 2), metres, and heights (k,) whether they would lie among the others.
    """
    raw = Raw(places.first[which], places.second[which], places.height[which])
    for one in _readings(raw, places.degrees):
        if fits(places.plan(one.first, one.second), one.height).all():
            return one.cause, one.reason
    return None


def wrong_digit(off: np.ndarray, near: float) -> bool:
    """Whether places are off by (k, 2) metres, foretold to ``near``, as one digit of one coordinate makes them."""
    for axis in (0, 1):
        size = np.abs(off[:, axis])
        power = 10.0 ** np.floor(np.log10(np.maximum(size + near, 1e-9)))
        digit = np.rint(size / power)
        alike = (np.abs(size - digit * power) < near) & (np.abs(off[:, 1 - axis]) < near)
        if np.all(alike & (power > _ABOVE * near) & (digit >= 1) & (digit <= 9)):
            return True
    return False


def _readings(raw: Raw, degrees: bool) -> Iterator[Reread]:
    """The likelier first."""
    e, n, h = raw.first, raw.second, raw.height
    yield Reread(n, e, h, SWAPPED_DEGREES if degrees else SWAPPED, Reason.SWAPPED)
    for one in ((h, n, e), (e, h, n), (n, h, e), (h, e, n)):
        yield Reread(*one, SWAPPED_HEIGHT, Reason.SWAPPED)
    for sign_e, sign_n in ((-1, 1), (1, -1), (-1, -1)):
        yield Reread(sign_e * e, sign_n * n, h, SIGN, Reason.STRAY)
    for power in _POWERS:
        yield Reread(power * e, n, h, POINT, Reason.STRAY)
        yield Reread(e, power * n, h, POINT, Reason.STRAY)
    if not degrees:
        for factor in _factors():
            yield Reread(factor * e, factor * n, h, UNIT, Reason.STRAY)


def _factors() -> List[float]:
    sizes = [unit.metres for unit in LengthUnit if unit.metres != 1.0] + [0.001]
    return [factor for size in sizes for factor in (size, 1 / size)]
