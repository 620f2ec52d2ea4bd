"""Points and rejects as CSV tables."""

from __future__ import annotations

from typing import Any, Callable, Dict, Iterable, List

import numpy as np

from ..files import PathLike, TableWriter, replace_file
from ..progress import Progress, silent
from ..units import heights_to_crs_units, to_crs_units
from .decisions import STATUS_WORDS, words_of_reasons
from .layout import new_name
from .pointset import FIX_UNKNOWN, PointSet
from .rejects import Rejects

#: Coordinates are written to the micrometre, which leaves them as they were read.
_DECIMALS = 6
_BLOCK = 50_000


def write_points(points: PointSet, path: PathLike, progress: Progress = silent) -> None:
    """Write all points with every column: easting, northing, sigma_h in plan units of the CRS, height and
    sigma_v in its height units, time as ISO 8601 UTC, status and reason as words, ``line`` the line of
    the file they were read from. Unknown values are empty. :func:`.delimited.read_points` reads it
    again, :func:`.decisions.read_decisions` takes its statuses. Raises SurveyError when it can't be written.
    """
    columns = _columns(points)
    with replace_file(path) as temporary, open(temporary, "w", encoding="utf-8", newline="") as stream:
        writer = TableWriter(stream)
        writer.writerow(columns)
        for start in range(0, len(points), _BLOCK):
            progress(start / len(points), "files")
            rows = slice(start, start + _BLOCK)
            writer.writerows(zip(*(words(rows) for words in columns.values())))


def write_rejects(rejects: Rejects, path: PathLike, translate: Callable[[str], str] = str) -> None:
    """Write line, text and reason of each reject, and its file where there are several.

    Raises SurveyError when it can't be written.
    """
    with replace_file(path) as temporary, open(temporary, "w", encoding="utf-8", newline="") as stream:
        writer = TableWriter(stream)
        columns = {"line": rejects.line.tolist(), "text": rejects.text.tolist()}
        columns["reason"] = [reason.say(translate) for reason in rejects.reason]
        if rejects.source is not None:
            columns["source"] = rejects.source.tolist()
        writer.writerow(columns)
        writer.writerows(zip(*columns.values()))


def _columns(points: PointSet) -> Dict[str, Callable[[slice], Iterable[Any]]]:
    """For each header word what gives the words of some rows. The line comes first, as a line that
    starts with a name could look like a comment.
    """
    plan = {name: to_crs_units(getattr(points, name), points.crs) for name in ("easting", "northing", "sigma_h")}
    rise = {name: heights_to_crs_units(getattr(points, name), points.crs) for name in ("height", "sigma_v")}
    columns: Dict[str, Callable[[slice], Iterable[Any]]] = {
        "line": lambda rows: points.source_line[rows].tolist(),
        "name": lambda rows: points.name[rows],
        "easting": lambda rows: _numbers(plan["easting"][rows]),
        "northing": lambda rows: _numbers(plan["northing"][rows]),
        "height": lambda rows: _numbers(rise["height"][rows]),
        "code": lambda rows: points.code[rows],
        "sigma_h": lambda rows: _numbers(plan["sigma_h"][rows]),
        "sigma_v": lambda rows: _numbers(rise["sigma_v"][rows]),
        "fix": lambda rows: ["" if fix == FIX_UNKNOWN else fix for fix in points.fix[rows].tolist()],
        "tilt": lambda rows: _numbers(points.tilt[rows]),
        "time": lambda rows: _times(points.time[rows]),
        "status": lambda rows: [_STATUS[status] for status in points.status[rows].tolist()],
        "reason": lambda rows: [words_of_reasons(reasons) for reasons in points.reasons[rows].tolist()],
    }
    for name, values in points.extra.items():
        columns[new_name(name, list(columns))] = _extra(values)
    return columns


_STATUS = {int(status): word for word, status in STATUS_WORDS.items()}


def _extra(values: np.ndarray) -> Callable[[slice], Iterable[Any]]:
    if values.dtype.kind == "f":
        return lambda rows: _numbers(values[rows])
    return lambda rows: values[rows].tolist()


def _numbers(values: np.ndarray) -> List[Any]:
    """Whole numbers without decimals, others with as many as they need; nan as an empty field."""
    rounded = np.round(values, _DECIMALS).tolist()
    return ["" if value != value else int(value) if value.is_integer() else value for value in rounded]


def _times(seconds: np.ndarray) -> List[str]:
    known = np.isfinite(seconds)
    whole = np.where(known, np.round(seconds * 1000.0), 0).astype(np.int64)
    words = np.datetime_as_string(whole.astype("datetime64[ms]"), unit="ms")
    return [f"{word}Z" if fine else "" for word, fine in zip(words.tolist(), known.tolist())]
