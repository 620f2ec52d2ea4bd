"""A page of its own for a graded design."""

from __future__ import annotations

from typing import Callable

from ..earthwork.grading_study import GradingStudy
from ..files import PathLike, replace_file
from ..messages import QT_TRANSLATE_NOOP
from . import markup
from .grading_sections import CAUTIONS, design_body, volumes_body
from .labels import Words

TITLE = QT_TRANSLATE_NOOP("core", "Grading: {name}")


def write_grading_page(
    found: GradingStudy,
    path: PathLike,
    name: str,
    translate: Callable[[str], str] = str,
    language: str = "en",
) -> None:
    """Write a design as an HTML page that needs no other file.

    The same results give the same file. Raises SurveyError when it cannot be written.
    """
    words = Words(translate)
    main = design_body(found, words) + volumes_body(found, words)
    cautions = markup.caution([words(text) for text in CAUTIONS])
    text = markup.page(words(TITLE, name=name), language, cautions, main)
    with replace_file(path) as temporary, open(temporary, "w", encoding="utf-8", newline="\n") as stream:
        stream.write(text)
