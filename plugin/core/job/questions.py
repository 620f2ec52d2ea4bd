"""The questions that a job can be asked, by the names they have in its file."""

from __future__ import annotations

from typing import Dict

from .basin import BasinQuestion
from .exchange import ExchangeQuestion
from .grading import GradingQuestion
from .road import RoadQuestion
from .volumes import VolumeQuestion
from .water import WaterQuestion

QUESTIONS: Dict[str, type] = {
    "water": WaterQuestion,
    "road": RoadQuestion,
    "pads": GradingQuestion,
    "volume": VolumeQuestion,
    "basin": BasinQuestion,
    "exchange": ExchangeQuestion,
}
