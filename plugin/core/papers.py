"""Sizes of paper."""

from __future__ import annotations

from enum import Enum
from typing import Tuple

MM_PER_INCH = 25.4


class Paper(Enum):
    """Sheets of paper; ``value`` is the word of settings. Sizes: ISO 216; ANSI/ASME Y14.1 (from memory)."""

    A4 = "A4"
    A3 = "A3"
    A2 = "A2"
    A1 = "A1"
    A0 = "A0"
    LETTER = "Letter"
    TABLOID = "Tabloid"
    ANSI_C = "ANSI C"
    ANSI_D = "ANSI D"

    @property
    def sides(self) -> Tuple[float, float]:
        """Long and short side, mm."""
        return _SIDES[self]


#: Those of profiles and cross-sections, which an office prints itself.
OFFICE_PAPERS = (Paper.A4, Paper.A3, Paper.LETTER, Paper.TABLOID)

_SIDES = {
    Paper.A4: (297.0, 210.0),
    Paper.A3: (420.0, 297.0),
    Paper.A2: (594.0, 420.0),
    Paper.A1: (841.0, 594.0),
    Paper.A0: (1189.0, 841.0),
    Paper.LETTER: (279.4, 215.9),
    Paper.TABLOID: (431.8, 279.4),
    Paper.ANSI_C: (558.8, 431.8),
    Paper.ANSI_D: (863.6, 558.8),
}
