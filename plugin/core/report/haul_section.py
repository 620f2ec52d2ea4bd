"""Earth carried along a line, for people: the mass diagram of a strip or of any volume along a centreline."""

from __future__ import annotations

from typing import List, Tuple

from ..earthwork.haul import MassDiagram
from ..messages import QT_TRANSLATE_NOOP
from . import markup
from .earth_units import EarthUnits
from .grading_figures import mass_figure
from .labels import NOT_KNOWN, Words


def haul_body(haul: MassDiagram, units: EarthUnits, words: Words) -> str:
    """The mass diagram as HTML: figure, hauls, what is left."""
    picture = mass_figure(haul, units, words)
    alt = QT_TRANSLATE_NOOP("core", "Cut and fill between stations, and the running balance along the line.")
    caption = QT_TRANSLATE_NOOP(
        "core",
        "Mass diagram: the lower line rises in cut and falls in fill; between places where it is 0 the earth balances.",
    )
    body = markup.figure(picture.uri, words(alt), words(caption))
    rows: List[Tuple[str, ...]] = []
    for each in haul.hauls:
        way = QT_TRANSLATE_NOOP("core", "forward") if each.forward else QT_TRANSLATE_NOOP("core", "back")
        rows.append(
            (
                units.lengths(each.start, 1),
                units.lengths(each.end, 1),
                words(way),
                units.volumes(each.volume),
                units.lengths(each.mean_distance, 1) if each.volume > 0 else NOT_KNOWN,
            )
        )
    head = [
        words(QT_TRANSLATE_NOOP("core", "From station ({unit})"), unit=units.length),
        words(QT_TRANSLATE_NOOP("core", "To station ({unit})"), unit=units.length),
        words(QT_TRANSLATE_NOOP("core", "Hauled")),
        words(QT_TRANSLATE_NOOP("core", "Volume, compacted ({unit})"), unit=units.volume),
        words(QT_TRANSLATE_NOOP("core", "Mean haul ({unit})"), unit=units.length),
    ]
    if rows:
        body += markup.table(words(QT_TRANSLATE_NOOP("core", "Hauls along the line")), head, rows, "nnwnn")
    said = [(words(QT_TRANSLATE_NOOP("core", "left at the end (below 0: to be brought in)")), haul.rest)]
    beside = haul.beside_cut + haul.beside_fill
    if beside > 0.05:
        text = QT_TRANSLATE_NOOP("core", "moved beyond the ends of the line, not in the diagram")
        said.append((words(text), beside))
    facts = [(name, f"{units.volumes(value)} {units.volume}") for name, value in said]
    if haul.overlap_area > 0.05:
        text = QT_TRANSLATE_NOOP("core", "ground that several sections count, in bends")
        facts.append((words(text), f"{units.areas(haul.overlap_area)} {units.area}"))
    return body + markup.facts(words(QT_TRANSLATE_NOOP("core", "Along the line")), facts)
