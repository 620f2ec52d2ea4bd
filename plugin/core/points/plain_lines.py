"""Lines made plain before their columns are looked for: cells that a spreadsheet was told to take as text, cells in
single quotes, and remarks behind a sign at the end of each line.
"""

from __future__ import annotations

import re
from dataclasses import replace

from .number_marks import is_number
from .source import TextSource

_LOOKED_AT, _MOST = 40, 0.8
_SINGLE = re.compile(r"(?:(?<=^)|(?<=[,;|\t]))([ ]?)'([^'\"]*)'(?=[ ]?(?:[,;|\t]|$))")
_REMARK = re.compile(r"[ \t]+(//|[#!%;])[ \t]+(?=\S)")


def made_plain(source: TextSource, comment: str) -> TextSource:
    """The file with quotes in place of ="..." and '...', and remarks as a column, where most lines have such."""
    some = source.first_lines(comment, _LOOKED_AT)
    data = source.data
    if sum(text.count('="') >= 3 for text in some) >= _MOST * len(some):
        data = data.replace(b'="', b'"')
    elif sum(len(_SINGLE.findall(text)) >= 3 for text in some) >= _MOST * len(some):
        data = "\n".join(_SINGLE.sub(r'\1"\2"', text) for text in data.decode().split("\n")).encode()
    elif sum(_has_remark(text) for text in some) >= _MOST * (len(some) - 1) and len(some) > 2:
        data = "\n".join(map(_with_remark, data.decode().split("\n"))).encode()
    return source if data is source.data else replace(source, data=data, stood=source.stood or source.data)


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
