"""Points as rows of a list in a program, in brackets or with a sign behind each, lines in quotes as a whole, and cells
with a mark before each number: what is around the columns is taken off.
"""

from __future__ import annotations

import re
from typing import Callable, List, Optional, Sequence, Tuple

from .number_marks import is_number

_MOST, _FEWEST = 0.8, 3
#: A row in one pair of brackets, with words before it and a sign behind.
_ROW = re.compile(r"^[^0-9(){}\[\]]*[({\[](?P<inside>[^(){}\[\]]+)[)}\]][ ]*[,;]*[ ]*$")
_ENDED = re.compile(r"^(?P<row>[^;]+);[ ]*$")
#: At least three columns in one pair of quotes, quotes within doubled.
_QUOTED = re.compile(r'^"(?P<inside>(?:[^"]|"")*[,;\t](?:[^"]|"")*[,;\t](?:[^"]|"")*)"[ ]*$')
_DECIMAL = r"[+-]?[0-9]+\.[0-9]+"
#: A name before coordinates, parted from them by another sign than they are from each other.
_NAMED = re.compile(
    rf"^(?P<name>[^\s,;:@]+)[ ]*(?:[:@ ])[ ]*(?P<rest>{_DECIMAL}[ ]*,[ ]*{_DECIMAL}[ ]*,[ ]*{_DECIMAL}.*)$"
)
#: A number in brackets, behind an apostrophe, or a coordinate behind the letter of its axis.
_MARKED = re.compile(
    rf"(?:(?<=^)|(?<=[;,|\t]))[ ]?(?:'(?P<text>{_DECIMAL})|\[(?P<bracket>{_DECIMAL})\]|"
    r"[EN](?P<axis>[0-9]{4,}\.[0-9]+))"
    r"(?=[ ]?(?:[;,|\t]|$))"
)


def unwrapped(data: bytes, first: Sequence[str]) -> bytes:
    """The text ``data`` with bare rows where most of its ``first`` lines are wrapped in one of these ways."""
    for change in (_bare_row, _without_quotes, _without_end, _name_apart, _without_marks):
        if sum(change(text) is not None for text in first) >= max(_FEWEST, _MOST * (len(first) - 1)):
            return _changed(data, change)
    return data


def _changed(data: bytes, change: Callable[[str], Optional[str]]) -> bytes:
    lines: List[Tuple[str, Optional[str]]] = [(text, change(text)) for text in data.decode().split("\n")]
    return "\n".join(text if new is None else new for text, new in lines).encode()


def _bare_row(text: str) -> Optional[str]:
    match = _ROW.match(text)
    fields = match["inside"].split(",") if match is not None else []
    numbers = sum(is_number(field.rpartition(":")[2].strip()) for field in fields)
    return match["inside"].replace("'", '"').strip() if match is not None and numbers >= 3 and len(fields) > 3 else None


def _without_quotes(text: str) -> Optional[str]:
    """A line that one pair of quotes holds as a whole, as spreadsheets store lines that stood in one cell."""
    match = _QUOTED.match(text)
    return match["inside"].replace('""', '"') if match is not None else None


def _without_end(text: str) -> Optional[str]:
    match = _ENDED.match(text)
    many = match is not None and sum(map(is_number, match["row"].split())) >= 3
    return match["row"].rstrip() if match is not None and many else None


def _name_apart(text: str) -> Optional[str]:
    match = _NAMED.match(text)
    return None if match is None else f"{match['name']},{match['rest']}"


def _without_marks(text: str) -> Optional[str]:
    if len(_MARKED.findall(text)) < 2:
        return None
    return _MARKED.sub(lambda match: match["text"] or match["bracket"] or match["axis"], text)
