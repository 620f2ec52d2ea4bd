"""Operations of PROJ between two CRSs: which there are, and which one to take.

PROJ has several operations between two datums and silently takes a coarse one where the grid file of a
better one is not installed. Here that is refused until the user accepts the coarse one by its name.
Nothing is fetched from the network.
"""

from __future__ import annotations

import shlex
import warnings
from contextlib import contextmanager
from dataclasses import dataclass, field
from typing import Any, Iterator, List, NamedTuple, Optional, Sequence, Tuple, Union

import numpy as np
from pyproj import network
from pyproj.transformer import AreaOfInterest, TransformerGroup

from ..files import NOT_KEPT
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..points.geographic import HeightKind
from ..units import metres_per_height_unit, metres_per_unit
from .axes import flat, from_degrees, from_lonlat, has_heights
from .record import crs_name
from .whereabouts import Box, in_area

NO_OPERATION = Text(
    "transform.no_operation",
    QT_TRANSLATE_NOOP("core", "PROJ knows no way from {source} to {target}; choose another CRS."),
)
BALLPARK = Text(
    "transform.ballpark",
    QT_TRANSLATE_NOOP(
        "core",
        "From {source} to {target} PROJ has only a ballpark operation here, which may be wrong by many metres. If "
        "that will do, accept it by its name: {typed}.",
    ),
)
BALLPARK_LACKING = Text(
    "transform.ballpark_lacking",
    QT_TRANSLATE_NOOP(
        "core",
        "From {source} to {target} PROJ has only a ballpark operation here, which may be wrong by many metres: "
        "'{best}' needs {grids}, not installed here. Install the file, or accept the ballpark operation by its name: "
        "{typed}.",
    ),
)
MISSING_GRID = Text(
    "transform.missing_grid",
    QT_TRANSLATE_NOOP(
        "core",
        "From {source} to {target} the best operation needs {grids}, not installed here: '{best}' "
        "(accuracy {best_accuracy}). Install the file, or accept by its name the operation that can be used "
        "(accuracy {accuracy}): {typed}.",
    ),
)
ONLY_MISSING = Text(
    "transform.only_missing",
    QT_TRANSLATE_NOOP(
        "core",
        "From {source} to {target} every operation needs a file not installed here: {grids}. Install it.",
    ),
)
NOT_ACCEPTABLE = Text(
    "transform.not_acceptable",
    QT_TRANSLATE_NOOP(
        "core",
        "The operation accepted by name, '{accepted}', needs {grids}, not installed here. Install the file, or "
        "accept another one.",
    ),
)
DONE = Text(
    "transform.done",
    QT_TRANSLATE_NOOP(
        "core",
        "Positions transformed from {source} to {target} by the PROJ operation '{name}'; accuracy stated by PROJ: "
        "{accuracy}.",
    ),
)
OF_FILE = Text("transform.of_file", QT_TRANSLATE_NOOP("core", "{file}: {said}"))
ACCEPTED = Text(
    "transform.accepted",
    QT_TRANSLATE_NOOP("core", "This operation is not the best one known; the user accepted it by its name."),
)
UNKNOWN_ACCURACY = Text("transform.unknown_accuracy", QT_TRANSLATE_NOOP("core", "unknown"))
GRID_FILE = Text("transform.grid_file", QT_TRANSLATE_NOOP("core", "a grid file"))


#: Appended by PROJ 9.2 and later.
AXES_SAID = " (with axis order normalized for visualization)"


@dataclass(frozen=True)
class Operation:
    """A coordinate operation of PROJ.

    ``accuracy_m``: metres as PROJ states it, None where it states none. ``area``: west, south, east, north in
    degrees or None. ``missing_grids``: files it needs that are not installed; such an operation has no
    ``transformer``. ``definition``: PROJ string where there is one.
    """

    name: str
    accuracy_m: Optional[float]
    area_name: str
    area: Optional[Box]
    ballpark: bool
    missing_grids: Tuple[str, ...]
    definition: str
    transformer: Optional[Any] = field(default=None, repr=False, compare=False, metadata=NOT_KEPT)

    @property
    def accuracy_text(self) -> Union[str, Text]:
        """Accuracy with its unit, or the text that says it is unknown."""
        return UNKNOWN_ACCURACY if self.accuracy_m is None else f"{self.accuracy_m:g} m"

    def run(self, x: np.ndarray, y: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
        """Plan coordinates (n,) brought over, x before y, each in the units of its CRS; inf where there are none."""
        assert self.transformer is not None, "only an operation that is ready can be run"
        with without_network():
            east, north = self.transformer.transform(x, y)
        return np.asarray(east, float), np.asarray(north, float)

    def run_with_heights(
        self, x: np.ndarray, y: np.ndarray, z: np.ndarray
    ) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
        """As :meth:`run`, with heights (n,); one that is nan stays so and does not spoil its position."""
        assert self.transformer is not None, "only an operation that is ready can be run"
        known = np.isfinite(z)
        with without_network():
            east, north, up = self.transformer.transform(x, y, np.where(known, z, 0.0))
        return np.asarray(east, float), np.asarray(north, float), np.where(known, up, np.nan)

    def covers(self, box: Optional[Box]) -> bool:
        """Whether the middle of ``box`` (west, south, east, north in degrees) lies in its area."""
        if self.area is None or box is None:
            return True
        west, south, east, north = box
        lon = (west + (east if east >= west else east + 360.0)) / 2.0
        return bool(in_area(self.area, np.array([lon]), np.array([(south + north) / 2.0]))[0])


class Operations(NamedTuple):
    """Operations between two CRSs, best first as PROJ sorts them: ready to use, and lacking a grid file."""

    ready: Tuple[Operation, ...]
    lacking: Tuple[Operation, ...]


class Choice(NamedTuple):
    """The operation to use, and whether it took the user's word to use it."""

    operation: Operation
    accepted: bool


@contextmanager
def without_network() -> Iterator[None]:
    """PROJ fetches nothing inside."""
    before = network.is_network_enabled()
    network.set_network_enabled(active=False)
    try:
        yield
    finally:
        network.set_network_enabled(active=before)


def find_operations(source: Any, target: Any, box: Optional[Box] = None) -> Operations:
    """Operations from ``source`` to ``target`` that touch ``box`` (west, south, east, north in degrees)."""
    with without_network(), warnings.catch_warnings():
        warnings.simplefilter("ignore")  # of missing grids: they are returned
        group = TransformerGroup(
            source, target, always_xy=True, area_of_interest=None if box is None else AreaOfInterest(*box)
        )
        ready = tuple(_ready(transformer, source, target, box) for transformer in group.transformers)
        lacking = tuple(_lacking(operation) for operation in group.unavailable_operations)
    return Operations(ready, lacking)


def plain_name(name: str) -> str:
    """Without the steps that only exchange axes, and what later versions of PROJ say of them."""
    name = name.replace(AXES_SAID, "")
    steps = [step for step in name.split(" + ") if not step.startswith("axis order change")]
    return " + ".join(steps) or name


def _accuracy(value: Any) -> Optional[float]:
    return None if value is None or not value >= 0 else float(value)


def _area(described: Any) -> Tuple[str, Optional[Box]]:
    area = described.area_of_use
    if area is None:
        return "", None
    return str(area.name or ""), (area.west, area.south, area.east, area.north)


def _ready(transformer: Any, source: Any, target: Any, box: Optional[Box]) -> Operation:
    parts = transformer.operations or ()
    name = transformer.description
    ballpark = "ballpark" in name.lower() or any(part.has_ballpark_transformation for part in parts)
    ballpark = ballpark or _loses_heights(transformer, source, target, box)
    accuracy = _accuracy(transformer.accuracy)
    if accuracy is None and parts and all(part.type_name == "Conversion" for part in parts):
        accuracy = 0.0  # projections alone; not all versions of PROJ state it
    area_name, area = _area(transformer)
    return Operation(
        plain_name(name), accuracy, area_name, area, ballpark, (), str(transformer.definition), transformer
    )


def _loses_heights(transformer: Any, source: Any, target: Any, box: Optional[Box]) -> bool:
    """Whether heights pass unchanged though the two CRSs count them from different levels.

    PROJ 7 does so without a word where a geoid grid is missing.
    """
    levels = [_level(crs) for crs in (source, target)]
    if None in levels or levels[0] == levels[1] or box is None:
        return False
    lon, lat = (np.array([box[i]]) for i in (0, 1))
    plan = flat(source)
    if plan.is_geographic:
        x, y = from_degrees(plan, lon, lat)
    else:
        x, y = (values / metres_per_unit(plan) for values in from_lonlat(plan, lon, lat))
    up = transformer.transform(x, y, np.array([100.0 / metres_per_height_unit(source)]))[2]
    return bool(abs(up[0] * metres_per_height_unit(target) - 100.0) < 1e-6)


def _level(crs: Any) -> Optional[str]:
    """What heights of ``crs`` are counted from, None where it does not say."""
    if not has_heights(crs):
        return None
    parts = crs.sub_crs_list
    return str(parts[1].name) if len(parts) > 1 else HeightKind.ELLIPSOIDAL.value


def _lacking(operation: Any) -> Operation:
    missing = tuple(grid.short_name for grid in operation.grids if not grid.available)
    area_name, area = _area(operation)
    return Operation(
        plain_name(operation.name), _accuracy(operation.accuracy), area_name, area,
        operation.has_ballpark_transformation, missing, "",
    )  # fmt: skip


def choose_operation(source: Any, target: Any, box: Optional[Box] = None, accept: Sequence[str] = ()) -> Choice:
    """The operation to take from ``source`` to ``target`` for positions in ``box`` (degrees).

    ``accept``: names of operations (:attr:`Operation.name`) that the user takes though they are ballpark, or
    though a better one lacks its grid file. Raises SurveyError where the user has to decide.
    """
    ready, lacking = find_operations(source, target, box)
    names = {"source": crs_name(source), "target": crs_name(target)}
    wanted = [_folded(name) for name in accept]
    if not ready:
        if not lacking:
            raise SurveyError(NO_OPERATION, **names)
        raise SurveyError(ONLY_MISSING, grids=", ".join(lacking[0].missing_grids), **names)
    best = ready[0]
    better = [operation for operation in lacking if operation.covers(box) and _is_better(operation, best)]
    if not best.ballpark and not better:
        return Choice(_named(ready, wanted) or best, False)
    accepted = _named(ready, wanted)
    if accepted is not None:
        return Choice(accepted, accepted.ballpark or any(_is_better(other, accepted) for other in better))
    refused = _named(lacking, wanted)
    if refused is not None:
        raise SurveyError(NOT_ACCEPTABLE, accepted=refused.name, grids=", ".join(refused.missing_grids))
    raise _refusal(best, better, names)


def _folded(name: str) -> str:
    return plain_name(" ".join(name.split())).casefold()


def _named(operations: Sequence[Operation], wanted: Sequence[str]) -> Optional[Operation]:
    return next((operation for operation in operations if _folded(operation.name) in wanted), None)


def _is_better(operation: Operation, than: Operation) -> bool:
    if than.ballpark != operation.ballpark:
        return than.ballpark
    if operation.accuracy_m is None:
        return False
    return than.accuracy_m is None or operation.accuracy_m < than.accuracy_m


def _refusal(best: Operation, better: List[Operation], names: Any) -> SurveyError:
    names = {"typed": f"--accept {shlex.quote(best.name)}", **names}
    if best.ballpark:
        if not better:
            return SurveyError(BALLPARK, name=best.name, **names)
        grids = ", ".join(better[0].missing_grids) or GRID_FILE
        return SurveyError(BALLPARK_LACKING, name=best.name, best=better[0].name, grids=grids, **names)
    first = min(better, key=lambda operation: np.inf if operation.accuracy_m is None else operation.accuracy_m)
    return SurveyError(
        MISSING_GRID, grids=", ".join(first.missing_grids) or GRID_FILE, best=first.name,
        best_accuracy=first.accuracy_text, accuracy=best.accuracy_text, name=best.name, **names,
    )  # fmt: skip


def operation_said(choice: Choice, source: Any, target: Any) -> Tuple[Message, ...]:
    """By which operation positions came from ``source`` to ``target``, with its accuracy, and who wanted it."""
    operation = choice.operation
    done = message(
        DONE, source=crs_name(source), target=crs_name(target), name=operation.name, accuracy=operation.accuracy_text
    )
    return (done, message(ACCEPTED)) if choice.accepted else (done,)
