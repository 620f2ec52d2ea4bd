"""What the preview of a survey file shows, worked out by the core; no widget here."""

from __future__ import annotations

import os
import tempfile
from dataclasses import dataclass, replace
from functools import partial
from pathlib import Path
from typing import Dict, List, Optional, Sequence, Tuple

from ..core.georeference.answer_places import answer_place
from ..core.georeference.intake import Intake, take_in, where_it_lies
from ..core.georeference.intake_options import IntakeOptions, with_answer
from ..core.messages import Message, SurveyError
from ..core.points.columns import parse_columns
from ..core.points.detect import settle_form
from ..core.points.gdal_source import kind_of
from ..core.points.lines_of_text import split_line
from ..core.points.nmea import is_log
from ..core.points.questions import Answer
from ..core.points.recognise import look_at, recognise_look
from ..core.points.recognition import Recognition
from ..core.points.source import load_text
from ..core.units import LengthUnit

#: Larger files are read up to here, bytes; counts are those of the lines read.
MOST_BYTES = 2_000_000
MOST_ROWS = 60
MOST_COLUMNS = 60


@dataclass(frozen=True)
class Row:
    """A line as read: its number, its fields, and whether it is a comment, blank or the header."""

    line: int
    fields: Tuple[str, ...]
    passive: bool = False


@dataclass(frozen=True)
class Choices:
    """What the user chose in the preview. ``roles``: role to column number from 1, None for as recognised.
    ``correct``: the likely cause to mend; ``accept``: names of coordinate operations; ``answers``: to questions that
    nothing else here answers.
    """

    roles: Optional[Dict[str, int]] = None
    unit: Optional[LengthUnit] = None
    height_unit: Optional[LengthUnit] = None
    correct: str = ""
    accept: Tuple[str, ...] = ()
    answers: Tuple[Answer, ...] = ()

    @property
    def columns(self) -> str:
        """The roles as the parameter for columns takes them; "" for as recognised."""
        if self.roles is None:
            return ""
        return ",".join(f"{role}={column}" for role, column in self.roles.items())


@dataclass(frozen=True)
class Outcome:
    """What would come in: an intake, or the error that stops it."""

    intake: Optional[Intake]
    error: Optional[SurveyError]


class SurveyPreview:
    """The first part of survey files, and what would become of it.

    Raises SurveyError for a first file that is no text.
    """

    def __init__(self, paths: Sequence[str], options: IntakeOptions) -> None:
        self.paths, self.options = list(paths), replace(options, ask=False)
        self._places: Dict[str, Optional[Message]] = {}
        self._folder: Optional[tempfile.TemporaryDirectory] = None
        self.heads = [self._head(path) for path in self.paths]
        self.source = load_text(self.heads[0], options.encoding, options.layer)
        self.log = self.source.table is None and is_log(self.source.data)
        self.recognition: Optional[Recognition] = None
        self.recognition_error: Optional[SurveyError] = None
        if not self.log:
            self._recognise()
        self.rows = self._rows()

    @property
    def cut(self) -> bool:
        """Whether a file is longer than what is shown and counted."""
        return self.heads != self.paths

    @property
    def width(self) -> int:
        """How many columns the lines have."""
        return max((len(row.fields) for row in self.rows), default=0)

    @property
    def roles(self) -> Dict[str, int]:
        """Role to column number: as the user named them already, else as recognised, the likeliest first."""
        given = self.options.columns
        if given is not None and given.ordered is not None:
            return {word: i + 1 for i, word in enumerate(given.ordered) if word and not word.startswith("+")}
        if given is not None:
            header = self.recognition.header.words if self.recognition and self.recognition.header else ()
            plain = [word.strip().lower() for word in header]
            return {
                role: column if isinstance(column, int) else plain.index(column.strip().lower()) + 1
                for role, column in given.chosen
                if isinstance(column, int) or column.strip().lower() in plain
            }
        if self.recognition is None or not self.recognition.guesses:
            return {}
        return dict(self.recognition.guesses[0].columns)

    @property
    def settled(self) -> bool:
        """Whether the file can be read as it is, without a word of the user."""
        return (
            self.log or self.options.columns is not None or (self.recognition is not None and self.recognition.decided)
        )

    def outcome(self, choices: Choices) -> Outcome:
        """What would come in with ``choices``."""
        try:
            return Outcome(take_in(self.heads, self.chosen(choices)), None)
        except SurveyError as error:
            return Outcome(None, error)

    def place(self, choices: Choices, answer: Answer) -> Optional[Message]:
        """Where ``answer``, with ``choices`` for all else, would put the site; None where that cannot be found out."""
        if self.options.crs is None:
            return None
        key = f"{choices} {answer.typed}"
        if key not in self._places:
            look = partial(where_it_lies, self.heads[0])
            self._places[key] = answer_place(look, self.chosen(choices), answer)
        return self._places[key]

    def chosen(self, choices: Choices) -> IntakeOptions:
        """How the files are read with ``choices``."""
        columns = parse_columns(choices.columns) if choices.roles else self.options.columns
        options = replace(
            self.options, columns=columns, unit=choices.unit, height_unit=choices.height_unit, correct=choices.correct,
            accept=choices.accept,
        )  # fmt: skip
        for answer in choices.answers:
            options = with_answer(options, answer) or options
        return options

    def plain(self, text: str) -> str:
        """``text`` with the names of the files, not of their heads."""
        for head, path in zip(self.heads, self.paths):
            text = text.replace(head, path)
        return text

    def close(self) -> None:
        """Removes what was written for the preview."""
        if self._folder is not None:
            self._folder.cleanup()
            self._folder = None

    def _head(self, path: str) -> str:
        """``path``, or a file of its first lines where it is long."""
        try:
            if os.path.getsize(path) <= MOST_BYTES:
                return path
            with open(path, "rb") as stream:
                data = stream.read(MOST_BYTES)
        except (OSError, ValueError):
            return path  # the reader says what is wrong
        if kind_of(path, data):
            return path  # half of such a file is none
        if self._folder is None:
            self._folder = tempfile.TemporaryDirectory(prefix="survey")
        # Files of one name in two folders are two files.
        target = Path(self._folder.name) / str(len(list(Path(self._folder.name).iterdir()))) / Path(path).name
        target.parent.mkdir()
        target.write_bytes(data[: data.rfind(b"\n") + 1] or data)
        return str(target)

    def _recognise(self) -> None:
        options = self.options
        source = options.source_crs
        crs = options.crs if source is None or source.is_geographic else source
        try:
            form = settle_form(self.source, options.delimiter, options.comment, options.header)
            self.source = form.source  # with its columns parted where they stand at fixed places
            self.recognition = recognise_look(look_at(form, options.decimal, crs, options.given))
        except SurveyError as error:
            self.recognition_error = error

    def _rows(self) -> List[Row]:
        found = self.recognition
        source = self.source
        delimiter = "," if self.log else found.delimiter if found is not None else self.options.delimiter
        comment = "#" if self.log or found is None else found.comment
        header = found.header.line if found is not None and found.header is not None else 0
        rows: List[Row] = []
        for line, text in source.each_line():
            bare = text.strip()
            passive = not bare or bool(comment and bare.startswith(comment)) or line == header
            parted = delimiter is not None and len(delimiter) == 1 and (not passive or line == header)
            fields = (split_line(text, str(delimiter)) if parted else None) or [text]
            rows.append(Row(line, tuple(fields[:MOST_COLUMNS]), passive))
            if len(rows) >= MOST_ROWS:
                break
        return rows
