"""What the desk remembers of a job: its settings, what was run with what, and so what is out of date.

Nothing of QGIS is needed here. A step is out of date when anything that it was made from has changed since: a file of
the user's (by size and time), a setting, an option, the run of a step before it, or an edit of that step's layers.
"""

from __future__ import annotations

import hashlib
import json
import re
from dataclasses import dataclass, field
from enum import Enum
from pathlib import Path
from typing import Any, Callable, Dict, List, Mapping, Optional, Sequence, Tuple

_VERSION = 1
_PATH = re.compile(r"[./\\]|[A-Za-z]:[/\\]")  # how a path starts, absolute or as the project keeps it


class State(Enum):
    """How a step stands."""

    EMPTY = "empty"
    DONE = "done"
    STALE = "stale"
    FAILED = "failed"


@dataclass(frozen=True)
class Step:
    """One step of a job.

    ``key``: its name in the book. ``algorithm``: id in the provider. ``needs``: keys of the steps whose products it
    takes. ``parameters(book)``: what it is run with, without the options that the user changed. ``products``:
    parameters that name a file it writes, the first one tells whether it has been run. ``wanted(book)``: whether it
    belongs to a run of everything.
    """

    key: str
    algorithm: str
    needs: Tuple[str, ...]
    parameters: Callable[[JobBook], Dict[str, Any]]
    products: Tuple[str, ...]
    wanted: Callable[[JobBook], bool]


@dataclass
class Entry:
    """What is known of a step. ``options``: parameters changed by hand. ``edits``: how often its layers were edited."""

    options: Dict[str, Any] = field(default_factory=dict)
    results: Dict[str, Any] = field(default_factory=dict)
    made_from: str = ""
    run: int = 0
    edits: int = 0
    failure: str = ""


class JobBook:
    """The settings of a job and an entry for each step."""

    def __init__(self, steps: Sequence[Step], settings: Optional[Mapping[str, Any]] = None) -> None:
        self.steps: Dict[str, Step] = {step.key: step for step in steps}
        self.settings: Dict[str, Any] = dict(settings or {})
        self.entries: Dict[str, Entry] = {key: Entry() for key in self.steps}

    def add(self, step: Step) -> None:
        """One more step, after those there are."""
        self.steps[step.key] = step
        self.entries.setdefault(step.key, Entry())

    def remove(self, key: str) -> None:
        """The step is part of the job no longer; its products stay where they are."""
        del self.steps[key], self.entries[key]

    # Asking

    def state(self, key: str) -> State:
        """How the step stands now."""
        entry = self.entries[key]
        if entry.failure:
            return State.FAILED
        if not entry.run or not self._products_there(key):
            return State.EMPTY
        if entry.made_from != self.fingerprint(key):
            return State.STALE
        return State.STALE if any(self.state(need) is not State.DONE for need in self.needs(key)) else State.DONE

    def needs(self, key: str) -> List[str]:
        """The steps before it that are part of this job."""
        return [need for need in self.steps[key].needs if self.steps[need].wanted(self)]

    def missing(self, key: str) -> List[str]:
        """Steps before it whose products are not there."""
        return [need for need in self.needs(key) if self.state(need) in (State.EMPTY, State.FAILED)]

    def to_do(self) -> List[str]:
        """The steps of a run of everything that are not done, in order; one after a step to do is to do as well."""
        found: List[str] = []
        for key, step in self.steps.items():
            if step.wanted(self) and (
                self.state(key) is not State.DONE or any(need in found for need in self.needs(key))
            ):
                found.append(key)
        return found

    def parameters(self, key: str) -> Dict[str, Any]:
        """What the step is run with: its own parameters, and over them the user's options."""
        return {**self.steps[key].parameters(self), **self.entries[key].options}

    def product(self, key: str, name: str = "OUTPUT") -> str:
        """Where a step has put a product, or will put it."""
        entry = self.entries[key]
        return str(entry.results.get(name) or self.steps[key].parameters(self).get(name, ""))

    def fingerprint(self, key: str) -> str:
        """Tells whether the step would be made from the same things as before."""
        before = [(need, self.entries[need].run, self.entries[need].edits) for need in self.needs(key)]
        parameters = self.parameters(key)
        files = sorted({path for value in parameters.values() for path in _paths(value)} - self._own_files(key))
        told = [parameters, before, [(path, *_stamp(path)) for path in files]]
        return hashlib.sha256(json.dumps(told, sort_keys=True, default=str).encode()).hexdigest()

    def _products_there(self, key: str) -> bool:
        return Path(self.product(key, self.steps[key].products[0]).split("|")[0]).exists()

    def _own_files(self, key: str) -> set:
        """Files that steps of the job write; their changes are told by runs and edits."""
        own = set()
        for other, step in self.steps.items():
            own |= {self.product(other, name).split("|")[0] for name in step.products}
        return own

    # Writing down

    def record(self, key: str, options: Mapping[str, Any], results: Mapping[str, Any]) -> None:
        """The step was run."""
        entry = self.entries[key]
        entry.options = dict(options)
        entry.results = {name: value for name, value in results.items() if isinstance(value, (str, int, float))}
        entry.failure = ""
        entry.run += 1
        entry.edits = 0
        entry.made_from = self.fingerprint(key)

    def record_failure(self, key: str, reason: str) -> None:
        self.entries[key].failure = reason

    def record_edit(self, path: str) -> Optional[str]:
        """A layer was edited; the step whose product it is, None for a layer of no step."""
        for key, step in self.steps.items():
            if self.entries[key].run and any(_same_file(self.product(key, name), path) for name in step.products):
                self.entries[key].edits += 1
                return key
        return None

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
            if entry.run or entry.options or entry.failure
        }
        return json.dumps(
            {"version": _VERSION, "settings": _each_path(self.settings, relative), "steps": entries}, sort_keys=True
        )

    @classmethod
    def from_text(
        cls,
        steps: Sequence[Step],
        text: str,
        absolute: Callable[[str], str] = str,
        added: Callable[[Mapping[str, Any]], Sequence[Step]] = lambda settings: (),
    ) -> JobBook:
        """The book from JSON; an empty one from what is none. What a newer version wrote of unknown steps is left.

        ``added``: the steps that the settings of this job bring beside ``steps``.
        """
        book = cls(steps)
        try:
            told = json.loads(text) if text else {}
            book.settings = _each_path(dict(told.get("settings", {})), absolute)
            for step in added(book.settings):
                book.add(step)
            for key, values in told.get("steps", {}).items():
                if key in book.entries:
                    known = {name: value for name, value in values.items() if name in vars(Entry())}
                    book.entries[key] = Entry(**known)
                    book.entries[key].results = _each_path(dict(book.entries[key].results), absolute)
                    book.entries[key].options = _each_path(dict(book.entries[key].options), absolute)
        except (ValueError, TypeError, AttributeError, KeyError):
            return cls(steps)
        return book


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


def _stamp(path: str) -> Tuple[int, int]:
    status = Path(path).stat()
    return status.st_size, status.st_mtime_ns


def _same_file(one: str, other: str) -> bool:
    return bool(one) and Path(one.split("|")[0]) == Path(other.split("|")[0])


def _each_path(values: Mapping[str, Any], change: Callable[[str], str]) -> Dict[str, Any]:
    """The same mapping with ``change`` done to each text that is a path."""

    def one(value: Any) -> Any:
        if isinstance(value, list):
            return [one(item) for item in value]
        return change(value) if isinstance(value, str) and _PATH.match(value) else value

    return {name: one(value) for name, value in values.items()}
