"""Pole heights that lines of words state."""

from __future__ import annotations

import re
import unicodedata
from typing import Optional

from ..units import LengthUnit
from .composed_words import composed_role
from .said_units import UNITS
from .words import fold

_STATEMENT = re.compile(
    r"\b(?:pole|rod|antenna|ant|target|instrument|canne|antenne|jalon|antena|baston|(?:lot)?stab|antennen)"
    r"[ _-]*(?P<of>height|length|hgt|ht|offset|hohe|hoehe|lange|laenge|hoogte|hojde?|hoyde)?\s*[:=,]?\s*"
    r"(?P<value>[0-9]{1,4}(?:[.,][0-9]+)?)\s*(?P<unit>mm|cm|m|ft|usft|sft)?\b",
    re.IGNORECASE,
)
_OTHER_WAY = re.compile(
    r"\b(?:height|hohe|hauteur|altura|altezza|hoogte|wysokosc|vyska|hojd|hoyde)\s+(?:\w{1,3}[\s'’]+)*"
    r"(?:antenn[ae]|antenas?|anteny|antennen|canne|baston|bastone|tyczki)\s*[:=,]?\s*"
    r"(?P<value>[0-9]{1,4}(?:[.,][0-9]+)?)\s*(?P<unit>mm|cm|m|ft|usft|sft)?\b",
    re.IGNORECASE,
)


_VALUE = re.compile(
    r"(?P<words>[^\W\d][^\d:=,;()]{1,40}?)\s*(?P<sign>[:=,]?)\s*(?P<value>[0-9]{1,4}(?:[.,][0-9]+)?)"
    r"\s*(?P<unit>mm|cm|m|ft|usft|sft)?(?![\w.,])",
    re.IGNORECASE,
)
#: Short forms that mean a pole where a sign or a unit says that a length follows.
_SHORT = frozenset(("hi", "hr", "th", "rh", "ih", "ah"))


def _by_words(text: str) -> Optional[re.Match[str]]:
    """The first length behind words that a header would have for a column of pole heights."""
    for match in _VALUE.finditer(text):
        tokens = fold(match["words"]).split()
        for count in range(1, min(4, len(tokens)) + 1):
            last = tokens[-count:]
            short = "".join(last) in _SHORT and bool(match["sign"] in (":", "=") or match["unit"])
            if composed_role(last) == "pole_height" or (short and count == len(tokens)):
                return match
    return None


def pole_said(text: str) -> Optional[float]:
    """Metres of the pole that a sentence or comment such as "pole height 2.000 m" states, None where it states none."""
    words = unicodedata.normalize("NFKD", " ".join(text.split())[:200])
    plain = "".join(sign for sign in words if not unicodedata.combining(sign)).replace("ł", "l")
    match = _OTHER_WAY.search(plain)
    if match is None:
        match = _STATEMENT.search(plain)
        if match is None:
            match = _by_words(plain)
        elif (match["of"] or "").lower() == "offset" or not (match["of"] or match["unit"]):
            return None
    if match is None:
        return None
    unit = UNITS.get(fold(match["unit"] or "m"), LengthUnit.METRE)
    value = float(match["value"].replace(",", ".")) * unit.metres
    return value if 0.0 <= value <= 50.0 else None
