"""Files whose columns another sign parts from some line on: such lines get the sign of those before them."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import List, Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from .columns import coordinates_of, roles_of_header
from .delimiters import DELIMITERS
from .lines_of_text import split_line
from .number_marks import is_number
from .source import TextSource

CHANGED = Text(
    "points.sign_changed",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: from line {line} on {other} parts the columns in place of {sign}; {count} lines are read so.",
    ),
    weight=1,
)
_SIGNS = ("\t", ";", "|", ",", " ")
#: So many places of a file are looked at, and so many lines at its end.
_PLACES, _END, _LONGEST = 48, 5, 2000
#: Fewer lines than this are no part of a file.
_FEWEST = 3
_DECIMAL = re.compile(r"[+-]?[0-9]+([.,])[0-9]+")


def with_one_sign(source: TextSource, comment: str) -> Tuple[TextSource, Tuple[Message, ...]]:
    """The file with the sign of its first lines between the columns of all lines that have as many decimal numbers in
    the same columns, and what to tell. ``comment``: what begins comments.
    """
    first = _sign_of_first(source, comment)
    if not first or not _changes(source, first, comment):
        return source, ()
    texts = source.data.decode().split("\n")
    model = next(fields for fields in (_point(text, first, comment) for text in texts) if fields)
    marks = [match[1] for match in map(_DECIMAL.fullmatch, model) if match]
    found: List[int] = []
    other = ""
    for begin, end, sign in _runs(texts, first, comment):
        made = [_converted(text, sign, first, model, marks[0]) for text in texts[begin:end]]
        if end - begin >= _FEWEST and None not in made and not _under_header(texts, begin, sign):
            texts[begin:end] = [text for text in made if text is not None]
            found += range(begin, end)
            other = other or sign
    if not found:
        return source, ()
    told = message(
        CHANGED, file=source.file, line=found[0] + 1, count=len(found), sign=DELIMITERS.get(first, first),
        other=DELIMITERS.get(other, other),
    )  # fmt: skip
    made_data = "\n".join(texts).encode()
    return replace(source, data=made_data, stood=source.stood or source.data), (told,)


def _point(text: str, sign: str, comment: str) -> Optional[Sequence[str]]:
    """The fields of a line with three decimal numbers, None for any other."""
    if len(text) > _LONGEST or (comment and text.lstrip().startswith(comment)):
        return None
    fields = split_line(text, sign) or []
    numbers = sum(_DECIMAL.fullmatch(field) is not None for field in fields)
    return fields if len(fields) >= 3 and numbers >= 3 and not _glued(fields) else None


def _glued(fields: Sequence[str]) -> bool:
    """Whether commas for decimals were taken for signs between columns: most fields are digits with blanks between."""
    return sum(bool(re.fullmatch(r"[0-9]+ +[0-9]+", field)) for field in fields) > 1


def _sign_of(text: str, comment: str) -> str:
    return next((sign for sign in _SIGNS if sign in text and _point(text, sign, comment)), "")


def _sign_of_first(source: TextSource, comment: str) -> str:
    """The sign of the first line with three decimal numbers, "" for none."""
    for text in source.first_lines(comment, 40):
        sign = _sign_of(text, comment)
        if sign:
            return sign
    return ""


def _changes(source: TextSource, first: str, comment: str) -> bool:
    """Whether one of some lines from all over the file has another sign."""
    data = source.data
    places = np.linspace(0, max(len(data) - 2, 0), _PLACES).astype(int).tolist()
    lines = [data[data.rfind(b"\n", 0, at) + 1 : data.find(b"\n", at)] for at in places]
    lines += data[-_LONGEST:].split(b"\n")[-_END - 1 :]
    signs = {_sign_of(line[:_LONGEST].decode(errors="ignore"), comment) for line in lines}
    return bool(signs - {"", first})


def _runs(texts: Sequence[str], first: str, comment: str) -> List[Tuple[int, int, str]]:
    """Begin, end and sign of runs of lines that are parted by another sign than the first."""
    runs: List[Tuple[int, int, str]] = []
    for i, text in enumerate(texts):
        sign = "" if _point(text, first, comment) else _sign_of(text, comment)
        if not sign:
            continue
        if runs and runs[-1][1] == i and runs[-1][2] == sign:
            runs[-1] = (runs[-1][0], i + 1, sign)
        else:
            runs.append((i, i + 1, sign))
    return runs


def _under_header(texts: Sequence[str], begin: int, sign: str) -> bool:
    """Whether a header of the same sign stands right above: then the part is one of its own."""
    above = next((text for text in reversed(texts[max(0, begin - 5) : begin]) if text.strip()), "")
    roles = roles_of_header(split_line(above.strip().lstrip("#"), sign) or [])
    return len(roles) >= 3 and all(role in roles for role in coordinates_of(roles))


def _converted(text: str, sign: str, first: str, model: Sequence[str], mark: str) -> Optional[str]:
    """A line with the sign and the decimal mark of the first ones, None where its columns are not theirs."""
    fields = split_line(text, sign) or []
    if not _alike(fields, model):
        return None
    other = "," if mark == "." else "."
    if all(match is None or match[1] == other for match in map(_DECIMAL.fullmatch, fields)):
        fields = [field.replace(other, mark) if _DECIMAL.fullmatch(field) else field for field in fields]
    if first == " ":
        fields = [re.sub(r"\s+", "_", field) or "-" for field in fields]
    return first.join(f'"{field}"' if first in field else field for field in fields)


def _alike(fields: Sequence[str], model: Sequence[str]) -> bool:
    """Whether numbers with decimals stand in the same columns and are as large: with as many digits, but for one."""
    decimals = [(_DECIMAL.fullmatch(one), _DECIMAL.fullmatch(other)) for one, other in zip(fields, model)]
    if abs(len(fields) - len(model)) > 1 or any(bool(one) != bool(other) for one, other in decimals):
        return False
    sizes = [abs(one.start(1) - other.start(1)) for one, other in decimals if one and other]
    return len(sizes) >= 3 and max(sizes) <= 1 and all(is_number(f) for f, (one, _) in zip(fields, decimals) if one)
