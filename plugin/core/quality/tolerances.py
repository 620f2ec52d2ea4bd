"""What a single point must meet by what the receiver says of it: named sets, kept as JSON."""

from __future__ import annotations

import json
import os
from dataclasses import dataclass, fields
from typing import Any, Callable, Dict, List, Mapping, Optional, Sequence, Tuple

import numpy as np

from ..files import PathLike, replace_file
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..points.pointset import FIX_UNKNOWN, PointSet, Reason, Status
from ..points.words import read_word

CANNOT_READ = Text(
    "tolerances.cannot_read",
    QT_TRANSLATE_NOOP("core", "{file}: the tolerances cannot be read ({reason}); check the path and the file."),
)
NOT_JSON = Text(
    "tolerances.not_json", QT_TRANSLATE_NOOP("core", "{file}, line {line}: this is no JSON ({reason}); mend the line.")
)
NO_SETS = Text(
    "tolerances.no_sets",
    QT_TRANSLATE_NOOP(
        "core", "{file}: a list of tolerance sets is expected, each with a name; write [ and ] around them."
    ),
)
STRANGE_KEY = Text(
    "tolerances.strange_key",
    QT_TRANSLATE_NOOP("core", "{file}: set '{name}': '{key}' is no tolerance; use {keys}."),
)
BAD_VALUE = Text(
    "tolerances.bad_value",
    QT_TRANSLATE_NOOP("core", "{file}: set '{name}': {key} is {value}; it must be {wanted}."),
)
NAME_TWICE = Text(
    "tolerances.name_twice", QT_TRANSLATE_NOOP("core", "{file}: two sets are called '{name}'; rename one.")
)
KEY_TWICE = Text(
    "tolerances.key_twice",
    QT_TRANSLATE_NOOP("core", "{file}: '{key}' stands twice in one set; keep one of them."),
)
NOT_TEXT = Text(
    "tolerances.not_text",
    QT_TRANSLATE_NOOP("core", "{file}: the tolerances are no text in UTF-8; save the file in that encoding."),
)
TOO_DEEP = Text(
    "tolerances.too_deep",
    QT_TRANSLATE_NOOP("core", "{file}: brackets within brackets too deep for a list of tolerance sets; mend the file."),
)
WHICH_SET = Text(
    "tolerances.which_set",
    QT_TRANSLATE_NOOP("core", "{file} holds several tolerance sets; say by its name which one counts: {names}."),
)
ABOVE_ZERO = Text("tolerances.above_zero", QT_TRANSLATE_NOOP("core", "a number above 0, without quotation marks"))
WHOLE = Text("tolerances.whole", QT_TRANSLATE_NOOP("core", "a whole number from 1 up, without quotation marks"))
FIX_LIST = Text("tolerances.fix_list", QT_TRANSLATE_NOOP("core", "a list of fixes from 0 to 8, such as [4] or [4, 5]"))
UNKNOWN_NAME = Text(
    "tolerances.unknown_name",
    QT_TRANSLATE_NOOP("core", "{file}: no tolerance set is called '{name}'; there are {names}."),
)


@dataclass(frozen=True)
class ToleranceSet:
    """Limits for single points; None where there is none. A value the file does not give is not judged.

    ``sigma_h``, ``sigma_v``: metres, as the receiver states them. ``fixes``: accepted fixes (numbers of NMEA GGA).
    ``tilt``: degrees. ``pdop``: without unit. ``age``: seconds, age of the correction. ``epochs``: least number
    of observations a point is the mean of. Columns of ``PointSet.extra`` used: pdop, age, epochs.
    """

    name: str
    sigma_h: Optional[float] = None
    sigma_v: Optional[float] = None
    fixes: Optional[Tuple[int, ...]] = None
    tilt: Optional[float] = None
    pdop: Optional[float] = None
    age: Optional[float] = None
    epochs: Optional[int] = None


#: Single observations while walking (common practice, no source).
TOPOGRAPHIC = ToleranceSet("topographic", 0.05, 0.08, (4,), 8.0, 6.0, 5.0, 1)
#: Points others are built on: several observations (common practice, no source).
CONTROL = ToleranceSet("control", 0.015, 0.025, (4,), 1.0, 3.0, 2.0, 3)
SHIPPED: Tuple[ToleranceSet, ...] = (TOPOGRAPHIC, CONTROL)

_KEYS = tuple(field.name for field in fields(ToleranceSet))


def read_tolerances(path: PathLike) -> Tuple[ToleranceSet, ...]:
    """Read the sets of a JSON file: a list of objects with a name and limits. Raises SurveyError naming the fault."""
    file = os.fspath(path)
    try:
        with open(file, encoding="utf-8-sig") as stream:
            found = json.load(stream, object_pairs_hook=_once(file))
    except OSError as error:
        raise SurveyError(CANNOT_READ, file=file, reason=error.strerror or str(error)) from error
    except UnicodeDecodeError as error:
        raise SurveyError(NOT_TEXT, file=file) from error
    except RecursionError as error:
        raise SurveyError(TOO_DEEP, file=file) from error
    except json.JSONDecodeError as error:
        raise SurveyError(NOT_JSON, file=file, line=error.lineno, reason=error.msg) from error
    if not isinstance(found, list) or not found or not all(isinstance(each, dict) for each in found):
        raise SurveyError(NO_SETS, file=file)
    sets = tuple(_set(file, each) for each in found)
    names = [each.name for each in sets]
    for name in names:
        if names.count(name) > 1:
            raise SurveyError(NAME_TWICE, file=file, name=name)
    return sets


def write_tolerances(sets: Sequence[ToleranceSet], path: PathLike) -> None:
    """Write sets as JSON that :func:`read_tolerances` reads. Raises SurveyError when it can't be written."""
    rows = [{key: getattr(each, key) for key in _KEYS if getattr(each, key) is not None} for each in sets]
    with replace_file(path) as temporary, open(temporary, "w", encoding="utf-8") as stream:
        json.dump(rows, stream, indent=2, ensure_ascii=False)
        stream.write("\n")


def find_tolerances(sets: Sequence[ToleranceSet], name: str, file: str = "") -> ToleranceSet:
    """The set called ``name``, where it is empty the only one. Raises SurveyError listing the names there are."""
    if not name and len(sets) == 1:
        return sets[0]
    if not name:
        raise SurveyError(WHICH_SET, file=file, names=", ".join(each.name for each in sets))
    for each in sets:
        if each.name == name:
            return each
    raise SurveyError(UNKNOWN_NAME, file=file, name=name, names=", ".join(each.name for each in sets))


def _once(file: str) -> Callable[[List[Tuple[str, Any]]], Dict[str, Any]]:
    """What makes an object of JSON, and refuses a key that stands in it twice."""

    def make(pairs: List[Tuple[str, Any]]) -> Dict[str, Any]:
        made = dict(pairs)
        if len(made) < len(pairs):
            keys = [key for key, _ in pairs]
            raise SurveyError(KEY_TWICE, file=file, key=next(key for key in keys if keys.count(key) > 1))
        return made

    return make


def _set(file: str, row: Mapping[str, Any]) -> ToleranceSet:
    name = row.get("name")
    if not isinstance(name, str) or not name.strip():
        raise SurveyError(NO_SETS, file=file)
    values: Dict[str, Any] = {"name": name}
    for key, value in row.items():
        if key not in _KEYS:
            raise SurveyError(STRANGE_KEY, file=file, name=name, key=key, keys=", ".join(_KEYS))
        if key != "name" and value is not None:
            values[key] = _value(file, name, key, value)
    return ToleranceSet(**values)


def _value(file: str, name: str, key: str, value: Any) -> Any:
    shown = json.dumps(value, ensure_ascii=False)  # a number in quotation marks is seen to be no number
    number = isinstance(value, (int, float)) and not isinstance(value, bool) and abs(value) < 1e12
    if key == "fixes":
        if isinstance(value, list) and value and all(type(each) is int and 0 <= each <= 8 for each in value):
            return tuple(value)
        raise SurveyError(BAD_VALUE, file=file, name=name, key=key, value=shown, wanted=FIX_LIST)
    if key == "epochs":
        if number and float(value).is_integer() and value >= 1:
            return int(value)
        raise SurveyError(BAD_VALUE, file=file, name=name, key=key, value=shown, wanted=WHOLE)
    if number and value > 0:
        return float(value)
    raise SurveyError(BAD_VALUE, file=file, name=name, key=key, value=shown, wanted=ABOVE_ZERO)


def judge(points: PointSet, limits: ToleranceSet) -> np.ndarray:
    """Reasons (n,) uint32 for which each point fails ``limits``; 0 where it does not."""
    reasons = np.zeros(len(points), np.uint32)

    def above(values: np.ndarray, limit: Optional[float], reason: Reason) -> None:
        if limit is not None:
            with np.errstate(invalid="ignore"):
                reasons[values > limit] |= np.uint32(reason)

    above(points.sigma_h, limits.sigma_h, Reason.SIGMA_HORIZONTAL)
    above(points.sigma_v, limits.sigma_v, Reason.SIGMA_VERTICAL)
    above(np.abs(points.tilt), limits.tilt, Reason.TILT)
    above(_extra(points, "pdop"), limits.pdop, Reason.PDOP)
    above(_extra(points, "age"), limits.age, Reason.CORRECTION_AGE)
    above(-_extra(points, "epochs"), None if limits.epochs is None else -float(limits.epochs), Reason.FEW_EPOCHS)
    if limits.fixes is not None:
        bad = (points.fix != FIX_UNKNOWN) & ~np.isin(points.fix, limits.fixes)
        reasons[bad] |= np.uint32(Reason.NO_FIX)
    return reasons


def status_of(reasons: np.ndarray) -> np.ndarray:
    """Status (n,) uint8 for reasons of :func:`judge`: no fix, tilt and sigma in plan or height reject, the
    rest flags.
    """
    severe = np.uint32(Reason.NO_FIX | Reason.TILT | Reason.SIGMA_HORIZONTAL | Reason.SIGMA_VERTICAL)
    return np.where(reasons & severe != 0, Status.REJECTED, np.where(reasons != 0, Status.FLAGGED, Status.USED)).astype(
        np.uint8
    )


def _extra(points: PointSet, key: str) -> np.ndarray:
    """A column of ``extra`` as numbers, nan where it has none; by its name or a word that a header has for it."""
    for name, values in points.extra.items():
        if name.strip().lower() == key or read_word(name).role == key:
            result = np.full(len(points), np.nan)
            for k, value in enumerate(values) if values.dtype.kind not in "fiu" else ():
                try:
                    result[k] = float(value)
                except (TypeError, ValueError):
                    continue
            return values.astype(float) if values.dtype.kind in "fiu" else result
    return np.full(len(points), np.nan)
