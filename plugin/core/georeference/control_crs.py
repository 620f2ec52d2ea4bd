"""Whether survey and control are coordinates of two systems, which a fit would hide.

A survey in one zone fits control in the next by a turn of some degrees, and one on another datum by a shift of a
hundred metres. Where the coordinates of one of them, read in another CRS of the register, lie at those of the other
without any fit, that is told, with both places that it may mean.
"""

from __future__ import annotations

from itertools import chain
from typing import Any, Iterator, NamedTuple, Optional, Tuple

import numpy as np
from pyproj import Transformer
from pyproj.exceptions import ProjError

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..units import metres_per_unit
from .axes import flat, same_plan, to_lonlat
from .control import ControlMatch
from .neighbours import area_box, family, opened, registered
from .position import distance_text, place_said
from .record import crs_name

TWO_SYSTEMS = Text(
    "control_crs.two_systems",
    QT_TRANSLATE_NOOP(
        "core",
        "Survey and control are coordinates of two systems, and the fit hides it. If the control is in {crs}, the "
        "survey is in {other}, and lies at {place}: give that as the CRS of the survey instead of a fit.",
    ),
    weight=3,
)
OR_CONTROL = Text(
    "control_crs.or_control",
    QT_TRANSLATE_NOOP(
        "core",
        "If the survey is in {crs}, the control is in {other}, and the site lies at {place}, {distance} from where it "
        "is drawn now. Check which of them it is.",
    ),
    weight=3,
)
#: Without a fit the two differ by more than this, and by less than that share of it in the other CRS (m).
APART, LEFT, SHARE = 20.0, 40.0, 0.15
#: The same for datums some metres apart. A base at a place of its own shifts a survey as far, so that the whole shift
#: must be explained.
NEAR_APART, NEAR_LEFT, NEAR_SHARE = 1.0, 0.5, 0.05
#: A register has hundreds of systems at a place; those nearest in kind are tried.
MOST_TRIED = 400
#: Datums put a place within so many degrees.
NEAR_DEGREES = 0.03


class _Other(NamedTuple):
    """Another CRS, and how far survey and control lie apart (median, metres) where one of them is read in it."""

    crs: Any
    apart: float


def two_systems(match: ControlMatch, crs: Optional[Any]) -> Tuple[Message, ...]:
    """What to say where survey or control of ``match``, read in another CRS than ``crs``, lies at the other."""
    if crs is None or len(match.names) < 2:
        return ()
    plan = flat(crs)
    survey, control = match.survey[:, :2], match.control[:, :2]
    now = _apart(survey, control)
    if now < NEAR_APART:
        return ()
    other = _other(plan, survey, control, now)
    if other is None:
        return ()
    said = [message(TWO_SYSTEMS, crs=crs_name(crs), other=crs_name(other.crs), place=place_said(plan, *control.T))]
    turned = _other(plan, control, survey, now)
    away = _metres_between(plan, survey, control)
    if turned is not None and away > NEAR_APART:
        there = place_said(plan, *survey.T)
        said.append(
            message(
                OR_CONTROL, crs=crs_name(crs), other=crs_name(turned.crs), place=there, distance=distance_text(away)
            )
        )
    return tuple(said)


def _other(plan: Any, moved: np.ndarray, fixed: np.ndarray, now: float) -> Optional[_Other]:
    """The CRS in which ``moved`` (n, 2) lies at ``fixed`` (n, 2) of ``plan``."""
    most = min(LEFT, SHARE * now) if now >= APART else min(NEAR_LEFT, NEAR_SHARE * now)
    best: Optional[_Other] = None
    for crs in _candidates(plan, moved, fixed):
        there = _brought(crs, plan, moved)
        apart = _apart(there, fixed) if there is not None else np.inf
        if apart < most and (best is None or apart < best.apart):
            best = _Other(crs, apart)
    return best


def _candidates(plan: Any, moved: np.ndarray, fixed: np.ndarray) -> Iterator[Any]:
    """Zones of the family of ``plan``, and what is registered at ``fixed``, that put ``moved`` near by."""
    box = area_box(plan)
    if box is None or plan.coordinate_operation is None:
        return
    lon, lat = to_lonlat(plan, *fixed.T)
    if not (np.isfinite(lon).all() and np.isfinite(lat).all()):
        return
    around = (float(lon.min()), float(lat.min()), float(lon.max()), float(lat.max()))
    here = (opened(info.auth_name, info.code).crs for info in registered(around, 0.0)[:MOST_TRIED])
    for crs in chain(family(plan, box), here):
        if _near(crs, moved[0], float(lon[0]), float(lat[0])) and not same_plan(crs, plan):
            yield crs


def _near(crs: Any, place: np.ndarray, lon: float, lat: float) -> bool:
    """Whether a place of ``crs`` lies within 0.03 degrees of another, whatever its datum."""
    try:
        there_lon, there_lat = (float(values[0]) for values in to_lonlat(crs, place[:1], place[1:2]))
    except ProjError:  # PROJ has no formulas for it
        return False
    return abs(there_lon - lon) * np.cos(np.radians(lat)) < NEAR_DEGREES and abs(there_lat - lat) < NEAR_DEGREES


def _brought(source: Any, target: Any, places: np.ndarray) -> Optional[np.ndarray]:
    """Places (n, 2), metres, of ``source`` in ``target``; None where there are none."""
    try:
        first = Transformer.from_crs(source, target, always_xy=True)
        east, north = first.transform(*(places / metres_per_unit(source)).T)
    except ProjError:
        return None
    found = np.column_stack((east, north)) * metres_per_unit(target)
    return found if np.isfinite(found).all() else None


def _apart(one: np.ndarray, other: np.ndarray) -> float:
    return float(np.median(np.hypot(*(one - other).T)))


def _metres_between(plan: Any, one: np.ndarray, other: np.ndarray) -> float:
    """Distance of the middles of two sets of places of a CRS."""
    return float(np.hypot(*(one.mean(axis=0) - other.mean(axis=0))))
