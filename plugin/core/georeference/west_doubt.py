"""Whether longitudes without a sign count to the west, by what is known beside a survey: layers, control, other files.

The area of use of the CRS and the words of the file are asked where it is read (:mod:`..points.angle_forms`).
"""

from __future__ import annotations

from typing import Any, Optional, Sequence

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..points.angle_forms import west_question
from ..points.pointfile import PointFile
from ..points.questions import QuestionError
from .crs_doubt import CLOSER, TELL, project_box
from .intake_options import IntakeOptions
from .position import QUOTED, Kind, Landmark, Site

PROJECT_CRS = Text("west_doubt.project", QT_TRANSLATE_NOOP("core", "the area of use of the CRS of the project"))


def ask_of_west(read: PointFile, options: IntakeOptions, others: Sequence[Landmark] = ()) -> Optional[QuestionError]:
    """The question whether the longitudes of a file, all without a sign or letter, count to the west, where what is
    known beside it lies far away, and close by if they do; None where nothing says so or the user has said it.
    ``others``: other files of the survey.
    """
    if read.geographic is None or not read.unsigned or options.angles is not None:
        return None
    lon, lat = (values[np.isfinite(values)] for values in (read.geographic.longitude, read.geographic.latitude))
    if not len(lon) or not len(lat):
        return None
    middle = (float(np.median(lon)), float(np.median(lat)))
    why = _speaks_for_west(_site(*middle), (*options.landmarks, *others), options.project)
    if why is None:
        return None
    column = read.format.columns.get("longitude", 0)
    return QuestionError(read.points.source, [west_question(column, why, middle[0])])


def _site(lon: float, lat: float) -> Site:
    return Site(lon, lat, (lon, lat, lon, lat), None)


def _speaks_for_west(site: Site, landmarks: Sequence[Landmark], project: Optional[Any]) -> Optional[Message]:
    """What lies far from the site and close to its mirror image in the west, None where nothing does."""
    mirrored = _site(-site.lon, site.lat)
    for same in (True, False):
        known = [one for one in landmarks if one.kind.same_site is same]
        near = site.beside(known)[:1]
        if near and near[0].metres >= TELL[same]:
            there = mirrored.beside(known)[0]
            if there.metres < CLOSER * near[0].metres:
                name = there.landmark.name
                return message(QUOTED, name=name) if isinstance(name, str) else message(name)
    box = project_box(project)
    if landmarks or box is None:
        return None
    area = [Landmark("", Kind.LAYER, *box)]
    far = site.beside(area)[0].metres >= TELL[False] and mirrored.beside(area)[0].metres == 0.0
    return message(PROJECT_CRS) if far else None
