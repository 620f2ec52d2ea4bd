"""What the gate decides on some points."""

from __future__ import annotations

from typing import NamedTuple, Optional

import numpy as np

from ..messages import Text
from ..points.pointset import Reason


class Verdict(NamedTuple):
    """Points ``indices`` (k,) get ``reason``; ``text`` says why, with the likely ``cause``. ``away``: (k,) metres from
    the others; ``step``: the usual distance of points (m), nan where it does not matter.
    """

    indices: np.ndarray
    reason: Reason
    text: Text
    away: np.ndarray
    cause: Optional[Text] = None
    step: float = float("nan")
