"""The confidence that every interval of this program has."""

from __future__ import annotations

#: Half the width of a two-sided 95 % interval of the normal distribution, in standard deviations.
NORMAL_95 = 1.959963984540054
