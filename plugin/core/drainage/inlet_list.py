"""Inlets with names: from a file, and the triangles whose water they take."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any, Callable, Dict, Iterator, List, Optional, Sequence, Tuple

import numpy as np

from ..files import PathLike, read_table
from ..georeference.axes import same_plan
from ..linework.geojson_file import features_of, geometry_of, parsed, positions, properties_of, system_of
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..surface.tin import Tin
from ..units import metres_per_unit
from .inlets import inlet_triangles, line_triangles

CANNOT_READ = Text(
    "inlets.cannot_read", QT_TRANSLATE_NOOP("core", "{file}: the inlets cannot be read ({reason}); check the path.")
)
NOT_TEXT = Text("inlets.not_text", QT_TRANSLATE_NOOP("core", "{file} line {line}: this is no text; save it as CSV."))
NO_COLUMN = Text(
    "inlets.no_column",
    QT_TRANSLATE_NOOP(
        "core",
        "{file} line {line}: the column '{column}' is missing; the first line names the columns name, easting, "
        "northing and, where known, runoff.",
    ),
)
BAD_NUMBER = Text(
    "inlets.bad_number", QT_TRANSLATE_NOOP("core", "{file} line {line}: {column} '{found}' is no number; mend it.")
)
BAD_RUNOFF = Text(
    "inlets.bad_runoff",
    QT_TRANSLATE_NOOP(
        "core", "{file}: the runoff coefficient of inlet '{name}' is {found}; it is above 0 and at most 1."
    ),
)
NONE = Text("inlets.none", QT_TRANSLATE_NOOP("core", "{file}: there is no inlet in this file."))
BAD_JSON = Text(
    "inlets.bad_json",
    QT_TRANSLATE_NOOP(
        "core", "{file}: this is no GeoJSON of points or lines ({reason}); export the layer of inlets as GeoJSON."
    ),
)
OTHER_CRS = Text(
    "inlets.other_crs",
    QT_TRANSLATE_NOOP(
        "core", "{file}: the inlets are in {found}, the surface in {wanted}; reproject them or give them as CSV."
    ),
)
TAKES_NONE = Text(
    "inlets.takes_none",
    QT_TRANSLATE_NOOP(
        "core", "Inlets that take no water, because they are off the surface or another one is nearer: {names}."
    ),
)


@dataclass(frozen=True)
class Inlet:
    """``parts``: places (q, 2) in metres of the CRS, a single one for a point, else a line. ``runoff``: the runoff
    coefficient of its catchment, nan where not known. ``line``: of the file, 0 if it comes from none."""

    name: str
    parts: Tuple[np.ndarray, ...]
    runoff: float = math.nan
    line: int = 0


def read_inlets(path: PathLike, crs: Optional[Any] = None) -> Tuple[Inlet, ...]:
    """Inlets of a CSV file (columns name, easting, northing, runoff) or a GeoJSON file of points or lines (properties
    name and runoff), in ``crs`` and its unit; metres for None. Raises SurveyError for what cannot be read."""
    if Path(path).suffix.lower() in (".geojson", ".json"):
        inlets = tuple(_from_geojson(path, crs))
    else:
        inlets = tuple(_from_table(path, metres_per_unit(crs)))
    if not inlets:
        raise SurveyError(NONE, file=str(path))
    for inlet in inlets:
        if not (math.isnan(inlet.runoff) or 0 < inlet.runoff <= 1):
            raise SurveyError(BAD_RUNOFF, file=str(path), name=inlet.name, found=inlet.runoff)
    return inlets


def inlets_on(tin: Tin, inlets: Sequence[Inlet], reach: float = 0.0) -> Tuple[np.ndarray, Tuple[Message, ...]]:
    """The number of the inlet (m,) int32 that takes the water of each triangle, -1 none, and what is to be said.

    ``reach``: as for ``inlet_triangles``. Points go before lines; of two lines the first takes a triangle.
    """
    points = [(i, part) for i, inlet in enumerate(inlets) for part in inlet.parts if len(part) == 1]
    xy = np.concatenate([part for _, part in points] or [np.empty((0, 2))])
    near = inlet_triangles(tin, xy, reach)
    owner = np.array([i for i, _ in points] or [-1], np.int32)
    taken = np.where(near >= 0, owner[near.clip(min=0)], -1).astype(np.int32)
    for i, inlet in enumerate(inlets):
        for part in inlet.parts:
            if len(part) > 1:
                own = line_triangles(tin, part, math.inf, reach) >= 0
                taken[own & (taken < 0)] = i
    without = [inlet.name for i, inlet in enumerate(inlets) if not np.any(taken == i)]
    return taken, (message(TAKES_NONE, names=", ".join(without)),) if without else ()


def in_stretches(inlets: Sequence[Inlet], length: float) -> Tuple[Inlet, ...]:
    """Every line cut into inlets of ``length`` metres, each around its station: name + distance from the beginning.

    Points stay. The first and the last stretch are shorter, as stations are at whole multiples of ``length``.
    """
    result: List[Inlet] = []
    for inlet in inlets:
        for part in inlet.parts:
            if len(part) == 1:
                result.append(replace(inlet, parts=(part,)))
            else:
                result += _stretches(replace(inlet, parts=(part,)), length)
    return tuple(result)


def _stretches(inlet: Inlet, length: float) -> Iterator[Inlet]:
    (line,) = inlet.parts
    at = np.append(0.0, np.cumsum(np.hypot(*np.diff(line, axis=0).T)))
    for i in range(int(np.floor(at[-1] / length + 0.5)) + 1):
        low, high = max(0.0, (i - 0.5) * length), min(at[-1], (i + 0.5) * length)
        if high > low:
            inner = at[(at > low) & (at < high)]
            where = np.concatenate([[low], inner, [high]])
            place = np.column_stack([np.interp(where, at, line[:, axis]) for axis in (0, 1)])
            yield replace(inlet, name=f"{inlet.name} {i * length:g} m", parts=(place,))


# ------------------------------------------------------------------------------------------- files


def _from_table(path: PathLike, metres: float) -> Iterator[Inlet]:
    rows = read_table(path, CANNOT_READ, NOT_TEXT)
    if not rows:
        raise SurveyError(NONE, file=str(path))
    first, head = rows[0]
    columns = [cell.lower() for cell in head]
    for column in ("easting", "northing"):
        if column not in columns:
            raise SurveyError(NO_COLUMN, file=str(path), line=first, column=column)
    for number, (line, cells) in enumerate(rows[1:], 1):
        cell = dict(zip(columns, cells))
        east, north = (_number(path, line, name, cell.get(name, "")) for name in ("easting", "northing"))
        runoff = cell.get("runoff", "")
        yield Inlet(
            cell.get("name", "") or str(number),
            (np.array([[east, north]]) * metres,),
            _number(path, line, "runoff", runoff) if runoff else math.nan,
            line,
        )


def _number(path: PathLike, line: int, column: str, found: str) -> float:
    try:
        value = float(found.replace(",", "."))
    except ValueError:
        value = math.nan
    if not math.isfinite(value):
        raise SurveyError(BAD_NUMBER, file=str(path), line=line, column=column, found=found)
    return value


def _from_geojson(path: PathLike, crs: Optional[Any]) -> Iterator[Inlet]:
    """A file in another system is refused."""
    file, data = str(path), parsed(path)
    own, metres = system_of(file, data, crs), metres_per_unit(crs)
    if crs is not None and own is not None and not same_plan(own, crs):
        raise SurveyError(OTHER_CRS, file=file, found=own.name, wanted=str(crs.name))
    for number, feature in enumerate(features_of(data), 1):
        told = properties_of(feature)
        runoff = told.get("runoff")
        try:
            parts = tuple(part * metres for part in _parts(*geometry_of(feature)))
            share = math.nan if runoff is None else float(runoff)
        except (TypeError, ValueError) as error:
            raise SurveyError(BAD_JSON, file=file, reason=f"{type(error).__name__}: {error}") from error
        if parts:
            yield Inlet(str(told.get("name") or number), parts, share)


def _parts(kind: Optional[str], places: Any) -> Iterator[np.ndarray]:
    """Points (1, 2) and lines (k, 2) of a geometry. Raises TypeError or ValueError for what is neither."""
    if kind is None:
        return
    parts: Dict[str, Callable[[Any], Any]] = {
        "Point": lambda place: [[place]],
        "MultiPoint": lambda several: [[place] for place in several],
        "LineString": lambda line: [line],
        "MultiLineString": lambda several: several,
    }
    if kind not in parts:
        raise ValueError(kind)
    for part in parts[kind](places):
        xy = positions(part)
        if len(xy):
            yield xy
