"""What is done with the earth: shrink and swell, topsoil, waste and borrow, truck loads."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Iterable, Iterator

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from .overlay import Pieces
from .volume import Volume, sum_volumes

BAD_VALUE = Text(
    "earthwork.material_value",
    QT_TRANSLATE_NOOP("core", "{name} is {value}; give a number {least} or more, up to {most}."),
)
LOOSE_FACTOR = Text("earthwork.loose_factor", QT_TRANSLATE_NOOP("core", "The factor from bank to loose volume"))
COMPACTED_FACTOR = Text(
    "earthwork.compacted_factor", QT_TRANSLATE_NOOP("core", "The factor from bank to compacted volume")
)
UNUSABLE_SHARE = Text("earthwork.unusable_share", QT_TRANSLATE_NOOP("core", "The share of cut that cannot be used"))
TRUCK = Text("earthwork.truck", QT_TRANSLATE_NOOP("core", "The load of a truck (m³ loose)"))
STRIP_DEPTH = Text("earthwork.strip_depth", QT_TRANSLATE_NOOP("core", "The depth of topsoil (m)"))


@dataclass(frozen=True)
class EarthFactors:
    """How a cubic metre as it lies in the ground (bank) changes.

    ``loose``: cubic metres once dug, as trucks carry it (1 + swell); ``compacted``: cubic metres once placed as
    fill (1 - shrinkage; above 1 for rock). ``unusable``: share of the cut that may not be used as fill. The values
    depend on the material; take them from tests or the contract.
    """

    loose: float = 1.0
    compacted: float = 1.0
    unusable: float = 0.0

    def __post_init__(self) -> None:
        _check(LOOSE_FACTOR, self.loose, 0.1, 5)
        _check(COMPACTED_FACTOR, self.compacted, 0.1, 5)
        _check(UNUSABLE_SHARE, self.unusable, 0, 1)


@dataclass(frozen=True)
class EarthSheet:
    """Where the earth comes from and goes to, in cubic metres as it lies in the ground unless the name says otherwise.

    ``cut``: dug; ``unusable``: of it, not fit for fill; ``fill_compacted``: to be placed; ``fill_needs``: cut that this
    takes; ``reused``: cut placed as fill; ``waste``: taken away, unusable cut and surplus; ``borrow``: brought in.
    """

    cut: float
    unusable: float
    fill_compacted: float
    fill_needs: float
    reused: float
    waste: float
    borrow: float
    factors: EarthFactors

    @property
    def waste_loose(self) -> float:
        return self.waste * self.factors.loose

    @property
    def borrow_loose(self) -> float:
        return self.borrow * self.factors.loose


def earth_sheet(cut: float, fill: float, factors: EarthFactors) -> EarthSheet:
    """Balance ``cut`` (m³ in the ground) against ``fill`` (m³ compacted)."""
    unusable = cut * factors.unusable
    needs = fill / factors.compacted
    reused = min(cut - unusable, needs)
    return EarthSheet(cut, unusable, fill, needs, reused, cut - reused, needs - reused, factors)


def truck_loads(loose: float, capacity: float) -> int:
    """Loads of a truck of ``capacity`` cubic metres for ``loose`` cubic metres, the last one perhaps not full."""
    _check(TRUCK, capacity, 0.01, 10_000)
    return int(np.ceil(loose / capacity - 1e-9))


@dataclass(frozen=True)
class StrippedVolume:
    """``topsoil``: m³ taken off the ``stripped_area`` (m²); ``volume``: cut and fill from the stripped ground."""

    topsoil: float
    stripped_area: float
    volume: Volume


def strip_pieces(pieces: Iterable[Pieces], depth: float) -> StrippedVolume:
    """Strip topsoil of even ``depth`` (m) wherever earth is moved, then cut and fill from there.

    Ground where the surfaces coincide stays as it is. Topsoil and cut less fill add up to cut less fill without
    stripping plus what fills the stripped ground. Areas that are not compared are 0. Raises SurveyError for a depth
    below 0.
    """
    _check(STRIP_DEPTH, depth, 0, 100)
    volume = sum_volumes(_moved(pieces, depth), 0.0, 0.0)
    return StrippedVolume(volume.common_area * depth, volume.common_area, volume)


def _moved(pieces: Iterable[Pieces], depth: float) -> Iterator[Pieces]:
    """The pieces where the surfaces differ, with the existing one lowered."""
    for part in pieces:
        differs = np.any(part.second_height != part.first_height, axis=1)
        kept = part.take(np.flatnonzero(differs))
        lowered = kept.first_height - depth
        yield Pieces(kept.x, kept.y, kept.origin, kept.first, kept.second, lowered, kept.second_height)


def _check(name: Text, value: float, least: float, most: float) -> None:
    if not least <= value <= most:
        raise SurveyError(BAD_VALUE, name=name, value=value, least=least, most=most)
