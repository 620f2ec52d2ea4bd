"""Edits of a surface by hand, kept beside the survey and replayed whenever the surface is built.

The file is JSON in UTF-8: ``format`` (always "hummock edits"), ``version`` (1) and ``edits``, a list in the order in
which the edits are replayed. Each edit has its kind in ``edit``, perhaps a ``note``, and

=================  ================================================================================
``swap_edge``      ``place`` on the edge, or ``ends``: its two ends
``remove_triangle``  ``place`` inside it
``add_triangle``   ``place`` inside it, or ``corners``: its three corners
``move_point``     ``place`` of the point; ``height``, the new one, or ``difference`` to the old one
``add_point``      ``place`` and ``height``
``force_edge``     ``line``: two or more points, in their order
``drop_triangles``  ``polygon``: its corners
=================  ================================================================================

A place is [easting, northing]. All numbers are metres in the coordinate system of the survey. What is edited is
named by place, not by number, so that an edit still finds it when the survey has grown.
"""

from __future__ import annotations

import json
import math
from dataclasses import dataclass, fields
from json.decoder import JSONDecoder
from pathlib import Path
from typing import Any, Callable, Dict, List, NoReturn, Optional, Sequence, Tuple, Type, Union

from ..files import PathLike, replace_file
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text

CANNOT_READ = Text(
    "edits.cannot_read",
    QT_TRANSLATE_NOOP("core", "{file}: the edits cannot be read ({reason}). Check the path and the file."),
)
NOT_JSON = Text(
    "edits.not_json",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}, column {column}: no valid JSON ({reason}). Mend the file."),
)
NOT_EDITS = Text(
    "edits.not_edits",
    QT_TRANSLATE_NOOP("core", '{file}, line {line}: this is not a list of edits; "format" must be "{format}".'),
)
NEWER = Text(
    "edits.newer",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: version {version} of the list of edits is not known here (known: up to {known}). "
        "Update the plugin.",
    ),
)
NO_LIST = Text(
    "edits.no_list",
    QT_TRANSLATE_NOOP("core", '{file}, line {line}: "edits" must be a list of edits, and nothing may stand beside it.'),
)
NO_EDIT = Text(
    "edits.no_edit",
    QT_TRANSLATE_NOOP(
        "core", '{file}, line {line}, edit {number}: the kind in "edit" is {value}; it must be one of {known}.'
    ),
)
STRANGE_FIELD = Text(
    "edits.strange_field",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}, edit {number}: {kind} has no field {field}. Remove it or correct its name."
    ),
)
MISSING_FIELD = Text(
    "edits.missing_field",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}, edit {number}: {kind} needs {fields}, exactly one of them."),
)
BAD_VALUE = Text(
    "edits.bad_value",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}, edit {number}: {field} must be {wanted}, not {value}."),
)

FORMAT = "hummock edits"
VERSION = 1

#: Easting and northing, metres in the coordinate system of the survey.
Place = Tuple[float, float]


def _one_of(edit: Any, *names: str) -> None:
    if sum(getattr(edit, name) is not None for name in names) != 1:
        raise ValueError(f"{type(edit).__name__} needs exactly one of {', '.join(names)}")


@dataclass(frozen=True)
class SwapEdge:
    """Replace an edge, named by its two ``ends`` or a ``place`` on it, by the other diagonal of its two triangles."""

    place: Optional[Place] = None
    ends: Optional[Tuple[Place, Place]] = None
    note: str = ""

    def __post_init__(self) -> None:
        _one_of(self, "place", "ends")


@dataclass(frozen=True)
class RemoveTriangle:
    """Leave the triangle at ``place`` out of the surface."""

    place: Place
    note: str = ""


@dataclass(frozen=True)
class AddTriangle:
    """Take back a triangle that boundary, void, rim or an edit left out: a ``place`` in it, or its ``corners``."""

    place: Optional[Place] = None
    corners: Optional[Tuple[Place, Place, Place]] = None
    note: str = ""

    def __post_init__(self) -> None:
        _one_of(self, "place", "corners")


@dataclass(frozen=True)
class MovePoint:
    """Give the point at ``place`` another ``height``, or change its height by ``difference``; metres."""

    place: Place
    height: Optional[float] = None
    difference: Optional[float] = None
    note: str = ""

    def __post_init__(self) -> None:
        _one_of(self, "height", "difference")


@dataclass(frozen=True)
class AddPoint:
    """Add a point at ``place`` with ``height``, metres."""

    place: Place
    height: float
    note: str = ""


@dataclass(frozen=True)
class ForceEdge:
    """Make straight edges between points that are there, in the order of ``line``; they act as a breakline."""

    line: Tuple[Place, ...]
    note: str = ""


@dataclass(frozen=True)
class DropTriangles:
    """Leave out all triangles whose centroid lies in ``polygon`` (even-odd rule; closed whether or not it says so)."""

    polygon: Tuple[Place, ...]
    note: str = ""


Edit = Union[SwapEdge, RemoveTriangle, AddTriangle, MovePoint, AddPoint, ForceEdge, DropTriangles]

#: Kind in the file, its class, and groups of fields of which exactly one must be there.
_KINDS: Tuple[Tuple[str, Type[Any], Tuple[Tuple[str, ...], ...]], ...] = (
    ("swap_edge", SwapEdge, (("place", "ends"),)),
    ("remove_triangle", RemoveTriangle, (("place",),)),
    ("add_triangle", AddTriangle, (("place", "corners"),)),
    ("move_point", MovePoint, (("place",), ("height", "difference"))),
    ("add_point", AddPoint, (("place",), ("height",))),
    ("force_edge", ForceEdge, (("line",),)),
    ("drop_triangles", DropTriangles, (("polygon",),)),
)
_BY_NAME = {name: (made, groups) for name, made, groups in _KINDS}
_NAME_OF: Dict[Type[Any], str] = {made: name for name, made, _ in _KINDS}


def kind_of(edit: Edit) -> str:
    """The kind of an edit as it stands in the file, such as ``swap_edge``."""
    return _NAME_OF[type(edit)]


# --- writing --------------------------------------------------------------------------------------


def write_edits(edits: Sequence[Edit], path: PathLike) -> None:
    """Write ``edits`` in their order, one a line; the file appears only when it is whole.

    Raises SurveyError when it cannot be written, ValueError for a number that is not finite.
    """
    rows = [json.dumps(_row(edit), ensure_ascii=False, allow_nan=False) for edit in edits]
    head = f'{{\n "format": {json.dumps(FORMAT)},\n "version": {VERSION},\n "edits": ['
    text = head + ",".join(f"\n  {row}" for row in rows) + ("\n ]\n}\n" if rows else "]\n}\n")
    with replace_file(path) as temporary, open(temporary, "w", encoding="utf-8", newline="\n") as file:
        file.write(text)


def _row(edit: Edit) -> Dict[str, Any]:
    row: Dict[str, Any] = {"edit": kind_of(edit)}
    for each in fields(edit):
        value = getattr(edit, each.name)
        if value is not None and value != "":
            row[each.name] = value
    return row


# --- reading --------------------------------------------------------------------------------------


def read_edits(path: PathLike) -> Tuple[Edit, ...]:
    """The edits of a file, in their order. Raises SurveyError with file, line and edit where it is not understood."""
    file = str(path)
    try:
        text = Path(path).read_bytes().decode("utf-8-sig")
    except OSError as error:
        raise SurveyError(CANNOT_READ, file=file, reason=error.strerror or str(error)) from error
    except UnicodeDecodeError as error:
        raise SurveyError(CANNOT_READ, file=file, reason="UTF-8") from error
    members = _members(file, text)
    _check_head(file, members)
    array = members["edits"][0]
    return tuple(
        _edit(_Spot(file, line, number), row) for number, (row, line) in enumerate(_elements(text, array), start=1)
    )


class _Value:
    """A JSON value and where it stands in the text."""

    def __init__(self, value: Any, start: int) -> None:
        self.value, self.start = value, start


def _members(file: str, text: str) -> Dict[str, Tuple[_Value, int]]:
    """Members of the object that is the file, each with its line."""
    decoder = JSONDecoder(parse_constant=_no_constant, object_pairs_hook=_no_repeats)
    try:
        whole = decoder.decode(text)
    except json.JSONDecodeError as error:
        raise SurveyError(NOT_JSON, file=file, line=error.lineno, column=error.colno, reason=error.msg) from error
    except (ValueError, RecursionError) as error:
        raise SurveyError(NOT_JSON, file=file, line=1, column=1, reason=str(error)) from error
    if not isinstance(whole, dict):
        raise SurveyError(NOT_EDITS, file=file, line=1, format=FORMAT)
    members = {}
    at = _skip(text, text.index("{") + 1)
    while text[at] != "}":
        key, at = decoder.raw_decode(text, at)
        start = _skip(text, _skip(text, at) + 1)
        value, at = decoder.raw_decode(text, start)
        members[key] = (_Value(value, start), _line_of(text, start))
        at = _skip_comma(text, at)
    return members


def _elements(text: str, array: _Value) -> List[Tuple[Any, int]]:
    """Elements of the JSON array, each with its line."""
    decoder = JSONDecoder()
    found = []
    at, seen, line = _skip(text, array.start + 1), 0, 1
    while text[at] != "]":
        line, seen = line + text.count("\n", seen, at), at
        value, at = decoder.raw_decode(text, at)
        found.append((value, line))
        at = _skip_comma(text, at)
    return found


def _skip(text: str, at: int) -> int:
    while text[at] in " \t\r\n":
        at += 1
    return at


def _skip_comma(text: str, at: int) -> int:
    at = _skip(text, at)
    return _skip(text, at + 1) if text[at] == "," else at


def _line_of(text: str, at: int) -> int:
    return text.count("\n", 0, at) + 1


def _no_constant(name: str) -> NoReturn:
    raise ValueError(name)


def _no_repeats(pairs: List[Tuple[str, Any]]) -> Dict[str, Any]:
    found: Dict[str, Any] = {}
    for key, value in pairs:
        if key in found:
            raise ValueError(f"{json.dumps(key)} twice")
        found[key] = value
    return found


def _check_head(file: str, members: Dict[str, Tuple[_Value, int]]) -> None:
    name, line = members.get("format", (_Value(None, 0), 1))
    if name.value != FORMAT:
        raise SurveyError(NOT_EDITS, file=file, line=line, format=FORMAT)
    version, line = members.get("version", (_Value(None, 0), 1))
    if type(version.value) is not int or not 1 <= version.value <= VERSION:
        raise SurveyError(NEWER, file=file, line=line, version=json.dumps(version.value), known=VERSION)
    edits, line = members.get("edits", (_Value(None, 0), 1))
    strange = [each for key, (_, each) in members.items() if key not in ("format", "version", "edits")]
    if strange or not isinstance(edits.value, list):
        raise SurveyError(NO_LIST, file=file, line=strange[0] if strange else line)


@dataclass(frozen=True)
class _Spot:
    """Where an edit stands, for messages."""

    file: str
    line: int
    number: int

    def fail(self, text: Text, **values: Any) -> NoReturn:
        raise SurveyError(text, file=self.file, line=self.line, number=self.number, **values)


def _edit(spot: _Spot, row: Any) -> Edit:
    kind = row.get("edit") if isinstance(row, dict) else None
    if not isinstance(kind, str) or kind not in _BY_NAME:
        spot.fail(NO_EDIT, value=_shown(kind), known=", ".join(_BY_NAME))
    made, groups = _BY_NAME[kind]
    known = [name for group in groups for name in group]
    values: Dict[str, Any] = {}
    for name, value in row.items():
        if name == "edit":
            continue
        if name not in known and name != "note":
            spot.fail(STRANGE_FIELD, kind=kind, field=name)
        values[name] = _READERS[name](spot, name, value)
    for group in groups:
        if sum(name in values for name in group) != 1:
            spot.fail(MISSING_FIELD, kind=kind, fields=" / ".join(group))
    edit: Edit = made(**values)
    return edit


def _shown(value: Any) -> str:
    """A value as it stands in the file, cut short."""
    text = json.dumps(value, ensure_ascii=False)
    return text if len(text) <= 60 else text[:57] + "..."


def _number(spot: _Spot, field: str, value: Any) -> float:
    if isinstance(value, bool) or not isinstance(value, (int, float)) or not _finite(value):
        spot.fail(BAD_VALUE, field=field, wanted="a number (m)", value=_shown(value))
    return float(value)


def _finite(value: Union[int, float]) -> bool:
    try:
        return math.isfinite(value)
    except OverflowError:  # a whole number of more than 308 digits
        return False


def _place(spot: _Spot, field: str, value: Any) -> Place:
    if not isinstance(value, list) or len(value) != 2:
        spot.fail(BAD_VALUE, field=field, wanted="[easting, northing]", value=_shown(value))
    return _number(spot, field, value[0]), _number(spot, field, value[1])


def _places(least: int, most: Optional[int] = None) -> Callable[[_Spot, str, Any], Tuple[Place, ...]]:
    def read(spot: _Spot, field: str, value: Any) -> Tuple[Place, ...]:
        if not isinstance(value, list) or len(value) < least or (most is not None and len(value) > most):
            count = str(least) if most == least else f"{least}+"
            spot.fail(BAD_VALUE, field=field, wanted=f"{count} × [easting, northing]", value=_shown(value))
        return tuple(_place(spot, field, each) for each in value)

    return read


def _note(spot: _Spot, field: str, value: Any) -> str:
    if not isinstance(value, str):
        spot.fail(BAD_VALUE, field=field, wanted="text", value=_shown(value))
    return value


_READERS: Dict[str, Callable[[_Spot, str, Any], Any]] = {
    "place": _place,
    "ends": _places(2, 2),
    "corners": _places(3, 3),
    "line": _places(2),
    "polygon": _places(3),
    "height": _number,
    "difference": _number,
    "note": _note,
}
