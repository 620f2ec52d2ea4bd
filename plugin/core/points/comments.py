"""Which lines of a file are comments."""

from __future__ import annotations

import re
from typing import List, NamedTuple, Optional

from .number_marks import is_number
from .source import TextSource

#: A comment in use among other files stands above the data.
_ABOVE = 20
_LOOKED_AT = 300
OTHER_COMMENTS = ("//", "%", "!", "--")


class CommentSign(NamedTuple):
    """``mark``: what starts a comment line, "" for nothing; ``points``: how many of the first such lines hold numbers
    as points do; ``names``: how many of these without a blank behind the sign, so that it may begin their names.
    """

    mark: str
    points: int = 0
    names: int = 0


def find_comment(source: TextSource, given: Optional[str]) -> CommentSign:
    """What starts a comment line.

    ``given``: "auto" to find out, "none" for no comments. It is # unless no line among the first starts with it and
    some above the data start with another usual sign. Where most lines with numbers start with #, that begins names.
    """
    if given != "auto":
        return CommentSign("" if given == "none" else given or "")
    lines: List[str] = []
    for _, text in source.each_line():
        if text.strip():
            lines.append(text.strip())
        if len(lines) >= _LOOKED_AT:
            break
    if not any(line.startswith("#") for line in lines[:_ABOVE]):
        above = lines[:_ABOVE]
        for mark in OTHER_COMMENTS:
            count = next((i for i, line in enumerate(above) if not line.startswith(mark)), len(above))
            if 0 < count < len(above) and not any(_like_a_point(line) for line in above[:count]):
                return CommentSign(mark)
    if not any(line.startswith("#") for line in lines):
        return CommentSign("#")
    points = [line for line in lines if _like_a_point(line)]
    signed = [line for line in points if line.startswith("#")]
    if len(signed) * 2 > len(points):
        return CommentSign("" if any(line.startswith("# ") for line in signed) else "# ")
    return CommentSign("#", len(signed), sum(re.match("#[^#\\s]", line) is not None for line in signed))


def _like_a_point(line: str) -> bool:
    """Whether a line holds three numbers."""
    for sign in "\t;,| ":
        fields = [field.strip() for field in (line.split() if sign == " " else line.split(sign))[:50]]
        if sum(is_number(field.lstrip("# ") if i == 0 else field) for i, field in enumerate(fields)) >= 3:
            return True
    return bool(re.fullmatch(r"#?\s*[\d.,;\s]+", line)) and len(line.split()) >= 3
