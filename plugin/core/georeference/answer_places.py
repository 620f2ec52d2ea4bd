"""Where each answer to a question of a survey would put the site: looked up on the first lines of its files."""

from __future__ import annotations

import tempfile
from dataclasses import replace
from pathlib import Path
from typing import Callable, List, Optional

from ..files import PathLike
from ..messages import Message, SurveyError
from ..points.gdal_source import kind_of
from ..points.questions import Answer, QuestionError
from .intake_options import IntakeOptions, with_answer

#: As much of a file says where it lies, bytes.
HEAD = 65536
#: So many questions one after another are answered to see where an answer leads.
MOST_ASKED = 5

#: Where files read with some options lie, in words; raises as the reading does.
Look = Callable[[PathLike, IntakeOptions], Message]


def places_of_answers(error: QuestionError, path: PathLike, options: IntakeOptions, look: Look) -> QuestionError:
    """``error`` of the file at ``path`` with the place of each answer; as it is for a pipe, which cannot be read again,
    and on a local grid, which is nowhere."""
    if options.crs is None or not Path(path).is_file():
        return error
    with tempfile.TemporaryDirectory(prefix="survey") as folder:
        head = _head_of(Path(path), Path(folder))
        return error.looked_up(lambda one: one.place or answer_place(lambda said: look(head, said), options, one))


def answer_place(look: Callable[[IntakeOptions], Message], options: IntakeOptions, answer: Answer) -> Optional[Message]:
    """Where an answer would put the site, with the likeliest answers to what is asked then; None where that cannot be
    found out."""
    given: List[Answer] = [answer]
    for _ in range(MOST_ASKED):
        try:
            answered: Optional[IntakeOptions] = replace(options, ask=False)
            for one in given:
                answered = None if answered is None else with_answer(answered, one)
            return None if answered is None else look(answered)
        except QuestionError as error:
            more = [one for question in error.questions for one in question.answers if not one.fill_in][:1]
            if not more:
                return None
            given += more
        except (SurveyError, ValueError):
            return None
    return None


def _head_of(path: Path, folder: Path) -> Path:
    """A file of the first lines of ``path``, or ``path`` itself where it is short or cannot be cut."""
    with open(path, "rb") as stream:
        data = stream.read(HEAD + 1)
    if len(data) <= HEAD or kind_of(str(path), data) or b"\0" in data:
        return path
    head = folder / path.name
    head.write_bytes(data[: data.rfind(b"\n") + 1] or data)
    return head
