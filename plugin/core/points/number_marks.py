"""How a file writes its numbers: the decimal mark, what parts thousands, and words for no value."""

from __future__ import annotations

import re
from collections import Counter
from typing import Counter as Counts
from typing import Iterable, NamedTuple, Optional, Sequence, Tuple

_NUMBER = re.compile(r"[+-]?(?:[0-9]+(?:[.,][0-9]*)?|[.,][0-9]+)(?:[eEdD][+-]?[0-9]{1,4})?")
#: Groups of three digits with one and the same sign between them; with commas also of two before the last three, as in
#: 5,48,241.221.
_GROUPED = re.compile(
    r"[+-]?[0-9]{1,3}(?P<part>[ .,'’])(?:(?<=,)(?:[0-9]{2},)+)?[0-9]{3}(?:(?P=part)[0-9]{3})*(?:(?P<mark>[.,])[0-9]*)?"
)
_LONGEST = 40
#: A unit right behind a number.
_WITH_UNIT = re.compile(
    r"(?P<number>[+-]?[0-9][0-9., '’]*?)[ ]?(?P<unit>us-?ft|s-?ft|ftus|ift|ft|mm|cm|dm|km|m|yd|in)", re.IGNORECASE
)
#: The side right behind a coordinate of at least five digits before the mark, which no degree has.
_WITH_SIDE = re.compile(r"(?P<number>[+-]?[0-9]{5,}(?:[.,][0-9]+)?)[ ]?(?P<unit>m?[EN])")
#: What stands where there is no value, as programs and people write it (common practice, no source).
_NO_VALUE = re.compile(
    r"[+-]?nan|null|nil|none|void|n\.?/?a\.?|#n/a|#value!|#num!|#ref!|n\.?d\.?|no ?data|no ?value|"
    r"unknown|k\.?\s?a\.?|s/d|-+|[*]+|[?]+|[.]{2,}|_+|[–—]+|x{2,}",
    re.IGNORECASE,
)


class Marks(NamedTuple):
    """``decimal``: "." or ","; ``thousands``: the sign between groups of three digits, "" for none."""

    decimal: str
    thousands: str = ""


def other_marks(marks: Marks, delimiter: str) -> Optional[Marks]:
    """The other decimal mark, None where it parts thousands or columns."""
    mark = "," if marks.decimal == "." else "."
    return None if mark in (marks.thousands, delimiter) else Marks(mark)


def is_number(field: str) -> bool:
    """Whether a field is a number, with whichever mark, in groups of three or not."""
    field = without_unit(field)[0]
    return len(field) < _LONGEST and (_NUMBER.fullmatch(field) is not None or is_grouped(field))


def without_unit(field: str) -> Tuple[str, str]:
    """A field, and the unit that stood right behind the number in it, "" for none."""
    if not field[-1:].isalpha() or len(field) >= _LONGEST:
        return field, ""
    match = _WITH_UNIT.fullmatch(field) or _WITH_SIDE.fullmatch(field)
    return (field, "") if match is None else (match["number"], match["unit"])


def is_grouped(field: str) -> bool:
    """Whether a field can be a number in groups of three digits."""
    match = _GROUPED.fullmatch(field) if len(field) < _LONGEST else None
    return match is not None and match["part"] != match["mark"]


def is_no_value(field: str) -> bool:
    """Whether a field is a word or sign that stands where there is no value."""
    return len(field) < _LONGEST and _NO_VALUE.fullmatch(field) is not None


def ungrouped(field: str, marks: Marks) -> Optional[str]:
    """A number in groups of three without what parts them, None where it is none."""
    sign = "’'" if marks.thousands in ("'", "’") else marks.thousands
    match = _GROUPED.fullmatch(field) if marks.thousands and len(field) < _LONGEST else None
    if match is None or match["part"] not in sign or (match["mark"] or marks.decimal) != marks.decimal:
        return None
    return field.replace(match["part"], "")


def usual_marks(rows: Iterable[Sequence[str]], most: int, decimal: Optional[str] = None) -> Marks:
    """The marks of most numbers among the first ``most`` fields of ``rows``; ``decimal`` where it is known.

    A comma or point before three digits alone may be either; it counts as a decimal mark unless other numbers say
    otherwise.
    """
    decimals: Counts[str] = Counter()
    parted: Counts[str] = Counter()
    for row in rows:
        for field in row[:most]:
            if not field or len(field) >= _LONGEST:
                continue
            field = without_unit(field)[0]
            match = _GROUPED.fullmatch(field)
            if match is not None and match["part"] != match["mark"]:
                several = field.count(match["part"]) > 1 or match["part"] in " '’"
                if match["mark"] or several:
                    parted[match["part"]] += 1
                    decimals[match["mark"]] += bool(match["mark"])
                    continue
            plain = re.fullmatch(r"[+-]?[0-9]*([.,])[0-9]*(?:[eE][+-]?[0-9]+)?", field)
            if plain and len(field) > 1:
                decimals[plain[1]] += 1
    thousands = max(parted, key=lambda sign: parted[sign], default="")
    if decimal in (".", ","):
        return Marks(decimal, thousands if thousands != decimal else "")
    if thousands in (".", ","):
        return Marks("," if thousands == "." else ".", thousands)
    return Marks("," if decimals[","] > decimals["."] else ".", thousands)
