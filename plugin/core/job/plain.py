"""Choices as plain JSON values, by the types of their fields; and back.

A dataclass becomes an object of those fields that differ from their defaults; an enum its value; a path its text, as
seen from the folder of the job where it lies in or beside it. A text that may name a file (``MAY_BE_FILE``) is such a
path where the file is there. A question is an object with its name in ``question``.
"""

from __future__ import annotations

import os
from dataclasses import MISSING, fields, is_dataclass
from enum import Enum
from pathlib import Path
from typing import Any, Dict, Mapping, Tuple, Type, Union, get_args, get_origin, get_type_hints

QUESTION = "question"
#: Metadata of fields whose texts may name a file.
MAY_BE_FILE = {"may_be_file": True}


class NotPlain(ValueError):
    """A value that does not fit its field; the text names the field and what it should be."""


def to_plain(value: Any, folder: Path, questions: Mapping[str, type]) -> Any:
    """``value`` as what JSON can hold. ``questions``: names and classes of the questions."""
    if is_dataclass(value) and not isinstance(value, type):
        told = {
            field.name: to_plain(_paths(field, getattr(value, field.name)), folder, questions)
            for field in fields(value)
            if field.init and not _is_default(field, getattr(value, field.name))
        }
        name = next((name for name, kind in questions.items() if type(value) is kind), None)
        return told if name is None else {QUESTION: name, **told}
    if isinstance(value, Enum):
        return value.value
    if isinstance(value, Path):
        return _from_folder(value, folder)
    if isinstance(value, (tuple, list)):
        return [to_plain(one, folder, questions) for one in value]
    return value


def from_plain(kind: Type[Any], told: Any, folder: Path, questions: Mapping[str, type], where: str = "choices") -> Any:
    """The dataclass ``kind`` of an object that :func:`to_plain` made. Raises NotPlain, and SurveyError of its class."""
    if not isinstance(told, dict):
        raise NotPlain(f"{where}: an object is expected, not {_shown(told)}")
    hints = get_type_hints(kind)
    known = {field.name: field for field in fields(kind) if field.init}
    for name in told:
        if name not in known:
            raise NotPlain(f"{where}: there is no '{name}'")
    for name, field in known.items():
        if name not in told and field.default is MISSING and field.default_factory is MISSING:
            raise NotPlain(f"{where}: '{name}' is missing")
    values = {name: _value(hints[name], value, folder, questions, f"{where}.{name}") for name, value in told.items()}
    return kind(**{name: _texts(known[name], value, folder) for name, value in values.items()})


def _value(hint: Any, told: Any, folder: Path, questions: Mapping[str, type], where: str) -> Any:
    origin = get_origin(hint)
    if origin is Union:
        return _one_of(get_args(hint), told, folder, questions, where)
    if origin is tuple:
        return _many(get_args(hint), told, folder, questions, where)
    if isinstance(hint, type) and is_dataclass(hint):
        return from_plain(hint, told, folder, questions, where)
    if isinstance(hint, type) and issubclass(hint, Enum):
        if told not in [one.value for one in hint]:
            raise NotPlain(f"{where}: one of {', '.join(str(one.value) for one in hint)}, not {_shown(told)}")
        return hint(told)
    if hint is Path:
        return _in_folder(_plain(str, told, where), folder)
    if hint in (str, bool, int, float):
        return _plain(hint, told, where)
    return _question(told, folder, questions, where)


def _one_of(hints: Tuple[Any, ...], told: Any, folder: Path, questions: Mapping[str, type], where: str) -> Any:
    """The value of the only kind beside None."""
    if told is None and type(None) in hints:
        return None
    (hint,) = (one for one in hints if one is not type(None))
    return _value(hint, told, folder, questions, where)


def _many(hints: Tuple[Any, ...], told: Any, folder: Path, questions: Mapping[str, type], where: str) -> Tuple:
    if not isinstance(told, list):
        raise NotPlain(f"{where}: a list is expected, not {_shown(told)}")
    if hints[1:] == (...,):
        hints = hints[:1] * len(told)
    if len(hints) != len(told):
        raise NotPlain(f"{where}: {len(hints)} values are expected, not {len(told)}")
    return tuple(
        _value(hint, one, folder, questions, f"{where}[{k}]") for k, (hint, one) in enumerate(zip(hints, told))
    )


def _plain(kind: type, told: Any, where: str) -> Any:
    fits = type(told) is kind or (kind is float and type(told) is int)
    if not fits:
        raise NotPlain(f"{where}: {_NAMES[kind]} is expected, not {_shown(told)}")
    return float(told) if kind is float else told


def _question(told: Any, folder: Path, questions: Mapping[str, type], where: str) -> Any:
    name = str(told.get(QUESTION)) if isinstance(told, dict) else ""
    if name not in questions:
        raise NotPlain(f"{where}: '{QUESTION}' must be one of {', '.join(questions)}")
    given = {key: value for key, value in told.items() if key != QUESTION}
    return from_plain(questions[name], given, folder, questions, where)


_NAMES: Dict[type, str] = {str: "text", bool: "true or false", int: "a whole number", float: "a number"}


def _is_default(field: Any, value: Any) -> bool:
    if field.default is not MISSING:
        nothing = value != value and field.default != field.default  # not-a-number, which JSON does not have
        return nothing or bool(value == field.default and type(value) is type(field.default))
    return field.default_factory is not MISSING and bool(value == field.default_factory())


def _paths(field: Any, value: Any) -> Any:
    """Texts of a field that name a file, as paths."""
    if field.metadata != MAY_BE_FILE:
        return value
    if isinstance(value, tuple):
        return tuple(_paths(field, one) for one in value)
    return Path(value) if isinstance(value, str) and is_file(value) else value


def _texts(field: Any, value: Any, folder: Path) -> Any:
    """The same texts as they are seen from here."""
    if field.metadata != MAY_BE_FILE:
        return value
    if isinstance(value, tuple):
        return tuple(_texts(field, one, folder) for one in value)
    there = _in_folder(value, folder) if isinstance(value, str) else None
    return str(there) if there is not None and is_file(there) else value


def is_file(path: Union[str, Path]) -> bool:
    """Whether ``path`` is a file; words that no path can be are none."""
    try:
        return Path(path).is_file()
    except (OSError, ValueError):
        return False


def _from_folder(path: Path, folder: Path) -> str:
    """The path from ``folder``, where it lies in it or in the folder around it; else the whole path."""
    whole = Path(os.path.abspath(path))
    around = Path(os.path.abspath(folder)).parent
    if whole == around or around not in whole.parents or len(around.parts) < _DEEP:
        return whole.as_posix()
    return Path(os.path.relpath(whole, os.path.abspath(folder))).as_posix()


#: A folder around the job counts where it is not the root or a drive.
_DEEP = 2


def _in_folder(text: str, folder: Path) -> Path:
    """The path as it is seen from here: from the working folder where it lies in it, else the whole path."""
    whole = Path(os.path.normpath(os.path.join(os.path.abspath(folder), text)))
    here = Path.cwd()
    return whole.relative_to(here) if here in whole.parents else whole


def _shown(value: Any) -> str:
    return repr(value)[:60]
