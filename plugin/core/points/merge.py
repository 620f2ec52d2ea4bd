"""Several files of one site (days, rovers) as one survey, nothing dropped and every clash told."""

from __future__ import annotations

import os
from dataclasses import dataclass, replace
from functools import reduce
from itertools import combinations
from typing import Any, Dict, List, Optional, Sequence, Tuple

import numpy as np
from scipy.spatial import cKDTree

from ..messages import QT_TRANSLATE_NOOP, Figure, Message, SurveyError, Text, message
from .delimited import PointFile
from .geographic import GeographicPoints, HeightKind
from .pointset import COLUMNS, SOURCE, PointSet
from .rejects import LineAccount, Rejects
from .stack import stack_extra, stack_geographic

NOTHING = Text("merge.nothing", QT_TRANSLATE_NOOP("core", "There is no survey file to merge; give at least one."))
OTHER_CRS = Text(
    "merge.other_crs",
    QT_TRANSLATE_NOOP(
        "core", "{file}: is in {crs}, but {first} is in {first_crs}; transform one of them before they are merged."
    ),
)
OTHER_POSITIONS = Text(
    "merge.other_positions",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: holds positions in degrees and {first} in lengths, or the other way round; transform the degrees "
        "before they are merged.",
    ),
)
OTHER_HEIGHTS = Text(
    "merge.other_heights",
    QT_TRANSLATE_NOOP(
        "core", "{file}: its heights are {heights}, those of {first} {first_heights}; bring them to one kind first."
    ),
)
TWICE = Text("merge.twice", QT_TRANSLATE_NOOP("core", "{file}: is given twice; give each file once."))
LOCAL_GRID = Text("merge.local_grid", QT_TRANSLATE_NOOP("core", "a local grid"))
NAME_CLASHES = Text(
    "merge.name_clashes",
    QT_TRANSLATE_NOOP(
        "core", "{count} point names occur in more than one file, such as '{name}'; all points are kept."
    ),
    one=QT_TRANSLATE_NOOP("core", "The point name '{name}' occurs in more than one file; all points are kept."),
)
HEIGHTS_DIFFER = Text(
    "merge.heights_differ",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} pairs of points of {first} and {second} lie within {distance_m} m and differ in height by more than "
        "{height_m} m, on average by {mean_m} m, at most by {most_m} m.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "A point of {first} and one of {second} lie within {distance_m} m and differ in height by {most_m} m,"
        " more than {height_m} m.",
    ),
)


@dataclass(frozen=True)
class NameClash:
    """A name in more than one file; ``points``: rows of the merged set."""

    name: str
    points: np.ndarray


@dataclass(frozen=True)
class HeightDifferences:
    """Points of different files at the same place with different heights.

    ``first``, ``second``: (k,) rows of the merged set, of the earlier file first; ``distance``: (k,) metres in plan;
    ``rise``: (k,) metres, second minus first.
    """

    first: np.ndarray
    second: np.ndarray
    distance: np.ndarray
    rise: np.ndarray

    def __len__(self) -> int:
        return len(self.first)


@dataclass(frozen=True)
class Merged:
    """One survey of several files. ``points``: all points, file after file, with the extra column ``source``, and
    ``source_line`` within that file. ``sources``: the name of each file in that column. ``account``: of all lines.
    """

    points: PointSet
    rejects: Rejects
    account: LineAccount
    sources: Tuple[str, ...]
    clashes: Tuple[NameClash, ...]
    height_differences: HeightDifferences
    messages: Tuple[Message, ...]
    geographic: Optional[GeographicPoints] = None


def merge_files(files: Sequence[PointFile], *, same_place: float = 0.02, same_height: float = 0.03) -> Merged:
    """Merge files that were read with the same CRS.

    ``same_place``: metres in plan within which two points of different files are at the same place;
    ``same_height``: metres by which their heights may differ without being listed. For each point the nearest one
    of each other file counts. Raises SurveyError for files of different CRSs or kinds, and for a file given twice.
    """
    _check_alike(files)
    names = _names(files)
    points = _stack(files, names)
    ends = np.cumsum([0] + [len(file.points) for file in files])
    clashes = _clashes(points, np.repeat(np.arange(len(files)), np.diff(ends)))
    geographic = stack_geographic(files)
    differences, notes = _height_differences(points, geographic, ends, names, same_place, same_height)
    if clashes:
        notes.insert(0, message(NAME_CLASHES, count=len(clashes), name=clashes[0].name))
    account = reduce(lambda total, file: total + file.account, files[1:], files[0].account)
    rejects = _stack_rejects(files, names)
    if account.points != len(points) or account.rejects != len(rejects):
        raise RuntimeError(f"{len(points)} points and {len(rejects)} rejects were merged, but {account} was read")
    said = tuple(note for file in files for note in file.messages)
    return Merged(points, rejects, account, names, clashes, differences, (*said, *notes), geographic)


def _check_alike(files: Sequence[PointFile]) -> None:
    if not files:
        raise SurveyError(NOTHING)
    first, seen = files[0], set()
    for file in files:
        path = os.path.realpath(file.points.source)
        if path in seen:
            raise SurveyError(TWICE, file=file.points.source)
        seen.add(path)
        where = {"file": file.points.source, "first": first.points.source}
        if (file.geographic is None) != (first.geographic is None):
            raise SurveyError(OTHER_POSITIONS, **where)
        if file.geographic is not None and first.geographic is not None:
            kinds = {file.geographic.heights, first.geographic.heights}
            if kinds == {HeightKind.ELLIPSOIDAL, HeightKind.ORTHOMETRIC}:
                raise SurveyError(
                    OTHER_HEIGHTS, heights=file.geographic.heights.value, first_heights=first.geographic.heights.value,
                    **where,
                )  # fmt: skip
        elif not _same_crs(file.points.crs, first.points.crs):
            raise SurveyError(OTHER_CRS, crs=_said(file.points.crs), first_crs=_said(first.points.crs), **where)


def _same_crs(one: Optional[Any], other: Optional[Any]) -> bool:
    return one is other or (one is not None and other is not None and bool(one == other))


def _said(crs: Optional[Any]) -> Any:
    return LOCAL_GRID if crs is None else crs.name


def _names(files: Sequence[PointFile]) -> Tuple[str, ...]:
    """The file names without folders where they differ, else the paths."""
    paths = [file.points.source for file in files]
    short = [os.path.basename(path) for path in paths]
    return tuple(short if len(set(short)) == len(short) else paths)


def _stack(files: Sequence[PointFile], names: Sequence[str]) -> PointSet:
    columns = {key: np.concatenate([getattr(file.points, key) for file in files]) for key in COLUMNS}
    extra: Dict[str, np.ndarray] = {}
    for name in dict.fromkeys(name for file in files for name in file.points.extra):
        extra[_free_name(name)] = stack_extra([file.points for file in files], name)
    source = np.concatenate([np.full(len(file.points), name, object) for file, name in zip(files, names)])
    extra[SOURCE] = source
    return replace(files[0].points, extra=extra, source=" + ".join(names), **columns)


def _free_name(name: str) -> str:
    """A column of the file that is called source gets another name."""
    return f"{name}_in_file" if name.lower() == SOURCE else name


def _stack_rejects(files: Sequence[PointFile], names: Sequence[str]) -> Rejects:
    return Rejects(
        np.concatenate([file.rejects.line for file in files]),
        np.concatenate([file.rejects.text for file in files]),
        tuple(reason for file in files for reason in file.rejects.reason),
        np.concatenate([np.full(len(file.rejects), name, object) for file, name in zip(files, names)]),
    )


def _clashes(points: PointSet, file: np.ndarray) -> Tuple[NameClash, ...]:
    """Names that occur in more than one file, in the order in which they first occur."""
    named = np.flatnonzero(points.name != "")
    if not len(named) or len(np.unique(file)) < 2:
        return ()
    _, which = np.unique(points.name[named].astype(str), return_inverse=True)
    which = which.reshape(-1)
    count = int(which.max()) + 1
    least, most = np.full(count, np.iinfo(np.int64).max), np.full(count, -1)
    np.minimum.at(least, which, file[named])
    np.maximum.at(most, which, file[named])
    shared = least < most
    rows = named[shared[which]]
    order = np.argsort(which[shared[which]], kind="stable")
    groups = np.split(rows[order], np.flatnonzero(np.diff(which[shared[which]][order])) + 1) if len(rows) else []
    groups.sort(key=lambda group: int(group[0]))
    return tuple(NameClash(str(points.name[group[0]]), group) for group in groups)


def _height_differences(
    points: PointSet, geographic: Optional[GeographicPoints], ends: np.ndarray, names: Sequence[str],
    same_place: float, same_height: float,
) -> Tuple[HeightDifferences, List[Message]]:  # fmt: skip
    plan = _plan(points, geographic)
    placed = points.used & np.isfinite(plan).all(axis=1)
    rows = [ends[i] + np.flatnonzero(placed[ends[i] : ends[i + 1]]) for i in range(len(names))]
    trees = [cKDTree(plan[some]) if len(some) else None for some in rows]
    found: List[Tuple[np.ndarray, ...]] = []
    notes: List[Message] = []
    for i, j in combinations(range(len(names)), 2):
        tree = trees[i]
        if tree is None or trees[j] is None:
            continue
        distance, near = tree.query(plan[rows[j]], distance_upper_bound=same_place)
        close = np.flatnonzero(np.isfinite(distance))
        first, second, distance = rows[i][near[close]], rows[j][close], distance[close]
        rise = points.height[second] - points.height[first]
        differ = np.abs(rise) > same_height
        if differ.any():
            found.append((first[differ], second[differ], distance[differ], rise[differ]))
            notes.append(
                message(
                    HEIGHTS_DIFFER, count=int(differ.sum()), first=names[i], second=names[j],
                    distance_m=Figure(f"{same_place:g}"), height_m=Figure(f"{same_height:g}"),
                    mean_m=Figure(f"{rise[differ].mean():.3f}"),
                    most_m=Figure(f"{np.abs(rise[differ]).max():.3f}"),
                )
            )  # fmt: skip
    if not found:
        nothing = np.zeros(0, np.int64)
        return HeightDifferences(nothing, nothing, np.zeros(0), np.zeros(0)), notes
    return HeightDifferences(*(np.concatenate(column) for column in zip(*found))), notes


def _plan(points: PointSet, geographic: Optional[GeographicPoints]) -> np.ndarray:
    """Plan coordinates (n, 2), metres; for degrees on a sphere around their middle, which does for centimetres."""
    if geographic is None:
        return np.column_stack([points.easting, points.northing])
    metres = np.radians(1.0) * 6_371_000.0
    lat0, lon0 = float(np.median(geographic.latitude)), float(np.median(geographic.longitude))
    east = (geographic.longitude - lon0 + 180.0) % 360.0 - 180.0
    return np.column_stack([east * metres * np.cos(np.radians(lat0)), (geographic.latitude - lat0) * metres])
