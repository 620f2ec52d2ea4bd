"""Pages of their own for volumes, stockpiles and basins."""

from __future__ import annotations

from typing import Callable, Sequence, Tuple

from ..earthwork.study import Study
from ..files import PathLike, replace_file
from ..messages import QT_TRANSLATE_NOOP
from . import markup
from .labels import Words
from .volume_sections import CAUTIONS, volume_body

TITLE = QT_TRANSLATE_NOOP("core", "Earthwork: {existing} to {design}")


def write_volume_page(
    study: Study, path: PathLike, translate: Callable[[str], str] = str, language: str = "en", title: str = ""
) -> None:
    """Write a comparison as an HTML page that needs no other file.

    The same results give the same file. Raises SurveyError when it cannot be written.
    """
    words = Words(translate)
    heading = title or words(TITLE, existing=study.existing_name, design=study.design_name)
    write_page(heading, volume_body(study, words), path, words, language)


def write_volume_pages(
    title: str,
    studies: Sequence[Tuple[str, Study]],
    path: PathLike,
    translate: Callable[[str], str] = str,
    language: str = "en",
) -> None:
    """Several comparisons by name, one after the other on a page. Raises SurveyError when it cannot be written."""
    words = Words(translate)
    parts = [markup.section(f"part-{i}", name, volume_body(study, words)) for i, (name, study) in enumerate(studies, 1)]
    write_page(title, "".join(parts), path, words, language)


def write_page(title: str, body: str, path: PathLike, words: Words, language: str) -> None:
    """A page of earthwork with its cautions on top. Raises SurveyError when it cannot be written."""
    text = markup.page(title, language, markup.caution([words(caution) for caution in CAUTIONS]), body)
    with replace_file(path) as name, open(name, "w", encoding="utf-8", newline="\n") as stream:
        stream.write(text)
