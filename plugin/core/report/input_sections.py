"""The sections of the report about what came in: file, coordinates, lines."""

from __future__ import annotations

from pathlib import PurePath
from typing import List, Sequence, Tuple

import numpy as np

from ..georeference.crs import plan_unit
from ..linework.constraints import ConstraintLine, LineKind
from ..messages import QT_TRANSLATE_NOOP
from ..points.delimited import PointFile
from ..points.pointset import SOURCE
from . import markup
from .labels import Words, crs_name, number
from .markup import Section
from .measures import plan_length
from .remarks import messages_list, say_message
from .results import JobResult

_REJECTS_SHOWN = 50

OTHER_LINES = QT_TRANSLATE_NOOP("core", "other sentences of a receiver log")


# What came in


def survey_section(result: JobResult, words: Words) -> Section:
    account = result.survey.account
    say = words
    rows = [
        (say(QT_TRANSLATE_NOOP("core", "points")), number(account.points)),
        (say(QT_TRANSLATE_NOOP("core", "rejected lines")), number(account.rejects)),
        (say(QT_TRANSLATE_NOOP("core", "comment lines")), number(account.comments)),
        (say(QT_TRANSLATE_NOOP("core", "blank lines")), number(account.blanks)),
        (say(QT_TRANSLATE_NOOP("core", "header lines")), number(account.header)),
        *([(say(OTHER_LINES), number(account.other))] if account.other else []),
        (say(QT_TRANSLATE_NOOP("core", "together, the lines of the file")), number(account.lines)),
    ]
    file = PurePath(result.survey.points.source).name
    body = _files_table(result, say) or markup.paragraph(say(QT_TRANSLATE_NOOP("core", "File: {file}"), file=file))
    body += markup.table(
        say(QT_TRANSLATE_NOOP("core", "Every line of the file")),
        [say(QT_TRANSLATE_NOOP("core", "Lines that are")), say(QT_TRANSLATE_NOOP("core", "Count"))],
        rows,
        "hn",
    )
    for source in result.sources or (result.survey,):
        body += markup.facts(_read_caption(result, source, say), _format_facts(source, say))
    body += _rejects_table(result, say)
    body += messages_list(result.survey.messages, say) + _recognition(result, say) + _differences_table(result, say)
    return "survey", say(QT_TRANSLATE_NOOP("core", "What came in")), body


def _files_table(result: JobResult, say: Words) -> str:
    """The files of a merged survey, "" for a single one."""
    if result.merged is None:
        return ""
    counts = [(file.account.lines, file.account.points, file.account.rejects) for file in result.sources]
    rows = [(name, *(number(n) for n in count)) for name, count in zip(result.merged.sources, counts)]
    return markup.table(
        say(QT_TRANSLATE_NOOP("core", "The files of the survey")),
        [
            say(QT_TRANSLATE_NOOP("core", "File")),
            say(QT_TRANSLATE_NOOP("core", "Lines")),
            say(QT_TRANSLATE_NOOP("core", "points")),
            say(QT_TRANSLATE_NOOP("core", "rejected lines")),
        ],
        rows,
        "hnnn",
    )


def _recognition(result: JobResult, say: Words) -> str:
    """Why the columns of the first file were taken for what they are."""
    found = result.sources[0].recognition if result.sources else None
    if found is None or not found.guesses or not found.guesses[0].reasons:
        return ""
    lead = QT_TRANSLATE_NOOP("core", "Why the columns were taken so:")
    return messages_list(found.guesses[0].reasons, say, lead)


def _differences_table(result: JobResult, say: Words) -> str:
    """Same places of different files with different heights."""
    merged = result.merged
    if merged is None or not len(merged.height_differences):
        return ""
    points, found = result.survey.points, merged.height_differences
    order = np.argsort(-np.abs(found.rise), kind="stable")[:_REJECTS_SHOWN]
    rows = []
    for i in order.tolist():
        ends = [
            f"{points.extra[SOURCE][k]}, {points.source_line[k]}" for k in (int(found.first[i]), int(found.second[i]))
        ]
        rows.append((*ends, say.small_plan.said(float(found.distance[i])), say.small.said(float(found.rise[i]))))
    return markup.table(
        say(QT_TRANSLATE_NOOP("core", "Same place, different heights: the largest differences")),
        [
            say(QT_TRANSLATE_NOOP("core", "First file, line")),
            say(QT_TRANSLATE_NOOP("core", "Second file, line")),
            say(QT_TRANSLATE_NOOP("core", "Apart in plan")),
            say(QT_TRANSLATE_NOOP("core", "Second minus first")),
        ],
        rows,
        "wwnn",
    )


def _read_caption(result: JobResult, source: PointFile, say: Words) -> str:
    if result.merged is None:
        return say(QT_TRANSLATE_NOOP("core", "How the file was read"))
    return say(QT_TRANSLATE_NOOP("core", "How {file} was read"), file=PurePath(source.points.source).name)


def _format_facts(source: PointFile, say: Words) -> List[Tuple[str, str]]:
    shape = source.format
    if not shape.columns:
        log = say(QT_TRANSLATE_NOOP("core", "receiver log, NMEA 0183"))
        return [
            (say(QT_TRANSLATE_NOOP("core", "format")), log),
            (say(QT_TRANSLATE_NOOP("core", "text encoding")), shape.encoding.upper()),
        ]
    delimiters = {
        ",": QT_TRANSLATE_NOOP("core", "comma"),
        ";": QT_TRANSLATE_NOOP("core", "semicolon"),
        "\t": QT_TRANSLATE_NOOP("core", "tab"),
        " ": QT_TRANSLATE_NOOP("core", "spaces"),
    }
    marks = {".": QT_TRANSLATE_NOOP("core", "point"), ",": QT_TRANSLATE_NOOP("core", "comma")}
    columns = sorted(shape.columns.items(), key=lambda item: item[1])
    return [
        (
            say(QT_TRANSLATE_NOOP("core", "delimiter")),
            say(delimiters[shape.delimiter]) if shape.delimiter in delimiters else shape.delimiter,
        ),
        (say(QT_TRANSLATE_NOOP("core", "decimal mark")), say(marks[shape.decimal])),
        (say(QT_TRANSLATE_NOOP("core", "text encoding")), shape.encoding.upper()),
        (say(QT_TRANSLATE_NOOP("core", "columns read")), ", ".join(f"{column} {role}" for role, column in columns)),
        (say(QT_TRANSLATE_NOOP("core", "unit of plan coordinates")), shape.unit.symbol),
        (say(QT_TRANSLATE_NOOP("core", "unit of heights")), shape.height_unit.symbol),
    ]


def _rejects_table(result: JobResult, say: Words) -> str:
    rejects = result.survey.rejects
    count = len(rejects.line)
    if count == 0:
        return markup.paragraph(say(QT_TRANSLATE_NOOP("core", "No line was rejected.")))
    sources = [] if rejects.source is None else rejects.source.tolist()
    rows = [
        (*sources[i : i + 1], str(rejects.line[i]), say_message(rejects.reason[i], say), rejects.text[i][:120])
        for i in range(min(count, _REJECTS_SHOWN))
    ]
    html = markup.table(
        say(QT_TRANSLATE_NOOP("core", "Rejected lines")),
        [
            *([say(QT_TRANSLATE_NOOP("core", "File"))] if sources else []),
            say(QT_TRANSLATE_NOOP("core", "Line")),
            say(QT_TRANSLATE_NOOP("core", "Reason")),
            say(QT_TRANSLATE_NOOP("core", "As it stands in the file")),
        ],
        rows,
        "wnwt" if sources else "nwt",
    )
    if count > _REJECTS_SHOWN:
        more = QT_TRANSLATE_NOOP("core", "Further rejected lines, in the table of rejects: {count}.")
        html += markup.paragraph(say(more, count=number(count - _REJECTS_SHOWN)))
    return html


# Coordinates


def coordinates_section(result: JobResult, words: Words) -> Section:
    say, unit, tin = words, plan_unit(result.crs), result.surface.tin
    height = result.shown_height_unit
    name, code = crs_name(result.crs)
    system = f"{name} ({code})" if code else name or say(QT_TRANSLATE_NOOP("core", "local grid, metres"))
    west, south, east, north = (value / unit.metres for value in tin.bounds)
    low, high = (value / height.metres for value in tin.height_range)
    span = QT_TRANSLATE_NOOP("core", "{low} to {high} {unit}")
    place = [] if result.where is None else [
        (say(QT_TRANSLATE_NOOP("core", "where the survey lies")), say_message(result.where.values["place"], say))
    ]  # fmt: skip
    rows = [
        (say(QT_TRANSLATE_NOOP("core", "coordinate system")), system),
        *place,
        (
            say(QT_TRANSLATE_NOOP("core", "easting of the surface")),
            say(span, low=number(west, 3), high=number(east, 3), unit=unit.symbol),
        ),
        (
            say(QT_TRANSLATE_NOOP("core", "northing of the surface")),
            say(span, low=number(south, 3), high=number(north, 3), unit=unit.symbol),
        ),
        (
            say(QT_TRANSLATE_NOOP("core", "height of the surface")),
            say(span, low=number(low, 3), high=number(high, 3), unit=height.symbol),
        ),
    ]
    body = markup.facts(say(QT_TRANSLATE_NOOP("core", "Where the surface lies")), rows)
    body += _what_was_done(result, say) + _control_table(result, say)
    body += messages_list(result.place_messages, say)
    return "coordinates", say(QT_TRANSLATE_NOOP("core", "Coordinates and units")), body


def _what_was_done(result: JobResult, say: Words) -> str:
    """How the coordinates of the files became those of the surface."""
    if not result.georeference:
        text = QT_TRANSLATE_NOOP(
            "core",
            "Easting and northing are as in the file. Heights too: this program has not changed their datum and does "
            "not know it.",
        )
        return markup.paragraph(say(text))
    lead = QT_TRANSLATE_NOOP("core", "What was done to the coordinates of the file, in this order:")
    return messages_list(result.statements, say, lead)


def _control_table(result: JobResult, say: Words) -> str:
    if result.fitted is None:
        return ""
    fit, rows = result.fitted.fit, []
    yes, no = say(QT_TRANSLATE_NOOP("core", "yes")), say(QT_TRANSLATE_NOOP("core", "no"))
    for i, name in enumerate(fit.names):
        small = (say.small_plan, say.small_plan, say.small)
        east, north, up = (one.figure(float(value), 1) for one, value in zip(small, fit.residuals[i]))
        weakest = np.nanmin(fit.redundancy[i]) if np.isfinite(fit.redundancy[i]).any() else np.nan
        checked = number(float(weakest), 2) if np.isfinite(weakest) else "–"
        rows.append((name, yes if fit.used[i] else no, east, north, up, checked, no if name in fit.suspects else yes))
    return markup.table(
        say(QT_TRANSLATE_NOOP("core", "Residuals at the control points: fitted minus control")),
        [
            say(QT_TRANSLATE_NOOP("core", "Control point")),
            say(QT_TRANSLATE_NOOP("core", "Used")),
            say(QT_TRANSLATE_NOOP("core", "East ({unit})"), unit=say.small_plan.symbol),
            say(QT_TRANSLATE_NOOP("core", "North ({unit})"), unit=say.small_plan.symbol),
            say(QT_TRANSLATE_NOOP("core", "Height ({unit})"), unit=say.small.symbol),
            say(QT_TRANSLATE_NOOP("core", "Least redundancy")),
            say(QT_TRANSLATE_NOOP("core", "Fits")),
        ],
        rows,
        "hwnnnnw",
    )


# Linework


def linework_section(result: JobResult, words: Words) -> Section:
    """The lines of the field codes, and those drawn by hand."""
    say, title = words, words(QT_TRANSLATE_NOOP("core", "Lines from field codes"))
    if result.drawn:
        title = say(QT_TRANSLATE_NOOP("core", "Lines from field codes and by hand"))
    if result.linework is None:
        text = QT_TRANSLATE_NOOP("core", "Field codes were not read: no lines come from them.")
        return "linework", title, markup.paragraph(say(text)) + _drawn(result, say)
    rows = []
    for kind, name in _KINDS:
        lines = [line for line in result.linework.constraints.lines if line.kind & kind]
        bridged = number(sum(line.bridged for line in lines) / plan_unit(result.crs).metres, 1)
        rows.append((say(name), *_counts(result, lines), bridged))
    unit = plan_unit(result.crs).symbol
    body = markup.table(
        say(QT_TRANSLATE_NOOP("core", "Lines the surface holds to")),
        [
            say(QT_TRANSLATE_NOOP("core", "Kind")),
            say(QT_TRANSLATE_NOOP("core", "Lines")),
            say(QT_TRANSLATE_NOOP("core", "Vertices")),
            say(QT_TRANSLATE_NOOP("core", "Length in plan ({unit})"), unit=unit),
            say(QT_TRANSLATE_NOOP("core", "of it carried across rejected points ({unit})"), unit=unit),
        ],
        rows,
        "hnnnn",
    )
    return "linework", title, body + messages_list(result.linework.messages, say) + _drawn(result, say)


_KINDS = (
    (LineKind.BREAKLINE, QT_TRANSLATE_NOOP("core", "breaklines")),
    (LineKind.BOUNDARY, QT_TRANSLATE_NOOP("core", "boundaries")),
    (LineKind.VOID, QT_TRANSLATE_NOOP("core", "voids")),
)
_DRAWN_NAMES = {
    "breaklines": QT_TRANSLATE_NOOP("core", "breaklines"),
    "soft_lines": QT_TRANSLATE_NOOP("core", "breaklines without heights"),
    "boundary": QT_TRANSLATE_NOOP("core", "boundaries"),
    "voids": QT_TRANSLATE_NOOP("core", "voids"),
}


def _counts(result: JobResult, lines: Sequence[ConstraintLine]) -> Tuple[str, str, str]:
    """Lines, their vertices and their length."""
    length = sum(plan_length(line.xyz[:, :2], line.closed) for line in lines) / plan_unit(result.crs).metres
    return number(len(lines)), number(sum(len(line.xyz) for line in lines)), number(length, 1)


def _drawn(result: JobResult, say: Words) -> str:
    """The files of lines drawn by hand, where they meet others, and what was noticed of them."""
    if not result.drawn:
        return ""
    labels = {line.label for one in result.drawn for line in one.lines.constraints.lines}
    report = result.surface.report
    met = sum(not labels.isdisjoint((each.first, each.second)) for each in (*report.conflicts, *report.on_points))
    rows = [
        (say(_DRAWN_NAMES[one.name]), PurePath(one.file).name, *_counts(result, one.lines.constraints.lines))
        for one in result.drawn
    ]
    head = [
        say(QT_TRANSLATE_NOOP("core", "Kind")),
        say(QT_TRANSLATE_NOOP("core", "File")),
        say(QT_TRANSLATE_NOOP("core", "Lines")),
        say(QT_TRANSLATE_NOOP("core", "Vertices")),
        say(QT_TRANSLATE_NOOP("core", "Length in plan ({unit})"), unit=plan_unit(result.crs).symbol),
    ]
    text = QT_TRANSLATE_NOOP(
        "core",
        "Lines of the field codes go before those drawn by hand, these before lines that the points show. Places where "
        "a drawn line meets another line or a survey point at another height: {count}; see “Surface”.",
    )
    body = markup.table(say(QT_TRANSLATE_NOOP("core", "Lines drawn by hand")), head, rows, "hwnnn")
    messages = [said for one in result.drawn for said in one.lines.messages]
    return body + markup.paragraph(say(text, count=number(met))) + messages_list(messages, say)
