"""A file shape read, its questions answered, and the outcome held against the truth."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any, Dict, Tuple

import numpy as np
from pyproj import CRS

from plugin.core.messages import SurveyError
from plugin.core.points.given import setting_of
from plugin.core.points.questions import Answer, QuestionError
from plugin.core.points.survey import read_survey
from plugin.core.units import LengthUnit
from tests.core.file_shapes import Shape

DEPTH = 4


def trial(shape: Shape, folder: Path) -> Tuple[str, str]:
    """What became of a shape, and what was said: "right", "asked" (and right with an answer offered), "stuck" (no
    answer offered gives what is meant) or "wrong".
    """
    path = folder / f"survey{shape.suffix}"
    path.write_bytes(shape.raw)
    options: Dict[str, Any] = {"geographic": True, "crs": None if shape.crs is None else CRS.from_epsg(shape.crs)}
    options.update(shape.options)
    if "unit" in shape.options:
        options["unit"] = LengthUnit(shape.options["unit"])
    first = _outcome(shape, path, options)
    if isinstance(first, str):
        return ("right", "") if not first else ("wrong", first)
    ended = _answered(shape, path, options, first, 0)
    return ("asked", str(first)) if not ended else ("stuck", f"{first}\n      {ended}")


def _outcome(shape: Shape, path: Path, options: Dict[str, Any]) -> Any:
    """ "" where all is right, else what is wrong, or the refusal."""
    try:
        read = read_survey(path, **options)
    except SurveyError as error:
        return error
    return difference(shape, read)


def difference(shape: Shape, read: Any) -> str:
    """What differs between the points of a file and the truth, "" for nothing."""
    points = read.points
    if (read.geographic is not None) != shape.geographic:
        return f"geographic {read.geographic is not None}"
    lines = points.source_line.tolist()
    if lines != sorted(shape.truth):
        odd = sorted(set(lines) ^ set(shape.truth))
        why = [str(reason) for reason in read.rejects.reason[:2]]
        return f"{len(lines)} points, {len(shape.truth)} expected; lines {odd[:6]} ({why})"
    plan = (
        (points.easting, points.northing)
        if read.geographic is None
        else (read.geographic.longitude, read.geographic.latitude)
    )
    found = np.column_stack([*plan, points.height])
    expected = np.array([shape.truth[line] for line in lines])
    off = np.abs(found - expected).max(axis=0)
    limit = np.array([shape.precision, shape.precision, 0.0011])
    if not (off <= limit).all():
        return f"coordinates off by {off}"
    if shape.codes is not None and points.code.tolist() != [shape.codes[line] for line in lines]:
        return f"codes {points.code[:3].tolist()}"
    if shape.names is not None and points.name.tolist() != [shape.names[line] for line in lines]:
        return f"names {points.name[:3].tolist()}"
    if shape.time is not None and not np.allclose(points.time, [shape.time[line] for line in lines], atol=0.01, rtol=0):
        return f"times {points.time[:2].tolist()}, {[shape.time[line] for line in lines[:2]]} expected"
    return ""


def _answered(shape: Shape, path: Path, options: Dict[str, Any], error: SurveyError, depth: int) -> str:
    """ "" where answers that the refusal offers lead to what is meant; else how that ends."""
    if depth == DEPTH:
        return "questions without end"
    if isinstance(error, QuestionError):
        question = error.questions[0]
        answers = [one for one in question.answers if _is_meant(shape, one)] or list(question.answers)
        if not question.answers:
            return f"no answer offered: {error}"
    else:
        named = [one for one in re.findall(r"--[a-z-]+", str(error)) if one in shape.meant]
        if not named:
            return f"names no option: {error}"
        answers = [Answer(named[0], shape.meant[named[0]], error.message)]
    ended = ""
    for answer in answers:
        name, value = setting_of(answer)
        after = _outcome(shape, path, {**options, name: value})
        if isinstance(after, SurveyError):
            after = _answered(shape, path, {**options, name: value}, after, depth + 1)
        if not after:
            return ""
        ended = ended or f"{answer.typed}: {after}"
    return ended


def _is_meant(shape: Shape, answer: Answer) -> bool:
    value = shape.meant.get(answer.option)
    return value is not None and value == answer.value
