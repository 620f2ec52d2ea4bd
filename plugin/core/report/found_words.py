"""Kinds and statuses of the lines that the points show, in words."""

from __future__ import annotations

from typing import Dict

from ..features.found import FoundKind
from ..features.ground_lines import LineStatus
from ..messages import QT_TRANSLATE_NOOP

KIND_NAMES: Dict[FoundKind, str] = {
    FoundKind.STEP: QT_TRANSLATE_NOOP("core", "step (kerb, wall)"),
    FoundKind.TOP: QT_TRANSLATE_NOOP("core", "top of a slope"),
    FoundKind.TOE: QT_TRANSLATE_NOOP("core", "toe of a slope"),
    FoundKind.VALLEY: QT_TRANSLATE_NOOP("core", "bottom, gutter"),
    FoundKind.RIDGE: QT_TRANSLATE_NOOP("core", "ridge, crown"),
}
STATUS_NAMES: Dict[LineStatus, str] = {
    LineStatus.USED: QT_TRANSLATE_NOOP("core", "used"),
    LineStatus.PROPOSED: QT_TRANSLATE_NOOP("core", "proposed"),
    LineStatus.REJECTED: QT_TRANSLATE_NOOP("core", "rejected"),
}
