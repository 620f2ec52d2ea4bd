"""Which lines of a file are comments."""

from __future__ import annotations

import re
from typing import List, Optional, Tuple

from .number_marks import is_number
from .source import TextSource

#: A comment in use among other files stands above the data.
_ABOVE = 20
_LOOKED_AT = 300
OTHER_COMMENTS = ("//", "%", "!", "--")


def find_comment(source: TextSource, given: Optional[str]) -> Tuple[str, int]:
    """The sign that starts a comment line, "" for none; and how many of the first such lines hold numbers as points do.

    ``given``: "auto" to find out, "none" for no comments. It is # unless no line among the first starts with it and
    some above the data start with another usual sign. Where most lines with numbers start with #, that begins names.
    """
    if given != "auto":
        return ("" if given == "none" else given or ""), 0
    lines: List[str] = []
    for number, text in source.each_line():
        if text.strip():
            lines.append(text.strip())
        if number > _LOOKED_AT:
            break
    if not any(line.startswith("#") for line in lines[:_ABOVE]):
        above = lines[:_ABOVE]
        for mark in OTHER_COMMENTS:
            count = next((i for i, line in enumerate(above) if not line.startswith(mark)), len(above))
            if 0 < count < len(above) and not any(_like_a_point(line) for line in above[:count]):
                return mark, 0
    points = [line for line in lines if _like_a_point(line)]
    signed = [line for line in points if line.startswith("#")]
    if len(signed) * 2 > len(points):
        return ("" if any(line.startswith("# ") for line in signed) else "# "), 0
    return "#", len(signed)


def _like_a_point(line: str) -> bool:
    """Whether a line holds three numbers."""
    for sign in "\t;,| ":
        fields = [field.strip() for field in (line.split() if sign == " " else line.split(sign))[:50]]
        if sum(is_number(field.lstrip("# ") if i == 0 else field) for i, field in enumerate(fields)) >= 3:
            return True
    return bool(re.fullmatch(r"#?\s*[\d.,;\s]+", line)) and len(line.split()) >= 3
