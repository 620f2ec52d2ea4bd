"""The plan of a job and the tools that the user added to it: what they were run with, and so what is out of date.

Nothing of QGIS is needed here. They work on the files of the job; one is out of date when a file, a setting or an
option that it was made from has changed since.
"""

from __future__ import annotations

import hashlib
import json
import re
from dataclasses import dataclass, field
from enum import Enum
from pathlib import Path
from typing import Any, Callable, Dict, List, Mapping, Optional, Sequence, Tuple

_VERSION = 2
_PATH = re.compile(r"[./\\]|[A-Za-z]:[/\\]")  # how a path starts, absolute or as the project keeps it


class State(Enum):
    """How a step stands."""

    EMPTY = "empty"
    DONE = "done"
    STALE = "stale"
    FAILED = "failed"


@dataclass(frozen=True)
class Tool:
    """``key``: its name in the book. ``algorithm``: id in the provider. ``parameters(book)``: what it is run with,
    without the options that the user changed. ``products``: parameters that name a file it writes, the first one tells
    whether it has been run.
    """

    key: str
    algorithm: str
    parameters: Callable[[ToolBook], Dict[str, Any]]
    products: Tuple[str, ...]


@dataclass
class Entry:
    """What is known of a tool. ``options``: parameters changed by hand; ``results``: of its last run."""

    options: Dict[str, Any] = field(default_factory=dict)
    results: Dict[str, Any] = field(default_factory=dict)
    made_from: str = ""
    failure: str = ""


class ToolBook:
    """The settings of a job that concern its map, and an entry for each tool.

    ``stamp``: tells the content of a file by its path.
    """

    def __init__(
        self, tools: Sequence[Tool], settings: Mapping[str, Any], stamp: Callable[[str], str] = lambda path: ""
    ) -> None:
        self.tools: Dict[str, Tool] = {tool.key: tool for tool in tools}
        self.settings: Dict[str, Any] = dict(settings)
        self.entries: Dict[str, Entry] = {key: Entry() for key in self.tools}
        self.stamp = stamp

    def add(self, tool: Tool) -> None:
        """One more tool, after those there are."""
        self.tools[tool.key] = tool
        self.entries.setdefault(tool.key, Entry())

    def remove(self, key: str) -> None:
        """The tool is part of the job no longer; its products stay where they are."""
        del self.tools[key], self.entries[key]

    def state(self, key: str) -> State:
        """How the tool stands now."""
        entry = self.entries[key]
        if entry.failure:
            return State.FAILED
        if not entry.made_from or not Path(self.product(key).split("|")[0]).exists():
            return State.EMPTY
        return State.DONE if entry.made_from == self.fingerprint(key) else State.STALE

    def to_do(self) -> List[str]:
        """The tools that are not done, in order."""
        return [key for key in self.tools if self.state(key) is not State.DONE]

    def parameters(self, key: str) -> Dict[str, Any]:
        """What the tool is run with: its own parameters, and over them the user's options."""
        return {**self.tools[key].parameters(self), **self.entries[key].options}

    def product(self, key: str, name: str = "") -> str:
        """Where a tool has put a product, or will put it; the first one where none is named."""
        name = name or self.tools[key].products[0]
        found = self.entries[key].results.get(name) or self.tools[key].parameters(self).get(name, "")
        return str(found)

    def fingerprint(self, key: str) -> str:
        """Tells whether the tool would be run on the same things as before."""
        parameters = self.parameters(key)
        own = {self.product(key, name).split("|")[0] for name in self.tools[key].products}
        files = sorted({path for value in parameters.values() for path in _paths(value)} - own)
        told = [parameters, [(path, self.stamp(path)) for path in files]]
        return hashlib.sha256(json.dumps(told, sort_keys=True, default=str).encode()).hexdigest()

    def record(self, key: str, options: Mapping[str, Any], results: Mapping[str, Any]) -> None:
        """The tool was run."""
        entry = self.entries[key]
        entry.options = dict(options)
        entry.results = {name: value for name, value in results.items() if isinstance(value, (str, int, float))}
        entry.failure = ""
        entry.made_from = self.fingerprint(key)

    # In the project file

    def to_text(self, relative: Callable[[str], str] = str) -> str:
        """The book as JSON; ``relative`` writes a path as the project keeps it."""
        entries = {
            key: {
                **vars(entry),
                "results": _each_path(entry.results, relative),
                "options": _each_path(entry.options, relative),
            }
            for key, entry in self.entries.items()
            if entry.made_from or entry.options
        }
        return json.dumps(
            {"version": _VERSION, "settings": _each_path(self.settings, relative), "tools": entries}, sort_keys=True
        )

    def take_text(
        self,
        text: str,
        absolute: Callable[[str], str] = str,
        added: Callable[[Mapping[str, Any]], Sequence[Tool]] = lambda settings: (),
    ) -> None:
        """Take up what :meth:`to_text` wrote; nothing of what is none. ``added``: the tools that its settings bring."""
        try:
            told = json.loads(text) if text else {}
            settings = _each_path(dict(told.get("settings", {})), absolute)
            entries = {}
            for key, values in told.get("tools", {}).items():
                known = {name: value for name, value in values.items() if name in vars(Entry())}
                entry = Entry(**known)
                entry.results = _each_path(dict(entry.results), absolute)
                entry.options = _each_path(dict(entry.options), absolute)
                entries[key] = entry
            tools = added(settings)
        except (ValueError, TypeError, AttributeError, KeyError):
            return
        self.settings.update(settings)
        for tool in tools:
            self.add(tool)
        self.entries.update({key: entry for key, entry in entries.items() if key in self.tools})


def _paths(value: Any) -> List[str]:
    """The files that a parameter names."""
    if isinstance(value, (list, tuple)):
        return [path for one in value for path in _paths(one)]
    if isinstance(value, str) and value and len(value) < 1024 and "\n" not in value:
        path = value.split("|")[0]
        try:
            return [path] if Path(path).is_file() else []
        except (OSError, ValueError):
            return []
    return []


def _each_path(values: Mapping[str, Any], change: Callable[[str], str]) -> Dict[str, Any]:
    """The same mapping with ``change`` done to each text that is a path."""

    def one(value: Any) -> Any:
        if isinstance(value, list):
            return [one(item) for item in value]
        return change(value) if isinstance(value, str) and _PATH.match(value) else value

    return {name: one(value) for name, value in values.items()}


def own_source(value: Any, source_of: Callable[[str], Optional[str]]) -> Any:
    """An option without names of layers, which last as long as the layer: ``source_of`` gives what a layer is from."""
    if isinstance(value, list):
        return [own_source(one, source_of) for one in value]
    return (source_of(value) or value) if isinstance(value, str) else value
