"""Positions as latitude and longitude, as a file or a receiver gives them."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

import numpy as np


class HeightKind(Enum):
    """What heights beside longitude and latitude are."""

    ELLIPSOIDAL = "ellipsoidal"
    ORTHOMETRIC = "orthometric"
    UNKNOWN = "unknown"


@dataclass(frozen=True)
class GeographicPoints:
    """``longitude``, ``latitude``: (n,) float64, degrees, east and north positive, on the datum the receiver
    worked in (the file does not say which). ``height``: (n,) float64, metres, of the kind ``heights``.
    """

    longitude: np.ndarray
    latitude: np.ndarray
    height: np.ndarray
    heights: HeightKind = HeightKind.UNKNOWN

    def __len__(self) -> int:
        return len(self.longitude)

    def select(self, which: np.ndarray) -> GeographicPoints:
        """The positions of a mask or index array, in that order."""
        return GeographicPoints(self.longitude[which], self.latitude[which], self.height[which], self.heights)
