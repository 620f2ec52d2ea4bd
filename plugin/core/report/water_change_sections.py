"""What a change does to the water, in words and tables."""

from __future__ import annotations

from typing import Sequence

import numpy as np

from ..drainage.analysis import Drainage, DrainageChange
from ..drainage.catchments import Outlet
from ..drainage.destinations import Destination
from ..drainage.inlet_list import Inlet
from ..drainage.shares import pond_name
from ..georeference.crs import height_unit, plan_unit
from ..messages import QT_TRANSLATE_NOOP
from ..surface.tin import Tin
from ..units import LengthUnit
from . import markup
from .labels import NOT_KNOWN, Words, number
from .water_maps import change_map
from .water_sections import ROWS_SHOWN, TO_WHAT, volume_text

DESTINATIONS = {
    Outlet.RIM: QT_TRANSLATE_NOOP("core", "the rim"),
    Outlet.POND: QT_TRANSLATE_NOOP("core", "a pond or pit"),
}
CHANGES = {
    "new": QT_TRANSLATE_NOOP("core", "new"),
    "gone": QT_TRANSLATE_NOOP("core", "gone"),
    "deeper": QT_TRANSLATE_NOOP("core", "deeper"),
    "shallower": QT_TRANSLATE_NOOP("core", "shallower"),
    "unchanged": QT_TRANSLATE_NOOP("core", "unchanged"),
}


def change_body(
    before: Drainage,
    after: Drainage,
    change: DrainageChange,
    shores: Sequence[Sequence[Sequence[np.ndarray]]],
    inlets: Sequence[Inlet],
    words: Words,
) -> str:
    """What a change of the surface does to its water, as HTML. ``shores``: of the ponds before and after."""
    unit, words = plan_unit(before.flow.tin.crs), words.on(before.flow.tin.crs)
    square = unit.metres**2
    text = QT_TRANSLATE_NOOP(
        "core",
        "Where both surfaces reach, full ponds hold {before} {unit}³ before and {after} {unit}³ after the change. Of "
        "each whole surface {kept} {unit}² drained nowhere before, {keeps} {unit}² do after.",
    )
    said = {
        "before": volume_text(change.standing_before, unit),
        "after": volume_text(change.standing_after, unit),
        "kept": number(change.kept_before / square, 1),
        "keeps": number(change.kept_after / square, 1),
        "unit": unit.symbol,
    }
    html = markup.paragraph(words(text, **said))
    if change.elsewhere:
        text = QT_TRANSLATE_NOOP(
            "core", "{count} ponds lie where only one of the surfaces reaches and are not compared."
        )
        html += markup.paragraph(words(text, count=number(change.elsewhere)))
    picture = change_map(before, after, change, shores, words)
    alt = QT_TRANSLATE_NOOP("core", "Map of {count} ponds that are new, changed or gone.")
    caption = QT_TRANSLATE_NOOP(
        "core",
        "Ponds after the change, those that are gone, and ground whose water goes elsewhere, over the changed surface.",
    )
    html += markup.figure(picture.uri, words(alt, count=number(len(change.ponds))), words(caption))
    html += _pond_changes(change, before.flow.tin, words) + _area_changes(change, inlets, unit, words)
    return html + _moved(change, inlets, unit.metres, unit.symbol, words)


def _pond_changes(change: DrainageChange, tin: Tin, words: Words) -> str:
    if not change.ponds:
        return markup.paragraph(words(QT_TRANSLATE_NOOP("core", "There is no pond on either surface.")))
    unit, rise = plan_unit(tin.crs), height_unit(tin.crs)
    rows = [
        (
            words(CHANGES[pond.word]),
            pond_name(pond.before) if pond.before >= 0 else NOT_KNOWN,
            pond_name(pond.after) if pond.after >= 0 else NOT_KNOWN,
            number(pond.depth / rise.metres, 3),
            number(pond.area / unit.metres**2, 1),
            volume_text(pond.volume, unit),
        )
        for pond in change.ponds[:ROWS_SHOWN]
    ]
    head = [
        words(QT_TRANSLATE_NOOP("core", "Pond")),
        words(QT_TRANSLATE_NOOP("core", "Before")),
        words(QT_TRANSLATE_NOOP("core", "After")),
        words(QT_TRANSLATE_NOOP("core", "Deeper by ({unit})"), unit=rise.symbol),
        words(QT_TRANSLATE_NOOP("core", "Larger by ({unit}²)"), unit=unit.symbol),
        words(QT_TRANSLATE_NOOP("core", "Holds more by ({unit}³)"), unit=unit.symbol),
    ]
    name = QT_TRANSLATE_NOOP("core", "Ponds before and after, the largest change first: {shown} of {count}")
    title = words(name, shown=number(len(rows)), count=number(len(change.ponds)))
    return markup.table(title, head, rows, "hwwnnn")


def _area_changes(change: DrainageChange, inlets: Sequence[Inlet], unit: LengthUnit, words: Words) -> str:
    square = unit.metres**2
    before, after = (float(sum(getattr(row, name) for row in change.areas)) for name in ("before", "after"))
    named = [(_destination(row.destination, inlets, words), row.before, row.after) for row in change.areas]
    named.append((words(QT_TRANSLATE_NOOP("core", "whole surface")), before, after))
    rows = [
        (name, number(one / square, 1), number(other / square, 1), number((other - one) / square, 1))
        for name, one, other in named
    ]
    head = [
        words(QT_TRANSLATE_NOOP("core", "Drains to")),
        words(QT_TRANSLATE_NOOP("core", "Before ({unit}²)"), unit=unit.symbol),
        words(QT_TRANSLATE_NOOP("core", "After ({unit}²)"), unit=unit.symbol),
        words(QT_TRANSLATE_NOOP("core", "Change ({unit}²)"), unit=unit.symbol),
    ]
    return markup.table(words(QT_TRANSLATE_NOOP("core", "Catchments before and after")), head, rows, "hnnn")


def _moved(change: DrainageChange, inlets: Sequence[Inlet], metres: float, symbol: str, words: Words) -> str:
    if not change.moved:
        return markup.paragraph(words(QT_TRANSLATE_NOOP("core", "No ground has its water go elsewhere.")))
    rows = [
        (_destination(m.before, inlets, words), _destination(m.after, inlets, words), number(m.area / metres**2, 1))
        for m in change.moved[:ROWS_SHOWN]
    ]
    total = number(sum(m.area for m in change.moved) / metres**2, 1)
    rows.append((words(QT_TRANSLATE_NOOP("core", "all")), "", total))
    head = [
        words(QT_TRANSLATE_NOOP("core", "Drained to")),
        words(QT_TRANSLATE_NOOP("core", "Drains now to")),
        words(QT_TRANSLATE_NOOP("core", "Area ({unit}²)"), unit=symbol),
    ]
    return markup.table(words(QT_TRANSLATE_NOOP("core", "Ground whose water goes elsewhere")), head, rows, "wwn")


def _destination(end: Destination, inlets: Sequence[Inlet], words: Words) -> str:
    if end[0] is Outlet.INLET:
        return inlets[end[1]].name
    return words(DESTINATIONS.get(end[0], TO_WHAT[end[0]]))
