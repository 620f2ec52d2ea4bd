"""Reading XML without harm: a stream of elements, with the line of each, from Python's own expat.

Nothing is loaded from elsewhere, and a document type or entity of its own makes the file refused: LandXML needs none,
and they are how a small file becomes a huge one or reads other files. What is kept in memory is what the handlers
keep, so a file of any size can be read as long as its contents fit.
"""

from __future__ import annotations

import math
from pathlib import Path
from typing import Any, Dict, List, Optional
from xml.parsers import expat

from ..files import PathLike
from ..messages import SurveyError, Text
from ..progress import Progress, silent
from .landxml_texts import (
    BAD_ATTRIBUTE,
    BAD_NUMBERS,
    DECLARATIONS,
    MISSING_ATTRIBUTE,
    NO_FILE,
    NOT_XML,
    TOO_DEEP,
)

_BLOCK = 1 << 20  # bytes read at a time
_MOST_DEEP = 64


class Node:
    """Something that listens to one element. Made by the node of the element around it."""

    #: Whether :meth:`close` wants the text within the element.
    wants_text = False

    def child(self, name: str, attributes: Dict[str, str]) -> Optional[Node]:
        """The listener of an element within this one; None passes over it and all within it."""
        return None

    def close(self, text: str) -> None:
        """The element has ended."""


class Place:
    """Where in the file the reader is."""

    def __init__(self, file: str) -> None:
        self.file = file
        self.parser: Any = None

    @property
    def line(self) -> int:
        return int(self.parser.CurrentLineNumber)

    def error(self, text: Text, **values: Any) -> SurveyError:
        """An error that names the file and the line."""
        if "line" not in values:
            values["line"] = self.line
        return SurveyError(text, file=self.file, **values)

    def needed(self, element: str, attributes: Dict[str, str], name: str, line: Optional[int] = None) -> str:
        """An attribute that must be there."""
        value = attributes.get(name, "").strip()
        if not value:
            raise self.error(MISSING_ATTRIBUTE, line=line or self.line, element=element, attribute=name)
        return value

    def number(
        self,
        element: str,
        attributes: Dict[str, str],
        name: str,
        otherwise: Optional[float] = None,
        line: Optional[int] = None,
    ) -> float:
        """An attribute that is a number; ``otherwise`` where it is missing, if that may be."""
        if otherwise is not None and not attributes.get(name, "").strip():
            return otherwise
        text = self.needed(element, attributes, name, line)
        try:
            value = plain_float(text)
        except ValueError:
            value = math.nan
        # A straight end of a spiral has the radius INF (XML Schema's spelling).
        if not math.isfinite(value) and not (value > 0 and name.startswith("radius")):
            found = text[:40]
            raise self.error(BAD_ATTRIBUTE, line=line or self.line, element=element, attribute=name, found=found)
        return value

    def numbers(self, element: str, text: str, *counts: int) -> List[float]:
        """The numbers that are an element's text, as many as one of ``counts``."""
        try:
            values = plain_floats(text)
        except ValueError:
            values = []
        if len(values) not in counts or not all(map(math.isfinite, values)):
            needed = "/".join(map(str, counts))
            raise self.error(BAD_NUMBERS, element=element, needed=needed, found=" ".join(text.split())[:40])
        return values


def plain_float(text: str) -> float:
    """A number as XML Schema spells it; Python alone would also take 1_000 and other scripts' digits."""
    if "_" in text or not text.isascii():
        raise ValueError
    return float(text)


def plain_floats(text: str) -> List[float]:
    """Numbers parted by blanks. Raises ValueError."""
    if "_" in text or not text.isascii():
        raise ValueError
    return list(map(float, text.split()))


class _Stream:
    """Hands expat's events to the nodes."""

    def __init__(self, root: Node, place: Place) -> None:
        self.place = place
        self.nodes: List[Node] = [root]
        self.texts: List[Optional[List[str]]] = [None]
        self.passed_over = 0
        self.namespace: Optional[str] = None  # of the outermost element
        self.local: Dict[str, str] = {}  # names without it, "" for those of another

    def start(self, name: str, attributes: Dict[str, str]) -> None:
        if len(self.nodes) + self.passed_over > _MOST_DEEP:
            raise self.place.error(TOO_DEEP, most=_MOST_DEEP)
        inner = None
        if not self.passed_over:
            local = self.local.get(name)
            inner = self.nodes[-1].child(self._local_name(name) if local is None else local, attributes)
        if inner is None:
            self.passed_over += 1
            return
        self.nodes.append(inner)
        self.texts.append([] if inner.wants_text else None)

    def _local_name(self, name: str) -> str:
        namespace, _, local = name.rpartition(" ")
        if self.namespace is None:
            self.namespace = namespace
            return name
        self.local[name] = local if namespace == self.namespace else ""
        return self.local[name]

    def data(self, text: str) -> None:
        if not self.passed_over:
            kept = self.texts[-1]
            if kept is not None:
                kept.append(text)

    def end(self, name: str) -> None:
        if self.passed_over:
            self.passed_over -= 1
            return
        node, kept = self.nodes.pop(), self.texts.pop()
        node.close("" if kept is None else "".join(kept))

    def refuse(self, *_: Any) -> int:
        raise self.place.error(DECLARATIONS)


def parse(path: PathLike, root: Node, place: Place, progress: Progress = silent) -> None:
    """Read the XML file ``path``; ``root`` listens to the whole.

    The outermost element comes as ``namespace name``, those of its namespace by their bare name, others as "".

    Raises SurveyError, naming file and line, for what is no whole XML or could do harm; ``progress`` is called with
    stage ``"points"`` and may raise to stop.
    """
    stream = _Stream(root, place)
    parser = place.parser = expat.ParserCreate(namespace_separator=" ")
    parser.buffer_text = True
    parser.buffer_size = 1 << 16
    parser.StartElementHandler = stream.start
    parser.CharacterDataHandler = stream.data
    parser.EndElementHandler = stream.end
    parser.StartDoctypeDeclHandler = stream.refuse
    parser.EntityDeclHandler = stream.refuse
    parser.ExternalEntityRefHandler = stream.refuse
    try:
        size = max(1, Path(path).stat().st_size)
        read = 0
        with open(path, "rb") as file:
            while True:
                progress(min(1.0, read / size), "points")
                block = file.read(_BLOCK)
                read += len(block)
                parser.Parse(block, not block)
                if not block:
                    return
    except OSError as error:
        raise SurveyError(NO_FILE, file=place.file, reason=error.strerror or str(error)) from None
    except expat.ExpatError as error:
        raise place.error(
            NOT_XML, reason=expat.errors.messages.get(error.code, str(error)), line=error.lineno
        ) from None
    except (ValueError, LookupError) as error:  # an encoding that is unknown; a NUL in the path
        if parser.CurrentByteIndex < 0:
            raise SurveyError(NO_FILE, file=place.file, reason=str(error)) from None
        raise place.error(NOT_XML, reason=str(error)) from None
