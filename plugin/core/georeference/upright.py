"""The variant of a mirrored CRS whose axes run east and north, and the question that offers it."""

from __future__ import annotations

from typing import Any, Optional

import numpy as np
from pyproj.exceptions import ProjError

from ..messages import QT_TRANSLATE_NOOP, Text, message
from ..points.questions import Answer, Question, QuestionError, Topic
from .axes import computed, flat, from_lonlat, mirrored
from .neighbours import area_box, opened, registered
from .record import crs_name

MIRRORED = Text(
    "upright.mirrored",
    QT_TRANSLATE_NOOP(
        "core",
        "{crs} counts {first} and {second}: as easting and northing they make a mirrored plan, left and right "
        "exchanged",
    ),
)
ANOTHER = Text("upright.another", QT_TRANSLATE_NOOP("core", "another system of the region, with such axes"))
EXAMPLE = "EPSG:25832"
UPRIGHT = Text("upright.upright", QT_TRANSLATE_NOOP("core", "the same system with axes to east and north, {crs}"))


def check_upright(crs: Optional[Any], file: str) -> None:
    """Raises QuestionError for a survey wanted in a mirrored CRS, with the variant that is not."""
    if crs is None or not computed(crs) or not mirrored(crs):
        return
    plan = flat(crs)
    first, second = (axis.direction for axis in plan.axis_info[:2])
    other, own = upright(crs), plan.to_authority()
    option = f"--source-crs {':'.join(own)} --crs" if own else "--crs"
    answer = Answer(option, EXAMPLE, message(ANOTHER), fill_in=True)
    if other is not None:
        answer = Answer(option, ":".join(other.to_authority()), message(UPRIGHT, crs=crs_name(other)))
    text = message(MIRRORED, crs=crs_name(plan), first=first, second=second)
    raise QuestionError(file, [Question(Topic.CRS, text, (answer,))])


def upright(crs: Any) -> Optional[Any]:
    """The registered CRS with the coordinates of ``crs`` to other axes, east and north; None where there is none."""
    plan, box = flat(crs), area_box(flat(crs))
    if box is None:
        return None
    west, south, east, north = box
    lon, lat = np.linspace(west, east, 5)[1:4], np.linspace(south, north, 5)[1:4]
    wanted = np.sort(np.abs(from_lonlat(plan, lon, lat)), axis=0)
    for info in registered(box, 0.0):
        other = opened(info.auth_name, info.code).crs
        if other.geodetic_crs.name != plan.geodetic_crs.name or [a.direction for a in other.axis_info] != [
            "east",
            "north",
        ]:
            continue
        try:
            found = np.sort(np.abs(from_lonlat(other, lon, lat)), axis=0)
        except ProjError:
            continue
        if np.abs(found - wanted).max() < 1e-3 and not mirrored(other):
            return other
    return None
