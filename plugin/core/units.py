"""Length units of survey data and their exact factors."""

from __future__ import annotations

from enum import Enum


class LengthUnit(Enum):
    """A length unit; ``value`` is the word used in files and on the command line.

    Factors: NIST SP 811 (international foot 0.3048 m exactly; U.S. survey foot 1200/3937 m exactly).
    """

    METRE = "m"
    FOOT = "ft"
    US_SURVEY_FOOT = "us-ft"

    @property
    def metres(self) -> float:
        """Length of one unit in metres."""
        return _METRES[self]

    @property
    def symbol(self) -> str:
        """Short form for labels."""
        return _SYMBOLS[self]


_METRES = {LengthUnit.METRE: 1.0, LengthUnit.FOOT: 0.3048, LengthUnit.US_SURVEY_FOOT: 1200.0 / 3937.0}
_SYMBOLS = {LengthUnit.METRE: "m", LengthUnit.FOOT: "ft", LengthUnit.US_SURVEY_FOOT: "ftUS"}
