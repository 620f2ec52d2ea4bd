"""What is compared with what, and where: the pieces that every result of a comparison is summed from."""

from __future__ import annotations

from copy import copy
from dataclasses import replace
from itertools import chain
from typing import Any, Callable, Iterable, Iterator, List, Optional, Sequence, Tuple, Union

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..progress import Progress, silent
from ..surface.locate import heights_at
from ..surface.tin import Tin
from .overlay import Pieces, common_pieces, split_pieces
from .partition import Bounds, Partition, Region, joined_bounds, make_partition
from .plane import Plane, plane_pieces
from .uncovered import outline
from .volume import Volume, out_of_order, sum_volumes

OTHER_CRS = Text(
    "earthwork.other_crs",
    QT_TRANSLATE_NOOP(
        "core",
        "{existing} is in {existing_crs}, {design} in {design_crs}: volumes need both in one coordinate system. Bring "
        "one of them into that of the other first.",
    ),
)
NOTHING_COMMON = Text(
    "earthwork.nothing_common",
    QT_TRANSLATE_NOOP(
        "core",
        "{existing} and {design} have no ground in common: there is nothing to compare. Check that both are of one "
        "place.",
    ),
)
NOTHING_INSIDE = Text(
    "earthwork.nothing_inside",
    QT_TRANSLATE_NOOP(
        "core",
        "{existing} and {design} have no ground in common inside the regions given: there is nothing to compare. Check "
        "the regions and their coordinate system.",
    ),
)
LOCAL_GRID = Text("earthwork.local_grid", QT_TRANSLATE_NOOP("core", "a local grid"))

Target = Union[Tin, Plane]

_KEPT = 1_000_000  # pieces kept for the next pass; more are made anew each time


class Parts:
    """Pieces that can be gone through again and again: kept while they are few, else made anew."""

    def __init__(self, make: Callable[[], Iterator[Pieces]]) -> None:
        self._make = make
        self._kept: Optional[List[Pieces]] = None

    def __iter__(self) -> Iterator[Pieces]:
        return self._first_time() if self._kept is None else iter(self._kept)

    def _first_time(self) -> Iterator[Pieces]:
        kept: List[Pieces] = []
        count = 0
        for part in self._make():
            count += len(part)
            if count <= _KEPT:
                kept.append(part)
            yield part
        if count <= _KEPT:
            self._kept = kept


class Comparison:
    """An existing surface and a design (a surface, level or plane), compared where both are.

    ``within``: regions outside of which nothing is compared; none for everywhere. ``missing_level``: a level (m) that
    stands in for the surface that is missing where only one is; None leaves such ground out. ``names``: of
    both, for messages. Raises SurveyError where the surfaces are not in one CRS.
    """

    def __init__(
        self,
        existing: Tin,
        design: Target,
        within: Sequence[Region] = (),
        missing_level: Optional[float] = None,
        names: Tuple[str, str] = ("", ""),
        progress: Progress = silent,
    ) -> None:
        self.existing, self.design, self.names = existing, design, names
        self.within = tuple(within)
        self.missing_level = missing_level
        self._progress = progress
        if isinstance(design, Tin) and not same_system(existing.crs, design.crs):
            raise SurveyError(
                OTHER_CRS, existing=names[0], existing_crs=_said(existing.crs), design=names[1],
                design_crs=_said(design.crs),
            )  # fmt: skip
        self._partition = make_partition(self.within, self.bounds, existing.crs) if self.within else None
        self.both = Parts(self._both)
        self.existing_only = Parts(lambda: self._only(existing, None if isinstance(design, Plane) else design))
        self.design_only = Parts(self._design_only)

    def without_offset(self, offset: float) -> Comparison:
        """The same with a design surface that lies lower by ``offset`` (m)."""
        design = self.design_tin
        if offset == 0 or design is None:
            return self
        lowered = replace(design, vertices=design.vertices - np.array([0.0, 0.0, offset]))
        found = copy(self)
        found.design = lowered
        found.both = Parts(lambda: (_lowered(part, offset) for part in self.both))
        found.design_only = Parts(lambda: (_lowered(part, offset) for part in self.design_only))
        return found

    @property
    def design_tin(self) -> Optional[Tin]:
        """The design where it is a surface."""
        return self.design if isinstance(self.design, Tin) else None

    @property
    def bounds(self) -> Bounds:
        """West, south, east, north of both surfaces."""
        tins = [self.existing] if self.design_tin is None else [self.existing, self.design_tin]
        return joined_bounds(tins)

    def pieces(self) -> Iterable[Pieces]:
        """All ground that counts: common to both and, with a missing level, of one alone."""
        return chain(self.both, self.existing_only, self.design_only)

    def volume(self) -> Volume:
        """Cut, fill and areas. With a missing level ``existing_only`` and ``design_only`` are what is still left out.

        Raises SurveyError where there is nothing to compare.
        """
        existing_area = self._area(self.existing)
        design_area = None if self.design_tin is None else self._area(self.design_tin)
        found = sum_volumes(self.pieces(), 0.0, 0.0)
        if not found.common_area > 0:
            text = NOTHING_INSIDE if self.within else NOTHING_COMMON
            raise SurveyError(text, existing=self.names[0], design=self.names[1])
        if self.missing_level is not None:
            return found
        rest = 0.0 if design_area is None else max(0.0, design_area - found.common_area)
        return Volume(
            found.cut, found.fill, found.cut_area, found.fill_area, found.common_area,
            max(0.0, existing_area - found.common_area), rest,
        )  # fmt: skip

    def depth_at(self, xy: np.ndarray) -> np.ndarray:
        """Design less existing height (q,) at places (q, 2) in the CRS; nan where nothing is compared."""
        existing = heights_at(self.existing, xy)
        design = self.design.at(xy) if isinstance(self.design, Plane) else heights_at(self.design, xy)
        if self.missing_level is not None:
            alone = np.isnan(existing) != np.isnan(design)
            if self.design_tin is not None:
                design = np.where(alone & np.isnan(design), self.missing_level, design)
                existing = np.where(alone & np.isnan(existing), self.missing_level, existing)
        result: np.ndarray = design - existing
        return result

    # How the pieces are made

    def _both(self) -> Iterator[Pieces]:
        return self._kept_inside(self._common())

    def _common(self) -> Iterator[Pieces]:
        design = self.design_tin
        if design is None:
            assert isinstance(self.design, Plane)
            yield from plane_pieces(self.existing, self.design)
        elif out_of_order(self.existing, design):  # so that exchanging them gives the same pieces to the last digit
            yield from map(exchanged, common_pieces(design, self.existing, self._progress))
        else:
            yield from common_pieces(self.existing, design, self._progress)

    def _kept_inside(self, pieces: Iterator[Pieces]) -> Iterator[Pieces]:
        if self._partition is None:
            return pieces
        return inside_any(pieces, self._partition)

    def _design_only(self) -> Iterator[Pieces]:
        if self.design_tin is None:
            return iter(())
        return map(exchanged, self._only(self.design_tin, self.existing))

    def _only(self, tin: Tin, other: Optional[Tin]) -> Iterator[Pieces]:
        """The ground of ``tin`` that ``other`` does not cover, against the level that stands in."""
        if self.missing_level is None or other is None:
            return
        regions = [outline(other, ""), *self.within]
        partition = make_partition(regions, self.bounds, tin.crs)
        inside = ~partition.inside[0]
        if self.within:
            inside &= partition.inside[1:].any(axis=0)
        for part in plane_pieces(tin, Plane(self.missing_level)):
            for small, _, triangle in split_pieces(part, partition.tin):
                yield small.take(np.flatnonzero(inside[triangle]))

    def _area(self, tin: Tin) -> float:
        """Plan area of a surface inside the regions."""
        if self._partition is None:
            return tin.plan_area
        return sum_volumes(inside_any(plane_pieces(tin, Plane(0.0)), self._partition), 0.0, 0.0).common_area


def inside_any(pieces: Iterable[Pieces], partition: Partition) -> Iterator[Pieces]:
    """The parts of pieces that lie in any region of a partition."""
    inside = partition.inside.any(axis=0)
    for part in pieces:
        for small, _, triangle in split_pieces(part, partition.tin):
            yield small.take(np.flatnonzero(inside[triangle]))


def _lowered(pieces: Pieces, offset: float) -> Pieces:
    return replace(pieces, second_height=pieces.second_height - offset)


def exchanged(pieces: Pieces) -> Pieces:
    """The same pieces with first and second surface exchanged."""
    p = pieces
    return Pieces(p.x, p.y, p.origin, p.second, p.first, p.second_height, p.first_height)


def same_system(one: Optional[Any], other: Optional[Any]) -> bool:
    """Whether two CRSs (None: a local grid) are the same, axis order aside."""
    if one is None or other is None:
        return one is other
    return bool(one.equals(other, ignore_axis_order=True)) or (
        one.to_authority() is not None and one.to_authority() == other.to_authority()
    )


def _said(crs: Optional[Any]) -> Union[str, Text]:
    """A CRS as a message names it."""
    if crs is None:
        return LOCAL_GRID
    authority = crs.to_authority()
    return ":".join(authority) if authority else str(crs.name)
