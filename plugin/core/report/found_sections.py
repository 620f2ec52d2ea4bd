"""The section of the report about the lines that the points show."""

from __future__ import annotations

from typing import Tuple

import numpy as np

from ..features.ground_lines import GroundLine, GroundLines, LineStatus
from ..georeference.crs import plan_unit
from ..messages import QT_TRANSLATE_NOOP
from ..units import LengthUnit
from . import markup
from .found_figures import found_lines_map
from .found_words import KIND_NAMES, STATUS_NAMES
from .labels import NOT_KNOWN, Words, number
from .markup import Section
from .remarks import messages_list
from .results import JobResult

_SHOWN = 60
_PASSES = 20


def found_lines_section(result: JobResult, words: Words) -> Section:
    """Kerbs, ditches and edges that the points show without codes: what they are, how sure, what is made of them."""
    say, found = words, result.ground_lines
    title = say(QT_TRANSLATE_NOOP("core", "Lines that the ground shows"))
    if found is None:
        text = QT_TRANSLATE_NOOP("core", "Lines that the points show without codes were not looked for.")
        return "found_lines", title, markup.paragraph(say(text))
    body = _lead(found, say)
    if found.lines:
        body += _map(result, found, say) + _table(found, plan_unit(result.crs), say)
        body += _crossings(found, plan_unit(result.crs), say)
    return "found_lines", title, body + _needs(say) + messages_list(found.messages, say)


def _lead(found: GroundLines, say: Words) -> str:
    if not found.lines:
        text = QT_TRANSLATE_NOOP("core", "The points show no line beyond those that were given.")
        return markup.paragraph(say(text))
    text = QT_TRANSLATE_NOOP(
        "core",
        "From the heights alone, without codes, {count} lines: {used} are breaklines of the surface, {proposed} have "
        "too little evidence and are proposed only, {rejected} were rejected by hand.",
    )
    decide = QT_TRANSLATE_NOOP(
        "core",
        "You decide: set the field status in lines_found.geojson to used, proposed or rejected, or draw a course anew, "
        "and give the file back with --found-lines.",
    )
    count = {name: number(len(found.of_status(status))) for name, status in _COUNTED}
    return markup.paragraph(say(text, count=number(len(found.lines)), **count)) + markup.paragraph(say(decide))


_COUNTED = (("used", LineStatus.USED), ("proposed", LineStatus.PROPOSED), ("rejected", LineStatus.REJECTED))


def _map(result: JobResult, found: GroundLines, say: Words) -> str:
    picture = found_lines_map(result.surface.tin, result.edited.points, found.lines, say)
    alt = QT_TRANSLATE_NOOP("core", "Map of {count} lines by kind and status over the used points.")
    caption = QT_TRANSLATE_NOOP(
        "core", "Lines that the points show, by kind and status; numbers as in the table. Steps have a foot and a top."
    )
    return markup.figure(picture.uri, say(alt, count=number(len(found.lines))), say(caption))


def _table(found: GroundLines, unit: LengthUnit, say: Words) -> str:
    rows = [_row(i, line, unit, say) for i, line in enumerate(found.lines[:_SHOWN], start=1)]
    head = [
        say(QT_TRANSLATE_NOOP("core", "Number")),
        say(QT_TRANSLATE_NOOP("core", "Kind")),
        say(QT_TRANSLATE_NOOP("core", "Step (mm)")),
        say(QT_TRANSLATE_NOOP("core", "Change of slope (%)")),
        say(QT_TRANSLATE_NOOP("core", "Place (mm)")),
        say(QT_TRANSLATE_NOOP("core", "Length ({unit})"), unit=unit.symbol),
        say(QT_TRANSLATE_NOOP("core", "bridged ({unit})"), unit=unit.symbol),
        say(QT_TRANSLATE_NOOP("core", "Passes")),
        say(QT_TRANSLATE_NOOP("core", "Evidence")),
        say(QT_TRANSLATE_NOOP("core", "Status")),
    ]
    caption = QT_TRANSLATE_NOOP(
        "core", "Found lines, those with the strongest evidence first: {shown} of {count}; ± one standard deviation"
    )
    name = say(caption, shown=number(len(rows)), count=number(len(found.lines)))
    return markup.table(name, head, rows, "hwnnnnnnnw")


def _row(i: int, line: GroundLine, unit: LengthUnit, say: Words) -> Tuple[str, ...]:
    step = f"{number(1000 * line.step)} ± {number(1000 * line.sigma_step)}" if np.isfinite(line.step) else NOT_KNOWN
    place = f"± {number(1000 * line.sigma_plan)}" if np.isfinite(line.sigma_plan) and not line.reshaped else NOT_KNOWN
    status = say(STATUS_NAMES[line.status])
    if line.by_hand:
        drawn = QT_TRANSLATE_NOOP("core", "{status}, drawn by hand")
        decided = QT_TRANSLATE_NOOP("core", "{status}, by hand")
        status = say(drawn if line.reshaped else decided, status=status)
    return (
        str(i),
        say(KIND_NAMES[line.kind]),
        step,
        number(100 * line.bend),
        place,
        number(line.length / unit.metres, 1),
        number(line.bridged / unit.metres, 1),
        str(line.passes) if line.passes else NOT_KNOWN,
        number(line.evidence, 1),
        status,
    )


def _crossings(found: GroundLines, unit: LengthUnit, say: Words) -> str:
    """Where one more pass would settle the lines that are in doubt."""
    text = QT_TRANSLATE_NOOP(
        "core",
        "Line {number} would be settled by one more pass squarely across it near E {easting} N {northing}.",
    )
    told = [
        say(
            text,
            number=i,
            easting=number(line.cross_at[0] / unit.metres, 1),
            northing=number(line.cross_at[1] / unit.metres, 1),
        )
        for i, line in enumerate(found.lines, start=1)
        if line.asks_for_a_pass
    ]
    return markup.bullets(told[:_PASSES]) if told else ""


def _needs(say: Words) -> str:
    texts = (
        QT_TRANSLATE_NOOP(
            "core",
            "Evidence is the decimal logarithm of how many times less than once so orderly a line is expected by "
            "chance; from 6 on, and where sizes are steady along it, a line is a breakline.",
        ),
        QT_TRANSLATE_NOOP(
            "core",
            "What it needs: points every half metre, four passes or more that cross the line, best squarely and every "
            "3 m, and a step of about 60 mm or more; a smaller step needs less noise or more passes. Walking along "
            "foot and top, or along the bottom of a ditch, shows it too.",
        ),
        QT_TRANSLATE_NOOP(
            "core",
            "What can go wrong: where no pass crosses, a lowered kerb or a gap is bridged in a straight line, and the "
            "place of a line between passes is guessed from its course. A lasting change of the pole along several "
            "passes can look like a step. Compare the map with what you saw on the site.",
        ),
    )
    return markup.bullets(say(text) for text in texts)
