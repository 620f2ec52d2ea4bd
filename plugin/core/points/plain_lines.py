"""Lines made plain before their columns are looked for: cells that a spreadsheet was told to take as text, cells in
single quotes, remarks behind a sign at the end of each line, feet with inches, a minus behind a number, far before it
or brackets in place of it, and words for the level behind heights.
"""

from __future__ import annotations

import re
from dataclasses import replace

from .level_words import without_levels
from .number_marks import is_number
from .source import TextSource
from .wrapped import unwrapped

_LOOKED_AT, _MOST = 40, 0.8
_SINGLE = re.compile(r"(?:(?<=^)|(?<=[,;|\t]))([ ]?)'([^'\"]*)'(?=[ ]?(?:[,;|\t]|$))")
_REMARK = re.compile(r"[ \t]+(//|[#!%;])[ \t]+(?=\S)")
#: Feet and inches such as 298' 6.48", 298'-6 1/2" or 298 ft 6 in, in quotes or not.
_FEET = re.compile(
    r"(?:(?<=^)|(?<=[;,|\t]))[ ]?\"?(?P<sign>-?)(?P<feet>[0-9]+)[ ]?(?:'|′|ft)[ -]?"
    r"(?P<inches>(?:1[01]|[0-9])(?:\.[0-9]+)?)"
    r"(?:[ ](?P<top>[0-9]{1,2})/(?P<below>[0-9]{1,3}))?[ ]?(?:\"{1,3}|″\"?|''\"?|in\"?)(?![\w.\"])",
    re.MULTILINE,
)
#: Decimal feet such as 298.54' or 298.54 ft., alone in a cell.
_PRIME = re.compile(
    r"(?:(?<=^)|(?<=[;,|\t]))([ ]?[+-]?[0-9]+[.,][0-9]+)[ ]?(?:'|′|ft\.)(?=[ ]*(?:[;,|\t]|$))", re.MULTILINE
)
_EDGE, _END = r"(?:(?<=^)|(?<=[;,|\t ]))", r"(?=[ ]*(?:[;,|\t ]|$))"
#: A number with decimals and a minus behind it, or in brackets as bookkeepers write what is below zero.
_BELOW_ZERO = re.compile(
    rf"{_EDGE}(?:\((?P<bracket>[0-9]{{1,4}}[.,][0-9]+)\)|(?P<behind>[0-9]+[.,][0-9]+)-){_END}", re.MULTILINE
)
#: A minus as printers set it, or parted from its number by a blank, at the start of a cell.
_MINUS = re.compile(r"(?:(?<=^)|(?<=[;,|\t]))([ ]?)(?:[–−][ ]?|-[ ])(?=[0-9]+[.,][0-9])", re.MULTILINE)
_SEVERAL = 3


def made_plain(source: TextSource, comment: str) -> TextSource:
    """The file with bare rows in place of wrapped ones, and quotes in place of ="..." and '...', or remarks as a
    column, or feet and inches as decimal feet, or ft for a sign of feet, where most lines have such, with minus signs
    right before numbers where several have them elsewhere, and heights without a word for their level.
    """
    some = source.first_lines(comment, _LOOKED_AT)
    data = unwrapped(source.data, some)
    if sum(text.count('="') >= 3 for text in some) >= _MOST * len(some):
        data = data.replace(b'="', b'"')
    elif sum(len(_SINGLE.findall(text)) >= 3 for text in some) >= _MOST * len(some):
        data = "\n".join(_SINGLE.sub(r'\1"\2"', text) for text in data.decode().split("\n")).encode()
    elif sum(_has_remark(text) for text in some) >= _MOST * (len(some) - 1) and len(some) > 2:
        data = "\n".join(map(_with_remark, data.decode().split("\n"))).encode()
    elif sum(_FEET.search(text) is not None for text in some) >= _MOST * (len(some) - 1) and len(some) > 2:
        data = _FEET.sub(_as_feet, data.decode()).encode()
    elif sum(_PRIME.search(text) is not None for text in some) >= _MOST * (len(some) - 1) and len(some) > 2:
        data = _PRIME.sub(r"\1 ft", data.decode()).encode()
    if sum(len(_BELOW_ZERO.findall(text)) for text in some) >= _SEVERAL:
        data = _BELOW_ZERO.sub(lambda match: f"-{match['bracket'] or match['behind']}", data.decode()).encode()
    if sum(len(_MINUS.findall(text)) for text in some) >= _SEVERAL:
        data = _MINUS.sub(r"\1-", data.decode()).encode()
    plain = source if data is source.data else replace(source, data=data, stood=source.stood or source.data)
    return without_levels(plain, comment) or plain


def _as_feet(match: re.Match) -> str:  # type: ignore[type-arg]
    part = float(match["top"]) / float(match["below"]) if match["below"] and float(match["below"]) else 0.0
    feet = float(match["feet"]) + (float(match["inches"]) + part) / 12.0
    return f"{match['sign']}{feet:.6f} ft"


def _has_remark(text: str) -> bool:
    """Whether numbers stand right before a sign with blanks around, and words behind it."""
    match = _REMARK.search(text)
    if match is None:
        return False
    before = re.split(r"[,;\t]|\s+", text[: match.start()])
    return is_number(before[-1].strip()) and sum(is_number(field.strip()) for field in before) >= 3


def _with_remark(text: str) -> str:
    match = _REMARK.search(text) if _has_remark(text) else None
    if match is None:
        return text
    before = text[: match.start()]
    sign = next((sign for sign in "\t;," if sign in before), " ")
    return f"{before}{sign}{text[match.end() :]}"
