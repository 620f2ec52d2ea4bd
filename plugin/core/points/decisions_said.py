"""What is said of decisions that cannot be read, or whose points are not found."""

from __future__ import annotations

from ..messages import QT_TRANSLATE_NOOP, Text

NO_COLUMN = Text(
    "decisions.no_column",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: the header lacks {column}; it needs line, status and reason."),
)
BAD_LINE = Text(
    "decisions.bad_line",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: '{word}' is no line number of a survey; use 1, 2, ..."),
)
BAD_STATUS = Text(
    "decisions.bad_status", QT_TRANSLATE_NOOP("core", "{file}, line {line}: '{word}' is no status; use {words}.")
)
BAD_REASON = Text(
    "decisions.bad_reason",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: '{word}' is no reason; use {words}, several joined by '+'."),
)
BAD_QUOTES = Text(
    "decisions.bad_quotes", QT_TRANSLATE_NOOP("core", "{file}, line {line}: a quote is not closed; mend the line.")
)
DECIDED_TWICE = Text(
    "decisions.decided_twice",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: survey line {survey_line} is decided in line {before} already; keep one."
    ),
)
NO_POINT = Text(
    "decisions.no_point",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: survey line {survey_line} holds no point; the decision has no effect."
    ),
)
NO_POINT_OF = Text(
    "decisions.no_point_of",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: line {survey_line} of {source} holds no point; the decision has no effect."
    ),
)
NO_FILE = Text(
    "decisions.no_file",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: '{source}' is none of the files of this survey ({sources}); the decision has no effect.",
    ),
)
WHICH_FILE = Text(
    "decisions.which_file",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: survey line {survey_line} is a point in several files ({sources}); say which file is "
        "meant in a column 'source' of the decisions.",
    ),
)
WHICH_SOURCE = Text(
    "decisions.which_source",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: '{source}' may be any of {sources}; write the name as it stands there."
    ),
)
WHICH_POINT = Text(
    "decisions.which_point",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: {count} points are of survey line {survey_line}, and it cannot be told which is meant; "
        "decide on them in the layer, or import the points again.",
    ),
)
WITHOUT_FILE = Text(
    "decisions.without_file",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: {count} decisions name no file of the survey, the first in line {line}; each is taken for the only "
        "point of its line. A column 'source' says which file is meant.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "{file}: the decision in line {line} names no file of the survey; it is taken for the only point of "
        "its line. A column 'source' says which file is meant.",
    ),
)
