"""Water as HTML pages of their own, each a file that needs no other."""

from __future__ import annotations

from typing import Callable, Sequence

import numpy as np

from ..drainage.analysis import Drainage, DrainageChange
from ..drainage.flow import Flow
from ..drainage.inlet_list import Inlet
from ..drainage.ponds import PondOptions, Ponds
from ..drainage.shores import pond_shores
from ..drainage.study import WaterStudy
from ..files import PathLike, replace_file
from ..messages import QT_TRANSLATE_NOOP
from . import markup
from .labels import Words
from .water_change_sections import change_body
from .water_sections import CAUTIONS, method_body, ponds_body, water_body

WATER = QT_TRANSLATE_NOOP("core", "Where the water runs")
PONDS = QT_TRANSLATE_NOOP("core", "Ponds")
CHANGE = QT_TRANSLATE_NOOP("core", "What the change does to the water")

Translate = Callable[[str], str]


def write_water_page(study: WaterStudy, path: PathLike, translate: Translate = str, language: str = "en") -> None:
    """Ways, ponds, catchments and all else of ``study``. The same results give the same file.

    Raises SurveyError when it cannot be written.
    """
    words = Words(translate)
    _write(path, words(WATER), language, "", water_body(study, words))


def write_ponds_page(
    flow: Flow, ponds: Ponds, shores: Sequence[Sequence[np.ndarray]], inlets: Sequence[Inlet], options: PondOptions,
    path: PathLike, translate: Translate = str, language: str = "en",
) -> None:  # fmt: skip
    """The ponds alone. Raises SurveyError when the file cannot be written."""
    words = Words(translate)
    body = ponds_body(flow, ponds, shores, inlets, words) + method_body(options, flow.tin, words)
    _write(path, words(PONDS), language, _lead(words), body)


def write_change_page(
    before: Drainage, after: Drainage, change: DrainageChange, inlets: Sequence[Inlet], options: PondOptions,
    path: PathLike, translate: Translate = str, language: str = "en",
) -> None:  # fmt: skip
    """What a change of the surface does. Raises SurveyError when the file cannot be written."""
    words = Words(translate)
    shores = [pond_shores(each.flow, each.ponds) for each in (before, after)]
    body = change_body(before, after, change, shores, inlets, words) + method_body(options, before.flow.tin, words)
    _write(path, words(CHANGE), language, _lead(words), body)


def _lead(words: Words) -> str:
    return markup.caution([words(text) for text in CAUTIONS])


def _write(path: PathLike, title: str, language: str, lead: str, body: str) -> None:
    text = markup.page(title, language, lead, body)
    with replace_file(path) as name, open(name, "w", encoding="utf-8", newline="\n") as stream:
        stream.write(text)
