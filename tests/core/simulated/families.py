"""The families of simulated surveys by name."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Callable, Dict, Optional, Tuple

import numpy as np

from .receiver import FieldRecord
from .sites import Site, heaps, plain, vehicle
from .streets import coded_street, street
from .things import beds, boulders, rough, terraces, walls


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
    """``site`` makes the ground and the walk, ``spoil`` the faults; ``bare``: no column of the receiver.

    ``multipath``: as :class:`.FieldRecord` takes it.
    """

    site: Callable[[np.random.Generator], Site]
    spoil: Callable[[FieldRecord], None] = nothing
    bare: bool = False
    multipath: Optional[Tuple[float, float]] = None


def _either(random: np.random.Generator) -> Site:
    return street(random) if random.random() < 0.5 else plain(random)


def _any(random: np.random.Generator) -> Site:
    kinds = (street, plain, coded_street, heaps, terraces, walls)
    return kinds[int(random.integers(len(kinds)))](random)


def _lean_and_lift(record: FieldRecord) -> None:
    record.lean()
    for _ in range(1 + int(record.random.poisson(2))):
        record.lift()


def _antenna(record: FieldRecord) -> None:
    record.change_level(0.1, 0.6, to_end=0.8, plan=0.0)


FAMILIES: Dict[str, Family] = {
    "street": Family(street),
    "street-faults": Family(street, faults),
    "heaps": Family(heaps),
    "heaps-faults": Family(heaps, faults),
    "beds": Family(beds),
    "beds-faults": Family(beds, faults),
    "walls": Family(walls),
    "walls-faults": Family(walls, faults),
    "boulders": Family(boulders),
    "boulders-faults": Family(boulders, faults),
    "terraces": Family(terraces),
    "terraces-faults": Family(terraces, faults),
    "rough": Family(rough),
    "rough-faults": Family(rough, faults),
    "field": Family(plain),
    "multipath": Family(_either, multipath=(1.0, 2.5)),
    "coded": Family(coded_street),
    "coded-lifts": Family(coded_street, FieldRecord.lift_lines),
    "tilt": Family(_either, FieldRecord.lean),
    "tilt-lifts": Family(_either, _lean_and_lift),
    "tilt-wrong": Family(_either, FieldRecord.lean_wrong),
    "vehicle": Family(vehicle),
    "vehicle-changed": Family(vehicle, _antenna),
    "levels": Family(_either, FieldRecord.change_level),
    "strays": Family(_either, FieldRecord.slip),
    "mixed": Family(_any, faults),
    "mixed-bare": Family(_any, faults, bare=True),
}
