"""The section of the report about the lines that the points show."""

from __future__ import annotations

from typing import Tuple

import numpy as np

from ..features.ground_lines import GroundLine, GroundLines, LineStatus
from ..georeference.crs import plan_unit
from ..messages import QT_TRANSLATE_NOOP
from ..surface.standing import BESIDE
from ..units import LengthUnit
from . import markup
from .found_figures import found_lines_map
from .found_words import KIND_NAMES, STATUS_NAMES
from .labels import NOT_KNOWN, Words, number
from .markup import Section
from .remarks import messages_list
from .results import JobResult

_SHOWN = 60
_LEAST_STEP = 0.06  # metres that are usually found
#: What is told of lengths (m), and with how many decimals.
_LENGTHS = (("beside", BESIDE, 2), ("along", 0.5, 1), ("across", 3.0, 0))
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
        say(QT_TRANSLATE_NOOP("core", "Step ({unit})"), unit=say.small.symbol),
        say(QT_TRANSLATE_NOOP("core", "Change of slope (%)")),
        say(QT_TRANSLATE_NOOP("core", "Place ({unit})"), unit=say.small_plan.symbol),
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
    step, place = NOT_KNOWN, NOT_KNOWN
    if np.isfinite(line.step):
        step = f"{say.small.figure(line.step)} ± {say.small.figure(line.sigma_step)}"
    if np.isfinite(line.sigma_plan) and not line.reshaped:
        place = f"± {say.small_plan.figure(line.sigma_plan)}"
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
            "chance; from 6 on, and where sizes are steady along it, a line is a breakline. A step that runs along "
            "another at an even distance, as the two kerbs of a street do, is told by both together.",
        ),
        QT_TRANSLATE_NOOP(
            "core",
            "The kerb of an island is told by all passes that go up on it and down again together: five or more. Where "
            "none of them crosses an end, that end is left open.",
        ),
        QT_TRANSLATE_NOOP(
            "core",
            "Points that stand within {beside} of a used step and agree with its heights are no vertices of the "
            "surface: the line stands for them. They are not rejected, and have the reason in_line in points.csv.",
        ),
        QT_TRANSLATE_NOOP(
            "core",
            "What it needs: points every {along}, four passes or more that cross the line, best squarely and every "
            "{across}, and a step of about {least} or more; a smaller step needs less noise or more passes. Walking "
            "along foot and top, or along the bottom of a ditch, shows it too.",
        ),
        QT_TRANSLATE_NOOP(
            "core",
            "What can go wrong: where no pass crosses, a lowered kerb or a gap is bridged in a straight line, and the "
            "place of a line between passes is guessed from its course. A lasting change of the pole along several "
            "passes can look like a step. Compare the map with what you saw on the site.",
        ),
    )
    lengths = {name: say.length(metres, places) for name, metres, places in _LENGTHS}
    return markup.bullets(say(text, **lengths, least=say.small.said(_LEAST_STEP)) for text in texts)
