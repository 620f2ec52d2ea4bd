"""Lines whose coordinates stand in brackets, such as ``POINT Z (548240.762 5712395.593 92.134)``."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Optional, Tuple

from .number_marks import is_number
from .source import TextSource

_NUMBER = r"[+-]?[0-9]+(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?"
#: A point of the well-known text of simple features (OGC 06-103r4), or numbers in brackets.
_PLACE = re.compile(
    rf"\"?\s*(?:SRID=[0-9]+;)?\s*(?P<point>POINT\s*(?:ZM|Z|M)?)?\s*[({{\[]\s*"
    rf"(?P<numbers>{_NUMBER}(?:(?:\s*[,;]\s*|\s+){_NUMBER}){{1,5}})\s*[)}}\]]\s*\"?",
    re.IGNORECASE,
)
_WORDS = ("easting", "northing", "height", "measure")
_DEGREES = ("longitude", "latitude", "height", "measure")
_LOOKED_AT, _MOST = 40, 0.8


def without_brackets(source: TextSource, comment: str) -> TextSource:
    """The file with the numbers in brackets as columns of their own, as it is where most lines have none.

    The word of a point's column gives way to those of its coordinates, the one to the east first.
    """
    if not re.search(rb"[({\[]", source.data[:8192]):
        return source
    some = source.first_lines(comment, _LOOKED_AT)
    found = [_PLACE.search(text) for text in some]
    good = [match for match, text in zip(found, some) if match is not None and not _has_columns(text)]
    if len(good) < _MOST * (len(some) - 1) or not good:
        return source
    sign = _between(some[-1], good[-1].group(0))
    made = []
    for i, (_, text) in enumerate(source.each_line()):
        match = _PLACE.search(text)
        if match is not None:
            numbers = [number for number in re.split(r"[,;\s]+", match["numbers"]) if number]
            made.append(_joined(text, match.span(), sign.join(numbers), sign))
        elif i < _LOOKED_AT and good[0]["point"] is not None:
            made.append(_with_words(text, sign, good[0]))
        else:
            made.append(text)
    data = "".join(text + "\n" for text in made).encode()
    return replace(source, data=data, stood=source.stood or source.data)


def _has_columns(text: str) -> bool:
    """Whether a line has three numbers without looking into brackets."""
    bare = _PLACE.sub(" ", text)
    return any(sum(is_number(field.strip()) for field in bare.split(sign)) >= 3 for sign in (";", "\t", ",", None))


def _between(text: str, place: str) -> str:
    """What parts the columns beside the brackets; where nothing stands beside them a semicolon."""
    rest = text.replace(place, "")
    return next((sign for sign in "\t;|," if sign in rest), ";" if "," in place else ",")


def _joined(text: str, span: Tuple[int, int], numbers: str, sign: str) -> str:
    left, right = text[: span[0]].rstrip(f" {sign},"), text[span[1] :].lstrip(f" {sign},")
    return sign.join(part for part in (left, numbers, right) if part)


def _with_words(text: str, sign: str, match: re.Match) -> str:  # type: ignore[type-arg]
    """A header line with the words of coordinates in place of that of the point."""
    fields = text.split(sign)
    place: Optional[int] = next(
        (i for i, field in enumerate(fields) if re.search("wkt|geom|shape|point|location|the_geom", field, re.I)), None
    )
    if place is None:
        return text
    numbers = [float(number) for number in re.split(r"[,;\s]+", match["numbers"]) if number]
    degrees = abs(numbers[0]) <= 180.0 and abs(numbers[1]) <= 90.0
    words = (_DEGREES if degrees else _WORDS)[: len(numbers)]
    return sign.join([*fields[:place], *words, *fields[place + 1 :]])
