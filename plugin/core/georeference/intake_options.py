"""How survey files are to be read, and what is to be made of them, as the user says it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any, Callable, Dict, Optional, Tuple

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..points.columns import ColumnMap
from ..points.geographic import HeightKind
from ..points.given import Given, setting_of
from ..points.questions import Answer
from ..points.said_units import AngleForm
from ..units import LengthUnit
from .crs import read_crs, source_crs
from .heights import ConstantSeparation, GridSeparation, Separation
from .level_shift import LevelShift
from .position import Landmark

NOT_A_SEPARATION = Text(
    "intake.not_a_separation",
    QT_TRANSLATE_NOOP("core", "--geoid is empty; give metres, or a file with a grid of geoid separations."),
)


@dataclass(frozen=True)
class IntakeOptions:
    """How to read survey files, and what to make of them.

    ``crs``: the CRS wanted, projected or compound; None for a local grid. ``source_crs``: the CRS of the
    coordinates in the files, projected or geographic; None: the same for plan coordinates, WGS 84 for degrees.
    ``columns`` to ``units_from``: as :func:`.points.delimited.read_points` takes them. ``heights_are``: what the
    heights of text files are, None for what the file says. ``heights``: which are wanted; None for orthometric where a
    ``separation`` is given, else as they are. ``accept``: names of coordinate operations taken though better ones
    are known. ``correct``: name of the suggestion (:func:`suggestion_names`) to apply to points that lie outside the
    area of use; ``as-read`` to leave them there. ``level_shifts``: added to the heights of a file from a line on.
    ``landmarks``: what is known beside the survey: layers of the project,
    control. ``project``: the CRS of the project. ``ask``: refuse what only the user can say of the area of use, else
    only tell it.
    """

    crs: Optional[Any] = None
    source_crs: Optional[Any] = None
    columns: Optional[ColumnMap] = None
    delimiter: Optional[str] = None
    decimal: Optional[str] = None
    encoding: Optional[str] = None
    unit: Optional[LengthUnit] = None
    height_unit: Optional[LengthUnit] = None
    comment: Optional[str] = "auto"
    header: Optional[bool] = None
    layer: str = ""
    angles: Optional[AngleForm] = None
    no_value: Optional[Tuple[str, ...]] = None
    pole_height: Optional[float] = None
    antenna_offset: Optional[float] = None
    heights_of: str = ""
    units_from: str = ""
    heights_are: Optional[HeightKind] = None
    heights: Optional[HeightKind] = None
    separation: Optional[Separation] = None
    accept: Tuple[str, ...] = ()
    correct: str = ""
    level_shifts: Tuple[LevelShift, ...] = ()
    landmarks: Tuple[Landmark, ...] = ()
    project: Optional[Any] = None
    ask: bool = True

    @property
    def given(self) -> Given:
        """What is said of the values of the files."""
        return Given(
            self.unit, self.height_unit, self.angles, self.no_value, self.pole_height, self.antenna_offset,
            self.heights_of, self.units_from,
        )  # fmt: skip

    @property
    def near(self) -> Tuple[Tuple[float, float, float, float], ...]:
        """The boxes of the landmarks: west, south, east, north, degrees."""
        return tuple((one.west, one.south, one.east, one.north) for one in self.landmarks)

    @property
    def wanted(self) -> Optional[HeightKind]:
        """The kind of height asked for, in words or by giving a geoid separation."""
        return self.heights or (HeightKind.ORTHOMETRIC if self.separation is not None else None)


def parse_separation(text: str) -> Separation:
    """A geoid separation from the user's word: metres, or the path of a grid. Raises SurveyError for none."""
    word = text.strip()
    if not word:
        raise SurveyError(NOT_A_SEPARATION)
    try:
        return ConstantSeparation(float(word))
    except ValueError:
        return GridSeparation(Path(word))


def with_answer(options: IntakeOptions, answer: Answer) -> Optional[IntakeOptions]:
    """``options`` with an answer to a question given; None for one that is an example only, or changes no reading."""
    if answer.fill_in:
        return None
    *before, last = answer.option.split()
    for option, value in (*zip(before[::2], before[1::2]), (last, answer.value)):
        if option in _OURS:
            name, read = _OURS[option]
            options = replace(options, **{name: read(value)})
            continue
        try:
            name, said = setting_of(Answer(option, value, answer.label))
        except KeyError:
            return None
        options = replace(options, **{name: said})
    return options


#: What an answer by each option of this stage changes, and how its value is read.
_OURS: Dict[str, Tuple[str, Callable[[str], Any]]] = {
    "--correct": ("correct", str),
    "--crs": ("crs", read_crs),
    "--source-crs": ("source_crs", source_crs),
}
