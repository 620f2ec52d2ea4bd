"""Several pads on one site: each graded in turn, and all of them as one design."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..progress import Progress, silent
from ..surface.tin import Tin
from .balance import Balance, balance
from .combine import combine
from .grading import PLATFORM, Grading
from .pad import Runs, grade_pad
from .plane import Plane
from .side_slopes import SideSlopes
from .volume import Volume, volume_between

NO_PADS = Text("earthwork.no_pads", QT_TRANSLATE_NOOP("core", "There is no pad to grade; give a polygon."))
PADS_MEET = Text(
    "earthwork.pads_meet",
    QT_TRANSLATE_NOOP(
        "core",
        "{later} reaches into the grading of {earlier} ({area:.1f} m²): it is graded into the ground as the other "
        "leaves it, so some earth is counted with both. The total is that of the finished ground.",
    ),
)
PLATFORM_CUT = Text(
    "earthwork.platform_cut",
    QT_TRANSLATE_NOOP(
        "core",
        "{later} or its slopes take {area:.1f} m² of the platform of {earlier}. Move the pads apart, or plan a wall.",
    ),
)
IN_PAD = Text("earthwork.in_pad", QT_TRANSLATE_NOOP("core", "{name}: {said}"))


@dataclass(frozen=True)
class PadDesign:
    """What is wanted of one pad.

    ``rings``: (k, 2) in the CRS, the outline first, then holes. ``slopes``: the usual ones; ``runs``: for each ring
    those of edges that differ (see :func:`.pad.pad`).
    """

    name: str
    rings: Tuple[np.ndarray, ...]
    plane: Plane
    slopes: SideSlopes
    runs: Tuple[Runs, ...] = ()

    def raised(self, by: float) -> PadDesign:
        """The same ``by`` metres higher."""
        return PadDesign(self.name, self.rings, self.plane.raised(by), self.slopes, self.runs)


@dataclass(frozen=True)
class GradedPad:
    """A pad and its grading into the ground as the pads before it leave it."""

    pad: PadDesign
    grading: Grading


@dataclass(frozen=True)
class SiteGrading:
    """``pads`` in order; ``finished``: the ground with all of them; ``volume``: existing to finished where graded."""

    pads: Tuple[GradedPad, ...]
    finished: Tin
    volume: Volume
    messages: Tuple[Message, ...]


def grade_one(existing: Tin, pad: PadDesign) -> Grading:
    """Grade one pad. Raises SurveyError, naming it."""
    try:
        return grade_pad(existing, pad.rings[0], pad.plane, pad.slopes, pad.rings[1:], pad.runs)
    except SurveyError as error:
        if not pad.name:
            raise
        raise SurveyError(IN_PAD, name=pad.name, said=error.message) from None


def grade_pads(existing: Tin, pads: Sequence[PadDesign], progress: Progress = silent) -> SiteGrading:
    """Grade pads one after another into the ground.

    Where they keep apart their volumes add up to the total; where one reaches into another it is said.
    Raises SurveyError where there is none, or for one that cannot be graded.
    """
    if not pads:
        raise SurveyError(NO_PADS)
    ground = existing
    done: List[GradedPad] = []
    said: List[Message] = []
    for number, pad in enumerate(pads):
        progress(number / len(pads), "earthwork")
        grading = grade_one(ground, pad)
        for before in done:
            said += _meetings(before, pad, grading)
        said += [each if len(pads) == 1 else message(IN_PAD, name=pad.name, said=each) for each in grading.messages]
        ground = combine(ground, grading.design)
        done.append(GradedPad(pad, grading))
    apart = not any(each.text is PADS_MEET for each in said)
    volume = _sum([each.grading.volume for each in done], existing) if apart else _changed(existing, ground)
    progress(1.0, "earthwork")
    return SiteGrading(tuple(done), ground, volume, tuple(said))


def _changed(existing: Tin, finished: Tin) -> Volume:
    """Cut and fill of the finished ground; the area compared is where it was changed."""
    whole = volume_between(existing, finished)
    area = whole.cut_area + whole.fill_area
    return Volume(
        whole.cut, whole.fill, whole.cut_area, whole.fill_area, area, existing.plan_area - area, whole.design_only
    )


def _sum(volumes: Sequence[Volume], existing: Tin) -> Volume:
    names = ("cut", "fill", "cut_area", "fill_area", "common_area", "design_only")
    total = {name: float(sum(getattr(volume, name) for volume in volumes)) for name in names}
    return Volume(existing_only=existing.plan_area - total["common_area"], **total)


def _meetings(before: GradedPad, pad: PadDesign, grading: Grading) -> List[Message]:
    """What there is to say where a pad reaches into one graded before."""
    one, other = before.grading.design, grading.design
    if not _near(one, other):
        return []
    area = volume_between(one, other).common_area
    if area <= 0.01:
        return []
    names = {"earlier": before.pad.name, "later": pad.name}
    said = [message(PADS_MEET, area=area, **names)]
    platform = _platform(before.grading)
    moved = volume_between(platform, other)
    taken = moved.cut_area + moved.fill_area
    if taken > 0.01:
        said.append(message(PLATFORM_CUT, area=taken, **names))
    return said


def _near(one: Tin, other: Tin) -> bool:
    a, b = one.bounds, other.bounds
    return a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3]


def _platform(grading: Grading) -> Tin:
    return grading.design.part(grading.zone == PLATFORM)


def balance_pads(
    existing: Tin,
    pads: Sequence[PadDesign],
    factor: float = 1.0,
    surplus: float = 0.0,
    progress: Progress = silent,
) -> Balance:
    """Shift of all pads together for which cut × factor = fill + surplus; see :func:`.balance.balance`."""
    tries = [0]

    def design(shift: float) -> Volume:
        tries[0] += 1
        progress(1 - 0.85 ** tries[0], "earthwork")
        return volume_of_pads(existing, [pad.raised(shift) for pad in pads])

    return balance(design, factor, surplus)


def volume_of_pads(existing: Tin, pads: Sequence[PadDesign]) -> Volume:
    """Cut and fill of all pads, by :func:`grade_pads` only where they reach into each other."""
    gradings = [grade_one(existing, pad) for pad in pads]
    for k, one in enumerate(gradings):
        for other in gradings[:k]:
            if _near(one.design, other.design) and volume_between(one.design, other.design).common_area > 0.01:
                return grade_pads(existing, pads).volume
    return _sum([grading.volume for grading in gradings], existing)
