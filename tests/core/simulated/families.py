"""The families of simulated surveys by name."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Callable, Dict, Optional

import numpy as np

from .receiver import FieldRecord
from .sites import Site, heaps, plain
from .streets import street


def nothing(record: FieldRecord) -> None:
    """No fault."""


def faults(record: FieldRecord) -> None:
    """Lifts at a rate of their own, and a tilt, a fix lost, a fix regained wrongly, a pole height, each in some."""
    random = record.random
    for _ in range(1 + int(random.poisson(record.n * random.uniform(0.0005, 0.004)))):
        record.lift()
    for chance, spoil in ((0.5, record.tilted), (0.3, record.pole_height), (0.4, lambda: record.fix_loss(False)),
                          (0.4, lambda: record.fix_loss(True))):  # fmt: skip
        if random.random() < chance:
            spoil()


@dataclass(frozen=True)
class Family:
    """``site`` makes the ground and the walk, ``spoil`` the faults; ``bare``: no column of the receiver."""

    site: Callable[[np.random.Generator], Site]
    spoil: Callable[[FieldRecord], None] = nothing
    bare: bool = False
    multipath: Optional[float] = None


def _either(random: np.random.Generator) -> Site:
    return street(random) if random.random() < 0.5 else plain(random)


FAMILIES: Dict[str, Family] = {
    "street": Family(street),
    "street-faults": Family(street, faults),
    "heaps": Family(heaps),
    "heaps-faults": Family(heaps, faults),
    "levels": Family(_either, FieldRecord.change_level),
    "tilt": Family(_either, FieldRecord.lean),
}
