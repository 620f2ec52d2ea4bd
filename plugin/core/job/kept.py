"""Results of stages kept beside a job, so that a later run need not make them anew.

A file holds one result: its arrays as numpy writes them (``.npz``, never pickled), and a tree in JSON of all that is
between them. What an earlier file holds already is named there, not written again: the same points pass through
several stages. Only classes of this package come back, without a line of their code being run.
A dataclass's field with the metadata ``NOT_KEPT`` comes back as it is at first.
"""

from __future__ import annotations

import hashlib
import importlib
import json
from dataclasses import fields, is_dataclass
from enum import Enum
from pathlib import Path
from typing import Any, Dict, List, NamedTuple, Tuple
from zipfile import BadZipFile

import numpy as np
from pyproj import CRS
from pyproj.exceptions import CRSError

from ..files import NOT_KEPT, PathLike, replace_file

_PACKAGE = __name__.rsplit(".", 2)[0]
_TREE = "tree"
_PLAIN = (bool, int, float, str, type(None))


class NotKept(Exception):
    """A kept result that cannot be taken up again."""


class _Held(NamedTuple):
    """An object that a result holds: ``of`` which result, its number there, and a digest of all that it holds."""

    value: Any  # kept alive, so that its id stays its own
    of: str
    number: int
    digest: str


class _Both(NamedTuple):
    """A value taken apart: ``tree`` to be written, and ``content``, the same with digests in place of what is named."""

    tree: Any
    content: Any


class Keeper:
    """Writes and reads the results of the stages of one run, in their order."""

    def __init__(self) -> None:
        self._held: Dict[int, _Held] = {}  # by id
        self._of: Dict[str, List[Any]] = {}  # the objects of each result, by their numbers

    def write(self, name: str, value: Any, path: PathLike) -> str:
        """Keep ``value`` as ``name``; returns a digest of all that it holds.

        Raises SurveyError where it cannot be written, TypeError for a value of a kind that is never kept.
        """
        writer = _Writer(name, self._held)
        both = writer.apart(value)
        gives = _digest(both.content)
        told = {"value": both.tree, "gives": gives, "digests": [one.digest for one in writer.new.values()]}
        text = np.frombuffer(json.dumps(told, separators=(",", ":")).encode(), np.uint8)
        arrays = {f"a{k}": array for k, array in enumerate(writer.arrays)}
        with replace_file(path) as temporary, open(temporary, "wb") as stream:
            np.savez(stream, **arrays, **{_TREE: text})
        self._take_up(name, list(writer.new.values()))
        return gives

    def read(self, name: str, path: PathLike, gives: str) -> Any:
        """What was kept as ``name`` and has the digest ``gives``, as :meth:`write` returned it; the results that it
        rests on must have been read before. Raises NotKept, also where the file holds another result.
        """
        try:
            with np.load(path, allow_pickle=False) as file:
                told = json.loads(file[_TREE].tobytes().decode())
                if told.get("gives") != gives:
                    raise ValueError(f"{path} holds another result")
                arrays = [file[f"a{k}"] for k in range(len(file.files) - 1)]
            reader = _Reader(arrays, self._of)
            value = reader.value(told["value"])
            held = [_Held(one, name, k, str(told["digests"][k])) for k, one in enumerate(reader.objects)]
        except (OSError, ValueError, KeyError, IndexError, TypeError, AttributeError, ImportError, BadZipFile, EOFError,
                CRSError) as error:  # fmt: skip
            raise NotKept(str(error)) from error
        self._take_up(name, held)
        return value

    def _take_up(self, name: str, held: List[_Held]) -> None:
        self._of[name] = [one.value for one in held]
        for one in held:
            self._held.setdefault(id(one.value), one)


class _Writer:
    """Takes a value apart. Objects and arrays are numbered in the order in which they are finished."""

    def __init__(self, name: str, held: Dict[int, _Held]) -> None:
        self.name, self.held = name, held
        self.new: Dict[int, _Held] = {}
        self.arrays: List[np.ndarray] = []

    def apart(self, value: Any) -> _Both:
        if type(value) in _PLAIN:
            return _Both(value, value)
        if type(value) in (tuple, list):
            key = "t" if type(value) is tuple else "i"
            return self._marked({key: [self.apart(one) for one in value]})
        if isinstance(value, Enum):
            return _same({"e": _name_of(type(value)), "v": value.value})
        if isinstance(value, Path):
            return _same({"p": str(value)})
        if isinstance(value, (np.generic, complex)):
            return self._number(value)
        return self._object(value)

    def _object(self, value: Any) -> _Both:
        held = self.held.get(id(value)) or self.new.get(id(value))
        if held is None:
            told = self._new(value)
            held = self.new[id(value)] = _Held(value, self.name, len(self.new), _digest(told.content))
            return _Both(told.tree, {"#": held.digest})
        return _Both({"@": held.number, "of": held.of}, {"#": held.digest})

    def _new(self, value: Any) -> _Both:
        if isinstance(value, np.ndarray):
            return self._array(value)
        if isinstance(value, CRS):
            return _same({"c": value.srs})
        if isinstance(value, dict):
            return self._marked({"m": [self.apart(one) for pair in value.items() for one in pair]})
        name = _name_of(type(value))
        if isinstance(value, str):
            return _same({"k": name, "v": str(value)})
        if isinstance(value, tuple):
            return self._marked({"v": [self.apart(one) for one in value]}, k=name)
        state = _state(value)
        return self._marked({"v": [self.apart(one) for one in state.values()]}, o=name, f=list(state))

    def _number(self, value: Any) -> _Both:
        """A number of numpy's, or a complex one, with its type."""
        array = np.asarray(value)
        plain = [float(value.real), float(value.imag)] if array.dtype.kind == "c" else array.item()
        return _same({"n": plain, "d": array.dtype.str, "u": isinstance(value, np.generic)})

    def _array(self, value: np.ndarray) -> _Both:
        shape = list(value.shape)
        if value.dtype == object:
            return self._marked({"l": [self.apart(one) for one in value.ravel().tolist()]}, s=shape)
        array = np.ascontiguousarray(value)
        self.arrays.append(array.reshape(shape))
        content = hashlib.sha256(array.data if array.size else b"").hexdigest()
        return _Both({"a": len(self.arrays) - 1}, [content, shape, array.dtype.str])

    @staticmethod
    def _marked(parts: Dict[str, List[_Both]], **more: Any) -> _Both:
        ((key, several),) = parts.items()
        return _Both({key: [one.tree for one in several], **more}, {key: [one.content for one in several], **more})


class _Reader:
    """Puts a value together again."""

    def __init__(self, arrays: List[np.ndarray], of: Dict[str, List[Any]]) -> None:
        self.arrays, self.of = arrays, of
        self.objects: List[Any] = []

    def value(self, tree: Any) -> Any:
        if not isinstance(tree, dict):
            return tree
        if "@" in tree:
            return self.of.get(tree["of"], self.objects)[tree["@"]]
        if "t" in tree or "i" in tree:
            several = [self.value(one) for one in tree.get("t") or tree.get("i") or ()]
            return tuple(several) if "t" in tree else several
        if "e" in tree:
            return _class(tree["e"], Enum)(tree["v"])
        if "p" in tree:
            return Path(tree["p"])
        if "n" in tree:
            number = complex(*tree["n"]) if isinstance(tree["n"], list) else tree["n"]
            return np.dtype(tree["d"]).type(number) if tree["u"] else number
        found = self._object(tree)
        self.objects.append(found)
        return found

    def _object(self, tree: Dict[str, Any]) -> Any:
        if "a" in tree:
            return self.arrays[tree["a"]]
        if "c" in tree:
            return CRS.from_user_input(tree["c"])
        if "k" in tree and isinstance(tree["v"], str):
            return _class(tree["k"], str)(tree["v"])
        parts = [self.value(one) for one in tree.get("l", tree.get("m", tree.get("v", ())))]
        if "l" in tree:
            flat = np.empty(len(parts), object)
            flat[:] = parts
            return flat.reshape(tree["s"])
        if "m" in tree:
            return dict(zip(parts[::2], parts[1::2]))
        if "k" in tree:
            return tuple.__new__(_class(tree["k"], tuple), parts)
        made = object.__new__(_class(tree["o"], object))
        for name, value in (*_defaults(made), *zip(tree["f"], parts)):
            object.__setattr__(made, name, value)
        return made


def _same(tree: Any) -> _Both:
    return _Both(tree, tree)


def _digest(content: Any) -> str:
    return hashlib.sha256(json.dumps(content, separators=(",", ":")).encode()).hexdigest()


def _state(value: Any) -> Dict[str, Any]:
    """The attributes of an object of this package."""
    if is_dataclass(value):
        return {each.name: getattr(value, each.name) for each in fields(value) if each.metadata != NOT_KEPT}
    return dict(vars(value))


def _defaults(made: Any) -> List[Tuple[str, Any]]:
    """Fields that are not kept, as they are at first."""
    return [(each.name, each.default) for each in _fields(made) if each.metadata == NOT_KEPT]


def _fields(value: Any) -> Tuple[Any, ...]:
    return fields(value) if is_dataclass(value) else ()


def _name_of(kind: type) -> str:
    if not kind.__module__.startswith(f"{_PACKAGE}."):
        raise TypeError(f"{kind.__module__}.{kind.__qualname__} is never kept")
    return f"{kind.__module__[len(_PACKAGE) + 1 :]}:{kind.__qualname__}"


def _class(name: str, of: Any) -> Any:
    """The class of this package that is called so."""
    module, _, path = name.partition(":")
    if not all(part.isidentifier() for part in (*module.split("."), *path.split("."))):
        raise ValueError(name)
    found: Any = importlib.import_module(f"{_PACKAGE}.{module}")
    for part in path.split("."):
        found = getattr(found, part)
    if not isinstance(found, type) or not issubclass(found, of) or not found.__module__.startswith(f"{_PACKAGE}."):
        raise TypeError(name)
    return found
