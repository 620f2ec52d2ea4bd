"""What the main job found, as the report reads it."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Any, Optional, Tuple

from ..contours.lines import Contours
from ..linework.join import Linework
from ..messages import Message
from ..points.delimited import PointFile
from ..points.pointset import PointSet
from ..surface.build import Surface
from ..units import LengthUnit


@dataclass(frozen=True)
class JobResult:
    """All results of one run.

    ``survey``: the file as read. ``points``: its points with every decision made. ``decisions_file``: where
    decisions by hand came from, "" if there were none. ``linework``: None when field codes were not read.
    ``messages``: what was noticed outside the stages that carry their own. ``files``: what has been
    written so far.
    """

    survey: PointFile
    points: PointSet
    linework: Optional[Linework]
    surface: Surface
    contours: Contours
    decisions_file: str = ""
    messages: Tuple[Message, ...] = ()
    files: Tuple[Path, ...] = ()

    @property
    def crs(self) -> Optional[Any]:
        """The CRS of every coordinate; None for a local grid."""
        return self.points.crs

    @property
    def shown_height_unit(self) -> LengthUnit:
        """Heights are told in the unit of the contours."""
        return self.contours.options.unit

    @property
    def remarks(self) -> Tuple[Message, ...]:
        """All that the stages noticed, in the order of the work."""
        linework = () if self.linework is None else self.linework.messages
        return (*self.survey.messages, *self.messages, *linework, *self.surface.report.messages)
